import { type PDFDict, type PDFDocument, PDFHexString, PDFName, type PDFRef } from '@cantoo/pdf-lib';

/** A line of the list that a reader shows beside the pages. */
export interface OutlineEntry {
  readonly name: string;
  /** From 1. */
  readonly page: number;
  readonly below?: readonly OutlineEntry[];
}

/** Gives a document the list of its parts, each leading to the top of its page, and has readers show it. */
export function putOutline(document: PDFDocument, entries: readonly OutlineEntry[]): void {
  if (entries.length === 0) return;
  const { context, catalog } = document;
  const pages = document.getPages();
  const root = context.nextRef();

  const put = (parent: PDFRef, list: readonly OutlineEntry[], into: PDFDict): number => {
    const refs = list.map(() => context.nextRef());
    list.forEach(({ name, page, below = [] }, k) => {
      const entry = context.obj({ Title: PDFHexString.fromText(name), Parent: parent });
      const target = pages[page - 1];
      if (target) entry.set(PDFName.of('Dest'), context.obj([target.ref, 'XYZ', null, null, null]));
      if (k > 0) entry.set(PDFName.of('Prev'), refs[k - 1]);
      if (k + 1 < refs.length) entry.set(PDFName.of('Next'), refs[k + 1]);
      // Closed to begin with: a negative count says how many there are.
      if (below.length > 0) entry.set(PDFName.of('Count'), context.obj(-put(refs[k], below, entry)));
      context.assign(refs[k], entry);
    });
    into.set(PDFName.of('First'), refs[0]);
    into.set(PDFName.of('Last'), refs[refs.length - 1]);
    return list.length;
  };

  const outlines = context.obj({ Type: 'Outlines' });
  outlines.set(PDFName.of('Count'), context.obj(put(root, entries, outlines)));
  context.assign(root, outlines);
  catalog.set(PDFName.of('Outlines'), root);
  catalog.set(PDFName.of('PageMode'), PDFName.of('UseOutlines'));
}
