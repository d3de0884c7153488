import { WET_DARKENING } from '../../core/light/wetness';

/**
 * A deck that is wet: where water stands, where a film lies, where it has dried; darker where wet; and what the water
 * mirrors, taken from the picture of a camera below the deck, blurred by the slopes of the film as far as the mirrored
 * thing is away, and mixed in by Fresnel's equations for water (n = 1.333, unpolarised), not by an approximation.
 */
export const WET_DECLARATIONS = /* glsl */ `
uniform sampler2D mirrorMap;
uniform sampler2D mirrorDepth;
uniform mat4 mirrorFromWorld;
uniform mat4 worldFromMirror;
uniform vec2 mirrorTangents;
uniform vec2 mirrorPixels;
uniform float mirrorHeight;
uniform float mirrorOn;
/* How much of the deck a film covers, and how much of it stands in puddles, 0..1. */
uniform vec2 wetShares;
/* The same over the areas that are wetter or drier, and where that picture lies: its corner and 1 over its sides. */
uniform sampler2D wetMask;
uniform vec4 wetPlace;

float waterFresnel(float cosIn) {
  const float n = 1.333;
  float sin2Out = (1.0 - cosIn * cosIn) / (n * n);
  float cosOut = sqrt(1.0 - sin2Out);
  float square = (cosIn - n * cosOut) / (cosIn + n * cosOut);
  float along = (cosOut - n * cosIn) / (cosOut + n * cosIn);
  return 0.5 * (square * square + along * along);
}

/* Water does not end in a ruled line: the edge of an area strays by some centimetres. */
vec2 sharesAt(vec2 m) {
  if (wetPlace.z == 0.0) return wetShares;
  vec2 stray = 0.14 * (texture2D(noiseMap, m / 1.7).rg - 0.5) + 0.06 * (texture2D(noiseMap, m / 0.4 + 0.5).rg - 0.5);
  vec2 at = (m + stray - wetPlace.xy) * wetPlace.zw;
  vec2 inside = step(vec2(0.0), at) * step(at, vec2(1.0));
  return mix(wetShares, texture2D(wetMask, at).rg, inside.x * inside.y);
}

/* How much of the mirror's picture it has is "shows": a deck that is only damp has none. */
struct Wet { float film; float puddle; float slope; float shows; };

Wet wetAt(vec2 m) {
  Wet wet;
  float broad = texture2D(noiseMap, m / 13.0).r;
  float middle = texture2D(noiseMap, m / 4.7 + 0.37).r;
  float fine = texture2D(noiseMap, m / 1.3).g;
  vec2 shares = sharesAt(m);
  wet.shows = smoothstep(0.0, 0.2, shares.y);
  float dry = 1.0 - shares.x;
  wet.film = smoothstep(dry - 0.3, dry + 0.2, 0.62 * broad + 0.38 * middle + 0.08 * (fine - 0.5));
  wet.film *= smoothstep(0.0, 0.12, shares.x);
  /* Water levels itself: its shore follows the broad falls of the deck, not its grit. */
  float hollow = 0.62 * texture2D(noiseMap, m / 13.0, 2.5).r + 0.38 * texture2D(noiseMap, m / 4.7 + 0.37, 2.5).r;
  float shore = 1.0 - shares.y;
  wet.puddle = smoothstep(shore - 0.04, shore + 0.1, hollow + 0.02 * (fine - 0.5)) * smoothstep(0.0, 0.1, shares.y);
  wet.film = max(wet.film, wet.puddle);
  wet.slope = mix(mix(0.09, 0.045, wet.film * (0.4 + 0.6 * middle)), 0.0015, sqrt(wet.puddle));
  return wet;
}

/* The mirror's picture around where this point of the deck shows it, cd/m². */
vec3 mirrored(vec3 place, float slope, float cosIn) {
  vec4 seen = mirrorFromWorld * vec4(place, 1.0);
  vec2 at = seen.xy / seen.w * 0.5 + 0.5;
  float here = distance(place, cameraPosition);
  /* The mean of five, or the blur would end in steps at the outline of what is mirrored. */
  float share = 0.0;
  for (int k = 0; k < 5; k++) {
    float turn = float(k) * 2.3999632;
    vec2 tap = at + sqrt(float(k)) * 2.5 * vec2(cos(turn), sin(turn)) / mirrorPixels;
    vec4 there = worldFromMirror * vec4(tap * 2.0 - 1.0, texture2D(mirrorDepth, tap).x * 2.0 - 1.0, 1.0);
    float beyond = min(distance(there.xyz / there.w, place), 400.0);
    share += beyond / (beyond + here);
  }
  float spread = 2.0 * slope * share / 5.0;
  /* A film's slopes lean the ray twice as far in its own plane, and across it only as steeply as it falls. */
  vec2 reach = spread * vec2(max(cosIn, 0.08), 1.0) / (2.0 * mirrorTangents);
  vec2 pixels = reach * mirrorPixels;
  float finest = log2(max(1.0, max(pixels.x * 1.4, pixels.y * 0.55)));
  vec3 sum = vec3(0.0);
  float weights = 0.0;
  for (int k = -4; k <= 4; k++) {
    float away = float(k) * 0.5;
    float weight = exp(-0.5 * away * away);
    vec2 tap = at + vec2(0.0, away * reach.y);
    sum += weight * textureLod(mirrorMap, clamp(tap, 0.002, 0.998), finest).rgb;
    weights += weight;
  }
  return sum / weights;
}
`;

/** Before the lamps: albedo and roughness of the wet. */
export const WET_SURFACE = /* glsl */ `
Wet wet = wetAt(vWorldPlace.xz);
float lying = step(0.7, vOwnNormal.y);
wet.film *= lying;
wet.puddle *= lying;
surface.albedo *= 1.0 - ${WET_DARKENING.toFixed(3)} * wet.film;
surface.rough = mix(surface.rough, mix(0.4, 0.24, wet.film), wet.film);
surface.relief *= 1.0 - wet.puddle;
`;

/** After the lamps: what the water mirrors. Water shows the lamps themselves, so the shine that they would be drawn with goes. */
export const WET_MIRROR = /* glsl */ `
float reflectsHere = wet.shows * lying * mirrorOn * (1.0 - step(0.02, abs(vWorldPlace.y - mirrorHeight)));
if (wet.film * reflectsHere > 0.001) {
  float cosIn = saturate(dot(geometryViewDir, geometryNormal));
  float share = waterFresnel(cosIn) * wet.film;
  vec3 unlit = totalDiffuse + totalSpecular * (1.0 - wet.film) + totalEmissiveRadiance;
  outgoingLight = unlit * (1.0 - share) + mirrored(vWorldPlace, wet.slope, cosIn) * share;
}
`;
