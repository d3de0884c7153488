import { describe, expect, test } from 'vitest';
import { eyelineFindings } from '../../../src/core/continuity/eyelines';
import { lineFindings } from '../../../src/core/continuity/line';
import { neighbourFindings } from '../../../src/core/continuity/neighbours';
import { screenDirectionFindings } from '../../../src/core/continuity/screenDirection';
import { FACE_TO_FACE, MASTER, type StagedSetup, staged } from '../../plans/staged';

// The rules as textbooks and glossaries put them, staged and read off. Where each is read is said beside it.

const single = (
  id: string,
  at: readonly [number, number],
  lookAt: readonly [number, number],
): StagedSetup => ({
  id,
  keys: [{ at, lookAt }],
  lens: 'long',
});

const side = (plan: ReturnType<typeof staged>, setupId: string, performerId: string) =>
  eyelineFindings(plan).find(
    (each) => each.setupId === setupId && each.performerIds[0] === performerId && each.what === 'alone',
  )?.side;

describe('crossing the line, a conversation', () => {
  // bbc.co.uk/academy/production/article/art20130702112135404: "Imagine a straight line between each subject's eyes.
  // If your close-ups are shot from the same side of that line as your wide shot, they will cut together well, because
  // the subjects will appear to be looking in the same direction in both the wide and close shots. If you cross the
  // line […] it will look […] as if the subject has gone from facing right to left to facing left to right".
  const plan = staged({
    cast: FACE_TO_FACE,
    setups: [MASTER, single('same', [1.6, 0.5], [-1, 0]), single('across', [1.6, -0.5], [-1, 0])],
  });

  test('a close-up from the side of the wide looks the same way as in it and cuts', () => {
    expect(side(plan, 'same', 'ana')).toBe(side(plan, 'master', 'ana'));
    expect(lineFindings(plan).find(({ setupId }) => setupId === 'same')?.standing).toBe('holds');
  });

  test('one from the other side looks the other way and breaks', () => {
    expect(side(plan, 'master', 'ana')).toBe('right');
    expect(side(plan, 'across', 'ana')).toBe('left');
    expect(lineFindings(plan).find(({ setupId }) => setupId === 'across')?.standing).toBe('breaks');
  });

  // ukfilmnet.org glossary, 180 degree rule: "should not present the two speakers in such a way that they both look to
  // be talking towards screen left (or both talking towards screen right)".
  test('two singles of which one is across look to one side of the screen, and that breaks', () => {
    const both = (z: number) =>
      eyelineFindings(
        staged({
          cast: FACE_TO_FACE,
          setups: [MASTER, single('a', [1.6, 0.5], [-1, 0]), single('b', [-1.6, z], [1, 0])],
        }),
      ).find(({ what }) => what !== 'alone');
    expect(both(0.5)).toMatchObject({
      what: 'meet',
      standing: 'holds',
      side: 'left',
      against: { side: 'right' },
    });
    expect(both(-0.5)).toMatchObject({ what: 'same way', standing: 'breaks' });
  });
});

describe('ways over the line', () => {
  // gitea.alluna.pt/jfig/workshop-video-editing-basics, 30-180-degree.md, "Three ways to cross cleanly": a neutral shot
  // directly on the axis; a visible camera move across the line within a single shot; a performer who walks across.
  test('a shot on the axis is neutral', () => {
    const plan = staged({
      cast: FACE_TO_FACE,
      setups: [MASTER, { id: 'on', keys: [{ at: [5, 0], heading: 270 }] }],
    });
    expect(lineFindings(plan)[1]).toMatchObject({ what: 'on the line', standing: 'said' });
  });

  test('a move across in one shot takes the viewer to the new side', () => {
    const plan = staged({
      cast: FACE_TO_FACE,
      beats: { start: 0, over: 3, end: 6 },
      setups: [
        MASTER,
        {
          id: 'dolly',
          to: 'over',
          keys: [
            { atSeconds: 0, at: [5, 2], heading: 270 },
            { atSeconds: 3, at: [5, -2], heading: 270 },
          ],
        },
        { id: 'beyond', from: 'over', keys: [{ at: [0, -5] }] },
      ],
    });
    expect(lineFindings(plan).map(({ what, standing }) => [what, standing])).toEqual([
      ['establishes', 'holds'],
      ['crosses', 'said'],
      ['holds', 'holds'],
    ]);
  });

  test('a performer who walks across in one shot does too', () => {
    const plan = staged({
      cast: {
        ana: [{ at: [0, 0], faces: 'bea' }],
        bea: [
          { at: [2, -1], faces: 'ana' },
          { at: [-2, -1], faces: 'ana', beat: 'over' },
        ],
      },
      beats: { start: 0, over: 4, end: 6 },
      lines: [{ id: 'l', pair: ['ana', 'bea'] }],
      setups: [MASTER, { id: 'after', from: 'over', keys: [{ at: [0.5, 5] }] }],
    });
    expect(lineFindings(plan)).toMatchObject([
      { setupId: 'master', what: 'crosses', by: 'cast', reestablishes: true },
      { setupId: 'after', what: 'holds' },
    ]);
  });
});

describe('three people', () => {
  // sadiyass.blogspot.com/2023/09/180-degree-rule.html, as glossaries have it: "The 180-degree rule states that two
  // characters (or more) in a scene should always have the same left/right relationship with each other." So of three,
  // each pair has a line of its own, and a camera that keeps to the line of one pair may be over that of another. Staged
  // as an equal triangle about the middle, whose three lines part the roof in seven fields: inside, three off the sides
  // and three off the corners.
  const spots = { ana: [-1, 0.577], bea: [1, 0.577], cyd: [0, -1.155] } as const;
  const pairs = [
    ['ana', 'bea'],
    ['bea', 'cyd'],
    ['cyd', 'ana'],
  ] as const;
  const whatOf = (at: readonly [number, number]) => {
    const plan = staged({
      cast: {
        ana: [{ at: spots.ana, heading: 120 }],
        bea: [{ at: spots.bea, heading: 240 }],
        cyd: [{ at: spots.cyd, heading: 0 }],
      },
      lines: pairs.map((pair, k) => ({ id: `l${k}`, pair })),
      setups: [MASTER, { id: 'other', keys: [{ at }] }],
    });
    return lineFindings(plan)
      .filter(({ setupId }) => setupId === 'other')
      .map(({ standing }) => standing);
  };

  /** Which of a pair is farther left, seen from a place towards the middle: by bearings alone; 0 in about one line. */
  const leftRight = (at: readonly [number, number], [a, b]: readonly (keyof typeof spots)[]) => {
    const ahead = Math.atan2(-at[0], -at[1]);
    const off = (who: keyof typeof spots) => {
      const bearing = Math.atan2(spots[who][0] - at[0], spots[who][1] - at[1]);
      return Math.atan2(Math.sin(ahead - bearing), Math.cos(ahead - bearing));
    };
    const apart = off(a) - off(b);
    return Math.abs(apart) < 0.2 ? 0 : Math.sign(apart);
  };

  test('off the side of the master holds all three', () => {
    expect(whatOf([0.8, 5])).toEqual(['holds', 'holds', 'holds']);
  });

  test('a pair holds where it has the left and right that the master has, all round', () => {
    const master = [0, 5] as const;
    for (let degrees = 5; degrees < 360; degrees += 15) {
      const turn = (degrees * Math.PI) / 180;
      const at = [6 * Math.sin(turn), 6 * Math.cos(turn)] as const;
      const found = whatOf(at);
      pairs.forEach((pair, k) => {
        const seen = leftRight(at, pair);
        if (seen === 0) return;
        const told = seen === leftRight(master, pair) ? 'holds' : 'breaks';
        expect(found[k], `${degrees} degrees round, ${pair}`).toBe(told);
      });
    }
  });

  test('off the next corner is over one line, off the next side over that and another, behind over all but one', () => {
    expect(whatOf([5, 2])).toEqual(['holds', 'breaks', 'holds']);
    expect(whatOf([5, -2])).toEqual(['breaks', 'breaks', 'holds']);
    expect(whatOf([0, -5])).toEqual(['breaks', 'breaks', 'breaks']);
  });
});

describe('the 30-degree rule', () => {
  // en.wikipedia.org/wiki/30-degree_rule: "the camera should move at least 30 degrees relative to the subject between
  // successive shots of the same subject. If the camera moves less than 30 degrees, the transition between shots can look
  // like a jump cut"; "the axial cut does not follow the 30-degree guideline".
  const turned = (degrees: number, metres: number) => {
    const turn = (degrees * Math.PI) / 180;
    // Eyes lie some 10 cm before the spot; the camera goes round the spot, far enough for that not to count.
    const plan = staged({
      cast: { ana: [{ at: [0, 0], heading: 180 }] },
      setups: [
        { id: 'a', keys: [{ at: [0, 9] }], lens: 'long' },
        { id: 'b', keys: [{ at: [metres * Math.sin(turn), metres * Math.cos(turn)] }], lens: 'long' },
      ],
    });
    return neighbourFindings(plan)[0].standing;
  };

  test.each([
    [0, 'breaks'],
    [28, 'breaks'],
    [32, 'holds'],
    [90, 'holds'],
  ])('%i degrees round at one size', (degrees, standing) => {
    expect(turned(degrees, 9)).toBe(standing);
  });

  test('straight in by several sizes is an axial cut', () => {
    expect(turned(0, 2)).toBe('holds');
  });
});

describe('screen direction', () => {
  const walk = { ana: [{ at: [-2, 0] }, { at: [2, 0], beat: 'end' }] } as const;
  const front = { id: 'front', keys: [{ at: [0, 6] }] } as const;
  const back = { id: 'back', keys: [{ at: [0, -6] }] } as const;
  const standings = (setups: readonly StagedSetup[]) =>
    screenDirectionFindings(staged({ cast: walk, setups })).map(({ standing }) => standing);

  // dofmaster.com/courses/basic/photographycourse-343.html: "When the camera is positioned on the same side of the action
  // axis each time it is moved for a series of shots, the screen direction remains the same".
  test('remains the same from one side of the action axis', () => {
    expect(
      standings([front, { id: 'b', keys: [{ at: [3, 5] }] }, { id: 'c', keys: [{ at: [-3, 5] }] }]),
    ).toEqual(['holds', 'holds', 'holds']);
  });

  // tpub.com/photography1/ph209262.htm: "When a shot suddenly shows a subject traveling in the opposite direction to the
  // previous shot, the audience will get the impression that the subject has turned around".
  test('is turned round by a shot from the other side', () => {
    expect(standings([front, back])).toEqual(['holds', 'breaks']);
  });

  // armycommunications.tpub.com/SS0535/SS05350034.htm: "move out in front for a head-on shot, or behind for a tail away
  // shot, either shot is neutral in direction. Now you can pick up the action from the opposite side".
  test.each([
    ['head-on', { id: 'n', keys: [{ at: [8, 0], heading: 270 }] }],
    ['tail away', { id: 'n', keys: [{ at: [-8, 0], heading: 90 }] }],
  ] as const)('may change after a %s shot', (_, neutral) => {
    expect(standings([front, neutral, back])).toEqual(['holds', 'holds', 'said']);
  });
});
