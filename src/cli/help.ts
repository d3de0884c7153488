import { COMMANDS, type CommandRule, type OptionRule } from './commands';

/** An option as it is typed: `--at SECONDS`. */
export const spelledOption = (option: OptionRule): string =>
  `--${option.name}${option.value ? ` ${option.value}` : ''}`;

/** The line that shows how a command is typed, such as `standclear check PLAN [--setup ID]`. */
export function usageOf(command: CommandRule): string {
  const words: string[] = [];
  const rivals = command.options.filter(({ name }) => command.oneOf?.includes(name));
  const choice = rivals.map(spelledOption).join('|');
  if (rivals.length > 0) words.push(command.needsOne ? `(${choice})` : `[${choice}]`);
  for (const option of command.options) {
    if (command.oneOf?.includes(option.name)) continue;
    words.push(option.required ? spelledOption(option) : `[${spelledOption(option)}]`);
  }
  return ['standclear', command.name, command.reads ?? 'PLAN', ...words].join(' ');
}

function optionLines(command: CommandRule): string[] {
  const width = Math.max(...command.options.map((option) => spelledOption(option).length));
  return command.options.map((option) => `      ${spelledOption(option).padEnd(width)}  ${option.summary}`);
}

/** The widest line of the help, letters. */
const WIDEST = 100;

/** A usage that is too long for one line goes on below, between two of its words. */
function usageLines(command: CommandRule): string[] {
  const lines = [''];
  for (const word of `  ${usageOf(command)}`.split(/ (?=[[(])/)) {
    const last = lines[lines.length - 1];
    const longer = last === '' ? word : `${last} ${word}`;
    if (longer.length <= WIDEST) lines[lines.length - 1] = longer;
    else lines.push(`      ${word}`);
  }
  return lines;
}

/** The help of one command, lines below each other. */
export function commandHelp(command: CommandRule): string {
  return [...usageLines(command), `    ${command.summary}`, ...optionLines(command)].join('\n');
}

/** The help of the whole command line. */
export function help(): string {
  return [
    'Standclear reads a plan of a night on a rooftop and says what each camera setup sees.',
    '',
    ...COMMANDS.flatMap((command) => [commandHelp(command), '']),
    '  standclear --help, standclear --version',
    '',
    'PLAN is a *.plan.json file, PACK a *.standclear.zip file; MINE, THEIRS and BASE are plans or links.',
    'In a clone, type npm run -s standclear -- in place of standclear.',
    'Exit status: 0 fine, 1 the check failed, 2 a word of the command or a file is at fault,',
    '3 a mistake of the program itself.',
    '',
  ].join('\n');
}
