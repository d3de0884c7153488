import type { GroundQuestion, GroundThing } from '../../../core/clearance/ground/types';
import type { UsefulQuestion } from '../../../core/clearance/useful/types';
import { isLamp } from '../../../core/plan/cues';
import type { Plan } from '../../../core/plan/schema/plan';
import { setupOf } from '../../../desk/choose';
import type { groundStore } from '../../../desk/ground/groundStore';

type State = ReturnType<typeof groundStore.getState>;

/** The setups that the ground has to stay clear of. */
const countedSetups = ({ setups }: Plan, without: readonly string[]): readonly string[] =>
  setups.map(({ id }) => id).filter((id) => !without.includes(id));

type What = Pick<State, 'of' | 'heightMetres' | 'lowMetres' | 'highMetres' | 'without'>;

function thingOf(state: What, chosenId: string | null): GroundThing | string {
  const { of, heightMetres, lowMetres, highMetres } = state;
  if (of === 'height') return { heightMetres };
  if (of === 'hanging') return { lowMetres, highMetres };
  return chosenId === null ? 'Choose a stand or a lamp on the roof first.' : { itemId: chosenId };
}

/** What the overhead asks of the ground, or a sentence that says what is missing. */
export function groundQuestion(plan: Plan, state: What, chosenId: string | null): GroundQuestion | string {
  if (plan.setups.length === 0) return 'There is no setup yet: place a camera, and the ground is read.';
  const setupIds = countedSetups(plan, state.without);
  if (setupIds.length === 0) return 'No setup counts: tick at least one that it has to stay clear of.';
  const of = thingOf(state, chosenId);
  return typeof of === 'string' ? of : { setupIds, of };
}

/** The lamp that is meant by what is chosen: itself, or the first that a stand carries; null for none. */
export function lampChosen({ gear }: Plan, chosenId: string | null): string | null {
  const own = gear.find(({ id }) => id === chosenId);
  if (own && isLamp(own) && own.kind !== 'bulb string') return own.id;
  const carried = gear.find(
    (each) => each.kind === 'head' && 'on' in each.place && each.place.on === chosenId,
  );
  return carried?.id ?? null;
}

/** What the overhead asks of a lamp, or a sentence that says what is missing; null where nothing is asked of one. */
export function usefulQuestion(
  plan: Plan,
  { wish, without }: Pick<State, 'wish' | 'without'>,
  about: { readonly chosenId: string | null; readonly setupId: string | null; readonly seconds: number },
): UsefulQuestion | string | null {
  if (!wish) return null;
  const lampId = lampChosen(plan, about.chosenId);
  if (lampId === null) return 'Choose a lamp, or the stand that carries it.';
  const performer = plan.cast.find(({ id }) => id === wish.performerId) ?? plan.cast[0];
  if (!performer) return 'Nobody is cast yet: put a performer on the roof to light.';
  const setup = setupOf(plan, about.setupId);
  const clearOf = countedSetups(plan, without);
  if (!setup || clearOf.length === 0)
    return 'No setup counts: tick at least one that it has to stay clear of.';
  const { performerId: _, ...what } = wish;
  return {
    ...what,
    lampId,
    performerId: performer.id,
    setupId: setup.id,
    seconds: about.seconds,
    clearOf,
  };
}
