import { useMemo, useState } from 'react';
import { played } from '../../core/plan/played';
import { useOnlyIn } from '../../desk/blocking/onlyIn';
import { setupOf } from '../../desk/choose';
import { useLive, useLivePlan, usePlanState, useSession } from '../../desk/hooks';
import { useElementSize } from '../parts/useElementSize';
import { useSetupReport } from '../report/useSetupReports';
import { drawnBounds } from './geometry/roof';
import type { Margins } from './geometry/sheet';
import { Furniture, WIDE_PANE } from './layers/Furniture';
import { Sheet } from './Sheet';
import { Strokes } from './strokes/Strokes';
import { useSettledSeconds } from './useSettledSeconds';
import { useSheetView } from './useSheetView';
import './styles/ground.css';
import './styles/symbols.css';
import './styles/lettering.css';
import './styles/furniture.css';

/** Room for dimensions and findings around the deck, and for the furniture below it; pixels. */
const WIDE: Margins = { left: 44, top: 78, right: 28, bottom: 118 };
const NARROW: Margins = { left: 40, top: 52, right: 24, bottom: 92 };

/** The roof from above, as an architect's ink plan to scale. */
export function Overhead() {
  const [board, setBoard] = useState<HTMLElement | null>(null);
  const size = useElementSize(board);
  return (
    <div className="overhead" ref={setBoard}>
      {size.width > 0 && size.height > 0 && <Board width={size.width} height={size.height} />}
    </div>
  );
}

function Board({ width, height }: { readonly width: number; readonly height: number }) {
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
      <Strokes committed={committed} plan={plan} sheet={sheet} lengths={lengths} />
      {!sheet.fitted && (
        <button type="button" className="fit" onClick={sheet.fitAll}>
          Fit
        </button>
      )}
    </>
  );
}
