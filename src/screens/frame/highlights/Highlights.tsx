import { useSession } from '../../../desk/hooks';
import { polygon } from '../../overhead/geometry/paths';
import { shiningWords } from '../../overhead/highlights/shining';
import type { Drawn } from './floorHighlights';
import './highlights.css';

/** What lamps put into the floor, outlined where it is half as bright as at its middle, with how bright that is. */
export function Highlights({ drawn }: { readonly drawn: readonly Drawn[] }) {
  const selectedId = useSession((state) => state.selectedId);
  return (
    <g className="floor-highlights">
      {drawn.map(({ shining, outlines }) => (
        <g key={shining.lampId} className={shining.lampId === selectedId ? 'chosen' : undefined}>
          {outlines.map((spots) => (
            <g key={polygon(spots)}>
              <path className="halo" d={polygon(spots)} />
              <path className="streak" d={polygon(spots)} />
            </g>
          ))}
        </g>
      ))}
      {drawn.map(
        ({ shining, words }) =>
          words && (
            <text key={shining.lampId} x={words.left + 6} y={words.top + 13}>
              {shiningWords(shining)}
            </text>
          ),
      )}
    </g>
  );
}
