import type { SetupFlicker } from '../../light/mains';
import type { Plan } from '../../plan/schema/plan';
import type { Setup } from '../../plan/schema/setup';
import { formatDegrees } from '../../units/angles';
import { formatNumber, NBSP } from '../../units/numbers';
import { formatStopCount } from '../../units/stops';
import { type LightStory, someNames, told } from './lightWords';
import type { LightSentence } from './types';

/** So many safe angles are named, those nearest to the setup's own. */
const NAMED_ANGLES = 4;

const angle = (degrees: number): string =>
  formatDegrees(degrees, Math.abs(degrees - Math.round(degrees)) < 0.05 ? 0 : 1);
const rate = (perSecond: number): string =>
  `${formatNumber(perSecond, Number.isInteger(perSecond) ? 0 : 2)}${NBSP}fps`;

/** What of a setup's light its flicker is told of. */
type FlickerStory = Pick<LightStory, 'plan' | 'setup'> & {
  readonly light: Pick<LightStory['light'], 'flicker'>;
};

/** The lamps that flicker for certain, or, where none does, those that may. */
function namedLamps({ lamps }: SetupFlicker): SetupFlicker['lamps'] {
  const surely = lamps.filter(({ pulses }) => pulses === 'surely');
  return surely.length > 0 ? surely : lamps;
}

/** By how much a shutter that is not safe flickers, under what, and what is safe. */
export function flickerText(plan: Plan, setup: Setup, flicker: SetupFlicker): string {
  const { hertz, stops, safeAngles, nearestAngle, nearestRate } = flicker;
  const mains = `${hertz}${NBSP}Hz mains`;
  const named = namedLamps(flicker);
  const verb = named[0]?.pulses === 'surely' ? 'flickers' : 'may flicker';
  const names = someNames(
    plan,
    named.map(({ itemId }) => itemId),
  );
  const near = [...safeAngles]
    .sort((a, b) => Math.abs(a - setup.shutterDegrees) - Math.abs(b - setup.shutterDegrees))
    .slice(0, NAMED_ANGLES)
    .sort((a, b) => a - b)
    .map((safe) => `${angle(safe)}${safe === nearestAngle && safeAngles.length > 1 ? ' (nearest)' : ''}`);
  const mend =
    near.length === 0
      ? `No angle is safe on ${mains}; ${rate(nearestRate)} is.`
      : `Safe on ${hertz}${NBSP}Hz: ${near.join(', ')}.`;
  const shutter = `${angle(setup.shutterDegrees)} at ${rate(setup.framesPerSecond)}`;
  return `${shutter} ${verb} by up to ${formatStopCount(stops)} under ${names}. ${mend}`;
}

/** What the shutter does under the lamps that hang on the mains; null where none is lit. */
export function flickerSentence({ plan, setup, light }: FlickerStory): LightSentence | null {
  const { verdict, hertz, safeBy, stops } = light.flicker;
  if (verdict === 'no mains lamps') return null;
  const shutter = `${angle(setup.shutterDegrees)} at ${rate(setup.framesPerSecond)}`;
  const named = namedLamps(light.flicker);
  const mains = `${hertz}${NBSP}Hz mains`;
  const about = { about: 'flicker', name: 'Shutter', itemId: named[0]?.itemId ?? null } as const;
  if (verdict === 'safe') {
    const why =
      safeBy === 'angle'
        ? `${shutter} takes in whole pulses of ${mains}.`
        : `${rate(setup.framesPerSecond)} keeps step with ${mains} at any angle.`;
    return told({ ...about, standing: 'holds', text: why });
  }
  if (verdict === 'unnoticed')
    return told({
      ...about,
      standing: 'holds',
      text: `${shutter} swings by ${formatStopCount(stops, 2)} on ${mains}, too little to be seen.`,
    });
  return told({ ...about, standing: 'breaks', text: flickerText(plan, setup, light.flicker) });
}
