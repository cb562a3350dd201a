/** One state that can be come back to, and the change that led to it. */
export interface Step<Mark, State> {
  readonly mark: Mark;
  readonly state: State;
}

/** What was done, with where one stands in it. States share all that did not change between them. */
export interface History<Mark, State> {
  readonly steps: readonly Step<Mark, State>[];
  readonly at: number;
}

/** Changes that can be taken back. */
const most = 200;

export function historyOf<Mark, State>(mark: Mark, state: State): History<Mark, State> {
  return { steps: [{ mark, state }], at: 0 };
}

/** One more change; what had been taken back is given up. */
export function done<Mark, State>(
  { steps, at }: History<Mark, State>,
  mark: Mark,
  state: State,
): History<Mark, State> {
  const all = [...steps.slice(0, at + 1), { mark, state }];
  const kept = all.slice(Math.max(0, all.length - most));
  return { steps: kept, at: kept.length - 1 };
}

/** Another place in what was done; beyond its ends nothing changes. */
export function goneTo<Mark, State>(history: History<Mark, State>, at: number): History<Mark, State> {
  return { ...history, at: Math.min(Math.max(0, at), history.steps.length - 1) };
}

/** Where one stands. */
export function stateOf<Mark, State>({ steps, at }: History<Mark, State>): State {
  return steps[at].state;
}
