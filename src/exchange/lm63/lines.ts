/** The lines of a text one by one, whatever ends them, so that no more of it is cut up than is read. */
export class Lines {
  private at = 0;
  private count = 0;

  constructor(private readonly text: string) {}

  /** The number of the line that was given last, from 1. */
  get number(): number {
    return Math.max(1, this.count);
  }

  /** The next line without its end; null after the last. */
  next(): string | null {
    if (this.at >= this.text.length) return null;
    const pattern = /[\r\n]/g;
    pattern.lastIndex = this.at;
    const end = pattern.exec(this.text)?.index ?? this.text.length;
    const line = this.text.slice(this.at, end);
    this.at = end + (this.text.startsWith('\r\n', end) ? 2 : 1);
    this.count += 1;
    return line;
  }
}

/** Numbers are apart by blanks or commas. */
const WORD = /[^\s,]+/g;

/** The words of what follows, across line breaks. */
export class Words {
  private words: readonly string[] = [];
  private at = 0;

  constructor(private readonly lines: Lines) {}

  /** The number of the line that the last word stood on. */
  get line(): number {
    return this.lines.number;
  }

  /** The next word; null at the end of the text. */
  next(): string | null {
    while (this.at >= this.words.length) {
      const line = this.lines.next();
      if (line === null) return null;
      this.words = line.match(WORD) ?? [];
      this.at = 0;
    }
    const word = this.words[this.at];
    this.at += 1;
    return word;
  }
}
