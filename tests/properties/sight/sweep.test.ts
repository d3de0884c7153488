import { describe, expect, it } from 'vitest';
import { formsAt } from '../../../src/core/form/formsAt';
import { spanOf } from '../../../src/core/optics/camera';
import { undistort } from '../../../src/core/optics/distortion';
import { keyAt, poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { reportOf } from '../../../src/core/report/report';
import { gridOf, reachOf } from '../../../src/core/sight/grid';
import { type SightStage, stageOf } from '../../../src/core/sight/stage';
import { mayEnter, motionOver } from '../../../src/core/sight/sweep';
import { planFrom } from '../../plans/bare';
import { dice } from '../../plans/draw';
import { smallRoofDocument } from '../../unit/smallRoof';

const FRAME_SECONDS = 1 / 24;
const QUARTER_FRAMES = [0, 1, 2, 3, 4, 5, 6] as const;
const STANCES = ['stand', 'walk', 'run', 'crouch', 'sit', 'lean', 'arms out', 'reach', 'holding'];
const PROPS = ['bird', 'box', 'ball', 'case'];
const STILL = { metres: 0, chord: 0 };

const base = smallRoofDocument();

/** One performer who runs, turns and changes stance at moments that keep no beat, some of them a frame or two apart. */
function restlessPlan(seed: number): Plan {
  const roll = dice(seed + 60000);
  const longest = seed % 2 === 0 ? 0.6 : 2.5;
  let at = 0;
  const beats = [0, 1, 2, 3].map((k) => {
    at += k === 0 ? 0 : roll(0.05, longest);
    return { id: `beat-${k}`, label: `Beat ${k}`, atSeconds: at };
  });
  const marks = beats.map((beat, k) => ({
    id: `mark-${k}`,
    beat: beat.id,
    at: [roll(-2, 2), roll(-2, 2)],
    headingDegrees: roll(0, 360),
    stance: STANCES[Math.floor(roll(0, STANCES.length))],
    holdSeconds: roll(0, 0.4),
  }));
  const who = { ...base.cast[0], statureMetres: 1.9, marks };
  const prop = PROPS[Math.floor(roll(0, 2 * PROPS.length))];
  return planFrom({
    ...base,
    pieces: [],
    gear: [],
    setups: [],
    beats,
    cast: [prop ? { ...who, prop } : who],
  });
}

/** A lens so long that only what lies in one line is in frame, from afar, on the middle of one part of a stage. */
function onPart({ parts }: SightStage, part: number): Camera {
  const [x, y, z] = parts[part].centre;
  return {
    pose: poseOf([x, y, z + 40], 0, 0, 0),
    frame: { tanHalfWidth: 1e-4, tanHalfHeight: 1e-4, aspect: 1, distortion: null },
  };
}

describe('the interval test', () => {
  it('never says no of a part that is in frame at a frame between', () => {
    const wrong: string[] = [];
    let asked = 0;
    for (let seed = 1; seed <= 40; seed += 1) {
      const plan = restlessPlan(seed);
      const last = plan.beats[3].atSeconds;
      for (let from = 0; from < last; from += 0.11) {
        const frames = QUARTER_FRAMES.map((frame) => formsAt(plan, from + frame * FRAME_SECONDS)[0]);
        for (const part of frames[0].parts.keys()) {
          // The part alone, as another of the same performer could answer for it.
          const stages = frames.map((now) => stageOf([{ ...now, parts: [now.parts[part]] }]));
          for (const stage of stages) {
            const camera = onPart(stage, 0);
            asked += 1;
            if (!mayEnter(0, { stages, camera, field: reachOf(gridOf(camera.frame, 16)), motion: STILL }, []))
              wrong.push(`seed ${seed}, from ${from} s, ${frames[0].parts[part].name}`);
          }
        }
      }
    }
    expect(wrong).toEqual([]);
    expect(asked).toBeGreaterThan(10000);
  });

  it('knows the corners of a barrel, which reach farther out than its sides', () => {
    const lens = { k1: -0.2, k2: 0.04, k3: 0, p1: 0, p2: 0 };
    const frame = { tanHalfWidth: 0.7, tanHalfHeight: 0.35, aspect: 2, distortion: lens };
    const camera: Camera = { pose: poseOf([0, 0, 0], 0, 0, 0), frame };
    const corner = undistort(lens, 0.695, 0.345);
    if (!corner) throw new Error('the lens does not draw its corner');
    const plan = planFrom({
      ...base,
      cast: [],
      setups: [],
      pieces: [
        {
          id: 'speck',
          label: 'Speck',
          kind: 'box',
          at: [corner[0] * 10, -corner[1] * 10, -10],
          headingDegrees: 0,
          size: [0.001, 0.001, 0.001],
          material: 'metal',
        },
      ],
      gear: [],
    });
    const stage = stageOf(formsAt(plan, 0));
    expect(
      mayEnter(0, { stages: [stage, stage], camera, field: reachOf(gridOf(frame)), motion: STILL }, []),
    ).toBe(true);
  });

  it('takes the whole way through the keys of a move, roll included', () => {
    const key = (atSeconds: number, headingDegrees: number, rollDegrees: number, x: number) => ({
      atSeconds,
      position: [x, 0, 0] as [number, number, number],
      headingDegrees,
      tiltDegrees: 0,
      rollDegrees,
    });
    const keys = [key(0, 0, 0, 0), key(0.1, 30, 10, 1), key(0.2, 0, 0, 0)];
    const frame = { tanHalfWidth: 0.5, tanHalfHeight: 0.2, aspect: 2.5, distortion: null };
    const cameras = [0, 0.05, 0.1, 0.15, 0.2, 0.25].map((seconds): Camera => {
      const { position, headingDegrees, tiltDegrees, rollDegrees } = keyAt({ ease: 'eased', keys }, seconds);
      return { pose: poseOf(position, headingDegrees, tiltDegrees, rollDegrees), frame };
    });
    const motion = motionOver(cameras);
    // Farthest at the middle key. Two turns about axes square to each other: cos(a/2) = cos 15° cos 5°.
    const half = Math.acos(Math.cos(Math.PI / 12) * Math.cos(Math.PI / 36));
    expect(motion.metres).toBeCloseTo(1, 12);
    expect(motion.chord).toBeCloseTo(2 * Math.sin(half), 12);
  });
});

describe('what is there and back within a quarter of a second', () => {
  const FRAMES = [0, 3, 6];
  const [setup] = base.setups;
  const beats = FRAMES.map((frame) => ({
    id: `beat-${frame}`,
    label: `Frame ${frame}`,
    atSeconds: frame * FRAME_SECONDS,
  }));
  const key = (atSeconds: number, headingDegrees: number) => ({
    atSeconds,
    position: [0, 1.6, 0],
    headingDegrees,
    tiltDegrees: 0,
    rollDegrees: 0,
  });
  const looking = (keys: readonly object[]) => ({
    ...setup,
    lens: 'long',
    span: { from: 'beat-0', to: 'beat-6' },
    move: { ease: 'linear', keys },
  });

  it('is found when the camera turns to it', () => {
    const plan = planFrom({
      ...base,
      beats,
      pieces: base.pieces.slice(0, 1),
      cast: [],
      gear: [{ ...base.gear[0], id: 'glimpsed', at: [6, 0, 0] }],
      setups: [looking(FRAMES.map((frame) => key(frame * FRAME_SECONDS, frame === 3 ? 90 : 0)))],
    });
    const [from, to] = spanOf(plan, plan.setups[0]);
    expect(to - from).toBeCloseTo(0.25, 12);
    const glimpsed = reportOf(plan).setups[0].items.find(({ id }) => id === 'glimpsed');
    expect(glimpsed?.verdict).toBe('showing');
    expect(glimpsed?.worstAtSeconds).toBe(3 * FRAME_SECONDS);
  });

  it('is found when a performer leaps into frame', () => {
    const mark = (frame: number, x: number) => ({
      id: `mark-${frame}`,
      beat: `beat-${frame}`,
      at: [x, -6],
      headingDegrees: 0,
      stance: 'stand',
      holdSeconds: 0,
    });
    const plan = planFrom({
      ...base,
      beats,
      pieces: base.pieces.slice(0, 1),
      gear: [],
      cast: [{ ...base.cast[0], wish: 'must show', marks: [mark(0, 4), mark(3, 0), mark(6, 4)] }],
      setups: [looking([key(0, 0)])],
    });
    const ana = reportOf(plan).setups[0].items.find(({ id }) => id === 'ana');
    expect(ana?.verdict).toBe('showing');
    expect(ana?.worstAtSeconds).toBeCloseTo(3 * FRAME_SECONDS, 12);
  });

  it('is found in a mirror that itself comes into view between', () => {
    const plan = planFrom({
      ...base,
      ground: { surface: 'concrete', wetness: 'dry' },
      beats,
      cast: [],
      pieces: [
        {
          id: 'mirror',
          label: 'Mirror',
          kind: 'pane',
          at: [6, 0, 0],
          headingDegrees: 270,
          widthMetres: 3,
          heightMetres: 3,
          finish: 'mirror',
        },
      ],
      gear: [{ ...base.gear[0], id: 'imaged', at: [-4, 0, 0.6], heightMetres: 3 }],
      setups: [looking(FRAMES.map((frame) => key(frame * FRAME_SECONDS, frame === 3 ? 90 : 0)))],
    });
    const imaged = reportOf(plan).setups[0].items.find(({ id }) => id === 'imaged');
    expect(imaged?.verdict).toBe('mirrored');
  });
});
