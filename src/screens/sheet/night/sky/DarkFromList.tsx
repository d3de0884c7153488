import { useStore } from 'zustand';
import { darkFromSentence } from '../../../../core/night/dusk/darkFrom';
import type { Plan } from '../../../../core/plan/schema/plan';
import { chooseSetup } from '../../../../desk/choose';
import { findDark, stopDark } from '../../../../desk/night/asking';
import { nightStore } from '../../../../desk/night/nightStore';
import { sessionStore } from '../../../../desk/sessionStore';
import { Glyph } from '../../../parts/Glyph';

function Found({ plan }: { readonly plan: Plan }) {
  const dark = useStore(nightStore, (state) => state.dark);
  if (!dark || dark.plan !== plan) return null;
  if (dark.found.length === 0)
    return (
      <p className="advice" role="status">
        Nothing that should keep out shows, or no lamp is lit, or the sun does not set: there is nothing to be
        lost in the dark.
      </p>
    );
  return (
    <ul className="rows" aria-label="From when things are lost in the dark">
      {dark.found.map((each) => (
        <li key={`${each.setupId} ${each.itemId}`}>
          <button
            type="button"
            onClick={() => {
              chooseSetup(each.setupId);
              sessionStore.getState().setSelectedId(each.itemId);
            }}
          >
            <Glyph verdict={each.minutes === null ? 'showing' : 'lost in the dark'} />
            <span className="sentence">{darkFromSentence(plan, each)}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}

/** From when what shows is lost in the dark, worked out on request: it takes as long as reading the night several times. */
export function DarkFromList({ plan }: { readonly plan: Plan }) {
  const darkening = useStore(nightStore, (state) => state.darkening);
  return (
    <section className="group" aria-label="Lost in the dark">
      <h4>From when what shows is lost in the dark</h4>
      {darkening === null ? (
        <p className="acts">
          <button type="button" onClick={() => void findDark()}>
            Find out
          </button>
        </p>
      ) : (
        <>
          <progress max={1} value={darkening} aria-label="How far the look is" />
          <p className="acts">
            <button type="button" onClick={stopDark}>
              Stop
            </button>
          </p>
        </>
      )}
      <Found plan={plan} />
    </section>
  );
}
