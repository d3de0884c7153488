import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../core/plan/schema/plan';
import type { LengthSystem } from '../../core/units/lengths';
import { EMPTY_PLAN } from '../emptyPlan';
import { readPreference, writePreference } from '../preferences';
import { type CrewList, type CrewPlace, type CrewTab, FIRST_PLACE } from './place';
import { type Theme, themeNow } from './themeOfHour';

/** Whose things are asked for. */
export const DEPARTMENTS = ['all', 'camera', 'light', 'grip', 'power', 'cast'] as const;
export type Department = (typeof DEPARTMENTS)[number];

/** What the crew sheet shows: that it reads its link, the plan out of it, or why there is none. */
type CrewShows = 'reading' | 'plan' | 'stopped' | 'broken';

export interface CrewState extends CrewPlace {
  readonly shows: CrewShows;
  /** The link's plan as it is told; an empty one until it is read, and where it is broken. */
  readonly plan: Plan;
  /** The same as it was written: what is saved and copied. */
  readonly asWritten: Plan;
  /** The link's fragment, without its #. */
  readonly fragment: string;
  /** What the link left out of the plan, as sentences. */
  readonly leftOut: readonly string[];
  /** Why the link cannot be opened, as a sentence; empty where it can. */
  readonly trouble: string;
  readonly department: Department;
  readonly theme: Theme;
  /** Metres, or feet and inches, as on the desk of this device. */
  readonly lengths: LengthSystem;
  /** Goes to a tab, and out of whatever is opened over it. */
  readonly go: (tab: CrewTab) => void;
  /** Looks at another of the lists, which the browser's back button does not go back through. */
  readonly setList: (list: CrewList) => void;
  /** Opens a setup, or closes it. */
  readonly openSetup: (setupId: string | null) => void;
  /** Opens the card of a thing, or closes it. */
  readonly openItem: (itemId: string | null) => void;
  /** Opens a setup, and has its picture fill the window. */
  readonly openFrame: (setupId: string) => void;
  /** Goes to a place, closing whatever it does not name. */
  readonly goTo: (place: Partial<CrewPlace>) => void;
  readonly openSearch: () => void;
  readonly openMore: () => void;
  /** Leaves what was opened last, as the browser's back button does. */
  readonly back: () => void;
  readonly setDepartment: (department: Department) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly setLengths: (lengths: LengthSystem) => void;
}

const PLACE_KEYS = ['tab', 'list', 'setupId', 'itemId', 'frameOpen', 'searchOpen', 'moreOpen'] as const;
const placeOf = ({ tab, list, setupId, itemId, frameOpen, searchOpen, moreOpen }: CrewPlace): CrewPlace => ({
  tab,
  list,
  setupId,
  itemId,
  frameOpen,
  searchOpen,
  moreOpen,
});

/** Whether somebody only went from one to the next, or out of a list that led there: back then goes past that. */
const goesInstead = (before: CrewPlace, place: CrewPlace): boolean =>
  before.searchOpen ||
  before.moreOpen ||
  (before.setupId !== null && place.setupId !== null && before.setupId !== place.setupId);

export const crewStore = createStore<CrewState>()((set, get) => {
  /** Goes on to a place, which the browser's back button leaves again. */
  const goOn = (changed: Partial<CrewPlace>): void => {
    const before = placeOf(get());
    const place = { ...before, ...changed };
    if (PLACE_KEYS.every((key) => place[key] === before[key])) return;
    set(place);
    if (goesInstead(before, place)) history.replaceState(place, '');
    else history.pushState(place, '');
  };
  return {
    ...FIRST_PLACE,
    shows: 'reading',
    plan: EMPTY_PLAN,
    asWritten: EMPTY_PLAN,
    fragment: '',
    leftOut: [],
    trouble: '',
    department: 'all',
    theme: themeNow(null),
    lengths: readPreference('lengths', ['m', 'ft-in']) ?? 'm',
    go: (tab) => goOn({ ...FIRST_PLACE, tab }),
    setList: (list) => {
      set({ list });
      history.replaceState(placeOf(get()), '');
    },
    openSetup: (setupId) => goOn({ ...FIRST_PLACE, tab: get().tab, list: get().list, setupId }),
    openItem: (itemId) => goOn({ itemId, searchOpen: false, moreOpen: false }),
    openFrame: (setupId) => goOn({ setupId, frameOpen: true }),
    goTo: (place) => goOn({ ...FIRST_PLACE, ...place }),
    openSearch: () => goOn({ searchOpen: true, moreOpen: false }),
    openMore: () => goOn({ moreOpen: true, searchOpen: false }),
    back: () => history.back(),
    setDepartment: (department) => set({ department }),
    setTheme: (theme) => {
      writePreference('crewTheme', theme);
      set({ theme });
    },
    setLengths: (lengths) => {
      writePreference('lengths', lengths);
      set({ lengths });
    },
  };
});
