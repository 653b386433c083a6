export * from './open-courier';
export * from './is-public';
