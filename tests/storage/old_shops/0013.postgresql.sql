COMMENT ON SCHEMA public IS 'standard public schema';
CREATE FUNCTION public.ledger_kept() RETURNS trigger
    LANGUAGE plpgsql
    AS $$
BEGIN RAISE EXCEPTION 'the ledger is append-only'; END $$;
CREATE TABLE public.access (
    n bigint NOT NULL,
    hash character varying(64) NOT NULL,
    name character varying(200) NOT NULL,
    role character varying(16) NOT NULL,
    kind character varying(16) NOT NULL,
    made character varying(32) NOT NULL,
    expires character varying(32),
    seen character varying(32),
    agent text DEFAULT ''::text NOT NULL
);
CREATE SEQUENCE public.access_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.access_n_seq OWNED BY public.access.n;
CREATE TABLE public.alembic_version (
    version_num character varying(32) NOT NULL
);
CREATE TABLE public.aliases (
    n bigint NOT NULL,
    text character varying(64) NOT NULL,
    code character varying(64) NOT NULL,
    printed character varying(64) NOT NULL
);
CREATE SEQUENCE public.aliases_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.aliases_n_seq OWNED BY public.aliases.n;
CREATE TABLE public.answers (
    n bigint NOT NULL,
    key character varying(255) NOT NULL,
    body character varying(64) NOT NULL,
    status integer NOT NULL,
    location text NOT NULL,
    answer text NOT NULL
);
CREATE SEQUENCE public.answers_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.answers_n_seq OWNED BY public.answers.n;
CREATE TABLE public.bins (
    n bigint NOT NULL,
    name character varying(64) NOT NULL,
    rack character varying(64) NOT NULL,
    tier integer NOT NULL,
    "position" integer NOT NULL,
    section character varying(64) NOT NULL
);
CREATE SEQUENCE public.bins_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.bins_n_seq OWNED BY public.bins.n;
CREATE TABLE public.channels (
    n bigint NOT NULL,
    name character varying(100) NOT NULL,
    statuses text NOT NULL,
    complete boolean DEFAULT false NOT NULL
);
CREATE SEQUENCE public.channels_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.channels_n_seq OWNED BY public.channels.n;
CREATE TABLE public.doubts (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    item character varying(64) NOT NULL,
    kind character varying(24) NOT NULL,
    words text NOT NULL,
    since character varying(32) NOT NULL,
    by text NOT NULL,
    photo character varying(64),
    how character varying(24),
    note text NOT NULL,
    ended character varying(32)
);
CREATE SEQUENCE public.doubts_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.doubts_n_seq OWNED BY public.doubts.n;
CREATE TABLE public.head (
    one integer NOT NULL,
    seq bigint NOT NULL,
    hash character varying(64) NOT NULL,
    settings text NOT NULL,
    shop character varying(32) DEFAULT ''::character varying NOT NULL
);
CREATE SEQUENCE public.head_one_seq
    AS integer
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.head_one_seq OWNED BY public.head.one;
CREATE TABLE public.items (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    title text NOT NULL,
    notes text NOT NULL,
    photo character varying(64),
    kept_for text DEFAULT ''::text NOT NULL,
    kept_until character varying(32),
    away text DEFAULT ''::text NOT NULL,
    away_since character varying(32)
);
CREATE SEQUENCE public.items_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.items_n_seq OWNED BY public.items.n;
CREATE TABLE public.labels (
    n bigint NOT NULL,
    hash character varying(64) NOT NULL,
    parcel character varying(64) NOT NULL,
    ends text NOT NULL
);
CREATE SEQUENCE public.labels_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.labels_n_seq OWNED BY public.labels.n;
CREATE TABLE public.ledger (
    seq bigint NOT NULL,
    at character varying(32) NOT NULL,
    kind character varying(64) NOT NULL,
    actor text NOT NULL,
    data text NOT NULL,
    hash character varying(64) NOT NULL
);
CREATE TABLE public.lines (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    "order" character varying(64) NOT NULL,
    "position" integer NOT NULL,
    reference text NOT NULL,
    title text NOT NULL,
    listing text NOT NULL,
    stay character varying(64),
    state character varying(24) NOT NULL,
    parcel character varying(64),
    round character varying(64),
    basket integer,
    scan character varying(64),
    in_file boolean NOT NULL,
    holds text DEFAULT '[]'::text NOT NULL
);
CREATE SEQUENCE public.lines_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.lines_n_seq OWNED BY public.lines.n;
CREATE TABLE public.listings (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    item character varying(64) NOT NULL,
    channel text NOT NULL,
    listing text NOT NULL,
    line character varying(64),
    since character varying(32) NOT NULL,
    ended character varying(32)
);
CREATE SEQUENCE public.listings_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.listings_n_seq OWNED BY public.listings.n;
CREATE TABLE public.looks (
    n bigint NOT NULL,
    key character varying(64) NOT NULL,
    body character varying(64) NOT NULL,
    stocktake character varying(64) NOT NULL,
    place character varying(64) NOT NULL,
    at character varying(32) NOT NULL,
    how character varying(24) NOT NULL,
    reads text NOT NULL,
    whole boolean NOT NULL,
    closer character varying(64),
    size text NOT NULL,
    photo character varying(64)
);
CREATE SEQUENCE public.looks_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.looks_n_seq OWNED BY public.looks.n;
CREATE TABLE public.mappings (
    n bigint NOT NULL,
    name character varying(64) NOT NULL,
    signature text NOT NULL,
    columns text NOT NULL
);
CREATE SEQUENCE public.mappings_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.mappings_n_seq OWNED BY public.mappings.n;
CREATE TABLE public.order_loads (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    at character varying(32) NOT NULL,
    who text NOT NULL,
    was text NOT NULL
);
CREATE SEQUENCE public.order_loads_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.order_loads_n_seq OWNED BY public.order_loads.n;
CREATE TABLE public.orders (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    number text NOT NULL,
    channel text NOT NULL,
    received character varying(32) NOT NULL,
    slip integer NOT NULL,
    ordered_at character varying(32),
    ship_by character varying(32),
    parcel character varying(64),
    sent_number text DEFAULT ''::text NOT NULL,
    note text DEFAULT ''::text NOT NULL,
    collected boolean DEFAULT false NOT NULL,
    status text DEFAULT ''::text NOT NULL,
    load character varying(64)
);
CREATE SEQUENCE public.orders_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.orders_n_seq OWNED BY public.orders.n;
CREATE TABLE public.parcels (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    at_table character varying(64) NOT NULL,
    orders text NOT NULL,
    opened character varying(32) NOT NULL,
    state character varying(24) NOT NULL,
    closed character varying(32),
    handed character varying(32)
);
CREATE SEQUENCE public.parcels_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.parcels_n_seq OWNED BY public.parcels.n;
CREATE TABLE public.photos (
    n bigint NOT NULL,
    hash character varying(64) NOT NULL,
    picture bytea NOT NULL,
    thumb bytea NOT NULL
);
CREATE SEQUENCE public.photos_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.photos_n_seq OWNED BY public.photos.n;
CREATE TABLE public.racks (
    n bigint NOT NULL,
    name character varying(64) NOT NULL,
    aisle integer NOT NULL,
    start double precision NOT NULL
);
CREATE SEQUENCE public.racks_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.racks_n_seq OWNED BY public.racks.n;
CREATE TABLE public.resolutions (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    stocktake character varying(64) NOT NULL,
    finding text NOT NULL,
    how character varying(24) NOT NULL,
    reason text NOT NULL,
    who text NOT NULL,
    at character varying(32) NOT NULL,
    undo text NOT NULL
);
CREATE SEQUENCE public.resolutions_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.resolutions_n_seq OWNED BY public.resolutions.n;
CREATE TABLE public.rounds (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    opened character varying(32) NOT NULL,
    state character varying(24) NOT NULL
);
CREATE SEQUENCE public.rounds_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.rounds_n_seq OWNED BY public.rounds.n;
CREATE TABLE public.scans (
    n bigint NOT NULL,
    key character varying(64) NOT NULL,
    body character varying(64) NOT NULL,
    station character varying(24) NOT NULL,
    spot character varying(64) NOT NULL,
    code character varying(64),
    take_out boolean NOT NULL,
    accepted boolean NOT NULL,
    changed boolean NOT NULL,
    line character varying(64),
    parcel character varying(64),
    answer text NOT NULL,
    was text NOT NULL,
    at character varying(32),
    stood text DEFAULT ''::text NOT NULL
);
CREATE SEQUENCE public.scans_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.scans_n_seq OWNED BY public.scans.n;
CREATE TABLE public.sections (
    n bigint NOT NULL,
    code character varying(64) NOT NULL,
    name text NOT NULL,
    slots_per_bin integer NOT NULL,
    colour text NOT NULL,
    digits integer NOT NULL,
    last integer NOT NULL
);
CREATE SEQUENCE public.sections_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.sections_n_seq OWNED BY public.sections.n;
CREATE TABLE public.slots (
    n bigint NOT NULL,
    code character varying(64) NOT NULL,
    section character varying(64) NOT NULL,
    number integer NOT NULL,
    bin character varying(64) NOT NULL,
    turns integer NOT NULL,
    card character varying(24) NOT NULL,
    seen_station character varying(24),
    seen_place character varying(64),
    seen_accepted boolean,
    seen_at character varying(32),
    seen_parcel character varying(64),
    out_station character varying(24),
    out_place character varying(64),
    out_round character varying(64),
    out_basket integer,
    fetch_by text,
    fetch_until character varying(32),
    twin boolean DEFAULT false NOT NULL
);
CREATE SEQUENCE public.slots_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.slots_n_seq OWNED BY public.slots.n;
CREATE TABLE public.stays (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    item character varying(64) NOT NULL,
    code character varying(64) NOT NULL,
    turn integer NOT NULL,
    began character varying(32) NOT NULL,
    state character varying(24) NOT NULL,
    ended character varying(32),
    reason text NOT NULL,
    load character varying(64),
    told character varying(64) DEFAULT ''::character varying NOT NULL,
    undated boolean DEFAULT false NOT NULL,
    rehung_from text DEFAULT ''::text NOT NULL
);
CREATE SEQUENCE public.stays_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.stays_n_seq OWNED BY public.stays.n;
CREATE TABLE public.stocktakes (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    area character varying(64) NOT NULL,
    note text NOT NULL,
    opened character varying(32) NOT NULL,
    seq bigint NOT NULL,
    state character varying(24) NOT NULL,
    closed character varying(32),
    report text NOT NULL,
    sample text
);
CREATE SEQUENCE public.stocktakes_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.stocktakes_n_seq OWNED BY public.stocktakes.n;
CREATE TABLE public.stops (
    n bigint NOT NULL,
    round character varying(64) NOT NULL,
    "position" integer NOT NULL,
    line character varying(64) NOT NULL,
    bin character varying(64) NOT NULL
);
CREATE SEQUENCE public.stops_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.stops_n_seq OWNED BY public.stops.n;
ALTER TABLE ONLY public.access ALTER COLUMN n SET DEFAULT nextval('public.access_n_seq'::regclass);
ALTER TABLE ONLY public.aliases ALTER COLUMN n SET DEFAULT nextval('public.aliases_n_seq'::regclass);
ALTER TABLE ONLY public.answers ALTER COLUMN n SET DEFAULT nextval('public.answers_n_seq'::regclass);
ALTER TABLE ONLY public.bins ALTER COLUMN n SET DEFAULT nextval('public.bins_n_seq'::regclass);
ALTER TABLE ONLY public.channels ALTER COLUMN n SET DEFAULT nextval('public.channels_n_seq'::regclass);
ALTER TABLE ONLY public.doubts ALTER COLUMN n SET DEFAULT nextval('public.doubts_n_seq'::regclass);
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.labels ALTER COLUMN n SET DEFAULT nextval('public.labels_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
ALTER TABLE ONLY public.listings ALTER COLUMN n SET DEFAULT nextval('public.listings_n_seq'::regclass);
ALTER TABLE ONLY public.looks ALTER COLUMN n SET DEFAULT nextval('public.looks_n_seq'::regclass);
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
ALTER TABLE ONLY public.order_loads ALTER COLUMN n SET DEFAULT nextval('public.order_loads_n_seq'::regclass);
ALTER TABLE ONLY public.orders ALTER COLUMN n SET DEFAULT nextval('public.orders_n_seq'::regclass);
ALTER TABLE ONLY public.parcels ALTER COLUMN n SET DEFAULT nextval('public.parcels_n_seq'::regclass);
ALTER TABLE ONLY public.photos ALTER COLUMN n SET DEFAULT nextval('public.photos_n_seq'::regclass);
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.resolutions ALTER COLUMN n SET DEFAULT nextval('public.resolutions_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stocktakes ALTER COLUMN n SET DEFAULT nextval('public.stocktakes_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, '4b7ff9ac5600f55af99e4f7e59b5e03446ea8395b6cf76eeb8c63f16d28f0ef4', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$dIETS9NTIhKpR4ydFf3AVA$gc6TxlddEB5nz1UV3pYidhwF1kVk6MjOK6RkLWPhSus', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, 'a89214b7c3cdb8a9064e54cdd3cd6f0c756f562a42e03be1bb27b32a8b224f89', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '6d5cee64cd007194a777abf50902823a9137ecda58ac4c25a509e0a53311f59f', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '9d64c5e0e74640a0080a92cab537d0bba04f5a383d265e652bb4829c7e874455', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'dae78a8509c80f819271a6bf6384aab1a0607c7c8faa6c1252e401010925523c', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0013');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/8927a6b678a14201', '{"id": "8927a6b678a14201", "item": "55b19c0c48638c34", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, 'db035df9415cafed', '2dff201b47f7d0a7', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '23ac69c1d635b259', 'f981602847f85417', 'missing', 'Not in its bin', '2026-03-02T16:03:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '672bc5606bb487d4', '65b7dfc61a4322c3', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T16:34:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '7759dbec37e327fe', '06c661f2586c027f', 'missing', 'a count of section:S did not find it', '2026-03-02T17:00:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'a577f580a2696e73', '989366113305d0e9', 'missing', 'a count did not find it', '2026-03-02T17:13:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 197, '52326b57ad1eddcf8a6904456caeec126b6b8b96532d1bbf6e4bfc9448fd00d0', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'd8abc20537c83147');
INSERT INTO public.items VALUES (3, '5a5f5a18877a1dcd', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, 'd84293ac27c666c8', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, '17410cc5c97fba57', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, 'adf9422688a316db', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '6a2754cd48840931', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '2ea7955124adee65', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, '490c48d37394913d', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '951bdb3321282fbf', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, '17cec434b7bf996b', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '969ec8a70428bf68', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '8ae2fbabe1ee41ef', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '2e88f566bc40464a', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '33bd15936b4f6ee6', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, 'a99fd435ae741caa', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, '6fa018c8d00693b3', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, '522ef3cfacf5d455', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '06c661f2586c027f', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '9adf341c45114333', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, '23fcdf9a18ef5e51', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, '3815038e91874517', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, 'bf2961aead49373b', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, '9408764d53e7bb74', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, '327cc4dd0890f296', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, 'da895de250dd495d', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, 'f981602847f85417', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, 'fb298a68b7f2772e', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, 'ce7d8c85014b3b3a', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, '2dff201b47f7d0a7', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, '989366113305d0e9', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '5bf6d2e648e7ade4', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '5f995811c99018f3', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '6d837d077c441c21', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, '32bcb1dc7b7e126c', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, 'f071df61f3b9ffdf', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '388835556790c9f6', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, '548ea469c63380a0', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, '70570d30926eea5c', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, '2a92531cfbf9dad3', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '1b96b84ffb6662c0', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '627e86e068be09fa', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, 'efeae447e25dba85', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, 'bc967529309115d3', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, '6e4d4b6193cf321a', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '55b19c0c48638c34', 'Brass bell', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '2001d0406ed9062f', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, 'a960d633f1ac7c85', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '65b7dfc61a4322c3', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, '24805cba971f15f7', 'Carbide lamp', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, 'ed4b58a0eff4881b', 'Rear lamp', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '790ddd43e4b284a9', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '1f6c2e3d98ad666f', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00');
INSERT INTO public.items VALUES (52, 'bbee4a3fc96713f6', 'Rear wheel', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '9274ec5cd220394c', '2557');
INSERT INTO public.ledger VALUES (1, '2026-03-02T08:01:00.000000+00:00', 'token made', 'boss', '{"name":"boss","role":"owner"}', 'dc3041ba2987ca0cca92979b54f3e20f153293da07a55f97783702aa2a5228d2');
INSERT INTO public.ledger VALUES (2, '2026-03-02T08:04:00.000000+00:00', 'signed in', 'owner', '{"address":"127.0.0.1","browser":"Werkzeug"}', 'fcd491380291b30b3789e5890beadaa99ccf284a9cdaf048157bb1ebb3a6173e');
INSERT INTO public.ledger VALUES (3, '2026-03-02T08:05:00.000000+00:00', 'token made', 'label printer', '{"name":"label printer","role":"program"}', 'a694e5b8a0b6a84bcea0e47e578de7693ff0b30e665d8051e990020cfe7553e6');
INSERT INTO public.ledger VALUES (4, '2026-03-02T08:06:00.000000+00:00', 'token made', 'helper', '{"name":"helper","role":"helper"}', '88cc482babc51d902466b25a8a1608e0aaca3b0d122e6224b0fc7e2555f2e4d5');
INSERT INTO public.ledger VALUES (5, '2026-03-02T08:08:00.000000+00:00', 'device paired', 'Blue phone', '{"address":"127.0.0.1","name":"Blue phone"}', 'bdaecbdaadc771cee77c619bf553b9a4ea7e4f649707a24ee134a564b790c741');
INSERT INTO public.ledger VALUES (6, '2026-03-02T08:11:00.000000+00:00', 'section added', 'boss', '{"colour":"yellow","name":"Derailleurs","now":["sections D - 44b06f03fa8b"],"section":"D","slots_per_bin":10}', 'd4a904e94e1b5b59ebbeea04e5ac45e4fcdadb7c0120959112e0e7d2216c4611');
INSERT INTO public.ledger VALUES (7, '2026-03-02T08:14:00.000000+00:00', 'slots added', 'boss', '{"first":"D001","last":"D030","now":["racks A - cfc963eeeae5","bins A-1-1 - fcea40ff6922","bins A-1-2 - 7a4280f3c369","bins A-1-3 - be483ef37367","slots D001 tray e81f6e630a9d","slots D002 tray f85ca74f3e93","slots D003 tray 0c719f220aa3","slots D004 tray 49253b08a13f","slots D005 tray 6a79c5159d5b","slots D006 tray 902465fb5ade","slots D007 tray 0beaf39e08e0","slots D008 tray a27d079a5dcb","slots D009 tray 94519b40c70e","slots D010 tray d7cc4aa23cfa","slots D011 tray 8578cde849e4","slots D012 tray d4d36b046c45","slots D013 tray aa328b9939fb","slots D014 tray d48d965495fc","slots D015 tray 8b8b908c856a","slots D016 tray dc026f278038","slots D017 tray 36b699e5365f","slots D018 tray 29fa1a653ea2","slots D019 tray 8e0c5d8513f9","slots D020 tray d561ad1e3846","slots D021 tray e11cc552e692","slots D022 tray 97710f36d165","slots D023 tray 70ff47eba7f7","slots D024 tray e8fbf0ee5e15","slots D025 tray aadc86ca54d6","slots D026 tray 33ae5b449806","slots D027 tray df7a0fe432bd","slots D028 tray 8a653cbbaff7","slots D029 tray 9430f5a77808","slots D030 tray 1f761ad14f87","sections D - 63cf71b4190a"],"section":"D"}', '5adc16bc458032a6775d0165c10ae82b7a5446094371a27a62490d2fd681503b');
INSERT INTO public.ledger VALUES (8, '2026-03-02T08:17:00.000000+00:00', 'section added', 'boss', '{"colour":"pink","name":"Saddles","now":["sections S - 758f420472d1"],"section":"S","slots_per_bin":10}', '411dd02cf8ca660f839cc8cb4cc50b24aadc684e53b1c840f54a47153d85e196');
INSERT INTO public.ledger VALUES (9, '2026-03-02T08:20:00.000000+00:00', 'slots added', 'boss', '{"first":"S001","last":"S015","now":["racks B - 5c0775bb22e2","bins B-1-1 - 9504208f8963","bins B-1-2 - a13cdde9dbd1","slots S001 tray 4ae5e25c8f9d","slots S002 tray 0b88a8c1170b","slots S003 tray 7c1404dede6f","slots S004 tray fded976a1777","slots S005 tray 4a64e835be21","slots S006 tray 31f48cedbf33","slots S007 tray bf2fce64cff8","slots S008 tray 9fec3a35f062","slots S009 tray 92531eb2d5c7","slots S010 tray f544ee5a6af5","slots S011 tray a6585702305d","slots S012 tray d45370cf6110","slots S013 tray 9dcfcc438261","slots S014 tray 55f4a97da45c","slots S015 tray f00221963229","sections S - 8ee325ece27e"],"section":"S"}', '95da0bebb73f900a5adbbba8335e52af570586e95d1bdb41c8eaa8d714fd1d52');
INSERT INTO public.ledger VALUES (10, '2026-03-02T08:23:00.000000+00:00', 'section added', 'boss', '{"colour":"green","name":"Lamps","now":["sections L - 83f116b67fb4"],"section":"L","slots_per_bin":10}', 'd318c98e4340428345827e0b1a9b8303afb0c0619a42ffa466b3b5bf2c810262');
INSERT INTO public.ledger VALUES (11, '2026-03-02T08:26:00.000000+00:00', 'slots added', 'boss', '{"first":"L001","last":"L015","now":["racks C - 10d098d7bc97","bins C-1-1 - 8a2ea0e265cb","bins C-1-2 - 0f83d16d00e8","slots L001 tray 17972bfa70c2","slots L002 tray 285c9c5b4e4e","slots L003 tray 28ead537b05c","slots L004 tray 3572b0be5c20","slots L005 tray 3294ec5edfb0","slots L006 tray a9c02df139e8","slots L007 tray c8dbb2d5bc67","slots L008 tray e04accfdf065","slots L009 tray 15ab34bc6d3d","slots L010 tray 8d0c8554d561","slots L011 tray 19bf8370dbaa","slots L012 tray 0d267c06e309","slots L013 tray e555408c44db","slots L014 tray 3dcaac4799cb","slots L015 tray 45751c4cd942","sections L - ad84a0d889f5"],"section":"L"}', '1c1394b18c7f3da9195fd90ecef7528eba7ea3218f818e9b858977cffa014929');
INSERT INTO public.ledger VALUES (12, '2026-03-02T08:29:00.000000+00:00', 'section added', 'boss', '{"colour":"blue","name":"Wheels","now":["sections W - 7ab44f3eae4b"],"section":"W","slots_per_bin":10}', '9978a6354a939114c58bd844a84dd8759f19bf165eea91239b31f2e437bd9267');
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:32:00.000000+00:00', 'slots added', 'boss', '{"first":"W001","last":"W015","now":["racks D - 8153ce94d3eb","bins D-1-1 - 3b050f2fa998","bins D-1-2 - 6505641170e8","slots W001 tray 8c2043a76b3e","slots W002 tray 90c86d508323","slots W003 tray 18f633a622d5","slots W004 tray 4f12ab9e57cf","slots W005 tray a71823a7e1d8","slots W006 tray e4d83f69ed58","slots W007 tray 335aa2487e14","slots W008 tray 439a4b8e1c68","slots W009 tray 4899c13220b2","slots W010 tray 7fb1f9a7df75","slots W011 tray 9100c6ca1e3f","slots W012 tray 375d74c5a7ad","slots W013 tray bdc2ba9a00a7","slots W014 tray 79afe30905f7","slots W015 tray 54233aae5a06","sections W - bc0703e59782"],"section":"W"}', '4f875fb25b58f89f87e89e8500b547043ce45b2ca0f650b5b51770f371b4268c');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items a960d633f1ac7c85 - 46a2b3b03d94","slots D001 on_item e5405bc28ff8","stays 82edd2268079fbb0 stored d00592b9bfd1","listings ceb432ac681ebced - cea988a4ff77"],"stay":"82edd2268079fbb0","title":"Rear derailleur 1","turn":1}', '374ce04815fc9dbc3b75475f59acee8dc3e2fcac7d25e8f9152acfbfb3e5a59b');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 2001d0406ed9062f - 5d7c0b7ef2fd","slots D002 on_item 4f79f524f247","stays 898dc9913c094fbe stored 2459146eed04","listings 89c379853e64b178 - 8044b57a0884"],"stay":"898dc9913c094fbe","title":"Rear derailleur 2","turn":1}', '52b12d5fac79c0a98bf242e91e3de28d7dc821e7261e01dd23493e3f39dad65f');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 5a5f5a18877a1dcd - e2ea70b77511","slots D003 on_item 6de523ac8b4d","stays ad199eee0a668b62 stored 8c289475a9cd","listings 28d64457c196b84e - fc51564861fa"],"stay":"ad199eee0a668b62","title":"Rear derailleur 3","turn":1}', '7f60b88d866dfe5ea05dd53cd391a0793b06d2a2fa612c0779676e28428ed9da');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items d84293ac27c666c8 - 9ef2b392ff84","slots D004 on_item ec423998da46","stays 4b1c52e72251a2e0 stored 64cca666e21c","listings 49df168d7752cd40 - 73bb75e4f1fd"],"stay":"4b1c52e72251a2e0","title":"Rear derailleur 4","turn":1}', '04f10074e0ce3df0c507f09c597aef03f92156a191e8c2ce2d9675913e340c14');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 17410cc5c97fba57 - 6a14f30820a4","slots D005 on_item 91ad3faf88d6","stays b7b908469bab4877 stored ecdaeb7ef4c3","listings f4cf35055ee325b1 - cc3e5ee65c6d"],"stay":"b7b908469bab4877","title":"Rear derailleur 5","turn":1}', '22eb9925182a21754a851ff05ea325d6543d66d30b7778bd2d1175deb2db06b9');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings 9a5f90b0615953f3 - ed522c7db333"],"stay":"047bb05f228bfa32"}', 'b45266f349c7ebb67e998c92a346198b879079bf9b5a17d1e585f2edaf75efb5');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items adf9422688a316db - 19bc2c1aeeed","slots D006 on_item 1fadb568d6a5","stays ae24e9a935aa4f96 stored e0157ac24b30","listings 2fbaea53a74c63de - 5d3a43b095c5"],"stay":"ae24e9a935aa4f96","title":"Rear derailleur 6","turn":1}', 'f6eab1acfb3ac0ad8d80f1ce4b817d61475fe51afd368dd205ffa82627570766');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 6a2754cd48840931 - 8c9d3a17d5df","slots D007 on_item 536077e3b728","stays 9ae18a43d8df3960 stored 01eef6fb3ab0","listings 1459d3a3e5dfa834 - 91d1e90153c7"],"stay":"9ae18a43d8df3960","title":"Rear derailleur 7","turn":1}', 'f58443365fd780af739bcd117634978031a5d0b06a2ef1824df115b7988be191');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 2ea7955124adee65 - eb94c8d85afd","slots D008 on_item facb453cba22","stays 9bed255738a9ab9f stored a0aab3947712","listings c14277c5f48dcbd0 - c2628cdf6e56"],"stay":"9bed255738a9ab9f","title":"Rear derailleur 8","turn":1}', '7d503a1842ab770ee64da5df10cca3f3dbcd9ad5a9db37516fb0ae8eaa300093');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 490c48d37394913d - d4c90ba09618","slots D009 on_item 7434bf04ccf2","stays 5deb53dbc47dec44 stored 1195eb06bcfe","listings 798bd5650cd7a91b - 230705b71e45"],"stay":"5deb53dbc47dec44","title":"Rear derailleur 9","turn":1}', 'fef7870a582a9773f042f4eedd503dd8e6cf955e8b7c70eb2e4602ca36c2051e');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 951bdb3321282fbf - 599c934d893e","slots D010 on_item 1f8fd3ebaf8b","stays 52c289bef4d597bd stored be108d0fb17c","listings f02a6e10088b5dc4 - a9cc8a90d50a"],"stay":"52c289bef4d597bd","title":"Rear derailleur 10","turn":1}', 'e26986b4499439e7766f5a65c925d54da8915e10f976a34c1391ac79b88cc724');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 17cec434b7bf996b - 0d923b714880","slots D011 on_item d451255e38b7","stays a0c1d88cf1e172a6 stored bb4dc3b5b6ec","listings e7c7cadbbc7ebe66 - aa338c1d75e2"],"stay":"a0c1d88cf1e172a6","title":"Rear derailleur 11","turn":1}', '846ffdd566497fff70827e2ecb9095957176ea0e296f8e140aae22ace4338523');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 969ec8a70428bf68 - 24183433116c","slots D012 on_item bdbda5bb2b7a","stays fdcc775ade97e6eb stored b0e63935eaa0","listings 97632b4920eb4385 - e0fd20cd2247"],"stay":"fdcc775ade97e6eb","title":"Rear derailleur 12","turn":1}', 'b97d3ccf75c7e696f61a83f4b99f900d1438f1ed9cd751960fb432646bf2981f');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 65b7dfc61a4322c3 - 72a15d2872b4","slots S001 on_item 76dcd853e3e0","stays 5263aff0e8b6e7df stored 7ba1c0900d33","listings 161c231f3f58a9e3 - 221adeb7e4b8"],"stay":"5263aff0e8b6e7df","title":"Leather saddle 1","turn":1}', '8ea1409dd87a9d71b0a9d710085042c5bff469cf26cb138da22ad49906d297cf');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 8ae2fbabe1ee41ef - 0193984ac7bc","slots S002 on_item 6fb94c47a50d","stays a6bdc786b6393c5e stored 54086464a3f3","listings 74441d291d7d394b - fddae58c3773"],"stay":"a6bdc786b6393c5e","title":"Leather saddle 2","turn":1}', 'f0a92bbca0f1544d5d09ac67223e34254ad69b231ee758b8d6a62a9063c1cbc0');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 2e88f566bc40464a - aff21a1a7381","slots S003 on_item e00808332634","stays 3f76dbf51cc7447a stored 05e12a74a7c4","listings be1cad0a32cb9a3b - cc0f1eb99d72"],"stay":"3f76dbf51cc7447a","title":"Leather saddle 3","turn":1}', '107f992566f32697420f7703517f5cad6baab4e0ed850b17bcb5889d46d65ca2');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 33bd15936b4f6ee6 - 393ac54a039a","slots S004 on_item db1aa8005467","stays 69b60e797eede40d stored 303998179c31","listings 54efbf040e0031b4 - e31682201b03"],"stay":"69b60e797eede40d","title":"Leather saddle 4","turn":1}', '1452d785994e08f401b0a9870fa2830558e25cb5d3a193e61178b9616af14c6b');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items a99fd435ae741caa - f6441554e25d","slots S005 on_item ec548ef84f99","stays 6bed835d6f1ffb0b stored 6c1d9ed3694f","listings 3c3ba467faac4abf - 0380d63a34c2"],"stay":"6bed835d6f1ffb0b","title":"Leather saddle 5","turn":1}', '0dbda387b959f84d7bccd6c9f3b707a3e8dfd000a3858fc42d72aeaec9d7bc75');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 6fa018c8d00693b3 - f1638e4b24c0","slots S006 on_item dc9bc74eb63a","stays 1b23bed6c4e117ea stored 086adeaa06e6","listings b5c60b7198fa8ccf - 61de09d27520"],"stay":"1b23bed6c4e117ea","title":"Leather saddle 6","turn":1}', '7ebf9374ca811077e5f95c64ed555346c0426ad80b9c41c3298750f7870f7c80');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 522ef3cfacf5d455 - 09c765a74021","slots S007 on_item 075fd8b9fecf","stays 276dcf63ddeb58ab stored 56820e7c75c9","listings c8d7237f1235d14a - 9ffe2118500d"],"stay":"276dcf63ddeb58ab","title":"Leather saddle 7","turn":1}', 'ae8173820cc421786f1d4b221020c724ae9d3f40b4f8be267a93fb0599c1d463');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 06c661f2586c027f - e97ac611d2b6","slots S008 on_item 39fdb847a4bc","stays 68ce37d070f58a95 stored 76b9c18430cb","listings 350d89effe144f50 - ef43c424c683"],"stay":"68ce37d070f58a95","title":"Leather saddle 8","turn":1}', '64d5b4a0cd3b5323bb1b1224656fe00a702ed70730fc9f8b3b17f65d867d4a68');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 9adf341c45114333 - fc38d23d3e4e","slots S009 on_item 62c79df275b3","stays b33ada82ed531891 stored 49384d9ef815","listings 208473dce56b532e - 50b56be89c4e"],"stay":"b33ada82ed531891","title":"Leather saddle 9","turn":1}', '95a6a9e555b16bb81f6c01158cbe8c77725e816ae08ad4f0d7f70b9e3c2437b3');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 23fcdf9a18ef5e51 - 89d371cef7b6","slots S010 on_item 1fd8d85fa1c4","stays e242a6a62012f8e3 stored fdf19e17292d","listings 73b0f0d5da80d735 - 58a770404bc0"],"stay":"e242a6a62012f8e3","title":"Leather saddle 10","turn":1}', '32d01a41884199f1ff4b5d23a55348617e6cfa63581e4c28b87cd4b141f8b49d');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 3815038e91874517 - 95ce4ccfd8ff","slots S011 on_item e59577c4b2a7","stays 0648085eaea1b565 stored 9b9b983657e7","listings 57bedcb890177b22 - 1164fc125a88"],"stay":"0648085eaea1b565","title":"Leather saddle 11","turn":1}', '74f6b7ce8ea07c13fea24234584a589b6e393391d29e7b1b2558dddc27d1ec7d');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items bf2961aead49373b - 62eaf8eba811","slots S012 on_item 9bae442e2436","stays 63d832cfda1437b9 stored e3d9af8b136c","listings efc0b8015425ac75 - 9bdd00e344c4"],"stay":"63d832cfda1437b9","title":"Leather saddle 12","turn":1}', '2692edf8d5f994a4c88d6ae5cdf89fa30379e94a900bdefa46d318d61dcca331');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 9408764d53e7bb74 - 6cde6ca3b08f","slots L001 on_item 43c5cdfaa8e4","stays c86255922318b21e stored 1379d24228e7","listings b7f0e6b58885fe6c - 25ea2ddc6fc6"],"stay":"c86255922318b21e","title":"Dynamo lamp 1","turn":1}', '4d31bf5a52a652035d96a203fa1e9ef7032fe75eb12654447b633dd39e8310f8');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 327cc4dd0890f296 - c1bfde46c3a8","slots L002 on_item ea8e77c8b06f","stays d1ef592f802ebaaa stored 7c62b87122ad","listings 489f9e7374ce38cd - a901627f16b5"],"stay":"d1ef592f802ebaaa","title":"Dynamo lamp 2","turn":1}', 'eb439b57d5fe28b6b8b9233cee176e7f6dbbc07619901c8248bba3e3f1d43171');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items da895de250dd495d - df087fe2bb74","slots L003 on_item c35e4c005cda","stays 2349e2aa1eadbc2a stored 5f9f3ddc2693","listings 3829d72192902a55 - 927458bd7d3a"],"stay":"2349e2aa1eadbc2a","title":"Dynamo lamp 3","turn":1}', 'd580b96e9e5f67934ba82fd3f867dbe546d504e30a049e9805fe448eabd9dd01');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items f981602847f85417 - ec7830c7a3e7","slots L004 on_item 70a88e4a366b","stays 65a14936146bbd8f stored 7bde37e0b2fa","listings e40fc8f2f81df948 - 2b4729645d11"],"stay":"65a14936146bbd8f","title":"Dynamo lamp 4","turn":1}', 'a46ab2d02272ae8182e62a078e02970f9f87026e8926d9d2a14b26eb8f202edb');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items fb298a68b7f2772e - 36930ccbe496","slots L005 on_item 6261d94de1ef","stays eb1e260f5689c77f stored a73baebadf88","listings ceede2d75f05e41b - 595b884c6d85"],"stay":"eb1e260f5689c77f","title":"Dynamo lamp 5","turn":1}', '229d896bc2cefcef4d1084ec1f7838f954daf62476ff1b75f15914f2bbdde76a');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items ce7d8c85014b3b3a - 5ce205b3a024","slots L006 on_item b67b470f3637","stays 76f4c34a62013608 stored afa70f8eba30","listings e8fffaca1943a6c9 - 8919cc791a00"],"stay":"76f4c34a62013608","title":"Dynamo lamp 6","turn":1}', 'f9d8ae70a40930f665f36e1b47f7a9e66776f4136276a0226c9b2ffd3ae53acb');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 2dff201b47f7d0a7 - e6b00c54e2a5","slots L007 on_item 767524982af4","stays 97462e8bbfd56612 stored cc515e0cd977","listings 4a8603468e293336 - 2ba0fcb12f27"],"stay":"97462e8bbfd56612","title":"Dynamo lamp 7","turn":1}', '017c7716ed071d946af4619fbf855273df871018ceb975a5d4f2e8e141168d46');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 989366113305d0e9 - 35da3ba92a03","slots L008 on_item b3b2d23a98b7","stays a08644d96ed92a4d stored 35bc3fbb2271","listings e99dd1520891028c - ae346d9a91ca"],"stay":"a08644d96ed92a4d","title":"Dynamo lamp 8","turn":1}', 'f9b7532191d7907734020ba360c95aeaaf77306004a628a7abda0fac09bbea2d');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 5bf6d2e648e7ade4 - 4cb623c1a3ad","slots L009 on_item c3139144a3f8","stays 047bb05f228bfa32 stored 508ccbbb99a9","listings 25a59454d655c9af - 43831a969ffe"],"stay":"047bb05f228bfa32","title":"Dynamo lamp 9","turn":1}', '17aa16a69cb87200dc1a6d460568033a25716cf0993393ee4a98ab60ee5fc28d');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 5f995811c99018f3 - f2754d159ae7","slots L010 on_item f8c13ae8aec4","stays e4feb5bfff1333fd stored 1980e6cbb152","listings 56885354410d4c59 - c7a04a1753e5"],"stay":"e4feb5bfff1333fd","title":"Dynamo lamp 10","turn":1}', 'cdc6d85cebd5eb4473bd0647212cdd4b868e620cfeb8961397d96b49de562f48');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 6d837d077c441c21 - e286d66d5074","slots L011 on_item 9d01c75c0f89","stays 17d85e20e3164b2a stored 907570893ef7","listings 3aa5be5b49786f61 - f6a566a4c11e"],"stay":"17d85e20e3164b2a","title":"Dynamo lamp 11","turn":1}', '78c86269a7c02182ea7f14f76470e3747e31d8d7e6dacb9b21735b78447148b2');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 32bcb1dc7b7e126c - 0c9a46c64a97","slots L012 on_item 5373b19b101e","stays fa805f7e41e2f211 stored 6d6b2bc597ba","listings c582b7d229f951d6 - c9d1cf02d0a2"],"stay":"fa805f7e41e2f211","title":"Dynamo lamp 12","turn":1}', '7525254a0d3ad2a5868c0db8516f75d348554f303de7f68f54ac54888220edc6');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items f071df61f3b9ffdf - aeec2af24472","slots W001 on_item 17dd342c2f6a","stays eb7b26ea9b69e055 stored dad6bda137ed","listings e7819ccdd44c22e0 - 27d73d0e18a2"],"stay":"eb7b26ea9b69e055","title":"Front wheel 1","turn":1}', '43008b6d9688638bc0c760261f3b8526718772c393961846f593f7e1a712105a');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 388835556790c9f6 - 7cac8bb1caac","slots W002 on_item 7ebfb8df41ca","stays 6c61214f42e0f1b9 stored 8c669c58c2ec","listings db7c7dde934f95f6 - bcca0d637cd4"],"stay":"6c61214f42e0f1b9","title":"Front wheel 2","turn":1}', '58e9286c052bb77df30ad4f478ec56e4365a75679407515c7347277ac60dec3f');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 548ea469c63380a0 - ceb5e9968c8e","slots W003 on_item f84a2674e962","stays 9648f9e2009f1f36 stored 5e5d27f350d1","listings e6ae15e5dd0d3c8c - 846b2997f2b5"],"stay":"9648f9e2009f1f36","title":"Front wheel 3","turn":1}', 'dcc54ef61a6d51c56315d41c359671f5389a71bae1192d90859f5718c01e70f3');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 70570d30926eea5c - ff0ccc9c68c7","slots W004 on_item f45ed94fd55a","stays b3feb07b28b4acd9 stored 43be4fe1f161","listings 288413d7759228d9 - fad26e4ab707"],"stay":"b3feb07b28b4acd9","title":"Front wheel 4","turn":1}', '768d6df297dbb88e4a50f1c60071e793f57f3751945a906bbce1598889647d8f');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 2a92531cfbf9dad3 - 0b9b98985181","slots W005 on_item a1fdfb2c692e","stays 4137781464ed8a3d stored 40d2928be32a","listings c1a41009459b406d - c90c777f7b56"],"stay":"4137781464ed8a3d","title":"Front wheel 5","turn":1}', '549da71583f237f53ebb9745ae90283154916cfe5ed4712b1a161730dba8c932');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 1b96b84ffb6662c0 - 313d32ad33ba","slots W006 on_item 3dd6244f0bee","stays 9c35fa50a89b9ad4 stored 503894836af3","listings c76461448823c733 - 8c3d5f23c4ac"],"stay":"9c35fa50a89b9ad4","title":"Front wheel 6","turn":1}', '300b406a93ea89f682cb444af8d6eefc61205868d34c2fa9ba9368951a823679');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 627e86e068be09fa - eec2017cbbd3","slots W007 on_item d52463b699e2","stays fbc80fd5673781d0 stored db4299405270","listings 20415698c0fabedf - 45b706f73dd0"],"stay":"fbc80fd5673781d0","title":"Front wheel 7","turn":1}', '872e2e97b07dd044c399f0d0cc181d2366269a9e18b29a816dc5972490d74f71');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items efeae447e25dba85 - a08a665c3e72","slots W008 on_item 2e167460fb16","stays b3fbb6e2e304cbb7 stored b05d2f4d99c4","listings 5cc0ad86a217adf7 - d15e428f1af6"],"stay":"b3fbb6e2e304cbb7","title":"Front wheel 8","turn":1}', 'd8ac73313ed02860eeccd6916c66f42e3dec340d63015de294ca3278303d0eb4');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items bc967529309115d3 - 6140b6473ef3","slots W009 on_item 597fc2f4b56e","stays f294a4517c3902bd stored 042a93081aeb","listings 57da98a78072be4e - 9ea7fded48eb"],"stay":"f294a4517c3902bd","title":"Front wheel 9","turn":1}', '7a464d69b2f9bcbab33652c895a36fa92fc9afcce2581c90a23981fe89249a62');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 6e4d4b6193cf321a - cb8f9e8b6d20","slots W010 on_item 7d0365c2d2de","stays 1f1104b1d9944afc stored 13285fd63b82","listings 18d17c85b53b835c - 0010e03499f9"],"stay":"1f1104b1d9944afc","title":"Front wheel 10","turn":1}', '65fdf2ced48a4ec617903d859d90f35a150595879ac1530200a359c8e149b28e');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 1f6c2e3d98ad666f - 45921613d875","slots W011 on_item d3a26b640d71","stays 3bbcb6c92887e7b2 stored 153c9e56b69a","listings 5677fb89a85c82c3 - d63157f558ba"],"stay":"3bbcb6c92887e7b2","title":"Front wheel 11","turn":1}', '3041cb915eb13dcdc56a17bf4c9429acbcf3e173cd4d4fefb002e7ac48565bf4');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 790ddd43e4b284a9 - f9145597711e","slots W012 on_item ac10bfb906d6","stays 88145b5ecdfe90c5 stored ab425630dcec","listings 390f22a8c9260f60 - 0459ada83b29"],"stay":"88145b5ecdfe90c5","title":"Front wheel 12","turn":1}', 'c79d1d53215bb1ef0b0767286719700d068b67fc8b6aeae8a783864ed5a3e58d');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 55b19c0c48638c34 - 2b5c6c151ac8","slots D013 on_item 69b6f1c92d5d","stays 8927a6b678a14201 stored 067c18dc4cda"],"stay":"8927a6b678a14201","title":"Brass bell","turn":1}', '636f6a1e68ccf23bebf305b10e8f6229ffc3ea1a392ea4cbf0984177a46f39c2');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 2001d0406ed9062f - 293986eb9959"],"stay":"898dc9913c094fbe"}', '40201a83b110d6d2b97c9a42bb38ecab2709245dfd9c7a270b80ecbdee06d50c');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays e242a6a62012f8e3 withdrawn c3ee32790089","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"e242a6a62012f8e3"}', '44cc9cf74c440b58c6cb7f712898b6b8b1bcba9e13f5c0f725cc1b2049c97b23');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays b3feb07b28b4acd9 withdrawn 8368f6e64579","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"b3feb07b28b4acd9"}', '7c575f7500898391920f9fe67897f742ddd0432326b4debf4416dd82e020b313');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"5d0271943a3f0678","now":["stays b33ada82ed531891 moved 16d94ca05c27","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 5d0271943a3f0678 stored f4df6e923b99"],"stay":"b33ada82ed531891","to":"S013"}', 'f722524750d8fb95d786b77a8a2003b59cb9646c2eed0e01772e702499a86204');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items a960d633f1ac7c85 - 637ae32b543f"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"82edd2268079fbb0"}', 'e9785bb067708d94acafe76d16f38a6fe9332c529d73e2ffbfb8a0d40ba2af68');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 65b7dfc61a4322c3 - dd18f0d0f64e"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"5263aff0e8b6e7df"}', '29abf7fb4b1c84d78b7cc7662a330e69b2dbbb29b177ed21372a47fda8a31a9a');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items 24805cba971f15f7 - 4f85be9002e9","slots L013 on_item 417a81be4bcb","stays 5b9ca21a60c8ce6d stored 915dacbcc78c","items ed4b58a0eff4881b - 7b7a4ff7c7c2","slots L014 on_item 26405b275a18","stays dfd5bccd1cac69ce stored ad6d11181d8b"],"stay":"5b9ca21a60c8ce6d","title":"Carbide lamp","turn":1}', 'fe55924185e3d7b5ec05cd6f5242a7496cb0f06709b1c43f872bcf862904fc78');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"dfd5bccd1cac69ce","title":"Rear lamp","turn":1}', 'e58811847d3c9acb7d085832eab960c6dc472289f6582cae3a7260d78e7dda85');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'c1a68e4614d0eaac70422743ed0dcc51bccb278cfee591cede0bcc1ed2a3c9aa');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings b1ffd3d8a2d20ac0 - 5fbfcfec0d8f"],"stay":"eb7b26ea9b69e055"}', '95fd6a849288ea640f415ce3570da833627d9e5fd70f0e631bb17db83a54a1eb');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings dde139118559a194 - 1e71f0efdaf0"],"stay":"eb7b26ea9b69e055"}', '8ffa36cb212bb555a4b600de729fa7169495c63994344994909acfb25cfba0f3');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings c06802a92c75eb3b - f25c6a3f29fa"],"stay":"a6bdc786b6393c5e"}', '00e9788dc0637ba6ce91caf32447219e22561fec70f314a3a2033ba1fad289a4');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings d574f67494a53353 - f1269f7586d6"],"stay":"a6bdc786b6393c5e"}', 'e23b50876ef06d194b5b4748c62b5e9104d5baa8be5fcdf7ce63cf0fd7d3d812');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings b48a1f21b72d2878 - 422f893f4058"],"stay":"5deb53dbc47dec44"}', '80965af77243ac5d11b93b0fa428b894e1873f270a13867a1aaa42423d03c60d');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings 9400f281319e26a3 - 10120f23d6fa"],"stay":"5deb53dbc47dec44"}', '5d146f1ac1eb2e4581c02455bb60d0cc50ce22304fe4bf4f6f3c20868939efd5');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings 40e1a1768ef3f9d5 - 2dd874584e8e"],"stay":"88145b5ecdfe90c5"}', '327ce4d847b31872956d6594a2cb2576fe181f5841af96cb0f1e87f4160b41ff');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings b6451bfe20adea90 - 6b4f42b411e8"],"stay":"88145b5ecdfe90c5"}', '8babd74c54431be51d3fec29198ebf1fd719e4ab81b8f8abbcb186523f6c6976');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 70acc77ae314f5ad - d8676e88b8ac"],"stay":"047bb05f228bfa32"}', '9c01e67f15fc5fcff9fa9766070aa796f200b814908ceb70ed02291e99f35423');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings 49df168d7752cd40 - 4a8a8c5a3ab4","listings 885bc5e33af1b154 - 0533ff8dbc3d"],"stay":"4b1c52e72251a2e0"}', 'c8c77f44b587ab80bbb6d706417098e3f17cac3c2dddbb99d2065b1f0cd3117c');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 70acc77ae314f5ad - cd8e8d35117e"],"stay":"047bb05f228bfa32"}', '54026da04a9596b5c8a1b8964ad5daf8ab3a8eac697cf1c8a46423c45c86edfb');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 790ddd43e4b284a9 - b999fc3d53d6"],"stay":"88145b5ecdfe90c5","until":"2026-12-24T23:59:59+00:00"}', '7169ef8b13a8faf67713a73c21db05624b96a9afe7d58123404cae3a2e879fa1');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 1f6c2e3d98ad666f - bdc4bd5096dc"],"stay":"3bbcb6c92887e7b2"}', 'cc7f0178ca12a0e9e06237676ebd791c183b72f4ca3cff5509f849ebeff51e00');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '057e1dc0035c670e1e9bc1b4b9242c17a466c818286b00e40626ef1d940b7efc');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '73f531105d21a550f103200f52158d885955b12be947710ce68a8e57bc239952');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'ed1ca434d88245c743e340a929f99ec8b1e8b9278f40f9974097fcc630291f0e');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'e66a4f98f9a88acf7eaa5bb1ae9fc8849f7d458b3837ec7aacf19c4cd85cf4be');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', 'c639efac7ad407e208829bce544c3cf7abb8aaa1d4ab68aec03b292c5c1bf388');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"957ce7b9da3fcf4b","reference":"W001-01E","stay":"eb7b26ea9b69e055"},{"hold":null,"line":"c6476f9e7c809b75","reference":"W002-016","stay":"6c61214f42e0f1b9"}],"now":["orders d06c1c6e1b06888a - a61a6c26616d","lines 957ce7b9da3fcf4b waiting db6897079180","lines c6476f9e7c809b75 waiting 0b978be6ccc1"],"number":"B-01","order":"d06c1c6e1b06888a"}', '8f3572a7affd5a07a2b1c6f96065bb2de9b7c3f48ae1a39ebcec06f12df0a6e2');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4e89d50b0954a0f6","reference":"S002-013","stay":"a6bdc786b6393c5e"},{"hold":null,"line":"80c15f71ddfec51f","reference":"S003-01W","stay":"3f76dbf51cc7447a"}],"now":["orders 6af0e62d80727628 - 9e6526add330","lines 4e89d50b0954a0f6 waiting ca7a293a1ec0","lines 80c15f71ddfec51f waiting a73f00da13c4"],"number":"B-03","order":"6af0e62d80727628"}', '1a40ef4fde3fade6083c1c7e24f575d9c18786179730992963d8ccaeb9f1f7b0');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"edfcb66bffebbd51","reference":"S004-01O","stay":"69b60e797eede40d"},{"hold":null,"line":"f3d4b8802b30da63","reference":"S005-01G","stay":"6bed835d6f1ffb0b"}],"now":["orders 0169df3dfde2ebde - 54f3eaf96a6e","lines edfcb66bffebbd51 waiting b166372e5607","lines f3d4b8802b30da63 waiting 3d609466b002"],"number":"B-04","order":"0169df3dfde2ebde"}', '4eb057c84a7fd167bc8616311e110e45ece47593366a4f0e158b2df5be62865c');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"327cc4dd0890f296","line":"5cc52a920b57caf3","listing":"fair-L002","now":["orders 2510ec8efc03743b - a8b330e341a4","lines 5cc52a920b57caf3 waiting e0dd1d9ca2ea","listings 15d9535515b8f500 - ae79b6a17999"]}', 'c6ab99a56b773c6294fe350c9e81d6e682e8d563fe92c137cd5a9c6ea22387a2');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5cc52a920b57caf3","reference":"L002-017","stay":"d1ef592f802ebaaa"}],"number":"B-05","order":"2510ec8efc03743b"}', '7fce0dce3e3a79491af59e14f672c8cf8534b0689bce022cf429652db124ac40');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"da895de250dd495d","line":"b2adee0bfa8e3690","listing":"fair-L003","now":["orders 1f20ba1ec283c3ec - 62f9d42703ed","lines b2adee0bfa8e3690 waiting 1fe5d2946477","listings eb70818a5563e8c2 - ea402e7dce55"]}', '84bb07472db3f50ef3998fad5bbe4597870925e7b58413814515cb2e4614a3b2');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b2adee0bfa8e3690","reference":"L003-010","stay":"2349e2aa1eadbc2a"}],"number":"B-06","order":"1f20ba1ec283c3ec"}', 'c570dd4b87c1be833efc77284ef0bafa529daaecd667e244f3e53dcffe804c63');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3c04c5e956d2cbb4","reference":"L004-01S","stay":"65a14936146bbd8f"}],"now":["orders 1c56e6402919d211 - 89e2c5a2d589","lines 3c04c5e956d2cbb4 waiting c2ac12ef6d67"],"number":"B-07","order":"1c56e6402919d211"}', '16cb1bde942035af1ae8465c440db530df6cb71f35311f607192c5e9d55f0148');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"130986f47ca3512c","reference":"L005-01K","stay":"eb1e260f5689c77f"}],"now":["orders 3f171aaca7b8fef1 - 6300f500dc14","lines 130986f47ca3512c waiting 60dced9663a0"],"number":"B-08","order":"3f171aaca7b8fef1"}', '6b6e144d5c58baa8d7f14f37b9d5e426b420985369c972f204fd7bece19f061e');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c59cddc47b739b7b","reference":"L006-01C","stay":"76f4c34a62013608"},{"hold":null,"line":"ccb259edd2428229","reference":"L011-010","stay":"17d85e20e3164b2a"}],"now":["orders 3b4e6f3a7930cc51 - 567bfdfde3e5","lines c59cddc47b739b7b waiting 66047d1e3f1f","lines ccb259edd2428229 waiting f56e93dfeec5"],"number":"B-09","order":"3b4e6f3a7930cc51"}', 'd02727489aba786065d61618fc2caabb537a15d4ce8c48185c53bc3680a9fddc');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"90e8d5cf39edadde","reference":"S006-018","stay":"1b23bed6c4e117ea"}],"now":["orders 6eee142beaeaf9a8 - def60dc33091","lines 90e8d5cf39edadde waiting fc22ab237b2c"],"number":"B-13","order":"6eee142beaeaf9a8"}', 'd46b4328d3c54334d1155a9b73a9318fe49f1f1ad82bbe644f0f584c5adba3c7');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5e1be3e3060799e6","reference":"L007-014","stay":"97462e8bbfd56612"}],"now":["orders c99b09a3e091ea4a - 15043c92412c","lines 5e1be3e3060799e6 waiting 44b7592cb0ca"],"number":"B-17","order":"c99b09a3e091ea4a"}', 'bfaf090d97abe3b3ed444ace023a3f14cb2c348bf8dc090039e95e5da0da0a63');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"bd1bb40d9b88e367","reference":"D009-01B","stay":"5deb53dbc47dec44"}],"now":["orders 10e94f65fd47d49e - 4f9dcbc08eb7","lines bd1bb40d9b88e367 waiting 9858b305a7d8"],"number":"B-18","order":"10e94f65fd47d49e"}', 'beaa0f253872e4092a208efb0930aa2f4744189580bf1fb9580236180f701f1e');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9561360dd95b053f","reference":"W006-013","stay":"9c35fa50a89b9ad4"}],"now":["orders 7b7fe62f1f15531d - 176484c962f5","lines 9561360dd95b053f waiting 6d8f2ca659a6"],"number":"B-21","order":"7b7fe62f1f15531d"}', '742cddcae0957007b31955ceb643a1a2e3f9d2367885f982c297d88944956240');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d2b308ca17bc8a42","reference":"S007-01Z","stay":"276dcf63ddeb58ab"}],"now":["orders e8e36552760b2fab - a20d7c11d227","lines d2b308ca17bc8a42 waiting 68562b87bd21"],"number":"B-22","order":"e8e36552760b2fab"}', '2b921c7795ea92932aa672ea1972ba55e76b596011cdf8e0068fa18cc2e24c3c');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6cb3f261d667eb4a","reference":"W007-01W","stay":"fbc80fd5673781d0"},{"hold":null,"line":"250c0e386efee6b5","reference":"W008-01O","stay":"b3fbb6e2e304cbb7"}],"now":["orders 5e2e617deec6cf4b - 2960aff8f694","lines 6cb3f261d667eb4a waiting 4154324c33f1","lines 250c0e386efee6b5 waiting e904e970c108"],"number":"B-23","order":"5e2e617deec6cf4b"}', '875552fb87fa4b99e5aaface86d2a5371f384367c6c7d9ebcfe636ab5ae3ad80');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"702c4eaf4847c67e","reference":"D008-01J","stay":"9bed255738a9ab9f"}],"now":["orders f19dd3610ad469fb - d7431f9eca17","lines 702c4eaf4847c67e waiting 9ea225e0106a"],"number":"B-26","order":"f19dd3610ad469fb"}', 'ffa226d63955bfb6d72eeaacc9d4b83581f9d4277d6d6fabd34b77cac4b123f0');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"3ff3263aa7f2ef32","reference":"D003-01U","stay":"ad199eee0a668b62"}],"now":["orders 80cae613f5a4d7d5 - 6dec16bd6181","lines 3ff3263aa7f2ef32 waiting 28fe3ff59e71"],"number":"B-30","order":"80cae613f5a4d7d5"}', '9a3df2df999821ddc2774e82ed7387c84e39daf6e5db4448145edf0f5d13e850');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6fad2ddd371a0137","reference":"D005-01E","stay":"b7b908469bab4877"},{"hold":"unknown_code","line":"92834c362e5179ca","reference":"Z999","stay":null}],"now":["orders f6fb4648f80b86fa - d219fd38016c","lines 6fad2ddd371a0137 waiting 41df5d162592","lines 92834c362e5179ca unbound 291289555d58"],"number":"B-31","order":"f6fb4648f80b86fa"}', '325a98e73b3104c6cccf3d9268c2efe5bf2c45c1997e4cb24ffe64102d9dff52');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c53e5c29e8fa2521","reference":"D006-016","stay":"ae24e9a935aa4f96"},{"hold":null,"line":"dab9d5e72c9a5bce","reference":"D007-01R","stay":"9ae18a43d8df3960"}],"now":["orders c405cfbce77402ad - e4721fb2b1f4","lines c53e5c29e8fa2521 waiting 7d0fa6b4169e","lines dab9d5e72c9a5bce waiting ef52a158466f"],"number":"B-32","order":"c405cfbce77402ad"}', '22a25bf955056051d81f0dc37e9f09a2aeaf1fd5ea916f6395f626dbd6afa5ec');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"dab9d5e72c9a5bce","reference":"D007-01R","stay":"9ae18a43d8df3960"}],"now":["lines dab9d5e72c9a5bce waiting f8b3eab66f8a"],"number":"B-32","order":"c405cfbce77402ad"}', '92a1e33f77b864fa5538ff89020c35d8deef6c1b483d8e614ecb972d22ede9c5');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"c7d1606cbe015f9f","reference":"lamp","stay":null}],"now":["orders 063a1c051100ac87 - 1b9660461061","lines c7d1606cbe015f9f unbound 2dacd915560b"],"number":"B-33","order":"063a1c051100ac87"}', '2a879c2d4a4b8c2a4c265013d43ccbe9797e64ee8a52001c9116bb2bcffc91dd');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"9fe51e12ad96b7eb","reference":"D006-016","stay":null}],"now":["orders fdee1af60c802007 - c4ee7357813c","lines 9fe51e12ad96b7eb unbound b4fba5997879"],"number":"B-34","order":"fdee1af60c802007"}', '32b81e9bdeb2a26366146d44794f0f5999fff96a98276b85e8ff24c157feb8ff');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"5a5c06d1db850bab","reference":"W004-01J","stay":null}],"now":["orders 8eb4d4e88a51a1ab - e4133086d632","lines 5a5c06d1db850bab unbound 34020c9cf1aa"],"number":"B-35","order":"8eb4d4e88a51a1ab"}', '6798039dc792aa051715b221d34880f5ce9cd30a74a86467ac9d3991e318c04f');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"3a563123b3564f22","reference":"L015","stay":null}],"now":["orders 2349510bdaa148a0 - b91d1186aad3","lines 3a563123b3564f22 unbound 84edf3e595f2"],"number":"B-36","order":"2349510bdaa148a0"}', '0cddf63d9c106264ff876c5d2221b0c60653990a23c144b429d2f9cb1b223b72');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"01d4869d6f4e8c73","reference":"W005-01B","stay":"4137781464ed8a3d"}],"now":["orders 1f2e78b9daecc1f3 - f57ce17be002","lines 01d4869d6f4e8c73 waiting 9fcf7572e579"],"number":"B-37","order":"1f2e78b9daecc1f3"}', '624e06e134b13ce27a9cbfb76ff8e806763ed798f60048d383e62d19c8686d73');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"01d4869d6f4e8c73","now":["lines 01d4869d6f4e8c73 waiting d965e4a4e8ce"],"stay":"4137781464ed8a3d"}', '0a9f6c8aa1244d2b12cbace6f30893665545d4a8abc90ba430ded0bba6b5f3af');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"db035df9415cafed","doubt_kind":"not_this","item":"2dff201b47f7d0a7","now":["doubts db035df9415cafed - fd5b26973fb5","lines 5e1be3e3060799e6 waiting 572e53ad2088"],"words":"Another lamp, by the photo"}', '3811ed97e8fc33a05c07a44b2d47eefa426381ef24b17e1ce422ce60609d4bdd');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"5e1be3e3060799e6","why":"Another lamp, by the photo"}', 'a9b28fa054a6ae416e665e747eb79f8a464408cd2c6b580b43a9a190988917c1');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["130986f47ca3512c"],"now":["lines 130986f47ca3512c cancelled 0dd989605444"],"number":"B-08","order":"3f171aaca7b8fef1"}', '9e7bb86358de344faed37538b169cbe62fb055c8b9e542afaaed8a55c5b7327f');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["9561360dd95b053f"],"now":["lines 9561360dd95b053f cancelled 6b886796cc9f"],"number":"B-21","order":"7b7fe62f1f15531d"}', '3659ce3402f740a4331bb6cc11ee762f41194fc1c901a10be8f499fcfabdc7ba');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"9561360dd95b053f","now":["lines 9561360dd95b053f waiting 6d8f2ca659a6"],"stay":"9c35fa50a89b9ad4"}', '759ca94e45c7e8513f275b51e89adb58cdd58be67468e198bd26404c1567321a');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"b7eea84922a7312c","now":["stays 9bed255738a9ab9f moved 7340601b8bd0","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays b7eea84922a7312c stored fa49099a28c3","lines 702c4eaf4847c67e waiting 83f9bdc44c72"],"stay":"9bed255738a9ab9f","to":"D020"}', '16fa4967e509e883b74f367bc337a461084a6c5df258cd2742f22fa8f379b02a');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"884041dffeed7d94","reference":"L012-01S","stay":"fa805f7e41e2f211"}],"note":"Rings at noon","now":["orders ef0af1fcd4cc3ce2 - 6c642bacd434","lines 884041dffeed7d94 waiting b73de693bb2b"],"number":"Sale L012-01S","order":"ef0af1fcd4cc3ce2"}', '81523ebb62579ef263d4fe1a6a0d8728b9ca97179f17190b6453a1d8a662f389');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"c80e12ec3bf4b909","reference":"S012-01O","stay":"63d832cfda1437b9"}],"now":["orders a242ae88f81da3f0 - 324bf873a3ef","lines c80e12ec3bf4b909 waiting 49ef5977ffaf","orders 465bb1dd5361c27e - 5ef7154e1234","lines 495ee7ff20547e60 unbound 922d17aff059"],"number":"F-1","order":"a242ae88f81da3f0"}', '5a3f80f6a657f2af6a8d950b30223fc86318bf3352ebcefd9f9cf4196bd59054');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:56:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"495ee7ff20547e60","reference":"","stay":null}],"number":"F-2","order":"465bb1dd5361c27e"}', 'aec4e5644e9a5fb3a86b1e6e79234103e0083ebf2d28b582c7ff498f57303281');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'round opened', 'boss', '{"lines":["957ce7b9da3fcf4b","c6476f9e7c809b75","4e89d50b0954a0f6","80c15f71ddfec51f","edfcb66bffebbd51","f3d4b8802b30da63","c59cddc47b739b7b","ccb259edd2428229","90e8d5cf39edadde","d2b308ca17bc8a42","6cb3f261d667eb4a","250c0e386efee6b5"],"now":["rounds eb6c8e3750b464f1 open 1d1e4d5e8a4a","lines 4e89d50b0954a0f6 waiting 253c42d83ac9","lines 80c15f71ddfec51f waiting ff5223534ea0","lines edfcb66bffebbd51 waiting 3fb7e336177b","lines f3d4b8802b30da63 waiting 85bb677a1813","lines 90e8d5cf39edadde waiting e28a59e347c0","lines d2b308ca17bc8a42 waiting a9a7a1a54ebc","lines 957ce7b9da3fcf4b waiting 3296a0fa5c40","lines c6476f9e7c809b75 waiting ee77f721fb04","lines 6cb3f261d667eb4a waiting 8185918c7664","lines 250c0e386efee6b5 waiting b894b8909d74","lines c59cddc47b739b7b waiting 1d54f03902f7","lines ccb259edd2428229 waiting a36b4cae7c6f"],"round":"eb6c8e3750b464f1"}', 'b549a014c5e5434664b134ad87ed5e721dc9bc60799d29923462d23f652db7a8');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:02:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 1c9d566a8646","scans free-D004 - 78c9086df9fd"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'c81e354f1b59096d0d89c44c146c6213e412bbe08ceff0ae8d4a8d759e545645');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:05:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"957ce7b9da3fcf4b","line_state":"picked","now":["slots W001 on_item deec3548e72e","lines 957ce7b9da3fcf4b picked 9b2f854e6eac","scans pick-W001 - 65ed9c267a65"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'be63e720643bc23e4ecbd73a2706d904afc8c30b12af306010fe950fee13cff4');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:08:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"c6476f9e7c809b75","line_state":"picked","now":["slots W002 on_item 9f79ee2e0f7a","lines c6476f9e7c809b75 picked 8ff00006f738","scans pick-W002 - 280094c73647"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'a80d891534447df2010803595d1ffef3579e4512a2f4dbd4e58d2fb147267005');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"4e89d50b0954a0f6","line_state":"picked","now":["slots S002 on_item 1771fee4a672","lines 4e89d50b0954a0f6 picked 1d29a7d349a9","scans pick-S002 - d8c16f28a647"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'fdefaa8f73c20fec93a01361da0aa98383769a81988a657df3b52790c8a097f1');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"80c15f71ddfec51f","line_state":"picked","now":["slots S003 on_item f25ff32cdad0","lines 80c15f71ddfec51f picked ccd3558936d8","scans pick-S003 - e9cd40bf3296"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'f3c371f58c3af9bb634c7a424c362458bb8fba50e964b1d09f046fd271f2e5cc');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"edfcb66bffebbd51","line_state":"picked","now":["slots S004 on_item 2d29c8cd8590","lines edfcb66bffebbd51 picked 4f2528433e03","scans pick-S004 - 8bd362053c6b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'a3a80c92dbe3458172aaf18732980b03e0212d8e5f0fd52988898d3b02f4a4a4');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"f3d4b8802b30da63","line_state":"picked","now":["slots S005 on_item 655d88edd554","lines f3d4b8802b30da63 picked a92e6ee2f32a","scans pick-S005 - b968227b693f"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '3d72a9c60f562a6ed06968be8ccd119e20793b10d7f563cb011d6adf6bcb6fd0');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"c59cddc47b739b7b","line_state":"picked","now":["slots L006 on_item d3b0726a2812","lines c59cddc47b739b7b picked ca47cdbe4f65","scans pick-L006 - 7f89710d1573"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '90fd2265fa68727630f45cc8369dfc829fea3261e1aa9d947915259b9e326a9f');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:06:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 38449c0430de"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"a106f25f9b0e0c25","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '3fabd74fa6365d99d6f3f4f57985550e575017fdc42d224a7a7d9567ac84e307');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"ccb259edd2428229","line_state":"picked","now":["slots L011 on_item 20282a896d41","lines ccb259edd2428229 picked 61809b28cfcd","scans pick-L011 - efee690751e3"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'aad6f64b73156dcc10ec1931875943439b9787ba43ef9e481456c18c12d8296b');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"90e8d5cf39edadde","line_state":"picked","now":["slots S006 on_item 72919e677ee1","lines 90e8d5cf39edadde picked eef9837dfd33","scans pick-S006 - eac522fcc993"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'e208618f8abac8a7829dfd500a78e92b020ca931c0e1a2c860bca34128f7d3b3');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"d2b308ca17bc8a42","line_state":"picked","now":["slots S007 on_item 48a5b4fa1625","lines d2b308ca17bc8a42 picked 737ee13e8863","scans pick-S007 - c75aba626d17"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '36ad97301a3bbaa767a31e50814ca68f3672d2d98832d49d7eabbe9b7986fa18');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"6cb3f261d667eb4a","line_state":"picked","now":["slots W007 on_item 57361b24488a","lines 6cb3f261d667eb4a picked 8abc10945aff","scans pick-W007 - 5de0c90f2973"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '1e9669e116b08479b2018faab0c3534526980b5f4c0d324a1afbc8dcbc7ab95e');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"250c0e386efee6b5","line_state":"picked","now":["slots W008 on_item f35746d6e1ac","lines 250c0e386efee6b5 picked e5dc4e29db20","scans pick-W008 - 15b919f602df"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"eb6c8e3750b464f1","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '57be0424f636d0fe52b0dc27a80010b67d9ef02607904157e4b04247b133b968');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:41:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"250c0e386efee6b5","line_state":"waiting","now":["lines 250c0e386efee6b5 waiting b894b8909d74","slots W008 on_item 19a01715d89f"]}', '361e193236f7c3cb34dd765f8d249c77b7c4dbb430ffe897aa8ebcc5af90d849');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:44:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds eb6c8e3750b464f1 closed ac391436ab3a"],"round":"eb6c8e3750b464f1"}', '07ee98df055704905637c5393de33fd7cb02dd6e4654c373b374195dce16b86c');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:47:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 9274ec5cd220394c open 93509178e0f5","orders d06c1c6e1b06888a - 11b8c4b2680d"],"orders":["d06c1c6e1b06888a"],"parcel":"9274ec5cd220394c","table":"main"}', '5181bf358977e6c95d731d805751247002f6796de84b29bb29a9a34dd540c6a2');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"4e89d50b0954a0f6","line_state":"picked","now":["slots S002 on_item ed2af6404e63","scans other-S002 - 61d9cfac64a5"],"order_number":"B-03","parcel":"9274ec5cd220394c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '06c9a0c6782eb0ef12fda4db106f70e567d82ef4f33ee979b29ce711567f37a4');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"957ce7b9da3fcf4b","line_state":"packed","now":["lines 957ce7b9da3fcf4b packed 570570bb6f08","slots W001 on_item d163eebebe8e","scans pack-W001 - 44adb3ed0a0e"],"order_number":"B-01","parcel":"9274ec5cd220394c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b7a8580e2e7e2e8ef7053923cb65265d24df029eea72969da0ce3ae26d3f9750');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:56:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines c6476f9e7c809b75 released dc1590ee5cdc","slots W002 due 2b7ce8a07149","lines 957ce7b9da3fcf4b released e36dfd8c271a","stays eb7b26ea9b69e055 shipped 379be480d0b5","slots W001 due b856816ff747","stays 6c61214f42e0f1b9 shipped 37f5e734180e","parcels 9274ec5cd220394c closed 93ce0134e042","orders d06c1c6e1b06888a - a61a6c26616d","scans pack-W002 - 90ea20f80a9e"],"orders":["d06c1c6e1b06888a"],"parcel":"9274ec5cd220394c","released":["W001","W002"]}', '936f415a2e3b400eee8ba4d825fa1131ccbc82510c93d2b6bb0d83d7ca2873e5');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"c6476f9e7c809b75","line_state":"released","order_number":"B-01","parcel":"9274ec5cd220394c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'decffaccb3dc5f72e8c3325a64e826a5789fc685f2b25e639fa3aef7677066a8');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"957ce7b9da3fcf4b","line_state":"released","now":["slots W001 tray 806362a66200","scans back-W001 - 966614bb1ccd"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '78395070645fa1236be26db92456c02a3549bbb7792c4254b55b3f517f3445c7');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:02:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items bbee4a3fc96713f6 - 38ed6e40ba47","slots W001 on_item 4bac4e5a272f","stays 50037ec144070ac1 stored 8e8579149652"],"stay":"50037ec144070ac1","title":"Rear wheel","turn":2}', 'b55c46ff6532bfd81cdbe549447b73c1ee363f41c99e8436447d43c2a3666d24');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:06:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - ee4cff9f77b1"],"parcel":"9274ec5cd220394c"}', '99f5976982de009cdbf2759cdbaead83c334489f501d13f861ba7351ec2e5a69');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:09:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 18a0bb30f44163aa open f923faa6a92d","orders 5e2e617deec6cf4b - d0718941b38c"],"orders":["5e2e617deec6cf4b"],"parcel":"18a0bb30f44163aa","table":"main"}', 'b053e5b547c21669a068701669face96a8ae3ddc99c19d76f269e804942ef184');
INSERT INTO public.ledger VALUES (194, '2026-03-02T17:16:00.000000+00:00', 'finding resolved', 'boss', '{"after":192,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"1c64c919d1120700","sure":false}', '933365587b7125698479ffbc0b2254be72f20551885159f58ea6349bedde74fc');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"6cb3f261d667eb4a","line_state":"packed","now":["lines 6cb3f261d667eb4a packed b4ed1fc4d61d","slots W007 on_item c4c7b8e33059","scans pack-W007 - 6e52ee15d9f0"],"order_number":"B-23","parcel":"18a0bb30f44163aa","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '82f217cc26eae007b53bd9b01d121b9137cd5fb0c6d3817472443ce8e6f673fe');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:15:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 6cb3f261d667eb4a released 729dde60423d","stays fbc80fd5673781d0 shipped 651e5dfd0e28","slots W007 due e7062f3bad09","parcels 18a0bb30f44163aa closed c4cad66aebec","orders 5e2e617deec6cf4b - 2960aff8f694"],"orders":["5e2e617deec6cf4b"],"parcel":"18a0bb30f44163aa","released":["W007"]}', 'ecb92351b106142749f9c79de52900a0f9971d06116857246afbe341c6b3c78a');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:18:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 6cb3f261d667eb4a packed 3b463c88912a","stays fbc80fd5673781d0 stored db4299405270","slots W007 on_item 72d5f5b37ccb","parcels 18a0bb30f44163aa open 3d28542ebc90","orders 5e2e617deec6cf4b - d0718941b38c"],"orders":["5e2e617deec6cf4b"],"parcel":"18a0bb30f44163aa"}', 'b06dd03ece9f2fe81a2a9ed41f02511ea29a5d59d77cd4df826c3b15263acab3');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:21:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 6cb3f261d667eb4a released 729dde60423d","stays fbc80fd5673781d0 shipped e324ae88dbb2","slots W007 due e7062f3bad09","parcels 18a0bb30f44163aa closed b2106af3e969","orders 5e2e617deec6cf4b - 2960aff8f694"],"orders":["5e2e617deec6cf4b"],"parcel":"18a0bb30f44163aa","released":["W007"]}', '6bd9b795379a5c5dab171ffe216baab83ab839335ae3ca328632c27288dbe0f5');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels b42ad296f9ea9324 open b1840fe95d36","orders e8e36552760b2fab - 57a2afe9ecd0"],"orders":["e8e36552760b2fab"],"parcel":"b42ad296f9ea9324","table":"main"}', '8b7f46b12edd4680bb65d0fb638f697a30c2a562e6adbc46e6eb5d5bab1ec875');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels b42ad296f9ea9324 dropped e5816ee3b370","orders e8e36552760b2fab - a20d7c11d227"],"parcel":"b42ad296f9ea9324"}', 'fe309b8bb2a1335a5b7288ee00f80e722d6ccf8f0bbd6cf3fec119cbbe7ac22d');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 56e5e732a3d06219 open cbe782491299","orders 0169df3dfde2ebde - c3c95c7d5565"],"orders":["0169df3dfde2ebde"],"parcel":"56e5e732a3d06219","table":"main"}', '4e4c18d4bb956088efb4ee3a4b8b62ea984db2e3882ba845432a2a16e10b64b0');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"edfcb66bffebbd51","line_state":"packed","now":["lines edfcb66bffebbd51 packed f5c1a56c76df","slots S004 on_item eba002f7a32c","scans pack-S004 - 905bb6129a6c"],"order_number":"B-04","parcel":"56e5e732a3d06219","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '7194c173b987a263d33628c78f1c0003dda4b5dd58c66837ec1cc14bf8354632');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 56e5e732a3d06219 aside a447eb2b4d26"],"parcel":"56e5e732a3d06219"}', 'abeae2d1c8c96f8f6747b59a1070c2742972044c15155693276f421aea66b111');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 678f61ae6ab02f05 open 6e1d61e8f1da","orders 3b4e6f3a7930cc51 - 893bf6981838"],"orders":["3b4e6f3a7930cc51"],"parcel":"678f61ae6ab02f05","table":"second"}', '2a9c511f839ae8cb4deb0dedf11a0d4099c474f6362ed9793749a9fb26897b2f');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"c59cddc47b739b7b","line_state":"packed","now":["lines c59cddc47b739b7b packed c2774ee1bfc3","slots L006 on_item 071da266a058","scans pack-L006 - 88c30b3ef835"],"order_number":"B-09","parcel":"678f61ae6ab02f05","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'cb055e2bdad4ebf58a9b09ceac0d3c8f2feba7b51551d342d1ef7fdd0c22a091');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'cancelled', 'boss', '{"lines":["c59cddc47b739b7b","ccb259edd2428229"],"now":["lines c59cddc47b739b7b packed 3ac0eea20840","lines ccb259edd2428229 cancelled 2290f7e2af50"],"number":"B-09","order":"3b4e6f3a7930cc51"}', 'e1b1764727c5eff3f0bbc87155bb55e1786a049ad80a42c5010b0644f975d2a6');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:48:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d366c2b2900dac79 open f6e8fdffea1e","orders 6af0e62d80727628 - 62d109d0fa7e"],"orders":["6af0e62d80727628"],"parcel":"d366c2b2900dac79","table":"main"}', 'aa5518e827f1d3c64ad3bb172cb594255120b3dbff999bf5c64ec6d36869ce47');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:51:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"4e89d50b0954a0f6","line_state":"packed","now":["lines 4e89d50b0954a0f6 packed 1d44695bddad","slots S002 on_item 1d8b7866f33e","scans pack-S002 - 2c09b8377d59"],"order_number":"B-03","parcel":"d366c2b2900dac79","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'e28c047a0df9b0cccc1991ca417e6e1411f0bb866f94b2dc32bd4545a7016b2a');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:54:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"90e8d5cf39edadde","reference":"S006-018","stay":"1b23bed6c4e117ea"}],"now":["lines 90e8d5cf39edadde picked 5943dcd3337e"],"number":"B-13","order":"6eee142beaeaf9a8"}', 'bbec0b1c159b652842873834e9e834e70ca7e94c882e31b88676d843246f5f00');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:57:00.000000+00:00', 'round opened', 'boss', '{"lines":["5cc52a920b57caf3","b2adee0bfa8e3690","3c04c5e956d2cbb4","702c4eaf4847c67e"],"now":["rounds a106f25f9b0e0c25 open adb3a0987cb0","lines 702c4eaf4847c67e waiting 605366dbf764","lines 5cc52a920b57caf3 waiting a2428cf26fb0","lines b2adee0bfa8e3690 waiting 3059b6ca91fe","lines 3c04c5e956d2cbb4 waiting bdd5edabc884"],"round":"a106f25f9b0e0c25"}', '3d86fb2ddd9595166649968d158271ef584433a80a10431b12fc08fcef8820bd');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:00:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"5cc52a920b57caf3","line_state":"picked","now":["slots L002 on_item 9b69ea26ff30","lines 5cc52a920b57caf3 picked 330b89f4bd2c","scans pick-L002 - f79bb9077467"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a106f25f9b0e0c25","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '88089b2936fb3bd3fe902d930ce9607651f6c9445ce5fde12bf7e79c66b6d214');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:03:00.000000+00:00', 'short', 'boss', '{"line":"3c04c5e956d2cbb4","note":"Not in its bin","now":["lines 3c04c5e956d2cbb4 short 8203d709620d","doubts 23ac69c1d635b259 - 2cf3c055ca91"]}', '3941636f06c0114bd8be84074252a493e068ccbbe3289133fc8abd82dba4138a');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:03:00.000000+00:00', 'doubted', 'boss', '{"doubt":"23ac69c1d635b259","doubt_kind":"missing","item":"f981602847f85417","words":"Not in its bin"}', '4a94cd431e01295d86e6a6fdd273ccba7ab582b2313cf146db599409e2a5ac23');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:09:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 0dad9860f898"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"a106f25f9b0e0c25","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'f66d41411b54a4cb76abcd4fc03a9d8450cfc19775642180474fcd10588d971b');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 55e17203dc65"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"a106f25f9b0e0c25","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '9bd74911aaf565e83f7cd698bbf964f25d9c596cebccbdda3ff132f6d95e6a42');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:15:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'db4979df5f9c2a4fc4cc69a9c5b46ca4b273b0e672ff046fabaee9f84ae27730');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:18:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', 'ca9c17b857af24990f899ce591bf249df653bd44a0649ad798e860bdb17b3023');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:21:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"654d2f98d90ccb49","reference":"D001-019","stay":"82edd2268079fbb0"},{"hold":"already_sold","line":"0f7fedb28c1dee2b","reference":"W002-016","stay":null}],"now":["orders f070d692bd39e8de - b237b85eff80","lines 654d2f98d90ccb49 waiting a169000c959a","lines 0f7fedb28c1dee2b unbound 8e0b369591d7"],"number":"B-38","order":"f070d692bd39e8de"}', 'cd46697e3bb3e78cd84865b40f8bb87c419b0332db71e49d1a3820d78723a051');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:24:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"cf097da258d53ad1","reference":"W001","stay":null}],"now":["orders 348e12b7a72fc16d - 5abb1887d6fc","lines cf097da258d53ad1 unbound bdecc0cf33f9"],"number":"B-39","order":"348e12b7a72fc16d"}', '4bdbbdb93ec69307a7234ac4777d20505b3d9a8e741c75237aba3626e2d1d7b6');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:27:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes b1d26d62d7fc339e open e3c2760d2eec"],"stocktake":"b1d26d62d7fc339e"}', '056157621a234e7830e69d83b2d0e287cfe577ab7a7804bb5dad0e224ec4784f');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:34:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - f60a5cd44c94","slots S001 on_item bdf4004cc871","doubts 672bc5606bb487d4 - a2fae023fca2"],"photo":null,"place":"B-1-1","stocktake":"b1d26d62d7fc339e","unread":0}', 'b81d1edb8c476c633fdeade1ae9a5c5cd3ecdcebf095c355bd5183e1e5a4ad86');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:34:00.000000+00:00', 'doubted', 'boss', '{"doubt":"672bc5606bb487d4","doubt_kind":"not_this","item":"65b7dfc61a4322c3","now":["slots S003 on_item aac69f442d59","slots S012 on_item 73f4a2c7caf9","slots D010 on_item 41b20f49a8f3"],"words":"A count found another thing on its card in B-1-1."}', '0c3e9f70511eea8a79951b4eefe6982da17e341c043a71edc99b28ea4d8e70a4');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:42:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - ef2d64d867fa","slots S011 on_item 38d54165618c","slots S013 on_item cfaff3440cc3"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"b1d26d62d7fc339e","unread":0}', '369cca546cff9695d7e2a6bfb0a4fcfaadf41628e4e67da5b5bdd625cc1f0cd3');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:48:00.000000+00:00', 'finding resolved', 'boss', '{"after":181,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 01a6923aeedd","resolutions b1d26d62d7fc339e.elsewhere-S012 - e825ef76e1b9"],"reason":"","stocktake":"b1d26d62d7fc339e","sure":false}', '44f9cd40db437df13fdca9950deed1d98fbe375762f37cba657e2ef731d98522');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:51:00.000000+00:00', 'finding resolved', 'boss', '{"after":182,"finding":"unknown-Q0771","how":"ignore","now":["resolutions b1d26d62d7fc339e.unknown-Q0771 - 8a8d86483993"],"reason":"A neighbour''s","stocktake":"b1d26d62d7fc339e","sure":false}', 'e981352b09530f8a9b4be5496de665b4cde9e5b7ac88172d1da44f094e808f74');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:54:00.000000+00:00', 'finding resolved', 'boss', '{"after":183,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 4926537f9886","resolutions b1d26d62d7fc339e.missing-S008 - a49caedc85a9"],"reason":"","stocktake":"b1d26d62d7fc339e","sure":false}', '28dfa7619c7bcccacd8b21fc01f56100151dd98e3eb425689d189a0d1e9de813');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:57:00.000000+00:00', 'finding reopened', 'boss', '{"after":184,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions b1d26d62d7fc339e.missing-S008 - -"],"stocktake":"b1d26d62d7fc339e"}', 'd8b0c1312bb5cad36a85470933343a94355fc1d17b7b0ea1be7a5aaf005b2812');
INSERT INTO public.ledger VALUES (186, '2026-03-02T17:00:00.000000+00:00', 'doubted', 'boss', '{"doubt":"7759dbec37e327fe","doubt_kind":"missing","item":"06c661f2586c027f","now":["doubts 7759dbec37e327fe - 3784553e89ad","stocktakes b1d26d62d7fc339e closed e8b024cc5170"],"words":"a count of section:S did not find it"}', '6ef7415f4603423afe32be5c64e1b86f1230771971cbd5747181b998e44d2efb');
INSERT INTO public.ledger VALUES (187, '2026-03-02T17:00:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"b1d26d62d7fc339e"}', '9ab55f8800f3cd5e509507402581658755e1d78a0f62759f601e9c209f2983c1');
INSERT INTO public.ledger VALUES (188, '2026-03-02T17:03:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 1c64c919d1120700 open 7ccc290fac5a"],"stocktake":"1c64c919d1120700"}', 'df49f9fc5eddc1ffbf681528482156ab21c332424e4d71f467b13056a242b4b5');
INSERT INTO public.ledger VALUES (189, '2026-03-02T17:10:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 05ef893f650b","slots L003 on_item 1ccdbf1dac9c","slots L004 on_item 674ef96bf89e","slots L005 on_item 33b18c728406","slots L007 on_item 5ddab2ef2d2d"],"photo":null,"place":"C-1-1","stocktake":"1c64c919d1120700","unread":0}', '75dc602072de645b760b3bff74e8961e14fe55b166fa9b2d9ac4107c23a6e694');
INSERT INTO public.ledger VALUES (190, '2026-03-02T17:13:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts a577f580a2696e73 - dacce4ace9b1"]}', 'ea52e296783d21959bcb081e6f920a8dc900b0616e89103fac19f8a8b4bcac46');
INSERT INTO public.ledger VALUES (191, '2026-03-02T17:13:00.000000+00:00', 'doubted', 'boss', '{"doubt":"a577f580a2696e73","doubt_kind":"missing","item":"989366113305d0e9","now":["resolutions 1c64c919d1120700.missing-L008 - e052bc53b118"],"words":"a count did not find it"}', '943c340480bc35d78644a68ed08ead6c359160dda05d78b20c25a18b089749a8');
INSERT INTO public.ledger VALUES (192, '2026-03-02T17:13:00.000000+00:00', 'finding resolved', 'boss', '{"after":189,"finding":"missing-L008","how":"lost","reason":"","stocktake":"1c64c919d1120700","sure":false}', '47206e324bfc5f96fbf1d4470dd3c3a90156a5205645c782b1537909c6950585');
INSERT INTO public.ledger VALUES (193, '2026-03-02T17:16:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 047bb05f228bfa32 withdrawn c00c8cdbf58b","slots L009 due 821cc144d722","resolutions 1c64c919d1120700.missing-L009 - ae9ca6e0cbd1"],"reason":"Nowhere to be found","stay":"047bb05f228bfa32"}', '53e9ab694d02da68f08367981178d7b504c321720c78325ced6d586df1f677ef');
INSERT INTO public.ledger VALUES (195, '2026-03-02T17:19:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 776899cfd9824887 open 825feef1733b"],"sample":{"bins":["A-1-1"],"chosen":"blind","of":3},"stocktake":"776899cfd9824887"}', 'cd2fccb6337b947e84ed3becfaa5e2e4043abe07e970823756b75c37017b9e1f');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:22:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 7159e42e48276944 open 58bc34c22669"],"stocktake":"7159e42e48276944"}', '44eba53696053dda3ff208e707346ec2e099219dd28b590f432416e7064fd4bb');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:25:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 7159e42e48276944 cancelled bc335415cc6d"],"stocktake":"7159e42e48276944"}', '52326b57ad1eddcf8a6904456caeec126b6b8b96532d1bbf6e4bfc9448fd00d0');
INSERT INTO public.lines VALUES (15, 'bd1bb40d9b88e367', '10e94f65fd47d49e', 1, 'D009-01B', 'Rear derailleur 9', '', '5deb53dbc47dec44', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '3ff3263aa7f2ef32', '80cae613f5a4d7d5', 1, 'D003-01U', 'Bell with a crown', '', 'ad199eee0a668b62', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '6fad2ddd371a0137', 'f6fb4648f80b86fa', 1, 'D005-01E', 'Rear derailleur 5', '', 'b7b908469bab4877', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '92834c362e5179ca', 'f6fb4648f80b86fa', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'c53e5c29e8fa2521', 'c405cfbce77402ad', 1, 'D006-016', 'Rear derailleur 6', '', 'ae24e9a935aa4f96', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'dab9d5e72c9a5bce', 'c405cfbce77402ad', 2, 'D007-01R', 'Rear derailleur 7', '', '9ae18a43d8df3960', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'c7d1606cbe015f9f', '063a1c051100ac87', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '9fe51e12ad96b7eb', 'fdee1af60c802007', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '5a5c06d1db850bab', '8eb4d4e88a51a1ab', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '3a563123b3564f22', '2349510bdaa148a0', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, '01d4869d6f4e8c73', '1f2e78b9daecc1f3', 1, 'W005-01B', 'Bell with a crown', '', '4137781464ed8a3d', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '5e1be3e3060799e6', 'c99b09a3e091ea4a', 1, 'L007-014', 'Dynamo lamp 7', '', '97462e8bbfd56612', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '130986f47ca3512c', '3f171aaca7b8fef1', 1, 'L005-01K', 'Dynamo lamp 5', '', 'eb1e260f5689c77f', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '9561360dd95b053f', '7b7fe62f1f15531d', 1, 'W006-013', 'Front wheel 6', '', '9c35fa50a89b9ad4', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '884041dffeed7d94', 'ef0af1fcd4cc3ce2', 1, 'L012-01S', 'Dynamo lamp 12', '', 'fa805f7e41e2f211', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'c80e12ec3bf4b909', 'a242ae88f81da3f0', 1, 'S012-01O', '', '', '63d832cfda1437b9', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '495ee7ff20547e60', '465bb1dd5361c27e', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '957ce7b9da3fcf4b', 'd06c1c6e1b06888a', 1, 'W001-01E', 'Front wheel 1', '', 'eb7b26ea9b69e055', 'released', '9274ec5cd220394c', 'eb6c8e3750b464f1', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, 'c6476f9e7c809b75', 'd06c1c6e1b06888a', 2, 'W002-016', 'Front wheel 2', '', '6c61214f42e0f1b9', 'released', '9274ec5cd220394c', 'eb6c8e3750b464f1', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, '80c15f71ddfec51f', '6af0e62d80727628', 2, 'S003-01W', 'Leather saddle 3', '', '3f76dbf51cc7447a', 'picked', NULL, 'eb6c8e3750b464f1', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, '6cb3f261d667eb4a', '5e2e617deec6cf4b', 1, 'W007-01W', 'Front wheel 7', '', 'fbc80fd5673781d0', 'released', '18a0bb30f44163aa', 'eb6c8e3750b464f1', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, 'edfcb66bffebbd51', '0169df3dfde2ebde', 1, 'S004-01O', 'Leather saddle 4', '', '69b60e797eede40d', 'packed', '56e5e732a3d06219', 'eb6c8e3750b464f1', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, 'c59cddc47b739b7b', '3b4e6f3a7930cc51', 1, 'L006-01C', 'Dynamo lamp 6', '', '76f4c34a62013608', 'packed', '678f61ae6ab02f05', 'eb6c8e3750b464f1', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, 'f3d4b8802b30da63', '0169df3dfde2ebde', 2, 'S005-01G', 'Leather saddle 5', '', '6bed835d6f1ffb0b', 'picked', NULL, 'eb6c8e3750b464f1', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, 'd2b308ca17bc8a42', 'e8e36552760b2fab', 1, 'S007-01Z', 'Leather saddle 7', '', '276dcf63ddeb58ab', 'picked', NULL, 'eb6c8e3750b464f1', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, '250c0e386efee6b5', '5e2e617deec6cf4b', 2, 'W008-01O', 'Front wheel 8', '', 'b3fbb6e2e304cbb7', 'waiting', NULL, 'eb6c8e3750b464f1', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, 'ccb259edd2428229', '3b4e6f3a7930cc51', 2, 'L011-010', 'Dynamo lamp 11', '', '17d85e20e3164b2a', 'cancelled', NULL, 'eb6c8e3750b464f1', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '4e89d50b0954a0f6', '6af0e62d80727628', 1, 'S002-013', 'Leather saddle 2', '', 'a6bdc786b6393c5e', 'packed', 'd366c2b2900dac79', 'eb6c8e3750b464f1', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '90e8d5cf39edadde', '6eee142beaeaf9a8', 1, 'S006-018', 'Saddle with springs', '', '1b23bed6c4e117ea', 'picked', NULL, 'eb6c8e3750b464f1', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '702c4eaf4847c67e', 'f19dd3610ad469fb', 1, 'D008-01J', 'Rear derailleur 8', '', 'b7eea84922a7312c', 'waiting', NULL, 'a106f25f9b0e0c25', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '654d2f98d90ccb49', 'f070d692bd39e8de', 1, 'D001-019', 'Rear derailleur 1', '', '82edd2268079fbb0', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, 'b2adee0bfa8e3690', '1f20ba1ec283c3ec', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '2349e2aa1eadbc2a', 'waiting', NULL, 'a106f25f9b0e0c25', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '5cc52a920b57caf3', '2510ec8efc03743b', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', 'd1ef592f802ebaaa', 'picked', NULL, 'a106f25f9b0e0c25', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '3c04c5e956d2cbb4', '1c56e6402919d211', 1, 'L004-01S', 'Dynamo lamp 4', '', '65a14936146bbd8f', 'short', NULL, 'a106f25f9b0e0c25', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '0f7fedb28c1dee2b', 'f070d692bd39e8de', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, 'cf097da258d53ad1', '348e12b7a72fc16d', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.listings VALUES (1, 'ceb432ac681ebced', 'a960d633f1ac7c85', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, '89c379853e64b178', '2001d0406ed9062f', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, '28d64457c196b84e', '5a5f5a18877a1dcd', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, 'f4cf35055ee325b1', '17410cc5c97fba57', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, '2fbaea53a74c63de', 'adf9422688a316db', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, '1459d3a3e5dfa834', '6a2754cd48840931', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, 'c14277c5f48dcbd0', '2ea7955124adee65', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, '798bd5650cd7a91b', '490c48d37394913d', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, 'f02a6e10088b5dc4', '951bdb3321282fbf', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, 'e7c7cadbbc7ebe66', '17cec434b7bf996b', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, '97632b4920eb4385', '969ec8a70428bf68', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, '161c231f3f58a9e3', '65b7dfc61a4322c3', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, '74441d291d7d394b', '8ae2fbabe1ee41ef', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, 'be1cad0a32cb9a3b', '2e88f566bc40464a', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, '54efbf040e0031b4', '33bd15936b4f6ee6', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, '3c3ba467faac4abf', 'a99fd435ae741caa', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, 'b5c60b7198fa8ccf', '6fa018c8d00693b3', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, 'c8d7237f1235d14a', '522ef3cfacf5d455', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, '350d89effe144f50', '06c661f2586c027f', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, '208473dce56b532e', '9adf341c45114333', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, '73b0f0d5da80d735', '23fcdf9a18ef5e51', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, '57bedcb890177b22', '3815038e91874517', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, 'efc0b8015425ac75', 'bf2961aead49373b', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, 'b7f0e6b58885fe6c', '9408764d53e7bb74', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '489f9e7374ce38cd', '327cc4dd0890f296', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, '3829d72192902a55', 'da895de250dd495d', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, 'e40fc8f2f81df948', 'f981602847f85417', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, 'ceede2d75f05e41b', 'fb298a68b7f2772e', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, 'e8fffaca1943a6c9', 'ce7d8c85014b3b3a', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, '4a8603468e293336', '2dff201b47f7d0a7', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, 'e99dd1520891028c', '989366113305d0e9', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, '25a59454d655c9af', '5bf6d2e648e7ade4', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, '56885354410d4c59', '5f995811c99018f3', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, '3aa5be5b49786f61', '6d837d077c441c21', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, 'c582b7d229f951d6', '32bcb1dc7b7e126c', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, 'e7819ccdd44c22e0', 'f071df61f3b9ffdf', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, 'db7c7dde934f95f6', '388835556790c9f6', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, 'e6ae15e5dd0d3c8c', '548ea469c63380a0', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, '288413d7759228d9', '70570d30926eea5c', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, 'c1a41009459b406d', '2a92531cfbf9dad3', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, 'c76461448823c733', '1b96b84ffb6662c0', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, '20415698c0fabedf', '627e86e068be09fa', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '5cc0ad86a217adf7', 'efeae447e25dba85', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, '57da98a78072be4e', 'bc967529309115d3', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, '18d17c85b53b835c', '6e4d4b6193cf321a', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, '5677fb89a85c82c3', '1f6c2e3d98ad666f', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, '390f22a8c9260f60', '790ddd43e4b284a9', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, 'b1ffd3d8a2d20ac0', 'f071df61f3b9ffdf', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, 'dde139118559a194', 'f071df61f3b9ffdf', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, 'c06802a92c75eb3b', '8ae2fbabe1ee41ef', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, 'd574f67494a53353', '8ae2fbabe1ee41ef', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, 'b48a1f21b72d2878', '490c48d37394913d', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, '9400f281319e26a3', '490c48d37394913d', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, '40e1a1768ef3f9d5', '790ddd43e4b284a9', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, 'b6451bfe20adea90', '790ddd43e4b284a9', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, '9a5f90b0615953f3', '5bf6d2e648e7ade4', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, '49df168d7752cd40', 'd84293ac27c666c8', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '885bc5e33af1b154', 'd84293ac27c666c8', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, '70acc77ae314f5ad', '5bf6d2e648e7ade4', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, '15d9535515b8f500', '327cc4dd0890f296', 'fair', 'fair-L002', '5cc52a920b57caf3', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, 'eb70818a5563e8c2', 'da895de250dd495d', 'fair', 'fair-L003', 'b2adee0bfa8e3690', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'b1d26d62d7fc339e', 'B-1-1', '2026-03-02T16:34:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'b1d26d62d7fc339e', 'B-1-2', '2026-03-02T16:42:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '1c64c919d1120700', 'C-1-1', '2026-03-02T17:10:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '2510ec8efc03743b', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '1f20ba1ec283c3ec', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, '1c56e6402919d211', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, '3f171aaca7b8fef1', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, '6eee142beaeaf9a8', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, 'c99b09a3e091ea4a', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '10e94f65fd47d49e', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '7b7fe62f1f15531d', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, 'f19dd3610ad469fb', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, '80cae613f5a4d7d5', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, 'f6fb4648f80b86fa', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'c405cfbce77402ad', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '063a1c051100ac87', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, 'fdee1af60c802007', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '8eb4d4e88a51a1ab', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '2349510bdaa148a0', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '1f2e78b9daecc1f3', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, 'ef0af1fcd4cc3ce2', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, 'a242ae88f81da3f0', 'F-1', '', '2026-03-02T13:56:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (26, '465bb1dd5361c27e', 'F-2', '', '2026-03-02T13:56:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (1, 'd06c1c6e1b06888a', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, '5e2e617deec6cf4b', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, 'e8e36552760b2fab', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, '0169df3dfde2ebde', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '56e5e732a3d06219', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, '3b4e6f3a7930cc51', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '678f61ae6ab02f05', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '6af0e62d80727628', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'd366c2b2900dac79', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (27, 'f070d692bd39e8de', 'B-38', 'fair', '2026-03-02T16:21:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, '348e12b7a72fc16d', 'B-39', '', '2026-03-02T16:24:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (1, '9274ec5cd220394c', 'main', 'd06c1c6e1b06888a', '2026-03-02T14:47:00.000000+00:00', 'closed', '2026-03-02T14:56:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '18a0bb30f44163aa', 'main', '5e2e617deec6cf4b', '2026-03-02T15:18:00.000000+00:00', 'closed', '2026-03-02T15:21:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, 'b42ad296f9ea9324', 'main', 'e8e36552760b2fab', '2026-03-02T15:24:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '56e5e732a3d06219', 'main', '0169df3dfde2ebde', '2026-03-02T15:30:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '678f61ae6ab02f05', 'second', '3b4e6f3a7930cc51', '2026-03-02T15:39:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'd366c2b2900dac79', 'main', '6af0e62d80727628', '2026-03-02T15:48:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'b1d26d62d7fc339e.elsewhere-S012', 'b1d26d62d7fc339e', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:48:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T16:34:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "63d832cfda1437b9", "item": "bf2961aead49373b", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "c80e12ec3bf4b909", "order": "a242ae88f81da3f0", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "63d832cfda1437b9", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:48:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "63d832cfda1437b9", "item": "bf2961aead49373b", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "c80e12ec3bf4b909", "order": "a242ae88f81da3f0", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "63d832cfda1437b9", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'b1d26d62d7fc339e.unknown-Q0771', 'b1d26d62d7fc339e', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:51:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '1c64c919d1120700.missing-L008', '1c64c919d1120700', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:13:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a08644d96ed92a4d", "item": "989366113305d0e9", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a08644d96ed92a4d", "item": "989366113305d0e9", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["a577f580a2696e73"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '1c64c919d1120700.missing-L009', '1c64c919d1120700', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:16:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "047bb05f228bfa32", "item": "5bf6d2e648e7ade4", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "047bb05f228bfa32", "item": "5bf6d2e648e7ade4", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:16:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'eb6c8e3750b464f1', '2026-03-02T13:59:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'a106f25f9b0e0c25', '2026-03-02T15:57:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'f34cac0307cc576c1609132849339f33a8962d045fea71e53f1a3faecced07a3', 'bin', 'eb6c8e3750b464f1', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:02:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '6dd7401638c3c9d8a8f10663256dfa8f1e6624107a13f075d75d6dc559643a8a', 'bin', 'eb6c8e3750b464f1', 'W001', false, true, true, '957ce7b9da3fcf4b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d06c1c6e1b06888a", "order_number": "B-01", "line": "957ce7b9da3fcf4b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:05:00.000000+00:00', '["on_item", ["eb7b26ea9b69e055", "stored"], ["957ce7b9da3fcf4b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '0094919013569954d952fd9adae7910cf8d9870545f2ae60fd69a8b6e026e70d', 'bin', 'eb6c8e3750b464f1', 'W002', false, true, true, 'c6476f9e7c809b75', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d06c1c6e1b06888a", "order_number": "B-01", "line": "c6476f9e7c809b75", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:08:00.000000+00:00', '["on_item", ["6c61214f42e0f1b9", "stored"], ["c6476f9e7c809b75", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'df2854e4b7eab0cda2693bc93990aa681f2b714be13f1b3725621712ffa773ba', 'bin', 'eb6c8e3750b464f1', 'S002', false, true, true, '4e89d50b0954a0f6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "6af0e62d80727628", "order_number": "B-03", "line": "4e89d50b0954a0f6", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:11:00.000000+00:00', '["on_item", ["a6bdc786b6393c5e", "stored"], ["4e89d50b0954a0f6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '80968fb8dcdef93b69149fc789b882e2fc412c09caaec3be0e63b577ea7254c4', 'bin', 'eb6c8e3750b464f1', 'S003', false, true, true, '80c15f71ddfec51f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "6af0e62d80727628", "order_number": "B-03", "line": "80c15f71ddfec51f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:14:00.000000+00:00', '["on_item", ["3f76dbf51cc7447a", "stored"], ["80c15f71ddfec51f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '1dd5053cdf075125d748b3cf7ca097395e0920ef2ba8dfd89c8274c81685a27e', 'bin', 'eb6c8e3750b464f1', 'S004', false, true, true, 'edfcb66bffebbd51', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "0169df3dfde2ebde", "order_number": "B-04", "line": "edfcb66bffebbd51", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:17:00.000000+00:00', '["on_item", ["69b60e797eede40d", "stored"], ["edfcb66bffebbd51", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '2e12427cff9e387ca488f8e49b59addcd7bd3603f66b77645b7fac3be243c3ea', 'bin', 'eb6c8e3750b464f1', 'S005', false, true, true, 'f3d4b8802b30da63', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "0169df3dfde2ebde", "order_number": "B-04", "line": "f3d4b8802b30da63", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:20:00.000000+00:00', '["on_item", ["6bed835d6f1ffb0b", "stored"], ["f3d4b8802b30da63", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '10b0fadadad227615eb35e1573fdfcf288dd0da64efd30ae67bfa26c92311dcc', 'bin', 'eb6c8e3750b464f1', 'L006', false, true, true, 'c59cddc47b739b7b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3b4e6f3a7930cc51", "order_number": "B-09", "line": "c59cddc47b739b7b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:23:00.000000+00:00', '["on_item", ["76f4c34a62013608", "stored"], ["c59cddc47b739b7b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '217433abf333d26b367fb17d0e59f745980f1558a517f419bc76b52c54c031e0', 'bin', 'eb6c8e3750b464f1', 'L011', false, true, true, 'ccb259edd2428229', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "3b4e6f3a7930cc51", "order_number": "B-09", "line": "ccb259edd2428229", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:26:00.000000+00:00', '["on_item", ["17d85e20e3164b2a", "stored"], ["ccb259edd2428229", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '899903b99d79cf0d40b011995cef8eb8fa965d4ed1a18647d113eb1c2d36183d', 'bin', 'eb6c8e3750b464f1', 'S006', false, true, true, '90e8d5cf39edadde', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "6eee142beaeaf9a8", "order_number": "B-13", "line": "90e8d5cf39edadde", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:29:00.000000+00:00', '["on_item", ["1b23bed6c4e117ea", "stored"], ["90e8d5cf39edadde", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '1c459a16e8dd4eadde2feadf3da4bf0ae6d0b65782997f3ab8b9f8c8c84d0012', 'bin', 'eb6c8e3750b464f1', 'S007', false, true, true, 'd2b308ca17bc8a42', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "e8e36552760b2fab", "order_number": "B-22", "line": "d2b308ca17bc8a42", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:32:00.000000+00:00', '["on_item", ["276dcf63ddeb58ab", "stored"], ["d2b308ca17bc8a42", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '8bc1087a8d0c712c9627ee37d7f1aa7280b5cda92e73bc74ab8ced06342354f2', 'bin', 'eb6c8e3750b464f1', 'W007', false, true, true, '6cb3f261d667eb4a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "5e2e617deec6cf4b", "order_number": "B-23", "line": "6cb3f261d667eb4a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:35:00.000000+00:00', '["on_item", ["fbc80fd5673781d0", "stored"], ["6cb3f261d667eb4a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '4a54b5dc3644c1b21aeb372dcbf98d3d71d863afb680f9f63afb1454e0c0f04d', 'bin', 'eb6c8e3750b464f1', 'W008', false, true, true, '250c0e386efee6b5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "5e2e617deec6cf4b", "order_number": "B-23", "line": "250c0e386efee6b5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:38:00.000000+00:00', '["on_item", ["b3fbb6e2e304cbb7", "stored"], ["250c0e386efee6b5", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '4e89d50b0954a0f6', '9274ec5cd220394c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "6af0e62d80727628", "order_number": "B-03", "line": "4e89d50b0954a0f6", "line_state": "picked", "order_state": "picking", "parcel": "9274ec5cd220394c", "parcel_state": "open", "released": []}', '', '2026-03-02T14:50:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '957ce7b9da3fcf4b', '9274ec5cd220394c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d06c1c6e1b06888a", "order_number": "B-01", "line": "957ce7b9da3fcf4b", "line_state": "packed", "order_state": "picking", "parcel": "9274ec5cd220394c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:53:00.000000+00:00', '["on_item", ["eb7b26ea9b69e055", "stored"], ["957ce7b9da3fcf4b", "packed", "9274ec5cd220394c", []], ["9274ec5cd220394c", "2026-03-02T14:47:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'c6476f9e7c809b75', '9274ec5cd220394c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d06c1c6e1b06888a", "order_number": "B-01", "line": "c6476f9e7c809b75", "line_state": "released", "order_state": "released", "parcel": "9274ec5cd220394c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:56:00.000000+00:00', '["due", ["6c61214f42e0f1b9", "shipped"], ["c6476f9e7c809b75", "released", "9274ec5cd220394c", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '957ce7b9da3fcf4b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "d06c1c6e1b06888a", "order_number": "B-01", "line": "957ce7b9da3fcf4b", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:59:00.000000+00:00', '["tray", ["eb7b26ea9b69e055", "shipped"], ["957ce7b9da3fcf4b", "released", "9274ec5cd220394c", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '6cb3f261d667eb4a', '18a0bb30f44163aa', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "5e2e617deec6cf4b", "order_number": "B-23", "line": "6cb3f261d667eb4a", "line_state": "packed", "order_state": "waiting", "parcel": "18a0bb30f44163aa", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:12:00.000000+00:00', '["on_item", ["fbc80fd5673781d0", "stored"], ["6cb3f261d667eb4a", "packed", "18a0bb30f44163aa", []], ["18a0bb30f44163aa", "2026-03-02T15:09:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'edfcb66bffebbd51', '56e5e732a3d06219', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "0169df3dfde2ebde", "order_number": "B-04", "line": "edfcb66bffebbd51", "line_state": "packed", "order_state": "picking", "parcel": "56e5e732a3d06219", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:33:00.000000+00:00', '["on_item", ["69b60e797eede40d", "stored"], ["edfcb66bffebbd51", "packed", "56e5e732a3d06219", []], ["56e5e732a3d06219", "2026-03-02T15:30:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'c59cddc47b739b7b', '678f61ae6ab02f05', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3b4e6f3a7930cc51", "order_number": "B-09", "line": "c59cddc47b739b7b", "line_state": "packed", "order_state": "picking", "parcel": "678f61ae6ab02f05", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:42:00.000000+00:00', '["on_item", ["76f4c34a62013608", "stored"], ["c59cddc47b739b7b", "packed", "678f61ae6ab02f05", []], ["678f61ae6ab02f05", "2026-03-02T15:39:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '4e89d50b0954a0f6', 'd366c2b2900dac79', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "6af0e62d80727628", "order_number": "B-03", "line": "4e89d50b0954a0f6", "line_state": "packed", "order_state": "picking", "parcel": "d366c2b2900dac79", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:51:00.000000+00:00', '["on_item", ["a6bdc786b6393c5e", "stored"], ["4e89d50b0954a0f6", "packed", "d366c2b2900dac79", []], ["d366c2b2900dac79", "2026-03-02T15:48:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '804380d9c8c4c2a9c7600c7670c96bc8988e5a41e8ac4cd682cfc00308371d5d', 'bin', 'a106f25f9b0e0c25', 'L002', false, true, true, '5cc52a920b57caf3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "2510ec8efc03743b", "order_number": "B-05", "line": "5cc52a920b57caf3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:00:00.000000+00:00', '["on_item", ["d1ef592f802ebaaa", "stored"], ["5cc52a920b57caf3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', 'ca75f76d0aeaec65e8f16e872f9ca21995dbb82051e4fdb574f08fcb30b77c38', 'bin', 'a106f25f9b0e0c25', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:06:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'acd6a17458335aa7c799b5e77a2e7b1d28269dfaa8f7ededff382a68a9f4daab', 'bin', 'a106f25f9b0e0c25', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:09:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'bd90daf0e62e8bc94a498286556c63f8213737ca20e765f1a6473c6e164d47e9', 'bin', 'a106f25f9b0e0c25', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:12:00.000000+00:00', '');
INSERT INTO public.sections VALUES (1, 'D', 'Derailleurs', 10, 'yellow', 3, 30);
INSERT INTO public.sections VALUES (2, 'S', 'Saddles', 10, 'pink', 3, 15);
INSERT INTO public.sections VALUES (3, 'L', 'Lamps', 10, 'green', 3, 15);
INSERT INTO public.sections VALUES (4, 'W', 'Wheels', 10, 'blue', 3, 15);
INSERT INTO public.slots VALUES (14, 'D014', 'D', 14, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (15, 'D015', 'D', 15, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (16, 'D016', 'D', 16, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (17, 'D017', 'D', 17, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (18, 'D018', 'D', 18, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (19, 'D019', 'D', 19, 'A-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (21, 'D021', 'D', 21, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (22, 'D022', 'D', 22, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (23, 'D023', 'D', 23, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (24, 'D024', 'D', 24, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (25, 'D025', 'D', 25, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (26, 'D026', 'D', 26, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (27, 'D027', 'D', 27, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (28, 'D028', 'D', 28, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (30, 'D030', 'D', 30, 'A-1-3', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (44, 'S014', 'S', 14, 'B-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (45, 'S015', 'S', 15, 'B-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (60, 'L015', 'L', 15, 'C-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (73, 'W013', 'W', 13, 'D-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (74, 'W014', 'W', 14, 'D-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (1, 'D001', 'D', 1, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (2, 'D002', 'D', 2, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (3, 'D003', 'D', 3, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (5, 'D005', 'D', 5, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (6, 'D006', 'D', 6, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (7, 'D007', 'D', 7, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (9, 'D009', 'D', 9, 'A-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (11, 'D011', 'D', 11, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (12, 'D012', 'D', 12, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (55, 'L010', 'L', 10, 'C-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (57, 'L012', 'L', 12, 'C-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (63, 'W003', 'W', 3, 'D-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (65, 'W005', 'W', 5, 'D-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (66, 'W006', 'W', 6, 'D-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (69, 'W009', 'W', 9, 'D-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (70, 'W010', 'W', 10, 'D-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (71, 'W011', 'W', 11, 'D-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (72, 'W012', 'W', 12, 'D-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (13, 'D013', 'D', 13, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (40, 'S010', 'S', 10, 'B-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (64, 'W004', 'W', 4, 'D-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (39, 'S009', 'S', 9, 'B-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (58, 'L013', 'L', 13, 'C-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (59, 'L014', 'L', 14, 'C-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (8, 'D008', 'D', 8, 'A-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (20, 'D020', 'D', 20, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T14:02:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:42:00.000000+00:00', '678f61ae6ab02f05', 'bin', 'C-1-1', 'eb6c8e3750b464f1', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:20:00.000000+00:00', NULL, 'bin', 'B-1-1', 'eb6c8e3750b464f1', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:26:00.000000+00:00', NULL, 'bin', 'C-1-2', 'eb6c8e3750b464f1', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:32:00.000000+00:00', NULL, 'bin', 'B-1-1', 'eb6c8e3750b464f1', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:51:00.000000+00:00', 'd366c2b2900dac79', 'bin', 'B-1-1', 'eb6c8e3750b464f1', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:29:00.000000+00:00', NULL, 'bin', 'B-1-1', 'eb6c8e3750b464f1', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:38:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:56:00.000000+00:00', '9274ec5cd220394c', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:12:00.000000+00:00', '18a0bb30f44163aa', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:33:00.000000+00:00', '56e5e732a3d06219', 'bin', 'B-1-1', 'eb6c8e3750b464f1', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:00:00.000000+00:00', NULL, 'bin', 'C-1-1', 'a106f25f9b0e0c25', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:34:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:34:00.000000+00:00', NULL, 'bin', 'B-1-1', 'eb6c8e3750b464f1', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:34:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:48:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '82edd2268079fbb0', 'a960d633f1ac7c85', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, '898dc9913c094fbe', '2001d0406ed9062f', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, 'ad199eee0a668b62', '5a5f5a18877a1dcd', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, '4b1c52e72251a2e0', 'd84293ac27c666c8', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, 'b7b908469bab4877', '17410cc5c97fba57', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, 'ae24e9a935aa4f96', 'adf9422688a316db', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '9ae18a43d8df3960', '6a2754cd48840931', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, '5deb53dbc47dec44', '490c48d37394913d', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '52c289bef4d597bd', '951bdb3321282fbf', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, 'a0c1d88cf1e172a6', '17cec434b7bf996b', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, 'fdcc775ade97e6eb', '969ec8a70428bf68', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '5263aff0e8b6e7df', '65b7dfc61a4322c3', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, 'a6bdc786b6393c5e', '8ae2fbabe1ee41ef', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, '3f76dbf51cc7447a', '2e88f566bc40464a', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '69b60e797eede40d', '33bd15936b4f6ee6', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '6bed835d6f1ffb0b', 'a99fd435ae741caa', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '1b23bed6c4e117ea', '6fa018c8d00693b3', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, '276dcf63ddeb58ab', '522ef3cfacf5d455', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '68ce37d070f58a95', '06c661f2586c027f', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, '0648085eaea1b565', '3815038e91874517', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '63d832cfda1437b9', 'bf2961aead49373b', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, 'c86255922318b21e', '9408764d53e7bb74', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, 'd1ef592f802ebaaa', '327cc4dd0890f296', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '2349e2aa1eadbc2a', 'da895de250dd495d', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '65a14936146bbd8f', 'f981602847f85417', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, 'eb1e260f5689c77f', 'fb298a68b7f2772e', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, '76f4c34a62013608', 'ce7d8c85014b3b3a', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '97462e8bbfd56612', '2dff201b47f7d0a7', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'a08644d96ed92a4d', '989366113305d0e9', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'e4feb5bfff1333fd', '5f995811c99018f3', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '17d85e20e3164b2a', '6d837d077c441c21', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, 'fa805f7e41e2f211', '32bcb1dc7b7e126c', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '9648f9e2009f1f36', '548ea469c63380a0', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '4137781464ed8a3d', '2a92531cfbf9dad3', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '9c35fa50a89b9ad4', '1b96b84ffb6662c0', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, 'b3fbb6e2e304cbb7', 'efeae447e25dba85', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, 'f294a4517c3902bd', 'bc967529309115d3', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, '1f1104b1d9944afc', '6e4d4b6193cf321a', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, '3bbcb6c92887e7b2', '1f6c2e3d98ad666f', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, '88145b5ecdfe90c5', '790ddd43e4b284a9', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, '8927a6b678a14201', '55b19c0c48638c34', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, 'e242a6a62012f8e3', '23fcdf9a18ef5e51', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'b3feb07b28b4acd9', '70570d30926eea5c', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, 'b33ada82ed531891', '9adf341c45114333', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '5d0271943a3f0678', '9adf341c45114333', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '5b9ca21a60c8ce6d', '24805cba971f15f7', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, 'dfd5bccd1cac69ce', 'ed4b58a0eff4881b', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, '9bed255738a9ab9f', '2ea7955124adee65', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, 'b7eea84922a7312c', '2ea7955124adee65', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, 'eb7b26ea9b69e055', 'f071df61f3b9ffdf', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:56:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, '6c61214f42e0f1b9', '388835556790c9f6', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:56:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '50037ec144070ac1', 'bbee4a3fc96713f6', 'W001', 2, '2026-03-02T15:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, 'fbc80fd5673781d0', '627e86e068be09fa', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:21:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '047bb05f228bfa32', '5bf6d2e648e7ade4', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:16:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'b1d26d62d7fc339e', 'section:S', 'Spring', '2026-03-02T16:27:00.000000+00:00', 177, 'closed', '2026-03-02T17:00:00.000000+00:00', '{"stocktake": "b1d26d62d7fc339e", "area": "section:S", "note": "Spring", "opened": "2026-03-02T16:27:00+00:00", "closed": "2026-03-02T17:00:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:48:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:51:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '1c64c919d1120700', 'section:L', 'Spring', '2026-03-02T17:03:00.000000+00:00', 187, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '776899cfd9824887', 'section:D', '', '2026-03-02T17:19:00.000000+00:00', 194, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-1"]}');
INSERT INTO public.stocktakes VALUES (4, '7159e42e48276944', 'tray', 'Too late today', '2026-03-02T17:22:00.000000+00:00', 195, 'cancelled', '2026-03-02T17:25:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'eb6c8e3750b464f1', 1, '4e89d50b0954a0f6', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'eb6c8e3750b464f1', 2, '80c15f71ddfec51f', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'eb6c8e3750b464f1', 3, 'edfcb66bffebbd51', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'eb6c8e3750b464f1', 4, 'f3d4b8802b30da63', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'eb6c8e3750b464f1', 5, '90e8d5cf39edadde', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'eb6c8e3750b464f1', 6, 'd2b308ca17bc8a42', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'eb6c8e3750b464f1', 7, '957ce7b9da3fcf4b', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'eb6c8e3750b464f1', 8, 'c6476f9e7c809b75', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'eb6c8e3750b464f1', 9, '6cb3f261d667eb4a', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'eb6c8e3750b464f1', 10, '250c0e386efee6b5', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'eb6c8e3750b464f1', 11, 'c59cddc47b739b7b', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'eb6c8e3750b464f1', 12, 'ccb259edd2428229', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'a106f25f9b0e0c25', 1, '702c4eaf4847c67e', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'a106f25f9b0e0c25', 2, '5cc52a920b57caf3', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'a106f25f9b0e0c25', 3, 'b2adee0bfa8e3690', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'a106f25f9b0e0c25', 4, '3c04c5e956d2cbb4', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.channels_n_seq', 1, false);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.lines_n_seq', 36, true);
SELECT pg_catalog.setval('public.listings_n_seq', 61, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.order_loads_n_seq', 1, false);
SELECT pg_catalog.setval('public.orders_n_seq', 28, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 3, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.resolutions_n_seq', 5, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 25, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 54, true);
SELECT pg_catalog.setval('public.stocktakes_n_seq', 4, true);
SELECT pg_catalog.setval('public.stops_n_seq', 16, true);
ALTER TABLE ONLY public.alembic_version
    ADD CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num);
ALTER TABLE ONLY public.access
    ADD CONSTRAINT pk_access PRIMARY KEY (n);
ALTER TABLE ONLY public.aliases
    ADD CONSTRAINT pk_aliases PRIMARY KEY (n);
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT pk_answers PRIMARY KEY (n);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT pk_bins PRIMARY KEY (n);
ALTER TABLE ONLY public.channels
    ADD CONSTRAINT pk_channels PRIMARY KEY (n);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT pk_doubts PRIMARY KEY (n);
ALTER TABLE ONLY public.head
    ADD CONSTRAINT pk_head PRIMARY KEY (one);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT pk_items PRIMARY KEY (n);
ALTER TABLE ONLY public.labels
    ADD CONSTRAINT pk_labels PRIMARY KEY (n);
ALTER TABLE ONLY public.ledger
    ADD CONSTRAINT pk_ledger PRIMARY KEY (seq);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT pk_lines PRIMARY KEY (n);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT pk_listings PRIMARY KEY (n);
ALTER TABLE ONLY public.looks
    ADD CONSTRAINT pk_looks PRIMARY KEY (n);
ALTER TABLE ONLY public.mappings
    ADD CONSTRAINT pk_mappings PRIMARY KEY (n);
ALTER TABLE ONLY public.order_loads
    ADD CONSTRAINT pk_order_loads PRIMARY KEY (n);
ALTER TABLE ONLY public.orders
    ADD CONSTRAINT pk_orders PRIMARY KEY (n);
ALTER TABLE ONLY public.parcels
    ADD CONSTRAINT pk_parcels PRIMARY KEY (n);
ALTER TABLE ONLY public.photos
    ADD CONSTRAINT pk_photos PRIMARY KEY (n);
ALTER TABLE ONLY public.racks
    ADD CONSTRAINT pk_racks PRIMARY KEY (n);
ALTER TABLE ONLY public.resolutions
    ADD CONSTRAINT pk_resolutions PRIMARY KEY (n);
ALTER TABLE ONLY public.rounds
    ADD CONSTRAINT pk_rounds PRIMARY KEY (n);
ALTER TABLE ONLY public.scans
    ADD CONSTRAINT pk_scans PRIMARY KEY (n);
ALTER TABLE ONLY public.sections
    ADD CONSTRAINT pk_sections PRIMARY KEY (n);
ALTER TABLE ONLY public.slots
    ADD CONSTRAINT pk_slots PRIMARY KEY (n);
ALTER TABLE ONLY public.stays
    ADD CONSTRAINT pk_stays PRIMARY KEY (n);
ALTER TABLE ONLY public.stocktakes
    ADD CONSTRAINT pk_stocktakes PRIMARY KEY (n);
ALTER TABLE ONLY public.stops
    ADD CONSTRAINT pk_stops PRIMARY KEY (n);
ALTER TABLE ONLY public.access
    ADD CONSTRAINT uq_access_hash UNIQUE (hash);
ALTER TABLE ONLY public.aliases
    ADD CONSTRAINT uq_aliases_text UNIQUE (text);
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT uq_answers_key UNIQUE (key);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT uq_bins_name UNIQUE (name);
ALTER TABLE ONLY public.channels
    ADD CONSTRAINT uq_channels_name UNIQUE (name);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT uq_doubts_id UNIQUE (id);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT uq_items_id UNIQUE (id);
ALTER TABLE ONLY public.labels
    ADD CONSTRAINT uq_labels_hash UNIQUE (hash);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT uq_lines_id UNIQUE (id);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT uq_listings_id UNIQUE (id);
ALTER TABLE ONLY public.looks
    ADD CONSTRAINT uq_looks_key UNIQUE (key);
ALTER TABLE ONLY public.mappings
    ADD CONSTRAINT uq_mappings_name UNIQUE (name);
ALTER TABLE ONLY public.order_loads
    ADD CONSTRAINT uq_order_loads_id UNIQUE (id);
ALTER TABLE ONLY public.orders
    ADD CONSTRAINT uq_orders_id UNIQUE (id);
ALTER TABLE ONLY public.orders
    ADD CONSTRAINT uq_orders_slip UNIQUE (slip);
ALTER TABLE ONLY public.parcels
    ADD CONSTRAINT uq_parcels_id UNIQUE (id);
ALTER TABLE ONLY public.photos
    ADD CONSTRAINT uq_photos_hash UNIQUE (hash);
ALTER TABLE ONLY public.racks
    ADD CONSTRAINT uq_racks_name UNIQUE (name);
ALTER TABLE ONLY public.resolutions
    ADD CONSTRAINT uq_resolutions_id UNIQUE (id);
ALTER TABLE ONLY public.rounds
    ADD CONSTRAINT uq_rounds_id UNIQUE (id);
ALTER TABLE ONLY public.scans
    ADD CONSTRAINT uq_scans_key UNIQUE (key);
ALTER TABLE ONLY public.sections
    ADD CONSTRAINT uq_sections_code UNIQUE (code);
ALTER TABLE ONLY public.slots
    ADD CONSTRAINT uq_slots_code UNIQUE (code);
ALTER TABLE ONLY public.stays
    ADD CONSTRAINT uq_stays_id UNIQUE (id);
ALTER TABLE ONLY public.stocktakes
    ADD CONSTRAINT uq_stocktakes_id UNIQUE (id);
CREATE INDEX ix_aliases_code ON public.aliases USING btree (code);
CREATE INDEX ix_bins_section ON public.bins USING btree (section);
CREATE INDEX ix_doubts_item ON public.doubts USING btree (item, how);
CREATE INDEX ix_items_away ON public.items USING btree (away_since) WHERE (away_since IS NOT NULL);
CREATE INDEX ix_items_kept ON public.items USING btree (kept_until) WHERE (kept_until IS NOT NULL);
CREATE INDEX ix_labels_parcel ON public.labels USING btree (parcel);
CREATE INDEX ix_lines_held ON public.lines USING btree ("order") WHERE (holds <> '[]'::text);
CREATE INDEX ix_lines_order ON public.lines USING btree ("order", state);
CREATE INDEX ix_lines_parcel ON public.lines USING btree (parcel);
CREATE INDEX ix_lines_state ON public.lines USING btree (state);
CREATE INDEX ix_lines_stay ON public.lines USING btree (stay);
CREATE INDEX ix_listings_item ON public.listings USING btree (item);
CREATE INDEX ix_listings_line ON public.listings USING btree (line) WHERE (line IS NOT NULL);
CREATE INDEX ix_listings_listing ON public.listings USING btree (listing);
CREATE INDEX ix_listings_up ON public.listings USING btree (n) WHERE (ended IS NULL);
CREATE INDEX ix_looks_photo ON public.looks USING btree (photo);
CREATE INDEX ix_looks_stocktake ON public.looks USING btree (stocktake);
CREATE INDEX ix_orders_channel ON public.orders USING btree (channel);
CREATE INDEX ix_orders_load ON public.orders USING btree (load) WHERE (load IS NOT NULL);
CREATE INDEX ix_resolutions_stocktake ON public.resolutions USING btree (stocktake);
CREATE INDEX ix_scans_spot ON public.scans USING btree (station, spot, n);
CREATE INDEX ix_slots_card ON public.slots USING btree (card, section, number);
CREATE INDEX ix_stays_item ON public.stays USING btree (item);
CREATE INDEX ix_stays_load ON public.stays USING btree (load) WHERE (load IS NOT NULL);
CREATE INDEX ix_stocktakes_state ON public.stocktakes USING btree (state);
CREATE UNIQUE INDEX uq_access_name ON public.access USING btree (name) WHERE ((kind)::text = ANY ((ARRAY['token'::character varying, 'device'::character varying])::text[]));
CREATE UNIQUE INDEX uq_bins_place ON public.bins USING btree (rack, tier, "position");
CREATE UNIQUE INDEX uq_lines_live ON public.lines USING btree (stay) WHERE ((state)::text = ANY ((ARRAY['waiting'::character varying, 'picked'::character varying, 'packed'::character varying, 'short'::character varying])::text[]));
CREATE UNIQUE INDEX uq_orders_number ON public.orders USING btree (number, channel);
CREATE UNIQUE INDEX uq_parcels_open ON public.parcels USING btree (at_table) WHERE ((state)::text = 'open'::text);
CREATE UNIQUE INDEX uq_slots_number ON public.slots USING btree (section, number);
CREATE UNIQUE INDEX uq_stays_open ON public.stays USING btree (code) WHERE ((state)::text = 'stored'::text);
CREATE UNIQUE INDEX uq_stays_turn ON public.stays USING btree (code, turn);
CREATE UNIQUE INDEX uq_stops_place ON public.stops USING btree (round, "position");
CREATE TRIGGER ledger_kept BEFORE DELETE OR UPDATE OR TRUNCATE ON public.ledger FOR EACH STATEMENT EXECUTE FUNCTION public.ledger_kept();
ALTER TABLE ONLY public.aliases
    ADD CONSTRAINT fk_aliases_code FOREIGN KEY (code) REFERENCES public.slots(code);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT fk_bins_rack FOREIGN KEY (rack) REFERENCES public.racks(name);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT fk_bins_section FOREIGN KEY (section) REFERENCES public.sections(code);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT fk_doubts_item FOREIGN KEY (item) REFERENCES public.items(id);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT fk_items_photo FOREIGN KEY (photo) REFERENCES public.photos(hash);
ALTER TABLE ONLY public.labels
    ADD CONSTRAINT fk_labels_parcel FOREIGN KEY (parcel) REFERENCES public.parcels(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_order FOREIGN KEY ("order") REFERENCES public.orders(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_parcel FOREIGN KEY (parcel) REFERENCES public.parcels(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_round FOREIGN KEY (round) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_stay FOREIGN KEY (stay) REFERENCES public.stays(id);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT fk_listings_item FOREIGN KEY (item) REFERENCES public.items(id);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT fk_listings_line FOREIGN KEY (line) REFERENCES public.lines(id);
ALTER TABLE ONLY public.looks
    ADD CONSTRAINT fk_looks_closer FOREIGN KEY (closer) REFERENCES public.looks(key);
ALTER TABLE ONLY public.looks
    ADD CONSTRAINT fk_looks_photo FOREIGN KEY (photo) REFERENCES public.photos(hash);
ALTER TABLE ONLY public.looks
    ADD CONSTRAINT fk_looks_stocktake FOREIGN KEY (stocktake) REFERENCES public.stocktakes(id);
ALTER TABLE ONLY public.orders
    ADD CONSTRAINT fk_orders_parcel FOREIGN KEY (parcel) REFERENCES public.parcels(id);
ALTER TABLE ONLY public.resolutions
    ADD CONSTRAINT fk_resolutions_stocktake FOREIGN KEY (stocktake) REFERENCES public.stocktakes(id);
ALTER TABLE ONLY public.slots
    ADD CONSTRAINT fk_slots_bin FOREIGN KEY (bin) REFERENCES public.bins(name);
ALTER TABLE ONLY public.slots
    ADD CONSTRAINT fk_slots_section FOREIGN KEY (section) REFERENCES public.sections(code);
ALTER TABLE ONLY public.stays
    ADD CONSTRAINT fk_stays_code FOREIGN KEY (code) REFERENCES public.slots(code);
ALTER TABLE ONLY public.stays
    ADD CONSTRAINT fk_stays_item FOREIGN KEY (item) REFERENCES public.items(id);
ALTER TABLE ONLY public.stops
    ADD CONSTRAINT fk_stops_bin FOREIGN KEY (bin) REFERENCES public.bins(name);
ALTER TABLE ONLY public.stops
    ADD CONSTRAINT fk_stops_line FOREIGN KEY (line) REFERENCES public.lines(id);
ALTER TABLE ONLY public.stops
    ADD CONSTRAINT fk_stops_round FOREIGN KEY (round) REFERENCES public.rounds(id);
