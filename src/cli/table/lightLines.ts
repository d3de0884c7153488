import { itemOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { flickersSurely } from '../../core/report/light/lightNotices';
import type { FaceThrough, LightSentence, SetupLight } from '../../core/report/light/types';
import type { JudgedSetup, Report } from '../../core/report/types';
import { formatLight } from '../../core/units/illuminance';
import { formatNumber, formatSigned, NBSP } from '../../core/units/numbers';
import { formatSeconds } from '../../core/units/seconds';
import { plainText } from '../plainText';
import { type ColumnRule, setInColumns } from './columns';
import type { Ink } from './ink';
import { wrapTo } from './textWidth';

const COLUMNS: readonly ColumnRule[] = [
  { leastWidth: 6 },
  {},
  { leastWidth: 8 },
  { spare: true },
  { side: 'right' },
  { side: 'right' },
  { side: 'right', spare: true },
  { side: 'right', spare: true },
  { leastWidth: 8, spare: true },
  { side: 'right', spare: true },
];
const NAMES = ['face', 'at', 'key', 'camera', 'lux', 'stops', 'fill', 'ratio', 'back', 'stops'];

const stops = (value: number | null): string => (value === null ? '' : formatSigned(value, 1));

function faceRow(plan: Plan, seconds: number, face: FaceThrough): string[] {
  const nameOf = (id: string): string => plainText(itemOf(plan, id)?.record.label ?? id);
  const { performerId, key, back, fill, ratio, cameraSide } = face;
  return [
    nameOf(performerId),
    formatSeconds(seconds),
    key ? nameOf(key.itemId) : 'none',
    key ? (cameraSide ?? 'lens') : '',
    key ? formatLight(key.lux, 'lx') : '',
    stops(key?.stops ?? null),
    formatLight(fill.lux, 'lx'),
    fill.lux > 0 ? `${formatNumber(ratio, ratio >= 9.95 ? 0 : 1)}${NBSP}:${NBSP}1` : '',
    back ? nameOf(back.itemId) : '',
    stops(back?.stops ?? null),
  ];
}

/**
 * The levels of all setups in lines of one table: on each face that a setup shows, beat by beat, against what its stop
 * asks for. The names of the columns come first of each setup that has any.
 */
export function levelTable(report: Report, plan: Plan, width: number, ink: Ink): readonly string[][] {
  const rows = report.setups.map(({ light }) =>
    light.levels.flatMap(({ seconds, faces }) =>
      faces.filter(({ isShown }) => isShown).map((face) => faceRow(plan, seconds, face)),
    ),
  );
  const [names, ...set] = setInColumns(COLUMNS, [NAMES, ...rows.flat()], width);
  let next = 0;
  return rows.map(({ length }) => {
    const own = set.slice(next, next + length);
    next += length;
    return length > 0 ? [ink.faint(names), ...own] : [];
  });
}

/** Whether a sentence is told elsewhere: the table has the levels, and a notice of all setups what flickers for sure. */
const isElsewhere = ({ about }: LightSentence, { flicker }: SetupLight): boolean =>
  about === 'level' || (about === 'flicker' && flickersSurely(flicker));

/** What breaks in a setup's light and what is said of it, and how much holds. */
export function lightLines({ light }: JudgedSetup, width: number, ink: Ink): string[] {
  const sentences = light.sentences.filter((sentence) => !isElsewhere(sentence, light));
  const holding = sentences.filter(({ standing }) => standing === 'holds').length;
  const told = sentences
    .filter(({ standing }) => standing !== 'holds')
    .flatMap(({ standing, name, colon, text }) => {
      const sentence = plainText(`${name}${colon ? ':' : ''} ${text}`);
      const lines = wrapTo(`${standing}: ${sentence}`, width, '  ');
      return standing === 'breaks' ? lines.map(ink.strong) : lines;
    });
  return [
    ...told,
    ...(holding > 0 ? [ink.faint(`light: ${holding} ${holding === 1 ? 'holds' : 'hold'}`)] : []),
  ];
}
