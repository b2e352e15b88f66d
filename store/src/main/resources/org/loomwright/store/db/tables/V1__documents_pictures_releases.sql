-- Every save of every document, in the order of saving. Nothing here is ever changed or deleted.
CREATE TABLE revision (
  seq           BIGINT NOT NULL PRIMARY KEY,
  kind          TEXT   NOT NULL,
  id            TEXT   NOT NULL,
  number        BIGINT NOT NULL CHECK (number > 0),
  based_on      BIGINT NOT NULL CHECK (based_on >= 0 AND based_on < number),
  author        TEXT   NOT NULL,
  saved_at      TEXT   NOT NULL,
  reason        TEXT   NOT NULL,
  content       TEXT   NOT NULL,
  content_hash  TEXT   NOT NULL,
  previous_hash TEXT   NOT NULL,
  seal          TEXT   NOT NULL,
  UNIQUE (kind, id, number)
);

-- Pictures by the hash of their bytes.
CREATE TABLE blob (
  hash       TEXT   NOT NULL PRIMARY KEY,
  media_type TEXT   NOT NULL,
  width_px   BIGINT NOT NULL,
  height_px  BIGINT NOT NULL,
  bytes      ${bytes} NOT NULL
);

CREATE TABLE release (
  seq         BIGINT NOT NULL PRIMARY KEY,
  kit         TEXT   NOT NULL,
  number      BIGINT NOT NULL CHECK (number > 0),
  verdict     TEXT   NOT NULL CHECK (verdict IN ('holds', 'marginal')),
  reason      TEXT   NOT NULL CHECK (verdict = 'holds' OR reason <> ''),
  author      TEXT   NOT NULL,
  released_at TEXT   NOT NULL,
  seal        TEXT   NOT NULL,
  UNIQUE (kit, number)
);

-- The exact revisions a release was made of.
CREATE TABLE release_pin (
  kit            TEXT   NOT NULL,
  release_number BIGINT NOT NULL,
  kind           TEXT   NOT NULL,
  id             TEXT   NOT NULL,
  number         BIGINT NOT NULL,
  content_hash   TEXT   NOT NULL,
  PRIMARY KEY (kit, release_number, kind, id),
  FOREIGN KEY (kit, release_number) REFERENCES release (kit, number),
  FOREIGN KEY (kind, id, number) REFERENCES revision (kind, id, number)
);

-- The files of a release's pack.
CREATE TABLE release_file (
  kit            TEXT   NOT NULL,
  release_number BIGINT NOT NULL,
  name           TEXT   NOT NULL,
  hash           TEXT   NOT NULL,
  PRIMARY KEY (kit, release_number, name),
  FOREIGN KEY (kit, release_number) REFERENCES release (kit, number)
);
