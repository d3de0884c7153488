import { expect, test } from 'vitest';
import { holdingsOf } from '../../../../src/core/continuity/holding';
import { reframing } from '../../../../src/core/continuity/reframing';
import { setupReport } from '../../../../src/core/report/setupReport';
import {
  findingsWords,
  heldWords,
  lensName,
  placeWords,
  reframingWords,
  sizeWords,
} from '../../../../src/screens/sheet/lensTest/words';
import { alongside } from '../../../plans/alongside';
import { smallRoof } from '../../smallRoof';

test('says when somebody is held, how large, and where in frame', () => {
  const plan = alongside(3.6);
  const [setup] = plan.setups;
  const [ana] = holdingsOf(plan, { ...setup, lens: 'two-100' });
  expect(heldWords(ana, [0, 4])).toMatch(
    /^held from \d\.\d\u00a0s to \d\.\d\u00a0s and from \d\.\d\u00a0s to 4\.0\u00a0s$/,
  );
  expect(sizeWords(ana)).toMatch(/shot|close-up|cowboy/);
  const [wide] = holdingsOf(plan, setup);
  expect(heldWords(wide, [0, 4])).toBe('held throughout');
  expect(placeWords(wide)).toMatch(/^(left|middle|right)( to (left|middle|right))?$/);
  expect(heldWords(holdingsOf(plan, setup, 2)[0], [2, 2])).toBe('held');
  const away = { ...ana, sizes: null, first: null, last: null, heldSpans: [], heldThroughout: false };
  expect([sizeWords(away), placeWords(away), heldWords(away, [0, 4])]).toEqual([
    'not in frame',
    null,
    'never held',
  ]);
});

test('says how far the camera goes and what the background becomes', () => {
  const plan = alongside(3.6);
  const args = { lensId: 'two-100', performerId: 'ana', seconds: 2, behindMetres: 10 };
  const found = reframing(plan, plan.setups[0], args);
  if (!found) throw new Error('nobody is there');
  expect(reframingWords(found, 'Ana', 'Stair house', 'm')).toMatch(
    /^From 3\.\d\d\u00a0m to \d\.\d\d\u00a0m, \d\.\d\d\u00a0m back towards Stair house\. 10\.00\u00a0m behind Ana the frame takes \d\.\d\u00a0m instead of \d\d\.\d\u00a0m\.$/,
  );
});

test('counts what fewer or more shows, and names what comes in', () => {
  const plan = smallRoof();
  const report = setupReport(plan, plan.setups[0], { at: 0 });
  const bare = { ...report, items: report.items.filter(({ wish }) => wish !== 'keep out') };
  expect(findingsWords(report, report)).toMatch(/^Findings: as many as now, \d\.$/);
  expect(findingsWords(bare, bare)).toBe('Findings: none, as now.');
  expect(findingsWords(report, bare)).toMatch(/^Findings: \d fewer\.$/);
  expect(findingsWords(bare, report)).toMatch(/^Findings: \d more\. .*Lamp stand 1.* shows?\.$/);
});

test('names a lens by what sets it apart', () => {
  const { lenses } = smallRoof().kit;
  expect(lensName(lenses[0], lenses)).toBe('40\u00a0mm');
  expect(lensName({ ...lenses[0], longestMm: 70 }, lenses)).toBe('40 to 70\u00a0mm');
  const twin = { ...lenses[0], id: 'twin', label: '40 mm close' };
  expect(lensName(twin, [...lenses, twin])).toBe('40 mm close');
});
