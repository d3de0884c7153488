import { parseLength } from '../core/units/lengths';
import { CommandFault } from './fault';

/** A length that was typed behind an option, metres. @throws CommandFault if it is none */
export function metresOf(option: string, text: string): number {
  const read = parseLength(text);
  if (!read.ok) throw new CommandFault(`--${option}: ${read.faults[0].sentence}`);
  return read.value;
}
