export * from './browse-catalogue';
export * from './to-contract';
export * from './resident-catalogue';
