import { type FrameRect, safeAreas, THIRDS } from '../../core/optics/frameLines';
import type { Guides } from '../../desk/sessionStore';
import type { Box } from './pictureBox';

const TICK = 6;

function SafeArea({
  rect,
  box,
  name,
  foot = false,
}: {
  readonly rect: FrameRect;
  readonly box: Box;
  readonly name: string;
  /** Its name stands at its foot, where that of the area around it stands at the head. */
  readonly foot?: boolean;
}) {
  const x = box.left + rect[0] * box.width;
  const y = box.top + rect[1] * box.height;
  const height = (rect[3] - rect[1]) * box.height;
  return (
    <g className="safe">
      <rect x={x} y={y} width={(rect[2] - rect[0]) * box.width} height={height} />
      <text x={x + 4} y={foot ? y + height - 5 : y + 12}>
        {name}
      </text>
    </g>
  );
}

/** The delivery's edge with its centre ticks, the look-around under ink, and the guides that are switched on. */
export function FrameLines(props: {
  readonly width: number;
  readonly height: number;
  readonly box: Box;
  readonly aspect: number;
  readonly guides: Guides;
}) {
  const { width, height, box, guides } = props;
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  const x = box.left + box.width / 2;
  const y = box.top + box.height / 2;
  const areas = safeAreas(props.aspect);
  return (
    <g className="frame-lines">
      {guides.lookAround ? (
        <path
          className="around"
          fillRule="evenodd"
          d={`M0 0H${width}V${height}H0ZM${box.left} ${box.top}H${right}V${bottom}H${box.left}Z`}
        />
      ) : null}
      <rect className="delivery" x={box.left} y={box.top} width={box.width} height={box.height} />
      <path
        className="ticks"
        d={`M${x} ${box.top}v${TICK}M${x} ${bottom}v${-TICK}M${box.left} ${y}h${TICK}M${right} ${y}h${-TICK}`}
      />
      {guides.centre ? <path className="centre" d={`M${x - 6} ${y}h12M${x} ${y - 6}v12`} /> : null}
      {guides.thirds
        ? THIRDS.lines.map((share) => (
            <path
              key={share}
              className="thirds"
              d={`M${box.left + share * box.width} ${box.top}V${bottom}M${box.left} ${box.top + share * box.height}H${right}`}
            />
          ))
        : null}
      {guides.safe ? (
        <>
          <SafeArea rect={areas.action} box={box} name="action" />
          <SafeArea rect={areas.title} box={box} name="title" foot />
        </>
      ) : null}
    </g>
  );
}
