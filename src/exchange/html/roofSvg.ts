import type { Plan } from '../../core/plan/schema/plan';
import { drawRoof } from '../pdf/roof/drawRoof';
import { extentOf } from '../pdf/roof/extent';
import { metreBar, northArrow, roofLegend } from '../pdf/roof/furniture';
import type { SheetScale } from '../pdf/roof/sheetScale';
import { html, type Markup } from './markup';
import { SvgDrawing } from './svgDrawing';

/** Width of the drawing in its own units, in which names are some seven high. */
const WIDTH = 520;
const FOOT = 58;
const FIELD_METRES = 6;

/** The roof from above with everything named, a bar of metres and north, as a picture that scrolls where it is too wide. */
export function roofSvg(plan: Plan): Markup {
  const ground = extentOf(plan);
  const [left, top, right, bottom] = ground;
  const pointsPerMetre = WIDTH / (right - left);
  const height = (bottom - top) * pointsPerMetre;
  const scale: SheetScale = {
    oneTo: 1,
    pointsPerMetre,
    box: [0, 0, WIDTH, height],
    at: ([x, z]) => [(x - left) * pointsPerMetre, (z - top) * pointsPerMetre],
  };
  const drawing = new SvgDrawing('roof', [WIDTH, height + FOOT]);
  const beyond = drawRoof(drawing, scale, plan, {
    setups: plan.setups,
    named: true,
    fieldMetres: FIELD_METRES,
  });
  metreBar(drawing, pointsPerMetre, [8, height + 16]);
  northArrow(drawing, plan, [WIDTH - 20, height + 32]);
  roofLegend(drawing, [190, height + 14], WIDTH - 44);
  const said = ['Performers as the action begins, cameras as their spans do.'];
  if (beyond.length > 0) said.push(`Beyond this drawing: ${beyond.join(', ')}.`);
  const picture = drawing.picture('The roof from above, to scale');
  // A wide drawing is scrolled by keys too.
  return html`<div class="roof" tabindex="0" role="group" aria-label="The overhead">${picture}</div><p class="quiet">${said.join(' ')}</p>`;
}
