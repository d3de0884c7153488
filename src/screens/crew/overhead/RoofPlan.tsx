import { memo } from 'react';
import { walksOf } from '../../../core/form/figure/walks';
import { whereabouts } from '../../../core/form/figure/whereabouts';
import { stateAt } from '../../../core/optics/camera';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { headingAt } from '../../../desk/blocking/tapeShape';
import type { Department } from '../../../desk/crew/crewStore';
import { departmentOf, type OneDepartment } from '../../../desk/crew/overhead/departments';
import type { RoofLayer } from '../../../desk/crew/overhead/overheadStore';
import { walkDrawing } from '../../overhead/geometry/along';
import { polygon, polyline } from '../../overhead/geometry/paths';
import { deckPath, decksOf } from '../../overhead/geometry/roof';
import { LightFades, Throws } from '../../overhead/layers/Throws';
import { shown } from '../../overhead/shown';
import { CameraSymbol } from '../../overhead/symbols/CameraSymbol';
import { DeckGround } from '../../overhead/symbols/DeckGround';
import { Mark } from '../../overhead/symbols/Mark';
import { PerformerSymbol } from '../../overhead/symbols/PerformerSymbol';
import { StillGear } from '../../overhead/symbols/StillGear';
import { StillPiece } from '../../overhead/symbols/StillPiece';
import { layerOf } from './layerOf';

interface Props {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly hidden: ReadonlySet<RoofLayer>;
  readonly department: Department;
}

/** All that is drawn in metres, from the ground up; it is not drawn again while the roof moves under a finger. */
export const RoofPlan = memo(function RoofPlan({ plan, seconds, setupId, hidden, department }: Props) {
  const decks = shown(decksOf(plan));
  const pieces = shown(plan.pieces).filter(({ kind }) => kind !== 'deck' && kind !== 'skyline block');
  const gear = shown(plan.gear).filter((each) => !hidden.has(layerOf(each)));
  const onTheDeck = gear.filter(({ kind }) => kind === 'cable' || kind === 'track');
  const standing = gear.filter(({ kind }) => kind !== 'cable' && kind !== 'track');
  const fade = (whose: OneDepartment): string =>
    department === 'all' || department === whose ? '' : ' crew-faded';
  const drawn = (each: Gear) => (
    <g key={each.id} className={`thing${fade(departmentOf(plan, each))}`} data-thing={each.id}>
      <StillGear gear={each} plan={plan} />
    </g>
  );
  return (
    <>
      <defs>
        <LightFades />
        <clipPath id="decks">
          {decks.map((deck) => (
            <path key={deck.id} clipRule="evenodd" d={deckPath(deck)} />
          ))}
        </clipPath>
      </defs>
      {decks.map((deck) => (
        <DeckGround key={deck.id} deck={deck} />
      ))}
      {!hidden.has('throws') && (
        <g className={fade('light')}>
          <Throws plan={plan} clip={decks.length > 0 ? 'url(#decks)' : 'none'} />
        </g>
      )}
      <g className="pieces">
        {pieces.map((piece) => (
          <StillPiece key={piece.id} piece={piece} ground={plan.ground} />
        ))}
      </g>
      {onTheDeck.map(drawn)}
      {standing.map(drawn)}
      {!hidden.has('marks') && (
        <g className={`cast-layer${fade('cast')}`}>
          <CastOnRoof plan={plan} seconds={seconds} />
        </g>
      )}
      {!hidden.has('cameras') && (
        <g className={`cameras${fade('camera')}`}>
          {[...plan.setups]
            .sort((a, b) => Number(a.id === setupId) - Number(b.id === setupId))
            .map((setup) => {
              const { position, headingDegrees } = stateAt(plan, setup, seconds);
              return (
                <g
                  key={setup.id}
                  className={`camera${setup.id === setupId ? ' chosen' : ''}`}
                  transform={`translate(${position[0]} ${position[2]}) rotate(${headingDegrees})`}
                >
                  <CameraSymbol />
                </g>
              );
            })}
        </g>
      )}
    </>
  );
});

/** The cast where they are at an instant, with their marks and their walks. */
function CastOnRoof({ plan, seconds }: { readonly plan: Plan; readonly seconds: number }) {
  return (
    <>
      {shown(plan.cast).map((performer) => {
        const ways = walksOf(performer, plan).flatMap(({ path }) => walkDrawing(path) ?? []);
        return (
          <g key={performer.id}>
            <path className="walk" d={ways.map(({ line }) => polyline(line)).join('')} />
            <path className="arrow" d={ways.map(({ arrow }) => polygon(arrow)).join('')} />
            {performer.marks.map((mark) => (
              <Mark
                key={mark.id}
                id={mark.id}
                at={mark.at}
                headingDegrees={headingAt(plan, performer, mark)}
                kind=""
              />
            ))}
          </g>
        );
      })}
      {shown(plan.cast).map((performer) => {
        const place = whereabouts(performer, plan, seconds);
        return place ? (
          <g
            key={performer.id}
            data-thing={performer.id}
            transform={`translate(${place.at[0]} ${place.at[2]}) rotate(${place.headingDegrees})`}
          >
            <PerformerSymbol performer={performer} />
          </g>
        ) : null;
      })}
    </>
  );
}
