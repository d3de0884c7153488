import fc from 'fast-check';

type Key = string | number;
type Path = readonly Key[];

/** One change to a document. `path` and `from` are numbers of paths in its list. */
type Mutation =
  | { readonly kind: 'put'; readonly path: number; readonly value: unknown }
  | { readonly kind: 'take away' | 'twice'; readonly path: number }
  | { readonly kind: 'scale'; readonly path: number; readonly by: number }
  | { readonly kind: 'copy'; readonly path: number; readonly from: number }
  | { readonly kind: 'rename'; readonly path: number; readonly to: string };

/** The path of every value in a document, the document's own left out. */
function pathsOf(value: unknown, path: Path = []): Path[] {
  if (value === null || typeof value !== 'object') return [];
  const entries: [Key, unknown][] = Array.isArray(value) ? [...value.entries()] : Object.entries(value);
  return entries.flatMap(([key, entry]) => [[...path, key], ...pathsOf(entry, [...path, key])]);
}

const valueAt = (document: unknown, path: Path): unknown =>
  path.reduce<unknown>(
    (at, key) => (at !== null && typeof at === 'object' ? Reflect.get(at, key) : undefined),
    document,
  );

/** Puts a field as JSON has it: a field that is called `__proto__` is one, too. */
const put = (holder: object, key: Key, value: unknown): boolean =>
  Reflect.defineProperty(holder, key, { value, writable: true, enumerable: true, configurable: true });

/** A copy of the document with one thing changed. */
function mutated(document: unknown, paths: readonly Path[], mutation: Mutation): unknown {
  const copy: unknown = structuredClone(document);
  const path = paths[mutation.path];
  const holder = valueAt(copy, path.slice(0, -1));
  const key = path[path.length - 1];
  if (holder === null || typeof holder !== 'object') throw new Error(`nothing holds ${path.join('.')}`);
  const here: unknown = Reflect.get(holder, key);
  switch (mutation.kind) {
    case 'put':
      put(holder, key, mutation.value);
      break;
    case 'take away':
      if (Array.isArray(holder)) holder.splice(Number(key), 1);
      else Reflect.deleteProperty(holder, key);
      break;
    case 'twice':
      if (Array.isArray(holder)) holder.splice(Number(key), 0, structuredClone(here));
      else put(holder, `${key} again`, here);
      break;
    case 'scale':
      if (typeof here === 'number') put(holder, key, here * mutation.by);
      else if (Array.isArray(here))
        here.length = Math.floor(here.length * Math.abs(Math.min(1, mutation.by)));
      break;
    case 'copy':
      put(holder, key, structuredClone(valueAt(document, paths[mutation.from])));
      break;
    case 'rename':
      if (Array.isArray(holder)) break;
      Reflect.deleteProperty(holder, key);
      put(holder, mutation.to, here);
      break;
  }
  return copy;
}

/** Values at the edges of what a schema may let through. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(0, -0, -1, 1, 0.5, 1e-9, 5e-324, 1e308, -1e308, 360, -720, 5000, 400, 3600),
  fc.constantFrom<unknown>(2 ** 32, 2 ** 53, null, true, '', ' ', '\u0000', '\u202e', '#ffffff', '__proto__'),
  fc.constantFrom<unknown>('http://x/', 'javascript:x', '<script>x()</script>', [], {}, [[]]),
  fc.string({ maxLength: 100 }),
  fc.double(),
  fc.jsonValue({ maxDepth: 3 }),
);

/** Documents with one thing changed. */
export function changesTo(document: unknown): fc.Arbitrary<unknown> {
  const paths = pathsOf(document);
  const path = fc.nat({ max: paths.length - 1 });
  const mutation: fc.Arbitrary<Mutation> = fc.oneof(
    fc.record({ kind: fc.constant('put' as const), path, value: odd }),
    fc.record({ kind: fc.constant('take away' as const), path }),
    fc.record({ kind: fc.constant('twice' as const), path }),
    fc.record({ kind: fc.constant('scale' as const), path, by: fc.constantFrom(0, -1, 0.001, 0.5, 2, 100) }),
    fc.record({ kind: fc.constant('copy' as const), path, from: path }),
    fc.record({
      kind: fc.constant('rename' as const),
      path,
      to: fc.constantFrom('__proto__', 'constructor', 'prototype', 'toString', '', 'length', 'then'),
    }),
  );
  return mutation.map((change) => mutated(document, paths, change));
}

/** A share of something, 0 up to 1, each as likely: `fc.double` has half of its numbers below a billionth. */
export const share: fc.Arbitrary<number> = fc.nat({ max: 2 ** 31 - 1 }).map((part) => part / 2 ** 31);

/** Texts with some pieces of them replaced, at most `most`. */
export function textChanges(
  wholes: readonly string[],
  piece: fc.Arbitrary<string>,
  most = 3,
): fc.Arbitrary<string> {
  const change = fc.record({
    at: share,
    long: fc.nat({ max: 8 }),
    to: piece,
  });
  return fc
    .tuple(fc.constantFrom(...wholes), fc.array(change, { minLength: 1, maxLength: most }))
    .map(([whole, changes]) =>
      changes.reduce((text, { at, long, to }) => {
        const from = Math.floor(at * text.length);
        return text.slice(0, from) + to + text.slice(from + long);
      }, whole),
    );
}

/** Bytes with some of them changed; `places` says which may be. */
export function byteChanges(
  wholes: readonly Uint8Array[],
  places: fc.Arbitrary<number> = share,
): fc.Arbitrary<Uint8Array<ArrayBuffer>> {
  const change = fc.tuple(places, fc.nat({ max: 255 }));
  return fc
    .tuple(fc.constantFrom(...wholes), fc.array(change, { minLength: 1, maxLength: 6 }))
    .map(([whole, changes]) => {
      const bytes = Uint8Array.from(whole);
      for (const [at, value] of changes) bytes[Math.floor(at * bytes.length)] = value;
      return bytes;
    });
}
