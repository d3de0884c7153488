import { removeOpening } from '../../../core/plan/edits/removeOpening';
import { setOpening } from '../../../core/plan/edits/setOpening';
import { itemOf } from '../../../core/plan/items';
import { alongOf, runLength, spotAlong } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength } from '../../../core/units/lengths';
import { readMetres, stepped } from './reading';
import { type Handle, type HandleInput, type Pull, STEP_METRES } from './types';

const spotOf = ({ to }: Pull): [number, number] => [to[0], to[1]];
const rounded = (metres: number, free: boolean): number => (free ? metres : stepped(metres, STEP_METRES));

/** For each opening of the one chosen run: its middle slides along the run, its edge says how wide it is. */
export function openingHandles({ plan, ids, lengths }: HandleInput, called: string): readonly Handle[] {
  const [id] = ids;
  const record = ids.length === 1 && id !== undefined ? itemOf(plan, id)?.record : null;
  if (!record || !('openings' in record) || id === undefined) return [];
  const { path, closed } = record;
  const length = runLength(path, closed);
  return (record.openings ?? []).flatMap((opening, index): readonly Handle[] => {
    const { alongMetres, widthMetres } = opening;
    const of = `opening ${index + 1} of ${called}`;
    const put = (before: Plan, patch: { alongMetres?: number; widthMetres?: number }): Plan =>
      setOpening(before, { id, openingId: opening.id, patch });
    const remove = (before: Plan): Plan => removeOpening(before, { id, openingId: opening.id });
    const edge = alongMetres + widthMetres / 2;
    const widthAt = (pull: Pull): number =>
      rounded(2 * Math.abs(alongOf(path, closed, spotOf(pull)) - alongMetres), pull.free);
    return [
      {
        key: `slide ${opening.id}`,
        kind: 'slide',
        name: `Slide ${of}`,
        at: spotAlong(path, closed, alongMetres).spot,
        figure: formatLength(alongMetres, lengths),
        pull: (before, pull) =>
          put(before, { alongMetres: rounded(alongOf(path, closed, spotOf(pull)), pull.free) }),
        step: (before, [right, down]) =>
          put(before, { alongMetres: alongMetres + (right + down) * STEP_METRES }),
        typed: (before, text, system) => {
          const metres = readMetres(text, system, 0, length);
          return typeof metres === 'string' ? metres : put(before, { alongMetres: metres });
        },
        remove,
      },
      {
        key: `width ${opening.id}`,
        kind: 'width',
        name: `Width of ${of}`,
        at: spotAlong(path, closed, closed ? edge % length : Math.min(edge, length)).spot,
        figure: formatLength(widthMetres, lengths),
        pull: (before, pull) => put(before, { widthMetres: Math.max(STEP_METRES, widthAt(pull)) }),
        step: (before, [right, down]) =>
          put(before, { widthMetres: Math.max(STEP_METRES, widthMetres + (right - down) * STEP_METRES) }),
        typed: (before, text, system) => {
          const metres = readMetres(text, system, 0.05, length);
          return typeof metres === 'string' ? metres : put(before, { widthMetres: metres });
        },
        remove,
      },
    ];
  });
}
