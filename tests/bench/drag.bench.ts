import { readFileSync } from 'node:fs';
import { spanOf } from '../../src/core/optics/camera';
import { moveItem } from '../../src/core/plan/edits/moveItem';
import { parsePlanText } from '../../src/core/plan/parse';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Setup } from '../../src/core/plan/schema/setup';
import { setupReport } from '../../src/core/report/setupReport';
import { medianMs, ms, printTable } from './table';

/** What a drag asks for at each step: the stand's form anew, then verdicts of the chosen setup, then of all stills. */
const parsed = parsePlanText(readFileSync('assets/loft-night.plan.json', 'utf8'));
if (!parsed.ok) throw new Error(parsed.faults[0].sentence);
const plan = parsed.value;
let step = 0;
const dragged = () => {
  step += 1;
  return moveItem(plan, { id: 'stand-2', to: [6.5 + (step % 40) * 0.05, -6.9] });
};
const stillOf = (draft: Plan, setup: Setup) =>
  setupReport(draft, setup, { at: spanOf(draft, setup)[0], briefly: true });

const [chosen] = plan.setups;
const begun = medianMs(1, () => stillOf(dragged(), chosen));
// The worker that answers a drag has read the whole plan before: its code is warm.
for (let round = 0; round < 10; round += 1) {
  for (const setup of plan.setups) stillOf(dragged(), setup);
}
const one = medianMs(41, () => stillOf(dragged(), chosen));
const all = medianMs(11, () => {
  const draft = dragged();
  for (const setup of draft.setups) stillOf(draft, setup);
});
printTable([
  {
    what: 'after a drag step: the chosen setup of the demo',
    reach: 'the next frame, 16.7 ms',
    reached: `${ms(one)}; in a worker that has just begun ${ms(begun)}`,
  },
  {
    what: `after a drag step: stills of all ${plan.setups.length} setups`,
    reach: '≤ 150 ms',
    reached: ms(all),
  },
]);
