import { useId, useState } from 'react';
import type { Caution } from '../../../../core/cautions/types';
import { noteCaution } from '../../../../core/plan/edits/noteCaution';
import { takeBackCautionNote } from '../../../../core/plan/edits/takeBackCautionNote';
import { CAUTION_LIMITS } from '../../../../core/plan/schema/cautions';
import { make } from '../../previewing';

/** Notes a caution, which is not taken away by that; without words it is not done. */
export function NoteForm({ caution }: { readonly caution: Caution }) {
  const [note, setNote] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const id = useId();
  const write = (): void => {
    if (note.trim() === '') {
      setRefusal('Write what is done about it, by whom, or why it is accepted.');
      return;
    }
    make(
      'note a caution',
      (plan) => noteCaution(plan, { key: caution.id, note }),
      'The caution is noted. It stays in the list and in the report.',
    );
  };
  return (
    <form
      className="caution-note"
      onSubmit={(event) => {
        event.preventDefault();
        write();
      }}
    >
      <label htmlFor={id}>what is done about it, or why it is accepted</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={CAUTION_LIMITS.noteCharacters}
        value={note}
        placeholder="key grip guards the edge before rigging"
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-more`}
        onChange={(event) => {
          setNote(event.currentTarget.value);
          setRefusal(null);
        }}
      />
      <button type="submit" className="do">
        Note it
      </button>
      <p
        className={refusal === null ? 'q' : 'err'}
        id={`${id}-more`}
        role={refusal === null ? undefined : 'alert'}
      >
        {refusal ?? 'A note takes no caution away: it is told with it, here and in the report.'}
      </p>
    </form>
  );
}

/** The note on a caution, and the way back. */
export function Noted({ caution, note }: { readonly caution: Caution; readonly note: string }) {
  return (
    <div className="acts caution-noted">
      <span>Noted: {note}</span>
      <button
        type="button"
        className="do"
        onClick={() =>
          make(
            'take back a note',
            (plan) => takeBackCautionNote(plan, { key: caution.id }),
            'The caution waits for a note again.',
          )
        }
      >
        Take the note back
      </button>
    </div>
  );
}
