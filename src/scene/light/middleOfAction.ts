import type { Plan } from '../../core/plan/schema/plan';

const known = new WeakMap<Plan['cast'], readonly [number, number, number]>();

/** The middle of all the cast's marks, at the height of a chest; the middle of the drawing where nobody has a mark. */
export function middleOfAction({ cast }: Plan): readonly [number, number, number] {
  const found = known.get(cast);
  if (found) return found;
  const marks = cast.flatMap((performer) => performer.marks);
  const count = Math.max(1, marks.length);
  const sum = (of: (mark: (typeof marks)[number]) => number) =>
    marks.reduce((total, mark) => total + of(mark), 0);
  const middle = [
    sum((mark) => mark.at[0]) / count,
    1.4 + sum((mark) => mark.floorMetres ?? 0) / count,
    sum((mark) => mark.at[1]) / count,
  ] as const;
  known.set(cast, middle);
  return middle;
}
