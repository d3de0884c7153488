import { cuesOnClock } from './cues';
import { withCautions } from './edits/cautionsEntered';
import { dropEstablishing, dropPeople } from './edits/dropPeople';
import { dropReferences } from './edits/dropReferences';
import { changed } from './edits/motion';
import { nightWithoutSetups } from './edits/nightRecord';
import { unaccepted } from './edits/shows';
import type { Plan } from './schema/plan';

/** What a new plan takes over from another one beside its place, its roof and its kit. */
export interface Keeping {
  readonly gear: boolean;
  readonly cast: boolean;
  readonly setups: boolean;
}

/**
 * A plan of its own that starts where another one stands: place, sky, ground, kit, set pieces, meters, tapes and
 * underlay are taken over, and of gear, cast and setups what is asked for. Beats stay as long as cast or setups need
 * them.
 * Cables whose ends are both gear stay whole, since all of the gear is taken over or none; setups let go of who and
 * what is not (see `dropReferences`), and so do passes and lines; cues of lamps keep their moments where no beat is
 * left. What was let show in a setup goes with the setups, and so does what the night has of each. What the roof
 * carries and the ways off it are taken over, the forecast and notes on cautions are not.
 */
export function startingFrom(plan: Plan, title: string, keeping: Keeping): Plan {
  const { gear, cast, setups } = keeping;
  const lost = {
    performers: new Map(cast ? [] : plan.cast.map((performer) => [performer.id, performer])),
    tracks: new Set(gear ? [] : plan.gear.map(({ id }) => id)),
  };
  const shown = setups
    ? plan
    : {
        pieces: changed(plan.pieces, unaccepted),
        cast: changed(plan.cast, unaccepted),
        gear: changed(plan.gear, unaccepted),
      };
  const left: Plan = {
    ...plan,
    title,
    notes: '',
    beats: cast || setups ? plan.beats : [],
    pieces: shown.pieces,
    cast: cast ? shown.cast : [],
    gear: gear ? (cast || setups ? shown.gear : changed(shown.gear, (each) => cuesOnClock(each, plan))) : [],
    setups: setups ? plan.setups.map((setup) => dropReferences(setup, lost)) : [],
  };
  // The forecast was for that night, and the notes were about it; what the roof carries and the ways off it stay.
  const { wind: _, notes: __, ...ofRoof } = plan.cautions ?? {};
  const another = withCautions(left, ofRoof);
  const peopled = cast ? another : dropPeople(another, () => true);
  return setups
    ? peopled
    : nightWithoutSetups(
        dropEstablishing(peopled, () => true),
        () => true,
      );
}
