import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { CommandFault } from './fault';
import { fileProblem } from './fileProblem';

/** Refuses to write over the plan. @throws CommandFault that names the option */
export function refusePlanItself(option: string, file: string, planFile: string): void {
  if (resolve(file) === resolve(planFile))
    throw new CommandFault(
      `--${option} names the plan itself, ${JSON.stringify(file)}: expected another file.`,
    );
}

/** Writes a file. @throws CommandFault that says why it cannot be written */
export function writeOut(file: string, bytes: Uint8Array): void {
  try {
    writeFileSync(file, bytes);
  } catch (error) {
    throw new CommandFault(`Cannot write ${JSON.stringify(file)}: ${fileProblem(error)}.`);
  }
}
