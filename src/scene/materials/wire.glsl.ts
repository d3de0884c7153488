/** Woven wire, laid as diamonds: a drawn wire where a pixel is finer than the cell, else a veil of the same openness. */
export const WIRE_DECLARATIONS = /* glsl */ `
uniform vec2 wire;
float wireShare(vec2 m, float footprint) {
  vec2 turned = vec2(m.x + m.y, m.x - m.y) * 0.70710678 / wire.x;
  vec2 off = abs(fract(turned) - 0.5) * wire.x;
  float middle = wire.x * 0.5;
  vec2 fromWire = middle - off;
  float soft = max(footprint * 0.7, wire.y * 0.15);
  vec2 line = 1.0 - smoothstep(vec2(wire.y * 0.5 - soft * 0.5), vec2(wire.y * 0.5 + soft * 0.5), fromWire);
  float drawn = 1.0 - (1.0 - line.x) * (1.0 - line.y);
  float open = 1.0 - wire.y / wire.x;
  float veil = 1.0 - open * open;
  return mix(drawn, veil, smoothstep(0.25, 0.6, footprint / wire.x));
}
`;
export const WIRE_OPACITY = /* glsl */ `
diffuseColor.a = wireShare(laid, footprint);
if (diffuseColor.a < 0.02) discard;
`;
