import { flushSync } from 'react-dom';
import { placeFirstCamera } from '../../desk/placing';

/** The button goes with what it did: the keys go on at the new setup's card. */
function place(): void {
  flushSync(placeFirstCamera);
  document.querySelector<HTMLElement>('.strip .card[aria-current]')?.focus({ preventScroll: true });
}

/** What the frame says before there is anything to look through. */
export function NoSetup() {
  return (
    <div className="empty">
      <svg viewBox="0 0 72 48" aria-hidden="true">
        <path d="M1 14h50v32H1z" />
        <circle cx="62" cy="8" r="4" />
      </svg>
      <p>
        <b>No setup yet.</b> Put a camera on the roof, and the frame will show what it sees.
      </p>
      <button type="button" className="try" onClick={place}>
        Place a camera
      </button>
    </div>
  );
}
