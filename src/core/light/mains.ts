import { headClassOf } from '../form/gear/references';
import { isEverLit } from '../plan/cues';
import type { HeadClass } from '../plan/schema/kit';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { type FlickerSafety, flickerSafety, type MainsHertz } from './flickerSafe';

/** Zones outside the Americas with 60 Hz, and inside them with 50. Source: [mains-frequencies] */
const SIXTY: readonly string[] = [
  'Asia/Seoul',
  'Asia/Taipei',
  'Asia/Manila',
  'Asia/Riyadh',
  'Pacific/Honolulu',
];
const FIFTY_IN_AMERICA =
  /^America\/(Argentina|Buenos_Aires|Cordoba|Santiago|Punta_Arenas|Montevideo|Asuncion|La_Paz|Cayenne|Martinique|Guadeloupe|Jamaica|Barbados)/;

/**
 * The mains frequency that a place's time zone makes likely; Japan has both, and counts as 50. A generator may run at
 * another: only its plate says. Source: [mains-frequencies]
 */
export function likelyHertz({ timeZone }: Pick<Plan['place'], 'timeZone'>): MainsHertz {
  if (SIXTY.includes(timeZone)) return 60;
  return timeZone.startsWith('America/') && !FIFTY_IN_AMERICA.test(timeZone) ? 60 : 50;
}

/** A lamp of the place that hangs on the mains. */
export interface MainsLamp {
  readonly itemId: string;
  readonly form: HeadClass['form'];
  /** Tubes, street lamps and signs go out between pulses; of a bulb nobody knows what is in it. */
  readonly pulses: 'surely' | 'perhaps';
}

const SURELY: readonly HeadClass['form'][] = ['tube', 'street', 'sign'];

/**
 * The lamps of a plan that are lit and hang on the mains: practicals and bulb strings. What the crew brings is taken to
 * be steady, as film lamps are. Source: common practice, no source
 */
export const mainsLamps = (plan: Plan): readonly MainsLamp[] =>
  plan.gear.flatMap((gear): MainsLamp[] => {
    if ((gear.kind !== 'practical' && gear.kind !== 'bulb string') || !isEverLit(gear)) return [];
    const { form } = headClassOf(gear, plan);
    return [{ itemId: gear.id, form, pulses: SURELY.includes(form) ? 'surely' : 'perhaps' }];
  });

/** What a setup's shutter does under the lamps of the place. */
export interface SetupFlicker extends FlickerSafety {
  readonly setupId: string;
  readonly lamps: readonly MainsLamp[];
  /** None lit; safe; little enough not to be noticed; or seen. */
  readonly verdict: 'no mains lamps' | 'safe' | 'unnoticed' | 'flickers';
}

/** What the mains of a plan swing with: as it says, else as its place makes likely. */
export const mainsOf = ({ place }: Pick<Plan, 'place'>): MainsHertz => place.mainsHertz ?? likelyHertz(place);

/** @param hertz as the plan has it unless said */
export function setupFlicker(plan: Plan, setup: Setup, hertz: MainsHertz = mainsOf(plan)): SetupFlicker {
  const lamps = mainsLamps(plan);
  const safety = flickerSafety(setup, hertz);
  const verdict =
    lamps.length === 0
      ? 'no mains lamps'
      : safety.safeBy !== null
        ? 'safe'
        : safety.shows
          ? 'flickers'
          : 'unnoticed';
  return { ...safety, setupId: setup.id, lamps, verdict };
}
