import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { foldShader } from '../../../src/building/foldShader';
import { drawsByLeftOut, NEVER } from '../../../src/building/leanThree';
import { HOUSE } from '../../../src/workshop/house.mjs';

const never = new Set(['NO', 'NUM_NONE']);
const folded = (...lines: string[]): string[] => foldShader(lines.join('\n'), never).split('\n');

test('what is under a name that is never defined goes, with its fork', () => {
  expect(folded('a', '#ifdef NO', 'b', '#endif', 'c')).toEqual(['a', 'c']);
  expect(folded('#ifndef NO', 'b', '#else', 'c', '#endif')).toEqual(['b']);
  expect(folded('#if NUM_NONE > 0', '#ifdef YES', 'b', '#else', 'c', '#endif', '#endif', 'd')).toEqual(['d']);
});

test('what only a compiler can know stays as it is written', () => {
  const lines = ['#if defined( YES ) && NUM_SOME > 0', 'a', '#elif DEPTH == 3', 'b', '#else', 'c', '#endif'];
  expect(folded(...lines)).toEqual(lines);
});

test('of a fork with several branches only those go that never hold', () => {
  expect(folded('#if defined( NO )', 'a', '#elif defined( YES )', 'b', '#else', 'c', '#endif')).toEqual([
    '#if defined( YES )',
    'b',
    '#else',
    'c',
    '#endif',
  ]);
  expect(folded('#ifdef YES', 'a', '#elif !defined( NO )', 'b', '#else', 'c', '#endif')).toEqual([
    '#ifdef YES',
    'a',
    '#else',
    'b',
    '#endif',
  ]);
});

test.each([
  ['defined( NO ) || defined( YES )', null],
  ['defined( NO ) && defined( YES )', false],
  ['! defined( NO ) || defined( YES )', true],
  ['defined NO', false],
  ['( defined( NO ) || NUM_NONE > 0 ) && defined( YES )', false],
  ['defined( YES ) && ! ( defined( NO ) && defined( YES ) )', null],
  ['defined( YES ) || ! defined( NO ) && NUM_NONE > 0', null],
  ['NUM_NONE > 0 || NUM_SOME > NUM_NONE', null],
  ['UNROLLED_LOOP_INDEX < NUM_NONE', null],
])('%s', (condition, holds) => {
  const found = folded(`#if ${condition}`, 'a', '#endif');
  expect(found).toEqual(holds === null ? [`#if ${condition}`, 'a', '#endif'] : holds ? ['a'] : ['']);
});

test('comments, blank lines and indents go, and nothing else within a line', () => {
  expect(folded('  float a = 1.0; // one', '', '\t/* two', '  lines */', '  #define F( x ) ( x )')).toEqual([
    'float a = 1.0;',
    '#define F( x ) ( x )',
  ]);
});

test.each([
  [['#endif'], '#endif without an #if'],
  [['#ifdef YES'], 'without its #endif'],
])('forks that do not close are refused: %s', (lines, words) => {
  expect(() => folded(...lines)).toThrow(words);
});

test('every shader of three folds, keeps its braces in pairs, and folds further as it would have at once', () => {
  const shaders = join(HOUSE, 'node_modules/three/src/renderers/shaders');
  const files = ['ShaderChunk', 'ShaderLib'].flatMap((folder) =>
    readdirSync(join(shaders, folder)).map((file) => join(shaders, folder, file)),
  );
  expect(files.length).toBeGreaterThan(100);
  for (const file of files) {
    for (const [, shader] of readFileSync(file, 'utf8').matchAll(/`([^`]*)`/g)) {
      const text = foldShader(shader, NEVER);
      const count = (piece: RegExp): number => text.match(piece)?.length ?? 0;
      expect(count(/^#if/gm), file).toBe(count(/^#endif/gm));
      if (count(/^#else/gm) === 0) expect(count(/\{/g), file).toBe(count(/\}/g));
      // Whatever a surface has of the rest, it gets the same shader with and without the first folding.
      for (const lacking of [/MAP/, /SHADOW/, /^USE_/, /^NUM_/, /[AEIOU]S?$/]) {
        const names = shader.match(/\b[A-Z][A-Z0-9_]+\b/g)?.filter((name) => lacking.test(name)) ?? [];
        const all = new Set([...NEVER, ...names]);
        expect(foldShader(text, all), file).toBe(foldShader(shader, all));
      }
    }
  }
});

test('no source draws by anything that the built page leaves out of three', () => {
  const found: string[] = [];
  for (const entry of readdirSync(join(HOUSE, 'src'), { withFileTypes: true, recursive: true })) {
    if (!entry.isFile() || !/\.tsx?$/.test(entry.name) || entry.parentPath.includes('building')) continue;
    const text = readFileSync(join(entry.parentPath, entry.name), 'utf8');
    for (const word of drawsByLeftOut(text)) found.push(`${entry.name}: ${word}`);
  }
  expect(found).toEqual([]);
  expect(drawsByLeftOut("import { BatchedMesh } from 'three';\nnew MeshPhongMaterial({ envMap });")).toEqual([
    'BatchedMesh',
    'MeshPhongMaterial',
    'envMap',
  ]);
});
