import { type ComponentType, type ReactNode, Suspense, use, useState } from 'react';
import { PaneBoundary } from './PaneBoundary';

/** A component in a script of its own. */
class Part<Props extends object> {
  readonly #load: () => Promise<ComponentType<Props>>;
  #coming: Promise<ComponentType<Props>> | null = null;

  constructor(load: () => Promise<ComponentType<Props>>) {
    this.#load = load;
  }

  /** Brings it, once; what did not come is tried again by whoever asks next. */
  come(): Promise<ComponentType<Props>> {
    this.#coming ??= this.#load().then(
      (component) => {
        // What React writes on a promise that it has waited for: of one that has come nobody waits a moment.
        if (this.#coming) Object.assign(this.#coming, { status: 'fulfilled', value: component });
        return component;
      },
      (error: unknown) => {
        this.#coming = null;
        throw error;
      },
    );
    return this.#coming;
  }
}

const parts: { come(): Promise<unknown> }[] = [];

function Shown<Props extends object>({
  coming,
  props,
}: {
  readonly coming: Promise<ComponentType<Props>>;
  readonly props: Props;
}) {
  const Component = use(coming);
  return <Component {...props} />;
}

/** Holds what is waited for above the place that waits: else one that does not come would be asked for without end. */
function Held<Props extends object>({
  part,
  props,
  meanwhile,
}: {
  readonly part: Part<Props>;
  readonly props: Props;
  readonly meanwhile: ReactNode;
}) {
  const [coming] = useState(() => part.come());
  return (
    <Suspense fallback={meanwhile}>
      <Shown coming={coming} props={props} />
    </Suspense>
  );
}

/**
 * A component that comes in a script of its own, when it is first shown or when there is time. While it comes,
 * `meanwhile` stands in its place; once it is here it is drawn at once, where React's own way would leave a moment
 * without it. Where it does not come, its place says so, and a press asks again.
 */
export function lazily<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  meanwhile: ReactNode = null,
): ComponentType<Props> {
  const part = new Part(load);
  parts.push(part);
  return (props) => (
    <PaneBoundary name="This part">
      <Held part={part} props={props} meanwhile={meanwhile} />
    </PaneBoundary>
  );
}

/** Brings all parts that have not come yet, one after the other, so that each is there when a hand asks for it. */
export async function bringTheRest(): Promise<void> {
  for (const part of parts) await part.come().catch(() => {});
}

/** Whether something has been open at any time: what was shown once stays, with what was done in it. */
export function useWasOpen(open: boolean): boolean {
  const [was, setWas] = useState(open);
  if (open && !was) setWas(true);
  return was || open;
}
