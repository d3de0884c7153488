import { useEffect, useMemo, useState } from 'react';
import { useStore } from 'zustand';
import { spanOf } from '../../../core/optics/span';
import { setupsInOrder } from '../../../core/plan/nightOrder';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupLetter } from '../../../core/plan/setupLetter';
import { formatSeconds } from '../../../core/units/seconds';
import { type CrewPictures, pictureStore } from '../../../desk/crew/pictures/pictureStore';
import { stillKey } from '../../../desk/crew/pictures/stillKey';
import { useCrew } from '../../../desk/crew/useCrew';
import { seeStill, type WantedStill, wantStill } from './stillQueue';
import './picture.css';

/** What a place asks for: a setup's still at an instant within its span; null for a setup that the plan lacks. */
function stillOf(plan: Plan, fragment: string, setupId: string, seconds: number | null): WantedStill | null {
  const setup = plan.setups.find(({ id }) => id === setupId);
  if (!setup) return null;
  const [from, to] = spanOf(plan, setup);
  const at = Math.min(to, Math.max(from, seconds ?? from));
  const order = setupsInOrder(plan).indexOf(setup);
  return { key: stillKey(fragment, setupId, at), plan, setup, seconds: at, order };
}

/** What a place without its picture says. */
const wordsOf = (key: string, { refused, drawingKey, asked, done }: CrewPictures): string => {
  if (refused !== null) return 'No picture';
  return drawingKey === key ? `Drawing picture ${done + 1} of ${asked}` : 'Its picture comes';
};

/** A setup as its lens sees it, at an instant of the action's clock, seconds; of its span's start where none is given. */
export function SetupPicture(props: { readonly setupId: string; readonly seconds?: number }) {
  const { setupId, seconds = null } = props;
  const plan = useCrew((state) => state.plan);
  const fragment = useCrew((state) => state.fragment);
  const still = useMemo(() => stillOf(plan, fragment, setupId, seconds), [plan, fragment, setupId, seconds]);
  return still && <Still still={still} />;
}

function Still({ still }: { readonly still: WantedStill }) {
  const { key, plan, setup, seconds } = still;
  const address = useStore(pictureStore, ({ stills }) => stills.get(key));
  const words = useStore(pictureStore, (state) => wordsOf(key, state));
  const [place, setPlace] = useState<HTMLElement | null>(null);
  useEffect(() => wantStill(still), [still]);
  useEffect(() => {
    if (!place) return;
    let unsee: (() => void) | null = null;
    const observer = new IntersectionObserver((entries) => {
      const isSeen = entries.at(-1)?.isIntersecting === true;
      if (isSeen) unsee ??= seeStill(key);
      else {
        unsee?.();
        unsee = null;
      }
    });
    observer.observe(place);
    return () => {
      observer.disconnect();
      unsee?.();
    };
  }, [place, key]);
  const letter = setupLetter(plan.setups.indexOf(setup));
  return (
    <div className="crew-picture" ref={setPlace} style={{ aspectRatio: setup.delivery }}>
      {address === undefined ? (
        <p>{words}</p>
      ) : (
        <img
          src={address}
          alt={`What setup ${letter} sees at ${formatSeconds(seconds)}, ${setup.label}`}
          draggable={false}
        />
      )}
    </div>
  );
}
