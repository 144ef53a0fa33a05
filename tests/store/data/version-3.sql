-- SPDX-License-Identifier: MIT
-- A store as version 2 left it: two projects, one edited, one put away, one noted.
CREATE TABLE projects (id TEXT NOT NULL PRIMARY KEY, name TEXT NOT NULL, kind TEXT NOT NULL CHECK (kind IN ('own', 'demo')), put_away INTEGER NOT NULL CHECK (put_away IN (0, 1)), thrown_away INTEGER NOT NULL CHECK (thrown_away IN (0, 1)), position INTEGER NOT NULL, created INTEGER NOT NULL, changed INTEGER NOT NULL) STRICT

CREATE TABLE project_state (project TEXT NOT NULL PRIMARY KEY REFERENCES projects (id) ON DELETE CASCADE, document TEXT NOT NULL) STRICT

CREATE TABLE commands (seq INTEGER NOT NULL PRIMARY KEY, project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, shelf INTEGER NOT NULL CHECK (shelf IN (0, 1)), kind TEXT NOT NULL, code TEXT NOT NULL, args TEXT NOT NULL CHECK (json_valid(args)), place INTEGER NOT NULL, before TEXT NOT NULL, after TEXT NOT NULL, undone INTEGER NOT NULL CHECK (undone IN (0, 1))) STRICT

CREATE INDEX commands_of_project ON commands (project, shelf, seq)

CREATE INDEX commands_of_shelf ON commands (seq) WHERE shelf = 1 OR kind = 'rename'

CREATE TABLE settings (key TEXT NOT NULL PRIMARY KEY, value TEXT NOT NULL) STRICT

CREATE TABLE counter (one INTEGER NOT NULL PRIMARY KEY CHECK (one = 1), next INTEGER NOT NULL) STRICT

INSERT INTO counter (one, next) VALUES (1, 10)

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

CREATE TABLE photographs (sha TEXT NOT NULL PRIMARY KEY CHECK (length(sha) = 64), format TEXT NOT NULL, bytes INTEGER NOT NULL, width INTEGER NOT NULL, height INTEGER NOT NULL, number INTEGER NOT NULL) STRICT

CREATE TABLE notes (id TEXT NOT NULL PRIMARY KEY, project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, number INTEGER NOT NULL, command INTEGER NOT NULL, block TEXT NOT NULL, step TEXT NOT NULL, words TEXT NOT NULL, flags TEXT NOT NULL CHECK (json_valid(flags)), width TEXT NOT NULL, height TEXT NOT NULL, CHECK ((block = '') <> (step = ''))) STRICT

CREATE INDEX notes_of_project ON notes (project, block, number)

CREATE INDEX notes_of_command ON notes (command)

CREATE TABLE note_photos (note TEXT NOT NULL REFERENCES notes (id) ON DELETE CASCADE, side TEXT NOT NULL CHECK (side IN ('front', 'back')), photo TEXT NOT NULL REFERENCES photographs (sha), PRIMARY KEY (note, side)) STRICT

CREATE INDEX notes_of_photo ON note_photos (photo)

CREATE TABLE drafts (project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, block TEXT NOT NULL, side TEXT NOT NULL CHECK (side IN ('front', 'back')), photo TEXT NOT NULL REFERENCES photographs (sha), PRIMARY KEY (project, block, side)) STRICT

CREATE INDEX drafts_of_photo ON drafts (photo)

CREATE TRIGGER notes_forgotten AFTER DELETE ON commands WHEN OLD.undone = 1 BEGIN DELETE FROM notes WHERE command = OLD.seq; END

INSERT INTO photographs (sha, format, bytes, width, height, number) VALUES
('9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08', 'jpeg', 4, 4000, 3000, 8)

INSERT INTO notes (id, project, number, command, block, step, words, flags, width, height) VALUES
('0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11', '3f0e433a-26fa-4a53-a6de-8ece1c92f996', 9, 6, 'A1', '', '', '["pleat"]', '6 15/16 in', '7 in')

INSERT INTO note_photos (note, side, photo) VALUES
('0f4c1de2-5d6e-4c0a-9d3e-0d2b8c1f7a11', 'front', '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08')

INSERT INTO drafts (project, block, side, photo) VALUES
('3f0e433a-26fa-4a53-a6de-8ece1c92f996', 'A2', 'back', '9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08')

CREATE TABLE met (project TEXT NOT NULL REFERENCES projects (id) ON DELETE CASCADE, sha TEXT NOT NULL CHECK (length(sha) = 64), number INTEGER NOT NULL, command INTEGER NOT NULL, document TEXT NOT NULL, PRIMARY KEY (project, sha)) STRICT

CREATE INDEX met_by_command ON met (command)

CREATE TRIGGER met_forgotten AFTER DELETE ON commands WHEN OLD.undone = 1 BEGIN DELETE FROM met WHERE command = OLD.seq; END

INSERT INTO met (project, sha, number, command, document) VALUES
('3f0e433a-26fa-4a53-a6de-8ece1c92f996', '88d4266fd4e6338d13b845fcf289579d209c897823b9217da3e161936f031589', 10, 0, 'abcd')

PRAGMA user_version = 3
