import { BUILT_IN_KIT } from '../../src/core/kit/builtInKit';
import { aimedAt } from '../../src/core/optics/pose';
import type { Beat, Performer } from '../../src/core/plan/schema/cast';
import type { Gear } from '../../src/core/plan/schema/gear';
import type { Kit } from '../../src/core/plan/schema/kit';
import type { Point } from '../../src/core/plan/schema/numbers';
import type { Piece } from '../../src/core/plan/schema/pieces';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { CameraKey, Setup } from '../../src/core/plan/schema/setup';
import { planFrom } from './bare';
import { type Draw, drawFrom } from './draw';
import { withActing } from './someActing';
import { someAreas } from './someAreas';
import { withBefore } from './someBefore';
import { withBlack } from './someBlack';
import { withCautionsEntered } from './someCautions';
import { GEAR_KINDS, type GearKind, someGear } from './someGear';
import { withNets } from './someNets';
import { withNight } from './someNight';
import { somePerformer } from './somePerformer';
import { PIECE_KINDS, type PieceKind, type Roof, roofPieces, somePiece } from './somePiece';
import { withSky } from './someSky';

type Kind = PieceKind | GearKind | 'performer';

/** Sixty things of a roof with a crew on it, in the order in which a plan of fewer takes them. */
const CROWD: readonly Kind[] = [
  ...([
    'performer',
    'performer',
    'stand',
    'head',
    'stand',
    'head',
    'shed',
    'fence',
    'chimney',
    'bulb string',
  ] as const),
  ...(['skyline block', 'skyline block', 'generator', 'cable', 'box', 'post', 'line', 'track'] as const),
  ...([
    'stand',
    'head',
    'stand',
    'flag',
    'stand',
    'bounce',
    'practical',
    'stair house',
    'wall',
    'cart',
  ] as const),
  ...(['skyline block', 'skyline block', 'cable', 'sandbag', 'box', 'distro', 'ladder', 'monitor'] as const),
  ...(['pane', 'stand', 'head', 'box', 'frame', 'wall', 'box', 'post', 'practical', 'fence'] as const),
  ...(['skyline block', 'skyline block', 'wall', 'cable', 'sandbag', 'post', 'box', 'box'] as const),
  ...(['fence', 'line', 'chimney', 'post'] as const),
];

interface Things {
  readonly pieces: Piece[];
  readonly cast: Performer[];
  readonly gear: Gear[];
}

const isPiece = (kind: Kind): kind is PieceKind => (PIECE_KINDS as readonly string[]).includes(kind);

/** As many as a plan may have. */
const MOST_PERFORMERS = 60;

function put(things: Things, kind: Kind, roof: Roof, kit: Kit, beats: readonly Beat[], draw: Draw): void {
  const id = `${kind.replace(' ', '-')}-${things.pieces.length + things.cast.length + things.gear.length}`;
  if (kind === 'performer') things.cast.push(somePerformer(id, roof, beats, draw));
  else if (isPiece(kind)) things.pieces.push(somePiece(id, kind, roof, draw));
  else {
    const standIds = things.gear.filter((gear) => gear.kind === 'stand').map((gear) => gear.id);
    things.gear.push(someGear(id, kind, roof, { kit, standIds }, draw));
  }
}

const keyOf = (atSeconds: number, position: Point, target: Point, rollDegrees: number): CameraKey => ({
  atSeconds,
  position,
  ...aimedAt(position, target),
  rollDegrees,
});

interface SetupParts {
  readonly id: string;
  readonly mode: { readonly body: string; readonly mode: string };
  readonly lens: string;
  readonly delivery: number;
  readonly span: Setup['span'];
  readonly move: Setup['move'];
}

const setupFrom = ({ id, mode, ...parts }: SetupParts): Setup => ({
  ...parts,
  ...mode,
  id,
  label: `Setup ${id}`,
  stop: 2.8,
  iso: 1600,
  shutterDegrees: 180,
  framesPerSecond: 24,
  ndStops: 0,
  balanceKelvin: 4300,
  focus: { metres: 5 },
  support: 'dolly',
});

const planOf = (title: string, kit: Kit, things: Things, beats: Beat[], setups: Setup[]): Plan =>
  planFrom({
    standclear: 1,
    title,
    notes: '',
    place: {
      label: 'Nowhere',
      latitudeDegrees: 41,
      longitudeDegrees: -8,
      timeZone: 'UTC',
      date: '2026-11-27',
      northDegrees: 0,
    },
    ground: { surface: 'concrete', wetness: 'wet down' },
    safety: { metres: 0.25, frameWidths: 0.03 },
    kit,
    ...things,
    beats,
    setups,
  });

/**
 * A crowded roof: so many items, so many setups, the same for the same seed. The roof grows with the number of
 * items, so that they stand equally close. Each setup moves for `moveSeconds` (10 by default; 0 for cameras that
 * stand and see one instant) while the performers walk. In place of performers beyond the most that are wanted there are
 * crates.
 */
export function crowdedPlan(
  items: number,
  setups: number,
  seed: number,
  moveSeconds = 10,
  mostPerformers = MOST_PERFORMERS,
): Plan {
  const draw = drawFrom(seed);
  const kit = BUILT_IN_KIT;
  const grown = Math.sqrt(Math.max(1, items / 60));
  const roof: Roof = { halfX: 12 * grown, halfZ: 8 * grown };
  const beats: Beat[] = [{ id: 'start', label: 'Start', atSeconds: 0 }];
  if (moveSeconds > 0) beats.push({ id: 'end', label: 'End', atSeconds: moveSeconds });
  const things: Things = { pieces: roofPieces(roof), cast: [], gear: [] };
  // The deck and the parapet are items too.
  for (let k = 0; k < items - 2; k += 1) {
    const kind = CROWD[k % CROWD.length];
    const isOneTooMany = kind === 'performer' && things.cast.length >= mostPerformers;
    put(things, isOneTooMany ? 'box' : kind, roof, kit, beats, draw);
  }
  const last = beats[beats.length - 1];
  const inner: Roof = { halfX: roof.halfX * 0.9, halfZ: roof.halfZ * 0.9 };
  return planOf(
    `Crowd of ${items}`,
    kit,
    things,
    beats,
    Array.from({ length: setups }, (_, k) => {
      const from: Point = [
        draw.between(-inner.halfX, inner.halfX),
        draw.between(0.6, 2),
        draw.between(-inner.halfZ, inner.halfZ),
      ];
      const target: Point = [draw.between(-3, 3), draw.between(0.8, 1.8), draw.between(-2, 2)];
      const to: Point = [from[0] + draw.between(-1.5, 1.5), from[1], from[2] + draw.between(-1.5, 1.5)];
      const keys: Setup['move']['keys'] = [keyOf(0, from, target, 0)];
      if (moveSeconds > 0) keys.push(keyOf(moveSeconds, to, target, 0));
      return setupFrom({
        id: `s${k + 1}`,
        mode: { body: 'digital-35', mode: 'anamorphic-35' },
        lens: draw.pick(['anamorphic-35', 'anamorphic-50', 'anamorphic-75', 'anamorphic-100']),
        delivery: 2.39,
        span: { from: 'start', to: last.id },
        move: { ease: 'eased', keys },
      });
    }),
  );
}

const KINDS: readonly Kind[] = [...PIECE_KINDS, ...GEAR_KINDS, 'performer'];

/**
 * Any plan: 8 to 25 items of any kinds on a small roof, and one camera that looks anywhere through any lens, for
 * one instant or for a second. The same for the same seed.
 */
export function randomPlan(seed: number): Plan {
  const draw = drawFrom(seed);
  const roof: Roof = { halfX: 7, halfZ: 5 };
  const beats: Beat[] = [
    { id: 'start', label: 'Start', atSeconds: 0 },
    { id: 'end', label: 'End', atSeconds: 1 },
  ];
  const bent = draw.chance(0.25);
  const kit: Kit = {
    ...BUILT_IN_KIT,
    lenses: BUILT_IN_KIT.lenses.map((lens) =>
      bent ? { ...lens, distortion: { k1: draw.between(-0.08, 0.08), k2: 0, k3: 0, p1: 0, p2: 0 } } : lens,
    ),
  };
  const things: Things = { pieces: draw.chance(0.9) ? roofPieces(roof, draw) : [], cast: [], gear: [] };
  const items = draw.whole(8, 25);
  while (things.pieces.length + things.cast.length + things.gear.length < items) {
    put(things, draw.pick(KINDS), roof, kit, beats, draw);
  }
  const body = draw.pick(kit.bodies);
  const position: Point = [draw.between(-8, 8), draw.between(0.3, 5), draw.between(-6, 6)];
  const target: Point = [draw.between(-4, 4), draw.between(0, 3), draw.between(-3, 3)];
  const keys: Setup['move']['keys'] = [
    keyOf(0, position, target, draw.chance(0.3) ? draw.between(-20, 20) : 0),
  ];
  const isMoving = draw.chance(0.5);
  if (isMoving) {
    const to: Point = [position[0] + draw.between(-1, 1), position[1], position[2] + draw.between(-1, 1)];
    keys.push({ ...keyOf(1, to, target, 0), headingDegrees: keys[0].headingDegrees + draw.between(-30, 30) });
  }
  const plan = planOf(`Random ${seed}`, kit, things, beats, [
    setupFrom({
      id: 'only',
      mode: { body: body.id, mode: draw.pick(body.modes).id },
      lens: draw.pick(kit.lenses).id,
      delivery: draw.pick([2.39, 1.85, 16 / 9, 1, 9 / 16]),
      span: { from: 'start', to: isMoving ? 'end' : 'start' },
      move: { ease: 'linear', keys },
    }),
  ]);
  const acted = withBlack(withActing(plan, drawFrom(seed + 4711)), drawFrom(seed + 815));
  const gelled = withBefore(acted, drawFrom(seed + 5577));
  const wetted = drawFrom(seed + 1903);
  const ground = { ...plan.ground, ...(wetted.chance(0.5) && { areas: someAreas(wetted) }) };
  const lit = withSky({ ...gelled, ground }, drawFrom(seed + 2310));
  const scheduled = withNight(withNets(lit, drawFrom(seed + 3071)), drawFrom(seed + 6113));
  return planFrom(withCautionsEntered(scheduled, drawFrom(seed + 8017)));
}
