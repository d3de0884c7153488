/** A sentence of the report: its name in bold, what follows, and in a second voice what would clear it. */
export function Sentence(props: {
  readonly name: string;
  readonly text: string;
  readonly colon: boolean;
  readonly more?: string | null;
}) {
  return (
    <span className="sentence">
      <b>{props.name}</b>
      {props.colon ? ': ' : ' '}
      {props.text}
      {props.more ? <small>{props.more}</small> : null}
    </span>
  );
}
