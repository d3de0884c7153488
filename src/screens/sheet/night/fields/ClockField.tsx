import { Field } from '../../../parts/Field';
import { notAClock, readClock } from '../../sky/readClock';

/** A time by the clock that may be left out: typed empty it is taken away. */
export function ClockField(props: {
  readonly label: string;
  readonly time: string | undefined;
  /** Stands where there is none. */
  readonly empty: string;
  readonly commit: (time: string | undefined) => string | null;
}) {
  const { label, time, empty, commit } = props;
  return (
    <Field
      label={label}
      text={time ?? ''}
      empty={empty}
      commit={(text) => {
        if (text.trim() === '') return commit(undefined);
        const read = readClock(text);
        return read === null ? notAClock(text) : commit(read);
      }}
    />
  );
}
