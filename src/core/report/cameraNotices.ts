import { DOLLY_WHEELBASE_METRES, supportOf, WALKING_PACE } from '../kit/supports';
import { glassOf, spanOf, stateAt } from '../optics/camera';
import { keysOf, trackOf } from '../optics/cameraKey';
import { coverageOf } from '../optics/coverage';
import { focusAt } from '../optics/focusAt';
import { extraction } from '../optics/gate';
import { paceOf } from '../optics/pace';
import { named } from '../plan/named';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { alongTrack } from '../plan/trackLine';
import { formatLength, type LengthSystem } from '../units/lengths';
import { formatSeconds } from '../units/seconds';
import { formatShare } from '../units/shares';
import { hypot } from '../units/steadyMath';
import { TRACK_ROOM_SEARCH, tightTrack } from './trackRoom';
import type { Notice } from './types';

/** Lengths in a report are metric; the page says them as its person reads them. */
const SYSTEM: LengthSystem = 'm';
const length = (metres: number): string => formatLength(metres, SYSTEM);
/** A move is looked through at this many instants for what may go wrong in it. */
const INSTANTS = 48;
const HAIR = 1e-6;
/** A head that pans takes the lens along by less than this, metres. */
const NO_TRAVEL_METRES = 0.1;

/** T2.8 for 2.8. */
const stopWords = (stop: number): string => `T${Math.round(stop * 100) / 100}`;

/** What a fault is about, so that it can be said beside what would mend it. */
export type FaultSubject =
  | 'stop'
  | 'circle'
  | 'key'
  | 'zoom'
  | 'along'
  | 'room'
  | 'focus'
  | 'height'
  | 'travel'
  | 'pace';

/** Something that a camera department would object to. */
export interface DepartmentFault {
  readonly about: FaultSubject;
  /** Which key of the move it is about; null for no single one. */
  readonly keyIndex: number | null;
  readonly sentence: string;
  /** The nearest that would do, in the unit of what it is about (a stop, seconds, mm, metres); null where none is known. */
  readonly nearest: number | null;
}

const faultOf = (
  about: FaultSubject,
  sentence: string,
  nearest: number | null = null,
  keyIndex: number | null = null,
): DepartmentFault => ({ about, keyIndex, sentence, nearest });

function stopFault(setup: Setup, widest: number, narrowest: number): DepartmentFault | null {
  const { stop, label } = setup;
  if (stop < widest - HAIR)
    return faultOf(
      'stop',
      `${named(label)} asks for ${stopWords(stop)}, and its lens opens no wider than ${stopWords(widest)}.`,
      widest,
    );
  if (stop > narrowest + HAIR)
    return faultOf(
      'stop',
      `${named(label)} asks for ${stopWords(stop)}, and its lens closes no further than ${stopWords(narrowest)}.`,
      narrowest,
    );
  return null;
}

/** Keys that take a zoom further than it goes. */
function zoomFaults(plan: Plan, setup: Setup): DepartmentFault[] {
  const { lens } = glassOf(plan, setup);
  const { focalMm: shortest, longestMm: longest } = lens;
  if (longest === undefined) return [];
  return setup.move.keys.flatMap(({ focalMm }, keyIndex) => {
    if (focalMm === undefined || (focalMm >= shortest - HAIR && focalMm <= longest + HAIR)) return [];
    const nearest = focalMm < shortest ? shortest : longest;
    return [
      faultOf(
        'zoom',
        `A key of ${named(setup.label)} asks for ${focalMm}\u00a0mm, and its zoom goes from ${shortest}\u00a0mm to ${longest}\u00a0mm. The nearest is ${nearest}\u00a0mm.`,
        nearest,
        keyIndex,
      ),
    ];
  });
}

function circleFault(plan: Plan, setup: Setup): DepartmentFault | null {
  const { lens, gateMm } = glassOf(plan, setup);
  if (lens.imageCircleMm === undefined) return null;
  const { usedMm } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
  const { covers, neededMm, darkShare } = coverageOf(usedMm, lens.imageCircleMm);
  if (covers) return null;
  const millimetres = (value: number): string => `${value.toFixed(1)}\u00a0mm`;
  return faultOf(
    'circle',
    `The circle of ${named(lens.label)} is ${millimetres(lens.imageCircleMm)}, and ${named(setup.label)} needs ${millimetres(neededMm)}: ${formatShare(darkShare)} of the frame, its corners, stays dark.`,
  );
}

function keyFaults(plan: Plan, setup: Setup): DepartmentFault[] {
  const [from, to] = spanOf(plan, setup);
  if (setup.move.keys.length < 2) return [];
  return keysOf(plan, setup).flatMap(({ atSeconds }, keyIndex) => {
    if (atSeconds >= from - HAIR && atSeconds <= to + HAIR) return [];
    const nearest = atSeconds < from ? from : to;
    return [
      faultOf(
        'key',
        `A key of ${named(setup.label)} lies at ${formatSeconds(atSeconds)}, outside of what it covers. The nearest moment is ${formatSeconds(nearest)}.`,
        nearest,
        keyIndex,
      ),
    ];
  });
}

function trackFaults(plan: Plan, setup: Setup): DepartmentFault[] {
  const track = trackOf(plan, setup);
  if (!track) return [];
  const room = Math.min(DOLLY_WHEELBASE_METRES / 2, track.lengthMetres / 2);
  return keysOf(plan, setup).flatMap((key, keyIndex) => {
    const along = key.alongMetres ?? alongTrack(track, [key.position[0], key.position[2]]);
    const nearest = Math.min(track.lengthMetres - room, Math.max(room, along));
    if (Math.abs(nearest - along) < HAIR) return [];
    return [
      faultOf(
        'along',
        `${named(setup.label)} takes its dolly to ${length(along)} along ${named(track.label)}, which is ${length(track.lengthMetres)} long and needs ${length(room)} at each end. The nearest place is ${length(nearest)}.`,
        nearest,
        keyIndex,
      ),
    ];
  });
}

/** A track with too little room beside it for the dolly, and for who walks along. */
function roomFault(plan: Plan, setup: Setup): DepartmentFault | null {
  const tight = tightTrack(plan, setup);
  if (!tight) return null;
  const { track, neededMetres, walkwayMetres, freeMetres, by, away } = tight;
  const walk = walkwayMetres > 0 ? `, ${length(walkwayMetres)} of it to walk` : '';
  const mend = away
    ? `${length(away.metres)} farther away there is room.`
    : `Nowhere within ${length(TRACK_ROOM_SEARCH)} is there room.`;
  return faultOf(
    'room',
    `The dolly of ${named(setup.label)} needs ${length(neededMetres)} beside the middle of ${named(track.label)}${walk}; ${by} leaves ${length(freeMetres)}. ${mend}`,
    away?.metres ?? null,
  );
}

/** What the move comes to, instant by instant: focus too near, and a lens too low or too high for what carries it. */
function reachFaults(plan: Plan, setup: Setup): DepartmentFault[] {
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
  const said: DepartmentFault[] = [];
  if (nearest && nearest.metres < lens.closeFocusMetres - HAIR) {
    said.push(
      faultOf(
        'focus',
        `${named(setup.label)} comes to a focus of ${length(nearest.metres)} at ${formatSeconds(nearest.at)}, and its lens focuses from ${length(lens.closeFocusMetres)} on.`,
        lens.closeFocusMetres,
      ),
    );
  }
  if (worst) {
    const legal = worst.metres < carrier.lowestMetres ? carrier.lowestMetres : carrier.highestMetres;
    said.push(
      faultOf(
        'height',
        `The lens of ${named(setup.label)} is ${length(worst.metres)} high at ${formatSeconds(worst.at)}; on ${carrier.label.toLowerCase()} it goes from ${length(carrier.lowestMetres)} to ${length(carrier.highestMetres)}. The nearest height is ${length(legal)}.`,
        legal,
      ),
    );
  }
  return said;
}

/** A camera that gets farther than what carries it lets it, without being carried elsewhere. */
function travelFault(plan: Plan, setup: Setup): DepartmentFault | null {
  const carrier = supportOf(setup.support);
  if (carrier.travelMetres === null || setup.move.keys.length < 2) return null;
  const [from, to] = spanOf(plan, setup);
  const places = Array.from(
    { length: INSTANTS + 1 },
    (_, k) => stateAt(plan, setup, from + ((to - from) * k) / INSTANTS).position,
  );
  const [first] = places;
  // A jib swings to either side of where it stands, a slider runs from one end to the other.
  const reach = setup.support === 'jib' ? 2 * carrier.travelMetres : carrier.travelMetres;
  const metres = Math.max(...places.map(([x, , z]) => hypot(x - first[0], z - first[2])));
  if (metres <= reach + NO_TRAVEL_METRES) return null;
  const carries =
    reach === 0
      ? 'stays where it stands: a slider, a dolly or a shoulder would carry it'
      : `carries it ${length(reach)} at most`;
  return faultOf(
    'travel',
    `${named(setup.label)} takes its camera ${length(metres)} away, and what it is on, ${carrier.label.toLowerCase()}, ${carries}.`,
    reach,
  );
}

function paceFault(plan: Plan, setup: Setup): DepartmentFault | null {
  const { fastestMetresPerSecond, atSeconds } = paceOf(plan, setup);
  if (fastestMetresPerSecond <= WALKING_PACE + HAIR) return null;
  return faultOf(
    'pace',
    `The camera of ${named(setup.label)} runs at ${fastestMetresPerSecond.toFixed(1)}\u00a0m/s at ${formatSeconds(atSeconds)}, faster than a walking pace of ${WALKING_PACE.toFixed(1)}\u00a0m/s.`,
  );
}

/** What a camera department would object to in a setup, each with what would be possible. */
export function departmentFaults(plan: Plan, setup: Setup): readonly DepartmentFault[] {
  const { lens } = glassOf(plan, setup);
  const faults = [
    stopFault(setup, lens.widestStop, lens.narrowestStop),
    circleFault(plan, setup),
    ...keyFaults(plan, setup),
    ...zoomFaults(plan, setup),
    ...trackFaults(plan, setup),
    roomFault(plan, setup),
    ...reachFaults(plan, setup),
    travelFault(plan, setup),
    paceFault(plan, setup),
  ];
  return faults.filter((fault) => fault !== null);
}

/** The same as notices of the report. */
export const departmentNotices = (plan: Plan, setup: Setup): Notice[] =>
  departmentFaults(plan, setup).map(({ sentence }) => ({ where: `Setup ${setup.label}`, sentence }));
