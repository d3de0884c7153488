import { useCrewReading } from '../../../desk/crew/useCrew';
import { firstTimes } from '../parts/nightWords';

const WORDS = ['call', 'sunset', 'dark', 'wrap'] as const;

/** Call, sunset, dark and wrap along the top. */
export function CrewTimesRow() {
  const night = useCrewReading((state) => state.night?.night ?? null);
  const times = new Map(night ? firstTimes(night) : []);
  return (
    <dl className="crew-sky" aria-label="The night by the clock">
      {WORDS.map((word) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd>{times.get(word) ?? '\u2212'}</dd>
        </div>
      ))}
    </dl>
  );
}
