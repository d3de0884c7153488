import { join } from 'node:path';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { findCycle } from './findCycle';
import { type Edge, importGraph } from './importGraph';
import { brokenRule, homeOf } from './rules';

/**
 * Why: one report serves the page, a worker and the command line, which holds only as long as core needs none of them.
 * A single import upwards, even of a type, is where such a house begins to lean.
 */

/** Files of code in src when this was last looked at: a walk that finds far fewer has missed its folder. */
const FILES_WHEN_LAST_COUNTED = 410;

const graph = importGraph(join(HOUSE, 'src'));
const between = graph.edges.filter(({ kind }) => kind === 'file');

test('the walk has found the files it should', () => {
  expect(graph.files.length).toBeGreaterThanOrEqual(Math.floor(0.8 * FILES_WHEN_LAST_COUNTED));
});

test('every file is in a folder that the layers name', () => {
  expect(graph.files.filter((file) => !homeOf(file))).toEqual([]);
});

test('imports run one way, and each layer uses its own packages only', () => {
  expect(graph.edges.map(brokenRule).filter((rule) => rule !== null)).toEqual([]);
});

test('no files import each other in a circle', () => {
  expect(findCycle(between.map(({ from, to }) => [from, to]))).toBeNull();
});

test('no folders import each other in a circle', () => {
  const folders = between.map(
    ({ from, to }) => [homeOf(from)?.folder ?? from, homeOf(to)?.folder ?? to] as const,
  );
  expect(findCycle(folders)).toBeNull();
});

const edge = (from: string, to: string, kind: Edge['kind'] = 'file', names: string[] = []): Edge => ({
  from,
  to,
  kind,
  names,
});

test.each([
  ['core upwards', edge('core/units/metres.ts', 'core/plan/parse.ts')],
  ['core to the desk', edge('core/report/report.ts', 'desk/store.ts')],
  ['the command line to the desk', edge('cli/main.ts', 'desk/store.ts')],
  ['the desk to the command line', edge('desk/store.ts', 'cli/main.ts')],
  ['the workshop to core', edge('workshop/test.mjs', 'core/units/metres.ts')],
  ['React in core', edge('core/form/figure.ts', 'react', 'package', ['useState'])],
  ['three outside form and sight', edge('core/report/report.ts', 'three', 'package', ['Vector3'])],
  ["three's renderer in core", edge('core/form/figure.ts', 'three', 'package', ['WebGLRenderer'])],
  ['all of three in core', edge('core/form/figure.ts', 'three', 'package', ['*'])],
  ['Node in core', edge('core/plan/parse.ts', 'node:fs', 'package', ['readFileSync'])],
  ['the tests', edge('core/plan/parse.ts', 'tests/plan/plan.ts', 'outside')],
  ['what only running tells', edge('core/plan/parse.ts', 'name', 'computed')],
  ['a file that is not there', edge('core/plan/parse.ts', './nowhere', 'missing')],
])('the checker refuses %s', (_, wrong) => {
  expect(brokenRule(wrong)).toContain(wrong.to);
});

test.each([
  ['downwards', edge('core/report/report.ts', 'core/units/metres.ts')],
  ['in one folder', edge('core/plan/parse.ts', 'core/plan/faults.ts')],
  ["three's maths in form", edge('core/form/figure.ts', 'three', 'package', ['Vector3', 'BufferGeometry'])],
  ['core from the command line', edge('cli/main.ts', 'core/report/report.ts')],
  ['the assets', edge('core/kit/heads.ts', 'assets/kit/heads.json', 'outside')],
])('the checker allows %s', (_, right) => {
  expect(brokenRule(right)).toBeNull();
});

test('a circle is found, and a diamond is none', () => {
  expect(
    findCycle([
      ['a', 'b'],
      ['b', 'c'],
      ['c', 'a'],
    ]),
  ).toEqual(['a', 'b', 'c', 'a']);
  expect(
    findCycle([
      ['a', 'b'],
      ['a', 'c'],
      ['b', 'd'],
      ['c', 'd'],
    ]),
  ).toBeNull();
});
