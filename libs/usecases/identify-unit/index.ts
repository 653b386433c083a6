export * from './change-unit';
export * from './identify-unit';
export * from './resolve-identity';
