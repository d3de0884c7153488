import type { Plan } from '../../src/core/plan/schema/plan';
import { smallRoofDocument } from '../unit/smallRoof';
import { planFrom } from './bare';

const base = smallRoofDocument();

/** Where somebody stands at a beat; until the next mark, unless they leave earlier. */
export interface StagedMark {
  readonly beat?: string;
  readonly at: readonly [x: number, z: number];
  readonly heading?: number;
  readonly faces?: string;
  readonly holdSeconds?: number;
}

/** Where a camera is at a time; it looks at a place, or along a heading. */
export interface StagedKey {
  readonly atSeconds?: number;
  readonly at: readonly [x: number, z: number];
  readonly height?: number;
  readonly heading?: number;
  readonly lookAt?: readonly [x: number, z: number];
}

export interface StagedSetup {
  readonly id: string;
  readonly keys: readonly StagedKey[];
  readonly from?: string;
  readonly to?: string;
  /** On the small roof: `wide` is 40 mm with a 2x squeeze, 58° across; `long` is 85 mm, 17° across. */
  readonly lens?: 'wide' | 'long';
  readonly follow?: string;
}

export interface Staged {
  readonly cast: Readonly<Record<string, readonly StagedMark[]>>;
  readonly setups: readonly StagedSetup[];
  readonly lines?: readonly {
    readonly id: string;
    readonly pair: readonly string[];
    readonly establishedBy?: string;
  }[];
  /** Beats by id, seconds; `start` at 0 and `end` at 4 unless said. */
  readonly beats?: Readonly<Record<string, number>>;
  /** All of them as tall, metres, so that eyes are at one height. */
  readonly statures?: Readonly<Record<string, number>>;
}

const headingTo = (from: readonly [number, number], to: readonly [number, number]): number =>
  (Math.atan2(to[0] - from[0], from[1] - to[1]) * 180) / Math.PI;

const capital = (id: string): string => id.charAt(0).toUpperCase() + id.slice(1);

/** A bare deck with people on marks and cameras round them: what continuity is tried on. */
export function staged({ cast, setups, lines, beats = { start: 0, end: 4 }, statures = {} }: Staged): Plan {
  return planFrom({
    ...base,
    pieces: base.pieces.slice(0, 1),
    gear: [],
    beats: Object.entries(beats).map(([id, atSeconds]) => ({ id, label: capital(id), atSeconds })),
    cast: Object.entries(cast).map(([id, marks]) => ({
      ...base.cast[0],
      id,
      label: capital(id),
      statureMetres: statures[id] ?? 1.7,
      marks: marks.map((mark, k) => ({
        id: `${id}-${k}`,
        beat: mark.beat ?? 'start',
        at: mark.at,
        headingDegrees: mark.heading ?? 0,
        ...(mark.faces ? { faces: { who: mark.faces } } : {}),
        stance: 'stand',
        holdSeconds: mark.holdSeconds ?? 0,
      })),
    })),
    ...(lines ? { lines } : {}),
    setups: setups.map((setup) => ({
      ...base.setups[0],
      id: setup.id,
      label: capital(setup.id),
      lens: setup.lens ?? 'wide',
      focus: setup.follow ? { follow: setup.follow } : { metres: 4 },
      span: { from: setup.from ?? 'start', to: setup.to ?? 'end' },
      move: {
        ease: 'linear',
        keys: setup.keys.map((key) => ({
          atSeconds: key.atSeconds ?? 0,
          position: [key.at[0], key.height ?? 1.5, key.at[1]],
          headingDegrees: key.heading ?? headingTo(key.at, key.lookAt ?? [0, 0]),
          tiltDegrees: 0,
          rollDegrees: 0,
        })),
      },
    })),
  });
}

/** Two who face each other two metres apart, `ana` at the left of whoever looks along −z. */
export const FACE_TO_FACE = {
  ana: [{ at: [-1, 0], heading: 90 }],
  bea: [{ at: [1, 0], heading: 270 }],
} as const satisfies Staged['cast'];

/** A camera five metres off, square to their line, that has both, `ana` at the left. */
export const MASTER = { id: 'master', keys: [{ at: [0, 5] }] } as const satisfies StagedSetup;
