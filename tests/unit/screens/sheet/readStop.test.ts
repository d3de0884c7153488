import { expect, test } from 'vitest';
import { readStop } from '../../../../src/screens/sheet/readStop';
import { rooftop } from '../../core/plan/edits/rooftop';

const [lens] = rooftop().kit.lenses;
if (!lens) throw new Error('the rooftop has a lens');

test.each([
  ['2.8', 2.8],
  ['T2.8', 2.8],
  ['t 4', 4],
  ['5,6', 5.6],
  ['f/8', 8],
])('%s is read', (text, stop) => expect(readStop(text, lens)).toEqual({ ok: true, stop }));

test.each([
  ['28', 'This lens opens from T2.3 to T22. Did you mean T2.8?', 2.8],
  ['1.4', 'This lens opens from T2.3 to T22.', 2.3],
  ['45', 'This lens opens from T2.3 to T22. Did you mean T4.5?', 4.5],
  ['1000', 'This lens opens from T2.3 to T22.', 22],
  ['wide open', 'This lens opens from T2.3 to T22. Type a stop such as T2.8.', null],
])('%s is refused with what would work', (text, sentence, nearest) =>
  expect(readStop(text, lens)).toEqual({ ok: false, sentence, nearest }),
);
