import { fileURLToPath } from 'node:url';
import { defineConfig } from 'vitest/config';
import { DearestFirst } from './dearestFirst.ts';
import { BROWSER_FILES, PICTURE_FILES } from './everyTime.ts';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * Tests of what is pure, and of screens that are only written out: files may share one load of the modules, which takes
 * longer than most of their tests.
 */
const CORE =
  '{cautions,clearance,continuity,core,form,kit,light,night,optics,plan,power,report,sight,sky,units}';
const SHARING =
  '{architecture,outside/{exchange,screens},properties/exchange,unit/{cli,exchange,scene,screens,workshop}}';
/** It has another module in the place of one: its modules are its own. */
const BUT_ALONE = '!(noLink)';
const PURE = [
  `tests/{unit,outside,properties}/${CORE}/**/*.test.ts`,
  `tests/${SHARING}/**/${BUT_ALONE}.test.{ts,tsx}`,
];
const UNIT = {
  maxWorkers: 2,
  setupFiles: ['tests/seeds.ts'],
  testTimeout: 60_000,
};

/** What all tests of the page have. */
const IN_BROWSER = {
  globalSetup: ['tests/browser/servePage.ts'],
  setupFiles: ['tests/browser/endings.ts'],
  // What drives the browser takes a second to load: all files have one of it.
  isolate: false,
  testTimeout: 300_000,
  hookTimeout: 300_000,
  // A moment in which the machine stands still may cost a try; what needs its second is named at the end of a run.
  retry: 1,
  // A page on a slow machine gets there too: nothing is said to be missing before half a minute has gone by.
  expect: { poll: { timeout: 30_000, interval: 100 } },
  // What a page was found to have is told in full: on another machine it may not be seen again.
  chaiConfig: { truncateThreshold: 0 },
};

export default defineConfig({
  root,
  test: {
    sequence: { sequencer: DearestFirst },
    projects: [
      {
        root,
        test: {
          ...UNIT,
          name: 'unit',
          include: ['tests/**/*.test.ts', 'tests/**/*.test.tsx'],
          exclude: ['tests/browser/**', 'tests/bench/**', 'tests/fuzz/**', ...PURE],
        },
      },
      {
        root,
        test: { ...UNIT, name: 'pure', include: PURE, isolate: false },
      },
      {
        root,
        test: {
          ...IN_BROWSER,
          name: 'browser',
          include: BROWSER_FILES,
          exclude: ['tests/browser/**/*.picture.test.ts'],
          // A page is waited for now and then: a third takes what two cores have left over meanwhile.
          maxWorkers: 3,
        },
      },
      {
        root,
        test: {
          ...IN_BROWSER,
          name: 'pictures',
          include: PICTURE_FILES,
          // Without a graphics card half of a picture is drawn by every core; the other half, which readies its shaders, by one.
          maxWorkers: 2,
        },
      },
      {
        root,
        test: {
          name: 'fuzz',
          include: ['tests/fuzz/**/*.test.ts'],
          globalSetup: ['tests/fuzz/tally.ts'],
          testTimeout: 3_600_000,
          maxWorkers: 2,
          // No text that is read may come to be run.
          execArgv: ['--disallow-code-generation-from-strings'],
        },
      },
    ],
  },
});
