/** The places, instruments and steps an act can name, for whoever offers acts to a person. */
export {
  cleanPlaces,
  detectorPlaces,
  gauges,
  leakPlaces,
  lookPlaces,
  markPlaces,
  measures,
  recordFields,
  referReasons,
} from '../core/rig/index.ts';
export { stagesOf } from '../core/procedure/index.ts';
