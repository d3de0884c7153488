/** An option of a command. One with a `value` takes one more word. */
export interface OptionRule {
  readonly name: string;
  readonly value?: string;
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
}

const setup: OptionRule = {
  name: 'setup',
  value: 'ID',
  many: true,
  summary: 'only this setup; give it again for more',
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
    options: [setup],
  },
  {
    name: 'export',
    summary: 'Writes the plan at one instant for other programs.',
    options: [
      {
        name: 'glb',
        value: 'OUT',
        required: true,
        summary: 'a binary glTF 2.0 file with parts, cameras and lamps',
      },
      at('the instant on the clock of the action, 0 where left out'),
    ],
  },
] as const satisfies readonly CommandRule[];

/** The commands there are. */
export type CommandName = (typeof COMMANDS)[number]['name'];
