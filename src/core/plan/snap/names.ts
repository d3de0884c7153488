/** A name within a sentence: `Pigeon loft` as `the pigeon loft`, `Lamp stand 2` as `lamp stand 2`. */
export function thingName(label: string): string {
  const small = /^\p{Lu}\p{Ll}/u.test(label) ? label.charAt(0).toLowerCase() + label.slice(1) : label;
  // What has a number has no need of an article, and a name may bring its own.
  return /\d$/.test(label) || /^the /i.test(label) ? small : `the ${small}`;
}
