/** What is carried, and what letting it go over the rig does; nothing is carried where that is null. */
interface Carried {
  readonly name: string;
  readonly drop: (() => void) | null;
}

/** Less than this is a press, pixels. */
const SLACK_PX = 6;
/** Where a piece is let go to be put on: the picture, or its name at the foot of a page too narrow for both. */
const overRig = (x: number, y: number): Element | null =>
  document.elementFromPoint(x, y)?.closest('[data-rig]') ?? null;

/**
 * Makes a thing one that can be carried to the rig's picture by mouse or finger. A label goes with the pointer; it
 * stands in the top layer, where no scrolling part of the page can cut it off. Whoever does not drag has a button.
 */
export function carry(
  node: HTMLElement,
  given: Carried,
): { update: (next: Carried) => void; destroy: () => void } {
  let carried = given;
  let from: { readonly x: number; readonly y: number } | null = null;
  let label: HTMLElement | null = null;
  let over: Element | null = null;

  function lift(): HTMLElement {
    const made = document.createElement('div');
    made.className = 'in-hand';
    made.textContent = carried.name;
    made.popover = 'manual';
    document.body.append(made);
    made.showPopover();
    return made;
  }

  function mark(next: Element | null): void {
    over?.removeAttribute('data-over');
    next?.setAttribute('data-over', '');
    over = next;
  }

  function putDown(): void {
    mark(null);
    label?.remove();
    label = null;
    from = null;
  }

  function down(event: PointerEvent): void {
    if (event.button !== 0 || carried.drop === null) return;
    event.preventDefault();
    from = { x: event.clientX, y: event.clientY };
    node.setPointerCapture(event.pointerId);
  }

  function move(event: PointerEvent): void {
    if (from === null) return;
    const { clientX: x, clientY: y } = event;
    if (label === null && Math.hypot(x - from.x, y - from.y) < SLACK_PX) return;
    label ??= lift();
    label.style.translate = `${x + 12}px ${y + 12}px`;
    mark(overRig(x, y));
  }

  function up(event: PointerEvent): void {
    const lands = label !== null && overRig(event.clientX, event.clientY) !== null;
    putDown();
    if (lands) carried.drop?.();
  }

  node.addEventListener('pointerdown', down);
  node.addEventListener('pointermove', move);
  node.addEventListener('pointerup', up);
  node.addEventListener('pointercancel', putDown);
  return {
    update(next) {
      carried = next;
    },
    destroy() {
      putDown();
      node.removeEventListener('pointerdown', down);
      node.removeEventListener('pointermove', move);
      node.removeEventListener('pointerup', up);
      node.removeEventListener('pointercancel', putDown);
    },
  };
}
