import { useStore } from 'zustand';
import { Segmented } from '../../parts/Segmented';
import { type FramesView, framesViewStore } from './framesView';

const VIEWS: readonly { readonly value: FramesView; readonly word: string }[] = [
  { value: 'findings', word: 'findings' },
  { value: 'lens test', word: 'lens test' },
  { value: 'contact sheet', word: 'contact sheet' },
  { value: 'clear all', word: 'clear all' },
];

/** Goes from one view of the Frames sheet to another. */
export function FramesSwitch() {
  const { view } = useStore(framesViewStore);
  return (
    <Segmented
      label="What the sheet shows of the frames"
      choices={VIEWS}
      chosen={view}
      onChoose={(chosen) => framesViewStore.setState({ view: chosen })}
    />
  );
}
