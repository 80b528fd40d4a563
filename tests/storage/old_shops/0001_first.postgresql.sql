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
    notes text NOT NULL
);
CREATE SEQUENCE public.items_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.items_n_seq OWNED BY public.items.n;
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
    scan character varying(64)
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
ALTER TABLE ONLY public.answers ALTER COLUMN n SET DEFAULT nextval('public.answers_n_seq'::regclass);
ALTER TABLE ONLY public.bins ALTER COLUMN n SET DEFAULT nextval('public.bins_n_seq'::regclass);
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
ALTER TABLE ONLY public.orders ALTER COLUMN n SET DEFAULT nextval('public.orders_n_seq'::regclass);
ALTER TABLE ONLY public.parcels ALTER COLUMN n SET DEFAULT nextval('public.parcels_n_seq'::regclass);
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$sH5uKWKM9XYINNiaRnE2cw$f/vGX4Veiwp/93c6J3pFT7qVwYvflXcJbXupzH8X4Bs', 'owner', 'password', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '0219266b032466c41be3e918c124a7905e5c84cc23afe0e9338bcd6cf34c3a2d', 'owner', 'owner', 'session', '2026-03-02T08:01:00.000000+00:00', '2026-03-16T08:01:00.000000+00:00');
INSERT INTO public.access VALUES (3, 'baf5f725be9207c0f1ec5617674844f49a22af14238c7a7e73469889702d4d97', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (4, '51ce6ff2570c994584dce00d670f3e0bbd07eb85331729105eb5c8c2cc8d5783', 'label printer', 'program', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '3c4e37f21e0b3e49b177545329f2da02c9e4e039cdbf247835545cae88ed9b52', 'helper', 'helper', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.alembic_version VALUES ('0001');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 146, '5c69ebc0a111895818fe72cfffff5e753b93866eb0dadf952df10caf9d1983b1', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles"}');
INSERT INTO public.items VALUES (1, '8242afa7a3e3908a', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”');
INSERT INTO public.items VALUES (3, 'ec51e491ba954ff2', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”');
INSERT INTO public.items VALUES (4, 'e0f4904b6b82cfa9', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”');
INSERT INTO public.items VALUES (5, 'b997f9422a34b474', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”');
INSERT INTO public.items VALUES (6, '0ea8342c26d2f743', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”');
INSERT INTO public.items VALUES (7, 'a76bfbb7e3786b55', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”');
INSERT INTO public.items VALUES (8, 'bde798c2a8aa4343', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”');
INSERT INTO public.items VALUES (9, '16f1c8584cb568b5', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”');
INSERT INTO public.items VALUES (10, 'e3a817bc844686b7', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”');
INSERT INTO public.items VALUES (11, 'd3d7deac79c97340', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”');
INSERT INTO public.items VALUES (12, '6f8cdaa00c2d7a7d', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”');
INSERT INTO public.items VALUES (13, '56af820947c07862', 'Leather saddle 1', 'L-S1', 'Scratched, “used”');
INSERT INTO public.items VALUES (14, 'de752f54edd2661f', 'Leather saddle 2', 'L-S2', 'Scratched, “used”');
INSERT INTO public.items VALUES (15, 'f1c0f644ed75b801', 'Leather saddle 3', 'L-S3', 'Scratched, “used”');
INSERT INTO public.items VALUES (16, '6689e72a099bbae9', 'Leather saddle 4', 'L-S4', 'Scratched, “used”');
INSERT INTO public.items VALUES (17, '49e38eca16d2361b', 'Leather saddle 5', 'L-S5', 'Scratched, “used”');
INSERT INTO public.items VALUES (18, 'ae45088085ffa7af', 'Leather saddle 6', 'L-S6', 'Scratched, “used”');
INSERT INTO public.items VALUES (19, '16fe14680c14e746', 'Leather saddle 7', 'L-S7', 'Scratched, “used”');
INSERT INTO public.items VALUES (20, '53b8f6b87d3b9ce0', 'Leather saddle 8', 'L-S8', 'Scratched, “used”');
INSERT INTO public.items VALUES (21, 'a47e719cb9e193d8', 'Leather saddle 9', 'L-S9', 'Scratched, “used”');
INSERT INTO public.items VALUES (22, 'dd1b3bc5c23a0593', 'Leather saddle 10', 'L-S10', 'Scratched, “used”');
INSERT INTO public.items VALUES (23, '07cd25d99e2116ab', 'Leather saddle 11', 'L-S11', 'Scratched, “used”');
INSERT INTO public.items VALUES (24, '5d6b70d40e731b15', 'Leather saddle 12', 'L-S12', 'Scratched, “used”');
INSERT INTO public.items VALUES (25, '350a8ff7ddb9c65c', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”');
INSERT INTO public.items VALUES (26, 'aca27047a1f8b131', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”');
INSERT INTO public.items VALUES (27, '28d9be513766f0b3', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”');
INSERT INTO public.items VALUES (28, 'f1aa2b5b1fdb56e3', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”');
INSERT INTO public.items VALUES (29, '804a7e6aaab5ad94', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”');
INSERT INTO public.items VALUES (30, 'dfd7318999f9844b', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”');
INSERT INTO public.items VALUES (31, 'ba026bb099b270ea', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”');
INSERT INTO public.items VALUES (32, '02edf2d607ad624c', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”');
INSERT INTO public.items VALUES (33, 'e6a4ececaefc91a8', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”');
INSERT INTO public.items VALUES (34, '47b9d55a9becd415', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”');
INSERT INTO public.items VALUES (35, '7a87e36d176788cc', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”');
INSERT INTO public.items VALUES (36, 'ebbff53f94a7b610', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”');
INSERT INTO public.items VALUES (37, 'c3d417c3ae2fb51e', 'Front wheel 1', 'L-W1', 'Scratched, “used”');
INSERT INTO public.items VALUES (38, 'a7472efe6852cb6f', 'Front wheel 2', 'L-W2', 'Scratched, “used”');
INSERT INTO public.items VALUES (39, '3e5213d4ff59bf75', 'Front wheel 3', 'L-W3', 'Scratched, “used”');
INSERT INTO public.items VALUES (40, 'e1cbf933f1a9f109', 'Front wheel 4', 'L-W4', 'Scratched, “used”');
INSERT INTO public.items VALUES (41, '8d10e0372cd1f45d', 'Front wheel 5', 'L-W5', 'Scratched, “used”');
INSERT INTO public.items VALUES (42, '1aab3432f83db82b', 'Front wheel 6', 'L-W6', 'Scratched, “used”');
INSERT INTO public.items VALUES (43, '9a5a441ee41efac0', 'Front wheel 7', 'L-W7', 'Scratched, “used”');
INSERT INTO public.items VALUES (44, '57653d3afd75dc09', 'Front wheel 8', 'L-W8', 'Scratched, “used”');
INSERT INTO public.items VALUES (45, '09ac41130004177d', 'Front wheel 9', 'L-W9', 'Scratched, “used”');
INSERT INTO public.items VALUES (46, '0ffb7332a34b80e2', 'Front wheel 10', 'L-W10', 'Scratched, “used”');
INSERT INTO public.items VALUES (47, 'c2fc3359d7cf0e46', 'Front wheel 11', 'L-W11', 'Scratched, “used”');
INSERT INTO public.items VALUES (48, '16f2524e50064a62', 'Front wheel 12', 'L-W12', 'Scratched, “used”');
INSERT INTO public.items VALUES (49, '0a5042abaa195c70', 'Brass bell', '', '');
INSERT INTO public.items VALUES (2, '237c8b543b0272f2', 'Rear derailleur 2', 'L-D2', 'Cable is new');
INSERT INTO public.items VALUES (50, '801c027fcc68f4ce', 'Rear wheel', '', '');
INSERT INTO public.ledger VALUES (1, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"owner","role":"owner"}', '303d6ed4c179ff439f0e1362aa484b09de102c70718f948c6578c81714652d93');
INSERT INTO public.ledger VALUES (2, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"label printer","role":"program"}', '0b0ed84054963b8bd50638d30a6ffe840131923dc2c83adbcfcb5c1870942eed');
INSERT INTO public.ledger VALUES (3, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"helper","role":"helper"}', 'fec6d811c0b0c0f5a598f71abc88663d9f41d59c5b172ad6e2f7efced9fd53ea');
INSERT INTO public.ledger VALUES (4, '2026-03-02T08:02:00.000000+00:00', 'section added', 'owner', '{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}', 'c636450eeb05aad2c624b5f1d002c8a34e66413098cf7db3235ccf0094537178');
INSERT INTO public.ledger VALUES (5, '2026-03-02T08:03:00.000000+00:00', 'slots added', 'owner', '{"first":"D001","last":"D030","section":"D"}', '1ea83cd8081a654665d434329b12e09f48dd4573ee473169622640c0aec290cf');
INSERT INTO public.ledger VALUES (6, '2026-03-02T08:04:00.000000+00:00', 'section added', 'owner', '{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}', '290be6dd2c22102164d2c821a37e07c949baebe577b723e2ca55fc918b59c055');
INSERT INTO public.ledger VALUES (7, '2026-03-02T08:05:00.000000+00:00', 'slots added', 'owner', '{"first":"S001","last":"S015","section":"S"}', '79424ad7059e9be24d3b4e87c5b3354a6a3f59832abc5bd7330112a6f394d2c4');
INSERT INTO public.ledger VALUES (8, '2026-03-02T08:06:00.000000+00:00', 'section added', 'owner', '{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}', '4df76fcb3acf7022ead8fd78903fb61dc58bc4016d1caddd335158706b420e2d');
INSERT INTO public.ledger VALUES (9, '2026-03-02T08:07:00.000000+00:00', 'slots added', 'owner', '{"first":"L001","last":"L015","section":"L"}', '84de85bcd479def46cc146d2d4ad6d919e2655ba52bbb8d70a7a2c58ee916e03');
INSERT INTO public.ledger VALUES (10, '2026-03-02T08:08:00.000000+00:00', 'section added', 'owner', '{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}', '255a9aa1d307152117cbe07acdb98e7de9d9237486908d840dfeaa3b6cb51716');
INSERT INTO public.ledger VALUES (11, '2026-03-02T08:09:00.000000+00:00', 'slots added', 'owner', '{"first":"W001","last":"W015","section":"W"}', '55050c802cd83502e7d44f04e9b0f2f7a986f1f3ad01e82eef1cbf62fda6c0db');
INSERT INTO public.ledger VALUES (12, '2026-03-02T08:10:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"6e5c6a51d8cf549c","title":"Rear derailleur 1","turn":1}', '329d57b847995fa9605b6eee6a8a67d06b791ffac9c1c65702885f968544493f');
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:12:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"b5b62bec707aaceb","title":"Rear derailleur 2","turn":1}', '2e58e94198bf8b686ef0d648a94aac9e61ba897495bb38f6510a69ff0976e19d');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:14:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"caf5419155fd9e0d","title":"Rear derailleur 3","turn":1}', '6dcd95d733e17f4d30f43fbf20c6d67c6065b1633fa8d47632f339bafe3e0dae');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:16:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"800870e45b069f2e","title":"Rear derailleur 4","turn":1}', '2cf8730748a3d4ebf2c4242a96dbfc2daf5af65efdb8df2d710ce47e9cfd68c7');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:18:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"bddb7f458096f0c6","title":"Rear derailleur 5","turn":1}', '30f8e3fc8ce88414915fb19fc870f7c57d21bf0ec2a3ca027048574d843f6f02');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:20:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"3d6daab8be98b1d0","title":"Rear derailleur 6","turn":1}', '091daaf5ee9ec11f7ff4324148a769579920511bdd23d232601d7628010d7519');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:22:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"30cd2dc6e4fd04ac","title":"Rear derailleur 7","turn":1}', 'f38011e18897affb8e6197d3ffdaf99d1591dfb8c2dd925ad78d237315b16904');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:24:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"f3f22e17b85f20df","title":"Rear derailleur 8","turn":1}', '72f505645fdc8e6a03b96970a4a5c3a7064152577ca43c961d7a62f0828e00e7');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:26:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"353fb4581fc8323c","title":"Rear derailleur 9","turn":1}', '9b622cb8e5771be4709ec5ced344c12987d4114ff99b1809f87ab6f7d1ee08ef');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:28:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"3b0e83515a15fab5","title":"Rear derailleur 10","turn":1}', 'b849fd7c6fd8f6dc29cbb04f554efa69df31c431aeebfe897237d82d66f68786');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:30:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"669021a4ad948eb1","title":"Rear derailleur 11","turn":1}', '3d951ed20454ea5e6bdd406044af07ad08dbe187bd838a0c6017e8fe2f92520e');
INSERT INTO public.ledger VALUES (23, '2026-03-02T08:32:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"a1042ed9cfcaea6e","title":"Rear derailleur 12","turn":1}', '8f42033d137fd535a0c2f3e9d3073adbc3e82504709935fe584ea6859dbed7ad');
INSERT INTO public.ledger VALUES (24, '2026-03-02T08:34:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"61af01d7542ab8ca","title":"Leather saddle 1","turn":1}', 'cc11214ff9117a6db2cc59ca236636804c057e5ab131136fc5c8b4064a53a50f');
INSERT INTO public.ledger VALUES (25, '2026-03-02T08:36:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"ed2c98a82c0fcbe9","title":"Leather saddle 2","turn":1}', '8c0589c9adfa53780c229e499799f0bffcab99ee42002317791f192034928c69');
INSERT INTO public.ledger VALUES (26, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"214f8fa20ddb1d97","title":"Leather saddle 3","turn":1}', '25cc4da120d3705c8ae5a32214f034908ab0993dea2901344f811e5aa13b319f');
INSERT INTO public.ledger VALUES (27, '2026-03-02T08:40:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"917b26df90870efb","title":"Leather saddle 4","turn":1}', '3c90c02b139eecff9fdeae1e175cc690080c639a8d448aec60e704d67dcefde3');
INSERT INTO public.ledger VALUES (28, '2026-03-02T08:42:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"4b3e831a5a8f77ab","title":"Leather saddle 5","turn":1}', '3c8adcb90ecb7bece0b90540fa250341cd10dea3cee9569f7e566db6123c684f');
INSERT INTO public.ledger VALUES (29, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"0c42bf794c940654","title":"Leather saddle 6","turn":1}', '7189438daa43df823f733a25bed266b0df8f95e191bfc7f9dea36abed0781bf5');
INSERT INTO public.ledger VALUES (30, '2026-03-02T08:46:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"6fb3d28a6e320d5a","title":"Leather saddle 7","turn":1}', 'a412094d87f5230e0185691059ba7ab053943af283342f0f03f42922cb138748');
INSERT INTO public.ledger VALUES (31, '2026-03-02T08:48:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"ea2239595783fec0","title":"Leather saddle 8","turn":1}', '0581296ef3bc86cdcb38391fc62645d8d511a19a98379bbb1cd52384eb12deff');
INSERT INTO public.ledger VALUES (32, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"bbf02057591b00b4","title":"Leather saddle 9","turn":1}', 'db838b703a929c3be7e2bbbb666b12b0edab2f0f316d6558cb8526c831556d98');
INSERT INTO public.ledger VALUES (33, '2026-03-02T08:52:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"60cfaad757a0f030","title":"Leather saddle 10","turn":1}', '5ac06de84c5dd2b199ae6e2865b23b7aca7667704e1cca50a7f106f860067ff4');
INSERT INTO public.ledger VALUES (34, '2026-03-02T08:54:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"e30d70cf887783f3","title":"Leather saddle 11","turn":1}', '1ecf00b82b9258b2ccd02da162df17e0f63df72e1fecf38b5ace0b6ee0b92815');
INSERT INTO public.ledger VALUES (35, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"2ca5ffd9ad02681b","title":"Leather saddle 12","turn":1}', 'a8c319f18a4acf2f141872754e2323bd2927235bdafa8354525c5581bf8a7b94');
INSERT INTO public.ledger VALUES (36, '2026-03-02T08:58:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"614d188365b2fe60","title":"Dynamo lamp 1","turn":1}', '7dd6c305fb9728d2cea8c2d860745f818a96e5e89327066c7af3ae84b2e64108');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:00:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"d74bad49d6a8c1fa","title":"Dynamo lamp 2","turn":1}', 'f9370b358ea66a36a321a509b84ca1dc90a0e2d128b80639c987dbb512168b48');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"30f463be719bcc11","title":"Dynamo lamp 3","turn":1}', 'cbc3ec437307dbcb677f1b798930813364f99c52ef0df62325169aa1d55a17e2');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:04:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"b9d6b9fd00defcf3","title":"Dynamo lamp 4","turn":1}', 'e430e61680ca67e7106e83ce4fa47f7275ac2f074a930ce8c6d4ec39c2e0cf47');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:06:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"498d2d7cca105c0c","title":"Dynamo lamp 5","turn":1}', '9ea94e6c91fa2ee4d019efa7c99f49a28a3a2a7d0dfdda377b68ab6636ee5605');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"d50f8deabce36e36","title":"Dynamo lamp 6","turn":1}', '74287b3b2d567dba80eabcfafc94fa1a7e70dfc6748b486fe38b3273fd55cc08');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:10:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"c5730d53ea10da26","title":"Dynamo lamp 7","turn":1}', '7b6818b680df28f565ae4b0657ae8d929a2927cc9ecaf8ca72f1e825914c3a33');
INSERT INTO public.ledger VALUES (43, '2026-03-02T09:12:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"50fc7f5946e3ee0e","title":"Dynamo lamp 8","turn":1}', 'f65da3b89dce823dd125ca9494b2c78f10a693a51095a6b2ca0c15822f8d1ead');
INSERT INTO public.ledger VALUES (44, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"998a8a1b5d1f1583","title":"Dynamo lamp 9","turn":1}', '76f4f20a54b5078b2badf5e0f022441cc0c895036e3a6b7c1f15105ab17e4938');
INSERT INTO public.ledger VALUES (45, '2026-03-02T09:16:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"6fbe4880834fe9a2","title":"Dynamo lamp 10","turn":1}', 'ef386aa86f3b0422c984d7af97ed246746ecd1d06da4ee271300c4ee0d208452');
INSERT INTO public.ledger VALUES (46, '2026-03-02T09:18:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"5effcbb26f96c5ed","title":"Dynamo lamp 11","turn":1}', 'e24628ea82ffcf4f226734f47a6d998e364479ee55acc6fddf140b452841ec11');
INSERT INTO public.ledger VALUES (47, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"d850139d295a3b5a","title":"Dynamo lamp 12","turn":1}', '1560f38b74360d5ddcc48c20631f67d48c5b99159f464af86984f21a886396d1');
INSERT INTO public.ledger VALUES (48, '2026-03-02T09:22:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"9e80c3664fb004d1","title":"Front wheel 1","turn":1}', '02527ce6f469be8722525275b25496f4958b035d4274a4e8fd042365cc72e8c4');
INSERT INTO public.ledger VALUES (49, '2026-03-02T09:24:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"370b5e0190625d45","title":"Front wheel 2","turn":1}', '05bd8d927fd612f751f0d9e4a2bb9ecc017b87bd54da9b35e8a52e0b440aa682');
INSERT INTO public.ledger VALUES (50, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"e265cdcf3f4ebb58","title":"Front wheel 3","turn":1}', '9b3eb9cf0511e2e34a316aaa5f4abdbd3af591e8cad6b6f800163d35383048c2');
INSERT INTO public.ledger VALUES (51, '2026-03-02T09:28:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"75b971abd577dead","title":"Front wheel 4","turn":1}', 'bdecc431a65b7d36e37ca100bc3dcdde30b7aa2b8f42db90a14897ec5de44d55');
INSERT INTO public.ledger VALUES (52, '2026-03-02T09:30:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"1582c8ba34110a18","title":"Front wheel 5","turn":1}', '2bee81ef0b67d2272e87ba31f071c96cd3c1b21f1e18af4d802f6800a3f281b4');
INSERT INTO public.ledger VALUES (53, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"0b40973695265eac","title":"Front wheel 6","turn":1}', 'b8bbb455877bc69cf0bdd54d6e7c6c0b5f3c5a390619393d7bfac5a0f69bbcd3');
INSERT INTO public.ledger VALUES (54, '2026-03-02T09:34:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"211afd0c005112bc","title":"Front wheel 7","turn":1}', 'a168678b13b0239e4652fa7d027408289c71dc3c2f1f58c5b517c9ec58b27e68');
INSERT INTO public.ledger VALUES (55, '2026-03-02T09:36:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"deaa6f11cefe9b4b","title":"Front wheel 8","turn":1}', 'a32edc6f46713f23dd59a30e8b700c9cace82c5c5c6cbd99893a81b4aa918424');
INSERT INTO public.ledger VALUES (56, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"017428b7e4a807a9","title":"Front wheel 9","turn":1}', '37a1bf672c25c736de1e0cb2cd874323166f5d86562a232275dd138ba0e9f2bc');
INSERT INTO public.ledger VALUES (57, '2026-03-02T09:40:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"a52477f75e75fd52","title":"Front wheel 10","turn":1}', 'd9be5818c50ae9e32b8635bc70d297860aedf32cbaebb98dec109f449dd3b900');
INSERT INTO public.ledger VALUES (58, '2026-03-02T09:42:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"d9aead17c48ff8ec","title":"Front wheel 11","turn":1}', '425c0bfeea4ea7c8e89a312e74dd85db7d917bb1942dc3eb6dee1c853dbca62c');
INSERT INTO public.ledger VALUES (59, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"f6c4c8c7c0f25a28","title":"Front wheel 12","turn":1}', 'd7d9a35d817d18601fcbce0e03b950910f0367f993c312bb6205ab86223b1a14');
INSERT INTO public.ledger VALUES (60, '2026-03-02T09:46:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"c0fbaf3b74da89ef","title":"Brass bell","turn":1}', 'ea65b0a6f0184223008eff927f606302800b3c0aa9ece34b1b4a4725107bb12e');
INSERT INTO public.ledger VALUES (61, '2026-03-02T09:48:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"b5b62bec707aaceb"}', '7cfa2b1e0e7e412992f43056faa3e0e02037121b9a14dfe0fb81680ddeab5f9f');
INSERT INTO public.ledger VALUES (62, '2026-03-02T09:49:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"60cfaad757a0f030"}', 'bf3ffd8afa0734f59dd42aa36cc35ae17b3a772a82323c876a35a430c64cf172');
INSERT INTO public.ledger VALUES (63, '2026-03-02T09:50:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"75b971abd577dead"}', '958ed9a983d9e69e4bfeb2de6cb142259a61dc776305e1665ddcdd8b52028222');
INSERT INTO public.ledger VALUES (64, '2026-03-02T09:51:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"6439d269de58246c","stay":"bbf02057591b00b4","to":"S013"}', '8e01ea2f61efe1485ae38d6a86f6d61fe070bd2ede7c1aab2cebbf3db3623b3f');
INSERT INTO public.ledger VALUES (65, '2026-03-02T09:53:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"name":"Gears & Saddles","scan_at_bin":true,"zone":"UTC"}', 'c9f9082e44505003f13964cafac4bb4716963a0953b0d1bb397829e48c4e4b42');
INSERT INTO public.ledger VALUES (66, '2026-03-02T09:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9b2c60d62dc98c78","reference":"W001-01E","stay":"9e80c3664fb004d1"},{"hold":null,"line":"04bf0e7e9a34fd75","reference":"W002-016","stay":"370b5e0190625d45"}],"number":"B-01","order":"52d26ef4198e8f13"}', 'a3e17b65477972f9aae4c81143f70f236527376f80828b03bb95b8bbf1a75eb4');
INSERT INTO public.ledger VALUES (90, '2026-03-02T10:42:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"5709b6f0dc5a3ecd","stay":"1582c8ba34110a18"}', '71b7318218e9969dfae6435b38bcb42f251bc355b5c2debb320475da0b5cd1ac');
INSERT INTO public.ledger VALUES (67, '2026-03-02T09:56:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4773487b84324a73","reference":"S002-013","stay":"ed2c98a82c0fcbe9"},{"hold":null,"line":"46f00223d9b44a0f","reference":"S003-01W","stay":"214f8fa20ddb1d97"}],"number":"B-03","order":"f60083e1ce57eeaf"}', '8aa7d22e92c080c936e3d394938ee474e7d77922998575eda8a1849aaae0cb72');
INSERT INTO public.ledger VALUES (68, '2026-03-02T09:58:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"234989eadb16c7ba","reference":"S004-01O","stay":"917b26df90870efb"},{"hold":null,"line":"79045ff3d58085f2","reference":"S005-01G","stay":"4b3e831a5a8f77ab"}],"number":"B-04","order":"bb2e409a708514cd"}', '29168e0fc619117aba9dec4491bd770935abfd44bfc8788c31b6f31d8a26ab40');
INSERT INTO public.ledger VALUES (69, '2026-03-02T10:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"91bec43206d12851","reference":"L002-017","stay":"d74bad49d6a8c1fa"}],"number":"B-05","order":"a76281d2329e62fe"}', 'fdd64d12f983afa585f05c7bb42496e00be3dea082b2c28f982c0388c2c2ab0d');
INSERT INTO public.ledger VALUES (70, '2026-03-02T10:02:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"2fe7ea418e8b7d7b","reference":"L003-010","stay":"30f463be719bcc11"}],"number":"B-06","order":"6d75ad9f13a90b24"}', 'f8c268144b6bfbf3f9f910bf31f5d85b2302e3ffd63f2734f85661170ec3bd8d');
INSERT INTO public.ledger VALUES (71, '2026-03-02T10:04:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"bd9658ea24b0e00f","reference":"L004-01S","stay":"b9d6b9fd00defcf3"}],"number":"B-07","order":"11c7622516b20c35"}', '58a40e71bb7e21c4e1cd39fc86e5a913dee0bce0059d3fe2bc1af742392c5db1');
INSERT INTO public.ledger VALUES (72, '2026-03-02T10:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"932eddbd78628bd7","reference":"L005-01K","stay":"498d2d7cca105c0c"}],"number":"B-08","order":"750c1aff12f73374"}', 'dfe167db85342013eefd05c95533051611005ae5a4f5fda4d27ca8f74d9de1fb');
INSERT INTO public.ledger VALUES (73, '2026-03-02T10:08:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"eed5391614174c12","reference":"L006-01C","stay":"d50f8deabce36e36"},{"hold":null,"line":"f4164482cc6e94e0","reference":"L011-010","stay":"5effcbb26f96c5ed"}],"number":"B-09","order":"24f45c46e1a89b8f"}', '32353a542ed3e4764e2eadd4f24341c935f575240f996fe8a08ba356c9b836f4');
INSERT INTO public.ledger VALUES (74, '2026-03-02T10:10:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"10911460ba02684e","reference":"S006-018","stay":"0c42bf794c940654"}],"number":"B-13","order":"9f852c6dd6388a08"}', 'fb8350a83da55414d97cf3fed97d78bf0c33aec69df5174d61fa1f69d3f7835b');
INSERT INTO public.ledger VALUES (75, '2026-03-02T10:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9dc16c9b85f59cf7","reference":"L007-014","stay":"c5730d53ea10da26"}],"number":"B-17","order":"ef1011dfc8ac73f2"}', '81b24cff7fd0ff11426502490b18004d136e2928ec6bc5c128d54402b1d90092');
INSERT INTO public.ledger VALUES (76, '2026-03-02T10:14:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"83afb14f4dcf0b72","reference":"D009-01B","stay":"353fb4581fc8323c"}],"number":"B-18","order":"71f91f073935bf43"}', '5aad9f4018d9986370949a34c53854251d0652bb13850b1e5150655d14530883');
INSERT INTO public.ledger VALUES (77, '2026-03-02T10:16:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"c1e1c181bd97cbb9","reference":"W006-013","stay":"0b40973695265eac"}],"number":"B-21","order":"c534e1cf6282211d"}', '9b4953c0e55a5f3312dbc11d24883cea89ca936971313acf88bf6d0c53f3ce27');
INSERT INTO public.ledger VALUES (78, '2026-03-02T10:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a80c4f6e087ab914","reference":"S007-01Z","stay":"6fb3d28a6e320d5a"}],"number":"B-22","order":"25ccdc7a7e04a752"}', 'a3ebca7440608df68bb7a3d9d7af636e07f93a5fb818403b4b15f534d184261c');
INSERT INTO public.ledger VALUES (79, '2026-03-02T10:20:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"713ef6b5f1754f76","reference":"W007-01W","stay":"211afd0c005112bc"},{"hold":null,"line":"af27c71001e9407c","reference":"W008-01O","stay":"deaa6f11cefe9b4b"}],"number":"B-23","order":"7efbb6dd49b10cc8"}', 'd041a05410b8e257ddb09f61e8f3f5621b19bb298ecf4f969b7c29ad08e459d8');
INSERT INTO public.ledger VALUES (80, '2026-03-02T10:22:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"7c92e7da584bc0b7","reference":"D008-01J","stay":"f3f22e17b85f20df"}],"number":"B-26","order":"a20ba66801b63d2d"}', '71ca67039cd06261a89b5e29c47d4fd39f5f363e80d4d23fdfc49a9d59b80711');
INSERT INTO public.ledger VALUES (81, '2026-03-02T10:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"94f5d79866a993a6","reference":"D003-01U","stay":"caf5419155fd9e0d"}],"number":"B-30","order":"a1c91ef0e0abcc8d"}', 'fd4123c93eedb85a4861055e88c990bb0d2b84ab1222e1c86c051691cc4e33d9');
INSERT INTO public.ledger VALUES (82, '2026-03-02T10:26:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"7b42d4a0cdf72f82","reference":"D005-01E","stay":"bddb7f458096f0c6"},{"hold":"unknown_code","line":"d1dc38f20172e321","reference":"Z999","stay":null}],"number":"B-31","order":"ab6877ad9b01743f"}', '5cdcc18ed2c18f386a8f1d0d510fd5dd1a4b5ca9e219dd3ffe598074c8af7b21');
INSERT INTO public.ledger VALUES (83, '2026-03-02T10:28:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"be9fc89d6afa002d","reference":"D006-016","stay":"3d6daab8be98b1d0"},{"hold":null,"line":"e96eeca3bd73c0c0","reference":"D007-01R","stay":"30cd2dc6e4fd04ac"}],"number":"B-32","order":"68e7de82c36af9b7"}', '63dd7e3ac99ec03d604967d13c85370247ae180d8cc07eb401ee2da62d278c37');
INSERT INTO public.ledger VALUES (84, '2026-03-02T10:30:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"e96eeca3bd73c0c0","reference":"D007-01R","stay":"30cd2dc6e4fd04ac"}],"number":"B-32","order":"68e7de82c36af9b7"}', '045ffced5b7c786ceea78bd55ced38c0d3e09375c499e6d8aac28a559b9d8c02');
INSERT INTO public.ledger VALUES (85, '2026-03-02T10:32:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"b5f2813fea755503","reference":"lamp","stay":null}],"number":"B-33","order":"4f98045f05f79d32"}', 'e9ca4b75cbef25f5adeb1a1702cec3e190a041000862249b05bf3eba90be3ef4');
INSERT INTO public.ledger VALUES (86, '2026-03-02T10:34:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"463bfefe3dea1023","reference":"D006-016","stay":null}],"number":"B-34","order":"7777d49645376700"}', '869f91cdff0d61bbe368898d1f4e3c4a225c559f0efdb6f69cd042bd7c7fdf75');
INSERT INTO public.ledger VALUES (87, '2026-03-02T10:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"b962eb1e0bc59aad","reference":"W004-01J","stay":null}],"number":"B-35","order":"adb156deac7e0a1d"}', '1210c171e4617baa18e64ec0ce9d445933fb653903b1503785b172a9c18229b4');
INSERT INTO public.ledger VALUES (88, '2026-03-02T10:38:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"6040ea805b3d9ed1","reference":"L015","stay":null}],"number":"B-36","order":"e66b3a83a18c785a"}', 'cbb7ce7a8ffc116c5572d7362739a1c56dfaf77903661c66361e0b5a82efbc7e');
INSERT INTO public.ledger VALUES (89, '2026-03-02T10:40:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"5709b6f0dc5a3ecd","reference":"W005-01B","stay":"1582c8ba34110a18"}],"number":"B-37","order":"5de34a1de92c7afd"}', '6ce00baa937629c5d17230288e8d8df24b59eed7566ea2dc8c752eec366c2069');
INSERT INTO public.ledger VALUES (91, '2026-03-02T10:43:00.000000+00:00', 'held', 'owner', '{"line":"9dc16c9b85f59cf7","why":"Another lamp, by the photo"}', 'a9c5d031f723ab3939f9c327811f84893a402e95f0974102212a0e6cedd90fe9');
INSERT INTO public.ledger VALUES (92, '2026-03-02T10:44:00.000000+00:00', 'cancelled', 'owner', '{"lines":["932eddbd78628bd7"],"number":"B-08","order":"750c1aff12f73374"}', '6818ad1b54ae55bb71359425dfe17df4353799d7e11a95b7efb84203b5b3241f');
INSERT INTO public.ledger VALUES (93, '2026-03-02T10:45:00.000000+00:00', 'cancelled', 'owner', '{"lines":["c1e1c181bd97cbb9"],"number":"B-21","order":"c534e1cf6282211d"}', '82568ec203068ce2c39848b4e182be582e61691adcf2dff4c2787b17398f79d9');
INSERT INTO public.ledger VALUES (94, '2026-03-02T10:46:00.000000+00:00', 'revived', 'owner', '{"line":"c1e1c181bd97cbb9","stay":"0b40973695265eac"}', '45380c215647b6b0781697983c42961f2c46316fdb1fe2758410c2a7f76b65f7');
INSERT INTO public.ledger VALUES (95, '2026-03-02T10:47:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"78187019a288bb0b","stay":"f3f22e17b85f20df","to":"D020"}', '7abefd5eb2464de88da00da950f66642690ce83cea94f50b82757e68d29e120f');
INSERT INTO public.ledger VALUES (96, '2026-03-02T10:50:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"a1f99d173c4527b6","reference":"S012-01O","stay":"2ca5ffd9ad02681b"}],"number":"F-1","order":"bccfc6d7c9103fb8"}', 'abc423945f76d47cf5bcdf61c15790d7d1cde518e12e4aaebde7dd0910a630a8');
INSERT INTO public.ledger VALUES (97, '2026-03-02T10:51:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"287ecc58324e7a26","reference":"","stay":null}],"number":"F-2","order":"cbf127307b7183e0"}', 'ddac7b4b08e9d4000e1fea8e83f03f2fb22364602d1255b3f3db026e25bfc017');
INSERT INTO public.ledger VALUES (98, '2026-03-02T10:52:00.000000+00:00', 'round opened', 'owner', '{"lines":["9b2c60d62dc98c78","04bf0e7e9a34fd75","4773487b84324a73","46f00223d9b44a0f","234989eadb16c7ba","79045ff3d58085f2","eed5391614174c12","f4164482cc6e94e0","10911460ba02684e","a80c4f6e087ab914","713ef6b5f1754f76","af27c71001e9407c"],"round":"899a564b75155df6"}', '8ca4cb688e55b22aee73178ffa75c30266e1f7bc6d656c6dac9fb648925cac73');
INSERT INTO public.ledger VALUES (99, '2026-03-02T10:54:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '67bbb69ccb7fe683a5249ebd49fa68419cba3ce09c459bc0636ae444e32b4e62');
INSERT INTO public.ledger VALUES (100, '2026-03-02T10:55:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"9b2c60d62dc98c78","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'fbe40cc33cf3183c1661cbd5aae523afa786ef263f87d50bac788ca393e0b760');
INSERT INTO public.ledger VALUES (101, '2026-03-02T10:56:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"04bf0e7e9a34fd75","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '153bd36f118dcd5371a3882d91d781ade79b8fc32ed30eaff656b5d268e668af');
INSERT INTO public.ledger VALUES (102, '2026-03-02T10:57:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"4773487b84324a73","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '33d0585dc2b47b9e08e00e3dfe628a0f8d4709dda6f28cf900bcbbd6a87b77d3');
INSERT INTO public.ledger VALUES (103, '2026-03-02T10:58:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"46f00223d9b44a0f","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'ea41fae758cbb63037d248d59e040ca09c631c8828a67eaba4acd85a428205eb');
INSERT INTO public.ledger VALUES (104, '2026-03-02T10:59:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"234989eadb16c7ba","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'ae7343f0487bc020cb88ef91fc7e63d321171c10ab14cb5cf527b1cc4c97cf8b');
INSERT INTO public.ledger VALUES (105, '2026-03-02T11:00:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"79045ff3d58085f2","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '44a0bbcd46c6ce0165aba96fbca3dc350eeb9ce6af0c600bd29e071a6c9f7ea7');
INSERT INTO public.ledger VALUES (106, '2026-03-02T11:01:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"eed5391614174c12","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '9bd1aab9064c4c1a9aa6425b9cfdb4fd3ed2ec6adc8f411cf727662a75f649e1');
INSERT INTO public.ledger VALUES (107, '2026-03-02T11:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"f4164482cc6e94e0","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'c3e3ec3152efc51a9d134f16493e31c24de417229fbe6e7c5693b86b19ed27b9');
INSERT INTO public.ledger VALUES (108, '2026-03-02T11:03:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"10911460ba02684e","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '76bf7939de9981666815b9364e2a81599fae5310620609cc8f4934db3587e9a2');
INSERT INTO public.ledger VALUES (109, '2026-03-02T11:04:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"a80c4f6e087ab914","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'e69786064bae7849354100e109d989aa8414faecafab05f27b6adbe184cef90e');
INSERT INTO public.ledger VALUES (110, '2026-03-02T11:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"713ef6b5f1754f76","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'a09d0dcb30d1c55fe37800fd043d2b1854602200a3080564dc29053856fcc065');
INSERT INTO public.ledger VALUES (111, '2026-03-02T11:06:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"af27c71001e9407c","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"899a564b75155df6","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '6cbd9a3c38143a086b817071f1c6c1f3995650f856397ed740f7244f4b8d7aaa');
INSERT INTO public.ledger VALUES (112, '2026-03-02T11:07:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"af27c71001e9407c","line_state":"waiting"}', 'd323f7e587b6434e189e408fb310a55d9f5f8088988e2b7c2b1e3accfab4cdfa');
INSERT INTO public.ledger VALUES (113, '2026-03-02T11:08:00.000000+00:00', 'round closed', 'owner', '{"round":"899a564b75155df6"}', 'f936badeaacbbf7f097be43955f593e5e3470fab514f991b9fed45eb6c2613fb');
INSERT INTO public.ledger VALUES (114, '2026-03-02T11:09:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["52d26ef4198e8f13"],"parcel":"62aba9baf702f4b3","table":"main"}', 'c68970d3ade65c9d92a43c8d04bbe7a2f3304a78deb51e7b024173c1473c5089');
INSERT INTO public.ledger VALUES (115, '2026-03-02T11:10:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"4773487b84324a73","line_state":"picked","order_number":"B-03","parcel":"62aba9baf702f4b3","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '24afded7d85bbe07516000305954a0b03ed10d90629c549cc87a2b3a9c2751d0');
INSERT INTO public.ledger VALUES (116, '2026-03-02T11:11:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"9b2c60d62dc98c78","line_state":"packed","order_number":"B-01","parcel":"62aba9baf702f4b3","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '16612ae57517dfbe305626da6af9fe6ef7c38b03ca545c94920c5b38ec75035a');
INSERT INTO public.ledger VALUES (117, '2026-03-02T11:12:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["52d26ef4198e8f13"],"parcel":"62aba9baf702f4b3","released":["W001","W002"]}', '0aef0e4df35d2f6505baf034c467b9fc22200af1df4ffcf952bcf12d1e8601f9');
INSERT INTO public.ledger VALUES (118, '2026-03-02T11:12:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"04bf0e7e9a34fd75","line_state":"released","order_number":"B-01","parcel":"62aba9baf702f4b3","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '5cbc4d47260f5ab6e528cac65365b3ead3e5abbb279f6953e7f1e959195c72d9');
INSERT INTO public.ledger VALUES (119, '2026-03-02T11:13:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"9b2c60d62dc98c78","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c1b03fac05ef83061032d2a0408733f12b9e6327a46bfa92671ad53dda2e0ecd');
INSERT INTO public.ledger VALUES (120, '2026-03-02T11:14:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"30f65e5225ecf08b","title":"Rear wheel","turn":2}', '0202b7d58a0883e5e20a23edfe5b6e0060822a9786f33c9ece6024542b8bce59');
INSERT INTO public.ledger VALUES (121, '2026-03-02T11:16:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["7efbb6dd49b10cc8"],"parcel":"2c2bef216c7459d6","table":"main"}', 'e44e6cb0f1cfd2541d2a379da3b9a6fc62a65e54cfbd54dce7e69951780ffae7');
INSERT INTO public.ledger VALUES (122, '2026-03-02T11:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"713ef6b5f1754f76","line_state":"packed","order_number":"B-23","parcel":"2c2bef216c7459d6","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'e25ef8cff850a621d62c9521b742a7cd0f7b76fd587aaa57aec27639f9be5453');
INSERT INTO public.ledger VALUES (123, '2026-03-02T11:18:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["7efbb6dd49b10cc8"],"parcel":"2c2bef216c7459d6","released":["W007"]}', 'c3e1cc4346ffabec49aff860881abeb21d0306c553ae54064953231375018330');
INSERT INTO public.ledger VALUES (124, '2026-03-02T11:19:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["7efbb6dd49b10cc8"],"parcel":"2c2bef216c7459d6"}', 'a0dee3f7dd63e0ba2de6096408af73a75a6d4cdf2e6331751cd3411a3e960e68');
INSERT INTO public.ledger VALUES (125, '2026-03-02T11:20:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["7efbb6dd49b10cc8"],"parcel":"2c2bef216c7459d6","released":["W007"]}', '8e35260cdeb4d4efe5d7c556415a9aea169c4b54b470f96c05c34ec20b97b825');
INSERT INTO public.ledger VALUES (126, '2026-03-02T11:21:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["25ccdc7a7e04a752"],"parcel":"bafea40dfcdc628e","table":"main"}', '743a224ae4dccf1d63d95558c3d34f9385c8f4f04068ca8aad7cd7cf9cc40632');
INSERT INTO public.ledger VALUES (127, '2026-03-02T11:22:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"bafea40dfcdc628e"}', 'b62d2b6192c3931083dc88ea00134d23ee78a43778633681fce0b3f1bf497567');
INSERT INTO public.ledger VALUES (128, '2026-03-02T11:23:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["bb2e409a708514cd"],"parcel":"d2ee820c81f55b06","table":"main"}', '4273437a751a82275c8679a45f9b2f595c7089898cea654ed708461fa33102f8');
INSERT INTO public.ledger VALUES (129, '2026-03-02T11:24:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"234989eadb16c7ba","line_state":"packed","order_number":"B-04","parcel":"d2ee820c81f55b06","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'cf45809fa18e358d6bd160f44b25b0942a2bc0a3f76a14779418e98aaeb4de86');
INSERT INTO public.ledger VALUES (130, '2026-03-02T11:25:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"d2ee820c81f55b06"}', 'eb2dc27c93384ca64dfb8e3279aba055fba136a7aab8e9b2d6500818f40928c0');
INSERT INTO public.ledger VALUES (131, '2026-03-02T11:26:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["24f45c46e1a89b8f"],"parcel":"258565b4bda2eea6","table":"second"}', 'bfa68cd89ab9cfd0376de95a5f82e8aec01a97db42006f1c22d16ee7873fd661');
INSERT INTO public.ledger VALUES (132, '2026-03-02T11:27:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"eed5391614174c12","line_state":"packed","order_number":"B-09","parcel":"258565b4bda2eea6","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'c5e67b1fcb351505877d587c4f0a0bb0dab901771d5161059c2e7f0c2766809f');
INSERT INTO public.ledger VALUES (133, '2026-03-02T11:28:00.000000+00:00', 'cancelled', 'owner', '{"lines":["eed5391614174c12","f4164482cc6e94e0"],"number":"B-09","order":"24f45c46e1a89b8f"}', 'fae6ab202895f6af9b1608c08531d50f6532941101bc3b62b1ad62dadab01b2a');
INSERT INTO public.ledger VALUES (134, '2026-03-02T11:29:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["f60083e1ce57eeaf"],"parcel":"49ae4aab699e21fc","table":"main"}', '07bb9b471bcd222e961cc04400c2323a407e3a1ea27fdf4125391001b1c9edf6');
INSERT INTO public.ledger VALUES (135, '2026-03-02T11:30:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"4773487b84324a73","line_state":"packed","order_number":"B-03","parcel":"49ae4aab699e21fc","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '7ffdca869750203f1f8fdb55e0a908c983022ec63ceb54673b2782da0fdb2a3a');
INSERT INTO public.ledger VALUES (136, '2026-03-02T11:31:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"10911460ba02684e","reference":"S006-018","stay":"0c42bf794c940654"}],"number":"B-13","order":"9f852c6dd6388a08"}', 'c9270155e73e5d1bd9165bfd36aa48f7f87e1c8289db0d4c0d48a391d6da170e');
INSERT INTO public.ledger VALUES (137, '2026-03-02T11:33:00.000000+00:00', 'round opened', 'owner', '{"lines":["91bec43206d12851","2fe7ea418e8b7d7b","bd9658ea24b0e00f","7c92e7da584bc0b7"],"round":"3665ef9de5b263c3"}', 'e4bab70b6e0954f2ffdceb3b5050e0b7811e2b7d9f23ebc0b256976ecd013557');
INSERT INTO public.ledger VALUES (138, '2026-03-02T11:35:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"91bec43206d12851","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3665ef9de5b263c3","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'f7b8f8b0d1a4fc0fc16920ca616def83ffba0d17d82f308f52d36a66b022d839');
INSERT INTO public.ledger VALUES (139, '2026-03-02T11:36:00.000000+00:00', 'short', 'owner', '{"line":"bd9658ea24b0e00f","note":"Not in its bin"}', 'e51a45fc6994613ec6a0eb13ed0ee4ec4e4e627e5da090c65c1064a1c809fde6');
INSERT INTO public.ledger VALUES (140, '2026-03-02T11:37:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"3665ef9de5b263c3","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '0b8188349de4c0c47f4c4ffaa62f1111f1c97dcb3b5d77b57234efad5fb1ddde');
INSERT INTO public.ledger VALUES (141, '2026-03-02T11:38:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"3665ef9de5b263c3","station":"bin","take_out":false,"text":["hello"],"verdict":"refused","via":"wedge"}', '6b943b246f431d3874e0dc3b5caf6766cb6f7931b0abfd3f8546090cdaafdb64');
INSERT INTO public.ledger VALUES (142, '2026-03-02T11:39:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"3665ef9de5b263c3","station":"bin","take_out":false,"text":[""],"verdict":"refused","via":"wedge"}', 'f54e058b3fa2da005a6cb6a12bd5ca1613d92c0baca01aa83137c0c3b84c359e');
INSERT INTO public.ledger VALUES (143, '2026-03-02T11:40:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '48cf3975d7abbd532ae8b9e8093d33d0a67319e6ff6f47ac04c9a26c885e9c6e');
INSERT INTO public.ledger VALUES (144, '2026-03-02T11:41:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', '69646e4935eb455ed04cc642592fe884375b76d0273b99b2ce5073e58226767c');
INSERT INTO public.ledger VALUES (145, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"d42148830741c30f","reference":"D001-019","stay":"6e5c6a51d8cf549c"},{"hold":"already_sold","line":"e2f30beb87a13110","reference":"W002-016","stay":null}],"number":"B-38","order":"acbf08bd3d1787e0"}', 'f55472f31efb16e1dc435a4969ac326b475a21e9e3b132b3b0927b00d8e42377');
INSERT INTO public.ledger VALUES (146, '2026-03-02T11:44:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"be021d4544ea432a","reference":"W001","stay":null}],"number":"B-39","order":"ea6f4eaad7aca8f4"}', '5c69ebc0a111895818fe72cfffff5e753b93866eb0dadf952df10caf9d1983b1');
INSERT INTO public.lines VALUES (15, '83afb14f4dcf0b72', '71f91f073935bf43', 1, 'D009-01B', 'Rear derailleur 9', '', '353fb4581fc8323c', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (21, '94f5d79866a993a6', 'a1c91ef0e0abcc8d', 1, 'D003-01U', 'Bell with a crown', '', 'caf5419155fd9e0d', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (22, '7b42d4a0cdf72f82', 'ab6877ad9b01743f', 1, 'D005-01E', 'Rear derailleur 5', '', 'bddb7f458096f0c6', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (23, 'd1dc38f20172e321', 'ab6877ad9b01743f', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (24, 'be9fc89d6afa002d', '68e7de82c36af9b7', 1, 'D006-016', 'Rear derailleur 6', '', '3d6daab8be98b1d0', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (25, 'e96eeca3bd73c0c0', '68e7de82c36af9b7', 2, 'D007-01R', 'Rear derailleur 7', '', '30cd2dc6e4fd04ac', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (26, 'b5f2813fea755503', '4f98045f05f79d32', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (27, '463bfefe3dea1023', '7777d49645376700', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (28, 'b962eb1e0bc59aad', 'adb156deac7e0a1d', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (29, '6040ea805b3d9ed1', 'e66b3a83a18c785a', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (30, '5709b6f0dc5a3ecd', '5de34a1de92c7afd', 1, 'W005-01B', 'Bell with a crown', '', '1582c8ba34110a18', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (14, '9dc16c9b85f59cf7', 'ef1011dfc8ac73f2', 1, 'L007-014', 'Dynamo lamp 7', '', 'c5730d53ea10da26', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (10, '932eddbd78628bd7', '750c1aff12f73374', 1, 'L005-01K', 'Dynamo lamp 5', '', '498d2d7cca105c0c', 'cancelled', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (16, 'c1e1c181bd97cbb9', 'c534e1cf6282211d', 1, 'W006-013', 'Front wheel 6', '', '0b40973695265eac', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (31, 'a1f99d173c4527b6', 'bccfc6d7c9103fb8', 1, 'S012-01O', 'Leather saddle', '', '2ca5ffd9ad02681b', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (32, '287ecc58324e7a26', 'cbf127307b7183e0', 1, '', 'Nothing', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (6, '79045ff3d58085f2', 'bb2e409a708514cd', 2, 'S005-01G', 'Leather saddle 5', '', '4b3e831a5a8f77ab', 'picked', NULL, '', NULL, '899a564b75155df6', 3, 'pick-S005');
INSERT INTO public.lines VALUES (18, '713ef6b5f1754f76', '7efbb6dd49b10cc8', 1, 'W007-01W', 'Front wheel 7', '', '211afd0c005112bc', 'released', NULL, '', '2c2bef216c7459d6', '899a564b75155df6', 7, NULL);
INSERT INTO public.lines VALUES (5, '234989eadb16c7ba', 'bb2e409a708514cd', 1, 'S004-01O', 'Leather saddle 4', '', '917b26df90870efb', 'packed', NULL, '', 'd2ee820c81f55b06', '899a564b75155df6', 3, 'pack-S004');
INSERT INTO public.lines VALUES (11, 'eed5391614174c12', '24f45c46e1a89b8f', 1, 'L006-01C', 'Dynamo lamp 6', '', 'd50f8deabce36e36', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '258565b4bda2eea6', '899a564b75155df6', 4, NULL);
INSERT INTO public.lines VALUES (12, 'f4164482cc6e94e0', '24f45c46e1a89b8f', 2, 'L011-010', 'Dynamo lamp 11', '', '5effcbb26f96c5ed', 'cancelled', NULL, '', NULL, '899a564b75155df6', 4, NULL);
INSERT INTO public.lines VALUES (3, '4773487b84324a73', 'f60083e1ce57eeaf', 1, 'S002-013', 'Leather saddle 2', '', 'ed2c98a82c0fcbe9', 'packed', NULL, '', '49ae4aab699e21fc', '899a564b75155df6', 2, 'pack-S002');
INSERT INTO public.lines VALUES (4, '46f00223d9b44a0f', 'f60083e1ce57eeaf', 2, 'S003-01W', 'Leather saddle 3', '', '214f8fa20ddb1d97', 'picked', NULL, '', NULL, '899a564b75155df6', 2, 'pick-S003');
INSERT INTO public.lines VALUES (17, 'a80c4f6e087ab914', '25ccdc7a7e04a752', 1, 'S007-01Z', 'Leather saddle 7', '', '6fb3d28a6e320d5a', 'picked', NULL, '', NULL, '899a564b75155df6', 6, 'pick-S007');
INSERT INTO public.lines VALUES (19, 'af27c71001e9407c', '7efbb6dd49b10cc8', 2, 'W008-01O', 'Front wheel 8', '', 'deaa6f11cefe9b4b', 'waiting', NULL, '', NULL, '899a564b75155df6', 7, NULL);
INSERT INTO public.lines VALUES (1, '9b2c60d62dc98c78', '52d26ef4198e8f13', 1, 'W001-01E', 'Front wheel 1', '', '9e80c3664fb004d1', 'released', NULL, '', '62aba9baf702f4b3', '899a564b75155df6', 1, NULL);
INSERT INTO public.lines VALUES (2, '04bf0e7e9a34fd75', '52d26ef4198e8f13', 2, 'W002-016', 'Front wheel 2', '', '370b5e0190625d45', 'released', NULL, '', '62aba9baf702f4b3', '899a564b75155df6', 1, 'pack-W002');
INSERT INTO public.lines VALUES (13, '10911460ba02684e', '9f852c6dd6388a08', 1, 'S006-018', 'Saddle with springs', '', '0c42bf794c940654', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, '899a564b75155df6', 5, NULL);
INSERT INTO public.lines VALUES (20, '7c92e7da584bc0b7', 'a20ba66801b63d2d', 1, 'D008-01J', 'Rear derailleur 8', '', '78187019a288bb0b', 'waiting', NULL, '', NULL, '3665ef9de5b263c3', 4, NULL);
INSERT INTO public.lines VALUES (8, '2fe7ea418e8b7d7b', '6d75ad9f13a90b24', 1, 'L003-010', 'Dynamo lamp 3', '', '30f463be719bcc11', 'waiting', NULL, '', NULL, '3665ef9de5b263c3', 2, NULL);
INSERT INTO public.lines VALUES (7, '91bec43206d12851', 'a76281d2329e62fe', 1, 'L002-017', 'Dynamo lamp 2', '', 'd74bad49d6a8c1fa', 'picked', NULL, '', NULL, '3665ef9de5b263c3', 1, 'pick-L002');
INSERT INTO public.lines VALUES (9, 'bd9658ea24b0e00f', '11c7622516b20c35', 1, 'L004-01S', 'Dynamo lamp 4', '', 'b9d6b9fd00defcf3', 'short', NULL, '', NULL, '3665ef9de5b263c3', 3, NULL);
INSERT INTO public.lines VALUES (33, 'd42148830741c30f', 'acbf08bd3d1787e0', 1, 'D001-019', 'Rear derailleur 1', '', '6e5c6a51d8cf549c', 'waiting', NULL, '', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (34, 'e2f30beb87a13110', 'acbf08bd3d1787e0', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL);
INSERT INTO public.lines VALUES (35, 'be021d4544ea432a', 'ea6f4eaad7aca8f4', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'a76281d2329e62fe', 'B-05', 'fair', '2026-03-02T10:00:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, '6d75ad9f13a90b24', 'B-06', 'fair', '2026-03-02T10:02:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, '11c7622516b20c35', 'B-07', 'fair', '2026-03-02T10:04:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '750c1aff12f73374', 'B-08', 'fair', '2026-03-02T10:06:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, '9f852c6dd6388a08', 'B-13', 'fair', '2026-03-02T10:10:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'ef1011dfc8ac73f2', 'B-17', 'fair', '2026-03-02T10:12:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, '71f91f073935bf43', 'B-18', 'fair', '2026-03-02T10:14:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, 'c534e1cf6282211d', 'B-21', 'fair', '2026-03-02T10:16:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, 'a20ba66801b63d2d', 'B-26', 'fair', '2026-03-02T10:22:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, 'a1c91ef0e0abcc8d', 'B-30', 'fair', '2026-03-02T10:24:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, 'ab6877ad9b01743f', 'B-31', 'fair', '2026-03-02T10:26:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, '68e7de82c36af9b7', 'B-32', 'fair', '2026-03-02T10:28:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '4f98045f05f79d32', 'B-33', 'fair', '2026-03-02T10:32:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, '7777d49645376700', 'B-34', 'fair', '2026-03-02T10:34:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, 'adb156deac7e0a1d', 'B-35', 'fair', '2026-03-02T10:36:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, 'e66b3a83a18c785a', 'B-36', 'fair', '2026-03-02T10:38:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '5de34a1de92c7afd', 'B-37', 'fair', '2026-03-02T10:40:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, 'bccfc6d7c9103fb8', 'F-1', '', '2026-03-02T10:50:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, 'cbf127307b7183e0', 'F-2', '', '2026-03-02T10:51:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, '52d26ef4198e8f13', 'B-01', 'fair', '2026-03-02T09:54:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, '7efbb6dd49b10cc8', 'B-23', 'fair', '2026-03-02T10:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '25ccdc7a7e04a752', 'B-22', 'fair', '2026-03-02T10:18:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, 'bb2e409a708514cd', 'B-04', 'fair', '2026-03-02T09:58:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'd2ee820c81f55b06');
INSERT INTO public.orders VALUES (8, '24f45c46e1a89b8f', 'B-09', 'fair', '2026-03-02T10:08:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '258565b4bda2eea6');
INSERT INTO public.orders VALUES (2, 'f60083e1ce57eeaf', 'B-03', 'fair', '2026-03-02T09:56:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '49ae4aab699e21fc');
INSERT INTO public.orders VALUES (26, 'acbf08bd3d1787e0', 'B-38', 'fair', '2026-03-02T11:42:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, 'ea6f4eaad7aca8f4', 'B-39', '', '2026-03-02T11:44:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '62aba9baf702f4b3', 'main', '52d26ef4198e8f13', '2026-03-02T11:09:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '2c2bef216c7459d6', 'main', '7efbb6dd49b10cc8', '2026-03-02T11:16:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, 'bafea40dfcdc628e', 'main', '25ccdc7a7e04a752', '2026-03-02T11:21:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, 'd2ee820c81f55b06', 'main', 'bb2e409a708514cd', '2026-03-02T11:23:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '258565b4bda2eea6', 'second', '24f45c46e1a89b8f', '2026-03-02T11:26:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '49ae4aab699e21fc', 'main', 'f60083e1ce57eeaf', '2026-03-02T11:29:00.000000+00:00', 'open');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.1);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.1);
INSERT INTO public.rounds VALUES (1, '899a564b75155df6', '2026-03-02T10:52:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '3665ef9de5b263c3', '2026-03-02T11:33:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'd5cf993eb2124ae4d47383c72fd416576e9ddd97f99547784d5a7a405a854ea4', 'bin', '899a564b75155df6', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'f59c6f4d89b9b3e47769bc1190f4db5b20d1b0e219910ed737b18d6f477ee87f', 'bin', '899a564b75155df6', 'W001', false, true, true, '9b2c60d62dc98c78', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "52d26ef4198e8f13", "order_number": "B-01", "line": "9b2c60d62dc98c78", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'd66f68f87faddaf0a4f068fd22f16edfbc2cae10dc397e6cb1555c23f5ebaeaa', 'bin', '899a564b75155df6', 'W002', false, true, true, '04bf0e7e9a34fd75', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "52d26ef4198e8f13", "order_number": "B-01", "line": "04bf0e7e9a34fd75", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', '8e543b7de97ab811ddae8ff7c05a12278e141300b150f0339c76ee26afe5c02a', 'bin', '899a564b75155df6', 'S002', false, true, true, '4773487b84324a73', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f60083e1ce57eeaf", "order_number": "B-03", "line": "4773487b84324a73", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '1195993346a040e7f9b89e2c9399bf65a48ecc66abf7f296fad0fa7dfb7a71a5', 'bin', '899a564b75155df6', 'S003', false, true, true, '46f00223d9b44a0f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "f60083e1ce57eeaf", "order_number": "B-03", "line": "46f00223d9b44a0f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '0241597659c21be7ec21056ca366f9b0f87a9c3811d32d43df67182ae7d246f0', 'bin', '899a564b75155df6', 'S004', false, true, true, '234989eadb16c7ba', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "bb2e409a708514cd", "order_number": "B-04", "line": "234989eadb16c7ba", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', '592e1dd1d86fe905bc79fd9f6845721149e68e89e60e561dcaf258e2ac26475c', 'bin', '899a564b75155df6', 'S005', false, true, true, '79045ff3d58085f2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "bb2e409a708514cd", "order_number": "B-04", "line": "79045ff3d58085f2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'c4603169d619ddf080f95d3e4f7b846eb7ee5cbdb17a3801cf381a18eef71650', 'bin', '899a564b75155df6', 'L006', false, true, true, 'eed5391614174c12', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "24f45c46e1a89b8f", "order_number": "B-09", "line": "eed5391614174c12", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '833e919a10e454ebbd00f8fd8f88f541604d95253459ec65b1eca8cd882907eb', 'bin', '899a564b75155df6', 'L011', false, true, true, 'f4164482cc6e94e0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "24f45c46e1a89b8f", "order_number": "B-09", "line": "f4164482cc6e94e0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', '1794a4f6750d1c3435c3b0e62cd97cf715d750a856ffe3ec47decbe8df13c37f', 'bin', '899a564b75155df6', 'S006', false, true, true, '10911460ba02684e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "9f852c6dd6388a08", "order_number": "B-13", "line": "10911460ba02684e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'ea195f2141948a3eeceacffc3cfe481d9f1ea99bc28b4e30796ee1c752c0b7cd', 'bin', '899a564b75155df6', 'S007', false, true, true, 'a80c4f6e087ab914', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "25ccdc7a7e04a752", "order_number": "B-22", "line": "a80c4f6e087ab914", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', '2ae23db5449080c7046cdc67499ab2969d3924f15225bb5ae6178df6000c4707', 'bin', '899a564b75155df6', 'W007', false, true, true, '713ef6b5f1754f76', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7efbb6dd49b10cc8", "order_number": "B-23", "line": "713ef6b5f1754f76", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '9fb97404824cf2384d27a10007f432e2da3ca0a1a64e924cb88f41caf22aed01', 'bin', '899a564b75155df6', 'W008', false, true, true, 'af27c71001e9407c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "7efbb6dd49b10cc8", "order_number": "B-23", "line": "af27c71001e9407c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '90f3857281fe4306ab2443c51bf1f9cc634a90eab3280d88085b56e186f0125d', 'table', 'main', 'S002', false, false, false, '4773487b84324a73', '62aba9baf702f4b3', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f60083e1ce57eeaf", "order_number": "B-03", "line": "4773487b84324a73", "line_state": "picked", "order_state": "picking", "parcel": "62aba9baf702f4b3", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '967adcaa24431ba5682400652659d759552db04580947e6f86424ac61b2629ad', 'table', 'main', 'W001', false, true, true, '9b2c60d62dc98c78', '62aba9baf702f4b3', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "52d26ef4198e8f13", "order_number": "B-01", "line": "9b2c60d62dc98c78", "line_state": "packed", "order_state": "picking", "parcel": "62aba9baf702f4b3", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '08ea53f408f11d5f6a1101824d480493119e110c8b1e24a39714b6eba01421fb', 'table', 'main', 'W002', false, true, true, '04bf0e7e9a34fd75', '62aba9baf702f4b3', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "52d26ef4198e8f13", "order_number": "B-01", "line": "04bf0e7e9a34fd75", "line_state": "released", "order_state": "released", "parcel": "62aba9baf702f4b3", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5427720203556b0bdff5f474e91994e34f09a4944af0014592bd5d6a804c2b8e', 'tray', '', 'W001', false, true, true, '9b2c60d62dc98c78', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "52d26ef4198e8f13", "order_number": "B-01", "line": "9b2c60d62dc98c78", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '05f9c2f717c32cc2f4956857ef4eb3c74d30ca2c0a83ffbb73c802583bf3d74a', 'table', 'main', 'W007', false, true, true, '713ef6b5f1754f76', '2c2bef216c7459d6', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7efbb6dd49b10cc8", "order_number": "B-23", "line": "713ef6b5f1754f76", "line_state": "packed", "order_state": "waiting", "parcel": "2c2bef216c7459d6", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', '824ed63dbc5732e74352bd618eeef2079d0b07bd5aaf6e61e6bd375f5b48ea00', 'table', 'main', 'S004', false, true, true, '234989eadb16c7ba', 'd2ee820c81f55b06', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "bb2e409a708514cd", "order_number": "B-04", "line": "234989eadb16c7ba", "line_state": "packed", "order_state": "picking", "parcel": "d2ee820c81f55b06", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', 'c9df35056d2117cf36b4fdbbfb7340678c37493fe6f5098fc3782b31cad3ff76', 'table', 'second', 'L006', false, true, true, 'eed5391614174c12', '258565b4bda2eea6', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "24f45c46e1a89b8f", "order_number": "B-09", "line": "eed5391614174c12", "line_state": "packed", "order_state": "picking", "parcel": "258565b4bda2eea6", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '81584cc7f65270cf1f0ab42d850539179eb5f596006e65fabfce819000961624', 'table', 'main', 'S002', false, true, true, '4773487b84324a73', '49ae4aab699e21fc', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f60083e1ce57eeaf", "order_number": "B-03", "line": "4773487b84324a73", "line_state": "packed", "order_state": "picking", "parcel": "49ae4aab699e21fc", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', '46b18af5d350ffc78bf0cae52aaa018a10ca5fc1ba6ccdb223069abd14fed6da', 'bin', '3665ef9de5b263c3', 'L002', false, true, true, '91bec43206d12851', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "a76281d2329e62fe", "order_number": "B-05", "line": "91bec43206d12851", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '51b5425129337797e893d08be6f5b1fad13d54ef469656c7a70f811db30c3650', 'bin', '3665ef9de5b263c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'ba041cb406a8bf1829940d15c868d6600009a7cf870b5ae2bf2f11893fc94702', 'bin', '3665ef9de5b263c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'd3de0def060c0353871bcfd77f540676c76fa83e40782fe374a2412528171819', 'bin', '3665ef9de5b263c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, '6e5c6a51d8cf549c', '8242afa7a3e3908a', 'D001', 1, '2026-03-02T08:10:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, 'b5b62bec707aaceb', '237c8b543b0272f2', 'D002', 1, '2026-03-02T08:12:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'caf5419155fd9e0d', 'ec51e491ba954ff2', 'D003', 1, '2026-03-02T08:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '800870e45b069f2e', 'e0f4904b6b82cfa9', 'D004', 1, '2026-03-02T08:16:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'bddb7f458096f0c6', 'b997f9422a34b474', 'D005', 1, '2026-03-02T08:18:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '3d6daab8be98b1d0', '0ea8342c26d2f743', 'D006', 1, '2026-03-02T08:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '30cd2dc6e4fd04ac', 'a76bfbb7e3786b55', 'D007', 1, '2026-03-02T08:22:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '353fb4581fc8323c', '16f1c8584cb568b5', 'D009', 1, '2026-03-02T08:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '3b0e83515a15fab5', 'e3a817bc844686b7', 'D010', 1, '2026-03-02T08:28:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '669021a4ad948eb1', 'd3d7deac79c97340', 'D011', 1, '2026-03-02T08:30:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, 'a1042ed9cfcaea6e', '6f8cdaa00c2d7a7d', 'D012', 1, '2026-03-02T08:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '61af01d7542ab8ca', '56af820947c07862', 'S001', 1, '2026-03-02T08:34:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, 'ed2c98a82c0fcbe9', 'de752f54edd2661f', 'S002', 1, '2026-03-02T08:36:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '214f8fa20ddb1d97', 'f1c0f644ed75b801', 'S003', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '917b26df90870efb', '6689e72a099bbae9', 'S004', 1, '2026-03-02T08:40:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '4b3e831a5a8f77ab', '49e38eca16d2361b', 'S005', 1, '2026-03-02T08:42:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '0c42bf794c940654', 'ae45088085ffa7af', 'S006', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '6fb3d28a6e320d5a', '16fe14680c14e746', 'S007', 1, '2026-03-02T08:46:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, 'ea2239595783fec0', '53b8f6b87d3b9ce0', 'S008', 1, '2026-03-02T08:48:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, 'e30d70cf887783f3', '07cd25d99e2116ab', 'S011', 1, '2026-03-02T08:54:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '2ca5ffd9ad02681b', '5d6b70d40e731b15', 'S012', 1, '2026-03-02T08:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '614d188365b2fe60', '350a8ff7ddb9c65c', 'L001', 1, '2026-03-02T08:58:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, 'd74bad49d6a8c1fa', 'aca27047a1f8b131', 'L002', 1, '2026-03-02T09:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '30f463be719bcc11', '28d9be513766f0b3', 'L003', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'b9d6b9fd00defcf3', 'f1aa2b5b1fdb56e3', 'L004', 1, '2026-03-02T09:04:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '498d2d7cca105c0c', '804a7e6aaab5ad94', 'L005', 1, '2026-03-02T09:06:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'd50f8deabce36e36', 'dfd7318999f9844b', 'L006', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, 'c5730d53ea10da26', 'ba026bb099b270ea', 'L007', 1, '2026-03-02T09:10:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '50fc7f5946e3ee0e', '02edf2d607ad624c', 'L008', 1, '2026-03-02T09:12:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (33, '998a8a1b5d1f1583', 'e6a4ececaefc91a8', 'L009', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '6fbe4880834fe9a2', '47b9d55a9becd415', 'L010', 1, '2026-03-02T09:16:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '5effcbb26f96c5ed', '7a87e36d176788cc', 'L011', 1, '2026-03-02T09:18:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'd850139d295a3b5a', 'ebbff53f94a7b610', 'L012', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, 'e265cdcf3f4ebb58', '3e5213d4ff59bf75', 'W003', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '1582c8ba34110a18', '8d10e0372cd1f45d', 'W005', 1, '2026-03-02T09:30:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '0b40973695265eac', '1aab3432f83db82b', 'W006', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'deaa6f11cefe9b4b', '57653d3afd75dc09', 'W008', 1, '2026-03-02T09:36:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, '017428b7e4a807a9', '09ac41130004177d', 'W009', 1, '2026-03-02T09:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, 'a52477f75e75fd52', '0ffb7332a34b80e2', 'W010', 1, '2026-03-02T09:40:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, 'd9aead17c48ff8ec', 'c2fc3359d7cf0e46', 'W011', 1, '2026-03-02T09:42:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'f6c4c8c7c0f25a28', '16f2524e50064a62', 'W012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, 'c0fbaf3b74da89ef', '0a5042abaa195c70', 'D013', 1, '2026-03-02T09:46:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '60cfaad757a0f030', 'dd1b3bc5c23a0593', 'S010', 1, '2026-03-02T08:52:00.000000+00:00', 'withdrawn', '2026-03-02T09:49:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '75b971abd577dead', 'e1cbf933f1a9f109', 'W004', 1, '2026-03-02T09:28:00.000000+00:00', 'withdrawn', '2026-03-02T09:50:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, 'bbf02057591b00b4', 'a47e719cb9e193d8', 'S009', 1, '2026-03-02T08:50:00.000000+00:00', 'moved', '2026-03-02T09:51:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '6439d269de58246c', 'a47e719cb9e193d8', 'S013', 1, '2026-03-02T09:51:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'f3f22e17b85f20df', 'bde798c2a8aa4343', 'D008', 1, '2026-03-02T08:24:00.000000+00:00', 'moved', '2026-03-02T10:47:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '78187019a288bb0b', 'bde798c2a8aa4343', 'D020', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '9e80c3664fb004d1', 'c3d417c3ae2fb51e', 'W001', 1, '2026-03-02T09:22:00.000000+00:00', 'shipped', '2026-03-02T11:12:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '370b5e0190625d45', 'a7472efe6852cb6f', 'W002', 1, '2026-03-02T09:24:00.000000+00:00', 'shipped', '2026-03-02T11:12:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '30f65e5225ecf08b', '801c027fcc68f4ce', 'W001', 2, '2026-03-02T11:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '211afd0c005112bc', '9a5a441ee41efac0', 'W007', 1, '2026-03-02T09:34:00.000000+00:00', 'shipped', '2026-03-02T11:20:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, '899a564b75155df6', 1, '4773487b84324a73', 'B-1-1');
INSERT INTO public.stops VALUES (2, '899a564b75155df6', 2, '46f00223d9b44a0f', 'B-1-1');
INSERT INTO public.stops VALUES (3, '899a564b75155df6', 3, '234989eadb16c7ba', 'B-1-1');
INSERT INTO public.stops VALUES (4, '899a564b75155df6', 4, '79045ff3d58085f2', 'B-1-1');
INSERT INTO public.stops VALUES (5, '899a564b75155df6', 5, '10911460ba02684e', 'B-1-1');
INSERT INTO public.stops VALUES (6, '899a564b75155df6', 6, 'a80c4f6e087ab914', 'B-1-1');
INSERT INTO public.stops VALUES (7, '899a564b75155df6', 7, '9b2c60d62dc98c78', 'D-1-1');
INSERT INTO public.stops VALUES (8, '899a564b75155df6', 8, '04bf0e7e9a34fd75', 'D-1-1');
INSERT INTO public.stops VALUES (9, '899a564b75155df6', 9, '713ef6b5f1754f76', 'D-1-1');
INSERT INTO public.stops VALUES (10, '899a564b75155df6', 10, 'af27c71001e9407c', 'D-1-1');
INSERT INTO public.stops VALUES (11, '899a564b75155df6', 11, 'eed5391614174c12', 'C-1-1');
INSERT INTO public.stops VALUES (12, '899a564b75155df6', 12, 'f4164482cc6e94e0', 'C-1-2');
INSERT INTO public.stops VALUES (13, '3665ef9de5b263c3', 1, '7c92e7da584bc0b7', 'A-1-2');
INSERT INTO public.stops VALUES (14, '3665ef9de5b263c3', 2, '91bec43206d12851', 'C-1-1');
INSERT INTO public.stops VALUES (15, '3665ef9de5b263c3', 3, '2fe7ea418e8b7d7b', 'C-1-1');
INSERT INTO public.stops VALUES (16, '3665ef9de5b263c3', 4, 'bd9658ea24b0e00f', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 5, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, false);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
SELECT pg_catalog.setval('public.lines_n_seq', 35, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 27, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
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
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT pk_answers PRIMARY KEY (n);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT pk_bins PRIMARY KEY (n);
ALTER TABLE ONLY public.head
    ADD CONSTRAINT pk_head PRIMARY KEY (one);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT pk_items PRIMARY KEY (n);
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
ALTER TABLE ONLY public.answers
    ADD CONSTRAINT uq_answers_key UNIQUE (key);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT uq_bins_name UNIQUE (name);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT uq_items_id UNIQUE (id);
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
CREATE INDEX ix_bins_section ON public.bins USING btree (section);
CREATE INDEX ix_lines_order ON public.lines USING btree ("order");
CREATE INDEX ix_lines_parcel ON public.lines USING btree (parcel);
CREATE INDEX ix_lines_state ON public.lines USING btree (state);
CREATE INDEX ix_lines_stay ON public.lines USING btree (stay);
CREATE INDEX ix_scans_spot ON public.scans USING btree (station, spot, n);
CREATE INDEX ix_slots_due ON public.slots USING btree (card) WHERE ((card)::text = ANY ((ARRAY['due'::character varying, 'lost'::character varying])::text[]));
CREATE INDEX ix_slots_in_tray ON public.slots USING btree (section, number) WHERE ((card)::text = 'tray'::text);
CREATE INDEX ix_stays_item ON public.stays USING btree (item);
CREATE UNIQUE INDEX uq_access_token ON public.access USING btree (name) WHERE ((kind)::text = 'token'::text);
CREATE UNIQUE INDEX uq_bins_place ON public.bins USING btree (rack, tier, "position");
CREATE UNIQUE INDEX uq_lines_live ON public.lines USING btree (stay) WHERE ((state)::text = ANY ((ARRAY['waiting'::character varying, 'picked'::character varying, 'packed'::character varying, 'short'::character varying])::text[]));
CREATE UNIQUE INDEX uq_orders_number ON public.orders USING btree (number, channel);
CREATE UNIQUE INDEX uq_parcels_open ON public.parcels USING btree (at_table) WHERE ((state)::text = 'open'::text);
CREATE UNIQUE INDEX uq_slots_number ON public.slots USING btree (section, number);
CREATE UNIQUE INDEX uq_stays_open ON public.stays USING btree (code) WHERE ((state)::text = 'stored'::text);
CREATE UNIQUE INDEX uq_stays_turn ON public.stays USING btree (code, turn);
CREATE UNIQUE INDEX uq_stops_place ON public.stops USING btree (round, "position");
CREATE TRIGGER ledger_kept BEFORE DELETE OR UPDATE OR TRUNCATE ON public.ledger FOR EACH STATEMENT EXECUTE FUNCTION public.ledger_kept();
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT fk_bins_rack FOREIGN KEY (rack) REFERENCES public.racks(name);
ALTER TABLE ONLY public.bins
    ADD CONSTRAINT fk_bins_section FOREIGN KEY (section) REFERENCES public.sections(code);
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
