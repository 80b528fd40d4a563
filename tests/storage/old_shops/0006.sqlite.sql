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
INSERT INTO "access" VALUES(1,'ad73e4cf4488ac1938e2b91f02129bff05a8f6e7f9a6979692cf6bef49b46080','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$48PqbMPLTdFUFDst/MnhtA$O/jEzMP+flv7fkLcNnQo3O5Zg5z7xR72rB1jNLQSeD8','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'25624704f1bbdb028d4a3af43e969d440b0f319b7df426d50ac416375f728654','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'41f061c1ba3c08c94c669887cb168f313d42f9604531ecb2a2a7ae566b45a7a1','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'71fd0b33b1ab9e895bb41de730915d32530dea79586632da19f63e9fcae6e7e3','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'53ed5dc4022d83fe843d70c7f2bb40d6b106599faae1a92074172827069eb37f','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0006');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/fdb6f98269e728e6','{"id": "fdb6f98269e728e6", "item": "9d5085663f56f994", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
INSERT INTO "head" VALUES(1,171,'28db79915138aab3d702feaf2426ecb580b73942f954c732fbfb6b3c6c7a581d','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90, "count_weeks": 0, "count_began": ""}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'4dbdf929879b1173','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'16876ed3e29f8b73','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'12891f07eeff5f79','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'c831ab6e015db0ed','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'d369916b47257ab5','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'735048295fa03b9c','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'47679c4ef6e8f91d','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'9e725c28856d089b','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'1014aaa69de08051','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'ff861d3b7c2b07af','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'6d02ddf26d7f59c4','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'7787b152323f6a00','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'c3ff82ab38ec4889','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'6975541c46d61d7a','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'1cd10dec178c79aa','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'422e15ea070f54bd','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'468dac082d8c7c1f','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'31950a00aca86de6','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'89eb10ba24d06067','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'95dffe7bb6578118','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'dfd7cb551e05f365','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'c34d6efe05107cc9','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'612b609c20e8535f','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'af1f92fe08d1bb1f','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'0ad55110c2128f58','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'ac3192ffd33abdde','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'18886d4940d281f0','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'229b11d7b4936c65','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'f5394e56c907f10a','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'7dcf40183c48d860','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'fa438593aae91b7d','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'acd292a096bd2df9','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'23974c2eeaa3ebb1','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'ec0ea4e1f0beecfa','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'987aef6138ab185b','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'17e31560176b62e2','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'8d2eaac7ea7c6b09','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'b8722d67b28dfe19','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'15d2e94bfccceb88','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'829e336cfbe1ec56','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'fd860443094f7537','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'0b5ed662e3716e32','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'66876ee626daa53a','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'765b35e9b8b79acd','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'061719ad9b1d501e','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'8a0df3300a4de490','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'4dcac62cf388fecd','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'2d7230341f74adfa','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'9d5085663f56f994','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'88083360949ff24f','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','4233727f95dd4252','2557');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"729b790c7415d40e","title":"Rear derailleur 1","turn":1}','ecce51087b02ddd88885ef0a3b1362a03a0055fbd828cdb0b702d239d4df697e');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"18b55728826b1ab9","title":"Rear derailleur 2","turn":1}','a5ddf19edfa5046cbd485b418c8aaa4b8a597d2852058a6c4ae345c3e5c60144');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"23e0e0a6301e6b8c","title":"Rear derailleur 3","turn":1}','cc40be4eb308670690eebc4d43e556c396033212bcec8453103fb86f59f53077');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"8e0164c95f9e0a06","title":"Rear derailleur 4","turn":1}','1eff0ab0b86a321cd8b83d6c382c7faa7b4373f79210d1703e647b072462d357');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"c8a6e49542cbe5f3","title":"Rear derailleur 5","turn":1}','7bc2a0d5b7021312eebaf1f8cee99dd78b6a856247f3d6de2a12ee95e9e7ddd8');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"6b674d6a645c9b69","title":"Rear derailleur 6","turn":1}','7ef50d8620fea76bbe9fba555c1860e2ea88e8b00de393b9a1d0453ba8853148');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"88393580eaa1daea","title":"Rear derailleur 7","turn":1}','91754d77abd83eb36cc8d8f5d6c4465a237439f7aa59294e8a63162fd765549b');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"61bc39e628f3ce16","title":"Rear derailleur 8","turn":1}','b63d6c0204ca8d75a0b3b85f43b78cacbdd41c3ea4abf3633f74bb9eea9d55f7');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"879ad2d7ac7f6d7e","title":"Rear derailleur 9","turn":1}','d48c0aaf5d4ebf961eaa62a963e5f6e5478b7bdfa5197d5c210e93526f54fde8');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"34c2478e2ad8ce79","title":"Rear derailleur 10","turn":1}','1bb629c59d2b3893b60772c89402964a40f5888bb664ec0d14a10ad2fa783b7e');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"8e970281859a073c","title":"Rear derailleur 11","turn":1}','484da3ba6acc3a1734e610fc63328a2c3c781465ea969cb84aab1c824b78e91a');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"bc3879b24f32785d","title":"Rear derailleur 12","turn":1}','0cacedb55e945865c5d1ae2904e4071351e75972d0fb4b28b60a24344b75e24e');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"0c662f859b98c0fd","title":"Leather saddle 1","turn":1}','951d6587d93f77730ac6a16b5be61db6ea08cda226d9e704a98dce85c9cb6517');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"88082fccdbec5f2a","title":"Leather saddle 2","turn":1}','9c7ad8c85261a4130fd0b454d2d45470f5562a26233d76e2e6536ab72a6e8487');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"74a5a97bbf935a58","title":"Leather saddle 3","turn":1}','75853193c9b602eebe285aeffb98dfcf1572e7ef3ac36eaf066db5de6df441f7');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"2001492bb12d23eb","title":"Leather saddle 4","turn":1}','fda537688eb8226987770bc113b8654735343d2a2c22d456b1fcd8276eb0b07a');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"310bbbdcc9d694c5","title":"Leather saddle 5","turn":1}','d7fe8a3c7b35b76170651f3d115a56e324fb620a435d74359903894f2c3e5407');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"d290faa57c978d42","title":"Leather saddle 6","turn":1}','2facd79bd116a16f224369cc8570e1827ec9ad8a226b5005bbb9c6ba2965fff2');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"4c7081361ed1c32c","title":"Leather saddle 7","turn":1}','5b8296326a5ec1357235728d613ebc4e186d93db1b5aeb51095e27624b609ee4');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"6849e9ef14f2917c","title":"Leather saddle 8","turn":1}','6070a82fdf12ffbb4c8d20f9bb49c2869b920fce7d7a80e1986246ad487566ff');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"eba44360c445b23d","title":"Leather saddle 9","turn":1}','0fd4bba49b23006abdbe13a854e1bf8b426221a70dd709f9ee527a7b0470dad3');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"4eba90bec84f0101","title":"Leather saddle 10","turn":1}','9cc8d0404dec0d5be8828eb87a219422c2312c06dc0dfe9dbd05ddbea5350d8d');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"6f014277bb7245ab","title":"Leather saddle 11","turn":1}','3e47b33740dffed717bdb9434306168829e7d0ab14b491b9ab77ed73e99749db');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"d49aca1ed81c349c","title":"Leather saddle 12","turn":1}','76c6f45ebf16cece895395dbf3c6f12cb77c06c3c9a3c91c153d6a39f88bf2d9');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"a70bc00763765a64","title":"Dynamo lamp 1","turn":1}','f50208631b7ad721f13bad7c2fb63d29248f020f5cf4ae91a602007b6260bbfe');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"42d85892bf72c1b1","title":"Dynamo lamp 2","turn":1}','1dd2a7afe9dfd9afcd3a5379dff1968f09b27821450a30462a319f7cc7a5202f');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"020dd7ac72c61870","title":"Dynamo lamp 3","turn":1}','fa0ce9d83b4e4d9bbd270c08230324a79f760edfa1224f41cde52698a41ed25b');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"ac9ffae991c110b2","title":"Dynamo lamp 4","turn":1}','54e9e28f0929d92c3eff468e780252c491642110515c23a3ae0bc1c027a8701a');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"ffb0665cdc9936d9","title":"Dynamo lamp 5","turn":1}','1870ce20cca2bbefc7c3a6b1399dc41d6494ff404cdd97de0061dfee2357a2a6');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"51dd277c6b3b0484","title":"Dynamo lamp 6","turn":1}','98b0f1867142a00a2bfd14cea558b46c1a40978c71559fa5dcdd45d35cce90f7');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"515bf4667720a7c0","title":"Dynamo lamp 7","turn":1}','ddb556c6fe6ed44475ed66838d61afa20510f6d587eff4919c2001e3a83406fb');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"5699b8113a9fd67c","title":"Dynamo lamp 8","turn":1}','ac8477468e35a013c995b5443a11947c23aec0b0fdb22891b3b328942a18bc53');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"081daa8807c8817a","title":"Dynamo lamp 9","turn":1}','73e1c8de2dc268c249342ecf3ae3d2b6563eebf8f8f43eb5f39714c2acfaf9c7');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"0e6c034562073510","title":"Dynamo lamp 10","turn":1}','1f7295ae321911edb26e2273c7f5d166be39a4427cc9550fc99d37f496d9f9f0');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"af82a21fd6dfdf4f","title":"Dynamo lamp 11","turn":1}','e2f5b83ff0e1667f981c2936fcb047d3a649a6dba70730f83457d92231c72c29');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"063b3743c7d84153","title":"Dynamo lamp 12","turn":1}','301856748a8eb5632dbfcbc5a6f681275cb0ef38c186d7938202ea660d8e34e0');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"db9a25b64a2545ce","title":"Front wheel 1","turn":1}','f0c7d4d75d1588dca23fb6bd2ca5155efc3cc026b86e53b39f30df8bc243afe8');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"bfc8198cca8bb577","title":"Front wheel 2","turn":1}','5489ac0e5013b2d0c1a8693cb4fb77779b1109aa4b21fad94e15a0dc33e10078');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"9163be6f883415d6","title":"Front wheel 3","turn":1}','517842e46f621e33d3a8549b808c552d22be1e2b53903171e2cb2a16c7420f1c');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"0230a6fad1c2da6c","title":"Front wheel 4","turn":1}','73ba846639e3e75c8d6a5d18adde167327757b677f4cc4ff995bde116b63aebb');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"335ba662b449e571","title":"Front wheel 5","turn":1}','300483d6d9a85656f844196d6109016f61bd7bd32f522661ac5c58e0a8f9fffd');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"22a87512906e5790","title":"Front wheel 6","turn":1}','1fca64b1443e605027f029cbd539f60b4fd06a900436a2385eaf7a68cbd633db');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"b9b46a0f02dc54a5","title":"Front wheel 7","turn":1}','b8d828c0c7f3f99707d38a7c2c0c498875c20a360a195795b86917ab9f92bd65');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"1688182d7079ee77","title":"Front wheel 8","turn":1}','516f6ebed2f8a255a2b9f04e708c7fff6286596a99889488514acc87c8cc6b74');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"dc77d2095e46aafa","title":"Front wheel 9","turn":1}','41dad6b821acc661121cb26ec7784abf4634507a25c7e48cea34320eab0a7808');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"11d997a1ff93dfdc","title":"Front wheel 10","turn":1}','17d9ea750a329b1c01c5fcaafe716d254b258a998df6d2bc8841ca201d982523');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"ae67f311ec83b03e","title":"Front wheel 11","turn":1}','334a5963ee109512918378c4f723f43d0d2934a272d1e4bc891b897f1c16fbcc');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"2c35ba603350620f","title":"Front wheel 12","turn":1}','685b73346472dd69371e8dc013fdaecf99398d4b000414c013d8168b00d8bd2f');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"fdb6f98269e728e6","title":"Brass bell","turn":1}','2d3787c1ba853cdd0b8d7aa1bf4fe32c5f4ae308206cd51af447f40dfd36dc32');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"18b55728826b1ab9"}','055f3ae2f39d9ee5d1ae688129750d28415f01a748a23aa657a0d1f10441557c');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"4eba90bec84f0101"}','b41930e9f35fa3281501b5a70e82181d468d0803fb632172d5fb56c110f07f6a');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"0230a6fad1c2da6c"}','e4b29b2266f3ce584c2cc47d48de747e0db9bea2b16450cf5effebb1d983f99b');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"582889384fcb9ee0","stay":"eba44360c445b23d","to":"S013"}','d8c1b94c1b542ce4828c038d55f533d8ac986bb393ffba89c87e6fe050b80cb1');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"729b790c7415d40e"}','cdf680b3864726e6335a11d676a9802799963f1b0415321fbc25a73d2fa0f53e');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"0c662f859b98c0fd"}','55b6e75be8bfa887adf06daed869f83ce441b2b5fd33ed18c771b23e949c23df');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"check":"none","count_began":"","count_weeks":0,"name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','dbade4c2ed7c827052ee7a115ce35825a12513eff98b2f62ea814c527fb13f1b');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','fd789ef00dfe6f7d7bb0b1849a4a03ca939b85c42655d54ffc03098d2aab34e6');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','38bf7d01d8bcafe7b2deb97c572ba787f5f0269f57e9da74cc1a347814788e24');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','464dff02e2805ebb9c7b69190dca204d9b85a11e236db2a3ea442abfe298dde4');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','0eb66e3edb7b4fac09967383ae27698e4e9e211f55f6dd6f433f1264cbc49608');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"61abc9c06e1401ce","reference":"W001-01E","stay":"db9a25b64a2545ce"},{"hold":null,"line":"8c11d7057d154620","reference":"W002-016","stay":"bfc8198cca8bb577"}],"number":"B-01","order":"ec8643f2e8dc2438"}','dd6ebedb44d1957689b5bc89ff478a56a5c8295da2950364d72125ca2f79d4a5');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8826ad8a00dfa890","reference":"S002-013","stay":"88082fccdbec5f2a"},{"hold":null,"line":"050f7d8227c5be75","reference":"S003-01W","stay":"74a5a97bbf935a58"}],"number":"B-03","order":"e09d97c874d5726f"}','733858ba393e421efdf5a76d57479a4a5317cc21d55b9b01b9ae9ac90879e543');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"13abf75cf1b9a891","reference":"S004-01O","stay":"2001492bb12d23eb"},{"hold":null,"line":"4131f7b93bef0755","reference":"S005-01G","stay":"310bbbdcc9d694c5"}],"number":"B-04","order":"2641cf729fd20a9b"}','e1530eda417bf1a158d747df8324c414dc8e6b0af2c6e0d3e1d12da188b6b133');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"710c838cb3841bd8","reference":"L002-017","stay":"42d85892bf72c1b1"}],"number":"B-05","order":"119e28169eefc739"}','ca4ea8832702b8368ebd6fea63e14ce441e1d14a45992f37e413a67dc0c47a23');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"4884ab010ad10fe4","reference":"L003-010","stay":"020dd7ac72c61870"}],"number":"B-06","order":"717bdd25aaec2e59"}','b8d179dca84e44f0c9d6ad7cd72ffcdf34f844a424924970a3694c332abaa3cc');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3a5d01f1fce16dfe","reference":"L004-01S","stay":"ac9ffae991c110b2"}],"number":"B-07","order":"04e642de9efe4d00"}','719a08fd866c26955975d6713cd3902efbdfde56ca5441f002502e637f6a8496');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1542bc10472d7304","reference":"L005-01K","stay":"ffb0665cdc9936d9"}],"number":"B-08","order":"3bded5196211686b"}','1be0399a7a7790ab2e51fec64d2af906fd9b311456ae3e1bca827421a0fa80a0');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d7d2b6d50ac804de","reference":"L006-01C","stay":"51dd277c6b3b0484"},{"hold":null,"line":"f81f08c9fda4ce9c","reference":"L011-010","stay":"af82a21fd6dfdf4f"}],"number":"B-09","order":"31b4f8d29faf1a0f"}','6cde7c0d12ade8c35c41f9c1c8086786adddce351ec05bea205619bf982b0d40');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"261f9d6114d183da","reference":"S006-018","stay":"d290faa57c978d42"}],"number":"B-13","order":"f844cfb0c3287b56"}','de80b4a26056d3d237fe8b4a7288e1110fc4dc86bec7c4afad38d9e893b6129f');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"839f0ba81d6a85df","reference":"L007-014","stay":"515bf4667720a7c0"}],"number":"B-17","order":"67f0e17b4119447d"}','5574dded857156ac3199eeb2ea85ec83a70745ae4f79fbbe68dfd9015c623e02');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"5fd2925607419b6f","reference":"D009-01B","stay":"879ad2d7ac7f6d7e"}],"number":"B-18","order":"37d44584f1f1d993"}','0fabb6b39f1bc05c91ad5ecc68e01179b2bbab4c9c40e6fed7eaa350e6adc82d');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e6c16714be31e8a2","reference":"W006-013","stay":"22a87512906e5790"}],"number":"B-21","order":"be44f38f2b6dba8d"}','dd28fd50e1c6bbe67bfe14e81fc56ea5da1dd680457bae055f6921a1046a9894');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c3b8bf7a6e4d7121","reference":"S007-01Z","stay":"4c7081361ed1c32c"}],"number":"B-22","order":"de599691d03001e8"}','8c27d208e69e803a9036ca5711337d1d25382a074794c221f82b06db56da12bc');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"05ab3f1438388f0a","reference":"W007-01W","stay":"b9b46a0f02dc54a5"},{"hold":null,"line":"7c3e3d9d5164fa57","reference":"W008-01O","stay":"1688182d7079ee77"}],"number":"B-23","order":"39d97dead3bab2a4"}','ac7babe95685e4a2bc42bda54f5801f5b2499317fb00c784b967bc2f35cd9f5d');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"890881edfde62650","reference":"D008-01J","stay":"61bc39e628f3ce16"}],"number":"B-26","order":"15bdb28e339f0460"}','da8b0c31968c2ff102dc2f72b04bf4ca4b00e0e21f6356782b885b4e84d3d15e');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"444ba0a5126cea25","reference":"D003-01U","stay":"23e0e0a6301e6b8c"}],"number":"B-30","order":"0af67cb1f451cd59"}','8eed8ddd3a2d3518616b82078a8ee37ea593e82a4ac581591297e2f12823e5a9');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"54b108389a3534d4","reference":"D005-01E","stay":"c8a6e49542cbe5f3"},{"hold":"unknown_code","line":"cf63d1b10a208e87","reference":"Z999","stay":null}],"number":"B-31","order":"d00d56051ce4c101"}','502b6df6f4b83bb7305f4acfdd58208b56e8c8c7e84297aff714e4b4161e7901');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"6f35fba98fc9bda7","reference":"D006-016","stay":"6b674d6a645c9b69"},{"hold":null,"line":"c1683ff305a40e1b","reference":"D007-01R","stay":"88393580eaa1daea"}],"number":"B-32","order":"88e4902fee7d19d4"}','28270869539239806a241ce348f8f0d545e0936cd0858800543cda2b3f75a482');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"c1683ff305a40e1b","reference":"D007-01R","stay":"88393580eaa1daea"}],"number":"B-32","order":"88e4902fee7d19d4"}','f9d6f90618cebd2f9e01a12a1c404f3e7b4022e9dc76b770ce464ef6edf9429f');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"61f29622ff18c5a7","reference":"lamp","stay":null}],"number":"B-33","order":"67c73e427aa92d83"}','ec43bdb0836da92c11cc001af2eb03502dcf62ec4ae4d6a7573e1e49b0cc6bd6');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"831dc7018eca22d5","reference":"D006-016","stay":null}],"number":"B-34","order":"2728e49a71b9c3c2"}','182bdc290d76499cfae6e6edc41291d19bbea853e5566fba01258f83998b18fd');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"089325253f476ff8","reference":"W004-01J","stay":null}],"number":"B-35","order":"474be5a07d588eb9"}','83989b6e29e5e68c8f51922b9c7efe9870f472d623c92877c3185ffddda1ad2e');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"23994ffc8fb12506","reference":"L015","stay":null}],"number":"B-36","order":"13148b38561c59dd"}','7efa5e782c8dd8576bf5349e2726be44c4a70f8f606211fff706df16c4f8c99f');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"a9d4f5930ea2a82f","reference":"W005-01B","stay":"335ba662b449e571"}],"number":"B-37","order":"8ef48039604ebf3e"}','b543ffcd73212ca61c5ff0863b0fe5deeb8e33a407451a116f09a74c02e6fda9');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"a9d4f5930ea2a82f","stay":"335ba662b449e571"}','be6259dd19075446a32ccb77368737d57683266799222c5ee73992402e950175');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"839f0ba81d6a85df","why":"Another lamp, by the photo"}','1c9b03964e9b6896cb300e745ae13642bf6af0e69867486e7c5178afd5dc8f79');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["1542bc10472d7304"],"number":"B-08","order":"3bded5196211686b"}','39ddd79bcbca5065a224c0cf4fc6bda8ab363fe34f20bf3140aaf3b7a3c94aac');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["e6c16714be31e8a2"],"number":"B-21","order":"be44f38f2b6dba8d"}','1331536320ca51e3abf3130972c55e354c3e128694a48c1fcfad224762b70055');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"e6c16714be31e8a2","stay":"22a87512906e5790"}','aab18e5f1372b80e6b31be78fa1f8aaa3e43aef211e026517020f49306d7b861');
INSERT INTO "ledger" VALUES(102,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"ed06e49f27df2c47","stay":"61bc39e628f3ce16","to":"D020"}','d45ee4b3bdffa6d65d03d2ae3347f601908623aa08d6326ecf4a27fe545100cc');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"fa8b4756684a1f6a","reference":"S012-01O","stay":"d49aca1ed81c349c"}],"number":"F-1","order":"c68090308a6a452e"}','b042f593b86248bc13b46237eb44fe6fee494b3d5d994258f65a81770f7f2232');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"4547b72bb06697d1","reference":"","stay":null}],"number":"F-2","order":"3d521063d0e9b545"}','60037ae8f8f5d00a97916cdeb03e96f2d25a456d5ec206c752d3c52a5e8a94a3');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["61abc9c06e1401ce","8c11d7057d154620","8826ad8a00dfa890","050f7d8227c5be75","13abf75cf1b9a891","4131f7b93bef0755","d7d2b6d50ac804de","f81f08c9fda4ce9c","261f9d6114d183da","c3b8bf7a6e4d7121","05ab3f1438388f0a","7c3e3d9d5164fa57"],"round":"5fc398c68d9eaaa4"}','2b57ca10b658fe8915671603d9bd8cf3fb707330cb3e31cccdf608f56c753cb1');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','a58c63ee3be8ad65bfd8bda1579b72f7c675ee7c4d7112bf66511c525529a169');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"61abc9c06e1401ce","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','1a76c50cc280740abd8b93a400bbe4ceac992015954454b0423b229d4b833140');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"8c11d7057d154620","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','145488c0d2716b78aee320e1387a1d39fa37de377e218ec5c006758d071bb2d3');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"8826ad8a00dfa890","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','35c1dbd8b26d0036d136398f8abc21079929b386bf1eb641237b1e41e8e8fff9');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"050f7d8227c5be75","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','fe83472e7610dfd23ac076fce001af1b5aca326fde5f2d21f7e12f6e4c7dca8f');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"13abf75cf1b9a891","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','fd31f7fc8daa5c1a1d8535e693fd68d7301934cd1dba87bdd34170eba87962d0');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"4131f7b93bef0755","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','fe4422e209459ad7700358aa7930c86e0ee281c6ce069f931a8a4e468f967aaa');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"d7d2b6d50ac804de","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','044a1908491897ce683b8763e4ac27af755160b776a4a1245a7d2fab524957ef');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"f81f08c9fda4ce9c","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','a8ebfa27074bfd52670eda5890069cc871551b24704661a55ba56899f1f5d9cb');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"261f9d6114d183da","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','572963ef50fc8c12f9c1f2ec813f635fdb89b3f39156253b5513c96074927d29');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"c3b8bf7a6e4d7121","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','1f482ce8f888dae9c9b6dbee4c10011fe1550cd146dccfe3c0ba4c7d0d3397d4');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"05ab3f1438388f0a","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','5d2ecaddcf8b69fde8a37ba4caeb1b587945d2b86d89e03723d256db06770743');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"7c3e3d9d5164fa57","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"5fc398c68d9eaaa4","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','71d1fd95e14c4ef63dbdcb5b8b85f0808dc3acdab9b6080679b23002a82da82d');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"7c3e3d9d5164fa57","line_state":"waiting"}','4840fe37ebb5a01842cef6cb523d93c954bd975317882fd5b5f25950b488e77d');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"5fc398c68d9eaaa4"}','e74e9ab9ed6998a34d013695181281b23f47739616ff0b67f23cd572b3cd38d7');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["ec8643f2e8dc2438"],"parcel":"4233727f95dd4252","table":"main"}','328771eadf644099742e2fc66d93a63a8abfe65747a41b5f34f7c4c48f6d975d');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"8826ad8a00dfa890","line_state":"picked","order_number":"B-03","parcel":"4233727f95dd4252","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','b58b9454d8230f9813c92e7fe29b0de1951f7a83ba4763b671d1dea9bef42034');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"61abc9c06e1401ce","line_state":"packed","order_number":"B-01","parcel":"4233727f95dd4252","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','97d476b58ffcfe72ad2f51646908e443bd99548d35e35881b473b03944dc3bcf');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["ec8643f2e8dc2438"],"parcel":"4233727f95dd4252","released":["W001","W002"]}','1291c0b0ed1b30106723299f3bb00d7c9a377e6aa0c9d1a49c1c6c27c0b6070d');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"8c11d7057d154620","line_state":"released","order_number":"B-01","parcel":"4233727f95dd4252","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','9b2b5d3d823f038257c076b5d2415a370cb6e9326f780e17b1b567f3e7f44ba8');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"61abc9c06e1401ce","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','8fdbb73d47f8b1c47100a1f0ff3515cf47395ec856b0f1ecbc3e61ed62ba05c2');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"b228170666378e6f","title":"Rear wheel","turn":2}','0d9bc728d7e1d478119812665f66e7249e9986d4b787c2bad51b853f408cbc23');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"4233727f95dd4252"}','54cd980768907e83943ea29b3d4c2f62913ce215e261a2395dd77fdf58e781f6');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["39d97dead3bab2a4"],"parcel":"614f1d0af90cd2f1","table":"main"}','ec5856ff64678298dd0176b7812a23cc4e3d2c8be16cb0878b0dc8b7de3a6a19');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"05ab3f1438388f0a","line_state":"packed","order_number":"B-23","parcel":"614f1d0af90cd2f1","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','5c6cd71e65ae3dd5643273c1274afc08f1ce0b9d660e59b8b88a49210a6379cb');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["39d97dead3bab2a4"],"parcel":"614f1d0af90cd2f1","released":["W007"]}','c8b2be9d2975178969916c6f8f18c54e85b3e0ce1d841fddc638cfa0c585d19c');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["39d97dead3bab2a4"],"parcel":"614f1d0af90cd2f1"}','83343e3488d0869dfa6cda77558a1f460655a8edf698947b0467ba66910bdb89');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["39d97dead3bab2a4"],"parcel":"614f1d0af90cd2f1","released":["W007"]}','855587f83afdfac43d06eff374dcf332a7e4e2846b70c09a0e650990d93e4d2f');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["de599691d03001e8"],"parcel":"863bfa1dd3cf007f","table":"main"}','3bb0c0e9ca43231fab66435932a6ce48a95b015bf1229b5f02638eadc1b384d1');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"863bfa1dd3cf007f"}','54942cbf40b8d4fa45f598a47d92b9d643ed410cd3e678210b1603d4782e78cd');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["2641cf729fd20a9b"],"parcel":"2b6eb49d57d587fe","table":"main"}','f6cebd52de2439eb8ab99ea4740ffcaaa1b9f07fe71c9815bb226a2d8a7a1fd4');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"13abf75cf1b9a891","line_state":"packed","order_number":"B-04","parcel":"2b6eb49d57d587fe","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','c7cec600c3a631d021a40ec53ea733d881fd33f97b46c1771e3a359595a839a7');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"2b6eb49d57d587fe"}','305e1424fa6da2ae9487efd8f3f42988b0f89d34251d3fc2d197e056e54f20f0');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["31b4f8d29faf1a0f"],"parcel":"df9c4789a6840767","table":"second"}','02751b7a31fcce57b840fd20f838bad55ce260089a87b4eef577ae0dfd61ebe4');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"d7d2b6d50ac804de","line_state":"packed","order_number":"B-09","parcel":"df9c4789a6840767","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','908ffd57c3a1bf6d5374ca245671dce03106a8c203f713fa0497fa8b96533628');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["d7d2b6d50ac804de","f81f08c9fda4ce9c"],"number":"B-09","order":"31b4f8d29faf1a0f"}','2d92d224cf096f4a0dff559ecc5962a8c74a1e5623a221ec074725153dae1c5a');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["e09d97c874d5726f"],"parcel":"287718699b8dc62d","table":"main"}','90d1d8d170242bd19697640c7cf7269779b3cb059d14282f31f4f359648a630e');
INSERT INTO "ledger" VALUES(143,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"8826ad8a00dfa890","line_state":"packed","order_number":"B-03","parcel":"287718699b8dc62d","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','eeba8fc7d04fe812999e045b97ab0d2568ba736711039040aa0a1472c9940bf7');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"261f9d6114d183da","reference":"S006-018","stay":"d290faa57c978d42"}],"number":"B-13","order":"f844cfb0c3287b56"}','a825abb35ff436c0b341b091e4315c5a3e84ee7dd57c79ea40c22f2999612bdd');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["710c838cb3841bd8","4884ab010ad10fe4","3a5d01f1fce16dfe","890881edfde62650"],"round":"61b46d6a72e4464c"}','fd50d0c31d2cea41ead2ccb489c2d9f6e61d7883743b70cc4fb9d7f53018c153');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"710c838cb3841bd8","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"61b46d6a72e4464c","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','9819e68b5ab4cfb41ab11b2f06441392bbad45804b32835a58bb8b54c845c1cb');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"3a5d01f1fce16dfe","note":"Not in its bin"}','c6be467f5d2a7357f6da0775476e35527b13c459cc3a61f40da6e5acec85b56a');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"61b46d6a72e4464c","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','28d8a664f01c7eabe2ac29ff54871c9b7e39b5df0bde80898a46564ae3883cd8');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"61b46d6a72e4464c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','55c3fb5dd6c4ffffebde58bc238be01c8058b77c47f6712b67ff793c12a7b37f');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"61b46d6a72e4464c","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','4522c176d25ab715a62b21b62a6df6d98d501bac9deaea1c26a0ad88aeebb5c4');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','1a55c5f9b8571f573440cfb0177be8c166387d5c1e52fe2b4ad04dc8409f7cf4');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','56801788725f86c1cf5c442de0997f1d24727126043aaaeb525688cfeb3aa20f');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"53c18fc337053a8d","reference":"D001-019","stay":"729b790c7415d40e"},{"hold":"already_sold","line":"5cb22341010e4631","reference":"W002-016","stay":null}],"number":"B-38","order":"85d2c40e49b693ad"}','e6391830e6b7e16eb6cc8284b1fc63b0e8ad910cc198e7d7194c2b6bb3a3e75a');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"7c5bb59d920f5f38","reference":"W001","stay":null}],"number":"B-39","order":"967fcf5dc05237f1"}','878fbbe09eacb08ae97d11f1d6e9c19b121df5292bf879601331c2314ef10646');
INSERT INTO "ledger" VALUES(155,'2026-03-02T15:39:00.000000+00:00','stocktake opened','owner','{"area":"section:S","note":"Spring","stocktake":"3a3ebb9acf67985f"}','5c06b223a99fe25d6f5f3bdbfa7f7bacbc3ccca6976127d71d7d1a8c52dacb74');
INSERT INTO "ledger" VALUES(156,'2026-03-02T15:46:00.000000+00:00','looked','owner','{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"3a3ebb9acf67985f","unread":0}','3c19aa0df87fc630e603e839220aebea6b77891a7367de09401d7dbea1b59503');
INSERT INTO "ledger" VALUES(157,'2026-03-02T15:54:00.000000+00:00','looked','owner','{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"3a3ebb9acf67985f","unread":0}','16dd0cba9129108c903b17f310f27ac1d02602d61949440731d06f96499e2a22');
INSERT INTO "ledger" VALUES(158,'2026-03-02T16:00:00.000000+00:00','finding resolved','owner','{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"3a3ebb9acf67985f","sure":false}','bcbd520f01442d68be8ea35efc8be1fc15f7b6056f7c120ba7c82063d249f53f');
INSERT INTO "ledger" VALUES(159,'2026-03-02T16:03:00.000000+00:00','finding resolved','owner','{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"3a3ebb9acf67985f","sure":false}','1c0e6d0a1b31dca1d95df05d8af4c2f29dcad020378036def850e4479dbf9641');
INSERT INTO "ledger" VALUES(160,'2026-03-02T16:06:00.000000+00:00','finding resolved','owner','{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"3a3ebb9acf67985f","sure":false}','8c173e573ac09c659954704d6e4be8737fcf68db9eee3619013239d854c3b69b');
INSERT INTO "ledger" VALUES(161,'2026-03-02T16:09:00.000000+00:00','finding reopened','owner','{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"3a3ebb9acf67985f"}','51f6735f38836b4ea8ba5ffad86f9698000cbdc426e266adf8260cf0da6aacab');
INSERT INTO "ledger" VALUES(162,'2026-03-02T16:12:00.000000+00:00','stocktake closed','owner','{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"3a3ebb9acf67985f"}','a9b2d5a2e1276478dde09cfdcd9e21c6b33a5ce76825145bc71343f24077c2f1');
INSERT INTO "ledger" VALUES(163,'2026-03-02T16:15:00.000000+00:00','stocktake opened','owner','{"area":"section:L","note":"Spring","stocktake":"a53426d90884a826"}','cada40ce7d6b18bb3087fe4c181512f6ba13ae32970501fb107b3158693e9c17');
INSERT INTO "ledger" VALUES(164,'2026-03-02T16:22:00.000000+00:00','looked','owner','{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"a53426d90884a826","unread":0}','a1401cb9ca1f308e1c1eec57d6ff3a6703d95ca9ed951c88bbc2ace44f066e50');
INSERT INTO "ledger" VALUES(165,'2026-03-02T16:25:00.000000+00:00','card lost','owner','{"code":"L008"}','f52ab1364e732b1dc7827b0ef97670ab728a3b92adaceb3a676ab1600303cf61');
INSERT INTO "ledger" VALUES(166,'2026-03-02T16:25:00.000000+00:00','finding resolved','owner','{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"a53426d90884a826","sure":false}','9d9832d553da1cf25817b7a6538f0e07583cb3da501cbf7f324d90a7a33c417d');
INSERT INTO "ledger" VALUES(167,'2026-03-02T16:28:00.000000+00:00','withdrawn','owner','{"code":"L009","reason":"Nowhere to be found","stay":"081daa8807c8817a"}','fb1b65201bd9518bec39971c4aef5c7dfa178840b5e05cc04c7ed642a7acd1f2');
INSERT INTO "ledger" VALUES(168,'2026-03-02T16:28:00.000000+00:00','finding resolved','owner','{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"a53426d90884a826","sure":false}','d0396e32c74c8502dd8c31abb4668e38dc2296fa0ce01a5e9dec2d8e4b0dede2');
INSERT INTO "ledger" VALUES(169,'2026-03-02T16:31:00.000000+00:00','stocktake opened','owner','{"area":"section:D","note":"","sample":{"bins":["A-1-1"],"chosen":"blind","of":3},"stocktake":"505ca9dbeb0a0035"}','2c50a474b75963015dcecda975285f1ba44782c4a96bf8ca5b6fcaedc2d94b8f');
INSERT INTO "ledger" VALUES(170,'2026-03-02T16:34:00.000000+00:00','stocktake opened','owner','{"area":"tray","note":"Too late today","stocktake":"261e9390216084aa"}','73627b13149b27e62162a6a3cad8cd604e041e47c830192f057579f42d102509');
INSERT INTO "ledger" VALUES(171,'2026-03-02T16:37:00.000000+00:00','stocktake cancelled','owner','{"stocktake":"261e9390216084aa"}','28db79915138aab3d702feaf2426ecb580b73942f954c732fbfb6b3c6c7a581d');
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
INSERT INTO "lines" VALUES(1,'61abc9c06e1401ce','ec8643f2e8dc2438',1,'W001-01E','Front wheel 1','','db9a25b64a2545ce','released',NULL,'','4233727f95dd4252','5fc398c68d9eaaa4',1,NULL,1);
INSERT INTO "lines" VALUES(2,'8c11d7057d154620','ec8643f2e8dc2438',2,'W002-016','Front wheel 2','','bfc8198cca8bb577','released',NULL,'','4233727f95dd4252','5fc398c68d9eaaa4',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'8826ad8a00dfa890','e09d97c874d5726f',1,'S002-013','Leather saddle 2','','88082fccdbec5f2a','packed',NULL,'','287718699b8dc62d','5fc398c68d9eaaa4',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'050f7d8227c5be75','e09d97c874d5726f',2,'S003-01W','Leather saddle 3','','74a5a97bbf935a58','picked',NULL,'',NULL,'5fc398c68d9eaaa4',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'13abf75cf1b9a891','2641cf729fd20a9b',1,'S004-01O','Leather saddle 4','','2001492bb12d23eb','packed',NULL,'','2b6eb49d57d587fe','5fc398c68d9eaaa4',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'4131f7b93bef0755','2641cf729fd20a9b',2,'S005-01G','Leather saddle 5','','310bbbdcc9d694c5','picked',NULL,'',NULL,'5fc398c68d9eaaa4',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'710c838cb3841bd8','119e28169eefc739',1,'L002-017','Dynamo lamp 2','','42d85892bf72c1b1','picked',NULL,'',NULL,'61b46d6a72e4464c',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'4884ab010ad10fe4','717bdd25aaec2e59',1,'L003-010','Dynamo lamp 3','','020dd7ac72c61870','waiting',NULL,'',NULL,'61b46d6a72e4464c',2,NULL,1);
INSERT INTO "lines" VALUES(9,'3a5d01f1fce16dfe','04e642de9efe4d00',1,'L004-01S','Dynamo lamp 4','','ac9ffae991c110b2','short',NULL,'',NULL,'61b46d6a72e4464c',3,NULL,1);
INSERT INTO "lines" VALUES(10,'1542bc10472d7304','3bded5196211686b',1,'L005-01K','Dynamo lamp 5','','ffb0665cdc9936d9','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'d7d2b6d50ac804de','31b4f8d29faf1a0f',1,'L006-01C','Dynamo lamp 6','','51dd277c6b3b0484','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','df9c4789a6840767','5fc398c68d9eaaa4',4,NULL,1);
INSERT INTO "lines" VALUES(12,'f81f08c9fda4ce9c','31b4f8d29faf1a0f',2,'L011-010','Dynamo lamp 11','','af82a21fd6dfdf4f','cancelled',NULL,'',NULL,'5fc398c68d9eaaa4',4,NULL,1);
INSERT INTO "lines" VALUES(13,'261f9d6114d183da','f844cfb0c3287b56',1,'S006-018','Saddle with springs','','d290faa57c978d42','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'5fc398c68d9eaaa4',5,NULL,1);
INSERT INTO "lines" VALUES(14,'839f0ba81d6a85df','67f0e17b4119447d',1,'L007-014','Dynamo lamp 7','','515bf4667720a7c0','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'5fd2925607419b6f','37d44584f1f1d993',1,'D009-01B','Rear derailleur 9','','879ad2d7ac7f6d7e','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'e6c16714be31e8a2','be44f38f2b6dba8d',1,'W006-013','Front wheel 6','','22a87512906e5790','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'c3b8bf7a6e4d7121','de599691d03001e8',1,'S007-01Z','Leather saddle 7','','4c7081361ed1c32c','picked',NULL,'',NULL,'5fc398c68d9eaaa4',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'05ab3f1438388f0a','39d97dead3bab2a4',1,'W007-01W','Front wheel 7','','b9b46a0f02dc54a5','released',NULL,'','614f1d0af90cd2f1','5fc398c68d9eaaa4',7,NULL,1);
INSERT INTO "lines" VALUES(19,'7c3e3d9d5164fa57','39d97dead3bab2a4',2,'W008-01O','Front wheel 8','','1688182d7079ee77','waiting',NULL,'',NULL,'5fc398c68d9eaaa4',7,NULL,1);
INSERT INTO "lines" VALUES(20,'890881edfde62650','15bdb28e339f0460',1,'D008-01J','Rear derailleur 8','','ed06e49f27df2c47','waiting',NULL,'',NULL,'61b46d6a72e4464c',4,NULL,1);
INSERT INTO "lines" VALUES(21,'444ba0a5126cea25','0af67cb1f451cd59',1,'D003-01U','Bell with a crown','','23e0e0a6301e6b8c','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'54b108389a3534d4','d00d56051ce4c101',1,'D005-01E','Rear derailleur 5','','c8a6e49542cbe5f3','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'cf63d1b10a208e87','d00d56051ce4c101',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'6f35fba98fc9bda7','88e4902fee7d19d4',1,'D006-016','Rear derailleur 6','','6b674d6a645c9b69','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'c1683ff305a40e1b','88e4902fee7d19d4',2,'D007-01R','Rear derailleur 7','','88393580eaa1daea','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'61f29622ff18c5a7','67c73e427aa92d83',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'831dc7018eca22d5','2728e49a71b9c3c2',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'089325253f476ff8','474be5a07d588eb9',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'23994ffc8fb12506','13148b38561c59dd',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'a9d4f5930ea2a82f','8ef48039604ebf3e',1,'W005-01B','Bell with a crown','','335ba662b449e571','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'fa8b4756684a1f6a','c68090308a6a452e',1,'S012-01O','','','d49aca1ed81c349c','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'4547b72bb06697d1','3d521063d0e9b545',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'53c18fc337053a8d','85d2c40e49b693ad',1,'D001-019','Rear derailleur 1','','729b790c7415d40e','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'5cb22341010e4631','85d2c40e49b693ad',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'7c5bb59d920f5f38','967fcf5dc05237f1',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "looks" VALUES(1,'done-1','cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c','3a3ebb9acf67985f','B-1-1','2026-03-02T15:46:00.000000+00:00','wedge','[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]',1,NULL,'[]',NULL);
INSERT INTO "looks" VALUES(2,'done-2','88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c','3a3ebb9acf67985f','B-1-2','2026-03-02T15:54:00.000000+00:00','photo','[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]',1,NULL,'[600, 400]','e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO "looks" VALUES(3,'runs-1','f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11','a53426d90884a826','C-1-1','2026-03-02T16:22:00.000000+00:00','wedge','[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]',1,NULL,'[]',NULL);
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
INSERT INTO "orders" VALUES(1,'ec8643f2e8dc2438','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'e09d97c874d5726f','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','287718699b8dc62d');
INSERT INTO "orders" VALUES(3,'2641cf729fd20a9b','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','2b6eb49d57d587fe');
INSERT INTO "orders" VALUES(4,'119e28169eefc739','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'717bdd25aaec2e59','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'04e642de9efe4d00','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'3bded5196211686b','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'31b4f8d29faf1a0f','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','df9c4789a6840767');
INSERT INTO "orders" VALUES(9,'f844cfb0c3287b56','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'67f0e17b4119447d','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'37d44584f1f1d993','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'be44f38f2b6dba8d','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'de599691d03001e8','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'39d97dead3bab2a4','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'15bdb28e339f0460','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'0af67cb1f451cd59','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'d00d56051ce4c101','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'88e4902fee7d19d4','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'67c73e427aa92d83','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'2728e49a71b9c3c2','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'474be5a07d588eb9','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'13148b38561c59dd','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'8ef48039604ebf3e','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'c68090308a6a452e','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'3d521063d0e9b545','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'85d2c40e49b693ad','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'967fcf5dc05237f1','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'4233727f95dd4252','main','ec8643f2e8dc2438','2026-03-02T13:56:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'614f1d0af90cd2f1','main','39d97dead3bab2a4','2026-03-02T14:19:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'863bfa1dd3cf007f','main','de599691d03001e8','2026-03-02T14:34:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'2b6eb49d57d587fe','main','2641cf729fd20a9b','2026-03-02T14:40:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'df9c4789a6840767','second','31b4f8d29faf1a0f','2026-03-02T14:49:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'287718699b8dc62d','main','e09d97c874d5726f','2026-03-02T14:58:00.000000+00:00','open');
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
INSERT INTO "resolutions" VALUES(1,'3a3ebb9acf67985f.elsewhere-S012','3a3ebb9acf67985f','{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','put_right','','owner','2026-03-02T16:00:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO "resolutions" VALUES(2,'3a3ebb9acf67985f.unknown-Q0771','3a3ebb9acf67985f','{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','ignore','A neighbour''s','owner','2026-03-02T16:03:00.000000+00:00','{"before": {}, "after": {}, "to": null}');
INSERT INTO "resolutions" VALUES(3,'a53426d90884a826.missing-L008','a53426d90884a826','{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','lost','','owner','2026-03-02T16:25:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO "resolutions" VALUES(4,'a53426d90884a826.missing-L009','a53426d90884a826','{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','withdraw','Nowhere to be found','owner','2026-03-02T16:28:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'5fc398c68d9eaaa4','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'61b46d6a72e4464c','2026-03-02T15:07:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','898d61962e7850e4ae42e0ba9f67bb4584abc86f94c3784e934ec061eced3c71','bin','5fc398c68d9eaaa4','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','29c940f35e9addee73919b552deb341bb4eb5e06c984b113bd6dbac5f571aa36','bin','5fc398c68d9eaaa4','W001',0,1,1,'61abc9c06e1401ce',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "ec8643f2e8dc2438", "order_number": "B-01", "line": "61abc9c06e1401ce", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','132b7503fe7dc6dd76a5a2b1d1168efc96a2bef407ee666866ad307689025a98','bin','5fc398c68d9eaaa4','W002',0,1,1,'8c11d7057d154620',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "ec8643f2e8dc2438", "order_number": "B-01", "line": "8c11d7057d154620", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','152db1716bc98636523c3096762ca41f09e6ce15890ebf3292726daad6c502a6','bin','5fc398c68d9eaaa4','S002',0,1,1,'8826ad8a00dfa890',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e09d97c874d5726f", "order_number": "B-03", "line": "8826ad8a00dfa890", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','5d68d89f98c479c884381a24fc2a078c4a5dbe5fca0a422e121c9e2580058b0e','bin','5fc398c68d9eaaa4','S003',0,1,1,'050f7d8227c5be75',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "e09d97c874d5726f", "order_number": "B-03", "line": "050f7d8227c5be75", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','50158b01b1350f0b1d3b74bdc36bd4fbaba330a7987aae6a54f642b3a7ba03f8','bin','5fc398c68d9eaaa4','S004',0,1,1,'13abf75cf1b9a891',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2641cf729fd20a9b", "order_number": "B-04", "line": "13abf75cf1b9a891", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','67291b69e709344173083e0d3c3717d4eacfa7c22cae491d59b8f7545375a8df','bin','5fc398c68d9eaaa4','S005',0,1,1,'4131f7b93bef0755',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "2641cf729fd20a9b", "order_number": "B-04", "line": "4131f7b93bef0755", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','dcc7aea21f2701b6a1cefc250da5d359ea8ea264df63ed1b1ff2de3079dd69da','bin','5fc398c68d9eaaa4','L006',0,1,1,'d7d2b6d50ac804de',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "31b4f8d29faf1a0f", "order_number": "B-09", "line": "d7d2b6d50ac804de", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','08f0aa9567e6d4c40b7846ad200e0dc367377996d23a24f7c69891686dae24a4','bin','5fc398c68d9eaaa4','L011',0,1,1,'f81f08c9fda4ce9c',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "31b4f8d29faf1a0f", "order_number": "B-09", "line": "f81f08c9fda4ce9c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','534e26e6a334fe6abe7b881f59773ba0a321d27d30af617e43692c88225ca2ec','bin','5fc398c68d9eaaa4','S006',0,1,1,'261f9d6114d183da',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "f844cfb0c3287b56", "order_number": "B-13", "line": "261f9d6114d183da", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','bb57fb376bc7eb06a87542ee590eafa013998539c2f5b749edc84fac48e93d5c','bin','5fc398c68d9eaaa4','S007',0,1,1,'c3b8bf7a6e4d7121',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "de599691d03001e8", "order_number": "B-22", "line": "c3b8bf7a6e4d7121", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','0e282bedb04d7bbb74002b7b893484e17148917dec34bf8bd283f2367030a071','bin','5fc398c68d9eaaa4','W007',0,1,1,'05ab3f1438388f0a',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "39d97dead3bab2a4", "order_number": "B-23", "line": "05ab3f1438388f0a", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','bf206ff65bcfb40c6d86b063fa06be488a80f9d5a17e38107a9e911a166e7b3c','bin','5fc398c68d9eaaa4','W008',0,1,1,'7c3e3d9d5164fa57',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "39d97dead3bab2a4", "order_number": "B-23", "line": "7c3e3d9d5164fa57", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'8826ad8a00dfa890','4233727f95dd4252','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e09d97c874d5726f", "order_number": "B-03", "line": "8826ad8a00dfa890", "line_state": "picked", "order_state": "picking", "parcel": "4233727f95dd4252", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'61abc9c06e1401ce','4233727f95dd4252','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "ec8643f2e8dc2438", "order_number": "B-01", "line": "61abc9c06e1401ce", "line_state": "packed", "order_state": "picking", "parcel": "4233727f95dd4252", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'8c11d7057d154620','4233727f95dd4252','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "ec8643f2e8dc2438", "order_number": "B-01", "line": "8c11d7057d154620", "line_state": "released", "order_state": "released", "parcel": "4233727f95dd4252", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'61abc9c06e1401ce',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "ec8643f2e8dc2438", "order_number": "B-01", "line": "61abc9c06e1401ce", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'05ab3f1438388f0a','614f1d0af90cd2f1','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "39d97dead3bab2a4", "order_number": "B-23", "line": "05ab3f1438388f0a", "line_state": "packed", "order_state": "waiting", "parcel": "614f1d0af90cd2f1", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'13abf75cf1b9a891','2b6eb49d57d587fe','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "2641cf729fd20a9b", "order_number": "B-04", "line": "13abf75cf1b9a891", "line_state": "packed", "order_state": "picking", "parcel": "2b6eb49d57d587fe", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'d7d2b6d50ac804de','df9c4789a6840767','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "31b4f8d29faf1a0f", "order_number": "B-09", "line": "d7d2b6d50ac804de", "line_state": "packed", "order_state": "picking", "parcel": "df9c4789a6840767", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'8826ad8a00dfa890','287718699b8dc62d','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "e09d97c874d5726f", "order_number": "B-03", "line": "8826ad8a00dfa890", "line_state": "packed", "order_state": "picking", "parcel": "287718699b8dc62d", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','c031852ca6e81e20ec7567dcd4db07c677e4928000a46422ade8655915a01790','bin','61b46d6a72e4464c','L002',0,1,1,'710c838cb3841bd8',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "119e28169eefc739", "order_number": "B-05", "line": "710c838cb3841bd8", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','1a61b025ed24db999f115fd3f787b0e6ff5f60515aa5bbd1f3d2fb271b6d7723','bin','61b46d6a72e4464c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','c78b724e537607d717f4a5e2661c748552205a0ed55ccb4c0b0c71fb823cc6f9','bin','61b46d6a72e4464c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','a0493a575c278d52c9b0b458ba68c6a84502017ab1386b8d4c7bd2645592dcd0','bin','61b46d6a72e4464c',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'729b790c7415d40e','4dbdf929879b1173','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'18b55728826b1ab9','16876ed3e29f8b73','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'23e0e0a6301e6b8c','12891f07eeff5f79','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'8e0164c95f9e0a06','c831ab6e015db0ed','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'c8a6e49542cbe5f3','d369916b47257ab5','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'6b674d6a645c9b69','735048295fa03b9c','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'88393580eaa1daea','47679c4ef6e8f91d','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'61bc39e628f3ce16','9e725c28856d089b','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'879ad2d7ac7f6d7e','1014aaa69de08051','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'34c2478e2ad8ce79','ff861d3b7c2b07af','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'8e970281859a073c','6d02ddf26d7f59c4','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'bc3879b24f32785d','7787b152323f6a00','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'0c662f859b98c0fd','c3ff82ab38ec4889','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'88082fccdbec5f2a','6975541c46d61d7a','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'74a5a97bbf935a58','1cd10dec178c79aa','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'2001492bb12d23eb','422e15ea070f54bd','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'310bbbdcc9d694c5','468dac082d8c7c1f','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'d290faa57c978d42','31950a00aca86de6','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'4c7081361ed1c32c','89eb10ba24d06067','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'6849e9ef14f2917c','95dffe7bb6578118','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'eba44360c445b23d','dfd7cb551e05f365','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'4eba90bec84f0101','c34d6efe05107cc9','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'6f014277bb7245ab','612b609c20e8535f','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'d49aca1ed81c349c','af1f92fe08d1bb1f','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'a70bc00763765a64','0ad55110c2128f58','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'42d85892bf72c1b1','ac3192ffd33abdde','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'020dd7ac72c61870','18886d4940d281f0','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'ac9ffae991c110b2','229b11d7b4936c65','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'ffb0665cdc9936d9','f5394e56c907f10a','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'51dd277c6b3b0484','7dcf40183c48d860','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'515bf4667720a7c0','fa438593aae91b7d','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'5699b8113a9fd67c','acd292a096bd2df9','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'081daa8807c8817a','23974c2eeaa3ebb1','L009',1,'2026-03-02T10:11:00.000000+00:00','withdrawn','2026-03-02T16:28:00.000000+00:00','Nowhere to be found');
INSERT INTO "stays" VALUES(34,'0e6c034562073510','ec0ea4e1f0beecfa','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'af82a21fd6dfdf4f','987aef6138ab185b','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'063b3743c7d84153','17e31560176b62e2','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'db9a25b64a2545ce','8d2eaac7ea7c6b09','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'bfc8198cca8bb577','b8722d67b28dfe19','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'9163be6f883415d6','15d2e94bfccceb88','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'0230a6fad1c2da6c','829e336cfbe1ec56','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'335ba662b449e571','fd860443094f7537','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'22a87512906e5790','0b5ed662e3716e32','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'b9b46a0f02dc54a5','66876ee626daa53a','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'1688182d7079ee77','765b35e9b8b79acd','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'dc77d2095e46aafa','061719ad9b1d501e','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'11d997a1ff93dfdc','8a0df3300a4de490','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'ae67f311ec83b03e','4dcac62cf388fecd','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'2c35ba603350620f','2d7230341f74adfa','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'fdb6f98269e728e6','9d5085663f56f994','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'582889384fcb9ee0','dfd7cb551e05f365','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'ed06e49f27df2c47','9e725c28856d089b','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'b228170666378e6f','88083360949ff24f','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stocktakes" VALUES(1,'3a3ebb9acf67985f','section:S','Spring','2026-03-02T15:39:00.000000+00:00',154,'closed','2026-03-02T16:12:00.000000+00:00','{"stocktake": "3a3ebb9acf67985f", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "sample": null, "unfinished": 0, "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}',NULL);
INSERT INTO "stocktakes" VALUES(2,'a53426d90884a826','section:L','Spring','2026-03-02T16:15:00.000000+00:00',162,'open',NULL,'',NULL);
INSERT INTO "stocktakes" VALUES(3,'505ca9dbeb0a0035','section:D','','2026-03-02T16:31:00.000000+00:00',168,'open',NULL,'','{"chosen": "blind", "of": 3, "bins": ["A-1-1"]}');
INSERT INTO "stocktakes" VALUES(4,'261e9390216084aa','tray','Too late today','2026-03-02T16:34:00.000000+00:00',169,'cancelled','2026-03-02T16:37:00.000000+00:00','',NULL);
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
INSERT INTO "stops" VALUES(1,'5fc398c68d9eaaa4',1,'8826ad8a00dfa890','B-1-1');
INSERT INTO "stops" VALUES(2,'5fc398c68d9eaaa4',2,'050f7d8227c5be75','B-1-1');
INSERT INTO "stops" VALUES(3,'5fc398c68d9eaaa4',3,'13abf75cf1b9a891','B-1-1');
INSERT INTO "stops" VALUES(4,'5fc398c68d9eaaa4',4,'4131f7b93bef0755','B-1-1');
INSERT INTO "stops" VALUES(5,'5fc398c68d9eaaa4',5,'261f9d6114d183da','B-1-1');
INSERT INTO "stops" VALUES(6,'5fc398c68d9eaaa4',6,'c3b8bf7a6e4d7121','B-1-1');
INSERT INTO "stops" VALUES(7,'5fc398c68d9eaaa4',7,'61abc9c06e1401ce','D-1-1');
INSERT INTO "stops" VALUES(8,'5fc398c68d9eaaa4',8,'8c11d7057d154620','D-1-1');
INSERT INTO "stops" VALUES(9,'5fc398c68d9eaaa4',9,'05ab3f1438388f0a','D-1-1');
INSERT INTO "stops" VALUES(10,'5fc398c68d9eaaa4',10,'7c3e3d9d5164fa57','D-1-1');
INSERT INTO "stops" VALUES(11,'5fc398c68d9eaaa4',11,'d7d2b6d50ac804de','C-1-1');
INSERT INTO "stops" VALUES(12,'5fc398c68d9eaaa4',12,'f81f08c9fda4ce9c','C-1-2');
INSERT INTO "stops" VALUES(13,'61b46d6a72e4464c',1,'890881edfde62650','A-1-2');
INSERT INTO "stops" VALUES(14,'61b46d6a72e4464c',2,'710c838cb3841bd8','C-1-1');
INSERT INTO "stops" VALUES(15,'61b46d6a72e4464c',3,'4884ab010ad10fe4','C-1-1');
INSERT INTO "stops" VALUES(16,'61b46d6a72e4464c',4,'3a5d01f1fce16dfe','C-1-1');
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
CREATE INDEX ix_stocktakes_state ON stocktakes (state);
CREATE INDEX ix_looks_stocktake ON looks (stocktake);
CREATE INDEX ix_looks_photo ON looks (photo);
CREATE INDEX ix_resolutions_stocktake ON resolutions (stocktake);
COMMIT;
