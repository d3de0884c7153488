import { bearingOf, headingWay } from '../runs';
import { alongOf, apart, asideOf, meeting, onLine, SAME_METRES, wayOf } from './plane';
import type { At, SnapKind, SnapPoint, SnapReason, SnapRequest, SnapThings } from './types';

/** Farther than this nobody sees that two things stand in line, metres. */
const IN_LINE_METRES = 15;
/** Of how many points, the nearest, it is asked whether something stands in line with them. */
const IN_LINE_POINTS = 16;

interface Common {
  readonly kind: SnapKind;
  readonly word: string;
  readonly key: string;
  /** The lower, the sooner it is meant; in shares of the reach. */
  readonly rank: number;
}

/** A line that the place may lie on, between two distances along it. */
export interface LineConstraint extends Common {
  readonly shape: 'line';
  readonly from: At;
  readonly way: At;
  readonly least: number;
  readonly most: number;
  /** Where its guide begins: at the nearer end of what it speaks of. */
  readonly seen: At;
}

/** A circle that the place may lie on. */
export interface CircleConstraint extends Common {
  readonly shape: 'circle';
  readonly middle: At;
  readonly radius: number;
}

export type Constraint = LineConstraint | CircleConstraint;

/** The nearest place on a constraint; null beyond its ends. */
export function nearestOn(constraint: Constraint, at: At): At | null {
  if (constraint.shape === 'circle') {
    const way = wayOf(constraint.middle, at);
    return way && onLine(constraint.middle, way, constraint.radius);
  }
  const along = alongOf(constraint.from, constraint.way, at);
  const inside = along >= constraint.least - SAME_METRES && along <= constraint.most + SAME_METRES;
  return inside ? onLine(constraint.from, constraint.way, along) : null;
}

/** Where two constraints meet nearest to a place; null where they do not. */
export function meetingOf(a: Constraint, b: Constraint, at: At): At | null {
  if (a.shape === 'circle') return b.shape === 'circle' ? null : meetingOf(b, a, at);
  const spots: At[] = [];
  if (b.shape === 'line') {
    const along = meeting(a.from, a.way, b.from, b.way);
    if (along !== null) spots.push(onLine(a.from, a.way, along));
  } else {
    const foot = alongOf(a.from, a.way, b.middle);
    const aside = asideOf(a.from, a.way, b.middle);
    const half = b.radius * b.radius - aside * aside;
    if (half >= 0) {
      const root = Math.sqrt(half);
      spots.push(onLine(a.from, a.way, foot - root), onLine(a.from, a.way, foot + root));
    }
  }
  const there = spots.filter((spot) => isOn(a, spot) && isOn(b, spot));
  there.sort((one, other) => apart(one, at) - apart(other, at));
  return there[0] ?? null;
}

/** Whether a place lies on a constraint, to within the noise of reckoning. */
export function isOn(constraint: Constraint, at: At): boolean {
  const nearest = nearestOn(constraint, at);
  return nearest !== null && apart(nearest, at) < 1e-6;
}

/** What a person is told of a constraint that holds. */
export function reasonOf(constraint: Constraint, at: At): SnapReason {
  const { kind, word, key } = constraint;
  const from = constraint.shape === 'circle' ? constraint.middle : constraint.seen;
  return apart(from, at) < SAME_METRES ? { kind, word, key } : { kind, word, key, guide: [from, at] };
}

/** More than what is held reaches, in shares of the reach. */
const FARTHEST_REACH = 2;
/** What reckoning may be off by, metres. */
const NOISE_METRES = 1e-3;

/** All that the hand may mean where it is: what is within reach, in line with it, or measured from. */
export function thingsAround({ around, at, reach, inLine, gaps }: SnapRequest): SnapThings {
  const farthest = Math.max(
    inLine === false ? 0 : IN_LINE_METRES,
    ...(gaps ?? []).map(({ metres }) => metres),
  );
  return around(at, farthest + reach * FARTHEST_REACH + NOISE_METRES);
}

/**
 * Every line and circle that is within reach of the hand, of things that lie around it; `reachOf` says how far one of a
 * key reaches.
 */
export function constraintsOf(
  request: SnapRequest,
  things: SnapThings,
  reachOf: (key: string) => number,
): Constraint[] {
  const near = (constraint: Constraint): boolean => {
    const nearest = nearestOn(constraint, request.at);
    return nearest !== null && apart(nearest, request.at) <= reachOf(constraint.key);
  };
  return [
    ...edgeLines(things),
    ...squareLines(request),
    ...(request.inLine === false ? [] : inLineLines(request, things)),
    ...gapLines(request, things),
    ...circles(request),
  ].filter(near);
}

function edgeLines({ edges }: SnapThings): LineConstraint[] {
  return edges.flatMap((edge): LineConstraint[] => {
    const way = wayOf(edge.from, edge.to);
    if (!way) return [];
    return [
      {
        shape: 'line',
        kind: 'edge',
        word: edge.word,
        key: `edge ${edge.key}`,
        rank: 0,
        from: edge.from,
        way,
        least: 0,
        most: apart(edge.from, edge.to),
        seen: edge.from,
      },
    ];
  });
}

function squareLines({ at, from, square, reach, held }: SnapRequest): LineConstraint[] {
  if (!from) return [];
  const lines = (square ?? []).flatMap(({ degrees, name, loose }, index) =>
    [0, 90].map((turn): LineConstraint => {
      const way = headingWay(degrees + turn);
      return {
        shape: 'line',
        kind: 'square',
        word: turn === 0 ? `along ${name}` : `square to ${name}`,
        key: `square ${index} ${turn}`,
        rank: loose ? 0.25 : 0.1,
        from,
        way,
        least: Number.NEGATIVE_INFINITY,
        most: Number.POSITIVE_INFINITY,
        seen: from,
      };
    }),
  );
  // So near to the corner before every bearing would catch.
  return apart(from, at) <= reach ? lines.filter(({ key }) => held?.includes(key)) : lines;
}

const AXIS = 'axis ';
const axisKey = (turn: number, point: SnapPoint): string => `${AXIS}${turn} ${point.key}`;

/** The points that something may be in line with: those around, and what is held, however far the hand has gone along. */
function pointsInLine({ around, at, held }: SnapRequest, { points }: SnapThings): readonly SnapPoint[] {
  const isThere = (key: string): boolean =>
    points.some((point) => key === axisKey(0, point) || key === axisKey(90, point));
  const isFar = (held ?? []).some((key) => key.startsWith(AXIS) && !isThere(key));
  return isFar ? around(at, Number.POSITIVE_INFINITY).points : points;
}

function inLineLines(request: SnapRequest, things: SnapThings): LineConstraint[] {
  const { at, axisDegrees = 0 } = request;
  const { edges } = things;
  const lines: LineConstraint[] = [];
  for (const edge of edges) {
    const way = wayOf(edge.from, edge.to);
    if (!way || Math.abs(asideOf(edge.from, way, at)) > request.reach * 2) continue;
    const common = { shape: 'line', kind: 'in line', word: `in line with ${edge.name}`, rank: 0.15 } as const;
    lines.push(
      { ...common, key: `on ${edge.key}`, from: edge.to, way, least: 0, most: IN_LINE_METRES, seen: edge.to },
      {
        ...common,
        key: `before ${edge.key}`,
        from: edge.from,
        way: [-way[0], -way[1]],
        least: 0,
        most: IN_LINE_METRES,
        seen: edge.from,
      },
    );
  }
  const isHeld = ({ point }: { readonly point: SnapPoint }): boolean =>
    request.held?.some((key) => key === axisKey(0, point) || key === axisKey(90, point)) ?? false;
  const all = pointsInLine(request, things).map((point) => ({ point, away: apart(point.at, at) }));
  const near = all
    .filter(({ away }) => away <= IN_LINE_METRES && away > request.reach)
    .sort((a, b) => a.away - b.away)
    .slice(0, IN_LINE_POINTS);
  near.push(...all.filter((each) => isHeld(each) && !near.includes(each)));
  for (const { point, away } of near) {
    for (const turn of [0, 90]) {
      lines.push({
        shape: 'line',
        kind: 'in line',
        word: `in line with ${point.name}`,
        key: axisKey(turn, point),
        // Of two that would do, the nearer is the one that is seen.
        rank: 0.35 + 0.3 * (away / IN_LINE_METRES),
        from: point.at,
        way: headingWay(axisDegrees + turn),
        least: Number.NEGATIVE_INFINITY,
        most: Number.POSITIVE_INFINITY,
        seen: point.at,
      });
    }
  }
  return lines;
}

function gapLines({ gaps }: SnapRequest, { edges }: SnapThings): LineConstraint[] {
  return (gaps ?? []).flatMap(({ metres, word }, index) =>
    edges.flatMap((edge): LineConstraint[] => {
      const way = wayOf(edge.from, edge.to);
      if (!way || !edge.rim || metres < SAME_METRES) return [];
      return [1, -1].map((side) => {
        const from: At = [edge.from[0] + way[1] * metres * side, edge.from[1] - way[0] * metres * side];
        return {
          shape: 'line',
          kind: 'same distance',
          word,
          key: `gap ${index} ${side} ${edge.key}`,
          rank: 0.4,
          from,
          way,
          least: 0,
          most: apart(edge.from, edge.to),
          seen: from,
        };
      });
    }),
  );
}

function circles({ from, distances }: SnapRequest): CircleConstraint[] {
  if (!from) return [];
  return (distances ?? []).flatMap(({ metres, word }, index): CircleConstraint[] =>
    metres < SAME_METRES
      ? []
      : [
          {
            shape: 'circle',
            kind: 'same distance',
            word,
            key: `length ${index}`,
            rank: 0.3,
            middle: from,
            radius: metres,
          },
        ],
  );
}

/** The line of the nearest whole step of a bearing; null at the corner itself. */
export function straightLine(request: SnapRequest): LineConstraint | null {
  const { at, from, axisDegrees = 0, straightStepDegrees: step = 15 } = request;
  const way = from && wayOf(from, at);
  if (!from || !way) return null;
  const steps = Math.round((bearingOf([0, 0], [way[0], way[1]]) - axisDegrees) / step);
  const bearing = (((axisDegrees + steps * step) % 360) + 360) % 360;
  return {
    shape: 'line',
    kind: 'straight',
    word: `held to ${Math.round(bearing * 10) / 10}°`,
    key: `straight ${Math.round(bearing * 1e6) / 1e6}`,
    rank: 0,
    from,
    way: headingWay(bearing),
    least: 0,
    most: Number.POSITIVE_INFINITY,
    seen: from,
  };
}
