import { removeMark } from '../../../core/plan/edits/changeMark';
import { setWay } from '../../../core/plan/edits/setWay';
import { bearingOf } from '../../../core/plan/runs';
import type { Mark, Performer } from '../../../core/plan/schema/cast';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { formatLength } from '../../../core/units/lengths';
import { markNow, moveTape, putBackTape, tapesOf, turnMark } from '../../../desk/blocking/tape';
import { headingAt } from '../../../desk/blocking/tapeShape';
import { cheatsOn } from '../blocking/cheats';
import type { RoofBlocking } from '../blocking/useBlocking';
import { clearWayFor, roofWalks } from '../blocking/walks';
import { type Bounds, type Spot, towards } from '../geometry/spots';
import { markNames } from '../words';
import { buttonBounds } from './Grip';
import { readDegrees, stepped } from './reading';
import { type Handle, type HandleInput, STEP_METRES } from './types';
import { wayHandles } from './wayHandles';

/** How far off the mark the ring stands that turns it, pixels; below it there is the ring around the performer. */
const OFF_MARK = 46;
const GO_ROUND = 'Go round';
const PUT_BACK = 'Put back';

/** The setup that is cheated for, as a plan has it now. */
const setupIn = (plan: Plan, id: string | null | undefined): Setup | null =>
  plan.setups.find((setup) => setup.id === id) ?? null;

/** A name of the marks on one piece of tape: `V3, 4`. */
const nameOfTape = (performer: Performer, tape: readonly Mark[]): string =>
  markNames(
    performer.label,
    tape.map(({ id }) => performer.marks.findIndex((mark) => mark.id === id)),
  );

/** A piece of tape by its keys; a pointer drags it on the drawing itself. */
function markHandle(input: HandleInput, performer: Performer, tape: readonly Mark[]): Handle {
  const [mark] = tape;
  const of = { performerId: performer.id, markId: mark.id };
  const placeIn = (plan: Plan): Spot | null => {
    const cheat = setupIn(plan, input.onlyIn)?.cheats?.find(
      (each) => each.performer === of.performerId && each.mark === of.markId,
    );
    const own = plan.cast.find(({ id }) => id === of.performerId)?.marks.find(({ id }) => id === of.markId);
    return cheat?.at ?? own?.at ?? null;
  };
  return {
    key: `mark ${mark.id}`,
    kind: 'mark',
    name: `Mark ${nameOfTape(performer, tape)}`,
    at: mark.at,
    pull: (plan) => plan,
    step: (plan, way) => {
      const at = placeIn(plan);
      if (!at) return plan;
      const to: [number, number] = [at[0] + way[0] * STEP_METRES, at[1] + way[1] * STEP_METRES];
      return moveTape(plan, of, to, setupIn(plan, input.onlyIn));
    },
    remove: (plan) => {
      const setup = setupIn(plan, input.onlyIn);
      if (setup) return putBackTape(plan, of, setup);
      return tape.reduce((before, { id }) => removeMark(before, { ...of, markId: id }), plan);
    },
  };
}

/** The ring that turns somebody at the mark that is chosen, else at the one where they are. */
function turnHandle(input: HandleInput, performer: Performer): Handle | null {
  const { plan, seconds } = input;
  const mark = performer.marks.find(({ id }) => id === input.markId) ?? markNow(plan, performer, seconds);
  if (!mark) return null;
  const heading = headingAt(plan, performer, mark);
  const of = { performerId: performer.id, markId: mark.id };
  const [x, y] = towards(heading);
  const turnTo = (before: Plan, degrees: number): Plan =>
    turnMark(before, of, degrees, setupIn(before, input.onlyIn));
  return {
    key: 'turn',
    kind: 'turn',
    name: `Turn ${performer.label} at ${nameOfTape(performer, [mark])}`,
    at: mark.at,
    off: [x * OFF_MARK, y * OFF_MARK],
    lead: mark.at,
    figure: `${Math.round(((heading % 360) + 360) % 360)}°`,
    pull: (before, { to, straight, free }) => {
      const bearing = bearingOf([mark.at[0], mark.at[1]], [to[0], to[1]]);
      return turnTo(before, free ? bearing : stepped(bearing, straight ? 15 : 1));
    },
    step: (before, [right, down]) => turnTo(before, heading + right - down),
    typed: (before, text) => {
      const degrees = readDegrees(text);
      return typeof degrees === 'string' ? degrees : turnTo(before, degrees);
    },
  };
}

/** Where a walk meets something: the press that has it go round. */
const roundHandles = (input: HandleInput, performer: Performer): readonly Handle[] =>
  roofWalks(input.plan).flatMap((each): Handle[] => {
    const { walk, hit } = each;
    const way = each.performer === performer ? clearWayFor(input.plan, each) : null;
    if (!way || !hit) return [];
    const to = performer.marks.filter(({ id }) => id === walk.toMark);
    const of = { performerId: performer.id, markId: walk.toMark };
    const through = way.through.map(([x, z]): [number, number] => [x, z]);
    return [
      {
        key: `round ${walk.toMark}`,
        kind: 'press',
        name: `${GO_ROUND} on the way to ${nameOfTape(performer, to)}, ${formatLength(way.metres, input.lengths)}`,
        at: hit.at,
        figure: GO_ROUND,
        pull: (plan) => plan,
        step: (plan) => plan,
        press: (plan) => setWay(plan, { ...of, through, line: 'straight' }),
      },
    ];
  });

/** At the master's place of what is cheated: the press that takes it back there. */
function backHandles(input: HandleInput, performer: Performer): readonly Handle[] {
  const { master, lengths } = input;
  const setup = master ? setupIn(master, input.onlyIn) : null;
  if (!master || !setup) return [];
  return cheatsOn(master, setup, lengths).flatMap((cheat): Handle[] => {
    if (cheat.performerId !== performer.id) return [];
    const tape = performer.marks.filter(({ id }) => id === cheat.markId);
    return [
      {
        key: `back ${cheat.markId}`,
        kind: 'press',
        name: `${PUT_BACK} ${nameOfTape(performer, tape)}`,
        at: cheat.master.at,
        figure: PUT_BACK,
        pull: (plan) => plan,
        step: (plan) => plan,
        press: (plan) => {
          const now = setupIn(plan, input.onlyIn);
          return now ? putBackTape(plan, cheat, now) : plan;
        },
      },
    ];
  });
}

/** Marks, ways and cheats of the one performer who is chosen. A cheated mark has the master's ways: those are left alone. */
export function blockingHandles(input: HandleInput, performer: Performer): readonly Handle[] {
  if (performer.locked) return [];
  const isMaster = (input.onlyIn ?? null) === null;
  const turn = turnHandle(input, performer);
  return [
    ...tapesOf(input.plan, performer).map((tape) => markHandle(input, performer, tape)),
    ...(turn ? [turn] : []),
    ...(isMaster ? wayHandles(input, performer) : []),
    ...(isMaster ? roundHandles(input, performer) : backHandles(input, performer)),
  ];
}

interface ButtonInput {
  readonly plan: Plan;
  readonly master: Plan;
  readonly blocking: RoofBlocking;
  readonly chosenId: string | null;
  readonly touch: boolean;
  readonly at: (spot: Spot) => Spot;
}

/** Where those presses stand, for no name to lie under one; pixels. */
export function buttonsOnRoof({
  plan,
  master,
  blocking,
  chosenId,
  touch,
  at,
}: ButtonInput): readonly Bounds[] {
  const performer = plan.cast.find(({ id }) => id === chosenId);
  if (!performer || performer.locked) return [];
  const { onlyIn } = blocking;
  if (onlyIn)
    return cheatsOn(master, onlyIn, 'm')
      .filter(({ performerId }) => performerId === performer.id)
      .map((cheat) => buttonBounds(PUT_BACK, at(cheat.master.at), touch));
  return roofWalks(plan).flatMap((each) =>
    each.performer === performer && each.hit && clearWayFor(plan, each)
      ? [buttonBounds(GO_ROUND, at(each.hit.at), touch)]
      : [],
  );
}
