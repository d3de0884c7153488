import { beforeEach, expect, test } from 'vitest';
import { planStore } from '../../../src/desk/planStore';
import { moveCrosshair } from '../../../src/desk/tools/crosshair';
import { pickTool, pointAt, press, pressDown, pressUp, putDown } from '../../../src/desk/tools/drawing';
import { toolStore } from '../../../src/desk/tools/toolStore';
import { box, drawing, lamp, wired } from '../../plans/wired';

const CATCHING = { reachMetres: 0.2, free: false, straight: false };
const FREE = { ...CATCHING, free: true };
const LAMP = lamp('lamp', { place: { at: [4, 0, 4] } });
const BOX = box('box', {}, [8, 0, 4]);

const cables = () => planStore.getState().plan.gear.flatMap((gear) => (gear.kind === 'cable' ? [gear] : []));
const pressAt = (x: number, z: number, aim = CATCHING): void => {
  pointAt([x, z], aim);
  press();
};

beforeEach(() => {
  putDown();
  const plan = wired([LAMP, BOX, drawing('kettle', 1500, 1, {}, [6, 0, 4.5])]);
  planStore.getState().startWith(plan, 'wired.plan.json');
  pickTool({ type: 'draw', entryId: 'cable' });
});

test('a cable drawn from a lamp ends at the box that it reaches, plugged in at both ends, as one step', () => {
  pointAt([4.1, 4.1], CATCHING);
  expect(toolStore.getState().stroke?.why.map(({ word }) => word)).toContain('plugs into the lamp');
  press();
  pressAt(8.1, 3.95);
  expect(cables().map(({ plugs, path }) => [plugs, path])).toEqual([
    [
      { from: 'lamp', to: 'box' },
      [
        [4, 4],
        [8, 4],
      ],
    ],
  ]);
  expect(planStore.temporal.getState().pastStates.length).toBe(1);
  // The tool stays for the next one, with nothing begun.
  expect(toolStore.getState().stroke?.corners).toEqual([]);
});

test('one drag from the lamp to the box is enough', () => {
  pointAt([4, 4], CATCHING);
  pressDown();
  pointAt([8, 4], CATCHING);
  pressUp(true);
  expect(cables().map(({ plugs }) => plugs)).toEqual([{ from: 'lamp', to: 'box' }]);
});

test('by keys alone', () => {
  moveCrosshair(0, 0, { coarse: false, fine: false, start: [4, 4] });
  press();
  for (let step = 0; step < 60 && cables().length === 0; step += 1) {
    moveCrosshair(1, 0, { coarse: false, fine: false, start: [4, 4] });
    if (toolStore.getState().stroke?.why.some(({ word }) => word === 'plugs into the box')) press();
  }
  expect(cables().map(({ plugs }) => plugs)).toEqual([{ from: 'lamp', to: 'box' }]);
});

test('it goes round corners, past what stands aside, and past anything where the hand catches on nothing', () => {
  pressAt(4, 4);
  pressAt(6, 5);
  expect(cables()).toEqual([]);
  pressAt(6, 4.5, FREE);
  expect(cables()).toEqual([]);
  pressAt(8, 4);
  expect(cables()[0]?.path.length).toBe(4);
});
