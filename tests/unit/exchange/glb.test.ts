import {
  type Camera,
  Light,
  type Material,
  Mesh,
  type Object3D,
  type PerspectiveCamera,
  Vector3,
} from 'three';
import { GLTFLoader } from 'three/addons/loaders/GLTFLoader.js';
import { beforeAll, describe, expect, test } from 'vitest';
import { moved } from '../../../src/core/form/build/placement';
import { formsAt } from '../../../src/core/form/formsAt';
import { lampsAt } from '../../../src/core/form/lamps';
import type { PlacedPart } from '../../../src/core/form/types';
import { cameraAt } from '../../../src/core/optics/camera';
import { projectPoint } from '../../../src/core/optics/project';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import { planToGlb } from '../../../src/exchange/glb';
import { smallRoof } from '../smallRoof';

const SECONDS = 1.5;
const plan = smallRoof();
const forms = formsAt(plan, SECONDS);

const nodes: Object3D[] = [];
const loaded = (setupOrItem: string, part?: string): Object3D => {
  const node = nodes.find(({ userData }) =>
    part === undefined
      ? userData.setup === setupOrItem
      : userData.item === setupOrItem && userData.part === part,
  );
  if (!node) throw new Error(`The file has no node for ${setupOrItem} ${part ?? ''}`);
  return node;
};

beforeAll(async () => {
  const glb = planToGlb(plan, SECONDS);
  const file = await new GLTFLoader().parseAsync(glb.buffer as ArrayBuffer, '');
  file.scene.updateMatrixWorld(true);
  file.scene.traverse((node) => nodes.push(node));
});

/** Triangles as sorted lines of nine numbers of 32 bits, so that their order does not count. */
function formTriangles(parts: readonly PlacedPart[]): string[] {
  return parts
    .flatMap(({ shape, worldFromPart }) => {
      const corner = (index: number): number[] => {
        const [x, y, z] = shape.positions.subarray(index * 3, index * 3 + 3);
        return [...(worldFromPart ? moved(worldFromPart, [x, y, z]) : [x, y, z])].map(Math.fround);
      };
      return Array.from({ length: shape.indices.length / 3 }, (_, k) =>
        [0, 1, 2].flatMap((offset) => corner(shape.indices[k * 3 + offset])).join(),
      );
    })
    .sort();
}

function meshTriangles(node: Object3D): string[] {
  const lines: string[] = [];
  node.traverse((each) => {
    if (!(each instanceof Mesh)) return;
    const { position } = each.geometry.attributes;
    const { index } = each.geometry;
    for (let k = 0; index && k < index.count; k += 3) {
      const corners = [0, 1, 2].flatMap((offset) => {
        const at = index.getX(k + offset);
        return [position.getX(at), position.getY(at), position.getZ(at)];
      });
      lines.push(corners.join());
    }
  });
  return lines.sort();
}

describe('parts', () => {
  test('are read back as the form has them, to the last of 32 bits', () => {
    let parts = 0;
    for (const form of forms) {
      for (const name of new Set(form.parts.map((part) => part.name))) {
        const same = form.parts.filter((part) => part.name === name);
        const wanted = formTriangles(same);
        if (wanted.length === 0) continue;
        expect(meshTriangles(loaded(form.id, name)), `${form.id}:${name}`).toEqual(wanted);
        parts += 1;
      }
    }
    expect(parts).toBeGreaterThan(20);
    expect(nodes.filter(({ userData }) => 'item' in userData)).toHaveLength(parts);
  });

  test('say which of them are porous, and how much', () => {
    for (const form of forms) {
      for (const { name, shape } of form.parts) {
        const { userData } = loaded(form.id, name);
        if (shape.openness === null) expect(userData).not.toHaveProperty('openness');
        else expect(userData.openness).toBe(shape.openness);
      }
    }
    const mesh = forms
      .find((form) => form.id === 'fence')
      ?.parts.find((part) => part.shape.openness !== null);
    const material = (loaded('fence', mesh?.name) as Mesh).material as Material;
    expect(material.transparent).toBe(true);
    expect(material.opacity).toBeCloseTo(1 - (mesh?.shape.openness ?? 0), 6);
  });

  test('say which of them mirror: a wet deck, a mirror and a pane of glass', async () => {
    const panes = (['mirror', 'glass'] as const).map(
      (finish): Piece => ({
        id: finish,
        label: finish,
        kind: 'pane',
        at: [1, 0, 1],
        headingDegrees: 0,
        widthMetres: 0.6,
        heightMetres: 1.7,
        finish,
      }),
    );
    const glb = planToGlb({ ...plan, pieces: [...plan.pieces, ...panes] }, SECONDS);
    const file = await new GLTFLoader().parseAsync(glb.buffer as ArrayBuffer, '');
    const reflecting: string[] = [];
    file.scene.traverse(({ userData }) => {
      if (userData.reflecting === true) reflecting.push(`${userData.item}:${userData.part}`);
    });
    expect(reflecting).toEqual(['deck:top', 'mirror:sheet', 'glass:sheet']);
  });
});

describe('cameras', () => {
  test.each([
    ['master', 1.5],
    ['single', 1],
    ['still', 2],
  ])('%s stands where it is at %d s and projects as core/optics does', (id, seconds) => {
    const setup = plan.setups.find((each) => each.id === id);
    if (!setup) throw new Error(`The plan has no setup ${id}`);
    const node = loaded(id) as PerspectiveCamera;
    const lens = plan.kit.lenses.find((each) => each.id === setup.lens);
    expect(node.userData).toMatchObject({
      setup: id,
      seconds,
      focalMm: lens?.focalMm,
      squeeze: lens?.squeeze,
      gateMm: [24.89, 18.66],
    });
    expect(node.aspect).toBeCloseTo(2.39, 12);
    const camera = cameraAt(plan, setup, seconds);
    const ahead = new Vector3(...camera.pose.position).addScaledVector(
      new Vector3(...camera.pose.forward),
      6,
    );
    for (const [x, y, z] of [
      [0, 0, 0],
      [1, 0.5, 0.3],
      [-0.7, -0.4, 1],
      [0.2, 1, -2],
    ]) {
      const point = ahead.clone().add(new Vector3(x, y, z));
      const wanted = projectPoint(camera, [point.x, point.y, point.z]);
      const seen = point.clone().project(node as Camera);
      expect((seen.x + 1) / 2).toBeCloseTo(wanted?.x ?? Number.NaN, 6);
      expect((1 - seen.y) / 2).toBeCloseTo(wanted?.y ?? Number.NaN, 6);
    }
  });
});

test('lamps are lights with the candela of the plan', () => {
  const lamps = lampsAt(plan, SECONDS);
  const lights = nodes.filter((node): node is Light => node instanceof Light);
  expect(lights.map((light) => light.intensity).sort()).toEqual(lamps.map((lamp) => lamp.peakCandela).sort());
  expect(lamps.length).toBeGreaterThanOrEqual(2);
});

test('the same plan and instant give the same bytes, and each part a name of its own', () => {
  expect(Buffer.compare(planToGlb(smallRoof(), SECONDS), planToGlb(plan, SECONDS))).toBe(0);
  const names = nodes
    .filter(({ userData }) => 'item' in userData)
    .map(({ userData }) => `${userData.item}:${userData.part}`);
  expect(new Set(names).size).toBe(names.length);
});

test('an instant that is no number is our own mistake', () => {
  expect(() => planToGlb(plan, Number.NaN)).toThrow('finite');
});
