import { createContext, memo, type ReactNode, useContext } from 'react';
import { recordsOf } from '../../../core/form/gear';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import { GearSymbol } from '../symbols/GearSymbol';
import { PieceSymbol } from '../symbols/PieceSymbol';

interface ChoiceProps {
  /** Key of the target that is chosen by this group. */
  readonly target: string;
  readonly spoken: string;
  readonly chosen: boolean;
  readonly kind: string;
  readonly children: ReactNode;
}

/** Ids of what is being drawn or put, and is not in the plan yet. */
export const DraftIds = createContext<ReadonlySet<string>>(new Set());

/** A drawing cannot hold a button element: its groups are given the role and a place in the order of focus. */
const asButton = (pressed: boolean) => ({ role: 'button', tabIndex: 0, 'aria-pressed': pressed }) as const;

/** A drawn thing that can be reached by keyboard and is read out. What it does is handled by the sheet as a whole. */
export function Choice({ target, spoken, chosen, kind, children }: ChoiceProps) {
  const draft = useContext(DraftIds).has(target);
  return (
    <g
      className={`choice ${kind}${chosen ? ' chosen' : ''}${draft ? ' draft' : ''}`}
      {...asButton(chosen)}
      aria-label={spoken}
      data-target={target}
    >
      {children}
    </g>
  );
}

interface PieceProps {
  readonly piece: Piece;
  readonly ground: Plan['ground'];
  readonly spoken: string;
  readonly chosen: boolean;
}

/** A set piece; drawn anew only when its own record changes, or what lies on the ground. */
export const PieceGroup = memo(function PieceGroup({ piece, ground, spoken, chosen }: PieceProps) {
  return (
    <Choice target={piece.id} spoken={spoken} chosen={chosen} kind="set-piece">
      <PieceSymbol piece={piece} ground={ground} />
    </Choice>
  );
});

interface GearProps {
  readonly gear: Gear;
  readonly plan: Plan;
  readonly spoken: string;
  readonly chosen: boolean;
}

const sameRecords = (before: GearProps, after: GearProps): boolean => {
  const [old, now] = [recordsOf(before.gear, before.plan), recordsOf(after.gear, after.plan)];
  return old.length === now.length && old.every((record, index) => record === now[index]);
};

/** A piece of gear; drawn anew only when a record that its form comes from changes. */
export const GearGroup = memo(
  function GearGroup({ gear, plan, spoken, chosen }: GearProps) {
    return (
      <Choice target={gear.id} spoken={spoken} chosen={chosen} kind="gear">
        <GearSymbol gear={gear} plan={plan} />
      </Choice>
    );
  },
  (before, after) =>
    before.spoken === after.spoken && before.chosen === after.chosen && sameRecords(before, after),
);
