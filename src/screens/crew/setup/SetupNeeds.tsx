import type { Setup } from '../../../core/plan/schema/setup';
import { formatShare } from '../../../core/units/shares';
import type { Burning } from '../../../desk/crew/setupSheet';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Icon } from '../../parts/Icon';
import { keysOf } from '../../parts/keysOf';
import { carriedFor } from './carrying';

/** At how much of its light a lamp burns: `full`, `60 %`, `0 % to 60 %`. */
function dimWords({ fromDim, untilDim }: Burning): string {
  const share = (dim: number): string => (dim === 1 ? 'full' : formatShare(dim));
  return fromDim === untilDim ? share(fromDim) : `${share(fromDim)} to ${share(untilDim)}`;
}

/** The name of a thing, which opens its card. */
function Opens({ itemId, words }: { readonly itemId: string; readonly words: string }) {
  const openItem = useCrew((state) => state.openItem);
  return (
    <button type="button" className="link" onClick={() => openItem(itemId)}>
      {words}
    </button>
  );
}

/** Who is in a setup, what is carried up for it, which lamps burn. */
export function SetupNeeds({ setup }: { readonly setup: Setup }) {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const sheet = useCrewReading((state) => state.sheets.get(setup.id));
  const carried = carriedFor(plan, setup, lengths);
  const keys = keysOf(carried.map(({ words }) => words));
  return (
    <>
      <section className="crew-rigs" aria-label="In it">
        <h3>In it</h3>
        {sheet?.cast.length === 0 ? <p>Nobody is in frame.</p> : null}
        <ul>
          {sheet?.cast.map(({ performerId, label, first, last }) => (
            <li key={performerId} className="opens">
              <Icon name="performer" />
              <p>
                <Opens itemId={performerId} words={label} />, {first ?? 'without the head'}
                {last !== null && last !== first ? ` to ${last}` : ''}
              </p>
            </li>
          ))}
        </ul>
      </section>
      <section className="crew-rigs" aria-label="Carry up for it">
        <h3>Carry up for it</h3>
        <ul>
          {carried.map(({ icon, words, itemId }, place) => (
            <li key={keys[place]} className={itemId === undefined ? undefined : 'opens'}>
              <Icon name={icon} />
              <p>{itemId === undefined ? words : <Opens itemId={itemId} words={words} />}</p>
            </li>
          ))}
        </ul>
      </section>
      {sheet && sheet.burning.length > 0 ? (
        <section className="crew-rigs" aria-label="Burns in it">
          <h3>Burns in it</h3>
          <ul>
            {sheet.burning.map((burning) => (
              <li key={burning.itemId} className="opens">
                <Icon name="head" />
                <p>
                  <Opens itemId={burning.itemId} words={burning.label} />, {dimWords(burning)}
                </p>
              </li>
            ))}
          </ul>
        </section>
      ) : null}
    </>
  );
}
