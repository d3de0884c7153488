import { useStore } from 'zustand';
import { standingOf, tickStore, toggleTick } from '../../../desk/crew/kept/ticks';

/**
 * A tick for what is set, kept on this phone. `of` is the record that it is asked for by: a later link with another one
 * takes the tick back, and says so.
 */
export function SetTick(props: {
  readonly id: string;
  readonly of: unknown;
  /** What is ticked, for a screen reader. */
  readonly label: string;
}) {
  const standing = useStore(tickStore, ({ ticks }) => standingOf(ticks, props.id, props.of));
  const word = standing === 'changed since' ? 'changed since it was set' : 'set';
  return (
    <label className="crew-tick">
      <input
        type="checkbox"
        checked={standing === 'set'}
        aria-label={`${props.label}, ${word}`}
        onChange={() => toggleTick(props.id, props.of)}
      />
      <span aria-hidden="true">{standing === 'changed since' ? 'changed' : 'set'}</span>
    </label>
  );
}
