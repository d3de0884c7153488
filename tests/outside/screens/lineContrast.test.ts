import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';

/**
 * Web Content Accessibility Guidelines 2.2, success criterion 1.4.11, non-text contrast: 3:1 against adjacent colours;
 * contrast (L1 + 0.05) / (L2 + 0.05) of relative luminances, with the sRGB curve of its glossary. From memory.
 */
const LEAST = 3;

type Colour = readonly [number, number, number];

const styles = (name: string): string =>
  readFileSync(new URL(`../../../src/screens/${name}`, import.meta.url), 'utf8').replaceAll(
    /\/\*.*?\*\//gs,
    '',
  );
const tokens = styles('styles/tokens.css');
const frame = `${styles('styles/frame.css')}\n${styles('styles/frameLines.css')}`;

function token(name: string): Colour {
  const hex = new RegExp(`${name}:\\s*#([0-9a-f]{6})`).exec(tokens)?.[1];
  if (!hex) throw new Error(`found no ${name} in the tokens`);
  const [r, g, b] = [0, 2, 4].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return [r, g, b];
}

/** A number that the rule of a selector gives. */
function given(selector: string, property: string): number {
  const rule = frame.split('}').find((each) => each.split('{')[0].trim() === selector);
  const value = new RegExp(`[\\s;{]${property}:\\s*([\\d.]+)`).exec(rule ?? '')?.[1];
  if (value === undefined) throw new Error(`found no ${property} of ${selector}`);
  return Number(value);
}

const over = (colour: Colour, opacity: number, under: Colour): Colour => {
  const [r, g, b] = [0, 1, 2].map((k) => colour[k] * opacity + under[k] * (1 - opacity));
  return [r, g, b];
};
const luminance = (colour: Colour): number => {
  const [r, g, b] = colour
    .map((value) => value / 255)
    .map((value) => (value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4));
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: Colour, b: Colour): number => {
  const [light, dark] = [luminance(a), luminance(b)].toSorted((x, y) => y - x);
  return (light + 0.05) / (dark + 0.05);
};

const paper = token('--on-picture');
const ink = token('--on-picture-ink');
const PICTURES: readonly (readonly [string, Colour])[] = [
  ['white', [255, 255, 255]],
  ['mid grey', [119, 119, 119]],
  ['bright grey', [190, 190, 190]],
  ['dark grey', [60, 60, 60]],
  ['black', [0, 0, 0]],
];
const LINES = [
  '.frame-lines .delivery',
  '.frame-lines .second-delivery',
  '.frame-lines .centre',
  '.frame-lines .thirds',
  '.frame-lines .safe path:not(.halo)',
];

test('the contrast is counted as the guidelines do: 21 from black to white, 4.48 from their grey to white', () => {
  expect(contrast([0, 0, 0], [255, 255, 255])).toBeCloseTo(21, 9);
  expect(contrast([119, 119, 119], [255, 255, 255])).toBeCloseTo(4.48, 2);
});

describe.each(PICTURES)('over a %s picture', (_, picture) => {
  const halo = over(ink, given('.frame-lines .halo', 'stroke-opacity'), picture);
  test.each(LINES)('%s stands out from its halo by 3:1', (selector) => {
    const line = over(paper, given(selector, 'stroke-opacity'), halo);
    expect(contrast(line, halo)).toBeGreaterThanOrEqual(LEAST);
  });

  test('the cross that holds somebody stands out from its own halo, which is not let through', () => {
    expect(contrast(paper, ink)).toBeGreaterThanOrEqual(LEAST);
  });

  test('where the image circle ends is seen: by its line, or by the dark beyond it', () => {
    const dark = over([0, 0, 0], given('.image-circle .dark', 'fill-opacity'), picture);
    const line = over(paper, given('.image-circle .edge', 'stroke-opacity'), dark);
    expect(Math.max(contrast(dark, picture), contrast(line, dark))).toBeGreaterThanOrEqual(LEAST);
  });
});

test('the halo is wider than the line on both sides of it', () => {
  expect(given('.frame-lines .halo', 'stroke-width')).toBeGreaterThanOrEqual(3);
});
