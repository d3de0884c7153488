import { parsePlan } from '../../../../src/core/plan/parse';
import type { Mark, Performer } from '../../../../src/core/plan/schema/cast';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { rooftop } from '../../core/plan/edits/rooftop';

/** The same plan, once it was read from its file; throws with what is wrong in it. */
export function sound(plan: Plan): Plan {
  const read = parsePlan(JSON.parse(JSON.stringify(plan)));
  if (!read.ok) throw new Error(read.faults.map(({ sentence }) => sentence).join('\n'));
  return plan;
}

/** The mark of that id. */
export function markOf(plan: Plan, performerId: string, markId: string): Mark {
  const mark = plan.cast.find(({ id }) => id === performerId)?.marks.find(({ id }) => id === markId);
  if (!mark) throw new Error(`${performerId} has no mark ${markId}`);
  return mark;
}

/** A small roof with two who look at each other, a walk round, a pass, a line and a cheat; beats at 0, 4 and 8 s. */
export function twoOnARoof(): Plan {
  const roof = rooftop();
  const [abel] = roof.cast;
  const standing = { stance: 'stand', headingDegrees: 90, holdSeconds: 1 } as const;
  const first: Performer = {
    ...abel,
    prop: 'box',
    marks: [
      { ...standing, id: 'm1', beat: 'begin', at: [0, 0], looks: { who: 'bea' } },
      {
        ...standing,
        id: 'm2',
        beat: 'end',
        at: [4, 0],
        faces: { point: [4, 1, -5] },
        looks: { turnDegrees: 30, tiltDegrees: -10 },
        facesOnTheWay: { point: [1, 1, 1] },
        way: {
          through: [
            [1, 1],
            [3, 1],
          ],
          line: 'curved',
        },
      },
    ],
  };
  const second: Performer = {
    ...abel,
    id: 'bea',
    label: 'Bea',
    figure: 'female',
    statureMetres: 1.7,
    marks: [
      { ...standing, id: 'm1', beat: 'begin', at: [2, -2], faces: { who: 'abel' } },
      { ...standing, id: 'm2', beat: 'middle', at: [2, -1] },
    ],
  };
  const [setup] = roof.setups;
  const [firstKey, lastKey] = setup.move.keys;
  return sound({
    ...roof,
    beats: [roof.beats[0], { id: 'middle', label: 'Middle', atSeconds: 4 }, roof.beats[1]],
    cast: [first, second],
    passes: [{ id: 'p', beat: 'middle', from: 'abel', to: 'bea' }],
    lines: [{ id: 'l', pair: ['abel', 'bea'], establishedBy: setup.id }],
    setups: [
      {
        ...setup,
        cheats: [
          { performer: 'bea', mark: 'm2', at: [2.5, -1], headingDegrees: 100 },
          { performer: 'abel', mark: 'm1', at: [0, 0.4] },
        ],
        span: { from: 'begin', to: 'middle' },
        move: {
          ...setup.move,
          keys: [firstKey, { ...lastKey, beat: 'middle', atSeconds: 1 }, { ...lastKey, atSeconds: 7 }],
        },
      },
    ],
  });
}
