export * from './actor';
export * from './clock';
export * from './outcome';
