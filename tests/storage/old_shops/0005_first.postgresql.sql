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
    expires character varying(32)
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
    code character varying(64) NOT NULL
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
CREATE TABLE public.head (
    one integer NOT NULL,
    seq bigint NOT NULL,
    hash character varying(64) NOT NULL,
    settings text NOT NULL
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
    hold character varying(24),
    why text NOT NULL,
    parcel character varying(64),
    round character varying(64),
    basket integer,
    scan character varying(64),
    in_file boolean NOT NULL
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
    parcel character varying(64)
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
    state character varying(24) NOT NULL
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
    was text NOT NULL
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
    seen_accepted boolean
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
    report text NOT NULL
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
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.labels ALTER COLUMN n SET DEFAULT nextval('public.labels_n_seq'::regclass);
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
INSERT INTO public.access VALUES (1, 'd74b01f8e95c036ce16598c5f41081d476fdd029cfb1f23401fc194dd93ba5a8', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$mdE6IejdBDFygnRV8R9hjA$0+ijJ8Txyn7rq9FM9xtxAk4UMzSvii3fPVS436wGYyk', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '7296849587f17a65089d0931f8173ba297b8a62b6d08b6e7a11b9e16c9f2daff', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, 'b43a100abf2bf38921012b1f63e40cd4cb0d6ae7139cc2d513ebc1094490b7ac', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, 'ebd1a70b4cda601c3ae6554338402d95a1ecf3351aa1eb5cf57016c12a5e4a72', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, 'a53b4777906d8445a679193219200fbfa06aaec686f5c2f8a6dda1ec97b14089', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0005');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/f98abe59e5e8f185', '{"id": "f98abe59e5e8f185", "item": "563b8f904c6add4d", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 170, '8fcb379465c4aec8d28f34b463e7cee4a673c62cfbda495d2c9b343c66472098', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90}');
INSERT INTO public.items VALUES (3, 'b75966a1f6d869cb', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '829687fb32eaa676', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '7759bf5b6a5d1fa7', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, 'fd121c11db30d854', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '459e04605e8c7b15', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '6de15017e01de31e', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '8c8d14badfb8cd1e', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '2529cbe2c3953910', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '6aacf0f32980fec9', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, 'ff712a5eeaa2e9e3', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'f402d4bf44a8815f', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '75687f6fecf5e175', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'bdbdad22262cce14', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, 'e58e84077739342a', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, 'fb6b646ae3b729a2', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '58025c946a78a988', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, 'ebbfbc200ea4c7d6', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '59a5df0fc440c180', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, '4433b51078cc1e52', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '9e58f5866a7465ab', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'bac393f94987ea47', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '7539b944b6f9e6b4', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, 'c1aec9d9ddf49bb2', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, 'b1d7774d8bc7407a', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, '1c4399dd215b6774', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '75a9e64570cddc23', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '93a9f5630b7a8d90', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '42c760280b25e64d', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, 'e7d4adb5429705ba', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '80bd4d94467f3362', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '5bff9b683df9a453', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'dc3ccdaba5f654c5', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, 'b441189a130a8460', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '6cf7e701af9e33b6', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, '0c970ad655b48339', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, 'f7b926396d1ecd25', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, '414dcb34374f5d3d', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '4e4ff1559a0d910f', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '33fe3bdf5977face', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '7113b384e3dd4566', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, 'db678b30b6ca2010', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '2afd12e9d4becfcb', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, '69cc3e37ee493662', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '6495b264d16cacc3', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '493a2e96beb8a07e', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, '563b8f904c6add4d', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'f64d7ba4340340ed', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, '17a54b8888c045a9', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, 'd2152d476d999d2f', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '5d8729a17ece8551', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '7fed2792f64fb71c', '2557');
INSERT INTO public.ledger VALUES (1, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"owner","role":"owner"}', '303d6ed4c179ff439f0e1362aa484b09de102c70718f948c6578c81714652d93');
INSERT INTO public.ledger VALUES (2, '2026-03-02T08:05:00.000000+00:00', 'token made', 'label printer', '{"name":"label printer","role":"program"}', '924b363cda175a7d0981ff70c09dd7c06567e19ac0819082a6defc59a7448314');
INSERT INTO public.ledger VALUES (3, '2026-03-02T08:06:00.000000+00:00', 'token made', 'helper', '{"name":"helper","role":"helper"}', '7c4873bbfc3f3ec5e4f939564b38926f1b42b12e617293bf6c319d44c96bba8c');
INSERT INTO public.ledger VALUES (4, '2026-03-02T08:08:00.000000+00:00', 'device paired', 'Blue phone', '{"name":"Blue phone"}', 'a979d56c2e153ecf5a41f3ccfb89e09cb4b03dd9abcbbb4c87b48ff8ae98e700');
INSERT INTO public.ledger VALUES (5, '2026-03-02T08:11:00.000000+00:00', 'section added', 'owner', '{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}', 'f4ff4241795b9dbda4d4ed2936eb963650aca40d6c6d73e179b299179bbd579d');
INSERT INTO public.ledger VALUES (6, '2026-03-02T08:14:00.000000+00:00', 'slots added', 'owner', '{"first":"D001","last":"D030","section":"D"}', 'e92b9c227f0c0c950fb96d4a1bef13ab25e625b08cbdb481c2e04faeccae1382');
INSERT INTO public.ledger VALUES (7, '2026-03-02T08:17:00.000000+00:00', 'section added', 'owner', '{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}', 'ff391e849cbc99031ded4a09195766138b1003e92e2d7082d2517b3efff6d1ab');
INSERT INTO public.ledger VALUES (8, '2026-03-02T08:20:00.000000+00:00', 'slots added', 'owner', '{"first":"S001","last":"S015","section":"S"}', '3e84cb7256881b09868f96b6d6a84a9e8d7c26baf5125caed2ae6ab527c56157');
INSERT INTO public.ledger VALUES (9, '2026-03-02T08:23:00.000000+00:00', 'section added', 'owner', '{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}', '392dafc04949845f5acbf0143db9abf66e6449e2210e7d993b27f8c2820eaeec');
INSERT INTO public.ledger VALUES (10, '2026-03-02T08:26:00.000000+00:00', 'slots added', 'owner', '{"first":"L001","last":"L015","section":"L"}', '4d6eb8b5317a9f186798c3258bfad77967207bac8b25e4b23f1dc4f0e273991a');
INSERT INTO public.ledger VALUES (11, '2026-03-02T08:29:00.000000+00:00', 'section added', 'owner', '{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}', 'a13c9bbe4673f6c9c97b723e159bb03919b08e1b5f149ad49d062e833da3b00b');
INSERT INTO public.ledger VALUES (12, '2026-03-02T08:32:00.000000+00:00', 'slots added', 'owner', '{"first":"W001","last":"W015","section":"W"}', 'f80283c1b63987c4d42c670c605962947ee251550bd969f03a2d76dc24cd2cfd');
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"ef1df51ecb4793c2","title":"Rear derailleur 1","turn":1}', 'd38aee3f9f56044eeee0f6021b4ef1b065ac1e24768a0a6c01377f9b05b33680');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"fa6e4622f4b48f8a","title":"Rear derailleur 2","turn":1}', '4a751c82cda2585aa38462216eda36d6db240522b332a516d0fc114f221e845c');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"afd1ad29c6e31dae","title":"Rear derailleur 3","turn":1}', '00b6eb6e7f04a9c7a3bf481a74b90189cd5ae57387da34e93823c877f113c0d7');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"e260c0fa0042ea72","title":"Rear derailleur 4","turn":1}', 'ece263e9603c30ebae86ef9cbc2273d12f9e618fbbceb2b653947c8ba4c6f44d');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"ad00ec4865c44c33","title":"Rear derailleur 5","turn":1}', '5f6c913b98402a8bd3f779a0ea59adfd5cc24e70f0899e9d48732ea8d7e907bc');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"b6d732f555f2d0eb","title":"Rear derailleur 6","turn":1}', '11b7b9ab383a369a7a8fd8094c808ee49c225f8b772f8283de1c2db521de06a2');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"4016f0fbbd5ff36b","title":"Rear derailleur 7","turn":1}', 'ef3bc0e8822938cbcb3ab8724517e8cc260a842cadc0608bdf4e070c40c1d880');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"a79c5d70dac937b7","title":"Rear derailleur 8","turn":1}', 'b5a7ee17ab6c825493ef54f37bfc0b93c0bdbe83daa6010073cafda185bd2c5e');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"79888807099ed897","title":"Rear derailleur 9","turn":1}', '93ee437600b593247d0462b17a12274971aaee57e28a270673be6e7ff8cc44fe');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"e259cb56efa9b96c","title":"Rear derailleur 10","turn":1}', 'a386a7ff537d443c93b50700a6454b66b2855576549e4237090bd43cdbb3f971');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"bf11c920dfe0d08e","title":"Rear derailleur 11","turn":1}', '9b51f42c4063bfb3ae47d19fc79597e826a9858e3a820e52c7bffbcfb069c6b9');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"c3b8826d93f6369e","title":"Rear derailleur 12","turn":1}', '64a925e0ecccca56a71aba1efee5c5eda0c79fb8d99a1eb8e30900d5dd172222');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"535df06d27f9d684","title":"Leather saddle 1","turn":1}', '449e86ffe08f4efe585faa2d52d5d25a841d78965e7fbbefc799ee7d5abf2e26');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"08a778e624fca63b","title":"Leather saddle 2","turn":1}', '7a60ee33325a41e665d8d91110fbf84b1553427bd3d268a7b53a924c21eb8a8c');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"87e1958547efcf19","title":"Leather saddle 3","turn":1}', 'b9e79b4ed831dceb3748cde57009bac718b2bfadde2c8a1ddca3d670be77aed4');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"364b108842849b7d","title":"Leather saddle 4","turn":1}', '7467b4bd3bd623a75c1a001e28bed5ff6fadc0da2f4d80ca4ca5507ea0119808');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"d4bfa8d6572e321b","title":"Leather saddle 5","turn":1}', '11ba50c4eb06d5c8539dc1c8d52c1ba6d955b530ef4dfd043215b30bbcd8836d');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"594f8c9d0cc8eb0a","title":"Leather saddle 6","turn":1}', '2811594adbf78b5cbd8d7411d4511063a333281bf9048350949d191073ee241f');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"87fbe0f8406dadb1","title":"Leather saddle 7","turn":1}', 'fed72acebadd7b8f7dfa63fcbdac55fc1219fd29381b2cae123c532ba5031784');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"34581638565e7204","title":"Leather saddle 8","turn":1}', 'a7ed6625b2182f41da848c356814f644dffc6a43830aafa50655f685a8f786e4');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"b0f262627f1be332","title":"Leather saddle 9","turn":1}', '6b5a48be6e64bf5c4fcbaf5bcad02fc275e170ca9af4046d59bb63428d2568bf');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"8e0f7118dc27b3fb","title":"Leather saddle 10","turn":1}', '2bf9edc204b882306597f753c318525c2460856559a9dc98c901df85c37cd959');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"76eae74d10fd54f8","title":"Leather saddle 11","turn":1}', '393a22bfd2cc4299dccbe0a6d37e0cb1f938817fdf7594885566fed37fe55efd');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"f62f87991b1d1648","title":"Leather saddle 12","turn":1}', '2cb88bd4116f0c0248fbb6dff6e56d762e0f144f8d8c67564448c1295e6e86ba');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"122a3de2929b6ea6","title":"Dynamo lamp 1","turn":1}', '20edeb220d181f64498ee8423f30cbf79ffe60fa15ea68352b1b61dde79e41d1');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"9366d0f5f13f7f21","title":"Dynamo lamp 2","turn":1}', '7df865166d9157c7fa469bdd2de9d833953e30b0524e8e0357349ebcdeabcf4a');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"29e3c103254400ad","title":"Dynamo lamp 3","turn":1}', '54596bdc13a36f46549ccfc582e73b9ded91325eea028be0c32560d025e38602');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"463402e436b7da24","title":"Dynamo lamp 4","turn":1}', '65b89465c5fd56b4f5ce0af648f0852fae5c0b3b9c284c62001c0f21a15eea3e');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"413acb1e30e8132e","title":"Dynamo lamp 5","turn":1}', '622b3e094e4d933e1d4fe0b13b36b8e9de03ee75b2cb7ecc586914068ab9dcd3');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"7e35b59a3e729a0e","title":"Dynamo lamp 6","turn":1}', 'b27b3fa97fdb3b292e814da180f830da065e7b077ab1db29e1c84b969d172ea2');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"845db2ea2060c324","title":"Dynamo lamp 7","turn":1}', '8adbe6825ea624f4fb1bcc2372f2dcafd0f012800567c66d0877b236903aa728');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"d68f330b05fd81ab","title":"Dynamo lamp 8","turn":1}', 'f47f0bdd14871d939cad4ded6f74bd8739161c42b409b928ac76a7787e008442');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"a712df0ee6a4a4c5","title":"Dynamo lamp 9","turn":1}', '47f7c397cbf0e0d2d9cdfc6fe1571e6a113e215e2c52ebd49090a28dc4404b75');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"9d0e85eafc1093f5","title":"Dynamo lamp 10","turn":1}', '4ab5e2e161b77987681c5acb5a3c42231313d8552ce9ad8b5f699ab3d3714d2d');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"2f2cfaa02966373b","title":"Dynamo lamp 11","turn":1}', 'c585121002862e2cf5d6fb4a6f7d36a21936dd558e7d29cbe25c312f61a57542');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"2b38d9c0474db917","title":"Dynamo lamp 12","turn":1}', '1c434438183ad34a533bb6fc70926cf46226f6cfc179e2a4fcfb42ad06a4280d');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"5145b6037c27e177","title":"Front wheel 1","turn":1}', 'd97894e5a5b6a36cbe8e95fc7f7f1f387d0481893be39df45c35e7898a21184c');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"b26ad616cfd829b3","title":"Front wheel 2","turn":1}', '0d2ac950231ac79e12a3d3f7a1298cab0d003361872b2ade59bab1a3fd13830a');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"3e911b7c144f272a","title":"Front wheel 3","turn":1}', '7f3402909a1be3bb2b6004b99e612710f3736c5a2547d95406f19bfc6a9d05be');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"0d9cb8085eb595bd","title":"Front wheel 4","turn":1}', 'ca97454872cc59018e29f44a2868acadd0389467d5c6648d3869c8da63c3a3f4');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"5e10131602b8e256","title":"Front wheel 5","turn":1}', '969a66d71091113ea48fb44d0d12c76f983c9c6da80d39d43dc880519a44b76d');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"25592a8833a1361c","title":"Front wheel 6","turn":1}', '61e146ca0cc23db4994f0ff9eca13fc2921f6b6123227e8ae7eb7319fcdba224');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"926f7665a72c59fc","title":"Front wheel 7","turn":1}', 'c45867813adfd8de84ccb9a8c3aae2ba0f6412aef19d99d24d075e305768cd9b');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"0ea476be539a75cd","title":"Front wheel 8","turn":1}', '21471ea28b7fea699cb836cc02170b25c8ef03d5b1a2298d0aebcfc923e53625');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"bec0f9bdc1b5d237","title":"Front wheel 9","turn":1}', '37ba8d55465ca9b5c5bdea34809401360d9947a15c13427a1bc933abda497506');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"6fca1a15012cb004","title":"Front wheel 10","turn":1}', '4d8f76ee20367fdcaa5c89c6017f33dc6009cf36b97dad1b5f17f64161073549');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"91a8becaf0f09657","title":"Front wheel 11","turn":1}', '6352df05d11979d58ffb7a5828ea371f3b98343186f4390bae0ff7e51ca77a25');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"075afc4499c83cbd","title":"Front wheel 12","turn":1}', '7f8f45979d30e86e754e9fe0a44f1ff7fe6f4d2a5b04ebede412026f2ed23b69');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"f98abe59e5e8f185","title":"Brass bell","turn":1}', '6d516e108e526a360b3fe52d12946d5a172e271cf6fb5cb5ffdd3a0a1345870b');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"fa6e4622f4b48f8a"}', '12d6cbd1568ad3035044a02c5288818f6382f5170b531d181270f373932ed905');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"8e0f7118dc27b3fb"}', '78ece46fbbda725c43c5ba97e70e53b35221589e9232593e2fe92a4e6ed82bbe');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"0d9cb8085eb595bd"}', '74e86349689fef79c1bf84b58546aa86f2c26a638f8c98b39f2de460df1b8aee');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"a0e0ab9643b47202","stay":"b0f262627f1be332","to":"S013"}', 'a1aeec983462d69f0d908592c1491f3d662fae0b496d13610902c18bc3de42bf');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"ef1df51ecb4793c2"}', 'd0ed5f567d77ad6e3be5d8d26c3ee96105736ac8227ca0d97e1cdcc72d008c3e');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"535df06d27f9d684"}', '58be4534c9bb34366fe63d7d520b362c61640ef3535b41b189acd8db0de8212b');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', '1a8457a9aac090c92d4f56be301abd81d6180902e689d00359c21fd20881c24b');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', '2977c1a94c95ba4028279a564d1adc2711aec5f66a8414cb42e894d7df724325');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'a5effdb1d0f73c1fa637758a492ae530228258c6b065d72aa90b43935f7b44e6');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', '56407403f4d9ca2336c04e6f7fea511596b9c22dca94af2d6558666d44959c1d');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '4cd91117499a7c50bdbb37b9d5e718dba060cd5eeda364b56e658523ab75b34f');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"0ae72cdcfc188533","reference":"W001-01E","stay":"5145b6037c27e177"},{"hold":null,"line":"f4d730b2049e6ceb","reference":"W002-016","stay":"b26ad616cfd829b3"}],"number":"B-01","order":"e7a6b3aa550db4e4"}', '028a93d1a712dff8cb4f9cda29c7e1509741115a64acbe173c4cb83d560cf6dc');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"68471715ac9a999e","reference":"S002-013","stay":"08a778e624fca63b"},{"hold":null,"line":"c5a091a36346ac37","reference":"S003-01W","stay":"87e1958547efcf19"}],"number":"B-03","order":"a3e169cabbce33cd"}', '80e68b7df787d589b69cbeff1aeb92e63340daa3e0b804304ea83ec5b840cddc');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"368d8f7a7bafc8f1","reference":"S004-01O","stay":"364b108842849b7d"},{"hold":null,"line":"85fc283038698b04","reference":"S005-01G","stay":"d4bfa8d6572e321b"}],"number":"B-04","order":"623616c86a4847ee"}', 'e58ef55cb6c154d5b07bc9b8e568344da4f0b9bf88f93a7ab057c156d7caa0e8');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"6c6711ffc2ea51d0","reference":"L002-017","stay":"9366d0f5f13f7f21"}],"number":"B-05","order":"261bd923c124845f"}', '0cdc1d05a66453b51ba33ec0f3a2e7ccb25046dfea5720c639328ae5634c4290');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"39bbce00bfa3ecf1","reference":"L003-010","stay":"29e3c103254400ad"}],"number":"B-06","order":"6d37bd2d711f78ca"}', '2650be25923643e060b5d74c593fa3a31a5fa55b5270d2cb2202ec1afed79e58');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"f9ee7339f86185c4","reference":"L004-01S","stay":"463402e436b7da24"}],"number":"B-07","order":"3ec83dcc7936a769"}', 'e584a1d58d1d6644c80f58e18d4e31a8a1bfed09fde7f2f7e95c1be5c141e8b4');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ff360b3e18ea4d82","reference":"L005-01K","stay":"413acb1e30e8132e"}],"number":"B-08","order":"58ff422d00e4126a"}', 'dc98a82d73ea900992e753c1e065dcf4c8a03dd99f628942168991be2f7157cd');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"587e415ad5c9468b","reference":"L006-01C","stay":"7e35b59a3e729a0e"},{"hold":null,"line":"54c0725862a294f0","reference":"L011-010","stay":"2f2cfaa02966373b"}],"number":"B-09","order":"320f7b1087c1023f"}', '398d1e46952747466426f9ce469ea857e8ae6a051988c7975973169f02297874');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"81f199a863509c62","reference":"S006-018","stay":"594f8c9d0cc8eb0a"}],"number":"B-13","order":"34e20953d72a25ae"}', 'b07ee71e492ea4d18ce3b23b699f483a31fc91942f7260e01ff60d54f8b938f7');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b9cf39bfd752d5b6","reference":"L007-014","stay":"845db2ea2060c324"}],"number":"B-17","order":"d0d68786e35e70d3"}', '3c314920bb910848db0d9f1f72a029d43e44232babc586ed2b7a9b04a85f7b22');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"fb5def35e02ac91e","reference":"D009-01B","stay":"79888807099ed897"}],"number":"B-18","order":"b3a760a5cefb1370"}', '3089a3fe7d63340db06edfc51b2b7e61bde4e636bbe7c9c2ab32693b9f825fe6');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ed5c78ee8f1356d1","reference":"W006-013","stay":"25592a8833a1361c"}],"number":"B-21","order":"7882c17d51718ec2"}', 'ae4c04255fc16b8544233978a091149450ac71a4fb33c3523b5519f635da1443');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"332c99215f812f4c","reference":"S007-01Z","stay":"87fbe0f8406dadb1"}],"number":"B-22","order":"7c8456dbbbf2c548"}', 'b47a00b1596dee7a7c7ed3e392b5e62fa1f08a924296779e5084ebf61febb270');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"67792c3970d19ddd","reference":"W007-01W","stay":"926f7665a72c59fc"},{"hold":null,"line":"79dbc5f5b51054f4","reference":"W008-01O","stay":"0ea476be539a75cd"}],"number":"B-23","order":"ef8c9411d3705c87"}', '427f978fb299413ff8b1340b0147535f78542ef49ac97ff61e25a843f166cc76');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b2aa949f851628aa","reference":"D008-01J","stay":"a79c5d70dac937b7"}],"number":"B-26","order":"21971628c04cb8f8"}', 'eec3d0e799a5df9c6bf4428493d6ddad652856158a82d080955f93a6477c9b0e');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"68a4c10f1ba75fe4","reference":"D003-01U","stay":"afd1ad29c6e31dae"}],"number":"B-30","order":"ef6f5bce2269316c"}', '2845be6e29f4dda8f115908a6b64bc45ea6ff4fbbc838e389db0e927c8bc5050');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"76ea1fa0093728dc","reference":"D005-01E","stay":"ad00ec4865c44c33"},{"hold":"unknown_code","line":"663fabd9238a1fbe","reference":"Z999","stay":null}],"number":"B-31","order":"36e2dd3bb632e21f"}', 'e52b87a0bf1a64f6d6d2bfe90808f4ab45aa8347af3ca9a00834e844f41ae83f');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ef57d95c77aad15f","reference":"D006-016","stay":"b6d732f555f2d0eb"},{"hold":null,"line":"c3e82d29132f1eab","reference":"D007-01R","stay":"4016f0fbbd5ff36b"}],"number":"B-32","order":"88eff9cb3cf71245"}', '813a93ac57c890776ebef68e4f4bd237c36500ffcf2e943e6dafd2ec4a4b9298');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"c3e82d29132f1eab","reference":"D007-01R","stay":"4016f0fbbd5ff36b"}],"number":"B-32","order":"88eff9cb3cf71245"}', '2eeb2190a40d88245a285ab3fffd9a381d19ceb883a1dd43993444b3257de5f3');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"4368844cc8216c12","reference":"lamp","stay":null}],"number":"B-33","order":"7056d577f0292614"}', '0a488358a0ca5dd2b06ba05aa39b7369023833681ba761a850c069f1da634dff');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"792c339d7074e6cd","reference":"D006-016","stay":null}],"number":"B-34","order":"6d6a84cfb8521e88"}', 'b3a8911113937b9dd1705728ff24a7bd9ab575d9997de74948428bea41c07c87');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"75cbca7bcb6db068","reference":"W004-01J","stay":null}],"number":"B-35","order":"56540201ffb2db72"}', '2eb257556bac132af9bb9164641a48fc0ff36d91e4863fa523f3abd1036b9e95');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"eb3cbfb3b5c36bab","reference":"L015","stay":null}],"number":"B-36","order":"bc46d596bb43e869"}', '045e54c14b1880c1d3580b790ff3ce100de70d7d257b9fb105c007a229b881bc');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"2ba43c3d52040a93","reference":"W005-01B","stay":"5e10131602b8e256"}],"number":"B-37","order":"37be4fa6a9c2bb9d"}', '450d23c08280a1d5e7d09c427b7c0be34b65b9abc0a1522346e46323ba736538');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"2ba43c3d52040a93","stay":"5e10131602b8e256"}', '20c153be88cfa6f247f30425b6bca97d1ef72be79204adcd1ba355645e7dcbfc');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"b9cf39bfd752d5b6","why":"Another lamp, by the photo"}', 'e21044dbe9e769baed791af574256667940c565b9125ba691bd39f200da8eff9');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["ff360b3e18ea4d82"],"number":"B-08","order":"58ff422d00e4126a"}', 'b6ae8d09911c59ac482015edc45c0ae9b993adf31e5bdcba0454e3f6f137555b');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["ed5c78ee8f1356d1"],"number":"B-21","order":"7882c17d51718ec2"}', 'a1578f5da526cdd0977330967eed0ce180a6ac427d861e90154312ccb190b572');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"ed5c78ee8f1356d1","stay":"25592a8833a1361c"}', '4fa791e92a012f7d6cebaede71c60828bcf35e2924a2942f93680638c915b176');
INSERT INTO public.ledger VALUES (102, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"1f735625281fac81","stay":"a79c5d70dac937b7","to":"D020"}', 'f50175324c29d47fae8efb094720e2cb3ebc29a6d49efc8e9bbe41a7e60f0a77');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"5620c0dec358f931","reference":"S012-01O","stay":"f62f87991b1d1648"}],"number":"F-1","order":"c7af7076c0ff00d3"}', '04807db95bf25fd59305b5ab11f7d667d96d65defd91d8a2a8cb00ef87aa60e9');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"c8caf8534f3cfc50","reference":"","stay":null}],"number":"F-2","order":"0b66cb7333c525d6"}', '649a4c1afbc2b1fc6674aa4873179a91b0e9e3fc98cac7227abb0ee918bf7064');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["0ae72cdcfc188533","f4d730b2049e6ceb","68471715ac9a999e","c5a091a36346ac37","368d8f7a7bafc8f1","85fc283038698b04","587e415ad5c9468b","54c0725862a294f0","81f199a863509c62","332c99215f812f4c","67792c3970d19ddd","79dbc5f5b51054f4"],"round":"88d5fb6d16443ca8"}', 'd8b5da874b2be59e9a9d192189c2c07211f48243a04a63099890e2831ab81dc1');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '0df5cfc99cf9b2ed6d79d7de0a784de54bff2ed78ea2b0ba8dd6592d77901458');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"0ae72cdcfc188533","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '5a19db3eaed5dab6e7df425e8b58b614188ab0fd9f5b764a1ce05f207c6cd71c');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"f4d730b2049e6ceb","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'dc1223d48afce4dd5656e5fff4b6ee30c224081a6900d8f18f1abca7f39718b8');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"68471715ac9a999e","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '058ce94a12564f2c6f232babc4cea467368e49c8a4f54382b2e90d2b2f983b2d');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"c5a091a36346ac37","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '8c9604e1fa031037032a04be77bd92db22efcea92b85694e109e85f76af9f2d4');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"368d8f7a7bafc8f1","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '5d76f2365d05fca056977b795f0059141afc3d85da778d52ca81c1094bf5c1f7');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"85fc283038698b04","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '6010bdbe23a6b0a0149630c22316d1227be490a7e8b14b64a65ffcab3530b785');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"587e415ad5c9468b","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '00a59cd9aba497e5e39c47861c86e2194b825180dae4a4ba43a44c7000f82b9e');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"54c0725862a294f0","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'baef36fe3f99ed366505bb1157d2975a9b03717873db3184e39331028af92a30');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"81f199a863509c62","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '37f4f798bf543d0b1731571c9dceb11b0d92ac0c220d33dd25d2548825cbca0c');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"332c99215f812f4c","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'e8e16c0997786f61e9b3fa4b6c89fa74542b562e8b30306766bdb2af7a9aaf3f');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"67792c3970d19ddd","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '3f55abe4625dfd0cc3fa20e82490499939b6dfd0fda5fd3717aeca37c1bf00b3');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"79dbc5f5b51054f4","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"88d5fb6d16443ca8","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '2af1c97dbe7f686f3b61198f06c7e0cb2372ead01347f30051e3cffc06f19d28');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"79dbc5f5b51054f4","line_state":"waiting"}', '09fa2b5576dfce19c6b5d99184d8ab6db6c58159841e63b7dadf342c5479444d');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"round":"88d5fb6d16443ca8"}', 'e64e7ce465dcea4ed525b5fe70b07baa64ebe24fcbc509872e890319d62948b4');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["e7a6b3aa550db4e4"],"parcel":"7fed2792f64fb71c","table":"main"}', '41bbb90be36e72e1e4254cac906781aa568b3ef317a75cb4c90cf578af8ceaa4');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"68471715ac9a999e","line_state":"picked","order_number":"B-03","parcel":"7fed2792f64fb71c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'aa256deb4c8025e9748a2dd669effb83609e2ab8be7f83af9afee39232831ad0');
INSERT INTO public.ledger VALUES (123, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"0ae72cdcfc188533","line_state":"packed","order_number":"B-01","parcel":"7fed2792f64fb71c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '0917493e0fa81b2053f222f84a66b0144f59110318ddefe29468979e86a25d4a');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["e7a6b3aa550db4e4"],"parcel":"7fed2792f64fb71c","released":["W001","W002"]}', '8b8082e3ecb76c47b03364e741cf3138ddcb983722c6558f350f8a947721fa67');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"f4d730b2049e6ceb","line_state":"released","order_number":"B-01","parcel":"7fed2792f64fb71c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'b28760be6de98630cfecb1835e7fa1d806ccbeac55d032610a521d1cfb31bef6');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"0ae72cdcfc188533","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '4a87afa7991c7a7c682430b4d9507d099f297c4af518fdecaea805f2f2767c98');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"8f2d6944d5a37ec3","title":"Rear wheel","turn":2}', '59668ddb395f06e3c7b48e11f5181f4c4ba6e7b7c99cdcc9b62095d0873e9d1e');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"7fed2792f64fb71c"}', 'a4b0e21a30f3ea88d3abce13620bdb8e1897729d659827b0bd42e189f494627a');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["ef8c9411d3705c87"],"parcel":"aa04f583fe048feb","table":"main"}', 'e82cf0fdca056b7cc8fc19dee05856700779a99df2a747117a16fce27efa4d92');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"67792c3970d19ddd","line_state":"packed","order_number":"B-23","parcel":"aa04f583fe048feb","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '17aececcb7f5bec6cd4703cb43d6ceae9698ac680bdc0894019c20e503c8ba93');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["ef8c9411d3705c87"],"parcel":"aa04f583fe048feb","released":["W007"]}', '2e3fb55e513e0ce0c39cd667138ff1dec71d7380e19ddf8c54229f8984c57423');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["ef8c9411d3705c87"],"parcel":"aa04f583fe048feb"}', '0fe90296322cc64815c5d0dd9c5fde035bac55c952ec31dd59a54b6d5a8a0d7f');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["ef8c9411d3705c87"],"parcel":"aa04f583fe048feb","released":["W007"]}', '3b96b7d8dfca2c80b4fc572730dd322f9ea4008bb8a058c1785c836797cbcc05');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["7c8456dbbbf2c548"],"parcel":"2f0c464cc917d368","table":"main"}', '1fb6dbdc483ed9c827a85bc430a43a095c61e01333c2ee4530b97cdecfb6404b');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"2f0c464cc917d368"}', '160ec0eb3d1cbbf0ec941d1291b33e502a9a14a7711ede5e0c58c281d8853734');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["623616c86a4847ee"],"parcel":"0d04192260a8de2d","table":"main"}', 'b76d05b57588b719dacd82232a6c28f37892783df1e1adea5ea565e9eb544760');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"368d8f7a7bafc8f1","line_state":"packed","order_number":"B-04","parcel":"0d04192260a8de2d","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '63d2e67d0a767cd1a8cf9452dbea74491c6d7dd935036705adf3af48f145d867');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"0d04192260a8de2d"}', '37e95c4979e83a9f228c69d4264ca718e7d2b23f666af59f3d31d8fc266a4f31');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["320f7b1087c1023f"],"parcel":"51759957be8e2121","table":"second"}', 'f0ffc642c436b2ee209c7b1dbba7a102386e6d40c237634e35345946f8dac6af');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"587e415ad5c9468b","line_state":"packed","order_number":"B-09","parcel":"51759957be8e2121","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'fc41144cb4391b0a5e4983da0bde41cf4a68a0a65d7292de3090fa964d08fce8');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["587e415ad5c9468b","54c0725862a294f0"],"number":"B-09","order":"320f7b1087c1023f"}', 'b9296181237eff85cf32f876af04b29327bbf46e49b01bb3a4e6bd7d975da02b');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["a3e169cabbce33cd"],"parcel":"6bc8dc13264243fa","table":"main"}', '73dcd4df171baac23276200eec0530b93ddf1fdbb1aa415f0627d8fae6ef6cb9');
INSERT INTO public.ledger VALUES (143, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"68471715ac9a999e","line_state":"packed","order_number":"B-03","parcel":"6bc8dc13264243fa","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '8a72cb26b80f5b662207fe2c8c01fd2f68a0d6a3f50ee4fda0ce951f9ccdd296');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"81f199a863509c62","reference":"S006-018","stay":"594f8c9d0cc8eb0a"}],"number":"B-13","order":"34e20953d72a25ae"}', 'd8c1cd6827f762ab237bab3de5b1167796afdffd1610c6cba00c8705657b1ea6');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["6c6711ffc2ea51d0","39bbce00bfa3ecf1","f9ee7339f86185c4","b2aa949f851628aa"],"round":"ecc323d29210c1b9"}', 'a16faf64fdbbf73dfc2e9eade39f3fe28fb87088b72ca7512529ecc705163db1');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"6c6711ffc2ea51d0","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ecc323d29210c1b9","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'c0e91fb6e7f6909f83f382070145bc8e67d5e233922070865a2617f37153af4a');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"f9ee7339f86185c4","note":"Not in its bin"}', 'ac91beecdfacbe57e95e84559b69efadd8296ef0146c459eb18e0648d6bfa732');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"ecc323d29210c1b9","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'afda4c989f97274e2ff080daea4cf8c693be98c5d4504e0f7f75949cc291e2b6');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"ecc323d29210c1b9","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '345e678366384bd2a90cf2e777f49d8adbb47a8023eeba0ecde3817d090def56');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"ecc323d29210c1b9","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '2e0b19d081d77c71c44cf7beb77c13f36ab30bf15235087d9c56f59bdf20cf3d');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '2e3bdb8f760c30a42ab9f9e6191ef73fbf7bc1916dd2cb23d238da4c3b2ff93c');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', '2907a92e1f7b892287692a9a42caa472902e2fe3b16b7b5088d62bba572de9bb');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9b52d3b8d3646bbc","reference":"D001-019","stay":"ef1df51ecb4793c2"},{"hold":"already_sold","line":"5fce529fd4ad3ebc","reference":"W002-016","stay":null}],"number":"B-38","order":"0f6c9b3b3a8c0c51"}', '4ce38b5f917ea8ad1456aee4d0972a30b38d99298de275975cb3623ef86949e0');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"ecf10d8d46e40f7a","reference":"W001","stay":null}],"number":"B-39","order":"70fba0c318f461f5"}', '84cc4fec93060d4a7b27c7a68451eb935cd06710e6d0252e7461655df33acc73');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:39:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:S","note":"Spring","stocktake":"9c4ea6a6fcf7a359"}', 'd598d1060d5aea47e3ce3486ddeb1750008cc373ad28651c33f093eca007de42');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:46:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"9c4ea6a6fcf7a359","unread":0}', '1a28c850d1e0f9cc4095f4ddbfe10459f98ed44f5aa3fb138567e046c81a0999');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:54:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0116","S0132"],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"9c4ea6a6fcf7a359","unread":0}', '7322c6f88e38243a088b1b04f0bb6e310c7116417a9d671b056582078e3b81ca');
INSERT INTO public.ledger VALUES (158, '2026-03-02T16:00:00.000000+00:00', 'finding resolved', 'owner', '{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"9c4ea6a6fcf7a359","sure":false}', '159de263ec2918099308c7c2abc53ff4c4984be5bb1721c5d51692a9f1c451f0');
INSERT INTO public.ledger VALUES (159, '2026-03-02T16:03:00.000000+00:00', 'finding resolved', 'owner', '{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"9c4ea6a6fcf7a359","sure":false}', 'f53f4b26337026a827bd94f03a390a2846dac13afff7edef8191ce469a8667b0');
INSERT INTO public.ledger VALUES (160, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'owner', '{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"9c4ea6a6fcf7a359","sure":false}', '18abcd8117ec5b34b43fd0e4440fa65af43e7f67f206326b261e1e7779f5f623');
INSERT INTO public.ledger VALUES (161, '2026-03-02T16:09:00.000000+00:00', 'finding reopened', 'owner', '{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"9c4ea6a6fcf7a359"}', '2d758927b6c0a4c4bebeecd458048e350cc08ca719c5f5c5aebe83d60e8f21a7');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:12:00.000000+00:00', 'stocktake closed', 'owner', '{"findings":{"elsewhere":2,"missing":1,"suspect":1,"unknown":1},"looked":2,"stocktake":"9c4ea6a6fcf7a359"}', '2008a776fbbdbedefa7c5937ce54d64a38db753933374343b63c94f92f753c2d');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:15:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:L","note":"Spring","stocktake":"1c7891a9d64ed8f6"}', '8034f5618d00fcc4891e13a252b8ec2e7175519490770838980f0380fc078a58');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:22:00.000000+00:00', 'looked', 'owner', '{"decoded":["L0032","L0049","L0057","L0073"],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"1c7891a9d64ed8f6","unread":0}', '6bce3f7d341151a24d802f945725142fbb09cc6ba5e454359645d33138a88e4a');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:25:00.000000+00:00', 'card lost', 'owner', '{"code":"L008"}', 'd5605302ca0197914d812059646b5fac8fea566eda2901d757b6b6f4577ea7f8');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:25:00.000000+00:00', 'finding resolved', 'owner', '{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"1c7891a9d64ed8f6","sure":false}', 'c2e083a5ec6cc4a4325ee2c6358b47203aab5215592fe6db8d88048ad1eb4c95');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:28:00.000000+00:00', 'withdrawn', 'owner', '{"code":"L009","reason":"Nowhere to be found","stay":"a712df0ee6a4a4c5"}', 'dee4e22740971c4e41736f6f4689a5bd74b0939b62e2ec4e281443d38302d3d5');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:28:00.000000+00:00', 'finding resolved', 'owner', '{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"1c7891a9d64ed8f6","sure":false}', '9dde18d37a0f99e615f6a1e73e456c9be4d93c950a18bfa257e7064937dde479');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:31:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"tray","note":"Too late today","stocktake":"81612988e62fefe4"}', '95909e7e806c107a27a8b333148e5fce3099793645dbbfd22cf5f0bfc05c74a1');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:34:00.000000+00:00', 'stocktake cancelled', 'owner', '{"stocktake":"81612988e62fefe4"}', '8fcb379465c4aec8d28f34b463e7cee4a673c62cfbda495d2c9b343c66472098');
INSERT INTO public.lines VALUES (15, 'fb5def35e02ac91e', 'b3a760a5cefb1370', 1, 'D009-01B', 'Rear derailleur 9', '', '79888807099ed897', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, '68a4c10f1ba75fe4', 'ef6f5bce2269316c', 1, 'D003-01U', 'Bell with a crown', '', 'afd1ad29c6e31dae', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, '76ea1fa0093728dc', '36e2dd3bb632e21f', 1, 'D005-01E', 'Rear derailleur 5', '', 'ad00ec4865c44c33', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, '663fabd9238a1fbe', '36e2dd3bb632e21f', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, 'ef57d95c77aad15f', '88eff9cb3cf71245', 1, 'D006-016', 'Rear derailleur 6', '', 'b6d732f555f2d0eb', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, 'c3e82d29132f1eab', '88eff9cb3cf71245', 2, 'D007-01R', 'Rear derailleur 7', '', '4016f0fbbd5ff36b', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, '4368844cc8216c12', '7056d577f0292614', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, '792c339d7074e6cd', '6d6a84cfb8521e88', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, '75cbca7bcb6db068', '56540201ffb2db72', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, 'eb3cbfb3b5c36bab', 'bc46d596bb43e869', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '2ba43c3d52040a93', '37be4fa6a9c2bb9d', 1, 'W005-01B', 'Bell with a crown', '', '5e10131602b8e256', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, 'b9cf39bfd752d5b6', 'd0d68786e35e70d3', 1, 'L007-014', 'Dynamo lamp 7', '', '845db2ea2060c324', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, 'ff360b3e18ea4d82', '58ff422d00e4126a', 1, 'L005-01K', 'Dynamo lamp 5', '', '413acb1e30e8132e', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, 'ed5c78ee8f1356d1', '7882c17d51718ec2', 1, 'W006-013', 'Front wheel 6', '', '25592a8833a1361c', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, '5620c0dec358f931', 'c7af7076c0ff00d3', 1, 'S012-01O', '', '', 'f62f87991b1d1648', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, 'c8caf8534f3cfc50', '0b66cb7333c525d6', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, '67792c3970d19ddd', 'ef8c9411d3705c87', 1, 'W007-01W', 'Front wheel 7', '', '926f7665a72c59fc', 'released', NULL, '', 'aa04f583fe048feb', '88d5fb6d16443ca8', 7, NULL, true);
INSERT INTO public.lines VALUES (5, '368d8f7a7bafc8f1', '623616c86a4847ee', 1, 'S004-01O', 'Leather saddle 4', '', '364b108842849b7d', 'packed', NULL, '', '0d04192260a8de2d', '88d5fb6d16443ca8', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, '85fc283038698b04', '623616c86a4847ee', 2, 'S005-01G', 'Leather saddle 5', '', 'd4bfa8d6572e321b', 'picked', NULL, '', NULL, '88d5fb6d16443ca8', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, '587e415ad5c9468b', '320f7b1087c1023f', 1, 'L006-01C', 'Dynamo lamp 6', '', '7e35b59a3e729a0e', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '51759957be8e2121', '88d5fb6d16443ca8', 4, NULL, true);
INSERT INTO public.lines VALUES (12, '54c0725862a294f0', '320f7b1087c1023f', 2, 'L011-010', 'Dynamo lamp 11', '', '2f2cfaa02966373b', 'cancelled', NULL, '', NULL, '88d5fb6d16443ca8', 4, NULL, true);
INSERT INTO public.lines VALUES (3, '68471715ac9a999e', 'a3e169cabbce33cd', 1, 'S002-013', 'Leather saddle 2', '', '08a778e624fca63b', 'packed', NULL, '', '6bc8dc13264243fa', '88d5fb6d16443ca8', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, 'c5a091a36346ac37', 'a3e169cabbce33cd', 2, 'S003-01W', 'Leather saddle 3', '', '87e1958547efcf19', 'picked', NULL, '', NULL, '88d5fb6d16443ca8', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '332c99215f812f4c', '7c8456dbbbf2c548', 1, 'S007-01Z', 'Leather saddle 7', '', '87fbe0f8406dadb1', 'picked', NULL, '', NULL, '88d5fb6d16443ca8', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, '79dbc5f5b51054f4', 'ef8c9411d3705c87', 2, 'W008-01O', 'Front wheel 8', '', '0ea476be539a75cd', 'waiting', NULL, '', NULL, '88d5fb6d16443ca8', 7, NULL, true);
INSERT INTO public.lines VALUES (1, '0ae72cdcfc188533', 'e7a6b3aa550db4e4', 1, 'W001-01E', 'Front wheel 1', '', '5145b6037c27e177', 'released', NULL, '', '7fed2792f64fb71c', '88d5fb6d16443ca8', 1, NULL, true);
INSERT INTO public.lines VALUES (2, 'f4d730b2049e6ceb', 'e7a6b3aa550db4e4', 2, 'W002-016', 'Front wheel 2', '', 'b26ad616cfd829b3', 'released', NULL, '', '7fed2792f64fb71c', '88d5fb6d16443ca8', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '81f199a863509c62', '34e20953d72a25ae', 1, 'S006-018', 'Saddle with springs', '', '594f8c9d0cc8eb0a', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, '88d5fb6d16443ca8', 5, NULL, true);
INSERT INTO public.lines VALUES (20, 'b2aa949f851628aa', '21971628c04cb8f8', 1, 'D008-01J', 'Rear derailleur 8', '', '1f735625281fac81', 'waiting', NULL, '', NULL, 'ecc323d29210c1b9', 4, NULL, true);
INSERT INTO public.lines VALUES (8, '39bbce00bfa3ecf1', '6d37bd2d711f78ca', 1, 'L003-010', 'Dynamo lamp 3', '', '29e3c103254400ad', 'waiting', NULL, '', NULL, 'ecc323d29210c1b9', 2, NULL, true);
INSERT INTO public.lines VALUES (7, '6c6711ffc2ea51d0', '261bd923c124845f', 1, 'L002-017', 'Dynamo lamp 2', '', '9366d0f5f13f7f21', 'picked', NULL, '', NULL, 'ecc323d29210c1b9', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, 'f9ee7339f86185c4', '3ec83dcc7936a769', 1, 'L004-01S', 'Dynamo lamp 4', '', '463402e436b7da24', 'short', NULL, '', NULL, 'ecc323d29210c1b9', 3, NULL, true);
INSERT INTO public.lines VALUES (33, '9b52d3b8d3646bbc', '0f6c9b3b3a8c0c51', 1, 'D001-019', 'Rear derailleur 1', '', 'ef1df51ecb4793c2', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, '5fce529fd4ad3ebc', '0f6c9b3b3a8c0c51', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, 'ecf10d8d46e40f7a', '70fba0c318f461f5', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.looks VALUES (1, 'done-1', 'c113d21f487a813a3760bb78b9b57c83b955b9d6cfd5991fb1d8998fbd902e17', '9c4ea6a6fcf7a359', 'B-1-1', '2026-03-02T15:46:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", []], ["S0036", "S003", "decoded", []], ["S0124", "S012", "decoded", []], ["Q0771", null, "decoded", []], ["D0104", "D010", "decoded", []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '9c4ea6a6fcf7a359', 'B-1-2', '2026-03-02T15:54:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5]], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9]]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '1c7891a9d64ed8f6', 'C-1-1', '2026-03-02T16:22:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", []], ["L0049", "L004", "decoded", []], ["L0057", "L005", "decoded", []], ["L0073", "L007", "decoded", []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '261bd923c124845f', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, '6d37bd2d711f78ca', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, '3ec83dcc7936a769', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '58ff422d00e4126a', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, '34e20953d72a25ae', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'd0d68786e35e70d3', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, 'b3a760a5cefb1370', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '7882c17d51718ec2', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '21971628c04cb8f8', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, 'ef6f5bce2269316c', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '36e2dd3bb632e21f', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, '88eff9cb3cf71245', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '7056d577f0292614', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, '6d6a84cfb8521e88', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, '56540201ffb2db72', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, 'bc46d596bb43e869', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '37be4fa6a9c2bb9d', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, 'c7af7076c0ff00d3', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '0b66cb7333c525d6', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, 'e7a6b3aa550db4e4', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, 'ef8c9411d3705c87', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '7c8456dbbbf2c548', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '623616c86a4847ee', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '0d04192260a8de2d');
INSERT INTO public.orders VALUES (8, '320f7b1087c1023f', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '51759957be8e2121');
INSERT INTO public.orders VALUES (2, 'a3e169cabbce33cd', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '6bc8dc13264243fa');
INSERT INTO public.orders VALUES (26, '0f6c9b3b3a8c0c51', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, '70fba0c318f461f5', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '7fed2792f64fb71c', 'main', 'e7a6b3aa550db4e4', '2026-03-02T13:56:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, 'aa04f583fe048feb', 'main', 'ef8c9411d3705c87', '2026-03-02T14:19:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, '2f0c464cc917d368', 'main', '7c8456dbbbf2c548', '2026-03-02T14:34:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, '0d04192260a8de2d', 'main', '623616c86a4847ee', '2026-03-02T14:40:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '51759957be8e2121', 'second', '320f7b1087c1023f', '2026-03-02T14:49:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '6bc8dc13264243fa', 'main', 'a3e169cabbce33cd', '2026-03-02T14:58:00.000000+00:00', 'open');
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '9c4ea6a6fcf7a359.elsewhere-S012', '9c4ea6a6fcf7a359', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'put_right', '', 'owner', '2026-03-02T16:00:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '9c4ea6a6fcf7a359.unknown-Q0771', '9c4ea6a6fcf7a359', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'ignore', 'A neighbour''s', 'owner', '2026-03-02T16:03:00.000000+00:00', '{"before": {}, "after": {}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '1c7891a9d64ed8f6.missing-L008', '1c7891a9d64ed8f6', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'lost', '', 'owner', '2026-03-02T16:25:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '1c7891a9d64ed8f6.missing-L009', '1c7891a9d64ed8f6', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'withdraw', 'Nowhere to be found', 'owner', '2026-03-02T16:28:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
INSERT INTO public.rounds VALUES (1, '88d5fb6d16443ca8', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'ecc323d29210c1b9', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'dbdf63b97134e0c6cc37e061c7bf5d17bbdb099b360af13c1a852de35cacd877', 'bin', '88d5fb6d16443ca8', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'f5f6fca5aa107be17f92587fa3a68af3f8d0af8c6e918b39872b9803c28dc2b4', 'bin', '88d5fb6d16443ca8', 'W001', false, true, true, '0ae72cdcfc188533', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e7a6b3aa550db4e4", "order_number": "B-01", "line": "0ae72cdcfc188533", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', '132d1b3629f00c7f3a1f4de758466bedfe93d0bb8c4117572c72c882bbad475c', 'bin', '88d5fb6d16443ca8', 'W002', false, true, true, 'f4d730b2049e6ceb', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e7a6b3aa550db4e4", "order_number": "B-01", "line": "f4d730b2049e6ceb", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', '96659643844211eefac43d8501a0eb497a68675ade982257c433b7b5f72aa389', 'bin', '88d5fb6d16443ca8', 'S002', false, true, true, '68471715ac9a999e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a3e169cabbce33cd", "order_number": "B-03", "line": "68471715ac9a999e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '46af544872b8103c43c68fb364cd1dfde04125db3603f3647496f62cabcbdae7', 'bin', '88d5fb6d16443ca8', 'S003', false, true, true, 'c5a091a36346ac37', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "a3e169cabbce33cd", "order_number": "B-03", "line": "c5a091a36346ac37", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'dad8e5e0fa51535ecfa03fce74a5cacf0b3746769fab30e1bb5f08b9f651ae15', 'bin', '88d5fb6d16443ca8', 'S004', false, true, true, '368d8f7a7bafc8f1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "623616c86a4847ee", "order_number": "B-04", "line": "368d8f7a7bafc8f1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', '48f7c6b84a9bb9f88a27c271c1658cfb8f700461b451d39373d92fd78bf32857', 'bin', '88d5fb6d16443ca8', 'S005', false, true, true, '85fc283038698b04', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "623616c86a4847ee", "order_number": "B-04", "line": "85fc283038698b04", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'd305085b9d8a76cbe2780094303e596d6e525649db2711276c8c4fa0cb2e0a5a', 'bin', '88d5fb6d16443ca8', 'L006', false, true, true, '587e415ad5c9468b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "320f7b1087c1023f", "order_number": "B-09", "line": "587e415ad5c9468b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '1467863bbd73f7634d35dd366efe4a13cfa27a278f52f4fcb886a0e4380100f9', 'bin', '88d5fb6d16443ca8', 'L011', false, true, true, '54c0725862a294f0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "320f7b1087c1023f", "order_number": "B-09", "line": "54c0725862a294f0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'a94203a71c58b8a316d2a3026ba6509da21dbca156c020b08c4562a7b896d4a4', 'bin', '88d5fb6d16443ca8', 'S006', false, true, true, '81f199a863509c62', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "34e20953d72a25ae", "order_number": "B-13", "line": "81f199a863509c62", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'ee90abf7a08021b14d153f2efdba9880d9781b90c4cfec5ab2bd303a4f12fe9e', 'bin', '88d5fb6d16443ca8', 'S007', false, true, true, '332c99215f812f4c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "7c8456dbbbf2c548", "order_number": "B-22", "line": "332c99215f812f4c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', '9de625597e540150bf55a109f212d8ebb989537bc8f91be54fb24a21c86a2a9c', 'bin', '88d5fb6d16443ca8', 'W007', false, true, true, '67792c3970d19ddd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ef8c9411d3705c87", "order_number": "B-23", "line": "67792c3970d19ddd", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '1a67164106df5e1ebe4376ab39c47b5eb5c4e85219591c4da813d60cecd219d9', 'bin', '88d5fb6d16443ca8', 'W008', false, true, true, '79dbc5f5b51054f4', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "ef8c9411d3705c87", "order_number": "B-23", "line": "79dbc5f5b51054f4", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '68471715ac9a999e', '7fed2792f64fb71c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a3e169cabbce33cd", "order_number": "B-03", "line": "68471715ac9a999e", "line_state": "picked", "order_state": "picking", "parcel": "7fed2792f64fb71c", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '0ae72cdcfc188533', '7fed2792f64fb71c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e7a6b3aa550db4e4", "order_number": "B-01", "line": "0ae72cdcfc188533", "line_state": "packed", "order_state": "picking", "parcel": "7fed2792f64fb71c", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'f4d730b2049e6ceb', '7fed2792f64fb71c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e7a6b3aa550db4e4", "order_number": "B-01", "line": "f4d730b2049e6ceb", "line_state": "released", "order_state": "released", "parcel": "7fed2792f64fb71c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '0ae72cdcfc188533', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "e7a6b3aa550db4e4", "order_number": "B-01", "line": "0ae72cdcfc188533", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '67792c3970d19ddd', 'aa04f583fe048feb', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ef8c9411d3705c87", "order_number": "B-23", "line": "67792c3970d19ddd", "line_state": "packed", "order_state": "waiting", "parcel": "aa04f583fe048feb", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '368d8f7a7bafc8f1', '0d04192260a8de2d', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "623616c86a4847ee", "order_number": "B-04", "line": "368d8f7a7bafc8f1", "line_state": "packed", "order_state": "picking", "parcel": "0d04192260a8de2d", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '587e415ad5c9468b', '51759957be8e2121', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "320f7b1087c1023f", "order_number": "B-09", "line": "587e415ad5c9468b", "line_state": "packed", "order_state": "picking", "parcel": "51759957be8e2121", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '68471715ac9a999e', '6bc8dc13264243fa', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a3e169cabbce33cd", "order_number": "B-03", "line": "68471715ac9a999e", "line_state": "packed", "order_state": "picking", "parcel": "6bc8dc13264243fa", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'b7271855d38b047655c0bea0f6b8dcc6e6e549060c0deae1a73177b7c5527548', 'bin', 'ecc323d29210c1b9', 'L002', false, true, true, '6c6711ffc2ea51d0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "261bd923c124845f", "order_number": "B-05", "line": "6c6711ffc2ea51d0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '6088471df5fd4362e83ee94ad260a3acb42fef4d196da32b8d824950fb0c82bb', 'bin', 'ecc323d29210c1b9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '6ea1958596507fb37b738b8c8c5c7df3db44154a5a9feb821c0036859e8df5a3', 'bin', 'ecc323d29210c1b9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '84a544126fbaecf32a2bef77cf13abed8f7ec1e3cb39ec33cb5490fbe92c91f4', 'bin', 'ecc323d29210c1b9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.sections VALUES (1, 'D', 'Derailleurs', 10, 'yellow', 3, 30);
INSERT INTO public.sections VALUES (2, 'S', 'Saddles', 10, 'pink', 3, 15);
INSERT INTO public.sections VALUES (3, 'L', 'Lamps', 10, 'green', 3, 15);
INSERT INTO public.sections VALUES (4, 'W', 'Wheels', 10, 'blue', 3, 15);
INSERT INTO public.slots VALUES (14, 'D014', 'D', 14, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (15, 'D015', 'D', 15, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (16, 'D016', 'D', 16, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (17, 'D017', 'D', 17, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (18, 'D018', 'D', 18, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (19, 'D019', 'D', 19, 'A-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (21, 'D021', 'D', 21, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (22, 'D022', 'D', 22, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (23, 'D023', 'D', 23, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (24, 'D024', 'D', 24, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (25, 'D025', 'D', 25, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (26, 'D026', 'D', 26, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (27, 'D027', 'D', 27, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (28, 'D028', 'D', 28, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (30, 'D030', 'D', 30, 'A-1-3', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (44, 'S014', 'S', 14, 'B-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (45, 'S015', 'S', 15, 'B-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (58, 'L013', 'L', 13, 'C-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (59, 'L014', 'L', 14, 'C-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (60, 'L015', 'L', 15, 'C-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (73, 'W013', 'W', 13, 'D-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (74, 'W014', 'W', 14, 'D-1-2', 0, 'tray', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (1, 'D001', 'D', 1, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (2, 'D002', 'D', 2, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (3, 'D003', 'D', 3, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (5, 'D005', 'D', 5, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (6, 'D006', 'D', 6, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (7, 'D007', 'D', 7, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (9, 'D009', 'D', 9, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (11, 'D011', 'D', 11, 'A-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (12, 'D012', 'D', 12, 'A-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (55, 'L010', 'L', 10, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (57, 'L012', 'L', 12, 'C-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (63, 'W003', 'W', 3, 'D-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (65, 'W005', 'W', 5, 'D-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (66, 'W006', 'W', 6, 'D-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (69, 'W009', 'W', 9, 'D-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (70, 'W010', 'W', 10, 'D-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (71, 'W011', 'W', 11, 'D-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (72, 'W012', 'W', 12, 'D-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (13, 'D013', 'D', 13, 'A-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (40, 'S010', 'S', 10, 'B-1-1', 1, 'due', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (64, 'W004', 'W', 4, 'D-1-1', 1, 'due', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (39, 'S009', 'S', 9, 'B-1-1', 1, 'due', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (8, 'D008', 'D', 8, 'A-1-1', 1, 'due', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (20, 'D020', 'D', 20, 'A-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', 'A-1-1', false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL);
INSERT INTO public.stays VALUES (1, 'ef1df51ecb4793c2', '17a54b8888c045a9', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, 'fa6e4622f4b48f8a', 'f64d7ba4340340ed', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'afd1ad29c6e31dae', 'b75966a1f6d869cb', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, 'e260c0fa0042ea72', '829687fb32eaa676', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'ad00ec4865c44c33', '7759bf5b6a5d1fa7', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, 'b6d732f555f2d0eb', 'fd121c11db30d854', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '4016f0fbbd5ff36b', '459e04605e8c7b15', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '79888807099ed897', '8c8d14badfb8cd1e', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'e259cb56efa9b96c', '2529cbe2c3953910', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, 'bf11c920dfe0d08e', '6aacf0f32980fec9', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, 'c3b8826d93f6369e', 'ff712a5eeaa2e9e3', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '535df06d27f9d684', 'd2152d476d999d2f', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '08a778e624fca63b', 'f402d4bf44a8815f', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '87e1958547efcf19', '75687f6fecf5e175', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '364b108842849b7d', 'bdbdad22262cce14', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'd4bfa8d6572e321b', 'e58e84077739342a', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '594f8c9d0cc8eb0a', 'fb6b646ae3b729a2', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '87fbe0f8406dadb1', '58025c946a78a988', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '34581638565e7204', 'ebbfbc200ea4c7d6', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '76eae74d10fd54f8', '9e58f5866a7465ab', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, 'f62f87991b1d1648', 'bac393f94987ea47', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '122a3de2929b6ea6', '7539b944b6f9e6b4', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '9366d0f5f13f7f21', 'c1aec9d9ddf49bb2', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '29e3c103254400ad', 'b1d7774d8bc7407a', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '463402e436b7da24', '1c4399dd215b6774', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '413acb1e30e8132e', '75a9e64570cddc23', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '7e35b59a3e729a0e', '93a9f5630b7a8d90', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '845db2ea2060c324', '42c760280b25e64d', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'd68f330b05fd81ab', 'e7d4adb5429705ba', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '9d0e85eafc1093f5', '5bff9b683df9a453', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '2f2cfaa02966373b', 'dc3ccdaba5f654c5', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '2b38d9c0474db917', 'b441189a130a8460', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '3e911b7c144f272a', 'f7b926396d1ecd25', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '5e10131602b8e256', '4e4ff1559a0d910f', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '25592a8833a1361c', '33fe3bdf5977face', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '0ea476be539a75cd', 'db678b30b6ca2010', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'bec0f9bdc1b5d237', '2afd12e9d4becfcb', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '6fca1a15012cb004', '69cc3e37ee493662', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '91a8becaf0f09657', '6495b264d16cacc3', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '075afc4499c83cbd', '493a2e96beb8a07e', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, 'f98abe59e5e8f185', '563b8f904c6add4d', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '8e0f7118dc27b3fb', '4433b51078cc1e52', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '0d9cb8085eb595bd', '414dcb34374f5d3d', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, 'b0f262627f1be332', '59a5df0fc440c180', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, 'a0e0ab9643b47202', '59a5df0fc440c180', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'a79c5d70dac937b7', '6de15017e01de31e', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '1f735625281fac81', '6de15017e01de31e', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '5145b6037c27e177', '6cf7e701af9e33b6', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'b26ad616cfd829b3', '0c970ad655b48339', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '8f2d6944d5a37ec3', '5d8729a17ece8551', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '926f7665a72c59fc', '7113b384e3dd4566', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, 'a712df0ee6a4a4c5', '80bd4d94467f3362', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:28:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '9c4ea6a6fcf7a359', 'section:S', 'Spring', '2026-03-02T15:39:00.000000+00:00', 154, 'closed', '2026-03-02T16:12:00.000000+00:00', '{"stocktake": "9c4ea6a6fcf7a359", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "places": 2, "looked": 2, "not_looked": [], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S003": "Leather saddle 3"}}');
INSERT INTO public.stocktakes VALUES (2, '1c7891a9d64ed8f6', 'section:L', 'Spring', '2026-03-02T16:15:00.000000+00:00', 162, 'open', NULL, '');
INSERT INTO public.stocktakes VALUES (3, '81612988e62fefe4', 'tray', 'Too late today', '2026-03-02T16:31:00.000000+00:00', 168, 'cancelled', '2026-03-02T16:34:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, '88d5fb6d16443ca8', 1, '68471715ac9a999e', 'B-1-1');
INSERT INTO public.stops VALUES (2, '88d5fb6d16443ca8', 2, 'c5a091a36346ac37', 'B-1-1');
INSERT INTO public.stops VALUES (3, '88d5fb6d16443ca8', 3, '368d8f7a7bafc8f1', 'B-1-1');
INSERT INTO public.stops VALUES (4, '88d5fb6d16443ca8', 4, '85fc283038698b04', 'B-1-1');
INSERT INTO public.stops VALUES (5, '88d5fb6d16443ca8', 5, '81f199a863509c62', 'B-1-1');
INSERT INTO public.stops VALUES (6, '88d5fb6d16443ca8', 6, '332c99215f812f4c', 'B-1-1');
INSERT INTO public.stops VALUES (7, '88d5fb6d16443ca8', 7, '0ae72cdcfc188533', 'D-1-1');
INSERT INTO public.stops VALUES (8, '88d5fb6d16443ca8', 8, 'f4d730b2049e6ceb', 'D-1-1');
INSERT INTO public.stops VALUES (9, '88d5fb6d16443ca8', 9, '67792c3970d19ddd', 'D-1-1');
INSERT INTO public.stops VALUES (10, '88d5fb6d16443ca8', 10, '79dbc5f5b51054f4', 'D-1-1');
INSERT INTO public.stops VALUES (11, '88d5fb6d16443ca8', 11, '587e415ad5c9468b', 'C-1-1');
INSERT INTO public.stops VALUES (12, '88d5fb6d16443ca8', 12, '54c0725862a294f0', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'ecc323d29210c1b9', 1, 'b2aa949f851628aa', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'ecc323d29210c1b9', 2, '6c6711ffc2ea51d0', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'ecc323d29210c1b9', 3, '39bbce00bfa3ecf1', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'ecc323d29210c1b9', 4, 'f9ee7339f86185c4', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
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
SELECT pg_catalog.setval('public.stocktakes_n_seq', 3, true);
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
ALTER TABLE ONLY public.items
    ADD CONSTRAINT uq_items_id UNIQUE (id);
ALTER TABLE ONLY public.labels
    ADD CONSTRAINT uq_labels_hash UNIQUE (hash);
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
CREATE INDEX ix_labels_parcel ON public.labels USING btree (parcel);
CREATE INDEX ix_lines_held ON public.lines USING btree ("order") WHERE (hold IS NOT NULL);
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
