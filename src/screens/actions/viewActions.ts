import { loopSpan } from '../../desk/blocking/clock';
import { goToSeconds, setupOf, stepFrames, stepSetup } from '../../desk/choose';
import { chooseArea } from '../../desk/chosenArea';
import { setPaneCount } from '../../desk/compare/compareStore';
import { livePlan, liveStore } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';
import { blockingViewStore } from '../sheet/blocking/coverage/view';
import { isKey, plain } from './keys';
import type { Action } from './types';

function goToEnd(end: 0 | 1): void {
  const plan = livePlan();
  goToSeconds(loopSpan(plan, setupOf(plan, sessionStore.getState().setupId))[end]);
}

/** A gesture is dropped before a choice is given up. */
function dropOrClear(): void {
  const { gesture, dropGesture } = liveStore.getState();
  if (gesture) dropGesture();
  else chooseArea(null);
}

/** The chart of coverage; from there back to the timeline. */
function turnToCoverage(): void {
  const { sheet, setSheet } = sessionStore.getState();
  const isThere = sheet === 'blocking' && blockingViewStore.getState().view === 'coverage';
  blockingViewStore.setState({ view: isThere ? 'timeline' : 'coverage' });
  setSheet('blocking');
}

const view = (
  id: string,
  keys: readonly string[],
  word: string,
  matches: (event: KeyboardEvent) => boolean,
  act: () => void,
): Action => ({
  id,
  keys,
  word,
  matches: (event) => plain(event) && matches(event),
  act,
  can: () => true,
  group: 'view',
});

/** Ways of looking; none of them changes the plan. */
export const VIEW_ACTIONS: readonly Action[] = [
  view(
    'setup-before',
    ['['],
    'setup before',
    (event) => isKey(event, '[', 'BracketLeft'),
    () => stepSetup(-1),
  ),
  view(
    'setup-after',
    [']'],
    'setup after',
    (event) => isKey(event, ']', 'BracketRight'),
    () => stepSetup(1),
  ),
  view(
    'play',
    ['Space'],
    'play or pause',
    ({ code }) => code === 'Space',
    () => {
      const { playing, setPlaying } = liveStore.getState();
      setPlaying(!playing);
    },
  ),
  view(
    'frame-back',
    [','],
    'a frame back',
    ({ key }) => key === ',',
    () => stepFrames(-1),
  ),
  view(
    'frame-on',
    ['.'],
    'a frame on',
    ({ key }) => key === '.',
    () => stepFrames(1),
  ),
  view(
    'move-start',
    ['Home'],
    'start of the move, or of the action',
    ({ key }) => key === 'Home',
    () => goToEnd(0),
  ),
  view(
    'move-end',
    ['End'],
    'end of the move, or of the action',
    ({ key }) => key === 'End',
    () => goToEnd(1),
  ),
  view(
    'sheet-set',
    ['1'],
    'the sheet Set',
    (event) => isKey(event, '1', 'Digit1') && !event.shiftKey,
    () => sessionStore.getState().setSheet('set'),
  ),
  view(
    'sheet-blocking',
    ['2'],
    'the sheet Blocking',
    (event) => isKey(event, '2', 'Digit2') && !event.shiftKey,
    () => sessionStore.getState().setSheet('blocking'),
  ),
  view(
    'sheet-frames',
    ['3'],
    'the sheet Frames',
    (event) => isKey(event, '3', 'Digit3') && !event.shiftKey,
    () => sessionStore.getState().setSheet('frames'),
  ),
  view(
    'sheet-light',
    ['4'],
    'the sheet Light',
    (event) => isKey(event, '4', 'Digit4') && !event.shiftKey,
    () => sessionStore.getState().setSheet('light'),
  ),
  view(
    'sheet-night',
    ['5'],
    'the sheet Night',
    (event) => isKey(event, '5', 'Digit5') && !event.shiftKey,
    () => sessionStore.getState().setSheet('night'),
  ),
  view(
    'sheet-crew',
    ['6'],
    'the sheet Crew',
    (event) => isKey(event, '6', 'Digit6') && !event.shiftKey,
    () => sessionStore.getState().setSheet('crew'),
  ),
  view(
    'coverage',
    ['C'],
    'coverage, beat by beat, or the timeline',
    (event) => isKey(event, 'c', 'KeyC') && !event.shiftKey,
    turnToCoverage,
  ),
  ...([1, 2, 4] as const).map((count) =>
    view(
      `compare-${count}`,
      [`Shift ${count}`],
      count === 1 ? 'one setup in the frame' : `${count === 2 ? 'two' : 'four'} setups side by side`,
      (event) => event.code === `Digit${count}` && event.shiftKey,
      () => setPaneCount(count),
    ),
  ),
  view('drop', ['Esc'], 'drop a move, or choose nothing', ({ key }) => key === 'Escape', dropOrClear),
];
