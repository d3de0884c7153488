import { useId } from 'react';

/** Something that is so or not, on a line. */
export function SwitchField(props: {
  readonly label: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}) {
  const id = useId();
  return (
    <div className="field night-switch">
      <label htmlFor={id}>{props.label}</label>
      <input
        id={id}
        type="checkbox"
        checked={props.isOn}
        onChange={(event) => props.onChange(event.currentTarget.checked)}
      />
    </div>
  );
}
