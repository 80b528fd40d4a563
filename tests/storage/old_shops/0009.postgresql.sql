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
INSERT INTO public.access VALUES (1, 'aff9831bbb33d956b38895d47e71cff4b0fbe6c175f446a6b35d7dfd7d1ed5fc', 'owner', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$yGFKVGlLWPp6Qi0HBC1SvA$rUfl/og2jSQ4zBCkBH872ieRbPpL2W0j/c1rEeHFFcQ', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '8e41593dd044998696a040cddf0882f65b3c5cc8888497756065db2dd0243d8d', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', NULL, '');
INSERT INTO public.access VALUES (4, 'c98e70b51a17b28d4ed10ca47c1e285d3bc151f8abe2fe0d826528e47742e10f', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, 'a87b46aeb652648cc5f66e6543aef5f5c7de05004eee79458ce27a00307fb981', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'fb4353e825122e2374875f525130341a77d25f6acf1be74a73a8a812192bd3de', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', NULL, '');
INSERT INTO public.alembic_version VALUES ('0009');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd', 201, '/api/stays/1446c5e8fae03427', '{"id": "1446c5e8fae03427", "item": "8563d3667e8c7941", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '9910b7ee6d67d0ce', '061b08dd6e903629', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:48:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '1effc05c09f0cc7b', '4a9e639e52b07d54', 'missing', 'Not in its bin', '2026-03-02T15:13:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, '307b563170ab719c', '9a9b6db20171cedd', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:46:00.000000+00:00', 'owner', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, '082fc0061a23b827', 'e39bad9ebf48d87b', 'missing', 'a count of section:S did not find it', '2026-03-02T16:12:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '67205b8a2a007275', 'd3b21ee04eb826f4', 'missing', 'a count did not find it', '2026-03-02T16:25:00.000000+00:00', 'owner', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 176, '91d3a24d02239c4a3a1d2422d568e12dea271ef13c9b44f1149dfba99f0afe18', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false}', '0e1a32ba788af40f');
INSERT INTO public.items VALUES (3, '33ec3f5928db347f', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (4, '4b0936eaf201c26c', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (5, '9191417afa863b20', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (6, '54bb9afccab06122', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (7, '533bbf0f8c58319d', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (8, '60c5a9db19692514', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (9, '610c5aaa65b0d030', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (10, '3a8325eeb80f8e9f', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (11, '4569321f7b805242', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (12, '9464300993999ecb', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (14, 'da32dea975c99c08', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (15, '6d2804f5bdfb64a3', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (16, 'c0a718e676d611d9', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (17, 'ec116e11dff5d85e', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (18, 'c27a7af1b44d44b9', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (19, 'cbef27f43abd6df8', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (20, 'e39bad9ebf48d87b', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (21, '0a78a168a13f4716', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (22, 'c4d9142977241677', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (23, '1d2afd039bb32ce6', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (24, '94e5a5530408ab2a', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (25, '8fa06b1314120129', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (26, 'bfda79e547af23ac', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (27, '70ed5248a9f03c57', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (28, '4a9e639e52b07d54', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (29, 'be557446b6cbb225', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (30, 'e1996b9b6783c714', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (31, '061b08dd6e903629', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (32, 'd3b21ee04eb826f4', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (33, 'da09fe00e57f51c0', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (34, '498d8c7ebdb1b70f', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (35, '6105575dc648e82a', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (36, '3872019f9c3f5f91', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (37, '207bd9b901176862', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (38, 'e9e9ac71060089c9', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (39, '5f9e7b1b8ca5b787', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (40, '0cedf00f4a7e6b82', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (41, 'f96b95bee67a2ff4', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (42, 'be81ac0cd0ce5a0c', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (43, '039821f1fcc4433d', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (44, '0b3fc43346c95a06', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (45, '63f38a76ee6ed148', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (46, 'ba90bae5e3d93037', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (47, 'fe7ece992e8f7102', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (48, 'e12ddc4455eaf39f', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL);
INSERT INTO public.items VALUES (49, '8563d3667e8c7941', 'Brass bell', '', '', NULL);
INSERT INTO public.items VALUES (2, '5d58f3432ecdd4f4', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL);
INSERT INTO public.items VALUES (1, 'dbeb957f356d099e', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO public.items VALUES (13, '9a9b6db20171cedd', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO public.items VALUES (50, '20549428cb44486a', 'Rear wheel', '', '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', 'ffb0390cf46a8e6c', '2557');
INSERT INTO public.ledger VALUES (1, '2026-03-02T08:01:00.000000+00:00', 'token made', 'owner', '{"name":"owner","role":"owner"}', '303d6ed4c179ff439f0e1362aa484b09de102c70718f948c6578c81714652d93');
INSERT INTO public.ledger VALUES (2, '2026-03-02T08:05:00.000000+00:00', 'token made', 'label printer', '{"name":"label printer","role":"program"}', '924b363cda175a7d0981ff70c09dd7c06567e19ac0819082a6defc59a7448314');
INSERT INTO public.ledger VALUES (3, '2026-03-02T08:06:00.000000+00:00', 'token made', 'helper', '{"name":"helper","role":"helper"}', '7c4873bbfc3f3ec5e4f939564b38926f1b42b12e617293bf6c319d44c96bba8c');
INSERT INTO public.ledger VALUES (4, '2026-03-02T08:08:00.000000+00:00', 'device paired', 'Blue phone', '{"name":"Blue phone"}', 'a979d56c2e153ecf5a41f3ccfb89e09cb4b03dd9abcbbb4c87b48ff8ae98e700');
INSERT INTO public.ledger VALUES (5, '2026-03-02T08:11:00.000000+00:00', 'section added', 'owner', '{"colour":"yellow","name":"Derailleurs","now":["sections D - 44b06f03fa8b"],"section":"D","slots_per_bin":10}', '48af8c49ec03cdeee805e491080c16097abf74a90390b51cd11621f5299672cc');
INSERT INTO public.ledger VALUES (6, '2026-03-02T08:14:00.000000+00:00', 'slots added', 'owner', '{"first":"D001","last":"D030","now":["racks A - cfc963eeeae5","bins A-1-1 - fcea40ff6922","bins A-1-2 - 7a4280f3c369","bins A-1-3 - be483ef37367","slots D001 tray e81f6e630a9d","slots D002 tray f85ca74f3e93","slots D003 tray 0c719f220aa3","slots D004 tray 49253b08a13f","slots D005 tray 6a79c5159d5b","slots D006 tray 902465fb5ade","slots D007 tray 0beaf39e08e0","slots D008 tray a27d079a5dcb","slots D009 tray 94519b40c70e","slots D010 tray d7cc4aa23cfa","slots D011 tray 8578cde849e4","slots D012 tray d4d36b046c45","slots D013 tray aa328b9939fb","slots D014 tray d48d965495fc","slots D015 tray 8b8b908c856a","slots D016 tray dc026f278038","slots D017 tray 36b699e5365f","slots D018 tray 29fa1a653ea2","slots D019 tray 8e0c5d8513f9","slots D020 tray d561ad1e3846","slots D021 tray e11cc552e692","slots D022 tray 97710f36d165","slots D023 tray 70ff47eba7f7","slots D024 tray e8fbf0ee5e15","slots D025 tray aadc86ca54d6","slots D026 tray 33ae5b449806","slots D027 tray df7a0fe432bd","slots D028 tray 8a653cbbaff7","slots D029 tray 9430f5a77808","slots D030 tray 1f761ad14f87","sections D - 63cf71b4190a"],"section":"D"}', 'a5e86404be829db6ffaa0151fd8eacc106cdf802264836021c5f24134bba79d9');
INSERT INTO public.ledger VALUES (7, '2026-03-02T08:17:00.000000+00:00', 'section added', 'owner', '{"colour":"pink","name":"Saddles","now":["sections S - 758f420472d1"],"section":"S","slots_per_bin":10}', '8e6e5a40407cd88a51f98726b62409dcb4811b0fb7e33f39f441fd5b4fb126f4');
INSERT INTO public.ledger VALUES (8, '2026-03-02T08:20:00.000000+00:00', 'slots added', 'owner', '{"first":"S001","last":"S015","now":["racks B - 5c0775bb22e2","bins B-1-1 - 9504208f8963","bins B-1-2 - a13cdde9dbd1","slots S001 tray 4ae5e25c8f9d","slots S002 tray 0b88a8c1170b","slots S003 tray 7c1404dede6f","slots S004 tray fded976a1777","slots S005 tray 4a64e835be21","slots S006 tray 31f48cedbf33","slots S007 tray bf2fce64cff8","slots S008 tray 9fec3a35f062","slots S009 tray 92531eb2d5c7","slots S010 tray f544ee5a6af5","slots S011 tray a6585702305d","slots S012 tray d45370cf6110","slots S013 tray 9dcfcc438261","slots S014 tray 55f4a97da45c","slots S015 tray f00221963229","sections S - 8ee325ece27e"],"section":"S"}', '1071f96eda023b163f5fc27254b79f4f5d4189babb0b1dd350eea777fdac4a49');
INSERT INTO public.ledger VALUES (9, '2026-03-02T08:23:00.000000+00:00', 'section added', 'owner', '{"colour":"green","name":"Lamps","now":["sections L - 83f116b67fb4"],"section":"L","slots_per_bin":10}', 'f9d747322054ab023b1d85bbd9cf80a535f16bd152a319fc595cf1aaf6b12aab');
INSERT INTO public.ledger VALUES (10, '2026-03-02T08:26:00.000000+00:00', 'slots added', 'owner', '{"first":"L001","last":"L015","now":["racks C - 10d098d7bc97","bins C-1-1 - 8a2ea0e265cb","bins C-1-2 - 0f83d16d00e8","slots L001 tray 17972bfa70c2","slots L002 tray 285c9c5b4e4e","slots L003 tray 28ead537b05c","slots L004 tray 3572b0be5c20","slots L005 tray 3294ec5edfb0","slots L006 tray a9c02df139e8","slots L007 tray c8dbb2d5bc67","slots L008 tray e04accfdf065","slots L009 tray 15ab34bc6d3d","slots L010 tray 8d0c8554d561","slots L011 tray 19bf8370dbaa","slots L012 tray 0d267c06e309","slots L013 tray e555408c44db","slots L014 tray 3dcaac4799cb","slots L015 tray 45751c4cd942","sections L - ad84a0d889f5"],"section":"L"}', '8047a09da95870f4cfa5ded62ec049fb16f0e5fb0055b80d01ca54302cb09584');
INSERT INTO public.ledger VALUES (11, '2026-03-02T08:29:00.000000+00:00', 'section added', 'owner', '{"colour":"blue","name":"Wheels","now":["sections W - 7ab44f3eae4b"],"section":"W","slots_per_bin":10}', '004a1339e88e5a2dc635eafa53b22177ecce3648b7ba4aa81121aa58c57fe31a');
INSERT INTO public.ledger VALUES (12, '2026-03-02T08:32:00.000000+00:00', 'slots added', 'owner', '{"first":"W001","last":"W015","now":["racks D - 8153ce94d3eb","bins D-1-1 - 3b050f2fa998","bins D-1-2 - 6505641170e8","slots W001 tray 8c2043a76b3e","slots W002 tray 90c86d508323","slots W003 tray 18f633a622d5","slots W004 tray 4f12ab9e57cf","slots W005 tray a71823a7e1d8","slots W006 tray e4d83f69ed58","slots W007 tray 335aa2487e14","slots W008 tray 439a4b8e1c68","slots W009 tray 4899c13220b2","slots W010 tray 7fb1f9a7df75","slots W011 tray 9100c6ca1e3f","slots W012 tray 375d74c5a7ad","slots W013 tray bdc2ba9a00a7","slots W014 tray 79afe30905f7","slots W015 tray 54233aae5a06","sections W - bc0703e59782"],"section":"W"}', 'fe2511bcb4715dd59831f292a931155783e3a4d143e662aae4f8ece9c2c22a6a');
INSERT INTO public.ledger VALUES (13, '2026-03-02T08:35:00.000000+00:00', 'put away', 'owner', '{"code":"D001","listing":"L-D1","now":["items dbeb957f356d099e - d5fe20da20cd","slots D001 on_item e5405bc28ff8","stays e7ae8476e6d8dc98 stored f2299042c5b2"],"stay":"e7ae8476e6d8dc98","title":"Rear derailleur 1","turn":1}', '28841375936068c3bb0717d7d451a0b50f55e34aea3b74f4230627eed73cd62e');
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:38:00.000000+00:00', 'put away', 'owner', '{"code":"D002","listing":"L-D2","now":["items 5d58f3432ecdd4f4 - 49c30f061dd7","slots D002 on_item 4f79f524f247","stays 08bc2ba3bc929d15 stored c71e9fb49259"],"stay":"08bc2ba3bc929d15","title":"Rear derailleur 2","turn":1}', '58e2f1fb335e4d9a00f0a423e78dcdd540ff456e37356e47289ba80940fed292');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:41:00.000000+00:00', 'put away', 'owner', '{"code":"D003","listing":"L-D3","now":["items 33ec3f5928db347f - 99988641a63b","slots D003 on_item 6de523ac8b4d","stays 7dd5a0c97b72c2c7 stored 8c3edba87f7c"],"stay":"7dd5a0c97b72c2c7","title":"Rear derailleur 3","turn":1}', '4fa81becdfcb901cd5fa62ed59ee34135bc10ea955d7ede170643662fadd9997');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:44:00.000000+00:00', 'put away', 'owner', '{"code":"D004","listing":"L-D4","now":["items 4b0936eaf201c26c - c82370c578d1","slots D004 on_item ec423998da46","stays b1da1a5c28979791 stored d2995bb0b174"],"stay":"b1da1a5c28979791","title":"Rear derailleur 4","turn":1}', '569c38ba3c39086be78c29744f59ea57da6cfe695af0ffad9dbcf2986f6da742');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:47:00.000000+00:00', 'put away', 'owner', '{"code":"D005","listing":"L-D5","now":["items 9191417afa863b20 - 5298e17cbd90","slots D005 on_item 91ad3faf88d6","stays a79bfb3dc60681f7 stored 95656cc31278"],"stay":"a79bfb3dc60681f7","title":"Rear derailleur 5","turn":1}', 'f93c9af795cf8d07b7b0adf1fa2986cab92332d11d81f9313166a8662bc50a04');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:50:00.000000+00:00', 'put away', 'owner', '{"code":"D006","listing":"L-D6","now":["items 54bb9afccab06122 - 823159d1ea83","slots D006 on_item 1fadb568d6a5","stays 7167afcec0f7a644 stored d65d41968143"],"stay":"7167afcec0f7a644","title":"Rear derailleur 6","turn":1}', '35b17590a206716db98cf5afaa4ad9cec28feb38c7ca36bc47395ea88bb31650');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:53:00.000000+00:00', 'put away', 'owner', '{"code":"D007","listing":"L-D7","now":["items 533bbf0f8c58319d - e89c053fc388","slots D007 on_item 536077e3b728","stays 55178e0f03871b43 stored cc0df2ab454b"],"stay":"55178e0f03871b43","title":"Rear derailleur 7","turn":1}', 'dfdf8f89b3bed02a50d1b54e2f8b134271657ef510fa39eabc5d6810edf6db06');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:56:00.000000+00:00', 'put away', 'owner', '{"code":"D008","listing":"L-D8","now":["items 60c5a9db19692514 - bece13ec861a","slots D008 on_item facb453cba22","stays 6c96ef1898b7d3d1 stored bfb98e174324"],"stay":"6c96ef1898b7d3d1","title":"Rear derailleur 8","turn":1}', '078d78231d029179bb2c95f77d4d6e7ee86d48409f518b42ab6cec4d9de7521a');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:59:00.000000+00:00', 'put away', 'owner', '{"code":"D009","listing":"L-D9","now":["items 610c5aaa65b0d030 - 9679d09b53cc","slots D009 on_item 7434bf04ccf2","stays 74b703b3f03556b0 stored b71d4f72d5b2"],"stay":"74b703b3f03556b0","title":"Rear derailleur 9","turn":1}', 'ed8d2082b27ae24bef59d2e27dfbcd7d1537d4640217c0e341f483b7136fb67a');
INSERT INTO public.ledger VALUES (22, '2026-03-02T09:02:00.000000+00:00', 'put away', 'owner', '{"code":"D010","listing":"L-D10","now":["items 3a8325eeb80f8e9f - e7a15ddf9640","slots D010 on_item 1f8fd3ebaf8b","stays 42ba43d3d54d0223 stored 2c2b24689fe4"],"stay":"42ba43d3d54d0223","title":"Rear derailleur 10","turn":1}', 'eaa5312220c7422f18a0cd3e48d09ae180574517c0197a6689fb266382281f12');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:05:00.000000+00:00', 'put away', 'owner', '{"code":"D011","listing":"L-D11","now":["items 4569321f7b805242 - 23d9e05395db","slots D011 on_item d451255e38b7","stays 1d17276a6540f20b stored 00cd4bdaf31d"],"stay":"1d17276a6540f20b","title":"Rear derailleur 11","turn":1}', 'a7f9f5d56da6e8d73656800478d93dafae634f6753cafae3e0389f012344ab9a');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:08:00.000000+00:00', 'put away', 'owner', '{"code":"D012","listing":"L-D12","now":["items 9464300993999ecb - 20f7eeca3805","slots D012 on_item bdbda5bb2b7a","stays c4238b50aa1b181e stored 9b95bbef0c7a"],"stay":"c4238b50aa1b181e","title":"Rear derailleur 12","turn":1}', 'ac72c727bbec416f2a21bafbb5c1fea63f8aeafd54390d8c1fdc87194af8be39');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:11:00.000000+00:00', 'put away', 'owner', '{"code":"S001","listing":"L-S1","now":["items 9a9b6db20171cedd - a4110cd4cf7f","slots S001 on_item 76dcd853e3e0","stays 0ee4d85b2b413b51 stored fda245c40b0b"],"stay":"0ee4d85b2b413b51","title":"Leather saddle 1","turn":1}', 'c750c14b12c0040aa9a8aa73fabfbaae0f5780f621033426addf5c9d02e965f4');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:14:00.000000+00:00', 'put away', 'owner', '{"code":"S002","listing":"L-S2","now":["items da32dea975c99c08 - 2acfd2f8aecc","slots S002 on_item 6fb94c47a50d","stays 35fb3cb04351d38d stored 0eb56801cd9a"],"stay":"35fb3cb04351d38d","title":"Leather saddle 2","turn":1}', 'a09410a43a145e1f5c35c2e438c4c96f3d9dd0ef3fc1bc2458ff63e56b10fcf0');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:17:00.000000+00:00', 'put away', 'owner', '{"code":"S003","listing":"L-S3","now":["items 6d2804f5bdfb64a3 - d64613e31d6e","slots S003 on_item e00808332634","stays ca14ecaf80a56064 stored 6fb922c7a595"],"stay":"ca14ecaf80a56064","title":"Leather saddle 3","turn":1}', '15620983d292c14536cdfa5abb263d1aab512b9da9cca1f0d70c74303122dafb');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:20:00.000000+00:00', 'put away', 'owner', '{"code":"S004","listing":"L-S4","now":["items c0a718e676d611d9 - 41adf1129edd","slots S004 on_item db1aa8005467","stays 29b22239cda59ec6 stored 424bf2dfdb2f"],"stay":"29b22239cda59ec6","title":"Leather saddle 4","turn":1}', '238f4379d23f1f31a33d07b60f396240c4c7b726ac1cd308e112209c82eab9a9');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:23:00.000000+00:00', 'put away', 'owner', '{"code":"S005","listing":"L-S5","now":["items ec116e11dff5d85e - e99ee0c7f72b","slots S005 on_item ec548ef84f99","stays a91c3b45bdd5c910 stored 7405f86fba92"],"stay":"a91c3b45bdd5c910","title":"Leather saddle 5","turn":1}', 'b12363039079bf23435b87b5859584f35d70b8c962a376c96f3a8af8c18b8be8');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:26:00.000000+00:00', 'put away', 'owner', '{"code":"S006","listing":"L-S6","now":["items c27a7af1b44d44b9 - fd9ee708d32b","slots S006 on_item dc9bc74eb63a","stays 0d09ca6fe450a1c7 stored 9ad3c4181087"],"stay":"0d09ca6fe450a1c7","title":"Leather saddle 6","turn":1}', 'de9065dcdf8981f6fb3fe23a9d3489bc4788440a9d2d8ac38e9d0701414a7d9d');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:29:00.000000+00:00', 'put away', 'owner', '{"code":"S007","listing":"L-S7","now":["items cbef27f43abd6df8 - ce22b5ad95f1","slots S007 on_item 075fd8b9fecf","stays 432c8b841c8c3e65 stored d8be37523df6"],"stay":"432c8b841c8c3e65","title":"Leather saddle 7","turn":1}', 'f38ead62c8207cb0a2d526eff3a67853d64d81e3c7f9e352e0cbc62c8f6ae6b7');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:32:00.000000+00:00', 'put away', 'owner', '{"code":"S008","listing":"L-S8","now":["items e39bad9ebf48d87b - c63961b2bd11","slots S008 on_item 39fdb847a4bc","stays 6964b402bffc8184 stored d9adf86b47ce"],"stay":"6964b402bffc8184","title":"Leather saddle 8","turn":1}', '2acd390899ea3a42dc6a4e05ea831e6c24dcd411a160cf391e0d10bb6dcf0afe');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:35:00.000000+00:00', 'put away', 'owner', '{"code":"S009","listing":"L-S9","now":["items 0a78a168a13f4716 - a60b3258980b","slots S009 on_item 62c79df275b3","stays 9a6ae9a9b8667455 stored d1d77b64b730"],"stay":"9a6ae9a9b8667455","title":"Leather saddle 9","turn":1}', 'e2b9975a563e7ae48f185bd5ac7a88246e379afe45b6921c99e452a19dcfbf9f');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:38:00.000000+00:00', 'put away', 'owner', '{"code":"S010","listing":"L-S10","now":["items c4d9142977241677 - 292bb76aabab","slots S010 on_item 1fd8d85fa1c4","stays ef4ee4d6059913e3 stored 4b57f5a287ba"],"stay":"ef4ee4d6059913e3","title":"Leather saddle 10","turn":1}', 'd7b302d1b84a89992b65ae7a37a7744812b243f95983ca5d4070d07df8f4606c');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:41:00.000000+00:00', 'put away', 'owner', '{"code":"S011","listing":"L-S11","now":["items 1d2afd039bb32ce6 - a7a723e86aac","slots S011 on_item e59577c4b2a7","stays be7c367965ed559d stored 274868e939bf"],"stay":"be7c367965ed559d","title":"Leather saddle 11","turn":1}', '42d48dcec56a3c681ac7f68bf2d32690fbc3e4a9b6ccc2a0de3ad0b76dc9ea22');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:44:00.000000+00:00', 'put away', 'owner', '{"code":"S012","listing":"L-S12","now":["items 94e5a5530408ab2a - 6b5da15de02d","slots S012 on_item 9bae442e2436","stays 5b2e00306e9a88a5 stored fdb99c603d39"],"stay":"5b2e00306e9a88a5","title":"Leather saddle 12","turn":1}', '887bfb4736c1b6cb731724ef1ab38460d4313bf93f36f357f084b58c639dfdc7');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:47:00.000000+00:00', 'put away', 'owner', '{"code":"L001","listing":"L-L1","now":["items 8fa06b1314120129 - 153dda0a6953","slots L001 on_item 43c5cdfaa8e4","stays 374324cd01861eb9 stored 3cc564821b9c"],"stay":"374324cd01861eb9","title":"Dynamo lamp 1","turn":1}', '228d2636503e3f7b5ffec49b9f7f43af5865bdde0101ac96e67a5a10cea73b30');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:50:00.000000+00:00', 'put away', 'owner', '{"code":"L002","listing":"L-L2","now":["items bfda79e547af23ac - b1f815738094","slots L002 on_item ea8e77c8b06f","stays 1f7d9d9b59a7c142 stored c5b8ea0f577f"],"stay":"1f7d9d9b59a7c142","title":"Dynamo lamp 2","turn":1}', 'dd43e9bdab386ebe1e87cf89bd2ef50bb82e2fba702c7b7353eb1af3ec4dc2f4');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:53:00.000000+00:00', 'put away', 'owner', '{"code":"L003","listing":"L-L3","now":["items 70ed5248a9f03c57 - c3ff17e00f55","slots L003 on_item c35e4c005cda","stays 72071651342ac77c stored 58f83440039d"],"stay":"72071651342ac77c","title":"Dynamo lamp 3","turn":1}', 'baa169e9eb3067c586ae7fd423162fb8e410029318789754d449b43d5265ca90');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:56:00.000000+00:00', 'put away', 'owner', '{"code":"L004","listing":"L-L4","now":["items 4a9e639e52b07d54 - 27a09901d5f2","slots L004 on_item 70a88e4a366b","stays 3ac89c5d3d5aafd9 stored 1345118aea77"],"stay":"3ac89c5d3d5aafd9","title":"Dynamo lamp 4","turn":1}', '959e8c0a2ee53ee077cb84742080548b949775bf8742f6054bd90056bb7f5689');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:59:00.000000+00:00', 'put away', 'owner', '{"code":"L005","listing":"L-L5","now":["items be557446b6cbb225 - 6e718e321e80","slots L005 on_item 6261d94de1ef","stays 10544d9a6885473a stored d27e6eeeb226"],"stay":"10544d9a6885473a","title":"Dynamo lamp 5","turn":1}', '4f51c495c2b4bf4062ab6b15b00adeb39d1173f5d4a92b68dd2dbf51da7f3ec1');
INSERT INTO public.ledger VALUES (42, '2026-03-02T10:02:00.000000+00:00', 'put away', 'owner', '{"code":"L006","listing":"L-L6","now":["items e1996b9b6783c714 - 8c9f7f4bc614","slots L006 on_item b67b470f3637","stays 2861a524b12df386 stored 55adbc5f2d8f"],"stay":"2861a524b12df386","title":"Dynamo lamp 6","turn":1}', '432e23932ab2daf827a8281317c12b6e4d61c18fccc12074997086306ace265d');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:05:00.000000+00:00', 'put away', 'owner', '{"code":"L007","listing":"L-L7","now":["items 061b08dd6e903629 - 3bc3a743934a","slots L007 on_item 767524982af4","stays 795d1e1af801181a stored 6cec40977f6b"],"stay":"795d1e1af801181a","title":"Dynamo lamp 7","turn":1}', '814cbef38c23334b83a8124fb347dac0e107c787997d4ef0e26f9c43f3717860');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:08:00.000000+00:00', 'put away', 'owner', '{"code":"L008","listing":"L-L8","now":["items d3b21ee04eb826f4 - 3f94f9c87818","slots L008 on_item b3b2d23a98b7","stays 0ffe0a6e2884a78e stored fb99df90b4f1"],"stay":"0ffe0a6e2884a78e","title":"Dynamo lamp 8","turn":1}', '005e8f4720e1d1d011ada98fc69a80d18583f93bd18c81243c83654fc778fabf');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:11:00.000000+00:00', 'put away', 'owner', '{"code":"L009","listing":"L-L9","now":["items da09fe00e57f51c0 - d1aceaa75ad7","slots L009 on_item c3139144a3f8","stays cb88ee140e40e35e stored 5f39c2c92a50"],"stay":"cb88ee140e40e35e","title":"Dynamo lamp 9","turn":1}', '5e98872ca860d25f2015b12227d004e2fafd6ba8698eb76a4f9a3327aae12327');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:14:00.000000+00:00', 'put away', 'owner', '{"code":"L010","listing":"L-L10","now":["items 498d8c7ebdb1b70f - aef9d713343e","slots L010 on_item f8c13ae8aec4","stays f01422dd4f538f1b stored 944ead9b340b"],"stay":"f01422dd4f538f1b","title":"Dynamo lamp 10","turn":1}', 'c6a1a847b5712984e83b163f98b2feddb0c527c6f0001fec1816bb9f4053deff');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:17:00.000000+00:00', 'put away', 'owner', '{"code":"L011","listing":"L-L11","now":["items 6105575dc648e82a - ee63d1bf6492","slots L011 on_item 9d01c75c0f89","stays d3616b1befbbe54a stored 8f57dc6299dc"],"stay":"d3616b1befbbe54a","title":"Dynamo lamp 11","turn":1}', '55b61b8d4dad468f572115c52803404ea639b574e5dff065a9c8fea9e6c56943');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:20:00.000000+00:00', 'put away', 'owner', '{"code":"L012","listing":"L-L12","now":["items 3872019f9c3f5f91 - 246eda30f583","slots L012 on_item 5373b19b101e","stays 6a0e4c543a0fe8c3 stored 57e2af884727"],"stay":"6a0e4c543a0fe8c3","title":"Dynamo lamp 12","turn":1}', '283a2fea36573412de224a8a0503a3e5de0df2828b6548ba7328ac5d1e3c10d6');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:23:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"L-W1","now":["items 207bd9b901176862 - 813fe120c879","slots W001 on_item 17dd342c2f6a","stays 4865091986bedbf5 stored b67d68d8a260"],"stay":"4865091986bedbf5","title":"Front wheel 1","turn":1}', '0f174fe688a4a9b04063fbaa2559089b65b0f7ab4823e0baf33a3409d151bd20');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:26:00.000000+00:00', 'put away', 'owner', '{"code":"W002","listing":"L-W2","now":["items e9e9ac71060089c9 - f7aaa4b2ea0b","slots W002 on_item 7ebfb8df41ca","stays e34ec914e5f35005 stored 789cac793052"],"stay":"e34ec914e5f35005","title":"Front wheel 2","turn":1}', '11c8a5222993a9476f1af4c5d18862dcece141cec6f9b31ffd3b79e9556dc75f');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:29:00.000000+00:00', 'put away', 'owner', '{"code":"W003","listing":"L-W3","now":["items 5f9e7b1b8ca5b787 - 5ded1cca5982","slots W003 on_item f84a2674e962","stays c88edd629bfa4e96 stored c733371bf2ee"],"stay":"c88edd629bfa4e96","title":"Front wheel 3","turn":1}', '14fd9055aeb49176416d2259e56656d849929229b90e9ca6b100dfe193179d67');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:32:00.000000+00:00', 'put away', 'owner', '{"code":"W004","listing":"L-W4","now":["items 0cedf00f4a7e6b82 - 40422979d8b1","slots W004 on_item f45ed94fd55a","stays 8dc7ab4d9b240088 stored 574e23a0f8b0"],"stay":"8dc7ab4d9b240088","title":"Front wheel 4","turn":1}', '7ba6fbcf6b0f7cf2dbc6b72e1e64d06e1a116ec5b1ded43f7e0d820f23a414af');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:35:00.000000+00:00', 'put away', 'owner', '{"code":"W005","listing":"L-W5","now":["items f96b95bee67a2ff4 - 50b24f0cd392","slots W005 on_item a1fdfb2c692e","stays 5734f19e5f1355b6 stored 59e621201156"],"stay":"5734f19e5f1355b6","title":"Front wheel 5","turn":1}', 'a202944013410b7f9d9d188804ed8a489c1bf3ba48f6ee7180e944e29b1b53fe');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:38:00.000000+00:00', 'put away', 'owner', '{"code":"W006","listing":"L-W6","now":["items be81ac0cd0ce5a0c - 626139bc7360","slots W006 on_item 3dd6244f0bee","stays fb9f3c6d78bb11b1 stored d454a3aa9069"],"stay":"fb9f3c6d78bb11b1","title":"Front wheel 6","turn":1}', '55bcfbb12fbb9793a3bfab0cc88752507e8dfc1c00d2c5233d352ece91593025');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:41:00.000000+00:00', 'put away', 'owner', '{"code":"W007","listing":"L-W7","now":["items 039821f1fcc4433d - a5417795aa08","slots W007 on_item d52463b699e2","stays a9554b6831f14c9e stored f1acb01275a0"],"stay":"a9554b6831f14c9e","title":"Front wheel 7","turn":1}', 'b6b5d53029e814aeac4b20f456f5be8ba9d06bd7ea0822fb296453fd3b35919f');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:44:00.000000+00:00', 'put away', 'owner', '{"code":"W008","listing":"L-W8","now":["items 0b3fc43346c95a06 - c2a69c3ff38c","slots W008 on_item 2e167460fb16","stays e36861a7556284ab stored 0b0c7f666967"],"stay":"e36861a7556284ab","title":"Front wheel 8","turn":1}', '95e4b5770b679d02d9256e6f3f4ccfac9e16282b23b01b397664f683b71dfc43');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:47:00.000000+00:00', 'put away', 'owner', '{"code":"W009","listing":"L-W9","now":["items 63f38a76ee6ed148 - cb2006dde6f7","slots W009 on_item 597fc2f4b56e","stays c9a11851abf8555b stored 10e02a152a5e"],"stay":"c9a11851abf8555b","title":"Front wheel 9","turn":1}', '6df7b1eb1d5e86dbd688f063a6df3b3cfcf54606073221876586d49c9e54433b');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:50:00.000000+00:00', 'put away', 'owner', '{"code":"W010","listing":"L-W10","now":["items ba90bae5e3d93037 - d3977fc7c714","slots W010 on_item 7d0365c2d2de","stays 8a4f86f3f28d388f stored da338151ee22"],"stay":"8a4f86f3f28d388f","title":"Front wheel 10","turn":1}', 'ca64a540dba4eae3afd1b5f6afd8519a9e9b62ad291e0f671fda83aa578053bc');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:53:00.000000+00:00', 'put away', 'owner', '{"code":"W011","listing":"L-W11","now":["items fe7ece992e8f7102 - ff4a9cfccff0","slots W011 on_item d3a26b640d71","stays 8c8699e2885f2a46 stored 947dba559e0c"],"stay":"8c8699e2885f2a46","title":"Front wheel 11","turn":1}', '1903550fbf4453c1901e0b56c6bf8973f51a452b0c6822b1d65033bf26e752a4');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:56:00.000000+00:00', 'put away', 'owner', '{"code":"W012","listing":"L-W12","now":["items e12ddc4455eaf39f - 521d13760a4b","slots W012 on_item ac10bfb906d6","stays 9cf9514fafdd8634 stored 2f13e11a226d"],"stay":"9cf9514fafdd8634","title":"Front wheel 12","turn":1}', '91a9022224f1fc28049972a8e39e0130c23deecd4ff622eee109b7cbca1df639');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:59:00.000000+00:00', 'put away', 'owner', '{"code":"D013","listing":"","now":["items 8563d3667e8c7941 - 6361521dc0e8","slots D013 on_item 69b6f1c92d5d","stays 1446c5e8fae03427 stored a9d7b3a5bafe"],"stay":"1446c5e8fae03427","title":"Brass bell","turn":1}', '05e1d6f2434a2149509014bd50481a840eee9b8037cf208be3feea849fd67134');
INSERT INTO public.ledger VALUES (62, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'owner', '{"code":"D002","notes":"Cable is new","now":["items 5d58f3432ecdd4f4 - f19b1e3dd5ba"],"stay":"08bc2ba3bc929d15"}', '8c80821b8e9090e90e97c4869c8114382994656f947b8c4a869f8c9e31a9fc58');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'owner', '{"code":"S010","now":["stays ef4ee4d6059913e3 withdrawn 56462c1dfc31","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"ef4ee4d6059913e3"}', '8c58f03f5325dad448f629f7f8aa3ba246eb114fada75b09d5d94d8d62091ca4');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'owner', '{"code":"W004","now":["stays 8dc7ab4d9b240088 withdrawn 4f27d2f38878","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"8dc7ab4d9b240088"}', 'ed10f9f41c4fb88d416f40b4dc21e1cd78da51d4ad027a8362811a9b507c5471');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:11:00.000000+00:00', 'moved', 'owner', '{"code":"S009","new_stay":"de8ae6284d2a3d30","now":["stays 9a6ae9a9b8667455 moved 5d81a9669ada","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays de8ae6284d2a3d30 stored 8b01646eb592"],"stay":"9a6ae9a9b8667455","to":"S013"}', '975fe3c4c29b36c79895183a585719ef24104a487d4c42115fb694764f532867');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'owner', '{"code":"D001","now":["items dbeb957f356d099e - 9c5a6a88118c"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"e7ae8476e6d8dc98"}', '727c5d488f5d5bb68c14cecdfb030c9a45b46c780608fb054db91ee5891dbda0');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'owner', '{"code":"S001","now":["items 9a9b6db20171cedd - f57d1bd8a9fa"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"0ee4d85b2b413b51"}', 'bef4e9351a15581c445aab687371c012c640c1ab00f8d9b5452fdbf166988d34');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:23:00.000000+00:00', 'settings changed', 'owner', '{"auto_close":true,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"gone_days":3,"hand_overs":false,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"slip_closes":false,"zone":"UTC"}', '83bdccf2190560eb0d7f9363794002ea1fe97bf8f159b842c28fece066e869b5');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:27:00.000000+00:00', 'racks measured', 'owner', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '0e939185bee0bc978770227df2a17633e1206366528b2c03bc3132ce8816f9c2');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:28:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'df169aa05b7dce0cdb4aa0bb9ab6bb24a7d6059085154861313e9ab0ac240a58');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:29:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '62720bd5e5e677ee3493d29c91b7290bc7695869ed16ea0316092df7a01bca19');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:30:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', '62c75600bacce65c72b0b49694f7f7a2393d4b4341bd1188e96f79a26718dca8');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"957a330605ed3f37","reference":"W001-01E","stay":"4865091986bedbf5"},{"hold":null,"line":"c5a1f1bb83eca545","reference":"W002-016","stay":"e34ec914e5f35005"}],"now":["orders 6610f58bfe9c0041 - 75029a8c06d6","lines 957a330605ed3f37 waiting 4f671e08598f","lines c5a1f1bb83eca545 waiting de80cb300497"],"number":"B-01","order":"6610f58bfe9c0041"}', '5b9f7d6375ec716c55023082361f4ad22b01bffd5930d1392f37b45a6a530bd5');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"f1ce63f5d897ad7d","reference":"S002-013","stay":"35fb3cb04351d38d"},{"hold":null,"line":"454a7fee1ec6fb8b","reference":"S003-01W","stay":"ca14ecaf80a56064"}],"now":["orders e3163c3aa35059d1 - bb3c95da2230","lines f1ce63f5d897ad7d waiting f4eda54afe13","lines 454a7fee1ec6fb8b waiting f70497557e54"],"number":"B-03","order":"e3163c3aa35059d1"}', 'a13030e4f052019bde156a44234a270598ecdb1b6131e33f71397a4c60054c93');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ecb45aee048d418a","reference":"S004-01O","stay":"29b22239cda59ec6"},{"hold":null,"line":"1b22a298d08603a7","reference":"S005-01G","stay":"a91c3b45bdd5c910"}],"now":["orders 713882bd9a5788a0 - 74154419ab94","lines ecb45aee048d418a waiting 40f87cbac46a","lines 1b22a298d08603a7 waiting 615e334ed427"],"number":"B-04","order":"713882bd9a5788a0"}', 'a88f8a3eef71ffabbad8d77a2305b0beb7cb2fd1528d51840359d5ea7846df21');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9d2391ec34fb0501","reference":"L002-017","stay":"1f7d9d9b59a7c142"}],"now":["orders e3d143cb782d0f83 - 86966650e04c","lines 9d2391ec34fb0501 waiting 2feffa289aba"],"number":"B-05","order":"e3d143cb782d0f83"}', '214ab1349e8d62f991d9cefc1e478d35a0a291dd94dc2dee8bb1d07e995e0eb9');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:45:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"da86580c94096774","reference":"L003-010","stay":"72071651342ac77c"}],"now":["orders 08ea8e86fd5473dd - cb8bb225dd25","lines da86580c94096774 waiting 08db5b955f48"],"number":"B-06","order":"08ea8e86fd5473dd"}', '3b74cf6abd423080f9c645eedd482499e3cfd4955d6a73dc1ce808eef7960283');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:48:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"975901cf9c7a196f","reference":"L004-01S","stay":"3ac89c5d3d5aafd9"}],"now":["orders b7ba44ae62d1b546 - e6e4eb0d7672","lines 975901cf9c7a196f waiting 2772cb056b6b"],"number":"B-07","order":"b7ba44ae62d1b546"}', '5d3c55bc5f058221d82261af84d3f6a62a1bdb1ce2ef16969877706c85097308');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:51:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"9b4a55516f46b899","reference":"L005-01K","stay":"10544d9a6885473a"}],"now":["orders 5f6f3f1abe20e2d6 - e4adc8b9652f","lines 9b4a55516f46b899 waiting 520904f8de35"],"number":"B-08","order":"5f6f3f1abe20e2d6"}', '29598cb874b392659a93ed89761e2d0d915caf1b4ba98538a28b7916de2dffe3');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:54:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"10457d85c628b0cc","reference":"L006-01C","stay":"2861a524b12df386"},{"hold":null,"line":"62e81c177504b7f3","reference":"L011-010","stay":"d3616b1befbbe54a"}],"now":["orders a875280c2fe36706 - 68ea85b784d7","lines 10457d85c628b0cc waiting afeddd282238","lines 62e81c177504b7f3 waiting 670bdbcc1549"],"number":"B-09","order":"a875280c2fe36706"}', '92b52fbe199ac314dfc2cb4bc6764aae33d3dc493b705b5d7bdc8767bfea8bdc');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:57:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"e90450b8a4be83c5","reference":"S006-018","stay":"0d09ca6fe450a1c7"}],"now":["orders 78f927c42c3ed7c5 - afaaffd5a2ea","lines e90450b8a4be83c5 waiting c16b6b04fb56"],"number":"B-13","order":"78f927c42c3ed7c5"}', '1efaaac6892d999f0fbcacac090ef08ce703f2da97d3cfba0a790c796b6dd31f');
INSERT INTO public.ledger VALUES (82, '2026-03-02T12:00:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"264b24cefa8cea86","reference":"L007-014","stay":"795d1e1af801181a"}],"now":["orders 01fa57a06b154b83 - 376c4619ea51","lines 264b24cefa8cea86 waiting e564c399768b"],"number":"B-17","order":"01fa57a06b154b83"}', '7fc658c9a586b51a6809a125ceedf86c481fefe9e29aa666c85fcf0d688f8f8a');
INSERT INTO public.ledger VALUES (83, '2026-03-02T12:03:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"4408afe6fad62462","reference":"D009-01B","stay":"74b703b3f03556b0"}],"now":["orders 2f91301e72904519 - 15ca28632184","lines 4408afe6fad62462 waiting 668bc5191e20"],"number":"B-18","order":"2f91301e72904519"}', '54c047e76443e405c7f907500e13f9ac078258dd666987a5e666c8f56d2b94df');
INSERT INTO public.ledger VALUES (84, '2026-03-02T12:06:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"ca1ce755fcebae00","reference":"W006-013","stay":"fb9f3c6d78bb11b1"}],"now":["orders c87c34127d171d31 - 07de2c516b0e","lines ca1ce755fcebae00 waiting 29e0bdd61bcb"],"number":"B-21","order":"c87c34127d171d31"}', 'e5936213bf10265e93e9160ace70db8110b9c65bfe12eedce9e8ed34cc416d1f');
INSERT INTO public.ledger VALUES (85, '2026-03-02T12:09:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"3e73b5bc852c6e54","reference":"S007-01Z","stay":"432c8b841c8c3e65"}],"now":["orders 0cb04a3324ee31eb - bac0dcb78b72","lines 3e73b5bc852c6e54 waiting 4c5603822504"],"number":"B-22","order":"0cb04a3324ee31eb"}', 'd29d18905e542434ca1c0e724fbe83626774c396dac4e6d33ea624962a2132ca');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:12:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"a9e9b976e3ad7bdb","reference":"W007-01W","stay":"a9554b6831f14c9e"},{"hold":null,"line":"3eb39c3bbb3009d7","reference":"W008-01O","stay":"e36861a7556284ab"}],"now":["orders a11c86716774c1eb - 1744289ef5f4","lines a9e9b976e3ad7bdb waiting 1f0b22aa3f5b","lines 3eb39c3bbb3009d7 waiting 0dcffddb57d0"],"number":"B-23","order":"a11c86716774c1eb"}', '727cc054d4bc4bcda619755fc4acb3b9375cc665e46721c18cada32f1c73bf23');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:15:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"524f9b8cb2f7611e","reference":"D008-01J","stay":"6c96ef1898b7d3d1"}],"now":["orders 5570c1573af200a1 - e139471ed1be","lines 524f9b8cb2f7611e waiting 9fbbd6dad9a2"],"number":"B-26","order":"5570c1573af200a1"}', '78dea2fe08001e67a2842f1f49a6b1ac6f780899b6b3400045d2fd6960649b9f');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:18:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"7709713461aefb56","reference":"D003-01U","stay":"7dd5a0c97b72c2c7"}],"now":["orders d04a20fb1fb06fc3 - 9e9dc4a29e84","lines 7709713461aefb56 waiting f18569c775c2"],"number":"B-30","order":"d04a20fb1fb06fc3"}', '36a20fa6e82d5769cf2abc87c6aefdf79d221104bc6e9480c1c8b1fe5b09e60b');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:21:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"5f13861c5307264f","reference":"D005-01E","stay":"a79bfb3dc60681f7"},{"hold":"unknown_code","line":"32c9b8ed9af70c4d","reference":"Z999","stay":null}],"now":["orders c7462a120d129f0b - 9632ff4a1b1c","lines 5f13861c5307264f waiting 99961d4f5f72","lines 32c9b8ed9af70c4d unbound 0cd099733be5"],"number":"B-31","order":"c7462a120d129f0b"}', '9ae6cc220336918240eaa517e9b0d60d48f3183ac1d5c15e6031f5389e594d60');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:24:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"b1a40949018293fe","reference":"D006-016","stay":"7167afcec0f7a644"},{"hold":null,"line":"652ffce3919d581e","reference":"D007-01R","stay":"55178e0f03871b43"}],"now":["orders 8bd2192231287a34 - 0e36ec50e25f","lines b1a40949018293fe waiting 96b9e8343b53","lines 652ffce3919d581e waiting 54c000215609"],"number":"B-32","order":"8bd2192231287a34"}', 'ba812e27e16cf2f38a774288049b03611891e184daf3d4699cb747a0f78fb800');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:27:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"not_in_file","line":"652ffce3919d581e","reference":"D007-01R","stay":"55178e0f03871b43"}],"now":["lines 652ffce3919d581e waiting f2dea9a7d87e"],"number":"B-32","order":"8bd2192231287a34"}', 'e87d5e3f35e51c9e8ca9b3fe6a4932000c33ebce2d1267f7743adf89adb10145');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:30:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"4a4e4eccee5109d0","reference":"lamp","stay":null}],"now":["orders 4507cdc30c177735 - 94af93f340b3","lines 4a4e4eccee5109d0 unbound 56f27a3e652b"],"number":"B-33","order":"4507cdc30c177735"}', '910e648bb60a4dbfe78854a001078811c1f00f5531377f3e67b0118c7b5ecfde');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"already_sold","line":"947aefba9e276008","reference":"D006-016","stay":null}],"now":["orders 65248709f184881f - 0931e9d4461b","lines 947aefba9e276008 unbound 3351c29ca74a"],"number":"B-34","order":"65248709f184881f"}', '977f7643a4ae7bad15db1ae330a6962447b45231f8b8837706628ec20a08aa3f');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:36:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"4ac5b66c1eec060e","reference":"W004-01J","stay":null}],"now":["orders 2ec7a2bd0da63970 - 94d435a29683","lines 4ac5b66c1eec060e unbound 463ddf25df42"],"number":"B-35","order":"2ec7a2bd0da63970"}', 'f0fcee7bb5ba73a50d6f92f38b108026ffdf0ea3a2577cf0d0786dc17f1971b8');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:39:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"slot_free","line":"d3526126de176926","reference":"L015","stay":null}],"now":["orders 264f0427f90c966d - 95a194f02c7d","lines d3526126de176926 unbound a4affbd8b82b"],"number":"B-36","order":"264f0427f90c966d"}', '6e87d3a48b5138091b14adc6a4b7a4ccf14f36e542856ebed470c7268724bef4');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:42:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":"doubtful","line":"a3fc951d232b01d1","reference":"W005-01B","stay":"5734f19e5f1355b6"}],"now":["orders db51dd028d62e05b - 73a4c5148d9b","lines a3fc951d232b01d1 waiting f12134c641d3"],"number":"B-37","order":"db51dd028d62e05b"}', '170e72aa18ca378d9ee4da3acd998dfa48189d74aa1694947496b11aa4329be2');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:45:00.000000+00:00', 'settled', 'owner', '{"hold":"doubtful","line":"a3fc951d232b01d1","now":["lines a3fc951d232b01d1 waiting ee6f44e2d73e"],"stay":"5734f19e5f1355b6"}', '8c9f96083c6ace09078962e6536536ac065780deea7a0d4c4436f27de4760169');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:48:00.000000+00:00', 'doubted', 'owner', '{"doubt":"9910b7ee6d67d0ce","doubt_kind":"not_this","item":"061b08dd6e903629","now":["doubts 9910b7ee6d67d0ce - 918d8a2d37f0","lines 264b24cefa8cea86 waiting 56532f4b87e4"],"words":"Another lamp, by the photo"}', '0b0c7b8f121326904cbc2c68703f73ce1688dcb4d33d5f8bd64d27283c56c4ce');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:48:00.000000+00:00', 'held', 'owner', '{"line":"264b24cefa8cea86","why":"Another lamp, by the photo"}', '5a9ea92e441dde47a475e0b0064e3ef2cce9e919499777f2b28812e8abb7eced');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:51:00.000000+00:00', 'cancelled', 'owner', '{"lines":["9b4a55516f46b899"],"now":["lines 9b4a55516f46b899 cancelled df3428996a08"],"number":"B-08","order":"5f6f3f1abe20e2d6"}', '61bf60def40ea2857aa3bb1e617acfac74601ffbc41b56eff2a214e81a5b15c0');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:54:00.000000+00:00', 'cancelled', 'owner', '{"lines":["ca1ce755fcebae00"],"now":["lines ca1ce755fcebae00 cancelled db59ef14d6df"],"number":"B-21","order":"c87c34127d171d31"}', 'dc11949743487ce9623e0b37db7f66d6141e6b7f6e97dd8dec8ae40e4e8f363a');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:57:00.000000+00:00', 'revived', 'owner', '{"line":"ca1ce755fcebae00","now":["lines ca1ce755fcebae00 waiting 29e0bdd61bcb"],"stay":"fb9f3c6d78bb11b1"}', '3911d13fb4e8d19042e553c9d43b4411290012e2d0c76d2d6ec146491c1a3113');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:26:00.000000+00:00', 'card lost', 'owner', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', '719dcd39a48a1b6eaf01174146e3f2bb209c0f5143aa8949aa7861426f1e8fd8');
INSERT INTO public.ledger VALUES (103, '2026-03-02T13:00:00.000000+00:00', 'moved', 'owner', '{"code":"D008","new_stay":"2fabd06df93ac73f","now":["stays 6c96ef1898b7d3d1 moved d2d4ce9a3b15","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 2fabd06df93ac73f stored d03e3e04699c","lines 524f9b8cb2f7611e waiting 1f22d3a1d1c1"],"stay":"6c96ef1898b7d3d1","to":"D020"}', '0ec94c37e59266dc6d8a1652d3e08fe899582688004979438a4cd1c92bbda998');
INSERT INTO public.ledger VALUES (104, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":null,"line":"f13aaf876442f38f","reference":"S012-01O","stay":"5b2e00306e9a88a5"}],"now":["orders b92569953c1488d3 - 8cea60d32405","lines f13aaf876442f38f waiting 393c03a63b7a","orders bdfd213b3dfd65d9 - ded7482a0b19","lines 66e0615ce1462d22 unbound 33552a961f08"],"number":"F-1","order":"b92569953c1488d3"}', '2637193e692e39ad87d18af60ce9a72f291ff4dc144517ef45a21f13c29f6ace');
INSERT INTO public.ledger VALUES (105, '2026-03-02T13:05:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"bad_row","line":"66e0615ce1462d22","reference":"","stay":null}],"number":"F-2","order":"bdfd213b3dfd65d9"}', '2bbf1bbcf487687070f12bdb0a277898963902310c20c51ec54ce21f77734289');
INSERT INTO public.ledger VALUES (106, '2026-03-02T13:08:00.000000+00:00', 'round opened', 'owner', '{"lines":["957a330605ed3f37","c5a1f1bb83eca545","f1ce63f5d897ad7d","454a7fee1ec6fb8b","ecb45aee048d418a","1b22a298d08603a7","10457d85c628b0cc","62e81c177504b7f3","e90450b8a4be83c5","3e73b5bc852c6e54","a9e9b976e3ad7bdb","3eb39c3bbb3009d7"],"now":["rounds 75669567f40bd1a4 open 66e6a6da9418","lines f1ce63f5d897ad7d waiting 97050b3d929b","lines 454a7fee1ec6fb8b waiting a8eeef90eed2","lines ecb45aee048d418a waiting 5ba72e7360fd","lines 1b22a298d08603a7 waiting 77814e7bee12","lines e90450b8a4be83c5 waiting ef94f14563c8","lines 3e73b5bc852c6e54 waiting e34c59e6127d","lines 957a330605ed3f37 waiting d39ae2272c75","lines c5a1f1bb83eca545 waiting fe16376549d6","lines a9e9b976e3ad7bdb waiting 5105bffc0275","lines 3eb39c3bbb3009d7 waiting 19c0664bfa1f","lines 10457d85c628b0cc waiting 97e4706194be","lines 62e81c177504b7f3 waiting 209166adb054"],"round":"75669567f40bd1a4"}', 'b6a8afe11d46e4fe1b5ffdeb7ed052796dc90776e0e364fc3c5f658913d2e284');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:11:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 7e8aa792bf9b","scans free-D004 - 0febeb01862c"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '68c1401c28e2a0bbc365200ea495ab72589c8958a3b9452115dce98ad7008201');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:14:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"957a330605ed3f37","line_state":"picked","now":["slots W001 on_item 1f655d2b3fac","lines 957a330605ed3f37 picked af277fb0d690","scans pick-W001 - 9b75abc29f6a"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '6fafce2391b78141dfe6945487a16ba277ec30eb0c52c1e1644deebfa50bfe04');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:17:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"c5a1f1bb83eca545","line_state":"picked","now":["slots W002 on_item bac50593c7ce","lines c5a1f1bb83eca545 picked e166c63b55f3","scans pick-W002 - bf88eab7f352"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '428a03003671e66d7ccc3d5b5d2699d62351af13684d756866d9567ee8ded73f');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:20:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"f1ce63f5d897ad7d","line_state":"picked","now":["slots S002 on_item 9561c56ea404","lines f1ce63f5d897ad7d picked dc5413ff60da","scans pick-S002 - 6dbeaf5fedd9"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '2324468fac219eb368d4c58b0b6cd90f6dc447cc994cbb5c804c426c9bca50b2');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:23:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"454a7fee1ec6fb8b","line_state":"picked","now":["slots S003 on_item 78760f88dec3","lines 454a7fee1ec6fb8b picked ec955f9886e3","scans pick-S003 - bcf00cee7bd5"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'f673971326756532a160172b1054f111ae7ce44a7fc6398234fdea783387c472');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:26:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"ecb45aee048d418a","line_state":"picked","now":["slots S004 on_item 873005667599","lines ecb45aee048d418a picked 5eecf4cf09db","scans pick-S004 - 40ec010d50e9"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'e81ea2c0edf7f7712b65c1e3ed23b80f19c9c4a9de4c629df8c93594fc86388c');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:29:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"1b22a298d08603a7","line_state":"picked","now":["slots S005 on_item 2ede6bc35d1e","lines 1b22a298d08603a7 picked dc173c4461ce","scans pick-S005 - 0cb3c1d4f70b"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '578701bac964bcf97e6bddebf4546e90f48dcc5d8078db93cc37be0ebff6c6ce');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:32:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"10457d85c628b0cc","line_state":"picked","now":["slots L006 on_item 9d03304ab0cf","lines 10457d85c628b0cc picked 5c4d5d449edd","scans pick-L006 - 1e0b97b6422f"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '70036295add6843ea299ea41a766ba60407d93b3e6c45f3c118c2f48ac81854f');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:35:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"62e81c177504b7f3","line_state":"picked","now":["slots L011 on_item 1f79393e7ee7","lines 62e81c177504b7f3 picked 82908ac0b47a","scans pick-L011 - a96e92f86c74"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', '3bc5e9e1ad3e7dbb05da50d3542896f895a6dc405b5b94a38414f635fde6d5d6');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:38:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"e90450b8a4be83c5","line_state":"picked","now":["slots S006 on_item 7cb00a7b9b74","lines e90450b8a4be83c5 picked 2c2179be1073","scans pick-S006 - b8b2c3001c68"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '8859c849a15836b25aba47c85e8376fa615f910151138cd98b4cc7d31a854416');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:41:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"3e73b5bc852c6e54","line_state":"picked","now":["slots S007 on_item 364eeba0fb6f","lines 3e73b5bc852c6e54 picked 03470ce38ed7","scans pick-S007 - d2044695bcce"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '8083969ec29f6de979fa36e0cbb5ea4c8d08b1815e7b052d6af2fc384d41ad6f');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:44:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"a9e9b976e3ad7bdb","line_state":"picked","now":["slots W007 on_item 9447d55b23d5","lines a9e9b976e3ad7bdb picked 11ee8f7ec614","scans pick-W007 - b4bbe143ed09"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '0b5e3cc405bc7e3f3833fdd45737d1337832aa79d2c3a07e04c760ea1a623394');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:47:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"3eb39c3bbb3009d7","line_state":"picked","now":["slots W008 on_item b96bd3763303","lines 3eb39c3bbb3009d7 picked c222ded199a7","scans pick-W008 - 9ffb618830c6"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"75669567f40bd1a4","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '9d1b8147488366527b212df704a9c981ce33320edc5cb255aeafd59bb4b05aa8');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:50:00.000000+00:00', 'undone', 'owner', '{"key":"pick-W008","line":"3eb39c3bbb3009d7","line_state":"waiting","now":["lines 3eb39c3bbb3009d7 waiting 19c0664bfa1f","slots W008 on_item 600fd25f1ca3"]}', 'b4c94aaae7d878962c167a02dc97733ac33d0e6515a2aaa7b7e19f87ffed0d06');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:53:00.000000+00:00', 'round closed', 'owner', '{"now":["rounds 75669567f40bd1a4 closed 5bc1ed27c0bd"],"round":"75669567f40bd1a4"}', '2cd7ac013d2e5dc6f4cda8329b62f73b2ad48179769c58f5e5d58d2c2c2d6f42');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:56:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels ffb0390cf46a8e6c open a0e1276cd31f","orders 6610f58bfe9c0041 - 40614c145f8f"],"orders":["6610f58bfe9c0041"],"parcel":"ffb0390cf46a8e6c","table":"main"}', 'b8327c0c3c95c5832a5390cdfd9f9cf3925f8752782b7853f3c1d7e4d78c148f');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:59:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"f1ce63f5d897ad7d","line_state":"picked","now":["slots S002 on_item c39dd4d0fbeb","scans other-S002 - 630c5075d918"],"order_number":"B-03","parcel":"ffb0390cf46a8e6c","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '11281740a150c039cc34a810e35953045f0063940dae026ab7a42ca13eb6f096');
INSERT INTO public.ledger VALUES (124, '2026-03-02T14:02:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"957a330605ed3f37","line_state":"packed","now":["lines 957a330605ed3f37 packed ad920600403f","slots W001 on_item eb040cf197fb","scans pack-W001 - 0c902f37fe74"],"order_number":"B-01","parcel":"ffb0390cf46a8e6c","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '50a1db660d69b88feef42dd8f5ff76a808d535c84fc8d0ce93fe1ebb2a0df5c5');
INSERT INTO public.ledger VALUES (125, '2026-03-02T14:05:00.000000+00:00', 'parcel closed', 'owner', '{"now":["lines c5a1f1bb83eca545 released 4239b09e052a","slots W002 due d86eb8fc3327","lines 957a330605ed3f37 released 21c86a683386","stays 4865091986bedbf5 shipped 3ba8b7c43e8c","slots W001 due b5d41d86ed77","stays e34ec914e5f35005 shipped f56393eae01f","parcels ffb0390cf46a8e6c closed 7f4bb81c771a","orders 6610f58bfe9c0041 - 75029a8c06d6","scans pack-W002 - 71437458042b"],"orders":["6610f58bfe9c0041"],"parcel":"ffb0390cf46a8e6c","released":["W001","W002"]}', '2ab7e56e14d8455001950d3d309af7218574de2e1b36bc2366b87923a5b37cef');
INSERT INTO public.ledger VALUES (126, '2026-03-02T14:05:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"c5a1f1bb83eca545","line_state":"released","order_number":"B-01","parcel":"ffb0390cf46a8e6c","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '2a00ab332bd3bc948990f37f22eda870ef401e386a1e6bd4e2e45c955cbbc831');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:08:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"957a330605ed3f37","line_state":"released","now":["slots W001 tray 59da7d32b1ad","scans back-W001 - 79aa7f9efd8c"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '693366ce3a1421033210531514fc7cadf60a9a8b1a2b4828b019d60085ca75bc');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:11:00.000000+00:00', 'put away', 'owner', '{"code":"W001","listing":"","now":["items 20549428cb44486a - 44394e9589a7","slots W001 on_item 4bac4e5a272f","stays 668662ff9a93f111 stored 277d8dba20c6"],"stay":"668662ff9a93f111","title":"Rear wheel","turn":2}', '44ea3a2517d94f2fa7f5a3389e94679985138e1bd7c72c20599c6d3e1edcf057');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:16:00.000000+00:00', 'label bound', 'owner', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - 486a71647f3d"],"parcel":"ffb0390cf46a8e6c"}', 'e81b9188f6fca1a21895a9566521eacd5638827abea5a329b3ce864248528087');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:19:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels 100046c4e4ecd07e open b457eb94de0d","orders a11c86716774c1eb - 0e89fcba1125"],"orders":["a11c86716774c1eb"],"parcel":"100046c4e4ecd07e","table":"main"}', 'c7253d8b35b192a67fc109c04c1d49410f67feac80bcfac4da52f0bf936e03f2');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:22:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"a9e9b976e3ad7bdb","line_state":"packed","now":["lines a9e9b976e3ad7bdb packed 1c18a4b00936","slots W007 on_item f7858253ed79","scans pack-W007 - 318ff7b7735d"],"order_number":"B-23","parcel":"100046c4e4ecd07e","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '2bbda77a181817b789ea9e062a865a83518073ee3ca997db94919e8d45402871');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:25:00.000000+00:00', 'parcel closed', 'owner', '{"now":["lines a9e9b976e3ad7bdb released f83e9daa3da7","stays a9554b6831f14c9e shipped 0f4d9c90d565","slots W007 due 1ac0a5f57d60","parcels 100046c4e4ecd07e closed ee0c207e81ba","orders a11c86716774c1eb - 1744289ef5f4"],"orders":["a11c86716774c1eb"],"parcel":"100046c4e4ecd07e","released":["W007"]}', '45908ea12351e7be12920ced8099769ca04343bf1665265b0288373cb0b22864');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:28:00.000000+00:00', 'parcel reopened', 'owner', '{"now":["lines a9e9b976e3ad7bdb packed 8728dfa0c665","stays a9554b6831f14c9e stored f1acb01275a0","slots W007 on_item c449e2456752","parcels 100046c4e4ecd07e open f1ffbf8c02c2","orders a11c86716774c1eb - 0e89fcba1125"],"orders":["a11c86716774c1eb"],"parcel":"100046c4e4ecd07e"}', '3d2e0d29ee839386fb61999af12591328f4bcaa08835978c3dc85bf627d31dba');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:31:00.000000+00:00', 'parcel closed', 'owner', '{"now":["lines a9e9b976e3ad7bdb released f83e9daa3da7","stays a9554b6831f14c9e shipped db0e78d8eb34","slots W007 due 1ac0a5f57d60","parcels 100046c4e4ecd07e closed b89c74cd31eb","orders a11c86716774c1eb - 1744289ef5f4"],"orders":["a11c86716774c1eb"],"parcel":"100046c4e4ecd07e","released":["W007"]}', '3c5ed152e7b75df08437d6f9bed0671de9b9917ba33f0c169164a01276cac597');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:34:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels 6b78cd09eadea711 open b68103c75e47","orders 0cb04a3324ee31eb - 6aea8fc2bd2e"],"orders":["0cb04a3324ee31eb"],"parcel":"6b78cd09eadea711","table":"main"}', '29841964ec60d4dd2dae87f9bd6041fde627531140bc3db2804957b412dcc361');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:37:00.000000+00:00', 'parcel dropped', 'owner', '{"now":["parcels 6b78cd09eadea711 dropped 56b8ff6cd0e4","orders 0cb04a3324ee31eb - bac0dcb78b72"],"parcel":"6b78cd09eadea711"}', '3a8a6564895c3c0429e5ed81a555ea4750dc768c9ab1b56b7ea61927b9480316');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:40:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels 4d112279654459e1 open 7666b20bc40a","orders 713882bd9a5788a0 - 480f3a92fdfa"],"orders":["713882bd9a5788a0"],"parcel":"4d112279654459e1","table":"main"}', '01ea982a743df67270c564bccbf502bf025a6bd3b934877d40f1c2e8b8593d03');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:43:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"ecb45aee048d418a","line_state":"packed","now":["lines ecb45aee048d418a packed 37acad63b243","slots S004 on_item caa14dde7f12","scans pack-S004 - 501b408d0254"],"order_number":"B-04","parcel":"4d112279654459e1","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'b5ba055ae50251c6d836ee5c411f6e05a0c96509cbf851b941442678670920f7');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:46:00.000000+00:00', 'parcel set aside', 'owner', '{"now":["parcels 4d112279654459e1 aside 58d493fd7cfd"],"parcel":"4d112279654459e1"}', 'a98167dcd15f48da65942dc9e629d6e97ccf608892b7e658262ef719c412b595');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:49:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels 99621a9608d0f317 open 8667b61c8912","orders a875280c2fe36706 - 7b42d4da6cad"],"orders":["a875280c2fe36706"],"parcel":"99621a9608d0f317","table":"second"}', 'b09bda4ea6a8543cf18318d51b1459007de8c747d5ecbc5fd8716152b5e866e0');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:52:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"10457d85c628b0cc","line_state":"packed","now":["lines 10457d85c628b0cc packed 8d24e06f5a27","slots L006 on_item abc765bc776d","scans pack-L006 - 9e30467192cf"],"order_number":"B-09","parcel":"99621a9608d0f317","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '914bb001bf55dca850a7ee7f347e127556ae2448ac773c7bc28586f980470885');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:55:00.000000+00:00', 'cancelled', 'owner', '{"lines":["10457d85c628b0cc","62e81c177504b7f3"],"now":["lines 10457d85c628b0cc packed 1f659d000d7e","lines 62e81c177504b7f3 cancelled 13032dd9f496"],"number":"B-09","order":"a875280c2fe36706"}', '24c7a8a47063e2b5fdb4e9c7f4fa11b0c54aa3a680fb3db9e16b2b71a14c0912');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:58:00.000000+00:00', 'parcel opened', 'owner', '{"now":["parcels a494a24892336762 open 6096acd42553","orders e3163c3aa35059d1 - 5df9b6c2fcf2"],"orders":["e3163c3aa35059d1"],"parcel":"a494a24892336762","table":"main"}', 'a1b534b720f2f55aec51d3dabf20372c3ae731df235d0664230e403820df6e6f');
INSERT INTO public.ledger VALUES (144, '2026-03-02T15:01:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"f1ce63f5d897ad7d","line_state":"packed","now":["lines f1ce63f5d897ad7d packed 91b068310939","slots S002 on_item cd34add40ede","scans pack-S002 - 43a28943f6c0"],"order_number":"B-03","parcel":"a494a24892336762","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', '405b74fcd6bdd2556cd9d3ba224f28fe21ec08c67efcf8817a762d6a8ad81cb6');
INSERT INTO public.ledger VALUES (145, '2026-03-02T15:04:00.000000+00:00', 'order changed', 'owner', '{"lines":[{"hold":"changed_after_pick","line":"e90450b8a4be83c5","reference":"S006-018","stay":"0d09ca6fe450a1c7"}],"now":["lines e90450b8a4be83c5 picked 7e2927a49f28"],"number":"B-13","order":"78f927c42c3ed7c5"}', 'ef1c7f0f10e1320ffc93578f62fabeac9cb7a4e12aefc4affcb1408fe9d6c9de');
INSERT INTO public.ledger VALUES (146, '2026-03-02T15:07:00.000000+00:00', 'round opened', 'owner', '{"lines":["9d2391ec34fb0501","da86580c94096774","975901cf9c7a196f","524f9b8cb2f7611e"],"now":["rounds b77a82700b94ebe1 open 2f4d00696637","lines 524f9b8cb2f7611e waiting baa05b4600af","lines 9d2391ec34fb0501 waiting ff1964da02a7","lines da86580c94096774 waiting 25b38bb7f452","lines 975901cf9c7a196f waiting 2b6ca3688165"],"round":"b77a82700b94ebe1"}', '2b11c6f043a3ba6192a8964b4bcf56917d71fbec404ae54b5e7c3e00c736358c');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:10:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"9d2391ec34fb0501","line_state":"picked","now":["slots L002 on_item 6ed272d83463","lines 9d2391ec34fb0501 picked 378a892b30f6","scans pick-L002 - 40e40f90da5c"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b77a82700b94ebe1","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'f410e68e0a002129766de5e5ca5023c12b3df1a40db622d1884e3627219bf8b0');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:13:00.000000+00:00', 'short', 'owner', '{"line":"975901cf9c7a196f","note":"Not in its bin","now":["lines 975901cf9c7a196f short c5cc18846e79","doubts 1effc05c09f0cc7b - 8e39b7b26ee9"]}', '1c656b0407f27b2bcd8310467445b13d5e2b339c545708f3f51adb356d631bf7');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:13:00.000000+00:00', 'doubted', 'owner', '{"doubt":"1effc05c09f0cc7b","doubt_kind":"missing","item":"4a9e639e52b07d54","words":"Not in its bin"}', '5747918f56cdd5a90f270763d3a32c4d9563885ef499dbb8073a047ca020a551');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:16:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 5a08ad2fbc2c"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"b77a82700b94ebe1","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', 'afac8ae09aa4e82476897fd5f18a706093e13744eb4eeb3ab73082883515c706');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:19:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - db87a9b993bd"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"b77a82700b94ebe1","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '2c1d0046714a7cbfaab1b89f20722c0444fe086ce6a93a917ce10feb1d344f26');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:22:00.000000+00:00', 'scan', 'owner', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 1f91a9cc77a9"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"b77a82700b94ebe1","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', 'd28c422f40da8d40cd4f3a0711472e74bd2cf3a452f4a51d604e11e43cd1a2a0');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:30:00.000000+00:00', 'card lost', 'owner', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '0dfc614577c217bad3d07d11055b2d63724e1078adce93533eb85f590e372adb');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:33:00.000000+00:00', 'order received', 'owner', '{"channel":"fair","lines":[{"hold":null,"line":"09dc950b300bcee7","reference":"D001-019","stay":"e7ae8476e6d8dc98"},{"hold":"already_sold","line":"8574e328f2a674b1","reference":"W002-016","stay":null}],"now":["orders b901b01a8a18259e - d19c70936cee","lines 09dc950b300bcee7 waiting 58bcee2ae274","lines 8574e328f2a674b1 unbound 266bbe8193fc"],"number":"B-38","order":"b901b01a8a18259e"}', 'dc6d6dc17d4edad3009cfc29a10da09ff6e59715a6643239c58d9a6204d8ffd5');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:36:00.000000+00:00', 'order received', 'owner', '{"channel":"","lines":[{"hold":"stale_code","line":"66b6c3bd0e41cde5","reference":"W001","stay":null}],"now":["orders 34b293efc1f28e0d - 74e78ec5d868","lines 66b6c3bd0e41cde5 unbound f15f642e2798"],"number":"B-39","order":"34b293efc1f28e0d"}', 'c54173710b539b63ea2ad25ee3a1a0bfd9a6684755fa06613ce2dcdbab8cd79e');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:39:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:S","note":"Spring","now":["stocktakes 948ba8aa6b000157 open 691a8e77bb1c"],"stocktake":"948ba8aa6b000157"}', '3d999959a31ae826eecac7ed33d24e368bd70c7d7a246480bab85998c8087ef0');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:46:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - e7a724de786f","slots S001 on_item 872d970207d1","doubts 307b563170ab719c - 096e03320849"],"photo":null,"place":"B-1-1","stocktake":"948ba8aa6b000157","unread":0}', 'bee75da9b24b6fc2f6c84f9ab1807fcfb722a23176450f7e6d4e54c30d37c6f2');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:46:00.000000+00:00', 'doubted', 'owner', '{"doubt":"307b563170ab719c","doubt_kind":"not_this","item":"9a9b6db20171cedd","now":["slots S003 on_item 3395be099b21","slots S012 on_item 634a08e0ddaa","slots D010 on_item 5405b0cf5593"],"words":"A count found another thing on its card in B-1-1."}', '969d5d38c0be00e9db7c31dce90496e2f07fbad7db364250a75a5354faf8a346');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:54:00.000000+00:00', 'looked', 'owner', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["looks done-2 - ff727642c1dc","slots S011 on_item 2ae950069e69","slots S013 on_item 8cf986b30291"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"948ba8aa6b000157","unread":0}', '24c773c1f19b7ec845ada0155d8d4ab10f6bb980eabfec82394e8a90d8cbf8f0');
INSERT INTO public.ledger VALUES (161, '2026-03-02T16:00:00.000000+00:00', 'finding resolved', 'owner', '{"after":160,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item 50f14487cee2","resolutions 948ba8aa6b000157.elsewhere-S012 - 2adca3ae6ac4"],"reason":"","stocktake":"948ba8aa6b000157","sure":false}', 'e7badb0ee66af1bd40a99b2f673f7f7ae9edf85c857fc1b51716c6cd74602df1');
INSERT INTO public.ledger VALUES (162, '2026-03-02T16:03:00.000000+00:00', 'finding resolved', 'owner', '{"after":161,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 948ba8aa6b000157.unknown-Q0771 - 6f2e1b2f4a46"],"reason":"A neighbour''s","stocktake":"948ba8aa6b000157","sure":false}', 'aac54a52a73689bf7cf01735c5ce78dd5cee363d42933b3dfc29960077f98041');
INSERT INTO public.ledger VALUES (163, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'owner', '{"after":162,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item bd09887b09f0","resolutions 948ba8aa6b000157.missing-S008 - cb01bd1a9db1"],"reason":"","stocktake":"948ba8aa6b000157","sure":false}', 'fddae4c7685cd4a3f78a10828e68d10199e346ef1d32fa6a58fd415ef46ed383');
INSERT INTO public.ledger VALUES (164, '2026-03-02T16:09:00.000000+00:00', 'finding reopened', 'owner', '{"after":163,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 948ba8aa6b000157.missing-S008 - -"],"stocktake":"948ba8aa6b000157"}', '12e7eb921147c8b7772001fd0a4c9a6031060eb214b79678a58359ca54d34bd3');
INSERT INTO public.ledger VALUES (165, '2026-03-02T16:12:00.000000+00:00', 'doubted', 'owner', '{"doubt":"082fc0061a23b827","doubt_kind":"missing","item":"e39bad9ebf48d87b","now":["doubts 082fc0061a23b827 - b3eaa4f823dc","stocktakes 948ba8aa6b000157 closed 5e30123cb9c0"],"words":"a count of section:S did not find it"}', 'ea6190a68869961fd7bcd2881a404b19ef21eaca1784d3eeee6e1c4821ef30b1');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:12:00.000000+00:00', 'stocktake closed', 'owner', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"948ba8aa6b000157"}', 'b70da30317a5bfaa43b483532936bce53479cbef2d69db01efec70b7c9505bc2');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:15:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:L","note":"Spring","now":["stocktakes 6d1e8d9de26a5ef4 open 253e323b4420"],"stocktake":"6d1e8d9de26a5ef4"}', '3802b83e7da1e317f6b91105d44aa0f66d4ec5262cb533140d0fdfe8067f5a24');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:22:00.000000+00:00', 'looked', 'owner', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - ea2d2236d9e6","slots L003 on_item cf89e34a4837","slots L004 on_item 8eabb90ae999","slots L005 on_item 5e697df6ee9d","slots L007 on_item c7156d7142ee"],"photo":null,"place":"C-1-1","stocktake":"6d1e8d9de26a5ef4","unread":0}', '527364b7f49303d11140353be6b980fd609ae7ec7db2b383e077936dafb2ac1e');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:25:00.000000+00:00', 'card lost', 'owner', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 67205b8a2a007275 - 98ebb51e38d5"]}', 'bed7af657d872d9153e397f5ec9a25f1f68bb50fdeb2acfe074b2297cf7e62f4');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:25:00.000000+00:00', 'doubted', 'owner', '{"doubt":"67205b8a2a007275","doubt_kind":"missing","item":"d3b21ee04eb826f4","now":["resolutions 6d1e8d9de26a5ef4.missing-L008 - a9fa34011441"],"words":"a count did not find it"}', 'd2150d4ba03f0f409707232b3367ea550788623c33251677e5ff9781b856f6da');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:25:00.000000+00:00', 'finding resolved', 'owner', '{"after":168,"finding":"missing-L008","how":"lost","reason":"","stocktake":"6d1e8d9de26a5ef4","sure":false}', 'ba2a6a2b1dc9a3242ea714b49eafe94ba450c72f72a7475b3901804105c1c7c7');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:28:00.000000+00:00', 'withdrawn', 'owner', '{"code":"L009","now":["stays cb88ee140e40e35e withdrawn 885cb256145f","slots L009 due 821cc144d722","resolutions 6d1e8d9de26a5ef4.missing-L009 - 88a8548c3ab9"],"reason":"Nowhere to be found","stay":"cb88ee140e40e35e"}', '01262ce0fd633a2327bb4d7cc66c001b9a775f1289a4d0e95b1da94cbfe2dd5e');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:28:00.000000+00:00', 'finding resolved', 'owner', '{"after":171,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"6d1e8d9de26a5ef4","sure":false}', 'a86bbe1590e88114d096aafa425c282ae5136657e2243151e5279182586febcd');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:31:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"section:D","note":"","now":["stocktakes 417157a4cea498d3 open 273575f745c8"],"sample":{"bins":["A-1-3"],"chosen":"blind","of":3},"stocktake":"417157a4cea498d3"}', '35e53ef77c3f53f22632eb4ae1f32a9960119cda0b4333a1e7c9c941050359a9');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:34:00.000000+00:00', 'stocktake opened', 'owner', '{"area":"tray","note":"Too late today","now":["stocktakes 39bee6c106762a40 open 2d25050c9ac4"],"stocktake":"39bee6c106762a40"}', '1dfaa5bebe0c0226c738a5fc359679585bab65d99e9867ca79151854a6e3572a');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:37:00.000000+00:00', 'stocktake cancelled', 'owner', '{"now":["stocktakes 39bee6c106762a40 cancelled b78a29a2e217"],"stocktake":"39bee6c106762a40"}', '91d3a24d02239c4a3a1d2422d568e12dea271ef13c9b44f1149dfba99f0afe18');
INSERT INTO public.lines VALUES (15, '4408afe6fad62462', '2f91301e72904519', 1, 'D009-01B', 'Rear derailleur 9', '', '74b703b3f03556b0', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, '7709713461aefb56', 'd04a20fb1fb06fc3', 1, 'D003-01U', 'Bell with a crown', '', '7dd5a0c97b72c2c7', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '5f13861c5307264f', 'c7462a120d129f0b', 1, 'D005-01E', 'Rear derailleur 5', '', 'a79bfb3dc60681f7', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '32c9b8ed9af70c4d', 'c7462a120d129f0b', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'b1a40949018293fe', '8bd2192231287a34', 1, 'D006-016', 'Rear derailleur 6', '', '7167afcec0f7a644', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, '652ffce3919d581e', '8bd2192231287a34', 2, 'D007-01R', 'Rear derailleur 7', '', '55178e0f03871b43', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, '4a4e4eccee5109d0', '4507cdc30c177735', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, '947aefba9e276008', '65248709f184881f', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '4ac5b66c1eec060e', '2ec7a2bd0da63970', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, 'd3526126de176926', '264f0427f90c966d', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, 'a3fc951d232b01d1', 'db51dd028d62e05b', 1, 'W005-01B', 'Bell with a crown', '', '5734f19e5f1355b6', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, '264b24cefa8cea86', '01fa57a06b154b83', 1, 'L007-014', 'Dynamo lamp 7', '', '795d1e1af801181a', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, '9b4a55516f46b899', '5f6f3f1abe20e2d6', 1, 'L005-01K', 'Dynamo lamp 5', '', '10544d9a6885473a', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, 'ca1ce755fcebae00', 'c87c34127d171d31', 1, 'W006-013', 'Front wheel 6', '', 'fb9f3c6d78bb11b1', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'f13aaf876442f38f', 'b92569953c1488d3', 1, 'S012-01O', '', '', '5b2e00306e9a88a5', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '66e0615ce1462d22', 'bdfd213b3dfd65d9', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '957a330605ed3f37', '6610f58bfe9c0041', 1, 'W001-01E', 'Front wheel 1', '', '4865091986bedbf5', 'released', 'ffb0390cf46a8e6c', '75669567f40bd1a4', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, 'c5a1f1bb83eca545', '6610f58bfe9c0041', 2, 'W002-016', 'Front wheel 2', '', 'e34ec914e5f35005', 'released', 'ffb0390cf46a8e6c', '75669567f40bd1a4', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (18, 'a9e9b976e3ad7bdb', 'a11c86716774c1eb', 1, 'W007-01W', 'Front wheel 7', '', 'a9554b6831f14c9e', 'released', '100046c4e4ecd07e', '75669567f40bd1a4', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (4, '454a7fee1ec6fb8b', 'e3163c3aa35059d1', 2, 'S003-01W', 'Leather saddle 3', '', 'ca14ecaf80a56064', 'picked', NULL, '75669567f40bd1a4', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (5, 'ecb45aee048d418a', '713882bd9a5788a0', 1, 'S004-01O', 'Leather saddle 4', '', '29b22239cda59ec6', 'packed', '4d112279654459e1', '75669567f40bd1a4', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '10457d85c628b0cc', 'a875280c2fe36706', 1, 'L006-01C', 'Dynamo lamp 6', '', '2861a524b12df386', 'packed', '99621a9608d0f317', '75669567f40bd1a4', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (12, '62e81c177504b7f3', 'a875280c2fe36706', 2, 'L011-010', 'Dynamo lamp 11', '', 'd3616b1befbbe54a', 'cancelled', NULL, '75669567f40bd1a4', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (6, '1b22a298d08603a7', '713882bd9a5788a0', 2, 'S005-01G', 'Leather saddle 5', '', 'a91c3b45bdd5c910', 'picked', NULL, '75669567f40bd1a4', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, '3e73b5bc852c6e54', '0cb04a3324ee31eb', 1, 'S007-01Z', 'Leather saddle 7', '', '432c8b841c8c3e65', 'picked', NULL, '75669567f40bd1a4', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, '3eb39c3bbb3009d7', 'a11c86716774c1eb', 2, 'W008-01O', 'Front wheel 8', '', 'e36861a7556284ab', 'waiting', NULL, '75669567f40bd1a4', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, 'f1ce63f5d897ad7d', 'e3163c3aa35059d1', 1, 'S002-013', 'Leather saddle 2', '', '35fb3cb04351d38d', 'packed', 'a494a24892336762', '75669567f40bd1a4', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, 'e90450b8a4be83c5', '78f927c42c3ed7c5', 1, 'S006-018', 'Saddle with springs', '', '0d09ca6fe450a1c7', 'picked', NULL, '75669567f40bd1a4', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '524f9b8cb2f7611e', '5570c1573af200a1', 1, 'D008-01J', 'Rear derailleur 8', '', '2fabd06df93ac73f', 'waiting', NULL, 'b77a82700b94ebe1', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, '8574e328f2a674b1', 'b901b01a8a18259e', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (8, 'da86580c94096774', '08ea8e86fd5473dd', 1, 'L003-010', 'Dynamo lamp 3', '', '72071651342ac77c', 'waiting', NULL, 'b77a82700b94ebe1', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, '66b6c3bd0e41cde5', '34b293efc1f28e0d', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.lines VALUES (7, '9d2391ec34fb0501', 'e3d143cb782d0f83', 1, 'L002-017', 'Dynamo lamp 2', '', '1f7d9d9b59a7c142', 'picked', NULL, 'b77a82700b94ebe1', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '975901cf9c7a196f', 'b7ba44ae62d1b546', 1, 'L004-01S', 'Dynamo lamp 4', '', '3ac89c5d3d5aafd9', 'short', NULL, 'b77a82700b94ebe1', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '09dc950b300bcee7', 'b901b01a8a18259e', 1, 'D001-019', 'Rear derailleur 1', '', 'e7ae8476e6d8dc98', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '948ba8aa6b000157', 'B-1-1', '2026-03-02T15:46:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '948ba8aa6b000157', 'B-1-2', '2026-03-02T15:54:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '6d1e8d9de26a5ef4', 'C-1-1', '2026-03-02T16:22:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'e3d143cb782d0f83', 'B-05', 'fair', '2026-03-02T11:42:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (5, '08ea8e86fd5473dd', 'B-06', 'fair', '2026-03-02T11:45:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (6, 'b7ba44ae62d1b546', 'B-07', 'fair', '2026-03-02T11:48:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (7, '5f6f3f1abe20e2d6', 'B-08', 'fair', '2026-03-02T11:51:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (9, '78f927c42c3ed7c5', 'B-13', 'fair', '2026-03-02T11:57:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (10, '01fa57a06b154b83', 'B-17', 'fair', '2026-03-02T12:00:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (11, '2f91301e72904519', 'B-18', 'fair', '2026-03-02T12:03:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (12, 'c87c34127d171d31', 'B-21', 'fair', '2026-03-02T12:06:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (15, '5570c1573af200a1', 'B-26', 'fair', '2026-03-02T12:15:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (16, 'd04a20fb1fb06fc3', 'B-30', 'fair', '2026-03-02T12:18:00.000000+00:00', 16, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (17, 'c7462a120d129f0b', 'B-31', 'fair', '2026-03-02T12:21:00.000000+00:00', 17, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (18, '8bd2192231287a34', 'B-32', 'fair', '2026-03-02T12:24:00.000000+00:00', 18, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (19, '4507cdc30c177735', 'B-33', 'fair', '2026-03-02T12:30:00.000000+00:00', 19, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (20, '65248709f184881f', 'B-34', 'fair', '2026-03-02T12:33:00.000000+00:00', 20, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (21, '2ec7a2bd0da63970', 'B-35', 'fair', '2026-03-02T12:36:00.000000+00:00', 21, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (22, '264f0427f90c966d', 'B-36', 'fair', '2026-03-02T12:39:00.000000+00:00', 22, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (23, 'db51dd028d62e05b', 'B-37', 'fair', '2026-03-02T12:42:00.000000+00:00', 23, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (24, 'b92569953c1488d3', 'F-1', '', '2026-03-02T13:05:00.000000+00:00', 24, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (25, 'bdfd213b3dfd65d9', 'F-2', '', '2026-03-02T13:05:00.000000+00:00', 25, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (1, '6610f58bfe9c0041', 'B-01', 'fair', '2026-03-02T11:33:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (14, 'a11c86716774c1eb', 'B-23', 'fair', '2026-03-02T12:12:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (13, '0cb04a3324ee31eb', 'B-22', 'fair', '2026-03-02T12:09:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '');
INSERT INTO public.orders VALUES (3, '713882bd9a5788a0', 'B-04', 'fair', '2026-03-02T11:39:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', '4d112279654459e1', '');
INSERT INTO public.orders VALUES (8, 'a875280c2fe36706', 'B-09', 'fair', '2026-03-02T11:54:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '99621a9608d0f317', '');
INSERT INTO public.orders VALUES (2, 'e3163c3aa35059d1', 'B-03', 'fair', '2026-03-02T11:36:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'a494a24892336762', '');
INSERT INTO public.orders VALUES (26, 'b901b01a8a18259e', 'B-38', 'fair', '2026-03-02T15:33:00.000000+00:00', 26, NULL, NULL, NULL, '');
INSERT INTO public.orders VALUES (27, '34b293efc1f28e0d', 'B-39', '', '2026-03-02T15:36:00.000000+00:00', 27, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '');
INSERT INTO public.parcels VALUES (1, 'ffb0390cf46a8e6c', 'main', '6610f58bfe9c0041', '2026-03-02T13:56:00.000000+00:00', 'closed', '2026-03-02T14:05:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '100046c4e4ecd07e', 'main', 'a11c86716774c1eb', '2026-03-02T14:28:00.000000+00:00', 'closed', '2026-03-02T14:31:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '6b78cd09eadea711', 'main', '0cb04a3324ee31eb', '2026-03-02T14:34:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, '4d112279654459e1', 'main', '713882bd9a5788a0', '2026-03-02T14:40:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '99621a9608d0f317', 'second', 'a875280c2fe36706', '2026-03-02T14:49:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'a494a24892336762', 'main', 'e3163c3aa35059d1', '2026-03-02T14:58:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '948ba8aa6b000157.elsewhere-S012', '948ba8aa6b000157', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'owner', '2026-03-02T16:00:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:46:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "5b2e00306e9a88a5", "item": "94e5a5530408ab2a", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "f13aaf876442f38f", "order": "b92569953c1488d3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "5b2e00306e9a88a5", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:00:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "5b2e00306e9a88a5", "item": "94e5a5530408ab2a", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "f13aaf876442f38f", "order": "b92569953c1488d3", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "5b2e00306e9a88a5", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '948ba8aa6b000157.unknown-Q0771', '948ba8aa6b000157', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'owner', '2026-03-02T16:03:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '6d1e8d9de26a5ef4.missing-L008', '6d1e8d9de26a5ef4', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'owner', '2026-03-02T16:25:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "0ffe0a6e2884a78e", "item": "d3b21ee04eb826f4", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "0ffe0a6e2884a78e", "item": "d3b21ee04eb826f4", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["67205b8a2a007275"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '6d1e8d9de26a5ef4.missing-L009', '6d1e8d9de26a5ef4', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'owner', '2026-03-02T16:28:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "cb88ee140e40e35e", "item": "da09fe00e57f51c0", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "cb88ee140e40e35e", "item": "da09fe00e57f51c0", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, '75669567f40bd1a4', '2026-03-02T13:08:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, 'b77a82700b94ebe1', '2026-03-02T15:07:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '5b1475dd734342ec3a8f04b2f9f2ea68912f47d9cda01ffea4b6695849722b5c', 'bin', '75669567f40bd1a4', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:11:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', '2ac39c031ccd778c700194619ee1204ac91ac40183f4a3022eda275cdb617f1e', 'bin', '75669567f40bd1a4', 'W001', false, true, true, '957a330605ed3f37', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "6610f58bfe9c0041", "order_number": "B-01", "line": "957a330605ed3f37", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:14:00.000000+00:00', '["on_item", ["4865091986bedbf5", "stored"], ["957a330605ed3f37", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '9544ee99a76194e0f5cc124b96295f9e7ed7e53e34af42de09f60685b443d724', 'bin', '75669567f40bd1a4', 'W002', false, true, true, 'c5a1f1bb83eca545', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "6610f58bfe9c0041", "order_number": "B-01", "line": "c5a1f1bb83eca545", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:17:00.000000+00:00', '["on_item", ["e34ec914e5f35005", "stored"], ["c5a1f1bb83eca545", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', '37bea5967dc62137f049a73205782a42bbcf82c9fc82911a9b671698d6bdb65b', 'bin', '75669567f40bd1a4', 'S002', false, true, true, 'f1ce63f5d897ad7d', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e3163c3aa35059d1", "order_number": "B-03", "line": "f1ce63f5d897ad7d", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:20:00.000000+00:00', '["on_item", ["35fb3cb04351d38d", "stored"], ["f1ce63f5d897ad7d", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '8f63efc9eb172d9f4014c62ad704dd6e244a2fc484f1a7ab95013d28e4aa351c', 'bin', '75669567f40bd1a4', 'S003', false, true, true, '454a7fee1ec6fb8b', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "e3163c3aa35059d1", "order_number": "B-03", "line": "454a7fee1ec6fb8b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:23:00.000000+00:00', '["on_item", ["ca14ecaf80a56064", "stored"], ["454a7fee1ec6fb8b", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'a1b0248ce090ea3c143ae540a292291b24dd72eba8e8cc5a225a461a7f659a23', 'bin', '75669567f40bd1a4', 'S004', false, true, true, 'ecb45aee048d418a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "713882bd9a5788a0", "order_number": "B-04", "line": "ecb45aee048d418a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["29b22239cda59ec6", "stored"], ["ecb45aee048d418a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', 'a5ff1bf8d6782ed97b34ddfabda3ebb0cd976576112236081654abc2e4aa5e62', 'bin', '75669567f40bd1a4', 'S005', false, true, true, '1b22a298d08603a7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "713882bd9a5788a0", "order_number": "B-04", "line": "1b22a298d08603a7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["a91c3b45bdd5c910", "stored"], ["1b22a298d08603a7", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '29f6bd462148b420bfa41be1e1465b3b7fbdc0b67999692f6bc36dd17e3b65cb', 'bin', '75669567f40bd1a4', 'L006', false, true, true, '10457d85c628b0cc', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "a875280c2fe36706", "order_number": "B-09", "line": "10457d85c628b0cc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["2861a524b12df386", "stored"], ["10457d85c628b0cc", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', '9608d84de02973509f6aa142a6f54d6d298af9139f7f714282efa398f4e1a1b1', 'bin', '75669567f40bd1a4', 'L011', false, true, true, '62e81c177504b7f3', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "a875280c2fe36706", "order_number": "B-09", "line": "62e81c177504b7f3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["d3616b1befbbe54a", "stored"], ["62e81c177504b7f3", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', 'ba3ed7d86f8e89830da1bdc7af8d81d77e43cbd80ade83ce374dd1a5d5f33d66', 'bin', '75669567f40bd1a4', 'S006', false, true, true, 'e90450b8a4be83c5', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "78f927c42c3ed7c5", "order_number": "B-13", "line": "e90450b8a4be83c5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["0d09ca6fe450a1c7", "stored"], ["e90450b8a4be83c5", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '51c4d9be556e42d0c1c60db6612047e50e5c2a7f2da4bb42cabc7e49c5e751b4', 'bin', '75669567f40bd1a4', 'S007', false, true, true, '3e73b5bc852c6e54', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "0cb04a3324ee31eb", "order_number": "B-22", "line": "3e73b5bc852c6e54", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["432c8b841c8c3e65", "stored"], ["3e73b5bc852c6e54", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', '3b0cd9b6fddc496f3ae444773a842a84b4018d7484dbf2d73a1b3fdcae72c26f', 'bin', '75669567f40bd1a4', 'W007', false, true, true, 'a9e9b976e3ad7bdb', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "a11c86716774c1eb", "order_number": "B-23", "line": "a9e9b976e3ad7bdb", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["a9554b6831f14c9e", "stored"], ["a9e9b976e3ad7bdb", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '95aa8ed8fa1319acf884c75e530e768d636c521695c5718a7a7d90e29a5fe48c', 'bin', '75669567f40bd1a4', 'W008', false, true, true, '3eb39c3bbb3009d7', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "a11c86716774c1eb", "order_number": "B-23", "line": "3eb39c3bbb3009d7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["e36861a7556284ab", "stored"], ["3eb39c3bbb3009d7", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, 'f1ce63f5d897ad7d', 'ffb0390cf46a8e6c', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e3163c3aa35059d1", "order_number": "B-03", "line": "f1ce63f5d897ad7d", "line_state": "picked", "order_state": "picking", "parcel": "ffb0390cf46a8e6c", "parcel_state": "open", "released": []}', '', '2026-03-02T13:59:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '957a330605ed3f37', 'ffb0390cf46a8e6c', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "6610f58bfe9c0041", "order_number": "B-01", "line": "957a330605ed3f37", "line_state": "packed", "order_state": "picking", "parcel": "ffb0390cf46a8e6c", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:02:00.000000+00:00', '["on_item", ["4865091986bedbf5", "stored"], ["957a330605ed3f37", "packed", "ffb0390cf46a8e6c", []], ["ffb0390cf46a8e6c", "2026-03-02T13:56:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, 'c5a1f1bb83eca545', 'ffb0390cf46a8e6c', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "6610f58bfe9c0041", "order_number": "B-01", "line": "c5a1f1bb83eca545", "line_state": "released", "order_state": "released", "parcel": "ffb0390cf46a8e6c", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:05:00.000000+00:00', '["due", ["e34ec914e5f35005", "shipped"], ["c5a1f1bb83eca545", "released", "ffb0390cf46a8e6c", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '957a330605ed3f37', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "6610f58bfe9c0041", "order_number": "B-01", "line": "957a330605ed3f37", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:08:00.000000+00:00', '["tray", ["4865091986bedbf5", "shipped"], ["957a330605ed3f37", "released", "ffb0390cf46a8e6c", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'a9e9b976e3ad7bdb', '100046c4e4ecd07e', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "a11c86716774c1eb", "order_number": "B-23", "line": "a9e9b976e3ad7bdb", "line_state": "packed", "order_state": "waiting", "parcel": "100046c4e4ecd07e", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:22:00.000000+00:00', '["on_item", ["a9554b6831f14c9e", "stored"], ["a9e9b976e3ad7bdb", "packed", "100046c4e4ecd07e", []], ["100046c4e4ecd07e", "2026-03-02T14:19:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, 'ecb45aee048d418a', '4d112279654459e1', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "713882bd9a5788a0", "order_number": "B-04", "line": "ecb45aee048d418a", "line_state": "packed", "order_state": "picking", "parcel": "4d112279654459e1", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:43:00.000000+00:00', '["on_item", ["29b22239cda59ec6", "stored"], ["ecb45aee048d418a", "packed", "4d112279654459e1", []], ["4d112279654459e1", "2026-03-02T14:40:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '10457d85c628b0cc', '99621a9608d0f317', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "a875280c2fe36706", "order_number": "B-09", "line": "10457d85c628b0cc", "line_state": "packed", "order_state": "picking", "parcel": "99621a9608d0f317", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:52:00.000000+00:00', '["on_item", ["2861a524b12df386", "stored"], ["10457d85c628b0cc", "packed", "99621a9608d0f317", []], ["99621a9608d0f317", "2026-03-02T14:49:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, 'f1ce63f5d897ad7d', 'a494a24892336762', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e3163c3aa35059d1", "order_number": "B-03", "line": "f1ce63f5d897ad7d", "line_state": "packed", "order_state": "picking", "parcel": "a494a24892336762", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:01:00.000000+00:00', '["on_item", ["35fb3cb04351d38d", "stored"], ["f1ce63f5d897ad7d", "packed", "a494a24892336762", []], ["a494a24892336762", "2026-03-02T14:58:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', '31a1f055108e5f1e2f90b5fda4397ad0ee97325f3bd62d5388fa59b3a5440043', 'bin', 'b77a82700b94ebe1', 'L002', false, true, true, '9d2391ec34fb0501', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "e3d143cb782d0f83", "order_number": "B-05", "line": "9d2391ec34fb0501", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:10:00.000000+00:00', '["on_item", ["1f7d9d9b59a7c142", "stored"], ["9d2391ec34fb0501", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '0bf340dc42ed1d72b9d7cafa74db6ed7068cc0cf411b72f0da4bd4462694c0ed', 'bin', 'b77a82700b94ebe1', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:16:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'ed79e7db14effff38c92d2dd88047ea615c29b1e58e0e4245b3fc313f4373eb1', 'bin', 'b77a82700b94ebe1', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:19:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', '1b1f5e5b5486564410cf1b45b6162c248f6dd3fe2f509e13c0640c157461f784', 'bin', 'b77a82700b94ebe1', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:22:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:29:00.000000+00:00', NULL, 'bin', 'B-1-1', '75669567f40bd1a4', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:35:00.000000+00:00', NULL, 'bin', 'C-1-2', '75669567f40bd1a4', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T15:54:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:01:00.000000+00:00', 'a494a24892336762', 'bin', 'B-1-1', '75669567f40bd1a4', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:47:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:38:00.000000+00:00', NULL, 'bin', 'B-1-1', '75669567f40bd1a4', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:41:00.000000+00:00', NULL, 'bin', 'B-1-1', '75669567f40bd1a4', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:10:00.000000+00:00', NULL, 'bin', 'C-1-1', 'b77a82700b94ebe1', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:05:00.000000+00:00', 'ffb0390cf46a8e6c', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:22:00.000000+00:00', '100046c4e4ecd07e', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:43:00.000000+00:00', '4d112279654459e1', 'bin', 'B-1-1', '75669567f40bd1a4', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T14:52:00.000000+00:00', '99621a9608d0f317', 'bin', 'C-1-1', '75669567f40bd1a4', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:46:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:46:00.000000+00:00', NULL, 'bin', 'B-1-1', '75669567f40bd1a4', 2, NULL, NULL, false);
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
INSERT INTO public.stays VALUES (1, 'e7ae8476e6d8dc98', 'dbeb957f356d099e', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (2, '08bc2ba3bc929d15', '5d58f3432ecdd4f4', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (3, '7dd5a0c97b72c2c7', '33ec3f5928db347f', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (4, 'b1da1a5c28979791', '4b0936eaf201c26c', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (5, 'a79bfb3dc60681f7', '9191417afa863b20', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (6, '7167afcec0f7a644', '54bb9afccab06122', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (7, '55178e0f03871b43', '533bbf0f8c58319d', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (9, '74b703b3f03556b0', '610c5aaa65b0d030', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (10, '42ba43d3d54d0223', '3a8325eeb80f8e9f', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (11, '1d17276a6540f20b', '4569321f7b805242', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (12, 'c4238b50aa1b181e', '9464300993999ecb', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (13, '0ee4d85b2b413b51', '9a9b6db20171cedd', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (14, '35fb3cb04351d38d', 'da32dea975c99c08', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (15, 'ca14ecaf80a56064', '6d2804f5bdfb64a3', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (16, '29b22239cda59ec6', 'c0a718e676d611d9', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (17, 'a91c3b45bdd5c910', 'ec116e11dff5d85e', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (18, '0d09ca6fe450a1c7', 'c27a7af1b44d44b9', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (19, '432c8b841c8c3e65', 'cbef27f43abd6df8', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (20, '6964b402bffc8184', 'e39bad9ebf48d87b', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (23, 'be7c367965ed559d', '1d2afd039bb32ce6', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (24, '5b2e00306e9a88a5', '94e5a5530408ab2a', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (25, '374324cd01861eb9', '8fa06b1314120129', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (26, '1f7d9d9b59a7c142', 'bfda79e547af23ac', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (27, '72071651342ac77c', '70ed5248a9f03c57', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (28, '3ac89c5d3d5aafd9', '4a9e639e52b07d54', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (29, '10544d9a6885473a', 'be557446b6cbb225', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (30, '2861a524b12df386', 'e1996b9b6783c714', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (31, '795d1e1af801181a', '061b08dd6e903629', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (32, '0ffe0a6e2884a78e', 'd3b21ee04eb826f4', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (34, 'f01422dd4f538f1b', '498d8c7ebdb1b70f', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (35, 'd3616b1befbbe54a', '6105575dc648e82a', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (36, '6a0e4c543a0fe8c3', '3872019f9c3f5f91', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (39, 'c88edd629bfa4e96', '5f9e7b1b8ca5b787', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (41, '5734f19e5f1355b6', 'f96b95bee67a2ff4', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (42, 'fb9f3c6d78bb11b1', 'be81ac0cd0ce5a0c', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (44, 'e36861a7556284ab', '0b3fc43346c95a06', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (45, 'c9a11851abf8555b', '63f38a76ee6ed148', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (46, '8a4f86f3f28d388f', 'ba90bae5e3d93037', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (47, '8c8699e2885f2a46', 'fe7ece992e8f7102', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (48, '9cf9514fafdd8634', 'e12ddc4455eaf39f', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (49, '1446c5e8fae03427', '8563d3667e8c7941', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (22, 'ef4ee4d6059913e3', 'c4d9142977241677', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection');
INSERT INTO public.stays VALUES (40, '8dc7ab4d9b240088', '0cedf00f4a7e6b82', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use');
INSERT INTO public.stays VALUES (21, '9a6ae9a9b8667455', '0a78a168a13f4716', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '');
INSERT INTO public.stays VALUES (50, 'de8ae6284d2a3d30', '0a78a168a13f4716', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (8, '6c96ef1898b7d3d1', '60c5a9db19692514', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:00:00.000000+00:00', '');
INSERT INTO public.stays VALUES (51, '2fabd06df93ac73f', '60c5a9db19692514', 'D020', 1, '2026-03-02T13:00:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (37, '4865091986bedbf5', '207bd9b901176862', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (38, 'e34ec914e5f35005', 'e9e9ac71060089c9', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:05:00.000000+00:00', '');
INSERT INTO public.stays VALUES (52, '668662ff9a93f111', '20549428cb44486a', 'W001', 2, '2026-03-02T14:11:00.000000+00:00', 'stored', NULL, '');
INSERT INTO public.stays VALUES (43, 'a9554b6831f14c9e', '039821f1fcc4433d', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:31:00.000000+00:00', '');
INSERT INTO public.stays VALUES (33, 'cb88ee140e40e35e', 'da09fe00e57f51c0', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:28:00.000000+00:00', 'Nowhere to be found');
INSERT INTO public.stocktakes VALUES (1, '948ba8aa6b000157', 'section:S', 'Spring', '2026-03-02T15:39:00.000000+00:00', 156, 'closed', '2026-03-02T16:12:00.000000+00:00', '{"stocktake": "948ba8aa6b000157", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '6d1e8d9de26a5ef4', 'section:L', 'Spring', '2026-03-02T16:15:00.000000+00:00', 166, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, '417157a4cea498d3', 'section:D', '', '2026-03-02T16:31:00.000000+00:00', 173, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-3"]}');
INSERT INTO public.stocktakes VALUES (4, '39bee6c106762a40', 'tray', 'Too late today', '2026-03-02T16:34:00.000000+00:00', 174, 'cancelled', '2026-03-02T16:37:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, '75669567f40bd1a4', 1, 'f1ce63f5d897ad7d', 'B-1-1');
INSERT INTO public.stops VALUES (2, '75669567f40bd1a4', 2, '454a7fee1ec6fb8b', 'B-1-1');
INSERT INTO public.stops VALUES (3, '75669567f40bd1a4', 3, 'ecb45aee048d418a', 'B-1-1');
INSERT INTO public.stops VALUES (4, '75669567f40bd1a4', 4, '1b22a298d08603a7', 'B-1-1');
INSERT INTO public.stops VALUES (5, '75669567f40bd1a4', 5, 'e90450b8a4be83c5', 'B-1-1');
INSERT INTO public.stops VALUES (6, '75669567f40bd1a4', 6, '3e73b5bc852c6e54', 'B-1-1');
INSERT INTO public.stops VALUES (7, '75669567f40bd1a4', 7, '957a330605ed3f37', 'D-1-1');
INSERT INTO public.stops VALUES (8, '75669567f40bd1a4', 8, 'c5a1f1bb83eca545', 'D-1-1');
INSERT INTO public.stops VALUES (9, '75669567f40bd1a4', 9, 'a9e9b976e3ad7bdb', 'D-1-1');
INSERT INTO public.stops VALUES (10, '75669567f40bd1a4', 10, '3eb39c3bbb3009d7', 'D-1-1');
INSERT INTO public.stops VALUES (11, '75669567f40bd1a4', 11, '10457d85c628b0cc', 'C-1-1');
INSERT INTO public.stops VALUES (12, '75669567f40bd1a4', 12, '62e81c177504b7f3', 'C-1-2');
INSERT INTO public.stops VALUES (13, 'b77a82700b94ebe1', 1, '524f9b8cb2f7611e', 'A-1-2');
INSERT INTO public.stops VALUES (14, 'b77a82700b94ebe1', 2, '9d2391ec34fb0501', 'C-1-1');
INSERT INTO public.stops VALUES (15, 'b77a82700b94ebe1', 3, 'da86580c94096774', 'C-1-1');
INSERT INTO public.stops VALUES (16, 'b77a82700b94ebe1', 4, '975901cf9c7a196f', 'C-1-1');
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
