import { useEffect, useId, useRef } from 'react';

/**
 * A colour on a line, chosen in the system's own window. While one drags about in it nothing is committed;
 * the colour it is left with is one edit.
 */
export function ColourField(props: {
  readonly label: string;
  readonly colour: string;
  readonly commit: (colour: string) => string | null;
}) {
  const id = useId();
  const input = useRef<HTMLInputElement>(null);
  const { colour, commit } = props;
  useEffect(() => {
    const element = input.current;
    if (!element) return;
    // React's own onChange comes with every move in the window; the change event of the element comes once.
    const done = (): void => {
      commit(element.value);
    };
    element.addEventListener('change', done);
    return () => element.removeEventListener('change', done);
  }, [commit]);
  useEffect(() => {
    if (input.current) input.current.value = colour;
  }, [colour]);
  return (
    <div className="field colour">
      <label htmlFor={id}>{props.label}</label>
      <input ref={input} id={id} type="color" defaultValue={colour} />
    </div>
  );
}
