import type { Vec3 } from '../../../core/form/build/vector';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { raiseItems } from '../../../core/plan/edits/raiseItems';
import { reshapeItem } from '../../../core/plan/edits/reshapeItem';
import { setAim } from '../../../core/plan/edits/setAim';
import { setCorner } from '../../../core/plan/edits/setCorner';
import { setKeyPosition } from '../../../core/plan/edits/setKeyPosition';
import { setStandHeight, standReach } from '../../../core/plan/edits/setStandHeight';
import { turnItems } from '../../../core/plan/edits/turnItems';
import { turnSetup } from '../../../core/plan/edits/turnSetup';
import { itemOf } from '../../../core/plan/items';
import { bearingOf } from '../../../core/plan/runs';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatHeading } from '../../../core/units/angles';
import { formatLength, METRES_PER_INCH } from '../../../core/units/lengths';
import { sessionStore } from '../../../desk/sessionStore';
import { heightOnUpright, onLevel } from '../closeness';
import type { Picker } from '../picking';
import type { Pixel, WalkView } from '../walkView';
import { gripOf } from './drawn';
import type { Grasp, Held, Step } from './grasp';
import type { Handle, Subject } from './handles';
import { namesInText } from './names';
import { restingFrom } from './rest';

/** What a turn catches on: steps of five degrees, of fifteen with Shift, of a tenth with Alt. */
const STEP_DEGREES = 5;
const COARSE_DEGREES = 15;
const FINE_DEGREES = 0.1;
/** What a height catches on: 5 cm, or 2 inches; with Alt a centimetre. */
const STEP_METRES = 0.05;
const STEP_INCHES = 2;
const FINE_METRES = 0.01;

/** What a grip is pulled from: the plan and the instant at which it was taken. */
export interface Taken {
  readonly plan: Plan;
  readonly subject: Subject;
  readonly seconds: number;
  readonly from: Pixel;
  readonly view: WalkView;
  readonly picker: Picker;
}

/** Takes a handle by its grip. */
export function pull(handle: Handle, taken: Taken): Grasp {
  const { plan, subject } = taken;
  const ids = subject.type === 'items' ? subject.ids : [];
  const setup = subject.type === 'camera' ? plan.setups.find(({ id }) => id === subject.setupId) : null;
  const name = setup ? `the camera of ${setup.label}` : namesInText(plan, ids);
  const verb = { turn: 'turn', raise: 'raise', aim: 'aim', corner: 'move a corner of' }[handle.kind];
  return {
    key: setup?.id ?? ids.at(-1) ?? '',
    name: `${verb} ${name}`,
    to: movesBy(handle, taken),
  };
}

function movesBy(handle: Handle, taken: Taken): Grasp['to'] {
  switch (handle.kind) {
    case 'turn':
      return turning(handle, taken);
    case 'raise':
      return raising(handle, taken);
    case 'aim':
      return aiming(handle, taken);
    case 'corner':
      return cornering(handle, taken);
  }
}

const words = (plan: Plan, said: string): Step => ({ plan, words: said, guides: [] });

function turning({ round, place }: Handle, { plan, subject, from, view }: Taken): Grasp['to'] {
  const [x, y, z] = round?.centre ?? place;
  const about: Spot = [x, z];
  const bearingAt = (at: Pixel, through: WalkView): number | null => {
    const on = onLevel(through.rayAt(at), y);
    return on && bearingOf(about, [on[0], on[2]]);
  };
  const grip = bearingOf(about, [place[0], place[2]]);
  const taken = bearingAt(from, view) ?? grip;
  return (at, now, held) => {
    const bearing = bearingAt(at, now);
    if (bearing === null) return null;
    const by = caughtTurn(grip, bearing - taken, held);
    const heading = formatHeading(grip + by, held.alt ? 1 : 0);
    if (subject.type === 'camera')
      return words(turnSetup(plan, { setupId: subject.setupId, byDegrees: by }), heading);
    const ids = [...subject.ids];
    // One thing turns about itself, several about their middle.
    const turned = turnItems(plan, ids.length === 1 ? { ids, byDegrees: by } : { ids, byDegrees: by, about });
    return words(turned, ids.length === 1 ? heading : `turned ${formatHeading(by)}`);
  };
}

/** A turn that ends on a whole step of the compass. */
function caughtTurn(grip: number, by: number, { shift, alt }: Held): number {
  const step = alt ? FINE_DEGREES : shift ? COARSE_DEGREES : STEP_DEGREES;
  const shortest = (((by % 360) + 540) % 360) - 180;
  return Math.round((grip + shortest) / step) * step - grip;
}

/** The height that the hand is at on the upright line through a grip; looked at from above, pixels count as metres do. */
function heightAt(place: Vec3, start: Pixel, at: Pixel, view: WalkView): number {
  const lifted: Pixel = [at[0], at[1]];
  const height = heightOnUpright(view.rayAt(lifted), [place[0], place[2]]);
  return height ?? place[1] + (start[1] - at[1]) * view.metresPerPixelAt(place);
}

function raising(handle: Handle, { plan, subject, from, view }: Taken): Grasp['to'] {
  const { place } = handle;
  const grip = gripOf(handle, view) ?? from;
  // The hand holds the grip, which is drawn above the place that it moves.
  const lower = (at: Pixel): Pixel => [at[0], at[1] + handle.liftPixels - (from[1] - grip[1])];
  const first = heightAt(place, lower(from), lower(from), view);
  return (at, now, held) => {
    const raw = place[1] + heightAt(place, lower(from), lower(at), now) - first;
    const height = caughtHeight(raw, held);
    return raised(plan, subject, place[1], height);
  };
}

function caughtHeight(metres: number, { alt }: Held): number {
  const inFeet = sessionStore.getState().lengths !== 'm';
  const step = alt ? FINE_METRES : inFeet ? STEP_INCHES * METRES_PER_INCH : STEP_METRES;
  return Math.round(metres / step) * step;
}

/** Brings the top of the subject from one height to another: a stand extends, what has a height grows, the rest rises. */
function raised(plan: Plan, subject: Subject, before: number, now: number): Step {
  const say = (metres: number): string => formatLength(metres, sessionStore.getState().lengths);
  if (subject.type === 'camera') {
    return words(raisedSetup(plan, subject.setupId, now - before), say(now));
  }
  const { ids } = subject;
  const id = ids.length === 1 ? (carrierOf(plan, ids[0]) ?? ids[0]) : null;
  const record = id === null ? null : itemOf(plan, id)?.record;
  if (id !== null && record && 'kind' in record) {
    if (record.kind === 'stand') {
      const reach = standReach(plan, id);
      const wanted = now - record.at[1];
      const heightMetres = Math.min(
        reach?.highestMetres ?? wanted,
        Math.max(reach?.lowestMetres ?? wanted, wanted),
      );
      return words(setStandHeight(plan, { id, heightMetres: tidy(heightMetres) }), say(heightMetres));
    }
    const grown = heightOf(record, now - before);
    if (grown) return words(reshapeItem(plan, { id, patch: grown.patch }), say(grown.metres));
  }
  const by = now - before;
  return words(
    raiseItems(plan, { ids: [...ids], byMetres: by }),
    `${by < 0 ? 'lowered' : 'raised'} ${say(Math.abs(by))}`,
  );
}

/** A camera raised at each of its keys. */
function raisedSetup(plan: Plan, setupId: string, by: number): Plan {
  const keys = plan.setups.find(({ id }) => id === setupId)?.move.keys ?? [];
  return keys.reduce(
    (next, { position: [x, y, z] }, keyIndex) =>
      setKeyPosition(next, { setupId, keyIndex, position: [x, tidy(y + by), z] }),
    plan,
  );
}

const LEAST_METRES = 0.05;
const tidy = (metres: number): number => Math.round(metres * 1e6) / 1e6;

/** The height that a thing has of its own, grown; null for what has none. */
function heightOf(
  record: object,
  by: number,
): {
  readonly metres: number;
  readonly patch: { heightMetres: number } | { size: [number, number, number] };
} | null {
  if ('heightMetres' in record && typeof record.heightMetres === 'number') {
    const metres = tidy(Math.max(LEAST_METRES, record.heightMetres + by));
    return { metres, patch: { heightMetres: metres } };
  }
  if (
    'kind' in record &&
    'size' in record &&
    GROWING.has(String(record.kind)) &&
    Array.isArray(record.size)
  ) {
    const [width, height, depth]: number[] = record.size;
    const metres = tidy(Math.max(LEAST_METRES, height + by));
    return { metres, patch: { size: [width, metres, depth] } };
  }
  return null;
}

const GROWING: ReadonlySet<string> = new Set([
  'box',
  'riser',
  'stair house',
  'shed',
  'chimney',
  'skyline block',
]);

/** A lamp is aimed at whatever the hand points at; with Shift on the level of the aim that it had. */
function aiming({ place }: Handle, { plan, subject, seconds, picker }: Taken): Grasp['to'] {
  const id = subject.type === 'items' ? subject.ids[0] : '';
  const own = new Set([id, carrierOf(plan, id) ?? id]);
  for (const gear of plan.gear) {
    if ('place' in gear && 'on' in gear.place && own.has(gear.place.on)) own.add(gear.id);
  }
  return (at, now, held) => {
    const ray = now.rayAt(at);
    const met = held.shift ? null : picker.firstSolid(plan, seconds, ray, own);
    const aim = met?.place ?? onLevel(ray, place[1]);
    if (!aim) return null;
    const rounded = aim.map((metres) => Math.round(metres * 100) / 100);
    const to: [number, number, number] = [rounded[0], rounded[1], rounded[2]];
    const { lengths } = sessionStore.getState();
    const said = `at ${formatLength(to[1], lengths)} height`;
    return words(setAim(plan, { id, aim: to }), met ? `${said}, on ${namesInText(plan, [met.id])}` : said);
  };
}

function cornering({ place, index }: Handle, { plan, subject }: Taken): Grasp['to'] {
  const id = subject.type === 'items' ? subject.ids[0] : '';
  const start: Spot = [place[0], place[2]];
  const resting = restingFrom(plan, [id], start);
  return (at, now, held) => {
    const on = onLevel(now.rayAt(at), place[1]);
    if (!on) return null;
    const rest = resting([on[0], on[2]], held, now, place[1]);
    const metres = Math.hypot(rest.spot[0] - start[0], rest.spot[1] - start[1]);
    const said = formatLength(metres, sessionStore.getState().lengths);
    return {
      plan: setCorner(plan, { id, index, to: rest.spot }),
      words: [said, ...rest.words].join(', '),
      guides: rest.guides(place[1]),
    };
  };
}
