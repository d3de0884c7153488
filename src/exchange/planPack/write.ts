import { deflateSync, type Zippable, zipSync } from 'fflate';
import type { Asset } from '../../core/plan/schema/asset';
import type { Plan } from '../../core/plan/schema/plan';
import { serialisePlan } from '../../core/plan/serialise';
import { NO_DAY } from '../noDay';
import { filesOf } from './assetsIn';
import { FILES_FOLDER, PACK_LIMITS, PLAN_ENTRY } from './limits';
import { PackFault } from './packFault';

/** A file pack, and the names of files that are not in it since nobody has them here. */
export interface WrittenPack {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly missing: readonly string[];
}

/** What a plan's file is called in a pack: its contents, with the ending of its name. */
export function entryOf({ sha256, name }: Asset): string {
  const ending = name.match(/\.[A-Za-z0-9]{1,5}$/)?.[0].toLowerCase() ?? '';
  return `${FILES_FOLDER}${sha256}${ending}`;
}

/**
 * A plan with its models and its picture in one zip: `plan.json`, and `files/` named by their SHA-256. They are stored
 * as they are, since models and pictures are mostly packed already. The same plan and files give the same bytes.
 * @param fileOf the very file that a plan names, null where it is not at hand
 * @throws PackFault for a plan with more, or with larger files, than a pack that is read may have
 */
export async function writePlanPack(
  plan: Plan,
  fileOf: (asset: Asset) => Promise<Uint8Array | null>,
): Promise<WrittenPack> {
  const text = new TextEncoder().encode(serialisePlan(plan));
  // A plan that says the same over and over is stored too: a reader takes what packs so well for a trap.
  const isTight = text.length > PACK_LIMITS.ratio * deflateSync(text).length;
  if (text.length > PACK_LIMITS.planBytes)
    throw new PackFault(`The plan has ${text.length} bytes, a pack holds at most ${PACK_LIMITS.planBytes}.`);
  const files: Zippable = { [PLAN_ENTRY]: [text, { level: isTight ? 0 : 6, mtime: NO_DAY }] };
  const missing: string[] = [];
  let count = 1;
  let total = text.length;
  for (const asset of filesOf(plan)) {
    const bytes = await fileOf(asset);
    if (!bytes) {
      missing.push(asset.name);
      continue;
    }
    files[entryOf(asset)] = [bytes, { level: 0, mtime: NO_DAY }];
    count += 1;
    total += bytes.length;
    if (total > PACK_LIMITS.unpackedBytes)
      throw new PackFault(
        `The plan and its files have more than ${PACK_LIMITS.unpackedBytes} bytes together, a pack holds no more.`,
      );
  }
  if (count > PACK_LIMITS.files)
    throw new PackFault(
      `The plan and its files are ${count} files, a pack holds at most ${PACK_LIMITS.files}.`,
    );
  return { bytes: new Uint8Array(zipSync(files)), missing };
}
