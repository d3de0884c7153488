import type { FocusSample } from '../../core/continuity/focusTrack';
import { momentOf } from '../../core/optics/moments';
import type { Plan } from '../../core/plan/schema/plan';
import type { FocusOn, Setup } from '../../core/plan/schema/setup';
import { formatLength, type LengthSystem } from '../../core/units/lengths';
import { formatSeconds } from '../../core/units/seconds';

/** Units of the drawing; it is stretched over whatever room there is. */
export const BAR_WIDTH = 1000;
export const BAR_HEIGHT = 40;
/** Room above and below the nearest and the farthest, in the drawing's units. */
const PAD = 4;
/** Distances that are marked, metres. */
const ROUND = [0.5, 1, 2, 5, 10, 20, 50, 100];
/** Marked distances are lettered no nearer to each other than this, in the drawing's units. */
const TICKS_APART = 12;
/** A bar over less than this share of doubling would exaggerate, as a ratio of its ends. */
const LEAST_RATIO = 2;

/** How distances lie on the bar: near below, far above, each doubling as high as the next. */
export interface FocusScale {
  readonly yOf: (metres: number) => number;
  readonly ticks: readonly number[];
}

/** A scale over everything that the bar has to show: the focus and everybody before the lens. */
export function focusScale(samples: readonly FocusSample[]): FocusScale {
  const shown = samples.flatMap(({ focusMetres, performers }) =>
    [focusMetres, ...performers.map(({ metres }) => metres)].filter(
      (metres): metres is number => metres !== null && metres > 0,
    ),
  );
  const [least, most] = shown.length === 0 ? [1, 10] : [Math.min(...shown), Math.max(...shown)];
  const middle = Math.sqrt(least * most);
  const half = Math.sqrt(Math.max(LEAST_RATIO, (most / least) * 1.3));
  const [low, high] = [Math.log(middle / half), Math.log(middle * half)];
  const yOf = (metres: number): number => {
    const share = (Math.log(Math.max(metres, 1e-3)) - low) / (high - low);
    return BAR_HEIGHT - PAD - Math.min(1.2, Math.max(-0.2, share)) * (BAR_HEIGHT - 2 * PAD);
  };
  // The farthest first: where distances span a lot, the near ones would be lettered over each other.
  const ticks: number[] = [];
  for (const metres of ROUND.toReversed()) {
    const isOn = Math.log(metres) > low && Math.log(metres) < high;
    const below = ticks[0];
    if (isOn && (below === undefined || yOf(metres) - yOf(below) >= TICKS_APART)) ticks.unshift(metres);
  }
  return { yOf, ticks };
}

/** Runs of samples that have a value: a line stops where there is nothing to show. */
function runs<Value>(
  samples: readonly FocusSample[],
  value: (sample: FocusSample) => Value | null,
): readonly (readonly { readonly index: number; readonly value: Value }[])[] {
  const found: { index: number; value: Value }[][] = [];
  let open: { index: number; value: Value }[] | null = null;
  samples.forEach((sample, index) => {
    const at = value(sample);
    if (at === null) {
      open = null;
      return;
    }
    if (!open) {
      open = [];
      found.push(open);
    }
    open.push({ index, value: at });
  });
  return found;
}

const xOf = (index: number, count: number): number => (index / (count - 1)) * BAR_WIDTH;
const fixed = (value: number): string => value.toFixed(2);

/** A line along the move by some distance of each sample. */
export function linePath(
  samples: readonly FocusSample[],
  { yOf }: FocusScale,
  metresOf: (sample: FocusSample) => number | null,
): string {
  return runs(samples, metresOf)
    .map((run) =>
      run
        .map(
          ({ index, value }, k) =>
            `${k === 0 ? 'M' : 'L'}${fixed(xOf(index, samples.length))} ${fixed(yOf(value))}`,
        )
        .join(''),
    )
    .join('');
}

/** The band between near and far; what reaches to infinity leaves at the top. */
export function bandPath(samples: readonly FocusSample[], { yOf }: FocusScale): string {
  return runs(samples, ({ nearMetres, farMetres }) =>
    nearMetres === null || farMetres === null ? null : ([nearMetres, farMetres] as const),
  )
    .map((run) => {
      const upper = run.map(
        ({ index, value }) => `${fixed(xOf(index, samples.length))} ${fixed(yOf(Math.min(value[1], 1e6)))}`,
      );
      const lower = run
        .toReversed()
        .map(({ index, value }) => `${fixed(xOf(index, samples.length))} ${fixed(yOf(value[0]))}`);
      return `M${[...upper, ...lower].join('L')}Z`;
    })
    .join('');
}

/** Heights for lettering beside its lines, in the drawing's units: in the lines' order, none nearer than `apart`. */
export function spread(
  heights: readonly number[],
  apart: number,
  lowest: number,
  highest: number,
): readonly number[] {
  const order = heights.map((height, index) => ({ height, index })).toSorted((a, b) => a.height - b.height);
  const placed = new Array<number>(heights.length).fill(0);
  let last = lowest - apart;
  for (const { height, index } of order) {
    last = Math.max(height, last + apart);
    placed[index] = last;
  }
  const over = Math.max(0, last - highest);
  return placed.map((height) => height - over);
}

/** A pull of the focus along the move, on the action's clock. */
export interface Rack {
  /** When the pull begins, and when the focus is there. */
  readonly from: number;
  readonly at: number;
  /** What it is pulled from, in words; null for the first rack, which only says what is held. */
  readonly whence: string | null;
  readonly onto: string;
}

/** The racks of a setup in their order; none where the focus is held. */
export function racksOf(plan: Plan, { focus }: Setup, lengths: LengthSystem): readonly Rack[] {
  if (!('racks' in focus)) return [];
  const words = (on: FocusOn): string =>
    'metres' in on
      ? formatLength(on.metres, lengths)
      : (plan.cast.find(({ id }) => id === on.follow)?.label ?? '');
  const racks = focus.racks
    .map((rack) => ({ at: momentOf(plan, rack), pull: rack.pullSeconds, onto: words(rack.on) }))
    .toSorted((a, b) => a.at - b.at);
  return racks.map(({ at, pull, onto }, k) => {
    const whence = k > 0 ? racks[k - 1].onto : null;
    return { from: whence === null ? at : at - pull, at, whence, onto };
  });
}

/** `at 12.0 s from Ana to Ben, pulled over 0.8 s`. */
export function rackWords({ from, at, whence, onto }: Rack): string {
  if (whence === null) return `begins on ${onto}`;
  const how = at > from ? `, pulled over ${formatSeconds(at - from)}` : ', at once';
  return `at ${formatSeconds(at)} from ${whence} to ${onto}${how}`;
}

/** Which racks are lettered on the bar, as shares of its width: those whose words do not run into the ones before. */
export function letteredRacks(
  racks: readonly Rack[],
  [from, to]: readonly [number, number],
  apart: number,
): readonly { readonly rack: Rack; readonly share: number; readonly lettered: boolean }[] {
  let free = Number.NEGATIVE_INFINITY;
  return racks
    .filter(({ whence, at }) => whence !== null && at >= from && at <= to && to > from)
    .map((rack) => {
      const share = (rack.at - from) / (to - from);
      const lettered = share >= free;
      if (lettered) free = share + apart;
      return { rack, share, lettered };
    });
}

/** The focus and everybody against it at one instant, in words; during a pull, what is pulled. */
export function focusReading(
  plan: Plan,
  sample: FocusSample,
  lengths: LengthSystem,
  racks: readonly Rack[] = [],
): string {
  const say = (metres: number | null): string =>
    metres === null ? '' : Number.isFinite(metres) ? formatLength(metres, lengths) : 'infinity';
  const focus =
    sample.focusMetres === null
      ? 'nobody to focus on'
      : `focus ${say(sample.focusMetres)}, sharp from ${say(sample.nearMetres)} to ${say(sample.farMetres)}`;
  const others = sample.performers.flatMap(({ performerId, metres, sharp }) => {
    const label = plan.cast.find(({ id }) => id === performerId)?.label ?? '';
    return metres === null ? [] : [`${label} ${say(metres)}, ${sharp ? 'sharp' : 'soft'}`];
  });
  const pulled = racks.find(
    ({ whence, from, at }) => whence !== null && sample.seconds > from && sample.seconds < at,
  );
  const pull = pulled ? [`pulled from ${pulled.whence} to ${pulled.onto}`] : [];
  return `${formatSeconds(sample.seconds)}: ${[focus, ...pull, ...others].join('; ')}`;
}
