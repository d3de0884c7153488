import { polyline } from '../geometry/paths';
import type { PowerOnRoof } from './powerOnRoof';
import './power.css';

/** A cable that carries nothing worth telling, and one that carries all it may, pixels. */
const [THIN, THICK] = [1.5, 7];
const widthOf = (share: number): number => THIN + (THICK - THIN) * Math.min(share, 1);

/** What flows, to scale under what stands on the deck: cables as thick as they are loaded, supplies ringed, what is dark struck through. */
export function PowerLayer(props: {
  readonly power: PowerOnRoof;
  /** What is seen and is not in the plan: dashed, like all that is only tried. */
  readonly drafts: ReadonlySet<string>;
  readonly perMetre: number;
}) {
  const { power, drafts, perMetre } = props;
  return (
    <g className="power-layer">
      {power.cords.map(({ id, path, share, stops }) => (
        <path
          key={id}
          className={`flow${stops ? ' stops' : share > 1 ? ' over' : ''}${drafts.has(id) ? ' tried' : ''}`}
          data-cable={id}
          d={polyline(path)}
          style={{ strokeWidth: widthOf(share) }}
        />
      ))}
      {power.moves.map(({ id, from, to }) => (
        <path key={id} className="moves" d={polyline([from, to])} />
      ))}
      {power.sources.map(({ id, at, radiusMetres, stops }) => (
        <circle
          key={id}
          className={stops ? 'supply stops' : 'supply'}
          cx={at[0]}
          cy={at[1]}
          r={radiusMetres}
        />
      ))}
      {power.dark.map(({ id, at }) => (
        <g key={id} className="unfed" transform={`translate(${at[0]} ${at[1]}) scale(${1 / perMetre})`}>
          <circle r="8" />
          <path d="M-6 6L6 -6" />
        </g>
      ))}
    </g>
  );
}
