import { Color, MeshStandardMaterial } from 'three';
import { SCREEN_LUMINANCE } from '../../core/light/surroundings';

export function makeScreen(): MeshStandardMaterial {
  return new MeshStandardMaterial({
    color: new Color('#0c0e12'),
    roughness: 0.25,
    emissive: new Color(0.75, 1, 1.5),
    emissiveIntensity: SCREEN_LUMINANCE,
  });
}
