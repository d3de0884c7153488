import type { NightReport, SetupReport } from '../../core/report/types';
import { concernByVerdict, isLetShow } from './concerns';

/** What an edit did to the frames: the worst news first, else the best. */
export interface Outcome {
  readonly sentence: string;
  readonly isWorse: boolean;
  /** Where to look. */
  readonly setupId: string;
  readonly itemId: string;
}

interface Place {
  readonly setupId: string;
  readonly itemId: string;
  readonly label: string;
  readonly isLetShow: boolean;
}

/** Items in the way: what is close asks for care, but is no news. */
function inTheWay(setups: readonly SetupReport[]): ReadonlyMap<string, Place> {
  const places = setups.flatMap((setup) =>
    setup.items.flatMap((item): [string, Place][] => {
      // What somebody lets show, or does not any more, goes nowhere.
      const concern = concernByVerdict(item);
      if (concern === null || concern === 'close') return [];
      return [
        [
          `${setup.id} ${item.id}`,
          { setupId: setup.id, itemId: item.id, label: item.label, isLetShow: isLetShow(item) },
        ],
      ];
    }),
  );
  return new Map(places);
}

/** `A`, `A and B`, `A, B and C`. */
function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

const distinct = (words: readonly string[]): readonly string[] => [...new Set(words)];

/**
 * Compares two reports of the night, before and after an edit; null when nothing came into the way or left it.
 * @param toldId a setup whose changes are told otherwise, and left out
 */
export function outcomeOf(
  before: NightReport,
  after: NightReport,
  letterOf: (setupId: string) => string,
  toldId: string | null = null,
): Outcome | null {
  const was = inTheWay(before.setups);
  const is = inTheWay(after.setups);
  const arisen = [...is]
    .filter(([key, place]) => !was.has(key) && !place.isLetShow && place.setupId !== toldId)
    .map(([, place]) => place);
  const stillThere = new Set(after.setups.map(({ id }) => id).filter((id) => id !== toldId));
  const gone = [...was]
    .filter(([key, { setupId }]) => !is.has(key) && stillThere.has(setupId))
    .map(([, place]) => place);
  const [worst] = arisen;
  if (worst) {
    const labels = distinct(arisen.map(({ label }) => label));
    const letters = listed(distinct(arisen.map(({ setupId }) => letterOf(setupId))).toSorted());
    const what = labels.length === 1 ? worst.label : `${labels.length} items`;
    return { sentence: `That puts ${what} in the way of ${letters}.`, isWorse: true, ...placeOf(worst) };
  }
  const [best] = gone;
  if (!best) return null;
  const labels = distinct(gone.map(({ label }) => label));
  const letters = listed(distinct(gone.map(({ setupId }) => letterOf(setupId))).toSorted());
  const stays = [...is.values()].some(({ itemId }) => gone.some((place) => place.itemId === itemId));
  const verb = labels.length === 1 ? 'is' : 'are';
  const where = stays ? `of ${letters}` : 'in all setups';
  const what = labels.length > 3 ? `${labels.length} items` : listed(labels);
  return { sentence: `${what} ${verb} out of the way ${where}.`, isWorse: false, ...placeOf(best) };
}

const placeOf = ({ setupId, itemId }: Place): { readonly setupId: string; readonly itemId: string } => ({
  setupId,
  itemId,
});
