import { describe, expect, test } from 'vitest';
import { screenDirectionFindings } from '../../../src/core/continuity/screenDirection';
import { screenMotion } from '../../../src/core/continuity/screenDirectionAt';
import { poseOf } from '../../../src/core/optics/pose';
import { type Staged, staged } from '../../plans/staged';

/** From the left to the right of a camera that looks along −z. */
const WALK = { ana: [{ at: [-2, 0] }, { at: [2, 0], beat: 'end' }] } as const;
const FRONT = { id: 'front', keys: [{ at: [0, 6] }] } as const;
const BACK = { id: 'back', keys: [{ at: [0, -6] }] } as const;
const HEAD_ON = { id: 'head-on', keys: [{ at: [8, 0.1], heading: 270 }] } as const;

const told = (plan: Partial<Staged>) =>
  screenDirectionFindings(staged({ cast: WALK, setups: [FRONT], ...plan })).map(
    ({ setupId, direction, standing, againstId, neutralId }) => [
      setupId,
      direction,
      standing,
      againstId,
      neutralId,
    ],
  );

describe('a walk across the frame', () => {
  const camera = poseOf([0, 1.5, 6], 0, 0, 0);

  test('worked by hand: across, towards, away, none', () => {
    expect(screenMotion(camera, [0, 1.5, 0], [1, 0, 0])).toMatchObject({
      direction: 'left to right',
      offSightDegrees: 90,
    });
    // 45° to the sight of them.
    expect(screenMotion(camera, [0, 1.5, 0], [-1, 0, 1])?.direction).toBe('right to left');
    expect(screenMotion(camera, [0, 1.5, 0], [-1, 0, 1])?.offSightDegrees).toBeCloseTo(45, 10);
    expect(screenMotion(camera, [0, 1.5, 0], [0.3, 0, 1])?.direction).toBe('towards');
    expect(screenMotion(camera, [0, 1.5, 0], [0.3, 0, -1])?.direction).toBe('away');
    expect(screenMotion(camera, [0, 1.5, 0], [0, 0, 0])).toBeNull();
  });

  test('goes by the sight of them and not by the camera’s heading', () => {
    // At the frame's left, along the sight: straight away, though the camera looks past them.
    expect(screenMotion(camera, [-6, 1.5, 0], [-1, 0, -1])?.direction).toBe('away');
  });

  test('is left to right upside down for a camera that hangs so', () => {
    expect(screenMotion(poseOf([0, 1.5, 6], 0, 0, 180), [0, 1.5, 0], [1, 0, 0])?.direction).toBe(
      'right to left',
    );
  });
});

describe('screen direction from setup to setup', () => {
  test('holds on one side of the way', () => {
    expect(told({ setups: [FRONT, { id: 'near', keys: [{ at: [1, 4], lookAt: [0, 0] }] }] })).toEqual([
      ['front', 'left to right', 'holds', null, null],
      ['near', 'left to right', 'holds', 'front', null],
    ]);
  });

  test('is turned round by a camera on the other side', () => {
    expect(told({ setups: [FRONT, BACK] })).toEqual([
      ['front', 'left to right', 'holds', null, null],
      ['back', 'right to left', 'breaks', 'front', null],
    ]);
  });

  test('may turn round after a setup that sees them head on', () => {
    expect(told({ setups: [FRONT, HEAD_ON, BACK, { ...FRONT, id: 'again' }] })).toEqual([
      ['front', 'left to right', 'holds', null, null],
      ['head-on', 'towards', 'holds', null, null],
      ['back', 'right to left', 'said', 'front', 'head-on'],
      ['again', 'left to right', 'breaks', 'back', null],
    ]);
  });

  test('stays what it is for a camera that pans and goes along', () => {
    const along = {
      id: 'along',
      keys: [
        { atSeconds: 0, at: [-3, 5], heading: 20 },
        { atSeconds: 4, at: [5, 5], heading: -20 },
      ],
    } as const;
    // It overtakes her, so that she drifts to frame left, and still goes left to right.
    expect(told({ setups: [along] })).toEqual([['along', 'left to right', 'holds', null, null]]);
  });

  test('is one for a way with a short rest, and another for the way back', () => {
    const beats = { start: 0, middle: 2, rest: 3, end: 5, back: 9 };
    const cast = {
      ana: [
        { at: [-2, 0] },
        { at: [0, 0], beat: 'middle', holdSeconds: 1 },
        { at: [2, 0], beat: 'end' },
        { at: [-2, 0], beat: 'back' },
      ],
    } as const;
    const found = screenDirectionFindings(staged({ cast, beats, setups: [{ ...FRONT, to: 'back' }] }));
    expect(found).toMatchObject([
      { fromMark: 'ana-0', toMark: 'ana-2', direction: 'left to right' },
      { fromMark: 'ana-2', toMark: 'ana-3', direction: 'right to left', standing: 'holds', againstId: null },
    ]);
  });

  test('is not told of a step or two', () => {
    expect(told({ cast: { ana: [{ at: [0, 0] }, { at: [0.9, 0], beat: 'end' }] } })).toEqual([]);
  });
});
