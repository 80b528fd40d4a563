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
    photo character varying(64),
    kept_for text DEFAULT ''::text NOT NULL,
    kept_until character varying(32),
    away text DEFAULT ''::text NOT NULL,
    away_since character varying(32)
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
    reason text NOT NULL,
    load character varying(64),
    told character varying(64) DEFAULT ''::character varying NOT NULL,
    undated boolean DEFAULT false NOT NULL
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
INSERT INTO public.access VALUES (1, '99ea926ca245856864486348524d769068cbc161dde6ba53fc2cb04f91ff01e9', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$5Oa1y5nvZnmjIeGTFz6HaA$FRLtJ3fIhIEoWzkVPV129LIDWEA3gRfZead2QVlwJMA', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '1e106baec1d896cdd04ab5c7e581cc96bb7c49eb3dba40071a4ed255a730ac54', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '282c430cea478549f994771106320b0d7d1fb90325bfd14d48a93937db4f07f3', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'cc17d632375f7b555a66104ae50fe567f481d31f5676925dd4b38dcddb4d1690', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '575a1430976debcc68fc94763d3c9c9b8e8070adf228d154533bbe03c028f6a9', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0011');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/b60a09b8d5b6e5f8', '{"id": "b60a09b8d5b6e5f8", "item": "b0be6d117740b663", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, 'ae608a8975c2ebcd', '362df6c15a7040f9', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:56:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'f3c2417e676590f4', '44d64d0df762aec6', 'missing', 'Not in its bin', '2026-03-02T15:24:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '114448ff4cd7052c', '49979fe370c7cc85', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:55:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '8de89a1fa67bc0e2', '1484cef21c58322b', 'missing', 'a count of section:S did not find it', '2026-03-02T16:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '48d19b049bb9d052', '4c13430e41185589', 'missing', 'a count did not find it', '2026-03-02T16:34:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 183, '3a0b1baafbb9f3af9b9090a14ff12282d7ab8ca676ad6aaf8e78bebcf8b5bc44', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', '783d554ae28e6c5c');
INSERT INTO public.items VALUES (3, '8d64bf90ef4787f3', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '44a4321081037b62', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, '317076aec5973867', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, '0ca8f98714a96aad', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '64dbd3379f1af496', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '903857f90babfc4a', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, '27cf14e028dbd6d4', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, 'c0811b652110a962', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, 'ce53a2ebf64a1bf1', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '41d86d6046dde2ce', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, 'e23ee42678ef0384', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '50855ff49d571c6d', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '2d4eac4986d6e02c', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, '4a4e1d9a8369b1b5', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, 'd98834dfe6d6134e', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, '33ac3e5bbd5f2c35', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '1484cef21c58322b', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '3aebb68dc69ffad1', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, 'c9f88606820a7164', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, 'f32d4c6f5990600d', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, 'f326fefaf6fe3a0e', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, 'f611ed358b0bb241', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, '240b7c051dca3fcf', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, '4bb0a689f77c49a3', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, '44d64d0df762aec6', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, '6f2b707696e5cc93', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '3f2f01d8e9734d64', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, '362df6c15a7040f9', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, '4c13430e41185589', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '0413232de4e60fac', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '830301ddc7c43947', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '69ab0c043fbaa474', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, 'a979d54044a51e6c', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, '2226ccebcdbb0599', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '502e459fbd92f535', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, '250c71d8825fa4ba', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, '96c8d03bf40f2ae1', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, '2e51dfea31b1f2ca', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '02f4c003801a4745', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '8204ed9158a51674', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, 'b48fb1831781e4e4', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, '720cb8e56689f613', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, 'fc4941816e34b2da', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, 'b0be6d117740b663', 'Brass bell', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '5dd7deb0c13c8130', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, 'be369883ceccd6bb', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '49979fe370c7cc85', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, 'eb8a5caa827d3eae', 'Carbide lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, 'da5160d72425635b', 'Rear lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '83efeb8de27a6b7c', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '28aed52fadf397a3', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T11:29:00.000000+00:00');
INSERT INTO public.items VALUES (52, '311da72567deee72', 'Rear wheel', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '898b2103fdecf87e', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items be369883ceccd6bb - fba60a0701a2","slots D001 on_item e5405bc28ff8","stays 2e5eedf8c17abdc4 stored 9e75aa0dd705"],"stay":"2e5eedf8c17abdc4","title":"Rear derailleur 1","turn":1}', '93ae4c86d013d82110ad4f77f4b759b30b12782431afa08e443d6cfd24bb27d2');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 5dd7deb0c13c8130 - 85a1c966a421","slots D002 on_item 4f79f524f247","stays 338a4c2e4e5c21ff stored 6cf20dfad601"],"stay":"338a4c2e4e5c21ff","title":"Rear derailleur 2","turn":1}', '5ab22f78ff9afdb6cd6f1cddbbc0019e1c3fad445f28f21604255a62be35783e');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 8d64bf90ef4787f3 - 785daa53ffa8","slots D003 on_item 6de523ac8b4d","stays aad35986db58698c stored d73aa7d964fe"],"stay":"aad35986db58698c","title":"Rear derailleur 3","turn":1}', '32d6c4392fcfa0d42b94f187bff5cce2f346bff05a62ee491bb2c970716f32fb');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 44a4321081037b62 - cd9b7a4a3191","slots D004 on_item ec423998da46","stays c16b1b882a77e08b stored ca1b0fd0f280"],"stay":"c16b1b882a77e08b","title":"Rear derailleur 4","turn":1}', '55272342346e01fc6a19ba3f17e06e7181ae3a53681338bc15423bdccaa2e1b2');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 317076aec5973867 - a48c7b2ca53b","slots D005 on_item 91ad3faf88d6","stays 58bb1df8baaaea9f stored 6c58ea1ec3fa"],"stay":"58bb1df8baaaea9f","title":"Rear derailleur 5","turn":1}', '85e26bbade829e1db326a3c7cd0f04f41edcee1180ef9873e6aec5f6a53a229e');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 0ca8f98714a96aad - 761f5d66843e","slots D006 on_item 1fadb568d6a5","stays b75799427b0c3b45 stored 0ed259ff96d8"],"stay":"b75799427b0c3b45","title":"Rear derailleur 6","turn":1}', '840bd99420aa2e08140430ae9a6da46ad17770fb734c6923e182ec82ec121afc');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 64dbd3379f1af496 - c51bea778918","slots D007 on_item 536077e3b728","stays 605dfd2290cf21eb stored 9427cbe09c09"],"stay":"605dfd2290cf21eb","title":"Rear derailleur 7","turn":1}', '637a4b0882f79e4adac6e43f4e2bd091ddc3c3f81e32a466e59ee6630ee5ace8');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 903857f90babfc4a - 5da9a9c7b2cb","slots D008 on_item facb453cba22","stays 0056fec8689ece58 stored 4f76da26cc33"],"stay":"0056fec8689ece58","title":"Rear derailleur 8","turn":1}', 'a9a9a4ce1fd2901365dea557008021438ff62622549d654f607e9c00c35810f1');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 27cf14e028dbd6d4 - 1f4e39f38943","slots D009 on_item 7434bf04ccf2","stays 8cae9aaaf2223614 stored 0e20a1064c50"],"stay":"8cae9aaaf2223614","title":"Rear derailleur 9","turn":1}', '1593920193664bd44989c4a0b037145325c174f48a1199d30731a9092ffa1340');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items c0811b652110a962 - 7c4282877bf6","slots D010 on_item 1f8fd3ebaf8b","stays 57d93f9b01acad4a stored 97556c7591bb"],"stay":"57d93f9b01acad4a","title":"Rear derailleur 10","turn":1}', '233f7e9bf088478b880d6b5340616ce1fe6eddc5b67d2b924f9bf14904907bdc');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items ce53a2ebf64a1bf1 - e8f3df643731","slots D011 on_item d451255e38b7","stays 1c3eae0a0a570a3e stored 6e0137b7c19f"],"stay":"1c3eae0a0a570a3e","title":"Rear derailleur 11","turn":1}', '5f720b5951479a4ba400b8bc099934308886ace8ec465de7293c1732e3c82f58');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 41d86d6046dde2ce - 39927b8a7467","slots D012 on_item bdbda5bb2b7a","stays e616511ffa7421ed stored cff4fb3edbb5"],"stay":"e616511ffa7421ed","title":"Rear derailleur 12","turn":1}', '19676fa8365559e59d30b09ba82b5e2bb1a0de14f2bf0681185eba0319c17ff6');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 49979fe370c7cc85 - 019e8d223a15","slots S001 on_item 76dcd853e3e0","stays 727279285486af02 stored d538ccdf7bea"],"stay":"727279285486af02","title":"Leather saddle 1","turn":1}', '69d7a3e56d48ccb6c1892aef5d1ca64bbace211440b086c72d7e1a28b6b3d185');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items e23ee42678ef0384 - ff0c90bb0a3a","slots S002 on_item 6fb94c47a50d","stays 231d3e49bb0f2c25 stored 4b849067a723"],"stay":"231d3e49bb0f2c25","title":"Leather saddle 2","turn":1}', '0ff0e2ab9f0d4ce29a08b195bf6287d94c42ab72570c6416d3c5937677dcdb9d');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 50855ff49d571c6d - dc56d4638b13","slots S003 on_item e00808332634","stays 1f1c209de6395e34 stored 3e52dcc65e3a"],"stay":"1f1c209de6395e34","title":"Leather saddle 3","turn":1}', 'bdbb1f2b8086edabd5998336cc8b12446d95a85b1d83a1c1bf7877814dfcaa6a');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 2d4eac4986d6e02c - c92a2afdc350","slots S004 on_item db1aa8005467","stays ed8b2f1b1a15d9ca stored a18c30faf5e2"],"stay":"ed8b2f1b1a15d9ca","title":"Leather saddle 4","turn":1}', '14c1a72a731f446d983637db44a66b494627c8ed4a1e9186231b0c2db36485c7');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 4a4e1d9a8369b1b5 - 870c07ab0ab8","slots S005 on_item ec548ef84f99","stays bd7e003001f7079b stored a10f877bf44a"],"stay":"bd7e003001f7079b","title":"Leather saddle 5","turn":1}', '1855a7f4470646e789b50685a0762b484f1a1d9697df710e07d489e2c56a44be');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items d98834dfe6d6134e - c81d324a03cc","slots S006 on_item dc9bc74eb63a","stays d10756c693946bc0 stored 1daabb993a28"],"stay":"d10756c693946bc0","title":"Leather saddle 6","turn":1}', 'c6c631e09f4f42a4ea6b2601892a9a9352a4a07ae4ea6a9498d63dddbe417bee');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 33ac3e5bbd5f2c35 - 4889d7236cd6","slots S007 on_item 075fd8b9fecf","stays b539ec5cc4d938e7 stored 0de955bbdb18"],"stay":"b539ec5cc4d938e7","title":"Leather saddle 7","turn":1}', '2cfea5fd290986e9ec3f1bdbf3117674c327aea94d820e165a44101237f90fcc');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 1484cef21c58322b - e88305072247","slots S008 on_item 39fdb847a4bc","stays dfbc7780e8056ef3 stored b0b8a933e03f"],"stay":"dfbc7780e8056ef3","title":"Leather saddle 8","turn":1}', 'f8c7e4cb61b80f95bcd34fbae51bafc1ee6697f95ff4238cca1b6f7325a9d332');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 3aebb68dc69ffad1 - d49dc01709c6","slots S009 on_item 62c79df275b3","stays 98dcc3c423361fd4 stored 24fcaa65876e"],"stay":"98dcc3c423361fd4","title":"Leather saddle 9","turn":1}', '0a925ac18b99828df8717efa5188342eb7d995ceed9812ef349b3cd09bc2dca7');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items c9f88606820a7164 - 57609a593912","slots S010 on_item 1fd8d85fa1c4","stays bb800459e0606b86 stored 45119f5e2943"],"stay":"bb800459e0606b86","title":"Leather saddle 10","turn":1}', '9eb9bf4e272f510c027c486b434f1e6b7f0cc9b021ec2145e1c3470b560a03e8');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items f32d4c6f5990600d - cb32ed9d8c4c","slots S011 on_item e59577c4b2a7","stays f5c3b2430b50de89 stored e1cc68efd8e5"],"stay":"f5c3b2430b50de89","title":"Leather saddle 11","turn":1}', '21beada07d860b7fb54aec943138e30c797cd880a7bbc4ac31d48423b6ed0959');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items f326fefaf6fe3a0e - c372d7e7b6f0","slots S012 on_item 9bae442e2436","stays 1bbefce7866b4536 stored 3289b79074fe"],"stay":"1bbefce7866b4536","title":"Leather saddle 12","turn":1}', '50e9261fb3578fb1222604895dd40dc23e175b7e0d38f8f423b935023fbf04db');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items f611ed358b0bb241 - 53f89fdabf8d","slots L001 on_item 43c5cdfaa8e4","stays 8006dfe31e7d9ecc stored accbc068296b"],"stay":"8006dfe31e7d9ecc","title":"Dynamo lamp 1","turn":1}', 'ffe6b24b7ac82cafce457874f373dd4d5e740e108ff9b5016fa103255e0ae1f7');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 240b7c051dca3fcf - a965b2bd65c4","slots L002 on_item ea8e77c8b06f","stays 2ea4e3cea54064c7 stored d2c54f49e948"],"stay":"2ea4e3cea54064c7","title":"Dynamo lamp 2","turn":1}', '53a1447159dfd157383b7a582b9b3bf3777844d6a8f2c0b0376a35450522f1b4');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 4bb0a689f77c49a3 - 2528ab6c407f","slots L003 on_item c35e4c005cda","stays 0588b858f0bd9e75 stored 27adc0ceebf1"],"stay":"0588b858f0bd9e75","title":"Dynamo lamp 3","turn":1}', '2a8091b250f9b2a58e4adec65eb6ec2b29c1505d74942b63c82ee3a41d71e099');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 44d64d0df762aec6 - c86a82c28f76","slots L004 on_item 70a88e4a366b","stays 4a259aa709bfbe8a stored cdc1313d178b"],"stay":"4a259aa709bfbe8a","title":"Dynamo lamp 4","turn":1}', '003271ba111102e3e9de23f3767aa4f1ad126e347e494295b24c7330f24b30de');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 6f2b707696e5cc93 - 7cf84bdeba26","slots L005 on_item 6261d94de1ef","stays 12a2aca448eabf97 stored 3d9cda7ddad5"],"stay":"12a2aca448eabf97","title":"Dynamo lamp 5","turn":1}', 'be95a6adb0c3d36563cf9c8695614e3f31180a5dc0e412b7f7a3757fa7a309b8');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 3f2f01d8e9734d64 - 22d358ee2df0","slots L006 on_item b67b470f3637","stays 56137f8baf421f8b stored 808cee5727d1"],"stay":"56137f8baf421f8b","title":"Dynamo lamp 6","turn":1}', 'a20e2012b8d152b1cb3c144ea21f430d63a7927967f76cd744a9599966e67ad6');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 362df6c15a7040f9 - ea9b6e78001a","slots L007 on_item 767524982af4","stays daed5f68e649f1e6 stored d7155febaa8f"],"stay":"daed5f68e649f1e6","title":"Dynamo lamp 7","turn":1}', '8e076982eea044ac8e61b80fbd05f86a948513dc00f61d32e3a9755da13b82bb');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 4c13430e41185589 - f3a8c3c3e72a","slots L008 on_item b3b2d23a98b7","stays 7429720814f64b17 stored 2305fb2a30b2"],"stay":"7429720814f64b17","title":"Dynamo lamp 8","turn":1}', '7acf1edb0ef220274111fc7bc67b3139f5b9788cbe54b3de63377743c6825cac');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 0413232de4e60fac - bf787a48488c","slots L009 on_item c3139144a3f8","stays 3bcdc84f180e1dd1 stored a29ec749a7ec"],"stay":"3bcdc84f180e1dd1","title":"Dynamo lamp 9","turn":1}', '3ca9cf3c68f180a5ac40c3b4d5c22f19a3077cfc895c675a00875aaaa8cc3afe');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 830301ddc7c43947 - 3804a33caaeb","slots L010 on_item f8c13ae8aec4","stays 5055b235844ae452 stored 2134699c0fb4"],"stay":"5055b235844ae452","title":"Dynamo lamp 10","turn":1}', '87b542bb5cfe5826749f4dd149dd32a87041e0949e6efa2c90f6e96a42a70808');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 69ab0c043fbaa474 - f15c56e4f291","slots L011 on_item 9d01c75c0f89","stays db97224603587c42 stored 688b0f7f6df5"],"stay":"db97224603587c42","title":"Dynamo lamp 11","turn":1}', '30b3a47f4849fb7b8687e2df29b90173a324bad109b45f42652eb08868b027f5');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items a979d54044a51e6c - 962ff96feec0","slots L012 on_item 5373b19b101e","stays 59a084e4ed124c85 stored 4d4f510f7783"],"stay":"59a084e4ed124c85","title":"Dynamo lamp 12","turn":1}', 'e507726344ae8f2f926390068ce322fee7688b9ea4ab4b7e3776d73b07ae6687');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 2226ccebcdbb0599 - 7006ce42b720","slots W001 on_item 17dd342c2f6a","stays 355274cb9dadcbdc stored ec966a3df690"],"stay":"355274cb9dadcbdc","title":"Front wheel 1","turn":1}', 'dfbc3ed62394ead9b0473fd99bbcca187b1e93725b41de50e8ed817d765d2770');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 502e459fbd92f535 - f72e7a42a0e9","slots W002 on_item 7ebfb8df41ca","stays 3ba60500212b1f89 stored fc06e601d73d"],"stay":"3ba60500212b1f89","title":"Front wheel 2","turn":1}', 'c0073f6bc7ec56e881415c2911ff538c1a7742f2ccf354461411fd7514bb4dd0');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 250c71d8825fa4ba - 602c7cc41955","slots W003 on_item f84a2674e962","stays 39da85a7de6208b8 stored 0a5f20313b3a"],"stay":"39da85a7de6208b8","title":"Front wheel 3","turn":1}', 'c237a4a591f315fd3046318bccd2abbb220bc70b0efd30cbc52c0cabbf67d2b3');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 96c8d03bf40f2ae1 - fb7ddd245875","slots W004 on_item f45ed94fd55a","stays 8d8747dd2b78ebcc stored 821e00e69e9d"],"stay":"8d8747dd2b78ebcc","title":"Front wheel 4","turn":1}', '9946342648131695ae9226754e4010e692ca458e50a3ae210769cc145ef98725');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 2e51dfea31b1f2ca - 174b267f1207","slots W005 on_item a1fdfb2c692e","stays 34594db2327aaf98 stored 0b0cb41d6ad8"],"stay":"34594db2327aaf98","title":"Front wheel 5","turn":1}', '70bc1e354746ec39e294b2f2da948e18d1f24ef98bd7eb7d116c83d18ea0e736');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 02f4c003801a4745 - 564a3fb57586","slots W006 on_item 3dd6244f0bee","stays a95de74e580568ac stored 8c2b58aba99c"],"stay":"a95de74e580568ac","title":"Front wheel 6","turn":1}', '2b5975fcfebcc6427422e17558d8574ab776c757d1f422442671e2fe964766a0');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 8204ed9158a51674 - 1ac192c42cc8","slots W007 on_item d52463b699e2","stays 3e4f17cb0080a2c4 stored 258e765c89af"],"stay":"3e4f17cb0080a2c4","title":"Front wheel 7","turn":1}', 'c1871f9a50dab61ae33ea73714a919bf4fb8bafc697ae9f2f7c45e7165cafea5');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items b48fb1831781e4e4 - c3e6791c06a0","slots W008 on_item 2e167460fb16","stays c78e853ab2077836 stored 310c38371934"],"stay":"c78e853ab2077836","title":"Front wheel 8","turn":1}', 'b26d10e07ed693b7a0e271a1f9b5cb1b971e186d062dd8fe0b9598803839b07b');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 720cb8e56689f613 - c9e29fa46a07","slots W009 on_item 597fc2f4b56e","stays 1a6d990445c78378 stored 4b21643df27f"],"stay":"1a6d990445c78378","title":"Front wheel 9","turn":1}', '616b7a7843990f0a29f5e9b841e11fccf813dee6ea2f7532dcfd7cfe1d32698b');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items fc4941816e34b2da - 6bed4c5a9e24","slots W010 on_item 7d0365c2d2de","stays f5c073d18996ff41 stored 82bdb4141feb"],"stay":"f5c073d18996ff41","title":"Front wheel 10","turn":1}', 'f4813f489b79def9147f9c00ecd8bb643e9719cdc2cc38b8ab7f130dcfaafc0f');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 28aed52fadf397a3 - 0fdfa9747afa","slots W011 on_item d3a26b640d71","stays e34c4fbaf1c2b7c3 stored cc6244cb5826"],"stay":"e34c4fbaf1c2b7c3","title":"Front wheel 11","turn":1}', '2badeb9eb09626e996414c11e2bdc60b86ea7f84d31ff52e7998317d39c88d12');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 83efeb8de27a6b7c - 8a46f0a12883","slots W012 on_item ac10bfb906d6","stays 9ef4196b76d58d95 stored 5896bfcfc9bb"],"stay":"9ef4196b76d58d95","title":"Front wheel 12","turn":1}', 'e653e386c1bbce4b7a8bc71e770a8d85057a9fbadc0b9ae6f88f4d664ee8be87');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:21:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"9c994c312aad01e1"}', 'b9ee6767b36cdae0fcadcc7fbd9e5185907d7eea671da516c9bda27caa79a6cb');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items b0be6d117740b663 - 6442ac08fb2c","slots D013 on_item 69b6f1c92d5d","stays b60a09b8d5b6e5f8 stored d64758f09073"],"stay":"b60a09b8d5b6e5f8","title":"Brass bell","turn":1}', '79ee380ae15fda94a30cc19b294a62cf0b36baa0e9a336369a239cef7d485cda');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 5dd7deb0c13c8130 - c3c8851abddc"],"stay":"338a4c2e4e5c21ff"}', '4c4733d9e1b097ea84ca9be94305a13535cda1326d13b11a89583a889a4bfcd0');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays bb800459e0606b86 withdrawn 3304c329470b","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"bb800459e0606b86"}', '5d808e47e1682c5d32d7cdac4852cb8ff5f477ccf5d050119f0e8728021213db');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays 8d8747dd2b78ebcc withdrawn e154786a43e8","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"8d8747dd2b78ebcc"}', 'aa184cd49607ffba1c12c17a0a10b33840014e6fa014026c393b45216d65cb49');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"224e38e871369cf2","now":["stays 98dcc3c423361fd4 moved 2fabc533d887","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 224e38e871369cf2 stored 1c7c332dde35"],"stay":"98dcc3c423361fd4","to":"S013"}', '5f440daa7def1bfd25386b73be0ac72baf16dfca3fc405070d4ffb1656ae64fb');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items be369883ceccd6bb - d3914d3be944"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"2e5eedf8c17abdc4"}', '7547f90c8a958c7c09f65f2a28ef3e6e323db620710c9db75ea73155dbc27a37');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 49979fe370c7cc85 - 2f6b8e6fa067"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"727279285486af02"}', 'f289b4fcfe07ed6e0f9346579bc3165f6f87ae57d885f7c3a9341a20b85dce05');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items eb8a5caa827d3eae - e05fa5baa77e","slots L013 on_item 417a81be4bcb","stays 1c24668a050d1087 stored b30520e2fde6","items da5160d72425635b - 31d5ad45b045","slots L014 on_item 26405b275a18","stays 808bdc5c6b27eeb7 stored 4a6801e76657"],"stay":"1c24668a050d1087","title":"Carbide lamp","turn":1}', '7710a4ceb6dbb9fb1b2b4bec51dc67fa6d38ee5545697fd808ad57572b766ef0');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"808bdc5c6b27eeb7","title":"Rear lamp","turn":1}', '1c0a2303ae4dab3a14816ee7f52318eb61e7fac8bafa7e91b1493260496770dd');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'd8fe46bc8aeabab9653c20e87f248373acf927c13fe557bbe525c75470b3f500');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 83efeb8de27a6b7c - 4094accb567f"],"stay":"9ef4196b76d58d95","until":"2026-12-24T23:59:59+00:00"}', '5a042ac43ef2eea6a583678caee4d242dc1fe6916a628101061724d4cf715231');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 28aed52fadf397a3 - bf7157fa2239"],"stay":"e34c4fbaf1c2b7c3"}', '9c9dea91d6e19ed0369e9b896c6573ce5284db4116372886dc9c8a2e67a03fd5');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', 'c078ea4ff74f30277e63ea475bfaf53eaf375c10a8f244c5818b2d6aab7ec836');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '813326d5ddf47b2248070385d0773dfab672169da01a92fc476dd1d96d0ba9f2');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:36:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '2b94958841372df394e777d03442e24c6efac290fa8f5dae54bfe156cdb43936');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:37:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '0df5e137c6c282bf02653999452e3a0c3874ba0a9c966df723759d7ddd12e7a1');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '4886a3fdb3c9bb78a0e856aeed5abe92d2c013167587c0ffd8555285a03f5cdd');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1367200b6e2dfd55","reference":"W001-01E","stay":"355274cb9dadcbdc"},{"hold":null,"line":"911b2fd930d65eb3","reference":"W002-016","stay":"3ba60500212b1f89"}],"now":["orders f50cd0e18f06d6ac - 73fe00d8c6fd","lines 1367200b6e2dfd55 waiting 7ea796da6266","lines 911b2fd930d65eb3 waiting 3157ecec9943"],"number":"B-01","order":"f50cd0e18f06d6ac"}', '6a613452e66afa0db164b2d5d53d6dd31775fe589d58158e4d5a99d4978e7ed6');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f7a02cc31f972416","reference":"S002-013","stay":"231d3e49bb0f2c25"},{"hold":null,"line":"471b8cd15e1036f0","reference":"S003-01W","stay":"1f1c209de6395e34"}],"now":["orders 3ae6d2ac951576a2 - 917c22a45493","lines f7a02cc31f972416 waiting d17ab16b5abc","lines 471b8cd15e1036f0 waiting 475a5705c44f"],"number":"B-03","order":"3ae6d2ac951576a2"}', '5560c4e6201c9bf3284d6fb115de088bbc8b1232223d4f392bfe5885f68f1807');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8d8de11d5930f149","reference":"S004-01O","stay":"ed8b2f1b1a15d9ca"},{"hold":null,"line":"9959949d54c99bce","reference":"S005-01G","stay":"bd7e003001f7079b"}],"now":["orders e0d91762f20d4d15 - daf437ae6730","lines 8d8de11d5930f149 waiting e4f764b7e5a5","lines 9959949d54c99bce waiting 091d206ce096"],"number":"B-04","order":"e0d91762f20d4d15"}', '96a1569f93309f1aabf06df44354d03ac42ee3d52d8643bb7208b81942e96446');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"02baa9656c131c61","reference":"L002-017","stay":"2ea4e3cea54064c7"}],"now":["orders 53e2a5c3b11c8c1c - e03803294516","lines 02baa9656c131c61 waiting 18b6bec943ee"],"number":"B-05","order":"53e2a5c3b11c8c1c"}', '74d015fb2dfde17c221f8a948f18e69068783dc1c5901e94598a0ef70a48238b');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:24:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 42179e988f472845 open 5ce7acb51c3d"],"stocktake":"42179e988f472845"}', 'e788c9ed64211723d880772bc3f60da679823fa877693f8770ac001f19917438');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b8ffc45b2e36fa50","reference":"L003-010","stay":"0588b858f0bd9e75"}],"now":["orders 75837b1d68c2818d - 026652d74c59","lines b8ffc45b2e36fa50 waiting 1484979d1373"],"number":"B-06","order":"75837b1d68c2818d"}', 'e68f55c6e044f4e7114e4c4cb0ed7bc3e1152dcc7ac9ddd5a5bbf443ab7976d6');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1e3eab53ea0bfe8e","reference":"L004-01S","stay":"4a259aa709bfbe8a"}],"now":["orders fd6f2eba7c679fdf - bd104ef12335","lines 1e3eab53ea0bfe8e waiting 80b923db03f7"],"number":"B-07","order":"fd6f2eba7c679fdf"}', 'e4bd982d4cf1b7c6ddc1d5ee0de11f8743a5b218a5f56f6cd8cbe728cee0d8fc');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0529afb36758cc77","reference":"L005-01K","stay":"12a2aca448eabf97"}],"now":["orders ea08356441702511 - 839b6545e7e7","lines 0529afb36758cc77 waiting 91f839e51bb1"],"number":"B-08","order":"ea08356441702511"}', 'c2a5e89363f21d53af85601d97f90e587aabefaeecc49cbce1ff08bf7ae573fa');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3541e50ab4b6cc9b","reference":"L006-01C","stay":"56137f8baf421f8b"},{"hold":null,"line":"4e7a32f8eac8603b","reference":"L011-010","stay":"db97224603587c42"}],"now":["orders d9727a2153a406c8 - 743e8b7355f6","lines 3541e50ab4b6cc9b waiting f0c569f4a203","lines 4e7a32f8eac8603b waiting 7e55d40f9e2b"],"number":"B-09","order":"d9727a2153a406c8"}', '357b75aebd4b633d689f748fc862cba3f487648add925bed15dab8e254d43432');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0a4d4d9017b5d74e","reference":"S006-018","stay":"d10756c693946bc0"}],"now":["orders 6af3f73ae38ea0c5 - 9ce3b0351405","lines 0a4d4d9017b5d74e waiting 8dfaa1673f08"],"number":"B-13","order":"6af3f73ae38ea0c5"}', '1393b0584cda9e3b599b661d29d297f0f1568113d39d0a66800385d6175fd1a1');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"bff09416b1eeab85","reference":"L007-014","stay":"daed5f68e649f1e6"}],"now":["orders 88eddde2e3f0921b - 87be0026f1ac","lines bff09416b1eeab85 waiting d21f43f4a579"],"number":"B-17","order":"88eddde2e3f0921b"}', 'b5b0e6da1e5251e17df19a45e6f52c77f2e3ec2ec5dc59eff363bf3c71518ec7');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"59dc9e9ecdfb9a5b","reference":"D009-01B","stay":"8cae9aaaf2223614"}],"now":["orders 06d46b5206189b60 - d79ecf586785","lines 59dc9e9ecdfb9a5b waiting ee4a944cdc71"],"number":"B-18","order":"06d46b5206189b60"}', 'cad785a6061e953e7f9632395818e1522a065e2e5871487f445730f60f73a867');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b001542134f27f82","reference":"W006-013","stay":"a95de74e580568ac"}],"now":["orders b99895a19df83ef8 - 3e2add90693c","lines b001542134f27f82 waiting f27c3600f891"],"number":"B-21","order":"b99895a19df83ef8"}', 'e6ec37b3a6aac2b17232471d1ddbdcd5afb159e6b68a465ef41070b4b59e471f');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"880f358a65334086","reference":"S007-01Z","stay":"b539ec5cc4d938e7"}],"now":["orders ba96b8305f4d488c - 0aaba5fa03ca","lines 880f358a65334086 waiting 7d3ecd93f6f4"],"number":"B-22","order":"ba96b8305f4d488c"}', '8be17bfa19b98a9fb4752a171bc9635b61c0230ab7572136ba306620c3f70c17');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"764196a62c7b8682","reference":"W007-01W","stay":"3e4f17cb0080a2c4"},{"hold":null,"line":"bde558e5fb08cf2a","reference":"W008-01O","stay":"c78e853ab2077836"}],"now":["orders 9a64687289a9dff3 - b2ce619f669d","lines 764196a62c7b8682 waiting 41020a300b16","lines bde558e5fb08cf2a waiting 692590e9ad84"],"number":"B-23","order":"9a64687289a9dff3"}', '4b7595b60b8ab24757ac15bdeee748542f7f5b2f0ffe1d1d941d15dbba583a2c');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c78a8b0570e8b50d","reference":"D008-01J","stay":"0056fec8689ece58"}],"now":["orders 6086773252509119 - 6b23b86e8fe3","lines c78a8b0570e8b50d waiting e4966c08fb44"],"number":"B-26","order":"6086773252509119"}', 'eb848e855ebd8616285739e362b87f1ec2e457d5e9dbba031098621bd14640b9');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"3dac4dc58f6a10f1","reference":"D003-01U","stay":"aad35986db58698c"}],"now":["orders 02fc3fd2e68bfc2b - b8cbbfee39f9","lines 3dac4dc58f6a10f1 waiting 315537472ebc"],"number":"B-30","order":"02fc3fd2e68bfc2b"}', '37d093c4c2700e7bf97def29a842389bc4180ebe6e1dc65a4d71befacb8432f7');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9fa408def0b98885","reference":"D005-01E","stay":"58bb1df8baaaea9f"},{"hold":"unknown_code","line":"dc44f01530a2fcdb","reference":"Z999","stay":null}],"now":["orders 3b4ad5503880a4e6 - e38b73962c18","lines 9fa408def0b98885 waiting 29c9a22999b9","lines dc44f01530a2fcdb unbound 9439ccee236b"],"number":"B-31","order":"3b4ad5503880a4e6"}', '4fcbd7c0a5882e70c73c34355c057ac84da70219f709215b2ffc28cf9440b35d');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d030a816e46e208a","reference":"D006-016","stay":"b75799427b0c3b45"},{"hold":null,"line":"475aa10f3f25a4c6","reference":"D007-01R","stay":"605dfd2290cf21eb"}],"now":["orders 14994dcc1ddcbc51 - b02f3a0fbc0a","lines d030a816e46e208a waiting 4317751d1ad8","lines 475aa10f3f25a4c6 waiting 9e6939b8bb9f"],"number":"B-32","order":"14994dcc1ddcbc51"}', '73fb411f9f698e8b0304b257ba9bf0c4936560c43273cd61de2664d8692f3230');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"475aa10f3f25a4c6","reference":"D007-01R","stay":"605dfd2290cf21eb"}],"now":["lines 475aa10f3f25a4c6 waiting 23c1149b343e"],"number":"B-32","order":"14994dcc1ddcbc51"}', '6c661c324a9d5646979b251f30ee81130a06124b3f633147a3069fbdfeba2ca6');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"a31cd1302afdcd7a","reference":"lamp","stay":null}],"now":["orders d7ce49a1540b6298 - a4d5cba076de","lines a31cd1302afdcd7a unbound b1f018c83c8c"],"number":"B-33","order":"d7ce49a1540b6298"}', 'ab8c5816ae83bd2f5116876aa87d7197197e45fb6550546c5d5f97f30e08569e');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"ad93cb9b838ccc25","reference":"D006-016","stay":null}],"now":["orders f1cbf01ce608dd54 - 92a41cc147d4","lines ad93cb9b838ccc25 unbound 25dd6d72cf05"],"number":"B-34","order":"f1cbf01ce608dd54"}', 'ac743aa3c513671da8621974530f0dbd76f133d88adb6835a11d6865a106e9e0');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"30c8c648f4cff7e4","reference":"W004-01J","stay":null}],"now":["orders 21476407a0be39f7 - fd8d8f19b6b3","lines 30c8c648f4cff7e4 unbound d9f04dd0ac39"],"number":"B-35","order":"21476407a0be39f7"}', 'b2bd06a67617931f2844ae8c3db15eadb1f431b437d7aca1782a70abed692a9a');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"c53753e93a5a9476","reference":"L015","stay":null}],"now":["orders fdfc327a6f452b1f - f15d7f0b4ee8","lines c53753e93a5a9476 unbound 02c06333a811"],"number":"B-36","order":"fdfc327a6f452b1f"}', '0a58f7d7486eb88116761e1ab59c1c1d0f69cff2b95d7c3fb268d6e7d70c7a06');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"f85427432b867697","reference":"W005-01B","stay":"34594db2327aaf98"}],"now":["orders 1be54320d97f2ea3 - 83a793a3053d","lines f85427432b867697 waiting 9385a1c21b25"],"number":"B-37","order":"1be54320d97f2ea3"}', '0d684705445fbde88b0e858949631c57e981e73c9e0dc90d9c1c3c1bf13f2f23');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"f85427432b867697","now":["lines f85427432b867697 waiting 1c127c82d266"],"stay":"34594db2327aaf98"}', '6db0b67a6147c1927649ac6c0d0a5521bdd371373866bd11b83602cceaf98da6');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:56:00.000000+00:00', 'doubted', 'boss', '{"doubt":"ae608a8975c2ebcd","doubt_kind":"not_this","item":"362df6c15a7040f9","now":["doubts ae608a8975c2ebcd - ac525bd0ac09","lines bff09416b1eeab85 waiting e49c13eb11cc"],"words":"Another lamp, by the photo"}', 'a5c2d7c6d4c9dfe5982862654d66b5b618d1c77b2060f2a8e641b8a1fba1778f');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'held', 'boss', '{"line":"bff09416b1eeab85","why":"Another lamp, by the photo"}', '96c8b178ea85b37ae24d15280eb8cd8a1e5ec2cbd10a6a371fd0d8b4561c9012');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["0529afb36758cc77"],"now":["lines 0529afb36758cc77 cancelled 8778c015527f"],"number":"B-08","order":"ea08356441702511"}', '2afabf2f2d5f0c955bcd273e0c5b498ae1e435c074817261812260768cf4da14');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'cancelled', 'boss', '{"lines":["b001542134f27f82"],"now":["lines b001542134f27f82 cancelled e9a3f795405e"],"number":"B-21","order":"b99895a19df83ef8"}', 'f3edd30d61e5eb44bba18628f16120782767440530ac235ed560a32cbb9dc9eb');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'revived', 'boss', '{"line":"b001542134f27f82","now":["lines b001542134f27f82 waiting f27c3600f891"],"stay":"a95de74e580568ac"}', '3615e3e12e3d7e5c4735d6d35fd4bb2e2326fc408b748e55963519ba9307a4f6');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"4b50aeb017e70b38","now":["stays 0056fec8689ece58 moved f9f6fcc25d78","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 4b50aeb017e70b38 stored d2772a04ae87","lines c78a8b0570e8b50d waiting 9e2f869012d8"],"stay":"0056fec8689ece58","to":"D020"}', '9c6035128adc1f9eee40987d1758f21372aed5c8917193d85e832ee712233a11');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"e3238f349ae750b5","reference":"L012-01S","stay":"59a084e4ed124c85"}],"note":"Rings at noon","now":["orders 9d31f3915bf433fc - f527ca8faa1e","lines e3238f349ae750b5 waiting 8239a32e522f"],"number":"Sale L012-01S","order":"9d31f3915bf433fc"}', '19c58e9f935a03b8b02f164d7fae5f28d593f16222df679c8b434a59f31bbd79');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"64e0378edaa9ba86","reference":"S012-01O","stay":"1bbefce7866b4536"}],"now":["orders eff18867cfa40a86 - e276bd8ea016","lines 64e0378edaa9ba86 waiting cc239d6192c6","orders 0d2e088a57d533ba - 5abdc98a9c96","lines 11a0da3c778aacd6 unbound f95d933e755e"],"number":"F-1","order":"eff18867cfa40a86"}', '00cb67182b8fa94735d5520a53fd6447e07fb230cc3e91f2c986bb6fdb260ef3');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"11a0da3c778aacd6","reference":"","stay":null}],"number":"F-2","order":"0d2e088a57d533ba"}', '2fb931ddd4467442cdad13bb002384c02b97c4fe897b3a41ad3bfbf865467d73');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'round opened', 'boss', '{"lines":["1367200b6e2dfd55","911b2fd930d65eb3","f7a02cc31f972416","471b8cd15e1036f0","8d8de11d5930f149","9959949d54c99bce","3541e50ab4b6cc9b","4e7a32f8eac8603b","0a4d4d9017b5d74e","880f358a65334086","764196a62c7b8682","bde558e5fb08cf2a"],"now":["rounds d9c4d224f242f790 open 225304767ff5","lines f7a02cc31f972416 waiting 63a4517ef172","lines 471b8cd15e1036f0 waiting 4553622f0853","lines 8d8de11d5930f149 waiting 12fd730d02df","lines 9959949d54c99bce waiting cb1375c268a1","lines 0a4d4d9017b5d74e waiting baddb80f97bb","lines 880f358a65334086 waiting 2c51fd919f48","lines 1367200b6e2dfd55 waiting 77beacc8f27e","lines 911b2fd930d65eb3 waiting 5ff5800974c3","lines 764196a62c7b8682 waiting 2d8dd14c0e19","lines bde558e5fb08cf2a waiting e526f65f3781","lines 3541e50ab4b6cc9b waiting 2d2f55a101e6","lines 4e7a32f8eac8603b waiting 1085819350fc"],"round":"d9c4d224f242f790"}', '1d7ca14597321bca3ada7836c20b62b85628df336f2f9b0f3ef78e43d38513c2');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 98b668495a2e","scans free-D004 - 55bbd3e8a8a0"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'c2d0fab7c3c1aaa05f95ce16dbba85be93359e51874c72f562013dd972687946');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"1367200b6e2dfd55","line_state":"picked","now":["slots W001 on_item fcdc54cd1c81","lines 1367200b6e2dfd55 picked 97df37106cfc","scans pick-W001 - c6654f059260"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '931211a8fcc9a450788f35076bbfcf9a2df8ca7e1d2efc476c1b36c4ea3a62e3');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"911b2fd930d65eb3","line_state":"picked","now":["slots W002 on_item 28fc450bbd68","lines 911b2fd930d65eb3 picked 22d429407e15","scans pick-W002 - 6bdc60af4900"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '4279796dd10dc562d0095e579124dad10907844137bcc0762572407bb74b73d4');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"f7a02cc31f972416","line_state":"picked","now":["slots S002 on_item 06d27c0b0dc6","lines f7a02cc31f972416 picked eab3adec98ef","scans pick-S002 - 7b0e477249f4"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'a90b92647ee9598f5aeb5ba8aba8d0cd6991feae5a2eaef1462f578f66f10ace');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"471b8cd15e1036f0","line_state":"picked","now":["slots S003 on_item 2fb2e0b160b8","lines 471b8cd15e1036f0 picked 51ec5406472b","scans pick-S003 - c8b311b97a98"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '40079c6b795c46ada38eb1f34f901197d95f7f5b4083f451d588c0a83f4bd8d3');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"8d8de11d5930f149","line_state":"picked","now":["slots S004 on_item ffc764c2649f","lines 8d8de11d5930f149 picked 88261135847f","scans pick-S004 - feb31cafd1c4"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'cc611699cfdda748ccd5d45c4c858d861150a6e9d09cadf3928afa723ade726a');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"9959949d54c99bce","line_state":"picked","now":["slots S005 on_item a64937c845f9","lines 9959949d54c99bce picked 704185cc2fd2","scans pick-S005 - 67dac826d1c9"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'c1840c7a74833c1c7eb5234847fc20bb9b27e9bcb77c2418d174f6c5fa0bdc30');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"3541e50ab4b6cc9b","line_state":"picked","now":["slots L006 on_item 39d13ba3c1c8","lines 3541e50ab4b6cc9b picked 8d81a07634fe","scans pick-L006 - f54923224270"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '90a1695f791147faa8ee21656ff1267556b49361886d76ae16249d28d9bbebfd');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"4e7a32f8eac8603b","line_state":"picked","now":["slots L011 on_item 6a4642175dad","lines 4e7a32f8eac8603b picked fbad265d6468","scans pick-L011 - a288dcf7e748"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'e09dc6d5a9766d43c50e90d283d923b4e0b7eb461a0398d8af19e0fd434bed55');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"0a4d4d9017b5d74e","line_state":"picked","now":["slots S006 on_item cbc3d98954d9","lines 0a4d4d9017b5d74e picked dbe9652e45bd","scans pick-S006 - 861f83af37b8"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '75d20827aae9138517891dbfce52c24e671eb53daa9eed27221341cb82045492');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"880f358a65334086","line_state":"picked","now":["slots S007 on_item a5b71f9ea385","lines 880f358a65334086 picked 10174d170756","scans pick-S007 - 875a721d2679"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '9d0d6e354fd3051c63772e654bfb3df0a064af4c0d97e307fb739a098a39d883');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"764196a62c7b8682","line_state":"picked","now":["slots W007 on_item 590793bce2cb","lines 764196a62c7b8682 picked cb21325cf1e5","scans pick-W007 - a6d05d846804"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '3da5535d9a08fe6cfecad05ebf6f19c44d7ed0214d29de75a40c9f4ea662bf8d');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"bde558e5fb08cf2a","line_state":"picked","now":["slots W008 on_item ed3a0d001ac1","lines bde558e5fb08cf2a picked 2399328fa339","scans pick-W008 - 357d68c84974"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9c4d224f242f790","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '098ad72f7cf2581e79513874c4987b5f800ce86304258982244cf49f2049bd24');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:02:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"bde558e5fb08cf2a","line_state":"waiting","now":["lines bde558e5fb08cf2a waiting e526f65f3781","slots W008 on_item b5edfe4a0bab"]}', '49921517178b8c361a91f023574dff2a8f745083f663377d2be2ade8dd0feb0b');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:05:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds d9c4d224f242f790 closed addc76a3ad8f"],"round":"d9c4d224f242f790"}', '4c78e0c33aa3e077e86ce4d2b0dab399038316bd3dad58dab038d6c101cb6376');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:08:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 898b2103fdecf87e open 4dc7b52abaed","orders f50cd0e18f06d6ac - 85d71be4b20e"],"orders":["f50cd0e18f06d6ac"],"parcel":"898b2103fdecf87e","table":"main"}', '3df5709e1d54430dc3d27475e6f70b977ec0bbf597634f61b89232ce42f24a02');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"f7a02cc31f972416","line_state":"picked","now":["slots S002 on_item eec8af190ac9","scans other-S002 - f9d8956b986d"],"order_number":"B-03","parcel":"898b2103fdecf87e","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '438da43249e7d616397f0e41ce4fdf96ca4b0fd5ac70b547a15e802693c77169');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"1367200b6e2dfd55","line_state":"packed","now":["lines 1367200b6e2dfd55 packed e57c1d6524fe","slots W001 on_item 4f61458a34ab","scans pack-W001 - 96094981dd8f"],"order_number":"B-01","parcel":"898b2103fdecf87e","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '182ed5cb15c1c75139581fe207221a15e4b293e83209c9a0c7208342fb858c7b');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:17:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 911b2fd930d65eb3 released a610b81c6964","slots W002 due b603cf52681f","lines 1367200b6e2dfd55 released 670e84a34db0","stays 355274cb9dadcbdc shipped 28badb11fa35","slots W001 due 849924d24118","stays 3ba60500212b1f89 shipped 2d71d079f2ba","parcels 898b2103fdecf87e closed cc5535c74bbc","orders f50cd0e18f06d6ac - 73fe00d8c6fd","scans pack-W002 - a8027e15a9d8"],"orders":["f50cd0e18f06d6ac"],"parcel":"898b2103fdecf87e","released":["W001","W002"]}', '21b1ec0bc824065f6c1fd41bd3b0db5baed943913ea3459be1f0fa18d8054434');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"911b2fd930d65eb3","line_state":"released","order_number":"B-01","parcel":"898b2103fdecf87e","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'f22e646528b4c20bb10579843dd6ea2fbaac05c3232332016adf7350f111ce26');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"1367200b6e2dfd55","line_state":"released","now":["slots W001 tray 08268466c133","scans back-W001 - 8eb54adb4aa9"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '5892222c45b0debe04b8ae12541d0064e19c8e0c9db8378f9d4145b41f550a0b');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 311da72567deee72 - 1dafe4eaa0fa","slots W001 on_item 4bac4e5a272f","stays 92b60b7a5edec084 stored a38b12f01c02"],"stay":"92b60b7a5edec084","title":"Rear wheel","turn":2}', 'd0370474f7cab7dbfa91399bddf7dd743dd41cb8bbd598ad79aae0dfb4082360');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:27:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 360e0ba8037e"],"parcel":"898b2103fdecf87e"}', '05fd1207d7e701c22fdc252975b1cb4883b331a9c79e63d1d2464de44a1f5ecc');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:30:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 0347d743c9e5dd46 open 367fdf007c47","orders 9a64687289a9dff3 - eb593abef1ae"],"orders":["9a64687289a9dff3"],"parcel":"0347d743c9e5dd46","table":"main"}', '61b5a97d8c6ddc773dbc9fc95333f5b3870680e66a21839cbc45b07de105b2a9');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"764196a62c7b8682","line_state":"packed","now":["lines 764196a62c7b8682 packed 7cb5e4502694","slots W007 on_item 9b7685bde8a9","scans pack-W007 - 008aac4a5cbd"],"order_number":"B-23","parcel":"0347d743c9e5dd46","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '66256447368d2dac70438367e86223e94007024ce4e7a08b23b4abb56bf124ea');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:36:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 764196a62c7b8682 released bebbabc6966a","stays 3e4f17cb0080a2c4 shipped 75bb757fe2fe","slots W007 due 6608cce0958b","parcels 0347d743c9e5dd46 closed 005550a9ef15","orders 9a64687289a9dff3 - b2ce619f669d"],"orders":["9a64687289a9dff3"],"parcel":"0347d743c9e5dd46","released":["W007"]}', '993edb5ff8865679efdf36dd99fd2fdac0f2608917c5bad492306ea68a5f783b');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:39:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 764196a62c7b8682 packed 35476be02c0f","stays 3e4f17cb0080a2c4 stored 258e765c89af","slots W007 on_item ed069cd147b4","parcels 0347d743c9e5dd46 open ad91192a8dfb","orders 9a64687289a9dff3 - eb593abef1ae"],"orders":["9a64687289a9dff3"],"parcel":"0347d743c9e5dd46"}', '1c017a24dfb73474c662291d8d9757b628a4e0d26fb187862318c519c54dc7b3');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:42:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 764196a62c7b8682 released bebbabc6966a","stays 3e4f17cb0080a2c4 shipped 2b340d248c3f","slots W007 due 6608cce0958b","parcels 0347d743c9e5dd46 closed 1ba0cc251909","orders 9a64687289a9dff3 - b2ce619f669d"],"orders":["9a64687289a9dff3"],"parcel":"0347d743c9e5dd46","released":["W007"]}', '397fe41daf3b4245f65befd0ad1be7073e85f69bb4e3be3a5aa6e1d9173148a1');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:45:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels ed79c75150b5b144 open b834a76d0038","orders ba96b8305f4d488c - c423346567f5"],"orders":["ba96b8305f4d488c"],"parcel":"ed79c75150b5b144","table":"main"}', 'fe2a7b39baf34a39269da7a12712bf98bf5d5d205fb92bf4a42fcfb93fa36258');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:48:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels ed79c75150b5b144 dropped 118e51261d0c","orders ba96b8305f4d488c - 0aaba5fa03ca"],"parcel":"ed79c75150b5b144"}', '9b0b85eb7ea13978d51e03d213586650956451d73c895614e681d2a3edb101e0');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:51:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels e059bd7156ce04ee open 5a1f09b7a31f","orders e0d91762f20d4d15 - 5a8124e1e23e"],"orders":["e0d91762f20d4d15"],"parcel":"e059bd7156ce04ee","table":"main"}', 'ed925fb788eb44f7f106df5b8841420e84a08f86770e59b98f9c0e02594b00cb');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:54:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"8d8de11d5930f149","line_state":"packed","now":["lines 8d8de11d5930f149 packed 178be6751315","slots S004 on_item 2121274677cb","scans pack-S004 - 1b0b3a1192c6"],"order_number":"B-04","parcel":"e059bd7156ce04ee","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '2db0a8d35efaee0598b0d4eedffcf809b1484a3587aacad608e8a78c920835b7');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:57:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels e059bd7156ce04ee aside 83315d813d24"],"parcel":"e059bd7156ce04ee"}', 'b27be5122624fa924e376a6eb0f7258ea9f3b60f6798f9620a144f267fd5a09c');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:00:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels c99b469a925ff6b0 open ab272461d9d7","orders d9727a2153a406c8 - 6b49b2ae75fc"],"orders":["d9727a2153a406c8"],"parcel":"c99b469a925ff6b0","table":"second"}', '6c8f256680aebdba034e3130b7e120e59b984fc37292548da4ca2af06cc904a5');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:03:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"3541e50ab4b6cc9b","line_state":"packed","now":["lines 3541e50ab4b6cc9b packed b21ffe2f2d52","slots L006 on_item 22a0c2b6301b","scans pack-L006 - 987d4634f573"],"order_number":"B-09","parcel":"c99b469a925ff6b0","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'd5d57aa4da2624f611d61bd4fbdfc9976eb167bcc6f27c337f958a1d99eb37a4');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:06:00.000000+00:00', 'cancelled', 'boss', '{"lines":["3541e50ab4b6cc9b","4e7a32f8eac8603b"],"now":["lines 3541e50ab4b6cc9b packed 3c81b5805c6a","lines 4e7a32f8eac8603b cancelled 9c00d133cc69"],"number":"B-09","order":"d9727a2153a406c8"}', '8c19fe9cbe20b528d7ba5d7d9a42fe229d2a43b52f2f86f16ed9efba2bea61a6');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:09:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 781d7f4f2c625495 open a7a4822cfce2","orders 3ae6d2ac951576a2 - 46376b86a89f"],"orders":["3ae6d2ac951576a2"],"parcel":"781d7f4f2c625495","table":"main"}', '3d9d7cf5aacc620d039141b210bbb06acd1b48552d95e99d3a78444c7343fb92');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:12:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"f7a02cc31f972416","line_state":"packed","now":["lines f7a02cc31f972416 packed 86e4b2dc2b54","slots S002 on_item 08808db466cf","scans pack-S002 - fec71d93782b"],"order_number":"B-03","parcel":"781d7f4f2c625495","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '5e88d78c696136a6e805fd0f3372c1c6dc27b2ddc49a58a47c58bf3b7620016c');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:15:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"0a4d4d9017b5d74e","reference":"S006-018","stay":"d10756c693946bc0"}],"now":["lines 0a4d4d9017b5d74e picked 6ae50fa22aa8"],"number":"B-13","order":"6af3f73ae38ea0c5"}', '95e5d1f8c4d989dddf7c0ff0713633a627e12a3d2bcf851361b21c1bc6fd2f4b');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:18:00.000000+00:00', 'round opened', 'boss', '{"lines":["02baa9656c131c61","b8ffc45b2e36fa50","1e3eab53ea0bfe8e","c78a8b0570e8b50d"],"now":["rounds e74d1f8c43bd0ba9 open ce6ad891ecc8","lines c78a8b0570e8b50d waiting 11117d8f4d54","lines 02baa9656c131c61 waiting 9f3bb2105c7f","lines b8ffc45b2e36fa50 waiting 1983c5441ec9","lines 1e3eab53ea0bfe8e waiting 635856458c8e"],"round":"e74d1f8c43bd0ba9"}', 'cb6e48c5ca508f881efd7c97abebf7a024c1f9a77d431a22dc8a3bb0f70549d3');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:21:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"02baa9656c131c61","line_state":"picked","now":["slots L002 on_item 494004a45bfd","lines 02baa9656c131c61 picked 80761476955d","scans pick-L002 - f248af427986"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"e74d1f8c43bd0ba9","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'aa1f74f082d42c63ef78158aec925f4308662443cb12c5069e4ac98c87a0bb1d');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:24:00.000000+00:00', 'short', 'boss', '{"line":"1e3eab53ea0bfe8e","note":"Not in its bin","now":["lines 1e3eab53ea0bfe8e short 01f1d8842d1d","doubts f3c2417e676590f4 - d2b6712f8474"]}', '60aed3b30f4413fda1b1972a601fb4e703cb86184e02bcb0a9273fd255ca5819');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f3c2417e676590f4","doubt_kind":"missing","item":"44d64d0df762aec6","words":"Not in its bin"}', 'be41257fcb5ae54c083cf242d8959fd5bc0f24226f99249ca0fe2b13dc07dc53');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 7284a2401e2c"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"e74d1f8c43bd0ba9","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'd0f43fcae2449fd557009e88db4497c70f5ffda447e756a259c40b7b17c67cf3');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 3e39c853bd38"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"e74d1f8c43bd0ba9","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '83b0987399ba3f450576297818eb74f85c3522591a3338c62f3996a326562a15');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 1c6563bd0041"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"e74d1f8c43bd0ba9","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '6c1f19eba754a41105c8b360425e528c3701c2157da1a008dae286fcff59b57a');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'db829af0947d84ed697b54daacb3d4fd1d1eaa547dde009816544ab77917c53e');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '65c27a65941c8a3622b350ac1ea4944dce532b555de2b23ec2e0cbc9a456eeaa');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4871cd2572bb5f03","reference":"D001-019","stay":"2e5eedf8c17abdc4"},{"hold":"already_sold","line":"e9678302e60178a5","reference":"W002-016","stay":null}],"now":["orders ca3c13b198187cfc - ae810a62c473","lines 4871cd2572bb5f03 waiting d29f86e50875","lines e9678302e60178a5 unbound 0d1a5d40987e"],"number":"B-38","order":"ca3c13b198187cfc"}', 'ba541c458d50d41822e40ed07f93c278a842454dc6a81f8c025da8676d69fd4a');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"585c04a164edcfc2","reference":"W001","stay":null}],"now":["orders c6968ccaa6370505 - 33be3fab22e7","lines 585c04a164edcfc2 unbound 9a42554afec0"],"number":"B-39","order":"c6968ccaa6370505"}', '48bf8414429110dd9044ce3f8ff699fbb1082f9868ce36071bb47725dc2fcb1e');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:48:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 9c994c312aad01e1 open 75bbe72bf856"],"stocktake":"9c994c312aad01e1"}', 'a16161447f9f240930e77b08fc1ca2aad29275798188fab9b52594455d59b4d2');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:55:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - c7472cc19552","slots S001 on_item fd561f0f0012","doubts 114448ff4cd7052c - 933b03cb97c3"],"photo":null,"place":"B-1-1","stocktake":"9c994c312aad01e1","unread":0}', 'b9b04864863575ccd645bf72e2bc4594bbfd8da851abfe0107e97b1b0a7f0976');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:55:00.000000+00:00', 'doubted', 'boss', '{"doubt":"114448ff4cd7052c","doubt_kind":"not_this","item":"49979fe370c7cc85","now":["slots S003 on_item 0063378b3b90","slots S012 on_item 1a2c26c1ab7b","slots D010 on_item dd62d0f42546"],"words":"A count found another thing on its card in B-1-1."}', 'fc5b420777df5406b51d6634fce415c0aeb7bb1a16188001ee7a0b92549499a9');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:03:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 0ba9e008da57","slots S011 on_item b8c458e99057","slots S013 on_item 36edd8b68272"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"9c994c312aad01e1","unread":0}', '621f54955737d292eb3009843c1de375c49d1e80c2b453bdb909430706bc8b63');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:09:00.000000+00:00', 'finding resolved', 'boss', '{"after":167,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 0ea2e46ebb96","resolutions 9c994c312aad01e1.elsewhere-S012 - 552f73ebed98"],"reason":"","stocktake":"9c994c312aad01e1","sure":false}', 'ebe843f24524a6660e9a63734f267885c58635a5ad82ef6893e81da9bd49b276');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:12:00.000000+00:00', 'finding resolved', 'boss', '{"after":168,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 9c994c312aad01e1.unknown-Q0771 - e8019572484c"],"reason":"A neighbour''s","stocktake":"9c994c312aad01e1","sure":false}', '9e7ce45e08442e22e371871fad00735fbc76108749ded64126e04755c73a46dd');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:15:00.000000+00:00', 'finding resolved', 'boss', '{"after":169,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 5104c84d8ca2","resolutions 9c994c312aad01e1.missing-S008 - 276941eb1413"],"reason":"","stocktake":"9c994c312aad01e1","sure":false}', 'edf21c5c55bfa1ce9f48552614e57de3cd242c30e888ad4fc19fc995ab35cd11');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:18:00.000000+00:00', 'finding reopened', 'boss', '{"after":170,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 9c994c312aad01e1.missing-S008 - -"],"stocktake":"9c994c312aad01e1"}', '62cb090f62c5e6defb2a0164b01b859e794756ac68267e66b5bb281aed13ac7a');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"8de89a1fa67bc0e2","doubt_kind":"missing","item":"1484cef21c58322b","now":["doubts 8de89a1fa67bc0e2 - d951a10ee33b","stocktakes 9c994c312aad01e1 closed 7e285bc34b40"],"words":"a count of section:S did not find it"}', '0932ec793f9ed67ee2faed510f2cb25875721267d9bff1965fab61b7ec1f9077');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:31:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 7da1e464c78e","slots L003 on_item f5af42dd9089","slots L004 on_item 38f54b60c566","slots L005 on_item c163bc7f25aa","slots L007 on_item 3d50edcdf11e"],"photo":null,"place":"C-1-1","stocktake":"42179e988f472845","unread":0}', 'e3497fc5e2f5bae34ed8dd91281eb6a4c408a4783991bca2edc61a9856ed7972');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:34:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 48d19b049bb9d052 - e66b7e832a6f"]}', '4f7e37bfb84fff0511361fc26a3b979b881294ffff76a5ec37a728bc1f197f2b');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:34:00.000000+00:00', 'doubted', 'boss', '{"doubt":"48d19b049bb9d052","doubt_kind":"missing","item":"4c13430e41185589","now":["resolutions 42179e988f472845.missing-L008 - 009f90bc7bc0"],"words":"a count did not find it"}', '7b837fa62d56365bb4b500b5c341a80aa6cc1a192ed130ce1a74eea6a3dfbca5');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:34:00.000000+00:00', 'finding resolved', 'boss', '{"after":175,"finding":"missing-L008","how":"lost","reason":"","stocktake":"42179e988f472845","sure":false}', '587d7582a9a67d89899e7ffe2ca850687e42008a5943531c354ee38f6d927bd9');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:37:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 3bcdc84f180e1dd1 withdrawn 4bef24e26ea2","slots L009 due 821cc144d722","resolutions 42179e988f472845.missing-L009 - 2a5cdd150d36"],"reason":"Nowhere to be found","stay":"3bcdc84f180e1dd1"}', '8bf403aab3c943b7b2d8d70c41b2b47f9a5462504b1798bb12bacb1b171f8d85');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:37:00.000000+00:00', 'finding resolved', 'boss', '{"after":178,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"42179e988f472845","sure":false}', 'c8c839ef2da3209c63e78df58f0d0e9698c7aeebb7474e5338d9f802a454109b');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes fcf03d77cd0a5869 open a8d37160976f"],"sample":{"bins":["A-1-1"],"chosen":"blind","of":3},"stocktake":"fcf03d77cd0a5869"}', '35ce0d43ffc966af4a12a66da4ffe74e0b4a75b6ec22a94a79e5f09bb1c0b32a');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:43:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 96c33e8e05f7cfc2 open 9e8e888c83ca"],"stocktake":"96c33e8e05f7cfc2"}', '245069293c096ae3c1002c50642e6591a2982e19f6950d3e00dfe2ca06a23304');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:46:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 96c33e8e05f7cfc2 cancelled 13e7df89b0e8"],"stocktake":"96c33e8e05f7cfc2"}', '3a0b1baafbb9f3af9b9090a14ff12282d7ab8ca676ad6aaf8e78bebcf8b5bc44');
INSERT INTO public.lines VALUES (15, '59dc9e9ecdfb9a5b', '06d46b5206189b60', 1, 'D009-01B', 'Rear derailleur 9', '', '8cae9aaaf2223614', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '3dac4dc58f6a10f1', '02fc3fd2e68bfc2b', 1, 'D003-01U', 'Bell with a crown', '', 'aad35986db58698c', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '9fa408def0b98885', '3b4ad5503880a4e6', 1, 'D005-01E', 'Rear derailleur 5', '', '58bb1df8baaaea9f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, 'dc44f01530a2fcdb', '3b4ad5503880a4e6', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'd030a816e46e208a', '14994dcc1ddcbc51', 1, 'D006-016', 'Rear derailleur 6', '', 'b75799427b0c3b45', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '475aa10f3f25a4c6', '14994dcc1ddcbc51', 2, 'D007-01R', 'Rear derailleur 7', '', '605dfd2290cf21eb', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'a31cd1302afdcd7a', 'd7ce49a1540b6298', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, 'ad93cb9b838ccc25', 'f1cbf01ce608dd54', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '30c8c648f4cff7e4', '21476407a0be39f7', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, 'c53753e93a5a9476', 'fdfc327a6f452b1f', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'f85427432b867697', '1be54320d97f2ea3', 1, 'W005-01B', 'Bell with a crown', '', '34594db2327aaf98', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'bff09416b1eeab85', '88eddde2e3f0921b', 1, 'L007-014', 'Dynamo lamp 7', '', 'daed5f68e649f1e6', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '0529afb36758cc77', 'ea08356441702511', 1, 'L005-01K', 'Dynamo lamp 5', '', '12a2aca448eabf97', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'b001542134f27f82', 'b99895a19df83ef8', 1, 'W006-013', 'Front wheel 6', '', 'a95de74e580568ac', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'e3238f349ae750b5', '9d31f3915bf433fc', 1, 'L012-01S', 'Dynamo lamp 12', '', '59a084e4ed124c85', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '64e0378edaa9ba86', 'eff18867cfa40a86', 1, 'S012-01O', '', '', '1bbefce7866b4536', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '11a0da3c778aacd6', '0d2e088a57d533ba', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '1367200b6e2dfd55', 'f50cd0e18f06d6ac', 1, 'W001-01E', 'Front wheel 1', '', '355274cb9dadcbdc', 'released', '898b2103fdecf87e', 'd9c4d224f242f790', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '911b2fd930d65eb3', 'f50cd0e18f06d6ac', 2, 'W002-016', 'Front wheel 2', '', '3ba60500212b1f89', 'released', '898b2103fdecf87e', 'd9c4d224f242f790', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, '471b8cd15e1036f0', '3ae6d2ac951576a2', 2, 'S003-01W', 'Leather saddle 3', '', '1f1c209de6395e34', 'picked', NULL, 'd9c4d224f242f790', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, '764196a62c7b8682', '9a64687289a9dff3', 1, 'W007-01W', 'Front wheel 7', '', '3e4f17cb0080a2c4', 'released', '0347d743c9e5dd46', 'd9c4d224f242f790', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '8d8de11d5930f149', 'e0d91762f20d4d15', 1, 'S004-01O', 'Leather saddle 4', '', 'ed8b2f1b1a15d9ca', 'packed', 'e059bd7156ce04ee', 'd9c4d224f242f790', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '3541e50ab4b6cc9b', 'd9727a2153a406c8', 1, 'L006-01C', 'Dynamo lamp 6', '', '56137f8baf421f8b', 'packed', 'c99b469a925ff6b0', 'd9c4d224f242f790', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, '9959949d54c99bce', 'e0d91762f20d4d15', 2, 'S005-01G', 'Leather saddle 5', '', 'bd7e003001f7079b', 'picked', NULL, 'd9c4d224f242f790', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '880f358a65334086', 'ba96b8305f4d488c', 1, 'S007-01Z', 'Leather saddle 7', '', 'b539ec5cc4d938e7', 'picked', NULL, 'd9c4d224f242f790', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'bde558e5fb08cf2a', '9a64687289a9dff3', 2, 'W008-01O', 'Front wheel 8', '', 'c78e853ab2077836', 'waiting', NULL, 'd9c4d224f242f790', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, '4e7a32f8eac8603b', 'd9727a2153a406c8', 2, 'L011-010', 'Dynamo lamp 11', '', 'db97224603587c42', 'cancelled', NULL, 'd9c4d224f242f790', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'f7a02cc31f972416', '3ae6d2ac951576a2', 1, 'S002-013', 'Leather saddle 2', '', '231d3e49bb0f2c25', 'packed', '781d7f4f2c625495', 'd9c4d224f242f790', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '0a4d4d9017b5d74e', '6af3f73ae38ea0c5', 1, 'S006-018', 'Saddle with springs', '', 'd10756c693946bc0', 'picked', NULL, 'd9c4d224f242f790', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, 'c78a8b0570e8b50d', '6086773252509119', 1, 'D008-01J', 'Rear derailleur 8', '', '4b50aeb017e70b38', 'waiting', NULL, 'e74d1f8c43bd0ba9', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '4871cd2572bb5f03', 'ca3c13b198187cfc', 1, 'D001-019', 'Rear derailleur 1', '', '2e5eedf8c17abdc4', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, 'b8ffc45b2e36fa50', '75837b1d68c2818d', 1, 'L003-010', 'Dynamo lamp 3', '', '0588b858f0bd9e75', 'waiting', NULL, 'e74d1f8c43bd0ba9', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '02baa9656c131c61', '53e2a5c3b11c8c1c', 1, 'L002-017', 'Dynamo lamp 2', '', '2ea4e3cea54064c7', 'picked', NULL, 'e74d1f8c43bd0ba9', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '1e3eab53ea0bfe8e', 'fd6f2eba7c679fdf', 1, 'L004-01S', 'Dynamo lamp 4', '', '4a259aa709bfbe8a', 'short', NULL, 'e74d1f8c43bd0ba9', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'e9678302e60178a5', 'ca3c13b198187cfc', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, '585c04a164edcfc2', 'c6968ccaa6370505', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '9c994c312aad01e1', 'B-1-1', '2026-03-02T15:55:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '9c994c312aad01e1', 'B-1-2', '2026-03-02T16:03:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '42179e988f472845', 'C-1-1', '2026-03-02T16:31:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '53e2a5c3b11c8c1c', 'B-05', 'fair', '2026-03-02T11:50:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (5, '75837b1d68c2818d', 'B-06', 'fair', '2026-03-02T11:53:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (6, 'fd6f2eba7c679fdf', 'B-07', 'fair', '2026-03-02T11:56:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (7, 'ea08356441702511', 'B-08', 'fair', '2026-03-02T11:59:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (9, '6af3f73ae38ea0c5', 'B-13', 'fair', '2026-03-02T12:05:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (10, '88eddde2e3f0921b', 'B-17', 'fair', '2026-03-02T12:08:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (11, '06d46b5206189b60', 'B-18', 'fair', '2026-03-02T12:11:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (12, 'b99895a19df83ef8', 'B-21', 'fair', '2026-03-02T12:14:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (15, '6086773252509119', 'B-26', 'fair', '2026-03-02T12:23:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (16, '02fc3fd2e68bfc2b', 'B-30', 'fair', '2026-03-02T12:26:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (17, '3b4ad5503880a4e6', 'B-31', 'fair', '2026-03-02T12:29:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (18, '14994dcc1ddcbc51', 'B-32', 'fair', '2026-03-02T12:32:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (19, 'd7ce49a1540b6298', 'B-33', 'fair', '2026-03-02T12:38:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (20, 'f1cbf01ce608dd54', 'B-34', 'fair', '2026-03-02T12:41:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (21, '21476407a0be39f7', 'B-35', 'fair', '2026-03-02T12:44:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (22, 'fdfc327a6f452b1f', 'B-36', 'fair', '2026-03-02T12:47:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (23, '1be54320d97f2ea3', 'B-37', 'fair', '2026-03-02T12:50:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (24, '9d31f3915bf433fc', 'Sale L012-01S', '', '2026-03-02T13:11:00.000000+00:00', 24, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true);
INSERT INTO public.orders VALUES (25, 'eff18867cfa40a86', 'F-1', '', '2026-03-02T13:17:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (26, '0d2e088a57d533ba', 'F-2', '', '2026-03-02T13:17:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (1, 'f50cd0e18f06d6ac', 'B-01', 'fair', '2026-03-02T11:41:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (14, '9a64687289a9dff3', 'B-23', 'fair', '2026-03-02T12:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (13, 'ba96b8305f4d488c', 'B-22', 'fair', '2026-03-02T12:17:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (3, 'e0d91762f20d4d15', 'B-04', 'fair', '2026-03-02T11:47:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'e059bd7156ce04ee', '', '', false);
INSERT INTO public.orders VALUES (8, 'd9727a2153a406c8', 'B-09', 'fair', '2026-03-02T12:02:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'c99b469a925ff6b0', '', '', false);
INSERT INTO public.orders VALUES (2, '3ae6d2ac951576a2', 'B-03', 'fair', '2026-03-02T11:44:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '781d7f4f2c625495', '', '', false);
INSERT INTO public.orders VALUES (27, 'ca3c13b198187cfc', 'B-38', 'fair', '2026-03-02T15:42:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (28, 'c6968ccaa6370505', 'B-39', '', '2026-03-02T15:45:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false);
INSERT INTO public.parcels VALUES (1, '898b2103fdecf87e', 'main', 'f50cd0e18f06d6ac', '2026-03-02T14:08:00.000000+00:00', 'closed', '2026-03-02T14:17:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '0347d743c9e5dd46', 'main', '9a64687289a9dff3', '2026-03-02T14:39:00.000000+00:00', 'closed', '2026-03-02T14:42:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, 'ed79c75150b5b144', 'main', 'ba96b8305f4d488c', '2026-03-02T14:45:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'e059bd7156ce04ee', 'main', 'e0d91762f20d4d15', '2026-03-02T14:51:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, 'c99b469a925ff6b0', 'second', 'd9727a2153a406c8', '2026-03-02T15:00:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, '781d7f4f2c625495', 'main', '3ae6d2ac951576a2', '2026-03-02T15:09:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '9c994c312aad01e1.elsewhere-S012', '9c994c312aad01e1', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:09:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:55:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1bbefce7866b4536", "item": "f326fefaf6fe3a0e", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "64e0378edaa9ba86", "order": "eff18867cfa40a86", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1bbefce7866b4536", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:09:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1bbefce7866b4536", "item": "f326fefaf6fe3a0e", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "64e0378edaa9ba86", "order": "eff18867cfa40a86", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1bbefce7866b4536", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '9c994c312aad01e1.unknown-Q0771', '9c994c312aad01e1', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:12:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '42179e988f472845.missing-L008', '42179e988f472845', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:34:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7429720814f64b17", "item": "4c13430e41185589", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7429720814f64b17", "item": "4c13430e41185589", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "doubts": {"added": ["48d19b049bb9d052"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '42179e988f472845.missing-L009', '42179e988f472845', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:37:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3bcdc84f180e1dd1", "item": "0413232de4e60fac", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3bcdc84f180e1dd1", "item": "0413232de4e60fac", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:37:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'd9c4d224f242f790', '2026-03-02T13:20:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'e74d1f8c43bd0ba9', '2026-03-02T15:18:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '6058ea34031cf5e0e5cd87fe9b6d25246b4b6484301c9ca75413ee9fbdf7c5ea', 'bin', 'd9c4d224f242f790', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '9773d60f6959e7d053b5104b655fb745ad4aa8c171c711f72e47a3807fc04e2f', 'bin', 'd9c4d224f242f790', 'W001', false, true, true, '1367200b6e2dfd55', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "f50cd0e18f06d6ac", "order_number": "B-01", "line": "1367200b6e2dfd55", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["355274cb9dadcbdc", "stored"], ["1367200b6e2dfd55", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '6f1caff1277fb3b172c1e3c99b8fe9bd730039485e8e642136984e03a7cf4c5b', 'bin', 'd9c4d224f242f790', 'W002', false, true, true, '911b2fd930d65eb3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "f50cd0e18f06d6ac", "order_number": "B-01", "line": "911b2fd930d65eb3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["3ba60500212b1f89", "stored"], ["911b2fd930d65eb3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '3d768dec5c4d50e0bdecd704f8d375762a2f9bc6b9dd5bdabaf62ff2125c5f69', 'bin', 'd9c4d224f242f790', 'S002', false, true, true, 'f7a02cc31f972416', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3ae6d2ac951576a2", "order_number": "B-03", "line": "f7a02cc31f972416", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["231d3e49bb0f2c25", "stored"], ["f7a02cc31f972416", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '6701b036f5e212498224780307d0d1991ba15e8a9afd49b90530a82cee262988', 'bin', 'd9c4d224f242f790', 'S003', false, true, true, '471b8cd15e1036f0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "3ae6d2ac951576a2", "order_number": "B-03", "line": "471b8cd15e1036f0", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["1f1c209de6395e34", "stored"], ["471b8cd15e1036f0", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '5038f54c392fa0b2b08281773b22b4746f14dd274ac8369406d91e1667dc369c', 'bin', 'd9c4d224f242f790', 'S004', false, true, true, '8d8de11d5930f149', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "e0d91762f20d4d15", "order_number": "B-04", "line": "8d8de11d5930f149", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["ed8b2f1b1a15d9ca", "stored"], ["8d8de11d5930f149", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'f481f2578b4155882331d28211a485bf0ede102f0f5a5641bdbdf89a29763414', 'bin', 'd9c4d224f242f790', 'S005', false, true, true, '9959949d54c99bce', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "e0d91762f20d4d15", "order_number": "B-04", "line": "9959949d54c99bce", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["bd7e003001f7079b", "stored"], ["9959949d54c99bce", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '81b181f010564b5d82fbc4e831952c3dcf6aa06e67cfbfef6eddde86e9bf296c', 'bin', 'd9c4d224f242f790', 'L006', false, true, true, '3541e50ab4b6cc9b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d9727a2153a406c8", "order_number": "B-09", "line": "3541e50ab4b6cc9b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["56137f8baf421f8b", "stored"], ["3541e50ab4b6cc9b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '3cd82dfe9449eb3c1aafe30e89af8bc8185ce104bb01dbcc55f0f79a1b15e6bd', 'bin', 'd9c4d224f242f790', 'L011', false, true, true, '4e7a32f8eac8603b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "d9727a2153a406c8", "order_number": "B-09", "line": "4e7a32f8eac8603b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["db97224603587c42", "stored"], ["4e7a32f8eac8603b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'c97749161081ec03642c8820f5af4250aefd05be730d8c6e7a726a4608d573de', 'bin', 'd9c4d224f242f790', 'S006', false, true, true, '0a4d4d9017b5d74e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "6af3f73ae38ea0c5", "order_number": "B-13", "line": "0a4d4d9017b5d74e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:50:00.000000+00:00', '["on_item", ["d10756c693946bc0", "stored"], ["0a4d4d9017b5d74e", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '9c84864ffbbe840bdd8661f1fe630f06ae839f95940fc2aa8e08922e82c5595f', 'bin', 'd9c4d224f242f790', 'S007', false, true, true, '880f358a65334086', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "ba96b8305f4d488c", "order_number": "B-22", "line": "880f358a65334086", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:53:00.000000+00:00', '["on_item", ["b539ec5cc4d938e7", "stored"], ["880f358a65334086", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'a56cab1a3e1fd0e0f5db8615f4d4f2a3612ef66cfcedee5a55af888eaf72a44f', 'bin', 'd9c4d224f242f790', 'W007', false, true, true, '764196a62c7b8682', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "9a64687289a9dff3", "order_number": "B-23", "line": "764196a62c7b8682", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:56:00.000000+00:00', '["on_item", ["3e4f17cb0080a2c4", "stored"], ["764196a62c7b8682", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '9715dac9ef05d161d1d538ccae55f627e616827afdd317281b6cedd5d3e43629', 'bin', 'd9c4d224f242f790', 'W008', false, true, true, 'bde558e5fb08cf2a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "9a64687289a9dff3", "order_number": "B-23", "line": "bde558e5fb08cf2a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:59:00.000000+00:00', '["on_item", ["c78e853ab2077836", "stored"], ["bde558e5fb08cf2a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'f7a02cc31f972416', '898b2103fdecf87e', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3ae6d2ac951576a2", "order_number": "B-03", "line": "f7a02cc31f972416", "line_state": "picked", "order_state": "picking", "parcel": "898b2103fdecf87e", "parcel_state": "open", "released": []}', '', '2026-03-02T14:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '1367200b6e2dfd55', '898b2103fdecf87e', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "f50cd0e18f06d6ac", "order_number": "B-01", "line": "1367200b6e2dfd55", "line_state": "packed", "order_state": "picking", "parcel": "898b2103fdecf87e", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:14:00.000000+00:00', '["on_item", ["355274cb9dadcbdc", "stored"], ["1367200b6e2dfd55", "packed", "898b2103fdecf87e", []], ["898b2103fdecf87e", "2026-03-02T14:08:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '911b2fd930d65eb3', '898b2103fdecf87e', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "f50cd0e18f06d6ac", "order_number": "B-01", "line": "911b2fd930d65eb3", "line_state": "released", "order_state": "released", "parcel": "898b2103fdecf87e", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:17:00.000000+00:00', '["due", ["3ba60500212b1f89", "shipped"], ["911b2fd930d65eb3", "released", "898b2103fdecf87e", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '1367200b6e2dfd55', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "f50cd0e18f06d6ac", "order_number": "B-01", "line": "1367200b6e2dfd55", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:20:00.000000+00:00', '["tray", ["355274cb9dadcbdc", "shipped"], ["1367200b6e2dfd55", "released", "898b2103fdecf87e", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '764196a62c7b8682', '0347d743c9e5dd46', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "9a64687289a9dff3", "order_number": "B-23", "line": "764196a62c7b8682", "line_state": "packed", "order_state": "waiting", "parcel": "0347d743c9e5dd46", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:33:00.000000+00:00', '["on_item", ["3e4f17cb0080a2c4", "stored"], ["764196a62c7b8682", "packed", "0347d743c9e5dd46", []], ["0347d743c9e5dd46", "2026-03-02T14:30:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '8d8de11d5930f149', 'e059bd7156ce04ee', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "e0d91762f20d4d15", "order_number": "B-04", "line": "8d8de11d5930f149", "line_state": "packed", "order_state": "picking", "parcel": "e059bd7156ce04ee", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:54:00.000000+00:00', '["on_item", ["ed8b2f1b1a15d9ca", "stored"], ["8d8de11d5930f149", "packed", "e059bd7156ce04ee", []], ["e059bd7156ce04ee", "2026-03-02T14:51:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '3541e50ab4b6cc9b', 'c99b469a925ff6b0', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d9727a2153a406c8", "order_number": "B-09", "line": "3541e50ab4b6cc9b", "line_state": "packed", "order_state": "picking", "parcel": "c99b469a925ff6b0", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:03:00.000000+00:00', '["on_item", ["56137f8baf421f8b", "stored"], ["3541e50ab4b6cc9b", "packed", "c99b469a925ff6b0", []], ["c99b469a925ff6b0", "2026-03-02T15:00:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'f7a02cc31f972416', '781d7f4f2c625495', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3ae6d2ac951576a2", "order_number": "B-03", "line": "f7a02cc31f972416", "line_state": "packed", "order_state": "picking", "parcel": "781d7f4f2c625495", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:12:00.000000+00:00', '["on_item", ["231d3e49bb0f2c25", "stored"], ["f7a02cc31f972416", "packed", "781d7f4f2c625495", []], ["781d7f4f2c625495", "2026-03-02T15:09:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '564f3e8b6cef6b1652cf46b0591b509b3b6188dac1d0145c9d7e3267d13dc8e4', 'bin', 'e74d1f8c43bd0ba9', 'L002', false, true, true, '02baa9656c131c61', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "53e2a5c3b11c8c1c", "order_number": "B-05", "line": "02baa9656c131c61", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:21:00.000000+00:00', '["on_item", ["2ea4e3cea54064c7", "stored"], ["02baa9656c131c61", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '3997fe048ca6f4d5a3668fd7ddfa7fea3bf5c26a18ba213a916ae8c3d6fe803a', 'bin', 'e74d1f8c43bd0ba9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:27:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'dcae22b1509786fa335a64cadaa6e98c0287f4327191a1173aa560850d29e953', 'bin', 'e74d1f8c43bd0ba9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:30:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '588d05c6347999899cb6c3f3ea7140798010fa143803faf7b58adf3aaff6da1b', 'bin', 'e74d1f8c43bd0ba9', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:33:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (58, 'L013', 'L', 13, 'C-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (59, 'L014', 'L', 14, 'C-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (8, 'D008', 'D', 8, 'A-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (20, 'D020', 'D', 20, 'A-1-2', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:03:00.000000+00:00', 'c99b469a925ff6b0', 'bin', 'C-1-1', 'd9c4d224f242f790', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', 'd9c4d224f242f790', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:47:00.000000+00:00', NULL, 'bin', 'C-1-2', 'd9c4d224f242f790', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:53:00.000000+00:00', NULL, 'bin', 'B-1-1', 'd9c4d224f242f790', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:12:00.000000+00:00', '781d7f4f2c625495', 'bin', 'B-1-1', 'd9c4d224f242f790', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:50:00.000000+00:00', NULL, 'bin', 'B-1-1', 'd9c4d224f242f790', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:59:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:17:00.000000+00:00', '898b2103fdecf87e', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:33:00.000000+00:00', '0347d743c9e5dd46', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:54:00.000000+00:00', 'e059bd7156ce04ee', 'bin', 'B-1-1', 'd9c4d224f242f790', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:21:00.000000+00:00', NULL, 'bin', 'C-1-1', 'e74d1f8c43bd0ba9', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, 'bin', 'B-1-1', 'd9c4d224f242f790', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:55:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:09:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '2e5eedf8c17abdc4', 'be369883ceccd6bb', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (2, '338a4c2e4e5c21ff', '5dd7deb0c13c8130', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (3, 'aad35986db58698c', '8d64bf90ef4787f3', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (4, 'c16b1b882a77e08b', '44a4321081037b62', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (5, '58bb1df8baaaea9f', '317076aec5973867', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (6, 'b75799427b0c3b45', '0ca8f98714a96aad', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (7, '605dfd2290cf21eb', '64dbd3379f1af496', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (9, '8cae9aaaf2223614', '27cf14e028dbd6d4', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (10, '57d93f9b01acad4a', 'c0811b652110a962', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (11, '1c3eae0a0a570a3e', 'ce53a2ebf64a1bf1', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (12, 'e616511ffa7421ed', '41d86d6046dde2ce', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (13, '727279285486af02', '49979fe370c7cc85', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (14, '231d3e49bb0f2c25', 'e23ee42678ef0384', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (15, '1f1c209de6395e34', '50855ff49d571c6d', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (16, 'ed8b2f1b1a15d9ca', '2d4eac4986d6e02c', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (17, 'bd7e003001f7079b', '4a4e1d9a8369b1b5', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (18, 'd10756c693946bc0', 'd98834dfe6d6134e', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (19, 'b539ec5cc4d938e7', '33ac3e5bbd5f2c35', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (20, 'dfbc7780e8056ef3', '1484cef21c58322b', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (23, 'f5c3b2430b50de89', 'f32d4c6f5990600d', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (24, '1bbefce7866b4536', 'f326fefaf6fe3a0e', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (25, '8006dfe31e7d9ecc', 'f611ed358b0bb241', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (26, '2ea4e3cea54064c7', '240b7c051dca3fcf', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (27, '0588b858f0bd9e75', '4bb0a689f77c49a3', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (28, '4a259aa709bfbe8a', '44d64d0df762aec6', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (29, '12a2aca448eabf97', '6f2b707696e5cc93', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (30, '56137f8baf421f8b', '3f2f01d8e9734d64', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (31, 'daed5f68e649f1e6', '362df6c15a7040f9', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (32, '7429720814f64b17', '4c13430e41185589', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (34, '5055b235844ae452', '830301ddc7c43947', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (35, 'db97224603587c42', '69ab0c043fbaa474', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (36, '59a084e4ed124c85', 'a979d54044a51e6c', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (39, '39da85a7de6208b8', '250c71d8825fa4ba', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (41, '34594db2327aaf98', '2e51dfea31b1f2ca', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (42, 'a95de74e580568ac', '02f4c003801a4745', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (44, 'c78e853ab2077836', 'b48fb1831781e4e4', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (45, '1a6d990445c78378', '720cb8e56689f613', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (46, 'f5c073d18996ff41', 'fc4941816e34b2da', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (47, 'e34c4fbaf1c2b7c3', '28aed52fadf397a3', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (48, '9ef4196b76d58d95', '83efeb8de27a6b7c', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (49, 'b60a09b8d5b6e5f8', 'b0be6d117740b663', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (22, 'bb800459e0606b86', 'c9f88606820a7164', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false);
INSERT INTO public.stays VALUES (40, '8d8747dd2b78ebcc', '96c8d03bf40f2ae1', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false);
INSERT INTO public.stays VALUES (21, '98dcc3c423361fd4', '3aebb68dc69ffad1', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (50, '224e38e871369cf2', '3aebb68dc69ffad1', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (51, '1c24668a050d1087', 'eb8a5caa827d3eae', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false);
INSERT INTO public.stays VALUES (52, '808bdc5c6b27eeb7', 'da5160d72425635b', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true);
INSERT INTO public.stays VALUES (8, '0056fec8689ece58', '903857f90babfc4a', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:08:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (53, '4b50aeb017e70b38', '903857f90babfc4a', 'D020', 1, '2026-03-02T13:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (37, '355274cb9dadcbdc', '2226ccebcdbb0599', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (38, '3ba60500212b1f89', '502e459fbd92f535', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:17:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (54, '92b60b7a5edec084', '311da72567deee72', 'W001', 2, '2026-03-02T14:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (43, '3e4f17cb0080a2c4', '8204ed9158a51674', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:42:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (33, '3bcdc84f180e1dd1', '0413232de4e60fac', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:37:00.000000+00:00', 'Nowhere to be found', NULL, '', false);
INSERT INTO public.stocktakes VALUES (1, '9c994c312aad01e1', 'section:S', 'Spring', '2026-03-02T15:48:00.000000+00:00', 163, 'closed', '2026-03-02T16:21:00.000000+00:00', '{"stocktake": "9c994c312aad01e1", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:48:00+00:00", "closed": "2026-03-02T16:21:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:09:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:12:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '42179e988f472845', 'section:L', 'Spring', '2026-03-02T16:24:00.000000+00:00', 173, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'fcf03d77cd0a5869', 'section:D', '', '2026-03-02T16:40:00.000000+00:00', 180, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-1"]}');
INSERT INTO public.stocktakes VALUES (4, '96c33e8e05f7cfc2', 'tray', 'Too late today', '2026-03-02T16:43:00.000000+00:00', 181, 'cancelled', '2026-03-02T16:46:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'd9c4d224f242f790', 1, 'f7a02cc31f972416', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'd9c4d224f242f790', 2, '471b8cd15e1036f0', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'd9c4d224f242f790', 3, '8d8de11d5930f149', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'd9c4d224f242f790', 4, '9959949d54c99bce', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'd9c4d224f242f790', 5, '0a4d4d9017b5d74e', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'd9c4d224f242f790', 6, '880f358a65334086', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'd9c4d224f242f790', 7, '1367200b6e2dfd55', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'd9c4d224f242f790', 8, '911b2fd930d65eb3', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'd9c4d224f242f790', 9, '764196a62c7b8682', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'd9c4d224f242f790', 10, 'bde558e5fb08cf2a', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'd9c4d224f242f790', 11, '3541e50ab4b6cc9b', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'd9c4d224f242f790', 12, '4e7a32f8eac8603b', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'e74d1f8c43bd0ba9', 1, 'c78a8b0570e8b50d', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'e74d1f8c43bd0ba9', 2, '02baa9656c131c61', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'e74d1f8c43bd0ba9', 3, 'b8ffc45b2e36fa50', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'e74d1f8c43bd0ba9', 4, '1e3eab53ea0bfe8e', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.learned_n_seq', 1, false);
SELECT pg_catalog.setval('public.lines_n_seq', 36, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 28, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 3, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.resolutions_n_seq', 5, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 25, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 54, true);
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
CREATE INDEX ix_items_away ON public.items USING btree (away_since) WHERE (away_since IS NOT NULL);
CREATE INDEX ix_items_kept ON public.items USING btree (kept_until) WHERE (kept_until IS NOT NULL);
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
CREATE INDEX ix_stays_load ON public.stays USING btree (load) WHERE (load IS NOT NULL);
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
