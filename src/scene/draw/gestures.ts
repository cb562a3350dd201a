import { graspedPart, gripOf, readDrag, type Grip, type Intent } from '../intents.ts';
import type { Picked } from './picker.ts';

export interface Hand {
  readonly pick: (clientX: number, clientY: number) => Picked | null;
  readonly kindOf: (id: string) => string;
  readonly metresPerPixel: () => number;
  readonly emit: (intent: Intent) => void;
  /** A part is in the hand, or let go. */
  readonly hold: (target: string | null) => void;
}

/** A press that moves less than this is a choice, not a drag, pixels. */
const SLACK_PX = 5;

interface Drag {
  readonly pointer: number;
  readonly target: string;
  readonly grip: Grip;
  x: number;
  y: number;
  decided: 'turn' | 'slide' | null;
  moved: boolean;
}

/**
 * The pointer on the canvas. A press on something that can be taken hold of moves it; anywhere else it turns the
 * picture. Every drag has a way without one: choosing, and the panel's own buttons.
 */
export function listen(canvas: HTMLElement, hand: Hand): () => void {
  let drag: Drag | null = null;
  let pressed: { x: number; y: number; target: string | null } | null = null;

  const down = (event: PointerEvent) => {
    const picked = hand.pick(event.clientX, event.clientY);
    const target = picked ? targetOf(picked) : null;
    pressed = { x: event.clientX, y: event.clientY, target };
    const grip = picked && event.button === 0 ? gripOf(hand.kindOf(picked.id), partOf(hand, picked)) : null;
    if (!grip || target === null) return;
    event.stopImmediatePropagation();
    canvas.setPointerCapture(event.pointerId);
    drag = {
      pointer: event.pointerId,
      target,
      grip,
      x: event.clientX,
      y: event.clientY,
      decided: null,
      moved: false,
    };
    hand.hold(target);
  };

  const move = (event: PointerEvent) => {
    if (!drag || event.pointerId !== drag.pointer) return;
    const [dx, dy] = [event.clientX - drag.x, event.clientY - drag.y];
    if (!drag.moved && Math.hypot(dx, dy) < SLACK_PX) return;
    drag.moved = true;
    drag.decided ??= Math.abs(dx) > Math.abs(dy) ? 'turn' : 'slide';
    drag.x = event.clientX;
    drag.y = event.clientY;
    send(drag, dx, dy, false);
  };

  const up = (event: PointerEvent) => {
    const was = drag;
    drag = null;
    if (was?.moved) send(was, 0, 0, true);
    if (was) hand.hold(null);
    if (
      pressed &&
      !was?.moved &&
      Math.hypot(event.clientX - pressed.x, event.clientY - pressed.y) < SLACK_PX
    ) {
      hand.emit({ kind: 'choose', target: pressed.target });
    }
    pressed = null;
  };

  const send = (from: Drag, dx: number, dy: number, ended: boolean) => {
    const read = readDrag(from.grip, from.decided, dx, dy, hand.metresPerPixel());
    if (!read) return;
    if (read.kind === 'turn') hand.emit({ kind: 'turn', target: from.target, turns: read.amount, ended });
    else hand.emit({ kind: 'slide', target: from.target, lengthM: read.amount, ended });
  };

  // Capture: a hand that takes hold must stop the camera before the camera hears of the press.
  canvas.addEventListener('pointerdown', down, true);
  canvas.addEventListener('pointermove', move);
  canvas.addEventListener('pointerup', up);
  canvas.addEventListener('pointercancel', up);
  return () => {
    canvas.removeEventListener('pointerdown', down, true);
    canvas.removeEventListener('pointermove', move);
    canvas.removeEventListener('pointerup', up);
    canvas.removeEventListener('pointercancel', up);
  };
}

const partOf = (hand: Hand, { id, part }: Picked): string => graspedPart(hand.kindOf(id), part);

export const targetOf = ({ id, part }: Pick<Picked, 'id' | 'part'>): string =>
  part === '' ? id : `${id}/${part}`;
