import {
  type CSSProperties,
  type KeyboardEvent,
  type MouseEvent,
  type PointerEvent,
  useCallback,
  useMemo,
  useState,
} from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../core/plan/schema/plan';
import type { SetupReport } from '../../core/report/types';
import type { LengthSystem } from '../../core/units/lengths';
import { chooseThing } from '../../desk/blocking/choosing';
import { chooseSetup } from '../../desk/choose';
import { chooseArea, chosenAreaStore } from '../../desk/chosenArea';
import { useSession } from '../../desk/hooks';
import { type Choosing, chooseItem } from '../../desk/selecting';
import { toolStore } from '../../desk/tools/toolStore';
import { useBlocking } from './blocking/useBlocking';
import { blockingKeyOf } from './blocking/wishes';
import { pushIntoPane } from './bringIntoPane';
import { CautionLayer } from './cautions/CautionLayer';
import { ExplainLayer } from './explain/ExplainLayer';
import { type HitShape, hitAt } from './geometry/hits';
import { grown } from './geometry/notes';
import { decksOf, roofBounds } from './geometry/roof';
import type { Bounds, Ring, Spot } from './geometry/spots';
import { groundOf } from './ground';
import { buttonsOnRoof } from './handles/blockingHandles';
import { HandlesLayer } from './handles/HandlesLayer';
import { hitShapesOf } from './hitShapes';
import { BlockingLayer } from './layers/BlockingLayer';
import { Dimensions, dimensionFigures, dimensionLines, OFF_DRAWING } from './layers/Dimensions';
import { Drawing } from './layers/Drawing';
import { Findings, RING } from './layers/Findings';
import { EdgeTicks, WIDE_PANE } from './layers/Furniture';
import { ringOf } from './layers/Handled';
import { Hands } from './layers/Hands';
import { LetteringLayer } from './layers/LetteringLayer';
import { ProposedPlace } from './layers/ProposedPlace';
import { useShowsLevels } from './levels/useLevels';
import { MoonMark } from './moon/MoonMark';
import { toolPointer } from './pointers/tool';
import { spotIn, type Told } from './pointers/types';
import { REACH, useSheetPointers } from './pointers/useSheetPointers';
import { powerLines, powerRings } from './power/powerWishes';
import { usePowerOnRoof } from './power/usePowerOnRoof';
import { meterBounds } from './probes/meterBounds';
import { ProbesLayer } from './probes/ProbesLayer';
import { SunMark } from './sun/SunMark';
import { areaOfKey, type Dragged, itemIdOf, keyOf, movingKeys, type Target } from './targets';
import { placeOf, useFindings } from './useFindings';
import { useLettering } from './useLettering';
import { useResting } from './useResting';
import type { SheetView } from './useSheetView';
import { itemsWithin } from './within';

/** What the furniture takes at the foot of the pane, pixels: the legend at the left, the title block at the right. */
const FURNITURE = { legend: [420, 52], title: [246, 98] } as const;
const ZOOM_STEP = 1.25;
/** A drawing cannot hold a fieldset: it is a group by its role, and takes the focus for its keys. */
const AS_GROUP = { role: 'group', tabIndex: -1 } as const;

/** A pixel in metres, for what is drawn in the group that is to scale. */
const pixelIn = (perMetre: number): CSSProperties & { readonly '--pixel': string } => ({
  '--pixel': `${1 / perMetre}px`,
});

interface Props {
  readonly committed: Plan;
  /** The plan as it is seen now. */
  readonly plan: Plan;
  /** Both without what a setup cheats. */
  readonly master: Plan;
  readonly masterNow: Plan;
  readonly drawn: Bounds;
  readonly sheet: SheetView;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly report: SetupReport | null;
  readonly lengths: LengthSystem;
  readonly dragging: boolean;
}

/** The drawing itself under the hand. */
export function Sheet(props: Props) {
  const { committed, plan, master, masterNow, drawn, sheet, seconds, setupId, report, lengths, dragging } =
    props;
  const [svg, setSvg] = useState<SVGSVGElement | null>(null);
  const [touch, setTouch] = useState(() => matchMedia('(pointer: coarse)').matches);
  const [dragged, setDragged] = useState<Dragged | null>(null);
  const [frame, setFrame] = useState<Bounds | null>(null);
  const [told, setTold] = useState<Told | null>(null);
  const [hovered, setHovered] = useState<Target | null>(null);
  const [focused, setFocused] = useState<string | null>(null);
  const chosenIds = useSession((state) => state.selectedIds);
  const chosenId = chosenIds.length === 1 ? (chosenIds[0] ?? null) : null;
  const areaId = useStore(chosenAreaStore, (state) => state.areaId);
  const open = useSession((state) => state.sheet);
  const showsLevels = useShowsLevels();
  const blocking = useBlocking(master, chosenId);
  const tooled = useStore(toolStore, ({ tool }) => tool.type !== 'hand');
  const { width, height } = sheet.pane;
  const { at, zoom, fitAll } = sheet;

  const pane = useMemo((): Bounds => [0, 0, width, height], [width, height]);
  const furniture = useMemo((): Bounds[] => {
    const [legend, title] = [FURNITURE.legend, FURNITURE.title];
    const strip: Bounds = [0, height - legend[1], Math.min(width, legend[0]), height];
    return width >= WIDE_PANE ? [strip, [width - title[0], height - title[1], width, height]] : [strip];
  }, [width, height]);
  const drawing = useMemo((): Bounds => {
    const [left, top] = at([drawn[0], drawn[1]]);
    const [right, bottom] = at([drawn[2], drawn[3]]);
    return grown([left, top, right, bottom], OFF_DRAWING + 10);
  }, [at, drawn]);
  const figures = useMemo(() => dimensionFigures(roofBounds(committed), drawn, at), [committed, drawn, at]);
  const findings = useFindings({
    report,
    plan,
    seconds,
    lengths,
    touch,
    at,
    perMetre: sheet.perMetre,
    drawing,
    blocked: furniture,
    crossed: figures,
    pane: grownPane(pane),
  });
  // Names rest while something is dragged, though what is found changes with every step.
  const found = useResting(findings, dragging);
  const buttons = useMemo(
    () => buttonsOnRoof({ plan: committed, master, blocking, chosenId, touch, at }),
    [committed, master, blocking, chosenId, touch, at],
  );
  const blocked = useMemo(
    () => [
      ...furniture,
      ...figures,
      ...buttons,
      ...meterBounds(committed, at),
      ...found.flatMap(({ note }) => (note ? [note.bounds] : [])),
    ],
    [furniture, figures, buttons, committed, at, found],
  );
  const power = usePowerOnRoof(masterNow);
  const crossed = useMemo(
    () => [
      ...dimensionLines(roofBounds(committed), drawn, at),
      ...found.flatMap(({ note }) => (note ? [note.leader] : [])),
      ...(power ? powerLines(power, at) : []),
    ],
    [committed, drawn, at, found, power],
  );
  const rings = useMemo((): Ring[] => {
    const chosen = chosenIds.flatMap((id) => {
      const ground = groundOf(committed, id, seconds);
      return (ground && ringOf(ground, at)) ?? [];
    });
    const ofPower = power ? powerRings(power, at, sheet.perMetre) : [];
    return [...found.map(({ at: middle }) => ({ middle, radius: RING })), ...chosen, ...ofPower];
  }, [committed, chosenIds, seconds, at, sheet.perMetre, found, power]);
  const labels = useLettering({
    plan: committed,
    seconds,
    setupId,
    chosenIds,
    lengths,
    touch,
    sheet,
    drawn,
    drawing,
    pane,
    blocked,
    crossed,
    rings,
    blocking: blocking.lettering,
    power,
  });

  // A name does not stay behind where its thing is dragged away: the readout stands for it.
  const resting = useMemo(() => {
    if (!dragging) return labels;
    const moving = dragged ? movingKeys(committed, dragged) : NO_KEYS;
    const unchanged = new Set<object>(committed.cast);
    const changed = new Set(plan.cast.flatMap((each) => (unchanged.has(each) ? [] : [each.id])));
    return labels.filter(({ id }) => !moving.has(id) && !changed.has(blockingKeyOf(id) ?? ''));
  }, [labels, dragging, dragged, committed, plan]);

  const words = useMemo(() => [...blocked, ...resting.map(({ bounds }) => bounds)], [blocked, resting]);

  const shapes = useMemo(
    () => hitShapesOf(committed, seconds, setupId, at),
    [committed, seconds, setupId, at],
  );
  const hit = useCallback(
    (spot: Spot, byTouch: boolean): HitShape<Target> | null =>
      hitAt(shapes, spot, byTouch ? REACH.touch : REACH.mouse),
    [shapes],
  );
  const choose = useCallback(
    (target: Target | null, how: Choosing): void => {
      const id = itemIdOf(target);
      const isCast = open === 'blocking' && master.cast.some((performer) => performer.id === id);
      if (target?.type === 'camera') chooseSetup(target.setupId);
      else if (target?.type === 'mark' && how === 'alone') chooseThing(target);
      else if (id !== null && isCast && how === 'alone') chooseThing({ type: 'performer', performerId: id });
      else if (target?.type === 'area') chooseArea(target.areaId);
      else if (id === null) chooseArea(null);
      else chooseItem(id, how);
      const element = target ? svg?.querySelector<SVGElement>(`[data-target="${focusKeyOf(target)}"]`) : svg;
      element?.focus({ preventScroll: true });
    },
    [svg, open, master],
  );
  // In the column of a phone the whole roof lets the page scroll; once it is zoomed, the finger pans it.
  const scrolls = sheet.fitted && width < WIDE_PANE;
  const within = useCallback(
    (rectangle: Bounds) => itemsWithin(committed, seconds, rectangle, at),
    [committed, seconds, at],
  );
  const pointers = useSheetPointers({
    sheet,
    svg,
    scrolls,
    hit,
    within,
    choose,
    drag: setDragged,
    frame: setFrame,
    tell: setTold,
  });

  const onKeyDown = (event: KeyboardEvent<SVGSVGElement>): void => {
    const target = targetOf(event.target, plan);
    const adds = event.ctrlKey || event.metaKey || event.shiftKey;
    const middle: Spot = [width / 2, height / 2];
    if (event.key === 'Enter' || event.key === ' ') {
      if (!target || (adds && toolPointer.active())) return;
      // Once chosen, a further press goes on to the handles.
      const isChosen =
        target.type === 'area'
          ? target.areaId === areaId
          : itemIdOf(target) === chosenId && chosenId !== null;
      const first = isChosen && !adds ? svg?.querySelector<SVGElement>('[data-handle]') : null;
      if (first) first.focus({ preventScroll: true });
      else choose(target, adds ? 'add' : event.altKey ? 'one' : 'alone');
    } else if (event.ctrlKey || event.metaKey || event.altKey) return;
    else if (event.key === '+' || event.key === '=') zoom(middle, ZOOM_STEP);
    else if (event.key === '-' || event.key === '\u2212') zoom(middle, 1 / ZOOM_STEP);
    else if (event.key === '0') fitAll();
    else return;
    event.preventDefault();
  };

  return (
    <svg
      ref={setSvg}
      className={`sheet-drawing ${showsLevels ? 'shows-levels ' : ''}${scrolls ? 'scrolls ' : ''}${dragged ? 'dragging' : hovered ? 'over' : ''} concern-${open}`}
      width={width}
      height={height}
      style={pixelIn(sheet.perMetre)}
      {...AS_GROUP}
      aria-label={`The roof of ${plan.title}, seen from above, 1 to ${sheet.scale}`}
      onKeyDown={onKeyDown}
      onMouseDown={(event: MouseEvent) => event.preventDefault()}
      onDoubleClick={(event) => {
        const target = hit(spotIn(event.currentTarget, event), false)?.target;
        if (!target || target.type === 'area') fitAll();
      }}
      onFocus={(event) => {
        const key = focusedKey(event.target);
        setFocused(key);
        const { currentTarget: board, target } = event;
        const by = key && pushIntoPane(target.getBoundingClientRect(), board.getBoundingClientRect());
        if (by) sheet.pan(by);
      }}
      onBlur={() => setFocused(null)}
      {...pointers}
      onPointerMove={(event: PointerEvent<SVGSVGElement>) => {
        pointers.onPointerMove(event);
        if (event.buttons !== 0) return;
        const target = hit(spotIn(event.currentTarget, event), event.pointerType !== 'mouse')?.target ?? null;
        if (hovered?.type !== target?.type || (target && hovered && keyOf(target) !== keyOf(hovered)))
          setHovered(target);
      }}
      onPointerLeave={() => setHovered(null)}
      onPointerEnter={(event: PointerEvent) => setTouch(event.pointerType !== 'mouse')}
    >
      <EdgeTicks sheet={sheet} origin={[roofBounds(committed)[0], roofBounds(committed)[1]]} />
      <Drawing
        plan={plan}
        committed={committed}
        sheet={sheet}
        setupId={setupId}
        chosenIds={chosenIds}
        markId={blocking.markId}
        over={blocking.lines.over}
        report={report}
        power={power}
        dragged={dragging ? dragged : null}
      />
      <Dimensions
        deck={roofBounds(committed)}
        drawn={drawn}
        lengths={lengths}
        at={at}
        chosen={decksOf(plan).length > 0 && chosenId ? placeOf(plan, chosenId, seconds) : null}
      />
      {open === 'blocking' && (
        <BlockingLayer
          plan={plan}
          master={masterNow}
          sheet={sheet}
          chosenIds={chosenIds}
          lines={blocking.lines}
          bounds={drawn}
          lengths={lengths}
          setup={masterNow.setups.find(({ id }) => id === setupId) ?? null}
          onlyIn={blocking.onlyIn !== null}
        />
      )}
      <Findings findings={findings} />
      <LetteringLayer labels={resting} seconds={seconds} perMetre={sheet.perMetre} />
      <ExplainLayer plan={masterNow} sheet={sheet} seconds={seconds} lengths={lengths} />
      <ProposedPlace sheet={sheet} lengths={lengths} />
      <Hands
        committed={committed}
        plan={plan}
        seconds={seconds}
        sheet={sheet}
        pane={pane}
        lengths={lengths}
        touch={touch}
        chosenIds={chosenIds}
        frame={frame}
        told={told}
        dragged={dragging ? dragged : null}
        hovered={dragging ? null : hovered}
        focused={focused}
        lettered={labels}
      />
      <MoonMark plan={committed} at={at} />
      <SunMark plan={committed} at={at} />
      <ProbesLayer plan={masterNow} sheet={sheet} svg={svg} touch={touch} through={tooled} />
      <CautionLayer
        plan={masterNow}
        sheet={sheet}
        svg={svg}
        lengths={lengths}
        touch={touch}
        through={tooled}
        names={words}
        pane={pane}
      />
      {!tooled && (
        <HandlesLayer
          plan={plan}
          master={masterNow}
          sheet={sheet}
          svg={svg}
          seconds={seconds}
          setupId={setupId}
          touch={touch}
          markId={blocking.markId}
          onlyIn={blocking.onlyIn?.id ?? null}
        />
      )}
    </svg>
  );
}

const NO_KEYS: ReadonlySet<string> = new Set();

/** Words keep a little off the edge of the pane. */
const grownPane = (pane: Bounds): Bounds => grown(pane, -8);

/** A mark has no group of its own: its performer's takes the focus. */
const focusKeyOf = (target: Target): string => (target.type === 'mark' ? target.performerId : keyOf(target));

function targetOf(element: EventTarget, plan: Plan): Target | null {
  const key =
    element instanceof Element ? element.closest('[data-target]')?.getAttribute('data-target') : null;
  if (!key) return null;
  const area = areaOfKey(plan, key);
  if (area) return { type: 'area', areaId: area.id };
  const setup = plan.setups.find(({ id }) => key === keyOf({ type: 'camera', setupId: id }));
  return setup ? { type: 'camera', setupId: setup.id } : { type: 'item', id: key };
}

/** The key of what has the focus, when it is to be shown: after keys, not after a press. */
const focusedKey = (element: EventTarget): string | null =>
  element instanceof Element && element.matches(':focus-visible')
    ? element.getAttribute('data-target')
    : null;
