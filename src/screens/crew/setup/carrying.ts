import { supportOf } from '../../../core/kit/supports';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatStopCount } from '../../../core/units/stops';
import type { IconName } from '../../parts/Icon';

/** Something that a setup needs up on the roof. */
export interface Carried {
  readonly icon: IconName;
  readonly words: string;
  /** Of the thing in the plan, where it is one. */
  readonly itemId?: string;
}

/** What a camera of a setup is made of and stands on. */
export function carriedFor(plan: Plan, setup: Setup, lengths: LengthSystem): readonly Carried[] {
  const body = plan.kit.bodies.find(({ id }) => id === setup.body);
  const lens = plan.kit.lenses.find(({ id }) => id === setup.lens);
  const mode = body?.modes.find(({ id }) => id === setup.mode);
  const { filter, ndStops } = setup;
  const tracks = plan.gear.filter(({ kind, id }) => kind === 'track' && id === setup.track);
  const dollies = plan.gear.filter((gear) => gear.kind === 'dolly' && gear.rides === setup.id);
  return [
    ...(body
      ? [{ icon: 'camera' as const, words: [body.label, mode?.label ?? ''].filter(Boolean).join(', ') }]
      : []),
    ...(lens ? [{ icon: 'eye' as const, words: lens.label }] : []),
    ...(filter
      ? [{ icon: 'pane' as const, words: `Filter, ${filter.kind}, strength ${filter.strength}` }]
      : []),
    ...(ndStops > 0
      ? [{ icon: 'pane' as const, words: `Neutral density, ${formatStopCount(ndStops)}` }]
      : []),
    { icon: setup.support === 'dolly' ? 'dolly' : 'stand', words: supportOf(setup.support).label },
    ...dollies.map(({ id, label }) => ({ icon: 'dolly' as const, words: label, itemId: id })),
    ...tracks.flatMap((track) =>
      track.kind === 'track'
        ? [
            {
              icon: 'track' as const,
              words: `${track.label}, ${formatLength(track.lengthMetres, lengths)}`,
              itemId: track.id,
            },
          ]
        : [],
    ),
  ];
}
