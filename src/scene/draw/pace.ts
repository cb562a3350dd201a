/** What a pace drives. */
export interface Drawn {
  /** Draws one frame at a share of the screen's own pixels. */
  readonly draw: (nowMs: number, share: number) => void;
  /** Marks the end of what was sent off; the answer tells whether it was reached since. */
  readonly mark: () => () => boolean;
  /** A frame is dear here: what was pressed is answered first, and no more is drawn than leaves room for the rest. */
  readonly isDear: () => boolean;
}

export interface Pace {
  /** A new picture is wanted. */
  readonly ask: () => void;
  /** Somebody pressed something: what answers it is painted before the picture is drawn. */
  readonly pressed: () => void;
  readonly stop: () => void;
}

/** How long the answer to a press has the machine to itself, ms (assumed: a paint without a graphics card). */
const ANSWER_MS = 100;
/** So long after the last frame or press the picture is drawn once more, as finely as it may be, ms. */
const REST_MS = 300;
/** What a frame may take while things move, and once they rest, ms: a press may come while it is drawn. */
const MOVING_MS = 45;
const RESTING_MS = 100;
/** Shares of the screen's pixels, from fine to coarse. */
const shares = [1, 0.8, 0.65, 0.5, 0.4];
const LAST = shares.length - 1;
const LOOK_AGAIN_MS = 4;

/** One step coarser when a frame took clearly more than it may, finer when it took clearly less. */
function stepFor(step: number, tookMs: number, mayMs: number): number {
  if (tookMs > 1.4 * mayMs) return Math.min(LAST, step + (tookMs > 3 * mayMs ? 2 : 1));
  return tookMs < 0.5 * mayMs ? Math.max(0, step - 1) : step;
}

/**
 * Says when a frame is drawn and how finely. Where frames are dear they are timed to their end, one is sent off only
 * when the last is done and the machine was free as long as it took; while things move they are coarse, and a fine
 * one follows when nothing was pressed or asked for a while.
 */
export function paceOf({ draw, mark, isDear }: Drawn): Pace {
  let frame = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let resting: ReturnType<typeof setTimeout> | undefined;
  let drawing = false;
  let wanted = false;
  let pressedMs = -Infinity;
  let freeMs = 0;
  let moving = 0;
  let rest = 0;
  let counted = 0;

  const idle = (): boolean => frame === 0 && timer === undefined && !drawing;

  function ask(): void {
    wanted = true;
    clearTimeout(resting);
    if (idle()) schedule();
  }

  function schedule(): void {
    if (!isDear()) {
      frame = requestAnimationFrame((nowMs) => {
        frame = 0;
        wanted = false;
        draw(nowMs, 1);
      });
      return;
    }
    const waitMs = Math.max(freeMs, pressedMs + ANSWER_MS) - performance.now();
    if (waitMs > 0) timer = setTimeout(again, waitMs);
    // A task of its own after the frame's paint.
    else frame = requestAnimationFrame(() => (timer = setTimeout(() => send(false))));
  }

  /** Another press may have come meanwhile. */
  function again(): void {
    timer = undefined;
    schedule();
  }

  function send(fine: boolean): void {
    frame = 0;
    timer = undefined;
    wanted = false;
    // The first frame is fine: what it takes is not known yet.
    const asRest = fine || counted === 0;
    const share = shares[asRest ? rest : Math.max(moving, rest)];
    const fromMs = performance.now();
    drawing = true;
    draw(fromMs, share);
    const isDone = mark();
    const look = (): void => {
      if (!isDone()) timer = setTimeout(look, LOOK_AGAIN_MS);
      else done(performance.now() - fromMs, asRest);
    };
    look();
  }

  function done(tookMs: number, asRest: boolean): void {
    timer = undefined;
    drawing = false;
    counted += 1;
    freeMs = performance.now() + tookMs;
    // The first two compile what they draw with.
    if (counted > 2 && asRest) rest = stepFor(rest, tookMs, RESTING_MS);
    else if (counted > 2) moving = stepFor(moving, tookMs, MOVING_MS);
    if (wanted) schedule();
    else if (!asRest) waitForRest();
  }

  function waitForRest(): void {
    if (shares[Math.max(moving, rest)] === shares[rest]) return;
    clearTimeout(resting);
    const waitMs = Math.max(freeMs, pressedMs) + REST_MS - performance.now();
    resting = setTimeout(() => {
      if (performance.now() < pressedMs + REST_MS) waitForRest();
      else if (idle()) send(true);
    }, waitMs);
  }

  return {
    ask,
    pressed: () => (pressedMs = performance.now()),
    stop() {
      cancelAnimationFrame(frame);
      clearTimeout(timer);
      clearTimeout(resting);
      drawing = true;
    },
  };
}
