import { whereabouts } from '../../core/form/figure/whereabouts';
import { footprintOf } from '../../core/form/fromAbove/footprint';
import { stateAt } from '../../core/optics/camera';
import { itemNow } from '../../core/optics/riding';
import { standUnder } from '../../core/plan/edits/anchorOf';
import { type Item, nameOf } from '../../core/plan/items';
import type { Mark, Performer } from '../../core/plan/schema/cast';
import { formatLength } from '../../core/units/lengths';
import { letterOf } from '../../desk/choose';
import { blockingWishes } from './blocking/wishes';
import { boundsAt } from './footprintBounds';
import { type Bounds, distance, type Spot } from './geometry/spots';
import { aroundSpot, type LetteredWish, type LetteringInput, lettered } from './letteredWish';
import { powerWishes } from './power/powerWishes';
import { shownItems } from './shown';
import { keyOf } from './targets';
import { wetWishes } from './wet/wetWishes';
import { drawnName, markNames, nameInText } from './words';

/** Places worth this much are found in nearly any crowd. */
const MUST = 30;
/** Of more chosen things than this, not every name has to be found a place. */
const MOST_STRONG = 6;
/** Half the least size of what a name is set beside, pixels. */
const LEAST = 5;

/** At this many pixels to the metre there is room for all names; below it only for those that find a good place. */
const ROOMY = 24;
const crowding = (perMetre: number): number => Math.min(1, perMetre / ROOMY) ** 1.5;

/** How names of each kind are set: what comes first, and how much covering each is worth. */
const KINDS: Readonly<
  Record<string, { readonly priority: number; readonly worth: number; readonly inside?: true }>
> = {
  stand: { priority: 60, worth: 2 },
  head: { priority: 24, worth: 0.5 },
  flag: { priority: 50, worth: 1.4 },
  frame: { priority: 50, worth: 1.4 },
  bounce: { priority: 50, worth: 1.4 },
  practical: { priority: 30, worth: 0.8 },
  'bulb string': { priority: 20, worth: 0.7 },
  generator: { priority: 52, worth: 1.6 },
  distro: { priority: 40, worth: 1.2 },
  outlet: { priority: 38, worth: 1.1 },
  battery: { priority: 38, worth: 1.1 },
  appliance: { priority: 30, worth: 0.9 },
  cable: { priority: 5, worth: 0 },
  track: { priority: 42, worth: 1.6 },
  cart: { priority: 44, worth: 1.6 },
  monitor: { priority: 32, worth: 1 },
  ladder: { priority: 36, worth: 1.2 },
  sandbag: { priority: 4, worth: 0.2 },
  'stair house': { priority: 46, worth: 2, inside: true },
  shed: { priority: 46, worth: 2, inside: true },
  tank: { priority: 46, worth: 2, inside: true },
  chimney: { priority: 28, worth: 1.2 },
  box: { priority: 26, worth: 0.8, inside: true },
  riser: { priority: 34, worth: 1, inside: true },
  pane: { priority: 26, worth: 0.8 },
  chart: { priority: 26, worth: 0.8 },
  post: { priority: 18, worth: 0.7 },
  line: { priority: 22, worth: 0.9 },
  fence: { priority: 22, worth: 0.9 },
  wall: { priority: 22, worth: 0.9 },
};

/** All names that the drawing would like to bear at this view. */
export function wishesOf(input: LetteringInput): LetteredWish[] {
  const { plan, chosenIds } = input;
  const chosen = new Set(chosenIds);
  const wishes: LetteredWish[] = [];
  // A stand that carries one thing is called by what it carries where both would crowd: the stand's name goes first.
  for (const item of shownItems(plan)) {
    if (item.section === 'cast') wishes.push(...castWishes(item.record.id, input));
    else {
      const wish = thingWish(item, input, chosen.has(item.record.id));
      if (wish) wishes.push(wish);
    }
  }
  return [
    ...wishes,
    ...cameraWishes(input),
    ...wetWishes(input),
    ...blockingWishes(input),
    ...powerWishes(input),
  ];
}

function thingWish(
  item: Exclude<Item, { section: 'cast' }>,
  input: LetteringInput,
  chosen: boolean,
): LetteredWish | null {
  const { record } = item;
  const kind = KINDS[record.kind];
  if (!kind && !chosen) return null;
  const footprint = footprintOf(itemNow(input.plan, item, input.seconds), input.plan);
  const around = boundsAt(footprint, input.at);
  if (!around) return null;
  // A track says how long it is, a riser how high.
  const metres =
    record.kind === 'track' ? record.lengthMetres : record.kind === 'riser' ? record.size[1] : null;
  const length = metres === null ? '' : ` ${formatLength(metres, input.lengths, { decimals: 1 })}`;
  const carried = standUnder(record) !== null;
  return lettered(input, {
    id: record.id,
    text: `${drawnName(nameInText(nameOf(item)))}${length}`,
    style: chosen ? 'strong' : 'mark',
    around: atLeast(footprint.closed ? around : middlePart(footprint.outline.map(input.at)), LEAST),
    priority: chosen ? 95 : kind.priority - (carried ? 6 : 0),
    worth:
      chosen && input.chosenIds.length <= MOST_STRONG ? MUST : (kind?.worth ?? 1) * crowding(input.perMetre),
    inside: kind?.inside === true,
    quiet: !chosen && (record.kind === 'line' || record.kind === 'bulb string' || record.kind === 'fence'),
  });
}

/** Around the middle of a path: where a long thin thing bears its name. */
function middlePart(path: readonly Spot[]): Bounds {
  const index = Math.floor((path.length - 1) / 2);
  const [a, b] = [path[index], path[Math.min(path.length - 1, index + 1)]];
  const [x, z] = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  return [x - 2, z - 2, x + 2, z + 2];
}

function atLeast([left, top, right, bottom]: Bounds, half: number): Bounds {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return [
    Math.min(left, x - half),
    Math.min(top, y - half),
    Math.max(right, x + half),
    Math.max(bottom, y + half),
  ];
}

function castWishes(id: string, input: LetteringInput): LetteredWish[] {
  const { plan } = input;
  const performer = plan.cast.find((each) => each.id === id);
  if (!performer) return [];
  const place = whereabouts(performer, plan, input.seconds);
  const marks = sharedMarks(performer).map(({ mark, places }) =>
    lettered(input, {
      id: keyOf({ type: 'mark', performerId: id, markId: mark.id }),
      text: markNames(nameOf({ section: 'cast', record: performer }), places),
      style: 'strong',
      around: aroundSpot(input.at(mark.at), Math.max(4, 0.15 * input.perMetre)),
      priority: 70,
      worth: 3 * crowding(input.perMetre),
    }),
  );
  if (!place) return marks;
  const chosen = input.chosenIds.includes(id);
  const name = lettered(input, {
    id,
    text: drawnName(nameOf({ section: 'cast', record: performer })),
    style: 'strong',
    around: aroundSpot(input.at([place.at[0], place.at[2]]), Math.max(LEAST, 0.26 * input.perMetre)),
    priority: chosen ? 99 : 90,
    worth: MUST,
  });
  return [name, ...marks];
}

/** Marks nearer than this to an earlier one of the same performer are that one again, metres. */
const SAME_MARK = 0.15;

/** The marks to be lettered, each with the numbers of all marks that lie there. */
function sharedMarks(performer: Performer): { readonly mark: Mark; readonly places: readonly number[] }[] {
  const shared: { mark: Mark; places: number[] }[] = [];
  performer.marks.forEach((mark, index) => {
    const same = shared.find((other) => distance(other.mark.at, mark.at) < SAME_MARK);
    if (same) same.places.push(index);
    else shared.push({ mark, places: [index] });
  });
  return shared;
}

function cameraWishes(input: LetteringInput): LetteredWish[] {
  const { plan, setupId, seconds } = input;
  return plan.setups.map((setup) => {
    const { position, headingDegrees } = stateAt(plan, setup, seconds);
    const radians = (headingDegrees * Math.PI) / 180;
    // The middle of the body lies behind the pupil.
    const middle: Spot = [position[0] - Math.sin(radians) * 0.25, position[2] + Math.cos(radians) * 0.25];
    const chosen = setup.id === setupId;
    return lettered(input, {
      id: keyOf({ type: 'camera', setupId: setup.id }),
      text: letterOf(plan, setup.id),
      style: chosen ? 'letter' : 'strong',
      around: aroundSpot(input.at(middle), Math.max(LEAST, 0.26 * input.perMetre)),
      priority: chosen ? 98 : 80,
      worth: MUST,
    });
  });
}
