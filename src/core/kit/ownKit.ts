import * as v from 'valibot';
import { fault, faultOfIssue, type PlanFault } from '../plan/faults';
import { type Body, body, type Lens, lens } from '../plan/schema/kit';
import { failure, type Result, success } from '../units/result';

/** The bodies and lenses that a person keeps for all plans. */
export interface OwnKit {
  readonly bodies: readonly Body[];
  readonly lenses: readonly Lens[];
}

/** The version that this program writes. */
export const KIT_VERSION = 1;
export const MOST_OWN = { bodies: 100, lenses: 400 } as const;
const MOST_FAULTS = 20;

const document = v.strictObject({
  standclearKit: v.literal(KIT_VERSION, `version ${KIT_VERSION}`),
  bodies: v.pipe(v.array(body), v.maxLength(MOST_OWN.bodies, `at most ${MOST_OWN.bodies} bodies`)),
  lenses: v.pipe(v.array(lens), v.maxLength(MOST_OWN.lenses, `at most ${MOST_OWN.lenses} lenses`)),
});

/** A kept kit as the text of a file, in JSON. */
export const ownKitText = ({ bodies, lenses }: OwnKit): string =>
  `${JSON.stringify({ standclearKit: KIT_VERSION, bodies, lenses }, null, 2)}\n`;

/** Reads a kept kit from the text of a file. What is not as the schema has it is a fault with its place; at most 20. */
export function readOwnKit(text: string): Result<OwnKit, PlanFault> {
  let found: unknown;
  try {
    found = JSON.parse(text.charCodeAt(0) === 0xfeff ? text.slice(1) : text);
  } catch {
    return failure([
      fault('The file', text.trim() === '' ? 'nothing' : 'something that is not JSON', 'a kit in JSON'),
    ]);
  }
  const parsed = v.safeParse(document, found, { abortPipeEarly: true });
  if (!parsed.success)
    return failure(parsed.issues.slice(0, MOST_FAULTS).map((issue) => inKit(faultOfIssue(found, issue))));
  const { bodies, lenses } = parsed.output;
  const faults = [
    ...doubles('bodies', bodies),
    ...bodies.flatMap(({ modes }, at) => doubles(`bodies[${at}].modes`, modes)),
    ...doubles('lenses', lenses),
    ...lenses.flatMap(stopFaults),
  ];
  return faults.length > 0 ? failure(faults.slice(0, MOST_FAULTS)) : success({ bodies, lenses });
}

/** Faults are worded for plans; this document is none. */
function inKit({ where, found, expected }: PlanFault): PlanFault {
  return fault(
    where === 'The plan' ? 'The file' : where,
    found.replace('a plan does not', 'a kit does not'),
    where === 'The plan' ? 'a kit in JSON' : expected,
  );
}

function doubles(where: string, entries: readonly { readonly id: string }[]): PlanFault[] {
  const seen = new Set<string>();
  return entries.flatMap(({ id }, at) => {
    if (seen.has(id)) return [fault(`${where}[${at}].id`, JSON.stringify(id), 'an id of its own')];
    seen.add(id);
    return [];
  });
}

function stopFaults({ label, widestStop, narrowestStop }: Lens): PlanFault[] {
  if (narrowestStop >= widestStop) return [];
  return [
    fault(
      `narrowestStop of ${JSON.stringify(label)}`,
      String(narrowestStop),
      `${widestStop} or more, the widest`,
    ),
  ];
}
