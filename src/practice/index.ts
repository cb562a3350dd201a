export { readAddress, writeAddress, type Address } from './route/address.ts';
export { followAddress } from './route/followAddress.ts';
