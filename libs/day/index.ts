export * from './day';
export * from './add-months';
export * from './day-span';
export * from './day-set';
export * from './iso-week';
export * from './full-week';
export * from './partial-date';
