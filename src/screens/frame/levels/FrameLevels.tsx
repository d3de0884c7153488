import { useEffect, useMemo } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatSigned } from '../../../core/units/numbers';
import { askFrame, stopLevels } from '../../../desk/levelMap/askLevels';
import { levelMapStore } from '../../../desk/levelMap/levelMapStore';
import { bandPaths, type Squares, STOPS } from '../../overhead/levels/bands';
import { useSettledSeconds } from '../../overhead/useSettledSeconds';
import type { Box } from '../pictureBox';
import '../../overhead/levels/levels.css';
import './frameLevels.css';

/** Numbers stand so far apart, CSS pixels. */
const APART = [84, 56] as const;
/** A swatch of the legend, CSS pixels. */
const SWATCH = [26, 7] as const;

/** Stops from middle grey over a setup's picture, in the steps of the level map, with numbers and a legend. */
export function FrameLevels(props: { readonly plan: Plan; readonly setupId: string; readonly box: Box }) {
  const { plan, setupId, box } = props;
  const seconds = useSettledSeconds();
  const known = useStore(levelMapStore, (state) => state.frame);
  useEffect(() => askFrame({ plan, setupId, seconds }), [plan, setupId, seconds]);
  useEffect(() => () => stopLevels('frame'), []);
  const levels = known?.setupId === setupId ? known.levels : null;
  const squares = useMemo((): Squares | null => {
    if (!levels) return null;
    const { columns, rows, stops } = levels;
    const step = [box.width / columns, box.height / rows] as const;
    return { corner: [box.left, box.top], step, columns, rows, stops };
  }, [levels, box.left, box.top, box.width, box.height]);
  return (
    <g className="frame-levels">
      {squares &&
        bandPaths(squares).map((path, band) => (
          <path key={STOPS[band]} className={`level level-${band + 1}`} d={path} />
        ))}
      {squares && <Numbers squares={squares} box={box} />}
      <Legend box={box} />
    </g>
  );
}

/** The stops in the middle of every so many cells: no colour has to be told from another. */
function Numbers({ squares, box }: { readonly squares: Squares; readonly box: Box }) {
  const across = Math.max(1, Math.round(box.width / APART[0]));
  const down = Math.max(1, Math.round(box.height / APART[1]));
  const places = Array.from({ length: across * down }, (_, k) => {
    const [x, y] = [((k % across) + 0.5) / across, (Math.floor(k / across) + 0.5) / down];
    const at = Math.floor(y * squares.rows) * squares.columns + Math.floor(x * squares.columns);
    return { x: box.left + x * box.width, y: box.top + y * box.height, stops: squares.stops[at] };
  });
  return places.map(({ x, y, stops }) => (
    <text key={`${x} ${y}`} className="level-number" x={x} y={y + 4} textAnchor="middle">
      {formatSigned(stops, 1)}
    </text>
  ));
}

function Legend({ box }: { readonly box: Box }) {
  const [wide, high] = SWATCH;
  const [left, top] = [box.left + 8, box.top + box.height - 32];
  return (
    <g className="level-steps">
      <rect className="ground" x={left - 4} y={top - 4} width={wide * STOPS.length + 136} height={30} />
      {STOPS.map((stop, band) => (
        <g key={stop}>
          <rect
            className={`solid level-${band + 1}`}
            x={left + band * wide}
            y={top}
            width={wide}
            height={high}
          />
          <text x={left + (band + 0.5) * wide} y={top + high + 13} textAnchor="middle">
            {stop === 0 ? '0' : formatSigned(stop, 0)}
          </text>
        </g>
      ))}
      <text x={left + STOPS.length * wide + 8} y={top + high + 13}>
        stops from middle grey
      </text>
    </g>
  );
}
