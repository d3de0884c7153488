/** The pointers that are down, and a way to hand the first one over to the view's turning afterwards. */
export class Fingers {
  private readonly pressed = new Map<number, PointerEvent>();
  /** While it is true, a press is one that was handed over. */
  isReplaying = false;

  get count(): number {
    return this.pressed.size;
  }

  down(event: PointerEvent): void {
    this.pressed.set(event.pointerId, event);
  }

  move(event: PointerEvent): void {
    if (this.pressed.has(event.pointerId)) this.pressed.set(event.pointerId, event);
  }

  up(event: PointerEvent): void {
    this.pressed.delete(event.pointerId);
  }

  /** Presses again, where it is now, the pointer that was down before another: whoever listens after us has not heard of it. */
  replayFirst(element: HTMLElement, otherId: number): void {
    const first = [...this.pressed.values()].find(({ pointerId }) => pointerId !== otherId);
    if (!first) return;
    const { pointerId, pointerType, clientX, clientY, isPrimary } = first;
    this.isReplaying = true;
    element.dispatchEvent(
      new PointerEvent('pointerdown', { pointerId, pointerType, clientX, clientY, isPrimary, button: 0 }),
    );
    this.isReplaying = false;
  }
}
