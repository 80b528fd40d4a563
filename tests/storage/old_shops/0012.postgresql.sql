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
INSERT INTO public.access VALUES (1, 'e226202d21ee0bd714d976e8651ad4ff4bdc68e9d0cb73962dd1385fe5830e68', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$0bWIW8FDEG9VU3NIj+jDXg$VKFgqSgYeDcznMDB9/BQfGTt2owK86XaYHCz1G/lWdM', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '1dfb3050994b1db6f7d56f56efa8f600f876bb74a78f8e0a0fc7f39218cdf2e6', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '8d65a5bbf82baa73a539755288b6e28ff05c0f692784bb0dc961481f06ed4413', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'bf95c978688538dff4a495f38f60fad0702dde27de6229aea8ef9794f11ec55a', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, '469050e2734239f3086976c49267278be2e11b7587cccc52b226cbb564daefb1', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0012');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/25af5770faa745a8', '{"id": "25af5770faa745a8", "item": "51c5566263bd3b53", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.changed_orders VALUES (1, '5dd940f073825cf9', 'c50310f0bf74a0bf2f857ced4e0a37a0d19a05c0148b8e989178d377a310835c', 'bc7992b321d5184e', '2026-03-02T13:25:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "aside", "lines": {"52e87ba5eb280d94": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No slot of this room has this code."], ["not_cleared", "Its channel says that it is not paid or not cleared yet."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "pack", "lines": {"52e87ba5eb280d94": {"reference": "Q1", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["unknown_code", "No slot of this room has this code."]], "in_file": true}}}}');
INSERT INTO public.changed_orders VALUES (2, '7e6152106ca228a4', 'c50310f0bf74a0bf2f857ced4e0a37a0d19a05c0148b8e989178d377a310835c', '956a3ab1809c0207', '2026-03-02T13:25:00.000000+00:00', '{"before": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"e4d6011640f21cbb": {"reference": "", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["bad_row", "This row has no reference."]], "in_file": true}}}, "after": {"ordered_at": null, "ship_by": null, "status": "", "lines": {"e4d6011640f21cbb": {"reference": "", "title": "", "listing": "", "stay": null, "state": "unbound", "holds": [["not_in_file", "The newest file of Fair does not have order F-2."], ["bad_row", "This row has no reference."]], "in_file": false}}}}');
INSERT INTO public.channels VALUES (1, 'Fair', '{"Gone": "sent", "Not paid": "aside", "Off": "cancelled", "Paid": "pack"}', true);
INSERT INTO public.doubts VALUES (1, '688fca5a02f4da62', 'b6c89ee985b9f775', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:56:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, 'cbc3d550ec34f684', '68087d5f64269815', 'missing', 'Not in its bin', '2026-03-02T15:32:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '28370a4fe424dd6c', '59630366f7badd0e', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T16:03:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, 'c5dd5973938acefa', 'fefa07134b00fe11', 'missing', 'a count of section:S did not find it', '2026-03-02T16:29:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, 'ceb9755b1eb74179', '9c06c4461a16bf95', 'missing', 'a count did not find it', '2026-03-02T16:42:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 190, 'c358568974b314fcefa431b7f7c67bfbc8aa52150a5b623840a1c8a3fa783632', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', '57c3ec8af1710f7f');
INSERT INTO public.items VALUES (3, '860f5d3be0a53a9a', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '5f3d93b72df4f598', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (5, 'f3a82445c8a052cb', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (6, 'a1d6f9e13cafafad', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '87563220d4e16d47', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '194c91513195419b', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (9, 'a649e8409dafacdd', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '6dbc375b0f5db461', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (11, '88d4cc3343d01567', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '4c348070556f34b7', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '1da953a735baf8e0', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (15, '81d97db869251b40', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (16, 'b1e87600108a1629', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (17, 'ab7bf6a2cf666853', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (18, '2a32a5f3fe0bd9db', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (19, 'b743448462858764', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (20, 'fefa07134b00fe11', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '2a42cd930f344196', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (22, '62d58fb31b946c03', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (23, 'b9732f1a7c5d23ba', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (24, '024578a0eccfd49d', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (25, '354c5e0963cab481', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (26, 'd6532173eca40497', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (27, 'd175e3d634013b43', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (28, '68087d5f64269815', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (29, '664ddc29dc6a1da1', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '3d184ebfdc2516ef', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (31, 'b6c89ee985b9f775', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (32, '9c06c4461a16bf95', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (33, 'c2c98359bc808897', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (34, 'ff20ead80e10872a', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (35, '9fe4b693b5ee1b9b', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (36, '1cb26755fbca418e', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (37, '35069914d6080369', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (38, '493d290c2c08e652', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (39, 'c6efbd9b31707708', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (40, '3b759e8152c3d62d', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (41, 'ec2af07a6c5dd779', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '3f76a0dd22a673a8', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '32f51a2faa34117a', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (44, 'cda29eebeb582e3d', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (45, 'e5bcc8f151c9c15d', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (46, '251766c5e59f8789', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '51c5566263bd3b53', 'Brass bell', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, 'fbf04325d8b6c1ee', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (1, '5c87ad624650cd05', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL, '', NULL);
INSERT INTO public.items VALUES (13, '59630366f7badd0e', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL, '', NULL);
INSERT INTO public.items VALUES (50, '88bb5c18c05f22bd', 'Carbide lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, '526c65b07d164be0', 'Rear lamp', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, 'd8eec012712098ac', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00', '', NULL);
INSERT INTO public.items VALUES (47, '60c00e49407aab50', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL, 'On the bench', '2026-03-02T11:29:00.000000+00:00');
INSERT INTO public.items VALUES (52, '136feb57a228fdeb', 'Rear wheel', '', '', NULL, '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '42ce78ea54e3b78f', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 5c87ad624650cd05 - cd742aad0533","slots D001 on_item e5405bc28ff8","stays 2d471e294f58701b stored 85283c883aa9"],"stay":"2d471e294f58701b","title":"Rear derailleur 1","turn":1}', 'cd953d898af63a36840eb5e54cdc89ce07ec42fff05dad2a16470703ecc9b22d');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items fbf04325d8b6c1ee - 8908d4df7830","slots D002 on_item 4f79f524f247","stays e8d9f797e82a176d stored 306b840ccb7b"],"stay":"e8d9f797e82a176d","title":"Rear derailleur 2","turn":1}', '1af70bcd55f794ed26733d9c0e2f2f19f6caa92484f749a0a6ec263cdd06240b');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items 860f5d3be0a53a9a - 2979fa7d2237","slots D003 on_item 6de523ac8b4d","stays 4284c708ca7efc99 stored fd625f29f4f7"],"stay":"4284c708ca7efc99","title":"Rear derailleur 3","turn":1}', 'd2a2ccca281db6f7217b85f56b7b71ceb1876b9fe4189c28887e4510d71b6edd');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 5f3d93b72df4f598 - ddcf8ab03ee2","slots D004 on_item ec423998da46","stays 8c1e740e33478a97 stored 251116b6a127"],"stay":"8c1e740e33478a97","title":"Rear derailleur 4","turn":1}', 'ddffa3259d7d065f4e64852096bf89aafcb2decd9dc6e479972d2e934cfe1f70');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items f3a82445c8a052cb - 72752a9ff49a","slots D005 on_item 91ad3faf88d6","stays 9c1c9e7dfecf2402 stored f692ae0c2c01"],"stay":"9c1c9e7dfecf2402","title":"Rear derailleur 5","turn":1}', '3461074fbc60832d98cc641da98727bcb50b1814ee8cdc3b5eb836a755867e6f');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items a1d6f9e13cafafad - 69b1b255e123","slots D006 on_item 1fadb568d6a5","stays e236f5f8e58999cf stored 2653b0e1d45f"],"stay":"e236f5f8e58999cf","title":"Rear derailleur 6","turn":1}', 'f8bf4c0f51613784bc686a51f7271b1b39c40b350e39330c49f9d829209cb8da');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 87563220d4e16d47 - 5bf3555b1b9a","slots D007 on_item 536077e3b728","stays 7a3b29c9983b199e stored 224c51733145"],"stay":"7a3b29c9983b199e","title":"Rear derailleur 7","turn":1}', '738320553a017fab1c2c2ca1747e65bd15a4ea1367b8322a0849b8d032dcddb1');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 194c91513195419b - c5cdafa084c7","slots D008 on_item facb453cba22","stays d7fd998367ac056e stored 284c4d5b313a"],"stay":"d7fd998367ac056e","title":"Rear derailleur 8","turn":1}', '99201b40df66f7803706ec1665e2bf0920617aa0affe60da1f005211e8195894');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items a649e8409dafacdd - 2a0abe17b65d","slots D009 on_item 7434bf04ccf2","stays ea0398c2500312d7 stored 19a2ce4e6de5"],"stay":"ea0398c2500312d7","title":"Rear derailleur 9","turn":1}', 'aecbca6eeacae60d052dc53904f8279edb0abd9fc81baabaa2375cf0a4879551');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 6dbc375b0f5db461 - 41eca9bc4792","slots D010 on_item 1f8fd3ebaf8b","stays 1f3076ee872d9f0d stored a838f4f4368e"],"stay":"1f3076ee872d9f0d","title":"Rear derailleur 10","turn":1}', '54f14c0ad355d5bd7cd4f8bf724c7604f88f950470b74c3189f8e064d62ba219');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 88d4cc3343d01567 - 410a769d7f9f","slots D011 on_item d451255e38b7","stays 359eb9352a0f19bc stored 5bd21fe410ad"],"stay":"359eb9352a0f19bc","title":"Rear derailleur 11","turn":1}', '83adb527655b02420657c23908487152bf99bf3709bfe1dfad46ee2b3d323279');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 4c348070556f34b7 - ac649aefe751","slots D012 on_item bdbda5bb2b7a","stays d7ac7b40ac843b02 stored d16764f639bd"],"stay":"d7ac7b40ac843b02","title":"Rear derailleur 12","turn":1}', 'c5480f89ec05eb6829e9a36454e64ddef004985fa792f533a351c14ecd17f210');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 59630366f7badd0e - 111417b2d33c","slots S001 on_item 76dcd853e3e0","stays 70fd5ab5c5ca03aa stored 3a61c7be9874"],"stay":"70fd5ab5c5ca03aa","title":"Leather saddle 1","turn":1}', '211fcae41b8337706d6570fd9ad221a98e6f2993517c7e408e7a4a805c060cd5');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 1da953a735baf8e0 - 4605d85dc5b0","slots S002 on_item 6fb94c47a50d","stays ad35e4b1c32c05cd stored 5713a800e516"],"stay":"ad35e4b1c32c05cd","title":"Leather saddle 2","turn":1}', '4431bcdc8d095444c8052a1496f41c4a918787c9c473662f2dd0830866967a7b');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items 81d97db869251b40 - a660b20396a3","slots S003 on_item e00808332634","stays 880b2594a0e5604d stored be8f23792ef4"],"stay":"880b2594a0e5604d","title":"Leather saddle 3","turn":1}', '807dfc8d3c010cbb7aef928ee3d6ca759539c92a9dcdf707f31c0c6e97643821');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items b1e87600108a1629 - 3c531ae43938","slots S004 on_item db1aa8005467","stays e0cb1fcfe1dfbb7f stored b8d57bd5a3ee"],"stay":"e0cb1fcfe1dfbb7f","title":"Leather saddle 4","turn":1}', 'a80cd6d7969272b5179ac0e68d528a1c1ce3ca045bc17d15c2c97fbc1e53213f');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items ab7bf6a2cf666853 - d0bcb90492a9","slots S005 on_item ec548ef84f99","stays 6804d0ee96eaeec8 stored 8914641e4f63"],"stay":"6804d0ee96eaeec8","title":"Leather saddle 5","turn":1}', 'f83c73d9d35290e1b58592733e98f1196b7705b8d1a3706b559253d1703f050d');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 2a32a5f3fe0bd9db - 42ebf7650ad9","slots S006 on_item dc9bc74eb63a","stays 9ed21e79f64fab8f stored 0a4636ede159"],"stay":"9ed21e79f64fab8f","title":"Leather saddle 6","turn":1}', '566337456ab4dd65349ea68aebbd63029430b4fe7d82202b0b1d36b51d45d6a7');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items b743448462858764 - f7e2121b5663","slots S007 on_item 075fd8b9fecf","stays 1240f3e03f8bcf2f stored 3903834f8a82"],"stay":"1240f3e03f8bcf2f","title":"Leather saddle 7","turn":1}', '191e87157b196d3563e1bc389f2b65ed0cf8c02f510fa4d5046c97836fa8fc9a');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items fefa07134b00fe11 - 4ac6c67cb8c0","slots S008 on_item 39fdb847a4bc","stays 5d259dfd6c7b7d37 stored 7225f0337931"],"stay":"5d259dfd6c7b7d37","title":"Leather saddle 8","turn":1}', '792eff9fe0c3a0ae08fff225d34b8273b4cdf9cfd3ea56083eaa3994fbb7d369');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 2a42cd930f344196 - a6d68a4b8384","slots S009 on_item 62c79df275b3","stays 9f93020bf465d3dc stored a8a7a779dfd5"],"stay":"9f93020bf465d3dc","title":"Leather saddle 9","turn":1}', 'c0307c82872256d87f80a62d823e4dd859c9c8a36efc3c33b6b92f3df9e7c010');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items 62d58fb31b946c03 - 21beb429f5d3","slots S010 on_item 1fd8d85fa1c4","stays 8dcaefaeb8884ba8 stored d74942efa9a3"],"stay":"8dcaefaeb8884ba8","title":"Leather saddle 10","turn":1}', '839300920d4a2330c3f9756c70baf5c85b60a183d4117b17a9ddd0e3ceb000c2');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items b9732f1a7c5d23ba - f1fd83a5c52a","slots S011 on_item e59577c4b2a7","stays b2aa55e433aa5a3d stored 1fb420906734"],"stay":"b2aa55e433aa5a3d","title":"Leather saddle 11","turn":1}', '711a5d1c796b624b5c64586faa2916d426c2bd9f8564bb6c4d8a72153c723e30');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 024578a0eccfd49d - 387a152edaa2","slots S012 on_item 9bae442e2436","stays 0f08b93ca6b95bdf stored d4d6e4042165"],"stay":"0f08b93ca6b95bdf","title":"Leather saddle 12","turn":1}', 'eddc1b6295b54cadec4a100778150c3a23e07d8840adb1c8c64ff9946a04a640');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items 354c5e0963cab481 - 947fabbaab19","slots L001 on_item 43c5cdfaa8e4","stays b26686b3a3439d58 stored afd6bfaa7977"],"stay":"b26686b3a3439d58","title":"Dynamo lamp 1","turn":1}', 'f6e136b5d40cfb341bcfbe92b3a31e2c94ba5235d7ee5b6a7b2c35524bc3701f');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items d6532173eca40497 - fc97904bb9e9","slots L002 on_item ea8e77c8b06f","stays a547d1d18538b02d stored c746e603e955"],"stay":"a547d1d18538b02d","title":"Dynamo lamp 2","turn":1}', 'fad33b674ed0d2b5f942628241a423b5b440d809ac97a51990e4a8b1eeb7b239');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items d175e3d634013b43 - efc795102893","slots L003 on_item c35e4c005cda","stays edca802436ebf45f stored abe3425d78af"],"stay":"edca802436ebf45f","title":"Dynamo lamp 3","turn":1}', 'e85a983e4eab838dbe3e06c7dffd77674b4a9da400b9108c12b0d9f6676e16a9');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 68087d5f64269815 - 5c8a622b0453","slots L004 on_item 70a88e4a366b","stays d6be5e081619409b stored e256c76a3e21"],"stay":"d6be5e081619409b","title":"Dynamo lamp 4","turn":1}', '4cd3c958c9d247b2f7d8e4cdf99b2cf3624b55011e4dbb37ec3a615f4a29abae');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 664ddc29dc6a1da1 - 69971a9f40a4","slots L005 on_item 6261d94de1ef","stays 534a47553f4daa2f stored c9c926a5bfc7"],"stay":"534a47553f4daa2f","title":"Dynamo lamp 5","turn":1}', 'e827afd33ee43a66032f9aeee015f835b4f0b97edbe32e971f5ed758389b42e2');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 3d184ebfdc2516ef - 7766e58331b5","slots L006 on_item b67b470f3637","stays e7aac6d6ea5a02ee stored 64e250d84b32"],"stay":"e7aac6d6ea5a02ee","title":"Dynamo lamp 6","turn":1}', 'a7921df8335b0caf102fd09f71ded99cf60aa042a5189921a0101554267c6371');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items b6c89ee985b9f775 - add3eedfb82b","slots L007 on_item 767524982af4","stays baba4a7652cb5a8a stored 0a6d722bbeb7"],"stay":"baba4a7652cb5a8a","title":"Dynamo lamp 7","turn":1}', '9f587225e30865d3ed988760ef171a997f38e49fcbd25822cdd36886fd3d5a59');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items 9c06c4461a16bf95 - 16fdb1549131","slots L008 on_item b3b2d23a98b7","stays 572c8aecc8b0b851 stored b155e53e7c28"],"stay":"572c8aecc8b0b851","title":"Dynamo lamp 8","turn":1}', '50aea8cbc00c06428ce226fd93a9ac566e0f4c01892630206361e27b2800116a');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items c2c98359bc808897 - ad7dcf15252b","slots L009 on_item c3139144a3f8","stays 2f6041a9714fdb72 stored 9b4356565570"],"stay":"2f6041a9714fdb72","title":"Dynamo lamp 9","turn":1}', 'fb0a4529d9412d13d8a054c0d48d376f11e82d6314f794a4438b781f422afccc');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items ff20ead80e10872a - 9371d88a1b5e","slots L010 on_item f8c13ae8aec4","stays c4ddfe122a432dd3 stored 9d06d857c1e5"],"stay":"c4ddfe122a432dd3","title":"Dynamo lamp 10","turn":1}', '92cd29b1b550d6b69cdf9ca64ea6a7419ac05ca867919e761ceb3e63dd766aec');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items 9fe4b693b5ee1b9b - c68223dc9066","slots L011 on_item 9d01c75c0f89","stays eb25b9e47415613c stored 876923355f80"],"stay":"eb25b9e47415613c","title":"Dynamo lamp 11","turn":1}', '768e39689eaff4c780d13708763dfb8c8455cab8d729149b1cff6ae23bdcaf1f');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 1cb26755fbca418e - ef447f44977c","slots L012 on_item 5373b19b101e","stays 999f5302f1c898fd stored 83f229ba0e5f"],"stay":"999f5302f1c898fd","title":"Dynamo lamp 12","turn":1}', '7d945c1a9fd960e7c6027e731915a1e421c38588f9830e19f7b55d4704c19b18');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 35069914d6080369 - e0ef5088e501","slots W001 on_item 17dd342c2f6a","stays 7ee32848417c5895 stored 63bbc765b406"],"stay":"7ee32848417c5895","title":"Front wheel 1","turn":1}', '677a33421d53ab9c2e7f8f6bcc5402d4adb6fee4480e9c533c889645455777de');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items 493d290c2c08e652 - 770027fefb80","slots W002 on_item 7ebfb8df41ca","stays 1408717979591272 stored 3925ad9830f9"],"stay":"1408717979591272","title":"Front wheel 2","turn":1}', 'd1dfdf2d65896f51ee8129cf6d509fe3483e0c8fd3cf0d2e24f03fbcaed645d4');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items c6efbd9b31707708 - c66e60271509","slots W003 on_item f84a2674e962","stays 11251fd5316451f3 stored bf0491612780"],"stay":"11251fd5316451f3","title":"Front wheel 3","turn":1}', '85d6711f6b9bc8d6b5a2b80ec4f18cf5837d9609eee9832eb55d27e398daac68');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items 3b759e8152c3d62d - 38d66056c642","slots W004 on_item f45ed94fd55a","stays bbc8d0b2c79b941e stored 14516d512bac"],"stay":"bbc8d0b2c79b941e","title":"Front wheel 4","turn":1}', '5c548e126de4e2a62f64f60bc08c07557b4fe880afb66f71bcab652a01348e5f');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items ec2af07a6c5dd779 - 4cc7bf94370f","slots W005 on_item a1fdfb2c692e","stays a743996ffd298647 stored 6c57eaa41bb8"],"stay":"a743996ffd298647","title":"Front wheel 5","turn":1}', '65e6465049bafce742c1128fc9672b17debfc3c98fd731a4e2d8b5ced6470cf4');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 3f76a0dd22a673a8 - 55a25647451c","slots W006 on_item 3dd6244f0bee","stays 0afb17f55be90936 stored 0df67fa6291d"],"stay":"0afb17f55be90936","title":"Front wheel 6","turn":1}', 'd02aa587b5bfdd0742c1768d4b664eeda93d84186248a31961c8a213f296d7f5');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 32f51a2faa34117a - 37cf5f6f7df4","slots W007 on_item d52463b699e2","stays d1f43c2e89c934c4 stored 096bd5f01265"],"stay":"d1f43c2e89c934c4","title":"Front wheel 7","turn":1}', 'b230e38094372c9604730635a4788e562be79db4f28f9c514803c16fcef547d4');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items cda29eebeb582e3d - ba123972f017","slots W008 on_item 2e167460fb16","stays 5338f68e69e5df45 stored 4bd553dab38e"],"stay":"5338f68e69e5df45","title":"Front wheel 8","turn":1}', '057bb0bdd06e5bbc0365f000b5f16c3f92ebfc3c1b394a791f35c73d5db84767');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items e5bcc8f151c9c15d - 1af70e56fc3c","slots W009 on_item 597fc2f4b56e","stays 22b85c70d5679749 stored b978b2d2e860"],"stay":"22b85c70d5679749","title":"Front wheel 9","turn":1}', '22aab536af0123e3aa5adfc3ba7f1f679a495cfd348208a64a6bc2fe34ac21ed');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 251766c5e59f8789 - cfdff512fb5e","slots W010 on_item 7d0365c2d2de","stays b2db07f2c6d24524 stored d5c2050f074b"],"stay":"b2db07f2c6d24524","title":"Front wheel 10","turn":1}', 'c3c7f12cc1387a3b3198dd064d4e897464afe168787a35060711dd6665ef179a');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items 60c00e49407aab50 - 073cd314465b","slots W011 on_item d3a26b640d71","stays fc0bd32d2048d0a9 stored 2fcce9754456"],"stay":"fc0bd32d2048d0a9","title":"Front wheel 11","turn":1}', 'ae14bbdefaea7b412eb064f76d3f677edf1c2ff1f2d0e8eb840c7c0da45c1c62');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items d8eec012712098ac - 53cc13c7f98a","slots W012 on_item ac10bfb906d6","stays 02247760d83fcf88 stored f2fe723b439a"],"stay":"02247760d83fcf88","title":"Front wheel 12","turn":1}', '881807e96b9104c58417b95e67a84ddcfdbc9af82e426b81582375f27bb7a789');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 51c5566263bd3b53 - 004c3d5c1ccc","slots D013 on_item 69b6f1c92d5d","stays 25af5770faa745a8 stored 4813d3fd1c25"],"stay":"25af5770faa745a8","title":"Brass bell","turn":1}', 'cde2a72fc66af9baede3c1a2c2395148625b5f667b3376506ad6f32917f3d79d');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items fbf04325d8b6c1ee - 19021d7eaec0"],"stay":"e8d9f797e82a176d"}', 'be7c164d9ad1dc6f1dfe96236fed14e866656efbd9afc0be1dc3706cc2da783c');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 8dcaefaeb8884ba8 withdrawn 5f77a679d5fd","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"8dcaefaeb8884ba8"}', 'bbb568bab482c2ca2b1d2e9436f955d68460cae364c7e0ead47bdc2c72706354');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays bbc8d0b2c79b941e withdrawn 2d5a7f1fb976","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"bbc8d0b2c79b941e"}', 'd5359bf9ee012a81b93c16d7cb7833092900d46526976cc731bcea4055c6cc66');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"6867f5c142641f99","now":["stays 9f93020bf465d3dc moved 215d8988a5c8","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays 6867f5c142641f99 stored 99304e772846"],"stay":"9f93020bf465d3dc","to":"S013"}', '80c73609880b773e69aa9a60321256e0d144e4eb303a57112f3b7197cfc3c78d');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 5c87ad624650cd05 - 78df3a0fcba3"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"2d471e294f58701b"}', '0a8e39ec26abbff77eac196c263fe40b9b9ee02975054f83effc9b5162f11621');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 59630366f7badd0e - f353f7fd92a1"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"70fd5ab5c5ca03aa"}', 'cda6bc194008e349ede89a159c1a8a8d6a7f24a63da281f5db2a5bd4341d4878');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","now":["items 88bb5c18c05f22bd - a50cfca506a9","slots L013 on_item 417a81be4bcb","stays 5e6a85fcb46c89a2 stored f8e4e2507fea","items 526c65b07d164be0 - 9648555f9357","slots L014 on_item 26405b275a18","stays 5ec3de0083b0c7b7 stored 9cbaf5890a26"],"stay":"5e6a85fcb46c89a2","title":"Carbide lamp","turn":1}', '619721e533458db00dc468b6f72b1de20d554382158475305893d812be48264c');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stay":"5ec3de0083b0c7b7","title":"Rear lamp","turn":1}', 'f77b9119525dfdb4e2e6ebc8a3793bb9cbf74f6fcbda320932354572abb890d1');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411","stored":2}', '4bc2adc10cef2bf2271f0c6328adec5ab16b6c476155766b75e030a02b172897');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items d8eec012712098ac - 1f600d10f828"],"stay":"02247760d83fcf88","until":"2026-12-24T23:59:59+00:00"}', 'b5934c02120f3fd580be98ee83762604f1daf5155483724d0a8c717d7d65085a');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'out of its bin', 'boss', '{"code":"W011","now":["items 60c00e49407aab50 - 3d32624b1dfc"],"stay":"fc0bd32d2048d0a9"}', '86c229f0185e85b748f35beb4ec01e73a8e8cb2d248ce3d09c46594a4e4d727a');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '8fb49052683b25a3dd56a9bdbbe107eb2d0e6319f368b94d75964c5907d94328');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:35:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '163b70b5e145c3dfcdbe170748bf623bac92fc9d8c9dcf6c31e5084b3abf26cb');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:36:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', '664bdc41ebea20002b41e0e3909c77aaa571b736ef39263507441d2e8602e111');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:37:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '0c56f68ee54cb21ab23cd8211cdfd98dc54fa84bc261daa20ab65b4cb383eac2');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', 'dcf70945cea12c8b377a8ed90e25dac3e266c9b1998c50467bcc22f37961287b');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e329754b8fed1df1","reference":"W001-01E","stay":"7ee32848417c5895"},{"hold":null,"line":"6b58482353320375","reference":"W002-016","stay":"1408717979591272"}],"now":["orders b9ce7f2cd54f0272 - b533ee3427a8","lines e329754b8fed1df1 waiting 3028aa911d5e","lines 6b58482353320375 waiting c0c97dbdeaa4"],"number":"B-01","order":"b9ce7f2cd54f0272"}', 'b36b1fc552360d35874a3eca11f005cce9d062bc65dfc028308231573ec64196');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d5f1656cb09c5a7d","reference":"S002-013","stay":"ad35e4b1c32c05cd"},{"hold":null,"line":"d188039076fd9001","reference":"S003-01W","stay":"880b2594a0e5604d"}],"now":["orders 8916630eaab6be40 - 2b515a3e7c70","lines d5f1656cb09c5a7d waiting cdfe39fbc235","lines d188039076fd9001 waiting 56c79f082e47"],"number":"B-03","order":"8916630eaab6be40"}', '2b6882b6b4bbd71a9e186bac0573aaffc4c345f720aba737bd0caf47035717ef');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"22d536db0a92f998","reference":"S004-01O","stay":"e0cb1fcfe1dfbb7f"},{"hold":null,"line":"93c94e65f94feee8","reference":"S005-01G","stay":"6804d0ee96eaeec8"}],"now":["orders cd4e45a6b4456fba - 57aa1158cc2b","lines 22d536db0a92f998 waiting 369719795e74","lines 93c94e65f94feee8 waiting 7bff4f56b787"],"number":"B-04","order":"cd4e45a6b4456fba"}', '89b2960160335d4482f2bee77c9144a82dee701e83a30de1a85d0e069a7ed68b');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fae0350fbd5ebb2f","reference":"L002-017","stay":"a547d1d18538b02d"}],"now":["orders e9db16082a15eb24 - 5dcba3775174","lines fae0350fbd5ebb2f waiting e8d8a013088d"],"number":"B-05","order":"e9db16082a15eb24"}', '423dedcb875761a2e143ab05dcfd214285a3f19c55c10f5612610add9a335a44');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"b860f3d8134cd457","reference":"L003-010","stay":"edca802436ebf45f"}],"now":["orders 15b9cae46a846ff7 - 95be03250805","lines b860f3d8134cd457 waiting 71ed9ed3635e"],"number":"B-06","order":"15b9cae46a846ff7"}', 'd63babfcaf84c386cafd61168a6e1d5a90d7b5c508de579142d870c415d5c5f7');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"63916a4ef87aa97a","reference":"L004-01S","stay":"d6be5e081619409b"}],"now":["orders c3f66ac693ad89c9 - 4e670753258e","lines 63916a4ef87aa97a waiting c3409b509bd0"],"number":"B-07","order":"c3f66ac693ad89c9"}', '7512834463514af89c32bec046fb304c3a448b05bbf9af91cdf656ba873010dd');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6433470f11c1cffe","reference":"L005-01K","stay":"534a47553f4daa2f"}],"now":["orders 7e06d45fd73fe3ce - 5b5b86e62f38","lines 6433470f11c1cffe waiting a1edfb3420d3"],"number":"B-08","order":"7e06d45fd73fe3ce"}', '77f4c3cf50a30c2754f0895b7ed7860a35c356cd34147b8eda7ee6f692150b77');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f029bf0903cd2b80","reference":"L006-01C","stay":"e7aac6d6ea5a02ee"},{"hold":null,"line":"682dcb741c77ba5f","reference":"L011-010","stay":"eb25b9e47415613c"}],"now":["orders f64a132c6945db5b - 78ce842aaf8d","lines f029bf0903cd2b80 waiting 7e47e9633951","lines 682dcb741c77ba5f waiting a4b3cf898532"],"number":"B-09","order":"f64a132c6945db5b"}', 'e02a1ee3d3620950e0f65f717852bbd5bfd49baab4c8f9567e6e876dd3b2a9ff');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"9d3035fd08473517","reference":"S006-018","stay":"9ed21e79f64fab8f"}],"now":["orders 43f48b80b43c2c32 - d1125d6d773a","lines 9d3035fd08473517 waiting 04cd704f4ef6"],"number":"B-13","order":"43f48b80b43c2c32"}', 'ac41dc1df9ec2138812cf7ca72f499a94ecca89d6cbe4dba4ba6934b9e9a72a9');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"e9c0bdc6ca85d90b","reference":"L007-014","stay":"baba4a7652cb5a8a"}],"now":["orders a892ada2cba6e1c0 - 384281eb1f7a","lines e9c0bdc6ca85d90b waiting e290a6399d78"],"number":"B-17","order":"a892ada2cba6e1c0"}', '5381207dea0458d876c6d512eb64c10d3a7b4d09a84d3472e1a39aadcc917def');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d468f71ad367f35b","reference":"D009-01B","stay":"ea0398c2500312d7"}],"now":["orders 9037784980b262bb - 04f9198f75a5","lines d468f71ad367f35b waiting f1e4665273e1"],"number":"B-18","order":"9037784980b262bb"}', '7db3892d711af00c422bc226fea8a4ce56d66e20bf5ff38486dabe7fdc20263f');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4ce835af35198bf4","reference":"W006-013","stay":"0afb17f55be90936"}],"now":["orders 28b89bb32c983816 - a3e215ef4f92","lines 4ce835af35198bf4 waiting 0a5581b9a435"],"number":"B-21","order":"28b89bb32c983816"}', '9f208f9b4d135cf4aae94880e3ad8faaed25547f3a335244d166d04b853bd5ea');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"fce71c56ffdd6fa6","reference":"S007-01Z","stay":"1240f3e03f8bcf2f"}],"now":["orders f6ee0f48d3f8a2c5 - 3304e51af541","lines fce71c56ffdd6fa6 waiting 58d494d9964b"],"number":"B-22","order":"f6ee0f48d3f8a2c5"}', '8a7ba5cfe552850be772f1c15960eca8e9c56b6956c40db8406b709d267009bf');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"54fdbafc0f0f2799","reference":"W007-01W","stay":"d1f43c2e89c934c4"},{"hold":null,"line":"44601aa8c053e08d","reference":"W008-01O","stay":"5338f68e69e5df45"}],"now":["orders f92dc4a4c92e6e26 - 26d39aea06da","lines 54fdbafc0f0f2799 waiting e80dd5deb8c1","lines 44601aa8c053e08d waiting 08312909629c"],"number":"B-23","order":"f92dc4a4c92e6e26"}', 'bd114d717117e18432c9c52723cccff352e48056c79b1515a925d9b2b95c1572');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8b6ad01cf0addb9c","reference":"D008-01J","stay":"d7fd998367ac056e"}],"now":["orders 9d8385d60b23dc1d - 3dd5a2ddb988","lines 8b6ad01cf0addb9c waiting a62cba27ac2f"],"number":"B-26","order":"9d8385d60b23dc1d"}', 'f36cdc79e3f9de8aace0614722ac21092ff81511880962190d1871e97395de93');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"00f6ac2df71e6d4d","reference":"D003-01U","stay":"4284c708ca7efc99"}],"now":["orders b1da41c2e4f63b49 - 616c9bc8b3a3","lines 00f6ac2df71e6d4d waiting 6af816510fbd"],"number":"B-30","order":"b1da41c2e4f63b49"}', 'fc0e79b9a4a82e22c34ce996870d479bbaad3cfc2b03ea89f52d383ae58301ff');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"14199de50aa02f71","reference":"D005-01E","stay":"9c1c9e7dfecf2402"},{"hold":"unknown_code","line":"b1ba7d81550efff7","reference":"Z999","stay":null}],"now":["orders fbcaa031019003d2 - 44e437d654be","lines 14199de50aa02f71 waiting 03c575aea7d7","lines b1ba7d81550efff7 unbound 6a3c912f64fc"],"number":"B-31","order":"fbcaa031019003d2"}', '7b2b14c25e29f234a5e62e931ac056c122602aeca25603af16ced9479fd568dd');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"427bd639db7312c6","reference":"D006-016","stay":"e236f5f8e58999cf"},{"hold":null,"line":"db71c7a3d46ff5fd","reference":"D007-01R","stay":"7a3b29c9983b199e"}],"now":["orders ec09b76d09218d08 - 75393132d875","lines 427bd639db7312c6 waiting 0e455736715e","lines db71c7a3d46ff5fd waiting 64cacd43a01a"],"number":"B-32","order":"ec09b76d09218d08"}', '1c6e1056eceec663eeda4830056524605831c0545531f3177c8321bfb0ba1287');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"db71c7a3d46ff5fd","reference":"D007-01R","stay":"7a3b29c9983b199e"}],"now":["lines db71c7a3d46ff5fd waiting 10089e71ccbe"],"number":"B-32","order":"ec09b76d09218d08"}', 'bba268c1f96be959e755c712972606063797289951b19877e57c25e9dbc15afc');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"025c7339268815ee","reference":"lamp","stay":null}],"now":["orders 9ab7b89b0a9c1269 - 1b5ed8cd014d","lines 025c7339268815ee unbound b1eb884d9281"],"number":"B-33","order":"9ab7b89b0a9c1269"}', '78c397c32c3a174284f1f49ecfaa1ed09d339aa64e004e7f81fd4ea3bb1a450f');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"75b50a3bfbc604ed","reference":"D006-016","stay":null}],"now":["orders 24443e16d619b495 - bb8fec38c7fd","lines 75b50a3bfbc604ed unbound aaf381ec337b"],"number":"B-34","order":"24443e16d619b495"}', 'b9154ef5a28ea7e20e21831bbc56e22d13b3ba12cc8a95cd0abf17e9948dd1e7');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"dd97d5f7db416017","reference":"W004-01J","stay":null}],"now":["orders eacde10181d83508 - 5c3a0887671d","lines dd97d5f7db416017 unbound dcf49094b278"],"number":"B-35","order":"eacde10181d83508"}', '8c09f8308fe24f5739f9c4ce6cda15db8823b2c90ac94824becbef959da9459c');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"2087d3a28a112e48","reference":"L015","stay":null}],"now":["orders a330dc627a6f1dad - 10b72d6ecea4","lines 2087d3a28a112e48 unbound 70cc4583afcc"],"number":"B-36","order":"a330dc627a6f1dad"}', 'b8a2fb8f2196adea5111d9a9a85c7f67b36e07df3e303ad94992eacfd5900f36');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"f3f480681336659c","reference":"W005-01B","stay":"a743996ffd298647"}],"now":["orders 35cd7e88fbe58ed9 - 24f99d09706b","lines f3f480681336659c waiting 448a5cbc7ff8"],"number":"B-37","order":"35cd7e88fbe58ed9"}', 'e45a99a228433106d4a37a7c4f71aa7f16abc6fe1c4d32af9185045cc407831a');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"f3f480681336659c","now":["lines f3f480681336659c waiting a5411d7e3947"],"stay":"a743996ffd298647"}', 'c46092286dd1e83aff8af6d0915fa8f9a795f3f4ff69c87132698d054312d266');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:56:00.000000+00:00', 'doubted', 'boss', '{"doubt":"688fca5a02f4da62","doubt_kind":"not_this","item":"b6c89ee985b9f775","now":["doubts 688fca5a02f4da62 - 9dbf42179c43","lines e9c0bdc6ca85d90b waiting 01e153abb325"],"words":"Another lamp, by the photo"}', 'fbabd6b9ee1946539dffcf2f9e1b40802988a71f824e23a42a997ef952dc54d4');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'held', 'boss', '{"line":"e9c0bdc6ca85d90b","why":"Another lamp, by the photo"}', '3b041af4cbe06561b2019c320e6c3f26af7662944f2f9106039bd4f83fe07da4');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["6433470f11c1cffe"],"now":["lines 6433470f11c1cffe cancelled db287ab20e98"],"number":"B-08","order":"7e06d45fd73fe3ce"}', '961abc3b0b3a0198bdd869dd09199f9d564c0b937f5ecb7337e7abb7d3ce1e99');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'cancelled', 'boss', '{"lines":["4ce835af35198bf4"],"now":["lines 4ce835af35198bf4 cancelled 91a9663a78d7"],"number":"B-21","order":"28b89bb32c983816"}', '505632632288a834ea5777b0ed5936687eaac8c325608ce6c9654ad8904e7d75');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'revived', 'boss', '{"line":"4ce835af35198bf4","now":["lines 4ce835af35198bf4 waiting 0a5581b9a435"],"stay":"0afb17f55be90936"}', '19a841cb56968883411e5d476bb16c07a62e396daaebadb3753d352fcc516501');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"7e3c6b7629152224","now":["stays d7fd998367ac056e moved b36000959261","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 7e3c6b7629152224 stored 0a4d0ef1d92b","lines 8b6ad01cf0addb9c waiting c03faa44d527"],"stay":"d7fd998367ac056e","to":"D020"}', '9ff4b0496eeef6bed3056491d0a72930f3e34c895c49cf44cfcc85ac8744ecfc');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:11:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"6118a05c877de0da","reference":"L012-01S","stay":"999f5302f1c898fd"}],"note":"Rings at noon","now":["orders aeb14c297d2f7430 - b0cf366e79c2","lines 6118a05c877de0da waiting de620d9fce67"],"number":"Sale L012-01S","order":"aeb14c297d2f7430"}', 'c589197c870bfacd8eba9576f1aa3692407360026e4afb4d1f7e5e269a79a00f');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'channel changed', 'boss', '{"channel":"Fair","complete":true,"now":["channels Fair - f451aac823be"],"statuses":{"Gone":"sent","Not paid":"aside","Off":"cancelled","Paid":"pack"}}', '5df74b0b8eda29e55ae7a09d6352a835f3ceb5f57093c05a28010d05eec5f5d0');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":null,"line":"be179d9a5d75d0a7","reference":"S012-01O","stay":"0f08b93ca6b95bdf"}],"now":["orders 86979d68cac09bf3 - 963b31727c5b","lines be179d9a5d75d0a7 waiting 7cc6e553e37a","orders 956a3ab1809c0207 - 8b1f3773e27b","lines e4d6011640f21cbb unbound 409fa3a324e1"],"number":"F-1","order":"86979d68cac09bf3"}', '44293e4f00ea1179cd1419ae8e7547d0d262b3d47337c3f4e4da9246608480e7');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"bad_row","line":"e4d6011640f21cbb","reference":"","stay":null}],"now":["orders bc7992b321d5184e - f45c07625fc8","lines 52e87ba5eb280d94 unbound 9f1bdd0d8b12"],"number":"F-2","order":"956a3ab1809c0207"}', 'ea8c9197a0a6e3ac051b79f4973f08b7ea87b2bfa91fcbeacf954a5606c474db');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:20:00.000000+00:00', 'order received', 'boss', '{"channel":"Fair","lines":[{"hold":"unknown_code","line":"52e87ba5eb280d94","reference":"Q1","stay":null}],"now":["lines 52e87ba5eb280d94 unbound eff4d33d2773"],"number":"F-3","order":"bc7992b321d5184e"}', '586222559a4671dee623f6b069cb827dc183e07d759e2a6e07aa656880e98c70');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:20:00.000000+00:00', 'held', 'boss', '{"line":"52e87ba5eb280d94","now":["orders bc7992b321d5184e - fc3c4e96df7b"],"why":"Its channel says that it is not paid or not cleared yet."}', '22516bb67df3f9ed7ce6ff38f56e4738b5e36e86171f4accc9d9a05acb7a2988');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:20:00.000000+00:00', 'orders loaded', 'boss', '{"changed":0,"load":"06a6ac300e0061be016922b557f1169f969f58fd08f0961b5711fa15ec559fd7","loaded":3}', '034fceffab254c0b072fb8499f5cb03296ebeaa9b41da4cf8501fdf3e13ff4b7');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:25:00.000000+00:00', 'order cleared', 'boss', '{"lines":["52e87ba5eb280d94"],"now":["lines 52e87ba5eb280d94 unbound 9f1bdd0d8b12","orders bc7992b321d5184e - dfb709e1c140","changed_orders 5dd940f073825cf9 - 983a1f22279c"],"number":"F-3","order":"bc7992b321d5184e"}', 'b9886484a4fd42deee4ac016748779334baff8461a8cccc8948ae2f1c9083e60');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:25:00.000000+00:00', 'orders loaded', 'boss', '{"changed":1,"load":"c50310f0bf74a0bf2f857ced4e0a37a0d19a05c0148b8e989178d377a310835c","loaded":0,"now":["lines e4d6011640f21cbb unbound d43022adb5b0"]}', '0cb20b52de391c46321e7c1ac6324b63bae4943db2f3678b7b62e867302b6d7e');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:25:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"e4d6011640f21cbb","reference":"","stay":null}],"now":["changed_orders 7e6152106ca228a4 - 18913e3465f8"],"number":"F-2","order":"956a3ab1809c0207"}', '8928af662ecfc97a9ba6ffa9cbb1342561489a68d2bc0298b8fe08a94a401ed4');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:28:00.000000+00:00', 'round opened', 'boss', '{"lines":["e329754b8fed1df1","6b58482353320375","d5f1656cb09c5a7d","d188039076fd9001","22d536db0a92f998","93c94e65f94feee8","f029bf0903cd2b80","682dcb741c77ba5f","9d3035fd08473517","fce71c56ffdd6fa6","54fdbafc0f0f2799","44601aa8c053e08d"],"now":["rounds 6ef734f8ba3424e8 open 4ea50ab79a46","lines d5f1656cb09c5a7d waiting 761b901cd0e7","lines d188039076fd9001 waiting a5dc8fe33f09","lines 22d536db0a92f998 waiting 457d4ce0742c","lines 93c94e65f94feee8 waiting 7c7110c890f5","lines 9d3035fd08473517 waiting 20d3f951aebb","lines fce71c56ffdd6fa6 waiting 546b3ec513e9","lines e329754b8fed1df1 waiting fd8385572c52","lines 6b58482353320375 waiting 7523d579580f","lines 54fdbafc0f0f2799 waiting 14a55813da79","lines 44601aa8c053e08d waiting fa96dd2e7354","lines f029bf0903cd2b80 waiting ee9f58fb1b11","lines 682dcb741c77ba5f waiting c206b1b729ee"],"round":"6ef734f8ba3424e8"}', 'd5ce56c05517252e891250bccef6f4add49f7e3208450a230a29e1e74cc5fe37');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:16:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 42ce78ea54e3b78f open a965a3ddaafa","orders b9ce7f2cd54f0272 - 7c8842d72bb1"],"orders":["b9ce7f2cd54f0272"],"parcel":"42ce78ea54e3b78f","table":"main"}', '3c936ff114d796c9e52e6784dd9649d2137de349506c8f118fd27be03cd919a5');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:31:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 819a6f0cf6af","scans free-D004 - 42bdaf421834"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', 'd6b47f47018abb77c70cabfa672397a287991a26ef5ee7d368b1eb08e7027a5b');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:34:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"e329754b8fed1df1","line_state":"picked","now":["slots W001 on_item 453fe2f65637","lines e329754b8fed1df1 picked 3fe4c1952e9d","scans pick-W001 - 872233f61bbc"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '5afc1fe90acb19b81db597bf9886b24e26a57b9170e3a4737a167832a939ffde');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:37:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"6b58482353320375","line_state":"picked","now":["slots W002 on_item a0dd946382bd","lines 6b58482353320375 picked d9877b35883b","scans pick-W002 - c10af814e841"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'eddb44465371d8e3a5bf9957f768e89633002ca2ffae1d94367bf96640b101f5');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:40:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"d5f1656cb09c5a7d","line_state":"picked","now":["slots S002 on_item f8376aa3fa66","lines d5f1656cb09c5a7d picked 8fa43f6de46c","scans pick-S002 - 7240d643a6d1"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '4bc0ec1a900c94a39c2878f91106d98a47cbd473bf4387560ebd5c1b334fbd92');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:43:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"d188039076fd9001","line_state":"picked","now":["slots S003 on_item daf1748b3d0b","lines d188039076fd9001 picked 8308d6d55599","scans pick-S003 - cfa93d5cbca6"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', '1670fb1549c1a7a5b893f8fbd0fd8f5eb688f583f96d20422700ff7dc3b2cf55');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:46:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"22d536db0a92f998","line_state":"picked","now":["slots S004 on_item d5c66e9077d0","lines 22d536db0a92f998 picked ebd869344594","scans pick-S004 - f081ab34f142"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'ca63d623530c3c8dd0e9163587c4afffdf866cebec5257cd603da7ede8487c80');
INSERT INTO public.ledger VALUES (127, '2026-03-02T13:49:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"93c94e65f94feee8","line_state":"picked","now":["slots S005 on_item cba60149dd88","lines 93c94e65f94feee8 picked bc93590a5cbf","scans pick-S005 - a2787f249867"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '9fec2a2ca190dd24585291be106b06c4069c0cece97b2fff506b72e75dd546fa');
INSERT INTO public.ledger VALUES (128, '2026-03-02T13:52:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"f029bf0903cd2b80","line_state":"picked","now":["slots L006 on_item 895a269eac64","lines f029bf0903cd2b80 picked 22f51e4f4298","scans pick-L006 - fd9e793a6d40"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'c0c7dc1293aa10410e2163e79f3d8ba541535484c77a4d18c1196bde3b21ddcf');
INSERT INTO public.ledger VALUES (129, '2026-03-02T13:55:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"682dcb741c77ba5f","line_state":"picked","now":["slots L011 on_item d6e682f54ec9","lines 682dcb741c77ba5f picked 30e9f7c8f15c","scans pick-L011 - 62c5e973f192"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '2ac134b352ee88870ff65743d7ec3dd6c54e603c68deac13c0b71c9a9cf5573c');
INSERT INTO public.ledger VALUES (130, '2026-03-02T13:58:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"9d3035fd08473517","line_state":"picked","now":["slots S006 on_item 8f39005bd7ce","lines 9d3035fd08473517 picked e8b25db84135","scans pick-S006 - d8aab6a4d3ee"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '32a849df3b5cb822f4c2ae9eeba9f9602f73990d4b1390f6a32de842d6abb98d');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:01:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"fce71c56ffdd6fa6","line_state":"picked","now":["slots S007 on_item 00bc7244b24b","lines fce71c56ffdd6fa6 picked 823426926794","scans pick-S007 - 066c211c196c"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '77e287bfc3968d2347ca434d0a1ae8f0e4e6acaf3220c974f3599f51258eaa54');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:04:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"54fdbafc0f0f2799","line_state":"picked","now":["slots W007 on_item c11a068a18a3","lines 54fdbafc0f0f2799 picked 118eff81447e","scans pick-W007 - 44cbcb7fa747"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '1cae5419ea2bbc6c653cc33148ae6d0b6948d197a05afe52f40cf0f6de684d39');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:07:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"44601aa8c053e08d","line_state":"picked","now":["slots W008 on_item 51627c2981f2","lines 44601aa8c053e08d picked c98e37dee5ea","scans pick-W008 - 0db2e4539506"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6ef734f8ba3424e8","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '7e0a348c533dad828f0607b3b405b7343fdcd657e90d54509100d1f9629db4cc');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:10:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"44601aa8c053e08d","line_state":"waiting","now":["lines 44601aa8c053e08d waiting fa96dd2e7354","slots W008 on_item a4ac1c9f5667"]}', 'f4e3d42e8d280b2da1f1ff2206754b71666f7c644ee7eb3b19d4f591c21b534e');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:13:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds 6ef734f8ba3424e8 closed f1275ec54aac"],"round":"6ef734f8ba3424e8"}', '25020ea33f459d757e6cf7a2aa13b008b63488c3f5a847b51bc8f16f25e1221b');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:19:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"d5f1656cb09c5a7d","line_state":"picked","now":["slots S002 on_item 0f2500cabd80","scans other-S002 - f156410fa19a"],"order_number":"B-03","parcel":"42ce78ea54e3b78f","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '0a258231918f73e34c890c4bf9af90574bf59782a6ee4bdc7e3ccc7325b96767');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:22:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"e329754b8fed1df1","line_state":"packed","now":["lines e329754b8fed1df1 packed a269e6a4b275","slots W001 on_item d6e2034b16c8","scans pack-W001 - cf856b6996a3"],"order_number":"B-01","parcel":"42ce78ea54e3b78f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '405cd288aab774a66e08511cdd6b5bc428c1bd40507f13df5422014208bb6be6');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 6b58482353320375 released 5189ad28afff","slots W002 due b4b53c82f9e6","lines e329754b8fed1df1 released 111614e93cfd","stays 7ee32848417c5895 shipped bfaa27717570","slots W001 due ad45f4c65ba3","stays 1408717979591272 shipped d4ad7173b53d","parcels 42ce78ea54e3b78f closed afad2c1fa0fc","orders b9ce7f2cd54f0272 - b533ee3427a8","scans pack-W002 - 15f9940417df"],"orders":["b9ce7f2cd54f0272"],"parcel":"42ce78ea54e3b78f","released":["W001","W002"]}', '3d74aa2cb13c185732cf8363c3bc158c9ed5cbed86a91b21aeafae7a5eca0f3d');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:25:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"6b58482353320375","line_state":"released","order_number":"B-01","parcel":"42ce78ea54e3b78f","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '69216958ae7fccf7f95088882f76a0c05b3a4f464ad6d816e3b6d6169eba11b5');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:28:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"e329754b8fed1df1","line_state":"released","now":["slots W001 tray a567bff268d9","scans back-W001 - 8cc1bec1c129"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '6b41cfd89deb4f714c9e227f832086720fe820dd8e79fdb8b74f7a87a9926694');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:31:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items 136feb57a228fdeb - c17670fe9332","slots W001 on_item 4bac4e5a272f","stays 143f1535e5a359cd stored 8a101b735694"],"stay":"143f1535e5a359cd","title":"Rear wheel","turn":2}', 'ea59f4e49cda8fa6c205600e639cf5e2db2a75b7efe655e01c8ce7371ecd2203');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:35:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 702997f49ab8"],"parcel":"42ce78ea54e3b78f"}', '7b8aa34df4d4adaaec039f63805e99851b16a5b0d4d6f30579442d0e1f24b249');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:38:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 6295b1c2e268a2aa open 519f07418b4c","orders f92dc4a4c92e6e26 - a1e38bf2bb98"],"orders":["f92dc4a4c92e6e26"],"parcel":"6295b1c2e268a2aa","table":"main"}', 'b4a76f4b4f6bb356444a697cb134eac2d50ecee049e07dc184f008a60232049b');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"54fdbafc0f0f2799","line_state":"packed","now":["lines 54fdbafc0f0f2799 packed e99390572605","slots W007 on_item de5c87a1e0e2","scans pack-W007 - c644324eac2f"],"order_number":"B-23","parcel":"6295b1c2e268a2aa","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'a629f122ad8c53e704470c6ebd05e8cfda8c0572a2e0656e3ac8249e3f3f1558');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:44:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 54fdbafc0f0f2799 released 2bd12f1d455e","stays d1f43c2e89c934c4 shipped 8bdd60a4c605","slots W007 due 7a5f5df84d6e","parcels 6295b1c2e268a2aa closed 427ad0964563","orders f92dc4a4c92e6e26 - 26d39aea06da"],"orders":["f92dc4a4c92e6e26"],"parcel":"6295b1c2e268a2aa","released":["W007"]}', '2209996bc8a79e61eb401aa80ef070cf0e1e0e2fa05af3439b7323bf828c2811');
INSERT INTO public.ledger VALUES (147, '2026-03-02T14:47:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines 54fdbafc0f0f2799 packed acd4810b3832","stays d1f43c2e89c934c4 stored 096bd5f01265","slots W007 on_item 4e95e60981d9","parcels 6295b1c2e268a2aa open 367c1377d620","orders f92dc4a4c92e6e26 - a1e38bf2bb98"],"orders":["f92dc4a4c92e6e26"],"parcel":"6295b1c2e268a2aa"}', '693ee7765ddb1052120d3831fd6ec493a43f4a67295ce9c369589d0a84a3a965');
INSERT INTO public.ledger VALUES (148, '2026-03-02T14:50:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 54fdbafc0f0f2799 released 2bd12f1d455e","stays d1f43c2e89c934c4 shipped 775a12445696","slots W007 due 7a5f5df84d6e","parcels 6295b1c2e268a2aa closed 519df5e24272","orders f92dc4a4c92e6e26 - 26d39aea06da"],"orders":["f92dc4a4c92e6e26"],"parcel":"6295b1c2e268a2aa","released":["W007"]}', '934f6ad9b2458a1c2a48231ea666a26e248aaec19eefe775fda355d0ad59f206');
INSERT INTO public.ledger VALUES (149, '2026-03-02T14:53:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels d8a20a8a2c780b5f open b390532b7b95","orders f6ee0f48d3f8a2c5 - bf01a206db65"],"orders":["f6ee0f48d3f8a2c5"],"parcel":"d8a20a8a2c780b5f","table":"main"}', 'a2dbe6554ec850997c267feb0607fdc3be94df1fe4d56fdb111688d18dea9964');
INSERT INTO public.ledger VALUES (150, '2026-03-02T14:56:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels d8a20a8a2c780b5f dropped aa8fc58c0b4a","orders f6ee0f48d3f8a2c5 - 3304e51af541"],"parcel":"d8a20a8a2c780b5f"}', '215662361d10943fffa9a4e0182615a8c446ec95889409194a644685a13ce6a2');
INSERT INTO public.ledger VALUES (151, '2026-03-02T14:59:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 04d417deeddb0961 open 04724f5a0cab","orders cd4e45a6b4456fba - 1d655b16ec4b"],"orders":["cd4e45a6b4456fba"],"parcel":"04d417deeddb0961","table":"main"}', '2ca2cc7e254656dc692a749bfba9da599a78a0972b6c8f2a250fa748c8264a12');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:02:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"22d536db0a92f998","line_state":"packed","now":["lines 22d536db0a92f998 packed 10f1113553ba","slots S004 on_item dcd274bba892","scans pack-S004 - acda30f36810"],"order_number":"B-04","parcel":"04d417deeddb0961","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '817989e428b48d04082b33014084de57967aeaf5a9f7904ab8b1a948830c49ac');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:05:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels 04d417deeddb0961 aside 06408a908077"],"parcel":"04d417deeddb0961"}', '22dd878849ce6a20869b71d9d41d7989a128599a1d6986fbe95475c43e25eaa5');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:08:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 4be581246c2a4dac open f41b38ac2b8b","orders f64a132c6945db5b - 539ef01c1ea9"],"orders":["f64a132c6945db5b"],"parcel":"4be581246c2a4dac","table":"second"}', '9f7e8f95937d992ad4bcd83244483e555c67fea8c65956bb78155cadefd1e1e6');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"f029bf0903cd2b80","line_state":"packed","now":["lines f029bf0903cd2b80 packed b71ba94b677d","slots L006 on_item 897cdbc2de3c","scans pack-L006 - b07d471146f5"],"order_number":"B-09","parcel":"4be581246c2a4dac","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'c1708d14a7f283791fbb207a945f49709f6b2b59468e0f294a07ac4c9753dd2b');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:14:00.000000+00:00', 'cancelled', 'boss', '{"lines":["f029bf0903cd2b80","682dcb741c77ba5f"],"now":["lines f029bf0903cd2b80 packed 6b33ad92170e","lines 682dcb741c77ba5f cancelled d4eea3951fb6"],"number":"B-09","order":"f64a132c6945db5b"}', '8e9397e28f64a6ba6df4887518a3ddae53cac7f1b78ffcd78837a75448179a19');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:17:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels f0998e23e29fe378 open d43ca9910c41","orders 8916630eaab6be40 - 8d272b6322da"],"orders":["8916630eaab6be40"],"parcel":"f0998e23e29fe378","table":"main"}', '486d71e767fcbca832702cdb056af7ed9b985af2443f00d0c717d8613e25d8bb');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"d5f1656cb09c5a7d","line_state":"packed","now":["lines d5f1656cb09c5a7d packed 8715b39a6b17","slots S002 on_item 4718d6667a72","scans pack-S002 - c88db76bafcf"],"order_number":"B-03","parcel":"f0998e23e29fe378","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '9f9b66345a1d8de4222ecc63e5d49db87dc36abdce5225d4105cd6b1f4f6202e');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:23:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"9d3035fd08473517","reference":"S006-018","stay":"9ed21e79f64fab8f"}],"now":["lines 9d3035fd08473517 picked c265781fa80c"],"number":"B-13","order":"43f48b80b43c2c32"}', '09644083fa9acb99d2731b8d9fa34e3ad84451a60ea80c3faa917649c95f9002');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:26:00.000000+00:00', 'round opened', 'boss', '{"lines":["fae0350fbd5ebb2f","b860f3d8134cd457","63916a4ef87aa97a","8b6ad01cf0addb9c"],"now":["rounds 67b0f3722f4ee39b open 436ba088b7c6","lines 8b6ad01cf0addb9c waiting 0338e85108f4","lines fae0350fbd5ebb2f waiting 75fe3a9d2bfa","lines b860f3d8134cd457 waiting ff387bc853d5","lines 63916a4ef87aa97a waiting cf527b1a71c0"],"round":"67b0f3722f4ee39b"}', '42e0e4981a4fd929336587e0859c4ccf5662a6517554489f626a172c1202b0af');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"fae0350fbd5ebb2f","line_state":"picked","now":["slots L002 on_item b4aef9991453","lines fae0350fbd5ebb2f picked d898e31cf9c7","scans pick-L002 - cadb523fee78"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"67b0f3722f4ee39b","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', '65f18e418de3b26b179c45f1b54935dfe963c382874056d49defddedd67bdbf8');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:32:00.000000+00:00', 'short', 'boss', '{"line":"63916a4ef87aa97a","note":"Not in its bin","now":["lines 63916a4ef87aa97a short 19d7f9d79215","doubts cbc3d550ec34f684 - 5d7aa8cb2185"]}', '43e06bc0fb0e4e8c9ca89349dc371409862ff68422e85710ffaed17cdaab48e3');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:32:00.000000+00:00', 'doubted', 'boss', '{"doubt":"cbc3d550ec34f684","doubt_kind":"missing","item":"68087d5f64269815","words":"Not in its bin"}', 'f182d332561e2762e5c82efdd05646bdea44a94f4a594f38de4b49bf3ff89657');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 77aba27f00df"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"67b0f3722f4ee39b","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'fc14b496f379090b3d1b6c56197b7f6bf8e6c59fa0fc3ba35ddefe5fdcb6c91f');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 95e26c43505f"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"67b0f3722f4ee39b","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'eca548a59498e07a041a277945be331fcf9694a720b9c92568963f6807a97912');
INSERT INTO public.ledger VALUES (166, '2026-03-02T15:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 994671a6a72f"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"67b0f3722f4ee39b","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '61f3f591a39c437fb1e337086c9a20cb6c68b7c1461d5a033e4cbe4ab3c8d739');
INSERT INTO public.ledger VALUES (167, '2026-03-02T15:44:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'e7c0d869a690cf819fcb0cc77a5376aa757d3a541a44374713a4a60f4cec7eee');
INSERT INTO public.ledger VALUES (168, '2026-03-02T15:47:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', 'fdbb5bb7f94f23a4803380f510900680fb096ac64562eaecdc80fd6b04bcec37');
INSERT INTO public.ledger VALUES (169, '2026-03-02T15:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"f18a9a0ec60665ae","reference":"D001-019","stay":"2d471e294f58701b"},{"hold":"already_sold","line":"19418921bd9b6d7b","reference":"W002-016","stay":null}],"now":["orders de70a5dc344e569c - 40f4164c3cc1","lines f18a9a0ec60665ae waiting d7d476636c2b","lines 19418921bd9b6d7b unbound a85f0d4332df"],"number":"B-38","order":"de70a5dc344e569c"}', '7fed8284e4006a8f98feecaf0eb10567a5eb2197b7d5ef358940e5a32154681b');
INSERT INTO public.ledger VALUES (170, '2026-03-02T15:53:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"d5c7a3d246219c8a","reference":"W001","stay":null}],"now":["orders 3c3c1339a84f9258 - e46355ef6fdd","lines d5c7a3d246219c8a unbound 7c4c7a7ddcdf"],"number":"B-39","order":"3c3c1339a84f9258"}', 'be79cc69bc6d727ae2d2dbea4f0f9f07e8852d8a7a518cf42b7315c58c7b4075');
INSERT INTO public.ledger VALUES (171, '2026-03-02T15:56:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 82455cacb9cdd344 open 015b590079a5"],"stocktake":"82455cacb9cdd344"}', 'd8590a82ae630bc89c561165b03fc30d763d34523b9b3f64a4572c4e659431b8');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:03:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - 008e9bd0df0b","slots S001 on_item 2aa8425c31dd","doubts 28370a4fe424dd6c - b8bcda3fb2ed"],"photo":null,"place":"B-1-1","stocktake":"82455cacb9cdd344","unread":0}', 'd4d2ad47a504c1d8be416bdd4869286843ede46780e02b0528986af78a113f46');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:03:00.000000+00:00', 'doubted', 'boss', '{"doubt":"28370a4fe424dd6c","doubt_kind":"not_this","item":"59630366f7badd0e","now":["slots S003 on_item 60bb0b2e0c29","slots S012 on_item 52d5ffb8a5de","slots D010 on_item 38ebda708175"],"words":"A count found another thing on its card in B-1-1."}', '8f5d7d61e7587c41f493c9cac04ea8df55185c18e5d42daef76f05e468c7e721');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:11:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - 0be1826167ef","slots S011 on_item 5164fd23ff05","slots S013 on_item b849074bb660"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"82455cacb9cdd344","unread":0}', 'c8d596ae86c030c0c78082a5a0a8a961c0717a93671d15fdbfd86d90753d58bd');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:17:00.000000+00:00', 'finding resolved', 'boss', '{"after":174,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item c69f33285aa7","resolutions 82455cacb9cdd344.elsewhere-S012 - ae870cef74da"],"reason":"","stocktake":"82455cacb9cdd344","sure":false}', '530a0f9c2b52a91547103f4228241cf8c339d2570a55b1bf19f3229e1ce8cc4d');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:20:00.000000+00:00', 'finding resolved', 'boss', '{"after":175,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 82455cacb9cdd344.unknown-Q0771 - 43d90d9ffac3"],"reason":"A neighbour''s","stocktake":"82455cacb9cdd344","sure":false}', '7662732498f63b4ff1790af56d12c01413795bd0a83450c3824c942a2d94a3e6');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:23:00.000000+00:00', 'finding resolved', 'boss', '{"after":176,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 1194e5fe5bb3","resolutions 82455cacb9cdd344.missing-S008 - 5d1b912e35c9"],"reason":"","stocktake":"82455cacb9cdd344","sure":false}', '0dd993c0a976287be0ea52610c337a9ac7cdd704e2af1844922274e3f563fcfa');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:26:00.000000+00:00', 'finding reopened', 'boss', '{"after":177,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 82455cacb9cdd344.missing-S008 - -"],"stocktake":"82455cacb9cdd344"}', '5876a08393763a5b0ca8fe5c57277c25eef6e54585ac00d0666871678c546075');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:29:00.000000+00:00', 'doubted', 'boss', '{"doubt":"c5dd5973938acefa","doubt_kind":"missing","item":"fefa07134b00fe11","now":["doubts c5dd5973938acefa - e6698857ae8f","stocktakes 82455cacb9cdd344 closed 2e4b899581f2"],"words":"a count of section:S did not find it"}', '73988ac55699db07fb4990da3ac06d541825a1d66544669538670012b519de03');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:29:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"82455cacb9cdd344"}', '65e9cf804170c57edd37d82d4f896cf24317884df421733df8894f2f88f8bc11');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:32:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 7a80639af02f0c09 open 88f736ff4963"],"stocktake":"7a80639af02f0c09"}', '592728094ba3d30f927f72dac26f4b688eef0e9271d0d3757780b10c59e58973');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:39:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - fb6f1519ec84","slots L003 on_item 7fdefe3be604","slots L004 on_item 22c5f46a196d","slots L005 on_item 1d838f2c9e23","slots L007 on_item 0a23cb6e0389"],"photo":null,"place":"C-1-1","stocktake":"7a80639af02f0c09","unread":0}', 'af07fc8d3fa57e1ff9eaa245d99ef79b20a266f5f8136d8c9a26f9fb1777085d');
INSERT INTO public.ledger VALUES (183, '2026-03-02T16:42:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts ceb9755b1eb74179 - 5afcb9544cf6"]}', '245fc7c9e060e5018cf05b2d8dd30ed15d4b2e06e5e8fa73e3daf23ffeeebfde');
INSERT INTO public.ledger VALUES (184, '2026-03-02T16:42:00.000000+00:00', 'doubted', 'boss', '{"doubt":"ceb9755b1eb74179","doubt_kind":"missing","item":"9c06c4461a16bf95","now":["resolutions 7a80639af02f0c09.missing-L008 - 4dd12674438d"],"words":"a count did not find it"}', 'ee064d4bdc377e7f2b8edcdf221c9d3dc3e46f9e5915d98997ffa2d4fd3cc525');
INSERT INTO public.ledger VALUES (185, '2026-03-02T16:42:00.000000+00:00', 'finding resolved', 'boss', '{"after":182,"finding":"missing-L008","how":"lost","reason":"","stocktake":"7a80639af02f0c09","sure":false}', '61743d399164c2597dba1ebf777f02c95752d15c64db843e891ec32a0031bddd');
INSERT INTO public.ledger VALUES (186, '2026-03-02T16:45:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 2f6041a9714fdb72 withdrawn 38325e0c052d","slots L009 due 821cc144d722","resolutions 7a80639af02f0c09.missing-L009 - 2857c4692d22"],"reason":"Nowhere to be found","stay":"2f6041a9714fdb72"}', '223fae51b3234762c5cfeb79a00c8cff7b74391b3aaa653093f685713b9abe7a');
INSERT INTO public.ledger VALUES (187, '2026-03-02T16:45:00.000000+00:00', 'finding resolved', 'boss', '{"after":185,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"7a80639af02f0c09","sure":false}', 'fbad220c409ac2b6e5ce3c4d0b0d043f1058f32475dd35f6a6df4e829596f628');
INSERT INTO public.ledger VALUES (188, '2026-03-02T16:48:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes da559851daac2457 open a631b682ccb2"],"sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"da559851daac2457"}', '954e2d47f77500824466a61c4a66e5a7bae121787687f6365cb823a40e57bb8c');
INSERT INTO public.ledger VALUES (189, '2026-03-02T16:51:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes f98a3b651c30ca8d open 25c3c7f51067"],"stocktake":"f98a3b651c30ca8d"}', 'c9bd235b33350ef65c4e538dd10f0c2309afb2bdeb00dcc6bb87158c7f409374');
INSERT INTO public.ledger VALUES (190, '2026-03-02T16:54:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes f98a3b651c30ca8d cancelled f035b0b46aa5"],"stocktake":"f98a3b651c30ca8d"}', 'c358568974b314fcefa431b7f7c67bfbc8aa52150a5b623840a1c8a3fa783632');
INSERT INTO public.lines VALUES (15, 'd468f71ad367f35b', '9037784980b262bb', 1, 'D009-01B', 'Rear derailleur 9', '', 'ea0398c2500312d7', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '00f6ac2df71e6d4d', 'b1da41c2e4f63b49', 1, 'D003-01U', 'Bell with a crown', '', '4284c708ca7efc99', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '14199de50aa02f71', 'fbcaa031019003d2', 1, 'D005-01E', 'Rear derailleur 5', '', '9c1c9e7dfecf2402', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, 'b1ba7d81550efff7', 'fbcaa031019003d2', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, '427bd639db7312c6', 'ec09b76d09218d08', 1, 'D006-016', 'Rear derailleur 6', '', 'e236f5f8e58999cf', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'db71c7a3d46ff5fd', 'ec09b76d09218d08', 2, 'D007-01R', 'Rear derailleur 7', '', '7a3b29c9983b199e', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '025c7339268815ee', '9ab7b89b0a9c1269', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '75b50a3bfbc604ed', '24443e16d619b495', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, 'dd97d5f7db416017', 'eacde10181d83508', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '2087d3a28a112e48', 'a330dc627a6f1dad', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'f3f480681336659c', '35cd7e88fbe58ed9', 1, 'W005-01B', 'Bell with a crown', '', 'a743996ffd298647', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'e9c0bdc6ca85d90b', 'a892ada2cba6e1c0', 1, 'L007-014', 'Dynamo lamp 7', '', 'baba4a7652cb5a8a', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '6433470f11c1cffe', '7e06d45fd73fe3ce', 1, 'L005-01K', 'Dynamo lamp 5', '', '534a47553f4daa2f', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '4ce835af35198bf4', '28b89bb32c983816', 1, 'W006-013', 'Front wheel 6', '', '0afb17f55be90936', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, '6118a05c877de0da', 'aeb14c297d2f7430', 1, 'L012-01S', 'Dynamo lamp 12', '', '999f5302f1c898fd', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, 'be179d9a5d75d0a7', '86979d68cac09bf3', 1, 'S012-01O', '', '', '0f08b93ca6b95bdf', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '52e87ba5eb280d94', 'bc7992b321d5184e', 1, 'Q1', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (33, 'e4d6011640f21cbb', '956a3ab1809c0207', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The newest file of Fair does not have order F-2."], ["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (19, '44601aa8c053e08d', 'f92dc4a4c92e6e26', 2, 'W008-01O', 'Front wheel 8', '', '5338f68e69e5df45', 'waiting', NULL, '6ef734f8ba3424e8', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (1, 'e329754b8fed1df1', 'b9ce7f2cd54f0272', 1, 'W001-01E', 'Front wheel 1', '', '7ee32848417c5895', 'released', '42ce78ea54e3b78f', '6ef734f8ba3424e8', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '6b58482353320375', 'b9ce7f2cd54f0272', 2, 'W002-016', 'Front wheel 2', '', '1408717979591272', 'released', '42ce78ea54e3b78f', '6ef734f8ba3424e8', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, '54fdbafc0f0f2799', 'f92dc4a4c92e6e26', 1, 'W007-01W', 'Front wheel 7', '', 'd1f43c2e89c934c4', 'released', '6295b1c2e268a2aa', '6ef734f8ba3424e8', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '22d536db0a92f998', 'cd4e45a6b4456fba', 1, 'S004-01O', 'Leather saddle 4', '', 'e0cb1fcfe1dfbb7f', 'packed', '04d417deeddb0961', '6ef734f8ba3424e8', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (4, 'd188039076fd9001', '8916630eaab6be40', 2, 'S003-01W', 'Leather saddle 3', '', '880b2594a0e5604d', 'picked', NULL, '6ef734f8ba3424e8', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (6, '93c94e65f94feee8', 'cd4e45a6b4456fba', 2, 'S005-01G', 'Leather saddle 5', '', '6804d0ee96eaeec8', 'picked', NULL, '6ef734f8ba3424e8', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, 'fce71c56ffdd6fa6', 'f6ee0f48d3f8a2c5', 1, 'S007-01Z', 'Leather saddle 7', '', '1240f3e03f8bcf2f', 'picked', NULL, '6ef734f8ba3424e8', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (11, 'f029bf0903cd2b80', 'f64a132c6945db5b', 1, 'L006-01C', 'Dynamo lamp 6', '', 'e7aac6d6ea5a02ee', 'packed', '4be581246c2a4dac', '6ef734f8ba3424e8', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '682dcb741c77ba5f', 'f64a132c6945db5b', 2, 'L011-010', 'Dynamo lamp 11', '', 'eb25b9e47415613c', 'cancelled', NULL, '6ef734f8ba3424e8', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'd5f1656cb09c5a7d', '8916630eaab6be40', 1, 'S002-013', 'Leather saddle 2', '', 'ad35e4b1c32c05cd', 'packed', 'f0998e23e29fe378', '6ef734f8ba3424e8', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '9d3035fd08473517', '43f48b80b43c2c32', 1, 'S006-018', 'Saddle with springs', '', '9ed21e79f64fab8f', 'picked', NULL, '6ef734f8ba3424e8', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '8b6ad01cf0addb9c', '9d8385d60b23dc1d', 1, 'D008-01J', 'Rear derailleur 8', '', '7e3c6b7629152224', 'waiting', NULL, '67b0f3722f4ee39b', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (37, 'd5c7a3d246219c8a', '3c3c1339a84f9258', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (8, 'b860f3d8134cd457', '15b9cae46a846ff7', 1, 'L003-010', 'Dynamo lamp 3', '', 'edca802436ebf45f', 'waiting', NULL, '67b0f3722f4ee39b', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, 'fae0350fbd5ebb2f', 'e9db16082a15eb24', 1, 'L002-017', 'Dynamo lamp 2', '', 'a547d1d18538b02d', 'picked', NULL, '67b0f3722f4ee39b', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '63916a4ef87aa97a', 'c3f66ac693ad89c9', 1, 'L004-01S', 'Dynamo lamp 4', '', 'd6be5e081619409b', 'short', NULL, '67b0f3722f4ee39b', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'f18a9a0ec60665ae', 'de70a5dc344e569c', 1, 'D001-019', 'Rear derailleur 1', '', '2d471e294f58701b', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (36, '19418921bd9b6d7b', 'de70a5dc344e569c', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '82455cacb9cdd344', 'B-1-1', '2026-03-02T16:03:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '82455cacb9cdd344', 'B-1-2', '2026-03-02T16:11:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '7a80639af02f0c09', 'C-1-1', '2026-03-02T16:39:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '8a0e3e73844d2affb4d4302b7a2c420a4abdabf30c0925fcf6bbdc038bb73919', '{"columns": {"number": "Order", "reference": "SKU", "status": "Status"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'e9db16082a15eb24', 'B-05', 'fair', '2026-03-02T11:50:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (5, '15b9cae46a846ff7', 'B-06', 'fair', '2026-03-02T11:53:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (6, 'c3f66ac693ad89c9', 'B-07', 'fair', '2026-03-02T11:56:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (7, '7e06d45fd73fe3ce', 'B-08', 'fair', '2026-03-02T11:59:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (9, '43f48b80b43c2c32', 'B-13', 'fair', '2026-03-02T12:05:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (10, 'a892ada2cba6e1c0', 'B-17', 'fair', '2026-03-02T12:08:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (11, '9037784980b262bb', 'B-18', 'fair', '2026-03-02T12:11:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (12, '28b89bb32c983816', 'B-21', 'fair', '2026-03-02T12:14:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (15, '9d8385d60b23dc1d', 'B-26', 'fair', '2026-03-02T12:23:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (16, 'b1da41c2e4f63b49', 'B-30', 'fair', '2026-03-02T12:26:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (17, 'fbcaa031019003d2', 'B-31', 'fair', '2026-03-02T12:29:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (18, 'ec09b76d09218d08', 'B-32', 'fair', '2026-03-02T12:32:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (19, '9ab7b89b0a9c1269', 'B-33', 'fair', '2026-03-02T12:38:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (20, '24443e16d619b495', 'B-34', 'fair', '2026-03-02T12:41:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (21, 'eacde10181d83508', 'B-35', 'fair', '2026-03-02T12:44:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (22, 'a330dc627a6f1dad', 'B-36', 'fair', '2026-03-02T12:47:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (23, '35cd7e88fbe58ed9', 'B-37', 'fair', '2026-03-02T12:50:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (24, 'aeb14c297d2f7430', 'Sale L012-01S', '', '2026-03-02T13:11:00.000000+00:00', 24, '2026-03-02T13:11:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true, '', NULL);
INSERT INTO public.orders VALUES (25, '86979d68cac09bf3', 'F-1', 'Fair', '2026-03-02T13:20:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false, 'pack', '06a6ac300e0061be016922b557f1169f969f58fd08f0961b5711fa15ec559fd7');
INSERT INTO public.orders VALUES (26, '956a3ab1809c0207', 'F-2', 'Fair', '2026-03-02T13:20:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false, '', '06a6ac300e0061be016922b557f1169f969f58fd08f0961b5711fa15ec559fd7');
INSERT INTO public.orders VALUES (27, 'bc7992b321d5184e', 'F-3', 'Fair', '2026-03-02T13:20:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false, 'pack', '06a6ac300e0061be016922b557f1169f969f58fd08f0961b5711fa15ec559fd7');
INSERT INTO public.orders VALUES (1, 'b9ce7f2cd54f0272', 'B-01', 'fair', '2026-03-02T11:41:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (14, 'f92dc4a4c92e6e26', 'B-23', 'fair', '2026-03-02T12:20:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (13, 'f6ee0f48d3f8a2c5', 'B-22', 'fair', '2026-03-02T12:17:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (3, 'cd4e45a6b4456fba', 'B-04', 'fair', '2026-03-02T11:47:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '04d417deeddb0961', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (8, 'f64a132c6945db5b', 'B-09', 'fair', '2026-03-02T12:02:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '4be581246c2a4dac', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (2, '8916630eaab6be40', 'B-03', 'fair', '2026-03-02T11:44:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'f0998e23e29fe378', '', '', false, '', NULL);
INSERT INTO public.orders VALUES (28, 'de70a5dc344e569c', 'B-38', 'fair', '2026-03-02T15:50:00.000000+00:00', 28, NULL, NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.orders VALUES (29, '3c3c1339a84f9258', 'B-39', '', '2026-03-02T15:53:00.000000+00:00', 29, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false, '', NULL);
INSERT INTO public.parcels VALUES (1, '42ce78ea54e3b78f', 'main', 'b9ce7f2cd54f0272', '2026-03-02T14:16:00.000000+00:00', 'closed', '2026-03-02T14:25:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '6295b1c2e268a2aa', 'main', 'f92dc4a4c92e6e26', '2026-03-02T14:47:00.000000+00:00', 'closed', '2026-03-02T14:50:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, 'd8a20a8a2c780b5f', 'main', 'f6ee0f48d3f8a2c5', '2026-03-02T14:53:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '04d417deeddb0961', 'main', 'cd4e45a6b4456fba', '2026-03-02T14:59:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '4be581246c2a4dac', 'second', 'f64a132c6945db5b', '2026-03-02T15:08:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'f0998e23e29fe378', 'main', '8916630eaab6be40', '2026-03-02T15:17:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '82455cacb9cdd344.elsewhere-S012', '82455cacb9cdd344', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:17:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T16:03:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "0f08b93ca6b95bdf", "item": "024578a0eccfd49d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "be179d9a5d75d0a7", "order": "86979d68cac09bf3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "0f08b93ca6b95bdf", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:17:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "0f08b93ca6b95bdf", "item": "024578a0eccfd49d", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}, "Line": {"id": "be179d9a5d75d0a7", "order": "86979d68cac09bf3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "0f08b93ca6b95bdf", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '82455cacb9cdd344.unknown-Q0771', '82455cacb9cdd344', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:20:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '7a80639af02f0c09.missing-L008', '7a80639af02f0c09', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:42:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "572c8aecc8b0b851", "item": "9c06c4461a16bf95", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "572c8aecc8b0b851", "item": "9c06c4461a16bf95", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": ["ceb9755b1eb74179"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '7a80639af02f0c09.missing-L009', '7a80639af02f0c09', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:45:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2f6041a9714fdb72", "item": "c2c98359bc808897", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2f6041a9714fdb72", "item": "c2c98359bc808897", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:45:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false, "rehung_from": ""}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '6ef734f8ba3424e8', '2026-03-02T13:28:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '67b0f3722f4ee39b', '2026-03-02T15:26:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', 'a8bc1b1944a41fce19a7fbef3b6a7a75e36031dc9de22491b0b4c795fab68ebd', 'bin', '6ef734f8ba3424e8', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:31:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'fa4a7faa90a7e7dfc95bcafcfb2d16d5f8a95972f3ed0f82669b4335446f03d9', 'bin', '6ef734f8ba3424e8', 'W001', false, true, true, 'e329754b8fed1df1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "b9ce7f2cd54f0272", "order_number": "B-01", "line": "e329754b8fed1df1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:34:00.000000+00:00', '["on_item", ["7ee32848417c5895", "stored"], ["e329754b8fed1df1", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '129be2994e95b7150e7c898493c3c312a95ab287638aabf4f8f69ca9bee51c05', 'bin', '6ef734f8ba3424e8', 'W002', false, true, true, '6b58482353320375', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "b9ce7f2cd54f0272", "order_number": "B-01", "line": "6b58482353320375", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:37:00.000000+00:00', '["on_item", ["1408717979591272", "stored"], ["6b58482353320375", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '6881a3e40f43b4c97a83fea61b4c762b8ad723781e25fd4a8c25f15d967f9209', 'bin', '6ef734f8ba3424e8', 'S002', false, true, true, 'd5f1656cb09c5a7d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8916630eaab6be40", "order_number": "B-03", "line": "d5f1656cb09c5a7d", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:40:00.000000+00:00', '["on_item", ["ad35e4b1c32c05cd", "stored"], ["d5f1656cb09c5a7d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '2670cf455e67209c1e0aff53026794221ef055150a26a427134ea5c6139b1427', 'bin', '6ef734f8ba3424e8', 'S003', false, true, true, 'd188039076fd9001', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "8916630eaab6be40", "order_number": "B-03", "line": "d188039076fd9001", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:43:00.000000+00:00', '["on_item", ["880b2594a0e5604d", "stored"], ["d188039076fd9001", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', '517d7f37785583ca96d898667f75765537882110ab2df29e71e5266807a30cdf', 'bin', '6ef734f8ba3424e8', 'S004', false, true, true, '22d536db0a92f998', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "cd4e45a6b4456fba", "order_number": "B-04", "line": "22d536db0a92f998", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:46:00.000000+00:00', '["on_item", ["e0cb1fcfe1dfbb7f", "stored"], ["22d536db0a92f998", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'c22f2e0aa55defe02985b9d11cdaaa25dc822fe6cf427f1d8cce6e36e32e9f1f', 'bin', '6ef734f8ba3424e8', 'S005', false, true, true, '93c94e65f94feee8', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "cd4e45a6b4456fba", "order_number": "B-04", "line": "93c94e65f94feee8", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:49:00.000000+00:00', '["on_item", ["6804d0ee96eaeec8", "stored"], ["93c94e65f94feee8", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '4c624e716bd40f0018e12cfaa773e114d26de5ecd7c4688affa34a28fc898740', 'bin', '6ef734f8ba3424e8', 'L006', false, true, true, 'f029bf0903cd2b80', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "f64a132c6945db5b", "order_number": "B-09", "line": "f029bf0903cd2b80", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:52:00.000000+00:00', '["on_item", ["e7aac6d6ea5a02ee", "stored"], ["f029bf0903cd2b80", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '2cc15678d8a3a2f6428cddc672a560b2cabb397822840e0054da75231653cb86', 'bin', '6ef734f8ba3424e8', 'L011', false, true, true, '682dcb741c77ba5f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "f64a132c6945db5b", "order_number": "B-09", "line": "682dcb741c77ba5f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:55:00.000000+00:00', '["on_item", ["eb25b9e47415613c", "stored"], ["682dcb741c77ba5f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '028b3cc22d73329bdf7589aed757ed874ef065aed3601185ed45ab2567e44abf', 'bin', '6ef734f8ba3424e8', 'S006', false, true, true, '9d3035fd08473517', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "43f48b80b43c2c32", "order_number": "B-13", "line": "9d3035fd08473517", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:58:00.000000+00:00', '["on_item", ["9ed21e79f64fab8f", "stored"], ["9d3035fd08473517", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', 'aec04f22dfb39cb4cf454a3d32f389381f53f06ff9a35b54d15acb5140ee21a4', 'bin', '6ef734f8ba3424e8', 'S007', false, true, true, 'fce71c56ffdd6fa6', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "f6ee0f48d3f8a2c5", "order_number": "B-22", "line": "fce71c56ffdd6fa6", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:01:00.000000+00:00', '["on_item", ["1240f3e03f8bcf2f", "stored"], ["fce71c56ffdd6fa6", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '018712db6ceba3953ace941191868dca5f96b4e1fafe3d3e75953b969f414921', 'bin', '6ef734f8ba3424e8', 'W007', false, true, true, '54fdbafc0f0f2799', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "f92dc4a4c92e6e26", "order_number": "B-23", "line": "54fdbafc0f0f2799", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:04:00.000000+00:00', '["on_item", ["d1f43c2e89c934c4", "stored"], ["54fdbafc0f0f2799", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', 'e2925a3984376765f51eebaf0c5f74f77b6f2c6071a98bea1502665fc4fcfa49', 'bin', '6ef734f8ba3424e8', 'W008', false, true, true, '44601aa8c053e08d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "f92dc4a4c92e6e26", "order_number": "B-23", "line": "44601aa8c053e08d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T14:07:00.000000+00:00', '["on_item", ["5338f68e69e5df45", "stored"], ["44601aa8c053e08d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'd5f1656cb09c5a7d', '42ce78ea54e3b78f', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8916630eaab6be40", "order_number": "B-03", "line": "d5f1656cb09c5a7d", "line_state": "picked", "order_state": "picking", "parcel": "42ce78ea54e3b78f", "parcel_state": "open", "released": []}', '', '2026-03-02T14:19:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, 'e329754b8fed1df1', '42ce78ea54e3b78f', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "b9ce7f2cd54f0272", "order_number": "B-01", "line": "e329754b8fed1df1", "line_state": "packed", "order_state": "picking", "parcel": "42ce78ea54e3b78f", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["7ee32848417c5895", "stored"], ["e329754b8fed1df1", "packed", "42ce78ea54e3b78f", []], ["42ce78ea54e3b78f", "2026-03-02T14:16:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '6b58482353320375', '42ce78ea54e3b78f', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "b9ce7f2cd54f0272", "order_number": "B-01", "line": "6b58482353320375", "line_state": "released", "order_state": "released", "parcel": "42ce78ea54e3b78f", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:25:00.000000+00:00', '["due", ["1408717979591272", "shipped"], ["6b58482353320375", "released", "42ce78ea54e3b78f", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, 'e329754b8fed1df1', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "b9ce7f2cd54f0272", "order_number": "B-01", "line": "e329754b8fed1df1", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:28:00.000000+00:00', '["tray", ["7ee32848417c5895", "shipped"], ["e329754b8fed1df1", "released", "42ce78ea54e3b78f", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, '54fdbafc0f0f2799', '6295b1c2e268a2aa', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "f92dc4a4c92e6e26", "order_number": "B-23", "line": "54fdbafc0f0f2799", "line_state": "packed", "order_state": "waiting", "parcel": "6295b1c2e268a2aa", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:41:00.000000+00:00', '["on_item", ["d1f43c2e89c934c4", "stored"], ["54fdbafc0f0f2799", "packed", "6295b1c2e268a2aa", []], ["6295b1c2e268a2aa", "2026-03-02T14:38:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '22d536db0a92f998', '04d417deeddb0961', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "cd4e45a6b4456fba", "order_number": "B-04", "line": "22d536db0a92f998", "line_state": "packed", "order_state": "picking", "parcel": "04d417deeddb0961", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:02:00.000000+00:00', '["on_item", ["e0cb1fcfe1dfbb7f", "stored"], ["22d536db0a92f998", "packed", "04d417deeddb0961", []], ["04d417deeddb0961", "2026-03-02T14:59:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, 'f029bf0903cd2b80', '4be581246c2a4dac', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "f64a132c6945db5b", "order_number": "B-09", "line": "f029bf0903cd2b80", "line_state": "packed", "order_state": "picking", "parcel": "4be581246c2a4dac", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:11:00.000000+00:00', '["on_item", ["e7aac6d6ea5a02ee", "stored"], ["f029bf0903cd2b80", "packed", "4be581246c2a4dac", []], ["4be581246c2a4dac", "2026-03-02T15:08:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'd5f1656cb09c5a7d', 'f0998e23e29fe378', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "8916630eaab6be40", "order_number": "B-03", "line": "d5f1656cb09c5a7d", "line_state": "packed", "order_state": "picking", "parcel": "f0998e23e29fe378", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:20:00.000000+00:00', '["on_item", ["ad35e4b1c32c05cd", "stored"], ["d5f1656cb09c5a7d", "packed", "f0998e23e29fe378", []], ["f0998e23e29fe378", "2026-03-02T15:17:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'e5cf787b2ccbc8d5ab1e6fe5f4824a8bda91617850cf5aac8366266aeadc908a', 'bin', '67b0f3722f4ee39b', 'L002', false, true, true, 'fae0350fbd5ebb2f', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "e9db16082a15eb24", "order_number": "B-05", "line": "fae0350fbd5ebb2f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:29:00.000000+00:00', '["on_item", ["a547d1d18538b02d", "stored"], ["fae0350fbd5ebb2f", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '36b47274a78b9844ceee68a6d05b50499d59e51e5d1c4e1e01042f5847babaa8', 'bin', '67b0f3722f4ee39b', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:35:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'a864608ca6b5f80c5a52deafbbfde9dbe675bbd19cc1e4ba7a93b569a02a71e0', 'bin', '67b0f3722f4ee39b', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:38:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'bddc4183e057ce7aadfa036f8c6ac7a7608c344f2f8618ce90340c4752ae51af', 'bin', '67b0f3722f4ee39b', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:41:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:31:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:11:00.000000+00:00', '4be581246c2a4dac', 'bin', 'C-1-1', '6ef734f8ba3424e8', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:49:00.000000+00:00', NULL, 'bin', 'B-1-1', '6ef734f8ba3424e8', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:11:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:55:00.000000+00:00', NULL, 'bin', 'C-1-2', '6ef734f8ba3424e8', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T14:01:00.000000+00:00', NULL, 'bin', 'B-1-1', '6ef734f8ba3424e8', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:20:00.000000+00:00', 'f0998e23e29fe378', 'bin', 'B-1-1', '6ef734f8ba3424e8', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:58:00.000000+00:00', NULL, 'bin', 'B-1-1', '6ef734f8ba3424e8', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T14:07:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:25:00.000000+00:00', '42ce78ea54e3b78f', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:41:00.000000+00:00', '6295b1c2e268a2aa', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:02:00.000000+00:00', '04d417deeddb0961', 'bin', 'B-1-1', '6ef734f8ba3424e8', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:29:00.000000+00:00', NULL, 'bin', 'C-1-1', '67b0f3722f4ee39b', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:03:00.000000+00:00', NULL, 'bin', 'B-1-1', '6ef734f8ba3424e8', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:39:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T16:03:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:11:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:17:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:39:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:39:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:39:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '2d471e294f58701b', '5c87ad624650cd05', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (2, 'e8d9f797e82a176d', 'fbf04325d8b6c1ee', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (3, '4284c708ca7efc99', '860f5d3be0a53a9a', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (4, '8c1e740e33478a97', '5f3d93b72df4f598', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (5, '9c1c9e7dfecf2402', 'f3a82445c8a052cb', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (6, 'e236f5f8e58999cf', 'a1d6f9e13cafafad', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (7, '7a3b29c9983b199e', '87563220d4e16d47', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (9, 'ea0398c2500312d7', 'a649e8409dafacdd', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (10, '1f3076ee872d9f0d', '6dbc375b0f5db461', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (11, '359eb9352a0f19bc', '88d4cc3343d01567', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (12, 'd7ac7b40ac843b02', '4c348070556f34b7', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (13, '70fd5ab5c5ca03aa', '59630366f7badd0e', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (14, 'ad35e4b1c32c05cd', '1da953a735baf8e0', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (15, '880b2594a0e5604d', '81d97db869251b40', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (16, 'e0cb1fcfe1dfbb7f', 'b1e87600108a1629', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (17, '6804d0ee96eaeec8', 'ab7bf6a2cf666853', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (18, '9ed21e79f64fab8f', '2a32a5f3fe0bd9db', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (19, '1240f3e03f8bcf2f', 'b743448462858764', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (20, '5d259dfd6c7b7d37', 'fefa07134b00fe11', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (23, 'b2aa55e433aa5a3d', 'b9732f1a7c5d23ba', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (24, '0f08b93ca6b95bdf', '024578a0eccfd49d', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (25, 'b26686b3a3439d58', '354c5e0963cab481', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (26, 'a547d1d18538b02d', 'd6532173eca40497', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (27, 'edca802436ebf45f', 'd175e3d634013b43', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (28, 'd6be5e081619409b', '68087d5f64269815', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (29, '534a47553f4daa2f', '664ddc29dc6a1da1', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (30, 'e7aac6d6ea5a02ee', '3d184ebfdc2516ef', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (31, 'baba4a7652cb5a8a', 'b6c89ee985b9f775', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (32, '572c8aecc8b0b851', '9c06c4461a16bf95', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (34, 'c4ddfe122a432dd3', 'ff20ead80e10872a', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (35, 'eb25b9e47415613c', '9fe4b693b5ee1b9b', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (36, '999f5302f1c898fd', '1cb26755fbca418e', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (39, '11251fd5316451f3', 'c6efbd9b31707708', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (41, 'a743996ffd298647', 'ec2af07a6c5dd779', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (42, '0afb17f55be90936', '3f76a0dd22a673a8', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (44, '5338f68e69e5df45', 'cda29eebeb582e3d', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (45, '22b85c70d5679749', 'e5bcc8f151c9c15d', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (46, 'b2db07f2c6d24524', '251766c5e59f8789', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (47, 'fc0bd32d2048d0a9', '60c00e49407aab50', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (48, '02247760d83fcf88', 'd8eec012712098ac', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (49, '25af5770faa745a8', '51c5566263bd3b53', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (22, '8dcaefaeb8884ba8', '62d58fb31b946c03', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false, '');
INSERT INTO public.stays VALUES (40, 'bbc8d0b2c79b941e', '3b759e8152c3d62d', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false, '');
INSERT INTO public.stays VALUES (21, '9f93020bf465d3dc', '2a42cd930f344196', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (50, '6867f5c142641f99', '2a42cd930f344196', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (51, '5e6a85fcb46c89a2', '88bb5c18c05f22bd', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false, '');
INSERT INTO public.stays VALUES (52, '5ec3de0083b0c7b7', '526c65b07d164be0', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', 'a0c970508b656fcccb7b9d2bb6c6b39e294509ccd81347e427491db5a32fd411', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true, '');
INSERT INTO public.stays VALUES (8, 'd7fd998367ac056e', '194c91513195419b', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:08:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (53, '7e3c6b7629152224', '194c91513195419b', 'D020', 1, '2026-03-02T13:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (37, '7ee32848417c5895', '35069914d6080369', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:25:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (38, '1408717979591272', '493d290c2c08e652', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:25:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (54, '143f1535e5a359cd', '136feb57a228fdeb', 'W001', 2, '2026-03-02T14:31:00.000000+00:00', 'stored', NULL, '', NULL, '', false, '');
INSERT INTO public.stays VALUES (43, 'd1f43c2e89c934c4', '32f51a2faa34117a', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:50:00.000000+00:00', '', NULL, '', false, '');
INSERT INTO public.stays VALUES (33, '2f6041a9714fdb72', 'c2c98359bc808897', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:45:00.000000+00:00', 'Nowhere to be found', NULL, '', false, '');
INSERT INTO public.stocktakes VALUES (1, '82455cacb9cdd344', 'section:S', 'Spring', '2026-03-02T15:56:00.000000+00:00', 170, 'closed', '2026-03-02T16:29:00.000000+00:00', '{"stocktake": "82455cacb9cdd344", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:56:00+00:00", "closed": "2026-03-02T16:29:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:17:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:20:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '7a80639af02f0c09', 'section:L', 'Spring', '2026-03-02T16:32:00.000000+00:00', 180, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'da559851daac2457', 'section:D', '', '2026-03-02T16:48:00.000000+00:00', 187, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO public.stocktakes VALUES (4, 'f98a3b651c30ca8d', 'tray', 'Too late today', '2026-03-02T16:51:00.000000+00:00', 188, 'cancelled', '2026-03-02T16:54:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '6ef734f8ba3424e8', 1, 'd5f1656cb09c5a7d', 'B-1-1');
INSERT INTO public.stops VALUES (2, '6ef734f8ba3424e8', 2, 'd188039076fd9001', 'B-1-1');
INSERT INTO public.stops VALUES (3, '6ef734f8ba3424e8', 3, '22d536db0a92f998', 'B-1-1');
INSERT INTO public.stops VALUES (4, '6ef734f8ba3424e8', 4, '93c94e65f94feee8', 'B-1-1');
INSERT INTO public.stops VALUES (5, '6ef734f8ba3424e8', 5, '9d3035fd08473517', 'B-1-1');
INSERT INTO public.stops VALUES (6, '6ef734f8ba3424e8', 6, 'fce71c56ffdd6fa6', 'B-1-1');
INSERT INTO public.stops VALUES (7, '6ef734f8ba3424e8', 7, 'e329754b8fed1df1', 'D-1-1');
INSERT INTO public.stops VALUES (8, '6ef734f8ba3424e8', 8, '6b58482353320375', 'D-1-1');
INSERT INTO public.stops VALUES (9, '6ef734f8ba3424e8', 9, '54fdbafc0f0f2799', 'D-1-1');
INSERT INTO public.stops VALUES (10, '6ef734f8ba3424e8', 10, '44601aa8c053e08d', 'D-1-1');
INSERT INTO public.stops VALUES (11, '6ef734f8ba3424e8', 11, 'f029bf0903cd2b80', 'C-1-1');
INSERT INTO public.stops VALUES (12, '6ef734f8ba3424e8', 12, '682dcb741c77ba5f', 'C-1-2');
INSERT INTO public.stops VALUES (13, '67b0f3722f4ee39b', 1, '8b6ad01cf0addb9c', 'A-1-2');
INSERT INTO public.stops VALUES (14, '67b0f3722f4ee39b', 2, 'fae0350fbd5ebb2f', 'C-1-1');
INSERT INTO public.stops VALUES (15, '67b0f3722f4ee39b', 3, 'b860f3d8134cd457', 'C-1-1');
INSERT INTO public.stops VALUES (16, '67b0f3722f4ee39b', 4, '63916a4ef87aa97a', 'C-1-1');
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
SELECT pg_catalog.setval('public.learned_n_seq', 1, false);
SELECT pg_catalog.setval('public.lines_n_seq', 37, true);
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
CREATE INDEX ix_changed_orders_load ON public.changed_orders USING btree (load);
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
