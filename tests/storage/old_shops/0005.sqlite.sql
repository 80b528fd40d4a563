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
INSERT INTO "access" VALUES(1,'62fdce8a3bdca041c17a93f7a1511ed28c18d6c8b6175a6a806387428793b2f8','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$EgHVcJ4Ncab1rRAeKDWp2g$GT2A2vlIs8Jzn7QcngeSWTLOw1cMtIuLpl7o+LIJAME','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'04162bc47c7c321fb60aa9c50f1766ad6400ba95380fc6acb92f482154b36b1f','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'0df14ab9c04a287ef1b3f46618e28d95d7b261fe74c1fb39c1c5de212aaa54d8','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'c59c5e2be01039892c56d3d88032f1fa754d2627f7ef3a4247dcd883c7585a29','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'313e255cae04e29a2ca6718862263626c4d05acd044ced36ee79b693caef4252','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0005');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/a182937da04dbf5c','{"id": "a182937da04dbf5c", "item": "40adcd46d825b397", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
INSERT INTO "head" VALUES(1,170,'9c15fac1674fdb1ccb549f24c468edf34138c06f9d1a33c2c18b81bf34c233fb','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'e28aa9c00ce4bdfc','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'349b17d9753d3fc2','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'af4fa7b656e33fc1','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'7b93d4b7227ca043','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'f0ee08e0d7e80423','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'d5634eca26d76e51','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'50d9e4f2682ea41b','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'d6865522c4059642','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'322657f37d909b72','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'7b55d5b91c7ada8a','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'372b543ef6c351a2','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'16417b6e611296b8','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'9cb2359a9d600d70','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'27f679ead5eaf487','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'5018d8b49c27f949','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'82e4514537a1c757','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'a379a61300bfc4f2','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'e34c7384da61fe0c','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'445bc2723721e42a','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'15bbfd44d6ba9b75','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'9b217383dd05e156','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'3517ba55a8e0fe6c','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'5510c0e02daadd58','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'c2a5700d95acfabd','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'724ea95de41870fa','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'06afece9ebc3d715','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'8621b706964b2f25','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'f1ccaf5afed12ca9','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'430d43253158b621','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'ad3ab1afdc87c2b6','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'d03fa4330bb86ca5','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'5e480304fb5850e2','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'9b0478822950572f','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'6ac0902089b1854d','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'d315c9c257cef653','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'55565cf8a20b2a25','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'a26dd8e94b32c019','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'73087c319635c7d8','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'5cc820dc42f17f3a','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'0cb82548dfe52c67','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'f1959e73dfc92159','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'41124941450d3901','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'df88da1826cf9312','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'2d490a5bd1b40cfd','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'eb5897ad99364cd6','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'1d0bb595a25fd102','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'4ba0b07a7538750b','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'395e6058600b10e7','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'40adcd46d825b397','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'7934f5dac15938ce','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','dee63fe6efadad2e','2557');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"b63df39887c7aa2f","title":"Rear derailleur 1","turn":1}','9018dff81ebeb28bc4e9b23c0e476891bdfb3be5a5d5b5aa1d60be69ba441ce0');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"a0435dbd4ece2167","title":"Rear derailleur 2","turn":1}','19d75aaf7af72a57876d58570e4366067d06134ea2469935603d3e1bb6de30aa');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"eb7dff8c0c1e99a6","title":"Rear derailleur 3","turn":1}','d638e0c887bd00b5f25dd0ca453b2456ab21c9a02552a41568c3916ea4add346');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"1d3aded6af72e260","title":"Rear derailleur 4","turn":1}','e0efb41e32eed440b787a056021bdecc0a5f92a9fe4578af16d5900b68dea4f2');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"ff40a592c4779090","title":"Rear derailleur 5","turn":1}','7945877411af732898b53f373a6fae0017c8e59926abb489f0fe663c2ed6ed6e');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"42149f0656079598","title":"Rear derailleur 6","turn":1}','8c4079a73b584384e8029e86e6d6fa669963a759926b8c08d2020f6c44b8bdf4');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"197fc61a74706b3e","title":"Rear derailleur 7","turn":1}','be131a1598821d43a577e5ef6d489493fa42d1016a6c10e4d23ea29c899dede7');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"4392ec8ff5bd77e7","title":"Rear derailleur 8","turn":1}','58809bfb9904b80a4af3795aa3ace49820c56ac06b761204a4905ce4ef307141');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"3934b808528a70fa","title":"Rear derailleur 9","turn":1}','61fc1d935b8660132baad082acf66869d6158157042ef8ee4b726d4195b4c833');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"3aab968feb47bd10","title":"Rear derailleur 10","turn":1}','a51911c326071946e0531dedc2dd39872ec43063919b34f1b132ee74e994c384');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"7774db4df098b211","title":"Rear derailleur 11","turn":1}','4ebeeab0cbfa7112416a67d8bc5d6bf123f53148fa4390aa7488b3607b9b8463');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"948783af7539b712","title":"Rear derailleur 12","turn":1}','99833680a8909b8319647955a5ac0b3b2ae8c4c79df5274dce45bfc0eceb57e6');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"d38f9ac39f35980a","title":"Leather saddle 1","turn":1}','9ea9e67959a4fac4d443bddc4f164be56a5c2ba2096889bf05e4ccf826635830');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"ccdf0edb4c19c1c7","title":"Leather saddle 2","turn":1}','481227ec20fa2ad77c626461022ca4bbea41c68495dcd9374b1a85d5700a8019');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"0aa678167c45a934","title":"Leather saddle 3","turn":1}','698e93a21010674bfc5812f6dfee957d58b2e8cedf843a3b459e438d97c0dcf3');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"551af359cd4e25dc","title":"Leather saddle 4","turn":1}','f083843183e560cf4eaa082bda0442d8c6412ea8630c6d414cbd1dadeacbdbbe');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"d17ce63131ba6835","title":"Leather saddle 5","turn":1}','9de669c27cf5976744b4bf544d84285dbf1feee1d0ff272bff95bf19750baba5');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"3436fc36860c1510","title":"Leather saddle 6","turn":1}','d32b56b03eaf71da6e27ebcb35f7c5da9498edd398d2c5bb05f442b402dac72e');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"a7ae4015c91cd34a","title":"Leather saddle 7","turn":1}','0fbbb259113c9a024744be2235ac41253deaac16445a7e97cc03db0b14824cc0');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"e3b8d6d9a9cfbebb","title":"Leather saddle 8","turn":1}','dd99e27b799ee5ec02c167dc43493cb48e5609da53c95c8e1dbe579718e81661');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"aa6e2b107c09965e","title":"Leather saddle 9","turn":1}','576da3ae0f1fb0294a98e687b684f2968da46958c40189e6df45541583a3b14f');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"9b76b5b65d7c394f","title":"Leather saddle 10","turn":1}','3168986219aca5f09b281792a002f65a6a352ad5176df6d98a56b7d233e1efb9');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"840de3ba8ab49917","title":"Leather saddle 11","turn":1}','3f7bd33d5c5f6c480e372dc125bdf5c795060628c78e8ce36d4c69193852ebbb');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"e22d9f35fe2a3672","title":"Leather saddle 12","turn":1}','a95855c60176312e0c8ae835d6411b48c2d7c68efbf8a3a6a1bfea8af1dc8518');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"9080b50444bcaff2","title":"Dynamo lamp 1","turn":1}','f98f07c8916c26c0345ea3f021b31f545cbd2513c8567255d563b990156ec318');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"6e2aadfbb33a477b","title":"Dynamo lamp 2","turn":1}','5da8ca88aa43c0ed5a8e4f924473f10f9597d49ee34c9d1110420cc9a0c7994d');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"778fa01d45acac71","title":"Dynamo lamp 3","turn":1}','9b72eaf3cbb523aae08429b38b809b26678b412d1cf4e6fc9bb0e25abefea4ff');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"d3a3205edcc9463f","title":"Dynamo lamp 4","turn":1}','476dd83c0101b35558895c91754345abcf2e36784214ba84bc6cdb8c2099d30c');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"a7b6fd0f8c6f1e81","title":"Dynamo lamp 5","turn":1}','be27b0e0aa68b486c2208dcfec99aac23326f58627efbb3ac1f598b3d1ace12d');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"6bd2db4a859452c3","title":"Dynamo lamp 6","turn":1}','2f49d0f17c29b928abfc5acf429601c0b16362defc8cf165547ea7e5d8c43578');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"d49a1a7aa5c358f2","title":"Dynamo lamp 7","turn":1}','48ad9b34edbae7dd461cf71085cf7a2f1be06a0fa4968a9bd4b23d95d4142e05');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"5aebcd7804b8095a","title":"Dynamo lamp 8","turn":1}','a8b4cc0ff2d8e85e5e5560af434704b8b3493f73a8e7af01a0a4f497342abded');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"6258186f332218b0","title":"Dynamo lamp 9","turn":1}','98da4c420f97927f470d5e83e7b6d9d1e9f59e122ccbdaa23cab01b04a41f8e3');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"84a2c91a735ab716","title":"Dynamo lamp 10","turn":1}','6a1f83b50b1ac66592ba5df542b406e6bf941a37bde598f0c8521a8825ba3411');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"c198048fa514ab86","title":"Dynamo lamp 11","turn":1}','ba15efd2e23c1ae8ab7cadfbb70723f1c8749ad0d276655a53f50f6d0a34ee25');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"ea33a804940beca4","title":"Dynamo lamp 12","turn":1}','d79a29aa3a89e21fc6399e44dd996a1c95b4e540f0356f6c81ff1e9d949dc8b8');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"8b4dceea0fa03322","title":"Front wheel 1","turn":1}','191eae198d80bf2c866e45a7e958f3c32dad83ae5fa479de5139694cd122a8e5');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"9c7f9891f47056b8","title":"Front wheel 2","turn":1}','de9e445a9d8e60f33dc1b9701c9001917cd92326ea3d87d08b419af69d049b6a');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"29e439fe13c6f8e5","title":"Front wheel 3","turn":1}','8cc1ccd352059080a501fda85841bb376b86228fc155089713feb334f7a9a1a2');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"00efab1b16fbd714","title":"Front wheel 4","turn":1}','a5f0df56170f1708eea5932aca02b06679300d357e7dbd308251910adb8b590b');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"d24e30a0fe2ed91e","title":"Front wheel 5","turn":1}','498655825158ccae730820f3c2f875346530da162f9fcf4737e219f68afa380b');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"6e6a1e36ab1dabed","title":"Front wheel 6","turn":1}','516569370fbfa26110d4c6245f6d800f0027c0a9d8e23c2d2b50237b525df358');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"34d25f09a770f6b1","title":"Front wheel 7","turn":1}','eb9aa20a9cc390893983c5ddd17ee51ddd67c4573c7bd8bc22ccbf2caa2cbdc3');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"1c5700cb3edc4f1a","title":"Front wheel 8","turn":1}','6ca1e7fd71ff681ccd515a2970066d750fcb28c59ebfae8ee807c724c02ed67c');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"c7fd9cc4dbf58be9","title":"Front wheel 9","turn":1}','191c241573d4d369832286e5edb260766f4d50852045c6121bd1fe98442a7fe3');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"678c5df196b353d9","title":"Front wheel 10","turn":1}','8693afa0ce75c3794b14b09a8fcacf06d02b1d18e3e7f606e60a7e7cc2acd478');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"4e9252dd2f8c9d7e","title":"Front wheel 11","turn":1}','b1d7b61697c92fae0f38e6d252d82bc359fc3e9bda13b42290a2561336360a52');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"0a3a02673c899c7f","title":"Front wheel 12","turn":1}','3b69ba14a298d39c9b9988055e5b41988e7d0115366af12580fd96c2cd78fb65');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"a182937da04dbf5c","title":"Brass bell","turn":1}','deecc4921e7d950420d10fa34e33e377f35449725414706ba676335180354b60');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"a0435dbd4ece2167"}','ed5ea57ee129b835d1fe4c6182ccc90b99fcc21142d70c82727d92f57832f8f9');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"9b76b5b65d7c394f"}','cd7c37fa2a429f66c60e1cd0ef05ca2eaab5808ea5fbd7a616a040c1c22b7856');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"00efab1b16fbd714"}','8aed176ae68372890851b7a4e6a08cc41f58cd3584ec6d4bb8adf1824bf34f73');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"34b6536a991900f6","stay":"aa6e2b107c09965e","to":"S013"}','9a35a1f120df809fd334aafed06f43d2a94cac2c3ec544ad2224abdeaaffe788');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"b63df39887c7aa2f"}','57f285daea8905393f16e33b8a9442417bbf944efce7e04c61858d0b00019b90');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"d38f9ac39f35980a"}','895598b1afe9f6daa7ba9541437f390130737df12923df06c52fbbed5d04e319');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','11b8fef5a16c6ab8f1b06d67bad0da745f523ebf9f658fc8ccc7ee1f21e4cd24');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','52652935113124b99d80f09f57a061ad04d98ca2e7db870d5e912c176674aaa3');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','c4f3fa824249e28ca155e4143e00dab162cdef9fe486bd0d75e29b768c268024');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','7cb8d96271fcbde10301685008d38c55b63803464498629b1b7bbb5796feb521');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','e6292ffe7e7c6d6c091f8fd5595a274a19b0343034fd98c54870346fc6d1283d');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c33a78cc22f69613","reference":"W001-01E","stay":"8b4dceea0fa03322"},{"hold":null,"line":"7b87679c70b0e23f","reference":"W002-016","stay":"9c7f9891f47056b8"}],"number":"B-01","order":"850503622b61e4d0"}','c85f0d1796f857e39941e2728e37287965535a34efaeef3046e0168ae6c683d9');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"714792f17852a9a5","reference":"S002-013","stay":"ccdf0edb4c19c1c7"},{"hold":null,"line":"ed68ec1ec1b05b49","reference":"S003-01W","stay":"0aa678167c45a934"}],"number":"B-03","order":"2dd9729dba8987a4"}','2bcb8d6aaaddd9ec82dd76401c74a992bfa03900a86d3698cc36b741e13c25f2');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"fe3afe25e756121f","reference":"S004-01O","stay":"551af359cd4e25dc"},{"hold":null,"line":"8212dfa7657b113f","reference":"S005-01G","stay":"d17ce63131ba6835"}],"number":"B-04","order":"ae946c5b9cb0bc12"}','9049f52c6647fddc0e7cfbcd89f5740fabc43295b8b4d14052eeb2718687de59');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c2f0774ea44416a8","reference":"L002-017","stay":"6e2aadfbb33a477b"}],"number":"B-05","order":"0bddeb76cf00c8cd"}','bb0a324de7d1975e91067c69f1e93bfdcf212cfcd96c572bd2e09b91a7ef2cec');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c4800a7e7b55acc9","reference":"L003-010","stay":"778fa01d45acac71"}],"number":"B-06","order":"9b11cbf7e3c56f3f"}','1464f912a120e50dca4e379b1a2a4ed66b2a96f0d354373ceab206feecee2aa3');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b6fe5b5313647041","reference":"L004-01S","stay":"d3a3205edcc9463f"}],"number":"B-07","order":"135821f7303270ea"}','a99f0383c5c809e08afcc9345b256c1632bb0280f5bfe3365d99c30ccafc7614');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"40f1e37d32c442e9","reference":"L005-01K","stay":"a7b6fd0f8c6f1e81"}],"number":"B-08","order":"de92e01ff8269b6b"}','af365d48da9e85097f4cc43471516f4512dcd31a709b8e390d9fe9d85ba40ec3');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"23b922fe777c20fe","reference":"L006-01C","stay":"6bd2db4a859452c3"},{"hold":null,"line":"3978d5a5da1f3103","reference":"L011-010","stay":"c198048fa514ab86"}],"number":"B-09","order":"0542a44a4644597b"}','fdd52e5ba642ad46fc837cad93ffa45f45da84fca685f81b8ea1f1a5196b419e');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e73cd32139336fb3","reference":"S006-018","stay":"3436fc36860c1510"}],"number":"B-13","order":"8ad1bb76a58cf501"}','1945c56dfae9e89825ea28ad545fece6cc05499e9db28ac292d52cbcc161d9ee');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"dd8a04faa6c0e926","reference":"L007-014","stay":"d49a1a7aa5c358f2"}],"number":"B-17","order":"fee7af96fda3e732"}','ec3298667dd72f999b91572839b8f0792d251df9e69175fb3a550587264535a3');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"fe212dbe8cd1905f","reference":"D009-01B","stay":"3934b808528a70fa"}],"number":"B-18","order":"5c72287147ca8c7f"}','8e45dd6e5520b9d46b5e7a445b84ebf3ee0de666e7b55d599bbe9c4450c8207a');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8c812026f26b2163","reference":"W006-013","stay":"6e6a1e36ab1dabed"}],"number":"B-21","order":"70983f7818703bff"}','5c82ecc548c5958e3586f05fabb95833800911fe15ecc581fc770c5477b79e65');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1df7a6e0ba289161","reference":"S007-01Z","stay":"a7ae4015c91cd34a"}],"number":"B-22","order":"99f1a10a60e031aa"}','330fd1068419ae4e9c789ae1b37bc4490ab4646eb414babc74fa5a794cabb8be');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c9412a59f62be32e","reference":"W007-01W","stay":"34d25f09a770f6b1"},{"hold":null,"line":"c654c33825cc63b7","reference":"W008-01O","stay":"1c5700cb3edc4f1a"}],"number":"B-23","order":"c918e06210676eb1"}','34a2ac750ad149b2ebb010ba4c23352edd8c58cfc2ac7796a85f4b911becdd37');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9af4a1c349638eae","reference":"D008-01J","stay":"4392ec8ff5bd77e7"}],"number":"B-26","order":"9e34883bceab3dac"}','54c792ec3fad910950142f2a4cb29ecda2bc0659db9bbbfa6336f84230e3a333');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"8ba87188a191b1dc","reference":"D003-01U","stay":"eb7dff8c0c1e99a6"}],"number":"B-30","order":"bddabd78f1056349"}','4e2056015605e34d0d3c449eece2106265e0b8709306e64d97f51d27e9e61e06');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1ba3c55b247974f2","reference":"D005-01E","stay":"ff40a592c4779090"},{"hold":"unknown_code","line":"062203baed1b5c70","reference":"Z999","stay":null}],"number":"B-31","order":"941250602b8363c4"}','594a019a7e96608764f9f568ed3b895c7ce6780a3e1d31ef31557cac7bcbde16');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"dd726ed6f2f23b44","reference":"D006-016","stay":"42149f0656079598"},{"hold":null,"line":"bd1e6ee010e63e74","reference":"D007-01R","stay":"197fc61a74706b3e"}],"number":"B-32","order":"f6ac4746f22d4983"}','3c574a2121b802f2a6e8a58c84b71a14fab2de8c4796ed94e9244a6063bde3fa');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"bd1e6ee010e63e74","reference":"D007-01R","stay":"197fc61a74706b3e"}],"number":"B-32","order":"f6ac4746f22d4983"}','7fea0db8f7e392d85f3131126a6f3fbb9419d96261ad7acb0d8db2b86f4d1623');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"a60dd29fa604519d","reference":"lamp","stay":null}],"number":"B-33","order":"eda159ea438dc871"}','7f7f4b9beaef6a95f9ce218460b9cdf9c96deeed97820d7ae409b4f7b1798abd');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"656e84b0be04a07c","reference":"D006-016","stay":null}],"number":"B-34","order":"d1ff48631deac244"}','798865371b18b7d514d7f51ba38c6cbdf5235e933170112ce79ef07db738df23');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"a300a26e0a716e68","reference":"W004-01J","stay":null}],"number":"B-35","order":"9afc140327a58f1a"}','98d8e0511448fe2df474738e81a23bc86eb34095a73f76b66940eeff2282738a');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"35b22c1ff8748783","reference":"L015","stay":null}],"number":"B-36","order":"f564199b2a547a1a"}','6d2371e5922146ba8ce0595ff774080d2a6563ede97152df49a41acf428604f9');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"3f7f08be5d65884d","reference":"W005-01B","stay":"d24e30a0fe2ed91e"}],"number":"B-37","order":"ab57d7725480c9e5"}','b050aba0cb08a9e8b2ddc686acf0bc6c8a6559d3404a188fa9e51349b5e99047');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"3f7f08be5d65884d","stay":"d24e30a0fe2ed91e"}','b13b8b1131bbfc7e2a5655e873a8ded8611b62e5cfe7f25e56e8dc0fb9405ebd');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"dd8a04faa6c0e926","why":"Another lamp, by the photo"}','5b345936805226bf7ed11188ba8fdb9506e4ce82e02e6fe7d9b4eba7bc99766b');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["40f1e37d32c442e9"],"number":"B-08","order":"de92e01ff8269b6b"}','82391d397dee9118a588cd3fe122f3c900624474db376d50e812ce6229eb173a');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["8c812026f26b2163"],"number":"B-21","order":"70983f7818703bff"}','f83752fdc4210d33ffe5878072995d11e7593386c015e12afa2d54b67c1cc5ce');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"8c812026f26b2163","stay":"6e6a1e36ab1dabed"}','2fe157d2363e4e008ab9421ddad032b44344e719e3aa33dd6d29545ae8b149b0');
INSERT INTO "ledger" VALUES(102,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"0795033127f3a1ae","stay":"4392ec8ff5bd77e7","to":"D020"}','58cc9a85bb134c1ce313019b3f386eb1e76d90d8610f02e003c2e0425f952036');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"892385e784db586f","reference":"S012-01O","stay":"e22d9f35fe2a3672"}],"number":"F-1","order":"10f4091d86fc47cb"}','c6ce77fc08ad68ebfc638d5b659f5b3cd847adaacf1ea3201129b39a4bd39b2a');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"2537005af5e9556a","reference":"","stay":null}],"number":"F-2","order":"b0f5ba7cda150efe"}','65116919c86869775f556c806cb1dc74028de7c52ec611e984e2c097deaa13ef');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["c33a78cc22f69613","7b87679c70b0e23f","714792f17852a9a5","ed68ec1ec1b05b49","fe3afe25e756121f","8212dfa7657b113f","23b922fe777c20fe","3978d5a5da1f3103","e73cd32139336fb3","1df7a6e0ba289161","c9412a59f62be32e","c654c33825cc63b7"],"round":"122a56aa6a826de0"}','ac171b24dfccc5b4d955d197aaad67e7db9351868dd08df77e5a5dc48ae0be25');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','a2ee62605c448118461d94d699abf77e4defc1ccd957564927c9bec4fc56cea6');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"c33a78cc22f69613","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','a2cff429da1c65375665f6c1296d377832e022627882033cd078f6a68377906f');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"7b87679c70b0e23f","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','0c2d27502c4b24865db77e510deb27a90899a95c7527addc6a0ea5fcd3a9de4e');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"714792f17852a9a5","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','2defc34a1ff15dea0f5428e34bbccb0ec34b4cf86989f3a896cc342b836d482b');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"ed68ec1ec1b05b49","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','38383b284395cba1d29d20331fb308ffe84c3e84f4e90db77ab6ec65ff38cc7d');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"fe3afe25e756121f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','0b47f564b2d98d0b31d6c9743c6277a86c8b272128e1d8f0bc5eef237ae25131');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"8212dfa7657b113f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','c8b001a96bc4f152e48b699545ac3b88437ab3154ecde21a0e1cd1609eb38582');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"23b922fe777c20fe","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','9e261280d44dbc426744b1c38fbc730329de774f23c6e35e82c261ca5830d44d');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"3978d5a5da1f3103","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','ad1d6166ac65b2125e62d2d6c0b331be158ea258d556df64cdeb09ae64ccb992');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"e73cd32139336fb3","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','258e8c423cbff326391a755a006a3c89c57d0b5b40c10c783f5d18bfb911f529');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"1df7a6e0ba289161","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','3d511c4cb427a5e0f948acb0ea8b7fd0a0c7dbeb17c8ad81688f22670fe62156');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"c9412a59f62be32e","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','7ab89bd1c80972469044f41ddca945ad9866f0870250bf9c9948340b64783259');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"c654c33825cc63b7","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"122a56aa6a826de0","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','a5caa996d7a6be2f45cfe870e12a85b372d3f0d9f55cf46d84ed8591df0c842d');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"c654c33825cc63b7","line_state":"waiting"}','29f8e97535f34cbc1117a01b85228afa322e0bf06da638812e6d587efd00f13c');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"122a56aa6a826de0"}','d7a9fcf1ce7c8d04887d367d56600f988a1232fce654dfe7f08f952aedad9059');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["850503622b61e4d0"],"parcel":"dee63fe6efadad2e","table":"main"}','e2df9a3939e6c2ddcd93ff02304067b9c7904973d6a7cce59c306c0dda2b2352');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"714792f17852a9a5","line_state":"picked","order_number":"B-03","parcel":"dee63fe6efadad2e","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','41ec562081d818c1989125e0b7768000a98f8283c792713b5c0b20fee0e627d3');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"c33a78cc22f69613","line_state":"packed","order_number":"B-01","parcel":"dee63fe6efadad2e","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','cc90a8c6933306766ca38a7f57c650bf50542a0add79e9d08710e6008e3cf40f');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["850503622b61e4d0"],"parcel":"dee63fe6efadad2e","released":["W001","W002"]}','c0dfe28e58bc350dae51402a3f6d0b348ebe14dc6954b169fd0498524cba5b4b');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"7b87679c70b0e23f","line_state":"released","order_number":"B-01","parcel":"dee63fe6efadad2e","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','5c92dccd9fae715074920c85dd3ce762b7e19acaa8aa7ebc277a903c977582f8');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"c33a78cc22f69613","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','96c99d9b533ea146cc677b37a92248e729440642f9f86d6485a709dbdd76f83a');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"4b13ce18f2f7917c","title":"Rear wheel","turn":2}','f3cf4757d24afe7d88cd84c2575fffb4cf1579f39a29925fd6af65109a44a91b');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"dee63fe6efadad2e"}','033448b273024211e7dd78e83be11e481703bea629a60e7b2b380eb0c42f34e2');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["c918e06210676eb1"],"parcel":"d101e96c7c97440f","table":"main"}','b1cae27fac9e86d41ab8bb9b0c4090b966a1840c96b1d570bcd3129adeda8595');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"c9412a59f62be32e","line_state":"packed","order_number":"B-23","parcel":"d101e96c7c97440f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','4bce418a2fdf4cfd5841c3fdb849cc1ea33e6eab79a3dcf59f9bdc1ec52fd748');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["c918e06210676eb1"],"parcel":"d101e96c7c97440f","released":["W007"]}','923a33fa900540b04bdf8d61698454fe2a3979242403ae5aaaedd78651011fff');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["c918e06210676eb1"],"parcel":"d101e96c7c97440f"}','c2e59e0c1d059f3f6687349cb864d14fbd01988589f5827cb7f61e7e3fedba5f');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["c918e06210676eb1"],"parcel":"d101e96c7c97440f","released":["W007"]}','d65529ee5d5e7883db4f3f1e9e9bdd215cb2d89e9a62424a9f3f21d717b6967a');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["99f1a10a60e031aa"],"parcel":"7d1fb051691f7c53","table":"main"}','e20f5d539f4cc58d5a09fdb34c9b60b9e9cdcf76896c3d1fd1bb164fe86b4ac2');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"7d1fb051691f7c53"}','88d27a93d407fa02dc12fa4e0db78b0d993f175423d3ef7d3e80b7f1d92b85eb');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["ae946c5b9cb0bc12"],"parcel":"242a1eea45f60cd7","table":"main"}','c7b932d076a4024e86071075b4bf1d25b274ff9744479c1ea6efa9373629ae9d');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"fe3afe25e756121f","line_state":"packed","order_number":"B-04","parcel":"242a1eea45f60cd7","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','7f4bb8faaf9f6d904d99b02686bee7c461a57e946417c2f1f59e1e4ed70b213d');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"242a1eea45f60cd7"}','5571c424114696f6c629aa6289601a38b4c9798063d9a51c7494ae9d2e0145f2');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["0542a44a4644597b"],"parcel":"d032baa4728ddb54","table":"second"}','03699bde7b85e184cf4931b8bcb0fba6fcdfb664d4408373fc9be18e5c02804b');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"23b922fe777c20fe","line_state":"packed","order_number":"B-09","parcel":"d032baa4728ddb54","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','b6cce44d2a99ffe28abc4377926f9d3273bfe938530e9e2f82352e23594b8267');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["23b922fe777c20fe","3978d5a5da1f3103"],"number":"B-09","order":"0542a44a4644597b"}','fd95ab275d4716b1df235e965e328cd7d4b3699d55931dd679177fa8e124e727');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["2dd9729dba8987a4"],"parcel":"995fe11d4a72caa0","table":"main"}','a1a3e13963811057cd1778bb207683f04f964d2d64ffcb562bb43b520f81f214');
INSERT INTO "ledger" VALUES(143,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"714792f17852a9a5","line_state":"packed","order_number":"B-03","parcel":"995fe11d4a72caa0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','8a8d18935a01901ca82baacd2d684d822b8fa96538c0248602e20b485ad3a9d8');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"e73cd32139336fb3","reference":"S006-018","stay":"3436fc36860c1510"}],"number":"B-13","order":"8ad1bb76a58cf501"}','96387946cc1c4ad9fd86cff905788a51f0c287c23241f8a4fc113a6483db2d70');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["c2f0774ea44416a8","c4800a7e7b55acc9","b6fe5b5313647041","9af4a1c349638eae"],"round":"7ad30afda3814f8f"}','067c8344512f82532cf3e3c333875492006915711794a0e2d88c98489ada225a');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"c2f0774ea44416a8","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7ad30afda3814f8f","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','3cbab599d1f29281f26c5fac2666317b3ba98e583277b9182b04ae0cfc6d0c15');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"b6fe5b5313647041","note":"Not in its bin"}','7f1c4c9eee6fc5f487a6f002ffc5dc1df72e78a24d5e4ab967048d6eefb6a4e8');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"7ad30afda3814f8f","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','4393d988dfab85c245c3c14735fa1a68a64089b62656885fb87a5edd73e45a15');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"7ad30afda3814f8f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','c8692eb0c67e6108b3407135013c27f8ddc539b8ec9d68e4255c484a8bf938c1');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"7ad30afda3814f8f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','843196655bc7af7c7c595e6b98199c1d0b2d51d159a389116a454c0ee14300a1');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','a2d1164dd50b6eeda0e28fa9aeabf183edba3cb3b7d1a44bfd61887574896097');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','12f8c6371282550c811d1ba2210860a7fb124de0064a2d0e8480904c5d561505');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3b8bd3971dc912a5","reference":"D001-019","stay":"b63df39887c7aa2f"},{"hold":"already_sold","line":"604dc04ed4d9df44","reference":"W002-016","stay":null}],"number":"B-38","order":"16a4570e588c7ba3"}','ec33699ab33af26c54c245283ba29922e096fa306d8080d1abdea4b31637c7af');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"5d8f8f69e1a7496b","reference":"W001","stay":null}],"number":"B-39","order":"64e0f40e464b0ce4"}','28d780914368d25217e49e24c500afc43dbf1454b619818d650421f4630d4514');
INSERT INTO "ledger" VALUES(155,'2026-03-02T15:39:00.000000+00:00','stocktake opened','owner','{"area":"section:S","note":"Spring","stocktake":"ca710de99092f509"}','dc7f83e1bb5f54301cad5e22cc09e5b7db8c644a7a1ee3ac8891716943126a1c');
INSERT INTO "ledger" VALUES(156,'2026-03-02T15:46:00.000000+00:00','looked','owner','{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"doubted":["S0010"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"ca710de99092f509","unread":0}','1238de401973cbcba46417ca14b337a3a82720c3c9d46622b8353a198b544f36');
INSERT INTO "ledger" VALUES(157,'2026-03-02T15:54:00.000000+00:00','looked','owner','{"decoded":["S0116","S0132"],"doubted":[],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"ca710de99092f509","unread":0}','6371652b4464875c3987875d712002ad4210a3b00a624a678c2f4366c7ecdfbc');
INSERT INTO "ledger" VALUES(158,'2026-03-02T16:00:00.000000+00:00','finding resolved','owner','{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"ca710de99092f509","sure":false}','d448b4c92638a6a8c59dcc27695329622d0ddd13ff15cc9a9dfbc8395e1da428');
INSERT INTO "ledger" VALUES(159,'2026-03-02T16:03:00.000000+00:00','finding resolved','owner','{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"ca710de99092f509","sure":false}','063cc861109f4f893ef3ea20c49cfb4d33de38d187ed41c090374c3d1ef69e95');
INSERT INTO "ledger" VALUES(160,'2026-03-02T16:06:00.000000+00:00','finding resolved','owner','{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"ca710de99092f509","sure":false}','cbe4de80fec15bb27d1f96b73fc2fd2879228c98db1ef1aabc1e8c22fd154552');
INSERT INTO "ledger" VALUES(161,'2026-03-02T16:09:00.000000+00:00','finding reopened','owner','{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"ca710de99092f509"}','8aecc6ecc8236625a2dcf92cdd6388ce03b0514e97c5355cc6d3471a3d76f741');
INSERT INTO "ledger" VALUES(162,'2026-03-02T16:12:00.000000+00:00','stocktake closed','owner','{"findings":{"elsewhere":2,"missing":1,"suspect":2,"unknown":1},"looked":2,"stocktake":"ca710de99092f509"}','b6824b456385fffe33ff5b88ca88721aabcd7a5d137348c47db083e866c0d41c');
INSERT INTO "ledger" VALUES(163,'2026-03-02T16:15:00.000000+00:00','stocktake opened','owner','{"area":"section:L","note":"Spring","stocktake":"8404231c2976e5cd"}','10b755a0555be680762ed0a4538f65327f5283633e73a00a943ba58478fbf4c6');
INSERT INTO "ledger" VALUES(164,'2026-03-02T16:22:00.000000+00:00','looked','owner','{"decoded":["L0032","L0049","L0057","L0073"],"doubted":[],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"8404231c2976e5cd","unread":0}','9de70893a164f99db8e123b8fbe637c1dfdd450a1afe83d5d42f48b9d4fd3f7d');
INSERT INTO "ledger" VALUES(165,'2026-03-02T16:25:00.000000+00:00','card lost','owner','{"code":"L008"}','51a5a5eeb67ed4b792e2886d11d6a846a85bc8aa9e2404dded13d831987136fc');
INSERT INTO "ledger" VALUES(166,'2026-03-02T16:25:00.000000+00:00','finding resolved','owner','{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"8404231c2976e5cd","sure":false}','426c7e51f7b6935c66e5e10bfe939759c158d1d0f779637f3f967a118533db84');
INSERT INTO "ledger" VALUES(167,'2026-03-02T16:28:00.000000+00:00','withdrawn','owner','{"code":"L009","reason":"Nowhere to be found","stay":"6258186f332218b0"}','62d0991ab283e6d8b66d812f5c91106cf04d6698230c4a830e54031636c249e8');
INSERT INTO "ledger" VALUES(168,'2026-03-02T16:28:00.000000+00:00','finding resolved','owner','{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"8404231c2976e5cd","sure":false}','e89a7383bb20b7a946a53632997f8b7ecfa0f9fcab44578e977a7eaffcf83728');
INSERT INTO "ledger" VALUES(169,'2026-03-02T16:31:00.000000+00:00','stocktake opened','owner','{"area":"tray","note":"Too late today","stocktake":"31318b18b123452a"}','90e5273e131813eec00509db6a94fd0cd942a739f937af24dc3ef4579fc690f9');
INSERT INTO "ledger" VALUES(170,'2026-03-02T16:34:00.000000+00:00','stocktake cancelled','owner','{"stocktake":"31318b18b123452a"}','9c15fac1674fdb1ccb549f24c468edf34138c06f9d1a33c2c18b81bf34c233fb');
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
INSERT INTO "lines" VALUES(1,'c33a78cc22f69613','850503622b61e4d0',1,'W001-01E','Front wheel 1','','8b4dceea0fa03322','released',NULL,'','dee63fe6efadad2e','122a56aa6a826de0',1,NULL,1);
INSERT INTO "lines" VALUES(2,'7b87679c70b0e23f','850503622b61e4d0',2,'W002-016','Front wheel 2','','9c7f9891f47056b8','released',NULL,'','dee63fe6efadad2e','122a56aa6a826de0',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'714792f17852a9a5','2dd9729dba8987a4',1,'S002-013','Leather saddle 2','','ccdf0edb4c19c1c7','packed',NULL,'','995fe11d4a72caa0','122a56aa6a826de0',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'ed68ec1ec1b05b49','2dd9729dba8987a4',2,'S003-01W','Leather saddle 3','','0aa678167c45a934','picked',NULL,'',NULL,'122a56aa6a826de0',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'fe3afe25e756121f','ae946c5b9cb0bc12',1,'S004-01O','Leather saddle 4','','551af359cd4e25dc','packed',NULL,'','242a1eea45f60cd7','122a56aa6a826de0',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'8212dfa7657b113f','ae946c5b9cb0bc12',2,'S005-01G','Leather saddle 5','','d17ce63131ba6835','picked',NULL,'',NULL,'122a56aa6a826de0',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'c2f0774ea44416a8','0bddeb76cf00c8cd',1,'L002-017','Dynamo lamp 2','','6e2aadfbb33a477b','picked',NULL,'',NULL,'7ad30afda3814f8f',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'c4800a7e7b55acc9','9b11cbf7e3c56f3f',1,'L003-010','Dynamo lamp 3','','778fa01d45acac71','waiting',NULL,'',NULL,'7ad30afda3814f8f',2,NULL,1);
INSERT INTO "lines" VALUES(9,'b6fe5b5313647041','135821f7303270ea',1,'L004-01S','Dynamo lamp 4','','d3a3205edcc9463f','short',NULL,'',NULL,'7ad30afda3814f8f',3,NULL,1);
INSERT INTO "lines" VALUES(10,'40f1e37d32c442e9','de92e01ff8269b6b',1,'L005-01K','Dynamo lamp 5','','a7b6fd0f8c6f1e81','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'23b922fe777c20fe','0542a44a4644597b',1,'L006-01C','Dynamo lamp 6','','6bd2db4a859452c3','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','d032baa4728ddb54','122a56aa6a826de0',4,NULL,1);
INSERT INTO "lines" VALUES(12,'3978d5a5da1f3103','0542a44a4644597b',2,'L011-010','Dynamo lamp 11','','c198048fa514ab86','cancelled',NULL,'',NULL,'122a56aa6a826de0',4,NULL,1);
INSERT INTO "lines" VALUES(13,'e73cd32139336fb3','8ad1bb76a58cf501',1,'S006-018','Saddle with springs','','3436fc36860c1510','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'122a56aa6a826de0',5,NULL,1);
INSERT INTO "lines" VALUES(14,'dd8a04faa6c0e926','fee7af96fda3e732',1,'L007-014','Dynamo lamp 7','','d49a1a7aa5c358f2','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'fe212dbe8cd1905f','5c72287147ca8c7f',1,'D009-01B','Rear derailleur 9','','3934b808528a70fa','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'8c812026f26b2163','70983f7818703bff',1,'W006-013','Front wheel 6','','6e6a1e36ab1dabed','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'1df7a6e0ba289161','99f1a10a60e031aa',1,'S007-01Z','Leather saddle 7','','a7ae4015c91cd34a','picked',NULL,'',NULL,'122a56aa6a826de0',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'c9412a59f62be32e','c918e06210676eb1',1,'W007-01W','Front wheel 7','','34d25f09a770f6b1','released',NULL,'','d101e96c7c97440f','122a56aa6a826de0',7,NULL,1);
INSERT INTO "lines" VALUES(19,'c654c33825cc63b7','c918e06210676eb1',2,'W008-01O','Front wheel 8','','1c5700cb3edc4f1a','waiting',NULL,'',NULL,'122a56aa6a826de0',7,NULL,1);
INSERT INTO "lines" VALUES(20,'9af4a1c349638eae','9e34883bceab3dac',1,'D008-01J','Rear derailleur 8','','0795033127f3a1ae','waiting',NULL,'',NULL,'7ad30afda3814f8f',4,NULL,1);
INSERT INTO "lines" VALUES(21,'8ba87188a191b1dc','bddabd78f1056349',1,'D003-01U','Bell with a crown','','eb7dff8c0c1e99a6','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'1ba3c55b247974f2','941250602b8363c4',1,'D005-01E','Rear derailleur 5','','ff40a592c4779090','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'062203baed1b5c70','941250602b8363c4',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'dd726ed6f2f23b44','f6ac4746f22d4983',1,'D006-016','Rear derailleur 6','','42149f0656079598','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'bd1e6ee010e63e74','f6ac4746f22d4983',2,'D007-01R','Rear derailleur 7','','197fc61a74706b3e','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'a60dd29fa604519d','eda159ea438dc871',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'656e84b0be04a07c','d1ff48631deac244',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'a300a26e0a716e68','9afc140327a58f1a',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'35b22c1ff8748783','f564199b2a547a1a',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'3f7f08be5d65884d','ab57d7725480c9e5',1,'W005-01B','Bell with a crown','','d24e30a0fe2ed91e','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'892385e784db586f','10f4091d86fc47cb',1,'S012-01O','','','e22d9f35fe2a3672','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'2537005af5e9556a','b0f5ba7cda150efe',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'3b8bd3971dc912a5','16a4570e588c7ba3',1,'D001-019','Rear derailleur 1','','b63df39887c7aa2f','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'604dc04ed4d9df44','16a4570e588c7ba3',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'5d8f8f69e1a7496b','64e0f40e464b0ce4',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "looks" VALUES(1,'done-1','cacf56e40a8a7cf295786746848626249dbd7d8d9a4ae00f7db6ac5c1a78bf3c','ca710de99092f509','B-1-1','2026-03-02T15:46:00.000000+00:00','wedge','[["S0010", "S001", "decoded", [], true, []], ["S0036", "S003", "decoded", [], false, []], ["S0124", "S012", "decoded", [], false, []], ["Q0771", null, "decoded", [], false, []], ["D0104", "D010", "decoded", [], false, []]]',1,NULL,'[]',NULL);
INSERT INTO "looks" VALUES(2,'done-2','88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c','ca710de99092f509','B-1-2','2026-03-02T15:54:00.000000+00:00','photo','[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5], false, []], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9], false, []]]',1,NULL,'[600, 400]','e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO "looks" VALUES(3,'runs-1','f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11','8404231c2976e5cd','C-1-1','2026-03-02T16:22:00.000000+00:00','wedge','[["L0032", "L003", "decoded", [], false, []], ["L0049", "L004", "decoded", [], false, []], ["L0057", "L005", "decoded", [], false, []], ["L0073", "L007", "decoded", [], false, []]]',1,NULL,'[]',NULL);
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
INSERT INTO "orders" VALUES(1,'850503622b61e4d0','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'2dd9729dba8987a4','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','995fe11d4a72caa0');
INSERT INTO "orders" VALUES(3,'ae946c5b9cb0bc12','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','242a1eea45f60cd7');
INSERT INTO "orders" VALUES(4,'0bddeb76cf00c8cd','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'9b11cbf7e3c56f3f','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'135821f7303270ea','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'de92e01ff8269b6b','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'0542a44a4644597b','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','d032baa4728ddb54');
INSERT INTO "orders" VALUES(9,'8ad1bb76a58cf501','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'fee7af96fda3e732','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'5c72287147ca8c7f','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'70983f7818703bff','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'99f1a10a60e031aa','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'c918e06210676eb1','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'9e34883bceab3dac','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'bddabd78f1056349','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'941250602b8363c4','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'f6ac4746f22d4983','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'eda159ea438dc871','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'d1ff48631deac244','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'9afc140327a58f1a','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'f564199b2a547a1a','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'ab57d7725480c9e5','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'10f4091d86fc47cb','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'b0f5ba7cda150efe','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'16a4570e588c7ba3','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'64e0f40e464b0ce4','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'dee63fe6efadad2e','main','850503622b61e4d0','2026-03-02T13:56:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'d101e96c7c97440f','main','c918e06210676eb1','2026-03-02T14:19:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'7d1fb051691f7c53','main','99f1a10a60e031aa','2026-03-02T14:34:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'242a1eea45f60cd7','main','ae946c5b9cb0bc12','2026-03-02T14:40:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'d032baa4728ddb54','second','0542a44a4644597b','2026-03-02T14:49:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'995fe11d4a72caa0','main','2dd9729dba8987a4','2026-03-02T14:58:00.000000+00:00','open');
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
INSERT INTO "resolutions" VALUES(1,'ca710de99092f509.elsewhere-S012','ca710de99092f509','{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','put_right','','owner','2026-03-02T16:00:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO "resolutions" VALUES(2,'ca710de99092f509.unknown-Q0771','ca710de99092f509','{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','ignore','A neighbour''s','owner','2026-03-02T16:03:00.000000+00:00','{"before": {}, "after": {}, "to": null}');
INSERT INTO "resolutions" VALUES(3,'8404231c2976e5cd.missing-L008','8404231c2976e5cd','{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','lost','','owner','2026-03-02T16:25:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO "resolutions" VALUES(4,'8404231c2976e5cd.missing-L009','8404231c2976e5cd','{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','withdraw','Nowhere to be found','owner','2026-03-02T16:28:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'122a56aa6a826de0','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'7ad30afda3814f8f','2026-03-02T15:07:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','eb5a4d70a75e86930ca2b2b7fd14971fc72fec2f767c3eb4aada8744cdaae660','bin','122a56aa6a826de0','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','8a3ce30b336050eb43beb3f77780317719fd4a34974289ab19612b82ae03a909','bin','122a56aa6a826de0','W001',0,1,1,'c33a78cc22f69613',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "850503622b61e4d0", "order_number": "B-01", "line": "c33a78cc22f69613", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','0de63bd94cfd3c94c8f1219cfe38ebfa9bb56a4ec52684df843b4b130f24ab86','bin','122a56aa6a826de0','W002',0,1,1,'7b87679c70b0e23f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "850503622b61e4d0", "order_number": "B-01", "line": "7b87679c70b0e23f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','54ae6e05b41b8ca59c328bdc55e9c89f45b3347e12f11d2e062a926e52303704','bin','122a56aa6a826de0','S002',0,1,1,'714792f17852a9a5',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9729dba8987a4", "order_number": "B-03", "line": "714792f17852a9a5", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','929c0eda81cda8da4c729cd748f4eb89a9b021891936de52dc6d2d00fa878824','bin','122a56aa6a826de0','S003',0,1,1,'ed68ec1ec1b05b49',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "2dd9729dba8987a4", "order_number": "B-03", "line": "ed68ec1ec1b05b49", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','74212c2767c4a72c429b658588fe3c55ca0b2902a29bc91a0a171466464e30f7','bin','122a56aa6a826de0','S004',0,1,1,'fe3afe25e756121f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ae946c5b9cb0bc12", "order_number": "B-04", "line": "fe3afe25e756121f", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','5c7470e56f2b47f00355331a7a31adc0a917ba1b655dcfba88272a4de3bc1631','bin','122a56aa6a826de0','S005',0,1,1,'8212dfa7657b113f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "ae946c5b9cb0bc12", "order_number": "B-04", "line": "8212dfa7657b113f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','df6b766e1a5640485e5869a3d9acb117cb139a4aeb7d1c6cc794cad77a76bc7f','bin','122a56aa6a826de0','L006',0,1,1,'23b922fe777c20fe',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "0542a44a4644597b", "order_number": "B-09", "line": "23b922fe777c20fe", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','a7a784bf59efeba53ea0f5a469f3f8918b3a04238c623065197a23e50a4d3ebd','bin','122a56aa6a826de0','L011',0,1,1,'3978d5a5da1f3103',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "0542a44a4644597b", "order_number": "B-09", "line": "3978d5a5da1f3103", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','e3d7fef05cbd3efab8b20e60c3ab7fbc7fae37839c82d1038f20ee126ccc9c73','bin','122a56aa6a826de0','S006',0,1,1,'e73cd32139336fb3',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "8ad1bb76a58cf501", "order_number": "B-13", "line": "e73cd32139336fb3", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','eeacca6ca2bd731be07a7465fbe6a5d7b8cf90b7852427c8a4b220e25ce3e1bf','bin','122a56aa6a826de0','S007',0,1,1,'1df7a6e0ba289161',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "99f1a10a60e031aa", "order_number": "B-22", "line": "1df7a6e0ba289161", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','8d6884d3aa95c73fb91d67ab3339e1e196efd880d30056f515863ae0aee3defb','bin','122a56aa6a826de0','W007',0,1,1,'c9412a59f62be32e',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "c918e06210676eb1", "order_number": "B-23", "line": "c9412a59f62be32e", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','5b8be1502fb73e52412f3d4297c480f18ecb62430d10c73766567fad4714603b','bin','122a56aa6a826de0','W008',0,1,1,'c654c33825cc63b7',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "c918e06210676eb1", "order_number": "B-23", "line": "c654c33825cc63b7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'714792f17852a9a5','dee63fe6efadad2e','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9729dba8987a4", "order_number": "B-03", "line": "714792f17852a9a5", "line_state": "picked", "order_state": "picking", "parcel": "dee63fe6efadad2e", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'c33a78cc22f69613','dee63fe6efadad2e','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "850503622b61e4d0", "order_number": "B-01", "line": "c33a78cc22f69613", "line_state": "packed", "order_state": "picking", "parcel": "dee63fe6efadad2e", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'7b87679c70b0e23f','dee63fe6efadad2e','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "850503622b61e4d0", "order_number": "B-01", "line": "7b87679c70b0e23f", "line_state": "released", "order_state": "released", "parcel": "dee63fe6efadad2e", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'c33a78cc22f69613',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "850503622b61e4d0", "order_number": "B-01", "line": "c33a78cc22f69613", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'c9412a59f62be32e','d101e96c7c97440f','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "c918e06210676eb1", "order_number": "B-23", "line": "c9412a59f62be32e", "line_state": "packed", "order_state": "waiting", "parcel": "d101e96c7c97440f", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'fe3afe25e756121f','242a1eea45f60cd7','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "ae946c5b9cb0bc12", "order_number": "B-04", "line": "fe3afe25e756121f", "line_state": "packed", "order_state": "picking", "parcel": "242a1eea45f60cd7", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'23b922fe777c20fe','d032baa4728ddb54','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "0542a44a4644597b", "order_number": "B-09", "line": "23b922fe777c20fe", "line_state": "packed", "order_state": "picking", "parcel": "d032baa4728ddb54", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'714792f17852a9a5','995fe11d4a72caa0','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "2dd9729dba8987a4", "order_number": "B-03", "line": "714792f17852a9a5", "line_state": "packed", "order_state": "picking", "parcel": "995fe11d4a72caa0", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','49be309490816be0ab3e021329fef4eb26acfb4f0478ba84c42dff0f00c32aa2','bin','7ad30afda3814f8f','L002',0,1,1,'c2f0774ea44416a8',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "0bddeb76cf00c8cd", "order_number": "B-05", "line": "c2f0774ea44416a8", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','e2414ed6847dd605703afd3ec64bd6f708b49790bc7e0cb2d5b73a6eb0b80a60','bin','7ad30afda3814f8f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','1bbe2d647c7a33dcbdf7f007fcb204b499bf80ba9035e2ce00a2bf76cbc1e0ce','bin','7ad30afda3814f8f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','e73035c08105033961595cfc592824b41b31b716fa2e72f91a2b99aee8d3effc','bin','7ad30afda3814f8f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'b63df39887c7aa2f','e28aa9c00ce4bdfc','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'a0435dbd4ece2167','349b17d9753d3fc2','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'eb7dff8c0c1e99a6','af4fa7b656e33fc1','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'1d3aded6af72e260','7b93d4b7227ca043','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'ff40a592c4779090','f0ee08e0d7e80423','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'42149f0656079598','d5634eca26d76e51','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'197fc61a74706b3e','50d9e4f2682ea41b','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'4392ec8ff5bd77e7','d6865522c4059642','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'3934b808528a70fa','322657f37d909b72','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'3aab968feb47bd10','7b55d5b91c7ada8a','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'7774db4df098b211','372b543ef6c351a2','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'948783af7539b712','16417b6e611296b8','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'d38f9ac39f35980a','9cb2359a9d600d70','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'ccdf0edb4c19c1c7','27f679ead5eaf487','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'0aa678167c45a934','5018d8b49c27f949','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'551af359cd4e25dc','82e4514537a1c757','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'d17ce63131ba6835','a379a61300bfc4f2','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'3436fc36860c1510','e34c7384da61fe0c','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'a7ae4015c91cd34a','445bc2723721e42a','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'e3b8d6d9a9cfbebb','15bbfd44d6ba9b75','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'aa6e2b107c09965e','9b217383dd05e156','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'9b76b5b65d7c394f','3517ba55a8e0fe6c','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'840de3ba8ab49917','5510c0e02daadd58','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'e22d9f35fe2a3672','c2a5700d95acfabd','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'9080b50444bcaff2','724ea95de41870fa','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'6e2aadfbb33a477b','06afece9ebc3d715','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'778fa01d45acac71','8621b706964b2f25','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'d3a3205edcc9463f','f1ccaf5afed12ca9','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'a7b6fd0f8c6f1e81','430d43253158b621','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'6bd2db4a859452c3','ad3ab1afdc87c2b6','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'d49a1a7aa5c358f2','d03fa4330bb86ca5','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'5aebcd7804b8095a','5e480304fb5850e2','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'6258186f332218b0','9b0478822950572f','L009',1,'2026-03-02T10:11:00.000000+00:00','withdrawn','2026-03-02T16:28:00.000000+00:00','Nowhere to be found');
INSERT INTO "stays" VALUES(34,'84a2c91a735ab716','6ac0902089b1854d','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'c198048fa514ab86','d315c9c257cef653','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'ea33a804940beca4','55565cf8a20b2a25','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'8b4dceea0fa03322','a26dd8e94b32c019','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'9c7f9891f47056b8','73087c319635c7d8','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'29e439fe13c6f8e5','5cc820dc42f17f3a','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'00efab1b16fbd714','0cb82548dfe52c67','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'d24e30a0fe2ed91e','f1959e73dfc92159','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'6e6a1e36ab1dabed','41124941450d3901','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'34d25f09a770f6b1','df88da1826cf9312','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'1c5700cb3edc4f1a','2d490a5bd1b40cfd','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'c7fd9cc4dbf58be9','eb5897ad99364cd6','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'678c5df196b353d9','1d0bb595a25fd102','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'4e9252dd2f8c9d7e','4ba0b07a7538750b','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'0a3a02673c899c7f','395e6058600b10e7','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'a182937da04dbf5c','40adcd46d825b397','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'34b6536a991900f6','9b217383dd05e156','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'0795033127f3a1ae','d6865522c4059642','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'4b13ce18f2f7917c','7934f5dac15938ce','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
CREATE TABLE stocktakes (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	area VARCHAR(64) NOT NULL, 
	note TEXT NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	seq INTEGER NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	closed VARCHAR(32), 
	report TEXT NOT NULL, 
	CONSTRAINT pk_stocktakes PRIMARY KEY (n), 
	CONSTRAINT uq_stocktakes_id UNIQUE (id)
);
INSERT INTO "stocktakes" VALUES(1,'ca710de99092f509','section:S','Spring','2026-03-02T15:39:00.000000+00:00',154,'closed','2026-03-02T16:12:00.000000+00:00','{"stocktake": "ca710de99092f509", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "places": 2, "looked": 2, "not_looked": [], "unclear": [], "differing": ["B-1-1", "B-1-2"], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0, "agreement": null}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1, "agreement": [0.1466, 0.9473]}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S001", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S001": "Leather saddle 1", "suspect-S003": "Leather saddle 3"}}');
INSERT INTO "stocktakes" VALUES(2,'8404231c2976e5cd','section:L','Spring','2026-03-02T16:15:00.000000+00:00',162,'open',NULL,'');
INSERT INTO "stocktakes" VALUES(3,'31318b18b123452a','tray','Too late today','2026-03-02T16:31:00.000000+00:00',168,'cancelled','2026-03-02T16:34:00.000000+00:00','');
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
INSERT INTO "stops" VALUES(1,'122a56aa6a826de0',1,'714792f17852a9a5','B-1-1');
INSERT INTO "stops" VALUES(2,'122a56aa6a826de0',2,'ed68ec1ec1b05b49','B-1-1');
INSERT INTO "stops" VALUES(3,'122a56aa6a826de0',3,'fe3afe25e756121f','B-1-1');
INSERT INTO "stops" VALUES(4,'122a56aa6a826de0',4,'8212dfa7657b113f','B-1-1');
INSERT INTO "stops" VALUES(5,'122a56aa6a826de0',5,'e73cd32139336fb3','B-1-1');
INSERT INTO "stops" VALUES(6,'122a56aa6a826de0',6,'1df7a6e0ba289161','B-1-1');
INSERT INTO "stops" VALUES(7,'122a56aa6a826de0',7,'c33a78cc22f69613','D-1-1');
INSERT INTO "stops" VALUES(8,'122a56aa6a826de0',8,'7b87679c70b0e23f','D-1-1');
INSERT INTO "stops" VALUES(9,'122a56aa6a826de0',9,'c9412a59f62be32e','D-1-1');
INSERT INTO "stops" VALUES(10,'122a56aa6a826de0',10,'c654c33825cc63b7','D-1-1');
INSERT INTO "stops" VALUES(11,'122a56aa6a826de0',11,'23b922fe777c20fe','C-1-1');
INSERT INTO "stops" VALUES(12,'122a56aa6a826de0',12,'3978d5a5da1f3103','C-1-2');
INSERT INTO "stops" VALUES(13,'7ad30afda3814f8f',1,'9af4a1c349638eae','A-1-2');
INSERT INTO "stops" VALUES(14,'7ad30afda3814f8f',2,'c2f0774ea44416a8','C-1-1');
INSERT INTO "stops" VALUES(15,'7ad30afda3814f8f',3,'c4800a7e7b55acc9','C-1-1');
INSERT INTO "stops" VALUES(16,'7ad30afda3814f8f',4,'b6fe5b5313647041','C-1-1');
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
