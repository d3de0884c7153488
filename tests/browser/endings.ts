import { afterEach } from 'vitest';
import { endPages } from './harness';

afterEach(endPages);
