import * as v from 'valibot';
import { type Body, body as bodySchema } from '../schema/kit';
import type { Plan } from '../schema/plan';
import { setupFaults } from '../setupChecks';
import { MOST } from './limits';
import { putEntry } from './putEntry';

/**
 * Puts a body with its modes into the plan's kit, in the place of one with its id or after the others. What the schema
 * refuses, two modes of one id, and a body that lacks a mode which a setup uses change nothing.
 */
export function setKitBody(plan: Plan, { body }: { readonly body: Body }): Plan {
  if (!v.is(bodySchema, body)) return plan;
  if (new Set(body.modes.map(({ id }) => id)).size < body.modes.length) return plan;
  const bodies = putEntry(plan.kit.bodies, body, MOST.bodies);
  if (bodies === plan.kit.bodies) return plan;
  const changed = { ...plan, kit: { ...plan.kit, bodies } };
  return setupFaults(changed).length > 0 ? plan : changed;
}
