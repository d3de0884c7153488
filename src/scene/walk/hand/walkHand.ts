import { itemOf } from '../../../core/plan/items';
import { onlyInSetup, seenPlan } from '../../../desk/blocking/onlyIn';
import { contextStore } from '../../../desk/contextStore';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { sessionStore } from '../../../desk/sessionStore';
import { registerRoofSurface } from '../../../desk/tools/roofSurfaces';
import { toolStore } from '../../../desk/tools/toolStore';
import { Picker } from '../picking';
import type { WalkRound } from '../walkRound';
import { type Pixel, WalkView } from '../walkView';
import { carry } from './carry';
import { choose, isChosen, isHandy, isMovable, markMeant, movingWith } from './choosing';
import { handleNear } from './drawn';
import { Fingers } from './fingers';
import type { Grasp, Held } from './grasp';
import { HandLayer } from './handLayer';
import { type Handle, handlesOf } from './handles';
import { hasMoved, type Press, toleranceOf } from './press';
import { pull } from './pull';
import { Shown } from './shown';
import { type Hit, hitAlong } from './targets';
import { type Pointing, REACH, type RoofSpot, ToolUse } from './toolUse';

const NOBODY: ReadonlySet<string> = new Set();

/** How long a finger rests before it asks for more, milliseconds. */
const LONG_MS = 500;

/**
 * The hand in the walk-round: a press chooses, a drag moves what is chosen over what carries it, grips turn, raise and
 * aim it, a picked tool puts things down; what means none of these is left to the walk-round's own turning. It hears
 * every pointer before the turning does, and stops those that it takes.
 */
export class WalkHand {
  private readonly picker = new Picker();
  private readonly tool = new ToolUse(this.picker);
  private readonly fingers = new Fingers();
  private readonly shown: Shown;
  private element: HTMLElement | null = null;
  private press: Press | null = null;
  private resting: ReturnType<typeof setTimeout> | null = null;
  private held: Held = { shift: false, alt: false };
  private last: Pixel = [0, 0];
  private isSpaceDown = false;
  private stops: (() => void)[] = [];

  constructor(private readonly walk: WalkRound) {
    this.shown = new Shown(new HandLayer());
  }

  /** Listens to an element's pointers; null lets go. */
  bind(element: HTMLElement | null): void {
    if (element === this.element) return;
    for (const stop of this.stops) stop();
    this.stops = [];
    this.drop();
    this.element = element;
    if (!element) return;
    this.shown.layer.attach(element);
    const on = <Name extends keyof HTMLElementEventMap>(
      name: Name,
      act: (event: HTMLElementEventMap[Name]) => void,
    ): void => {
      element.addEventListener(name, act, true);
      this.stops.push(() => element.removeEventListener(name, act, true));
    };
    on('pointerdown', this.onDown);
    on('pointermove', this.onMove);
    on('pointerup', this.onUp);
    on('pointercancel', this.onCancel);
    on('pointerleave', this.onLeave);
    on('contextmenu', (event) => event.preventDefault());
    window.addEventListener('keydown', this.onKey, true);
    window.addEventListener('keyup', this.onKey, true);
    this.stops.push(
      () => {
        window.removeEventListener('keydown', this.onKey, true);
        window.removeEventListener('keyup', this.onKey, true);
        this.shown.layer.detach();
      },
      toolStore.subscribe(() => this.draw()),
      registerRoofSurface({
        element,
        roofSpotAt: (clientX, clientY) => this.roofAt(clientX, clientY)?.spot ?? null,
        reachMetres: (clientX, clientY) => this.roofAt(clientX, clientY)?.reachMetres ?? 0,
      }),
    );
  }

  /** Draws what belongs to the hand as things stand now. */
  draw(): void {
    const { view } = this;
    if (!view) return;
    const isTool = this.tool.isActive;
    this.walk.lendLeftButton(isTool);
    this.shown.draw(view, isTool ? [] : this.handles(view), this.press);
  }

  private get view(): WalkView | null {
    const { element } = this;
    if (!element || element.clientWidth < 2 || element.clientHeight < 2) return null;
    return new WalkView(this.walk.camera, element.clientWidth, element.clientHeight);
  }

  private handles(view: WalkView): readonly Handle[] {
    const { selectedIds } = sessionStore.getState();
    const plan = livePlan();
    const { seconds } = liveStore.getState();
    if (selectedIds.length > 0) {
      // Grips turn and raise for all setups: those of somebody whose marks are cheated for one are not shown.
      const cast = onlyInSetup(plan) ? new Set(plan.cast.map(({ id }) => id)) : NOBODY;
      const ids = selectedIds.filter((id) => !cast.has(id));
      return handlesOf(plan, { type: 'items', ids }, seconds, view);
    }
    const { cameraId } = this.shown;
    return cameraId === null ? [] : handlesOf(plan, { type: 'camera', setupId: cameraId }, seconds, view);
  }

  private readonly onDown = (event: PointerEvent): void => {
    const { element, view } = this;
    if (!element || !view || this.fingers.isReplaying) return;
    const touch = event.pointerType !== 'mouse';
    const at = this.pixelOf(event);
    this.note(event, at);
    this.fingers.down(event);
    if (this.fingers.count > 1) {
      // Two fingers move the view, whatever the first one had begun.
      const wasOurs = this.press !== null && this.press.type !== 'tap';
      this.drop();
      if (wasOurs) this.fingers.replayFirst(element, event.pointerId);
      return;
    }
    if (!touch && event.button > 0) {
      if (event.button === 2) this.press = { type: 'menu', hit: this.hitAt(view, at, event), from: at };
      return;
    }
    if (this.tool.isActive) {
      if (this.isSpaceDown) return;
      this.take(event, { type: 'tool', from: at });
      this.tool.down(this.pointing(event, view, at));
      return;
    }
    const handle = handleNear(this.handles(view), view, at, touch ? REACH.touch : REACH.mouse);
    if (handle) {
      this.take(event, this.grasping(pull(handle, this.taken(at, view)), handle, null, at));
      return;
    }
    const hit = this.hitAt(view, at, event);
    this.press = { type: 'tap', hit, adding: isAdding(event), from: at };
    if (touch) this.resting = setTimeout(() => this.askAt(event, hit), LONG_MS);
    if (!hit) return;
    if (isAdding(event)) this.take(event, this.press);
    else this.hold(event, hit, at, view, touch);
  };

  /** Takes what was pressed into the hand, where a drag should move it instead of turning the view. */
  private hold(event: PointerEvent, pressed: Hit, at: Pixel, view: WalkView, touch: boolean): void {
    const { plan } = planStore.getState();
    const { seconds } = liveStore.getState();
    const hit = markMeant(pressed, plan, seconds);
    const wasChosen = isChosen(hit.target, this.shown.cameraId);
    const isFree = isMovable(plan, hit.target);
    if (!isFree || (!wasChosen && (touch || !isHandy(plan, hit.target, seconds)))) return;
    const ids = hit.target.type === 'item' ? movingWith(plan, hit.target.id) : [];
    const grasp = carry(plan, hit, ids, seconds, at, view);
    if (!grasp) return;
    if (!wasChosen) this.choose(hit, false);
    this.take(event, this.grasping(grasp, null, hit, at));
  }

  private grasping(grasp: Grasp, handle: Handle | null, hit: Hit | null, from: Pixel): Press {
    return { type: 'grasp', grasp, handle, hit, from, moved: false };
  }

  private readonly onMove = (event: PointerEvent): void => {
    const { view, press } = this;
    if (!view) return;
    const touch = event.pointerType !== 'mouse';
    const at = this.pixelOf(event);
    this.note(event, at);
    this.fingers.move(event);
    if (!press) {
      if (!touch && event.buttons === 0) this.hover(event, view, at);
      return;
    }
    const moves = hasMoved(press.from, at, touch);
    if (moves) this.stopResting();
    if (press.type === 'tap' || press.type === 'menu') {
      if (!moves) return;
      this.press = null;
      this.shown.leave();
      this.draw();
      return;
    }
    if (press.type === 'tool') {
      this.tool.move(this.pointing(event, view, at));
      return;
    }
    if (!press.moved) {
      if (!moves) return;
      press.moved = true;
      liveStore.getState().beginGesture(press.grasp.key);
    }
    this.step(touch);
  };

  /** Brings what is held to where the hand is. */
  private step(touch: boolean): void {
    const { press, view, last, held } = this;
    if (press?.type !== 'grasp' || !press.moved || !view) return;
    // Dropped by a key, or by something else that took the plan.
    if (!liveStore.getState().gesture) {
      this.drop();
      return;
    }
    const step = press.grasp.to(last, view, held);
    if (!step) return;
    liveStore.getState().moveGesture(step.plan);
    this.shown.say(step, last, touch);
    this.draw();
  }

  private readonly onUp = (event: PointerEvent): void => {
    const { press, view } = this;
    const touch = event.pointerType !== 'mouse';
    const at = this.pixelOf(event);
    this.fingers.up(event);
    this.stopResting();
    this.walk.setHeld(false);
    this.press = null;
    if (!press || !view) return;
    if (press.type === 'menu') this.askAt(event, press.hit);
    else if (press.type === 'tap') {
      if (press.hit) this.choose(press.hit, press.adding);
      else if (!press.adding) this.choose(null, false);
    } else if (press.type === 'tool') this.tool.up(this.pointing(event, view, at));
    else if (press.moved) this.commit(press.grasp.name);
    // What was chosen among others and is pressed again is chosen alone.
    else if (press.hit && isChosen(press.hit.target, this.shown.cameraId)) this.choose(press.hit, false);
    this.shown.say(null, at, touch);
    this.hover(event, view, at);
  };

  private commit(name: string): void {
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (!gesture) return;
    if (gesture.draft === planStore.getState().plan) dropGesture();
    else commitGesture(name);
  }

  private readonly onCancel = (event: PointerEvent): void => {
    this.fingers.up(event);
    this.walk.setHeld(false);
    this.drop();
  };

  private readonly onLeave = (event: PointerEvent): void => {
    if (this.press || event.pointerType !== 'mouse') return;
    if (this.tool.isActive) this.tool.leave();
    this.shown.leave();
    this.draw();
  };

  private readonly onKey = (event: KeyboardEvent): void => {
    const isDown = event.type === 'keydown';
    if (event.key === 'Shift' || event.key === 'Alt') {
      this.held = { shift: event.shiftKey, alt: event.altKey };
      this.step(false);
    }
    const isHere = event.target instanceof Node && this.element?.contains(event.target);
    if (event.code === 'Space' && isHere && (this.tool.isActive || this.isSpaceDown)) {
      // Held, it gives the left button back to the view; the clock stays.
      this.isSpaceDown = isDown;
      event.preventDefault();
      event.stopPropagation();
      this.walk.lendLeftButton(!isDown);
    }
    if (isDown && event.key === 'Escape' && this.press?.type === 'grasp' && this.press.moved) {
      event.preventDefault();
      event.stopPropagation();
      this.drop();
    }
  };

  /** What the pointer is over: a grip, a thing, or where the tool would press. */
  private hover(event: PointerEvent, view: WalkView, at: Pixel): void {
    if (event.pointerType !== 'mouse') return;
    if (this.tool.isActive) {
      if (!this.isSpaceDown) this.tool.move(this.pointing(event, view, at));
      this.shown.point(null, this.isSpaceDown ? 'grab' : 'crosshair');
    } else {
      const handle = handleNear(this.handles(view), view, at, REACH.mouse);
      const hit = handle ? null : this.hitAt(view, at, event);
      const { plan } = planStore.getState();
      const isFree = hit !== null && isMovable(plan, hit.target);
      this.shown.point(handle, handle || isFree ? 'grab' : hit ? 'pointer' : '');
      this.shown.name(hit, at);
    }
    this.draw();
  }

  private choose(hit: Hit | null, adding: boolean): void {
    this.shown.cameraId = hit?.target.type === 'camera' ? hit.target.setupId : null;
    if (hit) choose(planStore.getState().plan, hit.target, adding);
    else sessionStore.getState().setSelectedId(null);
    this.draw();
  }

  /** Opens the menu of what was pressed, which it chooses where it was not chosen. */
  private askAt(event: PointerEvent, hit: Hit | null): void {
    this.stopResting();
    this.press = null;
    // The finger is still down: what it does now is no turning.
    if (event.pointerType !== 'mouse') this.walk.setHeld(true);
    if (hit && !isChosen(hit.target, this.shown.cameraId)) this.choose(hit, false);
    const { target } = hit ?? { target: null };
    const { selectedIds } = sessionStore.getState();
    const ids = target?.type === 'item' || target?.type === 'mark' ? selectedIds : [];
    const { clientX, clientY } = event;
    const spot = this.roofAt(clientX, clientY)?.spot ?? null;
    contextStore.getState().openContext({ ids, spot, clientX, clientY });
  }

  private take(event: PointerEvent, press: Press): void {
    event.stopImmediatePropagation();
    this.press = press;
    this.element?.setPointerCapture(event.pointerId);
    this.shown.leave();
    if (press.type === 'grasp') this.shown.point(press.handle, 'grabbing');
    this.draw();
  }

  private drop(): void {
    const { press } = this;
    this.stopResting();
    this.press = null;
    if (press?.type === 'grasp' && press.moved) liveStore.getState().dropGesture();
    if (press?.type === 'tool') this.tool.cancel();
    this.shown.say(null, this.last, false);
    this.shown.leave();
    this.draw();
  }

  private stopResting(): void {
    if (this.resting !== null) clearTimeout(this.resting);
    this.resting = null;
  }

  private hitAt(view: WalkView, at: Pixel, event: PointerEvent): Hit | null {
    return hitAlong(this.picker, seenPlan(), liveStore.getState().seconds, view.rayAt(at), {
      widthAtOne: view.widthAtOne,
      tolerance: toleranceOf(event.pointerType !== 'mouse'),
      everything: event.altKey,
    });
  }

  private taken(from: Pixel, view: WalkView) {
    const { plan } = planStore.getState();
    const { seconds } = liveStore.getState();
    const { selectedIds } = sessionStore.getState();
    const { cameraId } = this.shown;
    const subject =
      selectedIds.length === 0 && cameraId !== null
        ? ({ type: 'camera', setupId: cameraId } as const)
        : ({
            type: 'items',
            ids: selectedIds.filter((id) => itemOf(plan, id)?.record.locked !== true),
          } as const);
    return { plan, subject, seconds, from, view, picker: this.picker };
  }

  private roofAt(clientX: number, clientY: number): RoofSpot | null {
    const { view } = this;
    return view && this.tool.spotAt(view, this.pixelOf({ clientX, clientY }), false);
  }

  private pointing(event: PointerEvent, view: WalkView, at: Pixel): Pointing {
    return { view, at, touch: event.pointerType !== 'mouse', when: event.timeStamp, held: this.held };
  }

  private note(event: PointerEvent, at: Pixel): void {
    this.last = at;
    this.held = { shift: event.shiftKey, alt: event.altKey };
  }

  private pixelOf(event: { readonly clientX: number; readonly clientY: number }): Pixel {
    const box = this.element?.getBoundingClientRect();
    return [event.clientX - (box?.left ?? 0), event.clientY - (box?.top ?? 0)];
  }
}

const isAdding = (event: PointerEvent): boolean => event.shiftKey || event.ctrlKey || event.metaKey;
