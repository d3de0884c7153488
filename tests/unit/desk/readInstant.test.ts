import { beforeEach, expect, test } from 'vitest';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { SetupReport } from '../../../src/core/report/types';
import { liveStore } from '../../../src/desk/liveStore';
import { readInstant } from '../../../src/desk/readInstant';
import { reportStore } from '../../../src/desk/reportStore';
import { sessionStore } from '../../../src/desk/sessionStore';
import { crowdedPlan } from '../../plans/crowd';

const plan = crowdedPlan(6, 5, 1, 1);
const [CHOSEN, ...OTHERS] = ['s3', 's1', 's2', 's4', 's5'];

beforeEach(() => {
  sessionStore.setState({ setupId: CHOSEN });
  liveStore.setState({ gesture: null, playing: false });
  reportStore.setState({ live: null, stopped: false, instantTrouble: null });
});

/** A worker that notes what it is asked, and what somebody does after so many answers. */
function asked(meanwhile: (answers: number) => void = () => undefined) {
  const read: string[] = [];
  return {
    read,
    worker: {
      read: async (_: Plan, setupId: string, seconds: number | null): Promise<SetupReport> => {
        read.push(setupId);
        meanwhile(read.length);
        const at = seconds ?? Number.NaN;
        const angles = { horizontal: 40, vertical: 20 };
        return { id: setupId, label: setupId, seconds: [at, at], angles, aspect: 2, items: [] };
      },
    },
  };
}

const known = (): readonly string[] => (reportStore.getState().live ?? []).map(({ id }) => id);
const latest = () => true;

test('the chosen setup is read first, then all others, or it alone', async () => {
  const alone = asked();
  await readInstant(alone.worker, { plan, seconds: 0.5, all: false }, latest);
  expect(alone.read).toEqual([CHOSEN]);
  const all = asked();
  await readInstant(all.worker, { plan, seconds: 0.5, all: true }, latest);
  expect(all.read[0]).toBe(CHOSEN);
  expect(all.read.slice(1).toSorted()).toEqual(OTHERS);
  expect(known()).toEqual([CHOSEN, ...OTHERS]);
});

test('once somebody stops the reading no other setup is begun, and what is known stays', async () => {
  const { read, worker } = asked((answers) => {
    if (answers === 2) reportStore.setState({ stopped: true });
  });
  await readInstant(worker, { plan, seconds: 0.5, all: true }, latest);
  expect(read).toHaveLength(2);
  expect(known()).toHaveLength(2);
  // The clock is moved after that: the setup that is looked at follows, and nothing else.
  await readInstant(worker, { plan, seconds: 0.75, all: true }, latest);
  expect(read.slice(2)).toEqual([CHOSEN]);
});

test('what is dragged is followed in every setup, stopped or not', async () => {
  reportStore.setState({ stopped: true });
  liveStore.setState({ gesture: { itemId: plan.gear[0]?.id ?? '', draft: plan } });
  const { read, worker } = asked();
  await readInstant(worker, { plan, seconds: 0.5, all: true }, latest);
  expect(read.toSorted()).toEqual([CHOSEN, ...OTHERS].toSorted());
});

test('something newer ends it after the next of the others, which take turns from one to the next', async () => {
  const { read, worker } = asked();
  for (let count = 0; count < OTHERS.length; count += 1)
    await readInstant(worker, { plan, seconds: 0.5, all: true }, () => false);
  expect(read.filter((id) => id === CHOSEN)).toHaveLength(OTHERS.length);
  expect(read.filter((id) => id !== CHOSEN).toSorted()).toEqual(OTHERS);
});
