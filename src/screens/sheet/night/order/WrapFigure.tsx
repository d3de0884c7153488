import type { Plan } from '../../../../core/plan/schema/plan';
import { useNight } from '../../../../desk/night/useNight';
import { wrapAnswer } from './words';

/** What stands in the figure's place until the night is worked out, so that nothing moves when it comes. */
const AWAITED = { question: 'When will we wrap?', figure: '–', rest: '', isLate: false };

/** The one figure of the order: whether everyone wraps in time, and by how much. */
export function WrapFigure({ plan }: { readonly plan: Plan }) {
  const night = useNight(plan);
  if (plan.setups.length === 0) return null;
  const { question, figure, rest, isLate } = night ? wrapAnswer(night) : AWAITED;
  return (
    <p className={isLate ? 'figure wrap-figure late' : 'figure wrap-figure'} role="status">
      <small className="q">{question} </small>
      {figure}
      <small> {rest}</small>
    </p>
  );
}
