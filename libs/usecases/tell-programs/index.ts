export * from './manage-webhooks';
export * from './deliver-next-event';
