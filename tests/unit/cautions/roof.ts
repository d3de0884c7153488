import { cautionsOf } from '../../../src/core/cautions/cautions';
import type { Caution } from '../../../src/core/cautions/types';
import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { BARE, planFrom } from '../../plans/bare';

/** A deck of 20 by 12 metres, 20 metres over the street. */
export const DECK = {
  id: 'deck',
  label: 'Deck',
  kind: 'deck',
  outline: [
    [-10, -6],
    [10, -6],
    [10, 6],
    [-10, 6],
  ],
  topMetres: 0,
  dropMetres: 20,
};

/** A parapet along its whole edge, so high. */
export const parapet = (heightMetres: number) => ({
  id: 'parapet',
  label: 'Parapet',
  kind: 'parapet',
  path: [
    [-9.9, -5.9],
    [9.9, -5.9],
    [9.9, 5.9],
    [-9.9, 5.9],
  ],
  closed: true,
  baseMetres: 0,
  heightMetres,
  thicknessMetres: 0.2,
  copingMetres: 0.05,
  material: 'brick',
});

/** A stair house in the middle of the left side, its door to the right. */
export const HOUSE = {
  id: 'house',
  label: 'Stair house',
  kind: 'stair house',
  at: [-8, 0, 0],
  headingDegrees: 90,
  size: [3, 2.8, 3],
  door: { widthMetres: 0.9, heightMetres: 2, alongMetres: 0 },
  overhangMetres: 0,
  material: 'brick',
};

export const standAt = (id: string, at: readonly number[], more: object = {}) => ({
  id,
  label: id,
  kind: 'stand',
  stand: 'flag-stand',
  at,
  headingDegrees: 0,
  heightMetres: 2,
  ...more,
});

export const flagOn = (id: string, on: string, more: object = {}) => ({
  id,
  label: id,
  kind: 'flag',
  place: { on },
  headingDegrees: 0,
  tiltDegrees: 0,
  size: [1.2, 1.2],
  ...more,
});

export const performerAt = (id: string, ...spots: readonly (readonly number[])[]) => ({
  id,
  label: id,
  figure: 'female',
  statureMetres: 1.7,
  build: 'medium',
  clothes: {
    upper: 'coat',
    upperColour: '#222222',
    lowerColour: '#222222',
    head: 'bare',
    headColour: '#222222',
    skinColour: '#aa8866',
  },
  marks: spots.map((at, k) => ({
    id: `${id}-mark-${k + 1}`,
    beat: k === 0 ? 'start' : 'end',
    at,
    headingDegrees: 0,
    stance: 'stand',
    holdSeconds: 1,
  })),
});

/** A roof with these things on it. */
export const roof = (things: {
  readonly pieces?: readonly unknown[];
  readonly gear?: readonly unknown[];
  readonly cast?: readonly unknown[];
  readonly more?: object;
}): Plan =>
  planFrom({
    ...BARE,
    kit: { ...BARE.kit, heads: BUILT_IN_KIT.heads, stands: BUILT_IN_KIT.stands },
    pieces: things.pieces ?? [DECK, parapet(1.2)],
    gear: things.gear ?? [],
    cast: things.cast ?? [],
    beats: [
      { id: 'start', label: 'Start', atSeconds: 0 },
      { id: 'end', label: 'End', atSeconds: 20 },
    ],
    ...things.more,
  });

/** The cautions about one matter. */
export const about = (plan: Plan, matter: string): readonly Caution[] =>
  cautionsOf(plan).filter(({ id }) => id === matter || id.startsWith(`${matter}/`));

/** A figure of a caution by its name. */
export const figureOf = (caution: Caution | undefined, name: string): number =>
  caution?.figures.find((figure) => figure.name === name)?.value ?? Number.NaN;
