import { useStore } from 'zustand';
import { keepingStore, savedSentence } from '../../desk/keepingStore';

/** What has become of the plan, which no pane and no worker holds; read out with what it stands in, not with every edit after. */
export function SavedWords() {
  const sentence = useStore(keepingStore, savedSentence);
  return <span aria-live="off">{sentence}</span>;
}
