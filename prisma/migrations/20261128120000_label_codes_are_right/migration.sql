-- A code that comes with its record (a backup that is restored, say) is held to what a new one is made by.
CREATE FUNCTION label_check_sign(code text) RETURNS text LANGUAGE plpgsql IMMUTABLE STRICT AS $$
DECLARE
  signs constant text := '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
  sum int := 0;
BEGIN
  FOR i IN 1..7 LOOP
    sum := sum + i * (strpos(signs, substr(code, i, 1)) - 1);
  END LOOP;
  RETURN substr(signs, sum % 31 + 1, 1);
END;
$$;
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_label_sign" CHECK (right("code", 1) = label_check_sign("code"));
ALTER TABLE "motor" ADD CONSTRAINT "motor_label_sign" CHECK (right("code", 1) = label_check_sign("code"));

CREATE FUNCTION one_of_label_code() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF (TG_TABLE_NAME = 'motor' AND EXISTS (SELECT FROM pump_set WHERE site_id = NEW.site_id AND code = NEW.code))
    OR (TG_TABLE_NAME = 'pump_set' AND EXISTS (SELECT FROM motor WHERE site_id = NEW.site_id AND code = NEW.code)) THEN
    RAISE EXCEPTION 'label code % is that of another record of the site', NEW.code USING ERRCODE = 'unique_violation';
  END IF;
  RETURN NEW;
END;
$$;
-- Triggers go by their names: after the one that gives a code.
CREATE TRIGGER "pump_set_label_one_of" BEFORE INSERT ON "pump_set" FOR EACH ROW EXECUTE FUNCTION one_of_label_code();
CREATE TRIGGER "motor_label_one_of" BEFORE INSERT ON "motor" FOR EACH ROW EXECUTE FUNCTION one_of_label_code();
