CREATE EXTENSION IF NOT EXISTS pg_trgm;
CREATE EXTENSION IF NOT EXISTS btree_gin;
CREATE EXTENSION IF NOT EXISTS fuzzystrmatch;

-- CreateTable
CREATE TABLE "site" (
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "timezone" TEXT NOT NULL DEFAULT 'UTC',
    "settings" JSONB NOT NULL,
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "site_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "area" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "surroundings" JSONB NOT NULL DEFAULT '{}',
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "area_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "store" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT NOT NULL,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "store_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "shelf" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "store_id" UUID NOT NULL,
    "name" TEXT NOT NULL,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "shelf_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "pump" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "description" TEXT NOT NULL,
    "kind" TEXT,
    "maker" TEXT,
    "serial" TEXT,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "pump_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "supply" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "name" TEXT,
    "phases" SMALLINT,
    "volts" DOUBLE PRECISION,
    "hertz" DOUBLE PRECISION,
    "start" TEXT,
    "starter" JSONB NOT NULL DEFAULT '{}',
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "supply_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "pump_set" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "tag" TEXT NOT NULL,
    "norm" TEXT GENERATED ALWAYS AS (upper(regexp_replace("tag", '[^[:alnum:]]', '', 'g'))) STORED,
    "look_alike" TEXT GENERATED ALWAYS AS (translate(upper(regexp_replace("tag", '[^[:alnum:]]', '', 'g')), 'OILSBZ', '011582')) STORED,
    "service" TEXT,
    "criticality" SMALLINT,
    "area_id" UUID,
    "pump_id" UUID,
    "supply_id" UUID,
    "mounting" TEXT NOT NULL,
    "shaft_direction" TEXT,
    "rotation" TEXT,
    "seat" JSONB NOT NULL DEFAULT '{}',
    "coupling" JSONB NOT NULL DEFAULT '{}',
    "base" JSONB NOT NULL DEFAULT '{}',
    "load" JSONB NOT NULL DEFAULT '{}',
    "surroundings" JSONB NOT NULL DEFAULT '{}',
    "needs" TEXT[],
    "note" TEXT,
    "words" TEXT NOT NULL DEFAULT '',
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "pump_set_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "motor" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "plant_number" TEXT NOT NULL,
    "norm" TEXT GENERATED ALWAYS AS (upper(regexp_replace("plant_number", '[^[:alnum:]]', '', 'g'))) STORED,
    "look_alike" TEXT GENERATED ALWAYS AS (translate(upper(regexp_replace("plant_number", '[^[:alnum:]]', '', 'g')), 'OILSBZ', '011582')) STORED,
    "maker" TEXT,
    "serial" TEXT,
    "condition" TEXT,
    "rewinds" SMALLINT,
    "place" TEXT NOT NULL,
    "set_id" UUID,
    "shelf_id" UUID,
    "shelved_on" DATE,
    "tested_on" DATE,
    "insulation_mohm" DOUBLE PRECISION,
    "measured" JSONB NOT NULL DEFAULT '{}',
    "note" TEXT,
    "retired_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "motor_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "nameplate" (
    "site_id" UUID NOT NULL,
    "motor_id" UUID NOT NULL,
    "kind" TEXT,
    "frame" TEXT,
    "mounting" TEXT,
    "phases" SMALLINT,
    "poles" SMALLINT,
    "leads" SMALLINT,
    "winding" TEXT,
    "service_factor" DOUBLE PRECISION,
    "design" TEXT,
    "code_letter" TEXT,
    "locked_rotor_pct" DOUBLE PRECISION,
    "breakdown_pct" DOUBLE PRECISION,
    "enclosure" TEXT,
    "ip" TEXT,
    "insulation" TEXT,
    "ambient_c" DOUBLE PRECISION,
    "duty" TEXT,
    "drive_duty" TEXT,
    "constant_torque_range" DOUBLE PRECISION,
    "max_rpm" DOUBLE PRECISION,
    "terminal_box" TEXT,
    "rotation" TEXT,
    "washdown" TEXT,
    "classification" JSONB,
    "has" JSONB,
    "brake_torque_nm" DOUBLE PRECISION,
    "brake_volts" DOUBLE PRECISION,
    "mass_kg" DOUBLE PRECISION,
    "length_mm" DOUBLE PRECISION,
    "unread" TEXT,

    CONSTRAINT "nameplate_pkey" PRIMARY KEY ("site_id","motor_id")
);

-- CreateTable
CREATE TABLE "rating" (
    "site_id" UUID NOT NULL,
    "motor_id" UUID NOT NULL,
    "line" SMALLINT NOT NULL,
    "volts" DOUBLE PRECISION,
    "volts_min" DOUBLE PRECISION,
    "volts_max" DOUBLE PRECISION,
    "hertz" DOUBLE PRECISION,
    "hp" DOUBLE PRECISION,
    "kw" DOUBLE PRECISION,
    "rpm" DOUBLE PRECISION,
    "amps" DOUBLE PRECISION,
    "connection" TEXT,
    "pf" DOUBLE PRECISION,
    "efficiency_pct" DOUBLE PRECISION,
    "service_factor" DOUBLE PRECISION,

    CONSTRAINT "rating_pkey" PRIMARY KEY ("site_id","motor_id","line")
);

-- CreateTable
CREATE TABLE "swap" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "set_id" UUID NOT NULL,
    "motor_out_id" UUID,
    "motor_in_id" UUID NOT NULL,
    "from_set_id" UUID,
    "out_to" TEXT,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "done_at" TIMESTAMPTZ(3),
    "why" TEXT NOT NULL,
    "note" TEXT,
    "verdict" TEXT,
    "findings" JSONB NOT NULL DEFAULT '[]',
    "operating_point" JSONB,
    "hours" DOUBLE PRECISION,
    "work_done" JSONB NOT NULL DEFAULT '[]',
    "checks" JSONB NOT NULL DEFAULT '[]',
    "insulation_mohm" DOUBLE PRECISION,
    "overload_a" DOUBLE PRECISION,
    "key" UUID NOT NULL,
    "body_sha256" TEXT NOT NULL,

    CONSTRAINT "swap_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "fault" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "set_id" UUID NOT NULL,
    "motor_id" UUID,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "says" TEXT NOT NULL,
    "closed_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "fault_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "attachment" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "set_id" UUID,
    "motor_id" UUID,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "caption" TEXT,
    "media_type" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "content" BYTEA NOT NULL,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "attachment_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "import_run" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "file_name" TEXT NOT NULL,
    "file_sha256" TEXT NOT NULL,
    "status" TEXT NOT NULL,
    "columns" JSONB NOT NULL DEFAULT '{}',
    "applied_at" TIMESTAMPTZ(3),
    "version" INTEGER NOT NULL DEFAULT 1,
    "changed_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "import_run_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "import_row" (
    "site_id" UUID NOT NULL,
    "run_id" UUID NOT NULL,
    "line" INTEGER NOT NULL,
    "cells" JSONB NOT NULL,
    "draft" JSONB,
    "problems" JSONB NOT NULL DEFAULT '[]',
    "outcome" TEXT,
    "motor_id" UUID,

    CONSTRAINT "import_row_pkey" PRIMARY KEY ("site_id","run_id","line")
);

-- CreateTable
CREATE TABLE "audit_entry" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "by_id" TEXT,
    "action" TEXT NOT NULL,
    "thing" TEXT NOT NULL,
    "thing_id" TEXT,
    "before" JSONB,
    "after" JSONB,
    "note" TEXT,

    CONSTRAINT "audit_entry_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "user" (
    "id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "email" TEXT NOT NULL,
    "emailVerified" BOOLEAN NOT NULL DEFAULT false,
    "image" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "site_id" UUID NOT NULL,
    "role" TEXT NOT NULL,
    "retired_at" TIMESTAMPTZ(3),

    CONSTRAINT "user_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "session" (
    "id" TEXT NOT NULL,
    "token" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "ipAddress" TEXT,
    "userAgent" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "userId" TEXT NOT NULL,
    "last_seen_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "session_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "account" (
    "id" TEXT NOT NULL,
    "accountId" TEXT NOT NULL,
    "providerId" TEXT NOT NULL,
    "userId" TEXT NOT NULL,
    "accessToken" TEXT,
    "refreshToken" TEXT,
    "idToken" TEXT,
    "accessTokenExpiresAt" TIMESTAMPTZ(3),
    "refreshTokenExpiresAt" TIMESTAMPTZ(3),
    "scope" TEXT,
    "password" TEXT,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "account_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "verification" (
    "id" TEXT NOT NULL,
    "identifier" TEXT NOT NULL,
    "value" TEXT NOT NULL,
    "expiresAt" TIMESTAMPTZ(3) NOT NULL,
    "createdAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "updatedAt" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "verification_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "rateLimit" (
    "id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "count" INTEGER NOT NULL,
    "lastRequest" BIGINT NOT NULL,

    CONSTRAINT "rateLimit_pkey" PRIMARY KEY ("id")
);

-- CreateTable
CREATE TABLE "sign_in_limit" (
    "email" TEXT NOT NULL,
    "tries" INTEGER NOT NULL,
    "since" TIMESTAMPTZ(3) NOT NULL,

    CONSTRAINT "sign_in_limit_pkey" PRIMARY KEY ("email")
);

-- CreateTable
CREATE TABLE "api_token" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "user_id" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "scopes" TEXT[],
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "last_used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "api_token_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateIndex
CREATE UNIQUE INDEX "site_name_key" ON "site"("name");

-- CreateIndex
CREATE UNIQUE INDEX "area_site_id_name_key" ON "area"("site_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "store_site_id_name_key" ON "store"("site_id", "name");

-- CreateIndex
CREATE UNIQUE INDEX "shelf_site_id_store_id_name_key" ON "shelf"("site_id", "store_id", "name");

-- CreateIndex
CREATE INDEX "pump_set_site_id_norm_idx" ON "pump_set"("site_id", "norm");

-- CreateIndex
CREATE INDEX "pump_set_site_id_area_id_idx" ON "pump_set"("site_id", "area_id");

-- CreateIndex
CREATE INDEX "pump_set_site_id_pump_id_idx" ON "pump_set"("site_id", "pump_id");

-- CreateIndex
CREATE INDEX "pump_set_site_id_supply_id_idx" ON "pump_set"("site_id", "supply_id");

-- CreateIndex
CREATE INDEX "pump_set_site_id_changed_at_idx" ON "pump_set"("site_id", "changed_at");

-- CreateIndex
CREATE INDEX "pump_set_norm_trgm" ON "pump_set" USING GIN ("site_id" uuid_ops, "norm" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "pump_set_look_alike_trgm" ON "pump_set" USING GIN ("site_id" uuid_ops, "look_alike" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "pump_set_words_trgm" ON "pump_set" USING GIN ("site_id" uuid_ops, "words" gin_trgm_ops);

-- CreateIndex
CREATE UNIQUE INDEX "pump_set_site_id_tag_key" ON "pump_set"("site_id", "tag");

-- CreateIndex
CREATE INDEX "motor_site_id_norm_idx" ON "motor"("site_id", "norm");

-- CreateIndex
CREATE INDEX "motor_site_id_place_idx" ON "motor"("site_id", "place");

-- CreateIndex
CREATE INDEX "motor_site_id_shelf_id_idx" ON "motor"("site_id", "shelf_id");

-- CreateIndex
CREATE INDEX "motor_norm_trgm" ON "motor" USING GIN ("site_id" uuid_ops, "norm" gin_trgm_ops);

-- CreateIndex
CREATE INDEX "motor_look_alike_trgm" ON "motor" USING GIN ("site_id" uuid_ops, "look_alike" gin_trgm_ops);

-- CreateIndex
CREATE UNIQUE INDEX "motor_site_id_plant_number_key" ON "motor"("site_id", "plant_number");

-- CreateIndex
CREATE UNIQUE INDEX "motor_site_id_set_id_key" ON "motor"("site_id", "set_id");

-- CreateIndex
CREATE INDEX "swap_site_id_set_id_at_idx" ON "swap"("site_id", "set_id", "at");

-- CreateIndex
CREATE INDEX "swap_site_id_motor_out_id_at_idx" ON "swap"("site_id", "motor_out_id", "at");

-- CreateIndex
CREATE INDEX "swap_site_id_motor_in_id_at_idx" ON "swap"("site_id", "motor_in_id", "at");

-- CreateIndex
CREATE INDEX "swap_site_id_from_set_id_at_idx" ON "swap"("site_id", "from_set_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "swap_site_id_key_key" ON "swap"("site_id", "key");

-- CreateIndex
CREATE INDEX "fault_site_id_set_id_at_idx" ON "fault"("site_id", "set_id", "at");

-- CreateIndex
CREATE INDEX "fault_site_id_motor_id_at_idx" ON "fault"("site_id", "motor_id", "at");

-- CreateIndex
CREATE INDEX "attachment_site_id_set_id_idx" ON "attachment"("site_id", "set_id");

-- CreateIndex
CREATE INDEX "attachment_site_id_motor_id_idx" ON "attachment"("site_id", "motor_id");

-- CreateIndex
CREATE INDEX "import_run_site_id_at_idx" ON "import_run"("site_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_site_id_at_idx" ON "audit_entry"("site_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_site_id_thing_thing_id_at_idx" ON "audit_entry"("site_id", "thing", "thing_id", "at");

-- CreateIndex
CREATE UNIQUE INDEX "user_email_key" ON "user"("email");

-- CreateIndex
CREATE INDEX "user_site_id_idx" ON "user"("site_id");

-- CreateIndex
CREATE UNIQUE INDEX "session_token_key" ON "session"("token");

-- CreateIndex
CREATE INDEX "session_userId_idx" ON "session"("userId");

-- CreateIndex
CREATE INDEX "account_userId_idx" ON "account"("userId");

-- CreateIndex
CREATE INDEX "verification_identifier_idx" ON "verification"("identifier");

-- CreateIndex
CREATE UNIQUE INDEX "rateLimit_key_key" ON "rateLimit"("key");

-- CreateIndex
CREATE INDEX "sign_in_limit_since_idx" ON "sign_in_limit"("since");

-- CreateIndex
CREATE UNIQUE INDEX "api_token_sha256_key" ON "api_token"("sha256");

-- CreateIndex
CREATE INDEX "api_token_site_id_user_id_idx" ON "api_token"("site_id", "user_id");

-- AddForeignKey
ALTER TABLE "area" ADD CONSTRAINT "area_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "store" ADD CONSTRAINT "store_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "shelf" ADD CONSTRAINT "shelf_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "shelf" ADD CONSTRAINT "shelf_site_id_store_id_fkey" FOREIGN KEY ("site_id", "store_id") REFERENCES "store"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "pump" ADD CONSTRAINT "pump_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "supply" ADD CONSTRAINT "supply_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_site_id_area_id_fkey" FOREIGN KEY ("site_id", "area_id") REFERENCES "area"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_site_id_pump_id_fkey" FOREIGN KEY ("site_id", "pump_id") REFERENCES "pump"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "pump_set" ADD CONSTRAINT "pump_set_site_id_supply_id_fkey" FOREIGN KEY ("site_id", "supply_id") REFERENCES "supply"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "motor" ADD CONSTRAINT "motor_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "motor" ADD CONSTRAINT "motor_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "motor" ADD CONSTRAINT "motor_site_id_shelf_id_fkey" FOREIGN KEY ("site_id", "shelf_id") REFERENCES "shelf"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "nameplate" ADD CONSTRAINT "nameplate_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "nameplate" ADD CONSTRAINT "nameplate_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "rating" ADD CONSTRAINT "rating_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "rating" ADD CONSTRAINT "rating_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "nameplate"("site_id", "motor_id") ON DELETE CASCADE ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_site_id_motor_out_id_fkey" FOREIGN KEY ("site_id", "motor_out_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_site_id_motor_in_id_fkey" FOREIGN KEY ("site_id", "motor_in_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_site_id_from_set_id_fkey" FOREIGN KEY ("site_id", "from_set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "swap" ADD CONSTRAINT "swap_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "fault" ADD CONSTRAINT "fault_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "attachment" ADD CONSTRAINT "attachment_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "attachment" ADD CONSTRAINT "attachment_site_id_set_id_fkey" FOREIGN KEY ("site_id", "set_id") REFERENCES "pump_set"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "attachment" ADD CONSTRAINT "attachment_site_id_motor_id_fkey" FOREIGN KEY ("site_id", "motor_id") REFERENCES "motor"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "attachment" ADD CONSTRAINT "attachment_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "import_run" ADD CONSTRAINT "import_run_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "import_run" ADD CONSTRAINT "import_run_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "import_row" ADD CONSTRAINT "import_row_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "import_row" ADD CONSTRAINT "import_row_site_id_run_id_fkey" FOREIGN KEY ("site_id", "run_id") REFERENCES "import_run"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "user" ADD CONSTRAINT "user_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "session" ADD CONSTRAINT "session_userId_fkey" FOREIGN KEY ("userId") REFERENCES "user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "account" ADD CONSTRAINT "account_userId_fkey" FOREIGN KEY ("userId") REFERENCES "user"("id") ON DELETE CASCADE ON UPDATE CASCADE;

-- AddForeignKey
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "api_token" ADD CONSTRAINT "api_token_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- ---- Not in the schema: rules that only the database can hold ------------------------------------

-- Places: a motor is in exactly one, and a set holds at most one motor (unique index on site_id, set_id).
ALTER TABLE "motor"
  ADD CONSTRAINT "motor_place_known" CHECK ("place" IN ('in-set', 'on-shelf', 'at-repair', 'on-order', 'scrapped')),
  ADD CONSTRAINT "motor_one_place" CHECK (
    ("place" = 'in-set') = ("set_id" IS NOT NULL) AND ("place" = 'on-shelf') = ("shelf_id" IS NOT NULL)),
  ADD CONSTRAINT "motor_retired_nowhere" CHECK ("retired_at" IS NULL OR "place" = 'scrapped'),
  ADD CONSTRAINT "motor_number_written" CHECK ("norm" <> '' AND length("plant_number") <= 60 AND "plant_number" !~ '[[:cntrl:]]'),
  ADD CONSTRAINT "motor_ranges" CHECK (
    "rewinds" BETWEEN 0 AND 50 AND "insulation_mohm" BETWEEN 0 AND 1000000
    AND "shelved_on" BETWEEN '1900-01-01' AND '2200-01-01' AND "tested_on" BETWEEN '1900-01-01' AND '2200-01-01'),
  ADD CONSTRAINT "motor_measured_object" CHECK (jsonb_typeof("measured") = 'object');

ALTER TABLE "nameplate"
  ADD CONSTRAINT "nameplate_words" CHECK (
    "kind" IN ('cage', 'permanent-magnet', 'reluctance', 'wound-rotor', 'single-phase', 'two-speed')
    AND "winding" IN ('star-delta-6', 'part-winding-6', 'star-9', 'delta-9', 'star-delta-12')
    AND "drive_duty" IN ('none', 'general', 'inverter') AND "terminal_box" IN ('left', 'right', 'top')
    AND "rotation" IN ('cw', 'ccw', 'either') AND "washdown" IN ('none', 'painted', 'stainless')
    AND "ip" ~ '^IP[0-6X][0-9X]K?$' AND "duty" ~ '^S([1-9]|10)$'),
  ADD CONSTRAINT "nameplate_ranges" CHECK (
    "phases" IN (1, 3) AND "poles" BETWEEN 2 AND 64 AND "poles" % 2 = 0 AND "leads" BETWEEN 2 AND 24
    AND "service_factor" BETWEEN 1 AND 2 AND "locked_rotor_pct" > 0 AND "locked_rotor_pct" <= 600
    AND "breakdown_pct" > 0 AND "breakdown_pct" <= 800 AND "ambient_c" BETWEEN -60 AND 120
    AND "constant_torque_range" BETWEEN 1 AND 10000 AND "max_rpm" > 0 AND "max_rpm" <= 30000
    AND "brake_torque_nm" > 0 AND "brake_torque_nm" <= 100000 AND "brake_volts" > 0 AND "brake_volts" <= 1000
    AND "mass_kg" > 0 AND "mass_kg" <= 50000 AND "length_mm" > 0 AND "length_mm" <= 10000),
  ADD CONSTRAINT "nameplate_lists" CHECK (
    jsonb_typeof("has") = 'array' AND jsonb_typeof("classification") = 'object');

ALTER TABLE "rating"
  ADD CONSTRAINT "rating_line" CHECK ("line" BETWEEN 1 AND 24),
  ADD CONSTRAINT "rating_one_power" CHECK (num_nonnulls("hp", "kw") <= 1),
  ADD CONSTRAINT "rating_volts_order" CHECK ("volts_min" <= "volts_max" AND "volts" >= "volts_min" AND "volts" <= "volts_max"),
  ADD CONSTRAINT "rating_connection" CHECK (
    "connection" IN ('star', 'delta', 'series-star', 'parallel-star', 'series-delta', 'parallel-delta')),
  ADD CONSTRAINT "rating_ranges" CHECK (
    "volts" > 0 AND "volts" <= 15000 AND "volts_min" > 0 AND "volts_min" <= 15000
    AND "volts_max" > 0 AND "volts_max" <= 15000 AND "hertz" > 0 AND "hertz" <= 400
    AND "hp" > 0 AND "hp" <= 20000 AND "kw" > 0 AND "kw" <= 15000 AND "rpm" > 0 AND "rpm" <= 24000
    AND "amps" > 0 AND "amps" <= 5000 AND "pf" > 0 AND "pf" <= 1
    AND "efficiency_pct" > 0 AND "efficiency_pct" <= 100 AND "service_factor" BETWEEN 1 AND 2);

ALTER TABLE "pump_set"
  ADD CONSTRAINT "pump_set_tag_written" CHECK ("norm" <> '' AND length("tag") <= 60 AND "tag" !~ '[[:cntrl:]]'),
  ADD CONSTRAINT "pump_set_words_known" CHECK (
    "mounting" IN ('foot', 'face', 'foot-and-face') AND "shaft_direction" IN ('horizontal', 'down', 'up')
    AND "rotation" IN ('cw', 'ccw', 'either')),
  ADD CONSTRAINT "pump_set_criticality" CHECK ("criticality" BETWEEN 1 AND 4),
  ADD CONSTRAINT "pump_set_needs_known" CHECK ("needs" <@ ARRAY[
    'brake', 'thermistor', 'thermostat', 'rtd', 'heater', 'encoder', 'insulated-bearing', 'shaft-ground']),
  ADD CONSTRAINT "pump_set_parts_object" CHECK (
    jsonb_typeof("seat") = 'object' AND jsonb_typeof("coupling") = 'object' AND jsonb_typeof("base") = 'object'
    AND jsonb_typeof("load") = 'object' AND jsonb_typeof("surroundings") = 'object');

ALTER TABLE "supply"
  ADD CONSTRAINT "supply_ranges" CHECK (
    "phases" IN (1, 3) AND "volts" > 0 AND "volts" <= 15000 AND "hertz" > 0 AND "hertz" <= 400
    AND "start" IN ('direct', 'star-delta', 'part-winding', 'soft', 'drive')),
  ADD CONSTRAINT "supply_starter_object" CHECK (jsonb_typeof("starter") = 'object');

ALTER TABLE "site"
  ADD CONSTRAINT "site_name_written" CHECK (btrim("name") <> ''),
  ADD CONSTRAINT "site_settings_object" CHECK (jsonb_typeof("settings") = 'object');
ALTER TABLE "area"
  ADD CONSTRAINT "area_name_written" CHECK (btrim("name") <> ''),
  ADD CONSTRAINT "area_surroundings_ranges" CHECK (
    jsonb_typeof("surroundings") = 'object'
    AND ("surroundings" ->> 'ambientC')::numeric BETWEEN -60 AND 120
    AND ("surroundings" ->> 'altitudeM')::numeric BETWEEN -500 AND 6000
    AND ("surroundings" ->> 'ip') ~ '^IP[0-6X][0-9X]K?$');
ALTER TABLE "store" ADD CONSTRAINT "store_name_written" CHECK (btrim("name") <> '');
ALTER TABLE "shelf" ADD CONSTRAINT "shelf_name_written" CHECK (btrim("name") <> '');
ALTER TABLE "pump" ADD CONSTRAINT "pump_description_written" CHECK (btrim("description") <> '');
ALTER TABLE "fault" ADD CONSTRAINT "fault_says_something" CHECK (btrim("says") <> '' AND length("says") <= 2000);

ALTER TABLE "swap"
  ADD CONSTRAINT "swap_two_motors" CHECK ("motor_out_id" <> "motor_in_id"),
  ADD CONSTRAINT "swap_out_goes_somewhere" CHECK (("motor_out_id" IS NULL) = ("out_to" IS NULL)),
  ADD CONSTRAINT "swap_not_from_itself" CHECK ("from_set_id" <> "set_id"),
  ADD CONSTRAINT "swap_words" CHECK (
    "out_to" IN ('at-repair', 'on-shelf', 'scrapped')
    AND "verdict" IN ('straight-swap', 'swap-with-work', 'check-first', 'unsuitable')),
  ADD CONSTRAINT "swap_why_written" CHECK (btrim("why") <> '' AND length("why") <= 200),
  ADD CONSTRAINT "swap_ranges" CHECK (
    "hours" BETWEEN 0 AND 1000 AND "insulation_mohm" BETWEEN 0 AND 1000000 AND "overload_a" > 0 AND "overload_a" <= 5000),
  ADD CONSTRAINT "swap_lists" CHECK (
    jsonb_typeof("findings") = 'array' AND jsonb_typeof("work_done") = 'array' AND jsonb_typeof("checks") = 'array'
    AND jsonb_typeof("operating_point") = 'object'),
  ADD CONSTRAINT "swap_body_sum" CHECK ("body_sha256" ~ '^[0-9a-f]{64}$');

ALTER TABLE "attachment"
  ADD CONSTRAINT "attachment_of_one" CHECK (num_nonnulls("set_id", "motor_id") = 1),
  ADD CONSTRAINT "attachment_small_picture" CHECK (
    octet_length("content") BETWEEN 1 AND 10485760 AND "media_type" IN ('image/webp', 'image/jpeg', 'image/png'));
ALTER TABLE "import_run"
  ADD CONSTRAINT "import_run_status" CHECK (
    "status" IN ('draft', 'applied', 'failed', 'dropped') AND ("status" = 'applied') = ("applied_at" IS NOT NULL));
ALTER TABLE "import_row"
  ADD CONSTRAINT "import_row_line" CHECK ("line" > 0),
  ADD CONSTRAINT "import_row_outcome" CHECK ("outcome" IN ('new', 'changed', 'same', 'refused', 'applied'));
ALTER TABLE "audit_entry"
  ADD CONSTRAINT "audit_entry_one_line" CHECK ("action" ~ '^[a-z-]+\.[a-z-]+$' AND "thing" ~ '^[a-z-]+$' AND "note" !~ '[[:cntrl:]]');
ALTER TABLE "user"
  ADD CONSTRAINT "user_role_known" CHECK ("role" IN ('technician', 'planner', 'reliability', 'administrator')),
  ADD CONSTRAINT "user_email_small" CHECK ("email" = lower("email") AND length("email") BETWEEN 3 AND 254);
ALTER TABLE "sign_in_limit" ADD CONSTRAINT "sign_in_limit_email_short" CHECK (length("email") <= 254);
ALTER TABLE "api_token"
  ADD CONSTRAINT "api_token_sum" CHECK ("sha256" ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "api_token_scopes" CHECK ("scopes" <@ ARRAY['read', 'write', 'assess']);

-- Each change raises the version, unless only what the triggers themselves keep has changed.
CREATE FUNCTION touch() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  IF to_jsonb(NEW) - ARRAY['words', 'norm', 'look_alike'] IS DISTINCT FROM to_jsonb(OLD) - ARRAY['words', 'norm', 'look_alike'] THEN
    NEW.version := OLD.version + 1;
    NEW.changed_at := clock_timestamp();
  END IF;
  RETURN NEW;
END;
$$;
DO $$
DECLARE t text;
BEGIN
  FOREACH t IN ARRAY ARRAY['site', 'area', 'store', 'shelf', 'pump', 'supply', 'pump_set', 'motor', 'fault', 'import_run'] LOOP
    EXECUTE format('CREATE TRIGGER %I BEFORE UPDATE ON %I FOR EACH ROW EXECUTE FUNCTION touch()', t || '_touch', t);
  END LOOP;
END;
$$;

-- A motor's version is also that of its nameplate and ratings.
CREATE FUNCTION touch_motor() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE motor SET changed_at = clock_timestamp()
    FROM (SELECT DISTINCT site_id, motor_id FROM changed) AS c
    WHERE motor.site_id = c.site_id AND motor.id = c.motor_id;
  RETURN NULL;
END;
$$;
CREATE TRIGGER "nameplate_changed" AFTER UPDATE ON "nameplate" REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION touch_motor();
CREATE TRIGGER "rating_added" AFTER INSERT ON "rating" REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION touch_motor();
CREATE TRIGGER "rating_changed" AFTER UPDATE ON "rating" REFERENCING NEW TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION touch_motor();
CREATE TRIGGER "rating_dropped" AFTER DELETE ON "rating" REFERENCING OLD TABLE AS changed
  FOR EACH STATEMENT EXECUTE FUNCTION touch_motor();

-- The words a set is found by.
CREATE FUNCTION pump_set_words() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  NEW.words := lower(concat_ws(' ', NEW.tag, NEW.service,
    (SELECT name FROM area WHERE site_id = NEW.site_id AND id = NEW.area_id),
    (SELECT concat_ws(' ', description, kind, maker) FROM pump WHERE site_id = NEW.site_id AND id = NEW.pump_id)));
  RETURN NEW;
END;
$$;
CREATE TRIGGER "pump_set_words" BEFORE INSERT OR UPDATE ON "pump_set" FOR EACH ROW EXECUTE FUNCTION pump_set_words();
CREATE FUNCTION area_named() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE pump_set SET words = '' WHERE site_id = NEW.site_id AND area_id = NEW.id; -- its own trigger fills them
  RETURN NULL;
END;
$$;
CREATE TRIGGER "area_named" AFTER UPDATE OF "name" ON "area" FOR EACH ROW EXECUTE FUNCTION area_named();
CREATE FUNCTION pump_described() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  UPDATE pump_set SET words = '' WHERE site_id = NEW.site_id AND pump_id = NEW.id;
  RETURN NULL;
END;
$$;
CREATE TRIGGER "pump_described" AFTER UPDATE OF "description", "kind", "maker" ON "pump"
  FOR EACH ROW EXECUTE FUNCTION pump_described();

-- History is only ever added to.
CREATE FUNCTION refuse_change() RETURNS trigger LANGUAGE plpgsql AS $$
BEGIN
  RAISE EXCEPTION '% is history: % is refused', TG_TABLE_NAME, TG_OP USING ERRCODE = 'insufficient_privilege';
END;
$$;
CREATE TRIGGER "audit_entry_stands" BEFORE UPDATE OR DELETE OR TRUNCATE ON "audit_entry"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();
CREATE TRIGGER "swap_stands" BEFORE UPDATE OR DELETE OR TRUNCATE ON "swap"
  FOR EACH STATEMENT EXECUTE FUNCTION refuse_change();

-- The role the program works as: it reads and writes rows, it neither alters the schema nor touches history.
-- A role belongs to the whole server: another database of it, or an administrator, may have made it already.
DO $$
BEGIN
  IF NOT EXISTS (SELECT FROM pg_roles WHERE rolname = 'bedplate_app') THEN
    CREATE ROLE bedplate_app NOLOGIN NOINHERIT;
  END IF;
EXCEPTION WHEN duplicate_object OR unique_violation THEN NULL;
END;
$$;
DO $$
BEGIN
  IF NOT pg_has_role('bedplate_app', 'MEMBER') THEN
    EXECUTE format('GRANT bedplate_app TO %I', current_user);
  END IF;
END;
$$;
REVOKE CREATE ON SCHEMA public FROM PUBLIC;
GRANT USAGE ON SCHEMA public TO bedplate_app;
GRANT SELECT ON ALL TABLES IN SCHEMA public TO bedplate_app;
GRANT INSERT, UPDATE ON
  "site", "area", "store", "shelf", "pump", "supply", "pump_set", "motor", "nameplate", "rating", "fault", "attachment",
  "import_run", "import_row", "user", "session", "account", "verification", "rateLimit", "sign_in_limit", "api_token"
  TO bedplate_app;
GRANT INSERT ON "swap", "audit_entry" TO bedplate_app;
-- Nothing in the register is deleted: only rows of a plate being rewritten, drafts, and what signing in leaves behind.
GRANT DELETE ON "rating", "import_row", "session", "account", "verification", "rateLimit", "sign_in_limit" TO bedplate_app;
