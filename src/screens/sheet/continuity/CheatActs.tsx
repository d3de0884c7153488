import type { CheatFinding } from '../../../core/continuity/cheats';
import { removeCheat } from '../../../core/plan/edits/removeCheat';
import type { Plan } from '../../../core/plan/schema/plan';
import { letterOf, nameOf } from '../../../core/report/continuity/names';
import { type Proposal, ProposalActs } from './ProposalActs';

/** Takes somebody's cheats of a setup back to the master's marks. */
export function CheatActs({ plan, finding }: { readonly plan: Plan; readonly finding: CheatFinding }) {
  const { setupId, performerId } = finding;
  const name = nameOf(plan, performerId);
  const propose = (): Proposal => ({
    name: 'take back a cheat',
    done: `${letterOf(plan, setupId)} has ${name} where the master does.`,
    change: (from) => removeCheat(from, { setupId, performerId }),
  });
  return <ProposalActs word={`Play ${name} as the master does`} propose={propose} />;
}
