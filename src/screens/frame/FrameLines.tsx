import { deliveryWord } from '../../core/optics/deliveries';
import { deliveryWithin, type FrameRect, safeAreas, THIRDS } from '../../core/optics/frameLines';
import type { Guides } from '../../desk/sessionStore';
import { type Box, rectIn } from './pictureBox';

const TICK = 6;

/** A line over a picture: its halo under it, so that it is seen over bright and over dark. */
function Line({ className, d }: { readonly className: string; readonly d: string }) {
  return (
    <g className={className}>
      <path className="halo" d={d} />
      <path d={d} />
    </g>
  );
}

const outline = ({ left, top, width, height }: Box): string =>
  `M${left} ${top}h${width}v${height}h${-width}Z`;

/** A rectangle with its name in one of its corners. */
function NamedArea(props: {
  readonly className: string;
  readonly rect: FrameRect;
  readonly box: Box;
  readonly name: string;
  /** Its name stands at its foot, where that of the area around it stands at the head. */
  readonly foot?: boolean;
}) {
  const area = rectIn(props.box, props.rect);
  return (
    <g>
      <Line className={props.className} d={outline(area)} />
      <text x={area.left + 4} y={props.foot ? area.top + area.height - 5 : area.top + 12}>
        {props.name}
      </text>
    </g>
  );
}

/** The frame that the mask leaves free. */
export const unmasked = (
  box: Box,
  { masked }: Guides,
  { aspect, second }: { readonly aspect: number; readonly second: number | null },
): Box => (masked === 'second' && second !== null ? rectIn(box, deliveryWithin(aspect, second)) : box);

/** The delivery's edge with its centre ticks, the mask around it, and the guides that are switched on. */
export function FrameLines(props: {
  readonly width: number;
  readonly height: number;
  readonly box: Box;
  readonly aspect: number;
  /** The second delivery's aspect, or null for none. */
  readonly second: number | null;
  readonly guides: Guides;
}) {
  const { width, height, box, aspect, second, guides } = props;
  const right = box.left + box.width;
  const bottom = box.top + box.height;
  const x = box.left + box.width / 2;
  const y = box.top + box.height / 2;
  const areas = safeAreas(aspect);
  return (
    <g className="frame-lines">
      {guides.mask === 'none' ? null : (
        <path
          className={`around ${guides.mask}`}
          fillRule="evenodd"
          d={`M0 0H${width}V${height}H0Z${outline(unmasked(box, guides, props))}`}
        />
      )}
      <Line className="delivery" d={outline(box)} />
      <Line
        className="ticks"
        d={`M${x} ${box.top}v${TICK}M${x} ${bottom}v${-TICK}M${box.left} ${y}h${TICK}M${right} ${y}h${-TICK}`}
      />
      {guides.centre ? <Line className="centre" d={`M${x - 6} ${y}h12M${x} ${y - 6}v12`} /> : null}
      {guides.thirds
        ? THIRDS.lines.map((share) => (
            <Line
              key={share}
              className="thirds"
              d={`M${box.left + share * box.width} ${box.top}V${bottom}M${box.left} ${box.top + share * box.height}H${right}`}
            />
          ))
        : null}
      {guides.safe ? (
        <>
          <NamedArea className="safe" rect={areas.action} box={box} name="action" />
          <NamedArea className="safe" rect={areas.title} box={box} name="title" foot />
        </>
      ) : null}
      {guides.second && second !== null ? (
        <NamedArea
          className="second-delivery"
          rect={deliveryWithin(aspect, second)}
          box={box}
          name={deliveryWord(second)}
        />
      ) : null}
    </g>
  );
}
