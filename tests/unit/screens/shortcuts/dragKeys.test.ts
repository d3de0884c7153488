import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { DRAG_KEYS } from '../../../../src/screens/shortcuts/dragKeys';
import { HOUSE } from '../../../../src/workshop/house.mjs';
import { repositoryFiles } from '../../../architecture/repositoryFiles';

/** What hears a hand that moves over it, and drags nothing. */
const ONLY_READS = new Set(['screens/frame/FocusBar.tsx']);

const HANDLES = 'screens/overhead/handles/HandlesLayer.tsx';

/** Where each of them is dragged. */
const DRAGGED_IN: Readonly<Record<string, readonly string[]>> = {
  'things, cameras, wet areas': [
    'screens/overhead/pointers/useSheetPointers.ts',
    'screens/overhead/Sheet.tsx',
    'scene/walk/hand/walkHand.ts',
  ],
  'their handles': [HANDLES],
  'marks, points of a way': [HANDLES],
  'corners of outlines, runs and wet areas': [HANDLES],
  'aim of a lamp, arms, flags, ends of a track, doors': [HANDLES],
  'meters, ways out': ['screens/overhead/pointers/useMarkHand.ts'],
  'the cross that reads a place': ['screens/overhead/levels/ReadingCross.tsx'],
  'the far end of a row': ['screens/overhead/handles/RowEnd.tsx'],
  'keys of a move, under the picture': ['screens/frame/MoveKeys.tsx'],
  'somebody held in frame': ['screens/frame/HoldCross.tsx'],
  'frame lines of your own': ['screens/frame/OwnLines.tsx'],
  'all on the timeline': ['screens/sheet/blocking/Handle.tsx', 'screens/sheet/blocking/Playhead.tsx'],
  'the order of the night': ['screens/sheet/night/order/useReorder.ts'],
  'out of the palette': [],
};

test('the key sheet names the keys for every place where something is dragged, and no place that is not there', () => {
  const dragging = repositoryFiles()
    .filter((path) => /^src\/(screens|scene)\/(?!crew\/).*\.tsx?$/.test(path))
    .filter((path) => /onPointerMove|'pointermove'/.test(readFileSync(join(HOUSE, path), 'utf8')))
    .map((path) => path.replace(/^src\//, ''))
    .filter((path) => !ONLY_READS.has(path));
  const told = new Set(DRAG_KEYS.flatMap(({ what }) => DRAGGED_IN[what] ?? [`${what}: dragged nowhere`]));
  expect(DRAG_KEYS.map(({ what }) => what)).toEqual(Object.keys(DRAGGED_IN));
  expect([...told].toSorted()).toEqual(dragging.toSorted());
});

test('each of them has keys and says what they do', () => {
  for (const { what, keys, word } of DRAG_KEYS) {
    expect(keys.length, what).toBeGreaterThan(0);
    expect(word, what).not.toBe('');
  }
  expect(new Set(DRAG_KEYS.map(({ what }) => what)).size).toBe(DRAG_KEYS.length);
});
