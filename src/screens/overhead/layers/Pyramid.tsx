import { useRef } from 'react';
import { seenPlan } from '../../../desk/blocking/onlyIn';
import { liveStore } from '../../../desk/liveStore';
import { polygonWithin, segmentWithin } from '../geometry/clipping';
import { polygon, polyline } from '../geometry/paths';
import { type Pane, toPane, type View } from '../geometry/sheet';
import type { Bounds, Spot } from '../geometry/spots';
import { useDriver } from '../useDriver';
import { frameOnPlan } from './frameOnPlan';

interface PyramidProps {
  readonly setupId: string;
  readonly view: View;
  readonly pane: Pane;
}

/** What the chosen frame holds, to the edge of the sheet; its look-around dashed, its axis to the focus. In pixels. */
export function Pyramid({ setupId, view, pane }: PyramidProps) {
  const fill = useRef<SVGPathElement>(null);
  const edge = useRef<SVGPathElement>(null);
  const around = useRef<SVGPathElement>(null);
  const axis = useRef<SVGPathElement>(null);
  useDriver(() => {
    const plan = seenPlan();
    const setup = plan.setups.find(({ id }) => id === setupId);
    if (!setup) return;
    const frame = frameOnPlan(plan, setup, liveStore.getState().seconds);
    const bounds: Bounds = [0, 0, pane.width, pane.height];
    const at = (spot: Spot): Spot => toPane(view, pane, spot);
    const line = (to: Spot): string => {
      const part = segmentWithin(at(frame.apex), at(to), bounds);
      return part ? polyline(part) : '';
    };
    const [left, right] = frame.edges;
    fill.current?.setAttribute('d', polygon(polygonWithin([at(frame.apex), at(left), at(right)], bounds)));
    edge.current?.setAttribute('d', line(left) + line(right));
    around.current?.setAttribute('d', frame.lookAround.map(line).join(''));
    axis.current?.setAttribute('d', line(frame.focus));
  });
  return (
    <g className="pyramid">
      <path ref={fill} className="pyramid-fill" />
      <path ref={edge} className="pyramid-edge" />
      <path ref={around} className="look-around" />
      <path ref={axis} className="axis" />
    </g>
  );
}
