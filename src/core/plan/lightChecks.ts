import { fault, type PlanFault, quoteFound } from './faults';
import { type Distribution, TABLE_LIMITS } from './schema/distribution';
import type { HeadClass } from './schema/kit';

/** First and last horizontal angle of each symmetry that a table may have. */
const TURNS = [
  [0, 90],
  [0, 180],
  [90, 270],
  [0, 360],
] as const;

const firstFall = (angles: readonly number[]): number =>
  angles.findIndex((angle, k) => angle <= angles[k - 1]);

/** Whether a table goes round its axis as a symmetry has it: at one angle, or from end to end of one of the turns. */
export function isWholeTurn(horizontalDegrees: readonly number[]): boolean {
  const [first] = horizontalDegrees;
  const last = horizontalDegrees.at(-1);
  if (horizontalDegrees.length === 1) return first === 0;
  return TURNS.some(([from, to]) => first === from && last === to);
}

function tableFaults(where: string, table: Distribution): PlanFault[] {
  const { verticalDegrees, horizontalDegrees, candela } = table;
  for (const [name, angles] of [
    ['verticalDegrees', verticalDegrees],
    ['horizontalDegrees', horizontalDegrees],
  ] as const) {
    const at = firstFall(angles);
    if (at > 0)
      return [
        fault(`${where}.${name}[${at}]`, String(angles[at]), `more than ${angles[at - 1]}: angles go up`),
      ];
  }
  if (verticalDegrees.length < 2)
    return [fault(`${where}.verticalDegrees`, String(verticalDegrees.length), 'at least two angles')];
  if (!isWholeTurn(horizontalDegrees))
    return [
      fault(
        `${where}.horizontalDegrees`,
        horizontalDegrees.length === 0 ? 'none' : `${horizontalDegrees[0]} to ${horizontalDegrees.at(-1)}`,
        '0 alone, 0 to 90, 0 to 180, 90 to 270 or 0 to 360',
      ),
    ];
  if (candela.length !== horizontalDegrees.length)
    return [
      fault(
        `${where}.candela`,
        `${candela.length} rows`,
        `${horizontalDegrees.length}, one for each horizontal angle`,
      ),
    ];
  const short = candela.findIndex((row) => row.length !== verticalDegrees.length);
  if (short >= 0)
    return [
      fault(
        `${where}.candela[${short}]`,
        `${candela[short].length} values`,
        `${verticalDegrees.length}, one for each vertical angle`,
      ),
    ];
  if (!candela.some((row) => row.some((value) => value > 0)))
    return [fault(`${where}.candela`, 'nothing but 0', 'some light')];
  return [];
}

/** What a schema cannot see of measured light: tables whose rows do not fit their angles, and two words for one thing. */
export function lightFaults(heads: readonly HeadClass[]): PlanFault[] {
  return heads.flatMap(({ label, distribution, reading }) => {
    const where = `Head class ${quoteFound(label)}`;
    if (distribution && reading)
      return [fault(where, 'a distribution and a reading', 'one of the two: a table says how strong it is')];
    if (reading && reading.lux * reading.metres * reading.metres > TABLE_LIMITS.candela)
      return [
        fault(
          `${where}, reading`,
          `${reading.lux} lux at ${reading.metres} m`,
          `at most ${TABLE_LIMITS.candela} candela`,
        ),
      ];
    return distribution ? tableFaults(`${where}, distribution`, distribution) : [];
  });
}
