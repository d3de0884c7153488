import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { run } from './run.mjs';

const PLACES = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
  ],
  win32: ['PROGRAMFILES', 'PROGRAMFILES(X86)', 'LOCALAPPDATA'].map((folder) =>
    join(process.env[folder] ?? 'C:\\Program Files', 'Google', 'Chrome', 'Application', 'chrome.exe'),
  ),
};

/**
 * Finds an installed Chromium or Chrome for the browser tests.
 * @returns {string | null} its path, from CHROME_PATH first; null if there is none
 */
export function findChromium() {
  const named = process.env.CHROME_PATH;
  if (named) return existsSync(named) ? named : null;
  const places = Object.hasOwn(PLACES, process.platform)
    ? PLACES[/** @type {keyof typeof PLACES} */ (process.platform)]
    : [];
  return places.find((path) => existsSync(path)) ?? null;
}

/**
 * Finds Chromium, and installs it with apt-get first where that needs no password.
 * @returns {string | null} its path; null if there is none, after one line that says what to do
 */
export function findOrInstallChromium() {
  const found = findChromium();
  if (found) return found;
  if (process.env.CHROME_PATH) {
    console.error(
      `CHROME_PATH names ${process.env.CHROME_PATH}, where there is no file: set it to a Chromium or Chrome program, or unset it.`,
    );
    return null;
  }
  const installer = aptGet();
  if (installer) {
    console.log('Installing Chromium with apt-get for the browser tests (once).');
    const env = { DEBIAN_FRONTEND: 'noninteractive' };
    const [program = '', ...first] = installer;
    run(program, [...first, 'update'], { env });
    run(program, [...first, 'install', '-y', '--no-install-recommends', 'chromium'], { env });
    const installed = findChromium();
    if (installed) return installed;
  }
  console.error(
    'The browser tests found no Chromium: install Chromium or Chrome, or set CHROME_PATH to its program.',
  );
  return null;
}

/** The command that runs apt-get with the rights to install, or null where there is none. */
function aptGet() {
  if (!existsSync('/usr/bin/apt-get')) return null;
  if (process.getuid?.() === 0) return ['apt-get'];
  const passwordless = spawnSync('sudo', ['-n', 'true'], { stdio: 'ignore' }).status === 0;
  return passwordless ? ['sudo', '-n', 'apt-get'] : null;
}
