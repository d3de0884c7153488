import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import {
  CREW,
  CREW_START,
  comingWith,
  DESK,
  DESK_START,
  ENTRY,
  filesBelow,
  readManifest,
  STAGE,
  WALK,
} from '../../src/building/builtFiles';
import { HOUSE } from '../../src/workshop/house.mjs';

/**
 * Why: a crew opens its link on a phone, in a street, over a network that is a bar or two; and every import that is added
 * at the front door is one that somebody waits for. Scripts only, compressed by gzip as servers send them, workers
 * apart: they come beside the page and hold nobody up. The one that reads the link does, and is counted in a line of its own.
 */
const DIST = join(HOUSE, 'dist');
const manifest = readManifest(DIST);

const sizes = new Map<string, number>();
function compressed(path: string): number {
  const known = sizes.get(path);
  if (known !== undefined) return known;
  const size = gzipSync(readFileSync(join(DIST, path))).length;
  sizes.set(path, size);
  return size;
}

const kilobytesOf = (paths: Iterable<string>): number =>
  [...new Set(paths)]
    .filter((path) => path.endsWith('.js'))
    .reduce((sum, path) => sum + compressed(path), 0) / 1000;

const together = (sources: readonly string[]): string[] =>
  sources.flatMap((source) => [...comingWith(manifest, source)]);

const linkReader = filesBelow(DIST).filter((path) => /\/link\.worker-[^/]+\.js$/.test(path));

/** What is wanted in kB, and what holds today: where that is more, nobody makes it worse. */
const BUDGETS = [
  {
    what: 'the crew sheet, before its setups can be read',
    wanted: 130,
    holds: 99.4,
    paths: together([ENTRY, CREW_START, CREW]),
  },
  {
    what: 'the same with the worker that reads its link',
    wanted: 130,
    holds: 128.6,
    paths: [...together([ENTRY, CREW_START, CREW]), ...linkReader],
  },
  {
    what: 'the crew sheet with everything, its pictures too',
    wanted: 380,
    holds: 371.5,
    paths: [...together([ENTRY, CREW_START]), ...comingWith(manifest, CREW, true)],
  },
  {
    what: 'the desk as it opens, with its pictures',
    wanted: 550,
    holds: 545.5,
    paths: together([ENTRY, DESK_START, DESK, STAGE]),
  },
  {
    what: 'the same with the roof to walk round, which comes after the first picture',
    wanted: 570,
    holds: 567.8,
    paths: together([ENTRY, DESK_START, DESK, STAGE, WALK]),
  },
];

test.each(BUDGETS)('$what: at most $holds kB', ({ what, wanted, holds, paths }) => {
  const found = kilobytesOf(paths);
  console.log(`${found.toFixed(1)} kB, wanted ${wanted}: ${what}`);
  expect(found).toBeGreaterThan(60);
  expect(found).toBeLessThanOrEqual(holds);
});

test('the crew sheet brings nothing of the desk along, and nothing that draws before its first picture', () => {
  expect(linkReader).toHaveLength(1);
  const first = together([ENTRY, CREW_START, CREW]);
  expect(
    first.filter((path) => /(three|[Ss]tage|picture|App|desk)-/.test(path) && !/CrewApp/.test(path)),
  ).toEqual([]);
  const all = comingWith(manifest, CREW, true);
  const desk = manifest[DESK]?.file;
  expect(desk).toBeDefined();
  expect(all).not.toContain(desk);
  // Nor the desk the crew's styles, which would undo its own wherever they come last.
  const styles = (files: Iterable<string>): string[] => [...files].filter((path) => path.endsWith('.css'));
  const shared = styles(together([ENTRY, CREW_START, DESK_START]));
  const ofCrew = styles(comingWith(manifest, CREW)).filter((path) => !shared.includes(path));
  expect(ofCrew.length).toBeGreaterThan(0);
  const ofDesk = new Set(styles(comingWith(manifest, DESK, true)));
  expect(ofCrew.filter((path) => ofDesk.has(path))).toEqual([]);
  const every = filesBelow(DIST).filter((path) => !/worker|^offline\.js$/.test(path));
  console.log(
    `${kilobytesOf(every).toFixed(1)} kB: all scripts of the page, those that come when they are asked for too`,
  );
});
