import type { Scene } from 'three';
import type { Plan } from '../../core/plan/schema/plan';
import type { Setup } from '../../core/plan/schema/setup';
import { planStore } from '../../desk/planStore';
import { sessionStore } from '../../desk/sessionStore';
import { walkStore } from '../../desk/walkStore';
import type { WalkScene } from '../drive/stageDriver';
import type { Pane } from '../picture/painter';
import { chosenAt, chosenRooms } from './chosenRounds';
import { WalkHand } from './hand/walkHand';
import { hiddenIn } from './picking';
import { standOf } from './standpoints';
import { WalkHelpers } from './walkHelpers';
import { WalkRound } from './walkRound';
import { walkShows } from './walkShows';

/** What of the moment the walk-round stands in. */
interface Standing {
  readonly plan: Plan;
  readonly seconds: number;
  readonly setup: Setup | null;
  readonly pane: Pane;
  /** Whether a turn runs out softly. */
  readonly isDamped: boolean;
}

/** The walk-round on the stage: its eye, its hand, and what is drawn for it beyond the set. It comes once its pane does. */
export class WalkStage {
  private readonly walk: WalkRound;
  private readonly hand: WalkHand;
  private readonly helpers = new WalkHelpers();
  private answered: object | null = null;

  constructor(
    private readonly scene: Scene,
    onTurned: () => void,
  ) {
    scene.add(this.helpers.group);
    this.walk = new WalkRound(onTurned);
    this.hand = new WalkHand(this.walk);
  }

  /** Listens to an element's pointers and keys; null lets go. */
  bind(element: HTMLElement | null): void {
    // The hand hears the pointers first, and leaves to the turning what it does not take.
    this.hand.bind(element);
    this.walk.bind(element);
  }

  /** Takes the eye one step on, and to where the page asked for; true while it turns. */
  step({ plan, seconds, setup, pane, isDamped }: Standing): boolean {
    const { walk } = this;
    walk.placeFor(plan, planStore.getState().documentNumber);
    walk.setAspect(pane.width / pane.height);
    this.standAsAsked(plan, seconds, setup);
    walk.setDamped(isDamped);
    return walk.settle();
  }

  /** What its picture is painted from (see `walkShows`), with rings around the chosen items. */
  seen(seconds: number, setup: Setup | null): WalkScene {
    const shows = walkShows();
    const { plan, proposed, explained, cautioned } = shows;
    const { selectedIds } = sessionStore.getState();
    const { camera, version } = this.walk;
    return {
      plan,
      camera,
      inputs: [plan, proposed?.plan, explained, cautioned, setup, version, selectedIds],
      hidden: () => hiddenIn(plan),
      layHelpers: (exposure) =>
        this.helpers.set(shows, setup, seconds, chosenAt(plan, selectedIds, seconds), exposure),
    };
  }

  /** Draws what belongs to the hand, over the picture. */
  drawHand(): void {
    this.hand.draw();
  }

  dispose(): void {
    this.hand.bind(null);
    this.walk.dispose();
    this.scene.remove(this.helpers.group);
    this.helpers.dispose();
  }

  /** Takes the eye where the page asked for, once. */
  private standAsAsked(plan: Plan, seconds: number, setup: Setup | null): void {
    const { asked } = walkStore.getState();
    if (!asked || asked === this.answered) return;
    this.answered = asked;
    const rooms = chosenRooms(plan, sessionStore.getState().selectedIds, seconds);
    const { stand: from, halves } = this.walk;
    const stand = standOf(asked.standpoint, { plan, seconds, setup, rooms, from, halves });
    if (stand) this.walk.standAt(stand);
  }
}
