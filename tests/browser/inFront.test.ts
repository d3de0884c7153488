import { expect, test } from 'vitest';
import type { Plan } from '../../src/core/plan/schema/plan';
import { keyedFace, keyOn } from '../plans/keyedFace';
import { eventually } from './building';
import { dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { keptPlan } from './keptPlan';
import { withoutDemo } from './withoutDemo';
import { withoutPicture } from './withoutPicture';

const PATIENT_MS = 600_000;

/** Vera beside the line of sight to a small box that hangs behind her. */
function besideTheLine(): Plan {
  const plan = keyedFace({
    gear: [
      ...keyOn('key', [-2.5, 2.5], [0, 0]),
      {
        id: 'distro',
        label: 'Distro',
        kind: 'distro',
        at: [0.55, 1.05, -3],
        headingDegrees: 0,
        size: [0.2, 0.2, 0.2],
      },
    ],
    cameras: [{ id: 'wide', label: 'Wide', at: [0, 6], headingDegrees: 0, lens: 'long' }],
  });
  return { ...plan, title: 'In front', ground: { ...plan.ground, wetness: 'dry' } };
}

test(
  'somebody cheated in front of a finding is drawn with her way, done by one press, and the master stays',
  async () => {
    const page = await openPage({
      width: 1440,
      height: 900,
      before: [withoutPicture, withoutDemo],
    });
    await dropPlan(page, besideTheLine());
    await page.locator('.findings button[aria-expanded]', { hasText: 'Distro' }).first().click();
    const cheat = page.locator('.remedy-list > li', { hasText: 'Vera cheated' });
    await cheat.waitFor();
    expect(await cheat.textContent()).toMatch(
      /Vera cheated 0\.\d\u00a0m to frame right of A hides it in A\./,
    );
    await cheat.getByRole('button', { name: /^Preview: / }).click();
    await page.locator('.proposed-place text', { hasText: /Vera/ }).waitFor();
    await screenshot(page, 'in-front-preview');
    expect((await keptPlan(page)).setups[0].cheats).toBeUndefined();
    await cheat.getByRole('button', { name: /^Do it: / }).click();
    await page.locator('.toast', { hasText: 'Vera cheated' }).waitFor();
    await eventually(async () => (await keptPlan(page)).setups[0].cheats?.length ?? 0).toBe(1);
    expect((await keptPlan(page)).cast[0].marks[0].at).toEqual([0, 0]);
  },
  PATIENT_MS,
);
