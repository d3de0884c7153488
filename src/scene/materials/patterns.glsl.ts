import type { Pattern } from './looks';

/** The patterns' functions below, in the order of the numbers that choose them. */
const PATTERN_NAMES = [
  'Slab',
  'Grit',
  'Strips',
  'Tiles',
  'Grain',
  'Boards',
  'Bricks',
  'Stain',
  'Spangle',
  'Weave',
  'Down',
] as const;

/** The number that chooses a pattern; −1 for a plain surface. */
export function numberOf(pattern: Pattern): number {
  return PATTERN_NAMES.findIndex((name) => name.toLowerCase() === pattern);
}

/**
 * Surfaces as they are laid, in metres along the surface; no picture, no texture coordinates. `footprint` is what a
 * pixel covers, metres: joints fade before they would shimmer. `relief` is height in metres. What a pattern does to the
 * albedo is 1 in the mean, but for its joints: how much comes back is core's.
 */
export const PATTERNS = /* glsl */ `
uniform sampler2D noiseMap;
uniform int laying;
uniform int isRound;

struct Surface { vec3 albedo; float rough; float relief; };

float scatter(vec2 cell) { return fract(sin(dot(cell, vec2(127.1, 311.7))) * 43758.5453); }
/* 1 in the joints of a grid, 0 between; width in metres. */
float jointsOf(vec2 within, vec2 unit, float width, float footprint) {
  vec2 edge = min(within, unit - within);
  float soft = max(footprint, width * 0.5);
  vec2 line = 1.0 - smoothstep(vec2(width * 0.5), vec2(width * 0.5 + soft), edge);
  return max(line.x, line.y) * clamp(width * 2.0 / soft, 0.0, 1.0);
}

void laySlab(inout Surface s, vec2 m, float footprint) {
  vec4 broad = texture2D(noiseMap, m / 7.3);
  vec4 fine = texture2D(noiseMap, m / 1.1);
  s.albedo *= 0.8 + 0.4 * broad.r + 0.22 * (fine.g - 0.5) + 0.12 * (fine.b - 0.5);
  s.rough += 0.1 * (broad.g - 0.5);
  /* Cast in bays where it lies: each of its own tone, with a dark joint between. */
  if (abs(vOwnNormal.y) > 0.7) {
    vec2 bay = vec2(2.5, 2.5);
    vec2 cell = floor(m / bay + 0.3);
    float joint = jointsOf(m + 0.3 * bay - cell * bay, bay, 0.016, footprint);
    s.albedo *= (0.9 + 0.2 * scatter(cell)) * (1.0 - 0.65 * joint);
  }
}

void layGrit(inout Surface s, vec2 m, float footprint) {
  vec4 fine = texture2D(noiseMap, m / 0.45);
  vec4 broad = texture2D(noiseMap, m / 8.1);
  s.albedo *= 0.8 + 0.4 * broad.r + 0.5 * (fine.b - 0.5);
  s.relief = 0.0015 * fine.b;
}

void layStrips(inout Surface s, vec2 m, float footprint) {
  vec2 within = vec2(fract(m.x) , 0.5);
  vec4 fine = texture2D(noiseMap, m / 0.6);
  vec4 broad = texture2D(noiseMap, m / 6.7);
  float lap = jointsOf(vec2(within.x, 0.5), vec2(1.0, 1.0), 0.03, footprint);
  s.albedo *= (0.95 + 0.1 * scatter(vec2(floor(m.x), 3.0)) + 0.3 * (broad.r - 0.5) + 0.35 * (fine.b - 0.5)) * (1.0 - 0.45 * lap);
  s.relief = 0.001 * fine.b;
}

void layTiles(inout Surface s, vec2 m, float footprint) {
  vec2 unit = vec2(0.3);
  vec2 cell = floor(m / unit);
  float joint = jointsOf(m - cell * unit, unit, 0.006, footprint);
  s.albedo *= (1.0 + 0.3 * (scatter(cell) - 0.5) + 0.25 * (texture2D(noiseMap, m / 3.1).r - 0.5)) * (1.0 - 0.5 * joint);
  s.rough += 0.25 * joint;
  s.relief = -0.003 * joint;
}

void layGrain(inout Surface s, vec2 m, float footprint) {
  float grain = texture2D(noiseMap, m * vec2(3.7, 0.4)).g;
  s.albedo *= 0.75 + 0.45 * grain;
  s.rough += 0.1 * (grain - 0.5);
}

void layBoards(inout Surface s, vec2 m, float footprint) {
  float board = floor(m.x / 0.14);
  vec2 within = vec2(m.x - board * 0.14, 0.5);
  float gap = jointsOf(within, vec2(0.14, 1.0), 0.008, footprint);
  float grain = texture2D(noiseMap, vec2(m.x * 4.0, m.y * 0.35 + scatter(vec2(board, 7.0)))).g;
  s.albedo *= (0.82 + 0.35 * scatter(vec2(board, 1.0)) + 0.45 * (grain - 0.5)) * (1.0 - 0.8 * gap);
  s.relief = -0.006 * gap;
}

/* A metric brick with its joint, in stretcher bond. */
void layBricks(inout Surface s, vec2 m, float footprint) {
  vec2 unit = vec2(0.225, 0.075);
  vec2 at = m / unit;
  at.x += 0.5 * mod(floor(at.y), 2.0);
  vec2 cell = floor(at);
  float joint = jointsOf(fract(at) * unit, unit, 0.01, footprint);
  float clear = 1.0 - smoothstep(0.04, 0.15, footprint);
  float tone = scatter(cell);
  vec4 broad = texture2D(noiseMap, m / 4.3);
  s.albedo *= mix(1.0, 0.7 + 0.55 * tone, clear) * (0.75 + 0.5 * broad.r);
  s.albedo = mix(s.albedo, vec3(0.24, 0.225, 0.205) * (0.7 + 0.5 * broad.g), 0.75 * joint);
  s.relief = -0.004 * joint + 0.002 * texture2D(noiseMap, m / 0.3).g;
}

void layStain(inout Surface s, vec2 m, float footprint) {
  float run = texture2D(noiseMap, m * vec2(0.9, 0.12)).g;
  vec4 broad = texture2D(noiseMap, m / 3.9);
  s.albedo *= 0.62 + 0.35 * broad.r + 0.35 * run;
  s.relief = 0.0008 * texture2D(noiseMap, m / 0.4).b;
}

void laySpangle(inout Surface s, vec2 m, float footprint) {
  vec4 fine = texture2D(noiseMap, m / 0.5);
  s.albedo *= 0.85 + 0.3 * fine.a;
  s.rough += 0.16 * (fine.g - 0.5);
}

void layWeave(inout Surface s, vec2 m, float footprint) {
  vec4 fold = texture2D(noiseMap, m / 0.9);
  s.albedo *= 0.85 + 0.25 * fold.g + 0.12 * (texture2D(noiseMap, m / 0.09).b - 0.5);
}

void layDown(inout Surface s, vec2 m, float footprint) {
  s.albedo *= 0.7 + 0.6 * texture2D(noiseMap, m / 0.12).a;
}

/* One program for all: which pattern lies here is a uniform, so a new substance builds no shader. */
void lay(inout Surface s, vec2 m, float footprint) {
${PATTERN_NAMES.map((name, k) => `  ${k === 0 ? '' : 'else '}if (laying == ${k}) lay${name}(s, m, footprint);`).join('\n')}
}
`;
