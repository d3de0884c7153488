import { useLayoutEffect, useRef } from 'react';

/** The value, or while something is `held` the last one before. */
export function useResting<Value>(value: Value, held: boolean): Value {
  const last = useRef(value);
  useLayoutEffect(() => {
    if (!held) last.current = value;
  });
  return held ? last.current : value;
}
