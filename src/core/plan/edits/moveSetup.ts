import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';
import { translation, withinReach } from './motion';
import { tidyMetres } from './tidy';

/**
 * Moves a setup's camera over the deck so that its first key comes to [x, z], metres; its other keys by the same way,
 * which is cut short where one of them would leave the 5 km that a plan may hold.
 */
export function moveSetup(
  plan: Plan,
  { setupId, to }: { readonly setupId: string; readonly to: Spot },
): Plan {
  return editSetup(plan, setupId, (setup) => {
    const before = setup.move.keys.map(({ position }) => position);
    const [first] = before;
    const by: Spot = [
      withinReach(
        before.map(([x]) => x),
        tidyMetres(to[0] - first[0]),
      ),
      withinReach(
        before.map(([, , z]) => z),
        tidyMetres(to[1] - first[2]),
      ),
    ];
    if (by[0] === 0 && by[1] === 0) return setup;
    const { spot } = translation(by);
    const keys = setup.move.keys.map((key) => {
      const [x, z] = spot([key.position[0], key.position[2]]);
      return { ...key, position: [x, key.position[1], z] as [number, number, number] };
    });
    return { ...setup, move: { ...setup.move, keys } };
  });
}
