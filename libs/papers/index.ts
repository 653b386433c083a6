export * from './paper';
export * from './saying';
export * from './sheet-lines';
export * from './handover-sheet';
export * from './label-sheets';
export * from './cautions';
