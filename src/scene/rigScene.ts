import type { Handle } from './draw/handles.ts';
import type { SceneView } from './describe/view.ts';
import type { Intent } from './intents.ts';
import type { Theme } from './palette.ts';
import type { Vec3 } from './shape/solid.ts';
import type { ViewName } from './views.ts';

/** `plain` draws without edge lines and at most one pixel a pixel; `auto` decides by how long a frame takes. */
export type Tier = 'auto' | 'full' | 'plain';

export interface SceneOptions {
  readonly tier?: Tier;
  readonly theme?: Theme;
  /** Nothing moves by itself: particles stand still, views change at once. */
  readonly reducedMotion?: boolean;
}

/** A new picture was asked for; drawn, with the eye still on its way; drawn, and at rest; drawn, no part having moved. */
export type Stir = 'asked' | 'moving' | 'drawn' | 'same';

export interface SceneStats {
  readonly tier: 'full' | 'plain';
  readonly frames: number;
  readonly calls: number;
  readonly triangles: number;
  readonly lastFrameMs: number;
  readonly dots: number;
}

export interface RigScene {
  readonly sync: (view: SceneView) => void;
  readonly setView: (name: ViewName) => void;
  /**
   * Lay the section plane: offset from the coupling's axis, m, toward the viewer; angle about that axis, rad, 0 across
   * the main and counter-clockwise from above. The eye turns with it.
   */
  readonly setSection: (offsetM: number, angleRad: number) => void;
  /** Cut open, or whole as a crew sees it. */
  readonly setCut: (on: boolean) => void;
  readonly setTier: (tier: Tier) => void;
  readonly setTheme: (theme: Theme) => void;
  readonly setReducedMotion: (on: boolean) => void;
  /** Mark a piece by its id, or none. */
  readonly setChosen: (id: string | null) => void;
  /** What is under a point of the canvas, CSS pixels from its corner: `id/part`, or null. */
  readonly pick: (x: number, y: number) => string | null;
  /** Parts in sight that can be taken hold of. */
  readonly handles: () => Handle[];
  /** What is in the hand now, or null: told when it is taken and when it is let go. The picture stands still meanwhile. */
  readonly onHeld: (listener: (target: string | null) => void) => () => void;
  /** Told when the user turns the picture himself, and when a named view takes over again. */
  readonly onTaken: (listener: (taken: boolean) => void) => () => void;
  readonly onIntent: (listener: (intent: Intent) => void) => () => void;
  /** Where points of the rig are on the canvas, CSS pixels from its corner. */
  readonly project: (points: readonly Vec3[]) => { readonly x: number; readonly y: number }[];
  /** Told how the picture stirs: what is laid over it must move with it. */
  readonly onFrame: (listener: (frame: Stir) => void) => () => void;
  /** Told when the driver takes the picture away, and when it gives it back. */
  readonly onLost: (listener: (lost: boolean) => void) => () => void;
  /** A key that turns, shifts or nears the picture: true when it was one. Whoever owns the canvas hands keys in. */
  readonly nudge: (key: string, shift?: boolean) => boolean;
  /** Size of the canvas, CSS pixels, and how much of its foot is covered. */
  readonly resize: (width: number, height: number, covered?: number) => void;
  readonly stats: () => SceneStats;
  readonly dispose: () => void;
}
