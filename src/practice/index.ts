export { followAddress } from './route/followAddress.ts';
