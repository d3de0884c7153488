import { BUILT_IN_KIT } from '../../../src/core/kit/builtInKit';
import { itemsOf } from '../../../src/core/plan/items';
import type { Body, Lens } from '../../../src/core/plan/schema/kit';
import type { Point, Spot } from '../../../src/core/plan/schema/numbers';
import type { Plan } from '../../../src/core/plan/schema/plan';
import type { Draw } from '../../plans/draw';

/** Arguments for the edits, drawn from what the plan has, now and then foolish: ids of nobody, places far out. */
export class Hat {
  constructor(
    readonly plan: Plan,
    readonly draw: Draw,
  ) {}

  /** One of a list, or what stands for nothing. */
  oneOf<Entry>(list: readonly Entry[], otherwise: Entry): Entry {
    return list.length === 0 || this.draw.chance(0.03) ? otherwise : this.draw.pick(list);
  }
  id = (): string =>
    this.oneOf(
      itemsOf(this.plan).map(({ record }) => record.id),
      'nobody',
    );
  ids = (): string[] => Array.from({ length: this.draw.pick([0, 1, 1, 2, 3, 5]) }, this.id);
  gear = (...kinds: readonly string[]): string =>
    this.oneOf(
      this.plan.gear.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id),
      this.id(),
    );
  piece = (...kinds: readonly string[]): string =>
    this.oneOf(
      this.plan.pieces.filter(({ kind }) => kinds.includes(kind)).map(({ id }) => id),
      this.id(),
    );
  setup = (): string =>
    this.oneOf(
      this.plan.setups.map(({ id }) => id),
      'nobody',
    );
  metres = (): number =>
    this.draw.chance(0.03) ? this.draw.pick([0, -1, 1e-9, 4999.9, -5000, 7000]) : this.draw.between(-9, 9);
  size = (): number =>
    this.draw.chance(0.05) ? this.draw.pick([0, -3, 1e-9, 600, 1e6]) : this.draw.between(0.05, 4);
  degrees = (): number =>
    this.draw.chance(0.2)
      ? this.draw.pick([0, 90, -90, 180, 360, -360, 720, 1e4])
      : this.draw.between(-360, 360);
  spot = (): Spot => [this.metres(), this.metres()];
  spots = (least: number, most: number): Spot[] =>
    Array.from({ length: this.draw.whole(least, most) }, this.spot);
  point = (): Point => [this.metres(), this.draw.between(0, 3), this.metres()];
  index = (): number => this.draw.pick([0, 0, 1, 1, 2, 3, 4, -1, 99]);
  hole = (id: string): { readonly hole?: string } => {
    const deck = this.plan.pieces.find((piece) => piece.id === id);
    const holes = deck?.kind === 'deck' ? (deck.holes ?? []) : [];
    return holes.length > 0 && this.draw.chance(0.7) ? { hole: this.draw.pick(holes).id } : {};
  };
  opening = (id: string): string => {
    const run = this.plan.pieces.find((piece) => piece.id === id);
    const openings = run && 'openings' in run ? (run.openings ?? []) : [];
    return this.oneOf(
      openings.map((entry) => entry.id),
      'none',
    );
  };
  frameLine = (): string =>
    this.oneOf(
      (this.plan.frameLines ?? []).map(({ id }) => id),
      'none',
    );
  body = (): Body => this.oneOf(this.plan.kit.bodies, BUILT_IN_KIT.bodies[0]);
  lens = (): Lens => this.oneOf(this.plan.kit.lenses, BUILT_IN_KIT.lenses[0]);
  headClass = (): string =>
    this.oneOf(
      this.plan.kit.heads.map(({ id }) => id),
      'none',
    );
  performer = (): string =>
    this.oneOf(
      this.plan.cast.map(({ id }) => id),
      'nobody',
    );
  markOf = (performerId: string): string =>
    this.oneOf(
      (this.plan.cast.find(({ id }) => id === performerId)?.marks ?? []).map(({ id }) => id),
      'none',
    );
  beat = (): string =>
    this.oneOf(
      this.plan.beats.map(({ id }) => id),
      'never',
    );
  seconds = (): number =>
    this.draw.chance(0.05) ? this.draw.pick([-1, 4000, Number.NaN]) : this.draw.between(0, 20);
  pass = (): string =>
    this.oneOf(
      (this.plan.passes ?? []).map(({ id }) => id),
      'none',
    );
  line = (): string =>
    this.oneOf(
      (this.plan.lines ?? []).map(({ id }) => id),
      'none',
    );
  probe = (): string =>
    this.oneOf(
      (this.plan.probes ?? []).map(({ id }) => id),
      'none',
    );
  area = (): string =>
    this.oneOf(
      (this.plan.ground.areas ?? []).map(({ id }) => id),
      'none',
    );
  tape = (): string =>
    this.oneOf(
      (this.plan.tapes ?? []).map(({ id }) => id),
      'none',
    );
  orNull = <Value>(value: Value): Value | null => (this.draw.chance(0.25) ? null : value);
}
