import { cameraAt } from '../../../../core/optics/camera';
import { frameAround } from '../../../../core/optics/frameAround';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { type FullState, halvesOf } from './fullState';
import { lookOf } from './showing';

type Props = Pick<FullState, 'area' | 'seconds' | 'turn'> & { readonly plan: Plan; readonly setup: Setup };

/** Where the lens's frame lies in what one sees around the camera: who stands in it shows. */
export function AroundLines({ plan, setup, area, seconds, turn }: Props) {
  const { width, height } = area;
  const look = lookOf(plan, setup, seconds, turn);
  const d = frameAround(cameraAt(plan, setup, seconds), look, halvesOf(area))
    .map(([[x, y], [toX, toY]]) => `M${x * width} ${y * height}L${toX * width} ${toY * height}`)
    .join('');
  return (
    <svg aria-hidden="true" style={{ left: 0, top: 0, width, height }} viewBox={`0 0 ${width} ${height}`}>
      <g className="frame-lines">
        <path className="halo" d={d} />
        <path className="delivery" d={d} />
      </g>
    </svg>
  );
}
