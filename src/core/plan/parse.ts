import * as v from 'valibot';
import { failure, type Result, success } from '../units/result';
import { crossCheck } from './crossChecks';
import { fault, faultOfIssue, type PlanFault } from './faults';
import { migrate } from './migrations';
import { type Plan, plan as planSchema } from './schema/plan';

/** More text than any plan of the allowed size needs. */
const LONGEST_TEXT = 32 * 1024 * 1024;
const MOST_FAULTS = 20;

/**
 * Reads a plan from a document of any known version: migrate, check by schema, check the references.
 * Nothing is dropped or filled in: what comes out is what went in, or faults (at most 20) that say
 * where, what was found and what was expected.
 */
export function parsePlan(document: unknown): Result<Plan, PlanFault> {
  const migrated = migrate(document);
  if (!migrated.ok) return migrated;
  const parsed = v.safeParse(planSchema, migrated.value);
  if (!parsed.success) {
    return failure(parsed.issues.slice(0, MOST_FAULTS).map((issue) => faultOfIssue(migrated.value, issue)));
  }
  const faults = crossCheck(parsed.output);
  return faults.length > 0 ? failure(faults.slice(0, MOST_FAULTS)) : success(parsed.output);
}

/** Reads a plan from the text of a file. */
export function parsePlanText(text: string): Result<Plan, PlanFault> {
  if (text.length > LONGEST_TEXT) {
    return failure([fault('The file', `${text.length} characters`, `at most ${LONGEST_TEXT}`)]);
  }
  let document: unknown;
  try {
    document = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch (error) {
    const reason = error instanceof Error ? error.message : 'unreadable text';
    return failure([fault('The file', `something that is not JSON (${reason})`, 'a plan in JSON')]);
  }
  return parsePlan(document);
}
