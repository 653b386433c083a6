export * from './personal-data-of';
export * from './erase-owner';
export * from './retention';
