import { useMemo } from 'react';
import { useStore } from 'zustand';
import { played } from '../../../core/plan/played';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { blockingStore } from '../../../desk/blocking/blockingStore';
import { type Lines, linesOnRoof } from '../../../desk/blocking/lines';
import { useOnlyIn } from '../../../desk/blocking/onlyIn';
import { useContinuity } from '../../../desk/continuityStore';
import { useSession } from '../../../desk/hooks';
import type { BlockingLettering } from './lines';

/** What the overhead draws of the blocking besides the cast. */
export interface RoofBlocking {
  /** None while another sheet is open. */
  readonly lines: Lines;
  readonly lettering: BlockingLettering | null;
  /** The one mark that is chosen; null where that is of somebody who is not. */
  readonly markId: string | null;
  /** The setup that marks are cheated for; null where the master is seen. */
  readonly onlyIn: Setup | null;
}

const NO_LINES: Lines = { pairs: [], over: new Set() };

/** `master` is the committed plan, without what any setup cheats; `chosenId` the one thing that is chosen. */
export function useBlocking(master: Plan, chosenId: string | null): RoofBlocking {
  const open = useSession((state) => state.sheet === 'blocking');
  const found = useContinuity((state) => state.setups);
  const thing = useStore(blockingStore, (state) => state.chosen);
  const onlyIn = useOnlyIn(master);
  const lines = useMemo(() => (open ? linesOnRoof(master, found) : NO_LINES), [open, master, found]);
  const lettering = useMemo((): BlockingLettering | null => {
    if (!open) return null;
    const cheating = onlyIn && played(master, onlyIn) !== master ? { master, setup: onlyIn } : null;
    return { lines, cheating };
  }, [open, lines, master, onlyIn]);
  const markId = thing?.type === 'mark' && thing.performerId === chosenId ? thing.markId : null;
  return { lines, lettering, markId, onlyIn };
}
