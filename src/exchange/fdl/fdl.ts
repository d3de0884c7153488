import { glassOf } from '../../core/optics/camera';
import { extraction } from '../../core/optics/gate';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { serialisePlan } from '../../core/plan/serialise';
import { setupLetter } from '../../core/plan/setupLetter';
import { sha256Of } from '../sha256';
import { linesOf } from './intents';
import type { Canvas, Dimensions, FramingDecision, FramingDecisionList, FramingIntent } from './types';

/** Units of a canvas to a millimetre of the gate: a plan knows a gate's size and not its photosites. */
const UNITS = 1000;
const CREATOR = 'Standclear';

/** The effective part of a canvas and where it begins. */
type Effective = Required<Pick<Canvas, 'effective_dimensions' | 'effective_anchor_point'>>;

/**
 * The part of a canvas that the lens lights, of the gate's own shape; nothing where it lights all of it or its image
 * circle is not known. It holds the frame lines even where they go beyond the circle, since it may not cut them.
 */
function effectiveOf(
  canvas: Dimensions,
  gateMm: readonly [number, number],
  circleMm: number | undefined,
  decisions: readonly FramingDecision[],
): Effective | null {
  const share =
    circleMm === undefined ? 1 : circleMm / Math.sqrt(gateMm[0] * gateMm[0] + gateMm[1] * gateMm[1]);
  if (share >= 1) return null;
  const width = Math.ceil(Math.max(canvas.width * share, ...decisions.map((each) => each.dimensions.width)));
  const height = Math.ceil(
    Math.max(canvas.height * share, ...decisions.map((each) => each.dimensions.height)),
  );
  if (width >= canvas.width && height >= canvas.height) return null;
  const effective = { width: Math.min(width, canvas.width), height: Math.min(height, canvas.height) };
  return {
    effective_dimensions: effective,
    effective_anchor_point: {
      x: (canvas.width - effective.width) / 2,
      y: (canvas.height - effective.height) / 2,
    },
  };
}

function canvasOf(plan: Plan, setup: Setup, letter: string): Canvas {
  const { lens, gateMm } = glassOf(plan, setup);
  const body = plan.kit.bodies.find(({ id }) => id === setup.body);
  const mode = body?.modes.find(({ id }) => id === setup.mode);
  const { usedMm } = extraction(gateMm, lens.focalMm, lens.squeeze, setup.delivery);
  const id = `SETUP_${letter}`;
  const dimensions = { width: Math.round(gateMm[0] * UNITS), height: Math.round(gateMm[1] * UNITS) };
  const scale = [dimensions.width / gateMm[0], dimensions.height / gateMm[1]];
  const used = [usedMm[0] * scale[0], usedMm[1] * scale[1]];
  const corner = [(dimensions.width - used[0]) / 2, (dimensions.height - used[1]) / 2];
  const decisions = linesOf(plan, setup).map(
    ({ intent, rect: [left, top, right, bottom] }): FramingDecision => ({
      label: intent.label,
      id: `${id}-${intent.id}`,
      framing_intent_id: intent.id,
      dimensions: { width: used[0] * (right - left), height: used[1] * (bottom - top) },
      anchor_point: { x: Math.max(0, corner[0] + used[0] * left), y: Math.max(0, corner[1] + used[1] * top) },
    }),
  );
  return {
    label: `${body?.label ?? setup.body}, ${mode?.label ?? setup.mode}`,
    id,
    source_canvas_id: id,
    dimensions,
    ...effectiveOf(dimensions, gateMm, lens.imageCircleMm, decisions),
    physical_dimensions: { width: gateMm[0], height: gateMm[1] },
    anamorphic_squeeze: lens.squeeze,
    framing_decisions: decisions,
    _standclear: { setup: setup.id, lens: lens.label, unit: 'micrometre of the gate' },
  };
}

/** A name for a list that is the same for the same plan: version 8 of RFC 9562, from memory, on the plan's SHA-256. */
async function uuidOf(plan: Plan): Promise<string> {
  const digits = await sha256Of(new TextEncoder().encode(serialisePlan(plan)));
  const parts = [digits.slice(0, 8), digits.slice(8, 12), `8${digits.slice(13, 16)}`];
  const variant = ((Number.parseInt(digits[16], 16) & 3) | 8).toString(16);
  return [...parts, `${variant}${digits.slice(17, 20)}`, digits.slice(20, 32)].join('-');
}

/**
 * The frame lines of every setup as a framing decision list, JSON: a context and a canvas for each setup, whose gate it
 * is in thousandths of a millimetre, squeezed as it is recorded, with the delivery, the second delivery and the plan's
 * own lines in it to the last digit. Ratios are of whole numbers, the nearest up to 10,000 where there is no equal one.
 * The same plan gives the same bytes. Source: [fdl]
 */
export async function planToFdl(plan: Plan): Promise<string> {
  const intents = new Map<string, FramingIntent>();
  for (const setup of plan.setups)
    for (const { intent } of linesOf(plan, setup))
      if (!intents.has(intent.id)) intents.set(intent.id, intent);
  const [first] = intents.keys();
  const list: FramingDecisionList = {
    uuid: await uuidOf(plan),
    version: { major: 2, minor: 0 },
    fdl_creator: CREATOR,
    ...(first === undefined ? {} : { default_framing_intent: first }),
    framing_intents: [...intents.values()],
    contexts: plan.setups.map((setup, place) => ({
      label: `${setupLetter(place)} ${setup.label}`,
      context_creator: CREATOR,
      canvases: [canvasOf(plan, setup, setupLetter(place))],
    })),
  };
  return `${JSON.stringify(list, null, 2)}\n`;
}
