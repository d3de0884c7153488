/** Two whole numbers of 32 bits stirred into one; by multiplications modulo 2^32, the same on every engine. */
export function stirred(a: number, b: number): number {
  let mixed = Math.imul(a ^ Math.imul((b + 0x9e3779b9) | 0, 0x85ebca6b), 0xc2b2ae35);
  mixed ^= mixed >>> 15;
  mixed = Math.imul(mixed, 0x27d4eb2f);
  return mixed ^ (mixed >>> 13);
}

/** A text as one whole number of 32 bits. */
export function textHash(text: string): number {
  let mixed = 0x1234567;
  for (let at = 0; at < text.length; at += 1) mixed = stirred(mixed, text.charCodeAt(at));
  return mixed;
}
