import type { Box, Setting } from '../marks';
import { drawRoof } from '../roof/drawRoof';
import { extentOf } from '../roof/extent';
import { northArrow, roofLegend, scaleBar, scaleWords } from '../roof/furniture';
import { onSheet, scaleFor } from '../roof/sheetScale';
import type { PackInput } from '../types';
import type { Writer } from '../writer';

/** Under a drawing: the bar, the arrow, the legend. */
const FOOT = 64;
const HEADING = 30;
const FIELD_METRES = 6;
const FINE: Setting = { size: 7, grey: 0.3 };
/** How far below the room fine print may go, above the foot, points. */
const FINE_OVER = 6;

/** Whether the ground comes out larger on a sheet that lies, under a heading and above a foot, points. */
export function liesBetter(
  writer: Writer,
  ground: ReturnType<typeof extentOf>,
  heading: number,
  foot: number,
): boolean {
  const [up, down] = [false, true].map((lying) => {
    const [width, height] = writer.roomOf(lying);
    return scaleFor(ground, width, height - heading - writer.takenBelow(lying, foot));
  });
  return down < up;
}

/** The roof from above to a scale of a rule, with everything named. */
export function overheadPart(writer: Writer, { plan }: PackInput, part: string): void {
  const ground = extentOf(plan);
  const isLying = liesBetter(writer, ground, HEADING, FOOT);
  writer.newPage(part, isLying);
  const [left, top, right, bottom] = writer.room;
  const drawn: Box = [left, top + HEADING, right, bottom - writer.takenBelow(isLying, FOOT)];
  const scale = onSheet(ground, drawn);
  writer.heading(`${part}, ${scaleWords(scale)}`);
  const beyond = drawRoof(writer, scale, plan, {
    setups: plan.setups,
    named: true,
    fieldMetres: FIELD_METRES,
  });
  const under = writer.boxBelow(FOOT);
  const foot = under[1] + 10;
  scaleBar(writer, scale, [left, foot]);
  northArrow(writer, plan, [under[2] - 20, foot + 20]);
  const [from, until] = [left + 190, under[2] - 50];
  let below = roofLegend(writer, [from, foot + 4], until);
  const said = ['Performers as the action begins, cameras as their spans do.'];
  if (beyond.length > 0) said.push(`Beyond this sheet: ${beyond.join(', ')}.`);
  for (const line of said.flatMap((text) => writer.linesOf(text, FINE, until - from))) {
    // What is beyond the sheet may be a whole street: as much as there is room for.
    if (below + writer.leading(FINE) > under[3] + FINE_OVER) break;
    writer.line(line, [from, below], FINE);
    below += writer.leading(FINE);
  }
}
