import { directionOf, length, mix, subtract, type Vec3 } from '../../form/build/vector';
import { type Cloth, clothSheet, isCloth } from '../../form/gear/cloth';
import { headPlace } from '../../form/gear/headPlace';
import { type GearOf, headClassOf, type Stand, standClassOf } from '../../form/gear/references';
import { screenSize } from '../../form/gear/screen';
import { ARM_RADIUS, legBags, legsOfStand, standFeet } from '../../form/gear/stand';
import { standTop } from '../../form/gear/standTop';
import type { Gear } from '../../plan/schema/gear';
import type { StandClass } from '../../plan/schema/kit';
import type { Plan } from '../../plan/schema/plan';
import { hypot } from '../../units/steadyMath';
import { plateCoefficient, tubeCoefficient } from './drag';
import { armKilograms, clothKilograms, headKilograms, monitorKilograms, standKilograms } from './masses';
import type { Mass, Sail, Standing } from './tipping';

/** A softbox or a lantern is so many times as wide as the head before which it is. Source: common practice, no source */
const MODIFIER_WIDTH: Readonly<Record<NonNullable<GearOf<'head'>['modifier']>, number>> = {
  softbox: 2.5,
  lantern: 2.5,
  'barn doors': 1.6,
  grid: 1,
  snoot: 1,
};

/** What a stand and all that it carries is against the wind. */
export interface StandStanding extends Standing {
  /** The stand, what it carries, and the bags that lie on its legs. */
  readonly itemIds: readonly string[];
  /** Whether it carries a cloth or a sail of some size, not just a head. */
  readonly hasCloth: boolean;
  /** Ballast that lies on it already, kg. */
  readonly ballastKilograms: number;
  readonly kilograms: number;
}

/** The column above the legs and the arm, as tubes. */
function tubes(stand: Stand, standClass: StandClass): readonly Sail[] {
  const { collar } = legsOfStand(stand, standClass);
  const [x, foot, z] = stand.at;
  const tube = (from: Vec3, to: Vec3, diameter: number): Sail => {
    const long = length(subtract(to, from));
    return {
      dragArea: tubeCoefficient(diameter, long) * diameter * long,
      at: mix(from, to, 0.5),
      normal: null,
    };
  };
  const top: Vec3 = [x, foot + stand.heightMetres, z];
  const column = tube([x, foot + Math.min(collar, stand.heightMetres), z], top, standClass.baseTubeMetres);
  return stand.arm ? [column, tube(top, standTop(stand).at, 2 * ARM_RADIUS)] : [column];
}

function headIn(head: GearOf<'head'>, plan: Plan): { readonly mass: Mass; readonly sail: Sail } {
  const headClass = headClassOf(head, plan);
  const { pivot } = headPlace(head, headClass, plan);
  const [width, height, depth] = headClass.size;
  const by = head.modifier ? MODIFIER_WIDTH[head.modifier] : 1;
  // Its largest side, whichever way the wind comes.
  const [wide, high] = [Math.max(width * by, depth), height * by];
  return {
    mass: { kilograms: headKilograms(headClass), at: pivot },
    sail: { dragArea: plateCoefficient(wide, high) * wide * high, at: pivot, normal: null },
  };
}

/** The drag area of a cloth, m². A net lets through the square of its open share at most. Source: common practice, no source */
export function clothDragArea(cloth: Cloth): number {
  const [width, height] = cloth.size;
  const open = cloth.kind === 'flag' ? (cloth.transmission ?? 0) : 0;
  return plateCoefficient(width, height) * width * height * (1 - open * open);
}

function clothIn(cloth: Cloth, plan: Plan): { readonly mass: Mass; readonly sail: Sail } {
  const at = clothSheet(cloth, plan).middle;
  const normal = directionOf(cloth.headingDegrees, cloth.tiltDegrees);
  return {
    mass: { kilograms: clothKilograms(cloth), at },
    sail: { dragArea: clothDragArea(cloth), at, normal },
  };
}

function monitorIn(monitor: GearOf<'monitor'>, stand: Stand): { readonly mass: Mass; readonly sail: Sail } {
  const [width, height] = screenSize(monitor.diagonalMetres);
  const { at } = standTop(stand);
  return {
    mass: { kilograms: monitorKilograms(monitor), at },
    sail: {
      dragArea: plateCoefficient(width, height) * width * height,
      at,
      normal: directionOf(monitor.headingDegrees),
    },
  };
}

function carriedIn(
  gear: Gear,
  stand: Stand,
  plan: Plan,
): { readonly mass: Mass; readonly sail: Sail } | null {
  switch (gear.kind) {
    case 'head':
      return headIn(gear, plan);
    case 'flag':
    case 'frame':
    case 'bounce':
      return clothIn(gear, plan);
    case 'monitor':
      return monitorIn(gear, stand);
    default:
      return null;
  }
}

/** What may be on the stands of a plan, found once for all of them. */
export interface OnStands {
  /** What hangs on each, by the id of the stand. */
  readonly carried: ReadonlyMap<string, readonly Gear[]>;
  readonly bags: readonly GearOf<'sandbag'>[];
}

/** Finds what may be on the stands of a plan, in its order. */
export function onStandsOf({ gear }: Plan): OnStands {
  const carried = new Map<string, Gear[]>();
  for (const each of gear) {
    if (!('place' in each && 'on' in each.place)) continue;
    const others = carried.get(each.place.on);
    if (others) others.push(each);
    else carried.set(each.place.on, [each]);
  }
  return { carried, bags: gear.flatMap((each) => (each.kind === 'sandbag' ? [each] : [])) };
}

/** Sandbags of their own that lie within the circle of a stand's feet: they are taken to lie on its legs. */
const looseBags = (bags: OnStands['bags'], { at }: Stand, reach: number): OnStands['bags'] =>
  bags.filter(
    (bag) => Math.abs(bag.at[1] - at[1]) <= 0.5 && hypot(bag.at[0] - at[0], bag.at[2] - at[2]) <= reach,
  );

/**
 * A stand with its legs, all that it carries, and its bags, as the wind finds it.
 * @param on what may be on the stands of the plan, for whoever asks of many
 */
export function standingOf(plan: Plan, stand: Stand, on = onStandsOf(plan)): StandStanding {
  const standClass = standClassOf(stand, plan);
  const feet = standFeet(stand, standClass);
  const carried = on.carried.get(stand.id) ?? [];
  const bags = looseBags(on.bags, stand, legsOfStand(stand, standClass).reach);
  const found = carried.flatMap((gear) => carriedIn(gear, stand, plan) ?? []);
  const kilogramsOfBag = stand.bags?.kilograms ?? 0;
  const ballast: readonly Mass[] = [
    ...legBags(stand, standClass).map(({ at }): Mass => ({ kilograms: kilogramsOfBag, at })),
    ...bags.map(({ at, kilograms }): Mass => ({ kilograms, at })),
  ];
  const { arm } = stand;
  const armMass: readonly Mass[] = arm
    ? [
        {
          kilograms: armKilograms(arm.lengthMetres),
          at: mix(stand.at, standTop(stand).at, 0.5),
        },
      ]
    : [];
  const masses: readonly Mass[] = [
    { kilograms: standKilograms(standClass), at: stand.at },
    ...armMass,
    ...found.map(({ mass }) => mass),
    ...ballast,
  ];
  const sum = (list: readonly Mass[]): number => list.reduce((all, { kilograms }) => all + kilograms, 0);
  return {
    itemIds: [stand, ...carried, ...bags].map(({ id }) => id),
    hasCloth: carried.some(isCloth),
    feet,
    masses,
    sails: [...tubes(stand, standClass), ...found.map(({ sail }) => sail)],
    ballastKilograms: sum(ballast),
    kilograms: sum(masses),
  };
}
