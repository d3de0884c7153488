import { expect, test } from 'vitest';
import { atTexts } from '../../../src/core/clearance/ground/atWords';
import { clearGround } from '../../../src/core/clearance/ground/clearGround';
import { groundAt } from '../../../src/core/clearance/ground/groundAt';
import { heightLimitSteps } from '../../../src/core/clearance/ground/heightLimit';
import { staged } from '../../plans/staged';
import { smallRoof } from '../smallRoof';

const plan = staged({
  cast: {},
  setups: [
    // It turns by a quarter from −z to +x.
    {
      id: 'a',
      keys: [
        { at: [0, 5], heading: 0 },
        { at: [0, 5], heading: 90, atSeconds: 4 },
      ],
      lens: 'long',
    },
    { id: 'b', keys: [{ at: [0, 5], heading: 180 }], lens: 'long' },
  ],
});
const dry = { ...plan, ground: { ...plan.ground, wetness: 'dry' as const } };
const of = { heightMetres: 2.4 };

test('says who sees it, when and where, the worst first, and nobody where it is clear', () => {
  const read = groundAt(dry, { setupIds: ['a', 'b'], of }, [0, -1]);
  if (read === null || typeof read === 'string') throw new Error(String(read));
  expect(read.state).toBe('showing');
  const texts = atTexts(dry, read);
  expect(texts).toHaveLength(1);
  expect(texts[0]).toMatch(/^A sees it here from 0\.0\u00a0s to \d\.\d\u00a0s, in the middle of the frame$/);
  const aside = groundAt(dry, { setupIds: ['a', 'b'], of }, [4.2, 0.8]);
  if (aside === null || typeof aside === 'string') throw new Error(String(aside));
  // It comes into a frame that turns towards it from the right.
  expect(atTexts(dry, aside)[0]).toMatch(
    /^A sees it here from [12]\.\d\u00a0s to [23]\.\d\u00a0s, frame right$/,
  );
  const clear = groundAt(dry, { setupIds: ['b'], of }, [0, -1]);
  if (clear === null || typeof clear === 'string') throw new Error(String(clear));
  expect(atTexts(dry, clear)).toEqual([]);
});

test('of more setups or spans only so many are said one by one', () => {
  const through = (setupId: string, state: 'close' | 'covered' | 'mirrored', count: number) => ({
    setupId,
    state,
    place: state === 'mirrored' ? null : ('left' as const),
    spans: Array.from({ length: count }, (_, k) => [k, k === 0 ? 0 : k + 0.5] as const),
  });
  expect(
    atTexts(dry, { state: 'mirrored', setups: [through('a', 'close', 1), through('b', 'mirrored', 4)] }),
  ).toEqual([
    'B sees it mirrored at 0.0\u00a0s and from 1.0\u00a0s to 1.5\u00a0s, and 2 more times',
    'close to the frame of A at 0.0\u00a0s, frame left',
  ]);
  expect(atTexts(dry, { state: 'covered', setups: [through('a', 'covered', 1)] })).toEqual([
    'A has it covered at 0.0\u00a0s, frame left',
  ]);
});

test.each([
  [{ lowMetres: 3, highMetres: 2 }, /^What hangs: found it from 3 m to 2 m/],
  [{ lowMetres: -1, highMetres: 2 }, /^What hangs: found it from -1 m/],
  [{ lowMetres: 1, highMetres: 31 }, /both from 0 to 30 m/],
  [{ lowMetres: 1, highMetres: 2, acrossMetres: 0 }, /^What hangs: found it 0 m across/],
])('says why nothing hangs like %j', (thing, sentence) => {
  const answer = clearGround(dry, { setupIds: ['a'], of: thing });
  expect('why' in answer ? answer.why : '').toMatch(sentence);
  expect(groundAt(dry, { setupIds: ['a'], of: thing }, [0, 0])).toMatch(sentence);
});

test('what hangs over the frame is clear where a stand would show', () => {
  const question = { setupIds: ['a'], stepMetres: 0.5 };
  const high = clearGround(dry, { ...question, of: { lowMetres: 6, highMetres: 6.5 } });
  const stand = clearGround(dry, { ...question, of: { heightMetres: 6.5 } });
  if ('why' in high || 'why' in stand) throw new Error('no ground');
  const count = (states: Uint8Array): number => states.filter((state) => state === 1).length;
  expect(count(high.ground.states)).toBeGreaterThan(count(stand.ground.states) + 50);
  expect(high.ground.thing).toBe('what hangs from 6\u00a0m to 6.5\u00a0m');
});

test('limits say why there are none', () => {
  const steps = heightLimitSteps(smallRoof(), { setupIds: [] });
  const step = steps.next();
  expect(step.done && 'why' in step.value ? step.value.why : '').toMatch(/^No setup was named/);
});
