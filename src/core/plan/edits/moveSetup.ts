import type { Spot } from '../schema/numbers';
import type { Plan } from '../schema/plan';
import { editSetup } from './editRecord';
import { tidyMetres } from './tidy';

/** Moves a setup's camera over the deck so that its first key comes to [x, z], metres; its other keys by the same way. */
export function moveSetup(
  plan: Plan,
  { setupId, to }: { readonly setupId: string; readonly to: Spot },
): Plan {
  return editSetup(plan, setupId, (setup) => {
    const first = setup.move.keys[0]?.position;
    if (!first || (first[0] === to[0] && first[2] === to[1])) return setup;
    const keys = setup.move.keys.map((key) => ({
      ...key,
      position: [
        tidyMetres(key.position[0] + to[0] - first[0]),
        key.position[1],
        tidyMetres(key.position[2] + to[1] - first[2]),
      ] as [number, number, number],
    }));
    return { ...setup, move: { ...setup.move, keys } };
  });
}
