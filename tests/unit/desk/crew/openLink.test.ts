import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { crewStore } from '../../../../src/desk/crew/crewStore';
import { keptLinksStore } from '../../../../src/desk/crew/kept/keptLinks';
import { openLink, stopReading } from '../../../../src/desk/crew/openLink';
import { NOT_MOVED, overheadStore } from '../../../../src/desk/crew/overhead/overheadStore';
import { FIRST_PLACE } from '../../../../src/desk/crew/place';
import { linkOfPlan, planOfLink } from '../../../../src/exchange/link/link';
import { smallRoof } from '../../smallRoof';
import { withFakeWorkers } from '../linkReader/fakeWorkers';

const plan = smallRoof();
const { fragment } = linkOfPlan(plan);
const reading = planOfLink(fragment);
/** As it is written into the browser's history. */
const history = { state: null as unknown, pushState: vi.fn(), replaceState: vi.fn() };

beforeEach(() => {
  vi.stubGlobal('localStorage', { getItem: () => null, setItem: () => {} });
  vi.stubGlobal('history', history);
  keptLinksStore.setState({ links: [] });
});
afterEach(() => vi.unstubAllGlobals());

test('the sheet says that it reads, a tab chosen meanwhile stays, and the link is kept once it is read', async () => {
  const workers = withFakeWorkers();
  history.state = { ...FIRST_PLACE, tab: 'times' };
  const opened = openLink(fragment);
  expect(crewStore.getState()).toMatchObject({ shows: 'reading', tab: 'times', fragment });
  expect(keptLinksStore.getState().links).toEqual([]);
  crewStore.getState().go('power');
  workers[0].say({ kind: 'read', reading });
  await opened;
  expect(crewStore.getState()).toMatchObject({ shows: 'plan', tab: 'power', plan: { title: plan.title } });
  expect(keptLinksStore.getState().links).toMatchObject([{ fragment, title: plan.title }]);
  history.state = null;
});

test('a link that is opened while another is read comes instead of it', async () => {
  const workers = withFakeWorkers();
  const first = openLink('1first');
  const second = openLink('2second');
  expect(workers.map(({ isEnded }) => isEnded)).toEqual([true, false]);
  await first;
  expect(crewStore.getState()).toMatchObject({ shows: 'reading', fragment: '2second' });
  const fault = planOfLink('2second');
  workers[1].say({ kind: 'read', reading: fault });
  await second;
  expect(crewStore.getState()).toMatchObject({ shows: 'broken', trouble: !fault.ok && fault.sentence });
});

test('another link’s roof is looked at from the beginning', async () => {
  const workers = withFakeWorkers();
  overheadStore.setState({ chosenId: 'stand', setupId: 'wide', view: { middle: [90, 90], perMetre: 200 } });
  const opened = openLink(fragment);
  expect(overheadStore.getState()).toEqual(NOT_MOVED);
  workers[0].say({ kind: 'read', reading });
  await opened;
});

test('the frame of a setup that lies open by itself opens that setup too, for something has to be in it', () => {
  crewStore.setState({ setupId: null, frameOpen: false });
  crewStore.getState().openFrame('wide');
  expect(crewStore.getState()).toMatchObject({ setupId: 'wide', frameOpen: true });
  crewStore.setState(FIRST_PLACE);
});

test('stopping says so, and keeps nothing', async () => {
  withFakeWorkers();
  const opened = openLink(fragment);
  stopReading();
  await opened;
  expect(crewStore.getState()).toMatchObject({ shows: 'stopped', plan: { setups: [] } });
  expect(keptLinksStore.getState().links).toEqual([]);
});
