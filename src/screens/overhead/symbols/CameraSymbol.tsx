/** A camera dressed for a shoot, its entrance pupil at the origin, looking up the sheet; common practice, no source. */
const BODY = { width: 0.28, length: 0.36 };
const LENS = { front: 0.16, back: 0.11, before: 0.08, behind: 0.1 };

/** Body and lens in outline. */
export function CameraSymbol() {
  const [body, front, back] = [BODY.width / 2, LENS.front / 2 + 0.02, LENS.back / 2];
  const { before, behind } = LENS;
  return (
    <path
      className="camera-body"
      d={
        `M${-body} ${behind}H${body}V${behind + BODY.length}H${-body}Z` +
        `M${-back} ${behind}L${-front} ${-before}H${front}L${back} ${behind}`
      }
    />
  );
}
