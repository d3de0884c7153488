import type { Refused } from '../../core/light/advice';
import type { HighlightAdvice } from '../../core/light/aimForHighlight';
import type { Plan } from '../../core/plan/schema/plan';
import { assetStore } from '../assets/assetStore';
import { setupOf } from '../choose';
import { latestWins } from '../latestWins';
import { type LightAsked, type LightState, lightStore } from '../lightStore';
import { livePlan, liveStore } from '../liveStore';
import { planStore } from '../planStore';
import { sentenceOf } from '../reasonOf';
import { reportStore } from '../reportStore';
import { ReportWorker } from '../reportWorker';
import { sessionStore } from '../sessionStore';
import type { KeyWays, ReportApi } from '../workers/reportApi';
import { silenceOf } from '../workers/silence';

interface Instant {
  readonly plan: Plan;
  readonly setupId: string | null;
  readonly seconds: number;
}

const tellTrouble = (error: unknown): void =>
  lightStore.setState({
    trouble: sentenceOf('The light could not be worked out', error),
  });

/** What is to be known now. */
const askedNow = (): LightAsked => ({
  plan: planStore.getState().plan,
  lengths: sessionStore.getState().lengths,
  assetChanges: assetStore.getState().changes,
});

const isSame = (a: LightAsked | null, b: LightAsked): boolean =>
  a?.plan === b.plan && a.lengths === b.lengths && a.assetChanges === b.assetChanges;

/** The setup that is looked through first, then the others in the plan's order. */
function inOrder(plan: Plan): readonly string[] {
  const chosen = setupOf(plan, sessionStore.getState().setupId)?.id;
  const ids = plan.setups.map(({ id }) => id);
  return chosen === undefined ? ids : [chosen, ...ids.filter((id) => id !== chosen)];
}

/**
 * Asks for the light as long as somebody looks at the Light sheet. The instant and the spans have a worker each: what
 * follows a hand does not wait for a setup.
 */
class LightAsking {
  readonly #spans = new ReportWorker(silenceOf('The light of the setups'));
  readonly #instants = new ReportWorker(silenceOf('The light of the instant'));
  #line: Promise<unknown> = Promise.resolve();
  readonly #now = latestWins<Instant>(({ plan, setupId, seconds }) =>
    this.#inLine(() => this.#instants.lightNow(plan, setupId, seconds)).then((now) => {
      // The answer to what a hand has left already is still nearer to it than the one before.
      if (now) lightStore.setState({ now });
    }, tellTrouble),
  );
  readonly #setups = latestWins<LightAsked>((wanted, isLatest) =>
    this.#readSetups(wanted, isLatest).catch(tellTrouble),
  );

  askNow(): void {
    const plan = livePlan();
    const setupId = setupOf(plan, sessionStore.getState().setupId)?.id ?? null;
    this.#now.ask({ plan, setupId, seconds: liveStore.getState().seconds });
  }

  /** What is known of the same plan already is kept, and what is being worked out is given up. */
  askSetups(): void {
    this.#spans.giveUp();
    this.goOn();
  }

  /** Goes on with the setups of the same plan, after the one that is being worked out. */
  goOn(): void {
    this.#setups.ask(askedNow());
  }

  stop(): void {
    this.#setups.drop();
    this.#now.drop();
    this.#spans.giveUp();
  }

  keyWays(plan: Plan, ...question: Parameters<ReportApi['keyWays']>): Promise<KeyWays | Refused> {
    return this.#inLine(() => this.#instants.keyWays(plan, ...question));
  }

  highlightAtFeet(
    plan: Plan,
    ...question: Parameters<ReportApi['highlightAtFeet']>
  ): Promise<HighlightAdvice | Refused> {
    return this.#inLine(() => this.#instants.highlightAtFeet(plan, ...question));
  }

  /** A worker holds one plan: each question waits until the one before, perhaps about another plan, is answered. */
  #inLine<Value>(question: () => Promise<Value>): Promise<Value> {
    const next = this.#line.then(question);
    this.#line = next.catch(() => undefined);
    return next;
  }

  /** The others wait for the night's own reading, which says what they see. */
  async #readSetups(wanted: LightAsked, isLatest: () => boolean): Promise<void> {
    const { plan, lengths } = wanted;
    // Until the first of what is wanted is there, what was known before stands.
    const known = (): LightState['setups'] => {
      const { setups, asked } = lightStore.getState();
      return isSame(asked, wanted) ? setups : new Map();
    };
    const [chosen] = inOrder(plan);
    for (const id of inOrder(plan)) {
      if (known().has(id)) continue;
      const { night, forPlan } = reportStore.getState();
      const seen = forPlan === plan ? (night?.setups.find((setup) => setup.id === id) ?? null) : null;
      if (!seen && id !== chosen) continue;
      const light = await this.#spans.light(plan, id, seen, lengths);
      if (light && isSame(wanted, askedNow()))
        lightStore.setState({
          setups: new Map([...known(), [id, light]]),
          asked: wanted,
          trouble: null,
        });
      if (!isLatest()) return;
    }
  }
}

let asking: LightAsking | null = null;

/** The worker is started when the sheet is first opened. */
const asked = (): LightAsking => {
  asking ??= new LightAsking();
  return asking;
};

/**
 * Keeps asking for the light as plan, clock and setup change; the function that comes back ends that. While something is
 * in the hand only the instant is asked for, so that it follows the hand.
 */
export function followLight(): () => void {
  const light = asked();
  light.askNow();
  light.askSetups();
  const ends = [
    planStore.subscribe((state, before) => {
      if (state.plan === before.plan) return;
      light.askNow();
      light.askSetups();
    }),
    liveStore.subscribe((state, before) => {
      if (state.seconds !== before.seconds || state.gesture !== before.gesture) light.askNow();
    }),
    sessionStore.subscribe((state, before) => {
      if (state.lengths === before.lengths && state.setupId === before.setupId) return;
      light.askNow();
      light.askSetups();
    }),
    reportStore.subscribe((state, before) => {
      if (state.forPlan !== before.forPlan && state.forPlan === planStore.getState().plan) light.goOn();
    }),
    assetStore.subscribe((state, before) => {
      if (state.changes === before.changes) return;
      light.askNow();
      light.askSetups();
    }),
  ];
  return () => {
    for (const end of ends) end();
    light.stop();
  };
}

export const askKeyWays = (
  plan: Plan,
  ...question: Parameters<ReportApi['keyWays']>
): Promise<KeyWays | Refused> => asked().keyWays(plan, ...question);

export const askHighlightAtFeet = (
  plan: Plan,
  ...question: Parameters<ReportApi['highlightAtFeet']>
): Promise<HighlightAdvice | Refused> => asked().highlightAtFeet(plan, ...question);
