import { DECIDES } from '../../../core/cautions/caution';
import { cameraReading } from '../../../core/continuity/cameraReading';
import { cameraWords } from '../../../core/continuity/readingWords';
import { wallTime } from '../../../core/night/times/nightClock';
import { glassOf, spanOf } from '../../../core/optics/camera';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatLength } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatStopSetting } from '../../../core/units/stops';
import type { FootMark } from '../link/footMark';
import { noCodeWords } from '../link/packLink';
import type { Setting } from '../marks';
import type { PackInput } from '../types';
import type { Writer } from '../writer';

/** Where parts and setups begin, by their names and ids; filled in as pages come. */
export interface Contents {
  readonly parts: { readonly name: string; readonly page: number }[];
  readonly setups: Map<string, number>;
}

/** How many lines of the index a pack can have: one for each part. */
const MOST_PARTS = 11;

/** The code of the cover, points along a side: so large that any phone reads it. */
const CODE_SIDE = 200;
/** A link longer than this is not printed letter by letter: nobody types it. */
const MOST_PRINTED = 4000;
const LETTERS_OF_LINK: Setting = { size: 5, grey: 0.2 };
/** How many sentences of what the link leaves out are printed: with them the block is never longer than a page. */
const MOST_LEFT_OUT = 3;
/** Free over the link itself, points. */
const BEFORE_LINK = 4;

/** A line of text that was laid out. */
interface SetLine {
  readonly line: string;
  readonly setting: Setting;
}

/** The cover: what, where, when, the setups, and where everything is. */
export function coverPart(writer: Writer, input: PackInput, contents: Contents, mark: FootMark | null): void {
  const { plan, night, lengths } = input;
  const { clock, call, schedule } = night;
  writer.newPage('Cover', false, false);
  writer.gap(14);
  writer.text(plan.title, { size: 24, weight: 'strong' });
  writer.gap(2);
  writer.text(`${plan.place.label}, ${plan.place.date}`, { size: 12 });
  const times = [`Call ${wallTime(clock, call)}`, `wrap ${wallTime(clock, schedule.wrap)}`];
  if (schedule.meal) times.splice(1, 0, `meal ${wallTime(clock, schedule.meal.from)}`);
  if (plan.setups.length > 0) writer.text(`${times.join(', ')}.`, { size: 12 });
  if (plan.notes.trim() !== '') {
    writer.gap(6);
    writer.text(plan.notes);
  }
  writer.subheading('Contents');
  const [left, , right] = writer.room;
  for (let row = 0; row < MOST_PARTS; row += 1) {
    const { y } = writer;
    writer.later(() => contents.parts[row]?.name ?? '', [left, y]);
    writer.later(() => String(contents.parts[row]?.page ?? ''), [right, y], { align: 'right' });
    writer.gap(writer.leading());
  }
  writer.subheading('Setups');
  if (plan.setups.length === 0) writer.text('This plan has no setups.');
  writer.table(
    [
      { name: 'setup', share: 30 },
      { name: 'lens', share: 26 },
      { name: 'height', share: 11, align: 'right' },
      { name: 'stop', share: 9, align: 'right' },
      { name: 'support', share: 13 },
      { name: 'page', share: 7, align: 'right' },
    ],
    plan.setups.map((setup, place) => {
      const { lens } = glassOf(plan, setup);
      const reading = cameraReading(plan, setup, spanOf(plan, setup)[0]);
      return [
        `${setupLetter(place)}${NBSP}${NBSP}${setup.label}`,
        `${lens.label}, ${cameraWords(reading, lengths)['focal length']}`,
        formatLength(reading.heightMetres, lengths),
        formatStopSetting(setup.stop),
        setup.support,
        () => String(contents.setups.get(setup.id) ?? ''),
      ];
    }),
  );
  writer.gap(10);
  writer.text(DECIDES, { grey: 0.3 });
  if (mark) linkBlock(writer, input, mark);
  else if (input.noLink !== undefined) writer.text(input.noLink);
}

/** The link with its code, what it is, and the link itself as letters where somebody might copy them. */
function linkBlock(writer: Writer, { plan, fingerprint }: PackInput, mark: FootMark): void {
  const { link } = mark;
  const { address, code, leftOut } = link;
  const [left, , right] = writer.room;
  const side = code ? CODE_SIDE : 0;
  const width = right - left - (code ? side + 16 : 0);
  const set = (text: string, setting: Setting = {}): readonly SetLine[] =>
    writer.linesOf(text, setting, width).map((line) => ({ line, setting }));
  const more = leftOut.length - MOST_LEFT_OUT;
  const said = [
    ...set(`${plan.title}, plan ${fingerprint}`, { weight: 'strong' }),
    ...set(
      'It holds the whole plan as it was when this was printed, and opens on a phone without a signal once it was open there.',
    ),
    ...(code
      ? []
      : set(
          `${noCodeWords(link)} Press it here or at the foot of any page, or open the crew sheet as one file.`,
        )),
    ...leftOut.slice(0, MOST_LEFT_OUT).flatMap((sentence) => set(sentence)),
    ...(more > 0 ? set(`It leaves out ${more} more ${more === 1 ? 'file' : 'files'}.`) : []),
  ];
  const opening =
    address.length <= MOST_PRINTED
      ? set(address, LETTERS_OF_LINK)
      : set('Open the crew sheet', { weight: 'strong' });
  const heightOf = (lines: readonly SetLine[]): number =>
    lines.reduce((sum, { setting }) => sum + writer.leading(setting), 0);
  writer.need(Math.max(side, 60, heightOf(said) + BEFORE_LINK + heightOf(opening)) + 44);
  writer.subheading('The link of the crew');
  const top = writer.y;
  if (code) writer.code(mark, [right - side, top], side);
  const put = ({ line, setting }: SetLine): void => {
    writer.line(line, [left, writer.y], setting);
    writer.gap(writer.leading(setting));
  };
  said.forEach(put);
  writer.gap(BEFORE_LINK);
  const from = writer.y;
  opening.forEach(put);
  writer.opens(mark, [left, from, left + width, writer.y]);
  writer.y = Math.max(writer.y, top + side);
}
