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
    listing text NOT NULL,
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
CREATE TABLE public.learned (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    listing text NOT NULL,
    item character varying(64) NOT NULL,
    line character varying(64) NOT NULL
);
CREATE SEQUENCE public.learned_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.learned_n_seq OWNED BY public.learned.n;
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
ALTER TABLE ONLY public.learned ALTER COLUMN n SET DEFAULT nextval('public.learned_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
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
INSERT INTO public.access VALUES (1, '56f20d3579e1fb9a24bd0ce137ef88b25e5cba589374ab03c89e337990914aa5', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$1J3NIKKWBDsTlJGKmGesng$FSYsZjG6RW2i36d4KauE3M5sBCeBKblIbLkAh4Zo1Iw', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, 'c0ad42226501c5bc58b344e1d41c1422d40d6f722534989fb9beabddf6444e50', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '281a84de337fd14538d48f505fb504adea932dd1b652501600243eec16e58ec2', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'ae7412534396771c5f22ae83516f9237a1319ba594c7b7ba306c41401aadb63c', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'c907e8260e6ff797cfacbbdb8718f6a48d687a468a01f9849bf20faca98ea2d2', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/7416a673058ddc40', '{"id": "7416a673058ddc40", "item": "807aea115a918f57", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '559ac4d47b64e0f7', '140317c857d6df09', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:56:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '1c576236e21895b8', 'cceec3a3b482e0cf', 'missing', 'Not in its bin', '2026-03-02T15:24:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '1523980868e58e03', '3df054c1f8b387e5', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:55:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '138971d85cd2ad79', '7ecd37d903363683', 'missing', 'a count of section:S did not find it', '2026-03-02T16:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '09b159be610fa151', 'ce5e603c30c5d41a', 'missing', 'a count did not find it', '2026-03-02T16:34:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 183, '4aca396c5d8664b3c9b73723be6552c0d49dfecb4b1f9281f6ee6d1c9cebac43', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'ca66316bea0225f1');
INSERT INTO public.items VALUES (3, '552fa766fdb095fb', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '6505270746a07700', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, 'e42eb22707f59a36', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, '6c2028f4c5ecada7', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '3b66be45a93f8556', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '48204fe2dfc917e2', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, '5823134899e185d9', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, 'c0296187755e6760', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, '38372f8cecac9b10', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, 'ffe5d8ca33725899', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '640e31d1aabda555', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '201f16dc17b7141f', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '46151a8b091ea185', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, '79412e30ab896d09', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, 'fddc95f7855b5356', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, '610daf67d2274a31', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '7ecd37d903363683', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, 'f003be8d21b99d3c', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, 'b50c099b430e4ff5', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, 'cad39e70bf51863e', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, '8adbdf5f7f3bb168', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, 'd66401d9f12df505', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, 'df786954254268bc', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, 'e81c0488d359d816', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, 'cceec3a3b482e0cf', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, 'fdd91f6198ac3c78', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '1d01e7df62cc18d5', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, '140317c857d6df09', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, 'ce5e603c30c5d41a', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '06d363b2f5657c62', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '4306a61c96ba3798', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '0319a0ea26f2f4f9', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, 'e80b9dccd621f145', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, 'b991f3c804375965', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '908c37483334a329', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, 'b60e6c36ea4776c5', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, 'a681c9fd857881e7', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, 'bcee8ec0c662ae17', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, 'da7b617daa2fa96c', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, 'ecf228a9d7ff5882', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, '7d55e067ea7ceba0', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, '9abd17b3fd4288dc', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, 'adbef2c9b395237d', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '807aea115a918f57', 'Brass bell', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, 'b8cd26629cd44246', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, '76c8e64786162668', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '3df054c1f8b387e5', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, 'fc93aa9ca41ae8a8', 'Carbide lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, '900b248f1426d792', 'Rear lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, 'caeb8a693b05ed09', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, 'dc4a5a6e5a4245a7', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T11:29:00.000000+00:00');
INSERT INTO public.items VALUES (52, '5e2a7fa9260dde04', 'Rear wheel', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', 'a7694332794f0a82', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 76c8e64786162668 - d3bc00db4123","slots D001 on_item e5405bc28ff8","stays 4aaa594deff656fd stored 57f71172e8ec"],"stay":"4aaa594deff656fd","title":"Rear derailleur 1","turn":1}', 'c49af6f0ea2da575e0efb7f76ee3ff4f5c89dcd06a25115d9eb6adf9760142d5');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items b8cd26629cd44246 - 5dab69951a10","slots D002 on_item 4f79f524f247","stays 6a343a89533e466d stored f55fd9284ba3"],"stay":"6a343a89533e466d","title":"Rear derailleur 2","turn":1}', 'b0fbfd6cd0fb689ed9ac172e6374697a08b3dce13a4d95b523c9ea4b8079c0e1');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 552fa766fdb095fb - f21c2ede1dd5","slots D003 on_item 6de523ac8b4d","stays 5987170dd4f25f55 stored 16c6d49e0304"],"stay":"5987170dd4f25f55","title":"Rear derailleur 3","turn":1}', '353fa78cdb513ccf648f4d082dc10cb1c74b01a9729436169aedf5fa9cd4004c');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 6505270746a07700 - 36164c909e6c","slots D004 on_item ec423998da46","stays 59f635cc950c4274 stored ec95853fb283"],"stay":"59f635cc950c4274","title":"Rear derailleur 4","turn":1}', 'dae4c8427b40270756d541b52f303ef14b947b0f7d2e67ab1061333c1673bfad');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items e42eb22707f59a36 - c0c79c38c1d6","slots D005 on_item 91ad3faf88d6","stays 81c0e2fe8b8a343f stored 63f5d5cceebd"],"stay":"81c0e2fe8b8a343f","title":"Rear derailleur 5","turn":1}', 'ca3512bbc7c15858d965798b18d313f961a2ab956cf373d53238d766d1c23de6');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 6c2028f4c5ecada7 - cab503077be7","slots D006 on_item 1fadb568d6a5","stays f5d68220f0e590fa stored b7209644d4ce"],"stay":"f5d68220f0e590fa","title":"Rear derailleur 6","turn":1}', 'f69de2a4d086f29288b71348817baceb7cf2b1efc303f6b4b916e6b7f29ee04f');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 3b66be45a93f8556 - dad7f6fd131e","slots D007 on_item 536077e3b728","stays 832e3ffc0d4c5212 stored d8d382ec012e"],"stay":"832e3ffc0d4c5212","title":"Rear derailleur 7","turn":1}', 'fd7066986f83b2cc4368fdb5326b26aee00b96f42bfc2a657740adce523ba63f');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 48204fe2dfc917e2 - b1b318b8daf0","slots D008 on_item facb453cba22","stays 0d5536c6567390a8 stored 8feb368568af"],"stay":"0d5536c6567390a8","title":"Rear derailleur 8","turn":1}', 'c00d96eac92d50f8f848b1d6f63f9aa99b153e3dc24706c3825a87bf9a688965');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 5823134899e185d9 - ac626c1c6e59","slots D009 on_item 7434bf04ccf2","stays dc42636b70103528 stored 975684020fd0"],"stay":"dc42636b70103528","title":"Rear derailleur 9","turn":1}', '72a64a379a37aa374cc3af2a49478df452c806beed178298af5a2bbbc2f32063');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items c0296187755e6760 - 5644fb1e9804","slots D010 on_item 1f8fd3ebaf8b","stays 2b8ee91c23a6916d stored 095017354151"],"stay":"2b8ee91c23a6916d","title":"Rear derailleur 10","turn":1}', '6ea50a64363680b80842157a87e93ca16145d3999b9283f26ec664b9fee0d1b1');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 38372f8cecac9b10 - 3516946f7315","slots D011 on_item d451255e38b7","stays d8d9b5070357982f stored c2eb8c502664"],"stay":"d8d9b5070357982f","title":"Rear derailleur 11","turn":1}', '2066ef89710050ec90d6ec1266c7c725402809eee9e214b5c9b87382de2206db');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items ffe5d8ca33725899 - 0d0314c62da2","slots D012 on_item bdbda5bb2b7a","stays 79a174479564be42 stored db717cd7405c"],"stay":"79a174479564be42","title":"Rear derailleur 12","turn":1}', '5dd6c0156bccbad6d6c42760fc0cd262aca8b7f27d1fc618c186e28ae223d662');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 3df054c1f8b387e5 - a9adc10f1eff","slots S001 on_item 76dcd853e3e0","stays 4e1d2fbb14fdc843 stored 1cf048a00d86"],"stay":"4e1d2fbb14fdc843","title":"Leather saddle 1","turn":1}', '77aca2462e9f888396b30f0350e481514b279fda3ccd786a1fc4edd79743a033');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 640e31d1aabda555 - edaec438ebd4","slots S002 on_item 6fb94c47a50d","stays dacdde6a9811b569 stored 01264fb8f1c2"],"stay":"dacdde6a9811b569","title":"Leather saddle 2","turn":1}', '6d7402415d92bc7ae70538207d6766035710840009045d3f80de83bb559b0c7e');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 201f16dc17b7141f - d44fede730c5","slots S003 on_item e00808332634","stays 49a3b48e72c1242c stored 4dab2197037f"],"stay":"49a3b48e72c1242c","title":"Leather saddle 3","turn":1}', '8f996edfbf1fa32e3ea5cad592b8ab00103bf7d1923e036d7e0ac66044815701');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 46151a8b091ea185 - 56c11d83debd","slots S004 on_item db1aa8005467","stays 6553a8ae6f0ac6a1 stored b739b672e51f"],"stay":"6553a8ae6f0ac6a1","title":"Leather saddle 4","turn":1}', '72082120ab8ef2af258dae03d3083ab5d524549da62bfd1363567f7393695484');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 79412e30ab896d09 - f259e70d92b0","slots S005 on_item ec548ef84f99","stays baaf3183277e5fbd stored bef695cad56b"],"stay":"baaf3183277e5fbd","title":"Leather saddle 5","turn":1}', 'a3703c93abfecd896e33d6a82bcc059a98741c7a76d7116e6a00181ecc624656');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items fddc95f7855b5356 - 7192165b7be0","slots S006 on_item dc9bc74eb63a","stays d35601666caaae0f stored 02c90fa6c3ef"],"stay":"d35601666caaae0f","title":"Leather saddle 6","turn":1}', '548ba3ef2e10b250694267d557e35c727c0703094961fc5532b8cfabd5a91070');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 610daf67d2274a31 - 13b11cb3a7d5","slots S007 on_item 075fd8b9fecf","stays 8fb3c02b055d719e stored 05d92895a879"],"stay":"8fb3c02b055d719e","title":"Leather saddle 7","turn":1}', '4f009e4cb686b777366584e8dde8bc56184aa4ec5174ea35b0b8ac2b7b30a5fb');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 7ecd37d903363683 - d775036a4ca7","slots S008 on_item 39fdb847a4bc","stays 9e2b6739771e70b9 stored 1b0a889f7be4"],"stay":"9e2b6739771e70b9","title":"Leather saddle 8","turn":1}', '5a6e2424f3c794e457fc796257b4fa6ef3d5d64dbb260cafffb53a5fa79f7ac5');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items f003be8d21b99d3c - 2e5996df303d","slots S009 on_item 62c79df275b3","stays 1a4159d9cd8f6897 stored 0eacb0dbc84c"],"stay":"1a4159d9cd8f6897","title":"Leather saddle 9","turn":1}', '79e4e0564d6d943ddab41fba92af2cb0203c9de8debf27ebd8d094f7b62df304');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items b50c099b430e4ff5 - ffee898eab28","slots S010 on_item 1fd8d85fa1c4","stays 28633c6df0bce2a6 stored c4ee047cbf9a"],"stay":"28633c6df0bce2a6","title":"Leather saddle 10","turn":1}', 'b60bae81228ef7f4e8b6adb1c60ad037abf8623e07bff8a956974140df12e361');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items cad39e70bf51863e - 5fc0c4c92025","slots S011 on_item e59577c4b2a7","stays dc6e36cf1f70eded stored f20846603ad2"],"stay":"dc6e36cf1f70eded","title":"Leather saddle 11","turn":1}', 'b240804d0bd1cb32f8b3b2435c5795ec2e5dac1ddb01c50df83e0d0ff3cf3e1b');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 8adbdf5f7f3bb168 - 0d548e848816","slots S012 on_item 9bae442e2436","stays 6548f86d3597804c stored c4c246251046"],"stay":"6548f86d3597804c","title":"Leather saddle 12","turn":1}', 'fffd7ddcafb18014cfe38feb571b05b0058fb85d6de9d31b213e3069188ae8ce');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items d66401d9f12df505 - 332db29230d5","slots L001 on_item 43c5cdfaa8e4","stays faab2e8c1c177ae3 stored 554130fcf4da"],"stay":"faab2e8c1c177ae3","title":"Dynamo lamp 1","turn":1}', '0dffda28cc70f3ec21ec0b117c8d679b6e8f0638e758ceaf2e10a55aa6297d97');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items df786954254268bc - bd95533452ec","slots L002 on_item ea8e77c8b06f","stays 5cbf1d2879ca6637 stored e7b0a4d33c8a"],"stay":"5cbf1d2879ca6637","title":"Dynamo lamp 2","turn":1}', 'cf3ed0a5a21d99b060df4f2b079d52004c4ec5533352facdf6d15d2ac8a3ed24');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items e81c0488d359d816 - e5a711f8b35e","slots L003 on_item c35e4c005cda","stays e060e0306b41c5a1 stored 08cdc9b4afde"],"stay":"e060e0306b41c5a1","title":"Dynamo lamp 3","turn":1}', '9bb2e9b389e446639a4cd87aee3328739cf1aa8fd9a61dd685c5824a37355bde');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items cceec3a3b482e0cf - a9ca8caa8c5a","slots L004 on_item 70a88e4a366b","stays 77af39d227c4ee22 stored 097e6c416051"],"stay":"77af39d227c4ee22","title":"Dynamo lamp 4","turn":1}', '04b2e7aa4a55a300688c34edafa5d7e7c6ebe3d22ededa3f12cb0adddebe3d84');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items fdd91f6198ac3c78 - c1239c9d8adc","slots L005 on_item 6261d94de1ef","stays cb42a592daa5f779 stored ebf41672aeb1"],"stay":"cb42a592daa5f779","title":"Dynamo lamp 5","turn":1}', '84f4ccd469051593382aded8f0962cb01e33b01b78be47e0ef88d4e560f5d4c0');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 1d01e7df62cc18d5 - 6cb83adf75e6","slots L006 on_item b67b470f3637","stays afe45420ccb515ec stored 5d75d9070004"],"stay":"afe45420ccb515ec","title":"Dynamo lamp 6","turn":1}', 'ee6b67a2d05c68e3cd1a73113efd73a089c15befcff04706476d07ab89746267');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 140317c857d6df09 - 53ec6f70332e","slots L007 on_item 767524982af4","stays 1b4334d0625d589e stored 5ce3345c5de0"],"stay":"1b4334d0625d589e","title":"Dynamo lamp 7","turn":1}', '0b82242c349f3b0c0688f1d53505257db2123c40699904060e0a9722adac5e94');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items ce5e603c30c5d41a - e1d218175dc8","slots L008 on_item b3b2d23a98b7","stays 01e825493cd867e0 stored f994960443ec"],"stay":"01e825493cd867e0","title":"Dynamo lamp 8","turn":1}', 'e29f11562fcecae9809fecff45d504d91948f9350e368cc4a421d5eac724dfa3');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 06d363b2f5657c62 - 896661bab62a","slots L009 on_item c3139144a3f8","stays 73547f2adc408624 stored fe629afd7cf2"],"stay":"73547f2adc408624","title":"Dynamo lamp 9","turn":1}', '1b2fc93e4b7a448325342f527bbc3ca9ce97cfae484add1517107b15409b16f5');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 4306a61c96ba3798 - 3bbb8e5d0eb2","slots L010 on_item f8c13ae8aec4","stays a2921ad12b941b69 stored e9b817165a3c"],"stay":"a2921ad12b941b69","title":"Dynamo lamp 10","turn":1}', 'd2c296d8bde781ca5cee2e93b6352734b1af37ae12dd56bdf325b9396f329ceb');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 0319a0ea26f2f4f9 - 692b10be5464","slots L011 on_item 9d01c75c0f89","stays 27f409420b232e9b stored 02db4f034a0e"],"stay":"27f409420b232e9b","title":"Dynamo lamp 11","turn":1}', 'a4271d40f795f01a09e998f7daca2f9aecdb07f019861e47b462350da52445a2');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items e80b9dccd621f145 - 0fbb915619f9","slots L012 on_item 5373b19b101e","stays e3f14929c7ac75ee stored eea1dad606c1"],"stay":"e3f14929c7ac75ee","title":"Dynamo lamp 12","turn":1}', '14d5c3583ea878c76ab95ebed4a2a7513461dba0da5c292c9061331e908cb322');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items b991f3c804375965 - a58dad3f228f","slots W001 on_item 17dd342c2f6a","stays 690d521c4a1d0ee0 stored f54867823652"],"stay":"690d521c4a1d0ee0","title":"Front wheel 1","turn":1}', 'bd26756a786852ef242d0d9894de6e4a0402c23adc48a8ff07edcd667559ef5d');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 908c37483334a329 - 9474b50fa49c","slots W002 on_item 7ebfb8df41ca","stays 368047bc2de9f13f stored 410a74f54e91"],"stay":"368047bc2de9f13f","title":"Front wheel 2","turn":1}', '463a192d87f202f22d68e159c1351f5f0d1f36c97e875a0396bbe0e86531b2da');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items b60e6c36ea4776c5 - 17e029d7f6bb","slots W003 on_item f84a2674e962","stays f1f54c9a98e6092e stored 5caa00b44b9f"],"stay":"f1f54c9a98e6092e","title":"Front wheel 3","turn":1}', '25cb994d49b64d1418d256cca3efddbe4dfa158325d2a493852c3b7d490ad675');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items a681c9fd857881e7 - 7811371f1669","slots W004 on_item f45ed94fd55a","stays d31e5c8082e7c8db stored 530cd6a705a4"],"stay":"d31e5c8082e7c8db","title":"Front wheel 4","turn":1}', '00de26bab6a5376c69705728cdea83c26943b4cb48180596cd66471f60f69622');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items bcee8ec0c662ae17 - 124a71373736","slots W005 on_item a1fdfb2c692e","stays 0228e329c4cc2c6f stored 3087e307a6b7"],"stay":"0228e329c4cc2c6f","title":"Front wheel 5","turn":1}', '414932d509445fffa0bfdd7b651874fb6fb5e1a48919613bbec1d3710cd5274c');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items da7b617daa2fa96c - e9d9c76422a9","slots W006 on_item 3dd6244f0bee","stays b119d363dc917830 stored 94faeafbe33e"],"stay":"b119d363dc917830","title":"Front wheel 6","turn":1}', 'e586316c8bd505f7b3c4914817a885cb15dbe0d000a7101c829b3b0ec3ea87c6');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items ecf228a9d7ff5882 - 02af58c115d9","slots W007 on_item d52463b699e2","stays 0d04914ac940e046 stored 9a12ebc2d954"],"stay":"0d04914ac940e046","title":"Front wheel 7","turn":1}', '53975c223153eed2e021d8981ee0d290f6108aeabeae12ac31f7c2dd0b1b4752');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 7d55e067ea7ceba0 - 80fc3750dc13","slots W008 on_item 2e167460fb16","stays 27e3670e396d43c0 stored 3d22195d9569"],"stay":"27e3670e396d43c0","title":"Front wheel 8","turn":1}', 'f0b714141e7dce1ca82aa1219ea7306d3950434f91d8e9ffb73319168f5e659f');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 9abd17b3fd4288dc - 65b6f3841b0f","slots W009 on_item 597fc2f4b56e","stays cdb72401487ab360 stored f6a35266984a"],"stay":"cdb72401487ab360","title":"Front wheel 9","turn":1}', 'ea9fba08d9cce835828fd151eac2882b0dd2a03010044d779f67e2fcc4d836c7');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items adbef2c9b395237d - 09c96cce255a","slots W010 on_item 7d0365c2d2de","stays da3543c9500523f3 stored ae93cce22318"],"stay":"da3543c9500523f3","title":"Front wheel 10","turn":1}', '8ca89465d20b6a6e0a03f498d06c7a18699ab888fb1dc441288e6d94048ce50e');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items dc4a5a6e5a4245a7 - 500943f52c04","slots W011 on_item d3a26b640d71","stays fa119a2af2ef644b stored 5048f048d4cb"],"stay":"fa119a2af2ef644b","title":"Front wheel 11","turn":1}', '4fe10ecf32b54ea07ea7b9a446c480679bad54961a9dc91c888bec2bdc243a45');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items caeb8a693b05ed09 - 209d3eed379a","slots W012 on_item ac10bfb906d6","stays f6f7356dc4f843df stored 1e3ea515797d"],"stay":"f6f7356dc4f843df","title":"Front wheel 12","turn":1}', '9286741dcad77a015005a159f21d9166a0b4857e61b0fea89bb176283eb9df07');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:21:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"c567843da47e78a8"}', '24380158f0343c60d293307bb7ab5954c8757b9dfb1b91dfcfbfe08efb04b4de');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 807aea115a918f57 - d18a97a87f5c","slots D013 on_item 69b6f1c92d5d","stays 7416a673058ddc40 stored 815407da2be5"],"stay":"7416a673058ddc40","title":"Brass bell","turn":1}', '4c1b4c394eec2607517556969224d1168094f7a89e12b76fb24a966d16b45938');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items b8cd26629cd44246 - 1439b5cb18c1"],"stay":"6a343a89533e466d"}', '7605f0dbb0a95caee9bc02cdfc5986d8aa89bc46824fea773351b1cd7ba4dd16');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 28633c6df0bce2a6 withdrawn d9f20052663e","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"28633c6df0bce2a6"}', 'ffd109e92851ec2c21c0505be7eea04f3503923a828343683878c105bfe470e5');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays d31e5c8082e7c8db withdrawn 8e194d7427ea","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"d31e5c8082e7c8db"}', 'ada04f0ad4527b1619051146d222af166400979639927bc40ef72f6a1e1ac218');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"53df814327703932","now":["stays 1a4159d9cd8f6897 moved 251a92721c8e","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 53df814327703932 stored 2319eb18d87b"],"stay":"1a4159d9cd8f6897","to":"S013"}', 'd81e2a27fc4bd5b40ac8fa3eb0ab520f72fc3927a5848089a4dab3a1662de750');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 76c8e64786162668 - 7bce7ae5052c"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"4aaa594deff656fd"}', '6ee381356d91d226b344c648b3f640096f0132f9b8224f74a8b8ccb21b64fcdc');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 3df054c1f8b387e5 - 07a1df72ea52"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"4e1d2fbb14fdc843"}', '00aa77eb5287da9bee20f4a03a9fd0269a5fcb9279212d7dd723249411e40400');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items fc93aa9ca41ae8a8 - e5859c0b354a","slots L013 on_item 417a81be4bcb","stays 2fed9a0db9b7a5ac stored 66160fe1d578","items 900b248f1426d792 - 0f29f0b45371","slots L014 on_item 26405b275a18","stays aad514f0964ef6a2 stored 0624a0499bdc"],"stay":"2fed9a0db9b7a5ac","title":"Carbide lamp","turn":1}', '020c4a58893d316e4dc9a33255c38cd7dcf338fa9d5a9a992baa8ae6a317bf9f');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"aad514f0964ef6a2","title":"Rear lamp","turn":1}', '5d9063555370e4b21a2c1fa12b18bfb5254e25af1d5f338f3e9a209e20a0bcdc');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'f9183cc0695e32dd2b50590ab0f1f4bc227e9b4cc5b816827938380652457a08');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items caeb8a693b05ed09 - fcf5c0936838"],"stay":"f6f7356dc4f843df","until":"2026-12-24T23:59:59+00:00"}', 'f91e6724816ec9178f42dbe536be10a3b0e43c82e4cf8b103fea84a1fccd221d');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items dc4a5a6e5a4245a7 - 6e04d5d8364c"],"stay":"fa119a2af2ef644b"}', '67d532c73c6929559f1f673d4fc359ef949f6f0aae35c39c71ce08dad9731981');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', 'f3849a48a1c69bb87ec6fc8cdffe3c3b2273564c03512b4b8405f68ae896e5a2');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '017670dd67cfdb5978c2359ba2b328fe6b07891daf06f3b468df71032642e7a8');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:36:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'cbff5a2cec5705f41ca0fc50a3c0f277ac5b55fef4daf9a70e821d2f642c645b');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:37:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '022fa76925eb990487f80adc289e06b058716db665e7306138a042dcd1868652');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '3810ea9304b322642c0b2d98d438ccb58489de7bd5a7c545859683ad7122733b');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2c1e7a7719a0b390","reference":"W001-01E","stay":"690d521c4a1d0ee0"},{"hold":null,"line":"8ac61e8754bf38d5","reference":"W002-016","stay":"368047bc2de9f13f"}],"now":["orders a0137e9dcf7af88d - 1e8941d4dd2c","lines 2c1e7a7719a0b390 waiting a837fb5e6945","lines 8ac61e8754bf38d5 waiting fec3d31d29da"],"number":"B-01","order":"a0137e9dcf7af88d"}', 'f2a3a1915a155ac6f1a76ca1da81c58b8dd6240aee2e235f3195dc5afc588060');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"26fd16ef0320149b","reference":"S002-013","stay":"dacdde6a9811b569"},{"hold":null,"line":"d12d8f8decad06aa","reference":"S003-01W","stay":"49a3b48e72c1242c"}],"now":["orders 34edd7030d9d63b8 - 2b3d6d370c10","lines 26fd16ef0320149b waiting 4636abc6e264","lines d12d8f8decad06aa waiting 07601bb09b5c"],"number":"B-03","order":"34edd7030d9d63b8"}', '42ac7bad501abfe63bbf45dd71f5c0b8fba8f0c0528ae3b331e000641bf20637');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8d945f221bdf719f","reference":"S004-01O","stay":"6553a8ae6f0ac6a1"},{"hold":null,"line":"25e67bb7704a37bb","reference":"S005-01G","stay":"baaf3183277e5fbd"}],"now":["orders 473801f8b7ac86d2 - 57613850b510","lines 8d945f221bdf719f waiting 1b0b76349969","lines 25e67bb7704a37bb waiting a8e0bab2d6a6"],"number":"B-04","order":"473801f8b7ac86d2"}', '29374d14de0e929dfe2315545a5f8832132c229090d7f8a3f8d7bf2544a29a5b');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"ed7bb461c031bc3a","reference":"L002-017","stay":"5cbf1d2879ca6637"}],"now":["orders ea595b552c718997 - d24737231574","lines ed7bb461c031bc3a waiting 83655f47ebd8"],"number":"B-05","order":"ea595b552c718997"}', '559f63f3abc549bdd353aa48cb3682d5ef4eb92f7725054f592b22bd581dd3ad');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:24:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 5ce9bc26772f40ff open 4b3bd906ce88"],"stocktake":"5ce9bc26772f40ff"}', 'baa3457a8ec7500a471cb13cabcb4e6789a86abf4598a7d24e02cd3014d98b14');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5727e8d83ba422ea","reference":"L003-010","stay":"e060e0306b41c5a1"}],"now":["orders 80c38f8773053ab4 - 31c325f2d6e5","lines 5727e8d83ba422ea waiting 2eb673fed166"],"number":"B-06","order":"80c38f8773053ab4"}', '303b3423cfb70e85dc05fb8271cb076c7b424fca3dc89dc4188b3bd8e6cf992f');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"16cd36c29fdf021f","reference":"L004-01S","stay":"77af39d227c4ee22"}],"now":["orders 5532ffd56e42ad0d - cbb05079103e","lines 16cd36c29fdf021f waiting ce8d3ad8e973"],"number":"B-07","order":"5532ffd56e42ad0d"}', 'd33d2f3fe9ae70a759049089c581637d85c9b7f047b31a99daa19c887444185c');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9664a0c024c3f640","reference":"L005-01K","stay":"cb42a592daa5f779"}],"now":["orders d47404404a0d423a - 8e162e1f8ccb","lines 9664a0c024c3f640 waiting 23498b1c1b5b"],"number":"B-08","order":"d47404404a0d423a"}', '6e636df1985cc48b98035497eb5a830fd383680180ad03a492f554044e1c0b31');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"448884e0a0d67da1","reference":"L006-01C","stay":"afe45420ccb515ec"},{"hold":null,"line":"6bb526e84294e3e2","reference":"L011-010","stay":"27f409420b232e9b"}],"now":["orders e44d6a54a1ee858a - 8add271d9172","lines 448884e0a0d67da1 waiting 1a923b07f60f","lines 6bb526e84294e3e2 waiting 1c3a4fbc5e4c"],"number":"B-09","order":"e44d6a54a1ee858a"}', '79b80abdb5e8227c595b84fd5c3ae0be54bee45ae687fb697776e28e8a26a13a');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d4b837e2be518586","reference":"S006-018","stay":"d35601666caaae0f"}],"now":["orders 0482fced535c9325 - 45a91b286373","lines d4b837e2be518586 waiting 95784c09a604"],"number":"B-13","order":"0482fced535c9325"}', '069f7bc396dbadd3bad8134d23eaf05ff98edb843b493937df50a86af122f9b8');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0518a475dc00f2aa","reference":"L007-014","stay":"1b4334d0625d589e"}],"now":["orders b59872d32bde7e73 - f954223c711a","lines 0518a475dc00f2aa waiting 1e9b5f146b10"],"number":"B-17","order":"b59872d32bde7e73"}', '239708381a9a125750272b8057f56d7168bd86949c1409b438ee04067adb8651');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9960991ad80068ce","reference":"D009-01B","stay":"dc42636b70103528"}],"now":["orders e7283bb2226be1a5 - 5e3e08c6d579","lines 9960991ad80068ce waiting 5bf8e49befe7"],"number":"B-18","order":"e7283bb2226be1a5"}', 'e5264ca69ea872650a88212fb1392bc1e122c1988f8a6e796c5931bea320039e');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9d13570c5da3999e","reference":"W006-013","stay":"b119d363dc917830"}],"now":["orders 7d1d2b1ca22839c0 - 13c156c697c6","lines 9d13570c5da3999e waiting f833ab12cc7a"],"number":"B-21","order":"7d1d2b1ca22839c0"}', 'f64d0198f6503c147c55cae3c33d68a37fc62cb5c93001f7c69b4f83d7d8f40e');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7527878e0f8daf0b","reference":"S007-01Z","stay":"8fb3c02b055d719e"}],"now":["orders 5eb628b167d9c09b - 8f85021eb6c3","lines 7527878e0f8daf0b waiting 542f9374e8c4"],"number":"B-22","order":"5eb628b167d9c09b"}', '7e19f3e8807cb699bc4703f1da9e5210b8534d3ccc1227ff87c65bf915b6b24e');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c1e4bd8121713b45","reference":"W007-01W","stay":"0d04914ac940e046"},{"hold":null,"line":"3411b02cf8cd4330","reference":"W008-01O","stay":"27e3670e396d43c0"}],"now":["orders 86b88f617b60224c - c21231ed1e6b","lines c1e4bd8121713b45 waiting df7432937804","lines 3411b02cf8cd4330 waiting ba4b096fe841"],"number":"B-23","order":"86b88f617b60224c"}', '6229f0b66f64226262f5948c599f4c8eb0367ca2934e21ed641154cf0edd73fe');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5dcadedd78c513e1","reference":"D008-01J","stay":"0d5536c6567390a8"}],"now":["orders b4acd629d5c4caa3 - ba28d344e2a4","lines 5dcadedd78c513e1 waiting e122faf5bcd6"],"number":"B-26","order":"b4acd629d5c4caa3"}', 'f5f47cf0935b3ad732cb0d6346af0096dccbc2ec15a62e720a90e1e5ecc38e88');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"70edd985505da068","reference":"D003-01U","stay":"5987170dd4f25f55"}],"now":["orders aa6ebdfa45e00cc7 - 1d74ca1f2834","lines 70edd985505da068 waiting 66510480f31f"],"number":"B-30","order":"aa6ebdfa45e00cc7"}', '2a6d5f01d7e859680cbd89a11d2697f1101fdf08ad1fbaef75055c7ec1eee70d');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d567f0e4488b9b5a","reference":"D005-01E","stay":"81c0e2fe8b8a343f"},{"hold":"unknown_code","line":"80eed5529efb46a6","reference":"Z999","stay":null}],"now":["orders 944de7d7612a0d7e - ac8fceca1fc9","lines d567f0e4488b9b5a waiting 6d1976c35662","lines 80eed5529efb46a6 unbound 561cb836cc0a"],"number":"B-31","order":"944de7d7612a0d7e"}', '4b9d3d164a19702c81223c1e12fb75482527b975fcae8d90d5f32ff4fa7c086d');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5a0aad627ac802cb","reference":"D006-016","stay":"f5d68220f0e590fa"},{"hold":null,"line":"317356a1917ef9af","reference":"D007-01R","stay":"832e3ffc0d4c5212"}],"now":["orders 2137d921201ed301 - 94449cbb4228","lines 5a0aad627ac802cb waiting 6b65ab03c7d5","lines 317356a1917ef9af waiting 3ea9632951cc"],"number":"B-32","order":"2137d921201ed301"}', '4171a264d425e8c0f3ed4537cde746cfa1ea5a7d95a41b13b2481f40480af854');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"317356a1917ef9af","reference":"D007-01R","stay":"832e3ffc0d4c5212"}],"now":["lines 317356a1917ef9af waiting c49595d92d32"],"number":"B-32","order":"2137d921201ed301"}', 'b44815a2e655057ead6c27f26adbcb767112a4bda8f3cdea0fb2c9a540e19078');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"c1c8b798d0f9ccfb","reference":"lamp","stay":null}],"now":["orders b2dbfafb295b3391 - b7d12b106b11","lines c1c8b798d0f9ccfb unbound 97569bec4785"],"number":"B-33","order":"b2dbfafb295b3391"}', '39524bfe0afdb0f11bdc5a2a769989049fd283c1739bf5f3e9f6548d602f9110');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"787ab76966010b06","reference":"D006-016","stay":null}],"now":["orders e895af54a303ef22 - 8c04c23c2343","lines 787ab76966010b06 unbound 06cbcaff278d"],"number":"B-34","order":"e895af54a303ef22"}', '55041e3066b8d915e2512d01c47231fc3272d394865b0accdafcb1ff87215fe3');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"a06c0232fc1b7170","reference":"W004-01J","stay":null}],"now":["orders 86e2990d58c4d996 - 1becbc7d7d2e","lines a06c0232fc1b7170 unbound 88447b00d3d0"],"number":"B-35","order":"86e2990d58c4d996"}', '2340712ed074c6e2f82eb4c862740eb6f13cb2fe55f27f58e8c591d9e8a8768d');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"e67d0c7c4799303a","reference":"L015","stay":null}],"now":["orders 40d176ee9b4f3d3e - f45d384f863f","lines e67d0c7c4799303a unbound e3df1e8494e4"],"number":"B-36","order":"40d176ee9b4f3d3e"}', '6b0a30e664556be6432521c91875f9379f6192c92b71839e5703737b34aa9d79');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"160b49dae7da04a7","reference":"W005-01B","stay":"0228e329c4cc2c6f"}],"now":["orders 156331abb64d5fd0 - 2d32bd187ce3","lines 160b49dae7da04a7 waiting cbb8281dee4b"],"number":"B-37","order":"156331abb64d5fd0"}', 'e86d05930becfb6fa1ebc1521bef27fee9fa79538fc65cba2d59819851b648e9');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"160b49dae7da04a7","now":["lines 160b49dae7da04a7 waiting f85d0972726e"],"stay":"0228e329c4cc2c6f"}', '19c2b0bc5c9d398975d6dac8742feb40e32b845cbbaae2958c73c8de43b3101a');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:56:00.000000+00:00', 'doubted', 'boss', '{"doubt":"559ac4d47b64e0f7","doubt_kind":"not_this","item":"140317c857d6df09","now":["doubts 559ac4d47b64e0f7 - b90b13b8b250","lines 0518a475dc00f2aa waiting 25764283014b"],"words":"Another lamp, by the photo"}', '3ed4d59be0bb2325fc7ed16c5dc5ae91af1aa3240b5e0d077637e7acbcb28691');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'held', 'boss', '{"line":"0518a475dc00f2aa","why":"Another lamp, by the photo"}', 'd01ab4284d09e165098f503ffb0e1b5b5a0217af11881f3e954b529391e5fd2e');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["9664a0c024c3f640"],"now":["lines 9664a0c024c3f640 cancelled b738c1d909d9"],"number":"B-08","order":"d47404404a0d423a"}', '28a0307f505270ce4ade6ab9d319485c7e65fab2b7ce357a13b787039ca7961f');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'cancelled', 'boss', '{"lines":["9d13570c5da3999e"],"now":["lines 9d13570c5da3999e cancelled 83cc5c15956a"],"number":"B-21","order":"7d1d2b1ca22839c0"}', '490c7bb449a4b253a3c472906578c4b40cf946814d48682a27d5fe7a1022ebeb');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'revived', 'boss', '{"line":"9d13570c5da3999e","now":["lines 9d13570c5da3999e waiting f833ab12cc7a"],"stay":"b119d363dc917830"}', '5d192c5f9517def01e87ce46ea64d92c32d9e4d50b2e90669240407492928b1b');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"7892ce9580863d93","now":["stays 0d5536c6567390a8 moved 1a0b9423e166","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 7892ce9580863d93 stored 474ebfcfcb9a","lines 5dcadedd78c513e1 waiting f02b3a5be21c"],"stay":"0d5536c6567390a8","to":"D020"}', '436a9818c6275d7d58fbce9d2387f52a9739272bb7dcf0e8819852d026bcf85c');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"babd84a00ae43986","reference":"L012-01S","stay":"e3f14929c7ac75ee"}],"note":"Rings at noon","now":["orders 32327f9e918cc3b4 - 1a5d943339f9","lines babd84a00ae43986 waiting cee8e6b9256f"],"number":"Sale L012-01S","order":"32327f9e918cc3b4"}', '5b10ac8c029b244ba338ca7258d4761f2b729930ec78b8519b84669b9196896a');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"14568d0c65bf2217","reference":"S012-01O","stay":"6548f86d3597804c"}],"now":["orders eac3f16817cb9a0d - 5e43ad6e5e6b","lines 14568d0c65bf2217 waiting 88614d336ca2","orders 9d4d55dc7c0ef33e - 44476736806e","lines a78be8287d88a835 unbound a1bfeac181a5"],"number":"F-1","order":"eac3f16817cb9a0d"}', 'ed9c0fcb08728f0621698a7f4dd3dfe83ee53185e495d8afeea526cb7c51485e');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"a78be8287d88a835","reference":"","stay":null}],"number":"F-2","order":"9d4d55dc7c0ef33e"}', 'c994d81d9bf49266efd73e5358747965271f0dad3ea6da9813dc992f6eadd31d');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'round opened', 'boss', '{"lines":["2c1e7a7719a0b390","8ac61e8754bf38d5","26fd16ef0320149b","d12d8f8decad06aa","8d945f221bdf719f","25e67bb7704a37bb","448884e0a0d67da1","6bb526e84294e3e2","d4b837e2be518586","7527878e0f8daf0b","c1e4bd8121713b45","3411b02cf8cd4330"],"now":["rounds aabcf650cc0b0555 open 067f61484ee4","lines 26fd16ef0320149b waiting 1e93bdeea0ba","lines d12d8f8decad06aa waiting 4404682fb94f","lines 8d945f221bdf719f waiting d5c6c0e6d1a2","lines 25e67bb7704a37bb waiting 14dec4eaac51","lines d4b837e2be518586 waiting 53f2613397b2","lines 7527878e0f8daf0b waiting 2b5043edbb28","lines 2c1e7a7719a0b390 waiting 35fabce6f7a9","lines 8ac61e8754bf38d5 waiting 1177cac47a4c","lines c1e4bd8121713b45 waiting 4d5c75a1a6ad","lines 3411b02cf8cd4330 waiting 28571bc64fc1","lines 448884e0a0d67da1 waiting 959419ccdb3a","lines 6bb526e84294e3e2 waiting 26c0ebcf9b47"],"round":"aabcf650cc0b0555"}', 'c13148243a598350eaae3726d1dc1df94c426733dd3ffa3e9ac000fb1c314851');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 98b668495a2e","scans free-D004 - 0332fb64c923"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '8f2de4c3a7404eb4deae3a171aced1927971de39c3dc9e54ce8b498b76baac56');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"2c1e7a7719a0b390","line_state":"picked","now":["slots W001 on_item 7456a9898875","lines 2c1e7a7719a0b390 picked 7c0e7c807227","scans pick-W001 - bd26cb842801"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '603e46c3a83f10efa4981b8bb57770aa2b47e6758ae8906c28906b60d4f461a4');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"8ac61e8754bf38d5","line_state":"picked","now":["slots W002 on_item 16010c9f6a05","lines 8ac61e8754bf38d5 picked f7131192529c","scans pick-W002 - e4b717aba513"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'e5246c07c260f94334215b984e3e5847e05c49944d7ee450d485d29063d4e52f');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"26fd16ef0320149b","line_state":"picked","now":["slots S002 on_item d63c647f93a8","lines 26fd16ef0320149b picked c8004452d998","scans pick-S002 - 0518f0294f92"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '3e9e5d18318a8b8611670965bb142ae27a74e3e34b31ca1c5e6b9feea346c29b');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"d12d8f8decad06aa","line_state":"picked","now":["slots S003 on_item 72ddec43b4f6","lines d12d8f8decad06aa picked 973165347e33","scans pick-S003 - 822e79390de8"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '60ae7b8a5229c105210ee16dfd77a25b66104942f2831cedcb9cc0817051a919');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"8d945f221bdf719f","line_state":"picked","now":["slots S004 on_item a70917cb5f9a","lines 8d945f221bdf719f picked 72e38ac6a32c","scans pick-S004 - e2dc45165da1"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'd3d5bc0b555536dc5f70d4e78c822699ff0c1dfbdbae7dbe4506c4a5c84252b7');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"25e67bb7704a37bb","line_state":"picked","now":["slots S005 on_item 552f389e3ec4","lines 25e67bb7704a37bb picked be1d29153c36","scans pick-S005 - 27a7978fd92c"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '6804d412b433b2e3b7ac4a89cbef4de60c4adac7381c3bb6d91257192ef1798f');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"448884e0a0d67da1","line_state":"picked","now":["slots L006 on_item f95dc92f8e0c","lines 448884e0a0d67da1 picked 61017249ac0c","scans pick-L006 - 486c64ab4dd6"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '405754b72a7dd82b317f9758faebb6a926aef16fc660418056d83178bde4bb47');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"6bb526e84294e3e2","line_state":"picked","now":["slots L011 on_item 0c12736a30e7","lines 6bb526e84294e3e2 picked f096cc52df76","scans pick-L011 - 13c3e8388193"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '789f9720fef30e6cf43e2757fb8d17c509196bd5f35cd7bf180389bdeaedb3c3');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"d4b837e2be518586","line_state":"picked","now":["slots S006 on_item aff87d7b55cb","lines d4b837e2be518586 picked 91403531bf68","scans pick-S006 - d2fc7f6d362a"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'a7d044b8894fce99487e150e576ea7cf43dec7fc14803db8977e3b66d2372b5b');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"7527878e0f8daf0b","line_state":"picked","now":["slots S007 on_item fd0610f99b8b","lines 7527878e0f8daf0b picked 68d769d8e816","scans pick-S007 - 79cd56110d38"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '6111d4060cbcfc14f3160c84e85c06af3efc52d2090a7804d3fde29ec0c57f8d');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"c1e4bd8121713b45","line_state":"picked","now":["slots W007 on_item 4a587b88a361","lines c1e4bd8121713b45 picked c0fe00a82406","scans pick-W007 - 8da1da0f69bb"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'c254044487db0df9128e9105a27ce88503fdd4fe635ebe96df2e55e0cb5327b7');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"3411b02cf8cd4330","line_state":"picked","now":["slots W008 on_item 6559cbf8d42b","lines 3411b02cf8cd4330 picked 3ce427120abd","scans pick-W008 - aa7bfb2a48fb"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"aabcf650cc0b0555","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '6ddfc7c963fbe1e5d5c8c676dd0b7c90b44e89066710bea7e7fdb6928b04cde3');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:02:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"3411b02cf8cd4330","line_state":"waiting","now":["lines 3411b02cf8cd4330 waiting 28571bc64fc1","slots W008 on_item b5edfe4a0bab"]}', '7acedccd5961606319dc0fb8c2ed247fb35cefb001eb4dceb6191c6c34cba5bc');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:05:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds aabcf650cc0b0555 closed 1a5d60129c2e"],"round":"aabcf650cc0b0555"}', 'e1adda5b99a34613a38084f37d4cb6b542fc8f4f4381eab25786607f0a3eba5a');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:08:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels a7694332794f0a82 open 3318312bb76f","orders a0137e9dcf7af88d - 9bf1005dda87"],"orders":["a0137e9dcf7af88d"],"parcel":"a7694332794f0a82","table":"main"}', '38ea580b6403fcc3f1e3af5ada834e3c0580a50aef20fa7baa0cb262382e4092');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"26fd16ef0320149b","line_state":"picked","now":["slots S002 on_item 704d00b73fe9","scans other-S002 - 303c37c0f071"],"order_number":"B-03","parcel":"a7694332794f0a82","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '0f9ca4a23f59963483690e73b510496c69eef0f8087168b9e0519de6fd5d9c40');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"2c1e7a7719a0b390","line_state":"packed","now":["lines 2c1e7a7719a0b390 packed c8a45617fb2e","slots W001 on_item aea3912a0ac4","scans pack-W001 - 7ec698d2eba5"],"order_number":"B-01","parcel":"a7694332794f0a82","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '54af165e088b47e139ba99a085f031a41127e73525331a2edabbc58bf40f71af');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:17:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 8ac61e8754bf38d5 released 1da7c00e3b49","slots W002 due c0f6c2285454","lines 2c1e7a7719a0b390 released 237f75bcff47","stays 690d521c4a1d0ee0 shipped ff338ce429d4","slots W001 due 8ae9acff1621","stays 368047bc2de9f13f shipped 0d3bd8060337","parcels a7694332794f0a82 closed 73977a5d81af","orders a0137e9dcf7af88d - 1e8941d4dd2c","scans pack-W002 - 22215a18f0c1"],"orders":["a0137e9dcf7af88d"],"parcel":"a7694332794f0a82","released":["W001","W002"]}', '4e4080ee1548855b0b6662df81201a547d31a07a1371af9e52e3c79a3353791f');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"8ac61e8754bf38d5","line_state":"released","order_number":"B-01","parcel":"a7694332794f0a82","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'bb4f60fc30115309cbec8a85a2cc0b2c2da9d2c953b80b43925d89a8efad5042');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"2c1e7a7719a0b390","line_state":"released","now":["slots W001 tray 08268466c133","scans back-W001 - 0527707032b1"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'fff0f4700b2deadc766d56e7e2616c49baecfa38a5857453057e5fdd231a4b93');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 5e2a7fa9260dde04 - 2ec1225f5347","slots W001 on_item 4bac4e5a272f","stays 0019521b413dbb31 stored da5a347557ad"],"stay":"0019521b413dbb31","title":"Rear wheel","turn":2}', 'f20baeb4d609963ec0297c4ad726425a91727e4e6fd893f531eab9dc78cd7cb7');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:27:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 93f849007e58"],"parcel":"a7694332794f0a82"}', '7e24c5266afbdae40283e53692221bbce681a4baf021387b4f356c87ec353059');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:30:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 8e46f79b458adf77 open 1a06165115a3","orders 86b88f617b60224c - 0499c80660de"],"orders":["86b88f617b60224c"],"parcel":"8e46f79b458adf77","table":"main"}', '0c1b5f0a727d5bc5d4bd2b478126619821f4c0cc50be622fde98f4da6eb7803a');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"c1e4bd8121713b45","line_state":"packed","now":["lines c1e4bd8121713b45 packed 74d5dd3a56a8","slots W007 on_item 8e907cbb2f03","scans pack-W007 - 169c2e4f02d7"],"order_number":"B-23","parcel":"8e46f79b458adf77","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '5561fa14eec08ee1924f5b52a6a4b5f3535677aaaab6fe0d153d3c0faea45928');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:36:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines c1e4bd8121713b45 released c99269f3ccf1","stays 0d04914ac940e046 shipped 2c1161fa21f9","slots W007 due 7c255dde1ff1","parcels 8e46f79b458adf77 closed 2cc401729c27","orders 86b88f617b60224c - c21231ed1e6b"],"orders":["86b88f617b60224c"],"parcel":"8e46f79b458adf77","released":["W007"]}', '296328307fd394be253662b0698ae01b73ae3b9ddebbaf03288f4530ca881962');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:39:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines c1e4bd8121713b45 packed 6f7c3700a942","stays 0d04914ac940e046 stored 9a12ebc2d954","slots W007 on_item 4b6b7bd121e4","parcels 8e46f79b458adf77 open 9089ad9bf03d","orders 86b88f617b60224c - 0499c80660de"],"orders":["86b88f617b60224c"],"parcel":"8e46f79b458adf77"}', 'a4d6a5a56b936a326fe3d20b671446bbf9f9d16a981ba0260b215ee7a509fc08');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:42:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines c1e4bd8121713b45 released c99269f3ccf1","stays 0d04914ac940e046 shipped f92ecde47630","slots W007 due 7c255dde1ff1","parcels 8e46f79b458adf77 closed a37ec1bf4f76","orders 86b88f617b60224c - c21231ed1e6b"],"orders":["86b88f617b60224c"],"parcel":"8e46f79b458adf77","released":["W007"]}', '83ef5f7380a98b7168c50f552c9abe35ce911f76c7a10474c1609088819f8007');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:45:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels aec1785e7eabd0e5 open be57123f5d28","orders 5eb628b167d9c09b - d58c93d4e179"],"orders":["5eb628b167d9c09b"],"parcel":"aec1785e7eabd0e5","table":"main"}', '41961c606324499e94299f1bac4cdf6e8e1ce2d15c54504f7c3659e9b32338f9');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:48:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels aec1785e7eabd0e5 dropped 68c06c683b89","orders 5eb628b167d9c09b - 8f85021eb6c3"],"parcel":"aec1785e7eabd0e5"}', '80820f638f92b7259db866d417da951e4898de9d0196571c489763270fe40464');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:51:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 3c195c742d118908 open 8bca6b86703e","orders 473801f8b7ac86d2 - e26fb06a305a"],"orders":["473801f8b7ac86d2"],"parcel":"3c195c742d118908","table":"main"}', 'e32f8b3183efd010ebdcc2e09705f2659b594aeff479445bea3d1c16d124609c');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:54:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"8d945f221bdf719f","line_state":"packed","now":["lines 8d945f221bdf719f packed c451210de37a","slots S004 on_item c8c767830b18","scans pack-S004 - 9ffce0360097"],"order_number":"B-04","parcel":"3c195c742d118908","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '9b36dbca960398ef5900c23aa37a051ebc89b9786d71b87587fafd8d16f8f791');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:57:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 3c195c742d118908 aside 9466f2811dc3"],"parcel":"3c195c742d118908"}', '233a17d6320308cb7e7744c51c76d7a91ea83a098394771f25d210ece820d322');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:00:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 06457cc75792d752 open c934ba14d3a1","orders e44d6a54a1ee858a - 9634c56b74bd"],"orders":["e44d6a54a1ee858a"],"parcel":"06457cc75792d752","table":"second"}', '0f0b1710f5dede8257496c2190bce56aa718be92314a6b93c6e131ad6038aed3');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:03:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"448884e0a0d67da1","line_state":"packed","now":["lines 448884e0a0d67da1 packed a6f940efc667","slots L006 on_item 969563e0b017","scans pack-L006 - 448ff99cda0d"],"order_number":"B-09","parcel":"06457cc75792d752","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '11f95a89807ca68044e4282b417c28da2321b0a0d78c07642a9202adef57d458');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:06:00.000000+00:00', 'cancelled', 'boss', '{"lines":["448884e0a0d67da1","6bb526e84294e3e2"],"now":["lines 448884e0a0d67da1 packed 564b7a1bf7e7","lines 6bb526e84294e3e2 cancelled b8d8f77b30f5"],"number":"B-09","order":"e44d6a54a1ee858a"}', '4dfba7a846dc71569329854d1021231645eb00d78281c227585dc425067f5f80');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:09:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 1dfe5d3fa27c3237 open f4920103b586","orders 34edd7030d9d63b8 - 70a00c173cc3"],"orders":["34edd7030d9d63b8"],"parcel":"1dfe5d3fa27c3237","table":"main"}', '6d9f9fc34a24b59787371d34d41fcae031a2b2f7cda1d59d0c86d28e1ac036dd');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"26fd16ef0320149b","line_state":"packed","now":["lines 26fd16ef0320149b packed e78f8543855d","slots S002 on_item cde08d5596ab","scans pack-S002 - df77e42c0627"],"order_number":"B-03","parcel":"1dfe5d3fa27c3237","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'cc07dd6538d186344733a7555d1c812c78e0a0fea9256de028c699e5ec87c494');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:15:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"d4b837e2be518586","reference":"S006-018","stay":"d35601666caaae0f"}],"now":["lines d4b837e2be518586 picked 63ec03c20848"],"number":"B-13","order":"0482fced535c9325"}', 'e31924fcf8da6b67fb42e34ee6fc25dc7ca497343271ff5783f015d295cb0532');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:18:00.000000+00:00', 'round opened', 'boss', '{"lines":["ed7bb461c031bc3a","5727e8d83ba422ea","16cd36c29fdf021f","5dcadedd78c513e1"],"now":["rounds d09fc1c714927383 open 19abfbb97f8d","lines 5dcadedd78c513e1 waiting 7fbcd19d4097","lines ed7bb461c031bc3a waiting 005c26a17686","lines 5727e8d83ba422ea waiting c983ad43ea33","lines 16cd36c29fdf021f waiting c28c10e7bb18"],"round":"d09fc1c714927383"}', '83c5fa53aa44c6120a653ef4f7c2c7ecbfa46785fd86cf17a7f1e6af6718c263');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:21:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"ed7bb461c031bc3a","line_state":"picked","now":["slots L002 on_item f08d83f2d155","lines ed7bb461c031bc3a picked ef2f09801b42","scans pick-L002 - cf0a7351322f"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d09fc1c714927383","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'c12202c8ebe5fd2c7f3347def307644ced0e7f3d1c7f0abfadbe79d1e60721d1');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:24:00.000000+00:00', 'short', 'boss', '{"line":"16cd36c29fdf021f","note":"Not in its bin","now":["lines 16cd36c29fdf021f short df27fc9ade8c","doubts 1c576236e21895b8 - 2b5aa5614777"]}', '1fb0ab580bf29a914e9a956c359f1364561fcc499128c62f062fbec838fa3581');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1c576236e21895b8","doubt_kind":"missing","item":"cceec3a3b482e0cf","words":"Not in its bin"}', 'd154f0bdebfa558ee47f3febcdabc1f1a4b1c60186f97362620efd59bc1297dc');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 81b15e412539"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"d09fc1c714927383","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '6b598f9b7cc7c8a96b62432b15920538eab16a3b43d9d044d7d116d6469434b7');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 1d20df42ee87"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"d09fc1c714927383","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '6aa39b42b637f56f12563af45fd730caa34dfdca889477fe3f28cddfd5664fb3');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 1f8b49948fe2"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"d09fc1c714927383","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'f48b9544de00598823e4c7180f7838ca8db78ec1f3744d6f6a93099bd90a145a');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '1f03540e764d96669a0dcddb080ca0664313c1a808f8af6f48becc21b168a376');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '969cef3fb1c0ecd3924d412411ef1088f8059ab65e3e3bf6de9f380ffcb9bc31');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"305567404601c477","reference":"D001-019","stay":"4aaa594deff656fd"},{"hold":"already_sold","line":"8a8402a7a452e92d","reference":"W002-016","stay":null}],"now":["orders 4546222c7ddff3d3 - 4480033e8c4d","lines 305567404601c477 waiting 33b2827cae92","lines 8a8402a7a452e92d unbound b41dac890754"],"number":"B-38","order":"4546222c7ddff3d3"}', 'fcaf96e2ed72352569a445010ba3d83819e759fac3296f533615de47e4666a6f');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"acab01bc1c7e4506","reference":"W001","stay":null}],"now":["orders 483fc0f62c2de57c - 177db8c48867","lines acab01bc1c7e4506 unbound e5e883716596"],"number":"B-39","order":"483fc0f62c2de57c"}', 'b93b8657b727b1bee3f3eacdb53803a821859cbd84a67782be9f9d248dde21a3');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:48:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes c567843da47e78a8 open 3ad31068e0e2"],"stocktake":"c567843da47e78a8"}', 'd4ca85f16f6ae1e9fd6939b58c05ffff34d517b57c3edade3abb4a9318ee0944');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:55:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - b16566812563","slots S001 on_item fd561f0f0012","doubts 1523980868e58e03 - fc71ce19fd98"],"photo":null,"place":"B-1-1","stocktake":"c567843da47e78a8","unread":0}', 'd799cfb19fec115b0d68bef005b69063ef2ec1509142abf43b4b9c84fddfb8ad');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:55:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1523980868e58e03","doubt_kind":"not_this","item":"3df054c1f8b387e5","now":["slots S003 on_item 306ae23abc33","slots S012 on_item 1a2c26c1ab7b","slots D010 on_item dd62d0f42546"],"words":"A count found another thing on its card in B-1-1."}', 'fe2dd35594c7c781ad59e217bd345bdc5174efacb95b1ad0b2ad8d06c95908c3');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:03:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - c238b6e95730","slots S011 on_item b8c458e99057","slots S013 on_item 36edd8b68272"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"c567843da47e78a8","unread":0}', 'baad10b8d38a580f1686b618f1e70efad297cca1f92ae297dbf67a9b45f7ccdd');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:09:00.000000+00:00', 'finding resolved', 'boss', '{"after":167,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 0ea2e46ebb96","resolutions c567843da47e78a8.elsewhere-S012 - d27d04ffdf69"],"reason":"","stocktake":"c567843da47e78a8","sure":false}', '7efd5635aa4f1621124818e57c435ee350df4baafd7aedae0df00920eccf9453');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:12:00.000000+00:00', 'finding resolved', 'boss', '{"after":168,"finding":"unknown-Q0771","how":"ignore","now":["resolutions c567843da47e78a8.unknown-Q0771 - d0dfcb7b48ca"],"reason":"A neighbour''s","stocktake":"c567843da47e78a8","sure":false}', '053dccdf3e4abcf274a941e1960d04783cf680f36822722c889ca4ee31dc37a2');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:15:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 5104c84d8ca2","resolutions c567843da47e78a8.missing-S008 - 6343e6c966ef"],"reason":"","stocktake":"c567843da47e78a8","sure":false}', '775f90c10428ddda96388f74d0768230dbab88c664f7236bf56116f4cdbeed40');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:18:00.000000+00:00', 'finding reopened', 'boss', '{"after":170,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions c567843da47e78a8.missing-S008 - -"],"stocktake":"c567843da47e78a8"}', '376de1f5dd8248019f05b2472082fae5f944d4ae637eaf83f247698eb0b04167');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"138971d85cd2ad79","doubt_kind":"missing","item":"7ecd37d903363683","now":["doubts 138971d85cd2ad79 - 8209ab83f58b","stocktakes c567843da47e78a8 closed 1f28a4425577"],"words":"a count of section:S did not find it"}', 'c144d67e2b1d3ec21cc1295ef01a29a24c2af74a4fa8628170c661a904c1fe1a');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:31:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - c4572ddae4ed","slots L003 on_item f5af42dd9089","slots L004 on_item 38f54b60c566","slots L005 on_item c163bc7f25aa","slots L007 on_item 3d50edcdf11e"],"photo":null,"place":"C-1-1","stocktake":"5ce9bc26772f40ff","unread":0}', 'd838be248783b498874e35dff6728a2aec89aadeff8986bfd38aa85a7f3e1c2e');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:34:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 09b159be610fa151 - e34961d505d8"]}', 'b160cb30430e9a5dc0a3c8eb3d871f6676c5601a907983191f34e3c26154b384');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:34:00.000000+00:00', 'doubted', 'boss', '{"doubt":"09b159be610fa151","doubt_kind":"missing","item":"ce5e603c30c5d41a","now":["resolutions 5ce9bc26772f40ff.missing-L008 - 638fcad24646"],"words":"a count did not find it"}', 'ebe925ef282f0497f5837201af62e444e8e3f1bf9a7d44a9497ca1025cabc04d');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:34:00.000000+00:00', 'finding resolved', 'boss', '{"after":175,"finding":"missing-L008","how":"lost","reason":"","stocktake":"5ce9bc26772f40ff","sure":false}', '49e915ba5cd6a26de32c2ee317dbb325ec52d1dba8a375115246df9fb2a7f482');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:37:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 73547f2adc408624 withdrawn 930d5536123f","slots L009 due 821cc144d722","resolutions 5ce9bc26772f40ff.missing-L009 - f3b014e3e7ba"],"reason":"Nowhere to be found","stay":"73547f2adc408624"}', '35e85c94782609f71515a40f4b312ae4b566e2070c69f946f5eb8fca6968d73f');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:37:00.000000+00:00', 'finding resolved', 'boss', '{"after":178,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"5ce9bc26772f40ff","sure":false}', '6246890d3d981e10a8930e7bee733f8e9cb8f021c85169c3b2552fc5fca6cf5a');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 530b326cf98e58ef open bfe73e0df385"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"530b326cf98e58ef"}', 'b0e50b1525f9f8eb9e94248989e9683399c446bc51b61fa3e7f23744d8c7af44');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:43:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 1b7353b77b8411d1 open ed5f60aa08bb"],"stocktake":"1b7353b77b8411d1"}', '931ccea063b4cca00502234033525145a8d98f2ea2eae107aab11a1830ebfeb4');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:46:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 1b7353b77b8411d1 cancelled 0d8c2cd57a77"],"stocktake":"1b7353b77b8411d1"}', '4aca396c5d8664b3c9b73723be6552c0d49dfecb4b1f9281f6ee6d1c9cebac43');
INSERT INTO public.lines VALUES (15, '9960991ad80068ce', 'e7283bb2226be1a5', 1, 'D009-01B', 'Rear derailleur 9', '', 'dc42636b70103528', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '70edd985505da068', 'aa6ebdfa45e00cc7', 1, 'D003-01U', 'Bell with a crown', '', '5987170dd4f25f55', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, 'd567f0e4488b9b5a', '944de7d7612a0d7e', 1, 'D005-01E', 'Rear derailleur 5', '', '81c0e2fe8b8a343f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '80eed5529efb46a6', '944de7d7612a0d7e', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, '5a0aad627ac802cb', '2137d921201ed301', 1, 'D006-016', 'Rear derailleur 6', '', 'f5d68220f0e590fa', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '317356a1917ef9af', '2137d921201ed301', 2, 'D007-01R', 'Rear derailleur 7', '', '832e3ffc0d4c5212', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'c1c8b798d0f9ccfb', 'b2dbfafb295b3391', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '787ab76966010b06', 'e895af54a303ef22', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, 'a06c0232fc1b7170', '86e2990d58c4d996', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, 'e67d0c7c4799303a', '40d176ee9b4f3d3e', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, '160b49dae7da04a7', '156331abb64d5fd0', 1, 'W005-01B', 'Bell with a crown', '', '0228e329c4cc2c6f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '0518a475dc00f2aa', 'b59872d32bde7e73', 1, 'L007-014', 'Dynamo lamp 7', '', '1b4334d0625d589e', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '9664a0c024c3f640', 'd47404404a0d423a', 1, 'L005-01K', 'Dynamo lamp 5', '', 'cb42a592daa5f779', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '9d13570c5da3999e', '7d1d2b1ca22839c0', 1, 'W006-013', 'Front wheel 6', '', 'b119d363dc917830', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'babd84a00ae43986', '32327f9e918cc3b4', 1, 'L012-01S', 'Dynamo lamp 12', '', 'e3f14929c7ac75ee', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '14568d0c65bf2217', 'eac3f16817cb9a0d', 1, 'S012-01O', '', '', '6548f86d3597804c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, 'a78be8287d88a835', '9d4d55dc7c0ef33e', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '2c1e7a7719a0b390', 'a0137e9dcf7af88d', 1, 'W001-01E', 'Front wheel 1', '', '690d521c4a1d0ee0', 'released', 'a7694332794f0a82', 'aabcf650cc0b0555', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '8ac61e8754bf38d5', 'a0137e9dcf7af88d', 2, 'W002-016', 'Front wheel 2', '', '368047bc2de9f13f', 'released', 'a7694332794f0a82', 'aabcf650cc0b0555', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, 'd12d8f8decad06aa', '34edd7030d9d63b8', 2, 'S003-01W', 'Leather saddle 3', '', '49a3b48e72c1242c', 'picked', NULL, 'aabcf650cc0b0555', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, 'c1e4bd8121713b45', '86b88f617b60224c', 1, 'W007-01W', 'Front wheel 7', '', '0d04914ac940e046', 'released', '8e46f79b458adf77', 'aabcf650cc0b0555', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '8d945f221bdf719f', '473801f8b7ac86d2', 1, 'S004-01O', 'Leather saddle 4', '', '6553a8ae6f0ac6a1', 'packed', '3c195c742d118908', 'aabcf650cc0b0555', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '448884e0a0d67da1', 'e44d6a54a1ee858a', 1, 'L006-01C', 'Dynamo lamp 6', '', 'afe45420ccb515ec', 'packed', '06457cc75792d752', 'aabcf650cc0b0555', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, '25e67bb7704a37bb', '473801f8b7ac86d2', 2, 'S005-01G', 'Leather saddle 5', '', 'baaf3183277e5fbd', 'picked', NULL, 'aabcf650cc0b0555', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '7527878e0f8daf0b', '5eb628b167d9c09b', 1, 'S007-01Z', 'Leather saddle 7', '', '8fb3c02b055d719e', 'picked', NULL, 'aabcf650cc0b0555', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, '3411b02cf8cd4330', '86b88f617b60224c', 2, 'W008-01O', 'Front wheel 8', '', '27e3670e396d43c0', 'waiting', NULL, 'aabcf650cc0b0555', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, '6bb526e84294e3e2', 'e44d6a54a1ee858a', 2, 'L011-010', 'Dynamo lamp 11', '', '27f409420b232e9b', 'cancelled', NULL, 'aabcf650cc0b0555', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '26fd16ef0320149b', '34edd7030d9d63b8', 1, 'S002-013', 'Leather saddle 2', '', 'dacdde6a9811b569', 'packed', '1dfe5d3fa27c3237', 'aabcf650cc0b0555', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, 'd4b837e2be518586', '0482fced535c9325', 1, 'S006-018', 'Saddle with springs', '', 'd35601666caaae0f', 'picked', NULL, 'aabcf650cc0b0555', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '5dcadedd78c513e1', 'b4acd629d5c4caa3', 1, 'D008-01J', 'Rear derailleur 8', '', '7892ce9580863d93', 'waiting', NULL, 'd09fc1c714927383', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '305567404601c477', '4546222c7ddff3d3', 1, 'D001-019', 'Rear derailleur 1', '', '4aaa594deff656fd', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, '5727e8d83ba422ea', '80c38f8773053ab4', 1, 'L003-010', 'Dynamo lamp 3', '', 'e060e0306b41c5a1', 'waiting', NULL, 'd09fc1c714927383', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, 'ed7bb461c031bc3a', 'ea595b552c718997', 1, 'L002-017', 'Dynamo lamp 2', '', '5cbf1d2879ca6637', 'picked', NULL, 'd09fc1c714927383', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '16cd36c29fdf021f', '5532ffd56e42ad0d', 1, 'L004-01S', 'Dynamo lamp 4', '', '77af39d227c4ee22', 'short', NULL, 'd09fc1c714927383', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '8a8402a7a452e92d', '4546222c7ddff3d3', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, 'acab01bc1c7e4506', '483fc0f62c2de57c', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'c567843da47e78a8', 'B-1-1', '2026-03-02T15:55:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'c567843da47e78a8', 'B-1-2', '2026-03-02T16:03:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '5ce9bc26772f40ff', 'C-1-1', '2026-03-02T16:31:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'ea595b552c718997', 'B-05', 'fair', '2026-03-02T11:50:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '80c38f8773053ab4', 'B-06', 'fair', '2026-03-02T11:53:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, '5532ffd56e42ad0d', 'B-07', 'fair', '2026-03-02T11:56:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, 'd47404404a0d423a', 'B-08', 'fair', '2026-03-02T11:59:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, '0482fced535c9325', 'B-13', 'fair', '2026-03-02T12:05:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, 'b59872d32bde7e73', 'B-17', 'fair', '2026-03-02T12:08:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, 'e7283bb2226be1a5', 'B-18', 'fair', '2026-03-02T12:11:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '7d1d2b1ca22839c0', 'B-21', 'fair', '2026-03-02T12:14:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, 'b4acd629d5c4caa3', 'B-26', 'fair', '2026-03-02T12:23:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, 'aa6ebdfa45e00cc7', 'B-30', 'fair', '2026-03-02T12:26:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, '944de7d7612a0d7e', 'B-31', 'fair', '2026-03-02T12:29:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, '2137d921201ed301', 'B-32', 'fair', '2026-03-02T12:32:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, 'b2dbfafb295b3391', 'B-33', 'fair', '2026-03-02T12:38:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, 'e895af54a303ef22', 'B-34', 'fair', '2026-03-02T12:41:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '86e2990d58c4d996', 'B-35', 'fair', '2026-03-02T12:44:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '40d176ee9b4f3d3e', 'B-36', 'fair', '2026-03-02T12:47:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '156331abb64d5fd0', 'B-37', 'fair', '2026-03-02T12:50:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, '32327f9e918cc3b4', 'Sale L012-01S', '', '2026-03-02T13:11:00.000000+00:00', 24, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, 'eac3f16817cb9a0d', 'F-1', '', '2026-03-02T13:17:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (26, '9d4d55dc7c0ef33e', 'F-2', '', '2026-03-02T13:17:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (1, 'a0137e9dcf7af88d', 'B-01', 'fair', '2026-03-02T11:41:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, '86b88f617b60224c', 'B-23', 'fair', '2026-03-02T12:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '5eb628b167d9c09b', 'B-22', 'fair', '2026-03-02T12:17:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, '473801f8b7ac86d2', 'B-04', 'fair', '2026-03-02T11:47:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '3c195c742d118908', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, 'e44d6a54a1ee858a', 'B-09', 'fair', '2026-03-02T12:02:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '06457cc75792d752', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '34edd7030d9d63b8', 'B-03', 'fair', '2026-03-02T11:44:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '1dfe5d3fa27c3237', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (27, '4546222c7ddff3d3', 'B-38', 'fair', '2026-03-02T15:42:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, '483fc0f62c2de57c', 'B-39', '', '2026-03-02T15:45:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (1, 'a7694332794f0a82', 'main', 'a0137e9dcf7af88d', '2026-03-02T14:08:00.000000+00:00', 'closed', '2026-03-02T14:17:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '8e46f79b458adf77', 'main', '86b88f617b60224c', '2026-03-02T14:39:00.000000+00:00', 'closed', '2026-03-02T14:42:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, 'aec1785e7eabd0e5', 'main', '5eb628b167d9c09b', '2026-03-02T14:45:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '3c195c742d118908', 'main', '473801f8b7ac86d2', '2026-03-02T14:51:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '06457cc75792d752', 'second', 'e44d6a54a1ee858a', '2026-03-02T15:00:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, '1dfe5d3fa27c3237', 'main', '34edd7030d9d63b8', '2026-03-02T15:09:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'c567843da47e78a8.elsewhere-S012', 'c567843da47e78a8', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:09:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:55:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "6548f86d3597804c", "item": "8adbdf5f7f3bb168", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "14568d0c65bf2217", "order": "eac3f16817cb9a0d", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "6548f86d3597804c", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:09:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "6548f86d3597804c", "item": "8adbdf5f7f3bb168", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "14568d0c65bf2217", "order": "eac3f16817cb9a0d", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "6548f86d3597804c", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'c567843da47e78a8.unknown-Q0771', 'c567843da47e78a8', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:12:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '5ce9bc26772f40ff.missing-L008', '5ce9bc26772f40ff', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:34:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "01e825493cd867e0", "item": "ce5e603c30c5d41a", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "01e825493cd867e0", "item": "ce5e603c30c5d41a", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["09b159be610fa151"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '5ce9bc26772f40ff.missing-L009', '5ce9bc26772f40ff', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:37:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "73547f2adc408624", "item": "06d363b2f5657c62", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "73547f2adc408624", "item": "06d363b2f5657c62", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:37:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'aabcf650cc0b0555', '2026-03-02T13:20:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'd09fc1c714927383', '2026-03-02T15:18:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'fff68290c45e6a56542d11bdf598a7620df31ff95db164bc699e8460488bf656', 'bin', 'aabcf650cc0b0555', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'e3958454e335c34c1287937ed11a71759bb9b349e665958cd022e4213068b58d', 'bin', 'aabcf650cc0b0555', 'W001', false, true, true, '2c1e7a7719a0b390', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a0137e9dcf7af88d", "order_number": "B-01", "line": "2c1e7a7719a0b390", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["690d521c4a1d0ee0", "stored"], ["2c1e7a7719a0b390", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'b5ba9e599a958234f0ebd0104b008204a78ddf40e52e36fa05e3fd8b91cec146', 'bin', 'aabcf650cc0b0555', 'W002', false, true, true, '8ac61e8754bf38d5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a0137e9dcf7af88d", "order_number": "B-01", "line": "8ac61e8754bf38d5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["368047bc2de9f13f", "stored"], ["8ac61e8754bf38d5", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '5c2e2017c198f82c358602b20f68d247abc91c377c37072475d24b8a58a3722e', 'bin', 'aabcf650cc0b0555', 'S002', false, true, true, '26fd16ef0320149b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "34edd7030d9d63b8", "order_number": "B-03", "line": "26fd16ef0320149b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["dacdde6a9811b569", "stored"], ["26fd16ef0320149b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '3826bd564e8a06c29996403c52bc480ab17a5671001198b653a7ff079c3bbf52', 'bin', 'aabcf650cc0b0555', 'S003', false, true, true, 'd12d8f8decad06aa', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "34edd7030d9d63b8", "order_number": "B-03", "line": "d12d8f8decad06aa", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["49a3b48e72c1242c", "stored"], ["d12d8f8decad06aa", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'e359d98930a253e4e015238879ebe318a3b2125df55711416094bb180a23f03e', 'bin', 'aabcf650cc0b0555', 'S004', false, true, true, '8d945f221bdf719f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "473801f8b7ac86d2", "order_number": "B-04", "line": "8d945f221bdf719f", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["6553a8ae6f0ac6a1", "stored"], ["8d945f221bdf719f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'dfd0e41a1ec5740631548515cd4542ebae519af029d8df49d76b35e5ffcb7701', 'bin', 'aabcf650cc0b0555', 'S005', false, true, true, '25e67bb7704a37bb', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "473801f8b7ac86d2", "order_number": "B-04", "line": "25e67bb7704a37bb", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["baaf3183277e5fbd", "stored"], ["25e67bb7704a37bb", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'e1f2fb935fc1be1b75343c7f73e0399f281784a324e7ddde2b8aab3b5abf4654', 'bin', 'aabcf650cc0b0555', 'L006', false, true, true, '448884e0a0d67da1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e44d6a54a1ee858a", "order_number": "B-09", "line": "448884e0a0d67da1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["afe45420ccb515ec", "stored"], ["448884e0a0d67da1", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '2929381bf19fdd0c93ef454539a3f3b4073695b213f2313cc7bfb6a4ae52e250', 'bin', 'aabcf650cc0b0555', 'L011', false, true, true, '6bb526e84294e3e2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "e44d6a54a1ee858a", "order_number": "B-09", "line": "6bb526e84294e3e2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["27f409420b232e9b", "stored"], ["6bb526e84294e3e2", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '2c04c20670f129ed4e4b0261da0e452b15a54b3f1737cdc777a345381c91e20f', 'bin', 'aabcf650cc0b0555', 'S006', false, true, true, 'd4b837e2be518586', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "0482fced535c9325", "order_number": "B-13", "line": "d4b837e2be518586", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:50:00.000000+00:00', '["on_item", ["d35601666caaae0f", "stored"], ["d4b837e2be518586", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '2aa2bcb8bc82086e606ef936836a64d2b02dbebbdbdc1fb79a548cc586a4173d', 'bin', 'aabcf650cc0b0555', 'S007', false, true, true, '7527878e0f8daf0b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "5eb628b167d9c09b", "order_number": "B-22", "line": "7527878e0f8daf0b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:53:00.000000+00:00', '["on_item", ["8fb3c02b055d719e", "stored"], ["7527878e0f8daf0b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'c0bc7a374c270341afb4e22204d2e2abd1857d8c3574b9d67c17a1231277a96b', 'bin', 'aabcf650cc0b0555', 'W007', false, true, true, 'c1e4bd8121713b45', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "86b88f617b60224c", "order_number": "B-23", "line": "c1e4bd8121713b45", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:56:00.000000+00:00', '["on_item", ["0d04914ac940e046", "stored"], ["c1e4bd8121713b45", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'dbdec5310dd41b86b5dc4416bd19760b98afbf00c1dbda7c7e803ba0f42d6f20', 'bin', 'aabcf650cc0b0555', 'W008', false, true, true, '3411b02cf8cd4330', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "86b88f617b60224c", "order_number": "B-23", "line": "3411b02cf8cd4330", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:59:00.000000+00:00', '["on_item", ["27e3670e396d43c0", "stored"], ["3411b02cf8cd4330", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '26fd16ef0320149b', 'a7694332794f0a82', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "34edd7030d9d63b8", "order_number": "B-03", "line": "26fd16ef0320149b", "line_state": "picked", "order_state": "picking", "parcel": "a7694332794f0a82", "parcel_state": "open", "released": []}', '', '2026-03-02T14:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '2c1e7a7719a0b390', 'a7694332794f0a82', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a0137e9dcf7af88d", "order_number": "B-01", "line": "2c1e7a7719a0b390", "line_state": "packed", "order_state": "picking", "parcel": "a7694332794f0a82", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:14:00.000000+00:00', '["on_item", ["690d521c4a1d0ee0", "stored"], ["2c1e7a7719a0b390", "packed", "a7694332794f0a82", []], ["a7694332794f0a82", "2026-03-02T14:08:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '8ac61e8754bf38d5', 'a7694332794f0a82', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a0137e9dcf7af88d", "order_number": "B-01", "line": "8ac61e8754bf38d5", "line_state": "released", "order_state": "released", "parcel": "a7694332794f0a82", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:17:00.000000+00:00', '["due", ["368047bc2de9f13f", "shipped"], ["8ac61e8754bf38d5", "released", "a7694332794f0a82", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '2c1e7a7719a0b390', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "a0137e9dcf7af88d", "order_number": "B-01", "line": "2c1e7a7719a0b390", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:20:00.000000+00:00', '["tray", ["690d521c4a1d0ee0", "shipped"], ["2c1e7a7719a0b390", "released", "a7694332794f0a82", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'c1e4bd8121713b45', '8e46f79b458adf77', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "86b88f617b60224c", "order_number": "B-23", "line": "c1e4bd8121713b45", "line_state": "packed", "order_state": "waiting", "parcel": "8e46f79b458adf77", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:33:00.000000+00:00', '["on_item", ["0d04914ac940e046", "stored"], ["c1e4bd8121713b45", "packed", "8e46f79b458adf77", []], ["8e46f79b458adf77", "2026-03-02T14:30:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '8d945f221bdf719f', '3c195c742d118908', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "473801f8b7ac86d2", "order_number": "B-04", "line": "8d945f221bdf719f", "line_state": "packed", "order_state": "picking", "parcel": "3c195c742d118908", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:54:00.000000+00:00', '["on_item", ["6553a8ae6f0ac6a1", "stored"], ["8d945f221bdf719f", "packed", "3c195c742d118908", []], ["3c195c742d118908", "2026-03-02T14:51:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '448884e0a0d67da1', '06457cc75792d752', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e44d6a54a1ee858a", "order_number": "B-09", "line": "448884e0a0d67da1", "line_state": "packed", "order_state": "picking", "parcel": "06457cc75792d752", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:03:00.000000+00:00', '["on_item", ["afe45420ccb515ec", "stored"], ["448884e0a0d67da1", "packed", "06457cc75792d752", []], ["06457cc75792d752", "2026-03-02T15:00:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '26fd16ef0320149b', '1dfe5d3fa27c3237', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "34edd7030d9d63b8", "order_number": "B-03", "line": "26fd16ef0320149b", "line_state": "packed", "order_state": "picking", "parcel": "1dfe5d3fa27c3237", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:12:00.000000+00:00', '["on_item", ["dacdde6a9811b569", "stored"], ["26fd16ef0320149b", "packed", "1dfe5d3fa27c3237", []], ["1dfe5d3fa27c3237", "2026-03-02T15:09:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '972f508d3710eccd2cecd0e0d31b7e1c1ffb9238f5dadddc326cb696d8c29dbc', 'bin', 'd09fc1c714927383', 'L002', false, true, true, 'ed7bb461c031bc3a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "ea595b552c718997", "order_number": "B-05", "line": "ed7bb461c031bc3a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:21:00.000000+00:00', '["on_item", ["5cbf1d2879ca6637", "stored"], ["ed7bb461c031bc3a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', 'f647992c5d95a4ffc06397d99cf2f462d61e42329f2da2dc610fc509b9c09c36', 'bin', 'd09fc1c714927383', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:27:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '9cec6a7983d99e38101a1fa5ba38d6a2df8060c763b2ef3357f50839ee3b0fc8', 'bin', 'd09fc1c714927383', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:30:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '663e4ab1da60f89197f74003c05272c1beeb0984fc298214b27a5f20173e698b', 'bin', 'd09fc1c714927383', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:33:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:03:00.000000+00:00', '06457cc75792d752', 'bin', 'C-1-1', 'aabcf650cc0b0555', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', 'aabcf650cc0b0555', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:47:00.000000+00:00', NULL, 'bin', 'C-1-2', 'aabcf650cc0b0555', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:53:00.000000+00:00', NULL, 'bin', 'B-1-1', 'aabcf650cc0b0555', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:12:00.000000+00:00', '1dfe5d3fa27c3237', 'bin', 'B-1-1', 'aabcf650cc0b0555', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:50:00.000000+00:00', NULL, 'bin', 'B-1-1', 'aabcf650cc0b0555', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:59:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:17:00.000000+00:00', 'a7694332794f0a82', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:33:00.000000+00:00', '8e46f79b458adf77', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:54:00.000000+00:00', '3c195c742d118908', 'bin', 'B-1-1', 'aabcf650cc0b0555', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:21:00.000000+00:00', NULL, 'bin', 'C-1-1', 'd09fc1c714927383', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, 'bin', 'B-1-1', 'aabcf650cc0b0555', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:09:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '4aaa594deff656fd', '76c8e64786162668', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, '6a343a89533e466d', 'b8cd26629cd44246', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '5987170dd4f25f55', '552fa766fdb095fb', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, '59f635cc950c4274', '6505270746a07700', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, '81c0e2fe8b8a343f', 'e42eb22707f59a36', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, 'f5d68220f0e590fa', '6c2028f4c5ecada7', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '832e3ffc0d4c5212', '3b66be45a93f8556', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, 'dc42636b70103528', '5823134899e185d9', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '2b8ee91c23a6916d', 'c0296187755e6760', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, 'd8d9b5070357982f', '38372f8cecac9b10', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '79a174479564be42', 'ffe5d8ca33725899', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '4e1d2fbb14fdc843', '3df054c1f8b387e5', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, 'dacdde6a9811b569', '640e31d1aabda555', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, '49a3b48e72c1242c', '201f16dc17b7141f', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '6553a8ae6f0ac6a1', '46151a8b091ea185', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, 'baaf3183277e5fbd', '79412e30ab896d09', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, 'd35601666caaae0f', 'fddc95f7855b5356', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, '8fb3c02b055d719e', '610daf67d2274a31', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '9e2b6739771e70b9', '7ecd37d903363683', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, 'dc6e36cf1f70eded', 'cad39e70bf51863e', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '6548f86d3597804c', '8adbdf5f7f3bb168', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, 'faab2e8c1c177ae3', 'd66401d9f12df505', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, '5cbf1d2879ca6637', 'df786954254268bc', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, 'e060e0306b41c5a1', 'e81c0488d359d816', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '77af39d227c4ee22', 'cceec3a3b482e0cf', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, 'cb42a592daa5f779', 'fdd91f6198ac3c78', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, 'afe45420ccb515ec', '1d01e7df62cc18d5', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '1b4334d0625d589e', '140317c857d6df09', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, '01e825493cd867e0', 'ce5e603c30c5d41a', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'a2921ad12b941b69', '4306a61c96ba3798', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '27f409420b232e9b', '0319a0ea26f2f4f9', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, 'e3f14929c7ac75ee', 'e80b9dccd621f145', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, 'f1f54c9a98e6092e', 'b60e6c36ea4776c5', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '0228e329c4cc2c6f', 'bcee8ec0c662ae17', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, 'b119d363dc917830', 'da7b617daa2fa96c', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, '27e3670e396d43c0', '7d55e067ea7ceba0', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, 'cdb72401487ab360', '9abd17b3fd4288dc', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, 'da3543c9500523f3', 'adbef2c9b395237d', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, 'fa119a2af2ef644b', 'dc4a5a6e5a4245a7', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, 'f6f7356dc4f843df', 'caeb8a693b05ed09', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, '7416a673058ddc40', '807aea115a918f57', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '28633c6df0bce2a6', 'b50c099b430e4ff5', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'd31e5c8082e7c8db', 'a681c9fd857881e7', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '1a4159d9cd8f6897', 'f003be8d21b99d3c', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '53df814327703932', 'f003be8d21b99d3c', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '2fed9a0db9b7a5ac', 'fc93aa9ca41ae8a8', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, 'aad514f0964ef6a2', '900b248f1426d792', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, '0d5536c6567390a8', '48204fe2dfc917e2', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:08:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '7892ce9580863d93', '48204fe2dfc917e2', 'D020', 1, '2026-03-02T13:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '690d521c4a1d0ee0', 'b991f3c804375965', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, '368047bc2de9f13f', '908c37483334a329', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '0019521b413dbb31', '5e2a7fa9260dde04', 'W001', 2, '2026-03-02T14:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, '0d04914ac940e046', 'ecf228a9d7ff5882', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:42:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '73547f2adc408624', '06d363b2f5657c62', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:37:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'c567843da47e78a8', 'section:S', 'Spring', '2026-03-02T15:48:00.000000+00:00', 163, 'closed', '2026-03-02T16:21:00.000000+00:00', '{"stocktake": "c567843da47e78a8", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:48:00+00:00", "closed": "2026-03-02T16:21:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:09:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:12:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '5ce9bc26772f40ff', 'section:L', 'Spring', '2026-03-02T16:24:00.000000+00:00', 173, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '530b326cf98e58ef', 'section:D', '', '2026-03-02T16:40:00.000000+00:00', 180, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '1b7353b77b8411d1', 'tray', 'Too late today', '2026-03-02T16:43:00.000000+00:00', 181, 'cancelled', '2026-03-02T16:46:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'aabcf650cc0b0555', 1, '26fd16ef0320149b', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'aabcf650cc0b0555', 2, 'd12d8f8decad06aa', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'aabcf650cc0b0555', 3, '8d945f221bdf719f', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'aabcf650cc0b0555', 4, '25e67bb7704a37bb', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'aabcf650cc0b0555', 5, 'd4b837e2be518586', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'aabcf650cc0b0555', 6, '7527878e0f8daf0b', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'aabcf650cc0b0555', 7, '2c1e7a7719a0b390', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'aabcf650cc0b0555', 8, '8ac61e8754bf38d5', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'aabcf650cc0b0555', 9, 'c1e4bd8121713b45', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'aabcf650cc0b0555', 10, '3411b02cf8cd4330', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'aabcf650cc0b0555', 11, '448884e0a0d67da1', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'aabcf650cc0b0555', 12, '6bb526e84294e3e2', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'd09fc1c714927383', 1, '5dcadedd78c513e1', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'd09fc1c714927383', 2, 'ed7bb461c031bc3a', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'd09fc1c714927383', 3, '5727e8d83ba422ea', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'd09fc1c714927383', 4, '16cd36c29fdf021f', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.channels_n_seq', 1, false);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.learned_n_seq', 1, false);
SELECT pg_catalog.setval('public.lines_n_seq', 36, true);
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
ALTER TABLE ONLY public.learned
    ADD CONSTRAINT pk_learned PRIMARY KEY (n);
ALTER TABLE ONLY public.ledger
    ADD CONSTRAINT pk_ledger PRIMARY KEY (seq);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT pk_lines PRIMARY KEY (n);
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
ALTER TABLE ONLY public.learned
    ADD CONSTRAINT uq_learned_id UNIQUE (id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT uq_lines_id UNIQUE (id);
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
CREATE INDEX ix_items_listing ON public.items USING btree (listing);
CREATE INDEX ix_labels_parcel ON public.labels USING btree (parcel);
CREATE INDEX ix_learned_item ON public.learned USING btree (item);
CREATE INDEX ix_learned_listing ON public.learned USING btree (listing);
CREATE INDEX ix_lines_held ON public.lines USING btree ("order") WHERE (holds <> '[]'::text);
CREATE INDEX ix_lines_order ON public.lines USING btree ("order", state);
CREATE INDEX ix_lines_parcel ON public.lines USING btree (parcel);
CREATE INDEX ix_lines_state ON public.lines USING btree (state);
CREATE INDEX ix_lines_stay ON public.lines USING btree (stay);
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
ALTER TABLE ONLY public.learned
    ADD CONSTRAINT fk_learned_item FOREIGN KEY (item) REFERENCES public.items(id);
ALTER TABLE ONLY public.learned
    ADD CONSTRAINT fk_learned_line FOREIGN KEY (line) REFERENCES public.lines(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_order FOREIGN KEY ("order") REFERENCES public.orders(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_parcel FOREIGN KEY (parcel) REFERENCES public.parcels(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_round FOREIGN KEY (round) REFERENCES public.rounds(id);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT fk_lines_stay FOREIGN KEY (stay) REFERENCES public.stays(id);
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
