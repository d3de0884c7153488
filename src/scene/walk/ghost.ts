import {
  BufferAttribute,
  BufferGeometry,
  Group,
  LineBasicMaterial,
  LineSegments,
  Matrix4,
  Mesh,
  MeshBasicMaterial,
} from 'three';
import { mergeGeometries } from 'three/addons/utils/BufferGeometryUtils.js';
import { formOf } from '../../core/form/formsAt';
import type { PlacedPart } from '../../core/form/types';
import { differs } from '../drive/differs';
import type { Exposure } from '../picture/exposure';
import { setToRows } from '../roof/rows';
import { markOutlines, walkLines } from './floorBlocking';
import { linesThrough } from './helperShapes';
import { ink, VERDIGRIS } from './inks';
import { HELPER_LAYER } from './layer';
import type { Proposed } from './walkShows';

const BODY_OPACITY = 0.4;

const matrix = new Matrix4();

function partGeometry({ shape, worldFromPart }: PlacedPart): BufferGeometry {
  const geometry = new BufferGeometry();
  geometry.setAttribute('position', new BufferAttribute(Float32Array.from(shape.positions), 3));
  geometry.setIndex(new BufferAttribute(Uint32Array.from(shape.indices), 1));
  return worldFromPart ? geometry.applyMatrix4(setToRows(matrix, worldFromPart)) : geometry;
}

/** Who or what is proposed otherwise: see-through, of somebody the walk dashed and the marks in outline too. */
export class Ghost {
  readonly group = new Group();
  private readonly skin = new MeshBasicMaterial({ fog: false, transparent: true, opacity: BODY_OPACITY });
  private readonly line = new LineBasicMaterial({ fog: false });
  private readonly body = new Mesh(undefined, this.skin);
  private readonly walks = new LineSegments(undefined, this.line);
  private readonly marks = new LineSegments(undefined, this.line);
  private drawn: readonly unknown[] = [];
  private drawnWays: readonly unknown[] = [];

  constructor() {
    for (const part of [this.body, this.walks, this.marks]) {
      part.layers.set(HELPER_LAYER);
      part.frustumCulled = false;
      part.renderOrder = 1e7;
      this.group.add(part);
    }
  }

  set(proposed: Proposed | null, seconds: number, exposure: Exposure): void {
    this.group.visible = proposed !== null;
    if (!proposed) return;
    const { plan, performerId, ids } = proposed;
    for (const material of [this.skin, this.line]) ink(material, VERDIGRIS, exposure);
    this.showBody(ids.flatMap((id) => formOf(plan, id, seconds)?.parts ?? []));
    const ways = [plan.cast, plan.beats, performerId];
    if (!differs(this.drawnWays, ways)) return;
    this.drawnWays = ways;
    const performer = plan.cast.find(({ id }) => id === performerId);
    this.walks.geometry.dispose();
    this.walks.geometry = performerId === null ? new BufferGeometry() : walkLines(plan, performerId);
    this.marks.geometry.dispose();
    this.marks.geometry = linesThrough(performer ? markOutlines(plan, performer) : []);
  }

  dispose(): void {
    for (const part of [this.body, this.walks, this.marks]) part.geometry.dispose();
    for (const material of [this.skin, this.line]) material.dispose();
  }

  private showBody(parts: readonly PlacedPart[]): void {
    if (!differs(this.drawn, parts)) return;
    this.drawn = parts;
    const shown = parts.filter(({ shape }) => shape.indices.length > 0);
    this.body.geometry.dispose();
    this.body.geometry = shown.length > 0 ? mergeGeometries(shown.map(partGeometry)) : new BufferGeometry();
  }
}
