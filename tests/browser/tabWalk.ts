import type { CDPSession, Page } from 'playwright-core';

/** What the focus was on, after a press of Tab. */
export interface Stop {
  /** Its name for a screen reader, or failing that its tag and class. */
  readonly name: string;
  /** Its role, as the browser tells it to a screen reader. */
  readonly role: string;
  /** What is wrong with it, in words. */
  readonly faults: readonly string[];
}

interface Seen {
  readonly what: string;
  readonly number: number;
  readonly faults: readonly string[];
}

const MOST_STOPS = 400;
/** Roles that say nothing of what can be done. */
const NO_ROLES = ['', 'generic', 'none', 'presentation', 'GenericContainer'];

/** Runs in the page: what has the focus, whether it can be seen there, and whether it shows that it has it. */
function seenFocus(): Seen | null {
  /** So many of its own parts are looked at. */
  const MOST_INSIDE = 40;
  const here = document.activeElement;
  if (!here || here === document.body) return null;
  const marked = window as unknown as { stops?: Map<Element, number> };
  marked.stops ??= new Map();
  const number = marked.stops.get(here) ?? marked.stops.size;
  marked.stops.set(here, number);
  const faults: string[] = [];
  const { left, top, right, bottom } = here.getBoundingClientRect();
  const seen = {
    left: Math.max(0, left),
    top: Math.max(0, top),
    right: Math.min(innerWidth, right),
    bottom: Math.min(innerHeight, bottom),
  };
  if (seen.right - seen.left < 1 || seen.bottom - seen.top < 1) faults.push('is out of sight');
  else if (getComputedStyle(here).pointerEvents !== 'none') {
    const parts = [0.02, 0.2, 0.4, 0.5, 0.6, 0.8, 0.98];
    const hit = parts.some((across) =>
      parts.some((down) => {
        const x = seen.left + across * (seen.right - seen.left);
        const y = seen.top + down * (seen.bottom - seen.top);
        return document
          .elementsFromPoint(x, y)
          .slice(0, here instanceof SVGElement ? 12 : 1)
          .some((each) => here.contains(each) || each.contains(here) || isLabelOf(each, here));
      }),
    );
    if (!hit) faults.push('is covered');
  }
  if (!rings(here)) faults.push('shows no ring');
  return { what: whatOf(here), number, faults };

  function isLabelOf(each: Element, control: Element): boolean {
    const labels = control instanceof HTMLInputElement ? [...(control.labels ?? [])] : [];
    return labels.some((label) => label.contains(each));
  }
  /** Whether it, or what stands for it, is drawn otherwise than without the focus. */
  function rings(element: Element): boolean {
    const drawnOf = (each: Element, pseudo?: string): boolean => {
      const { outlineStyle, outlineWidth, outlineColor } = getComputedStyle(each, pseudo);
      return (
        outlineStyle !== 'none' && Number.parseFloat(outlineWidth) >= 1 && outlineColor !== 'transparent'
      );
    };
    // On the roof the drawing itself rings what has the focus.
    if (element.hasAttribute('data-target'))
      return document.querySelector('.focus-ring, .chosen-ring') !== null;
    if (drawnOf(element) || drawnOf(element, '::after') || drawnOf(element, '::before')) return true;
    const inside = [...element.querySelectorAll('*')].slice(0, MOST_INSIDE);
    const around = [element, element.parentElement, element.parentElement?.parentElement, ...inside];
    const drawn = around.flatMap((each) => (each ? [each] : []));
    const look = (each: Element): string => {
      const style = getComputedStyle(each);
      return [style.boxShadow, style.borderColor, style.stroke, style.strokeWidth, style.opacity].join();
    };
    const focused = drawn.map(look);
    if (drawn.slice(1).some((each) => drawnOf(each))) return true;
    if (!(element instanceof HTMLElement || element instanceof SVGElement)) return false;
    // Without the focus: the same element is asked again, and given its focus back.
    element.blur();
    const without = drawn.map(look);
    element.focus({ preventScroll: true });
    return focused.join('|') !== without.join('|');
  }
  function whatOf(element: Element): string {
    const classes = element.getAttribute('class');
    return `<${element.tagName.toLowerCase()}${classes ? ` class="${classes}"` : ''}>`;
  }
}

/** What the browser tells a screen reader of what has the focus. */
async function told(session: CDPSession): Promise<{ readonly role: string; readonly name: string }> {
  const { result } = await session.send('Runtime.evaluate', { expression: 'document.activeElement' });
  const { objectId } = result;
  if (objectId === undefined) return { role: '', name: '' };
  const { nodes } = await session.send('Accessibility.getPartialAXTree', { objectId, fetchRelatives: false });
  await session.send('Runtime.releaseObject', { objectId });
  const [node] = nodes;
  return { role: String(node?.role?.value ?? ''), name: String(node?.name?.value ?? '').trim() };
}

/**
 * Presses Tab until the focus comes round, leaves the page or reaches what `until` names, and tells each stop.
 * A stop is at fault that cannot be seen, is covered, shows no ring, or has no role or name for a screen reader.
 * Throws where the focus does not come on, which is a trap.
 */
export async function tabWalk(
  page: Page,
  {
    from = 'body',
    until,
    most = MOST_STOPS,
  }: { readonly from?: string; readonly until?: RegExp; readonly most?: number } = {},
): Promise<readonly Stop[]> {
  await page.evaluate((start) => {
    Object.assign(window, { stops: new Map() });
    // The browser goes on from where what had the focus last was taken out.
    const before = document.createElement('span');
    before.tabIndex = -1;
    // Behind an open dialog nothing takes the focus.
    const dialog = document.querySelector('dialog[open]');
    (dialog ?? document.querySelector(start) ?? document.body).prepend(before);
    before.focus({ preventScroll: true });
    before.remove();
  }, from);
  const session = await page.context().newCDPSession(page);
  await session.send('Accessibility.enable');
  const stops: Stop[] = [];
  try {
    for (let step = 0; step < most; step += 1) {
      await page.keyboard.press('Tab');
      const seen = await page.evaluate(seenFocus);
      // From the end of a page the first press may lead into the browser's own bar.
      if (!seen && step === 0) continue;
      if (!seen) return stops;
      const { role, name } = await told(session);
      // Round to the first stop: all have been seen.
      if (seen.number === 0 && stops.length > 0) return stops;
      if (seen.number < stops.length) throw new Error(`Tab is caught at ${role} “${name}”, ${seen.what}`);
      const faults = [
        ...seen.faults,
        ...(NO_ROLES.includes(role) ? ['has no role'] : []),
        ...(name === '' ? ['has no name'] : []),
      ];
      stops.push({ name: name || seen.what, role, faults });
      if (until?.test(name)) return stops;
    }
  } finally {
    await session.detach();
  }
  throw new Error(`Tab did not come round in ${most} presses`);
}

/** The stops that are at fault, a line each. */
export const stopFaults = (stops: readonly Stop[]): readonly string[] =>
  stops.flatMap(({ role, name, faults }) => faults.map((fault) => `${role} “${name}” ${fault}`));
