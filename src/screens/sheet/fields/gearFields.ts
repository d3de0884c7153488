import { runLength } from '../../../core/plan/runs';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { choice, countOf, lengthOf, named, reshaped, sizeFields, tiltField } from './build';
import { CLOTH_SIZES, clothSizeWord } from './clothSizes';
import { ridesField } from './dollyFields';
import { dimFields, lampFacts, lampFields } from './lampFields';
import { plugFields } from './plugFields';
import { standFields } from './standFields';
import type { FieldGroup, FieldSpec } from './types';

export type GearOf<Kind extends Gear['kind']> = Extract<Gear, { kind: Kind }>;

type Cloth = GearOf<'flag'> | GearOf<'frame'> | GearOf<'bounce'>;

function clothFields(cloth: Cloth): FieldSpec[] {
  const { id, size } = cloth;
  const sides = (['width', 'height'] as const).map(
    (label, axis): FieldSpec => ({
      form: 'length',
      label,
      metres: size[axis] ?? 0,
      change: (plan, metres) => reshaped(plan, id, { size: size.with(axis, metres) }),
    }),
  );
  const light: FieldSpec[] =
    cloth.kind === 'frame'
      ? [
          {
            form: 'share',
            label: 'lets through',
            share: cloth.transmission,
            change: (plan, transmission) => reshaped(plan, id, { transmission }),
          },
          {
            form: 'stops',
            label: 'in stops',
            share: cloth.transmission,
            change: (plan, transmission) => reshaped(plan, id, { transmission }),
          },
        ]
      : cloth.kind === 'bounce'
        ? [
            {
              form: 'share',
              label: 'gives back',
              share: cloth.reflectance,
              change: (plan, reflectance) => reshaped(plan, id, { reflectance }),
            },
          ]
        : [];
  return [
    {
      ...choice(
        'made size',
        clothSizeWord(size),
        named([...CLOTH_SIZES.map(({ word }) => word), 'free']),
        (plan, word) => {
          const made = CLOTH_SIZES.find((each) => each.word === word);
          return made ? reshaped(plan, id, { size: [...made.size] }) : plan;
        },
      ),
      wide: true,
    },
    ...sides,
    tiltField(id, cloth.tiltDegrees),
    ...light,
  ];
}

/** A cable goes round corners and up to what it feeds: a tenth more than it measures. Source: common practice, no source */
const SLACK = 1.1;

function cableFields(cable: GearOf<'cable'>, lengths: LengthSystem): FieldSpec[] {
  const metres = runLength(cable.path, false);
  return [
    { form: 'shown', label: 'along the deck', text: formatLength(metres, lengths) },
    { form: 'shown', label: 'with slack', text: formatLength(metres * SLACK, lengths, { decimals: 1 }) },
    lengthOf(cable.id, 'diameterMetres', 'diameter', cable.diameterMetres, true),
    lengthOf(cable.id, 'baseMetres', 'off the deck', cable.baseMetres),
  ];
}

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

function flickerFields({ id, flicker }: GearOf<'practical'>): FieldSpec[] {
  const field = (key: 'perSecond' | 'seed', label: string, decimals: number): FieldSpec[] =>
    flicker
      ? [
          {
            form: 'number',
            label,
            decimals,
            value: flicker[key],
            change: (plan, value) => reshaped(plan, id, { flicker: { ...flicker, [key]: value } }),
          },
        ]
      : [];
  return [
    choice('flickers', flicker ? 'yes' : 'no', named(['no', 'yes']), (plan, to) =>
      reshaped(plan, id, { flicker: to === 'yes' ? { seed: 1, perSecond: 6, depth: 0.6 } : undefined }),
    ),
    ...(flicker
      ? [
          {
            form: 'share',
            label: 'how deep',
            share: flicker.depth,
            change: (plan, depth) => reshaped(plan, id, { flicker: { ...flicker, depth } }),
          } satisfies FieldSpec,
        ]
      : []),
    ...field('perSecond', 'times a second', 1),
    ...field('seed', 'which pattern', 0),
  ];
}

/** What a piece of gear is made of, for its panel: the fields of its own kind. */
export function gearFields(plan: Plan, gear: Gear, lengths: LengthSystem): FieldGroup[] {
  const { id } = gear;
  switch (gear.kind) {
    case 'stand':
      return standFields(plan, gear);
    case 'head':
      return lampFields(plan, gear);
    case 'flag':
    case 'frame':
    case 'bounce':
      return [{ heading: 'The cloth', fields: clothFields(gear) }];
    case 'practical':
      return [
        {
          heading: 'The lamp',
          fields: [...dimFields(id, gear.dim), ...tintFields(gear), ...lampFacts(plan, gear.head, null)],
        },
        { heading: 'Its flicker', fields: flickerFields(gear) },
      ];
    case 'bulb string':
      return [
        {
          heading: 'The string',
          fields: [
            countOf(id, 'bulbs', 'bulbs', gear.bulbs),
            lengthOf(id, 'sagMetres', 'sag', gear.sagMetres),
            ...dimFields(id, gear.dim),
            ...lampFacts(plan, gear.head, null, gear.bulbs),
          ],
        },
      ];
    case 'cable':
      return [
        { heading: 'The cable', fields: cableFields(gear, lengths) },
        { heading: 'Plugged in', fields: plugFields(plan, gear) },
      ];
    case 'track':
      return [{ heading: 'The track', fields: trackFields(gear) }];
    case 'generator':
    case 'distro':
      return [{ heading: 'Size', fields: sizeFields(id, gear.size) }];
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
      ];
    case 'monitor':
      return [{ heading: 'Size', fields: [lengthOf(id, 'diagonalMetres', 'diagonal', gear.diagonalMetres)] }];
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
