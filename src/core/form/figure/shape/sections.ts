import { cos, hypot, pow, sin } from '../../../units/steadyMath';
import type { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import { loft, type Ring } from './loft';

/**
 * A level section of a body part: its height, half its width, its reach to the front (−z) and to the back (+z) of its
 * middle, where that middle lies, and how square it is (2 an ellipse, more nears a rectangle).
 */
export interface Section {
  readonly y: number;
  readonly half: number;
  readonly front: number;
  readonly back: number;
  readonly x?: number;
  readonly z?: number;
  readonly square?: number;
}

const power = (value: number, exponent: number) => Math.sign(value) * pow(Math.abs(value), exponent);

/** The point of a section at a bearing (clockwise from the front, seen from above, radians). */
export function onSection(section: Section, bearing: number): Vec3 {
  const exponent = 2 / (section.square ?? 2);
  const ahead = power(cos(bearing), exponent);
  return [
    (section.x ?? 0) + section.half * power(sin(bearing), exponent),
    section.y,
    (section.z ?? 0) - ahead * (ahead > 0 ? section.front : section.back),
  ];
}

const ringOf = (section: Section, sides: number): Ring =>
  Array.from({ length: sides }, (_, k) => onSection(section, (2 * Math.PI * k) / sides));

/** A dome that closes a limb's end: `rise` beyond the section (signed), in `steps` rings and a point. */
function dome(section: Section, rise: number, sides: number, steps = 2): Ring[] {
  const rings: Ring[] = [];
  for (let k = 1; k <= steps; k += 1) {
    const turn = (Math.PI / 2) * (k / (steps + 1));
    const share = cos(turn);
    rings.push(
      ringOf(
        {
          ...section,
          y: section.y + rise * sin(turn),
          half: section.half * share,
          front: section.front * share,
          back: section.back * share,
        },
        sides,
      ),
    );
  }
  rings.push([[section.x ?? 0, section.y + rise, section.z ?? 0]]);
  return rings;
}

/** A solid through sections from first to last, domed at either end where a rise is given, else capped flat. */
export function limb(
  builder: ShapeBuilder,
  sections: readonly Section[],
  sides: number,
  ends: { readonly first?: number; readonly last?: number; readonly steps?: number } = {},
): void {
  const [first, last] = [sections[0], sections[sections.length - 1]];
  const start = ends.first === undefined ? [] : dome(first, ends.first, sides, ends.steps).reverse();
  const end = ends.last === undefined ? [] : dome(last, ends.last, sides, ends.steps);
  loft(builder, [...start, ...sections.map((section) => ringOf(section, sides)), ...end]);
}

/** A level section out of a table of sections, by height; beyond the table its ends hold. */
export function sectionAt(sections: readonly Section[], y: number): Section {
  let upper = 1;
  const rising = sections[sections.length - 1].y > sections[0].y;
  while (upper < sections.length - 1 && (rising ? sections[upper].y < y : sections[upper].y > y)) upper += 1;
  const [a, b] = [sections[upper - 1], sections[upper]];
  const share = Math.min(1, Math.max(0, (y - a.y) / (b.y - a.y)));
  const between = (from: number, to: number) => from + (to - from) * share;
  return {
    y,
    half: between(a.half, b.half),
    front: between(a.front, b.front),
    back: between(a.back, b.back),
    x: between(a.x ?? 0, b.x ?? 0),
    z: between(a.z ?? 0, b.z ?? 0),
    square: between(a.square ?? 2, b.square ?? 2),
  };
}

/** A ball with radii of its own, rings from pole to pole along y. */
export function ball(builder: ShapeBuilder, centre: Vec3, radii: Vec3, rings = 4, sides = 8): void {
  const rows: Ring[] = [];
  for (let k = 0; k <= rings; k += 1) {
    const turn = Math.PI * (k / rings);
    const y = centre[1] - cos(turn) * radii[1];
    const share = sin(turn);
    if (k === 0 || k === rings) rows.push([[centre[0], y, centre[2]]]);
    else {
      rows.push(
        ringOf(
          {
            y,
            half: radii[0] * share,
            front: radii[2] * share,
            back: radii[2] * share,
            x: centre[0],
            z: centre[2],
          },
          sides,
        ),
      );
    }
  }
  loft(builder, rows);
}

/** A round member through points, each with a radius: fingers, brows, tails. Rings lie square to the way through. */
export function strand(
  builder: ShapeBuilder,
  points: readonly { readonly at: Vec3; readonly radii: readonly [number, number] }[],
  side: Vec3,
  sides = 6,
): void {
  const rings = points.map(({ at, radii }, k): Ring => {
    const before = points[Math.max(0, k - 1)].at;
    const after = points[Math.min(points.length - 1, k + 1)].at;
    const along: Vec3 = [after[0] - before[0], after[1] - before[1], after[2] - before[2]];
    const cross: Vec3 = [
      along[1] * side[2] - along[2] * side[1],
      along[2] * side[0] - along[0] * side[2],
      along[0] * side[1] - along[1] * side[0],
    ];
    const size = hypot(...cross) || 1;
    if (radii[0] === 0 && radii[1] === 0) return [at];
    return Array.from({ length: sides }, (_, n): Vec3 => {
      const turn = (2 * Math.PI * n) / sides;
      const [c, s] = [cos(turn) * radii[0], (sin(turn) * radii[1]) / size];
      return [
        at[0] + side[0] * c + cross[0] * s,
        at[1] + side[1] * c + cross[1] * s,
        at[2] + side[2] * c + cross[2] * s,
      ];
    });
  });
  loft(builder, rings);
}
