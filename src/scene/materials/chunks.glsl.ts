/** Hands the shape's own coordinates on: things that move carry their pattern with them. */
export const OWN_VERTEX_DECLARATIONS = /* glsl */ `
varying vec3 vOwnPosition;
varying vec3 vOwnNormal;
varying vec3 vWorldPlace;
`;
export const OWN_VERTEX = /* glsl */ `
vOwnPosition = position;
vOwnNormal = normal;
`;
/** Where the corner is in the world, once the joints have moved it. */
export const WORLD_PLACE_VERTEX = /* glsl */ `
vWorldPlace = (modelMatrix * vec4(transformed, 1.0)).xyz;
`;
export const OWN_FRAGMENT_DECLARATIONS = /* glsl */ `
varying vec3 vOwnPosition;
varying vec3 vOwnNormal;
varying vec3 vWorldPlace;
`;

/** Metres along the surface: over lying faces x and z, over standing ones along the wall and up. */
export const LAID_OUT = /* glsl */ `
vec2 laidOut(vec3 at, vec3 facing) {
  if (abs(facing.y) > 0.7) return at.xz;
  if (isRound == 1) return vec2(atan(facing.z, facing.x) * max(0.05, length(at.xz)), at.y);
  return vec2(dot(at.xz, normalize(vec2(-facing.z, facing.x))), at.y);
}
`;

/** Turns the normal along a height given per pixel (bump mapping of unparametrised surfaces, Mikkelsen 2010). */
export const RAISED = /* glsl */ `
vec3 raised(vec3 place, vec3 facing, float relief) {
  vec3 acrossX = dFdx(place);
  vec3 acrossY = dFdy(place);
  vec3 first = cross(acrossY, facing);
  vec3 second = cross(facing, acrossX);
  float area = dot(acrossX, first);
  if (abs(area) < 1e-12) return facing;
  vec3 slope = sign(area) * (dFdx(relief) * first + dFdy(relief) * second);
  return normalize(abs(area) * facing - slope);
}
`;

/**
 * What smooth and metal surfaces mirror of the sky where no lamp shines: two tones and the glow of the town between.
 * Luminances in cd/m², the same as the dome's.
 */
export const SKYWARD = /* glsl */ `
uniform vec3 skyZenith;
uniform vec3 skyHorizon;
uniform vec3 skyGround;
vec3 skyward(float height) {
  float glow = exp(-abs(height) * 5.0);
  return height > 0.0 ? mix(skyZenith, skyHorizon, glow) : mix(skyGround, skyHorizon, glow * glow);
}
`;

/** Adds the light that a thin cloth lets through from behind. */
export const CLOTH_LIGHT = /* glsl */ `
uniform float lets;
void RE_Direct_Cloth(const in IncidentLight directLight, const in vec3 geometryPosition, const in vec3 geometryNormal, const in vec3 geometryViewDir, const in vec3 geometryClearcoatNormal, const in PhysicalMaterial material, inout ReflectedLight reflectedLight) {
  RE_Direct_Physical(directLight, geometryPosition, geometryNormal, geometryViewDir, geometryClearcoatNormal, material, reflectedLight);
  float behind = saturate(-dot(geometryNormal, directLight.direction));
  reflectedLight.directDiffuse += behind * lets * directLight.color * BRDF_Lambert(material.diffuseContribution);
}
#define LETS_LIGHT
#undef RE_Direct
#define RE_Direct RE_Direct_Cloth
`;
