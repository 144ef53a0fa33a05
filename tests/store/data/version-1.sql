-- SPDX-License-Identifier: MIT
-- A store as version 1 left it: two projects, one edited, one put away.
CREATE TABLE projects (id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, kind TEXT NOT NULL CHECK (kind IN ('own', 'demo')), put_away INTEGER NOT NULL CHECK (put_away IN (0, 1)), thrown_away INTEGER NOT NULL CHECK (thrown_away IN (0, 1)), position INTEGER NOT NULL, created INTEGER NOT NULL, changed INTEGER NOT NULL) STRICT

CREATE TABLE project_state (project TEXT NOT NULL PRIMARY KEY REFERENCES projects (id) ON DELETE CASCADE, document TEXT NOT NULL) STRICT

CREATE TABLE commands (seq INTEGER NOT NULL PRIMARY KEY, project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, shelf INTEGER NOT NULL CHECK (shelf IN (0, 1)), kind TEXT NOT NULL, code TEXT NOT NULL, args TEXT NOT NULL CHECK (json_valid(args)), place INTEGER NOT NULL, before TEXT NOT NULL, after TEXT NOT NULL, undone INTEGER NOT NULL CHECK (undone IN (0, 1))) STRICT

CREATE INDEX commands_of_project ON commands (project, shelf, seq)

CREATE INDEX commands_of_shelf ON commands (seq) WHERE shelf = 1 OR kind = 'rename'

CREATE TABLE settings (key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT

CREATE TABLE counter (one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1), next INTEGER NOT NULL) STRICT

INSERT INTO counter (one, next) VALUES (1, 8)

INSERT INTO projects (id, name, kind, put_away, thrown_away, position, created, changed) VALUES
('94636e24-92ee-4adb-8c73-6a50b46a3ee9', 'Kitchen', 'own', 1, 0, 1, 1, 1),
('3f0e433a-26fa-4a53-a6de-8ece1c92f996', 'Window runner', 'own', 0, 0, 3, 3, 5)

INSERT INTO project_state (project, document) VALUES
('94636e24-92ee-4adb-8c73-6a50b46a3ee9', '{"format": "matside-project", "version": 1, "name": "Kitchen", "system": "metric"}'),
('3f0e433a-26fa-4a53-a6de-8ece1c92f996', '{"format": "matside-project", "version": 1, "name": "Window runner", "system": "inch", "kits": 2}')

INSERT INTO commands (seq, project, shelf, kind, code, args, place, before, after, undone) VALUES
(2, '94636e24-92ee-4adb-8c73-6a50b46a3ee9', 1, 'create', 'create', '["Kitchen"]', 0, 'thrown_away=1', 'thrown_away=0', 0),
(4, '3f0e433a-26fa-4a53-a6de-8ece1c92f996', 1, 'create', 'create', '["Window runner"]', 0, 'thrown_away=1', 'thrown_away=0', 0),
(6, '3f0e433a-26fa-4a53-a6de-8ece1c92f996', 0, 'edit', 'kits', '[]', 95, '1', '2', 0),
(7, '94636e24-92ee-4adb-8c73-6a50b46a3ee9', 1, 'put-away', 'put-away', '["Kitchen"]', 0, 'put_away=0', 'put_away=1', 0)

INSERT INTO settings (key, value) VALUES ('station', 'cut')

PRAGMA user_version = 1
