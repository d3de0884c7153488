import { measuresOf } from '../../../core/form/figure/proportions';
import type { Performer } from '../../../core/plan/schema/cast';

/** A person from above, facing up the sheet around the origin: the oval of the shoulders, the head, the nose. */
export function PerformerSymbol({ performer }: { readonly performer: Performer }) {
  const { bideltoidMetres, headBreadthMetres, headLengthMetres } = measuresOf(performer);
  const shoulders = bideltoidMetres / 2;
  const [broad, long] = [headBreadthMetres / 2, headLengthMetres / 2];
  return (
    <>
      <ellipse className="shoulders" rx={shoulders} ry={shoulders * 0.5} cy={0.02} />
      <ellipse className="skull" rx={broad} ry={long} />
      <path
        className="nose"
        d={`M${-broad * 0.7} ${-long * 0.7}L0 ${-long * 1.8}L${broad * 0.7} ${-long * 0.7}Z`}
      />
    </>
  );
}
