import { expect, test } from 'vitest';
import {
  REMEDY_WAYS,
  type RemedyQuestion,
  rankedRemedies,
  remediesFor,
} from '../../../../src/core/clearance/remedies/remediesFor';
import type { Remedy } from '../../../../src/core/clearance/remedies/types';
import { setupReport } from '../../../../src/core/report/setupReport';
import { inOneGo } from '../../../../src/core/units/steps';
import { RemedyTeam } from '../../../../src/desk/remedies/remedyTeam';
import { FIRST_TOLERANCE } from '../../../../src/desk/remedies/toleranceStore';
import { standAt, stillRoof } from '../../clearance/remedies/remedied';

const plan = stillRoof([standAt()]);
const question: RemedyQuestion = {
  setupId: plan.setups[0].id,
  itemId: 'stand',
  tolerance: FIRST_TOLERANCE,
  seen: plan.setups.map((setup) => setupReport(plan, setup)),
};

/** Answers a moment later, as a worker does. */
class Hand {
  readonly asked: string[] = [];
  readonly sent: RemedyQuestion['seen'][] = [];
  hasGivenUp = false;
  async remedies(of: typeof plan, own: RemedyQuestion, tell: (share: number) => void) {
    this.asked.push(...(own.ways ?? []));
    this.sent.push(own.seen);
    tell(0.5);
    await Promise.resolve();
    return this.hasGivenUp ? null : inOneGo(remediesFor(of, own));
  }
  giveUp(): void {
    this.hasGivenUp = true;
  }
}

test('two hands share the ways out, each asked once, and find in the same order what one finds', async () => {
  const hands = [new Hand(), new Hand()];
  const shares: number[] = [];
  const found = await new RemedyTeam(hands).remedies(plan, question, (share) => shares.push(share));
  expect(found).toEqual(inOneGo(remediesFor(plan, question)));
  expect(found?.length).toBeGreaterThan(1);
  expect(hands.flatMap(({ asked }) => asked).toSorted()).toEqual([...REMEDY_WAYS].toSorted());
  expect(hands.every(({ asked }) => asked.length > 1)).toBe(true);
  // What the setups see goes over once to each.
  for (const { sent } of hands) expect(sent).toEqual([question.seen, ...sent.slice(1).map(() => undefined)]);
  expect(Math.max(...shares)).toBeLessThan(1);
  expect(shares).toEqual(shares.toSorted((a, b) => a - b));
});

test('a team that gives up answers null, and asks nobody on', async () => {
  const hands = [new Hand(), new Hand()];
  const team = new RemedyTeam(hands);
  const answer = team.remedies(plan, question, () => undefined);
  team.giveUp();
  expect(await answer).toBeNull();
  expect(hands.flatMap(({ asked }) => asked)).toHaveLength(2);
});

test('a hand whose answer was on its way when it was given up takes no further way', async () => {
  const asked: string[] = [];
  const late = {
    remedies: async (_plan: typeof plan, { ways }: RemedyQuestion) => {
      asked.push(...(ways ?? []));
      return [];
    },
    giveUp: () => undefined,
  };
  const team = new RemedyTeam([late]);
  const answer = team.remedies(plan, question, () => undefined);
  team.giveUp();
  expect(await answer).toBeNull();
  expect(asked).toHaveLength(1);
});

test('a hand that fails ends it for all, with its reason', async () => {
  const broken = { remedies: () => Promise.reject(new Error('no memory')), giveUp: () => undefined };
  const hand = new Hand();
  await expect(new RemedyTeam([broken, hand]).remedies(plan, question, () => undefined)).rejects.toThrow(
    'no memory',
  );
  expect(hand.asked).toHaveLength(1);
  expect(hand.hasGivenUp).toBe(true);
});

test('what is ranked anew keeps its order', () => {
  const found: readonly Remedy[] = inOneGo(remediesFor(plan, question));
  expect(rankedRemedies(plan, found)).toEqual(found);
});
