import type { PerformerReading } from '../../../core/continuity/cameraReading';
import type { Plan } from '../../../core/plan/schema/plan';
import type { FocusOn, Setup } from '../../../core/plan/schema/setup';
import { formatDegrees, formatHeading } from '../../../core/units/angles';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatSigned, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { formatStopCount, formatStopSetting } from '../../../core/units/stops';
import type { CameraWay, SetupSheet } from '../../../desk/crew/setupSheet';
import { lensWords } from '../setups/cardWords';

/** One reading: its name, what it is when the setup begins, and in a second voice what becomes of it. */
export interface Fact {
  readonly name: string;
  readonly value: string;
  readonly more?: string;
}

/** A reading, and what it has come to at the setup's end where that differs. */
const fact = (name: string, value: string, last?: string): Fact =>
  last === undefined || last === value ? { name, value } : { name, value, more: `then ${last}` };

const tilted = (degrees: number): string => `${formatSigned(degrees, 1)}°`;

/** Degrees less than this are none. */
const LEVEL_DEGREES = 0.05;
/** A camera that goes less than this stays where it is, metres. */
const STILL_METRES = 0.005;
/** A camera's way is told by one direction where nearly all of it lies in that. Cosine of 30 degrees. */
const MOSTLY = 0.866;

/** Where a camera goes, in the operator's words: `1.60 m left`; without a direction where it is no straight one. */
function travelWords({ metres, right, up, ahead }: CameraWay, lengths: LengthSystem): string {
  const apart = Math.hypot(right, up, ahead);
  const ways = [
    [right, 'right', 'left'],
    [up, 'up', 'down'],
    [ahead, 'in', 'out'],
  ] as const;
  const main = ways.find(([amount]) => Math.abs(amount) >= MOSTLY * metres && apart > 0);
  const direction = main ? ` ${main[0] > 0 ? main[1] : main[2]}` : '';
  return `${formatLength(metres, lengths)}${direction}`;
}

/** The camera's move: how far, else how far it turns; *still* where it does neither. */
function moveFact({ way, seconds: [from, until] }: SetupSheet, lengths: LengthSystem): Fact {
  const lasts = formatSeconds(until - from);
  if (!way) return { name: 'move', value: 'still', more: lasts };
  const panned = Math.abs(way.panDegrees) >= LEVEL_DEGREES;
  const pan = `pan ${formatDegrees(Math.abs(way.panDegrees))} ${way.panDegrees > 0 ? 'right' : 'left'}`;
  const tilt = `tilt ${formatDegrees(Math.abs(way.tiltDegrees))} ${way.tiltDegrees > 0 ? 'up' : 'down'}`;
  const tilts = Math.abs(way.tiltDegrees) >= LEVEL_DEGREES;
  const turn = panned ? pan : tilts ? tilt : 'turns and comes back';
  if (way.metres < STILL_METRES) return { name: 'move', value: turn, more: lasts };
  return { name: 'move', value: travelWords(way, lengths), more: panned ? `${pan}, ${lasts}` : lasts };
}

/** What a lens is focused on. */
function focusWords({ cast }: Plan, on: FocusOn, lengths: LengthSystem): string {
  return 'metres' in on
    ? formatLength(on.metres, lengths)
    : (cast.find(({ id }) => id === on.follow)?.label ?? on.follow);
}

function focusFact(plan: Plan, { focus }: Setup, lengths: LengthSystem): Fact {
  if (!('racks' in focus)) return fact('focus', focusWords(plan, focus, lengths));
  const [first, ...others] = focus.racks.map(({ on }) => focusWords(plan, on, lengths));
  return fact('focus', first, others.length > 0 ? others.join(', ') : undefined);
}

/** How far each performer is, with the tape from the image plane to the eyes, who is before the camera at some end. */
function castFacts({ start, end, cast }: SetupSheet, lengths: LengthSystem): readonly Fact[] {
  const framed = new Set(cast.map(({ performerId }) => performerId));
  const at = (readings: readonly PerformerReading[], id: string): string | undefined => {
    const found = readings.find(({ performerId, axisMetres }) => performerId === id && axisMetres > 0);
    return found && formatLength(found.tapeMetres, lengths);
  };
  return start.performers
    .filter(({ performerId }) => framed.size === 0 || framed.has(performerId))
    .flatMap(({ performerId, label }): Fact[] => {
      const [first, last] = [at(start.performers, performerId), at(end.performers, performerId)];
      if (first === undefined) return last === undefined ? [] : [fact(`to ${label}`, last)];
      return [fact(`to ${label}`, first, last)];
    });
}

/** What is read off a setup before its camera is put up, as far as the plan says it by itself. */
export function plainFacts(plan: Plan, setup: Setup, sheet: SetupSheet | undefined): readonly Fact[] {
  const lens = plan.kit.lenses.find(({ id }) => id === setup.lens);
  const squeeze = lens && lens.squeeze !== 1 ? `${lens.squeeze}×` : 'none';
  return [
    fact('lens', lensWords(plan, setup, sheet)),
    fact('squeeze', squeeze),
    fact('stop', formatStopSetting(setup.stop)),
  ];
}

/** Where the camera is put and how it looks, in the order in which hands need it. */
export function placeFacts(setup: Setup, sheet: SetupSheet, lengths: LengthSystem): readonly Fact[] {
  const { start, end, parapet } = sheet;
  const rolled = Math.abs(start.rollDegrees) >= LEVEL_DEGREES || Math.abs(end.rollDegrees) >= LEVEL_DEGREES;
  return [
    fact('lens height', formatLength(start.heightMetres, lengths), formatLength(end.heightMetres, lengths)),
    ...castFacts(sheet, lengths),
    fact('tilt', tilted(start.tiltDegrees), tilted(end.tiltDegrees)),
    fact('pan', formatHeading(start.bearingDegrees, 0), formatHeading(end.bearingDegrees, 0)),
    ...(rolled ? [fact('roll', tilted(start.rollDegrees), tilted(end.rollDegrees))] : []),
    fact('support', setup.support),
    moveFact(sheet, lengths),
    ...(parapet ? [fact('from parapet', formatLength(parapet.metres, lengths))] : []),
  ];
}

/** How it is exposed, and what lies before the lens. */
export function exposureFacts(plan: Plan, setup: Setup, lengths: LengthSystem): readonly Fact[] {
  const { filter, ndStops, iso, shutterDegrees, framesPerSecond, balanceKelvin } = setup;
  return [
    focusFact(plan, setup, lengths),
    fact('filter', filter ? `${filter.kind} ${filter.strength}` : 'none'),
    fact('ND', ndStops === 0 ? 'none' : formatStopCount(ndStops)),
    fact('shutter', `${shutterDegrees}°`),
    fact('ISO', String(iso)),
    fact('rate', `${framesPerSecond}${NBSP}fps`),
    fact('balance', `${balanceKelvin}${NBSP}K`),
  ];
}
