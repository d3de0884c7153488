import { afterAll, afterEach } from 'vitest';
import { endBrowsers, endPages } from './harness';

afterEach(endPages);
afterAll(endBrowsers);
