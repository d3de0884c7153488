import { moveItems } from '../../../core/plan/edits/moveItems';
import { itemOf } from '../../../core/plan/items';
import { named } from '../../../core/plan/named';
import type { SnapReason } from '../../../core/plan/snap/types';
import { onlyInSetup, seenOf } from '../../../desk/blocking/onlyIn';
import { chosenAreaStore } from '../../../desk/chosenArea';
import { contextStore } from '../../../desk/contextStore';
import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { chooseItems, movableOf } from '../../../desk/selecting';
import { sessionStore } from '../../../desk/sessionStore';
import { toastStore } from '../../../desk/toastStore';
import { snapDrag } from '../../../desk/tools/snapDrag';
import { crowdingSentence } from '../blocking/crowding';
import { type Bounds, distance, minus, type Spot } from '../geometry/spots';
import { anchorOfTarget, itemIdOf, keyOf, movedTo, moveName, type Target, takenHold } from '../targets';
import { longPress } from './longPress';
import { type PointerOptions, type PointerUse, type SheetPointer, slackOf } from './types';
import type { ViewUse } from './view';

const DOUBLE_TAP_MS = 350;
/** How near what is dragged catches on something, pixels. */
const CATCH = { mouse: 7, touch: 12 };

/** A press on a thing. */
interface Hold {
  readonly type: 'hold';
  readonly target: Target;
  /** The point that the drag moves, metres; null where the thing stays where it is. */
  readonly anchor: Spot | null;
  readonly pressed: SheetPointer;
  /** What moves with it; found when the drag starts. */
  ids: readonly string[];
  last: Spot;
  /** Why it is where it is. */
  why: readonly SnapReason[];
  moved: boolean;
}

/** A press on the empty ground: it pans, or draws a rectangle around what is to be chosen. */
interface Ground {
  readonly type: 'ground';
  readonly pressed: SheetPointer;
  /** The wet area that lies there: a press that moves nothing chooses it. */
  readonly under: Target | null;
  use: 'pan' | 'frame';
  moved: boolean;
}

/** The bare hand, and its keys. */
export interface HandUse extends PointerUse {
  /** Says whether a key was meant for the drag that is going on. */
  readonly key: (event: KeyboardEvent) => boolean;
  /** Whether a finger that rests here means more than to scroll the page. */
  readonly holds: () => boolean;
}

const rectangleOf = (a: Spot, b: Spot): Bounds => [
  Math.min(a[0], b[0]),
  Math.min(a[1], b[1]),
  Math.max(a[0], b[0]),
  Math.max(a[1], b[1]),
];

/**
 * The hand. A press chooses: with Shift or Control beside what is chosen, with Alt one of a group. A drag moves what was
 * pressed with all that is chosen (snapped, Shift keeps it on one axis, Alt lets nothing catch, Escape drops it). A drag of the empty ground
 * pans; with Shift, or after a finger rested, it draws a rectangle that chooses. A finger that rests asks for actions.
 */
export function handUse(now: () => PointerOptions, view: ViewUse): HandUse {
  let held: Hold | Ground | null = null;
  let shift = false;
  let free = false;
  let lastTap = 0;
  const rest = longPress();

  const end = (commit: boolean): void => {
    const before = held;
    held = null;
    rest.stop();
    view.letGo();
    now().frame(null);
    now().tell(null);
    if (before?.type !== 'hold' || !before.moved || !before.anchor) return;
    const { gesture, commitGesture, dropGesture } = liveStore.getState();
    if (commit && gesture) {
      commitGesture(moveName(planStore.getState().plan, before.target, before.ids));
      const sentence = crowdingSentence(seenOf(planStore.getState().plan), before.target);
      if (sentence !== null) toastStore.getState().say(sentence, { tone: 'warn' });
    } else dropGesture();
    now().drag(null);
  };

  const carry = (hold: Hold): void => {
    if (!hold.anchor) return;
    const { plan } = planStore.getState();
    const { anchor, ids, pressed } = hold;
    const by = minus(now().sheet.roofAt(hold.last), pressed.spot);
    const snapped = snapDrag(
      seenOf(plan),
      ids,
      [anchor[0], anchor[1]],
      [anchor[0] + by[0], anchor[1] + by[1]],
      {
        reachMetres: (pressed.touch ? CATCH.touch : CATCH.mouse) / now().sheet.perMetre,
        free,
        straight: shift,
        held: hold.why.map(({ key }) => key),
      },
    );
    hold.why = snapped.why;
    const draft =
      ids.length > 0
        ? moveItems(plan, { ids, by: [snapped.spot[0] - anchor[0], snapped.spot[1] - anchor[1]] })
        : movedTo(plan, hold.target, snapped.spot);
    now().drag({ target: hold.target, ids, why: hold.why });
    liveStore.getState().moveGesture(draft);
  };

  const startDrag = (hold: Hold): void => {
    const id = itemIdOf(hold.target);
    const { selectedIds } = sessionStore.getState();
    if (id !== null && hold.target.type === 'item') {
      if (!selectedIds.includes(id)) now().choose(hold.target, howOf(hold.pressed));
      const { plan } = planStore.getState();
      const cast = onlyInSetup(plan) ? new Set(plan.cast.map((performer) => performer.id)) : null;
      hold.ids = movableOf(plan, sessionStore.getState().selectedIds).filter((each) => !cast?.has(each));
    }
    liveStore.getState().beginGesture(keyOf(hold.target));
  };

  const askFor = (pointer: SheetPointer): void => {
    const target = held?.type === 'hold' ? held.target : null;
    end(false);
    openContext(target, pointer.spot, pointer);
  };

  /** Two taps of the empty ground are what a double click is to a mouse. */
  const tap = (when: number): void => {
    if (when - lastTap < DOUBLE_TAP_MS) now().sheet.fitAll();
    lastTap = when;
  };

  const press = (pointer: SheetPointer): void => {
    const { at, touch } = pointer;
    const found = now().hit(at, touch);
    shift = pointer.shift;
    view.take(at);
    const area = found?.target.type === 'area' ? found.target : null;
    // What is only wet is ground to pan on and to draw a rectangle over, until it is chosen.
    if (!found || (area && area.areaId !== chosenAreaStore.getState().areaId)) {
      const use = pointer.shift ? 'frame' : 'pan';
      held = { type: 'ground', pressed: pointer, under: area, use, moved: false };
      return;
    }
    const plan = seenOf(planStore.getState().plan);
    const target = takenHold(plan, found.target, liveStore.getState().seconds);
    const anchor = anchorOfTarget(plan, target);
    held = { type: 'hold', target, anchor, pressed: pointer, ids: [], last: at, why: [], moved: false };
    // What stays where it is may have been pressed to pan, and what is chosen with others to drag them all: those are
    // chosen when they are let go.
    const id = itemIdOf(target);
    const isChosen = id !== null && sessionStore.getState().selectedIds.includes(id);
    if (anchor && !isChosen && howOf(pointer) === 'alone') now().choose(target, 'alone');
  };

  const dragHold = (hold: Hold, pointer: SheetPointer, starts: boolean): void => {
    // What does not let itself be moved lets the sheet be moved instead.
    if (!hold.anchor) {
      const sentence = lockSentence(hold.target);
      if (sentence !== null) now().tell({ sentence, at: pointer.at });
      view.panTo(pointer.at);
      return;
    }
    if (starts) startDrag(hold);
    hold.last = pointer.at;
    carry(hold);
  };

  return {
    down: (pointer) => {
      press(pointer);
      if (!pointer.touch) return;
      const begun = held;
      rest.start(pointer.at, () => {
        if (held !== begun || !begun) return;
        // On the empty ground the finger may still go on, to draw a rectangle.
        if (begun.type === 'ground') {
          begun.use = 'frame';
          const [x, y] = pointer.at;
          now().frame([x - 12, y - 12, x + 12, y + 12]);
        } else {
          if (itemIdOf(begun.target) !== null) chooseForMenu(now(), begun.target);
          askFor(pointer);
        }
      });
    },
    move: (pointer) => {
      if (!held) return;
      const { at, touch } = pointer;
      rest.move(at);
      const starts = !held.moved && distance(at, held.pressed.at) >= slackOf(pointer);
      if (!held.moved && !starts) return;
      held.moved = true;
      shift = pointer.shift;
      free = pointer.alt;
      if (held.type === 'hold') dragHold(held, pointer, starts);
      else if (held.use === 'frame') now().frame(rectangleOf(held.pressed.at, at));
      else if (!now().scrolls || !touch) view.panTo(at);
    },
    up: (pointer) => {
      const before = held;
      if (before?.type === 'ground' && before.use === 'frame') {
        if (before.moved) {
          const ids = now().within(rectangleOf(before.pressed.at, pointer.at));
          chooseItems(ids, !pointer.touch);
        } else if (pointer.touch) {
          askFor(before.pressed);
          return;
        }
      } else if (before?.type === 'ground' && !before.moved) {
        now().choose(before.under, 'alone');
        if (pointer.touch) tap(pointer.when);
      } else if (before?.type === 'hold' && !before.moved) now().choose(before.target, howOf(before.pressed));
      end(true);
    },
    cancel: () => end(false),
    key: (event) => {
      if (event.key === 'Shift') {
        shift = event.type === 'keydown';
        if (held?.type === 'hold' && held.moved) carry(held);
      }
      const drops = event.key === 'Escape' && event.type === 'keydown' && held?.moved === true;
      if (drops) end(false);
      return drops;
    },
    holds: () => held?.type === 'hold' || held?.use === 'frame',
  };
}

/** Asks for the actions for what is chosen, where something of that was pressed, else for the ground. */
export function openContext(
  target: Target | null,
  spot: Spot,
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
): void {
  const ids = itemIdOf(target) === null ? [] : sessionStore.getState().selectedIds;
  contextStore.getState().openContext({ ids, spot, clientX, clientY });
}

const howOf = ({ shift, command, alt }: SheetPointer) =>
  shift || command ? ('add' as const) : alt ? ('one' as const) : ('alone' as const);

/** What a menu is asked for over is chosen, unless it is among what is chosen already. */
export function chooseForMenu(options: PointerOptions, target: Target): void {
  const id = itemIdOf(target);
  if (id === null || !sessionStore.getState().selectedIds.includes(id)) options.choose(target, 'alone');
}

/** Why a thing that is locked does not come along; null for what is built in. */
function lockSentence(target: Target): string | null {
  const id = itemIdOf(target);
  const item = id === null ? null : itemOf(planStore.getState().plan, id);
  return item?.record.locked ? `${named(item.record.label)} is locked` : null;
}
