import { useMemo, useState } from 'react';
import { played } from '../../core/plan/played';
import { useOnlyIn } from '../../desk/blocking/onlyIn';
import { setupOf } from '../../desk/choose';
import { useLive, useLivePlan, usePlanState, useSession } from '../../desk/hooks';
import { lazily } from '../parts/lazily';
import { useElementSize } from '../parts/useElementSize';
import { useSetupReport } from '../report/useSetupReports';
import { useShowsGround } from './clearGround/useGround';
import { drawnBounds } from './geometry/roof';
import type { Margins } from './geometry/sheet';
import { Furniture, WIDE_PANE } from './layers/Furniture';
import { useShowsLevels } from './levels/useLevels';
import { Sheet } from './Sheet';
import { Strokes } from './strokes/Strokes';
import { useSettledSeconds } from './useSettledSeconds';
import { useSheetView } from './useSheetView';
import './styles/ground.css';
import './styles/symbols.css';
import './styles/lettering.css';
import './styles/furniture.css';

const GroundLegend = lazily(async () => (await import('./clearGround/GroundLegend')).GroundLegend);
const GroundReading = lazily(async () => (await import('./clearGround/GroundReading')).GroundReading);
const LevelLegend = lazily(async () => (await import('./levels/LevelLegend')).LevelLegend);
const RoofReading = lazily(async () => (await import('./levels/RoofReading')).RoofReading);

/** Room for dimensions and findings around the deck, and for the furniture below it; pixels. */
const WIDE: Margins = { left: 44, top: 78, right: 28, bottom: 118 };
const NARROW: Margins = { left: 40, top: 52, right: 24, bottom: 92 };

/** The roof from above, as an architect's ink plan to scale. */
export function Overhead() {
  const [board, setBoard] = useState<HTMLElement | null>(null);
  const size = useElementSize(board);
  return (
    <div className="overhead" ref={setBoard}>
      {size.width > 0 && size.height > 0 && <Board width={size.width} height={size.height} board={board} />}
    </div>
  );
}

function Board(props: {
  readonly width: number;
  readonly height: number;
  readonly board: HTMLElement | null;
}) {
  const { width, height, board } = props;
  const committed = usePlanState((state) => state.plan);
  const plan = useLivePlan();
  const lengths = useSession((state) => state.lengths);
  const chosenSetup = useSession((state) => state.setupId);
  const dragging = useLive((state) => state.gesture !== null);
  const setup = setupOf(plan, chosenSetup);
  // The cast as one setup plays it, while marks are cheated for it; what a hand does goes to the plan itself.
  const [onlyIn, onlyInNow] = [useOnlyIn(committed), useOnlyIn(plan)];
  const seen = onlyIn ? played(committed, onlyIn) : committed;
  const seenNow = onlyInNow ? played(plan, onlyInNow) : plan;
  const { report } = useSetupReport(setup?.id ?? null);
  const seconds = useSettledSeconds();
  const showsLevels = useShowsLevels();
  const showsGround = useShowsGround();
  const pane = useMemo(() => ({ width, height }), [width, height]);
  // Of the committed plan: the sheet does not slide away under the hand.
  const bounds = useMemo(() => drawnBounds(committed), [committed]);
  const sheet = useSheetView(bounds, pane, width >= WIDE_PANE ? WIDE : NARROW);
  return (
    <>
      <Sheet
        committed={seen}
        plan={seenNow}
        master={committed}
        masterNow={plan}
        drawn={bounds}
        sheet={sheet}
        seconds={seconds}
        setupId={setup?.id ?? null}
        report={report}
        lengths={lengths}
        dragging={dragging}
      />
      <Furniture plan={committed} sheet={sheet} lengths={lengths} looksThrough={setup !== null} />
      {showsLevels && <LevelLegend plan={plan} setupId={setup?.id ?? null} lengths={lengths} />}
      {showsLevels && (
        <RoofReading
          plan={plan}
          setupId={setup?.id ?? null}
          seconds={seconds}
          sheet={sheet}
          lengths={lengths}
          board={board}
        />
      )}
      {showsGround && <GroundLegend plan={plan} lengths={lengths} />}
      {showsGround && <GroundReading plan={plan} sheet={sheet} lengths={lengths} board={board} />}
      <Strokes committed={committed} plan={plan} sheet={sheet} lengths={lengths} />
      {!sheet.fitted && (
        <button type="button" className="fit" onClick={sheet.fitAll}>
          Fit
        </button>
      )}
    </>
  );
}
