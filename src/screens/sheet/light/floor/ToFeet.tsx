import { isRefused } from '../../../../core/light/advice';
import type { HighlightPlace } from '../../../../core/light/aimForHighlight';
import { isLamp } from '../../../../core/plan/cues';
import { anchorOf } from '../../../../core/plan/edits/anchorOf';
import { moveItem } from '../../../../core/plan/edits/moveItem';
import { raiseItems } from '../../../../core/plan/edits/raiseItems';
import { named } from '../../../../core/plan/named';
import type { Plan } from '../../../../core/plan/schema/plan';
import type { Setup } from '../../../../core/plan/schema/setup';
import { withNames } from '../../../../core/plan/withNames';
import { usePlanState, useSession } from '../../../../desk/hooks';
import { SelectField } from '../../../parts/Field';
import type { Proposal } from '../../continuity/ProposalActs';
import { choosePerformer, useLitFace } from '../litFace';
import { Way } from '../Way';
import { placeSmall, placeText } from './floorWords';
import { useHighlightPlace } from './useHighlightPlace';

function proposalFor(plan: Plan, label: string, name: string, place: HighlightPlace): Proposal {
  const from = anchorOf(plan, place.move.id);
  return {
    name: `bring the highlight of ${label} to ${name}`,
    done: `${named(label)} has its highlight at ${named(name)}’s feet.`,
    change: (before) => raiseItems(moveItem(before, place.move), place.raise),
    stands: from ? [{ from, to: place.move.to, label }] : [],
  };
}

function Places(props: {
  readonly plan: Plan;
  readonly setup: Setup;
  readonly lamp: { readonly id: string; readonly label: string };
  readonly performer: { readonly id: string; readonly name: string };
}) {
  const { plan, setup, lamp, performer } = props;
  const lengths = useSession((state) => state.lengths);
  const { answer, trouble, stale } = useHighlightPlace(setup.id, lamp.id, performer.id);
  if (trouble !== null) return <p className="err">{trouble}</p>;
  if (!answer) return <p className="after">The way there is being read.</p>;
  if (isRefused(answer)) return <p className="advice">{answer.refused}</p>;
  const way = (place: HighlightPlace): Proposal => proposalFor(plan, lamp.label, performer.name, place);
  return (
    <ul className="key-ways">
      {[answer.stand, answer.raise].map((place, k) => (
        <Way
          key={k === 0 ? 'stand' : 'raise'}
          way={place}
          lead={k === 0 ? 'As high as it is' : 'Raised or lowered'}
          stale={stale}
          word={(advice) => placeText(advice, lengths)}
          small={(advice) => placeSmall(advice, lengths)}
          propose={way}
        />
      ))}
    </ul>
  );
}

/** Where the chosen lamp has to be, so that its highlight lies at somebody's feet at the playhead. */
export function ToFeet({ setup }: { readonly setup: Setup }) {
  const plan = usePlanState((state) => state.plan);
  const selectedId = useSession((state) => state.selectedId);
  const face = useLitFace(plan);
  const lamp = plan.gear.find((gear) => gear.id === selectedId && isLamp(gear));
  if (!face) return null;
  if (!lamp)
    return <p className="advice">Choose a lamp, and its highlight can be brought to {face.name}’s feet.</p>;
  return (
    <section className="group">
      <h4>{lamp.label}, its highlight</h4>
      <div className="fields">
        <SelectField label="at the feet of" value={face.performerId} wide onChange={choosePerformer}>
          {withNames(plan).cast.map(({ id, label }) => (
            <option key={id} value={id}>
              {label}
            </option>
          ))}
        </SelectField>
      </div>
      <Places plan={plan} setup={setup} lamp={lamp} performer={{ id: face.performerId, name: face.name }} />
    </section>
  );
}
