import { useStore } from 'zustand';
import { useSession } from '../../desk/hooks';
import { levelMapStore } from '../../desk/levelMap/levelMapStore';
import { Segmented } from '../parts/Segmented';

/** What of the light the overhead shows, while the Light sheet is open. */
export function LightOnRoof() {
  const open = useSession((state) => state.sheet) === 'light';
  const roof = useStore(levelMapStore, (state) => state.roof);
  if (!open) return null;
  return (
    <Segmented
      label="Light on the roof as"
      choices={[
        { value: 'throws', word: 'throws' },
        { value: 'levels', word: 'levels' },
      ]}
      chosen={roof}
      onChoose={(to) => levelMapStore.setState({ roof: to })}
    />
  );
}
