import { type ComponentType, type ReactNode, Suspense, use, useState } from 'react';
import { ComingBoundary, DidNotCome } from './ComingBoundary';

interface Ways<Props> {
  /** What stands in its place while it comes. */
  readonly meanwhile?: (props: Props) => ReactNode;
  /** What stands in its place where it does not come; what is handed over is the sentence that says so. */
  readonly instead?: (again: ReactNode, props: Props) => ReactNode;
}

/** A component in a script of its own. */
class Script<Props extends object> {
  /** Null until it has come. */
  here: ComponentType<Props> | null = null;

  constructor(
    private readonly load: () => Promise<ComponentType<Props>>,
    readonly ways: Ways<Props>,
  ) {}

  async bring(): Promise<ComponentType<Props>> {
    this.here = await this.load().catch((cause: unknown) => {
      throw new DidNotCome('a script did not come', { cause });
    });
    return this.here;
  }
}

interface HeldProps<Props extends object> {
  readonly script: Script<Props>;
  readonly props: Props;
}

function Shown<Props extends object>({
  brought,
  props,
}: {
  readonly brought: Promise<ComponentType<Props>>;
  readonly props: Props;
}) {
  const Component = use(brought);
  return <Component {...props} />;
}

/** Above what waits, so that it asks once; below what holds a failure, so that another try asks anew. */
function Held<Props extends object>({ script, props }: HeldProps<Props>) {
  const { here: Here, ways } = script;
  const [brought] = useState(() => (Here ? null : script.bring()));
  if (!brought) return Here && <Here {...props} />;
  return (
    <Suspense fallback={ways.meanwhile?.(props)}>
      <Shown brought={brought} props={props} />
    </Suspense>
  );
}

/** A component in a script of its own. One that did not come is asked for anew, where React's own way never does. */
export function coming<Props extends object>(
  load: () => Promise<ComponentType<Props>>,
  ways: Ways<Props> = {},
): ComponentType<Props> {
  const script = new Script(load, ways);
  return (props) => (
    <ComingBoundary instead={(again) => (ways.instead ? ways.instead(again, props) : again)}>
      <Held script={script} props={props} />
    </ComingBoundary>
  );
}
