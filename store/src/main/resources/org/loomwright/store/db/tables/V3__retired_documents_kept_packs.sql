-- A revision can say that the document is no longer used; its text stays that of the one before.
ALTER TABLE revision ADD COLUMN retired BIGINT NOT NULL DEFAULT 0 CHECK (retired IN (0, 1));

-- 0 for releases from before, of whose packs only the hashes are known.
ALTER TABLE release ADD COLUMN pack_kept BIGINT NOT NULL DEFAULT 0 CHECK (pack_kept IN (0, 1));

-- Files of packs by the hash of their bytes; the same file of several releases is kept once.
CREATE TABLE paper (
  hash  TEXT     NOT NULL PRIMARY KEY,
  bytes ${bytes} NOT NULL
);
