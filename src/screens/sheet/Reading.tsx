import { useReports } from '../../desk/hooks';
import { stopReading } from '../../desk/reports';

/** How far the reading of the night is, where it takes long enough to be watched. */
export function Reading() {
  const reading = useReports((state) => state.reading);
  const stopped = useReports((state) => state.stopped);
  const trouble = useReports((state) => state.trouble);
  if (trouble !== null) {
    return (
      <p className="reading verm" role="alert">
        {trouble}
      </p>
    );
  }
  if (!reading)
    return stopped ? (
      <p className="reading q">The reading was stopped. The next change reads again.</p>
    ) : null;
  return (
    <p className="reading">
      <span>
        <span className="reading-what">
          <b>Reading</b> setup{' '}
        </span>
        {Math.min(reading.done + 1, reading.of)} of {reading.of}
      </span>
      <progress max={reading.of} value={reading.done} aria-label="Reading the night" />
      <button type="button" className="bare" onClick={stopReading}>
        Stop
      </button>
    </p>
  );
}
