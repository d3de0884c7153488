import { DARK_LIMITS, type Dark, type Plan, UPRIGHT_LIMITS, type UprightLimits } from '../schema/plan';
import { orSame } from './motion';
import { kept } from './tidy';

const keptUprights = (limits: UprightLimits): UprightLimits => ({
  leanDegrees: kept(limits.leanDegrees, ...UPRIGHT_LIMITS.leanDegrees),
  leastHeight: kept(limits.leastHeight, ...UPRIGHT_LIMITS.leastHeight),
  likeWidth: kept(limits.likeWidth, ...UPRIGHT_LIMITS.likeWidth),
  likeStops: kept(limits.likeStops, ...UPRIGHT_LIMITS.likeStops),
  among: kept(Math.round(limits.among), ...UPRIGHT_LIMITS.among),
});

/** Says when something in frame counts as lost in the dark, and what passes for an upright; null for what a plan has that says nothing. */
export function setDark(plan: Plan, { dark }: { readonly dark: Dark | null }): Plan {
  const { dark: before, ...rest } = plan;
  if (dark === null) return before === undefined ? plan : rest;
  const next = {
    contrastStops: kept(dark.contrastStops, ...DARK_LIMITS.contrastStops),
    stopsUnder: kept(dark.stopsUnder, ...DARK_LIMITS.stopsUnder),
    ...(dark.uprights && { uprights: keptUprights(dark.uprights) }),
  };
  if (before !== undefined && orSame(before, next) === before) return plan;
  return { ...plan, dark: next };
}
