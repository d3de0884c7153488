import { MOUSE, PerspectiveCamera, Vector3 } from 'three';
import { OrbitControls } from 'three/addons/controls/OrbitControls.js';
import type { Plan } from '../../core/plan/schema/plan';
import { walkStore } from '../../desk/walkStore';
import { middleOfAction } from '../light/middleOfAction';
import { HELPER_LAYER } from './layer';
import type { Stand } from './standpoints';

const TURN_PER_KEY = Math.PI / 36;
const DOLLY_PER_KEY = 0.9;
const STEP_PIXELS = 40;

/** The free camera that walks round: from eye level to bird's-eye, by mouse, touch and keys, damped. */
export class WalkRound {
  readonly camera = new PerspectiveCamera(42, 1, 0.1, 4000);
  private readonly controls: OrbitControls;
  private element: HTMLElement | null = null;
  private placedFor: number | null = null;
  private settledVersion = 0;
  /** Grows with every change of the camera. */
  version = 0;

  constructor(private readonly onChange: () => void) {
    this.camera.layers.enable(HELPER_LAYER);
    this.controls = new OrbitControls(this.camera);
    this.controls.dampingFactor = 0.12;
    this.controls.minDistance = 1;
    this.controls.maxDistance = 160;
    // Just above the deck, so that the eye never sinks into it.
    this.controls.maxPolarAngle = Math.PI / 2 - 0.01;
    this.controls.screenSpacePanning = false;
    this.controls.addEventListener('change', () => {
      this.version += 1;
      this.onChange();
    });
  }

  /** Listens to an element's pointer and keys; null lets go. */
  bind(element: HTMLElement | null): void {
    if (element === this.element) return;
    if (this.element) {
      this.controls.disconnect();
      this.element.removeEventListener('keydown', this.onKey);
    }
    this.element = element;
    if (!element) return;
    this.controls.connect(element);
    // Its keys need a focus to come to.
    if (element.tabIndex < 0) element.tabIndex = 0;
    element.addEventListener('keydown', this.onKey);
  }

  /** Stands back from the action, once for each document that is opened. */
  placeFor(plan: Plan, documentNumber: number): void {
    if (this.placedFor === documentNumber) return;
    this.placedFor = documentNumber;
    const [x, , z] = middleOfAction(plan);
    const back = Math.min(40, Math.max(9, deckReach(plan) * 0.85));
    this.controls.target.set(x, 1, z);
    this.camera.position.set(x + back * 0.55, 1 + back * 0.5, z + back * 0.85);
    this.controls.update();
    this.version += 1;
  }

  /** Where the eye is and what it turns about. */
  get stand(): Stand {
    const { camera, controls } = this;
    return { eye: camera.position.toArray(), target: controls.target.toArray() };
  }

  /** Tangents of half the angles that the eye takes in, across and up. */
  get halves(): readonly [number, number] {
    const up = Math.tan((this.camera.fov * Math.PI) / 360);
    return [up * this.camera.aspect, up];
  }

  /** Takes the eye to a place, at once. */
  standAt({ eye, target }: Stand): void {
    // What is left of a turn would carry the eye off again.
    const isDamped = this.controls.enableDamping;
    this.controls.enableDamping = false;
    this.controls.update();
    this.controls.target.set(...target);
    this.camera.position.set(...eye);
    this.controls.update();
    this.controls.enableDamping = isDamped;
    this.version += 1;
    this.onChange();
  }

  /** While a tool has the left button, the right one turns the view and the middle one moves it. */
  lendLeftButton(isLent: boolean): void {
    this.controls.mouseButtons = isLent
      ? { MIDDLE: MOUSE.PAN, RIGHT: MOUSE.ROTATE }
      : { LEFT: MOUSE.ROTATE, MIDDLE: MOUSE.DOLLY, RIGHT: MOUSE.PAN };
  }

  /** Held, the view stays as it is whatever the pointers do. */
  setHeld(isHeld: boolean): void {
    this.controls.enabled = !isHeld;
  }

  /** Whether a turn runs out softly: not where a frame is slow, nor for who asks for less motion. */
  setDamped(isDamped: boolean): void {
    this.controls.enableDamping = isDamped && !matchMedia('(prefers-reduced-motion: reduce)').matches;
  }

  /** One step of the damping; true when the camera has moved since the step before. */
  settle(): boolean {
    this.controls.update();
    const hasMoved = this.version !== this.settledVersion;
    this.settledVersion = this.version;
    return hasMoved;
  }

  setAspect(aspect: number): void {
    if (Math.abs(this.camera.aspect - aspect) < 1e-4) return;
    this.camera.aspect = aspect;
    this.camera.updateProjectionMatrix();
  }

  dispose(): void {
    // The controls cannot let go of an element that they never had.
    if (this.controls.domElement) this.controls.dispose();
    this.bind(null);
  }

  private readonly onKey = (event: KeyboardEvent): void => {
    // With Alt the arrows move what is chosen, as they do elsewhere.
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    const act = event.shiftKey ? this.steps[event.key] : this.turns[event.key];
    if (!act) return;
    event.preventDefault();
    event.stopPropagation();
    act();
    this.controls.update();
  };

  private readonly turns: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => this.controls.rotateLeft(TURN_PER_KEY),
    ArrowRight: () => this.controls.rotateLeft(-TURN_PER_KEY),
    ArrowUp: () => this.controls.rotateUp(TURN_PER_KEY),
    ArrowDown: () => this.controls.rotateUp(-TURN_PER_KEY),
    '+': () => this.controls.dollyIn(DOLLY_PER_KEY),
    '=': () => this.controls.dollyIn(DOLLY_PER_KEY),
    '-': () => this.controls.dollyOut(DOLLY_PER_KEY),
    f: () => walkStore.getState().stand('at the chosen'),
  };

  private readonly steps: Readonly<Record<string, () => void>> = {
    ArrowLeft: () => this.controls.pan(STEP_PIXELS, 0),
    ArrowRight: () => this.controls.pan(-STEP_PIXELS, 0),
    ArrowUp: () => this.controls.pan(0, STEP_PIXELS),
    ArrowDown: () => this.controls.pan(0, -STEP_PIXELS),
    '+': () => this.controls.dollyIn(DOLLY_PER_KEY),
  };
}

const corner = new Vector3();

/** From the middle of the action to the farthest corner of any deck, metres. */
function deckReach(plan: Plan): number {
  const [x, , z] = middleOfAction(plan);
  let reach = 0;
  for (const piece of plan.pieces) {
    if (piece.kind !== 'deck') continue;
    for (const [cx, cz] of piece.outline) reach = Math.max(reach, corner.set(cx - x, 0, cz - z).length());
  }
  return reach;
}
