import { renderToStaticMarkup } from 'react-dom/server';
import { beforeEach, describe, expect, test } from 'vitest';
import { highlightsOver } from '../../../../src/core/light/wetFloor';
import { addArea } from '../../../../src/core/plan/edits/addArea';
import { changeArea } from '../../../../src/core/plan/edits/changeArea';
import type { Spot } from '../../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import { wetnessAt } from '../../../../src/core/plan/wetness';
import { chooseArea, chooseMade, chosenAreaIn, chosenAreaStore } from '../../../../src/desk/chosenArea';
import { planStore } from '../../../../src/desk/planStore';
import { sessionStore } from '../../../../src/desk/sessionStore';
import { actionsFor } from '../../../../src/screens/actions/registry';
import { wordOf } from '../../../../src/screens/actions/types';
import { hitAt } from '../../../../src/screens/overhead/geometry/hits';
import { decksOf } from '../../../../src/screens/overhead/geometry/roof';
import { groundOf } from '../../../../src/screens/overhead/ground';
import { handlesOf } from '../../../../src/screens/overhead/handles/handlesOf';
import { shiningAt, shiningWords } from '../../../../src/screens/overhead/highlights/shining';
import { hitShapesOf } from '../../../../src/screens/overhead/hitShapes';
import { keyOf, movedTo, moveName } from '../../../../src/screens/overhead/targets';
import { WetLayer } from '../../../../src/screens/overhead/wet/WetLayer';
import { areaLettering, spokenArea } from '../../../../src/screens/overhead/wet/words';
import { DEMO, readPlan } from '../../../plans/readPlan';

const square = (x: number, z: number, half: number): Spot[] => [
  [x - half, z - half],
  [x + half, z - half],
  [x + half, z + half],
  [x - half, z + half],
];

const demo = readPlan(DEMO);
const DRY: Plan = { ...demo, ground: { surface: 'concrete', wetness: 'dry' } };
const WET = addArea(addArea(DRY, { wetness: 'puddled', outline: square(9.5, 6.6, 1) }), {
  wetness: 'dry',
  outline: square(10, 7.1, 0.25),
});
const AREA = 'area-1';
const toPane = ([x, z]: readonly [number, number]): [number, number] => [400 + x * 25, 300 + z * 25];

beforeEach(() => chooseArea(null));

describe('a wet area on the overhead', () => {
  test('is chosen instead of things, and let go of for them', () => {
    chooseMade(WET, AREA);
    expect([chosenAreaIn(WET), chosenAreaIn(DRY)]).toEqual([AREA, null]);
    sessionStore.getState().setSelectedId('deck');
    expect(chosenAreaStore.getState().areaId).toBeNull();
    chooseArea(AREA);
    expect(sessionStore.getState().selectedIds).toEqual([]);
  });

  test('is hit where nothing else is within reach, and moves as a whole', () => {
    const shapes = hitShapesOf(WET, 10, null, toPane);
    const target = { type: 'area', areaId: AREA } as const;
    expect(hitAt(shapes, toPane([9, 6.5]), 16)?.target).toEqual(target);
    const stand = WET.gear.find((gear) => gear.kind === 'stand');
    if (stand?.kind !== 'stand') throw new Error('the demo has a stand');
    const under = addArea(WET, { wetness: 'damp', outline: square(stand.at[0], stand.at[2], 0.9) });
    const at = toPane([stand.at[0] + 0.6, stand.at[2]]);
    expect(hitAt(hitShapesOf(under, 10, null, toPane), at, 16)?.target.type).toBe('item');
    const moved = movedTo(WET, target, [6.5, 4.6]);
    expect([wetnessAt(moved, [7, 5]), wetnessAt(moved, [10.3, 5.8])]).toEqual(['puddled', 'dry']);
    expect(moveName(WET, target, [])).toBe('move puddled area 1');
    expect(groundOf(WET, keyOf(target), 0)?.outline).toEqual(WET.ground.areas?.[0].outline);
  });

  test('has its corners as handles while it is chosen', () => {
    const handles = handlesOf({
      plan: WET,
      ids: [],
      areaId: AREA,
      setupId: null,
      seconds: 0,
      lengths: 'm',
      perMetre: 25,
      at: toPane,
    });
    expect(handles.map(({ kind }) => kind)).toEqual([...Array(4).fill('corner'), ...Array(4).fill('insert')]);
    expect(handles[1].name).toBe('Corner 2 of 4 of puddled area 1');
    const pulled = handles[1].pull(WET, {
      to: [11, 4],
      moved: [0, 0],
      straight: false,
      free: true,
      reachMetres: 0,
    });
    expect(pulled.ground.areas?.[0].outline[1]).toEqual([11, 4]);
    expect(handles[0].remove?.(WET).ground.areas?.[0].outline).toHaveLength(3);
  });

  test('is lettered and read out, and hatched but where another lies over it', () => {
    const named = changeArea(WET, { id: AREA, patch: { label: 'By the tank' } });
    expect([areaLettering(WET.ground, AREA), areaLettering(named.ground, AREA)]).toEqual([
      'puddled',
      'by the tank, puddled',
    ]);
    expect(spokenArea(named.ground, AREA)).toBe('By the tank, puddled area of the ground');
    const drawn = (plan: Plan): string =>
      renderToStaticMarkup(<WetLayer ground={plan.ground} decks={decksOf(plan)} chosenId={AREA} />);
    expect(drawn(DRY)).toBe('');
    expect(drawn(WET).match(/fill="url\(#ink-\w+\)"/g)).toEqual(['fill="url(#ink-puddled)"']);
    expect(drawn(WET)).toContain('mask="url(#wet-area-1)"');
    expect(drawn(WET)).toContain('aria-pressed="true" aria-label="Puddled area 1 of the ground"');
    const wet: Plan = { ...WET, ground: { ...WET.ground, wetness: 'wet down' } };
    expect(drawn(wet).match(/fill="url\(#ink-\w+\)"/g)).toHaveLength(2);
  });

  test('is dried, wetted and taken out by the words of the ground', () => {
    planStore.getState().startWith(WET, 'wet.plan.json');
    const plan = () => planStore.getState().plan;
    const doing = (at: Spot | null) => {
      const context = { plan: plan(), ids: [], setupId: null, at };
      return { context, actions: actionsFor(context) };
    };
    const words = (at: Spot | null) => doing(at).actions.map((action) => wordOf(action, doing(at).context));
    expect(words([8.7, 5.8])).toEqual(
      expect.arrayContaining(['How wet this area is', 'Dry a patch from here']),
    );
    expect(words([0, 0])).toEqual(expect.arrayContaining(['How wet the ground is', 'Wet a patch from here']));
    expect(words([0, 0])).not.toContain('Take this area out');
    const act = (at: Spot | null, id: string, choice?: string): void => {
      const { context, actions } = doing(at);
      const action = actions.find((each) => each.id === id);
      const chosen =
        choice === undefined ? action : action?.more?.(context).find((each) => each.id === choice);
      if (!chosen) throw new Error(`no ${id} ${choice}`);
      chosen.act(context);
    };
    act([8.7, 5.8], 'wet-here', 'wet-damp');
    expect(wetnessAt(plan(), [8.7, 5.8])).toBe('damp');
    act([0, 0], 'wet-here', 'wet-puddled');
    expect(plan().ground.wetness).toBe('puddled');
    chooseArea(AREA);
    act(null, 'remove-area');
    expect(plan().ground.areas?.map(({ id }) => id)).toEqual(['area-2']);
    expect(chosenAreaStore.getState().areaId).toBeNull();
  });
});

test('what shines in the floor is told with its lamp and its stops, while it is in frame', () => {
  const setup = demo.setups.find(({ id }) => id === 'high');
  if (!setup) throw new Error('the demo has a high setup');
  const highlights = highlightsOver(demo, setup);
  const [from] = highlights[0].spans[0];
  const shining = shiningAt(demo, setup, from, highlights);
  expect(shining.length).toBeGreaterThan(0);
  expect(shiningWords(shining[0])).toMatch(/^.+ in the floor, [+\u2212]\d+\.\d$/);
  expect(shiningAt(demo, setup, from + 1000, highlights)).toEqual([]);
});
