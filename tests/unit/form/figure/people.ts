import { figureParts } from '../../../../src/core/form/figure';
import { type Whereabouts, whereabouts } from '../../../../src/core/form/figure/whereabouts';
import type { PlacedPart } from '../../../../src/core/form/types';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Mark, Performer, Stance } from '../../../../src/core/plan/schema/cast';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { smallRoofDocument } from '../../smallRoof';

export const STANCES: readonly Stance[] = [
  'stand',
  'walk',
  'run',
  'crouch',
  'sit',
  'lean',
  'arms out',
  'reach',
  'holding',
];

export const MAN: Performer = {
  id: 'man',
  label: 'Man',
  figure: 'male',
  statureMetres: 1.755,
  build: 'medium',
  clothes: {
    upper: 'shirt',
    upperColour: '#7d93a6',
    lowerColour: '#333844',
    head: 'bare',
    headColour: '#40332a',
    skinColour: '#a97454',
  },
  marks: [],
};
export const WOMAN: Performer = {
  ...MAN,
  id: 'woman',
  label: 'Woman',
  figure: 'female',
  statureMetres: 1.626,
};

/** One of each garment, headgear, prop, build and sex, without trying every combination. */
export const EVERYONE: readonly Performer[] = [
  MAN,
  WOMAN,
  { ...MAN, build: 'heavy', prop: 'bird', clothes: { ...MAN.clothes, upper: 'coat', head: 'cap' } },
  { ...WOMAN, build: 'slight', prop: 'box', clothes: { ...MAN.clothes, upper: 'jersey', head: 'bun' } },
  { ...WOMAN, build: 'heavy', prop: 'ball', clothes: { ...MAN.clothes, upper: 'jacket', head: 'long hair' } },
  { ...MAN, statureMetres: 1.93, prop: 'case', clothes: { ...MAN.clothes, upper: 'coat', head: 'hood' } },
  { ...MAN, statureMetres: 0.95, clothes: { ...MAN.clothes, upper: 'jersey' } },
];

const parsed = parsePlan(smallRoofDocument());
if (!parsed.ok)
  throw new Error(parsed.faults.map(({ where, expected }) => `${where}: ${expected}`).join('\n'));
const ROOF: Plan = parsed.value;

type TimedMark = Partial<Mark> & { readonly atSeconds: number };

/** A plan of performers with their marks, and passes that are given by their instants. */
export function troupe(
  players: readonly { readonly who: Performer; readonly marks: readonly TimedMark[] }[],
  passes: readonly { readonly atSeconds: number; readonly from: string; readonly to: string }[] = [],
): Plan {
  const times = [...new Set([...players.flatMap(({ marks }) => marks), ...passes].map((at) => at.atSeconds))];
  const beats = times.map((atSeconds) => ({ id: `at-${atSeconds}`, label: `At ${atSeconds}`, atSeconds }));
  const cast = players.map(
    ({ who, marks }): Performer => ({
      ...who,
      marks: marks.map(({ atSeconds, ...mark }, k) => ({
        id: `${who.id}-${k}`,
        beat: `at-${atSeconds}`,
        at: [0, 0],
        headingDegrees: 0,
        stance: 'stand',
        holdSeconds: 0,
        ...mark,
      })),
    }),
  );
  return {
    ...ROOF,
    beats,
    cast,
    passes: passes.map(({ atSeconds, ...pass }, k) => ({
      id: `pass-${k}`,
      beat: `at-${atSeconds}`,
      ...pass,
    })),
  };
}

/** Whereabouts of one of a plan's cast; throws for nobody. */
export function found(plan: Plan, id: string, seconds: number): Whereabouts {
  const performer = plan.cast.find((one) => one.id === id);
  const at = performer && whereabouts(performer, plan, seconds);
  if (!at) throw new Error(`found nobody called ${id}, expected a performer`);
  return at;
}

/** Parts of one of a plan's cast. */
export const partsOf = (plan: Plan, id: string, seconds: number): readonly PlacedPart[] =>
  plan.cast.filter((one) => one.id === id).flatMap((one) => figureParts(one, plan, seconds));

/** A plan of one performer with a mark at each of the given instants. */
export function acted(
  who: Performer,
  marks: readonly TimedMark[],
): { readonly plan: Plan; readonly performer: Performer } {
  const performer: Performer = {
    ...who,
    marks: marks.map(({ atSeconds: _, ...mark }, k) => ({
      id: `mark-${k}`,
      beat: `beat-${k}`,
      at: [0, 0],
      headingDegrees: 0,
      stance: 'stand',
      holdSeconds: 0,
      ...mark,
    })),
  };
  const beats = marks.map(({ atSeconds }, k) => ({ id: `beat-${k}`, label: `Beat ${k}`, atSeconds }));
  return { plan: { ...ROOF, beats, cast: [performer] }, performer };
}

/** Every corner of placed parts in the world, metres. */
export function cornersOf(parts: readonly PlacedPart[]): [number, number, number][] {
  return parts.flatMap(({ shape, worldFromPart }) => {
    const m = worldFromPart ?? [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];
    const corners: [number, number, number][] = [];
    for (let k = 0; k < shape.positions.length; k += 3) {
      const [x, y, z] = shape.positions.subarray(k, k + 3);
      corners.push([
        m[0] * x + m[1] * y + m[2] * z + m[3],
        m[4] * x + m[5] * y + m[6] * z + m[7],
        m[8] * x + m[9] * y + m[10] * z + m[11],
      ]);
    }
    return corners;
  });
}

export function boxOf(parts: readonly PlacedPart[]) {
  const corners = cornersOf(parts);
  const along = (axis: 0 | 1 | 2) => corners.map((corner) => corner[axis]);
  const lowest = (axis: 0 | 1 | 2) => along(axis).reduce((a, b) => Math.min(a, b), Infinity);
  const highest = (axis: 0 | 1 | 2) => along(axis).reduce((a, b) => Math.max(a, b), -Infinity);
  return {
    low: [lowest(0), lowest(1), lowest(2)],
    high: [highest(0), highest(1), highest(2)],
    width: highest(0) - lowest(0),
    height: highest(1) - lowest(1),
    depth: highest(2) - lowest(2),
  };
}

export const named = (parts: readonly PlacedPart[], name: string): PlacedPart[] =>
  parts.filter((part) => part.name === name);
