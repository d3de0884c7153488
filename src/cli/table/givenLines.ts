import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { givenWords, shadowEdgeWords } from '../../core/report/light/givenWords';
import type { FaceThrough } from '../../core/report/light/types';
import type { JudgedSetup } from '../../core/report/types';
import { formatSeconds } from '../../core/units/seconds';
import { plainText } from '../plainText';
import { wrapTo } from './textWidth';

/** So many lamps are told of each face, and none that gives less than this share: all are in JSON and CSV. */
const MOST_LAMPS = 3;
const LEAST_SHARE = 0.01;

function givenText(plan: Plan, { given, key }: FaceThrough): string {
  const nameOf = (id: string): string => itemOf(plan, id)?.record.label ?? id;
  const told = given
    .filter(({ share }) => share >= LEAST_SHARE)
    .slice(0, MOST_LAMPS)
    .map((each) => `${nameOf(each.itemId)} ${givenWords(each, 'm')}`);
  const edge = key?.shadowEdgeMetres ?? null;
  return [...told, ...(edge === null ? [] : [`of the key ${shadowEdgeWords(edge, 'm')}`])].join('; ');
}

/**
 * Which lamps light a face that the setup shows, by their share, from where and how softly: at the first beat, and at
 * each later one at which that reads otherwise.
 */
export function givenLines({ light }: JudgedSetup, plan: Plan, width: number): string[] {
  const said = new Map<string, string>();
  return light.levels.flatMap(({ seconds, faces }) =>
    faces.flatMap((face) => {
      const text = face.isShown ? givenText(plan, face) : '';
      if (text === '' || said.get(face.performerId) === text) return [];
      said.set(face.performerId, text);
      const name = itemOf(plan, face.performerId)?.record.label ?? face.performerId;
      return wrapTo(plainText(`light on ${name} at ${formatSeconds(seconds)}: ${text}`), width, '  ');
    }),
  );
}
