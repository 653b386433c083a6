export * from './naming-of';
export * from './part-ref';
export * from './ruling-view';
export * from './verdict-view';
export * from './keys-of';
