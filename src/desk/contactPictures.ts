import type { Plan } from '../core/plan/schema/plan';
import type { LengthSystem } from '../core/units/lengths';
import { fingerprintOf } from '../exchange/fingerprint';
import { withPngTexts } from '../exchange/pngText';
import {
  contextOf,
  drawHead,
  drawShot,
  drawSlate,
  fillInk,
  frameHeight,
  pngOf,
  slateHeight,
  typeReady,
} from './contactDrawing';
import { type ContactShot, shotFileName, shotsOf, slateOf, slateTexts } from './contactSlate';
import { fileWord } from './fileWord';
import { LOOK_AROUND } from './viewStore';

/** How pictures are to go out. */
export interface ContactOrder {
  readonly plan: Plan;
  readonly lengths: LengthSystem;
  /** Of the delivered frame, or of the whole sheet, pixels. */
  readonly width: number;
  readonly line: boolean;
  readonly signal: AbortSignal;
  /** Hears how many pictures are drawn. */
  readonly tell: (done: number) => void;
}

export interface NamedPng {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** Higher than this no browser makes a canvas, pixels; and a sheet holds no more of them altogether. */
const HIGHEST = 16_000;
const MOST_PIXELS = 64e6;
/** Pictures beside each other on a sheet. */
const COLUMNS = 3;

const allShots = (plan: Plan): readonly ContactShot[] => plan.setups.flatMap((setup) => shotsOf(plan, setup));

/** How many pictures an order draws. */
export const countOf = (plan: Plan): number => allShots(plan).length;

/** Each picture with its slate under it, one at a time; ends early when it is called off. */
export async function* singlePictures(order: ContactOrder): AsyncGenerator<NamedPng, void, void> {
  const { plan, lengths, width, line, signal, tell } = order;
  await typeReady();
  const picture = document.createElement('canvas');
  const page = document.createElement('canvas');
  let done = 0;
  for (const shot of allShots(plan)) {
    if (!(await drawShot(plan, shot, picture, { width, line, signal }))) return;
    const slate = slateOf(plan, shot, lengths);
    page.width = picture.width;
    page.height = picture.height + slateHeight(picture.width);
    const context = contextOf(page);
    context.drawImage(picture, 0, 0);
    drawSlate(context, slate, [0, picture.height, picture.width]);
    const bytes = withPngTexts(await pngOf(page), slateTexts(plan, shot, slate));
    if (signal.aborted) return;
    done += 1;
    tell(done);
    yield { name: shotFileName(plan, shot), bytes };
  }
}

/** Where everything lies on a sheet, pixels. */
export interface SheetLayout {
  readonly width: number;
  readonly height: number;
  readonly gap: number;
  readonly head: number;
  /** Width of one picture. */
  readonly cell: number;
  /** Upper edge and height of each setup's pictures. */
  readonly rows: readonly { readonly top: number; readonly height: number }[];
}

/** Lays a sheet out so wide, or as wide as it can be made with all setups on it. */
export function layOut(aspects: readonly number[], width: number): SheetLayout {
  const gap = Math.max(8, Math.round(width / 80));
  const head = Math.max(24, Math.round(width / 40));
  const cell = Math.floor((width - (COLUMNS + 1) * gap) / COLUMNS);
  let top = head + gap;
  const rows = aspects.map((aspect) => {
    const row = { top, height: frameHeight(cell, aspect) };
    top += row.height + slateHeight(cell) + gap;
    return row;
  });
  const isTooLarge = top > HIGHEST || top * width > MOST_PIXELS;
  return isTooLarge && width > 640
    ? layOut(aspects, Math.floor(width * 0.9))
    : { width, height: top, gap, head, cell, rows };
}

/** All setups on one sheet; null when it was called off. */
export async function contactSheetPicture(order: ContactOrder): Promise<NamedPng | null> {
  const { plan, lengths, line, signal, tell } = order;
  await typeReady();
  const layout = layOut(
    plan.setups.map(({ delivery }) => delivery),
    order.width,
  );
  const { gap, head, cell } = layout;
  const page = document.createElement('canvas');
  page.width = layout.width;
  page.height = layout.height;
  const context = contextOf(page);
  fillInk(context);
  drawHead(context, plan, [gap, 0, layout.width - 2 * gap, head + gap]);
  const picture = document.createElement('canvas');
  const width = line ? Math.round(cell / LOOK_AROUND) : cell;
  let done = 0;
  for (const [row, setup] of plan.setups.entries()) {
    const { top, height } = layout.rows[row];
    for (const [column, shot] of shotsOf(plan, setup).entries()) {
      if (!(await drawShot(plan, shot, picture, { width, line, signal }))) return null;
      const left = gap + column * (cell + gap);
      context.drawImage(picture, left, top, cell, height);
      drawSlate(context, slateOf(plan, shot, lengths), [left, top + height, cell]);
      done += 1;
      tell(done);
    }
  }
  const texts = {
    Title: plan.title,
    Setups: plan.setups.map(({ label }) => label).join(', '),
    Plan: fingerprintOf(plan),
  };
  const bytes = withPngTexts(await pngOf(page), { ...texts, Software: 'Standclear' });
  return signal.aborted ? null : { name: `${fileWord(plan.title)}-contact-sheet.png`, bytes };
}
