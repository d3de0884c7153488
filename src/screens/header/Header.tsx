import { useStore } from 'zustand';
import { choosePlanFile, savePlanFile } from '../../desk/files';
import { usePlanState, useSession } from '../../desk/hooks';
import { type KeepingState, keepingStore } from '../../desk/keepingStore';
import { planStore } from '../../desk/planStore';
import { openPlans } from '../../desk/plans/plansStore';
import { Icon } from '../parts/Icon';
import { Menu } from '../parts/Menu';
import { Segmented } from '../parts/Segmented';
import { nightWords } from '../plans/words';
import { openShortcutSheet } from '../shortcuts/ShortcutSheet';
import { CautionsWaiting } from './CautionsWaiting';
import './header.css';

const KEPT: Readonly<Record<KeepingState['state'], string>> = {
  starting: '',
  kept: 'kept on this device',
  full: 'not kept: this device has no room left',
  refused: 'not kept: this browser refuses storage',
  held: 'not kept: another tab holds an older Standclear, so close that one',
  newer: 'not kept: a newer Standclear has the plans of this device, so load this page again',
};

const SLOW = 'not kept yet: this device is slow to write';

function HistoryButtons() {
  const canUndo = useStore(planStore.temporal, (state) => state.pastStates.length > 0);
  const canRedo = useStore(planStore.temporal, (state) => state.futureStates.length > 0);
  const { undo, redo } = planStore.getState();
  return (
    <>
      <button
        type="button"
        className="icon"
        aria-label="Undo"
        title="Undo"
        disabled={!canUndo}
        onClick={undo}
      >
        <Icon name="undo" />
      </button>
      <button
        type="button"
        className="icon"
        aria-label="Redo"
        title="Redo"
        disabled={!canRedo}
        onClick={redo}
      >
        <Icon name="redo" />
      </button>
    </>
  );
}

function LengthChoice() {
  const lengths = useSession((state) => state.lengths);
  const setLengths = useSession((state) => state.setLengths);
  return (
    <Segmented
      label="Lengths in"
      choices={[
        { value: 'm', word: 'm' },
        { value: 'ft-in', word: 'ft-in' },
      ]}
      chosen={lengths}
      onChoose={setLengths}
    />
  );
}

function FileButtons() {
  return (
    <>
      <button type="button" onClick={() => void openPlans()}>
        Plans
      </button>
      <button type="button" onClick={() => void choosePlanFile()}>
        Open
      </button>
      <button type="button" onClick={() => void savePlanFile()}>
        Save
      </button>
    </>
  );
}

/** Whether the plan would outlive the page; where it would not, why, and the way to save it all the same. */
function Kept() {
  const kept = useStore(keepingStore, (state) => state.state);
  const slow = useStore(keepingStore, (state) => state.slow);
  const isSlow = slow && kept === 'kept';
  if (!isSlow && (kept === 'starting' || kept === 'kept'))
    return <span className="q kept">{KEPT[kept]}</span>;
  return (
    <span className="kept not" role="status">
      {isSlow ? SLOW : KEPT[kept]}.{' '}
      <button type="button" className="link" onClick={() => void savePlanFile()}>
        Save it to a file
      </button>
    </span>
  );
}

/** The line along the top: what is open, and what is done to the whole of it. */
export function Header() {
  const title = usePlanState((state) => state.plan.title);
  const date = usePlanState((state) => state.plan.place.date);
  const theme = useSession((state) => state.theme);
  const setTheme = useSession((state) => state.setTheme);
  const otherTheme = theme === 'night' ? 'day' : 'night';
  return (
    <header className="top">
      <h1 className="word">
        <svg className="v" aria-hidden="true">
          <use href="#g-clear" />
        </svg>
        <span>Standclear</span>
      </h1>
      <h2 title={title}>{title}</h2>
      <span className="q date">{nightWords(date)},</span>
      <Kept />
      <span className="gap" />
      <CautionsWaiting />
      <HistoryButtons />
      <LengthChoice />
      <button
        type="button"
        className="icon"
        aria-label={`Turn to ${otherTheme}`}
        title={`Turn to ${otherTheme}`}
        onClick={() => setTheme(otherTheme)}
      >
        <Icon name={otherTheme} />
      </button>
      <button type="button" className="bare keys" onClick={openShortcutSheet}>
        Keys
      </button>
      <span className="files">
        <FileButtons />
      </span>
      <Menu className="more" word="more">
        <LengthChoice />
        <FileButtons />
        <button type="button" onClick={openShortcutSheet}>
          Keys
        </button>
      </Menu>
    </header>
  );
}
