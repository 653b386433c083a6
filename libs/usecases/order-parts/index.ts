export * from './order-parts';
export * from './how-many';
export * from './to-order-csv';
