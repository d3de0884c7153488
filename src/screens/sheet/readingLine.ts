import type { ReportState } from '../../desk/reportStore';

/** What the line beside the tabs says of the report. */
export type ReadingLine =
  | { readonly kind: 'trouble'; readonly sentence: string }
  | { readonly kind: 'silent' | 'stopped' }
  | { readonly kind: 'reading'; readonly done: number; readonly of: number };

/**
 * What the line says, null for nothing: why there is no report of the night before how far it is, and what became of an
 * instant only when nothing else is to be said.
 */
export function readingLine(
  state: Pick<ReportState, 'trouble' | 'instantTrouble' | 'silent' | 'reading' | 'stopped'>,
): ReadingLine | null {
  const { trouble, instantTrouble, silent, reading, stopped } = state;
  if (trouble !== null) return { kind: 'trouble', sentence: trouble };
  if (silent) return { kind: 'silent' };
  if (reading) return { kind: 'reading', ...reading };
  if (instantTrouble !== null) return { kind: 'trouble', sentence: instantTrouble };
  return stopped ? { kind: 'stopped' } : null;
}
