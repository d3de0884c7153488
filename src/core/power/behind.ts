import type { Network } from './types';

/** The loads that get their power through a cable, in the order in which they are fed. */
export function loadsBehind({ feeds, loads }: Network, cableId: string): readonly string[] {
  const behind = new Set<string>();
  for (const feed of feeds) if (feed.cableId === cableId || behind.has(feed.fromId)) behind.add(feed.toId);
  return [...behind].filter((id) => loads.has(id));
}

/** The cables from a source up to something, in that order; none where it is not fed. */
export function cablesTo({ feeds }: Network, id: string): readonly string[] {
  const into = new Map(feeds.map((feed) => [feed.toId, feed]));
  const way: string[] = [];
  for (let feed = into.get(id); feed; feed = into.get(feed.fromId)) way.unshift(feed.cableId);
  return way;
}
