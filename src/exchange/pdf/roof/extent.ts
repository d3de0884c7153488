import { footprintOf } from '../../../core/form/fromAbove/footprint';
import { spanOf, stateAt } from '../../../core/optics/camera';
import { itemsOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import { boxOf } from '../boxes';
import type { Ground } from './sheetScale';

/** What stands no farther off the decks than this is on the sheet with them, metres. */
const BESIDE_METRES = 3;
/** Paper around it, metres of the roof. */
const MARGIN_METRES = 0.4;

const around = (spots: readonly (readonly [number, number])[]): Ground | null =>
  spots.length === 0 ? null : boxOf(spots);

const grown = ([left, top, right, bottom]: Ground, by: number): Ground => [
  left - by,
  top - by,
  right + by,
  bottom + by,
];

/** The part of the world that goes on the sheet: the decks with what stands on them and near; without a deck, all but the skyline. */
export function extentOf(plan: Plan): Ground {
  const spotsOf = itemsOf(plan).flatMap((item) =>
    item.section === 'cast' || item.record.kind === 'skyline block'
      ? []
      : [{ isDeck: item.record.kind === 'deck', outline: footprintOf(item, plan).outline }],
  );
  const cameras = plan.setups.map((setup): readonly [number, number] => {
    const { position } = stateAt(plan, setup, spanOf(plan, setup)[0]);
    return [position[0], position[2]];
  });
  const marks = plan.cast.flatMap(({ marks: own }) =>
    own.map(({ at }): readonly [number, number] => [at[0], at[1]]),
  );
  const decks = around(spotsOf.filter(({ isDeck }) => isDeck).flatMap(({ outline }) => outline));
  const all = [...spotsOf.flatMap(({ outline }) => outline), ...cameras, ...marks];
  if (!decks) return grown(around(all) ?? [-5, -5, 5, 5], MARGIN_METRES);
  const near = grown(decks, BESIDE_METRES);
  const beside = all.filter(([x, z]) => x >= near[0] && x <= near[2] && z >= near[1] && z <= near[3]);
  return grown(around([[decks[0], decks[1]], [decks[2], decks[3]], ...beside]) ?? decks, MARGIN_METRES);
}
