import './sun.css';
import { memo, useDeferredValue, useMemo } from 'react';
import { formsAt } from '../../../core/form/formsAt';
import type { ItemForm } from '../../../core/form/types';
import type { SunOver } from '../../../core/night/dusk/sunOver';
import { type Shadows, sunShadows } from '../../../core/night/dusk/sunShadows';
import type { Plan } from '../../../core/plan/schema/plan';
import { type Deck, deckPath, decksOf } from '../geometry/roof';
import { shown, shownItems } from '../shown';
import { useSettledSeconds } from '../useSettledSeconds';
import { useSunShown } from './useSunShown';

/** Lower than this no shadow ends on a roof, degrees. */
const LEAST_ALTITUDE = 0.2;

const pathOf = ({ outlines }: Shadows): string =>
  outlines
    .map((outline) => `M${outline.map(([x, z]) => `${x.toFixed(3)} ${z.toFixed(3)}`).join('L')}Z`)
    .join('');

/** The shadows on one deck, of all that stands higher. */
const OfDeck = memo(function OfDeck({
  forms,
  deck,
  way,
}: {
  readonly forms: readonly ItemForm[];
  readonly deck: Deck;
  readonly way: SunOver['way'];
}) {
  const shadows = useMemo(() => sunShadows(forms, way, deck.topMetres), [forms, way, deck.topMetres]);
  const clip = `sun-deck-${deck.id}`;
  return (
    <g>
      <clipPath id={clip}>
        <path clipRule="evenodd" d={deckPath(deck)} />
      </clipPath>
      <g clipPath={`url(#${clip})`}>
        {shadows.map((each) => (
          <path key={each.share} className="sun-shadow" style={{ opacity: each.share }} d={pathOf(each)} />
        ))}
      </g>
    </g>
  );
});

/** The shadows on all decks under one sun: what stands there is formed once for them all, and for every time of the sky. */
function OnDecks({ plan, way }: { readonly plan: Plan; readonly way: SunOver['way'] }) {
  const seconds = useSettledSeconds();
  const forms = useMemo(() => {
    const ids = new Set(shownItems(plan).map(({ record }) => record.id));
    return formsAt(plan, seconds).filter(({ id }) => ids.has(id));
  }, [plan, seconds]);
  const decks = useMemo(() => shown(decksOf(plan)), [plan]);
  return (
    <g className="sun-shadows">
      {decks.map((deck) => (
        <OfDeck key={deck.id} forms={forms} deck={deck} way={way} />
      ))}
    </g>
  );
}

/** Where the sun does not reach the decks, at the time at which the sky is looked at: metres, to be drawn under what stands there. */
export function ShadowLayer({ plan }: { readonly plan: Plan }) {
  const found = useDeferredValue(useSunShown(plan));
  if (!found || found.sun.altitude < LEAST_ALTITUDE) return null;
  return <OnDecks plan={plan} way={found.sun.way} />;
}
