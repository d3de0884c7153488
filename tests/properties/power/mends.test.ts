import { expect, test } from 'vitest';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { withMend } from '../../../src/core/power/mend/withMend';
import { powerOf } from '../../../src/core/power/powerOf';
import { mendedSentences } from '../../../src/core/report/power/mending';
import { powerReport } from '../../../src/core/report/power/powerReport';
import { type Draw, drawFrom } from '../../plans/draw';
import { box, cable, drawing, generator, wired } from '../../plans/wired';
import { cases } from '../../thorough';

const CASES = cases(60);

/** Supplies, boxes and loads with cables from anything to anything: rings, joined supplies, overloads, ends in the air. */
function tangle(draw: Draw): Plan {
  const count = (most: number): readonly number[] => Array.from({ length: draw.whole(1, most) }, (_, k) => k);
  const gear = [
    ...count(2).map((k) => generator(`genny-${k}`)),
    ...count(2).map((k) => box(`box-${k}`)),
    ...count(4).map((k) => drawing(`load-${k}`, draw.whole(0, 2400))),
  ];
  const some = (): string => gear[draw.whole(0, gear.length - 1)].id;
  const cables = count(7).map((k) =>
    cable(`cable-${k}`, draw.whole(0, 9) > 0 ? some() : null, some(), draw.between(2, 90), {
      wire: { awg: [18, 14, 12][draw.whole(0, 2)] },
      ...(draw.whole(0, 2) === 0 ? { circuit: draw.whole(1, 4) } : {}),
      ...(draw.whole(0, 3) === 0 ? { coiledShare: 0.5 } : {}),
    }),
  );
  return wired([...gear, ...cables]);
}

const toldOf = (plan: Plan) => mendedSentences(plan, powerReport(plan, 8).sentences, powerOf(plan, 8));

test('whatever is offered leaves a plan that can be read, in which that sentence is said no more', () => {
  let tried = 0;
  for (let seed = 1; seed <= CASES; seed += 1) {
    const plan = tangle(drawFrom(seed));
    for (const { sentence, mends } of toldOf(plan))
      for (const mend of mends) {
        const after = withMend(plan, mend);
        const why = `seed ${seed}, ${JSON.stringify(mend)}: ${sentence}`;
        expect(parsePlan(after).ok, why).toBe(true);
        // What a person says, or looks for ways, is done elsewhere.
        if (mend.act === 'say' || mend.act === 'connect') continue;
        tried += 1;
        expect(after, why).not.toBe(plan);
        expect(
          toldOf(after).map((told) => told.sentence),
          why,
        ).not.toContain(sentence);
      }
  }
  expect(tried).toBeGreaterThan(CASES);
});
