import { useFrame, useThree } from '@react-three/fiber';
import { useEffect, useRef } from 'react';
import type { Plan } from '../../core/plan/schema/plan';
import { drawNextStill, stillsStore } from '../../desk/contactStills';
import { livePlan, liveStore } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';
import { viewStore } from '../../desk/viewStore';
import { walkStore } from '../../desk/walkStore';
import type { Pane } from '../picture/painter';
import type { WalkStage } from '../walk/walkStage';
import { overlaps, paneOf } from './panes';
import { QUALITIES, STRAINED } from './quality';
import { Rhythm } from './rhythm';
import { StageDriver } from './stageDriver';
import { ThumbTurns } from './thumbTurns';
import { watchStage } from './watchStage';

/** Thumbnails wait this long for the hand to rest, milliseconds. */
const THUMB_PATIENCE = 220;
/** A hand that turns the walk-round rests when nothing has moved for this long, milliseconds. */
const REST_PATIENCE = 150;

interface Works {
  readonly rhythm: Rhythm;
  readonly turns: ThumbTurns;
  readonly driver: StageDriver;
  /** Null until somebody walks round. */
  walk: WalkStage | null;
}

/**
 * Draws the stage, in place of fiber's own rendering: on demand, each view into its own pane, and only the views that
 * something has changed for. Reads the stores itself; React has no part in a frame.
 */
export function RenderDriver() {
  const gl = useThree((state) => state.gl);
  const scene = useThree((state) => state.scene);
  const invalidate = useThree((state) => state.invalidate);
  const works = useRef<Works | null>(null);
  const thumbsAt = useRef(0);
  const frames = useRef(0);
  const moved = useRef<{ readonly plan: Plan | null; readonly isTurning: boolean }>({
    plan: null,
    isTurning: false,
  });

  useEffect(() => {
    const driver = new StageDriver(gl, scene);
    const made: Works = { driver, walk: null, rhythm: new Rhythm(), turns: new ThumbTurns() };
    works.current = made;
    const bringWalk = async (): Promise<void> => {
      if (!viewStore.getState().walkElement || made.walk) return;
      const { WalkStage } = await import('../walk/walkStage');
      if (works.current !== made || made.walk) return;
      made.walk = new WalkStage(scene, invalidate);
      invalidate();
    };
    // Its script is here before the pane is that it is drawn into.
    const stopWaiting = viewStore.subscribe(() => void bringWalk());
    void bringWalk();
    const stop = watchStage(gl.domElement, {
      changed: () => {
        thumbsAt.current = performance.now() + THUMB_PATIENCE;
        invalidate();
      },
      planChanged: () => driver.sweep(),
      restored: () => driver.redraw(),
      invalidate,
    });
    const stopAsking = walkStore.subscribe(() => invalidate());
    const stopStills = stillsStore.subscribe(() => invalidate());
    invalidate();
    return () => {
      stop();
      stopAsking();
      stopStills();
      stopWaiting();
      works.current = null;
      made.walk?.dispose();
      driver.dispose();
    };
  }, [gl, scene, invalidate]);

  useFrame(() => {
    if (!works.current || gl.getContext().isContextLost()) return;
    const { driver, walk, rhythm, turns } = works.current;
    const beganAt = performance.now();
    const { frameElements, walkElement, thumbElements, pictureReady, setPictureReady } = viewStore.getState();
    const { setupId, pictureQuality, pictureShows: shows, roofView } = sessionStore.getState();
    const { seconds, playing, gesture } = liveStore.getState();
    const plan = livePlan();
    const isMoving = playing || moved.current.isTurning || (gesture !== null && plan !== moved.current.plan);
    // What moves is drawn as fine as keeps the display's rate, and in full once it rests; the light picture has its own.
    const fineness = pictureQuality === 'full' ? rhythm.frame(beganAt, isMoving) : 1;
    const isStrained = fineness < 1;
    const full = QUALITIES[pictureQuality];
    const quality = isStrained ? STRAINED : full;
    if (isStrained && !playing) wakeLater(invalidate, performance.now() + REST_PATIENCE);
    const pixelRatio = Math.min(quality.mostPixelRatio, window.devicePixelRatio) * fineness;
    const turn = playing ? frames.current : null;
    const moment = { plan, seconds, quality, shows, pixelRatio, turn, isStrained };
    const setup = plan.setups.find(({ id }) => id === setupId) ?? plan.setups[0] ?? null;
    const canvas = gl.domElement.getBoundingClientRect();
    const before = driver.paintings;
    gl.setRenderTarget(null);
    gl.setClearColor(0x000000, 0);
    gl.clear();

    const seen = plan.setups.flatMap((each) => {
      const element = frameElements.get(each.id);
      const pane = element ? paneOf(element, canvas) : null;
      return pane ? [{ setup: each, pane }] : [];
    });
    driver.forgetFrames(seen.map(({ setup: { id } }) => id));
    // Where pictures are dear, those beside what is looked through take turns while a move plays.
    const others = seen.filter((each) => each.setup !== setup);
    const late = others.filter((_, k) => k !== frames.current % others.length);
    for (const each of seen) {
      const mayBeLate = playing && pictureQuality === 'light' && late.includes(each);
      driver.showFrame(moment, each.setup, each.pane, mayBeLate);
    }

    walk?.bind(walkElement);
    const walkPane = walkElement && roofView === 'walk round' ? paneOf(walkElement, canvas) : null;
    if (walk && walkPane) {
      const isDear = pictureQuality === 'light';
      const isTurning = walk.step({ plan, seconds, setup, pane: walkPane, isDamped: !isDear });
      moved.current = { plan, isTurning };
      // Where pictures are dear, one in motion is drawn coarse, and fine once it rests.
      if (isTurning && isDear) wakeLater(invalidate, performance.now() + REST_PATIENCE);
      else if (isTurning) invalidate();
      const ratio = isTurning && isDear ? pixelRatio / 2 : pixelRatio;
      driver.showWalk({ ...moment, pixelRatio: ratio }, setup, walk.seen(seconds, setup), walkPane);
      walk.drawHand();
    } else {
      moved.current = { plan, isTurning: false };
      driver.forgetWalk();
    }

    // Thumbnails and stills come one by one, once the hand rests; the end of a move or a drag calls for them again.
    // A still is of a plan of its own, so what is only tried out does not hold it up.
    const wantsThumbs = thumbElements.size > 0 && gesture === null;
    if (!playing) turns.rest();
    else if (wantsThumbs && turns.frame(beganAt, performance.now() - beganAt, isStrained)) {
      // The strip plays along, a thumbnail at a time, as far as the move keeps its rate.
      const from = performance.now();
      const shown = [...seen.map(({ pane }) => pane), ...(walkPane ? [walkPane] : [])];
      // Under a thumbnail that has slid beneath a view, the stage shows that view.
      const underneath = (element: HTMLElement): Pane | null => {
        const pane = paneOf(element, canvas);
        return pane && shown.some((each) => overlaps(each, pane)) ? null : pane;
      };
      if (driver.printNextThumb(moment, thumbElements, underneath)) turns.printed(performance.now() - from);
    }
    if ((wantsThumbs || stillsStore.getState().waiting.length > 0) && !playing) {
      const isBusy = driver.paintings !== before || performance.now() < thumbsAt.current;
      if (isBusy) wakeLater(invalidate, thumbsAt.current);
      else if (wantsThumbs && driver.printNextThumb({ ...moment, quality: full }, thumbElements))
        invalidate();
      else if (drawNextStill((still) => driver.printStill(still, full, shows))) invalidate();
    }
    // What tests and a worried battery can read: both stand still while nothing changes.
    frames.current += 1;
    document.documentElement.dataset.frames = String(frames.current);
    document.documentElement.dataset.paintings = String(driver.paintings);
    if (driver.paintings > before && !pictureReady) setPictureReady();
  }, 1);

  return null;
}

let waking: { readonly timer: ReturnType<typeof setTimeout>; readonly at: number } | null = null;

/** One more frame when the last patience is over. */
function wakeLater(invalidate: () => void, at: number): void {
  if (waking && waking.at >= at) return;
  if (waking) clearTimeout(waking.timer);
  const wake = () => {
    waking = null;
    invalidate();
  };
  waking = { timer: setTimeout(wake, Math.max(0, at - performance.now())), at };
}
