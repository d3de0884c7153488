import { tidyMetres } from '../../plan/edits/tidy';
import { metresBetween, spotFrom } from '../../plan/runs';
import type { HeadClass } from '../../plan/schema/kit';
import type { Point } from '../../plan/schema/numbers';
import { HEADS } from '../heads';
import { headOf } from '../inKit';
import type { Making, MakingEntry, PaletteGroup } from './entry';
import { carriedItems } from './grip';
import { endsOf, onSurface, tiedAt } from './heights';

/** Where a new lamp is aimed: at somebody's chest within this reach, else so far ahead. Source: common practice, no source */
const AIM_REACH_METRES = 20;
const AIM_AHEAD_METRES = 4;
const AIM_HEIGHT_METRES = 1.3;
const BARE_HEIGHT_METRES = 2;
const BULBS_HEIGHT_METRES = 2.8;
/** A bulb every so many metres. Source: common practice, no source */
const BULB_GAP_METRES = 0.75;

/** The nearest first mark, where nobody said a heading; else a point ahead. */
function aimOf({ plan, spots, headingDegrees, headed }: Making): Point {
  const from = spots[0];
  const marks = headed
    ? []
    : plan.cast
        .flatMap(({ marks: all }) => all.slice(0, 1))
        .map((mark) => ({ mark, metres: metresBetween(from, mark.at) }))
        .filter(({ metres }) => metres > 0.5 && metres <= AIM_REACH_METRES)
        .toSorted((a, b) => a.metres - b.metres);
  const nearest = marks[0]?.mark;
  if (nearest) return [nearest.at[0], (nearest.floorMetres ?? 0) + AIM_HEIGHT_METRES, nearest.at[1]];
  return onSurface(plan, spotFrom(from, headingDegrees, AIM_AHEAD_METRES), AIM_HEIGHT_METRES);
}

interface LampOnStand {
  readonly head: string;
  readonly word: string;
  readonly also: readonly string[];
  readonly icon: string;
  readonly classId: string;
  readonly heightMetres: number;
}

/** Heads that the crew brings, with the stand that each commonly comes on. Source: common practice, no source */
const ON_STANDS: readonly LampOnStand[] = [
  {
    head: 'led-spot-300',
    word: 'Spot, 300 W',
    also: ['led', 'reflector'],
    icon: 'spot',
    classId: 'three-riser-stand',
    heightMetres: 2.8,
  },
  {
    head: 'led-bare-300',
    word: 'Bare spot, 300 W',
    also: ['led', 'open face', 'no reflector'],
    icon: 'spot',
    classId: 'three-riser-stand',
    heightMetres: 2.8,
  },
  {
    head: 'led-fresnel-300',
    word: 'Fresnel, 300 W',
    also: ['led', 'lens'],
    icon: 'fresnel',
    classId: 'three-riser-stand',
    heightMetres: 2.8,
  },
  {
    head: 'led-spot-600',
    word: 'Spot, 600 W',
    also: ['led', 'reflector'],
    icon: 'spot',
    classId: 'combo-stand',
    heightMetres: 3,
  },
  {
    head: 'led-bare-600',
    word: 'Bare spot, 600 W',
    also: ['led', 'open face', 'no reflector'],
    icon: 'spot',
    classId: 'combo-stand',
    heightMetres: 3,
  },
  {
    head: 'led-fresnel-600',
    word: 'Fresnel, 600 W',
    also: ['led', 'lens'],
    icon: 'fresnel',
    classId: 'combo-stand',
    heightMetres: 3,
  },
  {
    head: 'led-panel',
    word: 'Panel, 200 W',
    also: ['led', 'soft'],
    icon: 'panel',
    classId: 'three-riser-stand',
    heightMetres: 2.4,
  },
  {
    head: 'led-tube',
    word: 'Tube, 1.2 m',
    also: ['led', 'stick'],
    icon: 'tube',
    classId: 'light-stand',
    heightMetres: 2,
  },
  {
    head: 'battery-lamp',
    word: 'Battery lamp',
    also: ['led', 'small', 'on-board'],
    icon: 'battery',
    classId: 'light-stand',
    heightMetres: 1.6,
  },
  {
    head: 'work-light',
    word: 'Work light',
    also: ['flood', 'site'],
    icon: 'worklight',
    classId: 'light-stand',
    heightMetres: 1.8,
  },
];

/** The class of the plan's own kit where it has one of that id, else the built-in one. */
function headClassFor({ plan }: Making, id: string): HeadClass {
  const found = headOf(plan.kit, id) ?? HEADS.find((entry) => entry.id === id);
  if (!found) throw new Error(`Palette: found the head "${id}", expected one of the built-in kit`);
  return found;
}

const lampEntry = (group: PaletteGroup, id: string, lamp: Pick<LampOnStand, 'word' | 'also' | 'icon'>) => ({
  section: 'gear' as const,
  group,
  id,
  kind: 'head',
  how: 'spot' as const,
  word: lamp.word,
  icon: lamp.icon,
  also: ['lamp', 'light', 'head', ...lamp.also],
});

const onStand = (lamp: LampOnStand): MakingEntry => ({
  ...lampEntry('Lamps', `lamp-${lamp.head}`, lamp),
  make: (making) =>
    carriedItems(
      making,
      { classId: lamp.classId, stem: 'Lamp stand', heightMetres: lamp.heightMetres },
      {
        stem: 'Head',
        heads: [headClassFor(making, lamp.head)],
        record: {
          kind: 'head',
          head: lamp.head,
          place: { at: onSurface(making.plan, making.spots[0], BARE_HEIGHT_METRES) },
          aim: aimOf(making),
          dim: 1,
        },
      },
    ),
});

const bare = (lamp: LampOnStand): MakingEntry => ({
  ...lampEntry('Lamps without a stand', `head-${lamp.head}`, {
    ...lamp,
    word: `${lamp.word}, no stand`,
    also: [...lamp.also, 'bare', 'rigged', 'hung'],
  }),
  make: (making) => [
    {
      section: 'gear',
      stem: 'Head',
      heads: [headClassFor(making, lamp.head)],
      record: {
        kind: 'head',
        head: lamp.head,
        place: { at: onSurface(making.plan, making.spots[0], BARE_HEIGHT_METRES) },
        aim: aimOf(making),
        dim: 1,
      },
    },
  ],
});

interface OfThePlace {
  readonly head: string;
  readonly word: string;
  readonly also: readonly string[];
  readonly icon: string;
  readonly heightMetres: number;
  readonly tint?: string;
}

/** Lamps of the place, at the heights where such hang. Source: common practice, no source */
const OF_THE_PLACE: readonly OfThePlace[] = [
  { head: 'string-bulb', word: 'Bulb', also: ['bare bulb', 'hanging'], icon: 'practical', heightMetres: 2.3 },
  {
    head: 'bulkhead-lamp',
    word: 'Bulkhead lamp',
    also: ['wall lamp', 'door lamp'],
    icon: 'bulkhead',
    heightMetres: 2.3,
  },
  {
    head: 'fluorescent',
    word: 'Fluorescent tube',
    also: ['strip light', 'neon'],
    icon: 'tube',
    heightMetres: 2.3,
  },
  {
    head: 'sodium-street-lamp',
    word: 'Sodium street lamp',
    also: ['orange', 'road'],
    icon: 'street',
    heightMetres: 0,
  },
  {
    head: 'led-street-lamp',
    word: 'LED street lamp',
    also: ['white', 'road'],
    icon: 'street',
    heightMetres: 0,
  },
  {
    head: 'shop-sign',
    word: 'Shop sign',
    also: ['neon', 'letters', 'glow'],
    icon: 'sign',
    heightMetres: 2.5,
    tint: '#5b8cff',
  },
];

const practical = (lamp: OfThePlace): MakingEntry => ({
  ...lampEntry('Lamps of the place', `practical-${lamp.head}`, lamp),
  kind: 'practical',
  also: ['practical', 'lamp', 'light', ...lamp.also],
  make: (making) => [
    {
      section: 'gear',
      stem: lamp.word,
      heads: [headClassFor(making, lamp.head)],
      record: {
        kind: 'practical',
        head: lamp.head,
        at: onSurface(making.plan, making.spots[0], lamp.heightMetres),
        headingDegrees: making.headingDegrees,
        dim: 1,
        ...(lamp.tint !== undefined && { tint: lamp.tint }),
      },
    },
  ],
});

const bulbString: MakingEntry = {
  ...lampEntry('Lamps of the place', 'bulb-string', {
    word: 'Bulb string',
    also: ['festoon', 'fairy lights', 'party'],
    icon: 'bulbs',
  }),
  kind: 'bulb string',
  how: 'ends',
  make: (making) => {
    const [from, to] = endsOf(making);
    const metres = metresBetween(from, to);
    return [
      {
        section: 'gear',
        stem: 'Bulb string',
        heads: [headClassFor(making, 'string-bulb')],
        record: {
          kind: 'bulb string',
          head: 'string-bulb',
          from: tiedAt(making.plan, from, BULBS_HEIGHT_METRES),
          to: tiedAt(making.plan, to, BULBS_HEIGHT_METRES),
          sagMetres: Math.min(tidyMetres(metres * 0.04), 4),
          bulbs: Math.min(Math.max(Math.round(metres / BULB_GAP_METRES), 1), 200),
          dim: 1,
        },
      },
    ];
  },
};

/** Lamps on stands, lamps without, and lamps of the place. */
export const LAMP_ENTRIES: readonly MakingEntry[] = [
  ...ON_STANDS.map(onStand),
  ...ON_STANDS.map(bare),
  ...OF_THE_PLACE.map(practical),
  bulbString,
];
