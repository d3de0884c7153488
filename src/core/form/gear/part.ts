import type { Placement } from '../build/placement';
import { ShapeBuilder, type ShapeLook } from '../build/shapeBuilder';
import type { PlacedPart } from '../types';

/** A named part in a thing's own frame, before it is put where the thing stands. */
export interface OwnPart {
  readonly name: string;
  readonly look: ShapeLook;
  readonly builder: ShapeBuilder;
}

/** Builds one named part. Parts that are only boxes pass `smooth: false` in their look. */
export function ownPart(name: string, look: ShapeLook, build: (builder: ShapeBuilder) => void): OwnPart {
  const builder = new ShapeBuilder();
  build(builder);
  return { name, look: { smooth: true, ...look }, builder };
}

/** Puts parts where their thing stands: the shapes come out in world coordinates. */
export function placeParts(parts: readonly OwnPart[], placement: Placement): PlacedPart[] {
  return parts
    .filter(({ builder }) => !builder.isEmpty)
    .map(({ name, look, builder }) => ({
      name,
      shape: builder.finish(look, placement),
      worldFromPart: null,
    }));
}
