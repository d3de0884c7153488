import { anchorOf } from '../../plan/edits/anchorOf';
import { tidySpot } from '../../plan/edits/tidy';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import { hypot } from '../../units/steadyMath';
import { isUnwanted, type Known, knownOf } from '../remedies/known';
import { FARTHEST_METRES } from '../remedies/moving';
import { settle } from './arrange';
import { Crowding } from './crowding';
import { LampsKept } from './lampsKept';
import { keepsOut, type Mover, movableIds, moversOf } from './movers';
import { crowdObstacle, fixedObstacles, lightObstacle, obstacleFor, uncoveredObstacles } from './obstacles';
import { type Placement, Places, type Setting, type Steps } from './places';
import type { Obstacle, Solution, SolveAnswer, SolveProgress, SolveQuestion, Solving } from './types';
import { clearedWords, doingWords, missingWords, moveWords } from './words';

/** What is tried where nobody says otherwise: as far away as among remedies. */
const FINE_STEPS: Steps = {
  stepMetres: 0.2,
  mostMetres: FARTHEST_METRES,
  heightStepMetres: 0.25,
  isFine: true,
};

/** Shares of the work: reading the night, looking for places, putting them together; estimates. */
const READ_SHARE = 0.3;
const FOUND_SHARE = 0.8;

const refusal = (sentence: string, setups: number): SolveAnswer => ({
  outcome: 'refused',
  sentence,
  best: null,
  obstacles: [],
  tried: 0,
  cleared: 0,
  setups,
});

/** What may move, or the sentence that says why nothing is searched. */
function askedMovers(plan: Plan, movable: readonly string[] | undefined): readonly Mover[] | string {
  if (plan.setups.length === 0) return 'This plan has no setups: there is nothing to stay clear of.';
  const ids = movable ?? movableIds(plan);
  if (ids.length === 0)
    return movable
      ? 'Nothing was named that may move.'
      : 'Nothing may move: all gear that should keep out is locked, or there is none.';
  const movers = moversOf(plan, ids);
  if (typeof movers === 'string') return movers;
  const keeping = movers.filter((mover) => keepsOut(plan, mover));
  return keeping.length > 0
    ? keeping
    : 'Nothing of what may move has to keep out of frame: there is nothing to be gained by moving it.';
}

/** Setups in which nothing is seen that should keep out, but what is accepted. */
const clearSetups = (known: Known): ReadonlySet<string> =>
  new Set(
    known.setups.filter(({ items }) => ![...items.values()].some(isUnwanted)).map(({ setup }) => setup.id),
  );

/** Some placements as a changed plan, in the order of the movers. */
function solutionOf(known: Known, placements: readonly Placement[]): Solution {
  const moved = placements.filter(({ edits }) => edits.length > 0);
  const items = moved.map(({ mover, shape, by }) => {
    const from: Spot = anchorOf(known.plan, mover.id) ?? [0, 0];
    const to = tidySpot([from[0] + by[0], from[1] + by[1]]);
    const metres = hypot(by[0], by[1]);
    const words = [
      ...(metres > 0 ? [moveWords(known, mover.members, from, to)] : []),
      ...(shape.words === '' ? [] : [shape.words]),
    ].join(', ');
    return {
      itemId: mover.id,
      label: mover.label,
      words,
      from,
      to,
      metres: metres + shape.metres,
      degrees: shape.degrees,
    };
  });
  const total = (numberOf: (item: (typeof items)[number]) => number): number =>
    items.reduce((sum, item) => sum + numberOf(item), 0);
  return {
    edits: moved.flatMap(({ edits }) => edits),
    items,
    metres: total(({ metres }) => metres),
    degrees: total(({ degrees }) => degrees),
    change: moved.reduce((sum, { change }) => sum + change, 0),
  };
}

/**
 * Looks for the least change that clears all setups of what should keep out, by moving, raising, lowering, turning some
 * things and swinging their arms, each within 4 m, while lamps keep level and angle on whom they light within a
 * tolerance, and wishes, locks and what is accepted stand. What only the dark hides counts as seen.
 *
 * Each thing is asked by itself, with all others that may move left away: of things that should all keep out, one that
 * stands before another is seen itself, so none of them can be what hides another, and what comes into a frame alone
 * does so among them all. They meet only in the room that they take up, and in each other's light; what is in each
 * other's way there is chosen together, best first. At the end the report's looks are asked of the whole changed plan.
 *
 * Deterministic. Yields how far it is, with the best so far; may be stopped at any step.
 */
export function solveSteps(plan: Plan, question: SolveQuestion): Solving {
  return solveBySteps(plan, question, FINE_STEPS);
}

/** The same over other steps. */
export function* solveBySteps(plan: Plan, question: SolveQuestion, steps: Steps): Solving {
  const setups = plan.setups.length;
  const asked = askedMovers(plan, question.movable);
  if (typeof asked === 'string') return refusal(asked, setups);
  const movers = asked;
  const count = { tried: 0 };
  let told: SolveProgress = { share: 0, tried: 0, cleared: 0, setups, best: null };
  const at = (share: number): SolveProgress => {
    told = { ...told, share: Math.max(told.share, Math.min(1, share)), tried: count.tried };
    return told;
  };

  const reading = knownOf(plan, question.seen ?? []);
  let read = reading.next();
  for (; !read.done; read = reading.next()) yield at(READ_SHARE * read.value);
  const known = read.value;
  const clear = clearSetups(known);
  told = { ...told, cleared: clear.size };
  const missing = missingWords(known);
  if (clear.size === setups)
    return {
      outcome: 'clear',
      sentence: `Nothing that should keep out is seen in ${clearedWords(setups, setups)}: there is nothing to solve.${missing}`,
      best: null,
      obstacles: [],
      tried: 0,
      cleared: setups,
      setups,
    };

  const lamps = new LampsKept(known, question.tolerance);
  const setting: Setting = { known, lamps, steps, count };
  const obstacles: Obstacle[] = [...fixedObstacles(known, movers)];
  const crowding = new Crowding(plan, movers, lamps);
  const able: Places[] = [];
  const fixed: Placement[] = [];
  const sofar: Placement[] = [];
  const share = (k: number): number => READ_SHARE + ((FOUND_SHARE - READ_SHARE) * k) / movers.length;
  for (const [k, mover] of movers.entries()) {
    const places = new Places(
      setting,
      mover,
      movers.filter((other) => other !== mover),
    );
    const looking = places.at(0);
    let look = looking.next();
    for (; !look.done; look = looking.next()) yield at(share(k));
    const first = look.value;
    if (!first) {
      fixed.push(places.stay);
      const why = obstacleFor(known, places, steps.mostMetres);
      let step = why.next();
      for (; !step.done; step = why.next()) yield at(share(k));
      obstacles.push(step.value);
      continue;
    }
    able.push(places);
    if (sofar.every((other) => crowding.fits(other, first))) sofar.push(first);
    const best = solutionOf(known, sofar);
    told = { ...told, cleared: clearedBy(known, movers, sofar), best: best.items.length > 0 ? best : null };
    yield at(share(k + 1));
  }

  const settling = settle(known, able, fixed, crowding, lamps);
  let step = settling.next();
  for (; !step.done; step = settling.next()) yield at(FOUND_SHARE + (1 - FOUND_SHARE) * step.value);
  const { picks, stuck, proved } = step.value;
  for (const group of stuck) {
    const { movers: together } = group;
    const alone = together.length === 1 ? able.find(({ mover }) => mover === together[0]) : undefined;
    if (!alone) {
      obstacles.push(crowdObstacle(group));
      continue;
    }
    const why = obstacleFor(known, alone, steps.mostMetres);
    let reason = why.next();
    for (; !reason.done; reason = why.next()) yield at(1);
    obstacles.push(reason.value);
  }
  obstacles.push(...uncoveredObstacles(plan, proved.news, picks));
  if (proved.losesLight) obstacles.push(lightObstacle(picks));
  const best = solutionOf(known, inOrder(movers, picks));
  const isSolved = obstacles.length === 0 && proved.cleared === setups;
  const does = `${doingWords(best)} clears ${clearedWords(proved.cleared, setups)}.`;
  const whys = obstacles.map(({ sentence }) => sentence).join(' ');
  return {
    outcome: isSolved ? 'solved' : 'none',
    sentence: `${isSolved ? does : `${whys}${best.items.length > 0 ? ` ${does}` : ''}`}${missing}`,
    best: best.items.length > 0 ? best : null,
    obstacles,
    tried: count.tried,
    cleared: proved.cleared,
    setups,
  };
}

const inOrder = (movers: readonly Mover[], picks: readonly Placement[]): readonly Placement[] =>
  [...picks].sort((a, b) => movers.indexOf(a.mover) - movers.indexOf(b.mover));

/** How many setups are clear once some things stand where they are put. */
function clearedBy(known: Known, movers: readonly Mover[], placed: readonly Placement[]): number {
  const done = new Set(
    placed.filter(({ edits }) => edits.length > 0).flatMap(({ mover }) => [...mover.members]),
  );
  const may = new Set(movers.flatMap(({ members }) => [...members]));
  return known.setups.filter(({ items }) =>
    [...items.values()].every((item) => !isUnwanted(item) || (may.has(item.id) && done.has(item.id))),
  ).length;
}
