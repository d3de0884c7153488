import type { KeySideFinding } from '../../../core/continuity/keySide';
import type { KeyTurn } from '../../../core/continuity/keySideTurn';
import { turnItems } from '../../../core/plan/edits/turnItems';
import type { Plan } from '../../../core/plan/schema/plan';
import { nameOf } from '../../../core/report/continuity/names';
import { formatDegrees } from '../../../core/units/angles';
import { type Proposal, ProposalActs } from './ProposalActs';

const labelOf = (plan: Plan, id: string): string => plan.gear.find((gear) => gear.id === id)?.label ?? id;

/** The key turned about somebody with all that holds it, its aim and what feeds it. */
const turned = (plan: Plan, turn: KeyTurn): Plan =>
  turnItems(plan, {
    ids: turn.moves.map(({ itemId }) => itemId),
    byDegrees: turn.turnDegrees,
    about: turn.about,
  });

/** Turns the key back to the side that the other setup has it on. */
export function KeySideActs({ plan, finding }: { readonly plan: Plan; readonly finding: KeySideFinding }) {
  const { turn, performerId } = finding;
  if (!turn) return null;
  const name = nameOf(plan, performerId);
  const degrees = formatDegrees(Math.abs(turn.turnDegrees), 0);
  const isLocked = turned(plan, turn) === plan;
  const propose = (): Proposal => ({
    name: 'turn the key',
    done: `${labelOf(plan, turn.keyId)} has gone round ${name}.`,
    change: (from) => turned(from, turn),
    stands: turn.moves.map(({ itemId, from, to }) => ({ from, to, label: labelOf(plan, itemId) })),
  });
  return (
    <>
      <ProposalActs
        word={`Turn the key ${degrees} to camera ${turn.cameraSide} about ${name}`}
        propose={propose}
        disabled={isLocked}
      />
      {isLocked ? (
        <p className="q">
          {labelOf(plan, turn.moves[0]?.itemId ?? turn.keyId)} is locked and stays where it is.
        </p>
      ) : null}
    </>
  );
}
