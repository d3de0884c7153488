import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { COMMANDS } from '../../../src/cli/commands';
import { usageOf } from '../../../src/cli/help';
import { VERSION } from '../../../src/cli/version';
import { sortWords } from '../../../src/cli/words';
import { HOUSE } from '../../../src/workshop/house.mjs';

const read = (name: string): string => readFileSync(join(HOUSE, name), 'utf8');

test('--version says the version of the package', () => {
  expect(VERSION).toBe(JSON.parse(read('package.json')).version);
});

/** Commands as the documents show them in code, up to a pipe: `standclear report …`, `npm run -s standclear -- report …`. */
function shownCommands(text: string): string[] {
  const code = [...text.matchAll(/```[^\n]*\n([\s\S]*?)```|`([^`\n]+)`/g)].map(
    ([, block, inline]) => block ?? inline,
  );
  return code.flatMap((each) => {
    const shown = each.matchAll(/\bstandclear (?:-- )?([a-z][^\n#]*)/g);
    return [...shown].map(([, words]) => words.split(/\s(?:\||>|&&|;)/)[0].trim());
  });
}

/** Why: help in a document is believed and typed; it may not know what the program does not. */
test.each(['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(join(HOUSE, name))))(
  '%s shows only commands that there are',
  (name) => {
    for (const shown of shownCommands(read(name))) {
      const command = COMMANDS.find((each) => shown.split(' ')[0] === each.name);
      if (!command) throw new Error(`${name} shows "standclear ${shown}"`);
      if (usageOf(command) === `standclear ${shown}`) continue;
      const words = shown.split(/\s+/).slice(1);
      if (words.length > 0)
        expect(() => sortWords(command, words), `${name}: standclear ${shown}`).not.toThrow();
    }
  },
);

test.skipIf(!existsSync(join(HOUSE, 'README.md')))('the documents show each command as the help does', () => {
  const documents = ['README.md', 'DEVELOPERS.md']
    .filter((name) => existsSync(join(HOUSE, name)))
    .map(read)
    .join('\n');
  for (const command of COMMANDS) expect(documents).toContain(usageOf(command));
});
