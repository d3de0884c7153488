import { describe, expect, test } from 'vitest';
import { findingChanges } from '../../../../src/screens/report/findingChanges';
import { inFrameWords } from '../../../../src/screens/report/inFrame';
import { spokenChanges } from '../../../../src/screens/report/spokenChanges';
import { itemReport, setupReport } from './itemReport';

const shows = (id: string, share = 0.01) => itemReport({ id, verdict: 'showing', share });
const clear = (id: string) => itemReport({ id });

describe('what an edit changed is said', () => {
  test('not at all where every finding stayed what it was', () => {
    const before = setupReport(shows('Lamp stand 2'), clear('Flag'));
    expect(findingChanges(before, setupReport(shows('Lamp stand 2', 0.2), clear('Flag')))).toBeNull();
  });

  test('as what came, what became another, and what went', () => {
    const before = setupReport(shows('Lamp stand 2'), clear('Flag'), shows('Head 1'));
    const after = setupReport(
      clear('Lamp stand 2'),
      shows('Flag'),
      itemReport({ id: 'Head 1', verdict: 'mirrored', mirroredShare: 0.01 }),
    );
    expect(findingChanges(before, after)).toBe(
      'New: Flag shows, Head 1 is mirrored. No longer: Lamp stand 2.',
    );
  });

  test('with four names at most', () => {
    const names = ['One', 'Two', 'Three', 'Four', 'Five', 'Six'];
    const [before, after] = [setupReport(...names.map(clear)), setupReport(...names.map((id) => shows(id)))];
    expect(findingChanges(before, after)).toBe('New: One shows, Two shows, Three shows, Four shows, 2 more.');
    expect(findingChanges(after, before)).toBe('No longer: One, Two, Three, Four, 2 more.');
  });
});

test('of an edit the setup that is looked at is told in full, the others in a sentence, and nothing twice', () => {
  const night = (...setups: readonly ReturnType<typeof setupReport>[]) => ({
    title: 'Night',
    setups: setups.map((setup, place) => ({ ...setup, id: 'ab'.charAt(place) })),
    notices: [],
  });
  const before = night(setupReport(shows('Flag')), setupReport(clear('Flag')));
  const after = night(setupReport(clear('Flag')), setupReport(shows('Flag')));
  const letter = (id: string): string => id.toUpperCase();
  const [a, b] = [0, 1].map((k) => [before.setups[k], after.setups[k]] as const);
  expect(spokenChanges(a, [before, after], letter)).toEqual({
    own: 'No longer: Flag.',
    others: 'That puts Flag in the way of B.',
  });
  expect(spokenChanges(b, [before, after], letter)).toEqual({
    own: 'New: Flag shows.',
    others: 'Flag is out of the way of A.',
  });
  expect(spokenChanges(a, [null, after], letter).others).toBeNull();
});

describe('what a frame holds is told', () => {
  test('the cast first, from left to right, then what should keep out, then the largest things, then what a mirror has', () => {
    const words = inFrameWords(
      setupReport(
        itemReport({ id: 'Wall', wish: 'either', verdict: 'showing', share: 0.6 }),
        shows('Box', 0.01),
        itemReport({
          id: 'Loft',
          verdict: 'showing',
          share: 0.3,
          touches: ['right'],
          extent: [0.6, 0, 1, 1],
        }),
        itemReport({ id: 'Nuno', kind: 'performer', verdict: 'showing', extent: [0.45, 0, 0.55, 1] }),
        itemReport({ id: 'Vera', kind: 'performer', verdict: 'showing', extent: [0.1, 0, 0.2, 1] }),
        itemReport({ id: 'Head 4', verdict: 'mirrored', mirroredShare: 0.02 }),
        clear('Flag'),
      ),
    );
    expect(words).toBe(
      'In frame: Vera in the left third, Nuno in the middle third, Loft at frame right, Box in frame, Wall in frame. Only in a reflection: Head 4.',
    );
  });

  test('as nothing, where nothing is, and in part where there is much', () => {
    expect(inFrameWords(setupReport(clear('Flag')))).toBe('Nothing of the plan is in frame.');
    const many = Array.from({ length: 9 }, (_, k) => shows(`Box ${k}`, 0.1 - k / 100));
    expect(inFrameWords(setupReport(...many))).toMatch(/Box 5 in frame, 3 more\.$/);
  });
});
