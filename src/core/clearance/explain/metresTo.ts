import { length, subtract, type Vec3 } from '../../form/build/vector';
import type { Explanation } from './types';

/** How long the line of an explanation is from the lens to a place on it, metres. */
export const metresTo = ({ eye }: Explanation, place: Vec3): number => length(subtract(place, eye));
