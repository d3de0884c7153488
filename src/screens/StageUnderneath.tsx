import { lazy, Suspense } from 'react';
import { sentenceOf } from '../desk/reasonOf';
import { viewStore } from '../desk/viewStore';
import { PaneBoundary } from './parts/PaneBoundary';

/** Loaded apart: the page can be read before the first picture is drawn, and without any. */
const Stage = lazy(async () => {
  try {
    return { default: (await import('../scene/Stage')).Stage };
  } catch (error) {
    viewStore.getState().setPictureRefused(sentenceOf('The pictures could not be loaded', error));
    return { default: () => null };
  }
});

/** The pictures, drawn under the page. */
export function StageUnderneath() {
  return (
    <PaneBoundary name="The picture">
      <Suspense>
        <Stage />
      </Suspense>
    </PaneBoundary>
  );
}
