import * as v from 'valibot';
import { type FrameLine, frameLine as frameLineSchema } from '../schema/drawing';
import type { Plan } from '../schema/plan';
import { MOST } from './limits';
import { putEntry } from './putEntry';

/** To a ten thousandth of the frame: under half a pixel of the largest picture that is delivered. */
const tidy = (share: number): number => Math.round(share * 10000) / 10000;

/** Puts a frame line over every setup's picture, or changes the one with its id. What the schema refuses changes nothing. */
export function setFrameLine(plan: Plan, { line }: { readonly line: FrameLine }): Plan {
  const [left, top, right, bottom] = line.rect;
  const tidied: FrameLine = { ...line, rect: [tidy(left), tidy(top), tidy(right), tidy(bottom)] };
  if (!v.is(frameLineSchema, tidied)) return plan;
  const before = plan.frameLines ?? [];
  const frameLines = putEntry(before, tidied, MOST.frameLines);
  return frameLines === before ? plan : { ...plan, frameLines };
}
