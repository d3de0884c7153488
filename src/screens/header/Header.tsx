import { useStore } from 'zustand';
import { choosePlanFile, savePlanFile } from '../../desk/files';
import { usePlanState, useSession } from '../../desk/hooks';
import { type KeepingState, keepingStore } from '../../desk/keepingStore';
import { planStore } from '../../desk/planStore';
import { Icon } from '../parts/Icon';
import { Menu } from '../parts/Menu';
import { Segmented } from '../parts/Segmented';
import { openShortcutSheet } from '../shortcuts/ShortcutSheet';

const KEPT: Readonly<Record<KeepingState['state'], string>> = {
  starting: '',
  kept: 'kept on this device',
  refused: 'not kept: this browser refuses storage, so save the plan to a file',
  elsewhere: 'not kept: another tab keeps its plan, so save this one to a file',
};

/** `Friday 20 November`, whatever the time zone of whoever looks. */
function dateWords(isoDate: string): string {
  const format = new Intl.DateTimeFormat('en-GB', {
    weekday: 'long',
    day: 'numeric',
    month: 'long',
    timeZone: 'UTC',
  });
  return format.format(new Date(`${isoDate}T00:00:00Z`)).replace(',', '');
}

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
      <button type="button" onClick={() => void choosePlanFile()}>
        Open
      </button>
      <button type="button" onClick={() => void savePlanFile()}>
        Save
      </button>
    </>
  );
}

/** The line along the top: what is open, and what is done to the whole of it. */
export function Header() {
  const title = usePlanState((state) => state.plan.title);
  const date = usePlanState((state) => state.plan.place.date);
  const kept = useStore(keepingStore, (state) => state.state);
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
      <span className="q date">
        {dateWords(date)}
        {kept === 'starting' ? '' : ','}
      </span>
      <span className={kept === 'kept' ? 'q kept' : 'kept not'}>{KEPT[kept]}</span>
      <span className="gap" />
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
      </Menu>
    </header>
  );
}
