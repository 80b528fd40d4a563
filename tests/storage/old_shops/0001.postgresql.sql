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
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, '45ff3382caf66d89b59bed1c9683c05e6d776e17d15b367e7be4f6203fe34b15', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$fisgi6HB1AbqW/tJFNScEw$mbrR9bpvSAknhYTS7UMHjbyE/Jwzh0D/cPLz5gOQyk8', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '90a3b0d45e42fa4c81f199df196fc37c2d08ac4d589e0c911fb0fc54d4dd3c10', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '5b65e749da73ebb200e02482ff5e0d2f6d260231d7d4fd7a16e4e6943415eac8', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '62bb215afce4d348398ee6af078b2752d96311f4c16052da7c8b664f7951d3d8', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.alembic_version VALUES ('0001');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/25f1a0cc13328e51', '{"id": "25f1a0cc13328e51", "item": "ec98ee158b493f2b", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": ""}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 149, '55aa8ae7fe1959eda521de6c0695ec0723de59dbf4db4cb7bd8a595b8eee2df3', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none"}');
INSERT INTO public.items VALUES (1, 'dedf5f46f1e47594', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”');
INSERT INTO public.items VALUES (3, '2c9dd6b4401cf5b5', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”');
INSERT INTO public.items VALUES (4, '07536070a03f14d6', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”');
INSERT INTO public.items VALUES (5, '91e5c900983e1bd2', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”');
INSERT INTO public.items VALUES (6, '04fb8105e6c93c28', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”');
INSERT INTO public.items VALUES (7, '9ffaada330fd23e1', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”');
INSERT INTO public.items VALUES (8, 'efcb0ca85cd2a964', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”');
INSERT INTO public.items VALUES (9, '10af549e8ee7823d', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”');
INSERT INTO public.items VALUES (10, '79d20eece59edbc3', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”');
INSERT INTO public.items VALUES (11, 'fefd9762cf9544bf', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”');
INSERT INTO public.items VALUES (12, '650f65f9115df44a', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”');
INSERT INTO public.items VALUES (13, 'b919eacbd9a07e25', 'Leather saddle 1', 'L-S1', 'Scratched, “used”');
INSERT INTO public.items VALUES (14, '0f8c825ff88aadac', 'Leather saddle 2', 'L-S2', 'Scratched, “used”');
INSERT INTO public.items VALUES (15, 'b720d5a197298641', 'Leather saddle 3', 'L-S3', 'Scratched, “used”');
INSERT INTO public.items VALUES (16, 'e5255f25b1d73191', 'Leather saddle 4', 'L-S4', 'Scratched, “used”');
INSERT INTO public.items VALUES (17, '6c638279e96a833c', 'Leather saddle 5', 'L-S5', 'Scratched, “used”');
INSERT INTO public.items VALUES (18, 'c48f787d5a9abf29', 'Leather saddle 6', 'L-S6', 'Scratched, “used”');
INSERT INTO public.items VALUES (19, '92805cf981b4d32b', 'Leather saddle 7', 'L-S7', 'Scratched, “used”');
INSERT INTO public.items VALUES (20, '0c8ef9d20b967a6f', 'Leather saddle 8', 'L-S8', 'Scratched, “used”');
INSERT INTO public.items VALUES (21, 'dec99cf46446b98d', 'Leather saddle 9', 'L-S9', 'Scratched, “used”');
INSERT INTO public.items VALUES (22, '90d3b838de39e85b', 'Leather saddle 10', 'L-S10', 'Scratched, “used”');
INSERT INTO public.items VALUES (23, 'cdd224d0c3532211', 'Leather saddle 11', 'L-S11', 'Scratched, “used”');
INSERT INTO public.items VALUES (24, 'c2264a23d1c9027f', 'Leather saddle 12', 'L-S12', 'Scratched, “used”');
INSERT INTO public.items VALUES (25, '3613f5323b336cc4', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”');
INSERT INTO public.items VALUES (26, 'b535045497074ba6', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”');
INSERT INTO public.items VALUES (27, 'a9babd85c5f1e5d1', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”');
INSERT INTO public.items VALUES (28, '40d2d97631244084', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”');
INSERT INTO public.items VALUES (29, 'f3c07b15ae3686b2', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”');
INSERT INTO public.items VALUES (30, '55c59257502511f4', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”');
INSERT INTO public.items VALUES (31, '9b7086bcf0b64c18', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”');
INSERT INTO public.items VALUES (32, '9f603581972c3302', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”');
INSERT INTO public.items VALUES (33, 'c02e1a594a25e560', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”');
INSERT INTO public.items VALUES (34, '8a50b156b73ec781', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”');
INSERT INTO public.items VALUES (35, '43ec5d78e51fb123', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”');
INSERT INTO public.items VALUES (36, '623ec4aadae83031', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”');
INSERT INTO public.items VALUES (37, 'c157010d9e60f6c6', 'Front wheel 1', 'L-W1', 'Scratched, “used”');
INSERT INTO public.items VALUES (38, '2a9b2f62f2928a39', 'Front wheel 2', 'L-W2', 'Scratched, “used”');
INSERT INTO public.items VALUES (39, '255d63f2c9345b71', 'Front wheel 3', 'L-W3', 'Scratched, “used”');
INSERT INTO public.items VALUES (40, 'fabfd72871be3518', 'Front wheel 4', 'L-W4', 'Scratched, “used”');
INSERT INTO public.items VALUES (41, '353ca1dc6ea7113f', 'Front wheel 5', 'L-W5', 'Scratched, “used”');
INSERT INTO public.items VALUES (42, '8b0ca5f60b6bbb52', 'Front wheel 6', 'L-W6', 'Scratched, “used”');
INSERT INTO public.items VALUES (43, 'db5a3cf3b3781505', 'Front wheel 7', 'L-W7', 'Scratched, “used”');
INSERT INTO public.items VALUES (44, '1c5003b16cbd4a0b', 'Front wheel 8', 'L-W8', 'Scratched, “used”');
INSERT INTO public.items VALUES (45, 'ebf9c7e94db83275', 'Front wheel 9', 'L-W9', 'Scratched, “used”');
INSERT INTO public.items VALUES (46, 'f34756d3de9a0bc7', 'Front wheel 10', 'L-W10', 'Scratched, “used”');
INSERT INTO public.items VALUES (47, '761d316cb3d7a4a5', 'Front wheel 11', 'L-W11', 'Scratched, “used”');
INSERT INTO public.items VALUES (48, 'ea59dd6b0fc79701', 'Front wheel 12', 'L-W12', 'Scratched, “used”');
INSERT INTO public.items VALUES (49, 'ec98ee158b493f2b', 'Brass bell', '', '');
INSERT INTO public.items VALUES (2, '44cb5b683df01ba0', 'Rear derailleur 2', 'L-D2', 'Cable is new');
INSERT INTO public.items VALUES (50, '860f62466390dad0', 'Rear wheel', '', '');
INSERT INTO public.ledger VALUES (1, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"owner","role":"owner"}', '303d6ed4c179ff439f0e1362aa484b09de102c70718f948c6578c81714652d93');
INSERT INTO public.ledger VALUES (2, '2026-03-02T08:05:00.000000+00:00', 'token made', 'label printer', '{"name":"label printer","role":"program"}', '924b363cda175a7d0981ff70c09dd7c06567e19ac0819082a6defc59a7448314');
INSERT INTO public.ledger VALUES (3, '2026-03-02T08:06:00.000000+00:00', 'token made', 'helper', '{"name":"helper","role":"helper"}', '7c4873bbfc3f3ec5e4f939564b38926f1b42b12e617293bf6c319d44c96bba8c');
INSERT INTO public.ledger VALUES (4, '2026-03-02T08:09:00.000000+00:00', 'section added', 'owner', '{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}', '00234763217460b024cc77812f398c013216296ccf069a7b09febfc8124a28f3');
INSERT INTO public.ledger VALUES (5, '2026-03-02T08:12:00.000000+00:00', 'slots added', 'owner', '{"first":"D001","last":"D030","section":"D"}', '21e1c2cad225ad14bfd7527ba3599b0b3578c47816a33ad0314eda2ce357393b');
INSERT INTO public.ledger VALUES (6, '2026-03-02T08:15:00.000000+00:00', 'section added', 'owner', '{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}', 'e69e2576992b8e07d347a6288d07ab4a20533861d9a3f91fe7245fe7f596a7b1');
INSERT INTO public.ledger VALUES (7, '2026-03-02T08:18:00.000000+00:00', 'slots added', 'owner', '{"first":"S001","last":"S015","section":"S"}', '443123de07981bbf566ffa0e841bf42c8c425c265a96311d9ce2401fe0ab0f83');
INSERT INTO public.ledger VALUES (8, '2026-03-02T08:21:00.000000+00:00', 'section added', 'owner', '{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}', '5fbaac33c312d4c7b650b22dabeed618193b7d4e68576cc647551207ddf2fa8a');
INSERT INTO public.ledger VALUES (9, '2026-03-02T08:24:00.000000+00:00', 'slots added', 'owner', '{"first":"L001","last":"L015","section":"L"}', 'd7b2a965610be2a57eae2fc9d71262944a95cc43a357ecefbe797664088b134e');
INSERT INTO public.ledger VALUES (10, '2026-03-02T08:27:00.000000+00:00', 'section added', 'owner', '{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}', 'adedefbe0c0b3f0c9f88635d63d6d91d17f3059f16dc0925fdb1b66ebc9bfdca');
INSERT INTO public.ledger VALUES (11, '2026-03-02T08:30:00.000000+00:00', 'slots added', 'owner', '{"first":"W001","last":"W015","section":"W"}', '0ea85a6306028ef353a22b05e27d44b8cef93c7f95281e89dc1ffa0472bc90ce');
INSERT INTO public.ledger VALUES (12, '2026-03-02T08:33:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"69c8c6fb28ebaaee","title":"Rear derailleur 1","turn":1}', '65d903242b99d3d40e421c9c7130035028784aa302153d75c4372e68115c1d6a');
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:36:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"2ba0fe050510b6c8","title":"Rear derailleur 2","turn":1}', '56f89926e764a737208ee1cb3aac9f907d5e833ee9ca3b984c7a54b942e23c8a');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:39:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"da40dcf00b5e9ee4","title":"Rear derailleur 3","turn":1}', 'fa30f6e59ae8a414300b27510c3dd4d7958a6f2a88d88b7bc348af7840834863');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:42:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"23dcd6d2136eab25","title":"Rear derailleur 4","turn":1}', '033cadab3d9d0a4541df7cdbd57becf4677ed866161bfb5f0b3f31e7c92939ef');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:45:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"dbeb7fc3a97871ec","title":"Rear derailleur 5","turn":1}', 'f982bed58c587c8171521805715a6932004f877f6ca7bd54d726da71d8dd5e11');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:48:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"8693f8c769f8c58d","title":"Rear derailleur 6","turn":1}', 'e666e8efd7cf7e2de5f41b97c75e770c86ae264294e6871371c63625c6a46ca0');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:51:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"7e7016d7cbd61f1d","title":"Rear derailleur 7","turn":1}', 'c5db9785f88b5790a893536962aae40cae1573ab1c98c0f6b5176474aa8426a3');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:54:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"caac0afde3e6e9a2","title":"Rear derailleur 8","turn":1}', 'cd6638001fd1f502e5df9876fc890febaf2cbc526f399d17a38433ffad0113c9');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:57:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"1a851527e29a5469","title":"Rear derailleur 9","turn":1}', '5e58b1efef2f85ade4650622d4f02b80e32c27e20270ccd29129cd6c7361f05e');
INSERT INTO public.ledger VALUES (21, '2026-03-02T09:00:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"bacb1411c5b9efa4","title":"Rear derailleur 10","turn":1}', 'b365720507589dbd06dcd5f1b2872e929d337d471e8c52f38357c445228362b1');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:03:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"d245bab9feeeb532","title":"Rear derailleur 11","turn":1}', 'adc2ed2de7ce132c2c6366ca605b4bc3f3e68f5a14f0685da533bed94b004efe');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:06:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"e62a2b03b4466e72","title":"Rear derailleur 12","turn":1}', 'f59bc574dd6e9b2139e5c8c6f91020fee068107a96d17b42a5d70ceb1d28b64b');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:09:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"82e008629f9b8d74","title":"Leather saddle 1","turn":1}', '79d997acf92237ee06f915bd171e0c6722673b652ae12ec8f89e1fabd1960fc7');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:12:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"7b6fbed9af6b1313","title":"Leather saddle 2","turn":1}', '1780b16b5cb1d3fe7514b64a914d84330cf8f5abfef29ff8265a61f1215c071a');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:15:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"3e4ccc31460bd027","title":"Leather saddle 3","turn":1}', '9de0ea2599ffd815e7ed76b36be3cd53fd92741000cadd5d1456f84485c007d6');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:18:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"a91ec03f1b98fb29","title":"Leather saddle 4","turn":1}', 'f42b3954ef9e7255a7538424c0ac7c3dfa80d2db788c9a2aadaa20b009a3576e');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:21:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"5d3ffec1e3d9bbce","title":"Leather saddle 5","turn":1}', '7561cf605b631391c7f11d6d198a6529936f68cbcc66928ab46e30827d5fceb2');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:24:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"70a8a40168bdd196","title":"Leather saddle 6","turn":1}', '23a2c3617c1c7c6f217668690b3989857e1f4926d9ab980a5e4dc66bcee53415');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:27:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"5d666fa243960bc3","title":"Leather saddle 7","turn":1}', '95ad936eb3ea1f0921ff0dff981cad255edd05ca1b95f9e16440c9c0e02e5d7d');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:30:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"4d7f2843bb9ac369","title":"Leather saddle 8","turn":1}', '5c3bca8ede376324ce2eab02a5ede48f2743f6b2f4af33eb6da2de3188a6cda8');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:33:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"41fc68c96ebcb922","title":"Leather saddle 9","turn":1}', 'e3d8d3c913b4bf07cafeaa48b71dd08a7ccca138233fa790fbe2240245fb5fb4');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:36:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"5a319880f8d7b956","title":"Leather saddle 10","turn":1}', 'a15d1c0fa00597d98ead5f0489f2e74df70371d568bca908e2f1af2bde5c17c7');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:39:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"75d7b00e5916bb7b","title":"Leather saddle 11","turn":1}', '129258014b9cdf987c028d946adf41f0b8a0d317c3b764c0710af50d59a001a4');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:42:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"4350cdf865e2d1c6","title":"Leather saddle 12","turn":1}', '93255e6a6bcc5c91a5f8540bfbeac1ea77a61ef00901d1d3f311a5534c3b96c7');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:45:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"471ce07cb26310b0","title":"Dynamo lamp 1","turn":1}', 'b17e07194e0c76cdaf895f089520e785cedf2b8c363163328fb8e16d2c5ef9bb');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:48:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"bf34328c1e7a0bc8","title":"Dynamo lamp 2","turn":1}', 'abc2b5fdfc072ace16ebfbcb390bca8903d00b80dba658fbcc410de2f98f8368');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:51:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"59d33563634c52d0","title":"Dynamo lamp 3","turn":1}', '3d39d9d5805955f5de91334934dd97ea5d27b2da19e3899bdf3d89abf9bdfd4e');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:54:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"b2af75c92c60c081","title":"Dynamo lamp 4","turn":1}', '7b43a37523d54298a62e19bfaac43033cd7bb8696622dc1439f6b39688a435ea');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:57:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"9810855048958e20","title":"Dynamo lamp 5","turn":1}', '2142a6737da55e3491eed9562369f1e3d0cd1a2ad647ebbf7c677b19f160ce47');
INSERT INTO public.ledger VALUES (41, '2026-03-02T10:00:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"65026029ff312eab","title":"Dynamo lamp 6","turn":1}', 'f0bd2a191f3d2fbc354d8944c729c212ad776791f88d13ac4b7fdda0c6a151f3');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:03:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"63b9be705a49b870","title":"Dynamo lamp 7","turn":1}', 'cc826f67cb1e07000f63efdefcfb750d4178093a0fedda7d0d8efedf231e330d');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:06:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"d1ffb18c722d0cc6","title":"Dynamo lamp 8","turn":1}', 'b289f43f744d1f9c10c7d92d6ba7df2ce71acfa962d3f83dbec0b231cb29a08d');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:09:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"be8bcebbc47f86b5","title":"Dynamo lamp 9","turn":1}', '9e3440539c0b55593168ac7b5ee27d5692519491b06981985894ca2a9d448b4b');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:12:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"7b6e0fbeb50bc8d3","title":"Dynamo lamp 10","turn":1}', '1c31e09a62c3a392ff5bf5a1b9c8c74f9f664262b7bab5bb3682f8cd1d064efb');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:15:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"e2c0a635a3ab2971","title":"Dynamo lamp 11","turn":1}', '4d1ea13fd82d9e85ff7a1911ca87eac5015826b5ffbff22677e228d0ab1dfebb');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:18:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"da98b6fd8cb08b47","title":"Dynamo lamp 12","turn":1}', '9f8a7a7f4b9b173e12812fc4df8dd10cf25c32e5e674fc03ff9e4a3b19631223');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:21:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"ff21898dc8d59221","title":"Front wheel 1","turn":1}', '050641d7279be50bf49a83d0dbede4cf185158e6db0c75f34deffd9c914a473d');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:24:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"fec10379bdd1b6bd","title":"Front wheel 2","turn":1}', '3f282418f5853a336589e7c5b6ca5baefdba808c06660ab8226976bce4a2532a');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:27:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"ccd63bc7cd0c0b12","title":"Front wheel 3","turn":1}', '1d8104ee7c3e3ef0c30e86609753bddb374d80bd9de5c20392fef787e54ef42b');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:30:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"a8854c5d3951ea9f","title":"Front wheel 4","turn":1}', 'bac8afb2e6e98b74a4f5ddf4f695f6dbf84300d12b7663bd5f3790a3839352ed');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:33:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"a7638861e7b80089","title":"Front wheel 5","turn":1}', '11e5f73947f1a4c86b900a8c1670d9ba979fd729367e58078a7694d7680f96ce');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:36:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"804bca624df11d5d","title":"Front wheel 6","turn":1}', 'b39571c6325c3efa1a1c36480fda35093329b8aa1f2c38d008659729c0fc7b00');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:39:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"3ff81a91cd4f01b4","title":"Front wheel 7","turn":1}', '2064d905fc1013a3f2339c1aa4fd51eff085f5731bb10c10a5218279bc78202c');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:42:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"23359d34adbdbac5","title":"Front wheel 8","turn":1}', '6fee8dcc6bc727d97a53b8e65f9a84dd71f5171ff4256154ca038d93fef92178');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:45:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"d797b838de884f90","title":"Front wheel 9","turn":1}', '07cb9099dcca595ea44a5cfceb6759bb52e84d37fe7b820b061bbd0b91793727');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:48:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"07b59042898ab909","title":"Front wheel 10","turn":1}', 'f96ee74623ea7079f3aaf3f464bb321c15ad7682472e8bdf831919bf52c643bb');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:51:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"e8d4e346da2d1781","title":"Front wheel 11","turn":1}', '66f391560a3e21b1311ae53fc78d343beabe123bffb042287b976ab14c42fc5d');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:54:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"4c4a05284a94ff43","title":"Front wheel 12","turn":1}', '56d7938823465833d8ebfebcd4c8231d22884eb86bdae3f2228a44ac46346ebb');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:57:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"25f1a0cc13328e51","title":"Brass bell","turn":1}', '621bfa78becd607c7131e7bd049336288ef8d284b4c871d7df142e9c4ad62c23');
INSERT INTO public.ledger VALUES (61, '2026-03-02T11:00:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"2ba0fe050510b6c8"}', '040291703aa6addfb0944b109540aa910306ae8e3e4a8f4cb1c01ce54d62cbb3');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:03:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"5a319880f8d7b956"}', '393c89547f61db08bf57e0af71c135c3356fcb8940248290ba23d8d7a5b2ceaf');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:06:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"a8854c5d3951ea9f"}', 'b6dc5d0740a8213900ad084cdf3694c7b65768f5d027be9e4224c00e9b862e24');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:09:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"f7657dc313caa348","stay":"41fc68c96ebcb922","to":"S013"}', 'ecf43a3bcb9b65283e09b3e4cb47b3bc97a84532ada949968a19bbb8d4b6481b');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:12:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"check":"none","name":"Gears & Saddles","scan_at_bin":true,"zone":"UTC"}', '3220379f55b105a04f2c52ceeede6e5d57934315193e75b99ae51dd147cf67dd');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:13:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'b3455ffdfd3fa11c566266c0a6ac2843db0fccdc1ec96563d7dc48c7a89628ab');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:14:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', '6346aea7f01447c93128b4201c412b9fa6e6b5519e5b94b6f21c574f4a2126e1');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '718e7c36c42afe8595755056ebadb25eb6ef78ee22646e5bb69ec2d40b5345aa');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b0b5368a9e1dd36a","reference":"W001-01E","stay":"ff21898dc8d59221"},{"hold":null,"line":"8fdbf67873ab9c45","reference":"W002-016","stay":"fec10379bdd1b6bd"}],"number":"B-01","order":"62e09ff87bab7c6f"}', 'ca816226db2b87ff50c16757a6bb31c6c1d429bf6eb950e6ac69fefc83c1afae');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b6f70140451aae1c","reference":"S002-013","stay":"7b6fbed9af6b1313"},{"hold":null,"line":"97732466aeecaa21","reference":"S003-01W","stay":"3e4ccc31460bd027"}],"number":"B-03","order":"c24c7c0223f2b88f"}', 'bfa55de1035a6a7e484873a7b091e9e6da788b6a6a10b2e8247608720b84de1a');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"c865196711b89100","reference":"S004-01O","stay":"a91ec03f1b98fb29"},{"hold":null,"line":"8c1a4f51804b563b","reference":"S005-01G","stay":"5d3ffec1e3d9bbce"}],"number":"B-04","order":"19b547e3c853f7d2"}', 'bf21dfbbe3cbbe27f394fcc0d9f11fd8f5c960d5a7f2eb941057af039eb38598');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:27:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e98dbb10e60b1fc0","reference":"L002-017","stay":"bf34328c1e7a0bc8"}],"number":"B-05","order":"63a3073b301b001d"}', '4631f9f24cc9b5bab7261e694d70b6234ca98c6e626d9a8b5de7ba1b958b0c22');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"f98a0aa67a9e250e","reference":"L003-010","stay":"59d33563634c52d0"}],"number":"B-06","order":"c46f7bb92be2a40d"}', 'ad0c546780d188d90244dd0e09898c7ef156e5f0e517f443dc686ca984d13df3');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"43d8d9ce46f561c9","reference":"L004-01S","stay":"b2af75c92c60c081"}],"number":"B-07","order":"bdb343652d129203"}', '1b3221a8f10c717c786d82384ecb83f3672b0405cc5d814ac8144af3914905bb');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"67d440d600f98a8f","reference":"L005-01K","stay":"9810855048958e20"}],"number":"B-08","order":"ae674abd1f2add45"}', '9919f6ea3964f2203e967ed707544fcf2334529872327c8889369e6e31d409ce');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"5934eb4f5fe07b61","reference":"L006-01C","stay":"65026029ff312eab"},{"hold":null,"line":"4be679f1313cde0f","reference":"L011-010","stay":"e2c0a635a3ab2971"}],"number":"B-09","order":"b36d8dcb61771d24"}', 'f01bf8004cb106017e50d8bd5f109009dc400a12aff0baffe096d3f02df1266b');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"af524e2d6bee6d33","reference":"S006-018","stay":"70a8a40168bdd196"}],"number":"B-13","order":"a1ecfc9fb9f73428"}', '23087b95cfc66d92e3d4ec2a6ec26575e1d95931d4a50f8f7896386fac23f358');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ea972df50094cda8","reference":"L007-014","stay":"63b9be705a49b870"}],"number":"B-17","order":"26523e84edb2a1e6"}', '5c6dafea74e41d53ef8ead0ae12eb7d2f63732cdfebacd2dfac17ee54d6de83f');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"05ba91210698b985","reference":"D009-01B","stay":"1a851527e29a5469"}],"number":"B-18","order":"e3088cefbf44c571"}', '48eca3ed7face5b281d15b28f6b4ce70a48ee97a8c9e1eddbbe14a22692bf9d4');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"df76c100fad957f6","reference":"W006-013","stay":"804bca624df11d5d"}],"number":"B-21","order":"2e35415306739598"}', '7947c0d18592094b97148804f7007bee1661a4a667c4dd6ff4a957c9aadd3579');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a60070ceeaa4e823","reference":"S007-01Z","stay":"5d666fa243960bc3"}],"number":"B-22","order":"9d4b768019c5bf68"}', '3dbf0a4dace98490caf9bbb007c78f9ca2529965db7e2bb4ae9668dabb70429c');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3838eda65d2c2353","reference":"W007-01W","stay":"3ff81a91cd4f01b4"},{"hold":null,"line":"e725aa498d19c9db","reference":"W008-01O","stay":"23359d34adbdbac5"}],"number":"B-23","order":"3290744d33a0fc5c"}', '893e55dc03b080f82df9be9f32b92b6447c3ef1b9d13104b8fbd5293b3884f81');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"58e991b5e06a492b","reference":"D008-01J","stay":"caac0afde3e6e9a2"}],"number":"B-26","order":"8368caf670143871"}', 'd3bd72f8632d42d0a2b7c03b14e354d69815ac54f455dbd3bf9a4cd1c9e13d93');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"1a926660d40bcb9a","reference":"D003-01U","stay":"da40dcf00b5e9ee4"}],"number":"B-30","order":"10b32dc1990f56fa"}', '7f2e9bed7ac002fb4796025faa7efd30eab749a21ef7c5ba7cb4e50cf53d34a5');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e0bb8a5aa1bc9142","reference":"D005-01E","stay":"dbeb7fc3a97871ec"},{"hold":"unknown_code","line":"950f9723b02cea56","reference":"Z999","stay":null}],"number":"B-31","order":"c0ed044fe4663761"}', '682ea33b967b5d2be78b415e939eaa2dacb039bcec6b0e82821864aafa03ed9e');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ef00bfed11c7e109","reference":"D006-016","stay":"8693f8c769f8c58d"},{"hold":null,"line":"56f31c925a4f030e","reference":"D007-01R","stay":"7e7016d7cbd61f1d"}],"number":"B-32","order":"68922421f47d4fa1"}', 'b7c1f192e563021000d8b51a9308d671cd53f5b4ae5e0a390945f5e8512a4a6d');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:12:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"56f31c925a4f030e","reference":"D007-01R","stay":"7e7016d7cbd61f1d"}],"number":"B-32","order":"68922421f47d4fa1"}', 'fd2532dac372f5cf4f70c9632e125151f7a361bba1962f875f68f48df77f25bb');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"e5fbef21d028dc6d","reference":"lamp","stay":null}],"number":"B-33","order":"94441be75dfaef54"}', 'fc1b69cd8844ea623d0486bdb579400f6be24f6446e82da7367fcc91fa52618d');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"52d7c692969c2e8c","reference":"D006-016","stay":null}],"number":"B-34","order":"a6dc5c49382e49df"}', 'bbde4c311556b073ad1fb6fcaa7e3720df6e3c166e6334fdd4dce1ea2bc7616f');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"3dd293acd1af57ef","reference":"W004-01J","stay":null}],"number":"B-35","order":"3ecf166b1e87ceaa"}', 'eb301d04c587d70ba6d3c9bca196e41726792a495f04a2014d73303fdfbf2cb3');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"fe69aa7a5009bbb0","reference":"L015","stay":null}],"number":"B-36","order":"47ad1983ceb5a05a"}', 'c1180785bf19fdca2e862cf9fae06865673eea925ec4ba39e798b533bbccfd64');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:27:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"64649d4a20fe4266","reference":"W005-01B","stay":"a7638861e7b80089"}],"number":"B-37","order":"dd50458bc528ba49"}', '2abdbe8064e8539cebc687cd842d595bb4be638f36e70b6063ef688e9fbe93ed');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:30:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"64649d4a20fe4266","stay":"a7638861e7b80089"}', '7488d804c1d6d5886bdc6ff98583a5492c4ed1a6f7e15ccbf086a29534c57ee6');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:33:00.000000+00:00', 'held', 'owner', '{"line":"ea972df50094cda8","why":"Another lamp, by the photo"}', '7ae5b628a484a02c7848037101b437d355b3f1422991f37ab4ffa46ea56e6615');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:36:00.000000+00:00', 'cancelled', 'owner', '{"lines":["67d440d600f98a8f"],"number":"B-08","order":"ae674abd1f2add45"}', 'fddabd464fc9b6624086d93d33d7e8cc83c0af649701aaedb813947fb6982cd0');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:39:00.000000+00:00', 'cancelled', 'owner', '{"lines":["df76c100fad957f6"],"number":"B-21","order":"2e35415306739598"}', '5d96938577f67ef547a005ef2220d0ede78a78bbb2532f78c63b17a3fec20318');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:42:00.000000+00:00', 'revived', 'owner', '{"line":"df76c100fad957f6","stay":"804bca624df11d5d"}', 'caba3cbdb34c577f1ff294d8e360edb16873e4bad719d975fa11086dc2f0f417');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:45:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"89b94706ea398526","stay":"caac0afde3e6e9a2","to":"D020"}', 'd7cbe853e7eff3dc8e997793aebf9e8bff73fccd1dbf742eaa427d67faabad1b');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:50:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"c5ae7a3afc648140","reference":"S012-01O","stay":"4350cdf865e2d1c6"}],"number":"F-1","order":"3194c4f1a685f381"}', '5ccdbb196bc7e2d3f75ebc60b1c6d5bbafc155afc78d29110d2babca039568e5');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:50:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"c9ffeac94fbdab9e","reference":"","stay":null}],"number":"F-2","order":"db3fadd250492bc3"}', '7b379a4f7a7d063eb49f9fc89681be3e72036472d1d1df34c1de63fbc72b4892');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:53:00.000000+00:00', 'round opened', 'owner', '{"lines":["b0b5368a9e1dd36a","8fdbf67873ab9c45","b6f70140451aae1c","97732466aeecaa21","c865196711b89100","8c1a4f51804b563b","5934eb4f5fe07b61","4be679f1313cde0f","af524e2d6bee6d33","a60070ceeaa4e823","3838eda65d2c2353","e725aa498d19c9db"],"round":"95479362871397d7"}', '3d04e80393a7279acfec7072f72f46c134336f4954f474dcc47172d3429a077b');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:56:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'c0507e6fa1ec88e4deb73cec76e2177b598e2b6a9c0d999ed1ab9b40540f762b');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:59:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"b0b5368a9e1dd36a","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '2678c2b5e1ab171ad44df800aaca2cbb2ffd0ea54e3f31122ef00dcc11c2c31b');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"8fdbf67873ab9c45","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '311ba9c0475b1e4722d685750341ddd589e264b54f77dfff21375bc49d030188');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"b6f70140451aae1c","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'fa9d0325a910bc31f01580e0aaba49d326f8978dea437d5055f99c957deb786a');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:08:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"97732466aeecaa21","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '3a15527d5e60fe82e3adb7ccfa337c7ce83599938b37eee57a156a35da4976be');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"c865196711b89100","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '203d86203a4ee97e8f07a69a3a3db549211189b184142c6bf73d4146fc013d1c');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"8c1a4f51804b563b","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '8ffe23ffb4a4f9b9737fe3be41f28a545ae276d72c1f461a09188fc4cf431c87');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"5934eb4f5fe07b61","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '6e40f5bed3915d1dc3bf20113b221200b738907b3d6800644b10ed535a3893da');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"4be679f1313cde0f","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '521d90b5e514899d95d09f7973c2178c5e16547ad4a34a0cacddf0375702613b');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"af524e2d6bee6d33","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '769e7926eff7f2c6c71758ee23724e9172165bde436d700958aa170f1fa9b9d8');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"a60070ceeaa4e823","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'b366201b26d109063a7bfa2d860e69866230b2261e61ac5bb3c54d9f27fea42e');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"3838eda65d2c2353","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'b50652507f725e393db33ab5663aa12fdad44115647a746af0b2bfb8d23ec84f');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"e725aa498d19c9db","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"95479362871397d7","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'cbb86b7ff2428b6f2b77d68fce159a3177dbc9687636330d9067ce61641da208');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:35:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"e725aa498d19c9db","line_state":"waiting"}', '00432beb2963e26a354354d47d92fa385349472e98edd99ca1a9d49970ae6fd8');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:38:00.000000+00:00', 'round closed', 'owner', '{"round":"95479362871397d7"}', '48967f960212b543cd9b8d3b81f4c9820016f9ed4d16d3aa0d4282d8eed50bf7');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:41:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["62e09ff87bab7c6f"],"parcel":"9ec252ef34d9cec0","table":"main"}', 'd83d3637036416b492733d0d6615eccaa082d3d2f5fced8e2d8617f8c46de882');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"b6f70140451aae1c","line_state":"picked","order_number":"B-03","parcel":"9ec252ef34d9cec0","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '8d7fc3a9bf3e206b06c6337f9a8456c9e3a2933fef51a7e068a94fcdaace6320');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"b0b5368a9e1dd36a","line_state":"packed","order_number":"B-01","parcel":"9ec252ef34d9cec0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c226bd091cb55f21d987adc061604a6a900d9730b16131e42156d1cff3c738ff');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:50:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["62e09ff87bab7c6f"],"parcel":"9ec252ef34d9cec0","released":["W001","W002"]}', '659ab9a4e0024721df56629564bb973020349c91ad437dc7f5a19ae242255ebe');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:50:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"8fdbf67873ab9c45","line_state":"released","order_number":"B-01","parcel":"9ec252ef34d9cec0","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '8c03cda4f373574352670a4cbdd3edbde952ab9c21a0be9cc4d7ad3af7ee65fc');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:53:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"b0b5368a9e1dd36a","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'f5b1d0cb6aa214691da0711af6b9644e2b21f648c8a3301a0703756e8cc52abd');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:56:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"ea1fbfc983f48532","title":"Rear wheel","turn":2}', '7df17c8e9da4457fef5fab4583ebf9663e49cb10cc16f7b8e7052ef86530c590');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:59:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["3290744d33a0fc5c"],"parcel":"3f3383d7ef1311aa","table":"main"}', '1b62c68d805bcf2d02794a3fe3144cf20de8a530acda9dfc5df55374ae06e1a2');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"3838eda65d2c2353","line_state":"packed","order_number":"B-23","parcel":"3f3383d7ef1311aa","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'a13117c07acd4554484e1781b9778842374de6c85f011dee43fb7c5e210b9694');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["3290744d33a0fc5c"],"parcel":"3f3383d7ef1311aa","released":["W007"]}', '658fe097edff154cccb9a44adcde44ba883b4656093a6f85491953e575c47c7e');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:08:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["3290744d33a0fc5c"],"parcel":"3f3383d7ef1311aa"}', '6620207d521fe57e3b6c847ac6ce8e375f4b0d3b4b3cbfd4eff33073576d24cf');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:11:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["3290744d33a0fc5c"],"parcel":"3f3383d7ef1311aa","released":["W007"]}', '1fa6e15be20ad64e44b62ec7a8515fd8e89135cfe55510f911e7e588ed57c81b');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:14:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["9d4b768019c5bf68"],"parcel":"6540f8a8702c6b09","table":"main"}', '9cb522aa77684bdfdbff0adc34f0aa256ac5e9e9651cee156f9054db98fe2867');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:17:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"6540f8a8702c6b09"}', '369db034828c3f602e3052c5cd5bad5adadff7d9f0a489a009ced64a45c4f832');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:20:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["19b547e3c853f7d2"],"parcel":"2f1f7d55a481425a","table":"main"}', 'f4fd57dce34e12716391684f7c48f406e7ff20afc1ee367d162984e9c78f50eb');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"c865196711b89100","line_state":"packed","order_number":"B-04","parcel":"2f1f7d55a481425a","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '713080d8c5e712a7c05370f0db723ce8f7aa04656e71a636621b6141bc49e590');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:26:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"2f1f7d55a481425a"}', '6542e605e742a91dff13c42efc62c4d23a831dd6b32337e35b094f354d98bc9f');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:29:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["b36d8dcb61771d24"],"parcel":"4fd016271861d2eb","table":"second"}', '3b4347c8f72ec01ebc605c8072b359662b2db1a686a5a3db204c4781cd876035');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"5934eb4f5fe07b61","line_state":"packed","order_number":"B-09","parcel":"4fd016271861d2eb","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '0ccbca15ad874ab4de328de6327f22dbb6754e0de36eef0846b3b0764560dc81');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:35:00.000000+00:00', 'cancelled', 'owner', '{"lines":["5934eb4f5fe07b61","4be679f1313cde0f"],"number":"B-09","order":"b36d8dcb61771d24"}', 'd91399c734d0bb393b5d5f44fa5976dbc4b2e54f5ad549bfc5a840789ab35db6');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:38:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["c24c7c0223f2b88f"],"parcel":"0aa02b60c67f26a9","table":"main"}', '198a065603407090b79af7c314805b4b7af23aebdaa1816489a8431d439e133e');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:41:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"b6f70140451aae1c","line_state":"packed","order_number":"B-03","parcel":"0aa02b60c67f26a9","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '5e343abebdcb8dff989690393552842654ccdf3be1b68e87de3e8ea1456487ad');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:44:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"af524e2d6bee6d33","reference":"S006-018","stay":"70a8a40168bdd196"}],"number":"B-13","order":"a1ecfc9fb9f73428"}', 'd4757b2533943382c8cc834d8a6d59938f2d231e2b1c336728387f757d0f4ee0');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:47:00.000000+00:00', 'round opened', 'owner', '{"lines":["e98dbb10e60b1fc0","f98a0aa67a9e250e","43d8d9ce46f561c9","58e991b5e06a492b"],"round":"84288770fd8167de"}', 'f555d3def2a92a7236b80acf6185f725afecfc8fec75a0ace8b9eb8216a11ae7');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:50:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"e98dbb10e60b1fc0","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"84288770fd8167de","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'bf8e3166202627206d56ce0d57ff857de813fc6955511b14464b0fe55cd1d700');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:53:00.000000+00:00', 'short', 'owner', '{"line":"43d8d9ce46f561c9","note":"Not in its bin"}', 'b04172c5ebfb73a746bee793fcfa1ff4fdf1a367a1aec303252b30cc036d8a09');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:56:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"84288770fd8167de","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '8c44479443e9bb402e7a0df2e77cd84121c57f12350a2b4c570fb803a0b74cc6');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:59:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"84288770fd8167de","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'fdd6a12d907abddb4f8cce62e4ab85fb534193ce9bd856531a2c15378c8ee497');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:02:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"84288770fd8167de","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'bfbfbad3e9236ef8d48a4056f94f6f15e0b70d695a2c86fa57f97f94bd88bf98');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:05:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '04205d85591c078a630f7ad98e72d644d2af1ee270f9f0ad91f9ddfa8bc6042d');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:08:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', 'cc3677787976c624e89cc14125478f7eefef9e33075e2be8d3cb8bc50b7c74fa');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:11:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4a30f72892ae77c8","reference":"D001-019","stay":"69c8c6fb28ebaaee"},{"hold":"already_sold","line":"92ee21149b916743","reference":"W002-016","stay":null}],"number":"B-38","order":"0421a74e4ab4b9cc"}', '8e247c8eb4bdacba2b4c538cb7b158d59959e05b7c02a554d454adec56eba1a1');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:14:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"1cc096bad59df184","reference":"W001","stay":null}],"number":"B-39","order":"39f984b611bee88e"}', '55aa8ae7fe1959eda521de6c0695ec0723de59dbf4db4cb7bd8a595b8eee2df3');
INSERT INTO public.lines VALUES (15, '05ba91210698b985', 'e3088cefbf44c571', 1, 'D009-01B', 'Rear derailleur 9', '', '1a851527e29a5469', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, '1a926660d40bcb9a', '10b32dc1990f56fa', 1, 'D003-01U', 'Bell with a crown', '', 'da40dcf00b5e9ee4', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, 'e0bb8a5aa1bc9142', 'c0ed044fe4663761', 1, 'D005-01E', 'Rear derailleur 5', '', 'dbeb7fc3a97871ec', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, '950f9723b02cea56', 'c0ed044fe4663761', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, 'ef00bfed11c7e109', '68922421f47d4fa1', 1, 'D006-016', 'Rear derailleur 6', '', '8693f8c769f8c58d', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, '56f31c925a4f030e', '68922421f47d4fa1', 2, 'D007-01R', 'Rear derailleur 7', '', '7e7016d7cbd61f1d', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, 'e5fbef21d028dc6d', '94441be75dfaef54', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, '52d7c692969c2e8c', 'a6dc5c49382e49df', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, '3dd293acd1af57ef', '3ecf166b1e87ceaa', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, 'fe69aa7a5009bbb0', '47ad1983ceb5a05a', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '64649d4a20fe4266', 'dd50458bc528ba49', 1, 'W005-01B', 'Bell with a crown', '', 'a7638861e7b80089', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, 'ea972df50094cda8', '26523e84edb2a1e6', 1, 'L007-014', 'Dynamo lamp 7', '', '63b9be705a49b870', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, '67d440d600f98a8f', 'ae674abd1f2add45', 1, 'L005-01K', 'Dynamo lamp 5', '', '9810855048958e20', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, 'df76c100fad957f6', '2e35415306739598', 1, 'W006-013', 'Front wheel 6', '', '804bca624df11d5d', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, 'c5ae7a3afc648140', '3194c4f1a685f381', 1, 'S012-01O', '', '', '4350cdf865e2d1c6', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, 'c9ffeac94fbdab9e', 'db3fadd250492bc3', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, '3838eda65d2c2353', '3290744d33a0fc5c', 1, 'W007-01W', 'Front wheel 7', '', '3ff81a91cd4f01b4', 'released', NULL, '', '3f3383d7ef1311aa', '95479362871397d7', 7, NULL, true);
INSERT INTO public.lines VALUES (5, 'c865196711b89100', '19b547e3c853f7d2', 1, 'S004-01O', 'Leather saddle 4', '', 'a91ec03f1b98fb29', 'packed', NULL, '', '2f1f7d55a481425a', '95479362871397d7', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, '8c1a4f51804b563b', '19b547e3c853f7d2', 2, 'S005-01G', 'Leather saddle 5', '', '5d3ffec1e3d9bbce', 'picked', NULL, '', NULL, '95479362871397d7', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, '5934eb4f5fe07b61', 'b36d8dcb61771d24', 1, 'L006-01C', 'Dynamo lamp 6', '', '65026029ff312eab', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '4fd016271861d2eb', '95479362871397d7', 4, NULL, true);
INSERT INTO public.lines VALUES (12, '4be679f1313cde0f', 'b36d8dcb61771d24', 2, 'L011-010', 'Dynamo lamp 11', '', 'e2c0a635a3ab2971', 'cancelled', NULL, '', NULL, '95479362871397d7', 4, NULL, true);
INSERT INTO public.lines VALUES (3, 'b6f70140451aae1c', 'c24c7c0223f2b88f', 1, 'S002-013', 'Leather saddle 2', '', '7b6fbed9af6b1313', 'packed', NULL, '', '0aa02b60c67f26a9', '95479362871397d7', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, '97732466aeecaa21', 'c24c7c0223f2b88f', 2, 'S003-01W', 'Leather saddle 3', '', '3e4ccc31460bd027', 'picked', NULL, '', NULL, '95479362871397d7', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, 'a60070ceeaa4e823', '9d4b768019c5bf68', 1, 'S007-01Z', 'Leather saddle 7', '', '5d666fa243960bc3', 'picked', NULL, '', NULL, '95479362871397d7', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, 'e725aa498d19c9db', '3290744d33a0fc5c', 2, 'W008-01O', 'Front wheel 8', '', '23359d34adbdbac5', 'waiting', NULL, '', NULL, '95479362871397d7', 7, NULL, true);
INSERT INTO public.lines VALUES (1, 'b0b5368a9e1dd36a', '62e09ff87bab7c6f', 1, 'W001-01E', 'Front wheel 1', '', 'ff21898dc8d59221', 'released', NULL, '', '9ec252ef34d9cec0', '95479362871397d7', 1, NULL, true);
INSERT INTO public.lines VALUES (2, '8fdbf67873ab9c45', '62e09ff87bab7c6f', 2, 'W002-016', 'Front wheel 2', '', 'fec10379bdd1b6bd', 'released', NULL, '', '9ec252ef34d9cec0', '95479362871397d7', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, 'af524e2d6bee6d33', 'a1ecfc9fb9f73428', 1, 'S006-018', 'Saddle with springs', '', '70a8a40168bdd196', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, '95479362871397d7', 5, NULL, true);
INSERT INTO public.lines VALUES (20, '58e991b5e06a492b', '8368caf670143871', 1, 'D008-01J', 'Rear derailleur 8', '', '89b94706ea398526', 'waiting', NULL, '', NULL, '84288770fd8167de', 4, NULL, true);
INSERT INTO public.lines VALUES (8, 'f98a0aa67a9e250e', 'c46f7bb92be2a40d', 1, 'L003-010', 'Dynamo lamp 3', '', '59d33563634c52d0', 'waiting', NULL, '', NULL, '84288770fd8167de', 2, NULL, true);
INSERT INTO public.lines VALUES (7, 'e98dbb10e60b1fc0', '63a3073b301b001d', 1, 'L002-017', 'Dynamo lamp 2', '', 'bf34328c1e7a0bc8', 'picked', NULL, '', NULL, '84288770fd8167de', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, '43d8d9ce46f561c9', 'bdb343652d129203', 1, 'L004-01S', 'Dynamo lamp 4', '', 'b2af75c92c60c081', 'short', NULL, '', NULL, '84288770fd8167de', 3, NULL, true);
INSERT INTO public.lines VALUES (33, '4a30f72892ae77c8', '0421a74e4ab4b9cc', 1, 'D001-019', 'Rear derailleur 1', '', '69c8c6fb28ebaaee', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, '92ee21149b916743', '0421a74e4ab4b9cc', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '1cc096bad59df184', '39f984b611bee88e', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '63a3073b301b001d', 'B-05', 'fair', '2026-03-02T11:27:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, 'c46f7bb92be2a40d', 'B-06', 'fair', '2026-03-02T11:30:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, 'bdb343652d129203', 'B-07', 'fair', '2026-03-02T11:33:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, 'ae674abd1f2add45', 'B-08', 'fair', '2026-03-02T11:36:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, 'a1ecfc9fb9f73428', 'B-13', 'fair', '2026-03-02T11:42:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, '26523e84edb2a1e6', 'B-17', 'fair', '2026-03-02T11:45:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, 'e3088cefbf44c571', 'B-18', 'fair', '2026-03-02T11:48:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '2e35415306739598', 'B-21', 'fair', '2026-03-02T11:51:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '8368caf670143871', 'B-26', 'fair', '2026-03-02T12:00:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '10b32dc1990f56fa', 'B-30', 'fair', '2026-03-02T12:03:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, 'c0ed044fe4663761', 'B-31', 'fair', '2026-03-02T12:06:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, '68922421f47d4fa1', 'B-32', 'fair', '2026-03-02T12:09:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '94441be75dfaef54', 'B-33', 'fair', '2026-03-02T12:15:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, 'a6dc5c49382e49df', 'B-34', 'fair', '2026-03-02T12:18:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, '3ecf166b1e87ceaa', 'B-35', 'fair', '2026-03-02T12:21:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, '47ad1983ceb5a05a', 'B-36', 'fair', '2026-03-02T12:24:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, 'dd50458bc528ba49', 'B-37', 'fair', '2026-03-02T12:27:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, '3194c4f1a685f381', 'F-1', '', '2026-03-02T12:50:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, 'db3fadd250492bc3', 'F-2', '', '2026-03-02T12:50:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, '62e09ff87bab7c6f', 'B-01', 'fair', '2026-03-02T11:18:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, '3290744d33a0fc5c', 'B-23', 'fair', '2026-03-02T11:57:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '9d4b768019c5bf68', 'B-22', 'fair', '2026-03-02T11:54:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '19b547e3c853f7d2', 'B-04', 'fair', '2026-03-02T11:24:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '2f1f7d55a481425a');
INSERT INTO public.orders VALUES (8, 'b36d8dcb61771d24', 'B-09', 'fair', '2026-03-02T11:39:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '4fd016271861d2eb');
INSERT INTO public.orders VALUES (2, 'c24c7c0223f2b88f', 'B-03', 'fair', '2026-03-02T11:21:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '0aa02b60c67f26a9');
INSERT INTO public.orders VALUES (26, '0421a74e4ab4b9cc', 'B-38', 'fair', '2026-03-02T15:11:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, '39f984b611bee88e', 'B-39', '', '2026-03-02T15:14:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '9ec252ef34d9cec0', 'main', '62e09ff87bab7c6f', '2026-03-02T13:41:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '3f3383d7ef1311aa', 'main', '3290744d33a0fc5c', '2026-03-02T13:59:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, '6540f8a8702c6b09', 'main', '9d4b768019c5bf68', '2026-03-02T14:14:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, '2f1f7d55a481425a', 'main', '19b547e3c853f7d2', '2026-03-02T14:20:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '4fd016271861d2eb', 'second', 'b36d8dcb61771d24', '2026-03-02T14:29:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '0aa02b60c67f26a9', 'main', 'c24c7c0223f2b88f', '2026-03-02T14:38:00.000000+00:00', 'open');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.1);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.1);
INSERT INTO public.rounds VALUES (1, '95479362871397d7', '2026-03-02T12:53:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '84288770fd8167de', '2026-03-02T14:47:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'ef0969ce41d5a27f953aa89ce009ff06cc8e3c80ba6b6106587be8115cc442ed', 'bin', '95479362871397d7', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '04ece48d91623230c6b98c74a3d65765a918c650275feb6c9641f8cede425dc2', 'bin', '95479362871397d7', 'W001', false, true, true, 'b0b5368a9e1dd36a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "62e09ff87bab7c6f", "order_number": "B-01", "line": "b0b5368a9e1dd36a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'c545741ef6866586ea3ae122b802dc9f8f4eaf0d338c7d76adab43b912b7e902', 'bin', '95479362871397d7', 'W002', false, true, true, '8fdbf67873ab9c45', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "62e09ff87bab7c6f", "order_number": "B-01", "line": "8fdbf67873ab9c45", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', '4a21cdf5e27b860826d6f53fce143aa418ab39de74d1fea15b1f1d0519d2583a', 'bin', '95479362871397d7', 'S002', false, true, true, 'b6f70140451aae1c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "c24c7c0223f2b88f", "order_number": "B-03", "line": "b6f70140451aae1c", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'd3af9b8a6fb724d99d9b707d23fce5d1d86904f4ddd2aca44f6e6ef25a7e4d82', 'bin', '95479362871397d7', 'S003', false, true, true, '97732466aeecaa21', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "c24c7c0223f2b88f", "order_number": "B-03", "line": "97732466aeecaa21", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '08f1958e03d0e3fe311ef6e9ee637dbd375c06866d4ab4550f9b649efab5576b', 'bin', '95479362871397d7', 'S004', false, true, true, 'c865196711b89100', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "19b547e3c853f7d2", "order_number": "B-04", "line": "c865196711b89100", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'fedb01afd18356d95b8402c53a544618e949522e89a86fb75c444148653db94a', 'bin', '95479362871397d7', 'S005', false, true, true, '8c1a4f51804b563b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "19b547e3c853f7d2", "order_number": "B-04", "line": "8c1a4f51804b563b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', '6aca4d4467972ab24fc96134c95012917bc62b487a79b4f90caeacef67191ea1', 'bin', '95479362871397d7', 'L006', false, true, true, '5934eb4f5fe07b61', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "b36d8dcb61771d24", "order_number": "B-09", "line": "5934eb4f5fe07b61", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '4ec820b94e619a3fc68cd95d77d846a44fd88d0a70e06c265dffb7889966d809', 'bin', '95479362871397d7', 'L011', false, true, true, '4be679f1313cde0f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "b36d8dcb61771d24", "order_number": "B-09", "line": "4be679f1313cde0f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', '40f016761d6933fdb34f680293fde5cafd6c157571088eac0f2cda2b53c65197', 'bin', '95479362871397d7', 'S006', false, true, true, 'af524e2d6bee6d33', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "a1ecfc9fb9f73428", "order_number": "B-13", "line": "af524e2d6bee6d33", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', '6f88eaf572798668230c70f787baa2c3b86bfa4fbcf839b82f6d04f130d821d7', 'bin', '95479362871397d7', 'S007', false, true, true, 'a60070ceeaa4e823', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "9d4b768019c5bf68", "order_number": "B-22", "line": "a60070ceeaa4e823", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'c7de2bf2722786f4e7bb83a2bb269cce44699245420d4b278827f06387b3f39d', 'bin', '95479362871397d7', 'W007', false, true, true, '3838eda65d2c2353', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "3290744d33a0fc5c", "order_number": "B-23", "line": "3838eda65d2c2353", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '43dbae1a948474d03efd07c76de8c3bf07b42b98c4d144bc9e663b248b9024c6', 'bin', '95479362871397d7', 'W008', false, true, true, 'e725aa498d19c9db', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "3290744d33a0fc5c", "order_number": "B-23", "line": "e725aa498d19c9db", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'b6f70140451aae1c', '9ec252ef34d9cec0', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "c24c7c0223f2b88f", "order_number": "B-03", "line": "b6f70140451aae1c", "line_state": "picked", "order_state": "picking", "parcel": "9ec252ef34d9cec0", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'b0b5368a9e1dd36a', '9ec252ef34d9cec0', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "62e09ff87bab7c6f", "order_number": "B-01", "line": "b0b5368a9e1dd36a", "line_state": "packed", "order_state": "picking", "parcel": "9ec252ef34d9cec0", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '8fdbf67873ab9c45', '9ec252ef34d9cec0', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "62e09ff87bab7c6f", "order_number": "B-01", "line": "8fdbf67873ab9c45", "line_state": "released", "order_state": "released", "parcel": "9ec252ef34d9cec0", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'b0b5368a9e1dd36a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "62e09ff87bab7c6f", "order_number": "B-01", "line": "b0b5368a9e1dd36a", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '3838eda65d2c2353', '3f3383d7ef1311aa', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "3290744d33a0fc5c", "order_number": "B-23", "line": "3838eda65d2c2353", "line_state": "packed", "order_state": "waiting", "parcel": "3f3383d7ef1311aa", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'c865196711b89100', '2f1f7d55a481425a', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "19b547e3c853f7d2", "order_number": "B-04", "line": "c865196711b89100", "line_state": "packed", "order_state": "picking", "parcel": "2f1f7d55a481425a", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '5934eb4f5fe07b61', '4fd016271861d2eb', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "b36d8dcb61771d24", "order_number": "B-09", "line": "5934eb4f5fe07b61", "line_state": "packed", "order_state": "picking", "parcel": "4fd016271861d2eb", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'b6f70140451aae1c', '0aa02b60c67f26a9', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "c24c7c0223f2b88f", "order_number": "B-03", "line": "b6f70140451aae1c", "line_state": "packed", "order_state": "picking", "parcel": "0aa02b60c67f26a9", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'b559b8aafde4eeff825936f6172cef5a4d6f1035d69877e6c83779ffffdfb7ab', 'bin', '84288770fd8167de', 'L002', false, true, true, 'e98dbb10e60b1fc0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "63a3073b301b001d", "order_number": "B-05", "line": "e98dbb10e60b1fc0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '307dfc32f0836c3bf244e2ed11ef699feb1e7757ffb4acbd18267a876b7409d6', 'bin', '84288770fd8167de', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '0e1325edf13acc60cf3e7d6690fa62bc0e4ca3baa531baac39c30dd237c70402', 'bin', '84288770fd8167de', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '756810e85a92a59b0acb6e74f9547f2fb0940d6953850a33eaa3326ed226c2a5', 'bin', '84288770fd8167de', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, '69c8c6fb28ebaaee', 'dedf5f46f1e47594', 'D001', 1, '2026-03-02T08:33:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '2ba0fe050510b6c8', '44cb5b683df01ba0', 'D002', 1, '2026-03-02T08:36:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'da40dcf00b5e9ee4', '2c9dd6b4401cf5b5', 'D003', 1, '2026-03-02T08:39:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '23dcd6d2136eab25', '07536070a03f14d6', 'D004', 1, '2026-03-02T08:42:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'dbeb7fc3a97871ec', '91e5c900983e1bd2', 'D005', 1, '2026-03-02T08:45:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '8693f8c769f8c58d', '04fb8105e6c93c28', 'D006', 1, '2026-03-02T08:48:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '7e7016d7cbd61f1d', '9ffaada330fd23e1', 'D007', 1, '2026-03-02T08:51:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '1a851527e29a5469', '10af549e8ee7823d', 'D009', 1, '2026-03-02T08:57:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'bacb1411c5b9efa4', '79d20eece59edbc3', 'D010', 1, '2026-03-02T09:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, 'd245bab9feeeb532', 'fefd9762cf9544bf', 'D011', 1, '2026-03-02T09:03:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, 'e62a2b03b4466e72', '650f65f9115df44a', 'D012', 1, '2026-03-02T09:06:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '82e008629f9b8d74', 'b919eacbd9a07e25', 'S001', 1, '2026-03-02T09:09:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '7b6fbed9af6b1313', '0f8c825ff88aadac', 'S002', 1, '2026-03-02T09:12:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '3e4ccc31460bd027', 'b720d5a197298641', 'S003', 1, '2026-03-02T09:15:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, 'a91ec03f1b98fb29', 'e5255f25b1d73191', 'S004', 1, '2026-03-02T09:18:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '5d3ffec1e3d9bbce', '6c638279e96a833c', 'S005', 1, '2026-03-02T09:21:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '70a8a40168bdd196', 'c48f787d5a9abf29', 'S006', 1, '2026-03-02T09:24:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '5d666fa243960bc3', '92805cf981b4d32b', 'S007', 1, '2026-03-02T09:27:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '4d7f2843bb9ac369', '0c8ef9d20b967a6f', 'S008', 1, '2026-03-02T09:30:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '75d7b00e5916bb7b', 'cdd224d0c3532211', 'S011', 1, '2026-03-02T09:39:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '4350cdf865e2d1c6', 'c2264a23d1c9027f', 'S012', 1, '2026-03-02T09:42:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '471ce07cb26310b0', '3613f5323b336cc4', 'L001', 1, '2026-03-02T09:45:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, 'bf34328c1e7a0bc8', 'b535045497074ba6', 'L002', 1, '2026-03-02T09:48:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '59d33563634c52d0', 'a9babd85c5f1e5d1', 'L003', 1, '2026-03-02T09:51:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'b2af75c92c60c081', '40d2d97631244084', 'L004', 1, '2026-03-02T09:54:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '9810855048958e20', 'f3c07b15ae3686b2', 'L005', 1, '2026-03-02T09:57:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '65026029ff312eab', '55c59257502511f4', 'L006', 1, '2026-03-02T10:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '63b9be705a49b870', '9b7086bcf0b64c18', 'L007', 1, '2026-03-02T10:03:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'd1ffb18c722d0cc6', '9f603581972c3302', 'L008', 1, '2026-03-02T10:06:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (33, 'be8bcebbc47f86b5', 'c02e1a594a25e560', 'L009', 1, '2026-03-02T10:09:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '7b6e0fbeb50bc8d3', '8a50b156b73ec781', 'L010', 1, '2026-03-02T10:12:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, 'e2c0a635a3ab2971', '43ec5d78e51fb123', 'L011', 1, '2026-03-02T10:15:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'da98b6fd8cb08b47', '623ec4aadae83031', 'L012', 1, '2026-03-02T10:18:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, 'ccd63bc7cd0c0b12', '255d63f2c9345b71', 'W003', 1, '2026-03-02T10:27:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, 'a7638861e7b80089', '353ca1dc6ea7113f', 'W005', 1, '2026-03-02T10:33:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '804bca624df11d5d', '8b0ca5f60b6bbb52', 'W006', 1, '2026-03-02T10:36:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '23359d34adbdbac5', '1c5003b16cbd4a0b', 'W008', 1, '2026-03-02T10:42:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'd797b838de884f90', 'ebf9c7e94db83275', 'W009', 1, '2026-03-02T10:45:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '07b59042898ab909', 'f34756d3de9a0bc7', 'W010', 1, '2026-03-02T10:48:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, 'e8d4e346da2d1781', '761d316cb3d7a4a5', 'W011', 1, '2026-03-02T10:51:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '4c4a05284a94ff43', 'ea59dd6b0fc79701', 'W012', 1, '2026-03-02T10:54:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '25f1a0cc13328e51', 'ec98ee158b493f2b', 'D013', 1, '2026-03-02T10:57:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '5a319880f8d7b956', '90d3b838de39e85b', 'S010', 1, '2026-03-02T09:36:00.000000+00:00', 'withdrawn', '2026-03-02T11:03:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, 'a8854c5d3951ea9f', 'fabfd72871be3518', 'W004', 1, '2026-03-02T10:30:00.000000+00:00', 'withdrawn', '2026-03-02T11:06:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '41fc68c96ebcb922', 'dec99cf46446b98d', 'S009', 1, '2026-03-02T09:33:00.000000+00:00', 'moved', '2026-03-02T11:09:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, 'f7657dc313caa348', 'dec99cf46446b98d', 'S013', 1, '2026-03-02T11:09:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'caac0afde3e6e9a2', 'efcb0ca85cd2a964', 'D008', 1, '2026-03-02T08:54:00.000000+00:00', 'moved', '2026-03-02T12:45:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '89b94706ea398526', 'efcb0ca85cd2a964', 'D020', 1, '2026-03-02T12:45:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, 'ff21898dc8d59221', 'c157010d9e60f6c6', 'W001', 1, '2026-03-02T10:21:00.000000+00:00', 'shipped', '2026-03-02T13:50:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'fec10379bdd1b6bd', '2a9b2f62f2928a39', 'W002', 1, '2026-03-02T10:24:00.000000+00:00', 'shipped', '2026-03-02T13:50:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, 'ea1fbfc983f48532', '860f62466390dad0', 'W001', 2, '2026-03-02T13:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '3ff81a91cd4f01b4', 'db5a3cf3b3781505', 'W007', 1, '2026-03-02T10:39:00.000000+00:00', 'shipped', '2026-03-02T14:11:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, '95479362871397d7', 1, 'b6f70140451aae1c', 'B-1-1');
INSERT INTO public.stops VALUES (2, '95479362871397d7', 2, '97732466aeecaa21', 'B-1-1');
INSERT INTO public.stops VALUES (3, '95479362871397d7', 3, 'c865196711b89100', 'B-1-1');
INSERT INTO public.stops VALUES (4, '95479362871397d7', 4, '8c1a4f51804b563b', 'B-1-1');
INSERT INTO public.stops VALUES (5, '95479362871397d7', 5, 'af524e2d6bee6d33', 'B-1-1');
INSERT INTO public.stops VALUES (6, '95479362871397d7', 6, 'a60070ceeaa4e823', 'B-1-1');
INSERT INTO public.stops VALUES (7, '95479362871397d7', 7, 'b0b5368a9e1dd36a', 'D-1-1');
INSERT INTO public.stops VALUES (8, '95479362871397d7', 8, '8fdbf67873ab9c45', 'D-1-1');
INSERT INTO public.stops VALUES (9, '95479362871397d7', 9, '3838eda65d2c2353', 'D-1-1');
INSERT INTO public.stops VALUES (10, '95479362871397d7', 10, 'e725aa498d19c9db', 'D-1-1');
INSERT INTO public.stops VALUES (11, '95479362871397d7', 11, '5934eb4f5fe07b61', 'C-1-1');
INSERT INTO public.stops VALUES (12, '95479362871397d7', 12, '4be679f1313cde0f', 'C-1-2');
INSERT INTO public.stops VALUES (13, '84288770fd8167de', 1, '58e991b5e06a492b', 'A-1-2');
INSERT INTO public.stops VALUES (14, '84288770fd8167de', 2, 'e98dbb10e60b1fc0', 'C-1-1');
INSERT INTO public.stops VALUES (15, '84288770fd8167de', 3, 'f98a0aa67a9e250e', 'C-1-1');
INSERT INTO public.stops VALUES (16, '84288770fd8167de', 4, '43d8d9ce46f561c9', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 5, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
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
ALTER TABLE ONLY public.aliases
    ADD CONSTRAINT fk_aliases_code FOREIGN KEY (code) REFERENCES public.slots(code);
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
