import type { ContinuityEntry, CoverageReport } from '../../core/report/types';
import { plainText } from '../plainText';
import type { Ink } from './ink';
import { wrapTo } from './textWidth';

/** How a setup cuts with the others: what breaks and what is said, each in lines of a width, and how much holds. */
export function continuityLines(entries: readonly ContinuityEntry[], width: number, ink: Ink): string[] {
  const holding = entries.filter(({ standing }) => standing === 'holds').length;
  const told = entries
    .filter(({ standing }) => standing !== 'holds')
    .flatMap(({ standing, sentence }) => {
      const lines = wrapTo(`${standing}: ${plainText(sentence)}`, width, '  ');
      return standing === 'breaks' ? lines.map(ink.strong) : lines;
    });
  return [
    ...told,
    ...(holding > 0 ? [ink.faint(`continuity: ${holding} ${holding === 1 ? 'holds' : 'hold'}`)] : []),
  ];
}

/** What nobody covers. */
export const holeLines = ({ holes }: CoverageReport): string[] => holes.map(({ sentence }) => sentence);
