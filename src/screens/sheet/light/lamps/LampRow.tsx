import { useEffect, useRef } from 'react';
import { dimAt, isLamp } from '../../../../core/plan/cues';
import { calledBy } from '../../../../core/plan/named';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { FaceNow } from '../../../../core/report/light/lightNow';
import { formatShare } from '../../../../core/units/shares';
import { useLive, useSession } from '../../../../desk/hooks';
import { sessionStore } from '../../../../desk/sessionStore';
import { Icon, iconOfItem } from '../../../parts/Icon';
import { type Lighting, lightingText } from '../words';
import { DimSlider } from './DimSlider';
import { LampControls } from './LampControls';

/** In one column of a phone the page would leave what the finger is on. */
const BESIDE = '(min-width: 768px)';

const dimText = (dim: number): string => (dim === 0 ? 'off' : formatShare(dim));

/** A lamp or cloth: chosen by its name, dimmed by its slider, with more to do while it is chosen. */
export function LampRow(props: {
  readonly plan: Plan;
  readonly gear: Lighting;
  readonly face: (FaceNow & { readonly name: string }) | null;
  readonly chosen: boolean;
}) {
  const { plan, gear, face, chosen } = props;
  const name = calledBy(gear.label, gear.kind);
  const lengths = useSession((state) => state.lengths);
  const row = useRef<HTMLLIElement>(null);
  useEffect(() => {
    if (chosen && matchMedia(BESIDE).matches) row.current?.scrollIntoView({ block: 'nearest' });
  }, [chosen]);
  const now = useLive(({ seconds }) => (isLamp(gear) ? dimAt(gear, plan, seconds) : null));
  const isCued = isLamp(gear) && now !== null && now !== gear.dim;
  const text = lightingText(plan, gear, face, lengths, now ?? undefined);
  return (
    <li ref={row} aria-current={chosen ? 'true' : undefined}>
      <div className="lamp">
        <button
          type="button"
          className="lamp-name"
          onClick={() => sessionStore.getState().setSelectedId(gear.id)}
        >
          <Icon name={iconOfItem(plan.kit, { section: 'gear', record: gear })} />
          <span>
            {name}
            <small>{isCued ? `${text}, ${dimText(now)} by a cue` : text}</small>
          </span>
        </button>
        {isLamp(gear) ? (
          <>
            <DimSlider id={gear.id} label={name} dim={gear.dim} />
            <output>{dimText(gear.dim)}</output>
          </>
        ) : null}
      </div>
      {chosen ? <LampControls plan={plan} gear={gear} /> : null}
    </li>
  );
}
