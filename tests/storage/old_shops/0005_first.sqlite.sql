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
INSERT INTO "access" VALUES(1,'4cdb8c0ea89d63c9913b03656f269b28e9cab8aa8ee722e11a2152259768cc91','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$toiPOJKXSU567j4WwQ30FA$sDLDHIQQyFCKmY8D29SOppacVLvvi5/tyeLd+Pq3Q6c','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'464f4dd594b9e132d83597a525d28a051d6305394b9a7da112ea101b669fcb6f','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'1a4b4788208198415769e1c8525d4b892cb43a399ab595f74c3956d41a0d100a','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'275ab6291f87b95eb4f4af435eb235775808a6ccf674dc26d5abb5c146c703c3','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'9b16051a50540b0c47c36acfd2742590cc0bcc75689e4f19e4de847458be8179','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/4c49893ce9d8452a','{"id": "4c49893ce9d8452a", "item": "0e53b4a27bab5cfc", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": "", "photo": null}');
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
INSERT INTO "head" VALUES(1,170,'0f2d5f2d104b67e75b1402b711d94874cdfb8c3e3f8eb9161193b79bc3518d3f','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}, "bind_labels": true, "photo_days": 90}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, photo VARCHAR(64) CONSTRAINT fk_items_photo REFERENCES photos (hash), 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'aac1ee94fcc418f9','Rear derailleur 1','L-D1','Scratched, “used”','488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989');
INSERT INTO "items" VALUES(2,'d27350e4e96967e7','Rear derailleur 2','L-D2','Cable is new',NULL);
INSERT INTO "items" VALUES(3,'17d33f061a0cdbeb','Rear derailleur 3','L-D3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(4,'f601c1e52bef2607','Rear derailleur 4','L-D4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(5,'477cfa399cf11c2c','Rear derailleur 5','L-D5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(6,'6aa99585e5211e0e','Rear derailleur 6','L-D6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(7,'443b0bf0a70c5f4c','Rear derailleur 7','L-D7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(8,'105186308f1098a5','Rear derailleur 8','L-D8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(9,'be7995e68e2e98cc','Rear derailleur 9','L-D9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(10,'f6215e343f62f1eb','Rear derailleur 10','L-D10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(11,'b852e01266498212','Rear derailleur 11','L-D11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(12,'09e21600f4d385c8','Rear derailleur 12','L-D12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(13,'36e57e11da12f507','Leather saddle 1','L-S1','Scratched, “used”','55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941');
INSERT INTO "items" VALUES(14,'3e0332688bcc85c1','Leather saddle 2','L-S2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(15,'297456af347b4e9a','Leather saddle 3','L-S3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(16,'59269dff31eaafe6','Leather saddle 4','L-S4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(17,'dfb4de97dd776cb3','Leather saddle 5','L-S5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(18,'28918742bd684cd0','Leather saddle 6','L-S6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(19,'96c244d7a8b47759','Leather saddle 7','L-S7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(20,'3b3066e5e58085ea','Leather saddle 8','L-S8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(21,'158b4206ccbc1eb4','Leather saddle 9','L-S9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(22,'ef969a4ba71dd404','Leather saddle 10','L-S10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(23,'07aacde5474139ef','Leather saddle 11','L-S11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(24,'c188b5ecdc93beef','Leather saddle 12','L-S12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(25,'cf87b7083a3760f7','Dynamo lamp 1','L-L1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(26,'4a586c0ff9287e8f','Dynamo lamp 2','L-L2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(27,'ab13328d36566156','Dynamo lamp 3','L-L3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(28,'2961dcb67cfb53ec','Dynamo lamp 4','L-L4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(29,'79cca2f94ba511da','Dynamo lamp 5','L-L5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(30,'8424b69c26c8acac','Dynamo lamp 6','L-L6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(31,'6de69aa0a68f8456','Dynamo lamp 7','L-L7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(32,'2f4436cf26d7977c','Dynamo lamp 8','L-L8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(33,'dcb5b4c51cd83634','Dynamo lamp 9','L-L9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(34,'310ebfff82a6f094','Dynamo lamp 10','L-L10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(35,'257fae11625bdd27','Dynamo lamp 11','L-L11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(36,'cf8be32f1ec7921e','Dynamo lamp 12','L-L12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(37,'3557f45a466cf661','Front wheel 1','L-W1','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(38,'e879a806c2cf5aca','Front wheel 2','L-W2','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(39,'41089d5fef572c34','Front wheel 3','L-W3','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(40,'77fb11eb22b8ad3d','Front wheel 4','L-W4','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(41,'ede774022416f647','Front wheel 5','L-W5','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(42,'e0cc6a46e121b472','Front wheel 6','L-W6','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(43,'e6721eec9eee0218','Front wheel 7','L-W7','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(44,'688fe44cf3c1c206','Front wheel 8','L-W8','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(45,'d0554c158e1ace80','Front wheel 9','L-W9','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(46,'9d79ec50609e37a5','Front wheel 10','L-W10','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(47,'4cc7832ae5e704d2','Front wheel 11','L-W11','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(48,'c870bece33603dd4','Front wheel 12','L-W12','Scratched, “used”',NULL);
INSERT INTO "items" VALUES(49,'0e53b4a27bab5cfc','Brass bell','','',NULL);
INSERT INTO "items" VALUES(50,'2aae3f6f8ccf61ed','Rear wheel','','',NULL);
CREATE TABLE labels (
	n INTEGER NOT NULL, 
	hash VARCHAR(64) NOT NULL, 
	parcel VARCHAR(64) NOT NULL, 
	ends TEXT NOT NULL, 
	CONSTRAINT pk_labels PRIMARY KEY (n), 
	CONSTRAINT uq_labels_hash UNIQUE (hash), 
	CONSTRAINT fk_labels_parcel FOREIGN KEY(parcel) REFERENCES parcels (id)
);
INSERT INTO "labels" VALUES(1,'ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66','111c6940e59547c0','2557');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"d1dc51ea8f68d7ea","title":"Rear derailleur 1","turn":1}','6f6cb63bf1f60fc18c6b141d2477df46525cf25f11b92fe5261f80ec04712ff0');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"a6ba4172f6439e7c","title":"Rear derailleur 2","turn":1}','fc7dda5da285d78df9c9073f7a6c761cb979d612ef48548859ac3114e48d12ed');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"2330ec22290fe39f","title":"Rear derailleur 3","turn":1}','6a49ce39782cc8056d51d2dee43fb6636bf60e70d5ebe9d12fdb0a8abcd91935');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"69bc1ff781784dc4","title":"Rear derailleur 4","turn":1}','e1c3cba8c7cd4b21e9af89e9caf9cf0ffcf4951d8d23e7bdd2eabe298ab83e7f');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"23a686808d432b72","title":"Rear derailleur 5","turn":1}','acd0c3c916e4d519cd066ef7ec7ec462f67869e4badb76a7d88bde5d357ebfb3');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"0410edf23c48c419","title":"Rear derailleur 6","turn":1}','3a4961ea9718275cf523501cd7be7011164ef4d3298403393dfbcb5042b023f6');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"3ea889507cb23c9f","title":"Rear derailleur 7","turn":1}','ce6ec9c126f4e6dff4b33186c796e41b91bbc99a67c54a9d8bb5d5516f4d5cbb');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"d36554477aa14d8f","title":"Rear derailleur 8","turn":1}','16a91b27a132904b4aecfa6f81700fa25e2eea23be111168f7c1c712f2539926');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"2ef24f245245b188","title":"Rear derailleur 9","turn":1}','a5a47a931cd31bc5c9e5c145368327de8435cf3209d9e87f9f6960ac4d89fe27');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"1839538976ae5ecd","title":"Rear derailleur 10","turn":1}','bae7a4b519fb93cd094216b302656dffb2f50902884f3cd601ffbc87de2b86b7');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"b88606ccb2bd4aa6","title":"Rear derailleur 11","turn":1}','d6516c171f9e01b851848834a034db5be866b55268b4a1eaae619ca26cf8950a');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"e56a8ae3d4bc0458","title":"Rear derailleur 12","turn":1}','3333b7647085fefc6bced69a53a89f9bec096b53ca93068a7722db40f3d07a4d');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"e93c309f154aba50","title":"Leather saddle 1","turn":1}','9199d0f3c1cdf237afa6de9752e098b9ff16987bc9e7992c43cc72eab7eb374c');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"a3eeba1726d6b390","title":"Leather saddle 2","turn":1}','cb1a5802b07b22ba69b4888d9e9c5fdf23d9d778a31260519699b07df8757251');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"266cf19edd67d287","title":"Leather saddle 3","turn":1}','6c026acec38f3b3d1b70c54b15e0c52dcefab12a74393ce5523bdf3d1f8a105a');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"c3a0bd917fd1805a","title":"Leather saddle 4","turn":1}','284beb3af553e1eea7b3661309cef8c8a3d22399bdb5bc273fcff94b67221ee8');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"c1a3802dc9eac837","title":"Leather saddle 5","turn":1}','6ce017a2b5c9b1fced59cc24cf531a800217a8f52fe1a1c237dfa0b0623a18bf');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"27e79a02dcd1c1b9","title":"Leather saddle 6","turn":1}','e1589a81b46b0d0cd724539fd2cba6efd298f8ec84de3f8a0872db4eb585b378');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"ed290c66e6979ff9","title":"Leather saddle 7","turn":1}','6ba4717bb9777ff756171370fa15800d7cf8757b7df0d2692e1e7f5846673f9c');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"b6817c444bc0bdb0","title":"Leather saddle 8","turn":1}','8b335b90082f0c71490c14f8859daa653b890c00e2924b157319c7505ac60fa5');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"c564eb7dd63f97d4","title":"Leather saddle 9","turn":1}','a43da2c2d63ff54ed95b2b3d7322ce94133ba44c364d91685d03c7916a5e9bc6');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"15f29175b32a59b3","title":"Leather saddle 10","turn":1}','228ef5c257c589195ad48e0faf278bb80f6e6ebd68c3f45afc4c4c1f11bd79f4');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"9be72e3d4a77c2ab","title":"Leather saddle 11","turn":1}','be36a4123cddab00ff414b4b9c2ad1c94378cb6000fd6e05f0a4ad2eef92117b');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"1583e428af62757e","title":"Leather saddle 12","turn":1}','a535cea74f0b1b152ccd2c4a5a75abf650ef01b5e1dc426762613b7c496f2214');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"37ac9b0915cc4abb","title":"Dynamo lamp 1","turn":1}','30710b38a03a7bb8a34106b30e987c6d63906e0b6de9b20808e11cf3ca15ceaa');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"9f3f6006038ac3d9","title":"Dynamo lamp 2","turn":1}','e164091ae43429da4702d8a4a74495ad6214dd3a1c23bcf7d13e689216edeb6e');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"2b8596047294e958","title":"Dynamo lamp 3","turn":1}','bf2aaf75da3a831f1ea9246d6a11a01b06d1186569e9216e767eaffe1977799a');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"d62f5ad7af944888","title":"Dynamo lamp 4","turn":1}','b516ee3f9015bb2f1604ef98a5900ea0c6c89361faf5bf124b83e60da1fa242d');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"098e3caa13f54438","title":"Dynamo lamp 5","turn":1}','adb8ba17da5b75ee306aaed51b126da65109d9303e3f76380229b1f48c8dee97');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"01aa68681c32b269","title":"Dynamo lamp 6","turn":1}','95a1631918c73ee6d34894c7467456234ceb4b54aa7452500841b68c6082b3b2');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"23206a95053608a0","title":"Dynamo lamp 7","turn":1}','3c963533765428182d75277632237e228d8646f3469653382950c2ae5e6f2a5d');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"0433ada561a8a0de","title":"Dynamo lamp 8","turn":1}','88d1cd1879103153888de614c7874efd445fc1b9d61f7eea735ac837b728e233');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"ff2f9f07090b515b","title":"Dynamo lamp 9","turn":1}','b643df5d50ff40b2e4cf6726b68caf9277ba90a6f3b2bb57af6c3cd67051a493');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"f327e18510c57179","title":"Dynamo lamp 10","turn":1}','38b1750bd5b3163942699f1e105a357b30c2727a8f589e8041273488c4acfb6c');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"425e6870ec44603f","title":"Dynamo lamp 11","turn":1}','726a0fd3417f183e3fb4f10b5838a171fdedef04879534bd55221e43112a53e0');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"24229798e335a73c","title":"Dynamo lamp 12","turn":1}','fbb5fd6dd0729d137ab844c10b611232a4aa18ea29888cc9177b08b329b22c2d');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"e805adf41b3f37e0","title":"Front wheel 1","turn":1}','ba6c524c79b77c6d73ed3e1fcb641eda51609693950e2ac21a91894109c50332');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"9741dbffd3a31356","title":"Front wheel 2","turn":1}','b82a3b4576b87f18d3f6693c549ef17ab94ffa16f152279cc8197b1294210b6a');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"320541bedab685bc","title":"Front wheel 3","turn":1}','61c6f2a8729bfe74759926779eb03641bdce91bead9b18a0ff724fa21dd61cda');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"4d20e864eab52021","title":"Front wheel 4","turn":1}','680d4c84106cdec7284d02da5e994ed2cd485da23b3e28ca2bf9abd95208f6dc');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"8b295447c4b8dde9","title":"Front wheel 5","turn":1}','cd4b0d81312b5b0a1077d8d28e4d92018c2044347ed33f6423bf99fee9a3bb11');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"db1b9e816a0e4d6f","title":"Front wheel 6","turn":1}','6b2c5c95ce58220e44d1d35cb5de2ce16dbce3a6827e57d6ec13cb68b20e85fd');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"4e384d00837adc43","title":"Front wheel 7","turn":1}','9ad31e05a95d2a05f61080f681a1b2171a03d72643e49c8b89001454b28c2afa');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"011235b3cc111d5a","title":"Front wheel 8","turn":1}','21ae93263bb92958c7a2d4e4602b8037425aa2ee76d14c2e58a46705dbbb8fb9');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"5af8466979e7fa44","title":"Front wheel 9","turn":1}','ef0bd11ab5a27bb41fa5e2ae8f7b1335f6b3027eb44c385caa117cc91a0e1ec4');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"a0d4b443738012ff","title":"Front wheel 10","turn":1}','4502139f2dd065306aee7b40b6c992b004737ed106cd3686db52c4474bd8906e');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"5253c0ef437c2ecc","title":"Front wheel 11","turn":1}','c3b2e8b65c02b4c2a66218f035aac60b910bf2a613deef89f1dd7043b4739177');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"20d439f3fd6ca9ac","title":"Front wheel 12","turn":1}','09c068642b5f156d7ab9b793946e2c05a6ea48d576a5cf0f30e270b57c7742d1');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"4c49893ce9d8452a","title":"Brass bell","turn":1}','53a6698bf19654a6c774087e555dc947a9c0d80b95d7dc4d51d027883472e861');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"a6ba4172f6439e7c"}','17e96a2b9d7647e94119d3d66bec4fc4e7b1224efc64276e5ea8e658c77fe237');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"15f29175b32a59b3"}','a4a352499502a9fef3ae34af8aee47c166d6979510ea86ee181a3e4c8d09b1ea');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"4d20e864eab52021"}','ad3b51cbf24379e29737a40db30d0d4c252c514bdadb0d3ea763176c1e86e37a');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"a528dba0dd6b5a79","stay":"c564eb7dd63f97d4","to":"S013"}','e28f863379a9662eaf065e91edd3ba4c8ebc9e570ebb6b3d64db1d7640679b8e');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:15:00.000000+00:00','photo kept','owner','{"code":"D001","photo":"488c22cdac722147a237c39390293d389861de259586dc7d3680fb448b63e989","stay":"d1dc51ea8f68d7ea"}','f0af06d30241c681cb4b393e8b96b20e29dbdb7960beea7c71bee67284d44b9c');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:19:00.000000+00:00','photo kept','owner','{"code":"S001","photo":"55c2a4bf96e42da93669cbdca5b0391cd8f975e0addad54cde8808249a040941","stay":"e93c309f154aba50"}','520588139c1735d553a8567307eb5f81c80cb873364298c6ddc5693d5d46f4e4');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:23:00.000000+00:00','settings changed','owner','{"auto_close":true,"bind_labels":true,"check":"none","name":"Gears & Saddles","photo_days":90,"racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','1e90fed5912fe42f45a8579995ce58ee950f709ff67b307587ef0b14dfd129cb');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:27:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','e48d043ea4c0934bfcf9b17a648a165977d01c4b2a7e9bf0fec10636f7deece0');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:28:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','006e6001b19471ca568f80f1aed04545a5fd3126a48e985073f23acfa4146c84');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:29:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','744f6a62114a5b4a79e6eaf3d53fa0a9ed3d108e1b520e0e0bf86a9029d501af');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:30:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','d50d173524a4668e11b18f4ee6f24b5d3fd4bd197d188db1fdc1b63bfdc27218');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"ad0037d567e28207","reference":"W001-01E","stay":"e805adf41b3f37e0"},{"hold":null,"line":"c15e7b6c1fea4528","reference":"W002-016","stay":"9741dbffd3a31356"}],"number":"B-01","order":"e1c3b02e9fc8b781"}','0a155b20c321a71368595749cd91dc262df20527188e70f4da73fb40675eb77d');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c4b41f4a60f8be0f","reference":"S002-013","stay":"a3eeba1726d6b390"},{"hold":null,"line":"08fc3b5f44ae2173","reference":"S003-01W","stay":"266cf19edd67d287"}],"number":"B-03","order":"067140f5359cc702"}','756e04d440725f183291dbf0d60e74b4934c03f2153233ae493ea397e9fb32bc');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"39d51a0ece4cf089","reference":"S004-01O","stay":"c3a0bd917fd1805a"},{"hold":null,"line":"237c7ba51bb0249f","reference":"S005-01G","stay":"c1a3802dc9eac837"}],"number":"B-04","order":"68b12eda381759e6"}','8a6b27a118f35a234e16b4c381ead4529ec465b5fd625d0700d73742c12f8f4a');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d151cfe80eea74e9","reference":"L002-017","stay":"9f3f6006038ac3d9"}],"number":"B-05","order":"aeadf1a377ada4ab"}','3aef07705eedb061872f0c2455ee207d0d65aaf9a73440c9d1d149b9d4db1b02');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:45:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"6f1db81dfb03d3fd","reference":"L003-010","stay":"2b8596047294e958"}],"number":"B-06","order":"bb1f5ecc47799a9e"}','c49d8d36974b937cabc1c8fb9c8db918c764e48580f632a3a83c6f3f586530cf');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:48:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"589fe40fcc641018","reference":"L004-01S","stay":"d62f5ad7af944888"}],"number":"B-07","order":"b6b727a371472aeb"}','80ad3beb93c7358e1785e19929790673f9c14c8af68194247a4c0d0c58542882');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:51:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"35966ae11aa254bb","reference":"L005-01K","stay":"098e3caa13f54438"}],"number":"B-08","order":"6441e8e609df1fb1"}','301188f2ae2aabcdd5708d580a64417edf422a44d6acc1ffc6451a48c1b6b7c5');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:54:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3534ccc7fbcf33d4","reference":"L006-01C","stay":"01aa68681c32b269"},{"hold":null,"line":"6ee16d7f19b207df","reference":"L011-010","stay":"425e6870ec44603f"}],"number":"B-09","order":"3b77eb35868fc86c"}','afb19df276ae25b2dd6eb596150e203542e2f7e6f52508fe8f684e829a84ae9a');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:57:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"5637ee82c370d01c","reference":"S006-018","stay":"27e79a02dcd1c1b9"}],"number":"B-13","order":"7f2889cad8e1ea4c"}','309a770cd3363db4656824039c8bac91660e1a9685f00318ffef719e0ae17977');
INSERT INTO "ledger" VALUES(82,'2026-03-02T12:00:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"c9cbf45769b8f242","reference":"L007-014","stay":"23206a95053608a0"}],"number":"B-17","order":"93326fafd834390d"}','4b4193800895a57b89a0a2e189faa3a44264a9fc044503d1326b9dc1f3507846');
INSERT INTO "ledger" VALUES(83,'2026-03-02T12:03:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"653208d22a40dd4b","reference":"D009-01B","stay":"2ef24f245245b188"}],"number":"B-18","order":"c7fb32eef2e029f3"}','8f0d5f6791d10006fb88065f45a2ba12913c0423e1e396e886be026b8b305fb8');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:06:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"0b693e1e5c951d85","reference":"W006-013","stay":"db1b9e816a0e4d6f"}],"number":"B-21","order":"bff9cc88ba5cdeb7"}','1c47b077a759bddcbb517402a3e76e2e21ee5b4b797947f8db575c9090569e46');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:09:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d6d530b3f4f06042","reference":"S007-01Z","stay":"ed290c66e6979ff9"}],"number":"B-22","order":"d930d4ad3ee15731"}','96b3bd187399821881c5c9cefc943a4526791a0491674ca4a029dfd02951ac48');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:12:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"98fa914a3f73053b","reference":"W007-01W","stay":"4e384d00837adc43"},{"hold":null,"line":"81d11b660625ef1a","reference":"W008-01O","stay":"011235b3cc111d5a"}],"number":"B-23","order":"8919e9ec18d98165"}','721d30f69563672c08a22bc225e02adeb63f74a9961e5583aa4c588832b24d53');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:15:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2ef42f06641829c5","reference":"D008-01J","stay":"d36554477aa14d8f"}],"number":"B-26","order":"9c12c110376d417d"}','841c725dbe6cc5ab6ec3d0933188f39afce960881fc71d4572173b8a22f82b98');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:18:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"8598dad056cd4747","reference":"D003-01U","stay":"2330ec22290fe39f"}],"number":"B-30","order":"e0731dc0e66a3ce1"}','921360c2c8f31093d9419aabd61f7489016bfafb148a761f065d2f33ede633f5');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:21:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"556d7b9dd5540131","reference":"D005-01E","stay":"23a686808d432b72"},{"hold":"unknown_code","line":"6e7f9389c8969dec","reference":"Z999","stay":null}],"number":"B-31","order":"6192bb54c6ce4c8c"}','ba515159242d81619db1121f420a2de28f604b94a96d9365dba637a1f31b084a');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:24:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"84c3ce8a0b5e5507","reference":"D006-016","stay":"0410edf23c48c419"},{"hold":null,"line":"1eff7737f16c0cc9","reference":"D007-01R","stay":"3ea889507cb23c9f"}],"number":"B-32","order":"4340ca3d5105e3ad"}','95aff813a3bc6de595bcaceabc6b656009a1960eeca6aaa44379a22bd94d1c39');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:27:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"1eff7737f16c0cc9","reference":"D007-01R","stay":"3ea889507cb23c9f"}],"number":"B-32","order":"4340ca3d5105e3ad"}','8c4f6c0528af6967aceea91b34c64fb420c66c4a1b6d86c46568fadaed1d5c12');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:30:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"06e23d8f0f56fa33","reference":"lamp","stay":null}],"number":"B-33","order":"86bffda77fa582ee"}','1eb2e5c981097c7e89024ece9b23c40b13fd9e65df892d2883770283a03cb1dc');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"ac101768e40fea55","reference":"D006-016","stay":null}],"number":"B-34","order":"306a71eab87a9509"}','8329c1ddf8ceaefa25310bf8e4fa5516e29837fccedf888ec23af417fec43f62');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:36:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"b38c622a07407d12","reference":"W004-01J","stay":null}],"number":"B-35","order":"1f1d0a32b420facb"}','4617b92dcb42ca46bcb5586eb04187a5f9f6b2a2b68dccdd93fe3b63b4067dcb');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:39:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"68e6a82118ef8434","reference":"L015","stay":null}],"number":"B-36","order":"082193f2df0f0112"}','22b8f4857134df036fbbcd949b795461f04b18af1a5a2ff6e01ad65a19f9b6d6');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:42:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"44060acf9b7d94a6","reference":"W005-01B","stay":"8b295447c4b8dde9"}],"number":"B-37","order":"3b39a5e76f3cec6c"}','1052b443258e0d6687adb568faad0ace1958960051d62ea6d6b246e2cf2daf1a');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:45:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"44060acf9b7d94a6","stay":"8b295447c4b8dde9"}','f5d56d5a3d88b5a8643363c543b66a13b1fb5210e11aa71d33c2e8f25ccf968a');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:48:00.000000+00:00','held','owner','{"line":"c9cbf45769b8f242","why":"Another lamp, by the photo"}','c31876867edeb5170627a4f60c4bd8ed6cffdec202dc9c5122153822e543a03a');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:51:00.000000+00:00','cancelled','owner','{"lines":["35966ae11aa254bb"],"number":"B-08","order":"6441e8e609df1fb1"}','1e99225d6088acc0bf5493143ef8c39f29612fd4b1140d4237b09229a55ee61e');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:54:00.000000+00:00','cancelled','owner','{"lines":["0b693e1e5c951d85"],"number":"B-21","order":"bff9cc88ba5cdeb7"}','7187be9990b8f10e969dc3e3b9d2e4da2d9cb143caaf204516aed26237b83a7e');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:57:00.000000+00:00','revived','owner','{"line":"0b693e1e5c951d85","stay":"db1b9e816a0e4d6f"}','7fb0e46ecde38d92b0883d257a2eb9273867ed3218f3e5cec814e95e599678d2');
INSERT INTO "ledger" VALUES(102,'2026-03-02T13:00:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"6986bb0ed5119f1b","stay":"d36554477aa14d8f","to":"D020"}','3c3c09d54394afa07af8b3a00665439a2b1bea5c8f72d8ed7da67c9a113cd38e');
INSERT INTO "ledger" VALUES(103,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"8af7e1629f3ac9e1","reference":"S012-01O","stay":"1583e428af62757e"}],"number":"F-1","order":"676a101c1e97744a"}','0d019e10064a589dda311f8f3415bd83ff63b369a6178508fbd7831762b10829');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:05:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"50f164bbd7d2ce54","reference":"","stay":null}],"number":"F-2","order":"d5805505b8ff4b85"}','0a528fe4fd93089756d24e5613af84e00444ecec0e188bf40d7bcf9479f8c5ed');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:08:00.000000+00:00','round opened','owner','{"lines":["ad0037d567e28207","c15e7b6c1fea4528","c4b41f4a60f8be0f","08fc3b5f44ae2173","39d51a0ece4cf089","237c7ba51bb0249f","3534ccc7fbcf33d4","6ee16d7f19b207df","5637ee82c370d01c","d6d530b3f4f06042","98fa914a3f73053b","81d11b660625ef1a"],"round":"ed023ff957a933ba"}','43d52ab633dec059ede6022246ec4c541bb1afffff0977ee8d7fa3e17a7a0772');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:11:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','4e05af662e77fb2b29298cde994fc89215cd8a02b916e7047dce77c22d4f9420');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:14:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"ad0037d567e28207","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','c2d339341f776abfb6a813c88096bd1cfc7f1d578eb2dae5b8043e06c1914c7a');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:17:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"c15e7b6c1fea4528","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','c3a7bb022c0150693098b12af469acc049d8a0d395f0ca3cd2dd3bb65e9a00a9');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:20:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"c4b41f4a60f8be0f","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','db0c931aaade1e8fa5f7e2d2a2a10e5e0862c75528995e75c72bbebb26619c72');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:23:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"08fc3b5f44ae2173","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','c5fbe9d590f993ebaf8071a08b20e8946ecebe425f5ccbd734de509c87c40b5a');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:26:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"39d51a0ece4cf089","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','50bb5599e5f625c669a6b796ff2bbde40c13cdd65b742972abb7ab0d936226d4');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:29:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"237c7ba51bb0249f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','be799be63697e04da8d801815512ad426ee80f2e63b21e5bf58aeefdaac592c1');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:32:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"3534ccc7fbcf33d4","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','f460a65264d44b0e7189bc192ae7592df6133193a33568df4f232942541c7717');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:35:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"6ee16d7f19b207df","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','378d87387b41ca449cfe648d5fe467c79bee5a86f433c2e775cc318f1aa70e9d');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:38:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"5637ee82c370d01c","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','b85d6e3f7252dce9dc3fd6c8537183e8ba80a1823b953d4a6cb5767c05aaffe5');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:41:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"d6d530b3f4f06042","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','f07f21a11a9e1c29e0b758d1e602598c6d5046a7217e6d5c2f20a93c82162944');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:44:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"98fa914a3f73053b","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','e946d8bd60bd9bfdf13f9c2d0fb1a7a378a1bccfc6c8f9a52f2d0e16596c61c7');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:47:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"81d11b660625ef1a","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"ed023ff957a933ba","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','13141eb0d601252b2077d2eed01045df430ee0b8fa14509e142bb8c9b2578ec8');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:50:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"81d11b660625ef1a","line_state":"waiting"}','f16aad0f815e26e085778be4f7a356be08827a3b876a581f120135b6191cf7e7');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:53:00.000000+00:00','round closed','owner','{"round":"ed023ff957a933ba"}','562efa795645ca27a4e43baaa986147a0aefdca3f81a8801750dfedd04eebe1e');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:56:00.000000+00:00','parcel opened','owner','{"orders":["e1c3b02e9fc8b781"],"parcel":"111c6940e59547c0","table":"main"}','75325ebb2157fc295e1ce75854f955f03a716c9352989d382d8d950a92a87d11');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:59:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"c4b41f4a60f8be0f","line_state":"picked","order_number":"B-03","parcel":"111c6940e59547c0","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','4aed5bf910f313fdf775c5edc740bf395890b582a9b969633036cdcc0410b565');
INSERT INTO "ledger" VALUES(123,'2026-03-02T14:02:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"ad0037d567e28207","line_state":"packed","order_number":"B-01","parcel":"111c6940e59547c0","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','1a71387e0924864609061a7aeb265a0b6cffdc1265cdf3b0b98226547d599eb5');
INSERT INTO "ledger" VALUES(124,'2026-03-02T14:05:00.000000+00:00','parcel closed','owner','{"orders":["e1c3b02e9fc8b781"],"parcel":"111c6940e59547c0","released":["W001","W002"]}','0a4133f1ae4593612cacc1ebad6f184dc16db17bc773a5a133a242215b244a6f');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:05:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"c15e7b6c1fea4528","line_state":"released","order_number":"B-01","parcel":"111c6940e59547c0","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','ca987dee04e5d01b679dc30bf65b4b559a5706c401316b8806a03568324dda31');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:08:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"ad0037d567e28207","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','59214dda85caffb7620486826e33fe96eb97717d803d166d8f3a72522075026f');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:11:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"6298001b96bb188b","title":"Rear wheel","turn":2}','2d47395cf5fcc1519bab11ae7c369d071bf2a97bbb6ce80972a133c981bd95e3');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:16:00.000000+00:00','label bound','owner','{"ends":"2557","label":"ccc3d629c934baef400826ae2af6c852ea35624061010636af4d631e1e46cd66","parcel":"111c6940e59547c0"}','13e4ca9f8e026e79c3161e606a666712b7782cfd4fc47826d5a2cd380251f542');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["8919e9ec18d98165"],"parcel":"bdfd128a916dea61","table":"main"}','c00686636716ad976963bd7e145dcc1c625b1f78c0e33d350f6285761442bb97');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"98fa914a3f73053b","line_state":"packed","order_number":"B-23","parcel":"bdfd128a916dea61","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','c9e5954437d02ba38d72502604f40135b5321a677d147a7241be6d68449661da');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:25:00.000000+00:00','parcel closed','owner','{"orders":["8919e9ec18d98165"],"parcel":"bdfd128a916dea61","released":["W007"]}','6e380d10b3f9c8b1b45f6bc07564987179de30c7a25bab52b162bbe675094995');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:28:00.000000+00:00','parcel reopened','owner','{"orders":["8919e9ec18d98165"],"parcel":"bdfd128a916dea61"}','0c4f6fbebc4fb93e9d0ffbd6fbb827168655a1ff660f1702359fe269ee7438d2');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:31:00.000000+00:00','parcel closed','owner','{"orders":["8919e9ec18d98165"],"parcel":"bdfd128a916dea61","released":["W007"]}','a9e1fcc84e0fa14b0bde29b1d15b66c7027f0c259769495a9f491274fa17bcf6');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["d930d4ad3ee15731"],"parcel":"381a84e98a836cf3","table":"main"}','d5d8c9ebc4f36d1482da2087b33e347181db3b6274b7eb32c399e1644194b943');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:37:00.000000+00:00','parcel dropped','owner','{"parcel":"381a84e98a836cf3"}','ef10dcc7292c97b2851eb8dee210f45b211b5bc6c5d51b9dc82b6a6202f37a79');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:40:00.000000+00:00','parcel opened','owner','{"orders":["68b12eda381759e6"],"parcel":"b87617ef03ec3002","table":"main"}','e4828fb6cb64bf410ae4b3b8c057416bf1647627e4ba885b37c4feb749aaa0c0');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:43:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"39d51a0ece4cf089","line_state":"packed","order_number":"B-04","parcel":"b87617ef03ec3002","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','43cab091a1043dc9e560e0b33672d2ba070d44ba4e53bd3e8b7347246de8c304');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:46:00.000000+00:00','parcel set aside','owner','{"parcel":"b87617ef03ec3002"}','09f31296597e8cc169e852a8d74444f587645e421787b3209db136d82bb32133');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:49:00.000000+00:00','parcel opened','owner','{"orders":["3b77eb35868fc86c"],"parcel":"e946dc7799ff42a7","table":"second"}','dfa2b6c6087eaf82c115f4e07a359c4aafaa39fe91ec4581ca7b0066b1021501');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"3534ccc7fbcf33d4","line_state":"packed","order_number":"B-09","parcel":"e946dc7799ff42a7","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','16564b9cccb032bdf62487f9fbfde5a2a587658b9ec0eb51d813d28834721559');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:55:00.000000+00:00','cancelled','owner','{"lines":["3534ccc7fbcf33d4","6ee16d7f19b207df"],"number":"B-09","order":"3b77eb35868fc86c"}','ab72c3da51c776d9bc051d3e3c00b3f891356e8aceb480ce8e960c58b1a4a1d9');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:58:00.000000+00:00','parcel opened','owner','{"orders":["067140f5359cc702"],"parcel":"e39764423558f55b","table":"main"}','8823966147f8c791b246dc91dd951d7e65572ac55d10203898a7662ff1f66eda');
INSERT INTO "ledger" VALUES(143,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"c4b41f4a60f8be0f","line_state":"packed","order_number":"B-03","parcel":"e39764423558f55b","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','d488404ec19839f5f7572540dc807aa2eb074ec0233ab9c6ecf57af66e88919f');
INSERT INTO "ledger" VALUES(144,'2026-03-02T15:04:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"5637ee82c370d01c","reference":"S006-018","stay":"27e79a02dcd1c1b9"}],"number":"B-13","order":"7f2889cad8e1ea4c"}','a76fd18e2a0c4ef5b3e2a252842d728c25d57391e40bf3f7b7495e670a289b2a');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:07:00.000000+00:00','round opened','owner','{"lines":["d151cfe80eea74e9","6f1db81dfb03d3fd","589fe40fcc641018","2ef42f06641829c5"],"round":"d42810e788e7318f"}','2bd9a9135a75ffac41dce7dab2e20042ab0b947e7d3f16d8829a4299dd886e69');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"d151cfe80eea74e9","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"d42810e788e7318f","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','991258257e2a5f285490c9a001ba39a2f9f05c3e897d92bcdadf92e8c38f313b');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:13:00.000000+00:00','short','owner','{"line":"589fe40fcc641018","note":"Not in its bin"}','eca9488947c63eebd68aabd03e0f22fb1ad43d8077b3a21406e43d8885609861');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:16:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"d42810e788e7318f","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','b11084eed605d891ea98b9a0848b5bec15a6969e00d4f754c9a1e38f7565366b');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:19:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"d42810e788e7318f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','21605cb1c68d24330dad00144dd4d264aa0059e9b304ef80ffd3cb22787e316c');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:22:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"d42810e788e7318f","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','4edbb8540ffbc7d1ed475970cb500b7ccadeecf4db6eaa6ef74312b4a65b0f7f');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:26:00.000000+00:00','card lost','owner','{"code":"L001"}','f680ff1c1880bc768d2b3d244514ce96bb32fdcadb9c0c764dfae42f1f43e997');
INSERT INTO "ledger" VALUES(152,'2026-03-02T15:30:00.000000+00:00','card lost','owner','{"code":"W015"}','483bb7077f4d084ffa885c9695a749e8666f48da8f8edbcefcbaec4946e8fc1a');
INSERT INTO "ledger" VALUES(153,'2026-03-02T15:33:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"83f3be0213734067","reference":"D001-019","stay":"d1dc51ea8f68d7ea"},{"hold":"already_sold","line":"39ea06f1d42cb5f9","reference":"W002-016","stay":null}],"number":"B-38","order":"ad154399f7ea2029"}','93bc3e89eed240966474bc294ce0c656303a4cc607175687960c56b8c7d0e206');
INSERT INTO "ledger" VALUES(154,'2026-03-02T15:36:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"46a6ffb2842ff501","reference":"W001","stay":null}],"number":"B-39","order":"002fd1ba27ea467d"}','25097cd5c1ffb01ee6d55940ccb673f76a205182585d12468c5b44052ce5894b');
INSERT INTO "ledger" VALUES(155,'2026-03-02T15:39:00.000000+00:00','stocktake opened','owner','{"area":"section:S","note":"Spring","stocktake":"8e023b8520a58924"}','efd0b18ee6f76c5258150dbca59098e4d1d083b164bce432b9c48e1b4184b520');
INSERT INTO "ledger" VALUES(156,'2026-03-02T15:46:00.000000+00:00','looked','owner','{"decoded":["S0010","S0036","S0124","Q0771","D0104"],"how":"wedge","key":"done-1","matched":[],"photo":null,"place":"B-1-1","stocktake":"8e023b8520a58924","unread":0}','fbf022b21b34c0aa9f8cccfd5f56b9d44ab23e73fd6f4ad77f98b1b1ea9735f5');
INSERT INTO "ledger" VALUES(157,'2026-03-02T15:54:00.000000+00:00','looked','owner','{"decoded":["S0116","S0132"],"how":"photo","key":"done-2","matched":[],"photo":"e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5","place":"B-1-2","stocktake":"8e023b8520a58924","unread":0}','e640b4f1103bafb47d373c4571157be3df63296e1981c3793cae1421aa1a7354');
INSERT INTO "ledger" VALUES(158,'2026-03-02T16:00:00.000000+00:00','finding resolved','owner','{"after":157,"finding":"elsewhere-S012","how":"put_right","reason":"","stocktake":"8e023b8520a58924","sure":false}','2fe9f28e6232eee91c6869a300a0487e88cef1c09e4ddd5c213c6fb8fb39188f');
INSERT INTO "ledger" VALUES(159,'2026-03-02T16:03:00.000000+00:00','finding resolved','owner','{"after":158,"finding":"unknown-Q0771","how":"ignore","reason":"A neighbour''s","stocktake":"8e023b8520a58924","sure":false}','affe111c082c85ef77f23f481021c99ef40b293d737d595d2c7cf682875611bb');
INSERT INTO "ledger" VALUES(160,'2026-03-02T16:06:00.000000+00:00','finding resolved','owner','{"after":159,"finding":"missing-S008","how":"found_later","reason":"","stocktake":"8e023b8520a58924","sure":false}','cb2189b54327c2a4a6e51ab235fde886e55b84579fa473b574f1af238859c593');
INSERT INTO "ledger" VALUES(161,'2026-03-02T16:09:00.000000+00:00','finding reopened','owner','{"after":160,"finding":"missing-S008","how":"found_later","stocktake":"8e023b8520a58924"}','307439ad6e16d3c92803f8494783dd35c40e6f34265965bfc3b2d00162933539');
INSERT INTO "ledger" VALUES(162,'2026-03-02T16:12:00.000000+00:00','stocktake closed','owner','{"findings":{"elsewhere":2,"missing":1,"suspect":1,"unknown":1},"looked":2,"stocktake":"8e023b8520a58924"}','9634d08fdbd582cbff65a38e73a6599d226fdd49243243a6535829fd2bc175ff');
INSERT INTO "ledger" VALUES(163,'2026-03-02T16:15:00.000000+00:00','stocktake opened','owner','{"area":"section:L","note":"Spring","stocktake":"36e40930645cc7c0"}','607de13f95bbcc7c3f3d6614343cec6835296777fc2ba06bfa2f245bd9ca4597');
INSERT INTO "ledger" VALUES(164,'2026-03-02T16:22:00.000000+00:00','looked','owner','{"decoded":["L0032","L0049","L0057","L0073"],"how":"wedge","key":"runs-1","matched":[],"photo":null,"place":"C-1-1","stocktake":"36e40930645cc7c0","unread":0}','a5b424397d73bedd10180e4e0fd4343a854185b0c09e11153724164416ceae27');
INSERT INTO "ledger" VALUES(165,'2026-03-02T16:25:00.000000+00:00','card lost','owner','{"code":"L008"}','6890364c6a23b48f216d3df08236824178e975a88b4f1623ba4406ded744fb9e');
INSERT INTO "ledger" VALUES(166,'2026-03-02T16:25:00.000000+00:00','finding resolved','owner','{"after":164,"finding":"missing-L008","how":"lost","reason":"","stocktake":"36e40930645cc7c0","sure":false}','6feb1a0117feb81c109618b23ab9f6c883e14930f6ecb4628fc6479071f0c893');
INSERT INTO "ledger" VALUES(167,'2026-03-02T16:28:00.000000+00:00','withdrawn','owner','{"code":"L009","reason":"Nowhere to be found","stay":"ff2f9f07090b515b"}','2c8a3c412143cf384c1dda0eb0006e6ad57e0513e812df35693f923584ffe54c');
INSERT INTO "ledger" VALUES(168,'2026-03-02T16:28:00.000000+00:00','finding resolved','owner','{"after":166,"finding":"missing-L009","how":"withdraw","reason":"Nowhere to be found","stocktake":"36e40930645cc7c0","sure":false}','ae2769c2f1146a6920ebbd546c1370ebc8042a60ad9df02f8587989d438554e5');
INSERT INTO "ledger" VALUES(169,'2026-03-02T16:31:00.000000+00:00','stocktake opened','owner','{"area":"tray","note":"Too late today","stocktake":"44f21a21cd1141bb"}','f9daafd5a98c4b66963d81e6db8d31477107dbe3cc2c1d9ae3765387ec5cecf6');
INSERT INTO "ledger" VALUES(170,'2026-03-02T16:34:00.000000+00:00','stocktake cancelled','owner','{"stocktake":"44f21a21cd1141bb"}','0f2d5f2d104b67e75b1402b711d94874cdfb8c3e3f8eb9161193b79bc3518d3f');
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
INSERT INTO "lines" VALUES(1,'ad0037d567e28207','e1c3b02e9fc8b781',1,'W001-01E','Front wheel 1','','e805adf41b3f37e0','released',NULL,'','111c6940e59547c0','ed023ff957a933ba',1,NULL,1);
INSERT INTO "lines" VALUES(2,'c15e7b6c1fea4528','e1c3b02e9fc8b781',2,'W002-016','Front wheel 2','','9741dbffd3a31356','released',NULL,'','111c6940e59547c0','ed023ff957a933ba',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'c4b41f4a60f8be0f','067140f5359cc702',1,'S002-013','Leather saddle 2','','a3eeba1726d6b390','packed',NULL,'','e39764423558f55b','ed023ff957a933ba',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'08fc3b5f44ae2173','067140f5359cc702',2,'S003-01W','Leather saddle 3','','266cf19edd67d287','picked',NULL,'',NULL,'ed023ff957a933ba',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'39d51a0ece4cf089','68b12eda381759e6',1,'S004-01O','Leather saddle 4','','c3a0bd917fd1805a','packed',NULL,'','b87617ef03ec3002','ed023ff957a933ba',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'237c7ba51bb0249f','68b12eda381759e6',2,'S005-01G','Leather saddle 5','','c1a3802dc9eac837','picked',NULL,'',NULL,'ed023ff957a933ba',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'d151cfe80eea74e9','aeadf1a377ada4ab',1,'L002-017','Dynamo lamp 2','','9f3f6006038ac3d9','picked',NULL,'',NULL,'d42810e788e7318f',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'6f1db81dfb03d3fd','bb1f5ecc47799a9e',1,'L003-010','Dynamo lamp 3','','2b8596047294e958','waiting',NULL,'',NULL,'d42810e788e7318f',2,NULL,1);
INSERT INTO "lines" VALUES(9,'589fe40fcc641018','b6b727a371472aeb',1,'L004-01S','Dynamo lamp 4','','d62f5ad7af944888','short',NULL,'',NULL,'d42810e788e7318f',3,NULL,1);
INSERT INTO "lines" VALUES(10,'35966ae11aa254bb','6441e8e609df1fb1',1,'L005-01K','Dynamo lamp 5','','098e3caa13f54438','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'3534ccc7fbcf33d4','3b77eb35868fc86c',1,'L006-01C','Dynamo lamp 6','','01aa68681c32b269','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','e946dc7799ff42a7','ed023ff957a933ba',4,NULL,1);
INSERT INTO "lines" VALUES(12,'6ee16d7f19b207df','3b77eb35868fc86c',2,'L011-010','Dynamo lamp 11','','425e6870ec44603f','cancelled',NULL,'',NULL,'ed023ff957a933ba',4,NULL,1);
INSERT INTO "lines" VALUES(13,'5637ee82c370d01c','7f2889cad8e1ea4c',1,'S006-018','Saddle with springs','','27e79a02dcd1c1b9','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'ed023ff957a933ba',5,NULL,1);
INSERT INTO "lines" VALUES(14,'c9cbf45769b8f242','93326fafd834390d',1,'L007-014','Dynamo lamp 7','','23206a95053608a0','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'653208d22a40dd4b','c7fb32eef2e029f3',1,'D009-01B','Rear derailleur 9','','2ef24f245245b188','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'0b693e1e5c951d85','bff9cc88ba5cdeb7',1,'W006-013','Front wheel 6','','db1b9e816a0e4d6f','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'d6d530b3f4f06042','d930d4ad3ee15731',1,'S007-01Z','Leather saddle 7','','ed290c66e6979ff9','picked',NULL,'',NULL,'ed023ff957a933ba',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'98fa914a3f73053b','8919e9ec18d98165',1,'W007-01W','Front wheel 7','','4e384d00837adc43','released',NULL,'','bdfd128a916dea61','ed023ff957a933ba',7,NULL,1);
INSERT INTO "lines" VALUES(19,'81d11b660625ef1a','8919e9ec18d98165',2,'W008-01O','Front wheel 8','','011235b3cc111d5a','waiting',NULL,'',NULL,'ed023ff957a933ba',7,NULL,1);
INSERT INTO "lines" VALUES(20,'2ef42f06641829c5','9c12c110376d417d',1,'D008-01J','Rear derailleur 8','','6986bb0ed5119f1b','waiting',NULL,'',NULL,'d42810e788e7318f',4,NULL,1);
INSERT INTO "lines" VALUES(21,'8598dad056cd4747','e0731dc0e66a3ce1',1,'D003-01U','Bell with a crown','','2330ec22290fe39f','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'556d7b9dd5540131','6192bb54c6ce4c8c',1,'D005-01E','Rear derailleur 5','','23a686808d432b72','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'6e7f9389c8969dec','6192bb54c6ce4c8c',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'84c3ce8a0b5e5507','4340ca3d5105e3ad',1,'D006-016','Rear derailleur 6','','0410edf23c48c419','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'1eff7737f16c0cc9','4340ca3d5105e3ad',2,'D007-01R','Rear derailleur 7','','3ea889507cb23c9f','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'06e23d8f0f56fa33','86bffda77fa582ee',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'ac101768e40fea55','306a71eab87a9509',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'b38c622a07407d12','1f1d0a32b420facb',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'68e6a82118ef8434','082193f2df0f0112',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'44060acf9b7d94a6','3b39a5e76f3cec6c',1,'W005-01B','Bell with a crown','','8b295447c4b8dde9','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'8af7e1629f3ac9e1','676a101c1e97744a',1,'S012-01O','','','1583e428af62757e','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'50f164bbd7d2ce54','d5805505b8ff4b85',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'83f3be0213734067','ad154399f7ea2029',1,'D001-019','Rear derailleur 1','','d1dc51ea8f68d7ea','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'39ea06f1d42cb5f9','ad154399f7ea2029',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'46a6ffb2842ff501','002fd1ba27ea467d',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "looks" VALUES(1,'done-1','c113d21f487a813a3760bb78b9b57c83b955b9d6cfd5991fb1d8998fbd902e17','8e023b8520a58924','B-1-1','2026-03-02T15:46:00.000000+00:00','wedge','[["S0010", "S001", "decoded", []], ["S0036", "S003", "decoded", []], ["S0124", "S012", "decoded", []], ["Q0771", null, "decoded", []], ["D0104", "D010", "decoded", []]]',1,NULL,'[]',NULL);
INSERT INTO "looks" VALUES(2,'done-2','88394e6ebd575a12dfdec816bffa503be92669aa2b31876624ed8c7637e9d52c','8e023b8520a58924','B-1-2','2026-03-02T15:54:00.000000+00:00','photo','[["S0116", "S011", "decoded", [100.0, 40.4, 415.0, 40.4, 415.0, 211.0, 100.0, 326.5]], ["S0132", "S013", "decoded", [100.0, 161.3, 415.0, 161.3, 415.0, 398.9, 100.0, 398.9]]]',1,NULL,'[600, 400]','e8c60cc77a102676e1b54b5a4f7b046da6c7abfcdd55c71707e1d2ce8733f4f5');
INSERT INTO "looks" VALUES(3,'runs-1','f15bde7b1d2a86ffae63e68752eb11e6f324faac354bcdc00c9ca2cdf3fdae11','36e40930645cc7c0','C-1-1','2026-03-02T16:22:00.000000+00:00','wedge','[["L0032", "L003", "decoded", []], ["L0049", "L004", "decoded", []], ["L0057", "L005", "decoded", []], ["L0073", "L007", "decoded", []]]',1,NULL,'[]',NULL);
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
INSERT INTO "orders" VALUES(1,'e1c3b02e9fc8b781','B-01','fair','2026-03-02T11:33:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'067140f5359cc702','B-03','fair','2026-03-02T11:36:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','e39764423558f55b');
INSERT INTO "orders" VALUES(3,'68b12eda381759e6','B-04','fair','2026-03-02T11:39:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','b87617ef03ec3002');
INSERT INTO "orders" VALUES(4,'aeadf1a377ada4ab','B-05','fair','2026-03-02T11:42:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'bb1f5ecc47799a9e','B-06','fair','2026-03-02T11:45:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'b6b727a371472aeb','B-07','fair','2026-03-02T11:48:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'6441e8e609df1fb1','B-08','fair','2026-03-02T11:51:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'3b77eb35868fc86c','B-09','fair','2026-03-02T11:54:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','e946dc7799ff42a7');
INSERT INTO "orders" VALUES(9,'7f2889cad8e1ea4c','B-13','fair','2026-03-02T11:57:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'93326fafd834390d','B-17','fair','2026-03-02T12:00:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'c7fb32eef2e029f3','B-18','fair','2026-03-02T12:03:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'bff9cc88ba5cdeb7','B-21','fair','2026-03-02T12:06:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'d930d4ad3ee15731','B-22','fair','2026-03-02T12:09:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'8919e9ec18d98165','B-23','fair','2026-03-02T12:12:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'9c12c110376d417d','B-26','fair','2026-03-02T12:15:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'e0731dc0e66a3ce1','B-30','fair','2026-03-02T12:18:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'6192bb54c6ce4c8c','B-31','fair','2026-03-02T12:21:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'4340ca3d5105e3ad','B-32','fair','2026-03-02T12:24:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'86bffda77fa582ee','B-33','fair','2026-03-02T12:30:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'306a71eab87a9509','B-34','fair','2026-03-02T12:33:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'1f1d0a32b420facb','B-35','fair','2026-03-02T12:36:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'082193f2df0f0112','B-36','fair','2026-03-02T12:39:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'3b39a5e76f3cec6c','B-37','fair','2026-03-02T12:42:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'676a101c1e97744a','F-1','','2026-03-02T13:05:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'d5805505b8ff4b85','F-2','','2026-03-02T13:05:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'ad154399f7ea2029','B-38','fair','2026-03-02T15:33:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'002fd1ba27ea467d','B-39','','2026-03-02T15:36:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'111c6940e59547c0','main','e1c3b02e9fc8b781','2026-03-02T13:56:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'bdfd128a916dea61','main','8919e9ec18d98165','2026-03-02T14:19:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'381a84e98a836cf3','main','d930d4ad3ee15731','2026-03-02T14:34:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'b87617ef03ec3002','main','68b12eda381759e6','2026-03-02T14:40:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'e946dc7799ff42a7','second','3b77eb35868fc86c','2026-03-02T14:49:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'e39764423558f55b','main','067140f5359cc702','2026-03-02T14:58:00.000000+00:00','open');
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
INSERT INTO "resolutions" VALUES(1,'8e023b8520a58924.elsewhere-S012','8e023b8520a58924','{"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','put_right','','owner','2026-03-02T16:00:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "after": {"Slot": {"card": "on_item", "seen": ["shelf", "B-1-2", true]}, "Stay": {"state": "stored", "ended": null, "reason": ""}, "Line": {"state": "waiting", "hold": null, "why": "", "scan": null}}, "to": null}');
INSERT INTO "resolutions" VALUES(2,'8e023b8520a58924.unknown-Q0771','8e023b8520a58924','{"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}','ignore','A neighbour''s','owner','2026-03-02T16:03:00.000000+00:00','{"before": {}, "after": {}, "to": null}');
INSERT INTO "resolutions" VALUES(3,'36e40930645cc7c0.missing-L008','36e40930645cc7c0','{"kind": "missing", "subject": "L008", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','lost','','owner','2026-03-02T16:25:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "lost", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "to": null}');
INSERT INTO "resolutions" VALUES(4,'36e40930645cc7c0.missing-L009','36e40930645cc7c0','{"kind": "missing", "subject": "L009", "bin": "C-1-1", "places": [], "certainty": null, "looks": ["runs-1"], "read": 4, "unread": 0, "expected": 8}','withdraw','Nowhere to be found','owner','2026-03-02T16:28:00.000000+00:00','{"before": {"Slot": {"card": "on_item", "seen": null}, "Stay": {"state": "stored", "ended": null, "reason": ""}}, "after": {"Slot": {"card": "due", "seen": null}, "Stay": {"state": "withdrawn", "ended": "2026-03-02T16:28:00+00:00", "reason": "Nowhere to be found"}}, "to": null}');
CREATE TABLE rounds (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	opened VARCHAR(32) NOT NULL, 
	state VARCHAR(24) NOT NULL, 
	CONSTRAINT pk_rounds PRIMARY KEY (n), 
	CONSTRAINT uq_rounds_id UNIQUE (id)
);
INSERT INTO "rounds" VALUES(1,'ed023ff957a933ba','2026-03-02T13:08:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'d42810e788e7318f','2026-03-02T15:07:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','70723e5547320d9e78f8906a0d4d762a76b55e0fbdc481c3ffb70a4258be6ab1','bin','ed023ff957a933ba','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','3ec94737fb04ec3847bbf1c91215e2fbb4252039cdea8b76ba727461273035d1','bin','ed023ff957a933ba','W001',0,1,1,'ad0037d567e28207',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e1c3b02e9fc8b781", "order_number": "B-01", "line": "ad0037d567e28207", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','e13d7cb43b8020d3165dc62ce237e7a8007b19838a90ab3ac6616a7fed1b551e','bin','ed023ff957a933ba','W002',0,1,1,'c15e7b6c1fea4528',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e1c3b02e9fc8b781", "order_number": "B-01", "line": "c15e7b6c1fea4528", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','66e14cfce8818898cb3f252b170461168566a33581765224beeabe0c9b324527','bin','ed023ff957a933ba','S002',0,1,1,'c4b41f4a60f8be0f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "067140f5359cc702", "order_number": "B-03", "line": "c4b41f4a60f8be0f", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','46052fb9e144c4226f7207d55ab19b4bbc001642e4f7962bb4b7e83a3a3efa14','bin','ed023ff957a933ba','S003',0,1,1,'08fc3b5f44ae2173',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "067140f5359cc702", "order_number": "B-03", "line": "08fc3b5f44ae2173", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','41770abd9bcb06a5d50c349e80cd9b2ffbb446f036b30195ab12d6b1546a8a08','bin','ed023ff957a933ba','S004',0,1,1,'39d51a0ece4cf089',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "68b12eda381759e6", "order_number": "B-04", "line": "39d51a0ece4cf089", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','487827a63d123ce37c7dfd65f32eb981ee4468cc76d63ea75582692eddb7cb3e','bin','ed023ff957a933ba','S005',0,1,1,'237c7ba51bb0249f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "68b12eda381759e6", "order_number": "B-04", "line": "237c7ba51bb0249f", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','5bd7a56d9d90f8ecfb992babc48f309ea2c78c6de77d6f001f04accafa660e7e','bin','ed023ff957a933ba','L006',0,1,1,'3534ccc7fbcf33d4',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3b77eb35868fc86c", "order_number": "B-09", "line": "3534ccc7fbcf33d4", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','4c49574806f84aab9fce44bb2c155f014670d2bf40ab3fb749aad81fba5f2a84','bin','ed023ff957a933ba','L011',0,1,1,'6ee16d7f19b207df',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "3b77eb35868fc86c", "order_number": "B-09", "line": "6ee16d7f19b207df", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','3373893d3256f211c03eed226d674cc288e0c50cf5abc720c58eae34f01edd84','bin','ed023ff957a933ba','S006',0,1,1,'5637ee82c370d01c',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "7f2889cad8e1ea4c", "order_number": "B-13", "line": "5637ee82c370d01c", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','a0efe28fa5a62af4e3ae65a6be90d6c519b7cc337ebcb54b94151874acd3fb34','bin','ed023ff957a933ba','S007',0,1,1,'d6d530b3f4f06042',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "d930d4ad3ee15731", "order_number": "B-22", "line": "d6d530b3f4f06042", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','23022c78f02992471b8e5006eb5b64f491d399b22e0725fa3325020a6fe262d2','bin','ed023ff957a933ba','W007',0,1,1,'98fa914a3f73053b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "8919e9ec18d98165", "order_number": "B-23", "line": "98fa914a3f73053b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','a397ec4c77927d1aa7471acc9a63a9e400aff5467fe304bf32a7c9d625cf83e6','bin','ed023ff957a933ba','W008',0,1,1,'81d11b660625ef1a',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "8919e9ec18d98165", "order_number": "B-23", "line": "81d11b660625ef1a", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'c4b41f4a60f8be0f','111c6940e59547c0','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "067140f5359cc702", "order_number": "B-03", "line": "c4b41f4a60f8be0f", "line_state": "picked", "order_state": "picking", "parcel": "111c6940e59547c0", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'ad0037d567e28207','111c6940e59547c0','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "e1c3b02e9fc8b781", "order_number": "B-01", "line": "ad0037d567e28207", "line_state": "packed", "order_state": "picking", "parcel": "111c6940e59547c0", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'c15e7b6c1fea4528','111c6940e59547c0','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "e1c3b02e9fc8b781", "order_number": "B-01", "line": "c15e7b6c1fea4528", "line_state": "released", "order_state": "released", "parcel": "111c6940e59547c0", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'ad0037d567e28207',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "e1c3b02e9fc8b781", "order_number": "B-01", "line": "ad0037d567e28207", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'98fa914a3f73053b','bdfd128a916dea61','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "8919e9ec18d98165", "order_number": "B-23", "line": "98fa914a3f73053b", "line_state": "packed", "order_state": "waiting", "parcel": "bdfd128a916dea61", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'39d51a0ece4cf089','b87617ef03ec3002','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "68b12eda381759e6", "order_number": "B-04", "line": "39d51a0ece4cf089", "line_state": "packed", "order_state": "picking", "parcel": "b87617ef03ec3002", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'3534ccc7fbcf33d4','e946dc7799ff42a7','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "3b77eb35868fc86c", "order_number": "B-09", "line": "3534ccc7fbcf33d4", "line_state": "packed", "order_state": "picking", "parcel": "e946dc7799ff42a7", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'c4b41f4a60f8be0f','e39764423558f55b','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "067140f5359cc702", "order_number": "B-03", "line": "c4b41f4a60f8be0f", "line_state": "packed", "order_state": "picking", "parcel": "e39764423558f55b", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','b525a8e4ed39f0837cadf98c4d0c2c57bd96044c975edece97484e4ffded7011','bin','d42810e788e7318f','L002',0,1,1,'d151cfe80eea74e9',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "aeadf1a377ada4ab", "order_number": "B-05", "line": "d151cfe80eea74e9", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','b30949fdbe96128af07675de61571ce2c8347ed224c9ee262cc352c6773f039c','bin','d42810e788e7318f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','e0b7719a6f5281bf6781d12e7bc0149cbe6c0219dacc531a02661abe35d1c984','bin','d42810e788e7318f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','2825a0af15c9a8fd75c6c86b47e08fc6bb9502e09d3d0931ef675cd11b42df96','bin','d42810e788e7318f',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'d1dc51ea8f68d7ea','aac1ee94fcc418f9','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'a6ba4172f6439e7c','d27350e4e96967e7','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'2330ec22290fe39f','17d33f061a0cdbeb','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'69bc1ff781784dc4','f601c1e52bef2607','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'23a686808d432b72','477cfa399cf11c2c','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'0410edf23c48c419','6aa99585e5211e0e','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'3ea889507cb23c9f','443b0bf0a70c5f4c','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'d36554477aa14d8f','105186308f1098a5','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T13:00:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'2ef24f245245b188','be7995e68e2e98cc','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'1839538976ae5ecd','f6215e343f62f1eb','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'b88606ccb2bd4aa6','b852e01266498212','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'e56a8ae3d4bc0458','09e21600f4d385c8','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'e93c309f154aba50','36e57e11da12f507','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'a3eeba1726d6b390','3e0332688bcc85c1','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'266cf19edd67d287','297456af347b4e9a','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'c3a0bd917fd1805a','59269dff31eaafe6','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'c1a3802dc9eac837','dfb4de97dd776cb3','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'27e79a02dcd1c1b9','28918742bd684cd0','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'ed290c66e6979ff9','96c244d7a8b47759','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'b6817c444bc0bdb0','3b3066e5e58085ea','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'c564eb7dd63f97d4','158b4206ccbc1eb4','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'15f29175b32a59b3','ef969a4ba71dd404','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'9be72e3d4a77c2ab','07aacde5474139ef','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'1583e428af62757e','c188b5ecdc93beef','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'37ac9b0915cc4abb','cf87b7083a3760f7','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'9f3f6006038ac3d9','4a586c0ff9287e8f','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'2b8596047294e958','ab13328d36566156','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'d62f5ad7af944888','2961dcb67cfb53ec','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'098e3caa13f54438','79cca2f94ba511da','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'01aa68681c32b269','8424b69c26c8acac','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'23206a95053608a0','6de69aa0a68f8456','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'0433ada561a8a0de','2f4436cf26d7977c','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'ff2f9f07090b515b','dcb5b4c51cd83634','L009',1,'2026-03-02T10:11:00.000000+00:00','withdrawn','2026-03-02T16:28:00.000000+00:00','Nowhere to be found');
INSERT INTO "stays" VALUES(34,'f327e18510c57179','310ebfff82a6f094','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'425e6870ec44603f','257fae11625bdd27','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'24229798e335a73c','cf8be32f1ec7921e','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'e805adf41b3f37e0','3557f45a466cf661','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'9741dbffd3a31356','e879a806c2cf5aca','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T14:05:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'320541bedab685bc','41089d5fef572c34','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'4d20e864eab52021','77fb11eb22b8ad3d','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'8b295447c4b8dde9','ede774022416f647','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'db1b9e816a0e4d6f','e0cc6a46e121b472','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'4e384d00837adc43','e6721eec9eee0218','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:31:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'011235b3cc111d5a','688fe44cf3c1c206','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'5af8466979e7fa44','d0554c158e1ace80','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'a0d4b443738012ff','9d79ec50609e37a5','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'5253c0ef437c2ecc','4cc7832ae5e704d2','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'20d439f3fd6ca9ac','c870bece33603dd4','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'4c49893ce9d8452a','0e53b4a27bab5cfc','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'a528dba0dd6b5a79','158b4206ccbc1eb4','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'6986bb0ed5119f1b','105186308f1098a5','D020',1,'2026-03-02T13:00:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'6298001b96bb188b','2aae3f6f8ccf61ed','W001',2,'2026-03-02T14:11:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stocktakes" VALUES(1,'8e023b8520a58924','section:S','Spring','2026-03-02T15:39:00.000000+00:00',154,'closed','2026-03-02T16:12:00.000000+00:00','{"stocktake": "8e023b8520a58924", "area": "section:S", "note": "Spring", "opened": "2026-03-02T15:39:00+00:00", "closed": "2026-03-02T16:12:00+00:00", "places": 2, "looked": 2, "not_looked": [], "looks": 2, "sections": [{"section": "D", "expected": 0, "counted": 0, "agreed": 0, "record_not_found": 1, "found_not_recorded": 0}, {"section": "S", "expected": 5, "counted": 5, "agreed": 3, "record_not_found": 2, "found_not_recorded": 1}], "findings": [{"kind": "missing", "subject": "S008", "bin": "B-1-1", "places": [], "certainty": null, "looks": ["done-1"], "read": 5, "unread": 0, "expected": 2}, {"kind": "elsewhere", "subject": "D010", "bin": "A-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "elsewhere", "subject": "S012", "bin": "B-1-2", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "unknown", "subject": "Q0771", "bin": null, "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}, {"kind": "suspect", "subject": "S003", "bin": "B-1-1", "places": ["B-1-1"], "certainty": "decoded", "looks": ["done-1"], "read": null, "unread": null, "expected": null}], "resolved": {"elsewhere-S012": {"how": "put_right", "reason": "", "who": "owner", "at": "2026-03-02T16:00:00+00:00"}, "unknown-Q0771": {"how": "ignore", "reason": "A neighbour''s", "who": "owner", "at": "2026-03-02T16:03:00+00:00"}}, "titles": {"missing-S008": "Leather saddle 8", "elsewhere-D010": "Rear derailleur 10", "elsewhere-S012": "Leather saddle 12", "suspect-S003": "Leather saddle 3"}}');
INSERT INTO "stocktakes" VALUES(2,'36e40930645cc7c0','section:L','Spring','2026-03-02T16:15:00.000000+00:00',162,'open',NULL,'');
INSERT INTO "stocktakes" VALUES(3,'44f21a21cd1141bb','tray','Too late today','2026-03-02T16:31:00.000000+00:00',168,'cancelled','2026-03-02T16:34:00.000000+00:00','');
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
INSERT INTO "stops" VALUES(1,'ed023ff957a933ba',1,'c4b41f4a60f8be0f','B-1-1');
INSERT INTO "stops" VALUES(2,'ed023ff957a933ba',2,'08fc3b5f44ae2173','B-1-1');
INSERT INTO "stops" VALUES(3,'ed023ff957a933ba',3,'39d51a0ece4cf089','B-1-1');
INSERT INTO "stops" VALUES(4,'ed023ff957a933ba',4,'237c7ba51bb0249f','B-1-1');
INSERT INTO "stops" VALUES(5,'ed023ff957a933ba',5,'5637ee82c370d01c','B-1-1');
INSERT INTO "stops" VALUES(6,'ed023ff957a933ba',6,'d6d530b3f4f06042','B-1-1');
INSERT INTO "stops" VALUES(7,'ed023ff957a933ba',7,'ad0037d567e28207','D-1-1');
INSERT INTO "stops" VALUES(8,'ed023ff957a933ba',8,'c15e7b6c1fea4528','D-1-1');
INSERT INTO "stops" VALUES(9,'ed023ff957a933ba',9,'98fa914a3f73053b','D-1-1');
INSERT INTO "stops" VALUES(10,'ed023ff957a933ba',10,'81d11b660625ef1a','D-1-1');
INSERT INTO "stops" VALUES(11,'ed023ff957a933ba',11,'3534ccc7fbcf33d4','C-1-1');
INSERT INTO "stops" VALUES(12,'ed023ff957a933ba',12,'6ee16d7f19b207df','C-1-2');
INSERT INTO "stops" VALUES(13,'d42810e788e7318f',1,'2ef42f06641829c5','A-1-2');
INSERT INTO "stops" VALUES(14,'d42810e788e7318f',2,'d151cfe80eea74e9','C-1-1');
INSERT INTO "stops" VALUES(15,'d42810e788e7318f',3,'6f1db81dfb03d3fd','C-1-1');
INSERT INTO "stops" VALUES(16,'d42810e788e7318f',4,'589fe40fcc641018','C-1-1');
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
