import { addArea } from '../../plan/edits/addArea';
import { addHole } from '../../plan/edits/addHole';
import { kept, tidyCoordinate, tidyHeading, tidyMetres, tidyPoint } from '../../plan/edits/tidy';
import { bearingOf, metresBetween } from '../../plan/runs';
import type { Wetness } from '../../plan/schema/ground';
import type { Spot } from '../../plan/schema/numbers';
import type { ChartFace, Piece } from '../../plan/schema/pieces';
import type { Plan } from '../../plan/schema/plan';
import { surfaceUnder } from '../../plan/surfaces';
import type { Making, MakingEntry, NewItem } from './entry';
import { baseOf, endsOf, onSurface, tiedAt } from './heights';

/** What is not set by hand: sizes of common set pieces, metres. Source: common practice, no source */
const STEP_METRES = 0.15;
const DROP_METRES = 12;
const STREET_METRES = 20;
const WASHING_METRES = 2.1;
const WIRE_METRES = 3.5;

type Unnamed = Extract<NewItem, { readonly section: 'piece' }>['record'];
type KindOf<Kind extends Piece['kind']> = Omit<
  Extract<Piece, { readonly kind: Kind }>,
  'id' | 'label' | 'at' | 'headingDegrees'
>;
type StandingKind = Extract<Piece, { readonly at: unknown }>['kind'];
type Standing = { readonly [Kind in StandingKind]: KindOf<Kind> }[StandingKind];

interface Named {
  readonly id: string;
  readonly word: string;
  readonly icon: string;
  readonly also: readonly string[];
}

const common = { section: 'piece', group: 'Set pieces' } as const;
const pieceOf = (stem: string, record: Unnamed): readonly NewItem[] => [{ section: 'piece', stem, record }];

/** A thing that stands on one place. */
function standing(
  named: Named,
  record: Standing,
  footOf = (making: Making) => onSurface(making.plan, making.spots[0]),
): MakingEntry {
  return {
    ...common,
    ...named,
    kind: record.kind,
    how: 'spot',
    make: (making) =>
      pieceOf(named.word, { ...record, at: footOf(making), headingDegrees: making.headingDegrees }),
  };
}

type RunKind = 'wall' | 'parapet' | 'fence';
type RunFields<Kind extends RunKind> = Omit<
  Extract<Piece, { readonly kind: Kind }>,
  'id' | 'label' | 'path' | 'closed' | 'baseMetres'
>;
type Run = { readonly [Kind in RunKind]: RunFields<Kind> }[RunKind];

/** A thing that runs along corners. */
function running(named: Named, record: Run): MakingEntry {
  return {
    ...common,
    ...named,
    kind: record.kind,
    how: 'run',
    make: ({ plan, spots, closed }) =>
      spots.length < 2
        ? null
        : pieceOf(named.word, {
            ...record,
            path: [...spots],
            closed: closed && spots.length > 2,
            baseMetres: baseOf(plan, spots),
          }),
  };
}

/** A pane between two ends: it faces to the left of the way from the first to the second. */
function pane(
  named: Named,
  finish: 'glass' | 'mirror',
  [width, height]: readonly [number, number],
): MakingEntry {
  return {
    ...common,
    ...named,
    kind: 'pane',
    how: 'ends',
    make: (making) => {
      const [from, to] = making.spots;
      const middle: Spot = to ? [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2] : from;
      return pieceOf(named.word, {
        kind: 'pane',
        finish,
        heightMetres: height,
        widthMetres: to ? kept(tidyMetres(metresBetween(from, to)), 0.001, 500) : width,
        at: onSurface(making.plan, middle),
        headingDegrees: to ? tidyHeading(bearingOf(from, to) - 90) : making.headingDegrees,
      });
    },
  };
}

/** A board upright at a camera's height. Source: common practice, no source */
const chart = (widthMetres: number, heightMetres: number, face: ChartFace): Standing => ({
  kind: 'chart',
  widthMetres,
  heightMetres,
  middleMetres: 1.5,
  tiltDegrees: 0,
  face,
});

interface Strung {
  readonly cloths: number;
  readonly diameterMetres: number;
  readonly heightMetres: number;
}

/** A line between two ends, a fortieth of its length deep. */
function line(named: Named, { heightMetres, ...fields }: Strung): MakingEntry {
  return {
    ...common,
    ...named,
    kind: 'line',
    how: 'ends',
    make: (making) => {
      const [from, to] = endsOf(making);
      return pieceOf(named.word, {
        kind: 'line',
        from: tiedAt(making.plan, from, heightMetres),
        to: tiedAt(making.plan, to, heightMetres),
        sagMetres: Math.min(tidyMetres(metresBetween(from, to) * 0.025), 3),
        ...fields,
      });
    },
  };
}

/** A part of the ground that is wetter or drier than the rest. */
const wetting = (id: string, word: string, wetness: Wetness, also: readonly string[]): MakingEntry => ({
  ...common,
  id,
  word,
  kind: 'deck',
  how: 'outline',
  icon: id,
  also,
  cut: ({ plan, spots }) => {
    const wet = addArea(plan, { wetness, outline: spots });
    const area = wet === plan ? undefined : wet.ground.areas?.at(-1);
    return area ? { plan: wet, id: area.id } : null;
  },
});

/** Foot of the city: at the bottom of the deck, else a few storeys down. */
function streetUnder(plan: Plan, [x, z]: Spot): [number, number, number] {
  const deck = plan.pieces.find((piece) => piece.kind === 'deck');
  return tidyPoint([x, deck?.kind === 'deck' ? deck.topMetres - deck.dropMetres : -STREET_METRES, z]);
}

const MESH = { cellMetres: 0.05, wireMetres: 0.002 };

/** Set pieces, their sizes as such things commonly have. Source: common practice, no source */
export const PIECE_ENTRIES: readonly MakingEntry[] = [
  {
    ...common,
    id: 'deck',
    word: 'Deck',
    kind: 'deck',
    how: 'outline',
    icon: 'deck',
    also: ['roof', 'floor', 'terrace', 'level', 'slab'],
    make: ({ plan, spots }) => {
      if (spots.length < 3) return null;
      // On another deck it is a step up, whose sides do not go through that.
      const below = surfaceUnder(plan, spots[0]);
      return pieceOf('Deck', {
        kind: 'deck',
        outline: [...spots],
        topMetres: below.id === null ? 0 : tidyCoordinate(below.metres + STEP_METRES),
        dropMetres: below.id === null ? DROP_METRES : STEP_METRES,
      });
    },
  },
  {
    ...common,
    id: 'deck-hole',
    word: 'Hole in the deck',
    kind: 'deck',
    how: 'outline',
    icon: 'hole',
    also: ['light well', 'hatch', 'skylight', 'shaft', 'opening'],
    cut: ({ plan, spots }) => {
      for (const deck of plan.pieces.toReversed()) {
        const holed = addHole(plan, { id: deck.id, outline: spots });
        if (holed !== plan) return { plan: holed, id: deck.id };
      }
      return null;
    },
  },
  wetting('wet-area', 'Wet area', 'wet down', ['hose down', 'puddle', 'water', 'rain', 'reflection']),
  wetting('dry-area', 'Dry area', 'dry', ['dry patch', 'walkway', 'mop']),
  running(
    { id: 'parapet', word: 'Parapet', icon: 'parapet', also: ['edge', 'coping', 'roof edge'] },
    { kind: 'parapet', heightMetres: 0.95, thicknessMetres: 0.3, copingMetres: 0.07, material: 'brick' },
  ),
  running(
    { id: 'wall', word: 'Wall', icon: 'wall', also: ['brick', 'concrete', 'partition'] },
    { kind: 'wall', heightMetres: 2.5, thicknessMetres: 0.22, material: 'brick' },
  ),
  running(
    { id: 'timber-screen', word: 'Timber screen', icon: 'wall', also: ['boards', 'fence', 'hoarding'] },
    { kind: 'wall', heightMetres: 1.8, thicknessMetres: 0.03, material: 'timber' },
  ),
  running(
    { id: 'fence', word: 'Mesh fence', icon: 'fence', also: ['wire', 'chain link', 'yard'] },
    { kind: 'fence', heightMetres: 1.7, postEveryMetres: 1.5, postMetres: 0.048, rails: 2, mesh: MESH },
  ),
  running(
    { id: 'railing', word: 'Railing', icon: 'fence', also: ['handrail', 'guard rail', 'fence'] },
    { kind: 'fence', heightMetres: 1.1, postEveryMetres: 1.5, postMetres: 0.042, rails: 3, mesh: null },
  ),
  standing(
    {
      id: 'stair-house',
      word: 'Stair house',
      icon: 'stairhouse',
      also: ['head house', 'bulkhead', 'door', 'stairs'],
    },
    {
      kind: 'stair house',
      size: [3.2, 2.8, 3.4],
      door: { widthMetres: 0.9, heightMetres: 2.05, alongMetres: 0 },
      overhangMetres: 0.2,
      material: 'render',
    },
  ),
  standing(
    { id: 'pigeon-loft', word: 'Pigeon loft', icon: 'loft', also: ['shed', 'coop', 'birds', 'mesh'] },
    { kind: 'shed', size: [4.4, 2.9, 2], front: 'mesh', shelves: 4, overhangMetres: 0.25, mesh: MESH },
  ),
  standing(
    { id: 'shed', word: 'Shed', icon: 'shed', also: ['hut', 'boards', 'store'] },
    { kind: 'shed', size: [2.4, 2.2, 1.8], front: 'boards', shelves: 0, overhangMetres: 0.15, mesh: MESH },
  ),
  standing(
    { id: 'tank', word: 'Water tank', icon: 'tank', also: ['water tower', 'drum', 'barrel'] },
    { kind: 'tank', diameterMetres: 2.3, drumMetres: 2, legMetres: 2 },
  ),
  standing(
    { id: 'post', word: 'Post', icon: 'post', also: ['pole', 'mast', 'pipe'] },
    { kind: 'post', heightMetres: 3, diameterMetres: 0.07, armMetres: 0 },
  ),
  standing(
    {
      id: 'washing-post',
      word: 'Washing post',
      icon: 'post',
      also: ['pole', 'clothes', 'laundry', 'crossbar'],
    },
    { kind: 'post', heightMetres: 2.2, diameterMetres: 0.07, armMetres: 1.1 },
  ),
  line(
    {
      id: 'washing-line',
      word: 'Washing line',
      icon: 'line',
      also: ['clothes', 'laundry', 'cloth', 'sheets'],
    },
    { cloths: 4, diameterMetres: 0.005, heightMetres: WASHING_METRES },
  ),
  line(
    { id: 'wire', word: 'Wire', icon: 'line', also: ['rope', 'overhead', 'telephone', 'aerial'] },
    { cloths: 0, diameterMetres: 0.008, heightMetres: WIRE_METRES },
  ),
  standing(
    { id: 'chimney', word: 'Chimney', icon: 'chimney', also: ['stack', 'flue', 'pots'] },
    { kind: 'chimney', size: [1.7, 1.9, 0.75], pots: 3 },
  ),
  standing(
    { id: 'box', word: 'Box', icon: 'box', also: ['plant', 'machine', 'block', 'air conditioning'] },
    { kind: 'box', size: [1, 1, 1], material: 'metal' },
  ),
  standing(
    { id: 'crate', word: 'Crate', icon: 'box', also: ['case', 'timber', 'seat'] },
    { kind: 'box', size: [0.75, 0.5, 0.55], material: 'timber' },
  ),
  standing(
    { id: 'table', word: 'Table', icon: 'box', also: ['bench', 'counter'] },
    { kind: 'box', size: [1.6, 0.75, 0.8], material: 'timber' },
  ),
  standing(
    { id: 'riser', word: 'Riser', icon: 'riser', also: ['platform', 'rostrum', 'stage', 'level', 'deck'] },
    { kind: 'riser', size: [2.44, 0.4, 1.22] },
  ),
  pane(
    { id: 'glass-pane', word: 'Glass pane', icon: 'pane', also: ['window', 'glazing', 'greenhouse'] },
    'glass',
    [1.5, 2.1],
  ),
  pane(
    { id: 'mirror', word: 'Mirror', icon: 'mirror', also: ['reflection', 'looking glass'] },
    'mirror',
    [0.8, 1.8],
  ),
  standing(
    {
      id: 'chart',
      word: 'Lens chart',
      icon: 'chart',
      also: ['test', 'board', 'squares', 'checkerboard', 'focus'],
    },
    chart(1.1, 0.8, { kind: 'squares', columns: 10, rows: 7 }),
  ),
  standing(
    { id: 'grey-card', word: 'Grey card', icon: 'chart', also: ['exposure', 'meter', '18 %', 'test'] },
    chart(0.3, 0.24, { kind: 'grey card' }),
  ),
  standing(
    {
      id: 'skyline-block',
      word: 'Skyline block',
      icon: 'block',
      also: ['building', 'house', 'tower', 'city', 'windows'],
    },
    { kind: 'skyline block', size: [16, 26, 14], windows: { litShare: 0.1, seed: 1 } },
    ({ plan, spots }) => streetUnder(plan, spots[0]),
  ),
];
