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
    status text DEFAULT ''::text NOT NULL
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
INSERT INTO public.access VALUES (1, '34e71839212033637e3e485685bc4d2e58e23161e2eccebcf4bbbfdbda914b10', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$I1+7GOGUWBxU/jBXexxpQQ$TfAL80C0gY61w48RWsydHZ4q9Oz4PLI7ldNqs06WQCU', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '4e3eb6702f3285947d30285afbb6d0e41d9963f7233d575b4c496c316a71afe0', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '0d924a5628c3d6d6bc8923092f8e48b67086e023060553762f814461fad88abe', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'a4fde8e3f1974fb6fe8e418171551f2ec908f333a42031ec1b8ea7af0994a253', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'f5abf20a9b87b879878ec911091b99569f911ed434fecd90008a1fb544b59f27', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/8b66296f2fe78446', '{"id": "8b66296f2fe78446", "item": "cd27537749289fc5", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "packing": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '5c54dd7b9ce4523e', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', 'a89c98cd592095a4', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"864f028df76808a8": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true, "status": ""}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"864f028df76808a8": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true, "status": ""}}}}');
INSERT INTO public.changed_orders VALUES (2, '9e3f6e5abff0531f', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', '78715b3af03a0707', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"6f08d9820c69c429": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true, "status": ""}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"6f08d9820c69c429": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]], "in_file": false, "status": ""}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, '1f2b2b715dc93fb3', '4b13a9473d241919', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'eb95f8864df6c27d', 'b109bdb7b9779fca', 'missing', 'Not in its bin', '2026-03-02T16:17:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '27fa6510491c4cda', '4232b1c3a4283d53', 'not_this', 'Came back: to be checked.', '2026-03-02T16:50:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '7450aa67daf8cabf', 'deb1239a35a1628b', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T17:15:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'f2421f9d292c7aa3', '85299bd1ed3521b9', 'missing', 'a count of section:S did not find it', '2026-03-02T17:41:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (6, '14c80664cc656e93', '153ba36f62802d87', 'missing', 'a count did not find it', '2026-03-02T17:54:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 217, 'de902d46e092a2ffdb712417a38e8fdc19e6436c14de96b3b70869544e00e763', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0, "closing": {"weekdays": [], "dates": []}}', '83fa3a6608bd9b4f');
INSERT INTO public.items VALUES (3, '74e5df550824a76f', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (4, '57305c3496b6c8a4', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (5, '5f3071fbb8b9a524', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (6, 'feaf4848d09cee5a', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (7, '2f4306eebe661971', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (8, '5116a39b186ff3c2', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (9, '5e41161e4abe4886', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (10, 'a4d75558a1f10a0e', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (11, 'c75c96d337e930be', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (12, 'a6fe074d22f12680', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (14, '8e85d8a95acbd1b2', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (15, '1091dbe03d97bf7d', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (16, '131ce24944acefa9', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (17, '407d039c6c083a6b', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (18, '0b9acfb381d630ba', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (19, '741805b82bee5c4c', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (20, '85299bd1ed3521b9', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (21, 'cfa46a16d432a1e3', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (22, 'ad2c38333d5e483d', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (23, '31e37f9d27a8a3c1', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (24, 'd136eb3b5e4229d9', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (25, 'a630ba4c7042d6bb', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (26, '1e0bdc3468de3d15', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (27, '76f66836d61aa444', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (28, 'b109bdb7b9779fca', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (29, '632940d050f876e2', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (30, '36505e26ab1b52b1', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (31, '4b13a9473d241919', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (32, '153ba36f62802d87', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (33, 'a745cbce09a27c70', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (34, 'e03db16c2a3df5eb', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (35, 'b39c03e3e385a0e7', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (36, 'f3e10ce674e10940', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (37, 'b1e247dca1134a07', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (38, '4232b1c3a4283d53', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (39, '926c4d96517d0b38', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (40, 'ddfd1a57354d08e4', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (41, '099cba3d9b3854a4', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (42, '0af84de05cd32b0b', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (43, '7625585aa2e1c449', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (44, '659d5703d484ec77', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (45, '4b81b10d57b5316a', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (46, 'c3741214848c7a67', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (49, 'cd27537749289fc5', 'Brass bell', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (2, 'f348bab17351a5f3', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL, 'Coil the cable');
INSERT INTO public.items VALUES (1, '8f3bdd680d5519a1', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (13, 'deb1239a35a1628b', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (50, 'afccd41d82301f62', 'Carbide lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (51, '6324af9f3609e974', 'Rear lamp', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.items VALUES (48, '7e476157fcabc4c2', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL, '');
INSERT INTO public.items VALUES (47, 'e31031e0b4266621', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00', '');
INSERT INTO public.items VALUES (52, 'e4e1715b7c1bda1a', 'Rear wheel', '', NULL, '', NULL, '', NULL, '');
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '81d4918eadd6988c', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 8f3bdd680d5519a1 - eace912220d8","slots D001 on_item e5405bc28ff8","stays 241933b7ff5cfa3c stored 5e877f9f8729","listings 50f5415744ee3d4d - 80ea87542f3a"],"stay":"241933b7ff5cfa3c","title":"Rear derailleur 1","turn":1}', '9abe8ceb1f0b986d151e33f8312a1035e840acbdb34c124490661bf9d62fce5a');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items f348bab17351a5f3 - 920a41d971ba","slots D002 on_item 4f79f524f247","stays 3f282f596eb8e42a stored 49afc08b90f2","listings 8a98fd85dcc1de81 - dbf961fbc680"],"stay":"3f282f596eb8e42a","title":"Rear derailleur 2","turn":1}', '5d5dc9827fcd8503d6707d22181070408ac72e5cef095dd5dfc97b78b2fc43c0');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 74e5df550824a76f - 7c17d4ec3bab","slots D003 on_item 6de523ac8b4d","stays a224d7f9c9901829 stored 45c6005ce35b","listings e284b3e0eadcecf9 - e25ba3757cc3"],"stay":"a224d7f9c9901829","title":"Rear derailleur 3","turn":1}', '6902123e5535466b7abd42b2709ce7beeb281bfd42b10cbdb30b62ad061c7de0');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 57305c3496b6c8a4 - 9b6825805404","slots D004 on_item ec423998da46","stays c538f8a7966a826e stored f5a326df5666","listings ac517ed240d78fdd - 3c7c9f00c31d"],"stay":"c538f8a7966a826e","title":"Rear derailleur 4","turn":1}', '558051cfd8986e1a67bae75b21008919ad3af0cce80c26d2cfa547a42714f1c1');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items 5f3071fbb8b9a524 - bc9bcc72c9f0","slots D005 on_item 91ad3faf88d6","stays 74096806e3fee4b6 stored 79c2cfaf57b4","listings 6e1df0c979480a1a - d560e6de51dd"],"stay":"74096806e3fee4b6","title":"Rear derailleur 5","turn":1}', '2cb302ecf501fdb6781adeee05884a725be282f3f6a269ab735203db40366426');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings c7ed94a06ec99ab5 - 6087792fe746"],"stay":"3b91dfd4e274ff6c"}', '1a36dcaab561310a4f32aeaa3002a37afa8348ecceb640e7adf151505b2a024d');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items feaf4848d09cee5a - 1daeb46dd799","slots D006 on_item 1fadb568d6a5","stays 8028bf999d2181d7 stored c653f77baed7","listings fcb09506ac0d6b3b - 1e196d36edeb"],"stay":"8028bf999d2181d7","title":"Rear derailleur 6","turn":1}', '095c64e28e5ebc2df0e627cca38ca7a553395869faabb0d391c127cd6fe77eb1');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 2f4306eebe661971 - 5e6edac5dedc","slots D007 on_item 536077e3b728","stays d4334d93cbfc4632 stored 2a69a3bee1a1","listings 10bd8fdfe5bc7c02 - 5e9289dd274d"],"stay":"d4334d93cbfc4632","title":"Rear derailleur 7","turn":1}', '45dc32233e683a618653509b20d035e86156e4f1bc2eb04f44840d7c4ed6b615');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 5116a39b186ff3c2 - 193a3bde8ac5","slots D008 on_item facb453cba22","stays eb36818f0ebcb03c stored df234b31a8eb","listings be6e5c577f2cb248 - f0e3430e864f"],"stay":"eb36818f0ebcb03c","title":"Rear derailleur 8","turn":1}', 'd1b7ede4723f7f3f5726c032ec14137b3df89328bfedf306ff527709997aef89');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 5e41161e4abe4886 - de77771173ed","slots D009 on_item 7434bf04ccf2","stays bc0fa93e2a46a91d stored 896313abc171","listings 347d34d08f21256d - ad943cf211b0"],"stay":"bc0fa93e2a46a91d","title":"Rear derailleur 9","turn":1}', '605bd8a176325f2a5c005bef06078d2b2375cd2cad21f1ab23021280999f84ac');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items a4d75558a1f10a0e - 153093df9740","slots D010 on_item 1f8fd3ebaf8b","stays 7c7c3e84e4021b54 stored da4c71bdabb7","listings 6fdbd14b54fd1fcc - e64deee0d38c"],"stay":"7c7c3e84e4021b54","title":"Rear derailleur 10","turn":1}', '97b0b24c5755214d66c1b6db82c3d387c9b382300c685b9323da4983ca725e0d');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items c75c96d337e930be - e21dad99fcff","slots D011 on_item d451255e38b7","stays 59e6dff6b272a478 stored 039672742b0e","listings f36884ba64dcbaba - 3dfbb094ac4a"],"stay":"59e6dff6b272a478","title":"Rear derailleur 11","turn":1}', '2806d9c22e7349519a9d373889f95dc08796df3c4b11cfaedc612a1c241ac737');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items a6fe074d22f12680 - dcb4ccf45014","slots D012 on_item bdbda5bb2b7a","stays edf9290bc86a6408 stored b5ba6c0fde8a","listings 57eac9f59f8aa541 - 9fee0a5696bb"],"stay":"edf9290bc86a6408","title":"Rear derailleur 12","turn":1}', 'be1306147f05a23f82ad591d552d6dc5eed31750bc8bbf1c59673f089b441bac');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items deb1239a35a1628b - eb282a022576","slots S001 on_item 76dcd853e3e0","stays f89803063659a371 stored 483d010e9bc8","listings 1a86271f28daa898 - 9a01e71621a1"],"stay":"f89803063659a371","title":"Leather saddle 1","turn":1}', 'f49c8fa339efcc88fa62eab643defb3a0e383c3ce8cf785bd640803acf6b1a86');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 8e85d8a95acbd1b2 - 4c172e215f9e","slots S002 on_item 6fb94c47a50d","stays 0eb97ec08a533001 stored 5703acadee56","listings ae7b3461f150c2d3 - 4377abbb9ef7"],"stay":"0eb97ec08a533001","title":"Leather saddle 2","turn":1}', 'dc6b86e57bc667eb9cb0a5a23012ff8e71295a313fe157226f3af745b3f1c861');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 1091dbe03d97bf7d - d9969c170fe4","slots S003 on_item e00808332634","stays c4e25201f23b6944 stored 8ee8e594b762","listings 9229233f66292f7a - 5ef3290faed3"],"stay":"c4e25201f23b6944","title":"Leather saddle 3","turn":1}', '0e3085323cc31a4ecfed1eabc8f7c80edd998086382f4d74194abf23d79b10d0');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 131ce24944acefa9 - 843387e3dd8d","slots S004 on_item db1aa8005467","stays 4e7f08d5d7083f8f stored 5accc4ef7b6c","listings 366c6f0c4e1d1d3c - 04495c4d4602"],"stay":"4e7f08d5d7083f8f","title":"Leather saddle 4","turn":1}', 'ac7cf27a7360863aedbd46509f44794eead3bdabd9b8394fb5fd2c048204b0c9');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 407d039c6c083a6b - ede0f6071aed","slots S005 on_item ec548ef84f99","stays 821910d106e71992 stored d793953147dd","listings e779ad51bf5f398d - e49ef471bd7a"],"stay":"821910d106e71992","title":"Leather saddle 5","turn":1}', '1f679b97f7a1c0561462c0b2439ecadddfd5b27b489ef6477c5af0793f05fafa');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 0b9acfb381d630ba - bab3804afca2","slots S006 on_item dc9bc74eb63a","stays a3658363e6a605fe stored e37224db364e","listings 2f6a52ace34b5238 - 6d6c77b57bad"],"stay":"a3658363e6a605fe","title":"Leather saddle 6","turn":1}', '09e5c8bfc28d6364d6783edc54105444462feb4e16ed290fe5617360aa0eeef2');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 741805b82bee5c4c - 1c6542140b79","slots S007 on_item 075fd8b9fecf","stays 7857b370cbc82e16 stored b6f8989670f2","listings 435054da14cd2b72 - 306837b41437"],"stay":"7857b370cbc82e16","title":"Leather saddle 7","turn":1}', '0ccad802007434df2ec8a4daf2380911a5fd56cc69a414d3c98ae44bff932d1f');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 85299bd1ed3521b9 - afc4c5b931ab","slots S008 on_item 39fdb847a4bc","stays 3cbdc8cd005cb2db stored 52c53ed1015c","listings 3729fa43f2932401 - b67286ed017a"],"stay":"3cbdc8cd005cb2db","title":"Leather saddle 8","turn":1}', '28bf6a8ab9ee07b8eaab2f3adc9bd9c8c5735500618aad416fb14f42b610316a');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items cfa46a16d432a1e3 - 3b8f704f122d","slots S009 on_item 62c79df275b3","stays 4093bf6347237f2a stored 62ea0e64bda2","listings bcf4d657c17ae115 - 2086687d2743"],"stay":"4093bf6347237f2a","title":"Leather saddle 9","turn":1}', '2e7df0347fbed752122345047772aca78c30d8ee6b9fd1e4a46cb0e0a25cb8c1');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items ad2c38333d5e483d - c0218a5f5e3b","slots S010 on_item 1fd8d85fa1c4","stays fe8f062db49e2ee6 stored fe1e5e6cb682","listings f09f7044eeaaf574 - 1938539ecfb5"],"stay":"fe8f062db49e2ee6","title":"Leather saddle 10","turn":1}', 'e739a53fb4780c8d3b067be98943a6f25cbc26c97970f7153c6419cd777815c8');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 31e37f9d27a8a3c1 - ec2a669d3b94","slots S011 on_item e59577c4b2a7","stays b611863144174305 stored e7d96ddcad25","listings 0c712bdcc5cdbb30 - 188fde5417de"],"stay":"b611863144174305","title":"Leather saddle 11","turn":1}', '50b2c2d3cb8bdff326ec005ee58d98241c40fa31987cd197674bf3cbd3ae50c4');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items d136eb3b5e4229d9 - dee1dbd23dcc","slots S012 on_item 9bae442e2436","stays 52e241d7855abeed stored 20b6a892281a","listings 868b4407600b21d6 - 4f0a4ca9c9a0"],"stay":"52e241d7855abeed","title":"Leather saddle 12","turn":1}', 'd6ac501b2fdc357a3cb25df69d62da0a8d620415cfeb993b707e41ca5e2c26de');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items a630ba4c7042d6bb - 39336a85012f","slots L001 on_item 43c5cdfaa8e4","stays fb783ad61b2476cb stored 5d06758d2ca8","listings fdc689c96d9f26e7 - 6c272521ab66"],"stay":"fb783ad61b2476cb","title":"Dynamo lamp 1","turn":1}', '9fe95528903d7abcb5bd18f3d16125fd5c807f44dc56cf43c16156fa8c61f956');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 1e0bdc3468de3d15 - ae625bf1253c","slots L002 on_item ea8e77c8b06f","stays c97ca999b9e64da6 stored 6d7f5d68e650","listings 763be72758128e41 - 8e941fcbeeea"],"stay":"c97ca999b9e64da6","title":"Dynamo lamp 2","turn":1}', 'c277845fe070ad43a3245e9f030fcbc3e0776498e3c5a1cb0d69cf04c79f1547');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 76f66836d61aa444 - b010995a56a2","slots L003 on_item c35e4c005cda","stays 638d84342bf56996 stored 04b07b5df905","listings 66b5679dfd4fad3f - 4c5a23e0a3d4"],"stay":"638d84342bf56996","title":"Dynamo lamp 3","turn":1}', 'd4fc6505606d130a2de5e966328a8e981604d6a3764c1a84cfdbc50d10bd11df');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items b109bdb7b9779fca - 0e8e9f94755d","slots L004 on_item 70a88e4a366b","stays 3b9e149964b1e802 stored 4c18a1e7e74a","listings f0506263b456970e - 3f868881be14"],"stay":"3b9e149964b1e802","title":"Dynamo lamp 4","turn":1}', '55d0ee1d1c5b3c30f259dfb8e5605825761e77c5f4ed093dae743f43aeb66b3e');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 632940d050f876e2 - b7701b0cd02b","slots L005 on_item 6261d94de1ef","stays 46c32d5c50c51783 stored 09100d480bfc","listings 298795656d610ac9 - ce6f6ee23369"],"stay":"46c32d5c50c51783","title":"Dynamo lamp 5","turn":1}', '1c0d1ad7956842f2713682b6dbc2603b95c19da9edb61c4545bae0dcd5298114');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 36505e26ab1b52b1 - 3369adc5b789","slots L006 on_item b67b470f3637","stays 370d5820e9859ab5 stored 161f253dc35a","listings 003b8a4fbb1aaec3 - ab75d786fb05"],"stay":"370d5820e9859ab5","title":"Dynamo lamp 6","turn":1}', 'b96453a3111d888f8b5c259baf14b3678ad95b156e556f1597d1ba984b6608dd');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items 4b13a9473d241919 - 5f999805f0d2","slots L007 on_item 767524982af4","stays 2a3fc666e808cb7c stored 504e8f52bece","listings 690d39b7dd872a3d - f29cc4bc5b38"],"stay":"2a3fc666e808cb7c","title":"Dynamo lamp 7","turn":1}', '95869d3ee3762930e34bb5c7d895590f4629d45153e2626d7308eb113ce3e71d');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 153ba36f62802d87 - 87bf176b6a67","slots L008 on_item b3b2d23a98b7","stays bd4848f20caffc54 stored 00dabf091824","listings 64177e5940ca6fbb - c553da36fb70"],"stay":"bd4848f20caffc54","title":"Dynamo lamp 8","turn":1}', 'f4a2077849b637049f581b7b4ff261e73d76d67072beb4449963184769febaf2');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items a745cbce09a27c70 - 4ebe263bae89","slots L009 on_item c3139144a3f8","stays 3b91dfd4e274ff6c stored 21684d75e25e","listings b698ed2f0bd673f5 - adfa8a227fe6"],"stay":"3b91dfd4e274ff6c","title":"Dynamo lamp 9","turn":1}', 'de3dd10071d13813d512d9d7f4499f1bf6dcd7702d116a49a8ab445d984d7a5b');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items e03db16c2a3df5eb - e4d78cf68145","slots L010 on_item f8c13ae8aec4","stays bb1d974819d910bc stored 8073283114ab","listings f9a3c3d48314a62b - 1553412387e3"],"stay":"bb1d974819d910bc","title":"Dynamo lamp 10","turn":1}', '59ddaca44e7d5b693ce05c04e72979ffdf7cd7003f9f12238092a4df4bcc4a60');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items b39c03e3e385a0e7 - 212e960e9f86","slots L011 on_item 9d01c75c0f89","stays 6c3c905ec1f2af12 stored ac364261be18","listings 65f24a4e2cd0a6ca - 8893db9ade35"],"stay":"6c3c905ec1f2af12","title":"Dynamo lamp 11","turn":1}', '076e017d9ea4e8e23114208c4dc1adfad53fd33792e92c7fbfce6cd8bf9ac9dd');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items f3e10ce674e10940 - 577c4babe7d3","slots L012 on_item 5373b19b101e","stays 8aa14cf8c6a08f42 stored d58969ecff51","listings 9db2fc9e11fcbd78 - 3344c06d322c"],"stay":"8aa14cf8c6a08f42","title":"Dynamo lamp 12","turn":1}', 'ca82df5e4b4095403657b93e4b1022e00b785b4f3839f36a265e78238ed3b98c');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items b1e247dca1134a07 - 2ccc8fc60b9c","slots W001 on_item 17dd342c2f6a","stays 33a28177bc4cedd3 stored 7ff278211642","listings fee54ba9bda317b8 - f90f5fe049a0"],"stay":"33a28177bc4cedd3","title":"Front wheel 1","turn":1}', 'b8cc6c8bd00b9e5fc281d3c3dca385ea9b13aa251b3e6ae7af3f599633f4746b');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 4232b1c3a4283d53 - e46e0f086d4c","slots W002 on_item 7ebfb8df41ca","stays ed80087fbff149b5 stored 338a21fc2215","listings 3e92d434b5443627 - 430b06c05a93"],"stay":"ed80087fbff149b5","title":"Front wheel 2","turn":1}', '0251466e52b8f87a75e40ba3e211baf3a4a2acfb691ee86f75fb9731ad85b5f7');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 926c4d96517d0b38 - a5882239909e","slots W003 on_item f84a2674e962","stays 40700c6d503e47f2 stored 446e99a2345e","listings 9029e20192357a39 - 4942fb1814f9"],"stay":"40700c6d503e47f2","title":"Front wheel 3","turn":1}', '2557c725d57cf71f5890f819e48d7fb83c91f673d43a6096908d348d4631cd74');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items ddfd1a57354d08e4 - d8fdaa515bce","slots W004 on_item f45ed94fd55a","stays eb09af420ec290a2 stored 0b0d4ba65f26","listings f7f54f604de1fd43 - 981baca6cbe0"],"stay":"eb09af420ec290a2","title":"Front wheel 4","turn":1}', '8bbac2b21b7ffb8735c959a2134813ac99129e3a660dd633d94c639338260995');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 099cba3d9b3854a4 - 3c311352ac48","slots W005 on_item a1fdfb2c692e","stays 4bc103cff127d133 stored 89febc7c4ba4","listings d3c7b7bf93f6233b - 94096e3617f4"],"stay":"4bc103cff127d133","title":"Front wheel 5","turn":1}', 'dec2e836ec381bdfe4b62c7d5e26b24e9e0190cd6380434faf5e5ce6ead8aeba');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 0af84de05cd32b0b - 72136a1da80c","slots W006 on_item 3dd6244f0bee","stays 1f3232b189871482 stored a1380ed5d94c","listings ae9b9bbff9751b87 - 9213b658e7b2"],"stay":"1f3232b189871482","title":"Front wheel 6","turn":1}', '21d856c608a79cc7145020f4242349fc120b9c6ba31edc40d2352fd0909066ec');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 7625585aa2e1c449 - e745ca2b90b5","slots W007 on_item d52463b699e2","stays 3e81e18d0ea0bf68 stored 2f6a165c036a","listings 77c49a6f9c340e59 - 2f37003c4aa2"],"stay":"3e81e18d0ea0bf68","title":"Front wheel 7","turn":1}', '1bea93624e98482bca8058ae5343757d866eea2f51ea7e1fe628cc677d155366');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items 659d5703d484ec77 - a3599b01a699","slots W008 on_item 2e167460fb16","stays b4cb29a3dfd90aca stored 6492b3f9c757","listings 635579c11a412068 - 00e9dc59cd7a"],"stay":"b4cb29a3dfd90aca","title":"Front wheel 8","turn":1}', '3215f05abbbfd7d36a0cab338b4c6847b481934eb1020c3ac04dcf289aa117b1');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 4b81b10d57b5316a - 617a32c84aa3","slots W009 on_item 597fc2f4b56e","stays ef9d3a0238ccb7e8 stored 7e97f189a247","listings 1f507d205823902b - c27d7732fec0"],"stay":"ef9d3a0238ccb7e8","title":"Front wheel 9","turn":1}', '8dcf255b059612c4768631d377bcda243b7a7d3953aec053179279b771518d84');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items c3741214848c7a67 - 0f9334a06e54","slots W010 on_item 7d0365c2d2de","stays 0a417ab5427bee86 stored f5d21df678a5","listings 20e8d7317a4f6180 - 787cde7a0253"],"stay":"0a417ab5427bee86","title":"Front wheel 10","turn":1}', '8ed4b73fe55a7564aee1728291a6855fadf5b63288f17e9b3eed031d52a6351c');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items e31031e0b4266621 - edab3f5b60ac","slots W011 on_item d3a26b640d71","stays 629c8ec269ca0c79 stored e86c120d6a48","listings f4b63c18719fedb2 - 92717fdd679c"],"stay":"629c8ec269ca0c79","title":"Front wheel 11","turn":1}', '4c6038810a9b268fbf3a7f58ef4f63d13f5f1adac700697183cc4e5b0c46439e');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 7e476157fcabc4c2 - 1850eeced969","slots W012 on_item ac10bfb906d6","stays da2f7ff9a6a20d87 stored 42a1b30584f6","listings ca76a33fe2bc2fb4 - beb759f1e917"],"stay":"da2f7ff9a6a20d87","title":"Front wheel 12","turn":1}', 'b1f23fe1eb2a2ecbda9fb5d6716b548c28d873e3afbd058c3f7eebf88e554600');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items cd27537749289fc5 - b2ee193beb54","slots D013 on_item 69b6f1c92d5d","stays 8b66296f2fe78446 stored eaac15ce72d3"],"stay":"8b66296f2fe78446","title":"Brass bell","turn":1}', 'e80fb3dd6f28a987c4b2c47a464e2cc011dc22cd53b4fa3334415f99b992fbf3');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items f348bab17351a5f3 - d32bd2d90e49"],"packing":"Coil the cable","stay":"3f282f596eb8e42a"}', 'aba759d57e95a9ca233c1cbbdb6b2a3517234b91a0152230bae4cb2906e6b6ec');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays fe8f062db49e2ee6 withdrawn 4ce5519a1503","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"fe8f062db49e2ee6"}', '5edfd0a110868a666e1fd35e2ceb87246518325be2ee9bc8719afded9520c41e');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays eb09af420ec290a2 withdrawn 15cab7451e80","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"eb09af420ec290a2"}', 'e7ea4ffdcd2e32971ac9221b93213be6475843a824900b16b939ed02017e1cd1');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"6362baf77ad7b52e","now":["stays 4093bf6347237f2a moved e98ff577e604","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 6362baf77ad7b52e stored 55b5f714e8fc"],"stay":"4093bf6347237f2a","to":"S013"}', 'f17bdadba014064a707d79eb9c87d36bf6b7c00e78e08e40004900528cef78a6');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 8f3bdd680d5519a1 - 327de63cb458"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"241933b7ff5cfa3c"}', 'a0b21ad330b4934f68fb2bf5fcac75b61fcc8f596309238ab9e3f630970cbc5d');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items deb1239a35a1628b - 7ab203a48959"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"f89803063659a371"}', '182590a057047def2b0506ed45abd5584a020a2059354ef512f3b59b742e2770');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items afccd41d82301f62 - 5b90a99d51a5","slots L013 on_item 417a81be4bcb","stays 801f6144feeec2bb stored 5fb99242e2e4","items 6324af9f3609e974 - 2ff7a66a72b2","slots L014 on_item 26405b275a18","stays 6280063564463829 stored 19ebac4c888d"],"stay":"801f6144feeec2bb","title":"Carbide lamp","turn":1}', '8c11a45ffdc752d396395ee2cb4800f505cac54d2d266ef95d648537102c55c9');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"6280063564463829","title":"Rear lamp","turn":1}', '8847f0a39f67086e4113742e6967d0e731eaefcb8a2eb544eee99999c0009069');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'a6572b3c1c719d256b94916203b0209b0d133119b7af7111bed1407903fd803d');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings ed496ab0930fd9e7 - 6ecc35460426"],"stay":"33a28177bc4cedd3"}', 'b0c60ba54e2874edd282200eba3cf6d0554274a9d4151ffb91648ba3f05c28fc');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings 0954d43a510d439a - 60d6ad4aa776"],"stay":"33a28177bc4cedd3"}', '05fdb627c3a43e3f499e150f91ecfae44773786dcda174360e6e172c99d18a7d');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings 191106f91a16f560 - 766b43beb4e4"],"stay":"0eb97ec08a533001"}', 'bb4a748666ac4e0de90d0278068a9a9edf9c5ae0589639c370f071fd2e35cabe');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings 1ad4b7c1b221cedf - 132a99f8c5fc"],"stay":"0eb97ec08a533001"}', '3bd82e5edc74951f052bc7da4439af28d43d60ac0aad1b983e983c2c3ec74b5a');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings 5b5d5e7a2f62421a - 31bbcfa0c9a9"],"stay":"bc0fa93e2a46a91d"}', 'c1ce5b7d88f0e7fd20e58cc41fe689bc88c56407439a1c8db45ebe40f27678eb');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings 6b9dfcee22b15920 - 77bcf072db39"],"stay":"bc0fa93e2a46a91d"}', '8ae10e08f4bfb3ddc4eee2ed64b8b01c2ce3a3430aa430d209d34566dcb6a5fb');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings 706dccd932a25f5b - 433d3f6cfe3a"],"stay":"da2f7ff9a6a20d87"}', '2b7632fe1daab849128a25e0cf63748c98c61fc3f9bb1085a8e5b98c2549eed1');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings d81c72619747536e - 6424c54d42e3"],"stay":"da2f7ff9a6a20d87"}', '125d0933c759045d93547a069b7a63a359c16e7467c19805b1a88c520fd3ec60');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 89e0a42db7a2b0fa - 405084956a67"],"stay":"3b91dfd4e274ff6c"}', '4f5781733d64c7e4244064605f50d1f783be4e0b6c330aad3b95366ae6f9f5dc');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings ac517ed240d78fdd - 4e8b7b1d5cc4","listings 1b235c706ac03694 - 7fd0d82e006e"],"stay":"c538f8a7966a826e"}', '18eb1f5491a56e7dff0ee55b8483a128bff0acc2951ea89397ec40ea0e2558e0');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 89e0a42db7a2b0fa - 5214067702c5"],"stay":"3b91dfd4e274ff6c"}', 'abfc7b1e627ec20cdd7d2512346094a7b969ea3a47ca9cca42f4ad0e4964cb96');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 7e476157fcabc4c2 - 20c0bdaf768b"],"stay":"da2f7ff9a6a20d87","until":"2026-12-24T23:59:59+00:00"}', 'f82806acdae1a65d5e2361393faf3aefa5cd6308df0c930c6124fb614f3f2ddf');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items e31031e0b4266621 - fe522c256d07"],"stay":"629c8ec269ca0c79"}', 'a7d85b2d83b7502aee49b4830bff40cbcf9e2b335c0054005504e137a94f5e40');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","closing":{"dates":[],"weekdays":[]},"count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '8bd2ad93ec9150f1ea02d80d35de7823d18e867ba80aa44807b6bbe0552bb108');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', 'd4584bb62da0bbf3821e87bfe1daa44eb685c10b61b1a4306a70c5b9eda1a418');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '4df5fd0297791b0bdbb8b5498e65978aa775841dcab6ded7bd92185153e33a15');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'b3c114c773a4dfcb183e214e9be3aaba3e5dcd68f731d235a1d1ffd51c062f64');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '80c4e5b38daea1244f9a52dc9c3d33d305326070968f6c826a101e76b2b2d94a');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"1b81e3f91dedfe80","reference":"W001-01E","stay":"33a28177bc4cedd3"},{"hold":null,"line":"f8da298ddab68576","reference":"W002-016","stay":"ed80087fbff149b5"}],"now":["orders 98be07ab1de4f2ff - 6693de3793ee","lines 1b81e3f91dedfe80 waiting b0a4551c5ef8","lines f8da298ddab68576 waiting 7b28e1810794"],"number":"B-01","order":"98be07ab1de4f2ff"}', 'c907594f069690d86cff3248c9d948aae778622157ec7360160c4da640137ac0');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"c26bc43e33dce13b","reference":"S002-013","stay":"0eb97ec08a533001"},{"hold":null,"line":"0f2470798a481849","reference":"S003-01W","stay":"c4e25201f23b6944"}],"now":["orders dbac7c9dc09b2fca - cbfed1056158","lines c26bc43e33dce13b waiting 1e0feab41e09","lines 0f2470798a481849 waiting 6e93ec7ee2b3"],"number":"B-03","order":"dbac7c9dc09b2fca"}', '69a21aa0354129d7f68b1057f020411db1a1601b3219a926ad0b725df3b44db4');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4511d877cdb527bd","reference":"S004-01O","stay":"4e7f08d5d7083f8f"},{"hold":null,"line":"a4b19caa1b7255a2","reference":"S005-01G","stay":"821910d106e71992"}],"now":["orders 3897d6d8a115a440 - da39545ceb70","lines 4511d877cdb527bd waiting 71f42108fe4a","lines a4b19caa1b7255a2 waiting c81b5741dd92"],"number":"B-04","order":"3897d6d8a115a440"}', '142d57df37cea7cc060a6d83a23fd69db795a671eee396acf63f77504d089ec5');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"1e0bdc3468de3d15","line":"a2e5708ba42c2446","listing":"fair-L002","now":["orders eaaff2d98abf4fff - 3c64739df1cf","lines a2e5708ba42c2446 waiting 2ffec89cc269","listings e9a962a561da676d - f618dcc547f3"]}', 'a684413ee55f2d807a35daaa3ab1efdc98fda60be4b6ce59fb0847a53a3ebde6');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a2e5708ba42c2446","reference":"L002-017","stay":"c97ca999b9e64da6"}],"number":"B-05","order":"eaaff2d98abf4fff"}', 'e058c9e6b8d334354f7c59c021252d67aa30e6fed8256c6d1a348fe2f154cb1f');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"76f66836d61aa444","line":"8107057e7cc91aa9","listing":"fair-L003","now":["orders 5dd36e6983485faa - 302046485434","lines 8107057e7cc91aa9 waiting 70662ea6175c","listings 7a0a16eb07f86e4e - 2b198d752314"]}', '1d179785c55708adce8d8d0d84fc3fab4bf9df661375b8e0fc8612a5e6dfe3ca');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8107057e7cc91aa9","reference":"L003-010","stay":"638d84342bf56996"}],"number":"B-06","order":"5dd36e6983485faa"}', '02be737d543ec6b1bab27288346c232aca3b83736264d42958ee445de392bf67');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"33942bcd50c5cdc2","reference":"L004-01S","stay":"3b9e149964b1e802"}],"now":["orders ccf3206c438b0442 - 9b5cb98736bd","lines 33942bcd50c5cdc2 waiting 8127a422e2f7"],"number":"B-07","order":"ccf3206c438b0442"}', '1b70bbb10f242ffd590b78c7e7223347fcb2cb8a0c17b40c9936188ecb6766d1');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2f2e4cfb55009033","reference":"L005-01K","stay":"46c32d5c50c51783"}],"now":["orders 0f45c5edc02071c8 - 0aa1d0b7d393","lines 2f2e4cfb55009033 waiting 7517527f9d61"],"number":"B-08","order":"0f45c5edc02071c8"}', 'c645ae3ab43e04986ec9e03ff32e363b3bc2ecc0fda8f5b968489b1a08968c26');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6439ad96743e19d1","reference":"L006-01C","stay":"370d5820e9859ab5"},{"hold":null,"line":"40c72131a38e09ae","reference":"L011-010","stay":"6c3c905ec1f2af12"}],"now":["orders 7e5f2fcd68a318a1 - 013c49316d3a","lines 6439ad96743e19d1 waiting d2d08c3b1352","lines 40c72131a38e09ae waiting 3be6ff8e839f"],"number":"B-09","order":"7e5f2fcd68a318a1"}', '41b6429c63a2d2b6d65f06a0762c70f646d613559dea5d0e5ffd9e5c0cec386f');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"905fb88fe1f5c903","reference":"S006-018","stay":"a3658363e6a605fe"}],"now":["orders c0d176933548b925 - 275434952968","lines 905fb88fe1f5c903 waiting 19b96417d333"],"number":"B-13","order":"c0d176933548b925"}', '18b2031d96882fea74253305a74c551d633da12378caa7e4a4fbeb8e313b5a04');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0e12344e8a0e1c81","reference":"L007-014","stay":"2a3fc666e808cb7c"}],"now":["orders 74fb29a5dd4c362c - ed609e22bccd","lines 0e12344e8a0e1c81 waiting 753724ed107f"],"number":"B-17","order":"74fb29a5dd4c362c"}', '30ebfa92d0a18827b32b484bcc6f69fcbeac06ee3937f3861fb83ac48cda6faa');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b1692c00d150cc13","reference":"D009-01B","stay":"bc0fa93e2a46a91d"}],"now":["orders e307ffcaf897e0f6 - 46b564a7f597","lines b1692c00d150cc13 waiting bfc5d0818577"],"number":"B-18","order":"e307ffcaf897e0f6"}', '3dd5537d43144cfb4f120b71519e58e808a156dfbc8f0aaeba53e81dc42d39f4');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"18edf4bca3f9976d","reference":"W006-013","stay":"1f3232b189871482"}],"now":["orders ca71466d58e80d5e - cf695889331a","lines 18edf4bca3f9976d waiting 2e6f351b496b"],"number":"B-21","order":"ca71466d58e80d5e"}', '9d4067e327029222bd6aa7622931f91e8bbce42fde82481bdb33ebda4d42092d');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"20129c10e5c51529","reference":"S007-01Z","stay":"7857b370cbc82e16"}],"now":["orders 3a6538911a88b34f - d479c7d6d74e","lines 20129c10e5c51529 waiting 9d2909164b34"],"number":"B-22","order":"3a6538911a88b34f"}', 'd11f0418a4025c53d9e1780f9441303daa0b11d15fa599586e5baf447fda57b6');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"ffbe02f8a7931cc6","reference":"W007-01W","stay":"3e81e18d0ea0bf68"},{"hold":null,"line":"e1648ec0dedff4d9","reference":"W008-01O","stay":"b4cb29a3dfd90aca"}],"now":["orders 16a229b33298c4ac - 103f9132408a","lines ffbe02f8a7931cc6 waiting 0acf8c8a7d24","lines e1648ec0dedff4d9 waiting a4e3a6a4adb6"],"number":"B-23","order":"16a229b33298c4ac"}', 'ff7bfecb0cc0879a2f4d296f1d1da88915a68f92a2239bc3dc45a092685c9cb7');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3f351a707e3246c4","reference":"D008-01J","stay":"eb36818f0ebcb03c"}],"now":["orders 42c96ff34231f753 - 482e928fb8f6","lines 3f351a707e3246c4 waiting a5b93a6f5375"],"number":"B-26","order":"42c96ff34231f753"}', 'b72bfd66cb646c55dfbc58afe64511b5c73213f0765f8d6b9157564beca8eb70');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"e0a750c669e65944","reference":"D003-01U","stay":"a224d7f9c9901829"}],"now":["orders deca3080b7a6d48b - c6d90b898a25","lines e0a750c669e65944 waiting 887f040c8c59"],"number":"B-30","order":"deca3080b7a6d48b"}', '6a3038988745b3bd05ba827d67481b4b5a7840ce7b20f0204e50f1033cf544cf');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"48b1c96eb6239182","reference":"D005-01E","stay":"74096806e3fee4b6"},{"hold":"unknown_code","line":"832810210f3e4333","reference":"Z999","stay":null}],"now":["orders 90b5cc06eed96275 - ae90a6adff03","lines 48b1c96eb6239182 waiting 16c52318cd2f","lines 832810210f3e4333 unbound a0e8fe35aaa3"],"number":"B-31","order":"90b5cc06eed96275"}', '7cc00b620882282b030dfbd66a37226c9c2c226b3a303362ef55290b628e47e2');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"09eb9e476756b171","reference":"D006-016","stay":"8028bf999d2181d7"},{"hold":null,"line":"bf9beb8ce5d23222","reference":"D007-01R","stay":"d4334d93cbfc4632"}],"now":["orders c9f6afaa71dde42f - b31282723929","lines 09eb9e476756b171 waiting 815dbee461f4","lines bf9beb8ce5d23222 waiting 6f22efbe2f93"],"number":"B-32","order":"c9f6afaa71dde42f"}', '73ac8d618eccff62284befbd982e26ca62c5491510add0ccc91b367e88cd3d9c');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"bf9beb8ce5d23222","reference":"D007-01R","stay":"d4334d93cbfc4632"}],"now":["lines bf9beb8ce5d23222 waiting d3bd0914bdad"],"number":"B-32","order":"c9f6afaa71dde42f"}', '52ca53b16f986c7302d7c928e85c1bb3c3554a32d1a3fdec01d74d1f61085d35');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"9375d5a406b94f31","reference":"lamp","stay":null}],"now":["orders 2f7eeda9c19187e1 - 5b8d3e5398db","lines 9375d5a406b94f31 unbound aadf3cf57c92"],"number":"B-33","order":"2f7eeda9c19187e1"}', '8968ebdaac77d30f955d150696973dc0619cd25d2bd4a0cb08cf583ac2d26b91');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"aad91d930205e9e0","reference":"D006-016","stay":null}],"now":["orders 1fce796d6eff4825 - aa3ab98045e8","lines aad91d930205e9e0 unbound 3678f0caf755"],"number":"B-34","order":"1fce796d6eff4825"}', '315641c98f5d652252540e4520244e4abe84efe8c7ec5e652a671f516f0836ba');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"3ac90c82492c2148","reference":"W004-01J","stay":null}],"now":["orders 63dd6a619efc5aca - b71946262d76","lines 3ac90c82492c2148 unbound f1366829315f"],"number":"B-35","order":"63dd6a619efc5aca"}', 'cbd68612c90195f99d92a67d0e79325cdfda78be5ccf7d6c093db4a70a0240df');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"ddd1867ed5cd4efa","reference":"L015","stay":null}],"now":["orders 6441966986fbd3c6 - a600fab712dc","lines ddd1867ed5cd4efa unbound a6980840ec1e"],"number":"B-36","order":"6441966986fbd3c6"}', '42fe6279ca2fae3959d7d6ba4873d3125e397ed420e7eef56a7afc55dec5ed8f');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"0a28e812de4a0955","reference":"W005-01B","stay":"4bc103cff127d133"}],"now":["orders 6144a9033e721847 - 777ee7726c6a","lines 0a28e812de4a0955 waiting e0b285cb5871"],"number":"B-37","order":"6144a9033e721847"}', '9492f12235438161601b582a331f3fabd0ed3aac5f0be5a03ddc2b706e2dc378');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"0a28e812de4a0955","now":["lines 0a28e812de4a0955 waiting e976ab3450f6"],"stay":"4bc103cff127d133"}', '636ae8438e789fddefbc200211c34eb843151e73fe230db5b046ee6c3dd000b6');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1f2b2b715dc93fb3","doubt_kind":"not_this","item":"4b13a9473d241919","now":["doubts 1f2b2b715dc93fb3 - cb01a4704c8d","lines 0e12344e8a0e1c81 waiting fe6b81ab5679"],"words":"Another lamp, by the photo"}', '70ea33390a35e50d9e0f4c187632a7a9210825d0b42878bdca8e209c157c6ada');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"0e12344e8a0e1c81","why":"Another lamp, by the photo"}', '6dc92c66de5196482071dc8baffd65af321c2823d0f41138b86df6796165fd19');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["2f2e4cfb55009033"],"now":["lines 2f2e4cfb55009033 cancelled b16df7912c38"],"number":"B-08","order":"0f45c5edc02071c8"}', '1fab040c37c022d45e5c131e2ad00aba4963be3d4be9432d70105319c38188fb');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["18edf4bca3f9976d"],"now":["lines 18edf4bca3f9976d cancelled 14322c289d46"],"number":"B-21","order":"ca71466d58e80d5e"}', '2eae51893262c910dd02023d703cb474d86beaa227cd2c79c9330fa1226db1a4');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"18edf4bca3f9976d","now":["lines 18edf4bca3f9976d waiting 2e6f351b496b"],"stay":"1f3232b189871482"}', '8c1d4e5d451f9d5df447cf65dde94996343cc716b957599a2f9b792bcd623ba5');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"f0d30390b8f38493","now":["stays eb36818f0ebcb03c moved d65cd4fe1e9d","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays f0d30390b8f38493 stored 507a7d234ee9","lines 3f351a707e3246c4 waiting a69d5bd73a76"],"stay":"eb36818f0ebcb03c","to":"D020"}', '5fcde3bcd5c4ab5ce8a17fd077289c07302469562c983d11d6d6e12820fea47f');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"f65cae7fc9ea8185","reference":"L012-01S","stay":"8aa14cf8c6a08f42"}],"note":"Rings at noon","now":["orders 922f5eb4c1e9d939 - 66ad9830dcb7","lines f65cae7fc9ea8185 waiting d13ae572114a"],"number":"Sale L012-01S","order":"922f5eb4c1e9d939"}', '92ecd65bb911cb16e0032e491f17609921fddfc7d5f96f9cc07160fbe67cc296');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:53:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', '193a559ef2e5b7282a791875c05590aaa8b26e3927e0131baf3b2e03c8bf3455');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"0a0ecfec7f4502a7","reference":"S012-01O","stay":"52e241d7855abeed"}],"now":["orders 855290e9c4ba9f5f - 9d65b16fc28f","lines 0a0ecfec7f4502a7 waiting 72d2ee0272f5","orders 78715b3af03a0707 - a1e4493a8428","lines 6f08d9820c69c429 unbound f98c376e06a4"],"number":"F-1","order":"855290e9c4ba9f5f"}', 'c118c65ea30d075e8a3b1954025d0d0741741abeae90cf80997add2876998979');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"6f08d9820c69c429","reference":"Q7","stay":null}],"now":["orders a89c98cd592095a4 - d2885f936009","lines 864f028df76808a8 unbound 1393d4a8e912"],"number":"F-2","order":"78715b3af03a0707"}', '68f35d0e4345602d79d58cc033467ea9352282239bfd52c3f22d18fdb4fbb3d4');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"864f028df76808a8","reference":"Q1","stay":null}],"now":["lines 864f028df76808a8 unbound e2682527f861"],"number":"F-3","order":"a89c98cd592095a4"}', '3756a79297a5ae36d63fef15dfb93b2239d862cd4817fe24daa8b783db0f92a9');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:59:00.000000+00:00', 'held', 'boss', '{"line":"864f028df76808a8","now":["orders a89c98cd592095a4 - d9d8866a0839"],"why":"Its channel says that it is not paid or not cleared yet."}', '2eaa6c18e22f1f7855c86b455bda5e7c0d53e18512d8ad7e3c3faeade3faa47e');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:59:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"d9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0","loaded":3}', 'd476842e473cd5af3be1c61bbed7b1933d5ef8704af5fccc1af2f63efa1cae40');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:04:00.000000+00:00', 'order cleared', 'boss', '{"lines":["864f028df76808a8"],"now":["lines 864f028df76808a8 unbound 1393d4a8e912","orders a89c98cd592095a4 - 7fe5f1695826","changed_orders 5c54dd7b9ce4523e - 758e52bfe2d4"],"number":"F-3","order":"a89c98cd592095a4"}', '4e4149527e12934cc8e33e0a94b55196fbceb33867a9ab96edabbcfa96896817');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514","loaded":0,"now":["lines 6f08d9820c69c429 unbound 757147fb567d"]}', '4e0287dcf878043c4e3b03d63c0c4533378844013699b49cb49d34f7a947eca6');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:04:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"6f08d9820c69c429","reference":"Q7","stay":null}],"now":["changed_orders 9e3f6e5abff0531f - d478050e0a29"],"number":"F-2","order":"78715b3af03a0707"}', '562f5b8f91ac8c1fd2f7e9266ca067ad5be9b877ae4c7c961723e0eec67aa88f');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["1b81e3f91dedfe80","f8da298ddab68576","c26bc43e33dce13b","0f2470798a481849","4511d877cdb527bd","a4b19caa1b7255a2","6439ad96743e19d1","40c72131a38e09ae","905fb88fe1f5c903","20129c10e5c51529","ffbe02f8a7931cc6","e1648ec0dedff4d9"],"now":["rounds 7ca1e30f3baeb809 open f2800cca8055","lines c26bc43e33dce13b waiting 48045122f2b5","lines 0f2470798a481849 waiting b1413e94842b","lines 4511d877cdb527bd waiting ed8e7f6effba","lines a4b19caa1b7255a2 waiting 9560853d18bc","lines 905fb88fe1f5c903 waiting 220abe200b05","lines 20129c10e5c51529 waiting 7e162cfaebb0","lines 1b81e3f91dedfe80 waiting 1bc248015103","lines f8da298ddab68576 waiting 238943a6b116","lines ffbe02f8a7931cc6 waiting 2df5a9203f34","lines e1648ec0dedff4d9 waiting 0c2a4c0dcf18","lines 6439ad96743e19d1 waiting 5ba07d2b575c","lines 40c72131a38e09ae waiting 89545cde5966"],"round":"7ca1e30f3baeb809"}', 'c56d3db22fbba8b50ca692268a42e9d4d96894ae73042c782f9d201e4e264901');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item cd2728658608","scans free-D004 - 0cd7a4674fea"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '225bc69ca931fb1ab49e1e2cbe928a0e6a9a988cbe1e5e328330073c2ff0f4c4');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"1b81e3f91dedfe80","line_state":"picked","now":["slots W001 on_item 4b8a5d93b0f9","lines 1b81e3f91dedfe80 picked b842487ae3bd","scans pick-W001 - e94946c4ff32"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'b510f445c502f956716d667b730b8409b104b54c56d67d26083799922b8896ec');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"f8da298ddab68576","line_state":"picked","now":["slots W002 on_item c3ef9c5f86e0","lines f8da298ddab68576 picked 78a43897cf92","scans pick-W002 - 1d5a938e25bb"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '4b3cb85489bc6daac3f2123af3e3d1e478a3d488a191bd4756dba214d6f5a2ee');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"c26bc43e33dce13b","line_state":"picked","now":["slots S002 on_item 73a53f978744","lines c26bc43e33dce13b picked a87cc526b80f","scans pick-S002 - c54e4f3716de"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '4a1fac8a17b85d9bb306c89a7a22706522ffd264ad4529a9e30cbec38a656aed');
INSERT INTO public.ledger VALUES (195, '2026-03-02T16:59:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns 3481741cc52725df expected 0856ae23b9fd"],"order":null,"return":"3481741cc52725df","until":null,"why":"Left at the door"}', '8659f5591ed4b772584410bb3a458f72195b1d39c64a5b8ab4bf47185a916c3d');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"0f2470798a481849","line_state":"picked","now":["slots S003 on_item 160eb7efc7e2","lines 0f2470798a481849 picked dca7c9794637","scans pick-S003 - 7800f8bba798"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'e46396e63171963e656a3447807248cdb46375465ed8daed85414236f834a738');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"4511d877cdb527bd","line_state":"picked","now":["slots S004 on_item a19e184c8070","lines 4511d877cdb527bd picked 672901ab958a","scans pick-S004 - 5bfecc96eeb0"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '423dcd095dd58cacd4fcf84968e1f205d710b24e98fd1bdcdd1954c1b3c32f80');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"a4b19caa1b7255a2","line_state":"picked","now":["slots S005 on_item b2c1959afb57","lines a4b19caa1b7255a2 picked 1968b2690ea0","scans pick-S005 - 2bf23e2f015b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '5c5e38da1ebc15b8e502a83f750c6e50161e2fb4411b44caf3e8f1c9357e0f17');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"6439ad96743e19d1","line_state":"picked","now":["slots L006 on_item 5350861ccb18","lines 6439ad96743e19d1 picked d53255e38526","scans pick-L006 - a60fc8e2f85b"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '56b6e09164938282fded8277d4190a5be9cd1227b894b066b6de4dadd13bca4e');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"40c72131a38e09ae","line_state":"picked","now":["slots L011 on_item eb7982407a09","lines 40c72131a38e09ae picked d2f685b68a9e","scans pick-L011 - 9dede6622901"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '804ea41e68670022e2a56268351f16f0b30d454ecfb1cbcce18d18d69ffe8088');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"905fb88fe1f5c903","line_state":"picked","now":["slots S006 on_item 7bc38c7065af","lines 905fb88fe1f5c903 picked 546863984833","scans pick-S006 - a9744ce4afbc"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', 'e4df486cbfd0648d9a5e261c85ffff35f893e97c32a3e5968e2b2657ec158409');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"20129c10e5c51529","line_state":"picked","now":["slots S007 on_item bea4a9545841","lines 20129c10e5c51529 picked 9c92895829cf","scans pick-S007 - 2310586ccca2"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '9d8ac76cdfb8114e6bd7db77b456f6996ecc323cb3a6c0f07bd76913171a4123');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"ffbe02f8a7931cc6","line_state":"picked","now":["slots W007 on_item 8d5a4bc68105","lines ffbe02f8a7931cc6 picked 6fbe7cf8ca81","scans pick-W007 - b0b3f37759d6"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'b3643e5fc9cb5d45e403be37d51f914899a160467703761ce44f8e73d37b75d9');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"e1648ec0dedff4d9","line_state":"picked","now":["slots W008 on_item df3b4aa72149","lines e1648ec0dedff4d9 picked 1d9c85c562d5","scans pick-W008 - 6dfcef18e3fc"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ca1e30f3baeb809","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', 'fe987b182f24647d5ae9aaaf4c5cad9619baa1098135067a43ded29c6d56f47d');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"e1648ec0dedff4d9","line_state":"waiting","now":["lines e1648ec0dedff4d9 waiting 0c2a4c0dcf18","slots W008 on_item b8fdf37a91ac"]}', '4ddd6fc82caed85be10c22a0ee9ced75d9e340e5caa585a16ae03b0b9ceaaf34');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 7ca1e30f3baeb809 closed 00894cdfa3c3"],"round":"7ca1e30f3baeb809"}', 'f42593b1022c084889c083caa9841c928db0da7aaf3e5e9473d692b02b3b779a');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 81d4918eadd6988c open d78585ef658c","orders 98be07ab1de4f2ff - fc180a646c47"],"orders":["98be07ab1de4f2ff"],"parcel":"81d4918eadd6988c","table":"main"}', '92b15bf818308d00fd749ea0895a9ce98035d8d98515c2eedfd5ce3b45d6f9e5');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"c26bc43e33dce13b","line_state":"picked","now":["slots S002 on_item c449eede3a34","scans other-S002 - af702ba6a790"],"order_number":"B-03","parcel":"81d4918eadd6988c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '0d23b0982c27d7cba27ce21afa9c3bd18c2c04c9ff35132e2ad0e5be9ea2da7d');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"1b81e3f91dedfe80","line_state":"packed","now":["lines 1b81e3f91dedfe80 packed 42e8a7f138e0","slots W001 on_item d7071268acac","scans pack-W001 - a090a806808b"],"order_number":"B-01","parcel":"81d4918eadd6988c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '221f187b281cd8ca12860dd20f1773c5ac1ba449e3c88759f4c89be631896e1c');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines f8da298ddab68576 released 8ba09c163401","slots W002 due 24a6dd7f4225","lines 1b81e3f91dedfe80 released 5c6ed08d8441","stays 33a28177bc4cedd3 shipped e6f681a202c1","slots W001 due 09116bd8e11c","stays ed80087fbff149b5 shipped 352424ac57d3","parcels 81d4918eadd6988c closed 9da2b1c6ea3b","orders 98be07ab1de4f2ff - 6693de3793ee","scans pack-W002 - 9ae25b7907c7"],"orders":["98be07ab1de4f2ff"],"parcel":"81d4918eadd6988c","released":["W001","W002"]}', '91cf80ea95d8351582bb5a767e61f77286a9edc50bc965990173c17ff6d3400a');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"f8da298ddab68576","line_state":"released","order_number":"B-01","parcel":"81d4918eadd6988c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '2c2b7964b0a4981c9cea0d5c566aba4783806bc9bb81a2f4976513a276210b8f');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"1b81e3f91dedfe80","line_state":"released","now":["slots W001 tray ccfbc2b4cd76","scans back-W001 - 1169fd779cce"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '3f127bde7e5d5aab2531b9fa394897e43f4a2e262afa2c18f461001e7b1e00f9');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items e4e1715b7c1bda1a - ee4b0171bee5","slots W001 on_item 4bac4e5a272f","stays cdf4e2e5ab6ee4da stored cbc93d95d289"],"stay":"cdf4e2e5ab6ee4da","title":"Rear wheel","turn":2}', '3f48ced1920c8144a90180736b403f2552394905a412e279dc9ed9f3fda78baa');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - ed53d54924eb"],"parcel":"81d4918eadd6988c"}', 'fa154548fdd1f33674fe82c4bd4ff8230e52d749697e8a741f09ef5b1b655034');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels a907e067248be70f open 200eab58a8ea","orders 16a229b33298c4ac - 18e5fd1d2d54"],"orders":["16a229b33298c4ac"],"parcel":"a907e067248be70f","table":"main"}', 'f7d86e13d598cee2bb979fdafff939dbf63f66285cd022249cfb299fb4ade8e7');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"ffbe02f8a7931cc6","line_state":"packed","now":["lines ffbe02f8a7931cc6 packed b49a117e9bf5","slots W007 on_item b688f0d007c0","scans pack-W007 - 1cdce18eaaf7"],"order_number":"B-23","parcel":"a907e067248be70f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'fef7b056ebe4a448b8cf2be70181751dcda87535201d237fa8fafa2199354af5');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines ffbe02f8a7931cc6 released fcb7709a2754","stays 3e81e18d0ea0bf68 shipped be8eb8463962","slots W007 due 3cff695121c8","parcels a907e067248be70f closed f641dcd1698b","orders 16a229b33298c4ac - 103f9132408a"],"orders":["16a229b33298c4ac"],"parcel":"a907e067248be70f","released":["W007"]}', '310d3cf82f1055a874d4e20ca001197776b7f025f2ceb65627acec3fe4a10659');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines ffbe02f8a7931cc6 packed 480377b51f3d","stays 3e81e18d0ea0bf68 stored 2f6a165c036a","slots W007 on_item 2349d6b763b1","parcels a907e067248be70f open a16601f97cfb","orders 16a229b33298c4ac - 18e5fd1d2d54"],"orders":["16a229b33298c4ac"],"parcel":"a907e067248be70f"}', 'eb2778056d9336c3814b24b474b787154677599e0d81b0ab79aa2653c781500b');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines ffbe02f8a7931cc6 released fcb7709a2754","stays 3e81e18d0ea0bf68 shipped 40265d6af403","slots W007 due 3cff695121c8","parcels a907e067248be70f closed cd810e15d078","orders 16a229b33298c4ac - 103f9132408a"],"orders":["16a229b33298c4ac"],"parcel":"a907e067248be70f","released":["W007"]}', '571918ad1e48af730e26e43f91a06941c06e04129191061ded5a7eac32da7f97');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'left for later', 'boss', '{"now":["parcels a907e067248be70f closed 33fe76361593"],"parcel":"a907e067248be70f"}', '0a0697cd59c42496062f7d39ef3391bdb2c4994620d5f93daea3da0e5f7ed1da');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'hand-over', 'boss', '{"by":"label","carrier":"The red van","changed":true,"key":"gone","line":null,"now":["parcels 81d4918eadd6988c handed_over 1c5036846c0b","scans gone - f7c2a09d3576"],"order_number":"B-01","parcel":"81d4918eadd6988c","parcel_state":"handed_over","reason":null,"verdict":"accepted"}', '221d9a930b7212765972e33e4d25d73b73a91f46b292965d1dcb1b7271bc6916');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4b388db96a356a53 open 8c2d809ed8c7","orders 3a6538911a88b34f - 306cd452743e"],"orders":["3a6538911a88b34f"],"parcel":"4b388db96a356a53","table":"main"}', '8d18fdb623fafaea0a4227912010b5930a3dbb1e283c384f04af069ad14d952a');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 4b388db96a356a53 dropped 4a4fcb342505","orders 3a6538911a88b34f - d479c7d6d74e"],"parcel":"4b388db96a356a53"}', '5068cc4263c166d1159b5f7d2c59d827b7a5bc22bd3aefbba4f58b3da2136a06');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4cb2525d60826cd8 open cc3568a111d4","orders 3897d6d8a115a440 - 264d4278870b"],"orders":["3897d6d8a115a440"],"parcel":"4cb2525d60826cd8","table":"main"}', 'd2eaa2036aa1326b965c7e4c2e1f45710d084c01e03123424349498e6ddafe75');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"4511d877cdb527bd","line_state":"packed","now":["lines 4511d877cdb527bd packed 3ea1a506f9e8","slots S004 on_item 7647a763f474","scans pack-S004 - 2add030e2820"],"order_number":"B-04","parcel":"4cb2525d60826cd8","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '36d158a4265c576a77ba3ee184efff28d00e5b08ecba254172b0b9f02ac85fc6');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 4cb2525d60826cd8 aside f5464f0b10fd"],"parcel":"4cb2525d60826cd8"}', 'fa91a1bdd1a98cdff75480f3895881e6f2f0df00e6491a33403a5d520130edeb');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4618d4b881e86242 open a2465a3b6593","orders 7e5f2fcd68a318a1 - 8fdfd971923b"],"orders":["7e5f2fcd68a318a1"],"parcel":"4618d4b881e86242","table":"second"}', 'f2bd89fa2746cebcd002fe9ff65c9d08132fe4c26ac520ce6d7ead8cf3fded09');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"6439ad96743e19d1","line_state":"packed","now":["lines 6439ad96743e19d1 packed e12a4941b032","slots L006 on_item c4da9862c144","scans pack-L006 - 49864087b090"],"order_number":"B-09","parcel":"4618d4b881e86242","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'fb9ebd2710cdcb9b48eff473b2c94112853f4847f0de5b0ee27df267b3c0ad72');
INSERT INTO public.ledger VALUES (172, '2026-03-02T15:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["6439ad96743e19d1","40c72131a38e09ae"],"now":["lines 6439ad96743e19d1 packed d905c72473d2","lines 40c72131a38e09ae cancelled 9127f8aa784c"],"number":"B-09","order":"7e5f2fcd68a318a1"}', '5bd2ed321d899113b7cd063ae7e0bef327ead321869b26c36f5f90fa463c67bc');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:02:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 7e3cd1b67c4a79b8 open 245960256505","orders dbac7c9dc09b2fca - decd24e681e1"],"orders":["dbac7c9dc09b2fca"],"parcel":"7e3cd1b67c4a79b8","table":"main"}', 'c4911927921d152243e191950847f0c51e5574acd9f79a1240634a170a95556f');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:05:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"c26bc43e33dce13b","line_state":"packed","now":["lines c26bc43e33dce13b packed 9cedd9646832","slots S002 on_item 6f6dc194e39c","scans pack-S002 - 2b50e855f099"],"order_number":"B-03","parcel":"7e3cd1b67c4a79b8","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '59d238e38f8ff4aa1e1b0af64fd9f0fe15133f41f79ec0421ba323331ea03375');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:08:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"905fb88fe1f5c903","reference":"S006-018","stay":"a3658363e6a605fe"}],"now":["lines 905fb88fe1f5c903 picked fb908d0b2c6e"],"number":"B-13","order":"c0d176933548b925"}', '7a280d6fad682e042703837602cb28ebea877c5750edea5dcaf8529bee943d33');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:11:00.000000+00:00', 'round opened', 'boss', '{"lines":["a2e5708ba42c2446","8107057e7cc91aa9","33942bcd50c5cdc2","3f351a707e3246c4"],"now":["rounds 2ac4c410f1fecf10 open df808926b80a","lines 3f351a707e3246c4 waiting f70c0f07b1d6","lines a2e5708ba42c2446 waiting 630389fc2595","lines 8107057e7cc91aa9 waiting 204b435dac62","lines 33942bcd50c5cdc2 waiting ed80a0212de1"],"round":"2ac4c410f1fecf10"}', 'da4709b4b46f300e1b8fe0afd77411ed4cd874a3e56af278e95b77866e915a58');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"a2e5708ba42c2446","line_state":"picked","now":["slots L002 on_item f62c83e8164b","lines a2e5708ba42c2446 picked c51eb26b90dd","scans pick-L002 - a1d642206320"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"2ac4c410f1fecf10","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'd228d3a9564b2b5cad6881e3c831bfab18fd8738be053e416962fea19c212153');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:17:00.000000+00:00', 'short', 'boss', '{"line":"33942bcd50c5cdc2","note":"Not in its bin","now":["lines 33942bcd50c5cdc2 short c659565584cf","doubts eb95f8864df6c27d - 9484da9bd06d"]}', 'a72a03a3403cd46cc958664e9c79a2df89e1e8217769d30ed6f617ddd4400bf6');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:17:00.000000+00:00', 'doubted', 'boss', '{"doubt":"eb95f8864df6c27d","doubt_kind":"missing","item":"b109bdb7b9779fca","words":"Not in its bin"}', 'b291d7df496486a2c9d57796011acc40cb6c3684b04ea5829529508e6d12756b');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - f98e132be4ae"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"2ac4c410f1fecf10","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '14e936d6a0dd5bd655fa40472c7c01a0043c90f1d3c67c39675bf5410ba0a675');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 351b8caa4cd4"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"2ac4c410f1fecf10","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '6492326de8fe775d5594ac60b91af12af94a945851e6e84d0511b5781db664db');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - b08982cf5a32"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"2ac4c410f1fecf10","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'df30c3b1f5d56cc056283d7a50d7400049bd59269deaf8fed680c4c3b7da3c86');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:29:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'e658a5838fb2079bd73de74153acf176dad584746f1527a0b065404416512a6c');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:32:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '00da21db076eb93397cf3c5986e6d124174cfb0edaad17e786dff200912c7f52');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"73e79a4fc683c9a4","reference":"D001-019","stay":"241933b7ff5cfa3c"},{"hold":"already_sold","line":"c14d6f26202b2956","reference":"W002-016","stay":null}],"now":["orders 8c85c96820398875 - cb34866bb9cb","lines 73e79a4fc683c9a4 waiting 5aff387b2682","lines c14d6f26202b2956 unbound 9e9ca3067ab8"],"number":"B-38","order":"8c85c96820398875"}', '6a2e7d9024a6b0b29a6c4c9072648edd93c8405f8431ce47447c4ad867728680');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:38:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"645061f42dd1134d","reference":"W001","stay":null}],"now":["orders 98f11bf14d0babb2 - 5c7400aeb7d6","lines 645061f42dd1134d unbound f45180c53f33"],"number":"B-39","order":"98f11bf14d0babb2"}', '84d7f903752d1cec34698a91ebc8cb58d9990eba3d40150130e1364886068e61');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:41:00.000000+00:00', 'return expected', 'boss', '{"lines":["1b81e3f91dedfe80"],"now":["returns 316b141d73d6be8a expected b2f02cdae806"],"order":"98be07ab1de4f2ff","return":"316b141d73d6be8a","until":"2026-03-20T23:59:59+00:00","why":"Too large"}', '7cdda3f73147c276fdfb5762a5823ff5e12107eb74e11536a893b1a87ae32872');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:44:00.000000+00:00', 'return expected', 'boss', '{"lines":["f8da298ddab68576"],"now":["returns dc4bdb2415a3ca19 expected 0c62e5911217"],"order":"98be07ab1de4f2ff","return":"dc4bdb2415a3ca19","until":null,"why":""}', '865efbc457cac7970716cbaec93dd99e4aecff7e6add7e080dcda5a938b70364');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:47:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns dc4bdb2415a3ca19 arrived dedbfd72a5f0"],"return":"dc4bdb2415a3ca19"}', 'f9e271f4490488a622e9d1f958d50a5ecb2bc960fd4d09e3c579e9dbf8fd337c');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:50:00.000000+00:00', 'returned', 'boss', '{"code":"D029","line":"f8da298ddab68576","now":["slots D029 on_item b9aacb6774bd","stays 82270e0ff7a345c5 stored 010d1b2cd003","lines f8da298ddab68576 returned 561fdbbe96e3","doubts 27fa6510491c4cda - 93fdf8b9062b"],"stay":"82270e0ff7a345c5","turn":1}', '0c725a34250ef4bb9547fad043542749ee140c31d232aef4ace94a3bb38ae253');
INSERT INTO public.ledger VALUES (191, '2026-03-02T16:50:00.000000+00:00', 'doubted', 'boss', '{"doubt":"27fa6510491c4cda","doubt_kind":"not_this","item":"4232b1c3a4283d53","now":["returns dc4bdb2415a3ca19 checked d0caf03133c2"],"words":"Came back: to be checked."}', '26af86eed3ed68ec63d3b1bd6a1ced04158cbe6e18c0abf4f5ec102478ea37c5');
INSERT INTO public.ledger VALUES (192, '2026-03-02T16:50:00.000000+00:00', 'return checked', 'boss', '{"condition":"check","line":"f8da298ddab68576","return":"dc4bdb2415a3ca19"}', '7510e02280a53b8e904c9c1deedbb260c482aa7feaef24e3a608a8fd89c40e2c');
INSERT INTO public.ledger VALUES (193, '2026-03-02T16:53:00.000000+00:00', 'return expected', 'boss', '{"lines":[],"now":["returns bb072f486141719f expected 179993f330ca"],"order":null,"return":"bb072f486141719f","until":null,"why":""}', '4c639f3cf4596e635a9275802358976fe56382aea876212d44c755ad84f031af');
INSERT INTO public.ledger VALUES (194, '2026-03-02T16:56:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns bb072f486141719f arrived a7a663cdee51"],"return":"bb072f486141719f"}', 'fe359411a66fb95b2753dc0d84cb929f9ec14222a5bd7c15ec82efa809d64f26');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:02:00.000000+00:00', 'return arrived', 'boss', '{"now":["returns 3481741cc52725df arrived 2b34e8d0a130"],"return":"3481741cc52725df"}', 'ca8cd2b628bc51544d997d7920bc4daee4858b2518309cf6f44481844c05f962');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:05:00.000000+00:00', 'return given up', 'boss', '{"never_ours":"stays","now":["returns 3481741cc52725df given_up b4301f6f3628"],"return":"3481741cc52725df"}', '7c599f3f464d330b6bd9c0ce66e273300456740151a4de87ee273a2690665376');
INSERT INTO public.ledger VALUES (198, '2026-03-02T17:08:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes b069c05b0cd35b86 open 6df0df4f4991"],"stocktake":"b069c05b0cd35b86"}', '51fd30fb25970118e84e4332bb5bad5a7137d2dfdb19fe11335a78b847007266');
INSERT INTO public.ledger VALUES (199, '2026-03-02T17:15:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - a938712bd546","slots S001 on_item 964d1517a673","doubts 7450aa67daf8cabf - 91f545e2c647"],"photo":null,"place":"B-1-1","stocktake":"b069c05b0cd35b86","unread":0}', '2c8fa69474f5487cc78c8bc558a326a8f60cce00a573a258275b2637ee3f41b0');
INSERT INTO public.ledger VALUES (200, '2026-03-02T17:15:00.000000+00:00', 'doubted', 'boss', '{"doubt":"7450aa67daf8cabf","doubt_kind":"not_this","item":"deb1239a35a1628b","now":["slots S003 on_item 35f0958c78bd","slots S012 on_item f5381bd6bd19","slots D010 on_item d5ac88b828af"],"words":"A count found another thing on its card in B-1-1."}', '024da9c0f50a9c944877d40117f308fa516e3a4ae06a825c953404b4d937bf87');
INSERT INTO public.ledger VALUES (201, '2026-03-02T17:23:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 51c4d343c3bc","slots S011 on_item b0b261e048f9","slots S013 on_item 039848ebf4af"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"b069c05b0cd35b86","unread":0}', '2ce14431dce8f13614d6193a6f9f25d94648a492930426fbbe310011a5fd89a6');
INSERT INTO public.ledger VALUES (202, '2026-03-02T17:29:00.000000+00:00', 'finding resolved', 'boss', '{"after":201,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 867949cc3e09","resolutions b069c05b0cd35b86.elsewhere-S012 - 16c8c85c3052"],"reason":"","stocktake":"b069c05b0cd35b86","sure":false}', '64d439e75145b8e7a38ae0813358e9141c4503227601dd8115cb91bed0735018');
INSERT INTO public.ledger VALUES (203, '2026-03-02T17:32:00.000000+00:00', 'finding resolved', 'boss', '{"after":202,"finding":"unknown-Q0771","how":"ignore","now":["resolutions b069c05b0cd35b86.unknown-Q0771 - 8bd08d7e139a"],"reason":"A neighbour''s","stocktake":"b069c05b0cd35b86","sure":false}', '820a25d94005886d84aa834a63c141180db63864e4e8c1c9ec59b550548e70d5');
INSERT INTO public.ledger VALUES (204, '2026-03-02T17:35:00.000000+00:00', 'finding resolved', 'boss', '{"after":203,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item dfcc12b7cd30","resolutions b069c05b0cd35b86.missing-S008 - e215b2ca9100"],"reason":"","stocktake":"b069c05b0cd35b86","sure":false}', '2dda4318e2010c026dc8da299504fdaa61ab5b39058bc5b5aca1176c899513bc');
INSERT INTO public.ledger VALUES (205, '2026-03-02T17:38:00.000000+00:00', 'finding reopened', 'boss', '{"after":204,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions b069c05b0cd35b86.missing-S008 - -"],"stocktake":"b069c05b0cd35b86"}', '18385832e7cdcff44496c3acdc80d94b10873617bc6f96d809980798322e0c76');
INSERT INTO public.ledger VALUES (206, '2026-03-02T17:41:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f2421f9d292c7aa3","doubt_kind":"missing","item":"85299bd1ed3521b9","now":["doubts f2421f9d292c7aa3 - d09af3bced66","stocktakes b069c05b0cd35b86 closed a97eade02fec"],"words":"a count of section:S did not find it"}', '094ae4d31632c3a61f214d95bc2f590f5a9836bcf559246d1788fec8eab16684');
INSERT INTO public.ledger VALUES (207, '2026-03-02T17:41:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"b069c05b0cd35b86"}', '67163ca3aa96f5a755b5b995b14d9bb3acd38862ac1e99a71a88e92abc98bac4');
INSERT INTO public.ledger VALUES (208, '2026-03-02T17:44:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes f70c29981c808263 open 063b25204e3c"],"stocktake":"f70c29981c808263"}', 'd0fed045e00b08209c9bba4620f7a6a2d9909c55b54fba17ca5d2eaa4be2300c');
INSERT INTO public.ledger VALUES (209, '2026-03-02T17:51:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - eb4a247eab46","slots L003 on_item e197f8cedb43","slots L004 on_item 79ee945ce7a8","slots L005 on_item a5216dbd75fb","slots L007 on_item 264bbe8ef33d"],"photo":null,"place":"C-1-1","stocktake":"f70c29981c808263","unread":0}', '7a74e4dd2b70544ca8978ef23e909d8a56613bd4392502c138470c5e05e0c127');
INSERT INTO public.ledger VALUES (210, '2026-03-02T17:54:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 14c80664cc656e93 - 7668cb3d9e70"]}', '719a02367e06e589b792e9f20423b981555336b0d5b358fdbbc96404cdaf9a97');
INSERT INTO public.ledger VALUES (211, '2026-03-02T17:54:00.000000+00:00', 'doubted', 'boss', '{"doubt":"14c80664cc656e93","doubt_kind":"missing","item":"153ba36f62802d87","now":["resolutions f70c29981c808263.missing-L008 - 5aeb88e54019"],"words":"a count did not find it"}', '2355f125c59ca8029f10b6f9918f890d504d48dc70a0ad36461601eb0f16c4af');
INSERT INTO public.ledger VALUES (212, '2026-03-02T17:54:00.000000+00:00', 'finding resolved', 'boss', '{"after":209,"finding":"missing-L008","how":"lost","reason":"","stocktake":"f70c29981c808263","sure":false}', 'b2f0984b2f6a8fb87151db6d657c1a729755d86efcf16704e6392f4110cce81b');
INSERT INTO public.ledger VALUES (213, '2026-03-02T17:57:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 3b91dfd4e274ff6c withdrawn 26ebebcb32b4","slots L009 due 821cc144d722","resolutions f70c29981c808263.missing-L009 - 2f2c9416069c"],"reason":"Nowhere to be found","stay":"3b91dfd4e274ff6c"}', 'b011de6d7589390900099a239a8d2740b56e545936e777e19a81656aeda06a9d');
INSERT INTO public.ledger VALUES (214, '2026-03-02T17:57:00.000000+00:00', 'finding resolved', 'boss', '{"after":212,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"f70c29981c808263","sure":false}', 'f31158fb02d7df0b57a184626e85816fc205ad6ac565b95899c1c8a1015edcdd');
INSERT INTO public.ledger VALUES (215, '2026-03-02T18:00:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes a5b900e8e564e6da open 94933874025f"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"a5b900e8e564e6da"}', '38e8592199af6d8ce0b5e9629f9248ed0ea4ccc86d8a789bfaad33fea02a314a');
INSERT INTO public.ledger VALUES (216, '2026-03-02T18:03:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 22d025a4f2b27ba4 open 775c0902e13e"],"stocktake":"22d025a4f2b27ba4"}', '2b3a44ea1c17baae74211ca28a6edecb46cb840f21132886216f48faf46e70cb');
INSERT INTO public.ledger VALUES (217, '2026-03-02T18:06:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 22d025a4f2b27ba4 cancelled 72cd76fad28c"],"stocktake":"22d025a4f2b27ba4"}', 'de902d46e092a2ffdb712417a38e8fdc19e6436c14de96b3b70869544e00e763');
INSERT INTO public.lines VALUES (15, 'b1692c00d150cc13', 'e307ffcaf897e0f6', 1, 'D009-01B', 'Rear derailleur 9', '', 'bc0fa93e2a46a91d', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (21, 'e0a750c669e65944', 'deca3080b7a6d48b', 1, 'D003-01U', 'Bell with a crown', '', 'a224d7f9c9901829', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]', '');
INSERT INTO public.lines VALUES (22, '48b1c96eb6239182', '90b5cc06eed96275', 1, 'D005-01E', 'Rear derailleur 5', '', '74096806e3fee4b6', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (23, '832810210f3e4333', '90b5cc06eed96275', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Z."]]', '');
INSERT INTO public.lines VALUES (24, '09eb9e476756b171', 'c9f6afaa71dde42f', 1, 'D006-016', 'Rear derailleur 6', '', '8028bf999d2181d7', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (25, 'bf9beb8ce5d23222', 'c9f6afaa71dde42f', 2, 'D007-01R', 'Rear derailleur 7', '', 'd4334d93cbfc4632', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]', '');
INSERT INTO public.lines VALUES (26, '9375d5a406b94f31', '2f7eeda9c19187e1', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "This is not written like a reference."]]', '');
INSERT INTO public.lines VALUES (27, 'aad91d930205e9e0', '1fce796d6eff4825', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]', '');
INSERT INTO public.lines VALUES (28, '3ac90c82492c2148', '63dd6a619efc5aca', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]', '');
INSERT INTO public.lines VALUES (29, 'ddd1867ed5cd4efa', '6441966986fbd3c6', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]', '');
INSERT INTO public.lines VALUES (30, '0a28e812de4a0955', '6144a9033e721847', 1, 'W005-01B', 'Bell with a crown', '', '4bc103cff127d133', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (14, '0e12344e8a0e1c81', '74fb29a5dd4c362c', 1, 'L007-014', 'Dynamo lamp 7', '', '2a3fc666e808cb7c', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]', '');
INSERT INTO public.lines VALUES (10, '2f2e4cfb55009033', '0f45c5edc02071c8', 1, 'L005-01K', 'Dynamo lamp 5', '', '46c32d5c50c51783', 'cancelled', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (16, '18edf4bca3f9976d', 'ca71466d58e80d5e', 1, 'W006-013', 'Front wheel 6', '', '1f3232b189871482', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (31, 'f65cae7fc9ea8185', '922f5eb4c1e9d939', 1, 'L012-01S', 'Dynamo lamp 12', '', '8aa14cf8c6a08f42', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (32, '0a0ecfec7f4502a7', '855290e9c4ba9f5f', 1, 'S012-01O', '', '', '52e241d7855abeed', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (34, '864f028df76808a8', 'a89c98cd592095a4', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Q."]]', '');
INSERT INTO public.lines VALUES (33, '6f08d9820c69c429', '78715b3af03a0707', 1, 'Q7', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]]', '');
INSERT INTO public.lines VALUES (19, 'e1648ec0dedff4d9', '16a229b33298c4ac', 2, 'W008-01O', 'Front wheel 8', '', 'b4cb29a3dfd90aca', 'waiting', NULL, '7ca1e30f3baeb809', 7, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (1, '1b81e3f91dedfe80', '98be07ab1de4f2ff', 1, 'W001-01E', 'Front wheel 1', '', '33a28177bc4cedd3', 'released', '81d4918eadd6988c', '7ca1e30f3baeb809', 1, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (18, 'ffbe02f8a7931cc6', '16a229b33298c4ac', 1, 'W007-01W', 'Front wheel 7', '', '3e81e18d0ea0bf68', 'released', 'a907e067248be70f', '7ca1e30f3baeb809', 7, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (5, '4511d877cdb527bd', '3897d6d8a115a440', 1, 'S004-01O', 'Leather saddle 4', '', '4e7f08d5d7083f8f', 'packed', '4cb2525d60826cd8', '7ca1e30f3baeb809', 3, 'pack-S004', true, '[]', '');
INSERT INTO public.lines VALUES (4, '0f2470798a481849', 'dbac7c9dc09b2fca', 2, 'S003-01W', 'Leather saddle 3', '', 'c4e25201f23b6944', 'picked', NULL, '7ca1e30f3baeb809', 2, 'pick-S003', true, '[]', '');
INSERT INTO public.lines VALUES (6, 'a4b19caa1b7255a2', '3897d6d8a115a440', 2, 'S005-01G', 'Leather saddle 5', '', '821910d106e71992', 'picked', NULL, '7ca1e30f3baeb809', 3, 'pick-S005', true, '[]', '');
INSERT INTO public.lines VALUES (17, '20129c10e5c51529', '3a6538911a88b34f', 1, 'S007-01Z', 'Leather saddle 7', '', '7857b370cbc82e16', 'picked', NULL, '7ca1e30f3baeb809', 6, 'pick-S007', true, '[]', '');
INSERT INTO public.lines VALUES (11, '6439ad96743e19d1', '7e5f2fcd68a318a1', 1, 'L006-01C', 'Dynamo lamp 6', '', '370d5820e9859ab5', 'packed', '4618d4b881e86242', '7ca1e30f3baeb809', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]', '');
INSERT INTO public.lines VALUES (12, '40c72131a38e09ae', '7e5f2fcd68a318a1', 2, 'L011-010', 'Dynamo lamp 11', '', '6c3c905ec1f2af12', 'cancelled', NULL, '7ca1e30f3baeb809', 4, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (3, 'c26bc43e33dce13b', 'dbac7c9dc09b2fca', 1, 'S002-013', 'Leather saddle 2', '', '0eb97ec08a533001', 'packed', '7e3cd1b67c4a79b8', '7ca1e30f3baeb809', 2, 'pack-S002', true, '[]', '');
INSERT INTO public.lines VALUES (13, '905fb88fe1f5c903', 'c0d176933548b925', 1, 'S006-018', 'Saddle with springs', '', 'a3658363e6a605fe', 'picked', NULL, '7ca1e30f3baeb809', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]', '');
INSERT INTO public.lines VALUES (20, '3f351a707e3246c4', '42c96ff34231f753', 1, 'D008-01J', 'Rear derailleur 8', '', 'f0d30390b8f38493', 'waiting', NULL, '2ac4c410f1fecf10', 8, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (37, '645061f42dd1134d', '98f11bf14d0babb2', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]', '');
INSERT INTO public.lines VALUES (8, '8107057e7cc91aa9', '5dd36e6983485faa', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '638d84342bf56996', 'waiting', NULL, '2ac4c410f1fecf10', 4, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (2, 'f8da298ddab68576', '98be07ab1de4f2ff', 2, 'W002-016', 'Front wheel 2', '', 'ed80087fbff149b5', 'returned', '81d4918eadd6988c', '7ca1e30f3baeb809', 1, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (7, 'a2e5708ba42c2446', 'eaaff2d98abf4fff', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', 'c97ca999b9e64da6', 'picked', NULL, '2ac4c410f1fecf10', 1, 'pick-L002', true, '[]', '');
INSERT INTO public.lines VALUES (9, '33942bcd50c5cdc2', 'ccf3206c438b0442', 1, 'L004-01S', 'Dynamo lamp 4', '', '3b9e149964b1e802', 'short', NULL, '2ac4c410f1fecf10', 7, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (35, '73e79a4fc683c9a4', '8c85c96820398875', 1, 'D001-019', 'Rear derailleur 1', '', '241933b7ff5cfa3c', 'waiting', NULL, NULL, NULL, NULL, true, '[]', '');
INSERT INTO public.lines VALUES (36, 'c14d6f26202b2956', '8c85c96820398875', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]', '');
INSERT INTO public.listings VALUES (1, '50f5415744ee3d4d', '8f3bdd680d5519a1', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, '8a98fd85dcc1de81', 'f348bab17351a5f3', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, 'e284b3e0eadcecf9', '74e5df550824a76f', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, '6e1df0c979480a1a', '5f3071fbb8b9a524', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, 'fcb09506ac0d6b3b', 'feaf4848d09cee5a', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, '10bd8fdfe5bc7c02', '2f4306eebe661971', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, 'be6e5c577f2cb248', '5116a39b186ff3c2', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, '347d34d08f21256d', '5e41161e4abe4886', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, '6fdbd14b54fd1fcc', 'a4d75558a1f10a0e', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, 'f36884ba64dcbaba', 'c75c96d337e930be', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, '57eac9f59f8aa541', 'a6fe074d22f12680', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, '1a86271f28daa898', 'deb1239a35a1628b', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, 'ae7b3461f150c2d3', '8e85d8a95acbd1b2', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, '9229233f66292f7a', '1091dbe03d97bf7d', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, '366c6f0c4e1d1d3c', '131ce24944acefa9', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, 'e779ad51bf5f398d', '407d039c6c083a6b', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, '2f6a52ace34b5238', '0b9acfb381d630ba', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, '435054da14cd2b72', '741805b82bee5c4c', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, '3729fa43f2932401', '85299bd1ed3521b9', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, 'bcf4d657c17ae115', 'cfa46a16d432a1e3', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, 'f09f7044eeaaf574', 'ad2c38333d5e483d', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, '0c712bdcc5cdbb30', '31e37f9d27a8a3c1', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, '868b4407600b21d6', 'd136eb3b5e4229d9', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, 'fdc689c96d9f26e7', 'a630ba4c7042d6bb', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '763be72758128e41', '1e0bdc3468de3d15', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, '66b5679dfd4fad3f', '76f66836d61aa444', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, 'f0506263b456970e', 'b109bdb7b9779fca', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, '298795656d610ac9', '632940d050f876e2', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, '003b8a4fbb1aaec3', '36505e26ab1b52b1', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, '690d39b7dd872a3d', '4b13a9473d241919', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, '64177e5940ca6fbb', '153ba36f62802d87', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, 'b698ed2f0bd673f5', 'a745cbce09a27c70', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, 'f9a3c3d48314a62b', 'e03db16c2a3df5eb', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, '65f24a4e2cd0a6ca', 'b39c03e3e385a0e7', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, '9db2fc9e11fcbd78', 'f3e10ce674e10940', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, 'fee54ba9bda317b8', 'b1e247dca1134a07', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, '3e92d434b5443627', '4232b1c3a4283d53', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, '9029e20192357a39', '926c4d96517d0b38', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, 'f7f54f604de1fd43', 'ddfd1a57354d08e4', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, 'd3c7b7bf93f6233b', '099cba3d9b3854a4', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, 'ae9b9bbff9751b87', '0af84de05cd32b0b', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, '77c49a6f9c340e59', '7625585aa2e1c449', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '635579c11a412068', '659d5703d484ec77', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, '1f507d205823902b', '4b81b10d57b5316a', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, '20e8d7317a4f6180', 'c3741214848c7a67', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, 'f4b63c18719fedb2', 'e31031e0b4266621', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, 'ca76a33fe2bc2fb4', '7e476157fcabc4c2', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, 'ed496ab0930fd9e7', 'b1e247dca1134a07', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, '0954d43a510d439a', 'b1e247dca1134a07', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, '191106f91a16f560', '8e85d8a95acbd1b2', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, '1ad4b7c1b221cedf', '8e85d8a95acbd1b2', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, '5b5d5e7a2f62421a', '5e41161e4abe4886', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, '6b9dfcee22b15920', '5e41161e4abe4886', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, '706dccd932a25f5b', '7e476157fcabc4c2', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, 'd81c72619747536e', '7e476157fcabc4c2', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, 'c7ed94a06ec99ab5', 'a745cbce09a27c70', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, 'ac517ed240d78fdd', '57305c3496b6c8a4', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '1b235c706ac03694', '57305c3496b6c8a4', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, '89e0a42db7a2b0fa', 'a745cbce09a27c70', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, 'e9a962a561da676d', '1e0bdc3468de3d15', 'fair', 'fair-L002', 'a2e5708ba42c2446', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, '7a0a16eb07f86e4e', '76f66836d61aa444', 'fair', 'fair-L003', '8107057e7cc91aa9', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'b069c05b0cd35b86', 'B-1-1', '2026-03-02T17:15:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'b069c05b0cd35b86', 'B-1-2', '2026-03-02T17:23:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', 'f70c29981c808263', 'C-1-1', '2026-03-02T17:51:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'eaaff2d98abf4fff', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '5dd36e6983485faa', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, 'ccf3206c438b0442', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, '0f45c5edc02071c8', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, 'c0d176933548b925', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, '74fb29a5dd4c362c', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, 'e307ffcaf897e0f6', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, 'ca71466d58e80d5e', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, '42c96ff34231f753', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, 'deca3080b7a6d48b', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, '90b5cc06eed96275', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'c9f6afaa71dde42f', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '2f7eeda9c19187e1', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '1fce796d6eff4825', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '63dd6a619efc5aca', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '6441966986fbd3c6', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '6144a9033e721847', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, '922f5eb4c1e9d939', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, '855290e9c4ba9f5f', 'F-1', 'Fair', '2026-03-02T13:59:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (26, '78715b3af03a0707', 'F-2', 'Fair', '2026-03-02T13:59:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (27, 'a89c98cd592095a4', 'F-3', 'Fair', '2026-03-02T13:59:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (1, '98be07ab1de4f2ff', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, '16a229b33298c4ac', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '3a6538911a88b34f', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, '3897d6d8a115a440', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '4cb2525d60826cd8', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, '7e5f2fcd68a318a1', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '4618d4b881e86242', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, 'dbac7c9dc09b2fca', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', '7e3cd1b67c4a79b8', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, '8c85c96820398875', 'B-38', 'fair', '2026-03-02T16:35:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, '98f11bf14d0babb2', 'B-39', '', '2026-03-02T16:38:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (2, 'a907e067248be70f', 'main', '16a229b33298c4ac', '2026-03-02T15:26:00.000000+00:00', 'closed', '2026-03-02T15:29:00.000000+00:00', NULL, '', '', '', true);
INSERT INTO public.parcels VALUES (1, '81d4918eadd6988c', 'main', '98be07ab1de4f2ff', '2026-03-02T14:55:00.000000+00:00', 'handed_over', '2026-03-02T15:04:00.000000+00:00', '2026-03-02T15:35:00.000000+00:00', 'The red van', 'boss', '', false);
INSERT INTO public.parcels VALUES (3, '4b388db96a356a53', 'main', '3a6538911a88b34f', '2026-03-02T15:38:00.000000+00:00', 'dropped', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (4, '4cb2525d60826cd8', 'main', '3897d6d8a115a440', '2026-03-02T15:44:00.000000+00:00', 'aside', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (5, '4618d4b881e86242', 'second', '7e5f2fcd68a318a1', '2026-03-02T15:53:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.parcels VALUES (6, '7e3cd1b67c4a79b8', 'main', 'dbac7c9dc09b2fca', '2026-03-02T16:02:00.000000+00:00', 'open', NULL, NULL, '', '', '', false);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'b069c05b0cd35b86.elsewhere-S012', 'b069c05b0cd35b86', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T17:29:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T17:15:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "52e241d7855abeed", "item": "d136eb3b5e4229d9", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0a0ecfec7f4502a7", "order": "855290e9c4ba9f5f", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "52e241d7855abeed", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true, "status": ""}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T17:29:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "52e241d7855abeed", "item": "d136eb3b5e4229d9", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "0a0ecfec7f4502a7", "order": "855290e9c4ba9f5f", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "52e241d7855abeed", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true, "status": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'b069c05b0cd35b86.unknown-Q0771', 'b069c05b0cd35b86', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T17:32:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, 'f70c29981c808263.missing-L008', 'f70c29981c808263', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:54:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "bd4848f20caffc54", "item": "153ba36f62802d87", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "bd4848f20caffc54", "item": "153ba36f62802d87", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["14c80664cc656e93"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, 'f70c29981c808263.missing-L009', 'f70c29981c808263', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:57:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3b91dfd4e274ff6c", "item": "a745cbce09a27c70", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "3b91dfd4e274ff6c", "item": "a745cbce09a27c70", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:57:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.returns VALUES (1, '316b141d73d6be8a', '98be07ab1de4f2ff', '1b81e3f91dedfe80', 'Too large', '2026-03-20T23:59:59.000000+00:00', 'expected', '2026-03-02T16:41:00.000000+00:00', NULL, NULL, '[]');
INSERT INTO public.returns VALUES (2, 'dc4bdb2415a3ca19', '98be07ab1de4f2ff', 'f8da298ddab68576', '', NULL, 'checked', '2026-03-02T16:44:00.000000+00:00', '2026-03-02T16:47:00.000000+00:00', '2026-03-02T16:50:00.000000+00:00', '[["f8da298ddab68576", "check", "82270e0ff7a345c5"]]');
INSERT INTO public.returns VALUES (3, 'bb072f486141719f', NULL, '', '', NULL, 'arrived', '2026-03-02T16:53:00.000000+00:00', '2026-03-02T16:56:00.000000+00:00', NULL, '[]');
INSERT INTO public.returns VALUES (4, '3481741cc52725df', NULL, '', 'Left at the door', NULL, 'given_up', '2026-03-02T16:59:00.000000+00:00', '2026-03-02T17:02:00.000000+00:00', NULL, '[[null, "stays", null]]');
INSERT INTO public.rounds VALUES (1, '7ca1e30f3baeb809', '2026-03-02T14:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '2ac4c410f1fecf10', '2026-03-02T16:11:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'f20eb3f5133ca30e502740294bbd4a29ad2443f627ad611488582f654833b0f3', 'bin', '7ca1e30f3baeb809', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '65b32dc2fe326af7a281633c536c25ebec2b9b831b0b12a23484c69710dccae3', 'bin', '7ca1e30f3baeb809', 'W001', false, true, true, '1b81e3f91dedfe80', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": "1b81e3f91dedfe80", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:13:00.000000+00:00', '["on_item", ["33a28177bc4cedd3", "stored"], ["1b81e3f91dedfe80", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '10415dd6821a7d50b89d45cb8ad568a5916f28fe1a07fdf0cece51f7bf7b9cf4', 'bin', '7ca1e30f3baeb809', 'W002', false, true, true, 'f8da298ddab68576', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": "f8da298ddab68576", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:16:00.000000+00:00', '["on_item", ["ed80087fbff149b5", "stored"], ["f8da298ddab68576", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'abfe999f4d27309b096b8626b1787a29abaeb55e7c40f4c2f872c5a0cf7c29fe', 'bin', '7ca1e30f3baeb809', 'S002', false, true, true, 'c26bc43e33dce13b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "dbac7c9dc09b2fca", "order_number": "B-03", "line": "c26bc43e33dce13b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:19:00.000000+00:00', '["on_item", ["0eb97ec08a533001", "stored"], ["c26bc43e33dce13b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '1545b17eac3e93907ce2774b4854e4a116dbf093fd82ab588a7bbd921b58dfcf', 'bin', '7ca1e30f3baeb809', 'S003', false, true, true, '0f2470798a481849', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "dbac7c9dc09b2fca", "order_number": "B-03", "line": "0f2470798a481849", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["c4e25201f23b6944", "stored"], ["0f2470798a481849", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'c1973d845701c78614c150409e314691f3a05387d0bfcdd5c566259e6e0d3fc2', 'bin', '7ca1e30f3baeb809', 'S004', false, true, true, '4511d877cdb527bd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "3897d6d8a115a440", "order_number": "B-04", "line": "4511d877cdb527bd", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:25:00.000000+00:00', '["on_item", ["4e7f08d5d7083f8f", "stored"], ["4511d877cdb527bd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '00ad7e5d2c1c62d87828fc6ed25b6c22fe52fdf7bfc7fe55ff1a9272c5367304', 'bin', '7ca1e30f3baeb809', 'S005', false, true, true, 'a4b19caa1b7255a2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "3897d6d8a115a440", "order_number": "B-04", "line": "a4b19caa1b7255a2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:28:00.000000+00:00', '["on_item", ["821910d106e71992", "stored"], ["a4b19caa1b7255a2", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', 'fa3c573b9294975936493178fa174b7cf3295ed33c92d08558e5e94d467aeeb9', 'bin', '7ca1e30f3baeb809', 'L006', false, true, true, '6439ad96743e19d1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "7e5f2fcd68a318a1", "order_number": "B-09", "line": "6439ad96743e19d1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:31:00.000000+00:00', '["on_item", ["370d5820e9859ab5", "stored"], ["6439ad96743e19d1", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '2d5ca285e08e670251dee3dcda15a75a9d5c19901c7a23e780257bdaaa855fbb', 'bin', '7ca1e30f3baeb809', 'L011', false, true, true, '40c72131a38e09ae', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "7e5f2fcd68a318a1", "order_number": "B-09", "line": "40c72131a38e09ae", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:34:00.000000+00:00', '["on_item", ["6c3c905ec1f2af12", "stored"], ["40c72131a38e09ae", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '79efa9d6f1811c50cac781d174c5d7d1c6e7c44933143aba3400642f696008ec', 'bin', '7ca1e30f3baeb809', 'S006', false, true, true, '905fb88fe1f5c903', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "c0d176933548b925", "order_number": "B-13", "line": "905fb88fe1f5c903", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:37:00.000000+00:00', '["on_item", ["a3658363e6a605fe", "stored"], ["905fb88fe1f5c903", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '5a3d18a15ba463e7187327f2e5c5680f3c0e570e5db544ec247f39fc0210f6ff', 'bin', '7ca1e30f3baeb809', 'S007', false, true, true, '20129c10e5c51529', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "3a6538911a88b34f", "order_number": "B-22", "line": "20129c10e5c51529", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:40:00.000000+00:00', '["on_item", ["7857b370cbc82e16", "stored"], ["20129c10e5c51529", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'ef4808a9e833e91e80e0a87ce9737c4742bbf8e1a8313062a51b4f37ff4306ce', 'bin', '7ca1e30f3baeb809', 'W007', false, true, true, 'ffbe02f8a7931cc6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "16a229b33298c4ac", "order_number": "B-23", "line": "ffbe02f8a7931cc6", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["3e81e18d0ea0bf68", "stored"], ["ffbe02f8a7931cc6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'd053157b1ab3fd3c3b37dcfbc5618f05993f881ff2734031b616a3c235034532', 'bin', '7ca1e30f3baeb809', 'W008', false, true, true, 'e1648ec0dedff4d9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "16a229b33298c4ac", "order_number": "B-23", "line": "e1648ec0dedff4d9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:46:00.000000+00:00', '["on_item", ["b4cb29a3dfd90aca", "stored"], ["e1648ec0dedff4d9", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'c26bc43e33dce13b', '81d4918eadd6988c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "dbac7c9dc09b2fca", "order_number": "B-03", "line": "c26bc43e33dce13b", "line_state": "picked", "order_state": "picking", "parcel": "81d4918eadd6988c", "parcel_state": "open", "released": []}', '', '2026-03-02T14:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '1b81e3f91dedfe80', '81d4918eadd6988c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": "1b81e3f91dedfe80", "line_state": "packed", "order_state": "picking", "parcel": "81d4918eadd6988c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["33a28177bc4cedd3", "stored"], ["1b81e3f91dedfe80", "packed", "81d4918eadd6988c", []], ["81d4918eadd6988c", "2026-03-02T14:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'f8da298ddab68576', '81d4918eadd6988c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": "f8da298ddab68576", "line_state": "released", "order_state": "released", "parcel": "81d4918eadd6988c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T15:04:00.000000+00:00', '["due", ["ed80087fbff149b5", "shipped"], ["f8da298ddab68576", "released", "81d4918eadd6988c", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '1b81e3f91dedfe80', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": "1b81e3f91dedfe80", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:07:00.000000+00:00', '["tray", ["33a28177bc4cedd3", "shipped"], ["1b81e3f91dedfe80", "released", "81d4918eadd6988c", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'ffbe02f8a7931cc6', 'a907e067248be70f', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "16a229b33298c4ac", "order_number": "B-23", "line": "ffbe02f8a7931cc6", "line_state": "packed", "order_state": "waiting", "parcel": "a907e067248be70f", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["3e81e18d0ea0bf68", "stored"], ["ffbe02f8a7931cc6", "packed", "a907e067248be70f", []], ["a907e067248be70f", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'gone', '73aa8b1427160fbfbc3a93de06cbd6081c0544c4289a5ee2ac9162123501fa2a', 'table', '', NULL, false, true, true, NULL, '81d4918eadd6988c', '{"verdict": "accepted", "reason": null, "advice": "B-01: handed over, 2 things.", "replayed": false, "changed": true, "code": null, "title": null, "photo": null, "order": "98be07ab1de4f2ff", "order_number": "B-01", "line": null, "line_state": null, "order_state": "released", "parcel": "81d4918eadd6988c", "parcel_state": "handed_over", "released": []}', '', '2026-03-02T15:35:00.000000+00:00', '"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66"');
INSERT INTO public.scans VALUES (20, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '4511d877cdb527bd', '4cb2525d60826cd8', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "3897d6d8a115a440", "order_number": "B-04", "line": "4511d877cdb527bd", "line_state": "packed", "order_state": "picking", "parcel": "4cb2525d60826cd8", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:47:00.000000+00:00', '["on_item", ["4e7f08d5d7083f8f", "stored"], ["4511d877cdb527bd", "packed", "4cb2525d60826cd8", []], ["4cb2525d60826cd8", "2026-03-02T15:44:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '6439ad96743e19d1', '4618d4b881e86242', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "7e5f2fcd68a318a1", "order_number": "B-09", "line": "6439ad96743e19d1", "line_state": "packed", "order_state": "picking", "parcel": "4618d4b881e86242", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:56:00.000000+00:00', '["on_item", ["370d5820e9859ab5", "stored"], ["6439ad96743e19d1", "packed", "4618d4b881e86242", []], ["4618d4b881e86242", "2026-03-02T15:53:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'c26bc43e33dce13b', '7e3cd1b67c4a79b8', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "dbac7c9dc09b2fca", "order_number": "B-03", "line": "c26bc43e33dce13b", "line_state": "packed", "order_state": "picking", "parcel": "7e3cd1b67c4a79b8", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T16:05:00.000000+00:00', '["on_item", ["0eb97ec08a533001", "stored"], ["c26bc43e33dce13b", "packed", "7e3cd1b67c4a79b8", []], ["7e3cd1b67c4a79b8", "2026-03-02T16:02:00+00:00"]]');
INSERT INTO public.scans VALUES (23, 'pick-L002', '8d7df887c9f4bb30031b717ace75fb07e6bb8b5d0c7f9f029c3938859cc9ee82', 'bin', '2ac4c410f1fecf10', 'L002', false, true, true, 'a2e5708ba42c2446', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "eaaff2d98abf4fff", "order_number": "B-05", "line": "a2e5708ba42c2446", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:14:00.000000+00:00', '["on_item", ["c97ca999b9e64da6", "stored"], ["a2e5708ba42c2446", "picked", null, []], null]');
INSERT INTO public.scans VALUES (24, 'bad-D0146', 'df28140e6fb2059a9543469dacd221738f1b88a19fa5b3a5e2ed9ec404aa37f2', 'bin', '2ac4c410f1fecf10', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-hello', '0ce47055e0d10ed330f38a6920ac7acaa1f581d07653d8d43db4566eb8dee008', 'bin', '2ac4c410f1fecf10', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:23:00.000000+00:00', '');
INSERT INTO public.scans VALUES (26, 'bad-', 'a9d9c8f8b381b1b44513141041f9a8691da59e7cb37051984387bcbaa306157b', 'bin', '2ac4c410f1fecf10', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:26:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:56:00.000000+00:00', '4618d4b881e86242', 'bin', 'C-1-1', '7ca1e30f3baeb809', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:28:00.000000+00:00', NULL, 'bin', 'B-1-1', '7ca1e30f3baeb809', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T17:23:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:34:00.000000+00:00', NULL, 'bin', 'C-1-2', '7ca1e30f3baeb809', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:40:00.000000+00:00', NULL, 'bin', 'B-1-1', '7ca1e30f3baeb809', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T16:05:00.000000+00:00', '7e3cd1b67c4a79b8', 'bin', 'B-1-1', '7ca1e30f3baeb809', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:37:00.000000+00:00', NULL, 'bin', 'B-1-1', '7ca1e30f3baeb809', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:04:00.000000+00:00', '81d4918eadd6988c', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', 'a907e067248be70f', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:47:00.000000+00:00', '4cb2525d60826cd8', 'bin', 'B-1-1', '7ca1e30f3baeb809', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:14:00.000000+00:00', NULL, 'bin', 'C-1-1', '2ac4c410f1fecf10', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (29, 'D029', 'D', 29, 'A-1-3', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T17:15:00.000000+00:00', NULL, 'bin', 'B-1-1', '7ca1e30f3baeb809', 2, NULL, NULL, false);
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
INSERT INTO public.stays VALUES (1, '241933b7ff5cfa3c', '8f3bdd680d5519a1', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, '3f282f596eb8e42a', 'f348bab17351a5f3', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, 'a224d7f9c9901829', '74e5df550824a76f', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, 'c538f8a7966a826e', '57305c3496b6c8a4', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, '74096806e3fee4b6', '5f3071fbb8b9a524', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, '8028bf999d2181d7', 'feaf4848d09cee5a', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, 'd4334d93cbfc4632', '2f4306eebe661971', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, 'bc0fa93e2a46a91d', '5e41161e4abe4886', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '7c7c3e84e4021b54', 'a4d75558a1f10a0e', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '59e6dff6b272a478', 'c75c96d337e930be', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, 'edf9290bc86a6408', 'a6fe074d22f12680', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, 'f89803063659a371', 'deb1239a35a1628b', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, '0eb97ec08a533001', '8e85d8a95acbd1b2', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'c4e25201f23b6944', '1091dbe03d97bf7d', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '4e7f08d5d7083f8f', '131ce24944acefa9', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '821910d106e71992', '407d039c6c083a6b', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, 'a3658363e6a605fe', '0b9acfb381d630ba', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, '7857b370cbc82e16', '741805b82bee5c4c', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '3cbdc8cd005cb2db', '85299bd1ed3521b9', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, 'b611863144174305', '31e37f9d27a8a3c1', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '52e241d7855abeed', 'd136eb3b5e4229d9', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, 'fb783ad61b2476cb', 'a630ba4c7042d6bb', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, 'c97ca999b9e64da6', '1e0bdc3468de3d15', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '638d84342bf56996', '76f66836d61aa444', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '3b9e149964b1e802', 'b109bdb7b9779fca', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, '46c32d5c50c51783', '632940d050f876e2', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, '370d5820e9859ab5', '36505e26ab1b52b1', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '2a3fc666e808cb7c', '4b13a9473d241919', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'bd4848f20caffc54', '153ba36f62802d87', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'bb1d974819d910bc', 'e03db16c2a3df5eb', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '6c3c905ec1f2af12', 'b39c03e3e385a0e7', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '8aa14cf8c6a08f42', 'f3e10ce674e10940', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '40700c6d503e47f2', '926c4d96517d0b38', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, '4bc103cff127d133', '099cba3d9b3854a4', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '1f3232b189871482', '0af84de05cd32b0b', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, 'b4cb29a3dfd90aca', '659d5703d484ec77', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, 'ef9d3a0238ccb7e8', '4b81b10d57b5316a', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, '0a417ab5427bee86', 'c3741214848c7a67', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, '629c8ec269ca0c79', 'e31031e0b4266621', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, 'da2f7ff9a6a20d87', '7e476157fcabc4c2', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, '8b66296f2fe78446', 'cd27537749289fc5', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, 'fe8f062db49e2ee6', 'ad2c38333d5e483d', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'eb09af420ec290a2', 'ddfd1a57354d08e4', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '4093bf6347237f2a', 'cfa46a16d432a1e3', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '6362baf77ad7b52e', 'cfa46a16d432a1e3', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '801f6144feeec2bb', 'afccd41d82301f62', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '6280063564463829', '6324af9f3609e974', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, 'eb36818f0ebcb03c', '5116a39b186ff3c2', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, 'f0d30390b8f38493', '5116a39b186ff3c2', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '33a28177bc4cedd3', 'b1e247dca1134a07', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, 'ed80087fbff149b5', '4232b1c3a4283d53', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, 'cdf4e2e5ab6ee4da', 'e4e1715b7c1bda1a', 'W001', 2, '2026-03-02T15:10:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, '3e81e18d0ea0bf68', '7625585aa2e1c449', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:29:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (55, '82270e0ff7a345c5', '4232b1c3a4283d53', 'D029', 1, '2026-03-02T16:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '3b91dfd4e274ff6c', 'a745cbce09a27c70', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:57:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'b069c05b0cd35b86', 'section:S', 'Spring', '2026-03-02T17:08:00.000000+00:00', 197, 'closed', '2026-03-02T17:41:00.000000+00:00', '{"stocktake": "b069c05b0cd35b86", "area": "section:S", "note": "Spring", "opened": "2026-03-02T17:08:00+00:00", "closed": "2026-03-02T17:41:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T17:29:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T17:32:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, 'f70c29981c808263', 'section:L', 'Spring', '2026-03-02T17:44:00.000000+00:00', 207, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'a5b900e8e564e6da', 'section:D', '', '2026-03-02T18:00:00.000000+00:00', 214, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '22d025a4f2b27ba4', 'tray', 'Too late today', '2026-03-02T18:03:00.000000+00:00', 215, 'cancelled', '2026-03-02T18:06:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '7ca1e30f3baeb809', 1, 'c26bc43e33dce13b', 'B-1-1');
INSERT INTO public.stops VALUES (2, '7ca1e30f3baeb809', 2, '0f2470798a481849', 'B-1-1');
INSERT INTO public.stops VALUES (3, '7ca1e30f3baeb809', 3, '4511d877cdb527bd', 'B-1-1');
INSERT INTO public.stops VALUES (4, '7ca1e30f3baeb809', 4, 'a4b19caa1b7255a2', 'B-1-1');
INSERT INTO public.stops VALUES (5, '7ca1e30f3baeb809', 5, '905fb88fe1f5c903', 'B-1-1');
INSERT INTO public.stops VALUES (6, '7ca1e30f3baeb809', 6, '20129c10e5c51529', 'B-1-1');
INSERT INTO public.stops VALUES (7, '7ca1e30f3baeb809', 7, '1b81e3f91dedfe80', 'D-1-1');
INSERT INTO public.stops VALUES (8, '7ca1e30f3baeb809', 8, 'f8da298ddab68576', 'D-1-1');
INSERT INTO public.stops VALUES (9, '7ca1e30f3baeb809', 9, 'ffbe02f8a7931cc6', 'D-1-1');
INSERT INTO public.stops VALUES (10, '7ca1e30f3baeb809', 10, 'e1648ec0dedff4d9', 'D-1-1');
INSERT INTO public.stops VALUES (11, '7ca1e30f3baeb809', 11, '6439ad96743e19d1', 'C-1-1');
INSERT INTO public.stops VALUES (12, '7ca1e30f3baeb809', 12, '40c72131a38e09ae', 'C-1-2');
INSERT INTO public.stops VALUES (13, '2ac4c410f1fecf10', 1, '3f351a707e3246c4', 'A-1-2');
INSERT INTO public.stops VALUES (14, '2ac4c410f1fecf10', 2, 'a2e5708ba42c2446', 'C-1-1');
INSERT INTO public.stops VALUES (15, '2ac4c410f1fecf10', 3, '8107057e7cc91aa9', 'C-1-1');
INSERT INTO public.stops VALUES (16, '2ac4c410f1fecf10', 4, '33942bcd50c5cdc2', 'C-1-1');
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
