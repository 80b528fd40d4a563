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
    sent_number text DEFAULT ''::text NOT NULL
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
INSERT INTO public.access VALUES (1, '16f0d5092e8c2aa5b631918a943de03fa9a21075dfa8858edd340b5c0b270fad', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$ayHJ2jKIsbe1hm6rAHmTbA$AWPw5TNmeUpytiyAp7iL5Eq/UGdZvxR6IGzXT58AfWg', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (3, '9c066251b473c080fb9b9dfd68b86360f7de3f4fd6e6ea4715cb5d7c28ccb1c6', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00');
INSERT INTO public.access VALUES (4, '5adf2bbb6cb232df6894613d8eaeb7c531b49ec0565173c59fc963b3926b7c4f', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (5, '419ecfd3a44e2bb3e091c8c799060eb0eb6fabf0dcd0bb277061ed50f2fa8ed1', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL);
INSERT INTO public.access VALUES (7, '6a11eb3095db7074a622d7c1f912d8132d7db7c66431f575af737dae43b36f43', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00');
INSERT INTO public.alembic_version VALUES ('0008');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/5224ff8fae0fc6a0', '{"id": "5224ff8fae0fc6a0", "item": "c13653632693cf93", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, 'b4f1d798afbe9e35', '214a404707b05cfc', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:48:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'f2b3c5b36237c808', 'cc0608386b42d821', 'missing', 'Not in its bin', '2026-03-02T15:13:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '93fe170f164cb493', '6f486c7f7b1c7a75', 'not_this', 'Another thing hangs on its card in B-1-1, a count says.', '2026-03-02T15:46:00.000000+00:00', 'owner', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '2f3a052a4fd4c384', '286d2ca092ebeda6', 'missing', 'a count of section:S did not find it', '2026-03-02T16:12:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '6805445f427f3f8c', '65e2b304a731217e', 'missing', 'a count did not find it', '2026-03-02T16:25:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 176, 'a4c6fbe670ea3031749205640cab41e9e57788b9d8ed21768b85427dcc83b37c', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false}');
INSERT INTO public.items VALUES (3, '77ffcff5b49a70fa', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '5bbc7ff62086da51', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '873eae3e64068107', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '335c8a7a0b1a07bc', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, 'cf607bc7a2336a89', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, 'b4c3253f51e5d9fa', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, 'e8917823414d9e5a', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, 'd75fc23e822bbefe', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, 'ff8bd418d028ec52', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '87bf89f7ae82ce02', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, '53682eda21d4248b', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '12545991060b3e6e', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'd1976e7fbd9e4f8f', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, '86603bd5d47daac7', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, 'c4021f415cc2bd49', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, 'dfead3492d5ff850', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, '286d2ca092ebeda6', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '1da5381775990a71', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, 'b4cdc8143fb05fbb', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, 'b0b2db30d920383d', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, '942dc13a88350b28', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '92dddc7522344e06', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, 'c737111e2952e29c', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, 'c10d68ccaf53bd1d', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, 'cc0608386b42d821', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, '32ee39e5ab8390be', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '62a1c38be3659b50', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '214a404707b05cfc', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, '65e2b304a731217e', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, '2a87c96d277316df', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '8b0960e9a594e18e', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, 'a4dd81235c4346ec', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '9c93b1aa90643ad9', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, 'fccfcac402bc91a9', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, '6f216f080ecfb304', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, 'dc1d1cd34f874f92', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, 'f7b139ad41b57100', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '35f96c759ca0e7f5', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, 'b0c8d19888f386fc', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, 'd662ccc8cf2a5a08', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '35f69d80ac9fb952', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '06bf019ee714c72e', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'dae62388ec7f6bef', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, 'd97c305aaecd94ef', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '3190cbef79b302d4', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, 'c13653632693cf93', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'a0129cdd36416561', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'fd655450dd535894', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '6f486c7f7b1c7a75', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '3fdfb1b36ff37330', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '2ee1a8db51ac27ee', '2557');
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
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","stay":"80868e11eb4e1a89","title":"Rear derailleur 1","turn":1}', 'ee7186b1c465d1f37235b4f963aab289682b89daf0d69bd52e25bd589fd48c15');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","stay":"3f7d9cf99b4315b8","title":"Rear derailleur 2","turn":1}', '864a4a3c5f2346a6cedf315510f7fdf8c110e132a6828c19396379c61a7eb0a6');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","stay":"b8c05cbe0da3d033","title":"Rear derailleur 3","turn":1}', 'a59c8345c1fb30edb52d4c8842f8cc585d55dc37e523fd1273fd4f38d310a91b');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","stay":"9b07080660fb018d","title":"Rear derailleur 4","turn":1}', 'cb5061c4fb2e03e62f9c3b0ee1aaa8a339b4b6ee7b9234960b02f5e10f713e67');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","stay":"ae2c24f5e1c31c03","title":"Rear derailleur 5","turn":1}', 'f7198f8273413255aeea4efffa66b0c4f16209e93dccf34e282c5a64750ae172');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","stay":"535657e6abea094f","title":"Rear derailleur 6","turn":1}', '5684b2fee23b76fe0e06898becd3a99b6bcaa28256364fd68a980a333c578824');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","stay":"13d11ffaad6552b6","title":"Rear derailleur 7","turn":1}', '7208dd6924156dc02d5e1ea8406010c59e659d8745197bf04dfe11e56108cde4');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","stay":"af1f23a3d3b04492","title":"Rear derailleur 8","turn":1}', 'e61ce00ce15ca31927fe7db3370abd756d3ab8d76dd3da761c6b7f3dd74745c9');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","stay":"17455e91ac2e4827","title":"Rear derailleur 9","turn":1}', '3034510c91c98302cdc95101dfb79e1720bdeb345f78d655cc4e7149f818ae12');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","stay":"101022fe10eb8360","title":"Rear derailleur 10","turn":1}', 'bbda6717f26c14dec988294dc1c45c15c8641a2f3df27af3046fb7c9a25c762f');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","stay":"e88ad0a966d322cf","title":"Rear derailleur 11","turn":1}', '5ae64e7706a30986e1a11f7f6b0dcd51f0aa7910ae0f01ac5a57ef71d8534516');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","stay":"178c6d99688cd00a","title":"Rear derailleur 12","turn":1}', '8d1ee334d952a7bb6d1afceb8bf3604849bd8324eb1f71f48c7d5ee1ce3cdfac');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","stay":"297e99303b13d424","title":"Leather saddle 1","turn":1}', 'a8fad9acf1f4b3d150abf37a668111521af757755ff035be93b39f322cf076fa');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","stay":"df8e907449554f52","title":"Leather saddle 2","turn":1}', 'b7b06c6ab897c6e1fe2001b7011df3e0e16a120083a53cf1755b1c1d7be96f6a');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","stay":"b2ebcf29e7d158a2","title":"Leather saddle 3","turn":1}', 'ae48eaec057003a1e88c4990a1d19216e0a404a9b09dd2538642009bf537b465');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","stay":"209c4c48aa3cf128","title":"Leather saddle 4","turn":1}', '77b3c7aff811c9033acf1b640cd0b7d49d9a677c1199a03c0cc054b8052832cc');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","stay":"a8debc706a63a879","title":"Leather saddle 5","turn":1}', '782db472a4784f5c6424078b6bfb329c1c05d138bed00dc2fb4d29efbd503d64');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","stay":"96ecfefa6315b635","title":"Leather saddle 6","turn":1}', 'd7d0065c9804615fe350a03aea6a18d94d601f37ca395312730f705ecaa7f178');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","stay":"901c4f6a7799e19d","title":"Leather saddle 7","turn":1}', '2d04f241c356b242f6bde9f73ce562e0b61233941e3f3a1418f5636cfb01a673');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","stay":"7d40d652daf6bee1","title":"Leather saddle 8","turn":1}', '2ff2fed6ad99ffa7265ba196497c4d0f3a44fbb9312e606364e97b301d1a3ff4');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","stay":"6240fd72d9f6df19","title":"Leather saddle 9","turn":1}', '59a404696e5c910ce4e026849c36272e2ae8687f69a3b8ffbcfa3c6010950d47');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","stay":"2215fc422adfd71f","title":"Leather saddle 10","turn":1}', '50a77f2f2bb9b3f99aac654c214f5de7136a419c3a0eca7b745d04b4c2ddec55');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","stay":"2c4b46e0549b4bf3","title":"Leather saddle 11","turn":1}', '4a065211d02a907857ef3ca956bc57680aa68e9f8c6207bc20a58ac5c590d300');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","stay":"57e6d4f3ca6c30fe","title":"Leather saddle 12","turn":1}', '553d20f8373ed9e6b5b5ede3bbb9784abcf39c3bcf4cb854f0e9044666651bbf');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","stay":"45f61f300b36a785","title":"Dynamo lamp 1","turn":1}', '46477003aec132c3e535cfc1b27ecc0b9abdd7240a20c582e20d1d0835278763');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","stay":"ebd434c0f438160d","title":"Dynamo lamp 2","turn":1}', '49ab6eee46542f997d4319b0e25c555bb48f68cd6410665e52c67bbbf3adb63b');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","stay":"9bd2916143d1897c","title":"Dynamo lamp 3","turn":1}', '2f78db6f10b21019a8a077430ee958491892e754ba142c709301f4352fa244d1');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","stay":"e327b7c811112da1","title":"Dynamo lamp 4","turn":1}', '808e36f0d941e89001e44ba8337c501ee889083acb1aad27c4825ab8ec2ae788');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","stay":"9818182f628916a1","title":"Dynamo lamp 5","turn":1}', '2fa94dd3cfdbfd2f0d4d893669da4bfe83d0c923ea102836723e855d02fcf964');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","stay":"46a4668078ac6811","title":"Dynamo lamp 6","turn":1}', 'fb29ec8f903801cd8e4405cdebc137e9548d16fb6efc2a48c3f780cd2586f66a');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","stay":"464fed40f353063a","title":"Dynamo lamp 7","turn":1}', '6843f26f3e3cfea8893bc61295f5ec892e170c056ab2e34b71508761ac8806eb');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","stay":"3f1be91b105799ec","title":"Dynamo lamp 8","turn":1}', '20680dd5406213759a3cc4fc1adb0c81e404c8f907ed0bf7d1dc1691d31a3d4d');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","stay":"a1c68f800bc02094","title":"Dynamo lamp 9","turn":1}', 'c636830fb958a6fe1266f65e887762624282e2b2a9f8759c05f812dfce5e99f3');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","stay":"d2bd974e4fbc9cd0","title":"Dynamo lamp 10","turn":1}', '3c6d9d580797e4271fcae331aab2bd8f2eede9b763a6087f855d705bff6817ae');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","stay":"96df76821ca85279","title":"Dynamo lamp 11","turn":1}', '95d53cddf5fbce74a95678cc3007e5cfa706c4ebbea60216d10292e30f9f0b3c');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","stay":"9b81f26242e9aa52","title":"Dynamo lamp 12","turn":1}', 'ef50550f3c3140b1355f863be05c232a87911e13d1fe40c635863a14edca6351');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","stay":"cf062e0864cd0717","title":"Front wheel 1","turn":1}', '269b897e0a8cfe8984471420260090fdbb5b75909fabac290dbc2dfa3c207dde');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","stay":"c45afadeb2ae0b34","title":"Front wheel 2","turn":1}', '032c33ff2bc0e4e14918d714b9f6f051fd91eed21a3295d608bd69c4aa9df80c');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","stay":"6d01616761e07f8b","title":"Front wheel 3","turn":1}', '3576279a9c02b60c17db70e33c831d829fcf4c72d04d4be89107dd887f27aa04');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","stay":"95ca3b5597e537a8","title":"Front wheel 4","turn":1}', '9cdaac7f6bbbfd1724666e699faaf4d6b9e3b0b5194c1aef2f5ecb0400c23a00');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","stay":"9817df5d4318ee91","title":"Front wheel 5","turn":1}', '0d8025348c3143ba0bc196f228eb9342e5d9495abe6b69bb866ae570c16bc885');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","stay":"22488913cab5cf38","title":"Front wheel 6","turn":1}', '51b16a49eca1beb18f9b10b06d4941c63989bc3a01abe49f083beaf048251c25');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","stay":"d187de3857cef9d9","title":"Front wheel 7","turn":1}', '16b6c4d2eb3fcb60dd30d024bd4c38ca5396161e28bb23915659ca007f12c48e');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","stay":"06d5064142ed9300","title":"Front wheel 8","turn":1}', 'aff8035c34876604688578703474f3569da5f8c292c0fa7a56b500c36cc4a03c');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","stay":"d57b0799d2cd352c","title":"Front wheel 9","turn":1}', '4cd6f2f84691da8ac3492f273c2627e2c5840a2646c5f3ddb4137cbee69eb553');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","stay":"9b604011748db936","title":"Front wheel 10","turn":1}', '718e5ed7441dd3100da4be85967a16779c903813b1428f72e3ef9d4829336ec0');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","stay":"e50abbd4efc832db","title":"Front wheel 11","turn":1}', '2c9760120cb9c50a327b3b8f5de70d3535c4db00d0649c872dbd0075bb441048');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","stay":"c2466323dfcb0177","title":"Front wheel 12","turn":1}', 'd8d717c000597597b706a7ce17d2b6685f9fa9e91ddfb4b32063a43927a70978');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","stay":"5224ff8fae0fc6a0","title":"Brass bell","turn":1}', '7ca0eaa189ebb7102558c5a7ef10e6b8049c66b5ca59f1be2c200ca72ef3592d');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","stay":"3f7d9cf99b4315b8"}', '00e2f97c7c23e88acb8582b157fde2c2dcfd7718c4d7d6d16443545247313f63');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","reason":"Cracked on inspection","stay":"2215fc422adfd71f"}', 'dc2df697b59af0a04fe345c53a05c0c45e36df578b57fd0181f4f1f274db2607');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","reason":"Bent beyond use","stay":"95ca3b5597e537a8"}', '19047b1b1016482a839e31ba944178ce6bcde9e5064f4fad8404702a30878156');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"1a92319b2d29e7cf","stay":"6240fd72d9f6df19","to":"S013"}', '953fde5dd27134758bfa1ee8b6ad42187c889f6894ef61fb643374538603452d');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"80868e11eb4e1a89"}', 'f9f40a110d77c2d2580508337040c751d60eff0c40b160f181f930836b19e69d');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"297e99303b13d424"}', '0a2bcf23924a99d2fbbbd538262d1a7dfd2a23517a5b7339b2797d7bf223ca0a');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"gone_days":3,"hand_overs":false,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"slip_closes":false,"zone":"UTC"}', '770a661b0e4286c6367db6418d70f3a6039c0066647a4e58598dbbc1a7589625');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'caab675e49087e0427c400e8a60951b1abf19f679e32608c373ec32fa69597d8');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","text":"AB-0123"}', '4379df2b6661b9e21472ee53ffb970a1e3f37aa33a61579523abf0f2f3a169b7');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","text":"ab-77-x"}', '3a2fc3b8632b551fbcfa37dfb000fc260f65332cc19bf00cdf963f99871e721a');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","text":"BOX 9"}', 'beb447795284a402e5b1ed472626c815d743c221077918b6aca50ba3205b4c7d');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a9bbc14f43fa0db2","reference":"W001-01E","stay":"cf062e0864cd0717"},{"hold":null,"line":"cecb2cdf2e3cdef7","reference":"W002-016","stay":"c45afadeb2ae0b34"}],"number":"B-01","order":"da530edbd185c6cb"}', '3fc22462ecad2ed9efbba47d4129e26810871fb3ac20a26f742ec95a6bc89998');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"fa89305f5dee6dc7","reference":"S002-013","stay":"df8e907449554f52"},{"hold":null,"line":"3b328f3fea532337","reference":"S003-01W","stay":"b2ebcf29e7d158a2"}],"number":"B-03","order":"84c8c1c14886b911"}', 'fdbcc19bc672aeffad9a563a9030ea4ac4599df7cd7fc72d792f3271e07731f6');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"be5124a9512dc009","reference":"S004-01O","stay":"209c4c48aa3cf128"},{"hold":null,"line":"1a73d0fdee08875f","reference":"S005-01G","stay":"a8debc706a63a879"}],"number":"B-04","order":"2f72f54c4638d077"}', 'baeda2f42400f985f4496b8ab4138d1df067a0e94948a23db8b67d609e826f2c');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"2b96f69286a63f5b","reference":"L002-017","stay":"ebd434c0f438160d"}],"number":"B-05","order":"beae2f99c01734dc"}', '7bdffc4a1b7f2a37ec6ce1bb390ba1d8cceb2e036e3b367c1c14ad587d2198f8');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"883be89bfbb73c47","reference":"L003-010","stay":"9bd2916143d1897c"}],"number":"B-06","order":"2fe625b1738ed157"}', '7cb85d8c324ef6489e023c76627d57f529d54c63bb9674a23d9391f456444469');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"85ddc606a60f84dd","reference":"L004-01S","stay":"e327b7c811112da1"}],"number":"B-07","order":"221685b6167f4df2"}', '4e2248ac7dc8edd96973c7a752e26bd4a3fadc4e316c08816f7121c903b0518a');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"8202481ba13f795d","reference":"L005-01K","stay":"9818182f628916a1"}],"number":"B-08","order":"896e7d1833721245"}', '92a3577b683c24984120512068a5c23ab679f1c6404d244fbe65a1de799ae712');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"85e4642cdbd3c778","reference":"L006-01C","stay":"46a4668078ac6811"},{"hold":null,"line":"0e3d393a9221a483","reference":"L011-010","stay":"96df76821ca85279"}],"number":"B-09","order":"ae39a9c5562593f9"}', '226cb6f0dc27c326b2c6e62434b8e005d9c30d8c5e96fcc241fe0dffdd2a0567');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"455031149c594e69","reference":"S006-018","stay":"96ecfefa6315b635"}],"number":"B-13","order":"5a8fff60cd1131ea"}', '812ea919dfbb445448cc9ef8134e3355e5475746705ee301b5f8c9560a57f3d6');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b6147ae5d3bb34aa","reference":"L007-014","stay":"464fed40f353063a"}],"number":"B-17","order":"7f9aa7c9a5bfa9fe"}', '5a84774f1102c26679e5fea353ff020c93d6dbdaff2ed4c723eeec070b0783f4');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"afa9c5dcc67bacf6","reference":"D009-01B","stay":"17455e91ac2e4827"}],"number":"B-18","order":"9952b90134a0d75e"}', 'bde649e26559b4722a335c9f0a2a02abe4b8786c58e2549f0c3fc021c4673d7e');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"c976badb9733c871","reference":"W006-013","stay":"22488913cab5cf38"}],"number":"B-21","order":"58355a6b42dbf095"}', 'efa0f67a22dca7648ab4624941d914cb1b0dc826a6ace924d0373ffb4975c59b');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"59d1c083bdcc0ff6","reference":"S007-01Z","stay":"901c4f6a7799e19d"}],"number":"B-22","order":"b84025c6b9ea3d1d"}', 'a8b918867fbbd1892dc3b3cd0aa84ce9c34ad2865e4344d0a24d93c80abe59c9');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"737258daf949acae","reference":"W007-01W","stay":"d187de3857cef9d9"},{"hold":null,"line":"eb237023881b933c","reference":"W008-01O","stay":"06d5064142ed9300"}],"number":"B-23","order":"7f18c43e7f61bc62"}', '001eea91a107d51204a2f807b99e214bc0330efe55599f9bca7e7f0fcddb21a1');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"8b659be61a065082","reference":"D008-01J","stay":"af1f23a3d3b04492"}],"number":"B-26","order":"872fee7fbf67a30e"}', '57222ee350f7c3a1adee7ab079d275472ab446eb428ae2282d6d62a549a9c1a6');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"8bb9b36f2dcb209b","reference":"D003-01U","stay":"b8c05cbe0da3d033"}],"number":"B-30","order":"1cf7cc5952b0ef55"}', 'fb2df40da1dfa6789235b8f1090299e40b038d61917374cc1d4dc41a098eb493');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"fdaccd0db1949c39","reference":"D005-01E","stay":"ae2c24f5e1c31c03"},{"hold":"unknown_code","line":"b45866a7bb98422e","reference":"Z999","stay":null}],"number":"B-31","order":"60b0f63803aa8ad3"}', 'ee2cd74c58dba21ab93049e85c4c22a73973237ec7eee9a9213c7f46b5fc696a');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"88ed9ba3ed530c67","reference":"D006-016","stay":"535657e6abea094f"},{"hold":null,"line":"d5018348cfc0b51e","reference":"D007-01R","stay":"13d11ffaad6552b6"}],"number":"B-32","order":"fb80a4c2840f1426"}', 'c64b7d89a0cbaa5fbc11d1e9eed0edd6d318333b853a5978fc876924630364a1');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"d5018348cfc0b51e","reference":"D007-01R","stay":"13d11ffaad6552b6"}],"number":"B-32","order":"fb80a4c2840f1426"}', 'e5c1dda4445fb80d86d2be54404f93b5bc3d505f2c549f54c9aeaa75809100ad');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"faec9dadd5cf57e3","reference":"lamp","stay":null}],"number":"B-33","order":"b94b86e297815735"}', '6056195a7039998f4356689dca33174c2af13444cbd4630f061699bb6e452410');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"cc482104e131d57f","reference":"D006-016","stay":null}],"number":"B-34","order":"e17c313811bb321e"}', 'f39ca3d00b28783df2cb133dc86395b369da544180ea12a761347bb237210735');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"4d2a03d8e1596741","reference":"W004-01J","stay":null}],"number":"B-35","order":"dfb6c411988aed5c"}', 'f7997bd172c067fa9b4327350092ac6755cbe886c0c23082a4431882a0e1f4cf');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"67a270680422efa4","reference":"L015","stay":null}],"number":"B-36","order":"ac48a77edebc5b70"}', 'f9f9333e4aa42073308be7787552a8ebff28936f1c519fafba1340b4124812f0');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"f5c9c29722265788","reference":"W005-01B","stay":"9817df5d4318ee91"}],"number":"B-37","order":"e7d0e046a05ce200"}', '81a2bb31eb3b54c0ffe642c84ae1239427ee8713d447bdd361c587e998886a84');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"f5c9c29722265788","stay":"9817df5d4318ee91"}', 'baf6fbae5366f4697a9c61b404a3cd0e797c8e40172db298d23a753e37e4f6f8');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'doubted', 'owner', '{"doubt":"b4f1d798afbe9e35","doubt_kind":"not_this","item":"214a404707b05cfc","words":"Another lamp, by the photo"}', '77550ecf7ef63e47dc26f6eddde8ff5b8c626e80a5ff33f8c7b40e296b555400');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"b6147ae5d3bb34aa","why":"Another lamp, by the photo"}', '4543039da418cb98f113b2ce411d00be9c0f5a452a60fbaa35bd4c9c4f09fcdc');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["8202481ba13f795d"],"number":"B-08","order":"896e7d1833721245"}', '92d0c27021b726c1734f5a7b95b0c2aa34ba150d91db79f765087ef63f61c912');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["c976badb9733c871"],"number":"B-21","order":"58355a6b42dbf095"}', 'f66acae11c59c5bb6fd4044e8c3787308b148d728ce3bda89001e76fb5df7087');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"c976badb9733c871","stay":"22488913cab5cf38"}', '735d4c4821fa4af2a5a8ae889c960e5ec09e7c2f9e98a317b622743ec86a1bbe');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"8ed3ec9dc3098fbc","stay":"af1f23a3d3b04492","to":"D020"}', '1ff867fc74807df57d31e29878104ecb9c6c7426d5eeb98db4a59dcf75674bd4');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"42728f8ccc1c9498","reference":"S012-01O","stay":"57e6d4f3ca6c30fe"}],"number":"F-1","order":"5e9cb2e10868fde7"}', 'e8b8dc79c13285cd5c9c32f8a5d02cdeff043c2e6cca3800e5f85fe6bb00564a');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"128571dc13e1730f","reference":"","stay":null}],"number":"F-2","order":"06b6ca6af42887ba"}', '2b69ba940def8278f807a69281dc39dd72b97f0ffd513493789c43e719f38ff0');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["a9bbc14f43fa0db2","cecb2cdf2e3cdef7","fa89305f5dee6dc7","3b328f3fea532337","be5124a9512dc009","1a73d0fdee08875f","85e4642cdbd3c778","0e3d393a9221a483","455031149c594e69","59d1c083bdcc0ff6","737258daf949acae","eb237023881b933c"],"round":"f1312334bf885426"}', '4ecf8f1b84fc2483c56a4ba777b99ced9a665c7af06ddb6885bb1a69fa90d5df');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'a2a9ee034eda4198b0571df25b9feeb7721489ed267f35b6f40bf17fd8be5928');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"a9bbc14f43fa0db2","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'f36db519e38e840eb5e54f90c0b7d942c5a818c5f94e11a10a8563a0fcdec0dc');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"cecb2cdf2e3cdef7","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '96a46649f841de520ac5940393a93e2d100e2c1b60f32a7284b67abec4eefd00');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"fa89305f5dee6dc7","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'dffb8d81151bc4f2ed8a965152cb706b71ec033952b3ac15fa427ba6c629c617');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"3b328f3fea532337","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '933d4f29ccfae6943a2bc89c1bc47f6ba1b03d18325beedaa8abcc29799b5590');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"be5124a9512dc009","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '5b4fb2c89bfb0ad99f4e7b10794e13fb9598ced6e6e999287ab4f63983de6074');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"1a73d0fdee08875f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'dc9b5fe498c5ca59987f94ec4d8f6206c383bfbe5c1abd61aa2243ce73f58712');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"85e4642cdbd3c778","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '22ee6d1c31f4b6716e559cbdd5ac3298a6dd3bd110557b10b6325cb426fa1950');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"0e3d393a9221a483","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'edffb39563ceb1d6ab6c3ea3739f86f85de7d6f00cc46ec4ae73e491869073e9');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"455031149c594e69","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'f5d347b1ee551eb517ba9ddb3abc57fcd4c70db79f409a817bccaf3eca3636ba');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"59d1c083bdcc0ff6","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '9f3c91c707eff30a7495cec44383f2bf793a159fae1db21062af2da4b685a62c');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"737258daf949acae","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '836a0dab5ad8a4b2e20747884430957a02c3ab7bcd0e03abe58141e1f8ab57e8');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"eb237023881b933c","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f1312334bf885426","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '79cab54f8eed032b6bddfcfdff446cce4563a8679ea01eca291fe1142dcdcf6c');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"eb237023881b933c","line_state":"waiting"}', 'f1a37f6973d01f606b3eb69358b49bbdd3902fbdf66b9827ba7a2e8c3fa99158');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"round":"f1312334bf885426"}', '48670179bf0a4668407266e5d67c850d0faa77b727a47efbcbf08ffb1791c0e3');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["da530edbd185c6cb"],"parcel":"2ee1a8db51ac27ee","table":"main"}', '9141223185de0e241c5e4cf17103e687c0b6f90706054c8f7ccfdff2337e070c');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"fa89305f5dee6dc7","line_state":"picked","order_number":"B-03","parcel":"2ee1a8db51ac27ee","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'ee3c4ca1d5a8d02ad429b288aa60c3de0c2ffa02d7e8cd1d3c090f9405a0183a');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"a9bbc14f43fa0db2","line_state":"packed","order_number":"B-01","parcel":"2ee1a8db51ac27ee","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'da3415a4e19f4f7f5b95adc94e0e29acb4a30f735db89ec064d30c93a481d984');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["da530edbd185c6cb"],"parcel":"2ee1a8db51ac27ee","released":["W001","W002"]}', 'df807b1749fdf554eac2a93c818ca2df9d4309d9ce357a8130a1463bdf4e69ce');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"cecb2cdf2e3cdef7","line_state":"released","order_number":"B-01","parcel":"2ee1a8db51ac27ee","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'f50578aef1150945b8c2fb86bf3eb7ec53af546fbeecee3bcd5feaa1f63d73c7');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"a9bbc14f43fa0db2","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'df8e28404d722170d145b5b49d5b71165f3c92c264b7b61af595fe75849e0c5d');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","stay":"d00d4221b1af0aca","title":"Rear wheel","turn":2}', 'd203bc507affe1f3f066b072aabe278d6ab15011218efe2120f434afcde5d450');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"2ee1a8db51ac27ee"}', '6121d362a0b919495279f62dcdcb864f5719273524c3235830bc540261f6abca');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["7f18c43e7f61bc62"],"parcel":"097fd646bc96b123","table":"main"}', '6f36b359e5bf57292ed2106a4a82a0506a2d14b6f540d7025c10244a2702d983');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"737258daf949acae","line_state":"packed","order_number":"B-23","parcel":"097fd646bc96b123","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '8e43ecd67ce38f60f7209d91b4504193ca7ef58eac12ba102da938236e3456f1');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["7f18c43e7f61bc62"],"parcel":"097fd646bc96b123","released":["W007"]}', '5232b4ddf3b589e97f672f8a653ce834aeff8a99544cb9b3b563a462229cb4ab');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"orders":["7f18c43e7f61bc62"],"parcel":"097fd646bc96b123"}', 'd168e682eb6afc1720f349e86ec32e858d0c825117382b6e2cb55de7be5c9b8b');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"orders":["7f18c43e7f61bc62"],"parcel":"097fd646bc96b123","released":["W007"]}', '5dfc47968afcf2da0a093fd80edfe9c6563f226859aaf60845c7127f2bb16d0f');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["b84025c6b9ea3d1d"],"parcel":"003722e767809a56","table":"main"}', '7e3384c13dcdf00681e19cacc0082de4a3b66c0b5b636632d19548f392600880');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"parcel":"003722e767809a56"}', 'c13f68d23d1496cb3a52fe201c25b61df720dd19b8bf92b9a32780d65651d9e9');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["2f72f54c4638d077"],"parcel":"4f4a35d55a2297e3","table":"main"}', '3724c83eaf9a4415e9e780a1a23f5ecd42d63517e32b0c58a648909b7d8ba318');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'owner', '{"after":162,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"5632ece5d805a636","sure":false}', 'baa1ba2af02d84f46de892a766f75e06ae56bf3e92c8b63f4a12436e9a7cd65f');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"be5124a9512dc009","line_state":"packed","order_number":"B-04","parcel":"4f4a35d55a2297e3","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'ce052829c98c53dc175dc81cabab3de45c71aa2b73af3be5d178443f85179e00');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"parcel":"4f4a35d55a2297e3"}', '92aeb48d6191fc00b334b27b92eca282e38c790aae35c230f28bc5e75d441e03');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["ae39a9c5562593f9"],"parcel":"5d927e8eb28b8fab","table":"second"}', '6893625b10b894b6c38f53ed22f44d4eeb6057c013972887abdbda03c1ae65b9');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"85e4642cdbd3c778","line_state":"packed","order_number":"B-09","parcel":"5d927e8eb28b8fab","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '8a8c6fde1ecc3c03ee6c3113ef58c354ab95c3d981d22240d36660cf47e05416');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["85e4642cdbd3c778","0e3d393a9221a483"],"number":"B-09","order":"ae39a9c5562593f9"}', '28693567687383450474ac070235422a577cd8bf857c2b637254d0c9b9423105');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"orders":["84c8c1c14886b911"],"parcel":"e7e390ca87f575a5","table":"main"}', '6fca0bb3d89255dcaca1ef3b2739a51761d78692b8c96239e83831821821e110');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"fa89305f5dee6dc7","line_state":"packed","order_number":"B-03","parcel":"e7e390ca87f575a5","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'ea483c4d87b6160f37f23ccf98892bf83420fe3a44a718d7feeaf672f940ed1c');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"455031149c594e69","reference":"S006-018","stay":"96ecfefa6315b635"}],"number":"B-13","order":"5a8fff60cd1131ea"}', '91e4d08c63a366a05b9a434512d4f9ab555a1b6f74c47bfde877d5cd1d5254c6');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["2b96f69286a63f5b","883be89bfbb73c47","85ddc606a60f84dd","8b659be61a065082"],"round":"e42d11e486c171c3"}', 'dbebe51b51fd9f696dba56d63c2abd5bc487d91ec6ff581eaf79ac0a653cae2c');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"2b96f69286a63f5b","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"e42d11e486c171c3","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '3951c21a8785902b9bf5158d4cc32f25589401fe6b3860d75398194b86d6fda4');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"85ddc606a60f84dd","note":"Not in its bin"}', '2024e4e41491d44f92ae9de0d05d38afbe3c41a53b3d2de751c72910a849e75a');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:13:00.000000+00:00', 'doubted', 'owner', '{"doubt":"f2b3c5b36237c808","doubt_kind":"missing","item":"cc0608386b42d821","words":"Not in its bin"}', '044bae9734f0be8fc04e9d5652aba89768f097b44660e3f0dfc39921bfc480b7');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"e42d11e486c171c3","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '1b82ad1f2d5bd407f0110ebb17f47a6f007eb52dc06148d4dbcc767eba25c8c9');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"e42d11e486c171c3","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'd940c075f609ce4ceb86ba9ea4737ef08ff06e130eef5234f757889828b6f2ae');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"e42d11e486c171c3","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '83876bbd52e8bc0e3a6f5fbfc5e7eba0001000ad9e494fece05deb98a317336f');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001"}', '3eefc72971c2b3b940dacd14f7a40338f4097b6774034130fa0cb950b2070b99');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015"}', 'ba1b0a6b3a97d44ff9372d7d924ca0bf2d0ebbbeb7011ee5277974b525c4b832');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"aca85a97adfa748b","reference":"D001-019","stay":"80868e11eb4e1a89"},{"hold":"already_sold","line":"616a1f09ed2bda0e","reference":"W002-016","stay":null}],"number":"B-38","order":"07b77a2c7a8ba2b5"}', '9f41265f5abcb9bdb8a56b21accfb881d5a6951a997104972f98fb48461deb51');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"293ad6208c20bf04","reference":"W001","stay":null}],"number":"B-39","order":"3766fd6f44558f9a"}', 'db3078aa341395db3ed53e1a4a0e4b9d3e43cf349f3a7e18bfb89e24d6a98d75');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:39:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:S","note":"Spring","stocktake":"5632ece5d805a636"}', 'e1733b5bba9f637cc5b3f705f99d5566dc3a8910d4e2d3079b8c7d77fc3a419b');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:46:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"5632ece5d805a636","unread":0}', 'cd53371fe69b403305007412170b10446d727ccf516c050c18a83bf9a022dc8e');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:46:00.000000+00:00', 'doubted', 'owner', '{"doubt":"93fe170f164cb493","doubt_kind":"not_this","item":"6f486c7f7b1c7a75","words":"Another thing hangs on its card in B-1-1, a count says."}', 'c187f5a0b51be02d33bd8d29fdb89956496732d0bbe2ff4f2e5f19f8359bf5b6');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:54:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"5632ece5d805a636","unread":0}', 'a4c292c65332df2a98e857007f9ab378352c65b0f186b06ab357a781845b7ad6');
INSERT INTO public.ledger VALUES (161, '2026-03-02T16:00:00.000000+00:00', 'finding resolved', 'owner', '{"after":160,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"5632ece5d805a636","sure":false}', '8d9044fe447950897cffe9adf2b89862ad73cb5e491f7923e7a2efc323a31fe9');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:03:00.000000+00:00', 'finding resolved', 'owner', '{"after":161,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"5632ece5d805a636","sure":false}', 'a1736934f5c9fd1b6664413771a2c662c70543e78828b201b3177611a05968da');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:09:00.000000+00:00', 'finding reopened', 'owner', '{"after":163,"finding":"missing-S008","how":"found_later","stocktake":"5632ece5d805a636"}', '2e0e0aaa21ed1962cfb8def39db2b9afb5e264b080ee32eb46b39b0829a1ed81');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:12:00.000000+00:00', 'doubted', 'owner', '{"doubt":"2f3a052a4fd4c384","doubt_kind":"missing","item":"286d2ca092ebeda6","words":"a count of section:S did not find it"}', 'b91210ded72101ed51defd44b3bbc9c83a88a30c2bd53f9a1eac37199f05f5c6');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:12:00.000000+00:00', 'stocktake closed', 'owner', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"5632ece5d805a636"}', 'aa754551789e3d86d5c6ad4e55549c15040429e5fba5325551ab211c86e5fd45');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:15:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:L","note":"Spring","stocktake":"8101215d35243419"}', 'e1a48423c6ba5ad635da1afffffc6803fc0c4fdfbe0ab86a69a613ceaa9d5ef7');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:22:00.000000+00:00', 'looked', 'owner', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"8101215d35243419","unread":0}', '7bcc2260e5870bbf20d4b4bfdba90ef962461bdde8d40b4a9c85b601f5c32631');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:25:00.000000+00:00', 'card lost', 'owner', '{"code":"L008"}', '4bbc39893d4e78386aadc4ab35cb63abf7719351bb72b7fbf0c7654e77c7b92f');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:25:00.000000+00:00', 'doubted', 'owner', '{"doubt":"6805445f427f3f8c","doubt_kind":"missing","item":"65e2b304a731217e","words":"a count did not find it"}', '8b73799cb56a983f201e97b9aa4c2f9cecbc2b855bbe671b751014c6be690b67');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:25:00.000000+00:00', 'finding resolved', 'owner', '{"after":168,"finding":"missing-L008","how":"lost","reason":"","stocktake":"8101215d35243419","sure":false}', 'c8e541f2745762ca9fd88393beb4720daff6be4a3fb7458f95a719b8f943211a');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:28:00.000000+00:00', 'withdrawn', 'owner', '{"code":"L009","reason":"Nowhere to be found","stay":"a1c68f800bc02094"}', '9304e26993e2fc0acbfda90ac94cdea27b57b154c75dfc3111dfa6cdf6273669');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:28:00.000000+00:00', 'finding resolved', 'owner', '{"after":171,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"8101215d35243419","sure":false}', '1f776111bb116cfec7f0920c152ea6c66c233758b78f52ad11f573e0ef648fa9');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:31:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:D","note":"","sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"b60809fc45a4d868"}', '1e05d925ed41c0154c86f2edd7872674c1bf895bcbece36524a204360cadf217');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:34:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"tray","note":"Too late today","stocktake":"ec87ac80176aafa6"}', '2e13ded98c58f761f6ccf4949eade112ea93aee491320a0ffcb4b8c8a16fa6e7');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:37:00.000000+00:00', 'stocktake cancelled', 'owner', '{"stocktake":"ec87ac80176aafa6"}', 'a4c6fbe670ea3031749205640cab41e9e57788b9d8ed21768b85427dcc83b37c');
INSERT INTO public.lines VALUES (15, 'afa9c5dcc67bacf6', '9952b90134a0d75e', 1, 'D009-01B', 'Rear derailleur 9', '', '17455e91ac2e4827', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '8bb9b36f2dcb209b', '1cf7cc5952b0ef55', 1, 'D003-01U', 'Bell with a crown', '', 'b8c05cbe0da3d033', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, 'fdaccd0db1949c39', '60b0f63803aa8ad3', 1, 'D005-01E', 'Rear derailleur 5', '', 'ae2c24f5e1c31c03', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, 'b45866a7bb98422e', '60b0f63803aa8ad3', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, '88ed9ba3ed530c67', 'fb80a4c2840f1426', 1, 'D006-016', 'Rear derailleur 6', '', '535657e6abea094f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'd5018348cfc0b51e', 'fb80a4c2840f1426', 2, 'D007-01R', 'Rear derailleur 7', '', '13d11ffaad6552b6', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'faec9dadd5cf57e3', 'b94b86e297815735', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, 'cc482104e131d57f', 'e17c313811bb321e', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '4d2a03d8e1596741', 'dfb6c411988aed5c', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '67a270680422efa4', 'ac48a77edebc5b70', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'f5c9c29722265788', 'e7d0e046a05ce200', 1, 'W005-01B', 'Bell with a crown', '', '9817df5d4318ee91', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'b6147ae5d3bb34aa', '7f9aa7c9a5bfa9fe', 1, 'L007-014', 'Dynamo lamp 7', '', '464fed40f353063a', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '8202481ba13f795d', '896e7d1833721245', 1, 'L005-01K', 'Dynamo lamp 5', '', '9818182f628916a1', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'c976badb9733c871', '58355a6b42dbf095', 1, 'W006-013', 'Front wheel 6', '', '22488913cab5cf38', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '42728f8ccc1c9498', '5e9cb2e10868fde7', 1, 'S012-01O', '', '', '57e6d4f3ca6c30fe', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '128571dc13e1730f', '06b6ca6af42887ba', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, 'a9bbc14f43fa0db2', 'da530edbd185c6cb', 1, 'W001-01E', 'Front wheel 1', '', 'cf062e0864cd0717', 'released', '2ee1a8db51ac27ee', 'f1312334bf885426', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, 'cecb2cdf2e3cdef7', 'da530edbd185c6cb', 2, 'W002-016', 'Front wheel 2', '', 'c45afadeb2ae0b34', 'released', '2ee1a8db51ac27ee', 'f1312334bf885426', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, '737258daf949acae', '7f18c43e7f61bc62', 1, 'W007-01W', 'Front wheel 7', '', 'd187de3857cef9d9', 'released', '097fd646bc96b123', 'f1312334bf885426', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (4, '3b328f3fea532337', '84c8c1c14886b911', 2, 'S003-01W', 'Leather saddle 3', '', 'b2ebcf29e7d158a2', 'picked', NULL, 'f1312334bf885426', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (5, 'be5124a9512dc009', '2f72f54c4638d077', 1, 'S004-01O', 'Leather saddle 4', '', '209c4c48aa3cf128', 'packed', '4f4a35d55a2297e3', 'f1312334bf885426', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '85e4642cdbd3c778', 'ae39a9c5562593f9', 1, 'L006-01C', 'Dynamo lamp 6', '', '46a4668078ac6811', 'packed', '5d927e8eb28b8fab', 'f1312334bf885426', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '0e3d393a9221a483', 'ae39a9c5562593f9', 2, 'L011-010', 'Dynamo lamp 11', '', '96df76821ca85279', 'cancelled', NULL, 'f1312334bf885426', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (6, '1a73d0fdee08875f', '2f72f54c4638d077', 2, 'S005-01G', 'Leather saddle 5', '', 'a8debc706a63a879', 'picked', NULL, 'f1312334bf885426', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '59d1c083bdcc0ff6', 'b84025c6b9ea3d1d', 1, 'S007-01Z', 'Leather saddle 7', '', '901c4f6a7799e19d', 'picked', NULL, 'f1312334bf885426', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'eb237023881b933c', '7f18c43e7f61bc62', 2, 'W008-01O', 'Front wheel 8', '', '06d5064142ed9300', 'waiting', NULL, 'f1312334bf885426', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'fa89305f5dee6dc7', '84c8c1c14886b911', 1, 'S002-013', 'Leather saddle 2', '', 'df8e907449554f52', 'packed', 'e7e390ca87f575a5', 'f1312334bf885426', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '455031149c594e69', '5a8fff60cd1131ea', 1, 'S006-018', 'Saddle with springs', '', '96ecfefa6315b635', 'picked', NULL, 'f1312334bf885426', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '8b659be61a065082', '872fee7fbf67a30e', 1, 'D008-01J', 'Rear derailleur 8', '', '8ed3ec9dc3098fbc', 'waiting', NULL, 'e42d11e486c171c3', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '616a1f09ed2bda0e', '07b77a2c7a8ba2b5', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (8, '883be89bfbb73c47', '2fe625b1738ed157', 1, 'L003-010', 'Dynamo lamp 3', '', '9bd2916143d1897c', 'waiting', NULL, 'e42d11e486c171c3', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '293ad6208c20bf04', '3766fd6f44558f9a', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (7, '2b96f69286a63f5b', 'beae2f99c01734dc', 1, 'L002-017', 'Dynamo lamp 2', '', 'ebd434c0f438160d', 'picked', NULL, 'e42d11e486c171c3', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '85ddc606a60f84dd', '221685b6167f4df2', 1, 'L004-01S', 'Dynamo lamp 4', '', 'e327b7c811112da1', 'short', NULL, 'e42d11e486c171c3', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, 'aca85a97adfa748b', '07b77a2c7a8ba2b5', 1, 'D001-019', 'Rear derailleur 1', '', '80868e11eb4e1a89', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '5632ece5d805a636', 'B-1-1', '2026-03-02T15:46:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '5632ece5d805a636', 'B-1-2', '2026-03-02T15:54:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '8101215d35243419', 'C-1-1', '2026-03-02T16:22:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'beae2f99c01734dc', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (5, '2fe625b1738ed157', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (6, '221685b6167f4df2', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (7, '896e7d1833721245', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (9, '5a8fff60cd1131ea', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (10, '7f9aa7c9a5bfa9fe', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (11, '9952b90134a0d75e', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (12, '58355a6b42dbf095', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (15, '872fee7fbf67a30e', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (16, '1cf7cc5952b0ef55', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (17, '60b0f63803aa8ad3', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (18, 'fb80a4c2840f1426', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (19, 'b94b86e297815735', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (20, 'e17c313811bb321e', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (21, 'dfb6c411988aed5c', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (22, 'ac48a77edebc5b70', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (23, 'e7d0e046a05ce200', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (24, '5e9cb2e10868fde7', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (25, '06b6ca6af42887ba', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (1, 'da530edbd185c6cb', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (14, '7f18c43e7f61bc62', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (13, 'b84025c6b9ea3d1d', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (3, '2f72f54c4638d077', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '4f4a35d55a2297e3', '');
INSERT INTO public.orders VALUES (8, 'ae39a9c5562593f9', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '5d927e8eb28b8fab', '');
INSERT INTO public.orders VALUES (2, '84c8c1c14886b911', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'e7e390ca87f575a5', '');
INSERT INTO public.orders VALUES (26, '07b77a2c7a8ba2b5', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (27, '3766fd6f44558f9a', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '');
INSERT INTO public.parcels VALUES (1, '2ee1a8db51ac27ee', 'main', 'da530edbd185c6cb', '2026-03-02T13:56:00.000000+00:00', 'closed', '2026-03-02T14:05:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '097fd646bc96b123', 'main', '7f18c43e7f61bc62', '2026-03-02T14:28:00.000000+00:00', 'closed', '2026-03-02T14:31:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '003722e767809a56', 'main', 'b84025c6b9ea3d1d', '2026-03-02T14:34:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '4f4a35d55a2297e3', 'main', '2f72f54c4638d077', '2026-03-02T14:40:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '5d927e8eb28b8fab', 'second', 'ae39a9c5562593f9', '2026-03-02T14:49:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'e7e390ca87f575a5', 'main', '84c8c1c14886b911', '2026-03-02T14:58:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '5632ece5d805a636.elsewhere-S012', '5632ece5d805a636', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'owner', '2026-03-02T16:00:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:46:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "57e6d4f3ca6c30fe", "item": "942dc13a88350b28", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "42728f8ccc1c9498", "order": "5e9cb2e10868fde7", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "57e6d4f3ca6c30fe", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:00:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "57e6d4f3ca6c30fe", "item": "942dc13a88350b28", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "42728f8ccc1c9498", "order": "5e9cb2e10868fde7", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "57e6d4f3ca6c30fe", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '5632ece5d805a636.unknown-Q0771', '5632ece5d805a636', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'owner', '2026-03-02T16:03:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '8101215d35243419.missing-L008', '8101215d35243419', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'owner', '2026-03-02T16:25:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3f1be91b105799ec", "item": "65e2b304a731217e", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3f1be91b105799ec", "item": "65e2b304a731217e", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["6805445f427f3f8c"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '8101215d35243419.missing-L009', '8101215d35243419', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'owner', '2026-03-02T16:28:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a1c68f800bc02094", "item": "2a87c96d277316df", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a1c68f800bc02094", "item": "2a87c96d277316df", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'f1312334bf885426', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'e42d11e486c171c3', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '7110e275411a5882e029a359f76369e2d73c249067b8ba1dccb66fb34870901f', 'bin', 'f1312334bf885426', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '28dedd6922e1ff459dcc01baea8548052cb6c2ce033435e9d0a6c235f09e86dc', 'bin', 'f1312334bf885426', 'W001', false, true, true, 'a9bbc14f43fa0db2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "da530edbd185c6cb", "order_number": "B-01", "line": "a9bbc14f43fa0db2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:14:00.000000+00:00', '["on_item", ["cf062e0864cd0717", "stored"], ["a9bbc14f43fa0db2", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '8889554ac2040c4468b5593ac5d01fcd87e13fe1fe6f3da0698e27783cff0a4b', 'bin', 'f1312334bf885426', 'W002', false, true, true, 'cecb2cdf2e3cdef7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "da530edbd185c6cb", "order_number": "B-01", "line": "cecb2cdf2e3cdef7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:17:00.000000+00:00', '["on_item", ["c45afadeb2ae0b34", "stored"], ["cecb2cdf2e3cdef7", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'f9fb71825c006c3719495277ca3d7d28e6201f0f2ab44444fb949fc021d10401', 'bin', 'f1312334bf885426', 'S002', false, true, true, 'fa89305f5dee6dc7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "84c8c1c14886b911", "order_number": "B-03", "line": "fa89305f5dee6dc7", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:20:00.000000+00:00', '["on_item", ["df8e907449554f52", "stored"], ["fa89305f5dee6dc7", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '2454e2ba0c391c0a1afaa6ecf0c86d0246e0528ee39634264a842cbca93f266f', 'bin', 'f1312334bf885426', 'S003', false, true, true, '3b328f3fea532337', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "84c8c1c14886b911", "order_number": "B-03", "line": "3b328f3fea532337", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:23:00.000000+00:00', '["on_item", ["b2ebcf29e7d158a2", "stored"], ["3b328f3fea532337", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'd1c2b38aa8a618e4e28212e94d583ba1fae22824bfeacf92d04a0e73b1252d0b', 'bin', 'f1312334bf885426', 'S004', false, true, true, 'be5124a9512dc009', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2f72f54c4638d077", "order_number": "B-04", "line": "be5124a9512dc009", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["209c4c48aa3cf128", "stored"], ["be5124a9512dc009", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '191fb501f4c9ce0f57d7760e9ed7f382384feeddd0bfde860f2a3632a37150ac', 'bin', 'f1312334bf885426', 'S005', false, true, true, '1a73d0fdee08875f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "2f72f54c4638d077", "order_number": "B-04", "line": "1a73d0fdee08875f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["a8debc706a63a879", "stored"], ["1a73d0fdee08875f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '057d9c53ae1f711c089e7da93739509ecfbd412ba7cd28f81dd49867ae033e00', 'bin', 'f1312334bf885426', 'L006', false, true, true, '85e4642cdbd3c778', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "ae39a9c5562593f9", "order_number": "B-09", "line": "85e4642cdbd3c778", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["46a4668078ac6811", "stored"], ["85e4642cdbd3c778", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '0b6f713c2815d5970a15f9e3298a91aa0a4e6ace170b2b9748c3be4b0ed65777', 'bin', 'f1312334bf885426', 'L011', false, true, true, '0e3d393a9221a483', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "ae39a9c5562593f9", "order_number": "B-09", "line": "0e3d393a9221a483", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["96df76821ca85279", "stored"], ["0e3d393a9221a483", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'e6b91a776e8c55195508a641be32b76a39fcc9dbc3299e699436d9229f949cf1', 'bin', 'f1312334bf885426', 'S006', false, true, true, '455031149c594e69', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "5a8fff60cd1131ea", "order_number": "B-13", "line": "455031149c594e69", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["96ecfefa6315b635", "stored"], ["455031149c594e69", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '49c7dc282e03a28fa60545b0a7a9401cc70be1405d2d3a487fb307d02d28a2cf', 'bin', 'f1312334bf885426', 'S007', false, true, true, '59d1c083bdcc0ff6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "b84025c6b9ea3d1d", "order_number": "B-22", "line": "59d1c083bdcc0ff6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["901c4f6a7799e19d", "stored"], ["59d1c083bdcc0ff6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '2f71bd9f6ed5ce4d9e50790d53a5b3706006bb0d976882d8119345693f3fdce4', 'bin', 'f1312334bf885426', 'W007', false, true, true, '737258daf949acae', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7f18c43e7f61bc62", "order_number": "B-23", "line": "737258daf949acae", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["d187de3857cef9d9", "stored"], ["737258daf949acae", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'e912ceb4f2a93dfcd1561d1f6a8e176166be026051d056b88df15d8d07e7308c', 'bin', 'f1312334bf885426', 'W008', false, true, true, 'eb237023881b933c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "7f18c43e7f61bc62", "order_number": "B-23", "line": "eb237023881b933c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["06d5064142ed9300", "stored"], ["eb237023881b933c", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'fa89305f5dee6dc7', '2ee1a8db51ac27ee', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "84c8c1c14886b911", "order_number": "B-03", "line": "fa89305f5dee6dc7", "line_state": "picked", "order_state": "picking", "parcel": "2ee1a8db51ac27ee", "parcel_state": "open", "released": []}', '', '2026-03-02T13:59:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'a9bbc14f43fa0db2', '2ee1a8db51ac27ee', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "da530edbd185c6cb", "order_number": "B-01", "line": "a9bbc14f43fa0db2", "line_state": "packed", "order_state": "picking", "parcel": "2ee1a8db51ac27ee", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:02:00.000000+00:00', '["on_item", ["cf062e0864cd0717", "stored"], ["a9bbc14f43fa0db2", "packed", "2ee1a8db51ac27ee", []], ["2ee1a8db51ac27ee", "2026-03-02T13:56:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'cecb2cdf2e3cdef7', '2ee1a8db51ac27ee', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "da530edbd185c6cb", "order_number": "B-01", "line": "cecb2cdf2e3cdef7", "line_state": "released", "order_state": "released", "parcel": "2ee1a8db51ac27ee", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:05:00.000000+00:00', '["due", ["c45afadeb2ae0b34", "shipped"], ["cecb2cdf2e3cdef7", "released", "2ee1a8db51ac27ee", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'a9bbc14f43fa0db2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "da530edbd185c6cb", "order_number": "B-01", "line": "a9bbc14f43fa0db2", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:08:00.000000+00:00', '["tray", ["cf062e0864cd0717", "shipped"], ["a9bbc14f43fa0db2", "released", "2ee1a8db51ac27ee", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '737258daf949acae', '097fd646bc96b123', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "7f18c43e7f61bc62", "order_number": "B-23", "line": "737258daf949acae", "line_state": "packed", "order_state": "waiting", "parcel": "097fd646bc96b123", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["d187de3857cef9d9", "stored"], ["737258daf949acae", "packed", "097fd646bc96b123", []], ["097fd646bc96b123", "2026-03-02T14:19:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'be5124a9512dc009', '4f4a35d55a2297e3', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2f72f54c4638d077", "order_number": "B-04", "line": "be5124a9512dc009", "line_state": "packed", "order_state": "picking", "parcel": "4f4a35d55a2297e3", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["209c4c48aa3cf128", "stored"], ["be5124a9512dc009", "packed", "4f4a35d55a2297e3", []], ["4f4a35d55a2297e3", "2026-03-02T14:40:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '85e4642cdbd3c778', '5d927e8eb28b8fab', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "ae39a9c5562593f9", "order_number": "B-09", "line": "85e4642cdbd3c778", "line_state": "packed", "order_state": "picking", "parcel": "5d927e8eb28b8fab", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:52:00.000000+00:00', '["on_item", ["46a4668078ac6811", "stored"], ["85e4642cdbd3c778", "packed", "5d927e8eb28b8fab", []], ["5d927e8eb28b8fab", "2026-03-02T14:49:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'fa89305f5dee6dc7', 'e7e390ca87f575a5', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "84c8c1c14886b911", "order_number": "B-03", "line": "fa89305f5dee6dc7", "line_state": "packed", "order_state": "picking", "parcel": "e7e390ca87f575a5", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["df8e907449554f52", "stored"], ["fa89305f5dee6dc7", "packed", "e7e390ca87f575a5", []], ["e7e390ca87f575a5", "2026-03-02T14:58:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '769524ac08cf9d0e84a8829a8407f8de263d235e712e2b8bf3ae56385dab9723', 'bin', 'e42d11e486c171c3', 'L002', false, true, true, '2b96f69286a63f5b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "beae2f99c01734dc", "order_number": "B-05", "line": "2b96f69286a63f5b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:10:00.000000+00:00', '["on_item", ["ebd434c0f438160d", "stored"], ["2b96f69286a63f5b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '79562278c913c5251d99e6d519dc51b61934352309862a2a380dc3ee2e594b78', 'bin', 'e42d11e486c171c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:16:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'f95079d8cbf1ac59a26526b8a759b3e313ea995b2e999fd5f0f046445811258c', 'bin', 'e42d11e486c171c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:19:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'c7db4025edd7433ed1cf0d5d379a94817e056986a4cf1a839e9a2227d1bfd6ff', 'bin', 'e42d11e486c171c3', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:22:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:29:00.000000+00:00', NULL, 'bin', 'B-1-1', 'f1312334bf885426', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:35:00.000000+00:00', NULL, 'bin', 'C-1-2', 'f1312334bf885426', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:54:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:01:00.000000+00:00', 'e7e390ca87f575a5', 'bin', 'B-1-1', 'f1312334bf885426', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:47:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:38:00.000000+00:00', NULL, 'bin', 'B-1-1', 'f1312334bf885426', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', 'f1312334bf885426', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:10:00.000000+00:00', NULL, 'bin', 'C-1-1', 'e42d11e486c171c3', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:05:00.000000+00:00', '2ee1a8db51ac27ee', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:22:00.000000+00:00', '097fd646bc96b123', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:43:00.000000+00:00', '4f4a35d55a2297e3', 'bin', 'B-1-1', 'f1312334bf885426', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T14:52:00.000000+00:00', '5d927e8eb28b8fab', 'bin', 'C-1-1', 'f1312334bf885426', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:46:00.000000+00:00', NULL, 'bin', 'B-1-1', 'f1312334bf885426', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:22:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:54:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:00:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:22:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:22:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:22:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '80868e11eb4e1a89', 'fd655450dd535894', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '3f7d9cf99b4315b8', 'a0129cdd36416561', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, 'b8c05cbe0da3d033', '77ffcff5b49a70fa', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '9b07080660fb018d', '5bbc7ff62086da51', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'ae2c24f5e1c31c03', '873eae3e64068107', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '535657e6abea094f', '335c8a7a0b1a07bc', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '13d11ffaad6552b6', 'cf607bc7a2336a89', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '17455e91ac2e4827', 'e8917823414d9e5a', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '101022fe10eb8360', 'd75fc23e822bbefe', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, 'e88ad0a966d322cf', 'ff8bd418d028ec52', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '178c6d99688cd00a', '87bf89f7ae82ce02', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '297e99303b13d424', '6f486c7f7b1c7a75', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, 'df8e907449554f52', '53682eda21d4248b', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, 'b2ebcf29e7d158a2', '12545991060b3e6e', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '209c4c48aa3cf128', 'd1976e7fbd9e4f8f', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'a8debc706a63a879', '86603bd5d47daac7', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '96ecfefa6315b635', 'c4021f415cc2bd49', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '901c4f6a7799e19d', 'dfead3492d5ff850', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '7d40d652daf6bee1', '286d2ca092ebeda6', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '2c4b46e0549b4bf3', 'b0b2db30d920383d', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '57e6d4f3ca6c30fe', '942dc13a88350b28', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '45f61f300b36a785', '92dddc7522344e06', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, 'ebd434c0f438160d', 'c737111e2952e29c', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '9bd2916143d1897c', 'c10d68ccaf53bd1d', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, 'e327b7c811112da1', 'cc0608386b42d821', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '9818182f628916a1', '32ee39e5ab8390be', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '46a4668078ac6811', '62a1c38be3659b50', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '464fed40f353063a', '214a404707b05cfc', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '3f1be91b105799ec', '65e2b304a731217e', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'd2bd974e4fbc9cd0', '8b0960e9a594e18e', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '96df76821ca85279', 'a4dd81235c4346ec', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '9b81f26242e9aa52', '9c93b1aa90643ad9', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, '6d01616761e07f8b', 'dc1d1cd34f874f92', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '9817df5d4318ee91', '35f96c759ca0e7f5', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '22488913cab5cf38', 'b0c8d19888f386fc', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '06d5064142ed9300', '35f69d80ac9fb952', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'd57b0799d2cd352c', '06bf019ee714c72e', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '9b604011748db936', 'dae62388ec7f6bef', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, 'e50abbd4efc832db', 'd97c305aaecd94ef', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'c2466323dfcb0177', '3190cbef79b302d4', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '5224ff8fae0fc6a0', 'c13653632693cf93', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, '2215fc422adfd71f', 'b4cdc8143fb05fbb', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '95ca3b5597e537a8', 'f7b139ad41b57100', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '6240fd72d9f6df19', '1da5381775990a71', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '1a92319b2d29e7cf', '1da5381775990a71', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'af1f23a3d3b04492', 'b4c3253f51e5d9fa', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '8ed3ec9dc3098fbc', 'b4c3253f51e5d9fa', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, 'cf062e0864cd0717', 'fccfcac402bc91a9', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'c45afadeb2ae0b34', '6f216f080ecfb304', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, 'd00d4221b1af0aca', '3fdfb1b36ff37330', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, 'd187de3857cef9d9', 'd662ccc8cf2a5a08', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, 'a1c68f800bc02094', '2a87c96d277316df', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:28:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '5632ece5d805a636', 'section:S', 'Spring', '2026-03-02T15:39:00.000000+00:00', 156, 'closed', '2026-03-02T16:12:00.000000+00:00', '{"stocktake": "5632ece5d805a636", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '8101215d35243419', 'section:L', 'Spring', '2026-03-02T16:15:00.000000+00:00', 166, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'b60809fc45a4d868', 'section:D', '', '2026-03-02T16:31:00.000000+00:00', 173, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, 'ec87ac80176aafa6', 'tray', 'Too late today', '2026-03-02T16:34:00.000000+00:00', 174, 'cancelled', '2026-03-02T16:37:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'f1312334bf885426', 1, 'fa89305f5dee6dc7', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'f1312334bf885426', 2, '3b328f3fea532337', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'f1312334bf885426', 3, 'be5124a9512dc009', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'f1312334bf885426', 4, '1a73d0fdee08875f', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'f1312334bf885426', 5, '455031149c594e69', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'f1312334bf885426', 6, '59d1c083bdcc0ff6', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'f1312334bf885426', 7, 'a9bbc14f43fa0db2', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'f1312334bf885426', 8, 'cecb2cdf2e3cdef7', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'f1312334bf885426', 9, '737258daf949acae', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'f1312334bf885426', 10, 'eb237023881b933c', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'f1312334bf885426', 11, '85e4642cdbd3c778', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'f1312334bf885426', 12, '0e3d393a9221a483', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'e42d11e486c171c3', 1, '8b659be61a065082', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'e42d11e486c171c3', 2, '2b96f69286a63f5b', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'e42d11e486c171c3', 3, '883be89bfbb73c47', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'e42d11e486c171c3', 4, '85ddc606a60f84dd', 'C-1-1');
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
