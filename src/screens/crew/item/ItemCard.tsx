import { useEffect, useMemo, useRef } from 'react';
import { tapedSets } from '../../../core/form/tape/tape';
import { carrierOf } from '../../../core/plan/edits/anchorOf';
import { itemOf } from '../../../core/plan/items';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { askedFor } from '../../../desk/crew/kept/askedFor';
import { carriedBy, letterIn } from '../../../desk/crew/overhead/roofThings';
import { useCrew, useCrewReading } from '../../../desk/crew/useCrew';
import { Icon, type IconName, iconOfItem } from '../../parts/Icon';
import { Arrow } from '../parts/Arrow';
import { SetTick } from '../parts/SetTick';
import { Frames } from './Frames';
import { cameraFacts, type Fact, floorWords, gearFacts, noTape } from './facts';
import { MarkPlaces } from './MarkPlaces';
import { powerWords } from './powerWords';
import { TapedPlace } from './TapedPlace';
import './itemCard.css';

/** What a card is about: an item of the plan, or the setup whose camera it is. */
interface Subject {
  readonly label: string;
  readonly second: string;
  readonly icon: IconName;
}

function subjectOf(plan: Plan, id: string): Subject | null {
  const item = itemOf(plan, id);
  if (item) {
    const carrier = carrierOf(plan, id);
    const on = carrier === null ? null : itemOf(plan, carrier);
    const kind = item.section === 'cast' ? 'performer' : item.record.kind;
    return {
      label: item.record.label,
      second: on ? `on ${on.record.label}` : kind,
      icon: iconOfItem(plan.kit, item),
    };
  }
  const setup = plan.setups.find((each) => each.id === id);
  return setup
    ? {
        label: `Camera ${letterIn(plan, id)}`,
        second: setup.label,
        icon: 'camera',
      }
    : null;
}

/** The card of a thing: where it stands by tape, how it is set, what it draws, what it is to keep out of. */
export function ItemCard({ itemId }: { readonly itemId: string }) {
  const plan = useCrew((state) => state.plan);
  const back = useCrew((state) => state.back);
  const heading = useRef<HTMLHeadingElement>(null);
  const subject = useMemo(() => subjectOf(plan, itemId), [plan, itemId]);
  // Each card is another page to whoever has it read out.
  useEffect(() => {
    if (itemId !== '') heading.current?.focus({ preventScroll: true });
  }, [itemId]);
  return (
    <article className="crew-item" aria-label={subject?.label ?? 'No such thing'}>
      <header className="crew-item-bar">
        <button type="button" className="icon" aria-label="Back" onClick={back}>
          <Arrow to="back" />
        </button>
        {subject && <Icon name={subject.icon} />}
        <div>
          <h2 ref={heading} tabIndex={-1}>
            {subject?.label ?? 'No such thing'}
          </h2>
          {subject && <p className="crew-second">{subject.second}</p>}
        </div>
        {subject && <SetTick id={itemId} of={askedFor(plan, itemId)} label={subject.label} />}
      </header>
      {subject ? (
        <Body id={itemId} label={subject.label} />
      ) : (
        <p className="crew-none">This thing is not in the plan of this link.</p>
      )}
    </article>
  );
}

function Body({ id, label }: { readonly id: string; readonly label: string }) {
  const plan = useCrew((state) => state.plan);
  const lengths = useCrew((state) => state.lengths);
  const power = useCrewReading((state) => state.power);
  const cautions = useCrewReading((state) => state.cautions);
  const item = itemOf(plan, id);
  const setup = item ? null : plan.setups.find((each) => each.id === id);
  const standing = item?.section === 'gear' ? (carrierOf(plan, id) ?? id) : id;
  const sets = useMemo(() => tapedSets(plan, standing), [plan, standing]);
  const carried: readonly Gear[] = item?.section === 'gear' ? carriedBy(plan, id) : [];
  const ids = [id, ...carried.map((each) => each.id)];
  const about = cautions?.filter(
    ({ itemIds, setupIds }) => itemIds.some((each) => ids.includes(each)) || setupIds.includes(id),
  );
  const own = power && powerWords(power, id, lengths);
  return (
    <>
      <section className="crew-item-part" aria-label="Where it stands">
        <h3>{item?.section === 'cast' ? 'Marks' : 'Where it stands'}</h3>
        {item?.section === 'cast' ? (
          <MarkPlaces plan={plan} performer={item.record} sets={sets} lengths={lengths} />
        ) : sets.length === 0 ? (
          <p className="crew-second">{noTape(lengths)}</p>
        ) : (
          sets.map((set) => (
            <TapedPlace key={set.key} plan={plan} set={set} label={label} lengths={lengths} />
          ))
        )}
        {sets[0] && item?.section !== 'cast' && (
          <Facts
            facts={[['on', floorWords(plan, [sets[0].at.x, sets[0].at.z], sets[0].levelMetres, lengths)]]}
          />
        )}
      </section>
      {item?.section === 'gear' && (
        <section className="crew-item-part" aria-label="How it is set">
          <h3>How it is set</h3>
          <Facts
            facts={[...gearFacts(plan, item.record, lengths), ...(own ? ([['power', own]] as const) : [])]}
          />
          {carried.map((each) => {
            const draws = power && powerWords(power, each.id, lengths);
            return (
              <div key={each.id} className="crew-carried">
                <h4>{each.label}</h4>
                <Facts
                  facts={[...gearFacts(plan, each, lengths), ...(draws ? ([['power', draws]] as const) : [])]}
                />
              </div>
            );
          })}
        </section>
      )}
      {setup && (
        <section className="crew-item-part" aria-label="How it is put up">
          <h3>How it is put up</h3>
          <Facts facts={cameraFacts(plan, setup, lengths)} />
        </section>
      )}
      {item && <Frames plan={plan} ids={ids} />}
      {about && about.length > 0 && (
        <section className="crew-item-part" aria-label="To be minded">
          <h3>To be minded</h3>
          <ul className="crew-minded">
            {about.map(({ id: key, sentence }) => (
              <li key={key}>{sentence}</li>
            ))}
          </ul>
        </section>
      )}
    </>
  );
}

function Facts({ facts }: { readonly facts: readonly Fact[] }) {
  return (
    <dl className="crew-item-facts">
      {facts.map(([word, value]) => (
        <div key={word}>
          <dt>{word}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}
