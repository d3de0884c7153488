import { named } from '../plan/named';
import type { Mark, Performer } from '../plan/schema/cast';
import type { Plan } from '../plan/schema/plan';
import { formatLength } from '../units/lengths';

/** What a fault of blocking is about. */
export type BlockingSubject =
  | 'spot'
  | 'floor'
  | 'inside'
  | 'walk'
  | 'pace'
  | 'edge'
  | 'beats'
  | 'span'
  | 'line'
  | 'pass'
  | 'cheat';

/** Something in the blocking that cannot be played as it is written, or not safely. */
export interface BlockingFault {
  readonly about: BlockingSubject;
  readonly where: string;
  readonly sentence: string;
  /** Whom and which of their marks it is about, and for a cheat in which setup; null for none. */
  readonly performerId: string | null;
  readonly markId: string | null;
  readonly setupId: string | null;
  /** What would mend it, named as a step of the history; null where it takes somebody to decide. */
  readonly mend: { readonly name: string; readonly edit: (plan: Plan) => Plan } | null;
}

type Told = Pick<BlockingFault, 'about' | 'where' | 'sentence'> & Partial<BlockingFault>;

export const fault = (told: Told): BlockingFault => ({
  performerId: null,
  markId: null,
  setupId: null,
  mend: null,
  ...told,
});

export const whereOf = ({ label }: Performer): string => `Performer ${label}`;
export const metres = (value: number): string => formatLength(value, 'm');
/** The name of a beat. */
export const beatName = (plan: Plan, beatId: string): string =>
  `“${plan.beats.find(({ id }) => id === beatId)?.label ?? beatId}”`;
/** A performer's mark in words, by its beat. */
export const markName = (plan: Plan, performer: Performer, mark: Mark): string =>
  `The mark of ${named(performer.label)} at ${beatName(plan, mark.beat)}`;
/** The name of a set piece. */
export const pieceName = (plan: Plan, id: string): string =>
  named(plan.pieces.find((piece) => piece.id === id)?.label ?? id);
