import { existsSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { build, preview } from 'vite';
import type { TestProject } from 'vitest/node';
import { HOUSE, PAGE_INPUTS } from '../../src/workshop/house.mjs';
import { newestChange } from '../../src/workshop/newestChange.mjs';

declare module 'vitest' {
  interface ProvidedContext {
    /** Address of the built page. */
    pageAddress: string;
  }
}

const configFile = join(HOUSE, 'src', 'vite.config.ts');

/** Serves the built page to all browser tests, built first where it is missing or older than its sources. */
export default async function servePage(project: TestProject): Promise<() => Promise<void>> {
  if (isStale(join(HOUSE, 'dist', 'index.html'))) {
    // The test runner calls itself 'test', which would build the page with its libraries' slow development parts.
    const { NODE_ENV } = process.env;
    process.env.NODE_ENV = 'production';
    await build({ configFile, logLevel: 'warn' });
    process.env.NODE_ENV = NODE_ENV;
  }
  const server = await preview({ configFile, preview: { host: '127.0.0.1', port: 0, open: false } });
  const address = server.resolvedUrls?.local[0];
  if (!address) throw new Error('the preview server told no address');
  project.provide('pageAddress', address);
  return () => server.close();
}

function isStale(builtFile: string): boolean {
  return !existsSync(builtFile) || statSync(builtFile).mtimeMs < newestChange(PAGE_INPUTS);
}
