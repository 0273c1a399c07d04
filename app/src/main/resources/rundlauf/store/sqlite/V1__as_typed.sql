-- What was typed. It is only added to: the triggers below refuse to change or take away.

CREATE TABLE bench (
  id INTEGER NOT NULL PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  at TEXT NOT NULL
) STRICT;

CREATE TABLE bench_edition (
  bench INTEGER NOT NULL REFERENCES bench (id),
  number INTEGER NOT NULL,
  document TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (bench, number)
) STRICT;

CREATE TABLE trial (
  id INTEGER NOT NULL PRIMARY KEY,
  bench INTEGER NOT NULL REFERENCES bench (id),
  name TEXT NOT NULL,
  at TEXT NOT NULL,
  UNIQUE (bench, name)
) STRICT;

CREATE TABLE trial_edition (
  trial INTEGER NOT NULL REFERENCES trial (id),
  number INTEGER NOT NULL,
  document TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, number)
) STRICT;

CREATE TABLE reading (
  trial INTEGER NOT NULL REFERENCES trial (id),
  position INTEGER NOT NULL,
  key TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, position),
  UNIQUE (trial, key)
) STRICT;

CREATE TABLE reading_cell (
  trial INTEGER NOT NULL,
  position INTEGER NOT NULL,
  place INTEGER NOT NULL,
  column_name TEXT NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (trial, position, place),
  FOREIGN KEY (trial, position) REFERENCES reading (trial, position)
) STRICT;

CREATE TABLE strike (
  trial INTEGER NOT NULL,
  position INTEGER NOT NULL,
  reason TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, position),
  FOREIGN KEY (trial, position) REFERENCES reading (trial, position)
) STRICT;

CREATE TABLE content (
  digest TEXT NOT NULL PRIMARY KEY,
  bytes BLOB NOT NULL
) STRICT;

CREATE TABLE attachment (
  trial INTEGER NOT NULL REFERENCES trial (id),
  place INTEGER NOT NULL,
  name TEXT NOT NULL,
  digest TEXT NOT NULL REFERENCES content (digest),
  size INTEGER NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, place),
  UNIQUE (trial, name)
) STRICT;

-- Derived: may be taken away at any time.
CREATE TABLE figure (
  digest TEXT NOT NULL PRIMARY KEY,
  document TEXT NOT NULL
) STRICT;

CREATE TRIGGER bench_no_update BEFORE UPDATE ON bench
BEGIN
  SELECT RAISE(ABORT, 'only added to: bench');
END;

CREATE TRIGGER bench_no_delete BEFORE DELETE ON bench
BEGIN
  SELECT RAISE(ABORT, 'only added to: bench');
END;

CREATE TRIGGER bench_edition_no_update BEFORE UPDATE ON bench_edition
BEGIN
  SELECT RAISE(ABORT, 'only added to: bench_edition');
END;

CREATE TRIGGER bench_edition_no_delete BEFORE DELETE ON bench_edition
BEGIN
  SELECT RAISE(ABORT, 'only added to: bench_edition');
END;

CREATE TRIGGER trial_no_update BEFORE UPDATE ON trial
BEGIN
  SELECT RAISE(ABORT, 'only added to: trial');
END;

CREATE TRIGGER trial_no_delete BEFORE DELETE ON trial
BEGIN
  SELECT RAISE(ABORT, 'only added to: trial');
END;

CREATE TRIGGER trial_edition_no_update BEFORE UPDATE ON trial_edition
BEGIN
  SELECT RAISE(ABORT, 'only added to: trial_edition');
END;

CREATE TRIGGER trial_edition_no_delete BEFORE DELETE ON trial_edition
BEGIN
  SELECT RAISE(ABORT, 'only added to: trial_edition');
END;

CREATE TRIGGER reading_no_update BEFORE UPDATE ON reading
BEGIN
  SELECT RAISE(ABORT, 'only added to: reading');
END;

CREATE TRIGGER reading_no_delete BEFORE DELETE ON reading
BEGIN
  SELECT RAISE(ABORT, 'only added to: reading');
END;

CREATE TRIGGER reading_cell_no_update BEFORE UPDATE ON reading_cell
BEGIN
  SELECT RAISE(ABORT, 'only added to: reading_cell');
END;

CREATE TRIGGER reading_cell_no_delete BEFORE DELETE ON reading_cell
BEGIN
  SELECT RAISE(ABORT, 'only added to: reading_cell');
END;

CREATE TRIGGER strike_no_update BEFORE UPDATE ON strike
BEGIN
  SELECT RAISE(ABORT, 'only added to: strike');
END;

CREATE TRIGGER strike_no_delete BEFORE DELETE ON strike
BEGIN
  SELECT RAISE(ABORT, 'only added to: strike');
END;

CREATE TRIGGER content_no_update BEFORE UPDATE ON content
BEGIN
  SELECT RAISE(ABORT, 'only added to: content');
END;

CREATE TRIGGER content_no_delete BEFORE DELETE ON content
BEGIN
  SELECT RAISE(ABORT, 'only added to: content');
END;

CREATE TRIGGER attachment_no_update BEFORE UPDATE ON attachment
BEGIN
  SELECT RAISE(ABORT, 'only added to: attachment');
END;

CREATE TRIGGER attachment_no_delete BEFORE DELETE ON attachment
BEGIN
  SELECT RAISE(ABORT, 'only added to: attachment');
END;
