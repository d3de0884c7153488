import type { Plan } from '../../plan/schema/plan';
import type { Connected, LeftWhy } from '../../power/connect/connectAll';
import { cordOfCable } from '../../power/cords';
import { formatLength } from '../../units/lengths';
import { namesIn } from './powerWords';

const WHY: Readonly<Record<LeftWhy, string>> = {
  'no supply': 'the plan has no generator, battery or socket of the house',
  'no room':
    'no circuit with a free socket would stay under four fifths of its breaker and within what its supply gives',
  'plan is full': 'the plan holds no more gear',
  tangled: 'it hangs in a ring or between two supplies, which has to be undone first',
};

/** What connecting everything did, and what it left. */
export function connectSentences(
  plan: Plan,
  { plan: after, cableIds, left, straightIds }: Connected,
): readonly string[] {
  const metres = after.gear.reduce(
    (sum, gear) =>
      gear.kind === 'cable' && cableIds.includes(gear.id) ? sum + cordOfCable(after, gear).lengthMetres : sum,
    0,
  );
  const reasons = [...new Set(left.map(({ why }) => why))];
  return [
    cableIds.length === 0
      ? 'No cable was laid.'
      : `${cableIds.length === 1 ? 'One cable was' : `${cableIds.length} cables were`} laid, ${formatLength(metres, 'm', { decimals: 0 })} with slack.`,
    ...reasons.map((reason) => {
      const ids = left.filter(({ why }) => why === reason).map(({ id }) => id);
      return `${namesIn(plan, ids)} ${ids.length === 1 ? 'is' : 'are'} left without: ${WHY[reason]}.`;
    }),
    ...(straightIds.length > 0
      ? [
          `${namesIn(after, straightIds)} ${straightIds.length === 1 ? 'runs' : 'run'} straight, since no way round was found. Look at it.`,
        ]
      : []),
  ];
}
