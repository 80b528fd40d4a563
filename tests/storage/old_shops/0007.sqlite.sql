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
INSERT INTO "access" VALUES(1,'320362484382268e983f02af45bfcfe19d8d4b96b52806a61e2ec86ff7172343','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$/I+NVFsaHXYqScpdtokBnA$5zjqySNclT+3Sw2EEpgPgixMswGUXEyTWOO9HYZtOSg','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'e35e8c2824b17fd8df093758f7c9059e8a47acf36ed2416557b12b682bf3dd48','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'c350a2298d828a58b9d89663a51e385c88e54a1f68a830a14b73f186c83ea3c2','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'f469446ce18615fbcbe9a7567a2cc4f21ff9ba32831dc414f21494830c1f181f','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'5b078dca5ba3dd6f08b1eaec5246d7e5103e71f673cbf9bcfdd1e8575dbe0e2a','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0007');
CREATE TABLE "aliases" (
	n INTEGER NOT NULL, 
	text VARCHAR(64) NOT NULL, 
	code VARCHAR(64) NOT NULL, 
	printed VARCHAR(64) NOT NULL, 
	CONSTRAINT pk_aliases PRIMARY KEY (n), 
	CONSTRAINT fk_aliases_code FOREIGN KEY(code) REFERENCES slots (code), 
	CONSTRAINT uq_aliases_text UNIQUE (text)
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/24b94cf722102eab','{"id": "24b94cf722102eab", "item": "1ba52d9f9aa618d5", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
INSERT INTO "head" VALUES(1,171,'2199d537ea41e3d4c35adb7e4b48056cd6f5bced962e55ffba7646f6b142df2c','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": "", "by_person": false}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'fdf7c5741af21286','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'aea9dbb14e5c602e','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'2044d4e3bfd82cb1','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'0ac633161096bfcf','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'785fe178219bd92a','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'db69061c17778d24','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'ba152266000086d3','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'44ee5462c6ca7261','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'5bf8d9319f488a20','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'341fe7fddd1f4298','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'1bccb30978e82208','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'e21efaedc365d788','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'9eba252b570cbeaf','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'2b4832181b7bb725','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'309479fc463ae4ef','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'1ee8761bfa0fe4b0','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'41e974a34deae0a7','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'1039ef6966cd1019','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'28e82e0b6d316ad5','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'9f95ca8e1d5a5d82','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'7319b042622a711a','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'bfda63ba7adcb350','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'fbac2c5feb9d9104','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'c2ff2d18513c2b96','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'2d146d519532191b','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'88150fb413d2931c','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'e9ca285e6b671778','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'2c1e9a1bb846c7e9','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'8deddd5337935f16','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'0cda54b6297b127d','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'9eb99135d2636d75','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'824b1188a15a200d','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'e1b0509f663c2c15','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'2ad71ee3afae520f','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'9cc6a979996f3585','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'f6bb020e8a89fa5c','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'9eebd0ec8a4d46ff','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'678bd7767cef15c5','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'b0ff787a700dd1a6','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'a5e0772275e6a45f','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'c423c2212e6a835f','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'11fc67d469f5fb54','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'df994d6063947a1f','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'6a7a08fc750cedfe','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'f7f6fb24a0b5f135','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'e21758799af58149','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'fd6491609468cc10','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'b1117719e41f7b23','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'1ba52d9f9aa618d5','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'b4f7db73ef85ea11','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','ed7e512c143b3e23','2557');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"8878f64ef6afb8ca","title":"Rear derailleur 1","turn":1}','cbe89af769c6692fddc1a8089b3efb535808b5273e92167f6fb22d1c3843eb67');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"fb41a0ce7a96c8c1","title":"Rear derailleur 2","turn":1}','6515afa9bdb95846e7e5308855f0f383a738fb13679aeb34c75c7c7326da1b4b');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"bd448eea6202f80b","title":"Rear derailleur 3","turn":1}','0a8446ab99c3695350c489ed150787074b94ba154cc97f10018e748568da0934');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"7aa77db57e3581b1","title":"Rear derailleur 4","turn":1}','58120f0e41cfc37188e45440e16570e15e2012be75700a23bc7dfc49182a5f8f');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"2de495d0e43d385c","title":"Rear derailleur 5","turn":1}','593bdf1964e4e6ee051aa504ad34081a8e916ef58cc50bfa490057c6e0a9e053');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"8806b0af37e404fd","title":"Rear derailleur 6","turn":1}','4ab5ab9bd876e99e572369e40361d7b03101538bf9dc12f796352757e75c51ea');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"d4f65407c2b94a08","title":"Rear derailleur 7","turn":1}','854dafeaed0b1182240f02b18df18e0d03d647e21ac5b0bf40ff3fa5239bc050');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"0a837506cb71b9ff","title":"Rear derailleur 8","turn":1}','c76b92387793d3ce56d31eac3b6cc3a8fb4a4bf8adede65f4119346d84c2e46f');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"83065369cc0e4c39","title":"Rear derailleur 9","turn":1}','0d6b2ebcb69b7c4ab09af63ba3fb3363535e95a41b232059fee586162537bf68');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"5e7502ab518bb600","title":"Rear derailleur 10","turn":1}','aa4ec41e8f3168162d585c2380dae5bf86061cdd185387d0ceb5e4897a68837e');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"692958535eb3c2d5","title":"Rear derailleur 11","turn":1}','e877f97bdb1cd362eaa508d08b897702f947849922aa5ea9ad6e8279dc8f99f8');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"6a20e0da0067e99e","title":"Rear derailleur 12","turn":1}','04f84d2c70ba42321c0cd5decc67611aba092566df59d1ee68044895ec8bdc8d');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"aec6446c50201e26","title":"Leather saddle 1","turn":1}','7b27f50b2f8deefdd89d36106d3dc58df86dec255aa86caccae35299b654929a');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"8d2341a50d4be34c","title":"Leather saddle 2","turn":1}','8924f1c33384ce31edda2d7999c4cecc24abfd201d3903473959865714fb9c5f');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"440e927c9ea6a098","title":"Leather saddle 3","turn":1}','95a5dbfa50449852241998ae9ff2db1f694f5b931ca1a7516808443990bfd75a');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"c218aec6a52508b4","title":"Leather saddle 4","turn":1}','a423f07d2084fe741fe82f4753aaa20de5b8ed30c9111ed5721d6a65751e2c15');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"7be724f9277bbec2","title":"Leather saddle 5","turn":1}','fbd45afaaee48a2f224e5f37744b7580bf0a2713bcdd153a8c5b022d27e13200');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"6ef7a6a32b576c97","title":"Leather saddle 6","turn":1}','da29d767863af018cb29f9508e584e5766c81371425a79c88f44a47a798f2d28');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"39f5ce666672ef42","title":"Leather saddle 7","turn":1}','d36e2fe0349ced03c7fd4e30514a329b55f6206ee3d537909e95a708c8917e1a');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"8f2d0a257116cd29","title":"Leather saddle 8","turn":1}','cfe42839d3348efb9396b3b7ec6ed2abf6c01ae1bc0771c324594e2ce00f7510');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"44d290f826603492","title":"Leather saddle 9","turn":1}','ee7433217904f471bd1229642eefeafa195ba469258d8d8807cd435f2574998b');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"992dd535f252046e","title":"Leather saddle 10","turn":1}','3b167aa9507cb711afd86fe1c7c4a2df4df0d0d370cb25cc8101a83a5219135a');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"6dbb197d84d935af","title":"Leather saddle 11","turn":1}','a87d4d59ba49337f5bb02b84ea7b28070dab33bb3ca4cc6cee1cb02f343bcddb');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"510f9348190362e7","title":"Leather saddle 12","turn":1}','3d4c7519df415af48c58d6031f96eaba63b8fcb0e1dda624215055acba29c962');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"0f51ea6f0d809b3e","title":"Dynamo lamp 1","turn":1}','faa8130184aeec8cf545036046f300d26bd973bae4a449be85d2c2881c05823a');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"76b450fdc3781b43","title":"Dynamo lamp 2","turn":1}','81180f8ad3f45edf40a1b9ccb4ca43b0ea1e156ce73df26a1bde9ede66b23d75');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"5f3938c98f99d9d1","title":"Dynamo lamp 3","turn":1}','7f453ae419cd0c7396b37b8adc31ea089dca358f5f13910aa57108a6727a2747');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"297dbdc8144e225b","title":"Dynamo lamp 4","turn":1}','66ab4beb3b55ead5a7ced2efde31959cc47ab786df16e745b36d2bfd45675b14');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"d73e2d32fa369e67","title":"Dynamo lamp 5","turn":1}','d91081d32b034a2605bcb0454e4ec645bf0e6a143b56c3d9931adf559920dad7');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"045fd7b03dd6d8ba","title":"Dynamo lamp 6","turn":1}','446ab2c064015afc14f872e7a77c1f4d964b25ebf785c6ab096aea85ffcbd05d');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"f2a45378afe706b9","title":"Dynamo lamp 7","turn":1}','3b0f16cf477cbdb72bfcd7213e1eca8124a5891749552b2ab29cbbc4769e9c6a');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"905b45c89c66abf6","title":"Dynamo lamp 8","turn":1}','4736520f63f3049b21daf6b711bc21577757cc5bca2059abd757204ecd4fffad');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"0dfc2b6ab49c96cd","title":"Dynamo lamp 9","turn":1}','da4f9a226891f2300e517244d92517866209951104eb875d2313a7216084110f');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"f363de803f1afb0d","title":"Dynamo lamp 10","turn":1}','6219540d1190ecee5fb7ff7a794e7577dfef06d27bcad9886f3e3dfe2883ab8c');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"b19e2b26bfa96757","title":"Dynamo lamp 11","turn":1}','4ce415a99a6e4fb8797d45cdf7bc3940b5a2b606aa105c5b9ae56077c6df8218');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"bab4051e54feaa1d","title":"Dynamo lamp 12","turn":1}','addcf5d5f89c88113c1d14f05cd999772827e1b5aefe6e2dbe572e75b1f140a9');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"6c6b48db62c1f10f","title":"Front wheel 1","turn":1}','21a92200873a4c0794a1c1318ac20b809ce5578b66f3a9c12e44077d1e3a6751');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"7cfd3b4b469fb8b9","title":"Front wheel 2","turn":1}','434eca129a9e6d11f7e785182142f41ed492ea6487500d82a9c68fe97e5bb506');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"b9ad82c5e0408b86","title":"Front wheel 3","turn":1}','a62fada57179637f2ecd0df8db15e6700546601fe4427e242ca93f80b8bb66aa');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"a1513a32855b09e0","title":"Front wheel 4","turn":1}','b4b14e8bb59df9714ad087d212a33bfc9a7725d17cde2bdad881592176b562f4');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"8e95ea89b221ba9b","title":"Front wheel 5","turn":1}','cdf1d0d14357a0e9c65c18b679af9e30f5437d865d5bab90ae8f78fd512548be');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"8bf8aee8521f4bf4","title":"Front wheel 6","turn":1}','01f8bbcec9dbd6b7250a95379c3fa5e64d25d1e78efe2e57b90244385b548e7a');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"e98bd25785300c27","title":"Front wheel 7","turn":1}','79b214c0d57b62ac4f961d79e1810d58789986480d6d2ac943d7cea22736780d');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"7a6d79667c96c7c2","title":"Front wheel 8","turn":1}','17fd27a079932b139ff85afe35ffa6705c15073639570ba340e12f27c4be79fc');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"ba6b5cda9d73a3ac","title":"Front wheel 9","turn":1}','bb387026e7a345d9450134708fd73b10bd62f0e4588795b8f4863b7d7e426d7a');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"91516500fc785005","title":"Front wheel 10","turn":1}','8578a74ceb25810bd2615e865de3ad60cac8c344fbd66222dee349f7686f5f6d');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"05c052283b802217","title":"Front wheel 11","turn":1}','35122dc7f58ed4e9e19fcc1b4007bd5bebdc2663d31d6d20da2083106cf84505');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"c70f4036ea29c3f6","title":"Front wheel 12","turn":1}','9399e8febac3715987b48e2a9e4696f7827fac50dcf7c82c8184a709852d1635');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"24b94cf722102eab","title":"Brass bell","turn":1}','2eb6cd5f56425059c0d0c7773a2855693b091f73680544c50e482dab40c7a989');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"fb41a0ce7a96c8c1"}','e00f77e031ba7f1a8b6a3f043affdc6a7b18e9afd901786208604751de33bd88');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"992dd535f252046e"}','502946381974ef8e304986236426094ec53324ea26b06e2504925fa64ce7eec2');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"a1513a32855b09e0"}','8bbcf371ed89624bf8dd225fa182c4dec63c0159a3651fc3d2729b5ec19fcc5e');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"8c3c8ba3010d1033","stay":"44d290f826603492","to":"S013"}','1f8c0f1d51fcbf6895b5c6b5e1580210558a43388d7d7b11e7a2b9affd3947d6');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"8878f64ef6afb8ca"}','3fb255304c4996a7dd6e8cad2feb06c9c490f0b4961668a1397aa83894464278');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"aec6446c50201e26"}','7c7c7984ebc20feca5b129317672e5b97dc4e5e86d7f2489c49240fb26447b50');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"by_person":false,"check":"none","count_began":"","count_weeks":0,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','2a1d3d2e837e5375a095be4936f0050aad3ff2bf55f6402d1b85df07f6658068');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','6991dcb63f2b9619eff8bb0101b9c194b918867d5540fd6502803bd0a92f0fc9');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB-0123"}','db0786c5b0b38a882c57623aea1393a02bd027a3f477a9695e096889d2d72139');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"ab-77-x"}','484edfbf15ccc04e6519e41faa0122d50abb37134b49afd929c0e4a9aa131622');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX 9"}','e239a840048e040e4374d886a6a31dd2b98ef31ae363c652fcf6d2abed5a87d3');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8efcdbf0e3c97007","reference":"W001-01E","stay":"6c6b48db62c1f10f"},{"hold":null,"line":"ceb049c4a617c36c","reference":"W002-016","stay":"7cfd3b4b469fb8b9"}],"number":"B-01","order":"3fe5175b0348bec1"}','a6f400ea3e644ad7a2f5c0bc688602ba4c46dea3381201ad6186f4d52511918a');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e4a3cfd8ce4c8180","reference":"S002-013","stay":"8d2341a50d4be34c"},{"hold":null,"line":"b144d6d166c45376","reference":"S003-01W","stay":"440e927c9ea6a098"}],"number":"B-03","order":"f852eeb46147e625"}','38884940682212f51c26612d54415230d308837a4b3d233baf6022580091a9c7');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"28156877d9d14308","reference":"S004-01O","stay":"c218aec6a52508b4"},{"hold":null,"line":"0e9133854ac3475e","reference":"S005-01G","stay":"7be724f9277bbec2"}],"number":"B-04","order":"2210a78bb191a891"}','d98b9cab8445aa6b98221d6578eff9707172a0339aa37fab6bce1d05c3dd4213');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b33b5650c74f9033","reference":"L002-017","stay":"76b450fdc3781b43"}],"number":"B-05","order":"12fee820769e8102"}','08a87b647fea7d3abeff2ee5efa2be13e015d9ce4903a9e3562aa97187c8c4ce');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c86ab60fa1b4cc07","reference":"L003-010","stay":"5f3938c98f99d9d1"}],"number":"B-06","order":"d23b8ee070cf879d"}','8d10f89683f8fa652e1bf71476d738b486698a7ac674f143a575a017fce392bf');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"5dbdeca43179b5a5","reference":"L004-01S","stay":"297dbdc8144e225b"}],"number":"B-07","order":"5a2e5d2512299e85"}','bdb9fbe0c96bcfd47b2942151ce5409aa1fd13e3bfb77f2c3e05b02c11a6cba8');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"ac2c08a5fd0b79c7","reference":"L005-01K","stay":"d73e2d32fa369e67"}],"number":"B-08","order":"ea5ced122862ebd3"}','7dc0bbe27607cb076bc4eb46c340ef92ce968f2e6c4aec762cd9cf894ed243e4');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"7479a7f239fc88f1","reference":"L006-01C","stay":"045fd7b03dd6d8ba"},{"hold":null,"line":"b3527d97518cb022","reference":"L011-010","stay":"b19e2b26bfa96757"}],"number":"B-09","order":"3d65f4cce91b0c38"}','492462c6954471d71b481c793beb602bdfb3a895102a6fa9ccd8798e7b746764');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"fb0f6ffbcd9e167b","reference":"S006-018","stay":"6ef7a6a32b576c97"}],"number":"B-13","order":"b4a1bf450880d521"}','32bbd431d87df52eee115d6e26fec198987e93c72cbf9d57286f34f82bd33591');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"dd0ffc871cc91f84","reference":"L007-014","stay":"f2a45378afe706b9"}],"number":"B-17","order":"192783ed0fdd7266"}','65f21e6c1b790d8cd5bb52d01c56654d0d95e96cb627a8ba569c14bf23fbc61f');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"19d7c36b7fc90462","reference":"D009-01B","stay":"83065369cc0e4c39"}],"number":"B-18","order":"d6f37f3700a21d69"}','81805000ee3ed70e5ef544d7868b47603530ffcd5a3a6577c362297f4c92dcbe');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b1e05c6bb901853d","reference":"W006-013","stay":"8bf8aee8521f4bf4"}],"number":"B-21","order":"75e2701f2d2d51d8"}','e85ac56fb194005a4282a058e723da04e32ede7b88490dcad2213549a2db18fb');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"4afc75e2922bd91f","reference":"S007-01Z","stay":"39f5ce666672ef42"}],"number":"B-22","order":"1536e1f6442ea443"}','e9d891bcd94466a8a2de9dacc77f97fd9ec5093dd39fa04e38dd18eb966247d0');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9665feb4e1c6fc33","reference":"W007-01W","stay":"e98bd25785300c27"},{"hold":null,"line":"726e2d96ec7879cc","reference":"W008-01O","stay":"7a6d79667c96c7c2"}],"number":"B-23","order":"673d30ca37e81740"}','fe24c167d87f3be415e83d6ab92c679fe4fae8ef849580d738e21c42335443eb');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"38ec13ef876877a7","reference":"D008-01J","stay":"0a837506cb71b9ff"}],"number":"B-26","order":"b3db240cd8068be0"}','fc222ad58deffab29541541d9e8edd7198a4485c6cf12d15ff1840154e613119');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"20e1147707de6a8e","reference":"D003-01U","stay":"bd448eea6202f80b"}],"number":"B-30","order":"a3e1117804e49755"}','9cc8b2cf5e11977063d2c0045213154fd9d0761ab023349870522730950631ee');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"f46c732071a55241","reference":"D005-01E","stay":"2de495d0e43d385c"},{"hold":"unknown_code","line":"73e5a0ab08943353","reference":"Z999","stay":null}],"number":"B-31","order":"a6cff6d83180ad20"}','b3fd65ea9e4c1690c83318c7a1322dbcfb51a1bafb03c41297b80b302e49f1d8');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"35b911cc69e9931e","reference":"D006-016","stay":"8806b0af37e404fd"},{"hold":null,"line":"203430c4155cf5d4","reference":"D007-01R","stay":"d4f65407c2b94a08"}],"number":"B-32","order":"526157495d97db8e"}','e0f4f67ccacc2f329b89b96558c867400a5d53a1f084de4790c222ef8cb686e9');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"203430c4155cf5d4","reference":"D007-01R","stay":"d4f65407c2b94a08"}],"number":"B-32","order":"526157495d97db8e"}','8e15ed8b20e72172e9b774a24a1adf5480d4e8efc366039816dd953074c66f5a');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"81e6f0a4e49e8d83","reference":"lamp","stay":null}],"number":"B-33","order":"029910ddca10789e"}','bc4d121d2c7108c74a3fed6dc5565b430b1074f7edc76f6f470a8052736fa68c');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"bfd0cef5c24e68e4","reference":"D006-016","stay":null}],"number":"B-34","order":"b5dc9754a7e00ae0"}','e59ffcc54c28afa6b2adf7eaae19cde1e5dd1c63a34350a4e32cd12139494634');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"6836c265f3447949","reference":"W004-01J","stay":null}],"number":"B-35","order":"4d8635e1926d682c"}','1201e688806b32b206e55dfb8cd49b5e6e568b6bdd8340ea88154b9957e38705');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"94a4c2d8221049fe","reference":"L015","stay":null}],"number":"B-36","order":"0f6df759bbf57688"}','dd7971bec1cba25157599e7e6a5cf9d7f44a4b9e8d03cc187bc9fe51a5e44835');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"2f457f536176ab07","reference":"W005-01B","stay":"8e95ea89b221ba9b"}],"number":"B-37","order":"280dbdedc42219c2"}','50f20c0a0667d4736e178b955559eb9117310e6fb899fb9e34f726d942b94df0');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"2f457f536176ab07","stay":"8e95ea89b221ba9b"}','a85220e7bfa8f246716d226d91ac9cfd7a15f6a5c3c4ba2cc56701353e90e23b');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"dd0ffc871cc91f84","why":"Another lamp, by the photo"}','afe0b3780573389e30519425ccdcf97dfc1f39557481b3b45ab418c1b3b64792');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["ac2c08a5fd0b79c7"],"number":"B-08","order":"ea5ced122862ebd3"}','683096a5e45549ae5d56a1b728cb5be7d1b2eedcc1dd0b2e1ace6420d911569c');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["b1e05c6bb901853d"],"number":"B-21","order":"75e2701f2d2d51d8"}','b8475c87a3186026320b854f19c5c454474ab53172de4ef4e8a7f654041a5306');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"b1e05c6bb901853d","stay":"8bf8aee8521f4bf4"}','ad21b243d966187393c099f4e46925b0f4463b78f5c4e83046c1bd8acbf4ad37');
INSERT INTO "ledger" VALUES(102,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"4e2f5ac8192e29ac","stay":"0a837506cb71b9ff","to":"D020"}','340182bdad7aefc8e825c0c5c5f0f7698d77b94f7de05f1a72c917f3aaec8b99');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"233e7f9b600ff306","reference":"S012-01O","stay":"510f9348190362e7"}],"number":"F-1","order":"36f322222853f3e8"}','72e4436f0691600c9a0d336fb20f9f5d088d2f4682c2aa940fac8087ac7e5130');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"554ead39525292b3","reference":"","stay":null}],"number":"F-2","order":"2ff2332c45211455"}','034c1aeee44842353bdf9cfe1c6a734effc030559310237e38e5e35e8d40b81a');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["8efcdbf0e3c97007","ceb049c4a617c36c","e4a3cfd8ce4c8180","b144d6d166c45376","28156877d9d14308","0e9133854ac3475e","7479a7f239fc88f1","b3527d97518cb022","fb0f6ffbcd9e167b","4afc75e2922bd91f","9665feb4e1c6fc33","726e2d96ec7879cc"],"round":"0707958a4d5c769b"}','0425a613bfd3b5ddf73a9b24ce744f59ef89fee5f40dd43a2019b948de008c1b');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','a98fa6a8e52073e5f7ea3e73465ceb17dfec0b79ed52d3c24e7368f5e18f5816');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"8efcdbf0e3c97007","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','5556ffc9148a1ee50983f016a1cba85524b6bb0b3bc539be0b38bcf1876b8421');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"ceb049c4a617c36c","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','517638743fabebc862ae92ce5c1905871199011b3a450babf40d9cf0954ee0c1');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"e4a3cfd8ce4c8180","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','04553fb7cda65db824765adce957e453f66995480fc687b242c63247c0861910');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"b144d6d166c45376","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','dbb67bbd7bb1d49eda9fcc11e0f8b4d5539a0a51475c593ee8a0ed86ab5a9fc5');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"28156877d9d14308","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','567e60ef0ca20b7d5a3d83f4f43e6b14d49a2f42be66657799d1e5b3398a0edc');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"0e9133854ac3475e","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','6f96ec598d0fe83d50c57958d4be6e9c090d7f5934e527e109e1d772ea6ae594');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"7479a7f239fc88f1","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','366a181f291eee798e6887dd4e0edb156beb813b5885f10719be47b2238bb44f');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"b3527d97518cb022","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','d50dfeedb7634ec58ab7e7daa3a6bd4df7bb2e5ebef1ea2042dd4cbbb20ec8a4');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"fb0f6ffbcd9e167b","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','40e8795a0690d7e101a25238e2bf5af3028cf3c95876b2b979fb1e93464ca635');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"4afc75e2922bd91f","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','9638b263059a7c87199365a5baf3b1baa94750382d6ddd4e08674f736946ca77');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"9665feb4e1c6fc33","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','d6807f82d72fdf7af1b2ace2c5dbdc7e1896082450875f9e48af7da82c2e4655');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"726e2d96ec7879cc","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"0707958a4d5c769b","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','2ddff55e90055d8b4cd614a5d4185ad9776f2a7ecea0b30dab1a178dfdc5729b');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"726e2d96ec7879cc","line_state":"waiting"}','97233f5b8c9b1971e90ffd14260da93332000d6a7aa42a5237fbcd07c12dc2d0');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"0707958a4d5c769b"}','714e9ef7c4d4ac1c494b3c945f70a2849ee67bc3036412e508d02c920928efaf');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["3fe5175b0348bec1"],"parcel":"ed7e512c143b3e23","table":"main"}','1ab7a91bf16467dedac208935fde9ffe0021ebf9353643fc34c79c947933f963');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"e4a3cfd8ce4c8180","line_state":"picked","order_number":"B-03","parcel":"ed7e512c143b3e23","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','1bf0773b2aa7c64006fea411a3829dd365efa3f107e1390f8f0c9430b579c683');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"8efcdbf0e3c97007","line_state":"packed","order_number":"B-01","parcel":"ed7e512c143b3e23","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','998dda3f03c91a3b3bdd88f8c7838d67511f4b64f5d8e77b16c2d935a090400a');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["3fe5175b0348bec1"],"parcel":"ed7e512c143b3e23","released":["W001","W002"]}','2196bfa9572725a830bcbfa64adf5c2bdf903919ad9fe5c806d27b1a7585f79e');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"ceb049c4a617c36c","line_state":"released","order_number":"B-01","parcel":"ed7e512c143b3e23","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','5a65889866d0d3757d7fa7262408b593abcc3ed9bd3ba888879d0fcea4fbd9da');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"8efcdbf0e3c97007","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','3b4a67835881a04c5887bf8fab26f811f3a20aad8419a2f2272b73833468bc9b');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"110783a25f3a3561","title":"Rear wheel","turn":2}','11f853eba44d5d10074a4b3a4fd40281068502ee3133acd543171d7ef1fa4630');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"ed7e512c143b3e23"}','c5375a6f913a9be968713b6da7f54218bbf09d1beeda7f44b0ce781dd9bbb7ea');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["673d30ca37e81740"],"parcel":"c6104859c6b96755","table":"main"}','ac068ec06bf651347f3884e17397c5b86e65164475519d4b14352c7da138401c');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"9665feb4e1c6fc33","line_state":"packed","order_number":"B-23","parcel":"c6104859c6b96755","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','8aa6743115add07b280de7507049aad7c70c35454e571ee4caa54db7707a727f');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["673d30ca37e81740"],"parcel":"c6104859c6b96755","released":["W007"]}','503f97ba6f9c279aee3cc21fa7fe00ef86b17a9bb96f6ad05d2e480e865ec4d8');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["673d30ca37e81740"],"parcel":"c6104859c6b96755"}','655132c9ca86c5d43af87a8bdda2542abb5e0d46c318d3374e06bf78bcfdf458');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["673d30ca37e81740"],"parcel":"c6104859c6b96755","released":["W007"]}','423288aa590de1714444b7a089ffcd2dc4bbf7d7e9399a036695e6aafe72c937');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["1536e1f6442ea443"],"parcel":"24fe95aeb4d287ab","table":"main"}','9227cdc722795cd76face360601152860b25b9933176aa230c4c437d201e2795');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"24fe95aeb4d287ab"}','e7b74484fb197990070d09c578e09b564db9bc41e96ee0f675bc9a15e179df30');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["2210a78bb191a891"],"parcel":"ffd01c4b588bbda0","table":"main"}','cd98daede8f5ba29f4af5fe355973cba0f509c07db1695312d80d3ec7fff92f8');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"28156877d9d14308","line_state":"packed","order_number":"B-04","parcel":"ffd01c4b588bbda0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','d5ecd02c5f7bc47c1e6f3b5a7229be56be911518a2ee575e69abc6c1c284f1f0');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"ffd01c4b588bbda0"}','a9073b0c6d8e1c455259366d2d26cc73f8b8e5a89c282bd382dc2e1dd2f13439');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["3d65f4cce91b0c38"],"parcel":"916075b2f7b1adeb","table":"second"}','9847b1cb6a2994ec85ec51fe99ff3bc598c4c8bd723eba153b30c3ad56451a02');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"7479a7f239fc88f1","line_state":"packed","order_number":"B-09","parcel":"916075b2f7b1adeb","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','6b84d2c0ffa11cbae9c84777d3d057eaeede39fd4b972d21ecd376c5f29df61a');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["7479a7f239fc88f1","b3527d97518cb022"],"number":"B-09","order":"3d65f4cce91b0c38"}','2c47cc804a975069c40431e5397033d57b14f8441e9b8ddf5357eecba856efe2');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["f852eeb46147e625"],"parcel":"da3d871b784b1019","table":"main"}','dd4026664026356c04b5d13c18baa79b180f0b3b538e5848dd17ceae9ccb0bb3');
INSERT INTO "ledger" VALUES(143,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"e4a3cfd8ce4c8180","line_state":"packed","order_number":"B-03","parcel":"da3d871b784b1019","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','d11029cf9bb1e8d8d97acacdc0253dae075112d5271619c99f06d32e884fbe29');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"fb0f6ffbcd9e167b","reference":"S006-018","stay":"6ef7a6a32b576c97"}],"number":"B-13","order":"b4a1bf450880d521"}','6624d9fcb97933132d545e7b09bab8816a8d959f71f1be962d669ea1d323f960');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["b33b5650c74f9033","c86ab60fa1b4cc07","5dbdeca43179b5a5","38ec13ef876877a7"],"round":"e445f57da2542777"}','cef5b13fcaafa3daef85c90ec82280e8663f3dc0efba1dcd0620212bf4fb1656');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"b33b5650c74f9033","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"e445f57da2542777","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','1dc7da586920be398cbc4cab38f2d444ddd66cba27804f33d9a54fee705e232f');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"5dbdeca43179b5a5","note":"Not in its bin"}','a0e17d20fd84336855dca7a28d91354496bc2c5b50302ad9a0e9e1f11b281740');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"e445f57da2542777","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','c02fe1674fc164dd5b52c6c515a26414be2388353d635bb4c59a8e2585549553');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"e445f57da2542777","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','06627d8f05d55a4dcbd6435416caacde6ca8e120b2a22d2bff7cae921b3d9fc6');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"e445f57da2542777","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','c1dc636f3bc03b14191f1640a524fe48b0a30290eeea1d20d5d917121e56fe86');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','ae7e515018f7cc9f0d64f37cd6d51292b35ce6090b90a58ea4449168cbb422ef');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','439610582fe83da39cdc466f0c92d3677da8727d567e7c7ada4768213c98ccb6');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8c75ec847757d288","reference":"D001-019","stay":"8878f64ef6afb8ca"},{"hold":"already_sold","line":"c661818d55bfe4b4","reference":"W002-016","stay":null}],"number":"B-38","order":"0b429b686a43f1e2"}','efd2be5c7b67305d874e1bbe71eb13db7649ccefaa62e2752beb27f825f6529d');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"3f1fd7bd83eafcc6","reference":"W001","stay":null}],"number":"B-39","order":"d951e56402573478"}','fae5a62c5b342aac80c8849e8dd6f9fde47f30b209afdec95bb6c54a05468dd9');
INSERT INTO "ledger" VALUES(155,'2026-03-02T15:39:00.000000+00:00','stocktake opened','owner','{"area":"section:S","note":"Spring","stocktake":"2375183499ac07d3"}','e71751760c2d6741f33bd6d4e93d4bb02271c83e92f3163d7a070c048672cf22');
INSERT INTO "ledger" VALUES(156,'2026-03-02T15:46:00.000000+00:00','looked','owner','{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"2375183499ac07d3","unread":0}','e6bfd29587bfa7fb3312cf15ffb3f11b43c9f081474b25e71af4d96a5f93c7fe');
INSERT INTO "ledger" VALUES(157,'2026-03-02T15:54:00.000000+00:00','looked','owner','{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"2375183499ac07d3","unread":0}','05ace664782d8442fe6644eabc46c0d97e06e3c1f6633d5e38e24d842e371042');
INSERT INTO "ledger" VALUES(158,'2026-03-02T16:00:00.000000+00:00','finding resolved','owner','{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"2375183499ac07d3","sure":false}','7d775905aff938a53b7bab8faf0ac69a1d9acca953f21ca9662511163995f734');
INSERT INTO "ledger" VALUES(159,'2026-03-02T16:03:00.000000+00:00','finding resolved','owner','{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"2375183499ac07d3","sure":false}','e2acebd3abe0a4a15dafaab3369c5e478e909ead2422b8d02009f194710de669');
INSERT INTO "ledger" VALUES(160,'2026-03-02T16:06:00.000000+00:00','finding resolved','owner','{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"2375183499ac07d3","sure":false}','d946b67035973278726d7bccea299f08838d65ad463ecbfb8b85492dc38220b5');
INSERT INTO "ledger" VALUES(161,'2026-03-02T16:09:00.000000+00:00','finding reopened','owner','{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"2375183499ac07d3"}','13d61b1dfcc0c29940fe716443959b8811b3dc5132ce8ee324199d89e6305e19');
INSERT INTO "ledger" VALUES(162,'2026-03-02T16:12:00.000000+00:00','stocktake closed','owner','{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"2375183499ac07d3"}','8bd3c8c73f69fd365b85a0012243e7e37bd2d297c0588b0436a2c0d057617b3b');
INSERT INTO "ledger" VALUES(163,'2026-03-02T16:15:00.000000+00:00','stocktake opened','owner','{"area":"section:L","note":"Spring","stocktake":"53e59c2f96c994e1"}','a97cb7ec8eed51e2e43499e0d5c93a98eae7996dbe1eefd0c0fd773be0367671');
INSERT INTO "ledger" VALUES(164,'2026-03-02T16:22:00.000000+00:00','looked','owner','{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"53e59c2f96c994e1","unread":0}','2dd32f915fb5c58f54dbd8dfd816478286b6546aecd196e263ffc40e93fa20fb');
INSERT INTO "ledger" VALUES(165,'2026-03-02T16:25:00.000000+00:00','card lost','owner','{"code":"L008"}','4f26212f8762e68b224605d521558f8ad584eb4f01122730f6f64180c4165187');
INSERT INTO "ledger" VALUES(166,'2026-03-02T16:25:00.000000+00:00','finding resolved','owner','{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"53e59c2f96c994e1","sure":false}','ca2bf6a333d98fb9e128c3bf0bbaf96f3ea44f525225362178a57096378c440f');
INSERT INTO "ledger" VALUES(167,'2026-03-02T16:28:00.000000+00:00','withdrawn','owner','{"code":"L009","reason":"Nowhere to be found","stay":"0dfc2b6ab49c96cd"}','8784ad9f2e3b9368e1f49ffb40edadf75a96de5b7a4359c025d641bf6ced9d65');
INSERT INTO "ledger" VALUES(168,'2026-03-02T16:28:00.000000+00:00','finding resolved','owner','{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"53e59c2f96c994e1","sure":false}','4f3235bb6bfe8af24743cc41c9b1a49bccd9ed9a9256a01dc1da1ae7583d0e8a');
INSERT INTO "ledger" VALUES(169,'2026-03-02T16:31:00.000000+00:00','stocktake opened','owner','{"area":"section:D","note":"","sample":{"bins":["A-1-2"],"chosen":"blind","of":3},"stocktake":"68fb2adae706d092"}','d774399ce4e8d25aa4bbfd1c3c1c61076b27123f9dfaa8ac72d5a99668a68531');
INSERT INTO "ledger" VALUES(170,'2026-03-02T16:34:00.000000+00:00','stocktake opened','owner','{"area":"tray","note":"Too late today","stocktake":"3857c45b9bb169d7"}','d5dee38ac9df25f92c3cd83ec49817bc5403b602bf8c3f822a7c3e0b8ecac69c');
INSERT INTO "ledger" VALUES(171,'2026-03-02T16:37:00.000000+00:00','stocktake cancelled','owner','{"stocktake":"3857c45b9bb169d7"}','2199d537ea41e3d4c35adb7e4b48056cd6f5bced962e55ffba7646f6b142df2c');
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
INSERT INTO "lines" VALUES(1,'8efcdbf0e3c97007','3fe5175b0348bec1',1,'W001-01E','Front wheel 1','','6c6b48db62c1f10f','released',NULL,'','ed7e512c143b3e23','0707958a4d5c769b',1,NULL,1);
INSERT INTO "lines" VALUES(2,'ceb049c4a617c36c','3fe5175b0348bec1',2,'W002-016','Front wheel 2','','7cfd3b4b469fb8b9','released',NULL,'','ed7e512c143b3e23','0707958a4d5c769b',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'e4a3cfd8ce4c8180','f852eeb46147e625',1,'S002-013','Leather saddle 2','','8d2341a50d4be34c','packed',NULL,'','da3d871b784b1019','0707958a4d5c769b',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'b144d6d166c45376','f852eeb46147e625',2,'S003-01W','Leather saddle 3','','440e927c9ea6a098','picked',NULL,'',NULL,'0707958a4d5c769b',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'28156877d9d14308','2210a78bb191a891',1,'S004-01O','Leather saddle 4','','c218aec6a52508b4','packed',NULL,'','ffd01c4b588bbda0','0707958a4d5c769b',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'0e9133854ac3475e','2210a78bb191a891',2,'S005-01G','Leather saddle 5','','7be724f9277bbec2','picked',NULL,'',NULL,'0707958a4d5c769b',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'b33b5650c74f9033','12fee820769e8102',1,'L002-017','Dynamo lamp 2','','76b450fdc3781b43','picked',NULL,'',NULL,'e445f57da2542777',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'c86ab60fa1b4cc07','d23b8ee070cf879d',1,'L003-010','Dynamo lamp 3','','5f3938c98f99d9d1','waiting',NULL,'',NULL,'e445f57da2542777',2,NULL,1);
INSERT INTO "lines" VALUES(9,'5dbdeca43179b5a5','5a2e5d2512299e85',1,'L004-01S','Dynamo lamp 4','','297dbdc8144e225b','short',NULL,'',NULL,'e445f57da2542777',3,NULL,1);
INSERT INTO "lines" VALUES(10,'ac2c08a5fd0b79c7','ea5ced122862ebd3',1,'L005-01K','Dynamo lamp 5','','d73e2d32fa369e67','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'7479a7f239fc88f1','3d65f4cce91b0c38',1,'L006-01C','Dynamo lamp 6','','045fd7b03dd6d8ba','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','916075b2f7b1adeb','0707958a4d5c769b',4,NULL,1);
INSERT INTO "lines" VALUES(12,'b3527d97518cb022','3d65f4cce91b0c38',2,'L011-010','Dynamo lamp 11','','b19e2b26bfa96757','cancelled',NULL,'',NULL,'0707958a4d5c769b',4,NULL,1);
INSERT INTO "lines" VALUES(13,'fb0f6ffbcd9e167b','b4a1bf450880d521',1,'S006-018','Saddle with springs','','6ef7a6a32b576c97','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'0707958a4d5c769b',5,NULL,1);
INSERT INTO "lines" VALUES(14,'dd0ffc871cc91f84','192783ed0fdd7266',1,'L007-014','Dynamo lamp 7','','f2a45378afe706b9','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'19d7c36b7fc90462','d6f37f3700a21d69',1,'D009-01B','Rear derailleur 9','','83065369cc0e4c39','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'b1e05c6bb901853d','75e2701f2d2d51d8',1,'W006-013','Front wheel 6','','8bf8aee8521f4bf4','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'4afc75e2922bd91f','1536e1f6442ea443',1,'S007-01Z','Leather saddle 7','','39f5ce666672ef42','picked',NULL,'',NULL,'0707958a4d5c769b',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'9665feb4e1c6fc33','673d30ca37e81740',1,'W007-01W','Front wheel 7','','e98bd25785300c27','released',NULL,'','c6104859c6b96755','0707958a4d5c769b',7,NULL,1);
INSERT INTO "lines" VALUES(19,'726e2d96ec7879cc','673d30ca37e81740',2,'W008-01O','Front wheel 8','','7a6d79667c96c7c2','waiting',NULL,'',NULL,'0707958a4d5c769b',7,NULL,1);
INSERT INTO "lines" VALUES(20,'38ec13ef876877a7','b3db240cd8068be0',1,'D008-01J','Rear derailleur 8','','4e2f5ac8192e29ac','waiting',NULL,'',NULL,'e445f57da2542777',4,NULL,1);
INSERT INTO "lines" VALUES(21,'20e1147707de6a8e','a3e1117804e49755',1,'D003-01U','Bell with a crown','','bd448eea6202f80b','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'f46c732071a55241','a6cff6d83180ad20',1,'D005-01E','Rear derailleur 5','','2de495d0e43d385c','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'73e5a0ab08943353','a6cff6d83180ad20',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'35b911cc69e9931e','526157495d97db8e',1,'D006-016','Rear derailleur 6','','8806b0af37e404fd','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'203430c4155cf5d4','526157495d97db8e',2,'D007-01R','Rear derailleur 7','','d4f65407c2b94a08','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'81e6f0a4e49e8d83','029910ddca10789e',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'bfd0cef5c24e68e4','b5dc9754a7e00ae0',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'6836c265f3447949','4d8635e1926d682c',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'94a4c2d8221049fe','0f6df759bbf57688',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'2f457f536176ab07','280dbdedc42219c2',1,'W005-01B','Bell with a crown','','8e95ea89b221ba9b','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'233e7f9b600ff306','36f322222853f3e8',1,'S012-01O','','','510f9348190362e7','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'554ead39525292b3','2ff2332c45211455',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'8c75ec847757d288','0b429b686a43f1e2',1,'D001-019','Rear derailleur 1','','8878f64ef6afb8ca','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'c661818d55bfe4b4','0b429b686a43f1e2',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'3f1fd7bd83eafcc6','d951e56402573478',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "looks" VALUES(1,'done-1','cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c','2375183499ac07d3','B-1-1','2026-03-02T15:46:00.000000+00:00','wedge','[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]',1,NULL,'[]',NULL);
INSERT INTO "looks" VALUES(2,'done-2','88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c','2375183499ac07d3','B-1-2','2026-03-02T15:54:00.000000+00:00','photo','[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]',1,NULL,'[600, 400]','e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO "looks" VALUES(3,'runs-1','f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11','53e59c2f96c994e1','C-1-1','2026-03-02T16:22:00.000000+00:00','wedge','[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]',1,NULL,'[]',NULL);
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
INSERT INTO "orders" VALUES(1,'3fe5175b0348bec1','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'f852eeb46147e625','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','da3d871b784b1019');
INSERT INTO "orders" VALUES(3,'2210a78bb191a891','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','ffd01c4b588bbda0');
INSERT INTO "orders" VALUES(4,'12fee820769e8102','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'d23b8ee070cf879d','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'5a2e5d2512299e85','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'ea5ced122862ebd3','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'3d65f4cce91b0c38','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','916075b2f7b1adeb');
INSERT INTO "orders" VALUES(9,'b4a1bf450880d521','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'192783ed0fdd7266','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'d6f37f3700a21d69','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'75e2701f2d2d51d8','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'1536e1f6442ea443','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'673d30ca37e81740','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'b3db240cd8068be0','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'a3e1117804e49755','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'a6cff6d83180ad20','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'526157495d97db8e','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'029910ddca10789e','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'b5dc9754a7e00ae0','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'4d8635e1926d682c','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'0f6df759bbf57688','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'280dbdedc42219c2','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'36f322222853f3e8','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'2ff2332c45211455','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'0b429b686a43f1e2','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'d951e56402573478','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'ed7e512c143b3e23','main','3fe5175b0348bec1','2026-03-02T13:56:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'c6104859c6b96755','main','673d30ca37e81740','2026-03-02T14:19:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'24fe95aeb4d287ab','main','1536e1f6442ea443','2026-03-02T14:34:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'ffd01c4b588bbda0','main','2210a78bb191a891','2026-03-02T14:40:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'916075b2f7b1adeb','second','3d65f4cce91b0c38','2026-03-02T14:49:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'da3d871b784b1019','main','f852eeb46147e625','2026-03-02T14:58:00.000000+00:00','open');
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
INSERT INTO "resolutions" VALUES(1,'2375183499ac07d3.elsewhere-S012','2375183499ac07d3','{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}','put_right','','owner','2026-03-02T16:00:00.000000+00:00','{"before": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": null}, "Stay": {"id": "510f9348190362e7", "item": "c2ff2d18513c2b96", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "233e7f9b600ff306", "order": "36f322222853f3e8", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "510f9348190362e7", "state": "waiting", "hold": null, "why": "", "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "after": {"Slot": {"code": "S012", "section": "S", "number": 12, "bin": "B-1-2", "turns": 1, "card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"id": "510f9348190362e7", "item": "c2ff2d18513c2b96", "code": "S012", "turn": 1, "began": "2026-03-02T09:44:00+00:00", "state": "stored", "ended": null, "reason": ""}, "Line": {"id": "233e7f9b600ff306", "order": "36f322222853f3e8", "position": 1, "reference": "S012-01O", "title": "", "listing": "", "stay": "510f9348190362e7", "state": "waiting", "hold": null, "why": "", "parcel": null, "round": null, "basket": null, "scan": null, "in_file": true}}, "to": null}');
INSERT INTO "resolutions" VALUES(2,'2375183499ac07d3.unknown-Q0771','2375183499ac07d3','{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}','ignore','A neighbour''s','owner','2026-03-02T16:03:00.000000+00:00','{"before": {}, "after": {}, "to": null}');
INSERT INTO "resolutions" VALUES(3,'53e59c2f96c994e1.missing-L008','53e59c2f96c994e1','{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}','lost','','owner','2026-03-02T16:25:00.000000+00:00','{"before": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null}, "Stay": {"id": "905b45c89c66abf6", "item": "824b1188a15a200d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L008", "section": "L", "number": 8, "bin": "C-1-1", "turns": 1, "card": "lost", "seen": null}, "Stay": {"id": "905b45c89c66abf6", "item": "824b1188a15a200d", "code": "L008", "turn": 1, "began": "2026-03-02T10:08:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO "resolutions" VALUES(4,'53e59c2f96c994e1.missing-L009','53e59c2f96c994e1','{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8, "doubtful": false}','withdraw','Nowhere to be found','owner','2026-03-02T16:28:00.000000+00:00','{"before": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "on_item", "seen": null}, "Stay": {"id": "0dfc2b6ab49c96cd", "item": "e1b0509f663c2c15", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"code": "L009", "section": "L", "number": 9, "bin": "C-1-1", "turns": 1, "card": "due", "seen": null}, "Stay": {"id": "0dfc2b6ab49c96cd", "item": "e1b0509f663c2c15", "code": "L009", "turn": 1, "began": "2026-03-02T10:11:00+00:00", "state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'0707958a4d5c769b','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'e445f57da2542777','2026-03-02T15:07:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','d0b940abdd5fa779e828d02d3ea14f22c7e2bd0209e8db95c68a1930ca95d167','bin','0707958a4d5c769b','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','53dc22960b8b8e5690a7bf23c6ad26af822c4d27972cd1eb4a2c1f759e10e0a5','bin','0707958a4d5c769b','W001',0,1,1,'8efcdbf0e3c97007',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "3fe5175b0348bec1", "order_number": "B-01", "line": "8efcdbf0e3c97007", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','22a19cf3b3d3f2e5991dcbc3c821e0b38a69d3054dcf9ed6be095976f2f8ff2e','bin','0707958a4d5c769b','W002',0,1,1,'ceb049c4a617c36c',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "3fe5175b0348bec1", "order_number": "B-01", "line": "ceb049c4a617c36c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','b9853596360fc09b6e2877ab150c0d33a9878d4563c02fe38d87a1eb80a9f317','bin','0707958a4d5c769b','S002',0,1,1,'e4a3cfd8ce4c8180',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f852eeb46147e625", "order_number": "B-03", "line": "e4a3cfd8ce4c8180", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','5c8f7e88ae0ef69e7803b01889d2406ddd478e496739250b850a7b1e48c0bf20','bin','0707958a4d5c769b','S003',0,1,1,'b144d6d166c45376',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "f852eeb46147e625", "order_number": "B-03", "line": "b144d6d166c45376", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','9af14648926cd88de796317e3046709c56eba93dbe119719624ec9f01666fa92','bin','0707958a4d5c769b','S004',0,1,1,'28156877d9d14308',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2210a78bb191a891", "order_number": "B-04", "line": "28156877d9d14308", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','25acd6dfb2fe20a3fa7c1237e0394ae4fef4083e55c77bedeb16ea3cd3c289e3','bin','0707958a4d5c769b','S005',0,1,1,'0e9133854ac3475e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "2210a78bb191a891", "order_number": "B-04", "line": "0e9133854ac3475e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','b01ec6256821d138aeddae7b6e22d97d593a65af2cac03ea3cc2a7c71a778b05','bin','0707958a4d5c769b','L006',0,1,1,'7479a7f239fc88f1',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3d65f4cce91b0c38", "order_number": "B-09", "line": "7479a7f239fc88f1", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','e76f719a2b77eeb27dd0b4e5f5580914db45462e831a01937f1e500b336028a5','bin','0707958a4d5c769b','L011',0,1,1,'b3527d97518cb022',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "3d65f4cce91b0c38", "order_number": "B-09", "line": "b3527d97518cb022", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','e740def782c99bc0b9b9c7bdb612e9069a7a3f47710e10c9640e74e4bccd1f81','bin','0707958a4d5c769b','S006',0,1,1,'fb0f6ffbcd9e167b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "b4a1bf450880d521", "order_number": "B-13", "line": "fb0f6ffbcd9e167b", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','98161a83cb3a3e058aca2b47d137ecdc0a3c2e72fab8ea0aa5334a0539124dd1','bin','0707958a4d5c769b','S007',0,1,1,'4afc75e2922bd91f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "1536e1f6442ea443", "order_number": "B-22", "line": "4afc75e2922bd91f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','649a0326629be4cc9b2e7ee366ab3e4ffaa8768c129b72a2d72b5e03b5b7958f','bin','0707958a4d5c769b','W007',0,1,1,'9665feb4e1c6fc33',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "673d30ca37e81740", "order_number": "B-23", "line": "9665feb4e1c6fc33", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','d620bf5f7f9ccae18eda5db6eb399fc2d721a45f823ed415ca18b633fc74d09b','bin','0707958a4d5c769b','W008',0,1,1,'726e2d96ec7879cc',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "673d30ca37e81740", "order_number": "B-23", "line": "726e2d96ec7879cc", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'e4a3cfd8ce4c8180','ed7e512c143b3e23','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f852eeb46147e625", "order_number": "B-03", "line": "e4a3cfd8ce4c8180", "line_state": "picked", "order_state": "picking", "parcel": "ed7e512c143b3e23", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'8efcdbf0e3c97007','ed7e512c143b3e23','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "3fe5175b0348bec1", "order_number": "B-01", "line": "8efcdbf0e3c97007", "line_state": "packed", "order_state": "picking", "parcel": "ed7e512c143b3e23", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'ceb049c4a617c36c','ed7e512c143b3e23','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "3fe5175b0348bec1", "order_number": "B-01", "line": "ceb049c4a617c36c", "line_state": "released", "order_state": "released", "parcel": "ed7e512c143b3e23", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'8efcdbf0e3c97007',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "3fe5175b0348bec1", "order_number": "B-01", "line": "8efcdbf0e3c97007", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'9665feb4e1c6fc33','c6104859c6b96755','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "673d30ca37e81740", "order_number": "B-23", "line": "9665feb4e1c6fc33", "line_state": "packed", "order_state": "waiting", "parcel": "c6104859c6b96755", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'28156877d9d14308','ffd01c4b588bbda0','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2210a78bb191a891", "order_number": "B-04", "line": "28156877d9d14308", "line_state": "packed", "order_state": "picking", "parcel": "ffd01c4b588bbda0", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'7479a7f239fc88f1','916075b2f7b1adeb','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3d65f4cce91b0c38", "order_number": "B-09", "line": "7479a7f239fc88f1", "line_state": "packed", "order_state": "picking", "parcel": "916075b2f7b1adeb", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'e4a3cfd8ce4c8180','da3d871b784b1019','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "f852eeb46147e625", "order_number": "B-03", "line": "e4a3cfd8ce4c8180", "line_state": "packed", "order_state": "picking", "parcel": "da3d871b784b1019", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','9e06a755e50fbca91e463f9b3b1dc3f2b887cb0006a585c74936ca774e70149f','bin','e445f57da2542777','L002',0,1,1,'b33b5650c74f9033',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "12fee820769e8102", "order_number": "B-05", "line": "b33b5650c74f9033", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','eed1e61426050f7950558b0167676ee7ac546a116a8f30b6f211bb4e57bdee18','bin','e445f57da2542777',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','047582e7a11e0aee4d34901b68522a9059fb88cf603a38ab5857c6904a5de1a6','bin','e445f57da2542777',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','72aebaab40ceae081439f9d5d0e429178e3b0f3572b031776b39d1b3c3174cce','bin','e445f57da2542777',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "slots" VALUES(42,'S012','S',12,'B-1-2',1,'on_item','shelf','B-1-2',1);
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
INSERT INTO "slots" VALUES(53,'L008','L',8,'C-1-1',1,'lost',NULL,NULL,NULL);
INSERT INTO "slots" VALUES(54,'L009','L',9,'C-1-1',1,'due',NULL,NULL,NULL);
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
INSERT INTO "stays" VALUES(1,'8878f64ef6afb8ca','fdf7c5741af21286','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'fb41a0ce7a96c8c1','aea9dbb14e5c602e','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'bd448eea6202f80b','2044d4e3bfd82cb1','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'7aa77db57e3581b1','0ac633161096bfcf','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'2de495d0e43d385c','785fe178219bd92a','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'8806b0af37e404fd','db69061c17778d24','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'d4f65407c2b94a08','ba152266000086d3','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'0a837506cb71b9ff','44ee5462c6ca7261','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'83065369cc0e4c39','5bf8d9319f488a20','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'5e7502ab518bb600','341fe7fddd1f4298','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'692958535eb3c2d5','1bccb30978e82208','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'6a20e0da0067e99e','e21efaedc365d788','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'aec6446c50201e26','9eba252b570cbeaf','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'8d2341a50d4be34c','2b4832181b7bb725','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'440e927c9ea6a098','309479fc463ae4ef','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'c218aec6a52508b4','1ee8761bfa0fe4b0','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'7be724f9277bbec2','41e974a34deae0a7','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'6ef7a6a32b576c97','1039ef6966cd1019','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'39f5ce666672ef42','28e82e0b6d316ad5','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'8f2d0a257116cd29','9f95ca8e1d5a5d82','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'44d290f826603492','7319b042622a711a','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'992dd535f252046e','bfda63ba7adcb350','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'6dbb197d84d935af','fbac2c5feb9d9104','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'510f9348190362e7','c2ff2d18513c2b96','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'0f51ea6f0d809b3e','2d146d519532191b','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'76b450fdc3781b43','88150fb413d2931c','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'5f3938c98f99d9d1','e9ca285e6b671778','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'297dbdc8144e225b','2c1e9a1bb846c7e9','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'d73e2d32fa369e67','8deddd5337935f16','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'045fd7b03dd6d8ba','0cda54b6297b127d','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'f2a45378afe706b9','9eb99135d2636d75','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'905b45c89c66abf6','824b1188a15a200d','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'0dfc2b6ab49c96cd','e1b0509f663c2c15','L009',1,'2026-03-02T10:11:00.000000+00:00','withdrawn','2026-03-02T16:28:00.000000+00:00','Nowhere to be found');
INSERT INTO "stays" VALUES(34,'f363de803f1afb0d','2ad71ee3afae520f','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'b19e2b26bfa96757','9cc6a979996f3585','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'bab4051e54feaa1d','f6bb020e8a89fa5c','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'6c6b48db62c1f10f','9eebd0ec8a4d46ff','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'7cfd3b4b469fb8b9','678bd7767cef15c5','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'b9ad82c5e0408b86','b0ff787a700dd1a6','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'a1513a32855b09e0','a5e0772275e6a45f','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'8e95ea89b221ba9b','c423c2212e6a835f','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'8bf8aee8521f4bf4','11fc67d469f5fb54','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'e98bd25785300c27','df994d6063947a1f','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'7a6d79667c96c7c2','6a7a08fc750cedfe','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'ba6b5cda9d73a3ac','f7f6fb24a0b5f135','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'91516500fc785005','e21758799af58149','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'05c052283b802217','fd6491609468cc10','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'c70f4036ea29c3f6','b1117719e41f7b23','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'24b94cf722102eab','1ba52d9f9aa618d5','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'8c3c8ba3010d1033','7319b042622a711a','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'4e2f5ac8192e29ac','44ee5462c6ca7261','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'110783a25f3a3561','b4f7db73ef85ea11','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stocktakes" VALUES(1,'2375183499ac07d3','section:S','Spring','2026-03-02T15:39:00.000000+00:00',154,'closed','2026-03-02T16:12:00.000000+00:00','{"stocktake": "2375183499ac07d3", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "unclear": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "unclear": 0, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2, "doubtful": false}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null, "doubtful": false}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}',NULL);
INSERT INTO "stocktakes" VALUES(2,'53e59c2f96c994e1','section:L','Spring','2026-03-02T16:15:00.000000+00:00',162,'open',NULL,'',NULL);
INSERT INTO "stocktakes" VALUES(3,'68fb2adae706d092','section:D','','2026-03-02T16:31:00.000000+00:00',168,'open',NULL,'','{"chosen": "blind", "of": 3, "bins": ["A-1-2"]}');
INSERT INTO "stocktakes" VALUES(4,'3857c45b9bb169d7','tray','Too late today','2026-03-02T16:34:00.000000+00:00',169,'cancelled','2026-03-02T16:37:00.000000+00:00','',NULL);
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
INSERT INTO "stops" VALUES(1,'0707958a4d5c769b',1,'e4a3cfd8ce4c8180','B-1-1');
INSERT INTO "stops" VALUES(2,'0707958a4d5c769b',2,'b144d6d166c45376','B-1-1');
INSERT INTO "stops" VALUES(3,'0707958a4d5c769b',3,'28156877d9d14308','B-1-1');
INSERT INTO "stops" VALUES(4,'0707958a4d5c769b',4,'0e9133854ac3475e','B-1-1');
INSERT INTO "stops" VALUES(5,'0707958a4d5c769b',5,'fb0f6ffbcd9e167b','B-1-1');
INSERT INTO "stops" VALUES(6,'0707958a4d5c769b',6,'4afc75e2922bd91f','B-1-1');
INSERT INTO "stops" VALUES(7,'0707958a4d5c769b',7,'8efcdbf0e3c97007','D-1-1');
INSERT INTO "stops" VALUES(8,'0707958a4d5c769b',8,'ceb049c4a617c36c','D-1-1');
INSERT INTO "stops" VALUES(9,'0707958a4d5c769b',9,'9665feb4e1c6fc33','D-1-1');
INSERT INTO "stops" VALUES(10,'0707958a4d5c769b',10,'726e2d96ec7879cc','D-1-1');
INSERT INTO "stops" VALUES(11,'0707958a4d5c769b',11,'7479a7f239fc88f1','C-1-1');
INSERT INTO "stops" VALUES(12,'0707958a4d5c769b',12,'b3527d97518cb022','C-1-2');
INSERT INTO "stops" VALUES(13,'e445f57da2542777',1,'38ec13ef876877a7','A-1-2');
INSERT INTO "stops" VALUES(14,'e445f57da2542777',2,'b33b5650c74f9033','C-1-1');
INSERT INTO "stops" VALUES(15,'e445f57da2542777',3,'c86ab60fa1b4cc07','C-1-1');
INSERT INTO "stops" VALUES(16,'e445f57da2542777',4,'5dbdeca43179b5a5','C-1-1');
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
CREATE INDEX ix_stocktakes_state ON stocktakes (state);
CREATE INDEX ix_looks_stocktake ON looks (stocktake);
CREATE INDEX ix_looks_photo ON looks (photo);
CREATE INDEX ix_resolutions_stocktake ON resolutions (stocktake);
CREATE INDEX ix_aliases_code ON aliases (code);
COMMIT;
