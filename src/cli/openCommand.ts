import { mkdirSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { serialisePlan } from '../core/plan/serialise';
import { readPlanPack } from '../exchange/planPack/read';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { isPlainName } from './fileBeside';
import { fileProblem } from './fileProblem';
import { isLink, openLink } from './openLink';
import { plainText } from './plainText';
import { readFileBytes } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

/** Larger than this, no pack is read. */
const LARGEST_BYTES = 1024 * 1024 * 1024;

/** Writes a file that is not there yet. @throws CommandFault where it is, or cannot be written */
function writeNew(path: string, bytes: Uint8Array): void {
  try {
    writeFileSync(path, bytes, { flag: 'wx' });
  } catch (error) {
    const isThere = error instanceof Error && 'code' in error && error.code === 'EEXIST';
    const why = isThere ? 'there is a file of that name, which is left alone' : fileProblem(error);
    throw new CommandFault(`Cannot write ${JSON.stringify(path)}: ${why}.`);
  }
}

/** `standclear open`: takes a file pack apart, the plan and its files beside each other in a folder; or reads a link. */
export async function openCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  if (isLink(words.planFile)) return openLink(words, terminal);
  const folder = words.valueOf('out');
  if (folder === null) throw new CommandFault('standclear open wants --out FOLDER for a file pack.');
  const shown = JSON.stringify(words.planFile);
  const read = await readPlanPack(readFileBytes(words.planFile, LARGEST_BYTES, 'a file pack'));
  if (!read.ok) throw new CommandFault(`${shown}: ${read.sentence}`);
  const { plan, files, missing } = read.pack;
  const notice = (line: string): void => printLine(terminal.err, `standclear: ${plainText(line)}`);
  const stem = basename(words.planFile).replace(/(\.standclear)?\.zip$/i, '');
  const planFile = join(folder, `${stem}.plan.json`);
  try {
    mkdirSync(folder, { recursive: true });
  } catch (error) {
    throw new CommandFault(`Cannot make the folder ${JSON.stringify(folder)}: ${fileProblem(error)}.`);
  }
  writeNew(planFile, new TextEncoder().encode(serialisePlan(plan)));
  let written = 0;
  for (const { asset, bytes } of files) {
    if (isPlainName(asset.name)) {
      writeNew(join(folder, asset.name), bytes);
      written += 1;
    } else notice(`${JSON.stringify(asset.name)} is no name for a file, and was not written.`);
  }
  for (const name of missing) notice(`${JSON.stringify(name)} is not in the pack.`);
  const beside = written === 0 ? '' : ` and ${written} ${written === 1 ? 'file' : 'files'} beside it`;
  printLine(terminal.out, `Wrote ${JSON.stringify(planFile)}${beside}.`);
  return EXIT.fine;
}
