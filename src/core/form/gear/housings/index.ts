import type { HeadClass } from '../../../plan/schema/kit';
import { bulbHousing } from './bulb';
import { bulkheadHousing } from './bulkhead';
import { fresnelHousing } from './fresnel';
import { panelHousing } from './panel';
import { signHousing } from './sign';
import { spotHousing } from './spot';
import { streetHousing } from './street';
import { tubeHousing } from './tube';
import type { Housing, MakeHousing } from './types';

const HOUSINGS: Readonly<Record<HeadClass['form'], MakeHousing>> = {
  spot: spotHousing,
  fresnel: fresnelHousing,
  panel: panelHousing,
  tube: tubeHousing,
  bulb: bulbHousing,
  bulkhead: bulkheadHousing,
  sign: signHousing,
  street: streetHousing,
};

/** The body of a lamp of a class; `colour` tints what glows. */
export const housingOf = (headClass: HeadClass, colour: string | null = null): Housing =>
  HOUSINGS[headClass.form](headClass.size, colour);
