import { calledBy } from '../../../core/plan/named';
import type { Setup } from '../../../core/plan/schema/setup';
import { chooseSetup } from '../../../desk/choose';
import { useSession } from '../../../desk/hooks';
import { sessionStore } from '../../../desk/sessionStore';
import { Glyph } from '../../parts/Glyph';
import { Icon } from '../../parts/Icon';
import { summaryOf } from '../../report/summary';
import { useSetupReport } from '../../report/useSetupReports';

/** A camera of the list: chosen, it is looked through. */
export function CameraRow(props: {
  readonly setup: Setup;
  readonly letter: string;
  readonly reachable: boolean;
  readonly onChoose: () => void;
}) {
  const { setup, letter } = props;
  const lengths = useSession((state) => state.lengths);
  const chosen = useSession((state) => state.selectedId === null && state.setupId === setup.id);
  const { report } = useSetupReport(setup.id);
  return (
    <li aria-current={chosen ? 'true' : undefined}>
      <button
        type="button"
        className="thing"
        tabIndex={props.reachable ? 0 : -1}
        onClick={() => {
          sessionStore.getState().setSelectedId(null);
          chooseSetup(setup.id);
          props.onChoose();
        }}
      >
        <Icon name="camera" />
        <span className="name">
          <b>{letter}</b> {calledBy(setup.label, 'setup')}
        </span>
        <span className="q kind">camera</span>
        {report ? <Glyph verdict={summaryOf(report, lengths).verdict} /> : <span />}
      </button>
    </li>
  );
}
