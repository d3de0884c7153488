import { renameItem } from '../../../core/plan/edits/renameItem';
import { Field } from '../../parts/Field';
import { useEdit } from '../fields/edit';

/** What a person calls the item. */
export function NameField({ id, label }: { readonly id: string; readonly label: string }) {
  const edit = useEdit();
  return (
    <Field
      wide
      label="name"
      text={label}
      commit={(text) => edit('rename', (before) => renameItem(before, { id, label: text.trim() }))}
    />
  );
}
