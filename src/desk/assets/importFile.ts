import { toastStore } from '../toastStore';
import { fileLabel } from './fileLabel';
import { IMPORTING, importModel } from './importModel';
import { importPhoto, PHOTO_FILES } from './importPhoto';

const endsWith = (name: string, endings: readonly string[]): boolean =>
  endings.some((ending) => name.toLowerCase().endsWith(ending));

/** Whether a file is one of those that are taken in beside the plan, by its name and kind. */
export const isImportable = ({ name, type }: File): boolean =>
  endsWith(name, ['.glb', '.gltf', ...PHOTO_FILES.extensions]) ||
  type === 'model/gltf-binary' ||
  PHOTO_FILES.mimeTypes.includes(type);

/**
 * Takes in a file that was dropped or chosen: a GLB goes onto the roof, a photo or a drawing under it. Says whether it
 * did; why it did not is said in a toast, and the plan stays as it was.
 */
export async function importFile(file: File): Promise<boolean> {
  if (endsWith(file.name, PHOTO_FILES.extensions) || PHOTO_FILES.mimeTypes.includes(file.type)) {
    return importPhoto(file);
  }
  if (endsWith(file.name, ['.glb', '.gltf']) || file.type === 'model/gltf-binary') return importModel(file);
  toastStore
    .getState()
    .say(
      `${fileLabel(file.name)} was not imported. A model comes as a .glb, a photo or drawing as JPEG, PNG or WebP.`,
      { tone: 'warn', about: IMPORTING },
    );
  return false;
}
