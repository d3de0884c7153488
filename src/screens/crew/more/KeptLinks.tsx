import { useStore } from 'zustand';
import { forgetLink, keptLinksStore } from '../../../desk/crew/kept/keptLinks';
import { openLinkHere } from '../../../desk/crew/ways';
import { dayWords } from '../parts/nightWords';

/** The sheets that this device keeps, without the one that is open. */
export function KeptLinks({ openFragment }: { readonly openFragment: string }) {
  const links = useStore(keptLinksStore, (state) => state.links);
  const others = links.filter(({ fragment }) => fragment !== openFragment);
  if (others.length === 0) return null;
  return (
    <section className="crew-part" aria-label="Other sheets on this phone">
      <h3>Other sheets on this phone</h3>
      <ul className="crew-kept">
        {others.map(({ fragment, title, date }) => (
          <li key={fragment}>
            <button type="button" className="crew-kept-open" onClick={() => openLinkHere(fragment)}>
              <b>{title}</b>
              <span>{dayWords(date)}</span>
            </button>
            <button type="button" aria-label={`Forget it, ${title}`} onClick={() => forgetLink(fragment)}>
              Forget it
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
