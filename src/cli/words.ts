import { anyOf } from '../core/plan/schema/texts';
import type { CommandRule, OptionRule } from './commands';
import { CommandFault } from './fault';
import { spelledOption } from './help';

/** The words of one command, sorted out. */
export interface Words {
  readonly planFile: string;
  /** The second file of a command that reads two; an empty text where it reads one. */
  readonly second: string;
  /** Whether an option was given. */
  readonly has: (name: string) => boolean;
  /** The value of an option, null where it was not given. */
  readonly valueOf: (name: string) => string | null;
  /** The values of an option that may be given more than once. */
  readonly valuesOf: (name: string) => readonly string[];
}

const NONE: readonly string[] = [];

/** Sorts the words behind a command's name by its rule. @throws CommandFault for words that the rule does not have */
export function sortWords(command: CommandRule, words: readonly string[]): Words {
  const given = new Map<string, string[]>();
  const files: string[] = [];
  let onlyFiles = false;
  for (let place = 0; place < words.length; place += 1) {
    const word = words[place];
    if (onlyFiles || !word.startsWith('-') || word === '-') files.push(word);
    else if (word === '--') onlyFiles = true;
    else {
      const [name, ...rest] = word.replace(/^--?/, '').split('=');
      const option = ruleOf(command, word, name);
      const values = given.get(option.name) ?? [];
      if (values.length > 0 && !option.many) throw new CommandFault(`--${option.name} is given twice.`);
      if (!option.value) {
        if (rest.length > 0) throw new CommandFault(`--${option.name} takes no value.`);
        values.push('');
      } else {
        if (rest.length === 0) place += 1;
        const value = rest.length > 0 ? rest.join('=') : words[place];
        if (value === undefined || value === '')
          throw new CommandFault(`--${option.name} wants ${option.value} behind it.`);
        values.push(value);
      }
      given.set(option.name, values);
    }
  }
  for (const option of command.options) {
    if (option.required && !given.has(option.name)) {
      throw new CommandFault(`standclear ${command.name} wants ${spelledOption(option)}.`);
    }
  }
  const rivals = (command.oneOf ?? NONE).filter((name) => given.has(name));
  if (rivals.length > 1) throw new CommandFault(`Give either --${rivals.join(' or --')}, not both.`);
  if (command.needsOne && rivals.length === 0) {
    const choice = command.options.filter(({ name }) => command.oneOf?.includes(name)).map(spelledOption);
    throw new CommandFault(`standclear ${command.name} wants ${anyOf(choice)}.`);
  }
  if (files.length === 0)
    throw new CommandFault(
      `Name a ${command.reads ? 'file' : 'plan'}: standclear ${command.name} ${command.reads ?? 'PLAN'}.`,
    );
  const most = command.files ?? 1;
  if (files.length < most) {
    throw new CommandFault(`standclear ${command.name} reads two plans: ${command.reads ?? 'PLAN'}.`);
  }
  if (files.length > most) {
    throw new CommandFault(
      `standclear ${command.name} reads ${most === 1 ? 'one plan' : 'two plans'}, found ${files.map((file) => JSON.stringify(file)).join(', ')}.`,
    );
  }
  return {
    planFile: files[0],
    second: files[1] ?? '',
    has: (name) => given.has(name),
    valueOf: (name) => given.get(name)?.[0] ?? null,
    valuesOf: (name) => given.get(name) ?? NONE,
  };
}

function ruleOf(command: CommandRule, word: string, name: string): OptionRule {
  const option = command.options.find((rule) =>
    word.startsWith('--') ? rule.name === name : rule.short === name,
  );
  if (option) return option;
  const known = command.options.map((rule) => `--${rule.name}`).join(', ');
  throw new CommandFault(
    `Unknown option ${JSON.stringify(word)}: standclear ${command.name} knows ${known}.`,
  );
}
