export * from './print-handover-sheet';
export * from './print-settings';
