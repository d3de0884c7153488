import { assetStore } from '../../desk/assets/assetStore';
import { blockingStore } from '../../desk/blocking/blockingStore';
import { onlyInStore } from '../../desk/blocking/onlyIn';
import { cautionsStore, openedCaution } from '../../desk/cautions/cautionsStore';
import { keepingStore, savedSentence } from '../../desk/keepingStore';
import { proposalStore } from '../../desk/lensTestProposal';
import { liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { explainStore } from '../../desk/remedies/explaining';
import { sessionStore } from '../../desk/sessionStore';
import { viewStore } from '../../desk/viewStore';

export interface StageWatcher {
  /** Something that a picture shows may have changed. */
  readonly changed: () => void;
  /** The committed plan is another one. */
  readonly planChanged: () => void;
  /** The card has lost everything and works again. */
  readonly restored: () => void;
  readonly invalidate: () => void;
}

const LOST =
  'The graphics card has dropped the picture. It comes back by itself once the card answers; if it does not, load the page again. The rest goes on.';

/** Calls the watcher on every change of the stores, of where the views lie, and of the card. Returns what ends it. */
export function watchStage(canvas: HTMLCanvasElement, watcher: StageWatcher): () => void {
  const sizes = new ResizeObserver(watcher.invalidate);
  const observe = () => {
    sizes.disconnect();
    const { frameElements, walkElement, thumbElements } = viewStore.getState();
    const views = [walkElement, ...frameElements.values(), ...thumbElements.values()];
    for (const element of [document.body, ...views]) if (element) sizes.observe(element);
  };
  let shownCaution = openedCaution();
  const stops = [
    planStore.subscribe((now, before) => {
      if (now.plan !== before.plan) watcher.planChanged();
      watcher.changed();
    }),
    liveStore.subscribe(watcher.changed),
    sessionStore.subscribe(watcher.changed),
    onlyInStore.subscribe(watcher.changed),
    explainStore.subscribe(watcher.changed),
    proposalStore.subscribe(watcher.changed),
    cautionsStore.subscribe(() => {
      const opened = openedCaution();
      if (opened === shownCaution) return;
      shownCaution = opened;
      watcher.changed();
    }),
    blockingStore.subscribe((now, before) => {
      if (now.proposing !== before.proposing) watcher.changed();
    }),
    assetStore.subscribe((now, before) => {
      if (now.changes !== before.changes || now.painted !== before.painted) watcher.changed();
    }),
    viewStore.subscribe((now, before) => {
      if (now.pictureReady !== before.pictureReady || now.pictureRefused !== before.pictureRefused) return;
      observe();
      watcher.changed();
    }),
  ];
  let isLost = false;
  const tellLost = () =>
    viewStore.getState().setPictureRefused(`${LOST} ${savedSentence(keepingStore.getState())}`);
  stops.push(
    keepingStore.subscribe(() => {
      if (isLost) tellLost();
    }),
  );
  const onLost = () => {
    isLost = true;
    tellLost();
  };
  const onRestored = () => {
    isLost = false;
    viewStore.setState({ pictureRefused: null });
    watcher.restored();
    watcher.changed();
  };
  observe();
  canvas.addEventListener('webglcontextlost', onLost);
  canvas.addEventListener('webglcontextrestored', onRestored);
  window.addEventListener('scroll', watcher.invalidate, { capture: true, passive: true });
  window.addEventListener('resize', watcher.invalidate);
  return () => {
    for (const stop of stops) stop();
    sizes.disconnect();
    canvas.removeEventListener('webglcontextlost', onLost);
    canvas.removeEventListener('webglcontextrestored', onRestored);
    window.removeEventListener('scroll', watcher.invalidate, { capture: true });
    window.removeEventListener('resize', watcher.invalidate);
  };
}
