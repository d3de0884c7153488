import { headOf } from '../../../core/kit/inKit';
import { isLamp } from '../../../core/plan/cues';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { givenWords } from '../../../core/report/light/givenWords';
import type { FaceNow, GivenToFace } from '../../../core/report/light/lightNow';
import { namedItem } from '../../../core/report/light/lightWords';
import { formatLight, lightUnitOf } from '../../../core/units/illuminance';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatSigned, NBSP } from '../../../core/units/numbers';
import { formatStopCount } from '../../../core/units/stops';
import { beatNumber } from '../blocking/words';
import { numberWord } from '../camera/legal';
import { beforeText, whiteText } from '../fields/beforeWords';
import { stopsText } from '../fields/lightLoss';

/** Less than this is no light that a meter reads, lux. */
const LEAST_LUX = 0.01;
/** From here on a ratio is said to be over it: the fill is next to nothing. */
const MOST_RATIO = 99;

/** `5.8 : 1`, `12 : 1`, `over 99 : 1`. */
export function ratioText(ratio: number): string {
  if (ratio > MOST_RATIO) return `over${NBSP}${MOST_RATIO}${NBSP}:${NBSP}1`;
  return `${numberWord(ratio, ratio < 9.95 ? 1 : 0)}${NBSP}:${NBSP}1`;
}

/** A level against the set stop, as a bare signed number. */
export const stopsNumber = (stops: number | null): string => (stops === null ? '' : formatSigned(stops, 1));

/** Where the key of a face comes from, or that there is none. */
export function keyFromText({ from, cameraSide, key }: FaceNow, hasSetup: boolean): string {
  if (from === 'dark' || !key) return from === 'back' ? 'lit from behind only' : 'no lamp on the face';
  if (from === 'back') return 'lit from behind';
  if (!hasSetup) return from === 'front' ? 'key from the front' : `key on their own ${from}`;
  return cameraSide === null ? 'key from near the lens' : `key from camera ${cameraSide}`;
}

/** The beat that the clock is in, by number and name; before the first none. */
export function beatText(plan: Plan, seconds: number): string {
  const beat = plan.beats
    .filter(({ atSeconds }) => atSeconds <= seconds + 1e-6)
    .reduce<Plan['beats'][number] | null>(
      (last, next) => (last && last.atSeconds > next.atSeconds ? last : next),
      null,
    );
  return beat ? `beat ${beatNumber(plan, beat.id)}, ${beat.label}` : '';
}

/** `T2.8, ISO 1600, 1/48 s, ND 3.0 stops` */
export function exposureText(setup: Setup): string {
  const { stop, iso, shutterDegrees, framesPerSecond, ndStops, filterLossStops = 0 } = setup;
  const time = `1/${numberWord((360 * framesPerSecond) / shutterDegrees, 1)}${NBSP}s`;
  // With its unit: a bare number after ND is read as a density.
  const nd = ndStops > 0 ? `, ND ${formatStopCount(ndStops)}` : '';
  const loss = filterLossStops > 0 ? `, filters ${formatStopCount(filterLossStops)}` : '';
  return `T${numberWord(stop, 2)}, ISO${NBSP}${Math.round(iso)}, ${time}${nd}${loss}`;
}

/** Gear that gives light, or gives it on. */
export type Lighting = Extract<
  Gear,
  { readonly kind: 'head' | 'practical' | 'bulb string' | 'bounce' | 'frame' }
>;
const LIGHTING: readonly Gear['kind'][] = ['head', 'practical', 'bulb string', 'bounce', 'frame'];
export const isLighting = (gear: Gear): gear is Lighting => LIGHTING.includes(gear.kind);

/** What a lamp gives to the face that is looked at, of how much, and from where. */
const luxText = (given: GivenToFace | undefined, who: string, lengths: LengthSystem): string =>
  given && given.lux >= LEAST_LUX
    ? `${formatLight(given.lux, lightUnitOf(lengths))} on ${who}, ${givenWords(given, lengths)}`
    : `no light on ${who}`;

const ON_IT: Readonly<Record<NonNullable<Extract<Gear, { kind: 'head' }>['modifier']>, string>> = {
  softbox: 'in a softbox',
  lantern: 'in a lantern',
  grid: 'with a grid',
  'barn doors': 'with barn doors',
  snoot: 'with a snoot',
};

/**
 * The second line of a lamp or cloth: its white, what is on it, what it takes and gives.
 * `dimNow`: where a cue has it at the moment, if not at its own dim.
 */
export function lightingText(
  plan: Plan,
  gear: Lighting,
  face: { readonly name: string; readonly given: readonly GivenToFace[] } | null,
  lengths: LengthSystem,
  dimNow: number = isLamp(gear) ? gear.dim : 1,
): string {
  const given = face?.given.find(({ itemId }) => itemId === gear.id);
  if (!isLamp(gear)) {
    if (!face) return gear.kind === 'bounce' ? 'gives back' : 'lets through';
    if (!given || given.lux < LEAST_LUX) return `gives nothing to ${face.name}`;
    const takes = given.fedBy === null ? '' : `takes ${namedItem(plan, given.fedBy)}, `;
    return `${takes}gives ${formatLight(given.lux, lightUnitOf(lengths))}, ${givenWords(given, lengths)}`;
  }
  const own = headOf(plan.kit, gear.head);
  const parts = [
    own ? whiteText(own.kelvin, gear.before) : null,
    gear.kind === 'head' && gear.modifier ? ON_IT[gear.modifier] : null,
    own ? beforeText(own, gear) : null,
    face && dimNow > 0 ? luxText(given, face.name, lengths) : null,
  ];
  return parts.filter((part) => part !== null).join(', ');
}

/** A dim as a slider says it: `12 %, −3.1 stops`, `off`. */
export const dimSpoken = (dim: number, share: string): string =>
  dim === 0 ? 'off' : `${share}, ${dim === 1 ? 'full' : stopsText(dim)}`;
