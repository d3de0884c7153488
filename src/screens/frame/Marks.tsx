import { useId, useMemo } from 'react';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import type { ItemReport, SetupReport } from '../../core/report/types';
import { formatShare } from '../../core/units/shares';
import { useSession } from '../../desk/hooks';
import { glyphHref } from '../parts/Glyph';
import { concernOf, findingsOf, isLetShow } from '../report/concerns';
import { type CloseMark, closeMarks, PIXELS_PER_LETTER } from './closeMarks';
import { facesIn } from './faces';
import { leaderPath, type Outlines } from './leaderPath';
import { type Box, boxOf } from './pictureBox';
import { placeLabels } from './placeLabels';
import { alongEdge, outlinesInFrame, type Sighting } from './projected';

/** More labels would hide the picture that they are about; the list under it has them all. */
const MOST_LABELS = 4;
const MOST_CLOSE = 3;
/** In a frame narrower than this, in pixels, one label is as much as the picture bears. */
const NARROW_PIXELS = 480;
const LABEL_HEIGHT = 38;
const GLYPH_PIXELS = 14;
/** Beside the letters of a label: its bar, its glyph, its ends; pixels. */
const LABEL_REST = 36;
/** A longer name says no more of where to look. */
const MOST_LETTERS = 44;

/** Space between what is outlined and its outline, and the outline's own weight, pixels. */
const OFF_PART = 2;
const WEIGHT = 1.5;

interface Labelled {
  readonly item: ItemReport;
  readonly mark: Box;
  readonly title: string;
  readonly second: string;
}

/** The same with its outlines in pixels of the picture, none where it is marked as a whole, and with their boxes. */
interface Outlined extends Labelled {
  readonly outlines: Outlines;
  readonly bits: readonly Box[];
}

const boxAround = (spots: Outlines[number]): Box => {
  const [xs, ys] = [spots.map(([x]) => x), spots.map(([, y]) => y)];
  const [left, top] = [Math.min(...xs) - OFF_PART, Math.min(...ys) - OFF_PART];
  return { left, top, width: Math.max(...xs) + OFF_PART - left, height: Math.max(...ys) + OFF_PART - top };
};

function outlined(entry: Labelled, seen: Sighting, frame: Box): Outlined {
  const outlines =
    entry.item.verdict === 'mirrored'
      ? []
      : outlinesInFrame(seen, entry.item).map((spots) =>
          spots.map(([x, y]) => [frame.left + x * frame.width, frame.top + y * frame.height] as const),
        );
  return { ...entry, outlines, bits: outlines.length > 0 ? outlines.map(boxAround) : [entry.mark] };
}

/** As much of a name as a label has room for. */
const shortened = (text: string, letters: number): string =>
  text.length <= letters ? text : `${text.slice(0, Math.max(letters - 1, 1)).trimEnd()}…`;

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
  entry,
  words,
}: {
  readonly place: Box;
  readonly entry: Outlined;
  readonly words: readonly Box[];
}) {
  return (
    <g className="label">
      <path className="leader" d={leaderPath(place, entry, words)} />
      <rect className="plate" x={place.left} y={place.top} width={place.width} height={place.height} />
      <rect className="bar-mark" x={place.left} y={place.top} width={3} height={place.height} />
      <use
        href={glyphHref(entry.item.verdict)}
        x={place.left + 10}
        y={place.top + 4}
        width={GLYPH_PIXELS}
        height={GLYPH_PIXELS}
      />
      <text className="title" x={place.left + 30} y={place.top + 15}>
        {entry.title}
      </text>
      <text className="second" x={place.left + 10} y={place.top + 31}>
        {entry.second}
      </text>
    </g>
  );
}

/** A close item: a bracket from the frame line outwards, with the distance inside. */
function CloseBracket({ mark }: { readonly mark: CloseMark }) {
  return (
    <g className="close-mark">
      <path d={mark.path} />
      <use href="#g-close" x={mark.glyph[0]} y={mark.glyph[1]} width={GLYPH_PIXELS} height={GLYPH_PIXELS} />
      <text x={mark.textAt[0]} y={mark.textAt[1]} textAnchor={mark.anchor}>
        {mark.text}
      </text>
    </g>
  );
}

/** Four corners of a box, as a path. */
function cornersOf({ left, top, width, height }: Box): string {
  const arm = Math.min(6, width / 2, height / 2);
  const right = left + width;
  const bottom = top + height;
  return [
    `M${left} ${top + arm}V${top}h${arm}`,
    `M${right - arm} ${top}H${right}v${arm}`,
    `M${right} ${bottom - arm}V${bottom}h${-arm}`,
    `M${left + arm} ${bottom}H${left}v${-arm}`,
  ].join('');
}

/** What is lost in the dark: four corners and the glyph, so that it is found and takes nothing from the picture. */
function LostMark({ mark, frame }: { readonly mark: Box; readonly frame: Box }) {
  const right = mark.left + mark.width + 4;
  const x = right + GLYPH_PIXELS > frame.left + frame.width ? mark.left - GLYPH_PIXELS - 4 : right;
  // Half way down, since labels lie along the edges.
  const y = mark.top + (mark.height - GLYPH_PIXELS) / 2;
  return (
    <g className="lost-mark">
      <path d={cornersOf(mark)} />
      <use href="#g-lost" x={x} y={y} width={GLYPH_PIXELS} height={GLYPH_PIXELS} />
    </g>
  );
}

/** What was let show: four corners and two words, quietly, since nothing is to be done. */
function LetShowMark({ mark, frame }: { readonly mark: Box; readonly frame: Box }) {
  const [x, y] = [mark.left + mark.width / 2, mark.top + mark.height + 14];
  const below = y <= frame.top + frame.height - 4;
  return (
    <g className="let-show-mark">
      <path d={cornersOf(mark)} />
      <text x={x} y={below ? y : mark.top - 5} textAnchor="middle">
        let show
      </text>
    </g>
  );
}

/** The outline of all bits together, a little off them, so that a thin stand is not hidden by its own mark. */
function Outline({
  mark,
  frame,
  outlines,
}: {
  readonly mark: Box;
  readonly frame: Box;
  readonly outlines: Outlines;
}) {
  const id = useId();
  const { left, top, width, height } = mark;
  if (outlines.length === 0)
    return <rect className="outline" x={left} y={top} width={width} height={height} />;
  const path = outlines
    .map((spots) => `M${spots.map(([x, y]) => `${x.toFixed(1)} ${y.toFixed(1)}`).join('L')}Z`)
    .join('');
  const grown = OFF_PART + WEIGHT + 1;
  // Cut at the frame line, so that what goes on beyond it is seen to.
  const [x, y] = [Math.max(left - grown, frame.left), Math.max(top - grown, frame.top)];
  const around = {
    x,
    y,
    width: Math.min(left + width + grown, frame.left + frame.width) - x,
    height: Math.min(top + height + grown, frame.top + frame.height) - y,
  };
  return (
    <>
      <mask id={id} maskUnits="userSpaceOnUse" {...around}>
        <path className="outer" d={path} strokeWidth={2 * (OFF_PART + WEIGHT)} />
        <path className="inner" d={path} strokeWidth={2 * OFF_PART} />
      </mask>
      <rect className="hugging" mask={`url(#${id})`} {...around} />
    </>
  );
}

/** What was found, drawn on the picture at this instant: outlines, dashed images, distances to the frame line. */
export function Marks(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly report: SetupReport;
  readonly box: Box;
  readonly selectedIds: readonly string[];
  /** Where no label may lie. */
  readonly kept: readonly Box[];
}) {
  const { plan, setup, report, box, selectedIds } = props;
  const lengths = useSession((state) => state.lengths);
  const narrow = box.width < NARROW_PIXELS;
  const findings = findingsOf(report);
  const letters = Math.min(MOST_LETTERS, Math.floor((box.width - LABEL_REST) / PIXELS_PER_LETTER));
  const seen = useMemo((): Sighting => ({ plan, setup, seconds: report.seconds[0] }), [plan, setup, report]);
  const entries = findings.flatMap((item) => {
    const entry = labelled(item, box);
    return entry ? [outlined(entry, seen, box)] : [];
  });
  const told = [
    ...entries.filter((entry) => selectedIds.includes(entry.item.id)),
    ...entries.filter((entry) => !selectedIds.includes(entry.item.id)),
  ]
    .slice(0, narrow ? 1 : MOST_LABELS)
    .map((entry) => ({ ...entry, title: shortened(entry.title, letters) }));
  const nearest = findings.filter((item) => concernOf(item) === 'close');
  const bits = entries.flatMap((entry) => entry.bits);
  const close = closeMarks(
    nearest.slice(0, narrow ? 1 : MOST_CLOSE),
    box,
    lengths,
    !narrow,
    ({ id }, edge) => alongEdge(seen, id, edge),
    bits,
  );
  const labels = told.map(({ mark, title, second }) => ({
    mark,
    width: Math.max(LABEL_REST + title.length * PIXELS_PER_LETTER, 18 + second.length * PIXELS_PER_LETTER),
    height: LABEL_HEIGHT,
  }));
  const words = close.map((mark) => mark.box);
  const taken = [...props.kept, ...words];
  const besideFaces = placeLabels(labels, box, [...taken, ...facesIn(seen, box)], bits);
  const places = besideFaces.includes(null) ? placeLabels(labels, box, taken, bits) : besideFaces;
  const chosen = report.items.filter((item) => selectedIds.includes(item.id) && concernOf(item) === null);
  const letShow = report.items.filter(isLetShow);
  const lost = report.items.filter(
    (item) => item.verdict === 'lost in the dark' && item.wish !== 'either' && !isLetShow(item),
  );
  return (
    <g className="marks">
      {entries.map(({ item, mark, outlines }) =>
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
          <Outline key={item.id} mark={mark} frame={box} outlines={outlines} />
        ),
      )}
      {close.map((mark) => (
        <CloseBracket key={mark.id} mark={mark} />
      ))}
      {lost.map(({ id, extent }) => extent && <LostMark key={id} mark={boxOf(box, extent)} frame={box} />)}
      {letShow.map((item) => {
        const extent = item.verdict === 'mirrored' ? item.mirroredExtent : item.extent;
        return extent && <LetShowMark key={item.id} mark={boxOf(box, extent)} frame={box} />;
      })}
      {chosen.map(
        ({ id, extent }) =>
          extent && <path key={id} className="chosen-mark" d={cornersOf(boxOf(box, extent))} />,
      )}
      {told.map((entry, index) => {
        const place = places[index];
        return place ? <Label key={entry.item.id} place={place} entry={entry} words={words} /> : null;
      })}
    </g>
  );
}
