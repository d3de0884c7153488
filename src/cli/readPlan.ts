import { readFileSync, statSync } from 'node:fs';
import { parsePlanText } from '../core/plan/parse';
import type { Plan } from '../core/plan/schema/plan';
import { CommandFault } from './fault';
import { fileProblem } from './fileProblem';

/** Larger than any plan; a film opened by mistake should not be read first. */
const LARGEST_BYTES = 64 * 1024 * 1024;

/** Reads a plan file. @throws CommandFault with a line for each thing that is wrong */
export function readPlan(file: string): Plan {
  const shown = JSON.stringify(file);
  let text: string;
  try {
    const found = statSync(file);
    if (found.isDirectory()) throw new CommandFault(`${shown} is a folder, expected a plan file.`);
    if (found.size > LARGEST_BYTES) {
      throw new CommandFault(
        `${shown} has ${found.size} bytes, expected a plan of at most ${LARGEST_BYTES}.`,
      );
    }
    text = readFileSync(file, 'utf8');
  } catch (error) {
    if (error instanceof CommandFault) throw error;
    throw new CommandFault(`Cannot read ${shown}: ${fileProblem(error)}.`);
  }
  const parsed = parsePlanText(text);
  if (!parsed.ok) throw new CommandFault(...parsed.faults.map(({ sentence }) => `${shown}: ${sentence}`));
  return parsed.value;
}
