import { pow } from '../../core/units/steadyMath';

/**
 * The linear red, green and blue, 0..1, of a colour as `#rrggbb` in the sRGB encoding.
 * From memory: IEC 61966-2-1, linear below 0.04045, else the power 2.4 of (c + 0.055)/1.055.
 */
export function linearColour(colour: string): [number, number, number] {
  const channel = (at: number): number => {
    const encoded = Number.parseInt(colour.slice(at, at + 2), 16) / 255;
    return encoded <= 0.04045 ? encoded / 12.92 : pow((encoded + 0.055) / 1.055, 2.4);
  };
  return [channel(1), channel(3), channel(5)];
}
