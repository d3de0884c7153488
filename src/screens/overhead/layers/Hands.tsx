import { whereabouts } from '../../../core/form/figure/whereabouts';
import { keyAt } from '../../../core/optics/pose';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { type Footprint, footprintOf } from '../footprints';
import type { PlacedLabel } from '../geometry/labels';
import type { Bounds, Spot } from '../geometry/spots';
import { textWidth } from '../measureText';
import { anchorOfTarget, keyOf, type Target } from '../targets';
import type { SheetView } from '../useSheetView';
import { markNames, nameInText } from '../words';
import { AroundThing, Readout } from './Handled';

interface Props {
  readonly committed: Plan;
  readonly plan: Plan;
  readonly seconds: number;
  readonly sheet: SheetView;
  readonly pane: Bounds;
  readonly lengths: LengthSystem;
  readonly touch: boolean;
  readonly chosenId: string | null;
  readonly dragged: Target | null;
  readonly hovered: Target | null;
  /** Key of the target that has the focus of the keyboard. */
  readonly focused: string | null;
  readonly lettered: readonly PlacedLabel[];
}

/** What belongs to the hand: rings around what is chosen, focused or pointed at, its name, and the readout of a drag. */
export function Hands(props: Props) {
  const { committed, plan, seconds, sheet, pane, lengths, touch, chosenId, dragged, hovered, focused } =
    props;
  const pointed = hovered ? keyOf(hovered) : focused;
  const named = pointed !== null && !props.lettered.some(({ id }) => id === pointed);
  const place = (key: string): Footprint | null => groundOf(plan, key, seconds);
  const chosen = chosenId === null ? null : place(chosenId);
  const focus = focused === null ? null : place(focused);
  const hover = hovered && keyOf(hovered) !== chosenId ? place(keyOf(hovered)) : null;
  const from = dragged ? anchorOfTarget(committed, dragged) : null;
  const to = dragged ? anchorOfTarget(plan, dragged) : null;
  return (
    <g className="hands">
      {hover && <AroundThing footprint={hover} at={sheet.at} kind="hover-ring" />}
      {chosen && <AroundThing footprint={chosen} at={sheet.at} kind="chosen-ring" />}
      {focus && <AroundThing footprint={focus} at={sheet.at} kind="focus-ring" />}
      {named && (
        <Called
          plan={plan}
          target={pointed}
          at={sheet.at}
          ground={place(pointed)}
          touch={touch}
          pane={pane}
        />
      )}
      {from && to && (
        <Readout plan={plan} from={from} to={to} lengths={lengths} at={sheet.at} pane={pane} touch={touch} />
      )}
    </g>
  );
}

interface CalledProps {
  readonly plan: Plan;
  readonly target: string;
  readonly at: (spot: Spot) => Spot;
  readonly ground: Footprint | null;
  readonly touch: boolean;
  readonly pane: Bounds;
}

/** The name of what is pointed at, where the drawing had no room for it. */
function Called({ plan, target, at, ground, touch, pane }: CalledProps) {
  const words = nameOf(plan, target);
  if (!ground || words === null) return null;
  const outline = ground.outline.map(at);
  const [x, top] = [
    outline.reduce((sum, spot) => sum + spot[0], 0) / outline.length,
    Math.min(...outline.map((spot) => spot[1])),
  ];
  const width = textWidth(words, 'strong', touch) + 14;
  const left = Math.min(pane[2] - width - 4, Math.max(4, x - width / 2));
  const y = Math.max(4, top - 30);
  return (
    <g className="called">
      <rect className="chip-box" x={left} y={y} width={width} height={20} />
      <text className="chip-text" x={left + width / 2} y={y + 14} textAnchor="middle">
        {words}
      </text>
    </g>
  );
}

function nameOf(plan: Plan, key: string): string | null {
  const item = itemOf(plan, key);
  if (item) return item.section === 'cast' ? item.record.label : nameInText(item.record.label);
  const setup = plan.setups.find(({ id }) => key === keyOf({ type: 'camera', setupId: id }));
  if (setup) return setup.label;
  for (const performer of plan.cast) {
    const index = performer.marks.findIndex(
      ({ id }) => key === keyOf({ type: 'mark', performerId: performer.id, markId: id }),
    );
    if (index >= 0) return `${performer.label}, mark ${markNames(performer.label, [index])}`;
  }
  return null;
}

/** The ground that a target takes; a performer's and a camera's at the instant. */
export function groundOf(plan: Plan, key: string, seconds: number): Footprint | null {
  const item = itemOf(plan, key);
  if (item?.section === 'cast') {
    const place = whereabouts(item.record, plan, seconds);
    return place ? point([place.at[0], place.at[2]]) : null;
  }
  if (item) {
    const carrier = item.section === 'gear' ? carrierOf(plan, item.record.id) : null;
    const stand = carrier === null ? null : itemOf(plan, carrier);
    // A lamp is ringed where its stand is: that is what moves.
    return footprintOf(stand && stand.section === 'gear' && item.record.kind === 'head' ? stand : item, plan);
  }
  const setup = plan.setups.find(({ id }) => key === keyOf({ type: 'camera', setupId: id }));
  if (setup) {
    const { position } = keyAt(setup.move, seconds);
    return point([position[0], position[2]]);
  }
  const mark = plan.cast
    .flatMap((performer) =>
      performer.marks.map((each) => ({
        key: keyOf({ type: 'mark', performerId: performer.id, markId: each.id }),
        each,
      })),
    )
    .find((each) => each.key === key)?.each;
  return mark ? point([mark.at[0], mark.at[1]]) : null;
}

const point = (spot: Spot): Footprint => ({ outline: [spot], closed: true });
