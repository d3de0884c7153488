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

/** Commands as the documents show them, in code: `standclear report …` or `npm run -s standclear -- report …`. */
function shownCommands(text: string): string[] {
  return [...text.matchAll(/standclear (?:-- )?((?:report|check|export)\b[^`\n#]*)/g)].map(([, words]) =>
    words.trim(),
  );
}

/** Why: help in a document is believed and typed; it may not know what the program does not. */
test.each(['README.md', 'DEVELOPERS.md'].filter((name) => existsSync(join(HOUSE, name))))(
  '%s shows only commands that there are',
  (name) => {
    for (const shown of shownCommands(read(name))) {
      const command = COMMANDS.find((each) => shown.startsWith(each.name));
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
