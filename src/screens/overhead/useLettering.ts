import { useEffect, useMemo, useState } from 'react';
import { placeLabels } from './geometry/labels';
import type { Bounds } from './geometry/spots';
import type { WrittenLabel } from './layers/LetteringLayer';
import { type LetteringInput, wishesOf } from './lettering';
import { forgetWidths } from './measureText';
import { obstaclesOf } from './obstacles';
import { keyOf } from './targets';

interface Options extends Omit<LetteringInput, 'at' | 'perMetre'> {
  readonly sheet: Pick<LetteringInput, 'at' | 'perMetre'>;
  readonly pane: Bounds;
  readonly blocked: readonly Bounds[];
}

/** Places the drawing's names; again whenever the plan, the view or what is chosen changes. */
export function useLettering(options: Options): readonly WrittenLabel[] {
  const face = useTypeface();
  const { plan, seconds, setupId, chosenId, lengths, touch, sheet, pane, blocked } = options;
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
    const wishes = wishesOf(input);
    const chosenKeys = new Set([chosenId, setupId === null ? null : keyOf({ type: 'camera', setupId })]);
    const byId = new Map(wishes.map((wish) => [wish.id, wish]));
    return placeLabels(wishes, obstaclesOf(input, blocked), pane).map((label) => {
      const wish = byId.get(label.id);
      return {
        ...label,
        style: wish?.style ?? 'mark',
        quiet: wish?.quiet ?? false,
        chosen: chosenKeys.has(label.id),
      };
    });
  }, [face, plan, seconds, setupId, chosenId, lengths, touch, sheet, pane, blocked]);
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
