import { Component, type ReactNode } from 'react';
import { savePlanFile } from '../../desk/files';
import { SavedWords } from './SavedWords';

interface Props {
  /** What stopped, as the start of a sentence: `The roof`. */
  readonly name: string;
  /** Whether it is the page itself, beside which nothing goes on. */
  readonly whole?: boolean;
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
    const { name, whole = false, children } = this.props;
    if (fault === null) return children;
    return (
      <div className="stopped" role="alert">
        <p>
          <b>{name} stopped.</b> {whole ? '' : 'The others go on. '}
          <SavedWords />
        </p>
        <p className="q">{fault}</p>
        <p className="acts">
          <button type="button" className="do" onClick={() => this.setState({ fault: null })}>
            Draw it again
          </button>
          <button type="button" onClick={() => void savePlanFile()}>
            Save the plan
          </button>
          {whole ? (
            <button type="button" onClick={() => location.reload()}>
              Load the page again
            </button>
          ) : null}
        </p>
      </div>
    );
  }
}
