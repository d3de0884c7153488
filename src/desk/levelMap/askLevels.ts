import type { GridQuestion } from '../../core/light/levelGrid';
import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { sentenceOf } from '../reasonOf';
import { levelMapStore, meteredHeight } from './levelMapStore';
import { LevelMapWorker } from './levelMapWorker';

/** Squares of a map, coarse ones first so that something is seen at once, metres. */
const STEPS = [1, 0.5, 0.25] as const;
/** Cells across the frame. */
const FRAME_COLUMNS = [40, 120] as const;

/** An instant of a plan, through a setup or, for null, on the roof as the plan has it. */
export interface Instant {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly seconds: number;
}

function tellTrouble(error: unknown): undefined {
  levelMapStore.setState({
    trouble: sentenceOf('The levels could not be worked out', error),
  });
}

let worker: LevelMapWorker | null = null;
/** Started by the first question: who never opens the Light sheet has none. */
function theWorker(): LevelMapWorker {
  worker ??= new LevelMapWorker();
  return worker;
}

interface MapQuestion extends Instant {
  readonly of: GridQuestion['of'];
}

const maps = latestWins<MapQuestion>(async ({ plan, setupId, seconds, of }, isLatest) => {
  for (const stepMetres of STEPS) {
    const question: GridQuestion = { heightMetres: meteredHeight(of), stepMetres, of };
    const grid = await theWorker()
      .about(plan, (api) => api.map(setupId, seconds, question))
      .catch(tellTrouble);
    if (grid) levelMapStore.setState({ grid, trouble: null });
    if (!grid || !isLatest()) return;
  }
});

const frames = latestWins<Instant & { readonly setupId: string }>(
  async ({ plan, setupId, seconds }, isLatest) => {
    for (const columns of FRAME_COLUMNS) {
      const levels = await theWorker()
        .about(plan, (api) => api.frame(setupId, seconds, columns))
        .catch(tellTrouble);
      if (levels) levelMapStore.setState({ frame: { setupId, levels }, trouble: null });
      if (!levels || !isLatest()) return;
    }
  },
);

interface SpotQuestion extends Instant {
  readonly setupId: string;
  /** 0..1 from the left and top edges of the frame. */
  readonly at: readonly [number, number];
}

const spots = latestWins<SpotQuestion>(async ({ plan, setupId, seconds, at }, isLatest) => {
  const reading = await theWorker()
    .about(plan, (api) => api.spot(setupId, seconds, at))
    .catch(tellTrouble);
  if (isLatest() && reading !== undefined)
    levelMapStore.setState(({ spot }) => ({ spot: { at: spot?.at ?? at, reading } }));
});

interface PlaceQuestion extends MapQuestion {
  /** [x, z], metres. */
  readonly at: readonly [number, number];
}

const places = latestWins<PlaceQuestion>(async ({ plan, setupId, seconds, of, at }, isLatest) => {
  const reading = await theWorker()
    .about(plan, (api) => api.place(setupId, seconds, at, { heightMetres: meteredHeight(of), of }))
    .catch(tellTrouble);
  if (isLatest() && reading !== undefined)
    levelMapStore.setState(({ place }) => ({ place: { at: place?.at ?? at, reading } }));
});

/** Asks for the levels over the roof, coarse and then fine; a newer question ends an older one. */
export function askMap(question: MapQuestion): void {
  worker?.giveUp('map');
  maps.ask(question);
}

/** Asks for the stops over a setup's frame. */
export function askFrame(question: Instant & { readonly setupId: string }): void {
  worker?.giveUp('frame');
  frames.ask(question);
}

/** Stops what is being reckoned for nobody. */
export function stopLevels(what: 'map' | 'frame'): void {
  (what === 'map' ? maps : frames).drop();
  worker?.giveUp(what);
}

/** Puts the spot meter to a place of the frame, 0..1 from its left and top edges; `readSpot` reads it. */
export const pointSpot = (at: SpotQuestion['at']): void =>
  levelMapStore.setState(({ spot }) => ({ spot: { ...spot, at } }));

/** Reads a place of a setup's frame. */
export const readSpot = (question: SpotQuestion): void => spots.ask(question);

/** Puts the meter to a place of the roof, [x, z], metres; `readPlace` reads it. */
export const pointPlace = (at: PlaceQuestion['at']): void =>
  levelMapStore.setState(({ place }) => ({ place: { ...place, at } }));

/** Reads a place of the roof. */
export const readPlace = (question: PlaceQuestion): void => places.ask(question);
