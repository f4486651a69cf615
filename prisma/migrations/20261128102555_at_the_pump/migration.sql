-- AlterTable
ALTER TABLE "area" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "attachment" ADD COLUMN     "fault_id" UUID;

-- AlterTable
ALTER TABLE "fault" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint,
ADD COLUMN     "closed_by" TEXT,
ADD COLUMN     "closed_by_id" TEXT,
ADD COLUMN     "closed_how" TEXT,
ADD COLUMN     "key" UUID,
ADD COLUMN     "seen" TEXT[] DEFAULT ARRAY[]::TEXT[],
ADD COLUMN     "seen_at" TIMESTAMPTZ(3),
ADD COLUMN     "swap_id" UUID,
ALTER COLUMN "says" DROP NOT NULL;

-- AlterTable
ALTER TABLE "motor" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint,
ADD COLUMN     "code" TEXT;

-- AlterTable
ALTER TABLE "pump" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "pump_set" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint,
ADD COLUMN     "code" TEXT;

-- AlterTable
ALTER TABLE "shelf" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "site" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "store" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "supply" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint;

-- AlterTable
ALTER TABLE "swap" ADD COLUMN     "changed_in" BIGINT NOT NULL DEFAULT ((pg_current_xact_id())::text)::bigint,
ADD COLUMN     "reading_findings" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "readings" JSONB NOT NULL DEFAULT '{}';

-- CreateTable
CREATE TABLE "swap_reading" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "swap_id" UUID NOT NULL,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "taken_at" TIMESTAMPTZ(3),
    "readings" JSONB NOT NULL,
    "findings" JSONB NOT NULL DEFAULT '[]',
    "key" UUID NOT NULL,
    "body_sha256" TEXT NOT NULL,

    CONSTRAINT "swap_reading_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "repair" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "motor_id" UUID NOT NULL,
    "swap_id" UUID,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "reason" TEXT NOT NULL,
    "figures" JSONB NOT NULL DEFAULT '{}',
    "decision" TEXT,
    "decided_by_id" TEXT,
    "decided_at" TIMESTAMPTZ(3),
    "decided_why" TEXT,
    "ended_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "repair_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "register_identity" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),

    CONSTRAINT "register_identity_pkey" PRIMARY KEY ("id")
);

-- CreateIndex
CREATE INDEX "swap_reading_site_id_swap_id_at_idx" ON "swap_reading"("site_id", "swap_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "swap_reading_site_id_key_key" ON "swap_reading"("site_id", "key");

-- CreateIndex
CREATE INDEX "repair_site_id_motor_id_at_idx" ON "repair"("site_id", "motor_id", "at");

-- CreateIndex
CREATE INDEX "attachment_site_id_fault_id_idx" ON "attachment"("site_id", "fault_id");

-- CreateIndex
CREATE UNIQUE INDEX "fault_site_id_key_key" ON "fault"("site_id", "key");

-- CreateIndex
CREATE INDEX "motor_site_id_changed_in_idx" ON "motor"("site_id", "changed_in");

-- CreateIndex
CREATE UNIQUE INDEX "motor_site_id_code_key" ON "motor"("site_id", "code");

-- CreateIndex
CREATE INDEX "pump_set_site_id_changed_in_idx" ON "pump_set"("site_id", "changed_in");

-- CreateIndex
CREATE UNIQUE INDEX "pump_set_site_id_code_key" ON "pump_set"("site_id", "code");

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_closed_by_id_fkey" FOREIGN KEY ("closed_by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_site_id_swap_id_fkey" FOREIGN KEY ("site_id", "swap_id") REFERENCES "swap"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap_reading" ADD CONSTRAINT "swap_reading_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap_reading" ADD CONSTRAINT "swap_reading_site_id_swap_id_fkey" FOREIGN KEY ("site_id", "swap_id") REFERENCES "swap"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap_reading" ADD CONSTRAINT "swap_reading_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_site_id_swap_id_fkey" FOREIGN KEY ("site_id", "swap_id") REFERENCES "swap"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "repair" ADD CONSTRAINT "repair_decided_by_id_fkey" FOREIGN KEY ("decided_by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "attachment" ADD CONSTRAINT "attachment_site_id_fault_id_fkey" FOREIGN KEY ("site_id", "fault_id") REFERENCES "fault"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- ---- Not in the schema: rules that only the database can hold ------------------------------------

ALTER TABLE "fault" DROP CONSTRAINT "fault_says_something";
ALTER TABLE "fault"
  ADD CONSTRAINT "fault_says_something" CHECK (
    (btrim("says") <> '' AND length("says") <= 2000) OR ("says" IS NULL AND cardinality("seen") > 0)),
  ADD CONSTRAINT "fault_seen_known" CHECK ("seen" <@ ARRAY['trip', 'smell', 'noise', 'seized', 'hot', 'leak', 'will-not-start']),
  ADD CONSTRAINT "fault_closed_somehow" CHECK (
    "closed_by" IN ('swap', 'repair') AND ("closed_by" = 'swap') = ("swap_id" IS NOT NULL) AND length("closed_how") <= 2000),
  ADD CONSTRAINT "fault_closed_when" CHECK ("closed_by" IS NULL OR "closed_at" IS NOT NULL);
ALTER TABLE "swap"
  ADD CONSTRAINT "swap_readings" CHECK (jsonb_typeof("readings") = 'object' AND jsonb_typeof("reading_findings") = 'array');
ALTER TABLE "swap_reading"
  ADD CONSTRAINT "swap_reading_parts" CHECK (
    jsonb_typeof("readings") = 'object' AND jsonb_typeof("findings") = 'array' AND "body_sha256" ~ '^[0-9a-f]{64}$');
ALTER TABLE "repair"
  ADD CONSTRAINT "repair_words" CHECK (
    btrim("reason") <> '' AND length("reason") <= 500 AND length("decided_why") <= 500 AND jsonb_typeof("figures") = 'object'
    AND "decision" IN ('repair', 'scrap')),
  ADD CONSTRAINT "repair_decided_by_somebody" CHECK (num_nonnulls("decision", "decided_by_id", "decided_at") IN (0, 3));
CREATE UNIQUE INDEX "repair_one_open" ON "repair" ("site_id", "motor_id") WHERE "ended_at" IS NULL;

-- What changed and in which transaction: every row changed since a snapshot has a number not below its xmin.
CREATE OR REPLACE FUNCTION touch() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF to_jsonb(NEW) - ARRAY['words', 'norm', 'look_alike'] IS DISTINCT FROM to_jsonb(OLD) - ARRAY['words', 'norm', 'look_alike'] THEN
    NEW.version := OLD.version + 1;
    NEW.changed_at := clock_timestamp();
  END IF;
  IF to_jsonb(NEW) ? 'changed_in' THEN
    NEW.changed_in := pg_current_xact_id()::text::bigint;
  END IF;
  RETURN NEW;
END;
$$;
CREATE TRIGGER "repair_touch" BEFORE UPDATE ON "repair" FOR EACH ROW EXECUTE FUNCTION touch();

-- What stands on a label: seven signs of Crockford's Base32 and one to check them by (lib/plant/label-code). Sets and
-- motors of a site share them, so that a code alone says what it is of.
CREATE FUNCTION new_label_code() RETURNS text LANGUAGE plpgsql VOLATILE AS $$
DECLARE
  signs constant text := '0123456789ABCDEFGHJKMNPQRSTVWXYZ';
  rest bigint := ('x' || left(replace(gen_random_uuid()::text, '-', ''), 9))::bit(36)::bigint;
  code text := '';
  sum int := 0;
  v int;
BEGIN
  FOR i IN 1..7 LOOP
    v := (rest % 32)::int;
    rest := rest / 32;
    code := code || substr(signs, v + 1, 1);
    sum := sum + i * v;
  END LOOP;
  RETURN code || substr(signs, sum % 31 + 1, 1);
END;
$$;
CREATE FUNCTION give_label_code() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  WHILE NEW.code IS NULL LOOP
    NEW.code := new_label_code();
    IF EXISTS (SELECT FROM pump_set WHERE site_id = NEW.site_id AND code = NEW.code)
      OR EXISTS (SELECT FROM motor WHERE site_id = NEW.site_id AND code = NEW.code) THEN
      NEW.code := NULL;
    END IF;
  END LOOP;
  RETURN NEW;
END;
$$;
CREATE FUNCTION keep_label_code() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION 'a label code stays as long as what it is of' USING ERRCODE = 'insufficient_privilege';
END;
$$;
ALTER TABLE "pump_set" DISABLE TRIGGER USER;
ALTER TABLE "motor" DISABLE TRIGGER USER;
UPDATE "pump_set" SET "code" = new_label_code();
UPDATE "motor" SET "code" = new_label_code();
ALTER TABLE "pump_set" ENABLE TRIGGER USER;
ALTER TABLE "motor" ENABLE TRIGGER USER;
CREATE TRIGGER "pump_set_label_code" BEFORE INSERT ON "pump_set" FOR EACH ROW EXECUTE FUNCTION give_label_code();
CREATE TRIGGER "motor_label_code" BEFORE INSERT ON "motor" FOR EACH ROW EXECUTE FUNCTION give_label_code();
CREATE TRIGGER "pump_set_label_stays" BEFORE UPDATE OF "code" ON "pump_set"
  FOR EACH ROW WHEN (OLD.code IS DISTINCT FROM NEW.code) EXECUTE FUNCTION keep_label_code();
CREATE TRIGGER "motor_label_stays" BEFORE UPDATE OF "code" ON "motor"
  FOR EACH ROW WHEN (OLD.code IS DISTINCT FROM NEW.code) EXECUTE FUNCTION keep_label_code();
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_label_code" CHECK ("code" ~ '^[0-9A-HJKMNP-TV-Z]{8}$' AND "code" IS NOT NULL);
ALTER TABLE "motor" ADD CONSTRAINT "motor_label_code" CHECK ("code" ~ '^[0-9A-HJKMNP-TV-Z]{8}$' AND "code" IS NOT NULL);

INSERT INTO "register_identity" DEFAULT VALUES;

GRANT SELECT, INSERT ON "swap_reading" TO bedplate_app;
GRANT SELECT, INSERT, UPDATE ON "repair" TO bedplate_app;
GRANT SELECT ON "register_identity" TO bedplate_app;
