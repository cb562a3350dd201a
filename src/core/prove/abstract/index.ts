export { explore, type Explored, type ExploreOptions } from './explore.ts';
