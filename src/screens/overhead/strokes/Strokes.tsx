import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import type { Spot } from '../../../core/plan/schema/numbers';
import type { Plan } from '../../../core/plan/schema/plan';
import type { LengthSystem } from '../../../core/units/lengths';
import { pointAt } from '../../../desk/tools/drawing';
import { strokeFigures } from '../../../desk/tools/figures';
import { entryOf } from '../../../desk/tools/making';
import { registerRoofSurface } from '../../../desk/tools/roofSurfaces';
import { EMPTY_STROKE, isPicked } from '../../../desk/tools/toolStore';
import { useTool } from '../../../desk/tools/useTool';
import type { Bounds } from '../geometry/spots';
import { spotIn } from '../pointers/types';
import type { SheetView } from '../useSheetView';
import { Hand } from './Hand';
import { Spoken } from './Spoken';
import { StrokeControls } from './StrokeControls';
import { Tapes } from './Tapes';
import { useFollow } from './useFollow';
import { useToolKeys } from './useToolKeys';
import '../styles/strokes.css';

/** How near a thing that is dragged onto the sheet catches, pixels. */
const CATCH_PIXELS = 8;

interface Props {
  readonly committed: Plan;
  /** The plan as it is seen now, with what is being drawn. */
  readonly plan: Plan;
  readonly sheet: SheetView;
  readonly lengths: LengthSystem;
}

/** What is being drawn, over the sheet: dashed, since it is not in the plan yet. */
export function Strokes({ committed, plan, sheet, lengths }: Props) {
  const [layer, setLayer] = useState<HTMLElement | null>(null);
  const tool = useTool((state) => state.tool);
  const asked = useTool((state) => state.asksDistance);
  const drawn = useTool((state) => state.stroke) ?? EMPTY_STROKE;
  const stroke = asked ? { ...EMPTY_STROKE, corners: [asked.from], next: asked.to } : drawn;
  const picked = tool.type !== 'hand';
  const { pane } = sheet;
  const latest = useRef(sheet);
  latest.current = sheet;

  const board = useCallback(() => layer?.parentElement ?? null, [layer]);
  const start = useCallback((): Spot => {
    const { pane: seen, roofAt } = latest.current;
    const [x, z] = roofAt([seen.width / 2, seen.height / 2]);
    // On whole decimetres, so that the first place reads as one.
    return [Math.round(x * 10) / 10, Math.round(z * 10) / 10];
  }, []);
  useToolKeys(board, start);
  useSheetSurface(layer, latest);
  useFollow(stroke, sheet);

  // The keys are meant for the drawing as soon as there is something in the hand.
  useEffect(() => {
    const drawing = board()?.querySelector<SVGElement>('.sheet-drawing');
    if (picked && drawing && !matchMedia('(pointer: coarse)').matches) drawing.focus({ preventScroll: true });
  }, [picked, board]);

  const within = useMemo((): Bounds => [0, 0, pane.width, pane.height], [pane]);
  const drafted = plan.pieces.length > committed.pieces.length ? plan.pieces.at(-1) : undefined;
  const postEveryMetres = drafted?.kind === 'fence' ? drafted.postEveryMetres : null;
  const figures = strokeFigures(stroke.corners, stroke.next, {
    outline: entryOf(tool)?.how === 'outline',
    postEveryMetres,
  });
  // What has a thickness is drawn with both its faces already.
  const hasFaces = drafted?.kind === 'wall' || drafted?.kind === 'parapet';
  const hand = {
    plan: committed,
    tool,
    stroke,
    figures,
    sheet,
    lengths,
    pane: within,
    postEveryMetres,
    bare: !hasFaces,
  };
  return (
    <div className={picked ? 'strokes picked' : 'strokes'} ref={setLayer}>
      <svg width={pane.width} height={pane.height} aria-hidden="true">
        <Tapes tapes={committed.tapes ?? []} at={sheet.at} lengths={lengths} />
        {picked && <Hand {...hand} />}
      </svg>
      {picked && <StrokeControls {...hand} />}
      <Spoken plan={committed} figures={figures} lengths={lengths} />
    </div>
  );
}

/** Lets what is dragged out of the palette find the roof here, and tells the tool when the pointer leaves it. */
function useSheetSurface(layer: HTMLElement | null, sheet: { readonly current: SheetView }): void {
  useEffect(() => {
    const drawing = layer?.parentElement?.querySelector('.sheet-drawing');
    if (!drawing) return;
    const remove = registerRoofSurface({
      element: drawing,
      roofSpotAt: (clientX, clientY) => {
        const [x, z] = sheet.current.roofAt(spotIn(drawing, { clientX, clientY }));
        return [x, z];
      },
      reachMetres: () => CATCH_PIXELS / sheet.current.perMetre,
    });
    const leave = (event: Event): void => {
      if (!isPicked() || !(event instanceof PointerEvent) || event.pointerType !== 'mouse') return;
      pointAt(null, { reachMetres: 0, free: true, straight: false });
    };
    // Two presses end what is drawn; without a tool they fit the whole roof.
    const twice = (event: Event): void => {
      if (isPicked()) event.stopPropagation();
    };
    drawing.addEventListener('pointerleave', leave);
    drawing.addEventListener('dblclick', twice);
    return () => {
      remove();
      drawing.removeEventListener('pointerleave', leave);
      drawing.removeEventListener('dblclick', twice);
    };
  }, [layer, sheet]);
}
