import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { bundle } from './bundle.mjs';
import { COMMAND_INPUTS, HOUSE } from './house.mjs';
import { install } from './install.mjs';

install();

const worker = 'src/cli/worker.ts';
const folder = await bundle({
  name: 'standclear',
  entries: { main: 'src/cli/main.ts', ...(existsSync(join(HOUSE, worker)) ? { worker } : {}) },
  inputs: COMMAND_INPUTS,
});

// npm runs a script in the repository's root; the paths that a person types belong to where they stand.
if (process.env.INIT_CWD) process.chdir(process.env.INIT_CWD);
await import(pathToFileURL(join(folder, 'main.mjs')).href);
