import { useMemo } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import { useSetupLight } from '../../../desk/lightStore';
import { polygon } from '../geometry/paths';
import { useSettledSeconds } from '../useSettledSeconds';
import { shiningAt, shiningWords } from './shining';
import './highlights.css';

interface Props {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly chosenIds: ReadonlySet<string>;
}

/** The highlights of the setup that is looked through, to scale on the deck. Goes inside of what is drawn to scale. */
export function HighlightsLayer({ plan, setupId, chosenIds }: Props) {
  const light = useSetupLight(setupId);
  const seconds = useSettledSeconds();
  const setup = plan.setups.find(({ id }) => id === setupId);
  const shining = useMemo(
    () => (light && setup ? shiningAt(plan, setup, seconds, light.highlights) : []),
    [plan, setup, seconds, light],
  );
  return (
    <g className="streaks">
      {shining.map((each) => (
        <g key={each.lampId} className={chosenIds.has(each.lampId) ? 'chosen' : undefined}>
          <title>{shiningWords(each)}</title>
          {each.streaks.map(({ outline }) => {
            const path = polygon(outline.map(([x, , z]) => [x, z] as const));
            return <path key={path} d={path} />;
          })}
        </g>
      ))}
    </g>
  );
}
