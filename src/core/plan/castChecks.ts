import { type PlanFault, quoteFound } from './faults';
import { doubles, unknown, unnamed } from './references';
import type { Looks, Mark, Towards } from './schema/cast';
import type { Plan } from './schema/plan';

/** What a mark turns to, by the field that says so. */
const turnings = (mark: Mark): readonly (readonly [field: string, to: Towards | Looks | undefined])[] => [
  ['faces', mark.faces],
  ['looks', mark.looks],
  ['facesOnTheWay', mark.facesOnTheWay],
  ['looksOnTheWay', mark.looksOnTheWay],
];

/** What the schema cannot see of cast, passes, lines and cheats: references that lead nowhere. */
export function castFaults(plan: Plan): PlanFault[] {
  const beats = new Set(plan.beats.map(({ id }) => id));
  const performers = new Map(plan.cast.map((performer) => [performer.id, performer]));
  const people = new Set(performers.keys());
  const setups = new Set(plan.setups.map(({ id }) => id));
  const faults: PlanFault[] = [];
  for (const performer of plan.cast) {
    const where = `Performer ${quoteFound(performer.label)}`;
    faults.push(...doubles(`${where}, mark`, unnamed(performer.marks)));
    for (const mark of performer.marks) {
      const place = `${where}, mark ${quoteFound(mark.id)}`;
      faults.push(...unknown(() => `${place}, beat`, mark.beat, beats, 'a beat'));
      for (const [field, to] of turnings(mark)) {
        if (to && 'who' in to)
          faults.push(...unknown(() => `${place}, ${field}.who`, to.who, people, 'a performer'));
      }
    }
  }
  for (const { id, beat, from, to } of plan.passes ?? []) {
    const where = `Pass ${quoteFound(id)}`;
    faults.push(
      ...unknown(() => `${where}, beat`, beat, beats, 'a beat'),
      ...unknown(() => `${where}, from`, from, people, 'a performer'),
      ...unknown(() => `${where}, to`, to, people, 'a performer'),
    );
  }
  for (const { id, pair, establishedBy } of plan.lines ?? []) {
    const where = `Line ${quoteFound(id)}`;
    faults.push(...pair.flatMap((who) => unknown(() => `${where}, pair`, who, people, 'a performer')));
    if (establishedBy !== undefined)
      faults.push(...unknown(() => `${where}, establishedBy`, establishedBy, setups, 'a setup'));
  }
  for (const { label, cheats } of plan.setups) {
    cheats?.forEach(({ performer: who, mark }, index) => {
      const where = `Setup ${quoteFound(label)}, cheats[${index}]`;
      const performer = performers.get(who);
      faults.push(...unknown(() => `${where}, performer`, who, people, 'a performer'));
      if (performer)
        faults.push(
          ...unknown(
            () => `${where}, mark`,
            mark,
            new Set(performer.marks.map(({ id }) => id)),
            `a mark of ${quoteFound(performer.label)}`,
          ),
        );
    });
  }
  return faults;
}
