/** What a packing list goes by where a plan says nothing of it: shares, mm, hours. Source: common practice, no source */
export const USUAL_PACKING = { slack: 0.1, waterMillimetres: 1, batteryHours: 1.5 } as const;

/** A mark is a T of tape of two such strips, metres. Source: common practice, no source */
export const STRIP_METRES = 0.3;
/** A bag of ballast where the plan has none, kg. Source: common practice, no source */
export const BAG_KILOGRAMS = 10;
/** Cords as they are commonly made up, metres, shortest first. Source: common practice, no source */
export const CORD_METRES = [5, 10, 15, 25, 50] as const;
/** A cable mat for each way that crosses a cable is so long, metres. Source: common practice, no source */
export const MAT_METRES = 1;
