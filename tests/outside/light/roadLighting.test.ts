import { expect, test } from 'vitest';
import { HEADS } from '../../../src/core/kit/heads';
import { illuminance } from '../../../src/core/light/illuminance';
import { lightScene } from '../../../src/core/light/lightScene';
import type { Gear } from '../../../src/core/plan/schema/gear';
import { darkRoof, lampKit } from '../../plans/darkRoof';

/** Mean of the brightest and of the darkest class: lux where people walk, cd/m² where cars go. Source: [road-lighting-classes] */
const [P1, P6, M1, M6] = [15, 2, 2, 0.3];
/** What a dry asphalt road sends to a driver, cd/m² for a lux; from memory. */
const ROAD = 0.07;
/** The classes are of lamps that have aged and are dirty, to so much of what they gave. Source: common practice, no source */
const MAINTAINED = 0.8;
/** How wide a street is, metres. Source: common practice, no source */
const WIDE_METRES = 7;
const STREET = HEADS.filter(({ form }) => form === 'street');

/** Mean lux on a street between the middle two of six lamps in a row, of the lamps alone. */
function meanUnder(head: string, apartMetres: number): number {
  const gear = Array.from(
    { length: 6 },
    (_, k): Gear => ({
      id: `lamp-${k}`,
      label: `Lamp ${k}`,
      kind: 'practical',
      head,
      at: [(k - 2.5) * apartMetres, 0, 0],
      headingDegrees: 0,
      dim: 1,
    }),
  );
  const scene = lightScene(darkRoof({ kit: lampKit(STREET), gear }), null, 0);
  const lux = Array.from({ length: 10 * 3 }, (_, k) => {
    const along = (((k % 10) + 0.5) / 10 - 0.5) * apartMetres;
    const across = -((Math.floor(k / 10) + 0.5) / 3) * WIDE_METRES;
    const { lux: all, ambientLux } = illuminance(scene, [along, 0, across], [0, 1, 0]);
    return all - ambientLux;
  });
  return (MAINTAINED * lux.reduce((sum, value) => sum + value, 0)) / lux.length;
}

// How far such lamps stand apart: common practice, no source.
test('the small street lamp, every 30 m, lights a street as one that people walk in', () => {
  const mean = meanUnder('led-street-lamp', 30);
  expect(mean).toBeGreaterThan(P6);
  expect(mean).toBeLessThan(P1);
});

test('the large one, every 35 m, lights a street as one for traffic', () => {
  const mean = ROAD * meanUnder('sodium-street-lamp', 35);
  expect(mean).toBeGreaterThan(M6);
  expect(mean).toBeLessThan(M1);
});
