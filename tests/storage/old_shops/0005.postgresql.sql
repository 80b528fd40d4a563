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
INSERT INTO public.access VALUES (1, '99070578fe1bc5689ef8b47fe1c4e4bb343e5e4b19b2b8039642d104dfaaf842', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$wdrxJj4KQWl0fLphF1R6Ug$SMsAzjSmXjMXy9fJi3EdhAHh/NntWf3joYwUnEIFEcI', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '137fdb1c74f11a881e8acc95701c35be2e397e45166412c2c97683577d568b4f', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '61722571c073ad902332db048b7a37fca6d2c55ec01c8691e419b712371d784e', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, 'd40faca8474a6f84c3ccc77354c27686b085595ca673830713835080e57be716', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, '34904c7ca3f2e278b7610c7d68bb9636ce1eb33a41cb8d924d7bfebbbd2b8d41', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0005');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/4a3cc643f6ac482c', '{"id": "4a3cc643f6ac482c", "item": "b23a2987adfaf6a7", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.head VALUES (1, 170, 'a7c464209b035779d34c5efaeb27202ff76ee7031def349f6971bbb25c77156c', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90}');
INSERT INTO public.items VALUES (3, '5b95a14f223f897b', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, 'fd2248e8d171c247', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '94ce38e7b03e7ec2', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '498e0df2dea005dc', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '824b3f7eeae015a3', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '6c0d5de0350054cd', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '6d94feb0ecdcd980', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '95b7d44253f8112a', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '23a7f7d1a1d7e6c6', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '8375771d58b7fbac', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'cf44cf19caa67f8c', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '7d8679bd57a6a265', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, '0cdd3c4739c364cf', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, 'bf834c5dc9368b09', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, 'a74cf7dbeebaab09', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '6d068abe4b757f90', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, 'ea664dc741e14d5d', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '80c689e42ecd4639', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, 'a85bfe62568baf09', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '431ed6573a31f3c3', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'a9bdecd23fdd4b95', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, 'd5b51d0f65c42d50', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '603ae3b44ecf11fd', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, 'ab0c79bf15b1d59a', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, 'ffa0d52abc73f02b', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '31c495cdf511d5e9', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '2887bc67d745ada9', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '272d887ad61af515', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, 'c0423b87581dfcfd', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, 'f6f3daf0d1a018ef', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '3c0412ae2f467c40', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'ecdb0e200cdd1aab', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '15d9be48b22e2cc3', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '7f581fa08e196ad4', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, '649ad27a289ec102', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '12486025c0ddfd46', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, '26c8945234bcea27', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '992459bcf8e0091d', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, 'a9cffda19a7e4ee7', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '746cee795eba233c', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '0bc4c4a7633ebf42', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, 'e8f6694f94519762', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'f01eceba58eef326', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '87983baaba945695', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '5969ea5a23908a75', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, 'b23a2987adfaf6a7', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, '8ff911447d898de8', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, '7aff2c91d85324aa', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '6abeca62b73cb01f', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, 'ce1f2093dbeabfb6', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '3f1ef2c80eab7925', '2557');
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"edc6c85b66edfb8a","title":"Rear derailleur 1","turn":1}', '39f79cba9b33c8deaa1da6dc84625497e710bcd065b267394f9feed8821523d4');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"0d2b62248c756738","title":"Rear derailleur 2","turn":1}', 'b4910fac35d17b3db94f6b0f60fa6551082a13604a243b7f4b8779d7884a0df5');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"642781251e307b25","title":"Rear derailleur 3","turn":1}', '618916604c39ad7d6a4a5dd331ee74dfdf46645ac27fd95b73683eaa1c14932e');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"7da028a965026653","title":"Rear derailleur 4","turn":1}', 'b0ad104fa3ec506cb0ac3676f4c76bf99a52fa22bf873e603533322bc74955ce');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"2feb302fd4ecbcbe","title":"Rear derailleur 5","turn":1}', 'f39f2904dc45bb827b8f009990f94a0c50688d24fd37c0242436b1a0b0684c76');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"a33664b578e074a8","title":"Rear derailleur 6","turn":1}', 'd085e3ab780e0794b8b59319694cf45aae0d1bada53cd70579bcd499bb144d2f');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"dae35bfe87c13be5","title":"Rear derailleur 7","turn":1}', '01cfd96887f4037de150a94fdfd84ab40ba28172d106313e71fe85964e4e8f51');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"5923069288ace94f","title":"Rear derailleur 8","turn":1}', 'aaca3b9fd4908b001fe52023e9e258e4be6f1ce7c0f45469500c4148c399ecfd');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"86eff413dbdfae21","title":"Rear derailleur 9","turn":1}', 'a9edfd3d147b227d5ae903b3d67d85d123f4f63a5dc4433202dfbe6de9ec4130');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"ec8425c7e86fbaa6","title":"Rear derailleur 10","turn":1}', '5c64f33d5eff10ec2a34e2d486b45a6506ee65275e09109571b137369f374650');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"6ec17dcffee8de12","title":"Rear derailleur 11","turn":1}', '45f465d9544efbe7111a233818433221450a2dec35fc5ee6f4effafae0b842bc');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"655e4ee143986f46","title":"Rear derailleur 12","turn":1}', 'e4e0aeb5c4f2fe0822dc689ab27be39843f0cc6911c0fd0cc99489a6ff180039');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"a4d94c6697e904c8","title":"Leather saddle 1","turn":1}', '3c0e75c9d80464b169f246a70984f50a5e34e50c8377b2874242aefc17b4c5b3');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"2e593cd510c40499","title":"Leather saddle 2","turn":1}', 'ba078a6167297fc7c5377d537593332e5343fa63139623b2ed84fb0ce37d29d2');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"6a6d1b57913a687f","title":"Leather saddle 3","turn":1}', '575674c900fa6932b106692f93a115c87552d814f2f96ce5fdf0af7cae840393');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"c2fcd5a00a9aa9ab","title":"Leather saddle 4","turn":1}', '93187c9938508fad6a57229b3317d5dd3d549019b3ce4ca5393353fb07411530');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"ca89e55350feda2e","title":"Leather saddle 5","turn":1}', 'ade133f38bcfd431a21d6ab50f90e7b5c92d96c159182acabfe0a20d124a0ad5');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"589532cdbe39c496","title":"Leather saddle 6","turn":1}', 'b62547474676543d910facf6a0d3c9f9a0dd7ae97dd23730009ed859a66a5c40');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"bbb3bd7e172b2e23","title":"Leather saddle 7","turn":1}', '616384361521ed4d0d248e8023de01cb3621511141891d55b31033c676bd5205');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"c723636b37943597","title":"Leather saddle 8","turn":1}', '101ecced01e0286e6b38958815d67f0daf1523c3281d6a92ac37ad36ea80a2b0');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"a087916c2195623e","title":"Leather saddle 9","turn":1}', '2d563d5c5dec7e251cf478ea4ce065dd6bb3a9151e660a7ebaec75ba96eb3e9b');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"f7740795c79a9c36","title":"Leather saddle 10","turn":1}', '238b4a6e7eb2ed103db4d197daf12bcfb36057cf33466e47860f71b038c4968b');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"8743fc77829bfdcb","title":"Leather saddle 11","turn":1}', 'c997385bc4c8f148aed20fdbb765ea3c9f19d8dfb3c9b6c82e78248218c65b7a');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"af185cbaf222fcd1","title":"Leather saddle 12","turn":1}', '86cb5cee55f4e1518e6c958e69b6cf4f2a1e37a603173a085d23e42465dbddf0');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"b27577d7b0e68269","title":"Dynamo lamp 1","turn":1}', '49ce6293575adfc8ae6e5269a7a6102d87d81faf677b9eb103ffa9849b4f6acb');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"6b60bdff690ba291","title":"Dynamo lamp 2","turn":1}', '13607ed43ea70ea3561a955ee3d9a03d46aa783159d1b43b142c457e8ac59ed5');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"6b77b551ffebf6c6","title":"Dynamo lamp 3","turn":1}', 'fdaca1ac7a8996c5f9bc228916bdf07071d836b509401edc32a8208515784a33');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"ea5e65f818629a8b","title":"Dynamo lamp 4","turn":1}', 'bd7aa9f12192adb7fa56bdd8e18dd8dc8524b26e4a331985157243683406f202');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"f775d3cfa8ee85e2","title":"Dynamo lamp 5","turn":1}', '2885464ec9eb1d307dcdb8bfb993fe1bd55cafcbf5fe2c0183c72503cc86ecfd');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"77ef05b779efbdf0","title":"Dynamo lamp 6","turn":1}', '5a546853a376d6f4cbb3fae55974cc15e2f991073518fa4270ca2eabb1d1a598');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"b194fb27bc491d42","title":"Dynamo lamp 7","turn":1}', '8ba4c43b2c8bb3fe76e70a2b82ccb7d119e1c26256334e9ae2289736d491fd51');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"1859a12d252fa115","title":"Dynamo lamp 8","turn":1}', 'fd68a9b3411b363d2465fc938092947f35f6513308999618d79c36f4e1a16b04');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"a6a33de1cc862426","title":"Dynamo lamp 9","turn":1}', 'd6c3871ac132083a0fb8c0c0b5bc5d4a383c7d99fe3a4af734d4112ae4990e18');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"d540ff0f0ebcf3e1","title":"Dynamo lamp 10","turn":1}', '3eae34f0a1b852c09a92485d581f3e7180c3db8c391a48abf90b01185df7c79e');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"7487e78afc9bb279","title":"Dynamo lamp 11","turn":1}', '788f8008f162495972a87d6b42ae21ed412fc3e785c10c26b83df7b0d91e3205');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"6aadfa39d0f433c1","title":"Dynamo lamp 12","turn":1}', '4235d49ff7000e2b0b1b72a52d475e471cb038cfb4acc3c586c32e454eb37d1b');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"d17efd7779a91e7c","title":"Front wheel 1","turn":1}', '4f813466efc05a59ea7d0db7287997825dbf3b7bc4efee14bae9d6aa9a2f03a5');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"7475f277cddbfd23","title":"Front wheel 2","turn":1}', '8a5e71b178985275984501ba14d52ec9e148af86e74a5b2783d93ef5143e4d5e');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"8410878ba945e531","title":"Front wheel 3","turn":1}', '704b2a46df957b40f7b9cd03fb1b8b930f1e3d33f1211023c5c2d4bb2891737f');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"9d74ab26b6e20b0c","title":"Front wheel 4","turn":1}', '1a0f6fce04265fe165f8dc6f325dd81faf196f4ae85af90c363f84e667978281');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"1c90c3f411382d2a","title":"Front wheel 5","turn":1}', '3b9aa94576ffc3eb711f02c0a7c3304e9e2267a6961b8ea83bddfc9c5cb313c6');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"112589f3b2611ec3","title":"Front wheel 6","turn":1}', '4037ca041e4edf9bd0f533c1f0ef3f1c9b4d9e821d460cfcb72823e16afd5daa');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"906783827ac1d791","title":"Front wheel 7","turn":1}', 'ac8dbd68accf3075b659935b0d117cafd0638f9ba80e950e7eb299bdb1c94c63');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"315e99bdcf79e579","title":"Front wheel 8","turn":1}', '40b0eaa1a7a3e073ad8938e25b6c207a687c06797d94a98df7ecc5ee694578b9');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"d06e6358007d1200","title":"Front wheel 9","turn":1}', 'aa2d0d2e434e59656a76da770a2b02ebeb82dfb9619fd86e0daea9c1ec525c9e');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"84489c63f46c8db6","title":"Front wheel 10","turn":1}', 'e47a793bfe6bed60c2675d32d0ff19a4ae0b0a90661e9c7c6ef3ec1574d57ed8');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"06bdcefb82d867d6","title":"Front wheel 11","turn":1}', '12d85d1ec2e7fad390019ad34aff003aa940e6c6a9fea35fb8dd478336adcf5e');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"fba915ba57b891f9","title":"Front wheel 12","turn":1}', '08beca4f56fe005fbabb0e7e82109706db334f11b704a1e8fe3827cd7d04b7a9');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"4a3cc643f6ac482c","title":"Brass bell","turn":1}', '8b1c7e57c0907ec15fbb6cc4261f2002c1cbe32240d11b01c3e640a3113d1a9c');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"0d2b62248c756738"}', '28abcfe0d05306f92284bc4c7a8b864711ad0d6f9c5ec19313fbe47aeb11a279');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"f7740795c79a9c36"}', '68446a6aab5ca9083043c655a7d1b542edb4f153a018e2448686b66bf851f54f');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"9d74ab26b6e20b0c"}', '05ea786016b2c90c388dee0288bb006e629f2ec4ccbda245d7dc733bf2ef0467');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"fe36b56231966071","stay":"a087916c2195623e","to":"S013"}', '3492518f747e3f3128981b89fcc7062bc68f23ae2006e146723a2bc58fb77d45');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"edc6c85b66edfb8a"}', 'ce1cc6460e56fa59070ffc671257132e52ba61b9f0072d31dab052fa6a7fddb8');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"a4d94c6697e904c8"}', '51ebf2ac7421095ef31619ba3255a75c5e1ab8b8fee05bfdd6e24fe20398b156');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}', '8bda7a4d9f18cb393d86bdf33bd3d1a13b12c5ec06b17c7f148b678721f60590');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'c0258c9dd36b0847d1e05fa7e168202c773989d1f39d966ed9d085b62340edc0');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB0123"}', '422cc6ecb59e5a2a6217808dfb5c8d6fea4301718b74c16d94510a7da48fe379');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"AB77X"}', '1c290cf6ab76bf3fedf173f1c91ba7c7a610537d7f9a3a765c259b4475e6508f');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX9"}', '48b5b7814f198b7fd35b020faf294c565513724de42ffefc66efcabc80b42560');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a7d59161dec5009b","reference":"W001-01E","stay":"d17efd7779a91e7c"},{"hold":null,"line":"d326df3e92d78821","reference":"W002-016","stay":"7475f277cddbfd23"}],"number":"B-01","order":"a80ad41ac201d458"}', '658508676e5d305d87035d54b32767da159c0a827ba67eafb4f9d502cb4763f7');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4e009dbc5d2a3bf0","reference":"S002-013","stay":"2e593cd510c40499"},{"hold":null,"line":"2bc8dda4b6846af2","reference":"S003-01W","stay":"6a6d1b57913a687f"}],"number":"B-03","order":"fd2d0b5217558283"}', '8bdea7361c21d4c9634179ea71f112cf87bbd33af2cbcbe1a8a408b6e5a2e1dd');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"17107b9152334ae2","reference":"S004-01O","stay":"c2fcd5a00a9aa9ab"},{"hold":null,"line":"ca13d41ec75b952f","reference":"S005-01G","stay":"ca89e55350feda2e"}],"number":"B-04","order":"500c6e09ec46aa1b"}', '538c7c9af8075970f98118b1dd461412e3947c345e0846a78948c74a2761c10d');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a09adde40d8fd4d3","reference":"L002-017","stay":"6b60bdff690ba291"}],"number":"B-05","order":"b04f624a4f000362"}', 'b8d66c6851fd7e04ab55149bc5d5113bd85dfe026631383796709e91eb01f6c0');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"c50b649f8dc4d529","reference":"L003-010","stay":"6b77b551ffebf6c6"}],"number":"B-06","order":"ebe6863698c07f41"}', '6e6292e28dea16628f5b5669764da38cabf94b343676c442e9751c1562ba1c5d');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3467d2bfe1ad2977","reference":"L004-01S","stay":"ea5e65f818629a8b"}],"number":"B-07","order":"bdb6f2784ca56a65"}', '613a64c30c4fc12f698acaf5332f2967312d11ff7ac422fdcc98d0fcd4749f77');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"88fea4748cfec7f9","reference":"L005-01K","stay":"f775d3cfa8ee85e2"}],"number":"B-08","order":"6c794b4347b7eae9"}', 'f19286472f8acb08155a58d4cf8c6a2dc33e390b661f2e052eebdc9122688adc');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"638eb576925bd5e9","reference":"L006-01C","stay":"77ef05b779efbdf0"},{"hold":null,"line":"81458fd0d5acf61e","reference":"L011-010","stay":"7487e78afc9bb279"}],"number":"B-09","order":"94d46328057a477d"}', '191f708de602136fc652d0d186d9557a7706b12f3ff1cabc881597d991735f33');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"70b33879faf595d1","reference":"S006-018","stay":"589532cdbe39c496"}],"number":"B-13","order":"407613463c5b7aae"}', '77a68be205aee1a627d1430257b3e6c484b2683b24e818b6be673d494c98b4a2');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b1d2cc07bf997e3d","reference":"L007-014","stay":"b194fb27bc491d42"}],"number":"B-17","order":"e20d4302733345b2"}', '7105ee2c7a629f35625c4ef5ed775576cfa09061015526e03566dd465ea2f9e1');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a94adf5fbaafbaf9","reference":"D009-01B","stay":"86eff413dbdfae21"}],"number":"B-18","order":"0a0b2b872c91d624"}', '3e339661194ad86600b1de3164c2778b83963f950003a6a80ab4275f9e95f6c6');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"d93946b30c8be504","reference":"W006-013","stay":"112589f3b2611ec3"}],"number":"B-21","order":"78ec56f4bf41697f"}', 'ae03c931b024d09e04f08b3bda870c9f253ba118e9ac18912b3324c158d21356');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9c5fab89ad25d6d7","reference":"S007-01Z","stay":"bbb3bd7e172b2e23"}],"number":"B-22","order":"dc9aa198a524b3aa"}', '34d62b018313630537c14aa0a1f3eda29fe8f5dd9aeffb35d892455d72967d58');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"2b9b97b6e59e48a2","reference":"W007-01W","stay":"906783827ac1d791"},{"hold":null,"line":"d1abf876c244435e","reference":"W008-01O","stay":"315e99bdcf79e579"}],"number":"B-23","order":"4eb4ae5662e1561e"}', 'e7f3136921e3de3f8f825698f08c24183de871bca7fc5375ac4075802c7403ec');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"21c79e163fbb43d3","reference":"D008-01J","stay":"5923069288ace94f"}],"number":"B-26","order":"3d3ea5f63f8ba2a0"}', '57c90317f5279e6390e614e6af50c19b33df57a3b74292abf5b4d7ab58818e83');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a38b4a9bd9202c16","reference":"D003-01U","stay":"642781251e307b25"}],"number":"B-30","order":"6123cdada33b85ba"}', 'eb77c73480342e5bc5ac99b3187caac129d37cda9971cd5b1367519d4d6d9466');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"1857858c57b68fe0","reference":"D005-01E","stay":"2feb302fd4ecbcbe"},{"hold":"unknown_code","line":"c4643583c35ed486","reference":"Z999","stay":null}],"number":"B-31","order":"8c6f56e6a0c4444c"}', 'e087421ea5f71a93e1085716185f7ad225f0ec88fc11ba798efd43aec83cb17a');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"1d9c1ed70d815291","reference":"D006-016","stay":"a33664b578e074a8"},{"hold":null,"line":"d5658deeb49246c8","reference":"D007-01R","stay":"dae35bfe87c13be5"}],"number":"B-32","order":"12d6813820355932"}', '3c0bbe031b5ed87c2543ab6564adc6d08decb270e30d8d0207d3d822089e133c');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"d5658deeb49246c8","reference":"D007-01R","stay":"dae35bfe87c13be5"}],"number":"B-32","order":"12d6813820355932"}', '3d2497cf4354d4bf1fb605d45aa425cfd3ec52cb1c95201d8d1ac29ee0ec83c9');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"e400b6e96896d02f","reference":"lamp","stay":null}],"number":"B-33","order":"0fcf2af7ab492119"}', 'd78a2591a59c219c30fb275312da1ae2b5dcb2559573d8b19601b70ffc1d79b1');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"db9d72362873a4d7","reference":"D006-016","stay":null}],"number":"B-34","order":"d981eb9e4829d0b4"}', '4b5e432265cda37c7d9eabf99bd376d362a997f12d8d28766cc427ea4eb108d2');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"4c4b5128ff18c71f","reference":"W004-01J","stay":null}],"number":"B-35","order":"ba7d7fc1838d9fbe"}', '4eff584849aab3bfdce8b6cc7b24fe44e960e29d1aba72a81ddea9c429df9e33');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"3e7487466c5e3a9d","reference":"L015","stay":null}],"number":"B-36","order":"4d6f1a2573f903b5"}', '59fd0c9761b69356ce17222d0c4526dbeca3709b6d3fd8614cdc929136121aca');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"6432a4706bf035ac","reference":"W005-01B","stay":"1c90c3f411382d2a"}],"number":"B-37","order":"81d21534045392b1"}', '303ef49abe71182503d83309c695aee68e4bd95f6e80902ea7d0582dcdf0617e');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"6432a4706bf035ac","stay":"1c90c3f411382d2a"}', 'bd5744b48e2573212241dfc502d53391458fc674313e9043aef81f0b4dd07df3');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"b1d2cc07bf997e3d","why":"Another lamp, by the photo"}', '39f2c0b0eb82c288770a8b418374ecc44ed7f6f3219239a89846960dc7082152');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["88fea4748cfec7f9"],"number":"B-08","order":"6c794b4347b7eae9"}', '949b7f0534b7a1a15b9c5378946c1f69d7e6c34781d133f9af5d0a6f47b96619');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["d93946b30c8be504"],"number":"B-21","order":"78ec56f4bf41697f"}', '8bb301679953cf4edca75dbe4327602cf1e51427b6a5d97da24609c9d8f0c8ef');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"d93946b30c8be504","stay":"112589f3b2611ec3"}', '195b51bb4b74251d1bd37bcfa41b00a72e8872fb2b44abf13e585c7e3223f11b');
INSERT INTO public.ledger VALUES (102, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"060a1e9fa9bbb89d","stay":"5923069288ace94f","to":"D020"}', 'b9aa1dc8fffa6e124ed0e86f7fd1d4819a3485ea2607d428b7f5fed278142eef');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"9294ce04ebaf250c","reference":"S012-01O","stay":"af185cbaf222fcd1"}],"number":"F-1","order":"338fdd8f09ecc34f"}', '576a4c4eb0072a4a3d5bab37a31fbd1b0b7cd54c1253092a0276a68d4a020f1a');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"e47d83cbfd51076a","reference":"","stay":null}],"number":"F-2","order":"12bcf8b78dde350c"}', 'f2e005ec7901fd2fae21a8981ff8cea649d12bfc59c4e4108cedff19d5b33c6d');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["a7d59161dec5009b","d326df3e92d78821","4e009dbc5d2a3bf0","2bc8dda4b6846af2","17107b9152334ae2","ca13d41ec75b952f","638eb576925bd5e9","81458fd0d5acf61e","70b33879faf595d1","9c5fab89ad25d6d7","2b9b97b6e59e48a2","d1abf876c244435e"],"round":"a87dd87d443df4a4"}', '6952730ceb023fc5e54e387a7e3a1f213faca640ba6f74687aa6bf986be74f67');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '5f5d3ec34086be54d6605685fbb99b343d0bd7ec14e57d1fd6cdc7bcf8a8adbb');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"a7d59161dec5009b","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '1c751f3d495a79c3369f51b93584a2d212181f59bf6b04d19695edd551eaa66d');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"d326df3e92d78821","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '2a4ff52b0549c8943680f79198aa0a98b7a53fe6bdb10832ed174a7fc303e8d6');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"4e009dbc5d2a3bf0","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '456abedbd5ffdbae986117f63f0201c91fe1cbaa65056c37f0b23e066194fb04');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"2bc8dda4b6846af2","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '5c5a736fc1e943878aec50b1348982885530083ffa0561cd0fbce20abba50067');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"17107b9152334ae2","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '215a28845612c238b3a6c5ddd1e712b2cfee41e07eb74d3cabd3e80460ad06b8');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"ca13d41ec75b952f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'f4f63ad436666ccb47520f34e4b1a10b4a53009d1b22dd3f6cc2d25b5a714a0b');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"638eb576925bd5e9","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '7e6a1cc64005b100c5f09e3ddf95af780562439884e48883b9a3fcf0103b071c');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"81458fd0d5acf61e","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'a3fe17bd1723a2d1798c19c56e2035ce756c2ac6fc06ca867cd979022d4f3376');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"70b33879faf595d1","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'a6394097954f4f7b88f10ceaf2d7fe612ead1388bae53207d5ae3b53bd01f0e5');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"9c5fab89ad25d6d7","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '754d138f104e1bd02066e894d228a546ab5e3ee25baa7566e86a38c791fad044');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"2b9b97b6e59e48a2","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'feae8503ad40069e78ca3e6e5eadd041694f5cec2a96e2616e76ede6759a1d55');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"d1abf876c244435e","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a87dd87d443df4a4","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'cc654e67e0619b4651bfe274036d3ef9e200d57e32f2e7fd4beb17c7d6b060e7');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"d1abf876c244435e","line_state":"waiting"}', 'c9faae75ebc8e5edf6736da600bb2f67ac9603bcc86cbd5515890aeacf7dc5b6');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"round":"a87dd87d443df4a4"}', '6abbdd85deaf6eb5ca20a985710862bc1d6c55a26639fbae4974a6c17a06e399');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["a80ad41ac201d458"],"parcel":"3f1ef2c80eab7925","table":"main"}', '72a3128a550ca68ea74d3e81627000500aecc595c33b00982edbab9ee039cea6');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"4e009dbc5d2a3bf0","line_state":"picked","order_number":"B-03","parcel":"3f1ef2c80eab7925","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '98f6dcb2c7b97921ab02be3fbe1ac77d10047ecc0e82ccb3adda5d2503bbbc6e');
INSERT INTO public.ledger VALUES (123, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"a7d59161dec5009b","line_state":"packed","order_number":"B-01","parcel":"3f1ef2c80eab7925","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '8dda611b2fb100b8e82f3345df37f519fb5a5bc9ab0941d48becceb2b561be9f');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["a80ad41ac201d458"],"parcel":"3f1ef2c80eab7925","released":["W001","W002"]}', '2dc46fa8582b89811768fc9ad77af001e601b59bda17dd6590b4baba38d249df');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"d326df3e92d78821","line_state":"released","order_number":"B-01","parcel":"3f1ef2c80eab7925","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '2dd564419bafeca0e52d111aaf3f38d7975f02980b7c068b7027d91dac75f8b3');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"a7d59161dec5009b","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '2420a972424662ae74456f583ea6532254bae9fd1e3dfaa12493a35432ce93e9');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"04980ee85ea4e401","title":"Rear wheel","turn":2}', 'e3334662ba68b465ce864c55d1d58c92d176c647bcf5f195e151ec5eefd2d4f9');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"3f1ef2c80eab7925"}', 'ebd448fe54edd2a292eb5b013b00e296b018823e2cf2de40d1e119e35d16d050');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["4eb4ae5662e1561e"],"parcel":"0e44b1bc5db2b392","table":"main"}', 'f4f09f68e38bddd26d9c6008034a78d9db24930d11495a03242eb85c15969df1');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"2b9b97b6e59e48a2","line_state":"packed","order_number":"B-23","parcel":"0e44b1bc5db2b392","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'e95b3855d4a2a4d910e7c4140676dbdb04808f42c01bf0cf9a607a6802a72109');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["4eb4ae5662e1561e"],"parcel":"0e44b1bc5db2b392","released":["W007"]}', 'a3e64cf077fbe6628c2985da40bb0e23553c64695d3915ff22d521460d360d44');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["4eb4ae5662e1561e"],"parcel":"0e44b1bc5db2b392"}', 'b2bfcdd54bb9735564842de437e3aab182ef46e68de0fbef0f44a757c9550209');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["4eb4ae5662e1561e"],"parcel":"0e44b1bc5db2b392","released":["W007"]}', '28bfca5cbdbb3b08764b6da65deb46ec6314c7aafe3a56e3bbfddfb85259112c');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["dc9aa198a524b3aa"],"parcel":"e124d4e3cb419bb1","table":"main"}', 'b5876a064c4c422723fae4e017e4d79b34d6fc356d99e95ada1006f503cd30ac');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"e124d4e3cb419bb1"}', 'c2aa1eea43cb8b3e23ff38d840e863d334f44e13b8d22f8eb53655cac06d1fe9');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["500c6e09ec46aa1b"],"parcel":"a17684a4a4c8b80e","table":"main"}', 'c32f7b3516047510fd4bbf34291be7ef6889e44573d43c3d0583e4b851da13aa');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"17107b9152334ae2","line_state":"packed","order_number":"B-04","parcel":"a17684a4a4c8b80e","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '95f362c35a9397c743b40477a5f1a96c5dac16161f9f805c40e9051a6aedc820');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"a17684a4a4c8b80e"}', '1e3d2b7d47bf66d264227511129ff77cb8415e16b8dfac0c1a7d561b3654e928');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["94d46328057a477d"],"parcel":"b520539510232cf1","table":"second"}', '84c31aa6edc974857220eecf785e4e7d72381c70aa8c8d4095465569da535c4a');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"638eb576925bd5e9","line_state":"packed","order_number":"B-09","parcel":"b520539510232cf1","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '05e2728aca3abad27fcec85b0062f471a69b0161c8334d1ade008a954198dea7');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["638eb576925bd5e9","81458fd0d5acf61e"],"number":"B-09","order":"94d46328057a477d"}', 'b420173950be6a1cccf070669d25eef6f1f18f092d81dfd599d2f0198dd17844');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["fd2d0b5217558283"],"parcel":"19c1016cf9e69508","table":"main"}', 'e46390ebbb71d1bc928aafb82f171402f04da6e6bc00252990b6409670856875');
INSERT INTO public.ledger VALUES (143, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"4e009dbc5d2a3bf0","line_state":"packed","order_number":"B-03","parcel":"19c1016cf9e69508","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '5d4c1f58162e764c16ae985cc1d0898a50d007f5f2702e993b085839968d7fbd');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"70b33879faf595d1","reference":"S006-018","stay":"589532cdbe39c496"}],"number":"B-13","order":"407613463c5b7aae"}', 'd6da763ef7505f8c46e0f25e199608cb24bab0b8ceddd6eb71b550585ff09fc7');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["a09adde40d8fd4d3","c50b649f8dc4d529","3467d2bfe1ad2977","21c79e163fbb43d3"],"round":"36925cb3d7c68e8c"}', '0676d1f409f46ce21499a6f80bfe2b5d220568995e6947c5c655a632ae9737e8');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"a09adde40d8fd4d3","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"36925cb3d7c68e8c","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '5ffb5ae2f886002afc3dff99aca8689c6f6f6290d544b979f291731fa4f34651');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"3467d2bfe1ad2977","note":"Not in its bin"}', 'e2f53c9074fcb8802a57effc836506432faca4dc8701c95367959375e5bcf4e0');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"36925cb3d7c68e8c","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'e921d3da088dddc5bb2ce027d0acd903186a63960141361aad30f8efc691b3a8');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"36925cb3d7c68e8c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '8238f25463c2eb27f4b45b457baccca9abf68e11bed9cadf204d3c1d03278c89');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"36925cb3d7c68e8c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '4d483e9200610169f3d0f7e3db61c0a0d3cc6acc1ecddfc458beb2073a8e61b1');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', 'a8e2ebd1b3e00f02202567cde2d864928d6cb87073bf9425e76eb7319e8d935b');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', '829527616f6f7deb383d5faf57846ab91b1962b23be6b24d6bf427bafc9e0d59');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"f2cf6ec853257d89","reference":"D001-019","stay":"edc6c85b66edfb8a"},{"hold":"already_sold","line":"fd47bf1247cd80b7","reference":"W002-016","stay":null}],"number":"B-38","order":"b99794279bd00273"}', '4670201c75067c6888567a1e383edee7aebbcfaeb4f689977f587ed507c5c97e');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"8dada5a33d4278c2","reference":"W001","stay":null}],"number":"B-39","order":"97e450fcefc3bf1d"}', 'e5fc79f2751decb0880f25b5e1b7762341aff7528779c403eb3ae0da687eaf8d');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:39:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:S","note":"Spring","stocktake":"224d83e00ce55b60"}', '4bf7d5dcf054e7d3b1dd1dc2db891b477ff10850adb0cb1c0ebce42db7f60b75');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:46:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"224d83e00ce55b60","unread":0}', 'dafc1a67ca4e491a588f37e76dd396ffa41e9967b003e1adcb8ea4b85053ff7a');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:54:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"224d83e00ce55b60","unread":0}', 'bbdc494adf49e01a3042b40ab35e1d4ae3a62f99a09fb2353a5b369718472677');
INSERT INTO public.ledger VALUES (158, '2026-03-02T16:00:00.000000+00:00', 'finding resolved', 'owner', '{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"224d83e00ce55b60","sure":false}', '7552a8574625a85980b8054ff763d959f87a6251fad2f62b82c6bc5d342232ee');
INSERT INTO public.ledger VALUES (159, '2026-03-02T16:03:00.000000+00:00', 'finding resolved', 'owner', '{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"224d83e00ce55b60","sure":false}', '509aa9997af7cd6b651e44ccda446bf0cde28908b3f90d0235d981992c5cef96');
INSERT INTO public.ledger VALUES (160, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'owner', '{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"224d83e00ce55b60","sure":false}', 'f59961cc5b820b1b32e471d3cc7f4edb760eca7e4918c8310ed7b58823000a34');
INSERT INTO public.ledger VALUES (161, '2026-03-02T16:09:00.000000+00:00', 'finding reopened', 'owner', '{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"224d83e00ce55b60"}', 'c203d206d2dbebd2405a317fb3ec92745f5815fd9709338c33cc986a231f22ea');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:12:00.000000+00:00', 'stocktake closed', 'owner', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"224d83e00ce55b60"}', '02c5678d752d1cdd5fb5cfb94bb0fbcf03c65e56093ec7444eb3d94c87587bf7');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:15:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:L","note":"Spring","stocktake":"488470d9cc2f83d9"}', '8550db41e5a91439219c68b5603d18de6341cd2a1d2e919f5c602d075d77cb1e');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:22:00.000000+00:00', 'looked', 'owner', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"488470d9cc2f83d9","unread":0}', 'b3b2e6e06f9a45da82dc2e875ad866623b3de052c2d955c064164544a78334be');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:25:00.000000+00:00', 'card lost', 'owner', '{"code":"L008"}', 'f270c4b6cff07a6eff04aa93b7fd24dd281bfef4100576bb5b753a65307dbe82');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:25:00.000000+00:00', 'finding resolved', 'owner', '{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"488470d9cc2f83d9","sure":false}', '517dc43e50699d98f2d5f1f434bc3724742bbf2c0c4738fe51451748c15c859e');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:28:00.000000+00:00', 'withdrawn', 'owner', '{"code":"L009","reason":"Nowhere to be found","stay":"a6a33de1cc862426"}', '382211a4cfa4f8aa7019410a69f9444a3d95520d948278a54312edb8d6a63571');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:28:00.000000+00:00', 'finding resolved', 'owner', '{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"488470d9cc2f83d9","sure":false}', 'e4d3b37fe28822191b2b220b2d8833467397fc15c79ad66b68743859635094e2');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:31:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"tray","note":"Too late today","stocktake":"8f225eb07498af85"}', '74c7c77630283b5c7703fb590f44615bfffef5899117af8520d699d6e8cb431d');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:34:00.000000+00:00', 'stocktake cancelled', 'owner', '{"stocktake":"8f225eb07498af85"}', 'a7c464209b035779d34c5efaeb27202ff76ee7031def349f6971bbb25c77156c');
INSERT INTO public.lines VALUES (15, 'a94adf5fbaafbaf9', '0a0b2b872c91d624', 1, 'D009-01B', 'Rear derailleur 9', '', '86eff413dbdfae21', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (21, 'a38b4a9bd9202c16', '6123cdada33b85ba', 1, 'D003-01U', 'Bell with a crown', '', '642781251e307b25', 'waiting', 'doubtful', 'The title differs: ours is “Rear derailleur 3”.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (22, '1857858c57b68fe0', '8c6f56e6a0c4444c', 1, 'D005-01E', 'Rear derailleur 5', '', '2feb302fd4ecbcbe', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (23, 'c4643583c35ed486', '8c6f56e6a0c4444c', 2, 'Z999', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (24, '1d9c1ed70d815291', '12d6813820355932', 1, 'D006-016', 'Rear derailleur 6', '', 'a33664b578e074a8', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (25, 'd5658deeb49246c8', '12d6813820355932', 2, 'D007-01R', 'Rear derailleur 7', '', 'dae35bfe87c13be5', 'waiting', 'not_in_file', 'The order came again without this line.', NULL, NULL, NULL, NULL, false);
INSERT INTO public.lines VALUES (26, 'e400b6e96896d02f', '0fcf2af7ab492119', 1, 'lamp', '', '', NULL, 'unbound', 'unknown_code', 'No slot of this room has this code.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (27, 'db9d72362873a4d7', 'd981eb9e4829d0b4', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', 'already_sold', 'Order B-32 has it.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (28, '4c4b5128ff18c71f', 'ba7d7fc1838d9fbe', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', 'withdrawn', 'It was taken out of stock: Bent beyond use', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (29, '3e7487466c5e3a9d', '4d6f1a2573f903b5', 1, 'L015', '', '', NULL, 'unbound', 'slot_free', 'Nothing stands in this slot.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (30, '6432a4706bf035ac', '81d21534045392b1', 1, 'W005-01B', 'Bell with a crown', '', '1c90c3f411382d2a', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (14, 'b1d2cc07bf997e3d', 'e20d4302733345b2', 1, 'L007-014', 'Dynamo lamp 7', '', 'b194fb27bc491d42', 'waiting', 'suspect', 'Another lamp, by the photo', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (10, '88fea4748cfec7f9', '6c794b4347b7eae9', 1, 'L005-01K', 'Dynamo lamp 5', '', 'f775d3cfa8ee85e2', 'cancelled', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (16, 'd93946b30c8be504', '78ec56f4bf41697f', 1, 'W006-013', 'Front wheel 6', '', '112589f3b2611ec3', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (31, '9294ce04ebaf250c', '338fdd8f09ecc34f', 1, 'S012-01O', '', '', 'af185cbaf222fcd1', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (32, 'e47d83cbfd51076a', '12bcf8b78dde350c', 1, '', '', '', NULL, 'unbound', 'bad_row', 'This row has no reference.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (18, '2b9b97b6e59e48a2', '4eb4ae5662e1561e', 1, 'W007-01W', 'Front wheel 7', '', '906783827ac1d791', 'released', NULL, '', '0e44b1bc5db2b392', 'a87dd87d443df4a4', 7, NULL, true);
INSERT INTO public.lines VALUES (5, '17107b9152334ae2', '500c6e09ec46aa1b', 1, 'S004-01O', 'Leather saddle 4', '', 'c2fcd5a00a9aa9ab', 'packed', NULL, '', 'a17684a4a4c8b80e', 'a87dd87d443df4a4', 3, 'pack-S004', true);
INSERT INTO public.lines VALUES (6, 'ca13d41ec75b952f', '500c6e09ec46aa1b', 2, 'S005-01G', 'Leather saddle 5', '', 'ca89e55350feda2e', 'picked', NULL, '', NULL, 'a87dd87d443df4a4', 3, 'pick-S005', true);
INSERT INTO public.lines VALUES (11, '638eb576925bd5e9', '94d46328057a477d', 1, 'L006-01C', 'Dynamo lamp 6', '', '77ef05b779efbdf0', 'packed', 'cancelled_in_box', 'Cancelled while in the parcel. Take it out with a scan.', 'b520539510232cf1', 'a87dd87d443df4a4', 4, NULL, true);
INSERT INTO public.lines VALUES (12, '81458fd0d5acf61e', '94d46328057a477d', 2, 'L011-010', 'Dynamo lamp 11', '', '7487e78afc9bb279', 'cancelled', NULL, '', NULL, 'a87dd87d443df4a4', 4, NULL, true);
INSERT INTO public.lines VALUES (3, '4e009dbc5d2a3bf0', 'fd2d0b5217558283', 1, 'S002-013', 'Leather saddle 2', '', '2e593cd510c40499', 'packed', NULL, '', '19c1016cf9e69508', 'a87dd87d443df4a4', 2, 'pack-S002', true);
INSERT INTO public.lines VALUES (4, '2bc8dda4b6846af2', 'fd2d0b5217558283', 2, 'S003-01W', 'Leather saddle 3', '', '6a6d1b57913a687f', 'picked', NULL, '', NULL, 'a87dd87d443df4a4', 2, 'pick-S003', true);
INSERT INTO public.lines VALUES (17, '9c5fab89ad25d6d7', 'dc9aa198a524b3aa', 1, 'S007-01Z', 'Leather saddle 7', '', 'bbb3bd7e172b2e23', 'picked', NULL, '', NULL, 'a87dd87d443df4a4', 6, 'pick-S007', true);
INSERT INTO public.lines VALUES (19, 'd1abf876c244435e', '4eb4ae5662e1561e', 2, 'W008-01O', 'Front wheel 8', '', '315e99bdcf79e579', 'waiting', NULL, '', NULL, 'a87dd87d443df4a4', 7, NULL, true);
INSERT INTO public.lines VALUES (1, 'a7d59161dec5009b', 'a80ad41ac201d458', 1, 'W001-01E', 'Front wheel 1', '', 'd17efd7779a91e7c', 'released', NULL, '', '3f1ef2c80eab7925', 'a87dd87d443df4a4', 1, NULL, true);
INSERT INTO public.lines VALUES (2, 'd326df3e92d78821', 'a80ad41ac201d458', 2, 'W002-016', 'Front wheel 2', '', '7475f277cddbfd23', 'released', NULL, '', '3f1ef2c80eab7925', 'a87dd87d443df4a4', 1, 'pack-W002', true);
INSERT INTO public.lines VALUES (13, '70b33879faf595d1', '407613463c5b7aae', 1, 'S006-018', 'Saddle with springs', '', '589532cdbe39c496', 'picked', 'changed_after_pick', 'The order now says “Saddle with springs”, before it said “Leather saddle 6”.', NULL, 'a87dd87d443df4a4', 5, NULL, true);
INSERT INTO public.lines VALUES (20, '21c79e163fbb43d3', '3d3ea5f63f8ba2a0', 1, 'D008-01J', 'Rear derailleur 8', '', '060a1e9fa9bbb89d', 'waiting', NULL, '', NULL, '36925cb3d7c68e8c', 4, NULL, true);
INSERT INTO public.lines VALUES (8, 'c50b649f8dc4d529', 'ebe6863698c07f41', 1, 'L003-010', 'Dynamo lamp 3', '', '6b77b551ffebf6c6', 'waiting', NULL, '', NULL, '36925cb3d7c68e8c', 2, NULL, true);
INSERT INTO public.lines VALUES (7, 'a09adde40d8fd4d3', 'b04f624a4f000362', 1, 'L002-017', 'Dynamo lamp 2', '', '6b60bdff690ba291', 'picked', NULL, '', NULL, '36925cb3d7c68e8c', 1, 'pick-L002', true);
INSERT INTO public.lines VALUES (9, '3467d2bfe1ad2977', 'bdb6f2784ca56a65', 1, 'L004-01S', 'Dynamo lamp 4', '', 'ea5e65f818629a8b', 'short', NULL, '', NULL, '36925cb3d7c68e8c', 3, NULL, true);
INSERT INTO public.lines VALUES (33, 'f2cf6ec853257d89', 'b99794279bd00273', 1, 'D001-019', 'Rear derailleur 1', '', 'edc6c85b66edfb8a', 'waiting', NULL, '', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (34, 'fd47bf1247cd80b7', 'b99794279bd00273', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', 'already_sold', 'It has left with order B-01.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.lines VALUES (35, '8dada5a33d4278c2', '97e450fcefc3bf1d', 1, 'W001', '', '', NULL, 'unbound', 'stale_code', 'It was ordered before the thing now in this slot was put away.', NULL, NULL, NULL, NULL, true);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '224d83e00ce55b60', 'B-1-1', '2026-03-02T15:46:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '224d83e00ce55b60', 'B-1-2', '2026-03-02T15:54:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '488470d9cc2f83d9', 'C-1-1', '2026-03-02T16:22:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'b04f624a4f000362', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (5, 'ebe6863698c07f41', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (6, 'bdb6f2784ca56a65', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (7, '6c794b4347b7eae9', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (9, '407613463c5b7aae', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (10, 'e20d4302733345b2', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (11, '0a0b2b872c91d624', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (12, '78ec56f4bf41697f', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (15, '3d3ea5f63f8ba2a0', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (16, '6123cdada33b85ba', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (17, '8c6f56e6a0c4444c', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (18, '12d6813820355932', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (19, '0fcf2af7ab492119', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (20, 'd981eb9e4829d0b4', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (21, 'ba7d7fc1838d9fbe', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (22, '4d6f1a2573f903b5', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (23, '81d21534045392b1', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (24, '338fdd8f09ecc34f', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (25, '12bcf8b78dde350c', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (1, 'a80ad41ac201d458', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (14, '4eb4ae5662e1561e', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (13, 'dc9aa198a524b3aa', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL);
INSERT INTO public.orders VALUES (3, '500c6e09ec46aa1b', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'a17684a4a4c8b80e');
INSERT INTO public.orders VALUES (8, '94d46328057a477d', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'b520539510232cf1');
INSERT INTO public.orders VALUES (2, 'fd2d0b5217558283', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '19c1016cf9e69508');
INSERT INTO public.orders VALUES (26, 'b99794279bd00273', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL);
INSERT INTO public.orders VALUES (27, '97e450fcefc3bf1d', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL);
INSERT INTO public.parcels VALUES (1, '3f1ef2c80eab7925', 'main', 'a80ad41ac201d458', '2026-03-02T13:56:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (2, '0e44b1bc5db2b392', 'main', '4eb4ae5662e1561e', '2026-03-02T14:19:00.000000+00:00', 'closed');
INSERT INTO public.parcels VALUES (3, 'e124d4e3cb419bb1', 'main', 'dc9aa198a524b3aa', '2026-03-02T14:34:00.000000+00:00', 'dropped');
INSERT INTO public.parcels VALUES (4, 'a17684a4a4c8b80e', 'main', '500c6e09ec46aa1b', '2026-03-02T14:40:00.000000+00:00', 'aside');
INSERT INTO public.parcels VALUES (5, 'b520539510232cf1', 'second', '94d46328057a477d', '2026-03-02T14:49:00.000000+00:00', 'open');
INSERT INTO public.parcels VALUES (6, '19c1016cf9e69508', 'main', 'fd2d0b5217558283', '2026-03-02T14:58:00.000000+00:00', 'open');
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '224d83e00ce55b60.elsewhere-S012', '224d83e00ce55b60', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'put_right', '', 'owner', '2026-03-02T16:00:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '224d83e00ce55b60.unknown-Q0771', '224d83e00ce55b60', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}', 'ignore', 'A neighbour''s', 'owner', '2026-03-02T16:03:00.000000+00:00', '{"before": {}, "after": {}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '488470d9cc2f83d9.missing-L008', '488470d9cc2f83d9', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'lost', '', 'owner', '2026-03-02T16:25:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '488470d9cc2f83d9.missing-L009', '488470d9cc2f83d9', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}', 'withdraw', 'Nowhere to be found', 'owner', '2026-03-02T16:28:00.000000+00:00', '{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'a87dd87d443df4a4', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '36925cb3d7c68e8c', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '99092fab174a8f891aea85a78f812d995512c143e4ec722f7741abab13abf615', 'bin', 'a87dd87d443df4a4', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '07eb99a89a2fc028945ad73533b5398b0d97fb7df8b9758f880d2d2f96e5125a', 'bin', 'a87dd87d443df4a4', 'W001', false, true, true, 'a7d59161dec5009b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a80ad41ac201d458", "order_number": "B-01", "line": "a7d59161dec5009b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'ee214ec32ee50c5541729a936d8f6837babb73fedb26493663a7063eadcb77da', 'bin', 'a87dd87d443df4a4', 'W002', false, true, true, 'd326df3e92d78821', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a80ad41ac201d458", "order_number": "B-01", "line": "d326df3e92d78821", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'd8faa4e5901dfcb5a7dbd7a44ef9759bf2fefdd4f34814d5403f96aac27ad4ae', 'bin', 'a87dd87d443df4a4', 'S002', false, true, true, '4e009dbc5d2a3bf0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd2d0b5217558283", "order_number": "B-03", "line": "4e009dbc5d2a3bf0", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (5, 'pick-S003', '852c41f5fd40d9d693bb89f27ed6b9553cd0d738b942dd2b5847c5a2d42ccb3c', 'bin', 'a87dd87d443df4a4', 'S003', false, true, true, '2bc8dda4b6846af2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "fd2d0b5217558283", "order_number": "B-03", "line": "2bc8dda4b6846af2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (6, 'pick-S004', '0ce2ac9f50d7fa89b26fda553fb0e739870a24774f151c3521b514473204ddf9', 'bin', 'a87dd87d443df4a4', 'S004', false, true, true, '17107b9152334ae2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "500c6e09ec46aa1b", "order_number": "B-04", "line": "17107b9152334ae2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (7, 'pick-S005', '13146d42f78db71aa58281c8802ac948672eb249f1341402ee4ed625d5a8b808', 'bin', 'a87dd87d443df4a4', 'S005', false, true, true, 'ca13d41ec75b952f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "500c6e09ec46aa1b", "order_number": "B-04", "line": "ca13d41ec75b952f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (8, 'pick-L006', '66b5209054ac847096676216641be358a0158599cadf7521ae711d1bcdc07caf', 'bin', 'a87dd87d443df4a4', 'L006', false, true, true, '638eb576925bd5e9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "94d46328057a477d", "order_number": "B-09", "line": "638eb576925bd5e9", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'b58341f9545216d4919c234bdd200b1667970f65502625f3f7f8a84082b533cc', 'bin', 'a87dd87d443df4a4', 'L011', false, true, true, '81458fd0d5acf61e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "94d46328057a477d", "order_number": "B-09", "line": "81458fd0d5acf61e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (10, 'pick-S006', '68d1986152548d60a33a7a911b99dffca3bc64c317e0ac0bcfa25feb35479158', 'bin', 'a87dd87d443df4a4', 'S006', false, true, true, '70b33879faf595d1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "407613463c5b7aae", "order_number": "B-13", "line": "70b33879faf595d1", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'a11906ed5f6ab3c8f10b47c231c6d2396e0a936edfbdadbb77ed59dd55186cf8', 'bin', 'a87dd87d443df4a4', 'S007', false, true, true, '9c5fab89ad25d6d7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "dc9aa198a524b3aa", "order_number": "B-22", "line": "9c5fab89ad25d6d7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (12, 'pick-W007', '129d98e3781ef748bfa4a239605fe7cf617defe4681846380cca15a1ac6c8ee6', 'bin', 'a87dd87d443df4a4', 'W007', false, true, true, '2b9b97b6e59e48a2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "4eb4ae5662e1561e", "order_number": "B-23", "line": "2b9b97b6e59e48a2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'fe4f379eeb763cb1f191c6ef3569a66ce3a04617ec28b0f4ace152b11fd9d6d9', 'bin', 'a87dd87d443df4a4', 'W008', false, true, true, 'd1abf876c244435e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "4eb4ae5662e1561e", "order_number": "B-23", "line": "d1abf876c244435e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '4e009dbc5d2a3bf0', '3f1ef2c80eab7925', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd2d0b5217558283", "order_number": "B-03", "line": "4e009dbc5d2a3bf0", "line_state": "picked", "order_state": "picking", "parcel": "3f1ef2c80eab7925", "parcel_state": "open", "released": []}', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'a7d59161dec5009b', '3f1ef2c80eab7925', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a80ad41ac201d458", "order_number": "B-01", "line": "a7d59161dec5009b", "line_state": "packed", "order_state": "picking", "parcel": "3f1ef2c80eab7925", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'd326df3e92d78821', '3f1ef2c80eab7925', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a80ad41ac201d458", "order_number": "B-01", "line": "d326df3e92d78821", "line_state": "released", "order_state": "released", "parcel": "3f1ef2c80eab7925", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'a7d59161dec5009b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "a80ad41ac201d458", "order_number": "B-01", "line": "a7d59161dec5009b", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '2b9b97b6e59e48a2', '0e44b1bc5db2b392', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "4eb4ae5662e1561e", "order_number": "B-23", "line": "2b9b97b6e59e48a2", "line_state": "packed", "order_state": "waiting", "parcel": "0e44b1bc5db2b392", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '17107b9152334ae2', 'a17684a4a4c8b80e', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "500c6e09ec46aa1b", "order_number": "B-04", "line": "17107b9152334ae2", "line_state": "packed", "order_state": "picking", "parcel": "a17684a4a4c8b80e", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '638eb576925bd5e9', 'b520539510232cf1', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "94d46328057a477d", "order_number": "B-09", "line": "638eb576925bd5e9", "line_state": "packed", "order_state": "picking", "parcel": "b520539510232cf1", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '4e009dbc5d2a3bf0', '19c1016cf9e69508', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "fd2d0b5217558283", "order_number": "B-03", "line": "4e009dbc5d2a3bf0", "line_state": "packed", "order_state": "picking", "parcel": "19c1016cf9e69508", "parcel_state": "open", "released": []}', 'picked');
INSERT INTO public.scans VALUES (22, 'pick-L002', '7339c4b218452cc21046784baefd885851bfd8b20529eaf0daa129c077cc54a6', 'bin', '36925cb3d7c68e8c', 'L002', false, true, true, 'a09adde40d8fd4d3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "b04f624a4f000362", "order_number": "B-05", "line": "a09adde40d8fd4d3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '7d21f33bdc95c13f2f86cfbd6540ffd96f9f5b8206bca85cac07a32d10ab9539', 'bin', '36925cb3d7c68e8c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'aa9d274d51bb2ed5e5aa448c83de90f315b7eda8759bbc3764a1e529a0133a1c', 'bin', '36925cb3d7c68e8c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
INSERT INTO public.scans VALUES (25, 'bad-', '5dea35b2eab2bac42c9f52426e2f457160bd43ef934f54b246fac1f85f71ce63', 'bin', '36925cb3d7c68e8c', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '');
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
INSERT INTO public.stays VALUES (1, 'edc6c85b66edfb8a', '7aff2c91d85324aa', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '0d2b62248c756738', '8ff911447d898de8', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '642781251e307b25', '5b95a14f223f897b', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '7da028a965026653', 'fd2248e8d171c247', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, '2feb302fd4ecbcbe', '94ce38e7b03e7ec2', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, 'a33664b578e074a8', '498e0df2dea005dc', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, 'dae35bfe87c13be5', '824b3f7eeae015a3', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '86eff413dbdfae21', '6d94feb0ecdcd980', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'ec8425c7e86fbaa6', '95b7d44253f8112a', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '6ec17dcffee8de12', '23a7f7d1a1d7e6c6', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '655e4ee143986f46', '8375771d58b7fbac', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, 'a4d94c6697e904c8', '6abeca62b73cb01f', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '2e593cd510c40499', 'cf44cf19caa67f8c', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '6a6d1b57913a687f', '7d8679bd57a6a265', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, 'c2fcd5a00a9aa9ab', '0cdd3c4739c364cf', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'ca89e55350feda2e', 'bf834c5dc9368b09', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '589532cdbe39c496', 'a74cf7dbeebaab09', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, 'bbb3bd7e172b2e23', '6d068abe4b757f90', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, 'c723636b37943597', 'ea664dc741e14d5d', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '8743fc77829bfdcb', '431ed6573a31f3c3', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, 'af185cbaf222fcd1', 'a9bdecd23fdd4b95', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, 'b27577d7b0e68269', 'd5b51d0f65c42d50', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '6b60bdff690ba291', '603ae3b44ecf11fd', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '6b77b551ffebf6c6', 'ab0c79bf15b1d59a', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'ea5e65f818629a8b', 'ffa0d52abc73f02b', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, 'f775d3cfa8ee85e2', '31c495cdf511d5e9', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '77ef05b779efbdf0', '2887bc67d745ada9', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, 'b194fb27bc491d42', '272d887ad61af515', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '1859a12d252fa115', 'c0423b87581dfcfd', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'd540ff0f0ebcf3e1', '3c0412ae2f467c40', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '7487e78afc9bb279', 'ecdb0e200cdd1aab', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '6aadfa39d0f433c1', '15d9be48b22e2cc3', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '8410878ba945e531', '12486025c0ddfd46', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '1c90c3f411382d2a', '992459bcf8e0091d', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '112589f3b2611ec3', 'a9cffda19a7e4ee7', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '315e99bdcf79e579', '0bc4c4a7633ebf42', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'd06e6358007d1200', 'e8f6694f94519762', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '84489c63f46c8db6', 'f01eceba58eef326', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '06bdcefb82d867d6', '87983baaba945695', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'fba915ba57b891f9', '5969ea5a23908a75', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '4a3cc643f6ac482c', 'b23a2987adfaf6a7', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'f7740795c79a9c36', 'a85bfe62568baf09', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '9d74ab26b6e20b0c', '26c8945234bcea27', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, 'a087916c2195623e', '80c689e42ecd4639', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, 'fe36b56231966071', '80c689e42ecd4639', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '5923069288ace94f', '6c0d5de0350054cd', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '060a1e9fa9bbb89d', '6c0d5de0350054cd', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, 'd17efd7779a91e7c', '7f581fa08e196ad4', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '7475f277cddbfd23', '649ad27a289ec102', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '04980ee85ea4e401', 'ce1f2093dbeabfb6', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '906783827ac1d791', '746cee795eba233c', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, 'a6a33de1cc862426', 'f6f3daf0d1a018ef', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:28:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '224d83e00ce55b60', 'section:S', 'Spring', '2026-03-02T15:39:00.000000+00:00', 154, 'closed', '2026-03-02T16:12:00.000000+00:00', '{"stocktake": "224d83e00ce55b60", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}');
INSERT INTO public.stocktakes VALUES (2, '488470d9cc2f83d9', 'section:L', 'Spring', '2026-03-02T16:15:00.000000+00:00', 162, 'open', NULL, '');
INSERT INTO public.stocktakes VALUES (3, '8f225eb07498af85', 'tray', 'Too late today', '2026-03-02T16:31:00.000000+00:00', 168, 'cancelled', '2026-03-02T16:34:00.000000+00:00', '');
INSERT INTO public.stops VALUES (1, 'a87dd87d443df4a4', 1, '4e009dbc5d2a3bf0', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'a87dd87d443df4a4', 2, '2bc8dda4b6846af2', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'a87dd87d443df4a4', 3, '17107b9152334ae2', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'a87dd87d443df4a4', 4, 'ca13d41ec75b952f', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'a87dd87d443df4a4', 5, '70b33879faf595d1', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'a87dd87d443df4a4', 6, '9c5fab89ad25d6d7', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'a87dd87d443df4a4', 7, 'a7d59161dec5009b', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'a87dd87d443df4a4', 8, 'd326df3e92d78821', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'a87dd87d443df4a4', 9, '2b9b97b6e59e48a2', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'a87dd87d443df4a4', 10, 'd1abf876c244435e', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'a87dd87d443df4a4', 11, '638eb576925bd5e9', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'a87dd87d443df4a4', 12, '81458fd0d5acf61e', 'C-1-2');
INSERT INTO public.stops VALUES (13, '36925cb3d7c68e8c', 1, '21c79e163fbb43d3', 'A-1-2');
INSERT INTO public.stops VALUES (14, '36925cb3d7c68e8c', 2, 'a09adde40d8fd4d3', 'C-1-1');
INSERT INTO public.stops VALUES (15, '36925cb3d7c68e8c', 3, 'c50b649f8dc4d529', 'C-1-1');
INSERT INTO public.stops VALUES (16, '36925cb3d7c68e8c', 4, '3467d2bfe1ad2977', 'C-1-1');
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
