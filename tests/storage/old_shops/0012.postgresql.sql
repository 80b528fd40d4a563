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
    holds text DEFAULT '[]'::text NOT NULL,
    status text DEFAULT ''::text NOT NULL,
    quantity text DEFAULT ''::text NOT NULL
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
INSERT INTO public.access VALUES (1, 'd3c70a16c6ce70f599a8ecc934c05025849acb887af6992cd2c788a10c5b8a4a', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$qXMSVhv7WxJZ29yzTquIQQ$n1NA1PdwZQc7D9NKBIvq9MT5O1V5KNwRn/KGVsdUT1E', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '53e3edf323fcf406bdfad27fe8ddb3e28b9a9cb8de8fca0ba6c3a38b8a8f101d', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, 'c4a4f9f745cd0d4b91bfc7c094cbe972567b4501b3b6742428c7f4fd2be2a83e', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '2bb235c1751c12153b34d55f635e9f96ef95dda8f256c739f8c543798b6ec394', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '541c40d965a3ac6c18cf044d47a3aa60d3d03126ce7b360ecad09a1a3c0d5f74', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/f81f9ff9d124ee63', '{"id": "f81f9ff9d124ee63", "item": "6453ce3b4692619b", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "packing": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '362e5ba8053cffc7', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', 'ba9616dcde86629a', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"47fb8486eb7cf25f": {"reference": "Q1", "title": "", "listing": "", "quantity": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true, "status": ""}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"47fb8486eb7cf25f": {"reference": "Q1", "title": "", "listing": "", "quantity": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true, "status": ""}}}}');
INSERT INTO public.changed_orders VALUES (2, 'd9885950a6e15f78', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', '746fd482bb97fe1c', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"4257aa9332fe2096": {"reference": "Q7", "title": "", "listing": "", "quantity": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true, "status": ""}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"4257aa9332fe2096": {"reference": "Q7", "title": "", "listing": "", "quantity": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]], "in_file": false, "status": ""}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, '697439ea05be4421', '5a359b73d6b8ea61', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '4de7f2b55bcc2389', 'ff1641e4ddec97c1', 'missing', 'Not in its bin', '2026-03-02T16:17:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'daadb7c14babfbfb', '5cf7b4c8350e9f35', 'not_this', 'Came back: to be checked.', '2026-03-02T16:50:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '2749b756c430d34a', '566bce0776913771', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T17:15:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '00596d3ba9da929e', 'ddbbcc17cc4fefff', 'missing', 'a count of section:S did not find it', '2026-03-02T17:41:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (6, '1e40f69e3dcc0810', 'b9085a64d3b5a121', 'missing', 'a count did not find it', '2026-03-02T17:54:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 217, '044bfb132c65a6dd1eba33f031d78f9144bb391ffc58b3859f4a1de6070bf2a2', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0, "closing": {"weekdays": [], "dates": []}}', '778c49da253327f8');
INSERT INTO public.items VALUES (3, '260be32b2c5cf327', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (4, 'fa7d55af9d005f63', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (5, '47335c47a708c7a6', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (6, 'f45dc295a9536752', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (7, 'a6fd953818958dcd', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (8, '7f4ba13ebe21e4c5', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (9, 'cb5c6dc272dd37d3', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (10, '4b3b2a0c3ca29487', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (11, 'fe8c2f0fbe99eeb0', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (12, 'b73ce0f917be4536', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (14, '5557197a677eeb37', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (15, '2c2e5b4ab18462b1', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (16, 'f329b68937fa5012', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (17, 'e5e5b1a14dffcb3b', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (18, 'c1af653de0db713e', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (19, 'f924d649a4968ead', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (20, 'ddbbcc17cc4fefff', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (21, '76efc66a59a9d16e', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (22, '5abd5b42783aa07b', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (23, 'd8d86d3dafd939a2', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (24, 'c1615edef50df55f', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (25, '4d6d555d692e158f', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (26, '675968cb1a9774c0', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (27, 'bcf99bb669744b04', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (28, 'ff1641e4ddec97c1', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (29, 'fdf244ec75802757', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (30, '8f03c1fa5a4f63c3', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (31, '5a359b73d6b8ea61', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (32, 'b9085a64d3b5a121', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (33, 'e458d2b61b4e35a1', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (34, '7b7e70d53daf0e3e', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (35, '644894a40c9b071e', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (36, '7793eba275d04472', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (37, 'f4500ec821eff9c2', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (38, '5cf7b4c8350e9f35', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (39, '6140406a9ade959a', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (40, '3d92a2398548ec40', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (41, '12ca49ba676004b5', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (42, '7139c3f597256e7d', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (43, 'fb0d02dadd14cf24', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (44, '0f6b954a5b8f171e', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (45, '89e978d3c6b6469a', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (46, '63e88bbf645cab59', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (49, '6453ce3b4692619b', 'Brass bell', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (2, '8474d227fd89916b', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL, 'Coil the cable');
INSERT INTO public.items VALUES (1, '0dc0d3b45e2a21d7', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (13, '566bce0776913771', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (50, '5acbcc65804e5984', 'Carbide lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (51, 'd20fff866a0aa9be', 'Rear lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (48, '98ff0cb0f2f9924a', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL, '');
INSERT INTO public.items VALUES (47, '099bf3159e20539e', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00', '');
INSERT INTO public.items VALUES (52, '880ebf0a3283ea31', 'Rear wheel', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '32bfae5030cd4c23', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 0dc0d3b45e2a21d7 - 2b0a3198ba33","slots D001 on_item e5405bc28ff8","stays e6d061dac53a55d9 stored bfb7f9fdbe46","listings 914604baa5f35a62 - f54941ef5fa2"],"stay":"e6d061dac53a55d9","title":"Rear derailleur 1","turn":1}', 'aa6da1adedff6565c1083b0bd45771f2956f97642990ebaed3d0db650f3e5c6b');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 8474d227fd89916b - 004935098ee8","slots D002 on_item 4f79f524f247","stays 32d6d7e25a2c8f3c stored fa529ac32bea","listings 6a63f49e6f0c0500 - c8a21f1fca5b"],"stay":"32d6d7e25a2c8f3c","title":"Rear derailleur 2","turn":1}', '2665c9c0e8168db0d2821db6d7773ae2a2c03dd9bc0473637767f308b3566b0e');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 260be32b2c5cf327 - c82e20ce24fa","slots D003 on_item 6de523ac8b4d","stays ccb57e35614a0490 stored 0a03f601cb46","listings 628fe28a2881995c - 2386955c07c8"],"stay":"ccb57e35614a0490","title":"Rear derailleur 3","turn":1}', '87a93a79f6411236c7c3c503cf417d01e0ff440971f79ec9452089a5b2198577');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items fa7d55af9d005f63 - 291144bd5649","slots D004 on_item ec423998da46","stays fb6d0954a0396fda stored d5979f922f78","listings caf89133ce8d5f01 - 5dbc15766044"],"stay":"fb6d0954a0396fda","title":"Rear derailleur 4","turn":1}', 'd15981784251417d48837395c50c2719863d428495c895be1bbaf050764a5000');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 47335c47a708c7a6 - 53e5c3da6a69","slots D005 on_item 91ad3faf88d6","stays 23ac1b6ab5ed06d1 stored a0e36f7a9fa4","listings 11fb03180f6a9aac - 0f3ca241787d"],"stay":"23ac1b6ab5ed06d1","title":"Rear derailleur 5","turn":1}', '289cf1c5e8db0cac722ab90ab942f01a27e6ee7852580dee26cc652e7bc0f9a6');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings 638637c68439a1bb - 8fe872b61735"],"stay":"3ec66eb97e215fbb"}', 'e034baecb435f3df0f13597695da24f7bc4adbca7cfd178debd41934c259ba76');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items f45dc295a9536752 - 2bed8e2c726f","slots D006 on_item 1fadb568d6a5","stays 5e9dbb0058903dcd stored b8a44a3d8085","listings f59b5fe0f18792d1 - 68987dbfe330"],"stay":"5e9dbb0058903dcd","title":"Rear derailleur 6","turn":1}', 'cd6f9dec9d7395792f6ae95dbdbdad2656c8a73e77aba89560bc15186b7bd840');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items a6fd953818958dcd - 7851609ec0ad","slots D007 on_item 536077e3b728","stays 979940bbb580253e stored df9920300480","listings a876eef396fb5681 - 4ba8160323c4"],"stay":"979940bbb580253e","title":"Rear derailleur 7","turn":1}', '183e75de32f378bfeaa29bf9193eb32b97e566472699a050c3e469a5afb45c01');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 7f4ba13ebe21e4c5 - 66001e09470b","slots D008 on_item facb453cba22","stays dbf5bb71c8aea882 stored 34be871dcd2d","listings 92b829742ab2c701 - 94cce112342b"],"stay":"dbf5bb71c8aea882","title":"Rear derailleur 8","turn":1}', '64578bc13460767338138fff1480a658965866e7e2c15be3c39c02112fc1f611');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items cb5c6dc272dd37d3 - d5e3e404ce2f","slots D009 on_item 7434bf04ccf2","stays 6966c06393824af0 stored ba06ef29cec4","listings ae265b786711e4bd - b36fe2639e08"],"stay":"6966c06393824af0","title":"Rear derailleur 9","turn":1}', '1d80aca82221b29ab7bca5c647fa68219cb339b8e6915d6ea9125e857334bc4e');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 4b3b2a0c3ca29487 - 0d133f975c89","slots D010 on_item 1f8fd3ebaf8b","stays 0dcac76cdee80b4e stored 5c195a16de56","listings 4091d7efafab42e5 - b07f311cfc7f"],"stay":"0dcac76cdee80b4e","title":"Rear derailleur 10","turn":1}', 'b2d5494ceb6a0add355e9ed80cbe69b6431fca2f123ac3862beb29248242c531');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items fe8c2f0fbe99eeb0 - 4d9e871f9ffa","slots D011 on_item d451255e38b7","stays 4164d14ce128a79a stored f969d6092a29","listings bbb27e8e09bceba9 - 796e5f98ca93"],"stay":"4164d14ce128a79a","title":"Rear derailleur 11","turn":1}', '54e9dbc25c5bc98cf876cef7a72472cbf03b098a34f665a69563b8e8129eabf1');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items b73ce0f917be4536 - 8a8697a7507e","slots D012 on_item bdbda5bb2b7a","stays 116608e61b3ff4f4 stored 6d38522f7066","listings 95a93289827c15f0 - 459821a1705b"],"stay":"116608e61b3ff4f4","title":"Rear derailleur 12","turn":1}', '5e6ec39f70b393b0c4db6e34daf10e72312077fad51f4d9196d46a233c7abb98');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 566bce0776913771 - b4ade6cf132d","slots S001 on_item 76dcd853e3e0","stays 3dea42c0c693bb00 stored 4f7f39042cf6","listings 605f4a3f7f772e66 - 190922198a56"],"stay":"3dea42c0c693bb00","title":"Leather saddle 1","turn":1}', '553f3f5cbbd27d5db318fc3f929a85ad2a9b755a8257d08b806cfa772c8b18fd');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 5557197a677eeb37 - e229dd5c0f91","slots S002 on_item 6fb94c47a50d","stays f8e1d47c89b9b185 stored dab2c73813a7","listings dea581b325ac3a17 - 2d547f28f814"],"stay":"f8e1d47c89b9b185","title":"Leather saddle 2","turn":1}', '1fec9df4662f79b3a7696916d8f02155b5448eba18fd9be9957981f5883f34c2');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 2c2e5b4ab18462b1 - 94afb574c71a","slots S003 on_item e00808332634","stays ca6fd90cd0fcd7f9 stored f642ef5b900c","listings e22b6a9b8651ce1a - 1a2d0284c451"],"stay":"ca6fd90cd0fcd7f9","title":"Leather saddle 3","turn":1}', '290d1d6e47a9f83ae6e46798075ed6f4b389ae43bf1a6c93b2cb82a39fbd1d2e');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items f329b68937fa5012 - 6b5a655acc53","slots S004 on_item db1aa8005467","stays 0fcaf8d5b7b7f006 stored fe0f25f06ebb","listings 9856ec62379820d6 - 1e966675e27f"],"stay":"0fcaf8d5b7b7f006","title":"Leather saddle 4","turn":1}', 'f11569c242ac42d9af4b8c6c68deed2ceefd84c0bf207a889fcf4ff178643ff7');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items e5e5b1a14dffcb3b - 14d7acf5ddff","slots S005 on_item ec548ef84f99","stays 49c6b40983270f57 stored 038d56563f02","listings caab593d47de57a1 - c7d4e0b3bd1f"],"stay":"49c6b40983270f57","title":"Leather saddle 5","turn":1}', '3a839a33343f6ef7d2397fed46b2747470ce58445ee5a3698585c9d8ac4893e1');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items c1af653de0db713e - 5a5f827c2091","slots S006 on_item dc9bc74eb63a","stays 59d95a6af5df1225 stored fa53badf86f0","listings 64f566f6c21873b1 - c9a4ccc56a51"],"stay":"59d95a6af5df1225","title":"Leather saddle 6","turn":1}', '0818dd17bb3bf837c8bf8f68f3a993cfea70211b56e69f122d356302b95ebfc4');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items f924d649a4968ead - 27cf716c0ee3","slots S007 on_item 075fd8b9fecf","stays d400d5048670bd31 stored ff5aa032742b","listings abc60aea2195a717 - c0abce844ce1"],"stay":"d400d5048670bd31","title":"Leather saddle 7","turn":1}', '5f687cf7775e9dd34f26a7d640134f6c900ac619504671e68e525a4ba939e04d');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items ddbbcc17cc4fefff - 55c04496fa87","slots S008 on_item 39fdb847a4bc","stays 5be8c01b0cd8949e stored 47d201b08f2c","listings 477416e974c0e938 - 2a0d46b31440"],"stay":"5be8c01b0cd8949e","title":"Leather saddle 8","turn":1}', '08b810eaa8f1f78a4e46894336676e74203df03b96e012517382944dbf9c6860');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 76efc66a59a9d16e - 8733c8c520c6","slots S009 on_item 62c79df275b3","stays 803876ffb71af9d0 stored 6118a5a4da49","listings 252c0a3cf16e1191 - 9e9bbdf16430"],"stay":"803876ffb71af9d0","title":"Leather saddle 9","turn":1}', '9bd15dd79be91f9039f2b1c875fa3d78802c4478697223270d6b8c32b0017724');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 5abd5b42783aa07b - fe7541e70061","slots S010 on_item 1fd8d85fa1c4","stays 0bb1da179bac9e1b stored 94427ce250cd","listings 9447490d66b3b137 - 153b0b068b55"],"stay":"0bb1da179bac9e1b","title":"Leather saddle 10","turn":1}', '400cad0917f8e90ec31fa6eb2d133b60bb565895c881af9b725f2a5e5ff9ab1f');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items d8d86d3dafd939a2 - fe4cfc19a39a","slots S011 on_item e59577c4b2a7","stays 1294929c1eddf3b0 stored 3bda128770c4","listings f9b7cd5fa096735d - 9dd3ab57798f"],"stay":"1294929c1eddf3b0","title":"Leather saddle 11","turn":1}', '755bd07ceee4a120d8c8128ba9e756ff7cde9c9c149e69c1a09231a8e9941da8');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items c1615edef50df55f - 997d36afa3d0","slots S012 on_item 9bae442e2436","stays 1a28615cbd5e3074 stored 7d8b65677aba","listings 00e4320187a71ba9 - 0a4ebdc47cca"],"stay":"1a28615cbd5e3074","title":"Leather saddle 12","turn":1}', '0bdc4f5f5f18a75c6252d1a214603bbfa2d2c42d208d7db9df119382d3e94ffd');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 4d6d555d692e158f - 964611ccbfa6","slots L001 on_item 43c5cdfaa8e4","stays 1f8631d29402634a stored 94f6499644c1","listings c490aa65b51a7238 - 37bd0ced118b"],"stay":"1f8631d29402634a","title":"Dynamo lamp 1","turn":1}', '9ac84eb3109b4ea88250d1cd85799b34dbc585718bf56a27716c138f42ae5507');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 675968cb1a9774c0 - 956064387d80","slots L002 on_item ea8e77c8b06f","stays 077de0cb4e839c75 stored 38d5c6545e09","listings 695a907774575306 - a22ddf0c8db8"],"stay":"077de0cb4e839c75","title":"Dynamo lamp 2","turn":1}', '847044f389cd54d8a47d09baa2515318b1bc24fb5981de38cf8813b9577ea1bd');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items bcf99bb669744b04 - b24d2aa70703","slots L003 on_item c35e4c005cda","stays 8fd38449a0490e74 stored 57a52e754770","listings 68c09c1b7b0d93a5 - 689665440423"],"stay":"8fd38449a0490e74","title":"Dynamo lamp 3","turn":1}', 'aca6be0d96f540565e580f9ba9024849dc02a1e2e09c2bcf45470d0ce759c160');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items ff1641e4ddec97c1 - 57520ff67d89","slots L004 on_item 70a88e4a366b","stays 91d98b00c64f7e9a stored 75cf837fc979","listings 3a22815f5315e346 - 21f63814db5f"],"stay":"91d98b00c64f7e9a","title":"Dynamo lamp 4","turn":1}', 'dd8e88ae0bc2020da224bf43aa5ded256eb72e0f8f30ec992e834d1a09b2b342');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items fdf244ec75802757 - 7d0fa36b871c","slots L005 on_item 6261d94de1ef","stays 393aacfcdcb15aa3 stored 9e2077ad8e3b","listings f1cbcf1311a17e4b - c3de70bd18f1"],"stay":"393aacfcdcb15aa3","title":"Dynamo lamp 5","turn":1}', 'c190aebfa69def2ff1813b7a45c3499e832b0094f03491a8fd16c8605451fe40');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 8f03c1fa5a4f63c3 - ff6a4caa5c1b","slots L006 on_item b67b470f3637","stays 562d4f39f85e7f91 stored bf38308ec2e8","listings 6287b46f7bf8e920 - f52dcc03ff45"],"stay":"562d4f39f85e7f91","title":"Dynamo lamp 6","turn":1}', '884f2b40c7a760eda369959e709b56dac64ab82414834fb1ecf8c893e7fab565');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 5a359b73d6b8ea61 - 27f2ef7b75da","slots L007 on_item 767524982af4","stays 3b5def7e8604284c stored dd40c4c09472","listings aa0f6b67cfb128ae - d89d2dd9dff0"],"stay":"3b5def7e8604284c","title":"Dynamo lamp 7","turn":1}', '2479e42672f50d72b24542845c86addcbd755b1a415092266cb63f850ab7f129');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items b9085a64d3b5a121 - c870e4b636ab","slots L008 on_item b3b2d23a98b7","stays bf3b3200cf738c5c stored 7bbc9953bf88","listings eac2e9e078c8689f - 84be508670db"],"stay":"bf3b3200cf738c5c","title":"Dynamo lamp 8","turn":1}', 'd03b996e5187ef73c460ec4b6635b7ca1455b51f5f3b64123af83b1d7101d52e');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items e458d2b61b4e35a1 - 5bb3327d2a31","slots L009 on_item c3139144a3f8","stays 3ec66eb97e215fbb stored b38d03ba34b4","listings 012142c6ce0d29c7 - 13530de70172"],"stay":"3ec66eb97e215fbb","title":"Dynamo lamp 9","turn":1}', 'eaa15e8e38e7d34eaa1bbd2b37f1ac27743bc9cff2f383978aaa256de06aef3d');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 7b7e70d53daf0e3e - 8d65b69df5f2","slots L010 on_item f8c13ae8aec4","stays dd6c7b7fb73bfd4d stored e43f87cfc01c","listings 65e7702b011bf463 - 3628ec04b942"],"stay":"dd6c7b7fb73bfd4d","title":"Dynamo lamp 10","turn":1}', 'e3ec018c7637280a44d59e582b48145f83dc8c1804cf9c17039f9cfde45717cd');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 644894a40c9b071e - 371d75ae9eaf","slots L011 on_item 9d01c75c0f89","stays 804c077df9da0e83 stored 627849debcc4","listings 5f2b8327f16e6b21 - 8cc29fe19114"],"stay":"804c077df9da0e83","title":"Dynamo lamp 11","turn":1}', '1ec6fdf827b6ec202507cc19f70079f80b10634bc5f105a8a889edacb313ff22');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 7793eba275d04472 - c157f5fb0989","slots L012 on_item 5373b19b101e","stays 8fd179b8d26c287e stored 743e48f95ca8","listings e98580c8e9117b16 - fd2986b739da"],"stay":"8fd179b8d26c287e","title":"Dynamo lamp 12","turn":1}', '998d0a966c3836b1b427cc367591a0c1c2116a40a7ec9fd896e2b3df2473ae7f');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items f4500ec821eff9c2 - 68a41890e3ab","slots W001 on_item 17dd342c2f6a","stays 767ea3f5b77c3955 stored 686149949508","listings bc45b1a1d9060248 - 2c9bf10fc065"],"stay":"767ea3f5b77c3955","title":"Front wheel 1","turn":1}', '91b6396cb1572097cd78ee08447191f1b6495d479f2ea54e755227611d5c189a');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 5cf7b4c8350e9f35 - 8e8af159fa51","slots W002 on_item 7ebfb8df41ca","stays a7e4d2bffb2089c5 stored eefbc547ee74","listings a1ed371408ffbdab - 7a04063bc067"],"stay":"a7e4d2bffb2089c5","title":"Front wheel 2","turn":1}', '94215a6d54579bc63baf46506b39fec39bc69bedaf7a857683d6f689f16bce8f');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 6140406a9ade959a - 66d7687934f7","slots W003 on_item f84a2674e962","stays bda73f5fca3a0a3d stored 6ab5f5db2492","listings fe937d8567462e3d - 61afddcf712c"],"stay":"bda73f5fca3a0a3d","title":"Front wheel 3","turn":1}', 'f2e43feb9bcde2ec6c5ae33210828438dc30411bed53dd70aa75ebbb8da6ebcc');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 3d92a2398548ec40 - dd3daf1a73f1","slots W004 on_item f45ed94fd55a","stays bd7f96487b2d49ac stored 9e2ccf91ed0a","listings 1b99ce5dfac7c822 - c7bf6eaf0346"],"stay":"bd7f96487b2d49ac","title":"Front wheel 4","turn":1}', '95246882deb96c7ca81a0028e12cf71cee20d4655a5d24f52de7d0ce2df58606');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 12ca49ba676004b5 - a3ccfd3f8622","slots W005 on_item a1fdfb2c692e","stays b90cbc98e411aee9 stored 1387ad995089","listings 2f7f1d65a342f202 - 644179685017"],"stay":"b90cbc98e411aee9","title":"Front wheel 5","turn":1}', 'c51d1b3af9f6c77074cde89040e80606fea7c7a458741f951fb263ae7f8ef883');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 7139c3f597256e7d - 73e2b44622b3","slots W006 on_item 3dd6244f0bee","stays b7dde8b121ef4532 stored 29017f32dddb","listings 6a885094230f2848 - 278704ad0328"],"stay":"b7dde8b121ef4532","title":"Front wheel 6","turn":1}', '3b6b987f203ed54da1bdc7a15f40ea9a1773328ddedc306e972e6b7173f84956');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items fb0d02dadd14cf24 - fc9aa61293fe","slots W007 on_item d52463b699e2","stays 6689f02437be805b stored b81117d23ed7","listings c13433f1483714f6 - 8894964ba8d7"],"stay":"6689f02437be805b","title":"Front wheel 7","turn":1}', 'e2a24efe4fc47f5868554ca4a0ec4c635d0ac5ca4c30f1946cc6196a2b7a0e5d');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 0f6b954a5b8f171e - af04aac0b88f","slots W008 on_item 2e167460fb16","stays c152c20d8458bb99 stored 0e75896dd343","listings 2c2e90bebbe1bc2d - 6a5ed0d95ede"],"stay":"c152c20d8458bb99","title":"Front wheel 8","turn":1}', 'e949cb0420f130a7817e95ab74d9832cdd0c1cf2fec3f8a56bb81e0ed46de389');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 89e978d3c6b6469a - 77787aaab16d","slots W009 on_item 597fc2f4b56e","stays 6f3b96aa11af5375 stored 7bb10d8c0170","listings 43fadbe58f5be15d - f58cceaf616a"],"stay":"6f3b96aa11af5375","title":"Front wheel 9","turn":1}', '4fac7ccc0d73e0222406c549aef7b8b43c97d62cecb58748d14294dd3ba22360');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 63e88bbf645cab59 - c3c1a99d357d","slots W010 on_item 7d0365c2d2de","stays a35ebdb599c6d94b stored d5919a8683ea","listings f99aac5cf48ba8f0 - 2ae3b51e732e"],"stay":"a35ebdb599c6d94b","title":"Front wheel 10","turn":1}', '816a66ff5247b5b45f48460cf1eb4b28bda5400d11acd1860913f17661a093d9');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 099bf3159e20539e - 1ecd7e9f91a2","slots W011 on_item d3a26b640d71","stays 1a321670a56342de stored 84b9f3659119","listings fbf3c0c9bb481dbf - a0a2d7bf8144"],"stay":"1a321670a56342de","title":"Front wheel 11","turn":1}', '42849fc487f115a3ee64cf3da8971d119799df24a69777e85ff02b8190a655a7');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 98ff0cb0f2f9924a - 5d25f5a2ceaa","slots W012 on_item ac10bfb906d6","stays 0559f4300e335fa4 stored e2688348127e","listings d5be8ffc1dea48eb - b15b9705cbc7"],"stay":"0559f4300e335fa4","title":"Front wheel 12","turn":1}', '299fda518a69917bb315bf6103f3b01a6cadffa745f1ea4c69ecc804612274c2');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 6453ce3b4692619b - f733156ec827","slots D013 on_item 69b6f1c92d5d","stays f81f9ff9d124ee63 stored d83d3539ee4b"],"stay":"f81f9ff9d124ee63","title":"Brass bell","turn":1}', '9fc6e9aa408dcc052ed9a4b403db6ac243d59d4e4ce61c9723327732329b97ed');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 8474d227fd89916b - 76fe020381ec"],"packing":"Coil the cable","stay":"32d6d7e25a2c8f3c"}', 'eb5607b79016e56cbea74835e99d3dcffc5e25b8e9b3788b70c523ad21804933');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 0bb1da179bac9e1b withdrawn 6e827322983e","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"0bb1da179bac9e1b"}', 'a9a9c0ae19e5704531f6493eb189b29244985994d33021d9c43bda8e5bbd6ec7');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays bd7f96487b2d49ac withdrawn 09056155bb2d","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"bd7f96487b2d49ac"}', '2f6669d51cbf782518e87f0abdc017fd02bcd5753c50ecab06eacf53399b50cf');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"3298b9f15d4ebe37","now":["stays 803876ffb71af9d0 moved a2a4df93d590","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 3298b9f15d4ebe37 stored 74955e60f760"],"stay":"803876ffb71af9d0","to":"S013"}', '06e41d940fda222fc7a33dc792fcee3bc9b8442939223c6f388efb90f541fa64');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 0dc0d3b45e2a21d7 - 3a30a36d9d22"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"e6d061dac53a55d9"}', '0091d98b09decb34dc0b6f8901d58fd133e2ac1fc5426efdf1e6fffad67e8712');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 566bce0776913771 - 83c9777edb56"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"3dea42c0c693bb00"}', 'e1ecabb3bf7dd046a1059f362b89edea322ad14c15936399fe1c0fde906355c2');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items 5acbcc65804e5984 - c75aa4b3b5b9","slots L013 on_item 417a81be4bcb","stays 8375837235c02e43 stored 47c8cbd96419","items d20fff866a0aa9be - 52e5c6335aa0","slots L014 on_item 26405b275a18","stays 04f24fa20740cbd2 stored c4e0eabe40ae"],"stay":"8375837235c02e43","title":"Carbide lamp","turn":1}', 'db70e17e4e2548154fbfa8493c33168e557dd7497ca3e7cbc675d7021223d8c5');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"04f24fa20740cbd2","title":"Rear lamp","turn":1}', '05785c484f7f62ca63fc7b9b7ff3ec67afeb9cb8d046cdde3bf2955ea379a135');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'c316cab90c94212ac9a7e7aa398b96cc413ceb775c9da18996872c506146428e');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings 1d9408e09da74a6c - cc05b9fbd0d8"],"stay":"767ea3f5b77c3955"}', '72debcaddb54003febf6ea4a26aacbf15f12176b95678eb08140be584a82b138');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings 33489ee6be8d81d0 - 4ed9f5d60d13"],"stay":"767ea3f5b77c3955"}', '39b9890bf5737866880dacc1a84852f31183d7f6eba374d60ea2dedf39cf8882');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings 97a69d709c05d1a8 - d7af5390dcb4"],"stay":"f8e1d47c89b9b185"}', '140e6ee8e0a83752fe9e52c4503e1bdbaae802b3382e1c9b342c02404e8b454f');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings 9eed487484471e71 - a63cf12aebc3"],"stay":"f8e1d47c89b9b185"}', '93ec76bec150588dca62eaa2f35dac0c08b7a76bb024500736a81bad15d9ef27');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings 795d9fc5eae50295 - 3c2d19038d91"],"stay":"6966c06393824af0"}', '4600941d39ac09ac9979e1ee506f3dc646eae5530708986af04354c0339c8371');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings cf716b19965e2194 - 39669675b148"],"stay":"6966c06393824af0"}', '3726e8285b622d3f38b972624c6a73b5b5d7f4bdb41c90c20ade4e5055b944ac');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings f5f730d00b5ad784 - 544ee96665aa"],"stay":"0559f4300e335fa4"}', '358e53dd4aa99ac9d1910a287f9f74a786f51cdb5c2a5184f75ca32ca73483e5');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings 077189e45dc333c3 - 10033cac84dc"],"stay":"0559f4300e335fa4"}', 'b33fb2190f23f686ff3158ecf5300dc92c830be1d5ae619c331d807654f3af52');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 8cf96e5e348a5a5a - dedeec048cde"],"stay":"3ec66eb97e215fbb"}', '0225a1144a94308b950ddf14068fa3a8a3a7e543954c54d5d2e3182f34f4723b');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings caf89133ce8d5f01 - 245360091919","listings 4500e57adb4f9984 - 7f3a1d72010b"],"stay":"fb6d0954a0396fda"}', 'f26032d3246b6350c84205244a8db90ab3cef6455637bf0209f00074f497a34f');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 8cf96e5e348a5a5a - 698d96d3b4e7"],"stay":"3ec66eb97e215fbb"}', '82a06b6570464691f3935adec36ea26db1d64a187e363e370b0ff55901e11d1f');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 98ff0cb0f2f9924a - 123edd742df5"],"stay":"0559f4300e335fa4","until":"2026-12-24T23:59:59+00:00"}', 'd9ed171d9253274e583571807b3a6e18716c537f54ffbb1b6ce53a06c16d4923');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 099bf3159e20539e - 0ea405bd433e"],"stay":"1a321670a56342de"}', '28d5abec0cb121aad821ac345c70bcc0151acdd05c600a41887b5d448d9c2bd7');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","closing":{"dates":[],"weekdays":[]},"count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '278448703a6c09668871850b3d34c4bf7da31a8e3146871584ab3939f8972dae');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '249976b1fa407b6cd987520b7ac06a3617c6ba53954c49efac504e3f79b045ae');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'd58c32434e43d7982fd2de9820d3001a61ca04c3660073cb87897b405b9fce4d');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'f0962239500e04c82bfa492f01683989a285484deffb9b9bf24d2c535e443834');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '23c0268e0c9b19ed3cd0d4bda27cff0cce74244e1e2449a32d01414a2919cbb4');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"aeec1570b2334d40","reference":"W001-01E","stay":"767ea3f5b77c3955"},{"hold":null,"line":"b0a8e7106c98d80f","reference":"W002-016","stay":"a7e4d2bffb2089c5"}],"now":["orders ccc0e00c1d5d6cc2 - 8ce7a2c612d7","lines aeec1570b2334d40 waiting 31af4cf8f4cb","lines b0a8e7106c98d80f waiting 8265a86f4d9b"],"number":"B-01","order":"ccc0e00c1d5d6cc2"}', '1970ddc23658e244113c03b6ac00850ee8a66ac07ae80958b6986c98628dff69');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1ad7b9250fbb5fe5","reference":"S002-013","stay":"f8e1d47c89b9b185"},{"hold":null,"line":"8f80c4b2f53c9b8c","reference":"S003-01W","stay":"ca6fd90cd0fcd7f9"}],"now":["orders 86cff253d140cd72 - 704621f3af35","lines 1ad7b9250fbb5fe5 waiting 21399b8d1692","lines 8f80c4b2f53c9b8c waiting ea0d2d7fc9dd"],"number":"B-03","order":"86cff253d140cd72"}', 'cd5e3552dfcb5c9728350b23172ba41e200ed4c630f678b275fd5e51bba64b2d');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"5abcefcc6168d332","reference":"S004-01O","stay":"0fcaf8d5b7b7f006"},{"hold":null,"line":"9a0178d283b6bd31","reference":"S005-01G","stay":"49c6b40983270f57"}],"now":["orders ff538d9b9b2e6cb1 - 3bf02f76d7d2","lines 5abcefcc6168d332 waiting 235ca99cb000","lines 9a0178d283b6bd31 waiting f5c2c8288dc2"],"number":"B-04","order":"ff538d9b9b2e6cb1"}', 'a3d16c1e88181410347ad5b7ad62a7e1a7f4a3280eb821121dce08417e4c69f6');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"675968cb1a9774c0","line":"7a59f0d8539a6b88","listing":"fair-L002","now":["orders 0f4ed16d59229f43 - 60988d928837","lines 7a59f0d8539a6b88 waiting 41a00424468b","listings 513ebcaa71264085 - 8af4a03bb209"]}', '227afd434a65bed1c2ce0078b20517ebd7959556decfa12edb0df731774c402b');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7a59f0d8539a6b88","reference":"L002-017","stay":"077de0cb4e839c75"}],"number":"B-05","order":"0f4ed16d59229f43"}', '1291302bb7b45e52e8cd12895892517a8270c3cd5d6034761500baa3e95afded');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"bcf99bb669744b04","line":"3357a5753a611c90","listing":"fair-L003","now":["orders 967b12d5a7096e59 - 87ed5a03f4f4","lines 3357a5753a611c90 waiting 5cc0bc2c422d","listings 8a37ca3c66cb961a - f26dd591fe4b"]}', '2ad2b5452009feffa7e0df6529ee3a300d9666ed85f76f089157b40a6c8b33b9');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3357a5753a611c90","reference":"L003-010","stay":"8fd38449a0490e74"}],"number":"B-06","order":"967b12d5a7096e59"}', 'b4b344ef627faa3d288eeb04f4308b202bc0820db1dc730d5d76f5869ee2408f');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a6da8091ed36535b","reference":"L004-01S","stay":"91d98b00c64f7e9a"}],"now":["orders ada193deb47a7746 - 93c5b61fd317","lines a6da8091ed36535b waiting 7d0c898e005f"],"number":"B-07","order":"ada193deb47a7746"}', '804add10768e778cefaccd8442021a9bf373ed4b57aac635947f44f481af8ce4');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"ea02a1f2eed63119","reference":"L005-01K","stay":"393aacfcdcb15aa3"}],"now":["orders dc02ec196a9dfd67 - c4fd25de93bb","lines ea02a1f2eed63119 waiting edb967eb04ac"],"number":"B-08","order":"dc02ec196a9dfd67"}', '5ed066b8e81e0191cbe5b7558de9fe075f465e0c64d467c4dfc8d4d2dfb5bbe0');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"30d74fb5037ba998","reference":"L006-01C","stay":"562d4f39f85e7f91"},{"hold":null,"line":"58d970737b28eefc","reference":"L011-010","stay":"804c077df9da0e83"}],"now":["orders 6314334c8bd078c2 - 2db5113c067d","lines 30d74fb5037ba998 waiting 6e8d70d9e392","lines 58d970737b28eefc waiting b9c438c9540d"],"number":"B-09","order":"6314334c8bd078c2"}', '192b89fa7464334489b09e2e9db0d22d112a18f5f31fa1f1c948e1ac76db4826');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c30932641f37a84a","reference":"S006-018","stay":"59d95a6af5df1225"}],"now":["orders e08aa9d021a3fb97 - dd0999a6832c","lines c30932641f37a84a waiting 02e1715129d9"],"number":"B-13","order":"e08aa9d021a3fb97"}', '32ae9c3a0da40daddb81048d3d81ed578b3ef9eb81d4d3a4a21db5f19d4ea45e');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a557016d9aed7ded","reference":"L007-014","stay":"3b5def7e8604284c"}],"now":["orders 514e0176cef66742 - 94665d9fb84b","lines a557016d9aed7ded waiting 3821fc4ff0fb"],"number":"B-17","order":"514e0176cef66742"}', '681e348fdab58e45a732391cc23eac251856d933ae9d022d62564c67488d624f');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cd39f67b46263c67","reference":"D009-01B","stay":"6966c06393824af0"}],"now":["orders 980cdbba59b65786 - 274a349e9808","lines cd39f67b46263c67 waiting 51ec9a6b30d0"],"number":"B-18","order":"980cdbba59b65786"}', '3aed297be0c0cf777c53a67cf7de9fcbab07201200e692eec0b0d96ee38a204d');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"aa96690f137a8671","reference":"W006-013","stay":"b7dde8b121ef4532"}],"now":["orders 816d1ac4fd4b44bc - 8919894ce773","lines aa96690f137a8671 waiting 51f5e22dd488"],"number":"B-21","order":"816d1ac4fd4b44bc"}', '64727806cb40e05223d3a6c59cc8dfd23179ef33d1220bbad7e7c8387c794af5');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e05b5b586d5bd77a","reference":"S007-01Z","stay":"d400d5048670bd31"}],"now":["orders 668f986bcb5d853c - 3c06260377c7","lines e05b5b586d5bd77a waiting 2e8fd1adf0bf"],"number":"B-22","order":"668f986bcb5d853c"}', 'c358a4f5f4a934db0803e4d932d76703da0cbc8fc19322f6cd90d48c426efa96');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"bec93d614b39d7f6","reference":"W007-01W","stay":"6689f02437be805b"},{"hold":null,"line":"ca0fd709670d3838","reference":"W008-01O","stay":"c152c20d8458bb99"}],"now":["orders 69fcb4088e726891 - adab0a9bdede","lines bec93d614b39d7f6 waiting 9cc799a95764","lines ca0fd709670d3838 waiting b0f0d81c0078"],"number":"B-23","order":"69fcb4088e726891"}', '233bbfabb7a1a2e438624ad2010ad5d8f21347ead4c02211c2e2d20f0a552bce');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"aa26e46707f28287","reference":"D008-01J","stay":"dbf5bb71c8aea882"}],"now":["orders 9a2e6fd595b76c6c - 46d8926dddeb","lines aa26e46707f28287 waiting f440826602a2"],"number":"B-26","order":"9a2e6fd595b76c6c"}', 'dd76de30bb2a1ae4aa346bd57dd9083c041de990b6e5b3700f01ad36652b69a4');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"cc6dfd25bacab154","reference":"D003-01U","stay":"ccb57e35614a0490"}],"now":["orders a279dc218a24dc60 - b46618266238","lines cc6dfd25bacab154 waiting d23689d8c229"],"number":"B-30","order":"a279dc218a24dc60"}', 'dbf8ff293d948716805bca8857e1dae25dec6310774f9720659138cd47c69f88');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"68b5e4357ab927c2","reference":"D005-01E","stay":"23ac1b6ab5ed06d1"},{"hold":"unknown_code","line":"73bdc706b927ab94","reference":"Z999","stay":null}],"now":["orders f62f12dd4b36b004 - 9b57857c2aa7","lines 68b5e4357ab927c2 waiting c4274cdc0e35","lines 73bdc706b927ab94 unbound 61cbcc8bed80"],"number":"B-31","order":"f62f12dd4b36b004"}', '0b20c7f127453276f71f6ff9c64ad1f3c694c595ac5105a1f3a7cd7319c36fcd');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"de46c508c091b5ef","reference":"D006-016","stay":"5e9dbb0058903dcd"},{"hold":null,"line":"69d3125e7490c6bf","reference":"D007-01R","stay":"979940bbb580253e"}],"now":["orders e77d8865e57a5eb7 - 982def9072b4","lines de46c508c091b5ef waiting 707ff340cde9","lines 69d3125e7490c6bf waiting dcd1a89aa2bb"],"number":"B-32","order":"e77d8865e57a5eb7"}', '6dcc2819a8ce3d782c725c5c9a547c23bf9a455e5731023419d6767609d9aac7');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"69d3125e7490c6bf","reference":"D007-01R","stay":"979940bbb580253e"}],"now":["lines 69d3125e7490c6bf waiting 65c91c21cd4c"],"number":"B-32","order":"e77d8865e57a5eb7"}', '7507e6b520faf76d5101bca1ad8f889e89d2e090277d4f384a0d296682808517');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"35f1b5202ee2d942","reference":"lamp","stay":null}],"now":["orders 59547ab51bfba706 - ce63f2c746c4","lines 35f1b5202ee2d942 unbound 3ec4e436a4d0"],"number":"B-33","order":"59547ab51bfba706"}', '8a328ddfb50e9bcd69bd37e50a93caaf673437f6a4237c01bfced23b65bcd737');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"3b161c53041c46d7","reference":"D006-016","stay":null}],"now":["orders 130dad3c754ab862 - e6bf9e8dfd9e","lines 3b161c53041c46d7 unbound 355b12b776c4"],"number":"B-34","order":"130dad3c754ab862"}', '294f42eae63764f37c705a68728d14fac69c31d8259cfe718d041946fb9e1c06');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"dc3013c3bcf1daa7","reference":"W004-01J","stay":null}],"now":["orders 9eedc3093de5b8db - f24d3e58bd2b","lines dc3013c3bcf1daa7 unbound dc1cc3118c0f"],"number":"B-35","order":"9eedc3093de5b8db"}', '8ef5a1b5bfa8a63b5e5daf8c530673940533fdec53f14d1726643aa31a1df696');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"e826dcd186b99a1d","reference":"L015","stay":null}],"now":["orders 5f1c6bc2824aab1c - b3c7c2409857","lines e826dcd186b99a1d unbound 720f7a09804d"],"number":"B-36","order":"5f1c6bc2824aab1c"}', '97adc60721bee555ee824857bb3068c0ab8454d842433f7bffc5a6a193b10890');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"0dbecf4662d68ad8","reference":"W005-01B","stay":"b90cbc98e411aee9"}],"now":["orders b68d6c201aba1c43 - bf3cbb3a05a8","lines 0dbecf4662d68ad8 waiting 0e683a453051"],"number":"B-37","order":"b68d6c201aba1c43"}', '28156f9c8c58d17af9d48236600989e5cd12143a95a743bd4b31b920f1f05f5a');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"0dbecf4662d68ad8","now":["lines 0dbecf4662d68ad8 waiting 48166f26975f"],"stay":"b90cbc98e411aee9"}', '9217284e06b83d5c15a5b5c6b1d67221e08b8cf94fa84b6bd50ae20aa71546d0');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"697439ea05be4421","doubt_kind":"not_this","item":"5a359b73d6b8ea61","now":["doubts 697439ea05be4421 - e2ba0c05ee27","lines a557016d9aed7ded waiting 13653ed14306"],"words":"Another lamp, by the photo"}', '1c6f95e62e94158ab7081a615ecc08d9562967ab744e3f5d184070fdbf8fd8b0');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"a557016d9aed7ded","why":"Another lamp, by the photo"}', '19499a4a929b9c412d27bc41c8a66a57da181fea5d02919a6a9056456db6f9c4');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["ea02a1f2eed63119"],"now":["lines ea02a1f2eed63119 cancelled 883c0288d4a8"],"number":"B-08","order":"dc02ec196a9dfd67"}', 'a41656387220f4d7c29ee0deac249cc30f2bd025b5906c3dd7f1753073d8fdab');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["aa96690f137a8671"],"now":["lines aa96690f137a8671 cancelled 5e5bcc187b55"],"number":"B-21","order":"816d1ac4fd4b44bc"}', '8f8a740cd908cbc0f524a12cfe39cefef97a081f2e60580c0b8d5b2e81b26472');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"aa96690f137a8671","now":["lines aa96690f137a8671 waiting 51f5e22dd488"],"stay":"b7dde8b121ef4532"}', 'c5cc362e3d2cf9e3e78e16c5774a4e17c369faafb0490443681da97c06b21025');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"076bfbcf6a2d784f","now":["stays dbf5bb71c8aea882 moved dc884741f74b","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 076bfbcf6a2d784f stored f0368786379d","lines aa26e46707f28287 waiting 1e7bcef022a1"],"stay":"dbf5bb71c8aea882","to":"D020"}', 'c2fe78348777aac916114f6afc9889ee0c930445bf0c75b9667ad2df4041dab9');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"9f5cb38d7d45e0d8","reference":"L012-01S","stay":"8fd179b8d26c287e"}],"note":"Rings at noon","now":["orders 8a3809ab052c68b7 - 7f08d2971bed","lines 9f5cb38d7d45e0d8 waiting 5d9a9fca93dc"],"number":"Sale L012-01S","order":"8a3809ab052c68b7"}', 'b01c872f369016dbe806fe2b043bae958ee8bb07b22276e168fce61ccf004869');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:53:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', 'c1d7fd5bad978fd681ae70e018317bba8a6709332490411ddef8b2a094e01f1a');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"0189e5fa76de1fac","reference":"S012-01O","stay":"1a28615cbd5e3074"}],"now":["orders acc69bca5a47b83e - d77d93c44ef2","lines 0189e5fa76de1fac waiting e81d4fe54624","orders 746fd482bb97fe1c - 9ffda5eb6f66","lines 4257aa9332fe2096 unbound 9b1a4164f7cf"],"number":"F-1","order":"acc69bca5a47b83e"}', 'd2ae9ee4a558ca6efa45a850acd4a3e3b5c52679adafefd5251ecb9ac9314205');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"4257aa9332fe2096","reference":"Q7","stay":null}],"now":["orders ba9616dcde86629a - 61d8dd38cce2","lines 47fb8486eb7cf25f unbound fbaebc2cbb63"],"number":"F-2","order":"746fd482bb97fe1c"}', 'a52ec695818a5d8d04a5cae482f59399d03d04fa5e2a75eda129cbb52b65574f');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"47fb8486eb7cf25f","reference":"Q1","stay":null}],"now":["lines 47fb8486eb7cf25f unbound 725970682fac"],"number":"F-3","order":"ba9616dcde86629a"}', 'b6bc5e509a6088f9223a323053b36b6127a83e48f7d16f392d8b06fe438d22f8');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:59:00.000000+00:00', 'held', 'boss', '{"line":"47fb8486eb7cf25f","now":["orders ba9616dcde86629a - 78f9bc5e2d9c"],"why":"Its channel says that it is not paid or not cleared yet."}', '3c7309dd502299fcb03589b5f647809b4d235d72bc1f0ddebaa8039cac2fc1e6');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:59:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"d9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0","loaded":3}', '00f4132440d082d70c052681997f2e208ba3500c70cf8f1f4c1fb37c641782ca');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:04:00.000000+00:00', 'order cleared', 'boss', '{"lines":["47fb8486eb7cf25f"],"now":["lines 47fb8486eb7cf25f unbound fbaebc2cbb63","orders ba9616dcde86629a - 48b573dcf1b7","changed_orders 362e5ba8053cffc7 - ad9281585964"],"number":"F-3","order":"ba9616dcde86629a"}', 'b39767c9d01dd9aa4eced9478dd04bf7365f6936b3745b7f696a402480a50b92');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514","loaded":0,"now":["lines 4257aa9332fe2096 unbound 56bd118ef045"]}', 'd24a5515f45d2bfbf678cfd14c44b574756fc0131a4b2436f3cf643390e4752a');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:04:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"4257aa9332fe2096","reference":"Q7","stay":null}],"now":["changed_orders d9885950a6e15f78 - c3ece1f5605e"],"number":"F-2","order":"746fd482bb97fe1c"}', 'd3677a510a09136824822fec4c200900e100cc135e59a189a507f5f7e7aa4ebe');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["aeec1570b2334d40","b0a8e7106c98d80f","1ad7b9250fbb5fe5","8f80c4b2f53c9b8c","5abcefcc6168d332","9a0178d283b6bd31","30d74fb5037ba998","58d970737b28eefc","c30932641f37a84a","e05b5b586d5bd77a","bec93d614b39d7f6","ca0fd709670d3838"],"now":["rounds c31f3aa0abd6d6d3 open 26f87cbd2c07","lines 1ad7b9250fbb5fe5 waiting 882df54ecec4","lines 8f80c4b2f53c9b8c waiting c41a6eda4cd2","lines 5abcefcc6168d332 waiting d0d239ce4065","lines 9a0178d283b6bd31 waiting ee1eb3c65702","lines c30932641f37a84a waiting 834a7b880611","lines e05b5b586d5bd77a waiting d5f120ad7e5b","lines aeec1570b2334d40 waiting f6b2b6f23dd3","lines b0a8e7106c98d80f waiting de340b0fb9fb","lines bec93d614b39d7f6 waiting c7cfef9eef4b","lines ca0fd709670d3838 waiting 97867e66198b","lines 30d74fb5037ba998 waiting d9cf5ac74ce2","lines 58d970737b28eefc waiting 1d3e9721f04c"],"round":"c31f3aa0abd6d6d3"}', 'dcd4f33ec0e38d45b6b0078c8767b795853445aa3c60b4ebf9b09aaf5f208df3');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item cd2728658608","scans free-D004 - d0f1c95de4b9"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'a0fdd046c379e38d6a25ddd3096c46be38c7b58fdf53dc043f6ab8cf1f6f3bf2');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"aeec1570b2334d40","line_state":"picked","now":["slots W001 on_item c18c823d16b8","lines aeec1570b2334d40 picked ccc2938080fd","scans pick-W001 - 9d91e0dbc488"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '0b2fefbee48461b8bc84256b8e23cc1320a51fd2db992575228704bccccad556');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"b0a8e7106c98d80f","line_state":"picked","now":["slots W002 on_item 082182b064b3","lines b0a8e7106c98d80f picked 833615c81d1f","scans pick-W002 - fa198bac82b1"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '1e10aa180ff4165ceced6af9dc7aed50aa4b4c0f23a043302e201e354e79c1ad');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"1ad7b9250fbb5fe5","line_state":"picked","now":["slots S002 on_item eb5d55ed702d","lines 1ad7b9250fbb5fe5 picked e60b8d26e224","scans pick-S002 - 202e76c085f1"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'a651030c8334ed044a415e22971bcdda1f0236c949493017a722b830ffe4a59f');
INSERT INTO public.ledger VALUES (195, '2026-03-02T16:59:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns 2c4d4d157b5ced02 expected 8cf553f33f34"],"order":null,"return":"2c4d4d157b5ced02","until":null,"why":"Left at the door"}', 'b6bf2a9209142923c81db97c0fd25436abe9c2a3a337c3c72755611b268df032');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"8f80c4b2f53c9b8c","line_state":"picked","now":["slots S003 on_item 52f8337d579b","lines 8f80c4b2f53c9b8c picked 0b247f9654ba","scans pick-S003 - e7053b8b474b"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '1c4d4306b688da82486ad145423deec4a3d1aa68f9a077fd2c4b27f15b7acb84');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"5abcefcc6168d332","line_state":"picked","now":["slots S004 on_item 35d7cd809c17","lines 5abcefcc6168d332 picked 7b8d54fb0dc3","scans pick-S004 - 08191127d3d2"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'da180cf77e5ce9d779c93238913b2fb30cd7fb23bf55885741d659beb1217e71');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"9a0178d283b6bd31","line_state":"picked","now":["slots S005 on_item def071a39954","lines 9a0178d283b6bd31 picked 12acfad6c4c4","scans pick-S005 - 31436be5a905"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '8eda99d672c7632478631972a88e389e4bd43e652dc29d48301008a74e9b6214');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"30d74fb5037ba998","line_state":"picked","now":["slots L006 on_item d3447dd52695","lines 30d74fb5037ba998 picked 148b5766c6dc","scans pick-L006 - 7818f45674fb"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'ca3178ea63cef50fba64a6f46da9f7f2663c643907dfd5ac844c9f881cf5ee75');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"58d970737b28eefc","line_state":"picked","now":["slots L011 on_item 0b2482f4531c","lines 58d970737b28eefc picked f78b58ae9a9b","scans pick-L011 - 18fbb31fef3a"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '61750fae908bed6cfba5bad9218b006e7ec13057e50ad6f1731018b09a7dfc66');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"c30932641f37a84a","line_state":"picked","now":["slots S006 on_item b5416d834dea","lines c30932641f37a84a picked e1b9f0085dcb","scans pick-S006 - 440c9a606796"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '3aa1e437e88d67aa54a4a4e70f084828ee0bf1e76665c36734325806c86a84f5');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"e05b5b586d5bd77a","line_state":"picked","now":["slots S007 on_item aeb410b1f52a","lines e05b5b586d5bd77a picked 6b014d5c3d92","scans pick-S007 - efe3b3d26ddb"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '35b21d43b8b19476e3204a1347ef5b522de80db152507e246a6731d5624746c7');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"bec93d614b39d7f6","line_state":"picked","now":["slots W007 on_item d60af7b4264e","lines bec93d614b39d7f6 picked 2f89660ec38d","scans pick-W007 - 2b0728e29c5d"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '1bd0102316ebdd1ad7c01bf157a938622d6df3c95c067b8640ccfb6fb57de45e');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"ca0fd709670d3838","line_state":"picked","now":["slots W008 on_item 0190f1d4a282","lines ca0fd709670d3838 picked 3ab988b7454e","scans pick-W008 - 2d1b89edb300"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"c31f3aa0abd6d6d3","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '3389b92d17781ff97cd540522d552e86b0d8a15c8d53d05cb940cdc7a26def74');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"ca0fd709670d3838","line_state":"waiting","now":["lines ca0fd709670d3838 waiting 97867e66198b","slots W008 on_item b8fdf37a91ac"]}', '9f7d2a68c23caeebd7a8d55bc334c24b097e6ca075a2ad4b01181cbc2d04446b');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds c31f3aa0abd6d6d3 closed 4fabf8057a69"],"round":"c31f3aa0abd6d6d3"}', '071a4fea1ac8fbf22957ef3b31db95d828487021562cce204657b076458b0387');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 32bfae5030cd4c23 open 0b6c02ab5277","orders ccc0e00c1d5d6cc2 - b600038f7d6c"],"orders":["ccc0e00c1d5d6cc2"],"parcel":"32bfae5030cd4c23","table":"main"}', '7de82f5e340c09da37aa20f3aa392758c1ec12c1ee95f3c70cecba11a4f2519c');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"1ad7b9250fbb5fe5","line_state":"picked","now":["slots S002 on_item 0b5156d29950","scans other-S002 - e55f9f277366"],"order_number":"B-03","parcel":"32bfae5030cd4c23","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '33a29138f6e1628c944e9b09427c62ee336a8c716e2679ad4a7d19dca0370084');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"aeec1570b2334d40","line_state":"packed","now":["lines aeec1570b2334d40 packed a2a869c8ac61","slots W001 on_item 59bd2b83b5b7","scans pack-W001 - 60e614e2bc06"],"order_number":"B-01","parcel":"32bfae5030cd4c23","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c4b62ab89125dcaaf3295cde881670948fad9ea6fdf9aac6f0b0ac04dde12136');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines b0a8e7106c98d80f released 0938b87877c0","slots W002 due fa6fe3d11b0c","lines aeec1570b2334d40 released b3bc1a6dbc08","stays 767ea3f5b77c3955 shipped 7185dbef5766","slots W001 due b70b58f5876d","stays a7e4d2bffb2089c5 shipped 515c077d9555","parcels 32bfae5030cd4c23 closed 2ef088510b07","orders ccc0e00c1d5d6cc2 - 8ce7a2c612d7","scans pack-W002 - 05938c40684e"],"orders":["ccc0e00c1d5d6cc2"],"parcel":"32bfae5030cd4c23","released":["W001","W002"]}', '48f3788d783994c4a9d49ce1ead903bf2e30943061f1eceac6440e58684c5614');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"b0a8e7106c98d80f","line_state":"released","order_number":"B-01","parcel":"32bfae5030cd4c23","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '09b0a88e2d05d369ebc7e9496338742d771b0f53a94b8d3331909756c9ce4fd1');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"aeec1570b2334d40","line_state":"released","now":["slots W001 tray ccfbc2b4cd76","scans back-W001 - 51caa5a23a6f"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '75e3ec588b561593c4dffed6f369ff606e587a5fd07a6ea55df00fcac0783c91');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 880ebf0a3283ea31 - fd44218eee92","slots W001 on_item 4bac4e5a272f","stays 17a8538fe693c141 stored 3dbbd8376f18"],"stay":"17a8538fe693c141","title":"Rear wheel","turn":2}', 'cd16119222a0303fcef817963079bcb9fec4760e7a10874b5166c1d141fc5f24');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 35e86cc87599"],"parcel":"32bfae5030cd4c23"}', 'f2d4b21b3c9bb7f7c9200df02ad7c2eb49b32b55aae6ce330e5a0ee139f85b1a');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 23d2e5b34fd24fc6 open bb399da7be79","orders 69fcb4088e726891 - ca589e0de754"],"orders":["69fcb4088e726891"],"parcel":"23d2e5b34fd24fc6","table":"main"}', '36a692b4e21d60a481d4d635da8da25fed20e1c9a9994dbf34456a364a15d526');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"bec93d614b39d7f6","line_state":"packed","now":["lines bec93d614b39d7f6 packed 1b5c52a26a66","slots W007 on_item b78eaa5fbc1a","scans pack-W007 - 2a670f923dd1"],"order_number":"B-23","parcel":"23d2e5b34fd24fc6","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '28ce292d6b1319b85234c8b026d8faee9f24d4e00c1e6c6634aadd68486390aa');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines bec93d614b39d7f6 released 46f04e1ceaec","stays 6689f02437be805b shipped 634518b88837","slots W007 due 77a3a4d463aa","parcels 23d2e5b34fd24fc6 closed 7c64609d7169","orders 69fcb4088e726891 - adab0a9bdede"],"orders":["69fcb4088e726891"],"parcel":"23d2e5b34fd24fc6","released":["W007"]}', 'b3b5f03c81c5b7e9a59656aa5598ac488a2cd22f6cbe2324168e0feee4a65825');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines bec93d614b39d7f6 packed 2ba7447bbb2e","stays 6689f02437be805b stored b81117d23ed7","slots W007 on_item a48c41560b35","parcels 23d2e5b34fd24fc6 open 6fac6e7746de","orders 69fcb4088e726891 - ca589e0de754"],"orders":["69fcb4088e726891"],"parcel":"23d2e5b34fd24fc6"}', 'f5c3b7a457aa6a7c93a6dac766f1b7db8e07535b445cfd5c8c2ae7402cb3cd16');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines bec93d614b39d7f6 released 46f04e1ceaec","stays 6689f02437be805b shipped 4f3c6bd224f8","slots W007 due 77a3a4d463aa","parcels 23d2e5b34fd24fc6 closed 5a455f0a531d","orders 69fcb4088e726891 - adab0a9bdede"],"orders":["69fcb4088e726891"],"parcel":"23d2e5b34fd24fc6","released":["W007"]}', 'cbb7daf1ffbfafb148e913f9a3b906d8194aff271213398d189c3f4203419258');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'left for later', 'boss', '{"now":["parcels 23d2e5b34fd24fc6 closed 71ec5c0bbfbd"],"parcel":"23d2e5b34fd24fc6"}', '5bba2888e41342a4a5d14c92a407a26a5b49bf4177424f3b27246f2bfa7edf47');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'hand-over', 'boss', '{"by":"label","carrier":"The red van","changed":true,"key":"gone","line":null,"now":["parcels 32bfae5030cd4c23 handed_over 3c63dd70ff10","scans gone - a82c7cf4ec6e"],"order_number":"B-01","parcel":"32bfae5030cd4c23","parcel_state":"handed_over","reason":null,"verdict":"accepted"}', 'e06a77d23fae9e024575133c3f01294842ba21cc11e9fbe8eb7a0c23d0c4cf45');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 3cd23a987c836855 open f1accd1f7765","orders 668f986bcb5d853c - ca5481a676ed"],"orders":["668f986bcb5d853c"],"parcel":"3cd23a987c836855","table":"main"}', 'ae50c03d211af438b8aafb7a3db925f0acda4d931a6beb941a04be75d13fac97');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 3cd23a987c836855 dropped 25501d5d15d0","orders 668f986bcb5d853c - 3c06260377c7"],"parcel":"3cd23a987c836855"}', '35ee1a03e1456c43c266e7bf2c24f7c2f53c2be2ecf70e321010f3aadad31fe9');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d840e86dd9be4965 open f82dc42ac56b","orders ff538d9b9b2e6cb1 - a153add498e6"],"orders":["ff538d9b9b2e6cb1"],"parcel":"d840e86dd9be4965","table":"main"}', '8cdbbf031ae6c87fb362383b8ba1e4a66d30ac098cb95f7c798855a4505f7752');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"5abcefcc6168d332","line_state":"packed","now":["lines 5abcefcc6168d332 packed 91e8c4566ea3","slots S004 on_item 5d120b82f482","scans pack-S004 - 5bdb96eb0473"],"order_number":"B-04","parcel":"d840e86dd9be4965","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '69e2923ccb19f73f9561ffcae3a74cfaae6e7502c84ca2ccc13ce398a1553bf3');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels d840e86dd9be4965 aside e18d0ae01588"],"parcel":"d840e86dd9be4965"}', '055d7370c87ade926079937d4d30d145eeaa15c3c94f8c714f460b8834d96c1a');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 53759bd17628c03d open 3de8843e4166","orders 6314334c8bd078c2 - e1c52e4b9b37"],"orders":["6314334c8bd078c2"],"parcel":"53759bd17628c03d","table":"second"}', 'c17e16b6a721989657e41b80a1140d135a598d9ad53bdb7342f8385632804058');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"30d74fb5037ba998","line_state":"packed","now":["lines 30d74fb5037ba998 packed bb85cbfa256b","slots L006 on_item 017f2b39d1ae","scans pack-L006 - 5df74174d0c6"],"order_number":"B-09","parcel":"53759bd17628c03d","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '7327fd56a7a5c09cb1de3c064a6b8ba66868c5e8411f49de29815f85b0566548');
INSERT INTO public.ledger VALUES (172, '2026-03-02T15:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["30d74fb5037ba998","58d970737b28eefc"],"now":["lines 30d74fb5037ba998 packed 9db79bebf6d3","lines 58d970737b28eefc cancelled 24209135c230"],"number":"B-09","order":"6314334c8bd078c2"}', '7780b189552f219dd36a8d257caafdd3ee3c8e2b552777629c90e265dcb7a077');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:02:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 59d1c9557dd75e02 open 1e2738ac172d","orders 86cff253d140cd72 - 7af857ea7357"],"orders":["86cff253d140cd72"],"parcel":"59d1c9557dd75e02","table":"main"}', '3cc523b8740ce7793f6365f34164d1a204fa325e71825f9b0a6224a10557dff2');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:05:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"1ad7b9250fbb5fe5","line_state":"packed","now":["lines 1ad7b9250fbb5fe5 packed 36ccb7ac1fe7","slots S002 on_item af23dcb0aec9","scans pack-S002 - 1bdde6c9d00c"],"order_number":"B-03","parcel":"59d1c9557dd75e02","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '48ba10ab18388c568cbc2b46e5caec3e7eec726457a51d10610f134ef48470d0');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:08:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"c30932641f37a84a","reference":"S006-018","stay":"59d95a6af5df1225"}],"now":["lines c30932641f37a84a picked d241b102f536"],"number":"B-13","order":"e08aa9d021a3fb97"}', '2230a8d0ea18656e451c7583b9c7561769d3b294621fe51b2c563e7229ab96ab');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:11:00.000000+00:00', 'round opened', 'boss', '{"lines":["7a59f0d8539a6b88","3357a5753a611c90","a6da8091ed36535b","aa26e46707f28287"],"now":["rounds dd2d4f3ca6c5271f open ea0988680493","lines aa26e46707f28287 waiting beddb1a97305","lines 7a59f0d8539a6b88 waiting 82ef3c73315d","lines 3357a5753a611c90 waiting 2fe4de8e39b7","lines a6da8091ed36535b waiting f40444407753"],"round":"dd2d4f3ca6c5271f"}', 'd5735ffd4aa23568a340abf070a9b5988bc32dda856110cff6cb034f39178f1a');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"7a59f0d8539a6b88","line_state":"picked","now":["slots L002 on_item e61039f8cdb7","lines 7a59f0d8539a6b88 picked 386aaccf5630","scans pick-L002 - 418056f41ddb"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"dd2d4f3ca6c5271f","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'dcf5fea040fd7604413ad9d6b1479923822cf96ebfc3d9c35a0d711420aa65e4');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:17:00.000000+00:00', 'short', 'boss', '{"line":"a6da8091ed36535b","note":"Not in its bin","now":["lines a6da8091ed36535b short ee170f7d0c33","doubts 4de7f2b55bcc2389 - 170e9937ebf0"]}', '9ddc870a5b26c617adca05ea500e6d62c8a4ff5e2ffafec8a31522c3fa2df252');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:17:00.000000+00:00', 'doubted', 'boss', '{"doubt":"4de7f2b55bcc2389","doubt_kind":"missing","item":"ff1641e4ddec97c1","words":"Not in its bin"}', '8483c1697872eb34a2dccb5fa1dffbae9b72b76ff8e58016225156cfbe8be6e0');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 72b049e71690"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"dd2d4f3ca6c5271f","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '9d16996d26b8a0e93c9ef7279915142a5153cec66428236afca7635cee5d8187');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 6d2db4dbfa93"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"dd2d4f3ca6c5271f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '413809e7199a469860ac640c719b04bfdff86a60f43b52ab17390f6f87246ef9');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - e7dd8cdb9d5f"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"dd2d4f3ca6c5271f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'ee91ceda76a7149230c8cd757c4a801cc62d856e3d47775bb11759dcc72bd47b');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:29:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '1b8207adaeb855fc8be36ea2b08638b2667c5d2735d895626667f44e75d06e0d');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:32:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '30c647e03abf3584393325457ee69141fb07f207518e0df1495f561783d3aff7');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9e1bccaceb6ac446","reference":"D001-019","stay":"e6d061dac53a55d9"},{"hold":"already_sold","line":"5900fdd8cced0796","reference":"W002-016","stay":null}],"now":["orders 842a36f2157b932c - 5013cc8278f6","lines 9e1bccaceb6ac446 waiting 6c40470b3960","lines 5900fdd8cced0796 unbound 046a7d6ea9d4"],"number":"B-38","order":"842a36f2157b932c"}', '0090ab67c3b92c55cd019e1e0a89fe32fc955636a112b885565d62de5f44d692');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:38:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"6b5bb827176213f3","reference":"W001","stay":null}],"now":["orders 46cf63b5317826e2 - 5f27049ff88a","lines 6b5bb827176213f3 unbound 58fe662f4119"],"number":"B-39","order":"46cf63b5317826e2"}', '87678312cd97336e70af0e94c853f9d1340b149b11dae680d45543ded0d2188c');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:41:00.000000+00:00', 'return expected', 'boss', '{"lines":["aeec1570b2334d40"],"now":["returns efda4925b2d8b144 expected da90e80e76cc"],"order":"ccc0e00c1d5d6cc2","return":"efda4925b2d8b144","until":"2026-03-20T23:59:59+00:00","why":"Too large"}', '28116290db0c8bc5eee6af3caf30326f06e9fb95861ef246856da93759f9f7a8');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:44:00.000000+00:00', 'return expected', 'boss', '{"lines":["b0a8e7106c98d80f"],"now":["returns 9722c13610da5c6e expected 1f8d101a71ea"],"order":"ccc0e00c1d5d6cc2","return":"9722c13610da5c6e","until":null,"why":""}', '458375e4213c2f63d4fdef84688609fe10e6ab13fc4b61572b5b459097328fce');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:47:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 9722c13610da5c6e arrived 8f739b7c12b9"],"return":"9722c13610da5c6e"}', 'd83d9e2673ea3fad899e6f3386928218a6b4eb2bc6a8943495a5942a09e6dec6');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:50:00.000000+00:00', 'returned', 'boss', '{"code":"D029","line":"b0a8e7106c98d80f","now":["slots D029 on_item b9aacb6774bd","stays 393efad15bcf3d40 stored 3940b5a4b0d4","lines b0a8e7106c98d80f returned 579cc5eae099","doubts daadb7c14babfbfb - f1c907771fea"],"stay":"393efad15bcf3d40","turn":1}', 'fca3f24b5009bad7b01bb8cce8a35eee01ba04fa1851abaa9ee66adcc50434b4');
INSERT INTO public.ledger VALUES (191, '2026-03-02T16:50:00.000000+00:00', 'doubted', 'boss', '{"doubt":"daadb7c14babfbfb","doubt_kind":"not_this","item":"5cf7b4c8350e9f35","now":["returns 9722c13610da5c6e checked ad8ff89a164e"],"words":"Came back: to be checked."}', '41b2863729dbb04975aafd90cbefbce0d5ecc4d464f483e0ab7edf300e9b9adf');
INSERT INTO public.ledger VALUES (192, '2026-03-02T16:50:00.000000+00:00', 'return checked', 'boss', '{"condition":"check","line":"b0a8e7106c98d80f","return":"9722c13610da5c6e"}', '3248735c59d83a3890d4320cef2e8174b586e34ca11577985d6688c239b6822b');
INSERT INTO public.ledger VALUES (193, '2026-03-02T16:53:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns 07dc1b753560f0e7 expected 8c87aac4f94f"],"order":null,"return":"07dc1b753560f0e7","until":null,"why":""}', 'd59227d57eade7638cded9fcb0a5b04b5af00190ca02db7f02c401433184fa35');
INSERT INTO public.ledger VALUES (194, '2026-03-02T16:56:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 07dc1b753560f0e7 arrived 2498e64375b6"],"return":"07dc1b753560f0e7"}', '093f265b3266ae285398e1f37e7faaefe99cdc158530f5e66aa49be4c780e8d6');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:02:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 2c4d4d157b5ced02 arrived da25f5b62d96"],"return":"2c4d4d157b5ced02"}', '55fc04b6536108dd2d418506b4b5bb099b7fc392d335823890e4b26715787086');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:05:00.000000+00:00', 'return given up', 'boss', '{"never_ours":"stays","now":["returns 2c4d4d157b5ced02 given_up 2109e1168e2e"],"return":"2c4d4d157b5ced02"}', '645e63b0e2f8096827a99a05e934111ddaa9226fbfbd2715103694920f198c20');
INSERT INTO public.ledger VALUES (198, '2026-03-02T17:08:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes c58b04cbb87adba1 open a79438b022b2"],"stocktake":"c58b04cbb87adba1"}', '814ae188292ae5d4da936cf3264f181823679d136b2f2a896bff90efc50e330b');
INSERT INTO public.ledger VALUES (199, '2026-03-02T17:15:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - df5760b4147c","slots S001 on_item 964d1517a673","doubts 2749b756c430d34a - 59c4037ba0e9"],"photo":null,"place":"B-1-1","stocktake":"c58b04cbb87adba1","unread":0}', 'c97649be8d62fca7cff8af691c5d98c4225e24f495352e2fe47fc779b49e0447');
INSERT INTO public.ledger VALUES (200, '2026-03-02T17:15:00.000000+00:00', 'doubted', 'boss', '{"doubt":"2749b756c430d34a","doubt_kind":"not_this","item":"566bce0776913771","now":["slots S003 on_item 3f2bcbe91754","slots S012 on_item f5381bd6bd19","slots D010 on_item d5ac88b828af"],"words":"A count found another thing on its card in B-1-1."}', '41bdcaa7d6b62199bf27cd3a58b4997759a751f33c166c9f4ba14603f2973cd1');
INSERT INTO public.ledger VALUES (201, '2026-03-02T17:23:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - ec87365b5a20","slots S011 on_item b0b261e048f9","slots S013 on_item 039848ebf4af"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"c58b04cbb87adba1","unread":0}', '33f75349e6498a8c936920d9929391d6683a0e992694a118d50759d0c5ae3b2e');
INSERT INTO public.ledger VALUES (202, '2026-03-02T17:29:00.000000+00:00', 'finding resolved', 'boss', '{"after":201,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 867949cc3e09","resolutions c58b04cbb87adba1.elsewhere-S012 - 1a00590f0831"],"reason":"","stocktake":"c58b04cbb87adba1","sure":false}', '7f3f49b6ac4190c703238498668cffe31f55821464f733e1635eace6e52fa122');
INSERT INTO public.ledger VALUES (203, '2026-03-02T17:32:00.000000+00:00', 'finding resolved', 'boss', '{"after":202,"finding":"unknown-Q0771","how":"ignore","now":["resolutions c58b04cbb87adba1.unknown-Q0771 - 9c40af350153"],"reason":"A neighbour''s","stocktake":"c58b04cbb87adba1","sure":false}', 'acbe24dd31ac5508242094e6970998a7deb1c8a493affcda5c789a72ae7d3ad4');
INSERT INTO public.ledger VALUES (204, '2026-03-02T17:35:00.000000+00:00', 'finding resolved', 'boss', '{"after":203,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item dfcc12b7cd30","resolutions c58b04cbb87adba1.missing-S008 - 85a0c12c0d56"],"reason":"","stocktake":"c58b04cbb87adba1","sure":false}', 'ca5b177c3521cc59aca82883a62a2030408790021d0f44dec1404578889106aa');
INSERT INTO public.ledger VALUES (205, '2026-03-02T17:38:00.000000+00:00', 'finding reopened', 'boss', '{"after":204,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions c58b04cbb87adba1.missing-S008 - -"],"stocktake":"c58b04cbb87adba1"}', '68cb184f36af563107a9280cc25e9bd16358786a5bb152e02cca334d96b86b46');
INSERT INTO public.ledger VALUES (206, '2026-03-02T17:41:00.000000+00:00', 'doubted', 'boss', '{"doubt":"00596d3ba9da929e","doubt_kind":"missing","item":"ddbbcc17cc4fefff","now":["doubts 00596d3ba9da929e - d2d8a07f3fff","stocktakes c58b04cbb87adba1 closed 8e95c34913e1"],"words":"a count of section:S did not find it"}', '3e89b03832242db8dd7e83b571fa8788cd4b5293b5683dc45de41debae2294a1');
INSERT INTO public.ledger VALUES (207, '2026-03-02T17:41:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"c58b04cbb87adba1"}', 'ed912153a8c7f20ba25a94362361fd9e335cdb0a532c9aca8a9b630585b39d54');
INSERT INTO public.ledger VALUES (208, '2026-03-02T17:44:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 27188c1d0dd1e9b4 open bf42fa19ea7a"],"stocktake":"27188c1d0dd1e9b4"}', '621ba925916e4bad201d54c8d403138096ebfb018d272c9e5f4c4006f8d66009');
INSERT INTO public.ledger VALUES (209, '2026-03-02T17:51:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - c6379481efd0","slots L003 on_item e197f8cedb43","slots L004 on_item 79ee945ce7a8","slots L005 on_item a5216dbd75fb","slots L007 on_item 264bbe8ef33d"],"photo":null,"place":"C-1-1","stocktake":"27188c1d0dd1e9b4","unread":0}', '06e22e1b39e257339cf82cda356aa2f9042f24c562ea9d2038a8709a86754c21');
INSERT INTO public.ledger VALUES (210, '2026-03-02T17:54:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 1e40f69e3dcc0810 - 29a442fb46a3"]}', '07678b72f52e2bca40cbf2e32b52ef51120d3c6f9c4b78d8c38f5114a561304c');
INSERT INTO public.ledger VALUES (211, '2026-03-02T17:54:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1e40f69e3dcc0810","doubt_kind":"missing","item":"b9085a64d3b5a121","now":["resolutions 27188c1d0dd1e9b4.missing-L008 - b40b28f1ac27"],"words":"a count did not find it"}', 'fea585092197cabe5fe51028327495857e9664ae0633fb9504c3941e475ee4a1');
INSERT INTO public.ledger VALUES (212, '2026-03-02T17:54:00.000000+00:00', 'finding resolved', 'boss', '{"after":209,"finding":"missing-L008","how":"lost","reason":"","stocktake":"27188c1d0dd1e9b4","sure":false}', '8fbc36125edcecdf9a2dbe875e254677d0be416744f2aa38422dab0d4e361ce1');
INSERT INTO public.ledger VALUES (213, '2026-03-02T17:57:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 3ec66eb97e215fbb withdrawn 1b5308e5b9d3","slots L009 due 821cc144d722","resolutions 27188c1d0dd1e9b4.missing-L009 - 6846020fcc4b"],"reason":"Nowhere to be found","stay":"3ec66eb97e215fbb"}', 'ae7fae95d2c057d29f3f66c366a3c6bbf805f4942136df347dc162d8d2d7b0d6');
INSERT INTO public.ledger VALUES (214, '2026-03-02T17:57:00.000000+00:00', 'finding resolved', 'boss', '{"after":212,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"27188c1d0dd1e9b4","sure":false}', '7bc5f60e28a8c116cb1907c529e3e4b610a374f6166b8329aae8433c3d49c2db');
INSERT INTO public.ledger VALUES (215, '2026-03-02T18:00:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes cfc359dc0c856f0d open d57fb0b74b4d"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"cfc359dc0c856f0d"}', '732b88f25b3dec613de4330e732ace465f42ed679cc24b5c09c08673777bd429');
INSERT INTO public.ledger VALUES (216, '2026-03-02T18:03:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 4ab1ffcc85cb5cef open ca9e95cf7c4e"],"stocktake":"4ab1ffcc85cb5cef"}', '37943a22a4e65b7a885bb234587647fb30836179a7e1052023c58932ad9fd787');
INSERT INTO public.ledger VALUES (217, '2026-03-02T18:06:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 4ab1ffcc85cb5cef cancelled ef19c4c35091"],"stocktake":"4ab1ffcc85cb5cef"}', '044bfb132c65a6dd1eba33f031d78f9144bb391ffc58b3859f4a1de6070bf2a2');
INSERT INTO public.lines VALUES (15, 'cd39f67b46263c67', '980cdbba59b65786', 1, 'D009-01B', 'Rear derailleur 9', '', '6966c06393824af0', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (21, 'cc6dfd25bacab154', 'a279dc218a24dc60', 1, 'D003-01U', 'Bell with a crown', '', 'ccb57e35614a0490', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]', '', '');
INSERT INTO public.lines VALUES (22, '68b5e4357ab927c2', 'f62f12dd4b36b004', 1, 'D005-01E', 'Rear derailleur 5', '', '23ac1b6ab5ed06d1', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (23, '73bdc706b927ab94', 'f62f12dd4b36b004', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Z."]]', '', '');
INSERT INTO public.lines VALUES (24, 'de46c508c091b5ef', 'e77d8865e57a5eb7', 1, 'D006-016', 'Rear derailleur 6', '', '5e9dbb0058903dcd', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (25, '69d3125e7490c6bf', 'e77d8865e57a5eb7', 2, 'D007-01R', 'Rear derailleur 7', '', '979940bbb580253e', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]', '', '');
INSERT INTO public.lines VALUES (26, '35f1b5202ee2d942', '59547ab51bfba706', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "This is not written like a reference."]]', '', '');
INSERT INTO public.lines VALUES (27, '3b161c53041c46d7', '130dad3c754ab862', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]', '', '');
INSERT INTO public.lines VALUES (28, 'dc3013c3bcf1daa7', '9eedc3093de5b8db', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]', '', '');
INSERT INTO public.lines VALUES (29, 'e826dcd186b99a1d', '5f1c6bc2824aab1c', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]', '', '');
INSERT INTO public.lines VALUES (30, '0dbecf4662d68ad8', 'b68d6c201aba1c43', 1, 'W005-01B', 'Bell with a crown', '', 'b90cbc98e411aee9', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (14, 'a557016d9aed7ded', '514e0176cef66742', 1, 'L007-014', 'Dynamo lamp 7', '', '3b5def7e8604284c', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]', '', '');
INSERT INTO public.lines VALUES (10, 'ea02a1f2eed63119', 'dc02ec196a9dfd67', 1, 'L005-01K', 'Dynamo lamp 5', '', '393aacfcdcb15aa3', 'cancelled', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (16, 'aa96690f137a8671', '816d1ac4fd4b44bc', 1, 'W006-013', 'Front wheel 6', '', 'b7dde8b121ef4532', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (31, '9f5cb38d7d45e0d8', '8a3809ab052c68b7', 1, 'L012-01S', 'Dynamo lamp 12', '', '8fd179b8d26c287e', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (32, '0189e5fa76de1fac', 'acc69bca5a47b83e', 1, 'S012-01O', '', '', '1a28615cbd5e3074', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (34, '47fb8486eb7cf25f', 'ba9616dcde86629a', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Q."]]', '', '');
INSERT INTO public.lines VALUES (33, '4257aa9332fe2096', '746fd482bb97fe1c', 1, 'Q7', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]]', '', '');
INSERT INTO public.lines VALUES (19, 'ca0fd709670d3838', '69fcb4088e726891', 2, 'W008-01O', 'Front wheel 8', '', 'c152c20d8458bb99', 'waiting', NULL, 'c31f3aa0abd6d6d3', 7, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (1, 'aeec1570b2334d40', 'ccc0e00c1d5d6cc2', 1, 'W001-01E', 'Front wheel 1', '', '767ea3f5b77c3955', 'released', '32bfae5030cd4c23', 'c31f3aa0abd6d6d3', 1, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (18, 'bec93d614b39d7f6', '69fcb4088e726891', 1, 'W007-01W', 'Front wheel 7', '', '6689f02437be805b', 'released', '23d2e5b34fd24fc6', 'c31f3aa0abd6d6d3', 7, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (5, '5abcefcc6168d332', 'ff538d9b9b2e6cb1', 1, 'S004-01O', 'Leather saddle 4', '', '0fcaf8d5b7b7f006', 'packed', 'd840e86dd9be4965', 'c31f3aa0abd6d6d3', 3, 'pack-S004', true, '[]', '', '');
INSERT INTO public.lines VALUES (4, '8f80c4b2f53c9b8c', '86cff253d140cd72', 2, 'S003-01W', 'Leather saddle 3', '', 'ca6fd90cd0fcd7f9', 'picked', NULL, 'c31f3aa0abd6d6d3', 2, 'pick-S003', true, '[]', '', '');
INSERT INTO public.lines VALUES (6, '9a0178d283b6bd31', 'ff538d9b9b2e6cb1', 2, 'S005-01G', 'Leather saddle 5', '', '49c6b40983270f57', 'picked', NULL, 'c31f3aa0abd6d6d3', 3, 'pick-S005', true, '[]', '', '');
INSERT INTO public.lines VALUES (17, 'e05b5b586d5bd77a', '668f986bcb5d853c', 1, 'S007-01Z', 'Leather saddle 7', '', 'd400d5048670bd31', 'picked', NULL, 'c31f3aa0abd6d6d3', 6, 'pick-S007', true, '[]', '', '');
INSERT INTO public.lines VALUES (11, '30d74fb5037ba998', '6314334c8bd078c2', 1, 'L006-01C', 'Dynamo lamp 6', '', '562d4f39f85e7f91', 'packed', '53759bd17628c03d', 'c31f3aa0abd6d6d3', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]', '', '');
INSERT INTO public.lines VALUES (12, '58d970737b28eefc', '6314334c8bd078c2', 2, 'L011-010', 'Dynamo lamp 11', '', '804c077df9da0e83', 'cancelled', NULL, 'c31f3aa0abd6d6d3', 4, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (3, '1ad7b9250fbb5fe5', '86cff253d140cd72', 1, 'S002-013', 'Leather saddle 2', '', 'f8e1d47c89b9b185', 'packed', '59d1c9557dd75e02', 'c31f3aa0abd6d6d3', 2, 'pack-S002', true, '[]', '', '');
INSERT INTO public.lines VALUES (13, 'c30932641f37a84a', 'e08aa9d021a3fb97', 1, 'S006-018', 'Saddle with springs', '', '59d95a6af5df1225', 'picked', NULL, 'c31f3aa0abd6d6d3', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]', '', '');
INSERT INTO public.lines VALUES (20, 'aa26e46707f28287', '9a2e6fd595b76c6c', 1, 'D008-01J', 'Rear derailleur 8', '', '076bfbcf6a2d784f', 'waiting', NULL, 'dd2d4f3ca6c5271f', 8, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (36, '5900fdd8cced0796', '842a36f2157b932c', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]', '', '');
INSERT INTO public.lines VALUES (8, '3357a5753a611c90', '967b12d5a7096e59', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '8fd38449a0490e74', 'waiting', NULL, 'dd2d4f3ca6c5271f', 4, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (37, '6b5bb827176213f3', '46cf63b5317826e2', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]', '', '');
INSERT INTO public.lines VALUES (7, '7a59f0d8539a6b88', '0f4ed16d59229f43', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', '077de0cb4e839c75', 'picked', NULL, 'dd2d4f3ca6c5271f', 1, 'pick-L002', true, '[]', '', '');
INSERT INTO public.lines VALUES (9, 'a6da8091ed36535b', 'ada193deb47a7746', 1, 'L004-01S', 'Dynamo lamp 4', '', '91d98b00c64f7e9a', 'short', NULL, 'dd2d4f3ca6c5271f', 7, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (35, '9e1bccaceb6ac446', '842a36f2157b932c', 1, 'D001-019', 'Rear derailleur 1', '', 'e6d061dac53a55d9', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '', '');
INSERT INTO public.lines VALUES (2, 'b0a8e7106c98d80f', 'ccc0e00c1d5d6cc2', 2, 'W002-016', 'Front wheel 2', '', 'a7e4d2bffb2089c5', 'returned', '32bfae5030cd4c23', 'c31f3aa0abd6d6d3', 1, NULL, true, '[]', '', '');
INSERT INTO public.listings VALUES (1, '914604baa5f35a62', '0dc0d3b45e2a21d7', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, '6a63f49e6f0c0500', '8474d227fd89916b', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, '628fe28a2881995c', '260be32b2c5cf327', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, '11fb03180f6a9aac', '47335c47a708c7a6', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, 'f59b5fe0f18792d1', 'f45dc295a9536752', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, 'a876eef396fb5681', 'a6fd953818958dcd', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, '92b829742ab2c701', '7f4ba13ebe21e4c5', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, 'ae265b786711e4bd', 'cb5c6dc272dd37d3', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, '4091d7efafab42e5', '4b3b2a0c3ca29487', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, 'bbb27e8e09bceba9', 'fe8c2f0fbe99eeb0', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, '95a93289827c15f0', 'b73ce0f917be4536', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, '605f4a3f7f772e66', '566bce0776913771', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, 'dea581b325ac3a17', '5557197a677eeb37', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, 'e22b6a9b8651ce1a', '2c2e5b4ab18462b1', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, '9856ec62379820d6', 'f329b68937fa5012', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, 'caab593d47de57a1', 'e5e5b1a14dffcb3b', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, '64f566f6c21873b1', 'c1af653de0db713e', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, 'abc60aea2195a717', 'f924d649a4968ead', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, '477416e974c0e938', 'ddbbcc17cc4fefff', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, '252c0a3cf16e1191', '76efc66a59a9d16e', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, '9447490d66b3b137', '5abd5b42783aa07b', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, 'f9b7cd5fa096735d', 'd8d86d3dafd939a2', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, '00e4320187a71ba9', 'c1615edef50df55f', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, 'c490aa65b51a7238', '4d6d555d692e158f', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '695a907774575306', '675968cb1a9774c0', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, '68c09c1b7b0d93a5', 'bcf99bb669744b04', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, '3a22815f5315e346', 'ff1641e4ddec97c1', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, 'f1cbcf1311a17e4b', 'fdf244ec75802757', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, '6287b46f7bf8e920', '8f03c1fa5a4f63c3', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, 'aa0f6b67cfb128ae', '5a359b73d6b8ea61', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, 'eac2e9e078c8689f', 'b9085a64d3b5a121', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, '012142c6ce0d29c7', 'e458d2b61b4e35a1', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, '65e7702b011bf463', '7b7e70d53daf0e3e', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, '5f2b8327f16e6b21', '644894a40c9b071e', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, 'e98580c8e9117b16', '7793eba275d04472', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, 'bc45b1a1d9060248', 'f4500ec821eff9c2', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, 'a1ed371408ffbdab', '5cf7b4c8350e9f35', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, 'fe937d8567462e3d', '6140406a9ade959a', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, '1b99ce5dfac7c822', '3d92a2398548ec40', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, '2f7f1d65a342f202', '12ca49ba676004b5', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, '6a885094230f2848', '7139c3f597256e7d', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, 'c13433f1483714f6', 'fb0d02dadd14cf24', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '2c2e90bebbe1bc2d', '0f6b954a5b8f171e', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, '43fadbe58f5be15d', '89e978d3c6b6469a', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, 'f99aac5cf48ba8f0', '63e88bbf645cab59', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, 'fbf3c0c9bb481dbf', '099bf3159e20539e', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, 'd5be8ffc1dea48eb', '98ff0cb0f2f9924a', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, '1d9408e09da74a6c', 'f4500ec821eff9c2', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, '33489ee6be8d81d0', 'f4500ec821eff9c2', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, '97a69d709c05d1a8', '5557197a677eeb37', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, '9eed487484471e71', '5557197a677eeb37', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, '795d9fc5eae50295', 'cb5c6dc272dd37d3', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, 'cf716b19965e2194', 'cb5c6dc272dd37d3', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, 'f5f730d00b5ad784', '98ff0cb0f2f9924a', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, '077189e45dc333c3', '98ff0cb0f2f9924a', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, '638637c68439a1bb', 'e458d2b61b4e35a1', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, 'caf89133ce8d5f01', 'fa7d55af9d005f63', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '4500e57adb4f9984', 'fa7d55af9d005f63', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, '8cf96e5e348a5a5a', 'e458d2b61b4e35a1', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, '513ebcaa71264085', '675968cb1a9774c0', 'fair', 'fair-L002', '7a59f0d8539a6b88', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, '8a37ca3c66cb961a', 'bcf99bb669744b04', 'fair', 'fair-L003', '3357a5753a611c90', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'c58b04cbb87adba1', 'B-1-1', '2026-03-02T17:15:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'c58b04cbb87adba1', 'B-1-2', '2026-03-02T17:23:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '27188c1d0dd1e9b4', 'C-1-1', '2026-03-02T17:51:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '0f4ed16d59229f43', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '967b12d5a7096e59', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, 'ada193deb47a7746', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, 'dc02ec196a9dfd67', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, 'e08aa9d021a3fb97', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, '514e0176cef66742', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '980cdbba59b65786', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '816d1ac4fd4b44bc', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, '9a2e6fd595b76c6c', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, 'a279dc218a24dc60', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, 'f62f12dd4b36b004', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'e77d8865e57a5eb7', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '59547ab51bfba706', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '130dad3c754ab862', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '9eedc3093de5b8db', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '5f1c6bc2824aab1c', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, 'b68d6c201aba1c43', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, '8a3809ab052c68b7', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, 'acc69bca5a47b83e', 'F-1', 'Fair', '2026-03-02T13:59:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (26, '746fd482bb97fe1c', 'F-2', 'Fair', '2026-03-02T13:59:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (27, 'ba9616dcde86629a', 'F-3', 'Fair', '2026-03-02T13:59:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (1, 'ccc0e00c1d5d6cc2', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, '69fcb4088e726891', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '668f986bcb5d853c', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, 'ff538d9b9b2e6cb1', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'd840e86dd9be4965', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, '6314334c8bd078c2', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '53759bd17628c03d', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '86cff253d140cd72', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '59d1c9557dd75e02', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, '842a36f2157b932c', 'B-38', 'fair', '2026-03-02T16:35:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, '46cf63b5317826e2', 'B-39', '', '2026-03-02T16:38:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (2, '23d2e5b34fd24fc6', 'main', '69fcb4088e726891', '2026-03-02T15:26:00.000000+00:00', 'closed', '2026-03-02T15:29:00.000000+00:00', NULL, '', '', '', true);
INSERT INTO public.parcels VALUES (1, '32bfae5030cd4c23', 'main', 'ccc0e00c1d5d6cc2', '2026-03-02T14:55:00.000000+00:00', 'handed_over', '2026-03-02T15:04:00.000000+00:00', '2026-03-02T15:35:00.000000+00:00', 'The red van', 'boss', '', false);
INSERT INTO public.parcels VALUES (3, '3cd23a987c836855', 'main', '668f986bcb5d853c', '2026-03-02T15:38:00.000000+00:00', 'dropped', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (4, 'd840e86dd9be4965', 'main', 'ff538d9b9b2e6cb1', '2026-03-02T15:44:00.000000+00:00', 'aside', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (5, '53759bd17628c03d', 'second', '6314334c8bd078c2', '2026-03-02T15:53:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (6, '59d1c9557dd75e02', 'main', '86cff253d140cd72', '2026-03-02T16:02:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'c58b04cbb87adba1.elsewhere-S012', 'c58b04cbb87adba1', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T17:29:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T17:15:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1a28615cbd5e3074", "item": "c1615edef50df55f", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0189e5fa76de1fac", "order": "acc69bca5a47b83e", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1a28615cbd5e3074", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true, "status": "", "quantity": ""}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T17:29:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "1a28615cbd5e3074", "item": "c1615edef50df55f", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0189e5fa76de1fac", "order": "acc69bca5a47b83e", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "1a28615cbd5e3074", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true, "status": "", "quantity": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'c58b04cbb87adba1.unknown-Q0771', 'c58b04cbb87adba1', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T17:32:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '27188c1d0dd1e9b4.missing-L008', '27188c1d0dd1e9b4', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:54:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "bf3b3200cf738c5c", "item": "b9085a64d3b5a121", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "bf3b3200cf738c5c", "item": "b9085a64d3b5a121", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["1e40f69e3dcc0810"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '27188c1d0dd1e9b4.missing-L009', '27188c1d0dd1e9b4', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:57:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3ec66eb97e215fbb", "item": "e458d2b61b4e35a1", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3ec66eb97e215fbb", "item": "e458d2b61b4e35a1", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:57:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.returns VALUES (1, 'efda4925b2d8b144', 'ccc0e00c1d5d6cc2', 'aeec1570b2334d40', 'Too large', '2026-03-20T23:59:59.000000+00:00', 'expected', '2026-03-02T16:41:00.000000+00:00', NULL, NULL, '[]');
INSERT INTO public.returns VALUES (2, '9722c13610da5c6e', 'ccc0e00c1d5d6cc2', 'b0a8e7106c98d80f', '', NULL, 'checked', '2026-03-02T16:44:00.000000+00:00', '2026-03-02T16:47:00.000000+00:00', '2026-03-02T16:50:00.000000+00:00', '[["b0a8e7106c98d80f", "check", "393efad15bcf3d40"]]');
INSERT INTO public.returns VALUES (3, '07dc1b753560f0e7', NULL, '', '', NULL, 'arrived', '2026-03-02T16:53:00.000000+00:00', '2026-03-02T16:56:00.000000+00:00', NULL, '[]');
INSERT INTO public.returns VALUES (4, '2c4d4d157b5ced02', NULL, '', 'Left at the door', NULL, 'given_up', '2026-03-02T16:59:00.000000+00:00', '2026-03-02T17:02:00.000000+00:00', NULL, '[[null, "stays", null]]');
INSERT INTO public.rounds VALUES (1, 'c31f3aa0abd6d6d3', '2026-03-02T14:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'dd2d4f3ca6c5271f', '2026-03-02T16:11:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'ded3c6f6c96a36fbb8e67f99e4c16667933d4aa82da644ee7de17778fa13d9a5', 'bin', 'c31f3aa0abd6d6d3', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'a2a1c821b265c6267e1524f64e5789e7871ffaa3dd05e371eecae64af9dacc6d', 'bin', 'c31f3aa0abd6d6d3', 'W001', false, true, true, 'aeec1570b2334d40', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": "aeec1570b2334d40", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:13:00.000000+00:00', '["on_item", ["767ea3f5b77c3955", "stored"], ["aeec1570b2334d40", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '672ca40ec8f5a5ee100e8c76104bd302e6093294b3e8f0d768e99d87dc0fb69e', 'bin', 'c31f3aa0abd6d6d3', 'W002', false, true, true, 'b0a8e7106c98d80f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": "b0a8e7106c98d80f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:16:00.000000+00:00', '["on_item", ["a7e4d2bffb2089c5", "stored"], ["b0a8e7106c98d80f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'a23e5148528f5fc78905b99bb8391db57e9e81500c100c9ba93a5ec8c6f6344e', 'bin', 'c31f3aa0abd6d6d3', 'S002', false, true, true, '1ad7b9250fbb5fe5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "86cff253d140cd72", "order_number": "B-03", "line": "1ad7b9250fbb5fe5", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:19:00.000000+00:00', '["on_item", ["f8e1d47c89b9b185", "stored"], ["1ad7b9250fbb5fe5", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '4deca8317627f3b696fbe3c6ef5563aa34be29bbef45749ef885bdb13763b98d', 'bin', 'c31f3aa0abd6d6d3', 'S003', false, true, true, '8f80c4b2f53c9b8c', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "86cff253d140cd72", "order_number": "B-03", "line": "8f80c4b2f53c9b8c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["ca6fd90cd0fcd7f9", "stored"], ["8f80c4b2f53c9b8c", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '52fb34c07d169c2825d9f1af49db8341b2df40fbf30939456f2853eaadfaa075', 'bin', 'c31f3aa0abd6d6d3', 'S004', false, true, true, '5abcefcc6168d332', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ff538d9b9b2e6cb1", "order_number": "B-04", "line": "5abcefcc6168d332", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:25:00.000000+00:00', '["on_item", ["0fcaf8d5b7b7f006", "stored"], ["5abcefcc6168d332", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'a0c32187c9199410bdfe2b1241f860b02ec1208868078541cb1e3756d3dec077', 'bin', 'c31f3aa0abd6d6d3', 'S005', false, true, true, '9a0178d283b6bd31', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "ff538d9b9b2e6cb1", "order_number": "B-04", "line": "9a0178d283b6bd31", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:28:00.000000+00:00', '["on_item", ["49c6b40983270f57", "stored"], ["9a0178d283b6bd31", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '327bde8dbe4b2425ad615529ac19ea028eb4ead6db406e0e833bbb5250fd5f5f', 'bin', 'c31f3aa0abd6d6d3', 'L006', false, true, true, '30d74fb5037ba998', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "6314334c8bd078c2", "order_number": "B-09", "line": "30d74fb5037ba998", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:31:00.000000+00:00', '["on_item", ["562d4f39f85e7f91", "stored"], ["30d74fb5037ba998", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '734eb3338370ee609af4c1e3bb3106a115f1494549bf5ef7987e9ee32df6bcb6', 'bin', 'c31f3aa0abd6d6d3', 'L011', false, true, true, '58d970737b28eefc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "6314334c8bd078c2", "order_number": "B-09", "line": "58d970737b28eefc", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:34:00.000000+00:00', '["on_item", ["804c077df9da0e83", "stored"], ["58d970737b28eefc", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '6ca2d55410e0e58c57bbf36f48e766289d8b3409f28bf1d059972d695711a598', 'bin', 'c31f3aa0abd6d6d3', 'S006', false, true, true, 'c30932641f37a84a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "e08aa9d021a3fb97", "order_number": "B-13", "line": "c30932641f37a84a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:37:00.000000+00:00', '["on_item", ["59d95a6af5df1225", "stored"], ["c30932641f37a84a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '73a5a75d6039137d0c0eccaa09e9798e67c15cd67a8608a1fec96a4c0cb01e45', 'bin', 'c31f3aa0abd6d6d3', 'S007', false, true, true, 'e05b5b586d5bd77a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "668f986bcb5d853c", "order_number": "B-22", "line": "e05b5b586d5bd77a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:40:00.000000+00:00', '["on_item", ["d400d5048670bd31", "stored"], ["e05b5b586d5bd77a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '71a58eb820b70fcaccbdb3c1b5a5139be128827bdea7a3d5c374a5d3b2a1b85c', 'bin', 'c31f3aa0abd6d6d3', 'W007', false, true, true, 'bec93d614b39d7f6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "69fcb4088e726891", "order_number": "B-23", "line": "bec93d614b39d7f6", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["6689f02437be805b", "stored"], ["bec93d614b39d7f6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '803d441b30e8a6c8611d335b4d71fa4888b6fba7f18285270bbd9e10be73787d', 'bin', 'c31f3aa0abd6d6d3', 'W008', false, true, true, 'ca0fd709670d3838', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "69fcb4088e726891", "order_number": "B-23", "line": "ca0fd709670d3838", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:46:00.000000+00:00', '["on_item", ["c152c20d8458bb99", "stored"], ["ca0fd709670d3838", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '1ad7b9250fbb5fe5', '32bfae5030cd4c23', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "86cff253d140cd72", "order_number": "B-03", "line": "1ad7b9250fbb5fe5", "line_state": "picked", "order_state": "picking", "parcel": "32bfae5030cd4c23", "parcel_state": "open", "released": []}', '', '2026-03-02T14:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'aeec1570b2334d40', '32bfae5030cd4c23', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": "aeec1570b2334d40", "line_state": "packed", "order_state": "picking", "parcel": "32bfae5030cd4c23", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["767ea3f5b77c3955", "stored"], ["aeec1570b2334d40", "packed", "32bfae5030cd4c23", []], ["32bfae5030cd4c23", "2026-03-02T14:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'b0a8e7106c98d80f', '32bfae5030cd4c23', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": "b0a8e7106c98d80f", "line_state": "released", "order_state": "released", "parcel": "32bfae5030cd4c23", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T15:04:00.000000+00:00', '["due", ["a7e4d2bffb2089c5", "shipped"], ["b0a8e7106c98d80f", "released", "32bfae5030cd4c23", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'aeec1570b2334d40', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": "aeec1570b2334d40", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:07:00.000000+00:00', '["tray", ["767ea3f5b77c3955", "shipped"], ["aeec1570b2334d40", "released", "32bfae5030cd4c23", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'bec93d614b39d7f6', '23d2e5b34fd24fc6', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "69fcb4088e726891", "order_number": "B-23", "line": "bec93d614b39d7f6", "line_state": "packed", "order_state": "waiting", "parcel": "23d2e5b34fd24fc6", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["6689f02437be805b", "stored"], ["bec93d614b39d7f6", "packed", "23d2e5b34fd24fc6", []], ["23d2e5b34fd24fc6", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'gone', '73aa8b1427160fbfbc3a93de06cbd6081c0544c4289a5ee2ac9162123501fa2a', 'table', '', NULL, false, true, true, NULL, '32bfae5030cd4c23', '{"verdict": "accepted", "reason": null, "advice": "B-01: handed over, 2 things.", "replayed": false, "changed": true, "code": null, "title": null, "photo": null, "order": "ccc0e00c1d5d6cc2", "order_number": "B-01", "line": null, "line_state": null, "order_state": "released", "parcel": "32bfae5030cd4c23", "parcel_state": "handed_over", "released": []}', '', '2026-03-02T15:35:00.000000+00:00', '"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66"');
INSERT INTO public.scans VALUES (20, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '5abcefcc6168d332', 'd840e86dd9be4965', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ff538d9b9b2e6cb1", "order_number": "B-04", "line": "5abcefcc6168d332", "line_state": "packed", "order_state": "picking", "parcel": "d840e86dd9be4965", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:47:00.000000+00:00', '["on_item", ["0fcaf8d5b7b7f006", "stored"], ["5abcefcc6168d332", "packed", "d840e86dd9be4965", []], ["d840e86dd9be4965", "2026-03-02T15:44:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '30d74fb5037ba998', '53759bd17628c03d', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "6314334c8bd078c2", "order_number": "B-09", "line": "30d74fb5037ba998", "line_state": "packed", "order_state": "picking", "parcel": "53759bd17628c03d", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:56:00.000000+00:00', '["on_item", ["562d4f39f85e7f91", "stored"], ["30d74fb5037ba998", "packed", "53759bd17628c03d", []], ["53759bd17628c03d", "2026-03-02T15:53:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '1ad7b9250fbb5fe5', '59d1c9557dd75e02', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "86cff253d140cd72", "order_number": "B-03", "line": "1ad7b9250fbb5fe5", "line_state": "packed", "order_state": "picking", "parcel": "59d1c9557dd75e02", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T16:05:00.000000+00:00', '["on_item", ["f8e1d47c89b9b185", "stored"], ["1ad7b9250fbb5fe5", "packed", "59d1c9557dd75e02", []], ["59d1c9557dd75e02", "2026-03-02T16:02:00+00:00"]]');
INSERT INTO public.scans VALUES (23, 'pick-L002', '91cf01255d5b1b313562a6e87242603d7efe27a9f49f1228b13e36bd0192d709', 'bin', 'dd2d4f3ca6c5271f', 'L002', false, true, true, '7a59f0d8539a6b88', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "0f4ed16d59229f43", "order_number": "B-05", "line": "7a59f0d8539a6b88", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:14:00.000000+00:00', '["on_item", ["077de0cb4e839c75", "stored"], ["7a59f0d8539a6b88", "picked", null, []], null]');
INSERT INTO public.scans VALUES (24, 'bad-D0146', '1ab96cfc5563b3bde3d8667c3aabea4a9f8deae80be1ff73d0f3223fa4c81c39', 'bin', 'dd2d4f3ca6c5271f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-hello', '453c8376eca79fa26e50a51a840c11ff71284ac0bec6268205a040531334b678', 'bin', 'dd2d4f3ca6c5271f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (26, 'bad-', '2d96ada6d16b8a914133c7b9be70fcecc88d62ec8f53d3071da678d1fe74376b', 'bin', 'dd2d4f3ca6c5271f', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:26:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:56:00.000000+00:00', '53759bd17628c03d', 'bin', 'C-1-1', 'c31f3aa0abd6d6d3', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:28:00.000000+00:00', NULL, 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:34:00.000000+00:00', NULL, 'bin', 'C-1-2', 'c31f3aa0abd6d6d3', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:40:00.000000+00:00', NULL, 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T16:05:00.000000+00:00', '59d1c9557dd75e02', 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:37:00.000000+00:00', NULL, 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:04:00.000000+00:00', '32bfae5030cd4c23', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', '23d2e5b34fd24fc6', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:47:00.000000+00:00', 'd840e86dd9be4965', 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:14:00.000000+00:00', NULL, 'bin', 'C-1-1', 'dd2d4f3ca6c5271f', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, 'bin', 'B-1-1', 'c31f3aa0abd6d6d3', 2, NULL, NULL, false);
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
INSERT INTO public.stays VALUES (1, 'e6d061dac53a55d9', '0dc0d3b45e2a21d7', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, '32d6d7e25a2c8f3c', '8474d227fd89916b', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, 'ccb57e35614a0490', '260be32b2c5cf327', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, 'fb6d0954a0396fda', 'fa7d55af9d005f63', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, '23ac1b6ab5ed06d1', '47335c47a708c7a6', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, '5e9dbb0058903dcd', 'f45dc295a9536752', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '979940bbb580253e', 'a6fd953818958dcd', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, '6966c06393824af0', 'cb5c6dc272dd37d3', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '0dcac76cdee80b4e', '4b3b2a0c3ca29487', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '4164d14ce128a79a', 'fe8c2f0fbe99eeb0', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '116608e61b3ff4f4', 'b73ce0f917be4536', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '3dea42c0c693bb00', '566bce0776913771', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, 'f8e1d47c89b9b185', '5557197a677eeb37', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'ca6fd90cd0fcd7f9', '2c2e5b4ab18462b1', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '0fcaf8d5b7b7f006', 'f329b68937fa5012', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '49c6b40983270f57', 'e5e5b1a14dffcb3b', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '59d95a6af5df1225', 'c1af653de0db713e', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, 'd400d5048670bd31', 'f924d649a4968ead', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '5be8c01b0cd8949e', 'ddbbcc17cc4fefff', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, '1294929c1eddf3b0', 'd8d86d3dafd939a2', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '1a28615cbd5e3074', 'c1615edef50df55f', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, '1f8631d29402634a', '4d6d555d692e158f', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, '077de0cb4e839c75', '675968cb1a9774c0', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '8fd38449a0490e74', 'bcf99bb669744b04', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '91d98b00c64f7e9a', 'ff1641e4ddec97c1', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, '393aacfcdcb15aa3', 'fdf244ec75802757', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, '562d4f39f85e7f91', '8f03c1fa5a4f63c3', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '3b5def7e8604284c', '5a359b73d6b8ea61', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'bf3b3200cf738c5c', 'b9085a64d3b5a121', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'dd6c7b7fb73bfd4d', '7b7e70d53daf0e3e', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '804c077df9da0e83', '644894a40c9b071e', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '8fd179b8d26c287e', '7793eba275d04472', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, 'bda73f5fca3a0a3d', '6140406a9ade959a', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, 'b90cbc98e411aee9', '12ca49ba676004b5', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, 'b7dde8b121ef4532', '7139c3f597256e7d', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, 'c152c20d8458bb99', '0f6b954a5b8f171e', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, '6f3b96aa11af5375', '89e978d3c6b6469a', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, 'a35ebdb599c6d94b', '63e88bbf645cab59', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, '1a321670a56342de', '099bf3159e20539e', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, '0559f4300e335fa4', '98ff0cb0f2f9924a', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, 'f81f9ff9d124ee63', '6453ce3b4692619b', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '0bb1da179bac9e1b', '5abd5b42783aa07b', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'bd7f96487b2d49ac', '3d92a2398548ec40', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '803876ffb71af9d0', '76efc66a59a9d16e', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '3298b9f15d4ebe37', '76efc66a59a9d16e', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '8375837235c02e43', '5acbcc65804e5984', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '04f24fa20740cbd2', 'd20fff866a0aa9be', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, 'dbf5bb71c8aea882', '7f4ba13ebe21e4c5', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '076bfbcf6a2d784f', '7f4ba13ebe21e4c5', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '767ea3f5b77c3955', 'f4500ec821eff9c2', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, 'a7e4d2bffb2089c5', '5cf7b4c8350e9f35', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '17a8538fe693c141', '880ebf0a3283ea31', 'W001', 2, '2026-03-02T15:10:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, '6689f02437be805b', 'fb0d02dadd14cf24', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:29:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (55, '393efad15bcf3d40', '5cf7b4c8350e9f35', 'D029', 1, '2026-03-02T16:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '3ec66eb97e215fbb', 'e458d2b61b4e35a1', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:57:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'c58b04cbb87adba1', 'section:S', 'Spring', '2026-03-02T17:08:00.000000+00:00', 197, 'closed', '2026-03-02T17:41:00.000000+00:00', '{"stocktake": "c58b04cbb87adba1", "area": "section:S", "note": "Spring", "opened": "2026-03-02T17:08:00+00:00", "closed": "2026-03-02T17:41:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T17:29:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T17:32:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '27188c1d0dd1e9b4', 'section:L', 'Spring', '2026-03-02T17:44:00.000000+00:00', 207, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'cfc359dc0c856f0d', 'section:D', '', '2026-03-02T18:00:00.000000+00:00', 214, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '4ab1ffcc85cb5cef', 'tray', 'Too late today', '2026-03-02T18:03:00.000000+00:00', 215, 'cancelled', '2026-03-02T18:06:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'c31f3aa0abd6d6d3', 1, '1ad7b9250fbb5fe5', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'c31f3aa0abd6d6d3', 2, '8f80c4b2f53c9b8c', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'c31f3aa0abd6d6d3', 3, '5abcefcc6168d332', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'c31f3aa0abd6d6d3', 4, '9a0178d283b6bd31', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'c31f3aa0abd6d6d3', 5, 'c30932641f37a84a', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'c31f3aa0abd6d6d3', 6, 'e05b5b586d5bd77a', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'c31f3aa0abd6d6d3', 7, 'aeec1570b2334d40', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'c31f3aa0abd6d6d3', 8, 'b0a8e7106c98d80f', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'c31f3aa0abd6d6d3', 9, 'bec93d614b39d7f6', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'c31f3aa0abd6d6d3', 10, 'ca0fd709670d3838', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'c31f3aa0abd6d6d3', 11, '30d74fb5037ba998', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'c31f3aa0abd6d6d3', 12, '58d970737b28eefc', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'dd2d4f3ca6c5271f', 1, 'aa26e46707f28287', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'dd2d4f3ca6c5271f', 2, '7a59f0d8539a6b88', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'dd2d4f3ca6c5271f', 3, '3357a5753a611c90', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'dd2d4f3ca6c5271f', 4, 'a6da8091ed36535b', 'C-1-1');
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
