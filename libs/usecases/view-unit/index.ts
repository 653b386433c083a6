export * from './load-unit';
export * from './unit-view';
