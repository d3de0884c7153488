import type { Page } from 'playwright-core';

/** What a hand can press, turn, tick or type into. */
const CONTROLS =
  'button, a[href], input, select, textarea, summary, [role="button"], [role="tab"], [role="slider"], [role="menuitem"], [role="checkbox"], [role="option"]';

/**
 * Controls in sight whose target is smaller than `least` CSS pixels either way, a line each. A tick's label counts
 * with it, and so does what a control lays over its row. Below 24 pixels a target counts as large enough where a circle
 * of that size around its middle touches no other (`Source:` WCAG 2.2, success criterion 2.5.8, spacing); so does one
 * in a line of text.
 * What lies on the roof's drawing is left out: there the hand reaches for what is nearest. So are marks and keys along the
 * timeline, which lie at their moment and have it in the panel's fields, too.
 */
export async function smallTargets(page: Page, least: number): Promise<readonly string[]> {
  return page.evaluate(
    ([controls, size]) => {
      interface Box {
        readonly left: number;
        readonly top: number;
        readonly right: number;
        readonly bottom: number;
      }
      const SPACING = 24;
      const targets: { readonly element: Element; readonly box: Box }[] = [];
      for (const element of document.querySelectorAll(controls)) {
        if (!isPressable(element)) continue;
        targets.push({ element, box: targetOf(element) });
      }
      return targets.flatMap(({ element, box }) => {
        const [width, height] = [box.right - box.left, box.bottom - box.top];
        if (width >= size - 0.5 && height >= size - 0.5) return [];
        if (isInText(element)) return [];
        if (size <= SPACING && !crowded(element, box)) return [];
        const words = element.getAttribute('aria-label') ?? element.textContent?.trim().slice(0, 40) ?? '';
        const classes = element.getAttribute('class') ?? '';
        return [
          `${element.tagName.toLowerCase()}.${classes} “${words}” is ${width.toFixed(0)} × ${height.toFixed(0)}`,
        ];
      });

      function isPressable(element: Element): boolean {
        if (element.closest('[inert], .vh, .skip, .sheet-drawing [data-target], .handle:not(.beat)'))
          return false;
        const dialog = document.querySelector('dialog:modal');
        if (dialog && !dialog.contains(element)) return false;
        if (element.matches(':disabled') || !element.checkVisibility({ visibilityProperty: true }))
          return false;
        const box = targetOf(element);
        const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
        if (x < 0 || y < 0 || x >= innerWidth || y >= innerHeight) return false;
        const over = document.elementFromPoint(x, y);
        return over !== null && (element.contains(over) || over.contains(element) || labelled(element, over));
      }
      function labelled(element: Element, over: Element): boolean {
        return (
          element instanceof HTMLInputElement &&
          [...(element.labels ?? [])].some((each) => each.contains(over))
        );
      }
      function targetOf(element: Element): Box {
        const boxes = [element.getBoundingClientRect()];
        if (element instanceof HTMLInputElement || element instanceof HTMLSelectElement) {
          for (const label of element.labels ?? []) boxes.push(label.getBoundingClientRect());
          // A value on a line: the line is pressed.
          const field = element.closest('.field');
          if (field) boxes.push(field.getBoundingClientRect());
        }
        const after = getComputedStyle(element, '::after');
        if (after.content !== 'none' && after.position === 'absolute') {
          let within: Element | null = element;
          while (within && getComputedStyle(within).position === 'static') within = within.parentElement;
          if (within && Number.parseFloat(after.top) <= 0) boxes.push(within.getBoundingClientRect());
        }
        return {
          left: Math.min(...boxes.map(({ left }) => left)),
          top: Math.min(...boxes.map(({ top }) => top)),
          right: Math.max(...boxes.map(({ right }) => right)),
          bottom: Math.max(...boxes.map(({ bottom }) => bottom)),
        };
      }
      function isInText(element: Element): boolean {
        const around = element.closest('p, li, dd, .kept');
        if (!around || getComputedStyle(element).display.includes('flex')) return false;
        return (around.textContent ?? '').trim().length > (element.textContent ?? '').trim().length + 8;
      }
      function crowded(element: Element, box: Box): boolean {
        const [x, y] = [(box.left + box.right) / 2, (box.top + box.bottom) / 2];
        return targets.some(({ element: other, box: theirs }) => {
          if (other === element || other.contains(element) || element.contains(other)) return false;
          const small = theirs.right - theirs.left < SPACING || theirs.bottom - theirs.top < SPACING;
          if (small) {
            const [otherX, otherY] = [(theirs.left + theirs.right) / 2, (theirs.top + theirs.bottom) / 2];
            if (Math.hypot(otherX - x, otherY - y) < SPACING - 0.5) return true;
          }
          const dx = Math.max(theirs.left - x, 0, x - theirs.right);
          const dy = Math.max(theirs.top - y, 0, y - theirs.bottom);
          return Math.hypot(dx, dy) < SPACING / 2 - 0.5;
        });
      }
    },
    [CONTROLS, least] as const,
  );
}

/**
 * Words in sight that are cut where nothing says that they go on, words that lie over other words, and controls whose
 * middle is under something else; a line each. What lies on drawings is left out.
 */
export async function clippedWords(page: Page): Promise<readonly string[]> {
  return page.evaluate((controls) => {
    const faults = new Set<string>();
    const drawn: { readonly node: Text; readonly words: string; readonly box: DOMRect }[] = [];
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      const words = node.textContent?.trim() ?? '';
      if (!(node instanceof Text) || !parent || words === '' || !isShown(parent)) continue;
      const range = document.createRange();
      range.selectNodeContents(node);
      for (const box of range.getClientRects()) {
        if (box.width < 2 || box.height < 2) continue;
        const cut = cutBy(parent, box);
        if (cut) faults.add(`“${short(words)}” in ${nameOf(parent)} is cut by ${nameOf(cut)}`);
        const seen = within(parent, box);
        if (seen) drawn.push({ node, words, box: seen });
      }
    }
    for (const [place, one] of drawn.entries()) {
      for (const other of drawn.slice(place + 1)) {
        if (one.node === other.node) continue;
        const wide = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const high = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        const least = Math.min(one.box.height, other.box.height);
        if (wide > 3 && high > 0.4 * least && bothOnTop(one, other))
          faults.add(`“${short(one.words)}” and “${short(other.words)}” lie over each other`);
      }
    }
    for (const control of document.querySelectorAll(controls)) {
      if (!isShown(control) || control.matches(':disabled')) continue;
      if (getComputedStyle(control).pointerEvents === 'none') continue;
      const whole = control.getBoundingClientRect();
      const box = within(control, whole);
      // What is half scrolled away is no fault of the layout.
      if (!box || box.width < whole.width - 1 || box.height < whole.height - 1) continue;
      const over = document.elementFromPoint((box.left + box.right) / 2, (box.top + box.bottom) / 2);
      const isIts =
        over &&
        (control.contains(over) || over.contains(control) || over.closest('label')?.contains(control));
      if (over && !isIts && !isBeside(over, control))
        faults.add(`${nameOf(control)} “${short(control.textContent ?? '')}” lies under ${nameOf(over)}`);
    }
    return [...faults];

    function isShown(element: Element): boolean {
      if (element.closest('[inert], .vh, .skip, svg, option, script, style, noscript, canvas')) return false;
      const dialog = document.querySelector('dialog:modal');
      if (dialog && !dialog.contains(element)) return false;
      return element.checkVisibility({ visibilityProperty: true, opacityProperty: true });
    }
    /** Its label lies over it on purpose; under what stays while the rest scrolls by it comes out again. */
    function isBeside(over: Element, control: Element): boolean {
      for (let each: Element | null = over; each && !each.contains(control); each = each.parentElement)
        if (getComputedStyle(each).position === 'sticky') return true;
      return control.id !== '' && over.closest(`label[for="${CSS.escape(control.id)}"]`) !== null;
    }
    /** Which box cuts these words from left to right without a sign that they go on. */
    function cutBy(from: Element, box: DOMRect): Element | null {
      for (let each: Element | null = from; each; each = each.parentElement) {
        const style = getComputedStyle(each);
        if (style.overflowX === 'visible') continue;
        if (style.textOverflow === 'ellipsis' && style.overflowX === 'hidden') return null;
        if (style.overflowX === 'auto' || style.overflowX === 'scroll') return null;
        const edge = each.getBoundingClientRect();
        if (box.left < edge.left - 1.5 || box.right > edge.right + 1.5) return each;
        const isCutBelow =
          each !== document.body && style.overflowY === 'hidden' && box.bottom > edge.bottom + 4;
        if (
          isCutBelow &&
          box.top < edge.bottom - 4 &&
          !style.getPropertyValue('-webkit-line-clamp').match(/\d/)
        )
          return each;
      }
      return box.right > innerWidth + 1.5 ? document.documentElement : null;
    }
    /** What of a box can be seen through all boxes around it. */
    function within(from: Element, whole: DOMRect): DOMRect | null {
      let [left, top, right, bottom] = [whole.left, whole.top, whole.right, whole.bottom];
      for (let each: Element | null = from; each; each = each.parentElement) {
        if (getComputedStyle(each).overflow === 'visible') continue;
        const edge = each.getBoundingClientRect();
        [left, top] = [Math.max(left, edge.left), Math.max(top, edge.top)];
        [right, bottom] = [Math.min(right, edge.right), Math.min(bottom, edge.bottom)];
      }
      [left, top] = [Math.max(left, 0), Math.max(top, 0)];
      [right, bottom] = [Math.min(right, innerWidth), Math.min(bottom, innerHeight)];
      return right - left > 1 && bottom - top > 1 ? new DOMRect(left, top, right - left, bottom - top) : null;
    }
    /** Of two words in one place, one may be on a sheet that lies over the other: then only it can be pressed there. */
    function bothOnTop(one: { readonly node: Text; readonly box: DOMRect }, other: typeof one): boolean {
      const x = (Math.max(one.box.left, other.box.left) + Math.min(one.box.right, other.box.right)) / 2;
      const y = (Math.max(one.box.top, other.box.top) + Math.min(one.box.bottom, other.box.bottom)) / 2;
      const stack = document.elementsFromPoint(x, y);
      const placeOf = (node: Text): number =>
        stack.findIndex((each) => node.parentElement?.contains(each) || each === node.parentElement);
      const [first, second] = [placeOf(one.node), placeOf(other.node)];
      if (first < 0 || second < 0) return false;
      const over = stack.slice(Math.min(first, second), Math.max(first, second));
      const isHidden = over.some((each) => {
        const behind = first < second ? other.node.parentElement : one.node.parentElement;
        const { backgroundColor, backgroundImage } = getComputedStyle(each);
        const isOpaque = backgroundImage !== 'none' || !/rgba\(.*, 0\)|transparent/.test(backgroundColor);
        return isOpaque && !each.contains(behind);
      });
      return !isHidden;
    }
    function short(words: string): string {
      const trimmed = words.trim().replace(/\s+/g, ' ');
      return trimmed.length > 40 ? `${trimmed.slice(0, 40)}…` : trimmed;
    }
    function nameOf(element: Element): string {
      const classes = element.getAttribute('class');
      return element.tagName.toLowerCase() + (classes ? `.${classes.trim().replace(/\s+/g, '.')}` : '');
    }
  }, CONTROLS);
}

/** How much farther the page, or a part that scrolls, goes from left to right than it is wide, pixels; a line each. */
export async function sidewaysScrolls(page: Page, except = ''): Promise<readonly string[]> {
  return page.evaluate((kept) => {
    const faults: string[] = [];
    for (const each of document.querySelectorAll('*')) {
      if (!each.checkVisibility() || (kept !== '' && each.closest(kept))) continue;
      const { overflowX } = getComputedStyle(each);
      const scrolls = overflowX === 'auto' || overflowX === 'scroll' || each === document.documentElement;
      const wider = each.scrollWidth - each.clientWidth;
      if (scrolls && wider > 1)
        faults.push(`${each.tagName.toLowerCase()}.${each.className} goes on for ${wider} px`);
    }
    return faults;
  }, except);
}

/** Words in sight that are broken in their middle, where no hyphen or other sign lets them be; a line each. */
export async function brokenWords(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const faults = new Set<string>();
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const parent = node.parentElement;
      if (!parent?.checkVisibility() || parent.closest('svg, .vh, option, script, style')) continue;
      for (const { 0: word, index } of (node.textContent ?? '').matchAll(/[\p{L}\p{N}]+/gu)) {
        const range = document.createRange();
        range.setStart(node, index);
        range.setEnd(node, index + word.length);
        const tops = new Set([...range.getClientRects()].map(({ top }) => Math.round(top)));
        if (tops.size > 1) faults.add(`“${word}” is broken in “${parent.textContent?.trim().slice(0, 60)}”`);
      }
    }
    return [...faults];
  });
}
