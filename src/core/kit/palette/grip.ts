import { metresBetween } from '../../plan/runs';
import type { Gear } from '../../plan/schema/gear';
import type { HeadClass, StandClass } from '../../plan/schema/kit';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { standEnd } from '../../plan/standEnd';
import { BUILT_IN_KIT } from '../builtInKit';
import { standOf } from '../inKit';
import { NETS } from '../nets';
import type { Making, MakingEntry, NewItem } from './entry';
import { onSurface } from './heights';

/** What is put this near to an empty stand's end goes onto it, metres. Source: common practice, no source */
const STAND_REACH_METRES = 0.4;
/** Side of a 4 by 4 and of an 8 by 8 foot frame, metres. Source: common practice, no source */
const FOUR_FEET = 1.22;
const EIGHT_FEET = 2.44;

type Unnamed = Extract<NewItem, { readonly section: 'gear' }>['record'];

export const common = { section: 'gear', group: 'Stands and grip' } as const;

/** The stand class of the built-in kit, as the plan has it where it has one of that id. */
function standClassFor(plan: Plan, id: string): StandClass {
  const found = standOf(plan.kit, id) ?? standOf(BUILT_IN_KIT, id);
  if (!found) throw new Error(`Palette: found the stand "${id}", expected one of the built-in kit`);
  return found;
}

/** A stand of a class at the drawn place, its spigot so high as the class lets it. */
export function standItem(
  making: Making,
  classId: string,
  stem: string,
  heightMetres: number,
  armMetres = 0,
): NewItem {
  const standClass = standClassFor(making.plan, classId);
  return {
    section: 'gear',
    stem,
    stands: [standClass],
    record: {
      kind: 'stand',
      stand: classId,
      at: onSurface(making.plan, making.spots[0]),
      headingDegrees: making.headingDegrees,
      heightMetres: Math.min(Math.max(heightMetres, standClass.lowestMetres), standClass.highestMetres),
      ...(armMetres > 0 && {
        arm: { lengthMetres: armMetres, tiltDegrees: 20, headingDegrees: making.headingDegrees },
      }),
    },
  };
}

/** The stand that carries nothing yet and whose end is nearest to a place, within reach; null where there is none. */
export function emptyStandNear(plan: Plan, spot: Spot): string | null {
  const laden = new Set(
    plan.gear.flatMap((gear) => ('place' in gear && 'on' in gear.place ? [gear.place.on] : [])),
  );
  let found: string | null = null;
  let nearest = STAND_REACH_METRES;
  for (const gear of plan.gear) {
    if (gear.kind !== 'stand' || laden.has(gear.id)) continue;
    const [x, , z] = standEnd(gear);
    const away = metresBetween([x, z], spot);
    if (away > nearest) continue;
    nearest = away;
    found = gear.id;
  }
  return found;
}

/** Something that a stand carries: on the empty stand at the place, else on one of its own that comes with it. */
export function carriedItems(
  making: Making,
  stand: {
    readonly classId: string;
    readonly stem: string;
    readonly heightMetres: number;
    readonly armMetres?: number;
  },
  carried: { readonly stem: string; readonly record: Unnamed; readonly heads?: readonly HeadClass[] },
): readonly NewItem[] {
  const near = emptyStandNear(making.plan, making.spots[0]);
  const item = { section: 'gear', ...carried } as const;
  if (near !== null) return [{ ...item, onto: { standId: near } }];
  return [
    standItem(making, stand.classId, stand.stem, stand.heightMetres, stand.armMetres),
    { ...item, onto: 'item before' },
  ];
}

const stand = (
  id: string,
  word: string,
  classId: string,
  heightMetres: number,
  also: readonly string[],
  armMetres = 0,
): MakingEntry => ({
  ...common,
  id,
  word,
  kind: 'stand',
  how: 'spot',
  icon: 'stand',
  also,
  make: (making) => [standItem(making, classId, word, heightMetres, armMetres)],
});

type Cloth = Extract<Gear, { readonly kind: 'flag' | 'frame' | 'bounce' }>['kind'];

/** A cloth of a size in metres, hung upright. */
function cloth(
  named: Pick<MakingEntry, 'id' | 'word' | 'also'>,
  kind: Cloth,
  [width, height]: readonly [number, number],
  share: number,
): MakingEntry {
  const isWide = width > FOUR_FEET;
  return {
    ...common,
    ...named,
    kind,
    how: 'spot',
    icon: kind,
    make: (making) => {
      const hung = {
        place: { at: onSurface(making.plan, making.spots[0], height / 2 + 0.5) },
        headingDegrees: making.headingDegrees,
        tiltDegrees: 0,
        size: [width, height] as [number, number],
      };
      const stem = named.word;
      const record =
        kind === 'flag'
          ? ({ kind, ...hung, ...(share > 0 && { transmission: share }) } as const)
          : kind === 'frame'
            ? ({ kind, ...hung, transmission: share } as const)
            : ({ kind, ...hung, reflectance: share } as const);
      const carrier = isWide
        ? { classId: 'combo-stand', stem: 'Combo stand', heightMetres: 3 }
        : { classId: 'flag-stand', stem: 'Flag stand', heightMetres: 2 };
      return carriedItems(making, carrier, { stem, record });
    },
  };
}

/** Stands, cloths and what holds them down, by their common sizes. Source: common practice, no source */
export const GRIP_ENTRIES: readonly MakingEntry[] = [
  stand('small-stand', 'Small stand', 'light-stand', 2, ['light stand', 'baby stand', 'kit stand']),
  stand('medium-stand', 'Medium stand', 'three-riser-stand', 3, ['lamp stand', 'three riser', 'tall stand']),
  stand('tall-stand', 'Tall stand', 'three-riser-stand', 4.4, ['lamp stand', 'three riser', 'high']),
  stand('low-stand', 'Low stand', 'low-stand', 0.8, ['low boy', 'floor stand', 'short']),
  stand('combo-stand', 'Combo stand', 'combo-stand', 2.8, ['heavy stand', 'junior stand']),
  stand(
    'combo-stand-arm',
    'Combo stand with arm',
    'combo-stand',
    2.8,
    ['boom', 'extension', 'heavy stand'],
    1.2,
  ),
  stand('flag-stand', 'Flag stand', 'flag-stand', 2, ['grip stand', 'century stand']),
  cloth({ id: 'flag', word: 'Flag', also: ['black', 'cutter', 'solid'] }, 'flag', [0.91, 0.61], 0),
  cloth(
    { id: 'flag-4x4', word: 'Flag, 4 by 4', also: ['black', 'floppy', 'solid'] },
    'flag',
    [FOUR_FEET, FOUR_FEET],
    0,
  ),
  cloth(
    { id: 'single-net', word: 'Single net', also: ['flag', 'scrim', 'half stop', '4 by 4'] },
    'flag',
    [FOUR_FEET, FOUR_FEET],
    NETS.single,
  ),
  cloth(
    { id: 'double-net', word: 'Double net', also: ['flag', 'scrim', 'one stop', '4 by 4'] },
    'flag',
    [FOUR_FEET, FOUR_FEET],
    NETS.double,
  ),
  cloth(
    { id: 'frame-4x4', word: 'Frame, 4 by 4', also: ['diffusion', 'silk', 'butterfly'] },
    'frame',
    [FOUR_FEET, FOUR_FEET],
    0.5,
  ),
  cloth(
    { id: 'frame-8x8', word: 'Frame, 8 by 8', also: ['diffusion', 'silk', 'overhead', 'butterfly'] },
    'frame',
    [EIGHT_FEET, EIGHT_FEET],
    0.5,
  ),
  cloth(
    { id: 'bounce', word: 'Bounce', also: ['reflector', 'white', 'board', 'polystyrene', '4 by 4'] },
    'bounce',
    [FOUR_FEET, FOUR_FEET],
    0.8,
  ),
  {
    ...common,
    id: 'sandbag',
    word: 'Sandbag',
    kind: 'sandbag',
    how: 'spot',
    icon: 'sandbag',
    also: ['weight', 'bag', 'ballast'],
    make: ({ plan, spots, headingDegrees }) => [
      {
        section: 'gear',
        stem: 'Sandbag',
        record: { kind: 'sandbag', at: onSurface(plan, spots[0]), headingDegrees, kilograms: 10 },
      },
    ],
  },
  {
    ...common,
    id: 'ladder',
    word: 'Step ladder',
    kind: 'ladder',
    how: 'spot',
    icon: 'ladder',
    also: ['steps', 'climb'],
    make: ({ plan, spots, headingDegrees }) => [
      {
        section: 'gear',
        stem: 'Step ladder',
        record: { kind: 'ladder', at: onSurface(plan, spots[0]), headingDegrees, heightMetres: 2.4 },
      },
    ],
  },
];
