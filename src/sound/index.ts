export { gainOf, openEar, type Ear } from './hear.ts';
