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
INSERT INTO public.access VALUES (1, 'a2a94f45fa6bac3f579ede5567f5e59d2d16256549bc2ab15aa6db4be57316e3', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$nCOaek8RHwL+fvaB+IF6vQ$6590LOk3OgCJLU1zZXLMO/tW0jDdqwFeKY+e0MsPFUU', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '41e6588f25dc3920abad76badcf4f021887d54ff53d4a46955a201816250ef41', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '706f07c2cf4c88bfeba5fb2d18024254c074ae8a725ae4a64eeed24c3c63bc81', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '7c4c30417cb5e90b4a89d4c7435cc757d266d10a2e5133731410f2e01cebab19', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, 'f3e5c8dba88329c347d33ca56669ef6b14ecfdc53f77ba5bcacbfb9d3acd7ed5', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0006');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/47d30d42d2ad55dd', '{"id": "47d30d42d2ad55dd", "item": "3957dc0e274ed94c", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 171, '76b4b578e53a5df69909d5dac669084e393320b6e8d52fdf81ae0eb1e74d30f1', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": ""}');
INSERT INTO public.items VALUES (3, 'b5c0a681a5957f36', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '5cf7013d130702e9', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, 'e4c986f4ccff8919', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '69fa0ee636fb36c3', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '30a0b335138015ed', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '8838c29116dc4e1a', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '3d9d923cf8776e30', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, 'b20c3acea64d7f3f', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '15eb0d8ce1d21352', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '4197c1b24106aa77', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, '8798a343b5f9fc40', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, 'f45b93d2b00bf28b', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'cbf45973c52442e4', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, '6a5bf8a46e428939', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, '3c99ff4126ed4f85', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '6918f2e30d92730b', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, 'de637adfa7d34818', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '148037d2d372fe9a', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, 'fd5f84dbd01758b9', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, 'a90d670faf6aecbd', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'a2553bf830295339', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, 'ae6436e0043aae90', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '199150048fc18b50', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '49926dce3c4ccefb', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, 'e2be3e338674f0b3', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '1300122ed69a09fc', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '6d79cb8de7b17ea5', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, 'e6c1848e357e53ee', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, 'bf09fc4c253a2f19', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '94ec27d29d08c59f', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, 'b9d399f0b1a6f687', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'a25d87cf004050a0', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '88dd3e9025fda689', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, 'd07b2d8e86a67128', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, '3f2a0aa1e1860d68', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '427985aaa5639a00', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, 'ddf9e604e1248b3f', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '4e71d64f36e9ce41', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '6c510813f46d1132', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, 'ccb5709e7f0a41c5', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, 'e67aad6e5ca5646a', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '38b572601704ed3c', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, '3de578cf091e7184', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '4699202dc0ec0efc', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '5d5237250aea30a6', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, '3957dc0e274ed94c', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'a8fc6ec4527b2feb', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, '0ca6f8009927e8dc', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '47fa2ad743ef64ef', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '7f07e33b9478bc97', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', 'dff5ef8470e60b22', '2557');
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"275fb409d8044cd1","title":"Rear derailleur 1","turn":1}', '2bf07d31e27aa24b204bf292c2d514622294f3cba4f335234a00d2b5d95200d8');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"e60adc8e424d0ef3","title":"Rear derailleur 2","turn":1}', '426ac6f7cd1d7b396d93b4d9c16290306af3f9399dfb5a8e1c5d08e653f731e8');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"1ab9fb8c9eb79d25","title":"Rear derailleur 3","turn":1}', '0e99e231f6be29e41f09b80318a28fc4cc636059a5f7a2711cf816e7fb87e8af');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"caf0ccbfc18ed311","title":"Rear derailleur 4","turn":1}', 'aed02da82b998cbc0d722e32009c91e3abe2e567af746a4d55f6003de9a3ad42');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"e283e9e291125914","title":"Rear derailleur 5","turn":1}', '50ce597b33a8c5f1605612d14e6889bfc2fafb5ca3c4db8151b2f512dd6b81c5');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"590f7c73368109a7","title":"Rear derailleur 6","turn":1}', '9b9d6958a1c074b10753907102c1888f16a49a5d697ac7d8a6ac0bc6e011e1b9');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"13c6acc0fef88f7b","title":"Rear derailleur 7","turn":1}', '70983e7765dd5b5f542e67243be60910420656169e2555d52d6e924e2a557d7d');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"79ea22999c5d4f4b","title":"Rear derailleur 8","turn":1}', 'ded17d14a753c649a3a741916cdc766c9e8bb196e3123ca220ffe4ca23ad2fd4');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"65235baa0a26be66","title":"Rear derailleur 9","turn":1}', '767f496eb6dede179b0fa48e9e4fc082b5247de65473d61491a89b9842d21fff');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"6bfc797b052c6455","title":"Rear derailleur 10","turn":1}', 'aa56fcd4cf8e607877f36338650dbaf1344b18ce3d92646a3990cb23781a714b');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"6bfed34da218f4e4","title":"Rear derailleur 11","turn":1}', '8c5a50d82b85f9d817fd34aa9419ef375e65f5c1102d7fb9fa412d97b50a73ea');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"166470f51bc45da8","title":"Rear derailleur 12","turn":1}', '95e5016beaf39e290fd6af8ba5844107240e7e6c4abb0aab7e42bfa0d4ca47ed');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"060ac82585c1614d","title":"Leather saddle 1","turn":1}', '438ffeec58440b114d38835b05c158830c2b791bc80e39d0aafb6055c932df45');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"34399113d5319e98","title":"Leather saddle 2","turn":1}', '8484373fdbabe903b1593fa27dc194394c5b4d5f3b7f7209dfc8f5e3263620ec');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"fa9138261144b51a","title":"Leather saddle 3","turn":1}', '00df1148609d9ad5142080b93ad3bb8752c2eef2fcb4a61210d59759597e1eba');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"3da439f18ab8b233","title":"Leather saddle 4","turn":1}', 'e65847590286aeae32cc03c596a5494f032586c891b8da496ef3708fb68307d5');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"fc4c2469e4476918","title":"Leather saddle 5","turn":1}', 'fa70060bfcefc2dfddb51c34f4c0ec68aa1c8508f59ed485ab74aaf43cd8cd31');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"ad14f50e1f0909e2","title":"Leather saddle 6","turn":1}', 'b20d0d85a64ded819d6c131024530a8f31642c4cc5dde4fa70fb4fe4585c5f96');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"264dd73b00951449","title":"Leather saddle 7","turn":1}', '7391508d7a2e143cee1e8ce5347f9c90a6d2caa8fc4bb5870edee7acb4fa60e3');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"52680bc60ddcbf2b","title":"Leather saddle 8","turn":1}', 'b5106c08b072b936316bee2080033c6f6634009bfd8362b2d1e630bd82868558');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"fa2580deda7103a1","title":"Leather saddle 9","turn":1}', '1f31bc7e86de30d61e084f7b6da00019ec1c97ddc6dd1062a6cbbb616f149d1c');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"1475ff3d556ab54c","title":"Leather saddle 10","turn":1}', '11bd160809eede4a65d26055390455c15faeebf54bd55fbd822fdbc68dc30eb8');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"5e4363d8dcefc63f","title":"Leather saddle 11","turn":1}', 'b11aab66061a0e335c61845751964d6175b3100f98fab4694b37268879a807fc');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"3b53c9c3ad27bf14","title":"Leather saddle 12","turn":1}', 'ab4672a486639f77a81a2aae36447f7c1ea1f1cd66543876871c231eefa030b7');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"82b81a14cf754f45","title":"Dynamo lamp 1","turn":1}', '1aa360616e97e85fa24977d1b66f346015dabf3402991ab395b3363d398500db');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"9cb652bbd25037e5","title":"Dynamo lamp 2","turn":1}', '0630db226ea01def85481963c222b9194fb2e04d25ee4f5d59ad28be4fe428b8');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"c14b15bd68aba80f","title":"Dynamo lamp 3","turn":1}', 'd282124bfe161ffbe103f2a422be365d61affd40d0629a4927c6d390205692ab');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"8cb8c5dbd3bc6dd9","title":"Dynamo lamp 4","turn":1}', '8595fa5c5715c6c64ce5371694674b1066db0142f85c65b7eea13d191666de27');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"75795c38534e8634","title":"Dynamo lamp 5","turn":1}', '38fc187713e3d86011909b4c5bef286476d4c0d8fbd2b978592be4628ba89ed7');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"a2a0baf5063d67d9","title":"Dynamo lamp 6","turn":1}', '114f923951c70f1abc7448d3b193adedc113a1faed2262479ba2b8321edd1ba6');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"734db75df2343fd6","title":"Dynamo lamp 7","turn":1}', '3243ebfea7ee92bc7cb426ef412828b57c6793c9bd345623671f31fc562c8bb7');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"f415e2c7ff1bcf50","title":"Dynamo lamp 8","turn":1}', '74ae81ca899b2fdcdfffdd179c3a44b62f381e0bd9c5c97a39fe945f0ae659ce');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"79d6258445c4c2da","title":"Dynamo lamp 9","turn":1}', '95337767dcfd41d78f51ef43cb22b62ebeefcdca266012baa0474e70b620d927');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"6475a5c2cc895285","title":"Dynamo lamp 10","turn":1}', '9d6d6ff18a749f396b5bf7eb3cebf7bd2775e64e65380deb9bf949451b1fe359');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"9971ad715fb31968","title":"Dynamo lamp 11","turn":1}', '92a03b1161a7c88a6207ac662a8e8e50526be3ef82d9d7871ea689f6b3c788fe');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"ecb2e76cba06eaae","title":"Dynamo lamp 12","turn":1}', 'acc8315af16c7232295376b334a319860e0179540d0f46e90dd867da2e1e9520');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"5e1136552b16974e","title":"Front wheel 1","turn":1}', '4ac6c26e233b572d9e26b4f318a779558ad46c757063eba422b92ce44239083f');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"d02f65b94015cf06","title":"Front wheel 2","turn":1}', '342646d12074d5f4f205cdf2c30b9dd55a0f5b2a21293593973fcc3b12fb95da');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"d8b8fc5798b15258","title":"Front wheel 3","turn":1}', 'a449cd219397125fe8f6724d1107f2f1dbe43a8a2254879bd5ff1b3b28978fed');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"5f0ab0ceceff7a9e","title":"Front wheel 4","turn":1}', 'ebe1eaf7eefce7a45c2b848f2a7228d64d42140e72436d2ca4c73e4b9969c156');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"f6a1a1cad11df1f7","title":"Front wheel 5","turn":1}', '547b0cd5966af4c8899a4f65d0da4d3cc2dfbf0fa8ea1f2ada8590d8e783d7e5');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"44afae69fc2c4728","title":"Front wheel 6","turn":1}', '96d849c713082dddbc5e4a2a0cd0792035805ea88aa92b01acd781f0f4522421');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"449ff4154d54339a","title":"Front wheel 7","turn":1}', '9ceed69ff5e1f6d19862797b963dbc16a6b55faed5656b27a5dad1ad038de49b');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"1193e945581f6a10","title":"Front wheel 8","turn":1}', 'ca1b4cb56edb0160d73bf6e839c499cdc19c8fc0a90484059993326e15d4120f');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"cff1dcf85bf39bb0","title":"Front wheel 9","turn":1}', '4d09711a41afaf682cfa3fb8992416563d963f99f39554ec69779231bb554b68');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"0aa262a0d3d4a2da","title":"Front wheel 10","turn":1}', 'd25ce5c84a70e3afad90191193a99a7b53a4aa39af7b0ddc872be4a418774985');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"1e77afc05749d29a","title":"Front wheel 11","turn":1}', '70610fc9f8907eee3154d7435872972ae5f37bce52f1acd41f01c3351e112b9f');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"39a37ecb8efaacf3","title":"Front wheel 12","turn":1}', '1ca763892ea79088ce87bd6efa7a1bfb06a093a744f9ea334e980ea52cb3bd4a');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"47d30d42d2ad55dd","title":"Brass bell","turn":1}', 'fb06c7d9d771bc42a7e51b951c4e09bbd75712069dd78235c485d9fa72ea85da');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"e60adc8e424d0ef3"}', '7a6a9bddbe3d90402fb153cff8e1e7385af7a62b1a5ebd4112abd4054f735549');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"1475ff3d556ab54c"}', 'b4f389bc7349395d0d4d747f924c4c2e6590c9fdc8b73a57eb73db1433591ae2');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"5f0ab0ceceff7a9e"}', '9ac9215e3fbcd98f452b3d11ba78f514036c8460f1400e39312eab0f4204f508');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"2883eb49983c4dce","stay":"fa2580deda7103a1","to":"S013"}', '65925595b134e4da94a429479c7345b427e1ff9ae4688c67d762f79e1ac80a65');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"275fb409d8044cd1"}', '516400fa5c9cfec52690bee91df41a57277c16b0d7b02585c2bacc5b86aeef9b');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"060ac82585c1614d"}', '4afc3476970118b6f18415613c762e42dee927d65a3f9499c81e2a838685bc0e');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"check":"none","count_began":"","count_weeks":0,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', 'd4b677f6d9d665062104dc2beb566a006e77c2b9aaad8138f7c30fe0f2098d45');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'f3d00f4de3a2703c745d0df05455326b4b89ea8587b5c1ec72e1301148ca48ed');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', 'aa1a41690c55115f8ec50225f9a85dee9af68184c478d1b9364cd62a2feb3aee');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', 'fba14d16e2b355439822737fbd2921414db3b5a86c52dfcb37d57dcc2762523c');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '78fbbb51f21098a5911e2ebb43651e3354059941fa9c868e55e4eab148ba042f');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"d9dafd43963755c1","reference":"W001-01E","stay":"5e1136552b16974e"},{"hold":null,"line":"e30de09e55804d8e","reference":"W002-016","stay":"d02f65b94015cf06"}],"number":"B-01","order":"3c89acedadc2c3a5"}', '6852a718088d5673f8066c939f0ff96f063617b711dd6123cebd632f9059ae9e');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"6624bf3068b84f5d","reference":"S002-013","stay":"34399113d5319e98"},{"hold":null,"line":"befdeb9846439720","reference":"S003-01W","stay":"fa9138261144b51a"}],"number":"B-03","order":"ace3eff6c658ca64"}', '3147625f8797c38713a3f5a6fa56ada416a84d11939ccb7baab309835b0eafca');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e8c8d140424eb845","reference":"S004-01O","stay":"3da439f18ab8b233"},{"hold":null,"line":"4e3146c8189125df","reference":"S005-01G","stay":"fc4c2469e4476918"}],"number":"B-04","order":"171abd0a26408579"}', 'ae297d422d773ed79295a49b0d3e804e08f7f647028a011e940f6faa8fdc549e');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a760a9bc358c9fd4","reference":"L002-017","stay":"9cb652bbd25037e5"}],"number":"B-05","order":"ac5be10a6bf7b952"}', 'b82c2df084090f1bd45e9823a9d239f2e1a939cd9b672e7a22dd8d39f0825a8c');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"48cd71dd72627954","reference":"L003-010","stay":"c14b15bd68aba80f"}],"number":"B-06","order":"76b36e356770e038"}', '1391610783a553a84f60d2960215d291a250aa4df549475fa96700363b1e0a3a');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ebb896346851b822","reference":"L004-01S","stay":"8cb8c5dbd3bc6dd9"}],"number":"B-07","order":"ca410fe262346321"}', '40513dc96e33b050865d1de66d7c492f029ee2d973971345f5574b07da7bda45');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e8e86a0407a42403","reference":"L005-01K","stay":"75795c38534e8634"}],"number":"B-08","order":"40fb1bcc017a306f"}', 'c0b1d0c2925f41373d0c9fb48ce52802d575b547eaff9b9743e49ee5547fde5e');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"2ceb420ac5d8e122","reference":"L006-01C","stay":"a2a0baf5063d67d9"},{"hold":null,"line":"fe25011a2ed59142","reference":"L011-010","stay":"9971ad715fb31968"}],"number":"B-09","order":"19189cfea3811410"}', '75b36ad6673c18635da7e48ee5f4a32ba3981f8b48181d52820e64a574fa90ad');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"65ba26746c6d502b","reference":"S006-018","stay":"ad14f50e1f0909e2"}],"number":"B-13","order":"ac63d6f2152244b0"}', 'b6218878193dc235ba0cead716cd108e43f206e1fe03ec1f2fc96242462a9549');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"69ab3d870d0a46cd","reference":"L007-014","stay":"734db75df2343fd6"}],"number":"B-17","order":"fa631bc0eaa2c148"}', 'db6e706193a830b680df4dc362f0017fe80e36ab3b40e9a53e625e9836d8a2fb');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"adce14cb81ff3abd","reference":"D009-01B","stay":"65235baa0a26be66"}],"number":"B-18","order":"89717aa1e02141e1"}', '741e0bb3df88d9409782d0b2eb3124834558c90c4c9b331dabe97ceb01ef0428');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"58ee716dc6bc83e3","reference":"W006-013","stay":"44afae69fc2c4728"}],"number":"B-21","order":"497401402043db43"}', '449baeec1f800f5ccf6f514dc365de31becfba5baf2b7816deceed16b1fb0f21');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"7625ff3ea63e4ca1","reference":"S007-01Z","stay":"264dd73b00951449"}],"number":"B-22","order":"ee6d69c93fc06ccd"}', '266b555cf8ecec8cb10c1cc7fbc787f4695cbbfaaa6edfb75eb6f878c8f38aab');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a23c992ad4764553","reference":"W007-01W","stay":"449ff4154d54339a"},{"hold":null,"line":"9f78024e09802ef3","reference":"W008-01O","stay":"1193e945581f6a10"}],"number":"B-23","order":"ae0332df5643fdde"}', 'c3b721ba504484f098810ace80c3685e933f9193786286bcecd85113423d4606');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"341733e40e2a193d","reference":"D008-01J","stay":"79ea22999c5d4f4b"}],"number":"B-26","order":"5c80189ec4323461"}', 'fd2d73dd296a088c943044d59d3c58ded650ceaab223f4f7d14aeb9f232d07d0');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a73de119ebb796a1","reference":"D003-01U","stay":"1ab9fb8c9eb79d25"}],"number":"B-30","order":"33ee28da65ea696f"}', 'f31367c50ba3de1a365e323a7d86ca891496b51e68963cb6b605cfe0f4768308');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a83912452977ecb3","reference":"D005-01E","stay":"e283e9e291125914"},{"hold":"unknown_code","line":"764c672ff3de8887","reference":"Z999","stay":null}],"number":"B-31","order":"1bdc9b91b0c2849b"}', 'eced395e21c80bb32e8945ac1c5e64272fd8be42f45cc284b5565744dbd48963');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"33c6624c3d6d74c3","reference":"D006-016","stay":"590f7c73368109a7"},{"hold":null,"line":"48ba5a9c2524a6cc","reference":"D007-01R","stay":"13c6acc0fef88f7b"}],"number":"B-32","order":"1a1d15c0f59f3980"}', 'f4902fa15679deefb7f2f87847806b4263dd85fba1a4c37daa0299e4cbd743a1');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"48ba5a9c2524a6cc","reference":"D007-01R","stay":"13c6acc0fef88f7b"}],"number":"B-32","order":"1a1d15c0f59f3980"}', 'd2558e28eb3a99b2c00743593bce18688b91596b4a5c1fcc07ba16c6c0641b37');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"9abf48a39e2efea2","reference":"lamp","stay":null}],"number":"B-33","order":"3f23f329ae2f8a00"}', '048c3fd66cd393ba7fdd598e48b33c9e22a64e3c87206ad1fbb89d11aac1b838');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"af93116de804f43a","reference":"D006-016","stay":null}],"number":"B-34","order":"f1988a0e251e231d"}', 'd9ed43200309ed3ee46ff35552839d32566305b2d4d3495b30c04937ec20b3f0');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"6efab1fcab270a7a","reference":"W004-01J","stay":null}],"number":"B-35","order":"4fe09cbf910e1ed8"}', 'fd093bd901a595040e5c227884ecba2867adedeb185b48939dc9522ca38c4293');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"3579f37b968e0e27","reference":"L015","stay":null}],"number":"B-36","order":"cf3f7780c7d1d7f6"}', '53378ad63cf60d76068f312e78f323c8ba5e114d8a2f0cedd87f0f1ad916591c');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"43d5e4132094790b","reference":"W005-01B","stay":"f6a1a1cad11df1f7"}],"number":"B-37","order":"0b79dfd5d55333c9"}', 'ec7f6808794eed88b2c8ef335023d5213529bae61de1059f189515e82061e876');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"43d5e4132094790b","stay":"f6a1a1cad11df1f7"}', 'fbb6f639add8efc09a7df9936fa070e79313835c81ee1c6d5a1e42759a9043d6');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"69ab3d870d0a46cd","why":"Another lamp, by the photo"}', '58aeb2b8aab083b6e6e7c1538f308bffa0a0da7b8b8802e4377fac4ba8230c55');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["e8e86a0407a42403"],"number":"B-08","order":"40fb1bcc017a306f"}', '6f1c717773e6504ef07f169732add503ac8380eed0a76bf2588329a8117aa055');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["58ee716dc6bc83e3"],"number":"B-21","order":"497401402043db43"}', 'bf0b7d23354b2a949c30394a6ed8575802f5825791231d0b7401d37410c4a06f');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"58ee716dc6bc83e3","stay":"44afae69fc2c4728"}', '64df46fc76fe448f81d0da42b1c29d81f38b3dd241a1b107eddfdc936cac0526');
INSERT INTO public.ledger VALUES (102, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"c3b1e4d234c7defe","stay":"79ea22999c5d4f4b","to":"D020"}', '9f76a7f56bf1be090f43582cdc63edeab034a90f85370337966a69db125d8a56');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"08d66bc72b0316ec","reference":"S012-01O","stay":"3b53c9c3ad27bf14"}],"number":"F-1","order":"a54f56f71a39f0a2"}', '5494dce57a894ca9ecc53dbd6a42139bc6dc04cb8a3a85542b3f7add7cb62b8b');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"f9e4571ce02a1b95","reference":"","stay":null}],"number":"F-2","order":"5b04f5e400734025"}', '81bada23527beb3e1ce12ed882709ab70addb223af82409c9583018008b0e41b');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["d9dafd43963755c1","e30de09e55804d8e","6624bf3068b84f5d","befdeb9846439720","e8c8d140424eb845","4e3146c8189125df","2ceb420ac5d8e122","fe25011a2ed59142","65ba26746c6d502b","7625ff3ea63e4ca1","a23c992ad4764553","9f78024e09802ef3"],"round":"adb145a736916de2"}', '42e734bed9987a115d42e9d8144288990b8f16d2557a10a55dc47c73b3209b5f');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'bd4bea4ee203b3335a5eaba2a03bf4ef03b49076024d8ea18777d4e1e77e0f33');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"d9dafd43963755c1","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '64cba358e65b1d5dafbf0abc4155e921874d139752d89c144e17eb0b3ae39f22');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"e30de09e55804d8e","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '4df9f0dc1aaf1a1c44f22354aa991ba6f3c94fdc7d67ddab7411be72dbe0a86f');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"6624bf3068b84f5d","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'ca4e4a67ea60007b4bfbcea9f9659d60070fca107315fe96ab726fd155071510');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"befdeb9846439720","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '7e73cbc82993a8de8ea112996ea27d00155250309bedba2fc058af31e7fca756');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"e8c8d140424eb845","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'b668c1dcd22753bd3c4599e59361fc9e2d3cd11c328ac591de02c8b149ccf63b');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"4e3146c8189125df","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '97ae6663c813c66a69e45bb3f4173591aaae5841f986eea96d029f937fc92275');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"2ceb420ac5d8e122","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '2f8bc8ccb8ed94b76e771b44807852e06b909793c764f494c8f5730ac8edd220');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"fe25011a2ed59142","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'd28ee1c6a88f29d01699da14ffdcb1b3c2d1bfd9a2da09424178cc2b4df800fd');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"65ba26746c6d502b","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '19a8095343ecdebf24152b9826fd9a8de77c17903ed7d40d49c3528cf824991a');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"7625ff3ea63e4ca1","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '4132a7c9661c36e74fef13468d3dae3a6aa80a83a109573662f026de6fe86a43');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"a23c992ad4764553","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '564ece62169272a2c168607eb9b562c2cf2207dde98366bd8bf31ee95409bdb3');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"9f78024e09802ef3","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"adb145a736916de2","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'b9f8091fa91de263c7145348470eeaa65206519eaf1596ee91b6102085e81a74');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"9f78024e09802ef3","line_state":"waiting"}', '4b1b258d959088a4be1029fe21e2b3e0c5ed80ce737dfb571e775e8c403d477a');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"round":"adb145a736916de2"}', 'd8da9ec89ea103fa50ff31bf5a4e1012bb852fab41ca9b7582c8fc2d93717df3');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["3c89acedadc2c3a5"],"parcel":"dff5ef8470e60b22","table":"main"}', '6eb38fa809cb4669b3087b7c6ed11ac69101b410661e48a338817eeaf1916e49');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"6624bf3068b84f5d","line_state":"picked","order_number":"B-03","parcel":"dff5ef8470e60b22","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'f166c286a70c36114af26874dab470bd6bc0909c6cc18bbbadf5bf551964079d');
INSERT INTO public.ledger VALUES (123, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"d9dafd43963755c1","line_state":"packed","order_number":"B-01","parcel":"dff5ef8470e60b22","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '84f6e1ea26f38e1b4193adf051f114fffdbddf6314bc866c957bb0a7de4f3afc');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["3c89acedadc2c3a5"],"parcel":"dff5ef8470e60b22","released":["W001","W002"]}', '31b4d3454b7cc84d4db88451e8a625e86346bd97a0ec107b89be377a73d6bec2');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"e30de09e55804d8e","line_state":"released","order_number":"B-01","parcel":"dff5ef8470e60b22","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'b619bad4bfa03f0f7d26a62ae46038829c4583b7dc755f2bd51fe0f76e51634c');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"d9dafd43963755c1","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '3579930ade546a9ccc569fb189856dbeea1e6e36be23eed76227e7ec4c6f18d8');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"5e4834d332c0b58b","title":"Rear wheel","turn":2}', '74a800282e3c90b8daf0d407a10b3bbf11f740c126a33551c1d06f882b407d8a');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"dff5ef8470e60b22"}', 'a1c1989a8f9909e53be646ef4f4a580bc6cee57e14f1efe62b91361cb0fa0d5e');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["ae0332df5643fdde"],"parcel":"620b8428f1f83aad","table":"main"}', '0347e1054c9cf28e7b74cbbc1a8480342cfd26b305d5f178537410d338a5f4f3');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"a23c992ad4764553","line_state":"packed","order_number":"B-23","parcel":"620b8428f1f83aad","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '6742e6ea28313f7d293c64e0a036667e4051fb566bae4dc6ae69669928f70290');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["ae0332df5643fdde"],"parcel":"620b8428f1f83aad","released":["W007"]}', 'ca21f7ab3265a64c185d4dabe22b55c6508d8141ed5108fa0ba2cae143f56022');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["ae0332df5643fdde"],"parcel":"620b8428f1f83aad"}', '16441e217baa7ba72362b9cd8834017283f093d0675f063a6fb7f1e11452fea4');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["ae0332df5643fdde"],"parcel":"620b8428f1f83aad","released":["W007"]}', '0b7244594bcca9a6b9f81694bfe3a378e56e396ee4d8356999725845fcd04ae8');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["ee6d69c93fc06ccd"],"parcel":"876822450ac50c7a","table":"main"}', 'c7613531201a8e837e0f82888d78be5a22d2fb139120a94a963fec55c68b04ad');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"876822450ac50c7a"}', '6605ce959f780dcb6b689968814813814c8030980a14623d778030db1851f27b');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["171abd0a26408579"],"parcel":"c95714841b39c4a5","table":"main"}', '049cd4a546f39245bea6e63c654f8674d0391f0db72169df40533f9999d3b649');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"e8c8d140424eb845","line_state":"packed","order_number":"B-04","parcel":"c95714841b39c4a5","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'ee31c6d7ad79e9e57bcef151fe725b74a58eb7f147536e4c40e67ad69035bfde');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"c95714841b39c4a5"}', 'c7b5020c3f9f4c6d6c612fce77a35badab305a9d6229679e15e1451baa1dd395');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["19189cfea3811410"],"parcel":"78255d5cec9194dc","table":"second"}', 'a67e5c5703ba1e597f21d9797db55c950b69387f4b38bb6a6c92e0a2acd94bc2');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"2ceb420ac5d8e122","line_state":"packed","order_number":"B-09","parcel":"78255d5cec9194dc","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '3318b100735282d07b5f33dd33f7d3e35950f0317eeefd1c828f8c91417c4233');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["2ceb420ac5d8e122","fe25011a2ed59142"],"number":"B-09","order":"19189cfea3811410"}', 'b897400925d0cf0d238276337bab385915f0ae9aaf0fa23e8964891b1cdc8b7b');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["ace3eff6c658ca64"],"parcel":"1c69a2f37f245fc4","table":"main"}', 'f02be18f53e797e5507fb504b6a0d90ff20100f2bc06ee17451751c61852c25b');
INSERT INTO public.ledger VALUES (143, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"6624bf3068b84f5d","line_state":"packed","order_number":"B-03","parcel":"1c69a2f37f245fc4","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '7569e7b1b5efc4bd63a6327d7fcc585d3f2e6553e41ee769a3ad102b647562e4');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"65ba26746c6d502b","reference":"S006-018","stay":"ad14f50e1f0909e2"}],"number":"B-13","order":"ac63d6f2152244b0"}', '273ec25e5f202bebd3ee304c1d698ed5d6b7071c8e7a277139cb8d3c0b727ab0');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["a760a9bc358c9fd4","48cd71dd72627954","ebb896346851b822","341733e40e2a193d"],"round":"ae718b938e19ca9c"}', 'f788add2289b4f66ca2a0bbc88d8afeac403d489a277a008d695181fccd0aac5');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"a760a9bc358c9fd4","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ae718b938e19ca9c","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '085a8939d997f001f448dddbe14a50b1915d235ae60572d3081541a0129f2b53');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"ebb896346851b822","note":"Not in its bin"}', '4188a3fdf69a0f3582d835f0ccf4bcd5dfba4856ebac23fab4fb79a382c4c774');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"ae718b938e19ca9c","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '3998853c33c774c3f52a51012956718721a6191c43601fd81347a6a84761bbb9');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"ae718b938e19ca9c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '775bc12347e9ea4bb2d4ca1c949ba225a7be6b045979d12628871a240521a0ca');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"ae718b938e19ca9c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '256ec1c8afb11992569aee94ee3e4dcde059496522ed132fe4232c255a934125');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', 'c277b738209680d8aedcdde18361ab9aef05a611a093d005ca7046c02b0e9271');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', 'abee8eea6e6376f03b469d20674b3a38761ebc6a3a86c062a94de936c9f34b33');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"c829d9e8f65314e2","reference":"D001-019","stay":"275fb409d8044cd1"},{"hold":"already_sold","line":"b5d313656f169ddc","reference":"W002-016","stay":null}],"number":"B-38","order":"63ce9766f83a0de4"}', 'fac90c24ced2e29f5b7fb0f200f4d3bdfe3b0fdb2f9976aa276b8797b93606ef');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"51e790fa0075a5bd","reference":"W001","stay":null}],"number":"B-39","order":"1c50fdaa90d0edf5"}', '389ef15da397742a4e69bbb2de56ac091e7d23f1f324891a1bf05c907b470076');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:39:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:S","note":"Spring","stocktake":"8bcd34674dd10f07"}', '9e6d66af173a0ffc7cf9a9115073ddb4015b171f2175bac0cc6475d5dd26be66');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:46:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"8bcd34674dd10f07","unread":0}', 'ff0e51a4f9898f343318cba5c461c6032d3678b198e72304428df5c9d0de4b43');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:54:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"8bcd34674dd10f07","unread":0}', 'f4e1a9c6cb7c9b9aaa1592bf458993497574e592bba701341239d0afa0ae9988');
INSERT INTO public.ledger VALUES (158, '2026-03-02T16:00:00.000000+00:00', 'finding resolved', 'owner', '{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"8bcd34674dd10f07","sure":false}', 'ecb39726ba47f0ca958fe526c486d5c97dd71ee8e07de3d5086583bb3a397623');
INSERT INTO public.ledger VALUES (159, '2026-03-02T16:03:00.000000+00:00', 'finding resolved', 'owner', '{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"8bcd34674dd10f07","sure":false}', 'a184a1bd8d8579e343e9a541ceee2eb733c8662605a741ec8fd700f4ced857aa');
INSERT INTO public.ledger VALUES (160, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'owner', '{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"8bcd34674dd10f07","sure":false}', 'ffae1daed6de8e76d9766b0de3a802e749ce63a85df2fd4a522d06e8109b487b');
INSERT INTO public.ledger VALUES (161, '2026-03-02T16:09:00.000000+00:00', 'finding reopened', 'owner', '{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"8bcd34674dd10f07"}', '225634fb01f9abaf0ab3b8fa26124ff4f5029c28a126256f53f245bd5a5e7909');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:12:00.000000+00:00', 'stocktake closed', 'owner', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"8bcd34674dd10f07"}', '0673bf97e415e6d21c3a6e114f308bc986b50154ec8a5c37562c02db8302896e');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:15:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:L","note":"Spring","stocktake":"56f7306682046d85"}', '400cfcfc2c9cdce2a6251c01da00508a42a1178bbae3fe730a78c15edc8f5598');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:22:00.000000+00:00', 'looked', 'owner', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"56f7306682046d85","unread":0}', '8bd297a2b23bb492e68c7ba6b4108466202af026803f97448a5b8bd851b538ec');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:25:00.000000+00:00', 'card lost', 'owner', '{"code":"L008"}', 'd4ec0d23f1cc48b6120bef4fdada0336b984d02447ea8cfe64e2e1d4ef81c38c');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:25:00.000000+00:00', 'finding resolved', 'owner', '{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"56f7306682046d85","sure":false}', '3ae1ee57f475ecc473d61ea55743169aff7a539be96fbae711328631297e4941');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:28:00.000000+00:00', 'withdrawn', 'owner', '{"code":"L009","reason":"Nowhere to be found","stay":"79d6258445c4c2da"}', 'fa5c14c783e9c11c0bbc9246341e83510d46d1264b5175d3f5004b763137ddec');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:28:00.000000+00:00', 'finding resolved', 'owner', '{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"56f7306682046d85","sure":false}', '7ed2084f5248ff472e14f95fb6e7469df540f6ab9f9b993058a09677b1869f36');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:31:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:D","note":"","sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"26cceef7b5573195"}', '766458e34bf580f26ef28cb7b6f272dbe7c34a3a425ee921b44d7ce0a712530d');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:34:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"tray","note":"Too late today","stocktake":"e0a70adfcb6ced5c"}', 'c9ad3ea1eed2dd95372b0ca222ad70e0d460e804e7908220231894e90a5e3e6a');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:37:00.000000+00:00', 'stocktake cancelled', 'owner', '{"stocktake":"e0a70adfcb6ced5c"}', '76b4b578e53a5df69909d5dac669084e393320b6e8d52fdf81ae0eb1e74d30f1');
INSERT INTO public.lines VALUES (15, 'adce14cb81ff3abd', '89717aa1e02141e1', 1, 'D009-01B', 'Rear derailleur 9', '', '65235baa0a26be66', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, 'a73de119ebb796a1', '33ee28da65ea696f', 1, 'D003-01U', 'Bell with a crown', '', '1ab9fb8c9eb79d25', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, 'a83912452977ecb3', '1bdc9b91b0c2849b', 1, 'D005-01E', 'Rear derailleur 5', '', 'e283e9e291125914', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, '764c672ff3de8887', '1bdc9b91b0c2849b', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, '33c6624c3d6d74c3', '1a1d15c0f59f3980', 1, 'D006-016', 'Rear derailleur 6', '', '590f7c73368109a7', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, '48ba5a9c2524a6cc', '1a1d15c0f59f3980', 2, 'D007-01R', 'Rear derailleur 7', '', '13c6acc0fef88f7b', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, '9abf48a39e2efea2', '3f23f329ae2f8a00', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, 'af93116de804f43a', 'f1988a0e251e231d', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, '6efab1fcab270a7a', '4fe09cbf910e1ed8', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, '3579f37b968e0e27', 'cf3f7780c7d1d7f6', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '43d5e4132094790b', '0b79dfd5d55333c9', 1, 'W005-01B', 'Bell with a crown', '', 'f6a1a1cad11df1f7', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, '69ab3d870d0a46cd', 'fa631bc0eaa2c148', 1, 'L007-014', 'Dynamo lamp 7', '', '734db75df2343fd6', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, 'e8e86a0407a42403', '40fb1bcc017a306f', 1, 'L005-01K', 'Dynamo lamp 5', '', '75795c38534e8634', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, '58ee716dc6bc83e3', '497401402043db43', 1, 'W006-013', 'Front wheel 6', '', '44afae69fc2c4728', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, '08d66bc72b0316ec', 'a54f56f71a39f0a2', 1, 'S012-01O', '', '', '3b53c9c3ad27bf14', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, 'f9e4571ce02a1b95', '5b04f5e400734025', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, 'a23c992ad4764553', 'ae0332df5643fdde', 1, 'W007-01W', 'Front wheel 7', '', '449ff4154d54339a', 'released', NULL, '', '620b8428f1f83aad', 'adb145a736916de2', 7, NULL, true);
INSERT INTO public.lines VALUES (5, 'e8c8d140424eb845', '171abd0a26408579', 1, 'S004-01O', 'Leather saddle 4', '', '3da439f18ab8b233', 'packed', NULL, '', 'c95714841b39c4a5', 'adb145a736916de2', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, '4e3146c8189125df', '171abd0a26408579', 2, 'S005-01G', 'Leather saddle 5', '', 'fc4c2469e4476918', 'picked', NULL, '', NULL, 'adb145a736916de2', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, '2ceb420ac5d8e122', '19189cfea3811410', 1, 'L006-01C', 'Dynamo lamp 6', '', 'a2a0baf5063d67d9', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', '78255d5cec9194dc', 'adb145a736916de2', 4, NULL, true);
INSERT INTO public.lines VALUES (12, 'fe25011a2ed59142', '19189cfea3811410', 2, 'L011-010', 'Dynamo lamp 11', '', '9971ad715fb31968', 'cancelled', NULL, '', NULL, 'adb145a736916de2', 4, NULL, true);
INSERT INTO public.lines VALUES (3, '6624bf3068b84f5d', 'ace3eff6c658ca64', 1, 'S002-013', 'Leather saddle 2', '', '34399113d5319e98', 'packed', NULL, '', '1c69a2f37f245fc4', 'adb145a736916de2', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, 'befdeb9846439720', 'ace3eff6c658ca64', 2, 'S003-01W', 'Leather saddle 3', '', 'fa9138261144b51a', 'picked', NULL, '', NULL, 'adb145a736916de2', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '7625ff3ea63e4ca1', 'ee6d69c93fc06ccd', 1, 'S007-01Z', 'Leather saddle 7', '', '264dd73b00951449', 'picked', NULL, '', NULL, 'adb145a736916de2', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, '9f78024e09802ef3', 'ae0332df5643fdde', 2, 'W008-01O', 'Front wheel 8', '', '1193e945581f6a10', 'waiting', NULL, '', NULL, 'adb145a736916de2', 7, NULL, true);
INSERT INTO public.lines VALUES (1, 'd9dafd43963755c1', '3c89acedadc2c3a5', 1, 'W001-01E', 'Front wheel 1', '', '5e1136552b16974e', 'released', NULL, '', 'dff5ef8470e60b22', 'adb145a736916de2', 1, NULL, true);
INSERT INTO public.lines VALUES (2, 'e30de09e55804d8e', '3c89acedadc2c3a5', 2, 'W002-016', 'Front wheel 2', '', 'd02f65b94015cf06', 'released', NULL, '', 'dff5ef8470e60b22', 'adb145a736916de2', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '65ba26746c6d502b', 'ac63d6f2152244b0', 1, 'S006-018', 'Saddle with springs', '', 'ad14f50e1f0909e2', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, 'adb145a736916de2', 5, NULL, true);
INSERT INTO public.lines VALUES (20, '341733e40e2a193d', '5c80189ec4323461', 1, 'D008-01J', 'Rear derailleur 8', '', 'c3b1e4d234c7defe', 'waiting', NULL, '', NULL, 'ae718b938e19ca9c', 4, NULL, true);
INSERT INTO public.lines VALUES (8, '48cd71dd72627954', '76b36e356770e038', 1, 'L003-010', 'Dynamo lamp 3', '', 'c14b15bd68aba80f', 'waiting', NULL, '', NULL, 'ae718b938e19ca9c', 2, NULL, true);
INSERT INTO public.lines VALUES (7, 'a760a9bc358c9fd4', 'ac5be10a6bf7b952', 1, 'L002-017', 'Dynamo lamp 2', '', '9cb652bbd25037e5', 'picked', NULL, '', NULL, 'ae718b938e19ca9c', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, 'ebb896346851b822', 'ca410fe262346321', 1, 'L004-01S', 'Dynamo lamp 4', '', '8cb8c5dbd3bc6dd9', 'short', NULL, '', NULL, 'ae718b938e19ca9c', 3, NULL, true);
INSERT INTO public.lines VALUES (33, 'c829d9e8f65314e2', '63ce9766f83a0de4', 1, 'D001-019', 'Rear derailleur 1', '', '275fb409d8044cd1', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, 'b5d313656f169ddc', '63ce9766f83a0de4', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '51e790fa0075a5bd', '1c50fdaa90d0edf5', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '8bcd34674dd10f07', 'B-1-1', '2026-03-02T15:46:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '8bcd34674dd10f07', 'B-1-2', '2026-03-02T15:54:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '56f7306682046d85', 'C-1-1', '2026-03-02T16:22:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'ac5be10a6bf7b952', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, '76b36e356770e038', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, 'ca410fe262346321', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '40fb1bcc017a306f', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, 'ac63d6f2152244b0', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'fa631bc0eaa2c148', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, '89717aa1e02141e1', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '497401402043db43', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '5c80189ec4323461', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '33ee28da65ea696f', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '1bdc9b91b0c2849b', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, '1a1d15c0f59f3980', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '3f23f329ae2f8a00', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, 'f1988a0e251e231d', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, '4fe09cbf910e1ed8', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, 'cf3f7780c7d1d7f6', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '0b79dfd5d55333c9', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, 'a54f56f71a39f0a2', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '5b04f5e400734025', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, '3c89acedadc2c3a5', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, 'ae0332df5643fdde', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, 'ee6d69c93fc06ccd', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '171abd0a26408579', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'c95714841b39c4a5');
INSERT INTO public.orders VALUES (8, '19189cfea3811410', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '78255d5cec9194dc');
INSERT INTO public.orders VALUES (2, 'ace3eff6c658ca64', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '1c69a2f37f245fc4');
INSERT INTO public.orders VALUES (26, '63ce9766f83a0de4', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, '1c50fdaa90d0edf5', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, 'dff5ef8470e60b22', 'main', '3c89acedadc2c3a5', '2026-03-02T13:56:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '620b8428f1f83aad', 'main', 'ae0332df5643fdde', '2026-03-02T14:19:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, '876822450ac50c7a', 'main', 'ee6d69c93fc06ccd', '2026-03-02T14:34:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, 'c95714841b39c4a5', 'main', '171abd0a26408579', '2026-03-02T14:40:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, '78255d5cec9194dc', 'second', '19189cfea3811410', '2026-03-02T14:49:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '1c69a2f37f245fc4', 'main', 'ace3eff6c658ca64', '2026-03-02T14:58:00.000000+00:00', 'open');
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '8bcd34674dd10f07.elsewhere-S012', '8bcd34674dd10f07', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'put_right', '', 'owner', '2026-03-02T16:00:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '8bcd34674dd10f07.unknown-Q0771', '8bcd34674dd10f07', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'ignore', 'A neighbour''s', 'owner', '2026-03-02T16:03:00.000000+00:00', '{"before": {}, "after": {}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '56f7306682046d85.missing-L008', '56f7306682046d85', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'lost', '', 'owner', '2026-03-02T16:25:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '56f7306682046d85.missing-L009', '56f7306682046d85', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'withdraw', 'Nowhere to be found', 'owner', '2026-03-02T16:28:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'adb145a736916de2', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'ae718b938e19ca9c', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '712efd5721e4512e5a775e35f2217f69ac97123e3e0a7caece01ab26e31a9566', 'bin', 'adb145a736916de2', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '6122d0d192323ad02482c2c01b93ec5f12b83684511842c4d3cb00c4be7f752f', 'bin', 'adb145a736916de2', 'W001', false, true, true, 'd9dafd43963755c1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "3c89acedadc2c3a5", "order_number": "B-01", "line": "d9dafd43963755c1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', '5a616f35fd0ddfe29b17e8eeff71ef660bd92eae9bd1e52deb0ffa95f2693285', 'bin', 'adb145a736916de2', 'W002', false, true, true, 'e30de09e55804d8e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "3c89acedadc2c3a5", "order_number": "B-01", "line": "e30de09e55804d8e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', '37251853d4cc6f498bd29372d481ad3a6131fde286898bc16b8f7e91501b63b4', 'bin', 'adb145a736916de2', 'S002', false, true, true, '6624bf3068b84f5d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "ace3eff6c658ca64", "order_number": "B-03", "line": "6624bf3068b84f5d", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '11688ff2f03df30cb82f30b8f3e6ed05fc13420494b898070901f7d9d3339c03', 'bin', 'adb145a736916de2', 'S003', false, true, true, 'befdeb9846439720', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "ace3eff6c658ca64", "order_number": "B-03", "line": "befdeb9846439720", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '7bd1c362459723ca1ae5da424b8e398a817287ac8382a419868cbf853d36b98b', 'bin', 'adb145a736916de2', 'S004', false, true, true, 'e8c8d140424eb845', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "171abd0a26408579", "order_number": "B-04", "line": "e8c8d140424eb845", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'ab6f20db0a42e895324bb2fe1a6bb064973b9ea8ad632bc7fac845e6f02451e6', 'bin', 'adb145a736916de2', 'S005', false, true, true, '4e3146c8189125df', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "171abd0a26408579", "order_number": "B-04", "line": "4e3146c8189125df", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', '8491ca53b896a3dfe49cee31deee8a022aea282bfbe1e8f15e407fc1f9e3a8c0', 'bin', 'adb145a736916de2', 'L006', false, true, true, '2ceb420ac5d8e122', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "19189cfea3811410", "order_number": "B-09", "line": "2ceb420ac5d8e122", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'ffdc11ee7b29deae04316e9af93d1d28a5749bc50f01c2592f6f331e98ef5030', 'bin', 'adb145a736916de2', 'L011', false, true, true, 'fe25011a2ed59142', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "19189cfea3811410", "order_number": "B-09", "line": "fe25011a2ed59142", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', '95da16cc5255656e7203434fece9127fa6e1a8ac2f3b0a53701513dc008e574f', 'bin', 'adb145a736916de2', 'S006', false, true, true, '65ba26746c6d502b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "ac63d6f2152244b0", "order_number": "B-13", "line": "65ba26746c6d502b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'e7d56f76642870f185bc7009147d27c6482c3548014ea727bcb20d5efa17369f', 'bin', 'adb145a736916de2', 'S007', false, true, true, '7625ff3ea63e4ca1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "ee6d69c93fc06ccd", "order_number": "B-22", "line": "7625ff3ea63e4ca1", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'ed0e465e74dff9f199fa20f4749736928cdbcc69d6adc7364e9a9ca670daa9f3', 'bin', 'adb145a736916de2', 'W007', false, true, true, 'a23c992ad4764553', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ae0332df5643fdde", "order_number": "B-23", "line": "a23c992ad4764553", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', '85f2fccfb22e97b82d48e5859d74bd402e3d8b2679aae8154a70f8491e2ef1a1', 'bin', 'adb145a736916de2', 'W008', false, true, true, '9f78024e09802ef3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "ae0332df5643fdde", "order_number": "B-23", "line": "9f78024e09802ef3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '6624bf3068b84f5d', 'dff5ef8470e60b22', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "ace3eff6c658ca64", "order_number": "B-03", "line": "6624bf3068b84f5d", "line_state": "picked", "order_state": "picking", "parcel": "dff5ef8470e60b22", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'd9dafd43963755c1', 'dff5ef8470e60b22', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "3c89acedadc2c3a5", "order_number": "B-01", "line": "d9dafd43963755c1", "line_state": "packed", "order_state": "picking", "parcel": "dff5ef8470e60b22", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'e30de09e55804d8e', 'dff5ef8470e60b22', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "3c89acedadc2c3a5", "order_number": "B-01", "line": "e30de09e55804d8e", "line_state": "released", "order_state": "released", "parcel": "dff5ef8470e60b22", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'd9dafd43963755c1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "3c89acedadc2c3a5", "order_number": "B-01", "line": "d9dafd43963755c1", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'a23c992ad4764553', '620b8428f1f83aad', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ae0332df5643fdde", "order_number": "B-23", "line": "a23c992ad4764553", "line_state": "packed", "order_state": "waiting", "parcel": "620b8428f1f83aad", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'e8c8d140424eb845', 'c95714841b39c4a5', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "171abd0a26408579", "order_number": "B-04", "line": "e8c8d140424eb845", "line_state": "packed", "order_state": "picking", "parcel": "c95714841b39c4a5", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '2ceb420ac5d8e122', '78255d5cec9194dc', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "19189cfea3811410", "order_number": "B-09", "line": "2ceb420ac5d8e122", "line_state": "packed", "order_state": "picking", "parcel": "78255d5cec9194dc", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '6624bf3068b84f5d', '1c69a2f37f245fc4', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "ace3eff6c658ca64", "order_number": "B-03", "line": "6624bf3068b84f5d", "line_state": "packed", "order_state": "picking", "parcel": "1c69a2f37f245fc4", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'fad20ca88aca6d3ebb9a6c393898bf6803c975040768ccebfa5893fa1125f755', 'bin', 'ae718b938e19ca9c', 'L002', false, true, true, 'a760a9bc358c9fd4', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "ac5be10a6bf7b952", "order_number": "B-05", "line": "a760a9bc358c9fd4", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '56f0df9974702816c4cc641b1a5cfe9c00ac2cc654238ca5b4b0306000515750', 'bin', 'ae718b938e19ca9c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '1266a0c5eb041e3b5d9345692de2299b3164af096188596ac16709b8d344f98a', 'bin', 'ae718b938e19ca9c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '0af6d7d600f70ff0f4bd7d2ae4885c175a102531f537e42c3da00f8821f1af36', 'bin', 'ae718b938e19ca9c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, '275fb409d8044cd1', '0ca6f8009927e8dc', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, 'e60adc8e424d0ef3', 'a8fc6ec4527b2feb', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '1ab9fb8c9eb79d25', 'b5c0a681a5957f36', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, 'caf0ccbfc18ed311', '5cf7013d130702e9', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'e283e9e291125914', 'e4c986f4ccff8919', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '590f7c73368109a7', '69fa0ee636fb36c3', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '13c6acc0fef88f7b', '30a0b335138015ed', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '65235baa0a26be66', '3d9d923cf8776e30', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '6bfc797b052c6455', 'b20c3acea64d7f3f', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '6bfed34da218f4e4', '15eb0d8ce1d21352', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '166470f51bc45da8', '4197c1b24106aa77', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '060ac82585c1614d', '47fa2ad743ef64ef', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '34399113d5319e98', '8798a343b5f9fc40', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, 'fa9138261144b51a', 'f45b93d2b00bf28b', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '3da439f18ab8b233', 'cbf45973c52442e4', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'fc4c2469e4476918', '6a5bf8a46e428939', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, 'ad14f50e1f0909e2', '3c99ff4126ed4f85', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '264dd73b00951449', '6918f2e30d92730b', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '52680bc60ddcbf2b', 'de637adfa7d34818', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '5e4363d8dcefc63f', 'a90d670faf6aecbd', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '3b53c9c3ad27bf14', 'a2553bf830295339', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '82b81a14cf754f45', 'ae6436e0043aae90', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '9cb652bbd25037e5', '199150048fc18b50', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'c14b15bd68aba80f', '49926dce3c4ccefb', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '8cb8c5dbd3bc6dd9', 'e2be3e338674f0b3', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '75795c38534e8634', '1300122ed69a09fc', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'a2a0baf5063d67d9', '6d79cb8de7b17ea5', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '734db75df2343fd6', 'e6c1848e357e53ee', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'f415e2c7ff1bcf50', 'bf09fc4c253a2f19', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '6475a5c2cc895285', 'b9d399f0b1a6f687', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '9971ad715fb31968', 'a25d87cf004050a0', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'ecb2e76cba06eaae', '88dd3e9025fda689', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, 'd8b8fc5798b15258', '427985aaa5639a00', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, 'f6a1a1cad11df1f7', '4e71d64f36e9ce41', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '44afae69fc2c4728', '6c510813f46d1132', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '1193e945581f6a10', 'e67aad6e5ca5646a', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'cff1dcf85bf39bb0', '38b572601704ed3c', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '0aa262a0d3d4a2da', '3de578cf091e7184', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '1e77afc05749d29a', '4699202dc0ec0efc', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '39a37ecb8efaacf3', '5d5237250aea30a6', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '47d30d42d2ad55dd', '3957dc0e274ed94c', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '1475ff3d556ab54c', 'fd5f84dbd01758b9', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '5f0ab0ceceff7a9e', 'ddf9e604e1248b3f', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, 'fa2580deda7103a1', '148037d2d372fe9a', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '2883eb49983c4dce', '148037d2d372fe9a', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '79ea22999c5d4f4b', '8838c29116dc4e1a', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, 'c3b1e4d234c7defe', '8838c29116dc4e1a', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '5e1136552b16974e', 'd07b2d8e86a67128', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'd02f65b94015cf06', '3f2a0aa1e1860d68', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '5e4834d332c0b58b', '7f07e33b9478bc97', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '449ff4154d54339a', 'ccb5709e7f0a41c5', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, '79d6258445c4c2da', '94ec27d29d08c59f', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:28:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '8bcd34674dd10f07', 'section:S', 'Spring', '2026-03-02T15:39:00.000000+00:00', 154, 'closed', '2026-03-02T16:12:00.000000+00:00', '{"stocktake": "8bcd34674dd10f07", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '56f7306682046d85', 'section:L', 'Spring', '2026-03-02T16:15:00.000000+00:00', 162, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '26cceef7b5573195', 'section:D', '', '2026-03-02T16:31:00.000000+00:00', 168, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, 'e0a70adfcb6ced5c', 'tray', 'Too late today', '2026-03-02T16:34:00.000000+00:00', 169, 'cancelled', '2026-03-02T16:37:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'adb145a736916de2', 1, '6624bf3068b84f5d', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'adb145a736916de2', 2, 'befdeb9846439720', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'adb145a736916de2', 3, 'e8c8d140424eb845', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'adb145a736916de2', 4, '4e3146c8189125df', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'adb145a736916de2', 5, '65ba26746c6d502b', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'adb145a736916de2', 6, '7625ff3ea63e4ca1', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'adb145a736916de2', 7, 'd9dafd43963755c1', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'adb145a736916de2', 8, 'e30de09e55804d8e', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'adb145a736916de2', 9, 'a23c992ad4764553', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'adb145a736916de2', 10, '9f78024e09802ef3', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'adb145a736916de2', 11, '2ceb420ac5d8e122', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'adb145a736916de2', 12, 'fe25011a2ed59142', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'ae718b938e19ca9c', 1, '341733e40e2a193d', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'ae718b938e19ca9c', 2, 'a760a9bc358c9fd4', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'ae718b938e19ca9c', 3, '48cd71dd72627954', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'ae718b938e19ca9c', 4, 'ebb896346851b822', 'C-1-1');
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
