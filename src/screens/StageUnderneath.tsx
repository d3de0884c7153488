import { lazy, Suspense } from 'react';
import { viewStore } from '../desk/viewStore';
import { PaneBoundary } from './parts/PaneBoundary';

/** Loaded apart: the page can be read before the first picture is drawn, and without any. */
const Stage = lazy(async () => {
  try {
    return { default: (await import('../scene/Stage')).Stage };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    viewStore.getState().setPictureRefused(`The pictures could not be loaded: ${reason}`);
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
