type Key = string | number;
export type Path = readonly Key[];

/** One change to a document. `path` and `from` are numbers of paths in its list. */
export type Mutation =
  | { readonly kind: 'put'; readonly path: number; readonly value: unknown }
  | { readonly kind: 'take away' | 'twice'; readonly path: number }
  | { readonly kind: 'scale'; readonly path: number; readonly by: number }
  | { readonly kind: 'copy'; readonly path: number; readonly from: number };

/** The path of every value in a document, the document's own left out. */
export function pathsOf(value: unknown, path: Path = []): Path[] {
  if (value === null || typeof value !== 'object') return [];
  const entries: [Key, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return entries.flatMap(([key, entry]) => [[...path, key], ...pathsOf(entry, [...path, key])]);
}

const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? Reflect.get(at, key) : undefined),
    document,
  );

/** A copy of the document with one thing changed. */
export function mutated(document: unknown, paths: readonly Path[], mutation: Mutation): unknown {
  const copy: unknown = structuredClone(document);
  const path = paths[mutation.path];
  const holder = valueAt(copy, path.slice(0, -1));
  const key = path[path.length - 1];
  if (holder === null || typeof holder !== 'object') throw new Error(`nothing holds ${path.join('.')}`);
  const here: unknown = Reflect.get(holder, key);
  switch (mutation.kind) {
    case 'put':
      Reflect.set(holder, key, mutation.value);
      break;
    case 'take away':
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else Reflect.deleteProperty(holder, key);
      break;
    case 'twice':
      if (Array.isArray(holder)) holder.splice(Number(key), 0, structuredClone(here));
      else Reflect.set(holder, `${key} again`, here);
      break;
    case 'scale':
      if (typeof here === 'number') Reflect.set(holder, key, here * mutation.by);
      else if (Array.isArray(here))
        here.length = Math.floor(here.length * Math.abs(Math.min(1, mutation.by)));
      break;
    case 'copy':
      Reflect.set(holder, key, structuredClone(valueAt(document, paths[mutation.from])));
      break;
  }
  return copy;
}
