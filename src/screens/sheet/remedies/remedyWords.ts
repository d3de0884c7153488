import { changedIds } from '../../../core/clearance/remedies/judge';
import { FARTHEST_METRES } from '../../../core/clearance/remedies/moving';
import { withRemedy } from '../../../core/clearance/remedies/remedyEdits';
import type { Remedy } from '../../../core/clearance/remedies/types';
import { stateAt } from '../../../core/optics/camera';
import { anchorOf, carrierOf } from '../../../core/plan/edits/anchorOf';
import { itemOf } from '../../../core/plan/items';
import { named } from '../../../core/plan/named';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatLength, type LengthSystem } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatStopCount } from '../../../core/units/stops';
import { letterOf } from '../../../desk/choose';
import type { ProposedPlace, ProposedStand } from '../../../desk/lensTestProposal';
import type { Proposal } from '../continuity/ProposalActs';

/** More changes elsewhere than this are counted. */
const MOST_ELSEWHERE = 3;
/** Less than this is not worth a word. */
const LEAST = { metres: 0.005, stops: 0.05, degrees: 0.5 } as const;

/** A short way in centimetres, or in feet and inches for who reads those. */
export function centimetres(metres: number, lengths: LengthSystem): string {
  return lengths === 'm' ? `${formatNumber(metres * 100, 0)}${NBSP}cm` : formatLength(metres, lengths);
}

function degrees(count: number): string {
  const number = formatNumber(count, 0);
  return `${number}${NBSP}${number === '1' ? 'degree' : 'degrees'}`;
}

/** What a remedy changes in other setups, or of other things: `B: Head 2 from clear to close`. */
function elsewhereWords(plan: Plan, { cost }: Remedy): string {
  const told = cost.otherSetups.slice(0, MOST_ELSEWHERE).map(({ setupId, itemId, before, after }) => {
    const label = itemOf(plan, itemId)?.record.label ?? itemId;
    return `in ${letterOf(plan, setupId)} ${label} goes from ${before} to ${after}`;
  });
  const more = cost.otherSetups.length - told.length;
  if (told.length === 0) return 'changes nothing elsewhere';
  return more > 0 ? `${told.join(', ')}, and ${more} more` : told.join(', ');
}

/** What a remedy costs, in one line: ways, turns, light on the subject, and what it changes elsewhere. */
export function costWords(plan: Plan, remedy: Remedy, lengths: LengthSystem): string {
  const { metres, stops, degrees: turned } = remedy.cost;
  const told = [
    ...(metres >= LEAST.metres ? [centimetres(metres, lengths)] : []),
    ...(turned >= LEAST.degrees ? [degrees(turned)] : []),
    ...(Math.abs(stops) >= LEAST.stops
      ? [`${formatStopCount(stops)} ${stops > 0 ? 'less' : 'more'} on its subject`]
      : []),
  ];
  return [...(told.length > 0 ? told : ['nothing goes anywhere']), elsewhereWords(plan, remedy)].join(', ');
}

/** In the order of trust: what holds whatever the light, what holds as long as it stays, what an eye takes it for. */
export const TRUST: readonly {
  readonly relies: Remedy['relies'];
  readonly head: string;
  readonly words: string;
}[] = [
  { relies: 'geometry', head: 'By geometry', words: 'Holds whatever the light.' },
  {
    relies: 'dark',
    head: 'By the dark',
    words: 'Holds as long as the light stays as it is: in other light it is seen.',
  },
  { relies: 'likeness', head: 'By likeness', words: 'Holds as long as it passes for what you say it is.' },
];

/** Remedies that need no reason, by how far they can be trusted; within that in the order in which they were ranked. */
export const byTrust = (
  remedies: readonly Remedy[],
): readonly { readonly head: string; readonly words: string; readonly remedies: readonly Remedy[] }[] =>
  TRUST.map(({ relies, head, words }) => ({
    head,
    words,
    remedies: remedies.filter((remedy) => remedy.relies === relies && remedy.asksReason !== true),
  })).filter((group) => group.remedies.length > 0);

/** What was tried where no remedy was found, and why no more was. */
export function triedWords(plan: Plan, itemId: string): string {
  const item = itemOf(plan, itemId);
  const carrier = carrierOf(plan, itemId);
  const holder = carrier === null ? null : itemOf(plan, carrier);
  const lock =
    holder?.record.locked === true
      ? ` ${named(holder.record.label)}, which carries it, is locked and stays.`
      : item?.record.locked === true
        ? ` ${named(item.record.label)} is locked and stays.`
        : '';
  const isCast = item?.section === 'cast';
  const itself =
    lock !== '' || isCast
      ? ''
      : `moving it up to ${formatLength(FARTHEST_METRES, 'm', { decimals: 0 })}, lowering, raising and turning it, swinging its arm, `;
  const before = isCast ? '' : 'somebody or a crate in front of it, drying the floor, a flag, black tape, ';
  const things = `${itself}${before}`;
  return `Nothing was found that clears it within what a lamp may change: ${things}other lenses, another place or a shorter move of the camera were tried.${lock}`;
}

/** What is written beside a thing that does not go far. */
function doneTo({ kind, cost }: Remedy, isNew: boolean, lengths: LengthSystem): string {
  if (isNew) return 'new';
  switch (kind) {
    case 'lower':
      return `${centimetres(cost.metres, lengths)} lower`;
    case 'raise':
      return `${centimetres(cost.metres, lengths)} higher`;
    case 'black':
      return 'taped black';
    case 'move':
    case 'put in front':
      return centimetres(cost.metres, lengths);
    default:
      return `turned by ${degrees(cost.degrees)}`;
  }
}

const apart = (a: readonly number[], b: readonly number[]): number => Math.hypot(a[0] - b[0], a[1] - b[1]);

/** From where to where things go between two plans; what a stand carries goes with it and is not told by itself. */
function standsBetween(
  plan: Plan,
  after: Plan,
  words: (isNew: boolean) => string | null,
): readonly ProposedStand[] {
  const ids = changedIds(plan, after);
  const roots = ids.filter((id) => {
    const carrier = carrierOf(after, id);
    return carrier === null || !ids.includes(carrier);
  });
  return roots.flatMap((id): ProposedStand[] => {
    const to = anchorOf(after, id);
    if (!to) return [];
    const from = anchorOf(plan, id);
    const label = itemOf(after, id)?.record.label ?? id;
    const isFar = from !== null && apart(from, to) >= LEAST.metres;
    const said = isFar ? null : words(from === null || itemOf(plan, id) === null);
    return [{ from: from ?? to, to, label, ...(said === null ? {} : { words: said }) }];
  });
}

/** From where to where performers are cheated between two plans, for one setup. */
function cheatsBetween(plan: Plan, after: Plan, setupId: string): readonly ProposedStand[] {
  const [before, then] = [plan, after].map(({ setups }) => setups.find(({ id }) => id === setupId));
  if (!before || !then || before.cheats === then.cheats) return [];
  return (then.cheats ?? []).flatMap((cheat): ProposedStand[] => {
    const performer = plan.cast.find(({ id }) => id === cheat.performer);
    const mark = performer?.marks.find(({ id }) => id === cheat.mark);
    const was = before.cheats?.find((each) => each.performer === cheat.performer && each.mark === cheat.mark);
    if (!performer || !mark || was === cheat) return [];
    return [{ from: (was ?? mark).at, to: cheat.at, label: performer.label }];
  });
}

/** From where to where a setup's camera goes between two plans, at an instant; nothing where it stays. */
function cameraBetween(plan: Plan, after: Plan, setupId: string, seconds: number): ProposedPlace | undefined {
  const [before, then] = [plan, after].map(({ setups }) => setups.find(({ id }) => id === setupId));
  if (!before || !then || before === then) return undefined;
  const [from, to] = [stateAt(plan, before, seconds), stateAt(after, then, seconds)];
  const [a, b] = [from, to].map(({ position }): [number, number] => [position[0], position[2]]);
  if (apart(a, b) < LEAST.metres) return undefined;
  return { from: a, to: b, headingDegrees: to.headingDegrees, letter: letterOf(plan, setupId) };
}

/** A remedy as something to try or do. */
export function proposalOf(
  plan: Plan,
  remedy: Remedy,
  about: { readonly setupId: string; readonly seconds: number; readonly lengths: LengthSystem },
): Proposal {
  const after = withRemedy(plan, remedy);
  return {
    name: `remedy: ${remedy.kind}`,
    done: remedy.words,
    change: (from) => withRemedy(from, remedy),
    place: cameraBetween(plan, after, about.setupId, about.seconds),
    stands: [
      ...standsBetween(plan, after, (isNew) => doneTo(remedy, isNew, about.lengths)),
      ...cheatsBetween(plan, after, about.setupId),
    ],
    changed: changedIds(plan, after),
  };
}
