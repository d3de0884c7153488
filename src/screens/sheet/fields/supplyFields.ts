import type { GearOf } from '../../../core/form/gear/references';
import {
  BATTERY_CLASSES,
  classOfSize,
  DISTRO,
  GENERATOR_CLASSES,
  HOUSE_CIRCUIT,
  type MainsVolts,
} from '../../../core/kit/powerClasses';
import type { Plan } from '../../../core/plan/schema/plan';
import { mainsVoltsOf } from '../../../core/power/mainsVolts';
import { choice, named, reshaped, sizeFields } from './build';
import { circuitFields } from './circuitFields';
import type { FieldGroup, FieldSpec } from './types';

/** A number of a plate; `value` is what stands there now. */
const plate = (
  label: string,
  unit: string,
  value: number,
  change: (plan: Plan, value: number) => Plan,
): FieldSpec => ({
  form: 'number',
  label,
  unit,
  decimals: Number.isInteger(value) ? 0 : Number.isInteger(value * 10) ? 1 : 2,
  value,
  change,
});

/** Whether the numbers are the usual ones, for the reason said, or a plate's own. */
const numbersField = (id: string, own: object | undefined, usual: object, usually: string): FieldSpec => ({
  ...choice(
    'numbers',
    own ? 'own' : 'class',
    [
      ['class', usually],
      ['own', 'off its plate'],
    ],
    (plan, to) => reshaped(plan, id, { power: to === 'class' ? undefined : (own ?? usual) }),
  ),
  wide: true,
});
/** The same of what has classes by its size, and of what has none. */
const BY_SIZE = 'as such a size makes likely';
const AS_USUAL = 'as is usual';

/** Takes numbers of a plate to new values. */
type Put<Power> = (plan: Plan, patch: Partial<Power>) => Plan;
const putting =
  <Power extends object>(id: string, power: Power): Put<Power> =>
  (plan, patch) =>
    reshaped(plan, id, { power: { ...power, ...patch } });

const voltsField = ({ volts }: { readonly volts: number }, put: Put<{ volts: number }>): FieldSpec =>
  plate('volts', 'V', volts, (plan, to) => put(plan, { volts: to }));

interface Given {
  readonly continuousWatts: number;
  readonly peakWatts: number;
  readonly volts: number;
}

/** What a generator or a battery gives, for long and for moments, and its volts. */
const givenFields = (power: Given, put: Put<Given>): FieldSpec[] => [
  plate('for long', 'W', power.continuousWatts, (plan, continuousWatts) => put(plan, { continuousWatts })),
  plate('for moments', 'W', power.peakWatts, (plan, peakWatts) => put(plan, { peakWatts })),
  voltsField(power, put),
];

/** The class of a size; another takes its size and its numbers. */
function classField(
  id: string,
  size: readonly [number, number, number],
  classes: readonly { readonly id: string; readonly word: string; readonly size: readonly number[] }[],
): FieldSpec {
  const now = classes.find((each) => each.size.every((metres, axis) => metres === size[axis]));
  const other = now ? [] : [['', 'of another size'] as const];
  return {
    ...choice(
      'class',
      now?.id ?? '',
      [...other, ...classes.map((each) => [each.id, each.word] as const)],
      (plan, to) => {
        const found = classes.find((each) => each.id === to);
        return found ? reshaped(plan, id, { size: [...found.size], power: undefined }) : plan;
      },
    ),
    wide: true,
  };
}

/** At how much of its continuous watts what a generator burns is told. */
const BURNS = ['at a quarter', 'at a half', 'at three quarters', 'at full'] as const;

function generatorFields(gear: GearOf<'generator'>, mains: MainsVolts): FieldGroup[] {
  const { id, size } = gear;
  const usual = classOfSize(GENERATOR_CLASSES, size).power[mains];
  const power = gear.power ?? usual;
  const put = putting(id, power);
  return [
    {
      heading: 'What it gives',
      fields: [
        classField(id, size, GENERATOR_CLASSES),
        numbersField(id, gear.power, usual, BY_SIZE),
        ...givenFields(power, put),
      ],
    },
    ...circuitFields(power.circuits, (plan, circuits) => put(plan, { circuits })),
    {
      heading: 'Its tank, and what it burns',
      fields: [
        choice('fuel', power.fuel, named(['petrol', 'diesel']), (plan, fuel) => put(plan, { fuel })),
        plate('tank', 'L', power.tankLitres, (plan, tankLitres) => put(plan, { tankLitres })),
        ...BURNS.map((label, place) =>
          plate(label, 'L/h', power.litresPerHour[place], (plan, litres) => {
            const [quarter, half, threeQuarters, full] = power.litresPerHour.with(place, litres);
            return put(plan, { litresPerHour: [quarter, half, threeQuarters, full] });
          }),
        ),
      ],
    },
  ];
}

function batteryFields(gear: GearOf<'battery'>, mains: MainsVolts): FieldGroup[] {
  const { id, size } = gear;
  const usual = classOfSize(BATTERY_CLASSES, size).power[mains];
  const power = gear.power ?? usual;
  const put = putting(id, power);
  return [
    {
      heading: 'What it gives',
      fields: [
        classField(id, size, BATTERY_CLASSES),
        numbersField(id, gear.power, usual, BY_SIZE),
        plate('holds', 'Wh', power.wattHours, (plan, wattHours) => put(plan, { wattHours })),
        ...givenFields(power, put),
      ],
    },
    ...circuitFields(power.circuits, (plan, circuits) => put(plan, { circuits })),
  ];
}

function outletFields({ id, power: own }: GearOf<'outlet'>, mains: MainsVolts): FieldGroup[] {
  const usual = HOUSE_CIRCUIT[mains];
  const power = own ?? usual;
  const put = putting(id, power);
  return [
    {
      heading: 'What it gives',
      fields: [numbersField(id, own, usual, AS_USUAL), voltsField(power, put)],
    },
    ...circuitFields(power.circuits, (plan, circuits) => put(plan, { circuits })),
  ];
}

function distroFields({ id, power: own }: GearOf<'distro'>, mains: MainsVolts): FieldGroup[] {
  const usual = DISTRO[mains];
  const power = own ?? usual;
  const put = putting(id, power);
  return [
    {
      heading: 'What it divides',
      fields: [
        numbersField(id, own, usual, AS_USUAL),
        plate('inlet', 'A', power.inputAmps, (plan, inputAmps) => put(plan, { inputAmps })),
      ],
    },
    ...circuitFields(power.circuits, (plan, circuits) => put(plan, { circuits })),
  ];
}

/** What gives power or divides it: its class, its plate, its circuits, its tank, its size. */
export function supplyFields(
  plan: Plan,
  gear: GearOf<'generator' | 'battery' | 'outlet' | 'distro'>,
): FieldGroup[] {
  const mains = mainsVoltsOf(plan);
  const own =
    gear.kind === 'generator'
      ? generatorFields(gear, mains)
      : gear.kind === 'battery'
        ? batteryFields(gear, mains)
        : gear.kind === 'outlet'
          ? outletFields(gear, mains)
          : distroFields(gear, mains);
  return [...own, { heading: 'Size', fields: sizeFields(gear.id, gear.size) }];
}
