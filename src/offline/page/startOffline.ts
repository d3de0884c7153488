import { type Answer, nameOfBuild, type Question } from '../keptList';
import { offlineStore } from './offlineStore';

/** The worker's file beside the page: its name never changes, or browsers would go on with the old one. */
const WORKER_FILE = 'offline.js';
/** A page that stays open for days asks for a newer build when it is looked at again, at most this often. */
const ASK_AGAIN_MS = 3_600_000;

let registration: ServiceWorkerRegistration | null = null;

/** The build that this page is of, as index.html says; null for a page that was not built. */
function ownBuild(): string | null {
  return document.querySelector<HTMLMetaElement>('meta[name="build"]')?.content ?? null;
}

/** The folder that the page lies in, with a slash at the end. */
const ownFolder = (): string => new URL('./', document.baseURI).href;

/**
 * Has the page kept on the device, from when it can be read, and follows newer builds. Does nothing for a page
 * that was not built, and where the browser has no such thing (another scheme than https, a private window).
 */
export async function startOffline(): Promise<void> {
  const build = ownBuild();
  if (build === null || !('serviceWorker' in navigator)) return;
  holdBuild(build);
  await readable();
  await idle();
  try {
    registration = await navigator.serviceWorker.register(new URL(WORKER_FILE, ownFolder()), {
      updateViaCache: 'none',
    });
  } catch {
    // Offline use is an addition: a browser that refuses it shows the page all the same, and nothing is promised.
    return;
  }
  // Whoever drives a browser may have it keep none, which the types do not know of.
  if (!registration) return;
  follow(registration);
  const { active } = await navigator.serviceWorker.ready;
  if (active) await learn(active, 'kept');
  await idle();
  if (active) await learn(active, 'rest');
}

/**
 * Has the newer build serve all pages, and opens this one anew with it. Others go on as they are until they are asked.
 * Whatever is to outlive the page has to be written before.
 */
export async function openNewerBuild(): Promise<void> {
  const waiting = registration?.waiting;
  if (waiting) {
    const changed = new Promise((done) =>
      navigator.serviceWorker.addEventListener('controllerchange', done, { once: true }),
    );
    const question: Question = { ask: 'takeOver' };
    waiting.postMessage(question);
    await changed;
  }
  location.reload();
}

/** For as long as this page lives, the files of its build are not let go of. */
function holdBuild(build: string): void {
  void navigator.locks?.request(
    nameOfBuild(ownFolder(), build),
    { mode: 'shared' },
    () => new Promise(() => {}),
  );
}

function follow(followed: ServiceWorkerRegistration): void {
  const tell = (): void => offlineStore.setState({ isNewerHere: true });
  const watch = (worker: ServiceWorker | null): void =>
    worker?.addEventListener('statechange', () => {
      if (worker.state === 'installed' && followed.active) tell();
    });
  if (followed.waiting && followed.active) tell();
  watch(followed.installing);
  followed.addEventListener('updatefound', () => watch(followed.installing));
  // Another page has taken the newer build.
  navigator.serviceWorker.addEventListener('controllerchange', () => {
    const { controller } = navigator.serviceWorker;
    if (controller) void learn(controller, 'kept');
  });
  let askedAt = performance.now();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' || performance.now() - askedAt < ASK_AGAIN_MS) return;
    askedAt = performance.now();
    followed.update().catch(() => {});
  });
}

/** Asks a worker how much it keeps, or to keep the rest first. */
async function learn(worker: ServiceWorker, ask: 'kept' | 'rest'): Promise<void> {
  const { port1, port2 } = new MessageChannel();
  const answered = new Promise<Answer>((done) => {
    port1.onmessage = ({ data }: MessageEvent<Answer>) => done(data);
  });
  const question: Question = { ask };
  worker.postMessage(question, [port2]);
  const { build, kept } = await answered;
  if (build === ownBuild()) {
    offlineStore.setState({ kept });
    document.documentElement.dataset.kept = kept;
    return;
  }
  // A page that was loaded past the worker is not of its build either, and need not be the older one.
  if (navigator.serviceWorker.controller) offlineStore.setState({ isNewerHere: true });
}

/** When the page can be read: until then nothing else is to take the line from what it loads. */
async function readable(): Promise<void> {
  const { documentElement } = document;
  if (documentElement.dataset.ready) return;
  await new Promise<void>((done) => {
    const observer = new MutationObserver(() => {
      if (!documentElement.dataset.ready) return;
      observer.disconnect();
      done();
    });
    observer.observe(documentElement, { attributeFilter: ['data-ready'] });
  });
}

/** When the page has nothing else to do, or soon all the same. */
function idle(): Promise<unknown> {
  // Not in every browser.
  if (typeof requestIdleCallback !== 'function') return Promise.resolve();
  return new Promise((done) => requestIdleCallback(done, { timeout: 10_000 }));
}
