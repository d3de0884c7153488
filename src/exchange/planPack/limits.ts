/** What a file pack may be: more is a mistake, or somebody who means harm. */
export const PACK_LIMITS = {
  /** The pack itself, bytes. */
  packBytes: 1024 * 1024 * 1024,
  /** All of its files together, unpacked, bytes. */
  unpackedBytes: 1024 * 1024 * 1024,
  /** The plan, unpacked, bytes. */
  planBytes: 64 * 1024 * 1024,
  files: 200,
  /** How many times larger a file may be than what is packed of it. */
  ratio: 100,
} as const;

/** What the plan is called in a pack, and the folder of what it names. */
export const PLAN_ENTRY = 'plan.json';
export const FILES_FOLDER = 'files/';
