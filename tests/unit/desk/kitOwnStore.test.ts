import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { LENSES } from '../../../src/core/kit/lenses';
import type { Lens } from '../../../src/core/plan/schema/kit';

const KEY = 'standclear.kit';
const [LENS] = LENSES;

/** A browser's storage; `refuses` throws as a full or private one does. */
function storage(refuses: boolean): Map<string, string> {
  const kept = new Map<string, string>();
  vi.stubGlobal('localStorage', {
    getItem: (key: string) => kept.get(key) ?? null,
    setItem: (key: string, text: string) => {
      if (refuses) throw new DOMException('full', 'QuotaExceededError');
      kept.set(key, text);
    },
  });
  return kept;
}

/** The store as a page finds it that is opened anew. */
async function openPage() {
  vi.resetModules();
  return import('../../../src/desk/kit/ownKitStore');
}

beforeEach(() => void storage(false));
afterEach(() => void vi.unstubAllGlobals());

test('what is kept is there again when the page is opened anew', async () => {
  const first = await openPage();
  expect(first.keepLens(LENS)).toBeNull();
  expect(first.keepLens({ ...LENS, label: 'Changed' })).toBeNull();
  const second = await openPage();
  expect(second.ownKitStore.getState()).toMatchObject({
    lenses: [{ ...LENS, label: 'Changed' }],
    trouble: null,
  });
  second.forgetLens(LENS.id);
  expect((await openPage()).ownKitStore.getState().lenses).toEqual([]);
});

test('what is no lens is not kept, and it is said why', async () => {
  const { keepLens, ownKitStore } = await openPage();
  expect(keepLens({ ...LENS, focalMm: 0 })).toBe('This takes 1 to 3000 mm.');
  expect(keepLens({ ...LENS, narrowestStop: 1 })).toBe('The narrowest stop is T2.3 or more, the widest.');
  expect(ownKitStore.getState().lenses).toEqual([]);
});

test('storage that refuses is said, and the kit lasts as long as the page', async () => {
  storage(true);
  const { keepLens, ownKitStore } = await openPage();
  expect(keepLens(LENS)).toBeNull();
  expect(ownKitStore.getState().lenses).toEqual([LENS]);
  expect(ownKitStore.getState().trouble).toContain('does not let the page keep the kit');
});

test('a kit that cannot be read is said and laid aside, not written over', async () => {
  const kept = storage(false);
  kept.set(KEY, '{"standclearKit":9}');
  const { keepLens, ownKitStore } = await openPage();
  expect(ownKitStore.getState().trouble).toContain('standclearKit: found 9, expected version 1.');
  keepLens(LENS);
  expect([...kept.values()]).toContain('{"standclearKit":9}');
});

test('of a file what is new or changed is counted and taken in, and what is the same is not', async () => {
  const { keepLens, ownKitStore, restoreOwnKit, takeIn } = await openPage();
  keepLens(LENS);
  const before = ownKitStore.getState();
  const other: Lens = { ...LENS, id: 'other' };
  expect(takeIn({ bodies: [], lenses: [LENS, other] })).toEqual({ bodies: 0, lenses: 1 });
  expect(takeIn({ bodies: [], lenses: [LENS, other] })).toEqual({ bodies: 0, lenses: 0 });
  restoreOwnKit(before);
  expect(ownKitStore.getState().lenses).toEqual([LENS]);
});
