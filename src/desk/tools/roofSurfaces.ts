import type { Spot } from '../../core/plan/schema/numbers';

/** Something on the page that shows the roof and can say what of it lies under a pointer. */
export interface RoofSurface {
  readonly element: Element;
  /** The place under a point of the window, CSS pixels; null where there is no roof. */
  readonly roofSpotAt: (clientX: number, clientY: number) => Spot | null;
  /** How far a pointer reaches there, metres. */
  readonly reachMetres: (clientX: number, clientY: number) => number;
}

const surfaces = new Set<RoofSurface>();

/** Makes a surface known for as long as it is on the page; what comes back takes it away again. */
export function registerRoofSurface(surface: RoofSurface): () => void {
  surfaces.add(surface);
  return () => surfaces.delete(surface);
}

/** The surface that lies on top at a point of the window, or null. */
export function roofSurfaceAt(clientX: number, clientY: number): RoofSurface | null {
  const top = document.elementFromPoint(clientX, clientY);
  if (!top) return null;
  for (const surface of surfaces) if (surface.element.contains(top)) return surface;
  return null;
}
