/**
 * Runs in the page before its own code, where a test brings its own plan: the page begins with the empty roof, which
 * has no setup whose picture would have to be drawn first.
 */
export function withoutDemo(): void {
  const { fetch } = window;
  window.fetch = (input, init) => {
    const address = input instanceof Request ? input.url : String(input);
    return fetch(address.replace('loft-night.plan.json', 'starts/empty-roof.plan.json'), init);
  };
}
