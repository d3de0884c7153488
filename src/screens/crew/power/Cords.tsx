import type { Plan } from '../../../core/plan/schema/plan';
import type { PowerReport } from '../../../core/report/power/types';
import { askedFor } from '../../../desk/crew/kept/askedFor';
import { useCrew } from '../../../desk/crew/useCrew';
import { ItemName } from '../page/ItemName';
import { SetTick } from '../parts/SetTick';
import { cordsToLay, cordWords, endsWords, mindWords } from './cords';

/** The cords to lay: how long and thick, from where to where, and a tick for each that lies. */
export function Cords({ plan, power }: { readonly plan: Plan; readonly power: PowerReport }) {
  const lengths = useCrew((state) => state.lengths);
  const cords = cordsToLay(power);
  if (cords.length === 0) return null;
  return (
    <section className="crew-section" aria-labelledby="cords-title">
      <h3 id="cords-title">Cords to lay, {cords.length}</h3>
      <ul className="crew-cords">
        {cords.map((cord) => {
          const mind = mindWords(plan, cord, lengths);
          return (
            <li key={cord.id}>
              <div>
                <ItemName itemId={cord.id} label={cord.label} />
                <p>
                  <b>{cordWords(cord, lengths)}</b>, {endsWords(plan, cord)}
                </p>
                {mind === null ? null : <small>{mind}</small>}
              </div>
              <SetTick id={cord.id} of={askedFor(plan, cord.id)} label={cord.label} />
            </li>
          );
        })}
      </ul>
    </section>
  );
}
