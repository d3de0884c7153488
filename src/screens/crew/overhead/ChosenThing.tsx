import type { TapedSet } from '../../../core/form/tape/tape';
import { tapedSentence } from '../../../core/form/tape/words';
import { itemOf } from '../../../core/plan/items';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { carriedBy, heightWords, letterIn } from '../../../desk/crew/overhead/roofThings';
import { useCrewReading } from '../../../desk/crew/useCrew';
import { Icon, type IconName, iconOfItem } from '../../parts/Icon';
import { powerWords } from '../item/powerWords';

interface Line {
  readonly label: string;
  readonly icon: IconName;
  readonly height: string;
  /** What stands on it, or what it is for. */
  readonly more: string;
}

function lineOf(plan: Plan, id: string, lengths: LengthSystem): Line | null {
  const item = itemOf(plan, id);
  if (item) {
    const isGear = item.section === 'gear';
    return {
      label: item.record.label,
      icon: iconOfItem(plan.kit, item),
      height: isGear ? heightWords(item.record, lengths) : '',
      more: isGear
        ? carriedBy(plan, id)
            .map(({ label }) => label)
            .join(', ')
        : '',
    };
  }
  const setup = plan.setups.find((each) => each.id === id);
  return setup
    ? { label: `Camera ${letterIn(plan, id)}`, icon: 'camera', height: '', more: setup.label }
    : null;
}

/** What is tapped, in a few lines: its tapes, what it carries, what that draws. A tap opens all of it. */
export function ChosenThing(props: {
  readonly plan: Plan;
  readonly id: string;
  readonly sets: readonly TapedSet[];
  readonly lengths: LengthSystem;
  readonly open: () => void;
}) {
  const { plan, id, sets, lengths, open } = props;
  const power = useCrewReading((state) => state.power);
  const line = lineOf(plan, id, lengths);
  if (!line) return null;
  const ids = [id, ...carriedBy(plan, id).map((each) => each.id)];
  const draws = power ? ids.flatMap((each) => powerWords(power, each, lengths) ?? []) : [];
  const more = [line.more, ...draws].filter((word) => word !== '').join(', ');
  return (
    <button type="button" className="crew-chosen" onClick={open}>
      <Icon name={line.icon} />
      <span className="crew-chosen-name">
        <b>{line.label}</b>
        <span>{line.height}</span>
      </span>
      <span className="crew-chosen-words">
        {sets[0] ? `${tapedSentence(sets[0], lengths)} ` : ''}
        {sets.length > 1 ? `${sets.length} places. ` : ''}
        {more === '' ? '' : `${more}.`}
      </span>
    </button>
  );
}
