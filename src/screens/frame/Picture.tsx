import { useCallback, useId, useState } from 'react';
import { useStore } from 'zustand';
import { glassOf } from '../../core/optics/camera';
import { circleOf } from '../../core/optics/circleOf';
import type { Setup } from '../../core/plan/schema/setup';
import { letterOf } from '../../desk/choose';
import { useLivePlan, useSession, useViews } from '../../desk/hooks';
import { levelMapStore } from '../../desk/levelMap/levelMapStore';
import { LOOK_AROUND, viewStore } from '../../desk/viewStore';
import { lazily } from '../parts/lazily';
import { useElementSize } from '../parts/useElementSize';
import { inFrameWords } from '../report/inFrame';
import { useInstant } from '../report/useSetupReports';
import { FrameLines } from './FrameLines';
import { useFloorHighlights } from './highlights/floorHighlights';
import { Highlights } from './highlights/Highlights';
import { ImageCircle } from './ImageCircle';
import { FrameLevels } from './levels/FrameLevels';
import { Marks } from './Marks';
import { OwnLines } from './OwnLines';
import { type Box, frameIn } from './pictureBox';

const FrameReading = lazily(async () => (await import('./levels/FrameReading')).FrameReading);
const HoldCross = lazily(async () => (await import('./HoldCross')).HoldCross);

/** Where the page says why there is no picture. */
const lowerPart = (box: Box): Box => ({
  ...box,
  top: box.top + box.height * 0.55,
  height: box.height * 0.45,
});

/**
 * The area of a setup's picture: transparent, so that what the stage draws under the page shows through, with the
 * frame line, the guides and, of the setup that is looked through, the findings over it. Its aspect is the delivery's,
 * and the delivered frame takes the middle 1 / LOOK_AROUND of both sides. As on the sensor, all of it is narrower by the
 * squeeze; its room stays the same, as high as `--pane-height` has it.
 */
export function Picture({
  setup,
  lookedThrough,
}: {
  readonly setup: Setup;
  readonly lookedThrough: boolean;
}) {
  const plan = useLivePlan();
  const guides = useSession((state) => state.guides);
  const squeezed = useSession((state) => state.squeezed);
  const selectedIds = useSession((state) => state.selectedIds);
  const refused = useViews((state) => state.pictureRefused);
  const ready = useViews((state) => state.pictureReady);
  const report = useInstant(setup.id);
  const holds = useId();
  const [element, setElement] = useState<HTMLElement | null>(null);
  const { width, height } = useElementSize(element);
  const lengths = useSession((state) => state.lengths);
  const metered = useSession((state) => state.sheet) === 'light' && lookedThrough;
  const showsLevels = useStore(levelMapStore, (state) => state.overFrame) && lookedThrough;
  const box: Box = frameIn(width, height, LOOK_AROUND);
  const highlights = useFloorHighlights(plan, setup, box, lookedThrough && !showsLevels);

  const { lens } = glassOf(plan, setup);
  const narrowing = squeezed ? lens.squeeze : 1;
  const circle = guides.circle ? circleOf(plan, setup) : null;
  const unlit = refused !== null || !ready;

  const register = useCallback(
    (found: HTMLElement | null): (() => void) => {
      setElement(found);
      viewStore.getState().setFrameElement(setup.id, found);
      return () => viewStore.getState().setFrameElement(setup.id, null);
    },
    [setup.id],
  );

  return (
    <div
      className="picture-room"
      style={{
        aspectRatio: setup.delivery,
        width: `min(100%, calc(var(--pane-height, var(--picture-height)) * ${setup.delivery}))`,
      }}
    >
      <figure
        className={unlit ? 'picture unlit' : 'picture'}
        ref={register}
        style={{ width: `${100 / narrowing}%` }}
      >
        {report ? (
          <p className="vh" id={holds}>
            {inFrameWords(report)}
          </p>
        ) : null}
        {refused === null ? null : <p className="no-picture">{refused}</p>}
        {refused === null && !ready ? <p className="no-picture">Drawing the first picture</p> : null}
        {width > 0 ? (
          <svg
            viewBox={`0 0 ${width} ${height}`}
            role="img"
            aria-label={`What setup ${letterOf(plan, setup.id)} sees, ${setup.label}, with its frame line${narrowing === 1 ? '' : ', as on the sensor'}`}
            aria-describedby={report ? holds : undefined}
          >
            {showsLevels ? <FrameLevels plan={plan} setupId={setup.id} box={box} /> : null}
            {circle ? <ImageCircle circle={circle} width={width} height={height} box={box} /> : null}
            <FrameLines
              width={width}
              height={height}
              box={box}
              aspect={setup.delivery}
              second={setup.secondDelivery ?? null}
              guides={guides}
            />
            {guides.own && plan.frameLines ? <OwnLines lines={plan.frameLines} box={box} /> : null}
            {highlights.length > 0 ? <Highlights drawn={highlights} /> : null}
            {report && lookedThrough && !showsLevels ? (
              <Marks
                plan={plan}
                setup={setup}
                report={report}
                box={box}
                selectedIds={selectedIds}
                kept={[...(unlit ? [lowerPart(box)] : []), ...highlights.flatMap(({ words }) => words ?? [])]}
              />
            ) : null}
          </svg>
        ) : null}
        {width > 0 && metered ? (
          <FrameReading plan={plan} setupId={setup.id} box={box} figure={element} lengths={lengths} />
        ) : null}
        {width > 0 && lookedThrough && setup.operator ? (
          <HoldCross plan={plan} setup={setup} box={box} />
        ) : null}
      </figure>
    </div>
  );
}
