import { Module, type DynamicModule } from '@nestjs/common';
import { passwords } from '../../../libs/store';
import { USUAL_SESSION_RULES } from '../../../libs/usecases';
import { shopClock } from './shop-clock';
import { CONFIG, PASSWORDS, PORTS, SESSION_RULES, type ApiOptions } from './tokens';

/** Hands every module the store, the clock and the configuration it was started with. */
@Module({})
export class PortsModule {
  static with(options: ApiOptions): DynamicModule {
    const clock = options.clock ?? shopClock(options.config.timeZone);
    return {
      module: PortsModule,
      global: true,
      providers: [
        { provide: PORTS, useValue: { store: options.store, clock } },
        { provide: CONFIG, useValue: options.config },
        { provide: PASSWORDS, useValue: options.passwords ?? passwords },
        { provide: SESSION_RULES, useValue: options.sessionRules ?? USUAL_SESSION_RULES },
      ],
      exports: [PORTS, CONFIG, PASSWORDS, SESSION_RULES],
    };
  }
}
