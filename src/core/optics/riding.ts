import { standingAt } from '../form/build/placement';
import type { Vec3 } from '../form/build/vector';
import { formOf, formsAt } from '../form/formsAt';
import { columnFor, riddenParts } from '../form/gear/dolly';
import { RAIL_TOP_METRES } from '../form/gear/track';
import type { ItemForm } from '../form/types';
import type { Item } from '../plan/items';
import { played } from '../plan/played';
import type { Gear } from '../plan/schema/gear';
import type { Plan } from '../plan/schema/plan';
import type { Setup } from '../plan/schema/setup';
import { surfaceUnder } from '../plan/surfaces';
import { trackPointAt } from '../plan/trackLine';
import { stateAt } from './camera';
import { alongAt, keysOf, trackOf } from './cameraKey';
import { dollyHeadingAt, signedDegrees } from './dollyHeading';

type Dolly = Extract<Gear, { kind: 'dolly' }>;

/** Where a dolly is that a camera rides on. */
export interface DollyPlace {
  /** On the rails, or on the floor: what its wheels stand on, metres. */
  readonly at: Vec3;
  readonly headingDegrees: number;
  /** Height of the mount above that, metres. */
  readonly columnMetres: number;
}

/** The setup that rides on a dolly; null for none. */
export function riderOf(plan: Pick<Plan, 'setups'>, dolly: Dolly): Setup | null {
  return plan.setups.find(({ id }) => id === dolly.rides) ?? null;
}

/**
 * Where a dolly is while a setup's camera rides on it: under the lens, on its track along the track's line, whichever
 * way round is nearer to the dolly's own heading; without a track on the floor, along the way that the camera goes
 * (see `dollyHeadingAt`).
 */
export function dollyPlaceAt(plan: Plan, dolly: Dolly, setup: Setup, seconds: number): DollyPlace {
  const { position } = stateAt(plan, setup, seconds);
  const track = trackOf(plan, setup);
  const along = track && trackPointAt(track, alongAt(plan, setup, seconds) ?? 0);
  const floor = along
    ? along.at[1] + RAIL_TOP_METRES
    : surfaceUnder(plan, [position[0], position[2]], { belowMetres: position[1] }).metres;
  const isTurned = along && Math.abs(signedDegrees(along.headingDegrees - dolly.headingDegrees)) > 90;
  return {
    at: [position[0], floor, position[2]],
    headingDegrees: along
      ? along.headingDegrees + (isTurned ? 180 : 0)
      : dollyHeadingAt({ keys: keysOf(plan, setup), ease: setup.move.ease }, seconds, dolly.headingDegrees),
    columnMetres: columnFor(dolly, position[1] - floor),
  };
}

const ridersKept = new WeakMap<Plan['gear'], ReadonlyMap<string, Dolly>>();

function ridden(plan: Plan): ReadonlyMap<string, Dolly> {
  const known = ridersKept.get(plan.gear);
  if (known) return known;
  const found = new Map(
    plan.gear.flatMap((gear) => (gear.kind === 'dolly' && gear.rides !== undefined ? [[gear.id, gear]] : [])),
  );
  ridersKept.set(plan.gear, found);
  return found;
}

interface Placed {
  readonly place: DollyPlace;
  readonly form: ItemForm;
}
const placedKept = new WeakMap<Dolly, Placed>();

const isSamePlace = (a: DollyPlace, b: DollyPlace): boolean =>
  a.headingDegrees === b.headingDegrees &&
  a.columnMetres === b.columnMetres &&
  a.at.every((metres, axis) => metres === b.at[axis]);

function riddenForm(form: ItemForm, dolly: Dolly, place: DollyPlace): ItemForm {
  const known = placedKept.get(dolly);
  if (known && isSamePlace(known.place, place)) return known.form;
  const placement = standingAt(place.at, place.headingDegrees);
  const placed = { ...form, parts: riddenParts(dolly, place.columnMetres, placement) };
  placedKept.set(dolly, { place, form: placed });
  return placed;
}

/** Whether `formsThrough` has other forms for a setup than for others that are played alike: its camera rides on a dolly. */
export const isRiding = (plan: Plan, setup: Setup): boolean =>
  [...ridden(plan).values()].some(({ rides }) => rides === setup.id);

/**
 * The forms of an instant of the action's clock as a setup's camera has them around it: every dolly that it rides on
 * under it, those that others ride on left out, as only one setup is shot at a time. For no setup (the roof's views)
 * every dolly under the camera that rides on it. What has not changed comes back as the same objects.
 */
export function formsThrough(plan: Plan, setup: Setup | null, seconds: number): readonly ItemForm[] {
  const forms = formsAt(setup ? played(plan, setup) : plan, seconds);
  const dollies = ridden(plan);
  if (dollies.size === 0) return forms;
  return forms.flatMap((form): readonly ItemForm[] => {
    const dolly = dollies.get(form.id);
    const rider = dolly ? riderOf(plan, dolly) : null;
    if (!dolly || !rider) return [form];
    if (setup && rider.id !== setup.id) return [];
    return [riddenForm(form, dolly, dollyPlaceAt(plan, dolly, rider, seconds))];
  });
}

/** The form of one item as `formsThrough` has it; null where it is left out or nowhere. */
export function formThrough(plan: Plan, setup: Setup | null, id: string, seconds: number): ItemForm | null {
  const form = formOf(setup ? played(plan, setup) : plan, id, seconds);
  const dolly = form && ridden(plan).get(id);
  const rider = dolly ? riderOf(plan, dolly) : null;
  if (!dolly || !rider) return form;
  if (setup && rider.id !== setup.id) return null;
  return riddenForm(form, dolly, dollyPlaceAt(plan, dolly, rider, seconds));
}

/** An item as it stands at an instant: a dolly that a camera rides on under that camera, all else as it is. */
export function itemNow<Thing extends Item>(plan: Plan, item: Thing, seconds: number): Thing {
  if (item.section !== 'gear' || item.record.kind !== 'dolly') return item;
  const rider = riderOf(plan, item.record);
  if (!rider) return item;
  const { at, headingDegrees } = dollyPlaceAt(plan, item.record, rider, seconds);
  return { ...item, record: { ...item.record, at: [...at], headingDegrees } };
}
