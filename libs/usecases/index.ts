export * from './actor';
export * from './clock';
export * from './outcome';
export * from './ports/index';
export * from './run';
