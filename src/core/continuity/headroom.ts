import type { Plan } from '../plan/schema/plan';
import { inOneGo } from '../units/steps';
import { type Shot, shotsOf } from './continuityShots';
import { SHOT_SIZES, type ShotSize } from './framing';
import { facesOf, type InFrame, inShot, mainIn } from './pairs';
import { stepsOver } from './stepsOver';
import type { ContinuityBase } from './types';

/** Room over a head that is not as it is usually left. */
export interface HeadroomFinding extends ContinuityBase<'headroom'> {
  /** The crown is cut in a frame wider than a close-up, or there is more room over it than is usual. */
  readonly fault: 'crown cut' | 'much room';
  /** Of the shot at `atSeconds`. */
  readonly size: ShotSize;
  /** From the frame line down to the crown, as a share of the frame's height; negative where the crown is cut. */
  readonly headroom: number;
  readonly mostHeadroom: number;
}

/** More room than this over a head is much, as a share of the frame's height. Source: common practice, no source */
export const MOST_HEADROOM = 0.2;
/** A fault counts when it is there for this share of the time that the head is in frame, so that a tilt up may find it. */
const LASTS_SHARE = 0.5;

/** From here on a cut crown is a fault; up to there room over the head is asked for at all. */
const WIDEST_CUT = SHOT_SIZES.indexOf('close-up');
const WIDEST_ROOM = SHOT_SIZES.indexOf('medium long shot');

const FAULTS = ['crown cut', 'much room'] as const;
type Fault = (typeof FAULTS)[number];

function isAtFault({ framing }: InFrame, fault: Fault, mostHeadroom: number): boolean {
  if (framing.size === null) return false;
  const rank = SHOT_SIZES.indexOf(framing.size);
  return fault === 'crown cut'
    ? rank > WIDEST_CUT && framing.headroom < 0
    : rank <= WIDEST_ROOM && framing.headroom > mostHeadroom;
}

/** Whom a frame is composed for: its subject, else every face in it. */
function composedFor(shot: Shot, k: number): readonly InFrame[] {
  const main = mainIn(shot, k);
  return main ? [main] : facesOf(inShot(shot, k));
}

/**
 * Where setups cut the crown of somebody they are about, in a frame wider than a close-up, or leave more room over the
 * head than is usual, for at least half of the time that they are about them. In full and long shots room is not asked for.
 */
export const headroomFindings = (plan: Plan, mostHeadroom = MOST_HEADROOM): readonly HeadroomFinding[] =>
  inOneGo(headroomSteps(plan, mostHeadroom));

/** The same, setup by setup: yields the done share, 0..1. */
export const headroomSteps = (
  plan: Plan,
  mostHeadroom = MOST_HEADROOM,
): Generator<number, readonly HeadroomFinding[], void> =>
  stepsOver(shotsOf(plan), (shot) => headroomIn(shot, mostHeadroom));

function headroomIn(shot: Shot, mostHeadroom: number): readonly HeadroomFinding[] {
  const looks = new Map<string, (readonly [atSeconds: number, seen: InFrame])[]>();
  for (const [k, atSeconds] of shot.instants.entries()) {
    for (const each of composedFor(shot, k)) {
      const known = looks.get(each.performerId);
      if (known) known.push([atSeconds, each]);
      else looks.set(each.performerId, [[atSeconds, each]]);
    }
  }
  return [...looks].flatMap(([performerId, seen]) =>
    FAULTS.flatMap((fault): HeadroomFinding[] => {
      const at = seen.filter(([, each]) => isAtFault(each, fault, mostHeadroom));
      if (at.length === 0 || at.length < LASTS_SHARE * seen.length) return [];
      const sign = fault === 'crown cut' ? 1 : -1;
      const [atSeconds, { framing }] = at.reduce((worst, each) =>
        sign * each[1].framing.headroom < sign * worst[1].framing.headroom ? each : worst,
      );
      return [
        {
          kind: 'headroom',
          standing: 'said',
          setupId: shot.setup.id,
          againstId: null,
          performerIds: [performerId],
          atSeconds,
          fault,
          size: framing.size ?? 'long shot',
          headroom: framing.headroom,
          mostHeadroom,
        },
      ];
    }),
  );
}
