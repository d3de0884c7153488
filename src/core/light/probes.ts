import { directionOf, UP, type Vec3 } from '../form/build/vector';
import type { Plan } from '../plan/schema/plan';
import type { ProbeRecord } from '../plan/schema/sky';
import { type Illuminance, onPlane, strongestWay } from './illuminance';
import { lightAt } from './lightAt';
import type { LightScene } from './lightScene';

/** A place that is metered: what its cell faces is a unit normal, or the strongest light there. */
export interface Probe {
  readonly at: Vec3;
  readonly normal: Vec3 | 'key';
}

function normalOf({ normal }: ProbeRecord): Probe['normal'] {
  if (normal === 'key') return normal;
  return normal === 'up' ? UP : directionOf(normal[0], normal[1]);
}

const kept = new WeakMap<ProbeRecord[], readonly Probe[]>();
const NONE: readonly Probe[] = [];

/** The meters of a plan, in its order. */
export function probesOf({ probes }: Pick<Plan, 'probes'>): readonly Probe[] {
  if (!probes) return NONE;
  const known = kept.get(probes);
  if (known) return known;
  const found = probes.map((record): Probe => ({ at: record.at, normal: normalOf(record) }));
  kept.set(probes, found);
  return found;
}

/** Performers in whose bounds a place lies, by the box around them. */
function bodiesAt({ blockers: { stage, itemBoxes } }: LightScene, place: Vec3): ReadonlySet<string> {
  const found = new Set<string>();
  stage.forms.forEach(({ id, section }, item) => {
    const holds = place.every(
      (metres, axis) => metres >= itemBoxes[item * 6 + axis] && metres <= itemBoxes[item * 6 + axis + 3],
    );
    if (section === 'cast' && holds) found.add(id);
  });
  return found;
}

/**
 * What a meter reads in a scene. Whoever stands where it is, as a performer on the mark that is metered, is in none of
 * its light. One that is turned to the key faces what gives most there, as `strongestWay` has it.
 */
export function probeReading(scene: LightScene, { at, normal }: Probe): Illuminance {
  const ignore = bodiesAt(scene, at);
  const light = lightAt(scene, at, normal === 'key' ? { ignore } : { ignore, facing: normal });
  return onPlane(light, normal === 'key' ? strongestWay(light) : normal);
}
