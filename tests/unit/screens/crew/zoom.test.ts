import { expect, test } from 'vitest';
import {
  createFullState,
  degreesPerPixel,
  goTo,
  halvesOf,
  panBy,
  playOrPause,
  turnBy,
  zoomBy,
  zoomOrWhole,
} from '../../../../src/screens/crew/picture/full/fullState';
import { CLOSEST, panned, pictureIn, WHOLE, zoomedAt } from '../../../../src/screens/crew/picture/full/zoom';

const PHONE = { width: 390, height: 600 };
const ASPECT = 2;

test('the whole picture lies in the middle, as large as fits', () => {
  expect(pictureIn(PHONE, ASPECT, WHOLE)).toEqual({ left: 0, top: 202.5, width: 390, height: 195 });
  expect(pictureIn({ width: 900, height: 300 }, ASPECT, WHOLE)).toEqual({
    left: 150,
    top: 0,
    width: 600,
    height: 300,
  });
});

test('what is under the fingers stays under them, away from the edges', () => {
  const before = zoomedAt(PHONE, ASPECT, WHOLE, [195, 300], 5);
  const at = [230, 280] as const;
  const share = (zoom: typeof before): readonly number[] => {
    const { left, top, width, height } = pictureIn(PHONE, ASPECT, zoom);
    return [(at[0] - left) / width, (at[1] - top) / height];
  };
  const after = zoomedAt(PHONE, ASPECT, before, at, 1.2);
  share(after).forEach((value, axis) => {
    expect(value).toBeCloseTo(share(before)[axis], 10);
  });
});

test('an enlarged picture covers its room, and no picture is smaller than all of it', () => {
  const far = panned(PHONE, ASPECT, { scale: 4, x: 0, y: 0 }, [9999, -9999]);
  const { left, top, height } = pictureIn(PHONE, ASPECT, far);
  expect(left).toBe(0);
  expect(top + height).toBeCloseTo(PHONE.height, 10);
  expect(zoomedAt(PHONE, ASPECT, far, [0, 0], 0.001)).toEqual(WHOLE);
  expect(zoomedAt(PHONE, ASPECT, far, [0, 0], 1000).scale).toBe(CLOSEST);
});

test('the clock stays in the span, plays on from the beginning at its end, and one instant does not play', () => {
  const store = createFullState([1, 4], ASPECT);
  goTo(store, 9);
  expect(store.getState().seconds).toBe(4);
  playOrPause(store);
  expect(store.getState()).toMatchObject({ seconds: 1, playing: true });
  playOrPause(store);
  expect(store.getState()).toMatchObject({ seconds: 1, playing: false });
  const still = createFullState([2, 2], ASPECT);
  playOrPause(still);
  expect(still.getState().playing).toBe(false);
});

test('two taps enlarge and two more show the whole; a hand pans what is enlarged only', () => {
  const store = createFullState([0, 1], ASPECT);
  store.setState({ area: PHONE });
  panBy(store, [50, 50]);
  expect(store.getState().zoom).toEqual(WHOLE);
  zoomOrWhole(store, [100, 300]);
  expect(store.getState().zoom.scale).toBe(3);
  panBy(store, [5, 0]);
  zoomOrWhole(store, [100, 300]);
  expect(store.getState().zoom).toEqual(WHOLE);
  zoomBy(store, 2);
  expect(store.getState().zoom).toEqual({ scale: 2, x: 0, y: 0 });
});

test('an eye turns all round and not over its own head, and a hand carries along what it holds', () => {
  const store = createFullState([0, 1], ASPECT);
  turnBy(store, 400, 200);
  expect(store.getState().turn).toEqual({ headingDegrees: 400, tiltDegrees: 80 });
  const [across] = halvesOf({ width: 844, height: 342 });
  // In the middle a pixel is the same tangent for hand and eye.
  expect(Math.tan((degreesPerPixel({ width: 844, height: 342 }) * Math.PI) / 180)).toBeCloseTo(
    (2 * across) / 844,
    6,
  );
});
