import { Component, type ReactNode } from 'react';
import { savePlanFile } from '../../desk/files';

interface Props {
  /** What stopped, as the start of a sentence: `The roof`. */
  readonly name: string;
  readonly children: ReactNode;
}

/** Holds a fault within its pane: the other panes go on, and the plan can be saved. */
export class PaneBoundary extends Component<Props, { readonly fault: string | null }> {
  override state: { readonly fault: string | null } = { fault: null };

  static getDerivedStateFromError(error: unknown): { readonly fault: string } {
    return { fault: error instanceof Error ? error.message : String(error) };
  }

  override render() {
    const { fault } = this.state;
    if (fault === null) return this.props.children;
    return (
      <div className="stopped" role="alert">
        <p>
          <b>{this.props.name} stopped.</b> The others go on, the plan is safe.
        </p>
        <p className="q">{fault}</p>
        <p className="acts">
          <button type="button" className="do" onClick={() => this.setState({ fault: null })}>
            Draw it again
          </button>
          <button type="button" onClick={() => void savePlanFile()}>
            Save the plan
          </button>
        </p>
      </div>
    );
  }
}
