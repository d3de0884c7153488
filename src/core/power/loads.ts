import { headClassOf } from '../form/gear/references';
import { cartDraw, dimmedDraw, monitorDraw, OWN_BATTERY_WATTS } from '../kit/powerDraw';
import { isLamp, type Lamp } from '../plan/cues';
import type { Gear } from '../plan/schema/gear';
import type { Plan } from '../plan/schema/plan';
import type { Drawn, Supply } from '../plan/schema/power';

/** Something that draws power. */
export interface Load {
  readonly id: string;
  readonly label: string;
  /** At full: what breakers, cords and generators are judged by. */
  readonly watts: number;
  /** As far up as it is dimmed at some moment of the action: what fuel and batteries are judged by. */
  readonly litWatts: number;
  readonly powerFactor: number;
  /** How many times its watts it takes when it starts. */
  readonly startTimes: number;
  readonly supply: Supply;
}

/** The highest that a lamp is dimmed to at some moment, 0..1. */
const highestDim = ({ dim, cues = [] }: Lamp): number =>
  cues.reduce((highest, cue) => Math.max(highest, cue.dim ?? 0), dim);

const drawing = (
  {
    id,
    label,
    supply,
  }: { readonly id: string; readonly label: string; readonly supply?: Supply | undefined },
  { watts, powerFactor, startTimes = 1 }: Drawn,
): Load => ({
  id,
  label,
  watts,
  litWatts: watts,
  powerFactor,
  startTimes,
  supply: supply ?? 'cord',
});

/** A lamp as a load: an LED one, whose watts go down with its dimmer but for what its driver takes. */
function lampLoad(plan: Plan, lamp: Lamp): Load {
  const { watts: each, powerFactor } = headClassOf(lamp, plan);
  const watts = each * (lamp.kind === 'bulb string' ? lamp.bulbs : 1);
  const own = lamp.kind !== 'head' || watts <= OWN_BATTERY_WATTS;
  return {
    id: lamp.id,
    label: lamp.label,
    watts,
    litWatts: watts * dimmedDraw(highestDim(lamp)),
    powerFactor,
    startTimes: 1,
    supply: lamp.supply ?? (own ? 'own' : 'cord'),
  };
}

/** What a piece of gear draws; null for what draws nothing. */
function loadOf(plan: Plan, gear: Gear): Load | null {
  if (isLamp(gear)) return lampLoad(plan, gear);
  switch (gear.kind) {
    case 'monitor':
      return drawing(gear, gear.drawn ?? monitorDraw(gear.diagonalMetres));
    case 'cart':
      return drawing(gear, gear.drawn ?? cartDraw(gear.monitors));
    case 'appliance':
      return drawing(gear, gear.drawn);
    default:
      return null;
  }
}

/** All that draws power, in the plan's order. */
export const loadsOf = (plan: Plan): readonly Load[] =>
  plan.gear.flatMap((gear) => {
    const load = loadOf(plan, gear);
    return load ? [load] : [];
  });

/** What a load's current is reckoned from, volt-amperes: watts by power factor. */
export const voltAmperes = (watts: number, powerFactor: number): number => watts / powerFactor;
