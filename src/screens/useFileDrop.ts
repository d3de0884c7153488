import { useEffect } from 'react';
import { importFile, isImportable } from '../desk/assets/importFile';
import { openPlanFile } from '../desk/files';

const holdsFiles = (event: DragEvent): boolean => event.dataTransfer?.types.includes('Files') ?? false;

function allow(event: DragEvent): void {
  if (holdsFiles(event)) event.preventDefault();
}

function drop(event: DragEvent): void {
  if (!holdsFiles(event)) return;
  event.preventDefault();
  const file = event.dataTransfer?.files[0];
  if (file) void (isImportable(file) ? importFile(file) : openPlanFile(file));
}

/** A plan file dropped anywhere on the page is opened; a model or a picture goes onto the roof. */
export function useFileDrop(): void {
  useEffect(() => {
    window.addEventListener('dragover', allow);
    window.addEventListener('drop', drop);
    return () => {
      window.removeEventListener('dragover', allow);
      window.removeEventListener('drop', drop);
    };
  }, []);
}
