import { chooseModelFile } from '../../../desk/assets/importModel';
import { choosePhotoFile } from '../../../desk/assets/importPhoto';
import { placeFirstCamera } from '../../../desk/placing';
import type { IconName } from '../../parts/Icon';
import { matches } from '../list/rows';

/** What stands among the entries and is no entry: it is done at once. */
export interface Extra {
  readonly id: string;
  readonly word: string;
  readonly name: string;
  readonly icon: IconName;
  readonly act: () => void;
}

const CAMERA: Extra = {
  id: 'camera',
  word: 'camera',
  name: 'Place a camera',
  icon: 'camera',
  act: placeFirstCamera,
};

const MODEL: Extra = {
  id: 'imported-model',
  word: 'imported model',
  name: 'Imported model: choose a file',
  icon: 'model',
  act: () => void chooseModelFile(),
};

const PHOTO: Extra = {
  id: 'photo',
  word: 'photo of the roof',
  name: 'Photo of the roof: choose a file',
  icon: 'photo',
  act: () => void choosePhotoFile(),
};

const EXTRAS: Readonly<Record<string, readonly Extra[]>> = {
  'Set pieces': [MODEL, PHOTO],
  Camera: [CAMERA],
};

/** The extras are found by a search by their names. */
export const extrasOf = (group: string, words: readonly string[]): readonly Extra[] =>
  (EXTRAS[group] ?? []).filter(({ name }) => matches(words, [name]));
