import type { Performer } from '../../plan/schema/cast';
import type { Plan } from '../../plan/schema/plan';
import { compose, moved, turned } from '../build/placement';
import type { Vec3 } from '../build/vector';
import { placedAt } from './placed';
import { IRIS_FRONT } from './shape/head';
import { EYE, skullOf } from './shape/skull';

/** One eye in the world: where its cornea stands out farthest, and unit vectors of the way it looks. */
export interface Eye {
  readonly eye: 'left' | 'right';
  readonly apex: Vec3;
  readonly forward: Vec3;
  readonly right: Vec3;
  readonly up: Vec3;
}

/** The cornea stands so far before the drawn iris, table millimetres; by eye, no source. */
const BEFORE_IRIS = 0.6;

/** A performer's eyes at an instant; they look the way that the face does. None without marks. */
export function eyesAt(performer: Performer, plan: Plan, seconds: number): readonly Eye[] {
  const placed = placedAt(performer, plan, seconds);
  if (!placed) return [];
  const { figure, bones } = placed;
  const head = compose(figure.worldFromOwn, bones.head);
  const skull = skullOf(figure.skeleton, performer.figure === 'female');
  const axes = {
    forward: turned(head, [0, 0, -1]),
    right: turned(head, [1, 0, 0]),
    up: turned(head, [0, 1, 0]),
  };
  return (['right', 'left'] as const).map(
    (eye): Eye => ({
      eye,
      apex: moved(
        head,
        skull.place([eye === 'right' ? EYE.aside : -EYE.aside, EYE.depth, IRIS_FRONT - BEFORE_IRIS]),
      ),
      ...axes,
    }),
  );
}
