export * from './change-ticket';
