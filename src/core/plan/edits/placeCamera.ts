import type { Body, Lens } from '../schema/kit';
import type { Point } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import type { Setup } from '../schema/setup';
import { freeId } from './freeId';
import { tidyPoint } from './tidy';
import { withBeats } from './withBeats';

const withEntry = <Entry extends { readonly id: string }>(list: Entry[], entry: Entry): Entry[] =>
  list.some((each) => each.id === entry.id) ? list : [...list, entry];

/**
 * Adds a setup on sticks at a point, metres, looking along a compass heading, over the whole action.
 * The body and the lens are copied into the plan's kit where it lacks them; a plan without beats gets a first and a last.
 */
export function placeCamera(
  plan: Plan,
  args: {
    readonly label: string;
    readonly body: Body;
    readonly lens: Lens;
    readonly position: Point;
    readonly headingDegrees: number;
  },
): Plan {
  const { body } = args;
  const lens = plan.kit.lenses.find(({ id }) => id === args.lens.id) ?? args.lens;
  const { beats } = withBeats(plan);
  const inOrder = beats.toSorted((a, b) => a.atSeconds - b.atSeconds);
  const from = inOrder[0];
  const to = inOrder.at(-1);
  // The plan's own body of that id may have other modes.
  const mode = (plan.kit.bodies.find(({ id }) => id === body.id) ?? body).modes[0];
  if (!from || !to || !mode) return plan;
  const leading = plan.cast[0];
  const setup: Setup = {
    id: freeId(plan.setups, 'setup'),
    label: args.label,
    body: body.id,
    mode: mode.id,
    lens: lens.id,
    delivery: 2.39,
    stop: Math.min(Math.max(2.8, lens.widestStop), lens.narrowestStop),
    iso: 800,
    shutterDegrees: 180,
    framesPerSecond: 24,
    ndStops: 0,
    balanceKelvin: 3200,
    focus: leading ? { follow: leading.id } : { metres: 5 },
    support: 'sticks',
    span: { from: from.id, to: to.id },
    move: {
      ease: 'eased',
      keys: [
        {
          atSeconds: from.atSeconds,
          position: tidyPoint(args.position),
          headingDegrees: args.headingDegrees,
          tiltDegrees: 0,
          rollDegrees: 0,
        },
      ],
    },
  };
  return {
    ...plan,
    beats,
    kit: {
      ...plan.kit,
      bodies: withEntry(plan.kit.bodies, body),
      lenses: withEntry(plan.kit.lenses, lens),
    },
    setups: [...plan.setups, setup],
  };
}
