CREATE TRIGGER paper_no_update BEFORE UPDATE ON paper
BEGIN SELECT RAISE(ABORT, 'what is kept in paper is never changed or deleted'); END;
CREATE TRIGGER paper_no_delete BEFORE DELETE ON paper
BEGIN SELECT RAISE(ABORT, 'what is kept in paper is never changed or deleted'); END;
CREATE TRIGGER paper_no_replace BEFORE INSERT ON paper
WHEN EXISTS (SELECT 1 FROM paper WHERE hash = NEW.hash)
BEGIN SELECT RAISE(ABORT, 'what is kept in paper is never changed or deleted'); END;
