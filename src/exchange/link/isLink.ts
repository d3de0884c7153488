/**
 * Whether what stands behind the `#` of an address is a plan, of this version or of a newer one: every link begins
 * with the digit of its version. Says nothing of whether it can be read; the sign itself may be there or not.
 */
export const isLinkFragment = (hash: string): boolean => /^#?[1-9]/.test(hash);
