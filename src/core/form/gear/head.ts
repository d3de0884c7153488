import type { Plan } from '../../plan/schema/plan';
import { compose, rolledBy, standingAt, tiltedBy } from '../build/placement';
import type { PlacedPart } from '../types';
import { headPlace, yokeMetres } from './headPlace';
import { housingOf } from './housings';
import { fitModifier } from './modifier';
import { placeParts } from './part';
import { type GearOf, headClassOf } from './references';
import { yokeOf } from './yoke';

/** A lamp in its yoke, turned so that its axis goes through the aim, with its modifier in front. World coordinates. */
export function headParts(head: GearOf<'head'>, plan: Plan): PlacedPart[] {
  const headClass = headClassOf(head, plan);
  const { pivot, hangs, headingDegrees, tiltDegrees } = headPlace(head, headClass, plan);
  const housing = housingOf(headClass);
  const fitted = head.modifier ? fitModifier(head.modifier, housing, headClass) : null;
  const panned = standingAt(pivot, headingDegrees);
  return [
    ...placeParts(
      [yokeOf(headClass, yokeMetres(head, headClass))],
      hangs ? compose(panned, rolledBy(180)) : panned,
    ),
    ...placeParts(
      [...housing.parts, ...(fitted?.encloses ? [] : housing.glow), ...(fitted?.parts ?? [])],
      compose(panned, tiltedBy(tiltDegrees)),
    ),
  ];
}
