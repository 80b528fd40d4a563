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
    photo character varying(64)
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
    sent_number text DEFAULT ''::text NOT NULL
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
    reason text NOT NULL
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
INSERT INTO public.access VALUES (1, 'f3a97a1cf41f67d40dceae1a4887c351d541b01811551d2e6f403fb3cadc9c84', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$328hdx1CJHziHDBJzDnaBg$ge1YIuqUANGU2T7k7QyGhvp2JbTNqjKtvZ3/akMk8Zo', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '4f5da951d99380b95112d3c194beadf35ebc41d4e2099012038924891847d0f3', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '308028e17bcfaeadb273a7257ab0bcf7d1c096251e456e280b8765f69b942e23', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'a03bdadc77c4865865c1db0eefeae859663a0d0fa9aee90aec26fa147d9746eb', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '34982e4b9ce9dc67f1ee56cc0273dd524c742653f329261d71fcab1ba77438d1', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0009');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/314c3ce39daf4c0d', '{"id": "314c3ce39daf4c0d", "item": "f6e2295f69ba0be8", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '8ce9afaf414b7160', 'd93a506613398c27', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:48:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '7e9d10016f920cad', '215178eb5d197f57', 'missing', 'Not in its bin', '2026-03-02T15:14:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '69465a3ef2b77d5b', '8c80f39c8d8b1937', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:47:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '612ad29498863716', '434f057171a33c91', 'missing', 'a count of section:S did not find it', '2026-03-02T16:13:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '05de25d95db9f4f5', '7fa5bdff52add0be', 'missing', 'a count did not find it', '2026-03-02T16:26:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 177, 'e9b751898fba19cbd3615c2f5179a2baac71d74d31570c1bc2eedfe01d6a950d', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}}', 'adf04aa81d559fd3');
INSERT INTO public.items VALUES (3, 'acc7809e290e3e04', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, 'c9d3cca6655b126b', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, 'd3572abe86cb62a4', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '6298c9063bad38bf', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, 'abe47ee9a2fc71fe', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '485220329d6cc0b4', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, 'd4c8ad7258dd80f5', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, 'f19d339bd0d1ea67', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '795e720265052433', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '3d70856c042198eb', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'f07595149d460b9b', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, 'edec53af8fc0826d', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, '2c023cfdb891458b', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, '7816b99a0b2fb8af', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, '6f40a0d447e1531c', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, 'b9193ad918b785b5', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, '434f057171a33c91', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '6a80cefb064779b6', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, '79c669fe176dc9f0', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '1c1fa5c9af1d18fd', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'b9afeb53efaec865', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '5c40e1b75ccf2bb2', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '71e1719527ff2470', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, 'aff1daa159a4c657', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, '215178eb5d197f57', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, 'd2972a9352e47b31', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, 'a0a74f5a49112c8c', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, 'd93a506613398c27', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, '7fa5bdff52add0be', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '7533883dd6f21a9e', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '871c279a0da7dda5', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'df0337b5f2632a11', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '52648fb8f2321e01', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, 'c7ec8e53c6f9c2be', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'bce9dc096b696a17', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, 'ebdb46cb9f0f39fc', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, '4f91119b0ab037a4', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '39b179332b2e5247', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '94b49a5f0c417719', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '8aefb4a6c9731306', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, 'e5425f9560052c75', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, 'bd9ee02bf06b6a8b', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'ad89a6b271029d25', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '0ddebb001523c146', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '0eb4a7e730742f12', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, 'f6e2295f69ba0be8', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'a3cf47e50577350f', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'f7091647ddd096a4', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '8c80f39c8d8b1937', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, 'c882bca374741ee5', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '1650ab7c7eedd80c', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items f7091647ddd096a4 - 56ff6d69895a","slots D001 on_item e5405bc28ff8","stays 12e1264dbe1f920f stored 07555fb562c6"],"stay":"12e1264dbe1f920f","title":"Rear derailleur 1","turn":1}', '5de1dfa1589fc19e6d721488dda6ab00bf2e4306f2fdaea0c62d1670bd064cea');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items a3cf47e50577350f - 2cc2b7b9e5ea","slots D002 on_item 4f79f524f247","stays 425ca44c47de8279 stored b62cb5cd0884"],"stay":"425ca44c47de8279","title":"Rear derailleur 2","turn":1}', '722a9bdf0ef82d0d3c9e94c36e33a754d549773598740d3fc4ff1a921ff539a4');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items acc7809e290e3e04 - 2709a94b557e","slots D003 on_item 6de523ac8b4d","stays 01cd58cabab6e5db stored ac04cfdf9cac"],"stay":"01cd58cabab6e5db","title":"Rear derailleur 3","turn":1}', '4a48583b11ae09fd4a755cdb481f89da53473a7ac8341996dc5b70a086d12f24');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items c9d3cca6655b126b - 8e857fd55e70","slots D004 on_item ec423998da46","stays cfa3c3bc0ee14e56 stored e20ee19316bd"],"stay":"cfa3c3bc0ee14e56","title":"Rear derailleur 4","turn":1}', '4a417037a8971ea70069566ffe2047a7ce8a0b7bd6f018d96df188824fcb1430');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items d3572abe86cb62a4 - fc9206f87d55","slots D005 on_item 91ad3faf88d6","stays b304fa594f64940f stored a1c716aa6a04"],"stay":"b304fa594f64940f","title":"Rear derailleur 5","turn":1}', '58b35623d103839ff962805d9fae84269b8d77ab342c99d4ad5eb14bc38131b9');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 6298c9063bad38bf - c41a73ec751e","slots D006 on_item 1fadb568d6a5","stays 8fd301dd7652a1d9 stored c5dd165d9d15"],"stay":"8fd301dd7652a1d9","title":"Rear derailleur 6","turn":1}', '2abb45bc39f3d7ba6c00666131129ee7b89f6ee5373da74b7b0d01c4fadd54c8');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items abe47ee9a2fc71fe - f7c9d08daaa1","slots D007 on_item 536077e3b728","stays b6a8464e816145af stored 061a7c7c371f"],"stay":"b6a8464e816145af","title":"Rear derailleur 7","turn":1}', '449841a41012130284a75ae78fb163d0cce1d80d7b69ee49eeb910e273822c00');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 485220329d6cc0b4 - 675eed831da7","slots D008 on_item facb453cba22","stays 96f4df99a2160eaa stored fec39d1fb15d"],"stay":"96f4df99a2160eaa","title":"Rear derailleur 8","turn":1}', 'e1e1a6ce186def8e39d7abe1040244961252cb7db9367b39e62be318247b9a74');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items d4c8ad7258dd80f5 - c32d890272cf","slots D009 on_item 7434bf04ccf2","stays 3119a19c723df236 stored fff1b4055334"],"stay":"3119a19c723df236","title":"Rear derailleur 9","turn":1}', '6ec736a10f2ed9e15aabf49fed453deb1f393656354821bce37cf436a0e6792f');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items f19d339bd0d1ea67 - b7dcaf8cc3b7","slots D010 on_item 1f8fd3ebaf8b","stays c7265b1bd6a9005b stored 38cd40d684de"],"stay":"c7265b1bd6a9005b","title":"Rear derailleur 10","turn":1}', '49395be0bd2f9ea50a0f97bf1e79fc7d46f84d06851996bfabd84e7b80592b9b');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 795e720265052433 - b25634619287","slots D011 on_item d451255e38b7","stays ac08d41e09a47b7b stored 4a8de65bf8b1"],"stay":"ac08d41e09a47b7b","title":"Rear derailleur 11","turn":1}', '1bbf7474a08be6cbed15d71967e23e57f0820f9735f363449735c21f22a917e1');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 3d70856c042198eb - 87582e7d785a","slots D012 on_item bdbda5bb2b7a","stays 7c6aa8f6bdd3335f stored 54e186214012"],"stay":"7c6aa8f6bdd3335f","title":"Rear derailleur 12","turn":1}', 'ae6277d529835730c8355f11266529a169da9480c6abe82e9a18a55076b56cc3');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 8c80f39c8d8b1937 - cc3bea53b46f","slots S001 on_item 76dcd853e3e0","stays d40a64bad90b93bd stored f00607cd8356"],"stay":"d40a64bad90b93bd","title":"Leather saddle 1","turn":1}', '6d42cbf10164a739401efb07d15e555ef86bf745b0e74d3ba74c43cd79e6c90a');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items f07595149d460b9b - 7df85ad1c5e7","slots S002 on_item 6fb94c47a50d","stays 14a0c5523fd840e9 stored 59237fadb924"],"stay":"14a0c5523fd840e9","title":"Leather saddle 2","turn":1}', '13c894eabb1f626a9a19daacb6329f8af1a1287d34abeb43612e1181d2642913');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items edec53af8fc0826d - a5bd00974ebc","slots S003 on_item e00808332634","stays a57eca6d3ae4fe07 stored dd7bdf1304f4"],"stay":"a57eca6d3ae4fe07","title":"Leather saddle 3","turn":1}', 'a14277cf0cd4da5810242a838df6740e96ad860210a292dc251923b3846134be');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 2c023cfdb891458b - 4465f5e9756e","slots S004 on_item db1aa8005467","stays 46dfc60116d853a8 stored dd648f07f1d3"],"stay":"46dfc60116d853a8","title":"Leather saddle 4","turn":1}', '1ad276dbaebc8d18d6c563ed3d581814636627742a2a2a85c31e3ae046ae750f');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 7816b99a0b2fb8af - 0707000d2389","slots S005 on_item ec548ef84f99","stays 9dd235ed7e2ddd29 stored 557cad1ab5fc"],"stay":"9dd235ed7e2ddd29","title":"Leather saddle 5","turn":1}', 'cb4b3c7f54ddf49fc4e614c449645d26b5e421a21b2462c2be1bb92f5a813807');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 6f40a0d447e1531c - ebe93523055d","slots S006 on_item dc9bc74eb63a","stays b1e7b22d3d04e9ff stored a99f0efd5870"],"stay":"b1e7b22d3d04e9ff","title":"Leather saddle 6","turn":1}', '0f8b67fb968a3f6ebbcd02f705ec6bd065e23fdfb151ba72f51991f82c863a9f');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items b9193ad918b785b5 - 405fc53450f1","slots S007 on_item 075fd8b9fecf","stays 1d584f0eb5723b59 stored 59d572727e92"],"stay":"1d584f0eb5723b59","title":"Leather saddle 7","turn":1}', 'dc76282ffcb61fe297db7e136da3759bf61abd63b85eefe6da928e5ba65a6d72');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 434f057171a33c91 - 8d78a9586eae","slots S008 on_item 39fdb847a4bc","stays c491cf6eaf41759a stored e51db51f8a23"],"stay":"c491cf6eaf41759a","title":"Leather saddle 8","turn":1}', 'adf532b1f2cdc1e10cd0318e161e2cf6812d9b9741fea57624d7f87c0f26a7e0');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 6a80cefb064779b6 - c4e71f211f33","slots S009 on_item 62c79df275b3","stays 7b8a31d59d9b1a33 stored d0407a184f2c"],"stay":"7b8a31d59d9b1a33","title":"Leather saddle 9","turn":1}', 'eb072420ec3498098da786c8a808dfc507930d75d9e3065e718e46f98b8cf0f2');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 79c669fe176dc9f0 - 67bc3b9b487d","slots S010 on_item 1fd8d85fa1c4","stays d307d0d6a9ea8c5b stored c53b2979c045"],"stay":"d307d0d6a9ea8c5b","title":"Leather saddle 10","turn":1}', '02a672bfbc2a6eeadf4fdc8f18839380555379b11b91d864edfb158ab05e38ed');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 1c1fa5c9af1d18fd - 7542b91d0c03","slots S011 on_item e59577c4b2a7","stays 45011786de954150 stored fe5494dbd66d"],"stay":"45011786de954150","title":"Leather saddle 11","turn":1}', '6a2ac2d2cb8960c4ca7b87996529e73764bcfeed39715e5ef733019f12668cf0');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items b9afeb53efaec865 - 4901a449ee5f","slots S012 on_item 9bae442e2436","stays 1174eb64506ac2e1 stored 87e9a052afad"],"stay":"1174eb64506ac2e1","title":"Leather saddle 12","turn":1}', '370f467108be3d49891d7abf7b07c23e40c1cef03d3110b05b5f0771e13b5a92');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 5c40e1b75ccf2bb2 - 95e52261626b","slots L001 on_item 43c5cdfaa8e4","stays d8a71771b4f798b3 stored 710642675a08"],"stay":"d8a71771b4f798b3","title":"Dynamo lamp 1","turn":1}', '277174a55947e39a9fe6fb261f447ba8d0582dcff642c1313be1b7c451f065dc');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 71e1719527ff2470 - 7b77880ff002","slots L002 on_item ea8e77c8b06f","stays 7f6c5dc0ce970748 stored e4d4d43904bc"],"stay":"7f6c5dc0ce970748","title":"Dynamo lamp 2","turn":1}', '83adafe47579ff266ede098934180b7e3296d7366b1e1893edb323e9ffa867f7');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items aff1daa159a4c657 - b56424b3d575","slots L003 on_item c35e4c005cda","stays efec8233775c7788 stored d73dcc2cf9fa"],"stay":"efec8233775c7788","title":"Dynamo lamp 3","turn":1}', '7142d0091d79dc724068eba9de7e62cfa10db7b198010973c7441716e4f46ea5');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 215178eb5d197f57 - bf9009e3154b","slots L004 on_item 70a88e4a366b","stays 54032bf57fe0d9ea stored e281a3c98d0f"],"stay":"54032bf57fe0d9ea","title":"Dynamo lamp 4","turn":1}', '29d27b49b10e6c1d875afd5f4cb6f46c20adf4ce049fad4db78828c586940932');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items d2972a9352e47b31 - 3777d29f81fd","slots L005 on_item 6261d94de1ef","stays 9f07b73f87b8e5fe stored 061f03edfedf"],"stay":"9f07b73f87b8e5fe","title":"Dynamo lamp 5","turn":1}', 'bfc36a92c1ac4f3b9ffd49e16bcbaf255fd971cb4fc8dd4ad39e9c0717132583');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items a0a74f5a49112c8c - 0a924091e9aa","slots L006 on_item b67b470f3637","stays cd375ed08d10435c stored f8ccdcdec410"],"stay":"cd375ed08d10435c","title":"Dynamo lamp 6","turn":1}', '6da07258f07cb6b90f10bcd0ed24d2219289ffefb11b8ae95fa1bd2c585b5ea2');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items d93a506613398c27 - bb4ff3694925","slots L007 on_item 767524982af4","stays a10785537bbcd334 stored 85fee77dc6b6"],"stay":"a10785537bbcd334","title":"Dynamo lamp 7","turn":1}', '7b18c34bf6d29b557585b164af3ff611a6b3e36908a4a3102fdb85c6510a9110');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 7fa5bdff52add0be - bd42a2380a9a","slots L008 on_item b3b2d23a98b7","stays 755e93e909204e47 stored c58f5ddf9a10"],"stay":"755e93e909204e47","title":"Dynamo lamp 8","turn":1}', '9401a1a5c4c98134dbc68a863584aa754152c654c75ab842657579d8da5c3cea');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 7533883dd6f21a9e - 4975090ff566","slots L009 on_item c3139144a3f8","stays 814b47106b55b28c stored 021932ecd091"],"stay":"814b47106b55b28c","title":"Dynamo lamp 9","turn":1}', 'fc1a2e458f2912d809634d6cf60cbf21f6c22af5de61fd470773a2fa2614ce7a');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 871c279a0da7dda5 - a48daa7b746b","slots L010 on_item f8c13ae8aec4","stays eb1798f04deed8f1 stored f7aa227d641d"],"stay":"eb1798f04deed8f1","title":"Dynamo lamp 10","turn":1}', 'e752fb839424b7fdcef6bb946dc90154fe9c3c7aa93c310741558654c6da1513');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items df0337b5f2632a11 - 0ae2b63ea71d","slots L011 on_item 9d01c75c0f89","stays 2eb12cf3dfeec392 stored 9409109863d1"],"stay":"2eb12cf3dfeec392","title":"Dynamo lamp 11","turn":1}', '3c9bd19cc630c8d67048daaed6854a7f7012c220c78e0d78a48c14c1b191872c');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 52648fb8f2321e01 - 1b16b5b5b2f6","slots L012 on_item 5373b19b101e","stays bdbc6f550ac829df stored eaf287784d68"],"stay":"bdbc6f550ac829df","title":"Dynamo lamp 12","turn":1}', '62096e0e0dd11542ef84770b288c9253a5c103da323306c55c91b90bf904ae90');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items c7ec8e53c6f9c2be - c842790fd9b9","slots W001 on_item 17dd342c2f6a","stays ecd66bcd4d65bb05 stored 9d9c1c05aa49"],"stay":"ecd66bcd4d65bb05","title":"Front wheel 1","turn":1}', 'd44ecc7ac291cf87eb9f0f32a49798ef8d61eea86d938be8b14af968deb00d42');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items bce9dc096b696a17 - 14146c242d4d","slots W002 on_item 7ebfb8df41ca","stays 918944a67bc1a1d5 stored 8434e77f6485"],"stay":"918944a67bc1a1d5","title":"Front wheel 2","turn":1}', '8bdc374a3d967ffeed4a8dfb6cbdec631544f6844eab84b473475c3fb82091fd');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items ebdb46cb9f0f39fc - 9326231441ed","slots W003 on_item f84a2674e962","stays 5113dd33b68d0bcc stored 8f2189df1d62"],"stay":"5113dd33b68d0bcc","title":"Front wheel 3","turn":1}', '56207bdf314f4bc12f503f3a874496a1154ede48ebef9670b57a525c7ffac2f3');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 4f91119b0ab037a4 - 5a28af2e1654","slots W004 on_item f45ed94fd55a","stays df943b0e58a16107 stored 5dd80919c0fa"],"stay":"df943b0e58a16107","title":"Front wheel 4","turn":1}', '0392ed266b63f542f8a34b4a51f9f9c270f8bd827ea817323440468f3da8304b');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 39b179332b2e5247 - 758e1638091e","slots W005 on_item a1fdfb2c692e","stays 58e4745d2f706648 stored fdf4eeec7d28"],"stay":"58e4745d2f706648","title":"Front wheel 5","turn":1}', '4fa9443bd4e4201ea5d2dd9ea3ee150712536c2d29b65f27a4b5f900b07473d8');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 94b49a5f0c417719 - b91e0d68360f","slots W006 on_item 3dd6244f0bee","stays b068abdf48167c5e stored f77524d59152"],"stay":"b068abdf48167c5e","title":"Front wheel 6","turn":1}', 'c6dd628b49036dc1b1fd43a3df559db109aaf0390b7754925780d22017c1e58e');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 8aefb4a6c9731306 - f4ea321dcc67","slots W007 on_item d52463b699e2","stays c4ee795be60158a0 stored 25a8e1e29efe"],"stay":"c4ee795be60158a0","title":"Front wheel 7","turn":1}', 'b85e28556c9e2419b7e36ca0d5d9bd1eda990953ed29e8591e509484342f6bd2');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items e5425f9560052c75 - 0a0e297412ef","slots W008 on_item 2e167460fb16","stays ec683ad19ef84228 stored cdc986f38797"],"stay":"ec683ad19ef84228","title":"Front wheel 8","turn":1}', '5a19d5ebf92344b1178f2b728bd5e2df73d6c13660ac8e4cb6fbd94ca757cca7');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items bd9ee02bf06b6a8b - bcd12371392d","slots W009 on_item 597fc2f4b56e","stays 0312e1735403c281 stored b62d867889c7"],"stay":"0312e1735403c281","title":"Front wheel 9","turn":1}', '294963ade8dce6f46e4befca1ff114caacf883a011f6467ab77ee801dca44200');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items ad89a6b271029d25 - c25ccad6853d","slots W010 on_item 7d0365c2d2de","stays 45649d454bedf4d0 stored a94293da6972"],"stay":"45649d454bedf4d0","title":"Front wheel 10","turn":1}', 'fe169e77bd4e6b2cab3bf68932cbbb76e077b6418764a8fbc5b4cb199edd5bc5');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 0ddebb001523c146 - 4f4e7c89abbe","slots W011 on_item d3a26b640d71","stays a641b9d8ce3487ea stored 13b4a20f9f24"],"stay":"a641b9d8ce3487ea","title":"Front wheel 11","turn":1}', '50e6b4a8d82f2ba5ed3a3219559536a465e1502d4dd629d5f918ea4ec1eb0e24');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 0eb4a7e730742f12 - 2f8e942ef441","slots W012 on_item ac10bfb906d6","stays 8d729bf3bfd73dff stored 217b153a8044"],"stay":"8d729bf3bfd73dff","title":"Front wheel 12","turn":1}', '96bf2cf4cbc4f1b56eb70b033fe64900b241969e81db16c8ce67bbbfe3e57824');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'boss', '{"lines":["ad0840bd0a7d5265"],"now":["lines ad0840bd0a7d5265 cancelled 63ab3c22fed1"],"number":"B-08","order":"0c9186e515288866"}', 'fd84413790e6c58423bbcdb1e1c3aea395c14bdc0a1ea3cb8036fd40033f15ba');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items f6e2295f69ba0be8 - 0caedd23f5a0","slots D013 on_item 69b6f1c92d5d","stays 314c3ce39daf4c0d stored 679e7ceda609"],"stay":"314c3ce39daf4c0d","title":"Brass bell","turn":1}', '3b4b5fbfb22fcb69522e3c5eb37d1b257dc0ca5e53cd69dfa7b57f5f061cc9e5');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items a3cf47e50577350f - 27c9993359c7"],"stay":"425ca44c47de8279"}', '42ac1ab5d9fee990ebfd0dc8b76da66d8d898a2d15388cf6f18d352c50c2c0f4');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays d307d0d6a9ea8c5b withdrawn 58a6d49bbeba","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"d307d0d6a9ea8c5b"}', '8bf3fa71cb1eb4ac25c56d2435ec6604ecf056ef850a30c82b83ff8aa1030d2d');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays df943b0e58a16107 withdrawn 358562b810cd","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"df943b0e58a16107"}', 'a5761b8cf25a939e6ab48e54a5ea2fa4298baed47f3b972822a9032d84da1c11');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"497cd06c1863e69a","now":["stays 7b8a31d59d9b1a33 moved 5d0f26994a21","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 497cd06c1863e69a stored a2d681c9d221"],"stay":"7b8a31d59d9b1a33","to":"S013"}', '9463ab21fef0d31c0582bad98962541e6c9735b6fd2621169e9f3c72e661add2');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items f7091647ddd096a4 - 224befb4cf58"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"12e1264dbe1f920f"}', '7be774a714406734581aac0d0d98ab7cdf241723130892b256d886b2b74268a7');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 8c80f39c8d8b1937 - 3197ab47dbb8"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"d40a64bad90b93bd"}', '8f5458209be75f09f8b1ee7e4ab88b7b84f8f50c9a6f15df617300ab1e368d55');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"gone_days":3,"hand_overs":false,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"slip_closes":false,"zone":"UTC"}', '55dba75ec6be11abb954c7414b1d3ca2b5e6444086c9f6596876f62f9d11f382');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'cde2050341e4e11920abcfe5f8e95de5920f5f7f66e165f5a9203a9507daa6fc');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'df5a78281ac82de1040c2c3185e4a3f73d0ca818cbf498e4ac3a727ab3e4ee0f');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'dd5e139e72945edd620022e37669aef8b8930ce75c8eae9fdd2950b0b088a960');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '4e21a1be73f4e87667d9c22b74b254af89ac74047123f34463a0d9bcd458a7f9');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:33:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"dd4a52873228adcd","reference":"W001-01E","stay":"ecd66bcd4d65bb05"},{"hold":null,"line":"3323145b3b0f4cd0","reference":"W002-016","stay":"918944a67bc1a1d5"}],"now":["orders 7750b56a20c6b108 - cfac8e2766ed","lines dd4a52873228adcd waiting 7a7b7a7d9147","lines 3323145b3b0f4cd0 waiting cedca452690b"],"number":"B-01","order":"7750b56a20c6b108"}', '9dd76ff7bc92606252d15b51234a1e1835f0729241e29b3312b0c6a6d0a770f5');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:36:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8454dab142c2126e","reference":"S002-013","stay":"14a0c5523fd840e9"},{"hold":null,"line":"ba2fc532d961b97d","reference":"S003-01W","stay":"a57eca6d3ae4fe07"}],"now":["orders 8f59f38a2c43ffb7 - ccc0e2e38db9","lines 8454dab142c2126e waiting 523792129be2","lines ba2fc532d961b97d waiting 8ecf1e32533f"],"number":"B-03","order":"8f59f38a2c43ffb7"}', '8b2dcd392cc4d91add783650dc54c99c6a08b5b4288f02e9b2523548b69aab8e');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:39:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a5380cbc7870716b","reference":"S004-01O","stay":"46dfc60116d853a8"},{"hold":null,"line":"ba629f148c873e25","reference":"S005-01G","stay":"9dd235ed7e2ddd29"}],"now":["orders 8e0d91602f918178 - 48b9004b5f5d","lines a5380cbc7870716b waiting 39085e3fc3f4","lines ba629f148c873e25 waiting d36bc0ff7b57"],"number":"B-04","order":"8e0d91602f918178"}', '3e8cae35c917a461bbb1b0b5059cf2669791ebfe090077e9854d80e6a196943f');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2416470344779694","reference":"L002-017","stay":"7f6c5dc0ce970748"}],"now":["orders 76a20e60b8367fad - 9ba815189429","lines 2416470344779694 waiting e1a615ee5430"],"number":"B-05","order":"76a20e60b8367fad"}', 'b4a328decda5a0c629372a7216c05798f4ad7dda71613952ef9dc77d62850e3c');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:45:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d5b985a7d319a2d8","reference":"L003-010","stay":"efec8233775c7788"}],"now":["orders 5c3b4246260a5e06 - 663295d43bc1","lines d5b985a7d319a2d8 waiting 5008f1b4ead4"],"number":"B-06","order":"5c3b4246260a5e06"}', 'f85bc23fd29f477b1bdd0cd1453d015f85f2b7c7914f23eb8b0d3d15d448301f');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:48:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"133fa48088b2dc86","reference":"L004-01S","stay":"54032bf57fe0d9ea"}],"now":["orders 9120315cfaa31aa5 - 3e9ffdbe9b4f","lines 133fa48088b2dc86 waiting 5ca43487282b"],"number":"B-07","order":"9120315cfaa31aa5"}', 'e95505e66ad3d514769fbc88919e0df91d15aa6799804d3240ed0257e0a1386d');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:51:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"ad0840bd0a7d5265","reference":"L005-01K","stay":"9f07b73f87b8e5fe"}],"now":["orders 0c9186e515288866 - 3bbb7f2f117d","lines ad0840bd0a7d5265 waiting 3d6af2b6ebbb"],"number":"B-08","order":"0c9186e515288866"}', '55b36a17e98342d3efcacdd8bc51cd2750cca9713a9ca268ac8ea4c55ef80c4e');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:54:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c85d8ff484ecfb22","reference":"L006-01C","stay":"cd375ed08d10435c"},{"hold":null,"line":"315eacbba2c94ec6","reference":"L011-010","stay":"2eb12cf3dfeec392"}],"now":["orders e3d3ca10af4dcb07 - 27ea7b67e26c","lines c85d8ff484ecfb22 waiting 13151f97fde0","lines 315eacbba2c94ec6 waiting 4dc4461ffb2f"],"number":"B-09","order":"e3d3ca10af4dcb07"}', 'ee905411dd92cd04abdefecb747f94b521e4c1156f0fe91bb28dee191f952be2');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:57:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"aa86e62d94ea2f36","reference":"S006-018","stay":"b1e7b22d3d04e9ff"}],"now":["orders ac2c443e698f5520 - 0ef1dec60ebc","lines aa86e62d94ea2f36 waiting 6da750c9c096"],"number":"B-13","order":"ac2c443e698f5520"}', '866f2994e0584e67c52cf58d3fe550d074b7d0c031037d784d7807293b60ed39');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:00:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"359cf14b1a25d04b","reference":"L007-014","stay":"a10785537bbcd334"}],"now":["orders 852f7f8126bec2a1 - 9c122ad9fba5","lines 359cf14b1a25d04b waiting e91c1407487d"],"number":"B-17","order":"852f7f8126bec2a1"}', '9d32dffe9af967b0ed046e839215c730ffa4dd1b9c0e9b0e2d7e042756465eb1');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:03:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0e2f1bc5cb0b0208","reference":"D009-01B","stay":"3119a19c723df236"}],"now":["orders eec761a2419c12bf - e412c09d7766","lines 0e2f1bc5cb0b0208 waiting 6ce6f5050be3"],"number":"B-18","order":"eec761a2419c12bf"}', '41ee904f765101bbefb0c09a585f44a707c580fdffcfa44eb7e886f57c5dbbe6');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:06:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fd807a22688274fe","reference":"W006-013","stay":"b068abdf48167c5e"}],"now":["orders c16addbc535441f3 - e6b1de9b4e58","lines fd807a22688274fe waiting 75958413c11d"],"number":"B-21","order":"c16addbc535441f3"}', '7dd5d6501742614a082fae4fee0fc4862542b595a72a18b274420658cde83dbb');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:09:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"036ed9c15ae238df","reference":"S007-01Z","stay":"1d584f0eb5723b59"}],"now":["orders 2f9d781f2fe379d5 - fb368b3878c1","lines 036ed9c15ae238df waiting c6062bca92ea"],"number":"B-22","order":"2f9d781f2fe379d5"}', 'dd01ae594c11ca31c80366a0c64eee5e46602966d5330b399866cee55d9cd968');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:12:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"17e636670342df4a","reference":"W007-01W","stay":"c4ee795be60158a0"},{"hold":null,"line":"6ef440bfecb7e765","reference":"W008-01O","stay":"ec683ad19ef84228"}],"now":["orders d352ac1e7c3a6f1a - 2e11fe46aa1c","lines 17e636670342df4a waiting 0698d38768e3","lines 6ef440bfecb7e765 waiting 25a8d20a3207"],"number":"B-23","order":"d352ac1e7c3a6f1a"}', 'd89113c87d90ddf7d7c12ac8f53d98ec190c566b89fc274254295896c346813b');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"84e61f029a1e404e","reference":"D008-01J","stay":"96f4df99a2160eaa"}],"now":["orders d8cb696ff4cabbfc - ff29d7a9e935","lines 84e61f029a1e404e waiting 07e5d9b8ff9e"],"number":"B-26","order":"d8cb696ff4cabbfc"}', 'e798997a82b4757524fa1f723b6bb9e02426b308fe7a1726248f386108b7fb95');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:18:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"90c1bcb792d80747","reference":"D003-01U","stay":"01cd58cabab6e5db"}],"now":["orders cd21c6ad7d4d4257 - 904156265066","lines 90c1bcb792d80747 waiting df0c4d4bb7ad"],"number":"B-30","order":"cd21c6ad7d4d4257"}', 'f07a4b0097bb8489bef6e7631c8abaf7919a8719f1942385fba0cac081bff065');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:21:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6f87735b6cf69541","reference":"D005-01E","stay":"b304fa594f64940f"},{"hold":"unknown_code","line":"39d5fd60756f80fb","reference":"Z999","stay":null}],"now":["orders c26b0e91acc61f76 - 6b803627904b","lines 6f87735b6cf69541 waiting 05850f624d4b","lines 39d5fd60756f80fb unbound 8041b4ef800c"],"number":"B-31","order":"c26b0e91acc61f76"}', '489543e43e2b9c849e40debd7c327c8ced1816937e8ce47f0db5209307f5c0e5');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:24:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f7961984d2e6e19b","reference":"D006-016","stay":"8fd301dd7652a1d9"},{"hold":null,"line":"1435578557c145d9","reference":"D007-01R","stay":"b6a8464e816145af"}],"now":["orders 4d26fcb8809e8da8 - 8d933477e801","lines f7961984d2e6e19b waiting 3f8767858382","lines 1435578557c145d9 waiting 119434075a19"],"number":"B-32","order":"4d26fcb8809e8da8"}', '48be259060745e07a74f58750883acbc23d4ccf0f1ac2fa1b7e3cc5fc4baad42');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"1435578557c145d9","reference":"D007-01R","stay":"b6a8464e816145af"}],"now":["lines 1435578557c145d9 waiting 8a91ef20b8b3"],"number":"B-32","order":"4d26fcb8809e8da8"}', '8e27a3d8ea2303ae6010855b6a6b25725e42c1d59667ff89b4d4a8fc59c291a1');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:30:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"05d8f5d077ac6768","reference":"lamp","stay":null}],"now":["orders 251d6ba6823387e9 - bbd6dc5fb81e","lines 05d8f5d077ac6768 unbound ebf70b009422"],"number":"B-33","order":"251d6ba6823387e9"}', '33e4f07fb67280199298223c071aad7e638d808a6c47647420e1cda98ce44684');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:33:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"f6292516b8fd30b4","reference":"D006-016","stay":null}],"now":["orders 99d7387c50f90ba7 - 97aeaa668f4f","lines f6292516b8fd30b4 unbound 77b1154326e8"],"number":"B-34","order":"99d7387c50f90ba7"}', '76f5f4fdeaa046119f6279af1c8ec972c5fe7c593aa90173a643aa7ff5cbce47');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:36:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"18434d58f85d90e7","reference":"W004-01J","stay":null}],"now":["orders a4978d27409d9731 - cdc8a3a48cca","lines 18434d58f85d90e7 unbound 571a83c999da"],"number":"B-35","order":"a4978d27409d9731"}', 'a8c2fbc47ba3365eedcd32270565281bd8388c69e4cf7b611d21d70d937902f8');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:39:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"4c3f293a5bfe4b35","reference":"L015","stay":null}],"now":["orders 0be38dcdadf9d23f - 97c85d6819ba","lines 4c3f293a5bfe4b35 unbound 11fc0645f5b6"],"number":"B-36","order":"0be38dcdadf9d23f"}', '00732a824840cf7da2a7ac890679005449af21e6f7879442c335822ed961bd52');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"f1bc9c75e75c8ba1","reference":"W005-01B","stay":"58e4745d2f706648"}],"now":["orders cb80bcf03f5e9d64 - 74c5e118a7c3","lines f1bc9c75e75c8ba1 waiting c4fb8c45f010"],"number":"B-37","order":"cb80bcf03f5e9d64"}', '6590b02f25d1d2b080c089f5e74ca540da1a5e3cdfd545bcca1dc66ccac3948b');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:45:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"f1bc9c75e75c8ba1","now":["lines f1bc9c75e75c8ba1 waiting 86581cf347ef"],"stay":"58e4745d2f706648"}', '7ed91821e14a71d807fdbeac9ae6071af0221dc58d94b42b229d0ddbf30e776a');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:48:00.000000+00:00', 'doubted', 'boss', '{"doubt":"8ce9afaf414b7160","doubt_kind":"not_this","item":"d93a506613398c27","now":["doubts 8ce9afaf414b7160 - 6cbd9d988fcb","lines 359cf14b1a25d04b waiting f24cc2ee00b7"],"words":"Another lamp, by the photo"}', '9019d5219aa5025995c6a3a87043f1c89aed2e8d891a1cd59a9ec3feb5a7dd75');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:48:00.000000+00:00', 'held', 'boss', '{"line":"359cf14b1a25d04b","why":"Another lamp, by the photo"}', 'a724d4b7f7381e76e309165136536ed2238fc947114dddcaef6a6dcf37dc7714');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'boss', '{"lines":["fd807a22688274fe"],"now":["lines fd807a22688274fe cancelled d8bec77df9ef"],"number":"B-21","order":"c16addbc535441f3"}', '37fdd92d70f33f943794f3871e478bd4e9838a61bf6166a900774ade3f540598');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:57:00.000000+00:00', 'revived', 'boss', '{"line":"fd807a22688274fe","now":["lines fd807a22688274fe waiting 75958413c11d"],"stay":"b068abdf48167c5e"}', 'a4c3cf2e80ed52977171dfc2a851414e85a3a6e8bfd6728f13e8f85c96a2a030');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:00:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"afdae9a850f36201","now":["stays 96f4df99a2160eaa moved f9af6d65d66b","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays afdae9a850f36201 stored f5c42e6b5e9a","lines 84e61f029a1e404e waiting de9cfda0f9f8"],"stay":"96f4df99a2160eaa","to":"D020"}', '1285e0166476c8aefbc42a5bb7f800c4a1c0e58c288cfb8177e774e66f7e330c');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:06:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"ba43f6e30e784973","reference":"S012-01O","stay":"1174eb64506ac2e1"}],"now":["orders 281e3bfbdbf72f0f - a0d5ebfd4f46","lines ba43f6e30e784973 waiting 37bd0891ffef","orders ac464d48630d0868 - caae72ff3e91","lines b80b5c079fe5f549 unbound 662a08882fb8"],"number":"F-1","order":"281e3bfbdbf72f0f"}', '120f01428e90fb3a3f2b61dc9f55c56d8ffa05bb7e2fb8f6a1bb67fa536900db');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:06:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"b80b5c079fe5f549","reference":"","stay":null}],"number":"F-2","order":"ac464d48630d0868"}', '0454f55e98638f9f72cb05287d72b0d792863e82baec1816b55e01d02cb348db');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:09:00.000000+00:00', 'round opened', 'boss', '{"lines":["dd4a52873228adcd","3323145b3b0f4cd0","8454dab142c2126e","ba2fc532d961b97d","a5380cbc7870716b","ba629f148c873e25","c85d8ff484ecfb22","315eacbba2c94ec6","aa86e62d94ea2f36","036ed9c15ae238df","17e636670342df4a","6ef440bfecb7e765"],"now":["rounds 479ad84ca37315f2 open f42e899d6895","lines 8454dab142c2126e waiting cbd28133122d","lines ba2fc532d961b97d waiting b065e35b52de","lines a5380cbc7870716b waiting be15658a419f","lines ba629f148c873e25 waiting 3cedbd7f329d","lines aa86e62d94ea2f36 waiting 90de0145334d","lines 036ed9c15ae238df waiting b2c5ea8baeae","lines dd4a52873228adcd waiting 88e3db860315","lines 3323145b3b0f4cd0 waiting 6fe3f807c216","lines 17e636670342df4a waiting 84af5d5737ea","lines 6ef440bfecb7e765 waiting d7bee64659d2","lines c85d8ff484ecfb22 waiting 68660cf0e07b","lines 315eacbba2c94ec6 waiting 1a63739228db"],"round":"479ad84ca37315f2"}', '5665e091bf00b64ffdb20e46ae91ac2ae899085fc62d9ad822bcc66ae18dda87');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 78068e8f8c05","scans free-D004 - 8bcd1bcfa261"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'a769694f827fbc9bc64a3585a2dbdd082845998ad31e3473cf63b5d503cc9849');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:15:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"dd4a52873228adcd","line_state":"picked","now":["slots W001 on_item a687bd9d13ec","lines dd4a52873228adcd picked f38fc5f4401e","scans pick-W001 - a6cd1e68e80a"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'abd696d2c7298fdd00fcc560813e99bbffbc1f3b7639c88ef8a52fb679fb3be1');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:18:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"3323145b3b0f4cd0","line_state":"picked","now":["slots W002 on_item 228024138a1b","lines 3323145b3b0f4cd0 picked eaaa917357db","scans pick-W002 - eef8e5612204"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'f770ab9eb9fde8febad2d864531b19f789456957bcc84f77fda33ebbae9ed1bb');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:21:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"8454dab142c2126e","line_state":"picked","now":["slots S002 on_item 3aa8f73b30cf","lines 8454dab142c2126e picked 2547b41ae274","scans pick-S002 - f4c0375c39a1"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '4811447e25c23264d4e8dfce6a59b05f7f32d6d8a057a3b558c05b43319c2a09');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:24:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"ba2fc532d961b97d","line_state":"picked","now":["slots S003 on_item 5d0dbf8cd07e","lines ba2fc532d961b97d picked 9314d76f3405","scans pick-S003 - 369137a1c209"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '4caa746d54e5649a717585845a95e00034cb8f3a07910f0e6ec58f1e42d8f465');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"a5380cbc7870716b","line_state":"picked","now":["slots S004 on_item 0f628d8bf9fe","lines a5380cbc7870716b picked 4c19c7311e0f","scans pick-S004 - c2944db77c18"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '2c0595f1c54ca8a69e0806ccf84f7c8a1b3143603a724828e8335dd7635d4496');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"ba629f148c873e25","line_state":"picked","now":["slots S005 on_item 37b8196bc6e7","lines ba629f148c873e25 picked 94e233f834c1","scans pick-S005 - b97434761f1b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'ba9dd872f52f47f5d96104731877730a367d7aff288253a52c49c06218721adb');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"c85d8ff484ecfb22","line_state":"picked","now":["slots L006 on_item bb26d09c7cfe","lines c85d8ff484ecfb22 picked bcd6900799c0","scans pick-L006 - 2c8bbf2237c8"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'ce325a3eef0130b55fc7d2ee3711810bd623df539134ffc9063468ca874fdfbd');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:36:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"315eacbba2c94ec6","line_state":"picked","now":["slots L011 on_item 87b3047500ca","lines 315eacbba2c94ec6 picked 3ecf2adba175","scans pick-L011 - 772e1d907a4b"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'dcc4491790d76a3c7b271a694a489073876318d0693b71a7bb7d63920866ebcb');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:39:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"aa86e62d94ea2f36","line_state":"picked","now":["slots S006 on_item ec26a31a07c4","lines aa86e62d94ea2f36 picked a116f9aef4ca","scans pick-S006 - f28c1854d833"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'f79a88aa204239d01a41701325c6f5ec871df5c391db99550c47d01bac741239');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:42:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"036ed9c15ae238df","line_state":"picked","now":["slots S007 on_item bc9908196872","lines 036ed9c15ae238df picked 18b04bda3851","scans pick-S007 - 44f6732e7dc8"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'c6d745bff6b9ff37e66b886208f409b42ac4d3eb4a941cf7b77744c39ef62886');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:45:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"17e636670342df4a","line_state":"picked","now":["slots W007 on_item 8b86deebd17c","lines 17e636670342df4a picked b9111e8b4df7","scans pick-W007 - 587690f7914d"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'e2418735a89e420dec33f33e37ace970b82a916aba76c34dc3d9d3220275c2bb');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:48:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"6ef440bfecb7e765","line_state":"picked","now":["slots W008 on_item f6a66645f77b","lines 6ef440bfecb7e765 picked 2667aaaeb5c2","scans pick-W008 - 1317b4433a3d"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"479ad84ca37315f2","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'd85eb397df2d51660c37af8281611f349acbd6e06fa66989e1001283b006702b');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:51:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"6ef440bfecb7e765","line_state":"waiting","now":["lines 6ef440bfecb7e765 waiting d7bee64659d2","slots W008 on_item a8eafe37eeb9"]}', '057d9f2971bb649c9f08d30bf2b1806d4a13d1deb6ff0e034cfd1aaa68ba2c0f');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:54:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 479ad84ca37315f2 closed fd286dc12049"],"round":"479ad84ca37315f2"}', 'dfb4c6ad380f47be09dca347e0a3c4be8c1ddf4a5383bf19a87913b0cfd0bd74');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:57:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 1650ab7c7eedd80c open 25b7bbcc881e","orders 7750b56a20c6b108 - f1ff177a9c25"],"orders":["7750b56a20c6b108"],"parcel":"1650ab7c7eedd80c","table":"main"}', '7344486dbe55ea799af4f338ab8a71f0051a1ba3525d753b46bf39be215d00bb');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:00:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"8454dab142c2126e","line_state":"picked","now":["slots S002 on_item 4e31009f6c95","scans other-S002 - ec731fc5a13d"],"order_number":"B-03","parcel":"1650ab7c7eedd80c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '783af8ee2cfcc157b3a8cb3691c7b16c3fbf20250e6f11d772e728ad958cf824');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:03:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"dd4a52873228adcd","line_state":"packed","now":["lines dd4a52873228adcd packed 7d5079d4c0f7","slots W001 on_item 6859086a1b33","scans pack-W001 - 139599bf085b"],"order_number":"B-01","parcel":"1650ab7c7eedd80c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '8fce224076c88c1bf1655cbef146dda8ccbf34fdb850fd8d394b4e3dc6024cc3');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:06:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 3323145b3b0f4cd0 released 64713e38755e","slots W002 due 0a6324e74986","lines dd4a52873228adcd released 14fae32d9cf1","stays ecd66bcd4d65bb05 shipped cd35785267bc","slots W001 due e7526fd3bf26","stays 918944a67bc1a1d5 shipped 075aa1bca321","parcels 1650ab7c7eedd80c closed e11660896b7b","orders 7750b56a20c6b108 - cfac8e2766ed","scans pack-W002 - 99e2d35c67dc"],"orders":["7750b56a20c6b108"],"parcel":"1650ab7c7eedd80c","released":["W001","W002"]}', 'dd6cc2a1b771695f76d19f45745727d13545f5ba3df3e5f61d3a8bef1d3fbe6d');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:06:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"3323145b3b0f4cd0","line_state":"released","order_number":"B-01","parcel":"1650ab7c7eedd80c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'e55da10de6fff114048fd252acc441b4433e37103c8b48de52880f9debdd1eaa');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:09:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"dd4a52873228adcd","line_state":"released","now":["slots W001 tray 0a0386ae5d8a","scans back-W001 - 3033eca758a9"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c9a53e8da3597e57ba74bcbaa254ea0949ff3cd8ed6c27ccc793fb1f80c8d311');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:12:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items c882bca374741ee5 - 27cd9172d008","slots W001 on_item 4bac4e5a272f","stays 66c2b741cfec7018 stored aa8cb9f83db0"],"stay":"66c2b741cfec7018","title":"Rear wheel","turn":2}', 'cc3eafc10d3f7f290e6941b4075e98ee961ea5277fa87fe2d92b029b0b30e4fd');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:17:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 833053395e8a"],"parcel":"1650ab7c7eedd80c"}', 'bbe2a82a31b3f2fc9af63f1a8c24bc1955ee0b7b86a62f4aeb3eaadd8099a926');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:20:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels f3ce056280888d70 open 3e0704ba0e51","orders d352ac1e7c3a6f1a - 47153aa33f3a"],"orders":["d352ac1e7c3a6f1a"],"parcel":"f3ce056280888d70","table":"main"}', '54cea5cf8092b132f647d59ae18e08869f154dff7dade7e4b11804195c4dd16e');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"17e636670342df4a","line_state":"packed","now":["lines 17e636670342df4a packed 05c07ffcca83","slots W007 on_item 8cc9da624295","scans pack-W007 - 7314856a0e42"],"order_number":"B-23","parcel":"f3ce056280888d70","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'a06288021230c62a5d579f5c65995ed2b5cb166a9a8feb9f5ac7dcd4bc38ee61');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:26:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 17e636670342df4a released e97f764729ff","stays c4ee795be60158a0 shipped 6cb9e1498ccf","slots W007 due 0e000ccb6066","parcels f3ce056280888d70 closed 87671c9da1f0","orders d352ac1e7c3a6f1a - 2e11fe46aa1c"],"orders":["d352ac1e7c3a6f1a"],"parcel":"f3ce056280888d70","released":["W007"]}', '88f3ad1986b4e025b47f9507e82bf6febbf4b4a7c23365826388acd7a02733c4');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:29:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 17e636670342df4a packed ca914c46e24d","stays c4ee795be60158a0 stored 25a8e1e29efe","slots W007 on_item 898f18fb42f9","parcels f3ce056280888d70 open 5c49c8bdcbf7","orders d352ac1e7c3a6f1a - 47153aa33f3a"],"orders":["d352ac1e7c3a6f1a"],"parcel":"f3ce056280888d70"}', '3c6b3cecde8c2270873c2d54578499a0bc1942deda8bfb8e286ecda1a29ba739');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:32:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 17e636670342df4a released e97f764729ff","stays c4ee795be60158a0 shipped 9bacad91d9fe","slots W007 due 0e000ccb6066","parcels f3ce056280888d70 closed 5aa0dfd52eb4","orders d352ac1e7c3a6f1a - 2e11fe46aa1c"],"orders":["d352ac1e7c3a6f1a"],"parcel":"f3ce056280888d70","released":["W007"]}', '9143145996da50f07a5149890e4472df4f386503b5f05a28b79a23349717826e');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:35:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 34425b3c88f5209c open e60672431542","orders 2f9d781f2fe379d5 - 56d2a0341306"],"orders":["2f9d781f2fe379d5"],"parcel":"34425b3c88f5209c","table":"main"}', '2ef09468bd1a92a3023c8b08b8573f8bc13f0f1ce5dfe2fdde27485035b895be');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:38:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 34425b3c88f5209c dropped 0fe6ce7ee496","orders 2f9d781f2fe379d5 - fb368b3878c1"],"parcel":"34425b3c88f5209c"}', '07b1dd428e33d74da448213704be6818e0464a88dea672d3b855c34e6ad69215');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:41:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels b47afb6ffff087b6 open c19df0825149","orders 8e0d91602f918178 - 31ac99c25abc"],"orders":["8e0d91602f918178"],"parcel":"b47afb6ffff087b6","table":"main"}', '77393c31c51b8decebee742daa83fe1ee3e6cb9e39f7a92fb0c9c1e4bd101386');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"a5380cbc7870716b","line_state":"packed","now":["lines a5380cbc7870716b packed 033af7926d1e","slots S004 on_item bcb3f0478cdc","scans pack-S004 - b94109d058dd"],"order_number":"B-04","parcel":"b47afb6ffff087b6","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'b59648b936947a9b47edc005036f162f190829575c81a99ed9e0c40928841023');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:47:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels b47afb6ffff087b6 aside 59bee51b8505"],"parcel":"b47afb6ffff087b6"}', 'df16558dc35159b0a69608c3685dd667cab87146f27fce24bc700e75b743b9be');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:50:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d3ec0541840873e1 open be16e431c106","orders e3d3ca10af4dcb07 - 2e19fade9bfd"],"orders":["e3d3ca10af4dcb07"],"parcel":"d3ec0541840873e1","table":"second"}', '15062f3a3fedc12ee1aa15f0042bec41705532cb4a6519f9028814b8dbd249bb');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"c85d8ff484ecfb22","line_state":"packed","now":["lines c85d8ff484ecfb22 packed d84c1870a8eb","slots L006 on_item 89bffe003f9c","scans pack-L006 - d49a371e7d2b"],"order_number":"B-09","parcel":"d3ec0541840873e1","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'b674ef8fb11a18ba13762508112ee13cce5db38d5cfc2fa410830663cb97d430');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:56:00.000000+00:00', 'cancelled', 'boss', '{"lines":["c85d8ff484ecfb22","315eacbba2c94ec6"],"now":["lines c85d8ff484ecfb22 packed 21fd8666a7ee","lines 315eacbba2c94ec6 cancelled 35754a27018b"],"number":"B-09","order":"e3d3ca10af4dcb07"}', '7292e0269d0c36cceefe6d4d949d90151235a3aa388df14fe2940a960bc79201');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:59:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d0a25bdfe9ff9cf7 open aab81b38302e","orders 8f59f38a2c43ffb7 - d08be4de9def"],"orders":["8f59f38a2c43ffb7"],"parcel":"d0a25bdfe9ff9cf7","table":"main"}', '422cd25d26f3315700dc201a55261c7c2799f3dd8e430667c541c78152904492');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:02:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"8454dab142c2126e","line_state":"packed","now":["lines 8454dab142c2126e packed 9a483775fadc","slots S002 on_item 984219c7c36a","scans pack-S002 - b7ff833b31de"],"order_number":"B-03","parcel":"d0a25bdfe9ff9cf7","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '47d03c5e0f1831e7eefd1eda88e88b87388a68e9d58316126c7275077e1dd834');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:05:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"aa86e62d94ea2f36","reference":"S006-018","stay":"b1e7b22d3d04e9ff"}],"now":["lines aa86e62d94ea2f36 picked 6a9f872cf26b"],"number":"B-13","order":"ac2c443e698f5520"}', 'ce9be7088753d9c4b183e06ac8a8a44319d393bdf398cc99183b01ab7f479829');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:08:00.000000+00:00', 'round opened', 'boss', '{"lines":["2416470344779694","d5b985a7d319a2d8","133fa48088b2dc86","84e61f029a1e404e"],"now":["rounds 104c4606a16ad05f open 11aefad4bee6","lines 84e61f029a1e404e waiting c771faf3a454","lines 2416470344779694 waiting 029679b86a5d","lines d5b985a7d319a2d8 waiting 03cce84c5308","lines 133fa48088b2dc86 waiting 0aa417ef5af4"],"round":"104c4606a16ad05f"}', '266b0efb38d829e199fc69b562ce3cb677f20c430091c63c38d500b766b225d7');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"2416470344779694","line_state":"picked","now":["slots L002 on_item a08fa11a3668","lines 2416470344779694 picked 7b7d9d01bcaf","scans pick-L002 - ed3ac83f8561"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"104c4606a16ad05f","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'b8856eca65a9205a4c571d784f63286a34df4c304a0da0b287a5a06370520860');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:14:00.000000+00:00', 'short', 'boss', '{"line":"133fa48088b2dc86","note":"Not in its bin","now":["lines 133fa48088b2dc86 short 3d627c8cf44f","doubts 7e9d10016f920cad - 59ed92156a6c"]}', 'afbb615a8968a8170c80063717428cd8a13582e98682b0ece2a47103f1ff4a16');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:14:00.000000+00:00', 'doubted', 'boss', '{"doubt":"7e9d10016f920cad","doubt_kind":"missing","item":"215178eb5d197f57","words":"Not in its bin"}', '0873d092aee00735cd410bd0545d5216e22daff4c432688948fba61cd3d4a079');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - a69c50a74baf"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"104c4606a16ad05f","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'b79812e29227fc6a78050f0b0a9c027ce61b687e59d2c1db573acd54e5db8fc8');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 26994c91e5eb"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"104c4606a16ad05f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'a757226fbe045b76bb6bd31581784c5fcfb75a537fea8d85fdafc78242aa74b9');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 0579c0eed9f2"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"104c4606a16ad05f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '1b1eb194e1486548ef0c65c7b252ba3bcff82fe0d467f5f4c4df9ed631538d58');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:27:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '4a692799497ee3871712b9545923e487082d3e87201c07f3bb8911d288049c1f');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:31:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '16581138eabb053a7560d30a72d3de774f559075b82281ba1469d2b36cb28f8b');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:34:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"00213c9384ec4275","reference":"D001-019","stay":"12e1264dbe1f920f"},{"hold":"already_sold","line":"0e9c28aa1d9ad7ef","reference":"W002-016","stay":null}],"now":["orders 1de6c42c7548f7ea - 0cb414212e8b","lines 00213c9384ec4275 waiting b766965128d4","lines 0e9c28aa1d9ad7ef unbound a06b906e5b58"],"number":"B-38","order":"1de6c42c7548f7ea"}', '38f0dc59f5eb52f3858c985c73ca58a2ce70005c6a76203b2f70d7e3ca91a7d7');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:37:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"08d9a334fe1fb85f","reference":"W001","stay":null}],"now":["orders 30ae2691d44e34d9 - 1685c48eeebe","lines 08d9a334fe1fb85f unbound 260445c2cbe4"],"number":"B-39","order":"30ae2691d44e34d9"}', '8fafcb40f92f0e4fcc7c405a9dc521a7a91c210ee4b72047a7b3c8c81b979a6a');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 82d2c7be5e1e1128 open 1893b2fee08b"],"stocktake":"82d2c7be5e1e1128"}', '841b264725aada68349f723746aae862b836d0864c7e38c23321e84644ad8827');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:47:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 6c7f7295db55","slots S001 on_item 9c1c27c1a141","doubts 69465a3ef2b77d5b - e2dff3b38161"],"photo":null,"place":"B-1-1","stocktake":"82d2c7be5e1e1128","unread":0}', '28506d17ecb58b3a4c197b6652d4c1cdfaef557f1588066cd14bdff961ba94ab');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:47:00.000000+00:00', 'doubted', 'boss', '{"doubt":"69465a3ef2b77d5b","doubt_kind":"not_this","item":"8c80f39c8d8b1937","now":["slots S003 on_item d62ba77e72b9","slots S012 on_item 531a84f98663","slots D010 on_item 27698e532c34"],"words":"A count found another thing on its card in B-1-1."}', '566dcec3547021213196e4794dfdef1974c3759f5c252526961aa5eb11919ce5');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:55:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 12418136c3d4","slots S011 on_item 1c779a27128a","slots S013 on_item 59d67526ea09"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"82d2c7be5e1e1128","unread":0}', '9e3d2767c6277cca285e14edea0ceece6a910a18772174af25dce0fcfee2a77f');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:01:00.000000+00:00', 'finding resolved', 'boss', '{"after":161,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item a908e6b93d9a","resolutions 82d2c7be5e1e1128.elsewhere-S012 - d90ea53d101d"],"reason":"","stocktake":"82d2c7be5e1e1128","sure":false}', '5016528ab22f34bf3e6ea02bc0d68a14ac1d922d5cc7f5e39474015b9a4e760c');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:04:00.000000+00:00', 'finding resolved', 'boss', '{"after":162,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 82d2c7be5e1e1128.unknown-Q0771 - 8025f7505218"],"reason":"A neighbour''s","stocktake":"82d2c7be5e1e1128","sure":false}', '3cc622d282dcab7a8d3274c8585227b0fba1e1d6efb27b147aa5f510d0bf0119');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:07:00.000000+00:00', 'finding resolved', 'boss', '{"after":163,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 4305f12135be","resolutions 82d2c7be5e1e1128.missing-S008 - c95d601975be"],"reason":"","stocktake":"82d2c7be5e1e1128","sure":false}', 'f3974a46f69c71e2ab91dc7ca3c27c43dbb34ebe5afee0c0fa722cb48cb4a388');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:10:00.000000+00:00', 'finding reopened', 'boss', '{"after":164,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 82d2c7be5e1e1128.missing-S008 - -"],"stocktake":"82d2c7be5e1e1128"}', 'fa84543f5b5c7e06c58772b552400c6c63016ba60eb5a62b502f73d0bbc25500');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:13:00.000000+00:00', 'doubted', 'boss', '{"doubt":"612ad29498863716","doubt_kind":"missing","item":"434f057171a33c91","now":["doubts 612ad29498863716 - aff883a2bcb5","stocktakes 82d2c7be5e1e1128 closed 2ece42589e2a"],"words":"a count of section:S did not find it"}', '8fed773bc1ccebdb5f8c882113ae62b3c6d9a06e88fafe72d3c25ee4727e3c9c');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:13:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"82d2c7be5e1e1128"}', '0cc0e07f108fc947653c1ad3fa3df4f537bdd78ac10553bed94633c2f4c2ee6d');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:16:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes b412361560efae36 open 29ec02f33eee"],"stocktake":"b412361560efae36"}', '7cc7e37776039319669dc8e56502cbd4c6c40a4426291b9243a611c491389e76');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:23:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 4ac37140b7a5","slots L003 on_item e377f492444c","slots L004 on_item 35f5cfeeb213","slots L005 on_item 6c640c9d9173","slots L007 on_item 92610f38f2b3"],"photo":null,"place":"C-1-1","stocktake":"b412361560efae36","unread":0}', '1204456cf6c1a63d3e0fc93dde95029cb303559f0e9f4b9307789cdbabe82636');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:26:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 05de25d95db9f4f5 - 55fca7e893b2"]}', 'af3482ac3efdeb1bc3d66c17910960c33a765f33ba91d76943e8f56d7580dab0');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:26:00.000000+00:00', 'doubted', 'boss', '{"doubt":"05de25d95db9f4f5","doubt_kind":"missing","item":"7fa5bdff52add0be","now":["resolutions b412361560efae36.missing-L008 - 590205d7d4b9"],"words":"a count did not find it"}', 'b0d009a320c07defa3a5ee709c063a96ab6de53c675b8b22b4fe35c754de2459');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:26:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-L008","how":"lost","reason":"","stocktake":"b412361560efae36","sure":false}', 'e05dd4483aa57f1bd7b880cf06c94eedbaa8f5f107952171e8aad8d1299f7ac6');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:29:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 814b47106b55b28c withdrawn d86490a23ce9","slots L009 due 821cc144d722","resolutions b412361560efae36.missing-L009 - 876214d16c57"],"reason":"Nowhere to be found","stay":"814b47106b55b28c"}', '602b9b53c461480a9baabe0adda0255d90e966ec4c7de31b612f7a05c4131085');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:29:00.000000+00:00', 'finding resolved', 'boss', '{"after":172,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"b412361560efae36","sure":false}', '5579d8da4d0f47cc8cc996fb39890e32800adac6fb1ee74fe5ff88a4fbbb9ddc');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:32:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes c5b128d2e691cd4c open ab688d287b66"],"sample":{"bins":["A-1-1"],"chosen":"blind","of":3},"stocktake":"c5b128d2e691cd4c"}', '20ebc3ea8f6ae1124bebaaf0e7a16d8fcb7a214afe9d9a3fc13fd98dc3d7ebe2');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:35:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes f4b10c5df713ccf7 open f5f3e3d49e98"],"stocktake":"f4b10c5df713ccf7"}', '237f8a5f9bce74fe45363ad2d5090bdf28278bbac4b10d7e3738dba104a36a78');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:38:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes f4b10c5df713ccf7 cancelled a1a4ba7b83d6"],"stocktake":"f4b10c5df713ccf7"}', 'e9b751898fba19cbd3615c2f5179a2baac71d74d31570c1bc2eedfe01d6a950d');
INSERT INTO public.lines VALUES (15, '0e2f1bc5cb0b0208', 'eec761a2419c12bf', 1, 'D009-01B', 'Rear derailleur 9', '', '3119a19c723df236', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '90c1bcb792d80747', 'cd21c6ad7d4d4257', 1, 'D003-01U', 'Bell with a crown', '', '01cd58cabab6e5db', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '6f87735b6cf69541', 'c26b0e91acc61f76', 1, 'D005-01E', 'Rear derailleur 5', '', 'b304fa594f64940f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '39d5fd60756f80fb', 'c26b0e91acc61f76', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'f7961984d2e6e19b', '4d26fcb8809e8da8', 1, 'D006-016', 'Rear derailleur 6', '', '8fd301dd7652a1d9', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '1435578557c145d9', '4d26fcb8809e8da8', 2, 'D007-01R', 'Rear derailleur 7', '', 'b6a8464e816145af', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '05d8f5d077ac6768', '251d6ba6823387e9', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, 'f6292516b8fd30b4', '99d7387c50f90ba7', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '18434d58f85d90e7', 'a4978d27409d9731', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '4c3f293a5bfe4b35', '0be38dcdadf9d23f', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'f1bc9c75e75c8ba1', 'cb80bcf03f5e9d64', 1, 'W005-01B', 'Bell with a crown', '', '58e4745d2f706648', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '359cf14b1a25d04b', '852f7f8126bec2a1', 1, 'L007-014', 'Dynamo lamp 7', '', 'a10785537bbcd334', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'ad0840bd0a7d5265', '0c9186e515288866', 1, 'L005-01K', 'Dynamo lamp 5', '', '9f07b73f87b8e5fe', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'fd807a22688274fe', 'c16addbc535441f3', 1, 'W006-013', 'Front wheel 6', '', 'b068abdf48167c5e', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'ba43f6e30e784973', '281e3bfbdbf72f0f', 1, 'S012-01O', '', '', '1174eb64506ac2e1', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'b80b5c079fe5f549', 'ac464d48630d0868', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, 'dd4a52873228adcd', '7750b56a20c6b108', 1, 'W001-01E', 'Front wheel 1', '', 'ecd66bcd4d65bb05', 'released', '1650ab7c7eedd80c', '479ad84ca37315f2', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '3323145b3b0f4cd0', '7750b56a20c6b108', 2, 'W002-016', 'Front wheel 2', '', '918944a67bc1a1d5', 'released', '1650ab7c7eedd80c', '479ad84ca37315f2', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, '17e636670342df4a', 'd352ac1e7c3a6f1a', 1, 'W007-01W', 'Front wheel 7', '', 'c4ee795be60158a0', 'released', 'f3ce056280888d70', '479ad84ca37315f2', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (4, 'ba2fc532d961b97d', '8f59f38a2c43ffb7', 2, 'S003-01W', 'Leather saddle 3', '', 'a57eca6d3ae4fe07', 'picked', NULL, '479ad84ca37315f2', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (5, 'a5380cbc7870716b', '8e0d91602f918178', 1, 'S004-01O', 'Leather saddle 4', '', '46dfc60116d853a8', 'packed', 'b47afb6ffff087b6', '479ad84ca37315f2', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, 'c85d8ff484ecfb22', 'e3d3ca10af4dcb07', 1, 'L006-01C', 'Dynamo lamp 6', '', 'cd375ed08d10435c', 'packed', 'd3ec0541840873e1', '479ad84ca37315f2', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '315eacbba2c94ec6', 'e3d3ca10af4dcb07', 2, 'L011-010', 'Dynamo lamp 11', '', '2eb12cf3dfeec392', 'cancelled', NULL, '479ad84ca37315f2', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (6, 'ba629f148c873e25', '8e0d91602f918178', 2, 'S005-01G', 'Leather saddle 5', '', '9dd235ed7e2ddd29', 'picked', NULL, '479ad84ca37315f2', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '036ed9c15ae238df', '2f9d781f2fe379d5', 1, 'S007-01Z', 'Leather saddle 7', '', '1d584f0eb5723b59', 'picked', NULL, '479ad84ca37315f2', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, '6ef440bfecb7e765', 'd352ac1e7c3a6f1a', 2, 'W008-01O', 'Front wheel 8', '', 'ec683ad19ef84228', 'waiting', NULL, '479ad84ca37315f2', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '8454dab142c2126e', '8f59f38a2c43ffb7', 1, 'S002-013', 'Leather saddle 2', '', '14a0c5523fd840e9', 'packed', 'd0a25bdfe9ff9cf7', '479ad84ca37315f2', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, 'aa86e62d94ea2f36', 'ac2c443e698f5520', 1, 'S006-018', 'Saddle with springs', '', 'b1e7b22d3d04e9ff', 'picked', NULL, '479ad84ca37315f2', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '84e61f029a1e404e', 'd8cb696ff4cabbfc', 1, 'D008-01J', 'Rear derailleur 8', '', 'afdae9a850f36201', 'waiting', NULL, '104c4606a16ad05f', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '0e9c28aa1d9ad7ef', '1de6c42c7548f7ea', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (8, 'd5b985a7d319a2d8', '5c3b4246260a5e06', 1, 'L003-010', 'Dynamo lamp 3', '', 'efec8233775c7788', 'waiting', NULL, '104c4606a16ad05f', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '08d9a334fe1fb85f', '30ae2691d44e34d9', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (7, '2416470344779694', '76a20e60b8367fad', 1, 'L002-017', 'Dynamo lamp 2', '', '7f6c5dc0ce970748', 'picked', NULL, '104c4606a16ad05f', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '133fa48088b2dc86', '9120315cfaa31aa5', 1, 'L004-01S', 'Dynamo lamp 4', '', '54032bf57fe0d9ea', 'short', NULL, '104c4606a16ad05f', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '00213c9384ec4275', '1de6c42c7548f7ea', 1, 'D001-019', 'Rear derailleur 1', '', '12e1264dbe1f920f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '82d2c7be5e1e1128', 'B-1-1', '2026-03-02T15:47:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '82d2c7be5e1e1128', 'B-1-2', '2026-03-02T15:55:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', 'b412361560efae36', 'C-1-1', '2026-03-02T16:23:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '76a20e60b8367fad', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (5, '5c3b4246260a5e06', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (6, '9120315cfaa31aa5', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (7, '0c9186e515288866', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (9, 'ac2c443e698f5520', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (10, '852f7f8126bec2a1', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (11, 'eec761a2419c12bf', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (12, 'c16addbc535441f3', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (15, 'd8cb696ff4cabbfc', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (16, 'cd21c6ad7d4d4257', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (17, 'c26b0e91acc61f76', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (18, '4d26fcb8809e8da8', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (19, '251d6ba6823387e9', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (20, '99d7387c50f90ba7', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (21, 'a4978d27409d9731', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (22, '0be38dcdadf9d23f', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (23, 'cb80bcf03f5e9d64', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (24, '281e3bfbdbf72f0f', 'F-1', '', '2026-03-02T13:06:00.000000+00:00', 24, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (25, 'ac464d48630d0868', 'F-2', '', '2026-03-02T13:06:00.000000+00:00', 25, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (1, '7750b56a20c6b108', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (14, 'd352ac1e7c3a6f1a', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (13, '2f9d781f2fe379d5', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (3, '8e0d91602f918178', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'b47afb6ffff087b6', '');
INSERT INTO public.orders VALUES (8, 'e3d3ca10af4dcb07', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'd3ec0541840873e1', '');
INSERT INTO public.orders VALUES (2, '8f59f38a2c43ffb7', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'd0a25bdfe9ff9cf7', '');
INSERT INTO public.orders VALUES (26, '1de6c42c7548f7ea', 'B-38', 'fair', '2026-03-02T15:34:00.000000+00:00', 26, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (27, '30ae2691d44e34d9', 'B-39', '', '2026-03-02T15:37:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '');
INSERT INTO public.parcels VALUES (1, '1650ab7c7eedd80c', 'main', '7750b56a20c6b108', '2026-03-02T13:57:00.000000+00:00', 'closed', '2026-03-02T14:06:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, 'f3ce056280888d70', 'main', 'd352ac1e7c3a6f1a', '2026-03-02T14:29:00.000000+00:00', 'closed', '2026-03-02T14:32:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '34425b3c88f5209c', 'main', '2f9d781f2fe379d5', '2026-03-02T14:35:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'b47afb6ffff087b6', 'main', '8e0d91602f918178', '2026-03-02T14:41:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, 'd3ec0541840873e1', 'second', 'e3d3ca10af4dcb07', '2026-03-02T14:50:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'd0a25bdfe9ff9cf7', 'main', '8f59f38a2c43ffb7', '2026-03-02T14:59:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '82d2c7be5e1e1128.elsewhere-S012', '82d2c7be5e1e1128', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:01:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:47:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1174eb64506ac2e1", "item": "b9afeb53efaec865", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "ba43f6e30e784973", "order": "281e3bfbdbf72f0f", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1174eb64506ac2e1", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:01:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1174eb64506ac2e1", "item": "b9afeb53efaec865", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "ba43f6e30e784973", "order": "281e3bfbdbf72f0f", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1174eb64506ac2e1", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '82d2c7be5e1e1128.unknown-Q0771', '82d2c7be5e1e1128', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:04:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, 'b412361560efae36.missing-L008', 'b412361560efae36', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:26:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "755e93e909204e47", "item": "7fa5bdff52add0be", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "755e93e909204e47", "item": "7fa5bdff52add0be", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["05de25d95db9f4f5"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, 'b412361560efae36.missing-L009', 'b412361560efae36', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:29:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "814b47106b55b28c", "item": "7533883dd6f21a9e", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "814b47106b55b28c", "item": "7533883dd6f21a9e", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:29:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '479ad84ca37315f2', '2026-03-02T13:09:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '104c4606a16ad05f', '2026-03-02T15:08:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '76a7166a9f11ca741110749ad6208efbe54653dc3e239dddb31f60ff4167a3a3', 'bin', '479ad84ca37315f2', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:12:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '0835f7d9a29bb79b461fb96bfbfa89e20ab66c616385644c2bc104074a4f6d2f', 'bin', '479ad84ca37315f2', 'W001', false, true, true, 'dd4a52873228adcd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "7750b56a20c6b108", "order_number": "B-01", "line": "dd4a52873228adcd", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:15:00.000000+00:00', '["on_item", ["ecd66bcd4d65bb05", "stored"], ["dd4a52873228adcd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'e1297105d6be7a62fdb933c68e7455ac042ba6f50e26fe009617e15d9b5f5bd6', 'bin', '479ad84ca37315f2', 'W002', false, true, true, '3323145b3b0f4cd0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "7750b56a20c6b108", "order_number": "B-01", "line": "3323145b3b0f4cd0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:18:00.000000+00:00', '["on_item", ["918944a67bc1a1d5", "stored"], ["3323145b3b0f4cd0", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '95f2aba7340c44710a538877f87e94045016f9cc2c03d88ad48680b85f1b1410', 'bin', '479ad84ca37315f2', 'S002', false, true, true, '8454dab142c2126e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8f59f38a2c43ffb7", "order_number": "B-03", "line": "8454dab142c2126e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:21:00.000000+00:00', '["on_item", ["14a0c5523fd840e9", "stored"], ["8454dab142c2126e", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'cd26cf4d4f5f7dba071334fd378d90933b7b5d653bda4959e6847175a93c26ce', 'bin', '479ad84ca37315f2', 'S003', false, true, true, 'ba2fc532d961b97d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "8f59f38a2c43ffb7", "order_number": "B-03", "line": "ba2fc532d961b97d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:24:00.000000+00:00', '["on_item", ["a57eca6d3ae4fe07", "stored"], ["ba2fc532d961b97d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'c03c963d0fb9a9ee50af54ffa4fcf0857e58b055e65cf100683adbe4fbc68642', 'bin', '479ad84ca37315f2', 'S004', false, true, true, 'a5380cbc7870716b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "8e0d91602f918178", "order_number": "B-04", "line": "a5380cbc7870716b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:27:00.000000+00:00', '["on_item", ["46dfc60116d853a8", "stored"], ["a5380cbc7870716b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'f3e6befdbda6b44ebaa81303c27ba96e750709c91c2b12f3e5378a3997c6550d', 'bin', '479ad84ca37315f2', 'S005', false, true, true, 'ba629f148c873e25', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "8e0d91602f918178", "order_number": "B-04", "line": "ba629f148c873e25", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:30:00.000000+00:00', '["on_item", ["9dd235ed7e2ddd29", "stored"], ["ba629f148c873e25", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'e818bf49ca2af109974f7857acc39dd9182bbca8ac714e762a889ec05224affd', 'bin', '479ad84ca37315f2', 'L006', false, true, true, 'c85d8ff484ecfb22', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e3d3ca10af4dcb07", "order_number": "B-09", "line": "c85d8ff484ecfb22", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:33:00.000000+00:00', '["on_item", ["cd375ed08d10435c", "stored"], ["c85d8ff484ecfb22", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'd46644fc138f8076da4697c7e02c0cd194c4e47c6cb184a3d5251ef80ea21134', 'bin', '479ad84ca37315f2', 'L011', false, true, true, '315eacbba2c94ec6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "e3d3ca10af4dcb07", "order_number": "B-09", "line": "315eacbba2c94ec6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:36:00.000000+00:00', '["on_item", ["2eb12cf3dfeec392", "stored"], ["315eacbba2c94ec6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'acbedb331a93094d66a46cad7151db105f7ddf6b71fdb024c5486398b873390f', 'bin', '479ad84ca37315f2', 'S006', false, true, true, 'aa86e62d94ea2f36', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "ac2c443e698f5520", "order_number": "B-13", "line": "aa86e62d94ea2f36", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:39:00.000000+00:00', '["on_item", ["b1e7b22d3d04e9ff", "stored"], ["aa86e62d94ea2f36", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '96e08e6deeaa22119ef552625e63f20c656a9e2b1ec3022bb9d5a02205b0e814', 'bin', '479ad84ca37315f2', 'S007', false, true, true, '036ed9c15ae238df', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "2f9d781f2fe379d5", "order_number": "B-22", "line": "036ed9c15ae238df", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:42:00.000000+00:00', '["on_item", ["1d584f0eb5723b59", "stored"], ["036ed9c15ae238df", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '924a02259891220546bd81beadb878f1a836523104557135d5243f31d84b3ded', 'bin', '479ad84ca37315f2', 'W007', false, true, true, '17e636670342df4a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "d352ac1e7c3a6f1a", "order_number": "B-23", "line": "17e636670342df4a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:45:00.000000+00:00', '["on_item", ["c4ee795be60158a0", "stored"], ["17e636670342df4a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '59d1e74b6836b515b015a8636b67437eee8120221f47fc8aab86b64ad5a06172', 'bin', '479ad84ca37315f2', 'W008', false, true, true, '6ef440bfecb7e765', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "d352ac1e7c3a6f1a", "order_number": "B-23", "line": "6ef440bfecb7e765", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:48:00.000000+00:00', '["on_item", ["ec683ad19ef84228", "stored"], ["6ef440bfecb7e765", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '8454dab142c2126e', '1650ab7c7eedd80c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8f59f38a2c43ffb7", "order_number": "B-03", "line": "8454dab142c2126e", "line_state": "picked", "order_state": "picking", "parcel": "1650ab7c7eedd80c", "parcel_state": "open", "released": []}', '', '2026-03-02T14:00:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'dd4a52873228adcd', '1650ab7c7eedd80c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "7750b56a20c6b108", "order_number": "B-01", "line": "dd4a52873228adcd", "line_state": "packed", "order_state": "picking", "parcel": "1650ab7c7eedd80c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:03:00.000000+00:00', '["on_item", ["ecd66bcd4d65bb05", "stored"], ["dd4a52873228adcd", "packed", "1650ab7c7eedd80c", []], ["1650ab7c7eedd80c", "2026-03-02T13:57:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '3323145b3b0f4cd0', '1650ab7c7eedd80c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "7750b56a20c6b108", "order_number": "B-01", "line": "3323145b3b0f4cd0", "line_state": "released", "order_state": "released", "parcel": "1650ab7c7eedd80c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:06:00.000000+00:00', '["due", ["918944a67bc1a1d5", "shipped"], ["3323145b3b0f4cd0", "released", "1650ab7c7eedd80c", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'dd4a52873228adcd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "7750b56a20c6b108", "order_number": "B-01", "line": "dd4a52873228adcd", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:09:00.000000+00:00', '["tray", ["ecd66bcd4d65bb05", "shipped"], ["dd4a52873228adcd", "released", "1650ab7c7eedd80c", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '17e636670342df4a', 'f3ce056280888d70', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "d352ac1e7c3a6f1a", "order_number": "B-23", "line": "17e636670342df4a", "line_state": "packed", "order_state": "waiting", "parcel": "f3ce056280888d70", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:23:00.000000+00:00', '["on_item", ["c4ee795be60158a0", "stored"], ["17e636670342df4a", "packed", "f3ce056280888d70", []], ["f3ce056280888d70", "2026-03-02T14:20:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'a5380cbc7870716b', 'b47afb6ffff087b6', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "8e0d91602f918178", "order_number": "B-04", "line": "a5380cbc7870716b", "line_state": "packed", "order_state": "picking", "parcel": "b47afb6ffff087b6", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:44:00.000000+00:00', '["on_item", ["46dfc60116d853a8", "stored"], ["a5380cbc7870716b", "packed", "b47afb6ffff087b6", []], ["b47afb6ffff087b6", "2026-03-02T14:41:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'c85d8ff484ecfb22', 'd3ec0541840873e1', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e3d3ca10af4dcb07", "order_number": "B-09", "line": "c85d8ff484ecfb22", "line_state": "packed", "order_state": "picking", "parcel": "d3ec0541840873e1", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:53:00.000000+00:00', '["on_item", ["cd375ed08d10435c", "stored"], ["c85d8ff484ecfb22", "packed", "d3ec0541840873e1", []], ["d3ec0541840873e1", "2026-03-02T14:50:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '8454dab142c2126e', 'd0a25bdfe9ff9cf7', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8f59f38a2c43ffb7", "order_number": "B-03", "line": "8454dab142c2126e", "line_state": "packed", "order_state": "picking", "parcel": "d0a25bdfe9ff9cf7", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:02:00.000000+00:00', '["on_item", ["14a0c5523fd840e9", "stored"], ["8454dab142c2126e", "packed", "d0a25bdfe9ff9cf7", []], ["d0a25bdfe9ff9cf7", "2026-03-02T14:59:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '70a492d0c790b5af8ca9a3d387f4496ed0bcbffc99d870de3c71904421e06d0c', 'bin', '104c4606a16ad05f', 'L002', false, true, true, '2416470344779694', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "76a20e60b8367fad", "order_number": "B-05", "line": "2416470344779694", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:11:00.000000+00:00', '["on_item", ["7f6c5dc0ce970748", "stored"], ["2416470344779694", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '89e8073d633f43cc23360af58118357633e03d10f5a0dd87fbefd6055a3e7b4a', 'bin', '104c4606a16ad05f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:17:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'f202111bea9f1853a089f33753f7feaec79aa87c49c89830ae8645dfc1221b77', 'bin', '104c4606a16ad05f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '0ab3ea2d8a4913842ce3dad7d5ff5b1086ad86dec8936595b417e4e40cbbdfe3', 'bin', '104c4606a16ad05f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:23:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (58, 'L013', 'L', 13, 'C-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (59, 'L014', 'L', 14, 'C-1-2', 0, 'tray', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
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
INSERT INTO public.slots VALUES (8, 'D008', 'D', 8, 'A-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (20, 'D020', 'D', 20, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:12:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:30:00.000000+00:00', NULL, 'bin', 'B-1-1', '479ad84ca37315f2', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:36:00.000000+00:00', NULL, 'bin', 'C-1-2', '479ad84ca37315f2', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:02:00.000000+00:00', 'd0a25bdfe9ff9cf7', 'bin', 'B-1-1', '479ad84ca37315f2', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:48:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:39:00.000000+00:00', NULL, 'bin', 'B-1-1', '479ad84ca37315f2', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:42:00.000000+00:00', NULL, 'bin', 'B-1-1', '479ad84ca37315f2', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:11:00.000000+00:00', NULL, 'bin', 'C-1-1', '104c4606a16ad05f', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:06:00.000000+00:00', '1650ab7c7eedd80c', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:23:00.000000+00:00', 'f3ce056280888d70', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:44:00.000000+00:00', 'b47afb6ffff087b6', 'bin', 'B-1-1', '479ad84ca37315f2', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T14:53:00.000000+00:00', 'd3ec0541840873e1', 'bin', 'C-1-1', '479ad84ca37315f2', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:47:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:47:00.000000+00:00', NULL, 'bin', 'B-1-1', '479ad84ca37315f2', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:47:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:01:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '12e1264dbe1f920f', 'f7091647ddd096a4', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '425ca44c47de8279', 'a3cf47e50577350f', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '01cd58cabab6e5db', 'acc7809e290e3e04', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, 'cfa3c3bc0ee14e56', 'c9d3cca6655b126b', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'b304fa594f64940f', 'd3572abe86cb62a4', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '8fd301dd7652a1d9', '6298c9063bad38bf', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, 'b6a8464e816145af', 'abe47ee9a2fc71fe', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '3119a19c723df236', 'd4c8ad7258dd80f5', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'c7265b1bd6a9005b', 'f19d339bd0d1ea67', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, 'ac08d41e09a47b7b', '795e720265052433', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '7c6aa8f6bdd3335f', '3d70856c042198eb', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, 'd40a64bad90b93bd', '8c80f39c8d8b1937', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '14a0c5523fd840e9', 'f07595149d460b9b', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, 'a57eca6d3ae4fe07', 'edec53af8fc0826d', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '46dfc60116d853a8', '2c023cfdb891458b', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '9dd235ed7e2ddd29', '7816b99a0b2fb8af', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, 'b1e7b22d3d04e9ff', '6f40a0d447e1531c', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '1d584f0eb5723b59', 'b9193ad918b785b5', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, 'c491cf6eaf41759a', '434f057171a33c91', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '45011786de954150', '1c1fa5c9af1d18fd', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '1174eb64506ac2e1', 'b9afeb53efaec865', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, 'd8a71771b4f798b3', '5c40e1b75ccf2bb2', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '7f6c5dc0ce970748', '71e1719527ff2470', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'efec8233775c7788', 'aff1daa159a4c657', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '54032bf57fe0d9ea', '215178eb5d197f57', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '9f07b73f87b8e5fe', 'd2972a9352e47b31', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'cd375ed08d10435c', 'a0a74f5a49112c8c', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, 'a10785537bbcd334', 'd93a506613398c27', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '755e93e909204e47', '7fa5bdff52add0be', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'eb1798f04deed8f1', '871c279a0da7dda5', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '2eb12cf3dfeec392', 'df0337b5f2632a11', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'bdbc6f550ac829df', '52648fb8f2321e01', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '5113dd33b68d0bcc', 'ebdb46cb9f0f39fc', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '58e4745d2f706648', '39b179332b2e5247', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, 'b068abdf48167c5e', '94b49a5f0c417719', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'ec683ad19ef84228', 'e5425f9560052c75', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, '0312e1735403c281', 'bd9ee02bf06b6a8b', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '45649d454bedf4d0', 'ad89a6b271029d25', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, 'a641b9d8ce3487ea', '0ddebb001523c146', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '8d729bf3bfd73dff', '0eb4a7e730742f12', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '314c3ce39daf4c0d', 'f6e2295f69ba0be8', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'd307d0d6a9ea8c5b', '79c669fe176dc9f0', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, 'df943b0e58a16107', '4f91119b0ab037a4', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '7b8a31d59d9b1a33', '6a80cefb064779b6', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '497cd06c1863e69a', '6a80cefb064779b6', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '96f4df99a2160eaa', '485220329d6cc0b4', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, 'afdae9a850f36201', '485220329d6cc0b4', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, 'ecd66bcd4d65bb05', 'c7ec8e53c6f9c2be', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:06:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '918944a67bc1a1d5', 'bce9dc096b696a17', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:06:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '66c2b741cfec7018', 'c882bca374741ee5', 'W001', 2, '2026-03-02T14:12:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, 'c4ee795be60158a0', '8aefb4a6c9731306', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:32:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, '814b47106b55b28c', '7533883dd6f21a9e', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:29:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '82d2c7be5e1e1128', 'section:S', 'Spring', '2026-03-02T15:40:00.000000+00:00', 157, 'closed', '2026-03-02T16:13:00.000000+00:00', '{"stocktake": "82d2c7be5e1e1128", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:40:00+00:00", "closed": "2026-03-02T16:13:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:01:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:04:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, 'b412361560efae36', 'section:L', 'Spring', '2026-03-02T16:16:00.000000+00:00', 167, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'c5b128d2e691cd4c', 'section:D', '', '2026-03-02T16:32:00.000000+00:00', 174, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-1"]}');
INSERT INTO public.stocktakes VALUES (4, 'f4b10c5df713ccf7', 'tray', 'Too late today', '2026-03-02T16:35:00.000000+00:00', 175, 'cancelled', '2026-03-02T16:38:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '479ad84ca37315f2', 1, '8454dab142c2126e', 'B-1-1');
INSERT INTO public.stops VALUES (2, '479ad84ca37315f2', 2, 'ba2fc532d961b97d', 'B-1-1');
INSERT INTO public.stops VALUES (3, '479ad84ca37315f2', 3, 'a5380cbc7870716b', 'B-1-1');
INSERT INTO public.stops VALUES (4, '479ad84ca37315f2', 4, 'ba629f148c873e25', 'B-1-1');
INSERT INTO public.stops VALUES (5, '479ad84ca37315f2', 5, 'aa86e62d94ea2f36', 'B-1-1');
INSERT INTO public.stops VALUES (6, '479ad84ca37315f2', 6, '036ed9c15ae238df', 'B-1-1');
INSERT INTO public.stops VALUES (7, '479ad84ca37315f2', 7, 'dd4a52873228adcd', 'D-1-1');
INSERT INTO public.stops VALUES (8, '479ad84ca37315f2', 8, '3323145b3b0f4cd0', 'D-1-1');
INSERT INTO public.stops VALUES (9, '479ad84ca37315f2', 9, '17e636670342df4a', 'D-1-1');
INSERT INTO public.stops VALUES (10, '479ad84ca37315f2', 10, '6ef440bfecb7e765', 'D-1-1');
INSERT INTO public.stops VALUES (11, '479ad84ca37315f2', 11, 'c85d8ff484ecfb22', 'C-1-1');
INSERT INTO public.stops VALUES (12, '479ad84ca37315f2', 12, '315eacbba2c94ec6', 'C-1-2');
INSERT INTO public.stops VALUES (13, '104c4606a16ad05f', 1, '84e61f029a1e404e', 'A-1-2');
INSERT INTO public.stops VALUES (14, '104c4606a16ad05f', 2, '2416470344779694', 'C-1-1');
INSERT INTO public.stops VALUES (15, '104c4606a16ad05f', 3, 'd5b985a7d319a2d8', 'C-1-1');
INSERT INTO public.stops VALUES (16, '104c4606a16ad05f', 4, '133fa48088b2dc86', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.learned_n_seq', 1, false);
SELECT pg_catalog.setval('public.lines_n_seq', 35, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 27, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 3, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.resolutions_n_seq', 5, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 25, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 52, true);
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
