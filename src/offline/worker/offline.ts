/**
 * The offline worker: keeps the files of the page on the device, and answers from them. It never asks another host, and
 * keeps nothing but the files of its own build.
 */
import type { Answer, Kept, KeptList, Question } from '../keptList';
import { Shelf } from './shelf';

declare const self: ServiceWorkerGlobalScope;
/** Put in when the page is built. */
declare const KEPT_LIST: KeptList;

const folder = self.registration.scope;
const list = KEPT_LIST;
const shelf = new Shelf(list, folder);

self.addEventListener('install', (event) => {
  // A phone that comes for the first time has the crew sheet soon, and the desk after it. A newer build is only offered
  // when it is whole: with half of it a device that went offline would be worse off than before.
  const isFirst = self.registration.active === null;
  event.waitUntil(shelf.keep(isFirst ? list.crew : [...list.crew, ...list.rest]));
});

/** Lets go of older builds, unless a newer one is coming: no page is of that yet, and it must find its files. */
async function letGoOfOld(): Promise<void> {
  const { installing, waiting } = self.registration;
  if (!installing && !waiting) await shelf.letGoOfOld();
}

self.addEventListener('activate', (event) => {
  event.waitUntil(Promise.all([self.clients.claim(), letGoOfOld()]));
});

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || !request.url.startsWith(folder)) return;
  // Where the device's storage fails, the page comes from its server as if there were none.
  const kept = shelf.find(request.url).catch(() => undefined);
  event.respondWith(kept.then((answer) => answer ?? fetch(request)));
  if (request.mode === 'navigate') event.waitUntil(letGoOfOld());
});

self.addEventListener('message', (event) => {
  const { ask }: Question = event.data;
  const reply = async (): Promise<void> => {
    if (ask === 'rest') await shelf.keep(list.rest).catch(() => {});
    const kept = await shelf.kept().catch((): Kept => 'nothing');
    const answer: Answer = { build: list.build, kept };
    event.ports[0]?.postMessage(answer);
    // The page that asks has long taken the place of the one before, which may have been the last of its build.
    await letGoOfOld();
  };
  event.waitUntil(ask === 'takeOver' ? self.skipWaiting() : reply());
});
