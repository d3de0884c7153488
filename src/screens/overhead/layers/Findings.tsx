import { glyphHref } from '../../parts/Glyph';
import type { Finding } from '../findings';
import type { PlacedNote } from '../geometry/notes';
import { polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';

/** Radius of a ring, pixels. */
export const RING = 20;
/** Glyph, space and lines of a note, pixels. */
export const GLYPH = 15;
export const LINE = 15;

interface Props {
  readonly findings: readonly {
    readonly finding: Finding;
    readonly at: Spot;
    readonly note: PlacedNote | null;
  }[];
}

/** A ring around what asks for something, and outside the deck its glyph and its words, joined by a leader. */
export function Findings({ findings }: Props) {
  return (
    <g className="findings-layer">
      {findings.map(({ finding, at, note }) => (
        <g key={finding.id} className={`finding ${finding.concern}`}>
          <title>{finding.detail === '' ? finding.words : `${finding.words}, ${finding.detail}`}</title>
          <circle className="finding-ring" cx={at[0]} cy={at[1]} r={RING} />
          {note ? (
            <Note finding={finding} note={note} />
          ) : (
            <Glyph finding={finding} at={[at[0] + RING - 3, at[1] - RING - 9]} />
          )}
        </g>
      ))}
    </g>
  );
}

function Note({ finding, note }: { readonly finding: Finding; readonly note: PlacedNote }) {
  const [left, top] = note.bounds;
  return (
    <>
      <path className="leader" d={polyline(note.leader)} />
      <Glyph finding={finding} at={[left, top]} />
      <text className="finding-words" x={left + GLYPH + 6} y={top + 12}>
        {finding.words}
      </text>
      {finding.detail !== '' && (
        <text className="finding-detail" x={left + GLYPH + 6} y={top + 12 + LINE}>
          {finding.detail}
        </text>
      )}
    </>
  );
}

function Glyph({ finding, at }: { readonly finding: Finding; readonly at: Spot }) {
  return (
    <use
      className="finding-glyph"
      href={glyphHref(finding.glyph)}
      x={at[0]}
      y={at[1]}
      width={GLYPH}
      height={GLYPH}
    />
  );
}
