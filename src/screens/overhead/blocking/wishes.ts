import { stateAt } from '../../../core/optics/camera';
import { endsOfPair, keyOfPair, type Lines } from '../../../desk/blocking/lines';
import { roofBounds } from '../geometry/roof';
import { between, halfWay, type Spot, towards } from '../geometry/spots';
import { aroundSpot, type LetteredWish, type LetteringInput, lettered } from '../letteredWish';
import { cheatsOn, goes } from './cheats';
import { type BlockingLettering, throughBoth } from './lines';
import { roofWalks } from './walks';
import { hitWords, walkWords } from './words';

/** Places worth this much are found in nearly any crowd. */
const MUST = 30;
/** Half of what the middle of a walk and the place of a fault take, pixels. */
const MIDDLE = 4;
const RING = 9;
/** A walk shorter than this on the sheet is not lettered unless it is chosen or wrong, pixels. */
const SHORT = 40;

/** Keys of what is lettered of somebody's walks and cheats: it goes while they are dragged. */
export const blockingKeyOf = (id: string): string | null =>
  /^(?:walk|hit|cheat):([^:]+):/.exec(id)?.[1] ?? null;

function walkWishes(input: LetteringInput): LetteredWish[] {
  const { plan, at, perMetre, chosenIds, lengths } = input;
  const roomy = Math.min(1, perMetre / 24) ** 1.5;
  return roofWalks(plan).flatMap(({ performer, walk, hit }): LetteredWish[] => {
    const chosen = chosenIds.includes(performer.id);
    const middle = halfWay(walk.path);
    if (!middle) return [];
    const key = `${performer.id}:${walk.toMark}`;
    const short = walk.metres * perMetre < SHORT;
    const length: LetteredWish[] =
      short && !chosen && !walk.tooFast
        ? []
        : [
            lettered(input, {
              id: `walk:${key}`,
              text: walkWords(walk, lengths),
              style: walk.tooFast || chosen ? 'strong' : 'mark',
              around: aroundSpot(at(middle), MIDDLE),
              priority: walk.tooFast ? 78 : chosen ? 68 : 47,
              worth: walk.tooFast ? MUST : (chosen ? 4 : 1.6) * roomy,
              fault: walk.tooFast,
            }),
          ];
    if (!hit) return length;
    return [
      ...length,
      lettered(input, {
        id: `hit:${key}`,
        text: hitWords(plan, hit),
        style: 'strong',
        around: aroundSpot(at(hit.at), RING),
        priority: 79,
        worth: MUST,
        fault: true,
      }),
    ];
  });
}

/** How far along its line a name may stand, as shares from end to end: near an end first, where nobody is. */
const ALONG_LINE = [0.04, 0.96, 0.1, 0.9, 0.18, 0.82, 0.28, 0.72];
/** Off its line, pixels. */
const OFF_LINE = 4;

function lineWishes(input: LetteringInput, { pairs, over }: Lines): LetteredWish[] {
  const { plan, seconds, at, chosenIds } = input;
  const bounds = roofBounds(plan);
  const names = pairs.flatMap((pair): LetteredWish[] => {
    const ends = endsOfPair(plan, pair, seconds);
    const line = ends && throughBoth(ends, bounds);
    if (!line) return [];
    const labels = pair.map((id) => plan.cast.find((each) => each.id === id)?.label ?? '');
    const text = pairs.length === 1 ? 'the line' : `the line of ${labels.join(' and ')}`;
    const wish = lettered(input, {
      id: keyOfPair(pair),
      text,
      style: 'mark',
      around: aroundSpot(at(line[0]), MIDDLE),
      priority: 54,
      worth: 3,
      quiet: !pair.some((id) => chosenIds.includes(id)),
    });
    const places = ALONG_LINE.flatMap((share) => {
      const [x, y] = at(between(line[0], line[1], share));
      return [y - OFF_LINE - wish.height, y + OFF_LINE].flatMap((top) =>
        [x - wish.width / 2, x, x - wish.width].map(
          (left) => [left, top, left + wish.width, top + wish.height] as const,
        ),
      );
    });
    return [{ ...wish, places }];
  });
  const wrong = plan.setups.flatMap((setup): LetteredWish[] => {
    if (!over.has(setup.id)) return [];
    const { position, headingDegrees } = stateAt(plan, setup, seconds);
    const [x, z] = towards(headingDegrees);
    const middle: Spot = [position[0] - x * 0.25, position[2] - z * 0.25];
    return [
      lettered(input, {
        id: `over:${setup.id}`,
        text: 'over the line',
        style: 'strong',
        around: aroundSpot(at(middle), Math.max(5, 0.26 * input.perMetre)),
        priority: 77,
        worth: MUST,
        fault: true,
      }),
    ];
  });
  return [...names, ...wrong];
}

function cheatWishes(input: LetteringInput, { cheating }: BlockingLettering): LetteredWish[] {
  if (!cheating) return [];
  return cheatsOn(cheating.master, cheating.setup, input.lengths).map((cheat) =>
    lettered(input, {
      id: `cheat:${cheat.performerId}:${cheat.markId}`,
      text: cheat.words,
      style: 'strong',
      around: aroundSpot(
        input.at(goes(cheat) ? between(cheat.master.at, cheat.cheated.at, 0.5) : cheat.cheated.at),
        Math.max(6, 0.2 * input.perMetre),
      ),
      priority: 82,
      worth: MUST,
    }),
  );
}

/** Lengths and faults of walks, the line, who stands over it, and what is cheated. */
export function blockingWishes(input: LetteringInput): LetteredWish[] {
  const { blocking } = input;
  if (!blocking) return [];
  return [...walkWishes(input), ...lineWishes(input, blocking.lines), ...cheatWishes(input, blocking)];
}
