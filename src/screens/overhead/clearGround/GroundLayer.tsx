import { memo, useMemo } from 'react';
import type { HeightLimits } from '../../../core/clearance/ground/heightLimit';
import type { ClearGround } from '../../../core/clearance/ground/types';
import type { UsefulGround } from '../../../core/clearance/useful/types';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { useGroundState } from '../../../desk/ground/useGroundState';
import { useSession } from '../../../desk/hooks';
import { contourLabels, contoursOf } from '../levels/contours';
import { limitLines, limitSquares, unlimited } from './limits';
import { SIGNED, signPaths, usefulPaths } from './marks';
import { useAskGround } from './useGround';
import './clearGround.css';

/** Clear ground over the decks in signs, or how tall a stand may be in lines; and where a lamp can go. In metres. */
export function GroundLayer(props: {
  readonly plan: Plan;
  readonly clip: string;
  readonly perMetre: number;
}) {
  const { plan, clip, perMetre } = props;
  useAskGround(plan);
  const { shows, ground, limits, useful } = useGroundState();
  return (
    <g className="clear-ground" clipPath={clip}>
      {shows === 'clear' && ground && <Signs squares={ground} states={ground.states} perMetre={perMetre} />}
      {shows === 'limits' && limits && <Limits limits={limits} perMetre={perMetre} />}
      {useful && <Useful useful={useful} perMetre={perMetre} />}
    </g>
  );
}

const Signs = memo(function Signs(props: {
  readonly squares: ClearGround | HeightLimits;
  readonly states: Uint8Array;
  readonly perMetre: number;
}) {
  const { squares, states, perMetre } = props;
  const paths = useMemo(() => signPaths(squares, states, perMetre), [squares, states, perMetre]);
  return SIGNED.map((state) => <path key={state} className={`ground-sign ${state}`} d={paths[state]} />);
});

/** Shorter lines than about this are crumbs of a steep edge, metres. */
const DRAWN_METRES = 1;
/** A line shorter than this is not lettered, and letters keep this far apart, metres. */
const LETTERED_METRES = 2;
const APART_METRES = 1.6;
/** Height of the lettering, CSS pixels. */
const LETTER_PIXELS = 11;

const Limits = memo(function Limits(props: { readonly limits: HeightLimits; readonly perMetre: number }) {
  const { limits, perMetre } = props;
  const lengths = useSession((state) => state.lengths);
  const contours = useMemo(
    () =>
      contoursOf(limitSquares(limits), limitLines(lengths)).filter(
        ({ places }) => places.length * limits.stepMetres >= DRAWN_METRES,
      ),
    [limits, lengths],
  );
  const states = useMemo(() => unlimited(limits), [limits]);
  const size = LETTER_PIXELS / perMetre;
  return (
    <>
      <Signs squares={limits} states={states} perMetre={perMetre} />
      <path
        className="limit-line"
        d={contours
          .map(({ places }) => `M${places.map(([x, y]) => `${x.toFixed(2)} ${y.toFixed(2)}`).join('L')}`)
          .join('')}
      />
      {contourLabels(contours, LETTERED_METRES, APART_METRES).map(({ stop, at: [x, y] }) => (
        <text
          key={`${stop} ${x} ${y}`}
          className="limit-height"
          x={x}
          y={y + size * 0.35}
          style={{ fontSize: `${size}px`, strokeWidth: `${3 / perMetre}px` }}
          textAnchor="middle"
        >
          {formatLength(stop, lengths, { decimals: lengths === 'm' ? 1 : 0 })}
        </text>
      ))}
    </>
  );
});

const Useful = memo(function Useful(props: { readonly useful: UsefulGround; readonly perMetre: number }) {
  const { useful, perMetre } = props;
  const { edge, points } = useMemo(() => usefulPaths(useful, perMetre), [useful, perMetre]);
  return (
    <>
      <path className="useful-points" d={points} />
      <path className="useful-edge" d={edge} />
    </>
  );
});
