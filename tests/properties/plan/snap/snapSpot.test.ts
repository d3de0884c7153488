import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { snapSpot } from '../../../../src/core/plan/snap/snapSpot';
import type {
  At,
  SnapEdge,
  SnapPoint,
  SnapRequest,
  SnapResult,
  SnapThings,
} from '../../../../src/core/plan/snap/types';

type Asked = Omit<SnapRequest, 'around'> & SnapThings;
const snapped = ({ edges, points, ...asked }: Asked): SnapResult =>
  snapSpot({ ...asked, around: () => ({ edges, points }) });

const metres = fc.double({ min: -12, max: 12, noNaN: true });
const spot = fc.tuple(metres, metres) as fc.Arbitrary<[number, number]>;
const edges = fc.array(fc.tuple(spot, spot), { maxLength: 6 }).map((legs) =>
  legs
    .filter(([a, b]) => Math.hypot(a[0] - b[0], a[1] - b[1]) > 0.05)
    .map(
      ([from, to], index): SnapEdge => ({
        from,
        to,
        name: `wall ${index}`,
        word: `along wall ${index}`,
        key: `wall ${index}`,
        rim: index % 2 === 0,
      }),
    ),
);
const points = fc.array(spot, { maxLength: 8 }).map((spots) =>
  spots.map(
    (at, index): SnapPoint => ({
      at,
      kind: index % 2 === 0 ? 'end' : 'middle',
      name: `post ${index}`,
      word: `at post ${index}`,
      key: `post ${index}`,
    }),
  ),
);
const request = fc.record<Asked>({
  at: spot,
  from: fc.option(spot),
  grid: fc.option(fc.constantFrom(0.05, 0.1, 0.25, 0.5, 1)),
  reach: fc.double({ min: 0.05, max: 1, noNaN: true }),
  edges,
  points,
  square: fc.constant([
    { degrees: 30, name: 'the last leg' },
    { degrees: 0, name: 'the deck' },
  ]),
  distances: fc.array(
    fc.double({ min: 0.5, max: 9, noNaN: true }).map((length) => ({ metres: length, word: 'same length' })),
    { maxLength: 2 },
  ),
  gaps: fc.constant([{ metres: 1.2, word: 'same gap' }]),
  axisDegrees: fc.constantFrom(0, 17),
  straight: fc.boolean(),
});

const apart = (a: At, b: At): number => Math.hypot(a[0] - b[0], a[1] - b[1]);
const keysOf = (result: SnapResult): string[] => result.why.map(({ key }) => key);
/** How far a place is from the endless line through two others. */
const aside = (at: At, from: At, to: At): number =>
  Math.abs((at[0] - from[0]) * (to[1] - from[1]) - (at[1] - from[1]) * (to[0] - from[0])) / apart(from, to);

describe('a snapped place', () => {
  test.prop([request], { numRuns: 500 })('is within reach, or within a cell of the grid', (asked) => {
    const { at, why } = snapped({ ...asked, straight: false });
    const cell =
      asked.grid === null || !why.some(({ kind }) => kind === 'grid') ? 0 : asked.grid * Math.SQRT1_2;
    const caught = why.some(({ kind }) => kind !== 'grid') ? asked.reach : 0;
    expect(apart(at, asked.at)).toBeLessThanOrEqual(caught + cell + 1e-6);
  });

  test.prop([request], { numRuns: 500 })('lies exactly on what it names', (asked) => {
    const { at, why } = snapped(asked);
    for (const { kind, key } of why) {
      const point = asked.points.find((each) => each.key === key);
      if (point) expect(apart(at, point.at)).toBe(0);
      const edge = asked.edges.find((each) =>
        [`edge ${each.key}`, `on ${each.key}`, `before ${each.key}`].includes(key),
      );
      if (edge) expect(aside(at, edge.from, edge.to)).toBeLessThan(1e-6);
      if (kind === 'edge' && edge) {
        const beyond = apart(at, edge.from) + apart(at, edge.to) - apart(edge.from, edge.to);
        expect(beyond).toBeLessThan(1e-5);
      }
      const length = /^length (\d+)$/.exec(key);
      if (length && asked.from) {
        expect(apart(at, asked.from)).toBeCloseTo(
          asked.distances?.[Number(length[1])]?.metres ?? Number.NaN,
          6,
        );
      }
    }
  });

  test.prop([request], { numRuns: 500 })('stays where it is once it is there', (asked) => {
    const first = snapped(asked);
    const again = snapped({ ...asked, at: first.at, held: keysOf(first) });
    expect(apart(again.at, first.at)).toBeLessThan(1e-6);
  });

  test.prop([request])('is the same whenever it is asked for', (asked) => {
    expect(snapped(asked)).toEqual(snapped(asked));
  });

  test.prop([request, fc.constantFrom(30, 90, 137), spot], { numRuns: 500 })(
    'goes along when the whole roof is moved and turned, as long as no grid is asked for',
    (asked, turnDegrees, by) => {
      const radians = (turnDegrees * Math.PI) / 180;
      const [c, s] = [Math.cos(radians), Math.sin(radians)];
      const carried = ([x, z]: At): [number, number] => [x * c - z * s + by[0], x * s + z * c + by[1]];
      const turned: Asked = {
        ...asked,
        grid: null,
        at: carried(asked.at),
        from: asked.from ? carried(asked.from) : null,
        edges: asked.edges.map((edge) => ({ ...edge, from: carried(edge.from), to: carried(edge.to) })),
        points: asked.points.map((point) => ({ ...point, at: carried(point.at) })),
        square: (asked.square ?? []).map((each) => ({ ...each, degrees: each.degrees + turnDegrees })),
        axisDegrees: (asked.axisDegrees ?? 0) + turnDegrees,
      };
      const [here, there] = [snapped({ ...asked, grid: null }), snapped(turned)];
      expect(apart(carried(here.at), there.at)).toBeLessThan(1e-5);
    },
  );

  test.prop([request], { numRuns: 300 })('is where the hand is while nothing is within reach', (asked) => {
    const alone = snapped({ ...asked, grid: null, edges: [], points: [], from: null });
    expect(alone).toEqual({ at: asked.at, why: [] });
  });
});
