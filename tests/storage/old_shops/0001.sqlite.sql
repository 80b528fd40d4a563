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
INSERT INTO "access" VALUES(1,'99cead7a9792bcd5ffa158533a8880f0d2851be5cef360362efde2d6821bf463','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$5pyo1NjRCto4Knp05Kh36w$mv4/ff5ig7VGq+geeArpJq4xNyE2rp7HX2YYW6V+uIU','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'fedde03e4c287fb470f7b20672a0b714fc8a316faaf8ede5fe275e6cc40f2987','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'aa989bd5345b2ac8fe140c0c6e2c84ced2d6890868cebf5bc2893198785fcf4a','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'4db4a669f03921f2e41a3abfdafeb72cbc2871dd0fa3c67a10311ac11a26800c','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0001');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/6bb24d1654ba7cd7','{"id": "6bb24d1654ba7cd7", "item": "11ce26ea2674537f", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": ""}');
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
INSERT INTO "head" VALUES(1,149,'d27bf316cbde4043a0d5e283d266b2e7728ccb6ddf65e91f2450fd240b631804','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none"}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'d60c8592317f3183','Rear derailleur 1','L-D1','Scratched, “used”');
INSERT INTO "items" VALUES(2,'e783cd3997f4ce30','Rear derailleur 2','L-D2','Cable is new');
INSERT INTO "items" VALUES(3,'edcb5e925a088ac8','Rear derailleur 3','L-D3','Scratched, “used”');
INSERT INTO "items" VALUES(4,'1d07bdd7095eae21','Rear derailleur 4','L-D4','Scratched, “used”');
INSERT INTO "items" VALUES(5,'87092bde22ea1234','Rear derailleur 5','L-D5','Scratched, “used”');
INSERT INTO "items" VALUES(6,'0041f50fb183b545','Rear derailleur 6','L-D6','Scratched, “used”');
INSERT INTO "items" VALUES(7,'f3013dc52f9dfc5c','Rear derailleur 7','L-D7','Scratched, “used”');
INSERT INTO "items" VALUES(8,'3bf91d3c0ef3c941','Rear derailleur 8','L-D8','Scratched, “used”');
INSERT INTO "items" VALUES(9,'687c746260f65465','Rear derailleur 9','L-D9','Scratched, “used”');
INSERT INTO "items" VALUES(10,'b47f49cab78b3c07','Rear derailleur 10','L-D10','Scratched, “used”');
INSERT INTO "items" VALUES(11,'cf384b72516fde28','Rear derailleur 11','L-D11','Scratched, “used”');
INSERT INTO "items" VALUES(12,'340f2177b414af8c','Rear derailleur 12','L-D12','Scratched, “used”');
INSERT INTO "items" VALUES(13,'03fb548a40831c73','Leather saddle 1','L-S1','Scratched, “used”');
INSERT INTO "items" VALUES(14,'9a475525e10b3505','Leather saddle 2','L-S2','Scratched, “used”');
INSERT INTO "items" VALUES(15,'dde68e96e6e341c3','Leather saddle 3','L-S3','Scratched, “used”');
INSERT INTO "items" VALUES(16,'66f976088ef28d18','Leather saddle 4','L-S4','Scratched, “used”');
INSERT INTO "items" VALUES(17,'af4ed81e523701af','Leather saddle 5','L-S5','Scratched, “used”');
INSERT INTO "items" VALUES(18,'dc4561fe645bfbea','Leather saddle 6','L-S6','Scratched, “used”');
INSERT INTO "items" VALUES(19,'b7051d32451cdfd0','Leather saddle 7','L-S7','Scratched, “used”');
INSERT INTO "items" VALUES(20,'d2226ef4c3d3be1b','Leather saddle 8','L-S8','Scratched, “used”');
INSERT INTO "items" VALUES(21,'cde12cb517abe0e1','Leather saddle 9','L-S9','Scratched, “used”');
INSERT INTO "items" VALUES(22,'3c126bf4f148962a','Leather saddle 10','L-S10','Scratched, “used”');
INSERT INTO "items" VALUES(23,'d128fb3d970cd866','Leather saddle 11','L-S11','Scratched, “used”');
INSERT INTO "items" VALUES(24,'0c2b222566e33ee1','Leather saddle 12','L-S12','Scratched, “used”');
INSERT INTO "items" VALUES(25,'7aae579cf57b182b','Dynamo lamp 1','L-L1','Scratched, “used”');
INSERT INTO "items" VALUES(26,'ee5fd9aec56df970','Dynamo lamp 2','L-L2','Scratched, “used”');
INSERT INTO "items" VALUES(27,'cc02ddb06fbcd2cc','Dynamo lamp 3','L-L3','Scratched, “used”');
INSERT INTO "items" VALUES(28,'e27793ca2e45cf40','Dynamo lamp 4','L-L4','Scratched, “used”');
INSERT INTO "items" VALUES(29,'8b898576a5c50864','Dynamo lamp 5','L-L5','Scratched, “used”');
INSERT INTO "items" VALUES(30,'3d4f32fd72b4bc81','Dynamo lamp 6','L-L6','Scratched, “used”');
INSERT INTO "items" VALUES(31,'2b4fb3ee9dac66d0','Dynamo lamp 7','L-L7','Scratched, “used”');
INSERT INTO "items" VALUES(32,'d7600cf5235cde9a','Dynamo lamp 8','L-L8','Scratched, “used”');
INSERT INTO "items" VALUES(33,'0e2ae134ab0ec2ea','Dynamo lamp 9','L-L9','Scratched, “used”');
INSERT INTO "items" VALUES(34,'4faf927059042040','Dynamo lamp 10','L-L10','Scratched, “used”');
INSERT INTO "items" VALUES(35,'5c318158e95bbd76','Dynamo lamp 11','L-L11','Scratched, “used”');
INSERT INTO "items" VALUES(36,'7d304a7bc20b1310','Dynamo lamp 12','L-L12','Scratched, “used”');
INSERT INTO "items" VALUES(37,'f378572e8fe11282','Front wheel 1','L-W1','Scratched, “used”');
INSERT INTO "items" VALUES(38,'5a1f3adf6bb97435','Front wheel 2','L-W2','Scratched, “used”');
INSERT INTO "items" VALUES(39,'fdd9d9e3dbe2a158','Front wheel 3','L-W3','Scratched, “used”');
INSERT INTO "items" VALUES(40,'89e2484bfe02e684','Front wheel 4','L-W4','Scratched, “used”');
INSERT INTO "items" VALUES(41,'543f6423082fd79e','Front wheel 5','L-W5','Scratched, “used”');
INSERT INTO "items" VALUES(42,'4fd27629a72b947d','Front wheel 6','L-W6','Scratched, “used”');
INSERT INTO "items" VALUES(43,'fa10908cc611fa34','Front wheel 7','L-W7','Scratched, “used”');
INSERT INTO "items" VALUES(44,'ef0b0d783a6a610c','Front wheel 8','L-W8','Scratched, “used”');
INSERT INTO "items" VALUES(45,'ada8eefbbf744fc6','Front wheel 9','L-W9','Scratched, “used”');
INSERT INTO "items" VALUES(46,'3545460a1daf37a7','Front wheel 10','L-W10','Scratched, “used”');
INSERT INTO "items" VALUES(47,'62ee1e02fd61c565','Front wheel 11','L-W11','Scratched, “used”');
INSERT INTO "items" VALUES(48,'2d418665d6e02f76','Front wheel 12','L-W12','Scratched, “used”');
INSERT INTO "items" VALUES(49,'11ce26ea2674537f','Brass bell','','');
INSERT INTO "items" VALUES(50,'f59f2a73c57238d4','Rear wheel','','');
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
INSERT INTO "ledger" VALUES(4,'2026-03-02T08:09:00.000000+00:00','section added','owner','{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}','00234763217460b024cc77812f398c013216296ccf069a7b09febfc8124a28f3');
INSERT INTO "ledger" VALUES(5,'2026-03-02T08:12:00.000000+00:00','slots added','owner','{"first":"D001","last":"D030","section":"D"}','21e1c2cad225ad14bfd7527ba3599b0b3578c47816a33ad0314eda2ce357393b');
INSERT INTO "ledger" VALUES(6,'2026-03-02T08:15:00.000000+00:00','section added','owner','{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}','e69e2576992b8e07d347a6288d07ab4a20533861d9a3f91fe7245fe7f596a7b1');
INSERT INTO "ledger" VALUES(7,'2026-03-02T08:18:00.000000+00:00','slots added','owner','{"first":"S001","last":"S015","section":"S"}','443123de07981bbf566ffa0e841bf42c8c425c265a96311d9ce2401fe0ab0f83');
INSERT INTO "ledger" VALUES(8,'2026-03-02T08:21:00.000000+00:00','section added','owner','{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}','5fbaac33c312d4c7b650b22dabeed618193b7d4e68576cc647551207ddf2fa8a');
INSERT INTO "ledger" VALUES(9,'2026-03-02T08:24:00.000000+00:00','slots added','owner','{"first":"L001","last":"L015","section":"L"}','d7b2a965610be2a57eae2fc9d71262944a95cc43a357ecefbe797664088b134e');
INSERT INTO "ledger" VALUES(10,'2026-03-02T08:27:00.000000+00:00','section added','owner','{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}','adedefbe0c0b3f0c9f88635d63d6d91d17f3059f16dc0925fdb1b66ebc9bfdca');
INSERT INTO "ledger" VALUES(11,'2026-03-02T08:30:00.000000+00:00','slots added','owner','{"first":"W001","last":"W015","section":"W"}','0ea85a6306028ef353a22b05e27d44b8cef93c7f95281e89dc1ffa0472bc90ce');
INSERT INTO "ledger" VALUES(12,'2026-03-02T08:33:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"606c398e2cd704bc","title":"Rear derailleur 1","turn":1}','5a757f997380c0b543938f33815dedf663b9fe38d3be7d6bbd6ddbb10b5d4070');
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:36:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"f6e1a5956b96aa1f","title":"Rear derailleur 2","turn":1}','938a9090e0187ccb36a477593768aac8b387e6103253587bf50cb9a79b85fba0');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:39:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"db6ca1cb2790e74a","title":"Rear derailleur 3","turn":1}','fd36f5819e8daef5d4d5b246a359c5e375a0fb7aba91a1802d6a80028c21776d');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:42:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"ab1091baa5ec8def","title":"Rear derailleur 4","turn":1}','8aa735da9464f90ed420e4ad33656640fd9ab465e6cc4265aef84582317fe45c');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:45:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"4d8c00cc8610e3d7","title":"Rear derailleur 5","turn":1}','fc65195efb64435a5b40744d0eaeb101dbee396fd51e88cd9290b2570e544a8e');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:48:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"06b486d51b603664","title":"Rear derailleur 6","turn":1}','b8312f24ef0e0a7f5018321b7836e04b515287bec6531e3d8f335aae61d1535e');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:51:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"d56a705c0d3cc80b","title":"Rear derailleur 7","turn":1}','7adcc42390b5815d26d48ca8a438f443a6c80aa1820e793031580fd4a8568bd1');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:54:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"8852b18d0ef2168a","title":"Rear derailleur 8","turn":1}','15d0e8965ede934ab01f859be0fdb627f7cb28cacdbbba2dab3d1b104cdc8801');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:57:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"b9b194da93a9784c","title":"Rear derailleur 9","turn":1}','78b869050d05b3ec6573a739d3baf908bdae1371aacd9d67085054e7ac0fe61e');
INSERT INTO "ledger" VALUES(21,'2026-03-02T09:00:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"a0dc6641babca026","title":"Rear derailleur 10","turn":1}','fb2450498c80aee498e6c299a4af93c1094d8e9e84637ec8856dd0181c0a5777');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:03:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"9cb966a1cddc1810","title":"Rear derailleur 11","turn":1}','5bc9012571e3abbbfd2425c386c2f30dc5b7feed8b85e1a64876501958af9d48');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:06:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"e8b2843830b20ee0","title":"Rear derailleur 12","turn":1}','07c09e711028ca323d69d3e25c51dffd51362bf59f4bfa52a36a27cbe293b0d6');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:09:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"730646f025d358dc","title":"Leather saddle 1","turn":1}','fcc19219e978f68bfd3126c7a3bfa9f4bad6f419de26f61dcda7f6579788b5bf');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:12:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"28e924295ef22e23","title":"Leather saddle 2","turn":1}','ddb582a2dc8fecf80ca0cec229fe21d5db88aab6e5ce5df1b3fbde6c431e00ab');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:15:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"297922b5e094e913","title":"Leather saddle 3","turn":1}','9d307fc722b646ec52fb44ee1838a0c4a6f821b98a0b096eb81e50c715ab17f3');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:18:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"45ec7d28e8ffcc0a","title":"Leather saddle 4","turn":1}','e5ba78a6ae48dd1b9fd18ed3f8dd38ee4707f16349ad395c1df6db54a95e7b98');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:21:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"d6a20eaa3fe8587d","title":"Leather saddle 5","turn":1}','0a51e30a5ed94201ef7b3e2e035a912b6e107fcbf620e3a7345fe4f2ee21381f');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:24:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"faf60669d4290e61","title":"Leather saddle 6","turn":1}','bd5e09d64be64878b110c140ba06c631c1e02fc8244a5a5cefac2b0e58403676');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:27:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"19f178fb5575a7cd","title":"Leather saddle 7","turn":1}','dae7fbb4b7f3afae6163b9d1f9f19dd3cf63751bdfe7bcf9d13ded552bfb0061');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:30:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"d6b5d3be112a5f3a","title":"Leather saddle 8","turn":1}','8be7233a0e519e63fd8344a16ebd854ee1606c4b216f69a0753bc536da8eae63');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:33:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"18361dba07f638fc","title":"Leather saddle 9","turn":1}','8dc1a6b6053ebbedec66606af60b08b6d4a7634b264993ef0f555631f7625099');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:36:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"3f51530b0e6ce8e1","title":"Leather saddle 10","turn":1}','5b8b11ee508df554cfcc9a15cd282b9888def6fb8afd1b33087373ddf54e0c73');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:39:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"1c31f38592d5bcde","title":"Leather saddle 11","turn":1}','38b8d10de45bf9dd3fbfd49ee4e40713b90813bfb14ce631e48c080f37772328');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:42:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"91e996fc04150d80","title":"Leather saddle 12","turn":1}','d372b6d93a63c8377365dc2faa7f6e50b549c2a70bff318011bf2aa230fe5daf');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:45:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"c0ce7cd08cd5fab7","title":"Dynamo lamp 1","turn":1}','aa6a4bacde48e2fb70506122f02ba2b6b478fd280620a35997a4f930e3a74076');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:48:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"6b2aad4a616ee4ef","title":"Dynamo lamp 2","turn":1}','c9a19ff4c38d5275cd797012943a92ea4e1a64d5ff78359ee1d3f4dd9c80d0df');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:51:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"0f4fe44c3683ab92","title":"Dynamo lamp 3","turn":1}','f84a156ceaee3d7a2c275c17f3bdcd528e36462c94cf04feade71f98bb481453');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:54:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"6f20cfaf4147d037","title":"Dynamo lamp 4","turn":1}','bf275621691978d9bbfd6257c7a850c9b4edcc4d66ad8bcec49852134468b25e');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:57:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"9e4eb475f7bd4041","title":"Dynamo lamp 5","turn":1}','3841bffbcfae8549b9965e4fdde40e38048b666ab1874216a6ea36ee528e3238');
INSERT INTO "ledger" VALUES(41,'2026-03-02T10:00:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"ecde015ba7766356","title":"Dynamo lamp 6","turn":1}','13286fa2d7bc1b2232f817ea2417406d091fa8970f6d5556ee103bba3cad0116');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:03:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"09649db32714b876","title":"Dynamo lamp 7","turn":1}','211beda4beb0a7c0cd2253d345ec7d60476ef7ba1d169d8d580432e9fa17843c');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:06:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"fa87e02bf24f3361","title":"Dynamo lamp 8","turn":1}','c7f1df87178cc011a64c5a2c2ff0912c2cd64c15f5992072d3bb57f570a92def');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:09:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"b90d51d6715415eb","title":"Dynamo lamp 9","turn":1}','38e046d9f0cc7237e288be7c18418b8d78329cdc8f7d71dd29e03b3d1128a709');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:12:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"ec4c3a185a4910ef","title":"Dynamo lamp 10","turn":1}','4ccffad46db726a105a352ab9b790029da780a82fd54e4426511a8e07ce6d460');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:15:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"d92c5b2b528e9fe0","title":"Dynamo lamp 11","turn":1}','6ea9bae5da1b7381c742730d015620baaf3ce9d09ff4db573080e9a907f87f68');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:18:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"3490960bd5374297","title":"Dynamo lamp 12","turn":1}','02b6bb0e24aa925e833e29d0c80e303ee737e70f10d829ba9294c69d60e0c0c4');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:21:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"7a5d18ea4a8aef4b","title":"Front wheel 1","turn":1}','2a4531e7abb58661bb6562d01cedef06a458cf0e1c0e923a839a8249b254e336');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:24:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"8264411e6085bd56","title":"Front wheel 2","turn":1}','0586d8bb344b3a63bdffab33139400b5e28c9c303e4e6bae886faf434935da67');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:27:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"5a06fdb7f5b74d31","title":"Front wheel 3","turn":1}','20c2dea9d821710f8f397f12d9a6e6175166b723b18896031724ef5805e9628b');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:30:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"f137497029e873e2","title":"Front wheel 4","turn":1}','2fe0a06586459d4f1ba2e93e587b7eff4476a71384780544e1f832faf28a39b6');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:33:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"13d22973e4a176e7","title":"Front wheel 5","turn":1}','87f5f3c905202bd93ff9c08cd0d766724f1ebef5c52f152a6e6817f55d6a6bbf');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:36:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"17a8db95341d7074","title":"Front wheel 6","turn":1}','6e220eedd8b7750ee70301098cd8d247a929b9d4a0963a92f67e22d1e0e1b3d4');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:39:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"42ba5afe684e743e","title":"Front wheel 7","turn":1}','09d3f560593441308e3403e81ddf05afe8087fc4008b50a8f31cd3900bba90cb');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:42:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"303d2783b01af454","title":"Front wheel 8","turn":1}','eaeb64ccdbafca7ae3973207b3f3dbdb0557727cfa5679ff347d1ec40ee24ca0');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:45:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"18ac210eab3e77b2","title":"Front wheel 9","turn":1}','88527c16f0fcaa42d9d66ffeb785a079e766ed8b430dd37c78f5ccb2c6b51702');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:48:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"45938b1464be0ccd","title":"Front wheel 10","turn":1}','da34fbcbf7c125bb7d85ba7581f1d4ba418e8ede326b46e99677981d72c70df5');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:51:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"b7fa391619450161","title":"Front wheel 11","turn":1}','4514f16e5b23607b562713e35809a2e212ad9d90a66645c30b86c90997ee5af5');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:54:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"6cbc03d8c0f489ae","title":"Front wheel 12","turn":1}','f8437c3b5937dd8fc0d9d023e7857d1195653770470406a0c419e6b962d87b37');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:57:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"6bb24d1654ba7cd7","title":"Brass bell","turn":1}','c702ae2ba31c1d9fc9e61fde69ad00088e83e7ef1f08b92bb86666c50bcd28c3');
INSERT INTO "ledger" VALUES(61,'2026-03-02T11:00:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"f6e1a5956b96aa1f"}','dd3b6694f0c4d3051ea850442ac3f1d63523f55b01ffdbf416247ae28dacc535');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:03:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"3f51530b0e6ce8e1"}','bcc88730bd0a13b19251039f09d241c103c6e3da45cfe120d418153f9d85f2bf');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:06:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"f137497029e873e2"}','9ac2ff851ddf6a5cbcbb9d992be3f5c45d9aed4456b40042872c7ddfaafd8f16');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:09:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"530de33458ae54a9","stay":"18361dba07f638fc","to":"S013"}','33982aea16948b23b4353ba4e35143732cd65e94035a533365c184c154caf34f');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:12:00.000000+00:00','settings changed','owner','{"auto_close":true,"check":"none","name":"Gears & Saddles","scan_at_bin":true,"zone":"UTC"}','b2c3b8fc4876b7e70d21520651ec53fcaa2b2e3fff56ac93638081b955c37fc4');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:13:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','e029945bf3337391a4c39515976cdadfca9caee8680a1fd220989101690c2f0c');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:14:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','3f6ea3e509674b77f7245b54917b075993dc42bb77fcccbc42281523f8f7a22a');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:15:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','24a84cfab87586fa8902ff52bb9e9636f55c3c16c35f962018a898dc23d4ad9a');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2f44f760196930bb","reference":"W001-01E","stay":"7a5d18ea4a8aef4b"},{"hold":null,"line":"43703a1e57e5715f","reference":"W002-016","stay":"8264411e6085bd56"}],"number":"B-01","order":"c2ec723bb500a647"}','16656a488145b6561de6a2c6546b581f795801263489249512f1cd323d6b6c1f');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"6a5e226de614390b","reference":"S002-013","stay":"28e924295ef22e23"},{"hold":null,"line":"9fb8b1c3b63066f5","reference":"S003-01W","stay":"297922b5e094e913"}],"number":"B-03","order":"2dd9b1782142cd5a"}','1d696c9e2a65a9baa402fb1fa3f8168cc19a42d01c3ce576c139c898e117765e');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8158dadc7cc7e0e2","reference":"S004-01O","stay":"45ec7d28e8ffcc0a"},{"hold":null,"line":"1ac1610a3247cde5","reference":"S005-01G","stay":"d6a20eaa3fe8587d"}],"number":"B-04","order":"6a22f4fc1dbe2cc3"}','27f20dd955f363016a906ab984e9bd91171827cdae39ed104d7fbaf71b3671eb');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:27:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"a042787fb16cd80a","reference":"L002-017","stay":"6b2aad4a616ee4ef"}],"number":"B-05","order":"3299df61792944c9"}','8fa90b7416f2f09ec85204bef14400f8314a55fcf183c905ee91b8956ad9e2f6');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"5d4df8a94c2f243e","reference":"L003-010","stay":"0f4fe44c3683ab92"}],"number":"B-06","order":"ed7ff97e3aa4d4b7"}','20cf2d3069d29de5ed4b14dcbb10905bfcd44fb49985a63e079ad9190cf11794');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d99911b01f26a154","reference":"L004-01S","stay":"6f20cfaf4147d037"}],"number":"B-07","order":"ca964af12dfd1522"}','495a14716b0772d57e7efa4bbdd6fddf0ba220ab17d5c3f233bd9db57bbd067d');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"35277f2fc45eaedb","reference":"L005-01K","stay":"9e4eb475f7bd4041"}],"number":"B-08","order":"982f6d8ea18efc7a"}','995b1e177a3407f5d07b1603e09800fcb16b7932cb09c3c63116c4aaa19b5377');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3683c95797a47da2","reference":"L006-01C","stay":"ecde015ba7766356"},{"hold":null,"line":"fce67121324da743","reference":"L011-010","stay":"d92c5b2b528e9fe0"}],"number":"B-09","order":"d59da0cc9ebbea63"}','b9788cbbf432a525e682ceeeb66de861eff85578df3377c0423ca8ec478632c3');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"cc4342dba0de6342","reference":"S006-018","stay":"faf60669d4290e61"}],"number":"B-13","order":"562caf2f4e2324c2"}','a30e1246489c36f27d5fcc8e62fd3a7d7568949317f2d0be968e39f7b01cf847');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d76afed6c5cfbd69","reference":"L007-014","stay":"09649db32714b876"}],"number":"B-17","order":"163855a9f3df5260"}','abdcc612b25162bfaf7200a4020120c1a94eced64ed7d6cb3a17b881318b3831');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2b50fc90a196426d","reference":"D009-01B","stay":"b9b194da93a9784c"}],"number":"B-18","order":"5fb4691632b26a21"}','1642ca10001eb8312279faa5709d046ce2bfc71ba7d2a3ab7b6994c678ce56a6');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"7a154471666e0c84","reference":"W006-013","stay":"17a8db95341d7074"}],"number":"B-21","order":"f1018d2061b87fa6"}','22166b5c2f4a723f379ada5410a04cf2af27a16fd529641175ec4f582657e6de');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"759ee7e51fd42357","reference":"S007-01Z","stay":"19f178fb5575a7cd"}],"number":"B-22","order":"8a493cc0d3ea1ecb"}','c0f5f956fa77d105c7a396604341b7b32d1bf78cb37ecf9ecd5dfbd1daa88ca7');
INSERT INTO "ledger" VALUES(82,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8d19ad57282b3331","reference":"W007-01W","stay":"42ba5afe684e743e"},{"hold":null,"line":"ae933538cb7dc8f5","reference":"W008-01O","stay":"303d2783b01af454"}],"number":"B-23","order":"958b516251653417"}','6bd6c7c5fa279ff797ebddf2510bc2dea5dafd32ea0f6731a107d6ed1c1b54d6');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"f0b7d5adc5823649","reference":"D008-01J","stay":"8852b18d0ef2168a"}],"number":"B-26","order":"82149d8f9689f330"}','4439ed0c0df3cb9fd9866636a83c936e3536decde43c435d39a0ef7c9790d198');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"52bd1b935c5c15ad","reference":"D003-01U","stay":"db6ca1cb2790e74a"}],"number":"B-30","order":"9f6898c35ebb0998"}','26a645812b31904d5b1561c94b289a78e2524fa9590f1aebb4dd834f243f72de');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"de7e874cbf312a9c","reference":"D005-01E","stay":"4d8c00cc8610e3d7"},{"hold":"unknown_code","line":"b12e727a262b8051","reference":"Z999","stay":null}],"number":"B-31","order":"35861dd0f10bdb98"}','0bd9e78c89711109405d8a4315470272fb8d094c724bfbf8ef3c1214d9d5d7f8');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"acbf1cfb1df9e9ae","reference":"D006-016","stay":"06b486d51b603664"},{"hold":null,"line":"af893b82066e950c","reference":"D007-01R","stay":"d56a705c0d3cc80b"}],"number":"B-32","order":"f98fefe5ce5cab05"}','0e57a29587e528173e61ff99d87f638936522c24804487d0bd52e25ac88ea581');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:12:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"af893b82066e950c","reference":"D007-01R","stay":"d56a705c0d3cc80b"}],"number":"B-32","order":"f98fefe5ce5cab05"}','78d191b308e9ca34cc9f67cde9c89b8842139590106f3d8dec6c8f025a42e384');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"c76c548116981bf4","reference":"lamp","stay":null}],"number":"B-33","order":"1ae532b5985184da"}','eb25faa8e228b9cb541f64e1e174a0d87288da72bc6fd45abab9b27278944f20');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"214723e26de3965f","reference":"D006-016","stay":null}],"number":"B-34","order":"fcfaedb932ea073a"}','3bcb382f2a9a879f91e8b5d6439f92bdab0d254a669aec41146d89d2dff05dcf');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"f687104091eb093a","reference":"W004-01J","stay":null}],"number":"B-35","order":"d74e51519b1cd323"}','9c0c722b33d0ef8dd5db5bd4909ed14c1a214330c8f434f029c0e9423056f2ac');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"c7d337f94d00aeb7","reference":"L015","stay":null}],"number":"B-36","order":"8ea142e1c5587c04"}','156b0750a733d9f7ed1c7b422e5610cc0a0751e722fb267486bd60b21e6f83fe');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:27:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"26f9afad239e6961","reference":"W005-01B","stay":"13d22973e4a176e7"}],"number":"B-37","order":"66e4bb0986715d83"}','523b2c99dbe7082e6cc98fd6c7ef6b9a7a6e7e32719e21f2db8edad166014c47');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:30:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"26f9afad239e6961","stay":"13d22973e4a176e7"}','745b952bc087579197eef6dc975e73af5db963f9ec93c16ede326194bdfb4e2d');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:33:00.000000+00:00','held','owner','{"line":"d76afed6c5cfbd69","why":"Another lamp, by the photo"}','ad460b67358275708508596b9cdc9a13c5b3c31480c3aacc9befd3aea9f9522c');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:36:00.000000+00:00','cancelled','owner','{"lines":["35277f2fc45eaedb"],"number":"B-08","order":"982f6d8ea18efc7a"}','5cf322c5618265e8d9ebd3420e1616d8f97f27df2bbec376abfd684087560323');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:39:00.000000+00:00','cancelled','owner','{"lines":["7a154471666e0c84"],"number":"B-21","order":"f1018d2061b87fa6"}','eb7256ed86f904407fb384d982290d4c3277995dbdc74beb6a7357891f444848');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:42:00.000000+00:00','revived','owner','{"line":"7a154471666e0c84","stay":"17a8db95341d7074"}','d511fbc9cbf6845f328c35baa6db395ae44f31d461ef358aabc32ab84ff1b5fd');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:45:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"ff0ef56a822371f9","stay":"8852b18d0ef2168a","to":"D020"}','ef06f8629a6025f91e12f911556cf6abdc31231c43eee3d61756d7c0cfb4640f');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:50:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"8c7484846c780f80","reference":"S012-01O","stay":"91e996fc04150d80"}],"number":"F-1","order":"bc73c58cf2e5ddf3"}','fe15a86c95435cde55de3a1bc518af09c4162d2925737570a9860bd5b7650a8b');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:50:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"27ad3cc50c99baa1","reference":"","stay":null}],"number":"F-2","order":"8323aa299ee9e2b8"}','b28982cd3bdd62695572d3fbed51f4a56d4902875917cc9816f3fc9a6701c2b1');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:53:00.000000+00:00','round opened','owner','{"lines":["2f44f760196930bb","43703a1e57e5715f","6a5e226de614390b","9fb8b1c3b63066f5","8158dadc7cc7e0e2","1ac1610a3247cde5","3683c95797a47da2","fce67121324da743","cc4342dba0de6342","759ee7e51fd42357","8d19ad57282b3331","ae933538cb7dc8f5"],"round":"a428d07fc411655c"}','61ee4874bced281872635354a104661dc234c4578222d18effb5afaa8304ef43');
INSERT INTO "ledger" VALUES(102,'2026-03-02T12:56:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','e49f5513f8f2745011c63730ef802ce366d9c758f1bb782ea658539815645606');
INSERT INTO "ledger" VALUES(103,'2026-03-02T12:59:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"2f44f760196930bb","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','cfdfe753fd4c7565da3069dac53ac5ca48eda5f017cea9ce4c85800a1a0a8b48');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"43703a1e57e5715f","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','4e7120b9917615323aece00cf717d1ccdf6ee4697389172dda1ca1a6bdca1a4c');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"6a5e226de614390b","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','5739e1d3a1f32e1273e1276c62bd8ab2760d5ccc4e24e4ee6d1c1e37966761fb');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"9fb8b1c3b63066f5","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','f0d3e106586188fa619de18620d6dc138f2d496efcf66af09b4f44674c72560d');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"8158dadc7cc7e0e2","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','2360e39aa8396286902b1142060a988b176abf310607ff62745ba78cb907a84c');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"1ac1610a3247cde5","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','2cd90773e0c4ec21f5716c02418f222915d7355b3c1acb1c6d34c9278cacc4dd');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"3683c95797a47da2","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','dac0de124ebe38b9529891a14e27edef566a7d3ddf1a9e453fe91a394425a203');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"fce67121324da743","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','30365c3981d68e63d00d19bed2233770cd5117f07ad1565cb230d34f1ffb689b');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"cc4342dba0de6342","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','f3aebfa2bcebc0504793fb3b074b757b58097c0fa58e2b68c9a979c8915e01d1');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"759ee7e51fd42357","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','ae7c65f30d661e93c15a7fb924883cdb8185dfafe729b22674b44d18e5216502');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"8d19ad57282b3331","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','20d576941a878d6e98530d4fcdd5d82f82f6237d186685edf2d72286802d86ce');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"ae933538cb7dc8f5","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"a428d07fc411655c","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','3264c0dce973f1480c81fe3b27eff31969b2356c50a543f31131642dee592347');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:35:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"ae933538cb7dc8f5","line_state":"waiting"}','ba538adc77830d81ff524d2f851480a354f2a3f7e6eb0e5dfbef007db71a305a');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:38:00.000000+00:00','round closed','owner','{"round":"a428d07fc411655c"}','1ed89b11decbb4226456453b1c066da4aa50b125f7399c349239b7b212b3b30d');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:41:00.000000+00:00','parcel opened','owner','{"orders":["c2ec723bb500a647"],"parcel":"df1d02e8d8f50e25","table":"main"}','00734461dda8127bb11db2c870ef37c462d4af82b4a9a2af1f37f5f3b81c80e4');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"6a5e226de614390b","line_state":"picked","order_number":"B-03","parcel":"df1d02e8d8f50e25","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','063e79661a8a0007e4e4c1bfd9f4fb0d5598a4fdbb7aafe608429a389c470294');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"2f44f760196930bb","line_state":"packed","order_number":"B-01","parcel":"df1d02e8d8f50e25","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','0259de73d7807794d9afb954fe46e96db88933af3a13f1164e0dfcd5049fcc9f');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:50:00.000000+00:00','parcel closed','owner','{"orders":["c2ec723bb500a647"],"parcel":"df1d02e8d8f50e25","released":["W001","W002"]}','cc97be1faea20c0db523bf137fc247669983c9e9cc670512abdaf6f8e0eba042');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:50:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"43703a1e57e5715f","line_state":"released","order_number":"B-01","parcel":"df1d02e8d8f50e25","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','20702b3ee74fa309ec882927bb4c26b6f3cfd22c886bdabc500405eb9e559d9a');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:53:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"2f44f760196930bb","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','4a6cb23d324a0c3a226ee31d7083c6c693981c79cc0335efdd3b1ca5d1c4223f');
INSERT INTO "ledger" VALUES(123,'2026-03-02T13:56:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"733a77fc5028c674","title":"Rear wheel","turn":2}','72cb332b753d921411610154e8722fe52cc4e8c5eea4d230d4f264f6c178c565');
INSERT INTO "ledger" VALUES(124,'2026-03-02T13:59:00.000000+00:00','parcel opened','owner','{"orders":["958b516251653417"],"parcel":"f56525a53803bdb1","table":"main"}','c5f3d75fb604e3636f5428446c1039ce11e5b9480130c3517477035cf5ea56ad');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"8d19ad57282b3331","line_state":"packed","order_number":"B-23","parcel":"f56525a53803bdb1","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','20ab9f8969e377f4c670cc9f86c5e8402c3793a8f3b941fa6d04aa00770d4b17');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["958b516251653417"],"parcel":"f56525a53803bdb1","released":["W007"]}','ef0e32c09d3f39f876f3ac3bfc0a9ee60038dc93dd50b5c4c5fc407ce78e975f');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:08:00.000000+00:00','parcel reopened','owner','{"orders":["958b516251653417"],"parcel":"f56525a53803bdb1"}','5e36ba07e221d68cf57bc0be9f4a540cdf750319cf864834f1360eb1c1b6f43e');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:11:00.000000+00:00','parcel closed','owner','{"orders":["958b516251653417"],"parcel":"f56525a53803bdb1","released":["W007"]}','287ae16293d5d3580ce89850089d1a892c65ec11395b8d04320a11a58b842f04');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:14:00.000000+00:00','parcel opened','owner','{"orders":["8a493cc0d3ea1ecb"],"parcel":"6460ce77a5cd3afb","table":"main"}','adf7c4f92fcde9226327c342c8118a35df6862203dd3a60de3125dcd303b733e');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:17:00.000000+00:00','parcel dropped','owner','{"parcel":"6460ce77a5cd3afb"}','5e63fb7eab57b3406643fb742c40e10b5792a8baa58e5dd7ea205f9cd1bf4987');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:20:00.000000+00:00','parcel opened','owner','{"orders":["6a22f4fc1dbe2cc3"],"parcel":"47a943dc512d2753","table":"main"}','eedaafb1b083828dcf17afa018b35d7c1d2a14ae776d9382643428526b56dbf7');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"8158dadc7cc7e0e2","line_state":"packed","order_number":"B-04","parcel":"47a943dc512d2753","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','922772dea2b5d8787ed9f19148ded0515957ec0aa77c2e0b85de456a74d39785');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:26:00.000000+00:00','parcel set aside','owner','{"parcel":"47a943dc512d2753"}','dd107baacf8069ff727312171b853795a117c2136c786f1afa309d9fd0966da4');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:29:00.000000+00:00','parcel opened','owner','{"orders":["d59da0cc9ebbea63"],"parcel":"f9e9164d5229b3bf","table":"second"}','df049f02499c7268a296976091e927c50b743bb5ca649b3b3f80dfb543bca8f2');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"3683c95797a47da2","line_state":"packed","order_number":"B-09","parcel":"f9e9164d5229b3bf","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','43678e709eebc052a38492f74f24164ac510f86c63063c0ae82d6a57a034e4a0');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:35:00.000000+00:00','cancelled','owner','{"lines":["3683c95797a47da2","fce67121324da743"],"number":"B-09","order":"d59da0cc9ebbea63"}','6d293293a13c1e79d558cce72d6a1c86a297d9ca40d445dff7a44842e78a7d92');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:38:00.000000+00:00','parcel opened','owner','{"orders":["2dd9b1782142cd5a"],"parcel":"aecdd8c8424d4c8b","table":"main"}','816c947c3deda36d8a97eabe6ac1d8bbb42889783c33a778ccba2ac7026400d3');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"6a5e226de614390b","line_state":"packed","order_number":"B-03","parcel":"aecdd8c8424d4c8b","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','de39b5976a23a93f7a9767dd4b27d9d2d299823de32d85a06e6018ee296bd20b');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:44:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"cc4342dba0de6342","reference":"S006-018","stay":"faf60669d4290e61"}],"number":"B-13","order":"562caf2f4e2324c2"}','10d68d23908c93b58ca50c5401f0f6c412b59af70b5f9873d4c5f19aaf67e017');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:47:00.000000+00:00','round opened','owner','{"lines":["a042787fb16cd80a","5d4df8a94c2f243e","d99911b01f26a154","f0b7d5adc5823649"],"round":"774d4701aa4ce440"}','fd41c853cd4ed95ef18801c72522888817f94e88919e38b38d910ef89db9ce98');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:50:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"a042787fb16cd80a","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"774d4701aa4ce440","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','e3a3df18a61841d012a1f85b01b4e74f3dd144f2dde537a49d2f9684b3b020b1');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:53:00.000000+00:00','short','owner','{"line":"d99911b01f26a154","note":"Not in its bin"}','053d4a8d29e11462ad5b381cc19b23115a18a1bcdfb5e64ea984ae8d54ab5fe3');
INSERT INTO "ledger" VALUES(143,'2026-03-02T14:56:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"774d4701aa4ce440","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','b92525192d0d5d8e306f973fc81d492db532c4ab7ed39bfec31e56593c9ea08d');
INSERT INTO "ledger" VALUES(144,'2026-03-02T14:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"774d4701aa4ce440","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','31a05009e6d1d85b2f2c089a1d4a30b77ced07011a4ab289710a3b6827298000');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:02:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"774d4701aa4ce440","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','f528398b75447d3b1844c8ac0a94ffbb99c517e43a1988de265b6318eea40857');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:05:00.000000+00:00','card lost','owner','{"code":"L001"}','e6fc9024fc5a30e1a0030286efef2db0b0a5ecb2a50a4f01ef3cc2f159ad3369');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:08:00.000000+00:00','card lost','owner','{"code":"W015"}','7a7aa2a9faf9915453b159f18b53e3fa7b3f6da3cd2f6020bab1a7631bd05341');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:11:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"a2583d837fc4aa02","reference":"D001-019","stay":"606c398e2cd704bc"},{"hold":"already_sold","line":"37c895cb7e103996","reference":"W002-016","stay":null}],"number":"B-38","order":"c1ca534ad9a66dba"}','94c50cf47d439cadc24cd42fb32fc7b32816ae0b8da61e01d7df3043fed3c724');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:14:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"9d4055369acafb7e","reference":"W001","stay":null}],"number":"B-39","order":"01e114e7afd6b2cf"}','d27bf316cbde4043a0d5e283d266b2e7728ccb6ddf65e91f2450fd240b631804');
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
INSERT INTO "lines" VALUES(1,'2f44f760196930bb','c2ec723bb500a647',1,'W001-01E','Front wheel 1','','7a5d18ea4a8aef4b','released',NULL,'','df1d02e8d8f50e25','a428d07fc411655c',1,NULL,1);
INSERT INTO "lines" VALUES(2,'43703a1e57e5715f','c2ec723bb500a647',2,'W002-016','Front wheel 2','','8264411e6085bd56','released',NULL,'','df1d02e8d8f50e25','a428d07fc411655c',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'6a5e226de614390b','2dd9b1782142cd5a',1,'S002-013','Leather saddle 2','','28e924295ef22e23','packed',NULL,'','aecdd8c8424d4c8b','a428d07fc411655c',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'9fb8b1c3b63066f5','2dd9b1782142cd5a',2,'S003-01W','Leather saddle 3','','297922b5e094e913','picked',NULL,'',NULL,'a428d07fc411655c',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'8158dadc7cc7e0e2','6a22f4fc1dbe2cc3',1,'S004-01O','Leather saddle 4','','45ec7d28e8ffcc0a','packed',NULL,'','47a943dc512d2753','a428d07fc411655c',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'1ac1610a3247cde5','6a22f4fc1dbe2cc3',2,'S005-01G','Leather saddle 5','','d6a20eaa3fe8587d','picked',NULL,'',NULL,'a428d07fc411655c',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'a042787fb16cd80a','3299df61792944c9',1,'L002-017','Dynamo lamp 2','','6b2aad4a616ee4ef','picked',NULL,'',NULL,'774d4701aa4ce440',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'5d4df8a94c2f243e','ed7ff97e3aa4d4b7',1,'L003-010','Dynamo lamp 3','','0f4fe44c3683ab92','waiting',NULL,'',NULL,'774d4701aa4ce440',2,NULL,1);
INSERT INTO "lines" VALUES(9,'d99911b01f26a154','ca964af12dfd1522',1,'L004-01S','Dynamo lamp 4','','6f20cfaf4147d037','short',NULL,'',NULL,'774d4701aa4ce440',3,NULL,1);
INSERT INTO "lines" VALUES(10,'35277f2fc45eaedb','982f6d8ea18efc7a',1,'L005-01K','Dynamo lamp 5','','9e4eb475f7bd4041','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'3683c95797a47da2','d59da0cc9ebbea63',1,'L006-01C','Dynamo lamp 6','','ecde015ba7766356','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','f9e9164d5229b3bf','a428d07fc411655c',4,NULL,1);
INSERT INTO "lines" VALUES(12,'fce67121324da743','d59da0cc9ebbea63',2,'L011-010','Dynamo lamp 11','','d92c5b2b528e9fe0','cancelled',NULL,'',NULL,'a428d07fc411655c',4,NULL,1);
INSERT INTO "lines" VALUES(13,'cc4342dba0de6342','562caf2f4e2324c2',1,'S006-018','Saddle with springs','','faf60669d4290e61','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'a428d07fc411655c',5,NULL,1);
INSERT INTO "lines" VALUES(14,'d76afed6c5cfbd69','163855a9f3df5260',1,'L007-014','Dynamo lamp 7','','09649db32714b876','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'2b50fc90a196426d','5fb4691632b26a21',1,'D009-01B','Rear derailleur 9','','b9b194da93a9784c','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'7a154471666e0c84','f1018d2061b87fa6',1,'W006-013','Front wheel 6','','17a8db95341d7074','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'759ee7e51fd42357','8a493cc0d3ea1ecb',1,'S007-01Z','Leather saddle 7','','19f178fb5575a7cd','picked',NULL,'',NULL,'a428d07fc411655c',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'8d19ad57282b3331','958b516251653417',1,'W007-01W','Front wheel 7','','42ba5afe684e743e','released',NULL,'','f56525a53803bdb1','a428d07fc411655c',7,NULL,1);
INSERT INTO "lines" VALUES(19,'ae933538cb7dc8f5','958b516251653417',2,'W008-01O','Front wheel 8','','303d2783b01af454','waiting',NULL,'',NULL,'a428d07fc411655c',7,NULL,1);
INSERT INTO "lines" VALUES(20,'f0b7d5adc5823649','82149d8f9689f330',1,'D008-01J','Rear derailleur 8','','ff0ef56a822371f9','waiting',NULL,'',NULL,'774d4701aa4ce440',4,NULL,1);
INSERT INTO "lines" VALUES(21,'52bd1b935c5c15ad','9f6898c35ebb0998',1,'D003-01U','Bell with a crown','','db6ca1cb2790e74a','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'de7e874cbf312a9c','35861dd0f10bdb98',1,'D005-01E','Rear derailleur 5','','4d8c00cc8610e3d7','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'b12e727a262b8051','35861dd0f10bdb98',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'acbf1cfb1df9e9ae','f98fefe5ce5cab05',1,'D006-016','Rear derailleur 6','','06b486d51b603664','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'af893b82066e950c','f98fefe5ce5cab05',2,'D007-01R','Rear derailleur 7','','d56a705c0d3cc80b','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'c76c548116981bf4','1ae532b5985184da',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'214723e26de3965f','fcfaedb932ea073a',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'f687104091eb093a','d74e51519b1cd323',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'c7d337f94d00aeb7','8ea142e1c5587c04',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'26f9afad239e6961','66e4bb0986715d83',1,'W005-01B','Bell with a crown','','13d22973e4a176e7','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'8c7484846c780f80','bc73c58cf2e5ddf3',1,'S012-01O','','','91e996fc04150d80','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'27ad3cc50c99baa1','8323aa299ee9e2b8',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'a2583d837fc4aa02','c1ca534ad9a66dba',1,'D001-019','Rear derailleur 1','','606c398e2cd704bc','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'37c895cb7e103996','c1ca534ad9a66dba',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'9d4055369acafb7e','01e114e7afd6b2cf',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "orders" VALUES(1,'c2ec723bb500a647','B-01','fair','2026-03-02T11:18:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'2dd9b1782142cd5a','B-03','fair','2026-03-02T11:21:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','aecdd8c8424d4c8b');
INSERT INTO "orders" VALUES(3,'6a22f4fc1dbe2cc3','B-04','fair','2026-03-02T11:24:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','47a943dc512d2753');
INSERT INTO "orders" VALUES(4,'3299df61792944c9','B-05','fair','2026-03-02T11:27:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'ed7ff97e3aa4d4b7','B-06','fair','2026-03-02T11:30:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'ca964af12dfd1522','B-07','fair','2026-03-02T11:33:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'982f6d8ea18efc7a','B-08','fair','2026-03-02T11:36:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'d59da0cc9ebbea63','B-09','fair','2026-03-02T11:39:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','f9e9164d5229b3bf');
INSERT INTO "orders" VALUES(9,'562caf2f4e2324c2','B-13','fair','2026-03-02T11:42:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'163855a9f3df5260','B-17','fair','2026-03-02T11:45:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'5fb4691632b26a21','B-18','fair','2026-03-02T11:48:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'f1018d2061b87fa6','B-21','fair','2026-03-02T11:51:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'8a493cc0d3ea1ecb','B-22','fair','2026-03-02T11:54:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'958b516251653417','B-23','fair','2026-03-02T11:57:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'82149d8f9689f330','B-26','fair','2026-03-02T12:00:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'9f6898c35ebb0998','B-30','fair','2026-03-02T12:03:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'35861dd0f10bdb98','B-31','fair','2026-03-02T12:06:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'f98fefe5ce5cab05','B-32','fair','2026-03-02T12:09:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'1ae532b5985184da','B-33','fair','2026-03-02T12:15:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'fcfaedb932ea073a','B-34','fair','2026-03-02T12:18:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'d74e51519b1cd323','B-35','fair','2026-03-02T12:21:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'8ea142e1c5587c04','B-36','fair','2026-03-02T12:24:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'66e4bb0986715d83','B-37','fair','2026-03-02T12:27:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'bc73c58cf2e5ddf3','F-1','','2026-03-02T12:50:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'8323aa299ee9e2b8','F-2','','2026-03-02T12:50:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'c1ca534ad9a66dba','B-38','fair','2026-03-02T15:11:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'01e114e7afd6b2cf','B-39','','2026-03-02T15:14:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'df1d02e8d8f50e25','main','c2ec723bb500a647','2026-03-02T13:41:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'f56525a53803bdb1','main','958b516251653417','2026-03-02T13:59:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'6460ce77a5cd3afb','main','8a493cc0d3ea1ecb','2026-03-02T14:14:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'47a943dc512d2753','main','6a22f4fc1dbe2cc3','2026-03-02T14:20:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'f9e9164d5229b3bf','second','d59da0cc9ebbea63','2026-03-02T14:29:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'aecdd8c8424d4c8b','main','2dd9b1782142cd5a','2026-03-02T14:38:00.000000+00:00','open');
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
INSERT INTO "racks" VALUES(3,'C',0,1.1);
INSERT INTO "racks" VALUES(4,'D',0,1.1);
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'a428d07fc411655c','2026-03-02T12:53:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'774d4701aa4ce440','2026-03-02T14:47:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','bbbad0998ad06888c919296144b07b406a6d19d6b88edde2f0d1bf865dbb9d01','bin','a428d07fc411655c','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','43570c28470c4555a35d1556f6341bb91eba9eb5ef0ffcb6a3fd824b0e9830c5','bin','a428d07fc411655c','W001',0,1,1,'2f44f760196930bb',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "c2ec723bb500a647", "order_number": "B-01", "line": "2f44f760196930bb", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','114d9c4e91bb3230868eda5960139f085f79a0b935e6c2b80bc889efd25f7044','bin','a428d07fc411655c','W002',0,1,1,'43703a1e57e5715f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "c2ec723bb500a647", "order_number": "B-01", "line": "43703a1e57e5715f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','98a39c822642d1b15401df028a0ca78aaa4ae1ce3668c94178d4fa8c6f67aeb3','bin','a428d07fc411655c','S002',0,1,1,'6a5e226de614390b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9b1782142cd5a", "order_number": "B-03", "line": "6a5e226de614390b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','dcd5af5a3f72be84420396930036c12a241fbbadc06a87a8c93c269a31422b34','bin','a428d07fc411655c','S003',0,1,1,'9fb8b1c3b63066f5',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "2dd9b1782142cd5a", "order_number": "B-03", "line": "9fb8b1c3b63066f5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','29f29a08963a29b618b4cba47751a86f1af4097f18629c498532a1b4a887f57d','bin','a428d07fc411655c','S004',0,1,1,'8158dadc7cc7e0e2',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "6a22f4fc1dbe2cc3", "order_number": "B-04", "line": "8158dadc7cc7e0e2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','016ff7413be35ee662a540684fee35a46b5cd8d98dd8ec6045efd06ca65c6d0d','bin','a428d07fc411655c','S005',0,1,1,'1ac1610a3247cde5',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "6a22f4fc1dbe2cc3", "order_number": "B-04", "line": "1ac1610a3247cde5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','28655035c53baf5682779a3b79aae27ae6e93cdf01ae3e0fbd077ac3f5d42ffe','bin','a428d07fc411655c','L006',0,1,1,'3683c95797a47da2',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d59da0cc9ebbea63", "order_number": "B-09", "line": "3683c95797a47da2", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','98a84e3955d4a9cb29b636c08081d32662c4df7f5d894d6dc0fdd0a42ea7cd2f','bin','a428d07fc411655c','L011',0,1,1,'fce67121324da743',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "d59da0cc9ebbea63", "order_number": "B-09", "line": "fce67121324da743", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','9a8fbd4dabb6f9da5228932a9977c33f3eab45e467b1fe171b0c90f9c47ec68b','bin','a428d07fc411655c','S006',0,1,1,'cc4342dba0de6342',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "562caf2f4e2324c2", "order_number": "B-13", "line": "cc4342dba0de6342", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','64b968481aa0a82ed2a046058b85ed2d08e879efbf76be862c9be41b3be95395','bin','a428d07fc411655c','S007',0,1,1,'759ee7e51fd42357',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "8a493cc0d3ea1ecb", "order_number": "B-22", "line": "759ee7e51fd42357", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','c83a10a7d8f94f49084e55e93fd22fbe16fdc5e130ba702ab4b6113f5187bacb','bin','a428d07fc411655c','W007',0,1,1,'8d19ad57282b3331',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "958b516251653417", "order_number": "B-23", "line": "8d19ad57282b3331", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','d1e78550ba07f191f3555516c62c2e8c7e513ae53fe8c73ced182351d4298ff6','bin','a428d07fc411655c','W008',0,1,1,'ae933538cb7dc8f5',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "958b516251653417", "order_number": "B-23", "line": "ae933538cb7dc8f5", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'6a5e226de614390b','df1d02e8d8f50e25','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9b1782142cd5a", "order_number": "B-03", "line": "6a5e226de614390b", "line_state": "picked", "order_state": "picking", "parcel": "df1d02e8d8f50e25", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'2f44f760196930bb','df1d02e8d8f50e25','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "c2ec723bb500a647", "order_number": "B-01", "line": "2f44f760196930bb", "line_state": "packed", "order_state": "picking", "parcel": "df1d02e8d8f50e25", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'43703a1e57e5715f','df1d02e8d8f50e25','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "c2ec723bb500a647", "order_number": "B-01", "line": "43703a1e57e5715f", "line_state": "released", "order_state": "released", "parcel": "df1d02e8d8f50e25", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'2f44f760196930bb',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "c2ec723bb500a647", "order_number": "B-01", "line": "2f44f760196930bb", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'8d19ad57282b3331','f56525a53803bdb1','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "958b516251653417", "order_number": "B-23", "line": "8d19ad57282b3331", "line_state": "packed", "order_state": "waiting", "parcel": "f56525a53803bdb1", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'8158dadc7cc7e0e2','47a943dc512d2753','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "6a22f4fc1dbe2cc3", "order_number": "B-04", "line": "8158dadc7cc7e0e2", "line_state": "packed", "order_state": "picking", "parcel": "47a943dc512d2753", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'3683c95797a47da2','f9e9164d5229b3bf','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d59da0cc9ebbea63", "order_number": "B-09", "line": "3683c95797a47da2", "line_state": "packed", "order_state": "picking", "parcel": "f9e9164d5229b3bf", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'6a5e226de614390b','aecdd8c8424d4c8b','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9b1782142cd5a", "order_number": "B-03", "line": "6a5e226de614390b", "line_state": "packed", "order_state": "picking", "parcel": "aecdd8c8424d4c8b", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','261f928fab99f2d5f9eb2a14e245b07468743b9246995e80c04977eb7eed5780','bin','774d4701aa4ce440','L002',0,1,1,'a042787fb16cd80a',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "3299df61792944c9", "order_number": "B-05", "line": "a042787fb16cd80a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','075cd42fe33bfe6ff259db1f3a2ef413e9596267b3391c4d62b46c935b49e176','bin','774d4701aa4ce440',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','eaac59378150e8cad197bcba08a3b07db1125ba43684d4ab834fc6428edefe66','bin','774d4701aa4ce440',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','405eb6fda57763666e7f44afb390f50e5dd5fc6a88c1434d204e0f4ba13caf88','bin','774d4701aa4ce440',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'606c398e2cd704bc','d60c8592317f3183','D001',1,'2026-03-02T08:33:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'f6e1a5956b96aa1f','e783cd3997f4ce30','D002',1,'2026-03-02T08:36:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'db6ca1cb2790e74a','edcb5e925a088ac8','D003',1,'2026-03-02T08:39:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'ab1091baa5ec8def','1d07bdd7095eae21','D004',1,'2026-03-02T08:42:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'4d8c00cc8610e3d7','87092bde22ea1234','D005',1,'2026-03-02T08:45:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'06b486d51b603664','0041f50fb183b545','D006',1,'2026-03-02T08:48:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'d56a705c0d3cc80b','f3013dc52f9dfc5c','D007',1,'2026-03-02T08:51:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'8852b18d0ef2168a','3bf91d3c0ef3c941','D008',1,'2026-03-02T08:54:00.000000+00:00','moved','2026-03-02T12:45:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'b9b194da93a9784c','687c746260f65465','D009',1,'2026-03-02T08:57:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'a0dc6641babca026','b47f49cab78b3c07','D010',1,'2026-03-02T09:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'9cb966a1cddc1810','cf384b72516fde28','D011',1,'2026-03-02T09:03:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'e8b2843830b20ee0','340f2177b414af8c','D012',1,'2026-03-02T09:06:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'730646f025d358dc','03fb548a40831c73','S001',1,'2026-03-02T09:09:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'28e924295ef22e23','9a475525e10b3505','S002',1,'2026-03-02T09:12:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'297922b5e094e913','dde68e96e6e341c3','S003',1,'2026-03-02T09:15:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'45ec7d28e8ffcc0a','66f976088ef28d18','S004',1,'2026-03-02T09:18:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'d6a20eaa3fe8587d','af4ed81e523701af','S005',1,'2026-03-02T09:21:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'faf60669d4290e61','dc4561fe645bfbea','S006',1,'2026-03-02T09:24:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'19f178fb5575a7cd','b7051d32451cdfd0','S007',1,'2026-03-02T09:27:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'d6b5d3be112a5f3a','d2226ef4c3d3be1b','S008',1,'2026-03-02T09:30:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'18361dba07f638fc','cde12cb517abe0e1','S009',1,'2026-03-02T09:33:00.000000+00:00','moved','2026-03-02T11:09:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'3f51530b0e6ce8e1','3c126bf4f148962a','S010',1,'2026-03-02T09:36:00.000000+00:00','withdrawn','2026-03-02T11:03:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'1c31f38592d5bcde','d128fb3d970cd866','S011',1,'2026-03-02T09:39:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'91e996fc04150d80','0c2b222566e33ee1','S012',1,'2026-03-02T09:42:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'c0ce7cd08cd5fab7','7aae579cf57b182b','L001',1,'2026-03-02T09:45:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'6b2aad4a616ee4ef','ee5fd9aec56df970','L002',1,'2026-03-02T09:48:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'0f4fe44c3683ab92','cc02ddb06fbcd2cc','L003',1,'2026-03-02T09:51:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'6f20cfaf4147d037','e27793ca2e45cf40','L004',1,'2026-03-02T09:54:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'9e4eb475f7bd4041','8b898576a5c50864','L005',1,'2026-03-02T09:57:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'ecde015ba7766356','3d4f32fd72b4bc81','L006',1,'2026-03-02T10:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'09649db32714b876','2b4fb3ee9dac66d0','L007',1,'2026-03-02T10:03:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'fa87e02bf24f3361','d7600cf5235cde9a','L008',1,'2026-03-02T10:06:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'b90d51d6715415eb','0e2ae134ab0ec2ea','L009',1,'2026-03-02T10:09:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(34,'ec4c3a185a4910ef','4faf927059042040','L010',1,'2026-03-02T10:12:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'d92c5b2b528e9fe0','5c318158e95bbd76','L011',1,'2026-03-02T10:15:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'3490960bd5374297','7d304a7bc20b1310','L012',1,'2026-03-02T10:18:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'7a5d18ea4a8aef4b','f378572e8fe11282','W001',1,'2026-03-02T10:21:00.000000+00:00','shipped','2026-03-02T13:50:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'8264411e6085bd56','5a1f3adf6bb97435','W002',1,'2026-03-02T10:24:00.000000+00:00','shipped','2026-03-02T13:50:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'5a06fdb7f5b74d31','fdd9d9e3dbe2a158','W003',1,'2026-03-02T10:27:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'f137497029e873e2','89e2484bfe02e684','W004',1,'2026-03-02T10:30:00.000000+00:00','withdrawn','2026-03-02T11:06:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'13d22973e4a176e7','543f6423082fd79e','W005',1,'2026-03-02T10:33:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'17a8db95341d7074','4fd27629a72b947d','W006',1,'2026-03-02T10:36:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'42ba5afe684e743e','fa10908cc611fa34','W007',1,'2026-03-02T10:39:00.000000+00:00','shipped','2026-03-02T14:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'303d2783b01af454','ef0b0d783a6a610c','W008',1,'2026-03-02T10:42:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'18ac210eab3e77b2','ada8eefbbf744fc6','W009',1,'2026-03-02T10:45:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'45938b1464be0ccd','3545460a1daf37a7','W010',1,'2026-03-02T10:48:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'b7fa391619450161','62ee1e02fd61c565','W011',1,'2026-03-02T10:51:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'6cbc03d8c0f489ae','2d418665d6e02f76','W012',1,'2026-03-02T10:54:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'6bb24d1654ba7cd7','11ce26ea2674537f','D013',1,'2026-03-02T10:57:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'530de33458ae54a9','cde12cb517abe0e1','S013',1,'2026-03-02T11:09:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'ff0ef56a822371f9','3bf91d3c0ef3c941','D020',1,'2026-03-02T12:45:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'733a77fc5028c674','f59f2a73c57238d4','W001',2,'2026-03-02T13:56:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stops" VALUES(1,'a428d07fc411655c',1,'6a5e226de614390b','B-1-1');
INSERT INTO "stops" VALUES(2,'a428d07fc411655c',2,'9fb8b1c3b63066f5','B-1-1');
INSERT INTO "stops" VALUES(3,'a428d07fc411655c',3,'8158dadc7cc7e0e2','B-1-1');
INSERT INTO "stops" VALUES(4,'a428d07fc411655c',4,'1ac1610a3247cde5','B-1-1');
INSERT INTO "stops" VALUES(5,'a428d07fc411655c',5,'cc4342dba0de6342','B-1-1');
INSERT INTO "stops" VALUES(6,'a428d07fc411655c',6,'759ee7e51fd42357','B-1-1');
INSERT INTO "stops" VALUES(7,'a428d07fc411655c',7,'2f44f760196930bb','D-1-1');
INSERT INTO "stops" VALUES(8,'a428d07fc411655c',8,'43703a1e57e5715f','D-1-1');
INSERT INTO "stops" VALUES(9,'a428d07fc411655c',9,'8d19ad57282b3331','D-1-1');
INSERT INTO "stops" VALUES(10,'a428d07fc411655c',10,'ae933538cb7dc8f5','D-1-1');
INSERT INTO "stops" VALUES(11,'a428d07fc411655c',11,'3683c95797a47da2','C-1-1');
INSERT INTO "stops" VALUES(12,'a428d07fc411655c',12,'fce67121324da743','C-1-2');
INSERT INTO "stops" VALUES(13,'774d4701aa4ce440',1,'f0b7d5adc5823649','A-1-2');
INSERT INTO "stops" VALUES(14,'774d4701aa4ce440',2,'a042787fb16cd80a','C-1-1');
INSERT INTO "stops" VALUES(15,'774d4701aa4ce440',3,'5d4df8a94c2f243e','C-1-1');
INSERT INTO "stops" VALUES(16,'774d4701aa4ce440',4,'d99911b01f26a154','C-1-1');
CREATE UNIQUE INDEX uq_access_token ON access (name) WHERE kind = 'token';
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
COMMIT;
