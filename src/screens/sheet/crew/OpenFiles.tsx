import { useStore } from 'zustand';
import { OPEN_FILES } from '../../../desk/openFiles/kinds';
import { openFilesStore, saveOpenFile } from '../../../desk/openFiles/saving';
import './openFiles.css';

/** Saves the plan in open formats that other programs read: what each is for, and a button for it. */
export function OpenFiles() {
  const making = useStore(openFilesStore, (state) => state.making);
  return (
    <section className="open-files" aria-labelledby="open-files-title">
      <h3 id="open-files-title">Open files</h3>
      <p className="making" role="status">
        {making === null ? '' : 'Making the file'}
      </p>
      <ul>
        {OPEN_FILES.map((file) => (
          <li key={file.what}>
            {/* One that waits keeps the focus of who pressed it. */}
            <button type="button" aria-disabled={making !== null} onClick={() => void saveOpenFile(file)}>
              {making === file.what ? 'Making it' : file.act}
            </button>
            <span>{file.use}</span>
          </li>
        ))}
      </ul>
    </section>
  );
}
