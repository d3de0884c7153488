import { Component, type ReactNode } from 'react';

interface Props {
  readonly children: ReactNode;
  /** What stands where the part does not: what is handed over, a sentence with another try, is part of it or is not. */
  readonly instead?: (again: ReactNode) => ReactNode;
}

/** The parts that did not come: a signal that is there for one is there for all. */
const failed = new Set<ComingBoundary>();

/** Holds what does not come, or stops, within its place: the rest of the sheet stays, and it can be tried again. */
export class ComingBoundary extends Component<Props, { readonly isGone: boolean }> {
  override state = { isGone: false };

  static getDerivedStateFromError(): { readonly isGone: boolean } {
    return { isGone: true };
  }

  override componentDidCatch(): void {
    failed.add(this);
  }

  override componentWillUnmount(): void {
    failed.delete(this);
  }

  override render() {
    const { children, instead = (again) => again } = this.props;
    return this.state.isGone ? instead(AGAIN) : children;
  }
}

function tryAgain(): void {
  for (const each of failed) each.setState({ isGone: false });
  failed.clear();
}

const AGAIN = (
  <div className="crew-none" role="alert">
    <p>This part of the sheet did not come. It may need a signal.</p>
    <button type="button" onClick={tryAgain}>
      Try again
    </button>
  </div>
);
