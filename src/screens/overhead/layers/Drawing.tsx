import { useMemo } from 'react';
import { useStore } from 'zustand';
import { type Item, itemsOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { SetupReport } from '../../../core/report/types';
import { letterOf } from '../../../desk/choose';
import { chosenAreaStore } from '../../../desk/chosenArea';
import { useSession } from '../../../desk/hooks';
import { proposalStore } from '../../../desk/lensTestProposal';
import { GroundLayer } from '../clearGround/GroundLayer';
import { useShowsGround } from '../clearGround/useGround';
import { deckPath, decksOf } from '../geometry/roof';
import { HighlightsLayer } from '../highlights/HighlightsLayer';
import { Levels } from '../levels/Levels';
import { useShowsLevels } from '../levels/useLevels';
import { PowerLayer } from '../power/PowerLayer';
import type { PowerOnRoof } from '../power/powerOnRoof';
import { shown } from '../shown';
import { ShadowLayer } from '../sun/ShadowLayer';
import { DeckGround } from '../symbols/DeckGround';
import { GearSymbol } from '../symbols/GearSymbol';
import { Inks } from '../symbols/Inks';
import { PieceSymbol } from '../symbols/PieceSymbol';
import { type Dragged, movingKeys } from '../targets';
import type { SheetView } from '../useSheetView';
import { WetInks, WetLayer } from '../wet/WetLayer';
import { spokenName } from '../words';
import { Cameras } from './Cameras';
import { Figure, Walks } from './Cast';
import { DraftIds, GearGroup, PieceGroup } from './ItemGroup';
import { Pyramid } from './Pyramid';
import { LightFades, Throws } from './Throws';
import { UnderlayLayer } from './UnderlayLayer';

interface Props {
  readonly plan: Plan;
  readonly committed: Plan;
  readonly sheet: SheetView;
  readonly setupId: string | null;
  readonly chosenIds: readonly string[];
  /** The one mark that is chosen. */
  readonly markId: string | null;
  /** Setups whose camera stands over the line. */
  readonly over: ReadonlySet<string>;
  readonly report: SetupReport | null;
  /** What flows, while it is looked at. */
  readonly power: PowerOnRoof | null;
  readonly dragged: Dragged | null;
}

/** Cables and track lie on the deck, under what stands on it. */
const ON_THE_DECK = new Set(['cable', 'track']);
/** What hangs over the roof is drawn last of the pieces. */
const OVER_THE_DECK = new Set(['line']);

/** All that is drawn to scale, from the ground up. What did not change is not drawn again. */
export function Drawing(props: Props) {
  const { plan, committed, sheet, setupId, chosenIds, markId, over, report, power, dragged } = props;
  const [x, y] = sheet.at([0, 0]);
  const world = `translate(${x} ${y}) scale(${sheet.perMetre})`;
  const decks = shown(decksOf(plan));
  const clip = decks.length > 0 ? 'url(#decks)' : 'none';
  const showsLevels = useShowsLevels();
  const showsGround = useShowsGround();
  const proposed = useStore(proposalStore, (state) => state.changed);
  const drafts = useDraftIds(plan, committed, proposed);
  const letter = setupId === null ? null : letterOf(plan, setupId);
  const spoken = useMemo(() => {
    const reports = new Map(report?.items.map((item) => [item.id, item]));
    return (item: Item): string => spokenName(item, letter, reports.get(item.record.id) ?? null);
  }, [report, letter]);
  const chosen = useMemo(() => new Set(chosenIds), [chosenIds]);
  const isLit = useSession((state) => state.sheet === 'light');
  const areaId = useStore(chosenAreaStore, (state) => state.areaId);
  const { surface, wetness } = plan.ground;
  // Pieces look the same whatever areas are wet: they are not drawn anew while one of these is shaped.
  const ground = useMemo(() => ({ surface, wetness }), [surface, wetness]);
  // What the hand does not move keeps its elements, and is not even compared.
  const pieceGroups = useMemo(() => {
    const pieces = shown(plan.pieces).filter(({ kind }) => kind !== 'deck' && kind !== 'skyline block');
    const ordered = [
      ...pieces.filter(({ kind }) => !OVER_THE_DECK.has(kind)),
      ...pieces.filter(({ kind }) => OVER_THE_DECK.has(kind)),
    ];
    return ordered.map((piece) => (
      <PieceGroup
        key={piece.id}
        piece={piece}
        ground={ground}
        spoken={spoken({ section: 'piece', record: piece })}
        chosen={chosen.has(piece.id)}
      />
    ));
  }, [plan.pieces, ground, spoken, chosen]);
  const gearGroups = (wanted: (kind: string) => boolean) =>
    shown(plan.gear)
      .filter(({ kind }) => wanted(kind))
      .map((gear) => (
        <GearGroup
          key={gear.id}
          gear={gear}
          plan={plan}
          spoken={spoken({ section: 'gear', record: gear })}
          chosen={chosen.has(gear.id)}
        />
      ));
  return (
    <DraftIds value={drafts}>
      <Inks perMetre={sheet.perMetre} />
      <WetInks perMetre={sheet.perMetre} />
      <defs>
        <LightFades />
        <clipPath id="decks">
          {decks.map((deck) => (
            <path key={deck.id} clipRule="evenodd" d={deckPath(deck)} />
          ))}
        </clipPath>
      </defs>
      <g className="to-scale" transform={world}>
        {decks.map((deck) => (
          <g key={deck.id} className={drafts.has(deck.id) ? 'choice draft' : undefined}>
            <DeckGround deck={deck} />
          </g>
        ))}
        {plan.underlay && <UnderlayLayer underlay={plan.underlay} />}
        <WetLayer ground={plan.ground} decks={decks} chosenId={areaId} />
        <ShadowLayer plan={committed} />
        {showsLevels ? (
          <Levels plan={plan} setupId={setupId} clip={clip} perMetre={sheet.perMetre} />
        ) : (
          <Throws plan={plan} clip={clip} />
        )}
        {showsGround && <GroundLayer plan={plan} clip={clip} perMetre={sheet.perMetre} />}
        {isLit && <HighlightsLayer plan={plan} setupId={setupId} chosenIds={chosen} />}
        <g className={proposed.length > 0 ? 'pieces proposing' : 'pieces'}>{pieceGroups}</g>
      </g>
      {setupId !== null && <Pyramid setupId={setupId} view={sheet.view} pane={sheet.pane} />}
      <g className="to-scale" transform={world}>
        {dragged && <Ghost plan={committed} dragged={dragged} />}
        {proposed.length > 0 && <AsItIs plan={committed} ids={proposed} />}
        {power && <PowerLayer power={power} drafts={drafts} perMetre={sheet.perMetre} />}
        <g className={proposed.length > 0 ? 'gear-layer proposing' : 'gear-layer'}>
          {gearGroups((kind) => ON_THE_DECK.has(kind))}
          {gearGroups((kind) => !ON_THE_DECK.has(kind))}
        </g>
        <g className="cast-layer">
          {shown(plan.cast).map((performer) => (
            <Walks
              key={performer.id}
              performer={performer}
              plan={plan}
              chosen={chosen.has(performer.id)}
              markId={chosen.has(performer.id) ? markId : null}
            />
          ))}
          {shown(plan.cast).map((performer) => (
            <Figure
              key={performer.id}
              performer={performer}
              spoken={spoken({ section: 'cast', record: performer })}
              chosen={chosen.has(performer.id)}
            />
          ))}
        </g>
        <Cameras plan={plan} setupId={setupId} over={over} />
      </g>
    </DraftIds>
  );
}

const NO_DRAFTS: ReadonlySet<string> = new Set();

/** What is seen and is not in the plan, or not so; the same set as long as it is the same things, since all that is drawn asks it. */
function useDraftIds(plan: Plan, committed: Plan, proposed: readonly string[]): ReadonlySet<string> {
  const known = useMemo(() => new Set(itemsOf(committed).map(({ record }) => record.id)), [committed]);
  const drafts =
    plan === committed ? [] : itemsOf(plan).flatMap(({ record }) => (known.has(record.id) ? [] : record.id));
  const names = [...new Set([...drafts, ...proposed])].join('\n');
  return useMemo(() => (names === '' ? NO_DRAFTS : new Set(names.split('\n'))), [names]);
}

/** Some pieces and gear as a plan has them. */
function AsInPlan({ plan, ids }: { readonly plan: Plan; readonly ids: ReadonlySet<string> }) {
  return (
    <>
      {plan.pieces
        .filter(({ id }) => ids.has(id))
        .map((piece) => (
          <PieceSymbol key={piece.id} piece={piece} ground={plan.ground} />
        ))}
      {plan.gear
        .filter(({ id }) => ids.has(id))
        .map((gear) => (
          <GearSymbol key={gear.id} gear={gear} plan={plan} />
        ))}
    </>
  );
}

/** What is proposed otherwise as the plan has it: that holds until it is done. */
function AsItIs({ plan, ids }: { readonly plan: Plan; readonly ids: readonly string[] }) {
  return (
    <g className="as-it-is">
      <AsInPlan plan={plan} ids={new Set(ids)} />
    </g>
  );
}

/** The old place of what is dragged, dashed: it is not yet given up. */
function Ghost({ plan, dragged }: { readonly plan: Plan; readonly dragged: Dragged }) {
  if (dragged.target.type !== 'item') return null;
  const moving = movingKeys(plan, dragged);
  return (
    <g className="ghost">
      <AsInPlan plan={plan} ids={moving} />
    </g>
  );
}
