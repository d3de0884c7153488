import type { SetupContinuity } from '../../continuity/continuity';
import type { KeySideFinding } from '../../continuity/keySide';
import type { Plan } from '../../plan/schema/plan';
import { formatSigned } from '../../units/numbers';
import { formatStopCount } from '../../units/stops';
import { letterOf, nameOf, namesOf } from '../continuity/names';
import { listed } from '../listed';
import type { SetupLight } from './types';

/** Setups that part by less than this at the same beat are not told apart, stops. Source: common practice, no source */
const TOLD_STOPS = 0.5;

/** Setups by their letters, in the plan's order, three or more in a row as `A to C`. */
function lettersIn(plan: Plan, findings: readonly KeySideFinding[]): string {
  const ids = new Set(findings.map(({ setupId }) => setupId));
  const runs: string[][] = [];
  let before = -2;
  for (const [place, { id }] of plan.setups.entries()) {
    if (!ids.has(id)) continue;
    if (before === place - 1) runs[runs.length - 1].push(letterOf(plan, id));
    else runs.push([letterOf(plan, id)]);
    before = place;
  }
  return listed(runs.flatMap((run) => (run.length > 2 ? [`${run[0]} to ${run[run.length - 1]}`] : run)));
}

/** Whose key stays on its side, and whose does not, in which setups. */
function sideSentences(plan: Plan, findings: readonly KeySideFinding[]): readonly string[] {
  const seen = plan.cast.filter(({ id }) => {
    const own = findings.filter(({ performerId }) => performerId === id);
    return new Set(own.map(({ setupId }) => setupId)).size > 1;
  });
  const breaking = (id: string): readonly KeySideFinding[] =>
    findings.filter(({ performerId, standing }) => performerId === id && standing === 'breaks');
  const keeping = seen.filter(({ id }) => breaking(id).length === 0).map(({ id }) => id);
  const kept = findings.filter(({ performerId }) => keeping.includes(performerId));
  const keeps = keeping.length === 1 ? 'keeps the key side' : 'keep their key sides';
  return [
    ...(keeping.length > 0 ? [`${namesOf(plan, keeping)} ${keeps} in ${lettersIn(plan, kept)}.`] : []),
    ...seen
      .filter(({ id }) => breaking(id).length > 0)
      .map(({ id }) => `${nameOf(plan, id)}’s key changes sides in ${lettersIn(plan, breaking(id))}.`),
  ];
}

interface Reading {
  readonly setupId: string;
  readonly stops: number;
}

/** The two setups whose keys on one face part most at one beat; null where none do. */
function widest(
  lights: ReadonlyMap<string, SetupLight>,
  performerId: string,
): { readonly low: Reading; readonly high: Reading; readonly apart: number } | null {
  const byBeat = new Map<string, Reading[]>();
  for (const [setupId, { levels }] of lights)
    for (const { beatId, faces } of levels) {
      const stops = faces.find((face) => face.performerId === performerId)?.key?.stops ?? null;
      if (stops !== null) byBeat.set(beatId, [...(byBeat.get(beatId) ?? []), { setupId, stops }]);
    }
  return [...byBeat.values()]
    .map((readings) => {
      const ordered = readings.toSorted((a, b) => a.stops - b.stops);
      const [low, high] = [ordered[0], ordered[ordered.length - 1]];
      return { low, high, apart: high.stops - low.stops };
    })
    .reduce<ReturnType<typeof widest>>(
      (most, next) => (most && most.apart >= next.apart ? most : next),
      null,
    );
}

/** Whose key the setups expose differently at one and the same beat. */
const levelSentences = (plan: Plan, lights: ReadonlyMap<string, SetupLight>): readonly string[] =>
  plan.cast.flatMap(({ id }) => {
    const found = widest(lights, id);
    if (!found || found.apart < TOLD_STOPS) return [];
    const { low, high, apart } = found;
    const of = ({ setupId, stops }: Reading): string =>
      `${letterOf(plan, setupId)} (${formatSigned(stops, 1)})`;
    const stops = formatStopCount(apart);
    return [
      `${nameOf(plan, id)}’s key is ${stops} apart between ${of(low)} and ${of(high)} at the same beat.`,
    ];
  });

/**
 * What becomes of the keys from setup to setup: whose side is kept where more than one setup shows the face, whose is
 * not, and whose key is exposed differently at one and the same beat by those setups whose light is known.
 */
export function keySummary(
  plan: Plan,
  continuity: readonly SetupContinuity[],
  lights: ReadonlyMap<string, SetupLight>,
): readonly string[] {
  const findings = continuity
    .flatMap((setup) => setup.findings)
    .filter((finding) => finding.kind === 'key side');
  return [...sideSentences(plan, findings), ...levelSentences(plan, lights)];
}
