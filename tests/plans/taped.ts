import type { Plan } from '../../src/core/plan/schema/plan';
import { BARE, planFrom } from './bare';

/** A stand on three legs, at a place [x, z] on a floor so many metres high. */
export const standAt = (id: string, [x, z]: readonly [number, number], floor = 0) => ({
  id,
  label: id,
  kind: 'stand',
  at: [x, floor, z],
  headingDegrees: 0,
  stand: 'three-riser',
  heightMetres: 3,
});

/** A roof of its width and depth, metres, with a parapet all round whose inner corners lie half a metre within. */
export function tapedRoof({
  width = 20,
  depth = 12,
  northDegrees = 0,
  pieces = [],
  gear = [],
  cast = [],
  setups = [],
}: {
  readonly width?: number;
  readonly depth?: number;
  readonly northDegrees?: number;
  readonly pieces?: readonly object[];
  readonly gear?: readonly object[];
  readonly cast?: readonly object[];
  readonly setups?: readonly object[];
}): Plan {
  const [x, z] = [width / 2, depth / 2];
  const around = (by: number) => [
    [-x + by, -z + by],
    [x - by, -z + by],
    [x - by, z - by],
    [-x + by, z - by],
  ];
  return planFrom({
    ...BARE,
    place: { ...BARE.place, northDegrees },
    kit: {
      ...BARE.kit,
      stands: [
        {
          id: 'three-riser',
          label: 'Three-riser stand',
          lowestMetres: 1.4,
          highestMetres: 4,
          footprintMetres: 1.2,
          sections: 4,
          baseTubeMetres: 0.038,
          tubeStepMetres: 0.005,
          legTubeMetres: 0.025,
          collarMetres: 0.9,
        },
      ],
    },
    pieces: [
      { id: 'deck', label: 'Deck', kind: 'deck', outline: around(0), topMetres: 0, dropMetres: 9 },
      {
        id: 'parapet',
        label: 'Parapet',
        kind: 'parapet',
        path: around(0.25),
        closed: true,
        baseMetres: 0,
        heightMetres: 1,
        thicknessMetres: 0.5,
        copingMetres: 0.05,
        material: 'brick',
      },
      ...pieces,
    ],
    gear,
    cast,
    setups,
  });
}

/** A stair house of its width and depth on the deck. */
export const stairHouseAt = (
  id: string,
  [x, z]: readonly [number, number],
  { width = 3, depth = 2, headingDegrees = 0 } = {},
) => ({
  id,
  label: 'Stair house',
  kind: 'stair house',
  at: [x, 0, z],
  headingDegrees,
  size: [width, 2.8, depth],
  door: { widthMetres: 0.9, heightMetres: 2, alongMetres: 0 },
  overhangMetres: 0.2,
  material: 'render',
});
