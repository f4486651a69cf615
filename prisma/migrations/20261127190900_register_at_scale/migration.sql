-- The words an import may have grow; what ran before keeps its meaning.
ALTER TABLE "import_run" DROP CONSTRAINT "import_run_status";
UPDATE "import_run" SET "status" = CASE "status" WHEN 'draft' THEN 'ready' WHEN 'dropped' THEN 'cancelled' ELSE "status" END;

-- AlterTable
ALTER TABLE "audit_entry" ADD COLUMN     "change_id" UUID;

-- AlterTable
ALTER TABLE "import_row" ADD COLUMN     "changes" JSONB NOT NULL DEFAULT '[]',
ADD COLUMN     "set_id" UUID;

-- AlterTable
ALTER TABLE "import_run" ADD COLUMN     "change_id" UUID,
ADD COLUMN     "counts" JSONB NOT NULL DEFAULT '{}',
ADD COLUMN     "dialect" JSONB NOT NULL DEFAULT '{}',
ADD COLUMN     "kind" TEXT,
ADD COLUMN     "says" TEXT;

-- AlterTable
ALTER TABLE "user" ADD COLUMN     "units" TEXT;

-- CreateTable
CREATE TABLE "import_file" (
    "site_id" UUID NOT NULL,
    "run_id" UUID NOT NULL,
    "part" INTEGER NOT NULL,
    "content" BYTEA NOT NULL,

    CONSTRAINT "import_file_pkey" PRIMARY KEY ("site_id","run_id","part")
);

-- CreateTable
CREATE TABLE "known_heading" (
    "site_id" UUID NOT NULL,
    "kind" TEXT NOT NULL,
    "heading" TEXT NOT NULL,
    "field" TEXT,

    CONSTRAINT "known_heading_pkey" PRIMARY KEY ("site_id","kind","heading")
);

-- CreateTable
CREATE TABLE "acceptance" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "rule" TEXT NOT NULL,
    "thing" TEXT NOT NULL,
    "thing_id" UUID NOT NULL,
    "figures" TEXT NOT NULL,
    "reason" TEXT NOT NULL,
    "by_id" TEXT NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "again_on" DATE,
    "withdrawn_at" TIMESTAMPTZ(3),

    CONSTRAINT "acceptance_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "person_link" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "purpose" TEXT NOT NULL,
    "sha256" TEXT NOT NULL,
    "name" TEXT,
    "email" TEXT,
    "role" TEXT,
    "user_id" TEXT,
    "by_id" TEXT NOT NULL,
    "created_at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,
    "expires_at" TIMESTAMPTZ(3) NOT NULL,
    "used_at" TIMESTAMPTZ(3),
    "revoked_at" TIMESTAMPTZ(3),

    CONSTRAINT "person_link_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "saved_view" (
    "site_id" UUID NOT NULL,
    "id" UUID NOT NULL DEFAULT gen_random_uuid(),
    "user_id" TEXT NOT NULL,
    "page" TEXT NOT NULL,
    "name" TEXT NOT NULL,
    "query" TEXT NOT NULL,

    CONSTRAINT "saved_view_pkey" PRIMARY KEY ("site_id","id")
);

-- CreateTable
CREATE TABLE "seen_request" (
    "site_id" UUID NOT NULL,
    "user_id" TEXT NOT NULL,
    "key" TEXT NOT NULL,
    "body_sha256" TEXT NOT NULL,
    "status" INTEGER NOT NULL,
    "answer" JSONB NOT NULL,
    "at" TIMESTAMPTZ(3) NOT NULL DEFAULT CURRENT_TIMESTAMP,

    CONSTRAINT "seen_request_pkey" PRIMARY KEY ("site_id","user_id","key")
);

-- CreateIndex
CREATE INDEX "acceptance_site_id_thing_thing_id_idx" ON "acceptance"("site_id", "thing", "thing_id");

-- CreateIndex
CREATE UNIQUE INDEX "person_link_sha256_key" ON "person_link"("sha256");

-- CreateIndex
CREATE UNIQUE INDEX "saved_view_site_id_user_id_page_name_key" ON "saved_view"("site_id", "user_id", "page", "name");

-- CreateIndex
CREATE INDEX "seen_request_site_id_at_idx" ON "seen_request"("site_id", "at");

-- CreateIndex
CREATE INDEX "audit_entry_site_id_change_id_idx" ON "audit_entry"("site_id", "change_id");

-- CreateIndex
CREATE INDEX "import_row_site_id_run_id_outcome_line_idx" ON "import_row"("site_id", "run_id", "outcome", "line");

-- AddForeignKey
ALTER TABLE "import_file" ADD CONSTRAINT "import_file_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "import_file" ADD CONSTRAINT "import_file_site_id_run_id_fkey" FOREIGN KEY ("site_id", "run_id") REFERENCES "import_run"("site_id", "id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "known_heading" ADD CONSTRAINT "known_heading_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "acceptance" ADD CONSTRAINT "acceptance_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "acceptance" ADD CONSTRAINT "acceptance_by_id_fkey" FOREIGN KEY ("by_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "person_link" ADD CONSTRAINT "person_link_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "person_link" ADD CONSTRAINT "person_link_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "saved_view" ADD CONSTRAINT "saved_view_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "seen_request" ADD CONSTRAINT "seen_request_site_id_fkey" FOREIGN KEY ("site_id") REFERENCES "site"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- AddForeignKey
ALTER TABLE "seen_request" ADD CONSTRAINT "seen_request_user_id_fkey" FOREIGN KEY ("user_id") REFERENCES "user"("id") ON DELETE RESTRICT ON UPDATE RESTRICT;

-- What this language can say and the schema's cannot.
ALTER TABLE "import_run"
  ADD CONSTRAINT "import_run_status" CHECK ("status" IN (
    'uploaded', 'reading', 'ready', 'checking', 'checked', 'applying', 'applied', 'undoing', 'undone', 'cancelled', 'failed')),
  ADD CONSTRAINT "import_run_kind" CHECK ("kind" IN ('sets', 'motors')),
  ADD CONSTRAINT "import_run_objects" CHECK (
    jsonb_typeof("dialect") = 'object' AND jsonb_typeof("columns") = 'object' AND jsonb_typeof("counts") = 'object');
ALTER TABLE "import_file"
  ADD CONSTRAINT "import_file_small" CHECK (octet_length("content") BETWEEN 1 AND 1048576 AND "part" BETWEEN 0 AND 255);
ALTER TABLE "known_heading"
  ADD CONSTRAINT "known_heading_words" CHECK ("kind" IN ('sets', 'motors') AND length("heading") BETWEEN 1 AND 200 AND length("field") <= 60);
ALTER TABLE "acceptance"
  ADD CONSTRAINT "acceptance_words" CHECK (
    "rule" ~ '^[a-z-]{1,60}$' AND "thing" IN ('set', 'motor') AND length("figures") <= 2000
    AND btrim("reason") <> '' AND length("reason") <= 500);
CREATE UNIQUE INDEX "acceptance_one_stands" ON "acceptance" ("site_id", "rule", "thing_id") WHERE "withdrawn_at" IS NULL;
ALTER TABLE "user" ADD CONSTRAINT "user_units_known" CHECK ("units" IN ('metric', 'us'));
ALTER TABLE "person_link"
  ADD CONSTRAINT "person_link_sum" CHECK ("sha256" ~ '^[0-9a-f]{64}$'),
  ADD CONSTRAINT "person_link_purpose" CHECK (
    ("purpose" = 'invite' AND "email" IS NOT NULL AND "name" IS NOT NULL AND "role" IS NOT NULL AND "user_id" IS NULL)
    OR ("purpose" = 'reset' AND "user_id" IS NOT NULL AND "email" IS NULL AND "role" IS NULL)),
  ADD CONSTRAINT "person_link_role" CHECK ("role" IN ('technician', 'planner', 'reliability', 'administrator')),
  ADD CONSTRAINT "person_link_an_hour" CHECK ("expires_at" <= "created_at" + interval '1 hour 1 minute');
ALTER TABLE "saved_view"
  ADD CONSTRAINT "saved_view_words" CHECK (
    btrim("name") <> '' AND length("name") <= 60 AND "page" ~ '^/[a-z/-]*$' AND length("page") <= 60 AND length("query") <= 1000);
ALTER TABLE "seen_request"
  ADD CONSTRAINT "seen_request_sum" CHECK ("body_sha256" ~ '^[0-9a-f]{64}$' AND length("key") BETWEEN 1 AND 200);

GRANT SELECT, INSERT, UPDATE ON
  "import_file", "known_heading", "acceptance", "person_link", "saved_view", "seen_request" TO bedplate_app;
GRANT DELETE ON "import_file", "known_heading", "saved_view", "seen_request" TO bedplate_app;
