import type { LinkReading } from '../../exchange/link/link';

/** What the worker that reads links says: that its script is there, then what the link gave that it was sent. */
export type LinkMessage =
  | { readonly kind: 'here' }
  | { readonly kind: 'read'; readonly reading: LinkReading };
