import {
  BufferGeometry,
  DoubleSide,
  EdgesGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Mesh,
  MeshBasicMaterial,
  type Object3D,
  Vector3,
} from 'three';
import { cameraAt } from '../../core/optics/camera';
import type { CameraPose } from '../../core/optics/types';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { linesOnRoof } from '../../desk/blocking/lines';
import { continuityStore } from '../../desk/continuityStore';
import { FrameCamera } from '../cameras/frameCamera';
import { differs } from '../drive/differs';
import type { Exposure } from '../picture/exposure';
import { cautionLines } from './cautionLines';
import type { Chosen } from './chosenRounds';
import { pairLines, tapeMarks, walkLines } from './floorBlocking';
import { Ghost } from './ghost';
import { cameraBody, linesThrough, pyramidLines, roundPoints } from './helperShapes';
import { ink, PAPER } from './inks';
import { HELPER_LAYER } from './layer';
import { SightLines } from './sightLines';
import type { WalkShows } from './walkShows';

/** Lines on the ground are drawn this high above it, metres. */
const LIFT_METRES = 0.015;

const corner = new Vector3();
const edgesOf = (shape: BufferGeometry): ArrayLike<number> =>
  new EdgesGeometry(shape).getAttribute('position').array;

/** What the walk-round shows beyond the set: the cameras, the chosen one's pyramid, the marks, and what is chosen. */
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
  private readonly bodyShape = cameraBody();
  private readonly body = new Mesh(this.bodyShape, this.solid);
  private readonly pyramid = new LineSegments(undefined, this.faint);
  private readonly tape = new MeshBasicMaterial({ fog: false, side: DoubleSide });
  private readonly marks = new Mesh(undefined, this.tape);
  private readonly walks = new LineSegments(undefined, this.line);
  private readonly lines = new LineSegments(undefined, this.faint);
  private readonly cautioned = new LineSegments(undefined, this.line);
  private readonly rings = new LineSegments(undefined, this.line);
  private readonly bodyEdges = edgesOf(this.bodyShape);
  private readonly others = new LineSegments(undefined, this.faint);
  private readonly ghost = new Ghost();
  private readonly sight = new SightLines();
  private readonly pose = new FrameCamera();
  private drawnMarks: readonly unknown[] = [];
  private drawnLines: readonly unknown[] = [];
  private drawnShape = '';
  private drawnOthers: readonly unknown[] = [];
  private drawnCaution: readonly number[] = [];
  private drawnChosen: readonly unknown[] = [];

  constructor() {
    for (const part of this.parts()) this.add(part);
    this.group.add(this.ghost.group, this.sight.group);
    for (const part of [this.body, this.pyramid]) part.matrixAutoUpdate = false;
  }

  /** `chosen` is what the chosen items stand on. */
  set(
    { plan, proposed, explained, cautioned }: WalkShows,
    setup: Setup | null,
    seconds: number,
    chosen: Chosen,
    exposure: Exposure,
  ): void {
    this.ink(exposure);
    this.ghost.set(proposed, seconds, exposure);
    this.sight.set(explained, exposure);
    this.body.visible = setup !== null;
    this.pyramid.visible = setup !== null;
    if (setup) this.showCamera(plan, setup, seconds);
    this.showOthers(
      plan.setups.filter(({ id }) => id !== setup?.id).map((each) => cameraAt(plan, each, seconds).pose),
    );
    this.showBlocking(plan, seconds);
    this.showChosen(chosen);
    this.showCaution(cautionLines(cautioned));
    this.group.updateMatrixWorld();
  }

  dispose(): void {
    this.ghost.dispose();
    this.sight.dispose();
    for (const part of this.parts()) part.geometry.dispose();
    for (const material of [this.solid, this.line, this.faint, this.tape]) material.dispose();
  }

  private parts() {
    return [
      this.body,
      this.pyramid,
      this.marks,
      this.walks,
      this.lines,
      this.cautioned,
      this.rings,
      this.others,
    ];
  }

  /** Marks, walks and the lines of pairs, on the floor. */
  private showBlocking(plan: Plan, seconds: number): void {
    const now = [plan.cast, plan.beats];
    if (differs(this.drawnMarks, now)) {
      this.drawnMarks = now;
      this.marks.geometry.dispose();
      this.marks.geometry = tapeMarks(plan);
      this.walks.geometry.dispose();
      this.walks.geometry = walkLines(plan);
    }
    const { pairs } = linesOnRoof(plan, continuityStore.getState().setups);
    const points = pairLines(plan, pairs, seconds);
    if (!differs(this.drawnLines, points)) return;
    this.drawnLines = points;
    this.lines.geometry.dispose();
    this.lines.geometry = points.length > 0 ? linesThrough(points) : new BufferGeometry();
  }

  private add(part: Object3D): void {
    part.layers.set(HELPER_LAYER);
    part.frustumCulled = false;
    part.renderOrder = 1e7;
    this.group.add(part);
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

  /** The cameras that are not looked through, in outline. */
  private showOthers(poses: readonly CameraPose[]): void {
    const now = poses.flatMap(({ position, forward, up }) => [...position, ...forward, ...up]);
    if (!differs(this.drawnOthers, now)) return;
    this.drawnOthers = now;
    const points: number[] = [];
    for (const pose of poses) {
      const { matrix } = this.pose.setPose(pose);
      for (let k = 0; k < this.bodyEdges.length; k += 3) {
        points.push(...corner.fromArray(this.bodyEdges, k).applyMatrix4(matrix).toArray());
      }
    }
    this.others.geometry.dispose();
    this.others.geometry = linesThrough(points);
    this.others.visible = points.length > 0;
  }

  private showChosen({ rounds, outlines }: Chosen): void {
    const now = [...rounds, ...outlines];
    if (!differs(this.drawnChosen, now)) return;
    this.drawnChosen = now;
    const points = rounds.flatMap(({ centre: [x, y, z], radiusMetres }) =>
      roundPoints([x, y + LIFT_METRES, z], radiusMetres),
    );
    for (const { ground, closed, lowMetres } of outlines) {
      ground.forEach((from, index) => {
        const to = ground[index + 1] ?? (closed ? ground[0] : null);
        if (to) {
          const y = lowMetres + LIFT_METRES;
          points.push(from[0], y, from[1], to[0], y, to[1]);
        }
      });
    }
    this.rings.geometry.dispose();
    this.rings.geometry = points.length > 0 ? linesThrough(points) : new BufferGeometry();
    this.rings.visible = points.length > 0;
  }

  private showCaution(points: readonly number[]): void {
    if (!differs(this.drawnCaution, points)) return;
    this.drawnCaution = points;
    this.cautioned.geometry.dispose();
    this.cautioned.geometry = points.length > 0 ? linesThrough(points) : new BufferGeometry();
    this.cautioned.visible = points.length > 0;
  }

  /** As bright as comes out as paper at this exposure and balance. */
  private ink(exposure: Exposure): void {
    for (const material of [this.line, this.faint, this.tape, this.solid]) ink(material, PAPER, exposure);
    this.solid.color.multiplyScalar(0.5);
  }
}
