import { Vector3 } from 'three';
import { expect, test } from 'vitest';
import { poseOf } from '../../../src/core/optics/pose';
import { projectPoint } from '../../../src/core/optics/project';
import type { Camera } from '../../../src/core/optics/types';
import { FrameCamera } from '../../../src/scene/cameras/frameCamera';

const CAMERA: Camera = {
  pose: poseOf([1.2, 1.6, 4.4], 13, -4, 7),
  frame: { tanHalfWidth: 0.44, tanHalfHeight: 0.184, aspect: 2.39, distortion: null },
};
const POINTS = [
  [0, 0.4, -3],
  [4.2, 2.6, -9],
  [-0.5, 1.1, -1.7],
] as const;

const inFrame = (camera: FrameCamera, [x, y, z]: readonly [number, number, number]) => {
  const ndc = new Vector3(x, y, z).project(camera);
  return [0.5 + ndc.x / 2, 0.5 - ndc.y / 2];
};

test('a frame camera projects as core/optics does, also after three has asked for its projection again', () => {
  const camera = new FrameCamera().setFrame(CAMERA.frame, 1).setPose(CAMERA.pose);
  camera.aspect = 1;
  camera.updateProjectionMatrix();
  for (const point of POINTS) {
    const expected = projectPoint(CAMERA, point);
    const [x, y] = inFrame(camera, point);
    expect(x).toBeCloseTo(expected?.x ?? Number.NaN, 10);
    expect(y).toBeCloseTo(expected?.y ?? Number.NaN, 10);
  }
});

test('the mirror camera sees a point of the mirror where the camera sees it, turned over left to right', () => {
  const camera = new FrameCamera().setFrame(CAMERA.frame, 1.1).setPose(CAMERA.pose);
  const mirror = new FrameCamera().mirror(camera, 0.25);
  for (const [x, , z] of POINTS) {
    const [seenX, seenY] = inFrame(camera, [x, 0.25, z]);
    const [mirroredX, mirroredY] = inFrame(mirror, [x, 0.25, z]);
    expect(mirroredX).toBeCloseTo(1 - seenX, 10);
    expect(mirroredY).toBeCloseTo(seenY, 10);
  }
});

test('the mirror camera sees a thing above the mirror where the camera would see its image below', () => {
  const camera = new FrameCamera().setFrame(CAMERA.frame, 1).setPose(CAMERA.pose);
  const mirror = new FrameCamera().mirror(camera, 0);
  const [imageX, imageY] = inFrame(camera, [1, -1.3, -5]);
  const [x, y] = inFrame(mirror, [1, 1.3, -5]);
  expect(x).toBeCloseTo(1 - imageX, 10);
  expect(y).toBeCloseTo(imageY, 10);
});

test('nothing below the mirror gets past the mirror camera', () => {
  const camera = new FrameCamera().setFrame(CAMERA.frame, 1).setPose(CAMERA.pose);
  const mirror = new FrameCamera().mirror(camera, 0);
  expect(new Vector3(1, -0.01, -5).project(mirror).z).toBeLessThan(-1);
  expect(new Vector3(1, 0.01, -5).project(mirror).z).toBeGreaterThan(-1);
});
