import { headClassOf } from '../../form/gear/references';
import { CONVERSION_GELS, DIFFUSION_SHEETS } from '../../kit/gels';
import type { Before } from '../../plan/schema/before';
import type { Plan } from '../../plan/schema/plan';
import { formatSigned, NBSP } from '../../units/numbers';
import { formatShare } from '../../units/shares';
import { type Counted, tallied } from './tally';
import type { PackingNeed } from './types';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** The sheets and scrims before one lamp. */
function sheets(itemId: string, note: string, before: Before): readonly Counted[] {
  const { mired, density, diffusion, doubles = 0, singles = 0 } = before;
  const gel = CONVERSION_GELS.find((each) => each.mired === mired)?.label;
  const sheet = DIFFUSION_SHEETS.find(
    ({ transmission, spreadDegrees }) =>
      transmission === diffusion?.transmission && spreadDegrees === diffusion.spreadDegrees,
  )?.label;
  const one = (label: string, count = 1): Counted => ({ label, itemId, note, count });
  return [
    ...(mired ? [one(`Gel, ${gel ?? `${formatSigned(mired, 0)}${NBSP}mired`}`)] : []),
    ...(density ? [one(`Gel, neutral, density ${density}`)] : []),
    ...(diffusion
      ? [
          one(
            `Diffusion, ${sheet ?? `${formatShare(diffusion.transmission)} through, ${diffusion.spreadDegrees}°`}`,
          ),
        ]
      : []),
    ...(doubles > 0 ? [one('Scrim, double', doubles)] : []),
    ...(singles > 0 ? [one('Scrim, single', singles)] : []),
  ];
}

/** Lamps by their class, what is worn before them, and the lamps of the place, which are only to be seen to. */
export function ofLight(plan: Plan): readonly PackingNeed[] {
  const { gear } = plan;
  const heads = gear.filter((each) => each.kind === 'head');
  const practicals = gear.flatMap((each): Counted[] => {
    if (each.kind !== 'practical' && each.kind !== 'bulb string') return [];
    const note = each.supply === 'cord' ? each.label : `${each.label}, of the place`;
    const count = each.kind === 'bulb string' ? each.bulbs : 1;
    return [{ label: headClassOf(each, plan).label, itemId: each.id, note, count }];
  });
  const worn = gear.flatMap((each) =>
    'before' in each && each.before ? sheets(each.id, each.label, each.before) : [],
  );
  return [
    ...tallied(
      'light',
      'heads',
      heads.map((head) => ({ label: headClassOf(head, plan).label, itemId: head.id, note: head.label })),
    ),
    ...tallied(
      'light',
      'modifiers',
      heads.flatMap((head) =>
        head.modifier
          ? [
              {
                label: `${capital(head.modifier)} for ${headClassOf(head, plan).label}`,
                itemId: head.id,
                note: head.label,
              },
            ]
          : [],
      ),
    ),
    ...tallied('light', 'gels', worn),
    ...tallied('light', 'practicals', practicals),
  ];
}
