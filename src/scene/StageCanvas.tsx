import { createRoot, type ReconcilerRoot, type RenderProps } from '@react-three/fiber';
import { Component, type ReactNode, useInsertionEffect, useLayoutEffect, useRef, useState } from 'react';

/** What fiber is told once. */
export type StageSettings = Omit<RenderProps<HTMLCanvasElement>, 'size' | 'events'>;

interface Props {
  readonly settings: StageSettings;
  readonly children: ReactNode;
}

/**
 * Fiber's canvas over the whole of what it lies in. Fiber's own component takes all of three along, so that any of its
 * classes can be written as an element; we write none, and three is a quarter smaller without what is not used.
 */
export function StageCanvas({ settings, children }: Props) {
  const canvas = useRef<HTMLCanvasElement>(null);
  const root = useRef<ReconcilerRoot<HTMLCanvasElement> | null>(null);
  const [error, setError] = useState<unknown>(null);
  if (error !== null) throw error;

  // Outlives the second run of effects while developing: a canvas whose root was ended has lost its pictures for good.
  useInsertionEffect(() => () => root.current?.unmount(), []);
  useLayoutEffect(() => {
    const element = canvas.current;
    const around = element?.parentElement;
    if (!element || !around) return;
    root.current ??= createRoot(element);
    const { current } = root;
    const lay = async (): Promise<void> => {
      const { width, height, top, left } = around.getBoundingClientRect();
      if (width === 0 || height === 0) return;
      await current.configure({ ...settings, size: { width, height, top, left } });
      current.render(<Outwards throwing={setError}>{children}</Outwards>);
    };
    const observer = new ResizeObserver(() => void lay().catch(setError));
    observer.observe(around);
    return () => observer.disconnect();
  }, [settings, children]);
  return <canvas ref={canvas} style={{ display: 'block' }} />;
}

/** Throws what goes wrong inside in the page outside, whose boundaries tell of it. */
class Outwards extends Component<{
  readonly throwing: (error: unknown) => void;
  readonly children: ReactNode;
}> {
  override state = { failed: false };

  static getDerivedStateFromError(): { failed: boolean } {
    return { failed: true };
  }

  override componentDidCatch(error: unknown): void {
    this.props.throwing(error);
  }

  override render(): ReactNode {
    return this.state.failed ? null : this.props.children;
  }
}
