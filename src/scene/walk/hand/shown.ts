import type { Vec3 } from '../../../core/form/build/vector';
import { surfaceUnder } from '../../../core/plan/surfaces';
import { livePlan, liveStore } from '../../../desk/liveStore';
import { planStore } from '../../../desk/planStore';
import { isPicked, toolStore } from '../../../desk/tools/toolStore';
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
    const tool = isPicked() ? toolStore.getState().stroke : null;
    const levelled = ([x, z]: readonly [number, number]): Vec3 => [
      x,
      surfaceUnder(planStore.getState().plan, [x, z]).metres,
      z,
    ];
    this.layer.draw(
      {
        // While something is carried its grips would only be in the way.
        handles: held?.moved
          ? held.handle
            ? handles.filter(({ kind }) => kind === held.handle?.kind)
            : []
          : handles,
        near: held?.handle ?? this.near,
        drafts: tool ? drafts() : [],
        crosshair: tool?.next ? levelled(tool.next) : null,
        guides: tool
          ? tool.why.flatMap(({ guide }) =>
              guide ? [[levelled(guide[0]), levelled(guide[1])] as const] : [],
            )
          : this.guides,
      },
      view,
    );
    this.layer.say(this.readout, view);
    this.layer.setCursor(this.cursor);
  }
}

/** The room of whatever the picked tool is putting or drawing. */
function drafts(): readonly Room[] {
  const draft = livePlan();
  const { seconds } = liveStore.getState();
  return draftIds(planStore.getState().plan, draft)
    .slice(0, MOST_DRAFTS)
    .flatMap((id) => roomOf(draft, id, seconds) ?? []);
}
