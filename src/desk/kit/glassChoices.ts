import { BUILT_IN_KIT } from '../../core/kit/builtInKit';
import type { OwnKit } from '../../core/kit/ownKit';
import { changeSetup } from '../../core/plan/edits/changeSetup';
import { setKitBody } from '../../core/plan/edits/setKitBody';
import { setKitLens } from '../../core/plan/edits/setKitLens';
import { setLens } from '../../core/plan/edits/setLens';
import type { Body, Lens } from '../../core/plan/schema/kit';
import type { Plan } from '../../core/plan/schema/plan';

export type Mode = Body['modes'][number];

/** Entries of some source that are not in the plan by id. */
interface Offered<Entry> {
  readonly plan: readonly Entry[];
  readonly kept: readonly Entry[];
  readonly builtIn: readonly Entry[];
}

function offered<Entry extends { readonly id: string }>(
  plan: readonly Entry[],
  kept: readonly Entry[],
  builtIn: readonly Entry[],
): Offered<Entry> {
  const own = kept.filter(({ id }) => plan.every((entry) => entry.id !== id));
  const known = [...plan, ...own];
  return { plan, kept: own, builtIn: builtIn.filter(({ id }) => known.every((entry) => entry.id !== id)) };
}

/** The lenses that a setup can take: the plan's, then those that are kept here, then those that come with the program. */
export const lensesOffered = (plan: Plan, own: OwnKit): Offered<Lens> =>
  offered(plan.kit.lenses, own.lenses, BUILT_IN_KIT.lenses);

/** The same for bodies. */
export const bodiesOffered = (plan: Plan, own: OwnKit): Offered<Body> =>
  offered(plan.kit.bodies, own.bodies, BUILT_IN_KIT.bodies);

/** The modes of a body of the plan, with those that a kept or built-in body of its id has beside them. */
export function modesOffered(plan: Plan, own: OwnKit, bodyId: string): readonly Mode[] {
  const modes: Mode[] = [];
  for (const bodies of [plan.kit.bodies, own.bodies, BUILT_IN_KIT.bodies])
    for (const mode of bodies.find(({ id }) => id === bodyId)?.modes ?? [])
      if (modes.every(({ id }) => id !== mode.id)) modes.push(mode);
  return modes;
}

/** Gives a setup a lens; one that the plan lacks comes into its kit. */
export const giveLens = (plan: Plan, setupId: string, lens: Lens): Plan => {
  const isThere = plan.kit.lenses.some(({ id }) => id === lens.id);
  return setLens(isThere ? plan : setKitLens(plan, { lens }), { setupId, lens: lens.id });
};

/** Gives a setup a body in the mode whose gate comes first; one that the plan lacks comes into its kit. */
export const giveBody = (plan: Plan, setupId: string, body: Body): Plan => {
  const there = plan.kit.bodies.find(({ id }) => id === body.id);
  const mode = (there ?? body).modes[0].id;
  return changeSetup(there ? plan : setKitBody(plan, { body }), { setupId, patch: { body: body.id, mode } });
};

/** Gives a setup another mode of its body; one that the plan's body lacks is added to it. */
export const giveMode = (plan: Plan, setupId: string, mode: Mode): Plan => {
  const setup = plan.setups.find(({ id }) => id === setupId);
  const body = plan.kit.bodies.find(({ id }) => id === setup?.body);
  if (!body) return plan;
  const has = body.modes.some(({ id }) => id === mode.id);
  const ready = has ? plan : setKitBody(plan, { body: { ...body, modes: [...body.modes, mode] } });
  return changeSetup(ready, { setupId, patch: { mode: mode.id } });
};
