import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { bundle } from './bundle.mjs';
import { HOUSE } from './house.mjs';
import { install } from './install.mjs';
import { run } from './run.mjs';

install();

const ending = '.bench.ts';
const names = readdirSync(join(HOUSE, 'tests/bench'))
  .filter((file) => file.endsWith(ending))
  .map((file) => file.slice(0, -ending.length));
const [wanted] = process.argv.slice(2);
if (wanted && !names.includes(wanted)) {
  console.error(`There is no benchmark '${wanted}'; there are: ${names.join(', ')}.`);
  process.exit(1);
}

const folder = await bundle({
  name: 'bench',
  entries: Object.fromEntries(names.map((name) => [name, `tests/bench/${name}${ending}`])),
  inputs: ['src', 'tests', 'assets', 'package-lock.json'].map((path) => join(HOUSE, path)),
});
let failed = false;
for (const name of wanted ? [wanted] : names) {
  console.log(`\n${name}`);
  // Each in a process of its own, so that none runs in the heap that another has left.
  if (!run(process.execPath, [join(folder, `${name}.mjs`)])) failed = true;
}
process.exit(failed ? 1 : 0);
