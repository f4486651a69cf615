-- Tries are counted for the account and for the address they come from, each under its own kind of name.
ALTER TABLE "sign_in_limit" RENAME COLUMN "email" TO "who";
ALTER TABLE "sign_in_limit" DROP CONSTRAINT "sign_in_limit_email_short";
ALTER TABLE "sign_in_limit" ADD CONSTRAINT "sign_in_limit_who_short" CHECK (length("who") <= 300);
DELETE FROM "sign_in_limit";
