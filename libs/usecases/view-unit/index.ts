export * from './load-unit';
export * from './unit-view';
export * from './papers';
