import { formatLight } from '../../units/illuminance';
import { formatSeconds } from '../../units/seconds';
import { formatStopCount, formatStopSetting } from '../../units/stops';
import type { FaceNow } from './lightNow';
import { againstWords, type LightStory, namedItem, ratioWords, told } from './lightWords';
import type { LightSentence } from './types';

/** A key that changes by less over a span is steady. Source: common practice, no source */
const STEADY_STOPS = 1;
/** A key so near to the stop, either way, is on it. Source: common practice, no source */
const ON_STOPS = 1;
/** Farther under the stop than this a shadow side is tone without texture. Source: [zone-system] */
const TEXTURE_STOPS = 4;

interface FaceMoment {
  readonly seconds: number;
  readonly face: FaceNow;
}

/** Whether a face has a key that is more than the glow of the sky. */
const hasKey = ({ face }: FaceMoment): boolean =>
  face.key !== null && face.from !== 'back' && face.from !== 'dark';
const keyLux = ({ face }: FaceMoment): number => face.key?.lux ?? 0;

/** The moments at which a setup shows a performer's face. */
const momentsOf = ({ light }: LightStory, performerId: string): readonly FaceMoment[] =>
  light.levels.flatMap(({ seconds, faces }) =>
    faces
      .filter((face) => face.isShown && face.performerId === performerId)
      .map((face) => ({ seconds, face })),
  );

/** The lamp or cloth, and the lamp that feeds it. */
function sourceWords({ plan }: LightStory, { itemId, fedBy }: NonNullable<FaceNow['back']>): string {
  return fedBy === null ? namedItem(plan, itemId) : `${namedItem(plan, itemId)} by ${namedItem(plan, fedBy)}`;
}

/** The fill and the ratio; where not even the sky gives any there is none to say. */
const fillWords = ({ unit }: LightStory, fill: FaceNow['fill'], ratio: number): string =>
  fill.lux > 0 ? `fill ${formatLight(fill.lux, unit)}, ${ratioWords(ratio)}` : 'no fill';

function levelText(story: LightStory, moment: FaceMoment): string {
  const { setup, unit, light } = story;
  const { key, fill, back, ratio, cameraSide } = moment.face;
  const when = light.levels.length > 1 ? `at ${formatSeconds(moment.seconds)} ` : '';
  const stop = formatStopSetting(setup.stop);
  if (key && hasKey(moment)) {
    const side = cameraSide === null ? 'near the lens' : `camera ${cameraSide}`;
    return (
      `${when}the key, ${sourceWords(story, key)}, is ${formatLight(key.lux, unit)} from ${side}, ` +
      `${againstWords(key.stops ?? 0, stop)}; ${fillWords(story, fill, ratio)}.`
    );
  }
  const face =
    fill.stops === null ? 'none' : `${formatLight(fill.lux, unit)}, ${againstWords(fill.stops, stop)}`;
  return back && moment.face.from === 'back'
    ? `${when}lit from behind, ${formatLight(back.lux, unit)} of ${sourceWords(story, back)}; the face has ${face}.`
    : `${when}no lamp is a key; the face has ${face}.`;
}

/** What a key does over the span where it does not keep still. */
function changeText({ unit }: LightStory, moments: readonly FaceMoment[]): string | null {
  const keyed = moments.filter(hasKey);
  if (keyed.length < 2) return null;
  const byLux = keyed.toSorted((a, b) => keyLux(a) - keyLux(b));
  const [least, most] = [byLux[0], byLux[byLux.length - 1]];
  const stops = (most.face.key?.stops ?? 0) - (least.face.key?.stops ?? 0);
  if (stops < STEADY_STOPS) return null;
  const [first, then] = least.seconds < most.seconds ? [least, most] : [most, least];
  const at = (moment: FaceMoment): string =>
    `${formatLight(keyLux(moment), unit)} at ${formatSeconds(moment.seconds)}`;
  return `the key changes by ${formatStopCount(stops)}, from ${at(first)} to ${at(then)}.`;
}

function sentencesOf(story: LightStory, performerId: string, name: string): readonly LightSentence[] {
  const moments = momentsOf(story, performerId);
  if (moments.length === 0) return [];
  const best = moments.reduce((most, next) => (keyLux(next) > keyLux(most) ? next : most));
  const about = { performerId, name, atSeconds: best.seconds };
  const isOn = hasKey(best) && Math.abs(best.face.key?.stops ?? 0) <= ON_STOPS;
  const change = changeText(story, moments);
  const { fill } = best.face;
  const isBlack = hasKey(best) && fill.stops !== null && fill.stops < -TEXTURE_STOPS;
  const stop = formatStopSetting(story.setup.stop);
  return [
    told({ ...about, about: 'level', text: levelText(story, best), standing: isOn ? 'holds' : 'said' }),
    ...(change === null ? [] : [told({ ...about, about: 'level', text: change, atSeconds: null })]),
    ...(isBlack
      ? [
          told({
            ...about,
            about: 'ratio',
            text: `the shadow side is ${againstWords(fill.stops ?? 0, stop)}: tone without texture.`,
          }),
        ]
      : []),
  ];
}

/** The light on every face that a setup shows: where its key is strongest, and what changes. */
export const levelSentences = (story: LightStory): readonly LightSentence[] =>
  story.plan.cast.flatMap(({ id, label }) => sentencesOf(story, id, label));
