/** An id that no other kit has, so that kits of several people can be put together: `lens-3f9c01ab`. */
export function newKitId(stem: 'lens' | 'body'): string {
  const bytes = crypto.getRandomValues(new Uint8Array(4));
  return `${stem}-${[...bytes].map((byte) => byte.toString(16).padStart(2, '0')).join('')}`;
}
