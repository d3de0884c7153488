import type { Vec3 } from '../../src/core/form/build/vector';
import { lampsAt } from '../../src/core/form/lamps';
import type { Gear } from '../../src/core/plan/schema/gear';
import type { HeadClass, Kit } from '../../src/core/plan/schema/kit';
import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, planFrom } from './bare';

type Head = Extract<Gear, { kind: 'head' }>;

const headClass = (id: string, more: Partial<HeadClass>): HeadClass => ({
  id,
  label: id,
  form: 'spot',
  size: [0.2, 0.2, 0.3],
  watts: 300,
  powerFactor: 1,
  peakCandela: 10000,
  beamDegrees: 40,
  fieldDegrees: 60,
  kelvin: 5600,
  ...more,
});

/** Lamps with round numbers: 10,000 cd each. */
export const LAMPS: readonly HeadClass[] = [
  headClass('point', { size: [0.02, 0.02, 0.02] }),
  headClass('spot', {}),
  headClass('panel', { form: 'panel', size: [0.624, 0.624, 0.1], beamDegrees: 120, fieldDegrees: 168.5 }),
  headClass('bulb', { form: 'bulb', size: [0.06, 0.1, 0.06], beamDegrees: 360, fieldDegrees: 360 }),
];

/** A kit of lamps and nothing else. */
export const lampKit = (heads: readonly HeadClass[]): Kit => ({
  bodies: [],
  lenses: [],
  stands: [],
  heads: [...heads],
});

/** A roof in the dark with nothing on it but what is given, checked as a plan from a file is. */
export function darkRoof(more: Partial<Plan>): Plan {
  return planFrom({ ...BARE, title: 'In the dark', kit: lampKit(LAMPS), beats: [], ...more });
}

/** A head whose lens or face has its middle exactly at a place, aimed along a way; both in world metres. */
export function lampAt(id: string, head: string, lens: Vec3, way: Vec3, heads = LAMPS): Head {
  const make = ([x, y, z]: Vec3): Head => ({
    id,
    label: `Lamp ${id}`,
    kind: 'head',
    head,
    place: { at: [x, y, z] },
    aim: [x + way[0] * 10, y + way[1] * 10, z + way[2] * 10],
    dim: 1,
  });
  const [found] = lampsAt(darkRoof({ kit: lampKit(heads), gear: [make(lens)] }), 0);
  const at = lens.map((metres, axis) => 2 * metres - found.position[axis]);
  return make([at[0], at[1], at[2]]);
}

/** An upright flag, or for a share that it lets through a net, whose normal is along z, its middle at a place. */
export const flagAt = (
  id: string,
  at: Vec3,
  size: readonly [number, number],
  transmission?: number,
): Gear => ({
  id,
  label: `Flag ${id}`,
  ...(transmission !== undefined && { transmission }),
  kind: 'flag',
  place: { at: [at[0], at[1], at[2]] },
  headingDegrees: 0,
  tiltDegrees: 0,
  size: [size[0], size[1]],
});
