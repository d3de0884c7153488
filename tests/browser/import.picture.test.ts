import { expect, test } from 'vitest';
import { REAL_MODELS } from '../plans/realModels';
import { smallRoof } from '../unit/smallRoof';
import { drop, dropPlan } from './dropping';
import { openPage, screenshot } from './harness';
import { onlyWorkers } from './onlyWorkers';
import { brightness, framePicture, untilStill } from './picture';
import { withoutDemo } from './withoutDemo';

test('a model with a picture on it is drawn in the frame', async () => {
  const page = await openPage({ width: 1000, height: 640, before: [withoutDemo, onlyWorkers('model')] });
  const roof = smallRoof();
  await dropPlan(page, roof);
  await untilStill(page);
  const before = await framePicture(page);
  await drop(page, ['sign.glb', REAL_MODELS.sign]);
  await page.locator('.toast', { hasText: 'sign is on the roof' }).waitFor();
  await untilStill(page);
  const after = await framePicture(page);
  const changed = Array.from({ length: before.width * before.height }, (_, pixel) => pixel).filter(
    (pixel) => Math.abs(brightness(before, pixel) - brightness(after, pixel)) > 0.02,
  );
  expect(changed.length).toBeGreaterThan(100);
  await screenshot(page, 'import-frame');
});
