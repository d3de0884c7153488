import { useEffect, useMemo, useRef, useState } from 'react';
import { useStore } from 'zustand';
import { tapedSets } from '../../../core/form/tape/tape';
import { spanOf } from '../../../core/optics/camera';
import { setupsInOrder } from '../../../core/plan/nightOrder';
import { played } from '../../../core/plan/played';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { DEPARTMENTS } from '../../../desk/crew/crewStore';
import { overheadStore, ROOF_LAYERS, toggleLayer, turnRoof } from '../../../desk/crew/overhead/overheadStore';
import { letterIn, roofThings } from '../../../desk/crew/overhead/roofThings';
import { useCrew } from '../../../desk/crew/useCrew';
import { drawnBounds } from '../../overhead/geometry/roof';
import { type Pane, PIXELS_PER_METRE_AT_ONE } from '../../overhead/geometry/sheet';
import type { Spot } from '../../overhead/geometry/spots';
import { North, ScaleBar } from '../../overhead/layers/ScaleBar';
import { Segmented } from '../../parts/Segmented';
import { useElementSize } from '../../parts/useElementSize';
import { useWide } from '../parts/useWide';
import { ChosenThing } from './ChosenThing';
import { MiniMap } from './MiniMap';
import { RoofList } from './RoofList';
import { RoofMap } from './RoofMap';
import { middleOnRoof } from './roofHits';
import { fitted, isBetterTurned, type Lying, toPane } from './roofView';
import '../../overhead/styles/ground.css';
import '../../overhead/styles/symbols.css';
import '../../overhead/styles/blocking.css';
import '../../overhead/styles/lettering.css';
import '../../overhead/styles/furniture.css';
import './crewOverhead.css';

/** Room around the roof where all of it is seen, pixels. */
const MARGIN = 14;
/** The scale bar's, which shares its row with buttons. */
const BAR_ROOM = 104;

/** The roof to scale on a phone, for hands that rig: what stands where by tape, and what of it is one's own. */
export function CrewOverhead() {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const department = useCrew((state) => state.department);
  const setDepartment = useCrew((state) => state.setDepartment);
  const openItem = useCrew((state) => state.openItem);
  const hidden = useStore(overheadStore, (state) => state.hidden);
  const chosenId = useStore(overheadStore, (state) => state.chosenId);
  const setupId = useStore(overheadStore, (state) => state.setupId);
  const openedId = useCrew((state) => state.itemId);
  const wide = useWide();
  const [listed, setListed] = useState(false);
  const things = useMemo(
    () =>
      roofThings(plan, lengths).filter((thing) => department === 'all' || thing.department === department),
    [plan, lengths, department],
  );
  const chosenSetup = plan.setups.find(({ id }) => id === setupId) ?? null;
  // The cast as the chosen setup has it, at its beginning.
  const seen = useMemo(() => (chosenSetup ? played(plan, chosenSetup) : plan), [plan, chosenSetup]);
  const seconds = useMemo(() => (chosenSetup ? spanOf(plan, chosenSetup)[0] : 0), [plan, chosenSetup]);
  const sets = useMemo(() => (chosenId === null ? [] : tapedSets(seen, chosenId)), [seen, chosenId]);
  const tap = (id: string | null): void => {
    const isAgain = id === overheadStore.getState().chosenId;
    overheadStore.setState({ chosenId: id });
    // Where a card lies open beside the roof, the next thing takes its place at once.
    if (id !== null && (isAgain || (wide && openedId !== null && openedId !== id))) openItem(id);
  };
  const showsList = wide || listed;
  return (
    <section className="crew-roof" aria-labelledby="crew-roof-title" data-list={showsList}>
      <div className="crew-roof-tools">
        <h2 id="crew-roof-title" className="vh">
          Overhead
        </h2>
        <FrameChoice plan={plan} setupId={chosenSetup?.id ?? null} />
        <fieldset className="crew-layers">
          <legend className="vh">Layers</legend>
          {ROOF_LAYERS.map((layer) => (
            <button
              key={layer}
              type="button"
              aria-pressed={!hidden.has(layer)}
              onClick={() => toggleLayer(layer)}
            >
              {layer}
            </button>
          ))}
        </fieldset>
        <Segmented
          label="Department"
          choices={DEPARTMENTS.map((value) => ({ value, word: value }))}
          chosen={department}
          onChoose={setDepartment}
        />
      </div>
      <Roof
        plan={seen}
        seconds={seconds}
        setupId={chosenSetup?.id ?? null}
        lengths={lengths}
        sets={sets}
        tap={tap}
        acts={
          wide ? null : (
            <button type="button" aria-expanded={listed} onClick={() => setListed(!listed)}>
              List
            </button>
          )
        }
      />
      <div className="crew-roof-notes">
        {chosenId === null ? (
          <p className="crew-roof-hint">Tap a thing for its tapes, tap it again for all of it.</p>
        ) : (
          <ChosenThing
            plan={seen}
            id={chosenId}
            sets={sets}
            lengths={lengths}
            open={() => openItem(chosenId)}
          />
        )}
        {showsList && <RoofList things={things} chosenId={chosenId} choose={tap} />}
      </div>
    </section>
  );
}

interface RoofProps {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly lengths: LengthSystem;
  readonly sets: Parameters<typeof RoofMap>[0]['sets'];
  readonly tap: (id: string | null) => void;
  readonly acts: React.ReactNode;
}

/** Whose frame is drawn. */
function FrameChoice({ plan, setupId }: { readonly plan: Plan; readonly setupId: string | null }) {
  return (
    <select
      aria-label="Whose frame is drawn"
      value={setupId ?? ''}
      onChange={({ target }) =>
        overheadStore.setState({ setupId: target.value === '' ? null : target.value })
      }
    >
      <option value="">no frame</option>
      {setupsInOrder(plan).map((setup) => (
        <option key={setup.id} value={setup.id}>
          {letterIn(plan, setup.id)}, {setup.label}
        </option>
      ))}
    </select>
  );
}

/** The drawing, and below it the scale, north, how it is turned and all of it. */
function Roof({ plan, seconds, setupId, lengths, sets, tap, acts }: RoofProps) {
  const [box, setBox] = useState<HTMLElement | null>(null);
  const { width, height } = useElementSize(box);
  const pane = useMemo((): Pane => ({ width, height }), [width, height]);
  const title = useCrew((state) => state.plan.title);
  const department = useCrew((state) => state.department);
  const own = useStore(overheadStore, (state) => state.view);
  const wantsTurn = useStore(overheadStore, (state) => state.turned);
  const bounds = useMemo(() => drawnBounds(plan), [plan]);
  // The list below takes room from the roof, which does not turn for that.
  const tallest = useRef(pane);
  if (tallest.current.width !== width || tallest.current.height < height) tallest.current = pane;
  const turned = wantsTurn ?? isBetterTurned(bounds, tallest.current, MARGIN);
  const whole = useMemo(() => fitted(bounds, pane, MARGIN, turned), [bounds, pane, turned]);
  const chosenId = useStore(overheadStore, (state) => state.chosenId);
  const chosenAt = useMemo(
    () => (chosenId === null ? null : middleOnRoof(plan, seconds, chosenId)),
    [plan, seconds, chosenId],
  );
  const lying = useMemo((): Lying => (own ? { ...own, turned } : whole), [own, turned, whole]);
  const brought = useRef({ chosenId, view: own });
  // What is chosen is brought into sight, until a hand moves the roof: then it may be left behind.
  useEffect(() => {
    if (brought.current.chosenId !== chosenId) brought.current = { chosenId, view: own };
    if (!own || own !== brought.current.view || !chosenAt || pane.width === 0) return;
    if (isInside(toPane({ ...own, turned }, pane, chosenAt), pane)) return;
    const view = { ...own, middle: chosenAt };
    brought.current = { chosenId, view };
    overheadStore.setState({ view });
  }, [chosenId, own, chosenAt, pane, turned]);
  const move = ({ middle, perMetre }: Lying): void => overheadStore.setState({ view: { middle, perMetre } });
  const fitAll = (): void => overheadStore.setState({ view: null });
  return (
    <div className="crew-roof-map">
      <div className="crew-roof-pane" ref={setBox}>
        {width > 0 && height > 0 && (
          <RoofMap
            plan={plan}
            title={title}
            pane={pane}
            lying={lying}
            move={move}
            fitAll={fitAll}
            seconds={seconds}
            setupId={setupId}
            department={department}
            lengths={lengths}
            sets={sets}
            middle={chosenAt}
            tap={tap}
          />
        )}
      </div>
      {own !== null && <MiniMap plan={plan} lying={lying} pane={pane} bounds={bounds} />}
      <div className="overhead crew-roof-foot">
        <ScaleBar scale={PIXELS_PER_METRE_AT_ONE / lying.perMetre} lengths={lengths} room={BAR_ROOM} />
        <North degrees={plan.place.northDegrees + (turned ? 90 : 0)} />
        <button type="button" aria-pressed={turned} onClick={() => turnRoof(!turned)}>
          Turn
        </button>
        <button type="button" disabled={own === null} onClick={fitAll}>
          Fit
        </button>
        {acts}
      </div>
    </div>
  );
}

const isInside = ([x, y]: Spot, { width, height }: Pane): boolean =>
  x >= 0 && y >= 0 && x <= width && y <= height;
