export * from './send-next-mail';
