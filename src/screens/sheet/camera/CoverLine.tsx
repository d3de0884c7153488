import { circleOf, type SetupCircle } from '../../../core/optics/circleOf';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { NBSP } from '../../../core/units/numbers';
import { formatShare } from '../../../core/units/shares';

const millimetres = (value: number): string => `${Math.round(value * 10) / 10}${NBSP}mm`;

/** How an image circle lies over a gate, in a sentence. */
export function coverSentence({ gate, delivery }: SetupCircle): string {
  const circle = `The image circle, ${millimetres(gate.circleMm)},`;
  if (gate.covers) return `${circle} covers the gate, which asks for ${millimetres(gate.neededMm)}.`;
  if (delivery.covers)
    return `${circle} covers what is delivered and cuts the gate, which asks for ${millimetres(gate.neededMm)}.`;
  return `${circle} cuts the frame: ${formatShare(delivery.darkShare)} of it stays dark. It asks for ${millimetres(delivery.neededMm)}.`;
}

/** The gate with the image circle over it, to one scale. */
function CoverGlyph({
  gateMm,
  circleMm,
}: {
  readonly gateMm: readonly [number, number];
  readonly circleMm: number;
}) {
  const [width, height] = gateMm;
  const reach = Math.max(width, height, circleMm) / 2 + 1;
  return (
    <svg className="cover" viewBox={`${-reach} ${-reach} ${2 * reach} ${2 * reach}`} aria-hidden="true">
      <rect x={-width / 2} y={-height / 2} width={width} height={height} />
      <circle r={circleMm / 2} />
    </svg>
  );
}

/** Whether a setup's lens covers its gate: the two drawn over each other, and a sentence. */
export function CoverLine({ plan, setup }: { readonly plan: Plan; readonly setup: Setup }) {
  const circle = circleOf(plan, setup);
  if (!circle) return <p className="cover-line q">The image circle of this lens is not known.</p>;
  const mode = plan.kit.bodies.find(({ id }) => id === setup.body)?.modes.find(({ id }) => id === setup.mode);
  return (
    <p className={circle.delivery.covers ? 'cover-line q' : 'cover-line verm'}>
      {mode ? <CoverGlyph gateMm={mode.gateMm} circleMm={circle.gate.circleMm} /> : null}
      {coverSentence(circle)}
    </p>
  );
}
