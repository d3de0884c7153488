import { type HeldModel, trianglesIn } from '../form/models/heldModel';
import { modelHeld } from '../form/models/modelShelf';
import { named } from '../plan/named';
import type { Piece } from '../plan/schema/pieces';
import type { Plan } from '../plan/schema/plan';
import type { Notice } from './types';

type Model = Extract<Piece, { kind: 'model' }>;

/** A whole number with its thousands apart. */
const counted = (count: number): string => String(count).replace(/\B(?=(\d{3})+$)/g, ',');

/** Of a model that was thinned out: what of it is judged, and how near to the scan; null of one that was not. */
export function thinnedWords({ label, metresPerUnit }: Model, held: HeldModel): string | null {
  const { trianglesInFile, errorUnits } = held;
  const triangles = trianglesIn(held);
  if (triangles === trianglesInFile) return null;
  const millimetres = Math.max(1, Math.ceil(errorUnits * metresPerUnit * 1000));
  return `Of ${named(label)}, ${counted(triangles)} of ${counted(trianglesInFile)} triangles are judged and drawn, within ${counted(millimetres)} mm of the scan.`;
}

/** What a person should know of the imported models: a file that is not here, or one that was thinned out. */
export function modelNotices(plan: Plan): Notice[] {
  return plan.pieces.flatMap((piece): Notice[] => {
    if (piece.kind !== 'model') return [];
    const where = `Set piece ${piece.label}`;
    const held = modelHeld(piece.asset.sha256);
    if (held) {
      const sentence = thinnedWords(piece, held);
      return sentence === null ? [] : [{ where, sentence }];
    }
    return [
      {
        where,
        sentence: `The file of ${named(piece.label)}, ${piece.asset.name}, is not here: a box of its size stands for it. Give it the file.`,
      },
    ];
  });
}
