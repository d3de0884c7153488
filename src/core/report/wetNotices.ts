import { holesThatFit } from '../form/pieces/making/holes';
import { areasOver, wetPartsOf } from '../form/pieces/making/wetParts';
import { crosses } from '../plan/crossings';
import { named } from '../plan/named';
import type { WetArea } from '../plan/schema/ground';
import type { Plan } from '../plan/schema/plan';
import { nameOfArea } from '../plan/wetness';
import type { Notice } from './types';

/** Areas that lie over no deck, and those whose outline leaves open what they wet. */
function areaNotices(plan: Plan, area: WetArea): Notice[] {
  const name = nameOfArea(plan.ground, area.id);
  const where = `Ground, ${name}`;
  const decks = plan.pieces.filter((piece) => piece.kind === 'deck');
  const isOver = decks.some(
    ({ outline }) => areasOver({ ...plan.ground, areas: [area] }, outline).length > 0,
  );
  return [
    ...(isOver
      ? []
      : [
          {
            where,
            sentence: `${name} lies beside every deck, so it changes nothing. Move it, or take it out.`,
          },
        ]),
    ...(crosses(area.outline, area.outline)
      ? [
          {
            where,
            sentence: `The outline of ${name} crosses itself, and what it surrounds twice is left out. Draw it round the edge.`,
          },
        ]
      : []),
  ];
}

/** What of the wet areas is not as it is drawn. */
export function wetNotices(plan: Plan): Notice[] {
  const { areas = [] } = plan.ground;
  if (areas.length === 0) return [];
  const left = plan.pieces.flatMap((piece): Notice[] => {
    if (piece.kind !== 'deck') return [];
    const holes = (piece.holes ?? []).map(({ outline }) => outline);
    const parts = wetPartsOf(plan.ground, piece.outline, holesThatFit(piece.outline, holes));
    if (parts !== 'too many crossings') return [];
    return [
      {
        where: `Set piece ${piece.label}`,
        sentence: `The wet areas over ${named(piece.label)} cross each other too often to be told apart, so it is ${plan.ground.wetness} all over. Draw fewer of them.`,
      },
    ];
  });
  return [...areas.flatMap((area) => areaNotices(plan, area)), ...left];
}
