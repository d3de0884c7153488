import { duplicateItems } from '../../core/plan/edits/duplicateItems';
import { removeItems } from '../../core/plan/edits/removeItems';
import { turnItems } from '../../core/plan/edits/turnItems';
import { itemOf } from '../../core/plan/items';
import { movableOf } from '../../desk/selecting';
import { sessionStore } from '../../desk/sessionStore';
import { ask } from './askStore';
import { copyOut, cutOut, hasClipping, paste } from './clipboard';
import { bring, calledOf, change, namedOf, tell } from './doing';
import { command, commandKeys, letter, plain } from './keys';
import { mirrorChoices } from './mirroring';
import { openPage } from './pages';
import { askRow } from './rows';
import type { Action, ActionContext } from './types';

/** What is put beside something lies this far off, metres. */
const BESIDE: [number, number] = [0.5, 0.5];
const TURN_DEGREES = 15;

const any = ({ ids }: ActionContext): boolean => ids.length > 0;
const movable = ({ plan, ids }: ActionContext): boolean => movableOf(plan, ids).length > 0;

/** The browser's own clipboard takes what the copy event is given; a press on a word has to ask for that event. */
const askBrowser = (what: 'copy' | 'cut', fallBack: () => void): void => {
  if (!document.execCommand(what)) fallBack();
};

function turn({ plan, ids }: ActionContext, byDegrees: number): void {
  change(`turn ${calledOf(plan, ids)}`, (before) => turnItems(before, { ids, byDegrees }));
}

/** Everything that makes more, fewer or other of what is chosen. */
export const SHAPE_ACTIONS: readonly Action[] = [
  {
    id: 'duplicate',
    word: 'Duplicate',
    keys: commandKeys('D'),
    matches: command('d', false),
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ plan, ids }) => {
      bring(`duplicate ${calledOf(plan, ids)}`, (before) => duplicateItems(before, { ids, by: BESIDE }));
    },
  },
  {
    id: 'copy',
    word: 'Copy',
    keys: commandKeys('C'),
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ ids }) => askBrowser('copy', () => copyOut(ids)),
  },
  {
    id: 'cut',
    word: 'Cut',
    keys: commandKeys('X'),
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ ids }) => askBrowser('cut', () => cutOut(ids)),
  },
  {
    id: 'paste',
    word: ({ at }) => (at ? 'Paste here' : 'Paste'),
    keys: commandKeys('V'),
    group: 'shape',
    over: 'ground',
    can: hasClipping,
    act: ({ at }) => paste(at),
  },
  {
    id: 'array',
    word: 'Lay a row of it',
    keys: ['A'],
    matches: letter('a', false),
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ ids }) => askRow(ids),
  },
  {
    id: 'mirror',
    word: 'Mirror',
    keys: ['M'],
    matches: letter('m', false),
    group: 'shape',
    over: 'things',
    can: movable,
    act: (context) => openPage(context, 'mirror'),
    more: (context) => mirrorChoices(context, false),
  },
  {
    id: 'mirror-copy',
    word: 'Mirror a copy',
    keys: ['Shift M'],
    matches: letter('m', true),
    group: 'shape',
    over: 'things',
    can: any,
    act: (context) => openPage(context, 'mirror-copy'),
    more: (context) => mirrorChoices(context, true),
  },
  {
    id: 'turn-right',
    word: `Turn it ${TURN_DEGREES}° clockwise`,
    keys: ['R'],
    matches: letter('r', false),
    group: 'shape',
    over: 'things',
    can: movable,
    act: (context) => turn(context, TURN_DEGREES),
  },
  {
    id: 'turn-left',
    word: `Turn it ${TURN_DEGREES}° back`,
    keys: ['Shift R'],
    matches: letter('r', true),
    group: 'shape',
    over: 'things',
    can: movable,
    act: (context) => turn(context, -TURN_DEGREES),
  },
  {
    id: 'rename',
    word: 'Rename',
    keys: ['F2'],
    matches: (event) => plain(event) && event.key === 'F2',
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ ids }) => ask({ type: 'name', ids }),
  },
  {
    id: 'remove',
    word: 'Take it out',
    keys: ['Delete'],
    matches: (event) => plain(event) && (event.key === 'Delete' || event.key === 'Backspace'),
    group: 'shape',
    over: 'things',
    can: any,
    act: ({ plan, ids }) => {
      const there = ids.filter((id) => itemOf(plan, id) !== null);
      if (!change(`take out ${calledOf(plan, there)}`, (before) => removeItems(before, { ids: there })))
        return;
      sessionStore.getState().setSelectedIds([]);
      tell(`${namedOf(plan, there)} ${there.length > 1 ? 'are' : 'is'} out of the plan.`);
    },
  },
];
