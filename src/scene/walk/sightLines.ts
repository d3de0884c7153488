import { BufferGeometry, Group, LineBasicMaterial, LineSegments } from 'three';
import type { Explanation } from '../../core/clearance/explain/types';
import type { Vec3 } from '../../core/form/build/vector';
import type { Exposure } from '../picture/exposure';
import { linesThrough } from './helperShapes';
import { ink, PAPER, VERMILION } from './inks';
import { HELPER_LAYER } from './layer';

/** Half the length of the strokes of the cross where a line ends, turns or is stopped, metres. */
const CROSS_METRES = 0.12;

/** Three strokes through a place, as pairs of points. */
const crossAt = (at: Vec3): number[] =>
  [0, 1, 2].flatMap((axis) =>
    [-CROSS_METRES, CROSS_METRES].flatMap((by) => at.map((value, k) => (k === axis ? value + by : value))),
  );

/** Pairs of points from place to place. */
const through = (places: readonly Vec3[]): number[] =>
  places.slice(1).flatMap((place, k) => [...places[k], ...place]);

/** The points, in pairs, of a line of sight with its end, and of the frame that it crosses with what hides it. */
export function sightPoints(told: Explanation): { readonly sight: number[]; readonly rest: number[] } {
  if (told.kind === 'behind') return { sight: [], rest: [] };
  const { eye, end, frame } = told;
  const around = [...through([...frame, frame[0]]), ...frame.flatMap((corner) => [...eye, ...corner])];
  if (told.kind === 'covered') {
    const { at } = told.coverer;
    return {
      sight: [...through([eye, at]), ...crossAt(at)],
      rest: [...around, ...through([at, end.at]), ...crossAt(end.at)],
    };
  }
  const turn = told.kind === 'mirrored' ? [told.mirror.at] : [];
  return {
    sight: [...through([eye, ...turn, end.at]), ...[...turn, end.at].flatMap(crossAt)],
    rest: around,
  };
}

/** Why an item has its verdict, as lines in the walk-round. */
export class SightLines {
  readonly group = new Group();
  private readonly ink = new LineBasicMaterial({ fog: false, depthTest: false });
  private readonly paper = new LineBasicMaterial({ fog: false, transparent: true, opacity: 0.7 });
  private readonly sight = new LineSegments(undefined, this.ink);
  private readonly rest = new LineSegments(undefined, this.paper);
  private drawn: Explanation | null = null;

  constructor() {
    for (const part of [this.rest, this.sight]) {
      part.layers.set(HELPER_LAYER);
      part.frustumCulled = false;
      part.renderOrder = 1e7;
      this.group.add(part);
    }
  }

  set(told: Explanation | null, exposure: Exposure): void {
    this.group.visible = told !== null;
    if (!told) return;
    const isSeen = told.kind === 'showing' || told.kind === 'mirrored';
    ink(this.ink, isSeen ? VERMILION : PAPER, exposure);
    ink(this.paper, PAPER, exposure);
    if (told === this.drawn) return;
    this.drawn = told;
    const { sight, rest } = sightPoints(told);
    for (const [part, points] of [
      [this.sight, sight],
      [this.rest, rest],
    ] as const) {
      part.geometry.dispose();
      part.geometry = points.length > 0 ? linesThrough(points) : new BufferGeometry();
    }
  }

  dispose(): void {
    for (const part of [this.sight, this.rest]) part.geometry.dispose();
    for (const material of [this.ink, this.paper]) material.dispose();
  }
}
