import { isLamp } from '../../src/core/plan/cues';
import type { Looks, Mark, Pass, Performer, Towards } from '../../src/core/plan/schema/cast';
import type { Cue } from '../../src/core/plan/schema/gear';
import type { Plan } from '../../src/core/plan/schema/plan';
import type { Draw } from './draw';

/** As far from the middle as performers look and walk, metres. */
const FARTHEST = 7;

function somethingToFace(cast: readonly Performer[], draw: Draw): Towards {
  if (draw.chance(0.7)) return { who: draw.pick(cast).id };
  const side = () => draw.between(-FARTHEST, FARTHEST);
  return { point: [side(), draw.between(0, 3), side()] };
}

function somethingToLookAt(cast: readonly Performer[], draw: Draw): Looks {
  if (draw.chance(0.75)) return somethingToFace(cast, draw);
  return { turnDegrees: draw.between(-90, 90), tiltDegrees: draw.between(-60, 60) };
}

function actedMark(mark: Mark, cast: readonly Performer[], draw: Draw): Mark {
  const side = () => draw.between(-FARTHEST, FARTHEST);
  const places = () => Array.from({ length: draw.whole(1, 4) }, (): [number, number] => [side(), side()]);
  return {
    ...mark,
    ...(draw.chance(0.4) && { faces: somethingToFace(cast, draw) }),
    ...(draw.chance(0.4) && { looks: somethingToLookAt(cast, draw) }),
    ...(draw.chance(0.4) && {
      way: { through: places(), line: draw.pick(['straight', 'curved'] as const) },
    }),
    ...(draw.chance(0.3) && { facesOnTheWay: somethingToFace(cast, draw) }),
    ...(draw.chance(0.3) && { looksOnTheWay: somethingToLookAt(cast, draw) }),
  };
}

/** The plan with lamps that change at beats and between them. */
function withCues(plan: Plan, draw: Draw): Plan {
  const someCue = (): Cue => ({
    atSeconds: draw.between(0, 6),
    ...(draw.chance(0.5) && { beat: draw.pick(plan.beats).id }),
    dim: draw.pick([0, 1, draw.between(0, 1)]),
    fadeSeconds: draw.pick([0, draw.between(0, 4)]),
  });
  const gear = plan.gear.map((each) =>
    isLamp(each) && draw.chance(0.3)
      ? { ...each, cues: Array.from({ length: draw.whole(1, 3) }, someCue) }
      : each,
  );
  return { ...plan, gear };
}

/** The plan with flickers that cues begin and end, alone or beside a dim. */
function withFlickerCues(plan: Plan, draw: Draw): Plan {
  const turned = (cue: Cue): Cue => ({ ...cue, flickers: draw.chance(0.5) });
  const gear = plan.gear.map((each) => {
    if (each.kind !== 'practical' || !each.flicker || draw.chance(0.3)) return each;
    const own = (each.cues ?? []).map((cue) => (draw.chance(0.4) ? turned(cue) : cue));
    const more = Array.from({ length: draw.whole(0, 2) }, () =>
      turned({ atSeconds: draw.between(0, 12), fadeSeconds: 0 }),
    );
    const cues = [...own, ...more];
    return {
      ...each,
      flicker: { ...each.flicker, ...(draw.chance(0.4) && { waits: true }) },
      ...(cues.length > 0 && { cues }),
    };
  });
  return { ...plan, gear };
}

/** The plan with performers who face and look at each other, walk round corners and curves, and hand things over, and with lamps that have cues. */
export function withActing(plan: Plan, draw: Draw): Plan {
  if (plan.cast.length === 0) return plan;
  const cast = plan.cast.map((performer) => ({
    ...performer,
    ...(draw.chance(0.5) && { prop: draw.pick(['bird', 'box', 'ball', 'case'] as const) }),
    marks: performer.marks.map((mark) => actedMark(mark, plan.cast, draw)),
  }));
  const ids = cast.map(({ id }) => id);
  const passes = Array.from({ length: draw.whole(0, 3) }, (_, k): Pass[] => {
    const from = draw.whole(0, ids.length - 1);
    const to = (from + draw.whole(1, ids.length)) % ids.length;
    const beat = draw.pick(plan.beats).id;
    return from === to ? [] : [{ id: `pass-${k + 1}`, beat, from: ids[from], to: ids[to] }];
  }).flat();
  return withFlickerCues(withCues({ ...plan, cast, ...(passes.length > 0 && { passes }) }, draw), draw);
}
