import { cameraAt, glassOf, spanOf, stateAt } from '../../core/optics/camera';
import { focusAt } from '../../core/optics/focusAt';
import { extraction } from '../../core/optics/gate';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { type Axes, CENTIMETRES, matrixText, placementLines, valueLines } from './placement';
import { lengthText, metadata, numberText, prim, tuple } from './text';

/** Time codes to a second of the action's clock. */
export const CODES_PER_SECOND = 24;
/** Time codes of all moving cameras together that are written at most: nearly six hours, some 120 MB of text. */
const MOST_CODES = 500_000;
/** Nearest and farthest that is drawn, centimetres. */
const CLIPPING = [1, 1e6];

/** A camera at one instant. */
interface Moment {
  readonly axes: Axes;
  readonly focalMm: number;
  /** From the entrance pupil; null where nobody is there to be focused on. */
  readonly focusMetres: number | null;
}

function momentAt(plan: Plan, setup: Setup, seconds: number): Moment {
  return {
    axes: cameraAt(plan, setup, seconds).pose,
    focalMm: stateAt(plan, setup, seconds).focalMm,
    focusMetres: focusAt(plan, setup, seconds),
  };
}

/** Whether a setup's camera is the same at all times: nobody moves it, nobody pans it, nobody pulls focus. */
const isFixed = ({ move, operator, track, focus }: Setup): boolean =>
  move.keys.length === 1 && operator === undefined && track === undefined && 'metres' in focus;

/**
 * Holds the cameras of a stage to what a file of text can be.
 * @throws an error that says how many time codes they move for, and how many are written at most
 */
export function refuseTooMany({ beats, setups }: Pick<Plan, 'beats' | 'setups'>): void {
  const count = setups
    .filter((setup) => !isFixed(setup))
    .reduce((sum, setup) => {
      const [from, to] = spanOf({ beats }, setup);
      return sum + (to - from) * CODES_PER_SECOND;
    }, 0);
  if (count > MOST_CODES)
    throw new Error(
      `The cameras move for ${Math.ceil(count)} time codes in all, a stage holds at most ${MOST_CODES}. Give their setups shorter spans.`,
    );
}

/** Time codes of a span: both ends, and all whole ones between them. */
function codesOf([from, to]: readonly [number, number]): number[] {
  const first = from * CODES_PER_SECOND;
  const last = to * CODES_PER_SECOND;
  const codes = [first];
  for (let code = Math.floor(first) + 1; code < last; code += 1) codes.push(code);
  if (last > first) codes.push(last);
  return codes;
}

/** A value at all those times, where it is not the same at all of them. */
function samplesOf<Value>(
  moments: ReadonlyMap<number, Moment>,
  value: (moment: Moment) => Value,
  text: (value: Value) => string,
): ReadonlyMap<number, Value> | null {
  const samples = new Map([...moments].map(([code, moment]) => [code, value(moment)] as const));
  const [first, ...rest] = samples.values();
  if (first === undefined) return null;
  const alike = text(first);
  return rest.some((each) => text(each) !== alike) ? samples : null;
}

const focusText = (metres: number | null): string =>
  metres === null ? '0' : lengthText(metres * CENTIMETRES);

/**
 * A setup's camera at an instant held within its span, and over its span where it moves, zooms or pulls focus.
 *
 * Lengths of lens and gate are tenths of a scene unit, which is millimetres on a stage in centimetres. The width of the
 * aperture is that of the delivered frame with its squeeze undone, its height and the focal length are the lens's own,
 * so that the framing is exact; what the sensor has of it is in the custom data. A stop is a T number, and the sway of
 * a shoulder is left out, as in the report.
 * Source: [usd-camera]
 */
export function cameraLines(identifier: string, plan: Plan, setup: Setup, seconds: number): string[] {
  const span = spanOf(plan, setup);
  const instant = Math.min(Math.max(seconds, span[0]), span[1]);
  const now = momentAt(plan, setup, instant);
  const moments = new Map(
    (isFixed(setup) ? [] : codesOf(span)).map(
      (code) => [code, momentAt(plan, setup, code / CODES_PER_SECOND)] as const,
    ),
  );
  const { lens, gateMm } = glassOf(plan, setup);
  const { usedMm } = extraction(gateMm, now.focalMm, lens.squeeze, setup.delivery);
  const shutter = (setup.shutterDegrees / 360) * (CODES_PER_SECOND / setup.framesPerSecond);
  const focal = samplesOf(moments, ({ focalMm }) => focalMm, numberText);
  const focus = samplesOf(moments, ({ focusMetres }) => focusMetres, focusText);
  const custom = {
    setup: setup.id,
    seconds: instant,
    lens: lens.label,
    focalMm: now.focalMm,
    squeeze: lens.squeeze,
    gateMm: [...gateMm],
    usedMm: [...usedMm],
    delivery: setup.delivery,
    ...(setup.secondDelivery === undefined ? {} : { secondDelivery: setup.secondDelivery }),
    tStop: setup.stop,
    iso: setup.iso,
    shutterDegrees: setup.shutterDegrees,
    framesPerSecond: setup.framesPerSecond,
    balanceKelvin: setup.balanceKelvin,
    ...(lens.distortion
      ? {
          distortion: (['k1', 'k2', 'p1', 'p2', 'k3'] as const).map((name) => lens.distortion?.[name] ?? 0),
        }
      : {}),
  };
  return prim(`Camera "${identifier}"`, metadata(setup.label, custom), [
    'token projection = "perspective"',
    `float2 clippingRange = ${tuple(CLIPPING)}`,
    `float horizontalAperture = ${numberText(lens.squeeze * usedMm[0])}`,
    `float verticalAperture = ${numberText(usedMm[1])}`,
    ...valueLines('float focalLength', now.focalMm, focal, numberText),
    `float fStop = ${numberText(setup.stop)}`,
    ...valueLines('float focusDistance', now.focusMetres, focus, focusText),
    'double shutter:open = 0',
    `double shutter:close = ${numberText(shutter)}`,
    ...placementLines(
      now.axes,
      samplesOf(moments, ({ axes }) => axes, matrixText),
    ),
  ]);
}

/** First and last time code of all setups' spans; the instant's own where there are none. */
export function codeRange(plan: Plan, seconds: number): readonly [number, number] {
  const ends = plan.setups.flatMap((setup) => [...spanOf(plan, setup)]);
  const all = [...ends, seconds].map((end) => end * CODES_PER_SECOND);
  return [Math.min(...all), Math.max(...all)];
}
