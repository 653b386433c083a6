export * from './write-letters';
export * from './print-letters';
export * from './queue-mails';
