import { describe, expect, test } from 'vitest';
import { textOf } from '../../plans/readPlan';

/**
 * CIE 1976 lightness L*: 116 · f(Y) − 16, f the cube root of Y, with the straight stretch below 216 ÷ 24389, Y by the
 * sRGB curve and the middle row of its matrix. From memory.
 */
type Colour = readonly [number, number, number];

function lightness([red, green, blue]: Colour): number {
  const [r, g, b] = [red, green, blue].map((value) =>
    value / 255 <= 0.04045 ? value / 255 / 12.92 : ((value / 255 + 0.055) / 1.055) ** 2.4,
  );
  const y = 0.2126 * r + 0.7152 * g + 0.0722 * b;
  return y > 216 / 24389 ? 116 * Math.cbrt(y) - 16 : (y * 24389) / 27;
}

const TOKENS = textOf('src/screens/styles/tokens.css');
const LEVELS = textOf('src/screens/overhead/levels/levels.css');

function colourIn(text: string, name: string): Colour {
  const hex = new RegExp(`--${name}: #([0-9a-f]{6});`).exec(text)?.[1];
  if (!hex) throw new Error(`found no colour ${name}`);
  const [r, g, b] = [0, 2, 4].map((at) => Number.parseInt(hex.slice(at, at + 2), 16));
  return [r, g, b];
}
const blockOf = (theme: string): string =>
  new RegExp(`\\[data-theme="${theme}"\\] \\{([^}]*)\\}`).exec(TOKENS)?.[1] ?? '';

const STEPS = Array.from({ length: 8 }, (_, k) => colourIn(TOKENS, `level-${k + 1}`));
/** The steps between neighbours in a row of colours, L*. */
function stepsOf(colours: readonly Colour[]): readonly number[] {
  const lights = colours.map(lightness);
  return lights.slice(1).map((light, k) => light - lights[k]);
}

describe('the palette of levels', () => {
  test('is lighter from step to step, by as much each time', () => {
    expect([lightness([0, 0, 0]), lightness([255, 255, 255])].map(Math.round)).toEqual([0, 100]);
    // Who tells no colours apart reads it by lightness alone: 10 is seen at once.
    for (const step of stepsOf(STEPS)) {
      expect(step).toBeGreaterThan(9.5);
      expect(step).toBeLessThan(12);
    }
  });

  test.each(['night', 'day'])('stays so where the deck shines through it by %s', (theme) => {
    const opacity = Number(/opacity: (0?\.\d+)/.exec(LEVELS)?.[1]);
    expect(opacity).toBeGreaterThan(0.5);
    const deck = colourIn(blockOf(theme), 'deck');
    const over = STEPS.map((colour): Colour => {
      const [r, g, b] = colour.map((value, k) => value * opacity + deck[k] * (1 - opacity));
      return [r, g, b];
    });
    for (const step of stepsOf(over)) expect(step).toBeGreaterThan(5);
  });

  test('its classes take them in their order', () => {
    const classes = [...LEVELS.matchAll(/\.level-(\d) \{\s*--step: var\(--level-(\d)\)/g)];
    expect(classes.map(([, of, step]) => [of, step])).toEqual(
      Array.from({ length: 8 }, (_, k) => [`${k + 1}`, `${k + 1}`]),
    );
  });
});
