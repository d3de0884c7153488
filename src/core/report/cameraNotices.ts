import { alongTrack } from '../form/gear/trackLine';
import { DOLLY_WHEELBASE_METRES, supportOf, WALKING_PACE } from '../kit/supports';
import { glassOf, spanOf, stateAt } from '../optics/camera';
import { keysOf, trackOf } from '../optics/cameraKey';
import { coverageOf } from '../optics/coverage';
import { focusAt } from '../optics/focusAt';
import { extraction } from '../optics/gate';
import { paceOf } from '../optics/pace';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { formatLength, type LengthSystem } from '../units/lengths';
import { formatSeconds } from '../units/seconds';
import { formatShare } from '../units/shares';
import type { Notice } from './types';

/** Lengths in a report are metric; the page says them as its person reads them. */
const SYSTEM: LengthSystem = 'm';
const length = (metres: number): string => formatLength(metres, SYSTEM);
/** A move is looked through at this many instants for what may go wrong in it. */
const INSTANTS = 48;
const HAIR = 1e-6;

/** T2.8 for 2.8. */
const stopWords = (stop: number): string => `T${Math.round(stop * 100) / 100}`;

function stopNotice(setup: Setup, widest: number, narrowest: number): string | null {
  const { stop, label } = setup;
  if (stop < widest - HAIR)
    return `${label} asks for ${stopWords(stop)}, and its lens opens no wider than ${stopWords(widest)}.`;
  if (stop > narrowest + HAIR)
    return `${label} asks for ${stopWords(stop)}, and its lens closes no further than ${stopWords(narrowest)}.`;
  return null;
}

function circleNotice(plan: Plan, setup: Setup): string | null {
  const { lens, gateMm } = glassOf(plan, setup);
  if (lens.imageCircleMm === undefined) return null;
  const { usedMm } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
  const { covers, neededMm, darkShare } = coverageOf(usedMm, lens.imageCircleMm);
  if (covers) return null;
  const millimetres = (value: number): string => `${value.toFixed(1)}\u00a0mm`;
  return `The circle of ${lens.label} is ${millimetres(lens.imageCircleMm)}, and ${setup.label} needs ${millimetres(neededMm)}: ${formatShare(darkShare)} of the frame, its corners, stays dark.`;
}

function keyNotices(plan: Plan, setup: Setup): string[] {
  const [from, to] = spanOf(plan, setup);
  return keysOf(plan, setup)
    .filter(
      ({ atSeconds }) => setup.move.keys.length > 1 && (atSeconds < from - HAIR || atSeconds > to + HAIR),
    )
    .map(
      ({ atSeconds }) =>
        `A key of ${setup.label} lies at ${formatSeconds(atSeconds)}, outside of what it covers. The nearest moment is ${formatSeconds(atSeconds < from ? from : to)}.`,
    );
}

function trackNotices(plan: Plan, setup: Setup): string[] {
  const track = trackOf(plan, setup);
  if (!track) return [];
  const room = Math.min(DOLLY_WHEELBASE_METRES / 2, track.lengthMetres / 2);
  return keysOf(plan, setup).flatMap((key) => {
    const along = key.alongMetres ?? alongTrack(track, [key.position[0], key.position[2]]);
    const nearest = Math.min(track.lengthMetres - room, Math.max(room, along));
    if (Math.abs(nearest - along) < HAIR) return [];
    return [
      `${setup.label} takes its dolly to ${length(along)} along ${track.label}, which is ${length(track.lengthMetres)} long and needs ${length(room)} at each end. The nearest place is ${length(nearest)}.`,
    ];
  });
}

/** What the move comes to, instant by instant: focus too near, and a lens too low or too high for what carries it. */
function reachNotices(plan: Plan, setup: Setup): string[] {
  const [from, to] = spanOf(plan, setup);
  const { lens } = glassOf(plan, setup);
  const behind = (lens.pupilToImageMm ?? 0) / 1000;
  const carrier = supportOf(setup.support);
  let nearest: { readonly metres: number; readonly at: number } | null = null;
  let worst: { readonly metres: number; readonly off: number; readonly at: number } | null = null;
  for (let k = 0; k <= INSTANTS; k += 1) {
    const at = from + ((to - from) * k) / INSTANTS;
    const focus = focusAt(plan, setup, at);
    if (focus !== null && (nearest === null || focus + behind < nearest.metres))
      nearest = { metres: focus + behind, at };
    const { position } = stateAt(plan, setup, at);
    const ground = surfaceUnder(plan, [position[0], position[2]], { belowMetres: position[1] });
    const height = position[1] - ground.metres;
    const off = Math.max(carrier.lowestMetres - height, height - carrier.highestMetres);
    if (off > HAIR && off > (worst?.off ?? 0)) worst = { metres: height, off, at };
  }
  const said: string[] = [];
  if (nearest && nearest.metres < lens.closeFocusMetres - HAIR) {
    said.push(
      `${setup.label} comes to a focus of ${length(nearest.metres)} at ${formatSeconds(nearest.at)}, and its lens focuses from ${length(lens.closeFocusMetres)} on.`,
    );
  }
  if (worst) {
    const legal = worst.metres < carrier.lowestMetres ? carrier.lowestMetres : carrier.highestMetres;
    said.push(
      `The lens of ${setup.label} is ${length(worst.metres)} high at ${formatSeconds(worst.at)}; on ${carrier.label.toLowerCase()} it goes from ${length(carrier.lowestMetres)} to ${length(carrier.highestMetres)}. The nearest height is ${length(legal)}.`,
    );
  }
  return said;
}

function paceNotice(plan: Plan, setup: Setup): string | null {
  const { fastestMetresPerSecond, atSeconds } = paceOf(plan, setup);
  if (fastestMetresPerSecond <= WALKING_PACE + HAIR) return null;
  return `The camera of ${setup.label} runs at ${fastestMetresPerSecond.toFixed(1)}\u00a0m/s at ${formatSeconds(atSeconds)}, faster than a walking pace of ${WALKING_PACE.toFixed(1)}\u00a0m/s.`;
}

/** What a camera department would object to in a setup, each with what would be possible. */
export function departmentNotices(plan: Plan, setup: Setup): Notice[] {
  const { lens } = glassOf(plan, setup);
  const sentences = [
    stopNotice(setup, lens.widestStop, lens.narrowestStop),
    circleNotice(plan, setup),
    ...keyNotices(plan, setup),
    ...trackNotices(plan, setup),
    ...reachNotices(plan, setup),
    paceNotice(plan, setup),
  ];
  return sentences.flatMap((sentence) =>
    sentence === null ? [] : [{ where: `Setup ${setup.label}`, sentence }],
  );
}
