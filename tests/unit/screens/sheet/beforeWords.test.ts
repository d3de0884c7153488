import { describe, expect, test } from 'vitest';
import { beforeShare } from '../../../../src/core/form/photometry/throughBefore';
import { parsePlan } from '../../../../src/core/plan/parse';
import type { Before } from '../../../../src/core/plan/schema/before';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import {
  beforeText,
  scrimWords,
  takenText,
  whiteText,
} from '../../../../src/screens/sheet/fields/beforeWords';
import { fieldsOf } from '../../../../src/screens/sheet/fields/fieldsOf';
import { keyedFace, keyOn } from '../../../plans/keyedFace';

const NBSP = '\u00a0';

test.each([
  [1, 'next to nothing'],
  [0.5, `1.0${NBSP}stop`],
  [0.1, `3.3${NBSP}stops`],
  [0, 'all of it'],
])('a share of %d is taken as %s', (share, text) => {
  expect(takenText(share)).toBe(text);
});

test('scrims are counted', () => {
  expect(scrimWords(0, 0)).toBe('');
  expect(scrimWords(1, 1)).toBe('one double and a single');
  expect(scrimWords(0, 3)).toBe('three singles');
});

describe('what is before a lamp', () => {
  const plan = keyedFace({ gear: keyOn('1', [-2.5, 2.5], [0, 0]), cameras: [] });
  const head = plan.gear.find((gear) => gear.kind === 'head');
  const own = plan.kit.heads.find(({ id }) => id === head?.head);
  function text(before: Before): string | null {
    if (!head || !own) throw new Error('no head');
    return beforeText(own, { ...head, before });
  }
  const sheet = { transmission: 0.6, spreadDegrees: 45 };

  test('is named, with what it takes', () => {
    expect(text({})).toBeNull();
    expect(text({ density: 0.6, singles: 1 })).toBe(`ND${NBSP}0.60, one single, less 2.5${NBSP}stops`);
    expect(text({ mired: -131 })).toMatch(/^full blue, less \d\.\d\u00a0stops$/);
    expect(text({ mired: 40 })).toMatch(/^\+40\u00a0mired, less /);
  });

  test('takes more on the axis than it stops, where it spreads', () => {
    const stops = Number(
      /^half diffusion, less ([\d.]+)\u00a0stops on its axis$/.exec(text({ diffusion: sheet }) ?? '')?.[1],
    );
    expect(stops).toBeGreaterThan(1.5);
    expect(text({ diffusion: { ...sheet, spreadDegrees: 0 } })).toBe(
      `diffusion, less 0.7${NBSP}stops on its axis`,
    );
  });
});

test('the white behind a gel is told to 10 K', () => {
  expect(whiteText(3217)).toBe(`3217${NBSP}K`);
  expect(whiteText(3200, { mired: -131 })).toBe(`5510${NBSP}K`);
});

describe('the fields of what is before a head', () => {
  const plan = keyedFace({ gear: keyOn('1', [-2.5, 2.5], [0, 0]), cameras: [] });
  const head = (of: Plan) => {
    const record = of.gear.find((gear) => gear.kind === 'head');
    if (!record) throw new Error('no head');
    return record;
  };
  const fields = (of: Plan) =>
    fieldsOf(of, { section: 'gear', record: head(of) }, 'm').flatMap((group) => group.fields);
  const field = (of: Plan, label: string) => fields(of).find((spec) => spec.label === label);
  function chosen(of: Plan, label: string, value: string): Plan {
    const spec = field(of, label);
    if (spec?.form !== 'choice') throw new Error(`no choice ${label}`);
    return spec.change(of, value);
  }

  test('a gel by its name is a shift, and back', () => {
    const blue = chosen(plan, 'gel', 'full blue');
    expect(head(blue).before).toEqual({ mired: -131 });
    expect(field(blue, 'shift')).toMatchObject({ value: -131 });
    expect(field(blue, 'takes on axis')).toMatchObject({
      text: takenText(beforeShare({ mired: -131 }, 3200)),
    });
    expect(chosen(blue, 'gel', 'none')).toEqual(plan);
    const shift = field(blue, 'shift');
    const own = shift?.form === 'number' ? shift.change(blue, -90) : blue;
    expect(field(own, 'gel')).toMatchObject({ value: 'own' });
  });

  test('diffusion shows what it passes and how far it spreads, and widens the beam', () => {
    const soft = chosen(plan, 'diffusion', 'half');
    expect(field(soft, 'passes')).toMatchObject({ share: 0.6 });
    expect(field(soft, 'spreads by')).toMatchObject({ value: 45 });
    expect(field(soft, 'beam')).not.toEqual(field(plan, 'beam'));
    expect(field(chosen(soft, 'diffusion', 'none'), 'passes')).toBeUndefined();
  });

  test('what a plan does not take is told', () => {
    for (const [label, value] of [
      ['neutral gel', 9],
      ['doubles', 1.5],
      ['shift', 400],
    ] as const) {
      const spec = field(plan, label);
      expect(spec?.form === 'number' && parsePlan(spec.change(plan, value)).ok, label).toBe(false);
    }
  });
});
