import type { Performer } from '../../../plan/schema/cast';
import { ShapeBuilder } from '../../build/shapeBuilder';
import type { PartShape } from '../../types';
import { birdShapes } from './bird';
import { ball } from './sections';

/** What a performer may carry. */
export type Prop = NonNullable<Performer['prop']>;

/** Half the width that the hands must clear, metres. */
export const PROP_HALF: Readonly<Record<Prop, number>> = { bird: 0.05, box: 0.15, ball: 0.11, case: 0.2 };

/** How far a prop's foot is below the palms when both hands hold it, metres; a case is held by its handle. */
export const PROP_HEIGHT_IN_HANDS: Readonly<Record<Prop, number>> = {
  bird: 0.045,
  box: 0.09,
  ball: 0.1,
  case: -0.03,
};

/** How far a prop reaches below where it is held, metres: it rests on the floor rather than sink into it. */
export const PROP_BELOW: Readonly<Record<Prop, number>> = { bird: 0.01, box: 0, ball: 0, case: 0.37 };

function buildProp(prop: Prop): readonly PartShape[] {
  const builder = new ShapeBuilder();
  switch (prop) {
    case 'bird':
      return birdShapes();
    case 'box':
      builder.box([0, 0.1, 0], [0.3, 0.2, 0.22]).box([0, 0.202, 0], [0.306, 0.012, 0.226]);
      return [builder.finish({ substance: 'boards', colour: '#7d6244' })];
    case 'ball':
      ball(builder, [0, 0.11, 0], [0.11, 0.11, 0.11], 8, 14);
      return [builder.finish({ substance: 'rubber', colour: '#8c4a32', smooth: true })];
    case 'case':
      // Carried at the side: thin across, long fore and aft.
      builder
        .box([0, -0.21, 0], [0.14, 0.32, 0.44])
        .box([0, -0.1, 0], [0.146, 0.012, 0.446])
        .tube([0, -0.05, -0.07], [0, -0.012, -0.06], 0.008)
        .tube([0, -0.012, -0.062], [0, -0.012, 0.062], 0.012)
        .tube([0, -0.012, 0.06], [0, -0.05, 0.07], 0.008);
      return [builder.finish({ substance: 'rubber', colour: '#3c2f27' })];
  }
}

const built = new Map<Prop, readonly PartShape[]>();

/**
 * A thing carried, in its own frame: facing −z, its foot at the origin; a case hangs from its handle at the origin.
 * The same shapes whoever carries it.
 */
export function propShapes(prop: Prop): readonly PartShape[] {
  const shapes = built.get(prop) ?? buildProp(prop);
  built.set(prop, shapes);
  return shapes;
}
