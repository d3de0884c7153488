import type { Gear } from '../../plan/schema/gear';
import type { Plan } from '../../plan/schema/plan';
import { footOf } from '../../plan/surfaces';
import { HEADROOM_METRES } from '../../plan/walkWays/obstacles';
import { hypot } from '../../units/steadyMath';
import { withRemedy } from '../remedies/remedyEdits';
import { apartMetres } from '../remedies/standingRoom';
import type { LampsKept } from './lampsKept';
import type { Mover } from './movers';
import type { Placement } from './places';

/** One foot on the deck. */
interface Foot {
  readonly gear: Gear;
  readonly x: number;
  readonly z: number;
  readonly metres: number;
}

/** Says of two things at their places whether they are in each other's way, or in each other's light. */
export class Crowding {
  private readonly feet: ReadonlyMap<Mover, readonly Foot[]>;
  private readonly light = new Map<string, boolean>();

  constructor(
    private readonly plan: Plan,
    movers: readonly Mover[],
    private readonly lamps: LampsKept,
  ) {
    this.feet = new Map(
      movers.map((mover) => [
        mover,
        plan.gear.flatMap((gear): readonly Foot[] => {
          const foot = mover.members.has(gear.id) && gear.kind !== 'track' ? footOf(plan, gear.id) : null;
          return foot ? [{ gear, x: foot.spot[0], z: foot.spot[1], metres: foot.metres }] : [];
        }),
      ]),
    );
  }

  /** Whether two placements go together. */
  fits(a: Placement, b: Placement): boolean {
    if (a.edits.length === 0 && b.edits.length === 0) return true;
    return this.hasRoom(a, b) && this.keepLight(a, b);
  }

  /** Whether the feet of two things keep their distance from each other. */
  hasRoom(a: Placement, b: Placement): boolean {
    return this.isApart(a, b) && this.isApart(b, a);
  }

  /** Whether the foot of one keeps its distance from all feet of the other, as far as it has it now. */
  private isApart(one: Placement, other: Placement): boolean {
    const own = this.feet.get(one.mover)?.find(({ gear }) => gear.id === one.mover.id);
    if (!own) return true;
    return (this.feet.get(other.mover) ?? []).every((foot) => {
      if (Math.abs(foot.metres - own.metres) > HEADROOM_METRES) return true;
      const now = hypot(own.x - foot.x, own.z - foot.z);
      const then = hypot(own.x + one.by[0] - foot.x - other.by[0], own.z + one.by[1] - foot.z - other.by[1]);
      return then >= Math.min(apartMetres(own.gear, foot.gear), now) - 1e-6;
    });
  }

  private keepLight(a: Placement, b: Placement): boolean {
    if (a.edits.length === 0 || b.edits.length === 0) return true;
    const edits = [...a.edits, ...b.edits];
    const key = JSON.stringify(edits);
    let keeps = this.light.get(key);
    if (keeps === undefined) {
      keeps = this.lamps.keeps(withRemedy(this.plan, { edits }));
      this.light.set(key, keeps);
    }
    return keeps;
  }
}
