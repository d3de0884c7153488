import type { Plan } from '../../../core/plan/schema/plan';
import { type Circuit, MOST_CIRCUITS } from '../../../core/plan/schema/power';
import { choice } from './build';
import type { FieldGroup, FieldSpec } from './types';

const LEGS = [[1], [2], [3], [1, 2], [1, 2, 3]] as const;
const legsWord = (legs: readonly number[]): string =>
  legs.length === 1 ? `leg ${legs[0]}` : legs.length === 2 ? `legs ${legs.join(' and ')}` : 'all three legs';
const keyOf = (legs: readonly number[]): string => legs.join(',');

type Put = (plan: Plan, circuits: Circuit[]) => Plan;

/** The same breaker once more behind the last, or fewer of them. */
function resized(circuits: readonly Circuit[], count: number): Circuit[] {
  const wanted = Math.min(Math.max(Math.round(count), 1), MOST_CIRCUITS);
  const last = circuits[circuits.length - 1];
  const more = Array.from({ length: Math.max(wanted - circuits.length, 0) }, () => ({ ...last }));
  return [...circuits.slice(0, wanted), ...more];
}

function circuitSpecs(circuits: readonly Circuit[], place: number, put: Put): FieldSpec[] {
  const circuit = circuits[place];
  const number = place + 1;
  const putHere = (plan: Plan, next: Circuit): Plan => put(plan, circuits.with(place, next));
  const legs = circuit.legs ?? [1];
  const offered = LEGS.some((each) => keyOf(each) === keyOf(legs)) ? LEGS : [...LEGS, legs];
  return [
    {
      form: 'number',
      label: `breaker ${number}`,
      unit: 'A',
      decimals: Number.isInteger(circuit.amps) ? 0 : 1,
      value: circuit.amps,
      change: (plan, amps) => putHere(plan, { ...circuit, amps }),
    },
    {
      form: 'number',
      label: `sockets ${number}`,
      value: circuit.sockets,
      change: (plan, sockets) => putHere(plan, { ...circuit, sockets }),
    },
    choice(
      `on ${number}`,
      keyOf(legs),
      offered.map((each) => [keyOf(each), legsWord(each)] as const),
      (plan, key) => {
        const next = key.split(',').map(Number);
        const { legs: _, ...rest } = circuit;
        return putHere(plan, keyOf(next) === '1' ? rest : { ...rest, legs: next });
      },
    ),
  ];
}

/** The circuits of a supply or a box: how many, and of each its breaker, its sockets and the legs that it carries. */
export const circuitFields = (circuits: readonly Circuit[], put: Put): FieldGroup[] => [
  {
    heading: 'Its circuits',
    fields: [
      {
        form: 'number',
        label: 'circuits',
        value: circuits.length,
        change: (plan, count) => put(plan, resized(circuits, count)),
      },
    ],
  },
  ...circuits.map((_, place) => ({
    heading: `Circuit ${place + 1}`,
    fields: circuitSpecs(circuits, place, put),
  })),
];
