import { expect, test } from 'vitest';
import type { Distribution } from '../../../../src/core/plan/schema/distribution';
import { changesOfTable } from '../../../../src/screens/sheet/photometry/words';
import { keyOn } from '../../../plans/keyedFace';

const across: Distribution = {
  verticalDegrees: [0, 90],
  horizontalDegrees: [0, 90],
  candela: [
    [100, 0],
    [100, 50],
  ],
  source: 'made up',
};
const round: Distribution = { ...across, horizontalDegrees: [0], candela: [[100, 0]] };

test('what is on a lamp and before it is said to change its table', () => {
  const head = keyOn('1', [0, 3], [0, 0]).find(({ kind }) => kind === 'head');
  if (head?.kind !== 'head') throw new Error('no head');
  const soft = { ...head, before: { diffusion: { transmission: 0.6, spreadDegrees: 45 } } };
  expect(changesOfTable(head, across)).toEqual([]);
  expect(changesOfTable(soft, across)).toEqual([
    'Its diffusion spreads the mean of this table round its axis, the same to all sides.',
  ]);
  expect(changesOfTable(soft, round)).toEqual([]);
  expect(changesOfTable({ ...soft, modifier: 'snoot' }, across)).toEqual([
    'The snoot on this lamp narrows it to a beam of its own.',
  ]);
});
