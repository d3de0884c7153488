import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../../src/cli/commands';
import { help, usageOf } from '../../../src/cli/help';
import { sortWords } from '../../../src/cli/words';

const [report, check, exporting] = COMMANDS;

describe('sortWords', () => {
  test('takes options before and behind the plan, with a space or an equals sign', () => {
    const words = sortWords(report, ['--setup', 'a', 'roof.plan.json', '--at=-1.5', '--setup=b=c', '--json']);
    expect(words.planFile).toBe('roof.plan.json');
    expect(words.valuesOf('setup')).toEqual(['a', 'b=c']);
    expect(words.valueOf('at')).toBe('-1.5');
    expect(words.has('json')).toBe(true);
    expect(words.has('csv')).toBe(false);
    expect(words.valueOf('csv')).toBe(null);
  });

  test('takes a minus sign as part of a value', () => {
    expect(sortWords(report, ['p', '--at', '-2']).valueOf('at')).toBe('-2');
  });

  test('takes everything behind -- for a file', () => {
    expect(sortWords(check, ['--', '--odd.json']).planFile).toBe('--odd.json');
  });

  test.each([
    [report, ['p', '--jsn'], 'Unknown option "--jsn": standclear report knows --json, --csv, --setup, --at.'],
    [report, ['p', '-j'], 'Unknown option "-j"'],
    [report, ['p', '--at'], '--at wants SECONDS behind it.'],
    [report, ['p', '--at='], '--at wants SECONDS behind it.'],
    [report, ['p', '--at', '1', '--at', '2'], '--at is given twice.'],
    [report, ['p', '--json=yes'], '--json takes no value.'],
    [report, ['p', '--json', '--csv'], 'Give either --json or --csv, not both.'],
    [report, [], 'Name a plan: standclear report PLAN.'],
    [report, ['a', 'b'], 'standclear report reads one plan, found "a", "b".'],
    [check, ['p', '--at', '1'], 'Unknown option "--at": standclear check knows --setup, --strict.'],
    [exporting, ['p'], 'standclear export wants --glb OUT, --usda OUT, --usdz OUT, --fdl OUT or --zip OUT.'],
  ] as const)('%#: says what is wrong', (command, words, message) => {
    expect(() => sortWords(command, words)).toThrow(message);
  });
});

describe('help', () => {
  test('is made from the table of commands', () => {
    expect(usageOf(report)).toBe('standclear report PLAN [--json|--csv] [--setup ID] [--at SECONDS]');
    expect(usageOf(check)).toBe('standclear check PLAN [--setup ID] [--strict]');
    expect(usageOf(exporting)).toBe(
      'standclear export PLAN (--glb OUT|--usda OUT|--usdz OUT|--fdl OUT|--zip OUT) [--at SECONDS]',
    );
    for (const command of COMMANDS) {
      // A long one goes on in a second line.
      expect(help().replaceAll('\n      [', ' [')).toContain(usageOf(command));
      for (const option of command.options) expect(help()).toContain(option.summary);
    }
  });

  test('fits a line of 100 characters', () => {
    expect(
      help()
        .split('\n')
        .filter((line) => line.length > 100),
    ).toEqual([]);
  });
});
