import { quoteFound } from '../../core/plan/faults';
import { parsePlanText } from '../../core/plan/parse';
import type { Asset } from '../../core/plan/schema/asset';
import type { Plan } from '../../core/plan/schema/plan';
import { sha256Of } from '../sha256';
import { filesOf } from './assetsIn';
import { readDirectory } from './directory';
import { FILES_FOLDER, PACK_LIMITS, PLAN_ENTRY } from './limits';
import { PackFault } from './packFault';
import { unpackEntry } from './unpack';
import { entryOf } from './write';

/** A file that a plan names, out of its pack. */
export interface PackedFile {
  readonly asset: Asset;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

/** What a pack holds. */
export interface ReadPack {
  readonly plan: Plan;
  readonly files: readonly PackedFile[];
  /** Names of files that the plan names and the pack does not have. */
  readonly missing: readonly string[];
}

/** A pack, or why it is none: one sentence. */
export type PackReading =
  | { readonly ok: true; readonly pack: ReadPack }
  | { readonly ok: false; readonly sentence: string };

/**
 * Reads a file pack from bytes that nobody vouches for; never throws. Its directory is held to the limits first; a file
 * is unpacked only where the plan names it, no further than it may be, and taken only with the very contents that the
 * plan names. What belongs to no plan makes it no pack.
 */
export async function readPlanPack(zip: Uint8Array): Promise<PackReading> {
  try {
    return { ok: true, pack: await readPack(zip) };
  } catch (error) {
    if (error instanceof PackFault) return { ok: false, sentence: error.message };
    const reason = error instanceof Error ? error.message : 'no reason is given';
    return { ok: false, sentence: `The pack cannot be read: ${reason.replace(/\.?$/, '.')}` };
  }
}

async function readPack(zip: Uint8Array): Promise<ReadPack> {
  if (zip.length > PACK_LIMITS.packBytes)
    throw new PackFault(`The pack has ${zip.length} bytes, expected at most ${PACK_LIMITS.packBytes}.`);
  const entries = new Map(readDirectory(zip).map((entry) => [entry.name, entry]));
  const own = entries.get(PLAN_ENTRY);
  if (!own) throw new PackFault(`The pack has no ${PLAN_ENTRY}: it holds no plan.`);
  if (own.bytes > PACK_LIMITS.planBytes)
    throw new PackFault(`${PLAN_ENTRY} has ${own.bytes} bytes, expected at most ${PACK_LIMITS.planBytes}.`);
  const parsed = parsePlanText(new TextDecoder().decode(unpackEntry(zip, own)));
  if (!parsed.ok) throw new PackFault(`${PLAN_ENTRY} in the pack: ${parsed.faults[0].sentence}`);
  const plan = parsed.value;
  const assets = filesOf(plan);
  const known = new Set([PLAN_ENTRY, ...assets.map(entryOf)]);
  for (const name of entries.keys())
    if (!known.has(name))
      throw new PackFault(
        `The pack has a file called ${quoteFound(name)}, which its plan does not name. Expected ${PLAN_ENTRY} and ${FILES_FOLDER}.`,
      );

  const files: PackedFile[] = [];
  const missing: string[] = [];
  for (const asset of assets) {
    const entry = entries.get(entryOf(asset));
    if (!entry) {
      missing.push(asset.name);
      continue;
    }
    if (entry.bytes !== asset.bytes)
      throw new PackFault(
        `${JSON.stringify(asset.name)} in the pack has ${entry.bytes} bytes, the plan says ${asset.bytes}.`,
      );
    const bytes = unpackEntry(zip, entry);
    if ((await sha256Of(bytes)) !== asset.sha256)
      throw new PackFault(
        `${JSON.stringify(asset.name)} in the pack is another file than the one that the plan was made with.`,
      );
    files.push({ asset, bytes });
  }
  return { plan, files, missing };
}
