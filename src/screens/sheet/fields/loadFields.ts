import type { GearOf } from '../../../core/form/gear/references';
import type { Plan } from '../../../core/plan/schema/plan';
import { loadsOf } from '../../../core/power/loads';
import { choice, reshaped } from './build';
import type { FieldGroup, FieldSpec } from './types';

/** What a thing draws, typed off its plate. */
function drawFields(plan: Plan, { id, drawn }: GearOf<'appliance' | 'monitor' | 'cart'>): FieldSpec[] {
  const load = loadsOf(plan).find((each) => each.id === id);
  if (!load) return [];
  const { watts, powerFactor, startTimes } = load;
  const now = drawn ?? { watts, powerFactor };
  const put = (before: Plan, patch: object): Plan => reshaped(before, id, { drawn: { ...now, ...patch } });
  return [
    {
      form: 'number',
      label: 'draws',
      unit: 'W',
      decimals: Number.isInteger(watts) ? 0 : 1,
      value: watts,
      change: (before, typed) => put(before, { watts: typed }),
    },
    {
      form: 'number',
      label: 'power factor',
      decimals: 2,
      value: powerFactor,
      change: (before, typed) => put(before, { powerFactor: typed }),
    },
    {
      form: 'number',
      label: 'times at start',
      decimals: 1,
      value: startTimes,
      change: (before, typed) => put(before, { startTimes: typed }),
    },
  ];
}

/** What takes power: what it draws, and whether from a cord on the plan or from a battery or socket of its own. */
export function loadFields(
  plan: Plan,
  gear: GearOf<'head' | 'practical' | 'bulb string' | 'appliance' | 'monitor' | 'cart'>,
): FieldGroup {
  const { id, supply } = gear;
  const drawn = 'head' in gear ? [] : drawFields(plan, gear);
  const usual = loadsOf(plan).find((load) => load.id === id)?.supply === 'own' ? 'its own' : 'a cord';
  const word = supply === undefined ? `as usual, ${usual}` : 'as usual';
  return {
    heading: 'Its power',
    fields: [
      ...drawn,
      {
        ...choice(
          'power from',
          supply ?? '',
          [
            ['', word],
            ['cord', 'a cord'],
            ['own', 'a battery or socket of its own'],
          ],
          (before, to) => reshaped(before, id, { supply: to === '' ? undefined : to }),
        ),
        wide: true,
      },
    ],
  };
}
