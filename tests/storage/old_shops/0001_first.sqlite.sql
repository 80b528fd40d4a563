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
INSERT INTO "access" VALUES(1,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$9Wi/Eun/fBSzCtFF+9BUag$hGEz2AXWDyTR8t2LZ+kkMda3mhbQ0JgL1srVPJTT35U','owner','password','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'9c89c03d0670e8279fe65e60ac5c6dc62dad8bf6b80f4edae55b49c71b51b6e1','owner','owner','session','2026-03-02T08:01:00.000000+00:00','2026-03-16T08:01:00.000000+00:00');
INSERT INTO "access" VALUES(3,'f991255abe28b4064642fefadb157be9b2c3a28bcd1366db193ba95a40b1b768','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(4,'ac8407fe798d4af70d78874d3d0449b877f9251c3ef1d91f33e98a3bf19fcc5d','label printer','program','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'f3735c495c52547ee8d603ee621a4af98c1bda171fdb187aaebe5bbbf8ce5eea','helper','helper','token','2026-03-02T08:01:00.000000+00:00',NULL);
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0001');
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
INSERT INTO "head" VALUES(1,146,'ca728c242786a9678d0a9052e9dca8c81115b90ab91b3849d21032b5bcf113f2','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles"}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'7eff1906f108a5eb','Rear derailleur 1','L-D1','Scratched, “used”');
INSERT INTO "items" VALUES(2,'c8941a8e5e53d448','Rear derailleur 2','L-D2','Cable is new');
INSERT INTO "items" VALUES(3,'b32a0657ec9569a4','Rear derailleur 3','L-D3','Scratched, “used”');
INSERT INTO "items" VALUES(4,'3ecc93aa32f0295b','Rear derailleur 4','L-D4','Scratched, “used”');
INSERT INTO "items" VALUES(5,'d8d5784334093fa0','Rear derailleur 5','L-D5','Scratched, “used”');
INSERT INTO "items" VALUES(6,'b3fd84d0e04981a0','Rear derailleur 6','L-D6','Scratched, “used”');
INSERT INTO "items" VALUES(7,'57c1b504f9de4573','Rear derailleur 7','L-D7','Scratched, “used”');
INSERT INTO "items" VALUES(8,'162413f433c8d286','Rear derailleur 8','L-D8','Scratched, “used”');
INSERT INTO "items" VALUES(9,'5dacebe68e8d55ed','Rear derailleur 9','L-D9','Scratched, “used”');
INSERT INTO "items" VALUES(10,'7b58a57d7d3fe478','Rear derailleur 10','L-D10','Scratched, “used”');
INSERT INTO "items" VALUES(11,'6d9570eadd87e0bb','Rear derailleur 11','L-D11','Scratched, “used”');
INSERT INTO "items" VALUES(12,'0f396eeb8de042fa','Rear derailleur 12','L-D12','Scratched, “used”');
INSERT INTO "items" VALUES(13,'f57e1d4461f864b2','Leather saddle 1','L-S1','Scratched, “used”');
INSERT INTO "items" VALUES(14,'905af5971da77067','Leather saddle 2','L-S2','Scratched, “used”');
INSERT INTO "items" VALUES(15,'2904eba4f9b26110','Leather saddle 3','L-S3','Scratched, “used”');
INSERT INTO "items" VALUES(16,'4a8031e103a32e57','Leather saddle 4','L-S4','Scratched, “used”');
INSERT INTO "items" VALUES(17,'52b628d9477df03c','Leather saddle 5','L-S5','Scratched, “used”');
INSERT INTO "items" VALUES(18,'e9c91ef1b5f17bba','Leather saddle 6','L-S6','Scratched, “used”');
INSERT INTO "items" VALUES(19,'5b43fd40bbf431da','Leather saddle 7','L-S7','Scratched, “used”');
INSERT INTO "items" VALUES(20,'594dfc538d6d2ab3','Leather saddle 8','L-S8','Scratched, “used”');
INSERT INTO "items" VALUES(21,'b9521ca05ba1700b','Leather saddle 9','L-S9','Scratched, “used”');
INSERT INTO "items" VALUES(22,'7449f2c042691312','Leather saddle 10','L-S10','Scratched, “used”');
INSERT INTO "items" VALUES(23,'07f1c769731e8455','Leather saddle 11','L-S11','Scratched, “used”');
INSERT INTO "items" VALUES(24,'11ad1b96ddd9ea7f','Leather saddle 12','L-S12','Scratched, “used”');
INSERT INTO "items" VALUES(25,'1c078a660fff9bce','Dynamo lamp 1','L-L1','Scratched, “used”');
INSERT INTO "items" VALUES(26,'15babe80c49379ce','Dynamo lamp 2','L-L2','Scratched, “used”');
INSERT INTO "items" VALUES(27,'f2262e464dc2e74a','Dynamo lamp 3','L-L3','Scratched, “used”');
INSERT INTO "items" VALUES(28,'54f6625111277145','Dynamo lamp 4','L-L4','Scratched, “used”');
INSERT INTO "items" VALUES(29,'e06ffc0765ea9255','Dynamo lamp 5','L-L5','Scratched, “used”');
INSERT INTO "items" VALUES(30,'deb453f3c5f29a52','Dynamo lamp 6','L-L6','Scratched, “used”');
INSERT INTO "items" VALUES(31,'15149360298ed88c','Dynamo lamp 7','L-L7','Scratched, “used”');
INSERT INTO "items" VALUES(32,'533790368e6f9617','Dynamo lamp 8','L-L8','Scratched, “used”');
INSERT INTO "items" VALUES(33,'6cbe262d9ccfc112','Dynamo lamp 9','L-L9','Scratched, “used”');
INSERT INTO "items" VALUES(34,'73e92280d059db5b','Dynamo lamp 10','L-L10','Scratched, “used”');
INSERT INTO "items" VALUES(35,'16b0ba12f65b8b01','Dynamo lamp 11','L-L11','Scratched, “used”');
INSERT INTO "items" VALUES(36,'e9446c1bdae12144','Dynamo lamp 12','L-L12','Scratched, “used”');
INSERT INTO "items" VALUES(37,'7aaa821583d67a9a','Front wheel 1','L-W1','Scratched, “used”');
INSERT INTO "items" VALUES(38,'cf8af80cb1a870e5','Front wheel 2','L-W2','Scratched, “used”');
INSERT INTO "items" VALUES(39,'b269e8a9ffbe5c09','Front wheel 3','L-W3','Scratched, “used”');
INSERT INTO "items" VALUES(40,'6b70d32c2b5a9217','Front wheel 4','L-W4','Scratched, “used”');
INSERT INTO "items" VALUES(41,'2049210fd0d548c2','Front wheel 5','L-W5','Scratched, “used”');
INSERT INTO "items" VALUES(42,'6d3bcc04a679b3f3','Front wheel 6','L-W6','Scratched, “used”');
INSERT INTO "items" VALUES(43,'0a1f816624db6f2d','Front wheel 7','L-W7','Scratched, “used”');
INSERT INTO "items" VALUES(44,'21608aef83b05d75','Front wheel 8','L-W8','Scratched, “used”');
INSERT INTO "items" VALUES(45,'f262a7a197714426','Front wheel 9','L-W9','Scratched, “used”');
INSERT INTO "items" VALUES(46,'31c7b7f4f6197091','Front wheel 10','L-W10','Scratched, “used”');
INSERT INTO "items" VALUES(47,'aa675f17a534ef28','Front wheel 11','L-W11','Scratched, “used”');
INSERT INTO "items" VALUES(48,'8627b3391423aa13','Front wheel 12','L-W12','Scratched, “used”');
INSERT INTO "items" VALUES(49,'177260573e8a4d86','Brass bell','','');
INSERT INTO "items" VALUES(50,'98d5196e5c4edf44','Rear wheel','','');
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
INSERT INTO "ledger" VALUES(2,'2026-03-02T08:01:00.000000+00:00','token made','owner','{"name":"label printer","role":"program"}','0b0ed84054963b8bd50638d30a6ffe840131923dc2c83adbcfcb5c1870942eed');
INSERT INTO "ledger" VALUES(3,'2026-03-02T08:01:00.000000+00:00','token made','owner','{"name":"helper","role":"helper"}','fec6d811c0b0c0f5a598f71abc88663d9f41d59c5b172ad6e2f7efced9fd53ea');
INSERT INTO "ledger" VALUES(4,'2026-03-02T08:02:00.000000+00:00','section added','owner','{"colour":"yellow","name":"Derailleurs","section":"D","slots_per_bin":10}','c636450eeb05aad2c624b5f1d002c8a34e66413098cf7db3235ccf0094537178');
INSERT INTO "ledger" VALUES(5,'2026-03-02T08:03:00.000000+00:00','slots added','owner','{"first":"D001","last":"D030","section":"D"}','1ea83cd8081a654665d434329b12e09f48dd4573ee473169622640c0aec290cf');
INSERT INTO "ledger" VALUES(6,'2026-03-02T08:04:00.000000+00:00','section added','owner','{"colour":"pink","name":"Saddles","section":"S","slots_per_bin":10}','290be6dd2c22102164d2c821a37e07c949baebe577b723e2ca55fc918b59c055');
INSERT INTO "ledger" VALUES(7,'2026-03-02T08:05:00.000000+00:00','slots added','owner','{"first":"S001","last":"S015","section":"S"}','79424ad7059e9be24d3b4e87c5b3354a6a3f59832abc5bd7330112a6f394d2c4');
INSERT INTO "ledger" VALUES(8,'2026-03-02T08:06:00.000000+00:00','section added','owner','{"colour":"green","name":"Lamps","section":"L","slots_per_bin":10}','4df76fcb3acf7022ead8fd78903fb61dc58bc4016d1caddd335158706b420e2d');
INSERT INTO "ledger" VALUES(9,'2026-03-02T08:07:00.000000+00:00','slots added','owner','{"first":"L001","last":"L015","section":"L"}','84de85bcd479def46cc146d2d4ad6d919e2655ba52bbb8d70a7a2c58ee916e03');
INSERT INTO "ledger" VALUES(10,'2026-03-02T08:08:00.000000+00:00','section added','owner','{"colour":"blue","name":"Wheels","section":"W","slots_per_bin":10}','255a9aa1d307152117cbe07acdb98e7de9d9237486908d840dfeaa3b6cb51716');
INSERT INTO "ledger" VALUES(11,'2026-03-02T08:09:00.000000+00:00','slots added','owner','{"first":"W001","last":"W015","section":"W"}','55050c802cd83502e7d44f04e9b0f2f7a986f1f3ad01e82eef1cbf62fda6c0db');
INSERT INTO "ledger" VALUES(12,'2026-03-02T08:10:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"30ad7ad0b32e5509","title":"Rear derailleur 1","turn":1}','d066b99be7f4e7b25018482c06af56cda62052ad34f03771ae9723b9c195e663');
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:12:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"dd820363a09c1b85","title":"Rear derailleur 2","turn":1}','41ab28eb03e71f06bb2c0cfd1b3d48ac5864e1459019ff768c3a36edf1c8b205');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:14:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"3dc5500dba42cb2a","title":"Rear derailleur 3","turn":1}','6da7be5bda47e244ba40b40821b6ac45c21baf87d8f607e883810d1d98e686ac');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:16:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"dad26082edb04e46","title":"Rear derailleur 4","turn":1}','c2ac305bd174a9bf4e7c356d9747a8b15ceb47b0e94d136961bb4060058c0048');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:18:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"d28dbe25d2e010d7","title":"Rear derailleur 5","turn":1}','047926635f4ee6768808076e2831b8048902ffa39f8b252d6aba103459ccab5e');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:20:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"20bfb8ba0b2077f7","title":"Rear derailleur 6","turn":1}','6d6f9de145f18676fb7268629c277bc7fecb1f7fe837ac96b9f9f4ca36caea11');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:22:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"3c232debbccfd182","title":"Rear derailleur 7","turn":1}','d5202eb4d7609f881a135f63fee2e0c1014550330c33324a328889e94dfca8a0');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:24:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"cbdefca11e121624","title":"Rear derailleur 8","turn":1}','bfe7975390f7f3cf71df463cb9c3ddd3502f63a453508ebbe6ad5960e40d7cbb');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:26:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"506877583d0066ba","title":"Rear derailleur 9","turn":1}','86487cc598bf33ef3791a11f0d71dba5d24593eb992145d85f4b4398e8b24d61');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:28:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"aa7e93648fec23c0","title":"Rear derailleur 10","turn":1}','95f68bfc78d8c7505c8db195012d2a80fd44c152fbb8fcb9fc47476fb072b921');
INSERT INTO "ledger" VALUES(22,'2026-03-02T08:30:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"1cbc520433de5b79","title":"Rear derailleur 11","turn":1}','7a72ae7fbc2a4f615c1ed4b9ccd778e098f56a65be80502d3e12fa3d418e34ba');
INSERT INTO "ledger" VALUES(23,'2026-03-02T08:32:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"62bf87d3d4e3e450","title":"Rear derailleur 12","turn":1}','33b2ee82fb12592f26ea8303762feb1f757a10d598d85f0603176641fa620ce1');
INSERT INTO "ledger" VALUES(24,'2026-03-02T08:34:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"8669a6848cdbf338","title":"Leather saddle 1","turn":1}','53d4c6df45c06b3f7382566822ce87ded1d859fdcdfc4fbed5ac5cf6e85fb251');
INSERT INTO "ledger" VALUES(25,'2026-03-02T08:36:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"1deb906b7dea506f","title":"Leather saddle 2","turn":1}','dd1ea237bf1b704def83bb54e317b5549718ad61226a4ca1d4355350f37c33f9');
INSERT INTO "ledger" VALUES(26,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"f80ab345618e4d22","title":"Leather saddle 3","turn":1}','62d78d454d1c4a8c08962393ae8f8162494f5d0c747f03ac17ce4fde9b19458d');
INSERT INTO "ledger" VALUES(27,'2026-03-02T08:40:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"49b639cc387082fb","title":"Leather saddle 4","turn":1}','4da7ff2e1e13b1052fffd370fa06fc06a6bc8ad28e03f10bf7dd43565360d731');
INSERT INTO "ledger" VALUES(28,'2026-03-02T08:42:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"9d1f45222c39d3b9","title":"Leather saddle 5","turn":1}','ca920b72bc8eeff9dd606df37cb27f37de65e2a1967f19261e750e3bbf0b99f9');
INSERT INTO "ledger" VALUES(29,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"10a853bffbf5d465","title":"Leather saddle 6","turn":1}','032a0b628b184d29e8275aaf483cf3045c25a65275eaa3c614d21ffada3112c9');
INSERT INTO "ledger" VALUES(30,'2026-03-02T08:46:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"2c4bf466509a0482","title":"Leather saddle 7","turn":1}','e157f8e173bdcd7c5287ae0d9299948e73c1f86022ddea8b7fbb5e78c94e2165');
INSERT INTO "ledger" VALUES(31,'2026-03-02T08:48:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"1f3a805b062e594a","title":"Leather saddle 8","turn":1}','3f66192a412fb5d59cfafdb179c417daf5ae6ba6a8e35825bff7be2eaa699e84');
INSERT INTO "ledger" VALUES(32,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"d678e555cac04feb","title":"Leather saddle 9","turn":1}','3e57f0913cd3bb075cbe7dda3d18e27b4293a0147e9a995fc9fb28bf4e60db17');
INSERT INTO "ledger" VALUES(33,'2026-03-02T08:52:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"f3b3b2dd1d94ffcb","title":"Leather saddle 10","turn":1}','d492e943da03475da4f750ab7cd41cff91dc132efa3e072ff8681c0e70e2136e');
INSERT INTO "ledger" VALUES(34,'2026-03-02T08:54:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"c36e26c1ec1b10ab","title":"Leather saddle 11","turn":1}','ee3cdb92cd9dde7f441b7f8ab980c3d50874f1dcb56d411fe92542b38b55cde9');
INSERT INTO "ledger" VALUES(35,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"49a5bd0d552331fd","title":"Leather saddle 12","turn":1}','f217df8f1f5d91810d39cd8440350f9055830b48f220eb34121623a08d74854a');
INSERT INTO "ledger" VALUES(36,'2026-03-02T08:58:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"37bedebbc57695c1","title":"Dynamo lamp 1","turn":1}','95946e1abbcd7f582f34026c1364cfcdee9e36643543ecc667897f5d262a8b31');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:00:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"c722d305e66093e2","title":"Dynamo lamp 2","turn":1}','d961673949adc8e92ccd8bcd845079dc6f9c4b41a4e0c48d1114412156099093');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"91fdfa4c7d685203","title":"Dynamo lamp 3","turn":1}','2f9d856eedb7d5c8ba33c3e019b9665a481e31f9081960db3c12114c5839f15c');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:04:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"491323ca990dbf12","title":"Dynamo lamp 4","turn":1}','9510a32c5897921f3fc0e08fee54496c1e93fe180cd40a84bc473cd0bfcc410f');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:06:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"adc8e64c06dbfb0e","title":"Dynamo lamp 5","turn":1}','5e6dc7d9acabacf4952f1ff260068c94fe924c0d906a758be17cb5dd3895ea3b');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"9c51aebff8847c85","title":"Dynamo lamp 6","turn":1}','76df7d4a680f17404db430989ac9a9f048816b584beb6b88512bd174791cc748');
INSERT INTO "ledger" VALUES(42,'2026-03-02T09:10:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"fcc6067156fcb561","title":"Dynamo lamp 7","turn":1}','be71ce84bbd006df31de1d03f0d535ef7825949082f042772ba63b23df3efab0');
INSERT INTO "ledger" VALUES(43,'2026-03-02T09:12:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"7292e50ca77bc747","title":"Dynamo lamp 8","turn":1}','386d3dbc23639d35b3d3d85fdc623b300fcc59d2a8e260769c9f1cd0afc65da0');
INSERT INTO "ledger" VALUES(44,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"aff1d6a9f0c9f7b5","title":"Dynamo lamp 9","turn":1}','640ae7ba4320ad10a1fa1881bb7c2c74091159e5dae8a73f12e1324de40d7c4e');
INSERT INTO "ledger" VALUES(45,'2026-03-02T09:16:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"dbe761719e7ce927","title":"Dynamo lamp 10","turn":1}','aee87fa118d5fa793b322b8bda8d2f91ec3bbe0ad464bcd9c4d8ac7a1a3ab087');
INSERT INTO "ledger" VALUES(46,'2026-03-02T09:18:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"aae505ed4a9e14a8","title":"Dynamo lamp 11","turn":1}','de9dbfb44f5b66aac1c709e21dfd5246959b0d895d7bf1108ce8c19bad54aa47');
INSERT INTO "ledger" VALUES(47,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"073be3a6c3636af7","title":"Dynamo lamp 12","turn":1}','c9c099210e671968d982344e5bad13b3f766fb632d5889be6d9d99dd8c25ff35');
INSERT INTO "ledger" VALUES(48,'2026-03-02T09:22:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"06fdb5be1f64df9b","title":"Front wheel 1","turn":1}','b6322235011b58a2b325218cba97f47bebf8f28decb51b2f65611bdddf8f37e2');
INSERT INTO "ledger" VALUES(49,'2026-03-02T09:24:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"11a0b728b71a4200","title":"Front wheel 2","turn":1}','04bb7cab8f29f123928de1d4e335ff64e0ea533e5f0fd16259511cdac2ba1477');
INSERT INTO "ledger" VALUES(50,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"2a78fa3918c13a12","title":"Front wheel 3","turn":1}','452b147718c5507ea59b2c81ac54b4f4e62aaf15f8934fa9d1d48b777d43d780');
INSERT INTO "ledger" VALUES(51,'2026-03-02T09:28:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"003785b211fcd8fb","title":"Front wheel 4","turn":1}','0c339f44df859bc374622a79f98fb2629bdc456cd215c4fb82e2b10409e5973a');
INSERT INTO "ledger" VALUES(52,'2026-03-02T09:30:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"c4b31a7cba6bec97","title":"Front wheel 5","turn":1}','d7fa0fcb7fcb4332abf5040e0ea3a6e72c1f2f2a367bc1a57d6e4ab1ecba7dee');
INSERT INTO "ledger" VALUES(53,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"5087f956ba3baa67","title":"Front wheel 6","turn":1}','14ff83858b53c87e98a1aeb681992aa25cf068ffb6ac68e695d27984f0b08179');
INSERT INTO "ledger" VALUES(54,'2026-03-02T09:34:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"2634babd89f16d94","title":"Front wheel 7","turn":1}','e6fbb8b12e96c3aa8da067a715978f5b0655c18d3a1bbe55e43999b7fc71c248');
INSERT INTO "ledger" VALUES(55,'2026-03-02T09:36:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"b43d74566698fcea","title":"Front wheel 8","turn":1}','e687fb72c6e193ded578dc01df4d4137f336810c12c749b963d82399e22d17d2');
INSERT INTO "ledger" VALUES(56,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"8990a4985fa48731","title":"Front wheel 9","turn":1}','786287fa5481b29bf02cf218726b83bd72db02a7f6e67be9dba8da5e3d3d83f9');
INSERT INTO "ledger" VALUES(57,'2026-03-02T09:40:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"e3e34d42aadd94a3","title":"Front wheel 10","turn":1}','f6bae4f8d7c0baa926f60e5b8c138a1ab66abd6542cfef097d315744b042a6be');
INSERT INTO "ledger" VALUES(58,'2026-03-02T09:42:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"ec98ef10e435030d","title":"Front wheel 11","turn":1}','05b4955e2cbb6983282ab332e2e58deaef4812c6b267cc41d301c8ef862fc376');
INSERT INTO "ledger" VALUES(59,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"7b7bbe5e66de4c1d","title":"Front wheel 12","turn":1}','3820c9cac49e8e7262f454a7d50f5efaaa0b480c353847ff83fbff07c54d930d');
INSERT INTO "ledger" VALUES(60,'2026-03-02T09:46:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"0b2f5b8744bdaa62","title":"Brass bell","turn":1}','68ec6d8e3b02d01062e33624f7037178eaca4e831921edb5089c6d81ced6cef2');
INSERT INTO "ledger" VALUES(61,'2026-03-02T09:48:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"dd820363a09c1b85"}','7eeda04c3370a1aa615784e07c4e740b99a05deb2ffdcc5ad9ef64e5076058b4');
INSERT INTO "ledger" VALUES(62,'2026-03-02T09:49:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"f3b3b2dd1d94ffcb"}','fde03c5e144eca3aa1e03c825ba2b1c66a19bf39f52e07226d3f5be7dcb2d605');
INSERT INTO "ledger" VALUES(63,'2026-03-02T09:50:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"003785b211fcd8fb"}','6785db902bad12e612538d919a9e9e76d7dfef5ce9b4e91cd31d3401407333b9');
INSERT INTO "ledger" VALUES(64,'2026-03-02T09:51:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"23f1aa70bd126956","stay":"d678e555cac04feb","to":"S013"}','b414a74c300b117059b498152df7a002d6946d4ccdae4d1918f570092c160d4c');
INSERT INTO "ledger" VALUES(65,'2026-03-02T09:53:00.000000+00:00','settings changed','owner','{"auto_close":true,"name":"Gears & Saddles","scan_at_bin":true,"zone":"UTC"}','60fff07e724bbe9c5d8c23fe3ffcfb579bc18f7cf831d00d3bc38e9af82b4351');
INSERT INTO "ledger" VALUES(66,'2026-03-02T09:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3adabf3758f01943","reference":"W001-01E","stay":"06fdb5be1f64df9b"},{"hold":null,"line":"9191d08cf11a8479","reference":"W002-016","stay":"11a0b728b71a4200"}],"number":"B-01","order":"975b5daee482b79d"}','fb88e84fdf71a8c986b27b17cbabdb4cc888a7a0a35fbf23929fa967ebb10f8e');
INSERT INTO "ledger" VALUES(67,'2026-03-02T09:56:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"dd5c0cc366a0272b","reference":"S002-013","stay":"1deb906b7dea506f"},{"hold":null,"line":"924e66219c31e4e7","reference":"S003-01W","stay":"f80ab345618e4d22"}],"number":"B-03","order":"cb52fb36f959e321"}','d4788ccb05cdda6d6886b73821c49588cb5d8547da5e14cbf13d89ccdb479e4e');
INSERT INTO "ledger" VALUES(68,'2026-03-02T09:58:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"44c5c367f63a1d70","reference":"S004-01O","stay":"49b639cc387082fb"},{"hold":null,"line":"c7f33078f1adc83d","reference":"S005-01G","stay":"9d1f45222c39d3b9"}],"number":"B-04","order":"df29e115d815e60b"}','af964314e273a444dccfb24bb274b34c675bc33713fdce285e1c4bbc6fd6f71c');
INSERT INTO "ledger" VALUES(69,'2026-03-02T10:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d240ba15033a6b07","reference":"L002-017","stay":"c722d305e66093e2"}],"number":"B-05","order":"7bc5faf66bed9b53"}','02dcf8cd50611fead3a44c0487409a1ac92ee8b9bb1cae256d5fe8381b4e66ed');
INSERT INTO "ledger" VALUES(70,'2026-03-02T10:02:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"04f1066ffab7b3e2","reference":"L003-010","stay":"91fdfa4c7d685203"}],"number":"B-06","order":"1c19f35054b258d8"}','97c09ce0feffc5f712818e30dd845fe725ef1efbf0e8771b9338bd8e0f388b97');
INSERT INTO "ledger" VALUES(71,'2026-03-02T10:04:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"751df91f36000d82","reference":"L004-01S","stay":"491323ca990dbf12"}],"number":"B-07","order":"559dfc8ff0c9aa65"}','e40682658843d9a9ff907db027f967437783b9c662c47716b95092f6e1c45397');
INSERT INTO "ledger" VALUES(72,'2026-03-02T10:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c19c95cf15ebae51","reference":"L005-01K","stay":"adc8e64c06dbfb0e"}],"number":"B-08","order":"d52d2c51ef4d39e7"}','084c7e4d66b713289fea1ff96d1ff028fb9c665c8e9ab7170154afc25417a9e5');
INSERT INTO "ledger" VALUES(73,'2026-03-02T10:08:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"aea3fd5c974a9a6c","reference":"L006-01C","stay":"9c51aebff8847c85"},{"hold":null,"line":"bdce101f33f8a51d","reference":"L011-010","stay":"aae505ed4a9e14a8"}],"number":"B-09","order":"8e1618246757f1e0"}','201a65d07bfd9a748f1c5f94a1d37b3e658619b547623949c4188e675de593d7');
INSERT INTO "ledger" VALUES(74,'2026-03-02T10:10:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"7a501f33407fa0cd","reference":"S006-018","stay":"10a853bffbf5d465"}],"number":"B-13","order":"2518614ac8231c0c"}','43cf0354bacf26d88cdf88e392d584687003e86b3b2040304f69574d48b6101e');
INSERT INTO "ledger" VALUES(75,'2026-03-02T10:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"5329234385f93aa9","reference":"L007-014","stay":"fcc6067156fcb561"}],"number":"B-17","order":"e0fb17a7c5f58e39"}','394b3110f3586a2e250421f86e2f44e4679a0edf65f464cf65d1c76d41d1ccfb');
INSERT INTO "ledger" VALUES(76,'2026-03-02T10:14:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2684b3147b478214","reference":"D009-01B","stay":"506877583d0066ba"}],"number":"B-18","order":"cc9bb26467b738db"}','8488eb8bf9790738a6993d8c5befcb55157dd69f998698742dff60b9567b3a44');
INSERT INTO "ledger" VALUES(77,'2026-03-02T10:16:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3f4c2e88b886aab6","reference":"W006-013","stay":"5087f956ba3baa67"}],"number":"B-21","order":"b00893025989ae42"}','3dc99a58a571c2441b939b75a995b8465c9127e2b721336f524d1265d9b8fea8');
INSERT INTO "ledger" VALUES(78,'2026-03-02T10:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"aeb0ae7ade7d3858","reference":"S007-01Z","stay":"2c4bf466509a0482"}],"number":"B-22","order":"2072707bf25ae744"}','b9c5bc48775eb45b228166cccc517b735f90de7a388b9a9e601ff5e1659463cc');
INSERT INTO "ledger" VALUES(79,'2026-03-02T10:20:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"6841bc36520600fc","reference":"W007-01W","stay":"2634babd89f16d94"},{"hold":null,"line":"9e8c92ab9564d2ad","reference":"W008-01O","stay":"b43d74566698fcea"}],"number":"B-23","order":"e1f322ac4bb84a94"}','76baa2e9406123beeb90a7af8877dd766c7fe73bc2e999307859533f64c244ae');
INSERT INTO "ledger" VALUES(80,'2026-03-02T10:22:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"459f345b28b4dc18","reference":"D008-01J","stay":"cbdefca11e121624"}],"number":"B-26","order":"0d901c01ca840a94"}','2c7bbe167709eb5cec39b8dc432cb6a5a298f93e7843a378ca4c2b0cff8c80ba');
INSERT INTO "ledger" VALUES(81,'2026-03-02T10:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"7833ca5b4a68fba1","reference":"D003-01U","stay":"3dc5500dba42cb2a"}],"number":"B-30","order":"8fd4a3a87753b684"}','09dcf68de721d190a40cab2f549b24a0b61f146bb2745a0d84b01a89fe51e66b');
INSERT INTO "ledger" VALUES(82,'2026-03-02T10:26:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9c795415355e0617","reference":"D005-01E","stay":"d28dbe25d2e010d7"},{"hold":"unknown_code","line":"0241b31a0a2d8062","reference":"Z999","stay":null}],"number":"B-31","order":"2c3559abc4c7a6d6"}','0bd61499d28c2f96020f29921dbd7d64489880f1b60a2e932ede61a959375d58');
INSERT INTO "ledger" VALUES(83,'2026-03-02T10:28:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b7d2765f3f46b594","reference":"D006-016","stay":"20bfb8ba0b2077f7"},{"hold":null,"line":"31018a963aac1462","reference":"D007-01R","stay":"3c232debbccfd182"}],"number":"B-32","order":"d34a70df8ec49caf"}','9b94fefdd9b0c53ac1ad23e74cc8fcf26a499b7f721282301294f3ecf60c4578');
INSERT INTO "ledger" VALUES(84,'2026-03-02T10:30:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"31018a963aac1462","reference":"D007-01R","stay":"3c232debbccfd182"}],"number":"B-32","order":"d34a70df8ec49caf"}','4e7930ebbf8c7a159897b84a3355b8faea0916be0d5756d958083a40e6db98a5');
INSERT INTO "ledger" VALUES(85,'2026-03-02T10:32:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"0a01b2ffbccf976f","reference":"lamp","stay":null}],"number":"B-33","order":"60a93b80ac543bbf"}','5d94c7585d1a0b9532421bcf5d21351a05054270853ab26c7df8d969a5446731');
INSERT INTO "ledger" VALUES(86,'2026-03-02T10:34:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"42f8f2c056fe76ea","reference":"D006-016","stay":null}],"number":"B-34","order":"551424a6335d87b4"}','7e8295c5c3f0d20fa6091354c6150a2fb7361dc9f30c483bf55a6190566d3e7b');
INSERT INTO "ledger" VALUES(87,'2026-03-02T10:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"e4682d6c29a975d0","reference":"W004-01J","stay":null}],"number":"B-35","order":"a912a0ad32c35985"}','3cf754cbe1a96890d46c800348b8ea97f854ff0246d8d00c69e1fb57825be88c');
INSERT INTO "ledger" VALUES(88,'2026-03-02T10:38:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"a2d436774a347dcc","reference":"L015","stay":null}],"number":"B-36","order":"dbbc15f638c54094"}','932eb4e3fef20ea46a65be0e58b38c724549d08243dcdd24b05835c50630b2f3');
INSERT INTO "ledger" VALUES(89,'2026-03-02T10:40:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"0aa646a8398d25ad","reference":"W005-01B","stay":"c4b31a7cba6bec97"}],"number":"B-37","order":"3005dd874546070d"}','81ac2626647d067e5f1e93a52b848da8d42d1d8c0197556559bc8b999d81d344');
INSERT INTO "ledger" VALUES(90,'2026-03-02T10:42:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"0aa646a8398d25ad","stay":"c4b31a7cba6bec97"}','ad3ac5b3fe4ae76c6a803b00bd0c791135b586c7fc035ab579692a09840d580c');
INSERT INTO "ledger" VALUES(91,'2026-03-02T10:43:00.000000+00:00','held','owner','{"line":"5329234385f93aa9","why":"Another lamp, by the photo"}','3d88c062dca212c85395f6ccc83fe540feb010d249f965cd4b3befd391774d90');
INSERT INTO "ledger" VALUES(92,'2026-03-02T10:44:00.000000+00:00','cancelled','owner','{"lines":["c19c95cf15ebae51"],"number":"B-08","order":"d52d2c51ef4d39e7"}','73e72a0dbf6f688f155323b5dfd5031ce08d561374c4b339baa4d7bd790dbce8');
INSERT INTO "ledger" VALUES(93,'2026-03-02T10:45:00.000000+00:00','cancelled','owner','{"lines":["3f4c2e88b886aab6"],"number":"B-21","order":"b00893025989ae42"}','278ad7cee5b6b9a02d288dd2a996a6802c3fec6942ac5f6b8d751ffcee4ace26');
INSERT INTO "ledger" VALUES(94,'2026-03-02T10:46:00.000000+00:00','revived','owner','{"line":"3f4c2e88b886aab6","stay":"5087f956ba3baa67"}','0fc0f10fb471e3db9e54e72b2be08b83e828fc373d464e36b25b39ba4f338395');
INSERT INTO "ledger" VALUES(95,'2026-03-02T10:47:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"c976aaf2344bab48","stay":"cbdefca11e121624","to":"D020"}','271aa7191598254b149dd8a7585a4fd90149ed7be446d4b9f1893260819f2d46');
INSERT INTO "ledger" VALUES(96,'2026-03-02T10:50:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"adc17ed3bc8e3a3f","reference":"S012-01O","stay":"49a5bd0d552331fd"}],"number":"F-1","order":"ad6a25f2cf34d5c8"}','b7b7e3ab9686a94e602dba7e7f93934243821cc93ba56a48488dd461548f6ed7');
INSERT INTO "ledger" VALUES(97,'2026-03-02T10:51:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"c9753db8c05f8047","reference":"","stay":null}],"number":"F-2","order":"3959e40b30a34fbd"}','10d076110fea6cae2044379308f8ab0a5d82b7cfba8d1b399baaa0ccf5f039f0');
INSERT INTO "ledger" VALUES(98,'2026-03-02T10:52:00.000000+00:00','round opened','owner','{"lines":["3adabf3758f01943","9191d08cf11a8479","dd5c0cc366a0272b","924e66219c31e4e7","44c5c367f63a1d70","c7f33078f1adc83d","aea3fd5c974a9a6c","bdce101f33f8a51d","7a501f33407fa0cd","aeb0ae7ade7d3858","6841bc36520600fc","9e8c92ab9564d2ad"],"round":"212a9024eece639e"}','73bdfdd1e0496f7e280e7160dc0ed88e38d40de300a6d39b6a9a583d8cbcf920');
INSERT INTO "ledger" VALUES(99,'2026-03-02T10:54:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','8873304c5d36d1d304d9a3d1c2715ec8fc3b2cec3cf61f2432804b87ab5490c2');
INSERT INTO "ledger" VALUES(100,'2026-03-02T10:55:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"3adabf3758f01943","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','e3e1d7f71c78c221bba6c5a6c0baca3d07a9d1be865a34f4b75386e4b28d3e55');
INSERT INTO "ledger" VALUES(101,'2026-03-02T10:56:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"9191d08cf11a8479","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','62b06e2dc2b286a7489168d4b9a8d83c17d0b8cbe00fa792e2fa8203ea20785d');
INSERT INTO "ledger" VALUES(102,'2026-03-02T10:57:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"dd5c0cc366a0272b","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','858e61f3ca769d32d6d01c2a0adbe39a3f1b7490ae3578b3ff3a3114bf0ca6ab');
INSERT INTO "ledger" VALUES(103,'2026-03-02T10:58:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"924e66219c31e4e7","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','5c037b6e0216e603f4596ae1b88d3809e4b0949eab0fe7aadff5036f14ecbcff');
INSERT INTO "ledger" VALUES(104,'2026-03-02T10:59:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"44c5c367f63a1d70","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','dde8041b906a28e0fd2c0e6c825c763a1d979208f96b06129ae9c099c8ec46ba');
INSERT INTO "ledger" VALUES(105,'2026-03-02T11:00:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"c7f33078f1adc83d","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','c82741e7f5798714bf3197c4465eff5312ed65596700a5ec3087ca263991ca30');
INSERT INTO "ledger" VALUES(106,'2026-03-02T11:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"aea3fd5c974a9a6c","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','3ec79297b1c282f896e52f4a54cd6dda30e67589388250f8cc1272ca7267ea26');
INSERT INTO "ledger" VALUES(107,'2026-03-02T11:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"bdce101f33f8a51d","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','0747c9dd779998522cac66b673a4459ee17910b1426a51727810e312b7ab4a7e');
INSERT INTO "ledger" VALUES(108,'2026-03-02T11:03:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"7a501f33407fa0cd","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','ff217825eacaf36fba9926a3c58938f5a20215ddf039994caaf88c0494834f05');
INSERT INTO "ledger" VALUES(109,'2026-03-02T11:04:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"aeb0ae7ade7d3858","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','8223b8a5c623e25405c2d6ad6b8d7381263e5d9177b28de470fc946dfd9148ef');
INSERT INTO "ledger" VALUES(110,'2026-03-02T11:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"6841bc36520600fc","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','b61962f359b1c838dfb13c4966d0995f616ae71cf9d6a3e5394b5296303e8b95');
INSERT INTO "ledger" VALUES(111,'2026-03-02T11:06:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"9e8c92ab9564d2ad","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"212a9024eece639e","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','416a69192f36cdc3622820f08eebe6522a59950f41a8bab1165c122dec6f7428');
INSERT INTO "ledger" VALUES(112,'2026-03-02T11:07:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"9e8c92ab9564d2ad","line_state":"waiting"}','32fd5a95b585cbaf4cadb5d77a6965b0947dbc093f83be3f34330eaa3b4eb813');
INSERT INTO "ledger" VALUES(113,'2026-03-02T11:08:00.000000+00:00','round closed','owner','{"round":"212a9024eece639e"}','457a571dcbccd0deb5eda0d553afce4116d1f65fe7f74cc5c3459ce8582fa55b');
INSERT INTO "ledger" VALUES(114,'2026-03-02T11:09:00.000000+00:00','parcel opened','owner','{"orders":["975b5daee482b79d"],"parcel":"a1511317ff4f5ad0","table":"main"}','63515cb2dbc8fb1f7746e48e2b96574ef8313ba022b1841c6917ae0a2f5aaeac');
INSERT INTO "ledger" VALUES(115,'2026-03-02T11:10:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"dd5c0cc366a0272b","line_state":"picked","order_number":"B-03","parcel":"a1511317ff4f5ad0","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','e2516316ef6ac7ca814f2c2de05f4ce25523298a4a9409d8bed80761fab9778d');
INSERT INTO "ledger" VALUES(116,'2026-03-02T11:11:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"3adabf3758f01943","line_state":"packed","order_number":"B-01","parcel":"a1511317ff4f5ad0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','6d257128f2166c8613e67b0868569e78b42fe02862d53db81883473f648236af');
INSERT INTO "ledger" VALUES(117,'2026-03-02T11:12:00.000000+00:00','parcel closed','owner','{"orders":["975b5daee482b79d"],"parcel":"a1511317ff4f5ad0","released":["W001","W002"]}','c0efa8617107a1827986511369991ecf00ac623f98086f399bb9ff1fdda1f4c0');
INSERT INTO "ledger" VALUES(118,'2026-03-02T11:12:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"9191d08cf11a8479","line_state":"released","order_number":"B-01","parcel":"a1511317ff4f5ad0","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','24690cd35856657a4a948c48182ae7bdce2537cc75454ae4818742852516a869');
INSERT INTO "ledger" VALUES(119,'2026-03-02T11:13:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"3adabf3758f01943","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','6d46a98000115b8a5d33cb3be3b5918f81768a1c353fcadff00dffc408a334af');
INSERT INTO "ledger" VALUES(120,'2026-03-02T11:14:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"984febbd8dc4d073","title":"Rear wheel","turn":2}','e40d9887bfd504ef042e6c3e7c72fd1840762f5db158f6788350dc7e0f3460ff');
INSERT INTO "ledger" VALUES(121,'2026-03-02T11:16:00.000000+00:00','parcel opened','owner','{"orders":["e1f322ac4bb84a94"],"parcel":"271e201382df02b6","table":"main"}','764e536a01b2bd39ee6c08af2405889d927945e4828b769f5612c8f2c89526f4');
INSERT INTO "ledger" VALUES(122,'2026-03-02T11:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"6841bc36520600fc","line_state":"packed","order_number":"B-23","parcel":"271e201382df02b6","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','304aeca569f1a04b016c82a053d5d52097db9b16d8e724ec37ea3c1888182b7a');
INSERT INTO "ledger" VALUES(123,'2026-03-02T11:18:00.000000+00:00','parcel closed','owner','{"orders":["e1f322ac4bb84a94"],"parcel":"271e201382df02b6","released":["W007"]}','fc23cfc328e5e65916d0861209703793886bf2588a60d12697ec46f45a779b9c');
INSERT INTO "ledger" VALUES(124,'2026-03-02T11:19:00.000000+00:00','parcel reopened','owner','{"orders":["e1f322ac4bb84a94"],"parcel":"271e201382df02b6"}','016c631729c991fcd06e7cb48722af22fae56bf3bb3bc521278e88f4c4a94767');
INSERT INTO "ledger" VALUES(125,'2026-03-02T11:20:00.000000+00:00','parcel closed','owner','{"orders":["e1f322ac4bb84a94"],"parcel":"271e201382df02b6","released":["W007"]}','66fe161b40a6812255123accb5b145d37c7c8f8344b46b495ce7488c9741970d');
INSERT INTO "ledger" VALUES(126,'2026-03-02T11:21:00.000000+00:00','parcel opened','owner','{"orders":["2072707bf25ae744"],"parcel":"e9dbaba63ab9996a","table":"main"}','671b848e85fb9f4d4039f707696d88a6b6e533640d7e2026f2422513a499f27d');
INSERT INTO "ledger" VALUES(127,'2026-03-02T11:22:00.000000+00:00','parcel dropped','owner','{"parcel":"e9dbaba63ab9996a"}','e92fe4a46424489ed465bbe2bc01bdb922afd9ea5296e17e11743928ad6214f0');
INSERT INTO "ledger" VALUES(128,'2026-03-02T11:23:00.000000+00:00','parcel opened','owner','{"orders":["df29e115d815e60b"],"parcel":"2f02fb7e61c2b940","table":"main"}','5e1a8e9a139420b316c5dc83c86e4ac365515a58c5108befb0b221c9109a663c');
INSERT INTO "ledger" VALUES(129,'2026-03-02T11:24:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"44c5c367f63a1d70","line_state":"packed","order_number":"B-04","parcel":"2f02fb7e61c2b940","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','92b15a29f84ec3d00e87afa842d2b7f32daad9a06bb06a0cb9b2b8d0aeedc769');
INSERT INTO "ledger" VALUES(130,'2026-03-02T11:25:00.000000+00:00','parcel set aside','owner','{"parcel":"2f02fb7e61c2b940"}','902065d56e4c17425b78102d66dffce3afd7561a7fbc5707e5ddf5245d07bb77');
INSERT INTO "ledger" VALUES(131,'2026-03-02T11:26:00.000000+00:00','parcel opened','owner','{"orders":["8e1618246757f1e0"],"parcel":"747536d1a5fde5c8","table":"second"}','25e84b41d023642f7938d37c36eb5abcec2728e8f9c0d901d64b7a6f7c178260');
INSERT INTO "ledger" VALUES(132,'2026-03-02T11:27:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"aea3fd5c974a9a6c","line_state":"packed","order_number":"B-09","parcel":"747536d1a5fde5c8","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','d8c4169aa2a05b962331e25234566adccaa2214714dfb6c045b573bb47fffd62');
INSERT INTO "ledger" VALUES(133,'2026-03-02T11:28:00.000000+00:00','cancelled','owner','{"lines":["aea3fd5c974a9a6c","bdce101f33f8a51d"],"number":"B-09","order":"8e1618246757f1e0"}','023d2da2b469885aefb40a60e3699fb3578e73e590afce2e20aa8b0c1ea117d2');
INSERT INTO "ledger" VALUES(134,'2026-03-02T11:29:00.000000+00:00','parcel opened','owner','{"orders":["cb52fb36f959e321"],"parcel":"12e07e9de4000503","table":"main"}','48073bbad2f8e5dbfa292f61d0adc7fa561bea7fcd430d5f1434830d778231fb');
INSERT INTO "ledger" VALUES(135,'2026-03-02T11:30:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"dd5c0cc366a0272b","line_state":"packed","order_number":"B-03","parcel":"12e07e9de4000503","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','79d501ce8d6c03b7ad864510ea8c585314a8fbda43688271e96d08b41f58b3e8');
INSERT INTO "ledger" VALUES(136,'2026-03-02T11:31:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"7a501f33407fa0cd","reference":"S006-018","stay":"10a853bffbf5d465"}],"number":"B-13","order":"2518614ac8231c0c"}','98acfeb610d6759e00bac608e591cbb287f0cb177de952478a1ac4dc51b78d01');
INSERT INTO "ledger" VALUES(137,'2026-03-02T11:33:00.000000+00:00','round opened','owner','{"lines":["d240ba15033a6b07","04f1066ffab7b3e2","751df91f36000d82","459f345b28b4dc18"],"round":"b057ba682e23c54d"}','11c22771e5dac90ffb8fb0ea1b84a62714b6f028cd0bc9114500cdb6b6bdbb30');
INSERT INTO "ledger" VALUES(138,'2026-03-02T11:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"d240ba15033a6b07","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"b057ba682e23c54d","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','02e4eb7ef678a593d415170a2d050cd77e91e034c44393f0438fda703d094c44');
INSERT INTO "ledger" VALUES(139,'2026-03-02T11:36:00.000000+00:00','short','owner','{"line":"751df91f36000d82","note":"Not in its bin"}','096b0afccdde331d9aba3db768ab436ac7cb2dd4232bbfd748a1968e7580b3eb');
INSERT INTO "ledger" VALUES(140,'2026-03-02T11:37:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"b057ba682e23c54d","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','ef2b076ed6094dec7c6900d1e13ce02e17f7d0b13068543803741c81e018e26c');
INSERT INTO "ledger" VALUES(141,'2026-03-02T11:38:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"b057ba682e23c54d","station":"bin","take_out":false,"text":["hello"],"verdict":"refused","via":"wedge"}','d0b45a95fdd15083a009b6a49dedb84c1d42b97f49d7623806eb0230429a97c8');
INSERT INTO "ledger" VALUES(142,'2026-03-02T11:39:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"b057ba682e23c54d","station":"bin","take_out":false,"text":[""],"verdict":"refused","via":"wedge"}','40434af335c37abe89999dd3260d7337b7db500cc382dd900cab5b59cf341cde');
INSERT INTO "ledger" VALUES(143,'2026-03-02T11:40:00.000000+00:00','card lost','owner','{"code":"L001"}','ffe28ea3047c908d1cddedb3b04acdec1bd86fb05c3db57b7bf65668c9fa44f3');
INSERT INTO "ledger" VALUES(144,'2026-03-02T11:41:00.000000+00:00','card lost','owner','{"code":"W015"}','f56e9658f2428f794d7c58cf3e2c09a1f2b465118b6ba381bb18f36a3f372ab2');
INSERT INTO "ledger" VALUES(145,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"605a09819ffb995e","reference":"D001-019","stay":"30ad7ad0b32e5509"},{"hold":"already_sold","line":"93e2050c5de75de1","reference":"W002-016","stay":null}],"number":"B-38","order":"c6b812cb8b4e8118"}','7840e99129d26963c254ed72b64be16c44586c6e72822d35e2747e761d5f8799');
INSERT INTO "ledger" VALUES(146,'2026-03-02T11:44:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"fcb9f2597b9cd114","reference":"W001","stay":null}],"number":"B-39","order":"2d6767be1fc5285c"}','ca728c242786a9678d0a9052e9dca8c81115b90ab91b3849d21032b5bcf113f2');
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
	CONSTRAINT pk_lines PRIMARY KEY (n), 
	CONSTRAINT fk_lines_order FOREIGN KEY("order") REFERENCES orders (id), 
	CONSTRAINT fk_lines_parcel FOREIGN KEY(parcel) REFERENCES parcels (id), 
	CONSTRAINT fk_lines_round FOREIGN KEY(round) REFERENCES rounds (id), 
	CONSTRAINT fk_lines_stay FOREIGN KEY(stay) REFERENCES stays (id), 
	CONSTRAINT uq_lines_id UNIQUE (id)
);
INSERT INTO "lines" VALUES(1,'3adabf3758f01943','975b5daee482b79d',1,'W001-01E','Front wheel 1','','06fdb5be1f64df9b','released',NULL,'','a1511317ff4f5ad0','212a9024eece639e',1,NULL);
INSERT INTO "lines" VALUES(2,'9191d08cf11a8479','975b5daee482b79d',2,'W002-016','Front wheel 2','','11a0b728b71a4200','released',NULL,'','a1511317ff4f5ad0','212a9024eece639e',1,'pack-W002');
INSERT INTO "lines" VALUES(3,'dd5c0cc366a0272b','cb52fb36f959e321',1,'S002-013','Leather saddle 2','','1deb906b7dea506f','packed',NULL,'','12e07e9de4000503','212a9024eece639e',2,'pack-S002');
INSERT INTO "lines" VALUES(4,'924e66219c31e4e7','cb52fb36f959e321',2,'S003-01W','Leather saddle 3','','f80ab345618e4d22','picked',NULL,'',NULL,'212a9024eece639e',2,'pick-S003');
INSERT INTO "lines" VALUES(5,'44c5c367f63a1d70','df29e115d815e60b',1,'S004-01O','Leather saddle 4','','49b639cc387082fb','packed',NULL,'','2f02fb7e61c2b940','212a9024eece639e',3,'pack-S004');
INSERT INTO "lines" VALUES(6,'c7f33078f1adc83d','df29e115d815e60b',2,'S005-01G','Leather saddle 5','','9d1f45222c39d3b9','picked',NULL,'',NULL,'212a9024eece639e',3,'pick-S005');
INSERT INTO "lines" VALUES(7,'d240ba15033a6b07','7bc5faf66bed9b53',1,'L002-017','Dynamo lamp 2','','c722d305e66093e2','picked',NULL,'',NULL,'b057ba682e23c54d',1,'pick-L002');
INSERT INTO "lines" VALUES(8,'04f1066ffab7b3e2','1c19f35054b258d8',1,'L003-010','Dynamo lamp 3','','91fdfa4c7d685203','waiting',NULL,'',NULL,'b057ba682e23c54d',2,NULL);
INSERT INTO "lines" VALUES(9,'751df91f36000d82','559dfc8ff0c9aa65',1,'L004-01S','Dynamo lamp 4','','491323ca990dbf12','short',NULL,'',NULL,'b057ba682e23c54d',3,NULL);
INSERT INTO "lines" VALUES(10,'c19c95cf15ebae51','d52d2c51ef4d39e7',1,'L005-01K','Dynamo lamp 5','','adc8e64c06dbfb0e','cancelled',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(11,'aea3fd5c974a9a6c','8e1618246757f1e0',1,'L006-01C','Dynamo lamp 6','','9c51aebff8847c85','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','747536d1a5fde5c8','212a9024eece639e',4,NULL);
INSERT INTO "lines" VALUES(12,'bdce101f33f8a51d','8e1618246757f1e0',2,'L011-010','Dynamo lamp 11','','aae505ed4a9e14a8','cancelled',NULL,'',NULL,'212a9024eece639e',4,NULL);
INSERT INTO "lines" VALUES(13,'7a501f33407fa0cd','2518614ac8231c0c',1,'S006-018','Saddle with springs','','10a853bffbf5d465','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'212a9024eece639e',5,NULL);
INSERT INTO "lines" VALUES(14,'5329234385f93aa9','e0fb17a7c5f58e39',1,'L007-014','Dynamo lamp 7','','fcc6067156fcb561','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(15,'2684b3147b478214','cc9bb26467b738db',1,'D009-01B','Rear derailleur 9','','506877583d0066ba','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(16,'3f4c2e88b886aab6','b00893025989ae42',1,'W006-013','Front wheel 6','','5087f956ba3baa67','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(17,'aeb0ae7ade7d3858','2072707bf25ae744',1,'S007-01Z','Leather saddle 7','','2c4bf466509a0482','picked',NULL,'',NULL,'212a9024eece639e',6,'pick-S007');
INSERT INTO "lines" VALUES(18,'6841bc36520600fc','e1f322ac4bb84a94',1,'W007-01W','Front wheel 7','','2634babd89f16d94','released',NULL,'','271e201382df02b6','212a9024eece639e',7,NULL);
INSERT INTO "lines" VALUES(19,'9e8c92ab9564d2ad','e1f322ac4bb84a94',2,'W008-01O','Front wheel 8','','b43d74566698fcea','waiting',NULL,'',NULL,'212a9024eece639e',7,NULL);
INSERT INTO "lines" VALUES(20,'459f345b28b4dc18','0d901c01ca840a94',1,'D008-01J','Rear derailleur 8','','c976aaf2344bab48','waiting',NULL,'',NULL,'b057ba682e23c54d',4,NULL);
INSERT INTO "lines" VALUES(21,'7833ca5b4a68fba1','8fd4a3a87753b684',1,'D003-01U','Bell with a crown','','3dc5500dba42cb2a','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(22,'9c795415355e0617','2c3559abc4c7a6d6',1,'D005-01E','Rear derailleur 5','','d28dbe25d2e010d7','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(23,'0241b31a0a2d8062','2c3559abc4c7a6d6',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(24,'b7d2765f3f46b594','d34a70df8ec49caf',1,'D006-016','Rear derailleur 6','','20bfb8ba0b2077f7','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(25,'31018a963aac1462','d34a70df8ec49caf',2,'D007-01R','Rear derailleur 7','','3c232debbccfd182','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(26,'0a01b2ffbccf976f','60a93b80ac543bbf',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(27,'42f8f2c056fe76ea','551424a6335d87b4',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(28,'e4682d6c29a975d0','a912a0ad32c35985',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(29,'a2d436774a347dcc','dbbc15f638c54094',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(30,'0aa646a8398d25ad','3005dd874546070d',1,'W005-01B','Bell with a crown','','c4b31a7cba6bec97','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(31,'adc17ed3bc8e3a3f','ad6a25f2cf34d5c8',1,'S012-01O','Leather saddle','','49a5bd0d552331fd','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(32,'c9753db8c05f8047','3959e40b30a34fbd',1,'','Nothing','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(33,'605a09819ffb995e','c6b812cb8b4e8118',1,'D001-019','Rear derailleur 1','','30ad7ad0b32e5509','waiting',NULL,'',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(34,'93e2050c5de75de1','c6b812cb8b4e8118',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL);
INSERT INTO "lines" VALUES(35,'fcb9f2597b9cd114','2d6767be1fc5285c',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL);
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
INSERT INTO "orders" VALUES(1,'975b5daee482b79d','B-01','fair','2026-03-02T09:54:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'cb52fb36f959e321','B-03','fair','2026-03-02T09:56:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','12e07e9de4000503');
INSERT INTO "orders" VALUES(3,'df29e115d815e60b','B-04','fair','2026-03-02T09:58:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','2f02fb7e61c2b940');
INSERT INTO "orders" VALUES(4,'7bc5faf66bed9b53','B-05','fair','2026-03-02T10:00:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'1c19f35054b258d8','B-06','fair','2026-03-02T10:02:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'559dfc8ff0c9aa65','B-07','fair','2026-03-02T10:04:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'d52d2c51ef4d39e7','B-08','fair','2026-03-02T10:06:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'8e1618246757f1e0','B-09','fair','2026-03-02T10:08:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','747536d1a5fde5c8');
INSERT INTO "orders" VALUES(9,'2518614ac8231c0c','B-13','fair','2026-03-02T10:10:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'e0fb17a7c5f58e39','B-17','fair','2026-03-02T10:12:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'cc9bb26467b738db','B-18','fair','2026-03-02T10:14:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'b00893025989ae42','B-21','fair','2026-03-02T10:16:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'2072707bf25ae744','B-22','fair','2026-03-02T10:18:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'e1f322ac4bb84a94','B-23','fair','2026-03-02T10:20:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'0d901c01ca840a94','B-26','fair','2026-03-02T10:22:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'8fd4a3a87753b684','B-30','fair','2026-03-02T10:24:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'2c3559abc4c7a6d6','B-31','fair','2026-03-02T10:26:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'d34a70df8ec49caf','B-32','fair','2026-03-02T10:28:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'60a93b80ac543bbf','B-33','fair','2026-03-02T10:32:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'551424a6335d87b4','B-34','fair','2026-03-02T10:34:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'a912a0ad32c35985','B-35','fair','2026-03-02T10:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'dbbc15f638c54094','B-36','fair','2026-03-02T10:38:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'3005dd874546070d','B-37','fair','2026-03-02T10:40:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'ad6a25f2cf34d5c8','F-1','','2026-03-02T10:50:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'3959e40b30a34fbd','F-2','','2026-03-02T10:51:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'c6b812cb8b4e8118','B-38','fair','2026-03-02T11:42:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'2d6767be1fc5285c','B-39','','2026-03-02T11:44:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'a1511317ff4f5ad0','main','975b5daee482b79d','2026-03-02T11:09:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'271e201382df02b6','main','e1f322ac4bb84a94','2026-03-02T11:16:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'e9dbaba63ab9996a','main','2072707bf25ae744','2026-03-02T11:21:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'2f02fb7e61c2b940','main','df29e115d815e60b','2026-03-02T11:23:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'747536d1a5fde5c8','second','8e1618246757f1e0','2026-03-02T11:26:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'12e07e9de4000503','main','cb52fb36f959e321','2026-03-02T11:29:00.000000+00:00','open');
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
INSERT INTO "rounds" VALUES(1,'212a9024eece639e','2026-03-02T10:52:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'b057ba682e23c54d','2026-03-02T11:33:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','9d42f931dabac5397426ca2abf081378ec6aee382113b1fc74da46a232c4e6a4','bin','212a9024eece639e','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','c694d8804ba6aee3ab3d3264a6efd8d5c1c6ae7ef85a8e214da71fe8503827ed','bin','212a9024eece639e','W001',0,1,1,'3adabf3758f01943',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "975b5daee482b79d", "order_number": "B-01", "line": "3adabf3758f01943", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','007d726b3c9fdf42275902f81ecae2b837587cc7562cae327147349c7d1eddec','bin','212a9024eece639e','W002',0,1,1,'9191d08cf11a8479',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "975b5daee482b79d", "order_number": "B-01", "line": "9191d08cf11a8479", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','34ca4070822837e309af63f174a53bf69f676a89bca13ff2a848185de8a45a71','bin','212a9024eece639e','S002',0,1,1,'dd5c0cc366a0272b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "cb52fb36f959e321", "order_number": "B-03", "line": "dd5c0cc366a0272b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','9205f8e1873cd9811c4e28f5fa3f3c4bde9b622af659435bb21168bf34fe3f14','bin','212a9024eece639e','S003',0,1,1,'924e66219c31e4e7',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "cb52fb36f959e321", "order_number": "B-03", "line": "924e66219c31e4e7", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','d7c872a5468687162ef68df0173d3486339494eb5dce54e26491a3a6e5626604','bin','212a9024eece639e','S004',0,1,1,'44c5c367f63a1d70',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "df29e115d815e60b", "order_number": "B-04", "line": "44c5c367f63a1d70", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','8770dec2ff9e98cddbe186f786555e01e3be37e6cfc77d3080064a524e5145c4','bin','212a9024eece639e','S005',0,1,1,'c7f33078f1adc83d',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "df29e115d815e60b", "order_number": "B-04", "line": "c7f33078f1adc83d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','cf1e3872e62819cd90782f20fd7fb3ab6d05c655cef6e83aea894c94a8b91423','bin','212a9024eece639e','L006',0,1,1,'aea3fd5c974a9a6c',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "8e1618246757f1e0", "order_number": "B-09", "line": "aea3fd5c974a9a6c", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','b563f37f9495c64605f092d5098382f13fa50d410378e5e198296ead131d9515','bin','212a9024eece639e','L011',0,1,1,'bdce101f33f8a51d',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "8e1618246757f1e0", "order_number": "B-09", "line": "bdce101f33f8a51d", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','38804e658b459b3218618d2b6871731d939d76424d34396e2280ee39a8eca906','bin','212a9024eece639e','S006',0,1,1,'7a501f33407fa0cd',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "2518614ac8231c0c", "order_number": "B-13", "line": "7a501f33407fa0cd", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','9cc6d654b582c098a69778ad14ee346c977c94fd922834c7d7c47fe5d39c3177','bin','212a9024eece639e','S007',0,1,1,'aeb0ae7ade7d3858',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "2072707bf25ae744", "order_number": "B-22", "line": "aeb0ae7ade7d3858", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','c34ba963e5b2330750a922ac696f15bf7ded0a88aa06668df1434523717158c9','bin','212a9024eece639e','W007',0,1,1,'6841bc36520600fc',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e1f322ac4bb84a94", "order_number": "B-23", "line": "6841bc36520600fc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','3e01aaa8d3967b53ea73880b81a7cca03e71973770488f96cc1e6325f4cdbcaf','bin','212a9024eece639e','W008',0,1,1,'9e8c92ab9564d2ad',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "e1f322ac4bb84a94", "order_number": "B-23", "line": "9e8c92ab9564d2ad", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','90f3857281fe4306ab2443c51bf1f9cc634a90eab3280d88085b56e186f0125d','table','main','S002',0,0,0,'dd5c0cc366a0272b','a1511317ff4f5ad0','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "cb52fb36f959e321", "order_number": "B-03", "line": "dd5c0cc366a0272b", "line_state": "picked", "order_state": "picking", "parcel": "a1511317ff4f5ad0", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','967adcaa24431ba5682400652659d759552db04580947e6f86424ac61b2629ad','table','main','W001',0,1,1,'3adabf3758f01943','a1511317ff4f5ad0','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "975b5daee482b79d", "order_number": "B-01", "line": "3adabf3758f01943", "line_state": "packed", "order_state": "picking", "parcel": "a1511317ff4f5ad0", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','08ea53f408f11d5f6a1101824d480493119e110c8b1e24a39714b6eba01421fb','table','main','W002',0,1,1,'9191d08cf11a8479','a1511317ff4f5ad0','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "975b5daee482b79d", "order_number": "B-01", "line": "9191d08cf11a8479", "line_state": "released", "order_state": "released", "parcel": "a1511317ff4f5ad0", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5427720203556b0bdff5f474e91994e34f09a4944af0014592bd5d6a804c2b8e','tray','','W001',0,1,1,'3adabf3758f01943',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "975b5daee482b79d", "order_number": "B-01", "line": "3adabf3758f01943", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','05f9c2f717c32cc2f4956857ef4eb3c74d30ca2c0a83ffbb73c802583bf3d74a','table','main','W007',0,1,1,'6841bc36520600fc','271e201382df02b6','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "e1f322ac4bb84a94", "order_number": "B-23", "line": "6841bc36520600fc", "line_state": "packed", "order_state": "waiting", "parcel": "271e201382df02b6", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','824ed63dbc5732e74352bd618eeef2079d0b07bd5aaf6e61e6bd375f5b48ea00','table','main','S004',0,1,1,'44c5c367f63a1d70','2f02fb7e61c2b940','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "df29e115d815e60b", "order_number": "B-04", "line": "44c5c367f63a1d70", "line_state": "packed", "order_state": "picking", "parcel": "2f02fb7e61c2b940", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','c9df35056d2117cf36b4fdbbfb7340678c37493fe6f5098fc3782b31cad3ff76','table','second','L006',0,1,1,'aea3fd5c974a9a6c','747536d1a5fde5c8','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "8e1618246757f1e0", "order_number": "B-09", "line": "aea3fd5c974a9a6c", "line_state": "packed", "order_state": "picking", "parcel": "747536d1a5fde5c8", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','81584cc7f65270cf1f0ab42d850539179eb5f596006e65fabfce819000961624','table','main','S002',0,1,1,'dd5c0cc366a0272b','12e07e9de4000503','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "cb52fb36f959e321", "order_number": "B-03", "line": "dd5c0cc366a0272b", "line_state": "packed", "order_state": "picking", "parcel": "12e07e9de4000503", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','02511d72db50bd4753557fd581208a8bae305b67725c99c3de01ae050ba0b5b6','bin','b057ba682e23c54d','L002',0,1,1,'d240ba15033a6b07',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "7bc5faf66bed9b53", "order_number": "B-05", "line": "d240ba15033a6b07", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','709f6f7df0f7bed6212c57e7494ea37ed77d0d5d7157487944a637db72ac4017','bin','b057ba682e23c54d',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','c3fa4ca60672e494f5529ce9bb934af5ed4bd29c6be4d40b9067690d49911e9a','bin','b057ba682e23c54d',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','d3e22b896ecbc2c35eab2d5af0fbf94b848d7768430dcfca5b05a36a63ad6654','bin','b057ba682e23c54d',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'30ad7ad0b32e5509','7eff1906f108a5eb','D001',1,'2026-03-02T08:10:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'dd820363a09c1b85','c8941a8e5e53d448','D002',1,'2026-03-02T08:12:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'3dc5500dba42cb2a','b32a0657ec9569a4','D003',1,'2026-03-02T08:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'dad26082edb04e46','3ecc93aa32f0295b','D004',1,'2026-03-02T08:16:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'d28dbe25d2e010d7','d8d5784334093fa0','D005',1,'2026-03-02T08:18:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'20bfb8ba0b2077f7','b3fd84d0e04981a0','D006',1,'2026-03-02T08:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'3c232debbccfd182','57c1b504f9de4573','D007',1,'2026-03-02T08:22:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'cbdefca11e121624','162413f433c8d286','D008',1,'2026-03-02T08:24:00.000000+00:00','moved','2026-03-02T10:47:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'506877583d0066ba','5dacebe68e8d55ed','D009',1,'2026-03-02T08:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'aa7e93648fec23c0','7b58a57d7d3fe478','D010',1,'2026-03-02T08:28:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'1cbc520433de5b79','6d9570eadd87e0bb','D011',1,'2026-03-02T08:30:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'62bf87d3d4e3e450','0f396eeb8de042fa','D012',1,'2026-03-02T08:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'8669a6848cdbf338','f57e1d4461f864b2','S001',1,'2026-03-02T08:34:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'1deb906b7dea506f','905af5971da77067','S002',1,'2026-03-02T08:36:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'f80ab345618e4d22','2904eba4f9b26110','S003',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'49b639cc387082fb','4a8031e103a32e57','S004',1,'2026-03-02T08:40:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'9d1f45222c39d3b9','52b628d9477df03c','S005',1,'2026-03-02T08:42:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'10a853bffbf5d465','e9c91ef1b5f17bba','S006',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'2c4bf466509a0482','5b43fd40bbf431da','S007',1,'2026-03-02T08:46:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'1f3a805b062e594a','594dfc538d6d2ab3','S008',1,'2026-03-02T08:48:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'d678e555cac04feb','b9521ca05ba1700b','S009',1,'2026-03-02T08:50:00.000000+00:00','moved','2026-03-02T09:51:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'f3b3b2dd1d94ffcb','7449f2c042691312','S010',1,'2026-03-02T08:52:00.000000+00:00','withdrawn','2026-03-02T09:49:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'c36e26c1ec1b10ab','07f1c769731e8455','S011',1,'2026-03-02T08:54:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'49a5bd0d552331fd','11ad1b96ddd9ea7f','S012',1,'2026-03-02T08:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'37bedebbc57695c1','1c078a660fff9bce','L001',1,'2026-03-02T08:58:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'c722d305e66093e2','15babe80c49379ce','L002',1,'2026-03-02T09:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'91fdfa4c7d685203','f2262e464dc2e74a','L003',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'491323ca990dbf12','54f6625111277145','L004',1,'2026-03-02T09:04:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'adc8e64c06dbfb0e','e06ffc0765ea9255','L005',1,'2026-03-02T09:06:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'9c51aebff8847c85','deb453f3c5f29a52','L006',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'fcc6067156fcb561','15149360298ed88c','L007',1,'2026-03-02T09:10:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'7292e50ca77bc747','533790368e6f9617','L008',1,'2026-03-02T09:12:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'aff1d6a9f0c9f7b5','6cbe262d9ccfc112','L009',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(34,'dbe761719e7ce927','73e92280d059db5b','L010',1,'2026-03-02T09:16:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'aae505ed4a9e14a8','16b0ba12f65b8b01','L011',1,'2026-03-02T09:18:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'073be3a6c3636af7','e9446c1bdae12144','L012',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'06fdb5be1f64df9b','7aaa821583d67a9a','W001',1,'2026-03-02T09:22:00.000000+00:00','shipped','2026-03-02T11:12:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'11a0b728b71a4200','cf8af80cb1a870e5','W002',1,'2026-03-02T09:24:00.000000+00:00','shipped','2026-03-02T11:12:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'2a78fa3918c13a12','b269e8a9ffbe5c09','W003',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'003785b211fcd8fb','6b70d32c2b5a9217','W004',1,'2026-03-02T09:28:00.000000+00:00','withdrawn','2026-03-02T09:50:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'c4b31a7cba6bec97','2049210fd0d548c2','W005',1,'2026-03-02T09:30:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'5087f956ba3baa67','6d3bcc04a679b3f3','W006',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'2634babd89f16d94','0a1f816624db6f2d','W007',1,'2026-03-02T09:34:00.000000+00:00','shipped','2026-03-02T11:20:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'b43d74566698fcea','21608aef83b05d75','W008',1,'2026-03-02T09:36:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'8990a4985fa48731','f262a7a197714426','W009',1,'2026-03-02T09:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'e3e34d42aadd94a3','31c7b7f4f6197091','W010',1,'2026-03-02T09:40:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'ec98ef10e435030d','aa675f17a534ef28','W011',1,'2026-03-02T09:42:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'7b7bbe5e66de4c1d','8627b3391423aa13','W012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'0b2f5b8744bdaa62','177260573e8a4d86','D013',1,'2026-03-02T09:46:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'23f1aa70bd126956','b9521ca05ba1700b','S013',1,'2026-03-02T09:51:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'c976aaf2344bab48','162413f433c8d286','D020',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'984febbd8dc4d073','98d5196e5c4edf44','W001',2,'2026-03-02T11:14:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stops" VALUES(1,'212a9024eece639e',1,'dd5c0cc366a0272b','B-1-1');
INSERT INTO "stops" VALUES(2,'212a9024eece639e',2,'924e66219c31e4e7','B-1-1');
INSERT INTO "stops" VALUES(3,'212a9024eece639e',3,'44c5c367f63a1d70','B-1-1');
INSERT INTO "stops" VALUES(4,'212a9024eece639e',4,'c7f33078f1adc83d','B-1-1');
INSERT INTO "stops" VALUES(5,'212a9024eece639e',5,'7a501f33407fa0cd','B-1-1');
INSERT INTO "stops" VALUES(6,'212a9024eece639e',6,'aeb0ae7ade7d3858','B-1-1');
INSERT INTO "stops" VALUES(7,'212a9024eece639e',7,'3adabf3758f01943','D-1-1');
INSERT INTO "stops" VALUES(8,'212a9024eece639e',8,'9191d08cf11a8479','D-1-1');
INSERT INTO "stops" VALUES(9,'212a9024eece639e',9,'6841bc36520600fc','D-1-1');
INSERT INTO "stops" VALUES(10,'212a9024eece639e',10,'9e8c92ab9564d2ad','D-1-1');
INSERT INTO "stops" VALUES(11,'212a9024eece639e',11,'aea3fd5c974a9a6c','C-1-1');
INSERT INTO "stops" VALUES(12,'212a9024eece639e',12,'bdce101f33f8a51d','C-1-2');
INSERT INTO "stops" VALUES(13,'b057ba682e23c54d',1,'459f345b28b4dc18','A-1-2');
INSERT INTO "stops" VALUES(14,'b057ba682e23c54d',2,'d240ba15033a6b07','C-1-1');
INSERT INTO "stops" VALUES(15,'b057ba682e23c54d',3,'04f1066ffab7b3e2','C-1-1');
INSERT INTO "stops" VALUES(16,'b057ba682e23c54d',4,'751df91f36000d82','C-1-1');
CREATE UNIQUE INDEX uq_access_token ON access (name) WHERE kind = 'token';
CREATE UNIQUE INDEX uq_parcels_open ON parcels (at_table) WHERE state = 'open';
CREATE INDEX ix_scans_spot ON scans (station, spot, n);
CREATE INDEX ix_bins_section ON bins (section);
CREATE UNIQUE INDEX uq_bins_place ON bins (rack, tier, position);
CREATE UNIQUE INDEX uq_orders_number ON orders (number, channel);
CREATE INDEX ix_slots_due ON slots (card) WHERE card IN ('due', 'lost');
CREATE INDEX ix_slots_in_tray ON slots (section, number) WHERE card = 'tray';
CREATE UNIQUE INDEX uq_slots_number ON slots (section, number);
CREATE INDEX ix_stays_item ON stays (item);
CREATE UNIQUE INDEX uq_stays_open ON stays (code) WHERE state = 'stored';
CREATE UNIQUE INDEX uq_stays_turn ON stays (code, turn);
CREATE INDEX ix_lines_order ON lines ("order");
CREATE INDEX ix_lines_parcel ON lines (parcel);
CREATE INDEX ix_lines_state ON lines (state);
CREATE INDEX ix_lines_stay ON lines (stay);
CREATE UNIQUE INDEX uq_lines_live ON lines (stay) WHERE state IN ('waiting', 'picked', 'packed', 'short');
CREATE UNIQUE INDEX uq_stops_place ON stops (round, position);
CREATE TRIGGER ledger_kept_update BEFORE UPDATE ON ledger BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;
CREATE TRIGGER ledger_kept_delete BEFORE DELETE ON ledger BEGIN SELECT RAISE(ABORT, 'the ledger is append-only'); END;
COMMIT;
