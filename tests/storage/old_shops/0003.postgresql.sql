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
INSERT INTO public.access VALUES (1, '5d1d7d18004c57a86f661b2ddad138b4487d13e9350fc97b99c87a17e9388f41', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$PIs5D22W/ePbHKMARK/YWw$lPKyf9u81kBWKzh+HiYmpbK10CwXX671WMu7hHOdVrs', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '11a220e2462fb474a522837e92a3b15beaad03b21ca1d433c2efff7a3587368a', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, 'eaba4f2286ac2f805eb3c9f9d9b9f3778e41cb7f8bdd191055e2ff8696350e20', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, 'bc99afccca1d71e2b98ef3e78aa5f933ed8be3a4bb5f232a8cdaa1b045f63786', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, '01e1f29c28afe175d30adfb647e6cb9c1a27e5bcdb44cb39254d5850ca2b8ed3', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0003');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/7ba667f5cd816500', '{"id": "7ba667f5cd816500", "item": "46d13c86122dd341", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 153, '02bf078b0f1b84788f79cd3642ab79944c857cfdbd1048c7051023f1d9c244c4', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}}');
INSERT INTO public.items VALUES (3, 'f882c16e9581d245', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, 'b28edaf119041b72', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, 'af64c6b4576c374b', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, 'bc19872926e3d465', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '01396c3e992b1122', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '54ce71e45331acbb', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, 'a132e41d3bdbc4e6', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, 'd147358eab50dd15', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, 'bc3aa829c960c12e', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, 'af686043696f91d1', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'c70b362ec164f483', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '60225204e8f0585e', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'babacc59c20c0bab', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, 'eb828e2d007017d0', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, '326dd34f8d6d3eeb', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '8f87cf3004cf27ac', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, '431da3cab3f3bac4', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, 'e93b24f1631a966c', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, '60eba20806da3fd3', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '01553ea00e9a26d9', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, '9aa47733fae5eb75', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '9636ae8e57c44c64', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '5b301c4915330fb4', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '1c89bc53ce335c61', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, 'e25b0761bd29362c', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '26841a4dc3ea5b0d', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '2c7cadc27c718035', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, 'c6185df706fc9c11', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, 'c4859695c8a1d594', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '8159e2bee57689c0', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '5989291e30680a48', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, '34ea4cbf597ff2dc', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '16635b80e6ec0c94', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '092cac7f92d17fb5', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'dca728c89079c402', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '2639f6bfe7373338', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, 'c00b5d0373e0e38a', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '1159b0e6abfc1de2', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '77da8b4ef69001ed', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '2bb399c48d0fdc97', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '67d0289a58fa3bce', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '012950f4c3a952e9', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, '1b1a7d2ff9d5b2cd', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '490cf9f6aac269a2', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, 'c8e16d5f2c85c403', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, '46d13c86122dd341', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, '1d873de3b0168492', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'a86d392f96420111', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, 'b806dbbff296a2a9', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, 'd0188e6226936fef', 'Rear wheel', '', '', NULL);
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"1bf9042e9148add9","title":"Rear derailleur 1","turn":1}', '348573f8c7bcab2cb735a1f7a753526c43461304bddf261ce9bb31beb7190642');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"a863a96679c5c6db","title":"Rear derailleur 2","turn":1}', '26b504fbb9e21daa9ed7a0ac0a7251a1fb28f2507822777c718103c8267288cb');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"24faf6dc85626d38","title":"Rear derailleur 3","turn":1}', 'e38e380a9c24209a2ada7027b4928c0ad8f81635a30f0dfa0394821cee0e395a');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"60435e77304a6a72","title":"Rear derailleur 4","turn":1}', 'b7553247a8437adf5fa0aaaa63e59bbd27ac1d35ed66f080414cf1194e39db80');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"0fe2fdc8c0dc035e","title":"Rear derailleur 5","turn":1}', '14a23967fd0c55a95f272479afc42a870f2e666c47262c9dfea946229c898ae0');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"6a4481b4e909f689","title":"Rear derailleur 6","turn":1}', 'fcf089391c97949246d0ff16dd99cce7f42d0b0c0405ad5f5cbb4209c02ca517');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"0b4bbced464686fb","title":"Rear derailleur 7","turn":1}', '0c7d64fce6db5b4e515b1d957f6f1f68b6fdc78f7af02fffdfb5fec85c88d415');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"26022a3f0ba22215","title":"Rear derailleur 8","turn":1}', '78d92e20d989f1b3d10cd29e163fcea677256e14b74c8434d84d6603c462e4cb');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"4d67bee560825725","title":"Rear derailleur 9","turn":1}', '2649699ee11f6e67d180f3641defe3414393988bae3e9d3f4fed0d29df1cfd35');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"45721986f72cf34e","title":"Rear derailleur 10","turn":1}', '5c51c7008bbd8307f402bca727b941ae730430150ff4e18385d19f0a90ed03e2');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"0f047f4f82cf65fd","title":"Rear derailleur 11","turn":1}', '49292647cb1bdb7df4082574c01cdfb4cb47897573bf261358e003a0773ab003');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"d24c70ca5cbdd0ad","title":"Rear derailleur 12","turn":1}', 'cfceb9d2dfa5573968ae2dcf94fef1b306094722e52c7dd345560e32fcdab59f');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"d2292ddb39723f99","title":"Leather saddle 1","turn":1}', 'ddf3a2893854caf01d52f63a7652a393cf24c46274d35015ca0f2d527b19d951');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"c544b0481fb8b7f0","title":"Leather saddle 2","turn":1}', '7c2c1dbc7960b1614968f5d6011b70bf6eacec655e7cc4c0608f5f0b1a5a333f');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"2b52fef873e83fa8","title":"Leather saddle 3","turn":1}', 'e3598446d529fa5dff5abf754578771551d3da6222c1fed9dc36606e88fdf806');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"d73b5166b494620a","title":"Leather saddle 4","turn":1}', '84fc2102cdb67aac78c369c4a9a84e772911e57a72b163e15699f03edb1bbf08');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"f85e7d28c678475a","title":"Leather saddle 5","turn":1}', '5850a929ab56401be90edbafe200a62b112af63d2b138b820e91a48992cfdb92');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"1d2a36f91fbee708","title":"Leather saddle 6","turn":1}', 'c02f54506e930a203cd2a474164cc5a56dc41e6cf991c4cfcfada77e67014415');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"d7493a53a07eca72","title":"Leather saddle 7","turn":1}', 'e4536a40f612a03e18d581bff757f5b4b600a9b11b7412047d63571d0a0c5e59');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"20a31ddcf55534c3","title":"Leather saddle 8","turn":1}', '0be9818bbf587bd109b8e9383e6aa7a7b93eceb22b09c2dddaabcbeeb3047ac0');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"21e800e96928278f","title":"Leather saddle 9","turn":1}', 'b4a84c74a7c42fa1dfeddd8d3ca73cebb8012dbc8d44c1fbb0e0f3978ec25715');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"f74339cfb99f9237","title":"Leather saddle 10","turn":1}', '340e8651b7b7c0cdd3d714a2396be08b5ece5a15b4fa041307a5f347e3cc5e76');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"a50d63dde28488f4","title":"Leather saddle 11","turn":1}', '481feea3b536962bb894abef635850c3707a5ac5d92cc64ffd7e730230317baf');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"66a435c44a859739","title":"Leather saddle 12","turn":1}', '7ed26bb1a0c5413f91e18a120af0fc9019457e1ae3b873cccd5a04d07457b3e4');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"ad49368859ddb849","title":"Dynamo lamp 1","turn":1}', '226e6da10164ed08df8c5655de2cd845cf08891dc9147451cd673c3bb8192867');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"4327e672f26ab13e","title":"Dynamo lamp 2","turn":1}', '1a3fbec9c1f378a97afa1e35c65099f572b2349182b1590a900f80f2d72dc4d0');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"a13602840547a771","title":"Dynamo lamp 3","turn":1}', '6203320a2faba491db5cd0fc50ec41b214ff17fa017ecfe93703a4f243a02b6c');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"6cb0a7c544b7135d","title":"Dynamo lamp 4","turn":1}', 'c22852b8a8792de25afe92199fe620d2d85a03282380ed9af478ba12fdb57ddc');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"04ed540a5cf64842","title":"Dynamo lamp 5","turn":1}', 'c445b12d859f6aff04ca5dae80c167e43bbe38ab8af8130961b6e525675ff03f');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"0fd0d3799f201e95","title":"Dynamo lamp 6","turn":1}', '3c79d5b58e224e147be435dbeab0adea9d11a5871b08c811385cc2befe5e2c91');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"e1e3c1f2cc9b2c51","title":"Dynamo lamp 7","turn":1}', 'e12dbaa3d98f7e60d1f209d12ab788cbf592ceba7df2783756593fd6093d41f5');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"c15bd7e204f7cd3c","title":"Dynamo lamp 8","turn":1}', 'd250876b3e63c3b5b48e306aaf711615d06f893cc1b318ac9e62e7aa6088dd5b');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"1d1782b5eaa776b1","title":"Dynamo lamp 9","turn":1}', 'aa719da239abbcd91f87c0bebf4a46703358ea5707b9937db8f71cc61997539b');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"9e623f6abaee0c33","title":"Dynamo lamp 10","turn":1}', 'ead317d1d1c6bfdf615df5c1d54de41ec0750db78e6c1c71da5e63eb447b1dde');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"3c56a368df7695bd","title":"Dynamo lamp 11","turn":1}', '3f7fa906dcafa94a2d4e5ed3bd0df2a6632e480fdf337aad28640c9c524938f9');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"65138eef63966b36","title":"Dynamo lamp 12","turn":1}', '2772df21f35c988cf555911120847fc6da7d7cc9d4885c7cb6f77ba668dac4b2');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"8669897f45c49feb","title":"Front wheel 1","turn":1}', '29be21e85297dfae47e86b30f3ddb611f51fbe12c18470cded273cbb0e550c6e');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"c15682446c13c471","title":"Front wheel 2","turn":1}', '78865fd3caf74e2708154cad8553cd0e808d33238c96a6d231cc38803f175743');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"2601bbea422012bc","title":"Front wheel 3","turn":1}', 'df07232842e3c2982242e264d7a95268c3ec9588ae2624569f45e594a56670e6');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"a5bd00b048be4773","title":"Front wheel 4","turn":1}', '635e306ad4119b50436f7210b451eb861ebac8203b85e2e718c0ae08e784471c');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"aba448acebe82f64","title":"Front wheel 5","turn":1}', 'fb770ac62e457174411d408e90303c5c16b9d856935b49dc3c871c0defe3d2fa');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"afc734e28ed77148","title":"Front wheel 6","turn":1}', '6158707609753611b770630f4296f9096432ce499ed0974fb607c60dd099ae60');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"e6c259665e3a1310","title":"Front wheel 7","turn":1}', '934c8326ff14c3a200527a091eb1288a741c9d34e89dd745599010c63f6fbd31');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"a915ba4cf78a4c36","title":"Front wheel 8","turn":1}', 'f6d63ac4342a1f9c7c20ddf4c2d81004c2b11a40af633ee1a212fc32fd157237');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"181b5de9a47637ce","title":"Front wheel 9","turn":1}', '85b31f1fa83057a82daf1debd5e9f4878bd6572fade4b8ce8c2ca9426cc70899');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"8b867c9b6dce48e7","title":"Front wheel 10","turn":1}', '9d9ce739656554ed36b3b7e0c31be222bf9d07c89fb5bea224a37adc19608117');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"0e695c6a01b41614","title":"Front wheel 11","turn":1}', 'd2cb33c6376504e218c22ff7df3590015b5b2878078b7e25d69ec679c05c3ec6');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"4303720191bd3e60","title":"Front wheel 12","turn":1}', '116c17adf7acd8bbf0d7b224c3370645af75393f55675df503b44c898190315e');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"7ba667f5cd816500","title":"Brass bell","turn":1}', '19cf8d4b6316b245566dd534fca042e1a219d80a24826127b70d067159c9e950');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"a863a96679c5c6db"}', '0ff087de397bcb0727fc62880f7f8e0df2e099dbe8e14886f504d2b6c248bc94');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"f74339cfb99f9237"}', '9dab7c1c1f9cadc2b433c09299008874b5f835ce0570dbb5dc2aa76528be8c16');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"a5bd00b048be4773"}', '81a6f67f60d0daaf35b8bdfb8eb31d28b233766784f49a7a69a1729cf869c2bf');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"088e14310d296ca0","stay":"21e800e96928278f","to":"S013"}', '4297f9a405589ff32210eeaadc1e0c6756a9e6bd478acac12fbe3e4ada4857cd');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"1bf9042e9148add9"}', 'bf151379fdc47cb77bfebeb13bafb24d86a4b9f3fc9991abbe2e18dbf153e6dd');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"d2292ddb39723f99"}', '2ee713a833548ddbf593d33fd0f5eb416ec021aeee285182a33a3bfc44940769');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:22:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', '00c6644d5d7a2018df6f24a02d2abb2bb46704af32b7e812be06638ab6c265ea');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:25:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', '0ff16ffca710ef420781b7072df71d7a1c70aebe85f91fbebdeb77ef25396d75');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:26:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'aeab3ee3cf0e7905215dbec28aa5d108271763b57fd90ed6e3c889c5f737c6f7');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:27:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', '4952808546721d085196c50266b7988a20eb05fe1317d4b85a8c111161d01f20');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '346febe0f2d454c630365674b2236baa75f04f87e43ed3017b308fa39d5ff8f8');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:31:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"89927dfc72d9a4f3","reference":"W001-01E","stay":"8669897f45c49feb"},{"hold":null,"line":"a18a49f41c514085","reference":"W002-016","stay":"c15682446c13c471"}],"number":"B-01","order":"4c8684147dcb19e5"}', '6581bee28954b678fb52c234a948679ff01ed78ca550225b556c5d727c2c5ea6');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:34:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"dc8aa10460e45269","reference":"S002-013","stay":"c544b0481fb8b7f0"},{"hold":null,"line":"c73778d274e21c67","reference":"S003-01W","stay":"2b52fef873e83fa8"}],"number":"B-03","order":"fd4488bbdc0961f4"}', '03b5d4a608a059bf6c4e93a9f48f612e12a2c1501d2491eb6073a5d679d0a244');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:37:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4075e43bb7c9ff5a","reference":"S004-01O","stay":"d73b5166b494620a"},{"hold":null,"line":"d0b15712d57f40a0","reference":"S005-01G","stay":"f85e7d28c678475a"}],"number":"B-04","order":"67ba35cd43ea59aa"}', '824b45716e84815a43903d2cc1bc3e931cdbfe797631ff9630651143342042e4');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:40:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e62a1bee3d0f9162","reference":"L002-017","stay":"4327e672f26ab13e"}],"number":"B-05","order":"8936102c80075f7c"}', '8874961f705eef676273245c7498e83a28d3542414289efad2b67f33fc511d31');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:43:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"0ffdee8da032941c","reference":"L003-010","stay":"a13602840547a771"}],"number":"B-06","order":"7c520ca65afae5b6"}', 'e379568b9ffd4acd658b8410897b65bbaa37fefbb1c756c0bebcd1fbb0163124');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:46:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"8489081b322d0fe3","reference":"L004-01S","stay":"6cb0a7c544b7135d"}],"number":"B-07","order":"b0a66742fdd940e5"}', '71b5a45e4470d95d9442f0bd98559c09f629c30ba4e269ee9ee9d1056b302fb3');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:49:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"51476579cb143039","reference":"L005-01K","stay":"04ed540a5cf64842"}],"number":"B-08","order":"7421a2ac12a9bdc7"}', '95c6254abfa2fba36e7904c1cf6715b51b494e8b2298e00a25cfa14c03a7c314');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:52:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a2bc1ad85e2e4146","reference":"L006-01C","stay":"0fd0d3799f201e95"},{"hold":null,"line":"41209cab853a5643","reference":"L011-010","stay":"3c56a368df7695bd"}],"number":"B-09","order":"bb149b1d3cf35faf"}', '7d15db0916c4abb482eff7ddf13269b2c57d4f990d1f2c50f52c99d1d5abfcf7');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:55:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"326caac8a8921b04","reference":"S006-018","stay":"1d2a36f91fbee708"}],"number":"B-13","order":"e4823530d7232c07"}', 'db942463bf9f585c08fca874b66c3b2fb6e207ecf3ae757be5278e79bd482b16');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:58:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"55d1ed7224204114","reference":"L007-014","stay":"e1e3c1f2cc9b2c51"}],"number":"B-17","order":"fb4ca296d27e00cb"}', '89da410132df232f759f14184766ca3a653eda09d3c48be1230b28c0f36b0253');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:01:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e9515995c9b39ec6","reference":"D009-01B","stay":"4d67bee560825725"}],"number":"B-18","order":"ddd2dac71bb1b0f0"}', '7d050331f8944b68005124bbb776f80a665953932e7b1c755c6c326e8b050a8a');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:04:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b771c310204defcf","reference":"W006-013","stay":"afc734e28ed77148"}],"number":"B-21","order":"2a0afe1315fb9c8f"}', '365b873277291d024789e15e289299c4bb9951e1597af4fd4dbfb45907482f6d');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:07:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"5ef75b7d6e9945c5","reference":"S007-01Z","stay":"d7493a53a07eca72"}],"number":"B-22","order":"09286ee0f4f8764c"}', '0bcfc9f88c217ebd626f25b0f860ca6a2bfdc498f8efb08fb9fc0b30bbcc1992');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:10:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"0174613a28b95be0","reference":"W007-01W","stay":"e6c259665e3a1310"},{"hold":null,"line":"a7d6dbacaaa4c5f6","reference":"W008-01O","stay":"a915ba4cf78a4c36"}],"number":"B-23","order":"e36cde9d2bb62706"}', 'cb0996086efde6631d91b950d654939418ea497a8392e3fcd02c92e8955ca0c3');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:13:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"f3d4a6cfcb48964a","reference":"D008-01J","stay":"26022a3f0ba22215"}],"number":"B-26","order":"956d8fda22ac464a"}', '7f2902fffff694f5b60a753f82d48e91b74695d51c9ab80beb4a795c00314523');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:16:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"70b92ca36e2cf30a","reference":"D003-01U","stay":"24faf6dc85626d38"}],"number":"B-30","order":"750bbf37cbbeaa80"}', '71ad12a85a60711662daff5ebd8d0b7a4fc39d3d9e1947a55e87ba1f883fb0a4');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:19:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"915b4a3b915aa329","reference":"D005-01E","stay":"0fe2fdc8c0dc035e"},{"hold":"unknown_code","line":"10aa23e6097e483c","reference":"Z999","stay":null}],"number":"B-31","order":"894f131cbcdebd6a"}', '30191800670c0930b4f8fa8949c2956d5db9492175b05e0056ade6c0e97e8361');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:22:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9a2bcabb1f2229d0","reference":"D006-016","stay":"6a4481b4e909f689"},{"hold":null,"line":"5df20a3f1e5e957f","reference":"D007-01R","stay":"0b4bbced464686fb"}],"number":"B-32","order":"ef33308b508390d3"}', '983c4951877bd2b0aa2cd237f694dc55ff0c1b1beb3161d72331dede4025ee9d');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:25:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"5df20a3f1e5e957f","reference":"D007-01R","stay":"0b4bbced464686fb"}],"number":"B-32","order":"ef33308b508390d3"}', '8c80daf025b23f84fc32b908ab51ae6f35c529b24a71bf1ed83c4e53015ef936');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:28:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"439a9186c7767c76","reference":"lamp","stay":null}],"number":"B-33","order":"c204ead15dd6795a"}', 'd03d324f7b728a27e912705a92c356d49855a70eb90371da5e9c17ac9d78bd50');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:31:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"76d18413576f340e","reference":"D006-016","stay":null}],"number":"B-34","order":"f52b95cb5a364eea"}', '6617607b8004c2d9848a9a1b59fec33d1082cbfe20548c04af47536d1948ef87');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:34:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"0f5d90ffb40d736c","reference":"W004-01J","stay":null}],"number":"B-35","order":"bb3fe0c3eafccba4"}', '2bd2f9b4e4386e6a29f21d1314a17554d8ec5299d55956cda5446f496fa84cfe');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:37:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"f3b713a9d73ca357","reference":"L015","stay":null}],"number":"B-36","order":"3e76d768d5c149c0"}', '05904bac6550fa5a1a5d90250c8a4d8c7feb7bc660fe74454352eb7eba52833a');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:40:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"097839f86af9a813","reference":"W005-01B","stay":"aba448acebe82f64"}],"number":"B-37","order":"8d8fc31d9e716be8"}', 'fad0b9b0688a17dd93b27baff26b972159a3a1c3e6e98aa91fa160f7c77b4836');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:43:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"097839f86af9a813","stay":"aba448acebe82f64"}', 'bebaddd676a1fed377a0fc769a82ec9f779e0801f4a055e0eabb7ba799bee498');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:46:00.000000+00:00', 'held', 'owner', '{"line":"55d1ed7224204114","why":"Another lamp, by the photo"}', 'd7a048d594351d254fa404174d7b95aa0c4f008e10441892df3574e54c8a610a');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:49:00.000000+00:00', 'cancelled', 'owner', '{"lines":["51476579cb143039"],"number":"B-08","order":"7421a2ac12a9bdc7"}', 'b618bcace633ba6de1e2dfc8da52e0678469af9742e8d2d3379226e455a28fa1');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:52:00.000000+00:00', 'cancelled', 'owner', '{"lines":["b771c310204defcf"],"number":"B-21","order":"2a0afe1315fb9c8f"}', '866c2265ac340f01b31416ab730278382c3e0287ba9942bf29dd03cd0ffbc31b');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:55:00.000000+00:00', 'revived', 'owner', '{"line":"b771c310204defcf","stay":"afc734e28ed77148"}', '457433802ff3697a0d841c342e307fa6ddba76ab8829ecd9e23e9d54faebb506');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:58:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"f5a5defdfe03b451","stay":"26022a3f0ba22215","to":"D020"}', 'd60b3e85f718c64cc2588cac53d9e4ddc544c3c804ff54f3d5d8f929f7f4fb71');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:03:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"997844b907e667fb","reference":"S012-01O","stay":"66a435c44a859739"}],"number":"F-1","order":"1633044c5808b66f"}', '60db2bdcce750ba36fdc42056d1ae28082b8ee7bf840e17e704eb4b37112da7b');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:03:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"94ee559b9fe21f5d","reference":"","stay":null}],"number":"F-2","order":"98d34ba8b37614ce"}', '68f78f2c4f0e785415cd48435a5d4927c07889c6655e5d2e31aee07da5a62ded');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:06:00.000000+00:00', 'round opened', 'owner', '{"lines":["89927dfc72d9a4f3","a18a49f41c514085","dc8aa10460e45269","c73778d274e21c67","4075e43bb7c9ff5a","d0b15712d57f40a0","a2bc1ad85e2e4146","41209cab853a5643","326caac8a8921b04","5ef75b7d6e9945c5","0174613a28b95be0","a7d6dbacaaa4c5f6"],"round":"86ff0c6a82d26af2"}', '3433ea2d53bdbd9246094136bba0b09563466774978c74a7f7573efaf57d0a48');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:09:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '27fdc6786cd9c264d323cd101d9a34a46bfce7631b4f008217fb93a47e156eea');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:12:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"89927dfc72d9a4f3","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '3583474fc4c579cdaa3ed651545a96b1e8fc4ab75e2b65bcaf3c4bc65691d1d5');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:15:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"a18a49f41c514085","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '5e69047b289d725619fe8d51c6c109c989bbf2e7e1fb5661e842286c60009a1a');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:18:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"dc8aa10460e45269","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'a30f5875c6230314a8dee86f8275da4bcebd607cf7704fc58666e234c05e25f4');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:21:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"c73778d274e21c67","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'bf67ef1e1e979f45fe6ead45d135dfbf64ef091c53a7c7aaab98b357810c9c33');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:24:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"4075e43bb7c9ff5a","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '3c77d2ae981e8455ab07909ae82dc84fa9123b166f4ac338ca7452c7a3f7ab0e');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:27:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"d0b15712d57f40a0","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '371d4b6471de64a6b238e4dc04fafd830776a9a936c1579a78bb4d8816c23f82');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:30:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"a2bc1ad85e2e4146","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '97305b7b9c534e3f270fc3a1fa6c10db54631c0c8d1db9e0700b26e45ab7fc22');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:33:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"41209cab853a5643","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '7c9b4ec3e885a869647279df3607982edcb3c763af510f377d5db4372f085965');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:36:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"326caac8a8921b04","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '35d05d25f4718aa50526819f975f2f5f90984039495222eadb67e02696b7d24b');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:39:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"5ef75b7d6e9945c5","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '3e6bdcc51a172be1aea1af56ca7fd09f903538d4261e6e9b09a83eed24bd4f77');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:42:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"0174613a28b95be0","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'dc32dbe6260c7046f889131ce9fa93256063d741ae721f6d992663c0f5207fa3');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:45:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"a7d6dbacaaa4c5f6","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86ff0c6a82d26af2","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '13dbfb9a5526ddca9932616d6c101963e306200a4241ca5bf340a9aaad6f6bbc');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:48:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"a7d6dbacaaa4c5f6","line_state":"waiting"}', 'b5ebc9daf1a28b02dc3b265891daf05ad3e40500990cc34a4d39eef6c483e0ff');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:51:00.000000+00:00', 'round closed', 'owner', '{"round":"86ff0c6a82d26af2"}', 'df6d28d09c7e94081cd29f06c30af8627c1503c5c8ea177d31ca7bdf8dc3971e');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:54:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["4c8684147dcb19e5"],"parcel":"1b03d8b9e7bc595f","table":"main"}', '5d9f20b79620e0c9a1f3951afd7e10582cdd3224fabf14fbb493b5e7be989239');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:57:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"dc8aa10460e45269","line_state":"picked","order_number":"B-03","parcel":"1b03d8b9e7bc595f","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '8b15fd30f94519bd68fff96c3aa15854d3f75f9ab0e09c84acd4ee80cc0b88cf');
INSERT INTO public.ledger VALUES (123, '2026-03-02T14:00:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"89927dfc72d9a4f3","line_state":"packed","order_number":"B-01","parcel":"1b03d8b9e7bc595f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'a9eb28245e6fb5a7d72d70bef14858f2ffc1aaf06fb01fb343610dde6ead5c9a');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:03:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["4c8684147dcb19e5"],"parcel":"1b03d8b9e7bc595f","released":["W001","W002"]}', '7acfe6447d4ceba274822f7cd6905699b8e1126430e13a23a5329902c347ad95');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:03:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"a18a49f41c514085","line_state":"released","order_number":"B-01","parcel":"1b03d8b9e7bc595f","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '27f872b6c3b4c00c627bf925a75605697b0de6a3f76f9a5af74a85a7afad0134');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:06:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"89927dfc72d9a4f3","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c2eb5c855fdfa11f5e4d5d096c42410c18cbbf42ca3a61ea3f11083b3aa56e94');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:09:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"29b98c0d68377612","title":"Rear wheel","turn":2}', 'e8b74e9198b9b8f95e79b33edea623f13d18e43d1d5399c48920a0ff43650684');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:12:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["e36cde9d2bb62706"],"parcel":"4f435307ab85b44d","table":"main"}', 'c56bdc60ef77df520d4715e27363f8c07cd08a7481cf8443de0491679ef1bdfc');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:15:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"0174613a28b95be0","line_state":"packed","order_number":"B-23","parcel":"4f435307ab85b44d","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'f622922c7c421e630d223374c94109ea2ae384e30b9baf0b2e48dd032ee621a0');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:18:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["e36cde9d2bb62706"],"parcel":"4f435307ab85b44d","released":["W007"]}', 'bbb2546086835b20fdd443fb21fabdd3ccdfe59d0d2730f6b114e9a7b8b90812');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:21:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["e36cde9d2bb62706"],"parcel":"4f435307ab85b44d"}', 'ca2923741542ee7974b1928f9f6d31179e06613999c8f198219a32ba8c6eff3d');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:24:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["e36cde9d2bb62706"],"parcel":"4f435307ab85b44d","released":["W007"]}', '7d3d204eec240bdc3a33926da25715390fd7c8129174857c38ad4abc89f28592');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:27:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["09286ee0f4f8764c"],"parcel":"f10f8d097480fe25","table":"main"}', '6e68dcd7c45e93077648b61f6b42e07aecb3acbeb4827ad81d08a676fc132d85');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:30:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"f10f8d097480fe25"}', 'c6194d6da3bf41ac5e399b5c59635b15852b7f2073105cf22976a8ca4e51fad6');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:33:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["67ba35cd43ea59aa"],"parcel":"ba5d8d641e70535a","table":"main"}', 'd36b73b775bb85e9e959c0e3a62bbff224d9a6ecaa5564b67bd1efb35cb12c1c');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:36:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"4075e43bb7c9ff5a","line_state":"packed","order_number":"B-04","parcel":"ba5d8d641e70535a","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'ad2a5f09ecf96e4f48ace20874ca1c00e5a1fe5053eaddee1cfbf6b1beed7864');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:39:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"ba5d8d641e70535a"}', 'f06d3bbfe1d24e5f3b5f6f8ac5d89d8e287ef3308f59877cfaa1e88427084dc1');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:42:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["bb149b1d3cf35faf"],"parcel":"7fedccb9c952e087","table":"second"}', '13b02635ff6f5ba7c84f9e24c8d1c2ab22489f0a71b36004338668bd937ec421');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:45:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"a2bc1ad85e2e4146","line_state":"packed","order_number":"B-09","parcel":"7fedccb9c952e087","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '69c7631899e3cb7bc551475a93beb19c2afad4c1bbb02a6c18456798690e4802');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:48:00.000000+00:00', 'cancelled', 'owner', '{"lines":["a2bc1ad85e2e4146","41209cab853a5643"],"number":"B-09","order":"bb149b1d3cf35faf"}', 'd9af1170d5b711553e39ecfa999a038c6338b343cb9e6db72c90b4b19029015b');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:51:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["fd4488bbdc0961f4"],"parcel":"c0e64c768c810378","table":"main"}', '5b5db2f27b5cc8813eb14cefff64c60473b7a88edd87b54d283308ebcfc0750a');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:54:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"dc8aa10460e45269","line_state":"packed","order_number":"B-03","parcel":"c0e64c768c810378","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '4c36c918be3723c40b3cefddb9bcd243f05eeffa2bba0e22032473ee5e0ea686');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:57:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"326caac8a8921b04","reference":"S006-018","stay":"1d2a36f91fbee708"}],"number":"B-13","order":"e4823530d7232c07"}', '0796c7074dc45bc865bcf2601df8d76baca4a0ae46e63ca4a9eeb2c67858ca4c');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:00:00.000000+00:00', 'round opened', 'owner', '{"lines":["e62a1bee3d0f9162","0ffdee8da032941c","8489081b322d0fe3","f3d4a6cfcb48964a"],"round":"f5f86cae5267b527"}', '61c7500804c6987994250c79dad9cfe06af9c27109f3e825169c098d68b18cdf');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:03:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"e62a1bee3d0f9162","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f5f86cae5267b527","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '37ecb2a407c0dd08d9a00dbe05e9b2f587843f950057fc3034aef39200e305a4');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:06:00.000000+00:00', 'short', 'owner', '{"line":"8489081b322d0fe3","note":"Not in its bin"}', 'cbe9267cfd3d926ffdb04149c6114fddd4aaad529eb884e656df9571893f765b');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:09:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"f5f86cae5267b527","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'f9acc2bc9b9cf2c2aafcc84706dd704710558c20ab8c68c1f92099fb2a4c0d17');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:12:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"f5f86cae5267b527","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'a82dde11d53a2a07ec531723a27d3e9ee84c1fd1ad20922e02881989a90f7a2c');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:15:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"f5f86cae5267b527","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'e0f20a500de3df81f41580128dd22463036245ad0f68c5feaebb3a25111ca1b0');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:18:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '0a4e240c848c7dc9ea926bb41311acdedfa4979f50febc28fb21d270120affd1');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:21:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', 'dc1843ac22dc1a5af9fce058023e1b01d1e619c799a3abc10ce5a1fc65fe542b');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"0a0456e896dc3b27","reference":"D001-019","stay":"1bf9042e9148add9"},{"hold":"already_sold","line":"8b2e37459787e66a","reference":"W002-016","stay":null}],"number":"B-38","order":"4bf8f5bc65f039e9"}', '7753e03b61b48d0fc7c927bd63004c9959d38ffea59ac16184dc144f0c71ed62');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:27:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"64c39ae69145a0dc","reference":"W001","stay":null}],"number":"B-39","order":"d6cd379af129d835"}', '02bf078b0f1b84788f79cd3642ab79944c857cfdbd1048c7051023f1d9c244c4');
INSERT INTO public.lines VALUES (15, 'e9515995c9b39ec6', 'ddd2dac71bb1b0f0', 1, 'D009-01B', 'Rear derailleur 9', '', '4d67bee560825725', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, '70b92ca36e2cf30a', '750bbf37cbbeaa80', 1, 'D003-01U', 'Bell with a crown', '', '24faf6dc85626d38', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, '915b4a3b915aa329', '894f131cbcdebd6a', 1, 'D005-01E', 'Rear derailleur 5', '', '0fe2fdc8c0dc035e', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, '10aa23e6097e483c', '894f131cbcdebd6a', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, '9a2bcabb1f2229d0', 'ef33308b508390d3', 1, 'D006-016', 'Rear derailleur 6', '', '6a4481b4e909f689', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, '5df20a3f1e5e957f', 'ef33308b508390d3', 2, 'D007-01R', 'Rear derailleur 7', '', '0b4bbced464686fb', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, '439a9186c7767c76', 'c204ead15dd6795a', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, '76d18413576f340e', 'f52b95cb5a364eea', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, '0f5d90ffb40d736c', 'bb3fe0c3eafccba4', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, 'f3b713a9d73ca357', '3e76d768d5c149c0', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '097839f86af9a813', '8d8fc31d9e716be8', 1, 'W005-01B', 'Bell with a crown', '', 'aba448acebe82f64', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, '55d1ed7224204114', 'fb4ca296d27e00cb', 1, 'L007-014', 'Dynamo lamp 7', '', 'e1e3c1f2cc9b2c51', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, '51476579cb143039', '7421a2ac12a9bdc7', 1, 'L005-01K', 'Dynamo lamp 5', '', '04ed540a5cf64842', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, 'b771c310204defcf', '2a0afe1315fb9c8f', 1, 'W006-013', 'Front wheel 6', '', 'afc734e28ed77148', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, '997844b907e667fb', '1633044c5808b66f', 1, 'S012-01O', '', '', '66a435c44a859739', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, '94ee559b9fe21f5d', '98d34ba8b37614ce', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, '0174613a28b95be0', 'e36cde9d2bb62706', 1, 'W007-01W', 'Front wheel 7', '', 'e6c259665e3a1310', 'released', NULL, '', '4f435307ab85b44d', '86ff0c6a82d26af2', 7, NULL, true);
INSERT INTO public.lines VALUES (5, '4075e43bb7c9ff5a', '67ba35cd43ea59aa', 1, 'S004-01O', 'Leather saddle 4', '', 'd73b5166b494620a', 'packed', NULL, '', 'ba5d8d641e70535a', '86ff0c6a82d26af2', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, 'd0b15712d57f40a0', '67ba35cd43ea59aa', 2, 'S005-01G', 'Leather saddle 5', '', 'f85e7d28c678475a', 'picked', NULL, '', NULL, '86ff0c6a82d26af2', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, 'a2bc1ad85e2e4146', 'bb149b1d3cf35faf', 1, 'L006-01C', 'Dynamo lamp 6', '', '0fd0d3799f201e95', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '7fedccb9c952e087', '86ff0c6a82d26af2', 4, NULL, true);
INSERT INTO public.lines VALUES (12, '41209cab853a5643', 'bb149b1d3cf35faf', 2, 'L011-010', 'Dynamo lamp 11', '', '3c56a368df7695bd', 'cancelled', NULL, '', NULL, '86ff0c6a82d26af2', 4, NULL, true);
INSERT INTO public.lines VALUES (3, 'dc8aa10460e45269', 'fd4488bbdc0961f4', 1, 'S002-013', 'Leather saddle 2', '', 'c544b0481fb8b7f0', 'packed', NULL, '', 'c0e64c768c810378', '86ff0c6a82d26af2', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, 'c73778d274e21c67', 'fd4488bbdc0961f4', 2, 'S003-01W', 'Leather saddle 3', '', '2b52fef873e83fa8', 'picked', NULL, '', NULL, '86ff0c6a82d26af2', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '5ef75b7d6e9945c5', '09286ee0f4f8764c', 1, 'S007-01Z', 'Leather saddle 7', '', 'd7493a53a07eca72', 'picked', NULL, '', NULL, '86ff0c6a82d26af2', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, 'a7d6dbacaaa4c5f6', 'e36cde9d2bb62706', 2, 'W008-01O', 'Front wheel 8', '', 'a915ba4cf78a4c36', 'waiting', NULL, '', NULL, '86ff0c6a82d26af2', 7, NULL, true);
INSERT INTO public.lines VALUES (1, '89927dfc72d9a4f3', '4c8684147dcb19e5', 1, 'W001-01E', 'Front wheel 1', '', '8669897f45c49feb', 'released', NULL, '', '1b03d8b9e7bc595f', '86ff0c6a82d26af2', 1, NULL, true);
INSERT INTO public.lines VALUES (2, 'a18a49f41c514085', '4c8684147dcb19e5', 2, 'W002-016', 'Front wheel 2', '', 'c15682446c13c471', 'released', NULL, '', '1b03d8b9e7bc595f', '86ff0c6a82d26af2', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '326caac8a8921b04', 'e4823530d7232c07', 1, 'S006-018', 'Saddle with springs', '', '1d2a36f91fbee708', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, '86ff0c6a82d26af2', 5, NULL, true);
INSERT INTO public.lines VALUES (20, 'f3d4a6cfcb48964a', '956d8fda22ac464a', 1, 'D008-01J', 'Rear derailleur 8', '', 'f5a5defdfe03b451', 'waiting', NULL, '', NULL, 'f5f86cae5267b527', 4, NULL, true);
INSERT INTO public.lines VALUES (8, '0ffdee8da032941c', '7c520ca65afae5b6', 1, 'L003-010', 'Dynamo lamp 3', '', 'a13602840547a771', 'waiting', NULL, '', NULL, 'f5f86cae5267b527', 2, NULL, true);
INSERT INTO public.lines VALUES (7, 'e62a1bee3d0f9162', '8936102c80075f7c', 1, 'L002-017', 'Dynamo lamp 2', '', '4327e672f26ab13e', 'picked', NULL, '', NULL, 'f5f86cae5267b527', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, '8489081b322d0fe3', 'b0a66742fdd940e5', 1, 'L004-01S', 'Dynamo lamp 4', '', '6cb0a7c544b7135d', 'short', NULL, '', NULL, 'f5f86cae5267b527', 3, NULL, true);
INSERT INTO public.lines VALUES (33, '0a0456e896dc3b27', '4bf8f5bc65f039e9', 1, 'D001-019', 'Rear derailleur 1', '', '1bf9042e9148add9', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, '8b2e37459787e66a', '4bf8f5bc65f039e9', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '64c39ae69145a0dc', 'd6cd379af129d835', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '8936102c80075f7c', 'B-05', 'fair', '2026-03-02T11:40:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, '7c520ca65afae5b6', 'B-06', 'fair', '2026-03-02T11:43:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, 'b0a66742fdd940e5', 'B-07', 'fair', '2026-03-02T11:46:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '7421a2ac12a9bdc7', 'B-08', 'fair', '2026-03-02T11:49:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, 'e4823530d7232c07', 'B-13', 'fair', '2026-03-02T11:55:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'fb4ca296d27e00cb', 'B-17', 'fair', '2026-03-02T11:58:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, 'ddd2dac71bb1b0f0', 'B-18', 'fair', '2026-03-02T12:01:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '2a0afe1315fb9c8f', 'B-21', 'fair', '2026-03-02T12:04:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '956d8fda22ac464a', 'B-26', 'fair', '2026-03-02T12:13:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '750bbf37cbbeaa80', 'B-30', 'fair', '2026-03-02T12:16:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '894f131cbcdebd6a', 'B-31', 'fair', '2026-03-02T12:19:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, 'ef33308b508390d3', 'B-32', 'fair', '2026-03-02T12:22:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, 'c204ead15dd6795a', 'B-33', 'fair', '2026-03-02T12:28:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, 'f52b95cb5a364eea', 'B-34', 'fair', '2026-03-02T12:31:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, 'bb3fe0c3eafccba4', 'B-35', 'fair', '2026-03-02T12:34:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, '3e76d768d5c149c0', 'B-36', 'fair', '2026-03-02T12:37:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '8d8fc31d9e716be8', 'B-37', 'fair', '2026-03-02T12:40:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, '1633044c5808b66f', 'F-1', '', '2026-03-02T13:03:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '98d34ba8b37614ce', 'F-2', '', '2026-03-02T13:03:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, '4c8684147dcb19e5', 'B-01', 'fair', '2026-03-02T11:31:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, 'e36cde9d2bb62706', 'B-23', 'fair', '2026-03-02T12:10:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '09286ee0f4f8764c', 'B-22', 'fair', '2026-03-02T12:07:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '67ba35cd43ea59aa', 'B-04', 'fair', '2026-03-02T11:37:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'ba5d8d641e70535a');
INSERT INTO public.orders VALUES (8, 'bb149b1d3cf35faf', 'B-09', 'fair', '2026-03-02T11:52:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '7fedccb9c952e087');
INSERT INTO public.orders VALUES (2, 'fd4488bbdc0961f4', 'B-03', 'fair', '2026-03-02T11:34:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'c0e64c768c810378');
INSERT INTO public.orders VALUES (26, '4bf8f5bc65f039e9', 'B-38', 'fair', '2026-03-02T15:24:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, 'd6cd379af129d835', 'B-39', '', '2026-03-02T15:27:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '1b03d8b9e7bc595f', 'main', '4c8684147dcb19e5', '2026-03-02T13:54:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '4f435307ab85b44d', 'main', 'e36cde9d2bb62706', '2026-03-02T14:12:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, 'f10f8d097480fe25', 'main', '09286ee0f4f8764c', '2026-03-02T14:27:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, 'ba5d8d641e70535a', 'main', '67ba35cd43ea59aa', '2026-03-02T14:33:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '7fedccb9c952e087', 'second', 'bb149b1d3cf35faf', '2026-03-02T14:42:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, 'c0e64c768c810378', 'main', 'fd4488bbdc0961f4', '2026-03-02T14:51:00.000000+00:00', 'open');
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.rounds VALUES (1, '86ff0c6a82d26af2', '2026-03-02T13:06:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'f5f86cae5267b527', '2026-03-02T15:00:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '118c7dd962c884506ef4824b9508cbd312dfea0e527b7d8d1f9e264b8802cf78', 'bin', '86ff0c6a82d26af2', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'ae69e79103c6ccb5768cd2037916707af2a7b55da34e1fedceb5f0a073c0fa97', 'bin', '86ff0c6a82d26af2', 'W001', false, true, true, '89927dfc72d9a4f3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "4c8684147dcb19e5", "order_number": "B-01", "line": "89927dfc72d9a4f3", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', '152c2ecb98fb2ea5698c0255cfa9d0578189aea163641f9d71f6603f771a8417', 'bin', '86ff0c6a82d26af2', 'W002', false, true, true, 'a18a49f41c514085', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "4c8684147dcb19e5", "order_number": "B-01", "line": "a18a49f41c514085", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'f69d68a7e1b752bd59a731aa19ba362c7b23870a551841464be976bbd2b9eb2b', 'bin', '86ff0c6a82d26af2', 'S002', false, true, true, 'dc8aa10460e45269', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd4488bbdc0961f4", "order_number": "B-03", "line": "dc8aa10460e45269", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '0106334d4e6219cbcc39d1d58f6f05045ea4c55de153bb9d6e68add97917777f', 'bin', '86ff0c6a82d26af2', 'S003', false, true, true, 'c73778d274e21c67', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "fd4488bbdc0961f4", "order_number": "B-03", "line": "c73778d274e21c67", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'abf7671a9c74ab6a27b6645000af607be2bc5b97cfb40d5d8ea0dfb9c5016caa', 'bin', '86ff0c6a82d26af2', 'S004', false, true, true, '4075e43bb7c9ff5a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "67ba35cd43ea59aa", "order_number": "B-04", "line": "4075e43bb7c9ff5a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'af82e8f23f83660f7db64320abdc71adf3d7690249fb2aa6d700fc06432d4e7c', 'bin', '86ff0c6a82d26af2', 'S005', false, true, true, 'd0b15712d57f40a0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "67ba35cd43ea59aa", "order_number": "B-04", "line": "d0b15712d57f40a0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'ae9692c3dfdbe013d1fe777da8abd7ecb0ca0f6f0f438cdba7fc814d4906fed1', 'bin', '86ff0c6a82d26af2', 'L006', false, true, true, 'a2bc1ad85e2e4146', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "bb149b1d3cf35faf", "order_number": "B-09", "line": "a2bc1ad85e2e4146", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '8ced64a576decab95805eb40cd372c5f2f9fc862f72ddf5337bc277058a3a0dd', 'bin', '86ff0c6a82d26af2', 'L011', false, true, true, '41209cab853a5643', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "bb149b1d3cf35faf", "order_number": "B-09", "line": "41209cab853a5643", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'b9603c887a7245bb96fd23f06d037afa73894eb04789f5d6fd7e03e31511454d', 'bin', '86ff0c6a82d26af2', 'S006', false, true, true, '326caac8a8921b04', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "e4823530d7232c07", "order_number": "B-13", "line": "326caac8a8921b04", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', '56503f98f5fa6468c29aca975c6227befbad70555338bcadef429cf4543fb6a9', 'bin', '86ff0c6a82d26af2', 'S007', false, true, true, '5ef75b7d6e9945c5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "09286ee0f4f8764c", "order_number": "B-22", "line": "5ef75b7d6e9945c5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', '8c81da7f12983bf03d4ca855dedebab712b94584427a88a047f0424c85744a58', 'bin', '86ff0c6a82d26af2', 'W007', false, true, true, '0174613a28b95be0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e36cde9d2bb62706", "order_number": "B-23", "line": "0174613a28b95be0", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '6aa11ffe3fee9e944d41a52e2c6cc0dddb9a7af257366cf964e1cfbaf82c9593', 'bin', '86ff0c6a82d26af2', 'W008', false, true, true, 'a7d6dbacaaa4c5f6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "e36cde9d2bb62706", "order_number": "B-23", "line": "a7d6dbacaaa4c5f6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'dc8aa10460e45269', '1b03d8b9e7bc595f', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd4488bbdc0961f4", "order_number": "B-03", "line": "dc8aa10460e45269", "line_state": "picked", "order_state": "picking", "parcel": "1b03d8b9e7bc595f", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '89927dfc72d9a4f3', '1b03d8b9e7bc595f', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "4c8684147dcb19e5", "order_number": "B-01", "line": "89927dfc72d9a4f3", "line_state": "packed", "order_state": "picking", "parcel": "1b03d8b9e7bc595f", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'a18a49f41c514085', '1b03d8b9e7bc595f', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "4c8684147dcb19e5", "order_number": "B-01", "line": "a18a49f41c514085", "line_state": "released", "order_state": "released", "parcel": "1b03d8b9e7bc595f", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '89927dfc72d9a4f3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "4c8684147dcb19e5", "order_number": "B-01", "line": "89927dfc72d9a4f3", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '0174613a28b95be0', '4f435307ab85b44d', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e36cde9d2bb62706", "order_number": "B-23", "line": "0174613a28b95be0", "line_state": "packed", "order_state": "waiting", "parcel": "4f435307ab85b44d", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '4075e43bb7c9ff5a', 'ba5d8d641e70535a', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "67ba35cd43ea59aa", "order_number": "B-04", "line": "4075e43bb7c9ff5a", "line_state": "packed", "order_state": "picking", "parcel": "ba5d8d641e70535a", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'a2bc1ad85e2e4146', '7fedccb9c952e087', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "bb149b1d3cf35faf", "order_number": "B-09", "line": "a2bc1ad85e2e4146", "line_state": "packed", "order_state": "picking", "parcel": "7fedccb9c952e087", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'dc8aa10460e45269', 'c0e64c768c810378', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd4488bbdc0961f4", "order_number": "B-03", "line": "dc8aa10460e45269", "line_state": "packed", "order_state": "picking", "parcel": "c0e64c768c810378", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', '25e4db76c029a69de1ed497f65d8c6cd546ec99132f140c5a5aaf8ee6494455a', 'bin', 'f5f86cae5267b527', 'L002', false, true, true, 'e62a1bee3d0f9162', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "8936102c80075f7c", "order_number": "B-05", "line": "e62a1bee3d0f9162", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', 'f077d709bdee12b49ebcf5e3c2acc4c75129a9be622b50406d4c222213c2ec56', 'bin', 'f5f86cae5267b527', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'c60a40e41b64adaba9020ed1d3c9435fa96bddd34bfea0054e459824e8c7221b', 'bin', 'f5f86cae5267b527', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'a5f8ce0d63ee0cfb9b4246f12dc5a6deba71ca829f1a5f2659d715ea12871340', 'bin', 'f5f86cae5267b527', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, '1bf9042e9148add9', 'a86d392f96420111', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, 'a863a96679c5c6db', '1d873de3b0168492', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '24faf6dc85626d38', 'f882c16e9581d245', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '60435e77304a6a72', 'b28edaf119041b72', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, '0fe2fdc8c0dc035e', 'af64c6b4576c374b', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '6a4481b4e909f689', 'bc19872926e3d465', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '0b4bbced464686fb', '01396c3e992b1122', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '4d67bee560825725', 'a132e41d3bdbc4e6', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '45721986f72cf34e', 'd147358eab50dd15', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '0f047f4f82cf65fd', 'bc3aa829c960c12e', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, 'd24c70ca5cbdd0ad', 'af686043696f91d1', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, 'd2292ddb39723f99', 'b806dbbff296a2a9', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, 'c544b0481fb8b7f0', 'c70b362ec164f483', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '2b52fef873e83fa8', '60225204e8f0585e', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, 'd73b5166b494620a', 'babacc59c20c0bab', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'f85e7d28c678475a', 'eb828e2d007017d0', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '1d2a36f91fbee708', '326dd34f8d6d3eeb', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, 'd7493a53a07eca72', '8f87cf3004cf27ac', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '20a31ddcf55534c3', '431da3cab3f3bac4', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, 'a50d63dde28488f4', '01553ea00e9a26d9', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '66a435c44a859739', '9aa47733fae5eb75', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, 'ad49368859ddb849', '9636ae8e57c44c64', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '4327e672f26ab13e', '5b301c4915330fb4', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'a13602840547a771', '1c89bc53ce335c61', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '6cb0a7c544b7135d', 'e25b0761bd29362c', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '04ed540a5cf64842', '26841a4dc3ea5b0d', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '0fd0d3799f201e95', '2c7cadc27c718035', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, 'e1e3c1f2cc9b2c51', 'c6185df706fc9c11', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'c15bd7e204f7cd3c', 'c4859695c8a1d594', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (33, '1d1782b5eaa776b1', '8159e2bee57689c0', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '9e623f6abaee0c33', '5989291e30680a48', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '3c56a368df7695bd', '34ea4cbf597ff2dc', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '65138eef63966b36', '16635b80e6ec0c94', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '2601bbea422012bc', '2639f6bfe7373338', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, 'aba448acebe82f64', '1159b0e6abfc1de2', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, 'afc734e28ed77148', '77da8b4ef69001ed', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'a915ba4cf78a4c36', '67d0289a58fa3bce', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, '181b5de9a47637ce', '012950f4c3a952e9', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '8b867c9b6dce48e7', '1b1a7d2ff9d5b2cd', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '0e695c6a01b41614', '490cf9f6aac269a2', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '4303720191bd3e60', 'c8e16d5f2c85c403', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '7ba667f5cd816500', '46d13c86122dd341', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'f74339cfb99f9237', '60eba20806da3fd3', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, 'a5bd00b048be4773', 'c00b5d0373e0e38a', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '21e800e96928278f', 'e93b24f1631a966c', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '088e14310d296ca0', 'e93b24f1631a966c', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '26022a3f0ba22215', '54ce71e45331acbb', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T12:58:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, 'f5a5defdfe03b451', '54ce71e45331acbb', 'D020', 1, '2026-03-02T12:58:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '8669897f45c49feb', '092cac7f92d17fb5', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:03:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'c15682446c13c471', 'dca728c89079c402', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:03:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '29b98c0d68377612', 'd0188e6226936fef', 'W001', 2, '2026-03-02T14:09:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, 'e6c259665e3a1310', '2bb399c48d0fdc97', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:24:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, '86ff0c6a82d26af2', 1, 'dc8aa10460e45269', 'B-1-1');
INSERT INTO public.stops VALUES (2, '86ff0c6a82d26af2', 2, 'c73778d274e21c67', 'B-1-1');
INSERT INTO public.stops VALUES (3, '86ff0c6a82d26af2', 3, '4075e43bb7c9ff5a', 'B-1-1');
INSERT INTO public.stops VALUES (4, '86ff0c6a82d26af2', 4, 'd0b15712d57f40a0', 'B-1-1');
INSERT INTO public.stops VALUES (5, '86ff0c6a82d26af2', 5, '326caac8a8921b04', 'B-1-1');
INSERT INTO public.stops VALUES (6, '86ff0c6a82d26af2', 6, '5ef75b7d6e9945c5', 'B-1-1');
INSERT INTO public.stops VALUES (7, '86ff0c6a82d26af2', 7, '89927dfc72d9a4f3', 'D-1-1');
INSERT INTO public.stops VALUES (8, '86ff0c6a82d26af2', 8, 'a18a49f41c514085', 'D-1-1');
INSERT INTO public.stops VALUES (9, '86ff0c6a82d26af2', 9, '0174613a28b95be0', 'D-1-1');
INSERT INTO public.stops VALUES (10, '86ff0c6a82d26af2', 10, 'a7d6dbacaaa4c5f6', 'D-1-1');
INSERT INTO public.stops VALUES (11, '86ff0c6a82d26af2', 11, 'a2bc1ad85e2e4146', 'C-1-1');
INSERT INTO public.stops VALUES (12, '86ff0c6a82d26af2', 12, '41209cab853a5643', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'f5f86cae5267b527', 1, 'f3d4a6cfcb48964a', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'f5f86cae5267b527', 2, 'e62a1bee3d0f9162', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'f5f86cae5267b527', 3, '0ffdee8da032941c', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'f5f86cae5267b527', 4, '8489081b322d0fe3', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
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
