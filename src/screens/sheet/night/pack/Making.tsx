import { useStore } from 'zustand';
import { type PackKind, packSavingStore, stopPack } from '../../../../desk/pack/savingPack';

/** Whether a file of that kind is being made. */
export const useIsMaking = (kind: PackKind): boolean =>
  useStore(packSavingStore, (state) => state.kind === kind);

/** How far a file is that is being made. */
export function Progress({ kind }: { readonly kind: PackKind }) {
  const share = useStore(packSavingStore, (state) => state.share);
  return (
    <progress
      max={1}
      value={share}
      aria-label={`Making the ${kind}`}
      aria-valuetext={`${Math.floor(100 * share)} per cent`}
    />
  );
}

/** The button that begins it and stops it: one, so that whoever pressed it by keys stays on it. */
export function MakeButton(props: {
  readonly kind: PackKind;
  readonly word: string;
  readonly onMake: () => void;
}) {
  const isMaking = useIsMaking(props.kind);
  const isOther = useStore(packSavingStore, ({ kind }) => kind !== null && kind !== props.kind);
  return (
    <button
      type="button"
      aria-disabled={isOther}
      onClick={isMaking ? stopPack : isOther ? undefined : props.onMake}
    >
      {isMaking ? 'Stop' : props.word}
    </button>
  );
}
