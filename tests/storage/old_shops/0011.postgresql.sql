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
INSERT INTO public.access VALUES (1, 'eab6f12abeca7baf83d7675068567168e8f1c30f4efc135892e51923fa7b2013', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$zvWszE2ZQ2d0pkC3fMFfcQ$LnabwrZbqzXoftHnxyy2k0+kqt4D+b5L/xuHrMfxsQo', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, 'ffd8040a6f5d4d7e9721cf2dc171aeb45bf8a009ce4c4bc3e3cabe626a2cfb5c', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'd38c262fa9a6d7a8ead3b67b98a310c486e84e6db783694bb6687edce3aa77df', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '37c96120274fb8ea155060a7995013a5b38e1a3a8281e6aa2896ed14766e38e2', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '9abae7b694126e646c9fb7c253d2af37e410154976f964f6ca4a44d787f20a36', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0011');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/e5664694eb7d5316', '{"id": "e5664694eb7d5316", "item": "7f8552b0bb419a42", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, 'a1b59da7d5ba7bf3', 'ac292dcca7789678', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:56:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '97dfe248da6f64fd', '792609035c2ba815', 'missing', 'Not in its bin', '2026-03-02T15:24:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'e0f2542af34080bd', '4448be57b2d2584d', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:55:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '0a4de7ad41564ae1', '7194a3a210cbc94a', 'missing', 'a count of section:S did not find it', '2026-03-02T16:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'cc3670c15c7b3983', '4221bdf0df490cec', 'missing', 'a count did not find it', '2026-03-02T16:34:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 183, 'd4a9d50af5d60a064fdce7122a259b13196f1fe62f96f295edd8bd54f40ec6ef', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'd609459795f9ce00');
INSERT INTO public.items VALUES (3, '280a73c79adc1e04', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '5ee89b29e52b756c', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, 'fc51bdefaffb2d38', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, 'ca212ae4e177d9a1', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '2244a0d71d088a13', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, 'a44ab7842152008b', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, '48d13fe7603769f6', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '82f0937799fa44d5', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, 'cc74e01cb3e16f88', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, 'efda49b91979681f', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, 'c8b3e68f3ec71457', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '5b3d02b865cb13f1', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '6d158842ca2928f0', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, '01ed9f4af0e8b822', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, '11591e557e361666', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, 'f5ce4b4c309d2ce5', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '7194a3a210cbc94a', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, 'b8fa547cc9a14db9', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, '85cf74e57e56f049', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, '3cb62c047b8f41e4', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, 'b5010ffc6d696648', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, '55ad0984e030f8b3', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, '827297c621f11816', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, '7fde0e3dbafdd523', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, '792609035c2ba815', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, '06ed27924ac1481d', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '902d5a700dde9a68', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, 'ac292dcca7789678', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, '4221bdf0df490cec', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '5898398e4d9bce82', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '125331d63ca4f710', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '147869165f836311', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, '974211b8f15cd6fd', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, '1fe000e021e11e5f', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '447c31feea983157', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, '91dc71799f4cb8a6', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, 'c9c041a78fef5b2c', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, '0a26ce5b2a6a6168', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '6acb0f20c441b9d3', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '38d52dfaf68c38f9', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, '2cf145d1e52eebf2', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, 'a56aa7226e4411e5', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, '0c56777435994a92', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '7f8552b0bb419a42', 'Brass bell', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '4ff51daf2e864788', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, '9e6ccb90125aee57', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '4448be57b2d2584d', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, '4b9dc36f8881d5a5', 'Carbide lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, '76e150e4659ac404', 'Rear lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '8d437aa93303e57f', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '6b5405ba299d003d', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T11:29:00.000000+00:00');
INSERT INTO public.items VALUES (52, 'fb3f961c0261fd03', 'Rear wheel', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '4994f970028776d5', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 9e6ccb90125aee57 - e5221cd8f951","slots D001 on_item e5405bc28ff8","stays 5a22ab1edfd15625 stored f26fe8f6f277"],"stay":"5a22ab1edfd15625","title":"Rear derailleur 1","turn":1}', '167cee5fac4743e277b38b393497bde8fc8911bf22b6692bf4fcd2f8fe6e67ff');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 4ff51daf2e864788 - 9465a35dcdac","slots D002 on_item 4f79f524f247","stays fca0d5348fa86836 stored f061d97d3a04"],"stay":"fca0d5348fa86836","title":"Rear derailleur 2","turn":1}', 'ccf5145af15c11879bb3c064ffbf21e33ef57a5f8131e8c5df40d3ec6e5263ec');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 280a73c79adc1e04 - 7ea098f34b1f","slots D003 on_item 6de523ac8b4d","stays 81f295d4f7337383 stored e2751f2d504f"],"stay":"81f295d4f7337383","title":"Rear derailleur 3","turn":1}', '27c673ccd2a357d77bc85bc64d667ff8bb4bb016723afaf607017ad5227cdf5b');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 5ee89b29e52b756c - 3129ae35a94f","slots D004 on_item ec423998da46","stays 8027e78edecb0e8b stored d4751801664a"],"stay":"8027e78edecb0e8b","title":"Rear derailleur 4","turn":1}', 'e02f1728ff8bcd850d21c6ec18027e52c7213c7c06a777d33f4a4c4220c6c7f2');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items fc51bdefaffb2d38 - 656f258e6c5d","slots D005 on_item 91ad3faf88d6","stays aca3d5211d5d494b stored 6c555f2acba2"],"stay":"aca3d5211d5d494b","title":"Rear derailleur 5","turn":1}', 'bf87d88be52eea268de63f2a0b20d8451befd777cee0e3b229fced96fcba3752');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items ca212ae4e177d9a1 - 79d30fa3dfcc","slots D006 on_item 1fadb568d6a5","stays f31c8d95c02f3d0d stored ef0cb26a55f6"],"stay":"f31c8d95c02f3d0d","title":"Rear derailleur 6","turn":1}', '241b5763a65be29d6fa959241584e6cd5523bee52634c44dbb9ac635e8b8f987');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 2244a0d71d088a13 - 9b55700ea37a","slots D007 on_item 536077e3b728","stays 9bfe85ad19e00cd3 stored dca5ca84bbe6"],"stay":"9bfe85ad19e00cd3","title":"Rear derailleur 7","turn":1}', 'c284180859af21fe35a317347c61f2fdd81f8afd0b832ba5c99943e11e85873e');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items a44ab7842152008b - 60d851d013fb","slots D008 on_item facb453cba22","stays f40f42141fb74565 stored 5e06b830082d"],"stay":"f40f42141fb74565","title":"Rear derailleur 8","turn":1}', '655a96124ba1fa5284fef7e05f3272f81609ae8a174766bc9baca5c01db85f19');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 48d13fe7603769f6 - 0f524aaca337","slots D009 on_item 7434bf04ccf2","stays 8f19c45934cf946e stored 47ed68945965"],"stay":"8f19c45934cf946e","title":"Rear derailleur 9","turn":1}', '9ad402e8b231ec820b8f373d1a533785e1976840bb4b5f612df43cb6691e13c3');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 82f0937799fa44d5 - bf4bf4c16d84","slots D010 on_item 1f8fd3ebaf8b","stays 4ee5a97303655b02 stored 4ad5bc658d5d"],"stay":"4ee5a97303655b02","title":"Rear derailleur 10","turn":1}', 'b64e5f94a189993a9c66a545e7ac982116d8af93e2b772deff6e0479663947a8');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items cc74e01cb3e16f88 - 2f0a5fbd0413","slots D011 on_item d451255e38b7","stays 383fb700c50ebf5d stored 5e1317d2343b"],"stay":"383fb700c50ebf5d","title":"Rear derailleur 11","turn":1}', '69992dd11cf29267fcd69f03e04afe9adc02f243dd39b2f0c9866bdaf03f57c5');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items efda49b91979681f - c2b1b178d1f7","slots D012 on_item bdbda5bb2b7a","stays 63305269c325f9bd stored d3d6aeb343d7"],"stay":"63305269c325f9bd","title":"Rear derailleur 12","turn":1}', '7eb207dac2790bc15a6063dcb38e55de4c1a883c8e0ca5666af5a3e107eb4a99');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 4448be57b2d2584d - 210b334464d4","slots S001 on_item 76dcd853e3e0","stays 73a2f61ac598716b stored 32b16e34c792"],"stay":"73a2f61ac598716b","title":"Leather saddle 1","turn":1}', '7670225a629e2bec559e72e488ee6c9a93bb5aa517e892561aad3397c473cfda');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items c8b3e68f3ec71457 - 677d741a482b","slots S002 on_item 6fb94c47a50d","stays 2d5a6c9142163d01 stored 5b24a9306bb3"],"stay":"2d5a6c9142163d01","title":"Leather saddle 2","turn":1}', '709be1c732946ea61cb8e1aa85516ac26db5b922e6d68dcf37a70991a08e9356');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 5b3d02b865cb13f1 - 32150e193b1c","slots S003 on_item e00808332634","stays ce30a63ad501edff stored 1080aa87dcdf"],"stay":"ce30a63ad501edff","title":"Leather saddle 3","turn":1}', 'e588f3b0cf053f228a1c05dba36d99f6f0cce6036dde535b7a6ee57b69302561');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 6d158842ca2928f0 - 821ba7ed0317","slots S004 on_item db1aa8005467","stays 88e12b03b752581c stored d81ef685930a"],"stay":"88e12b03b752581c","title":"Leather saddle 4","turn":1}', 'da7a8dda286e1ace61ec0165a011a8b95108a1fee5874d19dd10648a78700733');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 01ed9f4af0e8b822 - a27c104cb9eb","slots S005 on_item ec548ef84f99","stays 76643eec838d7d11 stored 6556e9faf18d"],"stay":"76643eec838d7d11","title":"Leather saddle 5","turn":1}', '1f6b43bb1d0402c04a3469cc0cf69027a04400123a1e42aab9c3cc310ff42370');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 11591e557e361666 - 3dc744fd0b9c","slots S006 on_item dc9bc74eb63a","stays 937fd89321337940 stored 2ecb1372278c"],"stay":"937fd89321337940","title":"Leather saddle 6","turn":1}', 'b1c40431119281b0a029afefc609f447b050bd30c9b396a4aa5f538f6847a148');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items f5ce4b4c309d2ce5 - a92a8e01a4af","slots S007 on_item 075fd8b9fecf","stays 421fb1df0e4f6fe3 stored 2d8793bc74fd"],"stay":"421fb1df0e4f6fe3","title":"Leather saddle 7","turn":1}', '88ecf8e186aec8c4cf6c9b38cac4406c4ad285416e0724c0be7b7c1c65ef9b50');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 7194a3a210cbc94a - 1693adcd3869","slots S008 on_item 39fdb847a4bc","stays 648d944ae3520234 stored c2f95cb5a1eb"],"stay":"648d944ae3520234","title":"Leather saddle 8","turn":1}', 'f151ab8907a71035297bff04b30a5755b282bcc16b992d2a6eef9420575868be');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items b8fa547cc9a14db9 - f15453069201","slots S009 on_item 62c79df275b3","stays 315f3d5f0ac09595 stored b5f93cebc6ab"],"stay":"315f3d5f0ac09595","title":"Leather saddle 9","turn":1}', 'fe536f199389b31304e6d846896ca77925275dae761608ac9638550b5f3bf970');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 85cf74e57e56f049 - 49264d128197","slots S010 on_item 1fd8d85fa1c4","stays 9797e8f0e294008a stored 3303d1758f30"],"stay":"9797e8f0e294008a","title":"Leather saddle 10","turn":1}', '1ac82b6ed7af1d877c13cfdc4cb95dfece78902b23c8dea9bf07372efd341cc2');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 3cb62c047b8f41e4 - dfd41cf3145e","slots S011 on_item e59577c4b2a7","stays fb4fbe00204cc983 stored 2c2253ba6b27"],"stay":"fb4fbe00204cc983","title":"Leather saddle 11","turn":1}', 'cbfdb2ae21031b981971d3b40dbf1dbe7cad1b1850e7d0c5ffa44e65b5bacc23');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items b5010ffc6d696648 - e185d5006de3","slots S012 on_item 9bae442e2436","stays 7918cdce96aeeeae stored f2db09f09d21"],"stay":"7918cdce96aeeeae","title":"Leather saddle 12","turn":1}', 'd7851056b73349b62431a060c90142255c89ec818458cc5f9b855ab8900cde68');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 55ad0984e030f8b3 - 52d93d6800b1","slots L001 on_item 43c5cdfaa8e4","stays bf3ced491e602aba stored 495e0f3a6a1a"],"stay":"bf3ced491e602aba","title":"Dynamo lamp 1","turn":1}', '97b4ca728e021c97fb2946316f856862d0b0efa0e78e3297bc71ca8b73f01fd3');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 827297c621f11816 - c9a997d46c99","slots L002 on_item ea8e77c8b06f","stays 147e917be4087169 stored 963c5b6750bf"],"stay":"147e917be4087169","title":"Dynamo lamp 2","turn":1}', '25bedfefb1d06e4d475acfd2641d3f69c484e8c886c1991b97fcb2276d211dc9');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 7fde0e3dbafdd523 - 8cde31f975e7","slots L003 on_item c35e4c005cda","stays 06883339598ade00 stored 05bb5076be2d"],"stay":"06883339598ade00","title":"Dynamo lamp 3","turn":1}', '1867a70247d7eca52bc4ab76d9edcb1980fe03dbc7e06da8baf9aa33fc5dd179');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 792609035c2ba815 - bc375b0252fb","slots L004 on_item 70a88e4a366b","stays e73f33b626d1fc84 stored af3d80bff3de"],"stay":"e73f33b626d1fc84","title":"Dynamo lamp 4","turn":1}', 'a5121629831bd0fbcb8077cacf0363cf02f68b4100e16efedc9f97f421cf7e88');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 06ed27924ac1481d - d56edb9b12f1","slots L005 on_item 6261d94de1ef","stays 585c9b8f29db904c stored 091bce90984b"],"stay":"585c9b8f29db904c","title":"Dynamo lamp 5","turn":1}', '93544afb6be6f458da5cca746addc528f34cec4702f422eb652f429a64822e95');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 902d5a700dde9a68 - c49bc4c91dec","slots L006 on_item b67b470f3637","stays a0066055a8a7b2e6 stored c7864aeb6697"],"stay":"a0066055a8a7b2e6","title":"Dynamo lamp 6","turn":1}', 'caba6cc597bd6af75dc5f5ad98edf80e4811cbe10ea78854f93a35623b12d91e');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items ac292dcca7789678 - 22d93017ca8c","slots L007 on_item 767524982af4","stays 8f6734fdf6b47bfc stored 6bf5b9c9dad9"],"stay":"8f6734fdf6b47bfc","title":"Dynamo lamp 7","turn":1}', '8fca94302e2f9e75d0ae3e43b3d7493511a24ff1b83e74cea7630183e2b1cbef');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 4221bdf0df490cec - 66a6e4a5faff","slots L008 on_item b3b2d23a98b7","stays c29e008148262db4 stored 677b0e57fd17"],"stay":"c29e008148262db4","title":"Dynamo lamp 8","turn":1}', '2032871865ceb9da9e845ba31b71ec88ca19d02d1fac683680a994ec73795707');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 5898398e4d9bce82 - 1a22ef70af09","slots L009 on_item c3139144a3f8","stays f57b727e4bfec395 stored ef2c3a7b0afc"],"stay":"f57b727e4bfec395","title":"Dynamo lamp 9","turn":1}', '16b5fba7df8f18552ef2b5416a0e736525943f3371e2616c3c78fe7e2a9b2445');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 125331d63ca4f710 - d73747d3454f","slots L010 on_item f8c13ae8aec4","stays 524e7d1dff43e6be stored d014160a1cb2"],"stay":"524e7d1dff43e6be","title":"Dynamo lamp 10","turn":1}', '41c24712f2a4447370d9ace7390d06ada26e71bae88680a0e361ff9e9630b199');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 147869165f836311 - 1e2420dceeb6","slots L011 on_item 9d01c75c0f89","stays af9d1d49ec8d7469 stored 3740fa34efcf"],"stay":"af9d1d49ec8d7469","title":"Dynamo lamp 11","turn":1}', '5fbb8afe141aba08d41fae47149117f194041882f4b94c29d65a7a22ebe0fee6');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 974211b8f15cd6fd - f31ad85f9274","slots L012 on_item 5373b19b101e","stays dbb3d390b8853766 stored 61e37b7ab04e"],"stay":"dbb3d390b8853766","title":"Dynamo lamp 12","turn":1}', '0e35b75af0c8c0ef8e6443977f0eaa9a7d4ede5cfa9ce27fc51ab53607a3babb');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 1fe000e021e11e5f - 54863928ac5d","slots W001 on_item 17dd342c2f6a","stays 25136512900065ca stored 3f4bbfcd8f44"],"stay":"25136512900065ca","title":"Front wheel 1","turn":1}', 'b0d4b4a6ea0788e048df4aa01e6a5d167aecf86a065080ac49075a7a73e4ebf5');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 447c31feea983157 - a545f9f6cf4b","slots W002 on_item 7ebfb8df41ca","stays 87a43de5c4418433 stored d66b347dd53e"],"stay":"87a43de5c4418433","title":"Front wheel 2","turn":1}', 'ecd46816d756d9f4ff400d55e81e30e2edc3b2657f5f20d7b7573b483a1aa8f6');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 91dc71799f4cb8a6 - fd3f8ef768b4","slots W003 on_item f84a2674e962","stays 278e88555e87d40a stored dcb4aaba5ae1"],"stay":"278e88555e87d40a","title":"Front wheel 3","turn":1}', '0da1426ff69b94d73d2cfe51fd14343a10f1d6459e5fe6d545e576a3788a6cdf');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items c9c041a78fef5b2c - b094df881821","slots W004 on_item f45ed94fd55a","stays 151d600cc280c8f1 stored 47cc981e29cf"],"stay":"151d600cc280c8f1","title":"Front wheel 4","turn":1}', 'b8b44ac986345d4b62897f276f5a6b9e8edad3e8156dcde025905e282d174e97');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 0a26ce5b2a6a6168 - 468c8b754bac","slots W005 on_item a1fdfb2c692e","stays 94b3b356542829a3 stored d034f88a1b58"],"stay":"94b3b356542829a3","title":"Front wheel 5","turn":1}', '0cbd4cf3591d980647a36826bd3b5c126435c49fa0123cea0a973b54a2b28b2a');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 6acb0f20c441b9d3 - bba3f2d4d9d8","slots W006 on_item 3dd6244f0bee","stays 38101238ae824f08 stored 4f5477653c2d"],"stay":"38101238ae824f08","title":"Front wheel 6","turn":1}', 'e35851abf6982d746ba89991ebdd0288934a121c70e6d0ac756411cad909efab');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 38d52dfaf68c38f9 - 82c526defe68","slots W007 on_item d52463b699e2","stays f7ef972d70f670ac stored f7b84fab296f"],"stay":"f7ef972d70f670ac","title":"Front wheel 7","turn":1}', '1480121591324e3ec2ff035ea3ed9e262f6668d5d6529c97cc96e94655511525');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 2cf145d1e52eebf2 - 5814b661b8a8","slots W008 on_item 2e167460fb16","stays 9731c59cac6db686 stored 2f3f0eb77811"],"stay":"9731c59cac6db686","title":"Front wheel 8","turn":1}', '611339a7b1a4d62d1352fb0a7972165c0eae93136cc52ffa545eb52c0895bc80');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items a56aa7226e4411e5 - 1e27d4507867","slots W009 on_item 597fc2f4b56e","stays 2da87f1880ac2756 stored 05cf51bfcacd"],"stay":"2da87f1880ac2756","title":"Front wheel 9","turn":1}', 'bd3507299daf8fcd0463044b405b7bacb80c02c94a56c2e8385acb71deb7e5d2');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 0c56777435994a92 - 94238e0e3b57","slots W010 on_item 7d0365c2d2de","stays 75a87c007ae14528 stored 16941807f092"],"stay":"75a87c007ae14528","title":"Front wheel 10","turn":1}', '878a6b77b7af78736d5d8f9144c93d710731e7336b2fbbaced041b1a06b5e126');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 6b5405ba299d003d - b12d7e3d3ad0","slots W011 on_item d3a26b640d71","stays f26a94c34b475880 stored dd5041c8b1d3"],"stay":"f26a94c34b475880","title":"Front wheel 11","turn":1}', 'e1b79b1a097af5d7e77c5875c525e6a9f20579e45fee2097deefeaaa0ffe4ad5');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 8d437aa93303e57f - ed3ca0752bd9","slots W012 on_item ac10bfb906d6","stays 08dc85bb77f87a9e stored 4382f1bc6878"],"stay":"08dc85bb77f87a9e","title":"Front wheel 12","turn":1}', '8b99f8306578d870cd667a2af89d24149081d690f0e5ebd7090500986c21d3e8');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:21:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"6ddc0dbb675be187"}', 'd00e693a36dcd26f92e21c57a7514effbab526fe5ba536628ab538d0031f613e');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 7f8552b0bb419a42 - b0a57f69c872","slots D013 on_item 69b6f1c92d5d","stays e5664694eb7d5316 stored b3d72044f954"],"stay":"e5664694eb7d5316","title":"Brass bell","turn":1}', '554cd6afe28148ac0a0f95516216c609e61372e510bfe0b2a7bb0e98b38be11c');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 4ff51daf2e864788 - d2a98f264a4f"],"stay":"fca0d5348fa86836"}', '71536e370b94e47edd5f03ad4ea23f876ac93d9be5a87ec7d8a2731184395261');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 9797e8f0e294008a withdrawn ef321f614e32","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"9797e8f0e294008a"}', '19c3d4eb0a39fcde5ba5eca08f4ade0113df8e79bd4593855ba4f6fc6aa78113');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays 151d600cc280c8f1 withdrawn 5e7f7f2ef4e2","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"151d600cc280c8f1"}', 'fecdf2d95a011fb103534aa522ae595f9992e6f319f7c65d31ae5969e4635bbc');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"6674c8f9af3e278e","now":["stays 315f3d5f0ac09595 moved 1e5b30e5d577","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 6674c8f9af3e278e stored 8db8aa2dabb5"],"stay":"315f3d5f0ac09595","to":"S013"}', 'a6dfc126088567609feea88ae840cb04a1e5230ff7aca515999f34dc2ebc7ad9');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 9e6ccb90125aee57 - 989175bd2574"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"5a22ab1edfd15625"}', '7e1b823274abe15dc706e5a46f69964e8facc9d2bfb2b52ef7159e95698abe96');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 4448be57b2d2584d - 73b0bb5236e7"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"73a2f61ac598716b"}', '84312d60a376371e9aa3b829821ca40574b63f129f281b6293d907eb24bd0200');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items 4b9dc36f8881d5a5 - 6f9c1da1d934","slots L013 on_item 417a81be4bcb","stays 871c0eacccd78b88 stored 577c9c73639e","items 76e150e4659ac404 - 72e1bb70f3c4","slots L014 on_item 26405b275a18","stays 40a92112897c81a0 stored 3a1faf67dc2a"],"stay":"871c0eacccd78b88","title":"Carbide lamp","turn":1}', 'bbb25905a9e816d3976c439ea17dd33df67ceea9ae3d735dbaa7cd4c52ac949c');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"40a92112897c81a0","title":"Rear lamp","turn":1}', '852a3849d415b0c2ccb0762a2a0c5d728b23372717386ca5e30029dd78f0b7e2');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'fe3ce3aa0fe0fcfb0d90bc801ac9804b804cb01a9e58f09bcb24fe9190b4da28');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 8d437aa93303e57f - dd2454b6f00a"],"stay":"08dc85bb77f87a9e","until":"2026-12-24T23:59:59+00:00"}', '4bf989ab270bc537e7190b82d3e0e89104a81a6cbbdbc6479fe36cea5254020c');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 6b5405ba299d003d - 63adbd5b4c24"],"stay":"f26a94c34b475880"}', '507bcb57602d216f9cff881982d1942e8d743818907ada6445c34d9ee55a65c5');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '839e5b71651692efa3f42211316e117facaa2fe3dd6034a4292ae189554c40db');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'e1eeb5c393c6e80edc4f6809406461f04570d0f9b97225be8e167e8ce5c15bd5');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:36:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'ab0ec60b462dcf1d9c754c66dece72f69363f279a3ff96d5c6de2d676a50b695');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:37:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '6bfefe0738535a509cdb49fd9acaf356229f2e5a42d4bb9d81a7280ab5883851');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '3c0679f736eabbe2d59fe25cbf2de8ee076d146296be072aceb95d2fa96191e2');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c0d92b6d37316c2e","reference":"W001-01E","stay":"25136512900065ca"},{"hold":null,"line":"0d71dfadf71dc8ee","reference":"W002-016","stay":"87a43de5c4418433"}],"now":["orders 7cc3339cfaae5832 - f4ab5ecca65e","lines c0d92b6d37316c2e waiting 3fb6b49479f7","lines 0d71dfadf71dc8ee waiting 4c9831f634dc"],"number":"B-01","order":"7cc3339cfaae5832"}', '0e34249718f0530126d936db1f01453b0c365c919c245a0f1dc2b3fc26aadbab');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4912c54489f35b71","reference":"S002-013","stay":"2d5a6c9142163d01"},{"hold":null,"line":"fa73972fa83b1af5","reference":"S003-01W","stay":"ce30a63ad501edff"}],"now":["orders 3512a65fde52d2d5 - a51369c2130d","lines 4912c54489f35b71 waiting 1521b2c2341d","lines fa73972fa83b1af5 waiting 94d72321f6c3"],"number":"B-03","order":"3512a65fde52d2d5"}', '9c31948c52c4cd909e4eb534cc8da8a6ae48e36ce2ef72e08aa2044cea3165f5');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"25182d9adbde746d","reference":"S004-01O","stay":"88e12b03b752581c"},{"hold":null,"line":"3b32ad478e17594a","reference":"S005-01G","stay":"76643eec838d7d11"}],"now":["orders 58634c3415bf0084 - 3fe58b941aa5","lines 25182d9adbde746d waiting b95f7f7fd0a6","lines 3b32ad478e17594a waiting 1bc38e302ffe"],"number":"B-04","order":"58634c3415bf0084"}', 'f40b001bfb057fda52d1ceab3d250319632ee87bb64279f6189575f11219b8b9');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7accd691e6922a25","reference":"L002-017","stay":"147e917be4087169"}],"now":["orders 310ec8bf108a5f4a - 9ed646f46707","lines 7accd691e6922a25 waiting 4815454ee92a"],"number":"B-05","order":"310ec8bf108a5f4a"}', 'd289d0b0b7eadbcc7cb4156995ce9b781767e8a1c875f8b9da2329d2e72116c9');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:24:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 6a3153826cfe78c4 open f2636e7095d2"],"stocktake":"6a3153826cfe78c4"}', '95515af4af0330b4a6f89e2bedc421cdd69834df53ac34db135d0ddf48b2a149');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"65122f0839a82370","reference":"L003-010","stay":"06883339598ade00"}],"now":["orders 6585b5dbf6ecfaa2 - 7c57440628f7","lines 65122f0839a82370 waiting 9997dc387417"],"number":"B-06","order":"6585b5dbf6ecfaa2"}', '029615b242c96c6ebb4ffe72d4e4353c4e992d2103ec885f90d4a515fc722722');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9f0d9d71395302a1","reference":"L004-01S","stay":"e73f33b626d1fc84"}],"now":["orders 484b2e38c57be93f - f4c5015d84fc","lines 9f0d9d71395302a1 waiting c3fc622d8065"],"number":"B-07","order":"484b2e38c57be93f"}', '444713d560b68acf083d65e3aa15db78de52bfa545d4b796be149093aad35333');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1c9890be5100ee90","reference":"L005-01K","stay":"585c9b8f29db904c"}],"now":["orders 8adffd47cf0b5cb9 - cebf2de5841b","lines 1c9890be5100ee90 waiting bfc9183eb5d0"],"number":"B-08","order":"8adffd47cf0b5cb9"}', '76e6eb86df66d492ba26e2085dae3a4e042b1e8ffa6c2170b9cc7fe8079b4a30');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f686d796fd6ccdea","reference":"L006-01C","stay":"a0066055a8a7b2e6"},{"hold":null,"line":"e920c61da7407e24","reference":"L011-010","stay":"af9d1d49ec8d7469"}],"now":["orders 81bea97a5fb4e205 - 53aacfaa225d","lines f686d796fd6ccdea waiting d3abcde7a392","lines e920c61da7407e24 waiting 2a300a3d4ac8"],"number":"B-09","order":"81bea97a5fb4e205"}', 'abe6c09d6b2c7c7c4aeb63a1cf38d6f2a940f3a4bb42226fd462a678474b1861');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"afd3095eb243daab","reference":"S006-018","stay":"937fd89321337940"}],"now":["orders 7bcfb5168a36276c - 693ca15379eb","lines afd3095eb243daab waiting 072ab0ddf48d"],"number":"B-13","order":"7bcfb5168a36276c"}', 'e96cf70cf7427dfd22b2445e5e1413072551e1b323f103469b2a21578813bbf5');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"253d88364512a7fe","reference":"L007-014","stay":"8f6734fdf6b47bfc"}],"now":["orders 0bcfd585fa47a7ac - 93fcbdbfd405","lines 253d88364512a7fe waiting 7d9c8fd10997"],"number":"B-17","order":"0bcfd585fa47a7ac"}', 'd27844ec7b7281a149bc36caf6d19668fff1da4ee54fe1026d2ba78a38881f9f');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"03c34c76467cb74c","reference":"D009-01B","stay":"8f19c45934cf946e"}],"now":["orders 2213c604e30e1c50 - fb4516385085","lines 03c34c76467cb74c waiting e99c97b45500"],"number":"B-18","order":"2213c604e30e1c50"}', 'c08a52af43fa63fa7a4568ea0601187704efed8fe488091b63429ddaffe8f246');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"039b11c9db05977e","reference":"W006-013","stay":"38101238ae824f08"}],"now":["orders ff5ede906fcb74f7 - 991beec81a52","lines 039b11c9db05977e waiting 36cfb70a2abe"],"number":"B-21","order":"ff5ede906fcb74f7"}', '7db0c254d41508c12a0fd58e1619f006c1dddaf7dc9b13abf3a22be7e51e081c');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cc79a7d55075c697","reference":"S007-01Z","stay":"421fb1df0e4f6fe3"}],"now":["orders 46c8c75e1731b8db - 309474cef881","lines cc79a7d55075c697 waiting 62d91ee2e411"],"number":"B-22","order":"46c8c75e1731b8db"}', '61ed55f4823975b10a372bdd76b5671451d53f25e6008726dd73f3e81fe4cd66');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5282be0071786abb","reference":"W007-01W","stay":"f7ef972d70f670ac"},{"hold":null,"line":"b0e4fe3186f0bea9","reference":"W008-01O","stay":"9731c59cac6db686"}],"now":["orders 526e76ac95f78292 - 228175780bb8","lines 5282be0071786abb waiting 0d7939819e44","lines b0e4fe3186f0bea9 waiting 8e779719e05a"],"number":"B-23","order":"526e76ac95f78292"}', '7d95ea31ce198009168797d859dfc5e1d4cab1c2fc8aa196a564dee1530ef9ee');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d5704f0a43d795e1","reference":"D008-01J","stay":"f40f42141fb74565"}],"now":["orders 37282044b9ab34f7 - 7897328d6f78","lines d5704f0a43d795e1 waiting e307ecae272b"],"number":"B-26","order":"37282044b9ab34f7"}', '6160deb11be99b9c9c42b22f4c19a8192d0d6ed210d28aee06519dd845d2885a');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"b263e1c0c6424022","reference":"D003-01U","stay":"81f295d4f7337383"}],"now":["orders 6789bef9acb75c59 - 91e1ee9b1f10","lines b263e1c0c6424022 waiting d445d0866309"],"number":"B-30","order":"6789bef9acb75c59"}', 'ef09f682d0b5c69028355322818ae432adcd806c2f6c0ac2c8b8e5ef3bb8461a');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"52bdcba924ebf765","reference":"D005-01E","stay":"aca3d5211d5d494b"},{"hold":"unknown_code","line":"37a0dcf2bf180c4e","reference":"Z999","stay":null}],"now":["orders 66ba0115bd64e923 - 86b0cc16c6be","lines 52bdcba924ebf765 waiting 43894b49cc8c","lines 37a0dcf2bf180c4e unbound 9b992a4a614f"],"number":"B-31","order":"66ba0115bd64e923"}', '9c57db4de66b1da2154da7d32d1472c3388c9abdfa58a7477efcdf1014a86392');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fbc0c94ae0bc4102","reference":"D006-016","stay":"f31c8d95c02f3d0d"},{"hold":null,"line":"96d098103fc1195a","reference":"D007-01R","stay":"9bfe85ad19e00cd3"}],"now":["orders 77c65978db9aa6fa - 0a2373f3060e","lines fbc0c94ae0bc4102 waiting 5079b11e6bad","lines 96d098103fc1195a waiting b4f3d6b91dc1"],"number":"B-32","order":"77c65978db9aa6fa"}', '41b2873200ade2c5a3ad4d633150765575cbf4b78be8e5d3376b412fe7ccf541');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"96d098103fc1195a","reference":"D007-01R","stay":"9bfe85ad19e00cd3"}],"now":["lines 96d098103fc1195a waiting 4f39f02b01ce"],"number":"B-32","order":"77c65978db9aa6fa"}', 'bdd6f599fdbe4f59bd07074953d1e648ca8179e034558c1acd204d4a3b9ce917');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"f04c258b50e68476","reference":"lamp","stay":null}],"now":["orders 9260574b99180c27 - 9720dad1d50a","lines f04c258b50e68476 unbound 1bfa55761da9"],"number":"B-33","order":"9260574b99180c27"}', '293bc70ec1f3b55ec5b9f2a20aa40eec4b16792f5dc281fd41897b9d2c2c6844');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"dd4729bf5c4c2b47","reference":"D006-016","stay":null}],"now":["orders b071fb8e11a42975 - f8bc934fc1dd","lines dd4729bf5c4c2b47 unbound 4c1f138f9fd3"],"number":"B-34","order":"b071fb8e11a42975"}', 'f9a99368c3e27ad3fedde05761e704ddf93dc725181b24c2f54620a438d72497');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"6be561b4ecd7ad07","reference":"W004-01J","stay":null}],"now":["orders 0c21d760757e91ba - 2c4a48d8f257","lines 6be561b4ecd7ad07 unbound 236cd6813d3c"],"number":"B-35","order":"0c21d760757e91ba"}', '159ab279a68c385a31a85ab854a6f63905f7a0a794dfef7f1f612e8a1b1488f0');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"ac12932bc25555af","reference":"L015","stay":null}],"now":["orders 6ed728227043790c - f4fe55690ce4","lines ac12932bc25555af unbound f71a7a66e7b5"],"number":"B-36","order":"6ed728227043790c"}', '91cccc668afd77133cb9fabdcebc1be45a3486473b3c43e1179edf96664cdc0d');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"b48d27852b3879d7","reference":"W005-01B","stay":"94b3b356542829a3"}],"now":["orders aebcf660e0428cef - d6949e884b41","lines b48d27852b3879d7 waiting b7c65fc99e6f"],"number":"B-37","order":"aebcf660e0428cef"}', 'e37ec40b89efa60113519baf57140675c42c1af0c42b22840864fbd2707786b7');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"b48d27852b3879d7","now":["lines b48d27852b3879d7 waiting bbe7952bed17"],"stay":"94b3b356542829a3"}', 'ac5e56beacccb7347fbbcc866a2a2af1456a9163e60f8ababb7e61dcac07f684');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:56:00.000000+00:00', 'doubted', 'boss', '{"doubt":"a1b59da7d5ba7bf3","doubt_kind":"not_this","item":"ac292dcca7789678","now":["doubts a1b59da7d5ba7bf3 - 4702ff984b10","lines 253d88364512a7fe waiting 2483326ff577"],"words":"Another lamp, by the photo"}', 'e2aaa64938e6d9530d38135d8c4474dfcaa33decc40be9e4ad28f24201c07c0c');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'held', 'boss', '{"line":"253d88364512a7fe","why":"Another lamp, by the photo"}', 'e7c2e50544b81a36e36e2501f7f1b2bc075fac60aa6283128404b5f821380fbd');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["1c9890be5100ee90"],"now":["lines 1c9890be5100ee90 cancelled 4285ebaa3276"],"number":"B-08","order":"8adffd47cf0b5cb9"}', '6782f1e26829f50068b59633b3b10262baa6152d8d2e1cfc8851f04673bf7838');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'cancelled', 'boss', '{"lines":["039b11c9db05977e"],"now":["lines 039b11c9db05977e cancelled 984c479a64bf"],"number":"B-21","order":"ff5ede906fcb74f7"}', '1585a22d3d6a3efb2bfcd8fa3ec04674a58ad00da0d9afa1282aaa1c46b04b30');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'revived', 'boss', '{"line":"039b11c9db05977e","now":["lines 039b11c9db05977e waiting 36cfb70a2abe"],"stay":"38101238ae824f08"}', 'e09e0b1fb26ea086cdb893017ae2e28a70cb6f026a93b5d9602fcb5dfd3a1c20');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"2ff36b1e95d11553","now":["stays f40f42141fb74565 moved 6f756faed02c","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 2ff36b1e95d11553 stored 12a9164166ec","lines d5704f0a43d795e1 waiting 9b80b57258ac"],"stay":"f40f42141fb74565","to":"D020"}', '5b90d349d1848989989e3a89d59dcdd1ab7df4fc93e2108d36be7e757aac8149');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"3c23d6741e7f3a17","reference":"L012-01S","stay":"dbb3d390b8853766"}],"note":"Rings at noon","now":["orders a2ac3e43cab66b2b - dbb2c909f496","lines 3c23d6741e7f3a17 waiting 99b5c026ffe0"],"number":"Sale L012-01S","order":"a2ac3e43cab66b2b"}', '5c6986932eb36f3e82738788c08cd90e28d4869a4a63d3d4338e938d678acb11');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"350ca9f2b28390ba","reference":"S012-01O","stay":"7918cdce96aeeeae"}],"now":["orders 220ee9094690af38 - 5cfa166755d8","lines 350ca9f2b28390ba waiting e48cde7f0a43","orders f073778b1b02ba7c - e42c5b767ac2","lines 6b825b8ad4784475 unbound 523f0cd886b4"],"number":"F-1","order":"220ee9094690af38"}', '8cf5a8e6ee074278beecf04b8afd3bf91c07de6b47bc6986d7f0a95014e76987');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"6b825b8ad4784475","reference":"","stay":null}],"number":"F-2","order":"f073778b1b02ba7c"}', '9651bedb96eab47799881e7021bb8b6bfa89c52ba7e75047fa095bb1bfe7514f');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'round opened', 'boss', '{"lines":["c0d92b6d37316c2e","0d71dfadf71dc8ee","4912c54489f35b71","fa73972fa83b1af5","25182d9adbde746d","3b32ad478e17594a","f686d796fd6ccdea","e920c61da7407e24","afd3095eb243daab","cc79a7d55075c697","5282be0071786abb","b0e4fe3186f0bea9"],"now":["rounds bc8a12265016a3ac open 6a3d911285e9","lines 4912c54489f35b71 waiting 465ae14856fb","lines fa73972fa83b1af5 waiting 09ab9854ff89","lines 25182d9adbde746d waiting 92dffcd8d4ed","lines 3b32ad478e17594a waiting a457012c5b57","lines afd3095eb243daab waiting b86a587d867b","lines cc79a7d55075c697 waiting 7011b6a35eb6","lines c0d92b6d37316c2e waiting 203bf2a1778c","lines 0d71dfadf71dc8ee waiting d0bf80ba697a","lines 5282be0071786abb waiting 6271d29340a2","lines b0e4fe3186f0bea9 waiting 1df2f0839c8f","lines f686d796fd6ccdea waiting bea350f49a33","lines e920c61da7407e24 waiting e7a2199724f9"],"round":"bc8a12265016a3ac"}', '51418e628618326389a37d67f65cebf838e16bc6f5b97f031e153b370a7524b3');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 98b668495a2e","scans free-D004 - fcdc2c759d42"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '0e94919616e107a907e4ca74aaf06049e4c85d67f35baba39ff5ff19886c5a76');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"c0d92b6d37316c2e","line_state":"picked","now":["slots W001 on_item f64d67e43134","lines c0d92b6d37316c2e picked ac18a172d3e3","scans pick-W001 - 3778f466ad77"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '1150d5a5d7f09dc7d6a0d2f2b196337fd7dd42a40e0b8f71d256a0ce61ac6b16');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"0d71dfadf71dc8ee","line_state":"picked","now":["slots W002 on_item 7177ca7f1424","lines 0d71dfadf71dc8ee picked 932df71f5379","scans pick-W002 - 3936e8783586"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'ab16a6bcefb408800c0786c2508af5bd5d66ff0f3f23b985f19620d0e12816df');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"4912c54489f35b71","line_state":"picked","now":["slots S002 on_item 52c7434fdd45","lines 4912c54489f35b71 picked 8a8a052989df","scans pick-S002 - 444806a19335"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'eb53f843560e2f04ebead532e51958233a89cf88c19288bdadc1f233e9509d51');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"fa73972fa83b1af5","line_state":"picked","now":["slots S003 on_item 8724df0d87a6","lines fa73972fa83b1af5 picked 2251e3e78e5b","scans pick-S003 - 74147b84289d"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'f0ae9a60279e2298845f0ba1ca128f3e9a15a0cfbe670d9851663f11a59e1dba');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"25182d9adbde746d","line_state":"picked","now":["slots S004 on_item 3945f43c0752","lines 25182d9adbde746d picked 08c620f96cc4","scans pick-S004 - 4ca4f450586c"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '438bb7aad90dc7dea301ff6175344696e5b91083a399726eb38ea30255a0331d');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"3b32ad478e17594a","line_state":"picked","now":["slots S005 on_item 0e4d7e3cbd53","lines 3b32ad478e17594a picked ce180d72809c","scans pick-S005 - c2ba39b5b51b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '697af583e9fd3cf2439aefb9f8e1d673fdafc7067e511428d386015120c0a7fe');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"f686d796fd6ccdea","line_state":"picked","now":["slots L006 on_item 14bccb461277","lines f686d796fd6ccdea picked 66434934d3dd","scans pick-L006 - 2a0df8355e1e"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'db643e0d6c6683f4047cf9767cf172da4da01ac27c41cfd15fbc4ad017388525');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"e920c61da7407e24","line_state":"picked","now":["slots L011 on_item 06f2b1ecbd79","lines e920c61da7407e24 picked 15f0ad1e560b","scans pick-L011 - 43cea7219271"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '3c657b48d5d9115ac9504a6f5eded74ebd185341d1062acf9376e4e0caf0986c');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"afd3095eb243daab","line_state":"picked","now":["slots S006 on_item 02a72362afa2","lines afd3095eb243daab picked cad908aa826a","scans pick-S006 - baaec65f1147"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '4a56e9347648fb55ee817ad942f7b0c90de1668420690a8af95509d80865d650');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"cc79a7d55075c697","line_state":"picked","now":["slots S007 on_item 1709210698f4","lines cc79a7d55075c697 picked 8233411a45fa","scans pick-S007 - 1d2f93e893f6"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'd9b2f849056f614a14a394ed3e97721ac7e19a8ec162dd3d1b13e232e63f2b6c');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"5282be0071786abb","line_state":"picked","now":["slots W007 on_item 4bda2a61770e","lines 5282be0071786abb picked ac10c9454388","scans pick-W007 - a6cdfc1a9e88"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '0364fdf59cab5782c2db46c8dc93520ec4906334e03c17a9d7db963977d35e06');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"b0e4fe3186f0bea9","line_state":"picked","now":["slots W008 on_item 90135d20d63d","lines b0e4fe3186f0bea9 picked f05f630a9246","scans pick-W008 - 93451645aff5"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"bc8a12265016a3ac","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '0086fd354679313a84db501cc06a066865146777fc7e40203f609f75634ef20b');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:02:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"b0e4fe3186f0bea9","line_state":"waiting","now":["lines b0e4fe3186f0bea9 waiting 1df2f0839c8f","slots W008 on_item b5edfe4a0bab"]}', 'ab17ad3bf0fc6a177e49ce0749887ec5f07ca2232865ba921e41828759907c02');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:05:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds bc8a12265016a3ac closed 2a2f11e6a127"],"round":"bc8a12265016a3ac"}', '2d682fa0e4eefc2bff52dc6204996dd4cd66901b6e136324666a5c8b023d5c73');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:08:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4994f970028776d5 open 6332de8b3939","orders 7cc3339cfaae5832 - 4a42af454d5f"],"orders":["7cc3339cfaae5832"],"parcel":"4994f970028776d5","table":"main"}', '903a0860154b96f7eb2d4abd35b781bfc2a936daeb1624020a28a218122b0554');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"4912c54489f35b71","line_state":"picked","now":["slots S002 on_item 97e0626cb96c","scans other-S002 - ac7e83cea98d"],"order_number":"B-03","parcel":"4994f970028776d5","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'e2b90ebe6de35a9ae18b94701f8d3f8b7156bbdb4e0eb2b45336d7067d9ddb0f');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"c0d92b6d37316c2e","line_state":"packed","now":["lines c0d92b6d37316c2e packed 1da2f336e6d5","slots W001 on_item d967a816ef92","scans pack-W001 - 8bca5b6be308"],"order_number":"B-01","parcel":"4994f970028776d5","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '4cb1621ecd314ebf13b3fca7f762ecd49e5a3eab088651f841e075ac1ac2d43b');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:17:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 0d71dfadf71dc8ee released cf6c9d0d4bfa","slots W002 due 6e9252513509","lines c0d92b6d37316c2e released 8440c7012ddf","stays 25136512900065ca shipped a00d5b2575a2","slots W001 due 8f41af442152","stays 87a43de5c4418433 shipped 9975023e1bd2","parcels 4994f970028776d5 closed 29c91840b5cb","orders 7cc3339cfaae5832 - f4ab5ecca65e","scans pack-W002 - 4d303bba4015"],"orders":["7cc3339cfaae5832"],"parcel":"4994f970028776d5","released":["W001","W002"]}', '0038539b3489cac372da3803c8660bbdfd78c0caaa92d456697842ceac4a5025');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"0d71dfadf71dc8ee","line_state":"released","order_number":"B-01","parcel":"4994f970028776d5","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'd807c1ae6dbd335e9b488d8a5211f2423288a1f545f4fe872d60f8ea752c37f3');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"c0d92b6d37316c2e","line_state":"released","now":["slots W001 tray 08268466c133","scans back-W001 - 59b817bd528c"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b4c3bef3bdfa76869c42a9ae96113874f5197aec8f110c876625acd7d787baa0');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items fb3f961c0261fd03 - 20243ace893d","slots W001 on_item 4bac4e5a272f","stays 33cdd5a569ac5393 stored b234457db8b7"],"stay":"33cdd5a569ac5393","title":"Rear wheel","turn":2}', '9d29775b3a75ee052de2f2853576c68816454a6745a30f7e85f68d1b986bda56');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:27:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 5b16a4b9af33"],"parcel":"4994f970028776d5"}', '708499574243279162399b620e5a8f5fac4eda5663d7a7ff4dbad546ad2c1987');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:30:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 1431d7ac78d1f364 open 962b5bbaf158","orders 526e76ac95f78292 - 594b4a7131a0"],"orders":["526e76ac95f78292"],"parcel":"1431d7ac78d1f364","table":"main"}', '164303eb606a3701ff1d4c4142db6fda49480aac2c22adbe0875e523abb53638');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"5282be0071786abb","line_state":"packed","now":["lines 5282be0071786abb packed 6a97b45a5cb0","slots W007 on_item af038587a456","scans pack-W007 - d416533d3b9b"],"order_number":"B-23","parcel":"1431d7ac78d1f364","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '1e674f7c1e2807a86c9ec81b73009a50be0c5ef0fe8b754ea621db9c0426bff7');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:36:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 5282be0071786abb released 1c6dde52d093","stays f7ef972d70f670ac shipped 1583590b2ed3","slots W007 due 25fa4f14abdf","parcels 1431d7ac78d1f364 closed a7f4fee20882","orders 526e76ac95f78292 - 228175780bb8"],"orders":["526e76ac95f78292"],"parcel":"1431d7ac78d1f364","released":["W007"]}', '2fed39b361e98175fd8ae6c64356ae277d3f7e3f025452a5429ba04c0e817dc0');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:39:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 5282be0071786abb packed 1badb0a88788","stays f7ef972d70f670ac stored f7b84fab296f","slots W007 on_item 10e3c992ed6a","parcels 1431d7ac78d1f364 open a54a155eb230","orders 526e76ac95f78292 - 594b4a7131a0"],"orders":["526e76ac95f78292"],"parcel":"1431d7ac78d1f364"}', '6af8ee716f70def0ff83ed285c17e8a9eaee608faa688a56655c26b261d7d062');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:42:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 5282be0071786abb released 1c6dde52d093","stays f7ef972d70f670ac shipped a53f5e9d1bf5","slots W007 due 25fa4f14abdf","parcels 1431d7ac78d1f364 closed b8916f9f17bb","orders 526e76ac95f78292 - 228175780bb8"],"orders":["526e76ac95f78292"],"parcel":"1431d7ac78d1f364","released":["W007"]}', '1fd3dbe1f71b3f416c0eeded0997a012271db1e1370f6cc7ffa6e2d0d6a4c76e');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:45:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 42d1f0a47ba08236 open 75b27e7ca2b7","orders 46c8c75e1731b8db - 9e92f992135a"],"orders":["46c8c75e1731b8db"],"parcel":"42d1f0a47ba08236","table":"main"}', '27057a759c8bb753c93f23982b48ac8cefd7e654e4b0696ecf27b3a0925ec35b');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:48:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 42d1f0a47ba08236 dropped efe31d57833e","orders 46c8c75e1731b8db - 309474cef881"],"parcel":"42d1f0a47ba08236"}', '6f7ddfaeda62c711f4a565ebc7be181cfe6cb3e5e4df70b7fb056e9de73d7250');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:51:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels ffedae27b53d545c open 97206667a988","orders 58634c3415bf0084 - 764dee5c7f9e"],"orders":["58634c3415bf0084"],"parcel":"ffedae27b53d545c","table":"main"}', 'ed453bcfeb61e998254592f7f083aa7edf0b9f9fb1e56be6ebcb3fe9de16d6bf');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:54:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"25182d9adbde746d","line_state":"packed","now":["lines 25182d9adbde746d packed d9a0964627ec","slots S004 on_item 492fe43860ec","scans pack-S004 - 8ec8f9f057c6"],"order_number":"B-04","parcel":"ffedae27b53d545c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'a3349e86d68a235d4b66bb60fd4bba3f03e2016edcd9cfdde4e078d726e59e39');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:57:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels ffedae27b53d545c aside cb6a3dd3767c"],"parcel":"ffedae27b53d545c"}', '57c47c7f59045746a58ac28a731ade71b4804461a410ac00ad14e7e60358a654');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:00:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels e0a8b6a7cd77a109 open 3db8daa3bbba","orders 81bea97a5fb4e205 - 5b9a1547c38e"],"orders":["81bea97a5fb4e205"],"parcel":"e0a8b6a7cd77a109","table":"second"}', '43f0a9a319fa2efac8923468a8c82da023e60238c8d7110d90ef5668d63cb3ca');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:03:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"f686d796fd6ccdea","line_state":"packed","now":["lines f686d796fd6ccdea packed e640cf74bfc8","slots L006 on_item 18d82b85c9d4","scans pack-L006 - 394f1e411425"],"order_number":"B-09","parcel":"e0a8b6a7cd77a109","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'fe1cb3de1257cdc891e941b13714d2abc878e447f2d7b1034406ab34fe399084');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:06:00.000000+00:00', 'cancelled', 'boss', '{"lines":["f686d796fd6ccdea","e920c61da7407e24"],"now":["lines f686d796fd6ccdea packed 81e9460dac5b","lines e920c61da7407e24 cancelled cbad69135395"],"number":"B-09","order":"81bea97a5fb4e205"}', 'de26b6327358b519609fa54f7828d53c644d2aa8ab9e0b13b8e859941df9ae89');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:09:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 309e60c50c8c09bf open 6aadc199ae27","orders 3512a65fde52d2d5 - a969ebde21ae"],"orders":["3512a65fde52d2d5"],"parcel":"309e60c50c8c09bf","table":"main"}', 'a9f3243724e6809b4d759c91eb6adbcd15d02d586bb8cdb6709f1734c337bdb7');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"4912c54489f35b71","line_state":"packed","now":["lines 4912c54489f35b71 packed 5237b73b373c","slots S002 on_item 5b2327eb39e9","scans pack-S002 - 7b7570c9db3b"],"order_number":"B-03","parcel":"309e60c50c8c09bf","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'd6c93e6de49ddde92cc36aeb874acb47b343defd4a2fff0dfbcf25ff82155a08');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:15:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"afd3095eb243daab","reference":"S006-018","stay":"937fd89321337940"}],"now":["lines afd3095eb243daab picked 198549d36916"],"number":"B-13","order":"7bcfb5168a36276c"}', 'adf2dd25f5f52d4a0658f418a747a19125b2f2f3d260af2f3065a4979db783d4');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:18:00.000000+00:00', 'round opened', 'boss', '{"lines":["7accd691e6922a25","65122f0839a82370","9f0d9d71395302a1","d5704f0a43d795e1"],"now":["rounds 289b0de18366d8b2 open 0c0c64a12424","lines d5704f0a43d795e1 waiting 1c5b9437e7cf","lines 7accd691e6922a25 waiting 085019294919","lines 65122f0839a82370 waiting e003891b01b1","lines 9f0d9d71395302a1 waiting 66e554ca3b2d"],"round":"289b0de18366d8b2"}', 'e5055d55d2523be9cb92e5ced24d62af589f477babbe4f238db5231644c5e295');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:21:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"7accd691e6922a25","line_state":"picked","now":["slots L002 on_item 2d6b69be58f5","lines 7accd691e6922a25 picked d491312f60d2","scans pick-L002 - 8d35b1d5ad31"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"289b0de18366d8b2","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '40eab9bb80ead50c59104e6f0305f72413872e014421823589fdc3b352c02b47');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:24:00.000000+00:00', 'short', 'boss', '{"line":"9f0d9d71395302a1","note":"Not in its bin","now":["lines 9f0d9d71395302a1 short 56793b9e0504","doubts 97dfe248da6f64fd - b5580b6fa953"]}', 'fe43ce90d4765d9a62415c33c895d75a382b0e9ba3bc564c96d063daa45385ee');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'doubted', 'boss', '{"doubt":"97dfe248da6f64fd","doubt_kind":"missing","item":"792609035c2ba815","words":"Not in its bin"}', '35fcb7b883a10e4df54903e93e56e3dbb20887517aa8215a0c3fee60b3bf1aba');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - e377ed8bac8a"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"289b0de18366d8b2","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '89499ae7c745f8f3ac31b55029cb095a95ecffd5c61adeaefb24ef7d33d5e551');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - aa2717f014c7"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"289b0de18366d8b2","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '8b5ca202d465e4dd46105b1ccc1f55162754635c440b77f92ab53d4ebb222c8a');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 71eb185964ef"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"289b0de18366d8b2","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '8cebf470b614f92a42473f532ae7fdbdc36dd35a7fdbe38a0809ca02af17fd6c');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'ffa37f52736046d4d8bb5025a47976c3c62851b98d42817dde103fb76aa36c4c');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', 'ed72069b7ea33985789073f8c1c562a6fb9baa99d4d637e10edd8215418703d3');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d656ad646b28e006","reference":"D001-019","stay":"5a22ab1edfd15625"},{"hold":"already_sold","line":"66da12cd08a9a4b9","reference":"W002-016","stay":null}],"now":["orders b98c615470586969 - dca2f83d93d6","lines d656ad646b28e006 waiting 1a980026b1b1","lines 66da12cd08a9a4b9 unbound 90ae1b3e63e7"],"number":"B-38","order":"b98c615470586969"}', '5193be5f27f11757b249d9596342cae3a9f3bd99e110659611f9b6319a6e5059');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"a26c066ff7b8eb55","reference":"W001","stay":null}],"now":["orders 62ec114058bb40cc - 1c3b79421c14","lines a26c066ff7b8eb55 unbound 99b2b064f16d"],"number":"B-39","order":"62ec114058bb40cc"}', 'e753e51f98fbd52ea191cfcaf228659f632af5915f3e8d9b1665624b7c3ffe04');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:48:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 6ddc0dbb675be187 open 25a33c4d8bed"],"stocktake":"6ddc0dbb675be187"}', '15b503e40086d7809a46e05b3f3683784afe5ef1ef931d8a2e2e3e3757aac57a');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:55:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 4c92d575c2d4","slots S001 on_item fd561f0f0012","doubts e0f2542af34080bd - de30148c246a"],"photo":null,"place":"B-1-1","stocktake":"6ddc0dbb675be187","unread":0}', '85bad2146b4aaada105962336c48b5f18e32e5bf1e4eab2936e88558cae6af58');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:55:00.000000+00:00', 'doubted', 'boss', '{"doubt":"e0f2542af34080bd","doubt_kind":"not_this","item":"4448be57b2d2584d","now":["slots S003 on_item 3ec385616003","slots S012 on_item 1a2c26c1ab7b","slots D010 on_item dd62d0f42546"],"words":"A count found another thing on its card in B-1-1."}', '6ccb91bc1b570df83c4de66cf50eeb6cd0bbb41995a1825301cfa61f6f0ae0eb');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:03:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 5b0b9cff66f4","slots S011 on_item b8c458e99057","slots S013 on_item 36edd8b68272"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"6ddc0dbb675be187","unread":0}', '08c79ab65fcb0ccb43237f933b8a602a59fc9358fda501f3118a2d5d9724163a');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:09:00.000000+00:00', 'finding resolved', 'boss', '{"after":167,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 0ea2e46ebb96","resolutions 6ddc0dbb675be187.elsewhere-S012 - da823909569b"],"reason":"","stocktake":"6ddc0dbb675be187","sure":false}', '74b188cc7d42e11fa24c3b4f56ee602a1ba8eccf2d19436ded7a75a13a899c41');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:12:00.000000+00:00', 'finding resolved', 'boss', '{"after":168,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 6ddc0dbb675be187.unknown-Q0771 - c02e69ee455e"],"reason":"A neighbour''s","stocktake":"6ddc0dbb675be187","sure":false}', 'db1080489c8c8ea59b77967619a84294813bcffdd592e97cebc2af98d5f420a3');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:15:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 5104c84d8ca2","resolutions 6ddc0dbb675be187.missing-S008 - 840eb71054fb"],"reason":"","stocktake":"6ddc0dbb675be187","sure":false}', 'af4dcc34eb0497d174212aed36f20a60c1128f9718e18cc913b871aaac1a7d9e');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:18:00.000000+00:00', 'finding reopened', 'boss', '{"after":170,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 6ddc0dbb675be187.missing-S008 - -"],"stocktake":"6ddc0dbb675be187"}', '9d49f4a8d3ae0ad0788c9cf320a7317b20c044d41515e66eb9013872f68032e1');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"0a4de7ad41564ae1","doubt_kind":"missing","item":"7194a3a210cbc94a","now":["doubts 0a4de7ad41564ae1 - 7f1dba51d7ee","stocktakes 6ddc0dbb675be187 closed 54cc90b225af"],"words":"a count of section:S did not find it"}', 'a47a25a2f301b60274d889ba97ac246b6f2b0976da0f84334ed5a6c2bca4d645');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:31:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 1d754be90fb1","slots L003 on_item f5af42dd9089","slots L004 on_item 38f54b60c566","slots L005 on_item c163bc7f25aa","slots L007 on_item 3d50edcdf11e"],"photo":null,"place":"C-1-1","stocktake":"6a3153826cfe78c4","unread":0}', 'dc8b4bd25a3dd001cbd43082628a3b345f4110e86dd3d8e263e4e45ca95e9d49');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:34:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts cc3670c15c7b3983 - 80b238a4eda7"]}', '6cf7ae747b3ac9eede908656fc596eb32eadbd10c0d86f81ee6eb1fa28f3d2f4');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:34:00.000000+00:00', 'doubted', 'boss', '{"doubt":"cc3670c15c7b3983","doubt_kind":"missing","item":"4221bdf0df490cec","now":["resolutions 6a3153826cfe78c4.missing-L008 - 61846aa63b92"],"words":"a count did not find it"}', '5445b8898207cd10a0bb44bbf0d253ce807ab8d7b66a5d4b209c7ce5ea35afbd');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:34:00.000000+00:00', 'finding resolved', 'boss', '{"after":175,"finding":"missing-L008","how":"lost","reason":"","stocktake":"6a3153826cfe78c4","sure":false}', 'a01ea844abe958c7d335fd79a626dd43a1716d99153a4ddb1a958c469dea301f');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:37:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays f57b727e4bfec395 withdrawn f0e306c11a43","slots L009 due 821cc144d722","resolutions 6a3153826cfe78c4.missing-L009 - 017d65fda3af"],"reason":"Nowhere to be found","stay":"f57b727e4bfec395"}', '7e8c69bbaa035840e547daca87edc14a3fb90e4b68022f139f9a78c7ff0ef765');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:37:00.000000+00:00', 'finding resolved', 'boss', '{"after":178,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"6a3153826cfe78c4","sure":false}', '31ae038da472169df830bafc14970530916775a761a2d1415c6757d3950d4190');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 0f10da3102d11309 open b372e566c32c"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"0f10da3102d11309"}', '2a5361c963fd95a300665a350cff8705ffcf4ca432f5d98d6ea280fa9d9683d9');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:43:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 2883ec9748c33b5f open d7b1f7c2caa6"],"stocktake":"2883ec9748c33b5f"}', '6ed51d6dea8f787f398526b47da838a930b051dd02225a48470cb55b8113f48b');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:46:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 2883ec9748c33b5f cancelled 1831152f7d4a"],"stocktake":"2883ec9748c33b5f"}', 'd4a9d50af5d60a064fdce7122a259b13196f1fe62f96f295edd8bd54f40ec6ef');
INSERT INTO public.lines VALUES (15, '03c34c76467cb74c', '2213c604e30e1c50', 1, 'D009-01B', 'Rear derailleur 9', '', '8f19c45934cf946e', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'b263e1c0c6424022', '6789bef9acb75c59', 1, 'D003-01U', 'Bell with a crown', '', '81f295d4f7337383', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '52bdcba924ebf765', '66ba0115bd64e923', 1, 'D005-01E', 'Rear derailleur 5', '', 'aca3d5211d5d494b', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '37a0dcf2bf180c4e', '66ba0115bd64e923', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'fbc0c94ae0bc4102', '77c65978db9aa6fa', 1, 'D006-016', 'Rear derailleur 6', '', 'f31c8d95c02f3d0d', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '96d098103fc1195a', '77c65978db9aa6fa', 2, 'D007-01R', 'Rear derailleur 7', '', '9bfe85ad19e00cd3', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'f04c258b50e68476', '9260574b99180c27', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, 'dd4729bf5c4c2b47', 'b071fb8e11a42975', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '6be561b4ecd7ad07', '0c21d760757e91ba', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, 'ac12932bc25555af', '6ed728227043790c', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'b48d27852b3879d7', 'aebcf660e0428cef', 1, 'W005-01B', 'Bell with a crown', '', '94b3b356542829a3', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '253d88364512a7fe', '0bcfd585fa47a7ac', 1, 'L007-014', 'Dynamo lamp 7', '', '8f6734fdf6b47bfc', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '1c9890be5100ee90', '8adffd47cf0b5cb9', 1, 'L005-01K', 'Dynamo lamp 5', '', '585c9b8f29db904c', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '039b11c9db05977e', 'ff5ede906fcb74f7', 1, 'W006-013', 'Front wheel 6', '', '38101238ae824f08', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '3c23d6741e7f3a17', 'a2ac3e43cab66b2b', 1, 'L012-01S', 'Dynamo lamp 12', '', 'dbb3d390b8853766', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '350ca9f2b28390ba', '220ee9094690af38', 1, 'S012-01O', '', '', '7918cdce96aeeeae', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '6b825b8ad4784475', 'f073778b1b02ba7c', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, 'c0d92b6d37316c2e', '7cc3339cfaae5832', 1, 'W001-01E', 'Front wheel 1', '', '25136512900065ca', 'released', '4994f970028776d5', 'bc8a12265016a3ac', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '0d71dfadf71dc8ee', '7cc3339cfaae5832', 2, 'W002-016', 'Front wheel 2', '', '87a43de5c4418433', 'released', '4994f970028776d5', 'bc8a12265016a3ac', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, 'fa73972fa83b1af5', '3512a65fde52d2d5', 2, 'S003-01W', 'Leather saddle 3', '', 'ce30a63ad501edff', 'picked', NULL, 'bc8a12265016a3ac', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, '5282be0071786abb', '526e76ac95f78292', 1, 'W007-01W', 'Front wheel 7', '', 'f7ef972d70f670ac', 'released', '1431d7ac78d1f364', 'bc8a12265016a3ac', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '25182d9adbde746d', '58634c3415bf0084', 1, 'S004-01O', 'Leather saddle 4', '', '88e12b03b752581c', 'packed', 'ffedae27b53d545c', 'bc8a12265016a3ac', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, 'f686d796fd6ccdea', '81bea97a5fb4e205', 1, 'L006-01C', 'Dynamo lamp 6', '', 'a0066055a8a7b2e6', 'packed', 'e0a8b6a7cd77a109', 'bc8a12265016a3ac', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, '3b32ad478e17594a', '58634c3415bf0084', 2, 'S005-01G', 'Leather saddle 5', '', '76643eec838d7d11', 'picked', NULL, 'bc8a12265016a3ac', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, 'cc79a7d55075c697', '46c8c75e1731b8db', 1, 'S007-01Z', 'Leather saddle 7', '', '421fb1df0e4f6fe3', 'picked', NULL, 'bc8a12265016a3ac', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'b0e4fe3186f0bea9', '526e76ac95f78292', 2, 'W008-01O', 'Front wheel 8', '', '9731c59cac6db686', 'waiting', NULL, 'bc8a12265016a3ac', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, 'e920c61da7407e24', '81bea97a5fb4e205', 2, 'L011-010', 'Dynamo lamp 11', '', 'af9d1d49ec8d7469', 'cancelled', NULL, 'bc8a12265016a3ac', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '4912c54489f35b71', '3512a65fde52d2d5', 1, 'S002-013', 'Leather saddle 2', '', '2d5a6c9142163d01', 'packed', '309e60c50c8c09bf', 'bc8a12265016a3ac', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, 'afd3095eb243daab', '7bcfb5168a36276c', 1, 'S006-018', 'Saddle with springs', '', '937fd89321337940', 'picked', NULL, 'bc8a12265016a3ac', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, 'd5704f0a43d795e1', '37282044b9ab34f7', 1, 'D008-01J', 'Rear derailleur 8', '', '2ff36b1e95d11553', 'waiting', NULL, '289b0de18366d8b2', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, 'd656ad646b28e006', 'b98c615470586969', 1, 'D001-019', 'Rear derailleur 1', '', '5a22ab1edfd15625', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, '65122f0839a82370', '6585b5dbf6ecfaa2', 1, 'L003-010', 'Dynamo lamp 3', '', '06883339598ade00', 'waiting', NULL, '289b0de18366d8b2', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '7accd691e6922a25', '310ec8bf108a5f4a', 1, 'L002-017', 'Dynamo lamp 2', '', '147e917be4087169', 'picked', NULL, '289b0de18366d8b2', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '9f0d9d71395302a1', '484b2e38c57be93f', 1, 'L004-01S', 'Dynamo lamp 4', '', 'e73f33b626d1fc84', 'short', NULL, '289b0de18366d8b2', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '66da12cd08a9a4b9', 'b98c615470586969', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, 'a26c066ff7b8eb55', '62ec114058bb40cc', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '6ddc0dbb675be187', 'B-1-1', '2026-03-02T15:55:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '6ddc0dbb675be187', 'B-1-2', '2026-03-02T16:03:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '6a3153826cfe78c4', 'C-1-1', '2026-03-02T16:31:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '310ec8bf108a5f4a', 'B-05', 'fair', '2026-03-02T11:50:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (5, '6585b5dbf6ecfaa2', 'B-06', 'fair', '2026-03-02T11:53:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (6, '484b2e38c57be93f', 'B-07', 'fair', '2026-03-02T11:56:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (7, '8adffd47cf0b5cb9', 'B-08', 'fair', '2026-03-02T11:59:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (9, '7bcfb5168a36276c', 'B-13', 'fair', '2026-03-02T12:05:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (10, '0bcfd585fa47a7ac', 'B-17', 'fair', '2026-03-02T12:08:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (11, '2213c604e30e1c50', 'B-18', 'fair', '2026-03-02T12:11:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (12, 'ff5ede906fcb74f7', 'B-21', 'fair', '2026-03-02T12:14:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (15, '37282044b9ab34f7', 'B-26', 'fair', '2026-03-02T12:23:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (16, '6789bef9acb75c59', 'B-30', 'fair', '2026-03-02T12:26:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (17, '66ba0115bd64e923', 'B-31', 'fair', '2026-03-02T12:29:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (18, '77c65978db9aa6fa', 'B-32', 'fair', '2026-03-02T12:32:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (19, '9260574b99180c27', 'B-33', 'fair', '2026-03-02T12:38:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (20, 'b071fb8e11a42975', 'B-34', 'fair', '2026-03-02T12:41:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (21, '0c21d760757e91ba', 'B-35', 'fair', '2026-03-02T12:44:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (22, '6ed728227043790c', 'B-36', 'fair', '2026-03-02T12:47:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (23, 'aebcf660e0428cef', 'B-37', 'fair', '2026-03-02T12:50:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (24, 'a2ac3e43cab66b2b', 'Sale L012-01S', '', '2026-03-02T13:11:00.000000+00:00', 24, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '');
INSERT INTO public.orders VALUES (25, '220ee9094690af38', 'F-1', '', '2026-03-02T13:17:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (26, 'f073778b1b02ba7c', 'F-2', '', '2026-03-02T13:17:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (1, '7cc3339cfaae5832', 'B-01', 'fair', '2026-03-02T11:41:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (14, '526e76ac95f78292', 'B-23', 'fair', '2026-03-02T12:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (13, '46c8c75e1731b8db', 'B-22', 'fair', '2026-03-02T12:17:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '');
INSERT INTO public.orders VALUES (3, '58634c3415bf0084', 'B-04', 'fair', '2026-03-02T11:47:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'ffedae27b53d545c', '', '', false, '');
INSERT INTO public.orders VALUES (8, '81bea97a5fb4e205', 'B-09', 'fair', '2026-03-02T12:02:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'e0a8b6a7cd77a109', '', '', false, '');
INSERT INTO public.orders VALUES (2, '3512a65fde52d2d5', 'B-03', 'fair', '2026-03-02T11:44:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '309e60c50c8c09bf', '', '', false, '');
INSERT INTO public.orders VALUES (27, 'b98c615470586969', 'B-38', 'fair', '2026-03-02T15:42:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, '');
INSERT INTO public.orders VALUES (28, '62ec114058bb40cc', 'B-39', '', '2026-03-02T15:45:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '');
INSERT INTO public.parcels VALUES (1, '4994f970028776d5', 'main', '7cc3339cfaae5832', '2026-03-02T14:08:00.000000+00:00', 'closed', '2026-03-02T14:17:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '1431d7ac78d1f364', 'main', '526e76ac95f78292', '2026-03-02T14:39:00.000000+00:00', 'closed', '2026-03-02T14:42:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '42d1f0a47ba08236', 'main', '46c8c75e1731b8db', '2026-03-02T14:45:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'ffedae27b53d545c', 'main', '58634c3415bf0084', '2026-03-02T14:51:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, 'e0a8b6a7cd77a109', 'second', '81bea97a5fb4e205', '2026-03-02T15:00:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, '309e60c50c8c09bf', 'main', '3512a65fde52d2d5', '2026-03-02T15:09:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '6ddc0dbb675be187.elsewhere-S012', '6ddc0dbb675be187', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:09:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:55:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7918cdce96aeeeae", "item": "b5010ffc6d696648", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "350ca9f2b28390ba", "order": "220ee9094690af38", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "7918cdce96aeeeae", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:09:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7918cdce96aeeeae", "item": "b5010ffc6d696648", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "350ca9f2b28390ba", "order": "220ee9094690af38", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "7918cdce96aeeeae", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '6ddc0dbb675be187.unknown-Q0771', '6ddc0dbb675be187', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:12:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '6a3153826cfe78c4.missing-L008', '6a3153826cfe78c4', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:34:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "c29e008148262db4", "item": "4221bdf0df490cec", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "c29e008148262db4", "item": "4221bdf0df490cec", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["cc3670c15c7b3983"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '6a3153826cfe78c4.missing-L009', '6a3153826cfe78c4', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:37:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f57b727e4bfec395", "item": "5898398e4d9bce82", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f57b727e4bfec395", "item": "5898398e4d9bce82", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:37:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'bc8a12265016a3ac', '2026-03-02T13:20:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '289b0de18366d8b2', '2026-03-02T15:18:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'da4b9e7430f85105b4e8a801bea2da1286b2031c35d503399fd28c666e707d16', 'bin', 'bc8a12265016a3ac', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'fd252d84c3ad9d2c17aca4a07a5f7c1cf2ac9c3fd53df292c993906ac4df3fd2', 'bin', 'bc8a12265016a3ac', 'W001', false, true, true, 'c0d92b6d37316c2e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "7cc3339cfaae5832", "order_number": "B-01", "line": "c0d92b6d37316c2e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["25136512900065ca", "stored"], ["c0d92b6d37316c2e", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '6b296a5e7b82a9f0f010c60d68128cb5712f5dc93be9ba2464b6e1b496318d54', 'bin', 'bc8a12265016a3ac', 'W002', false, true, true, '0d71dfadf71dc8ee', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "7cc3339cfaae5832", "order_number": "B-01", "line": "0d71dfadf71dc8ee", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["87a43de5c4418433", "stored"], ["0d71dfadf71dc8ee", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '1b44acc00a92fa35aaf4ce983cf7f470fe156ec9e9e1650e70ab100a6a1f64a5', 'bin', 'bc8a12265016a3ac', 'S002', false, true, true, '4912c54489f35b71', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3512a65fde52d2d5", "order_number": "B-03", "line": "4912c54489f35b71", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["2d5a6c9142163d01", "stored"], ["4912c54489f35b71", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'db3c38e73c54b3d2357634ad7a2a67bc90f959e02ef2a5aa40452e2e01c40a4f', 'bin', 'bc8a12265016a3ac', 'S003', false, true, true, 'fa73972fa83b1af5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "3512a65fde52d2d5", "order_number": "B-03", "line": "fa73972fa83b1af5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["ce30a63ad501edff", "stored"], ["fa73972fa83b1af5", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '59aadbfebdcc6579634ef36cc5c1be8fe5b08123a6f04dfd74dd11515ceebf4e', 'bin', 'bc8a12265016a3ac', 'S004', false, true, true, '25182d9adbde746d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "58634c3415bf0084", "order_number": "B-04", "line": "25182d9adbde746d", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["88e12b03b752581c", "stored"], ["25182d9adbde746d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'bc6ad242fb6ca6d455f3791fdfb1cc9912869b8a93731fa113cabc79c9ec2e2d', 'bin', 'bc8a12265016a3ac', 'S005', false, true, true, '3b32ad478e17594a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "58634c3415bf0084", "order_number": "B-04", "line": "3b32ad478e17594a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["76643eec838d7d11", "stored"], ["3b32ad478e17594a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'a45b77bbf240bf00bfa5a6655cd55b68743be6c2fa3e9734fa063299b610c02b', 'bin', 'bc8a12265016a3ac', 'L006', false, true, true, 'f686d796fd6ccdea', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "81bea97a5fb4e205", "order_number": "B-09", "line": "f686d796fd6ccdea", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["a0066055a8a7b2e6", "stored"], ["f686d796fd6ccdea", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'dcdefe9973f91727c58f36a60acd9ecc08437aed287306e5e0cb87ef69d8e0e6', 'bin', 'bc8a12265016a3ac', 'L011', false, true, true, 'e920c61da7407e24', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "81bea97a5fb4e205", "order_number": "B-09", "line": "e920c61da7407e24", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["af9d1d49ec8d7469", "stored"], ["e920c61da7407e24", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '593f485a5be1ca769f165139f5a923d46382a19dd073ea2a3eb3421750ac9bfc', 'bin', 'bc8a12265016a3ac', 'S006', false, true, true, 'afd3095eb243daab', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "7bcfb5168a36276c", "order_number": "B-13", "line": "afd3095eb243daab", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:50:00.000000+00:00', '["on_item", ["937fd89321337940", "stored"], ["afd3095eb243daab", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '157ba527295fb6fb4cc88778239db2a6da3661bac33cbe617bc8a345847e6148', 'bin', 'bc8a12265016a3ac', 'S007', false, true, true, 'cc79a7d55075c697', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "46c8c75e1731b8db", "order_number": "B-22", "line": "cc79a7d55075c697", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:53:00.000000+00:00', '["on_item", ["421fb1df0e4f6fe3", "stored"], ["cc79a7d55075c697", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '18943e0c21673aeea351f7e871bd4ac1b97f73ff1446da853f606e2139dcdbb3', 'bin', 'bc8a12265016a3ac', 'W007', false, true, true, '5282be0071786abb', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "526e76ac95f78292", "order_number": "B-23", "line": "5282be0071786abb", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:56:00.000000+00:00', '["on_item", ["f7ef972d70f670ac", "stored"], ["5282be0071786abb", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '7c6b97d831cc901bbeab43811af2e3dca45769923a06843b8fa022deebe5a725', 'bin', 'bc8a12265016a3ac', 'W008', false, true, true, 'b0e4fe3186f0bea9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "526e76ac95f78292", "order_number": "B-23", "line": "b0e4fe3186f0bea9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:59:00.000000+00:00', '["on_item", ["9731c59cac6db686", "stored"], ["b0e4fe3186f0bea9", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '4912c54489f35b71', '4994f970028776d5', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3512a65fde52d2d5", "order_number": "B-03", "line": "4912c54489f35b71", "line_state": "picked", "order_state": "picking", "parcel": "4994f970028776d5", "parcel_state": "open", "released": []}', '', '2026-03-02T14:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'c0d92b6d37316c2e', '4994f970028776d5', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "7cc3339cfaae5832", "order_number": "B-01", "line": "c0d92b6d37316c2e", "line_state": "packed", "order_state": "picking", "parcel": "4994f970028776d5", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:14:00.000000+00:00', '["on_item", ["25136512900065ca", "stored"], ["c0d92b6d37316c2e", "packed", "4994f970028776d5", []], ["4994f970028776d5", "2026-03-02T14:08:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '0d71dfadf71dc8ee', '4994f970028776d5', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "7cc3339cfaae5832", "order_number": "B-01", "line": "0d71dfadf71dc8ee", "line_state": "released", "order_state": "released", "parcel": "4994f970028776d5", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:17:00.000000+00:00', '["due", ["87a43de5c4418433", "shipped"], ["0d71dfadf71dc8ee", "released", "4994f970028776d5", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'c0d92b6d37316c2e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "7cc3339cfaae5832", "order_number": "B-01", "line": "c0d92b6d37316c2e", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:20:00.000000+00:00', '["tray", ["25136512900065ca", "shipped"], ["c0d92b6d37316c2e", "released", "4994f970028776d5", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '5282be0071786abb', '1431d7ac78d1f364', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "526e76ac95f78292", "order_number": "B-23", "line": "5282be0071786abb", "line_state": "packed", "order_state": "waiting", "parcel": "1431d7ac78d1f364", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:33:00.000000+00:00', '["on_item", ["f7ef972d70f670ac", "stored"], ["5282be0071786abb", "packed", "1431d7ac78d1f364", []], ["1431d7ac78d1f364", "2026-03-02T14:30:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '25182d9adbde746d', 'ffedae27b53d545c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "58634c3415bf0084", "order_number": "B-04", "line": "25182d9adbde746d", "line_state": "packed", "order_state": "picking", "parcel": "ffedae27b53d545c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:54:00.000000+00:00', '["on_item", ["88e12b03b752581c", "stored"], ["25182d9adbde746d", "packed", "ffedae27b53d545c", []], ["ffedae27b53d545c", "2026-03-02T14:51:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'f686d796fd6ccdea', 'e0a8b6a7cd77a109', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "81bea97a5fb4e205", "order_number": "B-09", "line": "f686d796fd6ccdea", "line_state": "packed", "order_state": "picking", "parcel": "e0a8b6a7cd77a109", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:03:00.000000+00:00', '["on_item", ["a0066055a8a7b2e6", "stored"], ["f686d796fd6ccdea", "packed", "e0a8b6a7cd77a109", []], ["e0a8b6a7cd77a109", "2026-03-02T15:00:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '4912c54489f35b71', '309e60c50c8c09bf', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3512a65fde52d2d5", "order_number": "B-03", "line": "4912c54489f35b71", "line_state": "packed", "order_state": "picking", "parcel": "309e60c50c8c09bf", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:12:00.000000+00:00', '["on_item", ["2d5a6c9142163d01", "stored"], ["4912c54489f35b71", "packed", "309e60c50c8c09bf", []], ["309e60c50c8c09bf", "2026-03-02T15:09:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'f2cb406457675ad2a2b29f1a73e3cc406c301c48e5cb29544f32c09e2f4ac24a', 'bin', '289b0de18366d8b2', 'L002', false, true, true, '7accd691e6922a25', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "310ec8bf108a5f4a", "order_number": "B-05", "line": "7accd691e6922a25", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:21:00.000000+00:00', '["on_item", ["147e917be4087169", "stored"], ["7accd691e6922a25", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '36cdfa90366ba3625177ae7e22d87f82ddfe7777e36ab6ba7f22b8cfbce538fa', 'bin', '289b0de18366d8b2', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:27:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '3784ee6214f61f4b3227560159edf30a49e76989c7c46a2986d39da3c3eee1b6', 'bin', '289b0de18366d8b2', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:30:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '2abc2fa3c276ee6c6107be3123278f677a0a6a50e4098b5f458ecd500aa2b057', 'bin', '289b0de18366d8b2', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:33:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:03:00.000000+00:00', 'e0a8b6a7cd77a109', 'bin', 'C-1-1', 'bc8a12265016a3ac', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', 'bc8a12265016a3ac', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:47:00.000000+00:00', NULL, 'bin', 'C-1-2', 'bc8a12265016a3ac', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:53:00.000000+00:00', NULL, 'bin', 'B-1-1', 'bc8a12265016a3ac', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:12:00.000000+00:00', '309e60c50c8c09bf', 'bin', 'B-1-1', 'bc8a12265016a3ac', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:50:00.000000+00:00', NULL, 'bin', 'B-1-1', 'bc8a12265016a3ac', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:59:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:17:00.000000+00:00', '4994f970028776d5', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:33:00.000000+00:00', '1431d7ac78d1f364', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:54:00.000000+00:00', 'ffedae27b53d545c', 'bin', 'B-1-1', 'bc8a12265016a3ac', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:21:00.000000+00:00', NULL, 'bin', 'C-1-1', '289b0de18366d8b2', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, 'bin', 'B-1-1', 'bc8a12265016a3ac', 2, NULL, NULL, false);
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
INSERT INTO public.stays VALUES (1, '5a22ab1edfd15625', '9e6ccb90125aee57', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, 'fca0d5348fa86836', '4ff51daf2e864788', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '81f295d4f7337383', '280a73c79adc1e04', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, '8027e78edecb0e8b', '5ee89b29e52b756c', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, 'aca3d5211d5d494b', 'fc51bdefaffb2d38', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, 'f31c8d95c02f3d0d', 'ca212ae4e177d9a1', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '9bfe85ad19e00cd3', '2244a0d71d088a13', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, '8f19c45934cf946e', '48d13fe7603769f6', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '4ee5a97303655b02', '82f0937799fa44d5', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '383fb700c50ebf5d', 'cc74e01cb3e16f88', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '63305269c325f9bd', 'efda49b91979681f', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '73a2f61ac598716b', '4448be57b2d2584d', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, '2d5a6c9142163d01', 'c8b3e68f3ec71457', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'ce30a63ad501edff', '5b3d02b865cb13f1', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '88e12b03b752581c', '6d158842ca2928f0', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '76643eec838d7d11', '01ed9f4af0e8b822', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '937fd89321337940', '11591e557e361666', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, '421fb1df0e4f6fe3', 'f5ce4b4c309d2ce5', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '648d944ae3520234', '7194a3a210cbc94a', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, 'fb4fbe00204cc983', '3cb62c047b8f41e4', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '7918cdce96aeeeae', 'b5010ffc6d696648', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, 'bf3ced491e602aba', '55ad0984e030f8b3', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, '147e917be4087169', '827297c621f11816', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '06883339598ade00', '7fde0e3dbafdd523', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, 'e73f33b626d1fc84', '792609035c2ba815', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, '585c9b8f29db904c', '06ed27924ac1481d', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, 'a0066055a8a7b2e6', '902d5a700dde9a68', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '8f6734fdf6b47bfc', 'ac292dcca7789678', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'c29e008148262db4', '4221bdf0df490cec', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, '524e7d1dff43e6be', '125331d63ca4f710', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, 'af9d1d49ec8d7469', '147869165f836311', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, 'dbb3d390b8853766', '974211b8f15cd6fd', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '278e88555e87d40a', '91dc71799f4cb8a6', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '94b3b356542829a3', '0a26ce5b2a6a6168', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '38101238ae824f08', '6acb0f20c441b9d3', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, '9731c59cac6db686', '2cf145d1e52eebf2', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, '2da87f1880ac2756', 'a56aa7226e4411e5', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, '75a87c007ae14528', '0c56777435994a92', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, 'f26a94c34b475880', '6b5405ba299d003d', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, '08dc85bb77f87a9e', '8d437aa93303e57f', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, 'e5664694eb7d5316', '7f8552b0bb419a42', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '9797e8f0e294008a', '85cf74e57e56f049', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, '151d600cc280c8f1', 'c9c041a78fef5b2c', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '315f3d5f0ac09595', 'b8fa547cc9a14db9', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '6674c8f9af3e278e', 'b8fa547cc9a14db9', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '871c0eacccd78b88', '4b9dc36f8881d5a5', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '40a92112897c81a0', '76e150e4659ac404', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, 'f40f42141fb74565', 'a44ab7842152008b', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:08:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '2ff36b1e95d11553', 'a44ab7842152008b', 'D020', 1, '2026-03-02T13:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '25136512900065ca', '1fe000e021e11e5f', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, '87a43de5c4418433', '447c31feea983157', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '33cdd5a569ac5393', 'fb3f961c0261fd03', 'W001', 2, '2026-03-02T14:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, 'f7ef972d70f670ac', '38d52dfaf68c38f9', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:42:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, 'f57b727e4bfec395', '5898398e4d9bce82', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:37:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, '6ddc0dbb675be187', 'section:S', 'Spring', '2026-03-02T15:48:00.000000+00:00', 163, 'closed', '2026-03-02T16:21:00.000000+00:00', '{"stocktake": "6ddc0dbb675be187", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:48:00+00:00", "closed": "2026-03-02T16:21:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:09:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:12:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '6a3153826cfe78c4', 'section:L', 'Spring', '2026-03-02T16:24:00.000000+00:00', 173, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '0f10da3102d11309', 'section:D', '', '2026-03-02T16:40:00.000000+00:00', 180, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '2883ec9748c33b5f', 'tray', 'Too late today', '2026-03-02T16:43:00.000000+00:00', 181, 'cancelled', '2026-03-02T16:46:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'bc8a12265016a3ac', 1, '4912c54489f35b71', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'bc8a12265016a3ac', 2, 'fa73972fa83b1af5', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'bc8a12265016a3ac', 3, '25182d9adbde746d', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'bc8a12265016a3ac', 4, '3b32ad478e17594a', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'bc8a12265016a3ac', 5, 'afd3095eb243daab', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'bc8a12265016a3ac', 6, 'cc79a7d55075c697', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'bc8a12265016a3ac', 7, 'c0d92b6d37316c2e', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'bc8a12265016a3ac', 8, '0d71dfadf71dc8ee', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'bc8a12265016a3ac', 9, '5282be0071786abb', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'bc8a12265016a3ac', 10, 'b0e4fe3186f0bea9', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'bc8a12265016a3ac', 11, 'f686d796fd6ccdea', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'bc8a12265016a3ac', 12, 'e920c61da7407e24', 'C-1-2');
INSERT INTO public.stops VALUES (13, '289b0de18366d8b2', 1, 'd5704f0a43d795e1', 'A-1-2');
INSERT INTO public.stops VALUES (14, '289b0de18366d8b2', 2, '7accd691e6922a25', 'C-1-1');
INSERT INTO public.stops VALUES (15, '289b0de18366d8b2', 3, '65122f0839a82370', 'C-1-1');
INSERT INTO public.stops VALUES (16, '289b0de18366d8b2', 4, '9f0d9d71395302a1', 'C-1-1');
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
