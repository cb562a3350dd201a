import type { Component } from 'svelte';

/** How the workplaces that stand beside practice are fetched. Each reads the rest of its own address. */
export interface Workplaces {
  readonly desk: () => Promise<{ readonly Desk: Component<{ path: readonly string[] }> }>;
  readonly bench: () => Promise<{ readonly Bench: Component<{ path: readonly string[] }> }>;
}
