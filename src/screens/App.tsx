import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useSession } from '../desk/hooks';
import { mergeStore } from '../desk/merge/mergeStore';
import { ActionsOverPage } from './ActionsOverPage';
import { FramePane } from './frame/FramePane';
import { Header } from './header/Header';
import { GlyphSprite } from './parts/GlyphSprite';
import { IconSprite } from './parts/IconSprite';
import { lazily } from './parts/lazily';
import { PaneBoundary } from './parts/PaneBoundary';
import { useOutcomes } from './report/useOutcomes';
import { RoofPane } from './roof/RoofPane';
import { SheetsOverPage } from './SheetsOverPage';
import { StageUnderneath } from './StageUnderneath';
import { ImportProgress } from './sheet/import/ImportProgress';
import { Sheet } from './sheet/Sheet';
import { ShortcutSheet } from './shortcuts/ShortcutSheet';
import { useShortcuts } from './shortcuts/useShortcuts';
import { Spoken } from './strip/Spoken';
import { Strip } from './strip/Strip';
import { Toasts } from './toasts/Toasts';
import { useFileDrop } from './useFileDrop';
import { useReadyMark } from './useReadyMark';
import './styles/ofParts';
import './styles/index.css';

const MergeSheet = lazily(async () => (await import('./merge/MergeSheet')).MergeSheet);

function Page() {
  const theme = useSession((state) => state.theme);
  useEffect(() => {
    document.documentElement.dataset.theme = theme;
  }, [theme]);
  const merging = useStore(mergeStore, (state) => state.open);
  useShortcuts();
  useFileDrop();
  useReadyMark();
  useOutcomes();
  return (
    <>
      <IconSprite />
      <GlyphSprite />
      <StageUnderneath />
      <div className="desk">
        <PaneBoundary name="The header">
          <Header />
        </PaneBoundary>
        <main>
          <FramePane />
          <div className="rest">
            <RoofPane />
            {merging ? <MergeSheet /> : <Sheet />}
            <Strip />
          </div>
        </main>
      </div>
      <PaneBoundary name="What is read aloud">
        <Spoken />
      </PaneBoundary>
      <PaneBoundary name="The import">
        <ImportProgress />
      </PaneBoundary>
      <PaneBoundary name="What just happened">
        <Toasts />
      </PaneBoundary>
      <ActionsOverPage />
      <PaneBoundary name="The list of keys">
        <ShortcutSheet />
      </PaneBoundary>
      <SheetsOverPage />
    </>
  );
}

/** The page: the roof at the left, the frame above right, the sheet below it, the strip along the foot. */
export function App() {
  return (
    <PaneBoundary name="The page" whole>
      <Page />
    </PaneBoundary>
  );
}
