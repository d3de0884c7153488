import { useEffect, useState } from 'react';
import { useStore } from 'zustand';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { formatSeconds } from '../../../../core/units/seconds';
import { pictureStore, tryPicturesAgain } from '../../../../desk/crew/pictures/pictureStore';
import { useElementSize } from '../../../parts/useElementSize';
import { AroundLines } from './AroundLines';
import type { FullStore } from './fullState';
import { listenTo } from './hands';
import { LensLines } from './LensLines';
import { showIn } from './showing';
import { panned } from './zoom';

/** What fills the window: the picture under hands, with its lines, or in words why there is none. */
export function FullView(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly name: string;
  readonly store: FullStore;
}) {
  const { plan, setup, name, store } = props;
  const state = useStore(store);
  const refused = useStore(pictureStore, (pictures) => pictures.refused);
  const [isShown, setShown] = useState(false);
  const [place, setPlace] = useState<HTMLElement | null>(null);
  const { width, height } = useElementSize(place);

  useEffect(
    () =>
      store.setState(({ aspect, zoom }) => ({
        area: { width, height },
        zoom: panned({ width, height }, aspect, zoom, [0, 0]),
      })),
    [store, width, height],
  );
  useEffect(() => (place ? listenTo(place, store) : undefined), [place, store]);
  useEffect(() => {
    if (!place || refused !== null) return;
    const end = showIn(place, { plan, setup, store }, () => setShown(true));
    return () => {
      end();
      setShown(false);
    };
  }, [place, plan, setup, store, refused]);

  const { looking, seconds } = state;
  const words = looking === 'lens' ? `What ${name} sees` : `Around the camera of ${name}`;
  return (
    <div className="view">
      <div
        className="picture-place"
        ref={setPlace}
        role="application"
        aria-label={`${words} at ${formatSeconds(seconds)}`}
      />
      {isShown && looking === 'lens' ? <LensLines setup={setup} {...state} /> : null}
      {isShown && looking === 'around' ? <AroundLines plan={plan} setup={setup} {...state} /> : null}
      {isShown || refused !== null ? null : <p className="words">Drawing the picture</p>}
      {refused === null ? null : (
        <div className="words" role="alert">
          <p>{refused}</p>
          <button type="button" onClick={tryPicturesAgain}>
            Try again
          </button>
        </div>
      )}
    </div>
  );
}
