import type { ApiTokenStore } from './api-token-store';
import type { BenchStore } from './bench-store';
import type { BulkStore } from './bulk-store';
import type { BulletinStore } from './bulletin-store';
import type { CallbackStore } from './callback-store';
import type { CatalogueStore } from './catalogue-store';
import type { FigureStore } from './figure-store';
import type { OutsideIdentityStore } from './elsewhere';
import type { EstimateStore } from './estimate-store';
import type { Hints } from './hints';
import type { InstallScans } from './install-scan';
import type { InstallStore } from './install-store';
import type { IntakeDraftStore } from './intake-draft-store';
import type { KeptAnswerStore } from './kept-answer-store';
import type { LiveStore } from './live-store';
import type { MailStore } from './mail';
import type { MailServerStore } from './mail-server-store';
import type { OutboxStore } from './outbox-store';
import type { PeopleStore } from './people-store';
import type { PersonalDataStore } from './personal-data-store';
import type { PhotoStore } from './photo-store';
import type { RecheckStore } from './recheck-store';
import type { RulebookStore } from './rulebook-store';
import type { SecondFactorStore, SignInStepStore } from './second-factor-store';
import type { SessionStore, SettingStore } from './session-store';
import type { NoticeStore, OrderStore, ShelfStore, WaitStore } from './shelf-store';
import type { SheetStore } from './sheet-store';
import type { ShopDataStore } from './shop-data-store';
import type { FlagStore, TicketStore } from './ticket-store';
import type { TrailStore } from './trail-store';
import type { DeviceStore, TryStore } from './try-store';
import type { OwnerStore, UnitStore } from './unit-store';
import type { WebhookStore } from './webhook-store';
import type { WholeTicketStore } from './whole-ticket';

export { StoreContended, StoreOutage } from './store-outage';

/** Every noun the use cases may ask the store about. A transaction hands out the same nouns. */
export interface Tables {
  readonly sessions: SessionStore;
  readonly signInSteps: SignInStepStore;
  readonly secondFactors: SecondFactorStore;
  readonly outsideIdentities: OutsideIdentityStore;
  readonly tries: TryStore;
  readonly devices: DeviceStore;
  readonly people: PeopleStore;
  readonly apiTokens: ApiTokenStore;
  readonly settings: SettingStore;
  readonly catalogue: CatalogueStore;
  readonly shopData: ShopDataStore;
  readonly owners: OwnerStore;
  readonly personal: PersonalDataStore;
  readonly units: UnitStore;
  readonly tickets: TicketStore & WholeTicketStore;
  readonly benches: BenchStore;
  readonly photos: PhotoStore;
  readonly estimates: EstimateStore;
  readonly flags: FlagStore;
  readonly shelf: ShelfStore;
  readonly orders: OrderStore;
  readonly waits: WaitStore;
  readonly notices: NoticeStore;
  readonly rulebook: RulebookStore;
  readonly installs: InstallStore;
  readonly bulletins: BulletinStore;
  readonly rechecks: RecheckStore;
  readonly callbacks: CallbackStore;
  readonly outbox: OutboxStore;
  readonly live: LiveStore;
  readonly trail: TrailStore;
  readonly keptAnswers: KeptAnswerStore;
  readonly intakeDrafts: IntakeDraftStore;
  readonly figures: FigureStore;
  readonly sheets: SheetStore;
  readonly bulk: BulkStore;
  readonly mails: MailStore;
  readonly mailServer: MailServerStore;
  readonly webhooks: WebhookStore;
}

export interface Store extends Tables {
  readonly hints: Hints;
  readonly scans: InstallScans;
  /** After how long without a question a transaction is ended, in milliseconds. */
  readonly idleLimitMs: number;
  /** How many of the migrations that this program knows are not made in the database. */
  missingMigrations(): Promise<number>;
  /**
   * All or nothing. The work is run again from its start when the database asks for that (a serialization failure or
   * a deadlock), so it must do nothing outside its tables. Work that takes longer than two minutes says how long.
   */
  transaction<T>(work: (tx: Tables) => Promise<T>, most?: { readonly minutes: number }): Promise<T>;
}
