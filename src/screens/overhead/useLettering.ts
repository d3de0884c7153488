import { useEffect, useMemo, useState } from 'react';
import { placeLabels } from './geometry/labels';
import { type Bounds, distance, middleOf, type Ring, type Spot } from './geometry/spots';
import type { WrittenLabel } from './layers/LetteringLayer';
import type { LetteringInput } from './letteredWish';
import { wishesOf } from './lettering';
import { forgetWidths } from './measureText';
import { obstaclesOf } from './obstacles';
import { skylineWish } from './skyline';
import { keyOf } from './targets';

interface Options extends Omit<LetteringInput, 'at' | 'perMetre'> {
  readonly sheet: Pick<LetteringInput, 'at' | 'perMetre'>;
  readonly pane: Bounds;
  readonly blocked: readonly Bounds[];
  /** Lines besides those of the plan: dimensions and leaders. */
  readonly crossed: readonly (readonly [Spot, Spot])[];
  /** Circles around what is found or chosen: no name lies under one. */
  readonly rings: readonly Ring[];
  /** The deck with what stands around it in metres, and that with its dimensions in pixels. */
  readonly drawn: Bounds;
  readonly drawing: Bounds;
}

/** Places the drawing's names; again whenever the plan, the view or what is chosen changes. */
export function useLettering(options: Options): readonly WrittenLabel[] {
  const face = useTypeface();
  const {
    plan,
    seconds,
    setupId,
    chosenIds,
    lengths,
    touch,
    sheet,
    pane,
    blocked,
    crossed,
    rings,
    drawn,
    drawing,
    blocking,
    power,
  } = options;
  return useMemo(() => {
    // The widths belong to the typeface: the parameter says when they have to be taken anew.
    if (face) forgetWidths();
    const input = {
      plan,
      seconds,
      setupId,
      chosenIds,
      lengths,
      touch,
      at: sheet.at,
      perMetre: sheet.perMetre,
      blocking,
      power,
    };
    const skyline = skylineWish({ plan, drawn, drawing, lengths, touch });
    const named = skyline ? [...wishesOf(input), skyline] : wishesOf(input);
    const wishes = named.map((wish) => ({ ...wish, around: outsideRings(wish.around, rings) }));
    const obstacles = obstaclesOf(input, [...blocked, ...rings.map(squareAround)]);
    const lines = [...obstacles.lines, ...crossed.map(([from, to]) => ({ from, to, cost: 2 }))];
    const chosenKeys = new Set([...chosenIds, setupId === null ? null : keyOf({ type: 'camera', setupId })]);
    const byId = new Map(wishes.map((wish) => [wish.id, wish]));
    return placeLabels(wishes, { ...obstacles, lines }, pane).map((label) => {
      const wish = byId.get(label.id);
      return {
        ...label,
        style: wish?.style ?? 'mark',
        quiet: wish?.quiet ?? false,
        fault: wish?.fault ?? false,
        chosen: chosenKeys.has(label.id),
      };
    });
  }, [
    face,
    plan,
    seconds,
    setupId,
    chosenIds,
    lengths,
    touch,
    sheet,
    pane,
    blocked,
    crossed,
    rings,
    drawn,
    drawing,
    blocking,
    power,
  ]);
}

/** What a ring goes around bears its name outside of the ring. */
const outsideRings = (around: Bounds, rings: readonly Ring[]): Bounds =>
  rings.reduce(([left, top, right, bottom]: Bounds, { middle: [x, y], radius }): Bounds => {
    const isIn = distance(middleOf(around), [x, y]) < radius;
    if (!isIn) return [left, top, right, bottom];
    return [
      Math.min(left, x - radius),
      Math.min(top, y - radius),
      Math.max(right, x + radius),
      Math.max(bottom, y + radius),
    ];
  }, around);

/** Space between a ring and the names of other things, pixels. */
const OFF_RING = 3;

const squareAround = ({ middle: [x, y], radius }: Ring): Bounds => {
  const half = radius + OFF_RING;
  return [x - half, y - half, x + half, y + half];
};

/** True once the page's typefaces have come. */
function useTypeface(): boolean {
  const [here, setHere] = useState(document.fonts.status === 'loaded');
  useEffect(() => {
    let gone = false;
    void document.fonts.ready.then(() => {
      if (!gone) setHere(true);
    });
    return () => {
      gone = true;
    };
  }, []);
  return here;
}
