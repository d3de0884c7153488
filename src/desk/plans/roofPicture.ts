import { formsAt } from '../../core/form/formsAt';
import type { ItemForm, PlacedPart } from '../../core/form/types';
import type { Plan } from '../../core/plan/schema/plan';

const SIZE = { width: 352, height: 148 };
const EDGE_PIXELS = 10;
/** The ground is faint, so that what stands on it shows. */
const STRENGTH = { deck: 0.16, rest: 0.5 };

type Spot = readonly [x: number, z: number];

/** Where a part's corners are, seen from above, metres. */
function spotsOf({ shape: { positions }, worldFromPart: rows }: PlacedPart): Spot[] {
  const spots: Spot[] = [];
  for (let at = 0; at < positions.length; at += 3) {
    const [x, y, z] = [positions[at], positions[at + 1], positions[at + 2]];
    spots.push(
      rows
        ? [
            rows[0] * x + rows[1] * y + rows[2] * z + rows[3],
            rows[8] * x + rows[9] * y + rows[10] * z + rows[11],
          ]
        : [x, z],
    );
  }
  return spots;
}

interface Drawn {
  readonly kind: string;
  readonly spots: readonly Spot[];
  readonly indices: Uint32Array;
}

const drawnOf = (form: ItemForm): Drawn[] =>
  form.kind === 'skyline block'
    ? []
    : form.parts.map((part) => ({
        kind: form.kind,
        spots: spotsOf(part),
        indices: part.shape.indices,
      }));

/** From metres to pixels, so that all of these parts are in the picture; null where there is nothing. */
function intoPicture(parts: readonly Drawn[]): ((spot: Spot) => Spot) | null {
  let [left, top, right, bottom] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, z] of parts.flatMap(({ spots }) => spots)) {
    left = Math.min(left, x);
    right = Math.max(right, x);
    top = Math.min(top, z);
    bottom = Math.max(bottom, z);
  }
  if (!(right > left && bottom > top)) return null;
  const scale = Math.min(
    (SIZE.width - 2 * EDGE_PIXELS) / (right - left),
    (SIZE.height - 2 * EDGE_PIXELS) / (bottom - top),
  );
  return ([x, z]) => [
    SIZE.width / 2 + (x - (left + right) / 2) * scale,
    SIZE.height / 2 + (z - (top + bottom) / 2) * scale,
  ];
}

/** The roof from above, small, in the colours of a picture: for a plan that no camera looks at yet. */
export function drawRoof(plan: Plan): HTMLCanvasElement | null {
  const canvas = document.createElement('canvas');
  canvas.width = SIZE.width;
  canvas.height = SIZE.height;
  const context = canvas.getContext('2d');
  if (!context) return null;
  const style = getComputedStyle(document.documentElement);
  context.fillStyle = style.getPropertyValue('--on-picture-ink');
  context.fillRect(0, 0, SIZE.width, SIZE.height);
  const parts = formsAt(plan, 0).flatMap(drawnOf);
  // What stands far off, on another roof or in the street, would make this one small.
  const decks = parts.filter(({ kind }) => kind === 'deck');
  const at = intoPicture(decks.length > 0 ? decks : parts);
  if (!at) return canvas;
  context.fillStyle = style.getPropertyValue('--on-picture');
  for (const { kind, spots, indices } of parts) {
    const places = spots.map(at);
    context.globalAlpha = kind === 'deck' ? STRENGTH.deck : STRENGTH.rest;
    context.beginPath();
    for (let corner = 0; corner + 2 < indices.length; corner += 3) {
      const [a, b, c] = [places[indices[corner]], places[indices[corner + 1]], places[indices[corner + 2]]];
      // From above the underside of a solid runs the other way round, and would take its top out again.
      const turned = (b[0] - a[0]) * (c[1] - a[1]) < (b[1] - a[1]) * (c[0] - a[0]);
      context.moveTo(...a);
      context.lineTo(...(turned ? c : b));
      context.lineTo(...(turned ? b : c));
      context.closePath();
    }
    context.fill();
  }
  return canvas;
}
