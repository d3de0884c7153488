import {
  type Box3,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  type Object3D,
} from 'three';
import { cameraAt } from '../../core/optics/camera';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { FrameCamera } from '../cameras/frameCamera';
import { colourOfHex } from '../light/kelvin';
import type { Exposure } from '../picture/exposure';
import { cameraBody, levelRing, pyramidLines, tapeMarks } from './helperShapes';
import { HELPER_LAYER } from './layer';

/** The sheet's paper; what is drawn to help is never the colour of light. */
const PAPER = colourOfHex('#f1e8d6');
const MARGIN_METRES = 0.18;

/** What the walk-round shows beyond the set: the chosen camera and its pyramid, the marks, a ring around the selection. */
export class WalkHelpers {
  readonly group = new Group();
  private readonly solid = new MeshBasicMaterial({ fog: false });
  private readonly line = new LineBasicMaterial({ fog: false });
  private readonly faint = new LineBasicMaterial({
    fog: false,
    transparent: true,
    opacity: 0.55,
    depthWrite: false,
  });
  private readonly body = new Mesh(cameraBody(), this.solid);
  private readonly pyramid = new LineSegments(undefined, this.faint);
  private readonly marks = new LineSegments(undefined, this.line);
  private readonly ring = new LineSegments(levelRing(), this.line);
  private readonly pose = new FrameCamera();
  private drawnMarks: Plan['cast'] | null = null;
  private drawnShape = '';

  constructor() {
    const parts: Object3D[] = [this.body, this.pyramid, this.marks, this.ring];
    for (const part of parts) {
      part.layers.set(HELPER_LAYER);
      part.frustumCulled = false;
      part.renderOrder = 1e7;
      this.group.add(part);
    }
    for (const part of [this.body, this.pyramid]) part.matrixAutoUpdate = false;
  }

  /** `selection` is the space that the selected item takes up. */
  set(plan: Plan, setup: Setup | null, seconds: number, selection: Box3 | null, exposure: Exposure): void {
    this.ink(exposure);
    this.body.visible = setup !== null;
    this.pyramid.visible = setup !== null;
    if (setup) this.showCamera(plan, setup, seconds);
    if (this.drawnMarks !== plan.cast) {
      this.drawnMarks = plan.cast;
      this.marks.geometry.dispose();
      this.marks.geometry = tapeMarks(plan);
    }
    this.ring.visible = selection !== null;
    if (selection) {
      const { min, max } = selection;
      const radius = Math.hypot(max.x - min.x, max.z - min.z) / 2 + MARGIN_METRES;
      this.ring.position.set((min.x + max.x) / 2, Math.max(0, min.y) + 0.015, (min.z + max.z) / 2);
      this.ring.scale.set(radius, 1, radius);
    }
    this.group.updateMatrixWorld();
  }

  dispose(): void {
    for (const part of [this.body, this.pyramid, this.marks, this.ring]) part.geometry.dispose();
    for (const material of [this.solid, this.line, this.faint]) material.dispose();
  }

  private showCamera(plan: Plan, setup: Setup, seconds: number): void {
    const { pose, frame } = cameraAt(plan, setup, seconds);
    this.pose.setPose(pose);
    for (const part of [this.body, this.pyramid]) {
      part.matrix.copy(this.pose.matrix);
      part.matrixWorldNeedsUpdate = true;
    }
    const shape = `${frame.tanHalfWidth} ${frame.tanHalfHeight}`;
    if (shape === this.drawnShape) return;
    this.drawnShape = shape;
    this.pyramid.geometry.dispose();
    this.pyramid.geometry = pyramidLines(frame);
  }

  /** As bright as comes out as paper at this exposure and balance. */
  private ink({ perCandela, gains }: Exposure): void {
    const [red, green, blue] = [0, 1, 2].map((k) => PAPER[k] / (perCandela * gains[k]));
    for (const material of [this.line, this.faint]) material.color.setRGB(red, green, blue);
    this.solid.color.setRGB(red * 0.5, green * 0.5, blue * 0.5);
  }
}
