import { cos } from '../../../units/steadyMath';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { Vec3 } from '../../build/vector';
import type { PartShape } from '../../types';
import { addShell, alongLine, bothSides, type HeadLine, hairFinish } from './hair';
import { loft, type Ring } from './loft';
import type { Skull } from './skull';

const CAP_RIM: HeadLine = [
  [0, 62],
  [50, 70],
  [90, 88],
  [140, 104],
  [180, 108],
];

/** A flat cap: a soft crown over a peak. */
export function capShape(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  addShell(builder, skull, {
    rim: CAP_RIM,
    thick: [15, 25, 9],
    bearings: bothSides([0, 22, 45, 70, 95, 122, 150, 180]),
  });
  const reach = 52;
  const rings = [-68, -48, -24, 0, 24, 48, 68].map((bearing): Ring => {
    const inner = skull.skin(alongLine(CAP_RIM, bearing) - 4, bearing);
    const ahead = reach * cos((bearing * 90 * Math.PI) / (74 * 180));
    const edge: Vec3 = [inner[0] * 1.04, inner[1] + 5 + ahead * 0.28, inner[2] - ahead - 6];
    const below = 7;
    return [
      skull.place([inner[0] * 0.96, inner[1] - 5, inner[2] * 0.96]),
      skull.place([(inner[0] + edge[0]) / 2, (inner[1] + edge[1]) / 2 - 7, (inner[2] + edge[2]) / 2]),
      skull.place(edge),
      skull.place([edge[0], edge[1] + 3, edge[2]]),
      skull.place([inner[0] * 0.96, inner[1] + below, inner[2] * 0.96]),
    ];
  });
  loft(builder, rings);
  return hairFinish(builder, colour, 'upper');
}

/** A hood worn up, open at the face, its cowl about the neck. */
export function hoodShape(skull: Skull, colour: string): PartShape {
  const builder = new ShapeBuilder();
  addShell(builder, skull, {
    rim: [
      [0, 40],
      [24, 50],
      [38, 80],
      [46, 140],
      [52, 210],
      [58, 250],
      [90, 272],
      [180, 292],
    ],
    thick: [18, 24, 24],
    bearings: bothSides([0, 18, 32, 42, 49, 55, 64, 82, 104, 128, 154, 180]),
    hangs: { drawnPerMillimetre: 0.0012 },
    rows: 7,
  });
  return hairFinish(builder, colour, 'upper');
}
