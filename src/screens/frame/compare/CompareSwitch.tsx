import { setPaneCount, useCompare } from '../../../desk/compare/compareStore';
import type { PaneCount } from '../../../desk/compare/slots';

const WAYS: readonly { readonly count: PaneCount; readonly word: string; readonly path: string }[] = [
  { count: 1, word: 'one', path: 'M3 6.5h18v11H3z' },
  { count: 2, word: 'two', path: 'M2 8.5h9v7H2zM13 8.5h9v7h-9z' },
  {
    count: 4,
    word: 'four',
    path: 'M2.5 4.5h8.5v6H2.5zM13 4.5h8.5v6H13zM2.5 13.5h8.5v6H2.5zM13 13.5h8.5v6H13z',
  },
];

/** Sees one setup, two or four at the same time of the action. */
export function CompareSwitch() {
  const chosen = useCompare((state) => state.count);
  return (
    <fieldset className="seg compare-switch">
      <legend className="vh">How many setups are seen at once</legend>
      {WAYS.map(({ count, word, path }) => (
        <button
          key={count}
          type="button"
          aria-label={`${word} up`}
          title={`${word} up, Shift ${count}`}
          aria-pressed={count === chosen}
          onClick={() => setPaneCount(count)}
        >
          <svg className="i" viewBox="0 0 24 24" aria-hidden="true">
            <path d={path} />
          </svg>
          <span>{word}</span>
        </button>
      ))}
    </fieldset>
  );
}
