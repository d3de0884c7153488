import fc from 'fast-check';
import { Quaternion, Vector3 } from 'three';
import { describe, expect, test } from 'vitest';
import { ShapeBuilder } from '../../../src/core/form/build/shapeBuilder';
import type { LampForm } from '../../../src/core/form/types';
import { poseOf } from '../../../src/core/optics/pose';
import { packGlb } from '../../../src/exchange/glb/container';
import { lightOf } from '../../../src/exchange/glb/lamps';
import { linearColour } from '../../../src/exchange/glb/linearColour';
import { trianglesOf } from '../../../src/exchange/glb/partMesh';
import { rotationOf, rotationTowards } from '../../../src/exchange/glb/rotation';

const placed = (smooth: boolean, worldFromPart: readonly number[] | null = null) => ({
  name: 'body',
  shape: new ShapeBuilder()
    .box([0, 0, 0], [2, 4, 6])
    .cone([5, 0, 0], [5, 1, 0], 0.5, 0.5, 16)
    .finish({ substance: 'metal', smooth }),
  worldFromPart,
});

describe('rotationOf', () => {
  test('turns a camera that looks along −z into the pose, whatever the pose', () => {
    const degrees = (most: number) => fc.double({ min: -most, max: most, noNaN: true });
    fc.assert(
      fc.property(degrees(720), degrees(90), degrees(180), (heading, tilt, roll) => {
        const { right, up, forward } = poseOf([0, 0, 0], heading, tilt, roll);
        const turn = new Quaternion(...rotationOf(right, up, forward));
        expect(turn.length()).toBeCloseTo(1, 12);
        const turned = (x: number, y: number, z: number) =>
          new Vector3(x, y, z).applyQuaternion(turn).toArray();
        [turned(1, 0, 0), turned(0, 1, 0), turned(0, 0, -1)].forEach((axis, index) => {
          axis.forEach((value, place) => {
            expect(value).toBeCloseTo([right, up, forward][index][place], 9);
          });
        });
      }),
    );
  });

  test.each([
    [0, 1, 0],
    [0, -1, 0],
    [0, 0, -1],
    [1, 0, 0],
  ] as const)('turns a lamp towards %d %d %d', (x, y, z) => {
    const turn = new Quaternion(...rotationTowards([x, y, z]));
    const axis = new Vector3(0, 0, -1).applyQuaternion(turn);
    expect(axis.distanceTo(new Vector3(x, y, z))).toBeLessThan(1e-12);
  });
});

describe('trianglesOf', () => {
  test.each([true, false])(
    'gives unit normals that point the way the triangles face, smooth %s',
    (smooth) => {
      const { positions, normals, indices } = trianglesOf([placed(smooth)]);
      const at = (list: Float32Array, corner: number) => new Vector3().fromArray(list, corner * 3);
      for (let corner = 0; corner < normals.length / 3; corner += 1) {
        expect(at(normals, corner).length()).toBeCloseTo(1, 6);
      }
      for (let k = 0; k < indices.length; k += 3) {
        const [a, b, c] = [0, 1, 2].map((offset) => at(positions, indices[k + offset]));
        const face = b.clone().sub(a).cross(c.sub(a)).normalize();
        for (let offset = 0; offset < 3; offset += 1) {
          const along = face.dot(at(normals, indices[k + offset]));
          if (smooth) expect(along).toBeGreaterThan(0);
          else expect(along).toBeCloseTo(1, 4);
        }
      }
    },
  );

  test('moves a part to where it stands, and joins parts of one name', () => {
    const once = trianglesOf([placed(false)]);
    const both = trianglesOf([placed(false), placed(false, [1, 0, 0, 10, 0, 1, 0, 20, 0, 0, 1, 30])]);
    expect(both.indices.length).toBe(2 * once.indices.length);
    const start = once.positions.length;
    [10, 20, 30].forEach((by, axis) => {
      expect(both.positions[start + axis]).toBeCloseTo(once.positions[axis] + by, 5);
    });
    expect(both.indices[once.indices.length]).toBe(start / 3);
  });
});

describe('packGlb', () => {
  test.each([0, 1, 2, 3, 4, 5])('pads %d bytes and says the true lengths', (count) => {
    const glb = packGlb(
      { asset: { version: '2.0' }, name: 'é'.repeat(count) },
      new Uint8Array(count).fill(7),
    );
    const view = new DataView(glb.buffer);
    expect(view.getUint32(0, true)).toBe(0x46546c67);
    expect(view.getUint32(8, true)).toBe(glb.length);
    const textBytes = view.getUint32(12, true);
    expect(textBytes % 4).toBe(0);
    const text = new TextDecoder().decode(glb.subarray(20, 20 + textBytes));
    expect(JSON.parse(text)).toEqual({ asset: { version: '2.0' }, name: 'é'.repeat(count) });
    if (count === 0) expect(glb.length).toBe(20 + textBytes);
    else expect(view.getUint32(20 + textBytes, true)).toBe(Math.ceil(count / 4) * 4);
  });
});

describe('lightOf', () => {
  const lamp: LampForm = {
    itemId: 'lamp',
    headClassId: 'spot',
    position: [1, 2, 3],
    direction: [0, -1, 0],
    peakCandela: 5000,
    beamDegrees: 20,
    fieldDegrees: 40,
    distribution: null,
    kelvin: 3200,
    tint: null,
    sizeMetres: [0.3, 0.3, 0.3],
  };

  test('halves the angles and keeps the candela', () => {
    const { light } = lightOf(lamp, 0);
    expect(light).toMatchObject({ type: 'spot', intensity: 5000, color: [1, 1, 1] });
    expect(light.spot?.innerConeAngle).toBeCloseTo(Math.PI / 18, 12);
    expect(light.spot?.outerConeAngle).toBeCloseTo(Math.PI / 9, 12);
  });

  test('keeps the inner cone inside the outer one', () => {
    for (const [beamDegrees, fieldDegrees] of [
      [40, 40],
      [120, 180],
      [180, 180],
      [60, 30],
    ]) {
      const spot = lightOf({ ...lamp, beamDegrees, fieldDegrees }, 0).light.spot;
      expect(spot?.innerConeAngle).toBeLessThan(spot?.outerConeAngle ?? 0);
    }
  });

  test('makes a lamp that shines all round a point', () => {
    const { light } = lightOf({ ...lamp, beamDegrees: 360, fieldDegrees: 360, tint: '#ff0000' }, 0);
    expect(light.type).toBe('point');
    expect(light.spot).toBeUndefined();
    expect(light.color).toEqual([1, 0, 0]);
  });
});

test('linearColour decodes sRGB', () => {
  expect(linearColour('#000000')).toEqual([0, 0, 0]);
  expect(linearColour('#ffffff')).toEqual([1, 1, 1]);
  // The encoded middle grey of an 18 % card is about 118.
  expect(linearColour('#767676')[0]).toBeCloseTo(0.181, 3);
});
