import { lazy, StrictMode, Suspense } from 'react';
import { createRoot } from 'react-dom/client';
import { startDesk } from './desk/startDesk';
import { viewStore } from './desk/viewStore';
import { App } from './screens/App';
import { PaneBoundary } from './screens/parts/PaneBoundary';

/** Apart from the page, which is read before the first picture can be drawn. */
const Stage = lazy(async () => {
  try {
    return { default: (await import('./scene/Stage')).Stage };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    viewStore.getState().setPictureRefused(`The pictures could not be loaded: ${reason}`);
    return { default: () => null };
  }
});

const root = document.getElementById('root');
if (!root) throw new Error("index.html has no element 'root' to draw the page in");
void startDesk();
createRoot(root).render(
  <StrictMode>
    <App
      stage={
        <PaneBoundary name="The picture">
          <Suspense>
            <Stage />
          </Suspense>
        </PaneBoundary>
      }
    />
  </StrictMode>,
);
