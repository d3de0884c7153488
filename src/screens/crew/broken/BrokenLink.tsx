import { useCrew } from '../../../desk/crew/useCrew';
import { openEditor } from '../../../desk/crew/ways';
import { KeptLinks } from '../more/KeptLinks';

/** What is said in place of a sheet whose link cannot be read, and the ways on. */
export function BrokenLink() {
  const shows = useCrew((state) => state.shows);
  const trouble = useCrew((state) => state.trouble);
  const fragment = useCrew((state) => state.fragment);
  return (
    <main className="crew-broken">
      <h1>{shows === 'stopped' ? 'The link was not read' : 'This link does not open'}</h1>
      <p>{trouble}</p>
      <p className="crew-acts">
        <button type="button" className="do" onClick={() => location.reload()}>
          Load it again
        </button>
        <button type="button" onClick={openEditor}>
          Open the editor
        </button>
      </p>
      <KeptLinks openFragment={fragment} />
    </main>
  );
}
