/** The screens of the crew sheet, in the order of its foot. */
export const CREW_TABS = ['setups', 'overhead', 'power', 'times', 'lists'] as const;
export type CrewTab = (typeof CREW_TABS)[number];

/** The lists of the last screen. */
export const CREW_LISTS = ['packing', 'by setup', 'cautions'] as const;
export type CrewList = (typeof CREW_LISTS)[number];

/** Where somebody is in the crew sheet: what the browser's back button goes back through. */
export interface CrewPlace {
  readonly tab: CrewTab;
  /** Which of the lists is looked at. */
  readonly list: CrewList;
  /** The opened setup, or null. */
  readonly setupId: string | null;
  /** The opened card of a thing, or null. */
  readonly itemId: string | null;
  /** Whether the opened setup's picture fills the window. */
  readonly frameOpen: boolean;
  /** Whether the search lies over everything. */
  readonly searchOpen: boolean;
  /** Whether what can be done with the sheet lies over everything. */
  readonly moreOpen: boolean;
}

export const FIRST_PLACE: CrewPlace = {
  tab: 'setups',
  list: 'packing',
  setupId: null,
  itemId: null,
  frameOpen: false,
  searchOpen: false,
  moreOpen: false,
};

const textOrNull = (value: unknown): string | null => (typeof value === 'string' ? value : null);

/** A place out of the browser's history, which another page of this address may have written; null for anything else. */
export function placeFrom(state: unknown): CrewPlace | null {
  if (typeof state !== 'object' || state === null) return null;
  const found: Partial<Record<keyof CrewPlace, unknown>> = state;
  const tab = CREW_TABS.find((each) => each === found.tab);
  if (!tab) return null;
  return {
    tab,
    list: CREW_LISTS.find((each) => each === found.list) ?? FIRST_PLACE.list,
    setupId: textOrNull(found.setupId),
    itemId: textOrNull(found.itemId),
    frameOpen: found.frameOpen === true,
    searchOpen: found.searchOpen === true,
    moreOpen: found.moreOpen === true,
  };
}
