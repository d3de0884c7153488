import { named } from '../../plan/named';
import type { Plan } from '../../plan/schema/plan';
import { standsWet } from '../../power/places';
import type { Power } from '../../power/powerOf';
import { formatLength } from '../../units/lengths';
import { namedIn, namesIn } from './powerWords';
import type { CableReport, PowerSentence } from './types';

/** Shorter than this a cable only touches wet ground, metres. */
const TOUCH_METRES = 0.05;

/** Cables and what they are plugged into on wet ground, and cables that people walk over. */
export function groundSentences(
  plan: Plan,
  { network }: Power,
  cables: readonly CableReport[],
): readonly PowerSentence[] {
  const plugged = cables.filter(({ fromId, toId }) => fromId !== null || toId !== null);
  const joints = [...new Set(plugged.flatMap(({ fromId, toId }) => [fromId ?? '', toId ?? '']))].filter(
    (id) => id !== '' && standsWet(plan, id),
  );
  const wet = plugged.filter(({ wetMetres }) => wetMetres > TOUCH_METRES);
  const isOne = joints.length === 1;
  const wetMetres = wet.reduce((sum, cable) => sum + cable.wetMetres, 0);
  const walked = plugged.filter(({ walkedBy }) => walkedBy.length > 0);
  const wetBoxes = joints.filter((id) => network.sources.has(id) || network.distros.has(id));
  return [
    ...(joints.length > 0
      ? [
          {
            about: 'ground',
            standing: 'said',
            itemIds: joints,
            sentence: `${namesIn(plan, joints)} ${isOne ? 'is' : 'are'} plugged in on wet ground. Keep plugs and sockets off it, on something dry and covered, behind ground-fault protection that was tested tonight.`,
          } as const,
        ]
      : []),
    ...(wetBoxes.length > 0
      ? [
          {
            about: 'ground',
            standing: 'said',
            itemIds: wetBoxes,
            sentence: `${namesIn(plan, wetBoxes)} ${wetBoxes.length === 1 ? 'stands' : 'stand'} on wet ground. Put ${wetBoxes.length === 1 ? 'it' : 'them'} where it is dry.`,
          } as const,
        ]
      : []),
    ...(wet.length > 0
      ? [
          {
            about: 'ground',
            standing: 'said',
            itemIds: wet.map(({ id }) => id),
            sentence: `${formatLength(wetMetres, 'm', { decimals: 1 })} of ${namesIn(
              plan,
              wet.map(({ id }) => id),
            )} lies on wet ground. Lay it round, with no joint in the wet.`,
          } as const,
        ]
      : []),
    ...walked.map(
      ({ id, label, walkedBy }): PowerSentence => ({
        about: 'ground',
        standing: 'said',
        itemIds: [id, ...walkedBy],
        sentence: `${listedNames(plan, walkedBy)} over ${named(label)}. Cover it and tape it down, or lay it round.`,
      }),
    ),
  ];
}

const listedNames = (plan: Plan, ids: readonly string[]): string =>
  ids.length === 1 ? `${namedIn(plan, ids[0])} walks` : `${namesIn(plan, ids)} walk`;

/** What is always said where anything is plugged in. Source: [ground-fault], [generator-refuel] */
export function cautionSentences({ network, sources }: Power): readonly PowerSentence[] {
  if (network.feeds.length === 0 && sources.length === 0) return [];
  const hasEngine = sources.some(({ source }) => source.kind === 'generator');
  const caution = (sentence: string): PowerSentence => ({
    about: 'caution',
    standing: 'said',
    itemIds: [],
    sentence,
  });
  return [
    caution(
      'Everything outdoors goes behind ground-fault protection, and nothing is plugged in, opened or moved with wet hands.',
    ),
    ...(hasEngine
      ? [
          caution(
            'A generator is stopped and cool before it is filled, stays dry, stands clear of doors, windows and vents, and is never plugged into the house.',
          ),
        ]
      : []),
    caution(
      'These are sums for planning. The local code and a licensed electrician decide what may be plugged into what, how it is earthed and who may do it.',
    ),
  ];
}
