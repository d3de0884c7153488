import { writeFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { planToGlb } from '../exchange/glb';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { fileProblem } from './fileProblem';
import { holdModels } from './holdModels';
import { checkOnTheClock, readInstant } from './instant';
import { readPlan } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

const BYTES_PER_MEGABYTE = 1e6;

/** `standclear export`: writes the plan at one instant as a binary glTF file. */
export async function exportCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const file = words.valueOf('glb') ?? '';
  const at = words.valueOf('at');
  const seconds = at === null ? 0 : readInstant(at);
  if (resolve(file) === resolve(words.planFile)) {
    throw new CommandFault(`--glb names the plan itself, ${JSON.stringify(file)}: expected another file.`);
  }
  const plan = readPlan(words.planFile);
  await holdModels(plan, words.planFile, terminal);
  if (at !== null) checkOnTheClock(plan, seconds);
  const glb = planToGlb(plan, seconds);
  try {
    writeFileSync(file, glb);
  } catch (error) {
    throw new CommandFault(`Cannot write ${JSON.stringify(file)}: ${fileProblem(error)}.`);
  }
  const size = (glb.length / BYTES_PER_MEGABYTE).toFixed(2);
  printLine(terminal.out, `Wrote ${JSON.stringify(file)}: the plan at ${seconds} s, ${size} MB.`);
  return EXIT.fine;
}
