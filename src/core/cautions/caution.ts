import type { Point } from '../plan/schema/numbers';
import type { SourceKey } from '../sources';
import type { Caution, CautionKind, CautionStanding, Figure } from './types';

/** The words that close every caution. */
export const DECIDES =
  'An estimate for planning: local code and a licensed or competent person on the roof decide.';

/** So many ids make up a key; of more it says how many. */
const MOST_IDS = 20;

/** The key of a caution: what it is about, in words with hyphens, and the ids of what it is about. */
function keyOf(about: string, ids: readonly string[]): string {
  const named = ids.slice(0, MOST_IDS);
  return [
    about,
    ...named,
    ...(ids.length > named.length ? [`and-${ids.length - named.length}-more`] : []),
  ].join('/');
}

/** What a caution is made from. */
interface CautionParts {
  readonly kind: CautionKind;
  /** One matter of its kind, such as `edge-people`: small letters and hyphens, not to be changed any more. */
  readonly about: string;
  readonly standing: CautionStanding;
  readonly itemIds?: readonly string[];
  /** Ids that the key is made of; left out, those of all items and setups. */
  readonly keyIds?: readonly string[];
  readonly setupIds?: readonly string[];
  readonly place?: Point | null;
  readonly stretches?: Caution['stretches'];
  readonly figures: readonly Figure[];
  readonly sentence: string;
  readonly sources: readonly SourceKey[];
}

/** Puts a caution together. */
export function caution(parts: CautionParts): Caution {
  const { kind, about, standing, figures, sentence, sources } = parts;
  const {
    itemIds = [],
    setupIds = [],
    keyIds = [...itemIds, ...setupIds],
    place = null,
    stretches = [],
  } = parts;
  return {
    id: keyOf(about, keyIds),
    kind,
    standing,
    itemIds,
    setupIds,
    place,
    stretches,
    figures,
    sentence,
    sources,
    decides: DECIDES,
  };
}
