import { useState } from 'react';
import { saveText, type TextFile } from '../../../desk/share/saveText';

/** Saves a text as a file, with what came of it as a sentence to be said. */
export function useSaving(): readonly [said: string, save: (file: TextFile) => void] {
  const [said, setSaid] = useState('');
  const save = (file: TextFile): void => {
    setSaid('');
    void saveText(file).then(setSaid);
  };
  return [said, save];
}
