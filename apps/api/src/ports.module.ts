import { Module, type DynamicModule } from '@nestjs/common';
import { openCourier } from '../../../libs/courier';
import { openMailer } from '../../../libs/mail';
import { openPress } from '../../../libs/press';
import { passwords, sealsOf } from '../../../libs/store';
import { USUAL_SESSION_RULES } from '../../../libs/usecases';
import { securityLog } from './auth/security-log';
import { openId } from './session/open-id';
import { shopClock } from './shop-clock';
import {
  CONFIG,
  COURIER,
  ELSEWHERE,
  MAIL,
  PASSWORDS,
  PORTS,
  PRINTING,
  SEALS,
  SECURITY_LOG,
  SESSION_RULES,
  type ApiOptions,
} from './tokens';

/** Hands every module the store, the clock and the configuration it was started with. */
@Module({})
export class PortsModule {
  static with(options: ApiOptions): DynamicModule {
    const clock = options.clock ?? shopClock(options.config.timeZone);
    const seals = sealsOf(options.config);
    const mail = { store: options.store, seals, environment: options.config.mail, openMailer };
    return {
      module: PortsModule,
      global: true,
      providers: [
        { provide: PORTS, useValue: { store: options.store, clock } },
        { provide: CONFIG, useValue: options.config },
        {
          provide: PRINTING,
          useValue: { store: options.store, clock, press: openPress(), zone: options.config.timeZone },
        },
        { provide: PASSWORDS, useValue: options.passwords ?? passwords },
        { provide: ELSEWHERE, useValue: options.config.elsewhere ? openId(options.config.elsewhere) : null },
        { provide: SEALS, useValue: seals },
        { provide: MAIL, useValue: mail },
        { provide: COURIER, useValue: openCourier({ inHouse: options.config.webhookInHouse }) },
        { provide: SECURITY_LOG, useValue: securityLog(options.config, options.securityLog) },
        { provide: SESSION_RULES, useValue: options.sessionRules ?? USUAL_SESSION_RULES },
      ],
      exports: [PORTS, PRINTING, CONFIG, PASSWORDS, ELSEWHERE, SEALS, MAIL, COURIER, SECURITY_LOG, SESSION_RULES],
    };
  }
}
