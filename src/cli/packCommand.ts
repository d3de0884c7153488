import type { LengthSystem } from '../core/units/lengths';
import { packInputSteps, STAND_METRES } from '../exchange/pdf/packInput';
import { PAPERS, type PaperName } from '../exchange/pdf/paper';
import type { PackInput } from '../exchange/pdf/types';
import { addressOf } from './addressOption';
import { EXIT, type ExitCode } from './exitCodes';
import { CommandFault } from './fault';
import { FONT_SHELF } from './fontShelf';
import { holdModels } from './holdModels';
import { metresOf } from './lengthOption';
import { refusePlanItself, writeOut } from './outFile';
import { plainText } from './plainText';
import { withProgress } from './progress';
import { readPlan } from './readPlan';
import { readSetups } from './readSetups';
import { printLine, type Terminal } from './terminal';
import type { Words } from './words';

const BYTES_PER_MEGABYTE = 1e6;

/** The paper that was typed. @throws CommandFault where there is no such paper */
function paperOf(text: string): PaperName {
  const name = text.toLowerCase();
  if (name === 'a4' || name === 'letter') return name;
  const names = Object.keys(PAPERS).join(' or ');
  throw new CommandFault(`--paper: found ${JSON.stringify(text)}, expected ${names}.`);
}

/** How tall the stand is that was typed, metres. @throws CommandFault where it is no length above 0 */
function heightOf(text: string): number {
  const metres = metresOf('height', text);
  if (!(metres > 0))
    throw new CommandFault(`--height: found ${JSON.stringify(text)}, expected a length above 0 such as 2.4.`);
  return metres;
}

/** Which lengths were typed. @throws CommandFault where there are no such lengths */
function lengthsOf(text: string): LengthSystem {
  if (text === 'm' || text === 'ft-in') return text;
  throw new CommandFault(`--lengths: found ${JSON.stringify(text)}, expected m or ft-in.`);
}

/** `standclear pack`: all that goes up to the roof, as a PDF file, as one HTML file, or both. */
export async function packCommand(words: Words, terminal: Terminal): Promise<ExitCode> {
  const pdfFile = words.valueOf('out');
  const htmlFile = words.valueOf('html');
  if (pdfFile === null && htmlFile === null)
    throw new CommandFault('pack: found neither --out nor --html, expected a file to write.');
  const paper = paperOf(words.valueOf('paper') ?? 'a4');
  const lengths = lengthsOf(words.valueOf('lengths') ?? 'm');
  const typedPage = words.valueOf('address');
  const page = typedPage === null ? {} : { address: addressOf(typedPage) };
  const typed = words.valueOf('height');
  const heightMetres = typed === null ? STAND_METRES : heightOf(typed);
  if (pdfFile !== null) refusePlanItself('out', pdfFile, words.planFile);
  if (htmlFile !== null) refusePlanItself('html', htmlFile, words.planFile);
  const plan = readPlan(words.planFile);
  const models = await holdModels(plan, words.planFile, terminal);
  const report = await readSetups(plan, models, plan.setups, null, terminal);
  const steps = packInputSteps(plan, report, { paper, lengths, heightMetres, ...page });
  const input = withProgress(steps, terminal, (progress, share) =>
    progress.say(`Looking for clear ground: ${Math.floor(100 * share)} %`),
  );
  if (pdfFile !== null) await writePdf(pdfFile, input, terminal);
  if (htmlFile !== null) await writeHtml(htmlFile, input, terminal);
  return EXIT.fine;
}

const megabytes = (bytes: Uint8Array): string => `${(bytes.length / BYTES_PER_MEGABYTE).toFixed(2)} MB`;

async function writePdf(file: string, input: PackInput, terminal: Terminal): Promise<void> {
  const { packPdf } = await import('../exchange/pdf/pack');
  const { bytes, pages, notes } = await packPdf(input, FONT_SHELF);
  writeOut(file, bytes);
  for (const note of notes) printLine(terminal.err, `standclear: ${plainText(note)}`);
  printLine(terminal.out, `Wrote ${JSON.stringify(file)}: ${pages} pages, ${megabytes(bytes)}.`);
}

async function writeHtml(file: string, input: PackInput, terminal: Terminal): Promise<void> {
  const { crewFileOf } = await import('../exchange/html/crewFile');
  const bytes = new TextEncoder().encode(crewFileOf(input));
  writeOut(file, bytes);
  printLine(
    terminal.out,
    `Wrote ${JSON.stringify(file)}: the crew sheet without pictures, ${megabytes(bytes)}.`,
  );
}
