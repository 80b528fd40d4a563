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
INSERT INTO "access" VALUES(1,'3355e3d60233d696a0f951cda7a6cbd9089e2c6907e8084d31f569f2a5c9df4e','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$CeUW/A6yj+gRhHeXhstN8A$4EbvJ3kULfdYJRfGDtNg2ZLnUl5y6bSzD9qEvicqiUk','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'6787e690057077b7fd661814fd56647f2480de56922c1b82975b618b6616d224','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'4b4dac9d15afb1df1e2639be6fe87c05c4055ab9fad8089de6d97f3c0b6c568b','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'d76f94841074a57d346ea51496dfc11f96fb1ebb4d6dee244e3ea8abc8fbc78e','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'fb932f5a063423db35ea357a764039307ceae4c52b9be80f4fbe53fa73b41664','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0003');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/8325239d35d2bd51','{"id": "8325239d35d2bd51", "item": "1ae8330a21176878", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
INSERT INTO "head" VALUES(1,153,'471581537cf50f02c3969fab798effeca08781a4ea9cc1f031d7fd043c935a7b','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'8800944a988959d8','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'9dcef343b62ff385','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'9923002a732c468c','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'5d5a92ffd756abfe','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'ea433cdc9ea5e59c','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'d33ea124882a432e','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'76fb2881ae8a358b','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'d801063fae058130','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'767ebe3e1e048485','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'4ed8f53764e74830','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'c893fd4b7d2be9ad','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'0c870b94f2330970','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'2c7c94326fd43ea4','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'49c72bd9daf8bfe6','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'1471fc30db995d89','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'1d83f7541a44d154','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'ea47e697b234ceb4','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'6e99b6287206fc21','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'cb202c147f92d019','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'578f19239bf0b227','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'cc8e5749904747f2','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'58cb0dba4d4d6a9b','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'e5782af6bb241074','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'4381e9805ed4653c','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'ff114ace900eb138','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'f6e1162edee07492','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'ccbcf21bd2d7a945','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'0be6aa736642bf23','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'78b48aaaba9fb8ef','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'7626e21d41fb3f41','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'beb8c05ec0f5acc5','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'634fa3c09feb1eb2','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'fad30b3423bef71e','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'dd6f2aa43a66cc65','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'cf09c3cc4c873361','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'b61f0fa6ee171d95','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'c45f4519fb1612ab','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'0e8d041de5421bf9','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'273f0ded45acc63e','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'d8d6fa8b34a64b70','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'5dbb5de13a6ef8cf','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'a9e2e20d3fc2de14','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'75d6c7f6599d212f','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'1d8779c0885a0417','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'7a5317ec37234add','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'818ae91c87959a6e','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'cc3b52d3fed63d94','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'4c4f21735d20775a','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'1ae8330a21176878','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'b0ead41dae3741ce','Rear wheel','','',NULL);
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"03e0170beb8f0d05","title":"Rear derailleur 1","turn":1}','8f30e93b7a50162bad7cee4888a727e6c51faf433dc460409f34623d66fdf64d');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"be5d2201b8948115","title":"Rear derailleur 2","turn":1}','0519779d8a6b4edd8d3a2f6da2954e9badd5ea34d982ed94735dc84b6cb98272');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"d6ee9b8cdf37cfd2","title":"Rear derailleur 3","turn":1}','e4eacf0155bb284fc591f13c85c6824238a15401bbadf2abe8689c65b7d9ce0e');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"2654dff471c07962","title":"Rear derailleur 4","turn":1}','ff0f9c1dfe668cbf405756f74a8c8b418023e70dbbcd0f88af97b3428b9b8379');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"f4901bb3b80bdef4","title":"Rear derailleur 5","turn":1}','be63b04449f423206ca83d279b191f8c2aba140e091546eb7f508ad324b21751');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"06a18d1a88acc4a0","title":"Rear derailleur 6","turn":1}','8229ce7182beb42de010f73f74751666646de16549d8301f6b976e6e8832cf67');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"191128ec563cf97f","title":"Rear derailleur 7","turn":1}','523c845da2fda7eaa5e783a3aad7a89bf1532825b40bdc9362a873a6c1db487b');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"0fcb4673a4258181","title":"Rear derailleur 8","turn":1}','4c9e8dac30904439644eefdfaff12ff1f441b213b456f9864c9f9e336287cf66');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"796945f6ce5ce71d","title":"Rear derailleur 9","turn":1}','c0c726dade781e4524b5f1633a3f41faaffb819c0645a242caf5c3bbca076b36');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"be11a916f2bca162","title":"Rear derailleur 10","turn":1}','b2fa08caf0bd79894d8d100495aa34f3c6980d2ce033f9d4c5516d06a6b6adbc');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"7e6f28db9ab61051","title":"Rear derailleur 11","turn":1}','c731942226fea8af41abf59bf0620971e2c5a9b02f982f954ce75b7e22cdabe6');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"a2837b42fa1f5281","title":"Rear derailleur 12","turn":1}','3828226e6ffed5be1d220689e3c0bea362c8fe0a7e4f81419fc169e134a67057');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"5cf671ca8111b2d6","title":"Leather saddle 1","turn":1}','3a82df164f0e686519685468c30f3156018abb12c8a599afcbce99ea74cc030d');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"6ff99132ed8d73bb","title":"Leather saddle 2","turn":1}','37e44ace3859fce55f63b8c754b1c60092bd8c23916e92b2cb4f40885f11e066');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"bd837c5de8517430","title":"Leather saddle 3","turn":1}','24c30035c32d8c2f72cd3c8e339313afcdccc3c7ff540a5e14ac5da32fff23fa');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"b848231cabcfb6bd","title":"Leather saddle 4","turn":1}','e99d9f65c6b7cf99deaef68b0a99726e4049e4af86cc0227a6ffc8455d0befb1');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"10ec0cf9ec55e41c","title":"Leather saddle 5","turn":1}','f838988db1710786f9c425e0c17662bd7a5830f7dcfc714947f718a76bac72b1');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"b41c0e6b7fc48e7e","title":"Leather saddle 6","turn":1}','cfbd3ef287ab61958af1221017424fb81e2dc377a59d946695e7a8d5ed6326e9');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"04d78a0f0a930bc1","title":"Leather saddle 7","turn":1}','129d2c1345456ee8cdc0a5fe9e68bf04084501e62cf1eff6b893df12fd0c5a35');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"5afbbc7e0992fd58","title":"Leather saddle 8","turn":1}','0cd00e97729853294ce667c73a764a86f3c337812a223e805202dc56efb8a578');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"1c09a008910f9bd6","title":"Leather saddle 9","turn":1}','1e3e978869db648031988bb72173523991253cb352c9176a728beec90ba31e1b');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"f0ee68ae7b5e0c2d","title":"Leather saddle 10","turn":1}','953bc416df8ec69fd2a2bbfa86f9d0d7e3435a16070b06428a9558429b2f8c7d');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"3a37f82c065ba310","title":"Leather saddle 11","turn":1}','0da51f9840ea20bc7fdea30c5d25e06b85a01d46aa09795dac770c6c0811dbf5');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"09cb0057887b762a","title":"Leather saddle 12","turn":1}','4619136cb76b244fa7a95ee9159a87cd5954285d888a7c4bb0baaca79536cf3e');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"671b6786db9ccdc6","title":"Dynamo lamp 1","turn":1}','2fa5f90f615a33e9fd63005c51ce44015523fe06da23edb5157714bc7eb50d7a');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"ac6d0d8df5d2b8b2","title":"Dynamo lamp 2","turn":1}','76ae4a84c8488e48c19e7bef25fd30896b809e77bce1d6daf3ce7881c9ccc2f9');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"3411fa439d642f35","title":"Dynamo lamp 3","turn":1}','3dbbc130b8b2a0ca43d48001040e3b027e1973878a16871462b255a319a3d7d0');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"84536c0027b0fc37","title":"Dynamo lamp 4","turn":1}','96caa4dcfefadff8cc0a2a62306fd424ce8e39c8c08d373a8c849912545c20c9');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"b6ab053de30339ac","title":"Dynamo lamp 5","turn":1}','fe25c2724c133ce4696189c722f51754919df70fb921d7cc32e67c53f8ae52dc');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"7c1d4181ad6b0d7b","title":"Dynamo lamp 6","turn":1}','6c4c925a139f0aff79bf99c9be785fe392b6b9fbddb6f07ebe78a79b7e674550');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"7a6edbc363192b7f","title":"Dynamo lamp 7","turn":1}','56884918b9c540fe0bc48f190cbea620891236abc8f3d638f3e440b91f7bc01a');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"b8fceffd49c0e99e","title":"Dynamo lamp 8","turn":1}','2d22828297fc365ce08e82f75f51760333aa46edbcfe2c08204f215ffbf27cb7');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"dbbfd5767467cd23","title":"Dynamo lamp 9","turn":1}','2831cd00c2d56c5df9775b3e6f103feebf7ff3530dcfa403741088471fdf4280');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"101d72d58d7be9ce","title":"Dynamo lamp 10","turn":1}','b2ca399e9f14ec8963b8dce226e339929aa6b054ffef9ccc525668c0451f641b');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"e0ef465a27c6113f","title":"Dynamo lamp 11","turn":1}','167d1c0acfd1e0a63f865bc82ba5afe35c4f2fdcb33becec5ce530efe13498fb');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"bd1c0268630437bf","title":"Dynamo lamp 12","turn":1}','522a9dffd7c067658e751648d37e82b475dfddc01bb755c44b05079a745e1aff');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"934777bd54dfff7c","title":"Front wheel 1","turn":1}','7e499e1939fc0dbd066fa6b9c8bb241741ad9898600704c3032a902f2d328ca0');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"818ef98fcd7db5e2","title":"Front wheel 2","turn":1}','66dcd64b15395e6bff8ebf2e287e06cd51fe0c663ffc6b23f37739a48e6184c0');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"fe685fc90bf4b158","title":"Front wheel 3","turn":1}','bc068ee9018e54bfb5d4510853860bc06378c550057113615e075b5c98ba1f2d');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"4a2ae6cf56dbe9bc","title":"Front wheel 4","turn":1}','5d45be4c4b620b2e8d18f89b06d5c3c4ff502a301fa36071eda4b295fbc0dfe0');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"ddfb1c92dfc4103f","title":"Front wheel 5","turn":1}','922384d178bb26723edfee1f9d615de79c262d4dba10402f98c2a655457c2c48');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"18f6d67e88203b56","title":"Front wheel 6","turn":1}','f8590cc40d5fa5ce8bd2be473ceefc5488a7ad95b30e8ee61a5a8f19eaec1d07');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"3bd954956bf7d8d8","title":"Front wheel 7","turn":1}','f905ded169e4de7aa6efb97d5f5e565be575d45f4c66826e35f936fa5bca1668');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"fefbc85627a51531","title":"Front wheel 8","turn":1}','c2a9c01619083b02700ca6799471d63739b097d1bc9e9f0b639e565dd89dc994');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"2edb4c506a96a6da","title":"Front wheel 9","turn":1}','056c8a23075e2548fe4fcfb28d30942ef22667f8b9601c6aae3583770f700640');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"d79cafcbb394c2d9","title":"Front wheel 10","turn":1}','fb1ce7aa59a3260ebe4eaa4ca308836ba9b5bc485eea305c5bd42854b7f84bfb');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"14fe9cc665cf4457","title":"Front wheel 11","turn":1}','ff4158d843e1bf9e2991ae445fd771f47bd847f63b7f70ebef3e4d7047501a47');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"d09224af75488023","title":"Front wheel 12","turn":1}','33dfbbb476e53f3dc3e19c506defb43953218812553e110d022ae040325e869e');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"8325239d35d2bd51","title":"Brass bell","turn":1}','fd8893ab3d70f55875a6e42bbde124a532ed3144034bfcd6f15ed7869e8daac0');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"be5d2201b8948115"}','ad5d39ce0233698bff53c65a5977c38a8661446ee3a693623c054298cbfe4b0d');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"f0ee68ae7b5e0c2d"}','3a3e8228929f269a2a1ca4308c0f764f1b9debb40615cbf4a7150d61145ceb36');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"4a2ae6cf56dbe9bc"}','2661179ce93690d4a74576702303a187ea11a7a8c3a295f1799cb915cacbb4cb');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"9be86be89d90a4b6","stay":"1c09a008910f9bd6","to":"S013"}','acc092948f72ef37b6088ecc7fc078456006e92d8be4fc1cf71d3aa0761d938c');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"03e0170beb8f0d05"}','d027e2485a19de6f9cb81dc66915ac719aafdbe59f2dc6170647fa411c1afc75');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"5cf671ca8111b2d6"}','baea6af95932f890a0f67a84944682c79a9929da53f0942ee5899e09af73ab07');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:22:00.000000+00:00','settings changed','owner','{"auto_close":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','20b1afa3c039a374907364f8276254b9b8fb2059d5eb073abd704aec892d2c08');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:25:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','5358b9e843db179857e0e49c257ed79f61276d368a21cf2160b25e2bdb44df27');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:26:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','304a620cf1e93636294588f06bd1f772e00ee51a0e36dbc5f289afc8e353993d');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:27:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','a500115623b096298b17d521f028685823ba7c14072a96abcbc51b8c1e898cbd');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','139fad91339a74f43fa698511f831c18a1f620976372c076306ab41711580f34');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:31:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"471af9633c960f4e","reference":"W001-01E","stay":"934777bd54dfff7c"},{"hold":null,"line":"a1427d24fbc6ddfb","reference":"W002-016","stay":"818ef98fcd7db5e2"}],"number":"B-01","order":"11655b803f62459a"}','1d5577bff0e26e42139291611084883399f46e4304d72a07d015b30c029893d6');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:34:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2746a66d74a506ba","reference":"S002-013","stay":"6ff99132ed8d73bb"},{"hold":null,"line":"e04382f2e4c2632e","reference":"S003-01W","stay":"bd837c5de8517430"}],"number":"B-03","order":"050151f47b47bd52"}','ca9d7a9d2529ff7932258cde1e0e60a4bed46a6fc4221eca5fd56fb671e5bc4f');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:37:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"526e22360d048726","reference":"S004-01O","stay":"b848231cabcfb6bd"},{"hold":null,"line":"89dc49b386f19846","reference":"S005-01G","stay":"10ec0cf9ec55e41c"}],"number":"B-04","order":"15a016b1acdb522c"}','a345b693454ab2fad1cfd5012c6339eefe19c279875f21f03b3dd61e47179e8d');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:40:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"fea328c236197096","reference":"L002-017","stay":"ac6d0d8df5d2b8b2"}],"number":"B-05","order":"d52c3ceea49ae5af"}','b76c2c08d4da52eb1880ce4117b140e85734b224b8837b968b4be95beba8d02a');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:43:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"85f98800a32f207a","reference":"L003-010","stay":"3411fa439d642f35"}],"number":"B-06","order":"be5ef099e1a44eda"}','81e9d35906e5a8bc31c68e29a7ceb1e8d28b7fbb224165e993f1b376e6b2a1d1');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:46:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"cab9f75826976880","reference":"L004-01S","stay":"84536c0027b0fc37"}],"number":"B-07","order":"46fb54b47dc7678d"}','01263854136ac3a8251f6ee3ad84a0500669d58b169ebca94c0001eb9c7906e5');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:49:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b81b67401a6bc398","reference":"L005-01K","stay":"b6ab053de30339ac"}],"number":"B-08","order":"adfc4283450fa2a9"}','1047085a2bb26c12c82f1ec42a33a6e18d990d642093af2601f391d68908a04f');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:52:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"00e55622fccccd73","reference":"L006-01C","stay":"7c1d4181ad6b0d7b"},{"hold":null,"line":"e0453ca5f4ad3a25","reference":"L011-010","stay":"e0ef465a27c6113f"}],"number":"B-09","order":"aaad1e820b0039d4"}','29c64d6599db049def4cf7158d3dacb580bbe5269f2770e3ac90803b7cb338df');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:55:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"f9a83949911b2c06","reference":"S006-018","stay":"b41c0e6b7fc48e7e"}],"number":"B-13","order":"c28b5d6d04790d18"}','88c87b3f6f0055bddac43d689bb8d4bc88fb6fb7bdc6a9d8c01e8eaa7be09675');
INSERT INTO "ledger" VALUES(82,'2026-03-02T11:58:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"22129ffb893a42e2","reference":"L007-014","stay":"7a6edbc363192b7f"}],"number":"B-17","order":"8c7ed1c5f2cac71c"}','3dd12a73cd7bdb841c905f3a9ca192d4772f1f8cf52c2304a4779df67cdd221d');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:01:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"6530c49c7dc625a6","reference":"D009-01B","stay":"796945f6ce5ce71d"}],"number":"B-18","order":"bc942e6c1da0cae6"}','f979a33d32d07ba11bc3c0db5d8da0c22e95b611c60bf811806ad9e34c6bf1d7');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:04:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9be860c143c0a6c8","reference":"W006-013","stay":"18f6d67e88203b56"}],"number":"B-21","order":"2375da40b397e803"}','229a97c8e810869b5e287371b55514940b694113bc48f44914a8a5c1fa683c66');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:07:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"ee0080fe63fed7cd","reference":"S007-01Z","stay":"04d78a0f0a930bc1"}],"number":"B-22","order":"400760acb8e745cd"}','ce3eb61cab227fbd11481f902a12d4f1d378f8b0b200a3cf74809fd38d7c2d63');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:10:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"39d0940d2583f816","reference":"W007-01W","stay":"3bd954956bf7d8d8"},{"hold":null,"line":"7dd1d9a3eb807f29","reference":"W008-01O","stay":"fefbc85627a51531"}],"number":"B-23","order":"f8584e9ed0853f6e"}','a9a8a5a9437c5a8df2027c9a0876f22f7a6c0c96d85ba4291f1bf9372b7096ea');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:13:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b14dfbe7b3f49f7d","reference":"D008-01J","stay":"0fcb4673a4258181"}],"number":"B-26","order":"918d3f3b9656fcae"}','2d8c3fcb62db63b6177de2af0d768b4575e0f3d71c85931d9abd5347fa2d73a1');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:16:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"af51f7daf9178c1d","reference":"D003-01U","stay":"d6ee9b8cdf37cfd2"}],"number":"B-30","order":"c7114eb830dad5a8"}','04ace99897e1c90503277b58591f494eddc8951f94fc67b1a6dc58e3f90d8d6f');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:19:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"54434cc174605852","reference":"D005-01E","stay":"f4901bb3b80bdef4"},{"hold":"unknown_code","line":"5b37fa4ae295fbb2","reference":"Z999","stay":null}],"number":"B-31","order":"b35b208b4eeb1eb5"}','a47bb1851eab8f004c5fa046105bd345a8dc8f77ad1c0a0095aff5bd162b5b2d');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:22:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1f759966a89d80d9","reference":"D006-016","stay":"06a18d1a88acc4a0"},{"hold":null,"line":"041ce3d03b309756","reference":"D007-01R","stay":"191128ec563cf97f"}],"number":"B-32","order":"19ccf8a9bdeaf1bc"}','2772a910877fb389e50a8cfbab98146670a47e037efe4c4655722459312e9e41');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:25:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"041ce3d03b309756","reference":"D007-01R","stay":"191128ec563cf97f"}],"number":"B-32","order":"19ccf8a9bdeaf1bc"}','37b9cae1ba313fc1c30cd8c3e889a986f3bb9d2d83921a4d7a22e79e6d84e879');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:28:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"ce407c85c3ecf621","reference":"lamp","stay":null}],"number":"B-33","order":"fada8517c6830c99"}','b7206390bb9cccf7fbd360ab5a03c704dcce1d0f171dc1a81c41978dabdaf855');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:31:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"1da4aa262c131913","reference":"D006-016","stay":null}],"number":"B-34","order":"47a5be6cf334807d"}','1dda8e4e82256f9d773db0d25aa127f82a9b60417b7cf148bd6eca78cc3b29d3');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:34:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"8d25d7fba1f4fd1e","reference":"W004-01J","stay":null}],"number":"B-35","order":"81e26c370ef548de"}','f149c17307e77372ff208b44bf3c0a57467f3d18678da69fb2fe51eb216a0300');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:37:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"addd651e59365be5","reference":"L015","stay":null}],"number":"B-36","order":"ee2d0b1fca85630b"}','d3af9f3c1cf3267e35cdfb058111744a04bc5b9094df2738ce37fe600565262a');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:40:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"83d570a173cd627e","reference":"W005-01B","stay":"ddfb1c92dfc4103f"}],"number":"B-37","order":"55d36fb110716825"}','496705bdfae3c4375f8968f1594f6d5232948ebda8f0958d1dc012f3989d8822');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:43:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"83d570a173cd627e","stay":"ddfb1c92dfc4103f"}','a2f91d558a98cf1e283e1d4360982d73f0d037a021b725604751a4e8e7f195d9');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:46:00.000000+00:00','held','owner','{"line":"22129ffb893a42e2","why":"Another lamp, by the photo"}','5d042c4688dbfbb071f3825b06d8c5ace2cf212ce876804c5fd946653c47a493');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:49:00.000000+00:00','cancelled','owner','{"lines":["b81b67401a6bc398"],"number":"B-08","order":"adfc4283450fa2a9"}','aecc40137e3addeaf199a2753ce9d0623e4230ca433c4b7cd0dac4f10119e09c');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:52:00.000000+00:00','cancelled','owner','{"lines":["9be860c143c0a6c8"],"number":"B-21","order":"2375da40b397e803"}','481b3e4615e97ce32a0f0774b1bea2e17771df2f4e1394966f46a822b0f95d56');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:55:00.000000+00:00','revived','owner','{"line":"9be860c143c0a6c8","stay":"18f6d67e88203b56"}','4a4811185d9ca35498a8ab2e5b0e870f2204d053e16f778008e5266f042ab622');
INSERT INTO "ledger" VALUES(102,'2026-03-02T12:58:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"da77af6db9aa0502","stay":"0fcb4673a4258181","to":"D020"}','f940bd5281a75122eed53d92335a27683f81ecacfd09a53ba7563537b3eae08c');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:03:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"001c969fc1a2619b","reference":"S012-01O","stay":"09cb0057887b762a"}],"number":"F-1","order":"f67053740e87797c"}','e8a8c540e621f4d833301705baf4392a92a05fc09bbfd6f1ecd6644b659da6ba');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:03:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"b3517f98053293a7","reference":"","stay":null}],"number":"F-2","order":"d1c03dbbb03085bc"}','d39b26b247781b18dbb28f91394948677e151690f7e2bedb794b8a5bd3c64157');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:06:00.000000+00:00','round opened','owner','{"lines":["471af9633c960f4e","a1427d24fbc6ddfb","2746a66d74a506ba","e04382f2e4c2632e","526e22360d048726","89dc49b386f19846","00e55622fccccd73","e0453ca5f4ad3a25","f9a83949911b2c06","ee0080fe63fed7cd","39d0940d2583f816","7dd1d9a3eb807f29"],"round":"3800971e88ef2109"}','5576c1b2dc25e6e46c1b4e9ca0a917eb18ee27f9bc431aaa5b52b0f6074c4e21');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:09:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','ca5d3090ce1700c4c8c2365efb7eeacefed34fc0cf4feb38ddb69ae76ad97f9b');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:12:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"471af9633c960f4e","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','8ca206d6dddc037061fde5751fa4680d90e21b296555436237e4d2e11c907562');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:15:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"a1427d24fbc6ddfb","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','4ac97019e763cd0f861ea899f632578020f190ea1707bbff11844d358460b582');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:18:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"2746a66d74a506ba","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','7d57f2f84a3e64a8c940b010bb33184c36886bc45d1bed0ba0c803228791c492');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:21:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"e04382f2e4c2632e","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','7c90c604eb1f10269a71b00aa14817e8f860a10ee2f794c5a62f3e47212cff3b');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:24:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"526e22360d048726","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','107b7f8caa80a615f9a3ba0252db6fce6b6e24155a95f508aa04118af2e1e8ae');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:27:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"89dc49b386f19846","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','b63cf7be1ac6e908894e173f1bac54e7a75868e4766a98e426eb5617f682b287');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:30:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"00e55622fccccd73","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','deafb9bbe44b3d8dbdfbea6fb917cc68df0e83d074199f1967b5a8d7ce102f53');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:33:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"e0453ca5f4ad3a25","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','811bf0aeb46810a027f7b1edb04626d3f9a4fabd38a3994debaa67975534a8d2');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:36:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"f9a83949911b2c06","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','d10dc4fdb16e8c900a56ac49cafb071e8ab1d470fdcd3ab4cc61a88c014230d6');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:39:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"ee0080fe63fed7cd","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','68388cac93ccb373db4078edbd0075216c17d2e45d65a64ab35723978c30924a');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:42:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"39d0940d2583f816","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','23c2353e0dfc35e6e17ce7dc5c63f19bb5b77ebb4c9d643594bfd6c931d73b5f');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:45:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"7dd1d9a3eb807f29","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"3800971e88ef2109","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','473f0dc16bbabdfc0dc2dbc766e5c8ae65b2af979c159920f3f8b7acc0ebbc6e');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:48:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"7dd1d9a3eb807f29","line_state":"waiting"}','242528f2d3fb331da14266fe72e23dc4738b569ef98757680e3bd413ccd49752');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:51:00.000000+00:00','round closed','owner','{"round":"3800971e88ef2109"}','8f18186597d0a6c250c78f40648623cf28f0851b8ee5b277d036511796ea1ed8');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:54:00.000000+00:00','parcel opened','owner','{"orders":["11655b803f62459a"],"parcel":"05f81e4dd7e8d322","table":"main"}','6196e1fb45db770a5a58b764e72118469823f7af7e6b126be9944f46bd3a41d1');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:57:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"2746a66d74a506ba","line_state":"picked","order_number":"B-03","parcel":"05f81e4dd7e8d322","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','30ddf0f26fe090c31e431cec1e445edd9e5cbdc5b1c9cc32b9c2e4ce5c8784a7');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:00:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"471af9633c960f4e","line_state":"packed","order_number":"B-01","parcel":"05f81e4dd7e8d322","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','9db0bde596b79087d015c47e387b6cd9e2c14fd26e0cb8fec0092f7986d78559');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:03:00.000000+00:00','parcel closed','owner','{"orders":["11655b803f62459a"],"parcel":"05f81e4dd7e8d322","released":["W001","W002"]}','07de1536961e4b540ba6e941957108617b15cc534d772d94182508039d13b186');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:03:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"a1427d24fbc6ddfb","line_state":"released","order_number":"B-01","parcel":"05f81e4dd7e8d322","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','46a27e12585a40f9e7404ab72468cce479ef4b82306540dbd34aa2b1dc269a44');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:06:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"471af9633c960f4e","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','0d9acecd2e10303903e8c3f67273ccfff1fad2297adbbb5e3771f5153f34190a');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:09:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"1b998d864eeb7a3a","title":"Rear wheel","turn":2}','dcd6f03fce39c99025859cd392ddc06803cd7bccbc1192619faa8f385674faf1');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:12:00.000000+00:00','parcel opened','owner','{"orders":["f8584e9ed0853f6e"],"parcel":"dc5a74d1ec0da640","table":"main"}','298dcc1af41d4be98c8ddceeb3e3083842b8da012741964a72973a6d738ac832');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:15:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"39d0940d2583f816","line_state":"packed","order_number":"B-23","parcel":"dc5a74d1ec0da640","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','b4f4458334f759a906121c76f80ce29620f98e89e98be4ccbc0616f3e3342cdb');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:18:00.000000+00:00','parcel closed','owner','{"orders":["f8584e9ed0853f6e"],"parcel":"dc5a74d1ec0da640","released":["W007"]}','58109c2c00dab148b1de5b8f5dfe169c22503e55d3f318ecaf3d6ab8ca59ad79');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:21:00.000000+00:00','parcel reopened','owner','{"orders":["f8584e9ed0853f6e"],"parcel":"dc5a74d1ec0da640"}','8575cbc8e465d04fa81a6360989b590d132eac4c48acfb4c7bcffbdbcc0c4b7f');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:24:00.000000+00:00','parcel closed','owner','{"orders":["f8584e9ed0853f6e"],"parcel":"dc5a74d1ec0da640","released":["W007"]}','a8c7dd2c0cbad95f3bd2426eb22b93b5ab4b8d905169c0a980707ea337912c96');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:27:00.000000+00:00','parcel opened','owner','{"orders":["400760acb8e745cd"],"parcel":"7ccad7c0383240fc","table":"main"}','0d626ea26af102e18a85243c2aea4f2f7fadc06aae403a1d09a1f76fb3e64224');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:30:00.000000+00:00','parcel dropped','owner','{"parcel":"7ccad7c0383240fc"}','926d7a466c66c6c7220fa2d1f5d7b2fa60e6a7c689abcf17a76611e8e8e274a0');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:33:00.000000+00:00','parcel opened','owner','{"orders":["15a016b1acdb522c"],"parcel":"d6379c020565a064","table":"main"}','81eb3f3223b91efb46e42322ca3e45ddbe657e5316443dc834105ddca72870b7');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:36:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"526e22360d048726","line_state":"packed","order_number":"B-04","parcel":"d6379c020565a064","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','d809a7c03d563463279f4c5ce9a408dc9a96953ae16031655a9e498750607d93');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:39:00.000000+00:00','parcel set aside','owner','{"parcel":"d6379c020565a064"}','c16a7a4f0f79d697ecd0239aae4f6f51dcbed9508e914b52126e67743b13d5d0');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:42:00.000000+00:00','parcel opened','owner','{"orders":["aaad1e820b0039d4"],"parcel":"4f317861bf94db7e","table":"second"}','91d4aa58913388436a4cbc92d31d2ad4ab94f378ecd6c414a3f4fb6222d581fc');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:45:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"00e55622fccccd73","line_state":"packed","order_number":"B-09","parcel":"4f317861bf94db7e","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','8d7bad40ad2ffa90aa1da0c9bda5eaf4e4a4d3409bea8d1caa8971545fd4adaf');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:48:00.000000+00:00','cancelled','owner','{"lines":["00e55622fccccd73","e0453ca5f4ad3a25"],"number":"B-09","order":"aaad1e820b0039d4"}','55a6ebfe0bfa5152d44d8257a2c83967870a1248f848f0585db27b34686bb000');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:51:00.000000+00:00','parcel opened','owner','{"orders":["050151f47b47bd52"],"parcel":"3c2412ae65732d18","table":"main"}','bafe7142838b792c500ddf250438ead00496b9422c69178eebad11509113dd29');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:54:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"2746a66d74a506ba","line_state":"packed","order_number":"B-03","parcel":"3c2412ae65732d18","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','8a94add7ae2e5168debee13a869e9211c432607707b79ce7fb68b43284f13f68');
INSERT INTO "ledger" VALUES(143,'2026-03-02T14:57:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"f9a83949911b2c06","reference":"S006-018","stay":"b41c0e6b7fc48e7e"}],"number":"B-13","order":"c28b5d6d04790d18"}','97edfeeaa12259e0c4255cd354c98c84eb55db4cba5cfedbe2070405f836f61d');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:00:00.000000+00:00','round opened','owner','{"lines":["fea328c236197096","85f98800a32f207a","cab9f75826976880","b14dfbe7b3f49f7d"],"round":"2fe7dbff002d5a65"}','d18f8c879ef5ee72bc5e0311f126da67b0040ebc51d5cdf96f8c051435e6186b');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:03:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"fea328c236197096","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"2fe7dbff002d5a65","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','1b955895a5dd4ead0b10381dd5b890b571f9681597a0579a9b6658cb1a63c156');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:06:00.000000+00:00','short','owner','{"line":"cab9f75826976880","note":"Not in its bin"}','cfcdf2fde97f7f9a291fb829f4bb9c6a097e9fbc80d90bdb1ff776535f160d94');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:09:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"2fe7dbff002d5a65","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','c242ff6fec09389fb4c4f1434afc518706f7160caeb3cbf003d234f951e9ea72');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:12:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"2fe7dbff002d5a65","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','4c99a4482d9830d9e65bbff343f9b521a349d74ab88a55fd1d966bae5ee7c7ad');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:15:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"2fe7dbff002d5a65","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','d5e3e491d2ce8ad1f7a22fcf2ad16bcdeb72db57f065da7192dfc392fecc07ef');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:18:00.000000+00:00','card lost','owner','{"code":"L001"}','e9bfc44c14e4e47e9bfb1093b2285d3a90dedab0a9a45a378b394dfe47c01465');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:21:00.000000+00:00','card lost','owner','{"code":"W015"}','af7cf12b1809596e5a9adf60a831fc060cbf9fc588109c77237b76a74aeb7dc9');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"7b204040edcac1de","reference":"D001-019","stay":"03e0170beb8f0d05"},{"hold":"already_sold","line":"5b7d22418a6f8b9a","reference":"W002-016","stay":null}],"number":"B-38","order":"4630057dcf0430e3"}','645f89d7f65ce94373b3d0a47b9a30d0006daf7e7430c15a6d413829cd260dd4');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:27:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"fd1fc108139cce10","reference":"W001","stay":null}],"number":"B-39","order":"58bad7722b9bd9b3"}','471581537cf50f02c3969fab798effeca08781a4ea9cc1f031d7fd043c935a7b');
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
INSERT INTO "lines" VALUES(1,'471af9633c960f4e','11655b803f62459a',1,'W001-01E','Front wheel 1','','934777bd54dfff7c','released',NULL,'','05f81e4dd7e8d322','3800971e88ef2109',1,NULL,1);
INSERT INTO "lines" VALUES(2,'a1427d24fbc6ddfb','11655b803f62459a',2,'W002-016','Front wheel 2','','818ef98fcd7db5e2','released',NULL,'','05f81e4dd7e8d322','3800971e88ef2109',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'2746a66d74a506ba','050151f47b47bd52',1,'S002-013','Leather saddle 2','','6ff99132ed8d73bb','packed',NULL,'','3c2412ae65732d18','3800971e88ef2109',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'e04382f2e4c2632e','050151f47b47bd52',2,'S003-01W','Leather saddle 3','','bd837c5de8517430','picked',NULL,'',NULL,'3800971e88ef2109',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'526e22360d048726','15a016b1acdb522c',1,'S004-01O','Leather saddle 4','','b848231cabcfb6bd','packed',NULL,'','d6379c020565a064','3800971e88ef2109',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'89dc49b386f19846','15a016b1acdb522c',2,'S005-01G','Leather saddle 5','','10ec0cf9ec55e41c','picked',NULL,'',NULL,'3800971e88ef2109',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'fea328c236197096','d52c3ceea49ae5af',1,'L002-017','Dynamo lamp 2','','ac6d0d8df5d2b8b2','picked',NULL,'',NULL,'2fe7dbff002d5a65',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'85f98800a32f207a','be5ef099e1a44eda',1,'L003-010','Dynamo lamp 3','','3411fa439d642f35','waiting',NULL,'',NULL,'2fe7dbff002d5a65',2,NULL,1);
INSERT INTO "lines" VALUES(9,'cab9f75826976880','46fb54b47dc7678d',1,'L004-01S','Dynamo lamp 4','','84536c0027b0fc37','short',NULL,'',NULL,'2fe7dbff002d5a65',3,NULL,1);
INSERT INTO "lines" VALUES(10,'b81b67401a6bc398','adfc4283450fa2a9',1,'L005-01K','Dynamo lamp 5','','b6ab053de30339ac','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'00e55622fccccd73','aaad1e820b0039d4',1,'L006-01C','Dynamo lamp 6','','7c1d4181ad6b0d7b','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','4f317861bf94db7e','3800971e88ef2109',4,NULL,1);
INSERT INTO "lines" VALUES(12,'e0453ca5f4ad3a25','aaad1e820b0039d4',2,'L011-010','Dynamo lamp 11','','e0ef465a27c6113f','cancelled',NULL,'',NULL,'3800971e88ef2109',4,NULL,1);
INSERT INTO "lines" VALUES(13,'f9a83949911b2c06','c28b5d6d04790d18',1,'S006-018','Saddle with springs','','b41c0e6b7fc48e7e','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'3800971e88ef2109',5,NULL,1);
INSERT INTO "lines" VALUES(14,'22129ffb893a42e2','8c7ed1c5f2cac71c',1,'L007-014','Dynamo lamp 7','','7a6edbc363192b7f','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'6530c49c7dc625a6','bc942e6c1da0cae6',1,'D009-01B','Rear derailleur 9','','796945f6ce5ce71d','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'9be860c143c0a6c8','2375da40b397e803',1,'W006-013','Front wheel 6','','18f6d67e88203b56','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'ee0080fe63fed7cd','400760acb8e745cd',1,'S007-01Z','Leather saddle 7','','04d78a0f0a930bc1','picked',NULL,'',NULL,'3800971e88ef2109',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'39d0940d2583f816','f8584e9ed0853f6e',1,'W007-01W','Front wheel 7','','3bd954956bf7d8d8','released',NULL,'','dc5a74d1ec0da640','3800971e88ef2109',7,NULL,1);
INSERT INTO "lines" VALUES(19,'7dd1d9a3eb807f29','f8584e9ed0853f6e',2,'W008-01O','Front wheel 8','','fefbc85627a51531','waiting',NULL,'',NULL,'3800971e88ef2109',7,NULL,1);
INSERT INTO "lines" VALUES(20,'b14dfbe7b3f49f7d','918d3f3b9656fcae',1,'D008-01J','Rear derailleur 8','','da77af6db9aa0502','waiting',NULL,'',NULL,'2fe7dbff002d5a65',4,NULL,1);
INSERT INTO "lines" VALUES(21,'af51f7daf9178c1d','c7114eb830dad5a8',1,'D003-01U','Bell with a crown','','d6ee9b8cdf37cfd2','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'54434cc174605852','b35b208b4eeb1eb5',1,'D005-01E','Rear derailleur 5','','f4901bb3b80bdef4','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'5b37fa4ae295fbb2','b35b208b4eeb1eb5',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'1f759966a89d80d9','19ccf8a9bdeaf1bc',1,'D006-016','Rear derailleur 6','','06a18d1a88acc4a0','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'041ce3d03b309756','19ccf8a9bdeaf1bc',2,'D007-01R','Rear derailleur 7','','191128ec563cf97f','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'ce407c85c3ecf621','fada8517c6830c99',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'1da4aa262c131913','47a5be6cf334807d',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'8d25d7fba1f4fd1e','81e26c370ef548de',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'addd651e59365be5','ee2d0b1fca85630b',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'83d570a173cd627e','55d36fb110716825',1,'W005-01B','Bell with a crown','','ddfb1c92dfc4103f','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'001c969fc1a2619b','f67053740e87797c',1,'S012-01O','','','09cb0057887b762a','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'b3517f98053293a7','d1c03dbbb03085bc',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'7b204040edcac1de','4630057dcf0430e3',1,'D001-019','Rear derailleur 1','','03e0170beb8f0d05','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'5b7d22418a6f8b9a','4630057dcf0430e3',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'fd1fc108139cce10','58bad7722b9bd9b3',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "orders" VALUES(1,'11655b803f62459a','B-01','fair','2026-03-02T11:31:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'050151f47b47bd52','B-03','fair','2026-03-02T11:34:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','3c2412ae65732d18');
INSERT INTO "orders" VALUES(3,'15a016b1acdb522c','B-04','fair','2026-03-02T11:37:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','d6379c020565a064');
INSERT INTO "orders" VALUES(4,'d52c3ceea49ae5af','B-05','fair','2026-03-02T11:40:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'be5ef099e1a44eda','B-06','fair','2026-03-02T11:43:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'46fb54b47dc7678d','B-07','fair','2026-03-02T11:46:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'adfc4283450fa2a9','B-08','fair','2026-03-02T11:49:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'aaad1e820b0039d4','B-09','fair','2026-03-02T11:52:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','4f317861bf94db7e');
INSERT INTO "orders" VALUES(9,'c28b5d6d04790d18','B-13','fair','2026-03-02T11:55:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'8c7ed1c5f2cac71c','B-17','fair','2026-03-02T11:58:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'bc942e6c1da0cae6','B-18','fair','2026-03-02T12:01:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'2375da40b397e803','B-21','fair','2026-03-02T12:04:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'400760acb8e745cd','B-22','fair','2026-03-02T12:07:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'f8584e9ed0853f6e','B-23','fair','2026-03-02T12:10:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'918d3f3b9656fcae','B-26','fair','2026-03-02T12:13:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'c7114eb830dad5a8','B-30','fair','2026-03-02T12:16:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'b35b208b4eeb1eb5','B-31','fair','2026-03-02T12:19:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'19ccf8a9bdeaf1bc','B-32','fair','2026-03-02T12:22:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'fada8517c6830c99','B-33','fair','2026-03-02T12:28:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'47a5be6cf334807d','B-34','fair','2026-03-02T12:31:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'81e26c370ef548de','B-35','fair','2026-03-02T12:34:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'ee2d0b1fca85630b','B-36','fair','2026-03-02T12:37:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'55d36fb110716825','B-37','fair','2026-03-02T12:40:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'f67053740e87797c','F-1','','2026-03-02T13:03:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'d1c03dbbb03085bc','F-2','','2026-03-02T13:03:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'4630057dcf0430e3','B-38','fair','2026-03-02T15:24:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'58bad7722b9bd9b3','B-39','','2026-03-02T15:27:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'05f81e4dd7e8d322','main','11655b803f62459a','2026-03-02T13:54:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'dc5a74d1ec0da640','main','f8584e9ed0853f6e','2026-03-02T14:12:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'7ccad7c0383240fc','main','400760acb8e745cd','2026-03-02T14:27:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'d6379c020565a064','main','15a016b1acdb522c','2026-03-02T14:33:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'4f317861bf94db7e','second','aaad1e820b0039d4','2026-03-02T14:42:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'3c2412ae65732d18','main','050151f47b47bd52','2026-03-02T14:51:00.000000+00:00','open');
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
INSERT INTO "rounds" VALUES(1,'3800971e88ef2109','2026-03-02T13:06:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'2fe7dbff002d5a65','2026-03-02T15:00:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','2399942e2ed695b33ecd0e7e813a02f00e148a924a6406c8d7d4ccfaecacc7d0','bin','3800971e88ef2109','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','e2f348edd1a3db84df419d03fbed8e97e50cc13ac0d77ce11c1b79ebe8b14b48','bin','3800971e88ef2109','W001',0,1,1,'471af9633c960f4e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "11655b803f62459a", "order_number": "B-01", "line": "471af9633c960f4e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','214d126d4b514b071c71f59ae75729d94185a2d88ecacbaa0a3a374bf78bc506','bin','3800971e88ef2109','W002',0,1,1,'a1427d24fbc6ddfb',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "11655b803f62459a", "order_number": "B-01", "line": "a1427d24fbc6ddfb", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','42d76e93511a9ca32a8a348f119d2f186387a15b840907a37e030128947b0ada','bin','3800971e88ef2109','S002',0,1,1,'2746a66d74a506ba',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "050151f47b47bd52", "order_number": "B-03", "line": "2746a66d74a506ba", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','a977461adaf71815423c3bf069952b109232405c614035649d81dce09c6e2ca1','bin','3800971e88ef2109','S003',0,1,1,'e04382f2e4c2632e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "050151f47b47bd52", "order_number": "B-03", "line": "e04382f2e4c2632e", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','030a3d7bfc0c31eb887bbf3b36040c575e4f462151b5f4a9ff5f36d393623dbd','bin','3800971e88ef2109','S004',0,1,1,'526e22360d048726',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "15a016b1acdb522c", "order_number": "B-04", "line": "526e22360d048726", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','df1c7fa2e2aa5284ae2626d293aecd4365f567fcd3451152c05a9db570b323b1','bin','3800971e88ef2109','S005',0,1,1,'89dc49b386f19846',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "15a016b1acdb522c", "order_number": "B-04", "line": "89dc49b386f19846", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','18a6bff66dd595d4ab58c4a85bb336557a426ba385cd6244177420d073830d48','bin','3800971e88ef2109','L006',0,1,1,'00e55622fccccd73',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "aaad1e820b0039d4", "order_number": "B-09", "line": "00e55622fccccd73", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','778918d670ddde9772667e178536c6a1d691189822b63af104424cc8ed857228','bin','3800971e88ef2109','L011',0,1,1,'e0453ca5f4ad3a25',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "aaad1e820b0039d4", "order_number": "B-09", "line": "e0453ca5f4ad3a25", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','e48017cf99021fe49dcb8905b9d10127fb7966b87823d1d6ab26941c0872f932','bin','3800971e88ef2109','S006',0,1,1,'f9a83949911b2c06',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "c28b5d6d04790d18", "order_number": "B-13", "line": "f9a83949911b2c06", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','71e43627552e5b26fb274ffcf393b9331c2e9935ad73ba36de9f8e2b1460c32e','bin','3800971e88ef2109','S007',0,1,1,'ee0080fe63fed7cd',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "400760acb8e745cd", "order_number": "B-22", "line": "ee0080fe63fed7cd", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','f9c554539991ffe08f728afde5481287e1da05e88a96aad9421e7fd6a475f0c2','bin','3800971e88ef2109','W007',0,1,1,'39d0940d2583f816',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "f8584e9ed0853f6e", "order_number": "B-23", "line": "39d0940d2583f816", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','07a34cef09e30ca0377e60b5ee8397007562dfa881cdc5aecd3470c39a8382a5','bin','3800971e88ef2109','W008',0,1,1,'7dd1d9a3eb807f29',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "f8584e9ed0853f6e", "order_number": "B-23", "line": "7dd1d9a3eb807f29", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'2746a66d74a506ba','05f81e4dd7e8d322','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "050151f47b47bd52", "order_number": "B-03", "line": "2746a66d74a506ba", "line_state": "picked", "order_state": "picking", "parcel": "05f81e4dd7e8d322", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'471af9633c960f4e','05f81e4dd7e8d322','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "11655b803f62459a", "order_number": "B-01", "line": "471af9633c960f4e", "line_state": "packed", "order_state": "picking", "parcel": "05f81e4dd7e8d322", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'a1427d24fbc6ddfb','05f81e4dd7e8d322','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "11655b803f62459a", "order_number": "B-01", "line": "a1427d24fbc6ddfb", "line_state": "released", "order_state": "released", "parcel": "05f81e4dd7e8d322", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'471af9633c960f4e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "11655b803f62459a", "order_number": "B-01", "line": "471af9633c960f4e", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'39d0940d2583f816','dc5a74d1ec0da640','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "f8584e9ed0853f6e", "order_number": "B-23", "line": "39d0940d2583f816", "line_state": "packed", "order_state": "waiting", "parcel": "dc5a74d1ec0da640", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'526e22360d048726','d6379c020565a064','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "15a016b1acdb522c", "order_number": "B-04", "line": "526e22360d048726", "line_state": "packed", "order_state": "picking", "parcel": "d6379c020565a064", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'00e55622fccccd73','4f317861bf94db7e','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "aaad1e820b0039d4", "order_number": "B-09", "line": "00e55622fccccd73", "line_state": "packed", "order_state": "picking", "parcel": "4f317861bf94db7e", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'2746a66d74a506ba','3c2412ae65732d18','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "050151f47b47bd52", "order_number": "B-03", "line": "2746a66d74a506ba", "line_state": "packed", "order_state": "picking", "parcel": "3c2412ae65732d18", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','e081dc465f24d1a4a8b0167900212171e612c1e06afb1309f23a876c5eaa4528','bin','2fe7dbff002d5a65','L002',0,1,1,'fea328c236197096',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "d52c3ceea49ae5af", "order_number": "B-05", "line": "fea328c236197096", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','31d10692148fbff3190dbbf38809fb297778bf464b82831d8ec91fc027965bbb','bin','2fe7dbff002d5a65',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','ca45335a5db88c648c273d44e79fa0de2ed9954f41ccb43bceaa7990b27022e7','bin','2fe7dbff002d5a65',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','57338feb2b271fb972af99656f1ca9577a3bf260a0a8bc1856865afa16337194','bin','2fe7dbff002d5a65',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'03e0170beb8f0d05','8800944a988959d8','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'be5d2201b8948115','9dcef343b62ff385','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'d6ee9b8cdf37cfd2','9923002a732c468c','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'2654dff471c07962','5d5a92ffd756abfe','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'f4901bb3b80bdef4','ea433cdc9ea5e59c','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'06a18d1a88acc4a0','d33ea124882a432e','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'191128ec563cf97f','76fb2881ae8a358b','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'0fcb4673a4258181','d801063fae058130','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T12:58:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'796945f6ce5ce71d','767ebe3e1e048485','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'be11a916f2bca162','4ed8f53764e74830','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'7e6f28db9ab61051','c893fd4b7d2be9ad','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'a2837b42fa1f5281','0c870b94f2330970','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'5cf671ca8111b2d6','2c7c94326fd43ea4','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'6ff99132ed8d73bb','49c72bd9daf8bfe6','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'bd837c5de8517430','1471fc30db995d89','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'b848231cabcfb6bd','1d83f7541a44d154','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'10ec0cf9ec55e41c','ea47e697b234ceb4','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'b41c0e6b7fc48e7e','6e99b6287206fc21','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'04d78a0f0a930bc1','cb202c147f92d019','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'5afbbc7e0992fd58','578f19239bf0b227','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'1c09a008910f9bd6','cc8e5749904747f2','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'f0ee68ae7b5e0c2d','58cb0dba4d4d6a9b','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'3a37f82c065ba310','e5782af6bb241074','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'09cb0057887b762a','4381e9805ed4653c','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'671b6786db9ccdc6','ff114ace900eb138','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'ac6d0d8df5d2b8b2','f6e1162edee07492','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'3411fa439d642f35','ccbcf21bd2d7a945','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'84536c0027b0fc37','0be6aa736642bf23','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'b6ab053de30339ac','78b48aaaba9fb8ef','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'7c1d4181ad6b0d7b','7626e21d41fb3f41','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'7a6edbc363192b7f','beb8c05ec0f5acc5','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'b8fceffd49c0e99e','634fa3c09feb1eb2','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'dbbfd5767467cd23','fad30b3423bef71e','L009',1,'2026-03-02T10:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(34,'101d72d58d7be9ce','dd6f2aa43a66cc65','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'e0ef465a27c6113f','cf09c3cc4c873361','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'bd1c0268630437bf','b61f0fa6ee171d95','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'934777bd54dfff7c','c45f4519fb1612ab','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:03:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'818ef98fcd7db5e2','0e8d041de5421bf9','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:03:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'fe685fc90bf4b158','273f0ded45acc63e','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'4a2ae6cf56dbe9bc','d8d6fa8b34a64b70','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'ddfb1c92dfc4103f','5dbb5de13a6ef8cf','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'18f6d67e88203b56','a9e2e20d3fc2de14','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'3bd954956bf7d8d8','75d6c7f6599d212f','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:24:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'fefbc85627a51531','1d8779c0885a0417','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'2edb4c506a96a6da','7a5317ec37234add','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'d79cafcbb394c2d9','818ae91c87959a6e','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'14fe9cc665cf4457','cc3b52d3fed63d94','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'d09224af75488023','4c4f21735d20775a','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'8325239d35d2bd51','1ae8330a21176878','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'9be86be89d90a4b6','cc8e5749904747f2','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'da77af6db9aa0502','d801063fae058130','D020',1,'2026-03-02T12:58:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'1b998d864eeb7a3a','b0ead41dae3741ce','W001',2,'2026-03-02T14:09:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stops" VALUES(1,'3800971e88ef2109',1,'2746a66d74a506ba','B-1-1');
INSERT INTO "stops" VALUES(2,'3800971e88ef2109',2,'e04382f2e4c2632e','B-1-1');
INSERT INTO "stops" VALUES(3,'3800971e88ef2109',3,'526e22360d048726','B-1-1');
INSERT INTO "stops" VALUES(4,'3800971e88ef2109',4,'89dc49b386f19846','B-1-1');
INSERT INTO "stops" VALUES(5,'3800971e88ef2109',5,'f9a83949911b2c06','B-1-1');
INSERT INTO "stops" VALUES(6,'3800971e88ef2109',6,'ee0080fe63fed7cd','B-1-1');
INSERT INTO "stops" VALUES(7,'3800971e88ef2109',7,'471af9633c960f4e','D-1-1');
INSERT INTO "stops" VALUES(8,'3800971e88ef2109',8,'a1427d24fbc6ddfb','D-1-1');
INSERT INTO "stops" VALUES(9,'3800971e88ef2109',9,'39d0940d2583f816','D-1-1');
INSERT INTO "stops" VALUES(10,'3800971e88ef2109',10,'7dd1d9a3eb807f29','D-1-1');
INSERT INTO "stops" VALUES(11,'3800971e88ef2109',11,'00e55622fccccd73','C-1-1');
INSERT INTO "stops" VALUES(12,'3800971e88ef2109',12,'e0453ca5f4ad3a25','C-1-2');
INSERT INTO "stops" VALUES(13,'2fe7dbff002d5a65',1,'b14dfbe7b3f49f7d','A-1-2');
INSERT INTO "stops" VALUES(14,'2fe7dbff002d5a65',2,'fea328c236197096','C-1-1');
INSERT INTO "stops" VALUES(15,'2fe7dbff002d5a65',3,'85f98800a32f207a','C-1-1');
INSERT INTO "stops" VALUES(16,'2fe7dbff002d5a65',4,'cab9f75826976880','C-1-1');
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
COMMIT;
