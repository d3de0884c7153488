import { useShallow } from 'zustand/react/shallow';
import { useReports } from '../../desk/hooks';
import { readAgain, stopReading } from '../../desk/reports';
import { SavedWords } from '../parts/SavedWords';
import { type ReadingLine, readingLine } from './readingLine';

const useReadingLine = (): ReadingLine | null => useReports(useShallow(readingLine));

/** How far the reading of the night is, where it takes long enough to be watched. */
export function Reading() {
  const line = useReadingLine();
  if (line?.kind === 'stopped')
    return <p className="reading q">The reading was stopped. The next change reads again.</p>;
  if (line?.kind !== 'reading') return null;
  const { done, of } = line;
  return (
    <p className="reading">
      <span>
        <span className="reading-what">
          <b>Reading</b> setup{' '}
        </span>
        {Math.min(done + 1, of)} of {of}
      </span>
      <progress max={of} value={done} aria-label="Reading the night" />
      <button type="button" className="bare" onClick={stopReading}>
        Stop
      </button>
    </p>
  );
}

/** Why no report comes, and the way to have it made again; along the sheet's lower edge, where it moves nothing. */
export function ReadingTrouble() {
  const line = useReadingLine();
  if (line?.kind !== 'trouble' && line?.kind !== 'silent') return null;
  return (
    <p className="reading verm" role="alert">
      <span>
        {line.kind === 'trouble' ? (
          line.sentence
        ) : (
          <>
            The report has not answered for a minute. <SavedWords />
          </>
        )}
      </span>
      <button type="button" className="bare" onClick={readAgain}>
        Read again
      </button>
    </p>
  );
}
