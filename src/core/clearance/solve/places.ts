import { anchorOf } from '../../plan/edits/anchorOf';
import { moveItem } from '../../plan/edits/moveItem';
import { tidySpot } from '../../plan/edits/tidy';
import { itemOf, wishOf } from '../../plan/items';
import type { Spot } from '../../plan/schema/numbers';
import type { Plan } from '../../plan/schema/plan';
import type { Verdict } from '../../report/types';
import { entersFrame } from '../../sight/entering';
import { hypot } from '../../units/steadyMath';
import { stageIn, verdictsOn } from '../remedies/judge';
import { isUnwanted, type Known, type KnownSetup } from '../remedies/known';
import { leastChange, nearestMove } from '../remedies/nearestSpot';
import { keepersChanged, type Needs, needsOf } from '../remedies/needs';
import { type RemedyEdit, withRemedy } from '../remedies/remedyEdits';
import { standingRoom } from '../remedies/standingRoom';
import { type Watch, watchFrom } from '../remedies/watch';
import type { Options } from './choose';
import { Hiding } from './hiding';
import type { LampsKept } from './lampsKept';
import { type Mover, without } from './movers';
import { type Reshaping, reshapingsOf, type Shape, shapeChange, shapesOf } from './shapes';

/** Which places and shapes are tried. */
export interface Steps {
  /** How far apart places on the deck are, along both axes. */
  readonly stepMetres: number;
  readonly mostMetres: number;
  readonly heightStepMetres: number;
  /** Whether the nearest place is found between the steps too, and of what is in frame only what is likely to be hidden is looked at. */
  readonly isFine: boolean;
}

/** One thing at a place, in a shape. */
export interface Placement {
  readonly mover: Mover;
  readonly shape: Shape;
  /** How far it goes over the deck, [x, z] in metres. */
  readonly by: Spot;
  readonly edits: readonly RemedyEdit[];
  /** How far that is from how it stands, a turn counted as metres. */
  readonly change: number;
}

/** What all things are tried in. */
export interface Setting {
  readonly known: Known;
  readonly lamps: LampsKept;
  readonly steps: Steps;
  /** Counts what was tried. */
  readonly count: { tried: number };
}

/** What a shape of a thing is asked by. */
interface Sight {
  readonly plan: Plan;
  readonly needs: Needs;
  readonly hiding: Hiding;
}

/** A place that one could stand at, and what speaks against it. */
export interface Refusal {
  readonly by: Spot;
  /** Whether lamps leave their tolerance there, by distance and direction. */
  readonly losesLight: boolean;
  /** Places in the known setups of those that see it there, or come near it. */
  readonly setups: readonly number[];
}

/** How often a place is looked for anew with another camera that is in the way. */
const MOST_ROUNDS = 24;
/** So many places at which something might be hidden are looked at. */
const MOST_LOOKS = 60;
/** What might be hidden is looked for at every second place of the steps. */
const HIDING_EVERY = 2;

/** Whether a verdict on what was moved will do: it keeps the safety margin, unless it did not before. */
const willDo = (one: KnownSetup, id: string, after: Verdict): boolean => {
  const before = one.items.get(id);
  if (before?.accepted) return true;
  if (before?.wish === 'must show') return before.verdict !== 'showing' || after === 'showing';
  if (after === 'close') return before?.verdict === 'close';
  return after === 'clear' || after === 'covered';
};

/** The places for one thing, worked out as they are asked for, the least change first. */
export class Places implements Options<Placement> {
  private readonly from: Spot;
  /** The plan without all else that may move: see `solveSteps`, why that is all that has to be asked. */
  private readonly base: Plan;
  private readonly canStand: (spot: Spot) => boolean;
  private readonly reshapings: readonly Reshaping[];
  private readonly shapes: readonly Shape[];
  private readonly sights = new Map<Shape, Sight | null>();
  private readonly found: Placement[] = [];
  private finding: Generator<unknown, null, void> | null = null;

  constructor(
    private readonly setting: Setting,
    readonly mover: Mover,
    others: readonly Mover[],
  ) {
    const { known, steps } = setting;
    this.from = anchorOf(known.plan, mover.id) ?? [0, 0];
    this.base = without(known.plan, others);
    this.canStand = standingRoom(this.base, mover.id, mover.members);
    this.reshapings = reshapingsOf(known.plan, mover, steps.heightStepMetres);
    this.shapes = shapesOf(this.reshapings);
  }

  /** Whether there may be nearer places between its steps. */
  get isExact(): boolean {
    return this.setting.steps.isFine;
  }

  /** The least of those found so far. */
  get first(): Placement | null {
    return this.found[0] ?? null;
  }

  /** How it stands now. */
  get stay(): Placement {
    return this.placement(this.shapes[0], [0, 0]);
  }

  *at(k: number): Generator<unknown, Placement | null, void> {
    this.finding ??= this.all();
    while (this.found.length <= k) {
      const step = this.finding.next();
      if (step.done) return null;
      yield;
    }
    return this.found[k] ?? null;
  }

  /** Whether it may stand as it does: what is only covered by another thing that goes is told afterwards. */
  private get mayStay(): boolean {
    const { setups } = this.setting.known;
    return setups.every(({ items }) =>
      [...this.mover.members].every((id) => {
        const item = items.get(id);
        return !item || !isUnwanted(item);
      }),
    );
  }

  /** Takes it that it cannot stay as it is, since it comes to light there. */
  forbidStay(): void {
    if (this.found[0]?.edits.length === 0) this.found.shift();
  }

  private placement(shape: Shape, by: Spot): Placement {
    const { id } = this.mover;
    const isMoved = by[0] !== 0 || by[1] !== 0;
    const to = tidySpot([this.from[0] + by[0], this.from[1] + by[1]]);
    const edits: readonly RemedyEdit[] = isMoved
      ? [...shape.edits, { edit: 'moveItem', args: { id, to } }]
      : shape.edits;
    return { mover: this.mover, shape, by, edits, change: shapeChange(shape) + hypot(by[0], by[1]) };
  }

  /** By the report's own looks: whether it is out of all frames there, or hidden, and lamps keep their light. */
  *isFine(placement: Placement): Generator<unknown, boolean, void> {
    const { known, lamps, count } = this.setting;
    count.tried += 1;
    const after = withRemedy(this.base, placement);
    const changed = placement.edits.length > 0;
    if (changed && (after === this.base || !keepersChanged(this.base, after))) return false;
    if (changed && !lamps.keeps(withRemedy(known.plan, placement))) return false;
    const was = new Map([...this.base.pieces, ...this.base.gear].map((record) => [record.id, record]));
    const asked = [...after.pieces, ...after.gear].flatMap((record) => {
      const { id } = record;
      const item = itemOf(after, id);
      const isAsked = this.mover.members.has(id) || was.get(id) !== record;
      return isAsked && item && wishOf(item) !== 'either' ? [id] : [];
    });
    for (const one of known.setups) {
      const verdicts = yield* verdictsOn(after, one, asked);
      for (const [id, verdict] of verdicts) if (!willDo(one, id, verdict)) return false;
    }
    return true;
  }

  /** Whether what goes along and must show is in frame at all, wherever it shows now. */
  private maySeeShown({ plan }: Sight, by: Spot): boolean {
    return this.setting.known.setups.every((one) =>
      [...this.mover.members].every((id) => {
        const item = one.items.get(id);
        if (item?.wish !== 'must show' || item.verdict !== 'showing') return true;
        const stage = stageIn(plan, one, id);
        return (
          stage !== null && one.watches.some((watch) => entersFrame(stage, 0, watchFrom(watch, by).around))
        );
      }),
    );
  }

  /** What changes and has to keep out where it goes somewhere else on the deck; null where it cannot. */
  private keepersIn(plan: Plan): readonly string[] | null {
    const to: Spot = [this.from[0] + 0.5, this.from[1]];
    return keepersChanged(plan, moveItem(plan, { id: this.mover.id, to }));
  }

  /** What a shape is asked by. */
  private sightOf(shape: Shape): Sight | null {
    let sight = this.sights.get(shape);
    if (sight === undefined) {
      const plan = withRemedy(this.base, shape);
      const keepers = this.keepersIn(plan);
      sight = keepers && {
        plan,
        needs: needsOf({ ...this.setting.known, plan }, keepers, 'clear of all'),
        hiding: new Hiding(plan, this.mover.members),
      };
      this.sights.set(shape, sight);
    }
    return sight;
  }

  /** Whether a move holds by what can be asked quickly. */
  private holds({ needs }: Sight, by: Spot): boolean {
    this.setting.count.tried += 1;
    if (!this.canStand([this.from[0] + by[0], this.from[1] + by[1]])) return false;
    return needs.holdsMoved(by) && this.setting.lamps.mayKeepMoved([...this.mover.members], by);
  }

  /** The nearest place in a shape, nearer than a change; null for none. `allowed` may say no to places. */
  *nearest(
    shape: Shape,
    within: number,
    allowed: (placement: Placement) => boolean = () => true,
  ): Generator<unknown, Placement | null, void> {
    const sight = this.sightOf(shape);
    const most = Math.min(this.setting.steps.mostMetres, within - shapeChange(shape));
    if (!sight || most <= 0) return null;
    const { id } = this.mover;
    for (let round = 0; round < MOST_ROUNDS; round += 1) {
      const by = nearestMove((way) => this.holds(sight, way) && allowed(this.placement(shape, way)), most);
      yield;
      if (!by) return null;
      const after = moveItem(sight.plan, { id, to: [this.from[0] + by[0], this.from[1] + by[1]] });
      if (sight.needs.holdsThroughout(after)) return this.placement(shape, by);
    }
    return null;
  }

  /** The least of one number that does it on its place; nearer than a change. */
  private *leastShapes(within: number): Generator<unknown, readonly Placement[], void> {
    const found: Placement[] = [];
    for (const { lowest, highest, step, fine, shapeOf } of this.reshapings)
      for (const side of [-1, 1]) {
        const [low, high] = side < 0 ? [lowest, 0] : [0, highest];
        if (high - low < fine) continue;
        const end = withRemedy(this.base, shapeOf(side < 0 ? low : high));
        const keepers = keepersChanged(this.base, end);
        if (!keepers) continue;
        const needs = needsOf(this.setting.known, keepers, 'clear of all');
        const holds = (by: number): boolean => {
          this.setting.count.tried += 1;
          const shape = shapeOf(by);
          const after = withRemedy(this.base, shape);
          return shapeChange(shape) < within && needs.holds(after) && this.setting.lamps.mayKeep(after);
        };
        for (let round = 0; round < MOST_ROUNDS; round += 1) {
          const by = leastChange(holds, { lowest: low, highest: high, step: step / 4, fine });
          yield;
          if (by === null) break;
          if (!needs.holdsThroughout(withRemedy(this.base, shapeOf(by)))) continue;
          found.push(this.placement(shapeOf(by), [0, 0]));
          break;
        }
      }
    return found;
  }

  /** The nearest places and the least shapes, exactly, the least change first. */
  private *exact(): Generator<unknown, readonly Placement[], void> {
    let best = Number.POSITIVE_INFINITY;
    const found: Placement[] = [];
    const take = function* (this: Places, placement: Placement | null): Generator<unknown, void, void> {
      if (!placement || !(yield* this.isFine(placement))) return;
      found.push(placement);
      best = Math.min(best, placement.change);
    }.bind(this);
    const [asItIs, ...others] = this.shapes;
    yield* take(yield* this.nearest(asItIs, best));
    for (const placement of yield* this.leastShapes(best)) yield* take(placement);
    for (const shape of others) {
      if (shapeChange(shape) >= best) break;
      yield* take(yield* this.nearest(shape, best));
    }
    return found.sort((a, b) => a.change - b.change);
  }

  /** All places by steps, in all shapes, the least change first. */
  private stepped(): readonly (readonly [shape: Shape, by: Spot, change: number, isEven: boolean])[] {
    const { stepMetres, mostMetres } = this.setting.steps;
    const count = Math.floor(mostMetres / stepMetres + 1e-9);
    const spots: (readonly [Spot, boolean])[] = [];
    for (let row = -count; row <= count; row += 1)
      for (let column = -count; column <= count; column += 1) {
        const by: Spot = [column * stepMetres, row * stepMetres];
        if (hypot(by[0], by[1]) > mostMetres + 1e-9) continue;
        if (!this.canStand([this.from[0] + by[0], this.from[1] + by[1]])) continue;
        spots.push([by, column % HIDING_EVERY === 0 && row % HIDING_EVERY === 0]);
      }
    return this.shapes
      .flatMap((shape) =>
        spots.map(([by, isEven]) => [shape, by, shapeChange(shape) + hypot(by[0], by[1]), isEven] as const),
      )
      .sort((a, b) => a[2] - b[2]);
  }

  /** What speaks against each place of the steps, as it is shaped, and against its shape. */
  *refusals(): Generator<unknown, readonly Refusal[], void> {
    const { known, lamps } = this.setting;
    const { members } = this.mover;
    const [asItIs] = this.shapes;
    const keepers = this.keepersIn(this.base);
    if (!keepers) return [];
    const needs = known.setups.map((one) =>
      needsOf({ plan: this.base, setups: [one] }, keepers, 'clear of all'),
    );
    const found: Refusal[] = [];
    for (const [shape, by, , isEven] of this.stepped()) {
      if (shape !== asItIs || !isEven) continue;
      const setups = needs.flatMap((need, k) => (need.anyAgainstMoved(by) ? [k] : []));
      found.push({ by, losesLight: !lamps.mayKeepMoved([...members], by), setups });
      if (found.length % 16 === 0) yield;
    }
    return found;
  }

  /** The cameras of one known setup that are against a place. */
  camerasAgainst(setup: number, by: Spot): readonly Watch[] {
    const { known } = this.setting;
    const keepers = this.keepersIn(this.base) ?? [];
    const needs = needsOf({ plan: this.base, setups: [known.setups[setup]] }, keepers, 'clear of all');
    return needs.allAgainstMoved(by);
  }

  private *all(): Generator<unknown, null, void> {
    if (this.mayStay) {
      this.found.push(this.stay);
      yield;
    }
    const { isFine: isExact } = this.setting.steps;
    const exact = isExact ? [...(yield* this.exact())] : [];
    let looks = 0;
    let count = 0;
    for (const [shape, by, change, isEven] of this.stepped()) {
      while (exact[0] && exact[0].change <= change) {
        const first = exact.shift();
        if (first) this.found.push(first);
        yield;
      }
      count += 1;
      if (count % 128 === 0) yield;
      if (shape.edits.length === 0 && by[0] === 0 && by[1] === 0) continue;
      const sight = this.sightOf(shape);
      if (!sight) continue;
      this.setting.count.tried += 1;
      if (!this.setting.lamps.mayKeepMoved([...this.mover.members], by)) continue;
      if (!this.maySeeShown(sight, by)) continue;
      const against = sight.needs.againstMoved(by);
      if (against && isExact) {
        if (!isEven || looks >= MOST_LOOKS || !sight.hiding.mayHide(against, by)) continue;
        looks += 1;
      }
      const placement = this.placement(shape, by);
      if (!(yield* this.isFine(placement))) continue;
      this.found.push(placement);
      yield;
    }
    this.found.push(...exact);
    return null;
  }
}
