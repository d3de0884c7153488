import { smallRoofDocument } from '../smallRoof';

/** What is to be put where: a path of field names and list places, such as `setups.0.span.to`, and any value there. */
export type Changes = Readonly<Record<string, unknown>>;

function put(document: object, path: string, value: unknown): void {
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  const holder = keys.reduce<unknown>((at, key) => {
    if (at === null || typeof at !== 'object') throw new Error(`there is no ${path} in the small roof`);
    return Reflect.get(at, key);
  }, document);
  if (holder === null || typeof holder !== 'object') throw new Error(`there is no ${path} in the small roof`);
  Reflect.set(holder, last, value);
}

/** The small roof of so many seconds as the text of a plan file, with some of it put otherwise; undefined takes a field away. */
export function spoilt(changes: Changes, endSeconds?: number): string {
  const document = smallRoofDocument(endSeconds);
  for (const [path, value] of Object.entries(changes)) put(document, path, value);
  return JSON.stringify(document);
}

/** The same with the text of a value at one path, for what no value can say. */
export const spoiltBy = (path: string, json: string): string =>
  spoilt({ [path]: 'the value' }).replace('"the value"', json);
