import { describe, expect, test } from 'vitest';
import type { Vec3 } from '../../../src/core/form/build/vector';
import { NETS } from '../../../src/core/kit/nets';
import { illuminance } from '../../../src/core/light/illuminance';
import { type LightScene, lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import { darkRoof, flagAt, lampAt } from '../../plans/darkRoof';

const TOWARDS: Vec3 = [0, 0, 1];

/** A lamp at the origin that looks along −z, with things in front of it. */
const behind = (lamp: string, gear: readonly Gear[], pieces: readonly Piece[] = []): LightScene =>
  lightScene(
    darkRoof({ gear: [lampAt('lamp', lamp, [0, 2, 0], [0, 0, -1]), ...gear], pieces: [...pieces] }),
    null,
    0,
  );
const visibleAt = (scene: LightScene, x: number, z: number): number =>
  illuminance(scene, [x, 2, z], TOWARDS).shares.find(({ itemId }) => itemId === 'lamp')?.visible ??
  Number.NaN;

describe('a flag', () => {
  // Its right edge 0.2 m off the axis, 2 m from the lamp.
  const flag = flagAt('flag', [-0.3, 2, -2], [1, 1]);

  test('casts an edge where similar triangles say: 0.6 m off the axis at 6 m', () => {
    const scene = behind('point', [flag]);
    // Of a face of 17 mm the edge is as soft as 34 mm.
    expect(visibleAt(scene, 0.58, -6)).toBe(0);
    expect(visibleAt(scene, 0.62, -6)).toBe(1);
    expect(visibleAt(scene, 0.6, -6)).toBeCloseTo(0.5, 1);
  });

  test('cuts nothing before it and nothing beside it', () => {
    const scene = behind('point', [flag]);
    expect(visibleAt(scene, 0, -1.9)).toBe(1);
    expect(visibleAt(scene, 0, -2.2)).toBe(0);
    expect(visibleAt(scene, 1, -6)).toBe(1);
  });

  test('leaves a penumbra as wide as the lamp times the ways: 0.6 m of face, 2 m to the flag, 4 m on: 1.2 m', () => {
    const scene = behind('panel', [flagAt('flag', [-1.5, 2, -2], [3, 3])]);
    // The edge is on the axis: from −0.6 m in full shade to +0.6 m in full light, evenly, to a sixteenth.
    for (const x of [-0.66, -0.55, -0.3, 0, 0.3, 0.55, 0.66]) {
      const share = Math.min(1, Math.max(0, (x + 0.6) / 1.2));
      expect(Math.abs(visibleAt(scene, x, -6) - share)).toBeLessThan(1 / 16 + 1e-9);
    }
    expect(visibleAt(scene, -0.66, -6)).toBe(0);
    expect(visibleAt(scene, 0.66, -6)).toBe(1);
  });
});

describe('what lets light through', () => {
  test('wire mesh passes its openness: (1 − wire ÷ cell)²', () => {
    const fence: Piece = {
      id: 'fence',
      label: 'Fence',
      kind: 'fence',
      path: [
        [-4, -3],
        [4, -3],
      ],
      closed: false,
      baseMetres: 0,
      heightMetres: 4,
      postEveryMetres: 3,
      postMetres: 0.05,
      rails: 2,
      mesh: { cellMetres: 0.05, wireMetres: 0.003 },
    };
    expect(visibleAt(behind('point', [], [fence]), 0.2, -5)).toBeCloseTo(0.94 ** 2, 9);
  });

  test('a sheet of window glass passes about nine tenths', () => {
    const pane: Piece = {
      id: 'pane',
      label: 'Pane',
      kind: 'pane',
      at: [0, 1, -3],
      headingDegrees: 0,
      widthMetres: 2,
      heightMetres: 2,
      finish: 'glass',
    };
    expect(visibleAt(behind('point', [], [pane]), 0, -5)).toBeCloseTo(0.918, 3);
    expect(visibleAt(behind('point', [], [{ ...pane, finish: 'mirror' }]), 0, -5)).toBe(0);
  });

  // Source: [grip-nets]
  test('a single net takes half a stop, a double a whole one, straight through its middle too', () => {
    const stops = (share: number, x: number): number =>
      -Math.log2(visibleAt(behind('point', [flagAt('net', [0, 2, -2], [1.2, 1.2], share)]), x, -6));
    for (const x of [0, 0.3]) {
      expect(stops(NETS.single, x)).toBeCloseTo(0.5, 1);
      expect(stops(NETS.double, x)).toBeCloseTo(1, 9);
    }
    expect(stops(NETS.single, 3)).toBe(-0);
  });

  test('two singles are a double, within a hundredth of a stop and a half', () => {
    const single = (id: string, z: number) => flagAt(id, [0, 2, z], [2, 2], NETS.single);
    const two = visibleAt(behind('point', [single('a', -2), single('b', -2.3)]), 0.2, -6);
    const double = visibleAt(behind('point', [flagAt('c', [0, 2, -2], [2, 2], NETS.double)]), 0.2, -6);
    expect(Math.abs(Math.log2(two / double))).toBeLessThan(0.015);
  });

  test('a net before a frame takes as much from what the frame gives on', () => {
    const frame: Gear = {
      id: 'frame',
      label: 'Frame',
      kind: 'frame',
      place: { at: [0, 2, -4] },
      headingDegrees: 0,
      tiltDegrees: 0,
      size: [1, 1],
      transmission: 0.5,
    };
    const given = (gear: readonly Gear[]): number =>
      illuminance(behind('spot', gear), [0, 2, -7], TOWARDS).shares.find(({ itemId }) => itemId === 'frame')
        ?.lux ?? 0;
    expect(given([frame, flagAt('net', [0, 2, -2], [2, 2], 0.5)]) / given([frame])).toBeCloseTo(0.5, 9);
  });

  test('two layers pass the square of one', () => {
    const pane = (id: string, z: number): Piece => ({
      id,
      label: id,
      kind: 'pane',
      at: [0, 1, z],
      headingDegrees: 0,
      widthMetres: 2,
      heightMetres: 2,
      finish: 'glass',
    });
    expect(visibleAt(behind('point', [], [pane('a', -3), pane('b', -3.5)]), 0, -5)).toBeCloseTo(
      0.9184 ** 2,
      3,
    );
  });
});
