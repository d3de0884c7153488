import { aroundFrame } from '../../sight/margin';
import { reflected } from '../../sight/mirrors';
import { type Foot, isCovered, type Sight } from './cover';
import { type Cover, coversBefore, doubled } from './covers';
import { type MirrorFace, mirrorPrism } from './mirrorPrism';
import { framePlanes, type Reach, type Room } from './prism';
import { middleOf } from './squares';
import type { Standing } from './thing';
import type { GroundSquares } from './types';
import { overWindow, type Window } from './windows';

/** What may hide a thing on the squares from a setup, and in which mirrors. */
export interface Scene {
  readonly windows: readonly Window[];
  readonly covers: readonly Cover[];
  /** Mirrors that lie level. */
  readonly faces: readonly MirrorFace[];
  readonly standing: Standing;
  readonly squares: GroundSquares;
  readonly room: Room;
}

/** From a square and the windows to ask, the first in which something of a thing there shows; −1 where none does. */
export type Finder = (square: number, from: number, to: number) => number;

/** One way of seeing a thing, with what may be before it. */
interface Seer {
  readonly sight: Sight;
  readonly before: (x: number, z: number) => readonly Cover[];
}

function finderBy(
  { windows, standing, squares }: Scene,
  seersOf: (window: Window) => readonly Seer[],
): Finder {
  const { stepMetres, deckMetres } = squares;
  const known: (readonly Seer[])[] = [];
  return (square, from, to) => {
    const [x, z] = middleOf(squares, square);
    const foot: Foot = { x, z, deckMetres: deckMetres[square], halfMetres: stepMetres / 2 };
    for (let place = from; place <= to; place += 1) {
      known[place] ??= seersOf(windows[place]);
      const isHidden = known[place].every(({ sight, before }) =>
        isCovered(standing.pieces, foot, sight, before(foot.x, foot.z)),
      );
      if (!isHidden) return place;
    }
    return -1;
  };
}

const planesOver = (window: Window) => {
  const bare: Reach = { ...aroundFrame(window.camera.frame), metres: 0, back: 0 };
  return framePlanes(window.camera, overWindow(window, bare));
};

/** Finds where a thing shows in the frame itself. */
export function shownFinder(scene: Scene): Finder {
  const { covers } = scene;
  if (covers.length === 0) return (_, from) => from;
  return finderBy(scene, (window) => {
    const eye = window.camera.pose.position;
    const sight = { eye, moved: window.motion.metres, planes: planesOver(window) };
    return [{ sight, before: coversBefore(covers, eye) }];
  });
}

/** Whether a mirror lies level, face up, as a wet deck does: only in such is asked what covers. */
export const isLevel = ({ mirror }: MirrorFace): boolean => mirror.normal[1] > 1 - 1e-9;

/** Finds where a thing shows in one of the faces of a scene, which have to be level. */
export function mirroredFinder(scene: Scene): Finder {
  const { covers, faces, room } = scene;
  if (covers.length === 0) return (_, from) => from;
  const coversOn = new Map<number, readonly Cover[]>();
  for (const { mirror } of faces) coversOn.set(mirror.point[1], doubled(covers, mirror.point[1]));
  return finderBy(scene, (window) => {
    const { camera, motion } = window;
    const planes = planesOver(window);
    return faces.flatMap((face): readonly Seer[] => {
      const seen = mirrorPrism(camera, planes, face, { radius: 0, moved: motion.metres }, room);
      if (!seen) return [];
      const eye = reflected(camera.pose.position, face.mirror);
      const sight = { eye, moved: motion.metres, planes: seen.planes };
      return [{ sight, before: coversBefore(coversOn.get(face.mirror.point[1]) ?? [], eye) }];
    });
  });
}
