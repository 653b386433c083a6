import { Module, type DynamicModule, type Type } from '@nestjs/common';
import { MODULE_METADATA } from '@nestjs/common/constants';
import { APP_FILTER, APP_GUARD, APP_INTERCEPTOR, APP_PIPE } from '@nestjs/core';
import { ApiTokensModule } from './api-tokens/api-tokens.module';
import { ActingInterceptor } from './auth/acting.interceptor';
import { SessionGuard } from './auth/session.guard';
import { TokenDoor } from './auth/token-door';
import { BulletinsModule } from './bulletins/bulletins.module';
import { CallbacksModule } from './callbacks/callbacks.module';
import { BenchesModule } from './benches/benches.module';
import { BoardModule } from './board/board.module';
import { DescriptionModule } from './open-api/description.module';
import { CatalogueModule } from './catalogue/catalogue.module';
import { AnswerShapeInterceptor } from './http/answer-shape.interceptor';
import { RepeatInterceptor } from './http/repeat.interceptor';
import { FiguresModule } from './figures/figures.module';
import { EstimatesModule } from './estimates/estimates.module';
import { FlagsModule } from './flags/flags.module';
import { ProblemFilter } from './http/problem.filter';
import { ValidationPipe } from './http/validation';
import { VersionTagInterceptor } from './http/version-tag.interceptor';
import { HealthModule } from './health/health.module';
import { LiveModule } from './live/live.module';
import { MetricsModule } from './metrics/metrics.module';
import { OwnersModule } from './owners/owners.module';
import { PhotosModule } from './photos/photos.module';
import { PortsModule } from './ports.module';
import { PrintsModule } from './prints/prints.module';
import { RechecksModule } from './rechecks/rechecks.module';
import { RulebookModule } from './rulebook/rulebook.module';
import { ScanModule } from './scan/scan.module';
import { SessionModule } from './session/session.module';
import { ShelfModule } from './shelf/shelf.module';
import { SheetsModule } from './sheets/sheets.module';
import { ShopDataModule } from './shop-data/shop-data.module';
import { SettingsModule } from './settings/settings.module';
import { TicketsModule } from './tickets/tickets.module';
import { PeopleModule } from './people/people.module';
import type { ApiOptions } from './tokens';
import { UnitsModule } from './units/units.module';
import { WebhooksModule } from './webhooks/webhooks.module';

/** One module per noun of the trade. */
const NOUNS: Type[] = [
  SessionModule,
  CatalogueModule,
  OwnersModule,
  UnitsModule,
  ShopDataModule,
  SheetsModule,
  TicketsModule,
  BoardModule,
  BenchesModule,
  EstimatesModule,
  ShelfModule,
  PhotosModule,
  ScanModule,
  FlagsModule,
  BulletinsModule,
  RulebookModule,
  RechecksModule,
  CallbacksModule,
  FiguresModule,
  PrintsModule,
  LiveModule,
  SettingsModule,
  PeopleModule,
  ApiTokensModule,
  WebhooksModule,
  HealthModule,
  MetricsModule,
  DescriptionModule,
];

/** Every controller class, without starting anything. */
export const allControllers = (): readonly Type[] =>
  NOUNS.flatMap((noun) => Reflect.getMetadata(MODULE_METADATA.CONTROLLERS, noun) as Type[]);

@Module({})
export class AppModule {
  static with(options: ApiOptions): DynamicModule {
    return {
      module: AppModule,
      imports: [PortsModule.with(options), ...NOUNS],
      providers: [
        TokenDoor,
        { provide: APP_GUARD, useClass: SessionGuard },
        { provide: APP_FILTER, useClass: ProblemFilter },
        { provide: APP_PIPE, useClass: ValidationPipe },
        { provide: APP_INTERCEPTOR, useClass: ActingInterceptor },
        { provide: APP_INTERCEPTOR, useClass: RepeatInterceptor },
        { provide: APP_INTERCEPTOR, useClass: AnswerShapeInterceptor },
        { provide: APP_INTERCEPTOR, useClass: VersionTagInterceptor },
      ],
    };
  }
}
