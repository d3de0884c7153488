import { gearParts } from '../../../src/core/form/gear';
import { pieceParts } from '../../../src/core/form/pieces';
import type { ItemForm } from '../../../src/core/form/types';
import { poseOf } from '../../../src/core/optics/pose';
import type { Camera } from '../../../src/core/optics/types';
import type { Gear } from '../../../src/core/plan/schema/gear';
import type { Piece } from '../../../src/core/plan/schema/pieces';
import type { Ground, Plan } from '../../../src/core/plan/schema/plan';
import { dice } from '../../plans/draw';
import { smallRoof } from '../../unit/smallRoof';

const WET: Ground = { surface: 'concrete', wetness: 'wet down' };

function standClass(plan: Plan): string {
  return plan.kit.stands[0].id;
}

/** A wet deck with random things on it: many thin ones, some before others, some seen through mesh. */
export function randomForms(seed: number, count = 14): ItemForm[] {
  const roll = dice(seed);
  const plan = smallRoof();
  const spot = (): [number, number, number] => [roll(-9, 9), 0, roll(-7, 7)];
  const forms: ItemForm[] = [];
  const addPiece = (piece: Piece) =>
    forms.push({
      id: piece.id,
      label: piece.id,
      kind: piece.kind,
      section: 'piece',
      wish: 'either',
      parts: pieceParts(piece, WET),
    });
  const addGear = (gear: Gear) =>
    forms.push({
      id: gear.id,
      label: gear.id,
      kind: gear.kind,
      section: 'gear',
      wish: 'keep out',
      parts: gearParts(gear, plan),
    });
  // What is cut and bent rolls dice of its own, so that the rest of a seed stays as it is.
  const shaped = dice(seed + 50051);
  const [wellX, wellZ] = [shaped(-8, 6), shaped(-6, 4)];
  addPiece({
    id: 'deck',
    label: 'deck',
    kind: 'deck',
    topMetres: 0,
    dropMetres: 5,
    holes:
      shaped(0, 1) < 0.5
        ? []
        : [
            {
              id: 'well',
              outline: [
                [wellX, wellZ],
                [wellX + shaped(0.5, 3), wellZ],
                [wellX + shaped(0.5, 3), wellZ + shaped(0.5, 3)],
              ],
            },
          ],
    outline: [
      [-12, -9],
      [12, -9],
      [12, 9],
      [-12, 9],
    ],
  });
  for (let k = 0; k < count; k += 1) {
    const id = `item-${k}`;
    const at = spot();
    const headingDegrees = roll(0, 360);
    const common = { id, label: id, at, headingDegrees };
    const kind = Math.floor(roll(0, 9));
    if (kind === 0)
      addPiece({
        ...common,
        kind: 'box',
        size: [roll(0.3, 2), roll(0.3, 2), roll(0.3, 2)],
        material: 'timber',
      });
    else if (kind === 1)
      addPiece({
        ...common,
        kind: 'post',
        heightMetres: roll(1, 4),
        diameterMetres: roll(0.01, 0.1),
        armMetres: roll(0, 1),
      });
    else if (kind === 2) {
      addPiece({
        id,
        label: id,
        kind: 'fence',
        closed: false,
        baseMetres: 0,
        heightMetres: roll(1, 2.2),
        path: [
          [at[0], at[2]],
          [at[0] + roll(-5, 5), at[2] + roll(-5, 5)],
        ],
        postEveryMetres: 1.5,
        postMetres: 0.05,
        rails: 2,
        mesh: { cellMetres: 0.05, wireMetres: 0.004 },
      });
    } else if (kind === 3)
      addPiece({
        ...common,
        kind: 'tank',
        diameterMetres: roll(1, 2),
        drumMetres: roll(1, 2),
        legMetres: roll(0.5, 2),
      });
    else if (kind === 4) {
      addPiece({
        id,
        label: id,
        kind: 'line',
        from: [at[0], roll(1, 3), at[2]],
        to: [roll(-9, 9), roll(1, 3), roll(-7, 7)],
        sagMetres: roll(0, 0.4),
        diameterMetres: roll(0.002, 0.01),
        cloths: 0,
      });
    } else if (kind === 5) addGear({ ...common, kind: 'ladder', heightMetres: roll(1, 3) });
    else if (kind === 6)
      addPiece({
        ...common,
        kind: 'pane',
        widthMetres: roll(0.5, 2),
        heightMetres: roll(0.5, 2),
        finish: 'mirror',
      });
    else addGear({ ...common, kind: 'stand', stand: standClass(plan), heightMetres: roll(1, 3.5) });
  }
  for (const shape of shapes(shaped, plan)) {
    if ('piece' in shape) addPiece(shape.piece);
    else addGear(shape.gear);
  }
  return forms;
}

/** A wall with ways through it, a gate, a riser, a bent track, and a stand with its legs drawn in under bags. */
function shapes(
  roll: (low: number, high: number) => number,
  plan: Plan,
): readonly ({ readonly piece: Piece } | { readonly gear: Gear })[] {
  const item = (id: string) => ({
    id,
    label: id,
    at: [roll(-9, 9), 0, roll(-7, 7)] as [number, number, number],
    headingDegrees: roll(0, 360),
  });
  const opening = (k: number) => ({
    id: `way-${k}`,
    alongMetres: roll(0, 7),
    widthMetres: roll(0.3, 1.5),
    sillMetres: roll(0, 1) < 0.5 ? 0 : roll(0.2, 1),
    heightMetres: roll(0.4, 2.5),
  });
  const run = (id: string) => {
    const [x, z] = [roll(-9, 9), roll(-7, 7)];
    const path: [number, number][] = [
      [x, z],
      [x + roll(-4, 4), z + roll(2, 4)],
      [x + roll(-4, 4), z + roll(5, 7)],
    ];
    return {
      id,
      label: id,
      path,
      closed: false,
      baseMetres: 0,
      openings: [opening(0), opening(1), opening(2)],
    };
  };
  return [
    {
      piece: {
        ...run('wall'),
        kind: 'wall',
        heightMetres: roll(1, 2.6),
        thicknessMetres: 0.2,
        material: 'brick',
      },
    },
    {
      piece: {
        ...run('gated'),
        kind: 'fence',
        heightMetres: 1.8,
        postEveryMetres: 1.5,
        postMetres: 0.05,
        rails: 2,
        mesh: { cellMetres: 0.05, wireMetres: 0.004 },
      },
    },
    { piece: { ...item('riser'), kind: 'riser', size: [roll(1, 3), roll(0.2, 1), roll(1, 2)] } },
    {
      gear: {
        ...item('bent'),
        kind: 'track',
        lengthMetres: roll(1, 5),
        gaugeMetres: 0.62,
        bendMetres: roll(1, 5) * (roll(0, 1) < 0.5 ? 1 : -1),
      },
    },
    {
      gear: {
        ...item('bagged'),
        kind: 'stand',
        stand: standClass(plan),
        heightMetres: roll(1.2, 3.5),
        spreadMetres: roll(0.3, 1),
        bags: { count: Math.floor(roll(1, 6)), kilograms: roll(5, 12) },
      },
    },
  ];
}

/** A camera somewhere on or beyond the deck that looks at a place on it through a random lens. */
export function randomCamera(seed: number): Camera {
  const roll = dice(seed + 7919);
  const position: [number, number, number] = [roll(-14, 14), roll(0.3, 4), roll(-11, 11)];
  const aim = [roll(-5, 5), roll(0, 2), roll(-4, 4)];
  const [x, y, z] = aim.map((value, axis) => value - position[axis]);
  const heading = (Math.atan2(x, -z) * 180) / Math.PI;
  const tilt = (Math.atan2(y, Math.hypot(x, z)) * 180) / Math.PI;
  const tanHalfWidth = roll(0.1, 0.7);
  const aspect = roll(1, 2.4);
  return {
    pose: poseOf(position, heading, tilt, roll(-10, 10)),
    frame: { tanHalfWidth, tanHalfHeight: tanHalfWidth / aspect, aspect, distortion: null },
  };
}
