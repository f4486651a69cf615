-- From PostgreSQL 16 on, who makes a role is its member but may not take it on. The program connects as the owner and
-- takes bedplate_app on, so an owner who is no superuser grants it to themselves.
DO $$
BEGIN
  BEGIN
    SET LOCAL ROLE bedplate_app;
    RESET ROLE;
  EXCEPTION WHEN insufficient_privilege THEN
    EXECUTE format('GRANT bedplate_app TO %I', current_user);
  END;
END $$;
