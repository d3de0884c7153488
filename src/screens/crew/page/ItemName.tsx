import { useCrew } from '../../../desk/crew/useCrew';

/** A thing's name, which opens its card. */
export function ItemName({ itemId, label }: { readonly itemId: string; readonly label: string }) {
  const openItem = useCrew((state) => state.openItem);
  return (
    <button type="button" className="page-name" onClick={() => openItem(itemId)}>
      {label}
    </button>
  );
}
