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
CREATE TABLE public.changed_orders (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    load character varying(64) NOT NULL,
    "order" character varying(64) NOT NULL,
    at character varying(32) NOT NULL,
    was text NOT NULL
);
CREATE SEQUENCE public.changed_orders_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.changed_orders_n_seq OWNED BY public.changed_orders.n;
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
    away_since character varying(32),
    packing text DEFAULT ''::text NOT NULL
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
    handed character varying(32),
    carrier text DEFAULT ''::text NOT NULL,
    handed_by text DEFAULT ''::text NOT NULL,
    collected_by text DEFAULT ''::text NOT NULL,
    later boolean DEFAULT false NOT NULL
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
CREATE TABLE public.returns (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    "order" character varying(64),
    lines text NOT NULL,
    why text NOT NULL,
    until character varying(32),
    state character varying(24) NOT NULL,
    opened character varying(32) NOT NULL,
    arrived character varying(32),
    checked character varying(32),
    checks text NOT NULL
);
CREATE SEQUENCE public.returns_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.returns_n_seq OWNED BY public.returns.n;
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
ALTER TABLE ONLY public.changed_orders ALTER COLUMN n SET DEFAULT nextval('public.changed_orders_n_seq'::regclass);
ALTER TABLE ONLY public.channels ALTER COLUMN n SET DEFAULT nextval('public.channels_n_seq'::regclass);
ALTER TABLE ONLY public.doubts ALTER COLUMN n SET DEFAULT nextval('public.doubts_n_seq'::regclass);
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.labels ALTER COLUMN n SET DEFAULT nextval('public.labels_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
ALTER TABLE ONLY public.listings ALTER COLUMN n SET DEFAULT nextval('public.listings_n_seq'::regclass);
ALTER TABLE ONLY public.looks ALTER COLUMN n SET DEFAULT nextval('public.looks_n_seq'::regclass);
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
ALTER TABLE ONLY public.orders ALTER COLUMN n SET DEFAULT nextval('public.orders_n_seq'::regclass);
ALTER TABLE ONLY public.parcels ALTER COLUMN n SET DEFAULT nextval('public.parcels_n_seq'::regclass);
ALTER TABLE ONLY public.photos ALTER COLUMN n SET DEFAULT nextval('public.photos_n_seq'::regclass);
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.resolutions ALTER COLUMN n SET DEFAULT nextval('public.resolutions_n_seq'::regclass);
ALTER TABLE ONLY public.returns ALTER COLUMN n SET DEFAULT nextval('public.returns_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stocktakes ALTER COLUMN n SET DEFAULT nextval('public.stocktakes_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, 'fb779e1347d3e38f3c1f10203e4882c28cd071cf93e9ae3f24eca4a27cbd1cf5', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$+sfJk2YJfD9+iLb6TKYQIA$jKdmszKuleqUvcMxo8tm/9+CThayREK0pgFqUmLW4eI', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '4e6b756c2d700cc65ac84e59294b2481874c3b5f2a94b525d23db49036e9b0ac', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'aaddcf9002ae183d7714155455e72b143cedd84d148b5149bc0be3c50ea7e594', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '77e0f297295c3a35861a83d81b903605bb8b1e29d9816fb4432552ff814ebdc8', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'e5a1c0edd7a106b9b7e0b4cccb855066be3122f85409f5e48ccb3b162bf9eecc', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/0b2fe714dfb4b840', '{"id": "0b2fe714dfb4b840", "item": "03c0f02a660942a9", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "packing": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '98c32d06ec228221', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', '9dd0b05cf5d9f01e', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"cdbc07a40d440ba8": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"cdbc07a40d440ba8": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}}');
INSERT INTO public.changed_orders VALUES (2, '7b339404d63f4b6a', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', 'aa5ee264cdce3b61', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"223eef9887d6e7d0": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"223eef9887d6e7d0": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]], "in_file": false}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, '57b0e8bc0c0c19d1', 'd17d7a2c06848d9c', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '3ee567727f91b6f3', '6fb3034a4c4ccbbf', 'missing', 'Not in its bin', '2026-03-02T16:17:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '6309b6586f92d8a4', '7a64f2c883494874', 'not_this', 'Came back: to be checked.', '2026-03-02T16:50:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, 'fdf10db90c098182', '321b4a1b1c605f76', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T17:15:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '86c40ab67feb2ea0', 'a1219216735dae93', 'missing', 'a count of section:S did not find it', '2026-03-02T17:41:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (6, '1b6cd1375e7de4a6', '8e66de295590c3dd', 'missing', 'a count did not find it', '2026-03-02T17:54:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 217, 'c5cfa719780532bcc523e848aa49dd0c7e7771082b4d81aa49f2eb2a10d116ce', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0, "closing": {"weekdays": [], "dates": []}}', 'e36103d63f4619a4');
INSERT INTO public.items VALUES (3, 'e04734b47d9d90b8', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (4, 'f643f41521586e41', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (5, '8590d5b79faffcdf', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (6, 'a1fab9f7dd8282cb', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (7, 'edcfdca865d4e4d5', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (8, '2dc43b2c10dfecae', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (9, 'ec9cc09ad8d5350d', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (10, '0600e95ebb4694f1', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (11, '37652576782e0b1c', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (12, '92df67c1caafcd44', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (14, 'fee3365a981450aa', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (15, 'a78d00d75354f1c6', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (16, 'd4b76559259a7eeb', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (17, 'aff4ab098d6c11fd', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (18, '1588a2ab4ef65457', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (19, '2a2328b1e4697ffb', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (20, 'a1219216735dae93', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (21, 'fcb9160404d1ec15', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (22, '0e5a69b18ae2d257', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (23, '30d6dba2bdf8a88c', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (24, 'cc9c58006c6bc278', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (25, '1ab2a66ed950f88b', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (26, '510f30a0fe704f88', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (27, '7d6b31bada60990e', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (28, '6fb3034a4c4ccbbf', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (29, '75ce6d595e296fad', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (30, '3c917c0938ee6aad', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (31, 'd17d7a2c06848d9c', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (32, '8e66de295590c3dd', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (33, 'd9f7e5b55f2a9b0a', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (34, 'bb674bb7572f37df', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (35, '6f2ebbfd803e9891', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (36, 'cf34e38f621c3422', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (37, '6b0617e8234b2146', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (38, '7a64f2c883494874', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (39, 'd01cacf9be0c6f0d', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (40, 'a90805b41989bdd5', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (41, 'd18f0ea6be620489', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (42, 'b419944a00256e18', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (43, '95b0df2dd5032bae', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (44, '94a4af6633530647', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (45, '7004fd671e828a41', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (46, '7d629aa811d92c9c', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (49, '03c0f02a660942a9', 'Brass bell', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (2, '68404222c4550847', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL, 'Coil the cable');
INSERT INTO public.items VALUES (1, '5147e56cca91e34d', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (13, '321b4a1b1c605f76', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (50, '955618bf67d33314', 'Carbide lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (51, 'f006d5d848376f5b', 'Rear lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (48, '86269be3f8275bc9', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL, '');
INSERT INTO public.items VALUES (47, 'd64a3cf12ec3ef0a', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00', '');
INSERT INTO public.items VALUES (52, '373882bac159c8bf', 'Rear wheel', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '859bd5bb491daaec', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 5147e56cca91e34d - 37743f8c3260","slots D001 on_item e5405bc28ff8","stays e89f05f62b1dfaad stored 1c67fd7ad0c7","listings f30e2b4e6ba7e4d4 - d50be990e86e"],"stay":"e89f05f62b1dfaad","title":"Rear derailleur 1","turn":1}', '70ca50ccceef2ccb85518a83284389554ba44ba98c7ba193e1af6c3a54fb67d1');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 68404222c4550847 - 78f882cc5fea","slots D002 on_item 4f79f524f247","stays 8d26bfe5ec2fe24e stored 66544e8b8f9a","listings 7d99c344fd9aa890 - 11e33eb828ac"],"stay":"8d26bfe5ec2fe24e","title":"Rear derailleur 2","turn":1}', 'f77af559c488ad0381998c5fdc806abcecd0e2b8126dfa2d8095fd57ad9bd1fd');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items e04734b47d9d90b8 - d14ed9fc8562","slots D003 on_item 6de523ac8b4d","stays 42398543ba9b34cc stored 11ae24521720","listings 96704b1059ce8574 - 42251e57e5e3"],"stay":"42398543ba9b34cc","title":"Rear derailleur 3","turn":1}', '4a787a3442ab6a1af9cbd6461c3711fd722e796f08f8b8a396371e5a57eec041');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items f643f41521586e41 - 8d39ac668c69","slots D004 on_item ec423998da46","stays e664cec03a179d57 stored d8e75fc917fc","listings ee28c25c108e8a14 - 36eb2955ff13"],"stay":"e664cec03a179d57","title":"Rear derailleur 4","turn":1}', 'e6a3363a7f98b9c805fa1558cee8dfba16e338be4743a5052957cb0156700e0a');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 8590d5b79faffcdf - ae33c9a43a5c","slots D005 on_item 91ad3faf88d6","stays c02d586f9b9de815 stored 2a084a44b443","listings d3fcf494c54dfb41 - 3e96e033113b"],"stay":"c02d586f9b9de815","title":"Rear derailleur 5","turn":1}', '71d7be983651691a74f7e935385e7c2f13b3568e5c6ca18715501e5e1712ae8f');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings 0ace7ae1e60c8ea1 - bc3091e15c7d"],"stay":"46aa2955e9bf19fe"}', 'c43aece43b7a169eb0cce423a3744bd7c04f04436003afba2f2c13378be1a932');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items a1fab9f7dd8282cb - 98630ee0ad09","slots D006 on_item 1fadb568d6a5","stays 9cee7555a4a127fa stored 8b27fd0ac8c8","listings 0134571a38552c1b - bc1a6c5e0c58"],"stay":"9cee7555a4a127fa","title":"Rear derailleur 6","turn":1}', '307ba47d4747c1a56ce12e7ad5d0e053558f500ef113497b75f2675587576ec7');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items edcfdca865d4e4d5 - cfbabd53de1c","slots D007 on_item 536077e3b728","stays 2cdf395acdf7c243 stored e7963d320352","listings e0b54ba52780ad6b - 42faf93fac5e"],"stay":"2cdf395acdf7c243","title":"Rear derailleur 7","turn":1}', 'ddbee09173cda0e108b870ed6a4e2b51f79cc1ddc6650908b3fc8c9a6aac3cee');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 2dc43b2c10dfecae - 2732c82b3fb7","slots D008 on_item facb453cba22","stays ee3b7be406039cd4 stored f9575a9663cc","listings 3de0aa564a04267a - 7563d390e29b"],"stay":"ee3b7be406039cd4","title":"Rear derailleur 8","turn":1}', '3939c6964ed8634ff72399508ccd3d8ce3667546a4db9c5752dcfa4c8a13f749');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items ec9cc09ad8d5350d - 71874ec6af4a","slots D009 on_item 7434bf04ccf2","stays 3fb9a83180eecc29 stored 0297f187431f","listings 745fd40ab34df92e - 0f5e6c27a5be"],"stay":"3fb9a83180eecc29","title":"Rear derailleur 9","turn":1}', '560ec20a0260a257b5cf39629737ea9626a4864d55e1a13c6ff7cbf959783df3');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 0600e95ebb4694f1 - e3104483bf7f","slots D010 on_item 1f8fd3ebaf8b","stays 11fdcd74bbf090fd stored f1c72ebde1fe","listings 645a47b48461ff77 - c188f17519de"],"stay":"11fdcd74bbf090fd","title":"Rear derailleur 10","turn":1}', '5cb05b2fbb2aac0219af2b23ed4effd7a59e3f32a2b87b6ee8dc768e230fccce');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 37652576782e0b1c - 7811a9214095","slots D011 on_item d451255e38b7","stays 7c53da3bde1baeb7 stored f736ebccc071","listings 0e342327689f101a - 26651e24f5f3"],"stay":"7c53da3bde1baeb7","title":"Rear derailleur 11","turn":1}', '3e61fd060cb23617dc09567d0f463ca216f8eb333a1b9d48e6ded018a9e32125');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 92df67c1caafcd44 - 262b6ceb0f53","slots D012 on_item bdbda5bb2b7a","stays 540ff14ecc35ceb0 stored 8cebb8f4bf1f","listings fe9b62c1ba90e17b - 6eed1a58eb18"],"stay":"540ff14ecc35ceb0","title":"Rear derailleur 12","turn":1}', '43a690ea3d29eb687a63eb8c1fab61e29403b4dd3d10dea81eda704aac89f81f');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 321b4a1b1c605f76 - ae7994ceec6f","slots S001 on_item 76dcd853e3e0","stays 1d91791ff0753319 stored e6e364a1c41c","listings 24aabf96ed430e5f - 1724eab9e962"],"stay":"1d91791ff0753319","title":"Leather saddle 1","turn":1}', 'ab3d3a285aebde1f324df978ee0da8d4b46378ac10dbf151b03f65e76436f43e');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items fee3365a981450aa - 7ca32af0c87b","slots S002 on_item 6fb94c47a50d","stays 82805c5507b8cef5 stored 34554de10948","listings 5d098fc831fc663b - 5790eced8f02"],"stay":"82805c5507b8cef5","title":"Leather saddle 2","turn":1}', 'c5218fa24beb19dd3ed2bc954cedb98aeb5f368aae704397e10320f7f03851f4');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items a78d00d75354f1c6 - 4857a3794abf","slots S003 on_item e00808332634","stays dd626e7ab37dcd90 stored bdae57c5f3da","listings ad12b4683b0b0c99 - ac9401fa1a6d"],"stay":"dd626e7ab37dcd90","title":"Leather saddle 3","turn":1}', 'acd1bf8be6d43e9f6ccae4fb58b3a422131ce358dfcd0b15c807c9226976561c');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items d4b76559259a7eeb - e4a6ccd131b9","slots S004 on_item db1aa8005467","stays e2dbbf32f105ac47 stored 19f6e0a22ca7","listings db5b3b24a39e6bc4 - 327daad0bfdb"],"stay":"e2dbbf32f105ac47","title":"Leather saddle 4","turn":1}', 'cc07d47227b712d449a8a1ea2ec992d7aa57c38654035a117981aaf764dee88c');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items aff4ab098d6c11fd - 64133272df8c","slots S005 on_item ec548ef84f99","stays e2f732be1aae5d92 stored 605469828a62","listings c971671714bdf938 - 1355365e30d0"],"stay":"e2f732be1aae5d92","title":"Leather saddle 5","turn":1}', 'a23c132baef0cd69bc010149c9fa26024823436fa842d821c5699b3124e4264c');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 1588a2ab4ef65457 - 3939da29c523","slots S006 on_item dc9bc74eb63a","stays 73e7eda45bd515b3 stored 23e63c9369d9","listings 2e8ea5c1d6264628 - f11ff77d5619"],"stay":"73e7eda45bd515b3","title":"Leather saddle 6","turn":1}', 'ef28662d366937bd15960299491a0b59ebbfe2999b5115381d542ba31a2d6ed9');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 2a2328b1e4697ffb - 8b20cb66d91f","slots S007 on_item 075fd8b9fecf","stays dc55f72f9b8bbc61 stored 93bb050e097c","listings 0cd349bdeae61100 - cfc755e18abd"],"stay":"dc55f72f9b8bbc61","title":"Leather saddle 7","turn":1}', '42b4c28b79de3f9974fbece480a8094f8cda6405c859cfd599b9021e9e0ded6d');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items a1219216735dae93 - 204e247f6f56","slots S008 on_item 39fdb847a4bc","stays 9744402cb8780806 stored 29b19fcb2a39","listings a340de46a98aa138 - 2e1c45c0fa47"],"stay":"9744402cb8780806","title":"Leather saddle 8","turn":1}', 'd89e4895446529b13214462b1b0447068108dc640b93db577b102766cef4c248');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items fcb9160404d1ec15 - 933a8040dabe","slots S009 on_item 62c79df275b3","stays 40e9fbdfd7851291 stored e47e991507a4","listings c24c1d797c0a9950 - c87c55fcee5c"],"stay":"40e9fbdfd7851291","title":"Leather saddle 9","turn":1}', 'd66569fa3fa0e51e951abefdba6d908fc1d975e9edcd7470880c43e37d3fb01c');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 0e5a69b18ae2d257 - c6626a0eea7c","slots S010 on_item 1fd8d85fa1c4","stays 26b87cffc049e82e stored 1c050d5bd033","listings 6ab1ce4d1b4cae1e - 8ed831bfb1ab"],"stay":"26b87cffc049e82e","title":"Leather saddle 10","turn":1}', 'f4a27d7944b446efcc89a4f6d42fd033b5e28a92689fd446990034d0eea680b6');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 30d6dba2bdf8a88c - f0ac0d1b5b37","slots S011 on_item e59577c4b2a7","stays 21d7a43fe01a7ae5 stored e26349d3fa3f","listings b097d39f84fa498a - bfc9596c9860"],"stay":"21d7a43fe01a7ae5","title":"Leather saddle 11","turn":1}', 'ed58473866adb6092df47ce4ea87e2e38dea26aea04e425047040e80b23cb915');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items cc9c58006c6bc278 - a2a9297ff6c2","slots S012 on_item 9bae442e2436","stays b6b16a4722068a7e stored 90050b41a9ce","listings 91b7e01325696283 - 7c0480939bea"],"stay":"b6b16a4722068a7e","title":"Leather saddle 12","turn":1}', '7d92cf89df679bfb80674df34ca96127ed2aff69da59e2bd010debe117e568e4');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 1ab2a66ed950f88b - f3a87383424b","slots L001 on_item 43c5cdfaa8e4","stays 35a2750028967cda stored e950ba0fd5e8","listings e5c2ebd7cd6870c9 - 11a18025a0cd"],"stay":"35a2750028967cda","title":"Dynamo lamp 1","turn":1}', '013d59fd45ed9a07dc02a6fe1a4574c1bd0208578cc0eb6f1ccac367f8942d4c');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 510f30a0fe704f88 - 67c965fdc38e","slots L002 on_item ea8e77c8b06f","stays 09e5d76ecccc6d68 stored 814d63adbb29","listings 25b1c7e5c5e913a4 - 080a3c8cfa37"],"stay":"09e5d76ecccc6d68","title":"Dynamo lamp 2","turn":1}', 'b1426ab7fd2b64c2b5df1488a7511d99fad5d9db8a28bbe90768f86a42d8f6e2');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 7d6b31bada60990e - d2c184a62456","slots L003 on_item c35e4c005cda","stays 37541721f4904fba stored 9c7f1496727f","listings 167cdd341321fed0 - dfbe3cf11f9b"],"stay":"37541721f4904fba","title":"Dynamo lamp 3","turn":1}', 'a66a185e166256339f0e8d33c4bef4ba53789b51f188e15a4b19443df6edecbe');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 6fb3034a4c4ccbbf - 8545eda0f6c8","slots L004 on_item 70a88e4a366b","stays 133c144db9933096 stored 6ce8c8a13fef","listings 2ebcb47fdec2a6a3 - cece5031d848"],"stay":"133c144db9933096","title":"Dynamo lamp 4","turn":1}', '6bbb5d2dcc66bd154ee99d2aa89dc3c9f68a01a330d90dd7a0fc7a3d1309e5ca');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 75ce6d595e296fad - 03bc80508cf3","slots L005 on_item 6261d94de1ef","stays c223e459cfc1e2c6 stored 7288e8c812c3","listings 2fbb5057bf86e250 - 0298eff55cd1"],"stay":"c223e459cfc1e2c6","title":"Dynamo lamp 5","turn":1}', 'a58edb49e21b3ae782be936daf6e850cb427a44117c348321b44f6a6cf5be5b0');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 3c917c0938ee6aad - 19920268ef08","slots L006 on_item b67b470f3637","stays f8f811bd0e32ca82 stored fc876194e37e","listings 40a5a6b24afbdf24 - 6386973390ce"],"stay":"f8f811bd0e32ca82","title":"Dynamo lamp 6","turn":1}', '4220cbcc93c8901996b16c442845468bce49c117cd8a73c396924dbc3ca28ae6');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items d17d7a2c06848d9c - 0ec60c6f6639","slots L007 on_item 767524982af4","stays 6a37282c5a2326a9 stored 2d458df64e77","listings ca09b6aaf16c0f1d - 34c0e585ed8c"],"stay":"6a37282c5a2326a9","title":"Dynamo lamp 7","turn":1}', '0530c39915802ba75c021945fa70a2220a10ccb5a96fd5d209a5458496dad683');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 8e66de295590c3dd - 8bf3a18f2636","slots L008 on_item b3b2d23a98b7","stays c801c69251720caa stored 71757f92b2be","listings f921fb80ad472397 - 97e091dc7ef5"],"stay":"c801c69251720caa","title":"Dynamo lamp 8","turn":1}', '0be622d9f4a2d595131b2ff086e44ab603b6bd6cadaab456e1a1aa9f57f755b8');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items d9f7e5b55f2a9b0a - 44bb8448846e","slots L009 on_item c3139144a3f8","stays 46aa2955e9bf19fe stored 9d616dc7d9e8","listings e5e52c864aec8c88 - b6135f97ba8b"],"stay":"46aa2955e9bf19fe","title":"Dynamo lamp 9","turn":1}', '91ddb44c2e8ad6e676d0c98982d455c15029d2b06b3f95707fab53915bb72347');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items bb674bb7572f37df - b72cd86c1bbf","slots L010 on_item f8c13ae8aec4","stays 653b2637f30d3af8 stored 8a296e9c5ff0","listings d51e57c70d8d5596 - 371c091b1d68"],"stay":"653b2637f30d3af8","title":"Dynamo lamp 10","turn":1}', '6626b557df00cdea8f322dcbd6ba77c073b0ded0ea652be8676bf211f3be6945');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 6f2ebbfd803e9891 - c0d8a55dfe2c","slots L011 on_item 9d01c75c0f89","stays 79bb0f7f03a020d7 stored 81aa9e722c13","listings 13dce872cb0d3679 - 81f1f58cc5fe"],"stay":"79bb0f7f03a020d7","title":"Dynamo lamp 11","turn":1}', 'af2ef225442d0627433150a597bb201fe5b9d933c90d51d9cdd0bd668ea816db');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items cf34e38f621c3422 - 80942e6a3b81","slots L012 on_item 5373b19b101e","stays 211a83ffb65b3b19 stored 07a200d7b1ab","listings 8878ec56da86aff1 - 620e7a1fa318"],"stay":"211a83ffb65b3b19","title":"Dynamo lamp 12","turn":1}', '49b1378fc9780ccbdc80604a4417671198f24dae9576568f648d706700c3801b');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 6b0617e8234b2146 - 24c1a471e3a5","slots W001 on_item 17dd342c2f6a","stays 8a5e5603a2f6e073 stored 7e1581dc2a78","listings e629b917d7a7a532 - b8e773fe7041"],"stay":"8a5e5603a2f6e073","title":"Front wheel 1","turn":1}', '9014ee53eec92ed809463305677a5932c7f72ec260462a53525f9e380274764e');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 7a64f2c883494874 - 7e36105f461b","slots W002 on_item 7ebfb8df41ca","stays 4442a9307436316e stored 4e567222a111","listings 9776e1f2b431a7e3 - 262c3b694aa8"],"stay":"4442a9307436316e","title":"Front wheel 2","turn":1}', '02137b1e77cba2c53317e36908c33db4aca4dc8cc4735e91e458c2c67ac95be5');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items d01cacf9be0c6f0d - ff17720a0134","slots W003 on_item f84a2674e962","stays 1f2fcca74b1b49e1 stored f2023e62efea","listings 5586b8ba0f5e746b - b400d8d52f48"],"stay":"1f2fcca74b1b49e1","title":"Front wheel 3","turn":1}', '13c2aef895c8603f3860aeb28fce1adc41c5364cdeaf6a1fd13a98cc2045e0ed');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items a90805b41989bdd5 - 6bb74f188997","slots W004 on_item f45ed94fd55a","stays 3b653ef3e49cffa2 stored 07b29ef63a02","listings e5ea3135dd009541 - 44c489466b9d"],"stay":"3b653ef3e49cffa2","title":"Front wheel 4","turn":1}', '3b3a975f2757aa01caf040d8ad7b320db943e940cff6b04bee438534c47814fa');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items d18f0ea6be620489 - 31a5d33e8e21","slots W005 on_item a1fdfb2c692e","stays 613ebc28a77c6ff9 stored 7ae45057c554","listings 11d0546686e296fb - 3ef86e492fdb"],"stay":"613ebc28a77c6ff9","title":"Front wheel 5","turn":1}', 'aebf2688d62fa34206c7e84e5e75bb4d4aca09c36b73f53f315a810715c667a9');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items b419944a00256e18 - 638442e56a52","slots W006 on_item 3dd6244f0bee","stays 0ca4643503a02e94 stored 3ab6e67aaf2e","listings a58fc500b80d15bf - 0010311b4340"],"stay":"0ca4643503a02e94","title":"Front wheel 6","turn":1}', 'f0368ee153b7baa39a33a2c81b0455ce4c334ec8dd61a5d00253f500f855c818');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 95b0df2dd5032bae - b6efb630931a","slots W007 on_item d52463b699e2","stays b3e8bb20f848f126 stored 3552f319cc27","listings bbb37babbea79093 - bca57a22c6d2"],"stay":"b3e8bb20f848f126","title":"Front wheel 7","turn":1}', 'aa554ad050bdd1a051cc785c8234dc4f47816940d6a966687ae2fbad6d6c63bc');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 94a4af6633530647 - 3ede4815adf6","slots W008 on_item 2e167460fb16","stays 6dd0c73ed8f9c0f9 stored e7139c59e1fc","listings 52e33a7c18b84238 - f39a459559ef"],"stay":"6dd0c73ed8f9c0f9","title":"Front wheel 8","turn":1}', 'eba910a3804d7097a9dab453eb5f4d333f791a0e82ff4e78327ef8ba97c42776');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 7004fd671e828a41 - 03e9a6402415","slots W009 on_item 597fc2f4b56e","stays e9491dd4363b5cd0 stored f80b7583c247","listings da733cc157ce2283 - e88b46e042c7"],"stay":"e9491dd4363b5cd0","title":"Front wheel 9","turn":1}', '4e6e0f75511d05dbf8d1a01fde340213618a834a52c6b4a8ef81b40af65548ba');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 7d629aa811d92c9c - 0e8aa0782ddc","slots W010 on_item 7d0365c2d2de","stays cb2e4f3a0ffafdd3 stored 95e1a2e09115","listings 582fe36ec28386b1 - 3c6160a66690"],"stay":"cb2e4f3a0ffafdd3","title":"Front wheel 10","turn":1}', '64961c494407351b3748742de3862e59178c909ed2843fd2def642b34217649b');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items d64a3cf12ec3ef0a - 1b890ed9831b","slots W011 on_item d3a26b640d71","stays b87b0132be78b9f7 stored 9f962f76deba","listings dfc14a09fc22fa6e - 5a638db995c7"],"stay":"b87b0132be78b9f7","title":"Front wheel 11","turn":1}', '308d079f96e395f412a2fbb6df4eb9ef4e6df111c59623b2d46cb08249708372');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 86269be3f8275bc9 - 4f11a7778f1f","slots W012 on_item ac10bfb906d6","stays e688f77026ca418d stored 2c6f2486e517","listings e15396edc4e2d7dd - 404be7a63029"],"stay":"e688f77026ca418d","title":"Front wheel 12","turn":1}', '5e9c2c528635e80e0439c1344866e3010e49598e096b5b57c1d8cb9dbb920aa4');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 03c0f02a660942a9 - 664ba26f9551","slots D013 on_item 69b6f1c92d5d","stays 0b2fe714dfb4b840 stored 34193b87b23f"],"stay":"0b2fe714dfb4b840","title":"Brass bell","turn":1}', 'd6f7812d28d401297410bc74f101355bdda48b375eb1c133972e649f33a28187');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 68404222c4550847 - 5aad49df85f9"],"packing":"Coil the cable","stay":"8d26bfe5ec2fe24e"}', '27b1eb3558d7f441b268455e734297e76fc589de1cc9becf26a7c6dbbd5e7aa8');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 26b87cffc049e82e withdrawn 2a1f224f3740","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"26b87cffc049e82e"}', '84d6013329c3c06d19cae1fa20090c5dee9b8ba15aca4f9e9736342b999c21fc');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays 3b653ef3e49cffa2 withdrawn b518ec7dc893","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"3b653ef3e49cffa2"}', '1736b1a3e6f94cb3326c969b63d98908b07eb94d27f892118365c5beb14d2ad1');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"f0c5a6f442605c79","now":["stays 40e9fbdfd7851291 moved 160efea1199f","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays f0c5a6f442605c79 stored e6185e37b26d"],"stay":"40e9fbdfd7851291","to":"S013"}', '7c5a73e84f1af2232d9b6cdc1e6efcb47ffa900434883b23b6007ebc2f6590ae');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 5147e56cca91e34d - b4b902187ed4"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"e89f05f62b1dfaad"}', '34acb52a792213214cc8fdc39f624d5742e80dbb2ed75d9e3d8993549c72cdc4');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 321b4a1b1c605f76 - e2fd720dc997"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"1d91791ff0753319"}', '3c20d920a284e32846a1d854f75215af3c687309667d6a40c56f201c93f91cbb');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items 955618bf67d33314 - 76573483d8f7","slots L013 on_item 417a81be4bcb","stays 486062aa3620af52 stored 8e7c4906bec0","items f006d5d848376f5b - 4b0ea63dc839","slots L014 on_item 26405b275a18","stays 610949e477f96fb3 stored acaab22c2268"],"stay":"486062aa3620af52","title":"Carbide lamp","turn":1}', '5a8f0a2bf16195574da75785bd68da2a7d03ef16f9504455405e78faebdcee46');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"610949e477f96fb3","title":"Rear lamp","turn":1}', 'a3b321f69b3a1232982b2b8f69c219fcd51eb94b67f83735e3b7779aab88f10b');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'c7997a3dc261ad7d128347cc98a34c36bbc4af06faa8a8897b3e75b8200386ce');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings e95c80aedf000337 - 3b6633cb2e31"],"stay":"8a5e5603a2f6e073"}', 'e56ec6f12f644aabdd6776db5a55ab9dab6fab912ff8e9935491c8f02c9f8967');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings 05133bb200999618 - 6b87eba002e9"],"stay":"8a5e5603a2f6e073"}', '4c864b9f8cde57cb4bdcdb142d3cbf21261dfff186b92776b093e9531efd79e1');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings 2bccf484a1a8dbdf - 8447dca2996d"],"stay":"82805c5507b8cef5"}', 'bb086449d8c4b0aa5d468b599e43d33a0c02e00672bd6b8a0b446914e137583b');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings 26af57d0850792e6 - 707eb1e906b3"],"stay":"82805c5507b8cef5"}', '7174fa1f9223403abd8b7d44091c0bd3c751a2992b0626d8d79dc385d6595547');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings dd0a2b62c64573d9 - 12300fdf8aa8"],"stay":"3fb9a83180eecc29"}', '09e9757a7c2c512df658b581d11858277cc690324a8647b4404f85992e2c92ea');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings 2f0671d12c8f2f1c - 01c029deb603"],"stay":"3fb9a83180eecc29"}', '47aa96054cdd49a4dcfcc4f192a428b287015274572a644b2a64bebdd9d7db71');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings bef67a97383901ca - 09806dbbd5cb"],"stay":"e688f77026ca418d"}', '382b3d8fed3102742be1d7cb7af108bfb66225b607b7fc538bc9f89e1072a291');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings d0a45a7382773dc8 - cd29511e9e55"],"stay":"e688f77026ca418d"}', '5b8cf79b7948da7935544fe94d9acd86a3dfcf858305d54c5d8dcf1f1153484a');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings cdf3b41cd812d342 - 959667f7ad12"],"stay":"46aa2955e9bf19fe"}', '060b063fd8a510a4bbcf3fdd5699a8666e14ca22d10a60361f8e796c0c4b6f5b');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings ee28c25c108e8a14 - c165e5383ad5","listings 57926c7dbf7aeb5b - 5b9b8a829a73"],"stay":"e664cec03a179d57"}', 'a91b648a2c40bf75d13178f75cee30868a2a53529080de4e9aeecacd8f5d4ed0');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings cdf3b41cd812d342 - aec6c6d94321"],"stay":"46aa2955e9bf19fe"}', '12c4a45f76a01f37c1229a051e7278df327859237ee53bddd7eb70ba37fe5490');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 86269be3f8275bc9 - 1b7878cd6e54"],"stay":"e688f77026ca418d","until":"2026-12-24T23:59:59+00:00"}', '93a4a2941fc3e47d07c92650de42b0858096c9de631b21a4ebe75d0ced920fe7');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items d64a3cf12ec3ef0a - b8afe6849b34"],"stay":"b87b0132be78b9f7"}', '749a1c483133129261e05ac973ea34ea9e874d7049628ecd3c6c8a8a1449f06c');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","closing":{"dates":[],"weekdays":[]},"count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '2e190d834f974fc87d14fbc180c0cb73439a476cf0733413201666978f1b32c5');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '1c1c653bf603e5e7ea8dbc136f688e15c2fdad6888e9c30068e84b1c304f9485');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'da71feb69b80fea262ac9e9cfd06f7dc1d56421001a11303f11854e9790555ba');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '2d0cdf0525e1e27bb46219f471a81628754c57e09734c5a46a2b3f124fd5166f');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '69a25e18104d40785331e0bb6e0f8fdef90736863b01dba7b2da29823015eb1a');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0ad0950e3a10d298","reference":"W001-01E","stay":"8a5e5603a2f6e073"},{"hold":null,"line":"6802ef49a2cae35f","reference":"W002-016","stay":"4442a9307436316e"}],"now":["orders 4035b7b0557561fe - 02752a2ca159","lines 0ad0950e3a10d298 waiting 5ccc936ec2ff","lines 6802ef49a2cae35f waiting b5fb7f469e1e"],"number":"B-01","order":"4035b7b0557561fe"}', '9b5a12de50545ccf39b59056823336beee0babd4e0814807df48ee144eaf0ab3');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d5281b84faa70603","reference":"S002-013","stay":"82805c5507b8cef5"},{"hold":null,"line":"e2d85b0029729cf0","reference":"S003-01W","stay":"dd626e7ab37dcd90"}],"now":["orders 213db0d6828aa5d8 - 59d9f7c10a93","lines d5281b84faa70603 waiting f7d530d93473","lines e2d85b0029729cf0 waiting 29fe45e075db"],"number":"B-03","order":"213db0d6828aa5d8"}', 'efcbfc5d5a3357b14e6a1e88dfb920b257a0db8d8ba37507aaa29e56d4fcf2c1');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"782c2edca0e668f3","reference":"S004-01O","stay":"e2dbbf32f105ac47"},{"hold":null,"line":"7985a7a221b49064","reference":"S005-01G","stay":"e2f732be1aae5d92"}],"now":["orders ac64bfd7e9b99813 - 0ac998154664","lines 782c2edca0e668f3 waiting 84e4cd9e56ce","lines 7985a7a221b49064 waiting 5cbfc48db310"],"number":"B-04","order":"ac64bfd7e9b99813"}', 'eef4006340a19180317a4db3769533dd000a8fc42559e1d7ffcc5369e6c1778d');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"510f30a0fe704f88","line":"4939c2c7a7645c16","listing":"fair-L002","now":["orders c6460796e0b2e524 - 05dd7888e2f4","lines 4939c2c7a7645c16 waiting 9b6aa701a2dd","listings ea23875d59d8ada7 - b19ad68f621e"]}', 'f444d87bac8dab04b825ea420b1c5ac102682dde331ebb668db03fd2adbeeb69');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4939c2c7a7645c16","reference":"L002-017","stay":"09e5d76ecccc6d68"}],"number":"B-05","order":"c6460796e0b2e524"}', 'bce0419f62ab663a8c641a2de25bf8dcb1c0c9d49397af10e4c84c22c97b0ff2');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"7d6b31bada60990e","line":"66444fd3d4de03b8","listing":"fair-L003","now":["orders 93a8f78130ba8b45 - 2ad98c08f0d1","lines 66444fd3d4de03b8 waiting f09be8a173cb","listings 1de728863adcbea1 - e70a73283237"]}', '29a58519797d044bb0a9eafb10d888d16b6a5af207c47ec918202286a4cda5c4');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"66444fd3d4de03b8","reference":"L003-010","stay":"37541721f4904fba"}],"number":"B-06","order":"93a8f78130ba8b45"}', '76a2f47a2daa470b65fb4bf64d9fed2a707ae290e32cb54ac131280c010e6402');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c9631f0c085beb97","reference":"L004-01S","stay":"133c144db9933096"}],"now":["orders 260efe685f6dffba - 4f4bedfab742","lines c9631f0c085beb97 waiting 5e4a78c38940"],"number":"B-07","order":"260efe685f6dffba"}', '3637fc1d6bcdb2966553be1631044b01ecb2fb8707d4248bb64336cbfe6741a4');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"24e440f6342c7e13","reference":"L005-01K","stay":"c223e459cfc1e2c6"}],"now":["orders a25526a9ef3359ee - 6f24686d273b","lines 24e440f6342c7e13 waiting 012cb89a010b"],"number":"B-08","order":"a25526a9ef3359ee"}', 'dbf8ecd1c618ccbd8a643da45c63eeeee5d8299bb3f7334ee0f6fa76a83fb85c');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e474891a42d698b3","reference":"L006-01C","stay":"f8f811bd0e32ca82"},{"hold":null,"line":"1fe396da3ee118b6","reference":"L011-010","stay":"79bb0f7f03a020d7"}],"now":["orders c7f39d8d7af4507d - 0429db3bf7b9","lines e474891a42d698b3 waiting 053bc2e707ee","lines 1fe396da3ee118b6 waiting 8548fdd96d9c"],"number":"B-09","order":"c7f39d8d7af4507d"}', 'e7e116ff906abd0866a303780e474a3049d45d4c53df7833fbf9a3a83707a021');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"285e527128569dde","reference":"S006-018","stay":"73e7eda45bd515b3"}],"now":["orders a6d85dccaa2df52f - 4b4e6ce72028","lines 285e527128569dde waiting dfd3c7bf39f9"],"number":"B-13","order":"a6d85dccaa2df52f"}', 'd8d461dc5aba0472511992b35b545f1d08c80234058cc47b78c3133e1f19ef32');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"daacb9dbfa14973b","reference":"L007-014","stay":"6a37282c5a2326a9"}],"now":["orders c754b5972a530752 - abb3a6fc0c01","lines daacb9dbfa14973b waiting 4a33bd7c7c76"],"number":"B-17","order":"c754b5972a530752"}', '2e29823a37790dc19adca62ce51783f675e5bb92ee6a454cd8bb9d41845662fa');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"59e20986d32a90f6","reference":"D009-01B","stay":"3fb9a83180eecc29"}],"now":["orders 957894658c714fcb - 93b7962a405d","lines 59e20986d32a90f6 waiting 8eab124676c5"],"number":"B-18","order":"957894658c714fcb"}', '976aca9ad4ae17e7fa7205902d8de90596e668e0075be4737afd8279cf3a0b86');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"38f65725cb262219","reference":"W006-013","stay":"0ca4643503a02e94"}],"now":["orders 1c2b9809bc226767 - f39a26124c9a","lines 38f65725cb262219 waiting da36987ba512"],"number":"B-21","order":"1c2b9809bc226767"}', 'aa3981d432a57240110ccd2e01ba34100a2cfad85f404f39d70cddc73df9759c');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"582f8f071d98f614","reference":"S007-01Z","stay":"dc55f72f9b8bbc61"}],"now":["orders 8957e3cad7b2f137 - dc290f15b4e6","lines 582f8f071d98f614 waiting 81a4c479a5a3"],"number":"B-22","order":"8957e3cad7b2f137"}', '1773919f2a372cd7397cd0fdcebd7c5130f1d73ef6c19932dd0693a807d8be30');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b2efc73db0cf14d2","reference":"W007-01W","stay":"b3e8bb20f848f126"},{"hold":null,"line":"ea1d475b6dfb5451","reference":"W008-01O","stay":"6dd0c73ed8f9c0f9"}],"now":["orders e3b42e5386ba34e0 - 5fd64e78aa08","lines b2efc73db0cf14d2 waiting 998313b40d19","lines ea1d475b6dfb5451 waiting 476c518c447d"],"number":"B-23","order":"e3b42e5386ba34e0"}', '95df9dd2cee13a4e51d40cdb1c828c5b654f218ac675f84cb25acc2b9bf85236');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7baa85699ee43175","reference":"D008-01J","stay":"ee3b7be406039cd4"}],"now":["orders d47e7a4d15edec9e - 668ea1b00295","lines 7baa85699ee43175 waiting e38e5bdf6de5"],"number":"B-26","order":"d47e7a4d15edec9e"}', '1fca330761711d3b1954594f2732485b1220ba5f30040eff64f4bb5bece52684');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a48722bd16eb8949","reference":"D003-01U","stay":"42398543ba9b34cc"}],"now":["orders d38423bc04962d6e - fc1ec8062a30","lines a48722bd16eb8949 waiting 87cd184319f3"],"number":"B-30","order":"d38423bc04962d6e"}', '73528e17dbbc77db61b4463d5a9bf3f5e13e9588f26bcc8fc056d3aa8087d0bb');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"120ed12bbf373f78","reference":"D005-01E","stay":"c02d586f9b9de815"},{"hold":"unknown_code","line":"71d670eeca0a2e77","reference":"Z999","stay":null}],"now":["orders 071adbfca60f1fbb - 45958d56e552","lines 120ed12bbf373f78 waiting cea9bbfc966e","lines 71d670eeca0a2e77 unbound ddeb81b1032a"],"number":"B-31","order":"071adbfca60f1fbb"}', '1cf982e50fe55e12a1d5028db2a9c3f3afa197e552168e2d3e929b3aa54407a0');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cf9597964b7e5d16","reference":"D006-016","stay":"9cee7555a4a127fa"},{"hold":null,"line":"36946fde788f1158","reference":"D007-01R","stay":"2cdf395acdf7c243"}],"now":["orders ce4f3523d79ce707 - 6aab93d1893b","lines cf9597964b7e5d16 waiting 66c8f5e54f90","lines 36946fde788f1158 waiting 2afa2f186130"],"number":"B-32","order":"ce4f3523d79ce707"}', '68bc172c5cc983971cd63ced18e32a19ed7dc4a3eb49772cb1ea8fc555c8cd91');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"36946fde788f1158","reference":"D007-01R","stay":"2cdf395acdf7c243"}],"now":["lines 36946fde788f1158 waiting 997a81251447"],"number":"B-32","order":"ce4f3523d79ce707"}', '7836254e819cb5f3c501e2b08fb705a38d295da5ccd18b28ba97748235c2cfd1');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"9c1a0761cbf61fd0","reference":"lamp","stay":null}],"now":["orders 3de0d2563392b6d4 - 36e177bdeb40","lines 9c1a0761cbf61fd0 unbound 5daf4c6b8082"],"number":"B-33","order":"3de0d2563392b6d4"}', '123652222f640db12caa2f335762b441ff782122c25208f6434e6dccbcce09d9');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"60858680f767357f","reference":"D006-016","stay":null}],"now":["orders 86360b88aed0a502 - 21f02b143ad8","lines 60858680f767357f unbound 192877799998"],"number":"B-34","order":"86360b88aed0a502"}', '5c17ea808612579444de62994844ace002cf3bbddd82d9a780163b5f950c0c9e');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"938a5f6b8d4b1896","reference":"W004-01J","stay":null}],"now":["orders 76a4d115e868c390 - 0ee754200af9","lines 938a5f6b8d4b1896 unbound d7337ce275e1"],"number":"B-35","order":"76a4d115e868c390"}', 'a2d24cf3a19dc14cadcc59134144d950e36f8a7ad27710664717684e46f8490c');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"8bc944ce7ddfdd5b","reference":"L015","stay":null}],"now":["orders 4805e48a28f8d12b - 2728823be6ae","lines 8bc944ce7ddfdd5b unbound 400fbf6a6b49"],"number":"B-36","order":"4805e48a28f8d12b"}', 'c12f7cb351506e8ab3420be6ce6854aec8c012933f00c67fad940afc83c5c0d3');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"c0018bb65837dc5a","reference":"W005-01B","stay":"613ebc28a77c6ff9"}],"now":["orders 78c2c8501d4b5c32 - 8a33a0947f2d","lines c0018bb65837dc5a waiting 768b4713ac5f"],"number":"B-37","order":"78c2c8501d4b5c32"}', '9bf95c3ef758d679961d6f95ac242a0b13172a821f9d4c083eb627b6dd3d40f4');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"c0018bb65837dc5a","now":["lines c0018bb65837dc5a waiting de7e61c4c3a6"],"stay":"613ebc28a77c6ff9"}', '677727b62ec5cc021f524a7ab94e48001b12652f2dbafa525d5008ef6b01bb40');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"57b0e8bc0c0c19d1","doubt_kind":"not_this","item":"d17d7a2c06848d9c","now":["doubts 57b0e8bc0c0c19d1 - d4abd69050c3","lines daacb9dbfa14973b waiting ba22fe293caa"],"words":"Another lamp, by the photo"}', '82d031678ab9fc177ac310816fee86c0ec49aa672e9728f5b3aa0c10d4d871af');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"daacb9dbfa14973b","why":"Another lamp, by the photo"}', 'cccac7a7e435b6e93c22a360158619c9333c69a6c9ad20725dc3c07bde681725');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["24e440f6342c7e13"],"now":["lines 24e440f6342c7e13 cancelled 756d41d271c4"],"number":"B-08","order":"a25526a9ef3359ee"}', '0700d4b6aa14ad66158550d6e3746b67a7704270b52f0768c920e89407ce5d66');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["38f65725cb262219"],"now":["lines 38f65725cb262219 cancelled fd2fca62261f"],"number":"B-21","order":"1c2b9809bc226767"}', '3de6af6941534534614d4d173ba5028d8626428ca35093764e5b453bcf7d0736');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"38f65725cb262219","now":["lines 38f65725cb262219 waiting da36987ba512"],"stay":"0ca4643503a02e94"}', '2d2b7df5898e93f7bf66bbf94f66cfa96054ae4c9a8e4f2e26e9abb58ec54f4e');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"3b30adf8734dcda9","now":["stays ee3b7be406039cd4 moved 26326c9a466e","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 3b30adf8734dcda9 stored 5c2a959cb0c3","lines 7baa85699ee43175 waiting bf7de0be20d0"],"stay":"ee3b7be406039cd4","to":"D020"}', '34a260a3bc57d5a0a6ed5eece53f616f31fd50eb965b5c6613f58fb70b49209c');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"fc802b9dd254cca7","reference":"L012-01S","stay":"211a83ffb65b3b19"}],"note":"Rings at noon","now":["orders 1ff33a195a12bb45 - f95ad8d6f7e3","lines fc802b9dd254cca7 waiting db7f9dfe5e71"],"number":"Sale L012-01S","order":"1ff33a195a12bb45"}', '7dc2955477f1a67173d451473193c75bd8a6acc06fe2d6897716d642ef3ac7a2');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:53:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', '6740488c082c35c7eacc1bd2030e278fd61ebe8de514e0f1201e0f535f887800');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"1a91b6375390b07a","reference":"S012-01O","stay":"b6b16a4722068a7e"}],"now":["orders 9c15fbdb3d47b1e1 - 72a0b124029c","lines 1a91b6375390b07a waiting 856a6e642c9f","orders aa5ee264cdce3b61 - f3c40474a22a","lines 223eef9887d6e7d0 unbound 801977cb3bd0"],"number":"F-1","order":"9c15fbdb3d47b1e1"}', '9755b9e9c4a791d4aee84d8a13de39d18110bcf7ed010788d5cfdfdd892bdae4');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"223eef9887d6e7d0","reference":"Q7","stay":null}],"now":["orders 9dd0b05cf5d9f01e - dc1b6c1309e1","lines cdbc07a40d440ba8 unbound ccc0d7878271"],"number":"F-2","order":"aa5ee264cdce3b61"}', '11d2a74a64a06616b24ca2e94ea307cdf79ab0defd52b07af3456f44a5def500');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"cdbc07a40d440ba8","reference":"Q1","stay":null}],"now":["lines cdbc07a40d440ba8 unbound 1acf0f24cffa"],"number":"F-3","order":"9dd0b05cf5d9f01e"}', '2276ecb00c2805cef153b34ca0f08d1bc707d26f5dd7c76d7ddc1cf5e8bef366');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:59:00.000000+00:00', 'held', 'boss', '{"line":"cdbc07a40d440ba8","now":["orders 9dd0b05cf5d9f01e - 69e9badd722e"],"why":"Its channel says that it is not paid or not cleared yet."}', 'a7738e9104a3a08939b0d19384e069a1c2da3ee7dad4c2e1eed42c0d4356111d');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:59:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"d9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0","loaded":3}', 'f4fa649a8eaf31e12668bb7679bae0e379e6385f366ac0b7d2be7b20f1e65606');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:04:00.000000+00:00', 'order cleared', 'boss', '{"lines":["cdbc07a40d440ba8"],"now":["lines cdbc07a40d440ba8 unbound ccc0d7878271","orders 9dd0b05cf5d9f01e - 9e4a7c8dbb1e","changed_orders 98c32d06ec228221 - 9d42c1c49e02"],"number":"F-3","order":"9dd0b05cf5d9f01e"}', 'ae29934b1f94bdd40aa55daccc5f92b4f7c4362faa337fc9010b02a747c2eb9f');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514","loaded":0,"now":["lines 223eef9887d6e7d0 unbound 7bc51e833b43"]}', '10381f708bbf7a7acecdb08b419101e6876d92a72efd082368b9681fd686cbd3');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:04:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"223eef9887d6e7d0","reference":"Q7","stay":null}],"now":["changed_orders 7b339404d63f4b6a - 3d18f9a74f50"],"number":"F-2","order":"aa5ee264cdce3b61"}', 'ab8ca2bdca20491fa3c1fb983d088890b639d1a53541450085e83fc423584bc6');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["0ad0950e3a10d298","6802ef49a2cae35f","d5281b84faa70603","e2d85b0029729cf0","782c2edca0e668f3","7985a7a221b49064","e474891a42d698b3","1fe396da3ee118b6","285e527128569dde","582f8f071d98f614","b2efc73db0cf14d2","ea1d475b6dfb5451"],"now":["rounds 56b254ffaeba4127 open efe9e5915798","lines d5281b84faa70603 waiting 238608741419","lines e2d85b0029729cf0 waiting 0bcf7312d720","lines 782c2edca0e668f3 waiting 01606b7cc04a","lines 7985a7a221b49064 waiting 3e2597ed7d87","lines 285e527128569dde waiting 5fd446f11e7e","lines 582f8f071d98f614 waiting 7a47da3301c8","lines 0ad0950e3a10d298 waiting 31ad8342fa82","lines 6802ef49a2cae35f waiting 3912b9029af1","lines b2efc73db0cf14d2 waiting 65a1944b2127","lines ea1d475b6dfb5451 waiting 314e3bb36c45","lines e474891a42d698b3 waiting 570cc2911c84","lines 1fe396da3ee118b6 waiting 470518fa77dc"],"round":"56b254ffaeba4127"}', '3234c8ecbf4a6b99c615dcf459a0f4eea273e4ec3acd42ac8bb3fccc6ef0df5e');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item cd2728658608","scans free-D004 - 8a98c28ba7cc"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '3b87bd06001a8c1b6f2b2eae172e35dc05ee9b750b01ce74025819b9e7c568de');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"0ad0950e3a10d298","line_state":"picked","now":["slots W001 on_item 6b86938fb073","lines 0ad0950e3a10d298 picked 8dc03b2685a0","scans pick-W001 - df058cc40772"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '76784ab0dfa8cd89da003ec175ad147e53c30e982c757078353b48b6e503fc76');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"6802ef49a2cae35f","line_state":"picked","now":["slots W002 on_item e99815ba6642","lines 6802ef49a2cae35f picked 5dcc45ef8a7c","scans pick-W002 - 4544850c2b1c"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '0adb3699da389ba802ccbef7c8cc960c09a0889e2bf8a139d6e2469c68b79264');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"d5281b84faa70603","line_state":"picked","now":["slots S002 on_item 31d8ea5bfc9a","lines d5281b84faa70603 picked b7f6d02a0789","scans pick-S002 - 4885f8ac163e"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'daa2280e5957b809ba98aa50995217d7744c0ecd6b474443c3da7d01b87b1914');
INSERT INTO public.ledger VALUES (195, '2026-03-02T16:59:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns b2d647d71092c645 expected 11d45b5f7194"],"order":null,"return":"b2d647d71092c645","until":null,"why":"Left at the door"}', '26f0b713d21602d80fc1297feb8224cf1fbb483c6880237e60455490e5646fca');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"e2d85b0029729cf0","line_state":"picked","now":["slots S003 on_item fe9aabb16253","lines e2d85b0029729cf0 picked 9115fb3243cc","scans pick-S003 - 45371acc6473"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'e02f2ee93d4538c71c00b124717dff10c2e6a794144060d30481be47fdbc1178');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"782c2edca0e668f3","line_state":"picked","now":["slots S004 on_item f201338d329d","lines 782c2edca0e668f3 picked 10e4768a8808","scans pick-S004 - 8dd5f63ca3ef"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '183cc989a389e9de8a5c4a3809678c39f8e613cd2f2d3091bbf278341e078602');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"7985a7a221b49064","line_state":"picked","now":["slots S005 on_item a6ffbb702e97","lines 7985a7a221b49064 picked 9d24faceecf6","scans pick-S005 - 52a9f512a13f"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'cf0ff3bc63a51d7c2064b3bbe500a199544707d668a98b74026535862a7963c0');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"e474891a42d698b3","line_state":"picked","now":["slots L006 on_item e7695cc47137","lines e474891a42d698b3 picked 4cebd64c55a2","scans pick-L006 - f00703e78a1d"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '5d68395e4373cfebcb433f5f1779fbd5e76e35c22d1df4bb22e89640869bdec8');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"1fe396da3ee118b6","line_state":"picked","now":["slots L011 on_item c1eba2b35e72","lines 1fe396da3ee118b6 picked e366f6f0de75","scans pick-L011 - 25424d4909a4"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '27aa5e055ac1a514c78889958327600369acebcff66c4d7482fdcdef8d626859');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"285e527128569dde","line_state":"picked","now":["slots S006 on_item a9768408729e","lines 285e527128569dde picked 450b938c011c","scans pick-S006 - 3294f6210836"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '0f6b390b4878b8df2f3f3c4b87808099c794055d4b7e1ced19b428399da260d1');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"582f8f071d98f614","line_state":"picked","now":["slots S007 on_item 9a4a504ddef8","lines 582f8f071d98f614 picked 128dd19afd3e","scans pick-S007 - dafae5300872"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '99101b78d9ad23ab85a72a4d9a2faaef19c47b1e7ee7912678c73cc93b737d62');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"b2efc73db0cf14d2","line_state":"picked","now":["slots W007 on_item d02c3dc323dc","lines b2efc73db0cf14d2 picked 087d646d7403","scans pick-W007 - 26e505cbbc82"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'c8961d454a0a1237f4b9f681de8e70d3dac480bc994f4d027790c457616123d1');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"ea1d475b6dfb5451","line_state":"picked","now":["slots W008 on_item 1184d781d177","lines ea1d475b6dfb5451 picked 810d05e901a7","scans pick-W008 - 61fbc3940b7b"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"56b254ffaeba4127","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '58ca9fb9c3279844ae72b7c07f8746744fe50499d629f8f4d142aa03c53694b0');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"ea1d475b6dfb5451","line_state":"waiting","now":["lines ea1d475b6dfb5451 waiting 314e3bb36c45","slots W008 on_item b8fdf37a91ac"]}', '53b22034914b97eaaee65fd47750f5800c4a75bcd6c304bc4f178d903dc41af5');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 56b254ffaeba4127 closed 7ec5fe6ce6c7"],"round":"56b254ffaeba4127"}', '56ffe65ee83c5bdfe32f38e065bad7e0f8dcd4da2bdae8cc16ad450103f2bc8a');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 859bd5bb491daaec open 2852b80ebeff","orders 4035b7b0557561fe - bb12c92e0ca2"],"orders":["4035b7b0557561fe"],"parcel":"859bd5bb491daaec","table":"main"}', '1f8faeeab11ef5e15a90ff823289939003dde4a80396465d4cded81de507cd76');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"d5281b84faa70603","line_state":"picked","now":["slots S002 on_item e51f182ab61d","scans other-S002 - 1f086905f582"],"order_number":"B-03","parcel":"859bd5bb491daaec","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '9a290cfb6bef1ad2062b02e9b960ffe8575511ad01b4ee968e32de958d0a61c6');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"0ad0950e3a10d298","line_state":"packed","now":["lines 0ad0950e3a10d298 packed a207c6e63f08","slots W001 on_item aebf3cd7335d","scans pack-W001 - 930aef3d9719"],"order_number":"B-01","parcel":"859bd5bb491daaec","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '2f1c8e8bc5c42557b50ae503f6eda28fef6847ba3683192902ba40a9e4601779');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 6802ef49a2cae35f released b6402764e22a","slots W002 due 0fb39d5bd0e4","lines 0ad0950e3a10d298 released 39fa82c7cf37","stays 8a5e5603a2f6e073 shipped 6df8a2781243","slots W001 due 4c78b26ec78e","stays 4442a9307436316e shipped 7fbaa9197fea","parcels 859bd5bb491daaec closed 5bd4393a64e2","orders 4035b7b0557561fe - 02752a2ca159","scans pack-W002 - 6bdab4ef564b"],"orders":["4035b7b0557561fe"],"parcel":"859bd5bb491daaec","released":["W001","W002"]}', 'e8823332bbb2dca0b25769e8bd6d400cae46909cc7505a6ee1f43d545c621400');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"6802ef49a2cae35f","line_state":"released","order_number":"B-01","parcel":"859bd5bb491daaec","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '9ed90a002daf2ebd9f940391a1a9362b04afcb5afd1b63ca225a0fcd96577501');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"0ad0950e3a10d298","line_state":"released","now":["slots W001 tray ccfbc2b4cd76","scans back-W001 - 7c65ca149c3c"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '76579f0d22488e148ec37cb23ea05c2cb7d33a09fb0ad6f3b8fbf5ab63eb50d7');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 373882bac159c8bf - 9140b6efe049","slots W001 on_item 4bac4e5a272f","stays 2f051c453bc266bb stored 5b3213a9a563"],"stay":"2f051c453bc266bb","title":"Rear wheel","turn":2}', 'a8a9bb3b5fea6d3fbc0f56e94d79598469e794de6953ba74185dce4d703fb12a');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 125614303229"],"parcel":"859bd5bb491daaec"}', '8df1450368ef7943ca5d90321eb4063890026a049ac76e2ca84eb5b8e66f4dcd');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 1a20cb5ab9eece11 open 4187a35a6073","orders e3b42e5386ba34e0 - f0c985089ec2"],"orders":["e3b42e5386ba34e0"],"parcel":"1a20cb5ab9eece11","table":"main"}', 'db50dacc329a0dcfb6f83a52085b5ee5d311f852edfee3fc3b058ffaa57337c5');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"b2efc73db0cf14d2","line_state":"packed","now":["lines b2efc73db0cf14d2 packed 07f670785447","slots W007 on_item 606c2f02758a","scans pack-W007 - 14ccf4978aa9"],"order_number":"B-23","parcel":"1a20cb5ab9eece11","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'b52d1b9f0f5bfa14209f0016e3abe5ee48894735e1f663431c41b8c4a65709d5');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines b2efc73db0cf14d2 released 484b7d71cfaf","stays b3e8bb20f848f126 shipped 788470291d1c","slots W007 due a1d967e433d4","parcels 1a20cb5ab9eece11 closed 4d7ee854b9f6","orders e3b42e5386ba34e0 - 5fd64e78aa08"],"orders":["e3b42e5386ba34e0"],"parcel":"1a20cb5ab9eece11","released":["W007"]}', 'f6886cc9e6ab4fd9236f3d2e09149ce4573826fbc3837405b6533d620ea4f26f');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines b2efc73db0cf14d2 packed dc7ca0294769","stays b3e8bb20f848f126 stored 3552f319cc27","slots W007 on_item a24c9707e631","parcels 1a20cb5ab9eece11 open 4a50e56265f3","orders e3b42e5386ba34e0 - f0c985089ec2"],"orders":["e3b42e5386ba34e0"],"parcel":"1a20cb5ab9eece11"}', 'e19dc4ae14827bb0099808a7d5e201d745588598884f827f76db6d30011454d2');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines b2efc73db0cf14d2 released 484b7d71cfaf","stays b3e8bb20f848f126 shipped e7bb27b1731c","slots W007 due a1d967e433d4","parcels 1a20cb5ab9eece11 closed 251189708321","orders e3b42e5386ba34e0 - 5fd64e78aa08"],"orders":["e3b42e5386ba34e0"],"parcel":"1a20cb5ab9eece11","released":["W007"]}', 'c9f05ea6b494e04d53ef49efdf228ee84b7da19664d75fd01629d831adad8aae');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'left for later', 'boss', '{"now":["parcels 1a20cb5ab9eece11 closed 67a9cbf8fd40"],"parcel":"1a20cb5ab9eece11"}', '6372d62ef426272c99abfb3098bd94fd6acc89503919db15681e522a81903bf2');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'hand-over', 'boss', '{"by":"label","carrier":"The red van","changed":true,"key":"gone","line":null,"now":["parcels 859bd5bb491daaec handed_over e1c070061d51","scans gone - 88763f155ced"],"order_number":"B-01","parcel":"859bd5bb491daaec","parcel_state":"handed_over","reason":null,"verdict":"accepted"}', 'b0401611994a8abcb3461b31d21695112e3d1275c869d583a5c53f8fbd101b34');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels ef1d2a0a052a864f open 57ab7c64534b","orders 8957e3cad7b2f137 - c91e2f84684a"],"orders":["8957e3cad7b2f137"],"parcel":"ef1d2a0a052a864f","table":"main"}', '39071257cd571099be15e7d1b84e8554e704c4a0a15a2cb4bcd8fb336fb0fd29');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels ef1d2a0a052a864f dropped a3c9fcc109c1","orders 8957e3cad7b2f137 - dc290f15b4e6"],"parcel":"ef1d2a0a052a864f"}', 'dc3359d35bda8f9959e7874e982b11701a59a50351ce4f14c5d67149093e32f3');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 788db8bd8ef5968c open 582d77e2968d","orders ac64bfd7e9b99813 - 02ce3b891dd8"],"orders":["ac64bfd7e9b99813"],"parcel":"788db8bd8ef5968c","table":"main"}', '4174a57160c019b9c7fca465338ac6aa8d40676652e37e7cca6738e380e45683');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"782c2edca0e668f3","line_state":"packed","now":["lines 782c2edca0e668f3 packed a2d9cb001914","slots S004 on_item 6b44a9914367","scans pack-S004 - 05b68a8fda9c"],"order_number":"B-04","parcel":"788db8bd8ef5968c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '8e54775e82e9a5f8dc68445338acc67af9e114c1445dd7a3ff6bf62e259fc47f');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 788db8bd8ef5968c aside 327a2e108da0"],"parcel":"788db8bd8ef5968c"}', '96ce9471e570d0c6989288922c209cff92528fd9bf03bf248463f194760cb2fc');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 33ab8bf38c165a84 open 41620cffd47f","orders c7f39d8d7af4507d - ec628ea3d5c5"],"orders":["c7f39d8d7af4507d"],"parcel":"33ab8bf38c165a84","table":"second"}', '8238b678257185b9c406a4956d693c746e084f1b7413ce2a39b574f1bbdb307c');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"e474891a42d698b3","line_state":"packed","now":["lines e474891a42d698b3 packed a24532e20006","slots L006 on_item 0bfa146ff8e6","scans pack-L006 - fc5d1be93c2c"],"order_number":"B-09","parcel":"33ab8bf38c165a84","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '72a52966fd8daa5c8e4aef6fb8d0948d9252373245fd24f6cc5407053f8522b8');
INSERT INTO public.ledger VALUES (172, '2026-03-02T15:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["e474891a42d698b3","1fe396da3ee118b6"],"now":["lines e474891a42d698b3 packed 307a74848e08","lines 1fe396da3ee118b6 cancelled 0482a23c464f"],"number":"B-09","order":"c7f39d8d7af4507d"}', '9237a50cc8c6f67202ea55622a1eaf21510441a7f9dffd58ca73da033c6b732b');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:02:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 647796ce61976647 open dbbe9ca67efa","orders 213db0d6828aa5d8 - 63ec0338a447"],"orders":["213db0d6828aa5d8"],"parcel":"647796ce61976647","table":"main"}', '05c488d3c9b3eac2cb4a24fb3b6fe46e1cc8cc6464c3d383bff8f4b76fed817b');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:05:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"d5281b84faa70603","line_state":"packed","now":["lines d5281b84faa70603 packed 62f47656c899","slots S002 on_item 78c5a047553f","scans pack-S002 - 174ae56148c4"],"order_number":"B-03","parcel":"647796ce61976647","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '29811a8b455baabe134b25859a03e324e6eefadc19e7ebc01bef93228c566764');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:08:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"285e527128569dde","reference":"S006-018","stay":"73e7eda45bd515b3"}],"now":["lines 285e527128569dde picked e255d9f3dcfd"],"number":"B-13","order":"a6d85dccaa2df52f"}', 'c5a14391b5499363ecf44dedbb213e6809ae0e359c76d04dcb428bba5883f855');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:11:00.000000+00:00', 'round opened', 'boss', '{"lines":["4939c2c7a7645c16","66444fd3d4de03b8","c9631f0c085beb97","7baa85699ee43175"],"now":["rounds ee058192c4470a08 open 3c8772d8e2d1","lines 7baa85699ee43175 waiting 077bc3d94fe2","lines 4939c2c7a7645c16 waiting c059b82abe34","lines 66444fd3d4de03b8 waiting b4b938c45815","lines c9631f0c085beb97 waiting aeb5b3ce0005"],"round":"ee058192c4470a08"}', 'a6d5d7c447b8cb1d14a44d46e774f92c8b74163fb3dd9616bf0ee131d10ee2a9');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"4939c2c7a7645c16","line_state":"picked","now":["slots L002 on_item a264de6d4815","lines 4939c2c7a7645c16 picked 8e1909a52096","scans pick-L002 - b63452ad6181"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee058192c4470a08","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'e808a03d3eaba46a19367a0cc78f14e3a5331ccd599f2905c31cacb980a8d7aa');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:17:00.000000+00:00', 'short', 'boss', '{"line":"c9631f0c085beb97","note":"Not in its bin","now":["lines c9631f0c085beb97 short b728ee222666","doubts 3ee567727f91b6f3 - 29eb6492ce47"]}', '7f75986f81fe5172e472fa2cf09e8d89dec6007676aab741f4563120a4f8afe9');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:17:00.000000+00:00', 'doubted', 'boss', '{"doubt":"3ee567727f91b6f3","doubt_kind":"missing","item":"6fb3034a4c4ccbbf","words":"Not in its bin"}', 'e621854dd2f86683f6ec09ae88e87a3e9da6978c3beb89cee6544c496f458bfe');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - d9eee057f02f"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"ee058192c4470a08","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '3b6f1dcb1683cf600dd404210eeef6a1f970634fe6fbdfc5c8f0991de5f46411');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 3c4545ee5af1"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"ee058192c4470a08","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '14b3848eb7ac443fb9bffecef579237a675b24bfcceb3cbaeb308620b0489718');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - f33061f3981d"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"ee058192c4470a08","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'd8bdcba32cb66f6b71ad4ac674e026272a806d124b5027c13431f4a799e26ab0');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:29:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '599d869b6a444fd7747ecbfe2423f945f53cde1396ae1c17758c383ffd339f5a');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:32:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', 'fcc6e03dd2533bbc9992f99d87a43b9bf4dea3587907d0f0016de94617c185cb');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cab299bd5117113e","reference":"D001-019","stay":"e89f05f62b1dfaad"},{"hold":"already_sold","line":"6485b879a4345352","reference":"W002-016","stay":null}],"now":["orders df986524e39995a6 - e8e90358b22a","lines cab299bd5117113e waiting 357c4b14fdbd","lines 6485b879a4345352 unbound 80a061f1a80a"],"number":"B-38","order":"df986524e39995a6"}', '0ad1dd42e55f66ab42d08a1c70a2efeac3e8374a271722717d5185f6ab894291');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:38:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"b9fe494934b5fa6e","reference":"W001","stay":null}],"now":["orders ff6af4d37ad769f9 - e1d5b7ae14de","lines b9fe494934b5fa6e unbound d6a0b2f86b95"],"number":"B-39","order":"ff6af4d37ad769f9"}', '54d7d5aa5bcabe774bb54ba20f764eff3c83151af32ac6eaa5a8b3b801929da8');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:41:00.000000+00:00', 'return expected', 'boss', '{"lines":["0ad0950e3a10d298"],"now":["returns b0be54bf27a7c379 expected eaed68cfa74f"],"order":"4035b7b0557561fe","return":"b0be54bf27a7c379","until":"2026-03-20T23:59:59+00:00","why":"Too large"}', '208968a43c44af109e06630850cc1a2e72aea6071901814d802ff7f3173480a2');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:44:00.000000+00:00', 'return expected', 'boss', '{"lines":["6802ef49a2cae35f"],"now":["returns da0cdca04a684c97 expected b1616b837385"],"order":"4035b7b0557561fe","return":"da0cdca04a684c97","until":null,"why":""}', 'f547bc0c74087f8fba6396ef3c09f616990461e998cc3116def712659d387899');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:47:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns da0cdca04a684c97 arrived 46480470fc37"],"return":"da0cdca04a684c97"}', 'f60aed83d824b4ed590762a075d77f8f0ad2405418549c8b7015a3a8003e3286');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:50:00.000000+00:00', 'returned', 'boss', '{"code":"D029","line":"6802ef49a2cae35f","now":["slots D029 on_item b9aacb6774bd","stays 297dea130ceabaff stored 1d8ee423b10c","lines 6802ef49a2cae35f returned cd8d8f78fb00","doubts 6309b6586f92d8a4 - 529807f120cb"],"stay":"297dea130ceabaff","turn":1}', 'cef8e1ce4125e641ea3a9603572942d1ff9e26ff4706a8c88a768b211d500a3c');
INSERT INTO public.ledger VALUES (191, '2026-03-02T16:50:00.000000+00:00', 'doubted', 'boss', '{"doubt":"6309b6586f92d8a4","doubt_kind":"not_this","item":"7a64f2c883494874","now":["returns da0cdca04a684c97 checked 7c30c1a81bdc"],"words":"Came back: to be checked."}', '34617f7fa4db527dd7fb47cbe1c62f1fb4954e69126236f52360f22c52f2989e');
INSERT INTO public.ledger VALUES (192, '2026-03-02T16:50:00.000000+00:00', 'return checked', 'boss', '{"condition":"check","line":"6802ef49a2cae35f","return":"da0cdca04a684c97"}', '915ad109f72042ff15a8221c74aca231619ed8d3cd2029b1a3cf3b7d2b3e3833');
INSERT INTO public.ledger VALUES (193, '2026-03-02T16:53:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns 9a0c75d009529cce expected 0284366d7a8a"],"order":null,"return":"9a0c75d009529cce","until":null,"why":""}', '152c796a930c8ab2c4a3091552a99070130442d16f52a0fa05777bebf89878fd');
INSERT INTO public.ledger VALUES (194, '2026-03-02T16:56:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 9a0c75d009529cce arrived 35149e45d2e5"],"return":"9a0c75d009529cce"}', 'd6f510453bfbec158b3c9f773ea5328120ffefca027a29cf41432ea7bfa7667e');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:02:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns b2d647d71092c645 arrived 9bb67ed27c62"],"return":"b2d647d71092c645"}', '946122ee9d1e5d77903f4bab5300d5e12533ea09b3f9e91e8e2bc9d379fef63e');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:05:00.000000+00:00', 'return given up', 'boss', '{"never_ours":"stays","now":["returns b2d647d71092c645 given_up fff7bcada473"],"return":"b2d647d71092c645"}', '8e2827ca983e918c365adfdd12bb986efc5889c32a6a70701a05c4ed154777de');
INSERT INTO public.ledger VALUES (198, '2026-03-02T17:08:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 09876468e46c763e open d33c1b42b018"],"stocktake":"09876468e46c763e"}', '92a06cde5fced7dad99f0a1de0179907d99de02407ff703c14847df5766ecbfd');
INSERT INTO public.ledger VALUES (199, '2026-03-02T17:15:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 6ae32f8887cb","slots S001 on_item 964d1517a673","doubts fdf10db90c098182 - d575c5c709a4"],"photo":null,"place":"B-1-1","stocktake":"09876468e46c763e","unread":0}', '6e890cd556d291579f21b753e752045c4495f213cd5141d99f9be5be182f9e01');
INSERT INTO public.ledger VALUES (200, '2026-03-02T17:15:00.000000+00:00', 'doubted', 'boss', '{"doubt":"fdf10db90c098182","doubt_kind":"not_this","item":"321b4a1b1c605f76","now":["slots S003 on_item 9f277e44f515","slots S012 on_item f5381bd6bd19","slots D010 on_item d5ac88b828af"],"words":"A count found another thing on its card in B-1-1."}', 'eed59589c11d3baea858e6d7a418d73dd44f93484faed87b4685bfa6d11bddb2');
INSERT INTO public.ledger VALUES (201, '2026-03-02T17:23:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - dd18716463e7","slots S011 on_item b0b261e048f9","slots S013 on_item 039848ebf4af"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"09876468e46c763e","unread":0}', '3e6e90f7238e40f2f40e58b28915f5d26436a3f5a4e08e2f854fff9dcb83c2a4');
INSERT INTO public.ledger VALUES (202, '2026-03-02T17:29:00.000000+00:00', 'finding resolved', 'boss', '{"after":201,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 867949cc3e09","resolutions 09876468e46c763e.elsewhere-S012 - 4d2d66be1c81"],"reason":"","stocktake":"09876468e46c763e","sure":false}', 'b77fde65d4df780bee686474e5f95e6085a368aca18c144a28724d390d484057');
INSERT INTO public.ledger VALUES (203, '2026-03-02T17:32:00.000000+00:00', 'finding resolved', 'boss', '{"after":202,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 09876468e46c763e.unknown-Q0771 - 2c0ef656f24d"],"reason":"A neighbour''s","stocktake":"09876468e46c763e","sure":false}', '7267773774ac180cc2b15e0c997f0d24ddef050a6aa722df0b2f122e31e2f3d7');
INSERT INTO public.ledger VALUES (204, '2026-03-02T17:35:00.000000+00:00', 'finding resolved', 'boss', '{"after":203,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item dfcc12b7cd30","resolutions 09876468e46c763e.missing-S008 - 880d7e6bc6a0"],"reason":"","stocktake":"09876468e46c763e","sure":false}', '1c37f8d76ff8e85b235d36e3f9af2479c6633b5f7452f8d498803e08cb7b26b5');
INSERT INTO public.ledger VALUES (205, '2026-03-02T17:38:00.000000+00:00', 'finding reopened', 'boss', '{"after":204,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 09876468e46c763e.missing-S008 - -"],"stocktake":"09876468e46c763e"}', '14d0c6cdd4bd6933a512e326482aaee9a927ea631d3a0319bbc6ac770c3cfa6e');
INSERT INTO public.ledger VALUES (206, '2026-03-02T17:41:00.000000+00:00', 'doubted', 'boss', '{"doubt":"86c40ab67feb2ea0","doubt_kind":"missing","item":"a1219216735dae93","now":["doubts 86c40ab67feb2ea0 - bb752c0e0fe1","stocktakes 09876468e46c763e closed 8a89674bc245"],"words":"a count of section:S did not find it"}', '64b1b117a28e318e97416f3e5a8d27e972786e6bb4be39301f6c8f9282c3b22a');
INSERT INTO public.ledger VALUES (207, '2026-03-02T17:41:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"09876468e46c763e"}', 'f714dcf37d28034e47ecbc4b90691b00a26b63ff0c186692e80a9098de3111a6');
INSERT INTO public.ledger VALUES (208, '2026-03-02T17:44:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes cbc5f5f8b7f4eda1 open e5bf34adb67c"],"stocktake":"cbc5f5f8b7f4eda1"}', '1a1418567967442c13ee22077651bb39cbc427c39b3d1f122254c31afed64094');
INSERT INTO public.ledger VALUES (209, '2026-03-02T17:51:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - a7aa514d196d","slots L003 on_item e197f8cedb43","slots L004 on_item 79ee945ce7a8","slots L005 on_item a5216dbd75fb","slots L007 on_item 264bbe8ef33d"],"photo":null,"place":"C-1-1","stocktake":"cbc5f5f8b7f4eda1","unread":0}', '36dbd511938987ecd4b065496ffbde5834087dade61b9ecb59f15dbdeb9e87a9');
INSERT INTO public.ledger VALUES (210, '2026-03-02T17:54:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 1b6cd1375e7de4a6 - 1d8c541bbf88"]}', '4a33fe3d525892e44cdfe64602aff9570d444f8a98a76b3c0bbcd74bc67d12bd');
INSERT INTO public.ledger VALUES (211, '2026-03-02T17:54:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1b6cd1375e7de4a6","doubt_kind":"missing","item":"8e66de295590c3dd","now":["resolutions cbc5f5f8b7f4eda1.missing-L008 - a88bbdc97308"],"words":"a count did not find it"}', 'dffe68646d075bb6b4f41bdc28e54c8619066c6942437815f3825c8baa350523');
INSERT INTO public.ledger VALUES (212, '2026-03-02T17:54:00.000000+00:00', 'finding resolved', 'boss', '{"after":209,"finding":"missing-L008","how":"lost","reason":"","stocktake":"cbc5f5f8b7f4eda1","sure":false}', 'beac8bf1e5ac14a7944c8f3659872e140a40f13a760a2fcec13462f20bba473f');
INSERT INTO public.ledger VALUES (213, '2026-03-02T17:57:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 46aa2955e9bf19fe withdrawn 129985308a9f","slots L009 due 821cc144d722","resolutions cbc5f5f8b7f4eda1.missing-L009 - 72e1642ac28b"],"reason":"Nowhere to be found","stay":"46aa2955e9bf19fe"}', '3479e96e26c978246cc92d8c02f3476d8e253ef87f9340594f41c7d51b3f1c39');
INSERT INTO public.ledger VALUES (214, '2026-03-02T17:57:00.000000+00:00', 'finding resolved', 'boss', '{"after":212,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"cbc5f5f8b7f4eda1","sure":false}', 'cb7a1292755ad5be5ca866c2a37ddf72f75523c402c2c66ca96456cade86631d');
INSERT INTO public.ledger VALUES (215, '2026-03-02T18:00:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes ce2a1e05964bad0d open 98bf6a430928"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"ce2a1e05964bad0d"}', 'e46faa2239d289b6c8aac009f62ded60a383aeea49b78073dbe8b27678ca8764');
INSERT INTO public.ledger VALUES (216, '2026-03-02T18:03:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 71de92a26a24f801 open df33f2983a78"],"stocktake":"71de92a26a24f801"}', '9edb86da53c6b6d945255003fb4cdf084a3888ea4b9d895752b50347ac82bc91');
INSERT INTO public.ledger VALUES (217, '2026-03-02T18:06:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 71de92a26a24f801 cancelled 35a68e32df22"],"stocktake":"71de92a26a24f801"}', 'c5cfa719780532bcc523e848aa49dd0c7e7771082b4d81aa49f2eb2a10d116ce');
INSERT INTO public.lines VALUES (15, '59e20986d32a90f6', '957894658c714fcb', 1, 'D009-01B', 'Rear derailleur 9', '', '3fb9a83180eecc29', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'a48722bd16eb8949', 'd38423bc04962d6e', 1, 'D003-01U', 'Bell with a crown', '', '42398543ba9b34cc', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '120ed12bbf373f78', '071adbfca60f1fbb', 1, 'D005-01E', 'Rear derailleur 5', '', 'c02d586f9b9de815', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '71d670eeca0a2e77', '071adbfca60f1fbb', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Z."]]');
INSERT INTO public.lines VALUES (24, 'cf9597964b7e5d16', 'ce4f3523d79ce707', 1, 'D006-016', 'Rear derailleur 6', '', '9cee7555a4a127fa', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '36946fde788f1158', 'ce4f3523d79ce707', 2, 'D007-01R', 'Rear derailleur 7', '', '2cdf395acdf7c243', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '9c1a0761cbf61fd0', '3de0d2563392b6d4', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "This is not written like a reference."]]');
INSERT INTO public.lines VALUES (27, '60858680f767357f', '86360b88aed0a502', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '938a5f6b8d4b1896', '76a4d115e868c390', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '8bc944ce7ddfdd5b', '4805e48a28f8d12b', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'c0018bb65837dc5a', '78c2c8501d4b5c32', 1, 'W005-01B', 'Bell with a crown', '', '613ebc28a77c6ff9', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'daacb9dbfa14973b', 'c754b5972a530752', 1, 'L007-014', 'Dynamo lamp 7', '', '6a37282c5a2326a9', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '24e440f6342c7e13', 'a25526a9ef3359ee', 1, 'L005-01K', 'Dynamo lamp 5', '', 'c223e459cfc1e2c6', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '38f65725cb262219', '1c2b9809bc226767', 1, 'W006-013', 'Front wheel 6', '', '0ca4643503a02e94', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'fc802b9dd254cca7', '1ff33a195a12bb45', 1, 'L012-01S', 'Dynamo lamp 12', '', '211a83ffb65b3b19', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '1a91b6375390b07a', '9c15fbdb3d47b1e1', 1, 'S012-01O', '', '', 'b6b16a4722068a7e', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, 'cdbc07a40d440ba8', '9dd0b05cf5d9f01e', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (33, '223eef9887d6e7d0', 'aa5ee264cdce3b61', 1, 'Q7', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (19, 'ea1d475b6dfb5451', 'e3b42e5386ba34e0', 2, 'W008-01O', 'Front wheel 8', '', '6dd0c73ed8f9c0f9', 'waiting', NULL, '56b254ffaeba4127', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (1, '0ad0950e3a10d298', '4035b7b0557561fe', 1, 'W001-01E', 'Front wheel 1', '', '8a5e5603a2f6e073', 'released', '859bd5bb491daaec', '56b254ffaeba4127', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (18, 'b2efc73db0cf14d2', 'e3b42e5386ba34e0', 1, 'W007-01W', 'Front wheel 7', '', 'b3e8bb20f848f126', 'released', '1a20cb5ab9eece11', '56b254ffaeba4127', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '782c2edca0e668f3', 'ac64bfd7e9b99813', 1, 'S004-01O', 'Leather saddle 4', '', 'e2dbbf32f105ac47', 'packed', '788db8bd8ef5968c', '56b254ffaeba4127', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (4, 'e2d85b0029729cf0', '213db0d6828aa5d8', 2, 'S003-01W', 'Leather saddle 3', '', 'dd626e7ab37dcd90', 'picked', NULL, '56b254ffaeba4127', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (6, '7985a7a221b49064', 'ac64bfd7e9b99813', 2, 'S005-01G', 'Leather saddle 5', '', 'e2f732be1aae5d92', 'picked', NULL, '56b254ffaeba4127', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '582f8f071d98f614', '8957e3cad7b2f137', 1, 'S007-01Z', 'Leather saddle 7', '', 'dc55f72f9b8bbc61', 'picked', NULL, '56b254ffaeba4127', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (11, 'e474891a42d698b3', 'c7f39d8d7af4507d', 1, 'L006-01C', 'Dynamo lamp 6', '', 'f8f811bd0e32ca82', 'packed', '33ab8bf38c165a84', '56b254ffaeba4127', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '1fe396da3ee118b6', 'c7f39d8d7af4507d', 2, 'L011-010', 'Dynamo lamp 11', '', '79bb0f7f03a020d7', 'cancelled', NULL, '56b254ffaeba4127', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'd5281b84faa70603', '213db0d6828aa5d8', 1, 'S002-013', 'Leather saddle 2', '', '82805c5507b8cef5', 'packed', '647796ce61976647', '56b254ffaeba4127', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '285e527128569dde', 'a6d85dccaa2df52f', 1, 'S006-018', 'Saddle with springs', '', '73e7eda45bd515b3', 'picked', NULL, '56b254ffaeba4127', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '7baa85699ee43175', 'd47e7a4d15edec9e', 1, 'D008-01J', 'Rear derailleur 8', '', '3b30adf8734dcda9', 'waiting', NULL, 'ee058192c4470a08', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (37, 'b9fe494934b5fa6e', 'ff6af4d37ad769f9', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (8, '66444fd3d4de03b8', '93a8f78130ba8b45', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '37541721f4904fba', 'waiting', NULL, 'ee058192c4470a08', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '6802ef49a2cae35f', '4035b7b0557561fe', 2, 'W002-016', 'Front wheel 2', '', '4442a9307436316e', 'returned', '859bd5bb491daaec', '56b254ffaeba4127', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '4939c2c7a7645c16', 'c6460796e0b2e524', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', '09e5d76ecccc6d68', 'picked', NULL, 'ee058192c4470a08', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, 'c9631f0c085beb97', '260efe685f6dffba', 1, 'L004-01S', 'Dynamo lamp 4', '', '133c144db9933096', 'short', NULL, 'ee058192c4470a08', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'cab299bd5117113e', 'df986524e39995a6', 1, 'D001-019', 'Rear derailleur 1', '', 'e89f05f62b1dfaad', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (36, '6485b879a4345352', 'df986524e39995a6', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.listings VALUES (1, 'f30e2b4e6ba7e4d4', '5147e56cca91e34d', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, '7d99c344fd9aa890', '68404222c4550847', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, '96704b1059ce8574', 'e04734b47d9d90b8', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, 'd3fcf494c54dfb41', '8590d5b79faffcdf', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, '0134571a38552c1b', 'a1fab9f7dd8282cb', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, 'e0b54ba52780ad6b', 'edcfdca865d4e4d5', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, '3de0aa564a04267a', '2dc43b2c10dfecae', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, '745fd40ab34df92e', 'ec9cc09ad8d5350d', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, '645a47b48461ff77', '0600e95ebb4694f1', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, '0e342327689f101a', '37652576782e0b1c', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, 'fe9b62c1ba90e17b', '92df67c1caafcd44', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, '24aabf96ed430e5f', '321b4a1b1c605f76', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, '5d098fc831fc663b', 'fee3365a981450aa', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, 'ad12b4683b0b0c99', 'a78d00d75354f1c6', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, 'db5b3b24a39e6bc4', 'd4b76559259a7eeb', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, 'c971671714bdf938', 'aff4ab098d6c11fd', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, '2e8ea5c1d6264628', '1588a2ab4ef65457', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, '0cd349bdeae61100', '2a2328b1e4697ffb', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, 'a340de46a98aa138', 'a1219216735dae93', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, 'c24c1d797c0a9950', 'fcb9160404d1ec15', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, '6ab1ce4d1b4cae1e', '0e5a69b18ae2d257', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, 'b097d39f84fa498a', '30d6dba2bdf8a88c', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, '91b7e01325696283', 'cc9c58006c6bc278', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, 'e5c2ebd7cd6870c9', '1ab2a66ed950f88b', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '25b1c7e5c5e913a4', '510f30a0fe704f88', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, '167cdd341321fed0', '7d6b31bada60990e', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, '2ebcb47fdec2a6a3', '6fb3034a4c4ccbbf', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, '2fbb5057bf86e250', '75ce6d595e296fad', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, '40a5a6b24afbdf24', '3c917c0938ee6aad', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, 'ca09b6aaf16c0f1d', 'd17d7a2c06848d9c', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, 'f921fb80ad472397', '8e66de295590c3dd', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, 'e5e52c864aec8c88', 'd9f7e5b55f2a9b0a', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, 'd51e57c70d8d5596', 'bb674bb7572f37df', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, '13dce872cb0d3679', '6f2ebbfd803e9891', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, '8878ec56da86aff1', 'cf34e38f621c3422', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, 'e629b917d7a7a532', '6b0617e8234b2146', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, '9776e1f2b431a7e3', '7a64f2c883494874', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, '5586b8ba0f5e746b', 'd01cacf9be0c6f0d', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, 'e5ea3135dd009541', 'a90805b41989bdd5', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, '11d0546686e296fb', 'd18f0ea6be620489', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, 'a58fc500b80d15bf', 'b419944a00256e18', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, 'bbb37babbea79093', '95b0df2dd5032bae', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '52e33a7c18b84238', '94a4af6633530647', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, 'da733cc157ce2283', '7004fd671e828a41', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, '582fe36ec28386b1', '7d629aa811d92c9c', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, 'dfc14a09fc22fa6e', 'd64a3cf12ec3ef0a', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, 'e15396edc4e2d7dd', '86269be3f8275bc9', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, 'e95c80aedf000337', '6b0617e8234b2146', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, '05133bb200999618', '6b0617e8234b2146', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, '2bccf484a1a8dbdf', 'fee3365a981450aa', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, '26af57d0850792e6', 'fee3365a981450aa', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, 'dd0a2b62c64573d9', 'ec9cc09ad8d5350d', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, '2f0671d12c8f2f1c', 'ec9cc09ad8d5350d', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, 'bef67a97383901ca', '86269be3f8275bc9', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, 'd0a45a7382773dc8', '86269be3f8275bc9', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, '0ace7ae1e60c8ea1', 'd9f7e5b55f2a9b0a', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, 'ee28c25c108e8a14', 'f643f41521586e41', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '57926c7dbf7aeb5b', 'f643f41521586e41', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, 'cdf3b41cd812d342', 'd9f7e5b55f2a9b0a', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, 'ea23875d59d8ada7', '510f30a0fe704f88', 'fair', 'fair-L002', '4939c2c7a7645c16', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, '1de728863adcbea1', '7d6b31bada60990e', 'fair', 'fair-L003', '66444fd3d4de03b8', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '09876468e46c763e', 'B-1-1', '2026-03-02T17:15:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '09876468e46c763e', 'B-1-2', '2026-03-02T17:23:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', 'cbc5f5f8b7f4eda1', 'C-1-1', '2026-03-02T17:51:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'c6460796e0b2e524', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '93a8f78130ba8b45', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, '260efe685f6dffba', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, 'a25526a9ef3359ee', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, 'a6d85dccaa2df52f', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, 'c754b5972a530752', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '957894658c714fcb', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '1c2b9809bc226767', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, 'd47e7a4d15edec9e', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, 'd38423bc04962d6e', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, '071adbfca60f1fbb', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'ce4f3523d79ce707', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '3de0d2563392b6d4', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '86360b88aed0a502', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '76a4d115e868c390', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '4805e48a28f8d12b', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '78c2c8501d4b5c32', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, '1ff33a195a12bb45', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, '9c15fbdb3d47b1e1', 'F-1', 'Fair', '2026-03-02T13:59:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (26, 'aa5ee264cdce3b61', 'F-2', 'Fair', '2026-03-02T13:59:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (27, '9dd0b05cf5d9f01e', 'F-3', 'Fair', '2026-03-02T13:59:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (1, '4035b7b0557561fe', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, 'e3b42e5386ba34e0', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '8957e3cad7b2f137', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, 'ac64bfd7e9b99813', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '788db8bd8ef5968c', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, 'c7f39d8d7af4507d', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '33ab8bf38c165a84', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '213db0d6828aa5d8', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '647796ce61976647', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, 'df986524e39995a6', 'B-38', 'fair', '2026-03-02T16:35:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, 'ff6af4d37ad769f9', 'B-39', '', '2026-03-02T16:38:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (2, '1a20cb5ab9eece11', 'main', 'e3b42e5386ba34e0', '2026-03-02T15:26:00.000000+00:00', 'closed', '2026-03-02T15:29:00.000000+00:00', NULL, '', '', '', true);
INSERT INTO public.parcels VALUES (1, '859bd5bb491daaec', 'main', '4035b7b0557561fe', '2026-03-02T14:55:00.000000+00:00', 'handed_over', '2026-03-02T15:04:00.000000+00:00', '2026-03-02T15:35:00.000000+00:00', 'The red van', 'boss', '', false);
INSERT INTO public.parcels VALUES (3, 'ef1d2a0a052a864f', 'main', '8957e3cad7b2f137', '2026-03-02T15:38:00.000000+00:00', 'dropped', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (4, '788db8bd8ef5968c', 'main', 'ac64bfd7e9b99813', '2026-03-02T15:44:00.000000+00:00', 'aside', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (5, '33ab8bf38c165a84', 'second', 'c7f39d8d7af4507d', '2026-03-02T15:53:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (6, '647796ce61976647', 'main', '213db0d6828aa5d8', '2026-03-02T16:02:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '09876468e46c763e.elsewhere-S012', '09876468e46c763e', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T17:29:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T17:15:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "b6b16a4722068a7e", "item": "cc9c58006c6bc278", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "1a91b6375390b07a", "order": "9c15fbdb3d47b1e1", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "b6b16a4722068a7e", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T17:29:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "b6b16a4722068a7e", "item": "cc9c58006c6bc278", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "1a91b6375390b07a", "order": "9c15fbdb3d47b1e1", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "b6b16a4722068a7e", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '09876468e46c763e.unknown-Q0771', '09876468e46c763e', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T17:32:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, 'cbc5f5f8b7f4eda1.missing-L008', 'cbc5f5f8b7f4eda1', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:54:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "c801c69251720caa", "item": "8e66de295590c3dd", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "c801c69251720caa", "item": "8e66de295590c3dd", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["1b6cd1375e7de4a6"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, 'cbc5f5f8b7f4eda1.missing-L009', 'cbc5f5f8b7f4eda1', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:57:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "46aa2955e9bf19fe", "item": "d9f7e5b55f2a9b0a", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "46aa2955e9bf19fe", "item": "d9f7e5b55f2a9b0a", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:57:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.returns VALUES (1, 'b0be54bf27a7c379', '4035b7b0557561fe', '0ad0950e3a10d298', 'Too large', '2026-03-20T23:59:59.000000+00:00', 'expected', '2026-03-02T16:41:00.000000+00:00', NULL, NULL, '[]');
INSERT INTO public.returns VALUES (2, 'da0cdca04a684c97', '4035b7b0557561fe', '6802ef49a2cae35f', '', NULL, 'checked', '2026-03-02T16:44:00.000000+00:00', '2026-03-02T16:47:00.000000+00:00', '2026-03-02T16:50:00.000000+00:00', '[["6802ef49a2cae35f", "check", "297dea130ceabaff"]]');
INSERT INTO public.returns VALUES (3, '9a0c75d009529cce', NULL, '', '', NULL, 'arrived', '2026-03-02T16:53:00.000000+00:00', '2026-03-02T16:56:00.000000+00:00', NULL, '[]');
INSERT INTO public.returns VALUES (4, 'b2d647d71092c645', NULL, '', 'Left at the door', NULL, 'given_up', '2026-03-02T16:59:00.000000+00:00', '2026-03-02T17:02:00.000000+00:00', NULL, '[[null, "stays", null]]');
INSERT INTO public.rounds VALUES (1, '56b254ffaeba4127', '2026-03-02T14:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'ee058192c4470a08', '2026-03-02T16:11:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'f50400f84d798051f9eed5f9841535f9104dd53c215f72bf869f8f64d3557033', 'bin', '56b254ffaeba4127', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '39d53cd244f16b20c685731579d1ee2167a0de548fb0e297f8f1a65b98028c00', 'bin', '56b254ffaeba4127', 'W001', false, true, true, '0ad0950e3a10d298', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": "0ad0950e3a10d298", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:13:00.000000+00:00', '["on_item", ["8a5e5603a2f6e073", "stored"], ["0ad0950e3a10d298", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'c32a3f62b2e8c26c3ca6ee2959d6763219f6f86680861544ccb5eec6be077945', 'bin', '56b254ffaeba4127', 'W002', false, true, true, '6802ef49a2cae35f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": "6802ef49a2cae35f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:16:00.000000+00:00', '["on_item", ["4442a9307436316e", "stored"], ["6802ef49a2cae35f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '52d6c5f49bbb05c4796e5f014341f87263c4799f99e0775993a82d430916646a', 'bin', '56b254ffaeba4127', 'S002', false, true, true, 'd5281b84faa70603', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "213db0d6828aa5d8", "order_number": "B-03", "line": "d5281b84faa70603", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:19:00.000000+00:00', '["on_item", ["82805c5507b8cef5", "stored"], ["d5281b84faa70603", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'f17207d6ec6a616bd62192c520b76f985d56f45b3ceb7e1ca17fcee1ffac77e8', 'bin', '56b254ffaeba4127', 'S003', false, true, true, 'e2d85b0029729cf0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "213db0d6828aa5d8", "order_number": "B-03", "line": "e2d85b0029729cf0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["dd626e7ab37dcd90", "stored"], ["e2d85b0029729cf0", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '0ef1e4f9d2a53280b37e19cf9f258d8bfe79cff6053f0d25283fd0acc72473aa', 'bin', '56b254ffaeba4127', 'S004', false, true, true, '782c2edca0e668f3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ac64bfd7e9b99813", "order_number": "B-04", "line": "782c2edca0e668f3", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:25:00.000000+00:00', '["on_item", ["e2dbbf32f105ac47", "stored"], ["782c2edca0e668f3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'e80b166879dfd6ff42b3b55f9f79f9947e6bc48126b3c00d8fb000c544200711', 'bin', '56b254ffaeba4127', 'S005', false, true, true, '7985a7a221b49064', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "ac64bfd7e9b99813", "order_number": "B-04", "line": "7985a7a221b49064", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:28:00.000000+00:00', '["on_item", ["e2f732be1aae5d92", "stored"], ["7985a7a221b49064", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '5d24addc96e079302a74098e038f0d47dd4094eccf321132745e899281e83538', 'bin', '56b254ffaeba4127', 'L006', false, true, true, 'e474891a42d698b3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "c7f39d8d7af4507d", "order_number": "B-09", "line": "e474891a42d698b3", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:31:00.000000+00:00', '["on_item", ["f8f811bd0e32ca82", "stored"], ["e474891a42d698b3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'face5a5134f286dae56f26e0235482fe5a04bf9dfe1d283f1909ddd3803de50a', 'bin', '56b254ffaeba4127', 'L011', false, true, true, '1fe396da3ee118b6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "c7f39d8d7af4507d", "order_number": "B-09", "line": "1fe396da3ee118b6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:34:00.000000+00:00', '["on_item", ["79bb0f7f03a020d7", "stored"], ["1fe396da3ee118b6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '579e73a425c10263d34f74be35c94f41cf2a08b3e5e5f465e130fdd43997e4ff', 'bin', '56b254ffaeba4127', 'S006', false, true, true, '285e527128569dde', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "a6d85dccaa2df52f", "order_number": "B-13", "line": "285e527128569dde", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:37:00.000000+00:00', '["on_item", ["73e7eda45bd515b3", "stored"], ["285e527128569dde", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'bd9c3085d7fdea3fc6e40d411e88a7ed6b93190c259f4ca5d47b3f252836383e', 'bin', '56b254ffaeba4127', 'S007', false, true, true, '582f8f071d98f614', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "8957e3cad7b2f137", "order_number": "B-22", "line": "582f8f071d98f614", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:40:00.000000+00:00', '["on_item", ["dc55f72f9b8bbc61", "stored"], ["582f8f071d98f614", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '110fc25fe7cc480d555d69d35c57e32ae6ee3f318cb46a98d38626a7a80f3848', 'bin', '56b254ffaeba4127', 'W007', false, true, true, 'b2efc73db0cf14d2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e3b42e5386ba34e0", "order_number": "B-23", "line": "b2efc73db0cf14d2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["b3e8bb20f848f126", "stored"], ["b2efc73db0cf14d2", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'e8504e4b1a2c209a9c8c608f2b541296a215c6fe521801a08398a940015cd83b', 'bin', '56b254ffaeba4127', 'W008', false, true, true, 'ea1d475b6dfb5451', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "e3b42e5386ba34e0", "order_number": "B-23", "line": "ea1d475b6dfb5451", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:46:00.000000+00:00', '["on_item", ["6dd0c73ed8f9c0f9", "stored"], ["ea1d475b6dfb5451", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'd5281b84faa70603', '859bd5bb491daaec', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "213db0d6828aa5d8", "order_number": "B-03", "line": "d5281b84faa70603", "line_state": "picked", "order_state": "picking", "parcel": "859bd5bb491daaec", "parcel_state": "open", "released": []}', '', '2026-03-02T14:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '0ad0950e3a10d298', '859bd5bb491daaec', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": "0ad0950e3a10d298", "line_state": "packed", "order_state": "picking", "parcel": "859bd5bb491daaec", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["8a5e5603a2f6e073", "stored"], ["0ad0950e3a10d298", "packed", "859bd5bb491daaec", []], ["859bd5bb491daaec", "2026-03-02T14:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '6802ef49a2cae35f', '859bd5bb491daaec', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": "6802ef49a2cae35f", "line_state": "released", "order_state": "released", "parcel": "859bd5bb491daaec", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T15:04:00.000000+00:00', '["due", ["4442a9307436316e", "shipped"], ["6802ef49a2cae35f", "released", "859bd5bb491daaec", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '0ad0950e3a10d298', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": "0ad0950e3a10d298", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:07:00.000000+00:00', '["tray", ["8a5e5603a2f6e073", "shipped"], ["0ad0950e3a10d298", "released", "859bd5bb491daaec", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'b2efc73db0cf14d2', '1a20cb5ab9eece11', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e3b42e5386ba34e0", "order_number": "B-23", "line": "b2efc73db0cf14d2", "line_state": "packed", "order_state": "waiting", "parcel": "1a20cb5ab9eece11", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["b3e8bb20f848f126", "stored"], ["b2efc73db0cf14d2", "packed", "1a20cb5ab9eece11", []], ["1a20cb5ab9eece11", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'gone', '73aa8b1427160fbfbc3a93de06cbd6081c0544c4289a5ee2ac9162123501fa2a', 'table', '', NULL, false, true, true, NULL, '859bd5bb491daaec', '{"verdict": "accepted", "reason": null, "advice": "B-01: handed over, 2 things.", "replayed": false, "changed": true, "code": null, "title": null, "photo": null, "order": "4035b7b0557561fe", "order_number": "B-01", "line": null, "line_state": null, "order_state": "released", "parcel": "859bd5bb491daaec", "parcel_state": "handed_over", "released": []}', '', '2026-03-02T15:35:00.000000+00:00', '"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66"');
INSERT INTO public.scans VALUES (20, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '782c2edca0e668f3', '788db8bd8ef5968c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ac64bfd7e9b99813", "order_number": "B-04", "line": "782c2edca0e668f3", "line_state": "packed", "order_state": "picking", "parcel": "788db8bd8ef5968c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:47:00.000000+00:00', '["on_item", ["e2dbbf32f105ac47", "stored"], ["782c2edca0e668f3", "packed", "788db8bd8ef5968c", []], ["788db8bd8ef5968c", "2026-03-02T15:44:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'e474891a42d698b3', '33ab8bf38c165a84', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "c7f39d8d7af4507d", "order_number": "B-09", "line": "e474891a42d698b3", "line_state": "packed", "order_state": "picking", "parcel": "33ab8bf38c165a84", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:56:00.000000+00:00', '["on_item", ["f8f811bd0e32ca82", "stored"], ["e474891a42d698b3", "packed", "33ab8bf38c165a84", []], ["33ab8bf38c165a84", "2026-03-02T15:53:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'd5281b84faa70603', '647796ce61976647', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "213db0d6828aa5d8", "order_number": "B-03", "line": "d5281b84faa70603", "line_state": "packed", "order_state": "picking", "parcel": "647796ce61976647", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T16:05:00.000000+00:00', '["on_item", ["82805c5507b8cef5", "stored"], ["d5281b84faa70603", "packed", "647796ce61976647", []], ["647796ce61976647", "2026-03-02T16:02:00+00:00"]]');
INSERT INTO public.scans VALUES (23, 'pick-L002', 'c0a82bf303792af4f0a6c9a5fe416e6746e242f156ebd7921536ca7071cd95f0', 'bin', 'ee058192c4470a08', 'L002', false, true, true, '4939c2c7a7645c16', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "c6460796e0b2e524", "order_number": "B-05", "line": "4939c2c7a7645c16", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:14:00.000000+00:00', '["on_item", ["09e5d76ecccc6d68", "stored"], ["4939c2c7a7645c16", "picked", null, []], null]');
INSERT INTO public.scans VALUES (24, 'bad-D0146', 'd2f9f45d8900cbb609c3c5654a851ebc85e01f560506efb58cd1295c6ceded9f', 'bin', 'ee058192c4470a08', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-hello', '328925f734cf0ff868b951efa4739ac2350f56f8eb9574780d5f52b066193ae4', 'bin', 'ee058192c4470a08', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (26, 'bad-', '72d6aa0b8d44d245adc9f4e5a5a77c4e7e8dc6888912a8f7882146f6f389813b', 'bin', 'ee058192c4470a08', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:26:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T14:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:56:00.000000+00:00', '33ab8bf38c165a84', 'bin', 'C-1-1', '56b254ffaeba4127', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:28:00.000000+00:00', NULL, 'bin', 'B-1-1', '56b254ffaeba4127', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:34:00.000000+00:00', NULL, 'bin', 'C-1-2', '56b254ffaeba4127', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:40:00.000000+00:00', NULL, 'bin', 'B-1-1', '56b254ffaeba4127', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T16:05:00.000000+00:00', '647796ce61976647', 'bin', 'B-1-1', '56b254ffaeba4127', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:37:00.000000+00:00', NULL, 'bin', 'B-1-1', '56b254ffaeba4127', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:04:00.000000+00:00', '859bd5bb491daaec', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', '1a20cb5ab9eece11', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:47:00.000000+00:00', '788db8bd8ef5968c', 'bin', 'B-1-1', '56b254ffaeba4127', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:14:00.000000+00:00', NULL, 'bin', 'C-1-1', 'ee058192c4470a08', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, 'bin', 'B-1-1', '56b254ffaeba4127', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T17:29:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, 'e89f05f62b1dfaad', '5147e56cca91e34d', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, '8d26bfe5ec2fe24e', '68404222c4550847', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '42398543ba9b34cc', 'e04734b47d9d90b8', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, 'e664cec03a179d57', 'f643f41521586e41', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, 'c02d586f9b9de815', '8590d5b79faffcdf', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, '9cee7555a4a127fa', 'a1fab9f7dd8282cb', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '2cdf395acdf7c243', 'edcfdca865d4e4d5', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, '3fb9a83180eecc29', 'ec9cc09ad8d5350d', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '11fdcd74bbf090fd', '0600e95ebb4694f1', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '7c53da3bde1baeb7', '37652576782e0b1c', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '540ff14ecc35ceb0', '92df67c1caafcd44', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '1d91791ff0753319', '321b4a1b1c605f76', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, '82805c5507b8cef5', 'fee3365a981450aa', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'dd626e7ab37dcd90', 'a78d00d75354f1c6', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, 'e2dbbf32f105ac47', 'd4b76559259a7eeb', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, 'e2f732be1aae5d92', 'aff4ab098d6c11fd', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '73e7eda45bd515b3', '1588a2ab4ef65457', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, 'dc55f72f9b8bbc61', '2a2328b1e4697ffb', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '9744402cb8780806', 'a1219216735dae93', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, '21d7a43fe01a7ae5', '30d6dba2bdf8a88c', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, 'b6b16a4722068a7e', 'cc9c58006c6bc278', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, '35a2750028967cda', '1ab2a66ed950f88b', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, '09e5d76ecccc6d68', '510f30a0fe704f88', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '37541721f4904fba', '7d6b31bada60990e', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '133c144db9933096', '6fb3034a4c4ccbbf', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, 'c223e459cfc1e2c6', '75ce6d595e296fad', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, 'f8f811bd0e32ca82', '3c917c0938ee6aad', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '6a37282c5a2326a9', 'd17d7a2c06848d9c', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'c801c69251720caa', '8e66de295590c3dd', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, '653b2637f30d3af8', 'bb674bb7572f37df', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '79bb0f7f03a020d7', '6f2ebbfd803e9891', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '211a83ffb65b3b19', 'cf34e38f621c3422', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '1f2fcca74b1b49e1', 'd01cacf9be0c6f0d', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '613ebc28a77c6ff9', 'd18f0ea6be620489', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '0ca4643503a02e94', 'b419944a00256e18', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, '6dd0c73ed8f9c0f9', '94a4af6633530647', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, 'e9491dd4363b5cd0', '7004fd671e828a41', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, 'cb2e4f3a0ffafdd3', '7d629aa811d92c9c', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, 'b87b0132be78b9f7', 'd64a3cf12ec3ef0a', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, 'e688f77026ca418d', '86269be3f8275bc9', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, '0b2fe714dfb4b840', '03c0f02a660942a9', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '26b87cffc049e82e', '0e5a69b18ae2d257', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, '3b653ef3e49cffa2', 'a90805b41989bdd5', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '40e9fbdfd7851291', 'fcb9160404d1ec15', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, 'f0c5a6f442605c79', 'fcb9160404d1ec15', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '486062aa3620af52', '955618bf67d33314', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '610949e477f96fb3', 'f006d5d848376f5b', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, 'ee3b7be406039cd4', '2dc43b2c10dfecae', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '3b30adf8734dcda9', '2dc43b2c10dfecae', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '8a5e5603a2f6e073', '6b0617e8234b2146', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, '4442a9307436316e', '7a64f2c883494874', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '2f051c453bc266bb', '373882bac159c8bf', 'W001', 2, '2026-03-02T15:10:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, 'b3e8bb20f848f126', '95b0df2dd5032bae', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:29:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (55, '297dea130ceabaff', '7a64f2c883494874', 'D029', 1, '2026-03-02T16:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '46aa2955e9bf19fe', 'd9f7e5b55f2a9b0a', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:57:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, '09876468e46c763e', 'section:S', 'Spring', '2026-03-02T17:08:00.000000+00:00', 197, 'closed', '2026-03-02T17:41:00.000000+00:00', '{"stocktake": "09876468e46c763e", "area": "section:S", "note": "Spring", "opened": "2026-03-02T17:08:00+00:00", "closed": "2026-03-02T17:41:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T17:29:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T17:32:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, 'cbc5f5f8b7f4eda1', 'section:L', 'Spring', '2026-03-02T17:44:00.000000+00:00', 207, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'ce2a1e05964bad0d', 'section:D', '', '2026-03-02T18:00:00.000000+00:00', 214, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '71de92a26a24f801', 'tray', 'Too late today', '2026-03-02T18:03:00.000000+00:00', 215, 'cancelled', '2026-03-02T18:06:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '56b254ffaeba4127', 1, 'd5281b84faa70603', 'B-1-1');
INSERT INTO public.stops VALUES (2, '56b254ffaeba4127', 2, 'e2d85b0029729cf0', 'B-1-1');
INSERT INTO public.stops VALUES (3, '56b254ffaeba4127', 3, '782c2edca0e668f3', 'B-1-1');
INSERT INTO public.stops VALUES (4, '56b254ffaeba4127', 4, '7985a7a221b49064', 'B-1-1');
INSERT INTO public.stops VALUES (5, '56b254ffaeba4127', 5, '285e527128569dde', 'B-1-1');
INSERT INTO public.stops VALUES (6, '56b254ffaeba4127', 6, '582f8f071d98f614', 'B-1-1');
INSERT INTO public.stops VALUES (7, '56b254ffaeba4127', 7, '0ad0950e3a10d298', 'D-1-1');
INSERT INTO public.stops VALUES (8, '56b254ffaeba4127', 8, '6802ef49a2cae35f', 'D-1-1');
INSERT INTO public.stops VALUES (9, '56b254ffaeba4127', 9, 'b2efc73db0cf14d2', 'D-1-1');
INSERT INTO public.stops VALUES (10, '56b254ffaeba4127', 10, 'ea1d475b6dfb5451', 'D-1-1');
INSERT INTO public.stops VALUES (11, '56b254ffaeba4127', 11, 'e474891a42d698b3', 'C-1-1');
INSERT INTO public.stops VALUES (12, '56b254ffaeba4127', 12, '1fe396da3ee118b6', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'ee058192c4470a08', 1, '7baa85699ee43175', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'ee058192c4470a08', 2, '4939c2c7a7645c16', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'ee058192c4470a08', 3, '66444fd3d4de03b8', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'ee058192c4470a08', 4, 'c9631f0c085beb97', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.changed_orders_n_seq', 2, true);
SELECT pg_catalog.setval('public.channels_n_seq', 1, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 6, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.lines_n_seq', 37, true);
SELECT pg_catalog.setval('public.listings_n_seq', 61, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 29, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 3, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.resolutions_n_seq', 5, true);
SELECT pg_catalog.setval('public.returns_n_seq', 4, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 26, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 55, true);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT pk_changed_orders PRIMARY KEY (n);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT pk_returns PRIMARY KEY (n);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT uq_changed_orders_id UNIQUE (id);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT uq_returns_id UNIQUE (id);
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
CREATE INDEX ix_changed_orders_load ON public.changed_orders USING btree (load);
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
CREATE INDEX ix_parcels_closed ON public.parcels USING btree (at_table, closed);
CREATE INDEX ix_parcels_handed ON public.parcels USING btree (handed);
CREATE INDEX ix_resolutions_stocktake ON public.resolutions USING btree (stocktake);
CREATE INDEX ix_returns_order ON public.returns USING btree ("order");
CREATE INDEX ix_returns_state ON public.returns USING btree (state);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT fk_changed_orders_order FOREIGN KEY ("order") REFERENCES public.orders(id);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT fk_returns_order FOREIGN KEY ("order") REFERENCES public.orders(id);
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
