import { useStore } from 'zustand';
import { BlockingSheet } from './BlockingSheet';
import { CoverageView } from './coverage/CoverageView';
import { blockingViewStore } from './coverage/view';

/** The Blocking sheet: the action along its clock, or which setup has whom of it. */
export function BlockingViews() {
  const { view } = useStore(blockingViewStore);
  return view === 'coverage' ? <CoverageView /> : <BlockingSheet />;
}
