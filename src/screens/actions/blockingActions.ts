import { addMarkAt } from '../../core/plan/edits/addMarkAt';
import { setWay } from '../../core/plan/edits/setWay';
import type { Mark, Performer } from '../../core/plan/schema/cast';
import type { Plan } from '../../core/plan/schema/plan';
import { blockingStore } from '../../desk/blocking/blockingStore';
import { chooseThing } from '../../desk/blocking/choosing';
import { onlyInSetup } from '../../desk/blocking/onlyIn';
import { moveTape, nextMark, putBackTape } from '../../desk/blocking/tape';
import { beatsInTime } from '../../desk/blocking/things';
import { letterOf } from '../../desk/choose';
import { liveStore } from '../../desk/liveStore';
import { sessionStore } from '../../desk/sessionStore';
import { clearWayFor, roofWalks } from '../overhead/blocking/walks';
import { change } from './doing';
import { openPage } from './pages';
import type { Action, ActionContext } from './types';

const HAIR_SECONDS = 1e-4;

/** The beat that the clock is at or past, with its number; the first one before all. */
function beatAtClock(plan: Plan): { readonly id: string; readonly number: number } | null {
  const beats = beatsInTime(plan);
  const { seconds } = liveStore.getState();
  const last = beats.findLastIndex(({ atSeconds }) => atSeconds <= seconds + HAIR_SECONDS);
  const beat = beats[Math.max(0, last)];
  return beat ? { id: beat.id, number: Math.max(0, last) + 1 } : null;
}

/** The one performer that something is done to; null for none or several. */
function onlyOne({ plan, ids }: ActionContext): Performer | null {
  const [id] = ids;
  const performer = ids.length === 1 ? plan.cast.find((each) => each.id === id) : undefined;
  return performer && !performer.locked ? performer : null;
}

/** The mark that is chosen of somebody, else the one that comes next. */
function markMeant(plan: Plan, performer: Performer): Mark | null {
  const { chosen } = blockingStore.getState();
  const isMine = chosen?.type === 'mark' && chosen.performerId === performer.id;
  const own = isMine ? performer.marks.find(({ id }) => id === chosen.markId) : undefined;
  return own ?? nextMark(plan, performer, liveStore.getState().seconds);
}

/** Somebody at a place at the beat of the clock: their mark of that beat is moved there, or a new one is put. */
function standHere(performer: Performer, { plan, at }: ActionContext): void {
  const beat = beatAtClock(plan);
  if (!at || !beat) return;
  const spot: [number, number] = [at[0], at[1]];
  const there = performer.marks.find((mark) => mark.beat === beat.id);
  const of = { performerId: performer.id };
  const known = new Set(performer.marks.map(({ id }) => id));
  let markId = there?.id ?? null;
  const done = change(`stand ${performer.label} here`, (before) => {
    if (there) return moveTape(before, { ...of, markId: there.id }, spot, onlyInSetup(before));
    const after = addMarkAt(before, { ...of, beatId: beat.id, at: spot });
    markId =
      after.cast.find(({ id }) => id === performer.id)?.marks.find(({ id }) => !known.has(id))?.id ?? null;
    return after;
  });
  if (done && markId !== null) chooseThing({ type: 'mark', ...of, markId });
}

const standAction = (performer: Performer): Action => ({
  id: `stand-${performer.id}`,
  word: ({ plan }) => `${performer.label} stands here at beat ${beatAtClock(plan)?.number ?? 1}`,
  group: 'shape',
  can: ({ at }) => at !== null,
  act: (context) => standHere(performer, context),
});

const freeCast = ({ plan }: ActionContext): readonly Performer[] =>
  plan.cast.filter(({ locked, hidden }) => !locked && !hidden);

/** The performer who was chosen last: offered at once, the others on a page of their own. */
function offered(context: ActionContext): Performer | null {
  const { selectedId } = sessionStore.getState();
  const free = freeCast(context);
  return free.find(({ id }) => id === selectedId) ?? (free.length === 1 ? (free[0] ?? null) : null);
}

/** Whose next or chosen walk meets something, with the way round; null where nobody's does, or a setup is cheated for. */
function roundOf(context: ActionContext) {
  const performer = onlyOne(context);
  if (!performer || onlyInSetup(context.plan)) return null;
  const walks = roofWalks(context.plan).filter((each) => each.performer === performer && each.hit !== null);
  const meant = markMeant(context.plan, performer)?.id;
  const walk = walks.find((each) => each.walk.toMark === meant) ?? walks[0];
  const way = walk ? clearWayFor(context.plan, walk) : null;
  return walk && way ? { performer, markId: walk.walk.toMark, through: way.through } : null;
}

/** The setup that plays somebody's marks elsewhere; null for none. */
const cheatingIn = (context: ActionContext) => {
  const performer = onlyOne(context);
  const setup = context.plan.setups.find(({ id }) => id === context.setupId);
  const cheats = setup?.cheats?.filter((cheat) => cheat.performer === performer?.id) ?? [];
  return performer && setup && cheats.length > 0 ? { performer, setup, cheats } : null;
};

/** The way to the mark that is meant, where it passes places. */
function wayMeant(context: ActionContext) {
  const performer = onlyOne(context);
  const mark = performer ? markMeant(context.plan, performer) : null;
  return performer && mark?.way && !onlyInSetup(context.plan) ? { performer, mark, way: mark.way } : null;
}

/** What is done to the cast on the roof: where somebody stands, how they walk, what a setup cheats. */
export const BLOCKING_ACTIONS: readonly Action[] = [
  {
    id: 'stand-here',
    word: (context) => {
      const performer = offered(context);
      const beat = beatAtClock(context.plan)?.number ?? 1;
      return performer ? `${performer.label} stands here at beat ${beat}` : 'Stand somebody here';
    },
    group: 'shape',
    over: 'ground',
    can: (context) => context.at !== null && beatAtClock(context.plan) !== null && offered(context) !== null,
    act: (context) => {
      const performer = offered(context);
      if (performer) standHere(performer, context);
    },
  },
  {
    id: 'stand-another-here',
    word: 'Stand somebody here',
    group: 'shape',
    over: 'ground',
    can: (context) =>
      context.at !== null && beatAtClock(context.plan) !== null && freeCast(context).length > 1,
    act: (context) => openPage(context, 'stand-another-here'),
    more: (context) => freeCast(context).map(standAction),
  },
  {
    id: 'go-round',
    word: 'Go round',
    group: 'shape',
    over: 'things',
    can: (context) => roundOf(context) !== null,
    act: (context) => {
      const round = roundOf(context);
      if (!round) return;
      const through = round.through.map(([x, z]): [number, number] => [x, z]);
      change('walk round', (before) =>
        setWay(before, { performerId: round.performer.id, markId: round.markId, through, line: 'straight' }),
      );
    },
  },
  {
    id: 'bend-way',
    word: (context) =>
      wayMeant(context)?.way.line === 'curved' ? 'Walk in straight lines' : 'Walk in a curve',
    group: 'shape',
    over: 'things',
    can: (context) => wayMeant(context) !== null,
    act: (context) => {
      const meant = wayMeant(context);
      if (!meant) return;
      const line = meant.way.line === 'curved' ? 'straight' : 'curved';
      change('bend a way', (before) =>
        setWay(before, {
          performerId: meant.performer.id,
          markId: meant.mark.id,
          through: meant.way.through,
          line,
        }),
      );
    },
  },
  {
    id: 'straighten-way',
    word: 'Walk straight there',
    group: 'shape',
    over: 'things',
    can: (context) => wayMeant(context) !== null,
    act: (context) => {
      const meant = wayMeant(context);
      if (!meant) return;
      change('straighten a way', (before) =>
        setWay(before, {
          performerId: meant.performer.id,
          markId: meant.mark.id,
          through: [],
          line: 'straight',
        }),
      );
    },
  },
  {
    id: 'put-back',
    word: (context) => `Put back in ${letterOf(context.plan, context.setupId ?? '')}`,
    group: 'shape',
    over: 'things',
    can: (context) => cheatingIn(context) !== null,
    act: (context) => {
      const cheating = cheatingIn(context);
      if (!cheating) return;
      const { performer, setup, cheats } = cheating;
      change(`put ${performer.label} back in ${letterOf(context.plan, setup.id)}`, (before) =>
        cheats.reduce((plan, { mark }) => {
          const now = plan.setups.find(({ id }) => id === setup.id);
          return now ? putBackTape(plan, { performerId: performer.id, markId: mark }, now) : plan;
        }, before),
      );
    },
  },
];
