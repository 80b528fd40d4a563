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
    kept_until character varying(32)
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
INSERT INTO public.access VALUES (1, 'cdf6a17bd4e3d655d32915194f6888252f494058c213008cc25ee819aaf96309', 'boss', 'owner', 'token', '2026-03-02T08:01:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (2, '5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8', '$argon2id$v=19$m=19456,t=2,p=1$rk0siQiUVgWkj3aE5gYnXg$bIniMghSQQ3QLa4Zns3v8/QYe+Mjp1K6on2+UJfHpkM', 'owner', 'password', '2026-03-02T08:02:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (3, '0effd20c6a71601a991ead926404cc9d36fc6e467c7936d13f23dfb7d18b3b0d', 'owner', 'owner', 'session', '2026-03-02T08:04:00.000000+00:00', '2026-03-16T08:04:00.000000+00:00', '2026-03-02T08:04:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.access VALUES (4, '9c094c58ea4bb98d5ab846544c3f14720d097c4950abe4d82d319e38ca257170', 'label printer', 'program', 'token', '2026-03-02T08:05:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (5, '62e20a4cc15d26562550cf841271636654faebb3beee311af26813625509f373', 'helper', 'helper', 'token', '2026-03-02T08:06:00.000000+00:00', NULL, NULL, '');
INSERT INTO public.access VALUES (7, 'd3d96cb3449b0881b5fd7c8d06df87d88c4d80b7a4a85a3d434fec196c057151', 'Blue phone', 'helper', 'device', '2026-03-02T08:08:00.000000+00:00', '2027-03-02T08:08:00.000000+00:00', '2026-03-02T08:08:00.000000+00:00', 'Werkzeug/3.1.9');
INSERT INTO public.alembic_version VALUES ('0011');
INSERT INTO public.aliases VALUES (1, 'AB0123', 'D011', 'AB-0123');
INSERT INTO public.aliases VALUES (2, 'AB77X', 'S011', 'ab-77-x');
INSERT INTO public.aliases VALUES (3, 'BOX9', 'L010', 'BOX 9');
INSERT INTO public.answers VALUES (1, 'put-away-bell', '34fc69981dfa6de0dfe5c624d84237465fea4b81a10426c5f016e36dc132a967', 201, '/api/stays/2e170a6c20873a5d', '{"id": "2e170a6c20873a5d", "item": "741896f70854a178", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
INSERT INTO public.bins VALUES (1, 'A-1-1', 'A', 1, 1, 'D');
INSERT INTO public.bins VALUES (2, 'A-1-2', 'A', 1, 2, 'D');
INSERT INTO public.bins VALUES (3, 'A-1-3', 'A', 1, 3, 'D');
INSERT INTO public.bins VALUES (4, 'B-1-1', 'B', 1, 1, 'S');
INSERT INTO public.bins VALUES (5, 'B-1-2', 'B', 1, 2, 'S');
INSERT INTO public.bins VALUES (6, 'C-1-1', 'C', 1, 1, 'L');
INSERT INTO public.bins VALUES (7, 'C-1-2', 'C', 1, 2, 'L');
INSERT INTO public.bins VALUES (8, 'D-1-1', 'D', 1, 1, 'W');
INSERT INTO public.bins VALUES (9, 'D-1-2', 'D', 1, 2, 'W');
INSERT INTO public.doubts VALUES (1, '90679b2a7ef3d6e0', 'ecb60e326ae9a71e', 'not_this', 'Another lamp, by the photo', '2026-03-02T12:53:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (2, '74bca569195e235c', '830b84ca726d6770', 'missing', 'Not in its bin', '2026-03-02T15:21:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (3, 'f1cdc066394d3912', '46378519645cf117', 'not_this', 'A count found another thing on its card in B-1-1.', '2026-03-02T15:52:00.000000+00:00', 'boss', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', NULL, '', NULL);
INSERT INTO public.doubts VALUES (4, 'fa8855fc63fe0c7b', 'a011941fc31dd761', 'missing', 'a count of section:S did not find it', '2026-03-02T16:18:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.doubts VALUES (5, '1e450755fe276b44', 'b4cb1d1e7d354350', 'missing', 'a count did not find it', '2026-03-02T16:31:00.000000+00:00', 'boss', NULL, NULL, '', NULL);
INSERT INTO public.head VALUES (1, 182, 'b8f00630cfce5058dc014ed70928ed1055e946ac8ac79c409377a039c80fb9c5', '{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "paper": "a4", "dates": "", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false, "baskets": 0, "backups": {"places": [], "every_hours": 4, "days": 7, "weeks": 5, "months": 12}, "restored_at": "", "slips_from": 0}', 'f8d1b4c26147619b');
INSERT INTO public.items VALUES (3, 'c7f07acd9537589c', 'Rear derailleur 3', 'L-D3', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (4, '599806f47904a9cb', 'Rear derailleur 4', 'L-D4', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (5, 'a1fb79640513f0a1', 'Rear derailleur 5', 'L-D5', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (6, '64ad0d56e1be3627', 'Rear derailleur 6', 'L-D6', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (7, '9d6ca214ce593ff3', 'Rear derailleur 7', 'L-D7', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (8, '82d8030973b43c93', 'Rear derailleur 8', 'L-D8', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (9, '707cad7c535456d7', 'Rear derailleur 9', 'L-D9', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (10, '37b448822e1fd83f', 'Rear derailleur 10', 'L-D10', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (11, '39f4994a6d8f2f4f', 'Rear derailleur 11', 'L-D11', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (12, '3fed563e0f4fa15a', 'Rear derailleur 12', 'L-D12', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (14, '63511117c0de3a66', 'Leather saddle 2', 'L-S2', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (15, 'a328220e25b63625', 'Leather saddle 3', 'L-S3', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (16, '520fe663f6a308ae', 'Leather saddle 4', 'L-S4', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (17, 'e1751be58c1b01d8', 'Leather saddle 5', 'L-S5', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (18, '594f313c8f8b36ad', 'Leather saddle 6', 'L-S6', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (19, '1e77b3b53f83ca1d', 'Leather saddle 7', 'L-S7', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (20, 'a011941fc31dd761', 'Leather saddle 8', 'L-S8', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (21, '8392883c0e62708c', 'Leather saddle 9', 'L-S9', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (22, 'ef94cda20a288cd5', 'Leather saddle 10', 'L-S10', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (23, '7ec7491e45332b6a', 'Leather saddle 11', 'L-S11', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (24, '9732e8f07c48f736', 'Leather saddle 12', 'L-S12', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (25, 'b871ab10b88e99f6', 'Dynamo lamp 1', 'L-L1', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (26, 'aab77346772adf3b', 'Dynamo lamp 2', 'L-L2', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (27, '81fa2083b844f48f', 'Dynamo lamp 3', 'L-L3', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (28, '830b84ca726d6770', 'Dynamo lamp 4', 'L-L4', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (29, '4e1c41328817789f', 'Dynamo lamp 5', 'L-L5', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (30, '550e83d672bd99ad', 'Dynamo lamp 6', 'L-L6', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (31, 'ecb60e326ae9a71e', 'Dynamo lamp 7', 'L-L7', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (32, 'b4cb1d1e7d354350', 'Dynamo lamp 8', 'L-L8', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (33, '110214768bf3e512', 'Dynamo lamp 9', 'L-L9', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (34, 'f24da5a5a4c0ff9e', 'Dynamo lamp 10', 'L-L10', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (35, 'ed6ea546a48c7ab7', 'Dynamo lamp 11', 'L-L11', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (36, '7a1c89f35f44ac3c', 'Dynamo lamp 12', 'L-L12', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (37, '60d560ea05c43f8b', 'Front wheel 1', 'L-W1', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (38, 'd6c984b8b42f3ce3', 'Front wheel 2', 'L-W2', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (39, '9094f0ace6e8c763', 'Front wheel 3', 'L-W3', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (40, 'd0a3013a23bd0e68', 'Front wheel 4', 'L-W4', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (41, '3b33d0bf05d1e79a', 'Front wheel 5', 'L-W5', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (42, '0031108b39038891', 'Front wheel 6', 'L-W6', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (43, '1c5d3e00d6ec5c0c', 'Front wheel 7', 'L-W7', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (44, 'e3740345b0a69b94', 'Front wheel 8', 'L-W8', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (45, '5829170914a9e542', 'Front wheel 9', 'L-W9', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (46, '9d69ad8079a926e5', 'Front wheel 10', 'L-W10', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (47, 'ed5bbe863828b1e5', 'Front wheel 11', 'L-W11', 'Scratched, “used”', NULL, '', NULL);
INSERT INTO public.items VALUES (49, '741896f70854a178', 'Brass bell', '', '', NULL, '', NULL);
INSERT INTO public.items VALUES (2, '95abd2ef7f76e211', 'Rear derailleur 2', 'L-D2', 'Cable is new', NULL, '', NULL);
INSERT INTO public.items VALUES (1, '7aaa1cf1bec9603e', 'Rear derailleur 1', 'L-D1', 'Scratched, “used”', '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '', NULL);
INSERT INTO public.items VALUES (13, '46378519645cf117', 'Leather saddle 1', 'L-S1', 'Scratched, “used”', '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '', NULL);
INSERT INTO public.items VALUES (50, 'f8333bf8f251adc4', 'Carbide lamp', '', '', NULL, '', NULL);
INSERT INTO public.items VALUES (51, '22c2b60439123548', 'Rear lamp', '', '', NULL, '', NULL);
INSERT INTO public.items VALUES (48, '0eb637fcf029378a', 'Front wheel 12', 'L-W12', 'Scratched, “used”', NULL, 'Ann', '2026-12-24T23:59:59.000000+00:00');
INSERT INTO public.items VALUES (52, 'd2eb89fc8da2c001', 'Rear wheel', '', '', NULL, '', NULL);
INSERT INTO public.labels VALUES (1, 'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66', '2b58f557263d2d68', '2557');
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
INSERT INTO public.ledger VALUES (14, '2026-03-02T08:35:00.000000+00:00', 'put away', 'boss', '{"code":"D001","listing":"L-D1","now":["items 7aaa1cf1bec9603e - a09d60ce2605","slots D001 on_item e5405bc28ff8","stays 048bd6622af335cf stored 405c0f7044c4"],"stay":"048bd6622af335cf","title":"Rear derailleur 1","turn":1}', '519079767ddd379989d8935d52dceddb9eb9d071d504047ec5feaa09de129980');
INSERT INTO public.ledger VALUES (15, '2026-03-02T08:38:00.000000+00:00', 'put away', 'boss', '{"code":"D002","listing":"L-D2","now":["items 95abd2ef7f76e211 - 6c1502a68ac2","slots D002 on_item 4f79f524f247","stays fe92c52cd90be850 stored 1f44353b2621"],"stay":"fe92c52cd90be850","title":"Rear derailleur 2","turn":1}', '87e2895685211948b91ef9d424a667fc9d30c5d62b2c5824bff72e65b22d4452');
INSERT INTO public.ledger VALUES (16, '2026-03-02T08:41:00.000000+00:00', 'put away', 'boss', '{"code":"D003","listing":"L-D3","now":["items c7f07acd9537589c - e8ac0058bafe","slots D003 on_item 6de523ac8b4d","stays cd032381defe0320 stored 258bec171914"],"stay":"cd032381defe0320","title":"Rear derailleur 3","turn":1}', '21416bb77bb33e4cac0871309a0d8842fede43acc53971fe40ec8c48cf5b011b');
INSERT INTO public.ledger VALUES (17, '2026-03-02T08:44:00.000000+00:00', 'put away', 'boss', '{"code":"D004","listing":"L-D4","now":["items 599806f47904a9cb - fcb6acbe18fe","slots D004 on_item ec423998da46","stays d439545cf255d3ae stored f039713fdcd6"],"stay":"d439545cf255d3ae","title":"Rear derailleur 4","turn":1}', '6d4459b1deed14da3b1a3b88301404419b4e98c706822a7cefba4833146632ec');
INSERT INTO public.ledger VALUES (18, '2026-03-02T08:47:00.000000+00:00', 'put away', 'boss', '{"code":"D005","listing":"L-D5","now":["items a1fb79640513f0a1 - c84baba11f2b","slots D005 on_item 91ad3faf88d6","stays f5bdb26cbf14e408 stored d5af1d019a87"],"stay":"f5bdb26cbf14e408","title":"Rear derailleur 5","turn":1}', '7436a0d17362a3ae5bf53389aafdbb0945e39c3bfab51c4d2436123f71e594be');
INSERT INTO public.ledger VALUES (19, '2026-03-02T08:50:00.000000+00:00', 'put away', 'boss', '{"code":"D006","listing":"L-D6","now":["items 64ad0d56e1be3627 - 851bd9332e95","slots D006 on_item 1fadb568d6a5","stays 15a369a9a7686d4c stored 2b33a5c4fc9e"],"stay":"15a369a9a7686d4c","title":"Rear derailleur 6","turn":1}', '86ca51a083f5c4b72cd19a0aab7a7877077363d61185393ea0b3f1e4c5a8224d');
INSERT INTO public.ledger VALUES (20, '2026-03-02T08:53:00.000000+00:00', 'put away', 'boss', '{"code":"D007","listing":"L-D7","now":["items 9d6ca214ce593ff3 - 2698d0a68d34","slots D007 on_item 536077e3b728","stays c9587e3bb3af0630 stored 4d705df65431"],"stay":"c9587e3bb3af0630","title":"Rear derailleur 7","turn":1}', '2b5e3f5906918177079feade1f390bd22293aac4a891b03e9aa311e7e4f97eeb');
INSERT INTO public.ledger VALUES (21, '2026-03-02T08:56:00.000000+00:00', 'put away', 'boss', '{"code":"D008","listing":"L-D8","now":["items 82d8030973b43c93 - 1d049f1866e9","slots D008 on_item facb453cba22","stays cf71dbf05be35f4b stored c23a041657ff"],"stay":"cf71dbf05be35f4b","title":"Rear derailleur 8","turn":1}', 'a291e390947c2f134d4eda9689d91d1ffa43cb1b86cc50ab46bf7b6a043c7358');
INSERT INTO public.ledger VALUES (22, '2026-03-02T08:59:00.000000+00:00', 'put away', 'boss', '{"code":"D009","listing":"L-D9","now":["items 707cad7c535456d7 - 45a4d0bba5e3","slots D009 on_item 7434bf04ccf2","stays 9a3276a69278cb7d stored 35e07170cece"],"stay":"9a3276a69278cb7d","title":"Rear derailleur 9","turn":1}', 'fb893d841ca0b3b2b23b82774038e1fcc2c34170425f5534adf76d69174907f2');
INSERT INTO public.ledger VALUES (23, '2026-03-02T09:02:00.000000+00:00', 'put away', 'boss', '{"code":"D010","listing":"L-D10","now":["items 37b448822e1fd83f - 1f9896274217","slots D010 on_item 1f8fd3ebaf8b","stays 0154b1cadd159275 stored 530000a49cf0"],"stay":"0154b1cadd159275","title":"Rear derailleur 10","turn":1}', 'f73b6dd46b02ebcc5fcb8a76ea6c19c68b1df4253aea0bd8ca3dc3cfb473a051');
INSERT INTO public.ledger VALUES (24, '2026-03-02T09:05:00.000000+00:00', 'put away', 'boss', '{"code":"D011","listing":"L-D11","now":["items 39f4994a6d8f2f4f - 67d657ae96c6","slots D011 on_item d451255e38b7","stays 78fb3d64eeef6356 stored baaff96c82d8"],"stay":"78fb3d64eeef6356","title":"Rear derailleur 11","turn":1}', '778db2cb83602b467942e534e1bbaabec753aaf4ee2a4eae8e0ac584d9f404dc');
INSERT INTO public.ledger VALUES (25, '2026-03-02T09:08:00.000000+00:00', 'put away', 'boss', '{"code":"D012","listing":"L-D12","now":["items 3fed563e0f4fa15a - b48277864b3a","slots D012 on_item bdbda5bb2b7a","stays 887b5a990ea0fa35 stored 1d1db3de3d7c"],"stay":"887b5a990ea0fa35","title":"Rear derailleur 12","turn":1}', '3df23f729333ab93614248f034720c90236ee4926171255b2eed2854df30fa94');
INSERT INTO public.ledger VALUES (26, '2026-03-02T09:11:00.000000+00:00', 'put away', 'boss', '{"code":"S001","listing":"L-S1","now":["items 46378519645cf117 - 28120be94cf5","slots S001 on_item 76dcd853e3e0","stays 7f10803ae0dfaf97 stored e06215ba0130"],"stay":"7f10803ae0dfaf97","title":"Leather saddle 1","turn":1}', 'ecbba6bfe547657634ba6de1faa9bad532d2e8c8305f7ffa0b8a2aecbd79e7f1');
INSERT INTO public.ledger VALUES (27, '2026-03-02T09:14:00.000000+00:00', 'put away', 'boss', '{"code":"S002","listing":"L-S2","now":["items 63511117c0de3a66 - 7b40d4a4dc72","slots S002 on_item 6fb94c47a50d","stays cf4643fb6850701b stored abb943197818"],"stay":"cf4643fb6850701b","title":"Leather saddle 2","turn":1}', '5da000264ffc45a9579c939810c4e071fee4dfd833a472fb7aff82e3a60131d6');
INSERT INTO public.ledger VALUES (28, '2026-03-02T09:17:00.000000+00:00', 'put away', 'boss', '{"code":"S003","listing":"L-S3","now":["items a328220e25b63625 - 3f631cb83aa5","slots S003 on_item e00808332634","stays 6b239d24d105d6e3 stored bf78d97cfbf2"],"stay":"6b239d24d105d6e3","title":"Leather saddle 3","turn":1}', '920ce98b3684f65a68a667e2476dbe6b5012921958a4c440573b5b1be4e88b01');
INSERT INTO public.ledger VALUES (29, '2026-03-02T09:20:00.000000+00:00', 'put away', 'boss', '{"code":"S004","listing":"L-S4","now":["items 520fe663f6a308ae - 9d6bd9443bf5","slots S004 on_item db1aa8005467","stays a170aca09d416cba stored a52878d66419"],"stay":"a170aca09d416cba","title":"Leather saddle 4","turn":1}', 'd720e8f2fbea8f1f49f4be3e2661b2d88f4ee80cc3be1659273c7ab7c39c6af5');
INSERT INTO public.ledger VALUES (30, '2026-03-02T09:23:00.000000+00:00', 'put away', 'boss', '{"code":"S005","listing":"L-S5","now":["items e1751be58c1b01d8 - 88e466fa1a21","slots S005 on_item ec548ef84f99","stays b6471efd95263703 stored 37dccfcf7a72"],"stay":"b6471efd95263703","title":"Leather saddle 5","turn":1}', 'ec904f66342ea7b35fbc67b85a9f7596709c5e2a7fb82cffcccb8d26cfd8b7ce');
INSERT INTO public.ledger VALUES (31, '2026-03-02T09:26:00.000000+00:00', 'put away', 'boss', '{"code":"S006","listing":"L-S6","now":["items 594f313c8f8b36ad - 2a1206c4be0d","slots S006 on_item dc9bc74eb63a","stays 2d5062a278c3047b stored 85a174281057"],"stay":"2d5062a278c3047b","title":"Leather saddle 6","turn":1}', '2f9306b46eb355cdd6f0d5283925d92181228e0e9a40b128d2c15222f7017b19');
INSERT INTO public.ledger VALUES (32, '2026-03-02T09:29:00.000000+00:00', 'put away', 'boss', '{"code":"S007","listing":"L-S7","now":["items 1e77b3b53f83ca1d - e1e048273721","slots S007 on_item 075fd8b9fecf","stays eaefa514d555e25d stored 2120e3639628"],"stay":"eaefa514d555e25d","title":"Leather saddle 7","turn":1}', '6d0cc4fc86ebfe92d0711f79ff3aff3abf90a09de4247d1a22dcd52df2152901');
INSERT INTO public.ledger VALUES (33, '2026-03-02T09:32:00.000000+00:00', 'put away', 'boss', '{"code":"S008","listing":"L-S8","now":["items a011941fc31dd761 - 1e0660e36435","slots S008 on_item 39fdb847a4bc","stays 49c7a22c59a9be4c stored 9c418f10c704"],"stay":"49c7a22c59a9be4c","title":"Leather saddle 8","turn":1}', 'fc96c804fac936569a948c8780b66e541798f81fe7566c60234003b7e75c36f3');
INSERT INTO public.ledger VALUES (34, '2026-03-02T09:35:00.000000+00:00', 'put away', 'boss', '{"code":"S009","listing":"L-S9","now":["items 8392883c0e62708c - 88c9ee8c2dfe","slots S009 on_item 62c79df275b3","stays b49a999b212ba5d7 stored 252f00454934"],"stay":"b49a999b212ba5d7","title":"Leather saddle 9","turn":1}', '45bedde08f97e05effe6f7c99acf9f373450a06d907d22fef5b8028b5fcbcccf');
INSERT INTO public.ledger VALUES (35, '2026-03-02T09:38:00.000000+00:00', 'put away', 'boss', '{"code":"S010","listing":"L-S10","now":["items ef94cda20a288cd5 - 67a2c97d84e1","slots S010 on_item 1fd8d85fa1c4","stays 93c1483620d0b549 stored 6f66caddaa7c"],"stay":"93c1483620d0b549","title":"Leather saddle 10","turn":1}', '6041435ae9b750dce710694ab74b42a4601e677142124504cfe90cb63647d0e1');
INSERT INTO public.ledger VALUES (36, '2026-03-02T09:41:00.000000+00:00', 'put away', 'boss', '{"code":"S011","listing":"L-S11","now":["items 7ec7491e45332b6a - 46861a59b59d","slots S011 on_item e59577c4b2a7","stays ce743d726ee07f74 stored 772635c6c9e7"],"stay":"ce743d726ee07f74","title":"Leather saddle 11","turn":1}', '99e1c0cfd78452bad3b9355e441998bc99d6535b0f2a507dacffa43a6ce59332');
INSERT INTO public.ledger VALUES (37, '2026-03-02T09:44:00.000000+00:00', 'put away', 'boss', '{"code":"S012","listing":"L-S12","now":["items 9732e8f07c48f736 - 0fe6934c4111","slots S012 on_item 9bae442e2436","stays dd4c6c60053f4db4 stored e798a30913b4"],"stay":"dd4c6c60053f4db4","title":"Leather saddle 12","turn":1}', '16f2a75cdbfdfe23d07e49e678450c1b15f584a5fa37d63f3b90feb9f4a6bc3e');
INSERT INTO public.ledger VALUES (38, '2026-03-02T09:47:00.000000+00:00', 'put away', 'boss', '{"code":"L001","listing":"L-L1","now":["items b871ab10b88e99f6 - 8a69a84410b1","slots L001 on_item 43c5cdfaa8e4","stays 159e5716a9f4637a stored 7dd55b6951a4"],"stay":"159e5716a9f4637a","title":"Dynamo lamp 1","turn":1}', 'ed43b500fef7caeb8fe2c29e646f2ff0077fa666e943c82ded6e7225ea740617');
INSERT INTO public.ledger VALUES (39, '2026-03-02T09:50:00.000000+00:00', 'put away', 'boss', '{"code":"L002","listing":"L-L2","now":["items aab77346772adf3b - 6a5e7aa7710f","slots L002 on_item ea8e77c8b06f","stays d082f8d8c85323a0 stored 881c36f99cd5"],"stay":"d082f8d8c85323a0","title":"Dynamo lamp 2","turn":1}', '3e6e8958cc4ba26b6f8b3e9b9897c5953597500d371cf155681edf0ffc874f07');
INSERT INTO public.ledger VALUES (40, '2026-03-02T09:53:00.000000+00:00', 'put away', 'boss', '{"code":"L003","listing":"L-L3","now":["items 81fa2083b844f48f - ecf590c76018","slots L003 on_item c35e4c005cda","stays ab14bbeeb77e4755 stored 4cde96f5682c"],"stay":"ab14bbeeb77e4755","title":"Dynamo lamp 3","turn":1}', '6d439e5005ad33295425eca6c738624455442b38ba697cf90ad09298dae0140b');
INSERT INTO public.ledger VALUES (41, '2026-03-02T09:56:00.000000+00:00', 'put away', 'boss', '{"code":"L004","listing":"L-L4","now":["items 830b84ca726d6770 - 28a1498b082a","slots L004 on_item 70a88e4a366b","stays 6b3173ff9b03e1d8 stored dd28cfb14129"],"stay":"6b3173ff9b03e1d8","title":"Dynamo lamp 4","turn":1}', '29a341c4d6ed6446bce3bef1842a79060ea762bda1943b8710e659e8bd0e8886');
INSERT INTO public.ledger VALUES (42, '2026-03-02T09:59:00.000000+00:00', 'put away', 'boss', '{"code":"L005","listing":"L-L5","now":["items 4e1c41328817789f - 975dbca2dd58","slots L005 on_item 6261d94de1ef","stays b214784d4dd8d5b4 stored b859017c3f04"],"stay":"b214784d4dd8d5b4","title":"Dynamo lamp 5","turn":1}', 'a56c6fa63d25b3354d345b3b9b6a2e9a87bd138912b65258cbbbf33eb8c5c462');
INSERT INTO public.ledger VALUES (43, '2026-03-02T10:02:00.000000+00:00', 'put away', 'boss', '{"code":"L006","listing":"L-L6","now":["items 550e83d672bd99ad - 06f7d6b5b243","slots L006 on_item b67b470f3637","stays 25dc274158724874 stored 94ec6c3005ba"],"stay":"25dc274158724874","title":"Dynamo lamp 6","turn":1}', 'd8135bb621527c96f35a0f73c4ed38032cd0444b3a2eac2c24a046c966a2b609');
INSERT INTO public.ledger VALUES (44, '2026-03-02T10:05:00.000000+00:00', 'put away', 'boss', '{"code":"L007","listing":"L-L7","now":["items ecb60e326ae9a71e - 54280ef8f4bf","slots L007 on_item 767524982af4","stays fa4dbd41dd910bd5 stored b147696f217f"],"stay":"fa4dbd41dd910bd5","title":"Dynamo lamp 7","turn":1}', '0169272bb92182bb17d5b04b41c590a5debea310baddc8fb321fc3d2027bc167');
INSERT INTO public.ledger VALUES (45, '2026-03-02T10:08:00.000000+00:00', 'put away', 'boss', '{"code":"L008","listing":"L-L8","now":["items b4cb1d1e7d354350 - f7cb970f5755","slots L008 on_item b3b2d23a98b7","stays e9144cec55cab01c stored ba5206c1e47d"],"stay":"e9144cec55cab01c","title":"Dynamo lamp 8","turn":1}', 'bb10a092c45bdeb4ea652c52358a8c3ddd79050a038f36458fd0db0bf57f19d8');
INSERT INTO public.ledger VALUES (46, '2026-03-02T10:11:00.000000+00:00', 'put away', 'boss', '{"code":"L009","listing":"L-L9","now":["items 110214768bf3e512 - 2bb3dc857686","slots L009 on_item c3139144a3f8","stays 04d29d8188e4794c stored 0fa2a3f88332"],"stay":"04d29d8188e4794c","title":"Dynamo lamp 9","turn":1}', 'e529ccb8e943083b9752e7156e52cfaba0791e942c90b214a62ba8338839c7b8');
INSERT INTO public.ledger VALUES (47, '2026-03-02T10:14:00.000000+00:00', 'put away', 'boss', '{"code":"L010","listing":"L-L10","now":["items f24da5a5a4c0ff9e - cf5db403acac","slots L010 on_item f8c13ae8aec4","stays ec6e44b65b017d0a stored c34534aa26ab"],"stay":"ec6e44b65b017d0a","title":"Dynamo lamp 10","turn":1}', '4b907d1a72b0ec60d2e4f7306382e1b60fb04f2bea9439fdd8e75e8784e138c0');
INSERT INTO public.ledger VALUES (48, '2026-03-02T10:17:00.000000+00:00', 'put away', 'boss', '{"code":"L011","listing":"L-L11","now":["items ed6ea546a48c7ab7 - b600c3435b07","slots L011 on_item 9d01c75c0f89","stays a6d4d6a798925274 stored e1444f227620"],"stay":"a6d4d6a798925274","title":"Dynamo lamp 11","turn":1}', 'fea3d7a483f25adcae0628f68a95f06ea64284be11492f355108fdeba1691e04');
INSERT INTO public.ledger VALUES (49, '2026-03-02T10:20:00.000000+00:00', 'put away', 'boss', '{"code":"L012","listing":"L-L12","now":["items 7a1c89f35f44ac3c - d80eaa93dbe1","slots L012 on_item 5373b19b101e","stays f1a37f7b1130033a stored 7f0bd69fe689"],"stay":"f1a37f7b1130033a","title":"Dynamo lamp 12","turn":1}', '644dbfae6afcfeb1cb352b5f71fbb43514b26289dca7a12fc64169acd96372c1');
INSERT INTO public.ledger VALUES (50, '2026-03-02T10:23:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"L-W1","now":["items 60d560ea05c43f8b - 21f7f25591ba","slots W001 on_item 17dd342c2f6a","stays 9097ec4f06fdb92b stored b7f15ed25817"],"stay":"9097ec4f06fdb92b","title":"Front wheel 1","turn":1}', '05bd4fef556312274d76d9a4ab2c0ddf86c47c8d03ee6793b130e565e8b6dc6a');
INSERT INTO public.ledger VALUES (51, '2026-03-02T10:26:00.000000+00:00', 'put away', 'boss', '{"code":"W002","listing":"L-W2","now":["items d6c984b8b42f3ce3 - 98c5b1c107c8","slots W002 on_item 7ebfb8df41ca","stays ccb09d240ce5b68b stored 4a0d923dcf16"],"stay":"ccb09d240ce5b68b","title":"Front wheel 2","turn":1}', '1d956ecb64c7facd710d3b65f1ec8d6997b62b10a4a4cb3fa7d4680a793a74ed');
INSERT INTO public.ledger VALUES (52, '2026-03-02T10:29:00.000000+00:00', 'put away', 'boss', '{"code":"W003","listing":"L-W3","now":["items 9094f0ace6e8c763 - ac11e1005fa0","slots W003 on_item f84a2674e962","stays 12421d605378d0eb stored b225bb38fa88"],"stay":"12421d605378d0eb","title":"Front wheel 3","turn":1}', 'cd2a9816874949c913ab242b8f2a704b38415a303dbbd3c5527ece568416f0a9');
INSERT INTO public.ledger VALUES (53, '2026-03-02T10:32:00.000000+00:00', 'put away', 'boss', '{"code":"W004","listing":"L-W4","now":["items d0a3013a23bd0e68 - 18d2cecbb583","slots W004 on_item f45ed94fd55a","stays 3d67cf3c0fd55359 stored f50d67844781"],"stay":"3d67cf3c0fd55359","title":"Front wheel 4","turn":1}', '5506199e1c3adac75eb5f9a2653eb7458c3e629a1dbc3463be720e51c875b53b');
INSERT INTO public.ledger VALUES (54, '2026-03-02T10:35:00.000000+00:00', 'put away', 'boss', '{"code":"W005","listing":"L-W5","now":["items 3b33d0bf05d1e79a - d390b280f53b","slots W005 on_item a1fdfb2c692e","stays a9e1f445f18dea70 stored ee3d0e143247"],"stay":"a9e1f445f18dea70","title":"Front wheel 5","turn":1}', '5bd04510e0b93a0e5a5902f774f04a6b7ddec1c17ea73baecc72758241f313d8');
INSERT INTO public.ledger VALUES (55, '2026-03-02T10:38:00.000000+00:00', 'put away', 'boss', '{"code":"W006","listing":"L-W6","now":["items 0031108b39038891 - cbf329d8d0a3","slots W006 on_item 3dd6244f0bee","stays 2396ea0f18ff63f4 stored 3d539dfaea80"],"stay":"2396ea0f18ff63f4","title":"Front wheel 6","turn":1}', '476840ba797d7d2c24aea6cea402e4afa25a6c3a4cd64ec9467e864346df7127');
INSERT INTO public.ledger VALUES (56, '2026-03-02T10:41:00.000000+00:00', 'put away', 'boss', '{"code":"W007","listing":"L-W7","now":["items 1c5d3e00d6ec5c0c - f3a8cc9fcddb","slots W007 on_item d52463b699e2","stays 0566ccabbf001244 stored 79d9fdca14cb"],"stay":"0566ccabbf001244","title":"Front wheel 7","turn":1}', '780606826fa0983300327b4e33d2a2f0656c0b67fed0399a01dc2d416cff8361');
INSERT INTO public.ledger VALUES (57, '2026-03-02T10:44:00.000000+00:00', 'put away', 'boss', '{"code":"W008","listing":"L-W8","now":["items e3740345b0a69b94 - b66244ad9796","slots W008 on_item 2e167460fb16","stays 0b90964cae846864 stored 27760029173f"],"stay":"0b90964cae846864","title":"Front wheel 8","turn":1}', '66024caf7d022e176d13bd24b3ba6f5c74563983a70d97d95616869a05014cb4');
INSERT INTO public.ledger VALUES (58, '2026-03-02T10:47:00.000000+00:00', 'put away', 'boss', '{"code":"W009","listing":"L-W9","now":["items 5829170914a9e542 - a415cbdeb344","slots W009 on_item 597fc2f4b56e","stays f75a4abd58f0bb17 stored dfb11cc9c8b3"],"stay":"f75a4abd58f0bb17","title":"Front wheel 9","turn":1}', 'ebb7b7f14b15af3283b0286530bee04d853919b5fdf6d6cac239f4c44c78f1c1');
INSERT INTO public.ledger VALUES (59, '2026-03-02T10:50:00.000000+00:00', 'put away', 'boss', '{"code":"W010","listing":"L-W10","now":["items 9d69ad8079a926e5 - 232741e3611c","slots W010 on_item 7d0365c2d2de","stays bf1b16a6754fd9ed stored bc6efec8ae2d"],"stay":"bf1b16a6754fd9ed","title":"Front wheel 10","turn":1}', 'e88f623b6cac7989fe1954508a69d42025220e13b56177b4135cc71c5d875f65');
INSERT INTO public.ledger VALUES (60, '2026-03-02T10:53:00.000000+00:00', 'put away', 'boss', '{"code":"W011","listing":"L-W11","now":["items ed5bbe863828b1e5 - 8226683823b4","slots W011 on_item d3a26b640d71","stays ce9549e8049cc51d stored 94640cd9e593"],"stay":"ce9549e8049cc51d","title":"Front wheel 11","turn":1}', 'b1e22efdaefb07e4c860dff2a2a52d118cae533eb8aeaf529e46696bf20db208');
INSERT INTO public.ledger VALUES (61, '2026-03-02T10:56:00.000000+00:00', 'put away', 'boss', '{"code":"W012","listing":"L-W12","now":["items 0eb637fcf029378a - e83c5a902ea6","slots W012 on_item ac10bfb906d6","stays baa716f9393af4da stored a03d88074dfa"],"stay":"baa716f9393af4da","title":"Front wheel 12","turn":1}', '86f40755fd7f769363f00c7fb7f19834600ea666c0ef56dd0302826e6789cb1b');
INSERT INTO public.ledger VALUES (172, '2026-03-02T16:18:00.000000+00:00', 'stocktake closed', 'boss', '{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"3e1264f9828d07d0"}', 'a3578cb943d4b1d6d9669dcf70c6a4be79e116469e7056e5bc2b28cae76d4185');
INSERT INTO public.ledger VALUES (62, '2026-03-02T10:59:00.000000+00:00', 'put away', 'boss', '{"code":"D013","listing":"","now":["items 741896f70854a178 - 2b0abddd5b75","slots D013 on_item 69b6f1c92d5d","stays 2e170a6c20873a5d stored ad1a110f84bb"],"stay":"2e170a6c20873a5d","title":"Brass bell","turn":1}', 'eb5744310228002f81ff357122951d4159611f195d8c39d31f29dda6a7068f1c');
INSERT INTO public.ledger VALUES (63, '2026-03-02T11:02:00.000000+00:00', 'item changed', 'boss', '{"code":"D002","notes":"Cable is new","now":["items 95abd2ef7f76e211 - 967c4a7907d1"],"stay":"fe92c52cd90be850"}', '5a7115c9084a4a693f07502597abddac72a451d37915c0de6b11e3fabf908ecb');
INSERT INTO public.ledger VALUES (64, '2026-03-02T11:05:00.000000+00:00', 'withdrawn', 'boss', '{"code":"S010","now":["stays 93c1483620d0b549 withdrawn 4bac52fbcfd2","slots S010 due d05f1b333585"],"reason":"Cracked on inspection","stay":"93c1483620d0b549"}', 'd19ed45f8ccdb5a5dbff0eae7d4a9093eacbec4937993f8b5556c81fe485db09');
INSERT INTO public.ledger VALUES (65, '2026-03-02T11:08:00.000000+00:00', 'withdrawn', 'boss', '{"code":"W004","now":["stays 3d67cf3c0fd55359 withdrawn 53903a4ee64c","slots W004 due afd512e693d6"],"reason":"Bent beyond use","stay":"3d67cf3c0fd55359"}', '6f411b46d4bd517f2eedf7119425c4bc5cd95c90c6a7dfa4901c4e9c9278a914');
INSERT INTO public.ledger VALUES (66, '2026-03-02T11:11:00.000000+00:00', 'moved', 'boss', '{"code":"S009","new_stay":"e4fd9e160a774ffc","now":["stays b49a999b212ba5d7 moved 69f4914dd587","slots S009 due e81bc8d40edb","slots S013 on_item fb716e438737","stays e4fd9e160a774ffc stored 2ecb23aef146"],"stay":"b49a999b212ba5d7","to":"S013"}', 'efc60198ab7e105f14b1f99942e4fd1fe7870244e2ace046db3d49ec7e93188a');
INSERT INTO public.ledger VALUES (67, '2026-03-02T11:15:00.000000+00:00', 'photo kept', 'boss', '{"code":"D001","now":["photos 488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989 - a9b9898e386a","items 7aaa1cf1bec9603e - d404619359be"],"photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"048bd6622af335cf"}', 'abfb50de864115748829a2028b833bce178916bd1146154d43ad75ee50cce9df');
INSERT INTO public.ledger VALUES (68, '2026-03-02T11:19:00.000000+00:00', 'photo kept', 'boss', '{"code":"S001","now":["photos 55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941 - f83c378510cd","items 46378519645cf117 - bcfe4767e020"],"photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"7f10803ae0dfaf97"}', '5821da361da0f67811338ea6e1606ea52a8c9593dc0023251c9e1c00081ecb53');
INSERT INTO public.ledger VALUES (69, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L013","listing":"","load":"763a0defeec6052b8890f7e34c9b11f3731e41a29ed7a32d3f25763c75aaa985","now":["items f8333bf8f251adc4 - 588275a9a219","slots L013 on_item 417a81be4bcb","stays 093b9d55208c2b2f stored 83877948897c","items 22c2b60439123548 - f1297c2bf1d6","slots L014 on_item 26405b275a18","stays 489edbc27415005b stored d2de50999312"],"stay":"093b9d55208c2b2f","title":"Carbide lamp","turn":1}', '0e1c295af48ff02c8f1a212bfcba166dc9c8ac86df2b599d0d1707f5fa28c928');
INSERT INTO public.ledger VALUES (70, '2026-03-02T11:23:00.000000+00:00', 'put away', 'boss', '{"code":"L014","listing":"","load":"763a0defeec6052b8890f7e34c9b11f3731e41a29ed7a32d3f25763c75aaa985","stay":"489edbc27415005b","title":"Rear lamp","turn":1}', '12a56cfeebb3a25087934c5f28e434370275d4f9daf9c054a51a449a3f3dc69b');
INSERT INTO public.ledger VALUES (71, '2026-03-02T11:23:00.000000+00:00', 'stock loaded', 'boss', '{"load":"763a0defeec6052b8890f7e34c9b11f3731e41a29ed7a32d3f25763c75aaa985","stored":2}', 'efde2fcf3dd6fe95ccc306c1c72908f35161c44fbd561e3713cf6e56f4a1a15b');
INSERT INTO public.ledger VALUES (72, '2026-03-02T11:26:00.000000+00:00', 'reserved', 'boss', '{"code":"W012","now":["items 0eb637fcf029378a - 171332e3b0ed"],"stay":"baa716f9393af4da","until":"2026-12-24T23:59:59+00:00"}', '85e85300639ebbe57a05054216f388c4706a3731a9dc6bc9100133e51da27fb0');
INSERT INTO public.ledger VALUES (73, '2026-03-02T11:29:00.000000+00:00', 'settings changed', 'boss', '{"auto_close":true,"backups":{"days":7,"every_hours":4,"months":12,"places":[],"weeks":5},"baskets":0,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"dates":"","gone_days":3,"hand_overs":false,"name":"Gears & Saddles","paper":"a4","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"restored_at":"","scan_at_bin":true,"slip_closes":false,"slips_from":0,"zone":"UTC"}', '05f5207638b10a3ac394f92a9fdd6065dee794a50604c21bf0afa3e79f808c17');
INSERT INTO public.ledger VALUES (74, '2026-03-02T11:32:00.000000+00:00', 'racks measured', 'boss', '{"base_width":"","bin":"23 x 8 x 6 in","kg":"","now":["racks C - 28c568656c39","racks D - 694c665365a0"],"rack":"24 x 48 x 72 in","rated":"","table":"1"}', '32d2fa7b63f7b76a9bada04ead34836d2a10e735c4160adfa4c0e654c082a771');
INSERT INTO public.ledger VALUES (75, '2026-03-02T11:33:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"D011","now":["aliases AB0123 - 193d3c43b8b1"],"text":"AB-0123"}', 'cfa0c82fdd7f7238724d5fc6bb4659a14e531a3163f489c0064944ccb74c40ef');
INSERT INTO public.ledger VALUES (76, '2026-03-02T11:34:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"S011","now":["aliases AB77X - af32098541fb"],"text":"ab-77-x"}', '1bf82913e4c799df8087cbc5536307e7411cba5ce1c27a4ec4662c07258fb386');
INSERT INTO public.ledger VALUES (77, '2026-03-02T11:35:00.000000+00:00', 'card adopted', 'owner', '{"before":null,"code":"L010","now":["aliases BOX9 - 23339c8d08ee"],"text":"BOX 9"}', 'fd4a991191a5719111f5bb8f57062d763fcc3c287347ea7ed668e535b218f605');
INSERT INTO public.ledger VALUES (78, '2026-03-02T11:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7dc79fe9c680c7e0","reference":"W001-01E","stay":"9097ec4f06fdb92b"},{"hold":null,"line":"5cfea862002776cd","reference":"W002-016","stay":"ccb09d240ce5b68b"}],"now":["orders cfa08d32267778f7 - 223a4f073cb2","lines 7dc79fe9c680c7e0 waiting 5add1f811044","lines 5cfea862002776cd waiting a77ed115aedc"],"number":"B-01","order":"cfa08d32267778f7"}', 'a3787e57eb462e5d0065e563f56c356e844f4d64f5c9803f8165bdc51a628ffa');
INSERT INTO public.ledger VALUES (79, '2026-03-02T11:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"0e17aeb01f94aefd","reference":"S002-013","stay":"cf4643fb6850701b"},{"hold":null,"line":"7aa7484e2bf3af58","reference":"S003-01W","stay":"6b239d24d105d6e3"}],"now":["orders a6556ff3fb0178be - 7f872bcb11a9","lines 0e17aeb01f94aefd waiting bd3826a009c1","lines 7aa7484e2bf3af58 waiting bc03baeaf80a"],"number":"B-03","order":"a6556ff3fb0178be"}', 'e2964b656afeb3f7381a7e3310a6025fe3c3218183df2b90d8b905b08604d8ff');
INSERT INTO public.ledger VALUES (80, '2026-03-02T11:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"171671a38dd06da8","reference":"S004-01O","stay":"a170aca09d416cba"},{"hold":null,"line":"b89ddc82c83f8279","reference":"S005-01G","stay":"b6471efd95263703"}],"now":["orders 5133139c96ca05cd - 1fb1919aac67","lines 171671a38dd06da8 waiting 3863777ae261","lines b89ddc82c83f8279 waiting 11e4cdc2493b"],"number":"B-04","order":"5133139c96ca05cd"}', '207bebf74998ce29abecd69d854a02f5b56d7aa60a0b1a9df6edb78ee53dfea3');
INSERT INTO public.ledger VALUES (81, '2026-03-02T11:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"68b99488efa9597a","reference":"L002-017","stay":"d082f8d8c85323a0"}],"now":["orders e497f7e7fea69239 - b6799cc286f3","lines 68b99488efa9597a waiting ac95c0af7a76"],"number":"B-05","order":"e497f7e7fea69239"}', 'dba965c21d563b00123e72fe01e740185ff7d32fd971b5fd2f9754b25ee72901');
INSERT INTO public.ledger VALUES (82, '2026-03-02T11:50:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"404cb65c714ea04b","reference":"L003-010","stay":"ab14bbeeb77e4755"}],"now":["orders 31b7d9431c2ea60d - 2f8a89c451b2","lines 404cb65c714ea04b waiting 7ee3dfeb1166"],"number":"B-06","order":"31b7d9431c2ea60d"}', '230d60b61b02d65f557366c19f6e4c21db08f4ff296848dd55dbd8681a33f70f');
INSERT INTO public.ledger VALUES (83, '2026-03-02T11:53:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"6932620ccf87d145","reference":"L004-01S","stay":"6b3173ff9b03e1d8"}],"now":["orders a61dd13ef832cc03 - bd02053ed5d4","lines 6932620ccf87d145 waiting 6da0e86f32e7"],"number":"B-07","order":"a61dd13ef832cc03"}', '5b8876a711c74874afb738b4ee3cce1d7b966fca801a7750ec8b8ccd92934db4');
INSERT INTO public.ledger VALUES (84, '2026-03-02T11:56:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d762f360185f3809","reference":"L005-01K","stay":"b214784d4dd8d5b4"}],"now":["orders b11bdc5aab36a15c - e5aa4ecea6ba","lines d762f360185f3809 waiting aa3d75757bb2"],"number":"B-08","order":"b11bdc5aab36a15c"}', '7c481ae8a0b8f0ae0657090372d875f77935778d3c551eec76a4b63b50c40913');
INSERT INTO public.ledger VALUES (85, '2026-03-02T11:59:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"8995eff93d6f0331","reference":"L006-01C","stay":"25dc274158724874"},{"hold":null,"line":"73dad5e2b978d748","reference":"L011-010","stay":"a6d4d6a798925274"}],"now":["orders 10555a46e2c4cde9 - 92f512aa062e","lines 8995eff93d6f0331 waiting 9af71ca67664","lines 73dad5e2b978d748 waiting 946c539d08ed"],"number":"B-09","order":"10555a46e2c4cde9"}', 'a35a086a3b424eb65e3868b48408dfd864acb613f48a70bede2d286a1cb2c2b8');
INSERT INTO public.ledger VALUES (86, '2026-03-02T12:02:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"4985b2549b316ebf","reference":"S006-018","stay":"2d5062a278c3047b"}],"now":["orders f21a1fe39d3adcbd - 1028dfa5388f","lines 4985b2549b316ebf waiting 544b039c4226"],"number":"B-13","order":"f21a1fe39d3adcbd"}', 'a8dcaeef6281944ee37e7877f760c3ac703a566ef2304fff3a9e74b5e0ace162');
INSERT INTO public.ledger VALUES (87, '2026-03-02T12:05:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d7e3c1ad06467e91","reference":"L007-014","stay":"fa4dbd41dd910bd5"}],"now":["orders 63bf0abae1e2c3d8 - 46e553e855e0","lines d7e3c1ad06467e91 waiting 6da9205bc069"],"number":"B-17","order":"63bf0abae1e2c3d8"}', 'd4202025f5e6a620a33a5466dbd03b2e855e0e502c34e18527a013730783b34c');
INSERT INTO public.ledger VALUES (88, '2026-03-02T12:08:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"33ad2fa07cb51263","reference":"D009-01B","stay":"9a3276a69278cb7d"}],"now":["orders 20d811d0ce27f1c8 - 42e32bee6eb8","lines 33ad2fa07cb51263 waiting 09a7b065e05b"],"number":"B-18","order":"20d811d0ce27f1c8"}', '5b25a67559598c2ea807b706c98f40f10182f0a02d755f683705e69dba542598');
INSERT INTO public.ledger VALUES (89, '2026-03-02T12:11:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"246776b8ec5e5690","reference":"W006-013","stay":"2396ea0f18ff63f4"}],"now":["orders 3e86ece07501724a - 53a021858a3d","lines 246776b8ec5e5690 waiting b9434ef591e4"],"number":"B-21","order":"3e86ece07501724a"}', 'd1a3b149ece16de6c55078fd6c8f2dea0e281be444fe2590bcc53fa3789a474c');
INSERT INTO public.ledger VALUES (90, '2026-03-02T12:14:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d7c25305360295df","reference":"S007-01Z","stay":"eaefa514d555e25d"}],"now":["orders 28312775d78a3f14 - 5a1ee99ff37f","lines d7c25305360295df waiting e577953fc9c8"],"number":"B-22","order":"28312775d78a3f14"}', '97bb0a712ea61ae7427956eae37f1321cda9278ee052cb9984b597be7bfd3c08');
INSERT INTO public.ledger VALUES (91, '2026-03-02T12:17:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"de96111a6a6af3ad","reference":"W007-01W","stay":"0566ccabbf001244"},{"hold":null,"line":"64d3649d8027dd84","reference":"W008-01O","stay":"0b90964cae846864"}],"now":["orders ad3f9960cd83ba28 - 7df3883d71be","lines de96111a6a6af3ad waiting f459311b5c62","lines 64d3649d8027dd84 waiting 120966c19998"],"number":"B-23","order":"ad3f9960cd83ba28"}', '8b5a11fbdffc1e814960f7b26f925c9e6ea0fd1dc444ab5a855520e1a1999d95');
INSERT INTO public.ledger VALUES (92, '2026-03-02T12:20:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"3910d3ece2c1b6f8","reference":"D008-01J","stay":"cf71dbf05be35f4b"}],"now":["orders c0a6b748f326c162 - 51b8b8208f95","lines 3910d3ece2c1b6f8 waiting 5541928e689c"],"number":"B-26","order":"c0a6b748f326c162"}', '798a9420cc0f09fd810cc1922b397189731ea9aaf9ffce56acac812a863ab443');
INSERT INTO public.ledger VALUES (93, '2026-03-02T12:23:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"b669c67da1d38684","reference":"D003-01U","stay":"cd032381defe0320"}],"now":["orders cdddec199e5d9165 - daffba7294ba","lines b669c67da1d38684 waiting d7346c67f9c9"],"number":"B-30","order":"cdddec199e5d9165"}', 'd36090bbb7c403d75120f59a66680ab4cdd8510a86bad714c7a016bea42d515b');
INSERT INTO public.ledger VALUES (94, '2026-03-02T12:26:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"7c767c57aae1147e","reference":"D005-01E","stay":"f5bdb26cbf14e408"},{"hold":"unknown_code","line":"3c8e58117b9d7ff4","reference":"Z999","stay":null}],"now":["orders 59b2d68611df4d19 - 44758c3b1e18","lines 7c767c57aae1147e waiting fc220aeb3710","lines 3c8e58117b9d7ff4 unbound cbf44f562cff"],"number":"B-31","order":"59b2d68611df4d19"}', '4a4a7fb82817401afdac39c7abbacecc51d17fb147d0ffbb179c64f4eeb8c0a9');
INSERT INTO public.ledger VALUES (95, '2026-03-02T12:29:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"a38198d8d7878088","reference":"D006-016","stay":"15a369a9a7686d4c"},{"hold":null,"line":"fa9732ad760a3da9","reference":"D007-01R","stay":"c9587e3bb3af0630"}],"now":["orders 9725de7171b4af75 - 1f710457c851","lines a38198d8d7878088 waiting 7bac1a32edef","lines fa9732ad760a3da9 waiting 70bc80af5e7a"],"number":"B-32","order":"9725de7171b4af75"}', '1e9b2ab3076a3e0ca4658e9b2e7a7ac244d9e060c403d14be8e3586ae68b8213');
INSERT INTO public.ledger VALUES (96, '2026-03-02T12:32:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"not_in_file","line":"fa9732ad760a3da9","reference":"D007-01R","stay":"c9587e3bb3af0630"}],"now":["lines fa9732ad760a3da9 waiting d72dcc6b0ebc"],"number":"B-32","order":"9725de7171b4af75"}', 'e53cd2b99aedf6f48bdba70f04d4432dc81f8dffe3670e086b40bff5b57588bc');
INSERT INTO public.ledger VALUES (97, '2026-03-02T12:35:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"unknown_code","line":"b2014c938b5b7cef","reference":"lamp","stay":null}],"now":["orders 137e9103784f082d - 2991195cef2b","lines b2014c938b5b7cef unbound 728c5d00cbe6"],"number":"B-33","order":"137e9103784f082d"}', 'f8d69478124a4988df152f9c717ca9192fca014121217764a05afb34f29ef782');
INSERT INTO public.ledger VALUES (98, '2026-03-02T12:38:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"already_sold","line":"cb7bd0948c70dc3a","reference":"D006-016","stay":null}],"now":["orders 3c2c96fe797736a5 - 30b9a4edd2ce","lines cb7bd0948c70dc3a unbound 291ddbf2db43"],"number":"B-34","order":"3c2c96fe797736a5"}', '1b0e421654a0d15b0f7d58d071e74e103e1534df35358d551626c82091fe1f9f');
INSERT INTO public.ledger VALUES (99, '2026-03-02T12:41:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"withdrawn","line":"402b49bb590934d3","reference":"W004-01J","stay":null}],"now":["orders 7a99b42df423dfa7 - bbce2cc0d09f","lines 402b49bb590934d3 unbound 94b27d0058ec"],"number":"B-35","order":"7a99b42df423dfa7"}', 'a378fb666366f2157adec6c8663848359cd9dc4a983acf2f35a97084cf6ac76a');
INSERT INTO public.ledger VALUES (100, '2026-03-02T12:44:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"slot_free","line":"4150eafd0845236a","reference":"L015","stay":null}],"now":["orders b9080bfbd5699060 - 88a644f007fe","lines 4150eafd0845236a unbound 6e8e16f45dcb"],"number":"B-36","order":"b9080bfbd5699060"}', '3df95e329de9657f50f83d9dc7c3621a0551d0fc8f81d2c7659fd39bca6ca8ce');
INSERT INTO public.ledger VALUES (101, '2026-03-02T12:47:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":"doubtful","line":"5321577525a05245","reference":"W005-01B","stay":"a9e1f445f18dea70"}],"now":["orders 9601e96f67b9b216 - b2b130e46ff8","lines 5321577525a05245 waiting daf916e4d245"],"number":"B-37","order":"9601e96f67b9b216"}', '0788176069013fb5fccb2f5322a0af315434feff593c9ae3f9691395f0dd9cb5');
INSERT INTO public.ledger VALUES (102, '2026-03-02T12:50:00.000000+00:00', 'settled', 'boss', '{"hold":"doubtful","line":"5321577525a05245","now":["lines 5321577525a05245 waiting 15a272a620d1"],"stay":"a9e1f445f18dea70"}', '46d3c3e33d24c9653f79956c07b857529884484f985d5c376bd773033f8a6e39');
INSERT INTO public.ledger VALUES (103, '2026-03-02T12:53:00.000000+00:00', 'doubted', 'boss', '{"doubt":"90679b2a7ef3d6e0","doubt_kind":"not_this","item":"ecb60e326ae9a71e","now":["doubts 90679b2a7ef3d6e0 - 3855262e21ad","lines d7e3c1ad06467e91 waiting 78321150a411"],"words":"Another lamp, by the photo"}', 'a3632ec7b4a0113d1716529a191026632e383dd6ece88c977d87a86c80e3ed34');
INSERT INTO public.ledger VALUES (104, '2026-03-02T12:53:00.000000+00:00', 'held', 'boss', '{"line":"d7e3c1ad06467e91","why":"Another lamp, by the photo"}', 'f0eab4b9c7a7a6b04c5aaa142a5957743c95fd0a0de557092768648cdb80673b');
INSERT INTO public.ledger VALUES (105, '2026-03-02T12:56:00.000000+00:00', 'cancelled', 'boss', '{"lines":["d762f360185f3809"],"now":["lines d762f360185f3809 cancelled 598624dfb9fe"],"number":"B-08","order":"b11bdc5aab36a15c"}', 'd756f2534b86eb53240a2fd99f9680553302c911c113e017201127a7ae193b6b');
INSERT INTO public.ledger VALUES (106, '2026-03-02T12:59:00.000000+00:00', 'cancelled', 'boss', '{"lines":["246776b8ec5e5690"],"now":["lines 246776b8ec5e5690 cancelled c0dc2d6ce1ac"],"number":"B-21","order":"3e86ece07501724a"}', '55f8fe4b609e0b56ec7dbc32f23cf557d19434f1b3552284695c0f98fbba3250');
INSERT INTO public.ledger VALUES (107, '2026-03-02T13:02:00.000000+00:00', 'revived', 'boss', '{"line":"246776b8ec5e5690","now":["lines 246776b8ec5e5690 waiting b9434ef591e4"],"stay":"2396ea0f18ff63f4"}', '1040653386881d71bf2382e3e6d34e82dc5059a4e6e23b90bf481e452b995e5e');
INSERT INTO public.ledger VALUES (108, '2026-03-02T13:05:00.000000+00:00', 'moved', 'boss', '{"code":"D008","new_stay":"88fd78009de6d260","now":["stays cf71dbf05be35f4b moved 8a9ede9d94c6","slots D008 due b7064dd83de5","slots D020 on_item 05de332304a4","stays 88fd78009de6d260 stored 09beb2b3d8fc","lines 3910d3ece2c1b6f8 waiting f92ec1000440"],"stay":"cf71dbf05be35f4b","to":"D020"}', 'a36018db2695d602288ca834a0898ca9302c054f8b21486e1192802ac985982c');
INSERT INTO public.ledger VALUES (109, '2026-03-02T13:08:00.000000+00:00', 'order received', 'boss', '{"channel":"","collected":true,"lines":[{"hold":null,"line":"b59d1db55b2d5b58","reference":"L012-01S","stay":"f1a37f7b1130033a"}],"note":"Rings at noon","now":["orders fd90a04f90d75c26 - d9001b39faef","lines b59d1db55b2d5b58 waiting c127edd5cf92"],"number":"Sale L012-01S","order":"fd90a04f90d75c26"}', '511293744f524be1ae64b19c5cae881415d39367d0c1f914b9d4fb44c0c4bb65');
INSERT INTO public.ledger VALUES (110, '2026-03-02T13:14:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":null,"line":"010f8b2d3f5099f7","reference":"S012-01O","stay":"dd4c6c60053f4db4"}],"now":["orders 1e03f19b3dda119a - 22bf55f79df9","lines 010f8b2d3f5099f7 waiting 0a302a207462","orders e9415399e6db51f2 - b6b0dc50dd8b","lines 1fefc5cef8f1f69b unbound bb35e6f6703d"],"number":"F-1","order":"1e03f19b3dda119a"}', 'cc83ac0cb47c0d1358a22ace8791fa744c44f0f578cbf4a3e6f198014af72584');
INSERT INTO public.ledger VALUES (111, '2026-03-02T13:14:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"bad_row","line":"1fefc5cef8f1f69b","reference":"","stay":null}],"number":"F-2","order":"e9415399e6db51f2"}', 'ca3eb082969144e6e919a3e7d0fbe5e2397d336e6573380deecc16f3cbd171e8');
INSERT INTO public.ledger VALUES (112, '2026-03-02T13:17:00.000000+00:00', 'round opened', 'boss', '{"lines":["7dc79fe9c680c7e0","5cfea862002776cd","0e17aeb01f94aefd","7aa7484e2bf3af58","171671a38dd06da8","b89ddc82c83f8279","8995eff93d6f0331","73dad5e2b978d748","4985b2549b316ebf","d7c25305360295df","de96111a6a6af3ad","64d3649d8027dd84"],"now":["rounds b28bedeba796fdc0 open 5f3f69b771ee","lines 0e17aeb01f94aefd waiting 0ede0845079a","lines 7aa7484e2bf3af58 waiting b11e678fa756","lines 171671a38dd06da8 waiting 93b696a49f09","lines b89ddc82c83f8279 waiting c80c8ac949f8","lines 4985b2549b316ebf waiting 12b6c43b2929","lines d7c25305360295df waiting d9bee7f74864","lines 7dc79fe9c680c7e0 waiting 964d17c8ed6c","lines 5cfea862002776cd waiting a3b8ef7b02b5","lines de96111a6a6af3ad waiting ced6e95fb7d6","lines 64d3649d8027dd84 waiting 424c0665522d","lines 8995eff93d6f0331 waiting e3974994d1a5","lines 73dad5e2b978d748 waiting 0b570b6ace69"],"round":"b28bedeba796fdc0"}', 'fd40466226cd76b4c9a8382c08b461d39f5aee19e28180a533982c4cdfb1ac8e');
INSERT INTO public.ledger VALUES (113, '2026-03-02T13:20:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"now":["slots D004 on_item 0850b9b92dc8","scans free-D004 - 823aeb3f38d8"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}', '86868780052e5ed31510312a243bdd1775f67d97df5e558f3f058c201b0d20ff');
INSERT INTO public.ledger VALUES (114, '2026-03-02T13:23:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"7dc79fe9c680c7e0","line_state":"picked","now":["slots W001 on_item 1b0125f63737","lines 7dc79fe9c680c7e0 picked 4083343d3174","scans pick-W001 - d79c67df40c9"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', 'de6eba582607c80077fcbd1d78ae48d8e3e01843f051d2f7b7b45dad6dc7a5fd');
INSERT INTO public.ledger VALUES (115, '2026-03-02T13:26:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"5cfea862002776cd","line_state":"picked","now":["slots W002 on_item 6ec91cdb879d","lines 5cfea862002776cd picked 933950ce5deb","scans pick-W002 - 07a2e7f7c663"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', '8ba397ddc47163ed81336024f34edab80d868d27805e689528811b2a5ab647f1');
INSERT INTO public.ledger VALUES (116, '2026-03-02T13:29:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"0e17aeb01f94aefd","line_state":"picked","now":["slots S002 on_item 37d76d5f0610","lines 0e17aeb01f94aefd picked 32679c180dde","scans pick-S002 - d1d811c8240c"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'c53815bcf698a9c87bba2839f32ddf6fc9121f184e0ee996d5617644288cf23f');
INSERT INTO public.ledger VALUES (117, '2026-03-02T13:32:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"7aa7484e2bf3af58","line_state":"picked","now":["slots S003 on_item 9a7ef720766e","lines 7aa7484e2bf3af58 picked b7d0975b003c","scans pick-S003 - 422bdd8f37a7"],"order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}', 'dab03d8afdefb1668549da679a8dde756ae801c8b3bb224b0218a29d13709064');
INSERT INTO public.ledger VALUES (173, '2026-03-02T16:21:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:L","note":"Spring","now":["stocktakes 24feb0f89da5ce29 open 4b56d76327f9"],"stocktake":"24feb0f89da5ce29"}', 'b3d0ce32af740b4ea165a2c8bf88a5a3bc9e3c5d4d41094f97bb981c285d6642');
INSERT INTO public.ledger VALUES (118, '2026-03-02T13:35:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"171671a38dd06da8","line_state":"picked","now":["slots S004 on_item 3597343d3d1f","lines 171671a38dd06da8 picked e2529b9816d6","scans pick-S004 - b02d76e5cdb1"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', 'fca271858101c8a6b67bd0a9d5926bd8b7cfc2709d2ebc4dd6cf080b5772b398');
INSERT INTO public.ledger VALUES (119, '2026-03-02T13:38:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"b89ddc82c83f8279","line_state":"picked","now":["slots S005 on_item d3df4fad4861","lines b89ddc82c83f8279 picked b6c91f89115e","scans pick-S005 - c3295180069a"],"order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}', '8e0fd40c98bc12b0d006b8d8e136e7cd155df1ab97182db28042523a4e419576');
INSERT INTO public.ledger VALUES (120, '2026-03-02T13:41:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"8995eff93d6f0331","line_state":"picked","now":["slots L006 on_item 3f5ae724889c","lines 8995eff93d6f0331 picked 4a11621b0f14","scans pick-L006 - dc8fddd5ce7d"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', 'f656bf85be4d19f39fabaa56687876bd5cafab2b25cb5a1bb7c0727bcf0a3071');
INSERT INTO public.ledger VALUES (121, '2026-03-02T13:44:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"73dad5e2b978d748","line_state":"picked","now":["slots L011 on_item 221f15b17119","lines 73dad5e2b978d748 picked 018b891c4c5b","scans pick-L011 - 7f2b1905a627"],"order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}', 'abecfbd98f71e80025f61c4987d0f58fd37d075c45c364a4e19c81c5a1e5d2b4');
INSERT INTO public.ledger VALUES (122, '2026-03-02T13:47:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"4985b2549b316ebf","line_state":"picked","now":["slots S006 on_item 96431360c1bc","lines 4985b2549b316ebf picked 6d9c9425c18d","scans pick-S006 - 7fa658facbd6"],"order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}', '34964684ab0a8d3c121768d9eb6c7b6da1f9b156f7fd97b7b4f44ded10c6d305');
INSERT INTO public.ledger VALUES (123, '2026-03-02T13:50:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"d7c25305360295df","line_state":"picked","now":["slots S007 on_item bd182e52addd","lines d7c25305360295df picked ff17eb95f510","scans pick-S007 - 7446b517376d"],"order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}', '4ecd90283a999135a328c2f5153de4348816eee6c1dbe9a5676dca9af3455797');
INSERT INTO public.ledger VALUES (124, '2026-03-02T13:53:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"de96111a6a6af3ad","line_state":"picked","now":["slots W007 on_item 2864b63cbc37","lines de96111a6a6af3ad picked 988e50147958","scans pick-W007 - 01b05207e176"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', 'ecc6115a4560d0952f44a0e71629db56d32d6903530fac961d03dc075e08b965');
INSERT INTO public.ledger VALUES (125, '2026-03-02T13:56:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"64d3649d8027dd84","line_state":"picked","now":["slots W008 on_item 9b643eba7cf6","lines 64d3649d8027dd84 picked 7cd741eab4ff","scans pick-W008 - 95efd17a97f9"],"order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b28bedeba796fdc0","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}', '1fceda6ecaab79beeec9abe25d09f5cb8b4e82c537cf3ca3254a3394363d8afd');
INSERT INTO public.ledger VALUES (126, '2026-03-02T13:59:00.000000+00:00', 'undone', 'boss', '{"key":"pick-W008","line":"64d3649d8027dd84","line_state":"waiting","now":["lines 64d3649d8027dd84 waiting 424c0665522d","slots W008 on_item fbae464f6f7c"]}', '387bde74cb6cfc2e26456d3f94e61aa87da34488600c2d465bd6d159e1954458');
INSERT INTO public.ledger VALUES (127, '2026-03-02T14:02:00.000000+00:00', 'round closed', 'boss', '{"now":["rounds b28bedeba796fdc0 closed d17f5bf531b1"],"round":"b28bedeba796fdc0"}', 'a57efcffd8d22d66303fb011d59a73507b7c7a5b836e0b0da4b7601200d0f948');
INSERT INTO public.ledger VALUES (128, '2026-03-02T14:05:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 2b58f557263d2d68 open 6e334bff1fce","orders cfa08d32267778f7 - 01a5fe510a5d"],"orders":["cfa08d32267778f7"],"parcel":"2b58f557263d2d68","table":"main"}', 'd4d915617c580b965bc6831aa1344e3929e989f025afd3e90c090f339c7cfc7d');
INSERT INTO public.ledger VALUES (129, '2026-03-02T14:08:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"0e17aeb01f94aefd","line_state":"picked","now":["slots S002 on_item f14be9278162","scans other-S002 - c73a630ded8d"],"order_number":"B-03","parcel":"2b58f557263d2d68","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}', '2ea7c2b08d8f7a5ef205d94f4726aadacfb02fbeda0eb722978d4e19fcc40817');
INSERT INTO public.ledger VALUES (130, '2026-03-02T14:11:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"7dc79fe9c680c7e0","line_state":"packed","now":["lines 7dc79fe9c680c7e0 packed 2618278fbdce","slots W001 on_item d1132bafda59","scans pack-W001 - 4598562a9361"],"order_number":"B-01","parcel":"2b58f557263d2d68","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '74a39632609c94b45848fd58eaa575a6b3846e3f072f9babfebf8141368f280c');
INSERT INTO public.ledger VALUES (131, '2026-03-02T14:14:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines 5cfea862002776cd released 37756945e258","slots W002 due a227537d0b40","lines 7dc79fe9c680c7e0 released 0c0bd8cc7d2f","stays 9097ec4f06fdb92b shipped 222bcedada3e","slots W001 due 9eca6bac5aba","stays ccb09d240ce5b68b shipped d27271c32171","parcels 2b58f557263d2d68 closed 67c55bcdc91b","orders cfa08d32267778f7 - 223a4f073cb2","scans pack-W002 - 03aff4d9c164"],"orders":["cfa08d32267778f7"],"parcel":"2b58f557263d2d68","released":["W001","W002"]}', '3792685919306777a0f513b91921ec08b678b164622c10f7dd46e76b4c82fb61');
INSERT INTO public.ledger VALUES (132, '2026-03-02T14:14:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"5cfea862002776cd","line_state":"released","order_number":"B-01","parcel":"2b58f557263d2d68","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}', 'c5952ac4a095893c84d2f70ec75227928c737b974548826a1e5c9fb4df9b106e');
INSERT INTO public.ledger VALUES (133, '2026-03-02T14:17:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"7dc79fe9c680c7e0","line_state":"released","now":["slots W001 tray d6f78677e44e","scans back-W001 - 0111990d9b19"],"order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}', '51ce850004b62ddd8d198b84e72074cc2bd4f3218bff36a2f0d8ccc49d95d353');
INSERT INTO public.ledger VALUES (134, '2026-03-02T14:20:00.000000+00:00', 'put away', 'boss', '{"code":"W001","listing":"","now":["items d2eb89fc8da2c001 - 5b0f3c444c65","slots W001 on_item 4bac4e5a272f","stays 60798f72871aab8d stored 0925acb29fea"],"stay":"60798f72871aab8d","title":"Rear wheel","turn":2}', '63d0b81e9d1c637743147a03ee169f2ca86a5c3b8682efe0840af55b4e4d490b');
INSERT INTO public.ledger VALUES (135, '2026-03-02T14:24:00.000000+00:00', 'label bound', 'boss', '{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","now":["labels ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66 - fffb3d6ba985"],"parcel":"2b58f557263d2d68"}', '87fca3fa5ad2746afb4738334da971b677112c6049ae9143eb6a1f68a9fe447f');
INSERT INTO public.ledger VALUES (136, '2026-03-02T14:27:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 0c6244d728c9110d open d5e8fa2a9e83","orders ad3f9960cd83ba28 - d0c01d631497"],"orders":["ad3f9960cd83ba28"],"parcel":"0c6244d728c9110d","table":"main"}', '0d00bf6a4e8d7fd9a9b5be3c35d3edd8ab9e4942a43f4d72edee0ce160089f89');
INSERT INTO public.ledger VALUES (137, '2026-03-02T14:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"de96111a6a6af3ad","line_state":"packed","now":["lines de96111a6a6af3ad packed 1d2642a619a0","slots W007 on_item 7dde51c0cc4d","scans pack-W007 - 39a7a67d3c14"],"order_number":"B-23","parcel":"0c6244d728c9110d","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}', '092bbe403ab49126d41dfeaf715f362bc953f0a30be59c97b7d3959099df80eb');
INSERT INTO public.ledger VALUES (138, '2026-03-02T14:33:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines de96111a6a6af3ad released 03717253ca9e","stays 0566ccabbf001244 shipped 5155badfa94e","slots W007 due 52e184dbbc58","parcels 0c6244d728c9110d closed 2432546551f0","orders ad3f9960cd83ba28 - 7df3883d71be"],"orders":["ad3f9960cd83ba28"],"parcel":"0c6244d728c9110d","released":["W007"]}', 'f5fa28957a6d2d7dfe57a001b3670026c69ac644947c04e61f6077efcade79eb');
INSERT INTO public.ledger VALUES (139, '2026-03-02T14:36:00.000000+00:00', 'parcel reopened', 'boss', '{"now":["lines de96111a6a6af3ad packed 8e35bd8f94dc","stays 0566ccabbf001244 stored 79d9fdca14cb","slots W007 on_item fd80fe56d733","parcels 0c6244d728c9110d open 81d655cc94a6","orders ad3f9960cd83ba28 - d0c01d631497"],"orders":["ad3f9960cd83ba28"],"parcel":"0c6244d728c9110d"}', '5b31f5278e96814b65c74c03a447a6562ce40728945f5990931be5b36e506da5');
INSERT INTO public.ledger VALUES (140, '2026-03-02T14:39:00.000000+00:00', 'parcel closed', 'boss', '{"now":["lines de96111a6a6af3ad released 03717253ca9e","stays 0566ccabbf001244 shipped 70ee31590896","slots W007 due 52e184dbbc58","parcels 0c6244d728c9110d closed 6c6b4400f323","orders ad3f9960cd83ba28 - 7df3883d71be"],"orders":["ad3f9960cd83ba28"],"parcel":"0c6244d728c9110d","released":["W007"]}', '407502419c5dbf8115c7a70106a2af835165a3352b75446fdaa77110a22e43a7');
INSERT INTO public.ledger VALUES (141, '2026-03-02T14:42:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 02651c3f1f60dded open 0c37fc4e169b","orders 28312775d78a3f14 - f880bf39fbbb"],"orders":["28312775d78a3f14"],"parcel":"02651c3f1f60dded","table":"main"}', '78fc753face563b7ea98a9467e85deb90e31b800c652953cb5eecd86c9027139');
INSERT INTO public.ledger VALUES (142, '2026-03-02T14:45:00.000000+00:00', 'parcel dropped', 'boss', '{"now":["parcels 02651c3f1f60dded dropped d2f713997921","orders 28312775d78a3f14 - 5a1ee99ff37f"],"parcel":"02651c3f1f60dded"}', '7356d3e0f18aa038be639d93a0e6db8a85f71f033297eeddc3450975ea08e46a');
INSERT INTO public.ledger VALUES (143, '2026-03-02T14:48:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels bf8914ca67188b40 open e7f35f553c5a","orders 5133139c96ca05cd - 39d6a092fdb0"],"orders":["5133139c96ca05cd"],"parcel":"bf8914ca67188b40","table":"main"}', 'd1ac31d17ffdb2f0bcad37e1548d0c4e5af7e1f152c930a87389f4abc5b48e29');
INSERT INTO public.ledger VALUES (144, '2026-03-02T14:51:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"171671a38dd06da8","line_state":"packed","now":["lines 171671a38dd06da8 packed 1d21f4e88f65","slots S004 on_item 35a0b8cdb6ac","scans pack-S004 - 0e3a11d0ad97"],"order_number":"B-04","parcel":"bf8914ca67188b40","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}', '421db1db7d2669203c28a5ccddd086e987aeb4c6916512845a43b13c575acbc2');
INSERT INTO public.ledger VALUES (145, '2026-03-02T14:54:00.000000+00:00', 'parcel set aside', 'boss', '{"now":["parcels bf8914ca67188b40 aside ec588737acd4"],"parcel":"bf8914ca67188b40"}', 'dd822c693fee358159f92a32f2b600481a7e0bcb33182500ba8e36ebb73dbc7b');
INSERT INTO public.ledger VALUES (146, '2026-03-02T14:57:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels 5c0384f43cc9b691 open 6b732b501f88","orders 10555a46e2c4cde9 - 4c62a94971df"],"orders":["10555a46e2c4cde9"],"parcel":"5c0384f43cc9b691","table":"second"}', '8da224a88858d1b9dc48fda0b0fe49e0af2e239ff81bac935e04348d63eb79fb');
INSERT INTO public.ledger VALUES (147, '2026-03-02T15:00:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"8995eff93d6f0331","line_state":"packed","now":["lines 8995eff93d6f0331 packed dddecbf84ff5","slots L006 on_item 902dd0a92e9e","scans pack-L006 - 9c796b580400"],"order_number":"B-09","parcel":"5c0384f43cc9b691","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}', '61bc781f73b97453108a4c3866f1719098e929ba4dff7c3d334b0e07b2ff749a');
INSERT INTO public.ledger VALUES (148, '2026-03-02T15:03:00.000000+00:00', 'cancelled', 'boss', '{"lines":["8995eff93d6f0331","73dad5e2b978d748"],"now":["lines 8995eff93d6f0331 packed fd5c40f78724","lines 73dad5e2b978d748 cancelled a233a0542b70"],"number":"B-09","order":"10555a46e2c4cde9"}', '9dca0c96fb0c8b6d18c54b296875b9481c8f3063b3c6c2195001c1e9f1a48f61');
INSERT INTO public.ledger VALUES (149, '2026-03-02T15:06:00.000000+00:00', 'parcel opened', 'boss', '{"now":["parcels dae3cf876e43c8fc open ff5e2e1fb766","orders a6556ff3fb0178be - 125b3fa4999b"],"orders":["a6556ff3fb0178be"],"parcel":"dae3cf876e43c8fc","table":"main"}', '3c9802857ab19ffe0ebbcb18641c1648cf7ffdbcbefb739430ef971217a47a6c');
INSERT INTO public.ledger VALUES (150, '2026-03-02T15:09:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"0e17aeb01f94aefd","line_state":"packed","now":["lines 0e17aeb01f94aefd packed 5885514c9b11","slots S002 on_item edbdf6668054","scans pack-S002 - 944f49d12abb"],"order_number":"B-03","parcel":"dae3cf876e43c8fc","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}', 'e102e586b2b6efc1af9840f59b42c433e8863037fc5598e6a2d926dbfa4ca93f');
INSERT INTO public.ledger VALUES (151, '2026-03-02T15:12:00.000000+00:00', 'order changed', 'boss', '{"lines":[{"hold":"changed_after_pick","line":"4985b2549b316ebf","reference":"S006-018","stay":"2d5062a278c3047b"}],"now":["lines 4985b2549b316ebf picked 776a1f050d9b"],"number":"B-13","order":"f21a1fe39d3adcbd"}', 'cb5ae9daf1f8ce8ef8ecc63e9a6976dacd3ed742d951991f8e2d6519a3ec824f');
INSERT INTO public.ledger VALUES (152, '2026-03-02T15:15:00.000000+00:00', 'round opened', 'boss', '{"lines":["68b99488efa9597a","404cb65c714ea04b","6932620ccf87d145","3910d3ece2c1b6f8"],"now":["rounds 6c8fdec6f7a34267 open bc0c5aa1d93c","lines 3910d3ece2c1b6f8 waiting 2ded8cce6a1e","lines 68b99488efa9597a waiting df8f6a22bc90","lines 404cb65c714ea04b waiting 8e535308d182","lines 6932620ccf87d145 waiting be45cddf6b0f"],"round":"6c8fdec6f7a34267"}', '3ff9f984bbc188a17bcfe71ee9be5d310a51d11b24e4303f0ab2cb36f9b9d2f0');
INSERT INTO public.ledger VALUES (153, '2026-03-02T15:18:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"68b99488efa9597a","line_state":"picked","now":["slots L002 on_item f647394a6ad6","lines 68b99488efa9597a picked 5f8a4b882316","scans pick-L002 - 9e1ec0d0a4e1"],"order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"6c8fdec6f7a34267","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}', 'a8e722328fc51746e8f335f4ee59f2603cd2caccc58bcb815a4e1715a13f3d59');
INSERT INTO public.ledger VALUES (154, '2026-03-02T15:21:00.000000+00:00', 'short', 'boss', '{"line":"6932620ccf87d145","note":"Not in its bin","now":["lines 6932620ccf87d145 short 3cb600c4f302","doubts 74bca569195e235c - fe1e29b475cc"]}', 'e819c4398a4908f17fc82a09128855ead7b6c01ff38e1a04af8d71f2204e0aba');
INSERT INTO public.ledger VALUES (155, '2026-03-02T15:21:00.000000+00:00', 'doubted', 'boss', '{"doubt":"74bca569195e235c","doubt_kind":"missing","item":"830b84ca726d6770","words":"Not in its bin"}', '7c38a70867d7a3e10cdd44f6878dfadc8afcbfab1f0e9d33837b1df0bd2ab87b');
INSERT INTO public.ledger VALUES (156, '2026-03-02T15:24:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"now":["scans bad-D0146 - 00bba576268d"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"6c8fdec6f7a34267","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}', '29b815c6dc674107d97239b4ca78805881d81fdbc8bee0ece38dd9becbbd03e5');
INSERT INTO public.ledger VALUES (157, '2026-03-02T15:27:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"now":["scans bad-hello - 9eb8de747078"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"6c8fdec6f7a34267","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '7c9e7d09c5443e00ffa24abb54cf7e047cb4f94ca2aa7383077c8ef0f74264ee');
INSERT INTO public.ledger VALUES (158, '2026-03-02T15:30:00.000000+00:00', 'scan', 'boss', '{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"now":["scans bad- - 4a21088dfcbb"],"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"6c8fdec6f7a34267","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}', '32883c6ffa974558ece51070d6cd8e312c99a7cb6cd617a0f2e8312453e116ae');
INSERT INTO public.ledger VALUES (159, '2026-03-02T15:33:00.000000+00:00', 'card lost', 'boss', '{"code":"L001","now":["slots L001 lost 4b0d95de0b7a"]}', 'c5e2c76ca6d25fe7d69164f9893eab43534f63932bb8ce2a1ded55e48a51c557');
INSERT INTO public.ledger VALUES (160, '2026-03-02T15:36:00.000000+00:00', 'card lost', 'boss', '{"code":"W015","now":["slots W015 lost e09ad5658c4d"]}', '92254f63863bf26ca034653fc00a2b2a9ca7135333f79cbdac578e2c6abb1689');
INSERT INTO public.ledger VALUES (161, '2026-03-02T15:39:00.000000+00:00', 'order received', 'boss', '{"channel":"fair","lines":[{"hold":null,"line":"d7c3d09c1f56ae62","reference":"D001-019","stay":"048bd6622af335cf"},{"hold":"already_sold","line":"c90f15038e01fa08","reference":"W002-016","stay":null}],"now":["orders 663f9de846013efc - 463cea699a97","lines d7c3d09c1f56ae62 waiting 2a203c0d61e7","lines c90f15038e01fa08 unbound fb38130a39ad"],"number":"B-38","order":"663f9de846013efc"}', '46e947d0efdd3c754c177c4049d753a6bab5c0917e4b0fae86fa1a3705fe97cb');
INSERT INTO public.ledger VALUES (162, '2026-03-02T15:42:00.000000+00:00', 'order received', 'boss', '{"channel":"","lines":[{"hold":"stale_code","line":"ab7473ec70364cdc","reference":"W001","stay":null}],"now":["orders 803be54c42940427 - 9904c39e6dc7","lines ab7473ec70364cdc unbound e0d106e4274a"],"number":"B-39","order":"803be54c42940427"}', '03c7fa5aca704527a2bf81847a6770e024e99178bc4b7c878b52b293b9e194e7');
INSERT INTO public.ledger VALUES (163, '2026-03-02T15:45:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:S","note":"Spring","now":["stocktakes 3e1264f9828d07d0 open b5b618979a0b"],"stocktake":"3e1264f9828d07d0"}', '961ab684fb4a9676c4d3d86e24f2076a9bfe8820a33bf0bd8d348fdff5b1c0e2');
INSERT INTO public.ledger VALUES (164, '2026-03-02T15:52:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"now":["looks done-1 - ddb761e241dd","slots S001 on_item bef178f29852","doubts f1cdc066394d3912 - 594ed6bea3f8"],"photo":null,"place":"B-1-1","stocktake":"3e1264f9828d07d0","unread":0}', 'b6e5253ae7d63658fe6a460d81a11725f3406d7c82db928be4aed4f591871d24');
INSERT INTO public.ledger VALUES (165, '2026-03-02T15:52:00.000000+00:00', 'doubted', 'boss', '{"doubt":"f1cdc066394d3912","doubt_kind":"not_this","item":"46378519645cf117","now":["slots S003 on_item bea46f3e9000","slots S012 on_item c7586db8d0eb","slots D010 on_item d40ab8124544"],"words":"A count found another thing on its card in B-1-1."}', 'cc3a160937199846fc308b18070bd85cba22bf523d9bd6500ce480ac72bfe61c');
INSERT INTO public.ledger VALUES (166, '2026-03-02T16:00:00.000000+00:00', 'looked', 'boss', '{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"now":["photos e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5 - ed968b5d7e3b","looks done-2 - e51b72bc7728","slots S011 on_item 6f084cb7a4db","slots S013 on_item b12583e92e89"],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"3e1264f9828d07d0","unread":0}', '507e2fb779e32e7cb927e01d0bb94a0717b50569a14e64d1f4696d42a956791f');
INSERT INTO public.ledger VALUES (167, '2026-03-02T16:06:00.000000+00:00', 'finding resolved', 'boss', '{"after":166,"finding":"elsewhere-S012","how":"put_right","now":["slots S012 on_item e5169e478239","resolutions 3e1264f9828d07d0.elsewhere-S012 - 65d6ed9a4659"],"reason":"","stocktake":"3e1264f9828d07d0","sure":false}', '74caba3b22019c4516afdfa318f9066c6c531aa096cfbdd00bcea24a475e3bda');
INSERT INTO public.ledger VALUES (168, '2026-03-02T16:09:00.000000+00:00', 'finding resolved', 'boss', '{"after":167,"finding":"unknown-Q0771","how":"ignore","now":["resolutions 3e1264f9828d07d0.unknown-Q0771 - 7416a42c1f1b"],"reason":"A neighbour''s","stocktake":"3e1264f9828d07d0","sure":false}', '0d6898785ea73fcd15f3a9a513ff2b6598a8f04124c73daf2f48abc6f04d149c');
INSERT INTO public.ledger VALUES (169, '2026-03-02T16:12:00.000000+00:00', 'finding resolved', 'boss', '{"after":168,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 1f5d2ebf60d9","resolutions 3e1264f9828d07d0.missing-S008 - e2591b654e32"],"reason":"","stocktake":"3e1264f9828d07d0","sure":false}', '0b6d8b5ab75145294ac84fc7eddd82deb85800ebdd13a8c00bc75f5ad78a417f');
INSERT INTO public.ledger VALUES (170, '2026-03-02T16:15:00.000000+00:00', 'finding reopened', 'boss', '{"after":169,"finding":"missing-S008","how":"found_later","now":["slots S008 on_item 39fdb847a4bc","resolutions 3e1264f9828d07d0.missing-S008 - -"],"stocktake":"3e1264f9828d07d0"}', '60060429184fb2e1fc4159b5542344e977fd17750043bad1f926a638491c739f');
INSERT INTO public.ledger VALUES (171, '2026-03-02T16:18:00.000000+00:00', 'doubted', 'boss', '{"doubt":"fa8855fc63fe0c7b","doubt_kind":"missing","item":"a011941fc31dd761","now":["doubts fa8855fc63fe0c7b - 5a7652a5126d","stocktakes 3e1264f9828d07d0 closed cb3554315d50"],"words":"a count of section:S did not find it"}', 'c1256b67a10f20128cb286adc84d97cea238d5d0a3c4fe1575a732f454dddf0c');
INSERT INTO public.ledger VALUES (174, '2026-03-02T16:28:00.000000+00:00', 'looked', 'boss', '{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"now":["looks runs-1 - c2638d66481f","slots L003 on_item 1adc2182b909","slots L004 on_item 98c02c51c727","slots L005 on_item d305b2e5e8e0","slots L007 on_item 20964e030621"],"photo":null,"place":"C-1-1","stocktake":"24feb0f89da5ce29","unread":0}', 'c88431133ba3105719f1b541021d9a4ff3124bac8831113993f1aef9dfdc1dd2');
INSERT INTO public.ledger VALUES (175, '2026-03-02T16:31:00.000000+00:00', 'card lost', 'boss', '{"code":"L008","now":["slots L008 lost dd199d28ab03","doubts 1e450755fe276b44 - 919129dce2ab"]}', '3c98e8c2beaec9a5e0c2fecdb75de7b6aed6064f8048affd860ad7849877aff8');
INSERT INTO public.ledger VALUES (176, '2026-03-02T16:31:00.000000+00:00', 'doubted', 'boss', '{"doubt":"1e450755fe276b44","doubt_kind":"missing","item":"b4cb1d1e7d354350","now":["resolutions 24feb0f89da5ce29.missing-L008 - efd4b8d88f02"],"words":"a count did not find it"}', '2895eb0a577f8c3698091ff5e1689345835486b82204ecd99700b8a6c77f9c9c');
INSERT INTO public.ledger VALUES (177, '2026-03-02T16:31:00.000000+00:00', 'finding resolved', 'boss', '{"after":174,"finding":"missing-L008","how":"lost","reason":"","stocktake":"24feb0f89da5ce29","sure":false}', '1e5450b285639c95ca01d63f560d6a607ed5a1eb5f93249ecf3c87a6bf60d717');
INSERT INTO public.ledger VALUES (178, '2026-03-02T16:34:00.000000+00:00', 'withdrawn', 'boss', '{"code":"L009","now":["stays 04d29d8188e4794c withdrawn 560217e061e0","slots L009 due 821cc144d722","resolutions 24feb0f89da5ce29.missing-L009 - 0ef8f50fe14c"],"reason":"Nowhere to be found","stay":"04d29d8188e4794c"}', '801d59eb23828a58ca75f6379827170f079acabe0cefcbcec2a32925a9d18232');
INSERT INTO public.ledger VALUES (179, '2026-03-02T16:34:00.000000+00:00', 'finding resolved', 'boss', '{"after":177,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"24feb0f89da5ce29","sure":false}', '0042225896425358640167c6e17a6e1669f0b80c62cd6349b364399b6935652f');
INSERT INTO public.ledger VALUES (180, '2026-03-02T16:37:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"section:D","note":"","now":["stocktakes a4e32280508940c9 open 412a52cc2f11"],"sample":{"bins":["A-1-3"],"chosen":"blind","of":3},"stocktake":"a4e32280508940c9"}', '9c499db581f3965ad588d598d815bfbcc06a087f4d4e7bd9bf6fcaa4d816ed47');
INSERT INTO public.ledger VALUES (181, '2026-03-02T16:40:00.000000+00:00', 'stocktake opened', 'boss', '{"area":"tray","note":"Too late today","now":["stocktakes fef15a82c23ac30d open 87a4118753e3"],"stocktake":"fef15a82c23ac30d"}', 'e4eeaa57ce3543c6af063779123daa6e3047b9238174d1083e813dafd212c3e3');
INSERT INTO public.ledger VALUES (182, '2026-03-02T16:43:00.000000+00:00', 'stocktake cancelled', 'boss', '{"now":["stocktakes fef15a82c23ac30d cancelled f00036a1ea13"],"stocktake":"fef15a82c23ac30d"}', 'b8f00630cfce5058dc014ed70928ed1055e946ac8ac79c409377a039c80fb9c5');
INSERT INTO public.lines VALUES (15, '33ad2fa07cb51263', '20d811d0ce27f1c8', 1, 'D009-01B', 'Rear derailleur 9', '', '9a3276a69278cb7d', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (21, 'b669c67da1d38684', 'cdddec199e5d9165', 1, 'D003-01U', 'Bell with a crown', '', 'cd032381defe0320', 'waiting', NULL, NULL, NULL, NULL, true, '[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO public.lines VALUES (22, '7c767c57aae1147e', '59b2d68611df4d19', 1, 'D005-01E', 'Rear derailleur 5', '', 'f5bdb26cbf14e408', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (23, '3c8e58117b9d7ff4', '59b2d68611df4d19', 2, 'Z999', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (24, 'a38198d8d7878088', '9725de7171b4af75', 1, 'D006-016', 'Rear derailleur 6', '', '15a369a9a7686d4c', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (25, 'fa9732ad760a3da9', '9725de7171b4af75', 2, 'D007-01R', 'Rear derailleur 7', '', 'c9587e3bb3af0630', 'waiting', NULL, NULL, NULL, NULL, false, '[["not_in_file", "The order came again without this line."]]');
INSERT INTO public.lines VALUES (26, 'b2014c938b5b7cef', '137e9103784f082d', 1, 'lamp', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO public.lines VALUES (27, 'cb7bd0948c70dc3a', '3c2c96fe797736a5', 1, 'D006-016', 'Rear derailleur 6', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "Order B-32 has it."]]');
INSERT INTO public.lines VALUES (28, '402b49bb590934d3', '7a99b42df423dfa7', 1, 'W004-01J', 'Front wheel 4', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO public.lines VALUES (29, '4150eafd0845236a', 'b9080bfbd5699060', 1, 'L015', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO public.lines VALUES (30, '5321577525a05245', '9601e96f67b9b216', 1, 'W005-01B', 'Bell with a crown', '', 'a9e1f445f18dea70', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (14, 'd7e3c1ad06467e91', '63bf0abae1e2c3d8', 1, 'L007-014', 'Dynamo lamp 7', '', 'fa4dbd41dd910bd5', 'waiting', NULL, NULL, NULL, NULL, true, '[["suspect", "Another lamp, by the photo"]]');
INSERT INTO public.lines VALUES (10, 'd762f360185f3809', 'b11bdc5aab36a15c', 1, 'L005-01K', 'Dynamo lamp 5', '', 'b214784d4dd8d5b4', 'cancelled', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (16, '246776b8ec5e5690', '3e86ece07501724a', 1, 'W006-013', 'Front wheel 6', '', '2396ea0f18ff63f4', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (31, 'b59d1db55b2d5b58', 'fd90a04f90d75c26', 1, 'L012-01S', 'Dynamo lamp 12', '', 'f1a37f7b1130033a', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (32, '010f8b2d3f5099f7', '1e03f19b3dda119a', 1, 'S012-01O', '', '', 'dd4c6c60053f4db4', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (33, '1fefc5cef8f1f69b', 'e9415399e6db51f2', 1, '', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["bad_row", "This row has no reference."]]');
INSERT INTO public.lines VALUES (1, '7dc79fe9c680c7e0', 'cfa08d32267778f7', 1, 'W001-01E', 'Front wheel 1', '', '9097ec4f06fdb92b', 'released', '2b58f557263d2d68', 'b28bedeba796fdc0', 1, NULL, true, '[]');
INSERT INTO public.lines VALUES (2, '5cfea862002776cd', 'cfa08d32267778f7', 2, 'W002-016', 'Front wheel 2', '', 'ccb09d240ce5b68b', 'released', '2b58f557263d2d68', 'b28bedeba796fdc0', 1, 'pack-W002', true, '[]');
INSERT INTO public.lines VALUES (4, '7aa7484e2bf3af58', 'a6556ff3fb0178be', 2, 'S003-01W', 'Leather saddle 3', '', '6b239d24d105d6e3', 'picked', NULL, 'b28bedeba796fdc0', 2, 'pick-S003', true, '[]');
INSERT INTO public.lines VALUES (18, 'de96111a6a6af3ad', 'ad3f9960cd83ba28', 1, 'W007-01W', 'Front wheel 7', '', '0566ccabbf001244', 'released', '0c6244d728c9110d', 'b28bedeba796fdc0', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (5, '171671a38dd06da8', '5133139c96ca05cd', 1, 'S004-01O', 'Leather saddle 4', '', 'a170aca09d416cba', 'packed', 'bf8914ca67188b40', 'b28bedeba796fdc0', 3, 'pack-S004', true, '[]');
INSERT INTO public.lines VALUES (11, '8995eff93d6f0331', '10555a46e2c4cde9', 1, 'L006-01C', 'Dynamo lamp 6', '', '25dc274158724874', 'packed', '5c0384f43cc9b691', 'b28bedeba796fdc0', 4, NULL, true, '[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO public.lines VALUES (6, 'b89ddc82c83f8279', '5133139c96ca05cd', 2, 'S005-01G', 'Leather saddle 5', '', 'b6471efd95263703', 'picked', NULL, 'b28bedeba796fdc0', 3, 'pick-S005', true, '[]');
INSERT INTO public.lines VALUES (17, 'd7c25305360295df', '28312775d78a3f14', 1, 'S007-01Z', 'Leather saddle 7', '', 'eaefa514d555e25d', 'picked', NULL, 'b28bedeba796fdc0', 6, 'pick-S007', true, '[]');
INSERT INTO public.lines VALUES (19, '64d3649d8027dd84', 'ad3f9960cd83ba28', 2, 'W008-01O', 'Front wheel 8', '', '0b90964cae846864', 'waiting', NULL, 'b28bedeba796fdc0', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (12, '73dad5e2b978d748', '10555a46e2c4cde9', 2, 'L011-010', 'Dynamo lamp 11', '', 'a6d4d6a798925274', 'cancelled', NULL, 'b28bedeba796fdc0', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (3, '0e17aeb01f94aefd', 'a6556ff3fb0178be', 1, 'S002-013', 'Leather saddle 2', '', 'cf4643fb6850701b', 'packed', 'dae3cf876e43c8fc', 'b28bedeba796fdc0', 2, 'pack-S002', true, '[]');
INSERT INTO public.lines VALUES (13, '4985b2549b316ebf', 'f21a1fe39d3adcbd', 1, 'S006-018', 'Saddle with springs', '', '2d5062a278c3047b', 'picked', NULL, 'b28bedeba796fdc0', 5, NULL, true, '[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO public.lines VALUES (20, '3910d3ece2c1b6f8', 'c0a6b748f326c162', 1, 'D008-01J', 'Rear derailleur 8', '', '88fd78009de6d260', 'waiting', NULL, '6c8fdec6f7a34267', 8, NULL, true, '[]');
INSERT INTO public.lines VALUES (34, 'd7c3d09c1f56ae62', '663f9de846013efc', 1, 'D001-019', 'Rear derailleur 1', '', '048bd6622af335cf', 'waiting', NULL, NULL, NULL, NULL, true, '[]');
INSERT INTO public.lines VALUES (8, '404cb65c714ea04b', '31b7d9431c2ea60d', 1, 'L003-010', 'Dynamo lamp 3', '', 'ab14bbeeb77e4755', 'waiting', NULL, '6c8fdec6f7a34267', 4, NULL, true, '[]');
INSERT INTO public.lines VALUES (7, '68b99488efa9597a', 'e497f7e7fea69239', 1, 'L002-017', 'Dynamo lamp 2', '', 'd082f8d8c85323a0', 'picked', NULL, '6c8fdec6f7a34267', 1, 'pick-L002', true, '[]');
INSERT INTO public.lines VALUES (9, '6932620ccf87d145', 'a61dd13ef832cc03', 1, 'L004-01S', 'Dynamo lamp 4', '', '6b3173ff9b03e1d8', 'short', NULL, '6c8fdec6f7a34267', 7, NULL, true, '[]');
INSERT INTO public.lines VALUES (35, 'c90f15038e01fa08', '663f9de846013efc', 2, 'W002-016', 'Front wheel 2', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["already_sold", "It has left with order B-01."]]');
INSERT INTO public.lines VALUES (36, 'ab7473ec70364cdc', '803be54c42940427', 1, 'W001', '', '', NULL, 'unbound', NULL, NULL, NULL, NULL, true, '[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
INSERT INTO public.looks VALUES (1, 'done-1', 'cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c', '3e1264f9828d07d0', 'B-1-1', '2026-03-02T15:52:00.000000+00:00', 'wedge', '[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.looks VALUES (2, 'done-2', '88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c', '3e1264f9828d07d0', 'B-1-2', '2026-03-02T16:00:00.000000+00:00', 'photo', '[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]', true, NULL, '[600, 400]', 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO public.looks VALUES (3, 'runs-1', 'f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11', '24feb0f89da5ce29', 'C-1-1', '2026-03-02T16:28:00.000000+00:00', 'wedge', '[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]', true, NULL, '[]', NULL);
INSERT INTO public.mappings VALUES (1, 'Fair', '543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182', '{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
INSERT INTO public.orders VALUES (4, 'e497f7e7fea69239', 'B-05', 'fair', '2026-03-02T11:47:00.000000+00:00', 4, NULL, '2026-03-06T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (5, '31b7d9431c2ea60d', 'B-06', 'fair', '2026-03-02T11:50:00.000000+00:00', 5, NULL, '2026-03-07T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (6, 'a61dd13ef832cc03', 'B-07', 'fair', '2026-03-02T11:53:00.000000+00:00', 6, NULL, '2026-03-08T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (7, 'b11bdc5aab36a15c', 'B-08', 'fair', '2026-03-02T11:56:00.000000+00:00', 7, NULL, '2026-03-09T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (9, 'f21a1fe39d3adcbd', 'B-13', 'fair', '2026-03-02T12:02:00.000000+00:00', 9, NULL, '2026-03-11T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (10, '63bf0abae1e2c3d8', 'B-17', 'fair', '2026-03-02T12:05:00.000000+00:00', 10, NULL, '2026-03-12T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (11, '20d811d0ce27f1c8', 'B-18', 'fair', '2026-03-02T12:08:00.000000+00:00', 11, NULL, '2026-03-13T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (12, '3e86ece07501724a', 'B-21', 'fair', '2026-03-02T12:11:00.000000+00:00', 12, NULL, '2026-03-14T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (15, 'c0a6b748f326c162', 'B-26', 'fair', '2026-03-02T12:20:00.000000+00:00', 15, NULL, '2026-03-17T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (16, 'cdddec199e5d9165', 'B-30', 'fair', '2026-03-02T12:23:00.000000+00:00', 16, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (17, '59b2d68611df4d19', 'B-31', 'fair', '2026-03-02T12:26:00.000000+00:00', 17, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (18, '9725de7171b4af75', 'B-32', 'fair', '2026-03-02T12:29:00.000000+00:00', 18, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (19, '137e9103784f082d', 'B-33', 'fair', '2026-03-02T12:35:00.000000+00:00', 19, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (20, '3c2c96fe797736a5', 'B-34', 'fair', '2026-03-02T12:38:00.000000+00:00', 20, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (21, '7a99b42df423dfa7', 'B-35', 'fair', '2026-03-02T12:41:00.000000+00:00', 21, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (22, 'b9080bfbd5699060', 'B-36', 'fair', '2026-03-02T12:44:00.000000+00:00', 22, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (23, '9601e96f67b9b216', 'B-37', 'fair', '2026-03-02T12:47:00.000000+00:00', 23, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (24, 'fd90a04f90d75c26', 'Sale L012-01S', '', '2026-03-02T13:08:00.000000+00:00', 24, '2026-03-02T13:08:00.000000+00:00', NULL, NULL, '', 'Rings at noon', true);
INSERT INTO public.orders VALUES (25, '1e03f19b3dda119a', 'F-1', '', '2026-03-02T13:14:00.000000+00:00', 25, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (26, 'e9415399e6db51f2', 'F-2', '', '2026-03-02T13:14:00.000000+00:00', 26, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (1, 'cfa08d32267778f7', 'B-01', 'fair', '2026-03-02T11:38:00.000000+00:00', 1, NULL, '2026-03-03T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (14, 'ad3f9960cd83ba28', 'B-23', 'fair', '2026-03-02T12:17:00.000000+00:00', 14, NULL, '2026-03-16T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (13, '28312775d78a3f14', 'B-22', 'fair', '2026-03-02T12:14:00.000000+00:00', 13, NULL, '2026-03-15T15:00:00.000000+00:00', NULL, '', '', false);
INSERT INTO public.orders VALUES (3, '5133139c96ca05cd', 'B-04', 'fair', '2026-03-02T11:44:00.000000+00:00', 3, NULL, '2026-03-05T15:00:00.000000+00:00', 'bf8914ca67188b40', '', '', false);
INSERT INTO public.orders VALUES (8, '10555a46e2c4cde9', 'B-09', 'fair', '2026-03-02T11:59:00.000000+00:00', 8, NULL, '2026-03-10T15:00:00.000000+00:00', '5c0384f43cc9b691', '', '', false);
INSERT INTO public.orders VALUES (2, 'a6556ff3fb0178be', 'B-03', 'fair', '2026-03-02T11:41:00.000000+00:00', 2, NULL, '2026-03-04T15:00:00.000000+00:00', 'dae3cf876e43c8fc', '', '', false);
INSERT INTO public.orders VALUES (27, '663f9de846013efc', 'B-38', 'fair', '2026-03-02T15:39:00.000000+00:00', 27, NULL, NULL, NULL, '', '', false);
INSERT INTO public.orders VALUES (28, '803be54c42940427', 'B-39', '', '2026-03-02T15:42:00.000000+00:00', 28, '2026-03-01T23:59:59.000000+00:00', NULL, NULL, '', '', false);
INSERT INTO public.parcels VALUES (1, '2b58f557263d2d68', 'main', 'cfa08d32267778f7', '2026-03-02T14:05:00.000000+00:00', 'closed', '2026-03-02T14:14:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (2, '0c6244d728c9110d', 'main', 'ad3f9960cd83ba28', '2026-03-02T14:36:00.000000+00:00', 'closed', '2026-03-02T14:39:00.000000+00:00', NULL);
INSERT INTO public.parcels VALUES (3, '02651c3f1f60dded', 'main', '28312775d78a3f14', '2026-03-02T14:42:00.000000+00:00', 'dropped', NULL, NULL);
INSERT INTO public.parcels VALUES (4, 'bf8914ca67188b40', 'main', '5133139c96ca05cd', '2026-03-02T14:48:00.000000+00:00', 'aside', NULL, NULL);
INSERT INTO public.parcels VALUES (5, '5c0384f43cc9b691', 'second', '10555a46e2c4cde9', '2026-03-02T14:57:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.parcels VALUES (6, 'dae3cf876e43c8fc', 'main', 'a6556ff3fb0178be', '2026-03-02T15:06:00.000000+00:00', 'open', NULL, NULL);
INSERT INTO public.photos VALUES (1, '488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2020170000000000fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000005ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00b2022560000000000fffd9');
INSERT INTO public.photos VALUES (2, '55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0128b80000000007ffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc00011080018002003012200021101031101ffc4001500010100000000000000000000000000000006ffc40014100100000000000000000000000000000000ffc4001501010100000000000000000000000000000006ffc40014110100000000000000000000000000000000ffda000c03010002110311003f009b0134b00000000007ffd9');
INSERT INTO public.photos VALUES (3, 'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5', '\xffd8ffe000104a46494600010100000100010000ffdb0043000604040504040605050506060607090e0909080809120d0d0a0e1512161615121414171a211c17181f1914141d271d1f2223252525161c292c28242b21242524ffdb00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424ffc00011080190025803012200021101031101ffc400160001010100000000000000000000000000000809ffc40018100100030100000000000000000000000000084684c3ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00aa40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b82a912b419ba61ee4e6a5eee00aa4000656aa99cd4bddc01548cad55339a97bb802a904ad39a97bb802a912b4e6a5eee09581aa42569cd4bddc12b035484ad066e987ba5606a9032b41aa42569cd4bddc083374c3dc154895a7352f77055200cad553066e987b82a9195ad52004ad066e987baa900656b548012b419ba61ee4e6a5eee00aa44ad066e987baa900656aa983374c3dc154895a0cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc154a569cd4bddc154832b554c19ba61ee95954c19ba61ee0959aa4cad6a9025683374c3dd54a5683374c3dd54832b5aa4cad6a9025683374c3dc9cd4bddc083374c3dc9cd4bddc0083374c3dd54a5683374c3dd54832b554c19ba61ee95954c19ba61ee0419ba61ee95954c19ba61ee9581aa4000000000000000000000000000000000000000000000000000002569cd4bddc083374c3dc9cd4bddc083374c3dc083374c3dc9cd4bddc083374c3dc9cd4bddc0154800cad55339a97bb825655339a97bb8025655339a97bb825655339a97bb802a94ad39a97bb82a94ad39a97bb80139a97bb825655339a97bb8256055339a97bb825655339a97bb82560553066e987ba56553066e987ba5606a932b5aa4cad055339a97bb81066e987b939a97bb81066e987b8139a97bb82a94ad39a97bb82a90656aa983374c3dd2b2a983374c3dc12b354995ad5204ad066e987baa94ad066e987baa90656b54995ad5204ad066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77055295a7352f7705520cad553066e987ba56553066e987b82566a932b5aa4095a0cdd30f755295a0cdd30f75520cad6a932b5aa4095a0cdd30f727352f77020cdd30f727352f770020cdd30f755295a0cdd30f75520cad553066e987ba56553066e987b81066e987ba56553066e987ba5606a900000000000000000000000000000000000000000000000000000095a7352f77020cdd30f727352f77020cdd30f7020cdd30f727352f77020cdd30f727352f77005520032b554ce6a5eee095954ce6a5eee0095954ce6a5eee095954ce6a5eee00aa52b4e6a5eee0aa52b4e6a5eee004e6a5eee095954ce6a5eee0958154ce6a5eee095954ce6a5eee0958154c19ba61ee95954c19ba61ee9581aa4cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee04e6a5eee0aa52b4e6a5eee0aa4195aaa60cdd30f74acaa60cdd30f704acd52656b54812b419ba61eeaa52b419ba61eeaa4195ad52656b54812b419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d520000000000000000000000000000000000000000000000000000012b4e6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00aa400656aa99cd4bddc12b2a99cd4bddc012b2a99cd4bddc12b2a99cd4bddc0154a569cd4bddc154a569cd4bddc009cd4bddc12b2a99cd4bddc12b02a99cd4bddc12b2a99cd4bddc12b02a983374c3dd2b2a983374c3dd2b0354995ad5265682a99cd4bddc083374c3dc9cd4bddc083374c3dc09cd4bddc083374c3dc9cd4bddc083374c3dc154b2b5aa4cad055339a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb801066e987baa94ad066e987baa904ad39a97bb8139a97bb8139a97bb8139a97bb801066e987baa94ad066e987baa90656aa983374c3dd2b2a983374c3dc083374c3dd2b2a983374c3dd2b03548000000000000000000000000000000000000000000000000000004ad39a97bb81066e987b939a97bb81066e987b81066e987b939a97bb81066e987b939a97bb802a900195aaa67352f7704acaa67352f77004acaa67352f7704acaa67352f770055295a7352f77055295a7352f770027352f7704acaa67352f7704ac0aa67352f7704acaa67352f7704ac0aa60cdd30f74acaa60cdd30f74ac0d52656b54995a0aa67352f77020cdd30f727352f77020cdd30f7027352f77020cdd30f727352f77020cdd30f70552cad6a932b4154ce6a5eee0419ba61ee4e6a5eee0419ba61ee0419ba61ee4e6a5eee0419ba61ee4e6a5eee00419ba61eeaa52b419ba61eeaa412b4e6a5eee04e6a5eee04e6a5eee04e6a5eee00419ba61eeaa52b419ba61eeaa4195aaa60cdd30f74acaa60cdd30f7020cdd30f74acaa60cdd30f74ac0d52000000000000000000000000000000000001fffd9', '\xffd8ffe000104a46494600010100000100010000ffdb00430006040506050406060506070706080a100a0a09090a140e0f0c1017141818171416161a1d251f1a1b231c1616202c20232627292a29191f2d302d283025282928ffdb0043010707070a080a130a0a13281a161a2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828ffc000110800d5014003012200021101031101ffc4001b00010101010101010100000000000000000006070805040102ffc40036100001000609030400060203010000000000010204050607030837387375b2b3b4357476111221b1131415223186235132416124ffc40014010100000000000000000000000000000000ffc40014110100000000000000000000000000000000ffda000c03010002110311003f00ea9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330a3575c04e043e1f88694b226995a0ff00e7a3f7adee5bd7d3e3d51f1f093cf724ca71be5aa18676455b11491150533431fbe85084215a24252b7bfe7f6a7e3e3f9216b85648ae6341f4b9252bfaf48bca9e5a56037f76c54ef78c5af98759d14ffa83a54a1a4684aca7a29e94aafb95f6a7d7e7e3f9f83cf9931fb9e5e3a599e2ff00435259da29ff002ea7e5a890badeef6a56f942528f8f45524a413785995da3b769248d75ecf5c99a2366900b38a27a4250d50b9695e2a3cd2abd9828de2cff0084cc85bfc4bfafa7bbf723d13f1fc7c9ef39265b89f2d70bb3b22adbf8911505334317be85084215a24252b7bfe7f6a7e13e9fc9c7b3e3a6cb3f1463fb58d6a57f5f917953cb4ac06feff8a9dee27db85d4da8a74b53e6997a066fc353dcafb95550b27dc9f5f847a27ff48277cfe839be2b6787a8147afe7e9db1561512b33210a7e2257f623d53eefe3d7fefd0fea6e5a84a8cc9a7690725c1f78073f9251f240eab7fd6220b71bf5e0e96d51ec96a6168a466a5fc3654255f7a8b2554fa27ddf28f541f7bf67a426e472385e8d8a3cd2ccfaa15e999bf0d99095bdaaaded4fb91eef84faa7ff4e2f9bb6ad17e6ed5bab15b35acca5365ed3bca81d8332a65b8a5db3bbe99feab62546e597568bf2d428a4f955084a7d7d528f4ff00920f81e537e1a77c5ae68769d5787ea0f6519d7674ab4084a9e94e9f453dc9f77c7fefc7c192576ba34238ad3a28c948d6f0b2d7b773ea401d58d1153be82356785d7453fea74ec4b37a89429fe3fc3556f6a7d56f5fe7d7febd0838b27ec1f0bc48dce47928f54b6b1d27e1527e13321657d7d109f84fb91ebfcffa3f5ed79b7378cd36fa4e4eac05b5c51de234280766b54d58799a63d141348ab77eb348b28aaa9450a3f0bd57a345223f77affa4ffafe4f7d9e2a77d3c6ad10ba88a7fd4e818956f5d2953fc7f86b2ded47a2debfcfaffd7a1cd0ff00be8b0633371106b8e9bcdbe7c66877d007bb1ccd487e0b895dae27c2adc96d6f5145e853414285d4f45974a88f54faa3d3e5093df79454ef77c5ae6875a114ff00a83d94a6a4674aaa7aa9e944afb96f727d7e3e3f8f839a6b4f6dd05e033f29635b8d2f092dbb5796d01ee36cd487d9264d1c0f4aab77eb548b28a2128a14268bd56a3f7a3f77affa4ffa3ef9911fb9e5eba199e2ff00435259da29ff002ea7e5e890badeef6a56f942528f8f455273d44b7d662c766e220abaeb59e38f3446cd20176e99d50b3d218fd75994797e47f51a3767a2cce842ff008cba10957e3ddff1f9fe7d4f418a6a43ed93269208a255bbf5aa35d751294d0a1145eaad1a574feef5ff0048ff00472ccbcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff7d160c666e220d71d379b7cf8cd0efa0c8dff007d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eb17b5e6dcde334dbe9393ab016d7147788d0a01aabfefa2c18ccdc441ae3a6f36f9f19a1df4191bfefa2c18ccdc441ae3a6f36f9f19a1df40192d69edba0bc067e52c6b71a5e125b76af2da324ad3db741780cfca58d6e34bc24b6ed5e5b4064b12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803717b5e6dcde334dbe9393ab016d7147788d0a1d62f6bcdb9bc669b7d27275602dae28ef11a1403557fdf4583199b88835c74de6df3e3343be83237fdf4583199b88835c74de6df3e3343be80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a7b6e82f019f94b1adc6978496ddabcb680c9625beb3163b3711055d75acf1c79a23669094896facc58ecdc441575d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9006e2f6bcdb9bc669b7d27275602dae28ef11a143ac5ed79b7378cd36fa4e4eac05b5c51de2342806aaff00be8b0633371106b8e9bcdbe7c66877d0646ffbe8b0633371106b8e9bcdbe7c66877d0064b5a7b6e82f019f94b1adc6978496ddabcb68c92b4f6dd05e033f29635b8d2f092dbb5796d0192c4b7d662c766e220abaeb59e38f3446cd212912df598b1d9b8882aebad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200dc5ed79b7378cd36fa4e4eac05b5c51de23428758bdaf36e6f19a6df49c9d580b6b8a3bc468500d55ff007d160c666e220d71d379b7cf8cd0efa0c8dff7d160c666e220d71d379b7cf8cd0efa00c96b4f6dd05e033f29635b8d2f092dbb5796d192569edba0bc067e52c6b71a5e125b76af2da0325896facc58ecdc441575d6b3c71e688d9a425225beb3163b3711055d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401b8bdaf36e6f19a6df49c9d580b6b8a3bc46850eaf7d52294759a73269175554261aa64212b2508f9fc749ca9581a0a644e589e95345488a2fce23f7a554fa7fc54ffb03517fdf4583199b88835c74de6df3e3343be832288175515c977b425657f0134ccde949ebfb53e8c88f5f44ff0006bae84a1359b7c25094250986687e518e80325ad3db741780cfca58d6e34bc24b6ed5e5b46495a1ff003cef8355a0ff002254a0a042c853f77a7a352debebe9fc1ad46ffe39fd2e2997fdb44a32bc90b2e9f8551eb47f1ea9fe10064d12df598b1d9b8882aebad678e3cd11b3484a44b7d662c766e220abaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e628daef52d7ba796e9d0f2eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24d7c56c631f4f8ff002bc77906b75a7b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a796958adae15922b98d07d2e494afebd22f2a7969580d1209bc2ccaed1dbb49246baf67ae4cd11b34857413785995da3b769248d75ecf5c99a2366900c3a7c74d967e28c7f6b1ad4afebf22f2a796958c967c74d967e28c7f6b1ad4afebf22f2a7969580d126e5a84a8cc9a7690725c1f78073f9251f24eb49b96a12a33269da41c9707de01cfe4947c903c99bb6ad17e6ed5bab15b35acca5365ed3bca925376d5a2fcddab7562b66b5994a6cbda77950357aed74684715a74519291ade165af6ee7d482aebb5d1a11c569d1464a46b78596bdbb9f5200f5eb516db056033f296359ad4d87bfb119b90a19356a2db60ac067e52c6b35a9b0f7f623372140398636bbd4b5ee9e5ba7444bab71fe9ac5ad539de36bbd4b5ee9e5ba7444bab71fe9ac5ad5033c9377b18c715e3bc835bad3589bef1597914664926ef6318e2bc77906b75a6b137de2b2f228c0c8e20be9306333711056d75acf1c79a23669092882fa4c18ccdc4415b5d6b3c71e688d9a4032497961a9f3262d0a95f0d5f55b71da78a92425e586a7cc98b42a57c357d56dc769e2a40eb400000000000000000000000000000000000187d70ac915cc683e9724a57f5e917953cb4ac56d70ac915cc683e9724a57f5e917953cb4ac068904de1665768edda49235d7b3d726688d9a42ba09bc2ccaed1dbb49246baf67ae4cd11b348061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac64b3e3a6cb3f1463fb58d6a57f5f917953cb4ac0689372d4254664d3b48392e0fbc039fc928f9275a4dcb509519934ed20e4b83ef00e7f24a3e481e4cddb568bf376add58ad9ad66529b2f69de54929bb6ad17e6ed5bab15b35acca5365ed3bca81abd76ba34238ad3a28c948d6f0b2d7b773ea41575dae8d08e2b4e8a325235bc2cb5eddcfa9007af5a8b6d82b019f94b1acd6a6c3dfd88cdc850c9ab516db056033f296359ad4d87bfb119b90a01cc31b5dea5af74f2dd3a225d5b8ff4d62d6a9cef1b5dea5af74f2dd3a225d5b8ff004d62d6a819e49bbd8c638af1de41add69ac4df78acbc8a33249377b18c715e3bc835bad3589bef159791460647105f4983199b8882b6bad678e3cd11b348494417d260c666e220adaeb59e38f3446cd201924bcb0d4f99316854af86afaadb8ed3c549212f2c353e64c5a152be1abeab6e3b4f152075a000000000000000000000000000000000000c3eb85648ae6341f4b9252bfaf48bca9e5a562b6b85648ae6341f4b9252bfaf48bca9e5a560344826f0b32bb476ed2491aebd9eb933446cd215d04de1665768edda49235d7b3d726688d9a4030e9f1d3659f8a31fdac6b52bfafc8bca9e5a563259f1d3659f8a31fdac6b52bfafc8bca9e5a5603449b96a12a33269da41c9707de01cfe4947c93ad26e5a84a8cc9a7690725c1f78073f9251f240f266edab45f9bb56eac56cd6b3294d97b4ef2a494ddb568bf376add58ad9ad66529b2f69de540d5ebb5d1a11c569d1464a46b78596bdbb9f520abaed74684715a74519291ade165af6ee7d4803d7ad45b6c1580cfca58d66b5361efec466e42864d5a8b6d82b019f94b1acd6a6c3dfd88cdc8500e618daef52d7ba796e9d112eadc7fa6b16b54e778daef52d7ba796e9d112eadc7fa6b16b540cf24ddec631c578ef20d6eb4d626fbc565e45199249bbd8c638af1de41add69ac4df78acbc8a30323882fa4c18ccdc4415b5d6b3c71e688d9a424a20be9306333711056d75acf1c79a2366900c925e586a7cc98b42a57c357d56dc769e2a49097961a9f3262d0a95f0d5f55b71da78a903ad00000000000000000000000000000000000061f5c2b245731a0fa5c9295fd7a45e54f2d2b15b5c2b245731a0fa5c9295fd7a45e54f2d2b01a2413785995da3b769248d75ecf5c99a236690ae826f0b32bb476ed2491aebd9eb933446cd201874f8e9b2cfc518fed635a95fd7e45e54f2d2b192cf8e9b2cfc518fed635a95fd7e45e54f2d2b01a24dcb509519934ed20e4b83ef00e7f24a3e49d69372d4254664d3b48392e0fbc039fc928f920793376d5a2fcddab7562b66b5994a6cbda779524a6edab45f9bb56eac56cd6b3294d97b4ef2a06af5dae8d08e2b4e8a325235bc2cb5eddcfa9055d76ba34238ad3a28c948d6f0b2d7b773ea401ebd6a2db60ac067e52c6b35a9b0f7f62337214326ad45b6c1580cfca58d66b5361efec466e4280730c6d77a96bdd3cb74e889756e3fd358b5aa73bc6d77a96bdd3cb74e889756e3fd358b5aa067926ef6318e2bc77906b75a6b137de2b2f228cc924ddec631c578ef20d6eb4d626fbc565e4518191c417d260c666e220adaeb59e38f3446cd2125105f4983199b8882b6bad678e3cd11b34806492f2c353e64c5a152be1abeab6e3b4f152484bcb0d4f99316854af86afaadb8ed3c5481d680000000000000000000000000000000000030fae15922b98d07d2e494afebd22f2a79695800344826f0b32bb476ed2491aebd9eb933446cd200061d3e3a6cb3f1463fb58d6a57f5f917953cb4ac001a24dcb509519934ed20e4b83ef00e7f24a3e4800793376d5a2fcddab7562b66b5994a6cbda7795000d5ebb5d1a11c569d1464a46b78596bdbb9f520003d7ad45b6c1580cfca58d66b5361efec466e428001cc31b5dea5af74f2dd3a225d5b8ff004d62d6a80067926ef6318e2bc77906b75a6b137de2b2f228c00323882fa4c18ccdc4415b5d6b3c71e688d9a4000c925e586a7cc98b42a57c357d56dc769e2a4003ad0000000000000000000000007fffd9');
INSERT INTO public.racks VALUES (1, 'A', 0, 0);
INSERT INTO public.racks VALUES (2, 'B', 0, 0);
INSERT INTO public.racks VALUES (3, 'C', 0, 1.2192);
INSERT INTO public.racks VALUES (4, 'D', 0, 1.2192);
INSERT INTO public.resolutions VALUES (1, '3e1264f9828d07d0.elsewhere-S012', '3e1264f9828d07d0', '{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'put_right', '', 'boss', '2026-03-02T16:06:00.000000+00:00', '{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:52:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "dd4c6c60053f4db4", "item": "9732e8f07c48f736", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "010f8b2d3f5099f7", "order": "1e03f19b3dda119a", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "dd4c6c60053f4db4", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:06:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "dd4c6c60053f4db4", "item": "9732e8f07c48f736", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}, "Line": {"id": "010f8b2d3f5099f7", "order": "1e03f19b3dda119a", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "dd4c6c60053f4db4", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (2, '3e1264f9828d07d0.unknown-Q0771', '3e1264f9828d07d0', '{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}', 'ignore', 'A neighbour''s', 'boss', '2026-03-02T16:09:00.000000+00:00', '{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (4, '24feb0f89da5ce29.missing-L008', '24feb0f89da5ce29', '{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'lost', '', 'boss', '2026-03-02T16:31:00.000000+00:00', '{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "e9144cec55cab01c", "item": "b4cb1d1e7d354350", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "e9144cec55cab01c", "item": "b4cb1d1e7d354350", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "doubts": {"added": ["1e450755fe276b44"], "ended": []}, "to": null}');
INSERT INTO public.resolutions VALUES (5, '24feb0f89da5ce29.missing-L009', '24feb0f89da5ce29', '{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}', 'withdraw', 'Nowhere to be found', 'boss', '2026-03-02T16:34:00.000000+00:00', '{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "04d29d8188e4794c", "item": "110214768bf3e512", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": "", "load": null, "told": "", "undated": false}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "04d29d8188e4794c", "item": "110214768bf3e512", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:34:00+00:00", "reason": "Nowhere to be found", "load": null, "told": "", "undated": false}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO public.rounds VALUES (1, 'b28bedeba796fdc0', '2026-03-02T13:17:00.000000+00:00', 'closed');
INSERT INTO public.rounds VALUES (2, '6c8fdec6f7a34267', '2026-03-02T15:15:00.000000+00:00', 'open');
INSERT INTO public.scans VALUES (1, 'free-D004', '2f79c9ed8aa89d9367050065d8d09563e645b89a795f75f1cc8c63656b98710f', 'bin', 'b28bedeba796fdc0', 'D004', false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T13:20:00.000000+00:00', '');
INSERT INTO public.scans VALUES (2, 'pick-W001', 'ca56fe94121a7c874e4bcf2e868c01b03ea8fae7d292b90b73d0184c9d8187a1', 'bin', 'b28bedeba796fdc0', 'W001', false, true, true, '7dc79fe9c680c7e0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "cfa08d32267778f7", "order_number": "B-01", "line": "7dc79fe9c680c7e0", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:23:00.000000+00:00', '["on_item", ["9097ec4f06fdb92b", "stored"], ["7dc79fe9c680c7e0", "picked", null, []], null]');
INSERT INTO public.scans VALUES (3, 'pick-W002', '2684ca349fc16bd2f378b66d2adeb18b3310ad94652032ce3aebee2e59513064', 'bin', 'b28bedeba796fdc0', 'W002', false, true, true, '5cfea862002776cd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "cfa08d32267778f7", "order_number": "B-01", "line": "5cfea862002776cd", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:26:00.000000+00:00', '["on_item", ["ccb09d240ce5b68b", "stored"], ["5cfea862002776cd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (4, 'pick-S002', 'cf0276e6dda1e7b4f3b8f92ba5b16b3ddb9e4c94ffe7743b42a9e3a33343ec23', 'bin', 'b28bedeba796fdc0', 'S002', false, true, true, '0e17aeb01f94aefd', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a6556ff3fb0178be", "order_number": "B-03", "line": "0e17aeb01f94aefd", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:29:00.000000+00:00', '["on_item", ["cf4643fb6850701b", "stored"], ["0e17aeb01f94aefd", "picked", null, []], null]');
INSERT INTO public.scans VALUES (5, 'pick-S003', '65b2df6e8dcce8ee627d5b0ed9b4fe897cbf57bb2c897005ec6ea2490b820607', 'bin', 'b28bedeba796fdc0', 'S003', false, true, true, '7aa7484e2bf3af58', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "a6556ff3fb0178be", "order_number": "B-03", "line": "7aa7484e2bf3af58", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:32:00.000000+00:00', '["on_item", ["6b239d24d105d6e3", "stored"], ["7aa7484e2bf3af58", "picked", null, []], null]');
INSERT INTO public.scans VALUES (6, 'pick-S004', 'dd9c3bf84a24126e7532d2948a259e5bb18dd30f4ab1e279bc24d935d5e72b98', 'bin', 'b28bedeba796fdc0', 'S004', false, true, true, '171671a38dd06da8', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "5133139c96ca05cd", "order_number": "B-04", "line": "171671a38dd06da8", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:35:00.000000+00:00', '["on_item", ["a170aca09d416cba", "stored"], ["171671a38dd06da8", "picked", null, []], null]');
INSERT INTO public.scans VALUES (7, 'pick-S005', '49368458f301a00b653674d4161420a9927ff4b5547e6a2c83436cdaa509ba7e', 'bin', 'b28bedeba796fdc0', 'S005', false, true, true, 'b89ddc82c83f8279', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "5133139c96ca05cd", "order_number": "B-04", "line": "b89ddc82c83f8279", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:38:00.000000+00:00', '["on_item", ["b6471efd95263703", "stored"], ["b89ddc82c83f8279", "picked", null, []], null]');
INSERT INTO public.scans VALUES (8, 'pick-L006', '9e6949dd38f71d2d35e83efeb28c23315dc931b86a8ff40be834de1318fe8f5b', 'bin', 'b28bedeba796fdc0', 'L006', false, true, true, '8995eff93d6f0331', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "10555a46e2c4cde9", "order_number": "B-09", "line": "8995eff93d6f0331", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:41:00.000000+00:00', '["on_item", ["25dc274158724874", "stored"], ["8995eff93d6f0331", "picked", null, []], null]');
INSERT INTO public.scans VALUES (9, 'pick-L011', 'ff17423bee2bac9783391ea67d19d647679f743f0b4bd36c3ca100ad8bc65714', 'bin', 'b28bedeba796fdc0', 'L011', false, true, true, '73dad5e2b978d748', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "10555a46e2c4cde9", "order_number": "B-09", "line": "73dad5e2b978d748", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:44:00.000000+00:00', '["on_item", ["a6d4d6a798925274", "stored"], ["73dad5e2b978d748", "picked", null, []], null]');
INSERT INTO public.scans VALUES (10, 'pick-S006', '2fdeed30a9508965aa89f8ad9ba27e85ccb891d0c2ed378b296d76bf10b6f97e', 'bin', 'b28bedeba796fdc0', 'S006', false, true, true, '4985b2549b316ebf', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "f21a1fe39d3adcbd", "order_number": "B-13", "line": "4985b2549b316ebf", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:47:00.000000+00:00', '["on_item", ["2d5062a278c3047b", "stored"], ["4985b2549b316ebf", "picked", null, []], null]');
INSERT INTO public.scans VALUES (11, 'pick-S007', '27bb26e9fc2f130f2c9aab711dd56bdc54d4202798bfd57f61a8bfa89a09eccf', 'bin', 'b28bedeba796fdc0', 'S007', false, true, true, 'd7c25305360295df', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "28312775d78a3f14", "order_number": "B-22", "line": "d7c25305360295df", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:50:00.000000+00:00', '["on_item", ["eaefa514d555e25d", "stored"], ["d7c25305360295df", "picked", null, []], null]');
INSERT INTO public.scans VALUES (12, 'pick-W007', 'c4f2f5a5c624d26609250ab19c1e04ccdeb821c4e716745cb0f49cbc866ce21e', 'bin', 'b28bedeba796fdc0', 'W007', false, true, true, 'de96111a6a6af3ad', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ad3f9960cd83ba28", "order_number": "B-23", "line": "de96111a6a6af3ad", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:53:00.000000+00:00', '["on_item", ["0566ccabbf001244", "stored"], ["de96111a6a6af3ad", "picked", null, []], null]');
INSERT INTO public.scans VALUES (13, 'pick-W008', '6b0ebd4e31001fc498c262c92c0f439bb4b03cf391939fe7dde7ccaef4adf0f0', 'bin', 'b28bedeba796fdc0', 'W008', false, true, true, '64d3649d8027dd84', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "ad3f9960cd83ba28", "order_number": "B-23", "line": "64d3649d8027dd84", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T13:56:00.000000+00:00', '["on_item", ["0b90964cae846864", "stored"], ["64d3649d8027dd84", "picked", null, []], null]');
INSERT INTO public.scans VALUES (14, 'other-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, false, false, '0e17aeb01f94aefd', '2b58f557263d2d68', '{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a6556ff3fb0178be", "order_number": "B-03", "line": "0e17aeb01f94aefd", "line_state": "picked", "order_state": "picking", "parcel": "2b58f557263d2d68", "parcel_state": "open", "released": []}', '', '2026-03-02T14:08:00.000000+00:00', '');
INSERT INTO public.scans VALUES (15, 'pack-W001', '06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c', 'table', 'main', 'W001', false, true, true, '7dc79fe9c680c7e0', '2b58f557263d2d68', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "cfa08d32267778f7", "order_number": "B-01", "line": "7dc79fe9c680c7e0", "line_state": "packed", "order_state": "picking", "parcel": "2b58f557263d2d68", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:11:00.000000+00:00', '["on_item", ["9097ec4f06fdb92b", "stored"], ["7dc79fe9c680c7e0", "packed", "2b58f557263d2d68", []], ["2b58f557263d2d68", "2026-03-02T14:05:00+00:00"]]');
INSERT INTO public.scans VALUES (16, 'pack-W002', '1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57', 'table', 'main', 'W002', false, true, true, '5cfea862002776cd', '2b58f557263d2d68', '{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "cfa08d32267778f7", "order_number": "B-01", "line": "5cfea862002776cd", "line_state": "released", "order_state": "released", "parcel": "2b58f557263d2d68", "parcel_state": "closed", "released": ["W001", "W002"]}', 'picked', '2026-03-02T14:14:00.000000+00:00', '["due", ["ccb09d240ce5b68b", "shipped"], ["5cfea862002776cd", "released", "2b58f557263d2d68", []], null]');
INSERT INTO public.scans VALUES (17, 'back-W001', '5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591', 'tray', '', 'W001', false, true, true, '7dc79fe9c680c7e0', NULL, '{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "cfa08d32267778f7", "order_number": "B-01", "line": "7dc79fe9c680c7e0", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T14:17:00.000000+00:00', '["tray", ["9097ec4f06fdb92b", "shipped"], ["7dc79fe9c680c7e0", "released", "2b58f557263d2d68", []], null]');
INSERT INTO public.scans VALUES (18, 'pack-W007', '3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b', 'table', 'main', 'W007', false, true, true, 'de96111a6a6af3ad', '0c6244d728c9110d', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ad3f9960cd83ba28", "order_number": "B-23", "line": "de96111a6a6af3ad", "line_state": "packed", "order_state": "waiting", "parcel": "0c6244d728c9110d", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:30:00.000000+00:00', '["on_item", ["0566ccabbf001244", "stored"], ["de96111a6a6af3ad", "packed", "0c6244d728c9110d", []], ["0c6244d728c9110d", "2026-03-02T14:27:00+00:00"]]');
INSERT INTO public.scans VALUES (19, 'pack-S004', 'b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0', 'table', 'main', 'S004', false, true, true, '171671a38dd06da8', 'bf8914ca67188b40', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "5133139c96ca05cd", "order_number": "B-04", "line": "171671a38dd06da8", "line_state": "packed", "order_state": "picking", "parcel": "bf8914ca67188b40", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T14:51:00.000000+00:00', '["on_item", ["a170aca09d416cba", "stored"], ["171671a38dd06da8", "packed", "bf8914ca67188b40", []], ["bf8914ca67188b40", "2026-03-02T14:48:00+00:00"]]');
INSERT INTO public.scans VALUES (20, 'pack-L006', '9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a', 'table', 'second', 'L006', false, true, true, '8995eff93d6f0331', '5c0384f43cc9b691', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "10555a46e2c4cde9", "order_number": "B-09", "line": "8995eff93d6f0331", "line_state": "packed", "order_state": "picking", "parcel": "5c0384f43cc9b691", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:00:00.000000+00:00', '["on_item", ["25dc274158724874", "stored"], ["8995eff93d6f0331", "packed", "5c0384f43cc9b691", []], ["5c0384f43cc9b691", "2026-03-02T14:57:00+00:00"]]');
INSERT INTO public.scans VALUES (21, 'pack-S002', '2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce', 'table', 'main', 'S002', false, true, true, '0e17aeb01f94aefd', 'dae3cf876e43c8fc', '{"verdict": "accepted", "reason": null, "advice": "Packed. Still to pack: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "a6556ff3fb0178be", "order_number": "B-03", "line": "0e17aeb01f94aefd", "line_state": "packed", "order_state": "picking", "parcel": "dae3cf876e43c8fc", "parcel_state": "open", "released": []}', 'picked', '2026-03-02T15:09:00.000000+00:00', '["on_item", ["cf4643fb6850701b", "stored"], ["0e17aeb01f94aefd", "packed", "dae3cf876e43c8fc", []], ["dae3cf876e43c8fc", "2026-03-02T15:06:00+00:00"]]');
INSERT INTO public.scans VALUES (22, 'pick-L002', 'd9e1f8a228c9319efcbd0005ffada081ebc29e3a3385ff61258143fa99f61c8f', 'bin', '6c8fdec6f7a34267', 'L002', false, true, true, '68b99488efa9597a', NULL, '{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "e497f7e7fea69239", "order_number": "B-05", "line": "68b99488efa9597a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}', 'waiting', '2026-03-02T15:18:00.000000+00:00', '["on_item", ["d082f8d8c85323a0", "stored"], ["68b99488efa9597a", "picked", null, []], null]');
INSERT INTO public.scans VALUES (23, 'bad-D0146', '7773f60a65c6e54d9d5313d0f812ef88333095bb32b52a62d6686f31996502ea', 'bin', '6c8fdec6f7a34267', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type the small text at the bars: it has one digit more than the big number.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:24:00.000000+00:00', '');
INSERT INTO public.scans VALUES (24, 'bad-hello', 'eae769edaf36a39252427a6dbf7edd552548c7b7df4ef9b3c6ecaf4081df7376', 'bin', '6c8fdec6f7a34267', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:27:00.000000+00:00', '');
INSERT INTO public.scans VALUES (25, 'bad-', 'deda0bc171075d387965b22ff5e3c953552e21691dcd8b3853f7b1941d2a71e0', 'bin', '6c8fdec6f7a34267', NULL, false, false, false, NULL, NULL, '{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}', '', '2026-03-02T15:30:00.000000+00:00', '');
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
INSERT INTO public.slots VALUES (4, 'D004', 'D', 4, 'A-1-1', 1, 'on_item', 'bin', '', false, '2026-03-02T13:20:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (51, 'L006', 'L', 6, 'C-1-1', 1, 'on_item', 'table', 'second', true, '2026-03-02T15:00:00.000000+00:00', '5c0384f43cc9b691', 'bin', 'C-1-1', 'b28bedeba796fdc0', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (61, 'W001', 'W', 1, 'D-1-1', 2, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (35, 'S005', 'S', 5, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:38:00.000000+00:00', NULL, 'bin', 'B-1-1', 'b28bedeba796fdc0', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (41, 'S011', 'S', 11, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:00:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (56, 'L011', 'L', 11, 'C-1-2', 1, 'on_item', 'bin', 'C-1-2', true, '2026-03-02T13:44:00.000000+00:00', NULL, 'bin', 'C-1-2', 'b28bedeba796fdc0', 4, NULL, NULL, false);
INSERT INTO public.slots VALUES (37, 'S007', 'S', 7, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:50:00.000000+00:00', NULL, 'bin', 'B-1-1', 'b28bedeba796fdc0', 6, NULL, NULL, false);
INSERT INTO public.slots VALUES (32, 'S002', 'S', 2, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T15:09:00.000000+00:00', 'dae3cf876e43c8fc', 'bin', 'B-1-1', 'b28bedeba796fdc0', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (36, 'S006', 'S', 6, 'B-1-1', 1, 'on_item', 'bin', 'B-1-1', true, '2026-03-02T13:47:00.000000+00:00', NULL, 'bin', 'B-1-1', 'b28bedeba796fdc0', 5, NULL, NULL, false);
INSERT INTO public.slots VALUES (68, 'W008', 'W', 8, 'D-1-1', 1, 'on_item', 'bin', 'D-1-1', true, '2026-03-02T13:56:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (46, 'L001', 'L', 1, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (62, 'W002', 'W', 2, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:14:00.000000+00:00', '2b58f557263d2d68', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (67, 'W007', 'W', 7, 'D-1-1', 1, 'due', 'table', 'main', true, '2026-03-02T14:30:00.000000+00:00', '0c6244d728c9110d', NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (34, 'S004', 'S', 4, 'B-1-1', 1, 'on_item', 'table', 'main', true, '2026-03-02T14:51:00.000000+00:00', 'bf8914ca67188b40', 'bin', 'B-1-1', 'b28bedeba796fdc0', 3, NULL, NULL, false);
INSERT INTO public.slots VALUES (47, 'L002', 'L', 2, 'C-1-1', 1, 'on_item', 'bin', 'C-1-1', true, '2026-03-02T15:18:00.000000+00:00', NULL, 'bin', 'C-1-1', '6c8fdec6f7a34267', 1, NULL, NULL, false);
INSERT INTO public.slots VALUES (75, 'W015', 'W', 15, 'D-1-2', 0, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (31, 'S001', 'S', 1, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:52:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (33, 'S003', 'S', 3, 'B-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:52:00.000000+00:00', NULL, 'bin', 'B-1-1', 'b28bedeba796fdc0', 2, NULL, NULL, false);
INSERT INTO public.slots VALUES (48, 'L003', 'L', 3, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:28:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (10, 'D010', 'D', 10, 'A-1-1', 1, 'on_item', 'shelf', 'B-1-1', false, '2026-03-02T15:52:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (43, 'S013', 'S', 13, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', false, '2026-03-02T16:00:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (42, 'S012', 'S', 12, 'B-1-2', 1, 'on_item', 'shelf', 'B-1-2', true, '2026-03-02T16:06:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (38, 'S008', 'S', 8, 'B-1-1', 1, 'on_item', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (49, 'L004', 'L', 4, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:28:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (50, 'L005', 'L', 5, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:28:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (52, 'L007', 'L', 7, 'C-1-1', 1, 'on_item', 'shelf', 'C-1-1', false, '2026-03-02T16:28:00.000000+00:00', NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (53, 'L008', 'L', 8, 'C-1-1', 1, 'lost', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.slots VALUES (54, 'L009', 'L', 9, 'C-1-1', 1, 'due', NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, NULL, false);
INSERT INTO public.stays VALUES (1, '048bd6622af335cf', '7aaa1cf1bec9603e', 'D001', 1, '2026-03-02T08:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (2, 'fe92c52cd90be850', '95abd2ef7f76e211', 'D002', 1, '2026-03-02T08:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (3, 'cd032381defe0320', 'c7f07acd9537589c', 'D003', 1, '2026-03-02T08:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (4, 'd439545cf255d3ae', '599806f47904a9cb', 'D004', 1, '2026-03-02T08:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (5, 'f5bdb26cbf14e408', 'a1fb79640513f0a1', 'D005', 1, '2026-03-02T08:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (6, '15a369a9a7686d4c', '64ad0d56e1be3627', 'D006', 1, '2026-03-02T08:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (7, 'c9587e3bb3af0630', '9d6ca214ce593ff3', 'D007', 1, '2026-03-02T08:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (9, '9a3276a69278cb7d', '707cad7c535456d7', 'D009', 1, '2026-03-02T08:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (10, '0154b1cadd159275', '37b448822e1fd83f', 'D010', 1, '2026-03-02T09:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (11, '78fb3d64eeef6356', '39f4994a6d8f2f4f', 'D011', 1, '2026-03-02T09:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (12, '887b5a990ea0fa35', '3fed563e0f4fa15a', 'D012', 1, '2026-03-02T09:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (13, '7f10803ae0dfaf97', '46378519645cf117', 'S001', 1, '2026-03-02T09:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (14, 'cf4643fb6850701b', '63511117c0de3a66', 'S002', 1, '2026-03-02T09:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (15, '6b239d24d105d6e3', 'a328220e25b63625', 'S003', 1, '2026-03-02T09:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (16, 'a170aca09d416cba', '520fe663f6a308ae', 'S004', 1, '2026-03-02T09:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (17, 'b6471efd95263703', 'e1751be58c1b01d8', 'S005', 1, '2026-03-02T09:23:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (18, '2d5062a278c3047b', '594f313c8f8b36ad', 'S006', 1, '2026-03-02T09:26:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (19, 'eaefa514d555e25d', '1e77b3b53f83ca1d', 'S007', 1, '2026-03-02T09:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (20, '49c7a22c59a9be4c', 'a011941fc31dd761', 'S008', 1, '2026-03-02T09:32:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (23, 'ce743d726ee07f74', '7ec7491e45332b6a', 'S011', 1, '2026-03-02T09:41:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (24, 'dd4c6c60053f4db4', '9732e8f07c48f736', 'S012', 1, '2026-03-02T09:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (25, '159e5716a9f4637a', 'b871ab10b88e99f6', 'L001', 1, '2026-03-02T09:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (26, 'd082f8d8c85323a0', 'aab77346772adf3b', 'L002', 1, '2026-03-02T09:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (27, 'ab14bbeeb77e4755', '81fa2083b844f48f', 'L003', 1, '2026-03-02T09:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (28, '6b3173ff9b03e1d8', '830b84ca726d6770', 'L004', 1, '2026-03-02T09:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (29, 'b214784d4dd8d5b4', '4e1c41328817789f', 'L005', 1, '2026-03-02T09:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (30, '25dc274158724874', '550e83d672bd99ad', 'L006', 1, '2026-03-02T10:02:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (31, 'fa4dbd41dd910bd5', 'ecb60e326ae9a71e', 'L007', 1, '2026-03-02T10:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (32, 'e9144cec55cab01c', 'b4cb1d1e7d354350', 'L008', 1, '2026-03-02T10:08:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (34, 'ec6e44b65b017d0a', 'f24da5a5a4c0ff9e', 'L010', 1, '2026-03-02T10:14:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (35, 'a6d4d6a798925274', 'ed6ea546a48c7ab7', 'L011', 1, '2026-03-02T10:17:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (36, 'f1a37f7b1130033a', '7a1c89f35f44ac3c', 'L012', 1, '2026-03-02T10:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (39, '12421d605378d0eb', '9094f0ace6e8c763', 'W003', 1, '2026-03-02T10:29:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (41, 'a9e1f445f18dea70', '3b33d0bf05d1e79a', 'W005', 1, '2026-03-02T10:35:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (42, '2396ea0f18ff63f4', '0031108b39038891', 'W006', 1, '2026-03-02T10:38:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (44, '0b90964cae846864', 'e3740345b0a69b94', 'W008', 1, '2026-03-02T10:44:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (45, 'f75a4abd58f0bb17', '5829170914a9e542', 'W009', 1, '2026-03-02T10:47:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (46, 'bf1b16a6754fd9ed', '9d69ad8079a926e5', 'W010', 1, '2026-03-02T10:50:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (47, 'ce9549e8049cc51d', 'ed5bbe863828b1e5', 'W011', 1, '2026-03-02T10:53:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (48, 'baa716f9393af4da', '0eb637fcf029378a', 'W012', 1, '2026-03-02T10:56:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (49, '2e170a6c20873a5d', '741896f70854a178', 'D013', 1, '2026-03-02T10:59:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (22, '93c1483620d0b549', 'ef94cda20a288cd5', 'S010', 1, '2026-03-02T09:38:00.000000+00:00', 'withdrawn', '2026-03-02T11:05:00.000000+00:00', 'Cracked on inspection', NULL, '', false);
INSERT INTO public.stays VALUES (40, '3d67cf3c0fd55359', 'd0a3013a23bd0e68', 'W004', 1, '2026-03-02T10:32:00.000000+00:00', 'withdrawn', '2026-03-02T11:08:00.000000+00:00', 'Bent beyond use', NULL, '', false);
INSERT INTO public.stays VALUES (21, 'b49a999b212ba5d7', '8392883c0e62708c', 'S009', 1, '2026-03-02T09:35:00.000000+00:00', 'moved', '2026-03-02T11:11:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (50, 'e4fd9e160a774ffc', '8392883c0e62708c', 'S013', 1, '2026-03-02T11:11:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (51, '093b9d55208c2b2f', 'f8333bf8f251adc4', 'L013', 1, '2026-01-10T00:00:00.000000+00:00', 'stored', NULL, '', '763a0defeec6052b8890f7e34c9b11f3731e41a29ed7a32d3f25763c75aaa985', 'f04ead481b9095efc867595396f8ceb19ab0c91a5e2fdab52139e3759b29ee42', false);
INSERT INTO public.stays VALUES (52, '489edbc27415005b', '22c2b60439123548', 'L014', 1, '2026-03-02T11:23:00.000000+00:00', 'stored', NULL, '', '763a0defeec6052b8890f7e34c9b11f3731e41a29ed7a32d3f25763c75aaa985', '648387a0ccc66f629338dacced389004c22b01733b3d63ea713e8233061487ff', true);
INSERT INTO public.stays VALUES (8, 'cf71dbf05be35f4b', '82d8030973b43c93', 'D008', 1, '2026-03-02T08:56:00.000000+00:00', 'moved', '2026-03-02T13:05:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (53, '88fd78009de6d260', '82d8030973b43c93', 'D020', 1, '2026-03-02T13:05:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (37, '9097ec4f06fdb92b', '60d560ea05c43f8b', 'W001', 1, '2026-03-02T10:23:00.000000+00:00', 'shipped', '2026-03-02T14:14:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (38, 'ccb09d240ce5b68b', 'd6c984b8b42f3ce3', 'W002', 1, '2026-03-02T10:26:00.000000+00:00', 'shipped', '2026-03-02T14:14:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (54, '60798f72871aab8d', 'd2eb89fc8da2c001', 'W001', 2, '2026-03-02T14:20:00.000000+00:00', 'stored', NULL, '', NULL, '', false);
INSERT INTO public.stays VALUES (43, '0566ccabbf001244', '1c5d3e00d6ec5c0c', 'W007', 1, '2026-03-02T10:41:00.000000+00:00', 'shipped', '2026-03-02T14:39:00.000000+00:00', '', NULL, '', false);
INSERT INTO public.stays VALUES (33, '04d29d8188e4794c', '110214768bf3e512', 'L009', 1, '2026-03-02T10:11:00.000000+00:00', 'withdrawn', '2026-03-02T16:34:00.000000+00:00', 'Nowhere to be found', NULL, '', false);
INSERT INTO public.stocktakes VALUES (1, '3e1264f9828d07d0', 'section:S', 'Spring', '2026-03-02T15:45:00.000000+00:00', 162, 'closed', '2026-03-02T16:18:00.000000+00:00', '{"stocktake": "3e1264f9828d07d0", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:45:00+00:00", "closed": "2026-03-02T16:18:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "boss", "at": "2026-03-02T16:06:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "boss", "at": "2026-03-02T16:09:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}', NULL);
INSERT INTO public.stocktakes VALUES (2, '24feb0f89da5ce29', 'section:L', 'Spring', '2026-03-02T16:21:00.000000+00:00', 172, 'open', NULL, '', NULL);
INSERT INTO public.stocktakes VALUES (3, 'a4e32280508940c9', 'section:D', '', '2026-03-02T16:37:00.000000+00:00', 179, 'open', NULL, '', '{"chosen": "blind", "of": 3, "bins": ["A-1-3"]}');
INSERT INTO public.stocktakes VALUES (4, 'fef15a82c23ac30d', 'tray', 'Too late today', '2026-03-02T16:40:00.000000+00:00', 180, 'cancelled', '2026-03-02T16:43:00.000000+00:00', '', NULL);
INSERT INTO public.stops VALUES (1, 'b28bedeba796fdc0', 1, '0e17aeb01f94aefd', 'B-1-1');
INSERT INTO public.stops VALUES (2, 'b28bedeba796fdc0', 2, '7aa7484e2bf3af58', 'B-1-1');
INSERT INTO public.stops VALUES (3, 'b28bedeba796fdc0', 3, '171671a38dd06da8', 'B-1-1');
INSERT INTO public.stops VALUES (4, 'b28bedeba796fdc0', 4, 'b89ddc82c83f8279', 'B-1-1');
INSERT INTO public.stops VALUES (5, 'b28bedeba796fdc0', 5, '4985b2549b316ebf', 'B-1-1');
INSERT INTO public.stops VALUES (6, 'b28bedeba796fdc0', 6, 'd7c25305360295df', 'B-1-1');
INSERT INTO public.stops VALUES (7, 'b28bedeba796fdc0', 7, '7dc79fe9c680c7e0', 'D-1-1');
INSERT INTO public.stops VALUES (8, 'b28bedeba796fdc0', 8, '5cfea862002776cd', 'D-1-1');
INSERT INTO public.stops VALUES (9, 'b28bedeba796fdc0', 9, 'de96111a6a6af3ad', 'D-1-1');
INSERT INTO public.stops VALUES (10, 'b28bedeba796fdc0', 10, '64d3649d8027dd84', 'D-1-1');
INSERT INTO public.stops VALUES (11, 'b28bedeba796fdc0', 11, '8995eff93d6f0331', 'C-1-1');
INSERT INTO public.stops VALUES (12, 'b28bedeba796fdc0', 12, '73dad5e2b978d748', 'C-1-2');
INSERT INTO public.stops VALUES (13, '6c8fdec6f7a34267', 1, '3910d3ece2c1b6f8', 'A-1-2');
INSERT INTO public.stops VALUES (14, '6c8fdec6f7a34267', 2, '68b99488efa9597a', 'C-1-1');
INSERT INTO public.stops VALUES (15, '6c8fdec6f7a34267', 3, '404cb65c714ea04b', 'C-1-1');
INSERT INTO public.stops VALUES (16, '6c8fdec6f7a34267', 4, '6932620ccf87d145', 'C-1-1');
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
