import type { Vec3 } from '../../../core/form/build/vector';
import { bearingOf, metresBetween } from '../../../core/plan/runs';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { formatHeading } from '../../../core/units/angles';
import { formatLength } from '../../../core/units/lengths';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { sessionStore } from '../../../desk/sessionStore';
import { isPicked, type Stroke, toolStore } from '../../../desk/tools/toolStore';
import { type Room, roomOf } from '../grounds';
import type { Pixel, WalkView } from '../walkView';
import type { Overlay } from './drawn';
import type { Step } from './grasp';
import type { HandLayer, Readout } from './handLayer';
import type { Handle } from './handles';
import { labelOfTarget } from './names';
import type { Press } from './press';
import type { Hit } from './targets';
import { draftIds } from './toolUse';

const NO_GUIDES: Overlay['guides'] = [];
/** A draft of more things than this is shown by its first ones. */
const MOST_DRAFTS = 12;

/** What the hand shows: grips, names, values, drafts. */
export class Shown {
  /** The camera that was pressed last, with nothing chosen since. */
  cameraId: string | null = null;
  private near: Handle | null = null;
  private readout: Readout | null = null;
  private guides: Overlay['guides'] = NO_GUIDES;
  private cursor = '';

  constructor(readonly layer: HandLayer) {}

  point(near: Handle | null, cursor: string): void {
    this.near = near;
    this.cursor = cursor;
  }

  /** The name of what is pointed at. */
  name(hit: Hit | null, at: Pixel): void {
    const words = hit && labelOfTarget(livePlan(), hit.target);
    this.readout = words ? { words, at, touch: false } : null;
  }

  /** What a drag has come to; null when it is over. */
  say(step: Step | null, at: Pixel, touch: boolean): void {
    this.readout = step && { words: step.words, at, touch };
    this.guides = step?.guides ?? NO_GUIDES;
  }

  leave(): void {
    this.point(null, '');
    this.readout = null;
  }

  draw(view: WalkView, handles: readonly Handle[], press: Press | null): void {
    const held = press?.type === 'grasp' ? press : null;
    // While something is carried its grips would only be in the way.
    const shown = held?.moved ? handles.filter(({ kind }) => kind === held.handle?.kind) : handles;
    const stroke = isPicked() ? toolStore.getState().stroke : null;
    this.layer.draw(
      {
        handles: shown,
        near: held?.handle ?? this.near,
        drafts: stroke ? drafts() : [],
        ...(stroke ? strokeLines(stroke) : { stroke: [], crosshair: null, guides: this.guides }),
      },
      view,
    );
    const next = stroke?.next ? view.pixelOf(levelled(stroke.next)) : null;
    const words = stroke ? strokeWords(stroke) : '';
    this.layer.say(
      stroke ? (next && words !== '' ? { words, at: next, touch: false } : null) : this.readout,
      view,
    );
    this.layer.setCursor(this.cursor);
  }
}

/** A place as high as what is stood on there. */
const levelled = ([x, z]: readonly [number, number]): Vec3 => [
  x,
  surfaceUnder(planStore.getState().plan, [x, z]).metres,
  z,
];

function strokeLines({ corners, next, why }: Stroke): Pick<Overlay, 'stroke' | 'crosshair' | 'guides'> {
  const path = [...corners, ...(next ? [next] : [])].map(levelled);
  return {
    stroke: path.slice(1).map((to, index) => [path[index], to] as const),
    crosshair: next && levelled(next),
    guides: why.flatMap(({ guide }) => (guide ? [[levelled(guide[0]), levelled(guide[1])] as const] : [])),
  };
}

/** How long the leg is, which way it goes, and why it ends there. */
function strokeWords({ corners, next, why }: Stroke): string {
  const last = corners.at(-1);
  const { lengths } = sessionStore.getState();
  const leg =
    last && next
      ? [formatLength(metresBetween(last, next), lengths), formatHeading(bearingOf(last, next))]
      : [];
  return [...leg, ...why.flatMap(({ kind, word }) => (kind === 'grid' ? [] : [word]))].join(', ');
}

/** The room of whatever the picked tool is putting or drawing. */
function drafts(): readonly Room[] {
  const draft = livePlan();
  const { seconds } = liveStore.getState();
  return draftIds(planStore.getState().plan, draft)
    .slice(0, MOST_DRAFTS)
    .flatMap((id) => roomOf(draft, id, seconds) ?? []);
}
