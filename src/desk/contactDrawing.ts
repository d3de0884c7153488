import type { Plan } from '../core/plan/schema/plan';
import { type ContactShot, cutToFit, type Slate, slateLine, slateName } from './contactSlate';
import { askStill } from './contactStills';
import { LOOK_AROUND } from './viewStore';

/** Paper and ink of what goes out, which is the same in both themes. */
interface Inks {
  readonly paper: string;
  readonly ink: string;
}

const FACE = '"Encode Sans", "Helvetica Neue", Arial, sans-serif';
/** A slate's letters and its strip, as shares of the picture's width; never smaller than can be read. */
const LETTERS = 1 / 60;
const LEAST_LETTERS = 13;
const STRIP_IN_LETTERS = 2;
/** How far the look-around falls back under ink. */
const AROUND_INK = 0.62;

function inks(): Inks {
  const styles = getComputedStyle(document.documentElement);
  return {
    paper: styles.getPropertyValue('--on-picture').trim(),
    ink: styles.getPropertyValue('--on-picture-ink').trim(),
  };
}

const lettersOf = (width: number): number => Math.max(LEAST_LETTERS, Math.round(width * LETTERS));
const fontOf = (pixels: number, weight: number): string => `${weight} condensed ${pixels}px ${FACE}`;

/** Height of the slate under a picture so wide, pixels. */
export const slateHeight = (width: number): number => Math.round(lettersOf(width) * STRIP_IN_LETTERS);

/** Waits until the house's type can be drawn with. */
export async function typeReady(): Promise<void> {
  await Promise.all([500, 600].map((weight) => document.fonts.load(fontOf(16, weight))));
}

export function contextOf(canvas: HTMLCanvasElement): CanvasRenderingContext2D {
  const context = canvas.getContext('2d');
  if (!context) throw new Error('this browser has no room for a picture of that size');
  return context;
}

/** Letters a slate into a strip: letter and name at the left, what an assistant notes at the right. */
export function drawSlate(
  context: CanvasRenderingContext2D,
  slate: Slate,
  [left, top, width]: readonly [number, number, number],
): void {
  const { paper, ink } = inks();
  const letters = lettersOf(width);
  const height = slateHeight(width);
  const middle = top + height / 2;
  const inset = Math.round(letters / 2);
  context.fillStyle = ink;
  context.fillRect(left, top, width, height);
  context.fillStyle = paper;
  context.textBaseline = 'middle';
  context.font = fontOf(letters, 500);
  context.textAlign = 'right';
  const right = slateLine(slate);
  const taken = context.measureText(right).width;
  context.fillText(right, left + width - inset, middle);
  context.textAlign = 'left';
  context.font = fontOf(letters, 600);
  const room = width - taken - 4 * inset;
  const named = slateName(slate, (text) => context.measureText(text).width <= room);
  // Marks heaped on a letter stay out of the picture.
  context.save();
  context.beginPath();
  context.rect(left, top, width, height);
  context.clip();
  context.fillText(named, left + inset, middle);
  context.restore();
}

/** Pixels of a delivered frame so wide. */
export const frameHeight = (width: number, aspect: number): number => Math.max(2, Math.round(width / aspect));

/**
 * Has a shot drawn onto a canvas: the delivered frame so many pixels wide; with a frame line the look-around is
 * around it, under ink. False when it was called off.
 */
export async function drawShot(
  plan: Plan,
  { setup, seconds }: ContactShot,
  canvas: HTMLCanvasElement,
  args: { readonly width: number; readonly line: boolean; readonly signal: AbortSignal },
): Promise<boolean> {
  const widths = args.line ? LOOK_AROUND : 1;
  const frame = [args.width, frameHeight(args.width, setup.delivery)] as const;
  const [width, height] = frame.map((pixels) => Math.round(pixels * widths));
  const still = { plan, setup, seconds, canvas, width, height, widths };
  if (!(await askStill(still, args.signal))) return false;
  if (args.line) drawLine(canvas, frame);
  return true;
}

/** The frame line in the middle of a picture that shows more, and ink over what is outside of it. */
function drawLine(canvas: HTMLCanvasElement, [width, height]: readonly [number, number]): void {
  const context = contextOf(canvas);
  const { paper, ink } = inks();
  const left = Math.round((canvas.width - width) / 2);
  const top = Math.round((canvas.height - height) / 2);
  context.save();
  context.globalAlpha = AROUND_INK;
  context.fillStyle = ink;
  context.beginPath();
  context.rect(0, 0, canvas.width, canvas.height);
  context.rect(left, top, width, height);
  context.fill('evenodd');
  context.restore();
  const line = Math.max(1, Math.round(width / 1280));
  context.strokeStyle = paper;
  context.lineWidth = line;
  // Outside of the frame, so that it covers nothing of it.
  context.strokeRect(left - line / 2, top - line / 2, width + line, height + line);
}

/** Letters the head of a sheet. */
export function drawHead(
  context: CanvasRenderingContext2D,
  plan: Plan,
  [left, top, width, height]: readonly [number, number, number, number],
): void {
  const { paper } = inks();
  const letters = Math.round(height * 0.5);
  const fits = (text: string): boolean => context.measureText(text).width <= width / 2;
  context.fillStyle = paper;
  context.textBaseline = 'middle';
  context.textAlign = 'left';
  context.font = fontOf(letters, 600);
  context.fillText(cutToFit(plan.title, fits), left, top + height / 2);
  context.textAlign = 'right';
  context.font = fontOf(Math.round(letters * 0.7), 500);
  const where = cutToFit(`${plan.place.label}, ${plan.place.date}`, fits);
  context.fillText(where, left + width, top + height / 2);
}

export function fillInk(context: CanvasRenderingContext2D): void {
  context.fillStyle = inks().ink;
  context.fillRect(0, 0, context.canvas.width, context.canvas.height);
}

/** A canvas's picture as the bytes of a PNG. */
export async function pngOf(canvas: HTMLCanvasElement): Promise<Uint8Array> {
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/png'));
  if (!blob) throw new Error(`this browser cannot write a picture of ${canvas.width} × ${canvas.height}`);
  return new Uint8Array(await blob.arrayBuffer());
}
