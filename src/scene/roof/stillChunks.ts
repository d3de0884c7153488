import { BufferAttribute, BufferGeometry, type Group, type Material, Mesh } from 'three';

/** Meshes whose middles lie in the same square are put together: a roof is one, and what is far off a few large ones. */
const CELL_METRES = 32;
const FAR_CELL_METRES = 160;
/** Corners that are put together at one go, so that no frame has to wait: some five milliseconds. */
const MOST_CORNERS = 60_000;
/** A chunk that lost a member is left alone for so many frames: whoever is dragged would break it up again and again. */
const REST_FRAMES = 20;

/** What corners that can be put together may have: those of windows are numbered too. */
const PLAIN: readonly string[] = ['position', 'normal', 'windowNumber'];

interface Chunk {
  readonly members: Set<Mesh>;
  /** All members as one, while they are drawn so. */
  whole: Mesh | null;
  /** Frames until it may be put together. */
  rest: number;
}

/**
 * Still meshes of one material drawn as one, by squares of the roof: a draw call costs the processor the same whether
 * it draws a sandbag or a wall, and a roof of two hundred items is some eight hundred calls a view. Members have to be
 * in world coordinates. They stay in the group, invisible while their chunk is drawn for them.
 */
export class StillChunks {
  private readonly chunks = new Map<string, Chunk>();
  private readonly chunkOf = new Map<Mesh, Chunk>();

  constructor(private readonly group: Group) {}

  /** The meshes that are drawn for their members. */
  *wholes(): Generator<Mesh> {
    for (const { whole } of this.chunks.values()) if (whole) yield whole;
  }

  /** Whether a mesh can be drawn with others: solid, of one material, plain corners in world coordinates. */
  static takes(mesh: Mesh): boolean {
    const { geometry, material, matrix } = mesh;
    if (Array.isArray(material) || material.transparent || geometry.index) return false;
    const isPlain = Object.keys(geometry.attributes).every((name) => PLAIN.includes(name));
    return isPlain && matrix.elements.every((value, k) => value === (k % 5 === 0 ? 1 : 0));
  }

  /** Takes a mesh in; it goes on being drawn by itself until `build` has come to its chunk. */
  add(mesh: Mesh): void {
    if (this.chunkOf.has(mesh)) return;
    const key = keyOf(mesh);
    const chunk = this.chunks.get(key) ?? { members: new Set<Mesh>(), whole: null, rest: 0 };
    this.chunks.set(key, chunk);
    this.dissolve(chunk, 1);
    chunk.members.add(mesh);
    this.chunkOf.set(mesh, chunk);
  }

  /** Lets a mesh go, which is drawn by itself from now on. */
  remove(mesh: Mesh): void {
    const chunk = this.chunkOf.get(mesh);
    if (!chunk) return;
    this.dissolve(chunk, REST_FRAMES);
    chunk.members.delete(mesh);
    this.chunkOf.delete(mesh);
    if (chunk.members.size > 0) return;
    for (const [key, each] of this.chunks) if (each === chunk) this.chunks.delete(key);
  }

  /** Puts some more chunks together; call it once a frame. */
  build(): void {
    let corners = 0;
    for (const chunk of this.chunks.values()) {
      if (chunk.whole || chunk.members.size < 2) continue;
      if (chunk.rest > 0) {
        chunk.rest -= 1;
        continue;
      }
      if (corners > MOST_CORNERS) continue;
      corners += this.join(chunk);
    }
  }

  dispose(): void {
    for (const chunk of this.chunks.values()) this.dissolve(chunk, 0);
    this.chunks.clear();
    this.chunkOf.clear();
  }

  private join(chunk: Chunk): number {
    const [first] = chunk.members;
    if (!first) return 0;
    const whole = new Mesh(joined([...chunk.members]), first.material);
    whole.matrixAutoUpdate = false;
    whole.name = 'still chunk';
    whole.castShadow = first.castShadow;
    whole.receiveShadow = first.receiveShadow;
    this.group.add(whole);
    whole.updateMatrixWorld(true);
    for (const member of chunk.members) member.visible = false;
    chunk.whole = whole;
    return whole.geometry.attributes.position.count;
  }

  private dissolve(chunk: Chunk, rest: number): void {
    chunk.rest = Math.max(chunk.rest, rest);
    const { whole } = chunk;
    if (!whole) return;
    for (const member of chunk.members) member.visible = true;
    this.group.remove(whole);
    whole.geometry.dispose();
    chunk.whole = null;
  }
}

function keyOf({ geometry, material, castShadow, receiveShadow }: Mesh): string {
  const { x, z } = geometry.boundingSphere?.center ?? { x: 0, z: 0 };
  const size = Math.max(Math.abs(x), Math.abs(z)) < 1.5 * CELL_METRES ? CELL_METRES : FAR_CELL_METRES;
  const cell = `${size},${Math.round(x / size)},${Math.round(z / size)}`;
  return [materialKey(material), castShadow, receiveShadow, cell].join('|');
}

const materialKey = (material: Material | Material[]): string =>
  Array.isArray(material) ? '' : material.uuid;

function joined(meshes: readonly Mesh[]): BufferGeometry {
  const whole = new BufferGeometry();
  // Members share a material, and with it what their corners have.
  for (const name of Object.keys(meshes[0].geometry.attributes)) {
    const parts = meshes.map(({ geometry }) => geometry.attributes[name]);
    const { itemSize } = parts[0];
    const values = new Float32Array(parts.reduce((sum, { count }) => sum + count * itemSize, 0));
    let at = 0;
    for (const { array, count } of parts) {
      values.set(array, at);
      at += count * itemSize;
    }
    whole.setAttribute(name, new BufferAttribute(values, itemSize));
  }
  whole.computeBoundingSphere();
  return whole;
}
