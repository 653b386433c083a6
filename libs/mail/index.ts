export { openMailer, type MailerOptions } from './open-mailer';
