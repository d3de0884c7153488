import { ContinuitySymbols } from './ContinuityGlyph';

/** The six verdicts: one frame, always in the same place, in a field of 16 units; only the dot moves. */
export function GlyphSprite() {
  return (
    <svg className="vh" aria-hidden="true">
      <symbol id="g-showing" viewBox="0 0 16 16">
        <rect
          x="1.25"
          y="3.75"
          width="9.5"
          height="8.5"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <circle cx="6" cy="8" r="2.6" fill="currentColor" />
      </symbol>
      <symbol id="g-close" viewBox="0 0 16 16">
        <rect
          x="1.25"
          y="3.75"
          width="9.5"
          height="8.5"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <circle cx="13.3" cy="8" r="2.2" fill="currentColor" />
      </symbol>
      <symbol id="g-clear" viewBox="0 0 16 16">
        <rect x="1.25" y="6.25" width="8" height="7.5" fill="none" stroke="currentColor" strokeWidth="1.5" />
        <circle cx="13.4" cy="2.7" r="2" fill="currentColor" />
      </symbol>
      <symbol id="g-covered" viewBox="0 0 16 16">
        <rect
          x="1.25"
          y="3.75"
          width="9.5"
          height="8.5"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <path d="M6.6 5.4a2.6 2.6 0 0 1 0 5.2z" fill="currentColor" />
        <rect x="3.6" y=".75" width="2.2" height="14.5" fill="currentColor" />
      </symbol>
      <symbol id="g-mirrored" viewBox="0 0 16 16">
        <rect
          x="1.25"
          y="1.75"
          width="9.5"
          height="12.5"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <path d="M0 6.25h15.5" stroke="currentColor" strokeWidth="1.5" />
        <circle cx="6" cy="10.2" r="2.3" fill="currentColor" />
      </symbol>
      <symbol id="g-lost" viewBox="0 0 16 16">
        <rect
          x="1.25"
          y="3.75"
          width="9.5"
          height="8.5"
          fill="none"
          stroke="currentColor"
          strokeWidth="1.5"
        />
        <circle cx="6" cy="8" r="2" fill="none" stroke="currentColor" strokeWidth=".9" opacity=".75" />
      </symbol>
      <ContinuitySymbols />
    </svg>
  );
}
