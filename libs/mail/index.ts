export { openMailer } from './open-mailer';
