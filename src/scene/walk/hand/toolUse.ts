import { itemsOf } from '../../../core/plan/items';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import { liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import {
  aimOpening,
  dropStroke,
  endStroke,
  letGo,
  pointAt,
  press,
  pressDown,
  pressUp,
} from '../../../desk/tools/drawing';
import { isPicked, toolStore } from '../../../desk/tools/toolStore';
import { carrierAlong } from '../carrying';
import type { Picker } from '../picking';
import type { Pixel, WalkView } from '../walkView';
import type { Held } from './grasp';
import { hasMoved } from './press';

/** Half of the least area to hit: 32 pixels with a mouse, 48 with a finger. */
export const REACH = { mouse: 16, touch: 24 };
/** Of that, drawn things catch from nearer, or the hand would never be free of them. */
const CATCH = 0.5;
/** How far above a finger the crosshair stands while it is dragged, pixels. */
const ABOVE_FINGER = 58;
/** Two presses within this are one that ends what is drawn, milliseconds. */
const DOUBLE_MS = 350;

/** A pointer over the walk-round. */
export interface Pointing {
  readonly view: WalkView;
  readonly at: Pixel;
  readonly touch: boolean;
  /** The event's own time, milliseconds. */
  readonly when: number;
  readonly held: Held;
}

interface Pressed {
  readonly at: Pixel;
  readonly when: number;
  moved: boolean;
}

/** A place on the roof under a pixel, and how much of it the hand's reach covers there, metres. */
export interface RoofSpot {
  readonly spot: Spot;
  readonly reachMetres: number;
}

/**
 * The picked tool through the walk-round, as it is over the sheet: a mouse takes a corner where it is pressed and
 * another where a drag of it ends; a finger takes one where it taps, and a drag of it carries the crosshair above it.
 */
export class ToolUse {
  private pressed: Pressed | null = null;
  private before: Pressed | null = null;

  constructor(private readonly picker: Picker) {}

  get isActive(): boolean {
    return isPicked();
  }

  down(pointing: Pointing): void {
    this.pressed = { at: pointing.at, when: pointing.when, moved: false };
    if (this.isSecond(pointing)) {
      this.pressed = null;
      this.before = null;
      endStroke();
      return;
    }
    if (pointing.touch) return;
    this.point(pointing, pointing.at);
    pressDown();
  }

  move(pointing: Pointing): void {
    const { at, touch } = pointing;
    if (this.pressed && !this.pressed.moved) {
      if (!hasMoved(this.pressed.at, at, touch)) return;
      this.pressed.moved = true;
    }
    // A finger that is lifted already only ends what it did.
    if (touch && !this.pressed) return;
    this.point(pointing, touch ? lifted(at) : at);
  }

  up(pointing: Pointing): void {
    const held = this.pressed;
    this.pressed = null;
    if (!held) return;
    this.before = held;
    const { at, touch } = pointing;
    if (!touch) {
      if (held.moved) this.point(pointing, at);
      pressUp(held.moved);
      return;
    }
    this.point(pointing, held.moved ? lifted(at) : at);
    press();
  }

  cancel(): void {
    this.pressed = null;
    this.before = null;
    letGo();
  }

  /** The pointer has left: nothing is shown where nobody points. */
  leave(): void {
    if ((toolStore.getState().stroke?.corners.length ?? 0) === 0) dropStroke();
    else pointAt(null, { reachMetres: 0, free: false, straight: false });
  }

  /** The place on the roof that a pixel looks at: on what carries things, or on the wall that takes an opening. */
  spotAt(view: WalkView, at: Pixel, touch: boolean): RoofSpot | null {
    // What is being put is not there yet to be put upon.
    const { plan } = planStore.getState();
    const ray = view.rayAt(at);
    const wall =
      toolStore.getState().tool.type === 'opening'
        ? this.picker.firstSolid(plan, liveStore.getState().seconds, ray, NOTHING)
        : null;
    const met = wall ? null : carrierAlong(plan, ray, 0, NOTHING);
    const place = wall?.place ?? (met && ([met.spot[0], met.metres, met.spot[1]] as const));
    if (!place) return null;
    const reach = touch ? REACH.touch : REACH.mouse;
    return { spot: [place[0], place[2]], reachMetres: reach * view.metresPerPixelAt(place) };
  }

  private point({ view, touch, held }: Pointing, at: Pixel): void {
    const found = this.spotAt(view, at, touch);
    const reachMetres = found?.reachMetres ?? 0;
    if (found) aimOpening(found.spot, reachMetres);
    pointAt(found?.spot ?? null, { reachMetres: reachMetres * CATCH, free: held.alt, straight: held.shift });
  }

  /** Whether a press is the second of a double one, which ends what is drawn. */
  private isSecond({ at, touch, when }: Pointing): boolean {
    const { tool, stroke } = toolStore.getState();
    const first = this.before;
    if (!first || first.moved || tool.type !== 'draw' || (stroke?.corners.length ?? 0) < 2) return false;
    return when - first.when < DOUBLE_MS && !hasMoved(first.at, at, touch);
  }
}

const NOTHING: ReadonlySet<string> = new Set();
const lifted = ([x, y]: Pixel): Pixel => [x, y - ABOVE_FINGER];

/** Ids of what a draft has and the plan has not: what is being put or drawn. */
export function draftIds(plan: Plan, draft: Plan): readonly string[] {
  if (plan === draft) return [];
  const there = new Set(itemsOf(plan).map(({ record }) => record.id));
  return itemsOf(draft).flatMap(({ record }) => (there.has(record.id) ? [] : [record.id]));
}
