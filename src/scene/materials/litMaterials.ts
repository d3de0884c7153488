import { Color, MeshStandardMaterial } from 'three';
import { colourOfHex, ofUnitLuminance } from '../light/kelvin';

/** Luminance of a lit room behind a window and of a monitor, cd/m²; common practice, no source. */
const WINDOW_LUMINANCE = 7;
const SCREEN_LUMINANCE = 22;

/** A window with the light of its room, in the part's colour; how bright differs from colour to colour. */
export function makeWindow(colour: string | null): MeshStandardMaterial {
  const [red, green, blue] = ofUnitLuminance(colourOfHex(colour ?? '#f2c58c'));
  const own = Number.parseInt((colour ?? '#f2c58c').slice(1), 16) % 97;
  return new MeshStandardMaterial({
    color: new Color('#14171c'),
    roughness: 0.3,
    emissive: new Color(red, green, blue),
    emissiveIntensity: WINDOW_LUMINANCE * (0.4 + (own / 97) * 1.6),
  });
}

export function makeScreen(): MeshStandardMaterial {
  return new MeshStandardMaterial({
    color: new Color('#0c0e12'),
    roughness: 0.25,
    emissive: new Color(0.75, 1, 1.5),
    emissiveIntensity: SCREEN_LUMINANCE,
  });
}
