/**
 * Puts a text that is still being made on the clipboard: asked for at once, since a press counts for a moment only. False
 * where this browser, or whoever answers for it, lets no page do that.
 */
export async function copyText(text: Promise<string>): Promise<boolean> {
  // Nobody may be left to hear that there is no text: whoever makes it says so.
  text.catch(() => {});
  // Pages that did not come by a safe line have none, whatever the types say.
  const clipboard: Clipboard | undefined = navigator.clipboard;
  try {
    if (typeof ClipboardItem === 'function' && typeof clipboard?.write === 'function') {
      const blob = text.then((words) => new Blob([words], { type: 'text/plain' }));
      blob.catch(() => {});
      await clipboard.write([new ClipboardItem({ 'text/plain': blob })]);
      return true;
    }
    if (!clipboard) return false;
    await clipboard.writeText(await text);
    return true;
  } catch {
    return false;
  }
}
