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
  // One fault a value: what is not finite is not out of range as well.
  const parsed = v.safeParse(planSchema, migrated.value, { abortPipeEarly: true });
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
  // Some editors begin a file with a byte order mark.
  const json = text.charCodeAt(0) === 0xfeff ? text.slice(1) : text;
  let document: unknown;
  try {
    document = JSON.parse(json);
  } catch (error) {
    return failure([fault('The file', whatItIs(json, error), 'a plan in JSON')]);
  }
  return parsePlan(document);
}

/** Characters that bytes of a picture or a film turn into; they are no text that anybody could read here. */
const NO_TEXT = /(?![\t\n\r])\p{Cc}|\ufffd/u;
const BEGINNING = 64;

/** What a file is that holds no JSON, in one line: the engine quotes the text around the mistake, line feeds and all. */
function whatItIs(json: string, error: unknown): string {
  if (json.trim() === '') return json === '' ? 'nothing at all' : 'nothing but blanks';
  if (NO_TEXT.test(json.slice(0, BEGINNING))) return 'something that is not text';
  const reason = error instanceof Error ? error.message.replace(/[\s\p{Cc}]+/gu, ' ') : 'unreadable text';
  return `something that is not JSON (${reason})`;
}
