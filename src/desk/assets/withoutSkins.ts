import type { HeldModel } from '../../core/form/models/heldModel';

/** A model as a worker needs it that judges and never draws. */
export const withoutSkins = (model: HeldModel): HeldModel => ({
  ...model,
  chunks: model.chunks.map((chunk) => ({ ...chunk, skin: null })),
});
