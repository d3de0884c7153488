import { ShaderChunk } from 'three';

/**
 * What gets past the nets from a square face of some half side, `way` off the place, both in the world: of each net its
 * openness over the share of the face that is seen through it, as core's rays from places on the face have it.
 */
const NETS = /* glsl */ `
uniform highp sampler2D netRows;
uniform int netCount;

float netShare(vec3 place, vec3 way, float halfSide) {
  float share = 1.0;
  for (int k = 0; k < netCount; k++) {
    vec4 net = texelFetch(netRows, ivec2(0, k), 0);
    vec3 right = texelFetch(netRows, ivec2(1, k), 0).xyz;
    vec3 up = texelFetch(netRows, ivec2(2, k), 0).xyz;
    vec3 normal = cross(right, up);
    float towards = dot(way, normal);
    if (towards == 0.0) continue;
    vec3 middle = net.xyz - place;
    float at = dot(middle, normal) / towards;
    if (at * length(way) < 0.002 || at > 1.0) continue;
    vec2 half2 = vec2(length(right), length(up));
    vec3 off = way * at - middle;
    vec2 met = vec2(dot(off, right), dot(off, up)) / (half2 * half2);
    vec2 reach = max(vec2(halfSide * at) / half2, vec2(1e-4));
    vec2 covered = clamp((min(met + reach, 1.0) - max(met - reach, -1.0)) / (2.0 * reach), 0.0, 1.0);
    share *= 1.0 - (1.0 - net.w) * covered.x * covered.y;
  }
  return share;
}

/* A way of the view's in the world. */
vec3 worldWay(vec3 way) { return (vec4(way, 0.0) * viewMatrix).xyz; }
`;

/** Half the side of a square as large as a face, over how far along it the four places are that stand for it: round or square alike. */
const HALF_SIDE_OF_SPREAD = 1.75;

/**
 * The candela of a lamp towards a place as core has them: by its measured table where it has one, else by the curve of
 * `core/form/beam`, whose half and tenth three's two cosines of a cone stand for. Near a broad face the light comes from
 * four places on it, as far from its middle as its mean is, and goes on as their sum. Source: [inverse-square]
 */
const CANDELA = /* glsl */ `
#if NUM_SPOT_LIGHTS > 0
uniform vec4 lampFaces[ NUM_SPOT_LIGHTS ];
uniform highp sampler2D candelaRows;

float candelaRow(int row, float degreesOff) {
  float at = clamp(degreesOff * 2.0, 0.0, 360.0);
  int low = min(int(at), 359);
  return mix(
    texelFetch(candelaRows, ivec2(low, row), 0).r, texelFetch(candelaRows, ivec2(low + 1, row), 0).r, at - float(low));
}

/* A lamp's own right: it is level, as a yoke holds it. */
vec3 sideOf(vec3 forward) {
  float level = length(forward.xz);
  return level < 1e-6 ? vec3(1.0, 0.0, 0.0) : vec3(-forward.z, 0.0, forward.x) / level;
}

float measuredShare(vec4 face, vec3 away, vec3 axis, float cosine) {
  float off = degrees(acos(clamp(cosine, -1.0, 1.0)));
  int first = int(face.z);
  int planes = int(face.w);
  if (planes == 1) return candelaRow(first, off);
  vec3 forward = (vec4(axis, 0.0) * viewMatrix).xyz;
  vec3 way = (vec4(away, 0.0) * viewMatrix).xyz;
  vec3 side = sideOf(forward);
  float turn = degrees(atan(dot(way, cross(side, forward)), dot(way, side)));
  float plane = mod(turn / 360.0 + 1.0, 1.0) * float(planes);
  int before = int(plane) % planes;
  int next = (before + 1) % planes;
  return mix(candelaRow(first + before, off), candelaRow(first + next, off), fract(plane));
}

/* The power of the curve is in the lamp's decay, and how far off it ends in its face. */
float beamShare(SpotLight lamp, float cosine, float end) {
  float off = max(0.0, 1.0 - cosine);
  if (off >= end) return 0.0;
  return exp2(-pow(off / max(1e-6, 1.0 - lamp.penumbraCos), lamp.decay));
}

/* Light of one place of a face, as a vector as long as its lux. */
vec3 lampRay(const in SpotLight lamp, vec4 face, vec3 way) {
  float square = max(dot(way, way), 1e-4);
  vec3 towards = way * inversesqrt(square);
  float cosine = dot(towards, lamp.direction);
  float share = face.w > 0.0 ? measuredShare(face, -towards, -lamp.direction, cosine) : beamShare(lamp, cosine, face.z);
  return towards * (share / square);
}

void lampLight(const in SpotLight lamp, vec4 face, const in vec3 place, out IncidentLight light) {
  vec3 way = lamp.position - place;
  int looks = max(face.x, face.y) < 0.02 * length(way) ? 1 : 4;
  vec3 right = vec3(0.0);
  vec3 top = vec3(0.0);
  if (looks > 1) {
    vec3 side = mat3(viewMatrix) * sideOf((vec4(-lamp.direction, 0.0) * viewMatrix).xyz);
    right = face.x * side;
    top = face.y * cross(side, lamp.direction);
  }
  /* A loop and not four lines, since a card's compiler writes each call out. */
  vec3 ray = vec3(0.0);
  for (int n = 0; n < looks; n++)
    ray += lampRay(lamp, face, way + ((n & 1) == 0 ? right : -right) + ((n & 2) == 0 ? top : -top));
  ray /= float(looks);
  float lux = length(ray);
  light.direction = lux > 0.0 ? ray / lux : normalize(way);
  light.color = lamp.color * lux;
  if (netCount > 0 && lux > 0.0)
    light.color *= netShare(vWorldPlace, worldWay(way), ${HALF_SIDE_OF_SPREAD} * sqrt(face.x * face.y));
  light.visible = max(max(light.color.r, light.color.g), light.color.b) > 0.002;
}
#endif
`;

/**
 * Shadows as soft as the lamp's face is large: the mean depth of what is in the way, by some looks around, tells how
 * wide the face is drawn past its edge, R (1/z₁ − 1/z₂) in tangents; then that much of the map is looked over. Depths
 * are held against the plane of the lit surface itself, whose inverse depth is even over the map, so that a wide look
 * does not find the surface in its own way.
 */
const SHADOW = /* glsl */ `
#if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
uniform vec4 lampShadows[ NUM_SPOT_LIGHT_SHADOWS ];
uniform vec2 shadowTaps;

/* A step of the golden angle: places on a disc, evenly, however many. */
const mat2 GOLDEN = mat2(-0.7373688, 0.6754903, -0.6754903, -0.7373688);

/* One over the depth, which is even over the map and over any plane in it. */
float inverseIn(sampler2D map, vec2 at, vec4 lens) { return lens.x - texture2D(map, at).r * lens.y; }

float lampShadow(sampler2D map, vec4 lens, vec4 coord, bool asked) {
  vec3 at = vec3(coord.xy, 1.0) / coord.w;
  vec3 acrossX = dFdx(at);
  vec3 acrossY = dFdy(at);
  if (!asked || at.z <= 0.0 || at.z >= lens.x) return 1.0;
  if (at.x <= 0.0 || at.x >= 1.0 || at.y <= 0.0 || at.y >= 1.0) return 1.0;
  float area = acrossX.x * acrossY.y - acrossX.y * acrossY.x;
  vec2 lean = abs(area) < 1e-14 ? vec2(0.0)
    : vec2(acrossY.y * acrossX.z - acrossX.y * acrossY.z, acrossX.x * acrossY.z - acrossY.x * acrossX.z) / area;
  float perTangent = 0.5 / lens.z;
  float texel = 1.0 / float(textureSize(map, 0).x);
  /* Nearer than the surface by less than this is the surface itself. */
  float margin = (0.006 + 2.0 * texel * lens.z / at.z) * at.z * at.z;
  float least = at.z / 1.5;
  /* Each pixel begins elsewhere on the spiral, by interleaved gradient noise, whose numbers are from memory: few looks make grain and no steps. */
  float turn = 6.2831853 * fract(52.9829189 * fract(dot(gl_FragCoord.xy, vec2(0.06711056, 0.00583715))));
  vec2 begun = vec2(cos(turn), sin(turn));
  float nearest = min(lens.x, max(4.0 * at.z, 0.667));
  float reach = max(1.5 * texel, lens.w * (nearest - at.z) * perTangent);
  float blockers = 0.0;
  float sum = 0.0;
  vec2 way = begun;
  for (int k = 0; k < int(shadowTaps.x); k++) {
    /* Closer together the nearer: what throws an edge here is mostly not far from the straight way. */
    vec2 away = reach * ((float(k) + 0.5) / shadowTaps.x) * way;
    way = GOLDEN * way;
    float found = inverseIn(map, at.xy + away, lens);
    if (found > max(at.z + dot(lean, away), least) + margin) { blockers += 1.0; sum += found; }
  }
  if (blockers == 0.0) return 1.0;
  float between = lens.w * (sum / blockers - at.z) * perTangent;
  float wide = clamp(between, 1.2 * texel, 2.0 * reach);
  float open = 0.0;
  way = begun;
  for (int k = 0; k < int(shadowTaps.y); k++) {
    vec2 away = wide * sqrt((float(k) + 0.5) / shadowTaps.y) * way;
    way = GOLDEN * way;
    float found = inverseIn(map, at.xy + away, lens);
    if (found <= max(at.z + dot(lean, away), least) + margin) open += 1.0;
  }
  return open / shadowTaps.y;
}
#endif
`;

/** The moon is half a degree wide: its edges are as sharp as the map, and only kept from stepping. */
const MOON_SHADOW = /* glsl */ `
#if defined( USE_SHADOWMAP ) && NUM_DIR_LIGHT_SHADOWS > 0
float moonShadow(sampler2D map, float bias, vec4 coord, bool asked) {
  vec3 at = coord.xyz / coord.w;
  if (!asked || at.z > 1.0 || any(lessThan(at.xy, vec2(0.0))) || any(greaterThan(at.xy, vec2(1.0)))) return 1.0;
  vec2 size = vec2(textureSize(map, 0));
  vec2 place = at.xy * size - 0.5;
  vec2 share = fract(place);
  vec2 first = (floor(place) + 0.5) / size;
  vec4 open;
  for (int k = 0; k < 4; k++)
    open[k] = step(at.z + bias, texture2D(map, first + vec2(float(k & 1), float(k >> 1)) / size).r);
  return mix(mix(open.x, open.y, share.x), mix(open.z, open.w, share.x), share.y);
}
#endif
`;

/** Comes after three's shading: lamps, their shadows and the moon's. */
export const LAMP_DECLARATIONS = `${NETS}${CANDELA}${SHADOW}${MOON_SHADOW}`;

/**
 * The lamps of a lit surface. Those that cast shadows one after the other, as their maps want it; the others in a loop
 * that stays one: written out, sixteen lamps make a shader that a card without much of a compiler chews on for seconds.
 * What is out of a beam, turned away or in the shade is not shaded: most of a roof is, for most lamps.
 */
const SPOTS = /* glsl */ `
#if ( NUM_SPOT_LIGHTS > 0 ) && defined( RE_Direct )
  SpotLight spotLight;
  #if defined( USE_SHADOWMAP ) && NUM_SPOT_LIGHT_SHADOWS > 0
  #pragma unroll_loop_start
  for ( int i = 0; i < NUM_SPOT_LIGHT_SHADOWS; i ++ ) {
    spotLight = spotLights[ i ];
    lampLight( spotLight, lampFaces[ i ], geometryPosition, directLight );
    directLight.visible = directLight.visible && FACES( directLight );
    directLight.color *= lampShadow( spotShadowMap[ i ], lampShadows[ i ], vSpotLightCoord[ i ], directLight.visible && receiveShadow );
    if ( directLight.visible && directLight.color != vec3( 0.0 ) ) RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
  }
  #pragma unroll_loop_end
  const int firstUnshaded = NUM_SPOT_LIGHT_SHADOWS;
  #else
  const int firstUnshaded = 0;
  #endif
  for ( int k = firstUnshaded; k < NUM_SPOT_LIGHTS; k ++ ) {
    spotLight = spotLights[ k ];
    if ( spotLight.color == vec3( 0.0 ) ) continue;
    lampLight( spotLight, lampFaces[ k ], geometryPosition, directLight );
    if ( directLight.visible && FACES( directLight ) ) RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
  }
#endif
`;

/** Bulbs, which shine all round and throw no shadows here. */
const POINTS = /* glsl */ `
#if ( NUM_POINT_LIGHTS > 0 ) && defined( RE_Direct )
  for ( int k = 0; k < NUM_POINT_LIGHTS; k ++ ) {
    if ( pointLights[ k ].color == vec3( 0.0 ) ) continue;
    getPointLightInfo( pointLights[ k ], geometryPosition, directLight );
    if ( FACES( directLight ) ) RE_Direct( directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight );
  }
#endif
`;

/** Whether a light comes from before the surface; a thin cloth is lit from behind too. */
const FACES = /* glsl */ `
#ifdef LETS_LIGHT
#define FACES( light ) true
#else
#define FACES( light ) ( dot( geometryNormal, ( light ).direction ) > 0.0 )
#endif
`;

/** Replaces a piece of three's shader that has to be there. */
function replaced(chunk: string, piece: RegExp, by: string): string {
  if (!piece.test(chunk)) throw new Error(`lampLight: three's shader has no ${piece.source}`);
  return chunk.replace(piece, by);
}

/** A block of three's shader, from the question whether there are such lights to the end that closes it. */
const blockOf = (lights: string): RegExp =>
  new RegExp(
    `#if \\( NUM_${lights}_LIGHTS > 0 \\) && defined\\( RE_Direct \\)[\\s\\S]*?unroll_loop_end\\s*#endif`,
  );

/** three's loops over the lights, with its spots and points lit and shaded as ours, and the moon's shadow. */
export const LAMP_LOOP = (
  [
    [blockOf('POINT'), `${FACES}${POINTS}`],
    [blockOf('SPOT'), SPOTS],
    [
      /directLight\.color \*= [^;]*getShadow\( directionalShadowMap\[ i \][^;]*;/,
      'directLight.color *= moonShadow( directionalShadowMap[ i ], directionalLightShadow.shadowBias, vDirectionalShadowCoord[ i ], directLight.visible && receiveShadow ) * netShare( vWorldPlace, worldWay( directLight.direction ) * 2000.0, 0.0 );',
    ],
  ] as const
).reduce((chunk, [piece, by]) => replaced(chunk, piece, by), ShaderChunk.lights_fragment_begin);
