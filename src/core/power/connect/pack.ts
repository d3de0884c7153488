/** Something that is to be given a place, in the order of `places`' worth to it. */
export interface Wanted {
  readonly id: string;
  /** How much it takes of all that a place draws on. */
  readonly size: number;
  /** Places by their number, the best first. */
  readonly places: readonly number[];
}

/** A socket's circuit: what it draws on, by number; each has room of its own. */
export interface Place {
  readonly draws: readonly number[];
}

/** The most tries before what was found so far is taken. */
const MOST_TRIES = 20000;
/** What fits to the last bit fits. */
const SLACK = 1e-9;

/**
 * Gives everything a place that has a free socket and room in all that it draws on, the largest first, each to the best
 * that leaves a place to all others (a search that takes steps back). Where not all can have one, as many as a single
 * pass in that order places, and the rest is left out.
 *
 * @param sockets free at each place
 * @param room left in each thing that is drawn on
 * @returns the place of each, by id
 */
export function packed(
  wanted: readonly Wanted[],
  places: readonly Place[],
  sockets: readonly number[],
  room: readonly number[],
): ReadonlyMap<string, number> {
  const order = wanted.toSorted((a, b) => b.size - a.size);
  const free = [...sockets];
  const left = [...room];
  const fits = (place: number, size: number): boolean =>
    free[place] > 0 && places[place].draws.every((each) => left[each] >= size - SLACK);
  const take = (place: number, size: number, sign: 1 | -1): void => {
    free[place] -= sign;
    for (const each of places[place].draws) left[each] -= sign * size;
  };
  const given = new Map<string, number>();
  let tries = 0;
  const search = (k: number): boolean => {
    if (k === order.length) return true;
    const { id, size, places: mine } = order[k];
    for (const place of mine) {
      tries += 1;
      if (tries > MOST_TRIES) return false;
      if (!fits(place, size)) continue;
      take(place, size, 1);
      given.set(id, place);
      if (search(k + 1)) return true;
      given.delete(id);
      take(place, size, -1);
    }
    return false;
  };
  if (search(0)) return given;
  given.clear();
  for (const { id, size, places: mine } of order) {
    const place = mine.find((each) => fits(each, size));
    if (place === undefined) continue;
    take(place, size, 1);
    given.set(id, place);
  }
  return given;
}
