import { KeyLight, showsFace } from '../../continuity/keySideReading';
import { catchLights } from '../../light/catchLight';
import { edgeLights } from '../../light/edgeLight';
import { askedLux, greyLuminance } from '../../light/exposure';
import { probeLevels } from '../../light/levels';
import { setupFlicker } from '../../light/mains';
import { probesOf } from '../../light/probes';
import { highlightsOver, LEAST_HIGHLIGHT_STOPS } from '../../light/wetFloor';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { inOneGo } from '../../units/steps';
import { setupReport } from '../setupReport';
import type { SetupReport } from '../types';
import { lightNow } from './lightNow';
import { lightSentences } from './lightSentences';
import { readsOver } from './readsOver';
import type { LevelsThrough, SetupLight } from './types';

/**
 * The moments at which a setup's levels are read: every beat of its span, or the one instant that was asked for, with
 * the last beat that lies there or before.
 */
function momentsOf(
  plan: Plan,
  { seconds: [from, to] }: SetupReport,
): readonly Pick<LevelsThrough, 'beatId' | 'seconds'>[] {
  const beats = plan.beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  if (from === to) {
    const last = beats.findLast(({ atSeconds }) => atSeconds <= from) ?? beats[0];
    return last ? [{ beatId: last.id, seconds: from }] : [];
  }
  return beats
    .filter(({ atSeconds }) => atSeconds >= from && atSeconds <= to)
    .map(({ id, atSeconds }) => ({ beatId: id, seconds: atSeconds }));
}

/** Whether a setup shows an item at an instant of those that it was read over. */
const showsAt = ({ items }: SetupReport, itemId: string, seconds: number): boolean =>
  items.some(
    ({ id, spans }) => id === itemId && spans.some(([from, to]) => seconds >= from && seconds <= to),
  );

/**
 * The light of a setup, over its span or at the instant that `seen` is of. Yields the done share, 0..1.
 * @param seen what the setup sees; it says which items are asked how they read in the dark
 */
export function* lightSteps(
  plan: Plan,
  setup: Setup,
  seen: SetupReport,
): Generator<number, SetupLight, void> {
  const moments = momentsOf(plan, seen);
  const levels: LevelsThrough[] = [];
  const caught: SetupLight['catchLights'][number][] = [];
  const edges: SetupLight['edges'][number][] = [];
  const keys = new KeyLight(plan);
  const asked = askedLux(setup);
  for (const moment of moments) {
    const now = keys.sceneThrough(setup, moment.seconds);
    const faces = lightNow(plan, setup, now).faces.map((face) => ({
      ...face,
      isShown: showsFace(keys, setup, face.performerId, moment.seconds),
    }));
    const read = probeLevels(probesOf(plan), now, asked);
    const probes = (plan.probes ?? []).map(({ id }, k) => ({ id, ...read[k] }));
    levels.push({ ...moment, faces, probes });
    const { seconds } = moment;
    const isFaceShown = (id: string): boolean =>
      faces.some(({ performerId, isShown }) => isShown && performerId === id);
    caught.push(
      ...catchLights(plan, setup, seconds, now)
        .filter(({ performerId }) => isFaceShown(performerId))
        .map((light) => ({ ...light, seconds })),
    );
    edges.push(
      ...edgeLights(plan, setup, seconds, now)
        .filter(({ performerId }) => showsAt(seen, performerId, seconds))
        .map((light) => ({ ...light, seconds })),
    );
    yield (levels.length / moments.length) * 0.2;
  }
  const highlights = highlightsOver(plan, setup, LEAST_HIGHLIGHT_STOPS, seen.seconds);
  yield 0.4;
  const steps = readsOver(plan, setup, seen);
  let step = steps.next();
  for (; !step.done; step = steps.next()) yield 0.4 + 0.6 * step.value;
  const light: Omit<SetupLight, 'sentences'> = {
    askedLux: asked,
    greyLuminance: greyLuminance(setup),
    flicker: setupFlicker(plan, setup),
    levels,
    highlights,
    reads: step.value,
    catchLights: caught,
    edges,
  };
  return { ...light, sentences: lightSentences(plan, setup, light, seen) };
}

/** The light of a setup in one go. */
export const lightOf = (plan: Plan, setup: Setup, seen: SetupReport = setupReport(plan, setup)): SetupLight =>
  inOneGo(lightSteps(plan, setup, seen));
