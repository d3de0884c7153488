import { type CSSProperties, useEffect, useRef } from 'react';
import { formatShare } from '../../../../core/units/shares';
import { DIM_STEPS, dimLive, dimOfStep, endDimming, stepOfDim } from '../../../../desk/light/dimming';
import { endPreviews } from '../../previewing';
import { dimSpoken } from '../words';

/** How far the light's colour reaches along the slider, for its style. */
const at = (step: number): CSSProperties & { readonly '--at': string } => ({
  '--at': `${(step / DIM_STEPS) * 100}%`,
});

/** A lamp's dim in the hand: all of a drag, or of a key held down, is one step of the history. */
export function DimSlider(props: { readonly id: string; readonly label: string; readonly dim: number }) {
  const { id, label, dim } = props;
  const held = useRef(false);
  const end = (): void => {
    held.current = false;
    endDimming(id, label);
  };
  useEffect(() => {
    // The hand may let go anywhere, and a slider that is back where it was tells no change.
    const letGo = (): void => {
      if (held.current) endDimming(id, label);
      held.current = false;
    };
    window.addEventListener('pointerup', letGo);
    window.addEventListener('pointercancel', letGo);
    return () => {
      window.removeEventListener('pointerup', letGo);
      window.removeEventListener('pointercancel', letGo);
      letGo();
    };
  }, [id, label]);
  const step = stepOfDim(dim);
  return (
    <input
      type="range"
      className="dim"
      aria-label={`${label}, dim`}
      aria-valuetext={dimSpoken(dim, formatShare(dim))}
      min={0}
      max={DIM_STEPS}
      step={5}
      value={step}
      style={at(step)}
      onPointerDown={() => {
        held.current = true;
        endPreviews();
      }}
      onChange={(event) => dimLive(id, dimOfStep(event.currentTarget.valueAsNumber))}
      onKeyUp={end}
      onBlur={end}
    />
  );
}
