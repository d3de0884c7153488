import { DataTexture, LinearFilter, LinearMipmapLinearFilter, RepeatWrapping, RGBAFormat } from 'three';

const SIZE = 256;

/** A repeatable stream of numbers in 0..1 (mulberry32). */
function stream(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/** Smooth noise that repeats at its edges: octaves of a lattice from `cells` upward, spread over 0..1. */
function cloud(cells: number, octaves: number, seed: number): Float32Array {
  const sum = new Float32Array(SIZE * SIZE);
  for (let octave = 0; octave < octaves; octave += 1) {
    const count = cells << octave;
    const random = stream(seed + octave);
    const lattice = Float32Array.from({ length: count * count }, random);
    for (let y = 0; y < SIZE; y += 1) {
      for (let x = 0; x < SIZE; x += 1) {
        sum[y * SIZE + x] += sample(lattice, count, (x / SIZE) * count, (y / SIZE) * count) / (1 << octave);
      }
    }
  }
  return spread(sum);
}

function sample(lattice: Float32Array, count: number, x: number, y: number): number {
  const [x0, y0] = [Math.floor(x), Math.floor(y)];
  const [u, v] = [ease(x - x0), ease(y - y0)];
  const at = (column: number, row: number) => lattice[(row % count) * count + (column % count)];
  const upper = at(x0, y0) * (1 - u) + at(x0 + 1, y0) * u;
  const lower = at(x0, y0 + 1) * (1 - u) + at(x0 + 1, y0 + 1) * u;
  return upper * (1 - v) + lower * v;
}

const ease = (share: number): number => share * share * (3 - 2 * share);

/** Stretches values so that about all of them fill 0..1 (two and a half deviations to each side of the mean). */
function spread(values: Float32Array): Float32Array {
  let [sum, squares] = [0, 0];
  for (const value of values) {
    sum += value;
    squares += value * value;
  }
  const mean = sum / values.length;
  const deviation = Math.sqrt(Math.max(1e-9, squares / values.length - mean * mean));
  return values.map((value) => Math.min(1, Math.max(0, 0.5 + (value - mean) / (5 * deviation))));
}

/**
 * The one texture that all surfaces take their irregularity from; it repeats. Red: broad clouds, green: finer clouds,
 * blue: grain, alpha: blotches. Made here, so that the page loads no pictures.
 */
export function makeNoise(): DataTexture {
  const channels = [cloud(4, 5, 11), cloud(16, 4, 23), cloud(64, 2, 37), cloud(8, 2, 53)];
  const data = new Uint8Array(SIZE * SIZE * 4);
  for (let k = 0; k < SIZE * SIZE; k += 1) {
    for (let channel = 0; channel < 4; channel += 1) data[k * 4 + channel] = channels[channel][k] * 255;
  }
  const texture = new DataTexture(data, SIZE, SIZE, RGBAFormat);
  texture.wrapS = RepeatWrapping;
  texture.wrapT = RepeatWrapping;
  texture.magFilter = LinearFilter;
  texture.minFilter = LinearMipmapLinearFilter;
  texture.generateMipmaps = true;
  texture.anisotropy = 4;
  texture.needsUpdate = true;
  return texture;
}
