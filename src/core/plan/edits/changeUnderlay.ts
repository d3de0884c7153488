import type { Underlay } from '../schema/drawing';
import type { Plan } from '../schema/plan';

/** Changes where the picture under the roof lies, how it is turned or how strongly it shows. */
export function changeUnderlay(
  plan: Plan,
  patch: Partial<
    Pick<Underlay, 'asset' | 'at' | 'headingDegrees' | 'strength' | 'pixels' | 'metresPerPixel'>
  >,
): Plan {
  const { underlay } = plan;
  if (!underlay) return plan;
  const changed = { ...underlay, ...patch };
  const isSame =
    changed.asset === underlay.asset &&
    changed.headingDegrees === underlay.headingDegrees &&
    changed.strength === underlay.strength &&
    changed.metresPerPixel === underlay.metresPerPixel &&
    changed.at[0] === underlay.at[0] &&
    changed.at[1] === underlay.at[1];
  return isSame ? plan : { ...plan, underlay: changed };
}
