import type { Plan } from '../../plan/schema/plan';
import { setupLetter } from '../../plan/setupLetter';
import { formatSeconds } from '../../units/seconds';
import type { FramePlace, SquareReading, SquareThrough } from './groundAt';
import { GROUND_STATES } from './types';

const IN_FRAME: Readonly<Record<FramePlace, string>> = {
  left: 'frame left',
  right: 'frame right',
  middle: 'in the middle of the frame',
  top: 'at the top of the frame',
  bottom: 'at the bottom of the frame',
};

/** Beside which edge of the frame something is that is close to it. */
const BESIDE: Readonly<Record<FramePlace, string>> = {
  left: ', frame left',
  right: ', frame right',
  middle: '',
  top: ', over its upper edge',
  bottom: ', under its lower edge',
};

/** More spans than this are not said one by one. */
const MOST_SPANS = 2;

/** `from 3.2 s to 5.0 s`, or how often. */
function spansText(spans: SquareThrough['spans']): string {
  const said = spans.slice(0, MOST_SPANS).map(([from, to]) => {
    const [first, last] = [formatSeconds(from), formatSeconds(to)];
    return first === last ? `at ${first}` : `from ${first} to ${last}`;
  });
  const more = spans.length - said.length;
  return `${said.join(' and ')}${more > 0 ? `, and ${more} more ${more === 1 ? 'time' : 'times'}` : ''}`;
}

/** What one setup makes of it: `B sees it here from 3.2 s to 5.0 s, frame right`. */
function throughText(letter: string, { state, spans, place }: SquareThrough): string {
  const when = spansText(spans);
  switch (state) {
    case 'showing':
      return `${letter} sees it here ${when}${place ? `, ${IN_FRAME[place]}` : ''}`;
    case 'mirrored':
      return `${letter} sees it mirrored ${when}`;
    case 'covered':
      return `${letter} has it covered ${when}${place ? `, ${IN_FRAME[place]}` : ''}`;
    default:
      return `close to the frame of ${letter} ${when}${place ? BESIDE[place] : ''}`;
  }
}

/** Who is in the way of a thing on a square, and when: the worst first, each setup in words; none where it is clear. */
export function atTexts(plan: Plan, { setups }: SquareReading): readonly string[] {
  const rank = ({ state }: SquareThrough): number => GROUND_STATES.indexOf(state);
  return setups
    .filter(({ state }) => state !== 'clear')
    .toSorted((a, b) => rank(b) - rank(a))
    .map((through) =>
      throughText(setupLetter(plan.setups.findIndex(({ id }) => id === through.setupId)), through),
    );
}
