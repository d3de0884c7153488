/** A new id for a kept plan: 16 hexadecimal digits by chance, the same nowhere else. */
export function newPlanId(): string {
  const bytes = crypto.getRandomValues(new Uint8Array(8));
  return Array.from(bytes, (byte) => byte.toString(16).padStart(2, '0')).join('');
}
