import type { Body, HeadClass, Kit, Lens, StandClass } from '../plan/schema/kit';

const entryOf =
  <Entry extends { readonly id: string }>(list: (kit: Kit) => readonly Entry[]) =>
  (kit: Kit, id: string): Entry | null =>
    list(kit).find((entry) => entry.id === id) ?? null;

/** The body, lens, head or stand of that id in a kit, or null. */
export const bodyOf: (kit: Kit, id: string) => Body | null = entryOf((kit) => kit.bodies);
export const lensOf: (kit: Kit, id: string) => Lens | null = entryOf((kit) => kit.lenses);
export const headOf: (kit: Kit, id: string) => HeadClass | null = entryOf((kit) => kit.heads);
export const standOf: (kit: Kit, id: string) => StandClass | null = entryOf((kit) => kit.stands);

/** The gate of one of a body's modes in millimetres, or null where there is no such body or mode. */
export function gateMmOf(kit: Kit, bodyId: string, modeId: string): readonly [number, number] | null {
  return bodyOf(kit, bodyId)?.modes.find((mode) => mode.id === modeId)?.gateMm ?? null;
}
