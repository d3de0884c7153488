import type { Scene, WebGLRenderer } from 'three';
import { lampsAt } from '../../core/form/lamps';
import { modelsAtHand } from '../../core/form/models/modelShelf';
import { formsThrough } from '../../core/optics/riding';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { LampRig, setGlow } from '../light/lampRig';
import { middleOfAction } from '../light/middleOfAction';
import { makeDome } from '../light/sky';
import { MaterialLibrary } from '../materials/library';
import { RoofSet } from '../roof/roofSet';
import { differs } from './differs';
import type { Quality } from './quality';

/** The set, its lamps and the night around it, as they stand at an instant. */
export class World {
  readonly materials = new MaterialLibrary();
  readonly roof = new RoofSet(this.materials);
  private readonly lamps = new LampRig();
  private readonly dome = makeDome();
  private posedFor: readonly unknown[] = [];

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly scene: Scene,
  ) {
    renderer.shadowMap.autoUpdate = false;
    scene.add(this.roof.group, this.lamps.group, this.dome);
  }

  /**
   * Brings everything to an instant of a plan, as it is around a setup's camera, or for none as the roof has it; does
   * nothing when it stands so already.
   */
  pose(plan: Plan, setup: Setup | null, seconds: number, quality: Quality): void {
    this.roof.settle();
    const inputs = [plan, ridesOn(plan) ? setup : null, seconds, quality, modelsAtHand()];
    if (!differs(this.posedFor, inputs)) return;
    this.posedFor = inputs;
    const lamps = lampsAt(plan, seconds);
    const moved = this.roof.pose(plan, formsThrough(plan, setup, seconds));
    const relit = this.lamps.set(lamps, middleOfAction(plan), quality.rig);
    const first = new Map(lamps.map((lamp) => [lamp.itemId, lamp]));
    for (const [itemId, lamp] of first) {
      const glow = this.materials.glowOf(itemId);
      if (glow) setGlow(glow, lamp);
    }
    this.roof.group.updateMatrixWorld();
    if (moved || relit) this.renderer.shadowMap.needsUpdate = true;
  }

  /** After the card has lost everything: the shadows must be drawn anew. */
  redraw(): void {
    this.posedFor = [];
    this.renderer.shadowMap.needsUpdate = true;
  }

  dispose(): void {
    this.scene.remove(this.roof.group, this.lamps.group, this.dome);
    this.roof.dispose();
    this.lamps.dispose();
    this.materials.dispose();
    this.dome.geometry.dispose();
  }
}

/** Whether a camera rides on something that others do not see. */
const ridesOn = ({ gear }: Plan): boolean =>
  gear.some((each) => each.kind === 'dolly' && each.rides !== undefined);
