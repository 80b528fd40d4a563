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
CREATE TABLE public.changed_orders (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    load character varying(64) NOT NULL,
    "order" character varying(64) NOT NULL,
    at character varying(32) NOT NULL,
    was text NOT NULL
);
CREATE SEQUENCE public.changed_orders_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.changed_orders_n_seq OWNED BY public.changed_orders.n;
CREATE TABLE public.channels (
    n bigint NOT NULL,
    name character varying(100) NOT NULL,
    statuses text NOT NULL,
    complete boolean DEFAULT false NOT NULL
);
CREATE SEQUENCE public.channels_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.channels_n_seq OWNED BY public.channels.n;
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
    notes text NOT NULL,
    photo character varying(64),
    kept_for text DEFAULT ''::text NOT NULL,
    kept_until character varying(32),
    away text DEFAULT ''::text NOT NULL,
    away_since character varying(32),
    packing text DEFAULT ''::text NOT NULL
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
CREATE TABLE public.listings (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    item character varying(64) NOT NULL,
    channel text NOT NULL,
    listing text NOT NULL,
    line character varying(64),
    since character varying(32) NOT NULL,
    ended character varying(32)
);
CREATE SEQUENCE public.listings_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.listings_n_seq OWNED BY public.listings.n;
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
    collected boolean DEFAULT false NOT NULL,
    status text DEFAULT ''::text NOT NULL,
    load character varying(64)
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
    handed character varying(32),
    carrier text DEFAULT ''::text NOT NULL,
    handed_by text DEFAULT ''::text NOT NULL,
    collected_by text DEFAULT ''::text NOT NULL,
    later boolean DEFAULT false NOT NULL
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
CREATE TABLE public.returns (
    n bigint NOT NULL,
    id character varying(64) NOT NULL,
    "order" character varying(64),
    lines text NOT NULL,
    why text NOT NULL,
    until character varying(32),
    state character varying(24) NOT NULL,
    opened character varying(32) NOT NULL,
    arrived character varying(32),
    checked character varying(32),
    checks text NOT NULL
);
CREATE SEQUENCE public.returns_n_seq
    START WITH 1
    INCREMENT BY 1
    NO MINVALUE
    NO MAXVALUE
    CACHE 1;
ALTER SEQUENCE public.returns_n_seq OWNED BY public.returns.n;
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
    undated boolean DEFAULT false NOT NULL,
    rehung_from text DEFAULT ''::text NOT NULL
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
ALTER TABLE ONLY public.changed_orders ALTER COLUMN n SET DEFAULT nextval('public.changed_orders_n_seq'::regclass);
ALTER TABLE ONLY public.channels ALTER COLUMN n SET DEFAULT nextval('public.channels_n_seq'::regclass);
ALTER TABLE ONLY public.doubts ALTER COLUMN n SET DEFAULT nextval('public.doubts_n_seq'::regclass);
ALTER TABLE ONLY public.head ALTER COLUMN one SET DEFAULT nextval('public.head_one_seq'::regclass);
ALTER TABLE ONLY public.items ALTER COLUMN n SET DEFAULT nextval('public.items_n_seq'::regclass);
ALTER TABLE ONLY public.labels ALTER COLUMN n SET DEFAULT nextval('public.labels_n_seq'::regclass);
ALTER TABLE ONLY public.lines ALTER COLUMN n SET DEFAULT nextval('public.lines_n_seq'::regclass);
ALTER TABLE ONLY public.listings ALTER COLUMN n SET DEFAULT nextval('public.listings_n_seq'::regclass);
ALTER TABLE ONLY public.looks ALTER COLUMN n SET DEFAULT nextval('public.looks_n_seq'::regclass);
ALTER TABLE ONLY public.mappings ALTER COLUMN n SET DEFAULT nextval('public.mappings_n_seq'::regclass);
ALTER TABLE ONLY public.orders ALTER COLUMN n SET DEFAULT nextval('public.orders_n_seq'::regclass);
ALTER TABLE ONLY public.parcels ALTER COLUMN n SET DEFAULT nextval('public.parcels_n_seq'::regclass);
ALTER TABLE ONLY public.photos ALTER COLUMN n SET DEFAULT nextval('public.photos_n_seq'::regclass);
ALTER TABLE ONLY public.racks ALTER COLUMN n SET DEFAULT nextval('public.racks_n_seq'::regclass);
ALTER TABLE ONLY public.resolutions ALTER COLUMN n SET DEFAULT nextval('public.resolutions_n_seq'::regclass);
ALTER TABLE ONLY public.returns ALTER COLUMN n SET DEFAULT nextval('public.returns_n_seq'::regclass);
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stocktakes ALTER COLUMN n SET DEFAULT nextval('public.stocktakes_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, 'aea870892f2d37f8387d7737d2d5a2a0fdce96a628ed6090fa5151addbf7accc', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$uMiB99LfH4mO2lmjP7697g$hxr3mk3R6OgbZUeaiV2ZypC1tsImPbxa1/eca2SxuzY', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '151471dba6ca63fd04e1a8f011bcaaeb8499de7d110d8169cb708ae5d2634c39', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'c00dc4ebc8b9a1900d7a4fb60ac07a596e09e3fb6146a7e69e601f231349bdaf', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'e68c18cdb21820d960b54721c798123eeb4856e76f94bfaec3424ea241e6ac30', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'bf51d142cd26629fbdbbf2fbe6fb7d7514994d488f45d4272bb57072c37b1aaa', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/e87df385b7212bef', '{"id": "e87df385b7212bef", "item": "8ab8bdd82d88fc91", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "packing": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '6873f21fa8ed1f5f', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', '4ba16129970a52fe', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"32bab69d87a35c13": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"32bab69d87a35c13": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}}');
INSERT INTO public.changed_orders VALUES (2, '35a0c2e218737ce4', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', 'a92abc04d11b65af', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"e475e9710dc6bb13": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"e475e9710dc6bb13": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]], "in_file": false}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, '59c928d7a63c884c', 'bd1a6e0f8860795e', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '889c5cc7007841f4', '5bd300affe240a90', 'missing', 'Not in its bin', '2026-03-02T16:17:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '635ca6f7985f5c02', '87b13f31f39649ba', 'not_this', 'Came back: to be checked.', '2026-03-02T16:50:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, 'a2a8fbc865921d13', '045fae1b8db198c9', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T17:15:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '54d81e6e899e738a', 'b552965586f727c1', 'missing', 'a count of section:S did not find it', '2026-03-02T17:41:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (6, '2b35a45f0847fbe7', '3905b121659b9ccb', 'missing', 'a count did not find it', '2026-03-02T17:54:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 217, '95d996dbc8f9e9f9c01c390e7e83469fffeff4e8601a1112ab91de7a1ae5397f', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0, "closing": {"weekdays": [], "dates": []}}', 'be152f931c43fd0e');
INSERT INTO public.items VALUES (3, 'afe87fd9249d3715', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (4, '01357dbaf93cfd88', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (5, 'afb0d9b8c5751a7a', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (6, '5906325a696da9de', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (7, 'ac07b33e79b27270', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (8, '7502e402e9bf4f0b', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (9, '3fde8ca21d93f469', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (10, 'fa7633e6bb738900', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (11, '53d73d53c6be51ca', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (12, 'bad25feced770471', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (14, '4d1ddf8c2a91de82', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (15, 'a13cc23ea53edf7f', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (16, 'ce10c6485eef0f3c', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (17, 'd7a3caa66fa48dae', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (18, 'bd4384f7b10cabf4', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (19, 'ff11fae471db04b0', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (20, 'b552965586f727c1', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (21, 'c47332fca9543bd0', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (22, '8e4aaa48dc4fa395', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (23, '63912cc1369cb9d3', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (24, '0606a0ba27a43f2a', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (25, 'd2334eb998adeca3', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (26, 'b4aa3789e57a0f02', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (27, '88a2d26b624691c2', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (28, '5bd300affe240a90', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (29, 'b661832ca5fbc954', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (30, '5427998fb461c92f', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (31, 'bd1a6e0f8860795e', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (32, '3905b121659b9ccb', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (33, '48770c292f2f1b88', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (34, 'f36d58b5016e5e57', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (35, '83670af3840381f6', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (36, 'c4d4b86127dac34a', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (37, 'a9b2a55b04aaebea', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (38, '87b13f31f39649ba', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (39, '0df1bb65a262803c', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (40, 'df8e12f5ccb37782', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (41, '07e18eaf17825343', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (42, 'beb8a2fa0f061397', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (43, '8a19bea9d9744f75', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (44, '5b884d38194cdbe4', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (45, 'b975a583f13a0d3f', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (46, '27429caffb84551a', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (49, '8ab8bdd82d88fc91', 'Brass bell', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (2, '3da01b2b6ea8c814', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL, 'Coil the cable');
INSERT INTO public.items VALUES (1, 'e69faf626a70c9ac', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (13, '045fae1b8db198c9', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (50, 'f0f10ecab99480f4', 'Carbide lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (51, '40308710c6fe5d9d', 'Rear lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (48, '024eb8992297bc5f', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL, '');
INSERT INTO public.items VALUES (47, '69e5e9edbfefc86f', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00', '');
INSERT INTO public.items VALUES (52, 'b32f41e80cdca463', 'Rear wheel', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '4aa9bfaab39e8e45', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items e69faf626a70c9ac - 3d88dea3da56","slots D001 on_item e5405bc28ff8","stays 9ce58cdaf50cb255 stored ce7fecf09b94","listings d3c3cdc794e24a8b - ec1125ef2cc5"],"stay":"9ce58cdaf50cb255","title":"Rear derailleur 1","turn":1}', '206fa3ebd9c8d1bc604826f1a6f0874218c1eb661738a3c6599cea6863a07ac1');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 3da01b2b6ea8c814 - 64287fc41d53","slots D002 on_item 4f79f524f247","stays fa2cd0bb922b689e stored 7dae830d27a7","listings bb13eec03a78ff1c - c4f68e236e64"],"stay":"fa2cd0bb922b689e","title":"Rear derailleur 2","turn":1}', 'e2b102cd33ebaf006ec330bf264bda316da32c1d30e38969e93df621c0e06e1b');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items afe87fd9249d3715 - bb0fb50690bb","slots D003 on_item 6de523ac8b4d","stays 678a9c9f453e8e87 stored 77cb15bb017a","listings 7c317a0584648062 - af61ba8517ba"],"stay":"678a9c9f453e8e87","title":"Rear derailleur 3","turn":1}', 'e4be9f7566011fa276f3fba838cbd8487f78d9cf264eb07a67e5fc34e5441cab');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 01357dbaf93cfd88 - 5bdccd307929","slots D004 on_item ec423998da46","stays dc89391f209b6330 stored 7819912933f5","listings e1b4c4fc18d3151e - bceb376d11a5"],"stay":"dc89391f209b6330","title":"Rear derailleur 4","turn":1}', '489c515110859f8f79459b513a11af2c3e910082778061079203ad0c9402d64c');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items afb0d9b8c5751a7a - dcfcb7ea43c0","slots D005 on_item 91ad3faf88d6","stays f9a0aaecb94ff7ab stored c67997d9df50","listings 31d600c3ebe69c45 - a16e55a09a05"],"stay":"f9a0aaecb94ff7ab","title":"Rear derailleur 5","turn":1}', '3af97644d5cbe5bebdb7a99599baf3455349e6554beb904adbc70f60c40ebf04');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings ef3c5176b797f2a2 - fcc489daa90e"],"stay":"a54dc93fc78a991c"}', '53004a3f858667ef28fc3585441dc5178574ce0d2ca8e4a6e9b349cde55469a7');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 5906325a696da9de - c20c5e691b9e","slots D006 on_item 1fadb568d6a5","stays 1d9d4967e869116a stored ade5aada139d","listings 540bc4ad790a8eab - 393cd49d0e59"],"stay":"1d9d4967e869116a","title":"Rear derailleur 6","turn":1}', 'f055fca9007129af13e8b5fb25d4c2a06f757cbc95f86475bfa193f4da3443f0');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items ac07b33e79b27270 - 08841067d5b4","slots D007 on_item 536077e3b728","stays ca2770be8b09a314 stored ed6db65871ee","listings cc963aca0e66defb - 8c45eaaaf187"],"stay":"ca2770be8b09a314","title":"Rear derailleur 7","turn":1}', '5edf8fad848a43a35dbe73d67c82451214bc209ca8f3544f0b31b2fedee9a6e6');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 7502e402e9bf4f0b - 7751087d2364","slots D008 on_item facb453cba22","stays 5fd2a3bc7f2fab70 stored e243d8a7112f","listings 8e0d22107c777c19 - a38e9f4e85cd"],"stay":"5fd2a3bc7f2fab70","title":"Rear derailleur 8","turn":1}', 'd7867b0e101e31c89fc0c16e1f111a8951aca5c3f72ffd30bbbfeb3923512fe7');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 3fde8ca21d93f469 - b8dce235940b","slots D009 on_item 7434bf04ccf2","stays dd6f6760abc1e1b3 stored ecbed0d87ed1","listings 8eec58360c0a1d32 - 6a37506403b6"],"stay":"dd6f6760abc1e1b3","title":"Rear derailleur 9","turn":1}', '6a22d1ee17e5ed8aff842a9a3074891348bab6eedb100b847bf2139370f66a9a');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items fa7633e6bb738900 - ad88d3c247fa","slots D010 on_item 1f8fd3ebaf8b","stays b5e06127acd4acde stored 91696dd35c4e","listings 37bbe2205c88558f - 120b9cd29ad2"],"stay":"b5e06127acd4acde","title":"Rear derailleur 10","turn":1}', '4f378115999a3c7e79766131f3c664b3c2e5300794ff500ddbd1856908d06deb');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 53d73d53c6be51ca - 8f1e7a495094","slots D011 on_item d451255e38b7","stays 0508a15769e767f4 stored 303b9f9a7deb","listings d673427921f02aa8 - b3f212eb2c94"],"stay":"0508a15769e767f4","title":"Rear derailleur 11","turn":1}', '158166862295cc3ab9e66c767fabc46e424bbad732758eab758d4a920df36ad5');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items bad25feced770471 - 62f707329600","slots D012 on_item bdbda5bb2b7a","stays 5ab93a9c8254afeb stored 0ef276540377","listings 513759a9344f3b47 - 1c7c04be2831"],"stay":"5ab93a9c8254afeb","title":"Rear derailleur 12","turn":1}', '93ea3edeb73e26b5217383247eb25904fa04260f2f2ea99ea6baceb6d74d2d64');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 045fae1b8db198c9 - 81c84b89915b","slots S001 on_item 76dcd853e3e0","stays 290ce9f0922b7d14 stored 383670f55d33","listings d2244b9f57a05d76 - 6b3f071f8319"],"stay":"290ce9f0922b7d14","title":"Leather saddle 1","turn":1}', '0442a21ee783a42dca9d48efe279ce2ef5f3a24e58557c31d5f5420d743bce68');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 4d1ddf8c2a91de82 - 550d9d81a2a8","slots S002 on_item 6fb94c47a50d","stays 62b5a36b7e2caf09 stored dbf7ec1e3d73","listings a3aad4797daac2b7 - 8c3b03f8f7ea"],"stay":"62b5a36b7e2caf09","title":"Leather saddle 2","turn":1}', '390739c8573205e433e53629487c4c76afb9e3651648f80299d3bbd139bdd720');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items a13cc23ea53edf7f - 0302a61df0b6","slots S003 on_item e00808332634","stays d6c40ef600f20eae stored 2c20b46c3916","listings cb926bd5b722a04e - dccb61484610"],"stay":"d6c40ef600f20eae","title":"Leather saddle 3","turn":1}', 'b2b51856360df55a5e910e64b20d12104518739254004f4a349548123b6ebe5c');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items ce10c6485eef0f3c - e568c6256fe8","slots S004 on_item db1aa8005467","stays f5a451219e721c2a stored 3cbe4a4f5140","listings 99141b6536f8c2bc - fa72b6e5b07f"],"stay":"f5a451219e721c2a","title":"Leather saddle 4","turn":1}', 'd64a1f294c7130a1f072c6ec7215a8954d4de004947b587bb1fe1bced3eca6ae');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items d7a3caa66fa48dae - eafc4628392f","slots S005 on_item ec548ef84f99","stays 8a28963e45f9c8b6 stored cd6dcc59f253","listings 6543495886293e56 - 457aee88542d"],"stay":"8a28963e45f9c8b6","title":"Leather saddle 5","turn":1}', 'd9b1f879d24b2af79e4f891dcc658ddb4df5bfacac55d3c46105ec212a445f05');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items bd4384f7b10cabf4 - dd551692d4de","slots S006 on_item dc9bc74eb63a","stays 989c0c26faea2a5b stored 7a2d32913363","listings 5ffc21358b320f72 - e1984f3624c0"],"stay":"989c0c26faea2a5b","title":"Leather saddle 6","turn":1}', 'e84c98488622282d133c0ca356832377635bb56d045f2a0e14f7d86de71e01c1');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items ff11fae471db04b0 - 4c4287026446","slots S007 on_item 075fd8b9fecf","stays b4101fa810058609 stored f25952db19c2","listings f79c761f4fe0e545 - 352cc66ff8ae"],"stay":"b4101fa810058609","title":"Leather saddle 7","turn":1}', '894dd749866861356a2ba9c700d4152f6fc3a774a7a276aff1cc4ed8b968c6b4');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items b552965586f727c1 - 217bdf1a99dd","slots S008 on_item 39fdb847a4bc","stays d76073c42e8f0b32 stored 56bb6236031c","listings ec4797ca3d7bf9fb - 6ee4398bd333"],"stay":"d76073c42e8f0b32","title":"Leather saddle 8","turn":1}', 'ce2791be480907ad6bb3ffc573ab68fa0865323c05f0634df3af24caa7fde335');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items c47332fca9543bd0 - f6c0e614ba4b","slots S009 on_item 62c79df275b3","stays 7c26a4096b89270c stored ffd6f58679c8","listings 6a1b0f0c34ab216d - dadfff7cf972"],"stay":"7c26a4096b89270c","title":"Leather saddle 9","turn":1}', 'b8c2b45934bde8c383cd14ac15352f487a41dbf81a40477a2b4ea2d4dfc87f48');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 8e4aaa48dc4fa395 - 8276017d5376","slots S010 on_item 1fd8d85fa1c4","stays f4887ac7a805b39f stored 19a0603d5bf7","listings 6a241ef28db0e0e4 - 5893739e4966"],"stay":"f4887ac7a805b39f","title":"Leather saddle 10","turn":1}', 'bf63def02fb18f372cd952933cf395102d55c3ecb7642472f98f7275532090a0');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 63912cc1369cb9d3 - 9c1579b461cb","slots S011 on_item e59577c4b2a7","stays d3b6dfb7682b101b stored 0d9d22e2d20f","listings f3e77d196153d269 - 02d39bb660b8"],"stay":"d3b6dfb7682b101b","title":"Leather saddle 11","turn":1}', '1fec6dbd49426ee738e8509021d5298e5f26d271735e961da224a4ec54d1b953');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 0606a0ba27a43f2a - a8d216bd6186","slots S012 on_item 9bae442e2436","stays abaabe11db2a4649 stored 7ec82c88fe82","listings 2f05707d3ffb41f7 - 7110cb028797"],"stay":"abaabe11db2a4649","title":"Leather saddle 12","turn":1}', '666fc401739ad8ce7ed9544832b1980d35ce4bf186fe2e3dabac5b805e4aef79');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items d2334eb998adeca3 - 7854289e51a1","slots L001 on_item 43c5cdfaa8e4","stays 8837e141c713e10b stored 6565e308fb51","listings 4c330437cef5b283 - fbbf149c7753"],"stay":"8837e141c713e10b","title":"Dynamo lamp 1","turn":1}', 'aec215b686086958ae4772e8d9ae40bfbda46d23f93e382f7d3958d41b9a96b7');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items b4aa3789e57a0f02 - b9394070a777","slots L002 on_item ea8e77c8b06f","stays e001389c4e83618a stored e7a4ef5ea184","listings 38b371d66620d59a - 90566e1b50dc"],"stay":"e001389c4e83618a","title":"Dynamo lamp 2","turn":1}', '3e05b308f693aa00ba9d72725a13b91af8097a07e679f6c0378c4f960bbdb3fd');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 88a2d26b624691c2 - d8be33c75260","slots L003 on_item c35e4c005cda","stays 45274f0779147c8b stored e450423316fe","listings d9ef51e38db19788 - af8a24016f5d"],"stay":"45274f0779147c8b","title":"Dynamo lamp 3","turn":1}', 'a61f002985270d0f8b0c78f8ad8523b086f7ecf40bac5d6d162a933235f5356d');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 5bd300affe240a90 - 9782e5c7c184","slots L004 on_item 70a88e4a366b","stays 4189e0cb2eb79d4e stored 998b0e8ee23e","listings 2546d8a979d37ee1 - ded74a92fbde"],"stay":"4189e0cb2eb79d4e","title":"Dynamo lamp 4","turn":1}', 'dc870cfb2adc9979bf5952f437afc8d537819b7041c7466d258b27103180a760');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items b661832ca5fbc954 - 84406011529e","slots L005 on_item 6261d94de1ef","stays db2c40f8e195ed25 stored c722ce1f7a5a","listings 4416ba315ec1815e - 5fd59e83010c"],"stay":"db2c40f8e195ed25","title":"Dynamo lamp 5","turn":1}', '238be5067f29c0f1b4f8146bb8a94a10c3670181985ba29910b0bf3ced7eae05');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 5427998fb461c92f - 588e7b41fdd0","slots L006 on_item b67b470f3637","stays b048bdfb56743074 stored 07cea366d93e","listings 92672479300239bd - 28f804071394"],"stay":"b048bdfb56743074","title":"Dynamo lamp 6","turn":1}', '4a912531a8309cf6df0bbf6a084e311879e9e093d3e06ef0374193bc9a79da4b');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items bd1a6e0f8860795e - 360065e19091","slots L007 on_item 767524982af4","stays c58a89ae25cf4426 stored 8126e9a24654","listings bcf2de79fd5af9a5 - 5fc7b07d4d3b"],"stay":"c58a89ae25cf4426","title":"Dynamo lamp 7","turn":1}', 'c27bb10528f550eb8ef7af4da851bcfc882468d7e5273f91910f3f6aa229a07a');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 3905b121659b9ccb - 197295dd1457","slots L008 on_item b3b2d23a98b7","stays 74db1b4172f13cf3 stored 9c7cfe4c94d4","listings a2a41c5a5d66bb2f - ffa6f4fab3b7"],"stay":"74db1b4172f13cf3","title":"Dynamo lamp 8","turn":1}', '22fbcb132efaa4fc08ca29dbf8b3d91bef066692f4d1badd1b877fbaa8fca32f');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 48770c292f2f1b88 - fb6841e15420","slots L009 on_item c3139144a3f8","stays a54dc93fc78a991c stored 66e62072fe43","listings 3386be1bd5322d75 - 8216731ed35c"],"stay":"a54dc93fc78a991c","title":"Dynamo lamp 9","turn":1}', '321600ffc6f342991b342b5ee965c8233cad3a77621957516ff5475b3396550b');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items f36d58b5016e5e57 - 8d0b05953e04","slots L010 on_item f8c13ae8aec4","stays fd44787b70eff878 stored a7f8385cbeba","listings 692c2a2d94040af4 - 09398881310a"],"stay":"fd44787b70eff878","title":"Dynamo lamp 10","turn":1}', '6c37f16ec5803b504d3479464e310a81a51d5722312f3b5bce0e1c6484ec4fdf');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 83670af3840381f6 - 81d7de908eab","slots L011 on_item 9d01c75c0f89","stays 2d8a70b2adf6e4d8 stored 814690b629fc","listings a3282fd7056d2418 - 86f24d02cba2"],"stay":"2d8a70b2adf6e4d8","title":"Dynamo lamp 11","turn":1}', 'd343d146965ac04694cfabebf096b554b8fbb1e750a0c5232e8bc19cd503a176');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items c4d4b86127dac34a - 564b3fdb28c7","slots L012 on_item 5373b19b101e","stays 39b0747708f8bebc stored c014010652d0","listings 7199e8b65a65ed2c - 96f52cc991fa"],"stay":"39b0747708f8bebc","title":"Dynamo lamp 12","turn":1}', 'b73865a78bf7d1f5c83dd0956d6c50c877dab57b3820e3ed8e61efc36e820485');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items a9b2a55b04aaebea - 25a69f892fae","slots W001 on_item 17dd342c2f6a","stays 9905fd7fb101189a stored 3c673723ae72","listings edf5f2ac70fd9b17 - 2af804e992a8"],"stay":"9905fd7fb101189a","title":"Front wheel 1","turn":1}', '2cf80bb71255c132a0c7d1a6e6cd4d1a9227f2543ea9cb0c1132f05a70a3ef91');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 87b13f31f39649ba - 278b63ebbf89","slots W002 on_item 7ebfb8df41ca","stays a3df6f04e4e79826 stored e15b1b77c3e0","listings 7822e109ee784567 - dff4044150ab"],"stay":"a3df6f04e4e79826","title":"Front wheel 2","turn":1}', 'c79cdd6b72b75996cf1ed80c4c2439f780c77ee8c421ac310cdccd5a43a45e65');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 0df1bb65a262803c - b627e9bb880b","slots W003 on_item f84a2674e962","stays 8e8c7a0a7ace7577 stored 7ef8a7522321","listings 178703b2d026bef8 - 1a9848b4860f"],"stay":"8e8c7a0a7ace7577","title":"Front wheel 3","turn":1}', '925bd4d95d0bb8d7b234de4268e0e7e69e928771de7e795e0aa932b485e44090');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items df8e12f5ccb37782 - e99b8bdfc486","slots W004 on_item f45ed94fd55a","stays f6f77b4045db3b3c stored 855758d168ef","listings 191fa6b800f51ff1 - a35ea852f4f1"],"stay":"f6f77b4045db3b3c","title":"Front wheel 4","turn":1}', '89f96656c7894fc80d3297df9e7905295edbc811f11e3a4d3b4fe9520fbb7d6f');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 07e18eaf17825343 - 7a6dd98de7ff","slots W005 on_item a1fdfb2c692e","stays 31d79bafd70fb586 stored 059b8dd2b738","listings 1fcaaa5745002728 - dfc908433a35"],"stay":"31d79bafd70fb586","title":"Front wheel 5","turn":1}', '8ac30413cee9a1ca698f6e4a47db9bce5f2bdb89df0444898794788db51f90ec');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items beb8a2fa0f061397 - 3633f2e2c3f7","slots W006 on_item 3dd6244f0bee","stays 260a3118ffd941b9 stored 2b9a24b4846a","listings cdf748062bd89ed1 - 827580d5edc3"],"stay":"260a3118ffd941b9","title":"Front wheel 6","turn":1}', '53fb256226c835b17b323cc8e503b64dfcb3d1208086f1a7ddf10cd6810c8165');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 8a19bea9d9744f75 - bd015898479a","slots W007 on_item d52463b699e2","stays fc64b7b9a81caf2d stored b734f5879695","listings 5899953bde996d27 - 32b6dcd28bb0"],"stay":"fc64b7b9a81caf2d","title":"Front wheel 7","turn":1}', '6114a7d9ac8313b0b5465961966860b9d9ca0f776ba5df5c0f2e53496fd7b628');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 5b884d38194cdbe4 - 743cdbaa9d5f","slots W008 on_item 2e167460fb16","stays a6414877868ed4da stored f2deec26b0da","listings 4be211d476dcedee - b8f63adf5508"],"stay":"a6414877868ed4da","title":"Front wheel 8","turn":1}', '8aec6d43c6528d43437651a5f47954f9f7a4a65b5cbfff663c5087ffc32abd0d');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items b975a583f13a0d3f - 36823b27403c","slots W009 on_item 597fc2f4b56e","stays 400ce93c0dbcac30 stored bce0fcabb717","listings cc3679fd0c9168bc - 8adcbd244a65"],"stay":"400ce93c0dbcac30","title":"Front wheel 9","turn":1}', 'e95cb98a62ce6500c424e0704f04e9427c8c73506902fd65313aa3c76443b559');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 27429caffb84551a - 1f9e171447d2","slots W010 on_item 7d0365c2d2de","stays 2bab9918c4c53d78 stored c56bf7900867","listings 43fd24db85acf48d - 9e317d24b348"],"stay":"2bab9918c4c53d78","title":"Front wheel 10","turn":1}', 'dfc095adb6da8a9075c4a55717f2e2cac25d1040184062adc53c84b060a84409');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 69e5e9edbfefc86f - e8fd21876999","slots W011 on_item d3a26b640d71","stays 3bc2aad92f05fce7 stored 90f79e908fe5","listings dc7c2a8b356ae491 - 8a3789634abb"],"stay":"3bc2aad92f05fce7","title":"Front wheel 11","turn":1}', 'b03d8b87038834d271f06d7a04f67973f564d4e19f3a18fc0aaf7b119922ca34');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 024eb8992297bc5f - 871eee0ea9b7","slots W012 on_item ac10bfb906d6","stays d025a9b8a2fa7ce3 stored c33d1e34c92b","listings f7a037f808cf0e33 - 03568ee1eeb0"],"stay":"d025a9b8a2fa7ce3","title":"Front wheel 12","turn":1}', 'cdc37ab9a71c37edbb3b0d82e1b530eda7a845bdf3af222f2e5962fe4b04954c');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 8ab8bdd82d88fc91 - 80b7cf2f8d2b","slots D013 on_item 69b6f1c92d5d","stays e87df385b7212bef stored e6d63e670263"],"stay":"e87df385b7212bef","title":"Brass bell","turn":1}', '5ed0e461d7ca9636632e72ae5cb5c7933c4620241372ac367b2841880204e2e4');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 3da01b2b6ea8c814 - 8df89da9e312"],"packing":"Coil the cable","stay":"fa2cd0bb922b689e"}', 'ed24a060118640650827e05685dca98f4684a0d56b52ea943fb053ba64749ce7');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays f4887ac7a805b39f withdrawn 86e9f3eeace8","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"f4887ac7a805b39f"}', 'c0b2da2a33a04b6cd3a371ab8e550fe782a88a9de1d50e638923a0be4398b631');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays f6f77b4045db3b3c withdrawn 8eeb6a4e0fe4","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"f6f77b4045db3b3c"}', '1e0dc1fb30c467e41fbbcd3a2d23248d2ee94f403fe73a8822fc08d2000f71eb');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"3ca407893503a158","now":["stays 7c26a4096b89270c moved e563d8075406","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 3ca407893503a158 stored 0d053fbedf39"],"stay":"7c26a4096b89270c","to":"S013"}', '7fe3aafc686640e5e60d7a6e9fc04aed18e81074e2517d77de22b0343de36b47');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items e69faf626a70c9ac - 0e0d16e81fd6"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"9ce58cdaf50cb255"}', 'e879b31edf67115bc62f7def9c85b9bc85c065525845c973d2c24e777a007749');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 045fae1b8db198c9 - 0bb17c58866a"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"290ce9f0922b7d14"}', '5d0c0de574e4404ccf4cf3db8608f65687a475eb7031589ade3846b3f53cb3cd');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items f0f10ecab99480f4 - d516a8e2f3de","slots L013 on_item 417a81be4bcb","stays 83d242875cd67839 stored 10b9c869cea0","items 40308710c6fe5d9d - 7c91d53ca33b","slots L014 on_item 26405b275a18","stays 87874030ef7a45b3 stored 8d1241bab750"],"stay":"83d242875cd67839","title":"Carbide lamp","turn":1}', 'd91ef1abe7ad964ca72cc6d625e25d7ca46e9fc5c691d6d55c6278a9f4310283');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"87874030ef7a45b3","title":"Rear lamp","turn":1}', '759af1bd30cf5d36c9cbb72766e3c3e96e5fcabb7af2c332dbf608622ac16b6b');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'af4570c39bad059a0075c64c19299afe7f07cd5b2a4d0dce6e52893602286651');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings d8cf5cff879b791a - 29853b6b3162"],"stay":"9905fd7fb101189a"}', 'e0e4a8072ba2f833237829a44fff690ce15ce3cf298f3aa0793915a3eee81969');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings 50b17ba2d6acd3bf - f515de3d4214"],"stay":"9905fd7fb101189a"}', '288f7b3784cfec45ab9d33361286569227848de74e1cc7e4a218f7f90b0576c9');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings 3de9ac00b389232e - f1a65d298c92"],"stay":"62b5a36b7e2caf09"}', '382859813c2f70b24346b89465cca2312f6740840608eff1521e14e34139c869');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings f6f16396fc735f5d - ea541bc8357a"],"stay":"62b5a36b7e2caf09"}', 'c4245a2257d8766721b3eaf54880a8bbebe3f25716a6e2500300b14c78b31a94');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings 93d7a2b55c7922e3 - fd4c2475897b"],"stay":"dd6f6760abc1e1b3"}', 'cb129335473eb10543166a072882604048e723544558983a45769f42b81f462b');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings ef8ab7f4454fa5fb - ca41bef3586a"],"stay":"dd6f6760abc1e1b3"}', '60c041b4c6cea395465698b5d18bcd1190e147f3f3f54a8e1402b30b32abd606');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings 10e3ecb7099c63ac - 3ffbe7f91f89"],"stay":"d025a9b8a2fa7ce3"}', 'd26f858fd147ba87920070a01f627da0cc31596d8742b035bdb6d4346404bf42');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings 2e7e3c7667ff9772 - 81e19dd9ec3d"],"stay":"d025a9b8a2fa7ce3"}', 'ae1eda31e2f98e2e87928d5ea421d7e935a19275386af53e7ec430d55f46828a');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 52e94db0f9941355 - 4709172b18ea"],"stay":"a54dc93fc78a991c"}', '1674db2e223ab8e8b394cda9e6785695c551f971ddc1268279977f14f37e01d9');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings e1b4c4fc18d3151e - 5c36aa6ff549","listings 3aa7eb571be0797f - 316f71dc5be3"],"stay":"dc89391f209b6330"}', '9e4a5a3ab63fd7a37d6bc28352246bba9260e172c625758557fa99bd46e9c02b');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 52e94db0f9941355 - 6b1ee77be37b"],"stay":"a54dc93fc78a991c"}', '53eab9c1dd8eecbf4bf24b0b47435f6cb9fb36167bed71427f1b0c0b6c082fd8');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 024eb8992297bc5f - 1693b3964197"],"stay":"d025a9b8a2fa7ce3","until":"2026-12-24T23:59:59+00:00"}', '39b7fc86a42475b9ce27adb1a4e056a0c8ed6e14351368c7bcbbb7174221b242');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 69e5e9edbfefc86f - a33f8ac1a3a6"],"stay":"3bc2aad92f05fce7"}', 'e22242a15712d037666312dade5b9670956e3095e119cdbb093e3ce3f006b70d');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","closing":{"dates":[],"weekdays":[]},"count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '555c084dd0d1f611fd7028afab3022e10fcc162d825d985e97e109b881a60c0e');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'df310fc8f7887cdfc60886b852f4034484bce2b66b90bbcb1a4e5c7e74070c5c');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'd3196a18b2b52f8f4d0365e9207aaa7ab4d3ec4032a9777185b4be107186987c');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'd2a46ba1fbcfcd3fdc6183abec39bedc62eb4b3d2dcc9f8bd4858080f511a959');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '644c2fb58a14f52df0c13d536469b06d3edb2d72794d1469921718f8fd032c4e');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"34277c79fad066cd","reference":"W001-01E","stay":"9905fd7fb101189a"},{"hold":null,"line":"2627d35eb3874406","reference":"W002-016","stay":"a3df6f04e4e79826"}],"now":["orders 9ba4b34c7f03214b - b5335c51b261","lines 34277c79fad066cd waiting 3afa7018de3c","lines 2627d35eb3874406 waiting 76fcb240dd8a"],"number":"B-01","order":"9ba4b34c7f03214b"}', 'fbcffe93ab7c8d00f15c3d87ac1d39f02316e75d01c8e76b469a1960e95d3a78');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fc8ad928dd3d8572","reference":"S002-013","stay":"62b5a36b7e2caf09"},{"hold":null,"line":"f3b68fdc77f12b33","reference":"S003-01W","stay":"d6c40ef600f20eae"}],"now":["orders 3f1f918e7a609c18 - 25cc3a4d34de","lines fc8ad928dd3d8572 waiting cd495eb24476","lines f3b68fdc77f12b33 waiting a65393be3976"],"number":"B-03","order":"3f1f918e7a609c18"}', 'ff5509ff0ef75ce053ecdcc9aab772a5bb2b8e15bc7f8f7f609aef2f21c27b3b');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b9f69ab6db7c0742","reference":"S004-01O","stay":"f5a451219e721c2a"},{"hold":null,"line":"adcb4a9f7c17f6cd","reference":"S005-01G","stay":"8a28963e45f9c8b6"}],"now":["orders 7f8448f4f775f524 - a108aeef3eca","lines b9f69ab6db7c0742 waiting 8c9aa171149c","lines adcb4a9f7c17f6cd waiting b95eeda27e27"],"number":"B-04","order":"7f8448f4f775f524"}', '76cdee86a356c5eef83e3281a3e78cfdd17e17a6ad46a2e4b5db801a32353943');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"b4aa3789e57a0f02","line":"38765dae6ddad6a8","listing":"fair-L002","now":["orders e39c90b73ff77de5 - d981158dc0a8","lines 38765dae6ddad6a8 waiting 2cc14d6856a2","listings ef4ec35d2278e2ca - 02644c5c6fb5"]}', 'bae4a54a3913a8313eab2293541331c23e6ba9dcd247f4063ee18fac57329dec');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"38765dae6ddad6a8","reference":"L002-017","stay":"e001389c4e83618a"}],"number":"B-05","order":"e39c90b73ff77de5"}', '1191f6048fe067676a216287a3575a88ae18fe8f000fccd8e08f8e3cab60f362');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"88a2d26b624691c2","line":"443a32ff1585f8a7","listing":"fair-L003","now":["orders 29593b7f6566069e - 611de1c38e9e","lines 443a32ff1585f8a7 waiting 1a356e5dbb88","listings f78cdd869fe20027 - 908adb48943d"]}', 'c98fc924508f3b4cd4ae1454536991e4360eb99f5248123bc0524574963dfc76');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"443a32ff1585f8a7","reference":"L003-010","stay":"45274f0779147c8b"}],"number":"B-06","order":"29593b7f6566069e"}', '06619e6f67e8032fb3cd213c3093630ca957797dc427cf2f8c049e5c33d1bfde');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a01ddad5813d0cb4","reference":"L004-01S","stay":"4189e0cb2eb79d4e"}],"now":["orders 93a157b92f0c76cd - 5e1d0ce5ef19","lines a01ddad5813d0cb4 waiting ff4afce20b5f"],"number":"B-07","order":"93a157b92f0c76cd"}', '93e152a61c0a928969aeb783eb2501176c88582d6c82d394f17ed44a268e9de2');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c83bfe9f6fe0a627","reference":"L005-01K","stay":"db2c40f8e195ed25"}],"now":["orders 1a6307c4cfeec797 - d328964456dd","lines c83bfe9f6fe0a627 waiting 41d7d6f64f4f"],"number":"B-08","order":"1a6307c4cfeec797"}', '9a7a79b6d3a976662e219ef5805368b821000f1970ac97772203feee1e5f35d3');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d040781a14eec6d3","reference":"L006-01C","stay":"b048bdfb56743074"},{"hold":null,"line":"16bc35e1181a95be","reference":"L011-010","stay":"2d8a70b2adf6e4d8"}],"now":["orders 475c98548c659f78 - 3ea4cd8a591a","lines d040781a14eec6d3 waiting b7d3ae091e34","lines 16bc35e1181a95be waiting f0f496f64f6d"],"number":"B-09","order":"475c98548c659f78"}', 'cdc13ae1a5e9fd411d0afbd04e349b4fbddb455abccd47b3a4ce19a031ed3c2e');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"635f8cd793f4b88b","reference":"S006-018","stay":"989c0c26faea2a5b"}],"now":["orders 6fcd8a3cec81a403 - 1701d108e829","lines 635f8cd793f4b88b waiting 86f32d84351b"],"number":"B-13","order":"6fcd8a3cec81a403"}', 'e17762dc65cdbb699662a9d4fdccbda8108df5f3e8972905a39376ea8a473c30');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a1eb3bafda88a35e","reference":"L007-014","stay":"c58a89ae25cf4426"}],"now":["orders 01be8bfe2905d09b - 51447b4ed24d","lines a1eb3bafda88a35e waiting 5ed861268bef"],"number":"B-17","order":"01be8bfe2905d09b"}', '55b38aa08e5464ef4f1073f06f3d7a3f7e95b989a643a7580842a64b72ef9238');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f11c6446fb148b9f","reference":"D009-01B","stay":"dd6f6760abc1e1b3"}],"now":["orders 8bd29b335a2d5a50 - 775fefa8aed3","lines f11c6446fb148b9f waiting a6943b3e5327"],"number":"B-18","order":"8bd29b335a2d5a50"}', '0542230de50b1c9d3c80525862bb4ffbe265a9d2717d3dbb70c1d9840a91f3e5');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"75d079e50e631c9a","reference":"W006-013","stay":"260a3118ffd941b9"}],"now":["orders a0fd835911d5133c - 1fa249ea1181","lines 75d079e50e631c9a waiting 89fb3bf39e3b"],"number":"B-21","order":"a0fd835911d5133c"}', 'e5e551a4d1093e9406835767754468594f6c2eecedfb5852687c0470d56212a9');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"02dfd175d798a3ef","reference":"S007-01Z","stay":"b4101fa810058609"}],"now":["orders 74b14f57feda85e8 - be59dbcd5022","lines 02dfd175d798a3ef waiting cdf266d3af06"],"number":"B-22","order":"74b14f57feda85e8"}', '6e26ed623c4a5a39044d712bc85c9acbc7bb2a9f5f04be983b4f36d90d8d2150');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4222aa6b13df2ef4","reference":"W007-01W","stay":"fc64b7b9a81caf2d"},{"hold":null,"line":"ea2ba2713442653e","reference":"W008-01O","stay":"a6414877868ed4da"}],"now":["orders e87e935d3b1a1f10 - e68a86ac83a1","lines 4222aa6b13df2ef4 waiting b99341a978cf","lines ea2ba2713442653e waiting 45fc7aa6edcc"],"number":"B-23","order":"e87e935d3b1a1f10"}', '81e18ef6ef5225c55a58e057594a52924bf674d3e69b205a2d30c09893be1344');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"392029f590ef9217","reference":"D008-01J","stay":"5fd2a3bc7f2fab70"}],"now":["orders 25b52d9cd30766eb - 9f2e525a8fd1","lines 392029f590ef9217 waiting f45b4eaad005"],"number":"B-26","order":"25b52d9cd30766eb"}', 'd00a25fbaa12f7926521d64bf95a77515914f1359830cf1711211df4b033e51a');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"55431438901269db","reference":"D003-01U","stay":"678a9c9f453e8e87"}],"now":["orders 794c4b76ee41c25b - 1572bcd86421","lines 55431438901269db waiting 249e3e573b22"],"number":"B-30","order":"794c4b76ee41c25b"}', '7420552134ab9e5e51df47ff021108d2787a1ebd2900668dfc9155c2dccdd828');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a163fda2da44d78b","reference":"D005-01E","stay":"f9a0aaecb94ff7ab"},{"hold":"unknown_code","line":"fbd44ac8889ce4ba","reference":"Z999","stay":null}],"now":["orders c74f4227f654c410 - 50fa93fe13fc","lines a163fda2da44d78b waiting 4ba5292a8fb7","lines fbd44ac8889ce4ba unbound bd41581d36b9"],"number":"B-31","order":"c74f4227f654c410"}', 'fd4c5f011c02e4c3c9a9b0dbdc541029eb51b492a11f958e4a8061979eda5565');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2995b0817db7f420","reference":"D006-016","stay":"1d9d4967e869116a"},{"hold":null,"line":"b3a6281a8b315206","reference":"D007-01R","stay":"ca2770be8b09a314"}],"now":["orders ab7949eeda6eec21 - 8403cc186d4a","lines 2995b0817db7f420 waiting 146041e39401","lines b3a6281a8b315206 waiting 1f22fd1c96fd"],"number":"B-32","order":"ab7949eeda6eec21"}', '3db09c3c2fa682ba2b6cd9d457175f655ed7b6ad82903abd159894b9b68d6934');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"b3a6281a8b315206","reference":"D007-01R","stay":"ca2770be8b09a314"}],"now":["lines b3a6281a8b315206 waiting e52f80a38030"],"number":"B-32","order":"ab7949eeda6eec21"}', '6a8b651b159766237eddde6b1f6599ca789eec293127a12aafcf7e83571057ba');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"5f723f9525528629","reference":"lamp","stay":null}],"now":["orders e486bc132bd337b3 - c0bc82da3438","lines 5f723f9525528629 unbound 2c4c6cb75140"],"number":"B-33","order":"e486bc132bd337b3"}', 'c05f2cc14ec46ff5b6a028f95e89f6bdd1a86a5913664ce658be83a5da6dd0d2');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"4504e50271867b0e","reference":"D006-016","stay":null}],"now":["orders 18cc66f7bfc7430e - 317760c96c16","lines 4504e50271867b0e unbound 51acb9e420a4"],"number":"B-34","order":"18cc66f7bfc7430e"}', '5541f422244eb24856c3ce9cb5390b99e28cc22d6f6d98bf0c36078a2cbbbc4d');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"18046625bdf121ec","reference":"W004-01J","stay":null}],"now":["orders 54b236c40ac34f01 - d3c3016208f0","lines 18046625bdf121ec unbound b176e9fa846d"],"number":"B-35","order":"54b236c40ac34f01"}', '11f04644733af4dad7f1a48029956267dad58cb9f35177f91ff88324d2987a02');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"10f7c9df68c41392","reference":"L015","stay":null}],"now":["orders 34cda339d14cf1f1 - 50fb9d62c972","lines 10f7c9df68c41392 unbound 7c996fef956d"],"number":"B-36","order":"34cda339d14cf1f1"}', '8290fe48b795dc409494c8a1302d29322010a688f1f671839e3b3d6dabfb4a43');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"afd61ff97f676bf5","reference":"W005-01B","stay":"31d79bafd70fb586"}],"now":["orders 826bbab4018447b2 - e41ceb3f850c","lines afd61ff97f676bf5 waiting ea4121d08232"],"number":"B-37","order":"826bbab4018447b2"}', '024762ed674bac1c1d9e419a8a856da1666b23c556c71125e783e8860a5bd3ac');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"afd61ff97f676bf5","now":["lines afd61ff97f676bf5 waiting 086ea2cdce0e"],"stay":"31d79bafd70fb586"}', '79b16f42a3111cf37806bfeebfe055240304659cb316229663c4d8763237d6e0');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"59c928d7a63c884c","doubt_kind":"not_this","item":"bd1a6e0f8860795e","now":["doubts 59c928d7a63c884c - 1949ee47ebcd","lines a1eb3bafda88a35e waiting f6eb4b4bb770"],"words":"Another lamp, by the photo"}', '59abb5ebc6186abfd9884bc75ba1b3e01162d1736ee2bc6790c2274344f858b1');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"a1eb3bafda88a35e","why":"Another lamp, by the photo"}', '86eef39631562ea9663358b52222b28c49a12184c31236af849501edb5bce2e2');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["c83bfe9f6fe0a627"],"now":["lines c83bfe9f6fe0a627 cancelled 47dccab9c64b"],"number":"B-08","order":"1a6307c4cfeec797"}', '887cf47d358344f76f899fc7bf9c337943ae5c46f05bd8558d779b7abec85f9c');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["75d079e50e631c9a"],"now":["lines 75d079e50e631c9a cancelled e60fefc42912"],"number":"B-21","order":"a0fd835911d5133c"}', '8eec6e11b30e0fe7d78d770db3875102b72fe15970db293a19cb7a275ec5ebcb');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"75d079e50e631c9a","now":["lines 75d079e50e631c9a waiting 89fb3bf39e3b"],"stay":"260a3118ffd941b9"}', 'a9745779ef1e1ca1a2be56158900f849c67841d6c0b7c6c8a74468e4ac4858ed');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"73c94c12557949f9","now":["stays 5fd2a3bc7f2fab70 moved 4cb9f5a2f094","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 73c94c12557949f9 stored 7e9ef95961fc","lines 392029f590ef9217 waiting 312d3b3fcd41"],"stay":"5fd2a3bc7f2fab70","to":"D020"}', 'de5b26a814b6b83b1950b8f41b945dfc8c78090e3a4fa1206ba77d5176f430ac');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"516474cc05890d9b","reference":"L012-01S","stay":"39b0747708f8bebc"}],"note":"Rings at noon","now":["orders e3c225477268dd95 - a181071693fc","lines 516474cc05890d9b waiting 09e6772922b2"],"number":"Sale L012-01S","order":"e3c225477268dd95"}', 'fafff1dad852a295bd071d1aabc1a99d624ca1edb035daa05fa23f54f00a994f');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:53:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', 'e01443be5ee66fa132802c6dcedd2d1dffbbb37dcc612ebc00d2a358e430724c');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"0111a0d8853d973e","reference":"S012-01O","stay":"abaabe11db2a4649"}],"now":["orders 3e4bfabee3e4a236 - 5a95fe440ed3","lines 0111a0d8853d973e waiting 0825f7df0595","orders a92abc04d11b65af - 270a47544fd9","lines e475e9710dc6bb13 unbound e82afc4e136b"],"number":"F-1","order":"3e4bfabee3e4a236"}', 'ad9817daec1ea64e5f9582b110c89b0344d45aba45f79aefd6d908ceacd7da62');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"e475e9710dc6bb13","reference":"Q7","stay":null}],"now":["orders 4ba16129970a52fe - 557b64c21c3d","lines 32bab69d87a35c13 unbound 209155d5b116"],"number":"F-2","order":"a92abc04d11b65af"}', '309e1fce395153543f632f67b3ce61a7c35812c6c8c0836977b699c791c2317c');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"32bab69d87a35c13","reference":"Q1","stay":null}],"now":["lines 32bab69d87a35c13 unbound a102b573ea1b"],"number":"F-3","order":"4ba16129970a52fe"}', '114652a5c2a1c4bb99cb44178ed7b0d0423ea6d63778c4439645d8dc95d0b39e');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:59:00.000000+00:00', 'held', 'boss', '{"line":"32bab69d87a35c13","now":["orders 4ba16129970a52fe - 7b8e86ec9804"],"why":"Its channel says that it is not paid or not cleared yet."}', 'e61f5800cb7b09e3c788fd0e66936a25a390295ea83bfbd7b842af1ff5d07881');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:59:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"d9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0","loaded":3}', '1b9b82c71e10f5131b5daf00594d6008681be442bfe58dbd31e565478c823d44');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:04:00.000000+00:00', 'order cleared', 'boss', '{"lines":["32bab69d87a35c13"],"now":["lines 32bab69d87a35c13 unbound 209155d5b116","orders 4ba16129970a52fe - 46adb8242c25","changed_orders 6873f21fa8ed1f5f - c2c1ae61b29b"],"number":"F-3","order":"4ba16129970a52fe"}', '5b06b27ef2282c030ed0d93727909b4441ccdb0c3126db13cbae4907c75475cb');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514","loaded":0,"now":["lines e475e9710dc6bb13 unbound 2c5358a79afa"]}', '9432176ddd83840745089555ea4f22b44136dd6d5dd8c336457c65d76e3a84c8');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:04:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"e475e9710dc6bb13","reference":"Q7","stay":null}],"now":["changed_orders 35a0c2e218737ce4 - 65d8d52d2614"],"number":"F-2","order":"a92abc04d11b65af"}', '6b56930955f2e7ea6854205a9612f16edde464e5acfc38b68559925b4b0d657e');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["34277c79fad066cd","2627d35eb3874406","fc8ad928dd3d8572","f3b68fdc77f12b33","b9f69ab6db7c0742","adcb4a9f7c17f6cd","d040781a14eec6d3","16bc35e1181a95be","635f8cd793f4b88b","02dfd175d798a3ef","4222aa6b13df2ef4","ea2ba2713442653e"],"now":["rounds fe01002bbd038cd4 open 4a8b1a7a01d1","lines fc8ad928dd3d8572 waiting dd03e64a43ce","lines f3b68fdc77f12b33 waiting 6e8d896228cb","lines b9f69ab6db7c0742 waiting 87f1a7a7129a","lines adcb4a9f7c17f6cd waiting 3d6a93378574","lines 635f8cd793f4b88b waiting 2188d70dd42e","lines 02dfd175d798a3ef waiting dbff7c2f9da8","lines 34277c79fad066cd waiting 0f23d6e5c9fa","lines 2627d35eb3874406 waiting 6bf329b79975","lines 4222aa6b13df2ef4 waiting 44bf1b15e925","lines ea2ba2713442653e waiting 1c6216d43e89","lines d040781a14eec6d3 waiting 85fb33669c61","lines 16bc35e1181a95be waiting ed5fc897328e"],"round":"fe01002bbd038cd4"}', '885c74f3d3fe75b7bd4d7fcc32d261205e077aae59ba6ad0c79acbdc815aa6a0');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item cd2728658608","scans free-D004 - d1ac1308e5f0"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '50164adc7601693bb3dd1a25fc3ab2d7519079c35baeb2d765f33aab6dec4544');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"34277c79fad066cd","line_state":"picked","now":["slots W001 on_item d0919a44458e","lines 34277c79fad066cd picked 48b470b07bbc","scans pick-W001 - d32e1e1c06a1"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'eefe7eba4f45956505209d3c42c882b7c350a1b315e9c138c8961c7444e0df50');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"2627d35eb3874406","line_state":"picked","now":["slots W002 on_item 8037ad8bf694","lines 2627d35eb3874406 picked 4322af8243bd","scans pick-W002 - 81233cbfba72"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '25e7a127fe076d64d4b7c4cc307d4eb08bb8ca12431d6e38d0a6dbf9404a6de1');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"fc8ad928dd3d8572","line_state":"picked","now":["slots S002 on_item b200bcf375db","lines fc8ad928dd3d8572 picked 20b4d25de41e","scans pick-S002 - 0c8e7176e6f8"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '2af0e9c14687da920cc6b8707e2c60693760d7a45b819397e35cefea5a30f4a9');
INSERT INTO public.ledger VALUES (195, '2026-03-02T16:59:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns ed52981cb894e232 expected a8ef9edc2ed7"],"order":null,"return":"ed52981cb894e232","until":null,"why":"Left at the door"}', '1acb9f1386eb97ca6e97a34abf6fdb5aaa88cdd5b21d3075eec6754fef0397df');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"f3b68fdc77f12b33","line_state":"picked","now":["slots S003 on_item ddf5da3f4a48","lines f3b68fdc77f12b33 picked 51088b24b446","scans pick-S003 - 395d88de9226"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '68adabc045a95f99e6a62878e71848bb038a567b36ef3abbf486483cccad729b');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"b9f69ab6db7c0742","line_state":"picked","now":["slots S004 on_item e076a6634ba8","lines b9f69ab6db7c0742 picked 1b118d933672","scans pick-S004 - feac99b887f3"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'd20c172ccf751710efd99f300ed6af978c0d0260bf846b55deb4d0e7148efce2');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"adcb4a9f7c17f6cd","line_state":"picked","now":["slots S005 on_item 9823b7b8049e","lines adcb4a9f7c17f6cd picked 41123982a183","scans pick-S005 - 2804526ec116"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '9b68727a5b3cb5bd11d1e6f6967f5e1315b1e380f490c5575ec205a4551f269d');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"d040781a14eec6d3","line_state":"picked","now":["slots L006 on_item 2f06c7d20daf","lines d040781a14eec6d3 picked a91e77bc068f","scans pick-L006 - 3bb619bc900a"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '2d2364e7668a77b4f87c50dc402d44d400e13ff5a72bd40d847f46ef7c779e05');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"16bc35e1181a95be","line_state":"picked","now":["slots L011 on_item 8880105ef0e9","lines 16bc35e1181a95be picked d590f27efe5b","scans pick-L011 - 7d087b36f079"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '6bb3c809840c71dc128fa76ab6f603455152a7ef5f6c1d097642d442df0eb195');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"635f8cd793f4b88b","line_state":"picked","now":["slots S006 on_item 6a6043df9af1","lines 635f8cd793f4b88b picked 0302355dbde4","scans pick-S006 - 2f6f8ac98947"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '70aa99146b7644e96d8abb76ac1b1f6137139070361e4607ab4aae20c956906c');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"02dfd175d798a3ef","line_state":"picked","now":["slots S007 on_item 49a0affa8ce1","lines 02dfd175d798a3ef picked 3c23d2b111b3","scans pick-S007 - f567995dc74e"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'ac35503c48c1413c60b6d3774dce428a68e476252c13c40000f2ababc564bb75');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"4222aa6b13df2ef4","line_state":"picked","now":["slots W007 on_item 4ad22db40455","lines 4222aa6b13df2ef4 picked 6ba3285b642f","scans pick-W007 - 2539257c691a"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '06b6178f59309db2d2d07f41327714fd63573dfd64cde682ce3c45d2bc48ba15');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"ea2ba2713442653e","line_state":"picked","now":["slots W008 on_item cfe6f2508e34","lines ea2ba2713442653e picked cdeefb774053","scans pick-W008 - 783dd0cbbf7a"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"fe01002bbd038cd4","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'f95388681c106cc2169987b79e7afed2090b9bfc95730d9d4e03a50401c3236c');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"ea2ba2713442653e","line_state":"waiting","now":["lines ea2ba2713442653e waiting 1c6216d43e89","slots W008 on_item b8fdf37a91ac"]}', 'b4ec49b139f97e45f66253fa5d73a394e06d20011e620110b59dae5ec9c11401');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds fe01002bbd038cd4 closed 6ba8ea4b38ab"],"round":"fe01002bbd038cd4"}', 'f22a37f355f55b8561c125a122b96f3d1e1d2f06407399b01e7860dd37fba51d');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4aa9bfaab39e8e45 open 3b6ebcfcd456","orders 9ba4b34c7f03214b - 93dbc656ccbe"],"orders":["9ba4b34c7f03214b"],"parcel":"4aa9bfaab39e8e45","table":"main"}', 'd4d711609a67cf5feff3d9fe36fa3221c21569702a84834a3b55d7e57257e74a');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"fc8ad928dd3d8572","line_state":"picked","now":["slots S002 on_item 4f8a6b0cd201","scans other-S002 - 0e53e60c3556"],"order_number":"B-03","parcel":"4aa9bfaab39e8e45","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '4bf7c7d0e19f258aa992a5606d558b037df859388fabdb9288a83fc0385925e9');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"34277c79fad066cd","line_state":"packed","now":["lines 34277c79fad066cd packed 0b518df51dc0","slots W001 on_item 49598cddaa55","scans pack-W001 - abcaaa8dcfde"],"order_number":"B-01","parcel":"4aa9bfaab39e8e45","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'a97c49b3d39badec570af8b79e5ccd0a9ccaa82a177b3dac608c9fef7aee0786');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 2627d35eb3874406 released d671edf8080a","slots W002 due 58a100e0f3e6","lines 34277c79fad066cd released 32ebbfe0e4da","stays 9905fd7fb101189a shipped 2015bd4808ff","slots W001 due 5484f39259f1","stays a3df6f04e4e79826 shipped d01ca91b74db","parcels 4aa9bfaab39e8e45 closed 0af967d83c50","orders 9ba4b34c7f03214b - b5335c51b261","scans pack-W002 - b176fba03b5d"],"orders":["9ba4b34c7f03214b"],"parcel":"4aa9bfaab39e8e45","released":["W001","W002"]}', '509462f172d6590ed57bbd19176db06814dd1163079422651021af87be1ae2ce');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"2627d35eb3874406","line_state":"released","order_number":"B-01","parcel":"4aa9bfaab39e8e45","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '35a0339399efc5e5f34a63dc71f1176ed1c28552a7a878ca0e8a170b9391f58b');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"34277c79fad066cd","line_state":"released","now":["slots W001 tray ccfbc2b4cd76","scans back-W001 - b7138b80f30f"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '9a986df354bc7fe1b79c215306aaaf32c684d4332ba8553db324ddb4c2e8a9f2');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items b32f41e80cdca463 - 7f598b4fb8a0","slots W001 on_item 4bac4e5a272f","stays 3cd9953c34b89751 stored 9794c47963e9"],"stay":"3cd9953c34b89751","title":"Rear wheel","turn":2}', '5ab47e72c7e9cb3077b74c3afe1b19927f5c49f381697a42e2f6648ad1953ac8');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 185eaa0598e5"],"parcel":"4aa9bfaab39e8e45"}', 'd2ed9d7e3def7100a99a39a8dc1bc12beea31e424ef4e44c87549e7cb01e90ea');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4424d2b452be1ecc open 0f3b639b8daa","orders e87e935d3b1a1f10 - 4af95ad21b4d"],"orders":["e87e935d3b1a1f10"],"parcel":"4424d2b452be1ecc","table":"main"}', 'de09fd23b5dd76f8aa9a053e8ccfa9485c9fad92c50ea83a25ea56fc40c8a22b');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"4222aa6b13df2ef4","line_state":"packed","now":["lines 4222aa6b13df2ef4 packed 157d3683634f","slots W007 on_item 537f16ebc1a8","scans pack-W007 - c05359c909a4"],"order_number":"B-23","parcel":"4424d2b452be1ecc","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'f875797a13555811b393baa868a83ecbd486e36cffde36e728ba87d6f9662c85');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 4222aa6b13df2ef4 released 677875ba2742","stays fc64b7b9a81caf2d shipped 1cd34c3877b9","slots W007 due 6efaee32a381","parcels 4424d2b452be1ecc closed ce3676f3e20a","orders e87e935d3b1a1f10 - e68a86ac83a1"],"orders":["e87e935d3b1a1f10"],"parcel":"4424d2b452be1ecc","released":["W007"]}', '11dbb6877a9c26984204a575cc41568435f4ad3dedd3a7f2e31b71f28b46344c');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 4222aa6b13df2ef4 packed bbd8792f83f5","stays fc64b7b9a81caf2d stored b734f5879695","slots W007 on_item 6cade6480f31","parcels 4424d2b452be1ecc open 46515c2a95f7","orders e87e935d3b1a1f10 - 4af95ad21b4d"],"orders":["e87e935d3b1a1f10"],"parcel":"4424d2b452be1ecc"}', 'd29c9245509b492b5bdf09260e3d35300494b629ae9d29d49f5282da445b713f');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 4222aa6b13df2ef4 released 677875ba2742","stays fc64b7b9a81caf2d shipped 714b8419f62a","slots W007 due 6efaee32a381","parcels 4424d2b452be1ecc closed 00888135cf44","orders e87e935d3b1a1f10 - e68a86ac83a1"],"orders":["e87e935d3b1a1f10"],"parcel":"4424d2b452be1ecc","released":["W007"]}', 'f08842913b0fbe4eb7a5552980b791e338dfddf808551275b12121f055f86bdb');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'left for later', 'boss', '{"now":["parcels 4424d2b452be1ecc closed 6770d84dc6aa"],"parcel":"4424d2b452be1ecc"}', '0651f1152388b1cc8968047b7c998e7841d3017857aede5e5fbb58cec56c57ec');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'hand-over', 'boss', '{"by":"label","carrier":"The red van","changed":true,"key":"gone","line":null,"now":["parcels 4aa9bfaab39e8e45 handed_over c38d1c0aca7a","scans gone - c8633e1c0661"],"order_number":"B-01","parcel":"4aa9bfaab39e8e45","parcel_state":"handed_over","reason":null,"verdict":"accepted"}', 'a9ea239167e42f0a7899ffa9e2965a0795e93a5e249e8e33e8aea4b47e0b4ca4');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels aa63cdac76ed6350 open 02aa4b7bf418","orders 74b14f57feda85e8 - 939433753d0b"],"orders":["74b14f57feda85e8"],"parcel":"aa63cdac76ed6350","table":"main"}', '244c0f638a4c1eb1b43b04413dbea5507f976bac3defdef88dfd4afa314f58dd');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels aa63cdac76ed6350 dropped 4681c359e189","orders 74b14f57feda85e8 - be59dbcd5022"],"parcel":"aa63cdac76ed6350"}', 'b4dab969e7e0454f2b7cb6d148f93c8338aeb0f206412cc7462a134efecf9b00');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels e92716b7855a9bb1 open 2a020a24ef3f","orders 7f8448f4f775f524 - 4326139159da"],"orders":["7f8448f4f775f524"],"parcel":"e92716b7855a9bb1","table":"main"}', 'f6e6a6cf4023d1b13c12d145188e0c43d57a10720df8aeda96e080b0ce35cba6');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"b9f69ab6db7c0742","line_state":"packed","now":["lines b9f69ab6db7c0742 packed 91ad2e02483d","slots S004 on_item daf3dda5a3d1","scans pack-S004 - c8f6a6ad4f76"],"order_number":"B-04","parcel":"e92716b7855a9bb1","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '0a04006c105616cfd3a13fe5331daf9330faa18c1b12612e44bde5744a72ec56');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels e92716b7855a9bb1 aside 58ad097ce7c2"],"parcel":"e92716b7855a9bb1"}', 'f00b0d17a288dd7ceaba6943f8c501767850310ad55f92af9c0fdf0e7a3d144b');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 47aecc3e746202f0 open 2aee68d9f19a","orders 475c98548c659f78 - 2b39df2896d6"],"orders":["475c98548c659f78"],"parcel":"47aecc3e746202f0","table":"second"}', 'e2e32ea345524b3f588a95f036b81e95c2a7db0abfd48acb308561a688fd3993');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"d040781a14eec6d3","line_state":"packed","now":["lines d040781a14eec6d3 packed a986668b4339","slots L006 on_item dfc350da40b2","scans pack-L006 - 7c581b289352"],"order_number":"B-09","parcel":"47aecc3e746202f0","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '9cf72afaa76742aa191c57b02ab07b7eb6ff1948a52de50387dd42c6a428e52d');
INSERT INTO public.ledger VALUES (172, '2026-03-02T15:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["d040781a14eec6d3","16bc35e1181a95be"],"now":["lines d040781a14eec6d3 packed 159ef230d87d","lines 16bc35e1181a95be cancelled 2457f901401b"],"number":"B-09","order":"475c98548c659f78"}', 'cb9b2127a5ab7a57297b96e2472f91070f6427807bd32b807172d7a618efa31a');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:02:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 505974dd057dcdad open d7e286cdd709","orders 3f1f918e7a609c18 - 7b0d3a4aaf33"],"orders":["3f1f918e7a609c18"],"parcel":"505974dd057dcdad","table":"main"}', '1196b9829691e25c3ce0dfa426a1bca5e2b9ac826f857751de24740b266b90ce');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:05:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"fc8ad928dd3d8572","line_state":"packed","now":["lines fc8ad928dd3d8572 packed c48667408137","slots S002 on_item f9ca6028f173","scans pack-S002 - 7aa836830beb"],"order_number":"B-03","parcel":"505974dd057dcdad","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'b3b5f89e9445b33963870c62e225550d2ceee7b0ae2f224bc8679b77638375fc');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:08:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"635f8cd793f4b88b","reference":"S006-018","stay":"989c0c26faea2a5b"}],"now":["lines 635f8cd793f4b88b picked 58f3c8494b3a"],"number":"B-13","order":"6fcd8a3cec81a403"}', 'd51fd645ebecb2b32fb42946140ab98f25e7db36c91e9a306171fdf56d768799');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:11:00.000000+00:00', 'round opened', 'boss', '{"lines":["38765dae6ddad6a8","443a32ff1585f8a7","a01ddad5813d0cb4","392029f590ef9217"],"now":["rounds f21942999640f2ea open 1f697ec818d3","lines 392029f590ef9217 waiting 23c8f0d71123","lines 38765dae6ddad6a8 waiting a47013d6b5fc","lines 443a32ff1585f8a7 waiting 06f4f771d45e","lines a01ddad5813d0cb4 waiting 86febeee6e0a"],"round":"f21942999640f2ea"}', '235418cd9b5d0e9c543cd055ff4356adf3c2748c1c3195675fc456584c8f1d0a');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"38765dae6ddad6a8","line_state":"picked","now":["slots L002 on_item d0c3f2257d1b","lines 38765dae6ddad6a8 picked 4114578865b9","scans pick-L002 - 3e3e6ccf4073"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"f21942999640f2ea","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'ca82c07ec221d4e745f4f7501fdee202f2e2591ff3170c53266ea18c5ee67e0c');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:17:00.000000+00:00', 'short', 'boss', '{"line":"a01ddad5813d0cb4","note":"Not in its bin","now":["lines a01ddad5813d0cb4 short be5d60d57cdc","doubts 889c5cc7007841f4 - c1ded45acd33"]}', '266a27525c413de70cdc45049b66c57120c1e5c6e0c7ac2ad0b88f96387cdbfa');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:17:00.000000+00:00', 'doubted', 'boss', '{"doubt":"889c5cc7007841f4","doubt_kind":"missing","item":"5bd300affe240a90","words":"Not in its bin"}', 'd8a7e7120a2174882ab6612d49094be85058a54b7599e43376a003a546a6994d');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - bcec6eec5370"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"f21942999640f2ea","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'ea1c82c9296582ef2adcca469a2d7ce9296bfccc6f46ba0e5a57ce76b625454a');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 8646bda34308"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"f21942999640f2ea","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '009302cad410e296a59466893937463f1753942b9861778bec1342926aab68e5');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - cb5a8f313f39"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"f21942999640f2ea","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '926429acdbaf4fdc57200ebc9763c2cc7fffd3c8ac6009a733f9d1227b24e090');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:29:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '99ba95af8df6c613614fc1ca0c04c570d078a88f3cc102edb2b0bc46f8256ef0');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:32:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '3e72b572413cea3eaf7cc4636d20f5b187eaffd2a00a218054a559ce007ae983');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"97f41d54d9122465","reference":"D001-019","stay":"9ce58cdaf50cb255"},{"hold":"already_sold","line":"37e0bbd334e8fe4f","reference":"W002-016","stay":null}],"now":["orders b86f60ca5a82e0de - 2c0fbd88bba2","lines 97f41d54d9122465 waiting 59788100d65c","lines 37e0bbd334e8fe4f unbound 2b81f7917e95"],"number":"B-38","order":"b86f60ca5a82e0de"}', '1dc2743588a0e995eca5df8b5e9c6d4993627732b2c4985977f59467e949f10e');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:38:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"cb6752fbe2f63b41","reference":"W001","stay":null}],"now":["orders eb6af4b5e446db9c - eadd4db012dd","lines cb6752fbe2f63b41 unbound cc4cfc68a9a6"],"number":"B-39","order":"eb6af4b5e446db9c"}', '388b9f5dcdb8d75d5dc343a96433adfefffb0c3b182c1a370af73ece6da53835');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:41:00.000000+00:00', 'return expected', 'boss', '{"lines":["34277c79fad066cd"],"now":["returns 11d9d7f1a4c246a9 expected 356f902ee693"],"order":"9ba4b34c7f03214b","return":"11d9d7f1a4c246a9","until":"2026-03-20T23:59:59+00:00","why":"Too large"}', 'e374c370012ad7bad5f45bea70ca524c795273946af3661d8110fa3835849208');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:44:00.000000+00:00', 'return expected', 'boss', '{"lines":["2627d35eb3874406"],"now":["returns 27fcbbd29ce740b2 expected 2baa5f84126b"],"order":"9ba4b34c7f03214b","return":"27fcbbd29ce740b2","until":null,"why":""}', 'cf11844932aef556941dbb714fb9a870e2ed1487107a9ca96512306e83327d30');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:47:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 27fcbbd29ce740b2 arrived 4eec1b562a3d"],"return":"27fcbbd29ce740b2"}', 'a2d4932a6bd83bc6fa3a952d3e629d3ca914d24d333f019bacaa39ac5da97c53');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:50:00.000000+00:00', 'returned', 'boss', '{"code":"D029","line":"2627d35eb3874406","now":["slots D029 on_item b9aacb6774bd","stays 92e9a71fbf3661d4 stored 01664953c42b","lines 2627d35eb3874406 returned ab32d0cca4aa","doubts 635ca6f7985f5c02 - 6ad5625792ca"],"stay":"92e9a71fbf3661d4","turn":1}', '4dac056474e5800639c386ba6bf709960142191d98b7f10fb952db6aa931ee1a');
INSERT INTO public.ledger VALUES (191, '2026-03-02T16:50:00.000000+00:00', 'doubted', 'boss', '{"doubt":"635ca6f7985f5c02","doubt_kind":"not_this","item":"87b13f31f39649ba","now":["returns 27fcbbd29ce740b2 checked afd04f2d4541"],"words":"Came back: to be checked."}', '6a9cd7ab6d45d5ab3ae8c695de9e5d833695be14fcabb277f03f5b7a282bc5cc');
INSERT INTO public.ledger VALUES (192, '2026-03-02T16:50:00.000000+00:00', 'return checked', 'boss', '{"condition":"check","line":"2627d35eb3874406","return":"27fcbbd29ce740b2"}', '93dce85320bf1119fd68e5a3b257664500953c68665ce8e2d94d0154c6b2aa33');
INSERT INTO public.ledger VALUES (193, '2026-03-02T16:53:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns 04d661c18fc9f0a6 expected e3ea5eb6734c"],"order":null,"return":"04d661c18fc9f0a6","until":null,"why":""}', '3c58c7cade0c9f42d0d2ad81dee34ef438deb544adf14e6c5baf96a3cd387e79');
INSERT INTO public.ledger VALUES (194, '2026-03-02T16:56:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 04d661c18fc9f0a6 arrived e309a70822c4"],"return":"04d661c18fc9f0a6"}', 'a4eed95c7ed18c52f56913af67c1eb1b79ebf41ee289dcb9a3eb1dbd244aacb0');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:02:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns ed52981cb894e232 arrived 9aba6ae8fafb"],"return":"ed52981cb894e232"}', 'c0d8d5faf89125cc06c0a0ae3a6d4b97bcb79f62ce8be342516da41c969f29dd');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:05:00.000000+00:00', 'return given up', 'boss', '{"never_ours":"stays","now":["returns ed52981cb894e232 given_up 3d03d8206dbd"],"return":"ed52981cb894e232"}', 'a771106382fad34c067cd74fdcd14f237f83ad19e4e5a3abf901b6e6944e1d2f');
INSERT INTO public.ledger VALUES (198, '2026-03-02T17:08:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes bd28ba9551caddaa open 19f89d2d26d4"],"stocktake":"bd28ba9551caddaa"}', 'fd83b137ec29bf8a924b4a0e7a6d494c5a0e52f445327564044ce26b7cf8ee59');
INSERT INTO public.ledger VALUES (199, '2026-03-02T17:15:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - cf340a4e1ac8","slots S001 on_item 964d1517a673","doubts a2a8fbc865921d13 - a93e0fe19fa7"],"photo":null,"place":"B-1-1","stocktake":"bd28ba9551caddaa","unread":0}', '55b81132859bbf0fbe6d0a31c79b8ed80185a57ae6934896b53686d2f5093e40');
INSERT INTO public.ledger VALUES (200, '2026-03-02T17:15:00.000000+00:00', 'doubted', 'boss', '{"doubt":"a2a8fbc865921d13","doubt_kind":"not_this","item":"045fae1b8db198c9","now":["slots S003 on_item 133defc02b33","slots S012 on_item f5381bd6bd19","slots D010 on_item d5ac88b828af"],"words":"A count found another thing on its card in B-1-1."}', '120f5f9fb14763ff2e86b823c32f7bbbbb78144955059bbc20f460433c477f89');
INSERT INTO public.ledger VALUES (201, '2026-03-02T17:23:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 9cc3b0815db9","slots S011 on_item b0b261e048f9","slots S013 on_item 039848ebf4af"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"bd28ba9551caddaa","unread":0}', 'ee283bea1415c298c156c160fd8025fb16d04330e7c45736ce84e056ac8c5fc5');
INSERT INTO public.ledger VALUES (202, '2026-03-02T17:29:00.000000+00:00', 'finding resolved', 'boss', '{"after":201,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 867949cc3e09","resolutions bd28ba9551caddaa.elsewhere-S012 - b3976ee518de"],"reason":"","stocktake":"bd28ba9551caddaa","sure":false}', '01f7f6f9f2dc4c0298f9133e520491b2ce1eac70d01d22e260a47a8b6973c9f3');
INSERT INTO public.ledger VALUES (203, '2026-03-02T17:32:00.000000+00:00', 'finding resolved', 'boss', '{"after":202,"finding":"unknown-Q0771","how":"ignore","now":["resolutions bd28ba9551caddaa.unknown-Q0771 - 6f9c92c343ed"],"reason":"A neighbour''s","stocktake":"bd28ba9551caddaa","sure":false}', '72b564a419ee8489fd385c3c1ed9a708fc02b7a92f128ea14059e243657946af');
INSERT INTO public.ledger VALUES (204, '2026-03-02T17:35:00.000000+00:00', 'finding resolved', 'boss', '{"after":203,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item dfcc12b7cd30","resolutions bd28ba9551caddaa.missing-S008 - b2ddb8776166"],"reason":"","stocktake":"bd28ba9551caddaa","sure":false}', 'd86f8df3c2a2ee930a3b913f34bd1d000b41bffe902632e99cae6386b6456697');
INSERT INTO public.ledger VALUES (205, '2026-03-02T17:38:00.000000+00:00', 'finding reopened', 'boss', '{"after":204,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions bd28ba9551caddaa.missing-S008 - -"],"stocktake":"bd28ba9551caddaa"}', 'b9dad5b0ce17691bcdfba27624058557fbf9a3dc87564768a081df3f9740876b');
INSERT INTO public.ledger VALUES (206, '2026-03-02T17:41:00.000000+00:00', 'doubted', 'boss', '{"doubt":"54d81e6e899e738a","doubt_kind":"missing","item":"b552965586f727c1","now":["doubts 54d81e6e899e738a - 7c8db232f839","stocktakes bd28ba9551caddaa closed 5f7df65bcfbb"],"words":"a count of section:S did not find it"}', '048d1ad7842cf3a2abfd1cf47b2aa76b872c15eb9f939f29e410f242f1a3b79e');
INSERT INTO public.ledger VALUES (207, '2026-03-02T17:41:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"bd28ba9551caddaa"}', '2718fe8a02adcddd96fee4b4e280ec9a7d6c2b4cfc49bcc6bf7debbad43083dc');
INSERT INTO public.ledger VALUES (208, '2026-03-02T17:44:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 73cf6f3ac58ebaec open 44b216e4a558"],"stocktake":"73cf6f3ac58ebaec"}', 'f30e198acdd61fc3c3554ae0ae6f32cdb6373f7a94854bb92c8624e77a3eaa5f');
INSERT INTO public.ledger VALUES (209, '2026-03-02T17:51:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - 7a72dbc1a1b5","slots L003 on_item e197f8cedb43","slots L004 on_item 79ee945ce7a8","slots L005 on_item a5216dbd75fb","slots L007 on_item 264bbe8ef33d"],"photo":null,"place":"C-1-1","stocktake":"73cf6f3ac58ebaec","unread":0}', '80badc0ad366ac2efcd3d7c65ed509337752f259c83b2beb2c1d10df5bd72149');
INSERT INTO public.ledger VALUES (210, '2026-03-02T17:54:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 2b35a45f0847fbe7 - d6fc08ad2560"]}', '5dc9f145936de1b000cf26f438d67389c09d1dec99abfe0d1f9947007c0d7a5e');
INSERT INTO public.ledger VALUES (211, '2026-03-02T17:54:00.000000+00:00', 'doubted', 'boss', '{"doubt":"2b35a45f0847fbe7","doubt_kind":"missing","item":"3905b121659b9ccb","now":["resolutions 73cf6f3ac58ebaec.missing-L008 - fea9cf4f00ab"],"words":"a count did not find it"}', '5c42870b05d3e7df29d95e52ad448e1c69587770b39298323c60232b3f93239c');
INSERT INTO public.ledger VALUES (212, '2026-03-02T17:54:00.000000+00:00', 'finding resolved', 'boss', '{"after":209,"finding":"missing-L008","how":"lost","reason":"","stocktake":"73cf6f3ac58ebaec","sure":false}', '9fbe4f25557a88f4fa4404178bb21cf96135d212bc5e5c271f800ec938016c56');
INSERT INTO public.ledger VALUES (213, '2026-03-02T17:57:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays a54dc93fc78a991c withdrawn 44ae3303758f","slots L009 due 821cc144d722","resolutions 73cf6f3ac58ebaec.missing-L009 - 1f8d5e6760ff"],"reason":"Nowhere to be found","stay":"a54dc93fc78a991c"}', 'ab672ee7a9a427253aa252cc31db36b67eee00dbf8567a7f4be90d858d41e654');
INSERT INTO public.ledger VALUES (214, '2026-03-02T17:57:00.000000+00:00', 'finding resolved', 'boss', '{"after":212,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"73cf6f3ac58ebaec","sure":false}', '10c90a130d5e75438fc0618656005d4bf92352433822cb8c8f5a9fc8594d7f1a');
INSERT INTO public.ledger VALUES (215, '2026-03-02T18:00:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 5bd64f55536045aa open ead6394cf6ba"],"sample":{"bins":["A-1-3"],"chosen":"blind","of":3},"stocktake":"5bd64f55536045aa"}', 'e51fda0c64aa5ecb17b76f8c8b1e81653490eb82e1769748a68b8a0b18421ee3');
INSERT INTO public.ledger VALUES (216, '2026-03-02T18:03:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 00c1666a7ffd836a open ed29ddf0115a"],"stocktake":"00c1666a7ffd836a"}', '69143e0b4f86ab9ebf514d8a7d4c9141b34a844d6ea9d1607e5b0ba3ac2dfc4b');
INSERT INTO public.ledger VALUES (217, '2026-03-02T18:06:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 00c1666a7ffd836a cancelled f2bf8b7f922c"],"stocktake":"00c1666a7ffd836a"}', '95d996dbc8f9e9f9c01c390e7e83469fffeff4e8601a1112ab91de7a1ae5397f');
INSERT INTO public.lines VALUES (15, 'f11c6446fb148b9f', '8bd29b335a2d5a50', 1, 'D009-01B', 'Rear derailleur 9', '', 'dd6f6760abc1e1b3', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '55431438901269db', '794c4b76ee41c25b', 1, 'D003-01U', 'Bell with a crown', '', '678a9c9f453e8e87', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, 'a163fda2da44d78b', 'c74f4227f654c410', 1, 'D005-01E', 'Rear derailleur 5', '', 'f9a0aaecb94ff7ab', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, 'fbd44ac8889ce4ba', 'c74f4227f654c410', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Z."]]');
INSERT INTO public.lines VALUES (24, '2995b0817db7f420', 'ab7949eeda6eec21', 1, 'D006-016', 'Rear derailleur 6', '', '1d9d4967e869116a', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'b3a6281a8b315206', 'ab7949eeda6eec21', 2, 'D007-01R', 'Rear derailleur 7', '', 'ca2770be8b09a314', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '5f723f9525528629', 'e486bc132bd337b3', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "This is not written like a reference."]]');
INSERT INTO public.lines VALUES (27, '4504e50271867b0e', '18cc66f7bfc7430e', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '18046625bdf121ec', '54b236c40ac34f01', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '10f7c9df68c41392', '34cda339d14cf1f1', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'afd61ff97f676bf5', '826bbab4018447b2', 1, 'W005-01B', 'Bell with a crown', '', '31d79bafd70fb586', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'a1eb3bafda88a35e', '01be8bfe2905d09b', 1, 'L007-014', 'Dynamo lamp 7', '', 'c58a89ae25cf4426', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'c83bfe9f6fe0a627', '1a6307c4cfeec797', 1, 'L005-01K', 'Dynamo lamp 5', '', 'db2c40f8e195ed25', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '75d079e50e631c9a', 'a0fd835911d5133c', 1, 'W006-013', 'Front wheel 6', '', '260a3118ffd941b9', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '516474cc05890d9b', 'e3c225477268dd95', 1, 'L012-01S', 'Dynamo lamp 12', '', '39b0747708f8bebc', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '0111a0d8853d973e', '3e4bfabee3e4a236', 1, 'S012-01O', '', '', 'abaabe11db2a4649', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '32bab69d87a35c13', '4ba16129970a52fe', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (33, 'e475e9710dc6bb13', 'a92abc04d11b65af', 1, 'Q7', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (19, 'ea2ba2713442653e', 'e87e935d3b1a1f10', 2, 'W008-01O', 'Front wheel 8', '', 'a6414877868ed4da', 'waiting', NULL, 'fe01002bbd038cd4', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (1, '34277c79fad066cd', '9ba4b34c7f03214b', 1, 'W001-01E', 'Front wheel 1', '', '9905fd7fb101189a', 'released', '4aa9bfaab39e8e45', 'fe01002bbd038cd4', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (18, '4222aa6b13df2ef4', 'e87e935d3b1a1f10', 1, 'W007-01W', 'Front wheel 7', '', 'fc64b7b9a81caf2d', 'released', '4424d2b452be1ecc', 'fe01002bbd038cd4', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, 'b9f69ab6db7c0742', '7f8448f4f775f524', 1, 'S004-01O', 'Leather saddle 4', '', 'f5a451219e721c2a', 'packed', 'e92716b7855a9bb1', 'fe01002bbd038cd4', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (4, 'f3b68fdc77f12b33', '3f1f918e7a609c18', 2, 'S003-01W', 'Leather saddle 3', '', 'd6c40ef600f20eae', 'picked', NULL, 'fe01002bbd038cd4', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (6, 'adcb4a9f7c17f6cd', '7f8448f4f775f524', 2, 'S005-01G', 'Leather saddle 5', '', '8a28963e45f9c8b6', 'picked', NULL, 'fe01002bbd038cd4', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '02dfd175d798a3ef', '74b14f57feda85e8', 1, 'S007-01Z', 'Leather saddle 7', '', 'b4101fa810058609', 'picked', NULL, 'fe01002bbd038cd4', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (11, 'd040781a14eec6d3', '475c98548c659f78', 1, 'L006-01C', 'Dynamo lamp 6', '', 'b048bdfb56743074', 'packed', '47aecc3e746202f0', 'fe01002bbd038cd4', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '16bc35e1181a95be', '475c98548c659f78', 2, 'L011-010', 'Dynamo lamp 11', '', '2d8a70b2adf6e4d8', 'cancelled', NULL, 'fe01002bbd038cd4', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'fc8ad928dd3d8572', '3f1f918e7a609c18', 1, 'S002-013', 'Leather saddle 2', '', '62b5a36b7e2caf09', 'packed', '505974dd057dcdad', 'fe01002bbd038cd4', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '635f8cd793f4b88b', '6fcd8a3cec81a403', 1, 'S006-018', 'Saddle with springs', '', '989c0c26faea2a5b', 'picked', NULL, 'fe01002bbd038cd4', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '392029f590ef9217', '25b52d9cd30766eb', 1, 'D008-01J', 'Rear derailleur 8', '', '73c94c12557949f9', 'waiting', NULL, 'f21942999640f2ea', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (37, 'cb6752fbe2f63b41', 'eb6af4b5e446db9c', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (8, '443a32ff1585f8a7', '29593b7f6566069e', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '45274f0779147c8b', 'waiting', NULL, 'f21942999640f2ea', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '2627d35eb3874406', '9ba4b34c7f03214b', 2, 'W002-016', 'Front wheel 2', '', 'a3df6f04e4e79826', 'returned', '4aa9bfaab39e8e45', 'fe01002bbd038cd4', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '38765dae6ddad6a8', 'e39c90b73ff77de5', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', 'e001389c4e83618a', 'picked', NULL, 'f21942999640f2ea', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, 'a01ddad5813d0cb4', '93a157b92f0c76cd', 1, 'L004-01S', 'Dynamo lamp 4', '', '4189e0cb2eb79d4e', 'short', NULL, 'f21942999640f2ea', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '97f41d54d9122465', 'b86f60ca5a82e0de', 1, 'D001-019', 'Rear derailleur 1', '', '9ce58cdaf50cb255', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (36, '37e0bbd334e8fe4f', 'b86f60ca5a82e0de', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.listings VALUES (1, 'd3c3cdc794e24a8b', 'e69faf626a70c9ac', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, 'bb13eec03a78ff1c', '3da01b2b6ea8c814', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, '7c317a0584648062', 'afe87fd9249d3715', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, '31d600c3ebe69c45', 'afb0d9b8c5751a7a', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, '540bc4ad790a8eab', '5906325a696da9de', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, 'cc963aca0e66defb', 'ac07b33e79b27270', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, '8e0d22107c777c19', '7502e402e9bf4f0b', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, '8eec58360c0a1d32', '3fde8ca21d93f469', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, '37bbe2205c88558f', 'fa7633e6bb738900', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, 'd673427921f02aa8', '53d73d53c6be51ca', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, '513759a9344f3b47', 'bad25feced770471', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, 'd2244b9f57a05d76', '045fae1b8db198c9', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, 'a3aad4797daac2b7', '4d1ddf8c2a91de82', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, 'cb926bd5b722a04e', 'a13cc23ea53edf7f', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, '99141b6536f8c2bc', 'ce10c6485eef0f3c', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, '6543495886293e56', 'd7a3caa66fa48dae', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, '5ffc21358b320f72', 'bd4384f7b10cabf4', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, 'f79c761f4fe0e545', 'ff11fae471db04b0', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, 'ec4797ca3d7bf9fb', 'b552965586f727c1', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, '6a1b0f0c34ab216d', 'c47332fca9543bd0', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, '6a241ef28db0e0e4', '8e4aaa48dc4fa395', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, 'f3e77d196153d269', '63912cc1369cb9d3', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, '2f05707d3ffb41f7', '0606a0ba27a43f2a', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, '4c330437cef5b283', 'd2334eb998adeca3', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '38b371d66620d59a', 'b4aa3789e57a0f02', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, 'd9ef51e38db19788', '88a2d26b624691c2', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, '2546d8a979d37ee1', '5bd300affe240a90', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, '4416ba315ec1815e', 'b661832ca5fbc954', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, '92672479300239bd', '5427998fb461c92f', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, 'bcf2de79fd5af9a5', 'bd1a6e0f8860795e', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, 'a2a41c5a5d66bb2f', '3905b121659b9ccb', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, '3386be1bd5322d75', '48770c292f2f1b88', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, '692c2a2d94040af4', 'f36d58b5016e5e57', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, 'a3282fd7056d2418', '83670af3840381f6', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, '7199e8b65a65ed2c', 'c4d4b86127dac34a', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, 'edf5f2ac70fd9b17', 'a9b2a55b04aaebea', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, '7822e109ee784567', '87b13f31f39649ba', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, '178703b2d026bef8', '0df1bb65a262803c', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, '191fa6b800f51ff1', 'df8e12f5ccb37782', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, '1fcaaa5745002728', '07e18eaf17825343', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, 'cdf748062bd89ed1', 'beb8a2fa0f061397', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, '5899953bde996d27', '8a19bea9d9744f75', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '4be211d476dcedee', '5b884d38194cdbe4', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, 'cc3679fd0c9168bc', 'b975a583f13a0d3f', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, '43fd24db85acf48d', '27429caffb84551a', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, 'dc7c2a8b356ae491', '69e5e9edbfefc86f', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, 'f7a037f808cf0e33', '024eb8992297bc5f', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, 'd8cf5cff879b791a', 'a9b2a55b04aaebea', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, '50b17ba2d6acd3bf', 'a9b2a55b04aaebea', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, '3de9ac00b389232e', '4d1ddf8c2a91de82', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, 'f6f16396fc735f5d', '4d1ddf8c2a91de82', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, '93d7a2b55c7922e3', '3fde8ca21d93f469', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, 'ef8ab7f4454fa5fb', '3fde8ca21d93f469', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, '10e3ecb7099c63ac', '024eb8992297bc5f', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, '2e7e3c7667ff9772', '024eb8992297bc5f', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, 'ef3c5176b797f2a2', '48770c292f2f1b88', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, 'e1b4c4fc18d3151e', '01357dbaf93cfd88', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '3aa7eb571be0797f', '01357dbaf93cfd88', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, '52e94db0f9941355', '48770c292f2f1b88', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, 'ef4ec35d2278e2ca', 'b4aa3789e57a0f02', 'fair', 'fair-L002', '38765dae6ddad6a8', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, 'f78cdd869fe20027', '88a2d26b624691c2', 'fair', 'fair-L003', '443a32ff1585f8a7', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'bd28ba9551caddaa', 'B-1-1', '2026-03-02T17:15:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'bd28ba9551caddaa', 'B-1-2', '2026-03-02T17:23:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '73cf6f3ac58ebaec', 'C-1-1', '2026-03-02T17:51:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'e39c90b73ff77de5', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '29593b7f6566069e', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, '93a157b92f0c76cd', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, '1a6307c4cfeec797', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, '6fcd8a3cec81a403', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, '01be8bfe2905d09b', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '8bd29b335a2d5a50', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, 'a0fd835911d5133c', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, '25b52d9cd30766eb', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, '794c4b76ee41c25b', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, 'c74f4227f654c410', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'ab7949eeda6eec21', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, 'e486bc132bd337b3', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '18cc66f7bfc7430e', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '54b236c40ac34f01', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '34cda339d14cf1f1', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '826bbab4018447b2', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, 'e3c225477268dd95', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, '3e4bfabee3e4a236', 'F-1', 'Fair', '2026-03-02T13:59:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (26, 'a92abc04d11b65af', 'F-2', 'Fair', '2026-03-02T13:59:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (27, '4ba16129970a52fe', 'F-3', 'Fair', '2026-03-02T13:59:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (1, '9ba4b34c7f03214b', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, 'e87e935d3b1a1f10', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '74b14f57feda85e8', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, '7f8448f4f775f524', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'e92716b7855a9bb1', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, '475c98548c659f78', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '47aecc3e746202f0', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '3f1f918e7a609c18', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '505974dd057dcdad', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, 'b86f60ca5a82e0de', 'B-38', 'fair', '2026-03-02T16:35:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, 'eb6af4b5e446db9c', 'B-39', '', '2026-03-02T16:38:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (2, '4424d2b452be1ecc', 'main', 'e87e935d3b1a1f10', '2026-03-02T15:26:00.000000+00:00', 'closed', '2026-03-02T15:29:00.000000+00:00', NULL, '', '', '', true);
INSERT INTO public.parcels VALUES (1, '4aa9bfaab39e8e45', 'main', '9ba4b34c7f03214b', '2026-03-02T14:55:00.000000+00:00', 'handed_over', '2026-03-02T15:04:00.000000+00:00', '2026-03-02T15:35:00.000000+00:00', 'The red van', 'boss', '', false);
INSERT INTO public.parcels VALUES (3, 'aa63cdac76ed6350', 'main', '74b14f57feda85e8', '2026-03-02T15:38:00.000000+00:00', 'dropped', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (4, 'e92716b7855a9bb1', 'main', '7f8448f4f775f524', '2026-03-02T15:44:00.000000+00:00', 'aside', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (5, '47aecc3e746202f0', 'second', '475c98548c659f78', '2026-03-02T15:53:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (6, '505974dd057dcdad', 'main', '3f1f918e7a609c18', '2026-03-02T16:02:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'bd28ba9551caddaa.elsewhere-S012', 'bd28ba9551caddaa', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T17:29:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T17:15:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "abaabe11db2a4649", "item": "0606a0ba27a43f2a", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0111a0d8853d973e", "order": "3e4bfabee3e4a236", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "abaabe11db2a4649", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T17:29:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "abaabe11db2a4649", "item": "0606a0ba27a43f2a", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0111a0d8853d973e", "order": "3e4bfabee3e4a236", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "abaabe11db2a4649", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'bd28ba9551caddaa.unknown-Q0771', 'bd28ba9551caddaa', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T17:32:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '73cf6f3ac58ebaec.missing-L008', '73cf6f3ac58ebaec', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:54:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "74db1b4172f13cf3", "item": "3905b121659b9ccb", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "74db1b4172f13cf3", "item": "3905b121659b9ccb", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["2b35a45f0847fbe7"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '73cf6f3ac58ebaec.missing-L009', '73cf6f3ac58ebaec', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:57:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a54dc93fc78a991c", "item": "48770c292f2f1b88", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "a54dc93fc78a991c", "item": "48770c292f2f1b88", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:57:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.returns VALUES (1, '11d9d7f1a4c246a9', '9ba4b34c7f03214b', '34277c79fad066cd', 'Too large', '2026-03-20T23:59:59.000000+00:00', 'expected', '2026-03-02T16:41:00.000000+00:00', NULL, NULL, '[]');
INSERT INTO public.returns VALUES (2, '27fcbbd29ce740b2', '9ba4b34c7f03214b', '2627d35eb3874406', '', NULL, 'checked', '2026-03-02T16:44:00.000000+00:00', '2026-03-02T16:47:00.000000+00:00', '2026-03-02T16:50:00.000000+00:00', '[["2627d35eb3874406", "check", "92e9a71fbf3661d4"]]');
INSERT INTO public.returns VALUES (3, '04d661c18fc9f0a6', NULL, '', '', NULL, 'arrived', '2026-03-02T16:53:00.000000+00:00', '2026-03-02T16:56:00.000000+00:00', NULL, '[]');
INSERT INTO public.returns VALUES (4, 'ed52981cb894e232', NULL, '', 'Left at the door', NULL, 'given_up', '2026-03-02T16:59:00.000000+00:00', '2026-03-02T17:02:00.000000+00:00', NULL, '[[null, "stays", null]]');
INSERT INTO public.rounds VALUES (1, 'fe01002bbd038cd4', '2026-03-02T14:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'f21942999640f2ea', '2026-03-02T16:11:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '572cd52ad7d4529d45ca4768b738154b7e601664a78e1953aec91722f1db944e', 'bin', 'fe01002bbd038cd4', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '92a03a7b5fc0d48e09f9cb605ed794fba000dc1a3fdc0bf690fa8d77db217e67', 'bin', 'fe01002bbd038cd4', 'W001', false, true, true, '34277c79fad066cd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": "34277c79fad066cd", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:13:00.000000+00:00', '["on_item", ["9905fd7fb101189a", "stored"], ["34277c79fad066cd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '316319dfa213f1084c7d76ff4218de86130cf8559cff6c16c6b7f32c5377a0da', 'bin', 'fe01002bbd038cd4', 'W002', false, true, true, '2627d35eb3874406', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": "2627d35eb3874406", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:16:00.000000+00:00', '["on_item", ["a3df6f04e4e79826", "stored"], ["2627d35eb3874406", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '9db32f61d30aef6d62cfb06e2f36047af4ffb4602934b2ae2dd734a1cdfed0ca', 'bin', 'fe01002bbd038cd4', 'S002', false, true, true, 'fc8ad928dd3d8572', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3f1f918e7a609c18", "order_number": "B-03", "line": "fc8ad928dd3d8572", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:19:00.000000+00:00', '["on_item", ["62b5a36b7e2caf09", "stored"], ["fc8ad928dd3d8572", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'e24cfb6759f6fd294a59af5e376f9a4fbfdb421d929c84065d8d0b47b330d922', 'bin', 'fe01002bbd038cd4', 'S003', false, true, true, 'f3b68fdc77f12b33', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "3f1f918e7a609c18", "order_number": "B-03", "line": "f3b68fdc77f12b33", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["d6c40ef600f20eae", "stored"], ["f3b68fdc77f12b33", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '386fbf7cd1972a003fe43bc90fef0dd1347e6d3cdee2d37bad12ef2778b1f15f', 'bin', 'fe01002bbd038cd4', 'S004', false, true, true, 'b9f69ab6db7c0742', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "7f8448f4f775f524", "order_number": "B-04", "line": "b9f69ab6db7c0742", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:25:00.000000+00:00', '["on_item", ["f5a451219e721c2a", "stored"], ["b9f69ab6db7c0742", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '89914a19513bb10be2b3a5a02964190ec9b3ad4214dba6b8a1ebb3ecca6afb2a', 'bin', 'fe01002bbd038cd4', 'S005', false, true, true, 'adcb4a9f7c17f6cd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "7f8448f4f775f524", "order_number": "B-04", "line": "adcb4a9f7c17f6cd", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:28:00.000000+00:00', '["on_item", ["8a28963e45f9c8b6", "stored"], ["adcb4a9f7c17f6cd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '97fb1f1f7b959af0a3f70d5019112446dc585bee2f393c90231c4d576e7a1780', 'bin', 'fe01002bbd038cd4', 'L006', false, true, true, 'd040781a14eec6d3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "475c98548c659f78", "order_number": "B-09", "line": "d040781a14eec6d3", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:31:00.000000+00:00', '["on_item", ["b048bdfb56743074", "stored"], ["d040781a14eec6d3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'b508f36722ebaa6d7d3510f319f4edf3b49ac4cc432c8864fd1602b993068030', 'bin', 'fe01002bbd038cd4', 'L011', false, true, true, '16bc35e1181a95be', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "475c98548c659f78", "order_number": "B-09", "line": "16bc35e1181a95be", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:34:00.000000+00:00', '["on_item", ["2d8a70b2adf6e4d8", "stored"], ["16bc35e1181a95be", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'e1e3193407f4da7af8dc80e6dece8f1664e5fbb89f722c8f72251cecee5c63bf', 'bin', 'fe01002bbd038cd4', 'S006', false, true, true, '635f8cd793f4b88b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "6fcd8a3cec81a403", "order_number": "B-13", "line": "635f8cd793f4b88b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:37:00.000000+00:00', '["on_item", ["989c0c26faea2a5b", "stored"], ["635f8cd793f4b88b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '198c7381722772b2fa9118a71819fdcbbe6cfe007bc386d0b7726af0cb1f0064', 'bin', 'fe01002bbd038cd4', 'S007', false, true, true, '02dfd175d798a3ef', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "74b14f57feda85e8", "order_number": "B-22", "line": "02dfd175d798a3ef", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:40:00.000000+00:00', '["on_item", ["b4101fa810058609", "stored"], ["02dfd175d798a3ef", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'bf93ea70b8ac0942e87ee5e4d416bdaa261cb45a7775c13cbae2b1b105c9143b', 'bin', 'fe01002bbd038cd4', 'W007', false, true, true, '4222aa6b13df2ef4', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e87e935d3b1a1f10", "order_number": "B-23", "line": "4222aa6b13df2ef4", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["fc64b7b9a81caf2d", "stored"], ["4222aa6b13df2ef4", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'f0eceda57f3c52354a927e60450166337305d080f2dc926ca7137ea2ad0bd33f', 'bin', 'fe01002bbd038cd4', 'W008', false, true, true, 'ea2ba2713442653e', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "e87e935d3b1a1f10", "order_number": "B-23", "line": "ea2ba2713442653e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:46:00.000000+00:00', '["on_item", ["a6414877868ed4da", "stored"], ["ea2ba2713442653e", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'fc8ad928dd3d8572', '4aa9bfaab39e8e45', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3f1f918e7a609c18", "order_number": "B-03", "line": "fc8ad928dd3d8572", "line_state": "picked", "order_state": "picking", "parcel": "4aa9bfaab39e8e45", "parcel_state": "open", "released": []}', '', '2026-03-02T14:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '34277c79fad066cd', '4aa9bfaab39e8e45', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": "34277c79fad066cd", "line_state": "packed", "order_state": "picking", "parcel": "4aa9bfaab39e8e45", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["9905fd7fb101189a", "stored"], ["34277c79fad066cd", "packed", "4aa9bfaab39e8e45", []], ["4aa9bfaab39e8e45", "2026-03-02T14:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '2627d35eb3874406', '4aa9bfaab39e8e45', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": "2627d35eb3874406", "line_state": "released", "order_state": "released", "parcel": "4aa9bfaab39e8e45", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T15:04:00.000000+00:00', '["due", ["a3df6f04e4e79826", "shipped"], ["2627d35eb3874406", "released", "4aa9bfaab39e8e45", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '34277c79fad066cd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": "34277c79fad066cd", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:07:00.000000+00:00', '["tray", ["9905fd7fb101189a", "shipped"], ["34277c79fad066cd", "released", "4aa9bfaab39e8e45", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '4222aa6b13df2ef4', '4424d2b452be1ecc', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e87e935d3b1a1f10", "order_number": "B-23", "line": "4222aa6b13df2ef4", "line_state": "packed", "order_state": "waiting", "parcel": "4424d2b452be1ecc", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["fc64b7b9a81caf2d", "stored"], ["4222aa6b13df2ef4", "packed", "4424d2b452be1ecc", []], ["4424d2b452be1ecc", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'gone', '73aa8b1427160fbfbc3a93de06cbd6081c0544c4289a5ee2ac9162123501fa2a', 'table', '', NULL, false, true, true, NULL, '4aa9bfaab39e8e45', '{"verdict": "accepted", "reason": null, "advice": "B-01: handed over, 2 things.", "replayed": false, "changed": true, "code": null, "title": null, "photo": null, "order": "9ba4b34c7f03214b", "order_number": "B-01", "line": null, "line_state": null, "order_state": "released", "parcel": "4aa9bfaab39e8e45", "parcel_state": "handed_over", "released": []}', '', '2026-03-02T15:35:00.000000+00:00', '"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66"');
INSERT INTO public.scans VALUES (20, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'b9f69ab6db7c0742', 'e92716b7855a9bb1', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "7f8448f4f775f524", "order_number": "B-04", "line": "b9f69ab6db7c0742", "line_state": "packed", "order_state": "picking", "parcel": "e92716b7855a9bb1", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:47:00.000000+00:00', '["on_item", ["f5a451219e721c2a", "stored"], ["b9f69ab6db7c0742", "packed", "e92716b7855a9bb1", []], ["e92716b7855a9bb1", "2026-03-02T15:44:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'd040781a14eec6d3', '47aecc3e746202f0', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "475c98548c659f78", "order_number": "B-09", "line": "d040781a14eec6d3", "line_state": "packed", "order_state": "picking", "parcel": "47aecc3e746202f0", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:56:00.000000+00:00', '["on_item", ["b048bdfb56743074", "stored"], ["d040781a14eec6d3", "packed", "47aecc3e746202f0", []], ["47aecc3e746202f0", "2026-03-02T15:53:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'fc8ad928dd3d8572', '505974dd057dcdad', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "3f1f918e7a609c18", "order_number": "B-03", "line": "fc8ad928dd3d8572", "line_state": "packed", "order_state": "picking", "parcel": "505974dd057dcdad", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T16:05:00.000000+00:00', '["on_item", ["62b5a36b7e2caf09", "stored"], ["fc8ad928dd3d8572", "packed", "505974dd057dcdad", []], ["505974dd057dcdad", "2026-03-02T16:02:00+00:00"]]');
INSERT INTO public.scans VALUES (23, 'pick-L002', '880924f059dd1985f048646aab185594a982afac904adbea161b75f67a5a5749', 'bin', 'f21942999640f2ea', 'L002', false, true, true, '38765dae6ddad6a8', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "e39c90b73ff77de5", "order_number": "B-05", "line": "38765dae6ddad6a8", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:14:00.000000+00:00', '["on_item", ["e001389c4e83618a", "stored"], ["38765dae6ddad6a8", "picked", null, []], null]');
INSERT INTO public.scans VALUES (24, 'bad-D0146', '5cf64d26a39b9e02a8bef15c4670f083b8512e02eabe4a382795a7be96b19047', 'bin', 'f21942999640f2ea', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-hello', '8b6b2c9f9a0cff3018029dbea5ad2a57c88caef55dbc8c3faf541e8215e24722', 'bin', 'f21942999640f2ea', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (26, 'bad-', '380ecb796b88f7d3c90541ce7261584f48fc12e83602722fb594051f46cfb526', 'bin', 'f21942999640f2ea', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:26:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T14:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:56:00.000000+00:00', '47aecc3e746202f0', 'bin', 'C-1-1', 'fe01002bbd038cd4', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:28:00.000000+00:00', NULL, 'bin', 'B-1-1', 'fe01002bbd038cd4', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:34:00.000000+00:00', NULL, 'bin', 'C-1-2', 'fe01002bbd038cd4', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:40:00.000000+00:00', NULL, 'bin', 'B-1-1', 'fe01002bbd038cd4', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T16:05:00.000000+00:00', '505974dd057dcdad', 'bin', 'B-1-1', 'fe01002bbd038cd4', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:37:00.000000+00:00', NULL, 'bin', 'B-1-1', 'fe01002bbd038cd4', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:04:00.000000+00:00', '4aa9bfaab39e8e45', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', '4424d2b452be1ecc', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:47:00.000000+00:00', 'e92716b7855a9bb1', 'bin', 'B-1-1', 'fe01002bbd038cd4', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:14:00.000000+00:00', NULL, 'bin', 'C-1-1', 'f21942999640f2ea', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, 'bin', 'B-1-1', 'fe01002bbd038cd4', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T17:29:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:51:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '9ce58cdaf50cb255', 'e69faf626a70c9ac', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, 'fa2cd0bb922b689e', '3da01b2b6ea8c814', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '678a9c9f453e8e87', 'afe87fd9249d3715', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, 'dc89391f209b6330', '01357dbaf93cfd88', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, 'f9a0aaecb94ff7ab', 'afb0d9b8c5751a7a', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, '1d9d4967e869116a', '5906325a696da9de', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, 'ca2770be8b09a314', 'ac07b33e79b27270', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, 'dd6f6760abc1e1b3', '3fde8ca21d93f469', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, 'b5e06127acd4acde', 'fa7633e6bb738900', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '0508a15769e767f4', '53d73d53c6be51ca', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '5ab93a9c8254afeb', 'bad25feced770471', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '290ce9f0922b7d14', '045fae1b8db198c9', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, '62b5a36b7e2caf09', '4d1ddf8c2a91de82', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'd6c40ef600f20eae', 'a13cc23ea53edf7f', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, 'f5a451219e721c2a', 'ce10c6485eef0f3c', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '8a28963e45f9c8b6', 'd7a3caa66fa48dae', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '989c0c26faea2a5b', 'bd4384f7b10cabf4', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, 'b4101fa810058609', 'ff11fae471db04b0', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, 'd76073c42e8f0b32', 'b552965586f727c1', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, 'd3b6dfb7682b101b', '63912cc1369cb9d3', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, 'abaabe11db2a4649', '0606a0ba27a43f2a', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, '8837e141c713e10b', 'd2334eb998adeca3', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, 'e001389c4e83618a', 'b4aa3789e57a0f02', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '45274f0779147c8b', '88a2d26b624691c2', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '4189e0cb2eb79d4e', '5bd300affe240a90', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, 'db2c40f8e195ed25', 'b661832ca5fbc954', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, 'b048bdfb56743074', '5427998fb461c92f', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, 'c58a89ae25cf4426', 'bd1a6e0f8860795e', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, '74db1b4172f13cf3', '3905b121659b9ccb', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'fd44787b70eff878', 'f36d58b5016e5e57', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '2d8a70b2adf6e4d8', '83670af3840381f6', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '39b0747708f8bebc', 'c4d4b86127dac34a', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '8e8c7a0a7ace7577', '0df1bb65a262803c', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '31d79bafd70fb586', '07e18eaf17825343', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '260a3118ffd941b9', 'beb8a2fa0f061397', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, 'a6414877868ed4da', '5b884d38194cdbe4', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, '400ce93c0dbcac30', 'b975a583f13a0d3f', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, '2bab9918c4c53d78', '27429caffb84551a', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, '3bc2aad92f05fce7', '69e5e9edbfefc86f', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, 'd025a9b8a2fa7ce3', '024eb8992297bc5f', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, 'e87df385b7212bef', '8ab8bdd82d88fc91', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, 'f4887ac7a805b39f', '8e4aaa48dc4fa395', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'f6f77b4045db3b3c', 'df8e12f5ccb37782', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '7c26a4096b89270c', 'c47332fca9543bd0', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '3ca407893503a158', 'c47332fca9543bd0', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '83d242875cd67839', 'f0f10ecab99480f4', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '87874030ef7a45b3', '40308710c6fe5d9d', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, '5fd2a3bc7f2fab70', '7502e402e9bf4f0b', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '73c94c12557949f9', '7502e402e9bf4f0b', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '9905fd7fb101189a', 'a9b2a55b04aaebea', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, 'a3df6f04e4e79826', '87b13f31f39649ba', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '3cd9953c34b89751', 'b32f41e80cdca463', 'W001', 2, '2026-03-02T15:10:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, 'fc64b7b9a81caf2d', '8a19bea9d9744f75', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:29:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (55, '92e9a71fbf3661d4', '87b13f31f39649ba', 'D029', 1, '2026-03-02T16:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, 'a54dc93fc78a991c', '48770c292f2f1b88', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:57:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'bd28ba9551caddaa', 'section:S', 'Spring', '2026-03-02T17:08:00.000000+00:00', 197, 'closed', '2026-03-02T17:41:00.000000+00:00', '{"stocktake": "bd28ba9551caddaa", "area": "section:S", "note": "Spring", "opened": "2026-03-02T17:08:00+00:00", "closed": "2026-03-02T17:41:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T17:29:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T17:32:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '73cf6f3ac58ebaec', 'section:L', 'Spring', '2026-03-02T17:44:00.000000+00:00', 207, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '5bd64f55536045aa', 'section:D', '', '2026-03-02T18:00:00.000000+00:00', 214, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-3"]}');
INSERT INTO public.stocktakes VALUES (4, '00c1666a7ffd836a', 'tray', 'Too late today', '2026-03-02T18:03:00.000000+00:00', 215, 'cancelled', '2026-03-02T18:06:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'fe01002bbd038cd4', 1, 'fc8ad928dd3d8572', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'fe01002bbd038cd4', 2, 'f3b68fdc77f12b33', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'fe01002bbd038cd4', 3, 'b9f69ab6db7c0742', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'fe01002bbd038cd4', 4, 'adcb4a9f7c17f6cd', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'fe01002bbd038cd4', 5, '635f8cd793f4b88b', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'fe01002bbd038cd4', 6, '02dfd175d798a3ef', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'fe01002bbd038cd4', 7, '34277c79fad066cd', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'fe01002bbd038cd4', 8, '2627d35eb3874406', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'fe01002bbd038cd4', 9, '4222aa6b13df2ef4', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'fe01002bbd038cd4', 10, 'ea2ba2713442653e', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'fe01002bbd038cd4', 11, 'd040781a14eec6d3', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'fe01002bbd038cd4', 12, '16bc35e1181a95be', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'f21942999640f2ea', 1, '392029f590ef9217', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'f21942999640f2ea', 2, '38765dae6ddad6a8', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'f21942999640f2ea', 3, '443a32ff1585f8a7', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'f21942999640f2ea', 4, 'a01ddad5813d0cb4', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.changed_orders_n_seq', 2, true);
SELECT pg_catalog.setval('public.channels_n_seq', 1, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 6, true);
SELECT pg_catalog.setval('public.head_one_seq', 1, false);
SELECT pg_catalog.setval('public.items_n_seq', 52, true);
SELECT pg_catalog.setval('public.labels_n_seq', 1, true);
SELECT pg_catalog.setval('public.lines_n_seq', 37, true);
SELECT pg_catalog.setval('public.listings_n_seq', 61, true);
SELECT pg_catalog.setval('public.looks_n_seq', 3, true);
SELECT pg_catalog.setval('public.mappings_n_seq', 1, true);
SELECT pg_catalog.setval('public.orders_n_seq', 29, true);
SELECT pg_catalog.setval('public.parcels_n_seq', 6, true);
SELECT pg_catalog.setval('public.photos_n_seq', 3, true);
SELECT pg_catalog.setval('public.racks_n_seq', 4, true);
SELECT pg_catalog.setval('public.resolutions_n_seq', 5, true);
SELECT pg_catalog.setval('public.returns_n_seq', 4, true);
SELECT pg_catalog.setval('public.rounds_n_seq', 2, true);
SELECT pg_catalog.setval('public.scans_n_seq', 26, true);
SELECT pg_catalog.setval('public.sections_n_seq', 4, true);
SELECT pg_catalog.setval('public.slots_n_seq', 75, true);
SELECT pg_catalog.setval('public.stays_n_seq', 55, true);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT pk_changed_orders PRIMARY KEY (n);
ALTER TABLE ONLY public.channels
    ADD CONSTRAINT pk_channels PRIMARY KEY (n);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT pk_doubts PRIMARY KEY (n);
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
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT pk_listings PRIMARY KEY (n);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT pk_returns PRIMARY KEY (n);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT uq_changed_orders_id UNIQUE (id);
ALTER TABLE ONLY public.channels
    ADD CONSTRAINT uq_channels_name UNIQUE (name);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT uq_doubts_id UNIQUE (id);
ALTER TABLE ONLY public.items
    ADD CONSTRAINT uq_items_id UNIQUE (id);
ALTER TABLE ONLY public.labels
    ADD CONSTRAINT uq_labels_hash UNIQUE (hash);
ALTER TABLE ONLY public.lines
    ADD CONSTRAINT uq_lines_id UNIQUE (id);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT uq_listings_id UNIQUE (id);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT uq_returns_id UNIQUE (id);
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
CREATE INDEX ix_changed_orders_load ON public.changed_orders USING btree (load);
CREATE INDEX ix_doubts_item ON public.doubts USING btree (item, how);
CREATE INDEX ix_items_away ON public.items USING btree (away_since) WHERE (away_since IS NOT NULL);
CREATE INDEX ix_items_kept ON public.items USING btree (kept_until) WHERE (kept_until IS NOT NULL);
CREATE INDEX ix_labels_parcel ON public.labels USING btree (parcel);
CREATE INDEX ix_lines_held ON public.lines USING btree ("order") WHERE (holds <> '[]'::text);
CREATE INDEX ix_lines_order ON public.lines USING btree ("order", state);
CREATE INDEX ix_lines_parcel ON public.lines USING btree (parcel);
CREATE INDEX ix_lines_state ON public.lines USING btree (state);
CREATE INDEX ix_lines_stay ON public.lines USING btree (stay);
CREATE INDEX ix_listings_item ON public.listings USING btree (item);
CREATE INDEX ix_listings_line ON public.listings USING btree (line) WHERE (line IS NOT NULL);
CREATE INDEX ix_listings_listing ON public.listings USING btree (listing);
CREATE INDEX ix_listings_up ON public.listings USING btree (n) WHERE (ended IS NULL);
CREATE INDEX ix_looks_photo ON public.looks USING btree (photo);
CREATE INDEX ix_looks_stocktake ON public.looks USING btree (stocktake);
CREATE INDEX ix_orders_channel ON public.orders USING btree (channel);
CREATE INDEX ix_orders_load ON public.orders USING btree (load) WHERE (load IS NOT NULL);
CREATE INDEX ix_parcels_closed ON public.parcels USING btree (at_table, closed);
CREATE INDEX ix_parcels_handed ON public.parcels USING btree (handed);
CREATE INDEX ix_resolutions_stocktake ON public.resolutions USING btree (stocktake);
CREATE INDEX ix_returns_order ON public.returns USING btree ("order");
CREATE INDEX ix_returns_state ON public.returns USING btree (state);
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
ALTER TABLE ONLY public.changed_orders
    ADD CONSTRAINT fk_changed_orders_order FOREIGN KEY ("order") REFERENCES public.orders(id);
ALTER TABLE ONLY public.doubts
    ADD CONSTRAINT fk_doubts_item FOREIGN KEY (item) REFERENCES public.items(id);
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
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT fk_listings_item FOREIGN KEY (item) REFERENCES public.items(id);
ALTER TABLE ONLY public.listings
    ADD CONSTRAINT fk_listings_line FOREIGN KEY (line) REFERENCES public.lines(id);
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
ALTER TABLE ONLY public.returns
    ADD CONSTRAINT fk_returns_order FOREIGN KEY ("order") REFERENCES public.orders(id);
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
