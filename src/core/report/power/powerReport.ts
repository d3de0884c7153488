import { mainsOf } from '../../light/mains';
import type { Cable } from '../../plan/edits/plugCable';
import type { Plan } from '../../plan/schema/plan';
import { cablesTo } from '../../power/behind';
import { voltAmperes } from '../../power/loads';
import { walkersOver, wetMetresOf } from '../../power/places';
import { type Power, powerOf, type SourceState } from '../../power/powerOf';
import { formatShare } from '../../units/shares';
import { fuelSentences } from './fuelSentences';
import { cautionSentences, groundSentences } from './groundSentences';
import {
  breakerSentences,
  cordSentences,
  dropSentences,
  inletSentences,
  inrushSentences,
  sourceSentences,
  stopSentences,
} from './loadSentences';
import { plugSentences } from './plugSentences';
import type { CableReport, LoadReport, PowerReport, PowerSentence, SourceReport } from './types';
import { zeroSentences } from './zeroSentences';

/** JSON has no infinity: what never ends is null there. */
const orNull = (value: number): number | null => (Number.isFinite(value) ? value : null);

function sourceReport(state: SourceState): SourceReport {
  const { source, fuel, batteryHours, stop, ...given } = state;
  const { id, label, kind, volts, legCount, continuousWatts, peakWatts, isAssumed } = source;
  return {
    id,
    label,
    kind,
    volts,
    assumed: isAssumed,
    legs: legCount,
    continuousWatts,
    peakWatts,
    ...given,
    fuel: fuel && { ...fuel, tankHours: orNull(fuel.tankHours) },
    batteryHours: batteryHours === null ? null : orNull(batteryHours),
    ifItStops: stop && { goesDark: stop.goesDark, moves: stop.moves, staysDark: stop.staysDark },
  };
}

function cableReport(plan: Plan, cable: Cable, { network, flow, cords }: Power): CableReport | null {
  const cord = cords.get(cable.id);
  if (!cord) return null;
  const feed = network.feeds.find(({ cableId }) => cableId === cable.id);
  const carried = flow.cords.get(cable.id);
  return {
    id: cable.id,
    label: cable.label,
    fromId: feed?.fromId ?? cable.plugs?.from ?? null,
    toId: feed?.toId ?? cable.plugs?.to ?? null,
    sourceId: feed?.sourceId ?? null,
    circuit: feed && feed.circuit !== null ? feed.circuit + 1 : null,
    legs: feed?.legs ?? [],
    wire: cord.wire,
    assumed: cord.isAssumed,
    lengthMetres: cord.lengthMetres,
    coiledShare: cord.coiledShare,
    ohms: cord.ohms,
    ratedAmps: cord.amps,
    amps: carried?.amps ?? 0,
    neutralAmps: carried?.neutralAmps ?? 0,
    share: (carried?.amps ?? 0) / cord.amps,
    dropVolts: carried?.dropVolts ?? 0,
    lossWatts: carried?.lossWatts ?? 0,
    wetMetres: wetMetresOf(plan, cable),
    walkedBy: walkersOver(plan, cable),
  };
}

const loadReports = ({ network, flow }: Power): readonly LoadReport[] =>
  [...network.loads.values()].map(({ id, label, watts, litWatts, powerFactor }): LoadReport => {
    const fed = flow.loads.get(id);
    return {
      id,
      label,
      feeding: network.feeding.get(id) ?? 'no cord',
      watts,
      litWatts,
      powerFactor,
      voltAmperes: voltAmperes(watts, powerFactor),
      sourceId: fed?.sourceId ?? null,
      cableIds: fed ? cablesTo(network, id) : [],
      leg: fed?.leg ?? null,
      amps: fed?.amps ?? null,
      volts: fed?.volts ?? null,
      dropShare: fed?.dropShare ?? null,
    };
  });

/** What holds, where something is fed and nothing breaks. */
function wholeSentences(power: Power, found: readonly PowerSentence[]): readonly PowerSentence[] {
  const { flow, circuits } = power;
  if (flow.loads.size === 0 || found.some(({ standing }) => standing === 'breaks')) return [];
  const most = Math.max(...circuits.map(({ continuousShare }) => continuousShare));
  const drop = Math.max(...[...flow.loads.values()].map(({ dropShare }) => dropShare));
  const one = flow.loads.size === 1;
  return [
    {
      about: 'whole',
      standing: 'holds',
      itemIds: [...flow.loads.keys()],
      sentence: `${one ? 'The one load that is plugged in has' : `All ${flow.loads.size} loads that are plugged in have`} power: no breaker carries more than ${formatShare(most)} of what it is good for through a night, and no more than ${formatShare(Math.max(drop, 0))} of the volts is lost on the way.`,
    },
  ];
}

/** The power of a plan with its words. @param hours that everything is on; as the plan or its night has it where left out */
export const powerReport = (plan: Plan, hours: number | null = null): PowerReport =>
  reportOf(plan, powerOf(plan, hours));

/** The same of a plan's power that is worked out already. */
export function reportOf(plan: Plan, power: Power): PowerReport {
  const { network, flow, circuits, sources } = power;
  const cables = plan.gear.flatMap((gear) => {
    const report = gear.kind === 'cable' ? cableReport(plan, gear, power) : null;
    return report ? [report] : [];
  });
  const found = [
    ...plugSentences(plan, network.faults),
    ...zeroSentences(power),
    ...breakerSentences(plan, power),
    ...inletSentences(power),
    ...sourceSentences(power),
    ...cordSentences(power),
    ...dropSentences(plan, power),
  ];
  const sum = (of: (state: SourceState) => number): number =>
    sources.reduce((total, state) => total + of(state), 0);
  return {
    mainsVolts: power.mainsVolts,
    mainsHertz: mainsOf(plan),
    hours: power.hours,
    sources: sources.map(sourceReport),
    distros: [...network.distros.values()].map(({ id, label, inputAmps, isAssumed }) => {
      const feed = network.feeds.find(({ toId }) => toId === id);
      const legAmps = (feed && flow.cords.get(feed.cableId)?.legAmps) ?? [];
      const share = Math.max(0, ...legAmps) / inputAmps;
      return { id, label, assumed: isAssumed, sourceId: feed?.sourceId ?? null, inputAmps, legAmps, share };
    }),
    circuits,
    cables,
    loads: loadReports(power),
    totals: {
      watts: sum((state) => state.watts),
      voltAmperes: sum((state) => state.voltAmperes),
      lossWatts: sum((state) => state.lossWatts),
      litres: sum(({ fuel }) => fuel?.litres ?? 0),
      bringLitres: sum(({ fuel }) => fuel?.bringLitres ?? 0),
    },
    sentences: [
      ...found,
      ...wholeSentences(power, found),
      ...inrushSentences(power),
      ...groundSentences(plan, power, cables),
      ...fuelSentences(power),
      ...stopSentences(plan, power),
      ...cautionSentences(power),
    ],
  };
}
