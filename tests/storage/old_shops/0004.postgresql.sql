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
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
ALTER TABLE ONLY public.orders ALTER COLUMN n SET DEFAULT nextval('public.orders_n_seq'::regclass);
ALTER TABLE ONLY public.parcels ALTER COLUMN n SET DEFAULT nextval('public.parcels_n_seq'::regclass);
ALTER TABLE ONLY public.photos ALTER COLUMN n SET DEFAULT nextval('public.photos_n_seq'::regclass);
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, 'e903bf1bf1d832f7df6ffda481032851724f83ab5b00d79cff0668792aa5e00a', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$p46gTW6OOFqYyWpr4J9TDQ$L0Ac++4eOTHM5SIYdncu1Xr8aj83PcwVgAqoWtGnD/o', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '57fa2fa6fff68da89c758ccfbdcf286dcf310b1dc94a0a3f4b428f7782acd58a', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '34d78fdbbb708190bd7ad4754fd83747f25976d3b5249b3a562f32567dcf6685', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '99b170c9d5b19815efc080f6c9d9d4de5d8a64e4a8d95dbc5aa58ec1eb17bb13', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, 'c220e900fb120e6795940fb21f0f58842214b59326735bc9a48e9a4905e1f0a3', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0004');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/2a6485413ded820b', '{"id": "2a6485413ded820b", "item": "f3f0c39fb899fbe4", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 154, '18649afc3c0d58ebaab383330d371811cbd3e449085ef3a6e5a01d83efa468d2', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true}');
INSERT INTO public.items VALUES (3, 'ef00a5c107690d4a', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, 'a6c4ae34ef44471c', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '8e26c7c6b5b0648f', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '83a05d269540eee0', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '2c27b56c0e48c43e', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '56346b802d09f386', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '4a64a01d7748b959', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '5363847978583cbd', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, 'c51d85e85197cb52', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, 'acb298d1ec431927', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, '44bd20572b7b55a8', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, 'd6f8fb8e7ad129f2', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, '8195a0b751e5d4df', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, '0f2003e96a5e7ef6', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, 'bbfa73c51e10eee5', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '0ae98f4de8cc2b23', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, '2875f5b7cc28714f', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '42b78874eb3ebd2f', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, '28f2769f65359b4f', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '1a0c2b40b75632d9', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'f65e77e39000b62d', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '49e860bc16584b42', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '9c244a228b2ab5a5', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '9af866e6012dc6cf', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, '934af73835ad7166', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '2838c7f5b3382165', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, 'efc82b775b0c9856', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '06dd617bbff9abf6', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, '2abded4bf2449348', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, 'cf73aebd7b20dd3c', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '3ac859bbdab0856a', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'cd83b888657d8a96', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, 'aa4600ef49d6cc8f', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '426b7bdc5cb0102c', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'a45225259265c58e', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '92e180db2f335f9b', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, '165960779eda12fd', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, 'e8cf347ddb5796bf', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '4f568b71bd994eb9', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, 'baa57226539253bd', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '2c7d2a727c5b2f42', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '8a81ede12f38451d', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'aff93ecdf4134869', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, 'abc185037a999984', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, 'c99e1fc02f1f27aa', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, 'f3f0c39fb899fbe4', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'a37cc4a7da282cf9', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'cf1859f26dca4b74', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '0f67e66f9b2564d4', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, 'cbb43e860607d126', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '723ebfc776dffd22', '2557');
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"dd7f685eed3756d4","title":"Rear derailleur 1","turn":1}', 'cf78906edad6db7c3d792d8ce74b8a7c14db8cd2a36d809add1b806d1f647743');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"0dd70079402704ef","title":"Rear derailleur 2","turn":1}', '06e2a33a5a7279a6f89d197a8cb201d669f625adf2503b9db2fcfcb2b4825e62');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"b482cd4c8655e283","title":"Rear derailleur 3","turn":1}', '3a852a6d8eb7e4e8ad3e64cbe3e05cac95bc94c5df9156fc19281231799a9b9e');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"299277b9ef2d7b01","title":"Rear derailleur 4","turn":1}', 'aeb09d109bc06a2eec8778401c326c791d9fb9258c4ef4cead0ba7006987fa18');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"ff6600344fe2b943","title":"Rear derailleur 5","turn":1}', '221906583870ebdc4bfcb3d4d4c87045fa3dbb3dd527adcfdd840cd087fc0678');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"b1ea02c4a34de8dc","title":"Rear derailleur 6","turn":1}', '6a497384e4d447fe2593a3b0967ad2838532cf2fa5e656ad7d50988c1893c0e7');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"34945309073a36d2","title":"Rear derailleur 7","turn":1}', '0a42b1ca6bc770587ad327ef024f7460ea2845a3ccc731b0ece95fd0f964493c');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"2a93f98103ba12c5","title":"Rear derailleur 8","turn":1}', 'd6297b40f7a56c69cbd5a6120b911517e652c7800a33ed3e542bf205b71662b8');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"d6b3e32c3db2bfba","title":"Rear derailleur 9","turn":1}', 'b8c58a3b01ca1adca195cd794dd0fc97877f08a5e484cfdbcb52da1a135c943e');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"9b797894dcca1f92","title":"Rear derailleur 10","turn":1}', '17181094b3c954ba6f54863a89cecc8e970c9cfd39201ffe816db0b74b7be311');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"8df394e6472acbd5","title":"Rear derailleur 11","turn":1}', '1b5d9f694b42bbda2c332ef4b4fdd27e46f810ffb0b1676de7cf6a27efa5c78e');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"6f0233ffbab85849","title":"Rear derailleur 12","turn":1}', '39270c60eebc2569cdac27634a3df30b041fa71dc20e88547804494238abf16e');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"c1fadc1c116f8f0d","title":"Leather saddle 1","turn":1}', 'c03718011f30027a1b38b2dc7b225755be95b18862d3380188a94d31e7905b96');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"726d9532f7d1baeb","title":"Leather saddle 2","turn":1}', '9b89ff5924db22c36a94a68f81cf8fbf70f0d1a8ffa33d9c9a492f381ec9eee6');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"3cd57804b4193ace","title":"Leather saddle 3","turn":1}', '74d846d51191633e74c597d18fe5c58c0a84f02a45ee598478aadc83f504cebc');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"0d5d2c19c48e2270","title":"Leather saddle 4","turn":1}', '91427ca0c0d354498be432b6caea5bf8ec47261aa2d8d3e007ec27503373915d');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"2a25a435248b10b0","title":"Leather saddle 5","turn":1}', '0e286a41dcccb64f243a7d9ecfab3b3adc2a80622b3c66787f2a0e6f267a6639');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"8fbf87cd4e9bda62","title":"Leather saddle 6","turn":1}', '0bee14f370fef69493190cfbd1e6bfba7d8cee4987abcdd2d246ef94badda314');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"2c59d9a5ef89f8c3","title":"Leather saddle 7","turn":1}', '971f0b570a7672a3ec8c6ead3c4d2062214f60644a9067dec77edd9adbfea849');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"b8e3c3516cf57c26","title":"Leather saddle 8","turn":1}', 'c4d5df55978fa65cc618ecfe4b31eb9bb5efbefcb959e470ba04aef173924d3a');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"1413436b3a938dfd","title":"Leather saddle 9","turn":1}', '02ba9be1c63ef8919797f8a35ab78003c8c90acac983f660793b24a7c9c22850');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"fab0effbbe0bfbf6","title":"Leather saddle 10","turn":1}', '6c4cc33d82c31bb4c2330f4ac89387e814af3eddef215b5af93171f36988adf9');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"2666311db5696118","title":"Leather saddle 11","turn":1}', '27a8ae9805334ba14e3eb5b093a50c9cf5634722e67bb70ec2c741e956a7fb96');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"3de88a1d9d5bd8d2","title":"Leather saddle 12","turn":1}', '643495371a56ccdbbd0079f7777cedc9353cd708ba17a7f2334c816ab2247ce3');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"11cbafa933f31b4d","title":"Dynamo lamp 1","turn":1}', '65cb666d43b5f98859016931f629d55e1218503aad565a0759843cfa829e790f');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"92ae85ed5d3afd92","title":"Dynamo lamp 2","turn":1}', 'c51c63579aa321257b9c97c8bb1ed468a3add1be93c4e21fa530182e1dbdbea0');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"f9afd402e5dc2085","title":"Dynamo lamp 3","turn":1}', '3ce36d9bac0b5ae84d4b6531a25a491f5627269e61d97ecb0edcb9660a838650');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"d6f4f8b8c2b27960","title":"Dynamo lamp 4","turn":1}', 'f9e4ef389b679356b0c65dab09ace91b20333c23ac8ca584b0733de3c8f5e881');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"ce8e3c22e6a7be36","title":"Dynamo lamp 5","turn":1}', 'c305bbe4a099e7ad43370e5d402bafd5abeff2b9a1c8ce971404842ca37d0893');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"fd27b0991cc9afba","title":"Dynamo lamp 6","turn":1}', '1b297629402df192ac25960395f0bca9ea4cfdf9e823272db38d6106a1963b73');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"1d3fac9e3fefa2bc","title":"Dynamo lamp 7","turn":1}', '6d5ceb268259acbe37fa8299f213b39084f721d75f29ea914204acb7bf4506d2');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"d8c60ddadaceb541","title":"Dynamo lamp 8","turn":1}', 'f1ae30e6b0d5d0788af9c339750bb898d2b3df5b62f017936d40fad8a639b9f2');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"036d2f134d66953e","title":"Dynamo lamp 9","turn":1}', '24569a930bd5451928a619bf449dd2cb7a952c0f8bca5bce849000d2484ffc22');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"ed1062f051e270a1","title":"Dynamo lamp 10","turn":1}', '341adf03995f9cd6a5ce4fd6c2d7f73c108b8fac6ac8d89b734fbe9c934c85df');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"3f7bbe4c52906e8c","title":"Dynamo lamp 11","turn":1}', 'b263883aa142d2395d857213c260ff903a7a465e0b1b7540dcf28696d9972814');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"ed8fae203606f54f","title":"Dynamo lamp 12","turn":1}', 'ab710732f468347c6f12b461d5772c4ad4556c50bd6b8d4e515bb5e7e1b1a322');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"f935642bad1c4719","title":"Front wheel 1","turn":1}', 'edd014fbc040f415ac96f84d2c128e91d170b7ffec3d7291461557979cc931f9');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"92140ea30fda7ee7","title":"Front wheel 2","turn":1}', 'b94e9ae028a19fb9a1b2e9fe8a104f3bf6a5b2a0717b25a27eca06806ddb21ef');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"745ccc0ff8f7e2fd","title":"Front wheel 3","turn":1}', 'c7a3ba1b7a4ca3615ae23950fc713638a9c0035f7c8b306e3d1b147d3e3fee0d');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"9d568b44f7df6cd9","title":"Front wheel 4","turn":1}', '6d1ce608a5de3bbdf295b1c8ff0d966632a04f50fb60b53593aabdbaed80bcd9');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"5c244fcef341dd76","title":"Front wheel 5","turn":1}', '0497b7c49605b342f7ac3d133c2347785119a734eafa25a91f73a2b53c522766');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"62ed35a65df3ada2","title":"Front wheel 6","turn":1}', '720c41bbfaabc77cc3633a20889cac6370c65fb86c6e3b968a956bb756794eae');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"1066e015e883a386","title":"Front wheel 7","turn":1}', 'c99a2eeb573979b890f4b743c13e19d54ac4c7d634ec6624f0911720fb15a10a');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"4489ce594bb6d606","title":"Front wheel 8","turn":1}', 'c26f38174d4445d6334c73dd7525fcccab86562f751aeeed913c119b9aa3fec6');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"457106847bd7f374","title":"Front wheel 9","turn":1}', '0e1fe744565dc9a258bd16ff8a2aa60152656ddbb5bdd661fca2223e2316adbb');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"3880667dfadcf056","title":"Front wheel 10","turn":1}', 'f5a33fbd33903f1b391c70fb504606603530a760c7b5ac8b031ef2327246166e');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"454f0aa8ffe7a6a0","title":"Front wheel 11","turn":1}', 'a4c684df8c23bd0787a8a808364b1d772676dd9f5f8a674c56be079912d935ff');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"8cdc86aae0f991c9","title":"Front wheel 12","turn":1}', 'a1f3169284a8438431af6b41bfdc1a7143037040a79716320066eb2e1f69521a');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"2a6485413ded820b","title":"Brass bell","turn":1}', 'f2dbd23d73173b88b6694643ef23adfbdaedc6189e281685587582aa57ea09d4');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"0dd70079402704ef"}', 'f6bed5481340fcd06e291cff3cc34c5bc03273cac7ded3931b5306142398989b');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"fab0effbbe0bfbf6"}', '81b23f9b2162d956950eb3edf94287b7387ce50c94dce17bcedea98792a98398');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"9d568b44f7df6cd9"}', '89c9dff50f3cbef7c4c8daacfe6f8427dff4cab41a8f3103f82e26dc93697e7b');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"1d1dd8c39a3dd2bb","stay":"1413436b3a938dfd","to":"S013"}', '902cf6dd780deb2e5f98a55e383915c7468e225003533447d50077641cfed741');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"dd7f685eed3756d4"}', '5b489bb17fb156206281dba1e56cc8fb048420aec9f0c9e2096521730ea1a86a');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"c1fadc1c116f8f0d"}', 'fedacf707eff50334aeb5cd3a42e8de7fe1e5c8e0b9532284106a6b67a2b74c6');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', '96bebc3208c9aea74525d4892d1eb18a6a7e56188e054e37366b7c40e2b7e5cb');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'a62d49c29feb30d9d30dc92209817e129c5ac2c354297e1e1076a84bcdae4c95');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'b92d466a5596301deff830bd44a755069187a8b4c93f2b41794b8b565f8cc954');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', '8183aff8869534c9554178301348b09a928004c27d4c5822c6ce7915e4b05c9c');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', 'd28b699ab7217f09ff5019439b797e0d75de97df9414044fc906749ddedd295b');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"1ee3f8b9976d1905","reference":"W001-01E","stay":"f935642bad1c4719"},{"hold":null,"line":"e45d297022c91e55","reference":"W002-016","stay":"92140ea30fda7ee7"}],"number":"B-01","order":"1cca28aaa5941dd6"}', '02420f325229515061e8429b33ef84dc14762464a45b1753a35cc5fb961bf9f3');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"733fa4d28bbcc5c6","reference":"S002-013","stay":"726d9532f7d1baeb"},{"hold":null,"line":"7cd5ea294f608d45","reference":"S003-01W","stay":"3cd57804b4193ace"}],"number":"B-03","order":"f0e4d64e5338fd90"}', 'd5caff3bb748a8209591d23a347651be1eeca9da57238ce7269e8c7879d6c017');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9b841713980867bb","reference":"S004-01O","stay":"0d5d2c19c48e2270"},{"hold":null,"line":"d64467912631b4c5","reference":"S005-01G","stay":"2a25a435248b10b0"}],"number":"B-04","order":"b73a8f11a76e571e"}', '23bb33ad56bccdeb6a45576c399a98f010e29f06a29a9ee0767646936a44d892');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"6b8b2016ac42f99e","reference":"L002-017","stay":"92ae85ed5d3afd92"}],"number":"B-05","order":"2cb48c220c72c2ea"}', '8a3e07a0f62ca3c990915f418c2a6af49ab3b68a0904ede665715c61c1720c5a');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"8bc9f93d6836f639","reference":"L003-010","stay":"f9afd402e5dc2085"}],"number":"B-06","order":"ecc9db244c8bb5ed"}', 'b98bde8406fb0e2979a0375dc15ede0e3ca7463f5519d9c388dd4d897933ae8c');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3b605ae0677e3945","reference":"L004-01S","stay":"d6f4f8b8c2b27960"}],"number":"B-07","order":"2ba8962c7db7fd79"}', '21477c119725c702a4022333b569989e38578919ef882f47da709c7aa08984d3');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e5dd505e445948ea","reference":"L005-01K","stay":"ce8e3c22e6a7be36"}],"number":"B-08","order":"279320e94febe01d"}', '1eb3fd5f7bcce14096d7d30492962c2fcc055e1cfc700d1c4f8d0a152e136069');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e2ccc320d55794bf","reference":"L006-01C","stay":"fd27b0991cc9afba"},{"hold":null,"line":"a321c1203680167f","reference":"L011-010","stay":"3f7bbe4c52906e8c"}],"number":"B-09","order":"333234a7f9d4421e"}', 'a8bcb740e196c79cfe1e8fba505d56ba7c9a1d8d5cfde79657a23c67bd83c2ad');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"73db89b2f9b64723","reference":"S006-018","stay":"8fbf87cd4e9bda62"}],"number":"B-13","order":"1835151516099abe"}', '79ef37dadd32f16802226fad94b06842554b8657579ce5df4c3b54e42a628496');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"7da3cdf856df79ce","reference":"L007-014","stay":"1d3fac9e3fefa2bc"}],"number":"B-17","order":"b8eadd9ae62adb5a"}', 'd9f0b8f64215f0d31f31dc40d8476ab987cbb9ff68b6a4bc70f358b705aae9ff');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b3e2a1a40e050b49","reference":"D009-01B","stay":"d6b3e32c3db2bfba"}],"number":"B-18","order":"33e6c100da3b79cd"}', '04921cc8240c43d852e634b8bff1e57a4838a6d3e64dc51478dcf73ddddc1268');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"fb88f82e0fe30861","reference":"W006-013","stay":"62ed35a65df3ada2"}],"number":"B-21","order":"fe64ab0162e72d17"}', '90a65942371f2b69b29ce891794b0403c1c22cc110ea74e3cf14ce5108d0ae73');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3f5a98ad33c23f99","reference":"S007-01Z","stay":"2c59d9a5ef89f8c3"}],"number":"B-22","order":"0babecd2f9a6f010"}', '7b834137d6b872b90f2c366c04a932110b9f27b856472fb216d17d6ea339c0fa');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"d94ce6ac550f147a","reference":"W007-01W","stay":"1066e015e883a386"},{"hold":null,"line":"bb635578df330e21","reference":"W008-01O","stay":"4489ce594bb6d606"}],"number":"B-23","order":"17a86390ea98c413"}', '16598de9c3c479e049e746388f104f040adbe3d56a687815dd10f26989f1397c');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4eb4f4c2eb94bb7a","reference":"D008-01J","stay":"2a93f98103ba12c5"}],"number":"B-26","order":"66ff081dc873d0de"}', 'e7a00a25a463cb731697e3186de25b0ac3c271831d8f6abf3a6923eacb51fca1');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"9f8b6b5b5a476e60","reference":"D003-01U","stay":"b482cd4c8655e283"}],"number":"B-30","order":"8d9497025af18665"}', 'b0b6b71982cfa9ce54c6d3fa18c0c3045f41cbe84e661fb3175138c6ef62f9c7');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e748cdc1cc342f06","reference":"D005-01E","stay":"ff6600344fe2b943"},{"hold":"unknown_code","line":"a170e6fba58a2fae","reference":"Z999","stay":null}],"number":"B-31","order":"47f377960471492d"}', '6192671dff6bd978b032e44c16f6999905cb41cfd6a984cb2fd4fc85ca3930eb');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"dc55a53f4817ae6f","reference":"D006-016","stay":"b1ea02c4a34de8dc"},{"hold":null,"line":"c8746ff8b9559030","reference":"D007-01R","stay":"34945309073a36d2"}],"number":"B-32","order":"e98f0f04897bc68e"}', '546c6a6629f5f8cc0b9dd19856267f91ea01e53266e78f8cc2d1b41bcad4010e');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"c8746ff8b9559030","reference":"D007-01R","stay":"34945309073a36d2"}],"number":"B-32","order":"e98f0f04897bc68e"}', '13d6e034845f55f388f7120e924442215497775ba8168691bcff15c7615c91f9');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"6d2fb2a18396e511","reference":"lamp","stay":null}],"number":"B-33","order":"577469ed09736627"}', '106d936dd5828008aab8f60bc717f75963f5418e16622bdc7e8554858e400a2a');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"56c2e5a6c0c76dc0","reference":"D006-016","stay":null}],"number":"B-34","order":"78e674b392b97a19"}', '0e27b380ca4bf281d578d058e5fcab09605eb2328c1f137e3f2fd0f36040302a');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"b28de4bc668f8ec2","reference":"W004-01J","stay":null}],"number":"B-35","order":"9e70be5f06da5253"}', 'c56d5fc415006841e9ef6e9eb87500a13c4ff726b7bee882841a1983b61f7ab2');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"4beb2492802c7c3c","reference":"L015","stay":null}],"number":"B-36","order":"aa1ca0efe7d3338a"}', '5c5c62808f75de046dc07ae7d0b2c6d3a2000e84ac29d66c10a9efc980fc2b61');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"b21cd7c21e493551","reference":"W005-01B","stay":"5c244fcef341dd76"}],"number":"B-37","order":"6fad8d1ae959465c"}', '662319ffddd754c2e212004661a5fed980296b504067923f47035b8ed604d4dd');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"b21cd7c21e493551","stay":"5c244fcef341dd76"}', 'c4c74c38cdd7d801f1a401e3b68120cd7697e02059f9edbf93523449f2ec4f5e');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"7da3cdf856df79ce","why":"Another lamp, by the photo"}', '70555827b2f9600babcaf6ab901df039cc4e853a2ed9119c39f10dfb62376dcd');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["e5dd505e445948ea"],"number":"B-08","order":"279320e94febe01d"}', '5aab45a824ee451af3292fb15ef1da2948cb6594d34f440f6daac5f0f2e6a696');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["fb88f82e0fe30861"],"number":"B-21","order":"fe64ab0162e72d17"}', '5d0d66b4d47bb9759f8a8c43d87f4642319985ab2c8744b3b693a49cc8c3f539');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"fb88f82e0fe30861","stay":"62ed35a65df3ada2"}', '91aca40c6bfa8c4737354a7a2713d9689f4646d24fefdcd52f31fd8ada2360d3');
INSERT INTO public.ledger VALUES (102, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"c59c9199def88226","stay":"2a93f98103ba12c5","to":"D020"}', '47371bd11c9818b37e595a19d04e4ef2be8040aa67fe8f4ab5a5c37e9d311087');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"c91de148e0797b19","reference":"S012-01O","stay":"3de88a1d9d5bd8d2"}],"number":"F-1","order":"6d3e9c029f440a0d"}', '07e7a1655e2bff47cac43a5719f99f7dad63c6fe61bbdd13886251dd2140b71d');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"07f9ad3190ba3326","reference":"","stay":null}],"number":"F-2","order":"4779916141fcaed1"}', 'a28042775bfd2ae88d7d9aed0ef63b0c1dc8cb159de6bbfbf34ae27b2b307a16');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["1ee3f8b9976d1905","e45d297022c91e55","733fa4d28bbcc5c6","7cd5ea294f608d45","9b841713980867bb","d64467912631b4c5","e2ccc320d55794bf","a321c1203680167f","73db89b2f9b64723","3f5a98ad33c23f99","d94ce6ac550f147a","bb635578df330e21"],"round":"ee17cef88cb2a140"}', '30b01d0b7dbfd089446e30876314b8a342b1d0953acef02ca575900523218538');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '79b72e8f75851cd426ec497e6065869c623154fe6c8d05a6dba5a340c390467f');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"1ee3f8b9976d1905","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'e8a61ab3510097a7a5d49257b1dfd10b7b5c0cbf6a9067bebd28b2be221539b7');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"e45d297022c91e55","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '38587fe7db40baa64873decf9c64d745056e1237be259ec8b95356a6529de679');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"733fa4d28bbcc5c6","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '5b3c4181eddf25b41e3661b47a5a7ab462ef0b1fd0adfd8a1299f7252dc62968');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"7cd5ea294f608d45","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'b35906ff3e3d4226be806e672c85ef6536f5431e0fbff707c65d5a11ca316e9b');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"9b841713980867bb","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '20975f20874b0be4dd7053526c102af27547495e8c50cf4e975ba98a8f6145a4');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"d64467912631b4c5","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'cc71bdae31eacdc816a5c01eab9d7028ebb19434678058113c82480a78a5c277');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"e2ccc320d55794bf","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '603663a6373f0f3f1997b74a43550a3d0e691fec00a370b2e0bd2f8f913bce9b');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"a321c1203680167f","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'ee8d99cb596139dd8ca5ec48e3e143c6ca50c75656e0bb129aa37adee455c0a1');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"73db89b2f9b64723","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'd71abc82cb7af57590da5118a1496366580b981b58046e9d73278767889f99c8');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"3f5a98ad33c23f99","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'a9b43cf05b2e869bcc2ee20496c84e5f556ac19bcd9491532cf0888f228fe68d');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"d94ce6ac550f147a","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '1076aca6da597e576bdff865178e96818ce0fa65312ea6823aa90cc96bb50302');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"bb635578df330e21","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ee17cef88cb2a140","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'baad506113bbf27b8974fa2de228513e67c862ae24447893c45d3ecfea556158');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"bb635578df330e21","line_state":"waiting"}', '06303cccec7cc2218b48895fe8cae29dc0116f00f49912598dccbe076ae4ec0f');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"round":"ee17cef88cb2a140"}', '30d867e9079e80c8bc1cb67501e544f4659fe9f54e8fd73eff3ac1e6e8f2924a');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["1cca28aaa5941dd6"],"parcel":"723ebfc776dffd22","table":"main"}', '2d7fbf9a8209a14a6ea955643266a7334df5b7fde77fffa2351d665989a8bab5');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"733fa4d28bbcc5c6","line_state":"picked","order_number":"B-03","parcel":"723ebfc776dffd22","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'dda440a9312183d56f08a5a4d2f0a58a274658a5bad64f0ef463ddb72e7b9c0d');
INSERT INTO public.ledger VALUES (123, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"1ee3f8b9976d1905","line_state":"packed","order_number":"B-01","parcel":"723ebfc776dffd22","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b9de0aae843cb75671a7b33e8655239e55aef4645f0903ce0033394c2f5c50a6');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["1cca28aaa5941dd6"],"parcel":"723ebfc776dffd22","released":["W001","W002"]}', 'a781758e30dd0598a9566a48afc644da9b136a124fd7fa87551bbd27f80963cd');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"e45d297022c91e55","line_state":"released","order_number":"B-01","parcel":"723ebfc776dffd22","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'c4317a5239f1f203ab5344f9a591a19a1b0cd83480dc27350ef153be6ff03ed6');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"1ee3f8b9976d1905","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '7f2c34182ede27de212790d16ac128ce639099e43817f6025717b87070c5017c');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"9a3047b12ca4619f","title":"Rear wheel","turn":2}', '87daf16b38e86335ea47e88da99ecc60df11a16aba22b93c76355e3673bd79c8');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"723ebfc776dffd22"}', 'b9cc2995be200fee27fea995a6e820edad76b4fd147cea0e2b4b617d7a60cab7');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["17a86390ea98c413"],"parcel":"9c2d8a9f00d7bba2","table":"main"}', '1aa19755a543425dc99fc4a2ee8616a764810958e155739a7f46f86459dea6da');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"d94ce6ac550f147a","line_state":"packed","order_number":"B-23","parcel":"9c2d8a9f00d7bba2","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '9ec6007cf50cc42b9c98a65df089269239a01b77bbb8d60e2b8ca99ac0484154');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["17a86390ea98c413"],"parcel":"9c2d8a9f00d7bba2","released":["W007"]}', 'af35f326671190748229682c1709ea009e11b6d81c3339a4db6d0e9e1cddd3dc');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["17a86390ea98c413"],"parcel":"9c2d8a9f00d7bba2"}', 'f2f71b98b5745aed695427a8e3bb705444d7552ab4cad5e89eb4c7fdcb3697e1');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["17a86390ea98c413"],"parcel":"9c2d8a9f00d7bba2","released":["W007"]}', '62a9bbf48e4abd7765d18fe3501c5480d9599ade36310a3f061908a25e2376ae');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["0babecd2f9a6f010"],"parcel":"eeeb8e2db9392e3d","table":"main"}', 'ea76449f680b3cb2eb04fe7c3a331302d30475a9ec069d3b7ca725391fbc7982');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"eeeb8e2db9392e3d"}', '5e9d0b72970df1ca17c529a3dbacc40acf8bc8f4f6e99de9c5331c1266918670');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["b73a8f11a76e571e"],"parcel":"65086e43b1a176e7","table":"main"}', '79e230a9fd6d4c37e8a4b40373891f1720bde22303796bd17845af30ab56ca72');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"9b841713980867bb","line_state":"packed","order_number":"B-04","parcel":"65086e43b1a176e7","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'fe5677f8f9e09cda298be18d7a35753de838ad4c785fffc09af9e472195eb67f');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"65086e43b1a176e7"}', 'd9a92ad65edbcfaf8e2c6561ecde04f2851f56927746add1954c09f04045bf93');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["333234a7f9d4421e"],"parcel":"a75a220e202ae449","table":"second"}', '95b62783b73d17a643f1a67ae1cdf0ff6a26e2d803a5624ff5f3da7ff03d5367');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"e2ccc320d55794bf","line_state":"packed","order_number":"B-09","parcel":"a75a220e202ae449","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '9bebd643637c971d08bae223580e085444027e636d895c8017d679478d665fbf');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["e2ccc320d55794bf","a321c1203680167f"],"number":"B-09","order":"333234a7f9d4421e"}', 'b63f9c3ff5a295d4867c81e5a60f73ba41d5c5ce98e160247fb0037065e837b0');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["f0e4d64e5338fd90"],"parcel":"596e0b05443cfb6f","table":"main"}', 'db9b5023f9467dfc6081dbf14b2dcc46428b8e69168351942ff0329ccbc7a0b2');
INSERT INTO public.ledger VALUES (143, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"733fa4d28bbcc5c6","line_state":"packed","order_number":"B-03","parcel":"596e0b05443cfb6f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'a1dce25780c7a4bbb5b1d6723f2a2d8657ad751a1ce256bcafc8429f151e3b6b');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"73db89b2f9b64723","reference":"S006-018","stay":"8fbf87cd4e9bda62"}],"number":"B-13","order":"1835151516099abe"}', 'ec33ea2dafaa0c24b8efe27a0882c12ed523082a8257a133c700d30fdf504f49');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["6b8b2016ac42f99e","8bc9f93d6836f639","3b605ae0677e3945","4eb4f4c2eb94bb7a"],"round":"3aad7d3a1b18d8bd"}', '066ae61d1609cab5acbbda00ffd12f494d3a6dabbde7df1601c273d6f08c98b5');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"6b8b2016ac42f99e","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3aad7d3a1b18d8bd","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'ca611755d8bd0213a1c8af786dd05dc64cd7574cdf977060fba987b42dfc9b88');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"3b605ae0677e3945","note":"Not in its bin"}', '41f11f5b67c339cbf084d7fb85755e7eb12e8c7837b276e28dd93e2ef10362f8');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"3aad7d3a1b18d8bd","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'cab8c2226186f87821c0297fe7e18049e14104bdf4a5142eb77a66c9a052e201');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"3aad7d3a1b18d8bd","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '12e1fdd0524997e412055ad4fc53ee0685909b2d3a95cb6641de2fe39a404106');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"3aad7d3a1b18d8bd","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '180db8552e918af581ce8cab426f04438fd59894c3564c0a9003b39243e66caa');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '78a0ca47ff1c74243850e747392a0b9999f0f9d6460215c1c15ee0dc06d84c70');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', '2fe8d9b456cc71ec5dff061f744d0ed185ddb0fc0c9ac5362204c292ec1bed53');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9e4613de65f80b94","reference":"D001-019","stay":"dd7f685eed3756d4"},{"hold":"already_sold","line":"a1a32f4e9aead23c","reference":"W002-016","stay":null}],"number":"B-38","order":"0a1e0760da37c09f"}', '1900f9a0306af29babc1c7a24d1c581e3b72970efe8de1bc26716049c0f49b08');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"94bcc9b4cd72df40","reference":"W001","stay":null}],"number":"B-39","order":"c02f5f2076a3d8ba"}', '18649afc3c0d58ebaab383330d371811cbd3e449085ef3a6e5a01d83efa468d2');
INSERT INTO public.lines VALUES (15, 'b3e2a1a40e050b49', '33e6c100da3b79cd', 1, 'D009-01B', 'Rear derailleur 9', '', 'd6b3e32c3db2bfba', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, '9f8b6b5b5a476e60', '8d9497025af18665', 1, 'D003-01U', 'Bell with a crown', '', 'b482cd4c8655e283', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, 'e748cdc1cc342f06', '47f377960471492d', 1, 'D005-01E', 'Rear derailleur 5', '', 'ff6600344fe2b943', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, 'a170e6fba58a2fae', '47f377960471492d', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, 'dc55a53f4817ae6f', 'e98f0f04897bc68e', 1, 'D006-016', 'Rear derailleur 6', '', 'b1ea02c4a34de8dc', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, 'c8746ff8b9559030', 'e98f0f04897bc68e', 2, 'D007-01R', 'Rear derailleur 7', '', '34945309073a36d2', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, '6d2fb2a18396e511', '577469ed09736627', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, '56c2e5a6c0c76dc0', '78e674b392b97a19', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, 'b28de4bc668f8ec2', '9e70be5f06da5253', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, '4beb2492802c7c3c', 'aa1ca0efe7d3338a', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, 'b21cd7c21e493551', '6fad8d1ae959465c', 1, 'W005-01B', 'Bell with a crown', '', '5c244fcef341dd76', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, '7da3cdf856df79ce', 'b8eadd9ae62adb5a', 1, 'L007-014', 'Dynamo lamp 7', '', '1d3fac9e3fefa2bc', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, 'e5dd505e445948ea', '279320e94febe01d', 1, 'L005-01K', 'Dynamo lamp 5', '', 'ce8e3c22e6a7be36', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, 'fb88f82e0fe30861', 'fe64ab0162e72d17', 1, 'W006-013', 'Front wheel 6', '', '62ed35a65df3ada2', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, 'c91de148e0797b19', '6d3e9c029f440a0d', 1, 'S012-01O', '', '', '3de88a1d9d5bd8d2', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, '07f9ad3190ba3326', '4779916141fcaed1', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, 'd94ce6ac550f147a', '17a86390ea98c413', 1, 'W007-01W', 'Front wheel 7', '', '1066e015e883a386', 'released', NULL, '', '9c2d8a9f00d7bba2', 'ee17cef88cb2a140', 7, NULL, true);
INSERT INTO public.lines VALUES (5, '9b841713980867bb', 'b73a8f11a76e571e', 1, 'S004-01O', 'Leather saddle 4', '', '0d5d2c19c48e2270', 'packed', NULL, '', '65086e43b1a176e7', 'ee17cef88cb2a140', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, 'd64467912631b4c5', 'b73a8f11a76e571e', 2, 'S005-01G', 'Leather saddle 5', '', '2a25a435248b10b0', 'picked', NULL, '', NULL, 'ee17cef88cb2a140', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, 'e2ccc320d55794bf', '333234a7f9d4421e', 1, 'L006-01C', 'Dynamo lamp 6', '', 'fd27b0991cc9afba', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', 'a75a220e202ae449', 'ee17cef88cb2a140', 4, NULL, true);
INSERT INTO public.lines VALUES (12, 'a321c1203680167f', '333234a7f9d4421e', 2, 'L011-010', 'Dynamo lamp 11', '', '3f7bbe4c52906e8c', 'cancelled', NULL, '', NULL, 'ee17cef88cb2a140', 4, NULL, true);
INSERT INTO public.lines VALUES (3, '733fa4d28bbcc5c6', 'f0e4d64e5338fd90', 1, 'S002-013', 'Leather saddle 2', '', '726d9532f7d1baeb', 'packed', NULL, '', '596e0b05443cfb6f', 'ee17cef88cb2a140', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, '7cd5ea294f608d45', 'f0e4d64e5338fd90', 2, 'S003-01W', 'Leather saddle 3', '', '3cd57804b4193ace', 'picked', NULL, '', NULL, 'ee17cef88cb2a140', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '3f5a98ad33c23f99', '0babecd2f9a6f010', 1, 'S007-01Z', 'Leather saddle 7', '', '2c59d9a5ef89f8c3', 'picked', NULL, '', NULL, 'ee17cef88cb2a140', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, 'bb635578df330e21', '17a86390ea98c413', 2, 'W008-01O', 'Front wheel 8', '', '4489ce594bb6d606', 'waiting', NULL, '', NULL, 'ee17cef88cb2a140', 7, NULL, true);
INSERT INTO public.lines VALUES (1, '1ee3f8b9976d1905', '1cca28aaa5941dd6', 1, 'W001-01E', 'Front wheel 1', '', 'f935642bad1c4719', 'released', NULL, '', '723ebfc776dffd22', 'ee17cef88cb2a140', 1, NULL, true);
INSERT INTO public.lines VALUES (2, 'e45d297022c91e55', '1cca28aaa5941dd6', 2, 'W002-016', 'Front wheel 2', '', '92140ea30fda7ee7', 'released', NULL, '', '723ebfc776dffd22', 'ee17cef88cb2a140', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '73db89b2f9b64723', '1835151516099abe', 1, 'S006-018', 'Saddle with springs', '', '8fbf87cd4e9bda62', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, 'ee17cef88cb2a140', 5, NULL, true);
INSERT INTO public.lines VALUES (20, '4eb4f4c2eb94bb7a', '66ff081dc873d0de', 1, 'D008-01J', 'Rear derailleur 8', '', 'c59c9199def88226', 'waiting', NULL, '', NULL, '3aad7d3a1b18d8bd', 4, NULL, true);
INSERT INTO public.lines VALUES (8, '8bc9f93d6836f639', 'ecc9db244c8bb5ed', 1, 'L003-010', 'Dynamo lamp 3', '', 'f9afd402e5dc2085', 'waiting', NULL, '', NULL, '3aad7d3a1b18d8bd', 2, NULL, true);
INSERT INTO public.lines VALUES (7, '6b8b2016ac42f99e', '2cb48c220c72c2ea', 1, 'L002-017', 'Dynamo lamp 2', '', '92ae85ed5d3afd92', 'picked', NULL, '', NULL, '3aad7d3a1b18d8bd', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, '3b605ae0677e3945', '2ba8962c7db7fd79', 1, 'L004-01S', 'Dynamo lamp 4', '', 'd6f4f8b8c2b27960', 'short', NULL, '', NULL, '3aad7d3a1b18d8bd', 3, NULL, true);
INSERT INTO public.lines VALUES (33, '9e4613de65f80b94', '0a1e0760da37c09f', 1, 'D001-019', 'Rear derailleur 1', '', 'dd7f685eed3756d4', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, 'a1a32f4e9aead23c', '0a1e0760da37c09f', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '94bcc9b4cd72df40', 'c02f5f2076a3d8ba', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '2cb48c220c72c2ea', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, 'ecc9db244c8bb5ed', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, '2ba8962c7db7fd79', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '279320e94febe01d', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, '1835151516099abe', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'b8eadd9ae62adb5a', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, '33e6c100da3b79cd', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, 'fe64ab0162e72d17', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '66ff081dc873d0de', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '8d9497025af18665', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '47f377960471492d', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, 'e98f0f04897bc68e', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '577469ed09736627', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, '78e674b392b97a19', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, '9e70be5f06da5253', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, 'aa1ca0efe7d3338a', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '6fad8d1ae959465c', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, '6d3e9c029f440a0d', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '4779916141fcaed1', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, '1cca28aaa5941dd6', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, '17a86390ea98c413', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '0babecd2f9a6f010', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, 'b73a8f11a76e571e', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '65086e43b1a176e7');
INSERT INTO public.orders VALUES (8, '333234a7f9d4421e', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'a75a220e202ae449');
INSERT INTO public.orders VALUES (2, 'f0e4d64e5338fd90', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '596e0b05443cfb6f');
INSERT INTO public.orders VALUES (26, '0a1e0760da37c09f', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, 'c02f5f2076a3d8ba', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '723ebfc776dffd22', 'main', '1cca28aaa5941dd6', '2026-03-02T13:56:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '9c2d8a9f00d7bba2', 'main', '17a86390ea98c413', '2026-03-02T14:19:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, 'eeeb8e2db9392e3d', 'main', '0babecd2f9a6f010', '2026-03-02T14:34:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, '65086e43b1a176e7', 'main', 'b73a8f11a76e571e', '2026-03-02T14:40:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, 'a75a220e202ae449', 'second', '333234a7f9d4421e', '2026-03-02T14:49:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '596e0b05443cfb6f', 'main', 'f0e4d64e5338fd90', '2026-03-02T14:58:00.000000+00:00', 'open');
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.rounds VALUES (1, 'ee17cef88cb2a140', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '3aad7d3a1b18d8bd', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '1b2651c466299352bc1c74bbc236671ce44b07a389c9dd4f2e676cb43c41e2ad', 'bin', 'ee17cef88cb2a140', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '478ea2615ddb36e3b03331dd0372c74bb297ba968fece9024d3c01684fc9ad85', 'bin', 'ee17cef88cb2a140', 'W001', false, true, true, '1ee3f8b9976d1905', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "1cca28aaa5941dd6", "order_number": "B-01", "line": "1ee3f8b9976d1905", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', '8f0f75195692b66a0b26c2b3a437cbebaa05de68e67590cf5f06fa4fee6e3f75', 'bin', 'ee17cef88cb2a140', 'W002', false, true, true, 'e45d297022c91e55', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "1cca28aaa5941dd6", "order_number": "B-01", "line": "e45d297022c91e55", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', '427a4b02fc1e22bc05df037286fe88b1ac78d5d2b3e13b6368bcb5c316544ca7', 'bin', 'ee17cef88cb2a140', 'S002', false, true, true, '733fa4d28bbcc5c6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f0e4d64e5338fd90", "order_number": "B-03", "line": "733fa4d28bbcc5c6", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '08fca6cf21abccde0c8be8a06ddee844c5acce33fa0bedb65ac75f77e5352176', 'bin', 'ee17cef88cb2a140', 'S003', false, true, true, '7cd5ea294f608d45', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "f0e4d64e5338fd90", "order_number": "B-03", "line": "7cd5ea294f608d45", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '05226f9d3ce1aeb44a100050c45d9face10d6d65454cea89dcf29748305c0b57', 'bin', 'ee17cef88cb2a140', 'S004', false, true, true, '9b841713980867bb', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "b73a8f11a76e571e", "order_number": "B-04", "line": "9b841713980867bb", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', '756ac51933d8994252ed6c207b9250e4a3aa77458cd5f382e8450793c67ee65f', 'bin', 'ee17cef88cb2a140', 'S005', false, true, true, 'd64467912631b4c5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "b73a8f11a76e571e", "order_number": "B-04", "line": "d64467912631b4c5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', '405cec7f6e413d200214c85d55989c4815ab831cd4be08c240edaa8bcef5d1f0', 'bin', 'ee17cef88cb2a140', 'L006', false, true, true, 'e2ccc320d55794bf', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "333234a7f9d4421e", "order_number": "B-09", "line": "e2ccc320d55794bf", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '92cd29a5bbec8bb08f6435e690ede404aac00b582f6e652f5ffcde6a5c4bf4c1', 'bin', 'ee17cef88cb2a140', 'L011', false, true, true, 'a321c1203680167f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "333234a7f9d4421e", "order_number": "B-09", "line": "a321c1203680167f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'aef8e07b524e2f05ebdc085f036de9a7cca662d3898236534b90318d21ecfed1', 'bin', 'ee17cef88cb2a140', 'S006', false, true, true, '73db89b2f9b64723', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "1835151516099abe", "order_number": "B-13", "line": "73db89b2f9b64723", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'b1a990d3fb553b65e1d395f5fefb18a86f536df021222e3f92787184c6241aa8', 'bin', 'ee17cef88cb2a140', 'S007', false, true, true, '3f5a98ad33c23f99', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "0babecd2f9a6f010", "order_number": "B-22", "line": "3f5a98ad33c23f99", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'f9380ce01ea67721276b468f326d9cf0d4c55f20702ec1522d6effb6fdba03b7', 'bin', 'ee17cef88cb2a140', 'W007', false, true, true, 'd94ce6ac550f147a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "17a86390ea98c413", "order_number": "B-23", "line": "d94ce6ac550f147a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'b020140698367c524cc2d002c1a838b38f12471af71e684406fe2a69baa47be9', 'bin', 'ee17cef88cb2a140', 'W008', false, true, true, 'bb635578df330e21', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "17a86390ea98c413", "order_number": "B-23", "line": "bb635578df330e21", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '733fa4d28bbcc5c6', '723ebfc776dffd22', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f0e4d64e5338fd90", "order_number": "B-03", "line": "733fa4d28bbcc5c6", "line_state": "picked", "order_state": "picking", "parcel": "723ebfc776dffd22", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '1ee3f8b9976d1905', '723ebfc776dffd22', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "1cca28aaa5941dd6", "order_number": "B-01", "line": "1ee3f8b9976d1905", "line_state": "packed", "order_state": "picking", "parcel": "723ebfc776dffd22", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'e45d297022c91e55', '723ebfc776dffd22', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "1cca28aaa5941dd6", "order_number": "B-01", "line": "e45d297022c91e55", "line_state": "released", "order_state": "released", "parcel": "723ebfc776dffd22", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '1ee3f8b9976d1905', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "1cca28aaa5941dd6", "order_number": "B-01", "line": "1ee3f8b9976d1905", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'd94ce6ac550f147a', '9c2d8a9f00d7bba2', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "17a86390ea98c413", "order_number": "B-23", "line": "d94ce6ac550f147a", "line_state": "packed", "order_state": "waiting", "parcel": "9c2d8a9f00d7bba2", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '9b841713980867bb', '65086e43b1a176e7', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "b73a8f11a76e571e", "order_number": "B-04", "line": "9b841713980867bb", "line_state": "packed", "order_state": "picking", "parcel": "65086e43b1a176e7", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'e2ccc320d55794bf', 'a75a220e202ae449', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "333234a7f9d4421e", "order_number": "B-09", "line": "e2ccc320d55794bf", "line_state": "packed", "order_state": "picking", "parcel": "a75a220e202ae449", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '733fa4d28bbcc5c6', '596e0b05443cfb6f', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f0e4d64e5338fd90", "order_number": "B-03", "line": "733fa4d28bbcc5c6", "line_state": "packed", "order_state": "picking", "parcel": "596e0b05443cfb6f", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', '97a0a92eacc8a18caaa574fbca80fb7b6ebb4d18ebf5aa0dc265844eb2f414bc', 'bin', '3aad7d3a1b18d8bd', 'L002', false, true, true, '6b8b2016ac42f99e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "2cb48c220c72c2ea", "order_number": "B-05", "line": "6b8b2016ac42f99e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', 'f8eea02ef957664b5fb10006bb74ba5c1af5d0339564dfbed24d5da45288f14a', 'bin', '3aad7d3a1b18d8bd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'ef0fb3d3f63460e4aca97a0f05148c21323b646afb0bc21c1cf049b994876a43', 'bin', '3aad7d3a1b18d8bd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '8ef6ff6a8c5f1b3907018e06e15e38ac1b1bf617e87e7bf7935d79665d56b306', 'bin', '3aad7d3a1b18d8bd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'on_item', NULL, NULL, NULL);
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
INSERT INTO public.stays VALUES (1, 'dd7f685eed3756d4', 'cf1859f26dca4b74', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '0dd70079402704ef', 'a37cc4a7da282cf9', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'b482cd4c8655e283', 'ef00a5c107690d4a', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '299277b9ef2d7b01', 'a6c4ae34ef44471c', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'ff6600344fe2b943', '8e26c7c6b5b0648f', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, 'b1ea02c4a34de8dc', '83a05d269540eee0', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '34945309073a36d2', '2c27b56c0e48c43e', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, 'd6b3e32c3db2bfba', '4a64a01d7748b959', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '9b797894dcca1f92', '5363847978583cbd', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '8df394e6472acbd5', 'c51d85e85197cb52', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '6f0233ffbab85849', 'acb298d1ec431927', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, 'c1fadc1c116f8f0d', '0f67e66f9b2564d4', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '726d9532f7d1baeb', '44bd20572b7b55a8', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '3cd57804b4193ace', 'd6f8fb8e7ad129f2', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '0d5d2c19c48e2270', '8195a0b751e5d4df', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '2a25a435248b10b0', '0f2003e96a5e7ef6', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '8fbf87cd4e9bda62', 'bbfa73c51e10eee5', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '2c59d9a5ef89f8c3', '0ae98f4de8cc2b23', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, 'b8e3c3516cf57c26', '2875f5b7cc28714f', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '2666311db5696118', '1a0c2b40b75632d9', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '3de88a1d9d5bd8d2', 'f65e77e39000b62d', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '11cbafa933f31b4d', '49e860bc16584b42', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '92ae85ed5d3afd92', '9c244a228b2ab5a5', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'f9afd402e5dc2085', '9af866e6012dc6cf', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'd6f4f8b8c2b27960', '934af73835ad7166', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, 'ce8e3c22e6a7be36', '2838c7f5b3382165', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'fd27b0991cc9afba', 'efc82b775b0c9856', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '1d3fac9e3fefa2bc', '06dd617bbff9abf6', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'd8c60ddadaceb541', '2abded4bf2449348', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (33, '036d2f134d66953e', 'cf73aebd7b20dd3c', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'ed1062f051e270a1', '3ac859bbdab0856a', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '3f7bbe4c52906e8c', 'cd83b888657d8a96', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'ed8fae203606f54f', 'aa4600ef49d6cc8f', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '745ccc0ff8f7e2fd', '92e180db2f335f9b', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '5c244fcef341dd76', 'e8cf347ddb5796bf', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '62ed35a65df3ada2', '4f568b71bd994eb9', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '4489ce594bb6d606', '2c7d2a727c5b2f42', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, '457106847bd7f374', '8a81ede12f38451d', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '3880667dfadcf056', 'aff93ecdf4134869', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '454f0aa8ffe7a6a0', 'abc185037a999984', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '8cdc86aae0f991c9', 'c99e1fc02f1f27aa', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '2a6485413ded820b', 'f3f0c39fb899fbe4', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'fab0effbbe0bfbf6', '28f2769f65359b4f', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '9d568b44f7df6cd9', '165960779eda12fd', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '1413436b3a938dfd', '42b78874eb3ebd2f', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '1d1dd8c39a3dd2bb', '42b78874eb3ebd2f', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '2a93f98103ba12c5', '56346b802d09f386', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, 'c59c9199def88226', '56346b802d09f386', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, 'f935642bad1c4719', '426b7bdc5cb0102c', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '92140ea30fda7ee7', 'a45225259265c58e', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '9a3047b12ca4619f', 'cbb43e860607d126', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '1066e015e883a386', 'baa57226539253bd', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, 'ee17cef88cb2a140', 1, '733fa4d28bbcc5c6', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'ee17cef88cb2a140', 2, '7cd5ea294f608d45', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'ee17cef88cb2a140', 3, '9b841713980867bb', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'ee17cef88cb2a140', 4, 'd64467912631b4c5', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'ee17cef88cb2a140', 5, '73db89b2f9b64723', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'ee17cef88cb2a140', 6, '3f5a98ad33c23f99', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'ee17cef88cb2a140', 7, '1ee3f8b9976d1905', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'ee17cef88cb2a140', 8, 'e45d297022c91e55', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'ee17cef88cb2a140', 9, 'd94ce6ac550f147a', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'ee17cef88cb2a140', 10, 'bb635578df330e21', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'ee17cef88cb2a140', 11, 'e2ccc320d55794bf', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'ee17cef88cb2a140', 12, 'a321c1203680167f', 'C-1-2');
INSERT INTO public.stops VALUES (13, '3aad7d3a1b18d8bd', 1, '4eb4f4c2eb94bb7a', 'A-1-2');
INSERT INTO public.stops VALUES (14, '3aad7d3a1b18d8bd', 2, '6b8b2016ac42f99e', 'C-1-1');
INSERT INTO public.stops VALUES (15, '3aad7d3a1b18d8bd', 3, '8bc9f93d6836f639', 'C-1-1');
INSERT INTO public.stops VALUES (16, '3aad7d3a1b18d8bd', 4, '3b605ae0677e3945', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.lines_n_seq', 35, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 27, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 2, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 25, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 52, true);
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
CREATE INDEX ix_aliases_code ON public.aliases USING btree (code);
CREATE INDEX ix_bins_section ON public.bins USING btree (section);
CREATE INDEX ix_labels_parcel ON public.labels USING btree (parcel);
CREATE INDEX ix_lines_held ON public.lines USING btree ("order") WHERE (hold IS NOT NULL);
CREATE INDEX ix_lines_order ON public.lines USING btree ("order", state);
CREATE INDEX ix_lines_parcel ON public.lines USING btree (parcel);
CREATE INDEX ix_lines_state ON public.lines USING btree (state);
CREATE INDEX ix_lines_stay ON public.lines USING btree (stay);
CREATE INDEX ix_scans_spot ON public.scans USING btree (station, spot, n);
CREATE INDEX ix_slots_card ON public.slots USING btree (card, section, number);
CREATE INDEX ix_stays_item ON public.stays USING btree (item);
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
ALTER TABLE ONLY public.orders
    ADD CONSTRAINT fk_orders_parcel FOREIGN KEY (parcel) REFERENCES public.parcels(id);
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
