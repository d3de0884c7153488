import { modelSection } from '../../../core/form/models/modelSection';
import { modelSize } from '../../../core/form/models/modelShapes';
import { polygon, polyline } from '../geometry/paths';
import type { Spot } from '../geometry/spots';
import type { PieceOf } from './kinds';
import './modelSymbol.css';

/**
 * An imported model: where the plan cuts it, in ink, and a hairline around all of it. While its file is not there, its
 * box is dashed.
 */
export function ModelPlan({ piece }: { readonly piece: PieceOf<'model'> }) {
  const [width, , depth] = modelSize(piece);
  const [x, z] = [width / 2, depth / 2];
  const box: Spot[] = [
    [-x, -z],
    [x, -z],
    [x, z],
    [-x, z],
  ];
  const section = modelSection(piece);
  return (
    <g transform={`translate(${piece.at[0]} ${piece.at[2]}) rotate(${piece.headingDegrees})`}>
      {section ? (
        <>
          <path className="model-room" d={polygon(box)} />
          <path className="model-cut" d={section.map(polyline).join('')} />
        </>
      ) : (
        <>
          <path className="model-missing" d={polygon(box)} />
          <path className="model-missing hair" d={polyline([box[3], box[1]])} />
        </>
      )}
    </g>
  );
}
