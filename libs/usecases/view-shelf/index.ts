export * from './view-shelf';
export * from './view-shelf-item';
export * from './list-pulls';
export * from './say-movement';
