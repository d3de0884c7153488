import { useState } from 'react';
import { whereabouts } from '../../../../core/form/figure/whereabouts';
import { addMarkAt } from '../../../../core/plan/edits/addMarkAt';
import type { Performer } from '../../../../core/plan/schema/cast';
import type { Plan } from '../../../../core/plan/schema/plan';
import { chooseThing, editBlocking } from '../../../../desk/blocking/choosing';
import { beatsInTime, markName, secondsOfBeat } from '../../../../desk/blocking/things';
import { planStore } from '../../../../desk/planStore';
import { castFields } from '../../fields/castFields';
import { FieldGroups } from '../../fields/FieldOf';
import { NameField } from '../../panels/NameFields';
import { beatHere } from '../doing';
import { momentText } from '../words';
import { BeatChoice, PanelHead } from './choices';
import { Faults } from './Faults';
import { Moves } from './Moves';

/** A performer without a mark yet is put in the middle of the roof. */
const MIDDLE: readonly [number, number] = [0, 0];

/** Adds a mark where somebody is at a beat as the action goes now, so that nothing else changes, and chooses it. */
export function addMarkFor(performerId: string, beatId: string): void {
  const { plan } = planStore.getState();
  const performer = plan.cast.find(({ id }) => id === performerId);
  if (!performer) return;
  const known = new Set(performer.marks.map(({ id }) => id));
  const at = whereabouts(performer, plan, secondsOfBeat(plan, beatId));
  const heading = at
    ? {
        headingDegrees: Math.round(at.headingDegrees * 10) / 10,
        stance: at.isMoving ? ('stand' as const) : at.stance,
      }
    : {};
  editBlocking('add a mark', (before) =>
    addMarkAt(before, {
      performerId,
      beatId,
      at: at ? [at.at[0], at.at[2]] : [MIDDLE[0], MIDDLE[1]],
      ...heading,
    }),
  );
  const added = planStore
    .getState()
    .plan.cast.find(({ id }) => id === performerId)
    ?.marks.find(({ id }) => !known.has(id));
  if (added) chooseThing({ type: 'mark', performerId, markId: added.id });
}

/** Somebody's marks by their beats, and another at a beat that has none. */
function MarksOf({ plan, performer }: { readonly plan: Plan; readonly performer: Performer }) {
  const [asked, setAsked] = useState<string | null>(null);
  const taken = new Set(performer.marks.map(({ beat }) => beat));
  const free = beatsInTime(plan).filter(({ id }) => !taken.has(id));
  const here = beatHere(plan);
  const nearest = free.find(({ id }) => id === here) ?? free[0];
  const beat = free.find(({ id }) => id === asked) ?? nearest;
  return (
    <section className="group">
      <h4>{performer.marks.length === 0 ? 'No mark yet' : 'Marks'}</h4>
      <ul className="lines">
        {performer.marks.map((mark, index) => (
          <li key={mark.id}>
            <button
              type="button"
              className="link"
              onClick={() => chooseThing({ type: 'mark', performerId: performer.id, markId: mark.id })}
            >
              {markName(performer, index)}
            </button>
            <span className="q">
              {momentText(secondsOfBeat(plan, mark.beat))}, {mark.stance}
            </span>
          </li>
        ))}
      </ul>
      {beat ? (
        <>
          <BeatChoice
            plan={{ ...plan, beats: [...free] }}
            label="another at"
            value={beat.id}
            onChange={setAsked}
          />
          <p className="acts">
            <button type="button" onClick={() => addMarkFor(performer.id, beat.id)}>
              Add a mark
            </button>
          </p>
        </>
      ) : null}
    </section>
  );
}

/** A performer: their marks, the moves that are ready, their body, clothes and what they carry. */
export function PerformerPanel({ plan, performer }: { readonly plan: Plan; readonly performer: Performer }) {
  return (
    <>
      <PanelHead title={performer.label} />
      <Faults only={({ performerId }) => performerId === performer.id} />
      <MarksOf plan={plan} performer={performer} />
      <Moves plan={plan} performer={performer} />
      <FieldGroups groups={castFields(performer)} />
      <section className="group">
        <h4>Name</h4>
        <NameField id={performer.id} label={performer.label} />
      </section>
    </>
  );
}
