import { fault, type PlanFault, quoteFound } from './faults';

/** Ids that occur twice in a list, as faults that name both places. */
export function doubles(
  where: string,
  entries: readonly { readonly id: string; readonly label: string }[],
): PlanFault[] {
  const seen = new Map<string, string>();
  const faults: PlanFault[] = [];
  for (const { id, label } of entries) {
    const earlier = seen.get(id);
    if (earlier !== undefined) {
      faults.push(
        fault(
          `${where} ${quoteFound(label)}`,
          `the id ${quoteFound(id)}, which ${quoteFound(earlier)} has too`,
          'an id of its own',
        ),
      );
    } else seen.set(id, label);
  }
  return faults;
}

/** What has an id and no name goes by its id. */
export const unnamed = (entries: readonly { readonly id: string }[]): { id: string; label: string }[] =>
  entries.map(({ id }) => ({ id, label: id }));

const NONE: readonly PlanFault[] = [];

/** A reference as a fault where it leads nowhere; its place is put in words only there, since most lead somewhere. */
export function unknown(
  where: () => string,
  id: string,
  known: ReadonlySet<string>,
  what: string,
): readonly PlanFault[] {
  return known.has(id) ? NONE : [fault(where(), quoteFound(id), `the id of ${what}`)];
}
