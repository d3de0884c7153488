import { useCrew } from '../../../desk/crew/useCrew';
import { Icon } from '../../parts/Icon';
import { CrewOffline, NewerSheet } from '../offline/CrewOffline';
import { dayWords } from '../parts/nightWords';

/** The night's name and date, and what can be done with its sheet. */
export function CrewHeader() {
  const title = useCrew((state) => state.plan.title);
  const date = useCrew((state) => state.plan.place.date);
  const theme = useCrew((state) => state.theme);
  const setTheme = useCrew((state) => state.setTheme);
  const openSearch = useCrew((state) => state.openSearch);
  const openMore = useCrew((state) => state.openMore);
  const other = theme === 'night' ? 'day' : 'night';
  return (
    <header className="crew-top">
      <div>
        <h1>{title}</h1>
        <p className="crew-day">
          {dayWords(date)}
          <CrewOffline />
        </p>
      </div>
      <button type="button" className="icon" aria-label="Search" onClick={openSearch}>
        <Icon name="find" />
      </button>
      <button
        type="button"
        className="icon"
        aria-label={other === 'day' ? 'Day theme' : 'Night theme'}
        onClick={() => setTheme(other)}
      >
        <Icon name={other} />
      </button>
      <button type="button" className="crew-more-button" onClick={openMore}>
        More
      </button>
      <NewerSheet />
    </header>
  );
}
