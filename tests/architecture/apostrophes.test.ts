import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSync, Visitor } from 'oxc-parser';
import { expect, test } from 'vitest';
import { HOUSE } from '../../src/workshop/house.mjs';
import { repositoryFiles } from './repositoryFiles';

/** What is shown, printed and said comes from here; shaders, which are code in strings, do not. */
const SAYING = /^src\/(cli|core|desk|exchange|screens)\/.*\.tsx?$/;
/** Between letters, after what was put in before it, or after the s of several at the end of a word. */
const STRAIGHT = /\p{L}'\p{L}|^'s\b|s'(?=\s)/u;

/** The strings of a source, the pieces of its templates and what stands between its elements, that have a straight apostrophe. */
function straightIn(path: string, code: string): readonly string[] {
  const found: string[] = [];
  const look = (text: unknown, start: number): void => {
    if (typeof text === 'string' && STRAIGHT.test(text))
      found.push(`${path}:${code.slice(0, start).split('\n').length}`);
  };
  const plain = ({ value, start }: { readonly value: unknown; readonly start: number }): void =>
    look(value, start);
  const piece = ({ value, start }: { readonly value: { readonly raw: string }; readonly start: number }) =>
    look(value.raw, start);
  new Visitor({ Literal: plain, JSXText: plain, TemplateElement: piece }).visit(
    parseSync(path, code).program,
  );
  return found;
}

test('an apostrophe in words is curly, wherever they are shown or printed', () => {
  const paths = repositoryFiles().filter((path) => SAYING.test(path));
  expect(paths.length).toBeGreaterThan(0);
  expect(paths.flatMap((path) => straightIn(path, readFileSync(join(HOUSE, path), 'utf8')))).toEqual([]);
});

test.each([
  ['a string', 'say("the deck\'s edge");'],
  ['a template', `say(\`\${name}'s corner\`);`],
  ['several', 'say("all setups\' lines of it");'],
  ['an element', "const it = <p>the lens's stop</p>;"],
])('a straight one is found in %s', (_, code) => {
  expect(straightIn('some.tsx', code)).toEqual(['some.tsx:1']);
});

test('quotes, code and curly ones are left alone', () => {
  const code = "say('the deck’s edge', \"'so'\", /it's/, 'a' + 'b'); // it's";
  expect(straightIn('some.tsx', code)).toEqual([]);
});
