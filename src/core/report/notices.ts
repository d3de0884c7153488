import { spanOf, stateAt } from '../optics/camera';
import { keysOf } from '../optics/cameraKey';
import { formsThrough } from '../optics/riding';
import { named } from '../plan/named';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { solidAround } from '../sight/inside';
import { departmentNotices } from './cameraNotices';
import { castNotices } from './castNotices';
import { lightNotices } from './light/lightNotices';
import { modelNotices } from './modelNotices';
import { roofNotices } from './roofNotices';
import { skyNotices } from './skyNotices';
import type { Notice } from './types';
import { wetNotices } from './wetNotices';

function cameraNotices(plan: Plan, setup: Setup): Notice[] {
  const [from, to] = spanOf(plan, setup);
  const where = `Setup ${setup.label}`;
  const instants = new Set([
    from,
    to,
    ...keysOf(plan, setup)
      .map((key) => key.atSeconds)
      .filter((at) => at > from && at < to),
  ]);
  for (const at of instants) {
    const { position } = stateAt(plan, setup, at);
    const around = solidAround(formsThrough(plan, setup, at), position);
    if (around) {
      return [
        {
          where,
          sentence: `The camera of ${named(setup.label)} stands inside ${named(around.label)} at ${at} s. Move one of them.`,
        },
      ];
    }
  }
  return [];
}

/** On which side of the line from a to b a place lies: its sign. */
const sideOf = (a: Spot, b: Spot, p: Spot): number =>
  Math.sign((b[0] - a[0]) * (p[1] - a[1]) - (b[1] - a[1]) * (p[0] - a[0]));

/** Whether two sides of an outline cross, other than at a corner. */
function crossesItself(outline: readonly Spot[]): boolean {
  const sides = outline.map((from, k) => [from, outline[(k + 1) % outline.length]] as const);
  return sides.some(([a, b], k) =>
    sides
      .slice(k + 2)
      .some(([c, d]) => sideOf(a, b, c) * sideOf(a, b, d) < 0 && sideOf(c, d, a) * sideOf(c, d, b) < 0),
  );
}

/** What a person should know before trusting the findings; empty when all is well. */
export function noticesOf(plan: Plan): Notice[] {
  const notices: Notice[] = [];
  if (plan.setups.length === 0) {
    notices.push({
      where: 'Setups',
      sentence: 'The plan has no setup yet, so there is nothing to report. Put a camera on the roof.',
    });
  }
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck' || !crossesItself(piece.outline)) continue;
    notices.push({
      where: `Set piece ${piece.label}`,
      sentence: `The outline of ${named(piece.label)} crosses itself, so its surface is a guess. Draw it round the edge.`,
    });
  }
  notices.push(...roofNotices(plan), ...wetNotices(plan), ...skyNotices(plan), ...modelNotices(plan));
  for (const performer of plan.cast) {
    if (performer.marks.length > 0) continue;
    notices.push({
      where: `Performer ${performer.label}`,
      sentence: `${named(performer.label)} has no mark and is in no picture. Put a mark on the deck.`,
    });
  }
  notices.push(...castNotices(plan), ...lightNotices(plan));
  for (const setup of plan.setups)
    notices.push(...cameraNotices(plan, setup), ...departmentNotices(plan, setup));
  return notices;
}
