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
    status text DEFAULT ''::text NOT NULL
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
    undated boolean DEFAULT false NOT NULL
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
ALTER TABLE ONLY public.doubts ALTER COLUMN n SET DEFAULT nextval('public.doubts_n_seq'::regclass);
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.labels ALTER COLUMN n SET DEFAULT nextval('public.labels_n_seq'::regclass);
ALTER TABLE ONLY public.learned ALTER COLUMN n SET DEFAULT nextval('public.learned_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
ALTER TABLE ONLY public.looks ALTER COLUMN n SET DEFAULT nextval('public.looks_n_seq'::regclass);
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
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
INSERT INTO public.access VALUES (1, '7a492d25a46e470d6733c8253aea130a6dca08a1a4fc69cea172ed8da8c85bcc', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$NkiM9r8jVqbCgJdZGLwM1w$+w/wc/nWW+9pk+T6Myj0yKsuzfsJC1cRMQxJBvwqRN4', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, 'f391f104924bb3035c205aac7e26a9a31bb47e9354fff5c1b4f3f2adb044d527', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'c9702177257d119ee6b422b38e0db18d0f58e2702d547f583fa42b5707b89346', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'a8b368395d6cbdece86b8e7e187532bc8c439289c87fdfe59cc9090e1a6cabea', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'f6bd3fc65a49d390590773cad7346f4f63aa3e6ef12c0139b564d955e1e46ac0', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0011');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/68d166748fdfdb77', '{"id": "68d166748fdfdb77", "item": "9245204d206fc59e", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '6e2a70abf5ea4ede', 'eb2552168ad1ea22', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:56:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'da755945c52bbe8e', 'd8717d38ddcd4fbc', 'missing', 'Not in its bin', '2026-03-02T15:24:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '2680786fa8b6c382', '0d125dc1f79d58b1', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:55:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '76aee8c1d7e1fd5d', '273d705e091581e6', 'missing', 'a count of section:S did not find it', '2026-03-02T16:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'e745d68c98529f1f', 'a918ead9cc27a89d', 'missing', 'a count did not find it', '2026-03-02T16:34:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 183, 'c32df94a7b3a55a8c6a2e6f17b446864553b813c8941d0276a2692f3004c242c', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'a16c8e78fc370cec');
INSERT INTO public.items VALUES (3, 'c63b44492eeda203', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '76a3a9554e6ec553', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, '3b5d242f8592a725', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, '512df48cfe52ead6', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '48fcfc9b913c9382', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '05a10a9d176d6bc6', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, 'db6f1f5fb1324000', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '987f84b2cc4a3b79', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, 'da3e9bc8bcb0c46d', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '859f3ab758671e25', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '1ea7a06677173419', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, 'cbc10bf959b1f9c5', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '93968bf66fc69db1', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, '2cab478e684d313a', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, 'd5f35ec02e54f23a', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, 'ad943f7deefe7ae1', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '273d705e091581e6', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '2c41215215c0fb6e', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, '25e1b9d6be9e1cf8', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, '23e4474f39766587', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, 'dd65f137761a7f12', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, '21c487805c00a399', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, '8545eb2fc14dd6bc', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, '22920383a6b7cd3f', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, 'd8717d38ddcd4fbc', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, '78977e50dcdf5433', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '813dcb3f68153494', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, 'eb2552168ad1ea22', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, 'a918ead9cc27a89d', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '77db1ab13a178464', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '7491c3fcb0a51cf0', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '58988e688b29eae1', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, 'f7236351d2b5b8cb', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, 'a1728d630dbbf0d3', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '928aadd7b81cef66', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, '7d41b871581d06b2', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, '393610cedd6f9134', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, '66097d539d08f795', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '8ce9975bf39028c7', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '0001a0a06a518d73', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, '7746fd3ee8899d68', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, 'f2c6cb6c296bc9b9', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, 'ed5f631120c58e46', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '9245204d206fc59e', 'Brass bell', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '5d5262748bf11008', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, 'f2443b867e431d04', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '0d125dc1f79d58b1', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, 'b1dd2c8f110e0aee', 'Carbide lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, '3b3a648ba997c6dc', 'Rear lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '771e6e9c0777c67a', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '66bdf0eb9f6fb207', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T11:29:00.000000+00:00');
INSERT INTO public.items VALUES (52, 'ccfd524f8290c517', 'Rear wheel', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', 'd48bcf939bfb3081', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items f2443b867e431d04 - 58ea485e414c","slots D001 on_item e5405bc28ff8","stays 3aff4e94d5a6292e stored af3100ee73ed"],"stay":"3aff4e94d5a6292e","title":"Rear derailleur 1","turn":1}', '0921962481586899d22cae5717773849e2b9ca8219269cc0d64cf9e7d835784b');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 5d5262748bf11008 - 3e0218b013a5","slots D002 on_item 4f79f524f247","stays b2646859709d6014 stored fabf83ab7c02"],"stay":"b2646859709d6014","title":"Rear derailleur 2","turn":1}', '2618f4d9fbdf8558c96124c993c2f723565acbcb1ba674d3401bd8fd43beb75e');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items c63b44492eeda203 - df34b4793ac7","slots D003 on_item 6de523ac8b4d","stays d59545a2609cbc42 stored f246e006e893"],"stay":"d59545a2609cbc42","title":"Rear derailleur 3","turn":1}', '9445d7505b8911bddacd2f1704d7c6009701ab6e0a9753e52a57323019da9c94');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 76a3a9554e6ec553 - 925bf5b34b04","slots D004 on_item ec423998da46","stays 56987117cd2901f9 stored 15e7f2bd5ceb"],"stay":"56987117cd2901f9","title":"Rear derailleur 4","turn":1}', '1a960f09ebfaf21a89fbbfb80478aab07af51d25ac65f57fb2607d0761f00b8c');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 3b5d242f8592a725 - 2299555cf8ef","slots D005 on_item 91ad3faf88d6","stays 65a5ae5fe100f013 stored 36de2a1786e7"],"stay":"65a5ae5fe100f013","title":"Rear derailleur 5","turn":1}', '437ee7671a525acaacec21ca431b29187fc2ad9985e7c971f9e7eeb5f54f9f68');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 512df48cfe52ead6 - 9d97be343313","slots D006 on_item 1fadb568d6a5","stays 3148a551bbeefaad stored 33bab5e369dd"],"stay":"3148a551bbeefaad","title":"Rear derailleur 6","turn":1}', 'd7be0c42c659a333dff45f4bcdd113ae8bc6870d6e0f7d050a7a7efb13537362');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 48fcfc9b913c9382 - 1a061ef4b873","slots D007 on_item 536077e3b728","stays 3e800395c4261b94 stored a98469f613f8"],"stay":"3e800395c4261b94","title":"Rear derailleur 7","turn":1}', 'f8f3cfa68230c611d7cc4e0b42702bc62a21568b2c8c646439f2e6f4128c646f');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 05a10a9d176d6bc6 - 8ead476b880d","slots D008 on_item facb453cba22","stays ba25abebd7f89383 stored 097ef034ddc2"],"stay":"ba25abebd7f89383","title":"Rear derailleur 8","turn":1}', '6a77e139fe7571ef411967fc663d41d03826e3855fbec360d25b734329cde9d8');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items db6f1f5fb1324000 - b45992235927","slots D009 on_item 7434bf04ccf2","stays 0313e57a2960f58a stored 1fd4f602bd56"],"stay":"0313e57a2960f58a","title":"Rear derailleur 9","turn":1}', '24e068f64369a321595a11632413c920f75b42c958f758785a04dd31e14625bd');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 987f84b2cc4a3b79 - e1abb016f2e3","slots D010 on_item 1f8fd3ebaf8b","stays 540b170009de4831 stored 21af4f268368"],"stay":"540b170009de4831","title":"Rear derailleur 10","turn":1}', 'df551659abee29e05653503c3fb16d3c2509edff7122046bf8bd248f3ae86b8b');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items da3e9bc8bcb0c46d - 4e9af664497f","slots D011 on_item d451255e38b7","stays c99b5087a5de2381 stored 2affffab53e9"],"stay":"c99b5087a5de2381","title":"Rear derailleur 11","turn":1}', 'c497c7eb0acf8618622e19f740f68a839fdb1e2b1bcabe3ce0f1f83050e682e6');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 859f3ab758671e25 - cc4e40703024","slots D012 on_item bdbda5bb2b7a","stays d6fc3e4c1596e7b1 stored 6206a67f6ccc"],"stay":"d6fc3e4c1596e7b1","title":"Rear derailleur 12","turn":1}', '2d76ff2e2c4ff069fdc635d90daad2252c0d96f2b75afbb2dcd42091e62b7104');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 0d125dc1f79d58b1 - c5852423b942","slots S001 on_item 76dcd853e3e0","stays e32f5a5a1861f062 stored be13bf6ff42e"],"stay":"e32f5a5a1861f062","title":"Leather saddle 1","turn":1}', '7ecfb2bcc4f5164ff472e96536beb7b3c586bd575f07c56c343e3cf1542ebe23');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 1ea7a06677173419 - 37068baed455","slots S002 on_item 6fb94c47a50d","stays d1a852df8d9b86e7 stored 293dd4ad3abc"],"stay":"d1a852df8d9b86e7","title":"Leather saddle 2","turn":1}', '6bc790d136c6c0147a3be3a6ad81134af24f16c6f66c61d65964e73f02862fa0');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items cbc10bf959b1f9c5 - 29fd0bdc484f","slots S003 on_item e00808332634","stays 5e7f3540604b0104 stored e3c024e50cbd"],"stay":"5e7f3540604b0104","title":"Leather saddle 3","turn":1}', 'd66b25c6f80408a6a1944843a008770caec6ab427d8c0bf4a2947af28cb0abba');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 93968bf66fc69db1 - 9c6409785014","slots S004 on_item db1aa8005467","stays 684f0df5c0184a53 stored fcfa889f1bbf"],"stay":"684f0df5c0184a53","title":"Leather saddle 4","turn":1}', '88671cdeb8ba5ee8c4be0e69420a6fe359379eb5435bd567df7aea9145644cde');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 2cab478e684d313a - f28399577855","slots S005 on_item ec548ef84f99","stays 1c87972f58d5afd0 stored 3a500d990581"],"stay":"1c87972f58d5afd0","title":"Leather saddle 5","turn":1}', '41d7f5684d95531f93a1c30d217cc0310f64a31ce50cdd6f559ec3a9d68b052c');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items d5f35ec02e54f23a - d6d09efc41ee","slots S006 on_item dc9bc74eb63a","stays 96551bb439d6affa stored 9f28417c6639"],"stay":"96551bb439d6affa","title":"Leather saddle 6","turn":1}', 'e0a03970006fd0cc17245283525ead1ef86a8dbffafe7b54556b202fb8b0cab9');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items ad943f7deefe7ae1 - d38d8d0132eb","slots S007 on_item 075fd8b9fecf","stays 238af3f265255258 stored 6c76726c9d36"],"stay":"238af3f265255258","title":"Leather saddle 7","turn":1}', '9016c8b2f0f93ee9841921923a58bedf17e8b28002ce5fba2a4f01e3fec51e03');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 273d705e091581e6 - 97273ee77441","slots S008 on_item 39fdb847a4bc","stays 18904f7922542c9d stored 9b44fff3b055"],"stay":"18904f7922542c9d","title":"Leather saddle 8","turn":1}', 'd7c24a9d8735184938c4bda53907e8f392fc32040f6215eb820d40cb2e0bd5de');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 2c41215215c0fb6e - 71701149b741","slots S009 on_item 62c79df275b3","stays a3f2d24371922ff1 stored d787a511ab7c"],"stay":"a3f2d24371922ff1","title":"Leather saddle 9","turn":1}', 'd2b02bb0e719cc17530a19cbbbc5140df5bac42c5c4c378b80574b798a46b19c');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 25e1b9d6be9e1cf8 - d822c0a0597e","slots S010 on_item 1fd8d85fa1c4","stays ddf7bdbaa065fbf4 stored 17f4bb6c681d"],"stay":"ddf7bdbaa065fbf4","title":"Leather saddle 10","turn":1}', '50116cbba4967ce114c8abab6bf2a4fd54f872833231f7d14ea04e956a3c2995');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 23e4474f39766587 - b4112dc0af67","slots S011 on_item e59577c4b2a7","stays f0af4995e986c710 stored f6d973861357"],"stay":"f0af4995e986c710","title":"Leather saddle 11","turn":1}', '8de88908db163dab191287b8525a9c9b44ebed5750ab3ed910df42f91548a33d');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items dd65f137761a7f12 - f9d73086561e","slots S012 on_item 9bae442e2436","stays 2c880100e1572fe4 stored 63403dcdea38"],"stay":"2c880100e1572fe4","title":"Leather saddle 12","turn":1}', '70600c6186353daee09519faaf98f1e60bdd296d720b28cf55a937932e657e00');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 21c487805c00a399 - 4de994b0042e","slots L001 on_item 43c5cdfaa8e4","stays 4389156f400a6d42 stored bc8a6bec434e"],"stay":"4389156f400a6d42","title":"Dynamo lamp 1","turn":1}', 'e103ede38bfe3e509570f86c346efc0843d612e6fe15a64e829bf836fc06e967');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 8545eb2fc14dd6bc - 0fd4eb96b0b8","slots L002 on_item ea8e77c8b06f","stays df2a60b1642db71f stored e822fcace5a3"],"stay":"df2a60b1642db71f","title":"Dynamo lamp 2","turn":1}', 'cddaaf1a0cbbaedb870b7804120382013463c602e670981f64a5ef62f2f82f5b');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 22920383a6b7cd3f - 00382df0b656","slots L003 on_item c35e4c005cda","stays c6a8fe64870c5f2b stored b1bb7a5a1861"],"stay":"c6a8fe64870c5f2b","title":"Dynamo lamp 3","turn":1}', '97d2b03ec6911560792dc0dcfd1a1df14d718e13bb6b786aea9fd26413b6e1d1');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items d8717d38ddcd4fbc - 5ff1c19a89ed","slots L004 on_item 70a88e4a366b","stays 6014a9d1ef1afb3b stored f7ff99bf21b5"],"stay":"6014a9d1ef1afb3b","title":"Dynamo lamp 4","turn":1}', 'e589698d20e4b88853fe4b9d0a0f4e2ff8ec73b5932317fdbbeb2d8c51a0ed35');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 78977e50dcdf5433 - fbb85aee879f","slots L005 on_item 6261d94de1ef","stays 9ba8b8cdc277a6b2 stored f37565ff6f54"],"stay":"9ba8b8cdc277a6b2","title":"Dynamo lamp 5","turn":1}', '1cfb3da7a6d8c276dc774018c2065943ab199c23c64db9926ab3930d5f98cc2e');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 813dcb3f68153494 - 1f1da538a99d","slots L006 on_item b67b470f3637","stays c61f2407c1ad22e3 stored 7662411d4b3a"],"stay":"c61f2407c1ad22e3","title":"Dynamo lamp 6","turn":1}', '1a2593c8b78b59199879842bc00ecc1fb272e34111901f439e7c4e844e20801b');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items eb2552168ad1ea22 - b82b61b6cd98","slots L007 on_item 767524982af4","stays 0bed663824a931b1 stored cee5618cea93"],"stay":"0bed663824a931b1","title":"Dynamo lamp 7","turn":1}', '3ecda655960fe11b0cde31d5fc020cf88e7118766cbb6baba8d2588e6d36de99');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items a918ead9cc27a89d - 8946368999fc","slots L008 on_item b3b2d23a98b7","stays 20a9f52c382e51ab stored 20c5a0e93408"],"stay":"20a9f52c382e51ab","title":"Dynamo lamp 8","turn":1}', '83fb085c74eab566c9e9114804307e60581f015fe7654c893e1910c00f9f4fec');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 77db1ab13a178464 - 49740820ff84","slots L009 on_item c3139144a3f8","stays 8f5c8c7c51bcbbcb stored c3a579826864"],"stay":"8f5c8c7c51bcbbcb","title":"Dynamo lamp 9","turn":1}', '996b9a91ca1957cd6c93efac0a1197558a20d363bdaf7464ff45d76449e2a267');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 7491c3fcb0a51cf0 - ffd3ee79b75c","slots L010 on_item f8c13ae8aec4","stays 8d83283503835cac stored 015e5bd2df93"],"stay":"8d83283503835cac","title":"Dynamo lamp 10","turn":1}', 'f28ce79dc18170f273c3bbf02397c6cea1c0091cbb0935346d6e6ff45248d3ce');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 58988e688b29eae1 - 46ec71acf028","slots L011 on_item 9d01c75c0f89","stays 35177628c86c1f01 stored d80a0ae50332"],"stay":"35177628c86c1f01","title":"Dynamo lamp 11","turn":1}', '432feec1bceff882257ebb77037f761e4e42e5e02d8718f67568e533debef1f8');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items f7236351d2b5b8cb - 72dbeab792c3","slots L012 on_item 5373b19b101e","stays 2b49133bca4e73ad stored af45befd99fa"],"stay":"2b49133bca4e73ad","title":"Dynamo lamp 12","turn":1}', '2a5e74ca537775cfd7809a0bebd0a1bef764988ddf14581da93fa9694fb7de27');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items a1728d630dbbf0d3 - fc13cfe05cdf","slots W001 on_item 17dd342c2f6a","stays fa93337f99fb0a4c stored 2becf4d9dc55"],"stay":"fa93337f99fb0a4c","title":"Front wheel 1","turn":1}', '1c440b195da00d960a5d7d6c0719cb14d44c3fdedce0c00aa88f62b5a563c126');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 928aadd7b81cef66 - b11e998c71fc","slots W002 on_item 7ebfb8df41ca","stays 6b40c5b50582e1ab stored 36958790786c"],"stay":"6b40c5b50582e1ab","title":"Front wheel 2","turn":1}', '9aface57f399bbd05fb6d5bbae9b9027f7d178b014f213f8e6e6d29fb19bd892');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 7d41b871581d06b2 - f3d5bb597afb","slots W003 on_item f84a2674e962","stays 5fa8bcedf5a7c5d6 stored 2d1bc0f9b9ad"],"stay":"5fa8bcedf5a7c5d6","title":"Front wheel 3","turn":1}', '798f83958bed4866df8dfdd05bcf2875336533611065299b2889b837f640ad9b');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 393610cedd6f9134 - 45e59abf10f7","slots W004 on_item f45ed94fd55a","stays e3b65400dc96b174 stored c3a42d55e1a1"],"stay":"e3b65400dc96b174","title":"Front wheel 4","turn":1}', '517b567d2adb51eb7152780881890a58f7dc70e89b265b42a9c1fd5587b87696');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 66097d539d08f795 - 0ce388bf1e20","slots W005 on_item a1fdfb2c692e","stays 310ebef05f7b91a9 stored 9b4e9834e926"],"stay":"310ebef05f7b91a9","title":"Front wheel 5","turn":1}', 'a1a7f948821f7bdecaf98fe3a113d94fbecccd48a9acd3243938eac3da717e9a');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 8ce9975bf39028c7 - 50ed4505eded","slots W006 on_item 3dd6244f0bee","stays f4c0fdbca56b0c44 stored 90c747c6cbc9"],"stay":"f4c0fdbca56b0c44","title":"Front wheel 6","turn":1}', 'eb79d21ae78ff39295b012a813c3776706866fb44677518d5cbb623607559737');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 0001a0a06a518d73 - e9f333d19f8f","slots W007 on_item d52463b699e2","stays 5e702ce4413918d1 stored 478f2af928eb"],"stay":"5e702ce4413918d1","title":"Front wheel 7","turn":1}', 'bbb8b794416d6899ef9eec9bcb4d8aaf4e2f251cebbd6d4c0929371110ae4922');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 7746fd3ee8899d68 - c260edc57d5c","slots W008 on_item 2e167460fb16","stays a2b65f5ecf75825a stored b4f7f0636efc"],"stay":"a2b65f5ecf75825a","title":"Front wheel 8","turn":1}', '574eebe3821f08a2efe45844be9f51a70357fa83a9844d8d611fd86eb28d93d8');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items f2c6cb6c296bc9b9 - bc0f36bba77b","slots W009 on_item 597fc2f4b56e","stays 8f511301c758eb6b stored ded9c02f6eca"],"stay":"8f511301c758eb6b","title":"Front wheel 9","turn":1}', 'fbc80f57e5192b97ed3dc6d4c7cf29a5e15bca046039861848fdf459fb2b63ca');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items ed5f631120c58e46 - a95060e7655d","slots W010 on_item 7d0365c2d2de","stays 5fa096fa7e922e59 stored 0d27476d229a"],"stay":"5fa096fa7e922e59","title":"Front wheel 10","turn":1}', 'eee5227fb9762f5784f660a7cde9cc2319ad1b8e350b5a5cb1b7fbb12f9261fb');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 66bdf0eb9f6fb207 - 7ed34463688f","slots W011 on_item d3a26b640d71","stays bd4d1db33ba77903 stored 6feb0fd57e37"],"stay":"bd4d1db33ba77903","title":"Front wheel 11","turn":1}', '920d5edf66e7e1f68c3f9f1df6f00c33a08b0ff268ee028ed48f2d05000b89e4');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 771e6e9c0777c67a - cf5b0e346c14","slots W012 on_item ac10bfb906d6","stays 6aba80acf75b30a0 stored 2b752fb499f1"],"stay":"6aba80acf75b30a0","title":"Front wheel 12","turn":1}', '02f18dee1a90a356397c35eb7c5108ad8c94120235d2c5cb2f252803ed8b6527');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:21:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"b769d98f6d4327a8"}', 'e912e61ac8a561c71020e1a02a507f9337e9add55f8e0cf8fb391ae179058bb0');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 9245204d206fc59e - 639ae847caca","slots D013 on_item 69b6f1c92d5d","stays 68d166748fdfdb77 stored 2a4357968d77"],"stay":"68d166748fdfdb77","title":"Brass bell","turn":1}', '534f6633dfdb34b3f340afab7ea1317f92ad05a1da889fd34ac2136815ff67d4');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 5d5262748bf11008 - f3384e4b769f"],"stay":"b2646859709d6014"}', 'cebf7800f7dcf715072e6d773241dbe364145315aef2095c9286635e8fe02d41');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays ddf7bdbaa065fbf4 withdrawn 6f03bf8efdec","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"ddf7bdbaa065fbf4"}', 'd839622d0c63f5a1c87e079afcd62fd4703b0f5a878582921bff3400e8c3b13c');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays e3b65400dc96b174 withdrawn e21cc0fd2c94","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"e3b65400dc96b174"}', '0cb3e87b9f18044449238bd69ee0dd444a23dbfa69a1ab870413490b14d93934');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"4e8ff7a985fe651a","now":["stays a3f2d24371922ff1 moved 962992fdf2fd","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 4e8ff7a985fe651a stored df73cc2fced8"],"stay":"a3f2d24371922ff1","to":"S013"}', '5f122b2e1a30e09e195f07de1d24c8cf25d7031ab3741fd8badd24a6953f5c31');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items f2443b867e431d04 - 1a7fb54a5805"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"3aff4e94d5a6292e"}', '5f06cd922409d3803bfac1837127fa97bf33688505d84d4b479af3e5e7775f19');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 0d125dc1f79d58b1 - 9d72ea684ddd"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"e32f5a5a1861f062"}', '2cf659acca03d8941b190f8bd6b6d9258f6cd6eebc05467d79fc1b20da1ed82b');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items b1dd2c8f110e0aee - b8fe1d84c7fd","slots L013 on_item 417a81be4bcb","stays 0211f0780ac3ac9a stored a63c1e4b31ba","items 3b3a648ba997c6dc - e6deee6879d4","slots L014 on_item 26405b275a18","stays 6555e161e47001a6 stored 5713d70260de"],"stay":"0211f0780ac3ac9a","title":"Carbide lamp","turn":1}', '65f1114b1d66bbe3a3db011d88a21957f18fb4dc527451ae6ab5fc526eaa4120');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"6555e161e47001a6","title":"Rear lamp","turn":1}', '8cf00fd57a003823771abb310884b75554e1121a66247c3f3cff80a11289a24c');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', '71ffec789e3f5ba28b243b28068196de06be694b679a3b8c3774057ef280d331');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 771e6e9c0777c67a - dbc2d1600a63"],"stay":"6aba80acf75b30a0","until":"2026-12-24T23:59:59+00:00"}', 'c0c581c704502959b081c458d034b37df546cfa87c9598ca02450c14a110ea42');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 66bdf0eb9f6fb207 - 045046735c83"],"stay":"bd4d1db33ba77903"}', '4d3c11a2637ad127ec4de98d29c834263f8fe1eab9e85c659e6b0b2fe21d4fcb');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', 'cd39fb20471d969d4859c2d957ea75ae723bd0a61608229a9fee64d6639d6169');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'eeae3c633370fedec4ed8c79ce37f83aa3bc0a97e9bea24c2fdece40cfb66d53');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:36:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'fbd52a11a18e5a20631614976a232fa893f08cc2073029697d1dacce39f8dcdc');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:37:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'f2003af6fc489f75256356d306cdfa70e42b8fc9a6a28f95ab83f5fa62fb687f');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '3235d2f223e79689e61a94d6d6d886ef223f91de289b5482e46b8967ddb1bec7');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5d49726034fcb9cc","reference":"W001-01E","stay":"fa93337f99fb0a4c"},{"hold":null,"line":"b73a3ff34b30bd1a","reference":"W002-016","stay":"6b40c5b50582e1ab"}],"now":["orders 14fd0269e0172398 - fb5c36b23787","lines 5d49726034fcb9cc waiting 5ddb3e2f6aff","lines b73a3ff34b30bd1a waiting 4f9655bdfec4"],"number":"B-01","order":"14fd0269e0172398"}', '213529e72715cdf7078502719e0085debfcdc608ebd5a3204f461e9e1ae6914e');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"54c9f1cf8e048720","reference":"S002-013","stay":"d1a852df8d9b86e7"},{"hold":null,"line":"17eeca1115ed8778","reference":"S003-01W","stay":"5e7f3540604b0104"}],"now":["orders b5ceb09a96b0ac3a - cbcaaf5f4c3b","lines 54c9f1cf8e048720 waiting faa7976f251c","lines 17eeca1115ed8778 waiting 5927678576af"],"number":"B-03","order":"b5ceb09a96b0ac3a"}', '2402a12c4b57d260494c02b6f5057ed415f8d37b077605fcb185448a159b3190');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"dab07be7cc0ed974","reference":"S004-01O","stay":"684f0df5c0184a53"},{"hold":null,"line":"b865bcc2765ba4fe","reference":"S005-01G","stay":"1c87972f58d5afd0"}],"now":["orders e0586ebbf76a5491 - 6b86b72cd676","lines dab07be7cc0ed974 waiting 8788609ada7c","lines b865bcc2765ba4fe waiting 80f079d3d5a1"],"number":"B-04","order":"e0586ebbf76a5491"}', 'f58f4e9b6872e45507947f761d6988ebe728e6f41757ce6a2783a75826513674');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3ec8282b4046ae2b","reference":"L002-017","stay":"df2a60b1642db71f"}],"now":["orders 8b52060fd24fd24b - ba1556848022","lines 3ec8282b4046ae2b waiting 8a012a06965e"],"number":"B-05","order":"8b52060fd24fd24b"}', '5ff7162ea05201c36682a336175e69531d3287ec0ff9f410c740625982eea878');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:24:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 94394f553296ad19 open ceb12cfc5dab"],"stocktake":"94394f553296ad19"}', 'bd084d4a00d69e951a4d6d7cefb30b001acc95c3ae79cee43e5e16f3b343d95c');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"02f4be995e1ab64d","reference":"L003-010","stay":"c6a8fe64870c5f2b"}],"now":["orders cff0dda21b5c63d6 - dabef2a2c39e","lines 02f4be995e1ab64d waiting fe2046b07f62"],"number":"B-06","order":"cff0dda21b5c63d6"}', '78a66c3213b77b08153c6f857cd497e40e722cce02bdcf993cbd1fc6b4a3e643');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e8dbb4c1204186c2","reference":"L004-01S","stay":"6014a9d1ef1afb3b"}],"now":["orders 4cc6db8b771110d5 - 9f9207af3379","lines e8dbb4c1204186c2 waiting cef78c3d7965"],"number":"B-07","order":"4cc6db8b771110d5"}', '5ff8a4931f7f1989b2ce847b0235cd2c8119a1391a661b6a8518dbe88a2bcbc8');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e4e96ee612e6e9f3","reference":"L005-01K","stay":"9ba8b8cdc277a6b2"}],"now":["orders 422e689813609ecb - bc9c7dc8ccf3","lines e4e96ee612e6e9f3 waiting df8db6672052"],"number":"B-08","order":"422e689813609ecb"}', '322d77b55dfc46f95c742f5ebd51588e8df204f0c71c4870ddc04bc2575a551f');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"efccda140491da68","reference":"L006-01C","stay":"c61f2407c1ad22e3"},{"hold":null,"line":"d37d5b766aac02bf","reference":"L011-010","stay":"35177628c86c1f01"}],"now":["orders e9bf01181f2e6ca8 - 7744b53b806e","lines efccda140491da68 waiting f3d44528eb10","lines d37d5b766aac02bf waiting ddd75fb4a3ae"],"number":"B-09","order":"e9bf01181f2e6ca8"}', '6739bbbb8b93c067263006754d0f226bd6afec2c4bbed35dd8e0dc1d112d3c6f');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8a344ca569ea05f6","reference":"S006-018","stay":"96551bb439d6affa"}],"now":["orders 37da90ea5d5cc1af - 2f3efdfbbe8d","lines 8a344ca569ea05f6 waiting e6134de23f48"],"number":"B-13","order":"37da90ea5d5cc1af"}', '71b440ea0594969d381347419b43aacb6b00a995fc7a6980db2502f02ebb588b');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"67ea2be2f0309589","reference":"L007-014","stay":"0bed663824a931b1"}],"now":["orders 6ba6288e6855838d - 00ec6d43d713","lines 67ea2be2f0309589 waiting 6f572c12765f"],"number":"B-17","order":"6ba6288e6855838d"}', 'ffa074c15dc6cc67030065beaf91cb284e161fc122de09ad9a93976007828827');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"aed104287e310796","reference":"D009-01B","stay":"0313e57a2960f58a"}],"now":["orders 231e70ce22469e23 - 7fae52bdbeba","lines aed104287e310796 waiting 664f476936ce"],"number":"B-18","order":"231e70ce22469e23"}', '517a7eeffab75a700d2e989c737407a8220d1870101f94f83e73eee151b5a312');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a69a413c33729361","reference":"W006-013","stay":"f4c0fdbca56b0c44"}],"now":["orders f37284a22baab08a - 75b8b3d60a2e","lines a69a413c33729361 waiting 7416d9e65796"],"number":"B-21","order":"f37284a22baab08a"}', '0911910a6abad939554d4bba52b51b443a892413ab96eec34a044eb5b460061f');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"65e5e531b8d1a7c1","reference":"S007-01Z","stay":"238af3f265255258"}],"now":["orders 7f150d74284abe47 - 0d300f1fbd77","lines 65e5e531b8d1a7c1 waiting b5f4f87d359f"],"number":"B-22","order":"7f150d74284abe47"}', 'f61eb9d2f4eb71309afcc2cc5d918647ac2153d09f88c17b81a0764ade38d51f');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2d0b671b325f5ca7","reference":"W007-01W","stay":"5e702ce4413918d1"},{"hold":null,"line":"fed04b632bdc6eb3","reference":"W008-01O","stay":"a2b65f5ecf75825a"}],"now":["orders 5bc235e8c41837ea - 69648f761aa1","lines 2d0b671b325f5ca7 waiting d3bea660ca93","lines fed04b632bdc6eb3 waiting e7f1659a2efc"],"number":"B-23","order":"5bc235e8c41837ea"}', '8792192c8abbf3f84b6cb4173bbf72f660b2a51f17c407ce63070d034625b7ee');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1ae7eb0ceae09715","reference":"D008-01J","stay":"ba25abebd7f89383"}],"now":["orders 68d507191bee8ba5 - db4e909ac07c","lines 1ae7eb0ceae09715 waiting 8aa8df3170e0"],"number":"B-26","order":"68d507191bee8ba5"}', '3d91b275dbe669d47ea84ae089be9bd63dcbdeb9484bacb66b3224a7b597bb09');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a9d0935d33eecf6e","reference":"D003-01U","stay":"d59545a2609cbc42"}],"now":["orders 8e4298120be0a1a6 - 8d4cf2259afe","lines a9d0935d33eecf6e waiting 1c760eecb9bd"],"number":"B-30","order":"8e4298120be0a1a6"}', '9b87b3812481989fbbe837585449441af927e3f5c5b4b7b95e45362c094a283a');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1616ffbd29c0e5e2","reference":"D005-01E","stay":"65a5ae5fe100f013"},{"hold":"unknown_code","line":"851bee39cb3602e8","reference":"Z999","stay":null}],"now":["orders 3c0789a4b1e858dd - 8703911532f4","lines 1616ffbd29c0e5e2 waiting 15cb291005a8","lines 851bee39cb3602e8 unbound 6830960a5c3a"],"number":"B-31","order":"3c0789a4b1e858dd"}', '91183d9582267384b000bb6d9e47c56040a44fa32512048bff6aeb62043da609');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"29ef581d1b2b9911","reference":"D006-016","stay":"3148a551bbeefaad"},{"hold":null,"line":"b256385d96861b05","reference":"D007-01R","stay":"3e800395c4261b94"}],"now":["orders 1ef04d722ca4438c - 2c4c0aef3224","lines 29ef581d1b2b9911 waiting 53b81c36f4b2","lines b256385d96861b05 waiting 842ae4ea0166"],"number":"B-32","order":"1ef04d722ca4438c"}', '42aa4d4374c7b357f8a69058e76cd4a6d9ac3f7409002f994be5aa4734b79be9');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"b256385d96861b05","reference":"D007-01R","stay":"3e800395c4261b94"}],"now":["lines b256385d96861b05 waiting 950230cb122a"],"number":"B-32","order":"1ef04d722ca4438c"}', '4b8feb51f4fb20df782387198a681f2697c5a47a1be5bb0c0bb08ae346cc333f');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"c83dc8dd98914b1e","reference":"lamp","stay":null}],"now":["orders e0a236ae4ef7fa38 - 7059c191b710","lines c83dc8dd98914b1e unbound b3786e35c01b"],"number":"B-33","order":"e0a236ae4ef7fa38"}', 'a04e6988207a11546e6fee83cf2a31ed2289ffb49d7f23a121f6ca927b901dd7');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"310814f20d64e7ef","reference":"D006-016","stay":null}],"now":["orders cf9101caa029e050 - ea3168de01b1","lines 310814f20d64e7ef unbound 856e475f1370"],"number":"B-34","order":"cf9101caa029e050"}', 'bd34e130f6d59c204d6f3f42f6967d62dd690f12e883cc67654411f71e35b2be');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"c634b52bf037f42a","reference":"W004-01J","stay":null}],"now":["orders 34cde56c4402f885 - d5cd13782c7d","lines c634b52bf037f42a unbound 89b6f1e13fa2"],"number":"B-35","order":"34cde56c4402f885"}', 'fd1d70c7fe8706e955528d8ad106172961e1a242c09fca0929a6fa4d7c2ae515');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"dde1232df7204f99","reference":"L015","stay":null}],"now":["orders dbda1689ef8a9ca0 - 9f51bdb6f61d","lines dde1232df7204f99 unbound 7a766dc64d9d"],"number":"B-36","order":"dbda1689ef8a9ca0"}', 'c102961e93564a62690c38b3137732e868758e7882a098b14986405402be9297');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"e0a88d19d2c1b5af","reference":"W005-01B","stay":"310ebef05f7b91a9"}],"now":["orders e533b5a60d47e459 - 0e8ce7ba9378","lines e0a88d19d2c1b5af waiting 600bc70cab15"],"number":"B-37","order":"e533b5a60d47e459"}', '46382aee864c04cfe6c52212fad6e011a4abbfe1b1c2ea1eafdd32d053a49505');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"e0a88d19d2c1b5af","now":["lines e0a88d19d2c1b5af waiting a780062ed505"],"stay":"310ebef05f7b91a9"}', '4e1affe1f8ea49e1fd5867a821e8d8cb4b61d806fc2f171075f71057427ad4e7');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:56:00.000000+00:00', 'doubted', 'boss', '{"doubt":"6e2a70abf5ea4ede","doubt_kind":"not_this","item":"eb2552168ad1ea22","now":["doubts 6e2a70abf5ea4ede - ac205dd39f6f","lines 67ea2be2f0309589 waiting 846462b3955c"],"words":"Another lamp, by the photo"}', 'e6dbea02d0ba010a6dc1014b3f38bbcae97ac7aea35fc2585626a7f0e9200105');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'held', 'boss', '{"line":"67ea2be2f0309589","why":"Another lamp, by the photo"}', 'ee1de8b13f889074c02c8fb0bdf110fbea51e7e9aa6852f89ad175431409b5f9');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["e4e96ee612e6e9f3"],"now":["lines e4e96ee612e6e9f3 cancelled 3f2dd1703a2d"],"number":"B-08","order":"422e689813609ecb"}', 'cb2effd7a0456f2948b58ffca5c132c96d4bffdd928ce56f00a19aabf44475c6');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'cancelled', 'boss', '{"lines":["a69a413c33729361"],"now":["lines a69a413c33729361 cancelled d47caa980c24"],"number":"B-21","order":"f37284a22baab08a"}', '9bc62afa0da937e209c3beb733ed4a0031ef06e4d30d5fd7358ea728d1ef133c');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'revived', 'boss', '{"line":"a69a413c33729361","now":["lines a69a413c33729361 waiting 7416d9e65796"],"stay":"f4c0fdbca56b0c44"}', 'af53e19adff3a712b9cd5de20a6174ffff20e6232ed6b890729075ae1c6fc96a');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"0ebc68a5c4011097","now":["stays ba25abebd7f89383 moved ee082d808f2f","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 0ebc68a5c4011097 stored 58bf5904e773","lines 1ae7eb0ceae09715 waiting 75ee06b50796"],"stay":"ba25abebd7f89383","to":"D020"}', '20dcd19102119ae11329d8d38819d85937dfbfd0c67a0c805a76e44cc861a235');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"b97bf22750c2bdf8","reference":"L012-01S","stay":"2b49133bca4e73ad"}],"note":"Rings at noon","now":["orders 102ad92ba4d37780 - f38f75db76a7","lines b97bf22750c2bdf8 waiting b115a73a26ac"],"number":"Sale L012-01S","order":"102ad92ba4d37780"}', '0df8169b2e6e01b617d1209c222ed4cc42ccd83de66299bababb16297f763775');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"77acc6fb4de32cbd","reference":"S012-01O","stay":"2c880100e1572fe4"}],"now":["orders 098a8c5668d241d3 - 46853ff79dcf","lines 77acc6fb4de32cbd waiting daf4214e8a79","orders 34821e90fc31c8d6 - b11fd1f4e726","lines 103c4a6b7f71a443 unbound eb16842052ac"],"number":"F-1","order":"098a8c5668d241d3"}', '686677c673a3a76211568b57b99497e594fd496cf3dbf3a838f0922f677a504b');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"103c4a6b7f71a443","reference":"","stay":null}],"number":"F-2","order":"34821e90fc31c8d6"}', '2e4613b888d615b25a7832d3481a3daeb9d296970498de2b4145a4afd589175e');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'round opened', 'boss', '{"lines":["5d49726034fcb9cc","b73a3ff34b30bd1a","54c9f1cf8e048720","17eeca1115ed8778","dab07be7cc0ed974","b865bcc2765ba4fe","efccda140491da68","d37d5b766aac02bf","8a344ca569ea05f6","65e5e531b8d1a7c1","2d0b671b325f5ca7","fed04b632bdc6eb3"],"now":["rounds 40399c7c876dd203 open 991c4a4df980","lines 54c9f1cf8e048720 waiting e6c1133eed77","lines 17eeca1115ed8778 waiting 2a4d7647940b","lines dab07be7cc0ed974 waiting cbb2053fc43a","lines b865bcc2765ba4fe waiting a2d9e984a0f2","lines 8a344ca569ea05f6 waiting c5fee8011059","lines 65e5e531b8d1a7c1 waiting 01192efb749f","lines 5d49726034fcb9cc waiting ca4d1e19701a","lines b73a3ff34b30bd1a waiting abe98b6d2069","lines 2d0b671b325f5ca7 waiting 6943e3c1d616","lines fed04b632bdc6eb3 waiting bc173cb66487","lines efccda140491da68 waiting d23591b21454","lines d37d5b766aac02bf waiting 636466486771"],"round":"40399c7c876dd203"}', '4c1496e9c62219d12744a1fdf4497a3ef287f97aaf4f6ed2338dcfec2cdfd888');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 98b668495a2e","scans free-D004 - 51186decabd9"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'aa06aeb3c76a579f0142f4613f2a37c63ff8b9f737be61aeb4c399dc58a68994');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"5d49726034fcb9cc","line_state":"picked","now":["slots W001 on_item 2d7dc2e98451","lines 5d49726034fcb9cc picked 528e33c4806f","scans pick-W001 - 7a86b838e018"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b848e155a3549e79c775a85aab6dc9fedeb8e4c839aea2eea8d0e3141fe888cc');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"b73a3ff34b30bd1a","line_state":"picked","now":["slots W002 on_item 28befd0add9d","lines b73a3ff34b30bd1a picked e5cd30a8862d","scans pick-W002 - e040f8c80933"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '551f7dcb1fb1660a6b10cb319494fff3496468c769e893df7d68e71bb99c9e34');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"54c9f1cf8e048720","line_state":"picked","now":["slots S002 on_item 3bba0275df61","lines 54c9f1cf8e048720 picked 8f9c0cd59f19","scans pick-S002 - f2019a0366a1"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '5c966ced205598d500fcfe83f490a19de1dd13d6c095d064188d909e65e25cea');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"17eeca1115ed8778","line_state":"picked","now":["slots S003 on_item a417ccbdd06a","lines 17eeca1115ed8778 picked 4ea8b3211833","scans pick-S003 - 27a25355417c"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'a2af7b020ef92461b4f03ced2b1ff615b4e8a0c4f408072a09e81e4b4cf44543');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"dab07be7cc0ed974","line_state":"picked","now":["slots S004 on_item 80e0bff3d551","lines dab07be7cc0ed974 picked b37fab0dd669","scans pick-S004 - 37706dcb0cb6"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '68014144bced910b4aa5a64c7779e9c3b4851e2f1c510a52c40dd00e36408429');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"b865bcc2765ba4fe","line_state":"picked","now":["slots S005 on_item e45ff65122de","lines b865bcc2765ba4fe picked 50d1b4f41d72","scans pick-S005 - c29d3943b520"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '87fb0415d836b02a92b17fff54e4983f76b66c687ebfbe1a592bed2d78e6c5f8');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"efccda140491da68","line_state":"picked","now":["slots L006 on_item 41808d7001db","lines efccda140491da68 picked ec6892e35dc2","scans pick-L006 - 51727f3a76b3"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '2e1f1106155ff9a62b5d826ca712dd8ed7ab66a4ca4be5ed1818fe8ebf88bba6');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"d37d5b766aac02bf","line_state":"picked","now":["slots L011 on_item 1e76c5f033d2","lines d37d5b766aac02bf picked 31e141466a45","scans pick-L011 - d9c7473c7d51"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'a53fcd527712b0270aebf256b4a166839f4695fd647278fece30cd8da234d38c');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"8a344ca569ea05f6","line_state":"picked","now":["slots S006 on_item aed3233e1959","lines 8a344ca569ea05f6 picked b8e05462e382","scans pick-S006 - 904bddfe6575"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '992c9b5e0f6d6b51cc9c257e0f1af6795e866f8999f3186661491bb0b823aa07');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"65e5e531b8d1a7c1","line_state":"picked","now":["slots S007 on_item 20ce574374b1","lines 65e5e531b8d1a7c1 picked f069097d0ebe","scans pick-S007 - 074290ed00ab"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'b01cee8aa3c0a0b8d64d8cb575ed4e7931bff9e5eb0e7bd7a9997d31ac8f5838');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"2d0b671b325f5ca7","line_state":"picked","now":["slots W007 on_item 6ba198048921","lines 2d0b671b325f5ca7 picked 0b0859def726","scans pick-W007 - 3f2e75725199"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '0309622e8f3bae42d8b26d0bb35f9187ab0475de938d2eaef2ddc271c43fefaa');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"fed04b632bdc6eb3","line_state":"picked","now":["slots W008 on_item df74e3dd23c1","lines fed04b632bdc6eb3 picked cfc91170f80f","scans pick-W008 - eeeaba245a2a"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"40399c7c876dd203","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '3c0aea9948ecdc9c3494f0d2733f0779140afbf8d69b2654f65777e71da3b036');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:02:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"fed04b632bdc6eb3","line_state":"waiting","now":["lines fed04b632bdc6eb3 waiting bc173cb66487","slots W008 on_item b5edfe4a0bab"]}', '5e4adbaae2ecb14513f38551ca39cf32d940ab1c1fa2f1d1cf626229d88af17b');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:05:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 40399c7c876dd203 closed 9ffdba81a849"],"round":"40399c7c876dd203"}', 'bcb9a1107e2fb3a9d4bba448008208018b4d1306d3f735d9602550f2e5b4b10d');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:08:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d48bcf939bfb3081 open 485ce9651bfe","orders 14fd0269e0172398 - 1ea99423bd8d"],"orders":["14fd0269e0172398"],"parcel":"d48bcf939bfb3081","table":"main"}', '9beb8ed14a56cd29cf032175d9bdfd6d92e1e8c695903e56e30636de6bae254a');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"54c9f1cf8e048720","line_state":"picked","now":["slots S002 on_item 30f035b2f55a","scans other-S002 - c3074152efb3"],"order_number":"B-03","parcel":"d48bcf939bfb3081","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '16e973373102fbfeafd8deeece365aa93b0cd3ace483fc26114a2a83c60b7d6a');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"5d49726034fcb9cc","line_state":"packed","now":["lines 5d49726034fcb9cc packed 6cddab25c550","slots W001 on_item 5605ecf03467","scans pack-W001 - fe77bb67a6d2"],"order_number":"B-01","parcel":"d48bcf939bfb3081","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '726d953ae91ad15222dad615765ed3f0f945180d82d04315064d06de0e34cdb5');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:17:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines b73a3ff34b30bd1a released 84b71ceafc18","slots W002 due 7a576e7328a4","lines 5d49726034fcb9cc released b8cf2699334d","stays fa93337f99fb0a4c shipped 22b79e6b0d89","slots W001 due fb88ee65d55e","stays 6b40c5b50582e1ab shipped 25c9982f1efc","parcels d48bcf939bfb3081 closed fb99c2861955","orders 14fd0269e0172398 - fb5c36b23787","scans pack-W002 - 392a631581aa"],"orders":["14fd0269e0172398"],"parcel":"d48bcf939bfb3081","released":["W001","W002"]}', 'e2e77e88f38d3b4f07ba9f9c96caf7eaca1bcd58a1b1026e269f9a03b89a44d8');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"b73a3ff34b30bd1a","line_state":"released","order_number":"B-01","parcel":"d48bcf939bfb3081","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '795f6c0646eba6f0c8ebe113229b43a6e04ad4a86cfc57aec313449dc9885a94');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"5d49726034fcb9cc","line_state":"released","now":["slots W001 tray 08268466c133","scans back-W001 - 3b0b84b0df76"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '8635959dd93e10268449e22aa9735a5a89aad8272d6082549cdde4ad24f514a0');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items ccfd524f8290c517 - 01ea47128949","slots W001 on_item 4bac4e5a272f","stays 6c17adcf8aad3a66 stored f08fee10f2c5"],"stay":"6c17adcf8aad3a66","title":"Rear wheel","turn":2}', 'cf558616b4844ac7949bdbb30f138a2ce5bc51a577dc74cc03b4036083c342f2');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:27:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 3c759dbcbd9e"],"parcel":"d48bcf939bfb3081"}', '12be8f72c32c73ffba92302a0bc37a7e4f7ed9f33b8ba16e874ecfb3ad4e83f4');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:30:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels a8f091b8bc834bd1 open c4a6f007773a","orders 5bc235e8c41837ea - 11f7717f146d"],"orders":["5bc235e8c41837ea"],"parcel":"a8f091b8bc834bd1","table":"main"}', '7002059ff398db030e1119877b8050ef8aeab469746eea721b3e964c3520692c');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"2d0b671b325f5ca7","line_state":"packed","now":["lines 2d0b671b325f5ca7 packed e6afc0ba6b39","slots W007 on_item 93f43a0b828c","scans pack-W007 - d17be102d2b4"],"order_number":"B-23","parcel":"a8f091b8bc834bd1","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '13137d5a88ea7fcc4ae905cd71192f5acb04a6d4e2c286bb5e2d2481e250bc6e');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:36:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 2d0b671b325f5ca7 released 0d1eb9a1d57b","stays 5e702ce4413918d1 shipped aa7f389b9b9a","slots W007 due 7d1f595f237d","parcels a8f091b8bc834bd1 closed 3308e9e045d6","orders 5bc235e8c41837ea - 69648f761aa1"],"orders":["5bc235e8c41837ea"],"parcel":"a8f091b8bc834bd1","released":["W007"]}', 'a8f56c8bd9cf03fa86cde5c5d339ab74d6d8f0f2105f69fd987d8ab8311dbeb7');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:39:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 2d0b671b325f5ca7 packed 7d85cba057cb","stays 5e702ce4413918d1 stored 478f2af928eb","slots W007 on_item bfab0700a639","parcels a8f091b8bc834bd1 open b1938854bbe1","orders 5bc235e8c41837ea - 11f7717f146d"],"orders":["5bc235e8c41837ea"],"parcel":"a8f091b8bc834bd1"}', '0f7bd7d499848a94ad206214802de667d9cf44ec525509417ab3197dbf83fb01');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:42:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 2d0b671b325f5ca7 released 0d1eb9a1d57b","stays 5e702ce4413918d1 shipped 1a6d039ddd75","slots W007 due 7d1f595f237d","parcels a8f091b8bc834bd1 closed 256efa9363d5","orders 5bc235e8c41837ea - 69648f761aa1"],"orders":["5bc235e8c41837ea"],"parcel":"a8f091b8bc834bd1","released":["W007"]}', 'e24a34c03787ed05aae7311db23a93987beff114fb88f4465f7af0790b550b0f');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:45:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 9368c34cbc54ad14 open b6b0291833c7","orders 7f150d74284abe47 - c42411ce414d"],"orders":["7f150d74284abe47"],"parcel":"9368c34cbc54ad14","table":"main"}', 'ea6d7d0188aa1d7d6ec46de9447e18dd36508e63d71a203be9b0f20a62bfc528');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:48:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 9368c34cbc54ad14 dropped 9e3c54440477","orders 7f150d74284abe47 - 0d300f1fbd77"],"parcel":"9368c34cbc54ad14"}', 'cde621ac1147669ec7d918cf74e6b08a714e0b8b4ea973d00800b365afd00422');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:51:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels a6a8b8ed212bafe3 open d80b940d400f","orders e0586ebbf76a5491 - 32b239e579ce"],"orders":["e0586ebbf76a5491"],"parcel":"a6a8b8ed212bafe3","table":"main"}', '6da954c9b582f60d0da63f69ddce2ba647df5f3b3ff23886ef45eb73d174e7bf');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:54:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"dab07be7cc0ed974","line_state":"packed","now":["lines dab07be7cc0ed974 packed 946b4c0e288c","slots S004 on_item 63cd0dbf283a","scans pack-S004 - 41265875b586"],"order_number":"B-04","parcel":"a6a8b8ed212bafe3","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '949d14aa5b7d11301e365403ff55cb52b7be5b040c3aabfa313fd371093ca518');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:57:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels a6a8b8ed212bafe3 aside 3c942ec2c986"],"parcel":"a6a8b8ed212bafe3"}', '128a63dd360d6f1223257b334be305d3dbff3ee753923fc9997cc867c5a4ec13');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:00:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 630d04c7e68adb14 open fec047f150ab","orders e9bf01181f2e6ca8 - 665dc924bc02"],"orders":["e9bf01181f2e6ca8"],"parcel":"630d04c7e68adb14","table":"second"}', 'fff09e49ade2d8f72fb74266e391cb3c0f3c67528a1c2126ada8e3e378a8a20f');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:03:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"efccda140491da68","line_state":"packed","now":["lines efccda140491da68 packed dcead5f07478","slots L006 on_item 5a5e6b1be193","scans pack-L006 - 4a044c87c713"],"order_number":"B-09","parcel":"630d04c7e68adb14","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '90ad09df9d6f0a40bbce5f499689759ae4b8caa27c112a913a4afd8c3eec5c8d');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:06:00.000000+00:00', 'cancelled', 'boss', '{"lines":["efccda140491da68","d37d5b766aac02bf"],"now":["lines efccda140491da68 packed 02d5b9babd80","lines d37d5b766aac02bf cancelled 30eb4387779d"],"number":"B-09","order":"e9bf01181f2e6ca8"}', '4ae6e56aa3a154c1bcfa21ba055a14ca87e4748de643bd86e18d67a3556ec0c4');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:09:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels e00aefe75cd3658a open 8975bb03dbd9","orders b5ceb09a96b0ac3a - b3845c4db8d5"],"orders":["b5ceb09a96b0ac3a"],"parcel":"e00aefe75cd3658a","table":"main"}', '7583b842953629e02c788284c862f3658af27e540ad699e21163dadfd56c51fc');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"54c9f1cf8e048720","line_state":"packed","now":["lines 54c9f1cf8e048720 packed 7d66e6ffee09","slots S002 on_item 6a6d7c696cb9","scans pack-S002 - 41bdbbf72ff8"],"order_number":"B-03","parcel":"e00aefe75cd3658a","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'af5c0d2d498491482782fe010b88f258db9542ec2785291c827b727d1d1e4e94');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:15:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"8a344ca569ea05f6","reference":"S006-018","stay":"96551bb439d6affa"}],"now":["lines 8a344ca569ea05f6 picked 10f60be41d59"],"number":"B-13","order":"37da90ea5d5cc1af"}', '55514cec1e023d9bc854847f97f2f8a7176a2dbfa5c4f39552ac75bfbcf1d5e7');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:18:00.000000+00:00', 'round opened', 'boss', '{"lines":["3ec8282b4046ae2b","02f4be995e1ab64d","e8dbb4c1204186c2","1ae7eb0ceae09715"],"now":["rounds 8493aa2f12b3b3cf open 3373b6900afa","lines 1ae7eb0ceae09715 waiting 6f0a4877bbf1","lines 3ec8282b4046ae2b waiting 026dc64f7db8","lines 02f4be995e1ab64d waiting 050ff922850c","lines e8dbb4c1204186c2 waiting 7ac6085124f8"],"round":"8493aa2f12b3b3cf"}', '2092a481e341a7181b8e2c7c4a03b68d3d6a1770100fd94d7db0330ba19b6765');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:21:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"3ec8282b4046ae2b","line_state":"picked","now":["slots L002 on_item 980ce30e04de","lines 3ec8282b4046ae2b picked 7322c032cf55","scans pick-L002 - af9c60cd0d65"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8493aa2f12b3b3cf","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '684cfffedc367f646e1df8cc11280fdcbbdb1427985b6600df780ba6e49fb222');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:24:00.000000+00:00', 'short', 'boss', '{"line":"e8dbb4c1204186c2","note":"Not in its bin","now":["lines e8dbb4c1204186c2 short 6923135b9f3d","doubts da755945c52bbe8e - da71ce03a35e"]}', '4452742d447797b49a3f0374192dd932b1f2f5f3537cb4beb32c71e874a0d746');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'doubted', 'boss', '{"doubt":"da755945c52bbe8e","doubt_kind":"missing","item":"d8717d38ddcd4fbc","words":"Not in its bin"}', 'cd7b2c19392a99ca436e57f38e34ec473296842a57579efeda61a60b109e49f1');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - b7bab4bae93d"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"8493aa2f12b3b3cf","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'd9f848f8ccb5804baf351305f6349f004fbe50b924b0c8fb9822c5323d951862');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - ecfaa21c6dba"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"8493aa2f12b3b3cf","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '9dbfb228ce90ac7b38bc242bc9b1a2b8f9f128f2d3c03aa9cd1798fed2e1c5c8');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 0d50e94413d9"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"8493aa2f12b3b3cf","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'a3f1ce86e69ea53c99577277b8afa0c2fa76121e44c3ebe07bb5a7adb70182f4');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'f1174718e588ba05e083d03df77fc469dd18325c165c06015755d32faf788994');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '8e3f1533197c6c64fe9730244059091dc5e35d7177bd01600293f3e396bda1b9');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8ce5219f78dcc1f6","reference":"D001-019","stay":"3aff4e94d5a6292e"},{"hold":"already_sold","line":"895231f58412fa51","reference":"W002-016","stay":null}],"now":["orders a7648190bd3cd473 - 03b195c6e1a0","lines 8ce5219f78dcc1f6 waiting 0afba453cbac","lines 895231f58412fa51 unbound 95275bf9fe58"],"number":"B-38","order":"a7648190bd3cd473"}', 'cd7c8ddac6639d4734a074b8ca14ea637c48dcd2157b407c25061da61528ccd9');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"80644871863a070f","reference":"W001","stay":null}],"now":["orders 57cbfac1f739b81d - 6f098b6589e3","lines 80644871863a070f unbound 51a9939fb14a"],"number":"B-39","order":"57cbfac1f739b81d"}', 'fae877129a9f1e1401871ddfeeaae1cf6593e750b0093fdc12c5b07a15d03e0e');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:48:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes b769d98f6d4327a8 open 738c84822d17"],"stocktake":"b769d98f6d4327a8"}', '5e471e9cf74eb9d5ad8b0fe4b49d180d0cc36851aa2667ec27821125e0199c76');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:55:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - bec8d5d0ad6d","slots S001 on_item fd561f0f0012","doubts 2680786fa8b6c382 - e09e72e35401"],"photo":null,"place":"B-1-1","stocktake":"b769d98f6d4327a8","unread":0}', 'ce7fac5b6fc9ff99cef739a1b4aa0722a70c802ab59abb3a5dc83139c3c2d9c3');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:55:00.000000+00:00', 'doubted', 'boss', '{"doubt":"2680786fa8b6c382","doubt_kind":"not_this","item":"0d125dc1f79d58b1","now":["slots S003 on_item 4a1c27c73b16","slots S012 on_item 1a2c26c1ab7b","slots D010 on_item dd62d0f42546"],"words":"A count found another thing on its card in B-1-1."}', '95108b9a852025dbf6bdd579994517d441b1d1b01fd76fb1c68cd315aaaa6ddc');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:03:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - fe4d1e4b2600","slots S011 on_item b8c458e99057","slots S013 on_item 36edd8b68272"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"b769d98f6d4327a8","unread":0}', 'f4f115e30d044295b58fee53d72fe63e1c45859daea01a789c45d28a46201e0e');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:09:00.000000+00:00', 'finding resolved', 'boss', '{"after":167,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 0ea2e46ebb96","resolutions b769d98f6d4327a8.elsewhere-S012 - 60c1ecb9c110"],"reason":"","stocktake":"b769d98f6d4327a8","sure":false}', '83935e0f20002ef2118c5056e57226ae12f55816909aab4bcee071fd2dcbd148');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:12:00.000000+00:00', 'finding resolved', 'boss', '{"after":168,"finding":"unknown-Q0771","how":"ignore","now":["resolutions b769d98f6d4327a8.unknown-Q0771 - b76133e8f28c"],"reason":"A neighbour''s","stocktake":"b769d98f6d4327a8","sure":false}', '5790db095a05c1113891284765c2333d5ea3a17121ed4a3177b77a87d3567e54');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:15:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 5104c84d8ca2","resolutions b769d98f6d4327a8.missing-S008 - 0f30c7af7fa8"],"reason":"","stocktake":"b769d98f6d4327a8","sure":false}', '97fb48868f89a70acbb4e95e6d624c619e4a16da019ec35b70ca7c2c60cbe5f3');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:18:00.000000+00:00', 'finding reopened', 'boss', '{"after":170,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions b769d98f6d4327a8.missing-S008 - -"],"stocktake":"b769d98f6d4327a8"}', 'b18c5008f2b9586575486727f8c5b4138bc94038202d4b5a65b5ac929da94586');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"76aee8c1d7e1fd5d","doubt_kind":"missing","item":"273d705e091581e6","now":["doubts 76aee8c1d7e1fd5d - b484f2a1f07f","stocktakes b769d98f6d4327a8 closed dfaaac99318c"],"words":"a count of section:S did not find it"}', 'e451086433b98e799fa683b3a18184e52d9a7efd15a7eebe0796df301885a649');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:31:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 9e46fd3e97dd","slots L003 on_item f5af42dd9089","slots L004 on_item 38f54b60c566","slots L005 on_item c163bc7f25aa","slots L007 on_item 3d50edcdf11e"],"photo":null,"place":"C-1-1","stocktake":"94394f553296ad19","unread":0}', '0e4e923b2b98148d476eabe15e219fb01bee2f658c19c3f9d52979f56d5216ce');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:34:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts e745d68c98529f1f - 3c3fa5c07737"]}', '4dec99e91f4803b63a6e6929f39374cc4e8a8f4ab8e03b0db6f79cf551ef730c');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:34:00.000000+00:00', 'doubted', 'boss', '{"doubt":"e745d68c98529f1f","doubt_kind":"missing","item":"a918ead9cc27a89d","now":["resolutions 94394f553296ad19.missing-L008 - 7557c2410e05"],"words":"a count did not find it"}', '207cd463f53ddf7f5e61991dec546ac2a39b81dbea389623ade6e432344ec6fd');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:34:00.000000+00:00', 'finding resolved', 'boss', '{"after":175,"finding":"missing-L008","how":"lost","reason":"","stocktake":"94394f553296ad19","sure":false}', '36b94e6aaaa221ff1190489203ffe16a816b47e9e20394c7c6431aadf0274eda');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:37:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 8f5c8c7c51bcbbcb withdrawn 6322f496e9fb","slots L009 due 821cc144d722","resolutions 94394f553296ad19.missing-L009 - bb3847f6e904"],"reason":"Nowhere to be found","stay":"8f5c8c7c51bcbbcb"}', '4d8600b2eb3c9fa8f7af113c28e261384ad041ceb9f00078c62a9abe09366154');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:37:00.000000+00:00', 'finding resolved', 'boss', '{"after":178,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"94394f553296ad19","sure":false}', '6937b3794873b193f1f38983c24928f8e9de1532cac1348c228db854ec4bc50f');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 86cb6de34f951bf1 open 7d7ab443b9e1"],"sample":{"bins":["A-1-1"],"chosen":"blind","of":3},"stocktake":"86cb6de34f951bf1"}', '77c02ee352d7c4c7b92101177c3a1ecdf6cdc9538b83706aa6b902fe0e8ae268');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:43:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 3e203b8feb64bee1 open abd04c1ce55f"],"stocktake":"3e203b8feb64bee1"}', 'b1420928efdb4ba8fb9768b5a55f731912304c4fdaf9cdd7d9c298a2d6046726');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:46:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 3e203b8feb64bee1 cancelled 524d607f3c31"],"stocktake":"3e203b8feb64bee1"}', 'c32df94a7b3a55a8c6a2e6f17b446864553b813c8941d0276a2692f3004c242c');
INSERT INTO public.lines VALUES (15, 'aed104287e310796', '231e70ce22469e23', 1, 'D009-01B', 'Rear derailleur 9', '', '0313e57a2960f58a', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'a9d0935d33eecf6e', '8e4298120be0a1a6', 1, 'D003-01U', 'Bell with a crown', '', 'd59545a2609cbc42', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '1616ffbd29c0e5e2', '3c0789a4b1e858dd', 1, 'D005-01E', 'Rear derailleur 5', '', '65a5ae5fe100f013', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '851bee39cb3602e8', '3c0789a4b1e858dd', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, '29ef581d1b2b9911', '1ef04d722ca4438c', 1, 'D006-016', 'Rear derailleur 6', '', '3148a551bbeefaad', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'b256385d96861b05', '1ef04d722ca4438c', 2, 'D007-01R', 'Rear derailleur 7', '', '3e800395c4261b94', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'c83dc8dd98914b1e', 'e0a236ae4ef7fa38', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '310814f20d64e7ef', 'cf9101caa029e050', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, 'c634b52bf037f42a', '34cde56c4402f885', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, 'dde1232df7204f99', 'dbda1689ef8a9ca0', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'e0a88d19d2c1b5af', 'e533b5a60d47e459', 1, 'W005-01B', 'Bell with a crown', '', '310ebef05f7b91a9', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '67ea2be2f0309589', '6ba6288e6855838d', 1, 'L007-014', 'Dynamo lamp 7', '', '0bed663824a931b1', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'e4e96ee612e6e9f3', '422e689813609ecb', 1, 'L005-01K', 'Dynamo lamp 5', '', '9ba8b8cdc277a6b2', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'a69a413c33729361', 'f37284a22baab08a', 1, 'W006-013', 'Front wheel 6', '', 'f4c0fdbca56b0c44', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'b97bf22750c2bdf8', '102ad92ba4d37780', 1, 'L012-01S', 'Dynamo lamp 12', '', '2b49133bca4e73ad', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '77acc6fb4de32cbd', '098a8c5668d241d3', 1, 'S012-01O', '', '', '2c880100e1572fe4', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '103c4a6b7f71a443', '34821e90fc31c8d6', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '5d49726034fcb9cc', '14fd0269e0172398', 1, 'W001-01E', 'Front wheel 1', '', 'fa93337f99fb0a4c', 'released', 'd48bcf939bfb3081', '40399c7c876dd203', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, 'b73a3ff34b30bd1a', '14fd0269e0172398', 2, 'W002-016', 'Front wheel 2', '', '6b40c5b50582e1ab', 'released', 'd48bcf939bfb3081', '40399c7c876dd203', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, '17eeca1115ed8778', 'b5ceb09a96b0ac3a', 2, 'S003-01W', 'Leather saddle 3', '', '5e7f3540604b0104', 'picked', NULL, '40399c7c876dd203', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, '2d0b671b325f5ca7', '5bc235e8c41837ea', 1, 'W007-01W', 'Front wheel 7', '', '5e702ce4413918d1', 'released', 'a8f091b8bc834bd1', '40399c7c876dd203', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, 'dab07be7cc0ed974', 'e0586ebbf76a5491', 1, 'S004-01O', 'Leather saddle 4', '', '684f0df5c0184a53', 'packed', 'a6a8b8ed212bafe3', '40399c7c876dd203', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, 'efccda140491da68', 'e9bf01181f2e6ca8', 1, 'L006-01C', 'Dynamo lamp 6', '', 'c61f2407c1ad22e3', 'packed', '630d04c7e68adb14', '40399c7c876dd203', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, 'b865bcc2765ba4fe', 'e0586ebbf76a5491', 2, 'S005-01G', 'Leather saddle 5', '', '1c87972f58d5afd0', 'picked', NULL, '40399c7c876dd203', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '65e5e531b8d1a7c1', '7f150d74284abe47', 1, 'S007-01Z', 'Leather saddle 7', '', '238af3f265255258', 'picked', NULL, '40399c7c876dd203', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'fed04b632bdc6eb3', '5bc235e8c41837ea', 2, 'W008-01O', 'Front wheel 8', '', 'a2b65f5ecf75825a', 'waiting', NULL, '40399c7c876dd203', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, 'd37d5b766aac02bf', 'e9bf01181f2e6ca8', 2, 'L011-010', 'Dynamo lamp 11', '', '35177628c86c1f01', 'cancelled', NULL, '40399c7c876dd203', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '54c9f1cf8e048720', 'b5ceb09a96b0ac3a', 1, 'S002-013', 'Leather saddle 2', '', 'd1a852df8d9b86e7', 'packed', 'e00aefe75cd3658a', '40399c7c876dd203', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '8a344ca569ea05f6', '37da90ea5d5cc1af', 1, 'S006-018', 'Saddle with springs', '', '96551bb439d6affa', 'picked', NULL, '40399c7c876dd203', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '1ae7eb0ceae09715', '68d507191bee8ba5', 1, 'D008-01J', 'Rear derailleur 8', '', '0ebc68a5c4011097', 'waiting', NULL, '8493aa2f12b3b3cf', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '8ce5219f78dcc1f6', 'a7648190bd3cd473', 1, 'D001-019', 'Rear derailleur 1', '', '3aff4e94d5a6292e', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, '02f4be995e1ab64d', 'cff0dda21b5c63d6', 1, 'L003-010', 'Dynamo lamp 3', '', 'c6a8fe64870c5f2b', 'waiting', NULL, '8493aa2f12b3b3cf', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '3ec8282b4046ae2b', '8b52060fd24fd24b', 1, 'L002-017', 'Dynamo lamp 2', '', 'df2a60b1642db71f', 'picked', NULL, '8493aa2f12b3b3cf', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, 'e8dbb4c1204186c2', '4cc6db8b771110d5', 1, 'L004-01S', 'Dynamo lamp 4', '', '6014a9d1ef1afb3b', 'short', NULL, '8493aa2f12b3b3cf', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '895231f58412fa51', 'a7648190bd3cd473', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, '80644871863a070f', '57cbfac1f739b81d', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'b769d98f6d4327a8', 'B-1-1', '2026-03-02T15:55:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'b769d98f6d4327a8', 'B-1-2', '2026-03-02T16:03:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '94394f553296ad19', 'C-1-1', '2026-03-02T16:31:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '8b52060fd24fd24b', 'B-05', 'fair', '2026-03-02T11:50:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (5, 'cff0dda21b5c63d6', 'B-06', 'fair', '2026-03-02T11:53:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (6, '4cc6db8b771110d5', 'B-07', 'fair', '2026-03-02T11:56:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (7, '422e689813609ecb', 'B-08', 'fair', '2026-03-02T11:59:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (9, '37da90ea5d5cc1af', 'B-13', 'fair', '2026-03-02T12:05:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (10, '6ba6288e6855838d', 'B-17', 'fair', '2026-03-02T12:08:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (11, '231e70ce22469e23', 'B-18', 'fair', '2026-03-02T12:11:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (12, 'f37284a22baab08a', 'B-21', 'fair', '2026-03-02T12:14:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (15, '68d507191bee8ba5', 'B-26', 'fair', '2026-03-02T12:23:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (16, '8e4298120be0a1a6', 'B-30', 'fair', '2026-03-02T12:26:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (17, '3c0789a4b1e858dd', 'B-31', 'fair', '2026-03-02T12:29:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (18, '1ef04d722ca4438c', 'B-32', 'fair', '2026-03-02T12:32:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (19, 'e0a236ae4ef7fa38', 'B-33', 'fair', '2026-03-02T12:38:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (20, 'cf9101caa029e050', 'B-34', 'fair', '2026-03-02T12:41:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (21, '34cde56c4402f885', 'B-35', 'fair', '2026-03-02T12:44:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (22, 'dbda1689ef8a9ca0', 'B-36', 'fair', '2026-03-02T12:47:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (23, 'e533b5a60d47e459', 'B-37', 'fair', '2026-03-02T12:50:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (24, '102ad92ba4d37780', 'Sale L012-01S', '', '2026-03-02T13:11:00.000000+00:00', 24, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '');
INSERT INTO public.orders VALUES (25, '098a8c5668d241d3', 'F-1', '', '2026-03-02T13:17:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (26, '34821e90fc31c8d6', 'F-2', '', '2026-03-02T13:17:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (1, '14fd0269e0172398', 'B-01', 'fair', '2026-03-02T11:41:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (14, '5bc235e8c41837ea', 'B-23', 'fair', '2026-03-02T12:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (13, '7f150d74284abe47', 'B-22', 'fair', '2026-03-02T12:17:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (3, 'e0586ebbf76a5491', 'B-04', 'fair', '2026-03-02T11:47:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'a6a8b8ed212bafe3', '', '', false, '');
INSERT INTO public.orders VALUES (8, 'e9bf01181f2e6ca8', 'B-09', 'fair', '2026-03-02T12:02:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '630d04c7e68adb14', '', '', false, '');
INSERT INTO public.orders VALUES (2, 'b5ceb09a96b0ac3a', 'B-03', 'fair', '2026-03-02T11:44:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'e00aefe75cd3658a', '', '', false, '');
INSERT INTO public.orders VALUES (27, 'a7648190bd3cd473', 'B-38', 'fair', '2026-03-02T15:42:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (28, '57cbfac1f739b81d', 'B-39', '', '2026-03-02T15:45:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '');
INSERT INTO public.parcels VALUES (1, 'd48bcf939bfb3081', 'main', '14fd0269e0172398', '2026-03-02T14:08:00.000000+00:00', 'closed', '2026-03-02T14:17:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, 'a8f091b8bc834bd1', 'main', '5bc235e8c41837ea', '2026-03-02T14:39:00.000000+00:00', 'closed', '2026-03-02T14:42:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '9368c34cbc54ad14', 'main', '7f150d74284abe47', '2026-03-02T14:45:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'a6a8b8ed212bafe3', 'main', 'e0586ebbf76a5491', '2026-03-02T14:51:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '630d04c7e68adb14', 'second', 'e9bf01181f2e6ca8', '2026-03-02T15:00:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'e00aefe75cd3658a', 'main', 'b5ceb09a96b0ac3a', '2026-03-02T15:09:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'b769d98f6d4327a8.elsewhere-S012', 'b769d98f6d4327a8', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:09:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:55:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2c880100e1572fe4", "item": "dd65f137761a7f12", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "77acc6fb4de32cbd", "order": "098a8c5668d241d3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "2c880100e1572fe4", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:09:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2c880100e1572fe4", "item": "dd65f137761a7f12", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "77acc6fb4de32cbd", "order": "098a8c5668d241d3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "2c880100e1572fe4", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'b769d98f6d4327a8.unknown-Q0771', 'b769d98f6d4327a8', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:12:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '94394f553296ad19.missing-L008', '94394f553296ad19', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:34:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "20a9f52c382e51ab", "item": "a918ead9cc27a89d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "20a9f52c382e51ab", "item": "a918ead9cc27a89d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "doubts": {"added": ["e745d68c98529f1f"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '94394f553296ad19.missing-L009', '94394f553296ad19', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:37:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "8f5c8c7c51bcbbcb", "item": "77db1ab13a178464", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "8f5c8c7c51bcbbcb", "item": "77db1ab13a178464", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:37:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '40399c7c876dd203', '2026-03-02T13:20:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '8493aa2f12b3b3cf', '2026-03-02T15:18:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '5a90c48c91e6cce8b46a5a56513e7d970c7384ae4e35a3636a9874e9028a0775', 'bin', '40399c7c876dd203', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '646495ef2343a797ae0ff2fd1c228d51b944413a6decb1f004830a5dcf65a6ef', 'bin', '40399c7c876dd203', 'W001', false, true, true, '5d49726034fcb9cc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "14fd0269e0172398", "order_number": "B-01", "line": "5d49726034fcb9cc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["fa93337f99fb0a4c", "stored"], ["5d49726034fcb9cc", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '096f4aa7a0e4169c81805b67b6fca5900934f9a93596816cd83928cdd651542f', 'bin', '40399c7c876dd203', 'W002', false, true, true, 'b73a3ff34b30bd1a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "14fd0269e0172398", "order_number": "B-01", "line": "b73a3ff34b30bd1a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["6b40c5b50582e1ab", "stored"], ["b73a3ff34b30bd1a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '70f770fdc49bbe2c43ba38c13a6180a274d0b08d22f1b4ec2d6073327977e544', 'bin', '40399c7c876dd203', 'S002', false, true, true, '54c9f1cf8e048720', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b5ceb09a96b0ac3a", "order_number": "B-03", "line": "54c9f1cf8e048720", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["d1a852df8d9b86e7", "stored"], ["54c9f1cf8e048720", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'b5d1278774dd4548942400034702ac169b3ae4a142354281d456cb46dc35a49d', 'bin', '40399c7c876dd203', 'S003', false, true, true, '17eeca1115ed8778', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "b5ceb09a96b0ac3a", "order_number": "B-03", "line": "17eeca1115ed8778", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["5e7f3540604b0104", "stored"], ["17eeca1115ed8778", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'edb51e412aa65c3b28b139412089cbe83a768705c0c2201d585eec67f795a5d1', 'bin', '40399c7c876dd203', 'S004', false, true, true, 'dab07be7cc0ed974', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "e0586ebbf76a5491", "order_number": "B-04", "line": "dab07be7cc0ed974", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["684f0df5c0184a53", "stored"], ["dab07be7cc0ed974", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '1210f9ddcb014b65d22e0dad5652d882dc45cf38e730254d637a9edb4dad7705', 'bin', '40399c7c876dd203', 'S005', false, true, true, 'b865bcc2765ba4fe', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "e0586ebbf76a5491", "order_number": "B-04", "line": "b865bcc2765ba4fe", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["1c87972f58d5afd0", "stored"], ["b865bcc2765ba4fe", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '8d615f36373d9148f2bc3cea661c761788fca3bdb3bce9bd23694b667eef4fe8', 'bin', '40399c7c876dd203', 'L006', false, true, true, 'efccda140491da68', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e9bf01181f2e6ca8", "order_number": "B-09", "line": "efccda140491da68", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["c61f2407c1ad22e3", "stored"], ["efccda140491da68", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '07a9780c61985333cf8426cd9397fc7ee48bd2821904b32ddd5b1876e2880dbb', 'bin', '40399c7c876dd203', 'L011', false, true, true, 'd37d5b766aac02bf', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "e9bf01181f2e6ca8", "order_number": "B-09", "line": "d37d5b766aac02bf", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["35177628c86c1f01", "stored"], ["d37d5b766aac02bf", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '9a7a3c46f17fbedd22d8a56703ae6118dc2836759f6ccd97091fa231f8bd0d70', 'bin', '40399c7c876dd203', 'S006', false, true, true, '8a344ca569ea05f6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "37da90ea5d5cc1af", "order_number": "B-13", "line": "8a344ca569ea05f6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:50:00.000000+00:00', '["on_item", ["96551bb439d6affa", "stored"], ["8a344ca569ea05f6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '48074e9226459b16587e42dd58cb5f71e345818cfd6fc92d125fa28b0228bb3f', 'bin', '40399c7c876dd203', 'S007', false, true, true, '65e5e531b8d1a7c1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "7f150d74284abe47", "order_number": "B-22", "line": "65e5e531b8d1a7c1", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:53:00.000000+00:00', '["on_item", ["238af3f265255258", "stored"], ["65e5e531b8d1a7c1", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'fef0ad89a04b71a9b82b66d759070a557735b25277273e61202e178fc013913f', 'bin', '40399c7c876dd203', 'W007', false, true, true, '2d0b671b325f5ca7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "5bc235e8c41837ea", "order_number": "B-23", "line": "2d0b671b325f5ca7", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:56:00.000000+00:00', '["on_item", ["5e702ce4413918d1", "stored"], ["2d0b671b325f5ca7", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '87e030300da2662eb85d4f01a18fe48d674426111ec51101d4b77031bc55ad95', 'bin', '40399c7c876dd203', 'W008', false, true, true, 'fed04b632bdc6eb3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "5bc235e8c41837ea", "order_number": "B-23", "line": "fed04b632bdc6eb3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:59:00.000000+00:00', '["on_item", ["a2b65f5ecf75825a", "stored"], ["fed04b632bdc6eb3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '54c9f1cf8e048720', 'd48bcf939bfb3081', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b5ceb09a96b0ac3a", "order_number": "B-03", "line": "54c9f1cf8e048720", "line_state": "picked", "order_state": "picking", "parcel": "d48bcf939bfb3081", "parcel_state": "open", "released": []}', '', '2026-03-02T14:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '5d49726034fcb9cc', 'd48bcf939bfb3081', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "14fd0269e0172398", "order_number": "B-01", "line": "5d49726034fcb9cc", "line_state": "packed", "order_state": "picking", "parcel": "d48bcf939bfb3081", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:14:00.000000+00:00', '["on_item", ["fa93337f99fb0a4c", "stored"], ["5d49726034fcb9cc", "packed", "d48bcf939bfb3081", []], ["d48bcf939bfb3081", "2026-03-02T14:08:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'b73a3ff34b30bd1a', 'd48bcf939bfb3081', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "14fd0269e0172398", "order_number": "B-01", "line": "b73a3ff34b30bd1a", "line_state": "released", "order_state": "released", "parcel": "d48bcf939bfb3081", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:17:00.000000+00:00', '["due", ["6b40c5b50582e1ab", "shipped"], ["b73a3ff34b30bd1a", "released", "d48bcf939bfb3081", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '5d49726034fcb9cc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "14fd0269e0172398", "order_number": "B-01", "line": "5d49726034fcb9cc", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:20:00.000000+00:00', '["tray", ["fa93337f99fb0a4c", "shipped"], ["5d49726034fcb9cc", "released", "d48bcf939bfb3081", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '2d0b671b325f5ca7', 'a8f091b8bc834bd1', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "5bc235e8c41837ea", "order_number": "B-23", "line": "2d0b671b325f5ca7", "line_state": "packed", "order_state": "waiting", "parcel": "a8f091b8bc834bd1", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:33:00.000000+00:00', '["on_item", ["5e702ce4413918d1", "stored"], ["2d0b671b325f5ca7", "packed", "a8f091b8bc834bd1", []], ["a8f091b8bc834bd1", "2026-03-02T14:30:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'dab07be7cc0ed974', 'a6a8b8ed212bafe3', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "e0586ebbf76a5491", "order_number": "B-04", "line": "dab07be7cc0ed974", "line_state": "packed", "order_state": "picking", "parcel": "a6a8b8ed212bafe3", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:54:00.000000+00:00', '["on_item", ["684f0df5c0184a53", "stored"], ["dab07be7cc0ed974", "packed", "a6a8b8ed212bafe3", []], ["a6a8b8ed212bafe3", "2026-03-02T14:51:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'efccda140491da68', '630d04c7e68adb14', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e9bf01181f2e6ca8", "order_number": "B-09", "line": "efccda140491da68", "line_state": "packed", "order_state": "picking", "parcel": "630d04c7e68adb14", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:03:00.000000+00:00', '["on_item", ["c61f2407c1ad22e3", "stored"], ["efccda140491da68", "packed", "630d04c7e68adb14", []], ["630d04c7e68adb14", "2026-03-02T15:00:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '54c9f1cf8e048720', 'e00aefe75cd3658a', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b5ceb09a96b0ac3a", "order_number": "B-03", "line": "54c9f1cf8e048720", "line_state": "packed", "order_state": "picking", "parcel": "e00aefe75cd3658a", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:12:00.000000+00:00', '["on_item", ["d1a852df8d9b86e7", "stored"], ["54c9f1cf8e048720", "packed", "e00aefe75cd3658a", []], ["e00aefe75cd3658a", "2026-03-02T15:09:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '6afe30bba55d577744e514745a491234954508e567d87758377998d65e0edc67', 'bin', '8493aa2f12b3b3cf', 'L002', false, true, true, '3ec8282b4046ae2b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "8b52060fd24fd24b", "order_number": "B-05", "line": "3ec8282b4046ae2b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:21:00.000000+00:00', '["on_item", ["df2a60b1642db71f", "stored"], ["3ec8282b4046ae2b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '267049164848d5b4ce61704d862ee7ae279435458c31c9da3d9ada5a26e0c050', 'bin', '8493aa2f12b3b3cf', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:27:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '4f89770c1992c35477b59cd80865d4164fb42920c3531a17d0fc331204c276e5', 'bin', '8493aa2f12b3b3cf', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:30:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'ba72316ff662705a1112e49da174782dbe929b42c2fdd35f5556f8161821c529', 'bin', '8493aa2f12b3b3cf', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:33:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:03:00.000000+00:00', '630d04c7e68adb14', 'bin', 'C-1-1', '40399c7c876dd203', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', '40399c7c876dd203', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:47:00.000000+00:00', NULL, 'bin', 'C-1-2', '40399c7c876dd203', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:53:00.000000+00:00', NULL, 'bin', 'B-1-1', '40399c7c876dd203', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:12:00.000000+00:00', 'e00aefe75cd3658a', 'bin', 'B-1-1', '40399c7c876dd203', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:50:00.000000+00:00', NULL, 'bin', 'B-1-1', '40399c7c876dd203', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:59:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:17:00.000000+00:00', 'd48bcf939bfb3081', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:33:00.000000+00:00', 'a8f091b8bc834bd1', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:54:00.000000+00:00', 'a6a8b8ed212bafe3', 'bin', 'B-1-1', '40399c7c876dd203', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:21:00.000000+00:00', NULL, 'bin', 'C-1-1', '8493aa2f12b3b3cf', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, 'bin', 'B-1-1', '40399c7c876dd203', 2, NULL, NULL, false);
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
INSERT INTO public.stays VALUES (1, '3aff4e94d5a6292e', 'f2443b867e431d04', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (2, 'b2646859709d6014', '5d5262748bf11008', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (3, 'd59545a2609cbc42', 'c63b44492eeda203', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (4, '56987117cd2901f9', '76a3a9554e6ec553', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (5, '65a5ae5fe100f013', '3b5d242f8592a725', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (6, '3148a551bbeefaad', '512df48cfe52ead6', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (7, '3e800395c4261b94', '48fcfc9b913c9382', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (9, '0313e57a2960f58a', 'db6f1f5fb1324000', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (10, '540b170009de4831', '987f84b2cc4a3b79', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (11, 'c99b5087a5de2381', 'da3e9bc8bcb0c46d', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (12, 'd6fc3e4c1596e7b1', '859f3ab758671e25', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (13, 'e32f5a5a1861f062', '0d125dc1f79d58b1', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (14, 'd1a852df8d9b86e7', '1ea7a06677173419', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (15, '5e7f3540604b0104', 'cbc10bf959b1f9c5', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (16, '684f0df5c0184a53', '93968bf66fc69db1', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (17, '1c87972f58d5afd0', '2cab478e684d313a', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (18, '96551bb439d6affa', 'd5f35ec02e54f23a', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (19, '238af3f265255258', 'ad943f7deefe7ae1', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (20, '18904f7922542c9d', '273d705e091581e6', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (23, 'f0af4995e986c710', '23e4474f39766587', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (24, '2c880100e1572fe4', 'dd65f137761a7f12', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (25, '4389156f400a6d42', '21c487805c00a399', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (26, 'df2a60b1642db71f', '8545eb2fc14dd6bc', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (27, 'c6a8fe64870c5f2b', '22920383a6b7cd3f', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (28, '6014a9d1ef1afb3b', 'd8717d38ddcd4fbc', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (29, '9ba8b8cdc277a6b2', '78977e50dcdf5433', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (30, 'c61f2407c1ad22e3', '813dcb3f68153494', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (31, '0bed663824a931b1', 'eb2552168ad1ea22', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (32, '20a9f52c382e51ab', 'a918ead9cc27a89d', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (34, '8d83283503835cac', '7491c3fcb0a51cf0', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (35, '35177628c86c1f01', '58988e688b29eae1', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (36, '2b49133bca4e73ad', 'f7236351d2b5b8cb', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (39, '5fa8bcedf5a7c5d6', '7d41b871581d06b2', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (41, '310ebef05f7b91a9', '66097d539d08f795', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (42, 'f4c0fdbca56b0c44', '8ce9975bf39028c7', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (44, 'a2b65f5ecf75825a', '7746fd3ee8899d68', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (45, '8f511301c758eb6b', 'f2c6cb6c296bc9b9', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (46, '5fa096fa7e922e59', 'ed5f631120c58e46', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (47, 'bd4d1db33ba77903', '66bdf0eb9f6fb207', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (48, '6aba80acf75b30a0', '771e6e9c0777c67a', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (49, '68d166748fdfdb77', '9245204d206fc59e', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (22, 'ddf7bdbaa065fbf4', '25e1b9d6be9e1cf8', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false);
INSERT INTO public.stays VALUES (40, 'e3b65400dc96b174', '393610cedd6f9134', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false);
INSERT INTO public.stays VALUES (21, 'a3f2d24371922ff1', '2c41215215c0fb6e', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (50, '4e8ff7a985fe651a', '2c41215215c0fb6e', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (51, '0211f0780ac3ac9a', 'b1dd2c8f110e0aee', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false);
INSERT INTO public.stays VALUES (52, '6555e161e47001a6', '3b3a648ba997c6dc', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true);
INSERT INTO public.stays VALUES (8, 'ba25abebd7f89383', '05a10a9d176d6bc6', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:08:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (53, '0ebc68a5c4011097', '05a10a9d176d6bc6', 'D020', 1, '2026-03-02T13:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (37, 'fa93337f99fb0a4c', 'a1728d630dbbf0d3', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (38, '6b40c5b50582e1ab', '928aadd7b81cef66', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (54, '6c17adcf8aad3a66', 'ccfd524f8290c517', 'W001', 2, '2026-03-02T14:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (43, '5e702ce4413918d1', '0001a0a06a518d73', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:42:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (33, '8f5c8c7c51bcbbcb', '77db1ab13a178464', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:37:00.000000+00:00', 'Nowhere to be found', NULL, '', false);
INSERT INTO public.stocktakes VALUES (1, 'b769d98f6d4327a8', 'section:S', 'Spring', '2026-03-02T15:48:00.000000+00:00', 163, 'closed', '2026-03-02T16:21:00.000000+00:00', '{"stocktake": "b769d98f6d4327a8", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:48:00+00:00", "closed": "2026-03-02T16:21:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:09:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:12:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '94394f553296ad19', 'section:L', 'Spring', '2026-03-02T16:24:00.000000+00:00', 173, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '86cb6de34f951bf1', 'section:D', '', '2026-03-02T16:40:00.000000+00:00', 180, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-1"]}');
INSERT INTO public.stocktakes VALUES (4, '3e203b8feb64bee1', 'tray', 'Too late today', '2026-03-02T16:43:00.000000+00:00', 181, 'cancelled', '2026-03-02T16:46:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '40399c7c876dd203', 1, '54c9f1cf8e048720', 'B-1-1');
INSERT INTO public.stops VALUES (2, '40399c7c876dd203', 2, '17eeca1115ed8778', 'B-1-1');
INSERT INTO public.stops VALUES (3, '40399c7c876dd203', 3, 'dab07be7cc0ed974', 'B-1-1');
INSERT INTO public.stops VALUES (4, '40399c7c876dd203', 4, 'b865bcc2765ba4fe', 'B-1-1');
INSERT INTO public.stops VALUES (5, '40399c7c876dd203', 5, '8a344ca569ea05f6', 'B-1-1');
INSERT INTO public.stops VALUES (6, '40399c7c876dd203', 6, '65e5e531b8d1a7c1', 'B-1-1');
INSERT INTO public.stops VALUES (7, '40399c7c876dd203', 7, '5d49726034fcb9cc', 'D-1-1');
INSERT INTO public.stops VALUES (8, '40399c7c876dd203', 8, 'b73a3ff34b30bd1a', 'D-1-1');
INSERT INTO public.stops VALUES (9, '40399c7c876dd203', 9, '2d0b671b325f5ca7', 'D-1-1');
INSERT INTO public.stops VALUES (10, '40399c7c876dd203', 10, 'fed04b632bdc6eb3', 'D-1-1');
INSERT INTO public.stops VALUES (11, '40399c7c876dd203', 11, 'efccda140491da68', 'C-1-1');
INSERT INTO public.stops VALUES (12, '40399c7c876dd203', 12, 'd37d5b766aac02bf', 'C-1-2');
INSERT INTO public.stops VALUES (13, '8493aa2f12b3b3cf', 1, '1ae7eb0ceae09715', 'A-1-2');
INSERT INTO public.stops VALUES (14, '8493aa2f12b3b3cf', 2, '3ec8282b4046ae2b', 'C-1-1');
INSERT INTO public.stops VALUES (15, '8493aa2f12b3b3cf', 3, '02f4be995e1ab64d', 'C-1-1');
INSERT INTO public.stops VALUES (16, '8493aa2f12b3b3cf', 4, 'e8dbb4c1204186c2', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.learned_n_seq', 1, false);
SELECT pg_catalog.setval('public.lines_n_seq', 36, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
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
