import type { Plan } from '../../plan/schema/plan';
import { formatNumber, NBSP } from '../../units/numbers';
import { STRIP_METRES, USUAL_PACKING } from './rules';
import { type Counted, oneLine, tallied } from './tally';
import type { PackingNeed } from './types';
import { wetSquareMetres } from './wetArea';

/** Tape for marks, a colour for each performer: marks in one place are one. */
function tape(plan: Plan): readonly PackingNeed[] {
  const found = plan.cast.flatMap(({ id, label, marks }): Counted[] => {
    const places = new Set(marks.map(({ at, floorMetres = 0 }) => `${at.join(' ')} ${floorMetres}`)).size;
    if (places === 0) return [];
    const metres = places * 2 * STRIP_METRES;
    return [
      {
        label: `Tape for marks of ${label}, a colour of its own`,
        itemId: id,
        note: `${places} marks`,
        count: metres,
      },
    ];
  });
  return tallied('floor', 'tape', found, 'metres');
}

/** What lies on the floor: tape and water. @param wettings how often the ground is wetted in the night */
export function ofFloor(plan: Plan, wettings: number): readonly PackingNeed[] {
  const millimetres = plan.night?.packing?.waterMillimetres ?? USUAL_PACKING.waterMillimetres;
  const area = wetSquareMetres(plan);
  const times = Math.max(1, wettings);
  // A millimetre over a square metre is a litre.
  const litres = Math.ceil(area * millimetres * times - 1e-6);
  return [
    ...tape(plan),
    ...oneLine('floor', 'Water for the wet-down', litres, {
      unit: 'litres',
      spared: 'water',
      detail: `${formatNumber(area, 0)}${NBSP}m² × ${millimetres}${NBSP}mm${times > 1 ? ` × ${times} times` : ''}`,
    }),
  ];
}
