import { describe, expect, it } from 'vitest';
import type { Camera } from '../../../src/core/optics/types';
import { moveOutOf, outsideOf } from '../../../src/core/sight/margin';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { alongEdges, isInside, movesIn, type Triangle, trianglesOf } from './pyramid';
import { randomCamera, randomForms } from './randomForms';

const DIRECTIONS = 64;
const MILLIMETRE = 0.001;

interface Case {
  readonly name: string;
  readonly stage: SightStage;
  readonly camera: Camera;
  readonly triangles: readonly Triangle[];
}

/** Every item of some random plans, alone on a stage before the plan's camera; without the deck, which is everywhere. */
function* cases(from: number, to: number): Generator<Case> {
  for (let seed = from; seed <= to; seed += 1) {
    const camera = randomCamera(seed);
    for (const form of randomForms(seed)) {
      if (form.id === 'deck') continue;
      const stage = stageOf([form]);
      yield {
        name: `seed ${seed}, ${form.id} (${form.kind})`,
        stage,
        camera,
        triangles: trianglesOf(stage, 0, camera),
      };
    }
  }
}

const directions = Array.from({ length: DIRECTIONS }, (_, k) => {
  const turn = (2 * Math.PI * k) / DIRECTIONS;
  return [Math.cos(turn), Math.sin(turn)] as const;
});

/** How far a place is outside the frame's rectangle, in frame widths; places as tangents. */
function widthsOutside(x: number, y: number, { frame }: Camera): number {
  const outX = Math.max(0, Math.abs(x) - frame.tanHalfWidth);
  const outY = Math.max(0, Math.abs(y) - frame.tanHalfHeight);
  return Math.hypot(outX, outY) / (2 * frame.tanHalfWidth);
}

describe('how far outside the frame an item is', () => {
  it('is the least move square to the axis that brings it in', () => {
    let outside = 0;
    for (const { name, stage, camera, triangles } of cases(501, 506)) {
      const found = outsideOf(stage, 0, camera);
      if (found === null || found === 'inside') continue;
      outside += 1;
      const { metres } = found;
      const enters = (x: number, y: number, length: number) =>
        isInside(triangles, camera, x * length, y * length);
      const moves = [...movesIn(triangles, camera)].filter(
        ([x, y]) => Math.hypot(x, y) < metres + MILLIMETRE,
      );
      const ways = moves.map(([x, y]) => [x / Math.hypot(x, y), y / Math.hypot(x, y)]);
      const told = `${name}: ${metres} m`;
      expect(
        ways.some(([x, y]) => enters(x, y, metres + MILLIMETRE)),
        told,
      ).toBe(true);
      expect(
        ways.some(([x, y]) => enters(x, y, metres - MILLIMETRE)),
        `${told}, a millimetre less`,
      ).toBe(false);
      expect(
        directions.some(([x, y]) => enters(x, y, metres * 0.98)),
        `${told}, 2 % less`,
      ).toBe(false);
    }
    expect(outside).toBeGreaterThan(20);
  });

  it('is, in frame widths, the least distance of its picture from the frame', () => {
    let outside = 0;
    for (const { name, stage, camera, triangles } of cases(501, 512)) {
      const found = outsideOf(stage, 0, camera);
      if (found === null || found === 'inside') continue;
      outside += 1;
      let least = Infinity;
      let gap = 0;
      for (const [x, y, step] of alongEdges(triangles, 60)) {
        const widths = widthsOutside(x, y, camera);
        if (widths >= least) continue;
        least = widths;
        gap = step / (4 * camera.frame.tanHalfWidth);
      }
      expect(found.frameWidths, name).toBeLessThanOrEqual(least + 1e-9);
      expect(found.frameWidths, name).toBeGreaterThanOrEqual(least - gap - 1e-9);
    }
    expect(outside).toBeGreaterThan(40);
  });

  it('says inside when any of it is, and nothing when all of it is behind', () => {
    const told = { inside: 0, behind: 0 };
    for (const { name, stage, camera, triangles } of cases(501, 520)) {
      const found = outsideOf(stage, 0, camera);
      expect(found === 'inside', name).toBe(isInside(triangles, camera));
      const isBehind = triangles.every((triangle) => triangle.every(([, , z]) => z < 0.01));
      expect(found === null, name).toBe(isBehind);
      if (found === 'inside') told.inside += 1;
      if (found === null) told.behind += 1;
    }
    expect(told.inside).toBeGreaterThan(20);
    expect(told.behind).toBeGreaterThan(5);
  });
});

describe('the move that takes an item out of frame', () => {
  it('takes all of it out, and a centimetre less does not', () => {
    let moved = 0;
    for (const { name, stage, camera, triangles } of cases(521, 540)) {
      if (!isInside(triangles, camera)) continue;
      moved += 1;
      const metres = moveOutOf(stage, 0, camera);
      const more = metres + Math.sign(metres) * 1e-6;
      expect(isInside(triangles, camera, more, 0), `${name}: ${metres} m takes it out`).toBe(false);
      const less = metres - Math.sign(metres) * Math.min(0.01, Math.abs(metres));
      expect(isInside(triangles, camera, less, 0), `${name}: a centimetre less`).toBe(true);
      // The other way is no shorter.
      const other = -Math.sign(metres) * (Math.abs(metres) - 0.01);
      expect(isInside(triangles, camera, other, 0), `${name}: the other way`).toBe(true);
    }
    expect(moved).toBeGreaterThan(50);
  });

  it('is nothing for what lies above or below the frame', () => {
    let beside = 0;
    for (const { name, stage, camera, triangles } of cases(541, 545)) {
      const isBeyondTopOrBottom = triangles.every((triangle) => {
        const { tanHalfHeight } = camera.frame;
        return (
          triangle.every(([, y, z]) => z > 0.01 && y > tanHalfHeight * z) ||
          triangle.every(([, y, z]) => z > 0.01 && y < -tanHalfHeight * z)
        );
      });
      if (!isBeyondTopOrBottom) continue;
      beside += 1;
      expect(moveOutOf(stage, 0, camera), name).toBe(0);
    }
    expect(beside).toBeGreaterThan(5);
  });
});
