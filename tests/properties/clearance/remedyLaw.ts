import { remediesFor } from '../../../src/core/clearance/remedies/remediesFor';
import { withRemedy } from '../../../src/core/clearance/remedies/remedyEdits';
import type { Remedy, RemedyKind } from '../../../src/core/clearance/remedies/types';
import { parsePlan } from '../../../src/core/plan/parse';
import type { Plan } from '../../../src/core/plan/schema/plan';
import { setupReport } from '../../../src/core/report/setupReport';
import type { SetupReport } from '../../../src/core/report/types';
import { inOneGo } from '../../../src/core/units/steps';
import { drawFrom } from '../../plans/draw';
import { standAt, stillRoof } from '../../unit/clearance/remedies/remedied';
import { smallRoof } from '../../unit/smallRoof';

const tolerance = { levelStops: 2, angleDegrees: 60 };

/** All remedies for a finding. */
export function allOf(
  plan: Plan,
  setupId: string,
  itemId: string,
  seen: readonly SetupReport[],
): readonly Remedy[] {
  return inOneGo(remediesFor(plan, { setupId, itemId, tolerance, seen }));
}

/** A small wet roof with a crate and a few stands at random, seen by a still camera and one that moves, so many seconds each. */
function randomRoof(seed: number, seconds: number): Plan {
  const draw = drawFrom(seed);
  const roof = smallRoof();
  return {
    ...roof,
    ground: { surface: 'asphalt', wetness: draw.pick(['dry', 'wet down'] as const) },
    beats: roof.beats.map((beat) => ({ ...beat, atSeconds: beat.atSeconds * seconds })),
    cast: [],
    pieces: [
      ...roof.pieces,
      {
        id: 'box',
        label: 'Crate',
        kind: 'box',
        at: [draw.between(-1.5, 1.5), 0, draw.between(-4, 0)],
        headingDegrees: draw.between(0, 360),
        size: [draw.between(0.5, 2), draw.between(1, 3), 0.5],
        material: 'timber',
      },
    ],
    gear: Array.from({ length: 4 }, (_, k) =>
      standAt({
        id: `stand-${k}`,
        label: `Stand ${k}`,
        at: [draw.between(-2.5, 2.5), 0, draw.between(-6, 0)],
        headingDegrees: draw.between(0, 360),
        heightMetres: draw.between(1.3, 3),
        ...(draw.chance(0.4) && {
          arm: { lengthMetres: draw.between(0.5, 1.5), tiltDegrees: 0, headingDegrees: draw.between(0, 360) },
        }),
      }),
    ),
    setups: roof.setups.slice(0, 2),
  };
}

/** A small roof with a low chest behind two people and two crates that stand near the line of sight, at random. */
export function crowdedRoof(seed: number): Plan {
  const draw = drawFrom(seed);
  const roof = smallRoof();
  const [performer] = roof.cast;
  const [mark] = performer.marks;
  const [first, second] = [draw.between(-0.8, 0.8), draw.between(-0.8, 0.8)];
  return {
    ...stillRoof(
      [
        {
          id: 'chest',
          label: 'Chest',
          kind: 'generator',
          at: [draw.between(-0.5, 0.5), 0, -4],
          headingDegrees: draw.between(0, 360),
          size: [0.3, draw.between(0.9, 1.3), 0.3],
        },
        standAt({ at: [draw.between(-1, 1), 0, draw.between(-6, -5)] }),
      ],
      {},
      -3,
    ),
    ground: { surface: 'asphalt', wetness: draw.pick(['dry', 'wet down'] as const) },
    cast: [first, second].map((x, k) => ({
      ...performer,
      id: `player-${k}`,
      label: `Player ${k}`,
      wish: 'must show' as const,
      marks: [{ ...mark, at: [x, -1 - k], headingDegrees: draw.between(0, 360) }],
    })),
    pieces: [
      ...roof.pieces.slice(0, 1),
      ...[0, 1].map((k) => ({
        id: `crate-${k}`,
        label: `Crate ${k}`,
        kind: 'box' as const,
        at: [draw.between(-1.8, 1.8), 0, draw.between(-3.2, -2.6)] as [number, number, number],
        headingDegrees: draw.between(0, 360),
        size: [0.9, draw.between(0.8, 1.6), 0.6] as [number, number, number],
        material: 'timber' as const,
      })),
    ],
  };
}

const verdictsOf = (report: SetupReport): ReadonlyMap<string, string> =>
  new Map(report.items.filter(({ wish }) => wish !== 'either').map(({ id, verdict }) => [id, verdict]));

/** How the remedies for the first finding of a random roof fared: which were done, and what is wrong with them. */
export interface Tried {
  readonly done: readonly RemedyKind[];
  readonly breaches: readonly string[];
}

/** Does each remedy for the first finding of a random roof, and holds what it says to the whole report. */
export const tryRemedies = (seed: number, seconds = 0.5): Tried => tryAll(randomRoof(seed, seconds));

/** The same of any plan. */
export function tryAll(plan: Plan): Tried {
  const seen = plan.setups.map((setup) => setupReport(plan, setup));
  const finding = seen
    .flatMap(({ id, items }) => items.map((item) => ({ setupId: id, item })))
    .find(({ item }) => item.wish === 'keep out' && item.verdict === 'showing');
  if (!finding) return { done: [], breaches: [] };
  const { setupId, item } = finding;
  const remedies = allOf(plan, setupId, item.id, seen).filter(({ asksReason }) => !asksReason);
  const breaches = remedies.flatMap((remedy): string[] => {
    const after = withRemedy(plan, remedy);
    if (!parsePlan(JSON.parse(JSON.stringify(after))).ok) return [`${remedy.words}: no plan any more`];
    return after.setups.flatMap((setup, k) => {
      const now = verdictsOf(setupReport(after, setup));
      return [...verdictsOf(seen[k])].flatMap(([id, before]) => {
        const told =
          setup.id === setupId && id === item.id
            ? remedy.after
            : remedy.cost.otherSetups.find((each) => each.setupId === setup.id && each.itemId === id)?.after;
        // What showed already and stays inside the frame is not told, should something hide it.
        const isUntold = told === undefined && before === 'showing' && setup.id === setupId;
        const allowed = isUntold ? ['showing', 'mirrored', 'covered'] : [told ?? before];
        const found = now.get(id) ?? 'gone';
        return allowed.includes(found)
          ? []
          : [`${remedy.words} ${id} in ${setup.id}: ${found}, not ${allowed}`];
      });
    });
  });
  return { done: remedies.map(({ kind }) => kind), breaches };
}
