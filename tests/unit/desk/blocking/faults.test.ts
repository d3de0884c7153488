import { expect, test } from 'vitest';
import { moveMark } from '../../../../src/core/plan/edits/moveMark';
import { setCheat } from '../../../../src/core/plan/edits/setCheat';
import { blockingStore } from '../../../../src/desk/blocking/blockingStore';
import { mendOf } from '../../../../src/desk/blocking/faultsStore';
import { onlyInStore } from '../../../../src/desk/blocking/onlyIn';
import { toldFaults } from '../../../../src/desk/blocking/toldFaults';
import { liveStore } from '../../../../src/desk/liveStore';
import { planStore } from '../../../../src/desk/planStore';
import { sessionStore } from '../../../../src/desk/sessionStore';
import { walkShows } from '../../../../src/scene/walk/walkShows';
import { DEMO, readPlan } from '../../../plans/readPlan';

const demo = readPlan(DEMO);
/** Nuno begins behind the pigeon loft, and his way to N2 leads through it. */
const blocked = moveMark(demo, { performerId: 'nuno', markId: 'n1', to: [-0.5, -7.2] });

test('a fault goes over without its edit, which is found again in the plan and gone once it is made', () => {
  planStore.getState().startWith(blocked, 'blocked.plan.json');
  const told = toldFaults(blocked);
  expect(structuredClone(told)).toEqual(told);
  const walk = told.find(({ about }) => about === 'walk');
  if (!walk) throw new Error('the walk goes through the loft');
  expect(walk).toMatchObject({ mendName: 'walk round', performerId: 'nuno', markId: 'n2' });
  const mend = mendOf(walk);
  if (!mend) throw new Error('there is a way round');
  planStore.getState().edit(mend.name, mend.edit);
  expect(toldFaults(planStore.getState().plan).some(({ about }) => about === 'walk')).toBe(false);
  expect(mendOf(walk)).toBeNull();
});

test('the walk-round has the cast as a setup plays it while its marks are cheated, and a proposed move beside the plan', () => {
  const [wide, other] = demo.setups;
  const plan = setCheat(demo, { setupId: wide.id, performerId: 'vera', markId: 'v3', at: [1.5, 1.2] });
  planStore.getState().startWith(plan, 'cheated.plan.json');
  sessionStore.setState({ sheet: 'blocking', roofView: 'walk round', setupId: wide.id });
  const veraIn = (): readonly number[] | undefined => walkShows().plan.cast[1]?.marks[2]?.at;
  expect(veraIn()).toEqual(demo.cast[1].marks[2].at);
  onlyInStore.setState({ setupId: wide.id });
  expect(veraIn()).toEqual([1.5, 1.2]);
  sessionStore.setState({ setupId: other.id });
  expect(veraIn()).toEqual(demo.cast[1].marks[2].at);

  onlyInStore.setState({ setupId: null });
  liveStore.getState().beginGesture('nuno');
  liveStore.getState().moveGesture(moveMark(plan, { performerId: 'nuno', markId: 'n1', to: [3, 3] }));
  blockingStore.setState({ proposing: 'nuno' });
  const { plan: solid, proposed } = walkShows();
  expect(solid.cast[0].marks[0].at).toEqual(plan.cast[0].marks[0].at);
  expect(proposed?.plan.cast[0].marks[0].at).toEqual([3, 3]);
  blockingStore.setState({ proposing: null });
  expect(walkShows().proposed).toBeNull();
  liveStore.getState().dropGesture();
});
