import { atan2, cos, hypot, sin } from '../../units/steadyMath';
import type { PartShape, Substance, Tube } from '../types';
import { AT_ORIGIN, moved, type Placement, turned } from './placement';
import { add, cross, frameAround, mix, scale, subtract, unit, type Vec3 } from './vector';

/** Sides of a round member: an octagon whose corners lie on the circle. */
const TUBE_SIDES = 8;

/** How a finished shape looks; what is left out is solid, untinted, mirrors nothing and keeps its facets. */
export interface ShapeLook {
  readonly substance: Substance;
  readonly colour?: string;
  readonly openness?: number;
  readonly mirror?: { readonly normal: Vec3; readonly point: Vec3 };
  readonly smooth?: boolean;
}

/**
 * Collects the triangles and tube axes of one part. All dimensions in metres; every solid it makes is closed
 * and its triangles face outwards (counter-clockwise seen from outside).
 */
export class ShapeBuilder {
  private readonly positions: number[] = [];
  private readonly indices: number[] = [];
  private readonly tubes: Tube[] = [];

  /** Adds a corner and gives its number. */
  corner(p: Vec3): number {
    this.positions.push(p[0], p[1], p[2]);
    return this.positions.length / 3 - 1;
  }

  triangle(a: number, b: number, c: number): this {
    this.indices.push(a, b, c);
    return this;
  }

  /** A flat four-cornered face, corners counter-clockwise as seen from outside. */
  quad(a: Vec3, b: Vec3, c: Vec3, d: Vec3): this {
    const [i, j, k, l] = [this.corner(a), this.corner(b), this.corner(c), this.corner(d)];
    return this.triangle(i, j, k).triangle(i, k, l);
  }

  /** A box of [width x, height y, depth z] around `centre` (its very middle), placed by `placement`. */
  box(centre: Vec3, size: Vec3, placement: Placement = AT_ORIGIN): this {
    const [x, y, z] = scale(size, 0.5);
    const at = (sx: number, sy: number, sz: number): Vec3 =>
      moved(placement, add(centre, [sx * x, sy * y, sz * z]));
    this.quad(at(-1, -1, 1), at(1, -1, 1), at(1, 1, 1), at(-1, 1, 1));
    this.quad(at(1, -1, -1), at(-1, -1, -1), at(-1, 1, -1), at(1, 1, -1));
    this.quad(at(1, -1, 1), at(1, -1, -1), at(1, 1, -1), at(1, 1, 1));
    this.quad(at(-1, -1, -1), at(-1, -1, 1), at(-1, 1, 1), at(-1, 1, -1));
    this.quad(at(-1, 1, 1), at(1, 1, 1), at(1, 1, -1), at(-1, 1, -1));
    return this.quad(at(-1, -1, -1), at(1, -1, -1), at(1, -1, 1), at(-1, -1, 1));
  }

  /** A round member from `from` to `to`, capped, with its axis noted as a tube. */
  tube(from: Vec3, to: Vec3, radius: number, placement: Placement = AT_ORIGIN): this {
    const [a, b] = [moved(placement, from), moved(placement, to)];
    this.tubes.push({ from: a, to: b, radius });
    return this.cone(a, b, radius, radius);
  }

  /** A capped round solid whose radius runs from one end to the other; either radius may be 0. No tube is noted. */
  cone(from: Vec3, to: Vec3, fromRadius: number, toRadius: number, sides = TUBE_SIDES): this {
    return this.sweep(
      [
        { at: from, radii: [fromRadius, fromRadius] },
        { at: to, radii: [toRadius, toRadius] },
      ],
      sides,
    );
  }

  /**
   * A closed solid through rings of ellipses along a path: limbs, torsos, pots, drums, spheres.
   * Each ring lies square to `axis` (default: the direction from first to last ring); `radii` are those along
   * the two frame vectors of that axis, the first along `side` where given.
   */
  sweep(
    rings: readonly { readonly at: Vec3; readonly radii: readonly [number, number] }[],
    sides = TUBE_SIDES,
    frame?: { readonly side: Vec3; readonly up: Vec3 },
  ): this {
    const axis = unit(subtract(rings[rings.length - 1].at, rings[0].at));
    const [side, up] = frame ? [frame.side, frame.up] : frameAround(axis);
    const rows = rings.map(({ at, radii }) => {
      const row: number[] = [];
      for (let k = 0; k < sides; k += 1) {
        const turn = (2 * Math.PI * k) / sides;
        row.push(
          this.corner(add(at, add(scale(side, radii[0] * cos(turn)), scale(up, radii[1] * sin(turn))))),
        );
      }
      return row;
    });
    // The frame may be left-handed about the axis; then the winding turns over.
    const outward = cross(side, up);
    const forward = outward[0] * axis[0] + outward[1] * axis[1] + outward[2] * axis[2] >= 0;
    const face = (a: number, b: number, c: number) =>
      forward ? this.triangle(a, b, c) : this.triangle(a, c, b);
    for (let r = 0; r + 1 < rows.length; r += 1) {
      for (let k = 0; k < sides; k += 1) {
        const next = (k + 1) % sides;
        face(rows[r][k], rows[r][next], rows[r + 1][next]);
        face(rows[r][k], rows[r + 1][next], rows[r + 1][k]);
      }
    }
    const [first, last] = [rows[0], rows[rows.length - 1]];
    const [start, end] = [this.corner(rings[0].at), this.corner(rings[rings.length - 1].at)];
    for (let k = 0; k < sides; k += 1) {
      const next = (k + 1) % sides;
      face(start, first[next], first[k]);
      face(end, last[k], last[next]);
    }
    return this;
  }

  /** A ball, as a sweep of rings from pole to pole along y. */
  ball(centre: Vec3, radii: Vec3, rings = 6, sides = TUBE_SIDES): this {
    const rows = Array.from({ length: rings + 1 }, (_, k) => {
      const turn = Math.PI * (k / rings);
      const width = sin(turn);
      return {
        at: add(centre, [0, -cos(turn) * radii[1], 0]),
        radii: [radii[0] * width, radii[2] * width] as const,
      };
    });
    return this.sweep(rows, sides, { side: [1, 0, 0], up: [0, 0, -1] });
  }

  /** A straight wall of a thickness between two places, its foot at `base`. */
  slab(from: Vec3, to: Vec3, height: number, thickness: number): this {
    const along = unit(subtract([to[0], 0, to[2]], [from[0], 0, from[2]]));
    const heading = (atan2(along[0], -along[2]) * 180) / Math.PI;
    const cosine = cos((heading * Math.PI) / 180);
    const sine = sin((heading * Math.PI) / 180);
    const middle = mix(from, to, 0.5);
    const run = hypot(to[0] - from[0], to[2] - from[2]);
    const placement: Placement = [
      cosine,
      0,
      -sine,
      middle[0],
      0,
      1,
      0,
      middle[1],
      sine,
      0,
      cosine,
      middle[2],
    ];
    return this.box([0, height / 2, 0], [thickness, height, run], placement);
  }

  /** Takes over the triangles and tubes of a finished shape, placed. */
  include(shape: PartShape, placement: Placement = AT_ORIGIN): this {
    const start = this.positions.length / 3;
    for (let k = 0; k < shape.positions.length; k += 3) {
      this.corner(moved(placement, [shape.positions[k], shape.positions[k + 1], shape.positions[k + 2]]));
    }
    for (const index of shape.indices) this.indices.push(start + index);
    for (const tube of shape.tubes) {
      this.tubes.push({
        from: moved(placement, tube.from),
        to: moved(placement, tube.to),
        radius: tube.radius,
      });
    }
    return this;
  }

  get isEmpty(): boolean {
    return this.indices.length === 0;
  }

  /** The finished shape; `placement` moves all of it, mirror included. */
  finish(look: ShapeLook, placement: Placement = AT_ORIGIN): PartShape {
    const positions = new Float32Array(this.positions.length);
    for (let k = 0; k < positions.length; k += 3) {
      positions.set(moved(placement, [this.positions[k], this.positions[k + 1], this.positions[k + 2]]), k);
    }
    return {
      positions,
      indices: Uint32Array.from(this.indices),
      tubes: this.tubes.map(({ from, to, radius }) => ({
        from: moved(placement, from),
        to: moved(placement, to),
        radius,
      })),
      substance: look.substance,
      colour: look.colour ?? null,
      openness: look.openness ?? null,
      mirror: look.mirror
        ? { normal: turned(placement, look.mirror.normal), point: moved(placement, look.mirror.point) }
        : null,
      smooth: look.smooth ?? false,
    };
  }
}
