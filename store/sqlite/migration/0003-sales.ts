// The third shape: sales, those that the owner wrote down with a history of their own, and those of garments on the rack, which follow their garments.

export const saleHistoryStays = `CREATE TRIGGER sale_step_stays BEFORE UPDATE ON sale_step BEGIN SELECT RAISE(ABORT, 'steps of the history are never changed'); END;
CREATE TRIGGER sale_step_is_kept BEFORE DELETE ON sale_step BEGIN SELECT RAISE(ABORT, 'steps of the history are never deleted'); END;`;

export const sales = `
CREATE TABLE sale (
  n INTEGER PRIMARY KEY,
  id TEXT NOT NULL UNIQUE,
  rev INTEGER NOT NULL,
  mark INTEGER NOT NULL,
  changed_at TEXT NOT NULL,
  changed_by TEXT NOT NULL,
  removed INTEGER NOT NULL,
  garment TEXT,
  body TEXT NOT NULL,
  sold_on TEXT NOT NULL,
  cents INTEGER NOT NULL,
  kind TEXT NOT NULL,
  maker TEXT,
  grade TEXT,
  channel TEXT NOT NULL,
  words TEXT NOT NULL
) STRICT;
CREATE INDEX sale_mark ON sale (mark);
CREATE INDEX sale_by_day ON sale (removed, sold_on);
CREATE INDEX sale_by_price ON sale (removed, cents);
CREATE INDEX sale_by_change ON sale (removed, changed_at);
CREATE INDEX sale_kind ON sale (removed, kind);
CREATE INDEX sale_maker ON sale (removed, maker);
CREATE INDEX sale_channel ON sale (removed, channel);
CREATE INDEX sale_garment ON sale (garment) WHERE garment IS NOT NULL;

CREATE TABLE sale_step (
  seq INTEGER PRIMARY KEY AUTOINCREMENT,
  id TEXT NOT NULL REFERENCES sale (id) DEFERRABLE INITIALLY DEFERRED,
  rev INTEGER NOT NULL,
  at TEXT NOT NULL,
  who TEXT NOT NULL,
  what TEXT NOT NULL,
  removed INTEGER NOT NULL,
  body TEXT NOT NULL,
  UNIQUE (id, rev)
) STRICT;
${saleHistoryStays}

CREATE TABLE counter (name TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT, WITHOUT ROWID;
INSERT INTO counter (name, value) VALUES ('sales', 0), ('sales emptied', 0);
`;
