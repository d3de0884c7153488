import { readNumber } from '../units/numbers';

/** An aspect ratio that something is delivered in, by its name in the trade; common practice, no source. */
export interface Delivery {
  readonly word: string;
  readonly aspect: number;
}

/** From wide to upright. */
export const DELIVERIES: readonly Delivery[] = [
  { word: '2.39', aspect: 2.39 },
  { word: '2:1', aspect: 2 },
  { word: '1.85', aspect: 1.85 },
  { word: '16:9', aspect: 16 / 9 },
  { word: '1.66', aspect: 1.66 },
  { word: '4:3', aspect: 4 / 3 },
  { word: '1:1', aspect: 1 },
  { word: '4:5', aspect: 4 / 5 },
  { word: '9:16', aspect: 9 / 16 },
];

/** A plan from elsewhere writes 1.78 for 16:9. */
const SAME = 0.003;

/** The name of an aspect ratio, else its number to a hundredth. */
export function deliveryWord(aspect: number): string {
  const known = DELIVERIES.find((delivery) => Math.abs(delivery.aspect - aspect) < SAME);
  return known?.word ?? String(Math.round(aspect * 100) / 100);
}

/** Reads an aspect ratio: `2.39`, `2.39:1`, `9:16`, `16 x 9`; null for what is none. */
export function readAspect(text: string): number | null {
  const sides = text.split(/[:x×]/i);
  if (sides.length > 2) return null;
  const [width, height] = sides.map((side) => readNumber(side, [])?.value ?? Number.NaN);
  const aspect = sides.length === 2 ? width / height : width;
  return Number.isFinite(aspect) ? aspect : null;
}
