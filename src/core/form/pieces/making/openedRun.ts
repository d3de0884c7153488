import type { ShapeBuilder } from '../../build/shapeBuilder';
import { type Column, columnsOf, distinct, type OpenedRun, placedOpenings } from './openings';
import type { Mitre } from './path';
import { run, uprightSection } from './run';

/** The upright body of a run: how thick, and from where to where in the world, metres. */
export interface RunBody {
  readonly thickness: number;
  readonly low: number;
  readonly high: number;
}

/** Seen by one who walks the path. */
type Side = 'left' | 'right';

/**
 * A closed solid along a path, mitred at its corners, with its openings cut through. Body and openings are cut into
 * cells by the same lines all along the run, and only faces between what is there and what is not are made: however
 * openings overlap, no edge is left open and no face lies inside. `cornersFor` is the thickness that the openings'
 * room beside the corners is reckoned with.
 */
export function openedRun(
  builder: ShapeBuilder,
  record: OpenedRun,
  body: RunBody,
  cornersFor = body.thickness,
): void {
  const openings = placedOpenings(record, cornersFor);
  if (openings.length === 0) {
    run(builder, record.path, record.closed, uprightSection(body.thickness, body.low, body.high));
    return;
  }
  const { columns, closed } = columnsOf(record, openings);
  const tall = body.high - body.low;
  const within = (level: number) => Math.min(level, tall);
  const levels = distinct([0, tall, ...openings.flatMap(({ low, high }) => [within(low), within(high)])]);
  const cells = columns.map((column) => solidCells(column, levels));
  const faces = new Faces(builder, columns, levels, body, closed);
  columns.forEach((_, k) => {
    const before = cells[k - 1] ?? (closed ? cells[cells.length - 1] : null);
    const after = cells[k + 1] ?? (closed ? cells[0] : null);
    cells[k].forEach((isSolid, level) => {
      if (!isSolid) return;
      faces.side(k, level, 'right');
      faces.side(k, level, 'left');
      if (!cells[k][level - 1]) faces.level(k, level, 'down');
      if (!cells[k][level + 1]) faces.level(k, level + 1, 'up');
      if (!before?.[level]) faces.end(k, level, 'start');
      if (!after?.[level]) faces.end(k, level, 'end');
    });
  });
}

/** Level by level, whether a column is there. */
const solidCells = ({ voids }: Column, levels: readonly number[]): readonly boolean[] =>
  levels.slice(1).map((high, k) => {
    const middle = (levels[k] + high) / 2;
    return !voids.some(([from, to]) => from < middle && middle < to);
  });

/** Makes the faces of cells; corners in one place are one corner. */
class Faces {
  private readonly corners = new Map<string, number>();

  constructor(
    private readonly builder: ShapeBuilder,
    private readonly columns: readonly Column[],
    private readonly levels: readonly number[],
    private readonly body: RunBody,
    private readonly closed: boolean,
  ) {}

  /** The face along one side of a cell, facing out. */
  side(column: number, level: number, side: Side): void {
    const [low, high] = side === 'right' ? [level, level + 1] : [level + 1, level];
    this.strip(this.at(column, side, low), this.at(column, side, high));
  }

  /** The level face of a cell at a level, facing up or down. */
  level(column: number, level: number, way: 'up' | 'down'): void {
    const [from, to]: readonly Side[] = way === 'up' ? ['right', 'left'] : ['left', 'right'];
    this.strip(this.at(column, from, level), this.at(column, to, level));
  }

  /** The upright face across the run at the start or the end of a cell, facing out. */
  end(column: number, level: number, which: 'start' | 'end'): void {
    const pick = which === 'start' ? 0 : 1;
    const [a, b, c, d] = [
      this.at(column, 'left', level)[pick],
      this.at(column, 'right', level)[pick],
      this.at(column, 'right', level + 1)[pick],
      this.at(column, 'left', level + 1)[pick],
    ];
    if (which === 'start') this.builder.triangle(a, b, c).triangle(a, c, d);
    else this.builder.triangle(a, c, b).triangle(a, d, c);
  }

  private strip(from: readonly [number, number], to: readonly [number, number]): void {
    this.builder.triangle(from[0], from[1], to[1]).triangle(from[0], to[1], to[0]);
  }

  /** The corners at the start and the end of a column, on one side at one level. */
  private at(column: number, side: Side, level: number): readonly [number, number] {
    const { from, to } = this.columns[column];
    const next = this.closed && column === this.columns.length - 1 ? 0 : column + 1;
    return [this.corner(column, from, side, level), this.corner(next, to, side, level)];
  }

  private corner(station: number, { at, right }: Mitre, side: Side, level: number): number {
    const key = `${station} ${side} ${level}`;
    const known = this.corners.get(key);
    if (known !== undefined) return known;
    const aside = (side === 'right' ? this.body.thickness : -this.body.thickness) / 2;
    const last = this.levels.length - 1;
    // The uppermost level is the body's own, to the last bit.
    const height = level === last ? this.body.high : this.body.low + this.levels[level];
    const made = this.builder.corner([at[0] + right[0] * aside, height, at[1] + right[1] * aside]);
    this.corners.set(key, made);
    return made;
  }
}
