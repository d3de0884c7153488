import { type RemedyQuestion, remediesFor } from '../../../../src/core/clearance/remedies/remediesFor';
import type { Remedy, RemedyKind } from '../../../../src/core/clearance/remedies/types';
import type { Gear } from '../../../../src/core/plan/schema/gear';
import type { Plan } from '../../../../src/core/plan/schema/plan';
import type { Setup } from '../../../../src/core/plan/schema/setup';
import { inOneGo } from '../../../../src/core/units/steps';
import { smallRoof } from '../../smallRoof';

/** A tolerance that a lamp hardly ever leaves. */
export const LOOSE = { levelStops: 4, angleDegrees: 90 };

/** All remedies for an item in the first setup, or another. */
export function remediesOf(
  plan: Plan,
  itemId: string,
  {
    setupId = plan.setups[0]?.id ?? 'none',
    tolerance = LOOSE,
    seen = [],
  }: Partial<Pick<RemedyQuestion, 'setupId' | 'tolerance' | 'seen'>> = {},
): readonly Remedy[] {
  return inOneGo(remediesFor(plan, { setupId, itemId, tolerance, seen }));
}

/** The first remedy of a kind; throws where there is none, with those that there are. */
export function ofKind(remedies: readonly Remedy[], kind: RemedyKind): Remedy {
  const found = remedies.find((remedy) => remedy.kind === kind);
  if (!found) throw new Error(`no ${kind} among: ${remedies.map(({ words }) => words).join(' ')}`);
  return found;
}

type Stand = Extract<Gear, { readonly kind: 'stand' }>;

/** A stand 8 m before the still camera, 0.5 m to the right of the plan's middle, in its frame, unless said otherwise. */
export const standAt = (over: Partial<Stand> = {}): Stand => ({
  id: 'stand',
  label: 'Lamp stand',
  kind: 'stand',
  stand: 'tall',
  at: [0.5, 0, -4],
  headingDegrees: 0,
  heightMetres: 2.6,
  ...over,
});

/** A dry roof with a camera that looks straight to the back for a second from 4 m before the middle, and some gear. */
export function stillRoof(gear: readonly Gear[], over: Partial<Setup> = {}, tiltDegrees = 0): Plan {
  const roof = smallRoof();
  const [, single] = roof.setups;
  const [key] = single.move.keys;
  return {
    ...roof,
    ground: { surface: 'asphalt', wetness: 'dry' },
    pieces: roof.pieces.slice(0, 1),
    cast: [],
    gear: [...gear],
    setups: [
      {
        ...single,
        move: {
          ease: 'linear',
          keys: [{ ...key, position: [0, 1.6, 4], headingDegrees: 0, tiltDegrees }],
        },
        ...over,
      },
    ],
  };
}
