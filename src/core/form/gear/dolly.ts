import { AT_ORIGIN, type Placement, standingAt } from '../build/placement';
import type { Vec3 } from '../build/vector';
import type { PlacedPart } from '../types';
import { type OwnPart, ownPart, placeParts } from './part';
import type { GearOf } from './references';
import { addLathe, addPipe, addRod } from './rounds';

type Dolly = GearOf<'dolly'>;

/** A camera dolly's proportions. Source: common practice, no source */
const WHEEL_RADIUS = 0.09;
const PLATE = 0.06;
const TUBE_RADIUS = 0.017;
const COLUMN_RADIUS = 0.07;
const MOUNT_RADIUS = 0.09;
const MOUNT = 0.03;
/** How far behind the lens the column stands, so that the lens looks past it. */
const COLUMN_BEHIND = 0.22;
/** From the mount up to the axis of the lens, with the head and the body between. */
const LENS_ABOVE_MOUNT = 0.3;
/** Column of a dolly that nothing rides on. */
const IDLE_COLUMN = 0.9;

interface Sizes {
  readonly wheel: number;
  /** Top of the plate. */
  readonly top: number;
}

function sizesOf([width, height, length]: Dolly['size']): Sizes {
  const wheel = Math.min(WHEEL_RADIUS, height / 8, length / 10, width / 6);
  return { wheel, top: wheel * 2.2 + PLATE };
}

/** Height of the mount that carries a lens so high above what the wheels stand on, metres; to the centimetre. */
export function columnFor(dolly: Dolly, lensMetres: number): number {
  const lowest = sizesOf(dolly.size).top + MOUNT + 0.02;
  return Math.max(lowest, Math.floor((lensMetres - LENS_ABOVE_MOUNT) * 100) / 100);
}

/** The parts in the dolly's own frame: it stands at the origin, the lens above it, its push bar behind. */
function ownParts(dolly: Dolly, columnMetres: number): OwnPart[] {
  const [width, height, length] = dolly.size;
  const { wheel, top } = sizesOf(dolly.size);
  const [x, z] = [width / 2, length / 2];
  const chassis = ownPart('chassis', { substance: 'dark metal', smooth: false }, (builder) => {
    builder.box([0, top - PLATE / 2, 0], [width * 0.74, PLATE, length * 0.92]);
    for (const end of [-1, 1]) {
      builder.box([0, wheel * 1.6, end * (z - wheel * 1.6)], [width * 0.9, wheel * 1.1, wheel * 1.5]);
    }
  });
  const wheels = ownPart('wheels', { substance: 'rubber' }, (builder) => {
    for (const side of [-1, 1]) {
      for (const end of [-1, 1]) {
        for (const axle of [0, 1]) {
          const from: Vec3 = [side * x * 0.94, wheel, end * (z - wheel * (1 + axle * 2.1))];
          const half = wheel * 0.35;
          addLathe(
            builder,
            { at: from, along: [1, 0, 0] },
            [
              [-half, wheel],
              [half, wheel],
            ],
            12,
          );
        }
      }
    }
  });
  const tube = Math.min(TUBE_RADIUS, width / 20);
  const bar = ownPart('push bar', { substance: 'metal' }, (builder) => {
    const [side, foot] = [x * 0.62, z * 0.86];
    addPipe(
      builder,
      [
        [-side, top - PLATE / 2, foot],
        [-side, height - tube, z - tube],
        [side, height - tube, z - tube],
        [side, top - PLATE / 2, foot],
      ],
      tube,
      8,
    );
  });
  const behind = Math.min(COLUMN_BEHIND, z * 0.4);
  const radius = Math.min(COLUMN_RADIUS, width / 5);
  const column = ownPart('column', { substance: 'metal' }, (builder) => {
    const mount = columnMetres - MOUNT;
    const sleeve = Math.min(mount, Math.max(top + 0.02, top + (mount - top) * 0.55));
    addRod(builder, [0, top - PLATE / 2, behind], [0, sleeve, behind], radius, 12);
    if (mount > sleeve) addRod(builder, [0, sleeve - 0.01, behind], [0, mount, behind], radius * 0.72, 12);
    addLathe(
      builder,
      { at: [0, mount - 0.002, behind], along: [0, 1, 0] },
      [
        [0, Math.min(MOUNT_RADIUS, width / 4)],
        [MOUNT + 0.002, Math.min(MOUNT_RADIUS, width / 4)],
      ],
      16,
    );
  });
  return [chassis, wheels, bar, column];
}

const kept = new WeakMap<Dolly['size'], Map<number, readonly PlacedPart[]>>();

/** The parts of a dolly where it is carried along: shapes in its own frame, shared, and where that frame is. */
export function riddenParts(dolly: Dolly, columnMetres: number, worldFromDolly: Placement): PlacedPart[] {
  const known = kept.get(dolly.size) ?? new Map<number, readonly PlacedPart[]>();
  kept.set(dolly.size, known);
  const first = known.values().next().value;
  let parts = known.get(columnMetres);
  if (!parts) {
    const made = placeParts(ownParts(dolly, columnMetres), AT_ORIGIN);
    // Only the column changes with the height: the rest keeps its shapes.
    parts = first ? made.map((part, k) => (part.name === 'column' ? part : first[k])) : made;
    known.set(columnMetres, parts);
  }
  return parts.map(({ name, shape }) => ({ name, shape, worldFromPart: worldFromDolly }));
}

/** A dolly standing on `at` with its push bar behind, its column as nobody uses it. */
export function dollyParts(dolly: Dolly): PlacedPart[] {
  const { top } = sizesOf(dolly.size);
  const column = Math.max(IDLE_COLUMN, top + MOUNT + 0.02);
  return placeParts(ownParts(dolly, column), standingAt(dolly.at, dolly.headingDegrees));
}
