import { Component, type ReactNode, useState } from 'react';
import { useCrew } from '../../../../desk/crew/useCrew';

/** Why a part is not there: its script was not loaded. */
export class DidNotCome extends Error {}

interface Props {
  readonly children: ReactNode;
  /** What stands where the part does not: what is handed over, a sentence with another try, is part of it or is not. */
  readonly instead?: (again: ReactNode) => ReactNode;
}

interface State {
  readonly is: 'here' | 'absent' | 'stopped';
}

/** The parts that did not come: a signal that is there for one is there for all. */
const failed = new Set<ComingBoundary>();

/** Holds what does not come, or stops, within its place: the rest of the sheet stays, and it can be tried again. */
export class ComingBoundary extends Component<Props, State> {
  override state: State = { is: 'here' };

  static getDerivedStateFromError(error: unknown): State {
    return { is: error instanceof DidNotCome ? 'absent' : 'stopped' };
  }

  override componentDidCatch(): void {
    failed.add(this);
  }

  override componentWillUnmount(): void {
    failed.delete(this);
  }

  override render() {
    const { children, instead = (again) => again } = this.props;
    if (this.state.is === 'here') return children;
    return instead(this.state.is === 'absent' ? ABSENT : <Stopped />);
  }
}

function tryAgain(): void {
  for (const each of failed) each.setState({ is: 'here' });
  failed.clear();
}

const AGAIN = (
  <button type="button" onClick={tryAgain}>
    Try again
  </button>
);

const ABSENT = (
  <div className="crew-none">
    <p role="alert">This part of the sheet did not come. It may need a signal.</p>
    {AGAIN}
  </div>
);

/** Nothing of the plan lies in what stopped: where the link gave one, it can be had as a file from here. */
function Stopped() {
  const hasPlan = useCrew((state) => state.shows === 'plan');
  const [said, setSaid] = useState('');
  const save = async (): Promise<void> => {
    try {
      setSaid(await (await import('../../../../desk/crew/savePlan')).savePlan());
    } catch {
      setSaid('The plan was not saved: what saves it did not come. It may need a signal.');
    }
  };
  return (
    <div className="crew-none">
      <p role="alert">This part of the sheet stopped.{hasPlan ? ' The plan is safe in its link.' : ''}</p>
      {AGAIN}
      {hasPlan ? (
        <>
          <button type="button" onClick={() => void save()}>
            Save the plan
          </button>
          <p role="status">{said}</p>
        </>
      ) : null}
    </div>
  );
}
