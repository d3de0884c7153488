/**
 * The numbers of a test report as an LM-63-2002 file: candela every 2.5° and what follows from them, without the
 * header's words.
 *
 * Source: [axial-candela]
 */
export const AXIAL_LM63 = `IESNA:LM-63-2002
[TEST] numbers of a test report
[TESTLAB] none
[ISSUEDATE] none
[MANUFAC] none
[LUMINAIRE] an axial lamp
TILT=NONE
1 -1 1 37 1 1 2 0.05 0 0
1 1 8
0 2.5 5 7.5 10 12.5 15 17.5 20 22.5 25 27.5 30 32.5 35 37.5 40 42.5 45
47.5 50 52.5 55 57.5 60 62.5 65 67.5 70 72.5 75 77.5 80 82.5 85 87.5 90
0
269 268 266 264 260 256 251 245 237 229 221 211 200 189 177 165 152 140 127 114 102 90
79 68 58 48 39 31 24 17 12 8 6 4 3 1 0
`;

/** An LM-63-2002 file of type C, absolute, with candela by a rule. */
export function lm63Of(
  verticalDegrees: readonly number[],
  horizontalDegrees: readonly number[],
  candela: (vertical: number, horizontal: number) => number,
  type: 1 | 2 | 3 = 1,
): string {
  return [
    'IESNA:LM-63-2002',
    '[TEST] by a rule',
    'TILT=NONE',
    `1 -1 1 ${verticalDegrees.length} ${horizontalDegrees.length} ${type} 2 0.1 0.1 0`,
    '1 1 100',
    verticalDegrees.join(' '),
    horizontalDegrees.join(' '),
    ...horizontalDegrees.map((h) => verticalDegrees.map((v) => candela(v, h)).join(' ')),
    '',
  ].join('\r\n');
}

/** Angles from one to another by a step. */
export const steps = (from: number, to: number, by: number): number[] =>
  Array.from({ length: Math.round((to - from) / by) + 1 }, (_, k) => from + k * by);
