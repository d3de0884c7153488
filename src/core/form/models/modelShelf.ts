import type { HeldModel } from './heldModel';

/**
 * The models at hand, by the SHA-256 of their files. A plan only names its models, so whoever works out forms (the
 * page, a worker, the command line) puts them here first; until then a box stands for each.
 */
const held = new Map<string, HeldModel>();
let state: object = {};

/** Puts a model at hand. The same contents always make the same model, so a second one changes nothing. */
export function holdModel(sha256: string, model: HeldModel): void {
  if (held.has(sha256)) return;
  held.set(sha256, model);
  state = {};
}

/** Lets a model go: its box stands for it again. */
export function dropModel(sha256: string): void {
  if (held.delete(sha256)) state = {};
}

/** The model of a file with these contents; null while it is not at hand. */
export const modelHeld = (sha256: string): HeldModel | null => held.get(sha256) ?? null;

/** Which models are at hand, as an object that is another one after every change: for whoever remembers forms. */
export const modelsAtHand = (): object => state;
