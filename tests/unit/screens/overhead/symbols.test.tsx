import { renderToStaticMarkup } from 'react-dom/server';
import { describe, expect, test } from 'vitest';
import type { Opening, Piece } from '../../../../src/core/plan/schema/pieces';
import { DeckGround } from '../../../../src/screens/overhead/symbols/DeckGround';
import { GearSymbol } from '../../../../src/screens/overhead/symbols/GearSymbol';
import { PieceSymbol } from '../../../../src/screens/overhead/symbols/PieceSymbol';
import { EVERY_KIND, planOf, STAND } from '../../form/gear/plans';
import { ROOFTOP } from '../../form/pieces/rooftop';

const GROUND = { surface: 'concrete', wetness: 'dry' } as const;
const drawn = (piece: Piece): string => renderToStaticMarkup(<PieceSymbol piece={piece} ground={GROUND} />);
/** How many separate outlines the first path of a class has. */
const outlines = (markup: string, name: string): number =>
  (
    new RegExp(`class="${name}"[^>]* d="([^"]*)"|d="([^"]*)"[^>]* class="${name}"`)
      .exec(markup)?.[0]
      .match(/M/g) ?? []
  ).length;

const opening = (sillMetres: number, heightMetres: number, widthMetres = 1): Opening => ({
  id: 'o',
  alongMetres: 3,
  widthMetres,
  sillMetres,
  heightMetres,
});
const RUN = {
  id: 'r',
  label: 'Run',
  path: [
    [0, 0],
    [6, 0],
  ] as [number, number][],
  closed: false,
  baseMetres: 0,
  heightMetres: 2.5,
};
const wall = (...openings: Opening[]): Piece => ({
  ...RUN,
  kind: 'wall',
  thicknessMetres: 0.2,
  material: 'brick',
  openings,
});

test.each(ROOFTOP.map((piece) => [piece.label, piece] as const))(
  '%s is drawn without a number that is none',
  (_, piece) => {
    expect(drawn(piece)).not.toMatch(/NaN|undefined|Infinity/);
  },
);

test.each(EVERY_KIND.map((gear) => [gear.id, gear] as const))(
  '%s is drawn without a number that is none',
  (_, gear) => {
    const markup = renderToStaticMarkup(<GearSymbol gear={gear} plan={planOf(EVERY_KIND)} />);
    expect(markup.length).toBeGreaterThan(0);
    expect(markup).not.toMatch(/NaN|undefined|Infinity/);
  },
);

describe('a run that something opens in', () => {
  test('is broken, with the swing of a door where one walks through a wall', () => {
    expect(outlines(drawn(wall()), 'wall-fill')).toBe(1);
    const door = drawn(wall(opening(0, 2.05)));
    expect(outlines(door, 'wall-fill')).toBe(2);
    // Hinged at 2.5 m on the side to the right of the run, a quarter of a circle of its width.
    expect(door).toContain('M2.5 0.1L2.5 1.1A1 1 0 0 0 3.5 0.1');
    expect(drawn(wall(opening(0, 2.05, 1.6))).match(/A0\.8 0\.8/g)).toHaveLength(2);
  });

  test('has a window as lines, and none for what lies over or under the cut', () => {
    const window = drawn(wall(opening(0.9, 1.2)));
    expect(outlines(window, 'wall-fill')).toBe(2);
    expect(window).toContain('class="thin"');
    expect(window).not.toContain('A1 1');
    for (const other of [opening(0, 0.3), opening(1.8, 0.5)])
      expect(outlines(drawn(wall(other)), 'wall-fill')).toBe(1);
  });

  test('is a gap without a door where it is a parapet, and a dashed line where it is a fence', () => {
    const gap = drawn({
      ...RUN,
      kind: 'parapet',
      heightMetres: 1,
      thicknessMetres: 0.3,
      copingMetres: 0.1,
      material: 'brick',
      openings: [opening(0, 1)],
    });
    expect(outlines(gap, 'wall-fill')).toBe(2);
    expect(gap).not.toContain('A1 1');
    const gate = drawn({
      ...RUN,
      kind: 'fence',
      postEveryMetres: 2,
      postMetres: 0.05,
      rails: 2,
      mesh: null,
      openings: [opening(0, 2.5)],
    });
    expect(outlines(gate, 'thin')).toBe(2);
    expect(gate).toContain('class="dashhair" d="M2.5 0L3.5 0"');
  });
});

test('a hole is left out of the ground, and crossed out', () => {
  const deck = ROOFTOP.find(({ id }) => id === 'deck-with-wells');
  if (deck?.kind !== 'deck') throw new Error('The rooftop has no deck with wells.');
  const markup = renderToStaticMarkup(
    <svg aria-hidden="true">
      <DeckGround deck={deck} />
    </svg>,
  );
  expect(outlines(markup, 'deck-fill')).toBe(3);
  expect(markup).toContain('M22 -5L25 -2M22 -2L25 -5');
});

test('a stand stands on the circle of its feet, with a bean for each of its bags', () => {
  const stand = { ...STAND, at: [0, 0, 0] as [number, number, number], headingDegrees: 0, spreadMetres: 0.8 };
  const markup = (bags: number) =>
    renderToStaticMarkup(
      <GearSymbol
        gear={bags > 0 ? { ...stand, bags: { count: bags, kilograms: 9 } } : stand}
        plan={planOf([])}
      />,
    );
  expect(markup(0)).toContain('class="leg" d="M0 0L0 -0.4M');
  expect(markup(0).match(/item bag/g)).toBeNull();
  expect(markup(4).match(/item bag/g)).toHaveLength(4);
});
