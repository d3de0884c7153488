import { cameraAt } from '../optics/camera';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { inOneGo } from '../units/steps';
import { KeyLight, type KeyReading, keyIn, keyInstants, showsFace } from './keySideReading';
import { type KeyTurn, keyTurn } from './keySideTurn';
import { stepsOver } from './stepsOver';
import type { ContinuityBase, Standing } from './types';

/** The side of a performer's face that the key falls on in a setup, held against the setup that established it. */
export interface KeySideFinding extends ContinuityBase<'key side'> {
  readonly performerId: string;
  /** Whether this is the setup that the others are held to. */
  readonly establishes: boolean;
  /**
   * At `atSeconds`: where it breaks first, else where it is worth saying first, else where the face shows first; of the
   * establishing setup where the key first falls on a side.
   */
  readonly key: KeyReading;
  /** The same face at the same instant as the establishing setup plays it; null where this one establishes. */
  readonly established: KeyReading | null;
  /** At each instant asked at which the face shows. */
  readonly readings: readonly KeyReading[];
  /** What has to turn to hold at `atSeconds`; null where nothing has to, or where nothing that the crew brings is the key. */
  readonly turn: KeyTurn | null;
  /** The same at each instant asked at which the key is lost: who walks or turns in the scene may need another turn later. */
  readonly turns: readonly { readonly seconds: number; readonly turn: KeyTurn }[];
}

const isSide = ({ from }: KeyReading): boolean => from === 'left' || from === 'right';

/** How a key stands against the established one; frontal, back and dark show no side, so they neither hold nor break. */
export function keyStanding(here: KeyReading, established: KeyReading | null): Standing {
  if (!isSide(here) || (established && !isSide(established))) return 'said';
  return established && here.from !== established.from ? 'breaks' : 'holds';
}

const RANK: readonly Standing[] = ['breaks', 'said', 'holds'];

interface Showing {
  readonly setup: Setup;
  readonly readings: readonly KeyReading[];
}

/** The setups that show a performer's face, in the plan's order, with the key at each instant at which it shows. */
const showingsOf = (light: KeyLight, performerId: string): Generator<number, readonly Showing[], void> =>
  stepsOver(light.plan.setups, (setup) => {
    const readings = keyInstants(light.plan, setup)
      .filter((seconds) => showsFace(light, setup, performerId, seconds))
      .flatMap((seconds) => keyIn(light, setup, performerId, seconds) ?? []);
    return readings.length > 0 ? [{ setup, readings }] : [];
  });

/** The setup that a performer's key is held to: their line's own where it shows the face, else the first that does. */
function establishing({ lines }: Plan, performerId: string, showings: readonly Showing[]): Setup | null {
  const named = (lines ?? []).find(({ pair, establishedBy }) => establishedBy && pair.includes(performerId));
  const byLine = showings.find(({ setup }) => setup.id === named?.establishedBy);
  return (byLine ?? showings[0])?.setup ?? null;
}

function turnBack(
  light: KeyLight,
  setup: Setup,
  master: Setup,
  performerId: string,
  reading: KeyReading,
): KeyTurn | null {
  const face = light.faceThrough(setup, performerId, reading.seconds);
  const before = light.faceThrough(master, performerId, reading.seconds);
  if (!face || !before) return null;
  return keyTurn(
    light.plan,
    { reading, face: before },
    { face, camera: cameraAt(light.plan, setup, reading.seconds) },
  );
}

function findingOf(
  light: KeyLight,
  { setup, readings }: Showing,
  performerId: string,
  master: Setup,
): KeySideFinding {
  const establishes = setup === master;
  const pairs = readings.map((here) => {
    const established = establishes ? null : keyIn(light, master, performerId, here.seconds);
    return { here, established, standing: keyStanding(here, established) };
  });
  const rank = establishes ? [...RANK].reverse() : RANK;
  const first = pairs.reduce((a, b) => (rank.indexOf(b.standing) < rank.indexOf(a.standing) ? b : a));
  const { here, established, standing } = first;
  const turns = pairs.flatMap((pair) => {
    const before = pair.established;
    const isLost = before !== null && isSide(before) && pair.here.from !== before.from;
    const turn = isLost ? turnBack(light, setup, master, performerId, before) : null;
    return turn ? [{ seconds: pair.here.seconds, turn }] : [];
  });
  return {
    kind: 'key side',
    standing,
    setupId: setup.id,
    againstId: establishes ? null : master.id,
    performerIds: [performerId],
    performerId,
    atSeconds: here.seconds,
    establishes,
    key: here,
    established,
    readings,
    turn: turns.find(({ seconds }) => seconds === here.seconds)?.turn ?? null,
    turns,
  };
}

/**
 * The key side of every face that a setup shows, by setup and then by performer. Keys are read at the start, the
 * middle and the end of each setup and at the beats within. A setup is held to the establishing one at the same
 * instant of the action, as that one plays it (with its own marks, though its span may be over): a key that changes
 * because somebody turns in the scene changes in every setup alike and breaks nothing; one that changes because the
 * scene was turned for a setup and the lamps were not does.
 */
export const keySides = (plan: Plan): readonly KeySideFinding[] => inOneGo(keySideSteps(plan));

/** The same, setup by setup of each performer: yields the done share, 0..1. */
export function* keySideSteps(plan: Plan): Generator<number, readonly KeySideFinding[], void> {
  const light = new KeyLight(plan);
  const findings: KeySideFinding[] = [];
  for (const [done, { id }] of plan.cast.entries()) {
    const told = (share: number): number => (done + share) / plan.cast.length;
    const looking = showingsOf(light, id);
    let look = looking.next();
    for (; !look.done; look = looking.next()) yield told(look.value / 2);
    const showings = look.value;
    const master = establishing(plan, id, showings);
    if (!master) continue;
    for (const [k, showing] of showings.entries()) {
      yield told(0.5 + k / showings.length / 2);
      findings.push(findingOf(light, showing, id, master));
    }
  }
  const order = new Map(plan.setups.map(({ id }, k) => [id, k]));
  const place = ({ setupId }: KeySideFinding): number => order.get(setupId) ?? 0;
  return findings.sort((a, b) => place(a) - place(b));
}
