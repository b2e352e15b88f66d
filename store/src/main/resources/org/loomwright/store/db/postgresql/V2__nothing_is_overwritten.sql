-- What is kept is kept: no change, no deletion, no emptying of a table.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'what is kept in % is never changed or deleted', TG_TABLE_NAME;
END
$$;

CREATE TRIGGER revision_is_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON revision
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER blob_is_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON blob
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER release_is_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON release
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER release_pin_is_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON release_pin
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER release_file_is_kept BEFORE UPDATE OR DELETE OR TRUNCATE ON release_file
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
