import { modelsAtHand } from '../../core/form/models/modelShelf';
import { assetStore } from '../../desk/assets/assetStore';

/** What a picture depends on beside the plan: which imported models are at hand, and which of their pictures are open. */
export const drawnWith = (): readonly unknown[] => [modelsAtHand(), assetStore.getState().painted];
