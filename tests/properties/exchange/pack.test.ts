import { expect, test } from 'vitest';
import { nightOf } from '../../../src/core/night/nightOf';
import { packingOf } from '../../../src/core/night/packing/packingOf';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { assembleReport } from '../../../src/core/report/report';
import { fingerprintOf } from '../../../src/exchange/fingerprint';
import { packPdf } from '../../../src/exchange/pdf/pack';
import { standingOf } from '../../../src/exchange/pdf/standing';
import type { PackInput } from '../../../src/exchange/pdf/types';
import { randomPlan } from '../../plans/crowd';
import { fullRoof } from '../../plans/fullRoof';
import { fewCases } from '../../thorough';
import { readPdf } from '../../unit/exchange/pdf/readPdf';

/** All of a pack but what lenses see, which takes long and is told in words that other tests hold. */
function unseen(plan: Plan, paper: PackInput['paper']): PackInput {
  const night = nightOf(plan);
  const ground = { why: 'Not asked for.' };
  const report = assembleReport(plan, []);
  return {
    plan,
    report,
    night,
    packing: packingOf(plan, night),
    ground,
    standing: standingOf(plan, 'm'),
    // A link takes a second, and adds the same to every page: tests of its own hold it.
    link: null,
    fingerprint: fingerprintOf(plan),
    paper,
    lengths: 'm',
  };
}

/** What a reader finds of a name that may be broken over lines. */
const close = (text: string): string => text.normalize('NFC').replaceAll(/[\s\u00a0]+/g, '');

async function holds(plan: Plan, paper: PackInput['paper']): Promise<void> {
  const input = unseen(plan, paper);
  const { bytes, pages: count, notes } = await packPdf(input);
  const { pages } = await readPdf(bytes);
  expect(pages).toHaveLength(count);
  const sides = paper === 'a4' ? [595.28, 841.89] : [612, 792];
  for (const { width, height } of pages) {
    const [short, long] = [width, height].toSorted((a, b) => a - b);
    expect(short).toBeCloseTo(sides[0], 1);
    expect(long).toBeCloseTo(sides[1], 1);
  }
  const all = close(pages.map(({ text }) => text).join(' '));
  if (notes.length > 0) return;
  for (const { label } of plan.setups) expect(all).toContain(close(label));
  for (const { label } of input.packing) expect(all).toContain(close(label));
  for (const { sentence } of input.report.cautions)
    for (const word of sentence.split(' ')) expect(all).toContain(close(word));
  // Nothing is drawn at places that are no numbers.
  for (const { paths } of pages) for (const side of paths.flat()) expect(Number.isFinite(side)).toBe(true);
}

test.each(Array.from({ length: fewCases(20) }, (_, k) => k + 1))(
  'a random plan has a pack that another reader reads: seed %i',
  async (seed) => {
    await holds(randomPlan(seed), seed % 2 === 0 ? 'a4' : 'letter');
  },
);

test('so has a roof with something of everything', async () => {
  await holds(fullRoof(), 'a4');
});
