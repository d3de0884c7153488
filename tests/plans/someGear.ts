import type { Carried, Gear } from '../../src/core/plan/schema/gear';
import type { Kit } from '../../src/core/plan/schema/kit';
import type { Draw } from './draw';
import { pathOn, placeOn, type Roof } from './somePiece';

export const GEAR_KINDS = [
  'stand',
  'head',
  'flag',
  'frame',
  'bounce',
  'practical',
  'bulb string',
  'generator',
  'distro',
  'cable',
  'track',
  'dolly',
  'cart',
  'monitor',
  'ladder',
  'sandbag',
] as const satisfies readonly Gear['kind'][];
export type GearKind = (typeof GEAR_KINDS)[number];

const ON_STANDS: readonly string[] = ['spot', 'fresnel', 'panel', 'tube'];
const OF_THE_PLACE: readonly string[] = ['bulb', 'bulkhead', 'sign', 'street'];

/** What gear is drawn from: the kit's classes, and the stands that already are on the roof. */
export interface Store {
  readonly kit: Kit;
  readonly standIds: readonly string[];
}

/** A piece of gear of a kind, its place and sizes drawn within what such things have. */
export function someGear(id: string, kind: GearKind, roof: Roof, store: Store, draw: Draw): Gear {
  const common = { id, label: `${kind} ${id}` };
  const standing = { at: placeOn(roof, draw), headingDegrees: draw.between(0, 360) };
  const { kit, standIds } = store;
  const headFor = (forms: readonly string[]) =>
    draw.pick(kit.heads.filter(({ form }) => forms.includes(form))).id;
  const carried = (): Carried =>
    standIds.length > 0 && draw.chance(0.8)
      ? { on: draw.pick(standIds) }
      : { at: placeOn(roof, draw, draw.between(0.5, 3)) };
  const cloth = () => ({
    place: carried(),
    headingDegrees: draw.between(0, 360),
    tiltDegrees: draw.between(-60, 60),
    size: draw.pick([
      [0.6, 0.9],
      [1.22, 1.22],
      [2.4, 2.4],
    ] as const),
  });
  const sized = (width: number, height: number, depth: number): [number, number, number] => [
    width * draw.between(0.8, 1.2),
    height * draw.between(0.8, 1.2),
    depth * draw.between(0.8, 1.2),
  ];
  switch (kind) {
    case 'stand': {
      const standClass = draw.pick(kit.stands);
      return {
        ...common,
        ...standing,
        kind,
        stand: standClass.id,
        heightMetres: draw.between(standClass.lowestMetres, standClass.highestMetres),
        ...(draw.chance(0.25) && {
          arm: { lengthMetres: 1, tiltDegrees: draw.between(-80, 80), headingDegrees: draw.between(0, 360) },
        }),
        ...(draw.chance(0.4) && { spreadMetres: draw.between(0.3, standClass.footprintMetres * 1.2) }),
        ...(draw.chance(0.3) && {
          bags: { count: draw.whole(1, 6), kilograms: draw.between(4, 15) },
        }),
      };
    }
    case 'head':
      return {
        ...common,
        kind,
        head: headFor(ON_STANDS),
        place: carried(),
        aim: placeOn(roof, draw, draw.between(0, 2)),
        ...(draw.chance(0.3) && {
          modifier: draw.pick(['softbox', 'lantern', 'grid', 'barn doors', 'snoot'] as const),
        }),
        ...(draw.chance(0.2) && { yokeMetres: draw.between(0, 0.8) }),
        dim: draw.between(0.1, 1),
      };
    case 'flag': {
      const { size, ...rest } = cloth();
      return { ...common, ...rest, kind, size: [size[0], size[1]] };
    }
    case 'frame': {
      const { size, ...rest } = cloth();
      return { ...common, ...rest, kind, size: [size[0], size[1]], transmission: draw.between(0.2, 0.8) };
    }
    case 'bounce': {
      const { size, ...rest } = cloth();
      return { ...common, ...rest, kind, size: [size[0], size[1]], reflectance: draw.between(0.5, 0.95) };
    }
    case 'practical':
      return {
        ...common,
        at: placeOn(roof, draw, draw.between(0, 2.5)),
        headingDegrees: draw.between(0, 360),
        kind,
        head: headFor(OF_THE_PLACE),
        dim: draw.between(0.2, 1),
        ...(draw.chance(0.3) && { tint: '#3a7bff' }),
        ...(draw.chance(0.3) && {
          flicker: { seed: draw.whole(0, 999), perSecond: draw.between(1, 12), depth: draw.between(0.1, 1) },
        }),
      };
    case 'bulb string':
      return {
        ...common,
        kind,
        head: headFor(['bulb']),
        from: placeOn(roof, draw, draw.between(2.2, 3.2)),
        to: placeOn(roof, draw, draw.between(2.2, 3.2)),
        sagMetres: draw.between(0.1, 0.8),
        bulbs: draw.whole(3, 20),
        dim: 1,
      };
    case 'generator':
      return { ...common, ...standing, kind, size: sized(0.55, 0.48, 0.42) };
    case 'distro':
      return { ...common, ...standing, kind, size: sized(0.4, 0.45, 0.25) };
    case 'cable':
      return {
        ...common,
        kind,
        path: pathOn(roof, draw, draw.whole(2, 6), 3),
        baseMetres: 0,
        diameterMetres: draw.between(0.008, 0.03),
      };
    case 'track':
      return {
        ...common,
        ...standing,
        kind,
        lengthMetres: draw.between(1.2, 6),
        gaugeMetres: 0.62,
        ...(draw.chance(0.5) && { bendMetres: draw.pick([-1, 1]) * draw.between(1.5, 12) }),
      };
    case 'dolly':
      return { ...common, ...standing, kind, size: sized(0.66, 1.05, 1.2) };
    case 'cart':
      return { ...common, ...standing, kind, size: sized(0.9, 1, 0.55), monitors: draw.whole(0, 3) };
    case 'monitor':
      return {
        ...common,
        kind,
        place: carried(),
        headingDegrees: draw.between(0, 360),
        diagonalMetres: draw.between(0.18, 0.6),
      };
    case 'ladder':
      return { ...common, ...standing, kind, heightMetres: draw.between(1.2, 3.5) };
    case 'sandbag':
      return { ...common, ...standing, kind, kilograms: draw.between(5, 15) };
  }
}
