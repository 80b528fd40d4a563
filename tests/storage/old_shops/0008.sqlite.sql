BEGIN TRANSACTION;
CREATE TABLE access (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	name VARCHAR(200) NOT NULL, 
	role VARCHAR(16) NOT NULL, 
	kind VARCHAR(16) NOT NULL, 
	made VARCHAR(32) NOT NULL, 
	expires VARCHAR(32), 
	CONSTRAINT pk_access PRIMARY KEY (n), 
	CONSTRAINT uq_access_hash UNIQUE (hash)
);
INSERT INTO "access" VALUES(1,'af23e61b7477d4880445a35cef70a161dedb2b7ebc5fc846f454ad2baa1792c8','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$AEFYCMjfRYjGJmSLYQr8vg$O38OrLMyvgDNVid5hTQ4WP4vegU78WzaaKUPSQTkdIk','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'d1882bb8ac60cd5dde0bc071b4569fc43139b6b3922cca9256ef58932a77a464','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'18fba69541bb0f49d4868c1d4400b8b1717f156859f48b04fdfe42fefef61c4b','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'9035d41f4fe44b3c209008eb2a352f585c751f6eac5a444b1939ef571d9d3cff','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'ed144b61276bc70c2b64ff5335ffdca63e92f47246006cfe1187caa9c11a086c','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0008');
CREATE TABLE "aliases" (
	n INTEGER NOT NULL, 
	text VARCHAR(64) NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	printed VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_aliases PRIMARY KEY (n), 
	CONSTRAINT uq_aliases_text UNIQUE (text), 
	CONSTRAINT fk_aliases_code FOREIGN KEY(code) REFERENCES slots (code)
);
INSERT INTO "aliases" VALUES(1,'AB0123','D011','AB-0123');
INSERT INTO "aliases" VALUES(2,'AB77X','S011','ab-77-x');
INSERT INTO "aliases" VALUES(3,'BOX9','L010','BOX 9');
CREATE TABLE answers (
	n INTEGER NOT NULL, 
	"key" VARCHAR(255) NOT NULL, 
	body VARCHAR(64) NOT NULL, 
	status INTEGER NOT NULL, 
	location TEXT NOT NULL, 
	answer TEXT NOT NULL, 
	CONSTRAINT pk_answers PRIMARY KEY (n), 
	CONSTRAINT uq_answers_key UNIQUE ("key")
);
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/aa6b1edaf59589ad','{"id": "aa6b1edaf59589ad", "item": "1184406a6cd29d04", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
CREATE TABLE bins (
	n INTEGER NOT NULL, 
	name VARCHAR(64) NOT NULL, 
	rack VARCHAR(64) NOT NULL, 
	tier INTEGER NOT NULL, 
	position INTEGER NOT NULL, 
	section VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_bins PRIMARY KEY (n), 
	CONSTRAINT fk_bins_rack FOREIGN KEY(rack) REFERENCES racks (name), 
	CONSTRAINT fk_bins_section FOREIGN KEY(section) REFERENCES sections (code), 
	CONSTRAINT uq_bins_name UNIQUE (name)
);
INSERT INTO "bins" VALUES(1,'A-1-1','A',1,1,'D');
INSERT INTO "bins" VALUES(2,'A-1-2','A',1,2,'D');
INSERT INTO "bins" VALUES(3,'A-1-3','A',1,3,'D');
INSERT INTO "bins" VALUES(4,'B-1-1','B',1,1,'S');
INSERT INTO "bins" VALUES(5,'B-1-2','B',1,2,'S');
INSERT INTO "bins" VALUES(6,'C-1-1','C',1,1,'L');
INSERT INTO "bins" VALUES(7,'C-1-2','C',1,2,'L');
INSERT INTO "bins" VALUES(8,'D-1-1','D',1,1,'W');
INSERT INTO "bins" VALUES(9,'D-1-2','D',1,2,'W');
CREATE TABLE doubts (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	item VARCHAR(64) NOT NULL, 
	kind VARCHAR(24) NOT NULL, 
	words TEXT NOT NULL, 
	since VARCHAR(32) NOT NULL, 
	"by" TEXT NOT NULL, 
	photo VARCHAR(64), 
	how VARCHAR(24), 
	note TEXT NOT NULL, 
	ended VARCHAR(32), 
	CONSTRAINT pk_doubts PRIMARY KEY (n), 
	CONSTRAINT fk_doubts_item FOREIGN KEY(item) REFERENCES items (id), 
	CONSTRAINT uq_doubts_id UNIQUE (id)
);
INSERT INTO "doubts" VALUES(1,'833ce935892bf8ed','7806c5d39ce0d24b','not_this','Another lamp, by the photo','2026-03-02T12:48:00.000000+00:00','owner',NULL,NULL,'',NULL);
INSERT INTO "doubts" VALUES(2,'3e054cbfe75a53d8','6712a6b1ad3528d6','missing','Not in its bin','2026-03-02T15:13:00.000000+00:00','owner',NULL,NULL,'',NULL);
INSERT INTO "doubts" VALUES(3,'8491a237315f9a71','58ccd86c0a67fe73','not_this','Another thing hangs on its card in B-1-1, a count says.','2026-03-02T15:46:00.000000+00:00','owner','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941',NULL,'',NULL);
INSERT INTO "doubts" VALUES(4,'d713ae0571925b22','155a1c770078f941','missing','a count of section:S did not find it','2026-03-02T16:12:00.000000+00:00','owner',NULL,NULL,'',NULL);
INSERT INTO "doubts" VALUES(5,'efd90d70c0aaf32a','554cd9f72e2dc6c3','missing','a count did not find it','2026-03-02T16:25:00.000000+00:00','owner',NULL,NULL,'',NULL);
CREATE TABLE head (
	one INTEGER NOT NULL, 
	seq INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	settings TEXT NOT NULL, 
	CONSTRAINT pk_head PRIMARY KEY (one)
);
INSERT INTO "head" VALUES(1,176,'3fa6160b8fd5edf37fbf744cfbc45a19404854d0617dedea3f0f1272eb9ca7ca','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false, "hand_overs": false, "gone_days": 3, "slip_closes": false}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'8d5e04077a3d2491','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'d3daeaa13ceae315','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'825ca850bd15294f','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'f6dfda11cfd00fce','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'3296f1bd2349c307','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'da13c8d4d034e714','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'45fb008ef93d5c11','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'efa71be2bea98ac0','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'9f812d5d5b71d91f','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'019faf03363a8755','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'6ceb41a9f191411e','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'66aeaf9544a4df61','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'58ccd86c0a67fe73','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'52a99e7f9c38caf4','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'b3ce48cd8ef0f106','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'002a0ee9b5c295a7','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'08ce623a60e25c80','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'8071b61dc5845833','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'da7e0bd42fd8722a','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'155a1c770078f941','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'de94b42a305e9b87','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'7a2fe757f0744b0d','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'9bb7cd9bae657121','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'8294e193c8528638','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'e451a1bdce83a956','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'c3439a3eac47ef0b','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'1d43b1281013dbbe','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'6712a6b1ad3528d6','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'fb0f1ab5ac9862c0','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'9f214b3885b1df0e','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'7806c5d39ce0d24b','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'554cd9f72e2dc6c3','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'e164140f43b4fbca','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'8f908eca0f96a94f','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'50c362e5f183e2a2','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'c57c296441ee7f1e','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'8ece7871818a0fa8','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'27a7c7334bf6724b','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'7faa1acc2e349fed','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'7ea4acdd5f6934bc','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'0d2e7cdb6756342f','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'95a7f18094bb03bf','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'870d8cef8c5833e7','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'c86b5a8f2bbf42d7','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'9ff6f3d1a678f94a','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'bd160771b59e9d1c','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'29eb0b41d65393fb','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'520cf80deb070e90','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'1184406a6cd29d04','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'0ed9c4138d57b687','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','8c68207009239465','2557');
CREATE TABLE learned (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	listing TEXT NOT NULL, 
	item VARCHAR(64) NOT NULL, 
	line VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_learned PRIMARY KEY (n), 
	CONSTRAINT fk_learned_item FOREIGN KEY(item) REFERENCES items (id), 
	CONSTRAINT fk_learned_line FOREIGN KEY(line) REFERENCES lines (id), 
	CONSTRAINT uq_learned_id UNIQUE (id)
);
CREATE TABLE ledger (
	seq INTEGER NOT NULL, 
	at VARCHAR(32) NOT NULL, 
	kind VARCHAR(64) NOT NULL, 
	actor TEXT NOT NULL, 
	data TEXT NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_ledger PRIMARY KEY (seq)
);
INSERT INTO "ledger" VALUES(1,'2026-03-02T08:01:00.000000+00:00','token made','owner','{"name":"owner","role":"owner"}','303d6ed4c179ff439f0e1362aa484b09de102c70718f948c6578c81714652d93');
INSERT INTO "ledger" VALUES(2,'2026-03-02T08:05:00.000000+00:00','token made','label printer','{"name":"label printer","role":"program"}','924b363cda175a7d0981ff70c09dd7c06567e19ac0819082a6defc59a7448314');
INSERT INTO "ledger" VALUES(3,'2026-03-02T08:06:00.000000+00:00','token made','helper','{"name":"helper","role":"helper"}','7c4873bbfc3f3ec5e4f939564b38926f1b42b12e617293bf6c319d44c96bba8c');
INSERT INTO "ledger" VALUES(4,'2026-03-02T08:08:00.000000+00:00','device paired','Blue phone','{"name":"Blue phone"}','a979d56c2e153ecf5a41f3ccfb89e09cb4b03dd9abcbbb4c87b48ff8ae98e700');
INSERT INTO "ledger" VALUES(5,'2026-03-02T08:11:00.000000+00:00','section added','owner','{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}','f4ff4241795b9dbda4d4ed2936eb963650aca40d6c6d73e179b299179bbd579d');
INSERT INTO "ledger" VALUES(6,'2026-03-02T08:14:00.000000+00:00','slots added','owner','{"first":"D001","last":"D030","section":"D"}','e92b9c227f0c0c950fb96d4a1bef13ab25e625b08cbdb481c2e04faeccae1382');
INSERT INTO "ledger" VALUES(7,'2026-03-02T08:17:00.000000+00:00','section added','owner','{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}','ff391e849cbc99031ded4a09195766138b1003e92e2d7082d2517b3efff6d1ab');
INSERT INTO "ledger" VALUES(8,'2026-03-02T08:20:00.000000+00:00','slots added','owner','{"first":"S001","last":"S015","section":"S"}','3e84cb7256881b09868f96b6d6a84a9e8d7c26baf5125caed2ae6ab527c56157');
INSERT INTO "ledger" VALUES(9,'2026-03-02T08:23:00.000000+00:00','section added','owner','{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}','392dafc04949845f5acbf0143db9abf66e6449e2210e7d993b27f8c2820eaeec');
INSERT INTO "ledger" VALUES(10,'2026-03-02T08:26:00.000000+00:00','slots added','owner','{"first":"L001","last":"L015","section":"L"}','4d6eb8b5317a9f186798c3258bfad77967207bac8b25e4b23f1dc4f0e273991a');
INSERT INTO "ledger" VALUES(11,'2026-03-02T08:29:00.000000+00:00','section added','owner','{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}','a13c9bbe4673f6c9c97b723e159bb03919b08e1b5f149ad49d062e833da3b00b');
INSERT INTO "ledger" VALUES(12,'2026-03-02T08:32:00.000000+00:00','slots added','owner','{"first":"W001","last":"W015","section":"W"}','f80283c1b63987c4d42c670c605962947ee251550bd969f03a2d76dc24cd2cfd');
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"bad1f21255171ada","title":"Rear derailleur 1","turn":1}','3c629f7ef99434b0387b4474b1b1ff0772b59db54e3fb1f44e8d6d697039f4b7');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"3b0984f36b983e9d","title":"Rear derailleur 2","turn":1}','b6397efa853ff98b500888580d5e32755a4829f2752026430e36ecaa6959e8bd');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"a79d76583b073fd2","title":"Rear derailleur 3","turn":1}','e06098db36d3cbb9836152e2af82cd9a77194f4714117fad5b9900a7e1eeb17a');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"ab989f07a58ad369","title":"Rear derailleur 4","turn":1}','83a024fd1e621274d3199ab0bf60246db13c3b1681cc75ec818106a3c7bfac5b');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"1a625b884e17bc1a","title":"Rear derailleur 5","turn":1}','e6fab9d741e14a296e8ca5211e47663f5c2d3c4f35d90be6537b4806c268bab0');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"037b7a08e28bf633","title":"Rear derailleur 6","turn":1}','adbc494a30e3ce7425f90ba82327cfb3d47cdcefa6e1369527d3d8bf01142223');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"dcb28540e8534ced","title":"Rear derailleur 7","turn":1}','68b6438be1130ff214b3bbfa2625cae20c03e4394a658d88f2e5ed4c13e1a49d');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"362ed1a3f9e74380","title":"Rear derailleur 8","turn":1}','14bdd0baa426e5694c5052e8ad910b4cb4b0458f60e6ba70b5b6e516fc5f2080');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"8765fadb5d3940c0","title":"Rear derailleur 9","turn":1}','2431e61fa38f7b036291231f0c4179573ebd2ed8e8e65af4e49552fe8ae6dd72');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"455143624ba5d82f","title":"Rear derailleur 10","turn":1}','fad37f9b19aa5947b7753cd93b9c631bc8c306811f81633217a65580c27230ae');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"55d3d35892d831f4","title":"Rear derailleur 11","turn":1}','e7456c9613a1ac7c97fdc39f930c7ad070fd202670f35538d399814124f35121');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"cacfd3708ea52c5c","title":"Rear derailleur 12","turn":1}','cf2638239711044b4362a8c4846d80411c9145e354062fbd761c4c53bf5fabe6');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"c09683c1a625989a","title":"Leather saddle 1","turn":1}','6ec35e9bd912b4bace53f0f1906b8f9ba3fb4d9bbfba7f5879e4dcb37fc9e625');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"823e3359c55ea8f2","title":"Leather saddle 2","turn":1}','f46566586f250f77698ea3344ab5324bd831407f2535bb8970b4766308811876');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"efb5bf294eb3285a","title":"Leather saddle 3","turn":1}','801bb1a6794b15fb861c7610f72191578af71768a401b4f6b8dcc74ba5e8f953');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"8fe096d7c294d931","title":"Leather saddle 4","turn":1}','f97d8fd2ef7e67ab98f57de0ee5cba434097aa0eb225ca93c5566b4c726b1bf7');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"6e7e1dc01869a781","title":"Leather saddle 5","turn":1}','6e274eb4728047ce569ef830a53762e03bbfed6d300c65eb5b0498edfdcc0cc9');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"a47225471e5d6e2d","title":"Leather saddle 6","turn":1}','3bb2c08794edc0eedd6c71e68babd413a6543e4c906b117cceea6787008649c0');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"009b812f19342470","title":"Leather saddle 7","turn":1}','200dcc47649e21a761dead8d1a3bd6a769b94c522c8c8191cb0b79e0dc618f5f');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"ef5738c06e1f1635","title":"Leather saddle 8","turn":1}','3b3579d0f265f45d7b9b33b7275718cfcade9e0453de8ea491c967e5849cf448');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"8056c4a0a2e66eb5","title":"Leather saddle 9","turn":1}','e0156ce1fa2dd7fd2221e996790688b93187f78f3f65c5e0134c3c5d28d917d1');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"5ff0a5cce4f1c4c7","title":"Leather saddle 10","turn":1}','c0401c6a22e527a6e72198e6b9b9d735b429458ece0d126f9608c2cc9e1c3b9e');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"20574c0675287108","title":"Leather saddle 11","turn":1}','bc740709e3d578442f2c2d5c38f6adf58c78a9a38e0f52d3e9c4e6bfc90e0547');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"504e57fb195bc132","title":"Leather saddle 12","turn":1}','aee609db09a8112e4ab7f3c9662b39bb8347c00087c8dbb695a3fc6632e0a496');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"539e3255bd6aca03","title":"Dynamo lamp 1","turn":1}','4c6827697612b82ef60d392dc727fbed06a5d0b2ff69babbd59f89cd3173320f');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"91f5157057ee6324","title":"Dynamo lamp 2","turn":1}','b9fdbdc19ac093b74d8d20fcf387b52dfde8d84b55fd473132adc9d9960ef4fd');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"45653bbf3065ef80","title":"Dynamo lamp 3","turn":1}','f16fc8e9a62ceb5649548a2354d8d5481c3c226fbcc30395fd350cbbd327a7a7');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"9a0d14e07d21de5b","title":"Dynamo lamp 4","turn":1}','3307867427a443c9792acf6a529d217b28ed2453f912bc8b4c5c55bee5dda21c');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"8ee7f4a376721f6c","title":"Dynamo lamp 5","turn":1}','db11ab7117db8fce83b2682cb48c4252f16149b8ab91a7cab77b38774d1a6bb1');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"03a53ba4df41cab1","title":"Dynamo lamp 6","turn":1}','e19867d2e3392085795f7a3d550000d3f39dc1bc7cffb1bc7a03611d99deb5d8');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"dc09fc39173a0222","title":"Dynamo lamp 7","turn":1}','334fe2a72fe6e01d09a53738e1055695461fe7cb124c211a27b2ebeddca89c31');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"f6cbf59f194a43d9","title":"Dynamo lamp 8","turn":1}','c4789f543e68c81972e6119477cd4136bb7adab3dd5ed848430ba094f61c3dc8');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"2774e4f2fb64ecda","title":"Dynamo lamp 9","turn":1}','dd8585d4a2b2384c0bc2474c07805d7871b155ce2dcbad1f41122127f380331e');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"2a330e8b4acfa662","title":"Dynamo lamp 10","turn":1}','436907f0c4ba3f54019c6dfe1c5060e5bf78385a2a704ed0aaaa11af3e095ad6');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"3fa0d3d9ad271eff","title":"Dynamo lamp 11","turn":1}','2293b1955139fa6ae1c2a1ce8fc30220a41f9c172180f9dc4056f39c54160e6e');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"c43654d033dd754f","title":"Dynamo lamp 12","turn":1}','7ac0d4d5cb447a91a5a9a5c3223d957cf5eab4df72abe69185f2722df06e5a99');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"d1031a7a67eb0a5e","title":"Front wheel 1","turn":1}','f8326f5878accc340d347587d357da3fd4979d3db7fbb11af2c124eda6fd93e0');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"e9cdfa9b3bffd9e3","title":"Front wheel 2","turn":1}','4dafdc8a0cd2cdcd1ee9e90f92102df2e492ca431f4a7a7837c400593e762cb1');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"d54772ff382f2fd5","title":"Front wheel 3","turn":1}','7e1d4740c181b1fd5a23224663d71131f81c3244e17e5f6ba4f36c8f6e5f9d06');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"95466e21e88ea89e","title":"Front wheel 4","turn":1}','469dbc79fc78fb1185ecd18ff6d18a3aaa424132508707cf2d7e35fc3d46d6f8');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"413462d9d25c421f","title":"Front wheel 5","turn":1}','d6abf5a7b90ec91a3b079dc88282675473f0eb267ca7b601ebb6cd9589f4414f');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"ff881e8e3beecfc8","title":"Front wheel 6","turn":1}','f1160d363674988ef638deef33a021e2a23666a77947d02c48ae5873af7d314f');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"be704f4a27bfb610","title":"Front wheel 7","turn":1}','7e8fa370b501cea8fe8bd2d5b3a8447a7f83f2e083f071d16ebff4ff377869c3');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"553ea3c7c6fccabf","title":"Front wheel 8","turn":1}','16f50535cebee4c051bf21a16f1af01611a4d8d0c244e29b763a5c1ad55fe603');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"18b25498c3c46c9c","title":"Front wheel 9","turn":1}','6cb9fac2c2b92ae9adf9ae2da886e0f83c135521238cffa955f33e1ae109b5fb');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"fd073626a4d24431","title":"Front wheel 10","turn":1}','ecabeb9f8ae79f3c2efe21d0aa78926123ad327bcd79dc87a448b2f24ac39ee5');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"60dd09d3b910485d","title":"Front wheel 11","turn":1}','3ef491c1171fe57ba19abe17eb7c3fefbfb2d99e6e0a65e0af978d696ee50292');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"02f75acc98fb783b","title":"Front wheel 12","turn":1}','f6b510b6fd3e0b4b00cb654a6b51e2b22ef04e0e4ec4e94973fd042bbee9e06f');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"aa6b1edaf59589ad","title":"Brass bell","turn":1}','145519311cb59378a0433c82d4f4c1e41dc1e39c64904adc7e5979d22d842e68');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"3b0984f36b983e9d"}','384af0eed10672c334b547a3152fa86ec8dc0bdb4a372ba38befd21eb8580a6d');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"5ff0a5cce4f1c4c7"}','d35e02141eb1af05c4ecb34077973173105bb3f0a87d33dfcace060841bd5344');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"95466e21e88ea89e"}','a360616c9daf860abd71a166ad5cb463d84d387bb5127aa816da9e5dc10eabeb');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"ebe31314b67272a8","stay":"8056c4a0a2e66eb5","to":"S013"}','f3045e9ed0d93f8fe3f2e029d9bc452968e4189ba41d5f9eb05d6e46a834f7bb');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"bad1f21255171ada"}','016ee998a2e81dbaa4b93343e26d0e330191f734f83f705188ff7cbf56a9e73f');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"c09683c1a625989a"}','488ea4a03631117c344665b58908335bb6009ab4fb61303dca64d4a028782a7d');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"gone_days":3,"hand_overs":false,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"slip_closes":false,"zone":"UTC"}','faff4f62354aa90607422b2a197f3d74765d32995e40e66fab73a95c5691ab55');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','e898ed2f79e38d106df2b62160c2780544d64b16c12a132efade565b87ead292');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB-0123"}','73eac1527b84ac1d58b7063e463917d4a3a9858b4f52aa89e7c5e7b85129c9ca');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"ab-77-x"}','fd6bd80fcdbbdbacf477ffc3a83139c50e7df74320f16c154bbebb51f00f9335');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX 9"}','4219326f57b532ec64e0ee65b11023c21ece3bbb4e093d55db62d2bccc3f8acb');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"11fd8b7ee2aa0517","reference":"W001-01E","stay":"d1031a7a67eb0a5e"},{"hold":null,"line":"ab8e5a5cb038d402","reference":"W002-016","stay":"e9cdfa9b3bffd9e3"}],"number":"B-01","order":"f0c8d38afac58ba0"}','a943d3d531a23b89d6a934db68f1748151fb5cd71dc2ab5c2ed2b1fab2be711a');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"a32c5c8525d9192e","reference":"S002-013","stay":"823e3359c55ea8f2"},{"hold":null,"line":"aaf1cec3fdc6e1a9","reference":"S003-01W","stay":"efb5bf294eb3285a"}],"number":"B-03","order":"543ce55704d22e6e"}','5a6a2d1b74a64a98a6a49a01efd0647ebfb50d9f06318afaff42f8a16ab62211');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"76ef68a672d488d2","reference":"S004-01O","stay":"8fe096d7c294d931"},{"hold":null,"line":"486ac2eeaaca8139","reference":"S005-01G","stay":"6e7e1dc01869a781"}],"number":"B-04","order":"3859b9c6307a26ec"}','216526b92a4e4086b7e97e1a122916c7d4d016b36a6aa80f312f182e62b049b2');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"a4d104ac96d2db0f","reference":"L002-017","stay":"91f5157057ee6324"}],"number":"B-05","order":"f743c07a6ad24ada"}','8aa62f564806f8440082c016d0299bb1690621c2b57ef7aac03e1ddb1327042b');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1aabdc93b3133e5b","reference":"L003-010","stay":"45653bbf3065ef80"}],"number":"B-06","order":"12421edb87b3338c"}','b2e69652144ef34b40b2d2dfbbe6b88a8cb42df1b0e8784dfa8a4444cfbcd828');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e4d75a518c1889b3","reference":"L004-01S","stay":"9a0d14e07d21de5b"}],"number":"B-07","order":"ffaf7564946dc270"}','1bb1928870c07b2b654ffec74ebdf9aeaf1e8a4312d8789307acf8c488830a60');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"cc04198f59c01a51","reference":"L005-01K","stay":"8ee7f4a376721f6c"}],"number":"B-08","order":"3dce7e5c763e75e7"}','982b2280edc91c9308909c954fb30b098486062fa90b4c58fc3a24b87b360a58');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d7dec1ab9bb5ae7e","reference":"L006-01C","stay":"03a53ba4df41cab1"},{"hold":null,"line":"79fef866f5547acc","reference":"L011-010","stay":"3fa0d3d9ad271eff"}],"number":"B-09","order":"9d857796558327f8"}','0ced0caf07df97b5272dd6ca005151d5bcd5c9661715c57556be6fa0f070faaa');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2c3ebbdf87dc4663","reference":"S006-018","stay":"a47225471e5d6e2d"}],"number":"B-13","order":"e52d01cfa7941f16"}','8c199a8faf93b500dd9b7e7a04343e5e8d6f10e4792918ce99d6557239fd1a38');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"23941ea574dd2375","reference":"L007-014","stay":"dc09fc39173a0222"}],"number":"B-17","order":"33a7995eb03ad02e"}','fe5676fe90ee29185594f32f03493b481b4b40f48f4a94908b2f3230ab4b6e93');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9dde4bac39d38195","reference":"D009-01B","stay":"8765fadb5d3940c0"}],"number":"B-18","order":"1143e0c99f2555dd"}','9dde1248ed60a6fdb7862979b97e6c7845fba647779fbc6c728e6b5adcf01407');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"aecb79b1ecc578b6","reference":"W006-013","stay":"ff881e8e3beecfc8"}],"number":"B-21","order":"a5984f1ce6d277ca"}','503f8275db77076a7869b1f0c87d1e7fae9362c33c383ffd3192687e8c74589b');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"08037630b415868c","reference":"S007-01Z","stay":"009b812f19342470"}],"number":"B-22","order":"1ceed93a9163b681"}','06b83d84fed2020f08af9c8c8e2af0d23b962dfbf8b47781e16b6265e8bf9476');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"767486754a8f4f93","reference":"W007-01W","stay":"be704f4a27bfb610"},{"hold":null,"line":"96f3b784404a756b","reference":"W008-01O","stay":"553ea3c7c6fccabf"}],"number":"B-23","order":"ba8d5a134d27079a"}','7ae9063078a89b743f34695498a553a6509793b084d596069c239a24612802e4');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"bfcf11d8d6a6741f","reference":"D008-01J","stay":"362ed1a3f9e74380"}],"number":"B-26","order":"55cf7b211b3f3413"}','2b3250bddfc5aec7351f7eb7c1784ec942ccaa8c7a4f7b6335822bf0301dbb90');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"da13879d60fed4c0","reference":"D003-01U","stay":"a79d76583b073fd2"}],"number":"B-30","order":"e848708cb870e54a"}','8fa93f08730c61297dc143f59144cf5abcd9783956be38fcfa613789c03ceb97');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9ea0696f6ee1cae5","reference":"D005-01E","stay":"1a625b884e17bc1a"},{"hold":"unknown_code","line":"372ef9ce25f1cf66","reference":"Z999","stay":null}],"number":"B-31","order":"d6f73c11f73121a0"}','d2f77727116ed2f14955ccce0ad3f6709a15eb61675b22d15bd5bff2a4414048');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"0d83af02e5f29128","reference":"D006-016","stay":"037b7a08e28bf633"},{"hold":null,"line":"b54e252e71ccd869","reference":"D007-01R","stay":"dcb28540e8534ced"}],"number":"B-32","order":"382f62a3dd8740c4"}','75ea7f0551988ed15efa8bc261ecbdd7dd09c6878b13eb32dace842910e25e2c');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"b54e252e71ccd869","reference":"D007-01R","stay":"dcb28540e8534ced"}],"number":"B-32","order":"382f62a3dd8740c4"}','eb428b6f5032d5754743cf76e715e6a777375da73aefceb8d9332501f828a045');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"61c0cf514aafc2bf","reference":"lamp","stay":null}],"number":"B-33","order":"27cb534a692ade4c"}','7427eb0240cc839b1f9009e4f612a1ae876d9aeb9fc6b520b49b5d986aff4cbe');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"794369535783b343","reference":"D006-016","stay":null}],"number":"B-34","order":"2a1ad013cd080b70"}','3fff9fa9fc7df21a18f01afb3cfd1de486ad16ce8d9dab1fea9672e8fbbdd9b7');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"162d760c38d03115","reference":"W004-01J","stay":null}],"number":"B-35","order":"3ab27706a67cd709"}','873ee7f45a7fd2b94e109e1df7dcb8efe29cc82b6c880d13faa441aec3eaadae');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"de3ec04bf99f6971","reference":"L015","stay":null}],"number":"B-36","order":"85b66e281dba74e4"}','23691e663a0c5cde63c0f6c4de4aeb3085607ac75333014e317034b49652acc4');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"fdc2878953d4b28a","reference":"W005-01B","stay":"413462d9d25c421f"}],"number":"B-37","order":"9711a451392e1977"}','deb9a7e79178c5bee637521241dac5bee8299e90843b47e704322589e622a30c');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"fdc2878953d4b28a","stay":"413462d9d25c421f"}','be802660d82d7d73b1fd4008263ade04bbcee73ca754903ee0e968662f260a21');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','doubted','owner','{"doubt":"833ce935892bf8ed","doubt_kind":"not_this","item":"7806c5d39ce0d24b","words":"Another lamp, by the photo"}','f563f20a5d3a1249f661ba5c62f894e74733ba92dcc84f8c3bec939462963d57');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"23941ea574dd2375","why":"Another lamp, by the photo"}','165e4938396859fdb02c1badac46267a10f4de03022df3542c037b99f571fcbe');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["cc04198f59c01a51"],"number":"B-08","order":"3dce7e5c763e75e7"}','e840676b644f23647a8665675f2c86c46c89b92f846ad1ab152fc532378d558c');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["aecb79b1ecc578b6"],"number":"B-21","order":"a5984f1ce6d277ca"}','58740289d7d207a2660edbea25dc24caeee53c2767e403fb0c938d34b120a884');
INSERT INTO "ledger" VALUES(102,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"aecb79b1ecc578b6","stay":"ff881e8e3beecfc8"}','b969cdab04e0c0fce8debfd001e0f1146b0c8ce449a1d9effa0d7ed74476bc2a');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"210933db8108e7a5","stay":"362ed1a3f9e74380","to":"D020"}','98f3c0e3bae08552ee38e6b2f840655f56dd969dcce66a81e1adb0b18da55bcf');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"4a305c91f32bc608","reference":"S012-01O","stay":"504e57fb195bc132"}],"number":"F-1","order":"5575557ee0b38dca"}','59dfef7334d00778b9e1dcd7711908e9f4dc190082b3a26ce9d3e478c27c3b0b');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"98fa3a89d1e765b8","reference":"","stay":null}],"number":"F-2","order":"7f5800cfb7288a0f"}','28fc830c16dcb718a92a68b70894c862312ba5898a233a38b4bf42571c9a50ac');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["11fd8b7ee2aa0517","ab8e5a5cb038d402","a32c5c8525d9192e","aaf1cec3fdc6e1a9","76ef68a672d488d2","486ac2eeaaca8139","d7dec1ab9bb5ae7e","79fef866f5547acc","2c3ebbdf87dc4663","08037630b415868c","767486754a8f4f93","96f3b784404a756b"],"round":"7211bb10e3d2d356"}','a7c44ba137fc5acd0f0440b76dfd0fd0bdb4ae6fddd8d468560c5a51d65299bb');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"age_ms":0,"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','185dd4627acc6497996b6ae07db980a306cba8b787e9424f4ea93339b4fdfd72');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"11fd8b7ee2aa0517","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','52d91a4209fe5a3e47b1b8d0ce0c9515687edfbb7971b32c96ce421f4aea553a');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"ab8e5a5cb038d402","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','41a2af668f3f444f2755f93c0b19b8a8efc8ab393c20e912ae5f8c61fd5b697f');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"a32c5c8525d9192e","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','ffc12bfe0fe263d949e4b61c4a7c5ddbe4f543090436ef1949875e90ffde141c');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"aaf1cec3fdc6e1a9","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','4e5dbfe4591303f14a51f64a6e0ad7d78f09febc080d93ec9d215a4eaa00b3bf');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"76ef68a672d488d2","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','168521e4ab0d69ba397cce228ccd853fc2357ad26f11e82d0e67ddf609f3b0ff');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"486ac2eeaaca8139","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','79cc2c6132fc98e5620701008830aaebf94f4008f3ca0a75b02ee3a11fb1ea0e');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"d7dec1ab9bb5ae7e","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','9121e9c11ccd5a3a0893944d996697a226da040d1ac178a80b7103c8ca8c826c');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"79fef866f5547acc","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','2b49950665dc6cc28c86183f9e34bbe276f122b9656d7cad6f093a8e1d98142c');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"2c3ebbdf87dc4663","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','2464a37729b9a88fa9c71fd0b8aca30b04f782025fab04329030ecdeff8cd499');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"08037630b415868c","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','ed8eed4673ba5a1e417275358c5024879e763f1b0518be5690bced74b475b350');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"767486754a8f4f93","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','497e6573864d6406553b3d0daa56b2fa6bd449c0de062d5d3c5b8ebd6ffe2e1e');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"96f3b784404a756b","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7211bb10e3d2d356","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','3d70d3746cd2e10cc51d1b5821387a512e6a4d92441e449278d967f3c655d0f2');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"96f3b784404a756b","line_state":"waiting"}','207dbfa951933951a48d33e4af97adb5722d190a8a509d48c87d114bc3e6acd5');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"7211bb10e3d2d356"}','80c4ef18f1550c04f9648d5eff7003c120397b7091b0efa954a3d82ba8041996');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["f0c8d38afac58ba0"],"parcel":"8c68207009239465","table":"main"}','1c6715de6dc7fb8e437ab0826aedca1a3c99ce7746d871cce7baf90e416680e7');
INSERT INTO "ledger" VALUES(123,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"age_ms":0,"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"a32c5c8525d9192e","line_state":"picked","order_number":"B-03","parcel":"8c68207009239465","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','3dd01a589c68b64048c8c9c58869d01456f6883ad508f76ebd404540dd849c67');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"11fd8b7ee2aa0517","line_state":"packed","order_number":"B-01","parcel":"8c68207009239465","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','46acb96945b225f9aa239ecf4ab7698868d1dd6c5a841475d006a98026eb56cf');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["f0c8d38afac58ba0"],"parcel":"8c68207009239465","released":["W001","W002"]}','059e3055b134b665281a87a94596a0c2d4f5b60ec79ab85d4957f371eac97f72');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"ab8e5a5cb038d402","line_state":"released","order_number":"B-01","parcel":"8c68207009239465","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','a0a2eab7f19c16d6b70b93947cadf1cac61c9039725f538f4830b407c7dc0c84');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"11fd8b7ee2aa0517","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','6b54480c5aed98bee88709c2310f8c679f65f754bc9c748eeff08c0c991a1334');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"12b9633079ac0a09","title":"Rear wheel","turn":2}','37b97526f470ef3ccbfd4d551054d968529aae2bddaff73f624ddd8eba57b0f5');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"8c68207009239465"}','5b9e56d640342d49004cae13a152bb12a0e5dc4e5ad8a9830b3c78800663137a');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["ba8d5a134d27079a"],"parcel":"2048f519f9f313b0","table":"main"}','818809fce0dc0b5cfb00b2277ed9620b9183c8ba9f49e3e963e29973f2cfc412');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"767486754a8f4f93","line_state":"packed","order_number":"B-23","parcel":"2048f519f9f313b0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','016a136958a6664087ad76d6e2282ec14eecdc143a582c22ad3c26061c604112');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["ba8d5a134d27079a"],"parcel":"2048f519f9f313b0","released":["W007"]}','34b225fffef004f762db40eaa554d4b8d75388b998cffd619c0923f1e459c165');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["ba8d5a134d27079a"],"parcel":"2048f519f9f313b0"}','1225087eeeea7961106cf011ec10d2366330ce630cf0f7d6e745803bb7d720ec');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["ba8d5a134d27079a"],"parcel":"2048f519f9f313b0","released":["W007"]}','6e6a653fbcca28ea60bbd9db38d62e789c0f37c956a1fd841726adcf68457122');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["1ceed93a9163b681"],"parcel":"d52895f802677a35","table":"main"}','e9a26baeb21dea50b9f28c0f52a35592e1a02d8301ef4c7b03687d2da4b7deac');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"d52895f802677a35"}','0504730daf81123ff272822d97bc991717d7fa9e4f86f096d677d021d9881c98');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["3859b9c6307a26ec"],"parcel":"5ba273e4705119ef","table":"main"}','77f21489e384e470b1d3ea88a5ba9406d39c20114bab62a3b128f48b980fbfe7');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"76ef68a672d488d2","line_state":"packed","order_number":"B-04","parcel":"5ba273e4705119ef","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','c1b077a7f11b08de77b677b32d7d824803325f6cf5dfe0651f9e621581f2f038');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"5ba273e4705119ef"}','ff2d0aae688fcac9be30f50cc273efdc150485865fbeba5c8cb692a16de2b935');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["9d857796558327f8"],"parcel":"45e1b3a6aa44e34a","table":"second"}','6569ed765e542564bc077c45275140e212dd5035e8b62eceffcbf2adfed6c6d6');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"d7dec1ab9bb5ae7e","line_state":"packed","order_number":"B-09","parcel":"45e1b3a6aa44e34a","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','8658071f81c6904e7bcee2e8e0b0f7c3cd30aec82048c2ef1ce17a92cea120d3');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["d7dec1ab9bb5ae7e","79fef866f5547acc"],"number":"B-09","order":"9d857796558327f8"}','c01e9327226fcd44c4aa27679e50e609c674666ba38f69a02585698a30c74300');
INSERT INTO "ledger" VALUES(143,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["543ce55704d22e6e"],"parcel":"9d81b8f9f1b86e10","table":"main"}','e6854311e500135ac58cdc542a3feeb3b7c934fb1869207155070ab603c93cb4');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"a32c5c8525d9192e","line_state":"packed","order_number":"B-03","parcel":"9d81b8f9f1b86e10","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','54305dab43e173d6324553c66c6e5ffdb919c290fc490fe4560add00cccbde59');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"2c3ebbdf87dc4663","reference":"S006-018","stay":"a47225471e5d6e2d"}],"number":"B-13","order":"e52d01cfa7941f16"}','e0f1aecd6f8d3db972241b3054ab224aceca3a607907f76aace7fcf306a671cf');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["a4d104ac96d2db0f","1aabdc93b3133e5b","e4d75a518c1889b3","bfcf11d8d6a6741f"],"round":"5e1f5fbbf1df66c6"}','4e4f8190306d300ddcd000c393d6928b6b0e26c95ae091ba3834100e470b93be');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"age_ms":0,"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"a4d104ac96d2db0f","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5e1f5fbbf1df66c6","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','f072551cef93049b5ac6238ec9d8d2cf283c4eafba7294c49e10102fbd606a36');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"e4d75a518c1889b3","note":"Not in its bin"}','3d6030a5512521e22467dc21f126eaee1d8fcf2e2a517001c549c4143a9bdb97');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:13:00.000000+00:00','doubted','owner','{"doubt":"3e054cbfe75a53d8","doubt_kind":"missing","item":"6712a6b1ad3528d6","words":"Not in its bin"}','46d0325230c6c328f6993df6089fab37e897fd7d21815727eebe9baade1cb525');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"5e1f5fbbf1df66c6","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','0788a3c6a548dd620646e1f0c8d5e995890a80eadc48e3945a813e494f6a8d79');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"5e1f5fbbf1df66c6","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','47f2a2f63176ccd251be606e08371531ae7aa7181a7992b4936c746739b31090');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"age_ms":0,"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"5e1f5fbbf1df66c6","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','bd148d6e1e159f96cd29b35791d167e8af0f058c29169755f9d427910dc4c843');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','9dda3c18ae13a030f3ef8e61239ff07601f1ecd7dbd3c9ce18bc36572b158f3f');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','73906db32849dad41d59fbbd9ac796926f0d0901b5c387367deb59dd5cf6a494');
INSERT INTO "ledger" VALUES(155,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3a514685319f23a6","reference":"D001-019","stay":"bad1f21255171ada"},{"hold":"already_sold","line":"c84906b01930fc39","reference":"W002-016","stay":null}],"number":"B-38","order":"b7e9eb84214bca6b"}','94c1818348f8076b141712986468467e4df0cb9aab6d63172d778c043ccef45d');
INSERT INTO "ledger" VALUES(156,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"e7885d5e0d8aeb2e","reference":"W001","stay":null}],"number":"B-39","order":"8c81dd4c98d0d584"}','6dce2d0e0b264c1683ee6aa09da683dbfda4e6ecce2216281785909a0e6f1ca3');
INSERT INTO "ledger" VALUES(157,'2026-03-02T15:39:00.000000+00:00','stocktake opened','owner','{"area":"section:S","note":"Spring","stocktake":"950e5635e1a71bff"}','372b1067e2006adc878151e5c564329edaff723ef50c93b9e874047c2d8e2c57');
INSERT INTO "ledger" VALUES(158,'2026-03-02T15:46:00.000000+00:00','looked','owner','{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"950e5635e1a71bff","unread":0}','8dd5a269f1b1236182a689508d89141286b4d23356458a6bbdbb876cc1b9e3f6');
INSERT INTO "ledger" VALUES(159,'2026-03-02T15:46:00.000000+00:00','doubted','owner','{"doubt":"8491a237315f9a71","doubt_kind":"not_this","item":"58ccd86c0a67fe73","words":"Another thing hangs on its card in B-1-1, a count says."}','befc0853f05e059c3cd4ee6d16c2428c5a70d2e90ace06346ff08b206af7ad08');
INSERT INTO "ledger" VALUES(160,'2026-03-02T15:54:00.000000+00:00','looked','owner','{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"950e5635e1a71bff","unread":0}','463216e681565f8c9ff6f3748cdffe26d8060b714b14f7854c7391e359aff854');
INSERT INTO "ledger" VALUES(161,'2026-03-02T16:00:00.000000+00:00','finding resolved','owner','{"after":160,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"950e5635e1a71bff","sure":false}','ec6b3c432073968d223a170c8cbf54ad8299b5a38986ffa37a3988dda86970ec');
INSERT INTO "ledger" VALUES(162,'2026-03-02T16:03:00.000000+00:00','finding resolved','owner','{"after":161,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"950e5635e1a71bff","sure":false}','abdbb231fb8b4e52198b11ef09940915b36e52045273f911495f3b927b504a25');
INSERT INTO "ledger" VALUES(163,'2026-03-02T16:06:00.000000+00:00','finding resolved','owner','{"after":162,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"950e5635e1a71bff","sure":false}','08abef3663ee3a6045f8a91d7f920355c55a6f5609e2eb70539edf296e36f129');
INSERT INTO "ledger" VALUES(164,'2026-03-02T16:09:00.000000+00:00','finding reopened','owner','{"after":163,"finding":"missing-S008","how":"found_later","stocktake":"950e5635e1a71bff"}','1c12331bfeeca154ef07157505a34846e70dc9e6e2e871ee97329483c99a38f3');
INSERT INTO "ledger" VALUES(165,'2026-03-02T16:12:00.000000+00:00','doubted','owner','{"doubt":"d713ae0571925b22","doubt_kind":"missing","item":"155a1c770078f941","words":"a count of section:S did not find it"}','36922f5768245967fa56317800e1d99c4e7d5d6004088e375cd0d54132e0f1cf');
INSERT INTO "ledger" VALUES(166,'2026-03-02T16:12:00.000000+00:00','stocktake closed','owner','{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"950e5635e1a71bff"}','2009c3f99b46b333f0c5d0398327d40dba0b0f0a061a1601be1c48e96f10cc18');
INSERT INTO "ledger" VALUES(167,'2026-03-02T16:15:00.000000+00:00','stocktake opened','owner','{"area":"section:L","note":"Spring","stocktake":"c73b6921ecce590d"}','8708bf6c1fcc277b056d1f67b3736d3166e73539283cadb37d56836e61aa4190');
INSERT INTO "ledger" VALUES(168,'2026-03-02T16:22:00.000000+00:00','looked','owner','{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"c73b6921ecce590d","unread":0}','63a52119ff6abfc716b5d74c57283e70ec562a66ae0c21300c18acb1df5f186a');
INSERT INTO "ledger" VALUES(169,'2026-03-02T16:25:00.000000+00:00','card lost','owner','{"code":"L008"}','0c24e83e9b6b9ba47e4d8160b6f7356488a432908d959b0c5100eb716f44f8f2');
INSERT INTO "ledger" VALUES(170,'2026-03-02T16:25:00.000000+00:00','doubted','owner','{"doubt":"efd90d70c0aaf32a","doubt_kind":"missing","item":"554cd9f72e2dc6c3","words":"a count did not find it"}','f4c89b73060b0b9b082742a29cf4c3676f78752ca1c7292ab84db5c9e96b746d');
INSERT INTO "ledger" VALUES(171,'2026-03-02T16:25:00.000000+00:00','finding resolved','owner','{"after":168,"finding":"missing-L008","how":"lost","reason":"","stocktake":"c73b6921ecce590d","sure":false}','4a96c9476c4be37f1d02f17836764346cfe4a2be7ae3c9fe28287a752bf44142');
INSERT INTO "ledger" VALUES(172,'2026-03-02T16:28:00.000000+00:00','withdrawn','owner','{"code":"L009","reason":"Nowhere to be found","stay":"2774e4f2fb64ecda"}','811c30e3f95eb45b887cd93fa18a36d531f1cbdfc36113081a3fad7c1148d7ba');
INSERT INTO "ledger" VALUES(173,'2026-03-02T16:28:00.000000+00:00','finding resolved','owner','{"after":171,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"c73b6921ecce590d","sure":false}','cda1a30e7576fe38898e8033dde8febaf0cc2562024cadcd6c9641c7c25ab25a');
INSERT INTO "ledger" VALUES(174,'2026-03-02T16:31:00.000000+00:00','stocktake opened','owner','{"area":"section:D","note":"","sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"e6d3c3de597cb8ed"}','90befc3046f6c42c36399a0476079b4401181d20f9d5b5f5c594176a370baf11');
INSERT INTO "ledger" VALUES(175,'2026-03-02T16:34:00.000000+00:00','stocktake opened','owner','{"area":"tray","note":"Too late today","stocktake":"f4cfa3f6e52b28a1"}','9a5a1b78d7709edddf12c10f07906cff54a2cd87a36a85e258ac5c8748423930');
INSERT INTO "ledger" VALUES(176,'2026-03-02T16:37:00.000000+00:00','stocktake cancelled','owner','{"stocktake":"f4cfa3f6e52b28a1"}','3fa6160b8fd5edf37fbf744cfbc45a19404854d0617dedea3f0f1272eb9ca7ca');
CREATE TABLE lines (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	"order" VARCHAR(64) NOT NULL, 
	position INTEGER NOT NULL, 
	reference TEXT NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	stay VARCHAR(64), 
	state VARCHAR(24) NOT NULL, 
	parcel VARCHAR(64), 
	round VARCHAR(64), 
	basket INTEGER, 
	scan VARCHAR(64), 
	in_file BOOLEAN NOT NULL, holds TEXT DEFAULT '[]' NOT NULL, 
	CONSTRAINT pk_lines PRIMARY KEY (n), 
	CONSTRAINT fk_lines_order FOREIGN KEY("order") REFERENCES orders (id), 
	CONSTRAINT fk_lines_parcel FOREIGN KEY(parcel) REFERENCES parcels (id), 
	CONSTRAINT fk_lines_round FOREIGN KEY(round) REFERENCES rounds (id), 
	CONSTRAINT fk_lines_stay FOREIGN KEY(stay) REFERENCES stays (id), 
	CONSTRAINT uq_lines_id UNIQUE (id)
);
INSERT INTO "lines" VALUES(1,'11fd8b7ee2aa0517','f0c8d38afac58ba0',1,'W001-01E','Front wheel 1','','d1031a7a67eb0a5e','released','8c68207009239465','7211bb10e3d2d356',1,NULL,1,'[]');
INSERT INTO "lines" VALUES(2,'ab8e5a5cb038d402','f0c8d38afac58ba0',2,'W002-016','Front wheel 2','','e9cdfa9b3bffd9e3','released','8c68207009239465','7211bb10e3d2d356',1,'pack-W002',1,'[]');
INSERT INTO "lines" VALUES(3,'a32c5c8525d9192e','543ce55704d22e6e',1,'S002-013','Leather saddle 2','','823e3359c55ea8f2','packed','9d81b8f9f1b86e10','7211bb10e3d2d356',2,'pack-S002',1,'[]');
INSERT INTO "lines" VALUES(4,'aaf1cec3fdc6e1a9','543ce55704d22e6e',2,'S003-01W','Leather saddle 3','','efb5bf294eb3285a','picked',NULL,'7211bb10e3d2d356',2,'pick-S003',1,'[]');
INSERT INTO "lines" VALUES(5,'76ef68a672d488d2','3859b9c6307a26ec',1,'S004-01O','Leather saddle 4','','8fe096d7c294d931','packed','5ba273e4705119ef','7211bb10e3d2d356',3,'pack-S004',1,'[]');
INSERT INTO "lines" VALUES(6,'486ac2eeaaca8139','3859b9c6307a26ec',2,'S005-01G','Leather saddle 5','','6e7e1dc01869a781','picked',NULL,'7211bb10e3d2d356',3,'pick-S005',1,'[]');
INSERT INTO "lines" VALUES(7,'a4d104ac96d2db0f','f743c07a6ad24ada',1,'L002-017','Dynamo lamp 2','','91f5157057ee6324','picked',NULL,'5e1f5fbbf1df66c6',1,'pick-L002',1,'[]');
INSERT INTO "lines" VALUES(8,'1aabdc93b3133e5b','12421edb87b3338c',1,'L003-010','Dynamo lamp 3','','45653bbf3065ef80','waiting',NULL,'5e1f5fbbf1df66c6',4,NULL,1,'[]');
INSERT INTO "lines" VALUES(9,'e4d75a518c1889b3','ffaf7564946dc270',1,'L004-01S','Dynamo lamp 4','','9a0d14e07d21de5b','short',NULL,'5e1f5fbbf1df66c6',7,NULL,1,'[]');
INSERT INTO "lines" VALUES(10,'cc04198f59c01a51','3dce7e5c763e75e7',1,'L005-01K','Dynamo lamp 5','','8ee7f4a376721f6c','cancelled',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(11,'d7dec1ab9bb5ae7e','9d857796558327f8',1,'L006-01C','Dynamo lamp 6','','03a53ba4df41cab1','packed','45e1b3a6aa44e34a','7211bb10e3d2d356',4,NULL,1,'[["cancelled_in_box", "Cancelled while in the parcel. Take it out with a scan."]]');
INSERT INTO "lines" VALUES(12,'79fef866f5547acc','9d857796558327f8',2,'L011-010','Dynamo lamp 11','','3fa0d3d9ad271eff','cancelled',NULL,'7211bb10e3d2d356',4,NULL,1,'[]');
INSERT INTO "lines" VALUES(13,'2c3ebbdf87dc4663','e52d01cfa7941f16',1,'S006-018','Saddle with springs','','a47225471e5d6e2d','picked',NULL,'7211bb10e3d2d356',5,NULL,1,'[["changed_after_pick", "The order now says \u201cSaddle with springs\u201d, before it said \u201cLeather saddle 6\u201d."]]');
INSERT INTO "lines" VALUES(14,'23941ea574dd2375','33a7995eb03ad02e',1,'L007-014','Dynamo lamp 7','','dc09fc39173a0222','waiting',NULL,NULL,NULL,NULL,1,'[["suspect", "Another lamp, by the photo"]]');
INSERT INTO "lines" VALUES(15,'9dde4bac39d38195','1143e0c99f2555dd',1,'D009-01B','Rear derailleur 9','','8765fadb5d3940c0','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(16,'aecb79b1ecc578b6','a5984f1ce6d277ca',1,'W006-013','Front wheel 6','','ff881e8e3beecfc8','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(17,'08037630b415868c','1ceed93a9163b681',1,'S007-01Z','Leather saddle 7','','009b812f19342470','picked',NULL,'7211bb10e3d2d356',6,'pick-S007',1,'[]');
INSERT INTO "lines" VALUES(18,'767486754a8f4f93','ba8d5a134d27079a',1,'W007-01W','Front wheel 7','','be704f4a27bfb610','released','2048f519f9f313b0','7211bb10e3d2d356',7,NULL,1,'[]');
INSERT INTO "lines" VALUES(19,'96f3b784404a756b','ba8d5a134d27079a',2,'W008-01O','Front wheel 8','','553ea3c7c6fccabf','waiting',NULL,'7211bb10e3d2d356',7,NULL,1,'[]');
INSERT INTO "lines" VALUES(20,'bfcf11d8d6a6741f','55cf7b211b3f3413',1,'D008-01J','Rear derailleur 8','','210933db8108e7a5','waiting',NULL,'5e1f5fbbf1df66c6',8,NULL,1,'[]');
INSERT INTO "lines" VALUES(21,'da13879d60fed4c0','e848708cb870e54a',1,'D003-01U','Bell with a crown','','a79d76583b073fd2','waiting',NULL,NULL,NULL,NULL,1,'[["doubtful", "The order says \u201cBell with a crown\u201d, which fits D013, \u201cBrass bell\u201d, better."]]');
INSERT INTO "lines" VALUES(22,'9ea0696f6ee1cae5','d6f73c11f73121a0',1,'D005-01E','Rear derailleur 5','','1a625b884e17bc1a','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(23,'372ef9ce25f1cf66','d6f73c11f73121a0',2,'Z999','','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO "lines" VALUES(24,'0d83af02e5f29128','382f62a3dd8740c4',1,'D006-016','Rear derailleur 6','','037b7a08e28bf633','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(25,'b54e252e71ccd869','382f62a3dd8740c4',2,'D007-01R','Rear derailleur 7','','dcb28540e8534ced','waiting',NULL,NULL,NULL,NULL,0,'[["not_in_file", "The order came again without this line."]]');
INSERT INTO "lines" VALUES(26,'61c0cf514aafc2bf','27cb534a692ade4c',1,'lamp','','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["unknown_code", "No slot of this room has this code."]]');
INSERT INTO "lines" VALUES(27,'794369535783b343','2a1ad013cd080b70',1,'D006-016','Rear derailleur 6','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["already_sold", "Order B-32 has it."]]');
INSERT INTO "lines" VALUES(28,'162d760c38d03115','3ab27706a67cd709',1,'W004-01J','Front wheel 4','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["withdrawn", "It was taken out of stock: Bent beyond use"]]');
INSERT INTO "lines" VALUES(29,'de3ec04bf99f6971','85b66e281dba74e4',1,'L015','','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["slot_free", "Nothing stands in this slot."]]');
INSERT INTO "lines" VALUES(30,'fdc2878953d4b28a','9711a451392e1977',1,'W005-01B','Bell with a crown','','413462d9d25c421f','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(31,'4a305c91f32bc608','5575557ee0b38dca',1,'S012-01O','','','504e57fb195bc132','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(32,'98fa3a89d1e765b8','7f5800cfb7288a0f',1,'','','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["bad_row", "This row has no reference."]]');
INSERT INTO "lines" VALUES(33,'3a514685319f23a6','b7e9eb84214bca6b',1,'D001-019','Rear derailleur 1','','bad1f21255171ada','waiting',NULL,NULL,NULL,NULL,1,'[]');
INSERT INTO "lines" VALUES(34,'c84906b01930fc39','b7e9eb84214bca6b',2,'W002-016','Front wheel 2','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["already_sold", "It has left with order B-01."]]');
INSERT INTO "lines" VALUES(35,'e7885d5e0d8aeb2e','8c81dd4c98d0d584',1,'W001','','',NULL,'unbound',NULL,NULL,NULL,NULL,1,'[["stale_code", "It was ordered before the thing now in this slot was put away."]]');
CREATE TABLE looks (
	n INTEGER NOT NULL, 
	"key" VARCHAR(64) NOT NULL, 
	body VARCHAR(64) NOT NULL, 
	stocktake VARCHAR(64) NOT NULL, 
	place VARCHAR(64) NOT NULL, 
	at VARCHAR(32) NOT NULL, 
	how VARCHAR(24) NOT NULL, 
	reads TEXT NOT NULL, 
	whole BOOLEAN NOT NULL, 
	closer VARCHAR(64), 
	size TEXT NOT NULL, 
	photo VARCHAR(64), 
	CONSTRAINT pk_looks PRIMARY KEY (n), 
	CONSTRAINT uq_looks_key UNIQUE ("key"), 
	CONSTRAINT fk_looks_stocktake FOREIGN KEY(stocktake) REFERENCES stocktakes (id), 
	CONSTRAINT fk_looks_closer FOREIGN KEY(closer) REFERENCES looks ("key"), 
	CONSTRAINT fk_looks_photo FOREIGN KEY(photo) REFERENCES photos (hash)
);
INSERT INTO "looks" VALUES(1,'done-1','cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c','950e5635e1a71bff','B-1-1','2026-03-02T15:46:00.000000+00:00','wedge','[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]',1,NULL,'[]',NULL);
INSERT INTO "looks" VALUES(2,'done-2','88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c','950e5635e1a71bff','B-1-2','2026-03-02T15:54:00.000000+00:00','photo','[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]',1,NULL,'[600, 400]','e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO "looks" VALUES(3,'runs-1','f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11','c73b6921ecce590d','C-1-1','2026-03-02T16:22:00.000000+00:00','wedge','[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]',1,NULL,'[]',NULL);
CREATE TABLE mappings (
	n INTEGER NOT NULL, 
	name VARCHAR(64) NOT NULL, 
	signature TEXT NOT NULL, 
	columns TEXT NOT NULL, 
	CONSTRAINT pk_mappings PRIMARY KEY (n), 
	CONSTRAINT uq_mappings_name UNIQUE (name)
);
INSERT INTO "mappings" VALUES(1,'Fair','543657eb86f667e6ec9aaf1b1b95c0c0607796c7aa3ddab2bfe272bbd00a0182','{"columns": {"number": "Order", "reference": "SKU"}, "date_order": null}');
CREATE TABLE orders (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	number TEXT NOT NULL, 
	channel TEXT NOT NULL, 
	received VARCHAR(32) NOT NULL, 
	slip INTEGER NOT NULL, 
	ordered_at VARCHAR(32), 
	ship_by VARCHAR(32), 
	parcel VARCHAR(64), sent_number TEXT DEFAULT '' NOT NULL, 
	CONSTRAINT pk_orders PRIMARY KEY (n), 
	CONSTRAINT fk_orders_parcel FOREIGN KEY(parcel) REFERENCES parcels (id), 
	CONSTRAINT uq_orders_id UNIQUE (id), 
	CONSTRAINT uq_orders_slip UNIQUE (slip)
);
INSERT INTO "orders" VALUES(1,'f0c8d38afac58ba0','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(2,'543ce55704d22e6e','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','9d81b8f9f1b86e10','');
INSERT INTO "orders" VALUES(3,'3859b9c6307a26ec','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','5ba273e4705119ef','');
INSERT INTO "orders" VALUES(4,'f743c07a6ad24ada','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(5,'12421edb87b3338c','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(6,'ffaf7564946dc270','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(7,'3dce7e5c763e75e7','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(8,'9d857796558327f8','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','45e1b3a6aa44e34a','');
INSERT INTO "orders" VALUES(9,'e52d01cfa7941f16','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(10,'33a7995eb03ad02e','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(11,'1143e0c99f2555dd','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(12,'a5984f1ce6d277ca','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(13,'1ceed93a9163b681','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(14,'ba8d5a134d27079a','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(15,'55cf7b211b3f3413','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL,'');
INSERT INTO "orders" VALUES(16,'e848708cb870e54a','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(17,'d6f73c11f73121a0','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(18,'382f62a3dd8740c4','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(19,'27cb534a692ade4c','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(20,'2a1ad013cd080b70','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(21,'3ab27706a67cd709','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(22,'85b66e281dba74e4','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(23,'9711a451392e1977','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(24,'5575557ee0b38dca','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(25,'7f5800cfb7288a0f','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(26,'b7e9eb84214bca6b','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL,'');
INSERT INTO "orders" VALUES(27,'8c81dd4c98d0d584','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL,'');
CREATE TABLE parcels (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	at_table VARCHAR(64) NOT NULL, 
	orders TEXT NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, closed VARCHAR(32), handed VARCHAR(32), 
	CONSTRAINT pk_parcels PRIMARY KEY (n), 
	CONSTRAINT uq_parcels_id UNIQUE (id)
);
INSERT INTO "parcels" VALUES(1,'8c68207009239465','main','f0c8d38afac58ba0','2026-03-02T13:56:00.000000+00:00','closed','2026-03-02T14:05:00.000000+00:00',NULL);
INSERT INTO "parcels" VALUES(2,'2048f519f9f313b0','main','ba8d5a134d27079a','2026-03-02T14:28:00.000000+00:00','closed','2026-03-02T14:31:00.000000+00:00',NULL);
INSERT INTO "parcels" VALUES(3,'d52895f802677a35','main','1ceed93a9163b681','2026-03-02T14:34:00.000000+00:00','dropped',NULL,NULL);
INSERT INTO "parcels" VALUES(4,'5ba273e4705119ef','main','3859b9c6307a26ec','2026-03-02T14:40:00.000000+00:00','aside',NULL,NULL);
INSERT INTO "parcels" VALUES(5,'45e1b3a6aa44e34a','second','9d857796558327f8','2026-03-02T14:49:00.000000+00:00','open',NULL,NULL);
INSERT INTO "parcels" VALUES(6,'9d81b8f9f1b86e10','main','543ce55704d22e6e','2026-03-02T14:58:00.000000+00:00','open',NULL,NULL);
CREATE TABLE photos (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	picture BLOB NOT NULL, 
	thumb BLOB NOT NULL, 
	CONSTRAINT pk_photos PRIMARY KEY (n), 
	CONSTRAINT uq_photos_hash UNIQUE (hash)
);
INSERT INTO "photos" VALUES(1,'488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989',X'FFD8FFE000104A46494600010100000100010000FFDB0043000604040504040605050506060607090E0909080809120D0D0A0E1512161615121414171A211C17181F1914141D271D1F2223252525161C292C28242B21242524FFDB00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424FFC00011080018002003012200021101031101FFC4001500010100000000000000000000000000000005FFC40014100100000000000000000000000000000000FFC4001501010100000000000000000000000000000006FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F00B2020170000000000FFFD9',X'FFD8FFE000104A46494600010100000100010000FFDB00430006040506050406060506070706080A100A0A09090A140E0F0C1017141818171416161A1D251F1A1B231C1616202C20232627292A29191F2D302D283025282928FFDB0043010707070A080A130A0A13281A161A2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828FFC00011080018002003012200021101031101FFC4001500010100000000000000000000000000000005FFC40014100100000000000000000000000000000000FFC4001501010100000000000000000000000000000006FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F00B2022560000000000FFFD9');
INSERT INTO "photos" VALUES(2,'55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941',X'FFD8FFE000104A46494600010100000100010000FFDB0043000604040504040605050506060607090E0909080809120D0D0A0E1512161615121414171A211C17181F1914141D271D1F2223252525161C292C28242B21242524FFDB00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424FFC00011080018002003012200021101031101FFC4001500010100000000000000000000000000000006FFC40014100100000000000000000000000000000000FFC4001501010100000000000000000000000000000006FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F009B0128B80000000007FFD9',X'FFD8FFE000104A46494600010100000100010000FFDB00430006040506050406060506070706080A100A0A09090A140E0F0C1017141818171416161A1D251F1A1B231C1616202C20232627292A29191F2D302D283025282928FFDB0043010707070A080A130A0A13281A161A2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828FFC00011080018002003012200021101031101FFC4001500010100000000000000000000000000000006FFC40014100100000000000000000000000000000000FFC4001501010100000000000000000000000000000006FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F009B0134B00000000007FFD9');
INSERT INTO "photos" VALUES(3,'e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5',X'FFD8FFE000104A46494600010100000100010000FFDB0043000604040504040605050506060607090E0909080809120D0D0A0E1512161615121414171A211C17181F1914141D271D1F2223252525161C292C28242B21242524FFDB00430106060609080911090911241814182424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424242424FFC00011080190025803012200021101031101FFC400160001010100000000000000000000000000000809FFC40018100100030100000000000000000000000000084684C3FFC40014010100000000000000000000000000000000FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F00AA40000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B82A912B419BA61EE4E6A5EEE00AA4000656AA99CD4BDDC01548CAD55339A97BB802A904AD39A97BB802A912B4E6A5EEE09581AA42569CD4BDDC12B035484AD066E987BA5606A9032B41AA42569CD4BDDC083374C3DC154895A7352F77055200CAD553066E987B82A9195AD52004AD066E987BAA900656B548012B419BA61EE4E6A5EEE00AA44AD066E987BAA900656AA983374C3DC154895A0CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC154A569CD4BDDC154832B554C19BA61EE95954C19BA61EE0959AA4CAD6A9025683374C3DD54A5683374C3DD54832B5AA4CAD6A9025683374C3DC9CD4BDDC083374C3DC9CD4BDDC0083374C3DD54A5683374C3DD54832B554C19BA61EE95954C19BA61EE0419BA61EE95954C19BA61EE9581AA4000000000000000000000000000000000000000000000000000002569CD4BDDC083374C3DC9CD4BDDC083374C3DC083374C3DC9CD4BDDC083374C3DC9CD4BDDC0154800CAD55339A97BB825655339A97BB8025655339A97BB825655339A97BB802A94AD39A97BB82A94AD39A97BB80139A97BB825655339A97BB8256055339A97BB825655339A97BB82560553066E987BA56553066E987BA5606A932B5AA4CAD055339A97BB81066E987B939A97BB81066E987B8139A97BB82A94AD39A97BB82A90656AA983374C3DD2B2A983374C3DC12B354995AD5204AD066E987BAA94AD066E987BAA90656B54995AD5204AD066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77055295A7352F7705520CAD553066E987BA56553066E987B82566A932B5AA4095A0CDD30F755295A0CDD30F75520CAD6A932B5AA4095A0CDD30F727352F77020CDD30F727352F770020CDD30F755295A0CDD30F75520CAD553066E987BA56553066E987B81066E987BA56553066E987BA5606A900000000000000000000000000000000000000000000000000000095A7352F77020CDD30F727352F77020CDD30F7020CDD30F727352F77020CDD30F727352F77005520032B554CE6A5EEE095954CE6A5EEE0095954CE6A5EEE095954CE6A5EEE00AA52B4E6A5EEE0AA52B4E6A5EEE004E6A5EEE095954CE6A5EEE0958154CE6A5EEE095954CE6A5EEE0958154C19BA61EE95954C19BA61EE9581AA4CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE04E6A5EEE0AA52B4E6A5EEE0AA4195AAA60CDD30F74ACAA60CDD30F704ACD52656B54812B419BA61EEAA52B419BA61EEAA4195AD52656B54812B419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC154A569CD4BDDC154832B554C19BA61EE95954C19BA61EE0959AA4CAD6A9025683374C3DD54A5683374C3DD54832B5AA4CAD6A9025683374C3DC9CD4BDDC083374C3DC9CD4BDDC0083374C3DD54A5683374C3DD54832B554C19BA61EE95954C19BA61EE0419BA61EE95954C19BA61EE9581AA4000000000000000000000000000000000000000000000000000002569CD4BDDC083374C3DC9CD4BDDC083374C3DC083374C3DC9CD4BDDC083374C3DC9CD4BDDC0154800CAD55339A97BB825655339A97BB8025655339A97BB825655339A97BB802A94AD39A97BB82A94AD39A97BB80139A97BB825655339A97BB8256055339A97BB825655339A97BB82560553066E987BA56553066E987BA5606A932B5AA4CAD055339A97BB81066E987B939A97BB81066E987B8139A97BB82A94AD39A97BB82A90656AA983374C3DD2B2A983374C3DC12B354995AD5204AD066E987BAA94AD066E987BAA90656B54995AD5204AD066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77055295A7352F7705520CAD553066E987BA56553066E987B82566A932B5AA4095A0CDD30F755295A0CDD30F75520CAD6A932B5AA4095A0CDD30F727352F77020CDD30F727352F770020CDD30F755295A0CDD30F75520CAD553066E987BA56553066E987B81066E987BA56553066E987BA5606A900000000000000000000000000000000000000000000000000000095A7352F77020CDD30F727352F77020CDD30F7020CDD30F727352F77020CDD30F727352F77005520032B554CE6A5EEE095954CE6A5EEE0095954CE6A5EEE095954CE6A5EEE00AA52B4E6A5EEE0AA52B4E6A5EEE004E6A5EEE095954CE6A5EEE0958154CE6A5EEE095954CE6A5EEE0958154C19BA61EE95954C19BA61EE9581AA4CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE04E6A5EEE0AA52B4E6A5EEE0AA4195AAA60CDD30F74ACAA60CDD30F704ACD52656B54812B419BA61EEAA52B419BA61EEAA4195AD52656B54812B419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC154A569CD4BDDC154832B554C19BA61EE95954C19BA61EE0959AA4CAD6A9025683374C3DD54A5683374C3DD54832B5AA4CAD6A9025683374C3DC9CD4BDDC083374C3DC9CD4BDDC0083374C3DD54A5683374C3DD54832B554C19BA61EE95954C19BA61EE0419BA61EE95954C19BA61EE9581AA4000000000000000000000000000000000000000000000000000002569CD4BDDC083374C3DC9CD4BDDC083374C3DC083374C3DC9CD4BDDC083374C3DC9CD4BDDC0154800CAD55339A97BB825655339A97BB8025655339A97BB825655339A97BB802A94AD39A97BB82A94AD39A97BB80139A97BB825655339A97BB8256055339A97BB825655339A97BB82560553066E987BA56553066E987BA5606A932B5AA4CAD055339A97BB81066E987B939A97BB81066E987B8139A97BB82A94AD39A97BB82A90656AA983374C3DD2B2A983374C3DC12B354995AD5204AD066E987BAA94AD066E987BAA90656B54995AD5204AD066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77055295A7352F7705520CAD553066E987BA56553066E987B82566A932B5AA4095A0CDD30F755295A0CDD30F75520CAD6A932B5AA4095A0CDD30F727352F77020CDD30F727352F770020CDD30F755295A0CDD30F75520CAD553066E987BA56553066E987B81066E987BA56553066E987BA5606A900000000000000000000000000000000000000000000000000000095A7352F77020CDD30F727352F77020CDD30F7020CDD30F727352F77020CDD30F727352F77005520032B554CE6A5EEE095954CE6A5EEE0095954CE6A5EEE095954CE6A5EEE00AA52B4E6A5EEE0AA52B4E6A5EEE004E6A5EEE095954CE6A5EEE0958154CE6A5EEE095954CE6A5EEE0958154C19BA61EE95954C19BA61EE9581AA4CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE04E6A5EEE0AA52B4E6A5EEE0AA4195AAA60CDD30F74ACAA60CDD30F704ACD52656B54812B419BA61EEAA52B419BA61EEAA4195AD52656B54812B419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC083374C3DC9CD4BDDC083374C3DC154B2B5AA4CAD055339A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA904AD39A97BB8139A97BB8139A97BB8139A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77020CDD30F727352F77020CDD30F70552CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA412B4E6A5EEE04E6A5EEE04E6A5EEE04E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC083374C3DC9CD4BDDC083374C3DC154B2B5AA4CAD055339A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA904AD39A97BB8139A97BB8139A97BB8139A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77020CDD30F727352F77020CDD30F70552CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA412B4E6A5EEE04E6A5EEE04E6A5EEE04E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC083374C3DC9CD4BDDC083374C3DC154B2B5AA4CAD055339A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA904AD39A97BB8139A97BB8139A97BB8139A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77020CDD30F727352F77020CDD30F70552CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA412B4E6A5EEE04E6A5EEE04E6A5EEE04E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC083374C3DC9CD4BDDC083374C3DC154B2B5AA4CAD055339A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA904AD39A97BB8139A97BB8139A97BB8139A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77020CDD30F727352F77020CDD30F70552CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA412B4E6A5EEE04E6A5EEE04E6A5EEE04E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D520000000000000000000000000000000000000000000000000000012B4E6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00AA400656AA99CD4BDDC12B2A99CD4BDDC012B2A99CD4BDDC12B2A99CD4BDDC0154A569CD4BDDC154A569CD4BDDC009CD4BDDC12B2A99CD4BDDC12B02A99CD4BDDC12B2A99CD4BDDC12B02A983374C3DD2B2A983374C3DD2B0354995AD5265682A99CD4BDDC083374C3DC9CD4BDDC083374C3DC09CD4BDDC083374C3DC9CD4BDDC083374C3DC154B2B5AA4CAD055339A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB801066E987BAA94AD066E987BAA904AD39A97BB8139A97BB8139A97BB8139A97BB801066E987BAA94AD066E987BAA90656AA983374C3DD2B2A983374C3DC083374C3DD2B2A983374C3DD2B03548000000000000000000000000000000000000000000000000000004AD39A97BB81066E987B939A97BB81066E987B81066E987B939A97BB81066E987B939A97BB802A900195AAA67352F7704ACAA67352F77004ACAA67352F7704ACAA67352F770055295A7352F77055295A7352F770027352F7704ACAA67352F7704AC0AA67352F7704ACAA67352F7704AC0AA60CDD30F74ACAA60CDD30F74AC0D52656B54995A0AA67352F77020CDD30F727352F77020CDD30F7027352F77020CDD30F727352F77020CDD30F70552CAD6A932B4154CE6A5EEE0419BA61EE4E6A5EEE0419BA61EE0419BA61EE4E6A5EEE0419BA61EE4E6A5EEE00419BA61EEAA52B419BA61EEAA412B4E6A5EEE04E6A5EEE04E6A5EEE04E6A5EEE00419BA61EEAA52B419BA61EEAA4195AAA60CDD30F74ACAA60CDD30F7020CDD30F74ACAA60CDD30F74AC0D52000000000000000000000000000000000001FFFD9',X'FFD8FFE000104A46494600010100000100010000FFDB00430006040506050406060506070706080A100A0A09090A140E0F0C1017141818171416161A1D251F1A1B231C1616202C20232627292A29191F2D302D283025282928FFDB0043010707070A080A130A0A13281A161A2828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828282828FFC000110800D5014003012200021101031101FFC4001B00010101010101010100000000000000000006070805040102FFC40036100001000609030400060203010000000000010204050607030837387375B2B3B4357476111221B1131415223186235132416124FFC40014010100000000000000000000000000000000FFC40014110100000000000000000000000000000000FFDA000C03010002110311003F00EA9000000000000000000000000000000000000000000000000000000000000000000000000000000000000000000013330A3575C04E043E1F88694B226995A0FF00E7A3F7ADEE5BD7D3E3D51F1F093CF724CA71BE5AA18676455B11491150533431FBE85084215A24252B7BFE7F6A7E3E3F9216B85648AE6341F4B9252BFAF48BCA9E5A56037F76C54EF78C5AF98759D14FFA83A54A1A4684ACA7A29E94AAFB95F6A7D7E7E3F9F83CF9931FB9E5E3A599E2FF00435259DA29FF002EA7E5A890BADEEF6A56F942528F8F45524A413785995DA3B769248D75ECF5C99A2366900B38A27A4250D50B9695E2A3CD2ABD9828DE2CFF0084CC85BFC4BFAFA7BBF723D13F1FC7C9EF39265B89F2D70BB3B22ADBF8911505334317BE85084215A24252B7BFE7F6A7E13E9FC9C7B3E3A6CB3F1463FB58D6A57F5F917953CB4AC06FEFF8A9DEE27DB85D4DA8A74B53E6997A066FC353DCAFB95550B27DC9F5F847A27FF48277CFE839BE2B6787A8147AFE7E9DB1561512B33210A7E2257F623D53EEFE3D7FEFD0FEA6E5A84A8CC9A7690725C1F78073F9251F240EAB7FD6220B71BF5E0E96D51EC96A6168A466A5FC3654255F7A8B2554FA27DDF28F541F7BF67A426E472385E8D8A3CD2CCFAA15E999BF0D99095BDAAADED4FB91EEF84FAA7FF4E2F9BB6AD17E6ED5BAB15B35ACCA5365ED3BCA81D8332A65B8A5DB3BBE99FEAB62546E597568BF2D428A4F955084A7D7D528F4FF00920F81E537E1A77C5AE68769D5787EA0F6519D7674AB4084A9E94E9F453DC9F77C7FEFC7C192576BA34238AD3A28C948D6F0B2D7B773EA401D58D1153BE82356785D7453FEA74EC4B37A89429FE3FC3556F6A7D56F5FE7D7FEBD0838B27EC1F0BC48DCE47928F54B6B1D27E1527E13321657D7D109F84FB91EBFCFFA3F5ED79B7378CD36FA4E4EAC05B5C51DE234280766B54D58799A63D141348AB77EB348B28AAA9450A3F0BD57A345223F77AFFA4FFAFE4F7D9E2A77D3C6AD10BA88A7FD4E818956F5D2953FC7F86B2DED47A2DEBFCFAFFD7A1CD0FF00BE8B0633371106B8E9BCDBE7C66877D007BB1CCD487E0B895DAE27C2ADC96D6F5145E853414285D4F45974A88F54FAA3D3E5093DF79454EF77C5AE6875A114FF00A83D94A6A4674AAA7AA9E944AFB96F727D7E3E3F8F839A6B4F6DD05E033F29635B8D2F092DBB5796D01EE36CD487D9264D1C0F4AAB77EB548B28A2128A14268BD56A3F7A3F77AFFA4FFA3EF9911FB9E5EBA199E2FF00435259DA29FF002EA7E5E890BADEEF6A56F942528F8F455273D44B7D662C766E220ABAEB59E38F3446CD20176E99D50B3D218FD75994797E47F51A3767A2CCE842FF008CBA10957E3DDFF1F9FE7D4F418A6A43ED93269208A255BBF5AA35D751294D0A1145EAAD1A574FEEF5FF0048FF00472CCBCB0D4F99316854AF86AFAADB8ED3C5481D680000000000000000000000000000000000030FAE15922B98D07D2E494AFEBD22F2A796958ADAE15922B98D07D2E494AFEBD22F2A7969580D1209BC2CCAED1DBB49246BAF67AE4CD11B34857413785995DA3B769248D75ECF5C99A2366900C3A7C74D967E28C7F6B1AD4AFEBF22F2A796958C967C74D967E28C7F6B1AD4AFEBF22F2A7969580D126E5A84A8CC9A7690725C1F78073F9251F24EB49B96A12A33269DA41C9707DE01CFE4947C903C99BB6AD17E6ED5BAB15B35ACCA5365ED3BCA925376D5A2FCDDAB7562B66B5994A6CBDA77950357AED74684715A74519291ADE165AF6EE7D482AEBB5D1A11C569D1464A46B78596BDBB9F5200DC5ED79B7378CD36FA4E4EAC05B5C51DE23428758BDAF36E6F19A6DF49C9D580B6B8A3BC468500D55FF7D160C666E220D71D379B7CF8CD0EFA0C8DFF007D160C666E220D71D379B7CF8CD0EFA00C96B4F6DD05E033F29635B8D2F092DBB5796D192569EDBA0BC067E52C6B71A5E125B76AF2DA0325896FACC58ECDC441575D6B3C71E688D9A425225BEB3163B3711055D75ACF1C79A2366900C925E586A7CC98B42A57C357D56DC769E2A49097961A9F3262D0A95F0D5F55B71DA78A903AD00000000000000000000000000000000000061F5C2B245731A0FA5C9295FD7A45E54F2D2B15B5C2B245731A0FA5C9295FD7A45E54F2D2B01A2413785995DA3B769248D75ECF5C99A236690AE826F0B32BB476ED2491AEBD9EB933446CD201874F8E9B2CFC518FED635A95FD7E45E54F2D2B192CF8E9B2CFC518FED635A95FD7E45E54F2D2B01A24DCB509519934ED20E4B83EF00E7F24A3E49D69372D4254664D3B48392E0FBC039FC928F920793376D5A2FCDDAB7562B66B5994A6CBDA779524A6EDAB45F9BB56EAC56CD6B3294D97B4EF2A06AF5DAE8D08E2B4E8A325235BC2CB5EDDCFA9055D76BA34238AD3A28C948D6F0B2D7B773EA401B8BDAF36E6F19A6DF49C9D580B6B8A3BC46850EB17B5E6DCDE334DBE9393AB016D7147788D0A01AABFEFA2C18CCDC441AE3A6F36F9F19A1DF4191BFEFA2C18CCDC441AE3A6F36F9F19A1DF40192D69EDBA0BC067E52C6B71A5E125B76AF2DA324AD3DB741780CFCA58D6E34BC24B6ED5E5B4064B12DF598B1D9B8882AEBAD678E3CD11B3484A44B7D662C766E220ABAEB59E38F3446CD201924BCB0D4F99316854AF86AFAADB8ED3C549212F2C353E64C5A152BE1ABEAB6E3B4F152075A000000000000000000000000000000000000C3EB85648AE6341F4B9252BFAF48BCA9E5A562B6B85648AE6341F4B9252BFAF48BCA9E5A560344826F0B32BB476ED2491AEBD9EB933446CD215D04DE1665768EDDA49235D7B3D726688D9A4030E9F1D3659F8A31FDAC6B52BFAFC8BCA9E5A563259F1D3659F8A31FDAC6B52BFAFC8BCA9E5A5603449B96A12A33269DA41C9707DE01CFE4947C93AD26E5A84A8CC9A7690725C1F78073F9251F240F266EDAB45F9BB56EAC56CD6B3294D97B4EF2A494DDB568BF376ADD58AD9AD66529B2F69DE540D5EBB5D1A11C569D1464A46B78596BDBB9F520ABAED74684715A74519291ADE165AF6EE7D4803717B5E6DCDE334DBE9393AB016D7147788D0A1D62F6BCDB9BC669B7D27275602DAE28EF11A1403557FDF4583199B88835C74DE6DF3E3343BE83237FDF4583199B88835C74DE6DF3E3343BE80325AD3DB741780CFCA58D6E34BC24B6ED5E5B46495A7B6E82F019F94B1ADC6978496DDABCB680C9625BEB3163B3711055D75ACF1C79A23669094896FACC58ECDC441575D6B3C71E688D9A4032497961A9F3262D0A95F0D5F55B71DA78A92425E586A7CC98B42A57C357D56DC769E2A40EB400000000000000000000000000000000000187D70AC915CC683E9724A57F5E917953CB4AC56D70AC915CC683E9724A57F5E917953CB4AC068904DE1665768EDDA49235D7B3D726688D9A42BA09BC2CCAED1DBB49246BAF67AE4CD11B348061D3E3A6CB3F1463FB58D6A57F5F917953CB4AC64B3E3A6CB3F1463FB58D6A57F5F917953CB4AC0689372D4254664D3B48392E0FBC039FC928F9275A4DCB509519934ED20E4B83EF00E7F24A3E481E4CDDB568BF376ADD58AD9AD66529B2F69DE54929BB6AD17E6ED5BAB15B35ACCA5365ED3BCA81ABD76BA34238AD3A28C948D6F0B2D7B773EA41575DAE8D08E2B4E8A325235BC2CB5EDDCFA9006E2F6BCDB9BC669B7D27275602DAE28EF11A143AC5ED79B7378CD36FA4E4EAC05B5C51DE2342806AAFF00BE8B0633371106B8E9BCDBE7C66877D0646FFBE8B0633371106B8E9BCDBE7C66877D0064B5A7B6E82F019F94B1ADC6978496DDABCB68C92B4F6DD05E033F29635B8D2F092DBB5796D0192C4B7D662C766E220ABAEB59E38F3446CD212912DF598B1D9B8882AEBAD678E3CD11B34806492F2C353E64C5A152BE1ABEAB6E3B4F152484BCB0D4F99316854AF86AFAADB8ED3C5481D680000000000000000000000000000000000030FAE15922B98D07D2E494AFEBD22F2A796958ADAE15922B98D07D2E494AFEBD22F2A7969580D1209BC2CCAED1DBB49246BAF67AE4CD11B34857413785995DA3B769248D75ECF5C99A2366900C3A7C74D967E28C7F6B1AD4AFEBF22F2A796958C967C74D967E28C7F6B1AD4AFEBF22F2A7969580D126E5A84A8CC9A7690725C1F78073F9251F24EB49B96A12A33269DA41C9707DE01CFE4947C903C99BB6AD17E6ED5BAB15B35ACCA5365ED3BCA925376D5A2FCDDAB7562B66B5994A6CBDA77950357AED74684715A74519291ADE165AF6EE7D482AEBB5D1A11C569D1464A46B78596BDBB9F5200DC5ED79B7378CD36FA4E4EAC05B5C51DE23428758BDAF36E6F19A6DF49C9D580B6B8A3BC468500D55FF007D160C666E220D71D379B7CF8CD0EFA0C8DFF7D160C666E220D71D379B7CF8CD0EFA00C96B4F6DD05E033F29635B8D2F092DBB5796D192569EDBA0BC067E52C6B71A5E125B76AF2DA0325896FACC58ECDC441575D6B3C71E688D9A425225BEB3163B3711055D75ACF1C79A2366900C925E586A7CC98B42A57C357D56DC769E2A49097961A9F3262D0A95F0D5F55B71DA78A903AD00000000000000000000000000000000000061F5C2B245731A0FA5C9295FD7A45E54F2D2B15B5C2B245731A0FA5C9295FD7A45E54F2D2B01A2413785995DA3B769248D75ECF5C99A236690AE826F0B32BB476ED2491AEBD9EB933446CD201874F8E9B2CFC518FED635A95FD7E45E54F2D2B192CF8E9B2CFC518FED635A95FD7E45E54F2D2B01A24DCB509519934ED20E4B83EF00E7F24A3E49D69372D4254664D3B48392E0FBC039FC928F920793376D5A2FCDDAB7562B66B5994A6CBDA779524A6EDAB45F9BB56EAC56CD6B3294D97B4EF2A06AF5DAE8D08E2B4E8A325235BC2CB5EDDCFA9055D76BA34238AD3A28C948D6F0B2D7B773EA401B8BDAF36E6F19A6DF49C9D580B6B8A3BC46850EAF7D52294759A73269175554261AA64212B2508F9FC749CA9581A0A644E589E95345488A2FCE23F7A554FA7FC54FFB03517FDF4583199B88835C74DE6DF3E3343BE832288175515C977B425657F0134CCDE949EBFB53E8C88F5F44FF0006BAE84A1359B7C25094250986687E518E80325AD3DB741780CFCA58D6E34BC24B6ED5E5B46495A1FF003CEF8355A0FF002254A0A042C853F77A7A352DEBEBE9FC1AD46FFE39FD2E2997FDB44A32BC90B2E9F8551EB47F1EA9FE10064D12DF598B1D9B8882AEBAD678E3CD11B3484A44B7D662C766E220ABAEB59E38F3446CD201924BCB0D4F99316854AF86AFAADB8ED3C549212F2C353E64C5A152BE1ABEAB6E3B4F152075A000000000000000000000000000000000000C3EB85648AE6341F4B9252BFAF48BCA9E5A562B6B85648AE6341F4B9252BFAF48BCA9E5A560344826F0B32BB476ED2491AEBD9EB933446CD215D04DE1665768EDDA49235D7B3D726688D9A4030E9F1D3659F8A31FDAC6B52BFAFC8BCA9E5A563259F1D3659F8A31FDAC6B52BFAFC8BCA9E5A5603449B96A12A33269DA41C9707DE01CFE4947C93AD26E5A84A8CC9A7690725C1F78073F9251F240F266EDAB45F9BB56EAC56CD6B3294D97B4EF2A494DDB568BF376ADD58AD9AD66529B2F69DE540D5EBB5D1A11C569D1464A46B78596BDBB9F520ABAED74684715A74519291ADE165AF6EE7D4803D7AD45B6C1580CFCA58D66B5361EFEC466E42864D5A8B6D82B019F94B1ACD6A6C3DFD88CDC8500E628DAEF52D7BA796E9D0F2EADC7FA6B16B54E778DAEF52D7BA796E9D112EADC7FA6B16B540CF24D7C56C631F4F8FF002BC77906B75A7B137DE2B2F228CC924DDEC631C578EF20D6EB4D626FBC565E4518191C417D260C666E220ADAEB59E38F3446CD2125105F4983199B8882B6BAD678E3CD11B34806492F2C353E64C5A152BE1ABEAB6E3B4F152484BCB0D4F99316854AF86AFAADB8ED3C5481D680000000000000000000000000000000000030FAE15922B98D07D2E494AFEBD22F2A796958ADAE15922B98D07D2E494AFEBD22F2A7969580D1209BC2CCAED1DBB49246BAF67AE4CD11B34857413785995DA3B769248D75ECF5C99A2366900C3A7C74D967E28C7F6B1AD4AFEBF22F2A796958C967C74D967E28C7F6B1AD4AFEBF22F2A7969580D126E5A84A8CC9A7690725C1F78073F9251F24EB49B96A12A33269DA41C9707DE01CFE4947C903C99BB6AD17E6ED5BAB15B35ACCA5365ED3BCA925376D5A2FCDDAB7562B66B5994A6CBDA77950357AED74684715A74519291ADE165AF6EE7D482AEBB5D1A11C569D1464A46B78596BDBB9F5200F5EB516DB056033F296359AD4D87BFB119B90A19356A2DB60AC067E52C6B35A9B0F7F623372140398636BBD4B5EE9E5BA7444BAB71FE9AC5AD539DE36BBD4B5EE9E5BA7444BAB71FE9AC5AD5033C9377B18C715E3BC835BAD3589BEF1597914664926EF6318E2BC77906B75A6B137DE2B2F228C0C8E20BE9306333711056D75ACF1C79A23669092882FA4C18CCDC4415B5D6B3C71E688D9A4032497961A9F3262D0A95F0D5F55B71DA78A92425E586A7CC98B42A57C357D56DC769E2A40EB400000000000000000000000000000000000187D70AC915CC683E9724A57F5E917953CB4AC56D70AC915CC683E9724A57F5E917953CB4AC068904DE1665768EDDA49235D7B3D726688D9A42BA09BC2CCAED1DBB49246BAF67AE4CD11B348061D3E3A6CB3F1463FB58D6A57F5F917953CB4AC64B3E3A6CB3F1463FB58D6A57F5F917953CB4AC0689372D4254664D3B48392E0FBC039FC928F9275A4DCB509519934ED20E4B83EF00E7F24A3E481E4CDDB568BF376ADD58AD9AD66529B2F69DE54929BB6AD17E6ED5BAB15B35ACCA5365ED3BCA81ABD76BA34238AD3A28C948D6F0B2D7B773EA41575DAE8D08E2B4E8A325235BC2CB5EDDCFA9007AF5A8B6D82B019F94B1ACD6A6C3DFD88CDC850C9AB516DB056033F296359AD4D87BFB119B90A01CC31B5DEA5AF74F2DD3A225D5B8FF4D62D6A9CEF1B5DEA5AF74F2DD3A225D5B8FF004D62D6A819E49BBD8C638AF1DE41ADD69AC4DF78ACBC8A33249377B18C715E3BC835BAD3589BEF159791460647105F4983199B8882B6BAD678E3CD11B348494417D260C666E220ADAEB59E38F3446CD201924BCB0D4F99316854AF86AFAADB8ED3C549212F2C353E64C5A152BE1ABEAB6E3B4F152075A000000000000000000000000000000000000C3EB85648AE6341F4B9252BFAF48BCA9E5A562B6B85648AE6341F4B9252BFAF48BCA9E5A560344826F0B32BB476ED2491AEBD9EB933446CD215D04DE1665768EDDA49235D7B3D726688D9A4030E9F1D3659F8A31FDAC6B52BFAFC8BCA9E5A563259F1D3659F8A31FDAC6B52BFAFC8BCA9E5A5603449B96A12A33269DA41C9707DE01CFE4947C93AD26E5A84A8CC9A7690725C1F78073F9251F240F266EDAB45F9BB56EAC56CD6B3294D97B4EF2A494DDB568BF376ADD58AD9AD66529B2F69DE540D5EBB5D1A11C569D1464A46B78596BDBB9F520ABAED74684715A74519291ADE165AF6EE7D4803D7AD45B6C1580CFCA58D66B5361EFEC466E42864D5A8B6D82B019F94B1ACD6A6C3DFD88CDC8500E618DAEF52D7BA796E9D112EADC7FA6B16B54E778DAEF52D7BA796E9D112EADC7FA6B16B540CF24DDEC631C578EF20D6EB4D626FBC565E45199249BBD8C638AF1DE41ADD69AC4DF78ACBC8A30323882FA4C18CCDC4415B5D6B3C71E688D9A424A20BE9306333711056D75ACF1C79A2366900C925E586A7CC98B42A57C357D56DC769E2A49097961A9F3262D0A95F0D5F55B71DA78A903AD00000000000000000000000000000000000061F5C2B245731A0FA5C9295FD7A45E54F2D2B15B5C2B245731A0FA5C9295FD7A45E54F2D2B01A2413785995DA3B769248D75ECF5C99A236690AE826F0B32BB476ED2491AEBD9EB933446CD201874F8E9B2CFC518FED635A95FD7E45E54F2D2B192CF8E9B2CFC518FED635A95FD7E45E54F2D2B01A24DCB509519934ED20E4B83EF00E7F24A3E49D69372D4254664D3B48392E0FBC039FC928F920793376D5A2FCDDAB7562B66B5994A6CBDA779524A6EDAB45F9BB56EAC56CD6B3294D97B4EF2A06AF5DAE8D08E2B4E8A325235BC2CB5EDDCFA9055D76BA34238AD3A28C948D6F0B2D7B773EA401EBD6A2DB60AC067E52C6B35A9B0F7F62337214326AD45B6C1580CFCA58D66B5361EFEC466E4280730C6D77A96BDD3CB74E889756E3FD358B5AA73BC6D77A96BDD3CB74E889756E3FD358B5AA067926EF6318E2BC77906B75A6B137DE2B2F228CC924DDEC631C578EF20D6EB4D626FBC565E4518191C417D260C666E220ADAEB59E38F3446CD2125105F4983199B8882B6BAD678E3CD11B34806492F2C353E64C5A152BE1ABEAB6E3B4F152484BCB0D4F99316854AF86AFAADB8ED3C5481D680000000000000000000000000000000000030FAE15922B98D07D2E494AFEBD22F2A79695800344826F0B32BB476ED2491AEBD9EB933446CD200061D3E3A6CB3F1463FB58D6A57F5F917953CB4AC001A24DCB509519934ED20E4B83EF00E7F24A3E4800793376D5A2FCDDAB7562B66B5994A6CBDA7795000D5EBB5D1A11C569D1464A46B78596BDBB9F520003D7AD45B6C1580CFCA58D66B5361EFEC466E428001CC31B5DEA5AF74F2DD3A225D5B8FF004D62D6A80067926EF6318E2BC77906B75A6B137DE2B2F228C00323882FA4C18CCDC4415B5D6B3C71E688D9A4000C925E586A7CC98B42A57C357D56DC769E2A4003AD0000000000000000000000007FFFD9');
CREATE TABLE racks (
	n INTEGER NOT NULL, 
	name VARCHAR(64) NOT NULL, 
	aisle INTEGER NOT NULL, 
	start FLOAT NOT NULL, 
	CONSTRAINT pk_racks PRIMARY KEY (n), 
	CONSTRAINT uq_racks_name UNIQUE (name)
);
INSERT INTO "racks" VALUES(1,'A',0,0.0);
INSERT INTO "racks" VALUES(2,'B',0,0.0);
INSERT INTO "racks" VALUES(3,'C',0,1.2192);
INSERT INTO "racks" VALUES(4,'D',0,1.2192);
CREATE TABLE resolutions (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	stocktake VARCHAR(64) NOT NULL, 
	finding TEXT NOT NULL, 
	how VARCHAR(24) NOT NULL, 
	reason TEXT NOT NULL, 
	who TEXT NOT NULL, 
	at VARCHAR(32) NOT NULL, 
	undo TEXT NOT NULL, 
	CONSTRAINT pk_resolutions PRIMARY KEY (n), 
	CONSTRAINT uq_resolutions_id UNIQUE (id), 
	CONSTRAINT fk_resolutions_stocktake FOREIGN KEY(stocktake) REFERENCES stocktakes (id)
);
INSERT INTO "resolutions" VALUES(1,'950e5635e1a71bff.elsewhere-S012','950e5635e1a71bff','{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}','put_right','','owner','2026-03-02T16:00:00.000000+00:00','{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-1", false, "2026-03-02T15:46:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "504e57fb195bc132", "item": "8294e193c8528638", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "4a305c91f32bc608", "order": "5575557ee0b38dca", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "504e57fb195bc132", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true, "2026-03-02T16:00:00+00:00", null], "out": null, "fetch": null, "twin": false}, "Stay": {"id": "504e57fb195bc132", "item": "8294e193c8528638", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "4a305c91f32bc608", "order": "5575557ee0b38dca", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "504e57fb195bc132", "state": "waiting", "holds": [], "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO "resolutions" VALUES(2,'950e5635e1a71bff.unknown-Q0771','950e5635e1a71bff','{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}','ignore','A neighbour''s','owner','2026-03-02T16:03:00.000000+00:00','{"before": {}, "after": {}, "doubts": {"added": [], "ended": []}, "to": null}');
INSERT INTO "resolutions" VALUES(3,'c73b6921ecce590d.missing-L008','c73b6921ecce590d','{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}','lost','','owner','2026-03-02T16:25:00.000000+00:00','{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f6cbf59f194a43d9", "item": "554cd9f72e2dc6c3", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "f6cbf59f194a43d9", "item": "554cd9f72e2dc6c3", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "doubts": {"added": ["efd90d70c0aaf32a"], "ended": []}, "to": null}');
INSERT INTO "resolutions" VALUES(4,'c73b6921ecce590d.missing-L009','c73b6921ecce590d','{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}','withdraw','Nowhere to be found','owner','2026-03-02T16:28:00.000000+00:00','{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2774e4f2fb64ecda", "item": "e164140f43b4fbca", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null, "out": null, "fetch": null, "twin": false}, "Stay": {"id": "2774e4f2fb64ecda", "item": "e164140f43b4fbca", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "doubts": {"added": [], "ended": []}, "to": null}');
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'7211bb10e3d2d356','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'5e1f5fbbf1df66c6','2026-03-02T15:07:00.000000+00:00','open');
CREATE TABLE scans (
	n INTEGER NOT NULL, 
	"key" VARCHAR(64) NOT NULL, 
	body VARCHAR(64) NOT NULL, 
	station VARCHAR(24) NOT NULL, 
	spot VARCHAR(64) NOT NULL, 
	code VARCHAR(64), 
	take_out BOOLEAN NOT NULL, 
	accepted BOOLEAN NOT NULL, 
	changed BOOLEAN NOT NULL, 
	line VARCHAR(64), 
	parcel VARCHAR(64), 
	answer TEXT NOT NULL, 
	was TEXT NOT NULL, at VARCHAR(32), stood TEXT DEFAULT '' NOT NULL, 
	CONSTRAINT pk_scans PRIMARY KEY (n), 
	CONSTRAINT uq_scans_key UNIQUE ("key")
);
INSERT INTO "scans" VALUES(1,'free-D004','ab67e5e007a52280b550a119ff2e6d3a396b8383cd2c6d7c5f8943d458bffc45','bin','7211bb10e3d2d356','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','','2026-03-02T13:11:00.000000+00:00','');
INSERT INTO "scans" VALUES(2,'pick-W001','aa122a8f78bece2dd959066dd559c9a8c3faf407fe670f5cf1c18aae5778005d','bin','7211bb10e3d2d356','W001',0,1,1,'11fd8b7ee2aa0517',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "f0c8d38afac58ba0", "order_number": "B-01", "line": "11fd8b7ee2aa0517", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:14:00.000000+00:00','["on_item", ["d1031a7a67eb0a5e", "stored"], ["11fd8b7ee2aa0517", "picked", null, []], null]');
INSERT INTO "scans" VALUES(3,'pick-W002','25f6e55a5d4d86b7efa904f86a0558534f12896490b5c3ea4f1dd1d7b2ba3a88','bin','7211bb10e3d2d356','W002',0,1,1,'ab8e5a5cb038d402',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "f0c8d38afac58ba0", "order_number": "B-01", "line": "ab8e5a5cb038d402", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:17:00.000000+00:00','["on_item", ["e9cdfa9b3bffd9e3", "stored"], ["ab8e5a5cb038d402", "picked", null, []], null]');
INSERT INTO "scans" VALUES(4,'pick-S002','9035f8ee5219273d2b48f9c683a0c5a450ef7ce8b86bedb0e498e1adff8af788','bin','7211bb10e3d2d356','S002',0,1,1,'a32c5c8525d9192e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "543ce55704d22e6e", "order_number": "B-03", "line": "a32c5c8525d9192e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:20:00.000000+00:00','["on_item", ["823e3359c55ea8f2", "stored"], ["a32c5c8525d9192e", "picked", null, []], null]');
INSERT INTO "scans" VALUES(5,'pick-S003','3a489a8e5e5ca74bfd95d2e9b84e1a28930b5bfed3d3729f8cff3fc1165d6e69','bin','7211bb10e3d2d356','S003',0,1,1,'aaf1cec3fdc6e1a9',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "543ce55704d22e6e", "order_number": "B-03", "line": "aaf1cec3fdc6e1a9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:23:00.000000+00:00','["on_item", ["efb5bf294eb3285a", "stored"], ["aaf1cec3fdc6e1a9", "picked", null, []], null]');
INSERT INTO "scans" VALUES(6,'pick-S004','01190cb47bc1738ddda58646a68689ec4a8a151ec4600261c957a50efc44f307','bin','7211bb10e3d2d356','S004',0,1,1,'76ef68a672d488d2',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "3859b9c6307a26ec", "order_number": "B-04", "line": "76ef68a672d488d2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:26:00.000000+00:00','["on_item", ["8fe096d7c294d931", "stored"], ["76ef68a672d488d2", "picked", null, []], null]');
INSERT INTO "scans" VALUES(7,'pick-S005','68cc19881c735b2ee558c38c9720926b49e1fb4ba38dbc9f5a6348476dab292c','bin','7211bb10e3d2d356','S005',0,1,1,'486ac2eeaaca8139',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "3859b9c6307a26ec", "order_number": "B-04", "line": "486ac2eeaaca8139", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:29:00.000000+00:00','["on_item", ["6e7e1dc01869a781", "stored"], ["486ac2eeaaca8139", "picked", null, []], null]');
INSERT INTO "scans" VALUES(8,'pick-L006','2d0ac528ec237a1d748f6255b8e3bc9091f3e1c45c30b1971f5ec0e17b862f14','bin','7211bb10e3d2d356','L006',0,1,1,'d7dec1ab9bb5ae7e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "9d857796558327f8", "order_number": "B-09", "line": "d7dec1ab9bb5ae7e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:32:00.000000+00:00','["on_item", ["03a53ba4df41cab1", "stored"], ["d7dec1ab9bb5ae7e", "picked", null, []], null]');
INSERT INTO "scans" VALUES(9,'pick-L011','c6fac359e21ccaa93e2b6dfd093c040bc797f9e4c30f17a91dc11e08e683dac2','bin','7211bb10e3d2d356','L011',0,1,1,'79fef866f5547acc',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "9d857796558327f8", "order_number": "B-09", "line": "79fef866f5547acc", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:35:00.000000+00:00','["on_item", ["3fa0d3d9ad271eff", "stored"], ["79fef866f5547acc", "picked", null, []], null]');
INSERT INTO "scans" VALUES(10,'pick-S006','61a0700e75dbd710047d7f111e56faf66ec32871a63003aec9398190975c2ca2','bin','7211bb10e3d2d356','S006',0,1,1,'2c3ebbdf87dc4663',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "e52d01cfa7941f16", "order_number": "B-13", "line": "2c3ebbdf87dc4663", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:38:00.000000+00:00','["on_item", ["a47225471e5d6e2d", "stored"], ["2c3ebbdf87dc4663", "picked", null, []], null]');
INSERT INTO "scans" VALUES(11,'pick-S007','b804f7281f3f5d82bcb6efd40d5b5fdfd5205e8e0996174b0bb6e237a12f16ca','bin','7211bb10e3d2d356','S007',0,1,1,'08037630b415868c',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "1ceed93a9163b681", "order_number": "B-22", "line": "08037630b415868c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:41:00.000000+00:00','["on_item", ["009b812f19342470", "stored"], ["08037630b415868c", "picked", null, []], null]');
INSERT INTO "scans" VALUES(12,'pick-W007','040bfe4ff656f799c95c100ee487affc26e36ff48980696c2ef4e33d43a01182','bin','7211bb10e3d2d356','W007',0,1,1,'767486754a8f4f93',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ba8d5a134d27079a", "order_number": "B-23", "line": "767486754a8f4f93", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:44:00.000000+00:00','["on_item", ["be704f4a27bfb610", "stored"], ["767486754a8f4f93", "picked", null, []], null]');
INSERT INTO "scans" VALUES(13,'pick-W008','5624d0a84bd37817aca91c1b8ba28fd53056ced8d662c02bc0891df12b8dc9f6','bin','7211bb10e3d2d356','W008',0,1,1,'96f3b784404a756b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "ba8d5a134d27079a", "order_number": "B-23", "line": "96f3b784404a756b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T13:47:00.000000+00:00','["on_item", ["553ea3c7c6fccabf", "stored"], ["96f3b784404a756b", "picked", null, []], null]');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'a32c5c8525d9192e','8c68207009239465','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "543ce55704d22e6e", "order_number": "B-03", "line": "a32c5c8525d9192e", "line_state": "picked", "order_state": "picking", "parcel": "8c68207009239465", "parcel_state": "open", "released": []}','','2026-03-02T13:59:00.000000+00:00','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'11fd8b7ee2aa0517','8c68207009239465','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "f0c8d38afac58ba0", "order_number": "B-01", "line": "11fd8b7ee2aa0517", "line_state": "packed", "order_state": "picking", "parcel": "8c68207009239465", "parcel_state": "open", "released": []}','picked','2026-03-02T14:02:00.000000+00:00','["on_item", ["d1031a7a67eb0a5e", "stored"], ["11fd8b7ee2aa0517", "packed", "8c68207009239465", []], ["8c68207009239465", "2026-03-02T13:56:00+00:00"]]');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'ab8e5a5cb038d402','8c68207009239465','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "f0c8d38afac58ba0", "order_number": "B-01", "line": "ab8e5a5cb038d402", "line_state": "released", "order_state": "released", "parcel": "8c68207009239465", "parcel_state": "closed", "released": ["W001", "W002"]}','picked','2026-03-02T14:05:00.000000+00:00','["due", ["e9cdfa9b3bffd9e3", "shipped"], ["ab8e5a5cb038d402", "released", "8c68207009239465", []], null]');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'11fd8b7ee2aa0517',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "f0c8d38afac58ba0", "order_number": "B-01", "line": "11fd8b7ee2aa0517", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','','2026-03-02T14:08:00.000000+00:00','["tray", ["d1031a7a67eb0a5e", "shipped"], ["11fd8b7ee2aa0517", "released", "8c68207009239465", []], null]');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'767486754a8f4f93','2048f519f9f313b0','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ba8d5a134d27079a", "order_number": "B-23", "line": "767486754a8f4f93", "line_state": "packed", "order_state": "waiting", "parcel": "2048f519f9f313b0", "parcel_state": "open", "released": []}','picked','2026-03-02T14:22:00.000000+00:00','["on_item", ["be704f4a27bfb610", "stored"], ["767486754a8f4f93", "packed", "2048f519f9f313b0", []], ["2048f519f9f313b0", "2026-03-02T14:19:00+00:00"]]');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'76ef68a672d488d2','5ba273e4705119ef','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "3859b9c6307a26ec", "order_number": "B-04", "line": "76ef68a672d488d2", "line_state": "packed", "order_state": "picking", "parcel": "5ba273e4705119ef", "parcel_state": "open", "released": []}','picked','2026-03-02T14:43:00.000000+00:00','["on_item", ["8fe096d7c294d931", "stored"], ["76ef68a672d488d2", "packed", "5ba273e4705119ef", []], ["5ba273e4705119ef", "2026-03-02T14:40:00+00:00"]]');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'d7dec1ab9bb5ae7e','45e1b3a6aa44e34a','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "9d857796558327f8", "order_number": "B-09", "line": "d7dec1ab9bb5ae7e", "line_state": "packed", "order_state": "picking", "parcel": "45e1b3a6aa44e34a", "parcel_state": "open", "released": []}','picked','2026-03-02T14:52:00.000000+00:00','["on_item", ["03a53ba4df41cab1", "stored"], ["d7dec1ab9bb5ae7e", "packed", "45e1b3a6aa44e34a", []], ["45e1b3a6aa44e34a", "2026-03-02T14:49:00+00:00"]]');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'a32c5c8525d9192e','9d81b8f9f1b86e10','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "543ce55704d22e6e", "order_number": "B-03", "line": "a32c5c8525d9192e", "line_state": "packed", "order_state": "picking", "parcel": "9d81b8f9f1b86e10", "parcel_state": "open", "released": []}','picked','2026-03-02T15:01:00.000000+00:00','["on_item", ["823e3359c55ea8f2", "stored"], ["a32c5c8525d9192e", "packed", "9d81b8f9f1b86e10", []], ["9d81b8f9f1b86e10", "2026-03-02T14:58:00+00:00"]]');
INSERT INTO "scans" VALUES(22,'pick-L002','79670b9e3a78673b35639b320ed865f144d5203d23a94cc0cfea6e49adb34426','bin','5e1f5fbbf1df66c6','L002',0,1,1,'a4d104ac96d2db0f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "f743c07a6ad24ada", "order_number": "B-05", "line": "a4d104ac96d2db0f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting','2026-03-02T15:10:00.000000+00:00','["on_item", ["91f5157057ee6324", "stored"], ["a4d104ac96d2db0f", "picked", null, []], null]');
INSERT INTO "scans" VALUES(23,'bad-D0146','aa51fd96bc5beb2d72f28260641cbef28e0d7af1995f36779a5e9f41ba533944','bin','5e1f5fbbf1df66c6',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','','2026-03-02T15:16:00.000000+00:00','');
INSERT INTO "scans" VALUES(24,'bad-hello','47555aa6b6b9ec006773b587bc7316b45530be3dd71e1d040690663fd7ecb66a','bin','5e1f5fbbf1df66c6',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','','2026-03-02T15:19:00.000000+00:00','');
INSERT INTO "scans" VALUES(25,'bad-','0e405bbee1a6b55d94bed2bad355191fe7e9dc047e37738f9739f5f04287bb4c','bin','5e1f5fbbf1df66c6',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','','2026-03-02T15:22:00.000000+00:00','');
CREATE TABLE sections (
	n INTEGER NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	name TEXT NOT NULL, 
	slots_per_bin INTEGER NOT NULL, 
	colour TEXT NOT NULL, 
	digits INTEGER NOT NULL, 
	last INTEGER NOT NULL, 
	CONSTRAINT pk_sections PRIMARY KEY (n), 
	CONSTRAINT uq_sections_code UNIQUE (code)
);
INSERT INTO "sections" VALUES(1,'D','Derailleurs',10,'yellow',3,30);
INSERT INTO "sections" VALUES(2,'S','Saddles',10,'pink',3,15);
INSERT INTO "sections" VALUES(3,'L','Lamps',10,'green',3,15);
INSERT INTO "sections" VALUES(4,'W','Wheels',10,'blue',3,15);
CREATE TABLE slots (
	n INTEGER NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	section VARCHAR(64) NOT NULL, 
	number INTEGER NOT NULL, 
	bin VARCHAR(64) NOT NULL, 
	turns INTEGER NOT NULL, 
	card VARCHAR(24) NOT NULL, 
	seen_station VARCHAR(24), 
	seen_place VARCHAR(64), 
	seen_accepted BOOLEAN, seen_at VARCHAR(32), seen_parcel VARCHAR(64), out_station VARCHAR(24), out_place VARCHAR(64), out_round VARCHAR(64), out_basket INTEGER, fetch_by TEXT, fetch_until VARCHAR(32), twin BOOLEAN DEFAULT 0 NOT NULL, 
	CONSTRAINT pk_slots PRIMARY KEY (n), 
	CONSTRAINT fk_slots_bin FOREIGN KEY(bin) REFERENCES bins (name), 
	CONSTRAINT fk_slots_section FOREIGN KEY(section) REFERENCES sections (code), 
	CONSTRAINT uq_slots_code UNIQUE (code)
);
INSERT INTO "slots" VALUES(1,'D001','D',1,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(2,'D002','D',2,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(3,'D003','D',3,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(4,'D004','D',4,'A-1-1',1,'on_item','bin','',0,'2026-03-02T13:11:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(5,'D005','D',5,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(6,'D006','D',6,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(7,'D007','D',7,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(8,'D008','D',8,'A-1-1',1,'due',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(9,'D009','D',9,'A-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(10,'D010','D',10,'A-1-1',1,'on_item','shelf','B-1-1',0,'2026-03-02T15:46:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(11,'D011','D',11,'A-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(12,'D012','D',12,'A-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(13,'D013','D',13,'A-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(14,'D014','D',14,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(15,'D015','D',15,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(16,'D016','D',16,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(17,'D017','D',17,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(18,'D018','D',18,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(19,'D019','D',19,'A-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(20,'D020','D',20,'A-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(21,'D021','D',21,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(22,'D022','D',22,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(23,'D023','D',23,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(24,'D024','D',24,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(25,'D025','D',25,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(26,'D026','D',26,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(27,'D027','D',27,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(28,'D028','D',28,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(29,'D029','D',29,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(30,'D030','D',30,'A-1-3',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(31,'S001','S',1,'B-1-1',1,'on_item','shelf','B-1-1',0,'2026-03-02T15:46:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(32,'S002','S',2,'B-1-1',1,'on_item','table','main',1,'2026-03-02T15:01:00.000000+00:00','9d81b8f9f1b86e10','bin','B-1-1','7211bb10e3d2d356',2,NULL,NULL,0);
INSERT INTO "slots" VALUES(33,'S003','S',3,'B-1-1',1,'on_item','shelf','B-1-1',0,'2026-03-02T15:46:00.000000+00:00',NULL,'bin','B-1-1','7211bb10e3d2d356',2,NULL,NULL,0);
INSERT INTO "slots" VALUES(34,'S004','S',4,'B-1-1',1,'on_item','table','main',1,'2026-03-02T14:43:00.000000+00:00','5ba273e4705119ef','bin','B-1-1','7211bb10e3d2d356',3,NULL,NULL,0);
INSERT INTO "slots" VALUES(35,'S005','S',5,'B-1-1',1,'on_item','bin','B-1-1',1,'2026-03-02T13:29:00.000000+00:00',NULL,'bin','B-1-1','7211bb10e3d2d356',3,NULL,NULL,0);
INSERT INTO "slots" VALUES(36,'S006','S',6,'B-1-1',1,'on_item','bin','B-1-1',1,'2026-03-02T13:38:00.000000+00:00',NULL,'bin','B-1-1','7211bb10e3d2d356',5,NULL,NULL,0);
INSERT INTO "slots" VALUES(37,'S007','S',7,'B-1-1',1,'on_item','bin','B-1-1',1,'2026-03-02T13:41:00.000000+00:00',NULL,'bin','B-1-1','7211bb10e3d2d356',6,NULL,NULL,0);
INSERT INTO "slots" VALUES(38,'S008','S',8,'B-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(39,'S009','S',9,'B-1-1',1,'due',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(40,'S010','S',10,'B-1-1',1,'due',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(41,'S011','S',11,'B-1-2',1,'on_item','shelf','B-1-2',0,'2026-03-02T15:54:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(42,'S012','S',12,'B-1-2',1,'on_item','shelf','B-1-2',1,'2026-03-02T16:00:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(43,'S013','S',13,'B-1-2',1,'on_item','shelf','B-1-2',0,'2026-03-02T15:54:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(44,'S014','S',14,'B-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(45,'S015','S',15,'B-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(46,'L001','L',1,'C-1-1',1,'lost',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(47,'L002','L',2,'C-1-1',1,'on_item','bin','C-1-1',1,'2026-03-02T15:10:00.000000+00:00',NULL,'bin','C-1-1','5e1f5fbbf1df66c6',1,NULL,NULL,0);
INSERT INTO "slots" VALUES(48,'L003','L',3,'C-1-1',1,'on_item','shelf','C-1-1',0,'2026-03-02T16:22:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(49,'L004','L',4,'C-1-1',1,'on_item','shelf','C-1-1',0,'2026-03-02T16:22:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(50,'L005','L',5,'C-1-1',1,'on_item','shelf','C-1-1',0,'2026-03-02T16:22:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(51,'L006','L',6,'C-1-1',1,'on_item','table','second',1,'2026-03-02T14:52:00.000000+00:00','45e1b3a6aa44e34a','bin','C-1-1','7211bb10e3d2d356',4,NULL,NULL,0);
INSERT INTO "slots" VALUES(52,'L007','L',7,'C-1-1',1,'on_item','shelf','C-1-1',0,'2026-03-02T16:22:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(53,'L008','L',8,'C-1-1',1,'lost',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(54,'L009','L',9,'C-1-1',1,'due',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(55,'L010','L',10,'C-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(56,'L011','L',11,'C-1-2',1,'on_item','bin','C-1-2',1,'2026-03-02T13:35:00.000000+00:00',NULL,'bin','C-1-2','7211bb10e3d2d356',4,NULL,NULL,0);
INSERT INTO "slots" VALUES(57,'L012','L',12,'C-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(58,'L013','L',13,'C-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(59,'L014','L',14,'C-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(60,'L015','L',15,'C-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(61,'W001','W',1,'D-1-1',2,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(62,'W002','W',2,'D-1-1',1,'due','table','main',1,'2026-03-02T14:05:00.000000+00:00','8c68207009239465',NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(63,'W003','W',3,'D-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(64,'W004','W',4,'D-1-1',1,'due',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(65,'W005','W',5,'D-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(66,'W006','W',6,'D-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(67,'W007','W',7,'D-1-1',1,'due','table','main',1,'2026-03-02T14:22:00.000000+00:00','2048f519f9f313b0',NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(68,'W008','W',8,'D-1-1',1,'on_item','bin','D-1-1',1,'2026-03-02T13:47:00.000000+00:00',NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(69,'W009','W',9,'D-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(70,'W010','W',10,'D-1-1',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(71,'W011','W',11,'D-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(72,'W012','W',12,'D-1-2',1,'on_item',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(73,'W013','W',13,'D-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(74,'W014','W',14,'D-1-2',0,'tray',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
INSERT INTO "slots" VALUES(75,'W015','W',15,'D-1-2',0,'lost',NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,NULL,0);
CREATE TABLE stays (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	item VARCHAR(64) NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	turn INTEGER NOT NULL, 
	began VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	ended VARCHAR(32), 
	reason TEXT NOT NULL, 
	CONSTRAINT pk_stays PRIMARY KEY (n), 
	CONSTRAINT fk_stays_code FOREIGN KEY(code) REFERENCES slots (code), 
	CONSTRAINT fk_stays_item FOREIGN KEY(item) REFERENCES items (id), 
	CONSTRAINT uq_stays_id UNIQUE (id)
);
INSERT INTO "stays" VALUES(1,'bad1f21255171ada','8d5e04077a3d2491','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'3b0984f36b983e9d','d3daeaa13ceae315','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'a79d76583b073fd2','825ca850bd15294f','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'ab989f07a58ad369','f6dfda11cfd00fce','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'1a625b884e17bc1a','3296f1bd2349c307','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'037b7a08e28bf633','da13c8d4d034e714','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'dcb28540e8534ced','45fb008ef93d5c11','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'362ed1a3f9e74380','efa71be2bea98ac0','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'8765fadb5d3940c0','9f812d5d5b71d91f','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'455143624ba5d82f','019faf03363a8755','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'55d3d35892d831f4','6ceb41a9f191411e','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'cacfd3708ea52c5c','66aeaf9544a4df61','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'c09683c1a625989a','58ccd86c0a67fe73','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'823e3359c55ea8f2','52a99e7f9c38caf4','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'efb5bf294eb3285a','b3ce48cd8ef0f106','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'8fe096d7c294d931','002a0ee9b5c295a7','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'6e7e1dc01869a781','08ce623a60e25c80','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'a47225471e5d6e2d','8071b61dc5845833','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'009b812f19342470','da7e0bd42fd8722a','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'ef5738c06e1f1635','155a1c770078f941','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'8056c4a0a2e66eb5','de94b42a305e9b87','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'5ff0a5cce4f1c4c7','7a2fe757f0744b0d','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'20574c0675287108','9bb7cd9bae657121','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'504e57fb195bc132','8294e193c8528638','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'539e3255bd6aca03','e451a1bdce83a956','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'91f5157057ee6324','c3439a3eac47ef0b','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'45653bbf3065ef80','1d43b1281013dbbe','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'9a0d14e07d21de5b','6712a6b1ad3528d6','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'8ee7f4a376721f6c','fb0f1ab5ac9862c0','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'03a53ba4df41cab1','9f214b3885b1df0e','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'dc09fc39173a0222','7806c5d39ce0d24b','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'f6cbf59f194a43d9','554cd9f72e2dc6c3','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'2774e4f2fb64ecda','e164140f43b4fbca','L009',1,'2026-03-02T10:11:00.000000+00:00','withdrawn','2026-03-02T16:28:00.000000+00:00','Nowhere to be found');
INSERT INTO "stays" VALUES(34,'2a330e8b4acfa662','8f908eca0f96a94f','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'3fa0d3d9ad271eff','50c362e5f183e2a2','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'c43654d033dd754f','c57c296441ee7f1e','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'d1031a7a67eb0a5e','8ece7871818a0fa8','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'e9cdfa9b3bffd9e3','27a7c7334bf6724b','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'d54772ff382f2fd5','7faa1acc2e349fed','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'95466e21e88ea89e','7ea4acdd5f6934bc','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'413462d9d25c421f','0d2e7cdb6756342f','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'ff881e8e3beecfc8','95a7f18094bb03bf','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'be704f4a27bfb610','870d8cef8c5833e7','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'553ea3c7c6fccabf','c86b5a8f2bbf42d7','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'18b25498c3c46c9c','9ff6f3d1a678f94a','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'fd073626a4d24431','bd160771b59e9d1c','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'60dd09d3b910485d','29eb0b41d65393fb','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'02f75acc98fb783b','520cf80deb070e90','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'aa6b1edaf59589ad','1184406a6cd29d04','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'ebe31314b67272a8','de94b42a305e9b87','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'210933db8108e7a5','efa71be2bea98ac0','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'12b9633079ac0a09','0ed9c4138d57b687','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
CREATE TABLE stocktakes (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	area VARCHAR(64) NOT NULL, 
	note TEXT NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	seq INTEGER NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	closed VARCHAR(32), 
	report TEXT NOT NULL, sample TEXT, 
	CONSTRAINT pk_stocktakes PRIMARY KEY (n), 
	CONSTRAINT uq_stocktakes_id UNIQUE (id)
);
INSERT INTO "stocktakes" VALUES(1,'950e5635e1a71bff','section:S','Spring','2026-03-02T15:39:00.000000+00:00',156,'closed','2026-03-02T16:12:00.000000+00:00','{"stocktake": "950e5635e1a71bff", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}',NULL);
INSERT INTO "stocktakes" VALUES(2,'c73b6921ecce590d','section:L','Spring','2026-03-02T16:15:00.000000+00:00',166,'open',NULL,'',NULL);
INSERT INTO "stocktakes" VALUES(3,'e6d3c3de597cb8ed','section:D','','2026-03-02T16:31:00.000000+00:00',173,'open',NULL,'','{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO "stocktakes" VALUES(4,'f4cfa3f6e52b28a1','tray','Too late today','2026-03-02T16:34:00.000000+00:00',174,'cancelled','2026-03-02T16:37:00.000000+00:00','',NULL);
CREATE TABLE stops (
	n INTEGER NOT NULL, 
	round VARCHAR(64) NOT NULL, 
	position INTEGER NOT NULL, 
	line VARCHAR(64) NOT NULL, 
	bin VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_stops PRIMARY KEY (n), 
	CONSTRAINT fk_stops_bin FOREIGN KEY(bin) REFERENCES bins (name), 
	CONSTRAINT fk_stops_line FOREIGN KEY(line) REFERENCES lines (id), 
	CONSTRAINT fk_stops_round FOREIGN KEY(round) REFERENCES rounds (id)
);
INSERT INTO "stops" VALUES(1,'7211bb10e3d2d356',1,'a32c5c8525d9192e','B-1-1');
INSERT INTO "stops" VALUES(2,'7211bb10e3d2d356',2,'aaf1cec3fdc6e1a9','B-1-1');
INSERT INTO "stops" VALUES(3,'7211bb10e3d2d356',3,'76ef68a672d488d2','B-1-1');
INSERT INTO "stops" VALUES(4,'7211bb10e3d2d356',4,'486ac2eeaaca8139','B-1-1');
INSERT INTO "stops" VALUES(5,'7211bb10e3d2d356',5,'2c3ebbdf87dc4663','B-1-1');
INSERT INTO "stops" VALUES(6,'7211bb10e3d2d356',6,'08037630b415868c','B-1-1');
INSERT INTO "stops" VALUES(7,'7211bb10e3d2d356',7,'11fd8b7ee2aa0517','D-1-1');
INSERT INTO "stops" VALUES(8,'7211bb10e3d2d356',8,'ab8e5a5cb038d402','D-1-1');
INSERT INTO "stops" VALUES(9,'7211bb10e3d2d356',9,'767486754a8f4f93','D-1-1');
INSERT INTO "stops" VALUES(10,'7211bb10e3d2d356',10,'96f3b784404a756b','D-1-1');
INSERT INTO "stops" VALUES(11,'7211bb10e3d2d356',11,'d7dec1ab9bb5ae7e','C-1-1');
INSERT INTO "stops" VALUES(12,'7211bb10e3d2d356',12,'79fef866f5547acc','C-1-2');
INSERT INTO "stops" VALUES(13,'5e1f5fbbf1df66c6',1,'bfcf11d8d6a6741f','A-1-2');
INSERT INTO "stops" VALUES(14,'5e1f5fbbf1df66c6',2,'a4d104ac96d2db0f','C-1-1');
INSERT INTO "stops" VALUES(15,'5e1f5fbbf1df66c6',3,'1aabdc93b3133e5b','C-1-1');
INSERT INTO "stops" VALUES(16,'5e1f5fbbf1df66c6',4,'e4d75a518c1889b3','C-1-1');
CREATE UNIQUE INDEX uq_parcels_open ON parcels (at_table) WHERE state = 'open';
CREATE INDEX ix_scans_spot ON scans (station, spot, n);
CREATE INDEX ix_bins_section ON bins (section);
CREATE UNIQUE INDEX uq_bins_place ON bins (rack, tier, position);
CREATE UNIQUE INDEX uq_orders_number ON orders (number, channel);
CREATE INDEX ix_slots_card ON slots (card, section, number);
CREATE UNIQUE INDEX uq_slots_number ON slots (section, number);
CREATE INDEX ix_stays_item ON stays (item);
CREATE UNIQUE INDEX uq_stays_open ON stays (code) WHERE state = 'stored';
CREATE UNIQUE INDEX uq_stays_turn ON stays (code, turn);
CREATE INDEX ix_lines_order ON lines ("order", state);
CREATE INDEX ix_lines_parcel ON lines (parcel);
CREATE INDEX ix_lines_state ON lines (state);
CREATE INDEX ix_lines_stay ON lines (stay);
CREATE UNIQUE INDEX uq_lines_live ON lines (stay) WHERE state IN ('waiting', 'picked', 'packed', 'short');
CREATE UNIQUE INDEX uq_stops_place ON stops (round, position);
CREATE TRIGGER ledger_kept_update BEFORE UPDATE ON ledger BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;
CREATE TRIGGER ledger_kept_delete BEFORE DELETE ON ledger BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;
CREATE TRIGGER ledger_kept_insert BEFORE INSERT ON ledger WHEN EXISTS (SELECT 1 FROM ledger WHERE seq = NEW.seq) BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;
CREATE UNIQUE INDEX uq_access_name ON access (name) WHERE kind IN ('token', 'device');
CREATE INDEX ix_labels_parcel ON labels (parcel);
CREATE INDEX ix_stocktakes_state ON stocktakes (state);
CREATE INDEX ix_looks_stocktake ON looks (stocktake);
CREATE INDEX ix_looks_photo ON looks (photo);
CREATE INDEX ix_resolutions_stocktake ON resolutions (stocktake);
CREATE INDEX ix_aliases_code ON aliases (code);
CREATE INDEX ix_doubts_item ON doubts (item, how);
CREATE INDEX ix_learned_listing ON learned (listing);
CREATE INDEX ix_learned_item ON learned (item);
CREATE INDEX ix_items_listing ON items (listing);
CREATE INDEX ix_lines_held ON lines ("order") WHERE holds <> '[]';
COMMIT;
