/**
 * A sensor's noise, of the size that is common of large ones; common practice, no source. Middle grey at ISO 800 frees
 * this many electrons in a photosite, and reading it out adds that many, as a standard deviation.
 */
const GREY_ELECTRONS_AT_800 = 700;
export const READ_ELECTRONS = 3;
/** From one photosite to the next, millimetres. */
const PITCH_MM = 0.00825;

/** Electrons that middle grey frees in a photosite: half as many for twice the ISO number. */
export const greyElectrons = (iso: number): number => (GREY_ELECTRONS_AT_800 * 800) / iso;

/**
 * Signal over noise of one photosite that takes `share` of what middle grey gives it: n/√(n + r²), photons arriving as
 * a Poisson process, n of them within √n. At ISO 800 middle grey has 26, at 3200 it has 13.
 */
export function signalToNoise(iso: number, share = 1): number {
  const electrons = greyElectrons(iso) * share;
  return electrons / Math.sqrt(electrons + READ_ELECTRONS * READ_ELECTRONS);
}

/** How many photosites a pixel of a picture stands for, at least one; `mm` are its sides on the sensor. */
export const photositesIn = (mm: readonly [number, number]): number =>
  Math.max(1, (mm[0] * mm[1]) / (PITCH_MM * PITCH_MM));
