import { spanOf } from '../optics/camera';
import type { Plan } from '../plan/schema/plan';
import { inOneGo } from '../units/steps';
import { firstFrameWhere, isInFrame, type Shot, shotsOf } from './continuityShots';
import { type LineReading, lineReading, lineReadingAt, ON_THE_LINE_DEGREES, sideOf } from './lineSide';
import { type JudgedLine, linesOf } from './linesWanted';
import { stepsOver } from './stepsOver';
import type { ContinuityBase, Side } from './types';

/**
 * What a setup does to the line of a pair: *establishes* its side or *holds* to it; stands *over the line*; *crosses* it
 * in frame; stands *on the line*, which is neutral; has nobody to judge by, since one of the two is *absent* or they
 * stand *together*; or was named to establish the side and *frames neither* of them.
 */
export type LineWhat =
  | 'establishes'
  | 'holds'
  | 'over'
  | 'crosses'
  | 'on the line'
  | 'absent'
  | 'together'
  | 'frames neither';

/** How a setup keeps to the line of one pair. */
export interface LineFinding extends ContinuityBase<'line'> {
  /** Of the plan's lines; null where the plan names none and the line was found. */
  readonly lineId: string | null;
  readonly pair: readonly [string, string];
  readonly what: LineWhat;
  /** At which side of the frame the first of the pair is; after a crossing on its far side. */
  readonly side: Side | null;
  /** At which side the first of the pair should be. */
  readonly wantedSide: Side | null;
  /** Between the line and the sight of whoever is framed: where it is least, over the line where it is most; degrees. */
  readonly angleDegrees: number | null;
  /** From the camera square to the line then, metres. */
  readonly metres: number | null;
  /** When on the action's clock it is so, seconds. */
  readonly spans: readonly (readonly [number, number])[];
  /** Who crosses: the camera, or the cast past it. */
  readonly by: 'camera' | 'cast' | null;
  /** Whether the setups after it, in the plan's order, are held to the new side from this instant of the action on. */
  readonly reestablishes: boolean;
}

/** One look at a setup that frames at least one of the pair. */
interface Look {
  readonly k: number;
  readonly reading: LineReading;
  /** The smallest over those who are framed. */
  readonly angleDegrees: number;
  readonly side: Side;
  readonly isOn: boolean;
  readonly framesBoth: boolean;
}

function looksAtLine(shot: Shot, [first, second]: JudgedLine['pair']): readonly Look[] {
  return shot.instants.flatMap((_, k): Look[] => {
    const framed = [isInFrame(shot, first, k), isInFrame(shot, second, k)];
    if (!framed[0] && !framed[1]) return [];
    const [here, there] = [shot.seen.get(first)?.[k]?.place, shot.seen.get(second)?.[k]?.place];
    const reading = here && there ? lineReading(here.at, there.at, shot.cameras[k].pose.position) : null;
    if (!reading) return [];
    const angleDegrees = Math.min(...reading.anglesDegrees.filter((_, place) => framed[place]));
    const isOn = angleDegrees < ON_THE_LINE_DEGREES;
    return [{ k, reading, angleDegrees, side: sideOf(reading), isOn, framesBoth: framed[0] && framed[1] }];
  });
}

/** A side that the pair has been seen on, by whom, and from when on. */
interface Settled {
  readonly side: Side;
  readonly setupId: string;
  readonly order: number;
  readonly fromSeconds: number;
}

type Judged = { readonly shot: Shot; readonly looks: readonly Look[] };

/** Who settles the side: whom the plan names, else the first that frames both, else the first that frames either. */
function establishing(line: JudgedLine, judged: readonly Judged[]): Settled | null {
  const named = judged.filter(({ shot }) => shot.setup.id === line.establishedBy);
  const both = (look: Look): boolean => look.framesBoth;
  const any = (): boolean => true;
  for (const [group, counts] of [
    [named, any],
    [judged, both],
    [judged, any],
  ] as const) {
    for (const { shot, looks } of group) {
      const look = looks.find((each) => !each.isOn && counts(each));
      if (look) return { side: look.side, setupId: shot.setup.id, order: shot.order, fromSeconds: -Infinity };
    }
  }
  return null;
}

/** Looks without a gap between them. */
function stretches(looks: readonly Look[]): readonly (readonly Look[])[] {
  const made: Look[][] = [];
  for (const look of looks) {
    const last = made[made.length - 1];
    if (last && last[last.length - 1].k === look.k - 1) last.push(look);
    else made.push([look]);
  }
  return made;
}

const nearest = (looks: readonly Look[]): Look =>
  looks.reduce((best, look) => (look.angleDegrees < best.angleDegrees ? look : best));
const farthest = (looks: readonly Look[]): Look =>
  looks.reduce((best, look) => (look.angleDegrees > best.angleDegrees ? look : best));

/** One setup against one line: its findings, and the crossings that carry a viewer over. */
class ShotJudge {
  readonly findings: LineFinding[] = [];
  readonly settled: Settled[] = [];
  readonly #line: JudgedLine;
  readonly #shot: Shot;
  readonly #wanted: Settled;

  constructor(line: JudgedLine, shot: Shot, wanted: Settled) {
    this.#line = line;
    this.#shot = shot;
    this.#wanted = wanted;
  }

  judge(looks: readonly Look[], establishes: boolean): void {
    const on = looks.filter(({ isOn }) => isOn);
    if (on.length === looks.length) {
      this.#say('on the line', 'said', nearest(looks), [looks]);
      return;
    }
    let current = this.#wanted.side;
    const over: Look[][] = [];
    for (const stretch of stretches(looks)) {
      let before: Look | null = null;
      for (const look of stretch) {
        if (!look.isOn) {
          if (before && before.side !== look.side) {
            this.#cross(stretch, before, look);
            current = look.side;
          } else if (look.side !== current) {
            if (before) over[over.length - 1].push(look);
            else over.push([look]);
          }
          before = look;
        }
      }
    }
    if (over.length > 0) this.#say('over', 'breaks', farthest(over.flat()), over);
    else if (this.findings.length === 0) {
      const off = looks.filter(({ isOn }) => !isOn);
      this.#say(establishes ? 'establishes' : 'holds', 'holds', nearest(off), stretches(looks));
    }
  }

  #cross(stretch: readonly Look[], before: Look, after: Look): void {
    const { scene, setup, instants } = this.#shot;
    const between = stretch.filter(({ k }) => k >= before.k && k <= after.k);
    let late = between.length - 1;
    while (late > 1 && between[late - 1].side === after.side) late -= 1;
    const [from, to] = [instants[between[late - 1].k], instants[between[late].k]];
    const sideAt = (seconds: number): Side | null => {
      const reading = lineReadingAt(scene, setup, this.#line.pair, seconds);
      return reading && sideOf(reading);
    };
    const atSeconds = firstFrameWhere(from, to, (seconds) => sideAt(seconds) === after.side);
    const seesBoth = between[late - 1].framesBoth && between[late].framesBoth;
    this.findings.push({
      ...this.#common('crosses', 'said'),
      atSeconds,
      side: after.side,
      angleDegrees: after.angleDegrees,
      metres: Math.abs(after.reading.metres),
      spans: [[atSeconds, atSeconds]],
      by: this.#crosser(before, after),
      reestablishes: seesBoth,
    });
    if (seesBoth)
      this.settled.push({
        side: after.side,
        setupId: setup.id,
        order: this.#shot.order,
        fromSeconds: atSeconds,
      });
  }

  /** Whether the camera's own way, with the cast left where they were, takes it over. */
  #crosser(before: Look, after: Look): 'camera' | 'cast' {
    const [first, second] = this.#line.pair.map((id) => this.#shot.seen.get(id)?.[before.k]?.place?.at);
    const { position } = this.#shot.cameras[after.k].pose;
    const reading = first && second ? lineReading(first, second, position) : null;
    return reading && sideOf(reading) === after.side ? 'camera' : 'cast';
  }

  #common(what: LineWhat, standing: LineFinding['standing']): Omit<LineFinding, 'atSeconds' | 'spans'> {
    const { setupId } = this.#wanted;
    const own = this.#shot.setup.id;
    return {
      kind: 'line',
      standing,
      setupId: own,
      againstId: setupId === own ? null : setupId,
      performerIds: this.#line.pair,
      lineId: this.#line.id,
      pair: this.#line.pair,
      what,
      side: null,
      wantedSide: this.#wanted.side,
      angleDegrees: null,
      metres: null,
      by: null,
      reestablishes: false,
    };
  }

  #say(
    what: LineWhat,
    standing: LineFinding['standing'],
    look: Look,
    groups: readonly (readonly Look[])[],
  ): void {
    const { instants } = this.#shot;
    this.findings.push({
      ...this.#common(what, standing),
      atSeconds: instants[look.k],
      side: look.isOn ? null : look.side,
      angleDegrees: look.angleDegrees,
      metres: Math.abs(look.reading.metres),
      spans: groups.map((group) => [instants[group[0].k], instants[group[group.length - 1].k]] as const),
    });
  }
}

/** A line that cannot be judged in a setup that frames one of the pair; null where it can, or frames neither. */
function unjudged(line: JudgedLine, shot: Shot): LineFinding | null {
  const [first, second] = line.pair;
  const isThere = (id: string): boolean => (shot.seen.get(id) ?? []).some(({ place }) => place !== null);
  const framesEither = shot.instants.some((_, k) => isInFrame(shot, first, k) || isInFrame(shot, second, k));
  const isNamed = shot.setup.id === line.establishedBy;
  const isAbsent = !isThere(first) || !isThere(second);
  if (!framesEither && !isNamed) return null;
  return {
    kind: 'line',
    standing: 'said',
    setupId: shot.setup.id,
    againstId: null,
    performerIds: line.pair,
    atSeconds: null,
    lineId: line.id,
    pair: line.pair,
    what: isAbsent ? 'absent' : framesEither ? 'together' : 'frames neither',
    side: null,
    wantedSide: null,
    angleDegrees: null,
    metres: null,
    spans: [],
    by: null,
    reestablishes: false,
  };
}

function findingsOfLine(plan: Plan, line: JudgedLine, shots: readonly Shot[]): readonly LineFinding[] {
  const judged = shots.map((shot) => ({ shot, looks: looksAtLine(shot, line.pair) }));
  const first = establishing(line, judged);
  const settled: Settled[] = [];
  const findings: LineFinding[] = [];
  for (const { shot, looks } of judged) {
    if (looks.length === 0) {
      findings.push(...[unjudged(line, shot)].filter((each) => each !== null));
      continue;
    }
    const [from] = spanOf(plan, shot.setup);
    const wanted = settled.reduce<Settled | null>(
      (latest, each) =>
        each.fromSeconds <= from && (!latest || each.fromSeconds >= latest.fromSeconds) ? each : latest,
      first,
    );
    // Where all stand on the line no side is ever settled, and none is asked for.
    const judge = new ShotJudge(
      line,
      shot,
      wanted ?? { side: 'left', setupId: shot.setup.id, order: shot.order, fromSeconds: -Infinity },
    );
    judge.judge(looks, first?.setupId === shot.setup.id);
    findings.push(...judge.findings.map((each) => (first ? each : { ...each, wantedSide: null })));
    settled.push(...judge.settled);
  }
  return findings;
}

/**
 * Every setup against the line of each pair, at the instants of its span at which it has one of the two in frame at
 * least, be it a chest behind a hand: cameras stay on one side of the vertical plane through the two, wherever both stand then.
 *
 * The side is the one from which the establishing setup first sees them off the line: the setup that the plan names,
 * else the first in the plan's order that frames both, else the first that frames either. Who names no lines has those
 * of `linesWanted` judged.
 *
 * A setup that crosses while it frames one of them is said and not broken: whoever watches goes along. Where it frames
 * both as it crosses, they are seen to change sides, and setups later in the plan's order whose span begins at that
 * instant or after it are held to the new side. Those that begin before it stay held to the old one, since a cutter
 * may leave the move before it crosses; so do all setups where the crossing itself frames one of the two alone.
 *
 * Of three people each pair has a line of its own.
 *
 * Source: [line-of-action], [line-of-eyes], [crossing-in-shot]
 */
export const lineFindings = (plan: Plan): readonly LineFinding[] => inOneGo(lineSteps(plan));

/** The same, line by line: yields the done share, 0..1. */
export const lineSteps = (plan: Plan): Generator<number, readonly LineFinding[], void> => {
  const shots = shotsOf(plan);
  return stepsOver(linesOf(plan), (line) => findingsOfLine(plan, line, shots));
};
