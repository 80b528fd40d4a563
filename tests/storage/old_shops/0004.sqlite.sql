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
INSERT INTO "access" VALUES(1,'09585deb100443bca8b2f7d6a6396e5e0b82e851e29e6de9a637bcb97e553816','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$afVdJh6MEbJFik1e1jw+WQ$AW3Td1TEVZkivzNEkv0F0AjLCohrryVCKcJKyLgIjVo','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'ac5ec15125c3bb5bd65d401fdc3effc0f447ea2c6b44452865ad080785dc68d8','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'3a1ddb049a3face602890f7dc7c6e09710c8c9ef2b18dcf9f6e7dcbae5665720','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'6ff37e6e4a90573ff5511a4ba824ba8e8f9f76ccfa980b7fcb7a64b1d643870b','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'ca23664ad1fbf183f95b9fe75343c1210a182bb0939b167b9d9054aa19121fcb','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0004');
CREATE TABLE aliases (
	n INTEGER NOT NULL, 
	text VARCHAR(64) NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_aliases PRIMARY KEY (n), 
	CONSTRAINT fk_aliases_code FOREIGN KEY(code) REFERENCES slots (code), 
	CONSTRAINT uq_aliases_text UNIQUE (text)
);
INSERT INTO "aliases" VALUES(1,'AB0123','D011');
INSERT INTO "aliases" VALUES(2,'AB77X','S011');
INSERT INTO "aliases" VALUES(3,'BOX9','L010');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/0a00e7dd1826e984','{"id": "0a00e7dd1826e984", "item": "aa635db23b8b262a", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
CREATE TABLE head (
	one INTEGER NOT NULL, 
	seq INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	settings TEXT NOT NULL, 
	CONSTRAINT pk_head PRIMARY KEY (one)
);
INSERT INTO "head" VALUES(1,154,'8e3f1de621b1d311c64e84f6d6f18e47fdb11ecd39927ce7cff8c4a69970f5eb','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'ff5c249cdb01413e','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'6cc37c049fdc64c3','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'6f1f346969a840e1','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'d36cd71ab12aebb4','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'f8e5fcc76991cfe4','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'f629143fe439192f','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'1d1c87af70e4eb53','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'e60766ff6e26ca27','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'41c4f49a19e70a26','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'004761bb81a36a10','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'e6dcfae63d7ee540','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'a29152bc321a11db','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'f0c356b5ead10f87','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'28877760e5eb2473','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'93bb4367a824ebd9','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'2208fceaf72bc1d7','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'1678c24a21e37863','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'f75e29caef01fb2c','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'45c3c85de3832e9f','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'ca87a5e1c659d4bb','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'74dcced928db60aa','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'2e20885a9d13fe16','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'a6a6eb6486406d95','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'cdd9dc4c607e30e4','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'a9a93296279da56b','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'20a3339e2745432f','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'d40be10a38433c9d','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'eef0cc3f3e8f0cfe','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'8d6460117cf38f9a','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'dafd98178d796bc6','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'a6efc2fef101b4bb','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'af661fac30402eb1','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'96790e8e52735df8','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'c55fb0830832aa55','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'2fc7d8eb27c0a429','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'fdc6a47c81259ca5','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'ba27b52b5d97934f','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'f7c9c687987de676','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'395de197d0f3604a','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'5c3e06a057817d0e','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'45533eaa2c65a278','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'a2f0b8a869e16aac','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'4a630c9dbd5a9720','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'05f22e2a68bff1f8','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'77799fc6154281a8','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'1f95b2cd902c8f33','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'68090ebcf35f5828','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'fd9ac5107f4b04ce','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'aa635db23b8b262a','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'fb58c2181aae0ed5','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','1a3cb296a5886cfc','2557');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"2e281cea92bffb9d","title":"Rear derailleur 1","turn":1}','92a2146129bb09e35a268dd36ca163c3d47a9dcc28f20cca4d62bcd65ac5b047');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"b52ec3fd07e184ca","title":"Rear derailleur 2","turn":1}','0dbd46889aa421bea1c83fc503e7a2caec952525833118d664224f3070cc138b');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"e811c94120f933ff","title":"Rear derailleur 3","turn":1}','0ec22fb973bb10305dec3982e50bd0d6ed18d58fec8854e5706ab27a27a1d15d');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"b01e9b7efa8f84f2","title":"Rear derailleur 4","turn":1}','dc1b44eb9815ef5d1cdf6f57f4ace5e5f1a3b3b79062d6baa8865462b52f060f');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"9831b5e7912499c0","title":"Rear derailleur 5","turn":1}','a55487af460a91b6bb019ae9c22695f55c0138559a2d29fab26d3cc8c3c47164');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"c4463610b49abf93","title":"Rear derailleur 6","turn":1}','5d2d520786bdd5d01cd124b3afd1b8cbb11a4bebe1062b9460e4000e9e12fc53');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"3011394260685ac1","title":"Rear derailleur 7","turn":1}','4a58ef20ecfb1b733e16d99137f437f7bdd2d4db58f7003c2a77894c6b240925');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"572ff7540b2d2ebe","title":"Rear derailleur 8","turn":1}','a7019dcc23fb1c1a96fe2cee415668226a238f19169eb57f013dc8af3deae335');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"32afbc595894ff9a","title":"Rear derailleur 9","turn":1}','87d5f03b96386db6793a47c0eababa7f8a37a5cee9489aab6493ea999775b5a7');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"356af1109f925d03","title":"Rear derailleur 10","turn":1}','1b4154cf23710704479abff823f06d9a94744e841d48c6416da5009df924b5b0');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"daa4c031a4e53bc6","title":"Rear derailleur 11","turn":1}','c95c7d9007268864eaac2b18be8482f5a845d3b66008dacdb57648c3d597e347');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"cdb3b1128257f4f4","title":"Rear derailleur 12","turn":1}','0ecfa74f143a229eb38ef41984d09309ae5820dfe5c74767947465a0cddb4fe0');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"3ca154ef3cb7013c","title":"Leather saddle 1","turn":1}','288f30bf884e277e9a363b49616a97b1154a953893db99afe8c10cd873fc2303');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"e83a3cceba860428","title":"Leather saddle 2","turn":1}','b2ef27ed75f3c61c19c92c54192f15299136e931c40014b460ca94aec5461605');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"b95309eb1d59ce66","title":"Leather saddle 3","turn":1}','8e5345744d77f34c293ac98823765ce65f850adcac8cdde55b63c42ee7132030');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"1a0b4d94da1a66f3","title":"Leather saddle 4","turn":1}','ac2b8b76589a57b8c78900cfe3ea3842ced1792d4635cb6fdcceda46df401d8a');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"ccdffe5d726d66fc","title":"Leather saddle 5","turn":1}','6594688ce5e3fa34d4c12df76175162d51f8355221f308046fbbf1626609b303');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"fb4baa84fafccb4f","title":"Leather saddle 6","turn":1}','db7adff30147da8a56dc05f95fbc7051d4c489a1b3d291667cc1118b691efdb6');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"6a3a036a0585decc","title":"Leather saddle 7","turn":1}','f4d7bbc5cd3058d5ff2fd91795a0a029d281bced8674bd5010e7730878691e86');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"682255b7b4376eac","title":"Leather saddle 8","turn":1}','ca8ea0fda06f3c40e90c49fe2598c0ac5e062190decc6a0ec9aa455135c6890b');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"5eeb8af39a5dba59","title":"Leather saddle 9","turn":1}','91c5b93d8773c436012593c6cb5979bb847a9eaf6b2ec2fb922e0194d852d889');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"7528e680dec31624","title":"Leather saddle 10","turn":1}','8fc7905f1ea83d55721a9652f2b628ae1e5c4bd7845b989dea4a2f5ff44c9056');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"6da99267c2fa086d","title":"Leather saddle 11","turn":1}','e4761a9462d22343f10dcd62c99ee4552cb6fa8533fbd163fd4be62776130a65');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"5ea82b236149f217","title":"Leather saddle 12","turn":1}','85e7f9eea371a0c1a4b5a1b6a4d9522103a035818ec60354c0f45d7aff6e971b');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"8c2a55a45327c492","title":"Dynamo lamp 1","turn":1}','05a641e7a404c5f109a3c6c555c1a0beec80b8be44ef2fc5e923bb1bdf49677e');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"4f2aac36cd127847","title":"Dynamo lamp 2","turn":1}','2354e24e604122f265e8e5557cf5cf37a0bb0131f513e82abbdded957166f571');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"a7c698faea687c93","title":"Dynamo lamp 3","turn":1}','51342da97f49bacf40f9ce096f37abd58336a40c25cf0b24f9b393996cb37695');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"f0ae9b8c2d62b36c","title":"Dynamo lamp 4","turn":1}','8027b56198f4ca5059c38c9e504c4b9e2b9923d51785f2958d9cc67b81209144');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"a13268e35235239b","title":"Dynamo lamp 5","turn":1}','2f6ae52bab4d37644bce8544afd76562559d5203e4c4181f7fa22a0c062e1cdd');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"b2d0bbaf9a0045e9","title":"Dynamo lamp 6","turn":1}','26e20ffcc4c63ca897797e43ada0e80546dcd5b034ce70834ce6bb2436942724');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"a7b9560971744bf9","title":"Dynamo lamp 7","turn":1}','993f542aa1e351b1a874cb596d89761ff73090f06d3faa2619ea69b498ff334b');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"aff65b4bdc2c95d2","title":"Dynamo lamp 8","turn":1}','0d35e121970185e9c11f65d65dc8d5f646c754cfc6ad93a8fc59441c86a83242');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"3a55c0f00f2ab2c0","title":"Dynamo lamp 9","turn":1}','c67f62447fa49e54fad2d0de1be1b201a0ea4bd783c9286789df6b91fd33dbe4');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"70b745e9db5dbf90","title":"Dynamo lamp 10","turn":1}','ab276a9c7188086b43a385f688d367899b2b5ad6f89317548862418ae5a98812');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"eaa85900e8bc93d2","title":"Dynamo lamp 11","turn":1}','1ff0756c37169b21df9777107997759e6ace58804242ef6dbf7bd83b78750235');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"635b9cd82e2fc94f","title":"Dynamo lamp 12","turn":1}','e25231c93422cf131d3b4b367bdcd49ac6a61ce0b6b5e9c09b4d22a7271a3eb4');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"69b86129e113869c","title":"Front wheel 1","turn":1}','d378f4432aeca72f966ea58491eecb24b982c8094ec5ce7815527d54e826b9da');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"67f5ebb418e9e266","title":"Front wheel 2","turn":1}','7dd274eee9d05cfda55e056ce6670e3d64482092cb09d81f0d255418a6aec715');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"c9d4c2de864097b4","title":"Front wheel 3","turn":1}','9dafb4997b68d0ca074c6e23a767974103d8b40f9d1a86e6a68f28581ec034ca');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"d1f086eca9b235d3","title":"Front wheel 4","turn":1}','66310535cf35c6797dc45308732acdfb1ae9212183ceafce2cb22377fd1726fb');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"4ef76d23321d6a12","title":"Front wheel 5","turn":1}','053a82ef3617c5d871521b9709895b066016bec9311c4113bcf2906ca509020e');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"6627a6e8d1ace32b","title":"Front wheel 6","turn":1}','90bf81a353385813eacdf5cb7dba1e2270bff33854ede5deca5ca5b502e27c90');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"6d3d3affa81037b3","title":"Front wheel 7","turn":1}','e744ccd5156c95ac97e5f39e935d01a67b5f7a224db9434717fb773a16321fd0');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"3e342f170b476f10","title":"Front wheel 8","turn":1}','f91de62419e910bde3944ee00a017948138ad4c4f5e910ff08817ad19458dd25');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"9133a120027aa26c","title":"Front wheel 9","turn":1}','de79aa581cc20dbaf49d87e0c17c30bbe0d68c2324c9d1b94e84c40392252fcc');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"f9ea39341efe3b07","title":"Front wheel 10","turn":1}','f049dd05b8e018240a9d0bc4bb021f63beb9225463392286d03260eb3c61a98f');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"c0633391f66ddad4","title":"Front wheel 11","turn":1}','ac4813e0c71bb19b1c16cc5f903caca74a6d9d275343b600a7594e94fc19d648');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"62d4c545d0247012","title":"Front wheel 12","turn":1}','aa4f8581db4a811aa888e8f1f2df7b4b4fb92812904655eb404c418987a5a775');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"0a00e7dd1826e984","title":"Brass bell","turn":1}','a11ecd70426b785022504ac088b0f4e812e835a257dcaa7c86ef36e0b80afd02');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"b52ec3fd07e184ca"}','49d812d66ecf57053b7cae0a6e3aa7f176089046c8af6cf4a2a05ef2b75a1ed5');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"7528e680dec31624"}','adc2fa4ff7abb4261d2f5157c62d4700047b6ae7319c689c6d990717dd21a09c');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"d1f086eca9b235d3"}','648e366b9e0a33faf72fda7d7aa5f354150d1665c142f3d378158515c80c2644');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"3b73eaaac2aed86a","stay":"5eeb8af39a5dba59","to":"S013"}','bca498cecc872c7ad0dc39973c301299c203dff8cfe5a3d272d8cbdf6c810548');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"2e281cea92bffb9d"}','227f45db6a604ebee162cfccf2bec23804eb61cb21381da3ce2b79c447e69c13');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"3ca154ef3cb7013c"}','80c9b57056556f16bab19f207de567e422f4ede47a1559f0b56728c1ff04bd0e');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','7674a7540c1741f49efc3525fdd07ed6c62df4b439d28b3235bed732f0671bab');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','7214bb2686a940d6180e3f2520b45bafc1fe40aebf3ca61c28ae71cb30c439fd');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','728c97d94e064142d98fd6ea0ed28a761223762b58915bf07fce1230c6240f18');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','c551a2269795726bdab7feef9dad045defcc487d721f259b8aed58079032241c');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','1200e77710a418612d17cd45d2656867326d82c35e67c0b02a7833cd035f08ac');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d06dd2b08a67c490","reference":"W001-01E","stay":"69b86129e113869c"},{"hold":null,"line":"a80a0ca8ef99aa09","reference":"W002-016","stay":"67f5ebb418e9e266"}],"number":"B-01","order":"a39d1ef1af5ae741"}','0db8e7cb020fe0a9381766a603ff0cfc4173b42695bb80e9bf7dd73288d5cadb');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8b0d6b208d8f0380","reference":"S002-013","stay":"e83a3cceba860428"},{"hold":null,"line":"6eaac3987d98cc08","reference":"S003-01W","stay":"b95309eb1d59ce66"}],"number":"B-03","order":"0eda505ffaf4abc9"}','b01740632d948290da75a5118cc062c7af84b6ecefffc28532aa093a10bd67f7');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9501a842cc371427","reference":"S004-01O","stay":"1a0b4d94da1a66f3"},{"hold":null,"line":"3233c970d5a18adf","reference":"S005-01G","stay":"ccdffe5d726d66fc"}],"number":"B-04","order":"b2f0a078b4307617"}','3bf1b0c3a3a87ad70c752864df4c3314c49be5833e3d16ab0dd3ecf6265c210e');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3c8a10100fef6e62","reference":"L002-017","stay":"4f2aac36cd127847"}],"number":"B-05","order":"a91ff33788c5d653"}','477796c858676573cbff433c5d4343bc19969ae753d785ebbe689c638c45192f');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c7377b2c9f5b3986","reference":"L003-010","stay":"a7c698faea687c93"}],"number":"B-06","order":"9b87b8fba95de4cb"}','1550d8e39476f5aff2db6f2132137274ed0a823541285d9c0296233369ab9f1e');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1b2754f7665c497d","reference":"L004-01S","stay":"f0ae9b8c2d62b36c"}],"number":"B-07","order":"4fb88d919c254f2c"}','5c4a1527abccc0c5fa598864434f5998bf6731d1bb1e2f8ba9ef0c06b6f00d8e');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"f7e5e000bd5659af","reference":"L005-01K","stay":"a13268e35235239b"}],"number":"B-08","order":"de4a11f7600756e6"}','e9e9cb9fdd7bcd980705dd7574bbb10e3e4a87b5a1da28c2664c30d9153ba025');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"82f6d97c676ebce8","reference":"L006-01C","stay":"b2d0bbaf9a0045e9"},{"hold":null,"line":"be63830a2cd3a996","reference":"L011-010","stay":"eaa85900e8bc93d2"}],"number":"B-09","order":"0a684400f7fdc23c"}','acb32f18b370095c6b0e8972987ec648959aac5e4071a192ed5156af261c25ad');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"4160214931d70793","reference":"S006-018","stay":"fb4baa84fafccb4f"}],"number":"B-13","order":"4fc93c22b763d0b6"}','c49464ef5a0351a2d2e5ea250c15c9113b7af70e38ce24d7fb9b8ec59fdef6b8');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d19487654c019ae0","reference":"L007-014","stay":"a7b9560971744bf9"}],"number":"B-17","order":"18e0514079d7443c"}','df7d69e59a92ea5916e3c6e6a9c1621536a80b19fb7b3a0af04943c2ed15de12');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"796804e17bb69d89","reference":"D009-01B","stay":"32afbc595894ff9a"}],"number":"B-18","order":"4c904abb40997291"}','141437b8d06f699e735b0bcb66a0671ba074c1de1a28dd389f247c8dc803d468');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e5f193b160e805e0","reference":"W006-013","stay":"6627a6e8d1ace32b"}],"number":"B-21","order":"f3cc82648d047093"}','681b747c355d92ea23ed7114ec7f370b0d8406bbd89420a63ab83ec03d7ae8c5');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"665c3e7f81cb59ec","reference":"S007-01Z","stay":"6a3a036a0585decc"}],"number":"B-22","order":"1b2c70c6e5514eca"}','1d1027ac453c1a2cf27aa502a1f8f940beaddb148adbbdc9fb8979185c796123');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"230999a3f8103aee","reference":"W007-01W","stay":"6d3d3affa81037b3"},{"hold":null,"line":"eb4f413c6db67565","reference":"W008-01O","stay":"3e342f170b476f10"}],"number":"B-23","order":"fea6a3e0df5986e3"}','1745ffa39a0dbc69cf1cb72210b3b02269cb2a716bdacaf170e8f564046536af');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e767a4c5ecb48cde","reference":"D008-01J","stay":"572ff7540b2d2ebe"}],"number":"B-26","order":"8c9a3bb956a94140"}','40cd3321d46ca737479cda7f13bb5321cc9d971c6a5805044c9d473490ff2217');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"c3b069e7458c8600","reference":"D003-01U","stay":"e811c94120f933ff"}],"number":"B-30","order":"d2b02c75a7ef2513"}','fd10a97ecf8d359d5e4c21fcfd1428aefcc48f95f272830e2fd31ac676d04596');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1b8f745e72be7a72","reference":"D005-01E","stay":"9831b5e7912499c0"},{"hold":"unknown_code","line":"ccae9082438dd62b","reference":"Z999","stay":null}],"number":"B-31","order":"892945a572a664b4"}','5c11b74baf4c02a4654f1f34dc9b7596769345bdfecc99ec7a9a7f4ed3dd21bb');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"643889e5b5ff6ee5","reference":"D006-016","stay":"c4463610b49abf93"},{"hold":null,"line":"89f566fc187f343e","reference":"D007-01R","stay":"3011394260685ac1"}],"number":"B-32","order":"eba46c6abe8f6b43"}','f85256f0598125c71bafaf71a532a0d92741e6697e6833cd43e318e5019444f7');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"89f566fc187f343e","reference":"D007-01R","stay":"3011394260685ac1"}],"number":"B-32","order":"eba46c6abe8f6b43"}','3b1fe3487812dd347233c5000cac4f76a1a0dfb175c503c7f8ca8e49571dc1d1');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"c77240840a675598","reference":"lamp","stay":null}],"number":"B-33","order":"80c6570e9e455443"}','46643ef77efad16952f85d7bad275f3a7e219c112ba206cc643615ba597c0b39');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"6ef91ad4e909acaf","reference":"D006-016","stay":null}],"number":"B-34","order":"eeb51c5a3c8958b3"}','65683f264e5939ea13af1b622a20da0bbf92874836f83799f99432476ad7eb88');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"56826e3c44424ad1","reference":"W004-01J","stay":null}],"number":"B-35","order":"6ce7adbb4f74f45c"}','e8d6f4eae1b0da42cf7eec7e61d7686b60ef6ab6748566bc52a116d6e678331b');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"b9690ddc45eaa977","reference":"L015","stay":null}],"number":"B-36","order":"9fda5b768c60db9f"}','a722243c9e420052e61dcae3a5734ba817e186f2358b5152465cd5a915ce58b8');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"d1e575add87975d3","reference":"W005-01B","stay":"4ef76d23321d6a12"}],"number":"B-37","order":"37add3c5215fe795"}','78dcff9eb8613456559772fb208e8bf3b8c5410e71e4f8ac726ddef0976e3986');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"d1e575add87975d3","stay":"4ef76d23321d6a12"}','3b0262621323a784049ef1077bc86207e61f9c496ac82b1b2bb63ad3fc9fd739');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"d19487654c019ae0","why":"Another lamp, by the photo"}','bcd0b7fcc007a31b952470c91d5cea544a9293e476a256ad345e32688f6d16a8');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["f7e5e000bd5659af"],"number":"B-08","order":"de4a11f7600756e6"}','2cfdd78a4cb71049d1cf400c233f0a3ab94a36db28d61bcede291a62cab03add');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["e5f193b160e805e0"],"number":"B-21","order":"f3cc82648d047093"}','21912daaa8f6fb441f0908b223862a0eaa1ce6fa7d7424dd20ed04bfb736ba59');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"e5f193b160e805e0","stay":"6627a6e8d1ace32b"}','c07a92c6595c50f3c83d289a2dff6cfba90a6f6dd570e1caf7a7cca91c080b61');
INSERT INTO "ledger" VALUES(102,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"6d254e6617018756","stay":"572ff7540b2d2ebe","to":"D020"}','b21b414ce946f47b0478cbf21a3b475ece93fbd9812d75e572ec9205bf5ac897');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"ac5d2b234f372e48","reference":"S012-01O","stay":"5ea82b236149f217"}],"number":"F-1","order":"b2fae4c18d21ee93"}','44216004c3068474366ed86bf13162abc79825b841166e600e5598cea7406122');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"dc7870044e6a525f","reference":"","stay":null}],"number":"F-2","order":"6f98083a3a9818d1"}','f803dd89cc7a110b393d77d2f6b32fe22342bfbe9e78ba3e676bfb2da56f2a9b');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["d06dd2b08a67c490","a80a0ca8ef99aa09","8b0d6b208d8f0380","6eaac3987d98cc08","9501a842cc371427","3233c970d5a18adf","82f6d97c676ebce8","be63830a2cd3a996","4160214931d70793","665c3e7f81cb59ec","230999a3f8103aee","eb4f413c6db67565"],"round":"5403f468977b3263"}','73f4ee020fa01e35ef2fa4697b31d73b947a0d0925f798334b29aa547930548d');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','d19930af533601aae3d8e6fe803cfb8873ae0ba85091b13c30f4a51868fee5c5');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"d06dd2b08a67c490","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','74d78daf16dbd7a94a6c30aeca9b1c9fb62c140bd6e186311d575ae7f3768980');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"a80a0ca8ef99aa09","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','5603aa931e3943d342a2ca814a3e96f2127c64dea1d7f8a38cff184c232228f0');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"8b0d6b208d8f0380","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','de1880430a2f67fc339e8152b682d995e0680545ea19c23b983af6bcc37392b3');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"6eaac3987d98cc08","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','678519ee973cf0d2a6318b43577690f594fe7573b1ebab25452f702eae1984c2');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"9501a842cc371427","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','d9fb4c0acd6d08f4e94e22339745622d78ebf60a656d5935e387f7c728c46d68');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"3233c970d5a18adf","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','3e15f25c2c236325e41416bf730c8e0b577533303652f42f7eed0319ced7be8b');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"82f6d97c676ebce8","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','db0e63d7fb36c83ed663341c57350dead07aa1b01e2bf08fcf97346b5b8471f3');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"be63830a2cd3a996","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','91b9ed9b8f251266ef7990ecbf526c198664dfabce504dafbbab1f2a20741dae');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"4160214931d70793","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','6f75357f096f936aeac69d2fb7eddd19224c45ffe776379106c888f1de54b698');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"665c3e7f81cb59ec","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','177a370d2ca93d027203e49e2f8b3a353b0a768229dbf8e01581165037e32cc8');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"230999a3f8103aee","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','dd29570c9721053b9323e64f79b3fd5f6d9d3195a24e1ab44f93ed8ce1c0b90b');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"eb4f413c6db67565","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5403f468977b3263","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','08a77ea1a26abbb350ce4ee7e8ea3f4c620ace858b3388691e0503e01b263948');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"eb4f413c6db67565","line_state":"waiting"}','a325db88d0cd4d464929c686ee4c43b650a3c5c5a363656a5ad52df8cbdc8ba4');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"5403f468977b3263"}','43c17e555ad9b0c5741dde3b237fa4ad462fe96682e0c2bbcbe3590bceea1aff');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["a39d1ef1af5ae741"],"parcel":"1a3cb296a5886cfc","table":"main"}','6e057ce9ec054a26885336ed6feeeb195e62d8a30df3d1c4cc67504125e449b7');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"8b0d6b208d8f0380","line_state":"picked","order_number":"B-03","parcel":"1a3cb296a5886cfc","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','fb004051cb1ec5ed4aa8a00438d9c4dcb73c2ec90f8633a936a19eb50607dae9');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"d06dd2b08a67c490","line_state":"packed","order_number":"B-01","parcel":"1a3cb296a5886cfc","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','ce49f27247f09aabf644e543ddc0d0f2c225b83697006fe4d0e47a0b307a45e2');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["a39d1ef1af5ae741"],"parcel":"1a3cb296a5886cfc","released":["W001","W002"]}','49f95dbf541c3943e6aa9e643261c3c76afd324aa720dcda61d08527a0844436');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"a80a0ca8ef99aa09","line_state":"released","order_number":"B-01","parcel":"1a3cb296a5886cfc","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','965481ebd781f8fdbde50d0fed90c948a3ee03eaccaaac9cf7e3c9162afbfe91');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"d06dd2b08a67c490","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','670cb03d1ef0af3508c405ce1f3a3b0b70b2d2af10ae22cae31f4600f9ef3000');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"83d4b4e44775c07f","title":"Rear wheel","turn":2}','32fdadf699383db6dd9e87701ac1ae5da28a4a84a2be52ff0e43baa68d007d7e');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"1a3cb296a5886cfc"}','62cfff71d05af5fab499aaaa26b368f97feab8820915547f07625a82361db3a8');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["fea6a3e0df5986e3"],"parcel":"d2023af591cbe20e","table":"main"}','22e440d78ed365815eb28d5417fd28db7755bde6606c03a02c068d5dccf04ff8');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"230999a3f8103aee","line_state":"packed","order_number":"B-23","parcel":"d2023af591cbe20e","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','4d3493c4fc4c45b2f8b0bbcf3f36cb1d8bd1c7cb37a51c50e17daf427de733ec');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["fea6a3e0df5986e3"],"parcel":"d2023af591cbe20e","released":["W007"]}','1bf65825f470534eb13a8db505372dafce9fc67850dac1e54e370a4a19b27b80');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["fea6a3e0df5986e3"],"parcel":"d2023af591cbe20e"}','bd433b943403a8ec46ca0a922cdcdb1ec6cea493b9452cbdbd36be6d391f1870');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["fea6a3e0df5986e3"],"parcel":"d2023af591cbe20e","released":["W007"]}','fa2c18b09101c821518f9a5eb0651975850eef0e18e8c8ffce79d7f111840d1c');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["1b2c70c6e5514eca"],"parcel":"3c47432b02b62484","table":"main"}','5dd6aa79ef6407f7876c43c10b131bb512a888b6c670887bcadbe9b581495804');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"3c47432b02b62484"}','73a7802e0c5b6e5ee8c941f9b81f6053f4f649292148ca3a110a19974830b7b6');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["b2f0a078b4307617"],"parcel":"8fa6d86d2d055584","table":"main"}','87f511f1597ebc4df5e6e8c2cee09dc805d405190c57bd99f9fa61a0134a1f98');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"9501a842cc371427","line_state":"packed","order_number":"B-04","parcel":"8fa6d86d2d055584","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','270032c6433d29214822ea2d5b882d3d2dc532fc2f2a271c82788380eafe5268');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"8fa6d86d2d055584"}','b1294be83dd1d213b117496945d5abd40a8dedf136c8b7da47ee6cbf7bb29f7f');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["0a684400f7fdc23c"],"parcel":"6e6f7b6395f7b351","table":"second"}','ab3fa8ac50fcdb992ebfdc55c5bdc8b8b93df8530169483d2e0702191160ca64');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"82f6d97c676ebce8","line_state":"packed","order_number":"B-09","parcel":"6e6f7b6395f7b351","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','22fd601f4a00a446dff8d4eb628c59f93de4be579fd69a5e7614f5dca46f27ba');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["82f6d97c676ebce8","be63830a2cd3a996"],"number":"B-09","order":"0a684400f7fdc23c"}','13aae3bab0e592ce41b3eaa1927ce0e9b2f432b3d3b7b6c6856ea6b2dae49660');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["0eda505ffaf4abc9"],"parcel":"9b9a62bbbab2664f","table":"main"}','09ea544c3804d328f70ff5c5da19790e61ad49363129a8fb5b66422423aa8a7a');
INSERT INTO "ledger" VALUES(143,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"8b0d6b208d8f0380","line_state":"packed","order_number":"B-03","parcel":"9b9a62bbbab2664f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','58f376947359ff68498823fab93d19edbc392a4c62243ab8753e72ae5a9d923b');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"4160214931d70793","reference":"S006-018","stay":"fb4baa84fafccb4f"}],"number":"B-13","order":"4fc93c22b763d0b6"}','7460ae67765acb499b8fa7fe32f4611e250351b1bf4d312fc3e08afd3480c9c2');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["3c8a10100fef6e62","c7377b2c9f5b3986","1b2754f7665c497d","e767a4c5ecb48cde"],"round":"86d1b7b82c5d495c"}','b77031b65ab7bb89883f24cd0daf7cd673d3b517a346c74d7be3083d2f783937');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"3c8a10100fef6e62","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"86d1b7b82c5d495c","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','b8208246f0c287e5d791e447e0d682bb8fbc239c3dbba52819b0181118907501');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"1b2754f7665c497d","note":"Not in its bin"}','1f872d958d5346366cc4e8705e56610d46e78dd52a616467e1ebee48b6a6234e');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"86d1b7b82c5d495c","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','42b3254f6fd6c40496c22bdba38f859374bffad546630427cd9cd415854dcaf0');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"86d1b7b82c5d495c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','4d56d83397ec3ea6d9b142f293bd3d45993fde543eb63110e87396f6e52b4a7f');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"86d1b7b82c5d495c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','c2a8e14e066f652f7492de1ad2c4fa028ae9c0151927185f06c5d511fee8451d');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','409591a81cde59f724edf35e44473a2e1b42bd44846b8e2ea6b771fb0a8bc614');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','fff69a05e2a68aa19d87f5f9c13272e6e24877b1b747f4f5f10418c0aa01459f');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"90c95edc206bd7fe","reference":"D001-019","stay":"2e281cea92bffb9d"},{"hold":"already_sold","line":"60b84096c184dc54","reference":"W002-016","stay":null}],"number":"B-38","order":"136b959c04bbf5dc"}','5ae0092b219be8ba8461e9efdf4305b529280531cb828ad4d34c4424ea445d6d');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"c49e2bd64f4aea70","reference":"W001","stay":null}],"number":"B-39","order":"6afbd5614c4b689c"}','8e3f1de621b1d311c64e84f6d6f18e47fdb11ecd39927ce7cff8c4a69970f5eb');
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
	hold VARCHAR(24), 
	why TEXT NOT NULL, 
	parcel VARCHAR(64), 
	round VARCHAR(64), 
	basket INTEGER, 
	scan VARCHAR(64), 
	in_file BOOLEAN NOT NULL, 
	CONSTRAINT pk_lines PRIMARY KEY (n), 
	CONSTRAINT fk_lines_order FOREIGN KEY("order") REFERENCES orders (id), 
	CONSTRAINT fk_lines_parcel FOREIGN KEY(parcel) REFERENCES parcels (id), 
	CONSTRAINT fk_lines_round FOREIGN KEY(round) REFERENCES rounds (id), 
	CONSTRAINT fk_lines_stay FOREIGN KEY(stay) REFERENCES stays (id), 
	CONSTRAINT uq_lines_id UNIQUE (id)
);
INSERT INTO "lines" VALUES(1,'d06dd2b08a67c490','a39d1ef1af5ae741',1,'W001-01E','Front wheel 1','','69b86129e113869c','released',NULL,'','1a3cb296a5886cfc','5403f468977b3263',1,NULL,1);
INSERT INTO "lines" VALUES(2,'a80a0ca8ef99aa09','a39d1ef1af5ae741',2,'W002-016','Front wheel 2','','67f5ebb418e9e266','released',NULL,'','1a3cb296a5886cfc','5403f468977b3263',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'8b0d6b208d8f0380','0eda505ffaf4abc9',1,'S002-013','Leather saddle 2','','e83a3cceba860428','packed',NULL,'','9b9a62bbbab2664f','5403f468977b3263',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'6eaac3987d98cc08','0eda505ffaf4abc9',2,'S003-01W','Leather saddle 3','','b95309eb1d59ce66','picked',NULL,'',NULL,'5403f468977b3263',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'9501a842cc371427','b2f0a078b4307617',1,'S004-01O','Leather saddle 4','','1a0b4d94da1a66f3','packed',NULL,'','8fa6d86d2d055584','5403f468977b3263',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'3233c970d5a18adf','b2f0a078b4307617',2,'S005-01G','Leather saddle 5','','ccdffe5d726d66fc','picked',NULL,'',NULL,'5403f468977b3263',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'3c8a10100fef6e62','a91ff33788c5d653',1,'L002-017','Dynamo lamp 2','','4f2aac36cd127847','picked',NULL,'',NULL,'86d1b7b82c5d495c',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'c7377b2c9f5b3986','9b87b8fba95de4cb',1,'L003-010','Dynamo lamp 3','','a7c698faea687c93','waiting',NULL,'',NULL,'86d1b7b82c5d495c',2,NULL,1);
INSERT INTO "lines" VALUES(9,'1b2754f7665c497d','4fb88d919c254f2c',1,'L004-01S','Dynamo lamp 4','','f0ae9b8c2d62b36c','short',NULL,'',NULL,'86d1b7b82c5d495c',3,NULL,1);
INSERT INTO "lines" VALUES(10,'f7e5e000bd5659af','de4a11f7600756e6',1,'L005-01K','Dynamo lamp 5','','a13268e35235239b','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'82f6d97c676ebce8','0a684400f7fdc23c',1,'L006-01C','Dynamo lamp 6','','b2d0bbaf9a0045e9','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','6e6f7b6395f7b351','5403f468977b3263',4,NULL,1);
INSERT INTO "lines" VALUES(12,'be63830a2cd3a996','0a684400f7fdc23c',2,'L011-010','Dynamo lamp 11','','eaa85900e8bc93d2','cancelled',NULL,'',NULL,'5403f468977b3263',4,NULL,1);
INSERT INTO "lines" VALUES(13,'4160214931d70793','4fc93c22b763d0b6',1,'S006-018','Saddle with springs','','fb4baa84fafccb4f','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'5403f468977b3263',5,NULL,1);
INSERT INTO "lines" VALUES(14,'d19487654c019ae0','18e0514079d7443c',1,'L007-014','Dynamo lamp 7','','a7b9560971744bf9','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'796804e17bb69d89','4c904abb40997291',1,'D009-01B','Rear derailleur 9','','32afbc595894ff9a','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'e5f193b160e805e0','f3cc82648d047093',1,'W006-013','Front wheel 6','','6627a6e8d1ace32b','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'665c3e7f81cb59ec','1b2c70c6e5514eca',1,'S007-01Z','Leather saddle 7','','6a3a036a0585decc','picked',NULL,'',NULL,'5403f468977b3263',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'230999a3f8103aee','fea6a3e0df5986e3',1,'W007-01W','Front wheel 7','','6d3d3affa81037b3','released',NULL,'','d2023af591cbe20e','5403f468977b3263',7,NULL,1);
INSERT INTO "lines" VALUES(19,'eb4f413c6db67565','fea6a3e0df5986e3',2,'W008-01O','Front wheel 8','','3e342f170b476f10','waiting',NULL,'',NULL,'5403f468977b3263',7,NULL,1);
INSERT INTO "lines" VALUES(20,'e767a4c5ecb48cde','8c9a3bb956a94140',1,'D008-01J','Rear derailleur 8','','6d254e6617018756','waiting',NULL,'',NULL,'86d1b7b82c5d495c',4,NULL,1);
INSERT INTO "lines" VALUES(21,'c3b069e7458c8600','d2b02c75a7ef2513',1,'D003-01U','Bell with a crown','','e811c94120f933ff','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'1b8f745e72be7a72','892945a572a664b4',1,'D005-01E','Rear derailleur 5','','9831b5e7912499c0','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'ccae9082438dd62b','892945a572a664b4',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'643889e5b5ff6ee5','eba46c6abe8f6b43',1,'D006-016','Rear derailleur 6','','c4463610b49abf93','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'89f566fc187f343e','eba46c6abe8f6b43',2,'D007-01R','Rear derailleur 7','','3011394260685ac1','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'c77240840a675598','80c6570e9e455443',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'6ef91ad4e909acaf','eeb51c5a3c8958b3',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'56826e3c44424ad1','6ce7adbb4f74f45c',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'b9690ddc45eaa977','9fda5b768c60db9f',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'d1e575add87975d3','37add3c5215fe795',1,'W005-01B','Bell with a crown','','4ef76d23321d6a12','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'ac5d2b234f372e48','b2fae4c18d21ee93',1,'S012-01O','','','5ea82b236149f217','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'dc7870044e6a525f','6f98083a3a9818d1',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'90c95edc206bd7fe','136b959c04bbf5dc',1,'D001-019','Rear derailleur 1','','2e281cea92bffb9d','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'60b84096c184dc54','136b959c04bbf5dc',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'c49e2bd64f4aea70','6afbd5614c4b689c',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
	parcel VARCHAR(64), 
	CONSTRAINT pk_orders PRIMARY KEY (n), 
	CONSTRAINT fk_orders_parcel FOREIGN KEY(parcel) REFERENCES parcels (id), 
	CONSTRAINT uq_orders_id UNIQUE (id), 
	CONSTRAINT uq_orders_slip UNIQUE (slip)
);
INSERT INTO "orders" VALUES(1,'a39d1ef1af5ae741','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'0eda505ffaf4abc9','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','9b9a62bbbab2664f');
INSERT INTO "orders" VALUES(3,'b2f0a078b4307617','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','8fa6d86d2d055584');
INSERT INTO "orders" VALUES(4,'a91ff33788c5d653','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'9b87b8fba95de4cb','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'4fb88d919c254f2c','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'de4a11f7600756e6','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'0a684400f7fdc23c','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','6e6f7b6395f7b351');
INSERT INTO "orders" VALUES(9,'4fc93c22b763d0b6','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'18e0514079d7443c','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'4c904abb40997291','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'f3cc82648d047093','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'1b2c70c6e5514eca','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'fea6a3e0df5986e3','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'8c9a3bb956a94140','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'d2b02c75a7ef2513','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'892945a572a664b4','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'eba46c6abe8f6b43','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'80c6570e9e455443','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'eeb51c5a3c8958b3','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'6ce7adbb4f74f45c','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'9fda5b768c60db9f','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'37add3c5215fe795','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'b2fae4c18d21ee93','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'6f98083a3a9818d1','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'136b959c04bbf5dc','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'6afbd5614c4b689c','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
CREATE TABLE parcels (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	at_table VARCHAR(64) NOT NULL, 
	orders TEXT NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_parcels PRIMARY KEY (n), 
	CONSTRAINT uq_parcels_id UNIQUE (id)
);
INSERT INTO "parcels" VALUES(1,'1a3cb296a5886cfc','main','a39d1ef1af5ae741','2026-03-02T13:56:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'d2023af591cbe20e','main','fea6a3e0df5986e3','2026-03-02T14:19:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'3c47432b02b62484','main','1b2c70c6e5514eca','2026-03-02T14:34:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'8fa6d86d2d055584','main','b2f0a078b4307617','2026-03-02T14:40:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'6e6f7b6395f7b351','second','0a684400f7fdc23c','2026-03-02T14:49:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'9b9a62bbbab2664f','main','0eda505ffaf4abc9','2026-03-02T14:58:00.000000+00:00','open');
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
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'5403f468977b3263','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'86d1b7b82c5d495c','2026-03-02T15:07:00.000000+00:00','open');
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
	was TEXT NOT NULL, 
	CONSTRAINT pk_scans PRIMARY KEY (n), 
	CONSTRAINT uq_scans_key UNIQUE ("key")
);
INSERT INTO "scans" VALUES(1,'free-D004','d340d1d98595086c271f17fb7354937a33e004cfa4ace7c11f0393a1bcaf5956','bin','5403f468977b3263','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','ca233ea95bb185efdba31c69595e070eda1598a780be7d22cb5845d7480f6cdc','bin','5403f468977b3263','W001',0,1,1,'d06dd2b08a67c490',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a39d1ef1af5ae741", "order_number": "B-01", "line": "d06dd2b08a67c490", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','93a04efa8c58017ef9dbd947525dd9341b1a3c8b593fac127a124f3e2851bcdb','bin','5403f468977b3263','W002',0,1,1,'a80a0ca8ef99aa09',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a39d1ef1af5ae741", "order_number": "B-01", "line": "a80a0ca8ef99aa09", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','6eee5060d5259572244cbf38b7ed7821e357236c5d78c216d05fb002eb1775ad','bin','5403f468977b3263','S002',0,1,1,'8b0d6b208d8f0380',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "0eda505ffaf4abc9", "order_number": "B-03", "line": "8b0d6b208d8f0380", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','207e8bf4c4a6cc61ae58e771a1c95df050ad5f80a5ca5b6c581a1c82016c51cf','bin','5403f468977b3263','S003',0,1,1,'6eaac3987d98cc08',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "0eda505ffaf4abc9", "order_number": "B-03", "line": "6eaac3987d98cc08", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','1d2d4fbcd3355ba70a3e3abddfe97ad985f1fcc5e743805a4230675f77d9afce','bin','5403f468977b3263','S004',0,1,1,'9501a842cc371427',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "b2f0a078b4307617", "order_number": "B-04", "line": "9501a842cc371427", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','f47f807634a4f0b5736cb7deec4b5ada9ddb8a3b9f4f49d167a86d994b686ef1','bin','5403f468977b3263','S005',0,1,1,'3233c970d5a18adf',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "b2f0a078b4307617", "order_number": "B-04", "line": "3233c970d5a18adf", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','f27e283bac5627c4e5ca94d8e86a17158e27d56de0458c1579eee1c7d0742ba4','bin','5403f468977b3263','L006',0,1,1,'82f6d97c676ebce8',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "0a684400f7fdc23c", "order_number": "B-09", "line": "82f6d97c676ebce8", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','3ab23c5b048f173a70d751ffef61eebbddfb982b2e68bd5481b1c94eb7e42373','bin','5403f468977b3263','L011',0,1,1,'be63830a2cd3a996',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "0a684400f7fdc23c", "order_number": "B-09", "line": "be63830a2cd3a996", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','5652d3596ca9510d7de0468bc1caa37db66cd818a8bcbcbfa4e8a158be214e24','bin','5403f468977b3263','S006',0,1,1,'4160214931d70793',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "4fc93c22b763d0b6", "order_number": "B-13", "line": "4160214931d70793", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','cd37cef940361a30a5f2347e3585e8943e83357fa11af8192ec7988562c1a0e8','bin','5403f468977b3263','S007',0,1,1,'665c3e7f81cb59ec',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "1b2c70c6e5514eca", "order_number": "B-22", "line": "665c3e7f81cb59ec", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','d87cd600f2700d53052fed59bc41afe789636edfab6c28dc0523bb2b4bdfd3fa','bin','5403f468977b3263','W007',0,1,1,'230999a3f8103aee',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "fea6a3e0df5986e3", "order_number": "B-23", "line": "230999a3f8103aee", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','a7d4db08add99eab66a931f65dce83f800dbd84671eee811ac9e0dfdbc9a1954','bin','5403f468977b3263','W008',0,1,1,'eb4f413c6db67565',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "fea6a3e0df5986e3", "order_number": "B-23", "line": "eb4f413c6db67565", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'8b0d6b208d8f0380','1a3cb296a5886cfc','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "0eda505ffaf4abc9", "order_number": "B-03", "line": "8b0d6b208d8f0380", "line_state": "picked", "order_state": "picking", "parcel": "1a3cb296a5886cfc", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'d06dd2b08a67c490','1a3cb296a5886cfc','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "a39d1ef1af5ae741", "order_number": "B-01", "line": "d06dd2b08a67c490", "line_state": "packed", "order_state": "picking", "parcel": "1a3cb296a5886cfc", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'a80a0ca8ef99aa09','1a3cb296a5886cfc','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "a39d1ef1af5ae741", "order_number": "B-01", "line": "a80a0ca8ef99aa09", "line_state": "released", "order_state": "released", "parcel": "1a3cb296a5886cfc", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'d06dd2b08a67c490',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "a39d1ef1af5ae741", "order_number": "B-01", "line": "d06dd2b08a67c490", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'230999a3f8103aee','d2023af591cbe20e','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "fea6a3e0df5986e3", "order_number": "B-23", "line": "230999a3f8103aee", "line_state": "packed", "order_state": "waiting", "parcel": "d2023af591cbe20e", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'9501a842cc371427','8fa6d86d2d055584','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "b2f0a078b4307617", "order_number": "B-04", "line": "9501a842cc371427", "line_state": "packed", "order_state": "picking", "parcel": "8fa6d86d2d055584", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'82f6d97c676ebce8','6e6f7b6395f7b351','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "0a684400f7fdc23c", "order_number": "B-09", "line": "82f6d97c676ebce8", "line_state": "packed", "order_state": "picking", "parcel": "6e6f7b6395f7b351", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'8b0d6b208d8f0380','9b9a62bbbab2664f','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "0eda505ffaf4abc9", "order_number": "B-03", "line": "8b0d6b208d8f0380", "line_state": "packed", "order_state": "picking", "parcel": "9b9a62bbbab2664f", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','3738fd93a45438cdbde9de6f344f4d254a49c77dc54e16135efe5c721abc4062','bin','86d1b7b82c5d495c','L002',0,1,1,'3c8a10100fef6e62',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "a91ff33788c5d653", "order_number": "B-05", "line": "3c8a10100fef6e62", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','47bb2a8a0288ec9dcfdbea39571cfbd5afdb6c93b1d3a82e2700a0d25f14b130','bin','86d1b7b82c5d495c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','4dd25749be9a8be4a67ae77205ecf9a8f2ff52dcb23be05fda79c6c45320379b','bin','86d1b7b82c5d495c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','02323b5faeb1caaf8530e33138d39bb1e049f249944bede5a0de55731fae25ae','bin','86d1b7b82c5d495c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
	seen_accepted BOOLEAN, 
	CONSTRAINT pk_slots PRIMARY KEY (n), 
	CONSTRAINT fk_slots_bin FOREIGN KEY(bin) REFERENCES bins (name), 
	CONSTRAINT fk_slots_section FOREIGN KEY(section) REFERENCES sections (code), 
	CONSTRAINT uq_slots_code UNIQUE (code)
);
INSERT INTO "slots" VALUES(1,'D001','D',1,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(2,'D002','D',2,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(3,'D003','D',3,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(4,'D004','D',4,'A-1-1',1,'on_item','bin','A-1-1',0);
INSERT INTO "slots" VALUES(5,'D005','D',5,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(6,'D006','D',6,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(7,'D007','D',7,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(8,'D008','D',8,'A-1-1',1,'due',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(9,'D009','D',9,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(10,'D010','D',10,'A-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(11,'D011','D',11,'A-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(12,'D012','D',12,'A-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(13,'D013','D',13,'A-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(14,'D014','D',14,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(15,'D015','D',15,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(16,'D016','D',16,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(17,'D017','D',17,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(18,'D018','D',18,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(19,'D019','D',19,'A-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(20,'D020','D',20,'A-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(21,'D021','D',21,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(22,'D022','D',22,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(23,'D023','D',23,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(24,'D024','D',24,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(25,'D025','D',25,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(26,'D026','D',26,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(27,'D027','D',27,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(28,'D028','D',28,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(29,'D029','D',29,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(30,'D030','D',30,'A-1-3',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(31,'S001','S',1,'B-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(32,'S002','S',2,'B-1-1',1,'on_item','table','main',1);
INSERT INTO "slots" VALUES(33,'S003','S',3,'B-1-1',1,'on_item','bin','B-1-1',1);
INSERT INTO "slots" VALUES(34,'S004','S',4,'B-1-1',1,'on_item','table','main',1);
INSERT INTO "slots" VALUES(35,'S005','S',5,'B-1-1',1,'on_item','bin','B-1-1',1);
INSERT INTO "slots" VALUES(36,'S006','S',6,'B-1-1',1,'on_item','bin','B-1-1',1);
INSERT INTO "slots" VALUES(37,'S007','S',7,'B-1-1',1,'on_item','bin','B-1-1',1);
INSERT INTO "slots" VALUES(38,'S008','S',8,'B-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(39,'S009','S',9,'B-1-1',1,'due',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(40,'S010','S',10,'B-1-1',1,'due',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(41,'S011','S',11,'B-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(42,'S012','S',12,'B-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(43,'S013','S',13,'B-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(44,'S014','S',14,'B-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(45,'S015','S',15,'B-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(46,'L001','L',1,'C-1-1',1,'lost',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(47,'L002','L',2,'C-1-1',1,'on_item','bin','C-1-1',1);
INSERT INTO "slots" VALUES(48,'L003','L',3,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(49,'L004','L',4,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(50,'L005','L',5,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(51,'L006','L',6,'C-1-1',1,'on_item','table','second',1);
INSERT INTO "slots" VALUES(52,'L007','L',7,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(53,'L008','L',8,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(54,'L009','L',9,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(55,'L010','L',10,'C-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(56,'L011','L',11,'C-1-2',1,'on_item','bin','C-1-2',1);
INSERT INTO "slots" VALUES(57,'L012','L',12,'C-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(58,'L013','L',13,'C-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(59,'L014','L',14,'C-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(60,'L015','L',15,'C-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(61,'W001','W',1,'D-1-1',2,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(62,'W002','W',2,'D-1-1',1,'due','table','main',1);
INSERT INTO "slots" VALUES(63,'W003','W',3,'D-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(64,'W004','W',4,'D-1-1',1,'due',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(65,'W005','W',5,'D-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(66,'W006','W',6,'D-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(67,'W007','W',7,'D-1-1',1,'due','table','main',1);
INSERT INTO "slots" VALUES(68,'W008','W',8,'D-1-1',1,'on_item','bin','D-1-1',1);
INSERT INTO "slots" VALUES(69,'W009','W',9,'D-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(70,'W010','W',10,'D-1-1',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(71,'W011','W',11,'D-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(72,'W012','W',12,'D-1-2',1,'on_item',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(73,'W013','W',13,'D-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(74,'W014','W',14,'D-1-2',0,'tray',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(75,'W015','W',15,'D-1-2',0,'lost',NULL,NULL,NULL);
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
INSERT INTO "stays" VALUES(1,'2e281cea92bffb9d','ff5c249cdb01413e','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'b52ec3fd07e184ca','6cc37c049fdc64c3','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'e811c94120f933ff','6f1f346969a840e1','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'b01e9b7efa8f84f2','d36cd71ab12aebb4','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'9831b5e7912499c0','f8e5fcc76991cfe4','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'c4463610b49abf93','f629143fe439192f','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'3011394260685ac1','1d1c87af70e4eb53','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'572ff7540b2d2ebe','e60766ff6e26ca27','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'32afbc595894ff9a','41c4f49a19e70a26','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'356af1109f925d03','004761bb81a36a10','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'daa4c031a4e53bc6','e6dcfae63d7ee540','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'cdb3b1128257f4f4','a29152bc321a11db','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'3ca154ef3cb7013c','f0c356b5ead10f87','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'e83a3cceba860428','28877760e5eb2473','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'b95309eb1d59ce66','93bb4367a824ebd9','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'1a0b4d94da1a66f3','2208fceaf72bc1d7','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'ccdffe5d726d66fc','1678c24a21e37863','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'fb4baa84fafccb4f','f75e29caef01fb2c','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'6a3a036a0585decc','45c3c85de3832e9f','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'682255b7b4376eac','ca87a5e1c659d4bb','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'5eeb8af39a5dba59','74dcced928db60aa','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'7528e680dec31624','2e20885a9d13fe16','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'6da99267c2fa086d','a6a6eb6486406d95','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'5ea82b236149f217','cdd9dc4c607e30e4','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'8c2a55a45327c492','a9a93296279da56b','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'4f2aac36cd127847','20a3339e2745432f','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'a7c698faea687c93','d40be10a38433c9d','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'f0ae9b8c2d62b36c','eef0cc3f3e8f0cfe','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'a13268e35235239b','8d6460117cf38f9a','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'b2d0bbaf9a0045e9','dafd98178d796bc6','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'a7b9560971744bf9','a6efc2fef101b4bb','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'aff65b4bdc2c95d2','af661fac30402eb1','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'3a55c0f00f2ab2c0','96790e8e52735df8','L009',1,'2026-03-02T10:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(34,'70b745e9db5dbf90','c55fb0830832aa55','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'eaa85900e8bc93d2','2fc7d8eb27c0a429','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'635b9cd82e2fc94f','fdc6a47c81259ca5','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'69b86129e113869c','ba27b52b5d97934f','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'67f5ebb418e9e266','f7c9c687987de676','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'c9d4c2de864097b4','395de197d0f3604a','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'d1f086eca9b235d3','5c3e06a057817d0e','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'4ef76d23321d6a12','45533eaa2c65a278','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'6627a6e8d1ace32b','a2f0b8a869e16aac','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'6d3d3affa81037b3','4a630c9dbd5a9720','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'3e342f170b476f10','05f22e2a68bff1f8','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'9133a120027aa26c','77799fc6154281a8','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'f9ea39341efe3b07','1f95b2cd902c8f33','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'c0633391f66ddad4','68090ebcf35f5828','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'62d4c545d0247012','fd9ac5107f4b04ce','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'0a00e7dd1826e984','aa635db23b8b262a','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'3b73eaaac2aed86a','74dcced928db60aa','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'6d254e6617018756','e60766ff6e26ca27','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'83d4b4e44775c07f','fb58c2181aae0ed5','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stops" VALUES(1,'5403f468977b3263',1,'8b0d6b208d8f0380','B-1-1');
INSERT INTO "stops" VALUES(2,'5403f468977b3263',2,'6eaac3987d98cc08','B-1-1');
INSERT INTO "stops" VALUES(3,'5403f468977b3263',3,'9501a842cc371427','B-1-1');
INSERT INTO "stops" VALUES(4,'5403f468977b3263',4,'3233c970d5a18adf','B-1-1');
INSERT INTO "stops" VALUES(5,'5403f468977b3263',5,'4160214931d70793','B-1-1');
INSERT INTO "stops" VALUES(6,'5403f468977b3263',6,'665c3e7f81cb59ec','B-1-1');
INSERT INTO "stops" VALUES(7,'5403f468977b3263',7,'d06dd2b08a67c490','D-1-1');
INSERT INTO "stops" VALUES(8,'5403f468977b3263',8,'a80a0ca8ef99aa09','D-1-1');
INSERT INTO "stops" VALUES(9,'5403f468977b3263',9,'230999a3f8103aee','D-1-1');
INSERT INTO "stops" VALUES(10,'5403f468977b3263',10,'eb4f413c6db67565','D-1-1');
INSERT INTO "stops" VALUES(11,'5403f468977b3263',11,'82f6d97c676ebce8','C-1-1');
INSERT INTO "stops" VALUES(12,'5403f468977b3263',12,'be63830a2cd3a996','C-1-2');
INSERT INTO "stops" VALUES(13,'86d1b7b82c5d495c',1,'e767a4c5ecb48cde','A-1-2');
INSERT INTO "stops" VALUES(14,'86d1b7b82c5d495c',2,'3c8a10100fef6e62','C-1-1');
INSERT INTO "stops" VALUES(15,'86d1b7b82c5d495c',3,'c7377b2c9f5b3986','C-1-1');
INSERT INTO "stops" VALUES(16,'86d1b7b82c5d495c',4,'1b2754f7665c497d','C-1-1');
CREATE UNIQUE INDEX uq_parcels_open ON parcels (at_table) WHERE state = 'open';
CREATE INDEX ix_scans_spot ON scans (station, spot, n);
CREATE INDEX ix_bins_section ON bins (section);
CREATE UNIQUE INDEX uq_bins_place ON bins (rack, tier, position);
CREATE UNIQUE INDEX uq_orders_number ON orders (number, channel);
CREATE INDEX ix_slots_card ON slots (card, section, number);
CREATE UNIQUE INDEX uq_slots_number ON slots (section, number);
CREATE INDEX ix_aliases_code ON aliases (code);
CREATE INDEX ix_stays_item ON stays (item);
CREATE UNIQUE INDEX uq_stays_open ON stays (code) WHERE state = 'stored';
CREATE UNIQUE INDEX uq_stays_turn ON stays (code, turn);
CREATE INDEX ix_lines_held ON lines ("order") WHERE hold IS NOT NULL;
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
COMMIT;
