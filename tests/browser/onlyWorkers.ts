/**
 * What runs in the page before its own code and leaves out all workers but some, by a piece of their names: those that
 * no line of a test asks about would keep the processor busy. The page is told, as it would be by a browser that cannot
 * start them.
 */
export const onlyWorkers = (...names: readonly string[]): string =>
  `(${leaveOutOthers.toString()})(${JSON.stringify(names)})`;

function leaveOutOthers(names: readonly string[]): void {
  class NoWorker extends EventTarget {
    postMessage(): void {
      setTimeout(() => this.dispatchEvent(new ErrorEvent('error', { message: 'left out of this test' })));
    }
    terminate(): void {}
  }
  const construct = (native: typeof Worker, [url, options]: ConstructorParameters<typeof Worker>) =>
    names.some((name) => String(url).includes(`/${name}.worker`)) ? new native(url, options) : new NoWorker();
  Object.assign(window, { Worker: new Proxy(Worker, { construct }) });
}
