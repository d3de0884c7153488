import type { SetupCircle } from '../../core/optics/circleOf';
import { formatShare } from '../../core/units/shares';
import type { Box } from './pictureBox';

/** What the circle leaves dark, in a word. */
export const darkWord = ({ delivery }: SetupCircle): string =>
  delivery.covers
    ? 'the circle cuts outside the frame'
    : `the circle cuts, ${formatShare(delivery.darkShare)} dark`;

/**
 * Where a lens's image circle ends over the picture: an ellipse where the lens squeezes, all outside of it dark.
 * The lens's distortion is left out.
 */
export function ImageCircle(props: {
  readonly circle: SetupCircle;
  readonly width: number;
  readonly height: number;
  readonly box: Box;
}) {
  const { circle, width, height, box } = props;
  if (circle.gate.covers) return null;
  const x = box.left + box.width / 2;
  const y = box.top + box.height / 2;
  const rx = circle.halfAxes[0] * box.width;
  const ry = circle.halfAxes[1] * box.height;
  const ellipse = `M${x - rx} ${y}A${rx} ${ry} 0 1 1 ${x + rx} ${y}A${rx} ${ry} 0 1 1 ${x - rx} ${y}Z`;
  return (
    <g className="image-circle">
      <title>{`${darkWord(circle)}; the lens’s distortion is left out`}</title>
      <path className="dark" fillRule="evenodd" d={`M0 0H${width}V${height}H0Z${ellipse}`} />
      <path className="edge" d={ellipse} />
      <text x={box.left + box.width - 6} y={box.top + box.height - 7} textAnchor="end">
        {darkWord(circle)}
      </text>
    </g>
  );
}
