import { expect, test } from 'vitest';
import { lampsAt } from '../../../src/core/form/lamps';
import { candelaTable } from '../../../src/core/form/photometry/candelaTable';
import { FINISHES } from '../../../src/core/light/finishes';
import { CandelaRows, COLUMNS } from '../../../src/scene/light/candelaRows';
import { ClothFaces } from '../../../src/scene/light/clothFaces';
import { housingsOf } from '../../../src/scene/light/housings';
import { colourOfLamp, luminanceOf } from '../../../src/scene/light/kelvin';
import { LAMP_LOOP } from '../../../src/scene/light/lampLight.glsl';
import { luxAt, spotOfCloth, spotOfLamp } from '../../../src/scene/light/spotSources';
import { throughFrames } from '../../../src/scene/light/throughFrames';
import { LOOKS } from '../../../src/scene/materials/looks';
import { litBoardsPlan } from '../../plans/litBoards';
import { DEMO, readPlan } from '../../plans/readPlan';

test("the shader's loop over the lights has our lamps and shadows in it", () => {
  expect(LAMP_LOOP).toContain('lampLight( spotLight, lampFaces[ i ], geometryPosition, directLight );');
  expect(LAMP_LOOP).toContain('lampShadow( spotShadowMap[ i ]');
  expect(LAMP_LOOP).toContain('lampLight( spotLight, lampFaces[ k ], geometryPosition, directLight );');
  // Only where maps are looked into is a loop written out.
  const unrolled = LAMP_LOOP.match(/unroll_loop_start\s*for \( int i = 0; i < (NUM_SPOT|NUM_POINT)\w+/g);
  expect(unrolled?.map((loop) => loop.split(' ').at(-1))).toEqual(['NUM_SPOT_LIGHT_SHADOWS']);
  expect(LAMP_LOOP).not.toContain('getSpotLightInfo');
  expect(LAMP_LOOP).not.toContain('getShadow( spotShadowMap');
});

test('a measured table lies in the texture as shares of its peak by half degrees, half-plane by half-plane', () => {
  const plan = litBoardsPlan();
  const table = lampsAt(plan, 0).find(({ distribution }) => distribution)?.distribution;
  if (!table) throw new Error('no table in the plan');
  const rows = new CandelaRows();
  const { first, planes } = rows.rowsOf(table);
  expect([first, planes]).toEqual([1, 72]);
  expect(rows.rowsOf(table)).toEqual({ first, planes });
  const { data } = rows.texture.image;
  const { candelaAt, peakCandela } = candelaTable(table);
  for (const [degrees, turn] of [
    [0, 0],
    [12.5, 90],
    [40, 215],
    [75, 0],
  ]) {
    const shown = data?.[(first + turn / 5) * COLUMNS + degrees * 2];
    expect(shown).toBeCloseTo(candelaAt(degrees, turn) / peakCandela, 6);
  }
  // The first row is an even diffuser.
  expect(data?.[120]).toBeCloseTo(0.5, 6);
});

test('a lit bounce shines into the half space before it with the colour of its lamp', () => {
  const plan = litBoardsPlan();
  const lamps = lampsAt(plan, 0);
  const cloths = new ClothFaces();
  const faces = cloths.at(plan, 0, lamps);
  expect(faces.length).toBeGreaterThan(0);
  const [strongest] = faces.toSorted((a, b) => b.candela - a.candela);
  const colours = new Map(lamps.map((lamp) => [lamp.itemId, colourOfLamp(lamp)]));
  const spot = spotOfCloth(strongest, new CandelaRows(), colours);
  expect(luminanceOf(spot.colour)).toBeCloseTo(1, 6);
  const along = (metres: number) =>
    spot.position.map((each, axis) => each + metres * spot.direction[axis]) as [number, number, number];
  expect(luxAt(spot, along(2))).toBeCloseTo(strongest.candela / 4, 6);
  expect(luxAt(spot, along(-2))).toBe(0);
  // Who only walks does not change it.
  expect(cloths.at({ ...plan, cast: [...plan.cast] }, 1, lamps)).toBe(faces);
});

test('barn doors and round faces are those of the gear', () => {
  const { withDoors, round } = housingsOf(readPlan(DEMO));
  expect([...withDoors]).toEqual(['head-2']);
  expect(round.has('head-3')).toBe(true);
  expect(round.has('sign')).toBe(false);
});

test('a lamp that shines at a frame is known, since its light goes on from the frame alone', () => {
  const plan = litBoardsPlan();
  expect([...throughFrames(plan, lampsAt(plan, 0))]).toEqual(['lamp-behind']);
  expect(throughFrames(readPlan(DEMO), lampsAt(readPlan(DEMO), 0)).size).toBe(0);
});

test('a lamp stronger to one side lights that side more in the picture too', () => {
  const lamp = lampsAt(litBoardsPlan(), 0).find(({ distribution }) => distribution);
  if (!lamp) throw new Error('no table in the plan');
  const spot = spotOfLamp(lamp, new CandelaRows(), false, false);
  const [x, y, z] = lamp.position;
  const [dx, dy, dz] = lamp.direction;
  const ahead = [x + 3 * dx, y + 3 * dy, z + 3 * dz] as const;
  expect(luxAt(spot, [ahead[0], ahead[1] + 1, ahead[2]])).toBeGreaterThan(
    luxAt(spot, [ahead[0], ahead[1] - 1, ahead[2]]),
  );
});

test('what a substance gives back in the picture is what core reckons with', () => {
  for (const [name, look] of Object.entries(LOOKS)) {
    const finish = FINISHES[name as keyof typeof FINISHES];
    const luminance = luminanceOf(look.colour);
    expect(luminance * (1 - look.metalness)).toBeCloseTo(finish.diffuse, 6);
    if (finish.sheen !== null) expect(luminance).toBeCloseTo(finish.sheen, 6);
  }
});
