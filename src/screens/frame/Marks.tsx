import type { ItemReport, SetupReport } from '../../core/report/types';
import { formatLength } from '../../core/units/lengths';
import { formatShare } from '../../core/units/shares';
import { useSession } from '../../desk/hooks';
import { concernOf, findingsOf } from '../report/concerns';
import { type Box, boxOf } from './pictureBox';
import { placeLabels } from './placeLabels';

/** More labels would hide the picture that they are about; the list under it has them all. */
const MOST_LABELS = 4;
const MOST_CLOSE = 3;
/** In a frame narrower than this, in pixels, one label is as much as the picture bears. */
const NARROW_PIXELS = 480;
const LABEL_HEIGHT = 38;
const PIXELS_PER_LETTER = 6.1;

interface Labelled {
  readonly item: ItemReport;
  readonly mark: Box;
  readonly title: string;
  readonly second: string;
}

function labelled(item: ItemReport, box: Box): Labelled | null {
  const concern = concernOf(item);
  if (concern === 'mirrored' && item.mirroredExtent) {
    return {
      item,
      mark: boxOf(box, item.mirroredExtent),
      title: item.label,
      second: `${formatShare(item.mirroredShare)} of the frame, mirrored`,
    };
  }
  if (concern !== 'shows' || !item.extent) return null;
  const part = item.parts[0];
  const side = item.touches[0];
  return {
    item,
    mark: boxOf(box, item.extent),
    title: part && !item.label.toLowerCase().includes(part.name) ? `${item.label}, ${part.name}` : item.label,
    second: `${formatShare(item.share)} of the frame${side ? `, ${side}` : ''}`,
  };
}

function Label({
  place,
  mark,
  entry,
}: {
  readonly place: Box;
  readonly mark: Box;
  readonly entry: Labelled;
}) {
  const toRight = place.left > mark.left;
  const y = Math.min(Math.max(place.top + 10, mark.top), mark.top + mark.height);
  const from = toRight ? place.left : place.left + place.width;
  const to = toRight ? Math.min(mark.left + mark.width, from) : Math.max(mark.left, from);
  return (
    <g className="label">
      <path className="leader" d={`M${from} ${place.top + 10}L${to} ${y}`} />
      <rect className="plate" x={place.left} y={place.top} width={place.width} height={place.height} />
      <rect className="bar-mark" x={place.left} y={place.top} width={3} height={place.height} />
      <use href={`#g-${entry.item.verdict}`} x={place.left + 10} y={place.top + 4} width={14} height={14} />
      <text className="title" x={place.left + 30} y={place.top + 15}>
        {entry.title}
      </text>
      <text className="second" x={place.left + 10} y={place.top + 31}>
        {entry.second}
      </text>
    </g>
  );
}

/** A close item: a bracket from the frame line outwards where it is nearest, with the distance inside. */
function CloseMark({
  item,
  box,
  row,
}: {
  readonly item: ItemReport;
  readonly box: Box;
  readonly row: number;
}) {
  const lengths = useSession((state) => state.lengths);
  if (!item.margin) return null;
  const { edge, metres, frameWidths } = item.margin;
  const away = Math.max(Math.min(frameWidths * box.width, box.left), 3);
  const along = box.top + box.height * 0.42 + row * 22;
  const across = box.left + box.width * 0.5 + row * 70;
  const left = edge === 'left';
  const upright = left || edge === 'right';
  const x = upright ? (left ? box.left : box.left + box.width) : across;
  const y = upright ? along : edge === 'top' ? box.top : box.top + box.height;
  const out = left || edge === 'top' ? -away : away;
  const text = `${item.label}, ${formatLength(metres, lengths)}`;
  const inside = left || edge === 'top' ? 6 : -20;
  const glyph = upright ? { x: x + inside, y: y - 8 } : { x: x + 6, y: y + (edge === 'top' ? 4 : -18) };
  return (
    <g className="close-mark">
      <path
        d={
          upright
            ? `M${x + out} ${y}H${x}M${x + out} ${y - 4}v8M${x} ${y - 4}v8`
            : `M${x} ${y + out}V${y}M${x - 4} ${y + out}h8M${x - 4} ${y}h8`
        }
      />
      <use href="#g-close" x={glyph.x} y={glyph.y} width={14} height={14} />
      <text
        x={edge === 'right' ? glyph.x - 5 : glyph.x + 19}
        y={glyph.y + 11}
        textAnchor={edge === 'right' ? 'end' : 'start'}
      >
        {text}
      </text>
    </g>
  );
}

/** Four corners round what is chosen, when it shows without being in the way. */
function ChosenMark({ mark }: { readonly mark: Box }) {
  const { left, top, width, height } = mark;
  const arm = Math.min(6, width / 2, height / 2);
  const right = left + width;
  const bottom = top + height;
  return (
    <path
      className="chosen-mark"
      d={[
        `M${left} ${top + arm}V${top}h${arm}`,
        `M${right - arm} ${top}H${right}v${arm}`,
        `M${right} ${bottom - arm}V${bottom}h${-arm}`,
        `M${left + arm} ${bottom}H${left}v${-arm}`,
      ].join('')}
    />
  );
}

/** What was found, drawn on the picture at this instant: outlines, dashed images, distances to the frame line. */
export function Marks(props: {
  readonly report: SetupReport;
  readonly box: Box;
  readonly selectedId: string | null;
}) {
  const { report, box, selectedId } = props;
  const narrow = box.width < NARROW_PIXELS;
  const findings = findingsOf(report);
  const entries = findings.flatMap((item) => labelled(item, box) ?? []);
  const told = [
    ...entries.filter((entry) => entry.item.id === selectedId),
    ...entries.filter((entry) => entry.item.id !== selectedId),
  ].slice(0, narrow ? 1 : MOST_LABELS);
  const places = placeLabels(
    told.map(({ mark, title, second }) => ({
      mark,
      width: Math.max(36 + title.length * PIXELS_PER_LETTER, 18 + second.length * PIXELS_PER_LETTER),
      height: LABEL_HEIGHT,
    })),
    box,
  );
  const close = findings.filter((item) => concernOf(item) === 'close').slice(0, narrow ? 1 : MOST_CLOSE);
  const chosen = report.items.find((item) => item.id === selectedId && concernOf(item) === null);
  return (
    <g className="marks">
      {entries.map(({ item, mark }) =>
        item.verdict === 'mirrored' ? (
          <ellipse
            key={item.id}
            className="mirror-outline"
            cx={mark.left + mark.width / 2}
            cy={mark.top + mark.height / 2}
            rx={mark.width / 2 + 3}
            ry={mark.height / 2 + 3}
          />
        ) : (
          <rect
            key={item.id}
            className="outline"
            x={mark.left}
            y={mark.top}
            width={mark.width}
            height={mark.height}
          />
        ),
      )}
      {close.map((item, row) => (
        <CloseMark key={item.id} item={item} box={box} row={row} />
      ))}
      {chosen?.extent ? <ChosenMark mark={boxOf(box, chosen.extent)} /> : null}
      {told.map((entry, index) => {
        const place = places[index];
        return place ? <Label key={entry.item.id} place={place} mark={entry.mark} entry={entry} /> : null;
      })}
    </g>
  );
}
