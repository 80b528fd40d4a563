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
INSERT INTO "access" VALUES(1,'bbf7608b33bc8581d3d09a9d6b73624eaed032e11481dff1310c5481e01e987a','owner','owner','token','2026-03-02T08:01:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(2,'5e884898da28047151d0e56f8dc6292773603d0d6aabbdd62a11ef721d1542d8','$argon2id$v=19$m=19456,t=2,p=1$mmpeQHDQk503SgCtgbOVYw$ZjDeoVKvixF0k/TP6hNndGbuNRjLqZkG2sMQ78e1J8o','owner','password','2026-03-02T08:02:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(3,'1b254c8c1925f2b6cc6c1b482987e345903f2be13f97593cc0a486a63024cd45','owner','owner','session','2026-03-02T08:04:00.000000+00:00','2026-03-16T08:04:00.000000+00:00');
INSERT INTO "access" VALUES(4,'25e472abea2c434e44b798f63270dadf23323ac86e625346026cc66a4c7333c0','label printer','program','token','2026-03-02T08:05:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(5,'2d12015c57a83af342d21a3b99f11b2f9206a182bf9956e32cbdbffac4e853b4','helper','helper','token','2026-03-02T08:06:00.000000+00:00',NULL);
INSERT INTO "access" VALUES(6,'1632269e4dec34312b1e59c6efcce054858c1fb500f8c10eee28e0c8f8d7e0da','Blue phone','helper','device','2026-03-02T08:08:00.000000+00:00','2027-03-02T08:08:00.000000+00:00');
CREATE TABLE alembic_version (
	version_num VARCHAR(32) NOT NULL, 
	CONSTRAINT alembic_version_pkc PRIMARY KEY (version_num)
);
INSERT INTO "alembic_version" VALUES('0002');
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
INSERT INTO "answers" VALUES(1,'put-away-bell','67406913b1b5e6ca6bebbc68183b0ada9d629ce2b89af72a444e1ee3796793dd',201,'/api/stays/33a7aa45c8b8235b','{"id": "33a7aa45c8b8235b", "item": "9e92cb8ea749258d", "code": "D013", "turn": 1, "reference": "D013-01E", "bin": "A-1-2", "state": "stored", "title": "Brass bell", "listing": "", "notes": ""}');
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
INSERT INTO "head" VALUES(1,151,'d975d77291bd869df3e7a2a56a7e0a8b8e4896685c4d6a98e13a4ce2c9ede315','{"auto_close": true, "scan_at_bin": true, "zone": "UTC", "name": "Gears & Saddles", "check": "none", "racks": {"rack": "24 x 48 x 72 in", "bin": "23 x 8 x 6 in", "base_width": "", "kg": "", "rated": "", "table": "1"}}');
CREATE TABLE items (
	n INTEGER NOT NULL, 
	id VARCHAR(64) NOT NULL, 
	title TEXT NOT NULL, 
	listing TEXT NOT NULL, 
	notes TEXT NOT NULL, 
	CONSTRAINT pk_items PRIMARY KEY (n), 
	CONSTRAINT uq_items_id UNIQUE (id)
);
INSERT INTO "items" VALUES(1,'d37305ede8786def','Rear derailleur 1','L-D1','Scratched, “used”');
INSERT INTO "items" VALUES(2,'7b4c27d96e7ff1fe','Rear derailleur 2','L-D2','Cable is new');
INSERT INTO "items" VALUES(3,'9753846ec3f02b22','Rear derailleur 3','L-D3','Scratched, “used”');
INSERT INTO "items" VALUES(4,'27ea20b8cd0adb3d','Rear derailleur 4','L-D4','Scratched, “used”');
INSERT INTO "items" VALUES(5,'d356a3eda50430e4','Rear derailleur 5','L-D5','Scratched, “used”');
INSERT INTO "items" VALUES(6,'1c8d2494bf1d65cd','Rear derailleur 6','L-D6','Scratched, “used”');
INSERT INTO "items" VALUES(7,'cfc3b5f7fc23e96c','Rear derailleur 7','L-D7','Scratched, “used”');
INSERT INTO "items" VALUES(8,'ea82e63d338dc88f','Rear derailleur 8','L-D8','Scratched, “used”');
INSERT INTO "items" VALUES(9,'e13ee70ffbb8a7cd','Rear derailleur 9','L-D9','Scratched, “used”');
INSERT INTO "items" VALUES(10,'3ded833d579b30c9','Rear derailleur 10','L-D10','Scratched, “used”');
INSERT INTO "items" VALUES(11,'2824d39c328d6d47','Rear derailleur 11','L-D11','Scratched, “used”');
INSERT INTO "items" VALUES(12,'ab061421fbfbe455','Rear derailleur 12','L-D12','Scratched, “used”');
INSERT INTO "items" VALUES(13,'b6052da49f230975','Leather saddle 1','L-S1','Scratched, “used”');
INSERT INTO "items" VALUES(14,'ecdc39d07b13f29f','Leather saddle 2','L-S2','Scratched, “used”');
INSERT INTO "items" VALUES(15,'199f1b7d8c57da1a','Leather saddle 3','L-S3','Scratched, “used”');
INSERT INTO "items" VALUES(16,'279ae287ae5f6b1c','Leather saddle 4','L-S4','Scratched, “used”');
INSERT INTO "items" VALUES(17,'37587da3cabcb2c9','Leather saddle 5','L-S5','Scratched, “used”');
INSERT INTO "items" VALUES(18,'15cc855886b7ccf8','Leather saddle 6','L-S6','Scratched, “used”');
INSERT INTO "items" VALUES(19,'2aeb726d8a04504d','Leather saddle 7','L-S7','Scratched, “used”');
INSERT INTO "items" VALUES(20,'27b876ba891c669f','Leather saddle 8','L-S8','Scratched, “used”');
INSERT INTO "items" VALUES(21,'e7c698f76893866a','Leather saddle 9','L-S9','Scratched, “used”');
INSERT INTO "items" VALUES(22,'32d6752797cc4f61','Leather saddle 10','L-S10','Scratched, “used”');
INSERT INTO "items" VALUES(23,'9d7912fb41809596','Leather saddle 11','L-S11','Scratched, “used”');
INSERT INTO "items" VALUES(24,'49bd7e4e8b6a7ba8','Leather saddle 12','L-S12','Scratched, “used”');
INSERT INTO "items" VALUES(25,'a8a32564bdaa58d1','Dynamo lamp 1','L-L1','Scratched, “used”');
INSERT INTO "items" VALUES(26,'fd8b08b265f6ba39','Dynamo lamp 2','L-L2','Scratched, “used”');
INSERT INTO "items" VALUES(27,'70b4f0bbd3448424','Dynamo lamp 3','L-L3','Scratched, “used”');
INSERT INTO "items" VALUES(28,'3295b6041dc54853','Dynamo lamp 4','L-L4','Scratched, “used”');
INSERT INTO "items" VALUES(29,'68344f44215ca890','Dynamo lamp 5','L-L5','Scratched, “used”');
INSERT INTO "items" VALUES(30,'08beab51e484c6f3','Dynamo lamp 6','L-L6','Scratched, “used”');
INSERT INTO "items" VALUES(31,'16b658a280850e51','Dynamo lamp 7','L-L7','Scratched, “used”');
INSERT INTO "items" VALUES(32,'4a57b240d1fc28db','Dynamo lamp 8','L-L8','Scratched, “used”');
INSERT INTO "items" VALUES(33,'a0f7c30574308d51','Dynamo lamp 9','L-L9','Scratched, “used”');
INSERT INTO "items" VALUES(34,'94dd9927ce816d9c','Dynamo lamp 10','L-L10','Scratched, “used”');
INSERT INTO "items" VALUES(35,'cc472f94fa8a16b3','Dynamo lamp 11','L-L11','Scratched, “used”');
INSERT INTO "items" VALUES(36,'1a698c992cb16b1d','Dynamo lamp 12','L-L12','Scratched, “used”');
INSERT INTO "items" VALUES(37,'ac298cd3e452b8d5','Front wheel 1','L-W1','Scratched, “used”');
INSERT INTO "items" VALUES(38,'a325f9693f5cf25f','Front wheel 2','L-W2','Scratched, “used”');
INSERT INTO "items" VALUES(39,'8d10c979dc816c6d','Front wheel 3','L-W3','Scratched, “used”');
INSERT INTO "items" VALUES(40,'704fa6a92ac3c5fb','Front wheel 4','L-W4','Scratched, “used”');
INSERT INTO "items" VALUES(41,'8dfcf9db9dc50b0d','Front wheel 5','L-W5','Scratched, “used”');
INSERT INTO "items" VALUES(42,'d58849950e6d89ac','Front wheel 6','L-W6','Scratched, “used”');
INSERT INTO "items" VALUES(43,'40f814d1590dd99b','Front wheel 7','L-W7','Scratched, “used”');
INSERT INTO "items" VALUES(44,'1de23a251c97ded5','Front wheel 8','L-W8','Scratched, “used”');
INSERT INTO "items" VALUES(45,'dd401ef4d6f9442b','Front wheel 9','L-W9','Scratched, “used”');
INSERT INTO "items" VALUES(46,'d9348b1090082828','Front wheel 10','L-W10','Scratched, “used”');
INSERT INTO "items" VALUES(47,'7a4aef96d07c8653','Front wheel 11','L-W11','Scratched, “used”');
INSERT INTO "items" VALUES(48,'559180e47b3efea9','Front wheel 12','L-W12','Scratched, “used”');
INSERT INTO "items" VALUES(49,'9e92cb8ea749258d','Brass bell','','');
INSERT INTO "items" VALUES(50,'eca647657454623c','Rear wheel','','');
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
INSERT INTO "ledger" VALUES(13,'2026-03-02T08:35:00.000000+00:00','put away','owner','{"code":"D001","listing":"L-D1","stay":"8848a2a7629dce1b","title":"Rear derailleur 1","turn":1}','49bd31b5c49c364bb8965fd759c2bea1494ad4e30084f07a5d84851cc6ad07a1');
INSERT INTO "ledger" VALUES(14,'2026-03-02T08:38:00.000000+00:00','put away','owner','{"code":"D002","listing":"L-D2","stay":"4d2ebd5b38def24a","title":"Rear derailleur 2","turn":1}','cdd5f750feb31786d43bcccce2e1a9a79a1ba2c6ae1668820e4193d0704420c3');
INSERT INTO "ledger" VALUES(15,'2026-03-02T08:41:00.000000+00:00','put away','owner','{"code":"D003","listing":"L-D3","stay":"40ceb56fd11e8bd0","title":"Rear derailleur 3","turn":1}','55d4157d00a2d4e3a94f0cd394c6ef2592f3e0c671b5ae189d9bd0bd8ff9dde3');
INSERT INTO "ledger" VALUES(16,'2026-03-02T08:44:00.000000+00:00','put away','owner','{"code":"D004","listing":"L-D4","stay":"d9b1358770d0587b","title":"Rear derailleur 4","turn":1}','515611ce049b3b680a24e4b946ec522ad75162ed28692f81effd88b4ce05df50');
INSERT INTO "ledger" VALUES(17,'2026-03-02T08:47:00.000000+00:00','put away','owner','{"code":"D005","listing":"L-D5","stay":"791037afeaad7b98","title":"Rear derailleur 5","turn":1}','2f23d161ffc8fe004fc85a4d7906de67f7e9481938144ac9731cacd42bd96d69');
INSERT INTO "ledger" VALUES(18,'2026-03-02T08:50:00.000000+00:00','put away','owner','{"code":"D006","listing":"L-D6","stay":"f371378d8763af22","title":"Rear derailleur 6","turn":1}','071907435653dffc75b4f29e2415db5454486cbb6d9fd989ffce9942f9519f3f');
INSERT INTO "ledger" VALUES(19,'2026-03-02T08:53:00.000000+00:00','put away','owner','{"code":"D007","listing":"L-D7","stay":"6a2b0210b9d20db5","title":"Rear derailleur 7","turn":1}','37489a1901deefa5fdc57ba60c64a90a567248e75aee75f1e7bcc57b921acc75');
INSERT INTO "ledger" VALUES(20,'2026-03-02T08:56:00.000000+00:00','put away','owner','{"code":"D008","listing":"L-D8","stay":"6c8fed8cf4f80f39","title":"Rear derailleur 8","turn":1}','620a1e397be2824c5565e23e61c5f2ec5560d1c0b4d21ef9600cbb060f5c6a98');
INSERT INTO "ledger" VALUES(21,'2026-03-02T08:59:00.000000+00:00','put away','owner','{"code":"D009","listing":"L-D9","stay":"1ae458dd6186dd77","title":"Rear derailleur 9","turn":1}','57914856ee442de045f2c55a7d755dc0dfdf91ac450835a1cff90df500421a26');
INSERT INTO "ledger" VALUES(22,'2026-03-02T09:02:00.000000+00:00','put away','owner','{"code":"D010","listing":"L-D10","stay":"fbf9698f2b225f11","title":"Rear derailleur 10","turn":1}','9dbe85ea6c94bd99e0f7ab64bb0e3a8474a07fc27c2d90d94b4396334360eb30');
INSERT INTO "ledger" VALUES(23,'2026-03-02T09:05:00.000000+00:00','put away','owner','{"code":"D011","listing":"L-D11","stay":"d72d99e18ad5657e","title":"Rear derailleur 11","turn":1}','fc5241c97b5fda8978a7586470c5acd072749382650dba834da9f1d0abe70256');
INSERT INTO "ledger" VALUES(24,'2026-03-02T09:08:00.000000+00:00','put away','owner','{"code":"D012","listing":"L-D12","stay":"077305010128e49a","title":"Rear derailleur 12","turn":1}','d407eeab812b131f2185b1fc6c4e1c3574e9f43ad8bc1ecf6fd2bc9449c31bd1');
INSERT INTO "ledger" VALUES(25,'2026-03-02T09:11:00.000000+00:00','put away','owner','{"code":"S001","listing":"L-S1","stay":"9f8de4c4b4337061","title":"Leather saddle 1","turn":1}','5bb0bb0b7d092bdf69216b753ea435e82f6513ec3d323c2839077e5ffd2ad8b9');
INSERT INTO "ledger" VALUES(26,'2026-03-02T09:14:00.000000+00:00','put away','owner','{"code":"S002","listing":"L-S2","stay":"75055228ac4799d6","title":"Leather saddle 2","turn":1}','37e3aa2cbc4ca30f81aaafa40b9fdd000e6e99b9de8d0be0a69f4309456f0dc8');
INSERT INTO "ledger" VALUES(27,'2026-03-02T09:17:00.000000+00:00','put away','owner','{"code":"S003","listing":"L-S3","stay":"2d9dbfcbcc8b300c","title":"Leather saddle 3","turn":1}','22e341d54c0f510a328ad0a229eabab808e6d37656a30b64088b982f06859b79');
INSERT INTO "ledger" VALUES(28,'2026-03-02T09:20:00.000000+00:00','put away','owner','{"code":"S004","listing":"L-S4","stay":"7ed57a6be30045ee","title":"Leather saddle 4","turn":1}','c96346ac8a3c53299ff3cf2b351aebbf9ff8b12c71b2512106dd1e4134998ee1');
INSERT INTO "ledger" VALUES(29,'2026-03-02T09:23:00.000000+00:00','put away','owner','{"code":"S005","listing":"L-S5","stay":"5215cc34a4b54c4e","title":"Leather saddle 5","turn":1}','14c77ab70d7e97b7a93066bb3906c82626a7ac87927de28bab4b34835c6c6e24');
INSERT INTO "ledger" VALUES(30,'2026-03-02T09:26:00.000000+00:00','put away','owner','{"code":"S006","listing":"L-S6","stay":"09a1804a73336e23","title":"Leather saddle 6","turn":1}','86ffc816c2d220b1038fcf0566c809464e1c81056b5a50926cfaa4aa6e5e5e18');
INSERT INTO "ledger" VALUES(31,'2026-03-02T09:29:00.000000+00:00','put away','owner','{"code":"S007","listing":"L-S7","stay":"12649aee28164821","title":"Leather saddle 7","turn":1}','4e7f467ba60d08776908d51bbf5ed60fc124a45111be83c34bb291df37ca4c1d');
INSERT INTO "ledger" VALUES(32,'2026-03-02T09:32:00.000000+00:00','put away','owner','{"code":"S008","listing":"L-S8","stay":"7c50eb65d2941769","title":"Leather saddle 8","turn":1}','59f014eef155cb99a3d1b235542247309f51e5d3c51baf0272885be96d1353df');
INSERT INTO "ledger" VALUES(33,'2026-03-02T09:35:00.000000+00:00','put away','owner','{"code":"S009","listing":"L-S9","stay":"35757d443ddf6e85","title":"Leather saddle 9","turn":1}','36ef026a930f40ad967af91608b5ab2608e2cef54d295c164781f17998c978df');
INSERT INTO "ledger" VALUES(34,'2026-03-02T09:38:00.000000+00:00','put away','owner','{"code":"S010","listing":"L-S10","stay":"d3795f5ae5459591","title":"Leather saddle 10","turn":1}','1b716d6c681b9bf24a4f6f573f65c18dfccf87633c20bdf71e6748cabfad5b05');
INSERT INTO "ledger" VALUES(35,'2026-03-02T09:41:00.000000+00:00','put away','owner','{"code":"S011","listing":"L-S11","stay":"b45c85d325bc5f36","title":"Leather saddle 11","turn":1}','e569663661308c335d060a2a2c708d9fb118192f2de0271eb49bdd1c10034305');
INSERT INTO "ledger" VALUES(36,'2026-03-02T09:44:00.000000+00:00','put away','owner','{"code":"S012","listing":"L-S12","stay":"013f3f8cd2067645","title":"Leather saddle 12","turn":1}','e7ad944cf250f66c2460895e176df43e824af40d4c7becd25572611e978a5ec9');
INSERT INTO "ledger" VALUES(37,'2026-03-02T09:47:00.000000+00:00','put away','owner','{"code":"L001","listing":"L-L1","stay":"82d4930646b8a29b","title":"Dynamo lamp 1","turn":1}','5e761ab5dc26914bd34bc652f86e8626dcb27f51a2e9235b24bb0d5055a1d132');
INSERT INTO "ledger" VALUES(38,'2026-03-02T09:50:00.000000+00:00','put away','owner','{"code":"L002","listing":"L-L2","stay":"fb46f6da6b3be7db","title":"Dynamo lamp 2","turn":1}','588ae5bbe33b47fa5c47e62f0b4c4c94d6c1990e10cb1874901a87f7b3ec7f20');
INSERT INTO "ledger" VALUES(39,'2026-03-02T09:53:00.000000+00:00','put away','owner','{"code":"L003","listing":"L-L3","stay":"443fa006b03d0b92","title":"Dynamo lamp 3","turn":1}','0fa6b3be71dcd736b068cc2be4ae1d232b4ddfabbcb41c6ae81dfe4c3efdd5e9');
INSERT INTO "ledger" VALUES(40,'2026-03-02T09:56:00.000000+00:00','put away','owner','{"code":"L004","listing":"L-L4","stay":"0be82105bda22c63","title":"Dynamo lamp 4","turn":1}','d53d770aa792d00f89fdbb6b7205de3f30f5df1918701921530f293f1a4abea1');
INSERT INTO "ledger" VALUES(41,'2026-03-02T09:59:00.000000+00:00','put away','owner','{"code":"L005","listing":"L-L5","stay":"ff258e99eadfd4a7","title":"Dynamo lamp 5","turn":1}','30b9c72a70caa89e35a8c47f8f260ee9a221c1717b001716a95d54bac6264a0f');
INSERT INTO "ledger" VALUES(42,'2026-03-02T10:02:00.000000+00:00','put away','owner','{"code":"L006","listing":"L-L6","stay":"c54e014e006e29e3","title":"Dynamo lamp 6","turn":1}','79f6f9fe404045f386e8e1d07c9453c76859017fcabee5c16a5d6b340d12bc7b');
INSERT INTO "ledger" VALUES(43,'2026-03-02T10:05:00.000000+00:00','put away','owner','{"code":"L007","listing":"L-L7","stay":"dbabe7f21c6d848b","title":"Dynamo lamp 7","turn":1}','58f83c310871af9b64969d0e3e6bad52fbb5aa5f27c3f17b16e083c226b01e38');
INSERT INTO "ledger" VALUES(44,'2026-03-02T10:08:00.000000+00:00','put away','owner','{"code":"L008","listing":"L-L8","stay":"2d2411837e49bab2","title":"Dynamo lamp 8","turn":1}','8e8479e5b59f9d396d12e90cdf8823573a26757d03debe3fbe205abf1d3b56ad');
INSERT INTO "ledger" VALUES(45,'2026-03-02T10:11:00.000000+00:00','put away','owner','{"code":"L009","listing":"L-L9","stay":"d01d2db828375e5d","title":"Dynamo lamp 9","turn":1}','987f7ec288fd8e0a09dfe7b3d1bd34125d67a12e5c027e4a31da2009baade9bd');
INSERT INTO "ledger" VALUES(46,'2026-03-02T10:14:00.000000+00:00','put away','owner','{"code":"L010","listing":"L-L10","stay":"a6ba94b71ac23f45","title":"Dynamo lamp 10","turn":1}','dbd947b7b1c256021e3090d5408a98f10495ec8416e1dc8d1499244e6dc8d75d');
INSERT INTO "ledger" VALUES(47,'2026-03-02T10:17:00.000000+00:00','put away','owner','{"code":"L011","listing":"L-L11","stay":"cce82811bea3cd2a","title":"Dynamo lamp 11","turn":1}','b31fbbb16c0081ca78fc0e40d4ae2f60947acb7e4631bf2a339cfe05e2853fcc');
INSERT INTO "ledger" VALUES(48,'2026-03-02T10:20:00.000000+00:00','put away','owner','{"code":"L012","listing":"L-L12","stay":"7230d1f6942ff003","title":"Dynamo lamp 12","turn":1}','79564e64ab7f3fb43dd66567d8a07c7f832d04128fa96f2accdea9ba2590199f');
INSERT INTO "ledger" VALUES(49,'2026-03-02T10:23:00.000000+00:00','put away','owner','{"code":"W001","listing":"L-W1","stay":"f55da306aa29eb60","title":"Front wheel 1","turn":1}','c0ec4ffb3489fb074a3393ec00568a4c54f3082f75c7142a045c196c465dd6f0');
INSERT INTO "ledger" VALUES(50,'2026-03-02T10:26:00.000000+00:00','put away','owner','{"code":"W002","listing":"L-W2","stay":"cad8b33b938ec794","title":"Front wheel 2","turn":1}','ee0416c9d2ce50c951b39f3dfc80560fb8d440f890d48726d573483271cff579');
INSERT INTO "ledger" VALUES(51,'2026-03-02T10:29:00.000000+00:00','put away','owner','{"code":"W003","listing":"L-W3","stay":"71773d95637cc95b","title":"Front wheel 3","turn":1}','df4639499afe3a65ede176b1c9a977557bf3d03d86d5e87cfec165921cdac5cf');
INSERT INTO "ledger" VALUES(52,'2026-03-02T10:32:00.000000+00:00','put away','owner','{"code":"W004","listing":"L-W4","stay":"ccc8e977d59c85b6","title":"Front wheel 4","turn":1}','43314139bafc227b551dc6cc4919100de76b19008041a6258cab866b26515716');
INSERT INTO "ledger" VALUES(53,'2026-03-02T10:35:00.000000+00:00','put away','owner','{"code":"W005","listing":"L-W5","stay":"00a6022876fd0991","title":"Front wheel 5","turn":1}','0270827544af0bbd6a379494df1b07be5edc8cb84d99accc745384571a53cca9');
INSERT INTO "ledger" VALUES(54,'2026-03-02T10:38:00.000000+00:00','put away','owner','{"code":"W006","listing":"L-W6","stay":"43e207599cd88c56","title":"Front wheel 6","turn":1}','cff856d546675a1d70302fb66f2f9990b6cb96d2324f415ab1cbade809c5859c');
INSERT INTO "ledger" VALUES(55,'2026-03-02T10:41:00.000000+00:00','put away','owner','{"code":"W007","listing":"L-W7","stay":"811f00c074ad677f","title":"Front wheel 7","turn":1}','bf498697d26c0cd02d398deffe35a2e2db7b4f3f075a0d74c611925a7b42476f');
INSERT INTO "ledger" VALUES(56,'2026-03-02T10:44:00.000000+00:00','put away','owner','{"code":"W008","listing":"L-W8","stay":"0f9a6d88e32b020c","title":"Front wheel 8","turn":1}','ea8b7d624589457e6f339a8e11026ef4c9da747c71743a4e2e3d8f0b461ccdf9');
INSERT INTO "ledger" VALUES(57,'2026-03-02T10:47:00.000000+00:00','put away','owner','{"code":"W009","listing":"L-W9","stay":"e20464e934c8c547","title":"Front wheel 9","turn":1}','aa43051f2c947c899bb3620f8a12a7c8bfec442504f4c8ad0a849088d14bf2e0');
INSERT INTO "ledger" VALUES(58,'2026-03-02T10:50:00.000000+00:00','put away','owner','{"code":"W010","listing":"L-W10","stay":"fdb493387927185e","title":"Front wheel 10","turn":1}','76b4f2386d992ce3fcebdd45c7d9bc85cef2f8156526418a171339b44a4686b6');
INSERT INTO "ledger" VALUES(59,'2026-03-02T10:53:00.000000+00:00','put away','owner','{"code":"W011","listing":"L-W11","stay":"28105aa4c63e732f","title":"Front wheel 11","turn":1}','c25ac3d3f5f7c9cd7d94e43f0850cca5b50bafa7b835e5c82e1b8347cde59211');
INSERT INTO "ledger" VALUES(60,'2026-03-02T10:56:00.000000+00:00','put away','owner','{"code":"W012","listing":"L-W12","stay":"19f61a74845726e6","title":"Front wheel 12","turn":1}','d80bb3e62e22fa8eb4624414526007214a43b89fa01b491a95e1a19514dea59a');
INSERT INTO "ledger" VALUES(61,'2026-03-02T10:59:00.000000+00:00','put away','owner','{"code":"D013","listing":"","stay":"33a7aa45c8b8235b","title":"Brass bell","turn":1}','63d43e16029a0c90ba085d40b5ba84b0af1066c0ef3fcc4824d0183912427b58');
INSERT INTO "ledger" VALUES(62,'2026-03-02T11:02:00.000000+00:00','item changed','owner','{"code":"D002","notes":"Cable is new","stay":"4d2ebd5b38def24a"}','06a8de21b6c1be0efec157b0f05c722f8e8f000790a2d1146b7e233a6e1aae48');
INSERT INTO "ledger" VALUES(63,'2026-03-02T11:05:00.000000+00:00','withdrawn','owner','{"code":"S010","reason":"Cracked on inspection","stay":"d3795f5ae5459591"}','dc997823309056c7e2e966001e5403d63d8fcc1cf37f54ea204caa218ce5172a');
INSERT INTO "ledger" VALUES(64,'2026-03-02T11:08:00.000000+00:00','withdrawn','owner','{"code":"W004","reason":"Bent beyond use","stay":"ccc8e977d59c85b6"}','39132a8c81d42ae1306e97a2853c90371f3d87980843fd4d6173515e4a1e168c');
INSERT INTO "ledger" VALUES(65,'2026-03-02T11:11:00.000000+00:00','moved','owner','{"code":"S009","new_stay":"e7fbb5633cc15d1e","stay":"35757d443ddf6e85","to":"S013"}','dfb49ef19d4a7fe012ccdff9b419d76134f8444d742ee85a65c4c91c3306e8f0');
INSERT INTO "ledger" VALUES(66,'2026-03-02T11:14:00.000000+00:00','settings changed','owner','{"auto_close":true,"check":"none","name":"Gears & Saddles","racks":{"base_width":"","bin":"","kg":"","rack":"","rated":"","table":""},"scan_at_bin":true,"zone":"UTC"}','5b4fa99db4f9e73b2177b765e48a220f109ab863970e7aef06ac7c450e30476c');
INSERT INTO "ledger" VALUES(67,'2026-03-02T11:17:00.000000+00:00','racks measured','owner','{"base_width":"","bin":"23 x 8 x 6 in","kg":"","rack":"24 x 48 x 72 in","rated":"","table":"1"}','658df70acd5bd7633bbc41f964a648185f58f4992863483fb709e9cd35b6e9a9');
INSERT INTO "ledger" VALUES(68,'2026-03-02T11:18:00.000000+00:00','card adopted','owner','{"before":null,"code":"D011","text":"AB0123"}','283155d97b1cd0412782b02344936a2c1a7138174509cb18983e6a4e68b80639');
INSERT INTO "ledger" VALUES(69,'2026-03-02T11:19:00.000000+00:00','card adopted','owner','{"before":null,"code":"S011","text":"AB77X"}','08154d3c8fd3adb7e5b876e484e67f5bcdf44051a02cd3d764be15863acb14c0');
INSERT INTO "ledger" VALUES(70,'2026-03-02T11:20:00.000000+00:00','card adopted','owner','{"before":null,"code":"L010","text":"BOX9"}','a9829b0e44d39528566c76dc1bf7af44441b8c741863c8571a2258f76bb82383');
INSERT INTO "ledger" VALUES(71,'2026-03-02T11:23:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"afe16f479349d5a7","reference":"W001-01E","stay":"f55da306aa29eb60"},{"hold":null,"line":"03b5c0b0ce9d2acb","reference":"W002-016","stay":"cad8b33b938ec794"}],"number":"B-01","order":"d7c41c59ce81ed40"}','ebddff193a9bdcfdfe8a808bcdd6b3f3539ac38ba3fd1e7468531f31daa7e5e6');
INSERT INTO "ledger" VALUES(72,'2026-03-02T11:26:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"3cdb4b56dacf5e0b","reference":"S002-013","stay":"75055228ac4799d6"},{"hold":null,"line":"036739309d58f551","reference":"S003-01W","stay":"2d9dbfcbcc8b300c"}],"number":"B-03","order":"b4cb14b4d59e8057"}','dbcafef26b65450ee169692e09a3b876145359661d2792b8333ad791b3b2aa2c');
INSERT INTO "ledger" VALUES(73,'2026-03-02T11:29:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"af01ce22c2b12a5f","reference":"S004-01O","stay":"7ed57a6be30045ee"},{"hold":null,"line":"9c3f4b34da8706ae","reference":"S005-01G","stay":"5215cc34a4b54c4e"}],"number":"B-04","order":"48f884268b27f580"}','058b73aca992520fb0442856c25074c39c61ed8905890d3cdb8feab168bb2f70');
INSERT INTO "ledger" VALUES(74,'2026-03-02T11:32:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"1ab1195b92969d59","reference":"L002-017","stay":"fb46f6da6b3be7db"}],"number":"B-05","order":"0c5d53cbe30f0802"}','f76fa782fad634b948a94f575e11b6c38fbffee48016be2f6b1ae7ef5f98fe81');
INSERT INTO "ledger" VALUES(75,'2026-03-02T11:35:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"d6f366079e60d74f","reference":"L003-010","stay":"443fa006b03d0b92"}],"number":"B-06","order":"8d02b63ec047609d"}','c50abb67dbf32766784ef2aa797613f7eaa3b031349adc372f1e7e7c5f13656e');
INSERT INTO "ledger" VALUES(76,'2026-03-02T11:38:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"b0d8632e07d87312","reference":"L004-01S","stay":"0be82105bda22c63"}],"number":"B-07","order":"6e8c7d83567390e5"}','7495b257ba2040863a1553b25964f4f62e3679744d15220042c645e99520d9c1');
INSERT INTO "ledger" VALUES(77,'2026-03-02T11:41:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9f11d2144a9afe6c","reference":"L005-01K","stay":"ff258e99eadfd4a7"}],"number":"B-08","order":"694d3b3ea5608327"}','88a727c26a922b4c47b3afd7e614600f51a7e27e8119ac7bfe38f7a6f64e734c');
INSERT INTO "ledger" VALUES(78,'2026-03-02T11:44:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"539e6d81b3be987b","reference":"L006-01C","stay":"c54e014e006e29e3"},{"hold":null,"line":"fb3af43d32ead468","reference":"L011-010","stay":"cce82811bea3cd2a"}],"number":"B-09","order":"d5a98bfb9b285f83"}','9e60f93282bdb4a80fbd92b99226adf7e74bd775809176d209496c6a78e1ac71');
INSERT INTO "ledger" VALUES(79,'2026-03-02T11:47:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"8af9cbfed0b4afbf","reference":"S006-018","stay":"09a1804a73336e23"}],"number":"B-13","order":"67eb954728909417"}','2eb7ed000085e216cfe6b65f629200e291e38eacade088a5279d9d6f43b43d0f');
INSERT INTO "ledger" VALUES(80,'2026-03-02T11:50:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"bda00bd2cb39a74f","reference":"L007-014","stay":"dbabe7f21c6d848b"}],"number":"B-17","order":"10cef35290ae65a8"}','1ee0b7421bec82293017378a180744eb31b0089a09d4f859be420178215388ff');
INSERT INTO "ledger" VALUES(81,'2026-03-02T11:53:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"e5a02cea0c75d041","reference":"D009-01B","stay":"1ae458dd6186dd77"}],"number":"B-18","order":"ef7ce0a8063812a1"}','cd3366e30cbdc935401f47fa0adaf8529f0ee48959b6ccdf0198b63cf46c47a0');
INSERT INTO "ledger" VALUES(82,'2026-03-02T11:56:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"20b5c0c7eab81965","reference":"W006-013","stay":"43e207599cd88c56"}],"number":"B-21","order":"6a0a393e61aff39c"}','55fc4f54a68a5b9592aeef0f5d081f9a3762a76140640567233c55b9d27df67f');
INSERT INTO "ledger" VALUES(83,'2026-03-02T11:59:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"2bb7702c54770edd","reference":"S007-01Z","stay":"12649aee28164821"}],"number":"B-22","order":"6e17d1de97ae1843"}','49a1cb0f0a98ca0726849654dbc5fcfadeb85ab28700712195d1b3e0a55f3e85');
INSERT INTO "ledger" VALUES(84,'2026-03-02T12:02:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"cd013879f4f88ddc","reference":"W007-01W","stay":"811f00c074ad677f"},{"hold":null,"line":"9d79054951b689a2","reference":"W008-01O","stay":"0f9a6d88e32b020c"}],"number":"B-23","order":"ef1188b2b676df0c"}','187ad5271074831959a3e06ae8e5b3368d22c03580c957a3637a7a0d01782b47');
INSERT INTO "ledger" VALUES(85,'2026-03-02T12:05:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"be27f205e35879f1","reference":"D008-01J","stay":"6c8fed8cf4f80f39"}],"number":"B-26","order":"c0c5279cc93ac57e"}','58d9cec8139bc08759583e32c22308329580bc6ef22339b59642b2e91a0d3757');
INSERT INTO "ledger" VALUES(86,'2026-03-02T12:08:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"b9ca5c9c755cd8bf","reference":"D003-01U","stay":"40ceb56fd11e8bd0"}],"number":"B-30","order":"7ac8daf51da47767"}','fbdad64a9b2f63795e13da46cf34a140a32e795cf5c735e0e2fc6a49363835a9');
INSERT INTO "ledger" VALUES(87,'2026-03-02T12:11:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"9d20bc8ec21edfd8","reference":"D005-01E","stay":"791037afeaad7b98"},{"hold":"unknown_code","line":"396f215c8273a54c","reference":"Z999","stay":null}],"number":"B-31","order":"689a89bc92ad7a39"}','99d393c4d064c3b007258b9bde5a5fdf188a45a0c6c8efaa918908df53e37105');
INSERT INTO "ledger" VALUES(88,'2026-03-02T12:14:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"0a841a72dc861cc2","reference":"D006-016","stay":"f371378d8763af22"},{"hold":null,"line":"1b55e3f21c32e1ad","reference":"D007-01R","stay":"6a2b0210b9d20db5"}],"number":"B-32","order":"70862e01496fbd8f"}','3e126a5b34a6be180fdeee2aac9e366ebc032bb41664a60edd78b14d0d92b124');
INSERT INTO "ledger" VALUES(89,'2026-03-02T12:17:00.000000+00:00','order changed','owner','{"lines":[{"hold":"not_in_file","line":"1b55e3f21c32e1ad","reference":"D007-01R","stay":"6a2b0210b9d20db5"}],"number":"B-32","order":"70862e01496fbd8f"}','6507c30210b78d93040f7fe4e7d81625e25ce0a1c3321fde682e1fff13f348da');
INSERT INTO "ledger" VALUES(90,'2026-03-02T12:20:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"unknown_code","line":"9f145e361940747a","reference":"lamp","stay":null}],"number":"B-33","order":"1f5a85872296fdff"}','e3e4735b3ce96626945e3bd2ed86c63e3e6d1c3db2453ddb8b187af852406624');
INSERT INTO "ledger" VALUES(91,'2026-03-02T12:23:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"already_sold","line":"dd2117b698a60304","reference":"D006-016","stay":null}],"number":"B-34","order":"a33d3266645b561f"}','9450a98e2b8eb7e15265378d93eb80bbfdf598e37cde0101eaf9b2eaa3e8345d');
INSERT INTO "ledger" VALUES(92,'2026-03-02T12:26:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"withdrawn","line":"ee333e216e3ddb7b","reference":"W004-01J","stay":null}],"number":"B-35","order":"d2f907855b2fed8d"}','02863f328f556e3f51d601ad92327d5ee0c0939e5c33f5fad6177af2dd30fe9c');
INSERT INTO "ledger" VALUES(93,'2026-03-02T12:29:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"slot_free","line":"55e8fcf625bf5209","reference":"L015","stay":null}],"number":"B-36","order":"99e51a6fab87a25a"}','daceb1fcdd6efe0691fb4ba883f11882be01656fd45fb3a3127768ec89b83bf0');
INSERT INTO "ledger" VALUES(94,'2026-03-02T12:32:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":"doubtful","line":"a0f7130671c4a393","reference":"W005-01B","stay":"00a6022876fd0991"}],"number":"B-37","order":"d2c08b28ce676e69"}','64db9a8ac5e714425e0f13d717f38011c40ce82a601a4aad028677cd32a3c914');
INSERT INTO "ledger" VALUES(95,'2026-03-02T12:35:00.000000+00:00','settled','owner','{"hold":"doubtful","line":"a0f7130671c4a393","stay":"00a6022876fd0991"}','a2690ebe4786adbd30babad5af59200c2e9b4d01c5f1b15d9649dc713c744dda');
INSERT INTO "ledger" VALUES(96,'2026-03-02T12:38:00.000000+00:00','held','owner','{"line":"bda00bd2cb39a74f","why":"Another lamp, by the photo"}','b4828555749fc5bff479fbf0e19fc1ddc51eb56987782a082069880f0f90bd3e');
INSERT INTO "ledger" VALUES(97,'2026-03-02T12:41:00.000000+00:00','cancelled','owner','{"lines":["9f11d2144a9afe6c"],"number":"B-08","order":"694d3b3ea5608327"}','6615710e8f44e644b37906e0dcc82cd63c4f2bbaa3bd66390117b6a7cf845aed');
INSERT INTO "ledger" VALUES(98,'2026-03-02T12:44:00.000000+00:00','cancelled','owner','{"lines":["20b5c0c7eab81965"],"number":"B-21","order":"6a0a393e61aff39c"}','73bc153c02448715d46fff12ca0c553ccbfc30e4089ab324d987a58b56bfaf07');
INSERT INTO "ledger" VALUES(99,'2026-03-02T12:47:00.000000+00:00','revived','owner','{"line":"20b5c0c7eab81965","stay":"43e207599cd88c56"}','0afb1a0dbaca887f91bad15ddf25797f40839829445598f8757824b7cf01d336');
INSERT INTO "ledger" VALUES(100,'2026-03-02T12:50:00.000000+00:00','moved','owner','{"code":"D008","new_stay":"2670a567b358241a","stay":"6c8fed8cf4f80f39","to":"D020"}','3e473dad06fac3af2b832410e3c10446d5af3c848cd7472a4dcbe026e891de7d');
INSERT INTO "ledger" VALUES(101,'2026-03-02T12:55:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":null,"line":"7a5db0c69711e57a","reference":"S012-01O","stay":"013f3f8cd2067645"}],"number":"F-1","order":"4ed38e06eb2f1821"}','66496f6a9f1dfebcd3036f9351d09e89e034dc990d7822772e8367c566d34b92');
INSERT INTO "ledger" VALUES(102,'2026-03-02T12:55:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"bad_row","line":"e8dad99747c79440","reference":"","stay":null}],"number":"F-2","order":"129ca2ae05316b25"}','736590cf92811f4d7137bebc374a3fa5115a4b5341265744bfeffec355efdd8e');
INSERT INTO "ledger" VALUES(103,'2026-03-02T12:58:00.000000+00:00','round opened','owner','{"lines":["afe16f479349d5a7","03b5c0b0ce9d2acb","3cdb4b56dacf5e0b","036739309d58f551","af01ce22c2b12a5f","9c3f4b34da8706ae","539e6d81b3be987b","fb3af43d32ead468","8af9cbfed0b4afbf","2bb7702c54770edd","cd013879f4f88ddc","9d79054951b689a2"],"round":"41d8cee999a482ed"}','44e51f303c58b180737e0c64b7dab71d15bb72b35199028f99b77e56bd21f00f');
INSERT INTO "ledger" VALUES(104,'2026-03-02T13:01:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"D004","key":"free-D004","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"not_ordered","released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["D0049"],"verdict":"refused","via":"wedge"}','de405802d17cb6f369e787c980175952925f79e311a0371764183137a7324d95');
INSERT INTO "ledger" VALUES(105,'2026-03-02T13:04:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pick-W001","line":"afe16f479349d5a7","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','527b20f90e8f41572d1e9d9f01214134325d5e034b7a674cc84a3caed214431e');
INSERT INTO "ledger" VALUES(106,'2026-03-02T13:07:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pick-W002","line":"03b5c0b0ce9d2acb","line_state":"picked","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','3b9923bc4f47b3958fd81c30119b10a947f10ab31143fe8c68e6546806abb523');
INSERT INTO "ledger" VALUES(107,'2026-03-02T13:10:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pick-S002","line":"3cdb4b56dacf5e0b","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','9f8f874ff140f60a915004307b209483f78e27b8f08645bca1fcfce9e829b3b7');
INSERT INTO "ledger" VALUES(108,'2026-03-02T13:13:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S003","key":"pick-S003","line":"036739309d58f551","line_state":"picked","order_number":"B-03","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0036"],"verdict":"accepted","via":"wedge"}','159c2a70c3cb8362f40c5109697daa300e0155735ee6932cebc709ce02d8184f');
INSERT INTO "ledger" VALUES(109,'2026-03-02T13:16:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pick-S004","line":"af01ce22c2b12a5f","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','ee83e9d7266945abae9caaf111ba448cbcf1d5a291c30bfecac31f580d1112af');
INSERT INTO "ledger" VALUES(110,'2026-03-02T13:19:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S005","key":"pick-S005","line":"9c3f4b34da8706ae","line_state":"picked","order_number":"B-04","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0052"],"verdict":"accepted","via":"wedge"}','02b9133e49cae4432b399877da70326f0e55486885d833f0be9ec2ac2b44ce00');
INSERT INTO "ledger" VALUES(111,'2026-03-02T13:22:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pick-L006","line":"539e6d81b3be987b","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','ffe2060ba6df007eb7f2eef719a55a3599dca8cf52930eb361e699f044bc9d7e');
INSERT INTO "ledger" VALUES(112,'2026-03-02T13:25:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L011","key":"pick-L011","line":"fb3af43d32ead468","line_state":"picked","order_number":"B-09","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["L0112"],"verdict":"accepted","via":"wedge"}','218675606d0f5ec12ea56f06aa33bbd50cdac71cf6150ffedd1afa4feaee1a6d');
INSERT INTO "ledger" VALUES(113,'2026-03-02T13:28:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S006","key":"pick-S006","line":"8af9cbfed0b4afbf","line_state":"picked","order_number":"B-13","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0069"],"verdict":"accepted","via":"wedge"}','d5b0ba72225d2bb627104c5c8e62e069f549ee50f7a8749b88ca15e4858681e0');
INSERT INTO "ledger" VALUES(114,'2026-03-02T13:31:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S007","key":"pick-S007","line":"2bb7702c54770edd","line_state":"picked","order_number":"B-22","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["S0077"],"verdict":"accepted","via":"wedge"}','d2743830315e04b6dcea5050929f1f423e711179666a4682ed045d61665a29f0');
INSERT INTO "ledger" VALUES(115,'2026-03-02T13:34:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pick-W007","line":"cd013879f4f88ddc","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','7247d9db554d717072c9f05fd8f283f66e9fe9833080d69678d8ee44fd7b3aa7');
INSERT INTO "ledger" VALUES(116,'2026-03-02T13:37:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W008","key":"pick-W008","line":"9d79054951b689a2","line_state":"picked","order_number":"B-23","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"41d8cee999a482ed","station":"bin","take_out":false,"text":["W0088"],"verdict":"accepted","via":"wedge"}','8696f25d930ba3d11428b70b43871b339e36539ae887a313a5aa04e46d54d246');
INSERT INTO "ledger" VALUES(117,'2026-03-02T13:40:00.000000+00:00','undone','owner','{"key":"pick-W008","line":"9d79054951b689a2","line_state":"waiting"}','796aa5caa87ecc2a79e2a3b585b01c5e4a6e89bd983393adbfa46508a960c13c');
INSERT INTO "ledger" VALUES(118,'2026-03-02T13:43:00.000000+00:00','round closed','owner','{"round":"41d8cee999a482ed"}','bce1c3bd95c3d9af40fac51aa7384ce84d9d74b8f08af3b98a08e95c362e13c0');
INSERT INTO "ledger" VALUES(119,'2026-03-02T13:46:00.000000+00:00','parcel opened','owner','{"orders":["d7c41c59ce81ed40"],"parcel":"8307eee0d0f8d76f","table":"main"}','285149d792d507be000eb2d51a3d54a4a157684df1a6d1117258290f16e2f273');
INSERT INTO "ledger" VALUES(120,'2026-03-02T13:49:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":"S002","key":"other-S002","line":"3cdb4b56dacf5e0b","line_state":"picked","order_number":"B-03","parcel":"8307eee0d0f8d76f","parcel_state":"open","reason":"other_order","released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"refused","via":"wedge"}','d1e95b56c385ba361a6968daece99061055ca721263acb85f1f3b1848a63785c');
INSERT INTO "ledger" VALUES(121,'2026-03-02T13:52:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"pack-W001","line":"afe16f479349d5a7","line_state":"packed","order_number":"B-01","parcel":"8307eee0d0f8d76f","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','81b7c4933274121922cfbc41f2acdd1e5882a51f4376fd5ecdd0f8d36e782237');
INSERT INTO "ledger" VALUES(122,'2026-03-02T13:55:00.000000+00:00','parcel closed','owner','{"orders":["d7c41c59ce81ed40"],"parcel":"8307eee0d0f8d76f","released":["W001","W002"]}','0fe45bc42385f69e8b1e055674b18f3edb3cda7f615c939d9990e7616895f379');
INSERT INTO "ledger" VALUES(123,'2026-03-02T13:55:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W002","key":"pack-W002","line":"03b5c0b0ce9d2acb","line_state":"released","order_number":"B-01","parcel":"8307eee0d0f8d76f","parcel_state":"closed","reason":null,"released":["W001","W002"],"spot":"main","station":"table","take_out":false,"text":["W0029"],"verdict":"accepted","via":"wedge"}','5777bf00b3d7c8006e93d8e9c07d6fb463c32a894f125dcba767e1c4c93294ca');
INSERT INTO "ledger" VALUES(124,'2026-03-02T13:58:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W001","key":"back-W001","line":"afe16f479349d5a7","line_state":"released","order_number":"B-01","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"","station":"tray","take_out":false,"text":["W0012"],"verdict":"accepted","via":"wedge"}','1c0855f8592fead36afeb814029452e5ebf97307355b414a395a2bb2db9934ce');
INSERT INTO "ledger" VALUES(125,'2026-03-02T14:01:00.000000+00:00','put away','owner','{"code":"W001","listing":"","stay":"98654c6d5370ea2e","title":"Rear wheel","turn":2}','bce89b6847960efff3906f136637f9bb8bcf2a12fd0b0375de47fb94cda838e4');
INSERT INTO "ledger" VALUES(126,'2026-03-02T14:04:00.000000+00:00','parcel opened','owner','{"orders":["ef1188b2b676df0c"],"parcel":"c7445edb416971f2","table":"main"}','2da675c25ba12d76d48e191487093d36223028d0d19e443c324239c036079e53');
INSERT INTO "ledger" VALUES(127,'2026-03-02T14:07:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"W007","key":"pack-W007","line":"cd013879f4f88ddc","line_state":"packed","order_number":"B-23","parcel":"c7445edb416971f2","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["W0070"],"verdict":"accepted","via":"wedge"}','047a1f5d492ed510bba3dee84eed1797596a1983f5542e4c4cdb14d484698d47');
INSERT INTO "ledger" VALUES(128,'2026-03-02T14:10:00.000000+00:00','parcel closed','owner','{"orders":["ef1188b2b676df0c"],"parcel":"c7445edb416971f2","released":["W007"]}','59e1a0fcd58f69555e56944f5151af1da63c3c0100459e334c6dcc70bb3b0811');
INSERT INTO "ledger" VALUES(129,'2026-03-02T14:13:00.000000+00:00','parcel reopened','owner','{"orders":["ef1188b2b676df0c"],"parcel":"c7445edb416971f2"}','f57ae2a812d9b790e99a52e21057f59a7402f49fb4a941be3ee6ee33feb1736b');
INSERT INTO "ledger" VALUES(130,'2026-03-02T14:16:00.000000+00:00','parcel closed','owner','{"orders":["ef1188b2b676df0c"],"parcel":"c7445edb416971f2","released":["W007"]}','ccaf01898fe989f1ec5d85aa3ef877f241cd6edac9a944c52eae56e9cedee786');
INSERT INTO "ledger" VALUES(131,'2026-03-02T14:19:00.000000+00:00','parcel opened','owner','{"orders":["6e17d1de97ae1843"],"parcel":"573c837d2d451798","table":"main"}','4fd8cbdbcdb2db24466ee66479a9c0de64874f11b13460946e1c47edaa19f9c6');
INSERT INTO "ledger" VALUES(132,'2026-03-02T14:22:00.000000+00:00','parcel dropped','owner','{"parcel":"573c837d2d451798"}','5682b5299e97509b58ec7786a4ef14223a2c1c1223b7ffba2e1f77b72cd29ecb');
INSERT INTO "ledger" VALUES(133,'2026-03-02T14:25:00.000000+00:00','parcel opened','owner','{"orders":["48f884268b27f580"],"parcel":"420ed1bf76b6767d","table":"main"}','983c9b6820f5ea6f132b6e676f9cd10e90dc89bdc639a0a2f7636ce08d54c05b');
INSERT INTO "ledger" VALUES(134,'2026-03-02T14:28:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S004","key":"pack-S004","line":"af01ce22c2b12a5f","line_state":"packed","order_number":"B-04","parcel":"420ed1bf76b6767d","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0044"],"verdict":"accepted","via":"wedge"}','104e18907cc7a964ceb1fdc62c4968efc18145649a0a79949b4bbfae1cdfd986');
INSERT INTO "ledger" VALUES(135,'2026-03-02T14:31:00.000000+00:00','parcel set aside','owner','{"parcel":"420ed1bf76b6767d"}','7669f687333220d74284415ba02630db9800e1a2d38b3c540db1e4966e17192e');
INSERT INTO "ledger" VALUES(136,'2026-03-02T14:34:00.000000+00:00','parcel opened','owner','{"orders":["d5a98bfb9b285f83"],"parcel":"768620a5832a206a","table":"second"}','faef511c2fb0a7e5f1dd08dcff356cba8d308e7ab5c3017d1bbb3449ef6f7d10');
INSERT INTO "ledger" VALUES(137,'2026-03-02T14:37:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L006","key":"pack-L006","line":"539e6d81b3be987b","line_state":"packed","order_number":"B-09","parcel":"768620a5832a206a","parcel_state":"open","reason":null,"released":[],"spot":"second","station":"table","take_out":false,"text":["L0065"],"verdict":"accepted","via":"wedge"}','d5ebec74c1c3631808658b05761829c20136c2eb47eedb0f5e0c2746fcbd4578');
INSERT INTO "ledger" VALUES(138,'2026-03-02T14:40:00.000000+00:00','cancelled','owner','{"lines":["539e6d81b3be987b","fb3af43d32ead468"],"number":"B-09","order":"d5a98bfb9b285f83"}','df77a2dab168a2089a9012c94b51d16014c2e255c9009df2c4ec8ec3b0bc42e2');
INSERT INTO "ledger" VALUES(139,'2026-03-02T14:43:00.000000+00:00','parcel opened','owner','{"orders":["b4cb14b4d59e8057"],"parcel":"89b1768aee5a3b6b","table":"main"}','f0de2cc6bcbdd557d7e63fcb637ead06a1c2952bfb65eb74aba125b731c20c2e');
INSERT INTO "ledger" VALUES(140,'2026-03-02T14:46:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"S002","key":"pack-S002","line":"3cdb4b56dacf5e0b","line_state":"packed","order_number":"B-03","parcel":"89b1768aee5a3b6b","parcel_state":"open","reason":null,"released":[],"spot":"main","station":"table","take_out":false,"text":["S0028"],"verdict":"accepted","via":"wedge"}','33536e04a65a5ca802f644d793f8cde5cb00e4c4283147a07cb511cc64e2fff7');
INSERT INTO "ledger" VALUES(141,'2026-03-02T14:49:00.000000+00:00','order changed','owner','{"lines":[{"hold":"changed_after_pick","line":"8af9cbfed0b4afbf","reference":"S006-018","stay":"09a1804a73336e23"}],"number":"B-13","order":"67eb954728909417"}','1d13b1ef61546afe04336ebea16fd1547c1396b0626b67dcfd870c87b09bf83a');
INSERT INTO "ledger" VALUES(142,'2026-03-02T14:52:00.000000+00:00','round opened','owner','{"lines":["1ab1195b92969d59","d6f366079e60d74f","b0d8632e07d87312","be27f205e35879f1"],"round":"7c7ab5a8e61dfbfc"}','795e2318b8de2991dc5be01146ba5656edc48be63d34f920138042f6af16c5f6');
INSERT INTO "ledger" VALUES(143,'2026-03-02T14:55:00.000000+00:00','scan','owner','{"changed":true,"client_at":null,"code":"L002","key":"pick-L002","line":"1ab1195b92969d59","line_state":"picked","order_number":"B-05","parcel":null,"parcel_state":null,"reason":null,"released":[],"spot":"7c7ab5a8e61dfbfc","station":"bin","take_out":false,"text":["L0024"],"verdict":"accepted","via":"wedge"}','6427b64baa0332934c2cc257f26a87b793993f252ba7166cc723c296dc69bcd4');
INSERT INTO "ledger" VALUES(144,'2026-03-02T14:58:00.000000+00:00','short','owner','{"line":"b0d8632e07d87312","note":"Not in its bin"}','6f153399c34fab2556dadfec33ca83fb895e6718e0676547f1524af6186d6c89');
INSERT INTO "ledger" VALUES(145,'2026-03-02T15:01:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-D0146","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"bad_check","released":[],"spot":"7c7ab5a8e61dfbfc","station":"bin","take_out":false,"text":["D0146"],"verdict":"refused","via":"wedge"}','937f40004f290f928806e72119a617115467b40d1285bbc2ae0f657dfc48d341');
INSERT INTO "ledger" VALUES(146,'2026-03-02T15:04:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-hello","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unknown_code","released":[],"spot":"7c7ab5a8e61dfbfc","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','188f777e38501489a5f7f23fd8d2327058113f4da25106017c1bd75b6b458fa8');
INSERT INTO "ledger" VALUES(147,'2026-03-02T15:07:00.000000+00:00','scan','owner','{"changed":false,"client_at":null,"code":null,"key":"bad-","line":null,"line_state":null,"order_number":null,"parcel":null,"parcel_state":null,"reason":"unreadable","released":[],"spot":"7c7ab5a8e61dfbfc","station":"bin","take_out":false,"text":[],"verdict":"refused","via":"wedge"}','015af97ce7021bafb190b8e2c3692352422a33ec3265b45c6c448a25c899493f');
INSERT INTO "ledger" VALUES(148,'2026-03-02T15:10:00.000000+00:00','card lost','owner','{"code":"L001"}','5e13b1cb2fbadab5818dba6b4f9fccce31c1c8f148238b4667468a9477723d28');
INSERT INTO "ledger" VALUES(149,'2026-03-02T15:13:00.000000+00:00','card lost','owner','{"code":"W015"}','a377f8a52cf9507e8078718f4725f754267478bf479eb31bb69b6959d3b4b7d5');
INSERT INTO "ledger" VALUES(150,'2026-03-02T15:16:00.000000+00:00','order received','owner','{"channel":"fair","lines":[{"hold":null,"line":"65eaa18f8afa48cb","reference":"D001-019","stay":"8848a2a7629dce1b"},{"hold":"already_sold","line":"1c826192fb3e264e","reference":"W002-016","stay":null}],"number":"B-38","order":"88b6d29424a9837e"}','467408aae44db84d96b3c81921dda970267081cd465a41c92000d38f681a819c');
INSERT INTO "ledger" VALUES(151,'2026-03-02T15:19:00.000000+00:00','order received','owner','{"channel":"","lines":[{"hold":"stale_code","line":"f07ae150160c0294","reference":"W001","stay":null}],"number":"B-39","order":"cbdbc3e02ec03ba7"}','d975d77291bd869df3e7a2a56a7e0a8b8e4896685c4d6a98e13a4ce2c9ede315');
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
INSERT INTO "lines" VALUES(1,'afe16f479349d5a7','d7c41c59ce81ed40',1,'W001-01E','Front wheel 1','','f55da306aa29eb60','released',NULL,'','8307eee0d0f8d76f','41d8cee999a482ed',1,NULL,1);
INSERT INTO "lines" VALUES(2,'03b5c0b0ce9d2acb','d7c41c59ce81ed40',2,'W002-016','Front wheel 2','','cad8b33b938ec794','released',NULL,'','8307eee0d0f8d76f','41d8cee999a482ed',1,'pack-W002',1);
INSERT INTO "lines" VALUES(3,'3cdb4b56dacf5e0b','b4cb14b4d59e8057',1,'S002-013','Leather saddle 2','','75055228ac4799d6','packed',NULL,'','89b1768aee5a3b6b','41d8cee999a482ed',2,'pack-S002',1);
INSERT INTO "lines" VALUES(4,'036739309d58f551','b4cb14b4d59e8057',2,'S003-01W','Leather saddle 3','','2d9dbfcbcc8b300c','picked',NULL,'',NULL,'41d8cee999a482ed',2,'pick-S003',1);
INSERT INTO "lines" VALUES(5,'af01ce22c2b12a5f','48f884268b27f580',1,'S004-01O','Leather saddle 4','','7ed57a6be30045ee','packed',NULL,'','420ed1bf76b6767d','41d8cee999a482ed',3,'pack-S004',1);
INSERT INTO "lines" VALUES(6,'9c3f4b34da8706ae','48f884268b27f580',2,'S005-01G','Leather saddle 5','','5215cc34a4b54c4e','picked',NULL,'',NULL,'41d8cee999a482ed',3,'pick-S005',1);
INSERT INTO "lines" VALUES(7,'1ab1195b92969d59','0c5d53cbe30f0802',1,'L002-017','Dynamo lamp 2','','fb46f6da6b3be7db','picked',NULL,'',NULL,'7c7ab5a8e61dfbfc',1,'pick-L002',1);
INSERT INTO "lines" VALUES(8,'d6f366079e60d74f','8d02b63ec047609d',1,'L003-010','Dynamo lamp 3','','443fa006b03d0b92','waiting',NULL,'',NULL,'7c7ab5a8e61dfbfc',2,NULL,1);
INSERT INTO "lines" VALUES(9,'b0d8632e07d87312','6e8c7d83567390e5',1,'L004-01S','Dynamo lamp 4','','0be82105bda22c63','short',NULL,'',NULL,'7c7ab5a8e61dfbfc',3,NULL,1);
INSERT INTO "lines" VALUES(10,'9f11d2144a9afe6c','694d3b3ea5608327',1,'L005-01K','Dynamo lamp 5','','ff258e99eadfd4a7','cancelled',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(11,'539e6d81b3be987b','d5a98bfb9b285f83',1,'L006-01C','Dynamo lamp 6','','c54e014e006e29e3','packed','cancelled_in_box','Cancelled while in the parcel. Take it out with a scan.','768620a5832a206a','41d8cee999a482ed',4,NULL,1);
INSERT INTO "lines" VALUES(12,'fb3af43d32ead468','d5a98bfb9b285f83',2,'L011-010','Dynamo lamp 11','','cce82811bea3cd2a','cancelled',NULL,'',NULL,'41d8cee999a482ed',4,NULL,1);
INSERT INTO "lines" VALUES(13,'8af9cbfed0b4afbf','67eb954728909417',1,'S006-018','Saddle with springs','','09a1804a73336e23','picked','changed_after_pick','The order now says “Saddle with springs”, before it said “Leather saddle 6”.',NULL,'41d8cee999a482ed',5,NULL,1);
INSERT INTO "lines" VALUES(14,'bda00bd2cb39a74f','10cef35290ae65a8',1,'L007-014','Dynamo lamp 7','','dbabe7f21c6d848b','waiting','suspect','Another lamp, by the photo',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(15,'e5a02cea0c75d041','ef7ce0a8063812a1',1,'D009-01B','Rear derailleur 9','','1ae458dd6186dd77','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(16,'20b5c0c7eab81965','6a0a393e61aff39c',1,'W006-013','Front wheel 6','','43e207599cd88c56','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(17,'2bb7702c54770edd','6e17d1de97ae1843',1,'S007-01Z','Leather saddle 7','','12649aee28164821','picked',NULL,'',NULL,'41d8cee999a482ed',6,'pick-S007',1);
INSERT INTO "lines" VALUES(18,'cd013879f4f88ddc','ef1188b2b676df0c',1,'W007-01W','Front wheel 7','','811f00c074ad677f','released',NULL,'','c7445edb416971f2','41d8cee999a482ed',7,NULL,1);
INSERT INTO "lines" VALUES(19,'9d79054951b689a2','ef1188b2b676df0c',2,'W008-01O','Front wheel 8','','0f9a6d88e32b020c','waiting',NULL,'',NULL,'41d8cee999a482ed',7,NULL,1);
INSERT INTO "lines" VALUES(20,'be27f205e35879f1','c0c5279cc93ac57e',1,'D008-01J','Rear derailleur 8','','2670a567b358241a','waiting',NULL,'',NULL,'7c7ab5a8e61dfbfc',4,NULL,1);
INSERT INTO "lines" VALUES(21,'b9ca5c9c755cd8bf','7ac8daf51da47767',1,'D003-01U','Bell with a crown','','40ceb56fd11e8bd0','waiting','doubtful','The title differs: ours is “Rear derailleur 3”.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(22,'9d20bc8ec21edfd8','689a89bc92ad7a39',1,'D005-01E','Rear derailleur 5','','791037afeaad7b98','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(23,'396f215c8273a54c','689a89bc92ad7a39',2,'Z999','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(24,'0a841a72dc861cc2','70862e01496fbd8f',1,'D006-016','Rear derailleur 6','','f371378d8763af22','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(25,'1b55e3f21c32e1ad','70862e01496fbd8f',2,'D007-01R','Rear derailleur 7','','6a2b0210b9d20db5','waiting','not_in_file','The order came again without this line.',NULL,NULL,NULL,NULL,0);
INSERT INTO "lines" VALUES(26,'9f145e361940747a','1f5a85872296fdff',1,'lamp','','',NULL,'unbound','unknown_code','No slot of this room has this code.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(27,'dd2117b698a60304','a33d3266645b561f',1,'D006-016','Rear derailleur 6','',NULL,'unbound','already_sold','Order B-32 has it.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(28,'ee333e216e3ddb7b','d2f907855b2fed8d',1,'W004-01J','Front wheel 4','',NULL,'unbound','withdrawn','It was taken out of stock: Bent beyond use',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(29,'55e8fcf625bf5209','99e51a6fab87a25a',1,'L015','','',NULL,'unbound','slot_free','Nothing stands in this slot.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(30,'a0f7130671c4a393','d2c08b28ce676e69',1,'W005-01B','Bell with a crown','','00a6022876fd0991','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(31,'7a5db0c69711e57a','4ed38e06eb2f1821',1,'S012-01O','','','013f3f8cd2067645','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(32,'e8dad99747c79440','129ca2ae05316b25',1,'','','',NULL,'unbound','bad_row','This row has no reference.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(33,'65eaa18f8afa48cb','88b6d29424a9837e',1,'D001-019','Rear derailleur 1','','8848a2a7629dce1b','waiting',NULL,'',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(34,'1c826192fb3e264e','88b6d29424a9837e',2,'W002-016','Front wheel 2','',NULL,'unbound','already_sold','It has left with order B-01.',NULL,NULL,NULL,NULL,1);
INSERT INTO "lines" VALUES(35,'f07ae150160c0294','cbdbc3e02ec03ba7',1,'W001','','',NULL,'unbound','stale_code','It was ordered before the thing now in this slot was put away.',NULL,NULL,NULL,NULL,1);
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
INSERT INTO "orders" VALUES(1,'d7c41c59ce81ed40','B-01','fair','2026-03-02T11:23:00.000000+00:00',1,NULL,'2026-03-03T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(2,'b4cb14b4d59e8057','B-03','fair','2026-03-02T11:26:00.000000+00:00',2,NULL,'2026-03-04T15:00:00.000000+00:00','89b1768aee5a3b6b');
INSERT INTO "orders" VALUES(3,'48f884268b27f580','B-04','fair','2026-03-02T11:29:00.000000+00:00',3,NULL,'2026-03-05T15:00:00.000000+00:00','420ed1bf76b6767d');
INSERT INTO "orders" VALUES(4,'0c5d53cbe30f0802','B-05','fair','2026-03-02T11:32:00.000000+00:00',4,NULL,'2026-03-06T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(5,'8d02b63ec047609d','B-06','fair','2026-03-02T11:35:00.000000+00:00',5,NULL,'2026-03-07T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(6,'6e8c7d83567390e5','B-07','fair','2026-03-02T11:38:00.000000+00:00',6,NULL,'2026-03-08T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(7,'694d3b3ea5608327','B-08','fair','2026-03-02T11:41:00.000000+00:00',7,NULL,'2026-03-09T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(8,'d5a98bfb9b285f83','B-09','fair','2026-03-02T11:44:00.000000+00:00',8,NULL,'2026-03-10T15:00:00.000000+00:00','768620a5832a206a');
INSERT INTO "orders" VALUES(9,'67eb954728909417','B-13','fair','2026-03-02T11:47:00.000000+00:00',9,NULL,'2026-03-11T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(10,'10cef35290ae65a8','B-17','fair','2026-03-02T11:50:00.000000+00:00',10,NULL,'2026-03-12T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(11,'ef7ce0a8063812a1','B-18','fair','2026-03-02T11:53:00.000000+00:00',11,NULL,'2026-03-13T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(12,'6a0a393e61aff39c','B-21','fair','2026-03-02T11:56:00.000000+00:00',12,NULL,'2026-03-14T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(13,'6e17d1de97ae1843','B-22','fair','2026-03-02T11:59:00.000000+00:00',13,NULL,'2026-03-15T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(14,'ef1188b2b676df0c','B-23','fair','2026-03-02T12:02:00.000000+00:00',14,NULL,'2026-03-16T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(15,'c0c5279cc93ac57e','B-26','fair','2026-03-02T12:05:00.000000+00:00',15,NULL,'2026-03-17T15:00:00.000000+00:00',NULL);
INSERT INTO "orders" VALUES(16,'7ac8daf51da47767','B-30','fair','2026-03-02T12:08:00.000000+00:00',16,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(17,'689a89bc92ad7a39','B-31','fair','2026-03-02T12:11:00.000000+00:00',17,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(18,'70862e01496fbd8f','B-32','fair','2026-03-02T12:14:00.000000+00:00',18,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(19,'1f5a85872296fdff','B-33','fair','2026-03-02T12:20:00.000000+00:00',19,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(20,'a33d3266645b561f','B-34','fair','2026-03-02T12:23:00.000000+00:00',20,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(21,'d2f907855b2fed8d','B-35','fair','2026-03-02T12:26:00.000000+00:00',21,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(22,'99e51a6fab87a25a','B-36','fair','2026-03-02T12:29:00.000000+00:00',22,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(23,'d2c08b28ce676e69','B-37','fair','2026-03-02T12:32:00.000000+00:00',23,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(24,'4ed38e06eb2f1821','F-1','','2026-03-02T12:55:00.000000+00:00',24,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(25,'129ca2ae05316b25','F-2','','2026-03-02T12:55:00.000000+00:00',25,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(26,'88b6d29424a9837e','B-38','fair','2026-03-02T15:16:00.000000+00:00',26,NULL,NULL,NULL);
INSERT INTO "orders" VALUES(27,'cbdbc3e02ec03ba7','B-39','','2026-03-02T15:19:00.000000+00:00',27,'2026-03-01T23:59:59.000000+00:00',NULL,NULL);
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
INSERT INTO "parcels" VALUES(1,'8307eee0d0f8d76f','main','d7c41c59ce81ed40','2026-03-02T13:46:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(2,'c7445edb416971f2','main','ef1188b2b676df0c','2026-03-02T14:04:00.000000+00:00','closed');
INSERT INTO "parcels" VALUES(3,'573c837d2d451798','main','6e17d1de97ae1843','2026-03-02T14:19:00.000000+00:00','dropped');
INSERT INTO "parcels" VALUES(4,'420ed1bf76b6767d','main','48f884268b27f580','2026-03-02T14:25:00.000000+00:00','aside');
INSERT INTO "parcels" VALUES(5,'768620a5832a206a','second','d5a98bfb9b285f83','2026-03-02T14:34:00.000000+00:00','open');
INSERT INTO "parcels" VALUES(6,'89b1768aee5a3b6b','main','b4cb14b4d59e8057','2026-03-02T14:43:00.000000+00:00','open');
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
INSERT INTO "rounds" VALUES(1,'41d8cee999a482ed','2026-03-02T12:58:00.000000+00:00','closed');
INSERT INTO "rounds" VALUES(2,'7c7ab5a8e61dfbfc','2026-03-02T14:52:00.000000+00:00','open');
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
INSERT INTO "scans" VALUES(1,'free-D004','48bea1592e74a909be778c24214536a05226ed4953255ae6fff1fc6b0ea72834','bin','41d8cee999a482ed','D004',0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "not_ordered", "advice": "Nobody ordered D004. Leave it in A-1-1.", "replayed": false, "changed": false, "code": "D004", "title": "Rear derailleur 4", "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(2,'pick-W001','e29a0fd9ff00b32aab80da3d618d341f0f959ce2518ce663d899b649538fda44','bin','41d8cee999a482ed','W001',0,1,1,'afe16f479349d5a7',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d7c41c59ce81ed40", "order_number": "B-01", "line": "afe16f479349d5a7", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(3,'pick-W002','d56a32b282b7d327bcd034708e1abca564b4826c05191507d9467418f1b98f5d','bin','41d8cee999a482ed','W002',0,1,1,'03b5c0b0ce9d2acb',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d7c41c59ce81ed40", "order_number": "B-01", "line": "03b5c0b0ce9d2acb", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(4,'pick-S002','db865be9798c3327a32d0297bcc528bf4404e4ab9410c67518c8eca39ecea9b2','bin','41d8cee999a482ed','S002',0,1,1,'3cdb4b56dacf5e0b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b4cb14b4d59e8057", "order_number": "B-03", "line": "3cdb4b56dacf5e0b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(5,'pick-S003','874f36b1440ddb512564dbe81f2e135b33cdf39efdafe9cef253bceeebd4fc31','bin','41d8cee999a482ed','S003',0,1,1,'036739309d58f551',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 2.", "replayed": false, "changed": true, "code": "S003", "title": "Leather saddle 3", "photo": null, "order": "b4cb14b4d59e8057", "order_number": "B-03", "line": "036739309d58f551", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(6,'pick-S004','5bec57ffc9216005c75fbab8fd8251d9ea62bc70ea9e59ba9b892d068c31374d','bin','41d8cee999a482ed','S004',0,1,1,'af01ce22c2b12a5f',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "48f884268b27f580", "order_number": "B-04", "line": "af01ce22c2b12a5f", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(7,'pick-S005','e2d71ae95ea15c834bcbf8cdb974c4f0e30046b808d0ecf704d807d3009e8aec','bin','41d8cee999a482ed','S005',0,1,1,'9c3f4b34da8706ae',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 3.", "replayed": false, "changed": true, "code": "S005", "title": "Leather saddle 5", "photo": null, "order": "48f884268b27f580", "order_number": "B-04", "line": "9c3f4b34da8706ae", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(8,'pick-L006','695fe01aaa11aa539dae437b7ca01a81c0c562d92bb2c14d05369e631f8cb5ae','bin','41d8cee999a482ed','L006',0,1,1,'539e6d81b3be987b',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d5a98bfb9b285f83", "order_number": "B-09", "line": "539e6d81b3be987b", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(9,'pick-L011','7faa17e45665e92a898adeb250129a17fc1df96093ae2e8b085dbf4294d92b61','bin','41d8cee999a482ed','L011',0,1,1,'fb3af43d32ead468',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 4.", "replayed": false, "changed": true, "code": "L011", "title": "Dynamo lamp 11", "photo": null, "order": "d5a98bfb9b285f83", "order_number": "B-09", "line": "fb3af43d32ead468", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(10,'pick-S006','6b4db5cf5be71dcc6773211f4e9782e4807b2b8e5c8791d4905e35ac8a06846c','bin','41d8cee999a482ed','S006',0,1,1,'8af9cbfed0b4afbf',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 5.", "replayed": false, "changed": true, "code": "S006", "title": "Leather saddle 6", "photo": null, "order": "67eb954728909417", "order_number": "B-13", "line": "8af9cbfed0b4afbf", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(11,'pick-S007','26d30d523dd09cb504809363cc1e92fb0b358c089085eb405aa0273fa7b6b04f','bin','41d8cee999a482ed','S007',0,1,1,'2bb7702c54770edd',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 6.", "replayed": false, "changed": true, "code": "S007", "title": "Leather saddle 7", "photo": null, "order": "6e17d1de97ae1843", "order_number": "B-22", "line": "2bb7702c54770edd", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(12,'pick-W007','b5323e043d7455c46c598545d7e5a2ea3816fa36d6eb0a2131edd8806814270c','bin','41d8cee999a482ed','W007',0,1,1,'cd013879f4f88ddc',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ef1188b2b676df0c", "order_number": "B-23", "line": "cd013879f4f88ddc", "line_state": "picked", "order_state": "waiting", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(13,'pick-W008','ede30ff380c29795b037e8f0d29f70b3ae973e2460f80f5b4595e9921543d670','bin','41d8cee999a482ed','W008',0,1,1,'9d79054951b689a2',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 7.", "replayed": false, "changed": true, "code": "W008", "title": "Front wheel 8", "photo": null, "order": "ef1188b2b676df0c", "order_number": "B-23", "line": "9d79054951b689a2", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(14,'other-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,0,0,'3cdb4b56dacf5e0b','8307eee0d0f8d76f','{"verdict": "refused", "reason": "other_order", "advice": "Another order''s. This is S002, wanted by B-03. Put it in basket 2.", "replayed": false, "changed": false, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b4cb14b4d59e8057", "order_number": "B-03", "line": "3cdb4b56dacf5e0b", "line_state": "picked", "order_state": "picking", "parcel": "8307eee0d0f8d76f", "parcel_state": "open", "released": []}','');
INSERT INTO "scans" VALUES(15,'pack-W001','06a0811fb2d61e796a453b0a0264d5df75dbffa5c05f104002007e5c6c14843c','table','main','W001',0,1,1,'afe16f479349d5a7','8307eee0d0f8d76f','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W002.", "replayed": false, "changed": true, "code": "W001", "title": "Front wheel 1", "photo": null, "order": "d7c41c59ce81ed40", "order_number": "B-01", "line": "afe16f479349d5a7", "line_state": "packed", "order_state": "picking", "parcel": "8307eee0d0f8d76f", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(16,'pack-W002','1f6f783a22540bed4fa4c741e2dcefd5edfa8805d91fc8b4ac3c3124bd69fb57','table','main','W002',0,1,1,'03b5c0b0ce9d2acb','8307eee0d0f8d76f','{"verdict": "accepted", "reason": null, "advice": "Parcel closed. Put back in the tray: W001, W002.", "replayed": false, "changed": true, "code": "W002", "title": "Front wheel 2", "photo": null, "order": "d7c41c59ce81ed40", "order_number": "B-01", "line": "03b5c0b0ce9d2acb", "line_state": "released", "order_state": "released", "parcel": "8307eee0d0f8d76f", "parcel_state": "closed", "released": ["W001", "W002"]}','picked');
INSERT INTO "scans" VALUES(17,'back-W001','5ba5b07fd455197976925be4ce54866a5d97e47d8598a965d59a426158214591','tray','','W001',0,1,1,'afe16f479349d5a7',NULL,'{"verdict": "accepted", "reason": null, "advice": "Card W001 is back in the tray. Its slot can be used again.", "replayed": false, "changed": true, "code": "W001", "title": null, "photo": null, "order": "d7c41c59ce81ed40", "order_number": "B-01", "line": "afe16f479349d5a7", "line_state": "released", "order_state": "released", "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(18,'pack-W007','3e14405bb658bac62b8f1f6cbcabf4b8591f2a109d452bf699981061ea004e7b','table','main','W007',0,1,1,'cd013879f4f88ddc','c7445edb416971f2','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: W008.", "replayed": false, "changed": true, "code": "W007", "title": "Front wheel 7", "photo": null, "order": "ef1188b2b676df0c", "order_number": "B-23", "line": "cd013879f4f88ddc", "line_state": "packed", "order_state": "waiting", "parcel": "c7445edb416971f2", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(19,'pack-S004','b8346f2a1b2a38b27a9a7e12e15f197b148e621823ce400c8e0b36385e73e7f0','table','main','S004',0,1,1,'af01ce22c2b12a5f','420ed1bf76b6767d','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S005.", "replayed": false, "changed": true, "code": "S004", "title": "Leather saddle 4", "photo": null, "order": "48f884268b27f580", "order_number": "B-04", "line": "af01ce22c2b12a5f", "line_state": "packed", "order_state": "picking", "parcel": "420ed1bf76b6767d", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(20,'pack-L006','9ee5ec188b24ea472ed0b27c274e611ab202f8d8b06415aa7002e0c88a71ee8a','table','second','L006',0,1,1,'539e6d81b3be987b','768620a5832a206a','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: L011.", "replayed": false, "changed": true, "code": "L006", "title": "Dynamo lamp 6", "photo": null, "order": "d5a98bfb9b285f83", "order_number": "B-09", "line": "539e6d81b3be987b", "line_state": "packed", "order_state": "picking", "parcel": "768620a5832a206a", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(21,'pack-S002','2f5b725e8296d1f09eca0c164776ab4a2f85f071e5e9267cbddaa42ce38be5ce','table','main','S002',0,1,1,'3cdb4b56dacf5e0b','89b1768aee5a3b6b','{"verdict": "accepted", "reason": null, "advice": "Packed. Still missing: S003.", "replayed": false, "changed": true, "code": "S002", "title": "Leather saddle 2", "photo": null, "order": "b4cb14b4d59e8057", "order_number": "B-03", "line": "3cdb4b56dacf5e0b", "line_state": "packed", "order_state": "picking", "parcel": "89b1768aee5a3b6b", "parcel_state": "open", "released": []}','picked');
INSERT INTO "scans" VALUES(22,'pick-L002','137b09e2b4044e242e2470ff81c93ea796950a704716c885ecbc69eb3611ae8d','bin','7c7ab5a8e61dfbfc','L002',0,1,1,'1ab1195b92969d59',NULL,'{"verdict": "accepted", "reason": null, "advice": "Put it in basket 1.", "replayed": false, "changed": true, "code": "L002", "title": "Dynamo lamp 2", "photo": null, "order": "0c5d53cbe30f0802", "order_number": "B-05", "line": "1ab1195b92969d59", "line_state": "picked", "order_state": "picking", "parcel": null, "parcel_state": null, "released": []}','waiting');
INSERT INTO "scans" VALUES(23,'bad-D0146','4f7823aa3ca73727e9591b8de9b5c9188c0736ab4f24670071bf2566a84abd70','bin','7c7ab5a8e61dfbfc',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "bad_check", "advice": "The check digit is wrong or missing. Scan again, or type all of the card''s text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(24,'bad-hello','ff2fe132a0099a99deaaef90fee87d82ade7634c5a527c98ebde7fc06630863f','bin','7c7ab5a8e61dfbfc',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unknown_code", "advice": "This is no card of the room.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
INSERT INTO "scans" VALUES(25,'bad-','8d76df0e7ac756eeb47748368a75c7f09b97065a8ac31bcdc60054b28746f8ba','bin','7c7ab5a8e61dfbfc',NULL,0,0,0,NULL,NULL,'{"verdict": "refused", "reason": "unreadable", "advice": "No card was read. Hold it flat and in the light, or type its text.", "replayed": false, "changed": false, "code": null, "title": null, "photo": null, "order": null, "order_number": null, "line": null, "line_state": null, "order_state": null, "parcel": null, "parcel_state": null, "released": []}','');
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
INSERT INTO "stays" VALUES(1,'8848a2a7629dce1b','d37305ede8786def','D001',1,'2026-03-02T08:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(2,'4d2ebd5b38def24a','7b4c27d96e7ff1fe','D002',1,'2026-03-02T08:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(3,'40ceb56fd11e8bd0','9753846ec3f02b22','D003',1,'2026-03-02T08:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(4,'d9b1358770d0587b','27ea20b8cd0adb3d','D004',1,'2026-03-02T08:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(5,'791037afeaad7b98','d356a3eda50430e4','D005',1,'2026-03-02T08:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(6,'f371378d8763af22','1c8d2494bf1d65cd','D006',1,'2026-03-02T08:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(7,'6a2b0210b9d20db5','cfc3b5f7fc23e96c','D007',1,'2026-03-02T08:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(8,'6c8fed8cf4f80f39','ea82e63d338dc88f','D008',1,'2026-03-02T08:56:00.000000+00:00','moved','2026-03-02T12:50:00.000000+00:00','');
INSERT INTO "stays" VALUES(9,'1ae458dd6186dd77','e13ee70ffbb8a7cd','D009',1,'2026-03-02T08:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(10,'fbf9698f2b225f11','3ded833d579b30c9','D010',1,'2026-03-02T09:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(11,'d72d99e18ad5657e','2824d39c328d6d47','D011',1,'2026-03-02T09:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(12,'077305010128e49a','ab061421fbfbe455','D012',1,'2026-03-02T09:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(13,'9f8de4c4b4337061','b6052da49f230975','S001',1,'2026-03-02T09:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(14,'75055228ac4799d6','ecdc39d07b13f29f','S002',1,'2026-03-02T09:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(15,'2d9dbfcbcc8b300c','199f1b7d8c57da1a','S003',1,'2026-03-02T09:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(16,'7ed57a6be30045ee','279ae287ae5f6b1c','S004',1,'2026-03-02T09:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(17,'5215cc34a4b54c4e','37587da3cabcb2c9','S005',1,'2026-03-02T09:23:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(18,'09a1804a73336e23','15cc855886b7ccf8','S006',1,'2026-03-02T09:26:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(19,'12649aee28164821','2aeb726d8a04504d','S007',1,'2026-03-02T09:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(20,'7c50eb65d2941769','27b876ba891c669f','S008',1,'2026-03-02T09:32:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(21,'35757d443ddf6e85','e7c698f76893866a','S009',1,'2026-03-02T09:35:00.000000+00:00','moved','2026-03-02T11:11:00.000000+00:00','');
INSERT INTO "stays" VALUES(22,'d3795f5ae5459591','32d6752797cc4f61','S010',1,'2026-03-02T09:38:00.000000+00:00','withdrawn','2026-03-02T11:05:00.000000+00:00','Cracked on inspection');
INSERT INTO "stays" VALUES(23,'b45c85d325bc5f36','9d7912fb41809596','S011',1,'2026-03-02T09:41:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(24,'013f3f8cd2067645','49bd7e4e8b6a7ba8','S012',1,'2026-03-02T09:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(25,'82d4930646b8a29b','a8a32564bdaa58d1','L001',1,'2026-03-02T09:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(26,'fb46f6da6b3be7db','fd8b08b265f6ba39','L002',1,'2026-03-02T09:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(27,'443fa006b03d0b92','70b4f0bbd3448424','L003',1,'2026-03-02T09:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(28,'0be82105bda22c63','3295b6041dc54853','L004',1,'2026-03-02T09:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(29,'ff258e99eadfd4a7','68344f44215ca890','L005',1,'2026-03-02T09:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(30,'c54e014e006e29e3','08beab51e484c6f3','L006',1,'2026-03-02T10:02:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(31,'dbabe7f21c6d848b','16b658a280850e51','L007',1,'2026-03-02T10:05:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(32,'2d2411837e49bab2','4a57b240d1fc28db','L008',1,'2026-03-02T10:08:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(33,'d01d2db828375e5d','a0f7c30574308d51','L009',1,'2026-03-02T10:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(34,'a6ba94b71ac23f45','94dd9927ce816d9c','L010',1,'2026-03-02T10:14:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(35,'cce82811bea3cd2a','cc472f94fa8a16b3','L011',1,'2026-03-02T10:17:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(36,'7230d1f6942ff003','1a698c992cb16b1d','L012',1,'2026-03-02T10:20:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(37,'f55da306aa29eb60','ac298cd3e452b8d5','W001',1,'2026-03-02T10:23:00.000000+00:00','shipped','2026-03-02T13:55:00.000000+00:00','');
INSERT INTO "stays" VALUES(38,'cad8b33b938ec794','a325f9693f5cf25f','W002',1,'2026-03-02T10:26:00.000000+00:00','shipped','2026-03-02T13:55:00.000000+00:00','');
INSERT INTO "stays" VALUES(39,'71773d95637cc95b','8d10c979dc816c6d','W003',1,'2026-03-02T10:29:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(40,'ccc8e977d59c85b6','704fa6a92ac3c5fb','W004',1,'2026-03-02T10:32:00.000000+00:00','withdrawn','2026-03-02T11:08:00.000000+00:00','Bent beyond use');
INSERT INTO "stays" VALUES(41,'00a6022876fd0991','8dfcf9db9dc50b0d','W005',1,'2026-03-02T10:35:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(42,'43e207599cd88c56','d58849950e6d89ac','W006',1,'2026-03-02T10:38:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(43,'811f00c074ad677f','40f814d1590dd99b','W007',1,'2026-03-02T10:41:00.000000+00:00','shipped','2026-03-02T14:16:00.000000+00:00','');
INSERT INTO "stays" VALUES(44,'0f9a6d88e32b020c','1de23a251c97ded5','W008',1,'2026-03-02T10:44:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(45,'e20464e934c8c547','dd401ef4d6f9442b','W009',1,'2026-03-02T10:47:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(46,'fdb493387927185e','d9348b1090082828','W010',1,'2026-03-02T10:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(47,'28105aa4c63e732f','7a4aef96d07c8653','W011',1,'2026-03-02T10:53:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(48,'19f61a74845726e6','559180e47b3efea9','W012',1,'2026-03-02T10:56:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(49,'33a7aa45c8b8235b','9e92cb8ea749258d','D013',1,'2026-03-02T10:59:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(50,'e7fbb5633cc15d1e','e7c698f76893866a','S013',1,'2026-03-02T11:11:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(51,'2670a567b358241a','ea82e63d338dc88f','D020',1,'2026-03-02T12:50:00.000000+00:00','stored',NULL,'');
INSERT INTO "stays" VALUES(52,'98654c6d5370ea2e','eca647657454623c','W001',2,'2026-03-02T14:01:00.000000+00:00','stored',NULL,'');
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
INSERT INTO "stops" VALUES(1,'41d8cee999a482ed',1,'3cdb4b56dacf5e0b','B-1-1');
INSERT INTO "stops" VALUES(2,'41d8cee999a482ed',2,'036739309d58f551','B-1-1');
INSERT INTO "stops" VALUES(3,'41d8cee999a482ed',3,'af01ce22c2b12a5f','B-1-1');
INSERT INTO "stops" VALUES(4,'41d8cee999a482ed',4,'9c3f4b34da8706ae','B-1-1');
INSERT INTO "stops" VALUES(5,'41d8cee999a482ed',5,'8af9cbfed0b4afbf','B-1-1');
INSERT INTO "stops" VALUES(6,'41d8cee999a482ed',6,'2bb7702c54770edd','B-1-1');
INSERT INTO "stops" VALUES(7,'41d8cee999a482ed',7,'afe16f479349d5a7','D-1-1');
INSERT INTO "stops" VALUES(8,'41d8cee999a482ed',8,'03b5c0b0ce9d2acb','D-1-1');
INSERT INTO "stops" VALUES(9,'41d8cee999a482ed',9,'cd013879f4f88ddc','D-1-1');
INSERT INTO "stops" VALUES(10,'41d8cee999a482ed',10,'9d79054951b689a2','D-1-1');
INSERT INTO "stops" VALUES(11,'41d8cee999a482ed',11,'539e6d81b3be987b','C-1-1');
INSERT INTO "stops" VALUES(12,'41d8cee999a482ed',12,'fb3af43d32ead468','C-1-2');
INSERT INTO "stops" VALUES(13,'7c7ab5a8e61dfbfc',1,'be27f205e35879f1','A-1-2');
INSERT INTO "stops" VALUES(14,'7c7ab5a8e61dfbfc',2,'1ab1195b92969d59','C-1-1');
INSERT INTO "stops" VALUES(15,'7c7ab5a8e61dfbfc',3,'d6f366079e60d74f','C-1-1');
INSERT INTO "stops" VALUES(16,'7c7ab5a8e61dfbfc',4,'b0d8632e07d87312','C-1-1');
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
