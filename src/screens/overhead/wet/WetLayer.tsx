import { memo } from 'react';
import type { Ground, WetArea, Wetness } from '../../../core/plan/schema/ground';
import { polygon } from '../geometry/paths';
import { type Deck, deckPath } from '../geometry/roof';
import { boundsOf, type Spot } from '../geometry/spots';
import { Choice } from '../layers/ItemGroup';
import { keyOf } from '../targets';
import { spokenArea } from './words';
import './wet.css';

/** The hatching of each way of being wet; dry ground has none. */
const HATCHES: Readonly<Record<Wetness, string | null>> = {
  dry: null,
  damp: 'url(#ink-damp)',
  'wet down': 'url(#ink-wet)',
  puddled: 'url(#ink-puddled)',
};

/** Water as it is drafted: dots where it is damp, short waves where it is wet, close ones where it stands. */
export const WetInks = memo(function WetInks({ perMetre }: { readonly perMetre: number }) {
  const onSheet = `scale(${1 / perMetre})`;
  const shared = { patternUnits: 'userSpaceOnUse', patternTransform: onSheet };
  return (
    <defs>
      <pattern id="ink-damp" width={12} height={12} {...shared}>
        <path className="wet-ink" d="M2 3h0M8 9h0" />
      </pattern>
      <pattern id="ink-wet" width={26} height={16} {...shared}>
        <path className="wet-ink" d="M2 4q2.5-2.6 5 0t5 0M15 12q2.5-2.6 5 0t5 0" />
      </pattern>
      <pattern id="ink-puddled" width={16} height={8} {...shared}>
        <path className="wet-ink" d="M1 2.5q2-2.2 4 0t4 0M9 6.5q1.75-2.2 3.5 0t3.5 0" />
      </pattern>
    </defs>
  );
});

/** Cuts what lies over an area, or over the ground, out of its hatching; `within` are the corners of what is hatched. */
function Uncovered(props: {
  readonly id: string;
  readonly of: string;
  readonly within: readonly Spot[];
  readonly by: readonly WetArea[];
}) {
  const { id, of, within, by } = props;
  const [left, top, right, bottom] = boundsOf(within) ?? [0, 0, 0, 0];
  return (
    <mask id={id} maskUnits="userSpaceOnUse" x={left} y={top} width={right - left} height={bottom - top}>
      <path d={of} fill="white" fillRule="evenodd" />
      {by.map((area) => (
        <path key={area.id} d={polygon(area.outline)} fill="black" fillRule="evenodd" />
      ))}
    </mask>
  );
}

interface Props {
  readonly ground: Ground;
  readonly decks: readonly Deck[];
  readonly chosenId: string | null;
}

/** The wet and the dry areas of the ground, each hatched where none lies over it, and the ground between them. */
export const WetLayer = memo(function WetLayer({ ground, decks, chosenId }: Props) {
  const { areas = [], wetness } = ground;
  if (areas.length === 0) return null;
  const roof = decks.map(deckPath).join('');
  const under = HATCHES[wetness];
  return (
    <g className="wet-areas" clipPath={decks.length > 0 ? 'url(#decks)' : undefined}>
      {under !== null && (
        <>
          <Uncovered
            id="ground-uncovered"
            of={roof}
            within={decks.flatMap((deck) => deck.outline)}
            by={areas}
          />
          <path className="wet-fill ground" d={roof} fill={under} mask="url(#ground-uncovered)" />
        </>
      )}
      {areas.map((area, index) => {
        const outline = polygon(area.outline);
        const over = areas.slice(index + 1);
        const hatch = HATCHES[area.wetness];
        const mask = `wet-${area.id}`;
        return (
          <Choice
            key={area.id}
            target={keyOf({ type: 'area', areaId: area.id })}
            spoken={spokenArea(ground, area.id)}
            chosen={area.id === chosenId}
            kind="wet-area"
          >
            {hatch !== null && over.length > 0 && (
              <Uncovered id={mask} of={outline} within={area.outline} by={over} />
            )}
            {hatch !== null && (
              <path
                className="wet-fill"
                d={outline}
                fill={hatch}
                fillRule="evenodd"
                mask={over.length > 0 ? `url(#${mask})` : undefined}
              />
            )}
            <path className={`wet-edge ${area.wetness === 'dry' ? 'dry' : ''}`} d={outline} />
          </Choice>
        );
      })}
    </g>
  );
});
