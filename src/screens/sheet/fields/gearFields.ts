import type { GearOf } from '../../../core/form/gear/references';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { beforeFields } from './beforeFields';
import { choice, countOf, lengthOf, named, reshaped, sizeFields } from './build';
import { clothFields } from './clothFields';
import { cordFields } from './cordFields';
import { ridesField } from './dollyFields';
import { flickerFields } from './flickerFields';
import { dimFields, lampFacts, lampFields } from './lampFields';
import { loadFields } from './loadFields';
import { plugFields } from './plugFields';
import { standFields } from './standFields';
import { supplyFields } from './supplyFields';
import type { FieldGroup, FieldSpec } from './types';

/** The radius that a track gets when it is first bent. Source: common practice, no source */
const FIRST_BEND_METRES = 6;

function trackFields(track: GearOf<'track'>): FieldSpec[] {
  const { id, bendMetres } = track;
  const way = bendMetres === undefined ? 'straight' : bendMetres > 0 ? 'to the right' : 'to the left';
  const radius = Math.abs(bendMetres ?? FIRST_BEND_METRES);
  return [
    lengthOf(id, 'lengthMetres', 'length', track.lengthMetres),
    lengthOf(id, 'gaugeMetres', 'gauge', track.gaugeMetres),
    choice('bends', way, named(['straight', 'to the right', 'to the left']), (plan, to) =>
      reshaped(plan, id, {
        bendMetres: to === 'straight' ? undefined : to === 'to the right' ? radius : -radius,
      }),
    ),
    ...(bendMetres === undefined
      ? []
      : [
          {
            form: 'length',
            label: 'radius',
            metres: radius,
            change: (plan, metres) => reshaped(plan, id, { bendMetres: Math.sign(bendMetres) * metres }),
          } satisfies FieldSpec,
        ]),
  ];
}

/** What a piece of gear is made of, for its panel: the fields of its own kind. */
export function gearFields(plan: Plan, gear: Gear, lengths: LengthSystem): FieldGroup[] {
  const { id } = gear;
  switch (gear.kind) {
    case 'stand':
      return standFields(plan, gear);
    case 'head':
      return [...lampFields(plan, gear), loadFields(plan, gear)];
    case 'flag':
    case 'frame':
    case 'bounce':
      return [{ heading: 'The cloth', fields: clothFields(gear) }];
    case 'practical':
      return [
        {
          heading: 'The lamp',
          fields: [...dimFields(id, gear.dim), ...tintFields(gear), ...lampFacts(plan, gear)],
        },
        beforeFields(plan, gear),
        { heading: 'Its flicker', fields: flickerFields(gear) },
        loadFields(plan, gear),
      ];
    case 'bulb string':
      return [
        {
          heading: 'The string',
          fields: [
            countOf(id, 'bulbs', 'bulbs', gear.bulbs),
            lengthOf(id, 'sagMetres', 'sag', gear.sagMetres),
            ...dimFields(id, gear.dim),
            ...lampFacts(plan, gear, gear.bulbs),
          ],
        },
        beforeFields(plan, gear),
        loadFields(plan, gear),
      ];
    case 'cable':
      return [
        { heading: 'The cable', fields: cordFields(plan, gear, lengths) },
        { heading: 'Plugged in', fields: plugFields(plan, gear) },
      ];
    case 'track':
      return [{ heading: 'The track', fields: trackFields(gear) }];
    case 'generator':
    case 'distro':
    case 'outlet':
    case 'battery':
      return supplyFields(plan, gear);
    case 'appliance':
      return [loadFields(plan, gear), { heading: 'Size', fields: sizeFields(id, gear.size) }];
    case 'dolly':
      return [
        { heading: 'Size', fields: sizeFields(id, gear.size) },
        { heading: 'Camera', fields: [ridesField(plan, gear)] },
      ];
    case 'cart':
      return [
        {
          heading: 'Size',
          fields: [...sizeFields(id, gear.size), countOf(id, 'monitors', 'monitors', gear.monitors)],
        },
        loadFields(plan, gear),
      ];
    case 'monitor':
      return [
        { heading: 'Size', fields: [lengthOf(id, 'diagonalMetres', 'diagonal', gear.diagonalMetres)] },
        loadFields(plan, gear),
      ];
    case 'ladder':
      return [{ heading: 'Size', fields: [lengthOf(id, 'heightMetres', 'height', gear.heightMetres)] }];
    case 'sandbag':
      return [
        {
          heading: 'Weight',
          fields: [
            {
              form: 'number',
              label: 'weight',
              unit: 'kg',
              decimals: 1,
              value: gear.kilograms,
              change: (before, kilograms) => reshaped(before, id, { kilograms }),
            },
          ],
        },
      ];
  }
}

const tintFields = ({ id, tint }: GearOf<'practical'>): FieldSpec[] => [
  choice(
    'glows in',
    tint ? 'its own colour' : 'white',
    [
      ['white', 'its white'],
      ['its own colour', 'a colour'],
    ],
    (plan, to) => reshaped(plan, id, { tint: to === 'white' ? undefined : '#3a7bff' }),
  ),
  ...(tint
    ? [
        {
          form: 'colour',
          label: 'colour',
          colour: tint,
          change: (plan, colour) => reshaped(plan, id, { tint: colour }),
        } satisfies FieldSpec,
      ]
    : []),
];
