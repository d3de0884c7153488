import { DataTexture, FloatType, NearestFilter, RGBAFormat } from 'three';
import { clothSheet, isCloth, netOpenness } from '../../core/form/gear/cloth';
import type { Plan } from '../../core/plan/schema/plan';
import { differs } from '../drive/differs';
import { LAMP_UNIFORMS } from './lampUniforms';

/** Of each net three texels: its middle with what it lets through, and the ways to its right and upper side. */
const TEXELS = 3;

/** The nets of a plan, twelve numbers each. */
export const netRowsOf = (plan: Plan): readonly number[] =>
  plan.gear.filter(isCloth).flatMap((cloth) => {
    const openness = netOpenness(cloth);
    if (openness === null) return [];
    const { middle, right, up } = clothSheet(cloth, plan);
    return [...middle, openness, ...right, 0, ...up, 0];
  });

/** Puts the nets of a plan into the light of all lit surfaces: a shadow map knows no half shade. */
export class Nets {
  private knownFor: readonly unknown[] = [];
  private texture: DataTexture | null = null;

  /** Does nothing while gear and kit are what they were. */
  lay(plan: Plan): void {
    const basis = [plan.gear, plan.kit];
    if (!differs(this.knownFor, basis)) return;
    this.knownFor = basis;
    const rows = netRowsOf(plan);
    const { netRows, netCount } = LAMP_UNIFORMS;
    netCount.value = rows.length / (TEXELS * 4);
    if (rows.length === 0) return;
    this.texture?.dispose();
    this.texture = new DataTexture(new Float32Array(rows), TEXELS, netCount.value, RGBAFormat, FloatType);
    this.texture.minFilter = NearestFilter;
    this.texture.magFilter = NearestFilter;
    this.texture.needsUpdate = true;
    netRows.value = this.texture;
  }

  dispose(): void {
    this.texture?.dispose();
    LAMP_UNIFORMS.netCount.value = 0;
    LAMP_UNIFORMS.netRows.value = null;
  }
}
