import type { ReactNode } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { linesOnRoof } from '../../../desk/blocking/lines';
import { useContinuity } from '../../../desk/continuityStore';
import { useSession } from '../../../desk/hooks';

/** A taped T, drawn small. */
const TAPE = 'M11 0.5h9v3h-3v6h-3v-6h-3z';

function Sample({ children }: { readonly children: ReactNode }) {
  return (
    <svg width="30" height="10" aria-hidden="true">
      {children}
    </svg>
  );
}

/** What the drawing of the cast means, as far as there is any: while the blocking is looked at each by itself, else in one line. */
export function BlockingKeys({ plan }: { readonly plan: Plan }) {
  const open = useSession((state) => state.sheet === 'blocking');
  const found = useContinuity((state) => state.setups);
  const marks = plan.cast.some((performer) => !performer.hidden && performer.marks.length > 0);
  const walks = plan.cast.some((performer) => !performer.hidden && performer.marks.length > 1);
  if (!marks) return null;
  if (!open)
    return (
      <li>
        <Sample>
          <path className="key-tape" d={TAPE} transform="translate(-10 0)" />
          {walks ? <path className="key-walk" d="M12 5h18" /> : null}
        </Sample>
        {walks ? 'marks and walks' : 'marks'}
      </li>
    );
  const { pairs } = linesOnRoof(plan, found);
  return (
    <>
      <li>
        <Sample>
          <path className="key-tape" d={TAPE} />
        </Sample>
        mark
      </li>
      {walks ? (
        <li>
          <Sample>
            <path className="key-walk" d="M0 5h30" />
          </Sample>
          walk
        </li>
      ) : null}
      {pairs.length > 0 ? (
        <li>
          <Sample>
            <path className="key-line" d="M0 5h30" />
          </Sample>
          {pairs.length === 1 ? 'the line' : 'the lines'}
        </li>
      ) : null}
    </>
  );
}
