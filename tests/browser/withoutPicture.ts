/** Runs in the page before its own code, where no picture matters: it would only keep the processor busy. */
export function withoutPicture(): void {
  const { getContext } = HTMLCanvasElement.prototype;
  Object.assign(HTMLCanvasElement.prototype, {
    getContext(this: HTMLCanvasElement, kind: string, ...rest: unknown[]): unknown {
      return kind.includes('webgl') ? null : Reflect.apply(getContext, this, [kind, ...rest]);
    },
  });
}
