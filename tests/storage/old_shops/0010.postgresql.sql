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
    sent_number text DEFAULT ''::text NOT NULL,
    note text DEFAULT ''::text NOT NULL,
    collected boolean DEFAULT false NOT NULL
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
INSERT INTO public.access VALUES (1, '726a3476881fa80a82985cf2e16322408642273f4bb29b468ac989a62239d631', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$JyVFq+yq9vB0uaMLb/FkGA$jnfmDM3zcgI0S1F+wlwgyHL1BffGX4B/HrbzadZRXbM', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, 'ec5e701d810b7a7983f0353f04260b878860a61011a3bb1463fe5cdedba68bbe', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '35c1744b66cbb078e9618aa3852473e0d6269e51d4b1f8eb8f21632ab172f782', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '05e09e19a7caf81bf0139bbcc800fb25ddd193ea92d330b728b6fd6a010a4295', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '85475ada6f9a5193f25d1424f9c97de9beffbedff090cb933dcc6f881a346eef', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0010');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/02fc984275f72852', '{"id": "02fc984275f72852", "item": "c3dde01f752289da", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '573269dc113987e5', '18ecaa773959c3ea', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:46:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'f42f0a33eb673336', '67aded2556912439', 'missing', 'Not in its bin', '2026-03-02T15:11:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'a0758311fcd129b3', '77b87a9d6fd3527f', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:42:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '81ff7f5f7f34c481', 'c3ef9cb8890e1815', 'missing', 'a count of section:S did not find it', '2026-03-02T16:08:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '59facc20e13244b3', '53bddcbbdda2189d', 'missing', 'a count did not find it', '2026-03-02T16:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 177, 'a22d17fa43d1888834bf87ab382c731259a1467cf6640e8183a8c9dfba105077', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'c63f0dfeaffa2afe');
INSERT INTO public.items VALUES (3, 'be800803d99cc850', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '478b743b789ba6f4', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, 'c2f6de0459c3bde0', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, 'c67269b1e15446de', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, 'de88340fe2c32302', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '41ee27c113a196a2', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '2ed343a51f29f91e', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '8f34b5de33344ca1', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, 'b0ebb5461b82cfb3', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '45df3c75601b3f87', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'be4f8d497b4e5c7b', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '4cdc36e4a31b9f76', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, '5a3cb19fe18cab18', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, 'f3d2c784beef56f6', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, '0f80d6e17daa1122', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, 'cff250fe2b44d964', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, 'c3ef9cb8890e1815', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '6d12cda71efee5b6', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, 'b9451730b3d96017', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, 'b8797f0300492d4d', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, '9de8c6bb504cade4', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '7e71ec96095ef783', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, 'da2278c40bac604e', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '01e8bbd0b8c4f281', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, '67aded2556912439', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '9b6836047e4f0b6c', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, 'f2a35556384a674e', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '18ecaa773959c3ea', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, '53bddcbbdda2189d', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '0e3784a79daa1f2e', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '59786a0fa5acbd1f', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'a00a669dd3c4a866', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, 'fe1c57977c8edd45', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '8020518414d49e81', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'fe8fee5cc59d6fc6', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '789cd1572429d97c', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, 'c79139f87e8ffedc', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '8d617931082e0a4e', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, '75606594c716c770', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '96668121486a19d7', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, 'e768deffe188e24b', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '01e32c5b922caf4f', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, '10c2277165b697f2', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, 'b311ddfbf0b9e122', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '2027a30fb6ae2d40', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, 'c3dde01f752289da', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, '8f37714f7c0d3390', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'c0be9fd8765417bd', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '77b87a9d6fd3527f', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '7d292ce88de6b130', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '84e2e1d1e498e48c', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items c0be9fd8765417bd - 26ee1f1860de","slots D001 on_item e5405bc28ff8","stays 937d006c0b9d149c stored 4e43688d066f"],"stay":"937d006c0b9d149c","title":"Rear derailleur 1","turn":1}', '85beba0cb890c83f1b4fc2ad679f18120361401e152edca595f0a123d1a982c2');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 8f37714f7c0d3390 - 01b08f8019e5","slots D002 on_item 4f79f524f247","stays 4d9440baa2791e6f stored 92e2d247ab6f"],"stay":"4d9440baa2791e6f","title":"Rear derailleur 2","turn":1}', 'fc3688cc638afb3397dd244a034f29db363d168c9f2b327eba2b2307c7f152be');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items be800803d99cc850 - daaea4ab219c","slots D003 on_item 6de523ac8b4d","stays f7660aa4719cbfea stored bd0cf17ef5c5"],"stay":"f7660aa4719cbfea","title":"Rear derailleur 3","turn":1}', 'f99fd2f0a31ba52009b0620d326c65a389816af0040ebe072a0109b4639f70dc');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 478b743b789ba6f4 - 7fd8227a47a8","slots D004 on_item ec423998da46","stays a53bfce2cfcec81a stored aa33ad6a102d"],"stay":"a53bfce2cfcec81a","title":"Rear derailleur 4","turn":1}', '019c09969f50d54f017b27b7a77b8497dde6dcc12111806c2615a28d63be6ba5');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items c2f6de0459c3bde0 - 2f8017d29fe1","slots D005 on_item 91ad3faf88d6","stays a05bd59d3d17d2e8 stored 2f59842c2706"],"stay":"a05bd59d3d17d2e8","title":"Rear derailleur 5","turn":1}', '6c5fa412b5284bd8aad738a0a61cf6aa368fe6d5133ed9dec3f2fbf3093ee113');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items c67269b1e15446de - 6555fe6617d1","slots D006 on_item 1fadb568d6a5","stays 66040640843e3fb8 stored 0e1335ee39df"],"stay":"66040640843e3fb8","title":"Rear derailleur 6","turn":1}', '890553e589e1ee5aea8b2f1be6c616067bf1250d2fd937e3e04134f278770b35');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items de88340fe2c32302 - 3e200cf111d9","slots D007 on_item 536077e3b728","stays 695069a8599206e3 stored 1e63eb2a72be"],"stay":"695069a8599206e3","title":"Rear derailleur 7","turn":1}', '417df7296d6a37f19d8b7bfe7de991cf9bdfa07107649a7c057212857a773403');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 41ee27c113a196a2 - e8b3b1855955","slots D008 on_item facb453cba22","stays 7c01b18989b03aaa stored 164c900703a5"],"stay":"7c01b18989b03aaa","title":"Rear derailleur 8","turn":1}', 'a1feba1ad51ba21210701718d5225b26671e870ef72e27e0b16c7076eabc0031');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 2ed343a51f29f91e - fc309b383600","slots D009 on_item 7434bf04ccf2","stays cd6dd4219f41697a stored d08fd977f5de"],"stay":"cd6dd4219f41697a","title":"Rear derailleur 9","turn":1}', '2d86e30bb0522105be03c25ce0d65c056e9d54f703cac2179abcdc28e449472a');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 8f34b5de33344ca1 - f713f7834454","slots D010 on_item 1f8fd3ebaf8b","stays c0f9e162e78247e5 stored f3b1721163c9"],"stay":"c0f9e162e78247e5","title":"Rear derailleur 10","turn":1}', 'd54d7ead05bd7fd2752dcd29ab8b49596cb05027e32ee354dde69c70a08a9761');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items b0ebb5461b82cfb3 - 752dbccdc000","slots D011 on_item d451255e38b7","stays edd82e441be9d036 stored 7f8b56e096ff"],"stay":"edd82e441be9d036","title":"Rear derailleur 11","turn":1}', '57d193b8526b859aceff57da4c0366c0c8411c8c1cdb82c50e8a4822056184a1');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 45df3c75601b3f87 - 8d4333d44cfe","slots D012 on_item bdbda5bb2b7a","stays 67ab08c413b1857e stored 021cf4508c0c"],"stay":"67ab08c413b1857e","title":"Rear derailleur 12","turn":1}', 'a6be1418b330e2a1127a27d895e4e2ee3efa473fcd67e7d427caf76462386c47');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 77b87a9d6fd3527f - 15dfcab3884e","slots S001 on_item 76dcd853e3e0","stays 3cb259c8100df17c stored d77fc090395b"],"stay":"3cb259c8100df17c","title":"Leather saddle 1","turn":1}', '4ffbd5c50d352021fea0204414c6850200002b826652d6befaad66aedb5997dd');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items be4f8d497b4e5c7b - cd40527a45ba","slots S002 on_item 6fb94c47a50d","stays d96d17bae68508aa stored 019333a3cc37"],"stay":"d96d17bae68508aa","title":"Leather saddle 2","turn":1}', '4b33f14fa006c228047fb35d77f57668fd14a9ff938e8d0a498ce7e8b2ab97ef');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 4cdc36e4a31b9f76 - f5eb994ac930","slots S003 on_item e00808332634","stays b290f14fc1cf8810 stored 20ba618045b4"],"stay":"b290f14fc1cf8810","title":"Leather saddle 3","turn":1}', 'f0f97ab6d5ee80b1bbf875d822f49306d972533ddb015d25093ff100b2d3523f');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 5a3cb19fe18cab18 - 8e605987737d","slots S004 on_item db1aa8005467","stays 3d255a069c75e6ee stored 158628373d8c"],"stay":"3d255a069c75e6ee","title":"Leather saddle 4","turn":1}', '66c101fcbeaf5016c8ac900a91980486702168928f22b24ff0c6a9d6348fba5f');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items f3d2c784beef56f6 - b6720c8b5ed4","slots S005 on_item ec548ef84f99","stays 65eb149470f6363c stored 232c3dbb65be"],"stay":"65eb149470f6363c","title":"Leather saddle 5","turn":1}', 'cb6cb4cbf5e6e56f58185b5fc2a24c2720007cbfb02bda04cd22ef61b210b89c');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 0f80d6e17daa1122 - e4071baad743","slots S006 on_item dc9bc74eb63a","stays 9cd85bbb5db6dd56 stored e4b1de9c637e"],"stay":"9cd85bbb5db6dd56","title":"Leather saddle 6","turn":1}', '1f2f50eb9df0c8c313068bfc847c26f3e4b139b41623145b61fb505a55d64285');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items cff250fe2b44d964 - 6e2bcc4d7ff3","slots S007 on_item 075fd8b9fecf","stays fd0bc70dbeaa1afe stored 20731b326905"],"stay":"fd0bc70dbeaa1afe","title":"Leather saddle 7","turn":1}', '28f4cb1a3437323bf2dbad8f2c9c1618e5391177baa5e4c14c0bfc257b2ab61c');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items c3ef9cb8890e1815 - 7414495e7af2","slots S008 on_item 39fdb847a4bc","stays 285790cc087de215 stored e732dc304617"],"stay":"285790cc087de215","title":"Leather saddle 8","turn":1}', 'b0160b1745137d67d21be344e052e845a915c273190104250205a628ca868c75');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 6d12cda71efee5b6 - dc993985804f","slots S009 on_item 62c79df275b3","stays dd4c3181c5f1a5a3 stored 9b6f91686c33"],"stay":"dd4c3181c5f1a5a3","title":"Leather saddle 9","turn":1}', '9ba675b0188ad8fdc8a8a10214b9ab7aaa2cb8cc7866f8d50745ff527d02f702');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items b9451730b3d96017 - acd99dab0843","slots S010 on_item 1fd8d85fa1c4","stays 11e5c934b66d2061 stored 037684fd66a7"],"stay":"11e5c934b66d2061","title":"Leather saddle 10","turn":1}', '79291ca7e3fe29f5a29026a1f3657f481ef62aecc01ea47f21b3fd922aef9b27');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items b8797f0300492d4d - 283f2ec64919","slots S011 on_item e59577c4b2a7","stays 7b89a0040f15879d stored c29df8905e81"],"stay":"7b89a0040f15879d","title":"Leather saddle 11","turn":1}', '69848118996dc673cd01c06c7a327fbef636c99f08f96dd211ef27808d15e721');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 9de8c6bb504cade4 - 85a8f0b407be","slots S012 on_item 9bae442e2436","stays 5b4017d5cd6b5416 stored 16ad1dd669bf"],"stay":"5b4017d5cd6b5416","title":"Leather saddle 12","turn":1}', '9406a151c064209a5c812744ef36188204e16f36273fe016ade8cb84dd317d43');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 7e71ec96095ef783 - 2c03c298fab1","slots L001 on_item 43c5cdfaa8e4","stays b32e450cff22026f stored 4444a31edf1e"],"stay":"b32e450cff22026f","title":"Dynamo lamp 1","turn":1}', '9d86a6d9a0cb9d0f13c8929c2d14b93044ddc1dd125fd0c555132e9a46151f29');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items da2278c40bac604e - 91d59273de11","slots L002 on_item ea8e77c8b06f","stays e8c3052ec97a1e05 stored 209239c4242a"],"stay":"e8c3052ec97a1e05","title":"Dynamo lamp 2","turn":1}', 'd3f2fcd7dce8c43c018793b6550d3703c4d108120154249bf9c4e22e5168907c');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 01e8bbd0b8c4f281 - 93f2c12dcd70","slots L003 on_item c35e4c005cda","stays db9e39ed86998618 stored 32968dac1f80"],"stay":"db9e39ed86998618","title":"Dynamo lamp 3","turn":1}', 'c7733df75eaa677178875342facfafa5ed28a9dd9af1bc5ebdfeabab42284c1e');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 67aded2556912439 - 8b2399b6d17a","slots L004 on_item 70a88e4a366b","stays 591dbbb87f35ff5c stored a272e94832a9"],"stay":"591dbbb87f35ff5c","title":"Dynamo lamp 4","turn":1}', 'd5243ac8d9f8747b48d1bcd4c06c01c06dcfe764d7e2b51ce4e7ab6e4b7c27d5');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 9b6836047e4f0b6c - 16ab92209916","slots L005 on_item 6261d94de1ef","stays 954cfaf88f3bd962 stored b70754ef1978"],"stay":"954cfaf88f3bd962","title":"Dynamo lamp 5","turn":1}', 'd1a77133d6133b0cc10aa6da0270c3b7f52b9f8cf24546870edcd9d5747bc6be');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items f2a35556384a674e - 1222f6285f19","slots L006 on_item b67b470f3637","stays e2a68448cdd3b3f3 stored a0bb700afe61"],"stay":"e2a68448cdd3b3f3","title":"Dynamo lamp 6","turn":1}', '6e4ef822225c7ecbe7a2ef8c089364f09ba51d43e7dec1f2fc095e69d89a8da1');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 18ecaa773959c3ea - 826c06854ac8","slots L007 on_item 767524982af4","stays 0442e0a68f3895d9 stored a1197b323a8f"],"stay":"0442e0a68f3895d9","title":"Dynamo lamp 7","turn":1}', '6a4164cb3040747e037608ea42b2874fcefce5ec8a931fb84c1b1812c6439e90');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 53bddcbbdda2189d - 3a604b9efcb8","slots L008 on_item b3b2d23a98b7","stays d217b9ce8b73a878 stored beec36654f26"],"stay":"d217b9ce8b73a878","title":"Dynamo lamp 8","turn":1}', 'e4a6492960fa83c26a06be784958dfd459c85a20a6e3da3296995f97da2512b0');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 0e3784a79daa1f2e - e56fc74125c7","slots L009 on_item c3139144a3f8","stays 6e168e7a81575999 stored b7ecd25299d2"],"stay":"6e168e7a81575999","title":"Dynamo lamp 9","turn":1}', '42155fa7cbe4eefe6d74a646fdb2b844a2dcc50c4b52f671778c13eec1e11a6d');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 59786a0fa5acbd1f - 6b77d9dbc208","slots L010 on_item f8c13ae8aec4","stays d8f493769e87e384 stored 56e453a9464f"],"stay":"d8f493769e87e384","title":"Dynamo lamp 10","turn":1}', 'f5e6dac28d9555ebef17edba4f0d6e8aa65f316911075a2b19375ed45d4b082d');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items a00a669dd3c4a866 - eb1e78e6f591","slots L011 on_item 9d01c75c0f89","stays 14e79b39ff0cf9a2 stored 4525e90967b8"],"stay":"14e79b39ff0cf9a2","title":"Dynamo lamp 11","turn":1}', '62ce11d21e536302329693c0f1297b435717350cb3270f6a6e2d8fd75c07cfa9');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items fe1c57977c8edd45 - b845c640c2a5","slots L012 on_item 5373b19b101e","stays f0378fa57cc7baaf stored a2f90b2a9f63"],"stay":"f0378fa57cc7baaf","title":"Dynamo lamp 12","turn":1}', 'a8689af2c74d3a40aca7dc9156cca524a1751cd970c70f733e6885abab2632a1');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 8020518414d49e81 - f54357d7778b","slots W001 on_item 17dd342c2f6a","stays 606138e0f9ac6d8b stored a7155eb0b329"],"stay":"606138e0f9ac6d8b","title":"Front wheel 1","turn":1}', '51026587ab765627ad2d1309ce4d4775b771df0fbbc066012f514916ef8acdc9');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items fe8fee5cc59d6fc6 - d08979688b2b","slots W002 on_item 7ebfb8df41ca","stays a66b1567db9a27af stored 224d7ae104e9"],"stay":"a66b1567db9a27af","title":"Front wheel 2","turn":1}', 'd398c1705535f25275dac6f43a6675d8d633d7a43fc7d2b459ca0f651ab26f17');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 789cd1572429d97c - 025003af1f5b","slots W003 on_item f84a2674e962","stays 651db47824d70a0d stored de0844c402af"],"stay":"651db47824d70a0d","title":"Front wheel 3","turn":1}', 'cc70176f8478d76270038349439e83475b506118ac745e80574b9f863634451c');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items c79139f87e8ffedc - f0bd3d64338e","slots W004 on_item f45ed94fd55a","stays c40bf4a9c3119deb stored 540a1ef89faa"],"stay":"c40bf4a9c3119deb","title":"Front wheel 4","turn":1}', '675df7b067b98aee532078bd89f73a33c636f1c2e7dc9b06bd9a880c9c8a87ec');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 8d617931082e0a4e - aedf491301ad","slots W005 on_item a1fdfb2c692e","stays 974b7a4d05e53df6 stored 7df74413e732"],"stay":"974b7a4d05e53df6","title":"Front wheel 5","turn":1}', '718ef6a6ecb5e40e3c071915064a0db7674b78906a2cf3683f0744f03a30ea86');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 75606594c716c770 - 47a4ced48e43","slots W006 on_item 3dd6244f0bee","stays bed9a8e38879a7f5 stored 87f03fbe2801"],"stay":"bed9a8e38879a7f5","title":"Front wheel 6","turn":1}', 'e15d2de6f00d8535a7ca8ab10e3890a679a276097160db845cb8771816f81acc');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 96668121486a19d7 - 27837513b522","slots W007 on_item d52463b699e2","stays 8f6ed006ac568100 stored 0b58c19d63c3"],"stay":"8f6ed006ac568100","title":"Front wheel 7","turn":1}', 'e05da5fd2d2589a6fab07613f48d30d26548f3cfa1f2ab28648cd7a2be0cd60e');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items e768deffe188e24b - 4909315fee45","slots W008 on_item 2e167460fb16","stays ff2425a58bd96734 stored 3fbf4b74c5b2"],"stay":"ff2425a58bd96734","title":"Front wheel 8","turn":1}', '99cbef4210447ebcc5b286ec44f8c9d7414de9a8747dbb7d9f80329754a934bd');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 01e32c5b922caf4f - a722deb43593","slots W009 on_item 597fc2f4b56e","stays 957a2ed29e957f6d stored c75cbc5775e0"],"stay":"957a2ed29e957f6d","title":"Front wheel 9","turn":1}', '702163a907c7e7e6a5cf70fab0887d5bba66b6477205ad6fbe2cb31d0dba30fd');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 10c2277165b697f2 - e000f240b4bf","slots W010 on_item 7d0365c2d2de","stays 900cabf0deb2912b stored dd47496c4471"],"stay":"900cabf0deb2912b","title":"Front wheel 10","turn":1}', 'b2cae774d328fd923913650f494f9bb0d7f0a6307e97f4de14e6d41d020eddc8');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items b311ddfbf0b9e122 - 07b2e8ff4d0f","slots W011 on_item d3a26b640d71","stays 87c935f02cd060d2 stored aac01c6b3657"],"stay":"87c935f02cd060d2","title":"Front wheel 11","turn":1}', '3cb16dc466764d1de91e3be02b05eeab5fe3997a1f3fcf6a1e76671affcb5ac9');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 2027a30fb6ae2d40 - a7a90662cd37","slots W012 on_item ac10bfb906d6","stays c298117c1f6002bd stored dd27adc5af78"],"stay":"c298117c1f6002bd","title":"Front wheel 12","turn":1}', '0e5ebf5736f8de0b7ec42792b5c0425e8449fac1dff0b3cb7810720aaba1b7eb');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:49:00.000000+00:00', 'cancelled', 'boss', '{"lines":["532a70ae986f7ef3"],"now":["lines 532a70ae986f7ef3 cancelled cd629cd7bb4d"],"number":"B-08","order":"d4449a361df2d904"}', 'd50c82c738b9d1134fa5fe5f918f4737b3acab356ab23987030bc796196e3989');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items c3dde01f752289da - 895ade34f02b","slots D013 on_item 69b6f1c92d5d","stays 02fc984275f72852 stored efe36875d160"],"stay":"02fc984275f72852","title":"Brass bell","turn":1}', '5b1b4eb846758071ab49fc9e712c72b11bc8361ee7f36f97549480f4cdb54af8');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 8f37714f7c0d3390 - a82d367dfe0c"],"stay":"4d9440baa2791e6f"}', '4f1fd3cec376c0f363e7168928fc361503faa32d813d453fc7e6f29ef255e792');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 11e5c934b66d2061 withdrawn ada86458c35b","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"11e5c934b66d2061"}', '26c163203eafccdbf447bb17ad4198ab61f48824cbac4ffb5b59bb05164d4b0d');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays c40bf4a9c3119deb withdrawn 759909164c6e","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"c40bf4a9c3119deb"}', '185c05cf9e2b00bd8a87ad4333bf2f523aad7176559d901121d6a225eeacc50b');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"13f07007eda41683","now":["stays dd4c3181c5f1a5a3 moved 6ad2df2ff3b3","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 13f07007eda41683 stored e8f0d19ceb60"],"stay":"dd4c3181c5f1a5a3","to":"S013"}', 'ee96ca134a4e82584ebbac4d4677f24177efb96e9dff235ac40027e05abc1776');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items c0be9fd8765417bd - 545cfd62fca8"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"937d006c0b9d149c"}', '4ed6172d4583633b6b2c62080c3c7111b20b97355d794d52493e46f3b861fe81');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 77b87a9d6fd3527f - d70708abf190"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"3cb259c8100df17c"}', '6e9aad4f32252d7ac4d796f44f9b68bf8acb44ff7846c0741900fc4c6c7975f7');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:22:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '646de3b8d44e542b9ff808406b0960e16e4a6ecb14412e8627cf903e09baba54');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:25:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'ab587a6e6427d389fbe97bd2141d0594cce90d6ea26ffa6c6056d767a9cf54e1');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:26:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '601603a97383bc26472280feb46816a0c987b5173e377c144c5576895b46be55');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:27:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '1157aabc57c35390e1b3975bb8dc1d9ea125d44787cd533ef413af4785a03696');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', 'ee5d05152a2e00ebc210f8caa9dde65bf69ffe371d1ceeba06acabcf351d0240');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:31:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8b67ffc048558702","reference":"W001-01E","stay":"606138e0f9ac6d8b"},{"hold":null,"line":"75d210d9abd69f42","reference":"W002-016","stay":"a66b1567db9a27af"}],"now":["orders af40c22760c008e2 - 5646e4ae5b5c","lines 8b67ffc048558702 waiting c11b4338a4df","lines 75d210d9abd69f42 waiting 7671990f3ed0"],"number":"B-01","order":"af40c22760c008e2"}', '1a9cd2177d59c9e9c6d645a72546372544996c7244508865f80826cd33c1080d');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:34:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6201232b0d400b7b","reference":"S002-013","stay":"d96d17bae68508aa"},{"hold":null,"line":"824e1e2633db2cbe","reference":"S003-01W","stay":"b290f14fc1cf8810"}],"now":["orders 32e762354e713a77 - 712c5906ffda","lines 6201232b0d400b7b waiting 65b6f621e5ce","lines 824e1e2633db2cbe waiting fea9c3de9401"],"number":"B-03","order":"32e762354e713a77"}', '1ce661ae95e1bb938364ad2ee5c3ccf809482a0e008da28a3e3b434fee0c0fca');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:37:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"282378adfd8c04ca","reference":"S004-01O","stay":"3d255a069c75e6ee"},{"hold":null,"line":"c4ad988c53381aab","reference":"S005-01G","stay":"65eb149470f6363c"}],"now":["orders 69b92532e559fcff - 20093a6678fb","lines 282378adfd8c04ca waiting 71416089e3e9","lines c4ad988c53381aab waiting cc43556d68bc"],"number":"B-04","order":"69b92532e559fcff"}', '2395da08d7c6a99d9f623eeaa65a97c61bbd923a05c2e3a9267fe01ff4e97f1b');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:40:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"01184f7853820781","reference":"L002-017","stay":"e8c3052ec97a1e05"}],"now":["orders 736bfdd2a4c73994 - 4ea5a3f0b68e","lines 01184f7853820781 waiting d81222f2e789"],"number":"B-05","order":"736bfdd2a4c73994"}', 'ac354b5c42fc7adb12b57d5fd1ed92fcbc72ffa4344554c20d4119c5ea978f21');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:43:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"51434f91289c9dfb","reference":"L003-010","stay":"db9e39ed86998618"}],"now":["orders a8adf2c02e12e568 - 2c212f3881c9","lines 51434f91289c9dfb waiting d764680bfc09"],"number":"B-06","order":"a8adf2c02e12e568"}', '95be63fcd1a7bc1864b0b31a1f56101e03769496a8f10316973b8ab38959e6e4');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:46:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"62924329b671cce6","reference":"L004-01S","stay":"591dbbb87f35ff5c"}],"now":["orders 3bf608c2816c2eeb - 62193d43ca38","lines 62924329b671cce6 waiting 8440d3fcdf1e"],"number":"B-07","order":"3bf608c2816c2eeb"}', '21fcc55144755d4eb501eaa5382395e00690d8c4005eca91d33ff2e8fc82991e');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:49:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"532a70ae986f7ef3","reference":"L005-01K","stay":"954cfaf88f3bd962"}],"now":["orders d4449a361df2d904 - 71f721051362","lines 532a70ae986f7ef3 waiting c74b322fbdb0"],"number":"B-08","order":"d4449a361df2d904"}', '5639b773e545a7a1f5a70460ead5e8f1d9664fa4a452ad11eb37130b5e4bf0b7');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:52:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"51a17fe1018a112b","reference":"L006-01C","stay":"e2a68448cdd3b3f3"},{"hold":null,"line":"3ecc9ebd99370722","reference":"L011-010","stay":"14e79b39ff0cf9a2"}],"now":["orders 2e6c0e9aefbc08ad - 0411bed2a42a","lines 51a17fe1018a112b waiting 3f6700c4faa5","lines 3ecc9ebd99370722 waiting d883c5dc9a55"],"number":"B-09","order":"2e6c0e9aefbc08ad"}', '03347ed7c6ce3e3d50f50df85e3087c2fac10daabb4f018a3a9e99a605b8ec67');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:55:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a4ad7c9850240561","reference":"S006-018","stay":"9cd85bbb5db6dd56"}],"now":["orders 2777d57a9488cc5c - 88bd4dff5d5f","lines a4ad7c9850240561 waiting f3a4d719bf35"],"number":"B-13","order":"2777d57a9488cc5c"}', '109d786620ecd311b619c60398a9090447cdbc254c904e622b6c09bf85e28ee5');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:58:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6908f2dce11dbfb1","reference":"L007-014","stay":"0442e0a68f3895d9"}],"now":["orders e895bae2e2901e9b - f5b831cfa2c6","lines 6908f2dce11dbfb1 waiting ce28a69eedb8"],"number":"B-17","order":"e895bae2e2901e9b"}', 'eeb4f0b40a897df013cd624396ef042aa3cd4394af60f6a45975528c33dccdb6');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:01:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cf2bc65e05321152","reference":"D009-01B","stay":"cd6dd4219f41697a"}],"now":["orders 15d070fbfe6ff55c - 321ba182fb0f","lines cf2bc65e05321152 waiting 108310eb0616"],"number":"B-18","order":"15d070fbfe6ff55c"}', '690772ddc74096a1b896f6efc94d547864b57157e38369d3d3fad5659110da96');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:04:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"43c12dbc015bd1a4","reference":"W006-013","stay":"bed9a8e38879a7f5"}],"now":["orders 1349b96825782699 - 92287ec7236c","lines 43c12dbc015bd1a4 waiting 74da2802e98d"],"number":"B-21","order":"1349b96825782699"}', 'c8b9e596720dac44941a8c27447a877877c7fc90402a893de333c6200b94c3e8');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:07:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"986d90248e46598d","reference":"S007-01Z","stay":"fd0bc70dbeaa1afe"}],"now":["orders 8323810109fb08f7 - 08ccd0976fb7","lines 986d90248e46598d waiting ca19a8f40d55"],"number":"B-22","order":"8323810109fb08f7"}', '37387e969f9065a828d6a5a4e4c3bef140133bb29d84e97394c19e1bbe3f6c9d');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:10:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"71d6ca76b382f1c9","reference":"W007-01W","stay":"8f6ed006ac568100"},{"hold":null,"line":"b5115e8189040431","reference":"W008-01O","stay":"ff2425a58bd96734"}],"now":["orders 7eb69275d5db32be - c231f40851bd","lines 71d6ca76b382f1c9 waiting a8a58a72b340","lines b5115e8189040431 waiting e001015158ac"],"number":"B-23","order":"7eb69275d5db32be"}', 'f475b670dfbcf76da73f858331102a15f0396f47cf2ead09a8ee359d3dd6750e');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:13:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fc52b5774780f91b","reference":"D008-01J","stay":"7c01b18989b03aaa"}],"now":["orders 2f2586ec7d16f523 - 60f98c206f82","lines fc52b5774780f91b waiting 36212325d260"],"number":"B-26","order":"2f2586ec7d16f523"}', '7ccf9f09e9df0df8b8578776f94a64a811a9dceb640257e2c6cd429db05f05f3');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"ee51da1ecea0bce0","reference":"D003-01U","stay":"f7660aa4719cbfea"}],"now":["orders bf55b2de694a83fd - d0d84c4d7db0","lines ee51da1ecea0bce0 waiting 8908e0f0d813"],"number":"B-30","order":"bf55b2de694a83fd"}', 'feceee618b152b95e05a15952702fc1690c691d57fe3042e81f387406f074c77');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:19:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"18f3d804c96309f3","reference":"D005-01E","stay":"a05bd59d3d17d2e8"},{"hold":"unknown_code","line":"1c81e0ba649b5176","reference":"Z999","stay":null}],"now":["orders 742943ea3a27c8d2 - 0047d6a6a692","lines 18f3d804c96309f3 waiting 67fa3a9cdc55","lines 1c81e0ba649b5176 unbound 2ba54128a0e6"],"number":"B-31","order":"742943ea3a27c8d2"}', 'b69aed12e0f209172aff22dcb59e219fd15a483775339d2f943cf2ffe5860127');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:22:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e5e0768d95449410","reference":"D006-016","stay":"66040640843e3fb8"},{"hold":null,"line":"4f0803c178e5724c","reference":"D007-01R","stay":"695069a8599206e3"}],"now":["orders ed449d2a94c15866 - 76fffd60d50e","lines e5e0768d95449410 waiting 705fd6ead202","lines 4f0803c178e5724c waiting 2d3cf7710e84"],"number":"B-32","order":"ed449d2a94c15866"}', 'd843ce84f1104094721897b2500b5a8d89bca7dce9dea4380c11501d352d6fb3');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:25:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"4f0803c178e5724c","reference":"D007-01R","stay":"695069a8599206e3"}],"now":["lines 4f0803c178e5724c waiting bb2e95117758"],"number":"B-32","order":"ed449d2a94c15866"}', 'f57c4faa80cdd5e2fa29d4ecc0be5746d667a345d2849d2ad24518594cc66940');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:28:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"4208943129f30c29","reference":"lamp","stay":null}],"now":["orders f2fc5ca04bc784b3 - bcf339aaf961","lines 4208943129f30c29 unbound 7d92127fc670"],"number":"B-33","order":"f2fc5ca04bc784b3"}', 'f6a2ae826219c36235b18688f2c8d87d5ee26b0c31b831af92945a1be8c62797');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:31:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"8511267f447f7542","reference":"D006-016","stay":null}],"now":["orders d108f6e456b51e3f - 3d36e1ac89a6","lines 8511267f447f7542 unbound d17c12875863"],"number":"B-34","order":"d108f6e456b51e3f"}', '6bbedc62fe2b198c81d2ec98173c24283bdf7df451ceb9f0c13b78f9a22e22a1');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:34:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"5c303f8fbe46612c","reference":"W004-01J","stay":null}],"now":["orders 13a01bbad154a140 - b8551874f717","lines 5c303f8fbe46612c unbound b87f0f0b85f4"],"number":"B-35","order":"13a01bbad154a140"}', 'b0802cd4619d8046afab227a72c8536f02243b3239596aac907cc6a42845600d');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:37:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"907d0b278a1303f7","reference":"L015","stay":null}],"now":["orders 09eb834643be1d87 - 5411a47091ec","lines 907d0b278a1303f7 unbound 0d8dfe9fd31b"],"number":"B-36","order":"09eb834643be1d87"}', 'ad487972e5e9ba21dd62a4b331744575b727c8f1f3740587d497d46709aee232');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:40:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"e87ded6ba0c94f8f","reference":"W005-01B","stay":"974b7a4d05e53df6"}],"now":["orders c32203470dd9ff93 - 33d2bf9f45a6","lines e87ded6ba0c94f8f waiting 0dc9e15c98fa"],"number":"B-37","order":"c32203470dd9ff93"}', '6bbd466b9e4f2ddf095bdc43cff1490f4a7673346151096400e9a3db2a0f6f8a');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:43:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"e87ded6ba0c94f8f","now":["lines e87ded6ba0c94f8f waiting 5421e2dc96e0"],"stay":"974b7a4d05e53df6"}', 'd21d34c03dbdac368f75436fcc6f7ce1224ed00863d9845d845d61003961b56d');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:46:00.000000+00:00', 'doubted', 'boss', '{"doubt":"573269dc113987e5","doubt_kind":"not_this","item":"18ecaa773959c3ea","now":["doubts 573269dc113987e5 - 7e3dd64bf208","lines 6908f2dce11dbfb1 waiting f2cdb9712275"],"words":"Another lamp, by the photo"}', '76ced1a0db6f1afd94a9ac4a7d3bd2c513bacc445a5f140fab671b2132732862');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:46:00.000000+00:00', 'held', 'boss', '{"line":"6908f2dce11dbfb1","why":"Another lamp, by the photo"}', '3f9051089ba5a52bedbc2155676ac80c06a2cbf6e580036eeb1c3c18c8d043f2');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:52:00.000000+00:00', 'cancelled', 'boss', '{"lines":["43c12dbc015bd1a4"],"now":["lines 43c12dbc015bd1a4 cancelled 7719b77ba2cf"],"number":"B-21","order":"1349b96825782699"}', 'bf1d23b59157a0140fa52034dbf578bfa7a7f3af04bb6746460c5b8bc5097a5d');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:55:00.000000+00:00', 'revived', 'boss', '{"line":"43c12dbc015bd1a4","now":["lines 43c12dbc015bd1a4 waiting 74da2802e98d"],"stay":"bed9a8e38879a7f5"}', '63d12736f827d915de7ae198e41a6fdd6912eef5cbe18a2afef0e9e3baf5c976');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:58:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"33d92d7f61c29e66","now":["stays 7c01b18989b03aaa moved 5034145902ea","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 33d92d7f61c29e66 stored 2e991d729c8a","lines fc52b5774780f91b waiting 34b6168bf0e0"],"stay":"7c01b18989b03aaa","to":"D020"}', '99c2c512704ab0d817d234af041ef2c15919908ccff4f53b9a3f04a50cce3207');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:04:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"bb6f8c313244fd58","reference":"S012-01O","stay":"5b4017d5cd6b5416"}],"now":["orders 7208350a5c2f7f07 - 5e89e3830c9d","lines bb6f8c313244fd58 waiting 0cbefbba1259","orders c6155dbc8904fb5f - 038839df7fd7","lines f554969f56160af7 unbound 750831498a86"],"number":"F-1","order":"7208350a5c2f7f07"}', '1c889ad42516231f0630a0a634f025377134c9d21ffa96d50929e92e5e594ae6');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:04:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"f554969f56160af7","reference":"","stay":null}],"number":"F-2","order":"c6155dbc8904fb5f"}', '5a69adda106c85009dd574e2180d82861272e047cf5454ff55549a6d276d3628');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["8b67ffc048558702","75d210d9abd69f42","6201232b0d400b7b","824e1e2633db2cbe","282378adfd8c04ca","c4ad988c53381aab","51a17fe1018a112b","3ecc9ebd99370722","a4ad7c9850240561","986d90248e46598d","71d6ca76b382f1c9","b5115e8189040431"],"now":["rounds 94576ead0c52374f open ac303d495246","lines 6201232b0d400b7b waiting 86ed1b9d368b","lines 824e1e2633db2cbe waiting 1866c2615de9","lines 282378adfd8c04ca waiting 6c02b81e0b93","lines c4ad988c53381aab waiting 794660b13453","lines a4ad7c9850240561 waiting 1a653bb37a8e","lines 986d90248e46598d waiting 29dbfdb06c8b","lines 8b67ffc048558702 waiting f94c5ddb2634","lines 75d210d9abd69f42 waiting 54260f18ebb8","lines 71d6ca76b382f1c9 waiting 654f3748d12f","lines b5115e8189040431 waiting 5aefaf606fc8","lines 51a17fe1018a112b waiting 3df7cfd06e36","lines 3ecc9ebd99370722 waiting aab07afc4216"],"round":"94576ead0c52374f"}', '027429ee68791aa66e457c1f48a972dd2fe4dacb69abc80518da4cce4c0c56df');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item d7dc0c8b5fa8","scans free-D004 - 1be907e1c27a"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'faae608b9c57dd83bf4ca41df25b10ea38028e998c8f09e9a215ee3ff5699605');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"8b67ffc048558702","line_state":"picked","now":["slots W001 on_item 430530e14b95","lines 8b67ffc048558702 picked 297a9b1df46e","scans pick-W001 - 3e509075f7bd"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'a9d39002bde1289659c0e11a3dddbfa1223748bffe941e3b99e5a1af4a78dda7');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"75d210d9abd69f42","line_state":"picked","now":["slots W002 on_item 5427c42b091d","lines 75d210d9abd69f42 picked 9d6a303da824","scans pick-W002 - d99f0cef8981"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '2daf37c4a4180c26259c52bd3d15ae09b7cb86a66dcb276fc792a346a2389b60');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"6201232b0d400b7b","line_state":"picked","now":["slots S002 on_item bea4c8102ba2","lines 6201232b0d400b7b picked 563398b23ec4","scans pick-S002 - 9c250cbdaec3"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'c908ade10ec40ac9cc997692dd5068325d38f06a7e1d9a28cbcda39fe99c5ab9');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"824e1e2633db2cbe","line_state":"picked","now":["slots S003 on_item 80a3c893b677","lines 824e1e2633db2cbe picked 44f6d4d92eaf","scans pick-S003 - 54ca0d58e7b4"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '37dfd68fa8ee0a1321f511b5b59fc9826a6baf3f0c0031c7a1b81c0018fb0a2e');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"282378adfd8c04ca","line_state":"picked","now":["slots S004 on_item 1a1b8113e615","lines 282378adfd8c04ca picked ce3c53a1825c","scans pick-S004 - 306320bf4168"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '1d93ed71f2d7f2b89bf3c511ea72dcb8405091efe64e9d305d4b2bde3a20143d');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"c4ad988c53381aab","line_state":"picked","now":["slots S005 on_item 70ef3f9f7fce","lines c4ad988c53381aab picked 941c40c739e2","scans pick-S005 - 5d4752b97ae2"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '42e55c6be90517f03103816b103f3a6903057891346ff29e74b065c2d766cb2d');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"51a17fe1018a112b","line_state":"picked","now":["slots L006 on_item 7008777addb7","lines 51a17fe1018a112b picked da1686aa760c","scans pick-L006 - eb9f2f185c2f"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '2c2115c52ded0bc0ce3079b964f7cb22b8794eb34a6daeaf6068186a0f44e256');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"3ecc9ebd99370722","line_state":"picked","now":["slots L011 on_item 383102a922f6","lines 3ecc9ebd99370722 picked 24da919a870b","scans pick-L011 - 59d72175a887"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '9d87db1f83d0d1309c3accca07b70259fc71fdb4b165c330a392a46d648baa32');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"a4ad7c9850240561","line_state":"picked","now":["slots S006 on_item eb0a4d6a5b25","lines a4ad7c9850240561 picked badf52201cc5","scans pick-S006 - d7792ba7e0ed"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '1ffe465a5c3a5c9d9302b36dd836a56e45b5ca68cff8fc85cbfeb65d176712e8');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"986d90248e46598d","line_state":"picked","now":["slots S007 on_item 25b385664e26","lines 986d90248e46598d picked 895f49777c5a","scans pick-S007 - d1083b6db2c0"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '60db32fb22e29edace7d35bf61f4d9003fd1d43b8502f699fcb3a6e6189be25f');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"71d6ca76b382f1c9","line_state":"picked","now":["slots W007 on_item 84612210c091","lines 71d6ca76b382f1c9 picked fcd69607b439","scans pick-W007 - 669a339e7c64"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '6666304029173ba9fb06f7a5e979e18e43e88900907bcc567fe26d7d1dd54c76');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"b5115e8189040431","line_state":"picked","now":["slots W008 on_item 943cfb88491b","lines b5115e8189040431 picked 1173d958eeb6","scans pick-W008 - 94969dab6f63"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"94576ead0c52374f","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '4971fa3141cb7cc17f0042d34246d256786cbb7a25672b1967103f9f6b1c1bda');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"b5115e8189040431","line_state":"waiting","now":["lines b5115e8189040431 waiting 5aefaf606fc8","slots W008 on_item c4d5b5d1c03e"]}', '39dc520d853124a967a592784d0f1fb165837555a65c3af1900f3c73263d59cb');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 94576ead0c52374f closed 51b2d45d3c58"],"round":"94576ead0c52374f"}', '769b8f76b80d1046bd138bba25936d818c5944f4601d2286dc1e504cd6edfb4b');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 84e2e1d1e498e48c open 68cebef60c27","orders af40c22760c008e2 - 15888d8faeec"],"orders":["af40c22760c008e2"],"parcel":"84e2e1d1e498e48c","table":"main"}', '3e442b3421b68dd67d04f1db46917ee88d6a1c3ca3994f38d9bf123789f38f10');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"6201232b0d400b7b","line_state":"picked","now":["slots S002 on_item e21cb568d5be","scans other-S002 - 5c8f4b6c24bc"],"order_number":"B-03","parcel":"84e2e1d1e498e48c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '21430be8d0437b75f25cd94433d2ba4fa233b04a5c84bf7bc804f667e7471a2e');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"8b67ffc048558702","line_state":"packed","now":["lines 8b67ffc048558702 packed 86a627707804","slots W001 on_item 48b42e01ec2b","scans pack-W001 - 0b520f861893"],"order_number":"B-01","parcel":"84e2e1d1e498e48c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '6548cac8bac3163af68c659581b7dda4b09ade79a93ac14e4fe96cfb9e150e97');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 75d210d9abd69f42 released 6412fcaef562","slots W002 due 2f4c3656cf6e","lines 8b67ffc048558702 released e33122a9842e","stays 606138e0f9ac6d8b shipped 4121742733c7","slots W001 due 084d52c923ac","stays a66b1567db9a27af shipped 69ff2a7140ae","parcels 84e2e1d1e498e48c closed fc5c747da71f","orders af40c22760c008e2 - 5646e4ae5b5c","scans pack-W002 - c9ba8930459e"],"orders":["af40c22760c008e2"],"parcel":"84e2e1d1e498e48c","released":["W001","W002"]}', '1cac16ef93291098ac0f484ab0707175e6aa79dd78656cf1f80cf9206d479a7e');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"75d210d9abd69f42","line_state":"released","order_number":"B-01","parcel":"84e2e1d1e498e48c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '0ec26921a9e91c5f7c9658fe761ac4ae2249f8fa108a1032d2e3ab52b459180e');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"8b67ffc048558702","line_state":"released","now":["slots W001 tray 3aeaecdd7954","scans back-W001 - 3b2547b3a82a"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '4cc29f9b448c69f69562b831c4582a5668eeed61f2edd3771c3465be30e7c807');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 7d292ce88de6b130 - dd7d34eb95b9","slots W001 on_item 4bac4e5a272f","stays 4cbb18075d219c44 stored 40f7af481be7"],"stay":"4cbb18075d219c44","title":"Rear wheel","turn":2}', '2b31cbdf89ee6dee84631519b3ffc78b6ed783af36eb63ca7f40948f4deb0835');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - e4d4c7fc43ca"],"parcel":"84e2e1d1e498e48c"}', '07247015989fcfb12adc0060f665e1780983c0c0f77b14739fbff68f8d4cdf6c');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 513ef42f38402622 open cd377413cf7d","orders 7eb69275d5db32be - ff3c3e724c4d"],"orders":["7eb69275d5db32be"],"parcel":"513ef42f38402622","table":"main"}', '8c280d38b414eaf64d99adbf994d2baf985bc2d6fc0a67b8616f9cf83b74368e');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"71d6ca76b382f1c9","line_state":"packed","now":["lines 71d6ca76b382f1c9 packed 2779532f95a3","slots W007 on_item ceb8ef323b62","scans pack-W007 - 08c2ca6f413a"],"order_number":"B-23","parcel":"513ef42f38402622","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '6ee7b11a0ea09f812dac2ff0258a68ea1eb46ab5dcccd176524838acb208cae2');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 71d6ca76b382f1c9 released 05e59f44d112","stays 8f6ed006ac568100 shipped 7402cc76836c","slots W007 due a68b975ad0ec","parcels 513ef42f38402622 closed eded1d4fc7e4","orders 7eb69275d5db32be - c231f40851bd"],"orders":["7eb69275d5db32be"],"parcel":"513ef42f38402622","released":["W007"]}', '67d083c55c8fe1a20c53c90c57d3caff7df9c33652223da7a38fcb064b65dc7c');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 71d6ca76b382f1c9 packed 11ed2800dfbb","stays 8f6ed006ac568100 stored 0b58c19d63c3","slots W007 on_item 80865e7fe58c","parcels 513ef42f38402622 open ac678b4959a6","orders 7eb69275d5db32be - ff3c3e724c4d"],"orders":["7eb69275d5db32be"],"parcel":"513ef42f38402622"}', '04d3aee64bf1b881526fe9cc36de86b10f7015556a9816f2e4ff1d643d8edd25');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 71d6ca76b382f1c9 released 05e59f44d112","stays 8f6ed006ac568100 shipped 3d27b5e4976c","slots W007 due a68b975ad0ec","parcels 513ef42f38402622 closed 757a239e3c5d","orders 7eb69275d5db32be - c231f40851bd"],"orders":["7eb69275d5db32be"],"parcel":"513ef42f38402622","released":["W007"]}', 'c68b62cfcdc5d6632968c1bea12e632041e426853cac1bd73294b1f72a467777');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:32:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 5c2c43390d2b4661 open c303bf22b82c","orders 8323810109fb08f7 - 6563de139b5d"],"orders":["8323810109fb08f7"],"parcel":"5c2c43390d2b4661","table":"main"}', 'c5170fcf8b9e8b3c96756d74bef85f043a8eac42e48be7f84474b6b959610b06');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:35:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 5c2c43390d2b4661 dropped 4a6edaafff08","orders 8323810109fb08f7 - 08ccd0976fb7"],"parcel":"5c2c43390d2b4661"}', 'c343557edc58b264c540c38e6ac5b822472b92d3951c7e1246c981c1e841451d');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels f89c2930af96bd91 open 8f88d32f804c","orders 69b92532e559fcff - 5ada03af531d"],"orders":["69b92532e559fcff"],"parcel":"f89c2930af96bd91","table":"main"}', '1a16fb428085dc8b6bba465eeeb3ca84845793aaad89cb2beb13426c2411e96f');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"282378adfd8c04ca","line_state":"packed","now":["lines 282378adfd8c04ca packed dae49a3e7cb8","slots S004 on_item d7a218918d60","scans pack-S004 - 61b90de9ae84"],"order_number":"B-04","parcel":"f89c2930af96bd91","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '73d4d2be8d7ca9b5bdb80e70dd0df441667af66ac0cd8594c124b2ff12a031aa');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:44:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels f89c2930af96bd91 aside 35bf10ee2a73"],"parcel":"f89c2930af96bd91"}', 'e81a1a677e3ea5702d818ab1d4fbc5bd3929bac3df3794d95bcfd0d8a61c681a');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:47:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels c50269154903ba23 open d47d43b34b5a","orders 2e6c0e9aefbc08ad - 1780366ac9fb"],"orders":["2e6c0e9aefbc08ad"],"parcel":"c50269154903ba23","table":"second"}', '024dab7bc961140d9c5bc64ae7bdbfb87492e5d72bdbbc4afe18775739d35661');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"51a17fe1018a112b","line_state":"packed","now":["lines 51a17fe1018a112b packed 29247d8fba77","slots L006 on_item 6e1d5a18b34e","scans pack-L006 - a7c505616aaa"],"order_number":"B-09","parcel":"c50269154903ba23","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'f9951b0689b894ee130513f4ebcb3639e2fd6df005728690cbb1be10b3a9dc95');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:53:00.000000+00:00', 'cancelled', 'boss', '{"lines":["51a17fe1018a112b","3ecc9ebd99370722"],"now":["lines 51a17fe1018a112b packed 88d1fc262573","lines 3ecc9ebd99370722 cancelled 50ce04a12272"],"number":"B-09","order":"2e6c0e9aefbc08ad"}', 'd28a7776088ff3adc9d472d99e99b7ee557e37a6a288957c9488b12b083ec3a5');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:56:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 3966528f296204aa open 7744c21909c5","orders 32e762354e713a77 - b728c695380f"],"orders":["32e762354e713a77"],"parcel":"3966528f296204aa","table":"main"}', '3a0a64e234ffe8e916a7f239a450eee04f979db9507b449738388c73479f8515');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"6201232b0d400b7b","line_state":"packed","now":["lines 6201232b0d400b7b packed b5b4ebebc50d","slots S002 on_item cbaef02fc5b6","scans pack-S002 - 9dd32cbc278c"],"order_number":"B-03","parcel":"3966528f296204aa","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'b0bcbbd80dbf5c815cd18a1a6ac2a8e7dfafdf95a9fb07985c92b3fc59951bb4');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:02:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"a4ad7c9850240561","reference":"S006-018","stay":"9cd85bbb5db6dd56"}],"now":["lines a4ad7c9850240561 picked 575a6851d008"],"number":"B-13","order":"2777d57a9488cc5c"}', '8a70e3f1f6f64b9ceaddf8a6c665cba229999a1d553dca0ff047ac62de0edd8a');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:05:00.000000+00:00', 'round opened', 'boss', '{"lines":["01184f7853820781","51434f91289c9dfb","62924329b671cce6","fc52b5774780f91b"],"now":["rounds 9bc8ac6f12e8981d open df83e3f0c900","lines fc52b5774780f91b waiting 81200eba0aba","lines 01184f7853820781 waiting 008730ddd279","lines 51434f91289c9dfb waiting c87fdc4f79a4","lines 62924329b671cce6 waiting ec291d6fcaf1"],"round":"9bc8ac6f12e8981d"}', '59cb7a7187749d65752e9db1091564963e7fb0e3ac5ed94f3d654e44cebdabb8');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:08:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"01184f7853820781","line_state":"picked","now":["slots L002 on_item b08b22e2a663","lines 01184f7853820781 picked cc7023c1da37","scans pick-L002 - 823c43a517ca"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"9bc8ac6f12e8981d","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'f04bbcdd8f94c6808cfe14b2c5b469b667b8be1aee3e2daab157a91946e12392');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:11:00.000000+00:00', 'short', 'boss', '{"line":"62924329b671cce6","note":"Not in its bin","now":["lines 62924329b671cce6 short 845dc4af43f8","doubts f42f0a33eb673336 - ba9e7bbad03b"]}', '597cd57983a6ada0b7bf1d3b670ffb95aeefd182288c1fc1d61f7c81d100578e');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:11:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f42f0a33eb673336","doubt_kind":"missing","item":"67aded2556912439","words":"Not in its bin"}', 'e86f53800425538bc43f8650187ace14aca2b448d166856dacf6cd3653860475');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 7e042ab5d311"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"9bc8ac6f12e8981d","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '173bd2cdcfc895129a65beae0380d71aa1323c38fac142f7a5d2d167d6567076');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 1f485f6d8ac2"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"9bc8ac6f12e8981d","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'c18ba0cf1112be67bd245e4a69211e157d07f0ff2a50f38eee18e3931274b116');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - b7a7e8b8ec95"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"9bc8ac6f12e8981d","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'f1be18112d95fdcd96a75f57a807058b9cf9ed34a73f198f77bef838bd88b475');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:23:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '4f95297ddb04d3b0ff5dcd3f53c2946f4601934a113d4917f44529469cabd2ee');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '712f99c3cdcadcbae37afc38c9f8a5110f236855d66bdf8825844a029383bda4');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0d265f8ce7b650c2","reference":"D001-019","stay":"937d006c0b9d149c"},{"hold":"already_sold","line":"bab900175957dd86","reference":"W002-016","stay":null}],"now":["orders 3c652bd9ce556b24 - f47b4ce7d56c","lines 0d265f8ce7b650c2 waiting e84d15675fd3","lines bab900175957dd86 unbound c31343922387"],"number":"B-38","order":"3c652bd9ce556b24"}', 'afb385ba1247f54de9f6fa7c41b75ed3bb994432a9958037e944950b31d6a39a');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:32:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"d14ea3b753ad79c8","reference":"W001","stay":null}],"now":["orders 4300f54137950438 - 3e063b361898","lines d14ea3b753ad79c8 unbound 38962557eeae"],"number":"B-39","order":"4300f54137950438"}', '895d9f6d45cfa09ced1e37dc49b55d4e60217b09247e49f33bb55b96b8405186');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:35:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes aec2fc7037b975cf open 293a53e62353"],"stocktake":"aec2fc7037b975cf"}', '0ef0f18eaf8515d69d5a03158b65bb69eaf96f4874424eb02255b07cf6ca164f');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:42:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 8f29c2f00891","slots S001 on_item bc52ae466071","doubts a0758311fcd129b3 - 6c6baa2708de"],"photo":null,"place":"B-1-1","stocktake":"aec2fc7037b975cf","unread":0}', '3454667cbdb2ccac143684cc868307ca6498a665f95f1e36966bba71551b2ca0');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:42:00.000000+00:00', 'doubted', 'boss', '{"doubt":"a0758311fcd129b3","doubt_kind":"not_this","item":"77b87a9d6fd3527f","now":["slots S003 on_item e789a372f222","slots S012 on_item 92045abcd548","slots D010 on_item 78e1fac2bf33"],"words":"A count found another thing on its card in B-1-1."}', 'fbe2589464569764f48497fa148c6c500b3c07138b6d542e43effb2dc83ae778');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:50:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - cb8994ae520d","slots S011 on_item 7ee96657ea54","slots S013 on_item 88b023fc7034"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"aec2fc7037b975cf","unread":0}', '5a0581e6ba14a503773c6f5d59fd5c4a1b1f3ef1640287c2a9236c724a9f6edd');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:56:00.000000+00:00', 'finding resolved', 'boss', '{"after":161,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 4c35580b0117","resolutions aec2fc7037b975cf.elsewhere-S012 - aec38239e486"],"reason":"","stocktake":"aec2fc7037b975cf","sure":false}', 'e3eca0419f3b1b3855682211f5c46125cfc3a6c4c5f885b1dc16411c4ffd321a');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:59:00.000000+00:00', 'finding resolved', 'boss', '{"after":162,"finding":"unknown-Q0771","how":"ignore","now":["resolutions aec2fc7037b975cf.unknown-Q0771 - 0a7803c635cb"],"reason":"A neighbour''s","stocktake":"aec2fc7037b975cf","sure":false}', '49328844402cc43ee43d3ed75e24f42920c138038ecd24e0c8898cfe5979a0fb');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:02:00.000000+00:00', 'finding resolved', 'boss', '{"after":163,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 02a2ce2a080b","resolutions aec2fc7037b975cf.missing-S008 - 9c525afa72c6"],"reason":"","stocktake":"aec2fc7037b975cf","sure":false}', 'c3ed0337be75531ca8e46af3f70cf1fb48c09437b325969e1a76cb75300f0129');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:05:00.000000+00:00', 'finding reopened', 'boss', '{"after":164,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions aec2fc7037b975cf.missing-S008 - -"],"stocktake":"aec2fc7037b975cf"}', '1ecf62eb4dc62db2ce40708b2347401d81b21cf3eb57fff8f0dad797c7e65e64');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:08:00.000000+00:00', 'doubted', 'boss', '{"doubt":"81ff7f5f7f34c481","doubt_kind":"missing","item":"c3ef9cb8890e1815","now":["doubts 81ff7f5f7f34c481 - b532dd92e470","stocktakes aec2fc7037b975cf closed 8072c5e69e7d"],"words":"a count of section:S did not find it"}', 'd8ac7b10d42196a82ae10753bf191be2a66f1d5168ac06ec60f9017492a47321');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:08:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"aec2fc7037b975cf"}', 'dbca6439be99eff805253fc26ec78ee4ef0992bf04e55deec168a604b6b9e640');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:11:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 520b59d92cc229f5 open a7312c8a0e27"],"stocktake":"520b59d92cc229f5"}', '860dd60afc51abea5e136066ebb97fadce076d6b6c5a83352d35caaf31c9110b');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:18:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 4b8bf2cda1f2","slots L003 on_item 2775be546c5a","slots L004 on_item c67d465cf776","slots L005 on_item 7e83309c355d","slots L007 on_item c3e618f73d30"],"photo":null,"place":"C-1-1","stocktake":"520b59d92cc229f5","unread":0}', '2b7a9438251b67db6b67af2a9fae62dbebe5f4ec608069aee78b4e7288e3b94e');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:21:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 59facc20e13244b3 - 83e85b31dc55"]}', '8cab25d179136437a4c4d1d9464b2ad951d3a6c3cbf4c24cd5e5888634013920');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"59facc20e13244b3","doubt_kind":"missing","item":"53bddcbbdda2189d","now":["resolutions 520b59d92cc229f5.missing-L008 - 72284fa74886"],"words":"a count did not find it"}', '8b49b09e58d30f5b961526a0b1f7fc88361661aaf0070f21d95138aae58def95');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:21:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-L008","how":"lost","reason":"","stocktake":"520b59d92cc229f5","sure":false}', '0b4b3deb3d34ef0754d89117f499b27d3cb563890688a104650f1c518a2c7fe4');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:24:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 6e168e7a81575999 withdrawn ea6b60cb9ada","slots L009 due 821cc144d722","resolutions 520b59d92cc229f5.missing-L009 - df962038a2ad"],"reason":"Nowhere to be found","stay":"6e168e7a81575999"}', 'c9c41bcd2cd8d12949bf399a1ee1ee3fd3841eb948d895609f0ceb32c05e2caa');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:24:00.000000+00:00', 'finding resolved', 'boss', '{"after":172,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"520b59d92cc229f5","sure":false}', 'bfe3de23d9e6597cae40329f1bd58d19c24e3bfbce25126e0d411eafa6f65421');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:27:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes bb54d761818ff4bd open 0dca59ed00fb"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"bb54d761818ff4bd"}', '616f73e2b5e4c8a4821c0e5dd617ed47a8608b517af2e527b40764f9783abeb9');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:30:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 206e64733e8364f2 open 8d9ad3f0e0dd"],"stocktake":"206e64733e8364f2"}', 'a8002862851a5ceb1a0a7911201f3aaf6ac0c0f1f86edbd8268a954067891ae4');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:33:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 206e64733e8364f2 cancelled 3d45efff1826"],"stocktake":"206e64733e8364f2"}', 'a22d17fa43d1888834bf87ab382c731259a1467cf6640e8183a8c9dfba105077');
INSERT INTO public.lines VALUES (15, 'cf2bc65e05321152', '15d070fbfe6ff55c', 1, 'D009-01B', 'Rear derailleur 9', '', 'cd6dd4219f41697a', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'ee51da1ecea0bce0', 'bf55b2de694a83fd', 1, 'D003-01U', 'Bell with a crown', '', 'f7660aa4719cbfea', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '18f3d804c96309f3', '742943ea3a27c8d2', 1, 'D005-01E', 'Rear derailleur 5', '', 'a05bd59d3d17d2e8', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '1c81e0ba649b5176', '742943ea3a27c8d2', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'e5e0768d95449410', 'ed449d2a94c15866', 1, 'D006-016', 'Rear derailleur 6', '', '66040640843e3fb8', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '4f0803c178e5724c', 'ed449d2a94c15866', 2, 'D007-01R', 'Rear derailleur 7', '', '695069a8599206e3', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '4208943129f30c29', 'f2fc5ca04bc784b3', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '8511267f447f7542', 'd108f6e456b51e3f', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '5c303f8fbe46612c', '13a01bbad154a140', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '907d0b278a1303f7', '09eb834643be1d87', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'e87ded6ba0c94f8f', 'c32203470dd9ff93', 1, 'W005-01B', 'Bell with a crown', '', '974b7a4d05e53df6', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '6908f2dce11dbfb1', 'e895bae2e2901e9b', 1, 'L007-014', 'Dynamo lamp 7', '', '0442e0a68f3895d9', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '532a70ae986f7ef3', 'd4449a361df2d904', 1, 'L005-01K', 'Dynamo lamp 5', '', '954cfaf88f3bd962', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '43c12dbc015bd1a4', '1349b96825782699', 1, 'W006-013', 'Front wheel 6', '', 'bed9a8e38879a7f5', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'bb6f8c313244fd58', '7208350a5c2f7f07', 1, 'S012-01O', '', '', '5b4017d5cd6b5416', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'f554969f56160af7', 'c6155dbc8904fb5f', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '8b67ffc048558702', 'af40c22760c008e2', 1, 'W001-01E', 'Front wheel 1', '', '606138e0f9ac6d8b', 'released', '84e2e1d1e498e48c', '94576ead0c52374f', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '75d210d9abd69f42', 'af40c22760c008e2', 2, 'W002-016', 'Front wheel 2', '', 'a66b1567db9a27af', 'released', '84e2e1d1e498e48c', '94576ead0c52374f', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, '71d6ca76b382f1c9', '7eb69275d5db32be', 1, 'W007-01W', 'Front wheel 7', '', '8f6ed006ac568100', 'released', '513ef42f38402622', '94576ead0c52374f', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (4, '824e1e2633db2cbe', '32e762354e713a77', 2, 'S003-01W', 'Leather saddle 3', '', 'b290f14fc1cf8810', 'picked', NULL, '94576ead0c52374f', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (5, '282378adfd8c04ca', '69b92532e559fcff', 1, 'S004-01O', 'Leather saddle 4', '', '3d255a069c75e6ee', 'packed', 'f89c2930af96bd91', '94576ead0c52374f', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '51a17fe1018a112b', '2e6c0e9aefbc08ad', 1, 'L006-01C', 'Dynamo lamp 6', '', 'e2a68448cdd3b3f3', 'packed', 'c50269154903ba23', '94576ead0c52374f', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '3ecc9ebd99370722', '2e6c0e9aefbc08ad', 2, 'L011-010', 'Dynamo lamp 11', '', '14e79b39ff0cf9a2', 'cancelled', NULL, '94576ead0c52374f', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (6, 'c4ad988c53381aab', '69b92532e559fcff', 2, 'S005-01G', 'Leather saddle 5', '', '65eb149470f6363c', 'picked', NULL, '94576ead0c52374f', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '986d90248e46598d', '8323810109fb08f7', 1, 'S007-01Z', 'Leather saddle 7', '', 'fd0bc70dbeaa1afe', 'picked', NULL, '94576ead0c52374f', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'b5115e8189040431', '7eb69275d5db32be', 2, 'W008-01O', 'Front wheel 8', '', 'ff2425a58bd96734', 'waiting', NULL, '94576ead0c52374f', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '6201232b0d400b7b', '32e762354e713a77', 1, 'S002-013', 'Leather saddle 2', '', 'd96d17bae68508aa', 'packed', '3966528f296204aa', '94576ead0c52374f', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, 'a4ad7c9850240561', '2777d57a9488cc5c', 1, 'S006-018', 'Saddle with springs', '', '9cd85bbb5db6dd56', 'picked', NULL, '94576ead0c52374f', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, 'fc52b5774780f91b', '2f2586ec7d16f523', 1, 'D008-01J', 'Rear derailleur 8', '', '33d92d7f61c29e66', 'waiting', NULL, '9bc8ac6f12e8981d', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, 'bab900175957dd86', '3c652bd9ce556b24', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (8, '51434f91289c9dfb', 'a8adf2c02e12e568', 1, 'L003-010', 'Dynamo lamp 3', '', 'db9e39ed86998618', 'waiting', NULL, '9bc8ac6f12e8981d', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'd14ea3b753ad79c8', '4300f54137950438', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (7, '01184f7853820781', '736bfdd2a4c73994', 1, 'L002-017', 'Dynamo lamp 2', '', 'e8c3052ec97a1e05', 'picked', NULL, '9bc8ac6f12e8981d', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '62924329b671cce6', '3bf608c2816c2eeb', 1, 'L004-01S', 'Dynamo lamp 4', '', '591dbbb87f35ff5c', 'short', NULL, '9bc8ac6f12e8981d', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '0d265f8ce7b650c2', '3c652bd9ce556b24', 1, 'D001-019', 'Rear derailleur 1', '', '937d006c0b9d149c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'aec2fc7037b975cf', 'B-1-1', '2026-03-02T15:42:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'aec2fc7037b975cf', 'B-1-2', '2026-03-02T15:50:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '520b59d92cc229f5', 'C-1-1', '2026-03-02T16:18:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '736bfdd2a4c73994', 'B-05', 'fair', '2026-03-02T11:40:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (5, 'a8adf2c02e12e568', 'B-06', 'fair', '2026-03-02T11:43:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (6, '3bf608c2816c2eeb', 'B-07', 'fair', '2026-03-02T11:46:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (7, 'd4449a361df2d904', 'B-08', 'fair', '2026-03-02T11:49:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (9, '2777d57a9488cc5c', 'B-13', 'fair', '2026-03-02T11:55:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (10, 'e895bae2e2901e9b', 'B-17', 'fair', '2026-03-02T11:58:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (11, '15d070fbfe6ff55c', 'B-18', 'fair', '2026-03-02T12:01:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (12, '1349b96825782699', 'B-21', 'fair', '2026-03-02T12:04:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (15, '2f2586ec7d16f523', 'B-26', 'fair', '2026-03-02T12:13:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (16, 'bf55b2de694a83fd', 'B-30', 'fair', '2026-03-02T12:16:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (17, '742943ea3a27c8d2', 'B-31', 'fair', '2026-03-02T12:19:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (18, 'ed449d2a94c15866', 'B-32', 'fair', '2026-03-02T12:22:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (19, 'f2fc5ca04bc784b3', 'B-33', 'fair', '2026-03-02T12:28:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (20, 'd108f6e456b51e3f', 'B-34', 'fair', '2026-03-02T12:31:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (21, '13a01bbad154a140', 'B-35', 'fair', '2026-03-02T12:34:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (22, '09eb834643be1d87', 'B-36', 'fair', '2026-03-02T12:37:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (23, 'c32203470dd9ff93', 'B-37', 'fair', '2026-03-02T12:40:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (24, '7208350a5c2f7f07', 'F-1', '', '2026-03-02T13:04:00.000000+00:00', 24, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (25, 'c6155dbc8904fb5f', 'F-2', '', '2026-03-02T13:04:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (1, 'af40c22760c008e2', 'B-01', 'fair', '2026-03-02T11:31:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (14, '7eb69275d5db32be', 'B-23', 'fair', '2026-03-02T12:10:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (13, '8323810109fb08f7', 'B-22', 'fair', '2026-03-02T12:07:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (3, '69b92532e559fcff', 'B-04', 'fair', '2026-03-02T11:37:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'f89c2930af96bd91', '', '', false);
INSERT INTO public.orders VALUES (8, '2e6c0e9aefbc08ad', 'B-09', 'fair', '2026-03-02T11:52:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'c50269154903ba23', '', '', false);
INSERT INTO public.orders VALUES (2, '32e762354e713a77', 'B-03', 'fair', '2026-03-02T11:34:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '3966528f296204aa', '', '', false);
INSERT INTO public.orders VALUES (26, '3c652bd9ce556b24', 'B-38', 'fair', '2026-03-02T15:29:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (27, '4300f54137950438', 'B-39', '', '2026-03-02T15:32:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false);
INSERT INTO public.parcels VALUES (1, '84e2e1d1e498e48c', 'main', 'af40c22760c008e2', '2026-03-02T13:55:00.000000+00:00', 'closed', '2026-03-02T14:04:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '513ef42f38402622', 'main', '7eb69275d5db32be', '2026-03-02T14:26:00.000000+00:00', 'closed', '2026-03-02T14:29:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '5c2c43390d2b4661', 'main', '8323810109fb08f7', '2026-03-02T14:32:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'f89c2930af96bd91', 'main', '69b92532e559fcff', '2026-03-02T14:38:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, 'c50269154903ba23', 'second', '2e6c0e9aefbc08ad', '2026-03-02T14:47:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, '3966528f296204aa', 'main', '32e762354e713a77', '2026-03-02T14:56:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'aec2fc7037b975cf.elsewhere-S012', 'aec2fc7037b975cf', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T15:56:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:42:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "5b4017d5cd6b5416", "item": "9de8c6bb504cade4", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "bb6f8c313244fd58", "order": "7208350a5c2f7f07", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "5b4017d5cd6b5416", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T15:56:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "5b4017d5cd6b5416", "item": "9de8c6bb504cade4", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "bb6f8c313244fd58", "order": "7208350a5c2f7f07", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "5b4017d5cd6b5416", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'aec2fc7037b975cf.unknown-Q0771', 'aec2fc7037b975cf', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T15:59:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '520b59d92cc229f5.missing-L008', '520b59d92cc229f5', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:21:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "d217b9ce8b73a878", "item": "53bddcbbdda2189d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "d217b9ce8b73a878", "item": "53bddcbbdda2189d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["59facc20e13244b3"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '520b59d92cc229f5.missing-L009', '520b59d92cc229f5', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:24:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "6e168e7a81575999", "item": "0e3784a79daa1f2e", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "6e168e7a81575999", "item": "0e3784a79daa1f2e", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:24:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '94576ead0c52374f', '2026-03-02T13:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '9bc8ac6f12e8981d', '2026-03-02T15:05:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '8a36361895096af2a89142588e22e8b35122b2063f95c1bd30b0626a2315c871', 'bin', '94576ead0c52374f', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '4a948ca8ba4bea666b0020001816918d2261cd4a76b6d92015c90dda132c5b17', 'bin', '94576ead0c52374f', 'W001', false, true, true, '8b67ffc048558702', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "af40c22760c008e2", "order_number": "B-01", "line": "8b67ffc048558702", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:13:00.000000+00:00', '["on_item", ["606138e0f9ac6d8b", "stored"], ["8b67ffc048558702", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'c10c0efa78c5ffba0af274a6c09995e715c85f8cefd9509629fc8dda2e0a08a2', 'bin', '94576ead0c52374f', 'W002', false, true, true, '75d210d9abd69f42', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "af40c22760c008e2", "order_number": "B-01", "line": "75d210d9abd69f42", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:16:00.000000+00:00', '["on_item", ["a66b1567db9a27af", "stored"], ["75d210d9abd69f42", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'a9d48b9a4e04164ab002f64eb9414830b1cf07114993bd2b39310f31ed38f5d4', 'bin', '94576ead0c52374f', 'S002', false, true, true, '6201232b0d400b7b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "32e762354e713a77", "order_number": "B-03", "line": "6201232b0d400b7b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:19:00.000000+00:00', '["on_item", ["d96d17bae68508aa", "stored"], ["6201232b0d400b7b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '0f41a04687ff7ae112e6204ca900a8c6fdb1946cf92a1925030ec99e1fd6a562', 'bin', '94576ead0c52374f', 'S003', false, true, true, '824e1e2633db2cbe', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "32e762354e713a77", "order_number": "B-03", "line": "824e1e2633db2cbe", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:22:00.000000+00:00', '["on_item", ["b290f14fc1cf8810", "stored"], ["824e1e2633db2cbe", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '9990edaabf6e48b777b60a78f27869b35ffa5b87460e44de7be0a46454cd318e', 'bin', '94576ead0c52374f', 'S004', false, true, true, '282378adfd8c04ca', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "69b92532e559fcff", "order_number": "B-04", "line": "282378adfd8c04ca", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:25:00.000000+00:00', '["on_item", ["3d255a069c75e6ee", "stored"], ["282378adfd8c04ca", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'd5fbe13e4635f42039814cb2365b3bbe6f94f2bd8b96969a1ed8c52d5115bb24', 'bin', '94576ead0c52374f', 'S005', false, true, true, 'c4ad988c53381aab', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "69b92532e559fcff", "order_number": "B-04", "line": "c4ad988c53381aab", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:28:00.000000+00:00', '["on_item", ["65eb149470f6363c", "stored"], ["c4ad988c53381aab", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'e0efc5005e7e6bed3950a30a61432afc0009ab1287f1cfcf4d27193f42c0d93f', 'bin', '94576ead0c52374f', 'L006', false, true, true, '51a17fe1018a112b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "2e6c0e9aefbc08ad", "order_number": "B-09", "line": "51a17fe1018a112b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:31:00.000000+00:00', '["on_item", ["e2a68448cdd3b3f3", "stored"], ["51a17fe1018a112b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'b13d3fe50c7d4977217a34ed55063c16c36d2e8e19c9e7e6bad84e29f0076ae8', 'bin', '94576ead0c52374f', 'L011', false, true, true, '3ecc9ebd99370722', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "2e6c0e9aefbc08ad", "order_number": "B-09", "line": "3ecc9ebd99370722", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:34:00.000000+00:00', '["on_item", ["14e79b39ff0cf9a2", "stored"], ["3ecc9ebd99370722", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '77495bbc39f7eae4730d3ff538d492284cd22910bef9f6ae65bc233e4c6d8c90', 'bin', '94576ead0c52374f', 'S006', false, true, true, 'a4ad7c9850240561', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "2777d57a9488cc5c", "order_number": "B-13", "line": "a4ad7c9850240561", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:37:00.000000+00:00', '["on_item", ["9cd85bbb5db6dd56", "stored"], ["a4ad7c9850240561", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '1a9f05879ec96140cb006f1a5c5296b4cc30140e1b7aaac2364cc621d3b28c11', 'bin', '94576ead0c52374f', 'S007', false, true, true, '986d90248e46598d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "8323810109fb08f7", "order_number": "B-22", "line": "986d90248e46598d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:40:00.000000+00:00', '["on_item", ["fd0bc70dbeaa1afe", "stored"], ["986d90248e46598d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'b07cb1da94f6428d4b907e1a5758eadac093814fedb7de53541d7e9c49334ca2', 'bin', '94576ead0c52374f', 'W007', false, true, true, '71d6ca76b382f1c9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7eb69275d5db32be", "order_number": "B-23", "line": "71d6ca76b382f1c9", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:43:00.000000+00:00', '["on_item", ["8f6ed006ac568100", "stored"], ["71d6ca76b382f1c9", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'e7ac3a8864c56227f0475a9338f08a61c835666853a3d44146b16c5a9a21253f', 'bin', '94576ead0c52374f', 'W008', false, true, true, 'b5115e8189040431', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "7eb69275d5db32be", "order_number": "B-23", "line": "b5115e8189040431", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:46:00.000000+00:00', '["on_item", ["ff2425a58bd96734", "stored"], ["b5115e8189040431", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '6201232b0d400b7b', '84e2e1d1e498e48c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "32e762354e713a77", "order_number": "B-03", "line": "6201232b0d400b7b", "line_state": "picked", "order_state": "picking", "parcel": "84e2e1d1e498e48c", "parcel_state": "open", "released": []}', '', '2026-03-02T13:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '8b67ffc048558702', '84e2e1d1e498e48c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "af40c22760c008e2", "order_number": "B-01", "line": "8b67ffc048558702", "line_state": "packed", "order_state": "picking", "parcel": "84e2e1d1e498e48c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:01:00.000000+00:00', '["on_item", ["606138e0f9ac6d8b", "stored"], ["8b67ffc048558702", "packed", "84e2e1d1e498e48c", []], ["84e2e1d1e498e48c", "2026-03-02T13:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '75d210d9abd69f42', '84e2e1d1e498e48c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "af40c22760c008e2", "order_number": "B-01", "line": "75d210d9abd69f42", "line_state": "released", "order_state": "released", "parcel": "84e2e1d1e498e48c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:04:00.000000+00:00', '["due", ["a66b1567db9a27af", "shipped"], ["75d210d9abd69f42", "released", "84e2e1d1e498e48c", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '8b67ffc048558702', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "af40c22760c008e2", "order_number": "B-01", "line": "8b67ffc048558702", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:07:00.000000+00:00', '["tray", ["606138e0f9ac6d8b", "shipped"], ["8b67ffc048558702", "released", "84e2e1d1e498e48c", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '71d6ca76b382f1c9', '513ef42f38402622', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7eb69275d5db32be", "order_number": "B-23", "line": "71d6ca76b382f1c9", "line_state": "packed", "order_state": "waiting", "parcel": "513ef42f38402622", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:20:00.000000+00:00', '["on_item", ["8f6ed006ac568100", "stored"], ["71d6ca76b382f1c9", "packed", "513ef42f38402622", []], ["513ef42f38402622", "2026-03-02T14:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '282378adfd8c04ca', 'f89c2930af96bd91', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "69b92532e559fcff", "order_number": "B-04", "line": "282378adfd8c04ca", "line_state": "packed", "order_state": "picking", "parcel": "f89c2930af96bd91", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:41:00.000000+00:00', '["on_item", ["3d255a069c75e6ee", "stored"], ["282378adfd8c04ca", "packed", "f89c2930af96bd91", []], ["f89c2930af96bd91", "2026-03-02T14:38:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '51a17fe1018a112b', 'c50269154903ba23', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "2e6c0e9aefbc08ad", "order_number": "B-09", "line": "51a17fe1018a112b", "line_state": "packed", "order_state": "picking", "parcel": "c50269154903ba23", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:50:00.000000+00:00', '["on_item", ["e2a68448cdd3b3f3", "stored"], ["51a17fe1018a112b", "packed", "c50269154903ba23", []], ["c50269154903ba23", "2026-03-02T14:47:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '6201232b0d400b7b', '3966528f296204aa', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "32e762354e713a77", "order_number": "B-03", "line": "6201232b0d400b7b", "line_state": "packed", "order_state": "picking", "parcel": "3966528f296204aa", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:59:00.000000+00:00', '["on_item", ["d96d17bae68508aa", "stored"], ["6201232b0d400b7b", "packed", "3966528f296204aa", []], ["3966528f296204aa", "2026-03-02T14:56:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '0f547b4de1f1036f48b6769c28b579d787caab99874d94b315ba9345ae349c85', 'bin', '9bc8ac6f12e8981d', 'L002', false, true, true, '01184f7853820781', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "736bfdd2a4c73994", "order_number": "B-05", "line": "01184f7853820781", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:08:00.000000+00:00', '["on_item", ["e8c3052ec97a1e05", "stored"], ["01184f7853820781", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '4b8a9bd6f5ea6806a9088cfab25d63fc6b9f4f61f5344a4db987cc3710e4955a', 'bin', '9bc8ac6f12e8981d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:14:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'ff9107ee4bb2193d1c8b68c836936e517b9846cfebb5eb32a8fb79372b71d2b7', 'bin', '9bc8ac6f12e8981d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:17:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '9f6374165f412b21c39cd4ec42ff6c2104c117a2f1e31e25d17af56cc8d4f308', 'bin', '9bc8ac6f12e8981d', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:20:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:28:00.000000+00:00', NULL, 'bin', 'B-1-1', '94576ead0c52374f', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:34:00.000000+00:00', NULL, 'bin', 'C-1-2', '94576ead0c52374f', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:50:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:59:00.000000+00:00', '3966528f296204aa', 'bin', 'B-1-1', '94576ead0c52374f', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:37:00.000000+00:00', NULL, 'bin', 'B-1-1', '94576ead0c52374f', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:40:00.000000+00:00', NULL, 'bin', 'B-1-1', '94576ead0c52374f', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:08:00.000000+00:00', NULL, 'bin', 'C-1-1', '9bc8ac6f12e8981d', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:04:00.000000+00:00', '84e2e1d1e498e48c', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:20:00.000000+00:00', '513ef42f38402622', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:41:00.000000+00:00', 'f89c2930af96bd91', 'bin', 'B-1-1', '94576ead0c52374f', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T14:50:00.000000+00:00', 'c50269154903ba23', 'bin', 'C-1-1', '94576ead0c52374f', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:42:00.000000+00:00', NULL, 'bin', 'B-1-1', '94576ead0c52374f', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:50:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T15:56:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '937d006c0b9d149c', 'c0be9fd8765417bd', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '4d9440baa2791e6f', '8f37714f7c0d3390', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'f7660aa4719cbfea', 'be800803d99cc850', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, 'a53bfce2cfcec81a', '478b743b789ba6f4', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'a05bd59d3d17d2e8', 'c2f6de0459c3bde0', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '66040640843e3fb8', 'c67269b1e15446de', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '695069a8599206e3', 'de88340fe2c32302', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, 'cd6dd4219f41697a', '2ed343a51f29f91e', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'c0f9e162e78247e5', '8f34b5de33344ca1', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, 'edd82e441be9d036', 'b0ebb5461b82cfb3', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '67ab08c413b1857e', '45df3c75601b3f87', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '3cb259c8100df17c', '77b87a9d6fd3527f', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, 'd96d17bae68508aa', 'be4f8d497b4e5c7b', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, 'b290f14fc1cf8810', '4cdc36e4a31b9f76', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '3d255a069c75e6ee', '5a3cb19fe18cab18', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '65eb149470f6363c', 'f3d2c784beef56f6', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '9cd85bbb5db6dd56', '0f80d6e17daa1122', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, 'fd0bc70dbeaa1afe', 'cff250fe2b44d964', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '285790cc087de215', 'c3ef9cb8890e1815', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '7b89a0040f15879d', 'b8797f0300492d4d', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '5b4017d5cd6b5416', '9de8c6bb504cade4', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, 'b32e450cff22026f', '7e71ec96095ef783', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, 'e8c3052ec97a1e05', 'da2278c40bac604e', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'db9e39ed86998618', '01e8bbd0b8c4f281', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '591dbbb87f35ff5c', '67aded2556912439', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '954cfaf88f3bd962', '9b6836047e4f0b6c', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'e2a68448cdd3b3f3', 'f2a35556384a674e', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '0442e0a68f3895d9', '18ecaa773959c3ea', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, 'd217b9ce8b73a878', '53bddcbbdda2189d', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'd8f493769e87e384', '59786a0fa5acbd1f', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '14e79b39ff0cf9a2', 'a00a669dd3c4a866', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'f0378fa57cc7baaf', 'fe1c57977c8edd45', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '651db47824d70a0d', '789cd1572429d97c', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '974b7a4d05e53df6', '8d617931082e0a4e', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, 'bed9a8e38879a7f5', '75606594c716c770', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'ff2425a58bd96734', 'e768deffe188e24b', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, '957a2ed29e957f6d', '01e32c5b922caf4f', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '900cabf0deb2912b', '10c2277165b697f2', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '87c935f02cd060d2', 'b311ddfbf0b9e122', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'c298117c1f6002bd', '2027a30fb6ae2d40', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '02fc984275f72852', 'c3dde01f752289da', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '11e5c934b66d2061', 'b9451730b3d96017', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, 'c40bf4a9c3119deb', 'c79139f87e8ffedc', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, 'dd4c3181c5f1a5a3', '6d12cda71efee5b6', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '13f07007eda41683', '6d12cda71efee5b6', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '7c01b18989b03aaa', '41ee27c113a196a2', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T12:58:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '33d92d7f61c29e66', '41ee27c113a196a2', 'D020', 1, '2026-03-02T12:58:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '606138e0f9ac6d8b', '8020518414d49e81', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:04:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'a66b1567db9a27af', 'fe8fee5cc59d6fc6', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:04:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '4cbb18075d219c44', '7d292ce88de6b130', 'W001', 2, '2026-03-02T14:10:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, '8f6ed006ac568100', '96668121486a19d7', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:29:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, '6e168e7a81575999', '0e3784a79daa1f2e', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:24:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, 'aec2fc7037b975cf', 'section:S', 'Spring', '2026-03-02T15:35:00.000000+00:00', 157, 'closed', '2026-03-02T16:08:00.000000+00:00', '{"stocktake": "aec2fc7037b975cf", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:35:00+00:00", "closed": "2026-03-02T16:08:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T15:56:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T15:59:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '520b59d92cc229f5', 'section:L', 'Spring', '2026-03-02T16:11:00.000000+00:00', 167, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'bb54d761818ff4bd', 'section:D', '', '2026-03-02T16:27:00.000000+00:00', 174, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '206e64733e8364f2', 'tray', 'Too late today', '2026-03-02T16:30:00.000000+00:00', 175, 'cancelled', '2026-03-02T16:33:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '94576ead0c52374f', 1, '6201232b0d400b7b', 'B-1-1');
INSERT INTO public.stops VALUES (2, '94576ead0c52374f', 2, '824e1e2633db2cbe', 'B-1-1');
INSERT INTO public.stops VALUES (3, '94576ead0c52374f', 3, '282378adfd8c04ca', 'B-1-1');
INSERT INTO public.stops VALUES (4, '94576ead0c52374f', 4, 'c4ad988c53381aab', 'B-1-1');
INSERT INTO public.stops VALUES (5, '94576ead0c52374f', 5, 'a4ad7c9850240561', 'B-1-1');
INSERT INTO public.stops VALUES (6, '94576ead0c52374f', 6, '986d90248e46598d', 'B-1-1');
INSERT INTO public.stops VALUES (7, '94576ead0c52374f', 7, '8b67ffc048558702', 'D-1-1');
INSERT INTO public.stops VALUES (8, '94576ead0c52374f', 8, '75d210d9abd69f42', 'D-1-1');
INSERT INTO public.stops VALUES (9, '94576ead0c52374f', 9, '71d6ca76b382f1c9', 'D-1-1');
INSERT INTO public.stops VALUES (10, '94576ead0c52374f', 10, 'b5115e8189040431', 'D-1-1');
INSERT INTO public.stops VALUES (11, '94576ead0c52374f', 11, '51a17fe1018a112b', 'C-1-1');
INSERT INTO public.stops VALUES (12, '94576ead0c52374f', 12, '3ecc9ebd99370722', 'C-1-2');
INSERT INTO public.stops VALUES (13, '9bc8ac6f12e8981d', 1, 'fc52b5774780f91b', 'A-1-2');
INSERT INTO public.stops VALUES (14, '9bc8ac6f12e8981d', 2, '01184f7853820781', 'C-1-1');
INSERT INTO public.stops VALUES (15, '9bc8ac6f12e8981d', 3, '51434f91289c9dfb', 'C-1-1');
INSERT INTO public.stops VALUES (16, '9bc8ac6f12e8981d', 4, '62924329b671cce6', 'C-1-1');
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
