export * from './bring-sheet';
export * from './look-at-sheet';
export * from './import-sheet';
export * from './view-sheet';
export * from './rejected-rows';
export * from './drop-sheet';
