import type { DBSchema } from 'idb';

/** What is known of a kept plan without reading it. */
export interface PlanRow {
  readonly id: string;
  readonly title: string;
  /** The night's date as the plan has it, or an empty text. */
  readonly date: string;
  readonly fileName: string;
  /** Counts the writings: a number that a page does not know is another tab's. */
  readonly writing: number;
  /** When what is written was made, milliseconds since 1970; never the same twice in a tab. */
  readonly changedAt: number;
  /** Which tab made it. */
  readonly tab: string;
  /** Taken out of the list, to be put back until the list is closed. */
  readonly takenOut: boolean;
}

/** What a page put down without seeing what another tab had written, in case it has no time for more. */
export interface LeftPlan {
  readonly planId: string;
  readonly document: unknown;
  readonly fileName: string;
  /** The last writing that the page knew of. */
  readonly writing: number;
  readonly changedAt: number;
  readonly tab: string;
}

/** A state of a plan from before something drastic was done to it. */
export interface KeptVersion {
  readonly document: unknown;
  readonly reason: string;
}

/** Every document on the shelf is whatever it is: it is parsed before it is believed. */
export interface Shelf extends DBSchema {
  plans: { key: string; value: PlanRow };
  /** Apart from the rows, so that the list does not read them all. */
  documents: { key: string; value: unknown };
  /** By plan and tab. */
  left: { key: string; value: LeftPlan };
  /** By plan and time. */
  versions: { key: [string, number]; value: KeptVersion };
  pictures: { key: string; value: Blob };
  handles: { key: string; value: FileSystemFileHandle };
  /** `lastOpen`: the plan that was opened or changed last. */
  meta: { key: string; value: string };
}
