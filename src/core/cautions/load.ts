import { type Stand, standClassOf } from '../form/gear/references';
import { legsOfStand } from '../form/gear/stand';
import { named } from '../plan/named';
import type { Gear } from '../plan/schema/gear';
import type { Point } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import { hypot } from '../units/steadyMath';
import { caution } from './caution';
import { operatorOf } from './edges/people';
import type { Caution, Figure } from './types';
import { type OnStands, onStandsOf, standingOf } from './wind/standingOf';
import { NEWTONS_PER_KILOGRAM } from './wind/tipping';
import { figure, namesOf } from './words';

/** What an ordinary flat roof is reckoned for, kN/m²; an old one may bear less. Source: [roof-load] */
const ORDINARY_ROOF = 0.96;
/** Somebody in winter clothes with what they carry, kg. Source: common practice, no source */
const PERSON_KILOGRAMS = 90;
/** A load is taken to spread over a square metre at least. Source: common practice, no source */
const LEAST_AREA = 1;
/** People within so much of each other count as one load, metres. Source: common practice, no source */
const CROWD_METRES = 1;
/** What gear weighs by the room that it takes, kg/m³. Source: common practice, no source */
const KG_PER_CUBIC_METRE = { generator: 350, distro: 200, cart: 150, dolly: 300 } as const;
/** A camera with what carries it, kg, beside who works it. Source: common practice, no source */
const CAMERA_KILOGRAMS = {
  dolly: 220,
  jib: 150,
  sticks: 35,
  slider: 45,
  ladder: 40,
  handheld: 15,
  'body rig': 30,
} as const;
/** A dolly and a jib take two people with them. Source: common practice, no source */
const CREW = { dolly: 2, jib: 2, sticks: 1, slider: 1, ladder: 1, handheld: 1, 'body rig': 1 } as const;

const KILO = 1000;
const kilonewtons = (kilograms: number): number => (kilograms * NEWTONS_PER_KILOGRAM) / KILO;

/** Something that weighs on the deck. */
interface Weight {
  readonly name: string;
  readonly itemIds: readonly string[];
  readonly setupIds: readonly string[];
  readonly at: Point;
  readonly kilograms: number;
  /** How many feet or wheels share it. */
  readonly feet: number;
  /** What it spreads over, m². */
  readonly area: number;
}

function standWeight(plan: Plan, stand: Stand, on: OnStands): Weight {
  const { kilograms, itemIds } = standingOf(plan, stand, on);
  const { reach } = legsOfStand(stand, standClassOf(stand, plan));
  return {
    name: named(stand.label),
    itemIds,
    setupIds: [],
    at: stand.at,
    kilograms,
    feet: 3,
    area: Math.PI * reach * reach,
  };
}

function gearWeight(plan: Plan, gear: Gear, on: OnStands): readonly Weight[] {
  switch (gear.kind) {
    case 'stand':
      return [standWeight(plan, gear, on)];
    case 'generator':
    case 'distro':
    case 'cart':
    case 'dolly': {
      // A dolly that a camera rides on is counted with it.
      if (gear.kind === 'dolly' && gear.rides !== undefined) return [];
      const [width, height, depth] = gear.size;
      return [
        {
          name: named(gear.label),
          itemIds: [gear.id],
          setupIds: [],
          at: gear.at,
          kilograms: width * height * depth * KG_PER_CUBIC_METRE[gear.kind],
          feet: 4,
          area: width * depth,
        },
      ];
    }
    default:
      return [];
  }
}

const cameraWeights = (plan: Plan): readonly Weight[] =>
  plan.setups.flatMap((setup): Weight[] => {
    const [stand] = operatorOf(plan, setup);
    if (!stand) return [];
    const { support } = setup;
    return [
      {
        name: `The camera of ${named(setup.label)} with its crew`,
        itemIds: [],
        setupIds: [setup.id],
        at: [stand.at[0], stand.floorMetres, stand.at[1]],
        kilograms: CAMERA_KILOGRAMS[support] + CREW[support] * PERSON_KILOGRAMS,
        feet: support === 'dolly' || support === 'jib' ? 4 : 3,
        area: support === 'dolly' || support === 'jib' ? 1.5 : LEAST_AREA,
      },
    ];
  });

/** The densest crowd of the cast at a beat: all within reach of one of their marks. */
function crowdWeight(plan: Plan): readonly Weight[] {
  let most: Weight | null = null;
  for (const { id } of plan.beats) {
    const marks = plan.cast.flatMap((performer) => {
      const mark = performer.marks.find(({ beat }) => beat === id);
      return mark ? [{ performer, mark }] : [];
    });
    for (const { mark } of marks) {
      const near = marks.filter(
        ({ mark: { at } }) => hypot(at[0] - mark.at[0], at[1] - mark.at[1]) <= CROWD_METRES,
      );
      if (near.length < 2 || (most && most.itemIds.length >= near.length)) continue;
      most = {
        name: namesOf(
          plan,
          near.map(({ performer }) => performer.id),
        ),
        itemIds: near.map(({ performer }) => performer.id),
        setupIds: [],
        at: [mark.at[0], mark.floorMetres ?? 0, mark.at[1]],
        kilograms: near.length * PERSON_KILOGRAMS,
        feet: 2 * near.length,
        area: Math.PI * CROWD_METRES * CROWD_METRES,
      };
    }
  }
  return most ? [most] : [];
}

const spread = ({ kilograms, area }: Weight): number => kilonewtons(kilograms) / Math.max(area, LEAST_AREA);
const underFoot = ({ kilograms, feet }: Weight): number => kilonewtons(kilograms) / feet;

function figuresOf(weight: Weight, area: number | undefined, foot: number | undefined): readonly Figure[] {
  return [
    { name: 'weighs', value: weight.kilograms, unit: 'kg' },
    {
      name: 'spread over its feet, a square metre at least',
      value: spread(weight),
      unit: 'kN/m²',
      ...(area !== undefined && { expected: area }),
    },
    {
      name: 'under one foot or wheel, standing still',
      value: underFoot(weight),
      unit: 'kN',
      ...(foot !== undefined && { expected: foot }),
    },
  ];
}

const tooHeavy = (weight: Weight, area: number | undefined, foot: number | undefined): boolean =>
  (area !== undefined && spread(weight) > area) || (foot !== undefined && underFoot(weight) > foot);

/** What a weight comes to, in words. */
const comesTo = (weight: Weight): string =>
  `${weight.name} ${weight.feet > 4 ? 'weigh' : 'weighs'} about ${figure(weight.kilograms, 0, 'kg')}: ${figure(spread(weight), 2, 'kN/m²')}, and ${figure(underFoot(weight), 2, 'kN')} under a foot`;

/**
 * What weighs on the deck: gear on its feet, cameras with who works them, the cast where they stand closest. Held against
 * what the roof is said to carry, or else the heaviest is told with what ordinary roofs are reckoned for. Masses are
 * estimates where no class has them. Source: [roof-load]
 */
export function loadCautions(plan: Plan): readonly Caution[] {
  const on = onStandsOf(plan);
  const weights = [
    ...plan.gear.flatMap((gear) => gearWeight(plan, gear, on)),
    ...cameraWeights(plan),
    ...crowdWeight(plan),
  ];
  if (weights.length === 0) return [];
  const said = plan.cautions?.roofLoad;
  const area = said?.kilonewtonsPerSquareMetre;
  const foot = said?.kilonewtons;
  if (said) {
    const heavy = weights.filter((weight) => tooHeavy(weight, area, foot));
    if (heavy.length > 0)
      return heavy.map((weight) => {
        const limits = [
          ...(area === undefined ? [] : [figure(area, 2, 'kN/m²')]),
          ...(foot === undefined ? [] : [`${figure(foot, 2, 'kN')} under a foot`]),
        ].join(' and ');
        return caution({
          kind: 'load',
          about: 'load-over',
          standing: 'breaks',
          itemIds: weight.itemIds,
          setupIds: weight.setupIds,
          keyIds: [...weight.itemIds.slice(0, 1), ...weight.setupIds],
          place: weight.at,
          figures: figuresOf(weight, area, foot),
          sentence: `${comesTo(weight)}, where the roof is said to carry ${limits}. Spread it on boards over the beams, or bring less.`,
          sources: [],
        });
      });
  }
  const heaviest = weights.reduce((a, b) => (spread(b) > spread(a) ? b : a));
  const sentence = said
    ? `${comesTo(heaviest)}, the most of all that stands here; the roof is said to carry it. What people add by walking and jumping is not in it.`
    : `${comesTo(heaviest)}, the most of all that stands here; ordinary flat roofs are reckoned for about ${figure(ORDINARY_ROOF, 2, 'kN/m²')}. What this one carries, its owner or an engineer has to say.`;
  return [
    caution({
      kind: 'load',
      about: 'load-most',
      standing: said ? 'holds' : 'said',
      keyIds: [],
      itemIds: heaviest.itemIds,
      setupIds: heaviest.setupIds,
      place: heaviest.at,
      figures: figuresOf(heaviest, said ? area : ORDINARY_ROOF, foot),
      sentence,
      sources: said ? [] : ['roof-load'],
    }),
  ];
}
