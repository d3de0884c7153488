import { itemOf, wishOf } from '../../plan/items';
import type { Plan } from '../../plan/schema/plan';
import type { SetupReport } from '../../report/types';
import { cameraWays } from './cameras';
import type { Case, Finding } from './case';
import { cheatsInFront } from './cheatInFront';
import { dryings, lettingShow } from './covering';
import { darkWays } from './darkWays';
import { isFinding, isNewFinding, type Known, knownOf } from './known';
import { LampWatch } from './lampOnSubject';
import { moves } from './moving';
import { piecesInFront } from './putInFront';
import { heights, swings, turns } from './reshaping';
import { DEGREES_A_METRE, REMEDY_KINDS, type Remedy, type RemedyKind, type Tolerance } from './types';

/** All that is looked for, each by itself. */
const WAYS = {
  moves,
  heights,
  swings,
  turns,
  'cheats in front': cheatsInFront,
  'pieces in front': piecesInFront,
  ...cameraWays,
  drying: dryings,
  dark: darkWays,
  'let it show': lettingShow,
} as const satisfies Readonly<Record<string, (of: Case) => Finding>>;
export type RemedyWay = keyof typeof WAYS;

/** The ways, in the order in which several hands best take them up: what mostly takes longest first. */
export const REMEDY_WAYS: readonly RemedyWay[] = [
  'moves',
  'dark',
  'pans',
  'shorter moves',
  'turns',
  'lenses',
  'nudges',
  'heights',
  'cheats in front',
  'pieces in front',
  'swings',
  'drying',
  'let it show',
];

/** Ways that move things, which nobody does with the cast. */
const OF_THINGS: readonly RemedyWay[] = [
  'moves',
  'heights',
  'swings',
  'turns',
  'cheats in front',
  'pieces in front',
];

/** A finding, and how far a lamp may be changed to be rid of it. */
export interface RemedyQuestion {
  readonly setupId: string;
  readonly itemId: string;
  readonly tolerance: Tolerance;
  /** Reports of this very plan that are there already; the others are read first. */
  readonly seen?: readonly SetupReport[];
  /** What is looked for; all by default. */
  readonly ways?: readonly RemedyWay[];
}

/** The share of the work that it is to read what all setups see. */
const READING_SHARE = 0.4;

/** What changes the picture beside the finding: the camera's, and what the deck mirrors. */
const OF_THE_PICTURE: ReadonlySet<RemedyKind> = new Set([
  'dry the floor',
  'cheat in front',
  'put in front',
  'pan',
  'another lens',
  'nudge the camera',
  'shorten the move',
]);
/** A picture that changes weighs as much as a thing that goes so far, metres; an estimate, no source. */
const PICTURE_METRES = 1;
/** So much light weighs as much as a metre; an estimate, no source. */
const STOPS_A_METRE = 0.5;

const RELYING: readonly Remedy['relies'][] = ['geometry', 'dark', 'likeness'];

/** How many new findings a remedy makes. */
function newsOf(plan: Plan, { cost }: Remedy): number {
  return cost.otherSetups.filter(({ itemId, before, after }) => {
    const of = itemOf(plan, itemId);
    return isNewFinding(of ? wishOf(of) : 'keep out', before, after);
  }).length;
}

const disturbance = ({ kind, cost }: Remedy): number =>
  cost.metres +
  Math.abs(cost.stops) / STOPS_A_METRE +
  cost.degrees / DEGREES_A_METRE +
  (OF_THE_PICTURE.has(kind) ? PICTURE_METRES : 0);

/**
 * Remedies of a plan in the order in which they are offered, least disturbing first: what makes new findings last, what
 * rests on geometry before what rests on the dark.
 */
export function rankedRemedies(plan: Plan, remedies: readonly Remedy[]): readonly Remedy[] {
  const keyed = remedies.map((remedy) => ({ remedy, news: newsOf(plan, remedy) }));
  return keyed
    .sort(
      (a, b) =>
        RELYING.indexOf(a.remedy.relies) - RELYING.indexOf(b.remedy.relies) ||
        Math.sign(a.news) - Math.sign(b.news) ||
        disturbance(a.remedy) - disturbance(b.remedy) ||
        REMEDY_KINDS.indexOf(a.remedy.kind) - REMEDY_KINDS.indexOf(b.remedy.kind),
    )
    .map(({ remedy }) => remedy);
}

/** What is known of a plan, for all that is asked about it. */
const KNOWN = new WeakMap<Plan, Known>();

/** The latest case: its ways are mostly asked one after the other. */
let latest: { readonly plan: Plan; readonly question: RemedyQuestion; readonly of: Case } | null = null;

const isSameCase = (a: RemedyQuestion, b: RemedyQuestion): boolean =>
  a.setupId === b.setupId &&
  a.itemId === b.itemId &&
  a.tolerance.levelStops === b.tolerance.levelStops &&
  a.tolerance.angleDegrees === b.tolerance.angleDegrees;

/** The finding that a question is about; null where it is none. */
function caseOf(known: Known, question: RemedyQuestion): Case | null {
  const { plan } = known;
  if (latest && latest.plan === plan && isSameCase(latest.question, question)) return latest.of;
  const item = itemOf(plan, question.itemId);
  const one = known.setups.find(({ setup }) => setup.id === question.setupId);
  const report = one?.items.get(question.itemId);
  if (!item || !one || report?.wish !== 'keep out' || !isFinding(report.wish, report.verdict)) return null;
  const lamps = new LampWatch(plan, one.setup, report.worstAtSeconds);
  const of: Case = { known, one, item, report, tolerance: question.tolerance, lamps };
  latest = { plan, question, of };
  return of;
}

/**
 * What would take care of a finding: changes of the plan, each looked for as the least of its kind, judged against every
 * setup that it touches before it is offered, and ranked by how little it disturbs. Locked items stay. None where the
 * item goes against no wish in that setup, or the plan has no such item or setup. Yields the done share, 0..1.
 */
export function* remediesFor(
  plan: Plan,
  question: RemedyQuestion,
): Generator<number, readonly Remedy[], void> {
  if (!itemOf(plan, question.itemId) || !plan.setups.some(({ id }) => id === question.setupId)) return [];
  let known = KNOWN.get(plan);
  if (!known) {
    const reading = knownOf(plan, question.seen ?? []);
    let read = reading.next();
    for (; !read.done; read = reading.next()) yield READING_SHARE * read.value;
    known = read.value;
    KNOWN.set(plan, known);
  }
  const of = caseOf(known, question);
  if (!of) return [];
  const ways = question.ways ?? REMEDY_WAYS;
  const found: Remedy[] = [];
  for (const [k, way] of ways.entries()) {
    if (of.item.section === 'cast' && OF_THINGS.includes(way)) continue;
    const steps = WAYS[way](of);
    let step = steps.next();
    for (; !step.done; step = steps.next())
      yield READING_SHARE + ((1 - READING_SHARE) * (k + step.value)) / ways.length;
    found.push(...step.value);
  }
  return rankedRemedies(plan, found);
}
