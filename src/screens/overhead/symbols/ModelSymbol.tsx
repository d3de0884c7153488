import { useStore } from 'zustand';
import { assetStore } from '../../../desk/assets/assetStore';
import type { PieceOf } from './kinds';
import { ModelPlan } from './ModelPlan';

/** An imported model, drawn anew when its file comes. */
export function ModelSymbol({ piece }: { readonly piece: PieceOf<'model'> }) {
  useStore(assetStore, ({ changes }) => changes);
  return <ModelPlan piece={piece} />;
}
