import type { Tables } from '../usecases';
import { trailStore } from './audit/trail-store';
import { apiTokenStore } from './people/api-token-store';
import { benchStore } from './benches/bench-store';
import { bulkStore } from './bulk/bulk-store';
import { bulletinStore } from './bulletins/bulletin-store';
import { callbackStore } from './callbacks/callback-store';
import { catalogueStore } from './catalogue/catalogue-store';
import type { Db } from './db';
import { figureStore } from './figures/figure-store';
import { estimateStore } from './estimates/estimate-store';
import { flagStore } from './flags/flag-store';
import { installStore } from './installs/install-store';
import { liveStore } from './live/live-store';
import { mailStore } from './mails/mail-store';
import { outboxStore } from './outbox/outbox-store';
import { ownerStore } from './owners/owner-store';
import { personalDataStore } from './owners/personal-data-store';
import { outsideIdentityStore } from './people/outside-identity-store';
import { peopleStore } from './people/people-store';
import { keptAnswerStore } from './people/kept-answer-store';
import { secondFactorStore, signInStepStore } from './people/second-factor-store';
import { sessionStore } from './people/session-store';
import { settingStore } from './people/setting-store';
import { deviceStore, tryStore } from './people/try-store';
import { photoStore } from './photos/photo-store';
import { recheckStore } from './rechecks/recheck-store';
import { rulebookStore } from './rulebook/rulebook-store';
import { noticeStore } from './shelf/notice-store';
import { orderStore } from './shelf/order-store';
import { shelfStore } from './shelf/shelf-store';
import { waitStore } from './shelf/wait-store';
import { sheetStore } from './sheets/sheet-store';
import { shopDataStore } from './shop-data/shop-data-store';
import { intakeDraftStore } from './tickets/intake-draft-store';
import { ticketStore } from './tickets/ticket-store';
import { unitStore } from './units/unit-store';
import { mailServerStore } from './mails/mail-server-store';
import { webhookStore } from './webhooks/webhook-store';

/** Every noun of the store, on the client or on one transaction; days are counted in the shop's time zone. */
export function tablesOn(db: Db, zone = 'UTC'): Tables {
  return {
    sessions: sessionStore(db),
    signInSteps: signInStepStore(db),
    secondFactors: secondFactorStore(db),
    outsideIdentities: outsideIdentityStore(db),
    tries: tryStore(db),
    devices: deviceStore(db),
    people: peopleStore(db),
    apiTokens: apiTokenStore(db),
    settings: settingStore(db),
    catalogue: catalogueStore(db),
    shopData: shopDataStore(db),
    owners: ownerStore(db),
    personal: personalDataStore(db),
    units: unitStore(db, zone),
    tickets: ticketStore(db),
    intakeDrafts: intakeDraftStore(db),
    benches: benchStore(db),
    photos: photoStore(db),
    estimates: estimateStore(db, zone),
    flags: flagStore(db),
    shelf: shelfStore(db),
    orders: orderStore(db),
    waits: waitStore(db),
    notices: noticeStore(db),
    rulebook: rulebookStore(db),
    installs: installStore(db, zone),
    bulletins: bulletinStore(db),
    rechecks: recheckStore(db, zone),
    callbacks: callbackStore(db),
    outbox: outboxStore(db),
    live: liveStore(db),
    trail: trailStore(db, zone),
    keptAnswers: keptAnswerStore(db),
    figures: figureStore(db, zone),
    sheets: sheetStore(db),
    bulk: bulkStore(db, zone),
    mails: mailStore(db),
    mailServer: mailServerStore(db),
    webhooks: webhookStore(db),
  };
}
