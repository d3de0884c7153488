const LETTERS = 26;

/** The letter of a setup by its place in the plan, from 0: A to Z, then AA, AB and so on. */
export function setupLetter(place: number): string {
  const last = String.fromCharCode(65 + (place % LETTERS));
  return place < LETTERS ? last : setupLetter(Math.floor(place / LETTERS) - 1) + last;
}
