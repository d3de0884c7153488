import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { importGraph } from './importGraph';

const folder = mkdtempSync(join(tmpdir(), 'imports-'));
afterAll(() => rmSync(folder, { recursive: true }));

test.each([
  ['a value', "import { a } from './other';\na;", 'other.ts', 'file', ['a']],
  ['a type', "import type { A } from './other';\nexport const a: A = 1;", 'other.ts', 'file', ['A']],
  ['a type in place', "export type B = import('./other').A;", 'other.ts', 'file', ['*']],
  ['a namespace', "import * as other from './other';\nother;", 'other.ts', 'file', ['*']],
  ['for its effects', "import './other';", 'other.ts', 'file', []],
  ['passed on', "export { a } from './other';", 'other.ts', 'file', ['a']],
  ['all passed on', "export * from './other';", 'other.ts', 'file', ['*']],
  ['lazily', "export const later = () => import('./other');", 'other.ts', 'file', ['*']],
  ['a worker', "new Worker(new URL('./other.ts', import.meta.url));", 'other.ts', 'file', ['*']],
  ['a worker by its bundled name', "new URL('./other.mjs', import.meta.url);", 'other.ts', 'file', ['*']],
  ['an asset', "import plan from '../assets/a.json';\nplan;", 'assets/a.json', 'outside', ['default']],
  ['a package', "import { Vector3 } from 'three';\nVector3;", 'three', 'package', ['Vector3']],
  ["a package's part", "import { b } from '@scope/name/part';\nb;", '@scope/name', 'package', ['b']],
  [
    "Node's module",
    "import { readFileSync } from 'node:fs';\nreadFileSync;",
    'node:fs',
    'package',
    ['readFileSync'],
  ],
  ['a file that is not there', "import './nowhere';", './nowhere', 'missing', []],
  [
    'what only running tells',
    'export const any = (name: string) => import(name);',
    'name',
    'computed',
    ['*'],
  ],
])('an import of %s is found', (_, text, to, kind, names) => {
  writeFileSync(join(folder, 'one.ts'), text);
  writeFileSync(join(folder, 'other.ts'), 'export const a = 1;\nexport type A = number;\n');
  expect(importGraph(folder).edges).toEqual([{ from: 'one.ts', to, kind, names }]);
});
