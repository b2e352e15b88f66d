-- Hashes of the papers that were made of a text and are kept with it, sorted, a blank between them.
ALTER TABLE revision ADD COLUMN papers TEXT NOT NULL DEFAULT '';
