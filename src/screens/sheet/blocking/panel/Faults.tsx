import { chooseThing, editBlocking } from '../../../../desk/blocking/choosing';
import { mendOf, useFaults } from '../../../../desk/blocking/faultsStore';
import type { Thing } from '../../../../desk/blocking/things';
import type { ToldFault } from '../../../../desk/blocking/toldFaults';

/** What the button says that mends a fault, by the name of its edit. */
const MENDS: Readonly<Record<string, string>> = { 'walk round': 'Go round', 'take back a cheat': 'Put back' };

/** What a fault is about, to be chosen; null where that is nothing of its own. */
function thingOf({ about, performerId, markId, setupId }: ToldFault): Thing | null {
  if (performerId !== null && markId !== null) return { type: 'mark', performerId, markId };
  if (performerId !== null) return { type: 'performer', performerId };
  return about === 'span' && setupId !== null ? { type: 'setup', setupId } : null;
}

/** Mends a fault in one step, where an edit does; nothing where it is one to decide on. */
export function MendButton({ fault }: { readonly fault: ToldFault }) {
  const { mendName } = fault;
  if (mendName === null) return null;
  const mend = (): void => {
    const edit = mendOf(fault)?.edit;
    if (edit) editBlocking(mendName, edit);
  };
  return (
    <button type="button" className="do" onClick={mend}>
      {MENDS[mendName] ?? mendName}
    </button>
  );
}

/** What cannot be played as it is written, of everybody or of what is chosen, each with what mends it. */
export function Faults({ only = () => true }: { readonly only?: (fault: ToldFault) => boolean }) {
  const faults = useFaults().filter(only);
  if (faults.length === 0) return null;
  return (
    <section className="group faults-of" aria-label="What asks for something">
      <h4>{faults.length === 1 ? 'Asks for something' : `${faults.length} ask for something`}</h4>
      <ul>
        {faults.map((fault) => {
          const thing = thingOf(fault);
          return (
            <li key={`${fault.about} ${fault.sentence}`}>
              <p>{fault.sentence}</p>
              <p className="acts">
                <MendButton fault={fault} />
                {thing ? (
                  <button type="button" className="bare" onClick={() => chooseThing(thing)}>
                    Show it<span className="vh">: {fault.sentence}</span>
                  </button>
                ) : null}
              </p>
            </li>
          );
        })}
      </ul>
    </section>
  );
}
