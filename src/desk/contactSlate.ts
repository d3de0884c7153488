import { cameraReading } from '../core/continuity/cameraReading';
import { glassOf, spanOf, stateAt } from '../core/optics/camera';
import { calledBy } from '../core/plan/named';
import type { Plan } from '../core/plan/schema/plan';
import type { Setup } from '../core/plan/schema/setup';
import { formatDegrees } from '../core/units/angles';
import { formatLength, type LengthSystem } from '../core/units/lengths';
import { formatNumber, NBSP } from '../core/units/numbers';
import { formatSeconds } from '../core/units/seconds';
import { formatStopSetting } from '../core/units/stops';
import { fingerprintOf } from '../exchange/fingerprint';
import { letterOf } from './choose';
import { fileWord } from './fileWord';
import { lettersOf } from './letters';

/** The moments of a setup that a contact sheet shows. */
export type ContactMoment = 'start' | 'middle' | 'end' | 'still';

/** A setup at one of its moments. */
export interface ContactShot {
  readonly setup: Setup;
  readonly moment: ContactMoment;
  /** On the action's clock. */
  readonly seconds: number;
}

/** Start, middle and end of what a setup covers; one moment where it covers one instant. */
export function shotsOf(plan: Plan, setup: Setup): readonly ContactShot[] {
  const [from, to] = spanOf(plan, setup);
  if (from === to) return [{ setup, moment: 'still', seconds: from }];
  return [
    { setup, moment: 'start', seconds: from },
    { setup, moment: 'middle', seconds: (from + to) / 2 },
    { setup, moment: 'end', seconds: to },
  ];
}

/** What a slate says, field by field. */
export interface Slate {
  /** `A`. */
  readonly letter: string;
  readonly setup: string;
  /** `50 mm, 2× squeeze`. */
  readonly lens: string;
  /** Lens above what is under it: `1.20 m high`. */
  readonly height: string;
  /** `T2.8`. */
  readonly stop: string;
  /** `4.0 s`. */
  readonly time: string;
}

/**
 * The text where there is room for it, else as much of it as fits and an ellipsis; empty for none. What reads as one
 * letter, however many characters it has, is never cut in two.
 */
export function cutToFit(text: string, fits: (text: string) => boolean): string {
  if (fits(text)) return text;
  const letters = lettersOf(text);
  for (let count = letters.length - 1; count > 0; count -= 1) {
    const cut = `${letters.slice(0, count).join('').trimEnd()}…`;
    if (fits(cut)) return cut;
  }
  return '';
}

/** A name keeps its own direction, whatever stands around it. */
const [ISOLATE, ITS_END] = ['\u2068', '\u2069'];

/** Letter and name of a slate, as much of the name as fits. */
export function slateName(
  { letter, setup }: Pick<Slate, 'letter' | 'setup'>,
  fits: (text: string) => boolean,
): string {
  const told = (name: string): string => `${letter}  ${ISOLATE}${name}${ITS_END}`;
  const name = cutToFit(setup, (cut) => fits(told(cut)));
  return name === '' ? letter : told(name);
}

/** The slate of a shot. */
export function slateOf(plan: Plan, { setup, seconds }: ContactShot, lengths: LengthSystem): Slate {
  const { squeeze } = glassOf(plan, setup).lens;
  const { focalMm, heightMetres } = cameraReading(plan, setup, seconds);
  const decimals = (value: number): number => (Number.isInteger(value) ? 0 : 1);
  const focal = `${formatNumber(focalMm, decimals(focalMm))}${NBSP}mm`;
  return {
    letter: letterOf(plan, setup.id),
    setup: calledBy(setup.label, 'setup'),
    lens: squeeze === 1 ? focal : `${focal}, ${formatNumber(squeeze, decimals(squeeze))}× squeeze`,
    height: `${formatLength(heightMetres, lengths)} high`,
    stop: formatStopSetting(setup.stop),
    time: formatSeconds(seconds),
  };
}

/** A slate's second line: `50 mm, 2× squeeze, 1.20 m high, T2.8, 4.0 s`. */
export const slateLine = ({ lens, height, stop, time }: Slate): string =>
  [lens, height, stop, time].join(', ');

/** `a-wide-both-start.png`: the letter makes it the only one of its name. */
export const shotFileName = (plan: Plan, { setup, moment }: ContactShot): string =>
  `${letterOf(plan, setup.id).toLowerCase()}-${fileWord(setup.label)}-${moment}.png`;

/**
 * A slate as the fields that a picture carries in its file, with what the slate has no room for; the last, for other
 * programs, has the numbers as JSON, not rounded.
 */
export function slateTexts(plan: Plan, shot: ContactShot, slate: Slate): Readonly<Record<string, string>> {
  const { setup, seconds } = shot;
  const { lens, gateMm } = glassOf(plan, setup);
  const { focalMm, tiltDegrees } = stateAt(plan, setup, seconds);
  const body = plan.kit.bodies.find(({ id }) => id === setup.body);
  const mode = body?.modes.find(({ id }) => id === setup.mode);
  const fingerprint = fingerprintOf(plan);
  const [width, height] = gateMm.map((millimetres) => formatNumber(millimetres, 2));
  return {
    Title: plan.title,
    Setup: `${slate.letter} ${slate.setup}`,
    Lens: slate.lens,
    Gate: `${mode?.label ?? setup.mode}, ${width} × ${height}${NBSP}mm`,
    Height: slate.height,
    Tilt: formatDegrees(tiltDegrees, 1),
    Stop: slate.stop,
    Seconds: slate.time,
    Plan: fingerprint,
    Standclear: JSON.stringify({
      setup: setup.id,
      seconds,
      lens: lens.label,
      focalMm,
      squeeze: lens.squeeze,
      gateMm,
      delivery: setup.delivery,
      tiltDegrees,
      stop: setup.stop,
      plan: fingerprint.replace(NBSP, ''),
    }),
    Software: 'Standclear',
  };
}
