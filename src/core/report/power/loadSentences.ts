import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import type { Power, SourceState } from '../../power/powerOf';
import { CONTINUOUS_SHARE, DROP_SHARE, WHOLE_DROP_SHARE } from '../../power/ratings';
import { formatShare } from '../../units/shares';
import { listed } from '../listed';
import { ampWords, namedIn, namesIn, voltAmpereWords, voltWords, wattWords, wireWords } from './powerWords';
import type { PowerSentence } from './types';

/** Legs of a source that differ by more than this of the stronger are told. Source: common practice, no source */
const UNEVEN_LEGS = 0.3;
/** Generators whose shares differ by more than this are told. Source: common practice, no source */
const UNEVEN_SHARES = 0.35;
/** Rounding is no overload. */
const SLACK = 1e-6;

/** Boxes whose inlets carry too much. */
export function inletSentences({ network, flow }: Power): readonly PowerSentence[] {
  return network.feeds.flatMap((feed): PowerSentence[] => {
    const distro = network.distros.get(feed.toId);
    const amps = Math.max(0, ...(flow.cords.get(feed.cableId)?.legAmps ?? []));
    if (!distro || amps <= distro.inputAmps * CONTINUOUS_SHARE + SLACK) return [];
    return [
      {
        about: 'breaker',
        standing: 'breaks',
        itemIds: [distro.id],
        sentence: `${named(distro.label)} takes ${ampWords(amps)} through an inlet for ${ampWords(distro.inputAmps)}, good for ${ampWords(distro.inputAmps * CONTINUOUS_SHARE)} for three hours and more. Move a load to another supply.`,
      },
    ];
  });
}

/** Breakers that carry too much. */
export function breakerSentences(plan: Plan, { circuits }: Power): readonly PowerSentence[] {
  return circuits.flatMap((circuit): PowerSentence[] => {
    const amps = Math.max(...circuit.legAmps);
    const name = `Circuit ${circuit.number} of ${namedIn(plan, circuit.ownerId)}`;
    const common = {
      about: 'breaker',
      itemIds: [circuit.ownerId, ...circuit.loadIds],
    } as const;
    if (circuit.share > 1 + SLACK)
      return [
        {
          ...common,
          standing: 'breaks',
          sentence: `${name} carries ${ampWords(amps)} on a breaker of ${ampWords(circuit.ratedAmps)}, which trips. Take off ${ampWords(amps - circuit.ratedAmps * CONTINUOUS_SHARE)}.`,
        },
      ];
    if (circuit.continuousShare > 1 + SLACK)
      return [
        {
          ...common,
          standing: 'breaks',
          sentence: `${name} carries ${ampWords(amps)}; for three hours and more a breaker of ${ampWords(circuit.ratedAmps)} is good for ${ampWords(circuit.ratedAmps * CONTINUOUS_SHARE)}.`,
        },
      ];
    return [];
  });
}

function sourceSentence(state: SourceState): PowerSentence[] {
  const { source, share, startShare, voltAmperes, startWatts } = state;
  if (source.continuousWatts === null || source.peakWatts === null || share === null || startShare === null)
    return [];
  const about = source.kind === 'battery' ? 'battery' : 'generator';
  const common = { about, itemIds: [source.id] } as const;
  const found: PowerSentence[] = [];
  if (source.peakWatts < source.continuousWatts)
    found.push({
      ...common,
      standing: 'said',
      sentence: `${named(source.label)} is said to give ${wattWords(source.continuousWatts)} for long and only ${wattWords(source.peakWatts)} for moments. Look at its plate.`,
    });
  if (share > 1 + SLACK)
    found.push({
      ...common,
      standing: 'breaks',
      sentence: `${named(source.label)} is asked for ${voltAmpereWords(voltAmperes)} and gives ${wattWords(source.continuousWatts)} for long${voltAmperes > source.peakWatts ? `, ${wattWords(source.peakWatts)} for moments: it cuts out` : ''}. Move something to another supply.`,
    });
  else if (startShare > 1 + SLACK)
    found.push({
      ...common,
      standing: 'breaks',
      sentence: `${named(source.label)} is asked for ${wattWords(startWatts)} when its hardest load starts last, and gives ${wattWords(source.peakWatts)} for moments. Start that one first.`,
    });
  const [weakest, strongest] = [Math.min(...state.legAmps), Math.max(...state.legAmps)];
  if (state.legAmps.length > 1 && strongest > 1 && weakest < strongest * (1 - UNEVEN_LEGS))
    found.push({
      about: 'balance',
      itemIds: [source.id],
      standing: 'said',
      sentence: `The legs of ${named(source.label)} carry ${listed(state.legAmps.map(ampWords))}. Move a load from the strong leg to the weak one.`,
    });
  return found;
}

/** What is asked of generators and batteries against what they give, and how evenly. */
export function sourceSentences({ sources }: Power): readonly PowerSentence[] {
  const found = sources.flatMap(sourceSentence);
  const sharing = sources.filter(({ source }) => source.kind === 'generator');
  const [least, most] = [...sharing]
    .sort((a, b) => (a.share ?? 0) - (b.share ?? 0))
    .filter((_, k, all) => k === 0 || k === all.length - 1);
  if (!least || !most || (most.share ?? 0) - (least.share ?? 0) <= UNEVEN_SHARES) return found;
  return [
    ...found,
    {
      about: 'balance',
      standing: 'said',
      itemIds: [most.source.id, least.source.id],
      sentence: `${named(most.source.label)} runs at ${formatShare(most.share ?? 0)} of what it gives for long, ${named(least.source.label)} at ${formatShare(least.share ?? 0)}. Move a load from one to the other.`,
    },
  ];
}

/** Inrush of the drivers of LED lamps, which no plate tells; told once, where a supply feeds several. Source: common practice, no source */
export function inrushSentences({ sources, flow }: Power): readonly PowerSentence[] {
  const many = sources.filter(
    ({ source }) =>
      source.kind !== 'outlet' &&
      [...flow.loads.values()].filter(({ sourceId }) => sourceId === source.id).length > 2,
  );
  if (many.length === 0) return [];
  return [
    {
      about: 'generator',
      standing: 'said',
      itemIds: many.map(({ source }) => source.id),
      sentence:
        'For less than a thousandth of a second LED lamps take many times their current when they are switched on. Switch them on one after another.',
    },
  ];
}

/** Cords that carry more than they may, and breakers that would let them. */
export function cordSentences({ cords, flow, circuits, network }: Power): readonly PowerSentence[] {
  return network.feeds.flatMap((feed): PowerSentence[] => {
    const cord = cords.get(feed.cableId);
    const carried = flow.cords.get(feed.cableId);
    if (!cord || !carried) return [];
    const common = { about: 'cord', itemIds: [cord.id] } as const;
    const coiled = cord.coiledShare > 0 ? ' with some of it wound up' : '';
    if (carried.amps > cord.amps + SLACK)
      return [
        {
          ...common,
          standing: 'breaks',
          sentence: `${named(cord.label)} carries ${ampWords(carried.amps)}; ${wireWords(cord.wire)} may carry ${ampWords(cord.amps)}${coiled}. ${cord.coiledShare > 0 ? 'Unwind all of it, or take' : 'Take'} a thicker one.`,
        },
      ];
    const breaker = circuits.find(
      ({ ownerId, number }) => ownerId === feed.fromId && number === (feed.circuit ?? -1) + 1,
    );
    if (!breaker || breaker.ratedAmps <= cord.amps) return [];
    return [
      {
        ...common,
        standing: 'said',
        sentence: `${named(cord.label)} of ${wireWords(cord.wire)} may carry ${ampWords(cord.amps)}${coiled}, and its breaker trips at ${ampWords(breaker.ratedAmps)} only: nothing guards it against more load.`,
      },
    ];
  });
}

/** Loads that get too little voltage. */
export function dropSentences(plan: Plan, { flow, network }: Power): readonly PowerSentence[] {
  const low = [...flow.loads.values()].filter(({ dropShare }) => dropShare > DROP_SHARE + SLACK);
  return low.map(({ loadId, volts, dropShare, sourceId }): PowerSentence => {
    const name = namedIn(plan, loadId);
    const common = { about: 'drop', itemIds: [loadId] } as const;
    if (flow.collapsed.includes(loadId))
      return {
        ...common,
        standing: 'breaks',
        sentence: `The cords to ${name} are too long or too thin for what it draws: no voltage holds there.`,
      };
    const from = network.sources.get(sourceId);
    const isMuch = dropShare > WHOLE_DROP_SHARE + SLACK;
    return {
      ...common,
      standing: isMuch ? 'breaks' : 'said',
      sentence: `${name} gets ${voltWords(volts)} of ${voltWords(from?.volts ?? 0)}: ${formatShare(dropShare)} is lost on the way, and ${formatShare(isMuch ? WHOLE_DROP_SHARE : DROP_SHARE)} is what is recommended at most${isMuch ? ' with the feeder' : ''}. Take thicker cords, or shorter ways.`,
    };
  });
}

/** What goes dark when a source stops, and where it could go. */
export function stopSentences(plan: Plan, { sources, network }: Power): readonly PowerSentence[] {
  return sources.flatMap(({ source, stop }): PowerSentence[] => {
    if (!stop || source.kind === 'outlet') return [];
    const dark = namesIn(plan, stop.goesDark);
    const owners = [...new Set(stop.moves.map(({ ownerId }) => ownerId))];
    const moved = namesIn(
      plan,
      stop.moves.map(({ loadId }) => loadId),
    );
    const where = namesIn(plan, owners);
    const hasOthers = network.sources.size > 1;
    const then =
      stop.moves.length === 0
        ? hasOthers
          ? 'No other supply has a free socket and room for any of it.'
          : 'There is no other supply.'
        : stop.staysDark.length === 0
          ? `All of it would find room on ${where}.`
          : `${moved} would find room on ${where}; ${namesIn(plan, stop.staysDark)} would stay dark.`;
    return [
      {
        about: 'stop',
        standing: 'said',
        itemIds: [source.id, ...stop.goesDark],
        sentence: `If ${named(source.label)} stops, ${dark} ${stop.goesDark.length === 1 ? 'goes' : 'go'} dark. ${then}`,
      },
    ];
  });
}
