import type { WalkReading } from '../../../core/form/figure/walks';
import { flickerStretches, type Lamp, secondsOfCue } from '../../../core/plan/cues';
import type { Looks, Mark, Performer, Towards } from '../../../core/plan/schema/cast';
import type { Cue } from '../../../core/plan/schema/gear';
import type { Plan } from '../../../core/plan/schema/plan';
import { formatHeading } from '../../../core/units/angles';
import { formatLength, type LengthSystem, METRES_PER_FOOT } from '../../../core/units/lengths';
import { formatNumber, NBSP } from '../../../core/units/numbers';
import { formatSeconds } from '../../../core/units/seconds';
import { formatShare } from '../../../core/units/shares';
import type { Caught } from '../../../desk/blocking/snapTime';
import { beatsInTime, lampIn, markIn, secondsOfBeat, type Thing } from '../../../desk/blocking/things';
import { letterOf } from '../../../desk/choose';

/** A moment of the clock to a hundredth of a second where it needs one: `18.0 s`, `18.04 s`. */
export const momentText = (seconds: number): string =>
  formatSeconds(seconds, Math.abs(seconds * 10 - Math.round(seconds * 10)) < 1e-3 ? 1 : 2);

export const speedText = (metresPerSecond: number, lengths: LengthSystem): string =>
  lengths === 'm'
    ? `${formatNumber(metresPerSecond, 1)}${NBSP}m/s`
    : `${formatNumber(metresPerSecond / METRES_PER_FOOT, 1)}${NBSP}ft/s`;

const labelOf = (plan: Plan, performerId: string): string =>
  plan.cast.find(({ id }) => id === performerId)?.label ?? 'somebody';

/** What somebody turns to, after `faces` or `looks at`. */
const targetText = (plan: Plan, towards: Towards): string =>
  'who' in towards ? labelOf(plan, towards.who) : 'a point';

/** Which way somebody faces at a mark: `faces Nuno`, `faces 270°`. */
export const facesText = (plan: Plan, mark: Mark): string =>
  mark.faces ? `faces ${targetText(plan, mark.faces)}` : `faces ${formatHeading(mark.headingDegrees)}`;

/** Where the head is turned; empty where it looks ahead. */
export function looksText(plan: Plan, looks: Looks | undefined): string {
  if (!looks) return '';
  if ('turnDegrees' in looks) return 'looks aside';
  return `looks at ${targetText(plan, looks)}`;
}

/** A walk from the fullest words to the shortest: how far, how long it takes, how fast. */
export function walkTexts(walk: WalkReading, lengths: LengthSystem): readonly string[] {
  const length = formatLength(walk.metres, lengths, { decimals: 1 });
  const speed = speedText(walk.cruisingMetresPerSecond, lengths);
  const fast = walk.tooFast ? ', too fast' : '';
  const verb = walk.gait === 'run' ? 'runs' : 'walks';
  const way = `${length} in ${momentText(walk.arriveSeconds - walk.leaveSeconds)}`;
  return [
    `${verb} ${way}, ${speed}${fast}`,
    `${way}, ${speed}${fast}`,
    `${way}${fast}`,
    `${length}${fast}`,
    walk.tooFast ? 'too fast' : length,
  ];
}

/** A beat's place in the order of the clock, from 1. */
export const beatNumber = (plan: Pick<Plan, 'beats'>, beatId: string): number =>
  beatsInTime(plan).findIndex(({ id }) => id === beatId) + 1;

const atBeat = (plan: Plan, beatId: string): string =>
  `at beat ${beatNumber(plan, beatId)}, ${momentText(secondsOfBeat(plan, beatId))}`;

function spokenMark(plan: Plan, performer: Performer, mark: Mark, name: string): string {
  const looks = looksText(plan, mark.looks);
  return `${performer.label}’s mark ${name} ${atBeat(plan, mark.beat)}, ${facesText(plan, mark)}${looks ? `, ${looks}` : ''}`;
}

/** What a cue dims to, and how long that takes: `to 40 %, over 2.0 s`, `out at once`; null where it dims nothing. */
const dimmingText = ({ dim, fadeSeconds }: Cue): string | null =>
  dim === undefined
    ? null
    : `${dim === 0 ? 'out' : `to ${formatShare(dim)}`}${fadeSeconds === 0 ? ' at once' : `, over ${momentText(fadeSeconds)}`}`;

/** What a lamp comes to, and how: `to 40 %, over 2.0 s`, `out at once`, `flickers`, `to 40 % at once, steady`. */
export const cueText = (cue: Cue): string =>
  [dimmingText(cue) ?? [], cue.flickers === undefined ? [] : cue.flickers ? 'flickers' : 'steady']
    .flat()
    .join(', ');

/** The same as a sentence goes on after the lamp's name. */
function spokenCue(cue: Cue): string {
  const dimming = dimmingText(cue);
  const turns = cue.flickers ? 'begins to flicker' : 'stops flickering';
  if (dimming === null) return turns;
  return `goes ${dimming}${cue.flickers === undefined ? '' : `, and ${turns}`}`;
}

/** When a lamp flickers: `, flickers from 0.0 s to 18.0 s and from 26.0 s on`; empty for one that never does. */
function flickeringText(plan: Plan, lamp: Lamp): string {
  const stretches = flickerStretches(lamp, plan, 0, Number.POSITIVE_INFINITY);
  if (stretches.length === 0) return '';
  if (stretches.length === 1 && stretches[0][0] === 0 && stretches[0][1] === Number.POSITIVE_INFINITY)
    return ', flickers';
  const words = stretches.map(([from, until]) =>
    Number.isFinite(until)
      ? `from ${momentText(from)} to ${momentText(until)}`
      : `from ${momentText(from)} on`,
  );
  return `, flickers ${words.join(' and ')}`;
}

function spokenLamp(plan: Plan, thing: Extract<Thing, { readonly itemId: string }>): string {
  const lamp = lampIn(plan, thing.itemId);
  if (!lamp) return '';
  if (thing.type === 'lamp') {
    const count = lamp.cues?.length ?? 0;
    const cues = count === 0 ? 'no cue' : count === 1 ? 'one cue' : `${count} cues`;
    return `${lamp.label}, dimmed to ${formatShare(lamp.dim)}, ${cues}${flickeringText(plan, lamp)}`;
  }
  const cue = lamp.cues?.[thing.cueIndex];
  if (!cue) return '';
  const from = secondsOfCue(plan, cue);
  if (thing.type === 'fade') return `${lamp.label} is done fading at ${momentText(from + cue.fadeSeconds)}`;
  const isOn = cue.beat !== undefined && cue.atSeconds === 0;
  return `${lamp.label} ${spokenCue(cue)}, ${isOn ? atBeat(plan, cue.beat ?? '') : `at ${momentText(from)}`}`;
}

/** What a thing is, where and how, as it is spoken and as it is said at the foot; empty for one that is not there. */
export function spokenOf(plan: Plan, thing: Thing, lengths: LengthSystem): string {
  switch (thing.type) {
    case 'beat': {
      const beat = plan.beats.find(({ id }) => id === thing.beatId);
      return beat ? `Beat ${beatNumber(plan, beat.id)}, ${beat.label}, ${momentText(beat.atSeconds)}` : '';
    }
    case 'mark':
    case 'hold': {
      const found = markIn(plan, thing);
      if (!found) return '';
      const { performer, mark, name } = found;
      if (thing.type === 'mark') return spokenMark(plan, performer, mark, name);
      const until = secondsOfBeat(plan, mark.beat) + mark.holdSeconds;
      return `${performer.label} leaves mark ${name} at ${momentText(until)}, after ${momentText(mark.holdSeconds)}`;
    }
    case 'pass': {
      const pass = plan.passes?.find(({ id }) => id === thing.passId);
      return pass
        ? `${labelOf(plan, pass.from)} hands over to ${labelOf(plan, pass.to)} ${atBeat(plan, pass.beat)}`
        : '';
    }
    case 'span':
    case 'setup':
    case 'key': {
      const setup = plan.setups.find(({ id }) => id === thing.setupId);
      if (!setup) return '';
      const name = `Setup ${letterOf(plan, setup.id)}`;
      if (thing.type === 'setup')
        return `${letterOf(plan, setup.id)} ${setup.label}, a setup from beat ${beatNumber(plan, setup.span.from)} to beat ${beatNumber(plan, setup.span.to)}`;
      if (thing.type === 'span')
        return `${name} ${thing.end === 'from' ? 'begins' : 'ends'} ${atBeat(plan, setup.span[thing.end])}`;
      const key = setup.move.keys[thing.keyIndex];
      if (!key) return '';
      const seconds = key.atSeconds + (key.beat === undefined ? 0 : secondsOfBeat(plan, key.beat));
      return `${name}, key ${thing.keyIndex + 1} of ${setup.move.keys.length}, ${momentText(seconds)}`;
    }
    case 'cue':
    case 'fade':
    case 'lamp':
      return spokenLamp(plan, thing);
    case 'performer': {
      const performer = plan.cast.find(({ id }) => id === thing.performerId);
      if (!performer) return '';
      const height = formatLength(performer.statureMetres, lengths);
      return `${performer.label}, ${height}, ${performer.marks.length === 1 ? 'one mark' : `${performer.marks.length} marks`}`;
    }
    case 'line': {
      const line = plan.lines?.find(({ id }) => id === thing.lineId);
      return line ? `The line between ${labelOf(plan, line.pair[0])} and ${labelOf(plan, line.pair[1])}` : '';
    }
  }
}

/** Where a hand has brought something, and what it caught on: `18.0 s, on beat 5, Face to face`. */
export function caughtText(plan: Plan, seconds: number, caught: Caught | null): string {
  const moment = momentText(seconds);
  if (caught?.on === 'second') return `${moment}, on the second`;
  if (caught?.on !== 'beat') return moment;
  const beat = plan.beats.find(({ id }) => id === caught.beatId);
  return `${moment}, on beat ${beatNumber(plan, caught.beatId)}, ${beat?.label ?? ''}`;
}
