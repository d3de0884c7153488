/** Letters and digits of a name for a file, the rest as hyphens: `a-wide-both`. */
export function fileWord(text: string): string {
  const plain = text
    .normalize('NFKD')
    .replaceAll(/\p{M}/gu, '')
    .toLowerCase()
    .replaceAll(/[^\p{L}\p{N}]+/gu, '-')
    .replaceAll(/^-+|-+$/g, '');
  return plain === '' ? 'plan' : plain.slice(0, 60);
}
