import { expect, test } from 'vitest';
import { lampsAt } from '../../../src/core/form/lamps';
import { flickerStretches, flickersAt, type Lamp } from '../../../src/core/plan/cues';
import { removeCue, setCue } from '../../../src/core/plan/edits/changeCues';
import type { Cue } from '../../../src/core/plan/schema/gear';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { type Draw, drawFrom } from '../../plans/draw';
import { DEMO, readPlan } from '../../plans/readPlan';
import { cases } from '../../thorough';

const demo = readPlan(DEMO);
type Sign = Extract<Lamp, { kind: 'practical' }>;
const found = demo.gear.find(({ id }) => id === 'sign');
if (found?.kind !== 'practical') throw new Error('the demo has a sign');
const sign: Sign = found;

function someSign(draw: Draw): Sign {
  const cues = Array.from({ length: draw.whole(0, 8) }, (): Cue => {
    const moment = {
      atSeconds: draw.whole(0, 12),
      ...(draw.chance(0.4) && { beat: draw.pick(demo.beats).id }),
    };
    const dim = draw.between(0, 1);
    const flickers = draw.chance(0.5);
    const fadeSeconds = draw.pick([0, draw.between(0, 9)]);
    return draw.chance(0.3)
      ? { ...moment, dim, fadeSeconds }
      : { ...moment, fadeSeconds, flickers, ...(draw.chance(0.3) && { dim }) };
  });
  const flicker = { seed: draw.whole(0, 999), perSecond: 8, depth: 0.9 };
  return { ...sign, cues, flicker: draw.chance(0.5) ? { ...flicker, waits: true } : flicker };
}

const withSign = (lamp: Sign): Plan => ({
  ...demo,
  gear: demo.gear.map((gear) => (gear.id === lamp.id ? lamp : gear)),
});
const candela = (lamp: Sign, seconds: number): number =>
  lampsAt(withSign(lamp), seconds).find(({ itemId }) => itemId === lamp.id)?.peakCandela ?? Number.NaN;

/** Written once more, from the words alone: of all cues about it that have begun, the one that began last. */
function asWords({ cues, flicker }: Sign, seconds: number): boolean {
  let state = !flicker?.waits;
  let since = Number.NEGATIVE_INFINITY;
  for (const { atSeconds, beat, flickers } of cues ?? []) {
    const at = atSeconds + (demo.beats.find(({ id }) => id === beat)?.atSeconds ?? 0);
    if (flickers === undefined || at > seconds || at < since) continue;
    state = flickers;
    since = at;
  }
  return state;
}

const MOMENTS = Array.from({ length: 220 }, (_, k) => k * 0.25);

test('a flicker plays as the last cue about it says, as the lamp is set before the first, and its stretches say the same', () => {
  for (let seed = 1; seed <= cases(600); seed += 1) {
    const lamp = someSign(drawFrom(seed));
    const stretches = flickerStretches(lamp, demo, 0, 60);
    const isIn = (seconds: number) => stretches.some(([from, until]) => from <= seconds && seconds < until);
    const wrong = MOMENTS.filter((seconds) => {
      const plays = asWords(lamp, seconds);
      return flickersAt(lamp, demo, seconds) !== plays || isIn(seconds) !== plays;
    });
    expect([seed, wrong]).toEqual([seed, []]);
    expect(stretches.every(([from, until], k) => until > from && from > (stretches[k - 1]?.[1] ?? -1))).toBe(
      true,
    );
  }
});

test('where it plays a lamp gives what one gives that always flickers, elsewhere what a steady one gives', () => {
  for (let seed = 1; seed <= cases(120); seed += 1) {
    const lamp = someSign(drawFrom(seed + 9000));
    const cues = (lamp.cues ?? []).flatMap(({ flickers: _, ...cue }) => (cue.dim === undefined ? [] : [cue]));
    const { flicker, ...rest } = lamp;
    if (!flicker) throw new Error('it has a pattern');
    const always = { ...rest, cues, flicker: { ...flicker, waits: false } };
    const steady = { ...rest, cues };
    for (const seconds of MOMENTS.filter((_each, k) => k % 7 === seed % 7))
      expect([seed, seconds, candela(lamp, seconds)]).toEqual([
        seed,
        seconds,
        candela(flickersAt(lamp, demo, seconds) ? always : steady, seconds),
      ]);
  }
});

test('a cue changes nothing before it begins, whatever is done to it', () => {
  for (let seed = 1; seed <= cases(200); seed += 1) {
    const draw = drawFrom(seed + 77);
    const lamp = someSign(draw);
    const plan = withSign(lamp);
    const cueIndex = draw.whole(0, Math.max(0, (lamp.cues?.length ?? 0) - 1));
    const cue = lamp.cues?.[cueIndex];
    if (!cue) continue;
    const begins = cue.atSeconds + (demo.beats.find(({ id }) => id === cue.beat)?.atSeconds ?? 0);
    const which = { id: lamp.id, cueIndex };
    for (const next of [
      setCue(plan, { ...which, patch: { flickers: !cue.flickers } }),
      setCue(plan, { ...which, patch: { dim: draw.between(0, 1) } }),
      removeCue(plan, which),
    ]) {
      const now = next.gear.find(({ id }) => id === lamp.id);
      if (now?.kind !== 'practical') throw new Error('the sign is gone');
      for (const seconds of MOMENTS.filter((each) => each < begins))
        expect([seed, seconds, flickersAt(now, demo, seconds)]).toEqual([
          seed,
          seconds,
          flickersAt(lamp, demo, seconds),
        ]);
    }
  }
});
