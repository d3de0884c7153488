import { flushSync } from 'react-dom';
import { useStore } from 'zustand';
import { cautionsStore, notedKeys } from '../../desk/cautions/cautionsStore';
import { usePlanState } from '../../desk/hooks';
import { nightViewStore } from '../../desk/night/nightView';
import { sessionStore } from '../../desk/sessionStore';
import { bringIntoSight } from '../parts/bringIntoSight';
import { CautionGlyph } from '../sheet/night/cautions/CautionGlyph';
import { unnotedWords } from './waiting';

function goToCautions(): void {
  // What is scrolled to has to be there.
  flushSync(() => {
    nightViewStore.setState({ view: 'cautions' });
    sessionStore.getState().setSheet('night');
  });
  bringIntoSight('.sheet');
}

/** How many cautions wait for a note; a press goes to them. Nothing before the roof has been looked over, and where none waits. */
export function CautionsWaiting() {
  const found = useStore(cautionsStore, (state) => state.found);
  const plan = usePlanState((state) => state.plan);
  const { count, breaks, spoken } = unnotedWords(found ?? [], notedKeys(plan));
  if (count === 0) return null;
  const word = count === 1 ? 'caution' : 'cautions';
  return (
    <button
      type="button"
      className="bare cautions-waiting"
      title={`${count} ${word} ${spoken}`}
      onClick={goToCautions}
    >
      <span aria-hidden="true">
        <CautionGlyph standing={breaks ? 'breaks' : 'said'} noted={false} />
      </span>
      {count}
      <span className="word-of">{word}</span>
      <span className="vh">{spoken}</span>
    </button>
  );
}
