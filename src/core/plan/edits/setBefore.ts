import { isLamp } from '../cues';
import { BEFORE_LIMITS, type Before } from '../schema/before';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';
import { orSame } from './motion';
import { kept } from './tidy';

/** What makes no difference before a lamp is not there. */
function tidied({ mired = 0, density = 0, diffusion, doubles = 0, singles = 0 }: Before): Before {
  const counted = (scrims: number): number => kept(Math.round(scrims), ...BEFORE_LIMITS.scrims);
  const tidy = {
    mired: kept(mired, ...BEFORE_LIMITS.mired) + 0,
    density: kept(density, ...BEFORE_LIMITS.density) + 0,
    doubles: counted(doubles) + 0,
    singles: counted(singles) + 0,
  };
  return {
    ...(tidy.mired !== 0 && { mired: tidy.mired }),
    ...(tidy.density !== 0 && { density: tidy.density }),
    ...(diffusion && {
      diffusion: {
        transmission: kept(diffusion.transmission, 0, 1) + 0,
        spreadDegrees: kept(diffusion.spreadDegrees, ...BEFORE_LIMITS.spreadDegrees) + 0,
      },
    }),
    ...(tidy.doubles !== 0 && { doubles: tidy.doubles }),
    ...(tidy.singles !== 0 && { singles: tidy.singles }),
  };
}

/**
 * Changes what is put before a lamp: the fields of `before` take the place of its own, `undefined` takes one away.
 * Numbers come within what the plan takes. Practicals and strings take gel alone; the rest is left out there.
 */
export function setBefore(
  plan: Plan,
  {
    id,
    before,
  }: {
    readonly id: string;
    readonly before: { readonly [Field in keyof Before]?: Before[Field] | undefined };
  },
): Plan {
  return editRecord(plan, id, {
    gear: (gear) => {
      if (!isLamp(gear)) return gear;
      const { before: had, ...bare } = gear;
      const { diffusion, doubles, singles, ...gel } = { ...had, ...before };
      const all = gear.kind === 'head' ? { ...gel, diffusion, doubles, singles } : gel;
      const given = Object.fromEntries(Object.entries(all).filter(([, value]) => value !== undefined));
      const next = tidied(given);
      if (Object.keys(next).length === 0) return had ? bare : gear;
      return orSame(gear, { ...gear, before: next });
    },
  });
}
