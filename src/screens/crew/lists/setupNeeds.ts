import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import type { PowerReport } from '../../../core/report/power/types';
import type { LengthSystem } from '../../../core/units/lengths';
import { formatShare } from '../../../core/units/shares';
import type { Department } from '../../../desk/crew/crewStore';
import type { SetupSheet } from '../../../desk/crew/setupSheet';
import { carriedFor } from '../setup/carrying';

/** What one department has to do with a setup. */
export interface SetupNeed {
  readonly department: Exclude<Department, 'all'>;
  readonly words: readonly string[];
}

/** What the grips carry of what a camera stands on. */
const OF_GRIP: ReadonlySet<string> = new Set(['track', 'dolly', 'stand']);

const dimmed = (dim: number): string => (dim === 1 ? '' : ` at ${formatShare(dim)}`);

/** What a setup needs of each department; those that it needs nothing of are left out. */
export function setupNeeds(
  plan: Plan,
  setup: Setup,
  sheet: SetupSheet | undefined,
  power: PowerReport | null,
  lengths: LengthSystem,
): readonly SetupNeed[] {
  const carried = carriedFor(plan, setup, lengths);
  const burning = sheet?.burning ?? [];
  const sourceIds = new Set(
    burning.flatMap(({ itemId }) => power?.loads.find(({ id }) => id === itemId)?.sourceId ?? []),
  );
  const needs: readonly SetupNeed[] = [
    {
      department: 'camera',
      words: carried.filter(({ icon }) => !OF_GRIP.has(icon)).map(({ words }) => words),
    },
    { department: 'light', words: burning.map(({ label, fromDim }) => `${label}${dimmed(fromDim)}`) },
    { department: 'grip', words: carried.filter(({ icon }) => OF_GRIP.has(icon)).map(({ words }) => words) },
    {
      department: 'power',
      words: (power?.sources ?? []).filter(({ id }) => sourceIds.has(id)).map(({ label }) => label),
    },
    { department: 'cast', words: (sheet?.cast ?? []).map(({ label }) => label) },
  ];
  return needs.filter(({ words }) => words.length > 0);
}

/** A setup's needs as they are told after the setups before it: what stays as it was only names the setup that has it written out. */
export interface ToldNeed {
  readonly department: SetupNeed['department'];
  /** `Head 1, backlight at 12 %; Head 4`, or `as for A`. Names may have commas of their own. */
  readonly words: string;
}

/** Needs of setups one after the other. @param letters of the same setups */
export function toldNeeds(
  needs: readonly (readonly SetupNeed[])[],
  letters: readonly string[],
): readonly (readonly ToldNeed[])[] {
  const written = new Map<string, { readonly words: string; readonly letter: string }>();
  return needs.map((own, place) =>
    own.map(({ department, words: list }) => {
      const words = list.join('; ');
      const before = written.get(department);
      if (before?.words === words) return { department, words: `as for ${before.letter}` };
      written.set(department, { words, letter: letters[place] });
      return { department, words };
    }),
  );
}
