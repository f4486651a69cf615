-- CreateTable
CREATE TABLE "review_acceptance" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "set_id" UUID NOT NULL,
    "rule" TEXT NOT NULL,
    "figures" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "again_on" DATE NOT NULL,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "review_acceptance_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "review_day" (
    "site_id" UUID NOT NULL,
    "day" DATE NOT NULL,
    "sets" INTEGER NOT NULL,
    "open" INTEGER NOT NULL,
    "accepted" INTEGER NOT NULL,
    "kwh" BIGINT NOT NULL,
    "money_hundredths" BIGINT NOT NULL,
    "unpriced" INTEGER NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "review_day_pkey" PRIMARY KEY ("site_id","day")
);

-- CreateTable
CREATE TABLE "measurement" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "set_id" UUID NOT NULL,
    "motor_id" UUID,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL,
    "told_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "volts_l1_l2" DOUBLE PRECISION,
    "volts_l2_l3" DOUBLE PRECISION,
    "volts_l3_l1" DOUBLE PRECISION,
    "amps_l1" DOUBLE PRECISION,
    "amps_l2" DOUBLE PRECISION,
    "amps_l3" DOUBLE PRECISION,
    "input_kw" DOUBLE PRECISION,
    "power_factor" DOUBLE PRECISION,
    "rpm" DOUBLE PRECISION,
    "hertz" DOUBLE PRECISION,
    "note" TEXT,
    "key" UUID NOT NULL,

    CONSTRAINT "measurement_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateIndex
CREATE INDEX "review_acceptance_site_id_set_id_idx" ON "review_acceptance"("site_id", "set_id");

-- CreateIndex
CREATE INDEX "measurement_site_id_set_id_at_idx" ON "measurement"("site_id", "set_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "measurement_site_id_key_key" ON "measurement"("site_id", "key");

-- AddForeignKey
ALTER TABLE "review_acceptance" ADD CONSTRAINT "review_acceptance_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "review_acceptance" ADD CONSTRAINT "review_acceptance_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "review_acceptance" ADD CONSTRAINT "review_acceptance_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "review_day" ADD CONSTRAINT "review_day_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "measurement" ADD CONSTRAINT "measurement_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "measurement" ADD CONSTRAINT "measurement_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "measurement" ADD CONSTRAINT "measurement_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "measurement" ADD CONSTRAINT "measurement_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- ---- Not in the schema: rules that only the database can hold ------------------------------------

ALTER TABLE "review_acceptance"
  ADD CONSTRAINT "review_acceptance_words" CHECK (
    "rule" ~ '^[a-z-]{1,60}$' AND length("figures") <= 2000 AND btrim("reason") <> '' AND length("reason") <= 500);
CREATE UNIQUE INDEX "review_acceptance_one_stands" ON "review_acceptance" ("site_id", "set_id", "rule") WHERE "withdrawn_at" IS NULL;
ALTER TABLE "review_day"
  ADD CONSTRAINT "review_day_counts" CHECK (
    "sets" >= 0 AND "open" >= 0 AND "accepted" >= 0 AND "kwh" >= 0 AND "money_hundredths" >= 0 AND "unpriced" BETWEEN 0 AND "open");
ALTER TABLE "measurement"
  ADD CONSTRAINT "measurement_something" CHECK (
    num_nonnulls("volts_l1_l2", "volts_l2_l3", "volts_l3_l1", "amps_l1", "amps_l2", "amps_l3", "input_kw", "power_factor", "rpm", "hertz") > 0),
  ADD CONSTRAINT "measurement_bounds" CHECK (
    "volts_l1_l2" > 0 AND "volts_l2_l3" > 0 AND "volts_l3_l1" > 0 AND "amps_l1" >= 0 AND "amps_l2" >= 0 AND "amps_l3" >= 0
    AND "input_kw" >= 0 AND "power_factor" > 0 AND "power_factor" <= 1 AND "rpm" >= 0 AND "hertz" >= 0),
  ADD CONSTRAINT "measurement_note" CHECK (btrim("note") <> '' AND length("note") <= 2000);

GRANT SELECT, INSERT, UPDATE ON "review_acceptance", "review_day" TO bedplate_app;
GRANT SELECT, INSERT ON "measurement" TO bedplate_app;
