import { whereabouts } from '../../../core/form/figure/whereabouts';
import { footprintOf } from '../../../core/form/fromAbove/footprint';
import { stateAt } from '../../../core/optics/camera';
import { standUnder } from '../../../core/plan/edits/anchorOf';
import type { Gear } from '../../../core/plan/schema/gear';
import type { Piece } from '../../../core/plan/schema/pieces';
import type { Plan } from '../../../core/plan/schema/plan';
import type { RoofLayer } from '../../../desk/crew/overhead/overheadStore';
import { letterIn } from '../../../desk/crew/overhead/roofThings';
import {
  type LabelWish,
  type Obstacles,
  type PlacedLabel,
  placeLabels,
} from '../../overhead/geometry/labels';
import {
  type Bounds,
  boundsOf,
  distance,
  middleOf,
  type Spot,
  standing,
} from '../../overhead/geometry/spots';
import { type Lettering, letteringPixels, textWidth } from '../../overhead/measureText';
import { shown } from '../../overhead/shown';
import { drawnName, markNames, nameInText } from '../../overhead/words';
import { layerOf } from './layerOf';

/** A name that has found its place: pixels from the middle of what it names, so that it goes along while the roof moves. */
export interface RoofName {
  readonly id: string;
  readonly text: string;
  readonly style: Lettering;
  readonly anchor: Spot;
  readonly off: Spot;
}

interface Input {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setupId: string | null;
  readonly chosenId: string | null;
  readonly hidden: ReadonlySet<RoofLayer>;
  readonly at: (spot: Spot) => Spot;
  readonly pane: Bounds;
  /** Lines in pixels that names had better not cross. */
  readonly lines: readonly (readonly [Spot, Spot])[];
  /** Where nothing may be lettered, pixels. */
  readonly blocked: readonly Bounds[];
}

interface Wish extends LabelWish {
  readonly style: Lettering;
  readonly anchor: Spot;
}

/** What is lettered, which goes first, and how much covering something each is worth. */
const GEAR: Readonly<Partial<Record<Gear['kind'], readonly [priority: number, worth: number]>>> = {
  stand: [60, 1.6],
  generator: [52, 1.6],
  distro: [44, 1.2],
  outlet: [38, 1.1],
  battery: [38, 1.1],
  cart: [44, 1.6],
  track: [42, 1.2],
  monitor: [32, 1],
  ladder: [36, 1.2],
  dolly: [20, 0.8],
  appliance: [20, 0.8],
  flag: [30, 0.8],
  frame: [30, 0.8],
  bounce: [30, 0.8],
};
const PIECES: Readonly<Partial<Record<Piece['kind'], readonly [priority: number, worth: number]>>> = {
  'stair house': [58, 2],
  shed: [46, 2],
  tank: [46, 1.6],
  chimney: [28, 1],
  post: [18, 0.7],
  riser: [34, 1],
};
/** What has to be found a place in nearly any crowd. */
const MUST = 30;
/** Half the least size of what a name stands beside, pixels. */
const LEAST = 7;
/** Marks nearer than this to one that is named are that one again, metres. */
const SAME_MARK = 0.15;

/** Names for what is on the roof, each in the best place for it at this view; what finds none goes without. */
export function roofNames(input: Input): readonly RoofName[] {
  const wishes = wishesOf(input);
  const byId = new Map(wishes.map((wish) => [wish.id, wish]));
  return placeLabels(wishes, obstaclesOf(input), input.pane).flatMap((placed: PlacedLabel) => {
    const wish = byId.get(placed.id);
    if (!wish) return [];
    const [x, y] = input.at(wish.anchor);
    const [left, , right, bottom] = placed.bounds;
    const off: Spot = [(left + right) / 2 - x, bottom - 3 - y];
    return [{ id: wish.id, text: wish.text, style: wish.style, anchor: wish.anchor, off }];
  });
}

function wishesOf(input: Input): readonly Wish[] {
  const { plan, hidden, chosenId } = input;
  const wishes: Wish[] = [];
  for (const piece of shown(plan.pieces)) {
    const rank = PIECES[piece.kind];
    if (!rank) continue;
    const outline = footprintOf({ section: 'piece', record: piece }, plan).outline;
    const around = boundsOf(outline.map(input.at));
    const anchor = boundsOf(outline);
    if (!around || !anchor) continue;
    wishes.push(
      wish(
        {
          id: piece.id,
          text: drawnName(nameInText(piece.label)),
          style: 'mark',
          anchor: middleOf(anchor),
          around,
        },
        rank,
        true,
      ),
    );
  }
  for (const gear of shown(plan.gear)) {
    const rank = GEAR[gear.kind];
    if (!rank || hidden.has(layerOf(gear)) || standUnder(gear) !== null) continue;
    const outline = footprintOf({ section: 'gear', record: gear }, plan).outline;
    const around = boundsOf(outline.map(input.at));
    const anchor = boundsOf(outline);
    if (!around || !anchor) continue;
    const isChosen = gear.id === chosenId;
    wishes.push(
      wish(
        {
          id: gear.id,
          text: drawnName(nameInText(gear.label)),
          style: isChosen ? 'strong' : 'mark',
          anchor: middleOf(anchor),
          around: atLeast(around),
        },
        isChosen ? [95, MUST] : rank,
      ),
    );
  }
  return [...wishes, ...castWishes(input), ...cameraWishes(input)];
}

function castWishes({ plan, seconds, hidden, at }: Input): readonly Wish[] {
  if (hidden.has('marks')) return [];
  return shown(plan.cast).flatMap((performer): Wish[] => {
    const place = whereabouts(performer, plan, seconds);
    const spots: { at: Spot; id: string; numbers: number[] }[] = [];
    performer.marks.forEach((mark, number) => {
      const same = spots.find((other) => distance(other.at, mark.at) < SAME_MARK);
      if (same) same.numbers.push(number);
      else spots.push({ at: mark.at, id: mark.id, numbers: [number] });
    });
    const marks = spots.map((mark) =>
      wish(
        {
          id: `mark ${performer.id} ${mark.id}`,
          text: markNames(performer.label, mark.numbers),
          style: 'strong',
          anchor: mark.at,
          around: aroundSpot(at(mark.at), LEAST),
        },
        [70, 2],
      ),
    );
    if (!place) return marks;
    const anchor: Spot = [place.at[0], place.at[2]];
    const around = aroundSpot(at(anchor), LEAST + 2);
    return [
      wish({ id: performer.id, text: drawnName(performer.label), style: 'strong', anchor, around }, [
        90,
        MUST,
      ]),
      ...marks,
    ];
  });
}

function cameraWishes({ plan, seconds, setupId, hidden, at }: Input): readonly Wish[] {
  if (hidden.has('cameras')) return [];
  return plan.setups.map((setup) => {
    const { position, headingDegrees } = stateAt(plan, setup, seconds);
    const anchor = standing([position[0], position[2]], headingDegrees, [0, 0.25]);
    const isChosen = setup.id === setupId;
    return wish(
      {
        id: `camera ${setup.id}`,
        text: letterIn(plan, setup.id),
        style: isChosen ? 'letter' : 'strong',
        anchor,
        around: aroundSpot(at(anchor), LEAST + 1),
      },
      [isChosen ? 98 : 80, MUST],
    );
  });
}

function wish(
  name: Pick<Wish, 'id' | 'text' | 'style' | 'anchor' | 'around'>,
  [priority, worth]: readonly [number, number],
  inside = false,
): Wish {
  return {
    ...name,
    width: textWidth(name.text, name.style, true) + 2,
    height: letteringPixels(name.style, true) + 3,
    priority,
    inside,
    worth,
  };
}

/** Symbols and the lines of the chosen frame. */
function obstaclesOf({ plan, seconds, hidden, at, lines, blocked }: Input): Obstacles {
  const things = shown(plan.gear).flatMap((gear) => {
    if (gear.kind === 'cable' || gear.kind === 'bulb string') return [];
    if (hidden.has(layerOf(gear)) || standUnder(gear) !== null) return [];
    const bounds = boundsOf(footprintOf({ section: 'gear', record: gear }, plan).outline.map(at));
    return bounds ? [{ owner: gear.id, bounds: atLeast(bounds), cost: 3 }] : [];
  });
  const cast = hidden.has('marks')
    ? []
    : shown(plan.cast).flatMap((performer) => {
        const place = whereabouts(performer, plan, seconds);
        const marks = performer.marks.map((mark) => ({
          owner: `mark ${performer.id} ${mark.id}`,
          bounds: aroundSpot(at(mark.at), 5),
          cost: 2,
        }));
        return place
          ? [
              { owner: performer.id, bounds: aroundSpot(at([place.at[0], place.at[2]]), LEAST), cost: 4 },
              ...marks,
            ]
          : marks;
      });
  const cameras = hidden.has('cameras')
    ? []
    : plan.setups.map((setup) => {
        const { position } = stateAt(plan, setup, seconds);
        return {
          owner: `camera ${setup.id}`,
          bounds: aroundSpot(at([position[0], position[2]]), LEAST),
          cost: 3,
        };
      });
  return {
    boxes: [...things, ...cast, ...cameras],
    lines: lines.map(([from, to]) => ({ from, to, cost: 1 })),
    blocked,
  };
}

const aroundSpot = ([x, y]: Spot, half: number): Bounds => [x - half, y - half, x + half, y + half];

function atLeast([left, top, right, bottom]: Bounds): Bounds {
  const [x, y] = [(left + right) / 2, (top + bottom) / 2];
  return [
    Math.min(left, x - LEAST),
    Math.min(top, y - LEAST),
    Math.max(right, x + LEAST),
    Math.max(bottom, y + LEAST),
  ];
}
