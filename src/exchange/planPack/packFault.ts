/** Something in a file pack that a person can be told: one sentence. */
export class PackFault extends Error {
  constructor(sentence: string) {
    super(sentence);
    this.name = 'PackFault';
  }
}
