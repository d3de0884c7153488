/** Something that the person who typed the command can put right: one line for each thing. */
export class CommandFault extends Error {
  readonly lines: readonly string[];

  constructor(...lines: readonly string[]) {
    super(lines.join('\n'));
    this.name = 'CommandFault';
    this.lines = lines;
  }
}
