import type { Mark as MarkRecord } from '../../../core/plan/schema/cast';

/** Tape of two inches laid in a T of a foot: common practice, no source. Metres. */
const TAPE = 0.05;
const ARM = 0.3;
const STEM = 0.22;

/** A taped T on the deck, its stem towards the back of who stands on it. */
export function Mark({ mark }: { readonly mark: MarkRecord }) {
  const [half, tape] = [ARM / 2, TAPE / 2];
  return (
    <path
      className="tape"
      transform={`translate(${mark.at[0]} ${mark.at[1]}) rotate(${mark.headingDegrees})`}
      d={`M${-half} ${-tape}H${half}V${tape}H${tape}V${STEM}H${-tape}V${tape}H${-half}Z`}
    />
  );
}
