/** What fits the whole roof into the overhead that is on the page. */
let fitter: (() => void) | null = null;

export const fitRoof = (): void => fitter?.();

/** The overhead says how it is fitted for as long as it is there. */
export function offerFit(fitAll: () => void): () => void {
  fitter = fitAll;
  return () => {
    if (fitter === fitAll) fitter = null;
  };
}
