import { hypot } from '../../units/steadyMath';
import type { Performer } from '../schema/cast';
import type { FocusOn, Setup } from '../schema/setup';
import { orSame } from './motion';
import { keptOf, withCheats } from './optionalLists';
import { kept } from './tidy';

/** What a plan loses that setups may refer to. */
export interface Lost {
  readonly performers: ReadonlyMap<string, Performer>;
  readonly tracks: ReadonlySet<string>;
}

const NEAREST_METRES = 0.1;
const FARTHEST_METRES = 10000;

/** Focus stays at the distance that the first key has to the first mark of whoever is lost. */
function focusWithout(on: FocusOn, setup: Setup, { performers }: Lost): FocusOn {
  const performer = 'follow' in on ? performers.get(on.follow) : undefined;
  if (!performer) return on;
  const mark = performer.marks[0];
  const [key] = setup.move.keys;
  const metres = mark ? hypot(mark.at[0] - key.position[0], mark.at[1] - key.position[2]) : 0;
  return { metres: kept(metres, NEAREST_METRES, FARTHEST_METRES) };
}

/**
 * A setup without what refers to lost performers and tracks: focus stays at its distance, nobody is held any more, a
 * camera whose track is lost stands where its keys say, and nobody who is lost has cheated marks. The same setup where it
 * referred to none of them.
 */
export function dropReferences(before: Setup, lost: Lost): Setup {
  const setup = before.cheats
    ? withCheats(
        before,
        keptOf(before.cheats, ({ performer }) => !lost.performers.has(performer)),
      )
    : before;
  const { operator, track, ...rest } = setup;
  const focus = orSame(
    setup.focus,
    'racks' in setup.focus
      ? { racks: setup.focus.racks.map((rack) => ({ ...rack, on: focusWithout(rack.on, setup, lost) })) }
      : focusWithout(setup.focus, setup, lost),
  );
  const lostTrack = track !== undefined && lost.tracks.has(track);
  const lostHold = operator !== undefined && lost.performers.has(operator.hold);
  if (focus === setup.focus && !lostTrack && !lostHold) return setup;
  const keys = setup.move.keys.map((key) => {
    const { alongMetres: _, ...free } = key;
    return free;
  });
  return {
    ...rest,
    focus,
    ...(track !== undefined && !lostTrack && { track }),
    ...(operator && !lostHold && { operator }),
    move: lostTrack ? { ...setup.move, keys } : setup.move,
  };
}
