import type { Spared } from '../../plan/schema/night';

/** Whose a thing is. */
export const DEPARTMENTS = ['camera', 'light', 'grip', 'power', 'floor', 'safety'] as const;
export type Department = (typeof DEPARTMENTS)[number];

/** One thing to pack. */
export interface PackingLine {
  readonly department: Department;
  readonly label: string;
  /** How many, or how much, without spares. */
  readonly count: number;
  readonly unit: 'pieces' | 'metres' | 'litres';
  /** What it counts as for spares; null for what none are taken of. */
  readonly spared: Spared | null;
  /** What is taken on top by the plan's rules. */
  readonly spare: number;
  /** What it adds up from; empty where it speaks for itself. */
  readonly detail: string;
  /** Ids of the gear that it adds up from. */
  readonly itemIds: readonly string[];
}

/** A line before spares are counted. */
export type PackingNeed = Omit<PackingLine, 'spare'>;
