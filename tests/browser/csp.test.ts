import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { HEADER_POLICY, PAGE_POLICY } from '../../src/building/contentPolicy';
import { linkOfPlan } from '../../src/exchange/link/link';
import { HOUSE } from '../../src/workshop/house.mjs';
import { REAL_MODELS } from '../plans/realModels';
import { smallRoof } from '../unit/smallRoof';
import { drop, dropPlan } from './dropping';
import { openPage } from './harness';
import { OwnServer } from './ownServer';
import { withPlainFiles } from './plainFiles';
import { withFewWorkers } from './withFewWorkers';
import { withoutPicture } from './withoutPicture';

const PATIENT = { timeout: 600_000 };
const DIST = join(HOUSE, 'dist');

/** The policy as a server would send it with every file, to workers as well. */
const server = new OwnServer(DIST, '/', { 'content-security-policy': HEADER_POLICY });
let home = '';
beforeAll(async () => {
  home = await server.start();
});
afterAll(() => server.stop());

/** Tells whatever the policy keeps the page from, so that the test fails on it. */
function tellViolations(): void {
  document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI, sourceFile }) =>
    console.error(`kept from ${blockedURI} by ${violatedDirective}, in ${sourceFile}`),
  );
}
const BEFORE = [tellViolations, withPlainFiles];

test('the built page has the policy in its head, before its scripts, and no script or style within itself', () => {
  const page = readFileSync(join(DIST, 'index.html'), 'utf8').replaceAll('&#39;', "'");
  expect(page).toContain(`http-equiv="Content-Security-Policy" content="${PAGE_POLICY}"`);
  expect(page.indexOf('Content-Security-Policy')).toBeLessThan(page.indexOf('<script'));
  expect(page).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\son\w+=|javascript:/);
  expect(PAGE_POLICY).not.toMatch(/unsafe|https?:|\*/);
  expect(HEADER_POLICY.replace("'wasm-unsafe-eval'", '')).not.toMatch(/unsafe|https?:|\*/);
});

test('the desk lives by the policy: sheets, a packed model, the pack', PATIENT, async () => {
  const page = await openPage({
    home,
    before: [...BEFORE, withoutPicture, withFewWorkers],
    width: 900,
    height: 600,
  });
  for (const sheet of ['Set', 'Blocking', 'Frames', 'Light', 'Night', 'Crew']) {
    await page.getByRole('tab', { name: new RegExp(sheet) }).click();
    await page.locator('#sheet-panel :is(button, input)').first().waitFor();
  }
  await dropPlan(page, { ...smallRoof(), title: 'Night of one setup' });
  await drop(page, ['bunny.glb', REAL_MODELS.bunny]);
  await page.locator('.toast', { hasText: 'bunny is on the roof' }).waitFor();
  await page.locator('body').press('5');
  const [download] = await Promise.all([
    page.waitForEvent('download', PATIENT),
    page.getByRole('button', { name: 'Save the pack', exact: true }).click(),
  ]);
  expect(readFileSync(await download.path(), 'latin1').slice(0, 5)).toBe('%PDF-');
});

test('the crew sheet lives by the policy: its tabs and a picture', PATIENT, async () => {
  const address = `#${linkOfPlan({ ...smallRoof(), title: 'Night of the policy' }).fragment}`;
  const page = await openPage({ home, address, before: BEFORE, width: 390, height: 844, touch: true });
  // By keys: where no graphics card draws, the pictures leave a pointer little time.
  for (const tab of ['Overhead', 'Power', 'Times', 'Lists', 'Setups'])
    await page.getByRole('navigation').getByRole('button', { name: tab }).press('Enter', PATIENT);
  await page.locator('img[src^="blob:"]').first().waitFor(PATIENT);
});
