-- AlterTable
ALTER TABLE "review_day" ADD COLUMN     "closed" INTEGER,
ADD COLUMN     "opened" INTEGER,
ADD COLUMN     "stood" TEXT[] DEFAULT ARRAY[]::TEXT[];

-- ---- Not in the schema: rules that only the database can hold ------------------------------------

ALTER TABLE "review_day"
  ADD CONSTRAINT "review_day_changes" CHECK (("opened" IS NULL) = ("closed" IS NULL) AND "opened" >= 0 AND "closed" >= 0),
  ADD CONSTRAINT "review_day_stood" CHECK ("stood" IS NOT NULL AND cardinality("stood") IN (0, "open" + "accepted"));
