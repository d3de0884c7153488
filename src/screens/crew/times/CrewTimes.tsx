import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { fileWord } from '../../../desk/fileWord';
import { nightCalendar } from '../../../exchange/calendar/nightCalendar';
import { wrapAnswer } from '../../sheet/night/order/words';
import { ItemName } from '../page/ItemName';
import { Told } from '../page/Told';
import { useSaving } from '../page/useSaving';
import { Waiting } from '../page/Waiting';
import { useNow } from '../parts/now/useNow';
import { Timeline } from './Timeline';
import { neededCast, nowWords } from './words';
import './times.css';

/** Call, sky, the order of the night by the clock, meal and wrap. */
export function CrewTimes() {
  const plan = useCrew((state) => state.plan);
  const night = useCrewReading((state) => state.night?.night ?? null);
  const sheets = useCrewReading((state) => state.sheets);
  const now = useNow(night);
  const [said, save] = useSaving();
  if (!night) return <Waiting what="The night is being timed." />;
  const { question, figure, rest, isLate } = wrapAnswer(night);
  const cast = neededCast(plan, night, sheets);
  return (
    <div className="crew-page crew-times">
      <h2 className="vh">Times</h2>
      <p className="crew-figure">
        <span>{question}</span>
        <b className={isLate ? 'verm' : undefined}>{figure}</b>
        <span>{rest}</span>
      </p>
      {now === null ? null : (
        <p className="time-now" role="status">
          Now: {nowWords(night, now)}
        </p>
      )}
      <Told heading="To know" told={night.notes.filter(({ standing }) => standing === 'breaks')} />
      <section className="crew-section time-order" aria-labelledby="order-title">
        <h3 id="order-title">The order of the night</h3>
        <Timeline plan={plan} night={night} now={now} />
      </section>
      {cast.length === 0 || sheets.size === 0 ? null : (
        <section className="crew-section" aria-labelledby="cast-title">
          <h3 id="cast-title">The cast</h3>
          <ul className="time-cast">
            {cast.map(({ performerId, label, words }) => (
              <li key={performerId}>
                <ItemName itemId={performerId} label={label} />
                <p>{words}</p>
              </li>
            ))}
          </ul>
        </section>
      )}
      <Told heading="Notes on the night" told={night.notes.filter(({ standing }) => standing !== 'breaks')} />
      <div className="crew-acts">
        <button
          type="button"
          onClick={() =>
            save({
              text: nightCalendar(plan, night),
              type: 'text/calendar',
              what: 'The calendar',
              fileName: `${fileWord(plan.title)}-night.ics`,
            })
          }
        >
          Put it in a calendar
        </button>
      </div>
      <p className="crew-said" role="status">
        {said}
      </p>
    </div>
  );
}
