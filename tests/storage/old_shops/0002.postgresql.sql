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
INSERT INTO public.access VALUES (1, 'af9c7a896f7d7cae92a0e40e055fa90f755738f2a6e22a6959890805b6b742b9', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$ZpycAVMxsT+fH09Hb2tmnw$0P5o81PcxAlI22TzZkkJUgfPKO1REmuAoRvsoLz5xKU', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '8ee9d37aab04ae703e39d088e2d25417f478ca2b335c8c2d74ae2d82567739b9', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '10adf3ef4297a75136b55975b22a4e18d0345a114b803929ab77b5a70b0b948f', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '6477779f24b91f95a773d2f51b89670f0d7bc4c49b3ba9f6231068a11f968779', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, '67e3dc19239b6f558e0ee6625d74791e75e5272d4be49a8bd6f0104a2c299c19', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0002');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/26d02f31b46f9dbd', '{"id": "26d02f31b46f9dbd", "item": "455f7e95de4f3b67", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": ""}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 151, '6242adcb7b62736432046aa1331d14a0e28182be2b9f5d39b1db152c5f41de7c', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}}');
INSERT INTO public.items VALUES (1, '94e98cd0630282cc', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”');
INSERT INTO public.items VALUES (3, '5597f3e82ba37006', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”');
INSERT INTO public.items VALUES (4, 'b8314190b17e18d3', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”');
INSERT INTO public.items VALUES (5, '842132307e61e668', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”');
INSERT INTO public.items VALUES (6, '6d14990cfc167d91', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”');
INSERT INTO public.items VALUES (7, '10906977a8735ddd', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”');
INSERT INTO public.items VALUES (8, '83c81e51abdbf77b', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”');
INSERT INTO public.items VALUES (9, 'c7ef527eca2a88e6', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”');
INSERT INTO public.items VALUES (10, '3d7e1b62f8768430', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”');
INSERT INTO public.items VALUES (11, 'ef19314892cb0b00', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”');
INSERT INTO public.items VALUES (12, 'a3cadfbfa8f7a33f', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”');
INSERT INTO public.items VALUES (13, 'fd168eaff833dcba', 'Leather saddle 1', 'L-S1', 'Scratched, “used”');
INSERT INTO public.items VALUES (14, 'b91c058e5b27234a', 'Leather saddle 2', 'L-S2', 'Scratched, “used”');
INSERT INTO public.items VALUES (15, '1909b57664381e15', 'Leather saddle 3', 'L-S3', 'Scratched, “used”');
INSERT INTO public.items VALUES (16, '8ef9649871922d1c', 'Leather saddle 4', 'L-S4', 'Scratched, “used”');
INSERT INTO public.items VALUES (17, '8f9a961982f4c50b', 'Leather saddle 5', 'L-S5', 'Scratched, “used”');
INSERT INTO public.items VALUES (18, '566248ad315994b4', 'Leather saddle 6', 'L-S6', 'Scratched, “used”');
INSERT INTO public.items VALUES (19, 'b40c9ecb9d114976', 'Leather saddle 7', 'L-S7', 'Scratched, “used”');
INSERT INTO public.items VALUES (20, 'ac46d260f92790bf', 'Leather saddle 8', 'L-S8', 'Scratched, “used”');
INSERT INTO public.items VALUES (21, 'd4fc1b9e85b95e25', 'Leather saddle 9', 'L-S9', 'Scratched, “used”');
INSERT INTO public.items VALUES (22, 'c195c10b5b9e2a2e', 'Leather saddle 10', 'L-S10', 'Scratched, “used”');
INSERT INTO public.items VALUES (23, '89ffdf810e692776', 'Leather saddle 11', 'L-S11', 'Scratched, “used”');
INSERT INTO public.items VALUES (24, '0f506d6cfd649580', 'Leather saddle 12', 'L-S12', 'Scratched, “used”');
INSERT INTO public.items VALUES (25, '6946e5a4e2789d69', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”');
INSERT INTO public.items VALUES (26, '40812af21a84b017', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”');
INSERT INTO public.items VALUES (27, '91bbcfa70e2efaff', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”');
INSERT INTO public.items VALUES (28, '670fb87da04b3da4', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”');
INSERT INTO public.items VALUES (29, '28911ad9ff720bcc', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”');
INSERT INTO public.items VALUES (30, 'fb42a72a8f4c1e3c', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”');
INSERT INTO public.items VALUES (31, '068e871eeb821416', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”');
INSERT INTO public.items VALUES (32, '575228b603c95503', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”');
INSERT INTO public.items VALUES (33, '576fa22cfbee933a', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”');
INSERT INTO public.items VALUES (34, '0c2085157332e029', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”');
INSERT INTO public.items VALUES (35, 'e9dbac9295467fab', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”');
INSERT INTO public.items VALUES (36, 'cd66a51ce0ea776d', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”');
INSERT INTO public.items VALUES (37, 'c1d90c69952b5cd7', 'Front wheel 1', 'L-W1', 'Scratched, “used”');
INSERT INTO public.items VALUES (38, '05054f3813f8098a', 'Front wheel 2', 'L-W2', 'Scratched, “used”');
INSERT INTO public.items VALUES (39, 'cc37c80afde4d3c0', 'Front wheel 3', 'L-W3', 'Scratched, “used”');
INSERT INTO public.items VALUES (40, '15866167824f49ce', 'Front wheel 4', 'L-W4', 'Scratched, “used”');
INSERT INTO public.items VALUES (41, 'a3ef9e1932751255', 'Front wheel 5', 'L-W5', 'Scratched, “used”');
INSERT INTO public.items VALUES (42, 'da493727d110d967', 'Front wheel 6', 'L-W6', 'Scratched, “used”');
INSERT INTO public.items VALUES (43, '61a1e23b09549f17', 'Front wheel 7', 'L-W7', 'Scratched, “used”');
INSERT INTO public.items VALUES (44, 'dbe487854bc0c8da', 'Front wheel 8', 'L-W8', 'Scratched, “used”');
INSERT INTO public.items VALUES (45, '8e9911221d9e63a7', 'Front wheel 9', 'L-W9', 'Scratched, “used”');
INSERT INTO public.items VALUES (46, 'a89a2c1b699e11d2', 'Front wheel 10', 'L-W10', 'Scratched, “used”');
INSERT INTO public.items VALUES (47, 'b9bd2c5772cbe620', 'Front wheel 11', 'L-W11', 'Scratched, “used”');
INSERT INTO public.items VALUES (48, '39d4ae5db094e88a', 'Front wheel 12', 'L-W12', 'Scratched, “used”');
INSERT INTO public.items VALUES (49, '455f7e95de4f3b67', 'Brass bell', '', '');
INSERT INTO public.items VALUES (2, 'a4c2dac18095eba8', 'Rear derailleur 2', 'L-D2', 'Cable is new');
INSERT INTO public.items VALUES (50, 'e5dd455c9bd35de8', 'Rear wheel', '', '');
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"9ed1a3153efc8617","title":"Rear derailleur 1","turn":1}', 'ddac4d53f8f6f32491ad03e5965b9aad5e0ba9ac59f77bb5fc7aef37fbe0788a');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"a383c9a3bf141ef3","title":"Rear derailleur 2","turn":1}', 'b9b9778b8d5ad4617f31a6ad654f14e014197a7e75ac8ef9a74cb45c89b11669');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"f4e66863152e15c0","title":"Rear derailleur 3","turn":1}', 'bf2a5dc8e02165a87bc6be05cb5db313e1aa6cd7649812c3fad4aaec78ddeca7');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"30f96553d44ea1a5","title":"Rear derailleur 4","turn":1}', '07d3488ac22a40d255b43e8304749fb7e6d0330ec703158fea7a29ef83ba6e7b');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"fb0f41b4b87859b6","title":"Rear derailleur 5","turn":1}', 'd0fec9b8aae3f2f5fe335da0ec30ef94bc81e96c06ef77e27ee69b87f017f54b');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"45ec55680a210010","title":"Rear derailleur 6","turn":1}', '87f2562f9d0acdfa4acb20588072ded3ad9fc364a6121a0b20a50e16fcfff0b6');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"238d49b60f932e3a","title":"Rear derailleur 7","turn":1}', 'b97ec66ba157f3a433d06e088810583c24eda1bb82ad9ef37006945a774578bc');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"e90dbb434f6983cc","title":"Rear derailleur 8","turn":1}', 'c12988c1bc7965c44627582e9937a9ee9095c7138c5983740407a3cc6a9e16d8');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"2e266888546e9a57","title":"Rear derailleur 9","turn":1}', '18ec2b275f508978ec884cbce078310356f71cdf7c87ff4f4582ade60e7546a2');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"7beab18212ae29e9","title":"Rear derailleur 10","turn":1}', 'c89988f4872294830cf403792dbdfd016cb54e8c061f8e0622ed1ca436b0590c');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"26d2429a6a56b890","title":"Rear derailleur 11","turn":1}', 'fe5d862a7f25eaea93ce49ce0341d7eafcb70b6ed2338f64d7dc8e461a62884a');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"3fb192fcd3da171c","title":"Rear derailleur 12","turn":1}', 'd1f6ad1852734990bf8987a007c48b7002605a7faed71ebf830548bead80d23b');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"5c9317ab7b3b209a","title":"Leather saddle 1","turn":1}', '43a40e8b2f212e160842477f841a3740b36910abc44e4f5be99691714fc3625d');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"74e987ed48905fc1","title":"Leather saddle 2","turn":1}', '7b1f799d22eff156617e77130189800048e6c9526c375e75042f276ae8c350b7');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"17b2da62f6f6e027","title":"Leather saddle 3","turn":1}', '81d514641ae5426dc50732fbdfce3e58dca48c38da8bc08307f996d11fb8cf99');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"0caef94c286bfbb1","title":"Leather saddle 4","turn":1}', 'f80d74fcdc8090b92638e272a9b5533f1aeec082f484823146f1913aaceb3601');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"adfd988bc2502876","title":"Leather saddle 5","turn":1}', 'de21455814a148bf8179d7534b001b91d316d27039c30da02ca23463e77c9c1b');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"079e993ec8758b39","title":"Leather saddle 6","turn":1}', 'e7d2d849650cdb18973e41a918eb275173c3d2232fe8c1ca4ed93883eeb1dabc');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"3cbbca580e1ce232","title":"Leather saddle 7","turn":1}', 'a82bfbf71a09cb27e846a394ef61ea9331afc4f3269211cd7ee297861aab4708');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"1fb8ee4819468e19","title":"Leather saddle 8","turn":1}', 'd50db912bd8cdf503f94722743de4f931e2b8957c053d7fa2769d3900f93f1dd');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"2f3ff7ecf030a8f1","title":"Leather saddle 9","turn":1}', '928bd34c73cff0b5819f01277f68cc5466125ccf11d1283130fc4d10997cae10');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"798dc6205838df5c","title":"Leather saddle 10","turn":1}', 'e1eb762f0b9db697605ac2466ad1e2a93c2cde465bdc2a9cb09e6d6c08b5d287');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"8f26d245c243e388","title":"Leather saddle 11","turn":1}', '7c140b72baf6f2228f4f4a7b6483f8f6a4775c0924a91b99b083198194b71fc8');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"01c43edba061cfe2","title":"Leather saddle 12","turn":1}', 'ef54c51c9bd753ecfa71ec5aa03a19c679a34e4f0a2cfe0f38d01024b9c7b8ce');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"1064f00a3ef73128","title":"Dynamo lamp 1","turn":1}', 'fe12907e597c5c44e4e398ecd36029f86d17576c31bca60c69661987afa76fce');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"f0879c1c1b562762","title":"Dynamo lamp 2","turn":1}', 'c007aa8220bdc75462900badddc8675ceaf12eeb61fe8a3af6be47e4a11cb9ed');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"937945803ac0062d","title":"Dynamo lamp 3","turn":1}', '8a674ecc72fef8f26c3a75ee82f3bffee5dc4a668b00c605e84a10f07a7267cd');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"ddf11e1edbc0d2c7","title":"Dynamo lamp 4","turn":1}', '149d44271ae8262d52519c5c64be5d0b9187a1b4807d0b1c6a63fbf6dae21c37');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"caad722b139b0cc1","title":"Dynamo lamp 5","turn":1}', '0515c77b68726b2bcf1a143ace7d6f2eae7aafd06c8e941b92f10df29e4f4224');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"0f872294c8c2dd1e","title":"Dynamo lamp 6","turn":1}', '1e25f400d3e49a4eaf244f4197a8901f1d4016d8b011455259e20361385f1e84');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"a2346c0831032f6d","title":"Dynamo lamp 7","turn":1}', 'fff1804af97956a1dc01a768d51722f37a6bb55e159544aa84ac3113b8730287');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"d59f024178a08782","title":"Dynamo lamp 8","turn":1}', '7039600122fb3259f4a5c901ccf6e34d1dd04ab9deeb014f85d68b063ae83c57');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"839a5d0d1dc3b847","title":"Dynamo lamp 9","turn":1}', '027e760d38528a20921cdbf0cc82f2c63b8c9b5b0ed9331ef84313e5d33afd37');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"3412a1df28c2c7e6","title":"Dynamo lamp 10","turn":1}', '1ab737528843c7f5541c0dfaeacc508a7a9029ab966beeaa0a346413a6b69ef7');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"9024188ebe1109a7","title":"Dynamo lamp 11","turn":1}', 'fe089819db421892d89fc5c2de26e8892c1980fa0f936cb70cbe2f0bdf15647b');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"5f327363be8a0020","title":"Dynamo lamp 12","turn":1}', 'd0580772c2cf6a91611cb41d0e6e95951f819ca9ea88f6a2641a3f9999f0c0c9');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"03905d3ddb65bd73","title":"Front wheel 1","turn":1}', '1f70575d2ce84b7b8277e82d0c8c1336af8e16b9423ee0b97b4eb72ae7bc61f3');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"7a3d663e3d1a9bbe","title":"Front wheel 2","turn":1}', '6b46af5462769001a1bf888d275e70d9662ed2ddef74f8de68932ffacf4b2d92');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"312c98bd3829b08c","title":"Front wheel 3","turn":1}', '1608b2d955356ceaf2e77c45486a56232ccf5d436083215e54fe0fbc67ec02e4');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"4310e5eb8f7cca03","title":"Front wheel 4","turn":1}', '5b2b6fa2c0fac7c63352065f109e74d4f2136df7cbf103405b822b236cd5e3db');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"fb2eb92ee4b73790","title":"Front wheel 5","turn":1}', '73dbe85b187e129eb5e596fcc6c35eefda82921111d1282d82f062be42b024aa');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"10a3e3d6eeca05c5","title":"Front wheel 6","turn":1}', '04bd1c23e932fef5c6dcb898354eb806867b8a2447753fbbc1eecaba97259828');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"53244a153c17e81a","title":"Front wheel 7","turn":1}', 'ffd4120da148029b0ab80acad56e312f1e112c926fc8de55db00e105e52f9637');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"a92008e0e6b43a3b","title":"Front wheel 8","turn":1}', '2f4a8c3e026eb226a805d59f66185d704fcb7b1dd4315f03a6483e6e02d2cb95');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"ec4d8eff02bb9cc9","title":"Front wheel 9","turn":1}', 'caef19c82fb1a6e014381095804ccd87492ebdd32f81b7fe2c5ae5b207fd54fa');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"55ce59154355f4a9","title":"Front wheel 10","turn":1}', '71d64635f9a8fb8b26fdfc322b9e644cd822f263da6d1b8ded437eeacf3798d7');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"f6fdab68e9c197d3","title":"Front wheel 11","turn":1}', '2e8b4a35eee5353cbbb8d9505c991966d3894899b690e99052b21f68dbb08af6');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"dc47d1d80f9a5669","title":"Front wheel 12","turn":1}', '6ede086ba0c6da5ed0dce039dc604167f0855e2b5da2b85e83a52fcca99a567e');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"26d02f31b46f9dbd","title":"Brass bell","turn":1}', '7cc5c02d75a8cbb8d918f03e358b738ef52228fd53713de0c5ce3e666e80a4c8');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"a383c9a3bf141ef3"}', '1d5def1964e1f79f9e5ed990ffb54c7250363ac4f5922c7f0fcc7d2352e2d4fe');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"798dc6205838df5c"}', 'fe1288480748cbca32b1a3788a753c261d3a717d7ba42a482f1910cb706876af');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"4310e5eb8f7cca03"}', '54954a3d2b3c3c6b83522b4cb9a1e943f176dbf3662b99b9968344bdbd9d161f');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"3f588d72316361f5","stay":"2f3ff7ecf030a8f1","to":"S013"}', 'e3f0cdf46213c5428409fb0eafa16ffca4244bcda62f3dd93e5d4658757d6c2c');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:14:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', '91dec5e26d01fa7b7427081779ee04dbd8f8c2006c0fbeb909e8c35883092a39');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:17:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', '559674379dd5a93ae7e40f49308b5ccdaf294ec47802ff60a7c04c50f776891f');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:18:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'f386b9a480234d7d7cde8bcb49e308499eab391ee21d21fe98323dc9243ec357');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:19:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', 'eebf79954f3ba5538a41247a0ba780bd78db2fb3849d0725c445f81d1e40c043');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:20:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '09bcebb58cf09dd1eb72e067612ed09ac70857e129ecff408ad3c215853b4bc4');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"731834fbf5b0b943","reference":"W001-01E","stay":"03905d3ddb65bd73"},{"hold":null,"line":"567d63255712e3ba","reference":"W002-016","stay":"7a3d663e3d1a9bbe"}],"number":"B-01","order":"d761759087cef1ad"}', '5371d69a1c5cada9ddb81ca1e823247482f1c4d78c334ffdfa41e328c1483584');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9dd7130ce6072353","reference":"S002-013","stay":"74e987ed48905fc1"},{"hold":null,"line":"c61581174cce77af","reference":"S003-01W","stay":"17b2da62f6f6e027"}],"number":"B-03","order":"498a4b5d9879c0e5"}', '56fe2253241551828f37d19e1c907a55a09ad44ad1765ee48214aeb7c7c7e5bd');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"1b6c628e34335465","reference":"S004-01O","stay":"0caef94c286bfbb1"},{"hold":null,"line":"102dfa1a70ac985c","reference":"S005-01G","stay":"adfd988bc2502876"}],"number":"B-04","order":"65954ad30bd8919a"}', '83c27327d1ad2e6a8f72a91d7e5c8b957a96a76929faa9a857eb0a2d7a61dfce');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"12f08637a2699d03","reference":"L002-017","stay":"f0879c1c1b562762"}],"number":"B-05","order":"5d114ac0bb6e1734"}', '90adab40bef32af58f6cab9278fe7194dd88f19a5dc114e3c7b4fe1744a57a24');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"887580cf3c62001e","reference":"L003-010","stay":"937945803ac0062d"}],"number":"B-06","order":"6a9050a081521af0"}', 'cd347bb1119a18e6c4c649e3c2ef7aa9e0c651fb51260015675bf2f2d0d0a892');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"2410536d53d8e98c","reference":"L004-01S","stay":"ddf11e1edbc0d2c7"}],"number":"B-07","order":"33c2afa079e85bc0"}', '5b8236de50a42875d98fc490d7b2199c8819382ff9cd57b3fb93cf65c6623c32');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"bc4f4042dae7980a","reference":"L005-01K","stay":"caad722b139b0cc1"}],"number":"B-08","order":"c5b355188310c3b8"}', 'de28a598ec9eaecc236cdf47d695ac9dcced8636f5fa646f17545c3557ed55bd');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"82cd5012b88f4677","reference":"L006-01C","stay":"0f872294c8c2dd1e"},{"hold":null,"line":"190b990063bd337a","reference":"L011-010","stay":"9024188ebe1109a7"}],"number":"B-09","order":"e2944707500acc57"}', 'a35750abc16a257f3fb58b81e06ed76ac14a6a37297d7e48fc16cf4515915814');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"81c5596ebcce1a74","reference":"S006-018","stay":"079e993ec8758b39"}],"number":"B-13","order":"9f95a707328adbf1"}', 'cc4198c4e61e27ced6a707c701af2b66c724f59c3bf54ad9bb5b61cb4c535769');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4a3bd116d01cda98","reference":"L007-014","stay":"a2346c0831032f6d"}],"number":"B-17","order":"cfd338d91d12e220"}', 'bfaf2eb562cf3e72be3aa179d84a774a9f844ba698fd7f9c8f0e63220f032d7d');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b588eb0db9428fa1","reference":"D009-01B","stay":"2e266888546e9a57"}],"number":"B-18","order":"e22460a6c48f5e46"}', 'a1a6a48ec7263bcd8e67c1598b599211222da9fe0d07d8aee4cc5cf3cf516a69');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3332a6a8d24b4999","reference":"W006-013","stay":"10a3e3d6eeca05c5"}],"number":"B-21","order":"35bdb491013a6957"}', 'ea5f9cab7fdec10f48305560a0d89d10e3dab88f5e346cc9ef6c07b220958a7f');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:59:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"7377096f170969f1","reference":"S007-01Z","stay":"3cbbca580e1ce232"}],"number":"B-22","order":"129067a218d021a7"}', '183abc4aeda8283f2cb7b1b01b21920f59750329b86c7ea44dc794daac71f5ea');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:02:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3f1326116d17457c","reference":"W007-01W","stay":"53244a153c17e81a"},{"hold":null,"line":"fad85b104745a50e","reference":"W008-01O","stay":"a92008e0e6b43a3b"}],"number":"B-23","order":"8d8c76d536dfc86e"}', 'd68ac16e51f4896afe5f50eb5f590f2c7ab844ac498b0e9c07b3e765adf6201d');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:05:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"53f91d54640e47ee","reference":"D008-01J","stay":"e90dbb434f6983cc"}],"number":"B-26","order":"055ba0e888f20780"}', 'db06a0f332b139c948bad8a58d1c41b25bb0a17e910419a682f6aef757298e12');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:08:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"b243720c17455fc7","reference":"D003-01U","stay":"f4e66863152e15c0"}],"number":"B-30","order":"9e11423cbb6d5cbc"}', 'f4890b2c6b18cc46297d3ec97a04ca8ab6c55b8e6e488b1704c0aeed6ba84b8f');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:11:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4be692dc8c0908d7","reference":"D005-01E","stay":"fb0f41b4b87859b6"},{"hold":"unknown_code","line":"4f7e05d146c099d1","reference":"Z999","stay":null}],"number":"B-31","order":"500afae59229de08"}', '33c561c9bb9a33d25e472dacdbf58f30effd8fb9444360372e53959f0c9d5001');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:14:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"d5e460965fcd66d7","reference":"D006-016","stay":"45ec55680a210010"},{"hold":null,"line":"b7d8fbc8a0405a37","reference":"D007-01R","stay":"238d49b60f932e3a"}],"number":"B-32","order":"f091ea47e9370d6c"}', 'a42623a6602377ed712d63d9efca92e34c6dbb6661031f12277cd76e572fad65');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:17:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"b7d8fbc8a0405a37","reference":"D007-01R","stay":"238d49b60f932e3a"}],"number":"B-32","order":"f091ea47e9370d6c"}', '9875314f4a85c1bbb1ace2c40c3ddf6db998217126672d569f8be858c08598fb');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:20:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"33923ee8421a4b00","reference":"lamp","stay":null}],"number":"B-33","order":"9ec5a2a1d52e7245"}', '5d222efe6c5da1cb203d76e2477d0d59f366c92c68653f8ddfaeb0b182673b32');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:23:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"826f1553b44e4f35","reference":"D006-016","stay":null}],"number":"B-34","order":"2824fc342077cf3e"}', '0cc12dc29715acb2b61101a43155516e1a0197557216356829b9abf3a38ee9ce');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:26:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"c1057a151702e1b8","reference":"W004-01J","stay":null}],"number":"B-35","order":"fb765bfc76850603"}', 'ecadfbb163a468117a1765f1857a20fab4e43f41132013f160f197ca5f2fefdc');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:29:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"1018bb4abdfa8a84","reference":"L015","stay":null}],"number":"B-36","order":"3922a21163084d71"}', '5e8e552f6cae7b53eb9fad7bdf50d4626620db9f8e61391d9e108e1b1cc3acaa');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:32:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"18f281c34ab0184a","reference":"W005-01B","stay":"fb2eb92ee4b73790"}],"number":"B-37","order":"170f95b1e8725522"}', '453d25e664175eb77ff561db2b7c36f548678c44c6505ff449d24a4d0ab9efaf');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:35:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"18f281c34ab0184a","stay":"fb2eb92ee4b73790"}', 'b1e1268dfef00d5fc53b7f7b66c183d61f5d09eaf08206a2c7242e98c8f46c0c');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:38:00.000000+00:00', 'held', 'owner', '{"line":"4a3bd116d01cda98","why":"Another lamp, by the photo"}', '061d18dd68f91149918e1c2ed2395b16567ed75bf11d459e30df3fe6985531b3');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:41:00.000000+00:00', 'cancelled', 'owner', '{"lines":["bc4f4042dae7980a"],"number":"B-08","order":"c5b355188310c3b8"}', '00aebc335eef71b6d2fcc0e2d781cd18e6fccf0aec0be9244fdaae6d61aedaee');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:44:00.000000+00:00', 'cancelled', 'owner', '{"lines":["3332a6a8d24b4999"],"number":"B-21","order":"35bdb491013a6957"}', '462afd83d064981b988bd6e4a3d969435915a12f47b99d232f90f689d935d5a9');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:47:00.000000+00:00', 'revived', 'owner', '{"line":"3332a6a8d24b4999","stay":"10a3e3d6eeca05c5"}', '2074ad8475f55bc1b1c5734b26a59ab47d8856fe0a97be1805fc30ae74471c8f');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:50:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"fb9505deb8643bc4","stay":"e90dbb434f6983cc","to":"D020"}', 'f0aa665ea387e591cc06e6c66f46cb1fbac9869612f86b891276499c645b1893');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:55:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"2534bbd7b7037193","reference":"S012-01O","stay":"01c43edba061cfe2"}],"number":"F-1","order":"c5a1d2fb6a6e407f"}', 'c618fcead5d6ec12dab57d7fd526a1a28e99fba8e9d3802b407fd3e94e56b4a8');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:55:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"2a62779c58158dec","reference":"","stay":null}],"number":"F-2","order":"21d217c579462d1b"}', 'dc45d6e8420e50dfeb985462f30f5ad8ca3ed86b3221316d2fc1f7f120383f3d');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:58:00.000000+00:00', 'round opened', 'owner', '{"lines":["731834fbf5b0b943","567d63255712e3ba","9dd7130ce6072353","c61581174cce77af","1b6c628e34335465","102dfa1a70ac985c","82cd5012b88f4677","190b990063bd337a","81c5596ebcce1a74","7377096f170969f1","3f1326116d17457c","fad85b104745a50e"],"round":"ce1632e07c13dd82"}', '805d03f425695bb1c787d715f58e0e3546a11b6d2b341e29ca207d96cdab38c5');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:01:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'b3805270b8ab091c6a8b9e6cb0cb72852f47a2695f5b3fdd58ca6c0e8d8bcce8');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:04:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"731834fbf5b0b943","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '5e5c7db49a84f2f349b7764836ac5653a2f9af80bf4e970f4a83b28cae4b8068');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:07:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"567d63255712e3ba","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '4cc58033d15527bf85700316780bad2256c754fa86a3cfc84c960e5938faf0cb');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:10:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"9dd7130ce6072353","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'eeb11af31665d26b8568f1ea1c648dfcbcd995a202c8a1b11ec615a5af2c4f17');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:13:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"c61581174cce77af","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '8cf93012358e80c79434cbd5af9d851926bf26800914c5841f85a9dbada6e623');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:16:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"1b6c628e34335465","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '6679b7cb7c1935bce7c2daa19e5a3b4e6225c7de594862e7678d1d393b129953');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:19:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"102dfa1a70ac985c","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'a1da008a083dd33cc9b0279962168b105946332a59df421cd43e41b16ab340f3');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:22:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"82cd5012b88f4677","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '1a5fa5b9774055559a3fefe8c3156e77a506fa0893ce0621ce9085ad2bd647ac');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:25:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"190b990063bd337a","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'd2cfd8da90c8938d129e5557daf734a00e6a7313c969453615a9593a5e40b0dd');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:28:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"81c5596ebcce1a74","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '3b130edb3f9ffb65867c58d3e7ed4797f535e801e35f408143c66a22a97f6d83');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:31:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"7377096f170969f1","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '18917e5b6ba85e6720b0d16218d0d2c4da4f0bdc69f2cc4742c1c3f87c01e8d2');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:34:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"3f1326116d17457c","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '31b80f3653321a57944d3ecbac80e83c83e4c2a363f4f6f0b6875665b0b8d235');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:37:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"fad85b104745a50e","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ce1632e07c13dd82","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'ae425746b0507ba8f0f5c4c0b2b902fc8f7f76ce0263893424255a948ea10602');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:40:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"fad85b104745a50e","line_state":"waiting"}', '64b4d7edbb546b48a8c284bc364e38094bba18964f46f4592669d064c4e25cfc');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:43:00.000000+00:00', 'round closed', 'owner', '{"round":"ce1632e07c13dd82"}', 'a82998527d40fd7cd9088c655cce4ce25ef88abcdd56df2b6faeead75fc5beba');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:46:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["d761759087cef1ad"],"parcel":"f1e4d5a9b2fca4ba","table":"main"}', 'c21a256396e6f0c120abaaec49b1dc0ac9b8d5befcd093037b9bad206488488e');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:49:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"9dd7130ce6072353","line_state":"picked","order_number":"B-03","parcel":"f1e4d5a9b2fca4ba","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '02db34785d2184c201b1554b58007ba307a9b4b4c172164023b074fbaaa4e183');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:52:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"731834fbf5b0b943","line_state":"packed","order_number":"B-01","parcel":"f1e4d5a9b2fca4ba","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '7597e34b28cd883103a5c807aedd6f95c9740dd12c3e50770877fe5e04435772');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:55:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["d761759087cef1ad"],"parcel":"f1e4d5a9b2fca4ba","released":["W001","W002"]}', '99f375246818ca269ed6e2750e336b65f01ee88e51532d9a8a9500abebb980b6');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:55:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"567d63255712e3ba","line_state":"released","order_number":"B-01","parcel":"f1e4d5a9b2fca4ba","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '282e5398ded00fa7afa254be14d1b8b3010444b656014f46d03d7c6268680960');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:58:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"731834fbf5b0b943","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'f48f7fd004f2895b1544737d38ac968d2af630d9312c463bc0e37485571e14ed');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:01:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"e20d9a1bef674f61","title":"Rear wheel","turn":2}', '0c9f4534f5a42542decbf04902383d7366b7e912555e4a982d1da001374b3765');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:04:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["8d8c76d536dfc86e"],"parcel":"7442148c4d255880","table":"main"}', '05923a6041fc24f59149e2a0720913b94d4515dc0709efd4a76e4115c509ed10');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:07:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"3f1326116d17457c","line_state":"packed","order_number":"B-23","parcel":"7442148c4d255880","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'b294478e484a8594c290a91498d00e229c9f3a288d39227f440598ff3c550826');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:10:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["8d8c76d536dfc86e"],"parcel":"7442148c4d255880","released":["W007"]}', 'df7142d4c96c18505440f557219d8ca071b811ae0bf90a9d3b7375e63b2eb594');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:13:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["8d8c76d536dfc86e"],"parcel":"7442148c4d255880"}', 'afca14ec488dfe919e8a3e29c98fdb9ad7edcd494f0bc865d4cea04109c9d5a5');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:16:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["8d8c76d536dfc86e"],"parcel":"7442148c4d255880","released":["W007"]}', 'dbe8375fc0e52982ebc27c8bf5fa43854d15887b9fd0ca43845f5268ce7b7ad4');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["129067a218d021a7"],"parcel":"717b3845cabcff15","table":"main"}', 'ad3c9923b606d1a5ef1dd379b01bff3c0b42a7ccd718637e34adc20903146168');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:22:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"717b3845cabcff15"}', 'fdcfd3e3117f0d64ca35be61170c78e332f3f4d0a43ac745ae89acaaadaa37de');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:25:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["65954ad30bd8919a"],"parcel":"c589f7efd37cf7b6","table":"main"}', '7bd6c2f7b3c07f0a2306cd700932f93cb00a7955304a6021ae197e19c515e02d');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:28:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"1b6c628e34335465","line_state":"packed","order_number":"B-04","parcel":"c589f7efd37cf7b6","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'a99fddd1bf11805657bed2398ddbe57806fd805e8fafc231db8adce030bf7c43');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:31:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"c589f7efd37cf7b6"}', '6ec06883a83b7a4c53ec2cedd5e9344a30c03f7f5109ffa5538a95f053cec065');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["e2944707500acc57"],"parcel":"4ef69e5f9b3a4965","table":"second"}', '45b8e8397eee77ea50cb7286d40956c33f883c2fd3d883ddfa874c1a1796ae71');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:37:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"82cd5012b88f4677","line_state":"packed","order_number":"B-09","parcel":"4ef69e5f9b3a4965","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'b60733d8e92fe12c4670c2d5a6d7fac6983d211941a3e074adbfc23651645204');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:40:00.000000+00:00', 'cancelled', 'owner', '{"lines":["82cd5012b88f4677","190b990063bd337a"],"number":"B-09","order":"e2944707500acc57"}', '1a5f930535f493662ecc26d411c64b2aca9b6ad8a1ef05ead17e0bc1ae7c376f');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:43:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["498a4b5d9879c0e5"],"parcel":"c704c3c02a30b1ee","table":"main"}', 'a44923e5f689ae781a913dbcf74e8320e9d0a620b74e1c799e446c0089953df8');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:46:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"9dd7130ce6072353","line_state":"packed","order_number":"B-03","parcel":"c704c3c02a30b1ee","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '96c65a5eddccd70e892d1795650b6c34f6fbe1568277e5230cd0078ced3e4008');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:49:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"81c5596ebcce1a74","reference":"S006-018","stay":"079e993ec8758b39"}],"number":"B-13","order":"9f95a707328adbf1"}', '7e9a6fb2e83d84564c52d2ae53245c8121978dc981fbb0cd15642edbea55f657');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:52:00.000000+00:00', 'round opened', 'owner', '{"lines":["12f08637a2699d03","887580cf3c62001e","2410536d53d8e98c","53f91d54640e47ee"],"round":"65205183dd91426d"}', 'dd51ca8c02aea43ade55495b838f2d1a761034d6427e7aae1cfa2c175d3b7180');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:55:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"12f08637a2699d03","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"65205183dd91426d","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'cb6c233eeacbffafdb500b7a7fcb23ebea03d016b6213002ca2245da241297dc');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:58:00.000000+00:00', 'short', 'owner', '{"line":"2410536d53d8e98c","note":"Not in its bin"}', '334cc6e0f42ae2475c2ac065e58015239d6f710c38ccc57b793960c58e2270ea');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"65205183dd91426d","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '07a4d127b75f9f54cebd4fc3f62cde2d04fc93840ca33501dce0b4f3a52a95ae');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:04:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"65205183dd91426d","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'aeb1a2fdce4566a1b37af2ca5d23e7bcc7c88f61e78afa46fcecbbda09b65541');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:07:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"65205183dd91426d","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '345b56efb497e2fedc1b6b7d3dea6d1b851cefa2316d3f641af9c29768aa0ed5');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:10:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '411aa25590da1270ce09c60459253b8b274a5e21f3733189645b4d2945ab169b');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:13:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', '704fc9d86561329c85ef78558fd73fad571c646d3fbf3dbffa0a5c8c1a03df97');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:16:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"daba2e84da55cf80","reference":"D001-019","stay":"9ed1a3153efc8617"},{"hold":"already_sold","line":"86c19a6a22d39099","reference":"W002-016","stay":null}],"number":"B-38","order":"8d9e83c1b9f5f70f"}', '6b112a18af1c76c7c4ada4a49befb0fb387c95ea52317b2cec75b6636d8ab2ec');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:19:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"12018a266c23c1be","reference":"W001","stay":null}],"number":"B-39","order":"9266af8edfb20d43"}', '6242adcb7b62736432046aa1331d14a0e28182be2b9f5d39b1db152c5f41de7c');
INSERT INTO public.lines VALUES (15, 'b588eb0db9428fa1', 'e22460a6c48f5e46', 1, 'D009-01B', 'Rear derailleur 9', '', '2e266888546e9a57', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, 'b243720c17455fc7', '9e11423cbb6d5cbc', 1, 'D003-01U', 'Bell with a crown', '', 'f4e66863152e15c0', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, '4be692dc8c0908d7', '500afae59229de08', 1, 'D005-01E', 'Rear derailleur 5', '', 'fb0f41b4b87859b6', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, '4f7e05d146c099d1', '500afae59229de08', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, 'd5e460965fcd66d7', 'f091ea47e9370d6c', 1, 'D006-016', 'Rear derailleur 6', '', '45ec55680a210010', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, 'b7d8fbc8a0405a37', 'f091ea47e9370d6c', 2, 'D007-01R', 'Rear derailleur 7', '', '238d49b60f932e3a', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, '33923ee8421a4b00', '9ec5a2a1d52e7245', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, '826f1553b44e4f35', '2824fc342077cf3e', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, 'c1057a151702e1b8', 'fb765bfc76850603', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, '1018bb4abdfa8a84', '3922a21163084d71', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '18f281c34ab0184a', '170f95b1e8725522', 1, 'W005-01B', 'Bell with a crown', '', 'fb2eb92ee4b73790', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, '4a3bd116d01cda98', 'cfd338d91d12e220', 1, 'L007-014', 'Dynamo lamp 7', '', 'a2346c0831032f6d', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, 'bc4f4042dae7980a', 'c5b355188310c3b8', 1, 'L005-01K', 'Dynamo lamp 5', '', 'caad722b139b0cc1', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, '3332a6a8d24b4999', '35bdb491013a6957', 1, 'W006-013', 'Front wheel 6', '', '10a3e3d6eeca05c5', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, '2534bbd7b7037193', 'c5a1d2fb6a6e407f', 1, 'S012-01O', '', '', '01c43edba061cfe2', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, '2a62779c58158dec', '21d217c579462d1b', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, '3f1326116d17457c', '8d8c76d536dfc86e', 1, 'W007-01W', 'Front wheel 7', '', '53244a153c17e81a', 'released', NULL, '', '7442148c4d255880', 'ce1632e07c13dd82', 7, NULL, true);
INSERT INTO public.lines VALUES (5, '1b6c628e34335465', '65954ad30bd8919a', 1, 'S004-01O', 'Leather saddle 4', '', '0caef94c286bfbb1', 'packed', NULL, '', 'c589f7efd37cf7b6', 'ce1632e07c13dd82', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, '102dfa1a70ac985c', '65954ad30bd8919a', 2, 'S005-01G', 'Leather saddle 5', '', 'adfd988bc2502876', 'picked', NULL, '', NULL, 'ce1632e07c13dd82', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, '82cd5012b88f4677', 'e2944707500acc57', 1, 'L006-01C', 'Dynamo lamp 6', '', '0f872294c8c2dd1e', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '4ef69e5f9b3a4965', 'ce1632e07c13dd82', 4, NULL, true);
INSERT INTO public.lines VALUES (12, '190b990063bd337a', 'e2944707500acc57', 2, 'L011-010', 'Dynamo lamp 11', '', '9024188ebe1109a7', 'cancelled', NULL, '', NULL, 'ce1632e07c13dd82', 4, NULL, true);
INSERT INTO public.lines VALUES (3, '9dd7130ce6072353', '498a4b5d9879c0e5', 1, 'S002-013', 'Leather saddle 2', '', '74e987ed48905fc1', 'packed', NULL, '', 'c704c3c02a30b1ee', 'ce1632e07c13dd82', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, 'c61581174cce77af', '498a4b5d9879c0e5', 2, 'S003-01W', 'Leather saddle 3', '', '17b2da62f6f6e027', 'picked', NULL, '', NULL, 'ce1632e07c13dd82', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '7377096f170969f1', '129067a218d021a7', 1, 'S007-01Z', 'Leather saddle 7', '', '3cbbca580e1ce232', 'picked', NULL, '', NULL, 'ce1632e07c13dd82', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, 'fad85b104745a50e', '8d8c76d536dfc86e', 2, 'W008-01O', 'Front wheel 8', '', 'a92008e0e6b43a3b', 'waiting', NULL, '', NULL, 'ce1632e07c13dd82', 7, NULL, true);
INSERT INTO public.lines VALUES (1, '731834fbf5b0b943', 'd761759087cef1ad', 1, 'W001-01E', 'Front wheel 1', '', '03905d3ddb65bd73', 'released', NULL, '', 'f1e4d5a9b2fca4ba', 'ce1632e07c13dd82', 1, NULL, true);
INSERT INTO public.lines VALUES (2, '567d63255712e3ba', 'd761759087cef1ad', 2, 'W002-016', 'Front wheel 2', '', '7a3d663e3d1a9bbe', 'released', NULL, '', 'f1e4d5a9b2fca4ba', 'ce1632e07c13dd82', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '81c5596ebcce1a74', '9f95a707328adbf1', 1, 'S006-018', 'Saddle with springs', '', '079e993ec8758b39', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, 'ce1632e07c13dd82', 5, NULL, true);
INSERT INTO public.lines VALUES (20, '53f91d54640e47ee', '055ba0e888f20780', 1, 'D008-01J', 'Rear derailleur 8', '', 'fb9505deb8643bc4', 'waiting', NULL, '', NULL, '65205183dd91426d', 4, NULL, true);
INSERT INTO public.lines VALUES (8, '887580cf3c62001e', '6a9050a081521af0', 1, 'L003-010', 'Dynamo lamp 3', '', '937945803ac0062d', 'waiting', NULL, '', NULL, '65205183dd91426d', 2, NULL, true);
INSERT INTO public.lines VALUES (7, '12f08637a2699d03', '5d114ac0bb6e1734', 1, 'L002-017', 'Dynamo lamp 2', '', 'f0879c1c1b562762', 'picked', NULL, '', NULL, '65205183dd91426d', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, '2410536d53d8e98c', '33c2afa079e85bc0', 1, 'L004-01S', 'Dynamo lamp 4', '', 'ddf11e1edbc0d2c7', 'short', NULL, '', NULL, '65205183dd91426d', 3, NULL, true);
INSERT INTO public.lines VALUES (33, 'daba2e84da55cf80', '8d9e83c1b9f5f70f', 1, 'D001-019', 'Rear derailleur 1', '', '9ed1a3153efc8617', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, '86c19a6a22d39099', '8d9e83c1b9f5f70f', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '12018a266c23c1be', '9266af8edfb20d43', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '5d114ac0bb6e1734', 'B-05', 'fair', '2026-03-02T11:32:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, '6a9050a081521af0', 'B-06', 'fair', '2026-03-02T11:35:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, '33c2afa079e85bc0', 'B-07', 'fair', '2026-03-02T11:38:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, 'c5b355188310c3b8', 'B-08', 'fair', '2026-03-02T11:41:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, '9f95a707328adbf1', 'B-13', 'fair', '2026-03-02T11:47:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'cfd338d91d12e220', 'B-17', 'fair', '2026-03-02T11:50:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, 'e22460a6c48f5e46', 'B-18', 'fair', '2026-03-02T11:53:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '35bdb491013a6957', 'B-21', 'fair', '2026-03-02T11:56:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '055ba0e888f20780', 'B-26', 'fair', '2026-03-02T12:05:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '9e11423cbb6d5cbc', 'B-30', 'fair', '2026-03-02T12:08:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '500afae59229de08', 'B-31', 'fair', '2026-03-02T12:11:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, 'f091ea47e9370d6c', 'B-32', 'fair', '2026-03-02T12:14:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '9ec5a2a1d52e7245', 'B-33', 'fair', '2026-03-02T12:20:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, '2824fc342077cf3e', 'B-34', 'fair', '2026-03-02T12:23:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, 'fb765bfc76850603', 'B-35', 'fair', '2026-03-02T12:26:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, '3922a21163084d71', 'B-36', 'fair', '2026-03-02T12:29:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '170f95b1e8725522', 'B-37', 'fair', '2026-03-02T12:32:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, 'c5a1d2fb6a6e407f', 'F-1', '', '2026-03-02T12:55:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '21d217c579462d1b', 'F-2', '', '2026-03-02T12:55:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, 'd761759087cef1ad', 'B-01', 'fair', '2026-03-02T11:23:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, '8d8c76d536dfc86e', 'B-23', 'fair', '2026-03-02T12:02:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, '129067a218d021a7', 'B-22', 'fair', '2026-03-02T11:59:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '65954ad30bd8919a', 'B-04', 'fair', '2026-03-02T11:29:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'c589f7efd37cf7b6');
INSERT INTO public.orders VALUES (8, 'e2944707500acc57', 'B-09', 'fair', '2026-03-02T11:44:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '4ef69e5f9b3a4965');
INSERT INTO public.orders VALUES (2, '498a4b5d9879c0e5', 'B-03', 'fair', '2026-03-02T11:26:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'c704c3c02a30b1ee');
INSERT INTO public.orders VALUES (26, '8d9e83c1b9f5f70f', 'B-38', 'fair', '2026-03-02T15:16:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, '9266af8edfb20d43', 'B-39', '', '2026-03-02T15:19:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, 'f1e4d5a9b2fca4ba', 'main', 'd761759087cef1ad', '2026-03-02T13:46:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '7442148c4d255880', 'main', '8d8c76d536dfc86e', '2026-03-02T14:04:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, '717b3845cabcff15', 'main', '129067a218d021a7', '2026-03-02T14:19:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, 'c589f7efd37cf7b6', 'main', '65954ad30bd8919a', '2026-03-02T14:25:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '4ef69e5f9b3a4965', 'second', 'e2944707500acc57', '2026-03-02T14:34:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, 'c704c3c02a30b1ee', 'main', '498a4b5d9879c0e5', '2026-03-02T14:43:00.000000+00:00', 'open');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.rounds VALUES (1, 'ce1632e07c13dd82', '2026-03-02T12:58:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '65205183dd91426d', '2026-03-02T14:52:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '9ed0f60d8b6e8ef942f661a717132542ee2190cc80b9afd8b2b66540bb01d4b3', 'bin', 'ce1632e07c13dd82', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '026d5a34dacd7b9419ce54c83ed876f5a478ddbca300caf394765c6c20bdadf8', 'bin', 'ce1632e07c13dd82', 'W001', false, true, true, '731834fbf5b0b943', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d761759087cef1ad", "order_number": "B-01", "line": "731834fbf5b0b943", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', '7542bc2a9403b17f227b1a5a616563f9388cb33aa436404287c8ea4216e2000d', 'bin', 'ce1632e07c13dd82', 'W002', false, true, true, '567d63255712e3ba', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d761759087cef1ad", "order_number": "B-01", "line": "567d63255712e3ba", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'e5420fb03339a4663d8c45ca5becfa99d3779c3181e283cce37a80647b2b35c4', 'bin', 'ce1632e07c13dd82', 'S002', false, true, true, '9dd7130ce6072353', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "498a4b5d9879c0e5", "order_number": "B-03", "line": "9dd7130ce6072353", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '150f013464b988f0484aae1701e0af053163e5cf51f7ee64bc67313c0325d76b', 'bin', 'ce1632e07c13dd82', 'S003', false, true, true, 'c61581174cce77af', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "498a4b5d9879c0e5", "order_number": "B-03", "line": "c61581174cce77af", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '7425e4b2004c89da8920b8f334d948916730436b9dd414cb0e131b2d25a580d2', 'bin', 'ce1632e07c13dd82', 'S004', false, true, true, '1b6c628e34335465', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "65954ad30bd8919a", "order_number": "B-04", "line": "1b6c628e34335465", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', '5bdc0d984eb369744e920420d2c421725fe4abbcd6b80b7885492c170c2fc1d3', 'bin', 'ce1632e07c13dd82', 'S005', false, true, true, '102dfa1a70ac985c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "65954ad30bd8919a", "order_number": "B-04", "line": "102dfa1a70ac985c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'c9e18f084cecb0f1c2d11c2351f266071a8fa20a2ececddfb6880669be3dc6a0', 'bin', 'ce1632e07c13dd82', 'L006', false, true, true, '82cd5012b88f4677', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e2944707500acc57", "order_number": "B-09", "line": "82cd5012b88f4677", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', '712ff79109f5e598ea5ee177dedd07c9c7e9cab7459a454d7c7aba59bd1cc377', 'bin', 'ce1632e07c13dd82', 'L011', false, true, true, '190b990063bd337a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "e2944707500acc57", "order_number": "B-09", "line": "190b990063bd337a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', '661cbfab9f16101a718d26ec600408a56e794c6e02780c528d0904df7c40f48b', 'bin', 'ce1632e07c13dd82', 'S006', false, true, true, '81c5596ebcce1a74', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "9f95a707328adbf1", "order_number": "B-13", "line": "81c5596ebcce1a74", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', '9dc1b79353c7a9125a8bddd0123277047119ea369d1a5692cebabad309c032f0', 'bin', 'ce1632e07c13dd82', 'S007', false, true, true, '7377096f170969f1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "129067a218d021a7", "order_number": "B-22", "line": "7377096f170969f1", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', '17832e4505a662a294499b508ad3ffd91df2ccce87f5928934afc3a37c780bbb', 'bin', 'ce1632e07c13dd82', 'W007', false, true, true, '3f1326116d17457c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "8d8c76d536dfc86e", "order_number": "B-23", "line": "3f1326116d17457c", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '968b2167809062ddbe5bf4bbfb8cd3e58be34fe25ffce25092a6ed3ef81bf742', 'bin', 'ce1632e07c13dd82', 'W008', false, true, true, 'fad85b104745a50e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "8d8c76d536dfc86e", "order_number": "B-23", "line": "fad85b104745a50e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '9dd7130ce6072353', 'f1e4d5a9b2fca4ba', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "498a4b5d9879c0e5", "order_number": "B-03", "line": "9dd7130ce6072353", "line_state": "picked", "order_state": "picking", "parcel": "f1e4d5a9b2fca4ba", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '731834fbf5b0b943', 'f1e4d5a9b2fca4ba', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d761759087cef1ad", "order_number": "B-01", "line": "731834fbf5b0b943", "line_state": "packed", "order_state": "picking", "parcel": "f1e4d5a9b2fca4ba", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '567d63255712e3ba', 'f1e4d5a9b2fca4ba', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d761759087cef1ad", "order_number": "B-01", "line": "567d63255712e3ba", "line_state": "released", "order_state": "released", "parcel": "f1e4d5a9b2fca4ba", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '731834fbf5b0b943', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "d761759087cef1ad", "order_number": "B-01", "line": "731834fbf5b0b943", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '3f1326116d17457c', '7442148c4d255880', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "8d8c76d536dfc86e", "order_number": "B-23", "line": "3f1326116d17457c", "line_state": "packed", "order_state": "waiting", "parcel": "7442148c4d255880", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '1b6c628e34335465', 'c589f7efd37cf7b6', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "65954ad30bd8919a", "order_number": "B-04", "line": "1b6c628e34335465", "line_state": "packed", "order_state": "picking", "parcel": "c589f7efd37cf7b6", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '82cd5012b88f4677', '4ef69e5f9b3a4965', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "e2944707500acc57", "order_number": "B-09", "line": "82cd5012b88f4677", "line_state": "packed", "order_state": "picking", "parcel": "4ef69e5f9b3a4965", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '9dd7130ce6072353', 'c704c3c02a30b1ee', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "498a4b5d9879c0e5", "order_number": "B-03", "line": "9dd7130ce6072353", "line_state": "packed", "order_state": "picking", "parcel": "c704c3c02a30b1ee", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', '5cefb6c1b4a70c7d3f1dc5c0c95f51a9dbba909aabd603fbfae439831298f43a', 'bin', '65205183dd91426d', 'L002', false, true, true, '12f08637a2699d03', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "5d114ac0bb6e1734", "order_number": "B-05", "line": "12f08637a2699d03", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '9a489bee7678a57bcddfa30467634d18bf420432ceaa0e0af05f91f357f79490', 'bin', '65205183dd91426d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '7ca947b4eb7227f8b3608fb4e445219430093df8a746f5bf6ede7613e333cb43', 'bin', '65205183dd91426d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '53d0a78adc3ae6b260d3d97d3dbfef5642a3f6435b5f8c1d60f02e64de0cebdb', 'bin', '65205183dd91426d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, '9ed1a3153efc8617', '94e98cd0630282cc', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, 'a383c9a3bf141ef3', 'a4c2dac18095eba8', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'f4e66863152e15c0', '5597f3e82ba37006', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '30f96553d44ea1a5', 'b8314190b17e18d3', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'fb0f41b4b87859b6', '842132307e61e668', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '45ec55680a210010', '6d14990cfc167d91', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '238d49b60f932e3a', '10906977a8735ddd', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '2e266888546e9a57', 'c7ef527eca2a88e6', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '7beab18212ae29e9', '3d7e1b62f8768430', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '26d2429a6a56b890', 'ef19314892cb0b00', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '3fb192fcd3da171c', 'a3cadfbfa8f7a33f', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '5c9317ab7b3b209a', 'fd168eaff833dcba', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '74e987ed48905fc1', 'b91c058e5b27234a', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '17b2da62f6f6e027', '1909b57664381e15', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '0caef94c286bfbb1', '8ef9649871922d1c', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'adfd988bc2502876', '8f9a961982f4c50b', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '079e993ec8758b39', '566248ad315994b4', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '3cbbca580e1ce232', 'b40c9ecb9d114976', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '1fb8ee4819468e19', 'ac46d260f92790bf', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '8f26d245c243e388', '89ffdf810e692776', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '01c43edba061cfe2', '0f506d6cfd649580', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '1064f00a3ef73128', '6946e5a4e2789d69', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, 'f0879c1c1b562762', '40812af21a84b017', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '937945803ac0062d', '91bbcfa70e2efaff', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'ddf11e1edbc0d2c7', '670fb87da04b3da4', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, 'caad722b139b0cc1', '28911ad9ff720bcc', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '0f872294c8c2dd1e', 'fb42a72a8f4c1e3c', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, 'a2346c0831032f6d', '068e871eeb821416', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'd59f024178a08782', '575228b603c95503', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (33, '839a5d0d1dc3b847', '576fa22cfbee933a', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '3412a1df28c2c7e6', '0c2085157332e029', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '9024188ebe1109a7', 'e9dbac9295467fab', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '5f327363be8a0020', 'cd66a51ce0ea776d', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '312c98bd3829b08c', 'cc37c80afde4d3c0', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, 'fb2eb92ee4b73790', 'a3ef9e1932751255', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '10a3e3d6eeca05c5', 'da493727d110d967', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'a92008e0e6b43a3b', 'dbe487854bc0c8da', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'ec4d8eff02bb9cc9', '8e9911221d9e63a7', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '55ce59154355f4a9', 'a89a2c1b699e11d2', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, 'f6fdab68e9c197d3', 'b9bd2c5772cbe620', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'dc47d1d80f9a5669', '39d4ae5db094e88a', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '26d02f31b46f9dbd', '455f7e95de4f3b67', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '798dc6205838df5c', 'c195c10b5b9e2a2e', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '4310e5eb8f7cca03', '15866167824f49ce', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '2f3ff7ecf030a8f1', 'd4fc1b9e85b95e25', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '3f588d72316361f5', 'd4fc1b9e85b95e25', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'e90dbb434f6983cc', '83c81e51abdbf77b', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T12:50:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, 'fb9505deb8643bc4', '83c81e51abdbf77b', 'D020', 1, '2026-03-02T12:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '03905d3ddb65bd73', 'c1d90c69952b5cd7', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T13:55:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '7a3d663e3d1a9bbe', '05054f3813f8098a', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T13:55:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, 'e20d9a1bef674f61', 'e5dd455c9bd35de8', 'W001', 2, '2026-03-02T14:01:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '53244a153c17e81a', '61a1e23b09549f17', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:16:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, 'ce1632e07c13dd82', 1, '9dd7130ce6072353', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'ce1632e07c13dd82', 2, 'c61581174cce77af', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'ce1632e07c13dd82', 3, '1b6c628e34335465', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'ce1632e07c13dd82', 4, '102dfa1a70ac985c', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'ce1632e07c13dd82', 5, '81c5596ebcce1a74', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'ce1632e07c13dd82', 6, '7377096f170969f1', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'ce1632e07c13dd82', 7, '731834fbf5b0b943', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'ce1632e07c13dd82', 8, '567d63255712e3ba', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'ce1632e07c13dd82', 9, '3f1326116d17457c', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'ce1632e07c13dd82', 10, 'fad85b104745a50e', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'ce1632e07c13dd82', 11, '82cd5012b88f4677', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'ce1632e07c13dd82', 12, '190b990063bd337a', 'C-1-2');
INSERT INTO public.stops VALUES (13, '65205183dd91426d', 1, '53f91d54640e47ee', 'A-1-2');
INSERT INTO public.stops VALUES (14, '65205183dd91426d', 2, '12f08637a2699d03', 'C-1-1');
INSERT INTO public.stops VALUES (15, '65205183dd91426d', 3, '887580cf3c62001e', 'C-1-1');
INSERT INTO public.stops VALUES (16, '65205183dd91426d', 4, '2410536d53d8e98c', 'C-1-1');
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
