import type { Plan } from '../../../../core/plan/schema/plan';
import { isDark } from '../../../../core/power/types';
import type { LoadReport } from '../../../../core/report/power/types';
import { useSession } from '../../../../desk/hooks';
import type { PowerAnswer } from '../../../../desk/power/powerApi';
import { chooseItem } from '../../../../desk/selecting';
import { ChoosableRow } from '../../ChoosableRow';
import { StandingGlyph } from '../../light/StandingGlyph';
import { cableText, drawText, fedText } from './words';

const standingOf = (load: LoadReport): 'breaks' | 'said' | 'holds' =>
  isDark(load) ? 'breaks' : load.feeding === 'own' ? 'said' : 'holds';

/** All that draws power: what it draws, what arrives there. */
export function Loads({ answer }: { readonly answer: PowerAnswer }) {
  const selectedId = useSession((state) => state.selectedId);
  const { loads } = answer.report;
  if (loads.length === 0) return <p className="advice">Nothing on the roof draws power yet.</p>;
  return (
    <ul className="rows findings power-rows" aria-label="Loads">
      {loads.map((load) => (
        <ChoosableRow key={load.id} chosen={load.id === selectedId} onChoose={() => chooseItem(load.id)}>
          <StandingGlyph standing={standingOf(load)} />
          <span className="sentence">
            <b>{load.label}</b> {drawText(load)}
            <small>{fedText(load)}</small>
          </span>
        </ChoosableRow>
      ))}
    </ul>
  );
}

/** All cables: how long and thick, what each carries, loses and turns into heat. */
export function Cords({ plan, answer }: { readonly plan: Plan; readonly answer: PowerAnswer }) {
  const selectedId = useSession((state) => state.selectedId);
  const lengths = useSession((state) => state.lengths);
  const { cables } = answer.report;
  if (cables.length === 0) return <p className="advice">No cable is on the roof yet.</p>;
  return (
    <ul className="rows findings power-rows" aria-label="Cables">
      {cables.map((cable) => (
        <ChoosableRow key={cable.id} chosen={cable.id === selectedId} onChoose={() => chooseItem(cable.id)}>
          <StandingGlyph standing={cable.share > 1 ? 'breaks' : cable.amps > 0 ? 'holds' : 'said'} />
          <span className="sentence">
            <b>{cable.label}</b>
            <small>{cableText(plan, cable, lengths)}</small>
          </span>
        </ChoosableRow>
      ))}
    </ul>
  );
}
