import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { type Browser, type BrowserContext, chromium } from 'playwright-core';
import { findChromium } from '../../src/workshop/chromium.mjs';
import { WITHOUT_CARD } from './flags';

/** How often to look whether the browser has come up. */
const LOOK_MS = 50;
const PATIENCE_MS = 60_000;

function isRunning(id: number): boolean {
  try {
    process.kill(id, 0);
    return true;
  } catch {
    return false;
  }
}

/** A browser without a card, with a profile on the disk, as a person has one, that can be killed and started again. */
export class OwnBrowser {
  private readonly profile = mkdtempSync(join(tmpdir(), 'standclear-profile-'));
  private process: ChildProcess | null = null;
  private browser: Browser | null = null;

  /** Starts the browser with its profile and gives the profile's own windows. */
  async start(): Promise<BrowserContext> {
    const program = findChromium();
    if (!program) throw new Error('no Chromium found: run npm test, which installs or asks for one');
    const portFile = join(this.profile, 'DevToolsActivePort');
    rmSync(portFile, { force: true });
    // A group of its own: the program may be a script, and has many processes below it.
    this.process = spawn(
      program,
      [
        ...WITHOUT_CARD,
        '--headless=new',
        '--remote-debugging-port=0',
        `--user-data-dir=${this.profile}`,
        'about:blank',
      ],
      { detached: true, stdio: 'ignore' },
    );
    const until = performance.now() + PATIENCE_MS;
    while (!existsSync(portFile) || readFileSync(portFile, 'utf8').split('\n').length < 2) {
      if (performance.now() > until) throw new Error('the browser opened no port for its tools');
      await pause(LOOK_MS);
    }
    const [port = ''] = readFileSync(portFile, 'utf8').split('\n');
    this.browser = await chromium.connectOverCDP(`http://127.0.0.1:${port.trim()}`);
    const [context] = this.browser.contexts();
    if (!context) throw new Error('the browser has no windows of its own');
    return context;
  }

  /** Kills the processes that the tabs live in, in the middle of whatever they do, and tells when. */
  async killTabs(): Promise<number> {
    const tools = await this.browser?.newBrowserCDPSession();
    const processes = (await tools?.send('SystemInfo.getProcessInfo'))?.processInfo ?? [];
    const tabs = processes.filter(({ type }) => type === 'renderer').map(({ id }) => id);
    for (const id of tabs) process.kill(id, 'SIGKILL');
    const at = Date.now();
    while (tabs.some(isRunning)) await pause(LOOK_MS);
    return at;
  }

  /** Kills the whole browser in the middle of whatever it does, and tells when. */
  async kill(): Promise<number> {
    const { process: running } = this;
    if (!running?.pid) return Date.now();
    const gone = new Promise((resolve) => running.once('exit', resolve));
    this.process = null;
    process.kill(-running.pid, 'SIGKILL');
    const at = Date.now();
    await gone;
    await this.browser?.close().catch(() => {});
    return at;
  }

  /** Kills it and takes its profile off the disk. */
  async end(): Promise<void> {
    await this.kill();
    rmSync(this.profile, { recursive: true, force: true, maxRetries: 10 });
  }
}
