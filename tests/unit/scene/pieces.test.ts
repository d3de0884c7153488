import { Vector3 } from 'three';
import { expect, test } from 'vitest';
import { FrameCamera } from '../../../src/scene/cameras/frameCamera';
import { aimPiece, piecesOf } from '../../../src/scene/contact/pieces';

const POSE = {
  position: [1, 2, 3],
  right: [1, 0, 0],
  up: [0, 1, 0],
  forward: [0, 0, -1],
} as const;
const PLACE = new Vector3(2.1, 2.4, -5);

const whole = (): FrameCamera => new FrameCamera().setPose(POSE).setHalves(0.4, 0.2);

test('a picture that is small enough is one piece', () => {
  const [only, ...others] = piecesOf(1920, 803, 2000);
  expect(others).toEqual([]);
  expect(only.drawn).toEqual({ left: 0, top: 0, width: 1920, height: 803 });
});

test('pieces cover a picture once, and each is drawn with what lies around it', () => {
  const pieces = piecesOf(3840, 1607, 1400);
  expect(pieces).toHaveLength(6);
  expect(pieces.reduce((sum, { kept }) => sum + kept.width * kept.height, 0)).toBe(3840 * 1607);
  for (const { kept, drawn } of pieces) {
    expect(drawn.left).toBe(Math.max(0, kept.left - 192));
    expect(drawn.top + drawn.height).toBe(Math.min(1607, kept.top + kept.height + 192));
  }
});

test('a place falls on the same pixel of a piece as of the whole picture, mirrored too', () => {
  const [width, height] = [3840, 1920];
  for (const piece of piecesOf(width, height, 1000)) {
    const camera = whole();
    aimPiece(camera, piece);
    const pairs: readonly (readonly [FrameCamera, FrameCamera, flipped: boolean])[] = [
      [whole(), camera, false],
      [new FrameCamera().mirror(whole(), 0), new FrameCamera().mirror(camera, 0), true],
    ];
    for (const [all, part, flipped] of pairs) {
      const place = flipped ? new Vector3(PLACE.x, 0.3, PLACE.z) : PLACE;
      const there = place.clone().project(all);
      const here = place.clone().project(part);
      const { drawn } = piece;
      const side = flipped ? -1 : 1;
      const x = drawn.left + ((side * here.x + 1) / 2) * drawn.width;
      const y = drawn.top + ((1 - here.y) / 2) * drawn.height;
      expect(x).toBeCloseTo(((side * there.x + 1) / 2) * width, 4);
      expect(y).toBeCloseTo(((1 - there.y) / 2) * height, 4);
    }
  }
});
