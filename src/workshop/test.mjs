import { existsSync, mkdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { findOrInstallChromium } from './chromium.mjs';
import { CACHE } from './house.mjs';
import { install } from './install.mjs';
import { runTool } from './run.mjs';
import { judgeUnsteady, UNSTEADY_FILE } from './unsteady.mjs';

/**
 * @typedef {{ passed: number, failed: number, skipped: number, unsteady: number }} Counts
 * @typedef {{ title: string, run: (filters: string[]) => boolean }} Stage
 */

/** @type {Counts} */
const counts = { passed: 0, failed: 0, skipped: 0, unsteady: 0 };

/**
 * What is said at the end of tests that passed at their second try.
 * @type {string[]}
 */
const remarks = [];

const NONE = { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };

/** Asks for the browser tests that go through one thing at length as well. */
const ALL = 'all';
let isShort = true;

/** Biome colours its output even into a file. */
const plainIfPiped = process.stdout.isTTY ? [] : ['--colors=off'];

/** @type {Record<string, Stage>} */
const STAGES = {
  types: { title: 'Types', run: () => runTool('typescript/bin/tsc', ['-b']) },
  lint: {
    title: 'Format and lint',
    run: () => runTool('@biomejs/biome/bin/biome', ['ci', ...plainIfPiped, '.']),
  },
  unit: {
    title: 'Unit, outside, properties and architecture',
    run: (filters) => vitest(['unit', 'pure'], filters),
  },
  build: { title: 'Build', run: () => runTool('vite/bin/vite.js', ['build', 'src', '--logLevel', 'warn']) },
  browser: { title: 'Browser', run: (filters) => vitest(['browser'], filters) },
  pictures: { title: 'Browser, with pictures', run: (filters) => vitest(['pictures'], filters) },
};

install();
process.exit(runStages(process.argv.slice(2)) ? 0 : 1);

/**
 * Runs the named stages, or all, and stops at the first that fails.
 * @param {string[]} args names of stages, and `all` for every browser test; anything else chooses test files by a piece
 * of their path
 * @returns {boolean} whether all passed
 */
function runStages(args) {
  const filters = args.filter((arg) => arg !== ALL && !Object.hasOwn(STAGES, arg));
  isShort = filters.length === 0 && !args.includes(ALL);
  const named = args.filter((arg) => Object.hasOwn(STAGES, arg));
  const chosen = Object.entries(STAGES).filter(([name]) => named.length === 0 || named.includes(name));

  if (chosen.some(([name]) => name === 'browser' || name === 'pictures') && !findOrInstallChromium())
    return false;

  const started = performance.now();
  /** @type {string[]} */
  const lines = [];
  let failedStage = '';
  for (const [, stage] of chosen) {
    console.log(`\n${stage.title}`);
    const begun = performance.now();
    const passed = stage.run(filters);
    lines.push(`  ${passed ? 'passed' : 'failed'}  ${seconds(begun).padStart(8)}  ${stage.title}`);
    if (passed) continue;
    failedStage = stage.title;
    // A stage that fails without naming a failed test has still failed.
    counts.failed = Math.max(counts.failed, 1);
    break;
  }
  console.log(`\n${lines.join('\n')}`);
  console.log(
    `  in all  ${seconds(started).padStart(8)}${counts.skipped > 0 ? `, ${counts.skipped} tests skipped` : ''}`,
  );
  const isBrowserShort = isShort && chosen.some(([name]) => name === 'browser' || name === 'pictures');
  if (isBrowserShort)
    console.log('  of the browser tests those of every run; `npm test -- all` runs all of them');
  for (const remark of remarks) console.log(`  ${remark}`);
  if (counts.unsteady > 0) console.log(`  ${counts.unsteady} unsteady, passed at the second try`);
  if (failedStage) console.log(`  stopped at: ${failedStage}`);
  console.log(`${counts.passed} passed, ${counts.failed} failed`);
  return failedStage === '';
}

/**
 * Runs some projects of the tests and adds their counts.
 * @param {string[]} projects
 * @param {string[]} filters
 * @returns {boolean}
 */
function vitest(projects, filters) {
  mkdirSync(CACHE, { recursive: true });
  const results = join(CACHE, `test-${projects.join('-')}-${process.pid}.json`);
  const unsteady = join(CACHE, `unsteady-${projects.join('-')}-${process.pid}.json`);
  const passed = runTool(
    'vitest/vitest.mjs',
    [
      'run',
      '--config',
      'tests/vitest.config.ts',
      ...projects.flatMap((project) => ['--project', project]),
      '--reporter=default',
      '--reporter=json',
      '--reporter=./src/workshop/unsteady.mjs',
      `--outputFile.json=${results}`,
      ...filters,
    ],
    { env: { [UNSTEADY_FILE]: unsteady, STANDCLEAR_TESTS: isShort ? 'every time' : 'all' } },
  );
  const { numPassedTests, numFailedTests, numPendingTests, numTodoTests } = taken(results) ?? NONE;
  counts.passed += numPassedTests;
  counts.failed += numFailedTests;
  counts.skipped += numPendingTests + numTodoTests;
  /** @type {import('./unsteady.mjs').Unsteady[]} */
  const found = taken(unsteady) ?? [];
  const { lines, tooMany } = judgeUnsteady(found);
  counts.unsteady += found.length;
  remarks.push(...lines);
  return passed && !tooMany;
}

/**
 * What a reporter has written, which is taken off the disk.
 * @param {string} file
 * @returns {any} undefined where nothing was written
 */
function taken(file) {
  if (!existsSync(file)) return undefined;
  const written = JSON.parse(readFileSync(file, 'utf8'));
  rmSync(file);
  return written;
}

/** @param {number} since as performance.now() gave it */
function seconds(since) {
  return `${((performance.now() - since) / 1000).toFixed(1)} s`;
}
