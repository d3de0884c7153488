import { useReports } from '../../desk/hooks';
import { readAgain, stopReading } from '../../desk/reports';

/** Why no report comes, and the way to have it made again. */
function Trouble({ sentence }: { readonly sentence: string }) {
  return (
    <p className="reading verm" role="alert">
      {sentence}
      <button type="button" className="bare" onClick={readAgain}>
        Read again
      </button>
    </p>
  );
}

/** How far the reading of the night is, where it takes long enough to be watched. */
export function Reading() {
  const reading = useReports((state) => state.reading);
  const stopped = useReports((state) => state.stopped);
  const trouble = useReports((state) => state.trouble);
  const silent = useReports((state) => state.silent);
  if (trouble !== null) return <Trouble sentence={trouble} />;
  if (silent) return <Trouble sentence="The report has not answered for a minute. The plan is safe." />;
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
