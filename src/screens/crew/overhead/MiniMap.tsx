import type { Plan } from '../../../core/plan/schema/plan';
import { polygon } from '../../overhead/geometry/paths';
import { deckPath, decksOf } from '../../overhead/geometry/roof';
import type { Pane } from '../../overhead/geometry/sheet';
import type { Bounds, Spot } from '../../overhead/geometry/spots';
import { type Lying, toRoof } from './roofView';

const MINI_WIDTH = 76;
const MINI_HEIGHT = 44;

/** The whole roof, small, with the part that is seen. */
export function MiniMap(props: {
  readonly plan: Plan;
  readonly lying: Lying;
  readonly pane: Pane;
  readonly bounds: Bounds;
}) {
  const { plan, lying, pane, bounds } = props;
  const [left, top, right, bottom] = bounds;
  const [width, height] = lying.turned ? [bottom - top, right - left] : [right - left, bottom - top];
  const perMetre = Math.min((MINI_WIDTH - 4) / width, (MINI_HEIGHT - 4) / height);
  const turn = lying.turned ? ' rotate(90)' : '';
  const corners: readonly Spot[] = [
    [0, 0],
    [pane.width, 0],
    [pane.width, pane.height],
    [0, pane.height],
  ];
  const held = (value: number, low: number, high: number): number => Math.min(high, Math.max(low, value));
  const seen = corners.map((corner): Spot => {
    const [x, z] = toRoof(lying, pane, corner);
    return [held(x, left, right), held(z, top, bottom)];
  });
  return (
    <svg className="crew-mini" width={MINI_WIDTH} height={MINI_HEIGHT} aria-hidden="true">
      <g
        transform={`translate(${MINI_WIDTH / 2} ${MINI_HEIGHT / 2})${turn} scale(${perMetre}) translate(${-(left + right) / 2} ${-(top + bottom) / 2})`}
      >
        {decksOf(plan).map((deck) => (
          <path key={deck.id} className="mini-deck" fillRule="evenodd" d={deckPath(deck)} />
        ))}
        <path className="mini-seen" d={polygon(seen)} />
      </g>
    </svg>
  );
}
