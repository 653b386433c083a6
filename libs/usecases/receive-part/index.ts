export * from './receive-part';
export * from './count-part';
export * from './mark-pulled';
export * from './set-shelf-item';
