import type { Footprint } from '../../../core/form/fromAbove/footprint';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { draggedWords } from '../blocking/crowding';
import type { PlacedLabel } from '../geometry/labels';
import type { Bounds, Spot } from '../geometry/spots';
import { groundOf } from '../ground';
import { textWidth } from '../measureText';
import { anchorOfTarget, areaOfKey, type Dragged, keyOf, type Target } from '../targets';
import type { SheetView } from '../useSheetView';
import { areaLettering } from '../wet/words';
import { markNames, nameInText } from '../words';
import { AroundThing, Chip, Readout } from './Handled';

interface Props {
  readonly committed: Plan;
  readonly plan: Plan;
  readonly seconds: number;
  readonly sheet: SheetView;
  readonly pane: Bounds;
  readonly lengths: LengthSystem;
  readonly touch: boolean;
  readonly chosenIds: readonly string[];
  readonly dragged: Dragged | null;
  readonly hovered: Target | null;
  /** Key of the target that has the focus of the keyboard. */
  readonly focused: string | null;
  readonly lettered: readonly PlacedLabel[];
  /** The rectangle that is drawn around what is to be chosen, pixels. */
  readonly frame: Bounds | null;
  /** Why what is pressed does not come along. */
  readonly told: { readonly sentence: string; readonly at: Spot } | null;
}

/** A ring around each of more things than this would be a thicket; those that were chosen last have theirs. */
const MOST_RINGS = 200;

/** What belongs to the hand: rings around what is chosen, focused or pointed at, its name, and the readout of a drag. */
export function Hands(props: Props) {
  const { committed, plan, seconds, sheet, pane, lengths, touch, chosenIds, dragged, hovered, focused } =
    props;
  const { frame, told } = props;
  const pointed = hovered ? keyOf(hovered) : focused;
  const named = pointed !== null && !props.lettered.some(({ id }) => id === pointed);
  const place = (key: string): Footprint | null => groundOf(plan, key, seconds);
  const focus = focused === null ? null : place(focused);
  const hover = hovered && !chosenIds.includes(keyOf(hovered)) ? place(keyOf(hovered)) : null;
  const from = dragged ? anchorOfTarget(committed, dragged.target) : null;
  const to = dragged ? anchorOfTarget(plan, dragged.target) : null;
  return (
    <g className="hands">
      {hover && <AroundThing footprint={hover} at={sheet.at} kind="hover-ring" />}
      {chosenIds.slice(-MOST_RINGS).map((id) => {
        const ground = place(id);
        return ground && <AroundThing key={id} footprint={ground} at={sheet.at} kind="chosen-ring" />;
      })}
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
      {frame && (
        <rect
          className="choosing-frame"
          x={frame[0]}
          y={frame[1]}
          width={frame[2] - frame[0]}
          height={frame[3] - frame[1]}
        />
      )}
      {told && <Chip words={told.sentence} over={told.at} pane={pane} touch={touch} />}
      {from && to && (
        <Readout
          plan={plan}
          why={dragged?.why ?? []}
          more={dragged ? draggedWords(plan, dragged.target, lengths) : []}
          from={from}
          to={to}
          lengths={lengths}
          at={sheet.at}
          pane={pane}
          touch={touch}
        />
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
  const area = areaOfKey(plan, key);
  if (area) return areaLettering(plan.ground, area.id);
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
