import { failure, type Result, success } from '../units/result';
import { fault, type PlanFault, quoteFound } from './faults';
import { PLAN_VERSION } from './schema/version';

/** Turns the document of one version into that of the next. It may trust nothing about its input but the version. */
export type Migration = (document: Readonly<Record<string, unknown>>) => Record<string, unknown>;

/** Key n turns a plan of version n into one of version n + 1. Version 1 is the first. */
export const MIGRATIONS: ReadonlyMap<number, Migration> = new Map();

/**
 * Brings a document of any known version to `newest`, one version at a time; the schema checks it afterwards.
 * A document without a version, or from a newer program, is a fault.
 */
export function migrate(
  document: unknown,
  migrations: ReadonlyMap<number, Migration> = MIGRATIONS,
  newest: number = PLAN_VERSION,
): Result<unknown, PlanFault> {
  if (document === null || typeof document !== 'object' || Array.isArray(document)) {
    return failure([fault('The plan', quoteFound(document), 'an object that starts with {"standclear": 1')]);
  }
  let current: Record<string, unknown> = { ...document };
  const version = current.standclear;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return failure([
      fault(
        'standclear',
        quoteFound(version),
        newest === 1 ? 'the version of the plan, 1' : `the version of the plan, 1 to ${newest}`,
      ),
    ]);
  }
  if (version > newest) {
    return failure([
      fault(
        'standclear',
        `version ${version}`,
        `at most ${newest}: this plan comes from a newer Standclear, open it there`,
      ),
    ]);
  }
  for (let step = version; step < newest; step += 1) {
    const migration = migrations.get(step);
    if (!migration) throw new Error(`migrate: no migration from version ${step}`);
    current = { ...migration(current), standclear: step + 1 };
  }
  return success(current);
}
