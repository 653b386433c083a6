export * from './own-second-factor';
export * from './requirement';
export { takeCode } from './take-code';
