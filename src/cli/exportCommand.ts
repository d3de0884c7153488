import type { Plan } from '../core/plan/schema/plan';
import { EXIT, type ExitCode } from './exitCodes';
import { fileBeside } from './fileBeside';
import { holdModels } from './holdModels';
import { checkOnTheClock, readInstant } from './instant';
import { refusePlanItself, writeOut } from './outFile';
import { plainText } from './plainText';
import { readPlan } from './readPlan';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

const BYTES_PER_MEGABYTE = 1e6;

/** What is written, and what it is in words. */
interface Written {
  readonly bytes: Uint8Array;
  readonly what: string;
}

/** What each option writes; each loads its writer when it is asked for. `notice` goes to the error stream. */
const WRITERS: Readonly<
  Record<
    string,
    (plan: Plan, seconds: number, planFile: string, notice: (line: string) => void) => Promise<Written>
  >
> = {
  glb: async (plan, seconds) => {
    const { planToGlb } = await import('../exchange/glb');
    return { bytes: planToGlb(plan, seconds), what: `the plan at ${seconds} s` };
  },
  usda: async (plan, seconds) => {
    const { planToUsda } = await import('../exchange/usd/usda');
    return { bytes: planToUsda(plan, seconds), what: `the plan at ${seconds} s` };
  },
  usdz: async (plan, seconds) => {
    const { planToUsdz } = await import('../exchange/usd/usdz');
    return { bytes: planToUsdz(plan, seconds), what: `the plan at ${seconds} s` };
  },
  fdl: async (plan) => {
    const { planToFdl } = await import('../exchange/fdl/fdl');
    return {
      bytes: new TextEncoder().encode(await planToFdl(plan)),
      what: `the frame lines of ${plan.setups.length} setups`,
    };
  },
  zip: async (plan, _, planFile, notice) => {
    const { writePlanPack } = await import('../exchange/planPack/write');
    const { bytes, missing } = await writePlanPack(plan, async (asset) =>
      fileBeside(asset, planFile, notice),
    );
    for (const name of missing)
      notice(`${JSON.stringify(name)} is not beside the plan, and not in the pack.`);
    return { bytes, what: 'the plan with its models and its picture' };
  },
};

/** `standclear export`: writes the plan for other programs, or with its files for somebody else. */
export async function exportCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const option = Object.keys(WRITERS).find((name) => words.has(name)) ?? '';
  const file = words.valueOf(option) ?? '';
  const at = words.valueOf('at');
  const seconds = at === null ? 0 : readInstant(at);
  refusePlanItself(option, file, words.planFile);
  const plan = readPlan(words.planFile);
  const notice = (line: string): void => printLine(terminal.err, `standclear: ${plainText(line)}`);
  if (option !== 'zip') await holdModels(plan, words.planFile, terminal);
  if (at !== null) checkOnTheClock(plan, seconds);
  const { bytes, what } = await WRITERS[option](plan, seconds, words.planFile, notice);
  writeOut(file, bytes);
  const size = (bytes.length / BYTES_PER_MEGABYTE).toFixed(2);
  printLine(terminal.out, `Wrote ${JSON.stringify(file)}: ${what}, ${size} MB.`);
  return EXIT.fine;
}
