import { type CordSize, cordOf, cordsOf } from '../../../core/kit/powerCords';
import type { Cable } from '../../../core/plan/edits/plugCable';
import { setWire } from '../../../core/plan/edits/setWire';
import { runLength } from '../../../core/plan/runs';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Wire } from '../../../core/plan/schema/power';
import { cordOfCable } from '../../../core/power/cords';
import { mainsVoltsOf } from '../../../core/power/mainsVolts';
import { distrosOf, sourcesOf } from '../../../core/power/supplies';
import { ampWords } from '../../../core/report/power/powerWords';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { choice, lengthOf, reshaped } from './build';
import type { FieldSpec } from './types';
import { wireText } from './wireText';

const keyOf = (wire: Wire): string => ('awg' in wire ? `awg ${wire.awg}` : `mm2 ${wire.mm2}`);

/** Both kinds of sizes, those of the plan's mains first. */
const sizesFor = (plan: Plan): readonly CordSize[] => {
  const mains = mainsVoltsOf(plan);
  return [...cordsOf(mains), ...cordsOf(mains === 120 ? 230 : 120)];
};

function wireField(plan: Plan, { id, wire }: Cable, lengths: LengthSystem, assumed: Wire): FieldSpec {
  const sizes = sizesFor(plan).map((size) => [keyOf(size.wire), wireText(size.wire, lengths)] as const);
  const usual = `${wireText(assumed, lengths)}, by its diameter`;
  return {
    ...choice(
      'conductors',
      wire ? keyOf(wire) : '',
      [['', wire ? 'by its diameter' : usual], ...sizes],
      (before, key) => {
        const found = sizesFor(before).find((size) => keyOf(size.wire) === key);
        const to = found && { wire: found.wire, diameterMetres: cordOf(found.wire).diameterMetres };
        return setWire(before, { id, to: to ?? null });
      },
    ),
    wide: true,
  };
}

/** Which circuit of its supply a cable hangs on; none where it hangs on no supply or box. */
function circuitField(plan: Plan, { id, plugs, circuit }: Cable): FieldSpec[] {
  const owners = [...sourcesOf(plan), ...distrosOf(plan)];
  const owner =
    owners.find((each) => each.id === plugs?.from) ?? owners.find((each) => each.id === plugs?.to);
  if (!owner && circuit === undefined) return [];
  const count = Math.max(owner?.circuits.length ?? 0, circuit ?? 0);
  const numbers = Array.from({ length: count }, (_, place) => {
    const amps = owner?.circuits[place]?.amps;
    return [String(place + 1), `${place + 1}${amps === undefined ? '' : `, ${ampWords(amps)}`}`] as const;
  });
  return [
    choice(
      'circuit',
      circuit === undefined ? '' : String(circuit),
      [['', 'where there is room'], ...numbers],
      (before, to) => reshaped(before, id, { circuit: to === '' ? undefined : Number(to) }),
    ),
  ];
}

/** A cable: its length, its copper, what it may carry as it lies, its circuit. */
export function cordFields(plan: Plan, cable: Cable, lengths: LengthSystem): FieldSpec[] {
  const cord = cordOfCable(plan, cable);
  return [
    { form: 'shown', label: 'along the deck', text: formatLength(runLength(cable.path, false), lengths) },
    {
      form: 'shown',
      label: 'with slack',
      text: formatLength(cord.lengthMetres, lengths, { decimals: 1 }),
    },
    wireField(plan, cable, lengths, cord.wire),
    { form: 'shown', label: 'may carry', text: ampWords(cord.amps) },
    {
      form: 'share',
      label: 'wound up',
      share: cable.coiledShare ?? 0,
      change: (before, share) => reshaped(before, cable.id, { coiledShare: share > 0 ? share : undefined }),
    },
    ...circuitField(plan, cable),
    lengthOf(cable.id, 'diameterMetres', 'diameter', cable.diameterMetres, true),
    lengthOf(cable.id, 'baseMetres', 'off the deck', cable.baseMetres),
  ];
}
