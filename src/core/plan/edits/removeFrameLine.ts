import type { Plan } from '../schema/plan';

/** Takes a frame line away; with the last of them the plan says nothing of frame lines. */
export function removeFrameLine(plan: Plan, { id }: { readonly id: string }): Plan {
  const { frameLines: before = [], ...rest } = plan;
  const frameLines = before.filter((line) => line.id !== id);
  if (frameLines.length === before.length) return plan;
  return frameLines.length === 0 ? rest : { ...plan, frameLines };
}
