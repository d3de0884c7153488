import { useEffect, useMemo, useState } from 'react';
import { placeLabels } from './geometry/labels';
import type { Bounds, Spot } from './geometry/spots';
import type { WrittenLabel } from './layers/LetteringLayer';
import { type LetteringInput, wishesOf } from './lettering';
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
  /** The deck with what stands around it in metres, and that with its dimensions in pixels. */
  readonly drawn: Bounds;
  readonly drawing: Bounds;
}

/** Places the drawing's names; again whenever the plan, the view or what is chosen changes. */
export function useLettering(options: Options): readonly WrittenLabel[] {
  const face = useTypeface();
  const { plan, seconds, setupId, chosenId, lengths, touch, sheet, pane, blocked, crossed, drawn, drawing } =
    options;
  return useMemo(() => {
    // The widths belong to the typeface: the parameter says when they have to be taken anew.
    if (face) forgetWidths();
    const input = {
      plan,
      seconds,
      setupId,
      chosenId,
      lengths,
      touch,
      at: sheet.at,
      perMetre: sheet.perMetre,
    };
    const skyline = skylineWish({ plan, drawn, drawing, lengths, touch });
    const wishes = skyline ? [...wishesOf(input), skyline] : wishesOf(input);
    const obstacles = obstaclesOf(input, blocked);
    const lines = [...obstacles.lines, ...crossed.map(([from, to]) => ({ from, to, cost: 2 }))];
    const chosenKeys = new Set([chosenId, setupId === null ? null : keyOf({ type: 'camera', setupId })]);
    const byId = new Map(wishes.map((wish) => [wish.id, wish]));
    return placeLabels(wishes, { ...obstacles, lines }, pane).map((label) => {
      const wish = byId.get(label.id);
      return {
        ...label,
        style: wish?.style ?? 'mark',
        quiet: wish?.quiet ?? false,
        chosen: chosenKeys.has(label.id),
      };
    });
  }, [face, plan, seconds, setupId, chosenId, lengths, touch, sheet, pane, blocked, crossed, drawn, drawing]);
}

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
