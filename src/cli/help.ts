import { COMMANDS, type CommandRule, type OptionRule } from './commands';

/** An option as it is typed: `--at SECONDS`. */
export const spelledOption = (option: OptionRule): string =>
  `--${option.name}${option.value ? ` ${option.value}` : ''}`;

/** The line that shows how a command is typed, such as `standclear check PLAN [--setup ID]`. */
export function usageOf(command: CommandRule): string {
  const words: string[] = [];
  if (command.oneOf) words.push(`[${command.oneOf.map((name) => `--${name}`).join('|')}]`);
  for (const option of command.options) {
    if (command.oneOf?.includes(option.name)) continue;
    words.push(option.required ? spelledOption(option) : `[${spelledOption(option)}]`);
  }
  return ['standclear', command.name, 'PLAN', ...words].join(' ');
}

function optionLines(command: CommandRule): string[] {
  const width = Math.max(...command.options.map((option) => spelledOption(option).length));
  return command.options.map((option) => `      ${spelledOption(option).padEnd(width)}  ${option.summary}`);
}

/** The help of one command, lines below each other. */
export function commandHelp(command: CommandRule): string {
  return [`  ${usageOf(command)}`, `    ${command.summary}`, ...optionLines(command)].join('\n');
}

/** The help of the whole command line. */
export function help(): string {
  return [
    'Standclear reads a plan of a night on a rooftop and says what each camera setup sees.',
    '',
    ...COMMANDS.flatMap((command) => [commandHelp(command), '']),
    '  standclear --help, standclear --version',
    '',
    'PLAN is a *.plan.json file. In a clone, type npm run -s standclear -- in place of standclear.',
    'Exit status: 0 fine, 1 the check failed, 2 a word of the command or a file is at fault,',
    '3 a mistake of the program itself.',
    '',
  ].join('\n');
}
