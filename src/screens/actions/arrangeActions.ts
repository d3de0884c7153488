import { alignToFrame, type FrameLine } from '../../core/clearance/alignToFrame';
import { groupItems } from '../../core/plan/edits/groupItems';
import { hideItems } from '../../core/plan/edits/hideItems';
import { lockItems } from '../../core/plan/edits/lockItems';
import { ungroupItems } from '../../core/plan/edits/ungroupItems';
import { type Item, itemOf, itemsOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { letterOf, setupOf } from '../../desk/choose';
import { liveStore } from '../../desk/liveStore';
import { chooseAll } from '../../desk/selecting';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';
import { calledOf, change, namedOf, tell } from './doing';
import { command, commandKeys, letter } from './keys';
import { openPage } from './pages';
import type { Action, ActionContext } from './types';

const recordsOf = ({ plan, ids }: ActionContext): readonly Item['record'][] =>
  ids.flatMap((id) => itemOf(plan, id)?.record ?? []);
const allLocked = (context: ActionContext): boolean =>
  context.ids.length > 0 && recordsOf(context).every(({ locked }) => locked);
const anyHidden = (plan: Plan): boolean => itemsOf(plan).some(({ record }) => record.hidden);
const any = ({ ids }: ActionContext): boolean => ids.length > 0;

/** What a line of the frame is called where something is to be put on it. */
const FRAME_WORDS: readonly (readonly [FrameLine, string])[] = [
  ['left', 'On the frame line at the left'],
  ['left third', 'On the left third'],
  ['centre', 'On the centre line'],
  ['right third', 'On the right third'],
  ['right', 'On the frame line at the right'],
  ['just outside left', 'Just outside, at the left'],
  ['just outside right', 'Just outside, at the right'],
];

/** Puts each of the things to a line of the frame that is looked through, at the instant of the clock. */
function putToFrame({ plan, ids, setupId }: ActionContext, to: FrameLine, word: string): void {
  const setup = setupOf(plan, setupId);
  if (!setup) return;
  const { seconds } = liveStore.getState();
  let why: string | null = null;
  let put = 0;
  change(`put ${calledOf(plan, ids)} to the frame`, (before) =>
    ids.reduce((now, id) => {
      const aligned = alignToFrame(now, { id, setupId: setup.id, seconds, to });
      if ('why' in aligned) {
        why ??= aligned.why;
        return now;
      }
      put += 1;
      return aligned.plan;
    }, before),
  );
  if (why !== null) toastStore.getState().say(why, { tone: 'warn', about: 'action' });
  else if (put > 0) {
    const where = word.charAt(0).toLowerCase() + word.slice(1);
    tell(`${namedOf(plan, ids)} ${put > 1 ? 'are' : 'is'} ${where} of ${letterOf(plan, setup.id)}.`);
  }
}

const frameChoices = ({ plan, setupId }: ActionContext): readonly Action[] => {
  const setup = setupOf(plan, setupId);
  const of = setup ? ` of ${letterOf(plan, setup.id)}` : '';
  return FRAME_WORDS.map(([to, word]) => ({
    id: `frame-${to.replaceAll(' ', '-')}`,
    word: `${word}${of}`,
    group: 'arrange',
    can: any,
    act: (context) => putToFrame(context, to, word),
  }));
};

/** How things belong together, and where they are put. */
export const ARRANGE_ACTIONS: readonly Action[] = [
  {
    id: 'to-frame',
    word: ({ plan, setupId }) => {
      const setup = setupOf(plan, setupId);
      return setup ? `Put it to the frame of ${letterOf(plan, setup.id)}` : 'Put it to the frame';
    },
    keys: ['F'],
    matches: letter('f', false),
    group: 'arrange',
    over: 'things',
    can: (context) => any(context) && context.plan.setups.length > 0,
    act: (context) => openPage(context, 'to-frame'),
    more: frameChoices,
  },
  {
    id: 'group',
    word: 'Group',
    keys: commandKeys('G'),
    matches: command('g', false),
    group: 'arrange',
    over: 'things',
    can: ({ ids }) => ids.length > 1,
    act: ({ plan, ids }) => {
      if (change(`group ${calledOf(plan, ids)}`, (before) => groupItems(before, { ids })))
        tell(`${ids.length} things are one group now.`);
    },
  },
  {
    id: 'ungroup',
    word: 'Ungroup',
    keys: commandKeys('Shift G'),
    matches: command('g', true),
    group: 'arrange',
    over: 'things',
    can: (context) => recordsOf(context).some(({ group }) => group !== undefined),
    act: ({ plan, ids }) => {
      change(`ungroup ${calledOf(plan, ids)}`, (before) => ungroupItems(before, { ids }));
    },
  },
  {
    id: 'lock',
    word: (context) => (allLocked(context) ? 'Unlock' : 'Lock'),
    keys: ['L'],
    matches: letter('l', false),
    group: 'arrange',
    over: 'things',
    can: any,
    act: (context) => {
      const { plan, ids } = context;
      const locked = !allLocked(context);
      if (
        change(`${locked ? 'lock' : 'unlock'} ${calledOf(plan, ids)}`, (before) =>
          lockItems(before, { ids, locked }),
        )
      )
        tell(`${namedOf(plan, ids)} ${ids.length > 1 ? 'are' : 'is'} ${locked ? 'locked' : 'unlocked'}.`);
    },
  },
  {
    id: 'hide',
    word: 'Hide on the roof',
    keys: ['H'],
    matches: letter('h', false),
    group: 'arrange',
    over: 'things',
    can: any,
    act: ({ plan, ids }) => {
      if (!change(`hide ${calledOf(plan, ids)}`, (before) => hideItems(before, { ids, hidden: true })))
        return;
      sessionStore.getState().setSelectedIds([]);
      tell(
        `${namedOf(plan, ids)} ${ids.length > 1 ? 'are' : 'is'} hidden on the roof. The frame still sees it.`,
      );
    },
  },
  {
    id: 'show-all',
    word: 'Show all that is hidden',
    keys: ['Shift H'],
    matches: letter('h', true),
    group: 'arrange',
    over: 'both',
    can: ({ plan }) => anyHidden(plan),
    act: () => {
      change('show all that is hidden', (before) =>
        hideItems(before, {
          ids: itemsOf(before).flatMap(({ record }) => (record.hidden ? [record.id] : [])),
          hidden: false,
        }),
      );
    },
  },
  {
    id: 'choose-all',
    word: 'Choose all that is not locked',
    keys: commandKeys('A'),
    matches: command('a', false),
    group: 'arrange',
    over: 'ground',
    can: ({ plan }) => itemsOf(plan).length > 0,
    act: chooseAll,
  },
];
