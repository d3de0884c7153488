import { whereabouts } from '../../../core/form/figure/whereabouts';
import { formOf } from '../../../core/form/formsAt';
import { footprintOf } from '../../../core/form/fromAbove/footprint';
import { outlinesOf } from '../../../core/form/fromAbove/outlines';
import { cameraAt, spanOf } from '../../../core/optics/camera';
import { played } from '../../../core/plan/played';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { setupLetter } from '../../../core/plan/setupLetter';
import { cos, hypot, sin } from '../../../core/units/steadyMath';
import { boxOf, corners, meets } from '../boxes';
import type { At, Box } from '../marks';
import type { Drawing } from './drawing';
import { letterNames, type Named } from './labels';
import type { SheetScale } from './sheetScale';

/** What a drawing of the roof has on it. */
export interface RoofAsked {
  readonly setups: readonly Setup[];
  /** Names of things, or only letters of cameras. */
  readonly named: boolean;
  /** How far the edges of the frames are drawn, metres. */
  readonly fieldMetres: number;
}

/** Not named: too many, and plain from how they look. */
const UNNAMED: ReadonlySet<string> = new Set(['cable', 'sandbag', 'skyline block', 'deck', 'mat', 'tape']);
const SHOULDERS_METRES = 0.24;

/** The middle of a line's middle leg, as a box for its name. */
function halfWay(line: readonly At[], reach: number): Box {
  const leg = Math.floor((line.length - 1) / 2);
  const [from, to] = [line[leg], line[Math.min(leg + 1, line.length - 1)]];
  const [x, y] = [(from[0] + to[0]) / 2, (from[1] + to[1]) / 2];
  return [x - reach, y - reach, x + reach, y + reach];
}

/** A set piece as it takes the ground; runs are as wide as their stuff is thick. Gives where its name belongs. */
function drawPiece(writer: Drawing, scale: SheetScale, piece: Piece, plan: Plan): Box {
  const { outline, closed } = footprintOf({ section: 'piece', record: piece }, plan);
  const points = outline.map(scale.at);
  if (closed) {
    const pen =
      piece.kind === 'deck' ? { fill: 0.97, line: 0, width: 0.8 } : { fill: 0.88, line: 0.2, width: 0.5 };
    writer.shape(points, pen);
    if ('holes' in piece)
      for (const { outline: hole } of piece.holes ?? [])
        writer.shape(hole.map(scale.at), { fill: 1, line: 0, width: 0.5 });
    return boxOf(points);
  }
  const thick = 'thicknessMetres' in piece ? piece.thicknessMetres * scale.pointsPerMetre : 0;
  const isRound = 'closed' in piece && piece.closed;
  writer.shape(
    isRound ? points.slice(0, -1) : points,
    { line: thick > 1.5 ? 0.75 : 0.45, width: Math.max(0.7, thick) },
    isRound,
  );
  return halfWay(points, thick / 2 + 1);
}

/** Gear part by part, seen from above; cables and strings as lines. Gives where its name belongs. */
function drawGear(writer: Drawing, scale: SheetScale, gear: Gear, plan: Plan): Box {
  const { outline, closed } = footprintOf({ section: 'gear', record: gear }, plan);
  if (!closed) {
    const line = outline.map(scale.at);
    writer.shape(
      line,
      gear.kind === 'cable' ? { line: 0.35, width: 0.5, dash: [3, 1.5] } : { line: 0, width: 0.5 },
    );
    return halfWay(line, 1);
  }
  const hulls = outlinesOf(formOf(plan, gear.id, 0)?.parts ?? []).map(({ hull }) => hull.map(scale.at));
  for (const hull of hulls) writer.shape(hull, { fill: 1, line: 0, width: 0.4 });
  return boxOf(hulls.length > 0 ? hulls.flat() : outline.map(scale.at));
}

/** A performer: a ring as wide as shoulders, with a stroke to where they face. */
function drawPerformer(
  writer: Drawing,
  scale: SheetScale,
  at: readonly [number, number],
  headingDegrees: number,
): Box {
  const turn = (headingDegrees * Math.PI) / 180;
  const ring = Array.from({ length: 24 }, (_, k): At => {
    const angle = (k * Math.PI) / 12;
    return scale.at([at[0] + SHOULDERS_METRES * cos(angle), at[1] + SHOULDERS_METRES * sin(angle)]);
  });
  writer.shape(ring, { fill: 0.7, line: 0, width: 0.6 });
  const far = 2 * SHOULDERS_METRES;
  writer.shape([scale.at(at), scale.at([at[0] + far * sin(turn), at[1] - far * cos(turn)])], {
    line: 0,
    width: 0.8,
  });
  return boxOf(ring);
}

/** A camera where its span begins, with the edges of its frame there, and the way that it goes until it ends. */
function drawCamera(writer: Drawing, scale: SheetScale, plan: Plan, setup: Setup, fieldMetres: number): Box {
  const [from, until] = spanOf(plan, setup);
  const { pose, frame } = cameraAt(plan, setup, from);
  const [x, z] = [pose.position[0], pose.position[2]];
  const edge = (tangent: number, metres: number): At => {
    const along = [pose.forward[0] + pose.right[0] * tangent, pose.forward[2] + pose.right[2] * tangent];
    const size = hypot(along[0], along[1]) || 1;
    return scale.at([x + (along[0] / size) * metres, z + (along[1] / size) * metres]);
  };
  for (const tangent of [-frame.tanHalfWidth, frame.tanHalfWidth])
    writer.shape([scale.at([x, z]), edge(tangent, fieldMetres)], { line: 0.35, width: 0.4, dash: [6, 2] });
  const steps = 16;
  const way = Array.from({ length: steps + 1 }, (_, k): At => {
    const { position } = cameraAt(plan, setup, from + ((until - from) * k) / steps).pose;
    return scale.at([position[0], position[2]]);
  });
  const ways = boxOf(way);
  if (ways[2] - ways[0] + ways[3] - ways[1] > 2) writer.shape(way, { line: 0, width: 0.9, dash: [1, 1.5] });
  const wedge = [scale.at([x, z]), edge(-0.6, 0.5), edge(0.6, 0.5)];
  writer.shape(wedge, { fill: 0, line: 0, width: 0.4 });
  return boxOf(wedge);
}

/** Draws the roof to scale into the box of its scale, nothing beyond. Gives the names of what it left out for lying beyond. */
export function drawRoof(
  writer: Drawing,
  scale: SheetScale,
  plan: Plan,
  asked: RoofAsked,
): readonly string[] {
  const { box } = scale;
  const names: Named[] = [];
  const beyond: string[] = [];
  const name = (text: string, around: Box, setting: Named['setting']): void => {
    if (meets(around, box)) names.push({ text, around, setting });
    else beyond.push(text);
  };
  writer.within(box, () => {
    const pieces = [...plan.pieces].sort((a, b) => Number(b.kind === 'deck') - Number(a.kind === 'deck'));
    for (const piece of pieces) {
      const around = drawPiece(writer, scale, piece, plan);
      if (asked.named && !UNNAMED.has(piece.kind)) name(piece.label, around, { size: 7, grey: 0.3 });
    }
    for (const gear of plan.gear) {
      const around = drawGear(writer, scale, gear, plan);
      if (asked.named && !UNNAMED.has(gear.kind)) name(gear.label, around, { size: 7 });
    }
    const [only] = asked.setups;
    const scene = asked.setups.length === 1 ? played(plan, only) : plan;
    const seconds = asked.setups.length === 1 ? spanOf(plan, only)[0] : 0;
    for (const performer of scene.cast) {
      const place = whereabouts(performer, scene, seconds);
      if (!place) continue;
      const around = drawPerformer(writer, scale, [place.at[0], place.at[2]], place.headingDegrees);
      name(performer.label, around, { size: 7, weight: 'strong' });
    }
    for (const setup of asked.setups) {
      const around = drawCamera(writer, scale, plan, setup, asked.fieldMetres);
      const letter = setupLetter(plan.setups.findIndex(({ id }) => id === setup.id));
      name(letter, around, { size: 9, weight: 'strong' });
    }
    // Cameras and people first: they are few, and looked for first.
    letterNames(writer, names.toReversed(), box);
  });
  writer.shape(corners(box), { line: 0.75, width: 0.4 }, true);
  return beyond;
}
