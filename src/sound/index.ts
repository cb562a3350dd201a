export { hear, shareOf } from './hear.ts';
export { openEar, type Ear } from './ear.ts';
export {
  alarmHz,
  strengthOf,
  type Lasting,
  type LastingSound,
  type Moment,
  type Passing,
  type PassingSound,
  type Side,
  type Sound,
  type Strength,
} from './sounds.ts';
