/** Asks the browser for frames, one at a time. */
export interface Frames {
  /** `late`: where drawing is slow, what was pressed is painted first and the picture follows. */
  readonly ask: (late: boolean) => void;
  readonly stop: () => void;
}

export function framesOf(draw: (nowMs: number) => void): Frames {
  let pending = 0;
  let afterPaint: ReturnType<typeof setTimeout> | undefined;
  const drawNow = (nowMs: number) => {
    pending = 0;
    draw(nowMs);
  };
  const drawLate = () => {
    afterPaint = setTimeout(() => drawNow(performance.now()));
  };
  return {
    ask(late) {
      if (pending === 0) pending = requestAnimationFrame(late ? drawLate : drawNow);
    },
    stop() {
      cancelAnimationFrame(pending);
      clearTimeout(afterPaint);
    },
  };
}
