import { spanOf } from '../../core/optics/camera';
import { goToSeconds, setupOf, stepFrames, stepSetup } from '../../desk/choose';
import { choosePlanFile, savePlanFile } from '../../desk/files';
import { livePlan, liveStore } from '../../desk/liveStore';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';

/** One thing that keys do. */
export interface Shortcut {
  /** As the key sheet shows them. */
  readonly keys: readonly string[];
  readonly word: string;
  readonly matches: (event: KeyboardEvent) => boolean;
  readonly act: () => void;
  /** Holds while typing in a field, too. */
  readonly always?: boolean;
}

const withCommand = (event: KeyboardEvent): boolean => (event.ctrlKey || event.metaKey) && !event.altKey;
const plain = (event: KeyboardEvent): boolean => !event.ctrlKey && !event.metaKey && !event.altKey;
/** By the letter, or by where it is on the board: either finds the key on a layout that lacks the other. */
const isKey = (event: KeyboardEvent, key: string, code: string): boolean =>
  event.key.toLowerCase() === key || event.code === code;

function goToEnd(end: 0 | 1): void {
  const plan = livePlan();
  const setup = setupOf(plan, sessionStore.getState().setupId);
  if (setup) goToSeconds(spanOf(plan, setup)[end]);
}

/** A gesture is dropped before a choice is given up. */
function dropOrClear(): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (gesture) dropGesture();
  else sessionStore.getState().setSelectedId(null);
}

/** All keys but the arrows, which the nudge has; the key sheet lists those too. */
export const SHORTCUTS: readonly Shortcut[] = [
  {
    keys: ['['],
    word: 'setup before',
    matches: (event) => plain(event) && isKey(event, '[', 'BracketLeft'),
    act: () => stepSetup(-1),
  },
  {
    keys: [']'],
    word: 'setup after',
    matches: (event) => plain(event) && isKey(event, ']', 'BracketRight'),
    act: () => stepSetup(1),
  },
  {
    keys: ['Space'],
    word: 'play or pause',
    matches: (event) => plain(event) && event.code === 'Space',
    act: () => {
      const { playing, setPlaying } = liveStore.getState();
      setPlaying(!playing);
    },
  },
  {
    keys: [','],
    word: 'a frame back',
    matches: (event) => plain(event) && event.key === ',',
    act: () => stepFrames(-1),
  },
  {
    keys: ['.'],
    word: 'a frame on',
    matches: (event) => plain(event) && event.key === '.',
    act: () => stepFrames(1),
  },
  {
    keys: ['Home'],
    word: 'start of the move',
    matches: (event) => plain(event) && event.key === 'Home',
    act: () => goToEnd(0),
  },
  {
    keys: ['End'],
    word: 'end of the move',
    matches: (event) => plain(event) && event.key === 'End',
    act: () => goToEnd(1),
  },
  {
    keys: ['1'],
    word: 'the sheet Set',
    matches: (event) => plain(event) && isKey(event, '1', 'Digit1') && !event.shiftKey,
    act: () => sessionStore.getState().setSheet('set'),
  },
  {
    keys: ['2'],
    word: 'the sheet Frames',
    matches: (event) => plain(event) && isKey(event, '2', 'Digit2') && !event.shiftKey,
    act: () => sessionStore.getState().setSheet('frames'),
  },
  {
    keys: ['Esc'],
    word: 'drop a move, or choose nothing',
    matches: (event) => event.key === 'Escape',
    act: dropOrClear,
  },
  {
    keys: ['Ctrl Z', 'Cmd Z'],
    word: 'undo',
    matches: (event) => withCommand(event) && !event.shiftKey && isKey(event, 'z', 'KeyZ'),
    act: () => planStore.getState().undo(),
  },
  {
    keys: ['Shift Ctrl Z', 'Shift Cmd Z'],
    word: 'redo',
    matches: (event) => withCommand(event) && event.shiftKey && isKey(event, 'z', 'KeyZ'),
    act: () => planStore.getState().redo(),
  },
  {
    keys: ['Ctrl S', 'Cmd S'],
    word: 'save the plan',
    always: true,
    matches: (event) => withCommand(event) && isKey(event, 's', 'KeyS'),
    act: () => void savePlanFile(),
  },
  {
    keys: ['Ctrl O', 'Cmd O'],
    word: 'open a plan',
    always: true,
    matches: (event) => withCommand(event) && isKey(event, 'o', 'KeyO'),
    act: () => void choosePlanFile(),
  },
];
