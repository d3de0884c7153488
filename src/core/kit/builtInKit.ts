import type { Kit } from '../plan/schema/kit';
import { BODIES } from './bodies';
import { HEADS } from './heads';
import { LENSES } from './lenses';
import { STANDS } from './stands';

/** What the program knows without being told: formats and classes by their generic names. A plan copies what it uses. */
export const BUILT_IN_KIT: Kit = {
  bodies: [...BODIES],
  lenses: [...LENSES],
  heads: [...HEADS],
  stands: [...STANDS],
};
