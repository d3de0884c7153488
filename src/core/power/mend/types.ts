import type { CableEnd } from '../../plan/edits/plugCable';
import type { Wire } from '../../plan/schema/power';

/** What would take care of a fault of the power, as data: `withMend` does it. */
export type Mend =
  /** Both ends of a cable out: it lies there and carries nothing. */
  | { readonly act: 'pull'; readonly cableId: string }
  | { readonly act: 'pull end'; readonly cableId: string; readonly end: CableEnd }
  /** Things that have a battery or a socket of their own. */
  | { readonly act: 'own'; readonly itemIds: readonly string[] }
  /** Cables that name no circuit any more, so that they are shared out. */
  | { readonly act: 'any circuit'; readonly cableIds: readonly string[] }
  | { readonly act: 'unwind'; readonly cableId: string }
  | {
      readonly act: 'thicker';
      readonly cables: readonly {
        readonly id: string;
        readonly wire: Wire;
        readonly diameterMetres: number;
      }[];
    }
  /** A person says what something draws. */
  | { readonly act: 'say'; readonly itemId: string }
  /** A cord to all that has none, by `connectAll`. */
  | { readonly act: 'connect' };
