-- What was typed. It is only added to: the triggers below refuse to change or take away.

CREATE TABLE bench (
  id BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  name TEXT NOT NULL UNIQUE,
  at TEXT NOT NULL
);

CREATE TABLE bench_edition (
  bench BIGINT NOT NULL REFERENCES bench (id),
  number INTEGER NOT NULL,
  document TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (bench, number)
);

CREATE TABLE trial (
  id BIGINT GENERATED ALWAYS AS IDENTITY PRIMARY KEY,
  bench BIGINT NOT NULL REFERENCES bench (id),
  name TEXT NOT NULL,
  at TEXT NOT NULL,
  UNIQUE (bench, name)
);

CREATE TABLE trial_edition (
  trial BIGINT NOT NULL REFERENCES trial (id),
  number INTEGER NOT NULL,
  document TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, number)
);

CREATE TABLE reading (
  trial BIGINT NOT NULL REFERENCES trial (id),
  position INTEGER NOT NULL,
  key TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, position),
  UNIQUE (trial, key)
);

CREATE TABLE reading_cell (
  trial BIGINT NOT NULL,
  position INTEGER NOT NULL,
  place INTEGER NOT NULL,
  column_name TEXT NOT NULL,
  text TEXT NOT NULL,
  PRIMARY KEY (trial, position, place),
  FOREIGN KEY (trial, position) REFERENCES reading (trial, position)
);

CREATE TABLE strike (
  trial BIGINT NOT NULL,
  position INTEGER NOT NULL,
  reason TEXT NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, position),
  FOREIGN KEY (trial, position) REFERENCES reading (trial, position)
);

CREATE TABLE content (
  digest TEXT NOT NULL PRIMARY KEY,
  bytes BYTEA NOT NULL
);

CREATE TABLE attachment (
  trial BIGINT NOT NULL REFERENCES trial (id),
  place INTEGER NOT NULL,
  name TEXT NOT NULL,
  digest TEXT NOT NULL REFERENCES content (digest),
  size INTEGER NOT NULL,
  at TEXT NOT NULL,
  PRIMARY KEY (trial, place),
  UNIQUE (trial, name)
);

-- Derived: may be taken away at any time.
CREATE TABLE figure (
  digest TEXT NOT NULL PRIMARY KEY,
  document TEXT NOT NULL
);

CREATE FUNCTION only_added_to() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'only added to: %', TG_TABLE_NAME;
END
$$;

CREATE TRIGGER bench_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON bench
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER bench_edition_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON bench_edition
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER trial_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON trial
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER trial_edition_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON trial_edition
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER reading_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON reading
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER reading_cell_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON reading_cell
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER strike_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON strike
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER content_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON content
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();

CREATE TRIGGER attachment_only_added_to BEFORE UPDATE OR DELETE OR TRUNCATE ON attachment
FOR EACH STATEMENT EXECUTE FUNCTION only_added_to();
