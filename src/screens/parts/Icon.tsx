import type { IconName } from './icons/icons';

export { type IconName, iconNamed } from './icons/icons';
export { iconOfItem, iconOfKind } from './icons/ofItem';

/** An icon beside a word, or alone in a labelled button: it says nothing to a screen reader by itself. */
export function Icon({ name }: { readonly name: IconName }) {
  return (
    <svg className="i" aria-hidden="true">
      <use href={`#i-${name}`} />
    </svg>
  );
}
