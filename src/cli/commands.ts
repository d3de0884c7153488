/** An option of a command. One with a `value` takes one more word. */
export interface OptionRule {
  readonly name: string;
  readonly value?: string;
  /** One letter that may stand for the name, behind one dash. */
  readonly short?: string;
  readonly summary: string;
  /** May be given more than once. */
  readonly many?: boolean;
  readonly required?: boolean;
}

/** A command: its name, what it is for, its options. */
export interface CommandRule {
  readonly name: string;
  readonly summary: string;
  readonly options: readonly OptionRule[];
  /** Names of options that shut each other out. */
  readonly oneOf?: readonly string[];
  /** One of those has to be given. */
  readonly needsOne?: boolean;
  /** What it reads where that is no plan. */
  readonly reads?: string;
  /** How many files it reads, one where left out. */
  readonly files?: 2;
}

const setup: OptionRule = {
  name: 'setup',
  value: 'ID',
  many: true,
  summary: 'only this setup, by its id or letter; give it again for more',
};

const at = (summary: string): OptionRule => ({ name: 'at', value: 'SECONDS', summary });

/** Every command. The help, the reading of options and the tests all go by this table. */
export const COMMANDS = [
  {
    name: 'report',
    summary: 'What each setup sees: a table to read, or JSON or CSV for other programs.',
    options: [
      { name: 'json', summary: 'the whole report as one JSON document, numbers not rounded' },
      { name: 'csv', summary: 'one line for each item in each setup' },
      setup,
      at('one instant on the clock of the action in place of the whole span'),
    ],
    oneOf: ['json', 'csv'],
  },
  {
    name: 'check',
    summary: 'Answers 1 when something that should keep out shows, or something that must show never does.',
    options: [
      setup,
      { name: 'strict', summary: 'count what is only lost in the dark too, which else is a warning' },
    ],
  },
  {
    name: 'export',
    summary: 'Writes the plan for other programs, or with all of its files for somebody else.',
    options: [
      { name: 'glb', value: 'OUT', summary: 'a binary glTF 2.0 file with parts, cameras and lamps' },
      {
        name: 'usda',
        value: 'OUT',
        summary: 'the same as a USD stage in text, with the moves of the cameras',
      },
      { name: 'usdz', value: 'OUT', summary: 'that stage as a package' },
      { name: 'fdl', value: 'OUT', summary: 'every setup’s frame lines as a framing decision list' },
      { name: 'zip', value: 'OUT', summary: 'the plan with its models and its picture in one file' },
      at('the instant on the clock of the action, 0 where left out'),
    ],
    oneOf: ['glb', 'usda', 'usdz', 'fdl', 'zip'],
    needsOne: true,
  },
  {
    name: 'open',
    summary: 'Gives the plan of a link, or takes a file pack apart: the plan, its models and its picture.',
    reads: 'LINK|PACK',
    options: [
      {
        name: 'out',
        value: 'OUT',
        short: 'o',
        summary: 'the plan to write, printed where left out; of a pack the folder; -o for short',
      },
    ],
  },
  {
    name: 'clear',
    summary: 'Says where on the decks a stand stays clear of the setups, over their whole spans.',
    options: [
      { name: 'height', value: 'METRES', required: true, summary: 'how tall the stand is' },
      setup,
      {
        name: 'setups',
        value: 'A,C',
        summary: 'the same for several, by their letters or ids; all of them where left out',
      },
      { name: 'step', value: 'SIDE', summary: 'side of the squares that are asked, 0.25 where left out' },
      { name: 'json', summary: 'the squares row by row as one JSON document, numbers not rounded' },
      { name: 'png', value: 'OUT', summary: 'writes a picture from above, the worse the darker' },
    ],
    oneOf: ['json', 'png'],
  },
  {
    name: 'solve',
    summary: 'Looks for the least change that clears all setups, and writes the plan so changed.',
    options: [
      {
        name: 'move',
        value: 'ID,ID',
        many: true,
        summary: 'only these may move; all unlocked gear that should keep out where left out',
      },
      { name: 'out', value: 'OUT', short: 'o', required: true, summary: 'the plan to write; -o for short' },
      {
        name: 'stops',
        value: 'STOPS',
        summary: 'how far lamps may change on whom they light, 0.5 where left out',
      },
      { name: 'degrees', value: 'DEGREES', summary: 'how far their light may turn there, 15 where left out' },
      {
        name: 'json',
        summary: 'what changes and what is in the way as one JSON document',
      },
    ],
  },
  {
    name: 'power',
    summary: 'Says what is plugged into what, what flows, what burns, and what goes dark when.',
    options: [
      { name: 'json', summary: 'the whole of it as one JSON document, numbers not rounded' },
      { name: 'csv', summary: 'one line for each supply, circuit, cable and load' },
      {
        name: 'hours',
        value: 'N',
        summary: 'how long all is on; where left out from call to wrap, else from dusk to dawn',
      },
      {
        name: 'connect',
        value: 'OUT',
        summary: 'runs a cord to all that has none, and writes the plan there',
      },
    ],
    oneOf: ['json', 'csv'],
  },
  {
    name: 'night',
    summary: 'The order of the night against dusk and dawn, whether it wraps in time, and what to pack.',
    options: [
      { name: 'json', summary: 'all of it as one JSON document, numbers not rounded' },
      { name: 'csv', summary: 'what happens when, and the packing list below it' },
      { name: 'ics', value: 'OUT', summary: 'writes a calendar file' },
      { name: 'suggest', summary: 'finds the order that costs least, and times the night in it' },
      { name: 'dark', summary: 'says too from when each thing that shows is lost in the dark' },
    ],
    oneOf: ['json', 'csv', 'ics'],
  },
  {
    name: 'pack',
    summary: 'Writes all that goes up to the roof: a PDF to print, the crew sheet as one HTML file, or both.',
    options: [
      {
        name: 'out',
        value: 'OUT',
        short: 'o',
        summary: 'the PDF file to write; -o for short',
      },
      {
        name: 'html',
        value: 'OUT',
        summary: 'the crew sheet to write: one HTML file that opens by itself, plan included',
      },
      { name: 'paper', value: 'PAPER', summary: 'a4 or letter, a4 where left out' },
      { name: 'lengths', value: 'SYSTEM', summary: 'm, or ft-in with footcandles, m where left out' },
      {
        name: 'height',
        value: 'METRES',
        summary: 'how tall the stand is that clear ground is shown for, 2.4 where left out',
      },
      {
        name: 'address',
        value: 'URL',
        summary: 'of the page that the link and its code open; no link where left out',
      },
    ],
  },
  {
    name: 'link',
    summary: 'Prints the whole plan as a link that opens it, for the crew; nothing lies on a server.',
    options: [
      { name: 'address', value: 'URL', summary: 'of the page; only what follows it where left out' },
      { name: 'qr', value: 'OUT', summary: 'writes the link as a QR code too, an SVG file' },
    ],
  },
  {
    name: 'merge',
    summary: 'Says in what two copies of a plan differ and merges them; 1 where both changed the same.',
    reads: 'MINE THEIRS',
    files: 2,
    options: [
      {
        name: 'base',
        value: 'BASE',
        summary: 'the plan that both began with: then what one alone changed is taken from that one',
      },
      {
        name: 'take',
        value: 'SIDE',
        summary: 'mine or theirs: what both changed as that one has it; without --base, everything',
      },
      { name: 'out', value: 'OUT', short: 'o', summary: 'the merged plan to write; -o for short' },
      { name: 'json', summary: 'the differences and what was chosen as one JSON document' },
    ],
  },
] as const satisfies readonly CommandRule[];

/** The commands there are. */
export type CommandName = (typeof COMMANDS)[number]['name'];
