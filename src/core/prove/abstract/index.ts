export { agree, type Agreement, type Disagreement } from './agree.ts';
export { explore, notExplored, type Explored, type ExploreOptions } from './explore.ts';
export { levels } from './levels.ts';
export { moves, type Move } from './moves.ts';
