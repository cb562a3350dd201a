export { cohort, type CohortSize, type InventedRun } from './cohort.ts';
