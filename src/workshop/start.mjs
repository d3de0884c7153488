import { join } from 'node:path';
import { HOUSE } from './house.mjs';
import { install } from './install.mjs';

install();

const { createServer } = await import('vite');
const server = await createServer({
  configFile: join(HOUSE, 'src', 'vite.config.ts'),
  server: { open: hasDesktop() },
});
await server.listen();
server.printUrls();
console.log('\n  Standclear is open with the demo plan. Ctrl+C ends it.');

/** Whether a browser can be opened from here: not over a bare terminal, and not on a build machine. */
function hasDesktop() {
  if (process.env.CI) return false;
  if (process.platform === 'darwin' || process.platform === 'win32') return true;
  return Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);
}
