export * from './list-flags';
export * from './decide-flag';
