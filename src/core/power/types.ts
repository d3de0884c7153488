import type { Load } from './loads';
import type { Distro, Source } from './supplies';

/** Why something that draws power gets none, or how it gets it. */
export type Feeding = 'fed' | 'own' | 'no cord' | 'no source' | 'two sources' | 'ring';

/** Whether something that draws gets no power, neither by a cord nor of its own. */
export const isDark = ({ feeding }: { readonly feeding: Feeding }): boolean =>
  feeding !== 'fed' && feeding !== 'own';

/** A cable that carries power from what is nearer to the source to what is farther. */
export interface Feed {
  readonly cableId: string;
  readonly fromId: string;
  readonly toId: string;
  readonly sourceId: string;
  /** Which circuit of what it comes from, from 0; null behind a load that passes power on. */
  readonly circuit: number | null;
  /** The legs of the source that it carries, from 1. */
  readonly legs: readonly number[];
}

/** Something that is wrong with how things are plugged together. */
export type NetworkFault =
  | { readonly kind: 'ring'; readonly cableIds: readonly string[]; readonly itemIds: readonly string[] }
  | {
      readonly kind: 'two sources';
      readonly sourceIds: readonly string[];
      readonly itemIds: readonly string[];
    }
  | { readonly kind: 'no cord' | 'no source'; readonly itemIds: readonly string[] }
  | { readonly kind: 'open end'; readonly cableId: string; readonly itemId: string }
  | { readonly kind: 'loose'; readonly cableIds: readonly string[] }
  | { readonly kind: 'takes no plug'; readonly cableId: string; readonly itemId: string }
  | {
      readonly kind: 'too few sockets';
      readonly itemId: string;
      readonly cables: number;
      readonly sockets: number;
    }
  | {
      readonly kind: 'no such circuit';
      readonly cableId: string;
      readonly itemId: string;
      readonly circuit: number;
    }
  | { readonly kind: 'passes on'; readonly itemId: string; readonly cableIds: readonly string[] };

/** What is plugged into what, from the sources outward. */
export interface Network {
  readonly sources: ReadonlyMap<string, Source>;
  readonly distros: ReadonlyMap<string, Distro>;
  readonly loads: ReadonlyMap<string, Load>;
  /** Each after the one that feeds it. */
  readonly feeds: readonly Feed[];
  readonly feeding: ReadonlyMap<string, Feeding>;
  readonly faults: readonly NetworkFault[];
}
