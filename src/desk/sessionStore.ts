import { createStore } from 'zustand/vanilla';
import { type Guides, guidesOfWords, wordsOfGuides } from './guides';
import { type PictureShows, showsOfWords, wordsOfShows } from './pictureShows';
import { readPreference, readStored, writePreference } from './preferences';

export type RoofView = 'overhead' | 'walk round';
export type SheetName = 'set' | 'blocking' | 'frames' | 'light' | 'night' | 'crew';
export type Theme = 'night' | 'day';
export type LengthUnit = 'm' | 'ft-in';
export type PictureQuality = 'light' | 'full';

export type { Guides };

/** What belongs to this sitting: chosen things and ways of looking, never undone. */
export interface SessionState {
  readonly setupId: string | null;
  /** All that is chosen, in the order in which it was; the last is the one that panels speak of. */
  readonly selectedIds: readonly string[];
  /** The last of `selectedIds`, or null. */
  readonly selectedId: string | null;
  readonly roofView: RoofView;
  readonly sheet: SheetName;
  readonly theme: Theme;
  readonly lengths: LengthUnit;
  readonly guides: Guides;
  /** The frame as the sensor has it, where the lens squeezes; else as it is delivered. */
  readonly squeezed: boolean;
  readonly pictureQuality: PictureQuality;
  readonly pictureShows: PictureShows;
  readonly setSetupId: (setupId: string | null) => void;
  /** Chooses one thing alone, or nothing. */
  readonly setSelectedId: (selectedId: string | null) => void;
  readonly setSelectedIds: (selectedIds: readonly string[]) => void;
  /** Adds a thing to what is chosen, or takes it out. */
  readonly toggleSelected: (id: string) => void;
  readonly setRoofView: (roofView: RoofView) => void;
  readonly setSheet: (sheet: SheetName) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly setLengths: (lengths: LengthUnit) => void;
  readonly setGuides: (guides: Partial<Guides>) => void;
  readonly setSqueezed: (squeezed: boolean) => void;
  readonly setPictureQuality: (pictureQuality: PictureQuality) => void;
  readonly setPictureShows: (changed: Partial<PictureShows>) => void;
}

/** The theme that was chosen here before, else the one that the system asks for. */
function firstTheme(): Theme {
  const chosen = readPreference('theme', ['night', 'day']);
  if (chosen) return chosen;
  const asksForLight =
    typeof matchMedia === 'function' && matchMedia('(prefers-color-scheme: light)').matches;
  return asksForLight ? 'day' : 'night';
}

const selectionOf = (selectedIds: readonly string[]): Pick<SessionState, 'selectedIds' | 'selectedId'> => ({
  selectedIds,
  selectedId: selectedIds.at(-1) ?? null,
});

export const sessionStore = createStore<SessionState>()((set, get) => ({
  setupId: null,
  selectedIds: [],
  selectedId: null,
  roofView: 'overhead',
  sheet: 'frames',
  theme: firstTheme(),
  lengths: readPreference('lengths', ['m', 'ft-in']) ?? 'm',
  guides: guidesOfWords(readStored('guides')),
  squeezed: false,
  pictureQuality: readPreference('picture', ['light', 'full']) ?? 'full',
  pictureShows: showsOfWords(readStored('shows')),
  setSetupId: (setupId) => set({ setupId }),
  setSelectedId: (selectedId) => set(selectionOf(selectedId === null ? [] : [selectedId])),
  setSelectedIds: (selectedIds) => set(selectionOf(selectedIds)),
  toggleSelected: (id) =>
    set(({ selectedIds }) =>
      selectionOf(
        selectedIds.includes(id) ? selectedIds.filter((each) => each !== id) : [...selectedIds, id],
      ),
    ),
  setRoofView: (roofView) => set({ roofView }),
  setSheet: (sheet) => set({ sheet }),
  setTheme: (theme) => {
    writePreference('theme', theme);
    set({ theme });
  },
  setLengths: (lengths) => {
    writePreference('lengths', lengths);
    set({ lengths });
  },
  setGuides: (changed) => {
    const guides = { ...get().guides, ...changed };
    writePreference('guides', wordsOfGuides(guides));
    set({ guides });
  },
  setSqueezed: (squeezed) => set({ squeezed }),
  setPictureQuality: (pictureQuality) => {
    writePreference('picture', pictureQuality);
    set({ pictureQuality });
  },
  setPictureShows: (changed) => {
    const pictureShows = { ...get().pictureShows, ...changed };
    writePreference('shows', wordsOfShows(pictureShows));
    set({ pictureShows });
  },
}));
