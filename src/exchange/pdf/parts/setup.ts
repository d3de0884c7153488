import { cameraReading } from '../../../core/continuity/cameraReading';
import {
  CAMERA_LINES,
  cameraWords,
  PERFORMER_COLUMNS,
  performerWords,
} from '../../../core/continuity/readingWords';
import { glassOf, spanOf } from '../../../core/optics/camera';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { setupLetter } from '../../../core/plan/setupLetter';
import { findingSentence } from '../../../core/report/sentences';
import type { ItemReport, JudgedSetup } from '../../../core/report/types';
import { formatDegrees } from '../../../core/units/angles';
import type { LengthSystem } from '../../../core/units/lengths';
import { NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { formatStopCount, formatStopSetting } from '../../../core/units/stops';
import type { Box } from '../marks';
import type { PartWriter } from '../partWriter';
import { drawRoof } from '../roof/drawRoof';
import { extentOf } from '../roof/extent';
import { scaleWords } from '../roof/furniture';
import { onSheet } from '../roof/sheetScale';
import type { PackInput, PartInput } from '../types';
import type { Writer } from '../writer';

/** Of the drawing, points: lower beside a picture, so that a setup mostly keeps to its page. */
const DRAWING_HEIGHT = { alone: 216, besidePicture: 160 } as const;
/** Far enough for the edges of a frame to leave the drawing, metres. */
const FAR = 200;

/** Whether an item is something to say: what should keep out and does not or hardly does, what must show and does not. */
const isFinding = ({ wish, verdict }: ItemReport): boolean =>
  wish === 'keep out' ? verdict !== 'clear' : wish === 'must show' && verdict !== 'showing';

const sentenceOf = (item: ItemReport, setup: JudgedSetup, lengths: LengthSystem): string => {
  const { name, text, colon } = findingSentence(item, setup, lengths);
  return `${name}${colon ? ':' : ''} ${text}`;
};

/** What is read off the camera at the beginning of its span, and at the end where it moves. */
export function readings(writer: PartWriter, { plan, lengths }: PartInput, setup: Setup): void {
  const [from, until] = spanOf(plan, setup);
  const moments = from === until || setup.move.keys.length < 2 ? [from] : [from, until];
  for (const seconds of moments) {
    const reading = cameraReading(plan, setup, seconds);
    const words = cameraWords(reading, lengths);
    writer.subheading(`At ${formatSeconds(seconds)}`);
    writer.text(CAMERA_LINES.map((line) => `${line} ${words[line]}`).join(', '));
    writer.table(
      [
        { name: 'to the eyes of', share: 30 },
        ...PERFORMER_COLUMNS.map((name) => ({ name, share: 17, align: 'right' as const })),
      ],
      reading.performers.map((performer) => {
        const said = performerWords(performer, lengths);
        return [performer.label, ...PERFORMER_COLUMNS.map((column) => said[column])];
      }),
    );
  }
}

/** What a setup sees that it should not or not quite, with what is accepted and why; then its light and its cuts. */
export function findings(writer: PartWriter, report: JudgedSetup, lengths: LengthSystem): void {
  const all = report.items.filter(isFinding);
  const open = all.filter(({ accepted }) => !accepted);
  writer.subheading('Findings', 'text');
  if (open.length === 0)
    writer.text('Nothing that should keep out comes near the frame, and what must show shows.');
  for (const item of open) {
    writer.gap(2);
    writer.text(sentenceOf(item, report, lengths));
  }
  const accepted = all.flatMap((item) => (item.accepted ? [{ item, reason: item.accepted.reason }] : []));
  if (accepted.length > 0) writer.subheading('Accepted', 'text');
  for (const { item, reason } of accepted) {
    writer.gap(2);
    writer.text(`${sentenceOf(item, report, lengths)} It may show: ${reason}`);
  }
  const light = report.light.sentences.filter(
    ({ standing, about }) => standing !== 'holds' && about !== 'level',
  );
  if (light.length > 0) writer.subheading('Light', 'text');
  for (const { name, colon, text } of light) {
    writer.gap(2);
    writer.text(`${name}${colon ? ':' : ''} ${text}`);
  }
  const cuts = report.continuity.filter(({ standing }) => standing !== 'holds');
  if (cuts.length > 0) writer.subheading('Continuity', 'text');
  for (const { sentence } of cuts) {
    writer.gap(2);
    writer.text(sentence);
  }
}

/** A setup's letter and name. */
const setupTitle = (plan: Plan, setup: Setup): string =>
  `${setupLetter(plan.setups.indexOf(setup))}  ${setup.label}`;

/** What camera, lens, exposure and support a setup takes. */
export function setupFacts(writer: PartWriter, { plan, report, lengths }: PartInput, setup: Setup): void {
  const judged = report.setups.find(({ id }) => id === setup.id);
  const { lens } = glassOf(plan, setup);
  const [from, until] = spanOf(plan, setup);
  const words = cameraWords(cameraReading(plan, setup, from), lengths);
  const body = plan.kit.bodies.find(({ id }) => id === setup.body)?.label ?? '';
  const angles = judged
    ? `, ${formatDegrees(judged.angles.horizontal)} by ${formatDegrees(judged.angles.vertical)}`
    : '';
  writer.text(
    `${lens.label}: ${words['focal length']}${lens.squeeze === 1 ? ', no squeeze' : `, ${lens.squeeze}× squeeze`}${angles}, delivered ${setup.delivery}:1.`,
  );
  writer.text(
    `${body}. Stop ${formatStopSetting(setup.stop)}, ISO ${setup.iso}, shutter ${setup.shutterDegrees}°, ${setup.framesPerSecond} frames per second, ND ${formatStopCount(setup.ndStops)}, ${setup.balanceKelvin}${NBSP}K.`,
  );
  writer.text(`Support: ${setup.support}. Covers ${formatSeconds(from)} to ${formatSeconds(until)}.`);
}

/** One setup: its camera, what is read off it, its picture where there is one, its field, its findings. */
export async function setupPart(writer: Writer, input: PackInput, setup: Setup, part: string): Promise<void> {
  const { plan, report, stills } = input;
  const judged = report.setups.find(({ id }) => id === setup.id);
  writer.newPage(part);
  writer.heading(setupTitle(plan, setup));
  setupFacts(writer, input, setup);
  writer.gap(6);
  const still = stills?.get(setup.id);
  const height = still ? DRAWING_HEIGHT.besidePicture : DRAWING_HEIGHT.alone;
  const [left, , right] = writer.room;
  const middle = still ? (left + right) / 2 + 4 : left;
  const top = writer.y;
  const ground = extentOf(plan);
  const { pointsPerMetre } = onSheet(ground, [middle, top, right, top + height]);
  // No higher than what it shows, or than the picture.
  const drawn = (ground[3] - ground[1]) * pointsPerMetre + 1;
  const pictured = still ? (middle - 8 - left) / setup.delivery : 0;
  const box: Box = [middle, top, right, top + Math.min(height, Math.max(drawn, pictured))];
  if (still) await writer.picture(still, [left, top, middle - 8, box[3]]);
  const scale = onSheet(ground, box);
  drawRoof(writer, scale, plan, { setups: [setup], named: false, fieldMetres: FAR });
  writer.y = box[3] + 2;
  writer.line(`Scale ${scaleWords(scale)}`, [right, writer.y], { size: 7, align: 'right' });
  writer.gap(8);
  readings(writer, input, setup);
  if (judged) findings(writer, judged, input.lengths);
}
