import type { RoofThing } from '../../../desk/crew/overhead/roofThings';

/** Everything that is set, as a list: for whoever looks for a name, and for whom the drawing is not. */
export function RoofList(props: {
  readonly things: readonly RoofThing[];
  readonly chosenId: string | null;
  readonly choose: (id: string) => void;
}) {
  const { things, chosenId, choose } = props;
  if (things.length === 0) return <p className="crew-none">Nothing of this department stands on the roof.</p>;
  return (
    <ul className="crew-roof-list" aria-label="On the roof">
      {things.map(({ id, label, detail }) => (
        <li key={id}>
          <button type="button" aria-pressed={id === chosenId} onClick={() => choose(id)}>
            <b>{label}</b>
            <span>{detail}</span>
          </button>
        </li>
      ))}
    </ul>
  );
}
