interface Choice<Value extends string> {
  readonly value: Value;
  readonly word: string;
}

/** Two or three ways of looking, side by side; the pressed one holds. */
export function Segmented<Value extends string>(props: {
  readonly label: string;
  readonly choices: readonly Choice<Value>[];
  /** Null where several things differ: nothing is pressed. */
  readonly chosen: Value | null;
  readonly onChoose: (value: Value) => void;
}) {
  return (
    <fieldset className="seg">
      <legend className="vh">{props.label}</legend>
      {props.choices.map(({ value, word }) => (
        <button
          key={value}
          type="button"
          aria-pressed={value === props.chosen}
          onClick={() => props.onChoose(value)}
        >
          {word}
        </button>
      ))}
    </fieldset>
  );
}
