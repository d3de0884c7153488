import { continuitySentence } from '../../../core/report/continuity/continuitySentence';
import { useContinuity } from '../../../desk/continuityStore';
import { useSession } from '../../../desk/hooks';
import { ContinuityGlyph } from '../../parts/ContinuityGlyph';

/** Of singles that are seen side by side, whether they match. */
export function PairWords({ setupIds }: { readonly setupIds: readonly string[] }) {
  const plan = useContinuity((state) => state.forPlan);
  const setups = useContinuity((state) => state.setups);
  const lengths = useSession((state) => state.lengths);
  const [pair] = (setups ?? [])
    .flatMap(({ findings }) => findings)
    .filter(
      ({ kind, setupId, againstId }) =>
        kind === 'matching singles' &&
        againstId !== null &&
        setupIds.includes(setupId) &&
        setupIds.includes(againstId),
    );
  if (!plan || !pair) return null;
  return (
    <p className="pair-words" aria-live="polite">
      <ContinuityGlyph standing={pair.standing} />
      <span>{continuitySentence(plan, pair, lengths)}</span>
    </p>
  );
}
