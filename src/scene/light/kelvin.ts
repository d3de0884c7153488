/** Linear Rec. 709 (sRGB primaries), red, green, blue. */
export type LinearColour = readonly [number, number, number];

/** Relative luminance of a linear colour: the middle row of the Rec. 709 matrix to XYZ. */
export function luminanceOf([red, green, blue]: LinearColour): number {
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** The colour scaled to a luminance of 1, so that an intensity multiplied by it keeps its candela. */
export function ofUnitLuminance(colour: LinearColour): LinearColour {
  const luminance = Math.max(1e-4, luminanceOf(colour));
  return [colour[0] / luminance, colour[1] / luminance, colour[2] / luminance];
}

/**
 * Colour of a full radiator of 1,667 to 25,000 K (clamped to that range), of unit luminance.
 * Chromaticity by the cubic spline of Kim and others (2002), coefficients from memory; within about 0.001 in x and y.
 */
export function colourOfKelvin(kelvin: number): LinearColour {
  const t = Math.min(25000, Math.max(1667, kelvin));
  const x =
    t <= 4000
      ? -0.2661239e9 / t ** 3 - 0.2343589e6 / t ** 2 + 0.8776956e3 / t + 0.17991
      : -3.0258469e9 / t ** 3 + 2.1070379e6 / t ** 2 + 0.2226347e3 / t + 0.24039;
  const y = planckY(t, x);
  const [bigX, bigZ] = [x / y, (1 - x - y) / y];
  const red = 3.2404542 * bigX - 1.5371385 - 0.4985314 * bigZ;
  const green = -0.969266 * bigX + 1.8760108 + 0.041556 * bigZ;
  const blue = 0.0556434 * bigX - 0.2040259 + 1.0572252 * bigZ;
  // A candle lies outside the screen's gamut: what it cannot show of the blue is left out.
  return ofUnitLuminance([Math.max(0, red), Math.max(0, green), Math.max(0, blue)]);
}

function planckY(t: number, x: number): number {
  if (t <= 2222) return -1.1063814 * x ** 3 - 1.3481102 * x ** 2 + 2.18555832 * x - 0.20219683;
  if (t <= 4000) return -0.9549476 * x ** 3 - 1.37418593 * x ** 2 + 2.09137015 * x - 0.16748867;
  return 3.081758 * x ** 3 - 5.8733867 * x ** 2 + 3.75112997 * x - 0.37001483;
}

/** `#rrggbb` as a linear colour of its own brightness. */
export function colourOfHex(hex: string): LinearColour {
  const channel = (at: number) => {
    const value = Number.parseInt(hex.slice(at, at + 2), 16) / 255;
    return value <= 0.04045 ? value / 12.92 : ((value + 0.055) / 1.055) ** 2.4;
  };
  return [channel(1), channel(3), channel(5)];
}

/** Colour of a lamp, of unit luminance: its tint where it has one, else its colour temperature. */
export function colourOfLamp(lamp: { readonly kelvin: number; readonly tint: string | null }): LinearColour {
  return lamp.tint ? ofUnitLuminance(colourOfHex(lamp.tint)) : colourOfKelvin(lamp.kelvin);
}
