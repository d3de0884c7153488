import { useId, useState } from 'react';
import { LONGEST_REASON, letShow } from '../../../core/plan/edits/letShow';
import { takeBackShow } from '../../../core/plan/edits/takeBackShow';
import { named } from '../../../core/plan/named';
import type { ItemReport } from '../../../core/report/types';
import { letterOf } from '../../../desk/choose';
import { usePlanState } from '../../../desk/hooks';
import { make } from '../previewing';
import { TRUST } from './remedyWords';

interface Props {
  readonly item: ItemReport;
  readonly setupId: string;
}

/** Accepts a finding with a reason, which is asked for in a line of its own. */
export function LetItShow({ item, setupId }: Props) {
  const plan = usePlanState((state) => state.plan);
  const [reason, setReason] = useState('');
  const [refusal, setRefusal] = useState<string | null>(null);
  const id = useId();
  const letter = letterOf(plan, setupId);
  const accept = (): void => {
    if (reason.trim() === '') {
      setRefusal('Say why it may show, such as: reads as a street lamp.');
      return;
    }
    make(
      'let it show',
      (from) => letShow(from, { id: item.id, setupId, reason }),
      `${letter} lets ${named(item.label)} show: ${reason.trim().replace(/\.$/, '')}.`,
    );
  };
  return (
    <form
      className="let-it-show"
      onSubmit={(event) => {
        event.preventDefault();
        accept();
      }}
    >
      <label htmlFor={id}>it may show in {letter}, since it</label>
      <input
        id={id}
        type="text"
        autoComplete="off"
        maxLength={LONGEST_REASON}
        value={reason}
        placeholder="reads as a street lamp"
        aria-invalid={refusal !== null}
        aria-describedby={`${id}-more`}
        onChange={(event) => {
          setReason(event.currentTarget.value);
          setRefusal(null);
        }}
      />
      <button type="submit" className="do" aria-label={`Let it show: ${item.label} in ${letter}`}>
        Let it show
      </button>
      <p
        className={refusal === null ? 'q' : 'err'}
        id={`${id}-more`}
        role={refusal === null ? undefined : 'alert'}
      >
        {refusal ?? TRUST.find(({ relies }) => relies === 'likeness')?.words}
      </p>
    </form>
  );
}

/** The reason why a finding was accepted, and the way back. */
export function LetShow({ item, setupId }: Props) {
  const plan = usePlanState((state) => state.plan);
  const letter = letterOf(plan, setupId);
  return (
    <div className="acts">
      <button
        type="button"
        className="do"
        aria-label={`Take it back: ${item.label} in ${letter}`}
        onClick={() =>
          make(
            'take back that it shows',
            (from) => takeBackShow(from, { id: item.id, setupId }),
            `${named(item.label)} should keep out of ${letter} again.`,
          )
        }
      >
        Take it back
      </button>
      <span className="q">It is told as let show, here, in the strip and in the report.</span>
    </div>
  );
}
