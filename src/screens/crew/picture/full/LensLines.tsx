import type { Setup } from '../../../../core/plan/schema/setup';
import { FIRST_GUIDES } from '../../../../desk/guides';
import { LOOK_AROUND } from '../../../../desk/viewStore';
import { FrameLines } from '../../../frame/FrameLines';
import { frameIn } from '../../../frame/pictureBox';
import type { FullState } from './fullState';
import { pictureIn } from './zoom';

/** The frame line over the picture as it lies, the look-around under ink. */
export function LensLines({
  setup,
  area,
  aspect,
  zoom,
}: Pick<FullState, 'area' | 'aspect' | 'zoom'> & { readonly setup: Setup }) {
  const { left, top, width, height } = pictureIn(area, aspect, zoom);
  return (
    <svg aria-hidden="true" style={{ left, top, width, height }} viewBox={`0 0 ${width} ${height}`}>
      <FrameLines
        width={width}
        height={height}
        box={frameIn(width, height, LOOK_AROUND)}
        aspect={setup.delivery}
        second={setup.secondDelivery ?? null}
        guides={FIRST_GUIDES}
      />
    </svg>
  );
}
