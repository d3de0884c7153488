import { PDFDocument } from '@cantoo/pdf-lib';
import type { Plan } from '../../core/plan/schema/plan';
import { setupLetter } from '../../core/plan/setupLetter';
import { withNames } from '../../core/plan/withNames';
import { Lettering } from './lettering';
import { FootMark } from './link/footMark';
import { noCodeWords } from './link/packLink';
import { type OutlineEntry, putOutline } from './outline';
import { PAPERS } from './paper';
import { cautionsPart } from './parts/cautions';
import { type Contents, coverPart } from './parts/cover';
import { groundPart } from './parts/ground';
import { lightPart } from './parts/light';
import { nightPart, timeLine } from './parts/night';
import { notesPart } from './parts/notes';
import { overheadPart } from './parts/overhead';
import { packingPart } from './parts/packing';
import { powerPart } from './parts/power';
import { setupPart } from './parts/setup';
import { standingPart } from './parts/standing';
import type { FontShelf } from './scripts/families';
import type { Pack, PackInput } from './types';
import { Writer } from './writer';

const SETUPS = 'Setups';

/** What is told of letters that could not be printed. */
function missingWords(missing: readonly string[]): string {
  const named = missing.slice(0, 12).map((letter) => {
    const code = (letter.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0');
    return `U+${code}`;
  });
  const more = missing.length > named.length ? ` and ${missing.length - named.length} more` : '';
  const letters = missing.length === 1 ? 'One letter is' : `${missing.length} letters are`;
  return `${letters} in no font of the pack and printed as a question mark: ${named.join(', ')}${more}.`;
}

/** What the plan calls things by. */
const namesIn = ({ title, place, kit, pieces, cast, gear, beats, setups, probes = [] }: Plan): string[] => [
  title,
  place.label,
  ...[kit.lenses, kit.bodies, pieces, cast, gear, beats, setups, probes].flatMap((all) =>
    all.map(({ label }: { readonly label: string }) => label),
  ),
];

/** What stands beside the code on every page; where there is none, by what the plan is known all the same. */
function markWords({ link, fingerprint }: PackInput): readonly string[] {
  if (!link) return [];
  const opens = 'Press here to open the crew sheet of this night';
  return link.code
    ? [`${opens}, or read the code.`, `Plan ${fingerprint}.`]
    : [`${noCodeWords(link)} ${opens}. Plan ${fingerprint}.`];
}

/** The parts as a reader lists them, the setups below theirs. */
const outlineOf = ({ plan }: PackInput, { parts, setups }: Contents): readonly OutlineEntry[] => [
  { name: 'Cover', page: 1 },
  ...parts.map(({ name, page }) => ({
    name,
    page,
    ...(name === SETUPS && {
      below: plan.setups.map((setup, place) => ({
        name: `${setupLetter(place)}  ${setup.label}`,
        page: setups.get(setup.id) ?? page,
      })),
    }),
  })),
];

/**
 * The pack: all of a plan that goes up to the roof, as a PDF file with text that can be searched and fonts inside. The
 * same plan gives the same bytes: the file's dates are the plan's.
 * @param shelf where fonts are for scripts that the pack's own have no letters of; without it those are question marks
 * Source: [pdf]
 */
export async function packPdf(asked: PackInput, shelf: FontShelf | null = null): Promise<Pack> {
  const input = { ...asked, plan: withNames(asked.plan) };
  const { plan, paper } = input;
  const document = await PDFDocument.create({ updateMetadata: false });
  const text = JSON.stringify(plan);
  const scripts = shelf && { text, timeZone: plan.place.timeZone, shelf };
  const letters = await Lettering.of(document, scripts, namesIn(plan));
  const mark = input.link ? new FootMark(document, input.link) : null;
  const writer = new Writer(document, letters, { paper: PAPERS[paper], mark, markWords: markWords(input) });
  const contents: Contents = { parts: [], setups: new Map() };
  const begin = (name: string, write: (part: string) => void): void => {
    const page = writer.pageNumber + 1;
    write(name);
    if (writer.pageNumber >= page) contents.parts.push({ name, page });
  };

  coverPart(writer, input, contents, mark);
  begin('Overhead', (part) => overheadPart(writer, input, part));
  if (plan.setups.length > 0) contents.parts.push({ name: SETUPS, page: writer.pageNumber + 1 });
  for (const setup of plan.setups) {
    contents.setups.set(setup.id, writer.pageNumber + 1);
    await setupPart(writer, input, setup, `Setup ${setupLetter(plan.setups.indexOf(setup))}`);
  }
  begin('Clear ground', (part) => groundPart(writer, input, part));
  begin('Where things stand', (part) => standingPart(writer, input, part));
  begin('Light', (part) => lightPart(writer, input, part));
  begin('Power', (part) => powerPart(writer, input, part));
  begin('Order of the night', (part) => nightPart(writer, input, part, (night) => timeLine(writer, night)));
  begin('Packing', (part) => packingPart(writer, input, part));
  begin('Cautions', (part) => cautionsPart(writer, input, part));
  begin('Notes on the plan', (part) => notesPart(writer, input, part));

  writer.finish(plan.title, plan.place.date);
  putOutline(document, outlineOf(input, contents));
  const notes = letters.missing.length > 0 ? [missingWords(letters.missing)] : [];
  if (notes.length > 0) writer.footOfCover(notes[0]);
  letters.finish();
  const day = new Date(`${plan.place.date}T00:00:00Z`);
  document.setTitle(plan.title, { showInWindowTitleBar: true });
  document.setLanguage('en-GB');
  document.setProducer('Standclear');
  document.setCreator('Standclear');
  document.setCreationDate(day);
  document.setModificationDate(day);
  const bytes = Uint8Array.from(await document.save());
  return { bytes, pages: writer.pageNumber, notes };
}
