import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import type { TestProject } from 'vitest/node';
import { HOUSE, PAGE_INPUTS } from '../../src/workshop/house.mjs';
import { newestChange } from '../../src/workshop/newestChange.mjs';
import { OwnServer } from './ownServer';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page. */
    pageAddress: string;
  }
}

const DIST = join(HOUSE, 'dist');

/** Serves the built page to all browser tests, built first where it is missing or older than its sources. */
export default async function servePage(project: TestProject): Promise<() => Promise<void>> {
  if (isStale(join(DIST, 'index.html'))) {
    // The test runner calls itself 'test', which would build the page with its libraries' slow development parts.
    const { NODE_ENV } = process.env;
    process.env.NODE_ENV = 'production';
    await build({ configFile: join(HOUSE, 'src', 'vite.config.ts'), logLevel: 'warn' });
    process.env.NODE_ENV = NODE_ENV;
  }
  // As the files lie: to pack them anew for each page would take the processor from the pages.
  const server = new OwnServer(DIST, '/');
  project.provide('pageAddress', await server.start());
  return () => server.stop();
}

function isStale(builtFile: string): boolean {
  return !existsSync(builtFile) || statSync(builtFile).mtimeMs < newestChange(PAGE_INPUTS);
}
