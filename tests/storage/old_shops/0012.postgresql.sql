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
ALTER TABLE ONLY public.rounds ALTER COLUMN n SET DEFAULT nextval('public.rounds_n_seq'::regclass);
ALTER TABLE ONLY public.scans ALTER COLUMN n SET DEFAULT nextval('public.scans_n_seq'::regclass);
ALTER TABLE ONLY public.sections ALTER COLUMN n SET DEFAULT nextval('public.sections_n_seq'::regclass);
ALTER TABLE ONLY public.slots ALTER COLUMN n SET DEFAULT nextval('public.slots_n_seq'::regclass);
ALTER TABLE ONLY public.stays ALTER COLUMN n SET DEFAULT nextval('public.stays_n_seq'::regclass);
ALTER TABLE ONLY public.stocktakes ALTER COLUMN n SET DEFAULT nextval('public.stocktakes_n_seq'::regclass);
ALTER TABLE ONLY public.stops ALTER COLUMN n SET DEFAULT nextval('public.stops_n_seq'::regclass);
INSERT INTO public.access VALUES (1, '81625e63de2aeb40382cd21276b31f94b005b7e1e91a2e874c179c53a9e21aef', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$9ZCIy9uKFv5g03mjzb/8fQ$6E/Nzq9oagZ5Q9VGKPFrCCYkeUu0NYXqOTQ7GggkkAw', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '424a019fdd7347c8943248c2b0c950b968f8d55bf6722c51c1eb9c611190f8d4', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '84f4b883b9e8924e375922cd2e1402ea1ac9690cd6bc0587ed5e1d59a85fcfd4', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '34eda767fa3fce863e56c7c10a6151913c5b33123ba02272bf855531a0681cd4', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '38beedb5da4b5c9f7be04d617510e3621eb7e68f5f533ba0d8d59a3b7c05ec88', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/bbbb302cd4f8581e', '{"id": "bbbb302cd4f8581e", "item": "1375537f90fbb2dd", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "notes": "", "listing": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '458543e8dd8864d8', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', '87e18a5a1645f0d8', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"f0dbaee55fdd14bb": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"f0dbaee55fdd14bb": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}}');
INSERT INTO public.changed_orders VALUES (2, '601df0db0867fcb3', 'c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514', 'e0ea0615f31b3d60', '2026-03-02T14:04:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"ef7191c7d526da2b": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No section Q."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"ef7191c7d526da2b": {"reference": "Q7", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]], "in_file": false}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, 'b0e25824f54b31ed', 'f10c2275ee3a5ff1', 'not_this', 'Another lamp, by the photo', '2026-03-02T13:35:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'e84c5445b75dfb15', '26a254b63922e36f', 'missing', 'Not in its bin', '2026-03-02T16:11:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'a91d67e8d9dafbfd', '12ba64820ccc58c7', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T16:42:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '6e4c8bb32eb6a0da', '853e8e7a95adef66', 'missing', 'a count of section:S did not find it', '2026-03-02T17:08:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'f700327f9c780f55', '5a1443dee1bda5a2', 'missing', 'a count did not find it', '2026-03-02T17:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 204, 'ec8865697fd593203c3af10c0dc89cd5aee3cbc85f400b23567c0914c4b2bd92', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', '32eae9c959c57049');
INSERT INTO public.items VALUES (3, 'e3a79e8b349833f9', 'Rear derailleur 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '8374579cbbf902be', 'Rear derailleur 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, 'e730710dcfc61af4', 'Rear derailleur 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, '653662c7d93e8c39', 'Rear derailleur 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '691d21cf08ddf011', 'Rear derailleur 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '4e16aa926dddbac5', 'Rear derailleur 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, 'd2ff76f2e8a14396', 'Rear derailleur 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '6949de6a0fe48c5a', 'Rear derailleur 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, '4aa19666e7c67cb7', 'Rear derailleur 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '6d11e42057f8af40', 'Rear derailleur 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '99616afb9dad98c4', 'Leather saddle 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '3112331bd85dc389', 'Leather saddle 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '2eedab37637a672b', 'Leather saddle 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, '8614068fd7916755', 'Leather saddle 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, 'b0b5589bab52c01f', 'Leather saddle 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, '9d4009fee145b310', 'Leather saddle 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, '853e8e7a95adef66', 'Leather saddle 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '2b359b66f71cbc77', 'Leather saddle 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, 'cfc8f38b9889998c', 'Leather saddle 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, '2a9582cb9c62de19', 'Leather saddle 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, '4c2bc1019bd10f0d', 'Leather saddle 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, '65d1c2e36ecdb8c5', 'Dynamo lamp 1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, '5e653ba5450b7cf6', 'Dynamo lamp 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, '3f005ea9404ea9aa', 'Dynamo lamp 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, '26a254b63922e36f', 'Dynamo lamp 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, 'b7d054a01f622775', 'Dynamo lamp 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '0c5e359b2fe83212', 'Dynamo lamp 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, 'f10c2275ee3a5ff1', 'Dynamo lamp 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, '5a1443dee1bda5a2', 'Dynamo lamp 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, 'ba5e4968314f8764', 'Dynamo lamp 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, '1b0aea97f3098ea9', 'Dynamo lamp 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '2c7d8d2f0668f24e', 'Dynamo lamp 11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, '2e416d8e4c9ced2a', 'Dynamo lamp 12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, 'e6298db6e8a67ca2', 'Front wheel 1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, 'f836eb8991b67475', 'Front wheel 2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, 'ad49d88d15ba7817', 'Front wheel 3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, '25b0ffe9e34cca39', 'Front wheel 4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, 'd740dc5e00080a2b', 'Front wheel 5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '0063af009991bd61', 'Front wheel 6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '01268a157d7431fb', 'Front wheel 7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, 'ef99e729847b6159', 'Front wheel 8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, '3c60a2012a016ff2', 'Front wheel 9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, '8ecfe399cb5f96d6', 'Front wheel 10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '1375537f90fbb2dd', 'Brass bell', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '69dea242db4c6e5f', 'Rear derailleur 2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, 'a81a065c4b1bcbf0', 'Rear derailleur 1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '12ba64820ccc58c7', 'Leather saddle 1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, 'ec72da2d3eac1fa6', 'Carbide lamp', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, 'f00590bea3341175', 'Rear lamp', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '3967efb16d99a92a', 'Front wheel 12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '4093c96eaf71ccdd', 'Front wheel 11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T12:08:00.000000+00:00');
INSERT INTO public.items VALUES (52, '85ea4abe3cd12e1e', 'Rear wheel', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '853043e2a7bfec93', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items a81a065c4b1bcbf0 - 2431de31e566","slots D001 on_item e5405bc28ff8","stays 678bec5f5c530282 stored f560946d65d3","listings d00519f6065c6a6c - df477ddc6096"],"stay":"678bec5f5c530282","title":"Rear derailleur 1","turn":1}', '2135954e57ff0a194fa8e2a4317402dde79679c4afcb26bf85f5acbd7c865893');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 69dea242db4c6e5f - e4c19a41433e","slots D002 on_item 4f79f524f247","stays d9756bf3a2f3cc06 stored fc75bb1c6aa1","listings e04ebd6e517465b0 - 12111dd6e733"],"stay":"d9756bf3a2f3cc06","title":"Rear derailleur 2","turn":1}', 'f8898fa9120a965ed7d502798f0af9e3fa9ed038500e52229874e0f469ab78a8');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items e3a79e8b349833f9 - 30c41c9411f0","slots D003 on_item 6de523ac8b4d","stays 0de7464b5320ab61 stored 3b8dd408967d","listings b701f9410a0809d0 - cf1511d55319"],"stay":"0de7464b5320ab61","title":"Rear derailleur 3","turn":1}', 'f9f5c5ca102f890fe663a7788a55a4d78ada4ed9520ceb1118b95247a644977a');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 8374579cbbf902be - dc03ec1023e5","slots D004 on_item ec423998da46","stays e5006b1f4283b00e stored ccfe72ac2594","listings 26490595e08bf839 - f0cd44df4f85"],"stay":"e5006b1f4283b00e","title":"Rear derailleur 4","turn":1}', 'a5cfca1f7c2ba9044c40b724c25c228857269126356f3a7fd688eceac93ea2d7');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items e730710dcfc61af4 - 02f452bd867d","slots D005 on_item 91ad3faf88d6","stays 51e57601d2a8cf20 stored 0094c1a76701","listings b061ba5ef5207c7c - 85d8df7ad085"],"stay":"51e57601d2a8cf20","title":"Rear derailleur 5","turn":1}', 'fbb30e95766e3f9dd6a200133cd45a7da75260ef0fbb9f83908dd1683004a6bd');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:50:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"L009","listing":"f-L009","now":["listings 39095a3559626a84 - 8a6ef954cb68"],"stay":"7b5c031065d12cfe"}', '3253405b4e80aa77401b1fe5188c32e5aa049387ddf9992c916a827c9fa10510');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 653662c7d93e8c39 - dd894450e3b7","slots D006 on_item 1fadb568d6a5","stays 812835b99f4c198d stored 281896353798","listings c4d2d3d0a6208b5c - 08ee2d5e8bd3"],"stay":"812835b99f4c198d","title":"Rear derailleur 6","turn":1}', '9c4a497f768066207b8f368181fc6276d2efa0854d5e70f79510bed45f84f902');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 691d21cf08ddf011 - b94bc6c4d700","slots D007 on_item 536077e3b728","stays fe40e32c5d897dba stored 8fa393a2b98d","listings c7f28bb3249588c0 - 6b643a510e87"],"stay":"fe40e32c5d897dba","title":"Rear derailleur 7","turn":1}', '43756aad149da6023d0c0267de78477b31422222fa641233fe6d51548e35a0ca');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 4e16aa926dddbac5 - 372d2ff7f672","slots D008 on_item facb453cba22","stays 2b5b0a63a1be58dc stored e8260eec6b1d","listings a1c9c75d01fa1e03 - 3d9e60d99889"],"stay":"2b5b0a63a1be58dc","title":"Rear derailleur 8","turn":1}', 'e7cb933b47d8c074d478ee1dfc79cacb24651558dc18e03c9ecb4884dc25edb1');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items d2ff76f2e8a14396 - ed88249d236c","slots D009 on_item 7434bf04ccf2","stays ee7298ddc65583b1 stored 12c4c18c4d36","listings e47857dc26e8eda2 - 2860dc6bab8e"],"stay":"ee7298ddc65583b1","title":"Rear derailleur 9","turn":1}', '60931f7c23e93295a74023595bc47219af459846b4c75bb39f5c65128bfdff5d');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 6949de6a0fe48c5a - 1d96380f0005","slots D010 on_item 1f8fd3ebaf8b","stays d77cf111b14844f3 stored 0099ad4a0159","listings 8b7e2d62db80b7c5 - 1b8a98566883"],"stay":"d77cf111b14844f3","title":"Rear derailleur 10","turn":1}', '1298633f77a845b3a5d001bf38cf0c8f8d3363a7c316823498c7b2fa17d642a4');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 4aa19666e7c67cb7 - bbc010a1b0ff","slots D011 on_item d451255e38b7","stays b753a4243046a40f stored 07e54a111962","listings 59a14fb7bb8e7db1 - 52c600d5c32a"],"stay":"b753a4243046a40f","title":"Rear derailleur 11","turn":1}', '12ebd431fda3d188901e98be724325eb459c89287470e169a3bae0b0615dc279');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 6d11e42057f8af40 - 334ea81e806d","slots D012 on_item bdbda5bb2b7a","stays 98b1f1770fd37012 stored ff7edafc2f05","listings 4962163c80f952c0 - d562f22e3b3b"],"stay":"98b1f1770fd37012","title":"Rear derailleur 12","turn":1}', '1130b86d48c07b15bddd66cee05703b689d5f5642e1986251ef7ec868d002c64');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 12ba64820ccc58c7 - 03b4d9198076","slots S001 on_item 76dcd853e3e0","stays 458fdd58e60fde2f stored cebaf98a021b","listings 6670b34b1be91b76 - 369dde7011c9"],"stay":"458fdd58e60fde2f","title":"Leather saddle 1","turn":1}', '38bab7390c6a87c02eb33546166f68c07102655ad48f58cdafcd5052b260be05');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 99616afb9dad98c4 - 524f4a879439","slots S002 on_item 6fb94c47a50d","stays 1817b5844cb5cc37 stored 1ee0229d1e97","listings bdb5d71cc251c2d3 - b7aa6e4ed3f4"],"stay":"1817b5844cb5cc37","title":"Leather saddle 2","turn":1}', '81351b78362957e995b9753eef919dc96d32c618f4a21c51f30d5b9a03cc99ec');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 3112331bd85dc389 - 4ba70d35531e","slots S003 on_item e00808332634","stays b4d0bca517f2f228 stored 3a1601903dea","listings 2a809fc9b982ad0b - 67ad00e39b74"],"stay":"b4d0bca517f2f228","title":"Leather saddle 3","turn":1}', 'c7c2dbf72c04f8b7df9572f83f3facfd6f2c05fca1e2492ec060fb8c23dabe2b');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 2eedab37637a672b - 43c25cdfc48d","slots S004 on_item db1aa8005467","stays 3125e8aa86a8d5b7 stored ddc1d8b2aebd","listings 03f2ae1ec46e3fbc - 9749c9ac28ea"],"stay":"3125e8aa86a8d5b7","title":"Leather saddle 4","turn":1}', '032ac912dfaaa9ca04e8567bbd7e0ef71d79b98aa87d2d8f6c24b9fbe968ba5d');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items 8614068fd7916755 - e2f07a4dfbf0","slots S005 on_item ec548ef84f99","stays 2f7da36b1dacfb9d stored 4f5b096c0819","listings eda13db67f158628 - 6b10d40ffbdd"],"stay":"2f7da36b1dacfb9d","title":"Leather saddle 5","turn":1}', '7d887e35a0a441f45e1174ed3748ed3dee3150a7b56b8b7fcad79765e17fc65b');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items b0b5589bab52c01f - aa0e9156c218","slots S006 on_item dc9bc74eb63a","stays ac9a129900b73a2b stored 805d10320364","listings 31a5332388e62e3f - 054ea71df92b"],"stay":"ac9a129900b73a2b","title":"Leather saddle 6","turn":1}', '9649cb16a5bc05d3eb393b1f0a3c60a43f4001d23424b3858f8e601ba2e968ac');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 9d4009fee145b310 - 58298a74b510","slots S007 on_item 075fd8b9fecf","stays ebf74af9dea8fc30 stored b262c08a683f","listings bd50ab3585be4d62 - 5049e7a1c196"],"stay":"ebf74af9dea8fc30","title":"Leather saddle 7","turn":1}', 'e9d06bae3c30c8730a12b6845a81a50762db487d958552bd3bdee069ea10d05d');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items 853e8e7a95adef66 - fd67a57de3d1","slots S008 on_item 39fdb847a4bc","stays c9c7828562fa3881 stored 83e206e18c0c","listings 1e45adddd9f9fd92 - 2210a9911e9c"],"stay":"c9c7828562fa3881","title":"Leather saddle 8","turn":1}', 'e7f8c82d907f2c8af5ef0ee2cd896ecd4f7b925d45669357ffd47cccc2ddfa74');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 2b359b66f71cbc77 - 27d2ab4cd746","slots S009 on_item 62c79df275b3","stays c5d028a3f8d3cfda stored eeebbd0897aa","listings 248346c74b6ef50a - 9b64b7ed63dc"],"stay":"c5d028a3f8d3cfda","title":"Leather saddle 9","turn":1}', '26a9ca3377f609c3b9bdba89e8151076b14ce01a106f9311756558e719276353');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items cfc8f38b9889998c - f2c01d36ef18","slots S010 on_item 1fd8d85fa1c4","stays 6abf3dcad491d91b stored 15c0871ab654","listings 298717323e001775 - 7817be0eff6a"],"stay":"6abf3dcad491d91b","title":"Leather saddle 10","turn":1}', 'e11632f4399cdc3eaa4ba5197917eb983107039e71ec17ad9c4dfa057950f75b');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 2a9582cb9c62de19 - 30da5f4a7e0a","slots S011 on_item e59577c4b2a7","stays 9309fb1b2181d335 stored 717c9bdacaa2","listings 15b17bb70a2741d2 - 910575aab5a7"],"stay":"9309fb1b2181d335","title":"Leather saddle 11","turn":1}', '661951dcafc31acd331a0c3c1fd1db5b94a0e6f691c660585a4f66e2f504fb72');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 4c2bc1019bd10f0d - e425cc0d4c58","slots S012 on_item 9bae442e2436","stays 94b35b1b6910b11a stored 2e03ed3b033a","listings d805041f7b3d70d4 - 08797098b47b"],"stay":"94b35b1b6910b11a","title":"Leather saddle 12","turn":1}', '4a96983a244107bc29fc70b3e403108a15d6bcb86dc720e9c5d1d743fdd53c9e');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 65d1c2e36ecdb8c5 - aa4ac57abbd6","slots L001 on_item 43c5cdfaa8e4","stays 48bc8e01c478912c stored 73dfd5ec5d10","listings 0e5b08a241e96c4b - c1b04fae6f32"],"stay":"48bc8e01c478912c","title":"Dynamo lamp 1","turn":1}', '4db3dd482864ffb509730cc1b82e645a1bd0b29f6b53cca056ea8919c7c95951');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items 5e653ba5450b7cf6 - 591b28a41ad8","slots L002 on_item ea8e77c8b06f","stays 6c17704c6d05a669 stored 7592078c7631","listings 280e5f2f74158784 - da4df7db159a"],"stay":"6c17704c6d05a669","title":"Dynamo lamp 2","turn":1}', 'b678624f19af5364650ea461c9b0dd109d028e6e33836980d6f41d000c533de5');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 3f005ea9404ea9aa - e2de2ebab1c3","slots L003 on_item c35e4c005cda","stays 5bbefb237d398824 stored 3a2a09c4c053","listings e6bc08ada7696b6a - 2a7ebea10f52"],"stay":"5bbefb237d398824","title":"Dynamo lamp 3","turn":1}', '7c40552c2e8dfaced3b958f3b5b1c5fc3b7f21648d17e0bd09931519f458b93f');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 26a254b63922e36f - 909d79789bdf","slots L004 on_item 70a88e4a366b","stays 5133c575fc39af92 stored b9e01229933c","listings 2b50647708033d23 - 13c1c91c2dc1"],"stay":"5133c575fc39af92","title":"Dynamo lamp 4","turn":1}', '5afc032e222554e7a3ff0cafa091ed5500646afaa84c2c1eef3d0a308c5a7115');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items b7d054a01f622775 - fd64999b8ed9","slots L005 on_item 6261d94de1ef","stays 981d67187e64d832 stored 0c2a849e719b","listings ae273bec424b3ccc - 16b3acecf6fc"],"stay":"981d67187e64d832","title":"Dynamo lamp 5","turn":1}', 'c9019562729399ff16058eb5ad8d5a0b154e1c46f5133d89af5358851f4862a7');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 0c5e359b2fe83212 - 038de92f375e","slots L006 on_item b67b470f3637","stays 2c01a4a82f25f56d stored 18270344fba2","listings 42b57053f0006877 - 14a8901af53b"],"stay":"2c01a4a82f25f56d","title":"Dynamo lamp 6","turn":1}', '6a1209d949eb803451620fbf34cd1f144f7e6b16b809a1577ef9ac8849b29776');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items f10c2275ee3a5ff1 - 143463091f52","slots L007 on_item 767524982af4","stays 0c1cac83630f42d3 stored 3ff576e219b8","listings d4df41cb41eded91 - 47edfd527f27"],"stay":"0c1cac83630f42d3","title":"Dynamo lamp 7","turn":1}', 'df82ce022fcd9e1a7d9e82a251ad2d65354d9e5ffa75c7218d0c02fe275a9a99');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 5a1443dee1bda5a2 - 173b77c1d213","slots L008 on_item b3b2d23a98b7","stays ce3fa5ce06875ed1 stored b0a6b07e75e4","listings fdc6fc3e4bc00956 - 44a244a0046b"],"stay":"ce3fa5ce06875ed1","title":"Dynamo lamp 8","turn":1}', '3a5e121f46efe376f2333460b036568fff1154f252d98d79b1eb2dc786172083');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items ba5e4968314f8764 - ea44330fc011","slots L009 on_item c3139144a3f8","stays 7b5c031065d12cfe stored 8301c57a0f8c","listings a9af91595a5d4b2c - 402b1acb7eb9"],"stay":"7b5c031065d12cfe","title":"Dynamo lamp 9","turn":1}', 'e617ee520bc2c1e3e9a1d7dd96e5efa761cb1d675af04d234dc4006f4b745f18');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items 1b0aea97f3098ea9 - ecc355193c8f","slots L010 on_item f8c13ae8aec4","stays 62c029f1edc4decf stored a2b1689129c5","listings ff772a17984aecb4 - dee278932fa7"],"stay":"62c029f1edc4decf","title":"Dynamo lamp 10","turn":1}', '427a34edcab1768dd204b4abe6fa083b295edf68165a82922c9074126c11e988');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 2c7d8d2f0668f24e - 7663d89fed8b","slots L011 on_item 9d01c75c0f89","stays 0fff73a68a2d4e8a stored e6c2fa52697d","listings 1fc81d17743d27d9 - df407e66dbe4"],"stay":"0fff73a68a2d4e8a","title":"Dynamo lamp 11","turn":1}', 'dbac5805e14028d4198aaa951c0edc47780a282afcf5b22bfe63626f100e6914');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 2e416d8e4c9ced2a - a0e510e7075c","slots L012 on_item 5373b19b101e","stays 07f63ae64dcd4e7c stored 4df4e1793f4d","listings 7e2b29c343e0cba2 - 95663e246a56"],"stay":"07f63ae64dcd4e7c","title":"Dynamo lamp 12","turn":1}', 'f1e21ac7f96f43530fcb4aee1df9c4167e1d0b23803d760b2c033da6c8651dec');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items e6298db6e8a67ca2 - d58c429ceb22","slots W001 on_item 17dd342c2f6a","stays ac18de0a219a5015 stored c05b130af681","listings 2c852010ebbb188e - 0c4f30c06502"],"stay":"ac18de0a219a5015","title":"Front wheel 1","turn":1}', '61048c84d6c8b1ebc8df5506a1f830e36998c39df1d0451667c5bceb45717c19');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items f836eb8991b67475 - 674526143d45","slots W002 on_item 7ebfb8df41ca","stays ae344c55d5cbe24c stored 1ca4d47b98cc","listings 711d78292c688ceb - 41b4c3c2adcb"],"stay":"ae344c55d5cbe24c","title":"Front wheel 2","turn":1}', '4ea7da1acc05e87586c5f0b157f0b30739c8c606cd7b0c284a6b5aab7321eaba');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items ad49d88d15ba7817 - 872d1764b040","slots W003 on_item f84a2674e962","stays b7e1bc72aea7b83c stored c96d919a0016","listings 2026a11db8edf36b - a799f7bc3a1f"],"stay":"b7e1bc72aea7b83c","title":"Front wheel 3","turn":1}', '9166e2f8622022e63a10b8b62ebd737d608940ad7c28c81dd5b6823ada7f4626');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 25b0ffe9e34cca39 - a77489dc6adb","slots W004 on_item f45ed94fd55a","stays ccbf792770aad723 stored e43b03c494e9","listings 7c08f9ca996da226 - a896abc22ab2"],"stay":"ccbf792770aad723","title":"Front wheel 4","turn":1}', '9b1817ed29918bb16f422e8743bc15cee191c3fbf66f47104eebabdfd054f024');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items d740dc5e00080a2b - 4b1e63eef901","slots W005 on_item a1fdfb2c692e","stays e1b114fe9c6022eb stored 615a07e0daeb","listings 4940092c8163e0b6 - f522f31556c3"],"stay":"e1b114fe9c6022eb","title":"Front wheel 5","turn":1}', 'd1ef5a4e039ae0f737010b24689553662f8765087c82f74601d77525058077be');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 0063af009991bd61 - 821394dd1138","slots W006 on_item 3dd6244f0bee","stays bafffb88eeb6fa4c stored f65a17f67f42","listings 7089accf5eb28c5e - 16623eb414db"],"stay":"bafffb88eeb6fa4c","title":"Front wheel 6","turn":1}', '2218dbec293fca21f24f30e8015d033a9e37b0dd0dc4a79c5a7a9606be7e1289');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 01268a157d7431fb - 5b8bb07723bf","slots W007 on_item d52463b699e2","stays 31e7e6ac62ca1751 stored 2f0f95214199","listings 09009ec877da0466 - bb6d5d51e98c"],"stay":"31e7e6ac62ca1751","title":"Front wheel 7","turn":1}', '23c5472fa12d216a64beaad88d8a4093be17aaee651d050b4680c58da0892072');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items ef99e729847b6159 - 1a660cb8a45c","slots W008 on_item 2e167460fb16","stays 2a5da966ac69e68e stored 3e2f9c63807b","listings 5ae3a43eef3bffa4 - 8abe60609c86"],"stay":"2a5da966ac69e68e","title":"Front wheel 8","turn":1}', '9d251eb261e7802adba4a1694cbb6a39df96a8735086e30f0335efa783430d73');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 3c60a2012a016ff2 - 8ad48936407e","slots W009 on_item 597fc2f4b56e","stays 06e2b004bc086a1c stored 34d3d86e666a","listings 9307ade68bba1725 - 38b38833c679"],"stay":"06e2b004bc086a1c","title":"Front wheel 9","turn":1}', '3b2f7ff258535f12b7591cbf50a200391d2d3281598f630aacc33836d10b5ccc');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 8ecfe399cb5f96d6 - 21a86a16c9de","slots W010 on_item 7d0365c2d2de","stays 6e6c444d3e774f02 stored 49a1e7726242","listings 02e8c6060d5747f7 - 699b848f2281"],"stay":"6e6c444d3e774f02","title":"Front wheel 10","turn":1}', '76f5ce047afdbc12e6d80482fb5e28b3cdc47fe41a2ee8d674932afad5f380c5');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 4093c96eaf71ccdd - e7656258472a","slots W011 on_item d3a26b640d71","stays 37cbaa219d312247 stored c22ea05577b7","listings 95e17d63a1160048 - 898a5fa54b79"],"stay":"37cbaa219d312247","title":"Front wheel 11","turn":1}', '2c146f7f8daeefcbd128c8a265516d06cdc853e73c8a4d353c43c870f717e824');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 3967efb16d99a92a - ac59079b3634","slots W012 on_item ac10bfb906d6","stays 05619fbc5464fc7c stored f2945bf9d330","listings 94381441a2fe2264 - 051bf4a5ae07"],"stay":"05619fbc5464fc7c","title":"Front wheel 12","turn":1}', '851343a71e9f3cdc56c3e603fbb71081f9b9c0fc4d0dfd4e5f99aa3053eae820');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 1375537f90fbb2dd - 46db46eb87bf","slots D013 on_item 69b6f1c92d5d","stays bbbb302cd4f8581e stored 9428370a8e6b"],"stay":"bbbb302cd4f8581e","title":"Brass bell","turn":1}', '9a6b7ef9673d3abe052b14611b377d28e136357d22949c5256360d0257713539');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 69dea242db4c6e5f - 845e1f841d7b"],"stay":"d9756bf3a2f3cc06"}', '05e63766f79a5d25033ace1ded97020d967d197c45ce08273133c233faf8f7a1');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 6abf3dcad491d91b withdrawn 5d50d265301f","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"6abf3dcad491d91b"}', '31bb6e066313ecff759804a6222880beb2a2be9245e0db6f914e3944eb6f77a1');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays ccbf792770aad723 withdrawn 0c9f82d5bac2","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"ccbf792770aad723"}', '28fcf138b11313731c105abede8fde3998229b9409dc5d9db0589cfebb36d55b');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"e3e7c0ca3ce3da40","now":["stays c5d028a3f8d3cfda moved 9c57a09ddbda","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays e3e7c0ca3ce3da40 stored a8e20804c23c"],"stay":"c5d028a3f8d3cfda","to":"S013"}', 'c6b90764020479ef26fde85260729b1e9c6a5d9285c5553a39fead22324572bb');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items a81a065c4b1bcbf0 - b2960d2fc877"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"678bec5f5c530282"}', 'eb3f2dfe5ff6653df38933dd90c3f3399ede3b5905c3cab2f7afde0ac6bac2db');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 12ba64820ccc58c7 - 0cfa01412739"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"458fdd58e60fde2f"}', 'c5070931065c265b4fc1a766ea5c49713438b83e4085e1afe077591d60a32cb3');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items ec72da2d3eac1fa6 - b3c473f1dd9e","slots L013 on_item 417a81be4bcb","stays fc6be195ccccb5ee stored c5d037304c06","items f00590bea3341175 - 53e19e8c2d0d","slots L014 on_item 26405b275a18","stays 477efb25ec861311 stored ad6252336d8d"],"stay":"fc6be195ccccb5ee","title":"Carbide lamp","turn":1}', 'faeeb00b6716f1654879e055ba33f4a3960d39f2582484d425044b84d461220a');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"477efb25ec861311","title":"Rear lamp","turn":1}', 'c229c5a1ba7b53dbb7fbdb3199eff6d783996cc0dacc6abe5155b0b7a7b9ccd7');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', 'deb8ed83128b6ca52a550d1d789be6d790357340239790a18635a944dca3186c');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W001","listing":"f-W001","now":["listings 833b4d1b53dc6d3b - bbbb7b224bc1"],"stay":"ac18de0a219a5015"}', 'bd6b597cd9b16e0c2a12bd1e26d82ce44dea417e7c40b2650b33bbce1913ef0a');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W001","listing":"c-W001","now":["listings 6f76ce34bbb38607 - 46b82c4dac58"],"stay":"ac18de0a219a5015"}', '15371ae40372da2e86b53e269637eb1ce7cbf6c390c51128fa5c5975e0ca36c0');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"S002","listing":"f-S002","now":["listings 5ff5ad1826ba429f - 515be73fdf9b"],"stay":"1817b5844cb5cc37"}', '59557cdd297ebdb165c7005967541fe3bef8719ef561b3e72fefcf2f5560474f');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"S002","listing":"c-S002","now":["listings b1ad69c2c7527ae2 - 3fbbfe628435"],"stay":"1817b5844cb5cc37"}', '6bca6a1943bf4c075463b0d2ca2eb101c92e0ca27382ddd9e345bcadcde416ea');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:38:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"D009","listing":"f-D009","now":["listings 472597a0b1b4c1b5 - 0521a4431517"],"stay":"ee7298ddc65583b1"}', 'fef38245faddf87f8a9129ff84e0bc76093fbf9da623b75b97ca869e3c76106b');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:41:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"D009","listing":"c-D009","now":["listings 32ce3e79e356a04a - a18fa28c45e3"],"stay":"ee7298ddc65583b1"}', 'b1a876c8f0cd673690d9316a0b1b04322afce75a7224a0de9683388ea77b4634');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:44:00.000000+00:00', 'listing added', 'boss', '{"channel":"fair","code":"W012","listing":"f-W012","now":["listings cc48fc2f073bce83 - 778cf6bbb4c1"],"stay":"05619fbc5464fc7c"}', '09e1f70e015bd25321de9bb7d32daa7364c05d779cf51b4ef48edc18fdb01135');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:47:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"W012","listing":"c-W012","now":["listings de5e4ee734e1794d - e2b616c96c56"],"stay":"05619fbc5464fc7c"}', '9048b0afc957414a738921fdc749b303b2c5a60915b9bedcc106a3139c5d8a4a');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:53:00.000000+00:00', 'listing added', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 6408d3125a8e1208 - 7234929af482"],"stay":"7b5c031065d12cfe"}', '8db29a4b040b7ad66307906d147958c8e7d1fe29c1d5779a60e750c4fb3242e7');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:56:00.000000+00:00', 'item changed', 'boss', '{"code":"D004","listing":"L-D004b","now":["listings 26490595e08bf839 - 6c60fab93143","listings 247be2e8d794bd20 - fbd0df8d7ff6"],"stay":"e5006b1f4283b00e"}', '2d207fb5b07c366359ec54738087ba23f5240257501901383ed1ae752ab3aaf9');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:02:00.000000+00:00', 'listing ended', 'boss', '{"channel":"corner","code":"L009","listing":"c-L009","now":["listings 6408d3125a8e1208 - 2dd1312478ec"],"stay":"7b5c031065d12cfe"}', '1e5ec146e72dc6c523e77d30b7f66ff15b8b07eeb8cedfeac48a512ac544d7f2');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:05:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 3967efb16d99a92a - 07f931b11f00"],"stay":"05619fbc5464fc7c","until":"2026-12-24T23:59:59+00:00"}', 'a1200a5f04d4189668223988e71b4183ba567bc997c61106e8aa5a9f391dafcf');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:08:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 4093c96eaf71ccdd - f459f4c01bf5"],"stay":"37cbaa219d312247"}', 'e7a9e449628ca27621f56f3014c75198d79e0ba2aab0406f04452504c117f3b2');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:11:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '4987406deec73418aeab17c6c14098a81ac75c864bbef8ebec0e86bb5830567c');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:14:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '9e0a9232ceb2c8160273d7e5d59c0958b9dcc9e1553f9241e576590873331976');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:15:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '1e2a8c65327971dfa1db7e1fbb7a982b3e90fcd2de0fd9aa607674cf259fed46');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:16:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', 'b671ca8c5eabfa2f6063b9d3edc52bd8710ee5bd6bb27a5fe4850a17d9278eaa');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:17:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '13b83303c1844d6eaf8b20a3b0eb1f32df9b1b1365450ef58c836305e0de9d51');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"75655f6a2ea7de23","reference":"W001-01E","stay":"ac18de0a219a5015"},{"hold":null,"line":"ebccdfa0d2a921b8","reference":"W002-016","stay":"ae344c55d5cbe24c"}],"now":["orders e2db927c1a293bd4 - efdf0f025895","lines 75655f6a2ea7de23 waiting b7e09d842189","lines ebccdfa0d2a921b8 waiting d38551b5c5be"],"number":"B-01","order":"e2db927c1a293bd4"}', '02a3a643751490694951c244184072e45baad46cbd997506bfed8f2dec50f996');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0e1975758c36acba","reference":"S002-013","stay":"1817b5844cb5cc37"},{"hold":null,"line":"46f6bba8c223bd59","reference":"S003-01W","stay":"b4d0bca517f2f228"}],"now":["orders 62f54b1e6ce8a472 - 4a987ee0aa4c","lines 0e1975758c36acba waiting acfb0d1e5ae0","lines 46f6bba8c223bd59 waiting dd7fdf0061bb"],"number":"B-03","order":"62f54b1e6ce8a472"}', '9779aec4de1149713f43ef6042de74e53773663114604ed718413f19cfb689c0');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"44e1b40a8dc945fc","reference":"S004-01O","stay":"3125e8aa86a8d5b7"},{"hold":null,"line":"858ad7b5d815aef9","reference":"S005-01G","stay":"2f7da36b1dacfb9d"}],"now":["orders 6abd7dfdd7309cd9 - 20b04bd254c2","lines 44e1b40a8dc945fc waiting 685c19d3611e","lines 858ad7b5d815aef9 waiting a6f7b67216d6"],"number":"B-04","order":"6abd7dfdd7309cd9"}', '421bf68272eb1bd99a08724a7dcce83fbe915eaf6edbd60b596b4bb8baf41a79');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:29:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"5e653ba5450b7cf6","line":"2ba5e03e5920eb73","listing":"fair-L002","now":["orders 5275825dfda3ae2d - 4171a7c4e514","lines 2ba5e03e5920eb73 waiting 8df0c04400a0","listings 7c0c089779b24b08 - 7f08ca3b5f29"]}', '7106a0fe18018f9b58f2ef4d6abdda8ce32cb3e032e58aabc4c228a91886afd2');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"2ba5e03e5920eb73","reference":"L002-017","stay":"6c17704c6d05a669"}],"number":"B-05","order":"5275825dfda3ae2d"}', '75aa92bb363b6077e3baaaf704aaa362f34b68feec0d58e9d38ebbc45686d182');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'listing learned', 'boss', '{"channel":"fair","item":"3f005ea9404ea9aa","line":"84c7f2d029bcc70e","listing":"fair-L003","now":["orders c48563ef1987dfe5 - f21a9bbe0180","lines 84c7f2d029bcc70e waiting 56af836e8214","listings 12deeacfbf90a362 - 541f10ba6855"]}', '959eb42f25f5985d5749d82de2346f4c1e849da0ddf43f72526b15973ac1ee0d');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"84c7f2d029bcc70e","reference":"L003-010","stay":"5bbefb237d398824"}],"number":"B-06","order":"c48563ef1987dfe5"}', '7bed875ed4011d0dd94e0a146702dc0d09f6a71430a98aadf99b469d9a17bd10');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"16ea7a1a873aed04","reference":"L004-01S","stay":"5133c575fc39af92"}],"now":["orders 6d07801ee70aeef7 - 69809d43254f","lines 16ea7a1a873aed04 waiting 0dc03e146937"],"number":"B-07","order":"6d07801ee70aeef7"}', '3b4fce3e65300eac736111ac5dfdd8ad74407b20cd12aef1a3d9ebb1ab49b2dc');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"da7f57915c9a8214","reference":"L005-01K","stay":"981d67187e64d832"}],"now":["orders 565a123d95b0faa9 - b56c39a2db88","lines da7f57915c9a8214 waiting e6e76f2d502c"],"number":"B-08","order":"565a123d95b0faa9"}', '59470878e903002abc34f6971361e53af6d659bf3ff0498c6ce4510fd81fb598');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"28623bcb42208b55","reference":"L006-01C","stay":"2c01a4a82f25f56d"},{"hold":null,"line":"bbd9b653b666db5d","reference":"L011-010","stay":"0fff73a68a2d4e8a"}],"now":["orders 535c93155131b0f1 - e0d9309b1c98","lines 28623bcb42208b55 waiting e8b51fea31c0","lines bbd9b653b666db5d waiting cd9fc3d4ae52"],"number":"B-09","order":"535c93155131b0f1"}', '19988c1a6bd6f18987d42c94b01e66d9493cc526d31a75fdb6f1c06611acccca');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"59d7804312867329","reference":"S006-018","stay":"ac9a129900b73a2b"}],"now":["orders 3272314bd92a99b7 - 6a0679e81b91","lines 59d7804312867329 waiting 33770d15fd09"],"number":"B-13","order":"3272314bd92a99b7"}', '23deabc1a590e257188c3a16ecc3327467e6410e63ca9960c9d58898345a4290');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"cbe0f306f331f9a0","reference":"L007-014","stay":"0c1cac83630f42d3"}],"now":["orders 6c0b079dddef3681 - a8ac6d07bab3","lines cbe0f306f331f9a0 waiting 5b097c306c77"],"number":"B-17","order":"6c0b079dddef3681"}', '2fcea8be8733efd784576e836e73b9fe43451bc5a5090aeeff0292b61152ccb2');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4a1fc149ad4d1dce","reference":"D009-01B","stay":"ee7298ddc65583b1"}],"now":["orders 7a366b49a6ae1e1c - 36522886b41d","lines 4a1fc149ad4d1dce waiting b63f22639d35"],"number":"B-18","order":"7a366b49a6ae1e1c"}', 'cd8d55beb4b38d9d0429d7faa1b0a3dedc3f93198607cb1fffbf171361c941c3');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"084db78edc1a6d1a","reference":"W006-013","stay":"bafffb88eeb6fa4c"}],"now":["orders 5504188f5c3013f7 - cdf9b7de9764","lines 084db78edc1a6d1a waiting aa18e1836480"],"number":"B-21","order":"5504188f5c3013f7"}', 'a73a7c6601616a257f6e2c7d912808d50479a2ef9af0dd67390bf53fe5ada621');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a7c4b512cfec87a4","reference":"S007-01Z","stay":"ebf74af9dea8fc30"}],"now":["orders 1cccb4dcbed16ee9 - c87955979d10","lines a7c4b512cfec87a4 waiting 35f417473f7b"],"number":"B-22","order":"1cccb4dcbed16ee9"}', 'b240696679bafa883b347d5fe0118d10515a515e755d1085fb3eb4104744d09d');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"887322bb3be32b64","reference":"W007-01W","stay":"31e7e6ac62ca1751"},{"hold":null,"line":"f06be2075c68e2e2","reference":"W008-01O","stay":"2a5da966ac69e68e"}],"now":["orders e017921be583f5dd - 20608334a7d0","lines 887322bb3be32b64 waiting 34c16d97eac4","lines f06be2075c68e2e2 waiting 111db1e03030"],"number":"B-23","order":"e017921be583f5dd"}', '872a64aee06ef7c4a537a38b3e301285867c9a6fb70e73b3cbdefa1cdb5a2f2b');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0c46003c7e850eca","reference":"D008-01J","stay":"2b5b0a63a1be58dc"}],"now":["orders d08a2275dc45e292 - 6e3e917dbee9","lines 0c46003c7e850eca waiting 703293b75f70"],"number":"B-26","order":"d08a2275dc45e292"}', 'b879bc8a041bb21d79d8601585b239d5e5f80b70481194861492ad4442985122');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"4cf2e43b2bac2d27","reference":"D003-01U","stay":"0de7464b5320ab61"}],"now":["orders 4c45bea0a06b634b - 03e5b984c687","lines 4cf2e43b2bac2d27 waiting e04b5da172ea"],"number":"B-30","order":"4c45bea0a06b634b"}', '5b0f0a73ff887d941b885362d099bae226e7c23d067f30678ebd526bbb59bdaf');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a2d8375b6a16654d","reference":"D005-01E","stay":"51e57601d2a8cf20"},{"hold":"unknown_code","line":"6854506c9ba26eee","reference":"Z999","stay":null}],"now":["orders 75d0e755d8e56118 - c06ac077a510","lines a2d8375b6a16654d waiting 93790db7df1a","lines 6854506c9ba26eee unbound b604ffb65600"],"number":"B-31","order":"75d0e755d8e56118"}', '5fcd8a0833d14c65e3ef5cf02544857c2620778cee6011b5917c8f4d76bdffe9');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"10894aa259b6bdc6","reference":"D006-016","stay":"812835b99f4c198d"},{"hold":null,"line":"5f22d0872ff5ac12","reference":"D007-01R","stay":"fe40e32c5d897dba"}],"now":["orders 4a43cb1c5ec7fe07 - cb851d811cde","lines 10894aa259b6bdc6 waiting 2a758a037661","lines 5f22d0872ff5ac12 waiting 4534a2c5a2a9"],"number":"B-32","order":"4a43cb1c5ec7fe07"}', '134425ddf8b4c0d7561237594fc4a93430a6acc840be3b0e916df423b88155c3');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"5f22d0872ff5ac12","reference":"D007-01R","stay":"fe40e32c5d897dba"}],"now":["lines 5f22d0872ff5ac12 waiting b97d22090800"],"number":"B-32","order":"4a43cb1c5ec7fe07"}', '9f22a423e3d3d8860bf369c11cf9ac21da50ebdea74b404d49e9cb353e8bdc77');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"cc6fad752ffdd773","reference":"lamp","stay":null}],"now":["orders 37e4f5b743b73d75 - 8aeb7c4f387e","lines cc6fad752ffdd773 unbound 3f81e67e295c"],"number":"B-33","order":"37e4f5b743b73d75"}', 'e424a8610abfaeb6bab870c036cb58c8455ebdaa676a0f023bed6c5b6fe826e7');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"fd480349590af759","reference":"D006-016","stay":null}],"now":["orders 07d6f5aa32368708 - 9814e496acef","lines fd480349590af759 unbound 972d240bcb7a"],"number":"B-34","order":"07d6f5aa32368708"}', 'bcd17d544c79c0bad524950c382ce5df7bc7e52843bb5348930cc9b19bef199d');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"18d1a710772814be","reference":"W004-01J","stay":null}],"now":["orders 0926afb10d7a51fd - aaf0600f93cf","lines 18d1a710772814be unbound 9c6718f6edad"],"number":"B-35","order":"0926afb10d7a51fd"}', 'dcfe4dfbe899cdc756786cab6922794c229afeaabf6b7c3fc8379ffdfb80d919');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"65fcbbf67ccd3926","reference":"L015","stay":null}],"now":["orders 5bee216457ef8c6c - 793f91da5e73","lines 65fcbbf67ccd3926 unbound 9d6dfe1582f6"],"number":"B-36","order":"5bee216457ef8c6c"}', 'fc6bdd862a0b2a910773d40a3e8383c6977ca9e84e0bd65719b71323ee44ec5f');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"c90335e5c5ad6df3","reference":"W005-01B","stay":"e1b114fe9c6022eb"}],"now":["orders 3b2b9c982c467fac - 05e86d89075d","lines c90335e5c5ad6df3 waiting 66b706569f4c"],"number":"B-37","order":"3b2b9c982c467fac"}', '4122ad56349fe1eafbc9f99947533ee516298a764175d2aab374f26e260281e3');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"c90335e5c5ad6df3","now":["lines c90335e5c5ad6df3 waiting c2805151a2a4"],"stay":"e1b114fe9c6022eb"}', 'ac98da5cea71cf1d2c3fbbbe29f856a30c6cbbb77c93aa278d3faa9c5f670277');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'doubted', 'boss', '{"doubt":"b0e25824f54b31ed","doubt_kind":"not_this","item":"f10c2275ee3a5ff1","now":["doubts b0e25824f54b31ed - 22e171dd2080","lines cbe0f306f331f9a0 waiting 048a91179e6b"],"words":"Another lamp, by the photo"}', 'd4da202f640052fd5989f5ba100a2a0f55b8241aff5f4b9ce866d9cbb5343590');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:35:00.000000+00:00', 'held', 'boss', '{"line":"cbe0f306f331f9a0","why":"Another lamp, by the photo"}', 'd93df7eb83eef0499e6be0382efe82cb4081b770a1121cdc4e02ec11e9855eae');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:38:00.000000+00:00', 'cancelled', 'boss', '{"lines":["da7f57915c9a8214"],"now":["lines da7f57915c9a8214 cancelled b9f4affe7012"],"number":"B-08","order":"565a123d95b0faa9"}', '1c7c47ed8446c8f8a44f29a52085b9ba95262ecae941862791700e47a9a155ce');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:41:00.000000+00:00', 'cancelled', 'boss', '{"lines":["084db78edc1a6d1a"],"now":["lines 084db78edc1a6d1a cancelled 2198b2131703"],"number":"B-21","order":"5504188f5c3013f7"}', '52deb7a67f82737b58daed73471d32b6a9cbb633450fb9ef8a288e9046cc093c');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:44:00.000000+00:00', 'revived', 'boss', '{"line":"084db78edc1a6d1a","now":["lines 084db78edc1a6d1a waiting aa18e1836480"],"stay":"bafffb88eeb6fa4c"}', '38c26f16bd451f951845c56082574ef6d4febb1df33a63f8ab702bdbf391479b');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:47:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"f15df4f035e609d8","now":["stays 2b5b0a63a1be58dc moved 4817b65dac02","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays f15df4f035e609d8 stored fa20359c0957","lines 0c46003c7e850eca waiting 909a69b1dfbb"],"stay":"2b5b0a63a1be58dc","to":"D020"}', '7fa50e5b91cf4d41d91a06acc09528b923fc52e6438ab7f49c4453ca49cf6270');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:50:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"56f9e031cfdcc6c7","reference":"L012-01S","stay":"07f63ae64dcd4e7c"}],"note":"Rings at noon","now":["orders 37a1edf27bdb77d4 - 11b54e22c4f7","lines 56f9e031cfdcc6c7 waiting 08d799285fdd"],"number":"Sale L012-01S","order":"37a1edf27bdb77d4"}', '36112c29324ffd884efd97015bdd78ee4a264b3241b78474689153b670ae9f36');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:53:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', 'bf1706ad5a0fe8a1682d63ed59345f09d2cb5cbd6a7341f015040fdf4169b28c');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"acb2ea4fd9d3a29b","reference":"S012-01O","stay":"94b35b1b6910b11a"}],"now":["orders ea32020b6d8a2219 - 19503712b2bd","lines acb2ea4fd9d3a29b waiting 16e3e1b36ac4","orders e0ea0615f31b3d60 - 72c76ad676ce","lines ef7191c7d526da2b unbound 5974d60364e4"],"number":"F-1","order":"ea32020b6d8a2219"}', 'c7bee6a93d5caa8f085386fc158329ae7278128781276e10bb7fb9e382a9d1be');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"ef7191c7d526da2b","reference":"Q7","stay":null}],"now":["orders 87e18a5a1645f0d8 - bfa4502ef57c","lines f0dbaee55fdd14bb unbound 72ed53746b49"],"number":"F-2","order":"e0ea0615f31b3d60"}', 'cf44a81f658dcec804da75b2f65e67a4cbd133c41725eae5c009219288c5e911');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:59:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"f0dbaee55fdd14bb","reference":"Q1","stay":null}],"now":["lines f0dbaee55fdd14bb unbound a96f56787db5"],"number":"F-3","order":"87e18a5a1645f0d8"}', 'a339a9de555d68a7bd31f802e4703152d2cf094c9261ff2877e12bb60a805e0c');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:59:00.000000+00:00', 'held', 'boss', '{"line":"f0dbaee55fdd14bb","now":["orders 87e18a5a1645f0d8 - 356ae72d92d9"],"why":"Its channel says that it is not paid or not cleared yet."}', '8dced8816ae957e68afbc76adfe85be8694887e4c4364194a13ee00267bd1fcd');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:59:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"d9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0","loaded":3}', 'c7c238924341c26287498b56e4dda21e2cd8656ea7cbc0abf26e092530ff70b5');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:04:00.000000+00:00', 'order cleared', 'boss', '{"lines":["f0dbaee55fdd14bb"],"now":["lines f0dbaee55fdd14bb unbound 72ed53746b49","orders 87e18a5a1645f0d8 - b3d4929cb0bb","changed_orders 458543e8dd8864d8 - 1d7488376d3c"],"number":"F-3","order":"87e18a5a1645f0d8"}', '047c1cae06811d2fbeae4a4b2393476540e2fd2d8ac8a13d3bac2edbca7842a0');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c7c7f933cab85494bda4071b8d7abe168c1777422fd3f2ddb4fc10bb1c6a6514","loaded":0,"now":["lines ef7191c7d526da2b unbound 90ef759682d6"]}', '39cbc7825be0e81c0029fa2abe705ecf8c900cc832f7b06c77b8524a96f863e0');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:04:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"ef7191c7d526da2b","reference":"Q7","stay":null}],"now":["changed_orders 601df0db0867fcb3 - e6216cec39af"],"number":"F-2","order":"e0ea0615f31b3d60"}', 'ffab78be170e1de9e93c0d88166c5cfd095cf177bf45923bb9d54fd1d7386aec');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:07:00.000000+00:00', 'round opened', 'boss', '{"lines":["75655f6a2ea7de23","ebccdfa0d2a921b8","0e1975758c36acba","46f6bba8c223bd59","44e1b40a8dc945fc","858ad7b5d815aef9","28623bcb42208b55","bbd9b653b666db5d","59d7804312867329","a7c4b512cfec87a4","887322bb3be32b64","f06be2075c68e2e2"],"now":["rounds 8c7658fb4a737e3c open d0d95bca5a5a","lines 0e1975758c36acba waiting 712b956489df","lines 46f6bba8c223bd59 waiting 424b912b8dc2","lines 44e1b40a8dc945fc waiting a63ab0bcbb3c","lines 858ad7b5d815aef9 waiting 31d37605532f","lines 59d7804312867329 waiting 3b7fb6aa3987","lines a7c4b512cfec87a4 waiting 4abc65487c2a","lines 75655f6a2ea7de23 waiting a4a940202e65","lines ebccdfa0d2a921b8 waiting 26fc8774e76a","lines 887322bb3be32b64 waiting cf50acfcff70","lines f06be2075c68e2e2 waiting f75ada1ad9e3","lines 28623bcb42208b55 waiting d55c238db58b","lines bbd9b653b666db5d waiting da0ff843b5af"],"round":"8c7658fb4a737e3c"}', '847a3cec98f57c0087a928f53f77165091e83ddc57b14b331317da1b5581135c');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:10:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item cd2728658608","scans free-D004 - 3436985449f9"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'f2b007de8fb7efe4ee1e73b293beca52b38f2d4244bbe09b1ed32be4a035b34b');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:13:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"75655f6a2ea7de23","line_state":"picked","now":["slots W001 on_item 39034d6db3f2","lines 75655f6a2ea7de23 picked 80f42748c3ba","scans pick-W001 - 32066b75f5fb"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'e7082b2ce217ed057864ba17cf8a2a393bd49ed16c89d7eb9d1b84091af30df7');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:16:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"ebccdfa0d2a921b8","line_state":"picked","now":["slots W002 on_item 9acc31875437","lines ebccdfa0d2a921b8 picked 54741b55d63a","scans pick-W002 - d7359700198d"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '0da2104dd5f58ed2d436f99c07c210140067a5fa656977e25de57a966434a1cb');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"0e1975758c36acba","line_state":"picked","now":["slots S002 on_item 313c91322455","lines 0e1975758c36acba picked 431586dc5b71","scans pick-S002 - 8c0ce0b4019e"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '026e6c6839fd152614a1ea400acc53b2c19ac6f954d43c20e65f7bcc76be57ee');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:02:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"59d7804312867329","reference":"S006-018","stay":"ac9a129900b73a2b"}],"now":["lines 59d7804312867329 picked bb48281f53a9"],"number":"B-13","order":"3272314bd92a99b7"}', '90e9e8655c96d80e79420b9577e627f7521fbd96c3ff5483f58b8db9d044b02b');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"46f6bba8c223bd59","line_state":"picked","now":["slots S003 on_item 09c097179ccb","lines 46f6bba8c223bd59 picked 822e06005de6","scans pick-S003 - ef012d5ce2eb"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'dd4c6b02d1b3f65ec5427e0f98fd72ebd92b89bc9cd5a91ef2666394c8691e43');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"44e1b40a8dc945fc","line_state":"picked","now":["slots S004 on_item 3d9ee0a9199b","lines 44e1b40a8dc945fc picked 55984ca4f9c4","scans pick-S004 - d1496525458b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '4c69d3eb1f02db7fb88303d7ac6c09b2c15c402a0854e79795e84671a41b4fb2');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"858ad7b5d815aef9","line_state":"picked","now":["slots S005 on_item b6e5f63da5da","lines 858ad7b5d815aef9 picked 8cec5f1a7f9f","scans pick-S005 - 15f43ad9e985"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', 'efe7786a9db3c6ab21bde466e839880b281354219d6c4a648d071273a80a9384');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"28623bcb42208b55","line_state":"picked","now":["slots L006 on_item e78467d3e211","lines 28623bcb42208b55 picked d820dcf18219","scans pick-L006 - 56aedc1faeb2"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '3b29c8d68a1e10925fc32317c3e17a95dceece100c8221a947b0e8dd50105aad');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"bbd9b653b666db5d","line_state":"picked","now":["slots L011 on_item 37b72f0a3e77","lines bbd9b653b666db5d picked fb119aae74d9","scans pick-L011 - 7299955774bb"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '89edfd462ae9b472ab58c33bd4e5000c5ccc23b5fafe7035eddde8e88c2f8660');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"59d7804312867329","line_state":"picked","now":["slots S006 on_item 38aa8d1b988a","lines 59d7804312867329 picked 41bee6a7aa2d","scans pick-S006 - 045e0ddf6230"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '58c5e08ef723530666e3250efb685d5ac53c6124358cad5f1d618f3774906719');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"a7c4b512cfec87a4","line_state":"picked","now":["slots S007 on_item f6cdec036499","lines a7c4b512cfec87a4 picked 791a2517efd7","scans pick-S007 - 9593b9f9cb17"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', 'ecb330022a2ae16dfe92d86de4ffdbcd5b3dfce439ec2dacc924db7f17308a41');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"887322bb3be32b64","line_state":"picked","now":["slots W007 on_item 344fa68c4153","lines 887322bb3be32b64 picked 36a8274047e8","scans pick-W007 - 8d7b12fbb0f2"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'fa0d2fe65d17b2e739ce63974960728a6be55729cfbb41204aae7dd6db348652');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"f06be2075c68e2e2","line_state":"picked","now":["slots W008 on_item ad9b479ac2c7","lines f06be2075c68e2e2 picked c5dd05da9a54","scans pick-W008 - b006bd8392c1"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"8c7658fb4a737e3c","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '505ab79c12ca7177ca1767d3d3c613f9e460564bff4446f60b4e1e8bae18785b');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:49:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"f06be2075c68e2e2","line_state":"waiting","now":["lines f06be2075c68e2e2 waiting f75ada1ad9e3","slots W008 on_item b8fdf37a91ac"]}', '93cca89237a686591f7806340f383cb63d9068dd8e5166b5281a80cebdae133a');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:52:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 8c7658fb4a737e3c closed 7576249367f2"],"round":"8c7658fb4a737e3c"}', '9d4fa58e156d3d324ce8bc709e9b6ca1aeca7d12aec777e88d0f1dc3bceaffde');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:55:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 853043e2a7bfec93 open c06ee36b5aaa","orders e2db927c1a293bd4 - a3666421e414"],"orders":["e2db927c1a293bd4"],"parcel":"853043e2a7bfec93","table":"main"}', '8e5e41cbb280bf04495f3ea609bf7062ceaefe7fbf08bb15880dec8d86f6cbb0');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"0e1975758c36acba","line_state":"picked","now":["slots S002 on_item f6cc25e2670b","scans other-S002 - 3865ec3aee63"],"order_number":"B-03","parcel":"853043e2a7bfec93","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', 'f5b92cf968813f5e1b44bfb8bd7587c57bf22116d4dc632a5565ba7c1435bdc5');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"75655f6a2ea7de23","line_state":"packed","now":["lines 75655f6a2ea7de23 packed 0f64f7ee13bf","slots W001 on_item 82318712093a","scans pack-W001 - 9bc56c0acc3f"],"order_number":"B-01","parcel":"853043e2a7bfec93","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'c24c435ffafcfe09fbfa310e8d2f8ba206e01e00194481b6eef6af62e1239327');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:04:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines ebccdfa0d2a921b8 released 5d1845697709","slots W002 due 0ae7b7260da4","lines 75655f6a2ea7de23 released b5e7bb5f2700","stays ac18de0a219a5015 shipped 465f1385f301","slots W001 due 43d0ed2aa8ad","stays ae344c55d5cbe24c shipped 00c3906d339d","parcels 853043e2a7bfec93 closed b275ffa202a2","orders e2db927c1a293bd4 - efdf0f025895","scans pack-W002 - 0fa5789b23bd"],"orders":["e2db927c1a293bd4"],"parcel":"853043e2a7bfec93","released":["W001","W002"]}', '576969431acf69e6fb18ca58da6418b1ca21f42ec899f29ac07e3376b6d8b8df');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"ebccdfa0d2a921b8","line_state":"released","order_number":"B-01","parcel":"853043e2a7bfec93","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '619bf81bb745f49aa35b4e4a9850e452d2d7d4c99c094128cd1cc18ebe37d19f');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"75655f6a2ea7de23","line_state":"released","now":["slots W001 tray ccfbc2b4cd76","scans back-W001 - b9b371464f09"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '745d8a1df5f5521c6979d57543248f78c2b59403b0d2a9df54b9ddc7db1e5eb6');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:10:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 85ea4abe3cd12e1e - f2c8763d2252","slots W001 on_item 4bac4e5a272f","stays f702eb3211b34ce1 stored 32319b2baff5"],"stay":"f702eb3211b34ce1","title":"Rear wheel","turn":2}', '9c520cd0612a72902510263ac17ad9effc8d137ace8fb8e53da226ed3941b96f');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:14:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 3221a1ad749f"],"parcel":"853043e2a7bfec93"}', '5a312ed1e71fbc10128b4f5e93198e176f2417d9ce8137764668c91e73503afb');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels f23d3f63f70a4a6a open eab747d613bb","orders e017921be583f5dd - e5d4beedf78e"],"orders":["e017921be583f5dd"],"parcel":"f23d3f63f70a4a6a","table":"main"}', 'ffb88750f99391e72f4cba5e4acf91e9ac089a87e3fad90c96e8db68bb83effd');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"887322bb3be32b64","line_state":"packed","now":["lines 887322bb3be32b64 packed c35bfaf2932a","slots W007 on_item 67cf8543bda8","scans pack-W007 - c5125413e689"],"order_number":"B-23","parcel":"f23d3f63f70a4a6a","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '8cae06a9ecf4abeb32c959e07d2ea62d940d887e2ae1fe87e8b2ea2e826b7f84');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:23:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 887322bb3be32b64 released a991305628cb","stays 31e7e6ac62ca1751 shipped e734739d8754","slots W007 due 2c3ee7a68103","parcels f23d3f63f70a4a6a closed 6f3fa9b6d85f","orders e017921be583f5dd - 20608334a7d0"],"orders":["e017921be583f5dd"],"parcel":"f23d3f63f70a4a6a","released":["W007"]}', '7f80dcfca07f84da23826176cf990586ca4d0cec43ae77b58cb8b307b25be233');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:26:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 887322bb3be32b64 packed 34da657c862a","stays 31e7e6ac62ca1751 stored 2f0f95214199","slots W007 on_item edf4d355461d","parcels f23d3f63f70a4a6a open be90639fbf20","orders e017921be583f5dd - e5d4beedf78e"],"orders":["e017921be583f5dd"],"parcel":"f23d3f63f70a4a6a"}', '1cafdf8bc355480a9881b3b66e08ce6c8f4a8743938d0c2a835ea565b8181499');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:29:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 887322bb3be32b64 released a991305628cb","stays 31e7e6ac62ca1751 shipped ce1910d8f3c0","slots W007 due 2c3ee7a68103","parcels f23d3f63f70a4a6a closed d27ab630bd2f","orders e017921be583f5dd - 20608334a7d0"],"orders":["e017921be583f5dd"],"parcel":"f23d3f63f70a4a6a","released":["W007"]}', '0371d3c74086615bc70968c156c3b11a9f3f10a4706158176de420b14fdc2cea');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 6f6d1937b3ac3d4a open d42177331817","orders 1cccb4dcbed16ee9 - cc481dd54730"],"orders":["1cccb4dcbed16ee9"],"parcel":"6f6d1937b3ac3d4a","table":"main"}', '9e59ff1cef2fd1b45ae9e68569685515eccb615bb15f4d31b3402963da905f95');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 6f6d1937b3ac3d4a dropped f00768f8be4d","orders 1cccb4dcbed16ee9 - c87955979d10"],"parcel":"6f6d1937b3ac3d4a"}', 'd2a93751b1019d098ce11930746fbb57d97e1f5910bf643b51ca48ba2ab86656');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels c0fab8f8693e5747 open 4e20f86fc3b4","orders 6abd7dfdd7309cd9 - 4b7e69e18657"],"orders":["6abd7dfdd7309cd9"],"parcel":"c0fab8f8693e5747","table":"main"}', '92fc7d5eac26360c8a46710c45f09c1e2cf535c85a2b054924255414417be0c3');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"44e1b40a8dc945fc","line_state":"packed","now":["lines 44e1b40a8dc945fc packed efe6e6748c2a","slots S004 on_item 645ada2533f9","scans pack-S004 - 35d465e8d6cd"],"order_number":"B-04","parcel":"c0fab8f8693e5747","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '7cacf3996ef51489b851d5226614df7cabfe1ffd3b1424c2a88a16f3348e6a1b');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels c0fab8f8693e5747 aside 3e9316d55e10"],"parcel":"c0fab8f8693e5747"}', '49ad0076c4e3237fa0743dc32d9bcc7d49b1838e89be93206280f695a6b98e15');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 2c6f7fa2d41cbe4a open d13941f0d324","orders 535c93155131b0f1 - 9528395f18b6"],"orders":["535c93155131b0f1"],"parcel":"2c6f7fa2d41cbe4a","table":"second"}', '5167fbd0d34432a7cc12618cc63c8a67c05b7ccf7b7f6f4c583ce189296ecc4a');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"28623bcb42208b55","line_state":"packed","now":["lines 28623bcb42208b55 packed 6b68193d5010","slots L006 on_item 383de39f1ecd","scans pack-L006 - 40ab6f9bc9c6"],"order_number":"B-09","parcel":"2c6f7fa2d41cbe4a","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '64aab8b0364106a44f484c2457c03e1a5de7cdefbf62267b896c89910af6a757');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'cancelled', 'boss', '{"lines":["28623bcb42208b55","bbd9b653b666db5d"],"now":["lines 28623bcb42208b55 packed e15c150df6b4","lines bbd9b653b666db5d cancelled 8c527d3c9ad6"],"number":"B-09","order":"535c93155131b0f1"}', '5d2265195e55250f26bf5ed61375cb20eb0cb33c9ebbad59aa0e8652a94a10c2');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels b8f6c05e3b487138 open 90942e4d1909","orders 62f54b1e6ce8a472 - 91598b90b5b8"],"orders":["62f54b1e6ce8a472"],"parcel":"b8f6c05e3b487138","table":"main"}', '9d198c0f8de130dac248840284c6a4313b9c91ced353d31b881a878048db128d');
INSERT INTO public.ledger VALUES (172, '2026-03-02T15:59:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"0e1975758c36acba","line_state":"packed","now":["lines 0e1975758c36acba packed 88cd8861a55e","slots S002 on_item accdcf87d0e1","scans pack-S002 - 98db3384a4db"],"order_number":"B-03","parcel":"b8f6c05e3b487138","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '70fb44f51d1beaf77d4b38666284ed73b89cd0237406a7893fd3e711e3e602ef');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:05:00.000000+00:00', 'round opened', 'boss', '{"lines":["2ba5e03e5920eb73","84c7f2d029bcc70e","16ea7a1a873aed04","0c46003c7e850eca"],"now":["rounds d9818b703d16eadd open 958bc8319be8","lines 0c46003c7e850eca waiting 780c1babff04","lines 2ba5e03e5920eb73 waiting e30b13d81e3e","lines 84c7f2d029bcc70e waiting 283fe788f42b","lines 16ea7a1a873aed04 waiting 175b55418b58"],"round":"d9818b703d16eadd"}', '0dcd0ee71b0765780163140bc326345554dfcf80399533fb107b12e3401bc0a1');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:08:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"2ba5e03e5920eb73","line_state":"picked","now":["slots L002 on_item 18ae536a2949","lines 2ba5e03e5920eb73 picked 03fe2a290766","scans pick-L002 - d9ecd484bbe5"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d9818b703d16eadd","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'be3e0163a10b801cbc719b71b5772d7565bdb02e5c133fa309103ad8821ad075');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:11:00.000000+00:00', 'short', 'boss', '{"line":"16ea7a1a873aed04","note":"Not in its bin","now":["lines 16ea7a1a873aed04 short e4cadc433620","doubts e84c5445b75dfb15 - dbe1ff7cf046"]}', 'ea33f0462ff516d81fefbb0e4c1c09022f60f864bf2475f7c8b1477817cd025c');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:11:00.000000+00:00', 'doubted', 'boss', '{"doubt":"e84c5445b75dfb15","doubt_kind":"missing","item":"26a254b63922e36f","words":"Not in its bin"}', '3f944e50276275222281f9a36e54541611958814d629606abcba6fcafba1df3f');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - d561fbc49618"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"d9818b703d16eadd","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '6cc6596609ecd3a48a2f00838fe8501cbe807484e94b72ac531486b273491cb8');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 41f379d514c5"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"d9818b703d16eadd","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '7dbfa10a26e8d19f8838143cd6361ba1a54cceabea817bbbe3c270267cf38a07');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 8e617fba70b7"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"d9818b703d16eadd","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'b3dabc9246d6d344e803d0eaee00bb2f614e978fb3834325a4363a17ec1f0f5f');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:23:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '6d4dd273de5d80e788c51696a122c50909f48f369ae977c00f14fc3ffc636aca');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:26:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '436dd223ccf54d173232148af1bf54f1c9f7d80a8145afbdb33ba548cff794e8');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7cd7bea1dd33e68e","reference":"D001-019","stay":"678bec5f5c530282"},{"hold":"already_sold","line":"bf5721d8bfaf0ad5","reference":"W002-016","stay":null}],"now":["orders e4c82bd2dae36d5e - 4dd38ec8a864","lines 7cd7bea1dd33e68e waiting 1ec675866ae6","lines bf5721d8bfaf0ad5 unbound 0dd20a6e09f1"],"number":"B-38","order":"e4c82bd2dae36d5e"}', '75a4bf32cd8f72c4be31f1a3c006ab20077ab578aec99db3d05c12fc72418840');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:32:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"d418a39cef7fe341","reference":"W001","stay":null}],"now":["orders c8aa36ccb6265a29 - 04db6938a99f","lines d418a39cef7fe341 unbound 4fc72e6abbaf"],"number":"B-39","order":"c8aa36ccb6265a29"}', '491a9ef7230548b5d7f85c00a49ab1ef247efe17fa3770a71f237a96b6073a8e');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:35:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes ea85058b0b7bc29e open ea3895037f7a"],"stocktake":"ea85058b0b7bc29e"}', '62c325b2510e8030c97d121e3009e5290cc0a5c86d76a415ff5364c872e62852');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:42:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - d514cd59e663","slots S001 on_item df67b8e782ba","doubts a91d67e8d9dafbfd - fb5472949319"],"photo":null,"place":"B-1-1","stocktake":"ea85058b0b7bc29e","unread":0}', '7d1c8d3ebd654c523bad8ab5dc3a23991a0618d003dc77b13b114b3ba81531b1');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:42:00.000000+00:00', 'doubted', 'boss', '{"doubt":"a91d67e8d9dafbfd","doubt_kind":"not_this","item":"12ba64820ccc58c7","now":["slots S003 on_item 639d8e7379c8","slots S012 on_item 1267e5f59e01","slots D010 on_item c77fb9fc44fb"],"words":"A count found another thing on its card in B-1-1."}', 'd18aa5dd300e5fcd363f970fd9cd34535116b028c6d975719b0caf95ca68604b');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:50:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 1ec9afeaeae1","slots S011 on_item bf5ea8bef98d","slots S013 on_item 29dc65ea3997"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"ea85058b0b7bc29e","unread":0}', '290e9c21cf939396d25e186b73d0ed6b027b708aed164af896950f0f1c50d94f');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:56:00.000000+00:00', 'finding resolved', 'boss', '{"after":188,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item d6f97203b578","resolutions ea85058b0b7bc29e.elsewhere-S012 - e963c682f94c"],"reason":"","stocktake":"ea85058b0b7bc29e","sure":false}', 'cec84abf4f35c1fac46f713489e4335c0653ea78eb14cdba0d62a9659460149e');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:59:00.000000+00:00', 'finding resolved', 'boss', '{"after":189,"finding":"unknown-Q0771","how":"ignore","now":["resolutions ea85058b0b7bc29e.unknown-Q0771 - eef2787f0a5b"],"reason":"A neighbour''s","stocktake":"ea85058b0b7bc29e","sure":false}', 'b0f223cc91b44da6e9b4209ab0c15c4041aa011c9b665a53b4d92ebec7d05bb1');
INSERT INTO public.ledger VALUES (191, '2026-03-02T17:02:00.000000+00:00', 'finding resolved', 'boss', '{"after":190,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 9cadd8b1524f","resolutions ea85058b0b7bc29e.missing-S008 - 94cb2681b362"],"reason":"","stocktake":"ea85058b0b7bc29e","sure":false}', '902f8c10cad154f57026d05dfa802486c1a0ba6c55a32eacc76512d55b5d9c6e');
INSERT INTO public.ledger VALUES (192, '2026-03-02T17:05:00.000000+00:00', 'finding reopened', 'boss', '{"after":191,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions ea85058b0b7bc29e.missing-S008 - -"],"stocktake":"ea85058b0b7bc29e"}', '777d4485de8402efe85695cacc3036618d42910b93873113942bf3ac4de3be07');
INSERT INTO public.ledger VALUES (193, '2026-03-02T17:08:00.000000+00:00', 'doubted', 'boss', '{"doubt":"6e4c8bb32eb6a0da","doubt_kind":"missing","item":"853e8e7a95adef66","now":["doubts 6e4c8bb32eb6a0da - ded2a7abc7d7","stocktakes ea85058b0b7bc29e closed de556bafc3c3"],"words":"a count of section:S did not find it"}', '1ab56bbf3d0929e612d4dc2c45bb2794ecd0d37c576fe8cbd13ecf8be09fe574');
INSERT INTO public.ledger VALUES (194, '2026-03-02T17:08:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"ea85058b0b7bc29e"}', 'b6bbe469814a3dbd710d30d9c8c365b8524751a56dec95147851930cd42f2e47');
INSERT INTO public.ledger VALUES (195, '2026-03-02T17:11:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 43740805867edcb2 open 6cf61b464100"],"stocktake":"43740805867edcb2"}', '887668c73139816eb9a1fb44173f12576495fc94b793217b288ab13e86d17668');
INSERT INTO public.ledger VALUES (196, '2026-03-02T17:18:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - db12540a35c8","slots L003 on_item 1d58596f5e15","slots L004 on_item 10ad0afd46db","slots L005 on_item c9ab16e64ecb","slots L007 on_item 78e3de6ffb21"],"photo":null,"place":"C-1-1","stocktake":"43740805867edcb2","unread":0}', '63f08c04900c95eed9432bc53d12d7c16f76217aeb0a52da4a1015212bb26102');
INSERT INTO public.ledger VALUES (197, '2026-03-02T17:21:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts f700327f9c780f55 - fed084f9e617"]}', 'a06ea5f1cebca2c41deb868c32e975f9af6b8534f29d858708c2646e6db7c026');
INSERT INTO public.ledger VALUES (198, '2026-03-02T17:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f700327f9c780f55","doubt_kind":"missing","item":"5a1443dee1bda5a2","now":["resolutions 43740805867edcb2.missing-L008 - 6da1f6d1c2bf"],"words":"a count did not find it"}', '658fe67c57d9436650d9a1aefa12ca7a3be506fa5e1ad41d7f2ad3f27d95a353');
INSERT INTO public.ledger VALUES (199, '2026-03-02T17:21:00.000000+00:00', 'finding resolved', 'boss', '{"after":196,"finding":"missing-L008","how":"lost","reason":"","stocktake":"43740805867edcb2","sure":false}', 'c19785825c516014ecab986377cfb6214a8c31e8363e4dfa9a8b77ae648f0ff7');
INSERT INTO public.ledger VALUES (200, '2026-03-02T17:24:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 7b5c031065d12cfe withdrawn 91349f0a5d98","slots L009 due 821cc144d722","resolutions 43740805867edcb2.missing-L009 - 15a07557e990"],"reason":"Nowhere to be found","stay":"7b5c031065d12cfe"}', 'cc1251f8d76446125a29523a48928fec3f661d485bb98816acbe75fb2b12dd07');
INSERT INTO public.ledger VALUES (201, '2026-03-02T17:24:00.000000+00:00', 'finding resolved', 'boss', '{"after":199,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"43740805867edcb2","sure":false}', 'aa3d2c2b345406a8c05c8280e15277a5c76625f72add8d2c6448e450c770b1b9');
INSERT INTO public.ledger VALUES (202, '2026-03-02T17:27:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes 2ef98ccad3c09838 open 2a20d5b00850"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"2ef98ccad3c09838"}', '648bfbcca5bae1c7acfcf54d535806643eb8618f503d95d79b984d5665805ec9');
INSERT INTO public.ledger VALUES (203, '2026-03-02T17:30:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes 71ff1b7e6d0bc855 open c11a47d6208f"],"stocktake":"71ff1b7e6d0bc855"}', 'a5e2c0a0ba79cf06d628e77b2402f119bc91f10196c200dd8a654425068581ca');
INSERT INTO public.ledger VALUES (204, '2026-03-02T17:33:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes 71ff1b7e6d0bc855 cancelled a1c6a7a5afa3"],"stocktake":"71ff1b7e6d0bc855"}', 'ec8865697fd593203c3af10c0dc89cd5aee3cbc85f400b23567c0914c4b2bd92');
INSERT INTO public.lines VALUES (15, '4a1fc149ad4d1dce', '7a366b49a6ae1e1c', 1, 'D009-01B', 'Rear derailleur 9', '', 'ee7298ddc65583b1', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '4cf2e43b2bac2d27', '4c45bea0a06b634b', 1, 'D003-01U', 'Bell with a crown', '', '0de7464b5320ab61', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, 'a2d8375b6a16654d', '75d0e755d8e56118', 1, 'D005-01E', 'Rear derailleur 5', '', '51e57601d2a8cf20', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '6854506c9ba26eee', '75d0e755d8e56118', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Z."]]');
INSERT INTO public.lines VALUES (24, '10894aa259b6bdc6', '4a43cb1c5ec7fe07', 1, 'D006-016', 'Rear derailleur 6', '', '812835b99f4c198d', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '5f22d0872ff5ac12', '4a43cb1c5ec7fe07', 2, 'D007-01R', 'Rear derailleur 7', '', 'fe40e32c5d897dba', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'cc6fad752ffdd773', '37e4f5b743b73d75', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "This is not written like a reference."]]');
INSERT INTO public.lines VALUES (27, 'fd480349590af759', '07d6f5aa32368708', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '18d1a710772814be', '0926afb10d7a51fd', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '65fcbbf67ccd3926', '5bee216457ef8c6c', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'c90335e5c5ad6df3', '3b2b9c982c467fac', 1, 'W005-01B', 'Bell with a crown', '', 'e1b114fe9c6022eb', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'cbe0f306f331f9a0', '6c0b079dddef3681', 1, 'L007-014', 'Dynamo lamp 7', '', '0c1cac83630f42d3', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'da7f57915c9a8214', '565a123d95b0faa9', 1, 'L005-01K', 'Dynamo lamp 5', '', '981d67187e64d832', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '084db78edc1a6d1a', '5504188f5c3013f7', 1, 'W006-013', 'Front wheel 6', '', 'bafffb88eeb6fa4c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '56f9e031cfdcc6c7', '37a1edf27bdb77d4', 1, 'L012-01S', 'Dynamo lamp 12', '', '07f63ae64dcd4e7c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'acb2ea4fd9d3a29b', 'ea32020b6d8a2219', 1, 'S012-01O', '', '', '94b35b1b6910b11a', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, 'f0dbaee55fdd14bb', '87e18a5a1645f0d8', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (33, 'ef7191c7d526da2b', 'e0ea0615f31b3d60', 1, 'Q7', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["unknown_code", "No section Q."]]');
INSERT INTO public.lines VALUES (19, 'f06be2075c68e2e2', 'e017921be583f5dd', 2, 'W008-01O', 'Front wheel 8', '', '2a5da966ac69e68e', 'waiting', NULL, '8c7658fb4a737e3c', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (1, '75655f6a2ea7de23', 'e2db927c1a293bd4', 1, 'W001-01E', 'Front wheel 1', '', 'ac18de0a219a5015', 'released', '853043e2a7bfec93', '8c7658fb4a737e3c', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, 'ebccdfa0d2a921b8', 'e2db927c1a293bd4', 2, 'W002-016', 'Front wheel 2', '', 'ae344c55d5cbe24c', 'released', '853043e2a7bfec93', '8c7658fb4a737e3c', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, '887322bb3be32b64', 'e017921be583f5dd', 1, 'W007-01W', 'Front wheel 7', '', '31e7e6ac62ca1751', 'released', 'f23d3f63f70a4a6a', '8c7658fb4a737e3c', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '44e1b40a8dc945fc', '6abd7dfdd7309cd9', 1, 'S004-01O', 'Leather saddle 4', '', '3125e8aa86a8d5b7', 'packed', 'c0fab8f8693e5747', '8c7658fb4a737e3c', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (4, '46f6bba8c223bd59', '62f54b1e6ce8a472', 2, 'S003-01W', 'Leather saddle 3', '', 'b4d0bca517f2f228', 'picked', NULL, '8c7658fb4a737e3c', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (6, '858ad7b5d815aef9', '6abd7dfdd7309cd9', 2, 'S005-01G', 'Leather saddle 5', '', '2f7da36b1dacfb9d', 'picked', NULL, '8c7658fb4a737e3c', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, 'a7c4b512cfec87a4', '1cccb4dcbed16ee9', 1, 'S007-01Z', 'Leather saddle 7', '', 'ebf74af9dea8fc30', 'picked', NULL, '8c7658fb4a737e3c', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (11, '28623bcb42208b55', '535c93155131b0f1', 1, 'L006-01C', 'Dynamo lamp 6', '', '2c01a4a82f25f56d', 'packed', '2c6f7fa2d41cbe4a', '8c7658fb4a737e3c', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, 'bbd9b653b666db5d', '535c93155131b0f1', 2, 'L011-010', 'Dynamo lamp 11', '', '0fff73a68a2d4e8a', 'cancelled', NULL, '8c7658fb4a737e3c', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '0e1975758c36acba', '62f54b1e6ce8a472', 1, 'S002-013', 'Leather saddle 2', '', '1817b5844cb5cc37', 'packed', 'b8f6c05e3b487138', '8c7658fb4a737e3c', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '59d7804312867329', '3272314bd92a99b7', 1, 'S006-018', 'Saddle with springs', '', 'ac9a129900b73a2b', 'picked', NULL, '8c7658fb4a737e3c', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '0c46003c7e850eca', 'd08a2275dc45e292', 1, 'D008-01J', 'Rear derailleur 8', '', 'f15df4f035e609d8', 'waiting', NULL, 'd9818b703d16eadd', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (37, 'd418a39cef7fe341', 'c8aa36ccb6265a29', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (8, '84c7f2d029bcc70e', 'c48563ef1987dfe5', 1, 'L003-010', 'Dynamo lamp 3', 'fair-L003', '5bbefb237d398824', 'waiting', NULL, 'd9818b703d16eadd', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '2ba5e03e5920eb73', '5275825dfda3ae2d', 1, 'L002-017', 'Dynamo lamp 2', 'fair-L002', '6c17704c6d05a669', 'picked', NULL, 'd9818b703d16eadd', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '16ea7a1a873aed04', '6d07801ee70aeef7', 1, 'L004-01S', 'Dynamo lamp 4', '', '5133c575fc39af92', 'short', NULL, 'd9818b703d16eadd', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '7cd7bea1dd33e68e', 'e4c82bd2dae36d5e', 1, 'D001-019', 'Rear derailleur 1', '', '678bec5f5c530282', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (36, 'bf5721d8bfaf0ad5', 'e4c82bd2dae36d5e', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.listings VALUES (1, 'd00519f6065c6a6c', 'a81a065c4b1bcbf0', '', 'L-D1', NULL, '2026-03-02T08:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (2, 'e04ebd6e517465b0', '69dea242db4c6e5f', '', 'L-D2', NULL, '2026-03-02T08:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (3, 'b701f9410a0809d0', 'e3a79e8b349833f9', '', 'L-D3', NULL, '2026-03-02T08:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (5, 'b061ba5ef5207c7c', 'e730710dcfc61af4', '', 'L-D5', NULL, '2026-03-02T08:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (6, 'c4d2d3d0a6208b5c', '653662c7d93e8c39', '', 'L-D6', NULL, '2026-03-02T08:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (7, 'c7f28bb3249588c0', '691d21cf08ddf011', '', 'L-D7', NULL, '2026-03-02T08:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (8, 'a1c9c75d01fa1e03', '4e16aa926dddbac5', '', 'L-D8', NULL, '2026-03-02T08:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (9, 'e47857dc26e8eda2', 'd2ff76f2e8a14396', '', 'L-D9', NULL, '2026-03-02T08:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (10, '8b7e2d62db80b7c5', '6949de6a0fe48c5a', '', 'L-D10', NULL, '2026-03-02T09:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (11, '59a14fb7bb8e7db1', '4aa19666e7c67cb7', '', 'L-D11', NULL, '2026-03-02T09:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (12, '4962163c80f952c0', '6d11e42057f8af40', '', 'L-D12', NULL, '2026-03-02T09:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (13, '6670b34b1be91b76', '12ba64820ccc58c7', '', 'L-S1', NULL, '2026-03-02T09:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (14, 'bdb5d71cc251c2d3', '99616afb9dad98c4', '', 'L-S2', NULL, '2026-03-02T09:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (15, '2a809fc9b982ad0b', '3112331bd85dc389', '', 'L-S3', NULL, '2026-03-02T09:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (16, '03f2ae1ec46e3fbc', '2eedab37637a672b', '', 'L-S4', NULL, '2026-03-02T09:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (17, 'eda13db67f158628', '8614068fd7916755', '', 'L-S5', NULL, '2026-03-02T09:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (18, '31a5332388e62e3f', 'b0b5589bab52c01f', '', 'L-S6', NULL, '2026-03-02T09:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (19, 'bd50ab3585be4d62', '9d4009fee145b310', '', 'L-S7', NULL, '2026-03-02T09:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (20, '1e45adddd9f9fd92', '853e8e7a95adef66', '', 'L-S8', NULL, '2026-03-02T09:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (21, '248346c74b6ef50a', '2b359b66f71cbc77', '', 'L-S9', NULL, '2026-03-02T09:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (22, '298717323e001775', 'cfc8f38b9889998c', '', 'L-S10', NULL, '2026-03-02T09:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (23, '15b17bb70a2741d2', '2a9582cb9c62de19', '', 'L-S11', NULL, '2026-03-02T09:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (24, 'd805041f7b3d70d4', '4c2bc1019bd10f0d', '', 'L-S12', NULL, '2026-03-02T09:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (25, '0e5b08a241e96c4b', '65d1c2e36ecdb8c5', '', 'L-L1', NULL, '2026-03-02T09:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (26, '280e5f2f74158784', '5e653ba5450b7cf6', '', 'L-L2', NULL, '2026-03-02T09:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (27, 'e6bc08ada7696b6a', '3f005ea9404ea9aa', '', 'L-L3', NULL, '2026-03-02T09:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (28, '2b50647708033d23', '26a254b63922e36f', '', 'L-L4', NULL, '2026-03-02T09:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (29, 'ae273bec424b3ccc', 'b7d054a01f622775', '', 'L-L5', NULL, '2026-03-02T09:59:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (30, '42b57053f0006877', '0c5e359b2fe83212', '', 'L-L6', NULL, '2026-03-02T10:02:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (31, 'd4df41cb41eded91', 'f10c2275ee3a5ff1', '', 'L-L7', NULL, '2026-03-02T10:05:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (32, 'fdc6fc3e4bc00956', '5a1443dee1bda5a2', '', 'L-L8', NULL, '2026-03-02T10:08:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (33, 'a9af91595a5d4b2c', 'ba5e4968314f8764', '', 'L-L9', NULL, '2026-03-02T10:11:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (34, 'ff772a17984aecb4', '1b0aea97f3098ea9', '', 'L-L10', NULL, '2026-03-02T10:14:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (35, '1fc81d17743d27d9', '2c7d8d2f0668f24e', '', 'L-L11', NULL, '2026-03-02T10:17:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (36, '7e2b29c343e0cba2', '2e416d8e4c9ced2a', '', 'L-L12', NULL, '2026-03-02T10:20:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (37, '2c852010ebbb188e', 'e6298db6e8a67ca2', '', 'L-W1', NULL, '2026-03-02T10:23:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (38, '711d78292c688ceb', 'f836eb8991b67475', '', 'L-W2', NULL, '2026-03-02T10:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (39, '2026a11db8edf36b', 'ad49d88d15ba7817', '', 'L-W3', NULL, '2026-03-02T10:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (40, '7c08f9ca996da226', '25b0ffe9e34cca39', '', 'L-W4', NULL, '2026-03-02T10:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (41, '4940092c8163e0b6', 'd740dc5e00080a2b', '', 'L-W5', NULL, '2026-03-02T10:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (42, '7089accf5eb28c5e', '0063af009991bd61', '', 'L-W6', NULL, '2026-03-02T10:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (43, '09009ec877da0466', '01268a157d7431fb', '', 'L-W7', NULL, '2026-03-02T10:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (44, '5ae3a43eef3bffa4', 'ef99e729847b6159', '', 'L-W8', NULL, '2026-03-02T10:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (45, '9307ade68bba1725', '3c60a2012a016ff2', '', 'L-W9', NULL, '2026-03-02T10:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (46, '02e8c6060d5747f7', '8ecfe399cb5f96d6', '', 'L-W10', NULL, '2026-03-02T10:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (47, '95e17d63a1160048', '4093c96eaf71ccdd', '', 'L-W11', NULL, '2026-03-02T10:53:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (48, '94381441a2fe2264', '3967efb16d99a92a', '', 'L-W12', NULL, '2026-03-02T10:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (49, '833b4d1b53dc6d3b', 'e6298db6e8a67ca2', 'fair', 'f-W001', NULL, '2026-03-02T11:26:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (50, '6f76ce34bbb38607', 'e6298db6e8a67ca2', 'corner', 'c-W001', NULL, '2026-03-02T11:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (51, '5ff5ad1826ba429f', '99616afb9dad98c4', 'fair', 'f-S002', NULL, '2026-03-02T11:32:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (52, 'b1ad69c2c7527ae2', '99616afb9dad98c4', 'corner', 'c-S002', NULL, '2026-03-02T11:35:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (53, '472597a0b1b4c1b5', 'd2ff76f2e8a14396', 'fair', 'f-D009', NULL, '2026-03-02T11:38:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (54, '32ce3e79e356a04a', 'd2ff76f2e8a14396', 'corner', 'c-D009', NULL, '2026-03-02T11:41:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (55, 'cc48fc2f073bce83', '3967efb16d99a92a', 'fair', 'f-W012', NULL, '2026-03-02T11:44:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (56, 'de5e4ee734e1794d', '3967efb16d99a92a', 'corner', 'c-W012', NULL, '2026-03-02T11:47:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (57, '39095a3559626a84', 'ba5e4968314f8764', 'fair', 'f-L009', NULL, '2026-03-02T11:50:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (4, '26490595e08bf839', '8374579cbbf902be', '', 'L-D4', NULL, '2026-03-02T08:44:00.000000+00:00', '2026-03-02T11:56:00.000000+00:00');
INSERT INTO public.listings VALUES (59, '247be2e8d794bd20', '8374579cbbf902be', '', 'L-D004b', NULL, '2026-03-02T11:56:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (58, '6408d3125a8e1208', 'ba5e4968314f8764', 'corner', 'c-L009', NULL, '2026-03-02T11:53:00.000000+00:00', '2026-03-02T12:02:00.000000+00:00');
INSERT INTO public.listings VALUES (60, '7c0c089779b24b08', '5e653ba5450b7cf6', 'fair', 'fair-L002', '2ba5e03e5920eb73', '2026-03-02T12:29:00.000000+00:00', NULL);
INSERT INTO public.listings VALUES (61, '12deeacfbf90a362', '3f005ea9404ea9aa', 'fair', 'fair-L003', '84c7f2d029bcc70e', '2026-03-02T12:32:00.000000+00:00', NULL);
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', 'ea85058b0b7bc29e', 'B-1-1', '2026-03-02T16:42:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', 'ea85058b0b7bc29e', 'B-1-2', '2026-03-02T16:50:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '43740805867edcb2', 'C-1-1', '2026-03-02T17:18:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, '5275825dfda3ae2d', 'B-05', 'fair', '2026-03-02T12:29:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, 'c48563ef1987dfe5', 'B-06', 'fair', '2026-03-02T12:32:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, '6d07801ee70aeef7', 'B-07', 'fair', '2026-03-02T12:35:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, '565a123d95b0faa9', 'B-08', 'fair', '2026-03-02T12:38:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, '3272314bd92a99b7', 'B-13', 'fair', '2026-03-02T12:44:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, '6c0b079dddef3681', 'B-17', 'fair', '2026-03-02T12:47:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '7a366b49a6ae1e1c', 'B-18', 'fair', '2026-03-02T12:50:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '5504188f5c3013f7', 'B-21', 'fair', '2026-03-02T12:53:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, 'd08a2275dc45e292', 'B-26', 'fair', '2026-03-02T13:02:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, '4c45bea0a06b634b', 'B-30', 'fair', '2026-03-02T13:05:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, '75d0e755d8e56118', 'B-31', 'fair', '2026-03-02T13:08:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, '4a43cb1c5ec7fe07', 'B-32', 'fair', '2026-03-02T13:11:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '37e4f5b743b73d75', 'B-33', 'fair', '2026-03-02T13:17:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '07d6f5aa32368708', 'B-34', 'fair', '2026-03-02T13:20:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, '0926afb10d7a51fd', 'B-35', 'fair', '2026-03-02T13:23:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, '5bee216457ef8c6c', 'B-36', 'fair', '2026-03-02T13:26:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '3b2b9c982c467fac', 'B-37', 'fair', '2026-03-02T13:29:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, '37a1edf27bdb77d4', 'Sale L012-01S', '', '2026-03-02T13:50:00.000000+00:00', 24, '2026-03-02T13:50:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, 'ea32020b6d8a2219', 'F-1', 'Fair', '2026-03-02T13:59:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (26, 'e0ea0615f31b3d60', 'F-2', 'Fair', '2026-03-02T13:59:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (27, '87e18a5a1645f0d8', 'F-3', 'Fair', '2026-03-02T13:59:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', 'd9b44c959cfe07d27710deff7f068ea6985a0a55bcba8fbcb512e28ad597a5d0');
INSERT INTO public.orders VALUES (1, 'e2db927c1a293bd4', 'B-01', 'fair', '2026-03-02T12:20:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, 'e017921be583f5dd', 'B-23', 'fair', '2026-03-02T12:59:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, '1cccb4dcbed16ee9', 'B-22', 'fair', '2026-03-02T12:56:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, '6abd7dfdd7309cd9', 'B-04', 'fair', '2026-03-02T12:26:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'c0fab8f8693e5747', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, '535c93155131b0f1', 'B-09', 'fair', '2026-03-02T12:41:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '2c6f7fa2d41cbe4a', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '62f54b1e6ce8a472', 'B-03', 'fair', '2026-03-02T12:23:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'b8f6c05e3b487138', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, 'e4c82bd2dae36d5e', 'B-38', 'fair', '2026-03-02T16:29:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, 'c8aa36ccb6265a29', 'B-39', '', '2026-03-02T16:32:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (1, '853043e2a7bfec93', 'main', 'e2db927c1a293bd4', '2026-03-02T14:55:00.000000+00:00', 'closed', '2026-03-02T15:04:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, 'f23d3f63f70a4a6a', 'main', 'e017921be583f5dd', '2026-03-02T15:26:00.000000+00:00', 'closed', '2026-03-02T15:29:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '6f6d1937b3ac3d4a', 'main', '1cccb4dcbed16ee9', '2026-03-02T15:32:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'c0fab8f8693e5747', 'main', '6abd7dfdd7309cd9', '2026-03-02T15:38:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '2c6f7fa2d41cbe4a', 'second', '535c93155131b0f1', '2026-03-02T15:47:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'b8f6c05e3b487138', 'main', '62f54b1e6ce8a472', '2026-03-02T15:56:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, 'ea85058b0b7bc29e.elsewhere-S012', 'ea85058b0b7bc29e', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:56:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T16:42:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "94b35b1b6910b11a", "item": "4c2bc1019bd10f0d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "acb2ea4fd9d3a29b", "order": "ea32020b6d8a2219", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "94b35b1b6910b11a", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:56:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "94b35b1b6910b11a", "item": "4c2bc1019bd10f0d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "acb2ea4fd9d3a29b", "order": "ea32020b6d8a2219", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "94b35b1b6910b11a", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, 'ea85058b0b7bc29e.unknown-Q0771', 'ea85058b0b7bc29e', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:59:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '43740805867edcb2.missing-L008', '43740805867edcb2', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T17:21:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "ce3fa5ce06875ed1", "item": "5a1443dee1bda5a2", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "ce3fa5ce06875ed1", "item": "5a1443dee1bda5a2", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["f700327f9c780f55"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '43740805867edcb2.missing-L009', '43740805867edcb2', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T17:24:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7b5c031065d12cfe", "item": "ba5e4968314f8764", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "7b5c031065d12cfe", "item": "ba5e4968314f8764", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T17:24:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '8c7658fb4a737e3c', '2026-03-02T14:07:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'd9818b703d16eadd', '2026-03-02T16:05:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '93378049abc0dd61394ba0f7624f552640bc5e8b5fbe592d3ee469f1faae81fd', 'bin', '8c7658fb4a737e3c', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:10:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'a911044e4076d2395b681bf689914b233ebba560b6efc3ae790bc5dc47db2f69', 'bin', '8c7658fb4a737e3c', 'W001', false, true, true, '75655f6a2ea7de23', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e2db927c1a293bd4", "order_number": "B-01", "line": "75655f6a2ea7de23", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:13:00.000000+00:00', '["on_item", ["ac18de0a219a5015", "stored"], ["75655f6a2ea7de23", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '2846fc4e790e0d04296f1da99413a8b4738606ec0d48ca0cbb182e7d36826df3', 'bin', '8c7658fb4a737e3c', 'W002', false, true, true, 'ebccdfa0d2a921b8', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e2db927c1a293bd4", "order_number": "B-01", "line": "ebccdfa0d2a921b8", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:16:00.000000+00:00', '["on_item", ["ae344c55d5cbe24c", "stored"], ["ebccdfa0d2a921b8", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '549cb9fb81bd965007682179df8acd41e2b82099672d97b84d3f37b7c6a3b71c', 'bin', '8c7658fb4a737e3c', 'S002', false, true, true, '0e1975758c36acba', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "62f54b1e6ce8a472", "order_number": "B-03", "line": "0e1975758c36acba", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:19:00.000000+00:00', '["on_item", ["1817b5844cb5cc37", "stored"], ["0e1975758c36acba", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', 'fd95bba1bdfe2ea6a60fb06095693180fdb085d55ee64c44d17d2b9add6c5bef', 'bin', '8c7658fb4a737e3c', 'S003', false, true, true, '46f6bba8c223bd59', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "62f54b1e6ce8a472", "order_number": "B-03", "line": "46f6bba8c223bd59", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["b4d0bca517f2f228", "stored"], ["46f6bba8c223bd59", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '4e2e72125d1af831b764cb1655d3f708c7a3511875a86c75341e5bd624a1aba9', 'bin', '8c7658fb4a737e3c', 'S004', false, true, true, '44e1b40a8dc945fc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "6abd7dfdd7309cd9", "order_number": "B-04", "line": "44e1b40a8dc945fc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:25:00.000000+00:00', '["on_item", ["3125e8aa86a8d5b7", "stored"], ["44e1b40a8dc945fc", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '99b482069dd9183c161f9bc25054f30072c84f57d81018813e3b94aca2bc5457', 'bin', '8c7658fb4a737e3c', 'S005', false, true, true, '858ad7b5d815aef9', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "6abd7dfdd7309cd9", "order_number": "B-04", "line": "858ad7b5d815aef9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:28:00.000000+00:00', '["on_item", ["2f7da36b1dacfb9d", "stored"], ["858ad7b5d815aef9", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '1b0b0e3d8b369f04be50a38825902abd00f33addde481253da1f96095264436f', 'bin', '8c7658fb4a737e3c', 'L006', false, true, true, '28623bcb42208b55', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "535c93155131b0f1", "order_number": "B-09", "line": "28623bcb42208b55", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:31:00.000000+00:00', '["on_item", ["2c01a4a82f25f56d", "stored"], ["28623bcb42208b55", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '62dbdbdf969f393c20d89c9fd0eafeb09d0706fdef9561bd4d84a28d4d52145c', 'bin', '8c7658fb4a737e3c', 'L011', false, true, true, 'bbd9b653b666db5d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "535c93155131b0f1", "order_number": "B-09", "line": "bbd9b653b666db5d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:34:00.000000+00:00', '["on_item", ["0fff73a68a2d4e8a", "stored"], ["bbd9b653b666db5d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '82121bdb2b1df780b57271934c7106409cfcfc54f5157b1e2c2db2f3c9add377', 'bin', '8c7658fb4a737e3c', 'S006', false, true, true, '59d7804312867329', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "3272314bd92a99b7", "order_number": "B-13", "line": "59d7804312867329", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:37:00.000000+00:00', '["on_item", ["ac9a129900b73a2b", "stored"], ["59d7804312867329", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '0e92f5c724ec549742bc26cbe72ec5ce1065449f2edd35eda0e83e6f3123b1c2', 'bin', '8c7658fb4a737e3c', 'S007', false, true, true, 'a7c4b512cfec87a4', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "1cccb4dcbed16ee9", "order_number": "B-22", "line": "a7c4b512cfec87a4", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:40:00.000000+00:00', '["on_item", ["ebf74af9dea8fc30", "stored"], ["a7c4b512cfec87a4", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '413066820958e03b407121aeee238025344f97a2e128c574df871a12e2427ba2', 'bin', '8c7658fb4a737e3c', 'W007', false, true, true, '887322bb3be32b64', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e017921be583f5dd", "order_number": "B-23", "line": "887322bb3be32b64", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["31e7e6ac62ca1751", "stored"], ["887322bb3be32b64", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '2d915534a437f58c4a28a2df9f0dc0156094b4e3464429fdfeb32e5d6fa8bb55', 'bin', '8c7658fb4a737e3c', 'W008', false, true, true, 'f06be2075c68e2e2', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "e017921be583f5dd", "order_number": "B-23", "line": "f06be2075c68e2e2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:46:00.000000+00:00', '["on_item", ["2a5da966ac69e68e", "stored"], ["f06be2075c68e2e2", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '0e1975758c36acba', '853043e2a7bfec93', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "62f54b1e6ce8a472", "order_number": "B-03", "line": "0e1975758c36acba", "line_state": "picked", "order_state": "picking", "parcel": "853043e2a7bfec93", "parcel_state": "open", "released": []}', '', '2026-03-02T14:58:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '75655f6a2ea7de23', '853043e2a7bfec93', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e2db927c1a293bd4", "order_number": "B-01", "line": "75655f6a2ea7de23", "line_state": "packed", "order_state": "picking", "parcel": "853043e2a7bfec93", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["ac18de0a219a5015", "stored"], ["75655f6a2ea7de23", "packed", "853043e2a7bfec93", []], ["853043e2a7bfec93", "2026-03-02T14:55:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'ebccdfa0d2a921b8', '853043e2a7bfec93', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e2db927c1a293bd4", "order_number": "B-01", "line": "ebccdfa0d2a921b8", "line_state": "released", "order_state": "released", "parcel": "853043e2a7bfec93", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T15:04:00.000000+00:00', '["due", ["ae344c55d5cbe24c", "shipped"], ["ebccdfa0d2a921b8", "released", "853043e2a7bfec93", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '75655f6a2ea7de23', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "e2db927c1a293bd4", "order_number": "B-01", "line": "75655f6a2ea7de23", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:07:00.000000+00:00', '["tray", ["ac18de0a219a5015", "shipped"], ["75655f6a2ea7de23", "released", "853043e2a7bfec93", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '887322bb3be32b64', 'f23d3f63f70a4a6a', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e017921be583f5dd", "order_number": "B-23", "line": "887322bb3be32b64", "line_state": "packed", "order_state": "waiting", "parcel": "f23d3f63f70a4a6a", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["31e7e6ac62ca1751", "stored"], ["887322bb3be32b64", "packed", "f23d3f63f70a4a6a", []], ["f23d3f63f70a4a6a", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '44e1b40a8dc945fc', 'c0fab8f8693e5747', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "6abd7dfdd7309cd9", "order_number": "B-04", "line": "44e1b40a8dc945fc", "line_state": "packed", "order_state": "picking", "parcel": "c0fab8f8693e5747", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:41:00.000000+00:00', '["on_item", ["3125e8aa86a8d5b7", "stored"], ["44e1b40a8dc945fc", "packed", "c0fab8f8693e5747", []], ["c0fab8f8693e5747", "2026-03-02T15:38:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '28623bcb42208b55', '2c6f7fa2d41cbe4a', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "535c93155131b0f1", "order_number": "B-09", "line": "28623bcb42208b55", "line_state": "packed", "order_state": "picking", "parcel": "2c6f7fa2d41cbe4a", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:50:00.000000+00:00', '["on_item", ["2c01a4a82f25f56d", "stored"], ["28623bcb42208b55", "packed", "2c6f7fa2d41cbe4a", []], ["2c6f7fa2d41cbe4a", "2026-03-02T15:47:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '0e1975758c36acba', 'b8f6c05e3b487138', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "62f54b1e6ce8a472", "order_number": "B-03", "line": "0e1975758c36acba", "line_state": "packed", "order_state": "picking", "parcel": "b8f6c05e3b487138", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:59:00.000000+00:00', '["on_item", ["1817b5844cb5cc37", "stored"], ["0e1975758c36acba", "packed", "b8f6c05e3b487138", []], ["b8f6c05e3b487138", "2026-03-02T15:56:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '6775e4d2136eda30090729508375efb78dfd3464550725a3c3ff4a701050541f', 'bin', 'd9818b703d16eadd', 'L002', false, true, true, '2ba5e03e5920eb73', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "5275825dfda3ae2d", "order_number": "B-05", "line": "2ba5e03e5920eb73", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T16:08:00.000000+00:00', '["on_item", ["6c17704c6d05a669", "stored"], ["2ba5e03e5920eb73", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '1fb83a2a7bcd4a27341899352dad13e20b71acb10c8e0eeb3a78edadea880ec7', 'bin', 'd9818b703d16eadd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:14:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'cadf26fe78308a443cad57f1cc68fb69a70a3ae322bf95d801dd46f4cf70b4ba', 'bin', 'd9818b703d16eadd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:17:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'ec79d298fe51d25bef4e3561963e46ccd238fa78d270668935f28716dd5f934a', 'bin', 'd9818b703d16eadd', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T16:20:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T14:10:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:50:00.000000+00:00', '2c6f7fa2d41cbe4a', 'bin', 'C-1-1', '8c7658fb4a737e3c', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:28:00.000000+00:00', NULL, 'bin', 'B-1-1', '8c7658fb4a737e3c', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:50:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T14:34:00.000000+00:00', NULL, 'bin', 'C-1-2', '8c7658fb4a737e3c', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:40:00.000000+00:00', NULL, 'bin', 'B-1-1', '8c7658fb4a737e3c', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:59:00.000000+00:00', 'b8f6c05e3b487138', 'bin', 'B-1-1', '8c7658fb4a737e3c', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:37:00.000000+00:00', NULL, 'bin', 'B-1-1', '8c7658fb4a737e3c', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:04:00.000000+00:00', '853043e2a7bfec93', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', 'f23d3f63f70a4a6a', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:41:00.000000+00:00', 'c0fab8f8693e5747', 'bin', 'B-1-1', '8c7658fb4a737e3c', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T16:08:00.000000+00:00', NULL, 'bin', 'C-1-1', 'd9818b703d16eadd', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:42:00.000000+00:00', NULL, 'bin', 'B-1-1', '8c7658fb4a737e3c', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:42:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:50:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:56:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T17:18:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '678bec5f5c530282', 'a81a065c4b1bcbf0', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, 'd9756bf3a2f3cc06', '69dea242db4c6e5f', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '0de7464b5320ab61', 'e3a79e8b349833f9', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, 'e5006b1f4283b00e', '8374579cbbf902be', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, '51e57601d2a8cf20', 'e730710dcfc61af4', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, '812835b99f4c198d', '653662c7d93e8c39', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, 'fe40e32c5d897dba', '691d21cf08ddf011', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, 'ee7298ddc65583b1', 'd2ff76f2e8a14396', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, 'd77cf111b14844f3', '6949de6a0fe48c5a', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, 'b753a4243046a40f', '4aa19666e7c67cb7', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, '98b1f1770fd37012', '6d11e42057f8af40', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '458fdd58e60fde2f', '12ba64820ccc58c7', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, '1817b5844cb5cc37', '99616afb9dad98c4', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, 'b4d0bca517f2f228', '3112331bd85dc389', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, '3125e8aa86a8d5b7', '2eedab37637a672b', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '2f7da36b1dacfb9d', '8614068fd7916755', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, 'ac9a129900b73a2b', 'b0b5589bab52c01f', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, 'ebf74af9dea8fc30', '9d4009fee145b310', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, 'c9c7828562fa3881', '853e8e7a95adef66', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, '9309fb1b2181d335', '2a9582cb9c62de19', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '94b35b1b6910b11a', '4c2bc1019bd10f0d', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, '48bc8e01c478912c', '65d1c2e36ecdb8c5', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, '6c17704c6d05a669', '5e653ba5450b7cf6', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, '5bbefb237d398824', '3f005ea9404ea9aa', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, '5133c575fc39af92', '26a254b63922e36f', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, '981d67187e64d832', 'b7d054a01f622775', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, '2c01a4a82f25f56d', '0c5e359b2fe83212', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, '0c1cac83630f42d3', 'f10c2275ee3a5ff1', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, 'ce3fa5ce06875ed1', '5a1443dee1bda5a2', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, '62c029f1edc4decf', '1b0aea97f3098ea9', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, '0fff73a68a2d4e8a', '2c7d8d2f0668f24e', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '07f63ae64dcd4e7c', '2e416d8e4c9ced2a', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, 'b7e1bc72aea7b83c', 'ad49d88d15ba7817', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, 'e1b114fe9c6022eb', 'd740dc5e00080a2b', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, 'bafffb88eeb6fa4c', '0063af009991bd61', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, '2a5da966ac69e68e', 'ef99e729847b6159', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, '06e2b004bc086a1c', '3c60a2012a016ff2', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, '6e6c444d3e774f02', '8ecfe399cb5f96d6', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, '37cbaa219d312247', '4093c96eaf71ccdd', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, '05619fbc5464fc7c', '3967efb16d99a92a', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, 'bbbb302cd4f8581e', '1375537f90fbb2dd', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '6abf3dcad491d91b', 'cfc8f38b9889998c', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'ccbf792770aad723', '25b0ffe9e34cca39', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, 'c5d028a3f8d3cfda', '2b359b66f71cbc77', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, 'e3e7c0ca3ce3da40', '2b359b66f71cbc77', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, 'fc6be195ccccb5ee', 'ec72da2d3eac1fa6', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '477efb25ec861311', 'f00590bea3341175', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, '2b5b0a63a1be58dc', '4e16aa926dddbac5', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:47:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, 'f15df4f035e609d8', '4e16aa926dddbac5', 'D020', 1, '2026-03-02T13:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, 'ac18de0a219a5015', 'e6298db6e8a67ca2', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, 'ae344c55d5cbe24c', 'f836eb8991b67475', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T15:04:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, 'f702eb3211b34ce1', '85ea4abe3cd12e1e', 'W001', 2, '2026-03-02T15:10:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, '31e7e6ac62ca1751', '01268a157d7431fb', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T15:29:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '7b5c031065d12cfe', 'ba5e4968314f8764', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T17:24:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, 'ea85058b0b7bc29e', 'section:S', 'Spring', '2026-03-02T16:35:00.000000+00:00', 184, 'closed', '2026-03-02T17:08:00.000000+00:00', '{"stocktake": "ea85058b0b7bc29e", "area": "section:S", "note": "Spring", "opened": "2026-03-02T16:35:00+00:00", "closed": "2026-03-02T17:08:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:56:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:59:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '43740805867edcb2', 'section:L', 'Spring', '2026-03-02T17:11:00.000000+00:00', 194, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '2ef98ccad3c09838', 'section:D', '', '2026-03-02T17:27:00.000000+00:00', 201, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, '71ff1b7e6d0bc855', 'tray', 'Too late today', '2026-03-02T17:30:00.000000+00:00', 202, 'cancelled', '2026-03-02T17:33:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '8c7658fb4a737e3c', 1, '0e1975758c36acba', 'B-1-1');
INSERT INTO public.stops VALUES (2, '8c7658fb4a737e3c', 2, '46f6bba8c223bd59', 'B-1-1');
INSERT INTO public.stops VALUES (3, '8c7658fb4a737e3c', 3, '44e1b40a8dc945fc', 'B-1-1');
INSERT INTO public.stops VALUES (4, '8c7658fb4a737e3c', 4, '858ad7b5d815aef9', 'B-1-1');
INSERT INTO public.stops VALUES (5, '8c7658fb4a737e3c', 5, '59d7804312867329', 'B-1-1');
INSERT INTO public.stops VALUES (6, '8c7658fb4a737e3c', 6, 'a7c4b512cfec87a4', 'B-1-1');
INSERT INTO public.stops VALUES (7, '8c7658fb4a737e3c', 7, '75655f6a2ea7de23', 'D-1-1');
INSERT INTO public.stops VALUES (8, '8c7658fb4a737e3c', 8, 'ebccdfa0d2a921b8', 'D-1-1');
INSERT INTO public.stops VALUES (9, '8c7658fb4a737e3c', 9, '887322bb3be32b64', 'D-1-1');
INSERT INTO public.stops VALUES (10, '8c7658fb4a737e3c', 10, 'f06be2075c68e2e2', 'D-1-1');
INSERT INTO public.stops VALUES (11, '8c7658fb4a737e3c', 11, '28623bcb42208b55', 'C-1-1');
INSERT INTO public.stops VALUES (12, '8c7658fb4a737e3c', 12, 'bbd9b653b666db5d', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'd9818b703d16eadd', 1, '0c46003c7e850eca', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'd9818b703d16eadd', 2, '2ba5e03e5920eb73', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'd9818b703d16eadd', 3, '84c7f2d029bcc70e', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'd9818b703d16eadd', 4, '16ea7a1a873aed04', 'C-1-1');
SELECT pg_catalog.setval('public.access_n_seq', 7, true);
SELECT pg_catalog.setval('public.aliases_n_seq', 3, true);
SELECT pg_catalog.setval('public.answers_n_seq', 1, true);
SELECT pg_catalog.setval('public.bins_n_seq', 9, true);
SELECT pg_catalog.setval('public.changed_orders_n_seq', 2, true);
SELECT pg_catalog.setval('public.channels_n_seq', 1, true);
SELECT pg_catalog.setval('public.doubts_n_seq', 5, true);
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
