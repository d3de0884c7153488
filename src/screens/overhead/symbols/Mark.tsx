import { TAPE_OUTLINE } from '../../../desk/blocking/tapeShape';
import { polygon } from '../geometry/paths';
import type { Spot } from '../geometry/spots';

const OUTLINE = polygon(TAPE_OUTLINE);

interface Props {
  readonly id: string;
  readonly at: Spot;
  readonly headingDegrees: number;
  readonly kind: string;
}

/** A taped T on the deck, its bar under the toes of who stands on it. */
export function Mark({ id, at, headingDegrees, kind }: Props) {
  return (
    <path
      className={`tape${kind}`}
      data-mark={id}
      transform={`translate(${at[0]} ${at[1]}) rotate(${headingDegrees})`}
      d={OUTLINE}
    />
  );
}
