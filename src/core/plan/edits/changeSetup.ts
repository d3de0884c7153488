import * as v from 'valibot';
import type { Plan } from '../schema/plan';
import { type Setup, setup as setupSchema } from '../schema/setup';
import { setupFaults } from '../setupChecks';
import { editSetup } from './editRecord';

/** Fields of a setup; undefined takes out one that may be left out. Its keys have edits of their own. */
export type SetupPatch = {
  readonly [Field in Exclude<keyof Setup, 'id' | 'move'>]?: Setup[Field] | undefined;
};

/** The setup with those fields of the patch that a setup may have, one by one. */
function patched(setup: Setup, patch: SetupPatch): Setup {
  let shape: Setup = setup;
  for (const [field, value] of Object.entries(patch)) {
    const { [field as keyof SetupPatch]: before, ...rest } = shape;
    if (before === value || JSON.stringify(before) === JSON.stringify(value)) continue;
    const next = value === undefined ? rest : { ...shape, [field]: value };
    if (v.is(setupSchema, next)) shape = next;
  }
  return shape;
}

/**
 * Changes fields of a setup: its glass, gate, delivery, exposure, focus, support, track, operator, sway, span, name.
 * A value that the schema refuses, and a change that would name what the plan does not have, is left out.
 */
export function changeSetup(
  plan: Plan,
  { setupId, patch }: { readonly setupId: string; readonly patch: SetupPatch },
): Plan {
  const changed = editSetup(plan, setupId, (setup) => patched(setup, patch));
  return changed === plan || setupFaults(changed).length > 0 ? plan : changed;
}
