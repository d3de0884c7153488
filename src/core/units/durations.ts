import { NBSP } from './numbers';

/** A time that something takes, to the whole minute: `45 min`, `2 h`, `7 h 10 min`. @param minutes not negative */
export function duration(minutes: number): string {
  const whole = Math.round(minutes);
  const [hours, rest] = [Math.floor(whole / 60), whole % 60];
  if (hours === 0) return `${rest}${NBSP}min`;
  return rest === 0 ? `${hours}${NBSP}h` : `${hours}${NBSP}h ${rest}${NBSP}min`;
}
