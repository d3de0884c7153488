import { createStore } from 'zustand/vanilla';
import type { Refused } from '../../core/light/advice';
import type { HighlightAdvice } from '../../core/light/aimForHighlight';
import type { Plan } from '../../core/plan/schema/plan';
import { latestWins } from '../latestWins';
import { sentenceOf } from '../reasonOf';
import type { KeyWays, ReportApi } from '../workers/reportApi';
import { askHighlightAtFeet, askKeyWays } from './asking';

/** A question about the committed plan, and the last answer, perhaps to the question before. */
interface Answered<Question, Answer> {
  readonly question: Question | null;
  readonly answer: Answer | null;
  /** Why there is none, as a sentence. */
  readonly trouble: string | null;
}

/** Asks one question at a time; of those that come in meanwhile the newest. */
function answering<Question, Answer>(ask: (question: Question) => Promise<Answer>) {
  const store = createStore<Answered<Question, Answer>>()(() => ({
    question: null,
    answer: null,
    trouble: null,
  }));
  const asking = latestWins<Question>((question) =>
    ask(question).then(
      (answer) => store.setState({ question, answer, trouble: null }),
      (error: unknown) =>
        store.setState({
          question,
          answer: null,
          trouble: sentenceOf('This could not be worked out', error),
        }),
    ),
  );
  return { store, ask: asking.ask };
}

export interface KeyQuestion {
  readonly plan: Plan;
  readonly asked: Parameters<ReportApi['keyWays']>;
}

export interface HighlightQuestion {
  readonly plan: Plan;
  readonly asked: Parameters<ReportApi['highlightAtFeet']>;
}

/** How to have a key so many stops under the exposure. */
export const keyAnswers = answering<KeyQuestion, KeyWays | Refused>(({ plan, asked }) =>
  askKeyWays(plan, ...asked),
);

/** Where a lamp has to be for its highlight to lie before somebody's feet. */
export const highlightAnswers = answering<HighlightQuestion, HighlightAdvice | Refused>(({ plan, asked }) =>
  askHighlightAtFeet(plan, ...asked),
);
