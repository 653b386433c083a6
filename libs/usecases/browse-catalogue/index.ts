export * from './browse-catalogue';
export * from './to-contract';
