import { afterEach, expect, test, vi } from 'vitest';
import { drawsInSoftware, firstQuality, QUALITIES, STRAINED } from '../../../src/scene/drive/quality';

const NAMED = 37446;

/** A context whose card calls itself so. */
const drawnBy = (name: string): WebGL2RenderingContext =>
  ({
    getExtension: () => ({ UNMASKED_RENDERER_WEBGL: NAMED }),
    getParameter: (what: number) => (what === NAMED ? name : ''),
  }) as unknown as WebGL2RenderingContext;

function on(coarse: boolean, width: number, height: number): void {
  vi.stubGlobal('matchMedia', (asked: string) => ({ matches: coarse && asked.includes('coarse') }));
  vi.stubGlobal('screen', { width, height });
}

afterEach(() => vi.unstubAllGlobals());

test('without a card, and on a phone, pictures begin light; a card on a desk or a tablet begins in full', () => {
  const card = drawnBy('Some vendor, discrete graphics');
  on(false, 1440, 900);
  expect(firstQuality(card)).toBe('full');
  for (const name of ['SwiftShader driver', 'llvmpipe, 256 bits', 'Basic Render Driver']) {
    expect(drawsInSoftware(drawnBy(name))).toBe(true);
    expect(firstQuality(drawnBy(name))).toBe('light');
  }
  on(true, 390, 844);
  expect(firstQuality(card)).toBe('light');
  on(true, 834, 1194);
  expect(firstQuality(card)).toBe('full');
});

test('a strained picture has as many lamps and shadows as a full one, and costs less to sample', () => {
  const { full } = QUALITIES;
  expect(STRAINED.rig.shadows).toBe(full.rig.shadows);
  expect(STRAINED.rig.points).toBe(full.rig.points);
  expect(STRAINED.lens).toBe(full.lens);
  expect(STRAINED.samples).toBeLessThan(full.samples);
  expect(STRAINED.rig.shadowTaps[1]).toBeLessThan(full.rig.shadowTaps[1]);
});
