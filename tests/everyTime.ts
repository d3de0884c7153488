/**
 * The browser tests of every run: the job from an empty roof to the crew's phone, each sheet once, what must never be lost
 * or let in, and what has to be the same everywhere. The others go through one thing at length; `npm test -- all`, as CI
 * runs it, runs them too.
 */
export const EVERY_TIME: readonly string[] = [
  'blockingOnRoof',
  'budget',
  'cautions',
  'crewWithoutPictures',
  'csp',
  'desk',
  'deskByKeys',
  'faultsInPanes',
  'faultsOfKeeping',
  'job',
  'keeping',
  'openFiles',
  'overhead',
  'photometry',
  'power',
  'remedies',
  'sameBytes',
  'share',
  'stressSlates',
];

/** The same of those that look at drawn pictures. */
export const PICTURES_EVERY_TIME: readonly string[] = ['crewPictures', 'opens'];

/** What the command that runs the tests says where only these are wanted; whoever asks for a file by its path gets it. */
const isShort = process.env.STANDCLEAR_TESTS === 'every time';

/** Which files of the browser's tests to run, as patterns. */
export const BROWSER_FILES = isShort
  ? EVERY_TIME.map((name) => `tests/browser/${name}.test.ts`)
  : ['tests/browser/**/*.test.ts'];

/** Which files of the tests that look at pictures. */
export const PICTURE_FILES = isShort
  ? PICTURES_EVERY_TIME.map((name) => `tests/browser/${name}.picture.test.ts`)
  : ['tests/browser/**/*.picture.test.ts'];
