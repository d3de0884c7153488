import type { Asset } from '../schema/asset';
import type { Piece } from '../schema/pieces';
import type { Plan } from '../schema/plan';
import { editRecord } from './editRecord';

type Model = Extract<Piece, { kind: 'model' }>;

/** Gives a model another file: it stays where it stands, and as large for each unit of its file. */
export function setModelFile(
  plan: Plan,
  args: { readonly id: string; readonly asset: Asset; readonly extent: Model['extent'] },
): Plan {
  return editRecord(plan, args.id, {
    piece: (piece) =>
      piece.kind === 'model' && piece.asset.sha256 !== args.asset.sha256
        ? { ...piece, asset: args.asset, extent: args.extent }
        : piece,
  });
}

/** Says which of the file's own axes points up. */
export function setModelUp(plan: Plan, args: { readonly id: string; readonly up: Model['up'] }): Plan {
  return editRecord(plan, args.id, {
    piece: (piece) => (piece.kind === 'model' && piece.up !== args.up ? { ...piece, up: args.up } : piece),
  });
}
