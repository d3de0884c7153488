import { DECIDES } from '../../core/cautions/caution';
import type { Caution } from '../../core/cautions/types';
import { plainText } from '../plainText';
import type { Ink } from './ink';
import { wrapTo } from './textWidth';

/**
 * What can hurt somebody on the roof: what breaks a figure and what is said, each in lines of a width with the note on
 * it, then what holds; and who decides. Nothing where there is no caution.
 */
export function cautionLines(cautions: readonly Caution[], width: number, ink: Ink): string[] {
  if (cautions.length === 0) return [];
  return [
    ink.strong('Cautions'),
    ...cautions.flatMap(({ standing, sentence, note }) => {
      const noted = note === undefined ? '' : ` Noted: ${note}`;
      const lines = wrapTo(`${standing}: ${plainText(`${sentence}${noted}`)}`, width, '  ');
      return standing === 'breaks' && note === undefined ? lines.map(ink.strong) : lines;
    }),
    ...wrapTo(DECIDES, width, '').map(ink.faint),
  ];
}
