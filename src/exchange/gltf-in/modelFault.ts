/** Why a file cannot be taken in as a model: one sentence for a person, which says what was found and what would do. */
export class ModelFault extends Error {
  override readonly name = 'ModelFault';
}

/** A count with its thousands apart, as sentences have it. */
export const counted = (count: number): string => count.toLocaleString('en-GB');
