import type { KeySideFinding } from '../../continuity/keySide';
import type { KeyReading } from '../../continuity/keySideReading';
import type { KeyTurn } from '../../continuity/keySideTurn';
import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { formatDegrees } from '../../units/angles';
import { formatSeconds } from '../../units/seconds';
import { lettersOf, nameOf } from './names';

/** A piece of gear by its name; its id where the plan does not have it. */
const gearName = (plan: Plan, id: string): string =>
  named(plan.gear.find((gear) => gear.id === id)?.label ?? id);

const sizeOf = (degrees: number): string => formatDegrees(Math.abs(degrees), 0);

/** The lamp, how far off the face, and where in the frame it comes from. */
function keyWords(plan: Plan, { keyId, offFaceDegrees, cameraSide }: KeyReading): string {
  const side = cameraSide === null ? 'from near the lens' : `from camera ${cameraSide}`;
  return `${gearName(plan, keyId ?? '')}, ${sizeOf(offFaceDegrees ?? 0)} off it, ${side}`;
}

/** Where the other setup has the key, or that it has none. */
function otherWords(other: string, established: KeyReading): string {
  if (established.from === 'left' || established.from === 'right')
    return `${other} on its ${established.from}`;
  return established.from === 'front' ? `${other} from the front` : `${other} has none`;
}

/** Two turns nearer to each other than this are one, degrees. */
const SAME_TURN_DEGREES = 3;
/** No more other moments than this are told. */
const MOST_MOMENTS = 2;

/** What to turn, how far and which way; and how far at other moments, where that is another turn. */
function turnWords(plan: Plan, name: string, turn: KeyTurn, { key, turns }: KeySideFinding): string {
  const { keyId, turnDegrees, cameraSide } = turn;
  const how = `${gearName(plan, keyId)} ${sizeOf(turnDegrees)} to camera ${cameraSide}`;
  const others = turns.filter(
    ({ seconds, turn: each }) =>
      seconds !== key.seconds &&
      (each.keyId !== keyId || Math.abs(each.turnDegrees - turnDegrees) >= SAME_TURN_DEGREES),
  );
  if (others.length === 0) return ` Turn ${how} about ${name} to hold.`;
  const told = others.slice(0, MOST_MOMENTS).map(({ seconds, turn: each }) => {
    const what = each.keyId === keyId ? '' : `${gearName(plan, each.keyId)} `;
    return `${what}${sizeOf(each.turnDegrees)} to camera ${each.cameraSide} at ${formatSeconds(seconds)}`;
  });
  return ` Turn ${how} about ${name} to hold at ${formatSeconds(key.seconds)}; it takes ${told.join(' and ')}.`;
}

/** Where the key falls on a performer's face in a setup; sides are the face's own unless camera is said. */
export function keySideSentence(plan: Plan, finding: KeySideFinding): string {
  const { key, established, establishes, standing, turn } = finding;
  const [own, other] = lettersOf(plan, finding);
  const name = nameOf(plan, finding.performerId);
  const toTurn = turn ? turnWords(plan, name, turn, finding) : '';
  if (key.from === 'dark') return `${own} has no lamp on ${name}’s face, only the glow of the sky.${toTurn}`;
  if (key.from === 'back') return `${own} has ${name} lit from behind only: no key on the face.${toTurn}`;
  if (key.from === 'front')
    return `${own} has ${name}’s key from the front, within 10° of where the face looks.${toTurn}`;
  if (establishes || established === null)
    return `${own} sets ${name}’s key on the ${key.from} of the face: ${keyWords(plan, key)}.`;
  if (standing === 'holds')
    return `${own} keeps ${name}’s key on the ${key.from} of the face, as ${other} does: ${keyWords(plan, key)}.`;
  const against = otherWords(other, established);
  if (turn || standing === 'said')
    return `${own} has ${name}’s key on the ${key.from} of the face, ${against}.${toTurn}`;
  return `${own} has ${name}’s key on the ${key.from} of the face, ${against}; that key is not one to turn.`;
}
