import type { Patch } from '../../../../core/plan/edits/nightRecord';
import { setNightCast } from '../../../../core/plan/edits/setNightCast';
import type { NightCast } from '../../../../core/plan/schema/night';
import type { Plan } from '../../../../core/plan/schema/plan';
import { withNames } from '../../../../core/plan/withNames';
import { editPlan } from '../../fields/edit';
import { ClockField } from '../fields/ClockField';

/** From when each performer is in, and by when they are out. */
export function CastTimes({ plan }: { readonly plan: Plan }) {
  if (plan.cast.length === 0) return <p className="advice">Nobody is cast yet.</p>;
  return (
    <>
      {withNames(plan).cast.map(({ id, label }) => {
        const there = plan.night?.cast?.find(({ performer }) => performer === id);
        const set = (patch: Patch<Omit<NightCast, 'performer'>>): string | null =>
          editPlan(`say when ${label} is there`, (before) =>
            setNightCast(before, { performerId: id, patch }),
          );
        return (
          <section key={id} className="group" aria-label={label}>
            <h4>{label}</h4>
            <div className="fields">
              <ClockField
                label="in from"
                time={there?.from}
                empty="the call"
                commit={(from) => set({ from })}
              />
              <ClockField
                label="out by"
                time={there?.until}
                empty="the wrap"
                commit={(until) => set({ until })}
              />
            </div>
          </section>
        );
      })}
    </>
  );
}
