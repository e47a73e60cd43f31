// The first shape: garments, their history, words to search, photos, editions of books, settings.

export const historyStays = `CREATE TRIGGER step_stays BEFORE UPDATE ON step BEGIN SELECT RAISE(ABORT, 'steps of the history are never changed'); END;
CREATE TRIGGER step_is_kept BEFORE DELETE ON step BEGIN SELECT RAISE(ABORT, 'steps of the history are never deleted'); END;`;

export const rack = `
CREATE TABLE garment (
  n INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  rev INTEGER NOT NULL,
  seq INTEGER NOT NULL,
  created_at TEXT NOT NULL,
  changed_at TEXT NOT NULL,
  changed_by TEXT NOT NULL,
  removed INTEGER NOT NULL,
  content TEXT NOT NULL,
  number TEXT NOT NULL,
  maker TEXT,
  type TEXT NOT NULL,
  place TEXT NOT NULL,
  standing TEXT NOT NULL,
  asked INTEGER,
  best TEXT,
  probability REAL,
  sureness TEXT NOT NULL,
  odd INTEGER NOT NULL,
  years BLOB
) STRICT;
CREATE INDEX garment_seq ON garment (seq);
CREATE INDEX garment_number ON garment (number);
CREATE INDEX garment_place ON garment (place);
CREATE INDEX garment_maker ON garment (maker);
CREATE INDEX garment_type ON garment (type);
CREATE INDEX garment_changed ON garment (removed, changed_at);

CREATE TABLE step (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL REFERENCES garment (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL,
  removed INTEGER NOT NULL,
  content TEXT NOT NULL,
  UNIQUE (id, rev)
) STRICT;
${historyStays}

CREATE TABLE tag (n INTEGER NOT NULL REFERENCES garment (n), tag TEXT NOT NULL, PRIMARY KEY (n, tag)) STRICT, WITHOUT ROWID;
CREATE INDEX tag_tag ON tag (tag);

CREATE VIRTUAL TABLE words USING fts5 (body, tokenize = "unicode61 remove_diacritics 2", prefix = '2 3');

CREATE TABLE photo (photo TEXT PRIMARY KEY, mime TEXT NOT NULL, bytes INTEGER NOT NULL, width INTEGER NOT NULL, height INTEGER NOT NULL, added_at TEXT NOT NULL) STRICT, WITHOUT ROWID;

CREATE TABLE edition (
  book TEXT NOT NULL, edition INTEGER NOT NULL, title TEXT NOT NULL, yaml TEXT NOT NULL, saved_at TEXT NOT NULL, saved_by TEXT NOT NULL,
  PRIMARY KEY (book, edition)
) STRICT, WITHOUT ROWID;

CREATE TABLE setting (key TEXT PRIMARY KEY, value TEXT NOT NULL) STRICT, WITHOUT ROWID;
`;
