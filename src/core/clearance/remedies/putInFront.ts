import type { Vec3 } from '../../form/build/vector';
import { anchorOf } from '../../plan/edits/anchorOf';
import { moveItem } from '../../plan/edits/moveItem';
import { tidySpot } from '../../plan/edits/tidy';
import { named } from '../../plan/named';
import type { Spot } from '../../plan/schema/numbers';
import type { Piece } from '../../plan/schema/pieces';
import { cornersOf } from '../../sight/corners';
import { hypot } from '../../units/steadyMath';
import { type Case, type Finding, proveThings, worstWatch } from './case';
import { mayHide, takenBy, takenInFrame } from './inPicture';
import { changedIds, judgePlaced, stageIn } from './judge';
import { isFinding } from './known';
import { keepersChanged } from './needs';
import { readItems } from './readItems';
import { standingRoom } from './standingRoom';
import type { Remedy } from './types';
import { lengthWords, wayWords } from './words';

/** Set pieces that a crew shifts; the rest is built, or larger. */
const SHIFTED: ReadonlySet<Piece['kind']> = new Set(['box', 'tank', 'chart']);
/** Longer than this no two people shift a thing between takes, metres; an estimate, no source. */
const LONGEST_METRES = 2.5;
/** A set piece is put no farther than this, metres; an estimate, no source. */
const FARTHEST_METRES = 2;
/** Places along the line of sight that are tried are so far apart, metres. */
const APART_METRES = 0.2;
/** Of each set piece so many places are looked at, the nearest first. */
const MOST_LOOKS = 4;

/** Set pieces that may be shifted: small, unlocked, with a place. */
const shifted = ({ known: { plan }, one, item }: Case): readonly Piece[] =>
  plan.pieces.filter((piece) => {
    if (!SHIFTED.has(piece.kind) || piece.locked === true || piece.id === item.record.id) return false;
    const stage = stageIn(plan, one, piece.id);
    if (!stage) return false;
    const corners = stage.parts.flatMap(cornersOf);
    return [0, 2].every((axis) => {
      const along = corners.map((corner) => corner[axis]);
      return Math.max(...along) - Math.min(...along) <= LONGEST_METRES;
    });
  });

/** Places on the line of sight to the item, nearest to a set piece first, from where it may hide the item. */
function placesFor(of: Case, piece: Piece): readonly Spot[] {
  const { known, one, item } = of;
  const { camera } = worstWatch(of);
  const from = anchorOf(known.plan, piece.id);
  const stage = stageIn(known.plan, one, item.record.id);
  const own = stageIn(known.plan, one, piece.id);
  const behind = stage && takenInFrame(stage, camera);
  if (!from || !stage || !own || !behind) return [];
  const { position, right, forward } = camera.pose;
  const middle = (behind[0] + behind[2]) / 2;
  const way: Spot = [forward[0] + right[0] * middle, forward[2] + right[2] * middle];
  const level = hypot(way[0], way[1]);
  const farthest = Math.min(
    ...stage.parts.map(({ centre }) => hypot(centre[0] - position[0], centre[2] - position[2])),
  );
  const corners = own.parts.flatMap(cornersOf);
  const places: Spot[] = [];
  for (let metres = APART_METRES; metres < farthest; metres += APART_METRES) {
    const spot: Spot = [position[0] + (way[0] / level) * metres, position[2] + (way[1] / level) * metres];
    const by: Spot = [spot[0] - from[0], spot[1] - from[1]];
    if (hypot(by[0], by[1]) > FARTHEST_METRES) continue;
    const there = corners.map((corner): Vec3 => [corner[0] + by[0], corner[1], corner[2] + by[1]]);
    const before = takenBy(there, camera);
    if (before && mayHide(before, behind)) places.push(spot);
  }
  const away = (spot: Spot): number => hypot(spot[0] - from[0], spot[1] - from[1]);
  return places.sort((a, b) => away(a) - away(b));
}

/** A set piece put before the item, as near to where it is as will do. */
function* putOf(of: Case, piece: Piece): Generator<number, Remedy | null, void> {
  const { known, one, item, report } = of;
  const { plan } = known;
  const from = anchorOf(plan, piece.id);
  const places = placesFor(of, piece);
  if (!from || places.length === 0) return null;
  const gone = changedIds(plan, moveItem(plan, { id: piece.id, to: [from[0] + 0.5, from[1]] }));
  if (gone.includes(item.record.id)) return null;
  const canStand = standingRoom(plan, piece.id, new Set(gone));
  for (const spot of places.filter(canStand).slice(0, MOST_LOOKS)) {
    const to = tidySpot(spot);
    const after = moveItem(plan, { id: piece.id, to });
    if (!keepersChanged(plan, after)) continue;
    const instants = Float64Array.of(report.worstAtSeconds);
    const then = yield* readItems(after, { ...one, instants }, [item.record.id]);
    if (isFinding(report.wish, then.get(item.record.id) ?? 'showing')) continue;
    const metres = hypot(to[0] - from[0], to[1] - from[1]);
    const remedy = yield* proveThings(
      of,
      {
        kind: 'put in front',
        edits: [{ edit: 'moveItem', args: { id: piece.id, to } }],
        metres,
        what: `${named(piece.label)} put ${lengthWords(metres)} ${wayWords(plan, one.setup.id, worstWatch(of), from, to)}`,
      },
      (before, changed) => judgePlaced(before, changed, one.setup.id, item.record.id),
    );
    if (remedy) return remedy;
  }
  return null;
}

/** A small set piece that stands near the line of sight, put before the item. */
export function* piecesInFront(of: Case): Finding {
  if (of.report.verdict !== 'showing') return [];
  const found: Remedy[] = [];
  for (const piece of shifted(of)) {
    const remedy = yield* putOf(of, piece);
    if (remedy) found.push(remedy);
  }
  return found;
}
