import { PerformanceMonitor } from '@react-three/drei';
import { useLive, useSession } from '../../desk/hooks';
import { readPreference } from '../../desk/preferences';
import { sessionStore } from '../../desk/sessionStore';
import { toastStore } from '../../desk/toastStore';

/** Below this many pictures a second a move cannot be judged; film has 24. */
const FEWEST_PER_SECOND = 18;
/** Quarter seconds that are looked at before anything is decided. */
const QUARTERS = 6;

/**
 * Watches a move being played in the full picture, and goes over to the light one where the machine cannot keep up:
 * a move has to be seen at its speed. A picture that somebody chose is left alone.
 */
export function PlaySpeed() {
  const isPlaying = useLive((state) => state.playing);
  const isFull = useSession((state) => state.pictureQuality === 'full');
  if (!isPlaying || !isFull || readPreference('picture', ['light', 'full']) !== null) return null;
  return (
    <PerformanceMonitor
      iterations={QUARTERS}
      bounds={() => [FEWEST_PER_SECOND, Infinity]}
      onDecline={() => {
        sessionStore.setState({ pictureQuality: 'light' });
        toastStore.getState().say('The picture is drawn lighter, so that the move plays at its speed.', {
          about: 'picture',
          action: { word: 'Draw it in full', act: () => sessionStore.getState().setPictureQuality('full') },
        });
      }}
    />
  );
}
