import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { unzipSync } from 'fflate';
import {
  Mesh,
  type Object3D,
  type PerspectiveCamera,
  type PointLight,
  type RectAreaLight,
  Vector3,
} from 'three';
import { USDLoader } from 'three/addons/loaders/USDLoader.js';
import { expect, test } from 'vitest';
import { moved } from '../../../src/core/form/build/placement';
import { lampsAt } from '../../../src/core/form/lamps';
import type { PlacedPart } from '../../../src/core/form/types';
import { cameraAt, spanOf } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import { formsThrough } from '../../../src/core/optics/riding';
import { planToUsda } from '../../../src/exchange/usd/usda';
import { planToUsdz } from '../../../src/exchange/usd/usdz';
import { HOUSE } from '../../../src/workshop/house.mjs';
import { smallRoof } from '../../unit/smallRoof';

/** A reader of the format that is not ours: the one of three. Names are those of the prims; lengths come in metres. */
const SECONDS = 1.5;
const plan = smallRoof();
const usda = planToUsda(plan, SECONDS);
const stage = new USDLoader().parse(new TextDecoder().decode(usda));
stage.updateMatrixWorld(true);

const identifier = (name: string): string => name.replaceAll(/[^A-Za-z0-9_]/g, '_');

function under(parent: Object3D, name: string): Object3D {
  const found = parent.children.find((child) => child.name === name);
  if (!found)
    throw new Error(`${parent.name} has no ${name}: ${parent.children.map((c) => c.name).join(', ')}`);
  return found;
}
const roof = stage.children.length === 1 ? stage.children[0] : under(stage, 'Roof');

/** Corners of an item's triangles, metres: part by part, and in a part material by material, as they first come. */
function wanted(parts: readonly PlacedPart[]): (readonly number[])[] {
  const groups = new Map<string, Map<string, PlacedPart[]>>();
  for (const part of parts) {
    const { substance, colour, openness } = part.shape;
    const materials = groups.get(part.name) ?? new Map<string, PlacedPart[]>();
    groups.set(part.name, materials);
    const key = [substance, colour, openness].join();
    materials.set(key, [...(materials.get(key) ?? []), part]);
  }
  const ordered = [...groups.values()].flatMap((materials) => [...materials.values()].flat());
  return ordered.flatMap(({ shape, worldFromPart }) =>
    Array.from(shape.indices, (index) => {
      const [x, y, z] = shape.positions.subarray(index * 3, index * 3 + 3);
      return worldFromPart ? moved(worldFromPart, [x, y, z]) : [x, y, z];
    }),
  );
}

function found(node: Object3D): (readonly number[])[] {
  const corners: number[][] = [];
  node.traverse((each) => {
    if (!(each instanceof Mesh)) return;
    const { position } = each.geometry.attributes;
    const { index } = each.geometry;
    const count = index ? index.count : position.count;
    for (let k = 0; k < count; k += 1) {
      const at = index ? index.getX(k) : k;
      corners.push(new Vector3().fromBufferAttribute(position, at).applyMatrix4(each.matrixWorld).toArray());
    }
  });
  return corners;
}

test('each item is read back with all its triangles where the plan has them', () => {
  const items = under(roof, 'Items');
  const forms = formsThrough(plan, null, SECONDS);
  expect(items.children).toHaveLength(forms.length);
  for (const form of forms) {
    const read = found(under(items, identifier(form.id)));
    const asked = wanted(form.parts);
    expect(read.length, form.id).toBe(asked.length);
    // The file has them to a thousandth of a millimetre.
    const farthest = read.map((corner, k) =>
      Math.max(...corner.map((metres, axis) => Math.abs(metres - asked[k][axis]))),
    );
    expect(Math.max(0, ...farthest), form.id).toBeLessThan(2e-6);
  }
});

test.each([
  ['master', 1.5],
  ['single', 1],
  ['still', 2],
])('%s frames at %d s what core/optics frames', (id, seconds) => {
  const setup = plan.setups.find((each) => each.id === id);
  if (!setup) throw new Error(`The plan has no setup ${id}`);
  const camera = under(under(roof, 'Cameras'), id) as PerspectiveCamera;
  expect(camera.isPerspectiveCamera).toBe(true);
  expect(camera.aspect).toBeCloseTo(setup.delivery, 5);
  const lens = plan.kit.lenses.find((each) => each.id === setup.lens);
  expect(camera.getFocalLength()).toBeCloseTo(lens?.focalMm ?? 0, 4);
  const ours = cameraAt(plan, setup, seconds);
  const ahead = new Vector3(...ours.pose.position).addScaledVector(new Vector3(...ours.pose.forward), 6);
  for (const [x, y, z] of [
    [0, 0, 0],
    [1, 0.5, 0.3],
    [-0.7, -0.4, 1],
    [0.2, 1, -2],
  ]) {
    const point = ahead.clone().add(new Vector3(x, y, z));
    const asked = projectPoint(ours, [point.x, point.y, point.z]);
    const seen = point.clone().project(camera);
    expect((seen.x + 1) / 2).toBeCloseTo(asked?.x ?? Number.NaN, 4);
    expect((1 - seen.y) / 2).toBeCloseTo(asked?.y ?? Number.NaN, 4);
  }
});

test('a lens with a squeeze sees as wide as that makes it, and its squeeze is said beside it', () => {
  const text = new TextDecoder().decode(usda);
  const of = (id: string, until: string): string =>
    text.slice(text.indexOf(`def Camera "${id}"`), text.indexOf(until));
  const read = (own: string, name: string): number =>
    Number(new RegExp(`\\b${name} = ([\\d.]+)`).exec(own)?.[1] ?? Number.NaN);
  // Anamorphic and spherical, on one gate: 24.89 by 18.66 mm of it, 2.39 to be delivered.
  for (const [id, until, squeeze, used] of [
    ['master', 'def Camera "single"', 2, [22.2987, 18.66]],
    ['single', 'def Camera "still"', 1, [24.89, 10.4142]],
  ] as const) {
    const own = of(id, until);
    expect(read(own, 'squeeze')).toBe(squeeze);
    expect(read(own, 'float horizontalAperture')).toBeCloseTo(squeeze * used[0], 3);
    expect(read(own, 'float verticalAperture')).toBeCloseTo(used[1], 3);
    // As three reads it: the half width by the focal length that is engraved on the lens.
    const camera = under(under(roof, 'Cameras'), id) as PerspectiveCamera;
    const focal = read(own, 'float focalLength');
    expect(1 / camera.projectionMatrix.elements[0]).toBeCloseTo((squeeze * used[0]) / 2 / focal, 4);
    expect(1 / camera.projectionMatrix.elements[5]).toBeCloseTo(used[1] / 2 / focal, 4);
  }
});

test('lamps stand where they are, and give the candela of the plan along their axis', () => {
  const lights = under(roof, 'Lamps').children;
  const lamps = lampsAt(plan, SECONDS);
  expect(lights).toHaveLength(lamps.length);
  lamps.forEach((lamp, k) => {
    const light = lights[k] as RectAreaLight | PointLight;
    const at = new Vector3().setFromMatrixPosition(light.matrixWorld).toArray();
    at.forEach((metres, axis) => {
      expect(metres).toBeCloseTo(lamp.position[axis], 5);
    });
    const along = new Vector3(0, 0, -1).transformDirection(light.matrixWorld).toArray();
    along.forEach((share, axis) => {
      expect(share).toBeCloseTo(lamp.direction[axis], 5);
    });
    const [width, height] = lamp.sizeMetres;
    const form = plan.kit.heads.find(({ id }) => id === lamp.headClassId)?.form ?? '';
    const isRound =
      !('isRectAreaLight' in light) ||
      (['spot', 'fresnel', 'bulb', 'street'].includes(form) && width === height);
    const area = isRound ? (Math.PI * Math.max(width, height) ** 2) / 4 : width * height;
    expect((light.intensity * area) / lamp.peakCandela).toBeCloseTo(1, 4);
    if ('isRectAreaLight' in light)
      expect(light.width / 100).toBeCloseTo(isRound ? Math.max(width, height) : width, 5);
  });
});

test('a move goes on over its span, a value for each frame, and stands at the instant where nobody asks for a time', () => {
  const text = new TextDecoder().decode(usda);
  const own = text.slice(text.indexOf('def Camera "master"'), text.indexOf('def Camera "single"'));
  const [, now] = own.match(/xformOp:transform = (.*)/) ?? [];
  const samples = new Map(
    [...own.matchAll(/^\s+([\d.]+): (\( \(.*\) \)),$/gm)].map(([, code, value]) => [Number(code), value]),
  );
  const master = plan.setups.find(({ id }) => id === 'master');
  if (!master) throw new Error('The plan has no master');
  const [from, to] = spanOf(plan, master);
  expect([...samples.keys()]).toEqual(Array.from({ length: (to - from) * 24 + 1 }, (_, k) => from * 24 + k));
  expect(samples.get(SECONDS * 24)).toBe(now);
  const place = cameraAt(plan, master, 1).pose.position.map((metres) => Math.round(metres * 1e6) / 1e4);
  expect(samples.get(24)).toContain(`(${place.join(', ')}, 1) )`);
  // What stands still has one value.
  expect(text.slice(text.indexOf('def Camera "single"'), text.indexOf('def Scope "Lamps"'))).not.toContain(
    'timeSamples',
  );
});

test('another reader takes the text and the package, and finds as many meshes in both', () => {
  const folder = mkdtempSync(join(tmpdir(), 'standclear-usd-'));
  try {
    const read = (name: string, bytes: Uint8Array) => {
      writeFileSync(join(folder, name), bytes);
      const script = join(HOUSE, 'tests/outside/exchange/readUsd.mjs');
      return JSON.parse(execFileSync(process.execPath, [script, join(folder, name)], { encoding: 'utf8' }));
    };
    let meshes = 0;
    stage.traverse((node) => {
      if (node instanceof Mesh) meshes += 1;
    });
    expect(read('roof.usda', usda)).toEqual({ isRead: true, error: '', meshes });
    expect(read('roof.usdz', planToUsdz(plan, SECONDS))).toEqual({ isRead: true, error: '', meshes });
    // It does refuse what is none.
    const spoilt = new TextDecoder().decode(usda).replace('point3f[] points = [(', 'point3f[] points = [[');
    expect(read('spoilt.usda', new TextEncoder().encode(spoilt)).isRead).toBe(false);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test('the package holds the text as it is, where its readers look for it', () => {
  const usdz = planToUsdz(plan, SECONDS);
  const files = unzipSync(usdz);
  expect(Object.keys(files)).toEqual(['roof.usda']);
  expect(Buffer.compare(files['roof.usda'], usda)).toBe(0);
  const view = new DataView(usdz.buffer);
  // Stored, and begun at a multiple of 64 bytes.
  expect(view.getUint16(8, true)).toBe(0);
  const begins = 30 + view.getUint16(26, true) + view.getUint16(28, true);
  expect(begins % 64).toBe(0);
  expect(usdz.subarray(begins, begins + 9)).toEqual(new TextEncoder().encode('#usda 1.0'));
});
