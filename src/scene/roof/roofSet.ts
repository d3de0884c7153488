import {
  type BufferGeometry,
  Group,
  type Material,
  Mesh,
  MeshBasicMaterial,
  MeshStandardMaterial,
  Vector3,
} from 'three';
import type { ItemForm, PartShape } from '../../core/form/types';
import type { Item } from '../../core/plan/items';
import { itemsOf } from '../../core/plan/items';
import type { Ground, Plan } from '../../core/plan/schema/plan';
import type { MaterialLibrary } from '../materials/library';
import type { Wire } from '../materials/surfaceMaterial';
import { type Batch, batchesOf } from './batches';
import { Geometries } from './geometries';
import { Jointed } from './jointed';
import { StillChunks } from './stillChunks';

/** Light goes through these, or comes from them: no shadow. What a net takes, the lit surface knows. A frame's cloth lets none through straight: it shines itself. */
const CASTS_NONE: ReadonlySet<PartShape['substance']> = new Set([
  'glow',
  'window',
  'screen',
  'glass',
  'wire mesh',
  'net',
]);
/** A thin cloth stands in its own shadow; it is lit from both sides instead. */
const TAKES_NONE: ReadonlySet<PartShape['substance']> = new Set(['diffusion', 'linen', 'wire mesh', 'net']);
const middle = new Vector3();
/** Poses through which an item has to keep still before it is drawn together with others. */
const STILL_POSES = 8;

/** Farther than any lamp of the set throws: a skyline casts no shadow on the roof. */
const BACKGROUND: ReadonlySet<string> = new Set(['skyline block']);

/**
 * The meshes of the set, one for the parts of an item that look alike and move as one, kept in step with core/form outside React: a drag or a walk
 * changes shapes and places up to sixty times a second, and nothing of it is anyone's state.
 */
export class RoofSet {
  readonly group = new Group();
  private readonly geometries = new Geometries();
  private readonly nothing = new MeshBasicMaterial({ colorWrite: false, depthWrite: false });
  private readonly meshes = new Map<string, Mesh>();
  /** The parts that each item's meshes show. */
  private readonly posed = new Map<string, ItemForm['parts']>();
  private readonly chunks = new StillChunks(this.group);
  /** For how many poses an item has kept still; what is drawn with others is not counted any more. */
  private readonly stillFor = new Map<string, number>();
  /** What some view leaves out is never drawn with others. */
  private readonly restless = new Set<string>();
  private knownPlan: Plan | null = null;
  private records = new Map<string, Item>();

  constructor(private readonly materials: MaterialLibrary) {
    this.group.matrixAutoUpdate = false;
  }

  /** The tops of decks that mirror, dry parts too, for the pass that must not draw them. */
  readonly decks = new Set<Mesh>();

  /** Brings every mesh to the forms of an instant. True when any shape or place differs from before. */
  pose(plan: Plan, forms: readonly ItemForm[]): boolean {
    const isRegrounded = looksOther(plan.ground, this.knownPlan?.ground);
    if (plan !== this.knownPlan) {
      if (isWetElsewhere(plan, this.knownPlan)) this.materials.wet(plan);
      this.knownPlan = plan;
      this.records = new Map(itemsOf(plan).map((item) => [item.record.id, item]));
    }
    let changed = false;
    const gone = new Set(this.posed.keys());
    for (const form of forms) {
      gone.delete(form.id);
      if (this.posed.get(form.id) === form.parts && !isRegrounded) continue;
      this.posed.set(form.id, form.parts);
      this.stir(form.id);
      if (this.poseItem(form, plan)) changed = true;
    }
    for (const itemId of gone) {
      this.posed.delete(itemId);
      this.stir(itemId);
      this.stillFor.delete(itemId);
      this.dropFrom(itemId, 0);
    }
    return changed || gone.size > 0;
  }

  /** Once a frame: what has kept still for a while is drawn together with others like it. */
  settle(): void {
    for (const [itemId, poses] of this.stillFor) {
      if (poses < STILL_POSES) {
        this.stillFor.set(itemId, poses + 1);
        continue;
      }
      this.stillFor.delete(itemId);
      for (const mesh of this.meshesOf(itemId)) {
        if (!this.decks.has(mesh) && StillChunks.takes(mesh)) this.chunks.add(mesh);
      }
    }
    this.chunks.build();
  }

  /**
   * Orders the meshes for an eye: solid ones roughly from near to far, so that little of what is hidden is shaded,
   * see-through ones from far to near. three orders by the places of the meshes, and most of ours share one.
   */
  orderFrom(eye: Vector3): void {
    for (const mesh of this.meshes.values()) if (mesh.visible) orderFrom(mesh, eye);
    for (const whole of this.chunks.wholes()) orderFrom(whole, eye);
  }

  /**
   * Draws without some items: they leave no mark in the picture, but their shadows stay, which all views share.
   * What is drawn within is drawn by `draw`.
   */
  without<Drawn>(itemIds: ReadonlySet<string>, draw: () => Drawn): Drawn {
    const left: [Mesh, Mesh['material']][] = [];
    for (const itemId of itemIds) {
      this.restless.add(itemId);
      this.stir(itemId);
      for (const mesh of this.meshesOf(itemId)) {
        left.push([mesh, mesh.material]);
        mesh.material = this.nothing;
      }
    }
    const drawn = draw();
    for (const [mesh, material] of left) mesh.material = material;
    return drawn;
  }

  /** Gives back the memory of shapes that have gone. */
  sweep(): void {
    this.geometries.sweep(new Set(Array.from(this.meshes.values(), ({ geometry }) => geometry)));
  }

  dispose(): void {
    for (const itemId of this.posed.keys()) this.dropFrom(itemId, 0);
    this.posed.clear();
    this.chunks.dispose();
    this.sweep();
    this.nothing.dispose();
  }

  /** Draws an item's meshes by themselves again, until it has kept still. */
  private stir(itemId: string): void {
    if (this.restless.has(itemId)) this.stillFor.delete(itemId);
    else this.stillFor.set(itemId, 0);
    for (const mesh of this.meshesOf(itemId)) this.chunks.remove(mesh);
  }

  private *meshesOf(itemId: string): Generator<Mesh> {
    for (let index = 0; ; index += 1) {
      const mesh = this.meshes.get(`${itemId}/${index}`);
      if (!mesh) return;
      yield mesh;
    }
  }

  private poseItem(form: ItemForm, plan: Plan): boolean {
    const context = {
      itemId: form.id,
      ground: plan.ground,
      isDeck: form.kind === 'deck',
      wire: this.wireOf(form.id),
      isBackground: BACKGROUND.has(form.kind),
    };
    const drawn = this.drawnOf(form, (shape) => this.materials.of(shape, context));
    let changed = this.dropFrom(form.id, drawn.length);
    drawn.forEach(({ batches, material }, index) => {
      const key = `${form.id}/${index}`;
      const mesh = batches.length > 1 ? this.jointedAt(key) : this.plainAt(key);
      const [{ shapes, worldFromPart }] = batches;
      const isOther =
        mesh instanceof Jointed
          ? mesh.show(batches, (alike) => this.geometries.of(alike))
          : showPlain(mesh, this.geometries.of(shapes));
      if (isOther || mesh.material !== material) {
        this.dress(mesh, form, shapes[0], material);
        changed = true;
      }
      const moved = mesh instanceof Jointed ? mesh.place(batches) : place(mesh, worldFromPart);
      if (moved) changed = true;
    });
    return changed;
  }

  /** What is drawn in one go: each batch by itself, and of people all that are of one material. */
  private drawnOf(
    { parts, section }: ItemForm,
    materialOf: (shape: PartShape) => Material,
  ): readonly { readonly batches: Batch[]; readonly material: Material }[] {
    const drawn: { batches: Batch[]; material: Material }[] = [];
    for (const batch of batchesOf(parts)) {
      const [shape] = batch.shapes;
      const material = materialOf(shape);
      const isJointed =
        section === 'cast' &&
        !shape.skin &&
        material instanceof MeshStandardMaterial &&
        !material.transparent;
      const alike = isJointed ? drawn.find((each) => each.material === material) : undefined;
      if (alike) alike.batches.push(batch);
      else drawn.push({ batches: [batch], material });
    }
    return drawn;
  }

  private dress(mesh: Mesh, form: ItemForm, shape: PartShape, material: Material): void {
    mesh.material = material;
    mesh.castShadow = !CASTS_NONE.has(shape.substance) && !BACKGROUND.has(form.kind) && !shape.mirror;
    mesh.receiveShadow = !TAKES_NONE.has(shape.substance);
    const isLevel = form.kind === 'deck' && form.parts.some((part) => part.shape.mirror);
    const isTop = isLevel && form.parts.some(({ name, shape: top }) => name === 'top' && top === shape);
    if (isTop || (shape.mirror && shape.substance !== 'mirror' && shape.substance !== 'glass'))
      this.decks.add(mesh);
    else this.decks.delete(mesh);
  }

  private plainAt(key: string): Mesh {
    const known = this.meshes.get(key);
    return known && !(known instanceof Jointed) ? known : this.put(key, new Mesh());
  }

  private jointedAt(key: string): Jointed {
    const known = this.meshes.get(key);
    return known instanceof Jointed ? known : this.put(key, new Jointed());
  }

  private put<Kind extends Mesh>(key: string, mesh: Kind): Kind {
    this.drop(key);
    mesh.matrixAutoUpdate = false;
    mesh.name = key;
    this.meshes.set(key, mesh);
    this.group.add(mesh);
    return mesh;
  }

  /** Takes an item's meshes away from a number on; true when there were any. */
  private dropFrom(itemId: string, from: number): boolean {
    for (let index = from; ; index += 1) {
      const key = `${itemId}/${index}`;
      if (!this.meshes.has(key)) return index > from;
      this.drop(key);
    }
  }

  private drop(key: string): void {
    const mesh = this.meshes.get(key);
    if (!mesh) return;
    if (mesh instanceof Jointed) mesh.giveBack();
    this.group.remove(mesh);
    this.decks.delete(mesh);
    this.meshes.delete(key);
  }

  /** The record's own wire; a shape only knows how open its mesh is. */
  private wireOf(itemId: string): Wire | null {
    const record = this.records.get(itemId)?.record;
    return record && 'mesh' in record ? record.mesh : null;
  }
}

/** Whether on another ground the same parts are made of something else. */
const looksOther = (ground: Ground, before: Ground | undefined): boolean =>
  ground !== before &&
  (ground.surface !== before?.surface ||
    ground.wetness !== before.wetness ||
    (ground.areas === undefined) !== (before.areas === undefined));

/** Whether the areas lie otherwise than in the plan before, or over other decks. */
const isWetElsewhere = (plan: Plan, before: Plan | null): boolean =>
  plan.ground !== before?.ground || (plan.ground.areas !== undefined && plan.pieces !== before.pieces);

/** Within so far, and then from each distance to about twice as far, order follows the material: a change costs the processor. */
const NEAREST_METRES = 3;

/** Sets where in the order of an eye a mesh is drawn. */
function orderFrom(mesh: Mesh, eye: Vector3): void {
  const sphere = mesh instanceof Jointed ? mesh.boundingSphere : mesh.geometry.boundingSphere;
  if (!sphere) return;
  const metres = middle.copy(sphere.center).applyMatrix4(mesh.matrix).distanceTo(eye);
  const isClear = !Array.isArray(mesh.material) && mesh.material.transparent;
  const near = Math.max(0, metres - sphere.radius * 0.5);
  mesh.renderOrder = isClear ? -metres : Math.floor(Math.log2(1 + near / NEAREST_METRES));
}

/** True when the mesh has shown another shape. */
function showPlain(mesh: Mesh, geometry: BufferGeometry): boolean {
  if (mesh.geometry === geometry) return false;
  mesh.geometry = geometry;
  return true;
}

/** Writes the rows of a 3 × 4 motion into the mesh; true when it moved. */
function place(mesh: Mesh, rows: readonly number[] | null): boolean {
  const [a, b, c, x, d, e, f, y, g, h, i, z] = rows ?? STILL;
  const m = mesh.matrix.elements;
  const same =
    m[12] === x &&
    m[13] === y &&
    m[14] === z &&
    m[0] === a &&
    m[4] === b &&
    m[8] === c &&
    m[1] === d &&
    m[5] === e &&
    m[9] === f &&
    m[2] === g &&
    m[6] === h &&
    m[10] === i;
  if (same) return false;
  mesh.matrix.set(a, b, c, x, d, e, f, y, g, h, i, z, 0, 0, 0, 1);
  mesh.matrixWorldNeedsUpdate = true;
  return true;
}

const STILL = [1, 0, 0, 0, 0, 1, 0, 0, 0, 0, 1, 0];
