import type { ContinuityEntry, CoverageReport } from '../../core/report/types';
import { plainText } from '../plainText';
import type { Ink } from './ink';

/** How a setup cuts with the others: what breaks and what is said, a line each, and how much holds. */
export function continuityLines(entries: readonly ContinuityEntry[], ink: Ink): string[] {
  const holding = entries.filter(({ standing }) => standing === 'holds').length;
  const told = entries
    .filter(({ standing }) => standing !== 'holds')
    .map(({ standing, sentence }) => {
      const line = `${standing}: ${plainText(sentence)}`;
      return standing === 'breaks' ? ink.strong(line) : line;
    });
  return [
    ...told,
    ...(holding > 0 ? [ink.faint(`continuity: ${holding} ${holding === 1 ? 'holds' : 'hold'}`)] : []),
  ];
}

/** What nobody covers. */
export const holeLines = ({ holes }: CoverageReport): string[] => holes.map(({ sentence }) => sentence);
