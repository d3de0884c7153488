import { expect, test } from 'vitest';
import type { FrameEdge } from '../../../../src/core/report/types';
import { closeMarks } from '../../../../src/screens/frame/closeMarks';
import { overlap } from '../../../../src/screens/frame/pictureBox';
import { itemReport } from '../report/itemReport';

const FRAME = { left: 32, top: 13, width: 640, height: 268 };

const close = (id: string, edge: FrameEdge) =>
  itemReport({
    id,
    label: `Lamp stand ${id}`,
    verdict: 'close',
    margin: { metres: 0.2, frameWidths: 0.02, edge, atSeconds: 0 },
  });

test('a bracket stands where its item comes nearest', () => {
  const [left] = closeMarks([close('1', 'left')], FRAME, 'm', true, () => 0.75);
  expect(left?.path).toMatch(/^M19\.2 214H32/);
  const [top] = closeMarks([close('1', 'top')], FRAME, 'm', true, () => 0.25);
  expect(top?.path).toMatch(/^M192 /);
});

test.each(['left', 'right', 'top', 'bottom'] as const)(
  'words at the %s edge stay in the frame and apart',
  (edge) => {
    for (const along of [0, 0.5, 1]) {
      const marks = closeMarks(
        ['1', '2', '3'].map((id) => close(id, edge)),
        FRAME,
        'm',
        true,
        () => along,
      );
      expect(marks).toHaveLength(3);
      for (const [index, { box }] of marks.entries()) {
        expect(box.left).toBeGreaterThanOrEqual(FRAME.left);
        expect(box.left + box.width).toBeLessThanOrEqual(FRAME.left + FRAME.width);
        expect(box.top).toBeGreaterThanOrEqual(FRAME.top);
        expect(box.top + box.height).toBeLessThanOrEqual(FRAME.top + FRAME.height);
        expect(marks.slice(index + 1).some((other) => overlap(other.box, box))).toBe(false);
      }
    }
  },
);

test('words stay off what is outlined', () => {
  const legs = { left: 600, top: 180, width: 72, height: 60 };
  const of = (outlined: readonly (typeof legs)[]) =>
    closeMarks([close('1', 'right')], FRAME, 'm', true, () => 0.7, outlined)[0]?.box;
  const [there, off] = [of([]), of([legs])];
  expect(there && overlap(there, legs)).toBe(true);
  expect(off && overlap(off, legs)).toBe(false);
});
