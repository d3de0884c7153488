import type { HeadClass } from '../../plan/schema/kit';
import { cos, sin } from '../../units/steadyMath';
import { compose, movedBy, rolledBy, tiltedBy } from '../build/placement';
import type { ShapeBuilder } from '../build/shapeBuilder';
import type { Vec3 } from '../build/vector';
import type { Housing } from './housings/types';
import { FORWARD } from './housings/types';
import { type OwnPart, ownPart } from './part';
import type { GearOf } from './references';
import { addLathe } from './rounds';

export type Modifier = NonNullable<GearOf<'head'>['modifier']>;

/** A modifier on the front of a lamp, in the lamp's own frame. */
export interface FittedModifier {
  readonly parts: readonly OwnPart[];
  /** Whether it takes the place of the lens as what glows. */
  readonly encloses: boolean;
  /** From the middle of the housing to what glows now, along the axis; metres. */
  readonly faceMetres: number;
  readonly glowMetres: Vec3;
}

const PLATE = 0.003;

/** Fits a modifier to a housing. Sizes grow with the lamp. Source: common practice, no source */
export function fitModifier(modifier: Modifier, housing: Housing, { size }: HeadClass): FittedModifier {
  const [width, height] = [Math.max(size[0], 0.05), Math.max(size[1], 0.05)];
  const front = housing.frontMetres;
  switch (modifier) {
    case 'softbox':
      return softbox(width, height, front);
    case 'lantern':
      return lantern(width, height, front);
    case 'grid':
      return open(grid(width, height, front), housing);
    case 'barn doors':
      return open(barnDoors(width, height, front), housing);
    case 'snoot':
      return open(snoot(Math.min(width, height) / 2, front), housing);
  }
}

const open = (part: OwnPart, { faceMetres, glowMetres }: Housing): FittedModifier => ({
  parts: [part],
  encloses: false,
  faceMetres,
  glowMetres,
});

function softbox(width: number, height: number, front: number): FittedModifier {
  const mouth: readonly [number, number] = [
    Math.min(Math.max(width * 3, 0.6), 1.5),
    Math.min(Math.max(height * 3, 0.6), 1.5),
  ];
  const depth = Math.max(...mouth) * 0.5;
  const rim = (z: number, [x, y]: readonly [number, number]): Vec3[] => [
    [-x / 2, -y / 2, z],
    [x / 2, -y / 2, z],
    [x / 2, y / 2, z],
    [-x / 2, y / 2, z],
  ];
  const skin = ownPart('modifier', { substance: 'black cloth', smooth: false }, (builder) => {
    const [back, mouthRim] = [rim(-front, [width, height]), rim(-front - depth, mouth)];
    builder.quad(back[0], back[1], back[2], back[3]);
    builder.quad(mouthRim[3], mouthRim[2], mouthRim[1], mouthRim[0]);
    for (let k = 0; k < 4; k += 1) {
      const next = (k + 1) % 4;
      builder.quad(mouthRim[k], mouthRim[next], back[next], back[k]);
    }
  });
  const face: Vec3 = [mouth[0] - 0.04, mouth[1] - 0.04, 0.008];
  const diffusion = ownPart('modifier', { substance: 'glow', smooth: false }, (builder) => {
    builder.box([0, 0, -front - depth - 0.004], face);
  });
  return {
    parts: [skin, diffusion],
    encloses: true,
    faceMetres: front + depth + 0.008,
    glowMetres: face,
  };
}

function lantern(width: number, height: number, front: number): FittedModifier {
  const radius = Math.min(Math.max(Math.max(width, height) * 1.25, 0.3), 0.45);
  const profile = Array.from({ length: 9 }, (_, k): readonly [number, number] => {
    const turn = (Math.PI * k) / 8;
    return [radius - radius * cos(turn), k === 0 || k === 8 ? 0 : radius * sin(turn)];
  });
  const ball = ownPart('modifier', { substance: 'glow' }, (builder) => {
    addLathe(builder, { at: [0, 0, -front], along: FORWARD }, profile, 14);
  });
  return {
    parts: [ball],
    encloses: true,
    faceMetres: front + radius,
    glowMetres: [radius * 2, radius * 2, radius * 2],
  };
}

const BLADES = 5;

function grid(width: number, height: number, front: number): OwnPart {
  const depth = 0.045;
  const z = -front - depth / 2;
  return ownPart('modifier', { substance: 'dark metal', smooth: false }, (builder) => {
    for (let k = -1; k <= BLADES; k += 1) {
      const isFrame = k === -1 || k === BLADES;
      const share = (k + 1) / (BLADES + 1) - 0.5;
      const thickness = isFrame ? 0.008 : 0.0015;
      const reach = isFrame ? depth : depth * 0.9;
      builder.box([share * width, 0, z], [thickness, height, reach]);
      builder.box([0, share * height, z], [width, thickness, reach]);
    }
  });
}

/** How far a leaf stands open from the axis. */
const LEAF_DEGREES = 40;

function barnDoors(width: number, height: number, front: number): OwnPart {
  return ownPart('modifier', { substance: 'dark metal', smooth: false }, (builder) => {
    addLeaf(builder, 0, width, height, front);
    addLeaf(builder, 90, height, width, front);
    addLeaf(builder, 180, width, height, front);
    addLeaf(builder, 270, height, width, front);
    addRim(builder, width, height, front);
  });
}

/** One leaf: hinged on the edge that lies `across / 2` from the axis, turned round the axis to its side. */
function addLeaf(
  builder: ShapeBuilder,
  roll: number,
  along: number,
  acrossMetres: number,
  front: number,
): void {
  const length = acrossMetres * 0.75;
  const hinge = compose(
    rolledBy(roll),
    compose(movedBy([0, acrossMetres / 2, -front]), tiltedBy(LEAF_DEGREES)),
  );
  builder.box([0, 0, -length / 2], [along * 0.96, PLATE, length], hinge);
}

function addRim(builder: ShapeBuilder, width: number, height: number, front: number): void {
  const bar = 0.012;
  const z = -front - bar / 2;
  for (const side of [-1, 1]) {
    builder.box([(side * width) / 2, 0, z], [bar, height, bar]);
    builder.box([0, (side * height) / 2, z], [width, bar, bar]);
  }
}

function snoot(radius: number, front: number): OwnPart {
  const length = radius * 2.4;
  const mouth = radius * 0.45;
  return ownPart('modifier', { substance: 'dark metal' }, (builder) => {
    addLathe(builder, { at: [0, 0, -front], along: FORWARD }, [
      [0, radius],
      [length, mouth],
      [length, mouth - PLATE],
      [PLATE, radius - PLATE],
    ]);
  });
}
