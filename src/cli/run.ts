import { checkCommand } from './checkCommand';
import { clearCommand } from './clearCommand';
import { COMMANDS, type CommandName, type CommandRule } from './commands';
import { EXIT, type ExitCode } from './exitCodes';
import { exportCommand } from './exportCommand';
import { CommandFault } from './fault';
import { commandHelp, help } from './help';
import { linkCommand } from './linkCommand';
import { mergeCommand } from './mergeCommand';
import { nightCommand } from './nightCommand';
import { openCommand } from './openCommand';
import { packCommand } from './packCommand';
import { plainText } from './plainText';
import { powerCommand } from './powerCommand';
import { reportCommand } from './reportCommand';
import { solveCommand } from './solveCommand';
import { printLine, type Terminal } from './terminal';
import { VERSION } from './version';
import { sortWords, type Words } from './words';

const RUNNERS: Readonly<
  Record<CommandName, (words: Words, terminal: Terminal) => ExitCode | Promise<ExitCode>>
> = {
  report: reportCommand,
  check: checkCommand,
  export: exportCommand,
  open: openCommand,
  clear: clearCommand,
  solve: solveCommand,
  night: nightCommand,
  power: powerCommand,
  pack: packCommand,
  link: linkCommand,
  merge: mergeCommand,
};

const HELP = ['--help', '-h'];
const HINT = 'Type standclear --help for all commands.';

/**
 * Runs the command line.
 * @param words what was typed behind the program's name
 * @returns the exit status; faults that the person can put right are lines on the error stream; nothing is thrown
 */
export async function run(words: readonly string[], terminal: Terminal): Promise<ExitCode> {
  try {
    return await runCommand(words, terminal);
  } catch (error) {
    if (!(error instanceof CommandFault)) {
      const trace = error instanceof Error ? (error.stack ?? error.message) : String(error);
      printLine(terminal.err, `standclear: a mistake of its own, not of the plan: ${trace}`);
      return EXIT.ownMistake;
    }
    for (const line of error.lines) printLine(terminal.err, `standclear: ${plainText(line)}`);
    return EXIT.unusable;
  }
}

async function runCommand([name, ...rest]: readonly string[], terminal: Terminal): Promise<ExitCode> {
  if (name === undefined) throw new CommandFault(`Name a command. ${HINT}`);
  if (HELP.includes(name)) {
    terminal.out.write(help());
    return EXIT.fine;
  }
  if (name === '--version') {
    printLine(terminal.out, VERSION);
    return EXIT.fine;
  }
  const command = COMMANDS.find((rule) => rule.name === name);
  if (!command) {
    const known = COMMANDS.map((rule) => rule.name).join(', ');
    throw new CommandFault(`There is no command ${JSON.stringify(name)}: standclear knows ${known}. ${HINT}`);
  }
  if (rest.some((word) => HELP.includes(word))) {
    printLine(terminal.out, commandHelp(command satisfies CommandRule));
    return EXIT.fine;
  }
  return RUNNERS[command.name](sortWords(command, rest), terminal);
}
