import type { LampForm } from '../../core/form/types';
import { type GivingFace, givingFaces } from '../../core/light/clothLight';
import { type LightScene, lightScene } from '../../core/light/lightScene';
import type { Plan } from '../../core/plan/schema/plan';

/** States of the lamps that are remembered: a sign that flickers has two. */
const MOST_KNOWN = 8;

/**
 * What bounces and frames give on at an instant, as core has it, without the shadows that the cast throws on them: so
 * it is asked anew only where the set, the gear or the level of a lamp changes, and not in every frame of a move.
 */
export class ClothFaces {
  private scene: LightScene | null = null;
  private knownFor: readonly unknown[] = [];
  private readonly known = new Map<string, readonly GivingFace[]>();

  at(plan: Plan, seconds: number, lamps: readonly LampForm[]): readonly GivingFace[] {
    if (!plan.gear.some(({ kind }) => kind === 'bounce' || kind === 'frame')) return [];
    const { pieces, gear, kit, ground } = plan;
    const basis = [pieces, gear, kit, ground];
    if (!basis.every((each, k) => each === this.knownFor[k])) {
      this.knownFor = basis;
      this.known.clear();
    }
    const levels = lamps.map(({ peakCandela }) => peakCandela.toPrecision(4)).join(' ');
    const found = this.known.get(levels);
    if (found) return found;
    const scene = lightScene({ ...plan, cast: [] }, null, seconds, this.scene);
    this.scene = scene;
    const faces = scene.cloths.flatMap((cloth) => givingFaces(scene, cloth));
    if (this.known.size >= MOST_KNOWN) this.known.clear();
    this.known.set(levels, faces);
    return faces;
  }
}
