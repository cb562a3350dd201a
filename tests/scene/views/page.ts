import { createScene, type SceneView, type ViewName } from '../../../src/scene/index.ts';
import { cutPoints, isCutColour } from './sections.ts';

export interface Seen {
  /** The picture as PNG, base64. */
  readonly png: string;
  readonly deviation: number;
  readonly cut: number;
  readonly agreeing: number;
  readonly calls: number;
  readonly triangles: number;
}

/** What this page offers to whoever holds the browser. The shipped app offers nothing of the kind. */
export interface Views {
  readonly draw: (view: SceneView, name: ViewName, width: number, height: number) => Promise<Seen>;
  /** Share of pixels that differ by more than a step in 10 of any channel; 1 where sizes differ. */
  readonly differing: (a: string, b: string) => Promise<number>;
  readonly frameMs: (view: SceneView, name: ViewName, frames: number) => Promise<number>;
  readonly idleFrames: (view: SceneView, forMs: number) => Promise<number>;
}

declare global {
  interface Window {
    views?: Views;
  }
}

const GRID_PX = 7;

async function pixels(source: CanvasImageSource, width: number, height: number): Promise<Uint8ClampedArray> {
  const paper = new OffscreenCanvas(width, height).getContext('2d');
  if (!paper) throw new Error('No paper to draw on.');
  paper.drawImage(source, 0, 0);
  return paper.getImageData(0, 0, width, height).data;
}

async function decoded(png: string) {
  const image = new Image();
  image.src = `data:image/png;base64,${png}`;
  await image.decode();
  return { width: image.width, height: image.height, data: await pixels(image, image.width, image.height) };
}

function canvasOf(width: number, height: number): HTMLCanvasElement {
  const canvas = document.createElement('canvas');
  canvas.style.width = `${width}px`;
  canvas.style.height = `${height}px`;
  document.body.replaceChildren(canvas);
  return canvas;
}

function deviationOf(data: Uint8ClampedArray): number {
  let [sum, squares] = [0, 0];
  const count = data.length / 4;
  for (let i = 0; i < data.length; i += 4) {
    const light = 0.2126 * data[i] + 0.7152 * data[i + 1] + 0.0722 * data[i + 2];
    sum += light;
    squares += light * light;
  }
  return Math.sqrt(squares / count - (sum / count) ** 2);
}

window.views = {
  async draw(view, name, width, height) {
    const canvas = canvasOf(width, height);
    const scene = createScene(canvas, { tier: 'plain', theme: 'light', reducedMotion: true });
    scene.resize(width, height);
    scene.setView(name);
    scene.sync(view);
    let png = '';
    await new Promise<void>((done) => {
      const stop = scene.onFrame((stir) => {
        if (stir === 'asked') return;
        // Within the frame that drew it: afterwards the buffer may be empty.
        png = canvas.toDataURL('image/png').split(',')[1];
        stop();
        done();
      });
    });
    const { data } = await decoded(png);
    const points = cutPoints(view, name, width, height, GRID_PX);
    const agreeing = points.filter(({ x, y, stuff }) => {
      const i = 4 * (y * width + x);
      return isCutColour(stuff, [data[i], data[i + 1], data[i + 2]]);
    }).length;
    const { calls, triangles } = scene.stats();
    scene.dispose();
    const grid = Math.floor((width - 1) / GRID_PX) * Math.floor((height - 1) / GRID_PX);
    return {
      png,
      deviation: deviationOf(data),
      cut: points.length / grid,
      agreeing: points.length === 0 ? 1 : agreeing / points.length,
      calls,
      triangles,
    };
  },
  async differing(a, b) {
    const [one, other] = [await decoded(a), await decoded(b)];
    if (one.width !== other.width || one.height !== other.height) return 1;
    let differ = 0;
    for (let i = 0; i < one.data.length; i += 4) {
      const most = Math.max(...[0, 1, 2].map((k) => Math.abs(one.data[i + k] - other.data[i + k])));
      if (most > 25) differ++;
    }
    return differ / (one.data.length / 4);
  },
  async frameMs(view, name, frames) {
    const scene = createScene(canvasOf(640, 360), { tier: 'plain', reducedMotion: true });
    scene.resize(640, 360);
    scene.sync(view);
    scene.setView(name);
    const drawn = () =>
      new Promise<void>((done) => {
        const stop = scene.onFrame((stir) => {
          if (stir === 'asked') return;
          stop();
          done();
        });
      });
    // The first frames compile what they draw with.
    for (let i = 0; i < 3; i++) {
      scene.nudge('ArrowRight');
      await drawn();
    }
    let total = 0;
    for (let i = 0; i < frames; i++) {
      scene.nudge('ArrowLeft');
      await drawn();
      total += scene.stats().lastFrameMs;
    }
    scene.dispose();
    return total / frames;
  },
  async idleFrames(view, forMs) {
    const scene = createScene(canvasOf(320, 240), { tier: 'plain' });
    scene.resize(320, 240);
    scene.sync({ ...view, flows: [], fluid: [] });
    const restMs = 1000;
    const pass = (ms: number) => new Promise((done) => setTimeout(done, ms));
    // The eye comes to rest and the fine frame is drawn: then nothing is left to draw, however slow the machine.
    let before = -1;
    for (let tries = 0; tries < 12 && before !== scene.stats().frames; tries++) {
      before = scene.stats().frames;
      await pass(restMs);
    }
    before = scene.stats().frames;
    await pass(forMs);
    const drawn = scene.stats().frames - before;
    scene.dispose();
    return drawn;
  },
};
