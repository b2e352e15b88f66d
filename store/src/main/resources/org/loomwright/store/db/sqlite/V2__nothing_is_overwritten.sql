-- What is kept is kept: no change, no deletion, and no INSERT OR REPLACE, which is both at once.
CREATE TRIGGER revision_no_update BEFORE UPDATE ON revision
BEGIN SELECT RAISE(ABORT, 'what is kept in revision is never changed or deleted'); END;
CREATE TRIGGER revision_no_delete BEFORE DELETE ON revision
BEGIN SELECT RAISE(ABORT, 'what is kept in revision is never changed or deleted'); END;
CREATE TRIGGER revision_no_replace BEFORE INSERT ON revision
WHEN EXISTS (SELECT 1 FROM revision WHERE seq = NEW.seq OR (kind = NEW.kind AND id = NEW.id AND number = NEW.number))
BEGIN SELECT RAISE(ABORT, 'what is kept in revision is never changed or deleted'); END;

CREATE TRIGGER blob_no_update BEFORE UPDATE ON blob
BEGIN SELECT RAISE(ABORT, 'what is kept in blob is never changed or deleted'); END;
CREATE TRIGGER blob_no_delete BEFORE DELETE ON blob
BEGIN SELECT RAISE(ABORT, 'what is kept in blob is never changed or deleted'); END;
CREATE TRIGGER blob_no_replace BEFORE INSERT ON blob
WHEN EXISTS (SELECT 1 FROM blob WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'what is kept in blob is never changed or deleted'); END;

CREATE TRIGGER release_no_update BEFORE UPDATE ON release
BEGIN SELECT RAISE(ABORT, 'what is kept in release is never changed or deleted'); END;
CREATE TRIGGER release_no_delete BEFORE DELETE ON release
BEGIN SELECT RAISE(ABORT, 'what is kept in release is never changed or deleted'); END;
CREATE TRIGGER release_no_replace BEFORE INSERT ON release
WHEN EXISTS (SELECT 1 FROM release WHERE seq = NEW.seq OR (kit = NEW.kit AND number = NEW.number))
BEGIN SELECT RAISE(ABORT, 'what is kept in release is never changed or deleted'); END;

CREATE TRIGGER release_pin_no_update BEFORE UPDATE ON release_pin
BEGIN SELECT RAISE(ABORT, 'what is kept in release_pin is never changed or deleted'); END;
CREATE TRIGGER release_pin_no_delete BEFORE DELETE ON release_pin
BEGIN SELECT RAISE(ABORT, 'what is kept in release_pin is never changed or deleted'); END;
CREATE TRIGGER release_pin_no_replace BEFORE INSERT ON release_pin
WHEN EXISTS (SELECT 1 FROM release_pin WHERE kit = NEW.kit AND release_number = NEW.release_number AND kind = NEW.kind AND id = NEW.id)
BEGIN SELECT RAISE(ABORT, 'what is kept in release_pin is never changed or deleted'); END;

CREATE TRIGGER release_file_no_update BEFORE UPDATE ON release_file
BEGIN SELECT RAISE(ABORT, 'what is kept in release_file is never changed or deleted'); END;
CREATE TRIGGER release_file_no_delete BEFORE DELETE ON release_file
BEGIN SELECT RAISE(ABORT, 'what is kept in release_file is never changed or deleted'); END;
CREATE TRIGGER release_file_no_replace BEFORE INSERT ON release_file
WHEN EXISTS (SELECT 1 FROM release_file WHERE kit = NEW.kit AND release_number = NEW.release_number AND name = NEW.name)
BEGIN SELECT RAISE(ABORT, 'what is kept in release_file is never changed or deleted'); END;
