import { whereabouts } from '../form/figure/whereabouts';
import type { LitFrom } from '../light/face';
import { spanOf, stateAt } from '../optics/camera';
import { removeCheat } from '../plan/edits/removeCheat';
import { played } from '../plan/played';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { hypot } from '../units/steadyMath';
import { inOneGo } from '../units/steps';
import { type Behind, backdropOf } from './backdrop';
import { cameraWise } from './cameraWise';
import { isInFrame, type Shot, shotsOf, signedDegrees } from './continuityShots';
import { KeyLight, keyIn, showsFace } from './keySideReading';
import { type LineReading, lineReadingAt, ON_THE_LINE_DEGREES, sideOf } from './lineSide';
import { linesOf } from './linesWanted';
import { stepsOver } from './stepsOver';
import type { ContinuityBase } from './types';

/** A line that a cheated performer belongs to, and whether the cheat takes the camera to its other side. */
export interface CheatedLine {
  readonly pair: readonly [string, string];
  readonly changesSide: boolean;
}

/** What a cheat does to the picture of its setup, held against the same setup with the master's marks. */
export interface CheatFinding extends ContinuityBase<'cheat'> {
  readonly performerId: string;
  readonly markId: string;
  /** At `atSeconds`, from the master's place to the cheated one, as the camera sees it, metres. */
  readonly rightMetres: number;
  readonly towardsMetres: number;
  /** How far they are turned from the master's heading, clockwise from above, −180 to 180. */
  readonly turnDegrees: number;
  /** Of the lines that the performer belongs to, those that can be judged. */
  readonly lines: readonly CheatedLine[];
  /** The side of the face that the key falls on at `atSeconds`; null where the face does not show as cheated. */
  readonly key: { readonly master: LitFrom; readonly cheated: LitFrom } | null;
  /** What fills a tenth of the performer's outline from behind in one and not in the other, at `atSeconds`. */
  readonly behind: {
    readonly goesOut: readonly string[];
    readonly comesIn: readonly string[];
    readonly stays: readonly string[];
  } | null;
  /** Whether the performer shows, with the master's marks and as cheated. */
  readonly shows: { readonly master: boolean; readonly cheated: boolean };
}

/** Nearer than this a cheat is none, metres and degrees. */
const LEAST_METRES = 0.005;
const LEAST_DEGREES = 0.5;
/** What fills less than this of an outline stands beside somebody more than behind them. Source: common practice, no source */
const LEAST_BEHIND = 0.1;

interface Place {
  readonly markId: string;
  readonly seconds: number;
  readonly rightMetres: number;
  readonly towardsMetres: number;
  readonly turnDegrees: number;
}

/** Where within the span a performer's cheats take them farthest from the master, or turn them most; null for nowhere. */
function farthest(plan: Plan, bare: Plan, setup: Setup, performerId: string): Place | null {
  const [from, to] = spanOf(plan, setup);
  const scenes = [bare, played(plan, setup)].map((scene) => ({
    scene,
    performer: scene.cast.find(({ id }) => id === performerId),
  }));
  const moments = new Map(plan.beats.map(({ id, atSeconds }) => [id, atSeconds]));
  const places = (setup.cheats ?? []).flatMap((cheat): Place[] => {
    const mark = scenes[0].performer?.marks.find(({ id }) => id === cheat.mark);
    if (cheat.performer !== performerId || !mark) return [];
    const seconds = Math.min(to, Math.max(from, moments.get(mark.beat) ?? from));
    const [master, cheated] = scenes.map(({ scene, performer }) =>
      performer ? whereabouts(performer, scene, seconds) : null,
    );
    if (!master || !cheated) return [];
    const turnDegrees = signedDegrees(cheated.headingDegrees - master.headingDegrees);
    const way = cameraWise(
      [master.at[0], master.at[2]],
      [cheated.at[0], cheated.at[2]],
      stateAt(plan, setup, seconds).headingDegrees,
    );
    return [{ markId: mark.id, seconds, ...way, turnDegrees }];
  });
  const metres = (place: Place): number => hypot(place.rightMetres, place.towardsMetres);
  const [first] = places
    .filter((place) => metres(place) >= LEAST_METRES || Math.abs(place.turnDegrees) >= LEAST_DEGREES)
    .toSorted((a, b) => metres(b) - metres(a) || Math.abs(b.turnDegrees) - Math.abs(a.turnDegrees));
  return first ?? null;
}

const sideOff = (reading: LineReading | null) =>
  reading && Math.min(...reading.anglesDegrees) >= ON_THE_LINE_DEGREES ? sideOf(reading) : null;

function linesHeld(plan: Plan, bare: Plan, shot: Shot, performerId: string): readonly CheatedLine[] {
  const { setup, scene, instants } = shot;
  return linesOf(plan).flatMap(({ pair }): CheatedLine[] => {
    if (!pair.includes(performerId)) return [];
    const sides = instants.flatMap((seconds, k) => {
      if (!isInFrame(shot, pair[0], k) && !isInFrame(shot, pair[1], k)) return [];
      const cheated = sideOff(lineReadingAt(scene, setup, pair, seconds));
      const master = sideOff(lineReadingAt(bare, setup, pair, seconds));
      return cheated && master ? [cheated === master] : [];
    });
    return sides.length === 0 ? [] : [{ pair, changesSide: sides.includes(false) }];
  });
}

const fills = (behind: readonly Behind[] | null): readonly string[] =>
  (behind ?? []).filter(({ share }) => share >= LEAST_BEHIND).map(({ itemId }) => itemId);

function findingOf(plan: Plan, shot: Shot, performerId: string, light: KeyLight): CheatFinding | null {
  const { setup } = shot;
  const without = removeCheat(plan, { setupId: setup.id, performerId });
  const bareSetup = without.setups.find(({ id }) => id === setup.id);
  if (!bareSetup) return null;
  const bare = played(without, bareSetup);
  const place = farthest(plan, bare, setup, performerId);
  if (!place) return null;
  const { seconds } = place;
  const [master, cheated] = [
    backdropOf(without, bareSetup, performerId, seconds),
    backdropOf(plan, setup, performerId, seconds),
  ];
  const [before, now] = [fills(master), fills(cheated)];
  const showsKey = showsFace(light, setup, performerId, seconds);
  const keys = showsKey
    ? [
        keyIn(new KeyLight(without), bareSetup, performerId, seconds),
        keyIn(light, setup, performerId, seconds),
      ]
    : [];
  return {
    kind: 'cheat',
    standing: 'said',
    setupId: setup.id,
    againstId: null,
    performerIds: [performerId],
    performerId,
    markId: place.markId,
    atSeconds: seconds,
    rightMetres: place.rightMetres,
    towardsMetres: place.towardsMetres,
    turnDegrees: place.turnDegrees,
    lines: linesHeld(plan, bare, shot, performerId),
    key: keys[0] && keys[1] ? { master: keys[0].from, cheated: keys[1].from } : null,
    behind:
      master && cheated
        ? {
            goesOut: before.filter((id) => !now.includes(id)),
            comesIn: now.filter((id) => !before.includes(id)),
            stays: now.filter((id) => before.includes(id)),
          }
        : null,
    shows: { master: master !== null, cheated: cheated !== null },
  };
}

/**
 * What every setup's cheats change in its own picture, a performer at a time, at the moment when they are farthest from
 * where the master has them: whether the camera stays on its side of their lines over the span, which side of the face
 * the key falls on, and what stands behind them. It is always *said*: whether what it leads to cuts together is for the
 * findings of the line and of the key side. A cheated mark that changes nothing within the span is not told.
 */
export const cheatFindings = (plan: Plan): readonly CheatFinding[] => inOneGo(cheatSteps(plan));

/** The same, setup by setup: yields the done share, 0..1. */
export function cheatSteps(plan: Plan): Generator<number, readonly CheatFinding[], void> {
  const light = new KeyLight(plan);
  const cheating = shotsOf(plan).filter(({ setup }) => setup.cheats !== undefined);
  return stepsOver(cheating, (shot) => {
    const cheated = new Set((shot.setup.cheats ?? []).map(({ performer }) => performer));
    return plan.cast.flatMap(({ id }) => {
      const finding = cheated.has(id) ? findingOf(plan, shot, id, light) : null;
      return finding ? [finding] : [];
    });
  });
}
