import { BUILT_IN_KIT } from '../../../core/kit/builtInKit';
import { standOf } from '../../../core/kit/inKit';
import { setArm } from '../../../core/plan/edits/setArm';
import { setBags } from '../../../core/plan/edits/setBags';
import { setClass } from '../../../core/plan/edits/setClass';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { choice, reshaped } from './build';
import type { FieldGroup, FieldSpec } from './types';

/** Legs that stand closer than this hold nothing up: the least that a plan takes. */
const NARROWEST_METRES = 0.1;

type Stand = Extract<Gear, { kind: 'stand' }>;

/** Classes that may be chosen: the plan's own, then those that it lacks and the program knows. */
export function offered<Entry extends { readonly id: string }>(
  own: readonly Entry[],
  known: readonly Entry[],
): readonly Entry[] {
  return [...own, ...known.filter(({ id }) => !own.some((entry) => entry.id === id))];
}

function armFields({ id, arm, headingDegrees }: Stand): FieldSpec[] {
  const has = choice(
    'arm',
    arm ? 'yes' : 'no',
    [
      ['no', 'none'],
      ['yes', 'on top'],
    ],
    (plan, to) =>
      setArm(plan, { id, arm: to === 'yes' ? { lengthMetres: 1, tiltDegrees: 0, headingDegrees } : null }),
  );
  if (!arm) return [has];
  return [
    has,
    {
      form: 'length',
      label: 'arm length',
      metres: arm.lengthMetres,
      change: (plan, lengthMetres) => reshaped(plan, id, { arm: { ...arm, lengthMetres } }),
    },
    {
      form: 'number',
      label: 'arm tilt',
      unit: '°',
      decimals: 1,
      value: arm.tiltDegrees,
      change: (plan, tiltDegrees) => reshaped(plan, id, { arm: { ...arm, tiltDegrees } }),
    },
    {
      form: 'heading',
      label: 'arm heading',
      degrees: arm.headingDegrees,
      change: (plan, degrees) => reshaped(plan, id, { arm: { ...arm, headingDegrees: degrees } }),
    },
  ];
}

function bagFields({ id, bags }: Stand): FieldSpec[] {
  return [
    {
      form: 'number',
      label: 'sandbags',
      value: bags?.count ?? 0,
      change: (plan, count) =>
        count === 0
          ? setBags(plan, { id, bags: null })
          : reshaped(plan, id, { bags: { kilograms: 10, ...bags, count } }),
    },
    ...(bags
      ? [
          {
            form: 'number',
            label: 'each',
            unit: 'kg',
            decimals: 1,
            value: bags.kilograms,
            change: (plan, kilograms) => reshaped(plan, id, { bags: { ...bags, kilograms } }),
          } satisfies FieldSpec,
        ]
      : []),
  ];
}

/** A stand: its class, how high and how wide it stands, its arm, its bags. */
export function standFields(plan: Plan, stand: Stand): FieldGroup[] {
  const { id } = stand;
  const own = standOf(plan.kit, stand.stand);
  const classes = offered(plan.kit.stands, BUILT_IN_KIT.stands);
  return [
    {
      heading: 'The stand',
      fields: [
        {
          ...choice(
            'class',
            stand.stand,
            classes.map((each) => [each.id, each.label] as const),
            (before, to) => {
              const found = classes.find((each) => each.id === to);
              return found ? setClass(before, { id, stand: found }) : before;
            },
          ),
          wide: true,
        },
        {
          form: 'length',
          label: 'height',
          metres: stand.heightMetres,
          ...(own
            ? {
                reach: {
                  lowestMetres: own.lowestMetres,
                  highestMetres: own.highestMetres,
                  sentence: 'This stand goes',
                },
              }
            : {}),
          change: (before, heightMetres) => reshaped(before, id, { heightMetres }),
        },
        {
          form: 'length',
          label: 'spread',
          metres: stand.spreadMetres ?? own?.footprintMetres ?? 0,
          ...(own
            ? {
                reach: {
                  lowestMetres: NARROWEST_METRES,
                  highestMetres: own.footprintMetres,
                  sentence: 'The legs of this stand spread',
                },
              }
            : {}),
          change: (before, spreadMetres) => reshaped(before, id, { spreadMetres }),
        },
      ],
    },
    { heading: 'Arm', fields: armFields(stand) },
    { heading: 'Weight on the legs', fields: bagFields(stand) },
  ];
}
