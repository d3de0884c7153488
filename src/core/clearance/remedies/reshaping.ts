import { carrierOf } from '../../plan/edits/anchorOf';
import { standReach } from '../../plan/edits/setStandHeight';
import { tidyHeading, tidyMetres } from '../../plan/edits/tidy';
import { itemOf } from '../../plan/items';
import type { Plan } from '../../plan/schema/plan';
import { type Case, type Draft, type Finding, proveThings } from './case';
import { leastChange } from './nearestSpot';
import { keepersChanged, needsOf } from './needs';
import { type RemedyEdit, withRemedy } from './remedyEdits';
import type { Remedy } from './types';
import { degreesWords, lengthWords } from './words';

/** A change of one number of a thing, and how it is tried. */
interface OneNumber {
  readonly edits: (by: number) => readonly RemedyEdit[];
  readonly lowest: number;
  readonly highest: number;
  readonly step: number;
  readonly fine: number;
  readonly draft: (by: number) => Pick<Draft, 'kind' | 'metres' | 'degrees' | 'what'>;
}

/** How often a number is looked for anew with another camera that is in the way. */
const MOST_ROUNDS = 12;

/** The least change of a number that clears the item in all setups, else in its own; as a remedy once it is judged. */
function* leastOf(of: Case, number: OneNumber): Generator<number, Remedy | null, void> {
  const { known, one, tolerance, lamps } = of;
  const { plan } = known;
  if (number.lowest > -number.fine && number.highest < number.fine) return null;
  const changed = (by: number): Plan => withRemedy(plan, { edits: number.edits(by) });
  const keepers = keepersChanged(
    plan,
    changed(number.highest > number.fine ? number.highest : number.lowest),
  );
  if (!keepers) return null;
  for (const aim of ['clear of all', { clearOf: one.setup.id }] as const) {
    const needs = needsOf(known, keepers, aim);
    const holds = (by: number): boolean => {
      const after = changed(by);
      return after !== plan && needs.holds(after) && lamps.mayKeep(after, tolerance);
    };
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      const by = leastChange(holds, number);
      yield 0.5;
      if (by === null) break;
      if (!needs.holdsThroughout(changed(by))) continue;
      const remedy = yield* proveThings(of, { ...number.draft(by), edits: number.edits(by) });
      if (remedy) return remedy;
      break;
    }
  }
  return null;
}

/** The stand that an item is, or that carries it. */
function standOf({ known: { plan }, item }: Case) {
  const id = carrierOf(plan, item.record.id) ?? item.record.id;
  const stand = plan.gear.find((gear) => gear.id === id);
  return stand?.kind === 'stand' && !stand.locked ? stand : null;
}

/** A stand lowered or raised within its class, until what it shows is below or above the frames. */
export function* heights(of: Case): Finding {
  const stand = standOf(of);
  const reach = stand && standReach(of.known.plan, stand.id);
  if (!stand || !reach) return [];
  const found: Remedy[] = [];
  for (const kind of ['lower', 'raise'] as const) {
    const remedy = yield* leastOf(of, {
      edits: (by) => [
        { edit: 'setStandHeight', args: { id: stand.id, heightMetres: tidyMetres(stand.heightMetres + by) } },
      ],
      lowest: kind === 'lower' ? Math.min(0, reach.lowestMetres - stand.heightMetres) : 0,
      highest: kind === 'raise' ? Math.max(0, reach.highestMetres - stand.heightMetres) : 0,
      step: 0.1,
      fine: 0.005,
      draft: (by) => ({
        kind,
        metres: Math.abs(by),
        what: `${lengthWords(Math.abs(by))} ${kind === 'lower' ? 'lower' : 'higher'}, at ${lengthWords(stand.heightMetres + by)},`,
      }),
    });
    if (remedy) found.push(remedy);
  }
  return found;
}

/** The arm of a stand swung round its column. */
export function* swings(of: Case): Finding {
  const stand = standOf(of);
  const arm = stand?.arm;
  if (!stand || !arm) return [];
  const remedy = yield* leastOf(of, {
    edits: (by) => [
      {
        edit: 'setArm',
        args: { id: stand.id, arm: { ...arm, headingDegrees: tidyHeading(arm.headingDegrees + by) } },
      },
    ],
    lowest: -180,
    highest: 180,
    step: 5,
    fine: 0.2,
    draft: (by) => ({
      kind: 'swing the arm',
      degrees: Math.abs(by),
      what: `The arm swung ${degreesWords(Math.abs(by))} ${by > 0 ? 'clockwise' : 'anticlockwise'}`,
    }),
  });
  return remedy ? [remedy] : [];
}

/** The legs of a stand, or a thing itself, turned on its place. */
export function* turns(of: Case): Finding {
  const stand = standOf(of);
  const record = stand ?? itemOf(of.known.plan, of.item.record.id)?.record;
  if (!record || record.locked || !('headingDegrees' in record)) return [];
  const { id, headingDegrees } = record;
  const remedy = yield* leastOf(of, {
    edits: (by) => [{ edit: 'turnItem', args: { id, headingDegrees: tidyHeading(headingDegrees + by) } }],
    lowest: -180,
    highest: 180,
    step: 5,
    fine: 0.2,
    draft: (by) => ({
      kind: 'turn',
      degrees: Math.abs(by),
      what: `${stand ? 'Its legs' : 'It'} turned ${degreesWords(Math.abs(by))} ${by > 0 ? 'clockwise' : 'anticlockwise'}`,
    }),
  });
  return remedy ? [remedy] : [];
}
