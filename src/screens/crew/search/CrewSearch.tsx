import { useDeferredValue, useEffect, useMemo, useRef, useState } from 'react';
import { entriesOf, found } from '../../../desk/crew/search';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Layer } from '../shell/Layer';

/** More than this many are not listed: another word leaves fewer. */
const MOST_LISTED = 60;

const countWords = (count: number): string =>
  count > MOST_LISTED ? `the first ${MOST_LISTED} of ${count} found` : `${count} found`;

/** Finds anything of the night by its words, and opens the screen that it is on. */
export function CrewSearch() {
  const plan = useCrew((state) => state.plan);
  const goTo = useCrew((state) => state.goTo);
  const packing = useCrewReading((state) => state.night?.packing);
  const cautions = useCrewReading((state) => state.cautions);
  const [text, setText] = useState('');
  const asked = useDeferredValue(text);
  const field = useRef<HTMLInputElement>(null);
  useEffect(() => field.current?.focus(), []);
  const entries = useMemo(() => entriesOf(plan, packing ?? [], cautions ?? []), [plan, packing, cautions]);
  const results = useMemo(() => found(entries, asked), [entries, asked]);
  return (
    <Layer label="Search">
      <input
        ref={field}
        type="search"
        className="crew-find"
        aria-label="What to find"
        placeholder="stand, Vera, sandbag"
        autoComplete="off"
        enterKeyHint="search"
        value={text}
        onChange={(event) => setText(event.target.value)}
      />
      <p role="status" className="q crew-found-count">
        {asked.trim() === '' ? 'Setups, things, people, lists and cautions.' : countWords(results.length)}
      </p>
      <ul className="crew-found">
        {results.slice(0, MOST_LISTED).map(({ key, kind, label, detail, to }) => (
          <li key={key}>
            <button type="button" onClick={() => goTo(to)}>
              <b>{label}</b>
              <span>{[kind, detail].filter(Boolean).join(', ')}</span>
            </button>
          </li>
        ))}
      </ul>
    </Layer>
  );
}
