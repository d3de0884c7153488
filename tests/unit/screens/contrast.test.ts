import { describe, expect, test } from 'vitest';
import { textOf } from '../../plans/readPlan';

const TOKENS = textOf('src/screens/styles/tokens.css');

/** The colours of a theme, by token. */
function coloursOf(theme: 'night' | 'day'): ReadonlyMap<string, string> {
  const block = new RegExp(`\\[data-theme="${theme}"\\] \\{([^}]*)\\}`).exec(TOKENS)?.[1] ?? '';
  return new Map([...block.matchAll(/--([\w-]+): (#[0-9a-f]{6});/g)].map(([, name, value]) => [name, value]));
}

/** `Source:` WCAG 2.2, relative luminance of sRGB. */
function luminance(colour: string): number {
  const [red, green, blue] = [1, 3, 5].map((at) => {
    const value = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** `Source:` WCAG 2.2, contrast ratio: 1 for the same, 21 for black on white. */
function contrast(one: string, other: string): number {
  const [dark, light] = [luminance(one), luminance(other)].toSorted((a, b) => a - b);
  return (light + 0.05) / (dark + 0.05);
}

const GROUNDS = ['ground', 'sheet', 'deck', 'raised'];
const LETTERED = ['text', 'quiet', 'sodium', 'vermilion', 'verdigris'];
/** Edges of controls, rings of the focus, icons and drawn lines. */
const DRAWN = ['edge', 'focus', 'line'];

describe.each(['night', 'day'] as const)('by %s', (theme) => {
  const colours = coloursOf(theme);
  const of = (name: string): string => {
    const colour = colours.get(name);
    if (colour === undefined) throw new Error(`there is no colour ${name}`);
    return colour;
  };

  test('what is read stands out by 4.5 on every ground', () => {
    for (const name of LETTERED)
      for (const ground of GROUNDS)
        expect(contrast(of(name), of(ground)), `${name} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    for (const ground of ['text', 'vermilion', 'verdigris', 'sodium'])
      expect(contrast(of('inverse'), of(ground)), `inverse on ${ground}`).toBeGreaterThanOrEqual(4.5);
  });

  test('edges of controls, rings of the focus and drawn lines stand out by 3 on every ground', () => {
    for (const name of DRAWN)
      for (const ground of GROUNDS)
        expect(contrast(of(name), of(ground)), `${name} on ${ground}`).toBeGreaterThanOrEqual(3);
  });
});
