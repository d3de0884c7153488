import type { GearOf } from '../form/gear/references';
import { itemOf } from '../plan/items';
import { named } from '../plan/named';
import type { Spot } from '../plan/schema/numbers';
import type { Plan } from '../plan/schema/plan';
import { obstaclesOn } from '../plan/walkWays/obstacles';
import { fromOutline, mayMeet } from '../plan/walkWays/planar';
import { caution } from './caution';
import { edgeAt, GUARD_METRES, NEAR_METRES } from './edges/edgeAt';
import type { Caution } from './types';
import { edgeWords, heldWords, metres } from './words';

type Ladder = GearOf<'ladder'>;

/** Nobody stands on the top of a step ladder or its highest tread: feet are so far below its top, metres. Source: common practice, no source */
const TOP_METRES = 0.6;
/** A leaned ladder's foot stands out by this share of its length. Source: [ladder-angle] */
const OUT_SHARE = 0.25;
/** What is at least this share of a ladder's height, and no farther off than half of it, it may be leaned against. Source: common practice, no source */
const LEAN_SHARE = 0.6;

function edgeCaution(plan: Plan, ladder: Ladder): Caution | null {
  const spot: Spot = [ladder.at[0], ladder.at[2]];
  const raisedMetres = Math.max(0, ladder.heightMetres - TOP_METRES);
  // Who falls with a ladder falls as far out as it is high: common practice, no source.
  const withinMetres = Math.max(NEAR_METRES, ladder.heightMetres);
  const edge = edgeAt(plan, spot, ladder.at[1], { raisedMetres, withinMetres });
  if (!edge) return null;
  const needs = GUARD_METRES + raisedMetres;
  return caution({
    kind: 'ladder',
    about: 'ladder-edge',
    standing: 'breaks',
    itemIds: [ladder.id],
    place: ladder.at,
    stretches: [[spot, edge.at]],
    figures: [
      { name: 'from an open edge', value: edge.metres, unit: 'm', expected: withinMetres },
      { name: 'height of what stands along it', value: edge.heldMetres, unit: 'm', expected: needs },
    ],
    sentence: `${named(ladder.label)} is ${metres(edge.metres)} from ${edgeWords(plan, edge)}: ${heldWords(edge.heldMetres)}, and feet at ${metres(raisedMetres)} take a guard of ${metres(needs)}. Work at least ${metres(withinMetres)} from it, or secured by whoever knows how.`,
    sources: ['guardrail', 'unprotected-edge'],
  });
}

function leanCaution(plan: Plan, ladder: Ladder): Caution | null {
  const spot: Spot = [ladder.at[0], ladder.at[2]];
  const reach = ladder.heightMetres / 2;
  let found: { readonly id: string; readonly away: number } | null = null;
  for (const solid of obstaclesOn(plan, [ladder.at[1], ladder.at[1]])) {
    if (solid.kind !== 'solid' || !mayMeet(spot, spot, solid.bounds, reach)) continue;
    if (solid.topMetres - ladder.at[1] < ladder.heightMetres * LEAN_SHARE) continue;
    const away = fromOutline(solid.outline, spot, spot);
    if (away <= reach && (!found || away < found.away)) found = { id: solid.pieceId, away };
  }
  if (!found) return null;
  const label = itemOf(plan, found.id)?.record.label ?? found.id;
  const out = ladder.heightMetres * OUT_SHARE;
  return caution({
    kind: 'ladder',
    about: 'ladder-lean',
    standing: 'said',
    keyIds: [ladder.id],
    itemIds: [ladder.id, found.id],
    place: ladder.at,
    figures: [{ name: 'foot out where it is leaned', value: out, unit: 'm' }],
    sentence: `${named(ladder.label)} stands ${metres(found.away)} from ${named(label)}: open it fully, or use one that is made to be leaned, its foot ${metres(out)} out, a quarter of its length, and tied or held. Its foot wants dry, level ground.`,
    sources: ['ladder-angle'],
  });
}

/** Ladders: near edges that are guarded for feet on the floor only, and beside what they might be leaned against. */
export const ladderCautions = (plan: Plan): readonly Caution[] =>
  plan.gear.flatMap((gear): readonly Caution[] =>
    gear.kind === 'ladder'
      ? [edgeCaution(plan, gear), leanCaution(plan, gear)].filter((each): each is Caution => each !== null)
      : [],
  );
