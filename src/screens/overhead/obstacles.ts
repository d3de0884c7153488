import { walksOf } from '../../core/form/figure/walks';
import { whereabouts } from '../../core/form/figure/whereabouts';
import { footprintOf } from '../../core/form/fromAbove/footprint';
import { stateAt } from '../../core/optics/camera';
import { itemNow } from '../../core/optics/riding';
import { endsOfPair } from '../../desk/blocking/lines';
import { throughBoth } from './blocking/lines';
import { boundsAt } from './footprintBounds';
import type { Obstacles } from './geometry/labels';
import { roofBounds } from './geometry/roof';
import { bandOf, segmentsOf } from './geometry/runs';
import { type Bounds, boundsOf, type Spot } from './geometry/spots';
import { flightOf } from './geometry/stairHouse';
import { frameOnPlan } from './layers/frameOnPlan';
import type { LetteringInput } from './letteredWish';
import { shownItems } from './shown';
import { keyOf } from './targets';

type Box = Obstacles['boxes'][number];
type Line = Obstacles['lines'][number];

/** Things with a larger footprint than this are kept clear by their edges, not as a whole: names may stand in them. */
const LARGE = 70 * 70;

/** What names had better not cover at this view: symbols, the cast, the edges of what is cut, the chosen frame's lines. */
export function obstaclesOf(input: LetteringInput, blocked: readonly Bounds[]): Obstacles {
  const boxes: Box[] = [];
  const lines: Line[] = [];
  const { plan, at, perMetre, seconds, setupId } = input;
  const path = (spots: readonly Spot[], closed: boolean, cost: number): void => {
    for (const { from, to } of segmentsOf(spots, closed)) lines.push({ from: at(from), to: at(to), cost });
  };
  for (const item of shownItems(plan)) {
    if (item.section === 'cast') {
      const place = whereabouts(item.record, plan, seconds);
      if (place) boxes.push(square(item.record.id, at([place.at[0], place.at[2]]), 0.27 * perMetre, 4));
      for (const mark of item.record.marks) {
        const owner = keyOf({ type: 'mark', performerId: item.record.id, markId: mark.id });
        boxes.push(square(owner, at(mark.at), 0.18 * perMetre, 2));
      }
      for (const walk of walksOf(item.record, plan)) path(walk.path, false, 1);
      continue;
    }
    const { record } = item;
    if (record.kind === 'deck' || record.kind === 'skyline block') continue;
    if (record.kind === 'parapet' || record.kind === 'wall') {
      const band = bandOf(record.path, record.closed, record.thicknessMetres);
      path(band.left, band.closed, 2);
      path(band.right, band.closed, 2);
      continue;
    }
    const footprint = footprintOf(itemNow(plan, item, seconds), plan);
    if (!footprint.closed) {
      path(footprint.outline, false, record.kind === 'cable' ? 0.4 : 0.8);
      continue;
    }
    const bounds = boundsAt(footprint, at);
    if (!bounds) continue;
    if (record.kind === 'stair house') {
      const flight = boundsOf(flightOf(record).map(at));
      if (flight) boxes.push({ owner: `${record.id}:flight`, bounds: flight, cost: 2 });
    }
    const area = (bounds[2] - bounds[0]) * (bounds[3] - bounds[1]);
    if (area > LARGE) path(footprint.outline, true, 1.5);
    boxes.push({ owner: record.id, bounds, cost: area > LARGE ? 0.8 : 1.6 });
  }
  const bounds = roofBounds(plan);
  for (const pair of input.blocking?.lines.pairs ?? []) {
    const ends = endsOfPair(plan, pair, seconds);
    const line = ends && throughBoth(ends, bounds);
    if (line) path(line, false, 0.7);
  }
  for (const setup of plan.setups) {
    const [x, , z] = stateAt(plan, setup, seconds).position;
    boxes.push(square(keyOf({ type: 'camera', setupId: setup.id }), at([x, z]), 0.3 * perMetre, 3));
  }
  const chosen = plan.setups.find(({ id }) => id === setupId);
  if (chosen) {
    const frame = frameOnPlan(plan, chosen, seconds);
    for (const edge of frame.edges) lines.push({ from: at(frame.apex), to: at(edge), cost: 1.4 });
    for (const edge of frame.lookAround) lines.push({ from: at(frame.apex), to: at(edge), cost: 0.6 });
    lines.push({ from: at(frame.apex), to: at(frame.focus), cost: 0.6 });
  }
  return { boxes, lines, blocked };
}

function square(owner: string, [x, y]: Spot, half: number, cost: number): Box {
  const size = Math.max(5, half);
  return { owner, bounds: [x - size, y - size, x + size, y + size], cost };
}
