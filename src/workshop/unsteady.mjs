import { writeFileSync } from 'node:fs';

/**
 * The part of a test runner's result that is read here.
 * @typedef {{
 *   fullName: string,
 *   diagnostic: () => { flaky: boolean } | undefined,
 *   result: () => { errors?: readonly { message: string }[] | undefined },
 * }} Case
 * @typedef {{ relativeModuleId: string, children: { allTests: () => Iterable<Case> } }} Module
 *
 * A test that passed at its second try, and what the first failed with, in one line.
 * @typedef {{ file: string, test: string, message: string }} Unsteady
 */

/** The variable of the environment that names the file to write. */
export const UNSTEADY_FILE = 'UNSTEADY_FILE';

/**
 * How many tests of a stage may need their second try. One that does is a slow moment of the machine; more are a fault
 * that comes and goes.
 */
const MOST_UNSTEADY = 2;

/** Of a message as it is told: what the driver of a browser adds about its calls is long. */
const MOST_LETTERS = 300;

/** Writes the tests that passed at their second try, as JSON, into the file that the environment names. */
export default class UnsteadyReporter {
  /** @param {Iterable<Module>} modules as the runner gives them once all have run */
  onTestRunEnd(modules) {
    const file = process.env[UNSTEADY_FILE];
    if (!file) throw new Error(`${UNSTEADY_FILE} names no file to write`);
    writeFileSync(file, JSON.stringify([...modules].flatMap(unsteadyOf)));
  }
}

/**
 * What a stage says of its unsteady tests, a line each, and whether they are too many for it to pass.
 * @param {readonly Unsteady[]} unsteady
 * @returns {{ lines: string[], tooMany: boolean }}
 */
export function judgeUnsteady(unsteady) {
  const tooMany = unsteady.length > MOST_UNSTEADY;
  const lines = unsteady.map(
    ({ file, test, message }) => `unsteady: ${file} > ${test}, failed first with: ${message}`,
  );
  if (tooMany)
    lines.push(`${unsteady.length} tests of one stage needed a second try, at most ${MOST_UNSTEADY} may`);
  return { lines, tooMany };
}

/**
 * @param {Module} module
 * @returns {Unsteady[]}
 */
function unsteadyOf({ relativeModuleId, children }) {
  return [...children.allTests()]
    .filter((test) => test.diagnostic()?.flaky)
    .map((test) => ({
      file: relativeModuleId,
      test: test.fullName,
      message: inOneLine(test.result().errors?.[0]?.message ?? 'no message'),
    }));
}

/**
 * @param {string} message with line breaks and a terminal's colours
 * @returns {string}
 */
function inOneLine(message) {
  const plain = message
    .replaceAll(/\p{Cc}\[[\d;]*m/gu, '')
    .replaceAll(/\s+/g, ' ')
    .trim();
  return plain.length > MOST_LETTERS ? `${plain.slice(0, MOST_LETTERS)}…` : plain;
}
