import type { Box } from '../../../frame/pictureBox';

/** How a picture lies in the area that it fills: 1 is as large as fits, and `x`, `y` how far its middle lies off, CSS pixels. */
export interface Zoom {
  readonly scale: number;
  readonly x: number;
  readonly y: number;
}

export interface Area {
  readonly width: number;
  readonly height: number;
}

export const WHOLE: Zoom = { scale: 1, x: 0, y: 0 };
/** The closest: a stand's column in a wide frame is a finger wide then. */
export const CLOSEST = 8;

/** Where a picture lies in an area, with its look-around, CSS pixels. */
export function pictureIn(area: Area, aspect: number, { scale, x, y }: Zoom): Box {
  const fitting = Math.min(area.width, area.height * aspect);
  const width = fitting * scale;
  const height = (fitting / aspect) * scale;
  return { left: (area.width - width) / 2 + x, top: (area.height - height) / 2 + y, width, height };
}

/** Keeps a picture from leaving: what is larger than the area covers it, what is smaller lies in its middle. */
function held(area: Area, aspect: number, zoom: Zoom): Zoom {
  const scale = Math.min(CLOSEST, Math.max(1, zoom.scale));
  const { width, height } = pictureIn(area, aspect, { scale, x: 0, y: 0 });
  const [aside, above] = [Math.max(0, (width - area.width) / 2), Math.max(0, (height - area.height) / 2)];
  // No negative zeros: a picture in its place is the same as `WHOLE`.
  const within = (value: number, most: number): number => Math.min(most, Math.max(-most, value)) + 0;
  return { scale, x: within(zoom.x, aside), y: within(zoom.y, above) };
}

/** Moves the picture along with a hand. */
export const panned = (area: Area, aspect: number, zoom: Zoom, [dx, dy]: readonly [number, number]): Zoom =>
  held(area, aspect, { ...zoom, x: zoom.x + dx, y: zoom.y + dy });

/** Enlarges by a factor, so that what lies at a place of the area, from its upper left, stays there. */
export function zoomedAt(
  area: Area,
  aspect: number,
  zoom: Zoom,
  [x, y]: readonly [number, number],
  factor: number,
): Zoom {
  const scale = Math.min(CLOSEST, Math.max(1, zoom.scale * factor));
  const share = scale / zoom.scale;
  const [fromX, fromY] = [x - area.width / 2, y - area.height / 2];
  return held(area, aspect, {
    scale,
    x: fromX - (fromX - zoom.x) * share,
    y: fromY - (fromY - zoom.y) * share,
  });
}
