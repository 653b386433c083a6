// Generated from the API's description by `npm run api-types`; not written by hand.

export interface paths {
    "/bench-lists": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every bench of the location with its list and its load, and the open tickets on none.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["benches-lists"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/benches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The benches of the shop.
         * @description Needs the permission `see-catalogue`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["catalogue-benches"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/benches/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Sets how many minutes of work a day at a bench takes.
         * @description Needs the permission `change-benches`.
         */
        patch: operations["benches-change"];
        trace?: never;
    };
    "/board": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The open tickets of the board, by stage.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["board-board"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bookkeeping": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The last estimate of every ticket handed over in a span of days, line by line.
         * @description Needs the permission `export-bookkeeping`.
         *
         *     A token needs the scope `take-out`.
         */
        get: operations["estimates-bookkeeping"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bulletins": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Every paper of the shop, newest first.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["bulletins-list"];
        put?: never;
        /**
         * Keeps a new bulletin as a draft.
         * @description Needs the permission `edit-bulletins`.
         *
         *     A token needs the scope `bulletins`.
         */
        post: operations["bulletins-save"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bulletins/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One paper with its rules, and how its recheck stands.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["bulletins-view"];
        /**
         * Changes a draft.
         * @description Needs the permission `edit-bulletins`.
         *
         *     A token needs the scope `bulletins`.
         */
        put: operations["bulletins-change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bulletins/{id}/publish": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Puts a draft in force and starts its recheck.
         * @description Needs the permission `publish-bulletins`.
         */
        post: operations["bulletins-publish"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bulletins/{id}/what-if": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * What publishing the draft would change, worked out without changing it.
         * @description Needs the permission `edit-bulletins`.
         *
         *     A token needs the scope `bulletins`.
         */
        post: operations["bulletins-what-if"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/bulletins/{id}/withdraw": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Takes a published bulletin back and starts its recheck.
         * @description Needs the permission `withdraw-bulletins`.
         */
        post: operations["bulletins-withdraw"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Callbacks, stop use first, then by the day of the next try, page by page.
         * @description Needs the permission `see-callbacks`.
         *
         *     A token needs the scope `read-callbacks` or `write-callbacks`.
         */
        get: operations["callbacks-list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/letters": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Notes a letter to each owner and answers the batch under which they are printed.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        post: operations["letters-write"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/letters/{batch}/labels.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The address labels of a batch, on sheets of labels as the shop has them.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        get: operations["letters-labels"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/letters/{batch}/letters.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The letters of a batch in one file.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        get: operations["letters-letters"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/list.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A list of callbacks as a table for another program.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        get: operations["letters-list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/mails": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Keeps an e-mail to each owner, to be sent by a worker.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        post: operations["letters-mail"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One callback with its reasons and attempts.
         * @description Needs the permission `see-callbacks`.
         *
         *     A token needs the scope `read-callbacks` or `write-callbacks`.
         */
        get: operations["callbacks-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/{id}/attempts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Records an attempt to reach the owner.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        post: operations["callbacks-attempt"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/callbacks/{id}/settle": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Closes a callback with what came of it.
         * @description Needs the permission `settle-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        post: operations["callbacks-settle"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/figures": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The figures of a span of days; the last twelve months where none is named.
         * @description Needs the permission `see-figures`.
         *
         *     A token needs the scope `figures`.
         */
        get: operations["figures-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/flags": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Flagged installs, open or decided.
         * @description Needs the permission `see-flags`.
         *
         *     A token needs the scope `read-tickets`.
         */
        get: operations["flags-list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/flags/{id}/decide": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Records a manager's decision on a flag.
         * @description Needs the permission `decide-flags`.
         */
        post: operations["flags-decide"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether the program answers and reaches its database. */
        get: operations["health-health"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/health/ready": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Whether requests should be sent here: the database answers and is up to date, no work waits too long, and the program was not asked to end. Else 503, saying which. */
        get: operations["health-ready"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/lines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The product lines the shop knows.
         * @description Needs the permission `see-catalogue`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["catalogue-lines"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/lines/{code}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One product line with its models, options and positions.
         * @description Needs the permission `see-catalogue`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["catalogue-line"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/live": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Server-sent events; each names a kind of thing to fetch anew. */
        get: operations["live-follow"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/look-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Which part is right at each position, for a unit that has no ticket.
         * @description Needs the permission `look-up`.
         *
         *     A token needs the scope `look-up`.
         */
        post: operations["board-look-up"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/metrics": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * How the queue of rechecks stands, as Prometheus text.
         * @description Needs the permission `see-metrics`.
         *
         *     A token needs the scope `monitoring`.
         */
        get: operations["metrics-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/my-bench": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The list of the bench one works at, each ticket with what its gate still asks for.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["benches-mine"];
        /**
         * Says at which bench one works.
         * @description Needs the permission `choose-my-bench`.
         */
        put: operations["benches-choose"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/openapi.json": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The API as an OpenAPI 3.1 document.
         * @description Needs the permission `see-api`.
         *
         *     A token needs the scope `description`.
         */
        get: operations["description-describe"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/owners": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Owners by name, telephone or e-mail.
         * @description Needs the permission `see-owners`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets` or `read-callbacks` or `write-callbacks`.
         */
        get: operations["owners-search"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/owners/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Changes an owner's name, telephone, addresses or consent.
         * @description Needs the permission `open-ticket`.
         *
         *     A token needs the scope `write-tickets`.
         */
        patch: operations["owners-change"];
        trace?: never;
    };
    "/owners/{id}/erase": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Erases what is known of an owner; tickets, parts and verdicts stay.
         * @description Needs the permission `manage-personal-data`.
         */
        post: operations["personal-data-erase"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/owners/{id}/personal-data": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything that is kept of one owner.
         * @description Needs the permission `manage-personal-data`.
         */
        get: operations["personal-data-export"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/owners/{id}/units": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The units of one owner.
         * @description Needs the permission `see-owners`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets` or `read-callbacks` or `write-callbacks`.
         */
        get: operations["owners-units"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/parts": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Parts by number, trade number or name.
         * @description Needs the permission `see-catalogue`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["catalogue-parts"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/parts/{id}/trade-numbers": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Writes down the number in the bar code of a part's bag, and how many are in that bag.
         * @description Needs the permission `number-bags`.
         */
        post: operations["catalogue-add-trade-number"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/parts/{id}/trade-numbers/{number}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Takes a trade number away from its part.
         * @description Needs the permission `number-bags`.
         */
        delete: operations["catalogue-remove-trade-number"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everybody who works or has worked here, and the locations.
         * @description Needs the permission `manage-people`.
         */
        get: operations["people-list"];
        put?: never;
        /**
         * Adds a person and answers a one-time link to set a password.
         * @description Needs the permission `manage-people`.
         */
        post: operations["people-add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/people/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Changes a person's name, role or location, or ends their access.
         * @description Needs the permission `manage-people`.
         */
        patch: operations["people-change"];
        trace?: never;
    };
    "/people/{id}/elsewhere": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Writes down as whom a person may sign in with another provider, or takes it away.
         * @description Needs the permission `manage-people`.
         */
        put: operations["people-elsewhere"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/people/{id}/link": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * A new one-time link for a person; the one before stops working.
         * @description Needs the permission `manage-people`.
         */
        post: operations["people-link"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/people/{id}/second-factor/reset": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Takes a lost second factor off a person, who can then add a new one.
         * @description Needs the permission `manage-people`.
         */
        post: operations["people-reset-second-factor"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/photos/{name}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A photo as it is kept.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["photos-full"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/photos/{name}/thumb": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A photo, small.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["photos-thumb"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/reader": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A page to read the description and try the API out.
         * @description Needs the permission `see-api`.
         *
         *     A token needs the scope `description`.
         */
        get: operations["description-reader"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/reader/{file}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A file of the reader page.
         * @description Needs the permission `see-api`.
         *
         *     A token needs the scope `description`.
         */
        get: operations["description-file"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rechecks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The latest rechecks, newest first.
         * @description Needs the permission `see-rechecks`.
         *
         *     A token needs the scope `read-tickets`.
         */
        get: operations["rechecks-list"];
        put?: never;
        /**
         * Starts a recheck of everything.
         * @description Needs the permission `order-recheck`.
         */
        post: operations["rechecks-order"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rechecks/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One recheck: how far it is and what it has changed.
         * @description Needs the permission `see-rechecks`.
         *
         *     A token needs the scope `read-tickets`.
         */
        get: operations["rechecks-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/retention": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * After how many years an owner is forgotten, and who would be; also for years that are only asked about.
         * @description Needs the permission `manage-personal-data`.
         */
        get: operations["personal-data-view"];
        /**
         * Settles after how many years without a ticket an owner is forgotten.
         * @description Needs the permission `manage-personal-data`.
         */
        put: operations["personal-data-settle"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rulebook": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The papers in force and how many rules each brings.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["rulebook-overview"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rulebook-file": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The rulebook as a file, as the command line reads it; see docs/formats.md.
         * @description Needs the permission `take-out`.
         *
         *     A token needs the scope `take-out`.
         */
        get: operations["rulebook-file-export"];
        put?: never;
        /**
         * Takes a rulebook file in: adds what is new, and overwrites nothing that is on record.
         * @description In a field named `file`. With `dryRun=true` nothing changes. Papers, versions of rules and supersessions on file are never overwritten: a file that says otherwise is refused.
         *
         *     Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        post: operations["rulebook-file-import"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rulebook/findings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What the audit of the rulebook finds: gaps, overlaps, disputes.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["rulebook-findings"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rulebook/rules": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The rules of a line on a day, as known at an instant.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["rulebook-rules"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/rulebook/wall-chart/{line}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The required part by build date, for each position of a line.
         * @description Needs the permission `see-bulletins`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["rulebook-wall-chart"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/scan": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Reads the tag of a ticket or a unit, or a part's bag: a plain number or a GS1 element string.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["scan-read"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/search": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Tickets by number, serial, owner or telephone.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["board-search"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/serial-schemes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The serial schemes of the shop.
         * @description Needs the permission `see-shop-data`.
         *
         *     A token needs the scope `look-up`.
         */
        get: operations["serial-schemes-list"];
        put?: never;
        /**
         * Adds a serial scheme and works out the build dates it concerns anew.
         * @description Needs the permission `edit-shop-data`.
         */
        post: operations["serial-schemes-add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/serial-schemes/try": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Reads serial numbers by a scheme without keeping it.
         * @description Needs the permission `see-shop-data`.
         *
         *     A token needs the scope `look-up`.
         */
        post: operations["serial-schemes-try"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/serial-schemes/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Changes a serial scheme and works out the build dates it concerns anew.
         * @description Needs the permission `edit-shop-data`.
         */
        put: operations["serial-schemes-change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** Who is signed in, and what that person may do. */
        get: operations["session-who-am-i"];
        put?: never;
        /** Signs a person in; the answer sets the session cookie. */
        post: operations["session-sign-in"];
        /** Ends the session. */
        delete: operations["session-sign-out"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/all": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /** Ends every session of the person. */
        delete: operations["session-sign-out-everywhere"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/code": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** The second step of signing in, with a code. */
        post: operations["second-factor-sign-in"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/demo": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** The demo shop's people; empty in a real shop. */
        get: operations["session-demo-people"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the person has begun to type at the intake; null where nothing, or nothing for half a day. */
        get: operations["session-draft"];
        /** Keeps what the person has begun to type at the intake until the ticket is open or the person signs out; null forgets it. */
        put: operations["session-keep-draft"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/elsewhere": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** What the other way of signing in is called; null where there is none. */
        get: operations["elsewhere-offered"];
        put?: never;
        /** Begins to sign in elsewhere: where the browser is to go. */
        post: operations["elsewhere-begin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/elsewhere/back": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Signs in with what the browser came back with. */
        post: operations["elsewhere-back"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/link": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Sets a password by a one-time link and signs in. */
        post: operations["session-use-link"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Changes the own password and ends every other session of the person. */
        post: operations["session-change-password"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/reading": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /** Chooses how the page writes days, numbers, torques and lengths for the person; null as the shop does. */
        put: operations["session-read"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/second-factor": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /** How one's own second factor stands. */
        get: operations["second-factor-view"];
        put?: never;
        /** Begins to set up a second factor; answers its secret once. */
        post: operations["second-factor-begin"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/second-factor/off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Turns the second factor off. */
        post: operations["second-factor-turn-off"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/second-factor/on": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** Turns the second factor on with a first code; answers recovery codes once. */
        post: operations["second-factor-turn-on"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/session/second-factor/recovery-codes": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /** New recovery codes; the ones before stop working. */
        post: operations["second-factor-recovery"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The settings of the shop.
         * @description Needs the permission `change-settings`.
         */
        get: operations["settings-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Changes settings; what can change an answer starts a recheck of everything.
         * @description Needs the permission `change-settings`.
         */
        patch: operations["settings-change"];
        trace?: never;
    };
    "/settings/mail": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Whether e-mails can be sent, through which server and from whom; the password is told to nobody.
         * @description Needs the permission `work-callbacks`.
         *
         *     A token needs the scope `write-callbacks`.
         */
        get: operations["mail-server-set-up"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings/mail-server": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The mail server as it is settled, and what the environment says instead; without the password.
         * @description Needs the permission `change-mail-server`.
         */
        get: operations["mail-server-view"];
        /**
         * Settles the mail server or takes it away; a password left out stays, as long as the host does.
         * @description Needs the permission `change-mail-server`.
         */
        put: operations["mail-server-settle"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings/mail-server/trial": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sends a trial letter through the server in force; refused with what the server said where it was not taken.
         * @description Needs the permission `change-mail-server`.
         */
        post: operations["mail-server-try-out"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings/money": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Currency, tax, and what an hour is asked for.
         * @description Needs the permission `change-settings`.
         */
        get: operations["estimates-money"];
        /**
         * Settles currency, tax and hour; estimates written down before keep theirs.
         * @description Needs the permission `change-settings`.
         */
        put: operations["estimates-change-money"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings/prints": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * How prints look, and in whose manner days and numbers are written.
         * @description Needs the permission `see-catalogue`.
         *
         *     A token needs the scope `look-up` or `bulletins`.
         */
        get: operations["print-settings-view"];
        /**
         * Changes how prints look; nothing is judged again.
         * @description Needs the permission `change-settings`.
         */
        put: operations["print-settings-change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/settings/sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What the shop asks of a sign-in.
         * @description Needs the permission `manage-people`.
         */
        get: operations["sign-in-rules-view"];
        /**
         * Changes what the shop asks of a sign-in.
         * @description Needs the permission `manage-people`.
         */
        put: operations["sign-in-rules-change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Takes a spreadsheet in, to be looked at; nothing of the shop changes.
         * @description CSV in any usual encoding, or the first sheet of an `.xlsx` workbook, in a field named `file`. It is kept for a day, for who brought it.
         *
         *     Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        post: operations["sheets-bring"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/exports/{kind}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything of a kind as a spreadsheet; importing it again changes nothing.
         * @description At most 100 a minute for each person. A workbook holds at most 20000 rows; CSV holds any number.
         *
         *     Needs the permission `take-out`.
         *
         *     A token needs the scope `take-out`.
         */
        get: operations["exports-export"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/templates/{kind}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * An empty spreadsheet of the kind, with a worked line.
         * @description Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        get: operations["exports-template"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A spreadsheet that was brought: how it is read, and what it would change.
         * @description Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        get: operations["sheets-view"];
        put?: never;
        post?: never;
        /**
         * Throws a spreadsheet away that was brought.
         * @description Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        delete: operations["sheets-drop"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/{id}/import": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Imports what the dry run showed, all of it or nothing.
         * @description One rejected row keeps everything out, unless `leaveOutRejected` is set. What can change an answer starts a recheck.
         *
         *     Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        post: operations["sheets-import"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/{id}/look": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The dry run: every problem by row and column, and what an import would add, change and leave.
         * @description Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        post: operations["sheets-look"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/sheets/{id}/rejected": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The rejected rows as they stood in the file, each with why, as CSV.
         * @description Needs the permission `bring-in`.
         *
         *     A token needs the scope `bring-in`.
         */
        get: operations["sheets-rejected"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The shelf by bin, page by page; a part is found by its number in any writing.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-list"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/count": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sets right how many pieces there are, with a reason.
         * @description If-Match names the version of the stock as `GET /api/shelf/stock` gives it, so that nobody counts what was moved meanwhile.
         *
         *     Needs the permission `move-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        post: operations["shelf-count"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/items/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One part on the shelf with its movements, who holds it, who waits for it, and what is on its way.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-item"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Sets the bin, the reorder point, how many are ordered at once, and the supplier.
         * @description Needs the permission `order-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        patch: operations["shelf-set"];
        trace?: never;
    };
    "/shelf/orders": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What has fallen to its reorder point or is waited for, and open orders.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-orders-list"];
        put?: never;
        /**
         * Keeps what was ordered and when it is expected.
         * @description Needs the permission `order-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        post: operations["shelf-orders-place"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/orders/list.csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The list of what to order as CSV.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-orders-csv"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/orders/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * An order that will not come.
         * @description Needs the permission `order-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        post: operations["shelf-orders-cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/pulls": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Parts on the shelves that published bulletins bar or end, with their bins; what is still to be done first.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-pulls"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/pulls/bulletins/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The same for one bulletin.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-pulls-of"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/pulls/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Marks such a part as seen to on one shelf.
         * @description Needs the permission `move-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        post: operations["shelf-pulled"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/receive": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Puts bags or pieces on the shelf, counts them towards their order, and wakes tickets that wait.
         * @description Needs the permission `move-stock`.
         *
         *     A token needs the scope `shelf`.
         */
        post: operations["shelf-receive"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/shelf/stock": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * What the shelf has of a part, by its number in any writing; to be seen before it is counted.
         * @description Needs the permission `see-shelf`.
         *
         *     A token needs the scope `shelf`.
         */
        get: operations["shelf-stock"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/standard-editions": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The editions of standards the shop knows.
         * @description Needs the permission `see-shop-data`.
         *
         *     A token needs the scope `look-up`.
         */
        get: operations["standard-editions-list"];
        put?: never;
        /**
         * Adds an edition of a standard.
         * @description Needs the permission `edit-shop-data`.
         */
        post: operations["standard-editions-add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/standard-editions/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Changes an edition of a standard.
         * @description Needs the permission `edit-shop-data`.
         */
        put: operations["standard-editions-change"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Opens a ticket for a unit that came in.
         * @description Needs the permission `open-ticket`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-open"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * One ticket with its unit, places, flags and what its stage still needs.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["tickets-view"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Changes what the tag says: complaint, bench, promised day.
         * @description Needs the permission `change-tag`.
         *
         *     A token needs the scope `write-tickets`.
         */
        patch: operations["tickets-change-tag"];
        trace?: never;
    };
    "/tickets/{id}/authorisation": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Records the owner's word to go ahead, or not.
         * @description Needs the permission `authorise-work`.
         */
        post: operations["tickets-authorise"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/bench": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Moves a ticket on a list, to another bench or off all of them.
         * @description A ticket that is not where it was seen any more is refused with 412 and the lists as they stand.
         *
         *     Needs the permission `plan-benches`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["benches-move"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/cancel": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Ends the ticket without a repair.
         * @description Needs the permission `cancel-ticket`.
         */
        post: operations["tickets-cancel"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/estimates": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Writes the estimate down as it stands, as its next revision.
         * @description Needs the permission `write-estimates`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["estimates-write"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/hold": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Puts the ticket on hold or takes it off.
         * @description Needs the permission `hold-ticket`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-hold"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/labour": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Sets the labour lines of the ticket.
         * @description Needs the permission `set-labour`.
         *
         *     A token needs the scope `write-tickets`.
         */
        put: operations["tickets-set-labour"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/photos": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Adds a photo: the fields stage, position, place and caption, then one file named photo.
         * @description Needs the permission `take-photos`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["photos-take"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/photos/{photoId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        /**
         * Changes what stands under a photo, and whether the handover sheet shows it.
         * @description Needs the permission `take-photos`.
         *
         *     A token needs the scope `write-tickets`.
         */
        patch: operations["photos-change"];
        trace?: never;
    };
    "/tickets/{id}/photos/{photoId}/remove": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Takes a photo away with a reason; its pictures are deleted, that there was one stays.
         * @description Needs the permission `take-photos`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["photos-remove"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/picks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Picks a part for a place.
         * @description Needs the permission `pick-parts`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-pick-part"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/picks/{pickId}/return": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Puts a picked part back.
         * @description Needs the permission `pick-parts`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-return-part"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/places": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Records what is fitted at places, and judges it.
         * @description Needs the permission `record-places`.
         *
         *     A token needs the scope `write-tickets`.
         */
        put: operations["tickets-record-places"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/places/{position}/{place}/explain": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Why the verdict on one place is what it is.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["tickets-explain"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/safety": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Ticks points of the safety list.
         * @description Needs the permission `tick-safety`.
         */
        put: operations["tickets-tick-safety"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/sheet.pdf": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The handover sheet as a PDF.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["sheet-sheet"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/spares/{pickId}/take-back": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The owner hands back a spare that an earlier ticket gave along.
         * @description Needs the permission `pick-parts`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-take-spare-back"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/stage": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Moves the ticket to another stage, if its gate is open.
         * @description Needs the permission `move-ticket`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-move-stage"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/tell": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Which part a set of marks and measures can be.
         * @description Needs the permission `record-places`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-tell"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/waits": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * The ticket waits for a part and wakes when it comes in.
         * @description Needs the permission `pick-parts`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["tickets-wait-for-part"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tickets/{id}/waits/{waitId}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * The ticket waits no longer.
         * @description Needs the permission `pick-parts`.
         *
         *     A token needs the scope `write-tickets`.
         */
        delete: operations["tickets-end-wait"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tokens": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The tokens there are: a manager's own, an administrator's all.
         * @description Needs the permission `manage-tokens`.
         */
        get: operations["api-tokens-list"];
        put?: never;
        /**
         * Makes a token, which is answered this once and kept nowhere.
         * @description Needs the permission `manage-tokens`.
         */
        post: operations["api-tokens-make"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/tokens/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Revokes a token: from the next request on it opens nothing.
         * @description Needs the permission `manage-tokens`.
         */
        delete: operations["api-tokens-revoke"];
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * A unit with its history, what was noted for its next visit, an open callback, and the evidence so far.
         * @description Needs the permission `see-tickets`.
         *
         *     A token needs the scope `read-tickets` or `write-tickets`.
         */
        get: operations["scan-visit"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/evidence": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Adds evidence of when the unit was built.
         * @description Needs the permission `add-evidence`.
         *
         *     A token needs the scope `write-tickets`.
         */
        post: operations["units-add-evidence"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/evidence/{evidenceId}/set-aside": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sets evidence aside, with the reason.
         * @description Needs the permission `set-aside-evidence`.
         */
        post: operations["units-set-aside"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/identity": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Sets a unit's line, model, serial, options and plate.
         * @description Needs the permission `identify-unit`.
         *
         *     A token needs the scope `write-tickets`.
         */
        put: operations["units-identify"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/notes/{noteId}/settle": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Settles a note that waited for the next visit, with what was done about it.
         * @description Needs the permission `settle-notes`.
         */
        post: operations["units-settle-note"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/trail": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * Everything that was ever done about a unit, oldest first.
         * @description Needs the permission `see-trail`.
         *
         *     A token needs the scope `trail`.
         */
        get: operations["units-trail"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/units/{id}/warranty": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        /**
         * Writes down when the unit was bought and for how many months its maker stands for it.
         * @description Needs the permission `set-warranty`.
         */
        put: operations["units-warranty"];
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/webhooks": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The addresses, with how much is on its way to each and how much was set aside.
         * @description Needs the permission `manage-webhooks`.
         */
        get: operations["webhooks-list"];
        put?: never;
        /**
         * Adds an address; what its events are signed with is answered this once.
         * @description Needs the permission `manage-webhooks`.
         */
        post: operations["webhooks-add"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/webhooks/{id}": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        post?: never;
        /**
         * Removes an address with all that was on its way to it.
         * @description Needs the permission `manage-webhooks`.
         */
        delete: operations["webhooks-remove"];
        options?: never;
        head?: never;
        /**
         * Changes where to, what of, or whether an address is told.
         * @description Needs the permission `manage-webhooks`.
         */
        patch: operations["webhooks-change"];
        trace?: never;
    };
    "/webhooks/{id}/deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        /**
         * The last hundred events for an address, newest first, those set aside before all others.
         * @description Needs the permission `manage-webhooks`.
         */
        get: operations["webhooks-deliveries"];
        put?: never;
        post?: never;
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/webhooks/{id}/deliveries/{deliveryId}/again": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sends an event again that was delivered or set aside, with the same id.
         * @description Needs the permission `manage-webhooks`.
         */
        post: operations["webhooks-again"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/webhooks/{id}/secret": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Signs what is sent to an address with another secret from now on; it is answered this once.
         * @description Needs the permission `manage-webhooks`.
         */
        post: operations["webhooks-renew-secret"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
    "/webhooks/{id}/trial": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        get?: never;
        put?: never;
        /**
         * Sends a trial event to an address, signed as any other.
         * @description Needs the permission `manage-webhooks`.
         */
        post: operations["webhooks-try-out"];
        delete?: never;
        options?: never;
        head?: never;
        patch?: never;
        trace?: never;
    };
}
export type webhooks = Record<string, never>;
export interface components {
    schemas: {
        AddTradeNumberInput: {
            number: string;
            /** @default 1 */
            pack: number;
        };
        ApiTokenList: {
            tokens: components["schemas"]["ApiTokenView"][];
            scopes: ("look-up" | "read-tickets" | "write-tickets" | "read-callbacks" | "write-callbacks" | "shelf" | "bulletins" | "bring-in" | "take-out" | "figures" | "trail" | "monitoring" | "description")[];
        };
        ApiTokenMade: {
            made: components["schemas"]["ApiTokenView"];
            token: string;
        };
        ApiTokenView: {
            id: components["schemas"]["RowId"];
            name: string;
            prefix: string;
            scopes: ("look-up" | "read-tickets" | "write-tickets" | "read-callbacks" | "write-callbacks" | "shelf" | "bulletins" | "bring-in" | "take-out" | "figures" | "trail" | "monitoring" | "description")[];
            madeBy: {
                id: components["schemas"]["RowId"];
                name: string;
            };
            createdAt: components["schemas"]["InstantText"];
            expiresAt: components["schemas"]["InstantText"];
            lastUsedAt: components["schemas"]["InstantText"] | null;
            /** @enum {string} */
            state: "good" | "expired" | "revoked" | "idle";
        };
        AuthorisationView: {
            by: string;
            /** @enum {string} */
            how: "in-person" | "phone" | "email" | "signature";
            amountMinor: components["schemas"]["MinorUnits"];
            revision: number | null;
            at: components["schemas"]["InstantText"];
            recordedBy: string | null;
        };
        AuthoriseInput: {
            by: string;
            /** @enum {string} */
            how: "in-person" | "phone" | "email" | "signature";
            amountMinor: components["schemas"]["MinorUnits"];
            revision?: number;
        };
        BeginSecondFactorInput: {
            password: string;
        };
        Bench: {
            id: components["schemas"]["RowId"];
            code: string;
            name: string;
            location: string;
        };
        BenchJob: {
            id: components["schemas"]["RowId"];
            number: string;
            stage: components["schemas"]["Stage"];
            unit: string;
            serial: string | null;
            owner: string;
            bench: {
                id: components["schemas"]["RowId"];
                code: string;
            } | null;
            promisedOn: components["schemas"]["DayText"] | null;
            onHold: string | null;
            openFlags: number;
            worst: components["schemas"]["Verdict"] | null;
            waits: {
                parts: string[];
                here: boolean;
            } | null;
            version: number;
            labourMinutes: number;
            missing: string[];
        };
        BenchList: {
            id: components["schemas"]["RowId"];
            code: string;
            name: string;
            location: string;
            load: components["schemas"]["BenchLoad"];
            tickets: components["schemas"]["BenchTicket"][];
            version: components["schemas"]["Version"];
        };
        BenchLists: {
            today: components["schemas"]["DayText"];
            benches: components["schemas"]["BenchList"][];
            unplaced: components["schemas"]["BenchTicket"][];
        };
        BenchLoad: {
            dayMinutes: number;
            openMinutes: number;
            onHoldMinutes: number;
            unestimated: number;
        };
        BenchTicket: {
            id: components["schemas"]["RowId"];
            number: string;
            stage: components["schemas"]["Stage"];
            unit: string;
            serial: string | null;
            owner: string;
            bench: {
                id: components["schemas"]["RowId"];
                code: string;
            } | null;
            promisedOn: components["schemas"]["DayText"] | null;
            onHold: string | null;
            openFlags: number;
            worst: components["schemas"]["Verdict"] | null;
            waits: {
                parts: string[];
                here: boolean;
            } | null;
            version: number;
            labourMinutes: number;
        };
        Benches: components["schemas"]["Bench"][];
        Board: {
            benches: components["schemas"]["Bench"][];
            owners: {
                id: components["schemas"]["RowId"];
                name: string;
            }[];
            stages: {
                stage: components["schemas"]["Stage"];
                count: number;
                tickets: components["schemas"]["TicketCard"][];
            }[];
        };
        BuildDates: {
            days: {
                from: components["schemas"]["DayText"];
                to: components["schemas"]["DayText"];
            }[];
            sentence: string;
            evidence: components["schemas"]["EvidenceView"][];
            splits: string[];
            conflicts: string[][];
            otherReadings: {
                id: string;
                kind: string;
                serial: string;
                sentence: string;
            }[];
            lookAt: {
                kind: string;
                sentence: string;
            }[];
            needed: boolean;
        };
        BulletinDetail: {
            id: components["schemas"]["RowId"];
            key: string;
            /** @enum {string} */
            kind: "owners-manual" | "parts-list" | "revised-parts-list" | "service-bulletin" | "makers-advice" | "shop-finding";
            publisher: string;
            number: string;
            title: string;
            issued: components["schemas"]["DayText"];
            effective: components["schemas"]["DayText"] | null;
            /** @enum {string} */
            state: "draft" | "published" | "withdrawn";
            publishedAt: components["schemas"]["InstantText"] | null;
            ruleCount: number;
            version: number;
            summary: string;
            received: components["schemas"]["DayText"];
            withdrawnAt: components["schemas"]["InstantText"] | null;
            withdrawnWhy: string | null;
            opens: components["schemas"]["RuleView"][];
            ends: {
                rule: components["schemas"]["RuleView"] | null;
                key: string;
                on: components["schemas"]["DayText"];
            }[];
            draft: components["schemas"]["BulletinDraft"] | null;
            recheck: components["schemas"]["RecheckView"] | null;
        };
        BulletinDraft: {
            /** @default [] */
            opens: ({
                key: string;
            } & {
                [key: string]: unknown;
            })[];
            /** @default [] */
            ends: {
                rule: string;
                on: components["schemas"]["DayText"];
            }[];
        };
        BulletinDraftInput: {
            /** @default [] */
            opens: ({
                key: string;
            } & {
                [key: string]: unknown;
            })[];
            /** @default [] */
            ends: {
                rule: string;
                on: components["schemas"]["DayText"];
            }[];
        };
        BulletinRow: {
            id: components["schemas"]["RowId"];
            key: string;
            /** @enum {string} */
            kind: "owners-manual" | "parts-list" | "revised-parts-list" | "service-bulletin" | "makers-advice" | "shop-finding";
            publisher: string;
            number: string;
            title: string;
            issued: components["schemas"]["DayText"];
            effective: components["schemas"]["DayText"] | null;
            /** @enum {string} */
            state: "draft" | "published" | "withdrawn";
            publishedAt: components["schemas"]["InstantText"] | null;
            ruleCount: number;
            version: number;
        };
        BulletinRows: components["schemas"]["BulletinRow"][];
        CallbackAttemptView: {
            at: components["schemas"]["InstantText"];
            by: string | null;
            /** @enum {string} */
            how: "phone" | "letter" | "email" | "in-person";
            /** @enum {string} */
            outcome: "reached" | "no-answer" | "message-left" | "refused" | "sent";
            note: string;
        };
        CallbackMailView: {
            at: components["schemas"]["InstantText"];
            /** @enum {string} */
            state: "queued" | "sending" | "sent" | "failed" | "unclear" | "cancelled";
            problem: string | null;
        };
        CallbackPage: {
            total: number;
            urgent: number;
            items: components["schemas"]["CallbackView"][];
            next: string | null;
        };
        CallbackReasonView: {
            source: string;
            position: string;
            placeName: string;
            part: components["schemas"]["PartRef"] | null;
            required: components["schemas"]["PartRef"] | null;
            verdict: components["schemas"]["Verdict"];
            /** @enum {string} */
            action: "call-back" | "stop-use";
            sentence: string;
            spare: boolean;
            withdrawn: {
                at: components["schemas"]["InstantText"];
                why: string;
            } | null;
        };
        CallbackView: {
            id: components["schemas"]["RowId"];
            /** @enum {string} */
            state: "open" | "booked" | "settled" | "withdrawn";
            urgent: boolean;
            unit: {
                id: components["schemas"]["RowId"];
                name: string;
                serial: string | null;
            };
            owner: {
                id: components["schemas"]["RowId"];
                name: string;
                phone: string;
                email: string;
                address: string;
                consent: boolean;
                declined: ("phone" | "letter" | "email")[];
            };
            lastTicket: {
                id: components["schemas"]["RowId"];
                number: string;
                handedOverOn: components["schemas"]["DayText"] | null;
            } | null;
            openedAt: components["schemas"]["InstantText"];
            closedAt: components["schemas"]["InstantText"] | null;
            closedWhy: string | null;
            reasons: components["schemas"]["CallbackReasonView"][];
            attempts: components["schemas"]["CallbackAttemptView"][];
            mails: components["schemas"]["CallbackMailView"][];
            nextOn: components["schemas"]["DayText"] | null;
            say: string;
            ticketId: components["schemas"]["RowId"] | null;
            version: number;
        };
        /** @enum {string} */
        CameFrom: "shelf" | "owner" | "bought";
        CancelTicketInput: {
            reason: components["schemas"]["Reason"];
        };
        CellProblem: {
            field: string | null;
            /** @enum {string} */
            code: "missing" | "not-accepted" | "too-long" | "scientific-notation" | "digits-lost" | "leading-zeros" | "became-a-day" | "day-number" | "day-order" | "formula" | "sheet-fault" | "merged" | "broken-encoding" | "ambiguous-number" | "not-on-file" | "twice" | "conflict";
            says: string;
            heading: string | null;
            column: string | null;
            value: string;
        };
        ChangeBenchInput: {
            dayMinutes: number;
        };
        ChangeMailServerInput: {
            server: {
                host: string;
                port: number;
                /** @enum {string} */
                security: "tls" | "starttls" | "none";
                login: string;
                senderName: string;
                senderAddress: string;
                password?: string;
            } | null;
        };
        ChangeOwnerInput: {
            name?: string;
            phone?: string;
            email?: string;
            address?: string;
            consent?: boolean;
        };
        ChangePasswordInput: {
            current: string;
            next: string;
        };
        ChangePersonInput: {
            name?: string;
            role?: components["schemas"]["Role"];
            locationId?: components["schemas"]["RowId"];
            active?: boolean;
        };
        ChangePhotoInput: {
            caption?: string;
            onSheet?: boolean;
        };
        ChangeRetention: {
            years: number | null;
        };
        ChangeSettingsInput: {
            lookBackMonths?: number;
            standing?: components["schemas"]["Standing"];
            strengthThreshold?: {
                soonerBelow: number;
                laterAbove: number;
            };
            keepShelf?: boolean;
        };
        ChangeTagInput: {
            complaint?: string;
            benchId?: components["schemas"]["RowId"] | null;
            promisedOn?: components["schemas"]["DayText"] | null;
        };
        ChangeWebhookInput: {
            /** Format: uri */
            url?: string;
            events?: ("flag.raised" | "flag.closed" | "callback.opened" | "callback.closed" | "recheck.finished")[];
            active?: boolean;
        };
        ChangedSettings: {
            lookBackMonths: number;
            standing: components["schemas"]["Standing"];
            strengthThreshold: {
                soonerBelow: number;
                laterAbove: number;
            };
            keepShelf: boolean;
            version: components["schemas"]["Version"];
            recheckId: components["schemas"]["RowId"] | null;
        };
        ChooseMyBenchInput: {
            benchId: components["schemas"]["RowId"] | null;
        };
        /** @enum {string} */
        Condition: "sound" | "worn" | "sheared" | "missing";
        CountPartInput: {
            partText: string;
            pieces: number;
            /** @default null */
            bin: string | null;
            reason: components["schemas"]["Reason"];
        };
        /** Format: date */
        DayText: string;
        DecideFlagInput: {
            /** @enum {string} */
            decision: "accept" | "send-back" | "callback";
            reason: components["schemas"]["Reason"];
            /** @default null */
            until: components["schemas"]["DayText"] | null;
        };
        DemoPeople: {
            login: string;
            name: string;
            role: components["schemas"]["Role"];
        }[];
        ElsewhereBackInput: {
            query: string;
        };
        ElsewhereBegun: {
            /** Format: uri */
            address: string;
        };
        ElsewhereOffered: {
            name: string | null;
        };
        EraseOwner: {
            reason: string;
        };
        EstimateLine: {
            /** @enum {string} */
            kind: "part" | "spare" | "labour" | "other";
            part: string | null;
            what: string;
            quantity: number;
            minutes: number;
            amountMinor: number;
        };
        EstimateRevision: {
            netMinor: number;
            taxMinor: number;
            totalMinor: number;
            revision: number;
            at: components["schemas"]["InstantText"];
            by: string | null;
            lines: components["schemas"]["EstimateLine"][];
            tax: components["schemas"]["Tax"];
            currency: string;
        };
        EstimateView: {
            netMinor: number;
            taxMinor: number;
            totalMinor: number;
            lines: components["schemas"]["EstimateLine"][];
            tax: components["schemas"]["Tax"];
            hourMinor: number;
            differs: boolean;
            revisions: components["schemas"]["EstimateRevision"][];
        };
        EvidenceView: {
            id: string;
            kind: string;
            data: {
                [key: string]: unknown;
            };
            days: {
                from: components["schemas"]["DayText"] | null;
                to: components["schemas"]["DayText"] | null;
            }[];
            sentence: string;
            problem: string | null;
            setAside: {
                why: string;
                by: string | null;
                at: components["schemas"]["InstantText"] | null;
            } | null;
        };
        Figures: {
            from: components["schemas"]["DayText"];
            to: components["schemas"]["DayText"];
            byBench: {
                bench: string | null;
                location: string;
                tickets: number;
                flagged: number;
            }[];
            byPart: {
                part: components["schemas"]["PartRef"];
                places: number;
                flagged: number;
            }[];
            callbacks: {
                from: components["schemas"]["DayText"];
                to: components["schemas"]["DayText"];
                opened: number;
                done: number;
                notNeeded: number;
                waiting: number;
                medianDays: number | null;
            }[];
            stages: {
                stage: components["schemas"]["Stage"];
                stays: number;
                medianHours: number | null;
                longHours: number | null;
            }[];
            unsettled: {
                line: string | null;
                units: number;
                settled: number;
                longer: number;
                severalRuns: number;
                contradicted: number;
            }[];
            wrongParts: {
                part: components["schemas"]["PartRef"];
                required: components["schemas"]["PartRef"] | null;
                /** @enum {string} */
                verdict: "wrong" | "outdated";
                places: number;
            }[];
        };
        FindingList: {
            inForceOn: components["schemas"]["DayText"];
            knownOn: components["schemas"]["DayText"];
            counts: {
                error: number;
                warning: number;
                note: number;
            };
            findings: {
                code: string;
                /** @enum {string} */
                severity: "error" | "warning" | "note";
                line: string | null;
                lineName: string | null;
                position: string | null;
                positionName: string | null;
                units: string | null;
                sentence: string;
                mend: string;
                example: string | null;
                rules: {
                    key: string;
                    version: number;
                    paper: string;
                }[];
                parts: components["schemas"]["PartRef"][];
            }[];
        };
        FitView: {
            /** @enum {string} */
            fits: "yes" | "no" | "not-told";
            findings: {
                /** @enum {string} */
                field: "diameter" | "length" | "room" | "thread" | "cross-hole";
                /** @enum {string} */
                fits: "yes" | "no" | "not-told";
                sentence: string;
            }[];
        };
        FlagView: {
            id: components["schemas"]["RowId"];
            ticket: {
                id: components["schemas"]["RowId"];
                number: string;
                stage: components["schemas"]["Stage"];
                bench: string | null;
            };
            unit: string;
            owner: string;
            position: string;
            positionName: string;
            placeName: string;
            verdict: components["schemas"]["Verdict"];
            severity: number;
            part: components["schemas"]["PartRef"] | null;
            required: components["schemas"]["PartRef"] | null;
            sentence: string;
            source: string | null;
            strength: components["schemas"]["StrengthView"] | null;
            /** @enum {string} */
            state: "open" | "accepted" | "sent-back" | "callback" | "cleared";
            openedAt: components["schemas"]["InstantText"];
            decision: {
                by: string | null;
                at: components["schemas"]["InstantText"] | null;
                why: string;
                until: components["schemas"]["DayText"] | null;
            } | null;
            version: number;
        };
        Flags: components["schemas"]["FlagView"][];
        Health: {
            /** @constant */
            ok: true;
        };
        HoldTicketInput: {
            reason: components["schemas"]["Reason"] | null;
        };
        ImportSheetInput: {
            /** @default false */
            leaveOutRejected: boolean;
        };
        /** Format: date-time */
        InstantText: string;
        IntakeDraft: {
            ownerId: components["schemas"]["RowId"] | null;
            ownerName: string;
            owner: {
                name: string;
                /** @default  */
                phone: string;
                /** @default  */
                email: string;
                /** @default  */
                address: string;
                /** @default false */
                consent: boolean;
            };
            unitId: components["schemas"]["RowId"] | null;
            unitName: string;
            unit: components["schemas"]["UnitIdentity"];
            complaint: string;
            benchId: components["schemas"]["RowId"] | null;
            promisedOn: components["schemas"]["DayText"] | null;
        };
        IntakeDraftInput: {
            ownerId: components["schemas"]["RowId"] | null;
            ownerName: string;
            owner: {
                name: string;
                /** @default  */
                phone: string;
                /** @default  */
                email: string;
                /** @default  */
                address: string;
                /** @default false */
                consent: boolean;
            };
            unitId: components["schemas"]["RowId"] | null;
            unitName: string;
            unit: components["schemas"]["UnitIdentityInput"];
            complaint: string;
            benchId: components["schemas"]["RowId"] | null;
            promisedOn: components["schemas"]["DayText"] | null;
        };
        Invited: {
            person: components["schemas"]["PersonView"];
            link: string;
            until: components["schemas"]["InstantText"];
        };
        /** @enum {string} */
        KnownOtherwise: "line" | "model" | "options" | "serial" | "build-days";
        LabourLine: {
            /**
             * @default labour
             * @enum {string}
             */
            kind: "labour" | "other";
            what: string;
            minutes: number;
            minor: components["schemas"]["MinorUnits"];
        };
        LabourLineInput: {
            /**
             * @default labour
             * @enum {string}
             */
            kind: "labour" | "other";
            what: string;
            minutes: number;
            minor: components["schemas"]["MinorUnits"];
        };
        LineDetail: {
            id: components["schemas"]["RowId"];
            code: string;
            name: string;
            kind: string;
            maker: {
                code: string;
                name: string;
            };
            models: components["schemas"]["Model"][];
            options: components["schemas"]["Option"][];
            producedFrom: components["schemas"]["DayText"];
            producedUntil: components["schemas"]["DayText"] | null;
            sketch: string;
            positions: components["schemas"]["Position"][];
        };
        LineSummary: {
            id: components["schemas"]["RowId"];
            code: string;
            name: string;
            kind: string;
            maker: {
                code: string;
                name: string;
            };
            models: components["schemas"]["Model"][];
            options: components["schemas"]["Option"][];
            producedFrom: components["schemas"]["DayText"];
            producedUntil: components["schemas"]["DayText"] | null;
        };
        Lines: components["schemas"]["LineSummary"][];
        LookAtSheetInput: {
            mapping: components["schemas"]["SheetMapping"];
            /** @default null */
            dayOrder: ("day-month-year" | "month-day-year") | null;
            /** @default false */
            publish: boolean;
        };
        LookUpAnswer: {
            line: {
                code: string;
                name: string;
                maker: string;
            };
            model: string | null;
            inForceOn: components["schemas"]["DayText"];
            revision: number;
            buildDates: components["schemas"]["BuildDates"];
            positions: components["schemas"]["Position"][];
            rulings: components["schemas"]["RulingView"][];
        };
        LookUpRequestInput: {
            lineCode: string;
            /** @default null */
            modelNumber: string | null;
            /** @default null */
            serial: string | null;
            /** @default {} */
            options: {
                [key: string]: boolean;
            };
            /** @default [] */
            evidence: ({
                kind: string;
            } & {
                [key: string]: unknown;
            })[];
            inForceOn?: components["schemas"]["DayText"];
            positions?: string[];
        };
        MailServerView: {
            server: {
                host: string;
                port: number;
                /** @enum {string} */
                security: "tls" | "starttls" | "none";
                login: string;
                senderName: string;
                senderAddress: string;
                /** @enum {string} */
                password: "none" | "kept" | "lost";
            } | null;
            environment: {
                server: string;
                from: string;
            } | null;
            version: components["schemas"]["Version"];
        };
        MailSetUp: {
            server: string | null;
            from: string | null;
        };
        MailTrialInput: {
            to: string;
        };
        MailTrialSent: {
            to: string;
            from: string;
            server: string;
        };
        MarkPulledInput: {
            itemId: components["schemas"]["RowId"];
            /** @default  */
            note: string;
        };
        Marks: {
            /** @default null */
            headMarks: string | null;
            /** @default null */
            diameterMm: number | null;
            /** @default null */
            lengthMm: number | null;
            /** @default null */
            grooved: boolean | null;
            /** @default null */
            finish: string | null;
        };
        MarksInput: {
            /** @default null */
            headMarks: string | null;
            /** @default null */
            diameterMm: number | null;
            /** @default null */
            lengthMm: number | null;
            /** @default null */
            grooved: boolean | null;
            /** @default null */
            finish: string | null;
        };
        Me: {
            id: components["schemas"]["RowId"];
            login: string;
            name: string;
            role: components["schemas"]["Role"];
            location: {
                id: components["schemas"]["RowId"];
                code: string;
                name: string;
            };
            /** @enum {string} */
            secondFactor: "on" | "off" | "missing";
            permissions: string[];
            reading: components["schemas"]["Reading"];
            ownReading: components["schemas"]["Reading"] | null;
        };
        MinorUnits: number;
        MissingPoint: {
            code: string;
            sentence: string;
            position: string | null;
        };
        Model: {
            id: components["schemas"]["RowId"];
            number: string;
            name: string;
        };
        MoneySettingsInput: {
            currency: string;
            tax: components["schemas"]["TaxInput"];
            hourMinor: components["schemas"]["MinorUnits"];
        };
        MoveOnBenchInput: {
            from: components["schemas"]["RowId"] | null;
            to: components["schemas"]["RowId"] | null;
            /** @default null */
            before: components["schemas"]["RowId"] | null;
        };
        MoveStageInput: {
            to: components["schemas"]["Stage"] | "handed-over";
            reason?: components["schemas"]["Reason"];
        };
        MyBench: {
            today: components["schemas"]["DayText"];
            benches: components["schemas"]["Bench"][];
            bench: components["schemas"]["Bench"] | null;
            load: components["schemas"]["BenchLoad"] | null;
            jobs: components["schemas"]["BenchJob"][];
        };
        NewApiTokenInput: {
            name: string;
            scopes: ("look-up" | "read-tickets" | "write-tickets" | "read-callbacks" | "write-callbacks" | "shelf" | "bulletins" | "bring-in" | "take-out" | "figures" | "trail" | "monitoring" | "description")[];
            days: number;
        };
        NewAttemptInput: {
            /** @enum {string} */
            how: "phone" | "letter" | "email" | "in-person";
            /** @enum {string} */
            outcome: "reached" | "no-answer" | "message-left" | "refused" | "sent";
            /** @default  */
            note: string;
            /** @default null */
            nextOn: components["schemas"]["DayText"] | null;
            declined?: ("phone" | "letter" | "email")[];
        };
        NewEvidenceInput: {
            evidence: {
                kind: string;
            } & {
                [key: string]: unknown;
            };
        };
        NewOwnerInput: {
            name: string;
            /** @default  */
            phone: string;
            /** @default  */
            email: string;
            /** @default  */
            address: string;
            /** @default false */
            consent: boolean;
        };
        NewPersonInput: {
            login: string;
            name: string;
            role: components["schemas"]["Role"];
            locationId: components["schemas"]["RowId"];
        };
        NewWebhookInput: {
            /** Format: uri */
            url: string;
            events: ("flag.raised" | "flag.closed" | "callback.opened" | "callback.closed" | "recheck.finished")[];
        };
        OpenTicketInput: {
            ownerId?: components["schemas"]["RowId"];
            owner?: components["schemas"]["NewOwnerInput"];
            unitId?: components["schemas"]["RowId"];
            unit?: components["schemas"]["UnitIdentityInput"];
            /** @default  */
            complaint: string;
            /** @default null */
            benchId: components["schemas"]["RowId"] | null;
            /** @default null */
            promisedOn: components["schemas"]["DayText"] | null;
        };
        Option: {
            code: string;
            name: string;
        };
        OrderLine: {
            itemId: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"];
            supplier: string;
            bin: string;
            free: number;
            coming: number;
            reorderPoint: number | null;
            orderQuantity: number | null;
            waited: number;
            packSize: number;
            order: number;
        };
        OrderList: {
            lines: components["schemas"]["OrderLine"][];
            open: components["schemas"]["ShelfOrder"][];
        };
        OwnIntakeDraft: {
            draft: components["schemas"]["IntakeDraft"] | null;
        };
        OwnIntakeDraftInput: {
            draft: components["schemas"]["IntakeDraftInput"] | null;
        };
        OwnReadingInput: {
            reading: components["schemas"]["ReadingInput"] | null;
        };
        Owner: {
            id: components["schemas"]["RowId"];
            name: string;
            phone: string;
            email: string;
            address: string;
            consent: boolean;
            version: number;
        };
        Owners: components["schemas"]["Owner"][];
        Part: {
            id: components["schemas"]["RowId"];
            key: string;
            number: string;
            name: string;
            maker: string;
            listed: boolean;
            priceMinor: number | null;
            tradeNumbers: components["schemas"]["TradeNumber"][];
        };
        PartRef: {
            key: string;
            number: string;
            name: string;
        };
        PartWait: {
            id: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"];
            position: string | null;
            pieces: number;
            since: components["schemas"]["InstantText"];
            wokenAt: components["schemas"]["InstantText"] | null;
        };
        Parts: components["schemas"]["Part"][];
        PeopleList: {
            people: components["schemas"]["PersonView"][];
            locations: {
                id: components["schemas"]["RowId"];
                code: string;
                name: string;
            }[];
        };
        PersonElsewhereInput: {
            email: string | null;
        };
        PersonRef: {
            id: components["schemas"]["RowId"];
            name: string;
        };
        PersonView: {
            id: components["schemas"]["RowId"];
            login: string;
            name: string;
            role: components["schemas"]["Role"];
            location: {
                id: components["schemas"]["RowId"];
                code: string;
                name: string;
            };
            active: boolean;
            hasPassword: boolean;
            hasSecondFactor: boolean;
            elsewhere: {
                email: string;
                bound: boolean;
            } | null;
            linkUntil: components["schemas"]["InstantText"] | null;
            version: number;
        };
        PersonalData: {
            owner: {
                id: components["schemas"]["RowId"];
                name: string;
                phone: string;
                email: string;
                address: string;
                consent: boolean;
                location: string;
                erasedAt: components["schemas"]["InstantText"] | null;
                version: number;
            };
            units: {
                id: components["schemas"]["RowId"];
                name: string;
                serial: string | null;
            }[];
            tickets: {
                id: components["schemas"]["RowId"];
                number: string;
                unit: string;
                openedOn: string;
                closedOn: string | null;
                complaint: string;
                authorisation: {
                    by: string;
                    how: string;
                } | null;
                photos: {
                    name: string;
                    takenOn: string;
                    stage: string;
                    caption: string;
                }[];
            }[];
            callbacks: {
                id: components["schemas"]["RowId"];
                unit: string;
                state: string;
                urgent: boolean;
                openedOn: string;
                closedOn: string | null;
                attempts: {
                    on: string;
                    how: string;
                    outcome: string;
                    note: string;
                }[];
                mails: {
                    on: string;
                    to: string;
                    subject: string;
                    text: string;
                    state: string;
                }[];
            }[];
        };
        /** @enum {string} */
        PhotoStage: "intake" | "inspection" | "handover";
        PhotoView: {
            id: components["schemas"]["RowId"];
            name: string;
            stage: components["schemas"]["PhotoStage"];
            position: string | null;
            place: number | null;
            caption: string;
            width: number;
            height: number;
            sha256: string;
            onSheet: boolean;
            by: string | null;
            at: components["schemas"]["InstantText"];
            version: components["schemas"]["Version"];
        };
        PickPartInput: {
            position: string | null;
            partText: string;
            quantity: number;
            /** @enum {string} */
            purpose: "fit" | "spare";
            /** @default null */
            exceptionReason: components["schemas"]["Reason"] | null;
            /** @default shelf */
            from: components["schemas"]["CameFrom"];
        };
        PickView: {
            id: components["schemas"]["RowId"];
            position: string | null;
            part: components["schemas"]["PartRef"];
            quantity: number;
            /** @enum {string} */
            purpose: "fit" | "spare";
            /** @enum {string} */
            state: "picked" | "fitted" | "returned" | "given";
            priceMinor: number;
            from: components["schemas"]["CameFrom"];
            verdict: components["schemas"]["Verdict"] | null;
            strength: components["schemas"]["StrengthView"] | null;
            fit: components["schemas"]["FitView"] | null;
            exception: {
                reason: string;
                by: string | null;
            } | null;
        };
        PlaceExplanation: {
            /** @enum {string} */
            side: "found" | "left";
            verdict: components["schemas"]["Verdict"];
            text: string[];
            ruling: components["schemas"]["RulingView"];
            rules: components["schemas"]["RuleView"][];
            candidates: {
                part: components["schemas"]["PartRef"];
                verdict: components["schemas"]["Verdict"];
                then: string;
                thenAsKnown: string | null;
            }[];
            record: {
                /** @constant */
                format: 1;
            } & {
                [key: string]: unknown;
            };
            kept: {
                judgedOn: components["schemas"]["DayText"];
                revision: number;
                verdict: components["schemas"]["Verdict"];
                sentence: string;
                sameWords: boolean;
                text: string[];
            } | null;
        };
        PlaceOrdersInput: {
            /** @default null */
            expectedOn: components["schemas"]["DayText"] | null;
            lines: {
                itemId: components["schemas"]["RowId"];
                pieces: number;
            }[];
        };
        PlaceSide: {
            recordId: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"] | null;
            partText: string | null;
            marks: components["schemas"]["Marks"] | null;
            candidates: components["schemas"]["PartRef"][];
            needless: string | null;
            told: string | null;
            fit: components["schemas"]["FitView"] | null;
            condition: components["schemas"]["Condition"] | null;
            fittedOn: components["schemas"]["DayText"] | null;
            leftOutWhy: string | null;
            verdict: components["schemas"]["VerdictView"] | null;
            by: string | null;
            at: components["schemas"]["InstantText"];
        };
        PlaceView: {
            position: string;
            place: number;
            placeName: string;
            found: components["schemas"]["PlaceSide"] | null;
            left: components["schemas"]["PlaceSide"] | null;
            before: {
                part: components["schemas"]["PartRef"] | null;
                ticket: string;
                on: components["schemas"]["DayText"];
            } | null;
        };
        Position: {
            id: components["schemas"]["RowId"];
            code: string;
            name: string;
            assembly: string;
            places: number;
            placeNames: string[];
            sketchX: number;
            sketchY: number;
            shear: boolean;
        };
        PrintSettingsInput: {
            /** @enum {string} */
            manner: "en-GB" | "en-US" | "en-CA" | "de-DE" | "fr-FR" | "nl-NL" | "sv-SE" | "pl-PL" | "es-ES" | "it-IT";
            /** @enum {string} */
            torque: "N·m" | "lbf·ft";
            /** @enum {string} */
            length: "mm" | "in";
            shopName: string;
            address: string;
            phone: string;
            email: string;
            /** @enum {string} */
            paper: "A4" | "Letter";
            /** @enum {string} */
            labels: "a4-3x8" | "a4-3x7" | "a4-2x7" | "letter-3x10" | "letter-2x5";
        };
        Problem: {
            type: string;
            title: string;
            status: number;
            detail: string;
            field?: string;
            missing?: string[];
            current?: unknown;
            requestId?: string;
        };
        /** @enum {string} */
        PromisedFilter: "today" | "late" | "week" | "none";
        PublishBulletinInputInput: {
            whatIfRevision: number;
        };
        Published: {
            bulletin: components["schemas"]["BulletinRow"];
            recheck: components["schemas"]["RecheckView"];
        };
        Reading: {
            /** @enum {string} */
            manner: "en-GB" | "en-US" | "en-CA" | "de-DE" | "fr-FR" | "nl-NL" | "sv-SE" | "pl-PL" | "es-ES" | "it-IT";
            /** @enum {string} */
            torque: "N·m" | "lbf·ft";
            /** @enum {string} */
            length: "mm" | "in";
        };
        ReadingInput: {
            /** @enum {string} */
            manner: "en-GB" | "en-US" | "en-CA" | "de-DE" | "fr-FR" | "nl-NL" | "sv-SE" | "pl-PL" | "es-ES" | "it-IT";
            /** @enum {string} */
            torque: "N·m" | "lbf·ft";
            /** @enum {string} */
            length: "mm" | "in";
        };
        Ready: {
            /** @constant */
            ready: true;
            oldestWorkSeconds: number;
        };
        Reason: string;
        ReceivePartInput: {
            partText: string;
            quantity: number;
            /** @default null */
            packSize: number | null;
            /** @default null */
            bin: string | null;
            /** @default null */
            orderId: components["schemas"]["RowId"] | null;
            /** @default  */
            note: string;
        };
        RecheckView: {
            id: components["schemas"]["RowId"];
            cause: string;
            bulletin: string | null;
            revision: number;
            /** @enum {string} */
            state: "planned" | "running" | "done";
            planned: number;
            judged: number;
            changed: number;
            flagsRaised: number;
            flagsCleared: number;
            callbacksOpened: number;
            callbacksClosed: number;
            setAside: number;
            setAsideWhy: string[];
            createdAt: components["schemas"]["InstantText"];
            startedAt: components["schemas"]["InstantText"] | null;
            finishedAt: components["schemas"]["InstantText"] | null;
            perSecond: number | null;
            secondsLeft: number | null;
        };
        Rechecks: components["schemas"]["RecheckView"][];
        RecordPlacesInput: {
            /** @enum {string} */
            side: "found" | "left";
            places: {
                position: string;
                place: number;
                /** @default null */
                partText: string | null;
                /** @default null */
                marks: components["schemas"]["MarksInput"] | null;
                /** @default null */
                pickedCandidate: string | null;
                /** @default null */
                toldBy: string | null;
                /** @default null */
                condition: components["schemas"]["Condition"] | null;
                /** @default null */
                fittedOn: components["schemas"]["DayText"] | null;
                /** @default null */
                leftOutWhy: string | null;
            }[];
        };
        RecoveryCodes: {
            codes: string[];
        };
        RejectedRow: {
            row: number;
            problems: components["schemas"]["CellProblem"][];
        };
        RemovePhotoInput: {
            reason: components["schemas"]["Reason"];
        };
        Retention: {
            years: number | null;
            version: number;
            due: {
                id: components["schemas"]["RowId"];
                name: string;
                location: string;
                lastSeenOn: string;
            }[];
            dueCount: number;
        };
        /** @enum {string} */
        Role: "technician" | "counter" | "manager" | "administrator";
        RowId: number;
        RuleList: {
            inForceOn: components["schemas"]["DayText"];
            knownOn: components["schemas"]["DayText"];
            total: number;
            rules: {
                key: string;
                version: number;
                line: string;
                positions: string[];
                models: string[];
                options: string[];
                built: string;
                serials: string | null;
                inForce: string;
                required: string | null;
                allowed: string[];
                barred: {
                    part: string;
                    reason: string;
                }[];
                /** @enum {string} */
                action: "nothing" | "next-service" | "call-back" | "stop-use";
                replaces: string[];
                sentence: string;
                lineName: string;
                positionNames: string[];
                paper: string;
                /** @enum {string} */
                speaks: "in-force" | "coming" | "ended";
            }[];
        };
        RuleView: {
            key: string;
            version: number;
            line: string;
            positions: string[];
            models: string[];
            options: string[];
            built: string;
            serials: string | null;
            inForce: string;
            required: string | null;
            allowed: string[];
            barred: {
                part: string;
                reason: string;
            }[];
            /** @enum {string} */
            action: "nothing" | "next-service" | "call-back" | "stop-use";
            replaces: string[];
            sentence: string;
        };
        RulebookImported: {
            dryRun: boolean;
            counts: {
                makers: {
                    added: number;
                    changed: number;
                    same: number;
                };
                serialSchemes: {
                    added: number;
                    changed: number;
                    same: number;
                };
                standardEditions: {
                    added: number;
                    changed: number;
                    same: number;
                };
                lines: {
                    added: number;
                    changed: number;
                    same: number;
                };
                parts: {
                    added: number;
                    changed: number;
                    same: number;
                };
                sources: {
                    added: number;
                    changed: number;
                    same: number;
                };
                rules: {
                    added: number;
                    changed: number;
                    same: number;
                };
                supersessions: {
                    added: number;
                    changed: number;
                    same: number;
                };
            };
            recheckId: components["schemas"]["RowId"] | null;
        };
        RulebookOverview: {
            revision: number;
            inForceOn: components["schemas"]["DayText"];
            sources: {
                id: components["schemas"]["RowId"];
                key: string;
                /** @enum {string} */
                kind: "owners-manual" | "parts-list" | "revised-parts-list" | "service-bulletin" | "makers-advice" | "shop-finding";
                publisher: string;
                number: string;
                title: string;
                issued: components["schemas"]["DayText"];
                effective: components["schemas"]["DayText"] | null;
                /** @enum {string} */
                state: "draft" | "published" | "withdrawn";
                standing: number;
                ruleCount: number;
            }[];
            lines: {
                code: string;
                name: string;
                maker: string;
                ruleCount: number;
            }[];
        };
        RulingPiece: {
            built: {
                from: components["schemas"]["DayText"] | null;
                to: components["schemas"]["DayText"] | null;
            }[];
            when: string[];
            /** @enum {string} */
            outcome: "decided" | "disputed" | "nothing-said";
            required: components["schemas"]["PartRef"] | null;
            allowed: components["schemas"]["PartRef"][];
            barred: {
                part: components["schemas"]["PartRef"];
                reason: string;
                rule: string;
                source: string;
                voidsWarranty: boolean;
            }[];
            rule: string | null;
            source: components["schemas"]["SourceRef"] | null;
            overridden: {
                rule: string;
                source: components["schemas"]["SourceRef"] | null;
                why: string;
            }[];
        };
        RulingView: {
            position: string;
            settled: boolean;
            sentence: string;
            pieces: components["schemas"]["RulingPiece"][];
            boundaries: components["schemas"]["DayText"][];
            dependsOn: string[];
        };
        SaveBulletinInput: {
            /**
             * @default service-bulletin
             * @enum {string}
             */
            kind: "owners-manual" | "parts-list" | "revised-parts-list" | "service-bulletin" | "makers-advice" | "shop-finding";
            publisher: string;
            number: string;
            title: string;
            /** @default  */
            summary: string;
            issued: components["schemas"]["DayText"];
            /** @default null */
            effective: components["schemas"]["DayText"] | null;
            received: components["schemas"]["DayText"];
            draft: components["schemas"]["BulletinDraftInput"];
        };
        SaveSerialSchemeInput: {
            scheme: {
                maker: string;
                name: string;
            } & {
                [key: string]: unknown;
            };
        };
        SaveStandardEditionInput: {
            edition: {
                standard: string;
                edition: string;
                source: string;
            } & {
                [key: string]: unknown;
            };
        };
        SavedSerialScheme: {
            version: number;
            saved: components["schemas"]["SerialSchemeRow"];
            recheck: components["schemas"]["RecheckView"];
        };
        SavedStandardEdition: {
            version: number;
            saved: components["schemas"]["StandardEditionRow"];
            recheck: components["schemas"]["RecheckView"];
        };
        ScanAnswer: {
            /** @constant */
            kind: "ticket";
            id: components["schemas"]["RowId"];
        } | {
            /** @constant */
            kind: "unit";
            id: components["schemas"]["RowId"];
        } | {
            /** @constant */
            kind: "part";
            part: components["schemas"]["PartRef"];
            pack: number;
            batch: string | null;
        } | {
            /** @constant */
            kind: "unknown";
            sentence: string;
        } | {
            /** @constant */
            kind: "text";
        };
        Scanned: {
            found: components["schemas"]["ScanAnswer"];
        };
        SearchHits: {
            id: components["schemas"]["RowId"];
            number: string;
            stage: components["schemas"]["Stage"];
            unit: string;
            serial: string | null;
            owner: string;
            bench: {
                id: components["schemas"]["RowId"];
                code: string;
            } | null;
            promisedOn: components["schemas"]["DayText"] | null;
            onHold: string | null;
            openFlags: number;
            worst: components["schemas"]["Verdict"] | null;
            waits: {
                parts: string[];
                here: boolean;
            } | null;
            version: number;
            closedOn: components["schemas"]["DayText"] | null;
            matched: string;
        }[];
        SecondFactorBegun: {
            secret: string;
            address: string;
        };
        SecondFactorCodeInput: {
            code: string;
        };
        SecondFactorOffInput: {
            password: string;
            code: string;
        };
        SecondFactorView: {
            on: boolean;
            required: boolean;
            recoveryLeft: number;
            hasPassword: boolean;
        };
        SerialSchemeRow: {
            id: components["schemas"]["RowId"];
            version: number;
            makerName: string;
            scheme: {
                id: string;
                maker: string;
                /** @default [] */
                lines: string[];
                name: string;
                validFrom: string | null;
                validTo: string | null;
                fields: ({
                    /** @constant */
                    kind: "year-digit";
                } | {
                    /** @constant */
                    kind: "year-two-digits";
                } | {
                    /** @constant */
                    kind: "year-four-digits";
                } | {
                    /** @constant */
                    kind: "year-letter";
                    letters: string;
                    firstYear: number;
                } | {
                    /** @constant */
                    kind: "month-number";
                } | {
                    /** @constant */
                    kind: "month-letter";
                    letters: string;
                } | {
                    /** @constant */
                    kind: "iso-week";
                } | {
                    /** @constant */
                    kind: "day-of-year";
                } | {
                    /** @constant */
                    kind: "day-of-month";
                } | {
                    /** @constant */
                    kind: "plant";
                    length: number;
                    /** @default [] */
                    codes: {
                        code: string;
                        name: string;
                    }[];
                } | {
                    /** @constant */
                    kind: "sequence";
                    length: number;
                    maxLength?: number;
                } | {
                    /** @constant */
                    kind: "literal";
                    text: string;
                } | {
                    /** @constant */
                    kind: "separator";
                } | {
                    /** @constant */
                    kind: "other";
                    length: number;
                })[];
                /** @default common practice, no source */
                source: string;
            };
            updatedAt: components["schemas"]["InstantText"];
            updatedBy: string | null;
            units: number;
        };
        SerialSchemeRows: components["schemas"]["SerialSchemeRow"][];
        SetAsideEvidenceInput: {
            reason: components["schemas"]["Reason"] | null;
        };
        SetLabourInput: {
            lines: components["schemas"]["LabourLineInput"][];
        };
        SetShelfItemInput: {
            bin?: string;
            reorderPoint?: number | null;
            orderQuantity?: number | null;
            supplier?: string;
            packSize?: number;
        };
        SetWarrantyInput: {
            warranty: {
                boughtOn: components["schemas"]["DayText"];
                months: number;
            } | null;
        };
        SettleCallbackInput: {
            /** @enum {string} */
            outcome: "booked" | "owner-declined" | "part-sent" | "unit-gone" | "done-elsewhere";
            reason: components["schemas"]["Reason"];
        };
        SettleNoteInput: {
            reason: components["schemas"]["Reason"];
        };
        SettledMoney: {
            currency: string;
            tax: components["schemas"]["Tax"];
            hourMinor: components["schemas"]["MinorUnits"];
            version: components["schemas"]["Version"];
        };
        SettledNote: {
            id: components["schemas"]["RowId"];
            where: string;
            sentence: string;
            source: string;
            on: components["schemas"]["DayText"];
            why: string;
            by: string | null;
            at: components["schemas"]["InstantText"];
        };
        SettledPrints: {
            /** @enum {string} */
            manner: "en-GB" | "en-US" | "en-CA" | "de-DE" | "fr-FR" | "nl-NL" | "sv-SE" | "pl-PL" | "es-ES" | "it-IT";
            /** @enum {string} */
            torque: "N·m" | "lbf·ft";
            /** @enum {string} */
            length: "mm" | "in";
            shopName: string;
            address: string;
            phone: string;
            email: string;
            /** @enum {string} */
            paper: "A4" | "Letter";
            /** @enum {string} */
            labels: "a4-3x8" | "a4-3x7" | "a4-2x7" | "letter-3x10" | "letter-2x5";
            version: components["schemas"]["Version"];
        };
        SettledSignInRules: {
            secondFactorRequired: boolean;
            version: components["schemas"]["Version"];
        };
        /** @enum {string} */
        SheetKind: "makers" | "lines" | "positions" | "parts" | "supersessions" | "schemes" | "rules" | "owners" | "tickets";
        SheetMapping: {
            [key: string]: number | null;
        };
        SheetOutcome: {
            add: number;
            change: number;
            same: number;
            rejected: number;
            recheckId: components["schemas"]["RowId"] | null;
        };
        SheetView: {
            id: components["schemas"]["RowId"];
            version: number;
            kind: components["schemas"]["SheetKind"];
            fileName: string;
            /** @enum {string} */
            state: "reading" | "read" | "looked" | "done";
            /** @enum {string} */
            format: "csv" | "xlsx";
            encoding: string | null;
            encodingCertain: boolean;
            delimiter: string | null;
            headings: string[];
            rows: number;
            sample: string[][];
            mapping: components["schemas"]["SheetMapping"];
            dayOrder: ("day-month-year" | "month-day-year") | null;
            publish: boolean;
            doing: string | null;
            progress: number;
            outcome: components["schemas"]["SheetOutcome"] | null;
            rejected: components["schemas"]["RejectedRow"][];
        };
        ShelfHolder: {
            ticketId: components["schemas"]["RowId"];
            ticket: string;
            pieces: number;
        };
        ShelfItem: {
            id: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"];
            bin: string;
            onHand: number;
            reserved: number;
            free: number;
            reorderPoint: number | null;
            orderQuantity: number | null;
            supplier: string;
            packSize: number;
            coming: number;
            expectedOn: components["schemas"]["DayText"] | null;
            waiting: number;
            toPull: number;
            version: number;
        };
        ShelfItemDetail: {
            id: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"];
            bin: string;
            onHand: number;
            reserved: number;
            free: number;
            reorderPoint: number | null;
            orderQuantity: number | null;
            supplier: string;
            packSize: number;
            coming: number;
            expectedOn: components["schemas"]["DayText"] | null;
            waiting: number;
            toPull: number;
            version: number;
            holders: components["schemas"]["ShelfHolder"][];
            waits: {
                ticketId: components["schemas"]["RowId"];
                ticket: string;
                pieces: number;
                since: components["schemas"]["InstantText"];
                wokenAt: components["schemas"]["InstantText"] | null;
            }[];
            orders: components["schemas"]["ShelfOrder"][];
            pulls: components["schemas"]["ShelfPulls"];
            movements: components["schemas"]["ShelfMovement"][];
        };
        ShelfMoved: {
            item: components["schemas"]["ShelfItem"];
            sentence: string;
            woken: string[];
        };
        ShelfMovement: {
            id: components["schemas"]["RowId"];
            at: components["schemas"]["InstantText"];
            by: string | null;
            kind: string;
            pieces: number;
            reserved: number;
            ticket: {
                id: components["schemas"]["RowId"];
                number: string;
            } | null;
            sentence: string;
        };
        ShelfOrder: {
            id: components["schemas"]["RowId"];
            itemId: components["schemas"]["RowId"];
            part: components["schemas"]["PartRef"];
            supplier: string;
            pieces: number;
            received: number;
            expectedOn: components["schemas"]["DayText"] | null;
            /** @enum {string} */
            state: "open" | "received" | "cancelled";
            orderedAt: components["schemas"]["InstantText"];
            orderedBy: string | null;
            version: number;
        };
        ShelfPage: {
            kept: boolean;
            total: number;
            items: components["schemas"]["ShelfItem"][];
            next: number | null;
        };
        ShelfPull: {
            noticeId: components["schemas"]["RowId"];
            bulletin: {
                id: components["schemas"]["RowId"];
                number: string;
                title: string;
            };
            /** @enum {string} */
            kind: "barred" | "ended";
            since: components["schemas"]["DayText"] | null;
            stillGood: boolean;
            sentences: string[];
            item: {
                id: components["schemas"]["RowId"];
                part: components["schemas"]["PartRef"];
                location: string;
                bin: string;
                onHand: number;
                reserved: number;
            };
            holders: components["schemas"]["ShelfHolder"][];
            sentence: string;
            done: {
                at: components["schemas"]["InstantText"];
                by: string | null;
                pieces: number;
                note: string;
            } | null;
        };
        ShelfPulls: components["schemas"]["ShelfPull"][];
        ShelfShare: {
            part: components["schemas"]["PartRef"];
            /** @enum {string} */
            kind: "barred" | "ended";
            stillGood: boolean;
            sentences: string[];
            location: string;
            bin: string;
            onHand: number;
            holders: components["schemas"]["ShelfHolder"][];
        }[];
        ShelfWord: {
            key: string;
            free: number;
            onHand: number;
            bin: string;
            expectedOn: components["schemas"]["DayText"] | null;
            coming: number;
        };
        ShopSettings: {
            lookBackMonths: number;
            standing: components["schemas"]["Standing"];
            strengthThreshold: {
                soonerBelow: number;
                laterAbove: number;
            };
            keepShelf: boolean;
            version: components["schemas"]["Version"];
        };
        SignInCodeInput: {
            code: string;
        };
        SignInInput: {
            login: string;
            password: string;
        };
        SignInRulesInput: {
            secondFactorRequired: boolean;
        };
        SourceRef: {
            key: string;
            kind: string;
            number: string;
            title: string;
            issued: components["schemas"]["DayText"];
        };
        /** @enum {string} */
        Stage: "intake" | "inspection" | "parts-selection" | "repair" | "handover";
        StandardEditionRow: {
            id: components["schemas"]["RowId"];
            version: number;
            edition: {
                standard: string;
                edition: string;
                /** @default null */
                approved: string | null;
                /** @default null */
                published: string | null;
                /** @default  */
                subject: string;
                source: string;
            };
            updatedAt: components["schemas"]["InstantText"];
            updatedBy: string | null;
        };
        StandardEditionRows: components["schemas"]["StandardEditionRow"][];
        Standing: {
            "owners-manual": number;
            "parts-list": number;
            "revised-parts-list": number;
            "service-bulletin": number;
            "makers-advice": number;
            "shop-finding": number;
        };
        StockView: {
            part: components["schemas"]["PartRef"];
            onHand: number;
            reserved: number;
            bin: string;
            version: components["schemas"]["Version"];
        };
        StrengthView: {
            fitted: {
                low: number;
                high: number;
            } | null;
            required: {
                low: number;
                high: number;
            } | null;
            rated: number | null;
            /** @enum {string} */
            class: "breaks-sooner" | "as-required" | "breaks-later" | "cannot-tell";
            ratio: {
                low: number;
                high: number;
            } | null;
            threshold: {
                soonerBelow: number;
                laterAbove: number;
            };
            /** @enum {string} */
            severity: "none" | "nuisance" | "not-told" | "drive-line-at-risk" | "above-rating";
            signal: ("WARNING" | "NOTICE") | null;
            sentences: string[];
            caution: string;
        };
        Tax: {
            name: string;
            basisPoints: number;
            included: boolean;
        };
        TaxInput: {
            name: string;
            basisPoints: number;
            included: boolean;
        };
        TellAnswer: {
            candidates: {
                part: components["schemas"]["PartRef"];
                verdict: components["schemas"]["Verdict"] | null;
                agrees: ("head-marks" | "thread" | "groove" | "cross-hole" | "diameter" | "length" | "pitch" | "finish")[];
                differs: ("head-marks" | "thread" | "groove" | "cross-hole" | "diameter" | "length" | "pitch" | "finish")[];
                sentence: string;
                asksHow: boolean;
            }[];
            ruledOut: {
                part: components["schemas"]["PartRef"];
                sentence: string;
            }[];
            tellApart: string[];
            told: string | null;
            finishAlone: boolean;
            joint: components["schemas"]["Verdict"] | null;
            needless: string | null;
            sentences: string[];
        };
        TellRequestInput: {
            position: string;
            marks: components["schemas"]["MarksInput"];
            /** @default null */
            fittedOn: components["schemas"]["DayText"] | null;
        };
        TickSafetyInput: {
            checks: string[];
        };
        TicketCard: {
            id: components["schemas"]["RowId"];
            number: string;
            stage: components["schemas"]["Stage"];
            unit: string;
            serial: string | null;
            owner: string;
            bench: {
                id: components["schemas"]["RowId"];
                code: string;
            } | null;
            promisedOn: components["schemas"]["DayText"] | null;
            onHold: string | null;
            openFlags: number;
            worst: components["schemas"]["Verdict"] | null;
            waits: {
                parts: string[];
                here: boolean;
            } | null;
            version: number;
        };
        TicketEvent: {
            id: components["schemas"]["RowId"];
            at: components["schemas"]["InstantText"];
            by: components["schemas"]["PersonRef"] | null;
            kind: string;
            sentence: string;
        };
        TicketView: {
            id: components["schemas"]["RowId"];
            number: string;
            version: number;
            stage: components["schemas"]["Stage"];
            handedOver: boolean;
            closedAt: components["schemas"]["InstantText"] | null;
            onHold: string | null;
            cancelled: string | null;
            complaint: string;
            bench: components["schemas"]["Bench"] | null;
            promisedOn: components["schemas"]["DayText"] | null;
            openedAt: components["schemas"]["InstantText"];
            owner: components["schemas"]["Owner"];
            unit: components["schemas"]["UnitView"];
            positions: components["schemas"]["Position"][];
            places: components["schemas"]["PlaceView"][];
            rulings: components["schemas"]["RulingView"][];
            picks: components["schemas"]["PickView"][];
            shelf: {
                kept: boolean;
                parts: components["schemas"]["ShelfWord"][];
            };
            waits: components["schemas"]["PartWait"][];
            ownerSpares: {
                pickId: components["schemas"]["RowId"];
                ticketId: components["schemas"]["RowId"];
                ticket: string;
                part: components["schemas"]["PartRef"];
                quantity: number;
                givenOn: components["schemas"]["DayText"] | null;
                verdict: components["schemas"]["Verdict"] | null;
            }[];
            labour: {
                minutes: number;
                minor: number;
                lines: components["schemas"]["LabourLine"][];
            };
            totalMinor: number;
            currency: string;
            estimate: components["schemas"]["EstimateView"];
            authorisation: components["schemas"]["AuthorisationView"] | null;
            safety: {
                id: string;
                sentence: string;
                ticked: boolean;
            }[];
            flags: components["schemas"]["FlagView"][];
            photos: components["schemas"]["PhotoView"][];
            missing: {
                stage: components["schemas"]["Stage"];
                points: components["schemas"]["MissingPoint"][];
            }[];
            notes: components["schemas"]["UnitNote"][];
            touched: components["schemas"]["TouchedPlace"][];
            earlierTickets: {
                id: components["schemas"]["RowId"];
                number: string;
                closedOn: components["schemas"]["DayText"] | null;
                complaint: string;
            }[];
            history: components["schemas"]["TicketEvent"][];
            sketch: string;
        };
        TouchedPlace: {
            position: string;
            where: string;
            part: components["schemas"]["PartRef"];
            ticket: {
                id: components["schemas"]["RowId"];
                number: string;
            };
            on: components["schemas"]["DayText"];
            barred: string | null;
        };
        TradeNumber: {
            number: string;
            pack: number;
        };
        TrailEntry: {
            place: string;
            at: components["schemas"]["InstantText"];
            by: string | null;
            act: string;
            noun: string;
            key: string;
            revision: number | null;
            known: string | null;
            where: string | null;
            part: string | null;
            now: {
                verdict: components["schemas"]["Verdict"];
                revision: number | null;
            } | null;
            ruling: {
                sentence: string;
                sameToday: boolean;
                otherwise: components["schemas"]["KnownOtherwise"][];
            } | null;
            change: {
                [key: string]: unknown;
            };
        };
        TriedSerial: {
            /** @enum {string} */
            fit: "none" | "one" | "several";
            sentence: string;
            readings: {
                schemeName: string;
                characters: string;
                fields: {
                    kind: string;
                    at: number;
                    text: string;
                    meaning: string;
                }[];
                days: {
                    from: string;
                    to: string;
                }[];
            }[];
        };
        TrySerialSchemeInput: {
            scheme: {
                maker: string;
                name: string;
            } & {
                [key: string]: unknown;
            };
            serial: string;
        };
        UnitIdentity: {
            lineCode: string | null;
            modelNumber: string | null;
            serial: string | null;
            serialAbsent: string | null;
            /** @default {} */
            options: {
                [key: string]: boolean;
            };
            /** @default  */
            plate: string;
        };
        UnitIdentityInput: {
            lineCode: string | null;
            modelNumber: string | null;
            serial: string | null;
            serialAbsent: string | null;
            /** @default {} */
            options: {
                [key: string]: boolean;
            };
            /** @default  */
            plate: string;
        };
        UnitNote: {
            id: components["schemas"]["RowId"];
            where: string;
            sentence: string;
            source: string;
            on: components["schemas"]["DayText"];
        };
        UnitRow: {
            id: components["schemas"]["RowId"];
            name: string;
            serial: string | null;
            lineCode: string | null;
            openTicket: string | null;
        };
        UnitRows: components["schemas"]["UnitRow"][];
        UnitTrail: {
            items: components["schemas"]["TrailEntry"][];
            next: string | null;
        };
        UnitView: {
            lineCode: string | null;
            modelNumber: string | null;
            serial: string | null;
            serialAbsent: string | null;
            /** @default {} */
            options: {
                [key: string]: boolean;
            };
            /** @default  */
            plate: string;
            id: components["schemas"]["RowId"];
            lineName: string | null;
            makerName: string | null;
            modelName: string | null;
            version: number;
            owner: components["schemas"]["Owner"];
            buildDates: components["schemas"]["BuildDates"];
            serialReading: string | null;
            warranty: components["schemas"]["WarrantyView"] | null;
        };
        UnitVisit: {
            unit: components["schemas"]["UnitView"];
            here: boolean;
            code: string;
            openTicket: {
                id: components["schemas"]["RowId"];
                number: string;
            } | null;
            earlierTickets: {
                id: components["schemas"]["RowId"];
                number: string;
                closedOn: components["schemas"]["DayText"] | null;
                complaint: string;
            }[];
            notes: components["schemas"]["UnitNote"][];
            touched: components["schemas"]["TouchedPlace"][];
            settledNotes: components["schemas"]["SettledNote"][];
            callback: {
                id: components["schemas"]["RowId"];
                urgent: boolean;
                say: string;
            } | null;
        };
        UseLinkInput: {
            token: string;
            password: string;
        };
        /** @enum {string} */
        Verdict: "right" | "allowed" | "outdated" | "wrong" | "undecided" | "disputed";
        VerdictView: {
            verdict: components["schemas"]["Verdict"];
            sentence: string;
            ownerSentence: string;
            required: components["schemas"]["PartRef"] | null;
            rule: string | null;
            source: components["schemas"]["SourceRef"] | null;
            builtSpan: string;
            inForceSpan: string;
            action: ("nothing" | "next-service" | "call-back" | "stop-use") | null;
            barredWhy: string | null;
            thenVerdict: components["schemas"]["Verdict"] | null;
            couldHaveKnown: boolean | null;
            revision: number;
            strength: components["schemas"]["StrengthView"] | null;
        };
        Version: number;
        WaitForPartInput: {
            /** @default null */
            position: string | null;
            partText: string;
            quantity: number;
        };
        WallChartView: {
            line: {
                code: string;
                name: string;
                maker: string;
            };
            inForceOn: components["schemas"]["DayText"];
            knownOn: components["schemas"]["DayText"];
            revision: number;
            production: {
                from: components["schemas"]["DayText"];
                to: components["schemas"]["DayText"];
            };
            rows: {
                position: string;
                positionName: string;
                when: string;
                spans: {
                    from: components["schemas"]["DayText"];
                    to: components["schemas"]["DayText"];
                    /** @enum {string} */
                    outcome: "decided" | "disputed" | "nothing-said";
                    required: components["schemas"]["PartRef"] | null;
                    allowed: components["schemas"]["PartRef"][];
                    barred: components["schemas"]["PartRef"][];
                    papers: string[];
                }[];
            }[];
        };
        WarrantyView: {
            boughtOn: components["schemas"]["DayText"];
            months: number;
            lastDay: components["schemas"]["DayText"];
            runs: boolean;
            sentence: string;
        };
        WebhookAdded: {
            webhook: components["schemas"]["WebhookView"];
            secret: string;
        };
        WebhookDeliveries: components["schemas"]["WebhookDelivery"][];
        WebhookDelivery: {
            id: components["schemas"]["RowId"];
            eventId: string;
            type: string;
            at: components["schemas"]["InstantText"];
            /** @enum {string} */
            state: "waiting" | "sending" | "delivered" | "set-aside";
            tries: number;
            nextTryAt: components["schemas"]["InstantText"] | null;
            status: number | null;
            problem: string | null;
            endedAt: components["schemas"]["InstantText"] | null;
        };
        WebhookList: components["schemas"]["WebhookView"][];
        WebhookView: {
            id: components["schemas"]["RowId"];
            url: string;
            events: ("flag.raised" | "flag.closed" | "callback.opened" | "callback.closed" | "recheck.finished")[];
            active: boolean;
            createdAt: components["schemas"]["InstantText"];
            createdBy: string | null;
            waiting: number;
            setAside: number;
            version: number;
        };
        WhatIf: {
            revision: number;
            installs: number;
            changed: number;
            tickets: number;
            callbacks: number;
            shelf: components["schemas"]["ShelfShare"];
            byReason: {
                reason: string;
                count: number;
            }[];
            first: {
                unit: string;
                owner: string;
                position: string;
                placeName: string;
                from: string;
                to: string;
            }[];
            findings: {
                severity: string;
                sentence: string;
                line: string;
                position: string | null;
            }[];
        };
        WithdrawBulletinInput: {
            reason: components["schemas"]["Reason"];
        };
        WriteToOwnersInput: {
            ids: components["schemas"]["RowId"][];
            /** @default null */
            nextOn: components["schemas"]["DayText"] | null;
        };
        WrittenToOwners: {
            batch: string | null;
            written: {
                id: components["schemas"]["RowId"];
                name: string;
            }[];
            leftOut: {
                id: components["schemas"]["RowId"];
                name: string;
                why: string;
            }[];
        };
    };
    responses: {
        /** @description Not accepted. */
        Refused400: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "bad-input",
                 *       "title": "Not accepted",
                 *       "status": 400,
                 *       "detail": "complaint: expected at most 2000 characters."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not signed in. */
        Refused401: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "not-signed-in",
                 *       "title": "Not signed in",
                 *       "status": 401,
                 *       "detail": "Sign in first."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not allowed. */
        Refused403: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "not-allowed",
                 *       "title": "Not allowed",
                 *       "status": 403,
                 *       "detail": "A technician may not do this."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not found. */
        Refused404: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "not-found",
                 *       "title": "Not found",
                 *       "status": 404,
                 *       "detail": "There is nothing under '4711'."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not now. */
        Refused409: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "wrong-stage",
                 *       "title": "Not now",
                 *       "status": 409,
                 *       "detail": "The ticket is closed."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Changed meanwhile. */
        Refused412: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "stale",
                 *       "title": "Changed meanwhile",
                 *       "status": 412,
                 *       "detail": "Somebody else changed this first."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too large. */
        Refused413: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "bad-request",
                 *       "title": "Too large",
                 *       "status": 413,
                 *       "detail": "Request body is too large"
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Not the same. */
        Refused422: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "key-reused",
                 *       "title": "Not the same",
                 *       "status": 422,
                 *       "detail": "This Idempotency-Key was used for another request; take a new one."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Version missing. */
        Refused428: {
            headers: {
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "version-missing",
                 *       "title": "Version missing",
                 *       "status": 428,
                 *       "detail": "Name the version this change was made on, as If-Match: \"7\"."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Too many. */
        Refused429: {
            headers: {
                /** @description Seconds to wait before the next try. */
                "Retry-After"?: number;
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "too-many-tries",
                 *       "title": "Too many",
                 *       "status": 429,
                 *       "detail": "Too many tries; try again in 4 s."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
        /** @description Away. */
        Refused503: {
            headers: {
                /** @description Seconds to wait before the next try. */
                "Retry-After"?: number;
                [name: string]: unknown;
            };
            content: {
                /**
                 * @example {
                 *       "type": "database-away",
                 *       "title": "Away",
                 *       "status": 503,
                 *       "detail": "The database does not answer; try again in a moment."
                 *     }
                 */
                "application/problem+json": components["schemas"]["Problem"];
            };
        };
    };
    parameters: never;
    requestBodies: never;
    headers: never;
    pathItems: never;
}
export type $defs = Record<string, never>;
export interface operations {
    "benches-lists": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every bench of the location with its list and its load, and the open tickets on none. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BenchLists"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-benches": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The benches of the shop. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Benches"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "benches-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeBenchInput"];
            };
        };
        responses: {
            /** @description Sets how many minutes of work a day at a bench takes. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BenchLists"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "board-board": {
        parameters: {
            query?: {
                bench?: number;
                owner?: number;
                flagged?: "yes";
                q?: string;
                promised?: components["schemas"]["PromisedFilter"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The open tickets of the board, by stage. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Board"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "estimates-bookkeeping": {
        parameters: {
            query: {
                from: components["schemas"]["DayText"];
                to: components["schemas"]["DayText"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The last estimate of every ticket handed over in a span of days, line by line. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Every paper of the shop, newest first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulletinRows"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-save": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveBulletinInput"];
            };
        };
        responses: {
            /** @description Keeps a new bulletin as a draft. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulletinDetail"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-view": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One paper with its rules, and how its recheck stands. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulletinDetail"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveBulletinInput"];
            };
        };
        responses: {
            /** @description Changes a draft. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BulletinDetail"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-publish": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PublishBulletinInputInput"];
            };
        };
        responses: {
            /** @description Puts a draft in force and starts its recheck. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Published"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-what-if": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What publishing the draft would change, worked out without changing it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WhatIf"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "bulletins-withdraw": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WithdrawBulletinInput"];
            };
        };
        responses: {
            /** @description Takes a published bulletin back and starts its recheck. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Published"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "callbacks-list": {
        parameters: {
            query?: {
                state?: "due" | "later" | "open" | "booked" | "settled" | "withdrawn" | "closed" | "all";
                urgent?: "yes";
                after?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Callbacks, stop use first, then by the day of the next try, page by page. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CallbackPage"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "letters-write": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteToOwnersInput"];
            };
        };
        responses: {
            /** @description Notes a letter to each owner and answers the batch under which they are printed. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenToOwners"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "letters-labels": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                batch: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The address labels of a batch, on sheets of labels as the shop has them. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "letters-letters": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                batch: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The letters of a batch in one file. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "letters-list": {
        parameters: {
            query?: {
                state?: "due" | "later" | "open" | "booked" | "settled" | "withdrawn" | "closed" | "all";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A list of callbacks as a table for another program. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "letters-mail": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WriteToOwnersInput"];
            };
        };
        responses: {
            /** @description Keeps an e-mail to each owner, to be sent by a worker. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WrittenToOwners"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "callbacks-view": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One callback with its reasons and attempts. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CallbackView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "callbacks-attempt": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewAttemptInput"];
            };
        };
        responses: {
            /** @description Records an attempt to reach the owner. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CallbackView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "callbacks-settle": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SettleCallbackInput"];
            };
        };
        responses: {
            /** @description Closes a callback with what came of it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["CallbackView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "figures-view": {
        parameters: {
            query?: {
                from?: components["schemas"]["DayText"];
                to?: components["schemas"]["DayText"];
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The figures of a span of days; the last twelve months where none is named. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Figures"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "flags-list": {
        parameters: {
            query?: {
                state?: "open" | "decided";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Flagged installs, open or decided. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Flags"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "flags-decide": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["DecideFlagInput"];
            };
        };
        responses: {
            /** @description Records a manager's decision on a flag. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FlagView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "health-health": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether the program answers and reaches its database. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Health"];
                };
            };
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "health-ready": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether requests should be sent here: the database answers and is up to date, no work waits too long, and the program was not asked to end. Else 503, saying which. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Ready"];
                };
            };
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-lines": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The product lines the shop knows. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Lines"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-line": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                code: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One product line with its models, options and positions. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LineDetail"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "live-follow": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Server-sent events; each names a kind of thing to fetch anew. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/event-stream": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "board-look-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LookUpRequestInput"];
            };
        };
        responses: {
            /** @description Which part is right at each position, for a unit that has no ticket. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["LookUpAnswer"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "metrics-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How the queue of rechecks stands, as Prometheus text. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/plain": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "benches-mine": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The list of the bench one works at, each ticket with what its gate still asks for. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MyBench"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "benches-choose": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChooseMyBenchInput"];
            };
        };
        responses: {
            /** @description Says at which bench one works. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MyBench"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "description-describe": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The API as an OpenAPI 3.1 document. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "owners-search": {
        parameters: {
            query?: {
                q?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Owners by name, telephone or e-mail. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Owners"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "owners-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeOwnerInput"];
            };
        };
        responses: {
            /** @description Changes an owner's name, telephone, addresses or consent. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Owner"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "personal-data-erase": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["EraseOwner"];
            };
        };
        responses: {
            /** @description Erases what is known of an owner; tickets, parts and verdicts stay. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonalData"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "personal-data-export": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything that is kept of one owner. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonalData"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "owners-units": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The units of one owner. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitRows"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-parts": {
        parameters: {
            query?: {
                q?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Parts by number, trade number or name. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Parts"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-add-trade-number": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AddTradeNumberInput"];
            };
        };
        responses: {
            /** @description Writes down the number in the bar code of a part's bag, and how many are in that bag. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Part"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "catalogue-remove-trade-number": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
                number: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Takes a trade number away from its part. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Part"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everybody who works or has worked here, and the locations. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PeopleList"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-add": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewPersonInput"];
            };
        };
        responses: {
            /** @description Adds a person and answers a one-time link to set a password. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invited"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePersonInput"];
            };
        };
        responses: {
            /** @description Changes a person's name, role or location, or ends their access. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-elsewhere": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PersonElsewhereInput"];
            };
        };
        responses: {
            /** @description Writes down as whom a person may sign in with another provider, or takes it away. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PersonView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-link": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A new one-time link for a person; the one before stops working. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Invited"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "people-reset-second-factor": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Takes a lost second factor off a person, who can then add a new one. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "photos-full": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                name: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A photo as it is kept. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "photos-thumb": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                name: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A photo, small. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "image/jpeg": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "description-reader": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A page to read the description and try the API out. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/html": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "description-file": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                file: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A file of the reader page. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/javascript": string;
                    "text/css": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rechecks-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The latest rechecks, newest first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Rechecks"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rechecks-order": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Starts a recheck of everything. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecheckView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rechecks-view": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One recheck: how far it is and what it has changed. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecheckView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "personal-data-view": {
        parameters: {
            query?: {
                years?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description After how many years an owner is forgotten, and who would be; also for years that are only asked about. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Retention"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "personal-data-settle": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeRetention"];
            };
        };
        responses: {
            /** @description Settles after how many years without a ticket an owner is forgotten. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Retention"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-overview": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The papers in force and how many rules each brings. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RulebookOverview"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-file-export": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The rulebook as a file, as the command line reads it; see docs/formats.md. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-file-import": {
        parameters: {
            query?: {
                dryRun?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": {
                    file: string;
                };
            };
        };
        responses: {
            /** @description Takes a rulebook file in: adds what is new, and overwrites nothing that is on record. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RulebookImported"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-findings": {
        parameters: {
            query?: {
                inForceOn?: components["schemas"]["DayText"];
                knownOn?: components["schemas"]["DayText"];
                line?: string;
                severity?: "error" | "warning" | "note";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the audit of the rulebook finds: gaps, overlaps, disputes. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["FindingList"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-rules": {
        parameters: {
            query?: {
                inForceOn?: components["schemas"]["DayText"];
                knownOn?: components["schemas"]["DayText"];
                line?: string;
                position?: string;
                q?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The rules of a line on a day, as known at an instant. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RuleList"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "rulebook-wall-chart": {
        parameters: {
            query?: {
                inForceOn?: components["schemas"]["DayText"];
                knownOn?: components["schemas"]["DayText"];
            };
            header?: never;
            path: {
                line: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The required part by build date, for each position of a line. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WallChartView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "scan-read": {
        parameters: {
            query: {
                text: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Reads the tag of a ticket or a unit, or a part's bag: a plain number or a GS1 element string. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Scanned"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "board-search": {
        parameters: {
            query?: {
                q?: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Tickets by number, serial, owner or telephone. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SearchHits"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "serial-schemes-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The serial schemes of the shop. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SerialSchemeRows"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "serial-schemes-add": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveSerialSchemeInput"];
            };
        };
        responses: {
            /** @description Adds a serial scheme and works out the build dates it concerns anew. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedSerialScheme"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "serial-schemes-try": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TrySerialSchemeInput"];
            };
        };
        responses: {
            /** @description Reads serial numbers by a scheme without keeping it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TriedSerial"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "serial-schemes-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveSerialSchemeInput"];
            };
        };
        responses: {
            /** @description Changes a serial scheme and works out the build dates it concerns anew. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedSerialScheme"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-who-am-i": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Who is signed in, and what that person may do. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInInput"];
            };
        };
        responses: {
            /** @description Signs a person in; the answer sets the session cookie. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-sign-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ends the session. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-sign-out-everywhere": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Ends every session of the person. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-sign-in": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInCodeInput"];
            };
        };
        responses: {
            /** @description The second step of signing in, with a code. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-demo-people": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The demo shop's people; empty in a real shop. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["DemoPeople"];
                };
            };
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the person has begun to type at the intake; null where nothing, or nothing for half a day. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OwnIntakeDraft"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-keep-draft": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnIntakeDraftInput"];
            };
        };
        responses: {
            /** @description Keeps what the person has begun to type at the intake until the ticket is open or the person signs out; null forgets it. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "elsewhere-offered": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the other way of signing in is called; null where there is none. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ElsewhereOffered"];
                };
            };
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "elsewhere-begin": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Begins to sign in elsewhere: where the browser is to go. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ElsewhereBegun"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "elsewhere-back": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ElsewhereBackInput"];
            };
        };
        responses: {
            /** @description Signs in with what the browser came back with. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-use-link": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["UseLinkInput"];
            };
        };
        responses: {
            /** @description Sets a password by a one-time link and signs in. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-change-password": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePasswordInput"];
            };
        };
        responses: {
            /** @description Changes the own password and ends every other session of the person. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "session-read": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OwnReadingInput"];
            };
        };
        responses: {
            /** @description Chooses how the page writes days, numbers, torques and lengths for the person; null as the shop does. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["Me"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How one's own second factor stands. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SecondFactorView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-begin": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["BeginSecondFactorInput"];
            };
        };
        responses: {
            /** @description Begins to set up a second factor; answers its secret once. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SecondFactorBegun"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-turn-off": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SecondFactorOffInput"];
            };
        };
        responses: {
            /** @description Turns the second factor off. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-turn-on": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SecondFactorCodeInput"];
            };
        };
        responses: {
            /** @description Turns the second factor on with a first code; answers recovery codes once. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "second-factor-recovery": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SecondFactorCodeInput"];
            };
        };
        responses: {
            /** @description New recovery codes; the ones before stop working. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["RecoveryCodes"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "settings-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The settings of the shop. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShopSettings"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "settings-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeSettingsInput"];
            };
        };
        responses: {
            /** @description Changes settings; what can change an answer starts a recheck of everything. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ChangedSettings"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "mail-server-set-up": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Whether e-mails can be sent, through which server and from whom; the password is told to nobody. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MailSetUp"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "mail-server-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The mail server as it is settled, and what the environment says instead; without the password. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MailServerView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "mail-server-settle": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeMailServerInput"];
            };
        };
        responses: {
            /** @description Settles the mail server or takes it away; a password left out stays, as long as the host does. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MailServerView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "mail-server-try-out": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MailTrialInput"];
            };
        };
        responses: {
            /** @description Sends a trial letter through the server in force; refused with what the server said where it was not taken. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["MailTrialSent"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "estimates-money": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Currency, tax, and what an hour is asked for. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledMoney"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "estimates-change-money": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MoneySettingsInput"];
            };
        };
        responses: {
            /** @description Settles currency, tax and hour; estimates written down before keep theirs. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledMoney"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "print-settings-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description How prints look, and in whose manner days and numbers are written. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledPrints"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "print-settings-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PrintSettingsInput"];
            };
        };
        responses: {
            /** @description Changes how prints look; nothing is judged again. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledPrints"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sign-in-rules-view": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the shop asks of a sign-in. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledSignInRules"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sign-in-rules-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SignInRulesInput"];
            };
        };
        responses: {
            /** @description Changes what the shop asks of a sign-in. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SettledSignInRules"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-bring": {
        parameters: {
            query: {
                kind: components["schemas"]["SheetKind"];
                encoding?: "utf-8" | "utf-16le" | "utf-16be" | "windows-1252" | "windows-1250" | "windows-1251" | "iso-8859-15" | "macintosh" | "shift_jis";
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": {
                    file: string;
                };
            };
        };
        responses: {
            /** @description Takes a spreadsheet in, to be looked at; nothing of the shop changes. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SheetView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "exports-export": {
        parameters: {
            query?: {
                format?: "csv" | "xlsx";
            };
            header?: never;
            path: {
                kind: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything of a kind as a spreadsheet; importing it again changes nothing. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": unknown;
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "exports-template": {
        parameters: {
            query?: {
                format?: "csv" | "xlsx";
            };
            header?: never;
            path: {
                kind: string;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description An empty spreadsheet of the kind, with a worked line. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                    "application/vnd.openxmlformats-officedocument.spreadsheetml.sheet": unknown;
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-view": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A spreadsheet that was brought: how it is read, and what it would change. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SheetView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-drop": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Throws a spreadsheet away that was brought. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-import": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ImportSheetInput"];
            };
        };
        responses: {
            /** @description Imports what the dry run showed, all of it or nothing. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SheetView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-look": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["LookAtSheetInput"];
            };
        };
        responses: {
            /** @description The dry run: every problem by row and column, and what an import would add, change and leave. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SheetView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheets-rejected": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The rejected rows as they stood in the file, each with why, as CSV. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-list": {
        parameters: {
            query?: {
                q?: string;
                only?: "low" | "reserved" | "pull";
                after?: number;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The shelf by bin, page by page; a part is found by its number in any writing. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfPage"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-count": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CountPartInput"];
            };
        };
        responses: {
            /** @description Sets right how many pieces there are, with a reason. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfMoved"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-item": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One part on the shelf with its movements, who holds it, who waits for it, and what is on its way. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfItemDetail"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-set": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetShelfItemInput"];
            };
        };
        responses: {
            /** @description Sets the bin, the reorder point, how many are ordered at once, and the supplier. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfItemDetail"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-orders-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What has fallen to its reorder point or is waited for, and open orders. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderList"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-orders-place": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PlaceOrdersInput"];
            };
        };
        responses: {
            /** @description Keeps what was ordered and when it is expected. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderList"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-orders-csv": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The list of what to order as CSV. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "text/csv": string;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-orders-cancel": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description An order that will not come. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["OrderList"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-pulls": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Parts on the shelves that published bulletins bar or end, with their bins; what is still to be done first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfPulls"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-pulls-of": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The same for one bulletin. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfPulls"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-pulled": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MarkPulledInput"];
            };
        };
        responses: {
            /** @description Marks such a part as seen to on one shelf. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfPulls"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-receive": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ReceivePartInput"];
            };
        };
        responses: {
            /** @description Puts bags or pieces on the shelf, counts them towards their order, and wakes tickets that wait. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ShelfMoved"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "shelf-stock": {
        parameters: {
            query: {
                partText: string;
            };
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description What the shelf has of a part, by its number in any writing; to be seen before it is counted. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StockView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "standard-editions-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The editions of standards the shop knows. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["StandardEditionRows"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "standard-editions-add": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveStandardEditionInput"];
            };
        };
        responses: {
            /** @description Adds an edition of a standard. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedStandardEdition"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "standard-editions-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SaveStandardEditionInput"];
            };
        };
        responses: {
            /** @description Changes an edition of a standard. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["SavedStandardEdition"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-open": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["OpenTicketInput"];
            };
        };
        responses: {
            /** @description Opens a ticket for a unit that came in. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-view": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description One ticket with its unit, places, flags and what its stage still needs. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-change-tag": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeTagInput"];
            };
        };
        responses: {
            /** @description Changes what the tag says: complaint, bench, promised day. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-authorise": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["AuthoriseInput"];
            };
        };
        responses: {
            /** @description Records the owner's word to go ahead, or not. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "benches-move": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MoveOnBenchInput"];
            };
        };
        responses: {
            /** @description Moves a ticket on a list, to another bench or off all of them. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["BenchLists"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-cancel": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["CancelTicketInput"];
            };
        };
        responses: {
            /** @description Ends the ticket without a repair. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "estimates-write": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Writes the estimate down as it stands, as its next revision. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-hold": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["HoldTicketInput"];
            };
        };
        responses: {
            /** @description Puts the ticket on hold or takes it off. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-set-labour": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetLabourInput"];
            };
        };
        responses: {
            /** @description Sets the labour lines of the ticket. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "photos-take": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "multipart/form-data": {
                    file: string;
                };
            };
        };
        responses: {
            /** @description Adds a photo: the fields stage, position, place and caption, then one file named photo. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "photos-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
                photoId: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangePhotoInput"];
            };
        };
        responses: {
            /** @description Changes what stands under a photo, and whether the handover sheet shows it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "photos-remove": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
                photoId: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RemovePhotoInput"];
            };
        };
        responses: {
            /** @description Takes a photo away with a reason; its pictures are deleted, that there was one stays. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-pick-part": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["PickPartInput"];
            };
        };
        responses: {
            /** @description Picks a part for a place. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-return-part": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
                pickId: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Puts a picked part back. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-record-places": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["RecordPlacesInput"];
            };
        };
        responses: {
            /** @description Records what is fitted at places, and judges it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-explain": {
        parameters: {
            query?: {
                side?: "found" | "left";
            };
            header?: never;
            path: {
                id: number;
                position: string;
                place: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Why the verdict on one place is what it is. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["PlaceExplanation"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-tick-safety": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TickSafetyInput"];
            };
        };
        responses: {
            /** @description Ticks points of the safety list. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "sheet-sheet": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The handover sheet as a PDF. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/pdf": unknown;
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-take-spare-back": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
                pickId: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The owner hands back a spare that an earlier ticket gave along. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-move-stage": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["MoveStageInput"];
            };
        };
        responses: {
            /** @description Moves the ticket to another stage, if its gate is open. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-tell": {
        parameters: {
            query?: never;
            header?: {
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["TellRequestInput"];
            };
        };
        responses: {
            /** @description Which part a set of marks and measures can be. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TellAnswer"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-wait-for-part": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["WaitForPartInput"];
            };
        };
        responses: {
            /** @description The ticket waits for a part and wakes when it comes in. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "tickets-end-wait": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
                /**
                 * @description Makes it safe to send the change again: under one key it is made once.
                 * @example 7b1c9a4e20f34f1d
                 */
                "Idempotency-Key"?: string;
            };
            path: {
                id: number;
                waitId: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The ticket waits no longer. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["TicketView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            422: components["responses"]["Refused422"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "api-tokens-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The tokens there are: a manager's own, an administrator's all. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiTokenList"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "api-tokens-make": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewApiTokenInput"];
            };
        };
        responses: {
            /** @description Makes a token, which is answered this once and kept nowhere. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiTokenMade"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "api-tokens-revoke": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Revokes a token: from the next request on it opens nothing. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["ApiTokenView"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "scan-visit": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description A unit with its history, what was noted for its next visit, an open callback, and the evidence so far. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitVisit"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-add-evidence": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewEvidenceInput"];
            };
        };
        responses: {
            /** @description Adds evidence of when the unit was built. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-set-aside": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
                evidenceId: string;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetAsideEvidenceInput"];
            };
        };
        responses: {
            /** @description Sets evidence aside, with the reason. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-identify": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["UnitIdentityInput"];
            };
        };
        responses: {
            /** @description Sets a unit's line, model, serial, options and plate. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-settle-note": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
                noteId: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SettleNoteInput"];
            };
        };
        responses: {
            /** @description Settles a note that waited for the next visit, with what was done about it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-trail": {
        parameters: {
            query?: {
                after?: string;
            };
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Everything that was ever done about a unit, oldest first. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitTrail"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "units-warranty": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["SetWarrantyInput"];
            };
        };
        responses: {
            /** @description Writes down when the unit was bought and for how many months its maker stands for it. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["UnitView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-list": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The addresses, with how much is on its way to each and how much was set aside. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookList"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-add": {
        parameters: {
            query?: never;
            header?: never;
            path?: never;
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["NewWebhookInput"];
            };
        };
        responses: {
            /** @description Adds an address; what its events are signed with is answered this once. */
            201: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookAdded"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            409: components["responses"]["Refused409"];
            413: components["responses"]["Refused413"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-remove": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Removes an address with all that was on its way to it. */
            204: {
                headers: {
                    [name: string]: unknown;
                };
                content?: never;
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-change": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody: {
            content: {
                "application/json": components["schemas"]["ChangeWebhookInput"];
            };
        };
        responses: {
            /** @description Changes where to, what of, or whether an address is told. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookView"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            413: components["responses"]["Refused413"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-deliveries": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description The last hundred events for an address, newest first, those set aside before all others. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDeliveries"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-again": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
                deliveryId: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Sends an event again that was delivered or set aside, with the same id. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDeliveries"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-renew-secret": {
        parameters: {
            query?: never;
            header: {
                /**
                 * @description The version the change was made on, in quotes, as the last answer told it in `ETag`.
                 * @example "7"
                 */
                "If-Match": string;
            };
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Signs what is sent to an address with another secret from now on; it is answered this once. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookAdded"];
                };
            };
            400: components["responses"]["Refused400"];
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            412: components["responses"]["Refused412"];
            428: components["responses"]["Refused428"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
    "webhooks-try-out": {
        parameters: {
            query?: never;
            header?: never;
            path: {
                id: number;
            };
            cookie?: never;
        };
        requestBody?: never;
        responses: {
            /** @description Sends a trial event to an address, signed as any other. */
            200: {
                headers: {
                    [name: string]: unknown;
                };
                content: {
                    "application/json": components["schemas"]["WebhookDeliveries"];
                };
            };
            401: components["responses"]["Refused401"];
            403: components["responses"]["Refused403"];
            404: components["responses"]["Refused404"];
            409: components["responses"]["Refused409"];
            429: components["responses"]["Refused429"];
            503: components["responses"]["Refused503"];
        };
    };
}
