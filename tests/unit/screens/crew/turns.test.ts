import { expect, test } from 'vitest';
import { nextWanted } from '../../../../src/screens/crew/picture/turns';

test('what is in sight comes first, then the order of the night', () => {
  const waiting = [
    { key: 'c', order: 2, seen: 1 },
    { key: 'a', order: 0, seen: 0 },
    { key: 'b', order: 1, seen: 2 },
  ];
  expect(nextWanted(waiting)?.key).toBe('b');
  expect(nextWanted(waiting.filter(({ key }) => key !== 'b'))?.key).toBe('c');
  expect(nextWanted(waiting.slice(1, 2))?.key).toBe('a');
  expect(nextWanted([])).toBeNull();
});
