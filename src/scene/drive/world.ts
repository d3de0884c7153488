import type { LightShadow, Scene, WebGLRenderer } from 'three';
import { lampsAt } from '../../core/form/lamps';
import { modelsAtHand } from '../../core/form/models/modelShelf';
import { ambientOf } from '../../core/light/ambient';
import { formsThrough } from '../../core/optics/riding';
import { played } from '../../core/plan/played';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { ClothFaces } from '../light/clothFaces';
import { housingsOf } from '../light/housings';
import { LampRig, setGlow } from '../light/lampRig';
import { middleOfAction } from '../light/middleOfAction';
import { Nets } from '../light/nets';
import { NightLights } from '../light/nightLights';
import { makeDome } from '../light/sky';
import { throughFrames } from '../light/throughFrames';
import { MaterialLibrary } from '../materials/library';
import { RoofSet } from '../roof/roofSet';
import { differs } from './differs';
import type { Quality } from './quality';
import { type ShadowTurn, ShadowTurns } from './shadowTurns';

/** The set, its lamps and the night around it, as they stand at an instant. */
export class World {
  readonly materials = new MaterialLibrary();
  readonly roof = new RoofSet(this.materials);
  private readonly lamps = new LampRig();
  private readonly cloths = new ClothFaces();
  private readonly nets = new Nets();
  private readonly night = new NightLights();
  private readonly dome = makeDome();
  private posedFor: readonly unknown[] = [];
  private readonly turns = new ShadowTurns();

  constructor(
    private readonly renderer: WebGLRenderer,
    private readonly scene: Scene,
  ) {
    renderer.shadowMap.autoUpdate = false;
    scene.add(this.roof.group, this.lamps.group, this.night.group, this.dome);
  }

  /**
   * Brings everything to an instant of a plan, as it is around a setup's camera, or for none as the roof has it; does
   * nothing when it stands so already. With a turn, shadows may be late: what they are of has moved on until they are drawn.
   */
  pose(
    plan: Plan,
    setup: Setup | null,
    seconds: number,
    quality: Quality,
    turn: ShadowTurn | null = null,
  ): void {
    this.bring(plan, setup, seconds, quality);
    if (this.turns.mark(this.shadows, turn)) this.renderer.shadowMap.needsUpdate = true;
  }

  /** After the card has lost everything: the shadows must be drawn anew. */
  redraw(): void {
    this.posedFor = [];
    this.turns.hurry(this.shadows);
  }

  dispose(): void {
    this.scene.remove(this.roof.group, this.lamps.group, this.night.group, this.dome);
    this.roof.dispose();
    this.lamps.dispose();
    this.nets.dispose();
    this.night.dispose();
    this.materials.dispose();
    this.dome.geometry.dispose();
  }

  private get shadows(): readonly LightShadow[] {
    return [...this.lamps.shadows, ...this.night.shadows];
  }

  private bring(plan: Plan, setup: Setup | null, seconds: number, quality: Quality): void {
    this.roof.settle();
    // Setups that play the same marks share a pose; one that cheats has one of its own.
    const scene = setup ? played(plan, setup) : plan;
    const inputs = [plan, scene, ridesOn(plan) ? setup : null, seconds, quality, modelsAtHand()];
    if (!differs(this.posedFor, inputs)) return;
    this.posedFor = inputs;
    const lamps = lampsAt(plan, seconds);
    const moved = this.roof.pose(plan, formsThrough(plan, setup, seconds));
    const cloths = this.cloths.at(plan, seconds, lamps);
    this.nets.lay(plan);
    const housings = housingsOf(plan);
    const relit = this.lamps.set(
      { lamps, cloths, housings, framed: throughFrames(plan, lamps) },
      middleOfAction(plan),
      quality.rig,
    );
    const first = new Map(lamps.map((lamp) => [lamp.itemId, lamp]));
    for (const [itemId, lamp] of first) {
      const glow = this.materials.glowOf(itemId);
      if (glow) setGlow(glow, lamp, housings.round.has(itemId));
    }
    this.roof.group.updateMatrixWorld();
    const { shadows, shadowTexels } = quality.rig;
    const texels = shadows > 0 ? shadowTexels : 0;
    const moonlit = this.night.set(ambientOf(plan), middleOfAction(plan), texels, this.scene.fog);
    if (moved) this.turns.age(this.shadows);
    this.turns.hurry([...relit, ...moonlit]);
  }
}

/** Whether a camera rides on something that others do not see. */
const ridesOn = ({ gear }: Plan): boolean =>
  gear.some((each) => each.kind === 'dolly' && each.rides !== undefined);
