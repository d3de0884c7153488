import { useEffect, useRef, useState } from 'react';
import type { Plan } from '../../../core/plan/schema/plan';
import type { Setup } from '../../../core/plan/schema/setup';
import { askStill } from '../../../desk/contactStills';
import { useSession, useViews } from '../../../desk/hooks';

/** What a small picture is across where the page gives it no width, CSS pixels. */
const USUAL_WIDTH = 160;

/** A small picture through a setup's lens at an instant, drawn by the stage when its own views rest. */
export function StillCanvas(props: { readonly plan: Plan; readonly setup: Setup; readonly seconds: number }) {
  const { plan, setup, seconds } = props;
  const canvas = useRef<HTMLCanvasElement>(null);
  const [drawn, setDrawn] = useState(false);
  const refused = useViews((state) => state.pictureRefused !== null);
  const sharp = useSession((state) => state.pictureQuality === 'full');
  useEffect(() => {
    if (!canvas.current || refused) return;
    const width = Math.round((canvas.current.clientWidth || USUAL_WIDTH) * (sharp ? 2 : 1));
    const height = Math.max(2, Math.round(width / setup.delivery));
    const calling = new AbortController();
    void askStill(
      { plan, setup, seconds, canvas: canvas.current, width, height, widths: 1 },
      calling.signal,
    ).then((isThere) => {
      if (isThere) setDrawn(true);
    });
    return () => calling.abort();
  }, [plan, setup, seconds, refused, sharp]);
  return (
    <span className="still" style={{ aspectRatio: setup.delivery }} data-drawn={drawn}>
      <canvas ref={canvas} />
      {refused ? <span className="q">no picture here</span> : null}
    </span>
  );
}
