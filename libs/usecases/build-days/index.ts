export * from './unit-evidence';
export * from './infer-unit';
export * from './recompute-unit';
export * from './build-dates-view';
export * from './facts-of-unit';
export * from './prepared-shop';
