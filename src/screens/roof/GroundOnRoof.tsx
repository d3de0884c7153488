import { useStore } from 'zustand';
import { groundStore } from '../../desk/ground/groundStore';
import { useSession } from '../../desk/hooks';

/** Shows clear ground on the overhead, with its panel on the Set sheet. */
export function GroundOnRoof() {
  const on = useStore(groundStore, (state) => state.on);
  const setSheet = useSession((state) => state.setSheet);
  return (
    <button
      type="button"
      className="toggle"
      aria-pressed={on}
      onClick={() => {
        groundStore.setState({ on: !on, panel: 'ground' });
        if (!on) setSheet('set');
      }}
    >
      clear ground
    </button>
  );
}
