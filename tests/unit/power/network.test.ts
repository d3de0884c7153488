import { expect, test } from 'vitest';
import { networkOf } from '../../../src/core/power/network';
import { box, cable, drawing, generator, lamp, wired } from '../../plans/wired';

test('cables drawn either way round carry power away from the source', () => {
  const network = networkOf(
    wired([
      lamp('head'),
      box('box'),
      generator('genny'),
      cable('b', 'head', 'box'),
      cable('a', 'box', 'genny'),
    ]),
  );
  expect(network.faults).toEqual([]);
  expect(network.feeds.map(({ cableId, fromId, toId }) => [cableId, fromId, toId])).toEqual([
    ['a', 'genny', 'box'],
    ['b', 'box', 'head'],
  ]);
  expect(network.feeding.get('head')).toBe('fed');
});

test('a ring is named by its cables and not worked out', () => {
  const network = networkOf(
    wired([
      generator('genny'),
      box('one'),
      box('two'),
      lamp('head'),
      cable('to-one', 'genny', 'one'),
      cable('across', 'one', 'two'),
      cable('to-two', 'genny', 'two'),
      cable('to-head', 'two', 'head'),
    ]),
  );
  const [ring, ...others] = network.faults;
  expect(others).toEqual([]);
  expect(ring?.kind).toBe('ring');
  if (ring?.kind === 'ring') expect([...ring.cableIds].sort()).toEqual(['across', 'to-one', 'to-two']);
  expect(network.feeding.get('head')).toBe('ring');
  expect(network.feeds).toEqual([]);
});

test('two cables side by side are a ring, and so is one that comes back to where it began', () => {
  const twice = networkOf(
    wired([generator('genny'), lamp('head'), cable('a', 'genny', 'head'), cable('b', 'head', 'genny')]),
  );
  expect(twice.faults).toMatchObject([{ kind: 'ring', itemIds: ['head'] }]);
  const back = networkOf(wired([generator('genny'), cable('a', 'genny', 'genny')]));
  expect(back.faults).toMatchObject([{ kind: 'ring', cableIds: ['a'] }]);
});

test('two sources that are joined feed nothing', () => {
  const network = networkOf(
    wired([
      generator('one'),
      generator('two'),
      lamp('head'),
      cable('a', 'one', 'head'),
      cable('b', 'two', 'head'),
    ]),
  );
  expect(network.faults).toEqual([{ kind: 'two sources', sourceIds: ['one', 'two'], itemIds: ['head'] }]);
});

test('what hangs on nothing, on a dead cable, or in the air is told', () => {
  const network = networkOf(
    wired([
      generator('genny'),
      box('box'),
      lamp('bare'),
      lamp('own', { supply: 'own' }),
      lamp('dead'),
      cable('a', 'box', 'dead'),
      cable('b', 'genny', null),
      cable('c', null, null),
      { kind: 'sandbag', id: 'bag', label: 'Bag', at: [0, 0, 0], headingDegrees: 0, kilograms: 5 },
      cable('d', 'genny', 'bag'),
    ]),
  );
  expect(network.faults).toEqual([
    { kind: 'open end', cableId: 'b', itemId: 'genny' },
    { kind: 'takes no plug', cableId: 'd', itemId: 'bag' },
    { kind: 'loose', cableIds: ['c'] },
    { kind: 'no source', itemIds: ['dead'] },
    { kind: 'no cord', itemIds: ['bare'] },
  ]);
  expect(Object.fromEntries(network.feeding)).toEqual({ bare: 'no cord', own: 'own', dead: 'no source' });
});

test('more cables than sockets, and a circuit that is not there', () => {
  const { faults, feeds } = networkOf(
    wired([
      generator('genny', { circuits: [{ amps: 20, sockets: 1 }] }),
      drawing('a', 100),
      drawing('b', 100),
      cable('to-a', 'genny', 'a'),
      cable('to-b', 'genny', 'b', 10, { circuit: 3 }),
    ]),
  );
  expect(faults).toEqual([
    { kind: 'no such circuit', cableId: 'to-b', itemId: 'genny', circuit: 3 },
    { kind: 'too few sockets', itemId: 'genny', cables: 2, sockets: 1 },
  ]);
  expect(feeds).toHaveLength(2);
});

test('cables that name no circuit go where the breaker stays least loaded', () => {
  const { feeds } = networkOf(
    wired([
      generator('genny', {
        circuits: [
          { amps: 20, sockets: 2 },
          { amps: 20, sockets: 2 },
        ],
      }),
      ...[900, 800, 300, 200].map((watts) => drawing(`w${watts}`, watts)),
      ...[900, 800, 300, 200].map((watts) => cable(`c${watts}`, 'genny', `w${watts}`)),
    ]),
  );
  expect(Object.fromEntries(feeds.map(({ toId, circuit }) => [toId, circuit]))).toEqual({
    w900: 0,
    w800: 1,
    w300: 1,
    w200: 0,
  });
});

test('a lamp behind a lamp is fed, and it is said that the first passes power on', () => {
  const { faults, feeds } = networkOf(
    wired([
      generator('genny'),
      lamp('one'),
      lamp('two'),
      cable('a', 'genny', 'one'),
      cable('b', 'one', 'two'),
    ]),
  );
  expect(faults).toEqual([{ kind: 'passes on', itemId: 'one', cableIds: ['b'] }]);
  expect(feeds.map(({ circuit }) => circuit)).toEqual([0, null]);
});
