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
INSERT INTO public.access VALUES (1, '70e484f50f48a7078913bbf09f5aadd1af3d6c5af94579827e552ba4a892dbda', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$KRNePk76ze295mkpnF6mUQ$SbSbZDcYeBKuhA5KHhSYEGCxsC0g3V+yCEy4bHVP634', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '45c1e1dc92feabb9902c932edf0a7f5525d776de800903f019f43dd855642598', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'e92f1d645f58a6d53a15c3c630192a2bc59582a4e031f1dc04e5002ef1ce0056', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '2f460c95dc5bddd8642d52940d04136f5ecf66f45597e3de50b5df6acbaa0a87', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'd30c68a48e210e0bb3d2170436dcf0c9bd347a4a8d4fc930426776810ed416e6', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0010');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/27fc63fdad37c30e', '{"id": "27fc63fdad37c30e", "item": "31d157c8af6f0a05", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '721d6b92327bc0a9', '640b6813da945d4e', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:46:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '880d685e9fa8c550', 'ff2dccf1f29b96c9', 'missing', 'Not in its bin', '2026-03-02T15:14:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'f81246513eda1470', '215dcb143ed81e30', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:45:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '75707a8c7fc1f63e', '45bfbe1a8ba39b46', 'missing', 'a count of section:S did not find it', '2026-03-02T16:11:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '8b8ef563943e5c95', '8ba14678adf71dce', 'missing', 'a count did not find it', '2026-03-02T16:24:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 178, 'b4043804fbab896c5b36c92fe088752e4695ec388785f1b000cac3661b2d1baa', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', '65f93bb6c4cff3ae');
INSERT INTO public.items VALUES (3, '307afdfc9fd5fc62', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '1f1218fbed813c7a', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '30d7bd39275b7c33', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '1024d205d001a89f', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, 'dd6e064dc95c847e', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '02b027b592429962', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '6b2b69131fbac934', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '5ee184c2cf98da9b', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '5eae9521b84d826d', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, 'ea88cf899c0e304a', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, '7885fae365918f4f', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '8d91e97c11a08e85', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'ce0d1ee39cf317b3', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, '76f3b04bce6d2aa2', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, '2a76779d98953a8d', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, '1ce492858c5a30c7', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, '45bfbe1a8ba39b46', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '51762e0a7926adf3', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, '2350e6491c9c0763', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '020ea31c2f959036', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, 'df354f683f3d130d', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '1e191416d23fd78f', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, '08af8be0e4e59a03', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '73d42fb9a7c6e5d2', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, 'ff2dccf1f29b96c9', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, 'd91b7c5afdd18dba', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, '96ca39eda40846f0', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '640b6813da945d4e', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, '8ba14678adf71dce', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, 'fd59d24f02acc0dc', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '43f9eb47a89a6b75', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, '5d5642702e20f4e3', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '3364a29c28477b72', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, 'aa7ed6be78e03d22', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'e0b6199b6b979817', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '42a7121b1b91ba5a', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, 'b2ff118b49e26280', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, '4f2af8e656566bff', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, 'ba80147f8e0777a6', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '9d4970e1fb39e4be', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '7cce1b4e2a3b8896', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, 'b046c2da3141a867', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'ab9009eec001deed', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, '23c14df67c1b37fa', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, '3104d4cd491b53fd', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, '31d157c8af6f0a05', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, 'e8036d6a91819e6f', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, '2f75aea981fccd73', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '215dcb143ed81e30', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '80bef7d1e52c5ef1', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '94719855d9c6877f', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 2f75aea981fccd73 - 6e3005a0189f","slots D001 on_item e5405bc28ff8","stays be68f09ec2afa0c1 stored f74da816c90e"],"stay":"be68f09ec2afa0c1","title":"Rear derailleur 1","turn":1}', '499e5fdb387fcad83993be5dea1f46e8090067223d45ac92f7de9fc57ae1be62');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items e8036d6a91819e6f - bc6d0a6d5454","slots D002 on_item 4f79f524f247","stays 403566121cb4f48e stored 6916083a3e61"],"stay":"403566121cb4f48e","title":"Rear derailleur 2","turn":1}', '4b39a08cbcc26a43a2b9d3a12a84b15c833faba22438ec7eb9956d0503632247');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 307afdfc9fd5fc62 - f87aff2cccbf","slots D003 on_item 6de523ac8b4d","stays 43338f7b5f880eae stored 30c50ce2061f"],"stay":"43338f7b5f880eae","title":"Rear derailleur 3","turn":1}', '35a96b78bc27a07b52186a9afb890645f88b0dc0bbd80aa34223dee6c6c80591');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 1f1218fbed813c7a - 283cd44dc2c8","slots D004 on_item ec423998da46","stays 656679532c693464 stored 77b86492d0ad"],"stay":"656679532c693464","title":"Rear derailleur 4","turn":1}', '09182208ce4e418d0963d95cc08f59684575fbe635926d6d14c382ec2cacb311');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 30d7bd39275b7c33 - 1cc22e22393c","slots D005 on_item 91ad3faf88d6","stays 61e6198016aceb9c stored 9474fd1a1539"],"stay":"61e6198016aceb9c","title":"Rear derailleur 5","turn":1}', '08df5d79c1a023a3e953c61fdfbbf685d87130d670ca4449948fe1b23a2ec2e9');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 1024d205d001a89f - d308778ba9b8","slots D006 on_item 1fadb568d6a5","stays 08a5c7eb9cecfb1b stored 9e8ce4c63793"],"stay":"08a5c7eb9cecfb1b","title":"Rear derailleur 6","turn":1}', 'fa7c38a6385db3594ebaa842c3e2287b7600adf9e485582a988dfd837171c71a');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items dd6e064dc95c847e - 936f8b04a117","slots D007 on_item 536077e3b728","stays 79959a7f8b17458c stored c9a6fb6a9ce0"],"stay":"79959a7f8b17458c","title":"Rear derailleur 7","turn":1}', '99f77fc221b3752aae6e5341142d3f47ef95f97050db45a95fcfe13b74f7b19e');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 02b027b592429962 - 875930ae52c0","slots D008 on_item facb453cba22","stays ecb8014acf544f50 stored e3164c08c031"],"stay":"ecb8014acf544f50","title":"Rear derailleur 8","turn":1}', '3498fc9f65495952c26a124662865ed93e712bf8b96ac34d9d75181123799307');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 6b2b69131fbac934 - 1b9b1f905e20","slots D009 on_item 7434bf04ccf2","stays 76c41f4871a77c2f stored 24d45d5d429b"],"stay":"76c41f4871a77c2f","title":"Rear derailleur 9","turn":1}', 'dac9014e452157f0692bec116efa3038575022dfe189daea1fa24208cab2feb8');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 5ee184c2cf98da9b - 3954e70700a6","slots D010 on_item 1f8fd3ebaf8b","stays e95949374e949f28 stored 4481fc9838dd"],"stay":"e95949374e949f28","title":"Rear derailleur 10","turn":1}', 'd461d066933cd6caa0e49d63871ea00e85432538cb7939764e5a636b46b7bcc5');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 5eae9521b84d826d - 153c51200693","slots D011 on_item d451255e38b7","stays 0a2cd69a0e217909 stored 19050c7f3149"],"stay":"0a2cd69a0e217909","title":"Rear derailleur 11","turn":1}', 'c2d320b935ef69547346a443d7b2d5b501d7073403618734e08adc06fa846258');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items ea88cf899c0e304a - 97701431eb39","slots D012 on_item bdbda5bb2b7a","stays 51954151a4be62bc stored c518fa6b209d"],"stay":"51954151a4be62bc","title":"Rear derailleur 12","turn":1}', 'e94fb808aa74cbaf14571ff79113d8a6a4a1faa0ac0a27492ec96ee6b5f4aee4');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 215dcb143ed81e30 - d74becf62a62","slots S001 on_item 76dcd853e3e0","stays 570568c209e316d8 stored f028b4278a24"],"stay":"570568c209e316d8","title":"Leather saddle 1","turn":1}', 'a7c313b972b6d9b370ab4366d6c980e3d6e8619c834dbefa0a4f499114c6da75');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 7885fae365918f4f - 7349867eb7c6","slots S002 on_item 6fb94c47a50d","stays 7d9db764ba12ca0a stored 7edc8e64fec8"],"stay":"7d9db764ba12ca0a","title":"Leather saddle 2","turn":1}', 'bef1e85ebe8f52eb27fb56cef0ac2dc924f6f7db60c3e25ca5618ea4d0d831bd');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 8d91e97c11a08e85 - 2716f53e9b2c","slots S003 on_item e00808332634","stays 99e12e00ff1c4585 stored f091fe1dc616"],"stay":"99e12e00ff1c4585","title":"Leather saddle 3","turn":1}', 'd9c78c1b3f3bf5fed0020801c0ca056a78819124bbccc6eedad78b6dc122efe5');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items ce0d1ee39cf317b3 - e84911c152ad","slots S004 on_item db1aa8005467","stays 20292282e7ef17e3 stored 9fc5ec851aca"],"stay":"20292282e7ef17e3","title":"Leather saddle 4","turn":1}', '65625c356545b56e2955760705d09353f6091254e794132aa0f545d7f5c787e7');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 76f3b04bce6d2aa2 - 9d511208b358","slots S005 on_item ec548ef84f99","stays 8050c8c17e8292dd stored 40c65f4f60eb"],"stay":"8050c8c17e8292dd","title":"Leather saddle 5","turn":1}', '24e5988291324f6af273f2ecc99095f3c0beeea30be08890787b38a86c43e556');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 2a76779d98953a8d - 02e4ca17a49b","slots S006 on_item dc9bc74eb63a","stays ed4f6e557e41f80c stored 75ee9a1fb332"],"stay":"ed4f6e557e41f80c","title":"Leather saddle 6","turn":1}', '2b655e2ec025496681b1b4b5ec6cab0026872b9b486760a647d4cfa6cbe5dabc');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 1ce492858c5a30c7 - c98cc719dbf7","slots S007 on_item 075fd8b9fecf","stays e4e0d91194be77ec stored e3f56be3375f"],"stay":"e4e0d91194be77ec","title":"Leather saddle 7","turn":1}', '8460c9737f2cd90df5e98af6fa97f07efcf4c6a6b540668ea9e1fd921c882e3e');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 45bfbe1a8ba39b46 - c4efed9ee08d","slots S008 on_item 39fdb847a4bc","stays 5a828ea768d9db27 stored ddefdeaac135"],"stay":"5a828ea768d9db27","title":"Leather saddle 8","turn":1}', '7a60dcc9ee5e7505950667b7b2c3c18906677e88f1b63a153e4437e29edd40ec');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 51762e0a7926adf3 - 89851292b726","slots S009 on_item 62c79df275b3","stays 299a771b220795ed stored a276ac2974b9"],"stay":"299a771b220795ed","title":"Leather saddle 9","turn":1}', '7a13e0487f9711272e8f052defee861555fcead50bcdfdf6ea23ad7e9cdd5db5');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 2350e6491c9c0763 - f5fad59e0604","slots S010 on_item 1fd8d85fa1c4","stays d28388cd31197449 stored 19d3716a622b"],"stay":"d28388cd31197449","title":"Leather saddle 10","turn":1}', '0055ba1be9f91a50e787ebd37edbf068c6bb49e71efdb9e92ccf3e6a4702cced');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 020ea31c2f959036 - badaebb0d70f","slots S011 on_item e59577c4b2a7","stays 0fafbccd3a37074a stored 41d3d2091a5e"],"stay":"0fafbccd3a37074a","title":"Leather saddle 11","turn":1}', 'b81621ca937bb93384ee4d7597c9fa82e43294648a2b5a206556cf94cff1671a');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items df354f683f3d130d - 226e57780ab4","slots S012 on_item 9bae442e2436","stays f850ef46d1c4feb0 stored c1447aac6eca"],"stay":"f850ef46d1c4feb0","title":"Leather saddle 12","turn":1}', '2135e8578c5f5691667413bbdd5a6c84f5283bab2654db7a7a2b1adc6f761bf7');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 1e191416d23fd78f - 3a60e78fb2ff","slots L001 on_item 43c5cdfaa8e4","stays a68ff0f10202d7b2 stored 994a5eb8e0ff"],"stay":"a68ff0f10202d7b2","title":"Dynamo lamp 1","turn":1}', '8fc5f40944fe83d040b0885ba52b8eabd540518d286cbf1e4b4aefcb908555ed');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 08af8be0e4e59a03 - c05f3a0d3a7f","slots L002 on_item ea8e77c8b06f","stays 4ec84cab90bb1dec stored a729d37fdbcf"],"stay":"4ec84cab90bb1dec","title":"Dynamo lamp 2","turn":1}', '4a7550420b5037fb2c8d0119813c5c6481c53eeb38e6b5dede2cf3db1b8b7e1b');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 73d42fb9a7c6e5d2 - 515004ef1c11","slots L003 on_item c35e4c005cda","stays b9a8366881532815 stored df06cff659f5"],"stay":"b9a8366881532815","title":"Dynamo lamp 3","turn":1}', '22f3b9daa3d6a82fb95197a8f50b2301b27ed70e3ea9c3ad82fe0e587e1c1d21');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items ff2dccf1f29b96c9 - 959beb55ab92","slots L004 on_item 70a88e4a366b","stays 754e4ba8d721b6d7 stored 05c37ff9d546"],"stay":"754e4ba8d721b6d7","title":"Dynamo lamp 4","turn":1}', '27c6e19e37e7fe86e5e9e7034376bab4268b40b1d33967dee7644e8f29b72e6d');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items d91b7c5afdd18dba - c9d749758658","slots L005 on_item 6261d94de1ef","stays 9aa7470924baf96a stored c7a904c021bd"],"stay":"9aa7470924baf96a","title":"Dynamo lamp 5","turn":1}', '1f64b638275976f67e82961ddf2a0a9593d6167811e70cb0cb14e8ddcc0aa34b');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 96ca39eda40846f0 - efce002334fb","slots L006 on_item b67b470f3637","stays fbab8449bf38084b stored 96f0ea0d2fea"],"stay":"fbab8449bf38084b","title":"Dynamo lamp 6","turn":1}', '0530e1597c82574ed8e7d945a7ce0127870ff987b73e1228beb19b827f068955');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 640b6813da945d4e - 3f5043c35e87","slots L007 on_item 767524982af4","stays 55e8c8a8dfae052f stored 315c6cf24c00"],"stay":"55e8c8a8dfae052f","title":"Dynamo lamp 7","turn":1}', '8388b2e6f9c17d8a195406110c67e9fccc2e90e7126e0903bab74b78faddcda2');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 8ba14678adf71dce - 55c4abd6cf4d","slots L008 on_item b3b2d23a98b7","stays 2f2188d44d168824 stored d1a28edb2a48"],"stay":"2f2188d44d168824","title":"Dynamo lamp 8","turn":1}', '8ad28d6fcd4532c8bdaf63d920883663759e444b3ded27a69bb61c6456411343');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items fd59d24f02acc0dc - df2dd348bcb6","slots L009 on_item c3139144a3f8","stays a52e55c9eaf2e93c stored 1488c678a0fc"],"stay":"a52e55c9eaf2e93c","title":"Dynamo lamp 9","turn":1}', '22e95a7440aff01abed1f6b2586a967c6791dea4dae14b885c2539672a991430');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 43f9eb47a89a6b75 - 0399442f1201","slots L010 on_item f8c13ae8aec4","stays 32c527872087a922 stored 762efd13d11a"],"stay":"32c527872087a922","title":"Dynamo lamp 10","turn":1}', '526d54700cdd62a9c89d0397a687fa2b68207a8c51a846f52d41f1624382d0d5');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 5d5642702e20f4e3 - a0cb7279e590","slots L011 on_item 9d01c75c0f89","stays 7292c7455f36d95d stored e6e171726014"],"stay":"7292c7455f36d95d","title":"Dynamo lamp 11","turn":1}', '2c3e03caa2dc7d13e3a8cf36eadff354693075100321b03e2b77b7022487e942');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 3364a29c28477b72 - 94e674c7a832","slots L012 on_item 5373b19b101e","stays a491355737dbc6f8 stored b4f7dce149cf"],"stay":"a491355737dbc6f8","title":"Dynamo lamp 12","turn":1}', '643ddfe19a48a450cb83ebc8d2f70750c4215df57ad27f09aa3f7c8e1eb53d61');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items aa7ed6be78e03d22 - b0de4f90ee6a","slots W001 on_item 17dd342c2f6a","stays 04f0c71735ffcc7f stored cbb14b71d4ae"],"stay":"04f0c71735ffcc7f","title":"Front wheel 1","turn":1}', '3bfe2510bdb4763eba65c48e2cfb5d2976ea8d59ba68551261d3ddbc4539d7bd');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items e0b6199b6b979817 - af55e2454f2c","slots W002 on_item 7ebfb8df41ca","stays 0e920e273cca8980 stored 14ba4a1b8121"],"stay":"0e920e273cca8980","title":"Front wheel 2","turn":1}', '79abd9fe66e6d101ec4eb71f3ee395836e888984cb076970f89d1a06a3c56800');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 42a7121b1b91ba5a - de1ad63c7452","slots W003 on_item f84a2674e962","stays b385351af3aba773 stored b4856c93ec03"],"stay":"b385351af3aba773","title":"Front wheel 3","turn":1}', '39363407d2bc8fb8126c42fc111dd3321fdb093a5d4e6e73c54dabdb25c331f9');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items b2ff118b49e26280 - f72a3cc3c6eb","slots W004 on_item f45ed94fd55a","stays bd90b4fe8a224435 stored 461e8b3f09c7"],"stay":"bd90b4fe8a224435","title":"Front wheel 4","turn":1}', '7c962eccff9e2b0aeb587a4864a7d38c10be0c5e021cb7847f63f14aa08ca76c');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 4f2af8e656566bff - 959379dbac62","slots W005 on_item a1fdfb2c692e","stays 7f11d59b5b499d76 stored e11e6a19a190"],"stay":"7f11d59b5b499d76","title":"Front wheel 5","turn":1}', '06826ab508a8947a87d53a0bfef578483087d466b5720b0efecd36dd0e65d344');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items ba80147f8e0777a6 - e652ec0e3d28","slots W006 on_item 3dd6244f0bee","stays 56a735910e58a39e stored 40fa780fbde9"],"stay":"56a735910e58a39e","title":"Front wheel 6","turn":1}', 'a14ced7cf337a8abf924bf0b183e4f19c5d076bc31d43ceca8788fbbc0005cd2');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 9d4970e1fb39e4be - 04e867d35211","slots W007 on_item d52463b699e2","stays b27845f16646e105 stored b07d259ea632"],"stay":"b27845f16646e105","title":"Front wheel 7","turn":1}', '26b66ca1346375c9a775646cce449388de2ae15a7436567081c27e501c41e0e5');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 7cce1b4e2a3b8896 - 3c21969435d2","slots W008 on_item 2e167460fb16","stays 7cc3508d520bb627 stored 709c7e6de535"],"stay":"7cc3508d520bb627","title":"Front wheel 8","turn":1}', '62339c40a0821ffe685aa9726004d4973094b7388e8f9bf9c1be30d44b20b97e');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items b046c2da3141a867 - c7eadf3ce1a9","slots W009 on_item 597fc2f4b56e","stays ddc3ceb17e06d7d6 stored eba850d3309e"],"stay":"ddc3ceb17e06d7d6","title":"Front wheel 9","turn":1}', 'b82a92fc6ca0ba6060149889e99ba5a8547c9f36f2e563c7cbc3c3f5fb309178');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items ab9009eec001deed - 963a53c6cc03","slots W010 on_item 7d0365c2d2de","stays 57c0761a76907d0c stored 3f9264f06332"],"stay":"57c0761a76907d0c","title":"Front wheel 10","turn":1}', 'b942a40891b64f23042811e5de44a3b8cfb650c8a58ff54b4fd8e53b810dc237');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 23c14df67c1b37fa - 21a1162d4e98","slots W011 on_item d3a26b640d71","stays 28f4d7ca6dd2c0e9 stored 0e55c2a2870b"],"stay":"28f4d7ca6dd2c0e9","title":"Front wheel 11","turn":1}', '9d6dfc89fd29a9885e27465fdc1b91b5794d93e057c275f459f8f8986e42f21f');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 3104d4cd491b53fd - 00363a8458cb","slots W012 on_item ac10bfb906d6","stays cd2c5b2a4a188675 stored fdb589d1e0c6"],"stay":"cd2c5b2a4a188675","title":"Front wheel 12","turn":1}', 'e3097afcd1d993c3ee311f1085c520adede0db5c6cd3d4bea4b6c9c890a8bf0e');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:49:00.000000+00:00', 'cancelled', 'boss', '{"lines":["b8854098adf0836a"],"now":["lines b8854098adf0836a cancelled 0029d182c3a6"],"number":"B-08","order":"70ac20b572762aaf"}', 'fdaf9752c9ccdacc55646140a449941b58212ad0620ac18e0eaece65f4e22512');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 31d157c8af6f0a05 - 74209270924c","slots D013 on_item 69b6f1c92d5d","stays 27fc63fdad37c30e stored 1d2c6c4f9972"],"stay":"27fc63fdad37c30e","title":"Brass bell","turn":1}', '2d8cbc30a99ac13628238b4e5810bc43af3f7920fb1e5eb5b23e9619b0111ed6');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items e8036d6a91819e6f - 67143e4243b3"],"stay":"403566121cb4f48e"}', '48fa10e9ef0ae091e0a3950e4bb9b289531e3ab89b1f441b7e5745a42b40ed89');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays d28388cd31197449 withdrawn ba38af05685f","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"d28388cd31197449"}', 'cc548ca437742dee9211fc6dceceb2f25d6d50ac560c4d2241da08912731a09d');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays bd90b4fe8a224435 withdrawn 00a8d7f2aae6","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"bd90b4fe8a224435"}', '299f0ffcc88205404dd21c8b3d403fb644d8263e33f199bd0f821ac2966851fd');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"6d624fada91077fc","now":["stays 299a771b220795ed moved a0fbb6fa9a1a","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 6d624fada91077fc stored 6184dc2f7d07"],"stay":"299a771b220795ed","to":"S013"}', 'e23c3521ef4fbe734d143084afcf03f1ba3240e6949814b61cfca05ee9f06998');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 2f75aea981fccd73 - 98b57f501eec"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"be68f09ec2afa0c1"}', '2cae4af7d57e8e58a0be41d1a8f465ad8a7ffb16e1cc81e1168f7169a10e1af8');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 215dcb143ed81e30 - 2b963b3e8afe"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"570568c209e316d8"}', 'bdfc318a92e0f24d23d15d08dc7c61042fa850c9e4054be64bcad552d1cf4d8e');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:22:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', 'e7fff9dea96d4cb79de0a2b7134ba8d3ecad0e292e6ecb28e1e9ea636b2d539b');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:25:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '120afa44517394b6ec4b437a98180aa7704aacc233720e51906f767f21868d18');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:26:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '123208c549bfc0b57475fecb8be46a2f77e3f3d66784136949af4686a6d333e5');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:27:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '753f5585085a6da24ca85b2aa646781a88aa7e165b3a368989e2d54fe062abd1');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '2bb54e06b2b11352ab5866c636e7a6c3d6ab9bd26eabdddabda0bfaa98624c05');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:31:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b923528021fb5d1a","reference":"W001-01E","stay":"04f0c71735ffcc7f"},{"hold":null,"line":"83c12035b28b4277","reference":"W002-016","stay":"0e920e273cca8980"}],"now":["orders 8ca93d3f6e53f624 - 0380bb727155","lines b923528021fb5d1a waiting c01d266ded91","lines 83c12035b28b4277 waiting 132110751eea"],"number":"B-01","order":"8ca93d3f6e53f624"}', '7cefbcec81660d246d09632364a6f80d197bfab5e16abd45a2075c28402e7a32');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:34:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d83a6de2e5810931","reference":"S002-013","stay":"7d9db764ba12ca0a"},{"hold":null,"line":"38241f87865b061f","reference":"S003-01W","stay":"99e12e00ff1c4585"}],"now":["orders d62432eab438e99a - 4d14d6cded87","lines d83a6de2e5810931 waiting 75f5ea3cebf6","lines 38241f87865b061f waiting 063525fb4ea1"],"number":"B-03","order":"d62432eab438e99a"}', 'e7f795dd231388aea608a7d5d4a57f788ebf1e5334e2fbb189180a0524848f09');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:37:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"107e678fb897d35e","reference":"S004-01O","stay":"20292282e7ef17e3"},{"hold":null,"line":"31352e999e683a20","reference":"S005-01G","stay":"8050c8c17e8292dd"}],"now":["orders d76e9a6caeb77f8a - c515dd290445","lines 107e678fb897d35e waiting c3b6e791662d","lines 31352e999e683a20 waiting 7f109ecbc278"],"number":"B-04","order":"d76e9a6caeb77f8a"}', '4324f843bc927eb4cf8a5845dc5b1c916d07731c8f90b218942478975b8beb38');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:40:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"139c71e3ce6526b9","reference":"L002-017","stay":"4ec84cab90bb1dec"}],"now":["orders 828d0a22f9492158 - b966179c5fe9","lines 139c71e3ce6526b9 waiting 48d5d2c10e01"],"number":"B-05","order":"828d0a22f9492158"}', 'cab626690f25beefc2b9233960982c54193d7146050925d5f0fd0b2fc7c21576');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:43:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"47389a3f8a1acf9f","reference":"L003-010","stay":"b9a8366881532815"}],"now":["orders 75068887069755de - 9c9157c8278a","lines 47389a3f8a1acf9f waiting b64acbd49b3c"],"number":"B-06","order":"75068887069755de"}', 'c54e38a021d4b42a9f35fe9a08bb9253a53657cd5e5edfb90d1e7fcdd35935b0');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:46:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"71c4d664cdb13a14","reference":"L004-01S","stay":"754e4ba8d721b6d7"}],"now":["orders fccd620d2c7d5981 - b16eed38d047","lines 71c4d664cdb13a14 waiting d6368c2aa7ff"],"number":"B-07","order":"fccd620d2c7d5981"}', '5f3a21e388fb9ef905e242d8d5a1edb7599d00ccc32a8fb8b7faf56df804bab6');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:49:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b8854098adf0836a","reference":"L005-01K","stay":"9aa7470924baf96a"}],"now":["orders 70ac20b572762aaf - afac68e4892f","lines b8854098adf0836a waiting 02ce13725d74"],"number":"B-08","order":"70ac20b572762aaf"}', 'cab35ecf587881799d4dc4a2f9dd5970d89cb058dbfc383d8b01814082393fc6');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:52:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"54471590840f100c","reference":"L006-01C","stay":"fbab8449bf38084b"},{"hold":null,"line":"e5fa6bfd8f722022","reference":"L011-010","stay":"7292c7455f36d95d"}],"now":["orders fdefd78ae9507a04 - 8ef40d12bba5","lines 54471590840f100c waiting 2049af0856e9","lines e5fa6bfd8f722022 waiting c66a298c6314"],"number":"B-09","order":"fdefd78ae9507a04"}', 'e3ba259df30c8123d8b9c28ac69038307212d23aaa9d48b2c905e5249d2907ad');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:55:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"83fcc405f79f1165","reference":"S006-018","stay":"ed4f6e557e41f80c"}],"now":["orders 63b1fbe0662fc2cd - 9b5f0cbcb1c9","lines 83fcc405f79f1165 waiting f7d6415d086e"],"number":"B-13","order":"63b1fbe0662fc2cd"}', '1d9d5646f4ed52ebfaa82cdd77c0d3b6973ab691dbe8102a874843d0412d79d2');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:58:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"36910f9e1365e109","reference":"L007-014","stay":"55e8c8a8dfae052f"}],"now":["orders 4730a3b5751dab29 - 0b47d88f60b7","lines 36910f9e1365e109 waiting d4ae54932ce5"],"number":"B-17","order":"4730a3b5751dab29"}', 'efb1e364fe906eb6caeb65409bf8f2d331664c02c127fd681742f59578dcf6cd');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:01:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7b843bcc7b969c84","reference":"D009-01B","stay":"76c41f4871a77c2f"}],"now":["orders b43b9779dfa88434 - e1fa5308ecf5","lines 7b843bcc7b969c84 waiting c3fe3f07dadd"],"number":"B-18","order":"b43b9779dfa88434"}', 'd71aa7036136bdc41c0210c0506ad0ab1e505385591047016f6da2ddce0d97b6');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:04:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cdcbbd6d591f3ce9","reference":"W006-013","stay":"56a735910e58a39e"}],"now":["orders b9cd61c5141fb581 - 4d585cd537ab","lines cdcbbd6d591f3ce9 waiting 80fd3b558003"],"number":"B-21","order":"b9cd61c5141fb581"}', '14f826137f4d866eca5b148d2fe73650241224524e3f0f908c251626b81dd12f');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:07:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"94021623e1d44077","reference":"S007-01Z","stay":"e4e0d91194be77ec"}],"now":["orders 4b6df1eff4ab28a5 - 64cd45fc7785","lines 94021623e1d44077 waiting 8f03a5190a43"],"number":"B-22","order":"4b6df1eff4ab28a5"}', 'df1a8b4dce9dbf65611940e2c053abf999e40e859fd19aae0c61556ee9e82e8f');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:10:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"77618061c7c631bc","reference":"W007-01W","stay":"b27845f16646e105"},{"hold":null,"line":"d385bed7a1a49f56","reference":"W008-01O","stay":"7cc3508d520bb627"}],"now":["orders d1315b723b348fce - 0b3259d34a03","lines 77618061c7c631bc waiting ec9a668b4e08","lines d385bed7a1a49f56 waiting 9089d5d18257"],"number":"B-23","order":"d1315b723b348fce"}', 'e00c61468b7233961dc4d02d805afee079a519134e62cd349fc8e3a80467d62d');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:13:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1836e6659b732f84","reference":"D008-01J","stay":"ecb8014acf544f50"}],"now":["orders 4b8aab3014e28d78 - 4dccbbc26427","lines 1836e6659b732f84 waiting 50739d149cab"],"number":"B-26","order":"4b8aab3014e28d78"}', '2e3ce8713aeb0bf364bcb084e82bbd789442420b72dc8979214d5d6144019f68');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a55c02749d8d8cf0","reference":"D003-01U","stay":"43338f7b5f880eae"}],"now":["orders 0d1f714a7709452f - 5471cf1e53aa","lines a55c02749d8d8cf0 waiting 779cc70b6cb7"],"number":"B-30","order":"0d1f714a7709452f"}', 'c520544a60b6d8054adec77b982c517dc97d6c25644f3defc6c7bc2d70fda9a8');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:19:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"23dfada9a7cbcaf5","reference":"D005-01E","stay":"61e6198016aceb9c"},{"hold":"unknown_code","line":"ad167871a0db21b4","reference":"Z999","stay":null}],"now":["orders a4140052e68a8d95 - ce9d9595d31b","lines 23dfada9a7cbcaf5 waiting e9005a1f08ce","lines ad167871a0db21b4 unbound dfb490d9588b"],"number":"B-31","order":"a4140052e68a8d95"}', 'fc9acbf67b380426f7013bb7bf58ce9edac9a145d20a2a98032f1fc4c141bf11');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:22:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b82e931ecc7978bc","reference":"D006-016","stay":"08a5c7eb9cecfb1b"},{"hold":null,"line":"72e93a9e70e8e309","reference":"D007-01R","stay":"79959a7f8b17458c"}],"now":["orders 083f7c86a29846b6 - 51251e4656c9","lines b82e931ecc7978bc waiting 6b8bf8732b7d","lines 72e93a9e70e8e309 waiting e4dd12c09900"],"number":"B-32","order":"083f7c86a29846b6"}', '5cf9abc570fb8448d13ec613e4952760a27e6a8ee3344b062af7c8de47d17028');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:25:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"72e93a9e70e8e309","reference":"D007-01R","stay":"79959a7f8b17458c"}],"now":["lines 72e93a9e70e8e309 waiting 1651ee0053c0"],"number":"B-32","order":"083f7c86a29846b6"}', 'e90723e7ec0ff775b31a897545345ed2a3894a2deee91f3a1120674179ec95f2');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:28:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"aaf7682ec13a65d7","reference":"lamp","stay":null}],"now":["orders 824e62e3e118e2a0 - 6d88a514cbe0","lines aaf7682ec13a65d7 unbound e75e8e187e3a"],"number":"B-33","order":"824e62e3e118e2a0"}', 'a9347ef470b3ced1d68db61278cb664b0f3d781411e4ac5460e7a83898187c33');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:31:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"57a78ef2d1010b3c","reference":"D006-016","stay":null}],"now":["orders 4141e7da9846ff13 - e3d32b325610","lines 57a78ef2d1010b3c unbound 75dd7a0d6ad2"],"number":"B-34","order":"4141e7da9846ff13"}', '752cd1e19227e15df10ae4b63f68efb0081ee6c5761f2672c1535e9ad21d09b6');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:34:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"3718ee810df01239","reference":"W004-01J","stay":null}],"now":["orders 10dbe8915069281b - 20961153a254","lines 3718ee810df01239 unbound 1a54c5b415f0"],"number":"B-35","order":"10dbe8915069281b"}', '6efe6aeb1f7e8746e201284ec94efc00f476840c8cc5e3f4fde6c09353260497');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:37:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"25c264387325ef1d","reference":"L015","stay":null}],"now":["orders a8298ef2db650da9 - b4b6c6ac7523","lines 25c264387325ef1d unbound cc3ad9c77f99"],"number":"B-36","order":"a8298ef2db650da9"}', 'f81c149f47b74ecbc0531f8183bf035480c175c2da56543723c729b8c2535019');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:40:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"bc6f697b6ca6baac","reference":"W005-01B","stay":"7f11d59b5b499d76"}],"now":["orders 9557c5d418f5ed8e - 2fb58d6260b7","lines bc6f697b6ca6baac waiting 5a001195aa19"],"number":"B-37","order":"9557c5d418f5ed8e"}', 'd558f10933df2ed17c5fbe66194a323f34da36617bdfacd12e6d16f0d618e896');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:43:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"bc6f697b6ca6baac","now":["lines bc6f697b6ca6baac waiting 3192ba20b6ca"],"stay":"7f11d59b5b499d76"}', 'c7f778b065872cf736774e3252196177b974d326cdf863ffb097d090a6d2995b');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:46:00.000000+00:00', 'doubted', 'boss', '{"doubt":"721d6b92327bc0a9","doubt_kind":"not_this","item":"640b6813da945d4e","now":["doubts 721d6b92327bc0a9 - 7d642a296280","lines 36910f9e1365e109 waiting f850f1173583"],"words":"Another lamp, by the photo"}', 'ca9c4417c35001a8c3bf85ce8a675b7065442d148c97c0b5ad306473264b07b3');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:46:00.000000+00:00', 'held', 'boss', '{"line":"36910f9e1365e109","why":"Another lamp, by the photo"}', '6d87a597c89baf1ada0b8acafdfe16acea271f4e250d9204ee856688a724a510');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:52:00.000000+00:00', 'cancelled', 'boss', '{"lines":["cdcbbd6d591f3ce9"],"now":["lines cdcbbd6d591f3ce9 cancelled 76b064a178e9"],"number":"B-21","order":"b9cd61c5141fb581"}', '1922dc9f16afeef35ffaa6ca512b816496c0c88d6866fc3987b78d16c5825499');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:55:00.000000+00:00', 'revived', 'boss', '{"line":"cdcbbd6d591f3ce9","now":["lines cdcbbd6d591f3ce9 waiting 80fd3b558003"],"stay":"56a735910e58a39e"}', 'aec4ce51f996f3e5fb5fe5cae62e335065fa558d54c9b42f2bbaaef3b382141f');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:58:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"2f2c3da316f4f373","now":["stays ecb8014acf544f50 moved 95249bbd7bc0","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 2f2c3da316f4f373 stored 044b8b024ee3","lines 1836e6659b732f84 waiting f07fbbd2c0e0"],"stay":"ecb8014acf544f50","to":"D020"}', '40e5a56550149fc30b97baf778b3c4a71781a7fd3ae9c3086b96c2405546bb1b');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:01:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"ef215d7ed7deaabf","reference":"L012-01S","stay":"a491355737dbc6f8"}],"note":"Rings at noon","now":["orders 7b188e83d24bea66 - 6fcd9418ad21","lines ef215d7ed7deaabf waiting 685a53081f45"],"number":"Sale L012-01S","order":"7b188e83d24bea66"}', '6e381a7efbb3588ceaaaf733a03dc62a6d652a42965fe9ea157e176accb180af');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:07:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"d86c67655a89acc4","reference":"S012-01O","stay":"f850ef46d1c4feb0"}],"now":["orders 9739a788baebacf7 - 63d3ef59d2c2","lines d86c67655a89acc4 waiting 42c4d8014aa2","orders cd07b3c9835a8827 - 1a106f9ddd65","lines e8dd7d0e0d1edb9a unbound 107bd30cb297"],"number":"F-1","order":"9739a788baebacf7"}', '497412293292b3c0e2e5d1165fd272cc1a92eda8ef8e90d0e5cbb451a9ac6cde');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:07:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"e8dd7d0e0d1edb9a","reference":"","stay":null}],"number":"F-2","order":"cd07b3c9835a8827"}', '4262d4d0b9e74793a2c15251c76afa7358163750b8b0c35154f8118c1d4cf90b');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:10:00.000000+00:00', 'round opened', 'boss', '{"lines":["b923528021fb5d1a","83c12035b28b4277","d83a6de2e5810931","38241f87865b061f","107e678fb897d35e","31352e999e683a20","54471590840f100c","e5fa6bfd8f722022","83fcc405f79f1165","94021623e1d44077","77618061c7c631bc","d385bed7a1a49f56"],"now":["rounds 8f7091bdf637ab4b open 3f76bc0fae32","lines d83a6de2e5810931 waiting b10a6e0cbfbd","lines 38241f87865b061f waiting a222af9e3746","lines 107e678fb897d35e waiting c67f9d59d425","lines 31352e999e683a20 waiting c529870d03c4","lines 83fcc405f79f1165 waiting 8ba5e43f8c5c","lines 94021623e1d44077 waiting c76d55f5daf0","lines b923528021fb5d1a waiting de980fce5041","lines 83c12035b28b4277 waiting 5a72a7bfdb0e","lines 77618061c7c631bc waiting 54acec303e1d","lines d385bed7a1a49f56 waiting fa3db1b2b788","lines 54471590840f100c waiting be8c331e85ee","lines e5fa6bfd8f722022 waiting 9b5a63fe52ca"],"round":"8f7091bdf637ab4b"}', '0a567c73c2691d7811e74ceaa81baf69821e887b2be4bdba3e32e5982871c3f4');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item c0dd4723055d","scans free-D004 - 6590ac035aa4"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'c1a4378260e0c45fc379f4ba7d08b80ed09b3b077da781b219df54725d154da8');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"b923528021fb5d1a","line_state":"picked","now":["slots W001 on_item a76b734ff0e9","lines b923528021fb5d1a picked 2f0626070d67","scans pick-W001 - bafab212b472"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b2580b0dae7d99f20267b702cf261aa30ad747de5ee568b57980b13f0ecd504b');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"83c12035b28b4277","line_state":"picked","now":["slots W002 on_item 771ca49fb78d","lines 83c12035b28b4277 picked d9cf85ae529f","scans pick-W002 - 7a9249cd798f"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'f7385c1d8610b52baa71a1b293e8e4e287a640e4a185882260333066dcb71297');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"d83a6de2e5810931","line_state":"picked","now":["slots S002 on_item d1b2ce0b83e9","lines d83a6de2e5810931 picked cf468c5d50e5","scans pick-S002 - 0090a04fd5d6"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '04a423d35e08bf9fd8c04d624934156da16e33ecc3e6bc22844a0ae21c4e6b03');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"38241f87865b061f","line_state":"picked","now":["slots S003 on_item 67aaa6d3148f","lines 38241f87865b061f picked 31a91d764faf","scans pick-S003 - d0e0625f49d2"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '31829580186d105369584a990efd7f0a56cf25adeb4901270d3e929b11b9069f');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"107e678fb897d35e","line_state":"picked","now":["slots S004 on_item 07e2e5806ada","lines 107e678fb897d35e picked a482635f2ecb","scans pick-S004 - f8028ef1289c"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '781b00032d472e03efd8e3e7c79a516251552869e2d657c52d6f611e95896e43');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"31352e999e683a20","line_state":"picked","now":["slots S005 on_item c9c03ce9f563","lines 31352e999e683a20 picked 4dab508faaa2","scans pick-S005 - a5296f940a32"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'fb6677f4d979a54c2a08aa72196e24a937777f5ea4e7876a79806599165590ad');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"54471590840f100c","line_state":"picked","now":["slots L006 on_item a7d243016999","lines 54471590840f100c picked 38ed91503510","scans pick-L006 - 14451b8a0c1d"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '226615f26752a4561e58f192739f7287eb91d2b749d5b23a8188a09e1a2645b9');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"e5fa6bfd8f722022","line_state":"picked","now":["slots L011 on_item b6d3813d3fb2","lines e5fa6bfd8f722022 picked e4e229d3ea1f","scans pick-L011 - b36877320f1f"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '980db29d0f1961323ff4326bb1626ea181e02a7291d0f15539c33d90cc5b72eb');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"83fcc405f79f1165","line_state":"picked","now":["slots S006 on_item 0f40c699fc6a","lines 83fcc405f79f1165 picked ab97820d0637","scans pick-S006 - f185b59ed314"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '51c28685445728e7a3e0c028f21fc5f08d98a06c2f9cb7a99dabc512520ea787');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"94021623e1d44077","line_state":"picked","now":["slots S007 on_item 7ece40ba43ce","lines 94021623e1d44077 picked 6b6763bb8134","scans pick-S007 - 371165bde4d6"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '38e2f1276ace77384478f7559d82c7dc16e395caca5c41030b4e238899b2228c');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"77618061c7c631bc","line_state":"picked","now":["slots W007 on_item ea2b426de4c8","lines 77618061c7c631bc picked d0e7aa2c31c8","scans pick-W007 - 1744fdd706a8"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '991eba9609c50d34b6a75aa0731cd42f7f302f7bdaefb77fcb674acc8edada73');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:49:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"d385bed7a1a49f56","line_state":"picked","now":["slots W008 on_item e662a5e0b390","lines d385bed7a1a49f56 picked 82f0332a986c","scans pick-W008 - 410e1963a88d"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8f7091bdf637ab4b","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '5a8f97cb2f887bed18ec9ff6424376a32f2f6a7cd11ce0114845e1472be005ad');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:52:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"d385bed7a1a49f56","line_state":"waiting","now":["lines d385bed7a1a49f56 waiting fa3db1b2b788","slots W008 on_item 0583d65f178d"]}', '70bf56ca5a5aa93372ff62a7379814a076cf7af38e770a2edd2179139e86d606');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:55:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 8f7091bdf637ab4b closed 06570f9afa37"],"round":"8f7091bdf637ab4b"}', '144b42c69c0bf11b53b75f41a30d8dbb9c0432404405bc65ac6560a86294ef48');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:58:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 94719855d9c6877f open c58f52add2d5","orders 8ca93d3f6e53f624 - 98b87890ed7e"],"orders":["8ca93d3f6e53f624"],"parcel":"94719855d9c6877f","table":"main"}', '833ce9ff40fc2f3b4056a31deff2a8ee5c12fb5f7b907dd20b67a3491685eb34');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"d83a6de2e5810931","line_state":"picked","now":["slots S002 on_item 8d13050c3bd1","scans other-S002 - ebbe0367b4f4"],"order_number":"B-03","parcel":"94719855d9c6877f","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '02601513bc5775207ee73804f16d80ba08763d842bf597068d7fdc7966aaf351');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"b923528021fb5d1a","line_state":"packed","now":["lines b923528021fb5d1a packed a01f716076b4","slots W001 on_item b8f931a66643","scans pack-W001 - 26d9cf004395"],"order_number":"B-01","parcel":"94719855d9c6877f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'fffed415844dbb8ca4cb4bb0ad1902026d5fdca6af23eab9cfdf3ce1f2e0dc90');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:07:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 83c12035b28b4277 released 978cd9474f3d","slots W002 due 4612b67bf47d","lines b923528021fb5d1a released 6269fed687ab","stays 04f0c71735ffcc7f shipped 6a395f2836cd","slots W001 due cc42bb64c26b","stays 0e920e273cca8980 shipped bc2e8274b252","parcels 94719855d9c6877f closed c6f861b23632","orders 8ca93d3f6e53f624 - 0380bb727155","scans pack-W002 - 4ccf47c8bfe6"],"orders":["8ca93d3f6e53f624"],"parcel":"94719855d9c6877f","released":["W001","W002"]}', 'e7628ac52f51abaf239f4eb17ad8ddec5129b6fc1c4d1507ca7bcd04f38a3468');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"83c12035b28b4277","line_state":"released","order_number":"B-01","parcel":"94719855d9c6877f","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '03bb51f1d2a4a57b343ba58d66546a0031da2c15c00ed6376a2678898d1dad7c');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"b923528021fb5d1a","line_state":"released","now":["slots W001 tray d937c58edaa9","scans back-W001 - 2dbc114993af"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '9f2d6ca3f1c3feca31f5538b108d2d9e8bd86631f037f958175b4cd1e784550f');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:13:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 80bef7d1e52c5ef1 - 4025d8a89290","slots W001 on_item 4bac4e5a272f","stays 2ce0a7100caae960 stored df553d797d1d"],"stay":"2ce0a7100caae960","title":"Rear wheel","turn":2}', '5a6a50b45cbaee33a513886d9ebefc0b95ccc7c015575b6e8bb2b95b785fd8af');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:17:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 73c53f8c4f6b"],"parcel":"94719855d9c6877f"}', '783e0b08de8d3f740a4297c392e35a41744f0467971754c49d8b47c96bb5edea');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:20:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 715e29c823936096 open 67410fb9ed2a","orders d1315b723b348fce - 70b14185610e"],"orders":["d1315b723b348fce"],"parcel":"715e29c823936096","table":"main"}', '0eb4380e8a7750e80890d1cef32c438b96956072b7c21984f15fa11b9f1205e8');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:24:00.000000+00:00', 'finding resolved', 'boss', '{"after":170,"finding":"missing-L008","how":"lost","reason":"","stocktake":"953e73a2c1e9b7fd","sure":false}', 'a03861017a8dabd1df864b80df2eac9ea77040e99eb68a1f328fa8a8c82083f0');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"77618061c7c631bc","line_state":"packed","now":["lines 77618061c7c631bc packed 626d960145ec","slots W007 on_item c1277d4cbe70","scans pack-W007 - 5b670d68682a"],"order_number":"B-23","parcel":"715e29c823936096","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '03bb76ffcae7cd90c253bce50a4620732df2187fff9ab534fd7fa608cff48d8e');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:26:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 77618061c7c631bc released 2dd324f19df1","stays b27845f16646e105 shipped 5b75a4159540","slots W007 due 3e4ec81aa9a8","parcels 715e29c823936096 closed 9d927ac88fab","orders d1315b723b348fce - 0b3259d34a03"],"orders":["d1315b723b348fce"],"parcel":"715e29c823936096","released":["W007"]}', 'f05bc3b7d1962f3a38099dfd34616d9531457ff63d5572d735692f1ebeb494d0');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:29:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 77618061c7c631bc packed f139cd0faf7b","stays b27845f16646e105 stored b07d259ea632","slots W007 on_item 88c3ab016e7e","parcels 715e29c823936096 open 5982d3206694","orders d1315b723b348fce - 70b14185610e"],"orders":["d1315b723b348fce"],"parcel":"715e29c823936096"}', '834aff5894625fa3dd73edaabafd35faf1096dd5aab871d45af778550febc5fe');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:32:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 77618061c7c631bc released 2dd324f19df1","stays b27845f16646e105 shipped 91f8195bc0e9","slots W007 due 3e4ec81aa9a8","parcels 715e29c823936096 closed 4680d06d15b0","orders d1315b723b348fce - 0b3259d34a03"],"orders":["d1315b723b348fce"],"parcel":"715e29c823936096","released":["W007"]}', '836b407cdf088b5459c451e27291db8176a5df4e8014fcd06e76c63dcecdde33');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:35:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 507a414580fd3f86 open bd9b60928c58","orders 4b6df1eff4ab28a5 - 97a31011ceac"],"orders":["4b6df1eff4ab28a5"],"parcel":"507a414580fd3f86","table":"main"}', 'ea4beacdd556bd6d3db6854fb1940c6f1a7bba57c2de79bc8f8e7b3d686083e9');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:38:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 507a414580fd3f86 dropped add4c086cf6e","orders 4b6df1eff4ab28a5 - 64cd45fc7785"],"parcel":"507a414580fd3f86"}', 'f5029f49e28657bdf343e33cf044f84de883c191035a3f964f3c61302051d8ab');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:41:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4a22e701f87e045c open 31fb45387220","orders d76e9a6caeb77f8a - f43ac96114f6"],"orders":["d76e9a6caeb77f8a"],"parcel":"4a22e701f87e045c","table":"main"}', '0b4a8645565fee0cb1305b7bd6cd6fdb143dbaf257f1cd45b94cc971b78d6f8c');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"107e678fb897d35e","line_state":"packed","now":["lines 107e678fb897d35e packed 647cc00d3952","slots S004 on_item 65eb2f18ecd3","scans pack-S004 - 5967b1eb5b4e"],"order_number":"B-04","parcel":"4a22e701f87e045c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'cfc0849d64388b7a3a4ebda06eb8c5ecd62b0116ba56a709bf53a48ab7ce0bd4');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:47:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 4a22e701f87e045c aside d32d24825cfe"],"parcel":"4a22e701f87e045c"}', '875ee0c3f6ca5c05e2ba80445f668a5b6f6711385d9340673b3ceaaa8e4c88bd');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:50:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels fadda21cd7a7f909 open 298e979b4d8a","orders fdefd78ae9507a04 - 3dadf9d1ae6d"],"orders":["fdefd78ae9507a04"],"parcel":"fadda21cd7a7f909","table":"second"}', '158c21cd8c793d123729c8aad406cdd2bb68ff6bc198f0369858a07e88e5d0e8');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"54471590840f100c","line_state":"packed","now":["lines 54471590840f100c packed 3be868e311af","slots L006 on_item f2c4b396fc92","scans pack-L006 - 74ff1520990a"],"order_number":"B-09","parcel":"fadda21cd7a7f909","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '26149cf9656e70e7d7ba98ffc43cc95d1afaa722f0b24b0b2ae04b5fbb772dff');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:56:00.000000+00:00', 'cancelled', 'boss', '{"lines":["54471590840f100c","e5fa6bfd8f722022"],"now":["lines 54471590840f100c packed 0b1650218213","lines e5fa6bfd8f722022 cancelled d23202502d37"],"number":"B-09","order":"fdefd78ae9507a04"}', '832315497c0e9776ab4edf98e3a0498678a50a0711234cdd68512f47e2b615a0');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:59:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 14eefd64f7691a7b open 37f230e1079f","orders d62432eab438e99a - d677223ac82e"],"orders":["d62432eab438e99a"],"parcel":"14eefd64f7691a7b","table":"main"}', '0389336282dc61c9f6e1b072fdeedfb5a6d3191fa3d8c7f942800b89a7bee8dc');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:02:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"d83a6de2e5810931","line_state":"packed","now":["lines d83a6de2e5810931 packed 704dc928c3a9","slots S002 on_item f518b466d62e","scans pack-S002 - 0e367c235636"],"order_number":"B-03","parcel":"14eefd64f7691a7b","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '1630a540de21f18a366b7e02f9dac1078907b6bb6d79c746d043e3b49c4e14fc');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:05:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"83fcc405f79f1165","reference":"S006-018","stay":"ed4f6e557e41f80c"}],"now":["lines 83fcc405f79f1165 picked 36db2b2216b6"],"number":"B-13","order":"63b1fbe0662fc2cd"}', '2dc253a581043c606576258783a0ef249cd74767b434108a3263ce1066cae759');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:08:00.000000+00:00', 'round opened', 'boss', '{"lines":["139c71e3ce6526b9","47389a3f8a1acf9f","71c4d664cdb13a14","1836e6659b732f84"],"now":["rounds 87405a3b026a7bac open e396349b019e","lines 1836e6659b732f84 waiting 91db1919ab0f","lines 139c71e3ce6526b9 waiting d58ebc06e752","lines 47389a3f8a1acf9f waiting e64b23b92710","lines 71c4d664cdb13a14 waiting 6c3e7e464b16"],"round":"87405a3b026a7bac"}', 'e563c442175d5acc90f6572639d12a50407f9aa89bfdc260cb714de387e6d510');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"139c71e3ce6526b9","line_state":"picked","now":["slots L002 on_item e003e710ff0d","lines 139c71e3ce6526b9 picked 6f9c233a3791","scans pick-L002 - ce9a4fd599cb"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"87405a3b026a7bac","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'eba563abdabe14939a7e8b7ff342dd865743aac3c3103d6f7e5a790e487ec87f');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:14:00.000000+00:00', 'short', 'boss', '{"line":"71c4d664cdb13a14","note":"Not in its bin","now":["lines 71c4d664cdb13a14 short 254dee8ead0f","doubts 880d685e9fa8c550 - 61edab64bc21"]}', '0850727008f2f57a28557a3188d171a1163d765cedf3990909278842015c3f53');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:14:00.000000+00:00', 'doubted', 'boss', '{"doubt":"880d685e9fa8c550","doubt_kind":"missing","item":"ff2dccf1f29b96c9","words":"Not in its bin"}', '3df41f30b909c00f87ae07e4ee2e39bd2f276963f6df8ea2f049d3f720584e37');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 210da27bfcff"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"87405a3b026a7bac","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'f87e90bf15e693447456877b07b931c37dc58f375a191152b10a25018d555466');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - fe5a44126ea0"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"87405a3b026a7bac","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'e0c418b3ff616e556fa023bbf6ba68fc928effb8eece067803ad5f09a276e8e1');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - be138bdfb654"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"87405a3b026a7bac","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '87d59e644a5b895c5eb4f093fe66e3097f1e90df8241a281265b5dffcd03bee8');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '6131feed5ab4c970d44d95fe7f93319c077ec708712164b8d7de1c69eeea7b61');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:29:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '9594bb16cb6de40029abf1ce55d8c494e836d5c48dc7632eb48de88c4293cae4');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3e02203ccceeb0cc","reference":"D001-019","stay":"be68f09ec2afa0c1"},{"hold":"already_sold","line":"ce3e19e4e3ddcb64","reference":"W002-016","stay":null}],"now":["orders c8b68c9121159051 - 6eeb5e8d5524","lines 3e02203ccceeb0cc waiting a2a4ae840132","lines ce3e19e4e3ddcb64 unbound 87bb37b3c763"],"number":"B-38","order":"c8b68c9121159051"}', 'a66cfb3f09bda61bdc45772712d63dad5d4a466034a06ead998e196140ffc342');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:35:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"37be477a32ecbcfa","reference":"W001","stay":null}],"now":["orders 74e2b0873817c6c9 - fb77e06937a3","lines 37be477a32ecbcfa unbound cc9a3a51042d"],"number":"B-39","order":"74e2b0873817c6c9"}', 'c8d86b46ad622f4abb2b702c392c198fc8d671eaed6ae36271008e70a27c1844');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:38:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 1172d72ca97e1c80 open 691249b68e6b"],"stocktake":"1172d72ca97e1c80"}', '86aa7c57eccdd050aa78ee45f729806f01ddcd12e644fdd884f180d33b365d9f');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:45:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 168c8b41a966","slots S001 on_item e9c6216cedad","doubts f81246513eda1470 - 96713f659a7f"],"photo":null,"place":"B-1-1","stocktake":"1172d72ca97e1c80","unread":0}', 'b9a8d1fece6ff1504b5cc23a1c969fb4ea86e8eb0cfea094757d42c5d465ff9c');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:45:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f81246513eda1470","doubt_kind":"not_this","item":"215dcb143ed81e30","now":["slots S003 on_item ed823d52cc3a","slots S012 on_item 4121a3dacc0d","slots D010 on_item 64dff75cfc01"],"words":"A count found another thing on its card in B-1-1."}', '4f6c7771ddae3a7ed214371a4c16a06767db42a9c64c34346efe59f0022ac6cf');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:53:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 99c384f7b84d","slots S011 on_item a6a0cd819c65","slots S013 on_item 9a7b531f294f"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"1172d72ca97e1c80","unread":0}', '77d0aa5f5c36318d1aeb7d481223e8f5c566aafbc6c5a3f648564e949a9c97dc');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:59:00.000000+00:00', 'finding resolved', 'boss', '{"after":162,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 7e10792c1300","resolutions 1172d72ca97e1c80.elsewhere-S012 - 80f933e1c771"],"reason":"","stocktake":"1172d72ca97e1c80","sure":false}', '2fe5ba913d96a17fa61163b15fe2696412d5fae73f6951fa8c9e1f026e538246');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:02:00.000000+00:00', 'finding resolved', 'boss', '{"after":163,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 1172d72ca97e1c80.unknown-Q0771 - 6f08129bd0e6"],"reason":"A neighbour''s","stocktake":"1172d72ca97e1c80","sure":false}', 'c99b16c49b7073ee7d170a0dbd52aaa7bf8b25956baac3b26e79a93fbcacf5c1');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:05:00.000000+00:00', 'finding resolved', 'boss', '{"after":164,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item f04a4eb1617f","resolutions 1172d72ca97e1c80.missing-S008 - c07b8ce8b4cb"],"reason":"","stocktake":"1172d72ca97e1c80","sure":false}', 'bd12b0dfebb1ce049fc2588b78dd1d74f93a7a9eba121f2575091ccf75a43fa6');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:08:00.000000+00:00', 'finding reopened', 'boss', '{"after":165,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 1172d72ca97e1c80.missing-S008 - -"],"stocktake":"1172d72ca97e1c80"}', 'fec894f0838c11a8487402035311e31941cc9bad32cf5e18e6bf3b271420b724');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:11:00.000000+00:00', 'doubted', 'boss', '{"doubt":"75707a8c7fc1f63e","doubt_kind":"missing","item":"45bfbe1a8ba39b46","now":["doubts 75707a8c7fc1f63e - b8d4e449215a","stocktakes 1172d72ca97e1c80 closed db689fbb7687"],"words":"a count of section:S did not find it"}', '86b1d3b7fb7dabcd595d0beba12609c65fb68a2f0897f3c7016595fc8f6f375d');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:11:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"1172d72ca97e1c80"}', 'f0e192575ba4a94cce1f857597061d0e3960ea7b4de43caa92b440b2024550d5');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:14:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 953e73a2c1e9b7fd open d1f27829d6e2"],"stocktake":"953e73a2c1e9b7fd"}', 'aa9a0c61bd3f70f1b2b8256191b8ad892157de8ff7e1f4b3e67fed07d7473eea');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:21:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - af6fdd0e8927","slots L003 on_item 5961067fa6af","slots L004 on_item 41e1f80fb761","slots L005 on_item 98ea5bba83b3","slots L007 on_item 2f9719225cc3"],"photo":null,"place":"C-1-1","stocktake":"953e73a2c1e9b7fd","unread":0}', '80c9395227fc6d0b5d47427504ca2e21803b3e876b20df173be2795752f4392e');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:24:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 8b8ef563943e5c95 - 8a1c079ec4fb"]}', '92e146f64d7a0eb9eb24d2ccfca077920afcefb34ef470c0c2544965dcf0b24b');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:24:00.000000+00:00', 'doubted', 'boss', '{"doubt":"8b8ef563943e5c95","doubt_kind":"missing","item":"8ba14678adf71dce","now":["resolutions 953e73a2c1e9b7fd.missing-L008 - 93fafadaece7"],"words":"a count did not find it"}', 'e07b3030c659896e3776227cc4e1a592a4f7a4429bc9838f8df6fbb7e811c25a');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:27:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays a52e55c9eaf2e93c withdrawn 87dc41a7d817","slots L009 due 821cc144d722","resolutions 953e73a2c1e9b7fd.missing-L009 - efbddc57c43b"],"reason":"Nowhere to be found","stay":"a52e55c9eaf2e93c"}', 'd2d559e6789ee4d961cf2747c0d899ff9d27471ad30b768e088299e9f3bbf654');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:27:00.000000+00:00', 'finding resolved', 'boss', '{"after":173,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"953e73a2c1e9b7fd","sure":false}', '57a9856ec608e9642b2fa5fe2ec44047fd42c7ed155a50b72cf71aad8756094a');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:30:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 687fd2e1fb242fc5 open c530c6a9e8d1"],"sample":{"bins":["A-1-3"],"chosen":"blind","of":3},"stocktake":"687fd2e1fb242fc5"}', '6d6bd4b5095b845ead12c4efa7fc1de38e362c40ffa78d5b3cbfc8dc3ebcb855');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:33:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 4f627eb97a178726 open 216dd26b6d84"],"stocktake":"4f627eb97a178726"}', '6fdb2f80feec4b638bd0bd77911d68f9a351bc50ceaf0071c1a10962002e51df');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:36:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 4f627eb97a178726 cancelled df85ee61dcf7"],"stocktake":"4f627eb97a178726"}', 'b4043804fbab896c5b36c92fe088752e4695ec388785f1b000cac3661b2d1baa');
INSERT INTO public.lines VALUES (15, '7b843bcc7b969c84', 'b43b9779dfa88434', 1, 'D009-01B', 'Rear derailleur 9', '', '76c41f4871a77c2f', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'a55c02749d8d8cf0', '0d1f714a7709452f', 1, 'D003-01U', 'Bell with a crown', '', '43338f7b5f880eae', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '23dfada9a7cbcaf5', 'a4140052e68a8d95', 1, 'D005-01E', 'Rear derailleur 5', '', '61e6198016aceb9c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, 'ad167871a0db21b4', 'a4140052e68a8d95', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'b82e931ecc7978bc', '083f7c86a29846b6', 1, 'D006-016', 'Rear derailleur 6', '', '08a5c7eb9cecfb1b', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '72e93a9e70e8e309', '083f7c86a29846b6', 2, 'D007-01R', 'Rear derailleur 7', '', '79959a7f8b17458c', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'aaf7682ec13a65d7', '824e62e3e118e2a0', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '57a78ef2d1010b3c', '4141e7da9846ff13', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '3718ee810df01239', '10dbe8915069281b', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '25c264387325ef1d', 'a8298ef2db650da9', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'bc6f697b6ca6baac', '9557c5d418f5ed8e', 1, 'W005-01B', 'Bell with a crown', '', '7f11d59b5b499d76', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '36910f9e1365e109', '4730a3b5751dab29', 1, 'L007-014', 'Dynamo lamp 7', '', '55e8c8a8dfae052f', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'b8854098adf0836a', '70ac20b572762aaf', 1, 'L005-01K', 'Dynamo lamp 5', '', '9aa7470924baf96a', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'cdcbbd6d591f3ce9', 'b9cd61c5141fb581', 1, 'W006-013', 'Front wheel 6', '', '56a735910e58a39e', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'ef215d7ed7deaabf', '7b188e83d24bea66', 1, 'L012-01S', 'Dynamo lamp 12', '', 'a491355737dbc6f8', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'd86c67655a89acc4', '9739a788baebacf7', 1, 'S012-01O', '', '', 'f850ef46d1c4feb0', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, 'e8dd7d0e0d1edb9a', 'cd07b3c9835a8827', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, 'b923528021fb5d1a', '8ca93d3f6e53f624', 1, 'W001-01E', 'Front wheel 1', '', '04f0c71735ffcc7f', 'released', '94719855d9c6877f', '8f7091bdf637ab4b', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '83c12035b28b4277', '8ca93d3f6e53f624', 2, 'W002-016', 'Front wheel 2', '', '0e920e273cca8980', 'released', '94719855d9c6877f', '8f7091bdf637ab4b', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, '38241f87865b061f', 'd62432eab438e99a', 2, 'S003-01W', 'Leather saddle 3', '', '99e12e00ff1c4585', 'picked', NULL, '8f7091bdf637ab4b', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, '77618061c7c631bc', 'd1315b723b348fce', 1, 'W007-01W', 'Front wheel 7', '', 'b27845f16646e105', 'released', '715e29c823936096', '8f7091bdf637ab4b', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '107e678fb897d35e', 'd76e9a6caeb77f8a', 1, 'S004-01O', 'Leather saddle 4', '', '20292282e7ef17e3', 'packed', '4a22e701f87e045c', '8f7091bdf637ab4b', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '54471590840f100c', 'fdefd78ae9507a04', 1, 'L006-01C', 'Dynamo lamp 6', '', 'fbab8449bf38084b', 'packed', 'fadda21cd7a7f909', '8f7091bdf637ab4b', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, '31352e999e683a20', 'd76e9a6caeb77f8a', 2, 'S005-01G', 'Leather saddle 5', '', '8050c8c17e8292dd', 'picked', NULL, '8f7091bdf637ab4b', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '94021623e1d44077', '4b6df1eff4ab28a5', 1, 'S007-01Z', 'Leather saddle 7', '', 'e4e0d91194be77ec', 'picked', NULL, '8f7091bdf637ab4b', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, 'd385bed7a1a49f56', 'd1315b723b348fce', 2, 'W008-01O', 'Front wheel 8', '', '7cc3508d520bb627', 'waiting', NULL, '8f7091bdf637ab4b', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, 'e5fa6bfd8f722022', 'fdefd78ae9507a04', 2, 'L011-010', 'Dynamo lamp 11', '', '7292c7455f36d95d', 'cancelled', NULL, '8f7091bdf637ab4b', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'd83a6de2e5810931', 'd62432eab438e99a', 1, 'S002-013', 'Leather saddle 2', '', '7d9db764ba12ca0a', 'packed', '14eefd64f7691a7b', '8f7091bdf637ab4b', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '83fcc405f79f1165', '63b1fbe0662fc2cd', 1, 'S006-018', 'Saddle with springs', '', 'ed4f6e557e41f80c', 'picked', NULL, '8f7091bdf637ab4b', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '1836e6659b732f84', '4b8aab3014e28d78', 1, 'D008-01J', 'Rear derailleur 8', '', '2f2c3da316f4f373', 'waiting', NULL, '87405a3b026a7bac', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '3e02203ccceeb0cc', 'c8b68c9121159051', 1, 'D001-019', 'Rear derailleur 1', '', 'be68f09ec2afa0c1', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, '47389a3f8a1acf9f', '75068887069755de', 1, 'L003-010', 'Dynamo lamp 3', '', 'b9a8366881532815', 'waiting', NULL, '87405a3b026a7bac', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '139c71e3ce6526b9', '828d0a22f9492158', 1, 'L002-017', 'Dynamo lamp 2', '', '4ec84cab90bb1dec', 'picked', NULL, '87405a3b026a7bac', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '71c4d664cdb13a14', 'fccd620d2c7d5981', 1, 'L004-01S', 'Dynamo lamp 4', '', '754e4ba8d721b6d7', 'short', NULL, '87405a3b026a7bac', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'ce3e19e4e3ddcb64', 'c8b68c9121159051', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, '37be477a32ecbcfa', '74e2b0873817c6c9', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '1172d72ca97e1c80', 'B-1-1', '2026-03-02T15:45:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '1172d72ca97e1c80', 'B-1-2', '2026-03-02T15:53:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '953e73a2c1e9b7fd', 'C-1-1', '2026-03-02T16:21:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '828d0a22f9492158', 'B-05', 'fair', '2026-03-02T11:40:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (5, '75068887069755de', 'B-06', 'fair', '2026-03-02T11:43:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (6, 'fccd620d2c7d5981', 'B-07', 'fair', '2026-03-02T11:46:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (7, '70ac20b572762aaf', 'B-08', 'fair', '2026-03-02T11:49:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (9, '63b1fbe0662fc2cd', 'B-13', 'fair', '2026-03-02T11:55:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (10, '4730a3b5751dab29', 'B-17', 'fair', '2026-03-02T11:58:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (11, 'b43b9779dfa88434', 'B-18', 'fair', '2026-03-02T12:01:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (12, 'b9cd61c5141fb581', 'B-21', 'fair', '2026-03-02T12:04:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (15, '4b8aab3014e28d78', 'B-26', 'fair', '2026-03-02T12:13:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (16, '0d1f714a7709452f', 'B-30', 'fair', '2026-03-02T12:16:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (17, 'a4140052e68a8d95', 'B-31', 'fair', '2026-03-02T12:19:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (18, '083f7c86a29846b6', 'B-32', 'fair', '2026-03-02T12:22:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (19, '824e62e3e118e2a0', 'B-33', 'fair', '2026-03-02T12:28:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (20, '4141e7da9846ff13', 'B-34', 'fair', '2026-03-02T12:31:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (21, '10dbe8915069281b', 'B-35', 'fair', '2026-03-02T12:34:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (22, 'a8298ef2db650da9', 'B-36', 'fair', '2026-03-02T12:37:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (23, '9557c5d418f5ed8e', 'B-37', 'fair', '2026-03-02T12:40:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (24, '7b188e83d24bea66', 'Sale L012-01S', '', '2026-03-02T13:01:00.000000+00:00', 24, '2026-03-02T13:01:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true);
INSERT INTO public.orders VALUES (25, '9739a788baebacf7', 'F-1', '', '2026-03-02T13:07:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (26, 'cd07b3c9835a8827', 'F-2', '', '2026-03-02T13:07:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (1, '8ca93d3f6e53f624', 'B-01', 'fair', '2026-03-02T11:31:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (14, 'd1315b723b348fce', 'B-23', 'fair', '2026-03-02T12:10:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (13, '4b6df1eff4ab28a5', 'B-22', 'fair', '2026-03-02T12:07:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (3, 'd76e9a6caeb77f8a', 'B-04', 'fair', '2026-03-02T11:37:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '4a22e701f87e045c', '', '', false);
INSERT INTO public.orders VALUES (8, 'fdefd78ae9507a04', 'B-09', 'fair', '2026-03-02T11:52:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', 'fadda21cd7a7f909', '', '', false);
INSERT INTO public.orders VALUES (2, 'd62432eab438e99a', 'B-03', 'fair', '2026-03-02T11:34:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '14eefd64f7691a7b', '', '', false);
INSERT INTO public.orders VALUES (27, 'c8b68c9121159051', 'B-38', 'fair', '2026-03-02T15:32:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (28, '74e2b0873817c6c9', 'B-39', '', '2026-03-02T15:35:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false);
INSERT INTO public.parcels VALUES (1, '94719855d9c6877f', 'main', '8ca93d3f6e53f624', '2026-03-02T13:58:00.000000+00:00', 'closed', '2026-03-02T14:07:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '715e29c823936096', 'main', 'd1315b723b348fce', '2026-03-02T14:29:00.000000+00:00', 'closed', '2026-03-02T14:32:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '507a414580fd3f86', 'main', '4b6df1eff4ab28a5', '2026-03-02T14:35:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '4a22e701f87e045c', 'main', 'd76e9a6caeb77f8a', '2026-03-02T14:41:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, 'fadda21cd7a7f909', 'second', 'fdefd78ae9507a04', '2026-03-02T14:50:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, '14eefd64f7691a7b', 'main', 'd62432eab438e99a', '2026-03-02T14:59:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '1172d72ca97e1c80.elsewhere-S012', '1172d72ca97e1c80', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T15:59:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:45:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f850ef46d1c4feb0", "item": "df354f683f3d130d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "d86c67655a89acc4", "order": "9739a788baebacf7", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "f850ef46d1c4feb0", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T15:59:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f850ef46d1c4feb0", "item": "df354f683f3d130d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "d86c67655a89acc4", "order": "9739a788baebacf7", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "f850ef46d1c4feb0", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '1172d72ca97e1c80.unknown-Q0771', '1172d72ca97e1c80', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:02:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '953e73a2c1e9b7fd.missing-L008', '953e73a2c1e9b7fd', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:24:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2f2188d44d168824", "item": "8ba14678adf71dce", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2f2188d44d168824", "item": "8ba14678adf71dce", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["8b8ef563943e5c95"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '953e73a2c1e9b7fd.missing-L009', '953e73a2c1e9b7fd', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:27:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a52e55c9eaf2e93c", "item": "fd59d24f02acc0dc", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a52e55c9eaf2e93c", "item": "fd59d24f02acc0dc", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:27:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '8f7091bdf637ab4b', '2026-03-02T13:10:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '87405a3b026a7bac', '2026-03-02T15:08:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '1d38fd926d098a7d737993252381a2f5960dacac0ff3dcfa9bff7fe5fad47553', 'bin', '8f7091bdf637ab4b', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:13:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'c2e1f7bf9258834c8ad38339d5dcecad4cabd852202252ed54960248bd54396a', 'bin', '8f7091bdf637ab4b', 'W001', false, true, true, 'b923528021fb5d1a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "8ca93d3f6e53f624", "order_number": "B-01", "line": "b923528021fb5d1a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:16:00.000000+00:00', '["on_item", ["04f0c71735ffcc7f", "stored"], ["b923528021fb5d1a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', 'f4202e480dd4cca5e329de34fd14aaf54eed46d6a9d5045756df47c1507abb8d', 'bin', '8f7091bdf637ab4b', 'W002', false, true, true, '83c12035b28b4277', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "8ca93d3f6e53f624", "order_number": "B-01", "line": "83c12035b28b4277", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:19:00.000000+00:00', '["on_item", ["0e920e273cca8980", "stored"], ["83c12035b28b4277", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'd84a56aee4d4927d34840b281d02f73690190d4b9989edb7d1830b4f95daebf9', 'bin', '8f7091bdf637ab4b', 'S002', false, true, true, 'd83a6de2e5810931', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "d62432eab438e99a", "order_number": "B-03", "line": "d83a6de2e5810931", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:22:00.000000+00:00', '["on_item", ["7d9db764ba12ca0a", "stored"], ["d83a6de2e5810931", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '8638d94d1964a9718a0ee92c1702a25faf59cb1cb7bb4854ec709bdf4062fc07', 'bin', '8f7091bdf637ab4b', 'S003', false, true, true, '38241f87865b061f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "d62432eab438e99a", "order_number": "B-03", "line": "38241f87865b061f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:25:00.000000+00:00', '["on_item", ["99e12e00ff1c4585", "stored"], ["38241f87865b061f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'dbbe52628b45b7d813be6a08fa0b235c7d6793775c079b4dc6a517e3136b69fe', 'bin', '8f7091bdf637ab4b', 'S004', false, true, true, '107e678fb897d35e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "d76e9a6caeb77f8a", "order_number": "B-04", "line": "107e678fb897d35e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:28:00.000000+00:00', '["on_item", ["20292282e7ef17e3", "stored"], ["107e678fb897d35e", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '92948d7286cd31b7ef3035f01cad7ed47c3693db897ec90f31d9b58fa5fe8ca2', 'bin', '8f7091bdf637ab4b', 'S005', false, true, true, '31352e999e683a20', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "d76e9a6caeb77f8a", "order_number": "B-04", "line": "31352e999e683a20", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:31:00.000000+00:00', '["on_item", ["8050c8c17e8292dd", "stored"], ["31352e999e683a20", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '814440c637ae53954a665cbf43c793fca617cf21d5fe14b3b9456e3752e00842', 'bin', '8f7091bdf637ab4b', 'L006', false, true, true, '54471590840f100c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "fdefd78ae9507a04", "order_number": "B-09", "line": "54471590840f100c", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:34:00.000000+00:00', '["on_item", ["fbab8449bf38084b", "stored"], ["54471590840f100c", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '7bd2589dafb8dcc8ef0aa47428e4917ace2b6f168fb912bc27ea53de08dbec17', 'bin', '8f7091bdf637ab4b', 'L011', false, true, true, 'e5fa6bfd8f722022', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "fdefd78ae9507a04", "order_number": "B-09", "line": "e5fa6bfd8f722022", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:37:00.000000+00:00', '["on_item", ["7292c7455f36d95d", "stored"], ["e5fa6bfd8f722022", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'c2819fed28bace8f70e1db44b584f13fce2ef943fedfb546d97825a0565edc27', 'bin', '8f7091bdf637ab4b', 'S006', false, true, true, '83fcc405f79f1165', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "63b1fbe0662fc2cd", "order_number": "B-13", "line": "83fcc405f79f1165", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:40:00.000000+00:00', '["on_item", ["ed4f6e557e41f80c", "stored"], ["83fcc405f79f1165", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'ab6246609ed8d1fad9799d2349e03569baa110bddd606a1058c8dca80ad8fab3', 'bin', '8f7091bdf637ab4b', 'S007', false, true, true, '94021623e1d44077', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "4b6df1eff4ab28a5", "order_number": "B-22", "line": "94021623e1d44077", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:43:00.000000+00:00', '["on_item", ["e4e0d91194be77ec", "stored"], ["94021623e1d44077", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '1da772d46c2b87b60bc1ea58c6d168d58a8ce909e45adcf75a7731649fb01d41', 'bin', '8f7091bdf637ab4b', 'W007', false, true, true, '77618061c7c631bc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "d1315b723b348fce", "order_number": "B-23", "line": "77618061c7c631bc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:46:00.000000+00:00', '["on_item", ["b27845f16646e105", "stored"], ["77618061c7c631bc", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '17e13f0a56b6d7517af0008b1b5636de84a5afd3b9ef37fd1a98db00c2c75b4e', 'bin', '8f7091bdf637ab4b', 'W008', false, true, true, 'd385bed7a1a49f56', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "d1315b723b348fce", "order_number": "B-23", "line": "d385bed7a1a49f56", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:49:00.000000+00:00', '["on_item", ["7cc3508d520bb627", "stored"], ["d385bed7a1a49f56", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'd83a6de2e5810931', '94719855d9c6877f', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "d62432eab438e99a", "order_number": "B-03", "line": "d83a6de2e5810931", "line_state": "picked", "order_state": "picking", "parcel": "94719855d9c6877f", "parcel_state": "open", "released": []}', '', '2026-03-02T14:01:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'b923528021fb5d1a', '94719855d9c6877f', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "8ca93d3f6e53f624", "order_number": "B-01", "line": "b923528021fb5d1a", "line_state": "packed", "order_state": "picking", "parcel": "94719855d9c6877f", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:04:00.000000+00:00', '["on_item", ["04f0c71735ffcc7f", "stored"], ["b923528021fb5d1a", "packed", "94719855d9c6877f", []], ["94719855d9c6877f", "2026-03-02T13:58:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '83c12035b28b4277', '94719855d9c6877f', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "8ca93d3f6e53f624", "order_number": "B-01", "line": "83c12035b28b4277", "line_state": "released", "order_state": "released", "parcel": "94719855d9c6877f", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:07:00.000000+00:00', '["due", ["0e920e273cca8980", "shipped"], ["83c12035b28b4277", "released", "94719855d9c6877f", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'b923528021fb5d1a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "8ca93d3f6e53f624", "order_number": "B-01", "line": "b923528021fb5d1a", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '["tray", ["04f0c71735ffcc7f", "shipped"], ["b923528021fb5d1a", "released", "94719855d9c6877f", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '77618061c7c631bc', '715e29c823936096', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "d1315b723b348fce", "order_number": "B-23", "line": "77618061c7c631bc", "line_state": "packed", "order_state": "waiting", "parcel": "715e29c823936096", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:23:00.000000+00:00', '["on_item", ["b27845f16646e105", "stored"], ["77618061c7c631bc", "packed", "715e29c823936096", []], ["715e29c823936096", "2026-03-02T14:20:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '107e678fb897d35e', '4a22e701f87e045c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "d76e9a6caeb77f8a", "order_number": "B-04", "line": "107e678fb897d35e", "line_state": "packed", "order_state": "picking", "parcel": "4a22e701f87e045c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:44:00.000000+00:00', '["on_item", ["20292282e7ef17e3", "stored"], ["107e678fb897d35e", "packed", "4a22e701f87e045c", []], ["4a22e701f87e045c", "2026-03-02T14:41:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '54471590840f100c', 'fadda21cd7a7f909', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "fdefd78ae9507a04", "order_number": "B-09", "line": "54471590840f100c", "line_state": "packed", "order_state": "picking", "parcel": "fadda21cd7a7f909", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:53:00.000000+00:00', '["on_item", ["fbab8449bf38084b", "stored"], ["54471590840f100c", "packed", "fadda21cd7a7f909", []], ["fadda21cd7a7f909", "2026-03-02T14:50:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'd83a6de2e5810931', '14eefd64f7691a7b', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "d62432eab438e99a", "order_number": "B-03", "line": "d83a6de2e5810931", "line_state": "packed", "order_state": "picking", "parcel": "14eefd64f7691a7b", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:02:00.000000+00:00', '["on_item", ["7d9db764ba12ca0a", "stored"], ["d83a6de2e5810931", "packed", "14eefd64f7691a7b", []], ["14eefd64f7691a7b", "2026-03-02T14:59:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '988f4670644489f55750ca87784d7b1a62847953615611b3cb0416cdc120e7bd', 'bin', '87405a3b026a7bac', 'L002', false, true, true, '139c71e3ce6526b9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "828d0a22f9492158", "order_number": "B-05", "line": "139c71e3ce6526b9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:11:00.000000+00:00', '["on_item", ["4ec84cab90bb1dec", "stored"], ["139c71e3ce6526b9", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', 'c681be3382c0fe0ece69750836c463c23c80ddd1567a606de4c3a691a88546b7', 'bin', '87405a3b026a7bac', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:17:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', '0cbf76d9a8a6d56677786736b2088b9b2257c9fbeaa59efe0ba43c8c5dba296b', 'bin', '87405a3b026a7bac', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'bd89c1fb57c19f2731a0104493039762d88c3ab1b617f2291327ab35ec7e7a2f', 'bin', '87405a3b026a7bac', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:23:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:13:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:31:00.000000+00:00', NULL, 'bin', 'B-1-1', '8f7091bdf637ab4b', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:37:00.000000+00:00', NULL, 'bin', 'C-1-2', '8f7091bdf637ab4b', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:53:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:02:00.000000+00:00', '14eefd64f7691a7b', 'bin', 'B-1-1', '8f7091bdf637ab4b', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:49:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:40:00.000000+00:00', NULL, 'bin', 'B-1-1', '8f7091bdf637ab4b', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:43:00.000000+00:00', NULL, 'bin', 'B-1-1', '8f7091bdf637ab4b', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:11:00.000000+00:00', NULL, 'bin', 'C-1-1', '87405a3b026a7bac', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:07:00.000000+00:00', '94719855d9c6877f', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:23:00.000000+00:00', '715e29c823936096', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:44:00.000000+00:00', '4a22e701f87e045c', 'bin', 'B-1-1', '8f7091bdf637ab4b', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T14:53:00.000000+00:00', 'fadda21cd7a7f909', 'bin', 'C-1-1', '8f7091bdf637ab4b', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:45:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:45:00.000000+00:00', NULL, 'bin', 'B-1-1', '8f7091bdf637ab4b', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:21:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:45:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:53:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T15:59:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:21:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:21:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:21:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, 'be68f09ec2afa0c1', '2f75aea981fccd73', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '403566121cb4f48e', 'e8036d6a91819e6f', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '43338f7b5f880eae', '307afdfc9fd5fc62', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, '656679532c693464', '1f1218fbed813c7a', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, '61e6198016aceb9c', '30d7bd39275b7c33', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '08a5c7eb9cecfb1b', '1024d205d001a89f', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '79959a7f8b17458c', 'dd6e064dc95c847e', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '76c41f4871a77c2f', '6b2b69131fbac934', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, 'e95949374e949f28', '5ee184c2cf98da9b', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '0a2cd69a0e217909', '5eae9521b84d826d', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, '51954151a4be62bc', 'ea88cf899c0e304a', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '570568c209e316d8', '215dcb143ed81e30', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '7d9db764ba12ca0a', '7885fae365918f4f', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, '99e12e00ff1c4585', '8d91e97c11a08e85', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '20292282e7ef17e3', 'ce0d1ee39cf317b3', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, '8050c8c17e8292dd', '76f3b04bce6d2aa2', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, 'ed4f6e557e41f80c', '2a76779d98953a8d', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, 'e4e0d91194be77ec', '1ce492858c5a30c7', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '5a828ea768d9db27', '45bfbe1a8ba39b46', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, '0fafbccd3a37074a', '020ea31c2f959036', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, 'f850ef46d1c4feb0', 'df354f683f3d130d', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, 'a68ff0f10202d7b2', '1e191416d23fd78f', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '4ec84cab90bb1dec', '08af8be0e4e59a03', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, 'b9a8366881532815', '73d42fb9a7c6e5d2', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '754e4ba8d721b6d7', 'ff2dccf1f29b96c9', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '9aa7470924baf96a', 'd91b7c5afdd18dba', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, 'fbab8449bf38084b', '96ca39eda40846f0', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '55e8c8a8dfae052f', '640b6813da945d4e', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '2f2188d44d168824', '8ba14678adf71dce', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, '32c527872087a922', '43f9eb47a89a6b75', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, '7292c7455f36d95d', '5d5642702e20f4e3', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, 'a491355737dbc6f8', '3364a29c28477b72', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, 'b385351af3aba773', '42a7121b1b91ba5a', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '7f11d59b5b499d76', '4f2af8e656566bff', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, '56a735910e58a39e', 'ba80147f8e0777a6', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, '7cc3508d520bb627', '7cce1b4e2a3b8896', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'ddc3ceb17e06d7d6', 'b046c2da3141a867', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '57c0761a76907d0c', 'ab9009eec001deed', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '28f4d7ca6dd2c0e9', '23c14df67c1b37fa', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, 'cd2c5b2a4a188675', '3104d4cd491b53fd', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '27fc63fdad37c30e', '31d157c8af6f0a05', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'd28388cd31197449', '2350e6491c9c0763', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, 'bd90b4fe8a224435', 'b2ff118b49e26280', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '299a771b220795ed', '51762e0a7926adf3', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, '6d624fada91077fc', '51762e0a7926adf3', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, 'ecb8014acf544f50', '02b027b592429962', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T12:58:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '2f2c3da316f4f373', '02b027b592429962', 'D020', 1, '2026-03-02T12:58:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '04f0c71735ffcc7f', 'aa7ed6be78e03d22', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:07:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, '0e920e273cca8980', 'e0b6199b6b979817', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:07:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '2ce0a7100caae960', '80bef7d1e52c5ef1', 'W001', 2, '2026-03-02T14:13:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, 'b27845f16646e105', '9d4970e1fb39e4be', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:32:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, 'a52e55c9eaf2e93c', 'fd59d24f02acc0dc', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:27:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '1172d72ca97e1c80', 'section:S', 'Spring', '2026-03-02T15:38:00.000000+00:00', 158, 'closed', '2026-03-02T16:11:00.000000+00:00', '{"stocktake": "1172d72ca97e1c80", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:38:00+00:00", "closed": "2026-03-02T16:11:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T15:59:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:02:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '953e73a2c1e9b7fd', 'section:L', 'Spring', '2026-03-02T16:14:00.000000+00:00', 168, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '687fd2e1fb242fc5', 'section:D', '', '2026-03-02T16:30:00.000000+00:00', 175, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-3"]}');
INSERT INTO public.stocktakes VALUES (4, '4f627eb97a178726', 'tray', 'Too late today', '2026-03-02T16:33:00.000000+00:00', 176, 'cancelled', '2026-03-02T16:36:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '8f7091bdf637ab4b', 1, 'd83a6de2e5810931', 'B-1-1');
INSERT INTO public.stops VALUES (2, '8f7091bdf637ab4b', 2, '38241f87865b061f', 'B-1-1');
INSERT INTO public.stops VALUES (3, '8f7091bdf637ab4b', 3, '107e678fb897d35e', 'B-1-1');
INSERT INTO public.stops VALUES (4, '8f7091bdf637ab4b', 4, '31352e999e683a20', 'B-1-1');
INSERT INTO public.stops VALUES (5, '8f7091bdf637ab4b', 5, '83fcc405f79f1165', 'B-1-1');
INSERT INTO public.stops VALUES (6, '8f7091bdf637ab4b', 6, '94021623e1d44077', 'B-1-1');
INSERT INTO public.stops VALUES (7, '8f7091bdf637ab4b', 7, 'b923528021fb5d1a', 'D-1-1');
INSERT INTO public.stops VALUES (8, '8f7091bdf637ab4b', 8, '83c12035b28b4277', 'D-1-1');
INSERT INTO public.stops VALUES (9, '8f7091bdf637ab4b', 9, '77618061c7c631bc', 'D-1-1');
INSERT INTO public.stops VALUES (10, '8f7091bdf637ab4b', 10, 'd385bed7a1a49f56', 'D-1-1');
INSERT INTO public.stops VALUES (11, '8f7091bdf637ab4b', 11, '54471590840f100c', 'C-1-1');
INSERT INTO public.stops VALUES (12, '8f7091bdf637ab4b', 12, 'e5fa6bfd8f722022', 'C-1-2');
INSERT INTO public.stops VALUES (13, '87405a3b026a7bac', 1, '1836e6659b732f84', 'A-1-2');
INSERT INTO public.stops VALUES (14, '87405a3b026a7bac', 2, '139c71e3ce6526b9', 'C-1-1');
INSERT INTO public.stops VALUES (15, '87405a3b026a7bac', 3, '47389a3f8a1acf9f', 'C-1-1');
INSERT INTO public.stops VALUES (16, '87405a3b026a7bac', 4, '71c4d664cdb13a14', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 50, true);
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
