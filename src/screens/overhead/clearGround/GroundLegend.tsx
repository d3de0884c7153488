import type { GroundSquares } from '../../../core/clearance/ground/types';
import { groundSentence } from '../../../core/clearance/ground/words';
import { usefulSentence } from '../../../core/clearance/useful/words';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { letterOf } from '../../../desk/choose';
import { useGroundState } from '../../../desk/ground/useGroundState';
import { SIGNED, type Signed, signPaths } from './marks';

const WORDS: Readonly<Record<Signed, string>> = {
  clear: 'clear',
  close: 'close to a frame',
  covered: 'covered',
  mirrored: 'seen mirrored',
};

/** One sign as the map draws it. */
function Sign({ state }: { readonly state: Signed }) {
  const one: GroundSquares = {
    stepMetres: 16,
    corner: [-8, -8],
    columns: 1,
    rows: 1,
    deckMetres: Float64Array.of(0),
  };
  const path = signPaths(one, [SIGNED.indexOf(state) + 1], 1)[state];
  return (
    <svg className="ground-key" viewBox="-6 -6 12 12" aria-hidden="true">
      <path className={`ground-sign ${state}`} d={path} />
    </svg>
  );
}

/** What the signs on the roof mean, for what, and how much of it there is; or why there are none. */
export function GroundLegend(props: { readonly plan: Plan; readonly lengths: LengthSystem }) {
  const { plan, lengths } = props;
  const { shows, ground, limits, useful, usefulWhy, why } = useGroundState();
  const known = shows === 'limits' ? limits : ground;
  const limitsOf = limits?.setupIds.map((id) => letterOf(plan, id)).join(', ');
  return (
    <section className="ground-legend" aria-label="Clear ground">
      <p role="status">
        {why ??
          (shows === 'limits'
            ? limitsOf && `How tall a stand may be and stay clear of ${limitsOf}.`
            : ground && groundSentence(plan, ground)) ??
          'The ground is being read.'}
      </p>
      {why === null && known && (
        <ul>
          {SIGNED.filter((state) => state === 'clear' || shows === 'clear').map((state) => (
            <li key={state}>
              <Sign state={state} />
              {shows === 'limits' ? 'any height' : WORDS[state]}
            </li>
          ))}
          {shows === 'limits' ? (
            <li>
              <svg className="ground-key" viewBox="-6 -6 12 12" aria-hidden="true">
                <path className="limit-line" d="M-6 3C-2 3 2 -3 6 -3" />
              </svg>
              up to a height
            </li>
          ) : (
            <li>
              <svg className="ground-key" viewBox="-6 -6 12 12" aria-hidden="true" />
              no sign: it shows
            </li>
          )}
          {useful && (
            <li>
              <svg className="ground-key" viewBox="-6 -6 12 12" aria-hidden="true">
                <path className="useful-edge" d="M-5 -5H5V5H-5z" />
                <path className="useful-points" d="M-2.5 -2.5h0M2.5 -2.5h0M-2.5 2.5h0M2.5 2.5h0" />
              </svg>
              where the lamp can go
            </li>
          )}
        </ul>
      )}
      {/* What is missing for both is said once. */}
      {((usefulWhy !== null && usefulWhy !== why) || useful) && (
        <p role="status">{usefulWhy ?? (useful && usefulSentence(plan, useful, lengths))}</p>
      )}
    </section>
  );
}
