import type { Plan } from '../../../core/plan/schema/plan';

/** What a typed value makes of the plan. */
export type Change<Value> = (plan: Plan, value: Value) => Plan;

interface Common {
  /** Unique within its item. */
  readonly label: string;
  readonly wide?: boolean;
}

/** How low and how high a length goes, and the start of the sentence that says so: `This stand goes`. */
export interface Reach {
  readonly lowestMetres: number;
  readonly highestMetres: number;
  readonly sentence: string;
}

/** One field of an item's panel, as data: what it shows, and what a new value does. */
export type FieldSpec = Common &
  (
    | {
        readonly form: 'length';
        readonly metres: number;
        /** In millimetres or inches, for wires and tubes. */
        readonly small?: boolean;
        readonly reach?: Reach;
        readonly change: Change<number>;
      }
    | { readonly form: 'heading'; readonly degrees: number; readonly change: Change<number> }
    | {
        readonly form: 'number';
        readonly value: number;
        readonly unit?: string;
        readonly decimals?: number;
        readonly change: Change<number>;
      }
    | { readonly form: 'share'; readonly share: number; readonly change: Change<number> }
    /** A share of the light as stops below all of it; the new value is the share again. */
    | { readonly form: 'stops'; readonly share: number; readonly change: Change<number> }
    | {
        readonly form: 'choice';
        readonly value: string;
        readonly choices: readonly (readonly [value: string, word: string])[];
        readonly change: Change<string>;
      }
    | { readonly form: 'colour'; readonly colour: string; readonly change: Change<string> }
    | { readonly form: 'shown'; readonly text: string }
  );

/** Fields under one small heading. */
export interface FieldGroup {
  readonly heading: string;
  readonly fields: readonly FieldSpec[];
}
