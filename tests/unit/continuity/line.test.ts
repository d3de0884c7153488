import { describe, expect, test } from 'vitest';
import { type LineFinding, lineFindings } from '../../../src/core/continuity/line';
import { lineReading } from '../../../src/core/continuity/lineSide';
import { linesWanted } from '../../../src/core/continuity/linesWanted';
import { FACE_TO_FACE, MASTER, type Staged, staged } from '../../plans/staged';

const findings = (plan: Partial<Staged>): readonly LineFinding[] =>
  lineFindings(staged({ cast: FACE_TO_FACE, setups: [MASTER], ...plan }));

const of = (all: readonly LineFinding[], setupId: string): readonly LineFinding[] =>
  all.filter((each) => each.setupId === setupId);

/** From five metres at the right of the pair, past the end of their line, from one side of it to the other. */
const CROSSING = {
  id: 'crossing',
  keys: [
    { atSeconds: 0, at: [5, 2], heading: 270 },
    { atSeconds: 3, at: [5, -1], heading: 270 },
  ],
} as const;

describe('how a camera lies to a line', () => {
  test('in metres and degrees, worked by hand', () => {
    const reading = lineReading([-1, 0, 0], [1, 0, 0], [4, 1.5, 3]);
    // Square to the line 3 m; 5 m along it from the first, 3 m from the second.
    expect(reading?.metres).toBeCloseTo(3, 12);
    expect(reading?.anglesDegrees[0]).toBeCloseTo(30.9638, 4);
    expect(reading?.anglesDegrees[1]).toBeCloseTo(45, 10);
  });

  test('there is none through one spot', () => {
    expect(lineReading([1, 0, 1], [1, 0, 1.1], [4, 1.5, 3])).toBeNull();
  });
});

describe('the line of a pair', () => {
  test('is set by the first setup that frames both, and held to', () => {
    const all = findings({
      setups: [{ id: 'single', keys: [{ at: [0.4, 1.5], lookAt: [-1, 0] }], lens: 'long' }, MASTER],
    });
    expect(all.map(({ setupId, what, standing }) => [setupId, what, standing])).toEqual([
      ['single', 'holds', 'holds'],
      ['master', 'establishes', 'holds'],
    ]);
    expect(all[0].againstId).toBe('master');
    expect(all[1].side).toBe('left');
    expect(all[1].metres).toBeCloseTo(5, 12);
    expect(all[1].angleDegrees).toBeCloseTo(78.6901, 4);
  });

  test('is stood over from its other side, by how much is said', () => {
    const [, over] = findings({ setups: [MASTER, { id: 'reverse', keys: [{ at: [3, -1] }] }] });
    expect(over).toMatchObject({
      what: 'over',
      standing: 'breaks',
      side: 'right',
      wantedSide: 'left',
      againstId: 'master',
    });
    expect(over.metres).toBeCloseTo(1, 12);
    // Of ana, four metres along the line, atan(1/4); she is framed, and the nearer bea at the frame's edge too.
    expect(over.angleDegrees).toBeCloseTo(14.0362, 4);
    expect(over.spans).toEqual([[0, 4]]);
  });

  test('is crossed in frame at the very frame, and the setups that begin later follow', () => {
    const beats = { start: 0, later: 3, end: 4 };
    const far = { keys: [{ at: [0, -5] }] } as const;
    const all = findings({
      beats,
      setups: [
        MASTER,
        { ...CROSSING, to: 'later' },
        { id: 'after', ...far, from: 'later' },
        { id: 'during', ...far, to: 'later' },
        { id: 'back', keys: [{ at: [0, 5] }], from: 'later' },
      ],
    });
    // The camera is at z = 2 − t: on the line at 2 s, over it a frame later.
    const [crossing] = of(all, 'crossing');
    expect(crossing).toMatchObject({ what: 'crosses', standing: 'said', by: 'camera', reestablishes: true });
    expect(crossing.atSeconds).toBeCloseTo(2 + 1 / 24, 12);
    expect(crossing.side).toBe('right');
    expect(of(all, 'after')[0]).toMatchObject({ what: 'holds', againstId: 'crossing' });
    expect(of(all, 'during')[0]).toMatchObject({ what: 'over', againstId: 'master' });
    expect(of(all, 'back')[0]).toMatchObject({ what: 'over', againstId: 'crossing' });
  });

  test('follows nobody who crosses before the establishing setup in the plan, or with one of the two alone', () => {
    const beats = { start: 0, later: 3, end: 4 };
    const tight = { ...CROSSING, to: 'later', lens: 'long' } as const;
    const all = findings({
      beats,
      setups: [
        { id: 'early', keys: [{ at: [0, -5] }], from: 'later' },
        MASTER,
        {
          ...tight,
          keys: [
            { atSeconds: 0, at: [0.6, 1.5], lookAt: [-1, 0] },
            { atSeconds: 3, at: [0.6, -1.5], lookAt: [-1, 0] },
          ],
        },
        { id: 'after', keys: [{ at: [0, 5] }], from: 'later' },
      ],
      lines: [{ id: 'l', pair: ['ana', 'bea'], establishedBy: 'master' }],
    });
    expect(of(all, 'early')[0].what).toBe('over');
    expect(of(all, 'crossing')[0]).toMatchObject({ what: 'crosses', reestablishes: false });
    expect(of(all, 'after')[0]).toMatchObject({ what: 'holds', againstId: 'master' });
  });

  test('is crossed by the cast past a camera that stands', () => {
    const [crossing] = findings({
      cast: {
        ana: [{ at: [0, 0], heading: 0 }],
        bea: [
          { at: [2, -1], heading: 270 },
          { at: [-2, -1], heading: 90, beat: 'end' },
        ],
      },
      lines: [{ id: 'l', pair: ['ana', 'bea'] }],
    });
    expect(crossing).toMatchObject({ what: 'crosses', by: 'cast', side: 'right' });
    // She passes behind ana half way.
    expect(crossing.atSeconds).toBeGreaterThan(1.9);
    expect(crossing.atSeconds).toBeLessThan(2.1);
  });

  test('is neutral within five degrees of it, and settles nothing from there', () => {
    const all = findings({
      setups: [{ id: 'frontal', keys: [{ at: [5, 0.3], heading: 270 }] }, MASTER],
      lines: [{ id: 'l', pair: ['ana', 'bea'], establishedBy: 'frontal' }],
    });
    // Of ana, six metres along: atan(0.3/6); of bea more.
    expect(of(all, 'frontal')[0]).toMatchObject({ what: 'on the line', standing: 'said', side: null });
    expect(of(all, 'frontal')[0].angleDegrees).toBeCloseTo(2.8624, 4);
    expect(of(all, 'master')[0].what).toBe('establishes');
  });

  test('is left alone where there is none: nobody there, one spot, nobody in frame', () => {
    const absent = findings({
      cast: { ...FACE_TO_FACE, bea: [] },
      lines: [{ id: 'l', pair: ['ana', 'bea'] }],
    });
    expect(absent).toMatchObject([{ what: 'absent', standing: 'said', metres: null }]);
    const together = findings({
      cast: { ana: [{ at: [0, 0] }], bea: [{ at: [0, 0.1] }] },
      lines: [{ id: 'l', pair: ['ana', 'bea'] }],
    });
    expect(together).toMatchObject([{ what: 'together', standing: 'said' }]);
    const away = { id: 'away', keys: [{ at: [0, 5], heading: 180 }] } as const;
    const lines = [{ id: 'l', pair: ['ana', 'bea'], establishedBy: 'away' }];
    expect(findings({ setups: [MASTER, away], lines }).map(({ what }) => what)).toEqual([
      'establishes',
      'frames neither',
    ]);
  });

  test('is judged for each of three pairs on its own', () => {
    const triangle = {
      ana: [{ at: [-1, 0], heading: 45 }],
      bea: [{ at: [1, 0], heading: 315 }],
      cyd: [{ at: [0, -2], heading: 180 }],
    } as const;
    const pairs = [
      ['ana', 'bea'],
      ['bea', 'cyd'],
      ['ana', 'cyd'],
    ];
    const all = findings({
      cast: triangle,
      // Between bea and cyd from outside the triangle: over the one line and no other.
      setups: [MASTER, { id: 'aside', keys: [{ at: [4, 0.5], lookAt: [0, -1] }] }],
      lines: pairs.map((pair, k) => ({ id: `l${k}`, pair })),
    });
    expect(of(all, 'aside').map(({ pair, what }) => [...pair, what])).toEqual([
      ['ana', 'bea', 'holds'],
      ['bea', 'cyd', 'over'],
      ['ana', 'cyd', 'holds'],
    ]);
  });
});

describe('lines that are wanted', () => {
  test('are those of who face each other, whether the plan says so or not', () => {
    const plan = staged({
      cast: { ...FACE_TO_FACE, cyd: [{ at: [0, -3], heading: 0 }] },
      setups: [MASTER],
    });
    expect(linesWanted(plan)).toEqual([{ pair: ['ana', 'bea'], seconds: 4 }]);
    expect(lineFindings(plan)).toMatchObject([{ lineId: null, pair: ['ana', 'bea'] }]);
  });

  test('are none of those that the plan has, and an empty list asks for none', () => {
    const lines = [{ id: 'l', pair: ['bea', 'ana'] }];
    expect(linesWanted(staged({ cast: FACE_TO_FACE, setups: [MASTER], lines }))).toEqual([]);
    const none = staged({ cast: FACE_TO_FACE, setups: [MASTER], lines: [] });
    expect(linesWanted(none)).toHaveLength(1);
    expect(lineFindings(none)).toEqual([]);
  });
});
