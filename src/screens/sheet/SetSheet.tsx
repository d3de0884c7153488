import { useDeferredValue, useMemo } from 'react';
import { useStore } from 'zustand';
import { PALETTE } from '../../core/kit/palette';
import { itemOf, itemsOf } from '../../core/plan/items';
import type { Plan } from '../../core/plan/schema/plan';
import { letterOf } from '../../desk/choose';
import { groundStore } from '../../desk/ground/groundStore';
import { useGroundState } from '../../desk/ground/useGroundState';
import { useLivePlan, useSession } from '../../desk/hooks';
import { useTool } from '../../desk/tools/useTool';
import { Column } from '../parts/Column';
import { Segmented } from '../parts/Segmented';
import { InHand } from './drawing/InHand';
import { ToolPanel } from './drawing/ToolPanel';
import { GroundPanel } from './ground/GroundPanel';
import { foundItems, inListOrder, matches, wordsOf } from './list/rows';
import { ThingList } from './list/ThingList';
import { extrasOf } from './palette/extras';
import { findEntries } from './palette/findEntries';
import { PaletteGrid } from './palette/PaletteGrid';
import { RoofPanel } from './panels/RoofPanel';
import { useChosenArea } from './panels/useChosenArea';
import { AreaPanel, ItemPanel, SetupPanel, SeveralPanel } from './panelsLater';
import { setSheetStore } from './sheetStore';
import { MeterPanel, useChosenProbe } from './sky/Meters';

/** What can be put on the roof, what is on it, and a search over both. */
function Left({ plan }: { readonly plan: Plan }) {
  const { left, search } = useStore(setSheetStore);
  const wanted = useDeferredValue(search);
  const words = wordsOf(wanted);
  const items = useMemo(() => inListOrder(itemsOf(plan)), [plan]);
  const found = useMemo(() => foundItems(items, wanted), [items, wanted]);
  const groups = useMemo(
    () => findEntries(PALETTE, wanted, (group, these) => extrasOf(group, these).length > 0),
    [wanted],
  );
  const setups = plan.setups.filter((setup) => matches(words, [setup.label, 'camera']));
  const searching = words.length > 0;
  const isEmpty = groups.length === 0 && found.length === 0 && setups.length === 0;
  const palette = groups.length > 0 ? <PaletteGrid groups={groups} words={words} /> : null;
  const things = (
    <ThingList items={found} setups={setups} onCamera={() => setSheetStore.setState({ about: 'setup' })} />
  );
  return (
    <>
      <div className="column-head stays">
        <div className="field search">
          <label htmlFor="set-search">find</label>
          <input
            id="set-search"
            type="search"
            value={search}
            placeholder="a fence, a lamp, stand 2"
            onChange={(event) => setSheetStore.setState({ search: event.currentTarget.value })}
          />
        </div>
        <Segmented
          label="What the list shows"
          choices={[
            { value: 'add', word: 'add' },
            { value: 'things', word: `on the roof, ${items.length}` },
          ]}
          chosen={searching ? null : left}
          onChoose={(value) => setSheetStore.setState({ left: value, search: '' })}
        />
      </div>
      {searching ? (
        <>
          {found.length + setups.length > 0 ? (
            <section>
              <h4 className="stays">On the roof</h4>
              {things}
            </section>
          ) : null}
          {palette}
          {isEmpty ? (
            <p className="after">Nothing is called that. Try a kind, such as fence or stand.</p>
          ) : null}
        </>
      ) : left === 'add' ? (
        <>
          {palette}
          <p className="advice">
            Drag on the roof, or type a length while you draw. <kbd>T</kbd> lays a tape between any two
            corners.
          </p>
        </>
      ) : (
        <>
          {items.length === 0 ? (
            <p className="after">Nothing on the roof yet. Take something from the palette, or open a plan.</p>
          ) : null}
          {things}
        </>
      )}
    </>
  );
}

/** With nothing chosen: the camera that is looked through, or the roof itself. */
function About({ plan }: { readonly plan: Plan }) {
  const about = useStore(setSheetStore, (state) => state.about);
  const setupId = useSession((state) => state.setupId);
  const setup = plan.setups.find((each) => each.id === setupId) ?? null;
  if (!setup) return <RoofPanel plan={plan} />;
  return (
    <>
      <div className="column-head stays">
        <Segmented
          label="What the panel is about"
          choices={[
            { value: 'setup', word: `setup ${letterOf(plan, setup.id)}` },
            { value: 'roof', word: 'the roof' },
          ]}
          chosen={about}
          onChoose={(value) => setSheetStore.setState({ about: value })}
        />
      </div>
      {about === 'setup' ? <SetupPanel setup={setup} /> : <RoofPanel plan={plan} />}
    </>
  );
}

/** Clear ground while the roof shows it, or what else the panel is about. */
function Right({ plan }: { readonly plan: Plan }) {
  const { on, panel } = useGroundState();
  const drawing = useTool(({ tool }) => tool.type !== 'hand');
  if (!on || drawing) return <OfThings plan={plan} />;
  return (
    <>
      <div className="column-head stays">
        <Segmented
          label="The panel is about"
          choices={[
            { value: 'ground', word: 'clear ground' },
            { value: 'thing', word: 'the plan' },
          ]}
          chosen={panel}
          onChoose={(value) => groundStore.setState({ panel: value })}
        />
      </div>
      {panel === 'ground' ? <GroundPanel plan={plan} /> : <OfThings plan={plan} />}
    </>
  );
}

/** What is drawn, else what is chosen, else the camera or the roof. */
function OfThings({ plan }: { readonly plan: Plan }) {
  const selectedId = useSession((state) => state.selectedId);
  const picked = useTool(({ tool }) => tool.type !== 'hand');
  const drawing = useTool(({ stroke }) => (stroke?.corners.length ?? 0) > 0);
  const selectedIds = useSession((state) => state.selectedIds);
  const item = selectedId === null ? null : itemOf(plan, selectedId);
  const area = useChosenArea(plan);
  const probe = useChosenProbe(plan);
  if (!picked && selectedIds.length > 1)
    return <SeveralPanel plan={plan} items={selectedIds.flatMap((id) => itemOf(plan, id) ?? [])} />;
  if (picked && (drawing || !item)) return <ToolPanel />;
  if (picked && item)
    return (
      <>
        <InHand />
        <ItemPanel item={item} />
      </>
    );
  if (item) return <ItemPanel item={item} />;
  if (probe) return <MeterPanel plan={plan} probe={probe} />;
  return area ? <AreaPanel plan={plan} area={area} /> : <About plan={plan} />;
}

/** All that can stand on the roof and all that does: to put, find, choose and place by numbers. */
export function SetSheet() {
  const plan = useLivePlan();
  return (
    <div className="two">
      <Column>
        <Left plan={plan} />
      </Column>
      <Column>
        <Right plan={plan} />
      </Column>
    </div>
  );
}
